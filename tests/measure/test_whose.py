"""Which hole a feature belongs to: common practice, no source; the places leave no doubt."""

import random

import pytest
from shapely.affinity import translate
from shapely.geometry import LineString, Point, Polygon, box
from yardwright.measure.whose import HoleHere, assign, greens_of_holes, holes_near_end

YARD = 0.9144

# Two holes side by side, 100 m apart, the second played back: tee 2 stands beside green 1.
UP = LineString([(0, 0), (0, 200), (20, 380)])
BACK = LineString([(100, 390), (100, 0)])
GREEN_UP = Point(20, 380).buffer(12)
GREEN_BACK = Point(100, 0).buffer(12)
HOLES = [HoleHere(1, UP, GREEN_UP), HoleHere(2, BACK, GREEN_BACK)]


def test_a_green_belongs_to_the_hole_whose_line_ends_in_it():
    assert assign("green", GREEN_UP, [(1, UP, None), (2, BACK, None)]) == (1,)
    assert assign("green", GREEN_BACK, [(1, UP, None), (2, BACK, None)]) == (2,)


def test_a_green_where_two_lines_end_is_shared():
    shared = box(0, 370, 130, 400)
    to_same_green = LineString([(120, 0), (120, 380)])
    assert assign("green", shared, [(7, UP, None), (11, to_same_green, None)]) == (7, 11)


def test_a_line_drawn_short_still_finds_its_green():
    short = LineString([(0, 0), (0, 200), (18, 360)])
    assert assign("green", GREEN_UP, [(1, short, None), (2, BACK, None)]) == (1,)


def test_a_practice_green_far_from_every_end_belongs_to_none():
    assert assign("green", Point(300, 300).buffer(10), [(1, UP, None), (2, BACK, None)]) == ()


def test_a_practice_green_beside_a_taken_one_belongs_to_none():
    practice = Point(55, 380).buffer(10)
    assert greens_of_holes([(1, UP)], [practice, GREEN_UP]) == {1: 1}
    assert assign("green", practice, HOLES) == ()


def test_greens_without_lines_near_them_are_not_taken():
    assert greens_of_holes([(1, UP)], []) == {}
    assert greens_of_holes([(1, UP)], [Point(20, 380 + 12 + 60 * YARD + 1).buffer(12)]) == {}
    assert holes_near_end([], GREEN_UP) == ()


def test_the_tee_a_line_starts_on_is_its_own():
    assert assign("tee", box(-5, -8, 5, 4), HOLES) == (1,)
    assert assign("tee", box(94, 385, 106, 398), HOLES) == (2,)


def test_a_tee_beside_the_end_of_another_hole_goes_to_its_own():
    # 30 m from the end of line 1, 40 m from the start of line 2.
    beside = box(50, 375, 60, 385)
    assert assign("tee", beside, HOLES) == (2,)


def test_forward_tees_lie_along_the_line():
    for forward in (box(-4, 60, 4, 75), box(10, 100, 18, 110)):
        assert assign("tee", forward, HOLES) == (1,)
    assert assign("plate", Point(97, 330), HOLES) == (2,)


def test_a_tee_where_two_lines_start_is_shared():
    tenth = LineString([(3, 2), (200, 300)])
    assert assign("tee", box(-8, -8, 8, 8), [*HOLES, (10, tenth, None)]) == (1, 10)


def test_a_practice_tee_belongs_to_none():
    assert assign("tee", box(-90, 0, -80, 10), HOLES) == ()


def test_a_bunker_belongs_to_the_nearest_hole_and_to_any_within_40_yards():
    assert assign("bunker", Point(-10, 150).buffer(4), HOLES) == (1,)
    between = Point(66, 150).buffer(3)
    # 31 m from line 2, 63 m from line 1: only the nearest is within 40 yd.
    assert assign("bunker", between, HOLES) == (2,)
    middle = Point(50, 100).buffer(50 - 39 * YARD)
    assert sorted(assign("bunker", middle, HOLES)) == [1, 2]
    apart = Point(50, 100).buffer(50 - 41 * YARD)
    assert len(assign("bunker", apart, HOLES)) == 1


def test_the_green_counts_as_part_of_the_hole():
    # Nearer to line 2 than to line 1, but it lies against the green of hole 1.
    wide_green = box(10, 370, 58, 395)
    beside_green = box(59, 375, 64, 385)
    assert assign("bunker", beside_green, [(1, UP, wide_green), (2, BACK, None)])[0] == 1


def test_a_bunker_far_from_every_hole_belongs_to_none():
    assert assign("bunker", Point(-150 * YARD - 1, 100).buffer(0.5), HOLES) == ()
    assert assign("bunker", Point(-150 * YARD + 1, 100).buffer(0.5), HOLES) == (1,)


def test_a_marker_belongs_to_one_hole_only():
    assert assign("bunker", Point(48, 100), HOLES) in ((1,), (2,), (1, 2))
    near_both = [(1, UP, None), (2, translate(UP, 20, 0), None)]
    assert assign("marker", Point(8, 100), near_both) == (1,)
    assert assign("bunker", Point(8, 100), near_both) == (1, 2)


@pytest.mark.parametrize("kind", ["penalty_area", "trees", "rough"])
def test_a_river_past_four_holes_is_left_open(kind):
    lines = [(number, translate(UP, 80 * number, 0), None) for number in range(1, 6)]
    river = box(0, 180, 500, 195)
    assert assign(kind, river, lines) == ()
    assert sorted(assign("bunker", river, lines)) == [1, 2, 3, 4, 5]
    assert sorted(assign(kind, box(70, 180, 190, 195), lines)) == [1, 2]


@pytest.mark.parametrize("kind", ["path", "boundary", "hole"])
def test_paths_and_boundaries_belong_to_no_hole(kind):
    assert assign(kind, LineString([(0, 0), (0, 100)]), HOLES) == ()


def test_a_course_without_lines_gives_nothing():
    assert assign("bunker", Point(0, 0).buffer(3), []) == ()
    assert assign("green", Point(0, 0).buffer(3), [(1, None, None)]) == ()


def test_the_order_of_the_holes_does_not_matter():
    shapes = random.Random(5)
    for _ in range(60):
        thing = Polygon(
            Point(shapes.uniform(-60, 160), shapes.uniform(-40, 430)).buffer(shapes.uniform(2, 25))
        )
        for kind in ("tee", "bunker", "marker", "green"):
            holes = [(1, UP, None), (2, BACK, None)] if kind == "green" else HOLES
            assert assign(kind, thing, holes) == assign(kind, thing, holes[::-1])
