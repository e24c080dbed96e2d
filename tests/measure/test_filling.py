"""What is told of a thing that was just drawn."""

from dataclasses import replace

import pytest
from shapely.geometry import LineString, Point
from yardwright.measure.filling import fill_in
from yardwright.measure.units import YARD
from yardwright.model.course import Hole, Settings

from tests.makers import circle, course, feature, line, tee


def two_holes(**how):
    """Hole 1 up the page, hole 2 down it, 90 yards to the right; greens and tees drawn."""
    features = [
        feature("green", 1, circle(0, 400, 15), 1),
        feature("green", 2, circle(90, 0, 15), 2),
        tee(3, 0, -5),
        tee(4, 90, 405, hole=2),
    ]
    return course(features, {1: line((0, -5), (0, 400)), 2: line((90, 405), (90, 0))}, {1: 4, 2: 4}, **how)


def in_place(shape):
    """A shape given in yards, in the metres of the makers' plane."""
    from shapely.affinity import scale

    return scale(shape, YARD, YARD, origin=(0, 0))


def test_nearness_tells_the_hole_whatever_is_in_hand():
    bunker = in_place(Point(12, 380).buffer(5))
    for in_hand in (1, 2, None):
        filled = fill_in(two_holes(), "bunker", bunker, in_hand, seen_in="2025", view="partly hidden")
        assert filled.fields == {"seen_in": "2025", "view": "partly hidden", "holes": "1"}
        assert (filled.row, filled.holes) == (None, (1,))
    between = fill_in(two_holes(), "bunker", in_place(Point(45, 200).buffer(8)), 1)
    assert between.fields["holes"] == "1,2"


def test_a_hole_in_hand_without_line_takes_what_is_drawn():
    """As one begins a hole with its green: nothing drawn tells whose it is."""
    begun = two_holes()
    begun = replace(begun, holes=(*begun.holes, Hole(3, fid=33)))
    green = in_place(Point(150, 300).buffer(12))
    assert fill_in(begun, "green", green, 3).fields["holes"] == "3"
    assert fill_in(begun, "plate", in_place(Point(60, 200)), 3, "White").fields["hole"] == 3
    assert fill_in(begun, "path", in_place(LineString([(0, 0), (9, 9)])), 3).holes == ()


def test_a_line_of_play_goes_into_the_row_that_waits_for_it():
    line_drawn = in_place(LineString([(200, 0), (200, 300)]))
    waiting = two_holes()
    waiting = replace(waiting, holes=(*waiting.holes, Hole(5, fid=55), Hole(7, fid=77)))
    assert fill_in(waiting, "hole", line_drawn, 7).row == 77
    chosen = fill_in(waiting, "hole", line_drawn, 1)
    assert (chosen.row, chosen.fields["number"]) == (55, 5)
    new = fill_in(two_holes(), "hole", line_drawn, 1)
    assert (new.row, new.fields["number"], new.holes) == (None, 3, (3,))
    assert fill_in(course([], {}), "hole", line_drawn).fields["number"] == 1


def test_a_tee_gets_the_tee_set_in_hand_and_the_hole_it_lies_on():
    ground = in_place(Point(0, 30).buffer(5))
    assert fill_in(two_holes(), "tee", ground, 2, "White").fields == {
        "seen_in": None,
        "view": "clear",
        "holes": "1",
        "tee_set": "White",
    }


def test_far_from_everything_what_needs_a_hole_gets_the_one_in_hand():
    far = in_place(Point(3000, 3000))
    assert fill_in(two_holes(), "marker", far, 2).fields["hole"] == 2
    assert fill_in(two_holes(), "tree", far, 2).fields["holes"] is None
    assert fill_in(two_holes(), "marker", far).fields["hole"] is None


@pytest.mark.parametrize("unit, name, stated", [("yd", "states_yd", 150.0), ("m", "states_m", 150.0)])
def test_a_marker_states_the_round_distance_nearest_to_what_it_measures(unit, name, stated):
    """100, 150, 200 are what markers commonly state (common practice, no source)."""
    size = 1.0 if unit == "yd" else 1 / YARD
    place = in_place(Point(3, 400 - 153 * size))
    a_course = replace(two_holes(), settings=Settings(unit=unit))
    found = fill_in(a_course, "marker", place, 1).fields
    assert (found["hole"], found[name]) == (1, stated)
    assert ("states_m" in found) == (unit == "m")
