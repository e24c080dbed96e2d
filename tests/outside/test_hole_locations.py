"""Hole locations against a published example, the trade's arithmetic and closed forms."""

import math
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from shapely.affinity import rotate, scale
from shapely.geometry import Polygon
from yardwright.measure.frame import HoleFrame
from yardwright.measure.green import green_along
from yardwright.measure.pins import figures_of, locate_pin, pin_rows, place_pin
from yardwright.measure.units import YARD, whole
from yardwright.model.course import Feature
from yardwright.model.event import Event, Limits, Pin
from yardwright.model.geometry import map_points

from tests.makers import area, course, feature, in_yards, line, rectangle, straight_hole

MANY = settings(max_examples=80, deadline=None, derandomize=True)
NO_LIMITS = Limits(margin=0.0, apart=0.0)
WITHIN = 0.001  # metres
CORNERS = 4096  # of a drawn curve: on 25 m it lies less than 0.01 mm inside the true one


def rows_of(a_course, *pins):
    return [in_yards(row) for row in pin_rows(a_course, Event("Cup", pins=pins, limits=NO_LIMITS))[0]]


def in_metres(on, off, off_from, **more):
    return Pin("Cup", 1, 1, on * YARD, off * YARD, off_from, **more)


# Published, and of the trade


def uneven(front, depth):
    """A green as wide either side of its approach, whose front and back bulge away beside it."""
    right = [(0, front), (9, front - 2), (14, front + 9), (11, front + 20), (6, front + depth + 3)]
    return area(*right, (0, front + depth), *((-x, y) for x, y in right[:0:-1]))


def test_the_example_of_the_committees_guidance():
    """R&A, Guidance on Running a Competition, Appendix E: a green 30 deep, the hole 23 on and 9 from the
    right, so 7 from the back. The front is where the approach meets the green, not its lowest edge."""
    made = straight_hole(green=uneven(380, 30), length=395.0)
    (row,) = rows_of(made, in_metres(23, 9, "right"))
    assert whole(row.on + row.back) == 30 and whole(row.back) == 7
    margin = 11 - 5 * 3 / 13  # of the straight side from (11, 400) to (6, 413), at 403
    assert (row.x / YARD, row.y / YARD) == pytest.approx((margin - 9, 403), abs=1e-3)


def test_ten_on_and_five_from_the_left_of_a_green_nineteen_deep():
    """Common practice, no source."""
    made = straight_hole(green=rectangle(-13, 267, 13, 286), length=276.5)
    row, odd = rows_of(made, in_metres(10, 5, "left"), Pin("Cup", 2, 1, 20 * YARD, 5 * YARD, "left"))
    assert (row.x / YARD, row.y / YARD) == pytest.approx((-8, 277), abs=1e-3)
    assert whole(row.back) == 9 and whole(row.to_margin) == 5
    assert odd.x is None and "the green is 19.0 yd deep along its approach" in odd.remark


# Closed forms


def green_of(shape, anchor, turn):
    """The GreenPlay of a shape drawn for an approach up the page through ``anchor``, all turned by ``turn``
    radians."""
    frame, lain = HoleFrame(-3, 56), rotate(shape, turn, origin=(0, 0), use_radians=True)
    anchor, tee = turned(anchor, turn), turned((anchor[0], anchor[1] - 150), turn)
    return green_along(Feature("green", 1, lain), "150 yd", tee, anchor, frame)


def turned(point, turn):
    """A point turned anticlockwise about the origin."""
    (x, y), cos, sin = point, math.cos(turn), math.sin(turn)
    return np.array([x * cos - y * sin, x * sin + y * cos])


def disc(x, y, radius):
    around = np.arange(CORNERS) * (2 * math.pi / CORNERS)
    return Polygon(np.column_stack([x + radius * np.cos(around), y + radius * np.sin(around)]))


def half(radius, away):
    """Half of a circle's chord that runs so far beside its middle; 0 where it misses the circle."""
    return math.sqrt(max(radius * radius - away * away, 0.0))


def see_there_and_back(green, turn, column, front, back, ends, figures, pieces=1):
    """See that figures lead to the point of the closed form, and from there back to the same figures.

    column: x of the approach line; front, back: y of its ends; ends(y): x of the margins of the square line;
    pieces: how many it has. All as drawn. figures: (part of the depth, part of the chord, side).
    """
    depth, chord, off_from = figures
    assert green.depth == pytest.approx(back - front, abs=WITHIN)
    on = depth * (back - front)
    low, high = ends(front + on)
    off = chord * (high - low)
    x = low + off if off_from == "left" else high - off

    place = place_pin(green, on, off, off_from)
    assert place.point == pytest.approx(turned((x, front + on), turn), abs=WITHIN)
    assert place.across == pytest.approx(x - column, abs=WITHIN)
    assert (place.left, place.right) == pytest.approx((x - low, high - x), abs=WITHIN)
    assert place.back == pytest.approx(back - front - on, abs=WITHIN)
    assert [remark.code for remark in place.remarks] == ["chords"] * (pieces > 1)

    again = locate_pin(green, place.point)
    for told in (off_from, "left", "right", "centre", None):
        found = figures_of(again, told)
        assert told in (found[2], None)
        assert math.dist(place_pin(green, *found).point, place.point) <= WITHIN
    assert figures_of(again, off_from)[:2] == pytest.approx((on, off), abs=WITHIN)
    assert figures_of(again)[1] == pytest.approx(min(x - low, high - x), abs=WITHIN)


turns = st.floats(-math.pi, math.pi)
parts = st.floats(0.02, 0.98)
places = st.tuples(parts, parts, st.sampled_from(["left", "right"]))


@MANY
@given(turns, turns, st.floats(8, 25), st.floats(6, 25), places)
def test_an_ellipse_turned_to_any_angle(turn, lying, long, short, figures):
    """x = u cos - v sin, y = u sin + v cos in (u/long)^2 + (v/short)^2 = 1 is a quadratic form in x and y."""
    cos, sin = math.cos(lying), math.sin(lying)
    xx = (cos / long) ** 2 + (sin / short) ** 2
    yy = (sin / long) ** 2 + (cos / short) ** 2
    xy = cos * sin * (1 / long**2 - 1 / short**2)
    ellipse = rotate(scale(disc(0, 0, 1), long, short, origin=(0, 0)), lying, origin=(0, 0), use_radians=True)

    def ends(y):
        root = math.sqrt((xy * y) ** 2 - xx * (yy * y * y - 1))
        return (-xy * y - root) / xx, (-xy * y + root) / xx

    back = 1 / math.sqrt(yy)
    see_there_and_back(green_of(ellipse, (0, 0), turn), turn, 0.0, -back, back, ends, figures)


@MANY
@given(turns, st.floats(14, 24), st.floats(0.3, 0.7), st.floats(0.0, 0.5), parts, places)
def test_a_crescent(turn, radius, bite, nearest, beside, figures):
    """A disc bitten by a second one from the right, approached left of the bite, which may leave a second
    piece beyond it."""
    bite, nearest = bite * radius, nearest * radius
    middle = nearest + bite
    crescent = disc(0, 0, radius).difference(disc(middle, 0, bite))
    column = -0.6 * radius + beside * (nearest - 0.1 * radius + 0.6 * radius)
    back = half(radius, column)
    y = (2 * figures[0] - 1) * back
    assume(abs(abs(y) - bite) > 0.01)
    beyond = middle + half(bite, y) - half(radius, y)
    assume(abs(beyond) > 0.01)

    def ends(y):
        bitten = middle - half(bite, y) if abs(y) < bite else math.inf
        return -half(radius, y), min(half(radius, y), bitten)

    pieces = 2 if abs(y) < bite and beyond < 0 else 1
    green = green_of(crescent, (column, 0), turn)
    see_there_and_back(green, turn, column, -back, back, ends, figures, pieces)


@MANY
@given(turns, st.floats(8, 16), st.floats(0.4, 0.95), st.floats(-0.9, 0.9), places)
def test_an_hourglass_approached_from_its_end(turn, radius, apart, beside, figures):
    """Two discs, one behind the other, that overlap in a waist."""
    apart = apart * radius
    hourglass = disc(0, -apart, radius).union(disc(0, apart, radius))
    column = beside * half(radius, apart)
    back = apart + half(radius, column)

    def ends(y):
        width = half(radius, abs(y) - apart)
        return -width, width

    green = green_of(hourglass, (column, 0), turn)
    see_there_and_back(green, turn, column, -back, back, ends, figures)


@MANY
@given(turns, st.floats(8, 16), st.floats(0.4, 0.95), st.floats(-0.8, 0.35), places)
def test_an_hourglass_approached_from_its_side(turn, radius, apart, beside, figures):
    """The same lying across: beside the waist the square line cuts both discs, and the margin is that of the
    one on the approach."""
    apart = apart * radius
    hourglass = disc(-apart, 0, radius).union(disc(apart, 0, radius))
    column = -apart + beside * radius
    back = half(radius, column + apart)
    y = (2 * figures[0] - 1) * back
    waist = half(radius, apart)
    assume(abs(abs(y) - waist) > 0.01)

    def ends(y):
        width = half(radius, y)
        return -apart - width, apart + width if abs(y) < waist else -apart + width

    green = green_of(hourglass, (column, 0), turn)
    see_there_and_back(green, turn, column, -back, back, ends, figures, 1 if abs(y) < waist else 2)


@pytest.mark.parametrize("crs", ["EPSG:32630", "EPSG:4326", "EPSG:3857", "EPSG:32760"])
def test_there_and_back_through_the_courses_crs(crs):
    """Also where a unit of the CRS is a degree, or half a metre on the ground."""
    longitude, latitude = (179.9999, -56.0) if crs == "EPSG:32760" else (-3.0, 56.0)
    to_crs = HoleFrame(longitude, latitude).from_frame(crs)
    hole = course([feature("green", 1, uneven(380, 30), 1)], {1: line((0, 0), (0, 395))}, {1: 4}, turned=31.0)

    def lay(shape):
        return map_points([shape], to_crs)[0]

    made = replace(
        hole,
        crs=crs,
        holes=tuple(replace(one, line=lay(one.line)) for one in hole.holes),
        features=tuple(replace(one, geometry=lay(one.geometry)) for one in hole.features),
    )
    for side in ("left", "right", "centre"):
        by_figures = in_metres(12, 5, side)
        (there,) = rows_of(made, by_figures)
        (back,) = rows_of(made, replace(by_figures, given="point", point=(there.x, there.y)))
        assert back.remark == "" and back.off_from == side
        assert (back.on * YARD, back.off * YARD) == pytest.approx((12 * YARD, 5 * YARD), abs=WITHIN)
