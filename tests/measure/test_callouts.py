"""What is written beside the things of a hole: the figures of the tables, at the places they are about."""

import math

import numpy as np
import pytest
from shapely.geometry import Point
from yardwright.measure.callouts import callouts
from yardwright.measure.course import measure_hole
from yardwright.measure.hole import CourseIndex, play_hole
from yardwright.measure.units import YARD

from tests.makers import course, dogleg_hole, feature, line, rectangle, spot, straight_hole, tee


def told(a_course, tee_set=""):
    """``{says: [Callout]}`` of hole 1."""
    index = CourseIndex(a_course)
    found = {}
    for one in callouts(play_hole(a_course, 1, index), measure_hole(a_course, 1, index), tee_set):
        found.setdefault(one.says, []).append(one)
    return found


def yards(values):
    return [value / YARD for value in values]


def place_of(callout, a_course):
    """Where a callout stands, in the yards that the course was drawn in."""
    played = play_hole(a_course, 1)
    x, y = played.frame.from_frame(a_course.crs)([callout.place])[0]
    return x / YARD, y / YARD


def test_a_bunker_beside_the_line():
    """A bunker from 190 to 210 yd, its left margin 12 yd to the right of the line: worked out on paper."""
    a_course = straight_hole(feature("bunker", 9, rectangle(12, 190, 22, 210), 1, label="Ness"))
    (bunker,) = told(a_course)["hazard"]
    assert yards(bunker.figures) == pytest.approx([math.hypot(12, 190), math.hypot(22, 210)], abs=1e-3)
    assert bunker.label == "Ness"
    x, y = place_of(bunker, a_course)
    assert 12 < x < 22 and 190 < y < 210
    assert bunker.away == pytest.approx((1, 0), abs=1e-3)


def test_a_stream_is_named_where_the_line_crosses_it():
    """Drawn 300 yd wide, with its own middle 100 yd to the left."""
    a_course = straight_hole(feature("penalty_area", 9, rectangle(-250, 120, 50, 128), 1))
    (stream,) = told(a_course)["hazard"]
    assert place_of(stream, a_course) == pytest.approx((0, 124), abs=0.5)


def test_a_long_hazard_is_named_where_it_meets_the_hole():
    """A lake from 150 to 450 yd whose shore runs along the line 20 yd to the left."""
    a_course = straight_hole(feature("penalty_area", 9, rectangle(-400, 150, -20, 350), 1))
    (lake,) = told(a_course)["hazard"]
    x, y = place_of(lake, a_course)
    assert -30 < x < -20 and 150 < y < 350
    assert lake.away == pytest.approx((-1, 0), abs=1e-3)


def test_the_green_and_the_length():
    a_course = straight_hole()
    found = told(a_course)
    (green,), (size,), (length,) = found["green"], found["green_size"], found["length"]
    for name, figure in zip(("front", "middle", "back"), green.figures):
        (own,) = found[name]
        assert own.figures == (figure,)
        assert place_of(own, a_course)[1] == pytest.approx(figure / YARD, abs=1e-3)
    assert size.figures[0] == pytest.approx(green.figures[2] - green.figures[0], abs=1e-6)
    assert length.figures == (green.figures[1],)
    assert length.away == pytest.approx((0, -1), abs=1e-3) and size.away == pytest.approx((0, 1), abs=1e-3)


def test_a_turn_is_named_on_its_outer_side():
    """240 yd straight, then 100 to the right: it is named from the left."""
    a_course = dogleg_hole(first=240, second=100)
    (turn,) = told(a_course)["turn"]
    assert yards(turn.figures) == pytest.approx([240, 100], abs=0.5)
    assert place_of(turn, a_course) == pytest.approx((0, 240), abs=0.5)
    bend = play_hole(a_course, 1).drawn.points
    inner = (bend[0] + bend[2]) / 2 - bend[1]
    assert np.dot(turn.away, inner) < 0


def test_only_a_marker_that_is_off_is_named():
    """One 150 yd marker stands 150 yd from the green's middle, the other 157."""
    right = feature("marker", 8, spot(-6, 400 - math.sqrt(150**2 - 36)), 1, states_yd=150.0)
    wrong = feature("marker", 9, spot(6, 400 - math.sqrt(157**2 - 36)), 1, states_yd=150.0)
    a_course = straight_hole(right, wrong)
    (marker,) = told(a_course)["marker"]
    assert yards(marker.figures) == pytest.approx([150, 157], abs=0.01)
    assert Point(place_of(marker, a_course)).distance(wrong.geometry) < 1e-3


def test_the_tee_set_in_hand_counts_else_the_longest():
    """The front of the second tee, which is measured from, lies 60 yd ahead of that of the first."""
    a_course = straight_hole(tee(20, 0, 55, tee_set="Front"))
    back, front = told(a_course), told(a_course, "Front")
    assert back["length"][0].label == "Back" and front["length"][0].label == "Front"
    shorter = back["length"][0].figures[0] - front["length"][0].figures[0]
    assert told(a_course, "Nobody's")["length"] == back["length"]
    assert shorter / YARD == pytest.approx(60, abs=0.1)


def test_a_hole_without_tee_or_green():
    a_course = course([], {1: line((0, 0), (0, 300))})
    assert told(a_course) == {}
