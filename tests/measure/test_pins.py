"""Pins: from figures to the point and back, and the remarks on them. Greens are drawn in yards, so that what
comes out can be read off the drawing."""

import math
from dataclasses import replace

import numpy as np
import pytest
from shapely.geometry import Polygon
from yardwright.measure.hole import CourseIndex, play_hole
from yardwright.measure.pins import (
    NotPlaceable,
    figures_of,
    follow,
    locate_pin,
    pin_row,
    pin_rows,
    place_pin,
    placed_pins,
)
from yardwright.measure.units import YARD
from yardwright.model.event import Event, Limits, Pin, Round

from tests.loudly import left_over
from tests.makers import area, circle, course, feature, in_yards, line, rectangle, straight_hole, tee

NO_LIMITS = Limits(margin=0.0, apart=0.0)
SQUARE = rectangle(-13, 270, 13, 300)
"""A green 26 yd wide and 30 deep, its front 270 yd up the page, its middle on the line of play: so are the next."""
CUP = SQUARE.difference(rectangle(4, 290, 7, 301)).difference(rectangle(-7, 290, -4, 301))
"""The same with two notches 3 yd wide and 10 deep in its back, 4 yd either side of the approach."""
HORNED = SQUARE.union(rectangle(5, 260, 13, 275)).union(rectangle(-13, 295, -5, 310))
"""The same with a horn 8 yd wide before its right side, another behind its left."""


def hole_of(green=SQUARE, **how):
    return straight_hole(green=green, length=285.0, **how)


def green_of(green=SQUARE):
    return play_hole(hole_of(green), 1).green


def placed(green, on, off, off_from):
    """``place_pin`` in yards."""
    return place_pin(green, on * YARD, off * YARD, off_from)


def on_page(played, place):
    """Where a place lies on the page, yards."""
    return played.frame.from_frame(hole_of().crs)(place.point)[0] / YARD


def codes(remarks):
    return [remark.code for remark in remarks]


def pin(on=None, off=None, off_from="", number=1, hole=1, given="figures", at=None, **more):
    """A Pin with its figures, and the place of its point on the page, in yards."""
    return Pin(
        "Cup",
        number,
        hole,
        None if on is None else on * YARD,
        None if off is None else off * YARD,
        off_from,
        given,
        None if at is None else (at[0] * YARD, at[1] * YARD),
        **more,
    )


def event(*pins, limits=NO_LIMITS, rounds=()):
    return Event("Cup", rounds=tuple(rounds), pins=pins, limits=limits)


def checked(a_course, *pins, **how):
    terrain = how.pop("terrain", None)
    return placed_pins(a_course, event(*pins, **how), terrain=terrain)


# Figures and points


@pytest.mark.parametrize(
    "figures, across, left, right, back",
    [
        ((10, 5, "left"), -8, 5, 21, 20),
        ((10, 5, "right"), 8, 21, 5, 20),
        ((23, 2, "centre"), 2, 15, 11, 7),
        ((23, -2, "centre"), -2, 11, 15, 7),
        ((15, 0, "centre"), 0, 13, 13, 15),
        ((0, 6, "left"), -7, 6, 20, 30),
        ((30, 6, "right"), 7, 20, 6, 0),
    ],
)
def test_a_pin_by_figures(figures, across, left, right, back):
    played = play_hole(hole_of(), 1)
    place = placed(played.green, *figures)
    assert on_page(played, place) == pytest.approx([across, 270 + figures[0]], abs=1e-3)
    found = [place.across, place.left, place.right, place.back, place.on]
    assert np.array(found) / YARD == pytest.approx([across, left, right, back, figures[0]], abs=1e-3)
    assert place.to_margin / YARD == pytest.approx(min(left, right, figures[0], back), abs=1e-3)
    assert place.remarks == ()


@pytest.mark.parametrize("turned", [0, 37, 90, 200, 301])
def test_left_is_left_of_the_approach_wherever_that_points(turned):
    made = hole_of(turned=turned)
    row = pin_rows(made, event(pin(10, 5, "left")))[0][0]
    at, turn = np.array([-8.0, 280.0]), math.radians(turned)
    turning = np.array([[math.cos(turn), -math.sin(turn)], [math.sin(turn), math.cos(turn)]])
    assert np.array([row.x, row.y]) / YARD == pytest.approx(turning @ at, abs=1e-3)


@pytest.mark.parametrize("on", ["front", "back"])
@pytest.mark.parametrize("turned", range(0, 360, 24))
def test_a_straight_margin_square_to_the_approach_has_the_green_s_width(turned, on):
    green = play_hole(hole_of(turned=turned), 1).green
    place = place_pin(green, 0.0 if on == "front" else green.depth, 5 * YARD, "left")
    assert (place.left / YARD, place.right / YARD) == pytest.approx((5, 21), abs=1e-3)
    assert place.to_margin == 0.0


@pytest.mark.parametrize("figures", [(10, 5, "left"), (29.5, 0.25, "right"), (3, -2.5, "centre")])
@pytest.mark.parametrize("shape", [SQUARE, CUP, HORNED])
def test_there_and_back(shape, figures):
    green = green_of(shape)
    place = placed(green, *figures)
    again = locate_pin(green, place.point)
    on, off, off_from = figures_of(again, figures[2])
    assert (on / YARD, off / YARD) == pytest.approx(figures[:2], abs=1e-9)
    assert off_from == figures[2]
    assert again.point == pytest.approx(place.point, abs=1e-9)
    found, wanted = [
        (one.on, one.across, one.left, one.right, one.to_margin, one.back) for one in (again, place)
    ]
    assert found == pytest.approx(wanted, abs=1e-9)
    assert again.remarks == place.remarks


def test_a_committee_counts_from_the_nearer_margin():
    green = green_of()
    assert figures_of(placed(green, 10, 20, "left")) == pytest.approx((10 * YARD, 6 * YARD, "right"))
    assert figures_of(placed(green, 10, 20, "right")) == pytest.approx((10 * YARD, 6 * YARD, "left"))
    assert figures_of(placed(green, 10, 0, "centre"))[2] == "left"  # of two equal ones
    assert figures_of(placed(green, 10, 1, "left"), "centre")[1] / YARD == pytest.approx(-12)
    assert figures_of(placed(green, 10, 1, "left"), "right")[1] / YARD == pytest.approx(25)


# Greens of odd shapes


def test_the_margin_is_that_of_the_piece_on_the_approach_line():
    green = green_of(CUP)
    place = placed(green, 25, 3, "right")
    assert (place.across / YARD, place.left / YARD) == pytest.approx((1, 5), abs=1e-3)
    assert codes(place.remarks) == ["chords"] and "3 pieces" in place.remarks[0]
    assert codes(placed(green, 19, 3, "right").remarks) == []  # before the notch


def test_a_pin_beyond_a_notch_is_said_from_the_centre():
    """No figure from a margin says it: 9 yd from the left would lie in a notch already."""
    green = green_of(CUP)
    place = placed(green, 25, 10, "centre")
    assert place.to_margin / YARD == pytest.approx(3, abs=1e-3) and place.right < 0
    assert figures_of(place) == pytest.approx((25 * YARD, 10 * YARD, "centre"))
    with pytest.raises(NotPlaceable):
        placed(green, 25, 23, "left")


def test_a_pin_on_a_horn_before_the_front_has_a_place_but_no_figures():
    played = play_hole(hole_of(HORNED), 1)
    before = locate_pin(played.green, np.array([9, 265]) * YARD + _origin(played))
    assert (before.on / YARD, before.to_margin / YARD) == pytest.approx((-5, 4), abs=1e-3)
    assert codes(before.remarks) == ["before_front", "aside"]
    assert (before.left / YARD, before.right / YARD) == pytest.approx((4, 4), abs=1e-3)
    behind = locate_pin(played.green, np.array([-9, 306]) * YARD + _origin(played))
    assert codes(behind.remarks) == ["beyond_back", "aside"] and behind.back < 0


def _origin(played):
    """Where the page's origin lies in a hole's frame."""
    return played.frame.to_frame(hole_of().crs)([(0.0, 0.0)])[0]


def test_on_counts_from_the_front_of_the_main_chord():
    """A green in two pieces along its approach: a pond cuts through it on the approach line."""
    pond = rectangle(-5, 280, 5, 284)
    green = green_of(Polygon(SQUARE.exterior, [pond.exterior.coords]))
    assert len(green.pieces) == 2
    place = placed(green, 5, 6, "left")
    assert place.across / YARD == pytest.approx(-7)
    assert green.depth / YARD == pytest.approx(16, abs=1e-3)
    assert float((place.point - green.front) @ green.direction) / YARD == pytest.approx(5)
    before = placed(green, 1, 0, "centre")
    assert before.to_margin / YARD == pytest.approx(1, abs=1e-3)  # the pond's margin is one


# What cannot be placed


@pytest.mark.parametrize(
    "figures, code, told",
    [
        ((-1, 5, "left"), "before_front", "-1.0 yd on lies before"),
        (
            (31, 5, "left"),
            "beyond_back",
            "31.0 yd on lies beyond the green’s back: the green is 30.0 yd deep",
        ),
        ((30.04, 0, "centre"), "beyond_back", "30.04 yd on lies beyond the green’s back: the green is 30.00"),
        ((10, -1, "left"), "outside", "-1.0 yd from left"),
        ((10, 0, "left"), "on_margin", "0.0 yd from left"),
        ((10, 0, "right"), "on_margin", "0.0 yd from right"),
        (
            (10, 27, "right"),
            "too_wide",
            "27.0 yd from right reaches the other margin: the green is 26.0 yd wide",
        ),
        ((10, 26, "left"), "too_wide", "26.0 yd wide 10.0 yd on"),
        ((10, 5, "middle"), "no_side", "“middle”"),
        ((10, 5, ""), "no_side", ""),
        ((math.nan, 5, "left"), "no_figures", ""),
        ((10, math.inf, "centre"), "no_figures", ""),
    ],
)
def test_what_cannot_be_placed_says_why(figures, code, told):
    with pytest.raises(NotPlaceable) as caught:
        placed(green_of(), *figures)
    assert caught.value.remark.code == code
    assert told in caught.value.remark == str(caught.value)


def test_a_round_green_has_hardly_a_width_at_its_front():
    green = green_of(circle(0, 285, 15))
    with pytest.raises(NotPlaceable) as caught:
        placed(green, 0, 1, "left")
    assert caught.value.remark.code in ("too_wide", "no_margin")
    assert placed(green, 0, 0, "centre").to_margin == pytest.approx(0, abs=1e-6)


def test_a_pin_off_the_green_is_placed_if_its_figures_say_where():
    place = placed(green_of(), 10, 15, "centre")
    assert place.to_margin / YARD == pytest.approx(-2)
    assert codes(place.remarks) == ["off_green"] and "2.0 yd off the green" in place.remarks[0]
    assert figures_of(place)[2] == "centre"


def test_a_point_far_from_the_green_is_located_too():
    played = play_hole(hole_of(), 1)
    place = locate_pin(played.green, np.array([3, 100]) * YARD + _origin(played))
    assert (place.left, place.right) == (None, None)
    assert figures_of(place, "left") == pytest.approx((-170 * YARD, 3 * YARD, "centre"), abs=1e-3)
    assert codes(place.remarks) == ["off_green", "before_front"]


# What the committee wants kept


def test_a_row():
    row = in_yards(pin_rows(hole_of(), event(pin(23, 9, "right")))[0][0])
    assert (row.event, row.round, row.hole, row.off_from, row.remark) == ("Cup", 1, 1, "right", "")
    assert (row.on, row.off, row.across, row.to_margin, row.back) == pytest.approx((23, 9, 4, 7, 7), abs=1e-3)
    assert (row.x / YARD, row.y / YARD) == pytest.approx((4, 293), abs=1e-3)
    assert row.slope_pct is None and row.slope_azimuth is None


def test_near_the_margin():
    """4 yd: R&A, Guidance on Running a Competition; Course Rating Manual."""
    made = hole_of()
    (near,) = checked(made, pin(10, 3.5, "left"), limits=Limits())
    assert codes(near.remarks) == ["near_margin"]
    assert near.remarks[0] == "3.5 yd from the margin, less than 4.0 yd"
    (kept,) = checked(made, pin(10, 4, "left"), limits=Limits())
    assert kept.remarks == ()
    (off,) = checked(made, pin(10, 14, "centre"), limits=Limits())
    assert codes(off.remarks) == ["off_green"]


class Slope:
    """Ground of one slope; nothing is known beyond ``most`` m east of the origin."""

    def __init__(self, percent, most=1e9):
        self.percent, self.most = percent, most
        self.asked = []

    def slope_at(self, points, crs):
        self.asked.append(crs)
        known = points[:, 0] <= self.most
        return np.where(known, self.percent, np.nan), np.where(known, 120.0, np.nan)


def test_steep_ground():
    made, pins = hole_of(), (pin(10, 8, "left"), pin(10, 8, "right", number=2), pin(99, 8, "left", number=3))
    ground = Slope(3.25, most=0.0)
    steep, unknown, lost = checked(made, *pins, limits=replace(NO_LIMITS, slope_pct=3.0), terrain=ground)
    assert ground.asked == [made.crs]
    assert steep.remarks == ("the ground falls 3.2 % here, more than 3 %",) and codes(steep.remarks) == [
        "steep"
    ]
    assert steep.slope == (3.25, 120.0)
    assert codes(unknown.remarks) == ["no_slope"] and unknown.slope is None
    assert codes(lost.remarks) == ["beyond_back"] and lost.slope is None
    assert checked(made, pins[0], limits=replace(NO_LIMITS, slope_pct=3.25), terrain=ground)[0].remarks == ()
    row = pin_rows(made, event(pins[0]), terrain=ground)[0][0]  # no limit
    assert (row.slope_pct, row.slope_azimuth, row.remark) == (3.25, 120.0, "")
    approach = play_hole(made, 1).green.azimuth  # up the page, which may be turned against true north
    assert row.slope_turn == pytest.approx((120.0 - approach) % 360)
    level = pin_rows(made, event(pins[0]), terrain=Slope(0.0))[0][0]
    assert level.slope_pct == 0.0 and level.slope_turn == pytest.approx(row.slope_turn)
    assert pin_rows(made, event(pins[0]))[0][0].slope_turn is None


def test_near_an_earlier_rounds_pin():
    """3 paces: R&A, Guidance on Running a Competition."""
    pins = [pin(10, 8, "left"), pin(12, 8, "left", number=2), pin(15, 8, "left", number=3)]
    first, second, third = checked(hole_of(), *pins, limits=Limits())
    assert codes(first.remarks) == [] == codes(third.remarks)  # exactly 3 yd from the second
    assert second.remarks == ("2.0 yd from the pin of round 1, less than 3.0 yd",)
    assert codes(second.remarks) == ["near_earlier"]


def test_an_earlier_pin_of_another_hole_on_the_same_green_counts():
    made = course(
        [feature("green", 1, circle(0, 300, 15), 1, 2), tee(2, 0, 0), tee(3, 0, 600, hole=2)],
        {1: line((0, 0), (0, 300)), 2: line((0, 600), (0, 300))},
        {1: 4, 2: 4},
    )
    there = pin(16, 1, "centre", hole=2)  # at (-1, 299): two approaches, one against the other
    here = pin(14, 0, "centre", number=2)
    other, own = checked(made, there, here, limits=Limits())
    assert codes(other.remarks) == []
    assert own.remarks == ("1.0 yd from the pin of hole 2 in round 1, less than 3.0 yd",)


def test_the_row_of_one_pin_is_that_of_the_event():
    made, pins = hole_of(), [pin(10, 8, "left"), pin(12, 8, "left", number=2)]
    rows = pin_rows(made, event(*pins, limits=Limits(slope_pct=2.0)), terrain=Slope(5.0))[0]
    played = play_hole(made, 1)
    earlier = [(1, 1, placed(played.green, 10, 8, "left").point)]
    assert pin_row(played, pins[1], Limits(slope_pct=2.0), made.crs, earlier, (5.0, 120.0)) == rows[1]
    assert rows[1].remark.count(";") == 1


# A green that was redrawn, a point that was moved


def test_figures_are_followed_where_the_point_no_longer_agrees():
    made = hole_of()
    (agrees,) = checked(made, pin(10, 5, "left", at=(-8.005, 280)))
    assert agrees.remarks == ()
    (differs,) = checked(made, pin(10, 5, "left", at=(-8, 281.5)))
    assert codes(differs.remarks) == ["redrawn"] and "1.50 yd from its figures" in differs.remarks[0]
    assert (differs.point[0] / YARD, differs.point[1] / YARD) == pytest.approx((-8, 280), abs=1e-3)
    assert (differs.on / YARD, differs.off / YARD, differs.off_from) == (10, 5, "left")


def test_a_point_stays_where_its_figures_no_longer_agree():
    made = hole_of()
    (agrees,) = checked(made, pin(10, 21, "right", given="point", at=(-8, 280)))
    assert agrees.remarks == () and agrees.off_from == "right"
    (differs,) = checked(made, pin(11, 20, "right", given="point", at=(-8, 280)))
    assert (
        codes(differs.remarks) == ["redrawn"] and "11.00 yd on and 20.00 yd from right" in differs.remarks[0]
    )
    assert differs.point == (-8 * YARD, 280 * YARD)
    assert (differs.on / YARD, differs.off / YARD) == pytest.approx((10, 21), abs=1e-3)


def test_a_point_without_figures_gets_them():
    (found,) = checked(hole_of(), pin(given="point", at=(-8, 280)))
    assert (found.on / YARD, found.off / YARD, found.off_from) == (
        pytest.approx(10, abs=1e-3),
        pytest.approx(5, abs=1e-3),
        "left",
    )
    assert checked(hole_of(), pin(at=(-8, 280)))[0].off_from == "left"  # figures it was to be given by


def test_a_point_beyond_a_margin_is_no_longer_said_from_it():
    (found,) = checked(hole_of(CUP), pin(25, 5, "left", given="point", at=(10, 100)))
    assert found.off_from == "centre" and "redrawn" in codes(found.remarks)


@pytest.mark.parametrize("at", [(math.nan, 0), (math.inf, 280), (1e12, 1e12)])
def test_a_point_off_the_map_is_none(at):
    made = hole_of()
    (by_point,) = checked(made, pin(given="point", at=at))
    assert codes(by_point.remarks) == ["no_point"] and by_point.place is None
    (by_figures,) = checked(made, pin(10, 5, "left", at=at))
    assert by_figures.remarks == () and by_figures.place is not None


def test_figures_may_be_numpys():
    green = green_of()
    place = place_pin(green, np.int64(9), np.float32(5), "left")
    assert (place.on, place.left) == pytest.approx((9, 5))
    for odd in (None, "9"):
        with pytest.raises(NotPlaceable):
            place_pin(green, odd, 5, "left")


# What an event lacks


def test_what_has_no_place_is_a_row_and_a_problem():
    made = course(
        [
            feature("green", 1, SQUARE, 1),
            tee(2, 0, -5),
            feature("green", 3, area((900, 0), (900.001, 0), (900, 1)), 3),
        ],
        {1: line((0, -5), (0, 285)), 2: line((0, 0), (300, 0)), 3: line((900, -300), (900, 1)), 4: None},
    )
    pins = (
        pin(10, 27, "left"),
        pin(10, 5, "left", hole=2, fid=7),
        pin(10, 5, "left", hole=3),
        pin(10, 5, "left", hole=4),
        pin(10, 5, "left", hole=5),
        pin(10, None, "left", hole=1, number=2),
        pin(10, 5, "left", hole=1, number=3, given="point"),
        pin(given="point", at=(2, 3), hole=2, number=4),
    )
    rows, problems = pin_rows(made, event(*pins, rounds=[Round(1), Round(2), Round(3), Round(4)]))
    assert len(rows) == len(pins)
    wanted = ["too_wide", "no_green", "too_small", "no_line", "no_hole", "no_point", "no_point"]
    assert [problem.code for problem in problems] == wanted
    assert all(row.x is None and row.to_margin is None and row.remark for row in rows[:-1])
    assert [row.on for row in rows[:5]] == [10 * YARD] * 5
    assert (rows[-1].x, rows[-1].y, rows[-1].remark) == (2 * YARD, 3 * YARD, "the hole has no green")
    assert (problems[1].kind, problems[1].fid) == ("pin", 7)
    assert problems[1] == "Pin of round 1, hole 2: the hole has no green."
    assert rows[4].remark == "the course has no hole 5"


def test_rounds_that_are_not_there():
    made, pins = hole_of(), [pin(10, 8, "left"), pin(15, 8, "left", number=2), pin(20, 8, "left", number=3)]
    found = checked(made, *pins, rounds=[Round(1, holes=(1, 2)), Round(2, holes=(2,))])
    assert [codes(one.remarks) for one in found] == [[], ["not_played"], ["no_round"]]
    assert [codes(one.remarks) for one in checked(made, *pins)] == [[], [], []]


def test_two_pins_for_one_hole_and_round():
    found = checked(hole_of(), pin(20, 8, "left", number=2), pin(10, 8, "left"), pin(15, 8, "left"))
    assert [(one.pin.round, codes(one.remarks)) for one in found] == [
        (1, ["double"]),
        (1, ["double"]),
        (2, []),
    ]


def test_rows_come_by_round_and_hole():
    made = course(
        [feature("green", n, circle(100 * n, 300, 15), n) for n in (1, 2)],
        {n: line((100 * n, 0), (100 * n, 300)) for n in (1, 2)},
    )
    pins = [pin(10, 0, "centre", number=n, hole=h) for n, h in [(2, 1), (1, 2), (2, 2), (1, 1)]]
    rows, _ = pin_rows(made, event(*pins))
    assert [(row.round, row.hole) for row in rows] == [(1, 1), (1, 2), (2, 1), (2, 2)]
    assert pin_rows(made, event(*pins[::-1]), CourseIndex(made))[0] == rows


def test_an_event_without_pins():
    assert pin_rows(hole_of(), event(), terrain=Slope(1.0)) == ((), ())


def test_remarks_speak_in_the_courses_unit():
    made = hole_of(settings={"unit": "m"})
    (found,) = checked(made, pin(10, 3, "left"), limits=Limits())
    assert found.remarks == ("2.7 m from the margin, less than 3.7 m",)
    played = play_hole(made, 1)
    assert (
        follow(played, pin(40, 3, "left"), made.crs, "m")
        .remarks[0]
        .endswith("27.4 m deep along its approach")
    )


def test_remarks_in_another_language(loudly):
    pins = [
        pin(10, 3, "left", at=(0, 280)),
        pin(11, 3, "left", number=2, at=(0, 280), given="point"),
        pin(11, 3, "left", number=2),
        pin(25, 15, "centre", number=3),
        *(
            pin(*figures, number=4)
            for figures in [(10, 27, "left"), (99, 1, "left"), (-1, 0, "left"), (9, 0, "left")]
        ),
        *(
            pin(*figures, number=5)
            for figures in [(9, -1, "left"), (9, 1, "X"), (9, 3, "left"), (math.nan, 1, "left")]
        ),
        pin(given="point", at=(9, 265), number=6),
        pin(number=6),
        pin(1, 1, "left", hole=2, number=6),
        pin(1, 1, "left", hole=9, number=6),
    ]
    made = hole_of(HORNED.union(CUP).difference(rectangle(-2, 292, 2, 293)))
    made = replace(made, holes=(*made.holes, replace(made.holes[0], number=2)))
    an_event = event(*pins, limits=Limits(slope_pct=1.0), rounds=[Round(1), Round(2, holes=(2,)), Round(4)])
    for ground in (Slope(4.0), Slope(4.0, most=-100.0)):
        rows, problems = pin_rows(made, an_event, terrain=ground)
        for text in [*(row.remark for row in rows), *problems]:
            assert text and left_over(text) == []
