"""Where the approach comes from, and front, middle, back, depth and width of the green it meets."""

import math

import numpy as np
import pytest
from yardwright.measure.hole import play_hole
from yardwright.measure.units import YARD

from tests.makers import (
    area,
    circle,
    course,
    dogleg_hole,
    feature,
    line,
    only,
    rectangle,
    spot,
    straight_hole,
    tables,
    tee,
)


def green_row(a_course, hole=1):
    return only(tables(a_course).greens, hole=hole)


def approach_point(a_course, hole=1):
    """In yards, in the drawing's own coordinates."""
    played = play_hole(a_course, hole)
    return played.frame.from_frame(a_course.crs)(played.green.approach_point)[0] / YARD


def place(a_course, what, hole=1):
    played = play_hole(a_course, hole)
    return played.frame.from_frame(a_course.crs)(getattr(played.green, what))[0] / YARD


def at(x, y):
    return pytest.approx((x, y), abs=1e-4)


# Rule of the approach point


def test_a_par_3_is_approached_from_the_reference_of_its_longest_tee():
    tees = [tee(2, 40, 5, tee_set="Front"), tee(3, 30, -15, tee_set="Back")]
    a_course = straight_hole(tees=tees, length=160, par=3, tee_sets=["Front", "Back"])
    assert green_row(a_course).approach_from == "tee"
    reference = (
        30 - 5 / 175 * 30,
        -10,
    )  # on the way from (30, -15) to the green at (0, 160), half a tee ahead
    assert tuple(approach_point(a_course)) == at(*reference)


def test_a_long_par_4_is_approached_from_150_yd_before_the_anchor():
    """Common practice, no source."""
    a_course = straight_hole(length=400)
    assert green_row(a_course).approach_from == "150 yd"
    assert tuple(approach_point(a_course)) == at(0, 250)


def test_the_150_yd_are_measured_over_the_bends_of_the_drawn_line():
    # Last leg of 100 yd: 50 more lie before the turn at (0, 240).
    a_course = dogleg_hole(first=240, second=100)
    assert tuple(approach_point(a_course)) == at(0, 190)


def test_the_station_is_that_of_the_anchor_not_of_the_lines_end():
    """The line is drawn 12 yd short of the green's centroid; the approach is taken 150 yd before the centroid."""
    green = feature("green", 1, circle(0, 400, 15), 1)
    a_course = course([green, tee(2, 0, -5)], {1: line((0, -5), (0, 388))}, {1: 4})
    assert tuple(approach_point(a_course)) == at(0, 250)


@pytest.mark.parametrize("length, expected", [(299.99, "100 yd"), (300.01, "150 yd"), (310.0, "150 yd")])
def test_a_hole_shorter_than_300_yd_is_approached_from_100(length, expected):
    """Common practice, no source: on a very short par 4 from the 100 yd marker."""
    assert green_row(straight_hole(length=length)).approach_from == expected


def test_the_longest_tee_decides_whether_the_hole_is_short():
    tees = [tee(2, 0, -5), tee(3, 0, 55, tee_set="Front")]
    assert green_row(straight_hole(length=320, tees=tees)).approach_from == "150 yd"


def test_a_hole_may_name_its_own_distance_whatever_its_par():
    assert tuple(approach_point(straight_hole(length=400, approach={1: 90}))) == at(0, 310)
    assert green_row(straight_hole(length=160, par=3, approach={1: 60})).approach_from == "60 yd"


def test_a_marker_may_be_the_approach_point():
    marker = feature("marker", 7, spot(12, 280), 1, approach=True, states_yd=120)
    a_course = straight_hole(marker)
    assert green_row(a_course).approach_from == "marker"
    assert tuple(approach_point(a_course)) == at(12, 280)


def test_a_pair_of_posts_is_approached_from_between_them():
    posts = [
        feature("marker", 7, spot(20, 250), 1, approach=True, states_yd=150, pair="150"),
        feature("marker", 8, spot(-16, 250), 1, states_yd=150, pair="150"),
    ]
    assert tuple(approach_point(straight_hole(*posts))) == at(2, 250)


def test_a_free_target_point_may_be_the_approach_point():
    target = feature("target", 7, spot(-30, 300), 1, approach=True)
    a_course = straight_hole(target)
    assert green_row(a_course).approach_from == "point"
    assert tuple(approach_point(a_course)) == at(-30, 300)
    azimuth = math.degrees(math.atan2(30, 100))
    assert green_row(a_course).approach_azimuth == pytest.approx(azimuth, abs=0.02)


def test_a_target_of_another_hole_is_not():
    target = feature("target", 7, spot(-30, 300), 2, approach=True)
    assert green_row(straight_hole(target)).approach_from == "150 yd"


def test_without_a_par_the_length_judges_and_a_remark_says_so():
    row = green_row(straight_hole(length=170, par=None))
    assert row.approach_from == "tee" and "no par" in row.remark
    assert green_row(straight_hole(length=400, par=None)).approach_from == "150 yd"


def test_a_line_too_short_for_the_approach_is_taken_from_its_start():
    row = green_row(straight_hole(length=95, par=4))
    assert row.approach_from == "start of the line" and "shorter than 100 yd" in row.remark


# Front, middle, back


def test_a_round_green():
    a_course = straight_hole(green=circle(0, 400, 15))
    row = green_row(a_course)
    assert (row.depth, row.width, row.overall_depth, row.overall_width) == pytest.approx(
        (30, 30, 30, 30), abs=1e-6
    )
    assert row.chords == 1 and row.remark == ""
    assert tuple(place(a_course, "front")) == at(0, 385)
    assert tuple(place(a_course, "middle")) == at(0, 400)
    assert tuple(place(a_course, "back")) == at(0, 415)


def test_the_middle_is_halfway_between_front_and_back_not_the_centroid():
    # A triangle pointing at the player: centroid two thirds up, middle halfway.
    a_course = straight_hole(green=area((0, 385), (15, 415), (-15, 415)))
    assert tuple(place(a_course, "anchor")) == at(0, 405)
    assert tuple(place(a_course, "middle")) == at(0, 400)
    row = green_row(a_course)
    assert (row.depth, row.width, row.overall_width) == pytest.approx((30, 15, 30), abs=1e-6)
    assert only(tables(a_course).lengths, hole=1).length == pytest.approx(400, abs=1e-6)


def test_depth_is_cut_along_the_approach_and_width_square_to_it():
    # A 20 x 30 rectangle approached at 45 degrees through its middle.
    green = rectangle(-10, 385, 10, 415)
    target = feature("target", 7, spot(-100, 300), 1, approach=True)
    row = green_row(straight_hole(target, green=green))
    assert row.approach_azimuth == pytest.approx(45, abs=0.02)
    assert (row.depth, row.width) == pytest.approx((20 * 2**0.5, 20 * 2**0.5), abs=1e-6)
    assert (row.overall_depth, row.overall_width) == pytest.approx((50 / 2**0.5, 50 / 2**0.5), abs=1e-6)


def test_a_kidney_cut_twice_reports_both_pieces_and_keeps_the_one_that_holds_the_anchor():
    # A ring open to the right; the approach cuts the lower arm, the gap and the upper arm.
    green = area((-30, 380), (10, 380), (10, 392), (-8, 392), (-8, 408), (10, 408), (10, 424), (-30, 424))
    target = feature("target", 7, spot(5, 250), 1, approach=True)
    a_course = straight_hole(target, green=green)
    row = green_row(a_course)
    middle = np.array(green.centroid.coords[0])
    direction = (middle - (5, 250)) / np.hypot(*(middle - (5, 250)))
    assert row.chords == 1  # through the spine: whole
    assert row.depth == pytest.approx(44 / direction[1], abs=1e-6)

    from_left = feature("target", 8, spot(60, 300), 1, approach=True)
    row = green_row(straight_hole(from_left, green=green))
    assert row.chords == 2
    assert "2 pieces: 0.0 to " in row.remark


def test_a_crescent_whose_centroid_lies_outside_is_anchored_in_its_longest_chord():
    # A U open to the player: arms 6 wide and 40 deep, floor 40 wide and 8 deep.
    green = area((-20, 380), (-14, 380), (-14, 412), (14, 412), (14, 380), (20, 380), (20, 420), (-20, 420))
    assert not green.covers(green.centroid)
    a_course = straight_hole(green=green)
    assert tuple(place(a_course, "anchor")) == at(0, 416)
    row = green_row(a_course)
    assert (row.depth, row.width, row.chords) == pytest.approx((8, 40, 1), abs=1e-4)
    assert tuple(place(a_course, "front")) == at(0, 412)


def test_a_c_with_two_equal_arms_is_anchored_in_one_of_them():
    """A C open to the right, its arms the same: both hold a longest chord, the ground between them does not."""
    green = area((-20, 380), (20, 380), (20, 388), (-14, 388), (-14, 412), (20, 412), (20, 420), (-20, 420))
    assert not green.covers(green.centroid)
    a_course = straight_hole(green=green)
    x, y = place(a_course, "anchor")
    assert x == pytest.approx(0, abs=1e-3)
    assert y == pytest.approx(384, abs=1e-3) or y == pytest.approx(416, abs=1e-3)


def test_a_green_in_two_pieces_each_a_chord():
    # The same C: played up the page through its two arms.
    green = area((-20, 380), (20, 380), (20, 388), (-14, 388), (-14, 412), (20, 412), (20, 420), (-20, 420))
    row = green_row(straight_hole(green=green))
    assert row.chords == 2 and row.depth == pytest.approx(8, abs=1e-4)
    assert "0.0 to 8.0, 32.0 to 40.0 yd" in row.remark


def test_a_shared_green_has_an_approach_for_each_hole():
    # Hole 1 plays up the page, hole 2 down from above, slantwise; one polygon for both.
    green = feature("green", 1, rectangle(-15, 380, 15, 420), 1, 2)
    features = [green, tee(2, 0, -5), tee(3, 400, 805, hole=2)]
    a_course = course(features, {1: line((0, -5), (0, 400)), 2: line((400, 805), (0, 400))}, {1: 4, 2: 5})
    one, two = green_row(a_course, 1), green_row(a_course, 2)
    assert one.approach_azimuth == pytest.approx(0, abs=0.02) or one.approach_azimuth == pytest.approx(
        360, abs=0.02
    )
    assert two.approach_azimuth == pytest.approx(180 + math.degrees(math.atan2(400, 405)), abs=0.02)
    assert (one.depth, one.width) == pytest.approx((40, 30), abs=1e-6)
    assert two.depth == pytest.approx(30 * math.hypot(400, 405) / 400, abs=1e-6)
    assert (one.area, two.area) == pytest.approx((1200, 1200), abs=1e-4)
    assert "one green for holes 1 and 2" in one.remark and "one green for holes 1 and 2" in two.remark


def test_of_two_greens_the_one_at_the_lines_end_counts():
    other = feature("green", 9, circle(80, 380, 12), 1)
    row = green_row(straight_hole(other))
    assert row.depth == pytest.approx(30, abs=1e-6) and "feature 9" in row.remark


def test_an_unusual_depth_is_remarked_on():
    """Common practice, no source: warn outside 12 to 50 yd."""
    assert "unusual depth" in green_row(straight_hole(green=circle(0, 400, 5.9))).remark
    assert "unusual depth" not in green_row(straight_hole(green=circle(0, 400, 6.1))).remark
    assert "unusual depth" in green_row(straight_hole(green=circle(0, 400, 25.1))).remark


@pytest.mark.parametrize("par, length", [(3, 180), (4, 380), (5, 540), (6, 690)])
def test_par_3_to_6(par, length):
    a_course = straight_hole(length=length, par=par)
    row = only(tables(a_course).lengths, hole=1)
    assert (row.par, row.par_check) == (par, "fits")
    assert row.length == pytest.approx(length, abs=1e-6)
    assert green_row(a_course).approach_from == ("tee" if par == 3 else "150 yd")


def test_a_hole_line_drawn_from_green_to_tee_is_turned_with_a_remark():
    features = [feature("green", 1, circle(0, 400, 15), 1), tee(2, 0, -5)]
    a_course = course(features, {1: line((0, 400), (0, -5))}, {1: 4})
    row = only(tables(a_course).lengths, hole=1)
    assert row.length == pytest.approx(400, abs=1e-6) and "turned round" in row.remark
