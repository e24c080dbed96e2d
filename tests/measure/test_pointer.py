"""The figures under the pointer are those the tables give of the same place."""

import math

import pytest
from yardwright.measure.hole import play_hole
from yardwright.measure.pointer import (
    line_length,
    marker_figures,
    outline_figures,
    point_figures,
    tee_line,
)
from yardwright.measure.units import YARD

from tests.makers import course, dogleg_hole, feature, line, only, spot, straight_hole, tables, tee


def in_frame(a_course, x, y):
    """The hole laid out, and a place given in yards in its frame."""
    played = play_hole(a_course, 1)
    to_frame = played.frame.to_frame(a_course.crs)
    return played, to_frame([(x * YARD, y * YARD)])[0]


@pytest.mark.parametrize("x, y", [(12, 180), (-40, 250), (3, -20), (0, 420), (30, 390)])
def test_a_straight_hole(x, y):
    """Against the table of distances: a target drawn at the same place."""
    a_course = straight_hole(feature("target", 9, spot(x, y), 1))
    row = only(tables(a_course).distances, feature_id=9)
    played, point = in_frame(a_course, x, y)
    found = point_figures(played, point)
    assert found.from_tee == pytest.approx(row.reach * YARD, abs=1e-6)
    assert found.station == pytest.approx(row.station_near * YARD, abs=1e-6)
    assert found.aside == pytest.approx(math.hypot(x, max(0, y - 400, -y)) * YARD, abs=1e-3)
    if row.side in ("left", "right") and 0 < y < 400:
        assert found.side == row.side
    green = only(tables(a_course).distances, kind="green")
    assert found.middle == pytest.approx(math.dist((x, y), (0, 400)) * YARD, abs=1e-3)
    assert found.front == pytest.approx(math.dist((x, y), (0, green.reach)) * YARD, abs=1e-3)
    assert found.back == pytest.approx(math.dist((x, y), (0, green.clear)) * YARD, abs=1e-3)


def test_before_a_bend_the_way_to_the_green_goes_round_it():
    a_course = dogleg_hole(first=240, second=100)
    played, point = in_frame(a_course, 0, 190)
    found = point_figures(played, point)
    assert found.middle == pytest.approx(150 * YARD, abs=1e-3)
    bend = played.drawn.points[1]
    assert found.front == pytest.approx(50 * YARD + math.dist(bend, played.green.front), abs=1e-3)
    after = point_figures(*in_frame(a_course, 60, 230))
    assert after.middle == pytest.approx(math.hypot(40, 10) * YARD, abs=1e-3)


def test_from_the_tee_set_in_hand_else_from_the_longest():
    tees = [tee(2, 0, -5, tee_set="Back"), tee(3, 0, 55, tee_set="Front")]
    a_course = straight_hole(tees=tees)
    played, point = in_frame(a_course, 0, 200)
    assert point_figures(played, point, "Front").from_tee == pytest.approx(140 * YARD, abs=1e-3)
    assert point_figures(played, point, "Back").from_tee == pytest.approx(200 * YARD, abs=1e-3)
    assert tee_line(played, "nobody's")[0] == "Back"
    assert tee_line(None) is None and point_figures(None, (0, 0)) is None


def test_a_green_being_drawn_is_cut_as_it_will_be():
    a_course = straight_hole()
    played = play_hole(a_course, 1)
    corners = list(played.green.geometry.exterior.coords)
    found = outline_figures(played, corners[:-1], of_green=True)
    assert found.depth == pytest.approx(played.green.depth, abs=1e-6)
    assert found.width == pytest.approx(played.green.width, abs=1e-6)
    assert found.area == pytest.approx(played.green.area, abs=1e-6)
    assert outline_figures(played, corners, of_green=False).depth is None
    assert outline_figures(played, corners[:2], of_green=True) is None


def test_an_outline_that_crosses_itself_has_no_area():
    played = play_hole(straight_hole(), 1)
    assert outline_figures(played, [(0, 0), (10, 10), (10, 0), (0, 10)], of_green=True).area is None


@pytest.mark.parametrize("y, states", [(250, 150), (304, 100), (204, 200), (152, 250), (340, 50)])
def test_a_marker_most_likely_states_the_nearest_round_distance(y, states):
    """Markers state 50, 100, 150, 200 or 250: common practice, no source."""
    a_course = straight_hole()
    found = marker_figures(*in_frame(a_course, 0, y), a_course.settings)
    assert found.measures == pytest.approx((400 - y) * YARD, abs=1e-3)
    assert found.states == pytest.approx(states * YARD)


def test_a_marker_measures_what_the_table_says():
    a_course = straight_hole(feature("marker", 7, spot(30, 240), 1, states_yd=150.0))
    row = only(tables(a_course).markers, marker_id="7")
    found = marker_figures(*in_frame(a_course, 30, 240), a_course.settings)
    assert found.measures == pytest.approx(row.measured * YARD, abs=1e-6)
    front = marker_figures(*in_frame(a_course, 30, 240), a_course.settings, 120.0, "front")
    assert front.states == 120.0 and front.measures < found.measures


def test_without_a_green_there_is_no_way_to_it():
    a_course = course([tee(2, 0, -5)], {1: line((0, -5), (0, 400))}, {1: 4})
    played, point = in_frame(a_course, 10, 200)
    found = point_figures(played, point)
    assert found.aside == pytest.approx(10 * YARD, abs=1e-3) and found.middle is None
    assert marker_figures(played, point, a_course.settings) is None
    assert marker_figures(None, point, a_course.settings) is None


def test_lengths():
    assert line_length([(0, 0), (3, 4), (3, 10)]) == pytest.approx(11)
    assert line_length([(1, 1)]) == line_length([]) == line_length([(1, 1), (1, 1)]) == 0.0
