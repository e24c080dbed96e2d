"""What goes into one frame of a page, and the marks that all frames share.

Everything on a hole's page that counts **from the tee** stands light on a dark plate, everything that counts
**to the green** dark on a light one with a flag: told apart without colour, in a grey print too.
"""

import math
from dataclasses import dataclass

import numpy as np
from shapely.geometry import LineString, box

from ..model.geometry import intersections, meeting, spots
from .lettering import parts_of_word
from .sheet_parts import (
    LEAST_SIZE,
    PAPER,
    Area,
    Dots,
    Line,
    Text,
    cap_of,
    fitted,
    height_of,
    width_of,
)

DARK, PALE, QUIET, LEAF = "#17211d", "#ffffff", "#59635e", "#d3e4c4"
WATER, WOOD, EARTH = "#cfe0ea", "#a9bfa0", "#f4ecd6"
TEE, FLAG, BARE = "tee", "flag", "bare"
"""What a part of a Plate counts: from the tee, to the green, neither."""
_PAD, _RISE = 0.65, 0.62
_FLAG = 1.25
_ROUND = 0.55


@dataclass(frozen=True)
class Drawing:
    """The contents of a frame, millimetres from its top left corner. items, places: of ``sheet_parts``.
    remarks: what a user should know of it, ``model.remarks.Remark``."""

    width: float
    height: float
    items: tuple = ()
    places: tuple = ()
    remarks: tuple = ()


@dataclass(frozen=True)
class Plate:
    """Figures on a plate. parts: ``((kind, text), ...)`` side by side, kind TEE, FLAG or BARE (names, in
    lighter letters). size: points."""

    parts: tuple
    size: float = LEAST_SIZE

    @property
    def height(self):
        """Millimetres."""
        return cap_of(self.size) + 2 * _RISE

    @property
    def width(self):
        """Millimetres."""
        return sum(self._widths())

    def _widths(self):
        return [
            max(width_of(text, self.size, kind != BARE), 1.2) + 2 * _PAD + (_FLAG if kind == FLAG else 0.0)
            for kind, text in self.parts
        ]

    def items(self, x, y, about="label"):
        """Items of the plate with its middle at a place."""
        left, top = x - self.width / 2, y - self.height / 2
        right, bottom = x + self.width / 2, y + self.height / 2
        rim = 0.14
        made = [rounded(left - rim, top - rim, right + rim, bottom + rim, self._rim(), _ROUND + rim)]
        ends = [left]
        for width in self._widths():
            ends.append(ends[-1] + width)
        made.append(rounded(left, top, right, bottom, self._tone(0), _ROUND))
        for number, (kind, text) in enumerate(self.parts):
            start, end = ends[number], ends[number + 1]
            if number:
                made.append(rounded(start, top, end, bottom, self._tone(number), _ROUND, left_too=False))
            ink = PALE if kind == TEE else DARK
            if kind == FLAG:
                made += flag(start + _PAD + 0.15, bottom - 0.5, self.height - 1.0, ink)
            base = y + cap_of(self.size) / 2
            if kind == TEE and not text:
                made += peg((start + end) / 2, y, self.height - 1.1, ink)
            if text:
                made.append(Text(end - _PAD, base, text, self.size, kind != BARE, "right", ink, about))
        return made

    def _tone(self, number):
        return DARK if self.parts[number][0] == TEE else PALE

    def _rim(self):
        return PALE if any(kind == TEE for kind, _ in self.parts) else DARK


def rounded(left, top, right, bottom, tone, radius, left_too=True):
    """An upright rectangle with round corners; those on the left only if ``left_too``."""
    radius = min(radius, (right - left) / 2, (bottom - top) / 2)
    corners = (
        (right - radius, bottom - radius, 0, radius),
        (left + radius, bottom - radius, 90, radius if left_too else 0.0),
        (left + radius, top + radius, 180, radius if left_too else 0.0),
        (right - radius, top + radius, 270, radius),
    )
    ring = []
    for x, y, turn, round_by in corners:
        if not round_by:
            ring.append((left, bottom if turn == 90 else top))
            continue
        for step in range(5):
            angle = math.radians(turn + 22.5 * step)
            ring.append((x + round_by * math.cos(angle), y + round_by * math.sin(angle)))
    return Area((tuple(ring),), tone)


def flag(x, foot, height, tone):
    """Items of a small flag on its stick, its foot at a place."""
    top = foot - height
    cloth = ((x, top), (x + 0.52 * height, top + 0.26 * height), (x, top + 0.52 * height))
    return [Line(((x, foot), (x, top)), 0.16, tone), Area((cloth,), tone)]


def peg(x, y, height, tone):
    """Items of a small tee peg about a place."""
    top, foot = y - height / 2, y + height / 2
    half = 0.42 * height
    return [Line(((x - half, top), (x + half, top)), 0.34, tone), Line(((x, top), (x, foot)), 0.26, tone)]


def cased(points, width, tone=PALE, casing=DARK, dash=()):
    """A line that reads over bright and dark: one of the other tone beneath it."""
    points = tuple((float(x), float(y)) for x, y in points)
    return [Line(points, width + 0.28, casing, dash), Line(points, width, tone, dash)]


def spot(x, y, radius, tone=PALE, rim=DARK, width=0.22):
    """A dot with a rim that reads over bright and dark."""
    return [Dots(((x, y),), radius + width, rim), Dots(((x, y),), radius, tone)]


def diamond(x, y, radius, tone=PALE, rim=DARK):
    """A square on its corner with a rim."""

    def ring(by):
        return ((x, y - by), (x + by, y), (x, y + by), (x - by, y))

    return [Area((ring(radius + 0.35),), rim), Area((ring(radius),), tone)]


def filled(shape, tone):
    """Areas of a shapely polygon (or many), already in millimetres."""
    return [
        Area(tuple(ring_points(ring) for ring in (part.exterior, *part.interiors)), tone)
        for part in parts_of(shape, "Polygon")
    ]


def edged(shape, width, tone, dash=()):
    """Lines of a shapely line (or many), already in millimetres."""
    return [Line(ring_points(part), width, tone, dash) for part in parts_of(shape, "LineString")]


def parts_of(shape, kind):
    """The parts of one kind of any shapely geometry."""
    if shape.geom_type in (kind, "LinearRing" if kind == "LineString" else kind):
        return [] if shape.is_empty else [shape]
    return [part for whole in getattr(shape, "geoms", ()) for part in parts_of(whole, kind)]


def ring_points(ring):
    """The corners of a shapely ring or line as plain numbers."""
    return tuple((float(x), float(y)) for x, y, *_ in ring.coords)


def hatched(shape, kind):
    """Items that fill a shape on the page so that its kind reads without colour: bunkers are stippled, water
    is ruled across, woods are ruled aslant."""
    if kind == "bunker":
        grains = stipple(shape, 0.62)
        return [*filled(shape, EARTH), *([Dots(grains, 0.12, DARK)] if grains else [])]
    if kind == "penalty_area":
        return [*filled(shape, WATER), *_ruled(shape, 0.62, 0.0, 0.17)]
    return [*filled(shape, WOOD), *_ruled(shape, 0.85, 1.0, 0.12)]


def _ruled(shape, step, slope, width):
    left, top, right, bottom = shape.bounds
    reach = slope * (right - left)
    first, last = math.ceil(top / step), math.floor((bottom + reach) / step)
    lines = [
        LineString([(left, number * step), (right, number * step - reach)])
        for number in range(first, last + 1)
    ]
    return [item for shown in intersections(lines, shape) for item in edged(shown, width, DARK)]


def stipple(shape, step):
    """Points of a staggered grid within an upright box or any shape, tuple of (x, y)."""
    inner = shape.buffer(-0.14)
    if inner.is_empty:
        centre = shape.representative_point()
        return ((centre.x, centre.y),)
    left, top, right, bottom = inner.bounds
    rows = range(math.ceil(top / step * 2), math.floor(bottom / step * 2) + 1)
    points = [
        ((column + row % 2 / 2) * step, row * step / 2)
        for row in rows
        for column in range(math.floor(left / step) - 1, math.ceil(right / step) + 1)
    ]
    within = meeting(spots(np.array(points).reshape(-1, 2)), inner)
    return tuple(point for point, inside in zip(points, within) if inside)


class OnPicture:
    """Where places of the hole's frame fall on the picture of a WindowPlan, millimetres from its top left."""

    def __init__(self, plan):
        self.plan = plan
        self.width = plan.panel.to_mm(plan.grid.width)
        self.height = plan.panel.to_mm(plan.grid.height)
        self._centre = np.asarray(plan.centre, dtype=float)
        up = np.asarray(plan.up, dtype=float)
        self._axes = np.column_stack([(up[1], -up[0]), -up])
        self.per_metre = self.width / plan.ground[0]

    @property
    def frame(self):
        """The picture's edge as a shapely box."""
        return box(0.0, 0.0, self.width, self.height)

    def points(self, places):
        """(n, 2) on the page of (n, 2) places."""
        away = np.asarray(places, dtype=float).reshape(-1, 2) - self._centre
        return away @ self._axes * self.per_metre + (self.width / 2, self.height / 2)

    def at(self, place):
        """(x, y) of one place."""
        x, y = self.points([place])[0]
        return float(x), float(y)

    def turned(self, vector):
        """A direction of the frame as one on the page, (x, y), y downwards."""
        x, y = np.asarray(vector, dtype=float) @ self._axes
        return float(x), float(y)


_LEADING = 1.28


def lines_high(height, size, leading=_LEADING):
    """How many lines of a size in points a height in mm holds."""
    return max(math.floor((height + 0.28 * height_of(size)) / (leading * height_of(size)) + 1e-9), 0)


def all_broken(texts, width, size):
    """Paragraphs as lines within a width; an empty one is an empty line."""
    return [line for text in texts for line in (broken(text, width, size) or [""])]


def lines_within(texts, width, height, size, least=LEAST_SIZE, leading=_LEADING):
    """``(lines, size, whole)``: paragraphs broken into a width, ``size`` points or as small as they must be.

    whole: False where even the least size leaves lines over, which are left out, the last one marked by an
    ellipsis. A word longer than a line is broken anywhere: some languages write without spaces.
    """
    step = 0.25
    while True:
        lines = all_broken(texts, width, size)
        room = lines_high(height, size, leading)
        if len(lines) <= room:
            return lines, size, True
        if size - step < least - 1e-9:
            kept = lines[:room]
            if kept:
                kept[-1] = fitted(kept[-1] + " …", width, size)[0] if kept[-1] else "…"
            return kept, size, False
        size -= step


def broken(text, width, size, bold=False):
    """A text as lines within a width, at spaces, and within a word that is longer than a line."""
    lines = []
    for word in text.split():
        longer = f"{lines[-1]} {word}" if lines else word
        if lines and width_of(longer, size, bold) <= width:
            lines[-1] = longer
            continue
        lines += parts_of_word(word, width, size, bold)
    return lines


def paper(width, height):
    """A white ground."""
    return Area((((0.0, 0.0), (width, 0.0), (width, height), (0.0, height)),), PAPER)
