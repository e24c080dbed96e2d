"""Distance markers: measured, error, verdict, pairs, bends, the proposed position."""

import math
from dataclasses import replace

import numpy as np
import pytest
from pyproj import Transformer
from yardwright.measure.markers import check_markers
from yardwright.measure.units import YARD
from yardwright.model.geometry import map_points

from tests.makers import (
    LOCAL,
    circle,
    course,
    dogleg_hole,
    feature,
    in_yards,
    line,
    only,
    spot,
    straight_hole,
    tables,
    tee,
)


def near(value):
    return pytest.approx(value, abs=1e-4)


def marker(fid, x, y, hole=1, states_yd=150.0, **fields):
    return feature("marker", fid, spot(x, y), hole, states_yd=states_yd, **fields)


def row_of(a_course, marker_id):
    return only(tables(a_course).markers, marker_id=marker_id)


def test_a_marker_that_is_right():
    row = row_of(straight_hole(marker(7, 0, 250)), "7")
    assert (row.hole, row.states, row.measured, row.error) == (1, near(150), near(150), near(0))
    assert (row.states_to, row.verdict) == ("middle", "true")
    assert row.move_m == near(0) and row.move_azimuth is None


def test_a_marker_too_close_to_the_green_has_a_positive_error_and_is_moved_back():
    row = row_of(straight_hole(marker(7, 0, 304, states_yd=100.0)), "7")
    assert (row.measured, row.error, row.verdict) == (near(96), near(4), "off")
    assert row.move_m == pytest.approx(4 * YARD, abs=1e-4)
    assert row.move_azimuth == pytest.approx(180, abs=0.02)
    assert (row.proposed_x, row.proposed_y) == pytest.approx((0, 300 * YARD), abs=1e-3)


def test_a_marker_beside_the_line_is_moved_along_its_bearing_from_the_green():
    row = row_of(straight_hole(marker(7, 30, 240)), "7")
    away = math.hypot(30, 160)
    assert row.measured == near(away) and row.error == near(150 - away)
    assert row.proposed_x / YARD == pytest.approx(30 * 150 / away, abs=1e-3)
    assert row.proposed_y / YARD == pytest.approx(400 - 160 * 150 / away, abs=1e-3)


@pytest.mark.parametrize("short, verdict", [(0.99, "true"), (1.01, "off"), (-0.99, "true"), (-1.01, "off")])
def test_the_tolerance_is_a_yard(short, verdict):
    assert row_of(straight_hole(marker(7, 0, 250 + short)), "7").verdict == verdict


def test_the_tolerance_may_be_asked_for():
    a_course = straight_hole(marker(7, 0, 251.5))
    assert [row.verdict for row in check_markers(a_course)] == ["off"]
    assert [row.verdict for row in check_markers(a_course, 2.0)] == ["true"]
    assert [row.verdict for row in check_markers(a_course, 0.0)] == ["off"]


@pytest.mark.parametrize("states_to, y", [("front", 235), ("middle", 250), ("back", 265)])
def test_what_the_marker_states_its_distance_to(states_to, y):
    row = row_of(straight_hole(marker(7, 0, y, states_to=states_to)), "7")
    assert row.states_to == states_to and row.measured == near(150) and row.verdict == "true"


def test_the_course_says_what_markers_state_their_distance_to():
    a_course = straight_hole(
        marker(7, 0, 235), marker(8, 0, 250, states_to="middle"), settings={"marker_point": "front"}
    )
    assert (row_of(a_course, "7").states_to, row_of(a_course, "7").measured) == ("front", near(150))
    assert (row_of(a_course, "8").states_to, row_of(a_course, "8").measured) == ("middle", near(150))


def test_a_pair_of_posts_has_a_row_a_post_and_one_for_the_middle_between():
    posts = [marker(7, -18, 250, pair="150"), marker(8, 22, 250, pair="150")]
    a_course = straight_hole(*posts)
    assert [row.marker_id for row in tables(a_course).markers] == ["7", "8", "7+8"]
    assert row_of(a_course, "7").measured == near(math.hypot(18, 150))
    assert row_of(a_course, "7+8").measured == near(math.hypot(2, 150))
    assert "middle between" in row_of(a_course, "7+8").remark


def test_a_post_whose_pair_is_missing_stands_alone():
    assert [row.marker_id for row in tables(straight_hole(marker(7, -18, 250, pair="150"))).markers] == ["7"]


def test_posts_that_state_different_distances_are_told_of():
    posts = [marker(7, -18, 250, pair="a"), marker(8, 18, 250, pair="a", states_yd=151.0)]
    assert "state different distances" in row_of(straight_hole(*posts), "7+8").remark


def test_before_a_bend_the_way_to_the_green_goes_round_it():
    # 100 yd of the second leg remain at the turn; the marker stands 50 yd before it.
    a_course = dogleg_hole(marker(7, 0, 190), first=240, second=100)
    row = row_of(a_course, "7")
    assert row.measured == near(150) and row.verdict == "true"
    late = row_of(dogleg_hole(marker(7, 0, 196), first=240, second=100), "7")
    assert late.measured == near(144) and late.error == near(6)
    assert (late.proposed_x / YARD, late.proposed_y / YARD) == pytest.approx((0, 190), abs=1e-3)


def test_after_the_bend_it_is_straight():
    row = row_of(dogleg_hole(marker(7, 60, 230), first=240, second=160), "7")
    assert row.measured == near(math.hypot(100, 10))


def test_a_place_proposed_beyond_a_bend_says_what_it_measures_there():
    # From (12, 230) away from the green at (100, 240), 150 yd in all: about (-49, 223), before the bend.
    row = row_of(dogleg_hole(marker(7, 12, 230), first=240, second=100), "7")
    away = math.hypot(88, 10)
    x, y = 100 - 88 * 150 / away, 240 - 10 * 150 / away
    assert (row.proposed_x / YARD, row.proposed_y / YARD) == pytest.approx((x, y), abs=1e-3)
    assert f"other side of a bend, where it measures {math.hypot(x, y - 240) + 100:.1f} yd" in row.remark
    straight = row_of(dogleg_hole(marker(7, 60, 230, states_yd=104.0), first=240, second=160), "7")
    assert straight.proposed_x is not None and "other side" not in straight.remark


def test_a_marker_that_states_less_than_is_left_after_the_bend_is_not_moved():
    row = row_of(dogleg_hole(marker(7, 0, 230, states_yd=90.0), first=240, second=100), "7")
    assert row.measured == near(110) and row.verdict == "off" and row.proposed_x is None
    assert "past the bend" in row.remark


def test_metres_on_the_marker():
    shape = feature("marker", 7, spot(0, 400 - 150 / YARD), 1, states_m=150.0)
    row = row_of(straight_hole(shape), "7")
    assert row.states == near(150 / YARD) and row.measured == near(150 / YARD) and row.verdict == "true"


def test_a_marker_that_states_nothing_is_told_of():
    row = row_of(straight_hole(feature("marker", 7, spot(0, 250), 1)), "7")
    assert row.verdict == "" and row.measured is None and "states no distance" in row.remark


def test_a_marker_on_the_very_point_it_states_the_distance_to_cannot_be_moved():
    row = row_of(straight_hole(marker(7, 0, 400)), "7")
    assert row.measured == near(0) and row.verdict == "off"
    assert row.proposed_x is None or math.isfinite(row.proposed_x)


def test_a_hole_without_green():
    a_course = course([tee(2, 0, -5), marker(7, 0, 250)], {1: line((0, -5), (0, 400))})
    assert "no green" in row_of(a_course, "7").remark


def test_a_marker_without_hole_goes_to_the_hole_it_stands_on():
    lost = feature("marker", 7, spot(0, 250), states_yd=150.0)
    row = row_of(straight_hole(lost), "7")
    assert row.measured == near(150) and "given to this hole by where it lies" in row.remark


def test_a_marker_near_no_hole_is_among_the_problems_only():
    lost = feature("marker", 7, spot(900, 250), states_yd=150.0)
    found = tables(straight_hole(lost))
    assert found.markers == [] and any("marker 7" in problem for problem in found.problems)


def test_a_marker_at_a_hole_far_off_its_line_but_inside_its_bounding_box_is_checked_once_or_not_at_all():
    # Two diagonal holes, their bounding boxes the same: the marker belongs to the first.
    features = [
        feature("green", 1, circle(300, 300, 15), 1),
        feature("green", 2, circle(0, 300, 15), 2),
        tee(3, 0, -5),
        tee(4, 300, -5, hole=2),
        feature("marker", 7, spot(195, 195), states_yd=150.0),
    ]
    a_course = course(features, {1: line((0, -5), (300, 300)), 2: line((300, -5), (0, 300))}, {1: 4, 2: 4})
    assert [(row.hole, row.marker_id) for row in tables(a_course).markers] == [(1, "7")]


def test_check_markers_and_measure_course_say_the_same():
    posts = [
        marker(7, -18, 250, pair="150"),
        marker(8, 22, 251, pair="150"),
        marker(9, 3, 300, states_yd=100.0),
    ]
    a_course = straight_hole(*posts)
    assert [vars(in_yards(row)) for row in check_markers(a_course)] == [
        vars(row) for row in tables(a_course).markers
    ]


def test_the_proposed_position_is_in_the_courses_own_crs():
    a_course = straight_hole(marker(7, 0, 304, states_yd=100.0))
    to_degrees = Transformer.from_crs(LOCAL, "EPSG:4326", always_xy=True)

    def degrees(shape):
        return map_points([shape], lambda points: np.column_stack(to_degrees.transform(*points.T)))[0]

    moved = replace(
        a_course,
        crs="EPSG:4326",
        holes=tuple(replace(h, line=degrees(h.line)) for h in a_course.holes),
        features=tuple(replace(f, geometry=degrees(f.geometry)) for f in a_course.features),
    )
    row = row_of(moved, "7")
    assert (row.proposed_x, row.proposed_y) == pytest.approx(to_degrees.transform(0, 300 * YARD), abs=1e-8)
