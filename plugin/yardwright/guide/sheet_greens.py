"""A green as a sheet shows it: turned so that the approach points up, with its pins, in a box on the page.

A green's own coordinates are metres: ``across`` to the right of the approach line, ``on`` from the front.
"""

import math
from dataclasses import dataclass

import numpy as np
from shapely.geometry import box

from ..measure.hole import play_hole
from ..measure.line import as_point, chord_nearest, chords
from ..measure.units import UNITS
from ..model.geometry import holding, map_points
from .labels import placed
from .sheet_parts import (
    GRAINS,
    GREEN,
    INK,
    PAPER,
    SAND,
    SOFT,
    Area,
    Dots,
    Line,
    Place,
    Text,
    box_area,
    cap_of,
    width_of,
)

ABOUT_M = 9.0
"""Ground about a green that may be shown with it."""
MARGIN_MM = 2.0
_NEAR_PIN_M = 5.0
_LOST_M = 30.0
"""A pin so far off its green is a mistake: no green would be seen for the ground between."""
_TICK_EVERY, _FIGURE_EVERY = 5, 10
"""Ticks of the depth line and figures beside it, in the course's unit."""
_GRAIN_MM, _GRAINS_APART_MM = 0.13, 1.0
_PER_MM = 5.0
"""``labels.placed`` thinks in pixels; so many of them make a millimetre of paper."""


@dataclass(frozen=True)
class PinSpot:
    """A pin in its green's own coordinates. off, off_from: as its row says; None, "" where it does not.
    left, right: metres to the ends of the square line, None where it has none."""

    round: int
    across: float
    on: float
    row: object
    left: float = None
    right: float = None

    @property
    def margin(self):
        """Where on the square line *off* counts from, metres across; None without."""
        off = self.row.off
        if off is None:
            return None
        return {"left": self.across - off, "right": self.across + off, "centre": 0.0}.get(self.row.off_from)


@dataclass(frozen=True)
class GreenView:
    """A hole's green in its own coordinates. green: shapely; aprons, bunkers: tuples of it. full: (across
    least, on least, across most, on most) of the green; needed: the same of what has to be shown, which is
    less of a green that several holes share. lost: PinRows whose pin has no place, or none near the green."""

    hole: int
    green: object
    depth: float
    approach_from: str
    aprons: tuple
    bunkers: tuple
    pins: tuple
    full: tuple
    needed: tuple
    lost: tuple = ()

    def pin(self, number):
        """The pin of a round, None without."""
        return next((pin for pin in self.pins if pin.round == number), None)

    def size(self):
        """Width and depth of what has to be shown, metres."""
        return self.needed[2] - self.needed[0], self.needed[3] - self.needed[1]


def view_green(course, index, number, rows):
    """The GreenView of a hole with the pins of PinRows; None for a hole without a measured green."""
    played = play_hole(course, number, index)
    if played is None or played.green is None:
        return None
    green = played.green
    axes = np.column_stack([(green.direction[1], -green.direction[0]), green.direction])

    def to_own(points):
        return (np.asarray(points, dtype=float) - green.front) @ axes

    polygon = map_points([green.geometry], to_own)[0]
    near = polygon.buffer(ABOUT_M)
    about = {"apron": [], "bunker": []}
    for feature in played.features:
        if feature.kind in about:
            shape = map_points([feature.geometry], to_own)[0]
            if shape.intersects(near):
                about[feature.kind].append(shape)
    own = [row for row in rows if row.hole == number]
    spots = [row for row in own if None not in (row.x, row.y) and math.isfinite(row.x + row.y)]
    pins = []
    if spots:
        places = to_own(played.frame.to_frame(course.crs)([(row.x, row.y) for row in spots]))
        pins = [
            _pin(polygon, row, *place)
            for row, place in zip(spots, places.tolist())
            if np.isfinite(place).all() and polygon.distance(as_point(place)) <= _LOST_M
        ]
    shown = {id(pin.row) for pin in pins}
    return GreenView(
        hole=number,
        green=polygon,
        depth=green.depth,
        approach_from=green.approach_from,
        aprons=tuple(about["apron"]),
        bunkers=tuple(about["bunker"]),
        pins=tuple(sorted(pins, key=lambda pin: pin.round)),
        full=polygon.bounds,
        needed=_needed(polygon, green.depth, pins, len(green.feature.holes) > 1),
        lost=tuple(row for row in own if id(row) not in shown),
    )


def _pin(polygon, row, across, on):
    """A pin with the ends of its square line: of the chord that holds the approach line, else the nearest."""
    chord = chord_nearest(chords(polygon, (0.0, on), (1.0, 0.0)))
    left, right = (None, None) if chord is None else (across - chord[0], chord[1] - across)
    return PinSpot(row.round, across, on, row, left, right)


def _needed(polygon, depth, pins, shared):
    low_x, low_y, high_x, high_y = polygon.bounds
    xs = [x for pin in pins for x in (pin.across, pin.margin) if x is not None] + [0.0]
    ys = [pin.on for pin in pins] + [0.0]
    if shared:
        # A hole's part of a green of two: what its pins and their figures lie in, and half its depth.
        reach = max(max(ys) + _NEAR_PIN_M, depth / 2)
        high_y = min(high_y, reach)
        low_y = max(low_y, min(min(ys), 0.0) - _NEAR_PIN_M)
        low_x = max(low_x, min(min(xs), -_NEAR_PIN_M) - _NEAR_PIN_M)
        high_x = min(high_x, max(max(xs), _NEAR_PIN_M) + _NEAR_PIN_M)
    return min(low_x, *xs), min(low_y, *ys), max(high_x, *xs), max(high_y, *ys)


@dataclass(frozen=True)
class Plot:
    """A GreenView laid into a box of the page. box: (left, top, right, bottom) mm; middle: its own
    coordinates amid the box; scale: the denominator."""

    view: GreenView
    box: tuple
    scale: float
    middle: tuple

    def at(self, across, on):
        """(x, y) on the page of a place."""
        left, top, right, bottom = self.box
        per_metre = 1000.0 / self.scale
        return (
            (left + right) / 2 + (across - self.middle[0]) * per_metre,
            (top + bottom) / 2 - (on - self.middle[1]) * per_metre,
        )

    def to_page(self, points):
        """The same of (n, 2)."""
        return np.column_stack(self.at(points[:, 0], points[:, 1]))

    def place(self, symbol, across, on, number=None):
        """The Place of something of this green."""
        x, y = self.at(across, on)
        return Place(symbol, self.view.hole, float(x), float(y), number)


def plotted(view, inside, scale):
    """The Plot of a view in a box: what has to be shown is, and as much of the rest as there is room for."""
    left, top, right, bottom = inside
    middle = tuple(
        _middle((view.full[k], view.full[k + 2]), (view.needed[k], view.needed[k + 2]), room * scale / 1000.0)
        for k, room in ((0, right - left - 2 * MARGIN_MM), (1, bottom - top - 2 * MARGIN_MM))
    )
    return Plot(view, inside, scale, middle)


def _middle(full, needed, room):
    """Amid the full length where it fits, else as near to that as shows what is needed."""
    middle = (full[0] + full[1]) / 2
    if full[1] - full[0] <= room:
        return middle
    low, high = needed[1] - room / 2, needed[0] + room / 2
    return (low + high) / 2 if low > high else min(max(middle, low), high)


def scale_needed(views, width, height):
    """The denominator at which what has to be shown of each view fits into a box, at least 1."""
    width, height = width - 2 * MARGIN_MM, height - 2 * MARGIN_MM
    if width <= 0 or height <= 0:
        return math.inf
    sizes = [view.size() for view in views]
    return max([1.0, *(1000.0 * max(size[0] / width, size[1] / height) for size in sizes)])


# --- what is painted -----------------------------------------------------------------------------------


def ground(plot):
    """Items of the green, its apron and its bunkers, cut at the box."""
    frame = box(plot.box[0], plot.box[1], plot.box[2], plot.box[3])
    shapes = [plot.view.green, *plot.view.aprons, *plot.view.bunkers]
    green, *around = map_points(shapes, plot.to_page)
    aprons, bunkers = around[: len(plot.view.aprons)], around[len(plot.view.aprons) :]
    rim = green.buffer(0.3)
    made = []
    for apron in aprons:
        made += _edges(apron.boundary.difference(rim), frame, 0.12, SOFT, (0.9, 0.7))
    made += _filled(green, frame, GREEN)
    made += _edges(green.boundary, frame, 0.4, INK)
    for bunker in bunkers:
        made += _filled(bunker, frame, SAND)
        grains = _grains(bunker.intersection(frame))
        if grains:
            made.append(Dots(grains, _GRAIN_MM, GRAINS))
        made += _edges(bunker.boundary, frame, 0.15, SOFT)
    return made


def _filled(shape, frame, tone):
    return [
        Area(tuple(_points(ring) for ring in (part.exterior, *part.interiors)), tone)
        for part in _parts(shape.intersection(frame), "Polygon")
    ]


def _edges(boundary, frame, width, tone, dash=()):
    lines = _parts(boundary.intersection(frame), "LineString")
    return [Line(_points(line), width, tone, dash) for line in _joined(lines)]


def _joined(lines):
    """Lines that a ring was cut into at its own beginning, as one again."""
    lines = list(lines)
    for first in lines:
        for second in lines:
            if first is not second and first.coords[-1] == second.coords[0]:
                rest = [line for line in lines if line is not first and line is not second]
                return [type(first)([*first.coords, *second.coords[1:]]), *_joined(rest)]
    return lines


def _parts(shape, kind):
    if shape.geom_type == kind:
        return [] if shape.is_empty else [shape]
    return [part for whole in getattr(shape, "geoms", ()) for part in _parts(whole, kind)]


def _points(line):
    return tuple((float(x), float(y)) for x, y, *_ in line.coords)


def _grains(shape):
    """Points of a staggered grid that lie well within a shape on the page."""
    inner = shape.buffer(-2 * _GRAIN_MM)
    if inner.is_empty:
        return ()
    left, top, right, bottom = inner.bounds
    step = _GRAINS_APART_MM
    rows = range(math.floor(top / step * 2), math.ceil(bottom / step * 2) + 1)
    points = [
        ((column + row % 2 / 2) * step, row * step / 2)
        for row in rows
        for column in range(math.floor(left / step) - 1, math.ceil(right / step) + 1)
    ]
    within = holding(inner, np.array(points).reshape(-1, 2))
    return tuple(point for point, inside in zip(points, within) if inside)


def depth_line(plot, unit, weight=1.0):
    """``(items, places)`` of the line from front to back, a tick every five of the unit."""
    depth = plot.view.depth
    front, back = plot.at(0.0, 0.0), plot.at(0.0, depth)
    left, top, right, bottom = plot.box
    shown_back = (back[0], max(back[1], top))
    made = [Line((front, shown_back), 0.15, SOFT)]
    places = [plot.place("front", 0.0, 0.0)]
    ends = [front]
    if back[1] >= top:
        ends.append(back)
        places.append(plot.place("back", 0.0, depth))
    made += [Line(((x - 1.4 * weight, y), (x + 1.4 * weight, y)), 0.2, INK) for x, y in ends]
    for step in range(_TICK_EVERY, math.ceil(depth / UNITS[unit]), _TICK_EVERY):
        x, y = plot.at(0.0, step * UNITS[unit])
        if y > top:
            half = (0.9 if step % _FIGURE_EVERY == 0 else 0.5) * weight
            made.append(Line(((x - half, y), (x + half, y)), 0.15, SOFT))
    return made, places


def pin_lines(plot, pin, weight=1.0):
    """Items of the two lengths a pin is found by: on along the depth line, off along the square line."""
    foot, hole = plot.at(0.0, pin.on), plot.at(pin.across, pin.on)
    made = [Line((plot.at(0.0, 0.0), foot), 0.55 * weight)]
    margin = pin.margin
    if margin is not None:
        made.append(Line((plot.at(margin, pin.on), hole), 0.55 * weight))
    if margin != 0.0:
        made.append(Line((foot, hole), 0.15, SOFT, (0.5, 0.5)))
    return made


def pin_mark(plot, pin, radius):
    """``(items, places)`` of a pin: a black dot with a white ring about it, its middle where the hole is."""
    spot = plot.at(pin.across, pin.on)
    made = [Dots((spot,), radius + 0.4, PAPER), Dots((spot,), radius, INK)]
    return made, [plot.place("pin", pin.across, pin.on, pin.round)]


def numbered(plot, texts, size, radius):
    """``(items, places, unplaced)``: all pins of a view as dots with texts beside them that do not overlap.

    texts: one a pin. A text that stands away from its dot is led to it by a line. unplaced: the pins whose
    text found no room.
    """
    pins = plot.view.pins
    spots = [plot.at(pin.across, pin.on) for pin in pins]
    sizes = [(width_of(text, size, True) + 1.0, cap_of(size) + 1.0) for text in texts]
    axis = [plot.at(0.0, on) for on in np.arange(0.0, plot.view.depth, 2.0)]
    found = placed(
        np.array(spots) * _PER_MM,
        np.array(sizes) * _PER_MM,
        tuple(edge * _PER_MM for edge in plot.box),
        gap=(radius + 0.5) * _PER_MM,
        kept=np.array(axis + [point for spot in spots for point in _rim(spot, radius + 0.4)]) * _PER_MM,
        first=[(1.0, 0.0) if pin.across >= 0 else (-1.0, 0.0) for pin in pins],
    )
    plates, dots, letters, places, unplaced = [], [], [], [], []
    for pin, text, spot, (wide, high), middle in zip(pins, texts, spots, sizes, found):
        items, place = pin_mark(plot, pin, radius)
        dots += items
        places += place
        if middle is None:
            unplaced.append(pin)
            continue
        x, y = middle[0] / _PER_MM, middle[1] / _PER_MM
        gap = math.hypot(max(abs(x - spot[0]) - wide / 2, 0.0), max(abs(y - spot[1]) - high / 2, 0.0))
        if gap > radius + 2.0:
            plates.insert(0, Line((spot, (x, y)), 0.15, SOFT))
        plates.append(box_area(x - wide / 2, y - high / 2, x + wide / 2, y + high / 2, PAPER))
        letters.append(Text(x, y + cap_of(size) / 2, text, size, True, "centre", about="label"))
    return plates + dots + letters, places, unplaced


def _rim(spot, radius):
    """Points about a dot, so that labels keep off all of it and not off its middle only."""
    return [
        (spot[0] + radius * math.cos(turn), spot[1] + radius * math.sin(turn))
        for turn in np.arange(8) * (math.pi / 4)
    ]


def ruler(plot, unit, size, x):
    """Items of a measure of depth beside the green: figures every ten of the unit from the front."""
    left, top, right, bottom = plot.box
    made = []
    front = plot.at(0.0, 0.0)[1]
    back = max(plot.at(0.0, plot.view.depth)[1], top)
    made.append(Line(((x, front), (x, back)), 0.15, SOFT))
    for step in range(0, math.floor(plot.view.depth / UNITS[unit]) + 1, _TICK_EVERY):
        y = plot.at(0.0, step * UNITS[unit])[1]
        if y < top:
            break
        long = step % _FIGURE_EVERY == 0
        made.append(Line(((x - (1.2 if long else 0.7), y), (x, y)), 0.15, SOFT))
        if long and y - cap_of(size) / 2 > top - 0.5:
            made.append(
                Text(x - 1.8, y + cap_of(size) / 2, str(step), size, align="right", tone=SOFT, about="ruler")
            )
    return made


def approach_arrow(x, bottom, length):
    """Items of an arrow that points up the approach, its foot at a place."""
    head = 1.5
    shaft = Line(((x, bottom), (x, bottom - length + head)), 0.35)
    tip = ((x, bottom - length), (x - 0.9, bottom - length + head), (x + 0.9, bottom - length + head))
    return [shaft, Area((tip,), INK)]
