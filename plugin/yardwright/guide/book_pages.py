"""What stands on the guide's pages beside the holes: the map of the course, the cover, the scorecard, the
imprint. Drawings in millimetres, for the frames of a page's layout."""

import math
from dataclasses import replace

import numpy as np
from shapely.geometry import MultiLineString, box

from ..measure.units import YARD, to_unit, whole
from ..model.geometry import coordinates, map_points
from ..model.words import said, say, to_say
from .drawing import (
    DARK,
    EARTH,
    LEAF,
    PALE,
    QUIET,
    WOOD,
    Drawing,
    edged,
    filled,
    hatched,
    spot,
)
from .lettering import day
from .sheet_parts import (
    HAIR,
    LEAST_SIZE,
    Area,
    Column,
    Line,
    Place,
    Table,
    TableRow,
    Text,
    cap_of,
    height_of,
    width_of,
)

GRASS, PUTTING = "#eef2e6", "#7fa56a"
_COVER, _COVER_LINE, _COVER_SHAPE = "#17211d", "#8fa597", "#2c3c34"
_TURN_FOR = 1.12
"""The map is turned from north where the course is shown so many times larger for it."""
_FINEST_MM = 0.06
_CELL_MM = 12.5
_RULED_MM = 7.0

CAUTIONS = (
    to_say("The committee’s notices and the Local Rules prevail over all that stands here."),
    to_say("Distances are measured on images and are no survey."),
    to_say("Boundary lines are drawn for orientation and have no legal force."),
    to_say("Nothing here plans for the flight of balls or for safety."),
)


class CourseMap:
    """Where the ground of a course falls in a frame: all holes in true geometry, north up, or turned where
    that shows them much larger.

    per_metre: millimetres. turn: degrees clockwise from up that north points to.
    """

    def __init__(self, course, width, height, margin=5.0):
        self.course, self.width, self.height = course, width, height
        shown = [one.line for one in course.holes if one.line is not None]
        shown += [one.geometry for one in course.features if one.kind in ("green", "tee", "fairway")]
        points = np.concatenate([coordinates(one) for one in shown]) if shown else np.zeros((0, 2))
        self.empty = not len(points)
        if self.empty:
            return
        room = np.array([max(width - 2 * margin, 1.0), max(height - 2 * margin, 1.0)])
        self._origin = points.mean(axis=0)
        points = points - self._origin
        laid = {turn: _scale_of(points @ _turning(turn), room) for turn in range(-85, 95, 5)}
        best = max(laid, key=lambda turn: (laid[turn], -abs(turn)))
        self.turn = best if laid[best] > _TURN_FOR * laid[0] else 0
        self.per_metre = laid[self.turn]
        self._axes = _turning(self.turn)
        turned = points @ self._axes
        self._middle = (turned.min(axis=0) + turned.max(axis=0)) / 2

    def to_page(self, points):
        """(n, 2) in mm from the frame's top left of (n, 2) in the course's CRS."""
        turned = (np.asarray(points, dtype=float) - self._origin) @ self._axes - self._middle
        return turned * (self.per_metre, -self.per_metre) + (self.width / 2, self.height / 2)

    def shapes(self, kind):
        """The features of a kind as shapes on the page, clipped to the frame."""
        found = [one.geometry for one in self.course.features if one.kind == kind]
        frame = box(0.0, 0.0, self.width, self.height)
        shapes = [
            shape.simplify(_FINEST_MM).buffer(0.0 if shape.geom_type.endswith("Polygon") else 0.2)
            for shape in map_points(found, self.to_page)
        ]
        shapes = [shape.intersection(frame) for shape in shapes]
        return [shape for shape in shapes if not shape.is_empty]

    def lines(self):
        """``{hole number: shapely line on the page}`` of the holes that are drawn."""
        holes = [hole for hole in self.course.holes if hole.line is not None]
        return {
            hole.number: line
            for hole, line in zip(holes, map_points([hole.line for hole in holes], self.to_page))
        }


def _turning(degrees):
    """Turns row vectors so that what pointed north points ``degrees`` clockwise from up."""
    angle = math.radians(degrees)
    return np.array([[math.cos(angle), -math.sin(angle)], [math.sin(angle), math.cos(angle)]])


def _scale_of(points, room):
    size = np.maximum(points.max(axis=0) - points.min(axis=0), 1.0)
    return float((room / size).min())


# --- overview ------------------------------------------------------------------------------------------


def overview(course, width, height):
    """The map of all holes as a Drawing; a Place ``hole`` stands in the middle of each number."""
    plan = CourseMap(course, width, height)
    ground = [Area((_ring(width, height),), GRASS)]
    if plan.empty:
        return Drawing(width, height, tuple(ground))
    items = ground
    for kind, tone in (("trees", WOOD), ("fairway", LEAF)):
        for shape in plan.shapes(kind):
            items += filled(shape, tone)
    for shape in plan.shapes("penalty_area"):
        items += hatched(shape, "penalty_area")
    for kind, tone, rim in (("bunker", EARTH, 0.1), ("tee", PUTTING, 0.1), ("green", PUTTING, 0.16)):
        for shape in plan.shapes(kind):
            items += [*filled(shape, tone), *edged(shape.boundary, rim, DARK)]
    lines = plan.lines()
    for line in lines.values():
        items += [Line(tuple(map(tuple, coordinates(line).tolist())), 0.3, DARK, (1.3, 0.8))]
    size = min(max(width / 13.0, 6.5), 10.0)
    spots = _number_places(lines, width, height, 0.72 * height_of(size))
    for number, (x, y) in spots.items():
        items += _number(x, y, str(number), size)
    items += _rose(plan, [*lines.values(), *(box(x - 2, y - 2, x + 2, y + 2) for x, y in spots.values())])
    places = tuple(Place("hole", number, x, y) for number, (x, y) in spots.items())
    return Drawing(width, height, tuple(items), places)


def _ring(width, height):
    return (0.0, 0.0), (width, 0.0), (width, height), (0.0, height)


def _number(x, y, text, size):
    return [
        *spot(x, y, 0.72 * height_of(size), DARK, PALE, 0.25),
        Text(x, y + cap_of(size) / 2, text, size, True, "centre", PALE, "hole"),
    ]


def _number_places(lines, width, height, radius):
    """``{hole: (x, y)}``: behind each tee, or the nearest place about it where no other number stands and
    as little as may be of the lines of play is covered."""
    places = {}
    apart = 2 * radius + 0.9
    played = MultiLineString(list(lines.values()))
    for number, line in lines.items():
        start, second = coordinates(line)[:2]
        away = (start - second) / max(float(np.hypot(*(start - second))), 1e-9)
        best = None
        for step in range(1, 6):
            for turn in (0, 45, -45, 90, -90, 135, -135, 180):
                c, s = math.cos(math.radians(turn)), math.sin(math.radians(turn))
                way = np.array([c * away[0] - s * away[1], s * away[0] + c * away[1]])
                x, y = start + way * (radius + 0.5) * step
                inside = radius <= x <= width - radius and radius <= y <= height - radius
                clear = all(math.hypot(x - a, y - b) >= apart for a, b in places.values())
                covered = box(x - radius, y - radius, x + radius, y + radius).intersection(played).length
                cost = (not clear, not inside, step + covered / radius + abs(turn) / 180)
                if best is None or cost < best[0]:
                    best = cost, (float(x), float(y))
        places[number] = best[1]
    return places


def _rose(plan, taken):
    """An arrow to north and a measure, in the corner where least is covered."""
    unit = plan.course.settings.unit
    step = 200.0 * (YARD if unit == "yd" else 1.0) * plan.per_metre
    while step > 0.3 * plan.width:
        step /= 2
    length = step / plan.per_metre / (YARD if unit == "yd" else 1.0)
    label = (
        say("{length} m", length=f"{length:g}") if unit == "m" else say("{length} yd", length=f"{length:g}")
    )
    wide, high = max(step, width_of(label, 6.5)) + 9.0, 8.0
    corners = [
        (left, top) for top in (plan.height - high - 1.5, 1.5) for left in (1.5, plan.width - wide - 1.5)
    ]

    def covered(corner):
        left, top = corner
        frame = box(left, top, left + wide, top + high)
        return sum(shape.intersection(frame).length for shape in taken)

    left, top = min(corners, key=covered)
    x, y, angle = left + 3.6, top + high / 2, math.radians(plan.turn)
    ahead = np.array([math.sin(angle), -math.cos(angle)])
    aside = np.array([-ahead[1], ahead[0]])
    middle = np.array([x, y + 0.6])
    tip, foot = middle + 2.6 * ahead, middle - 2.2 * ahead
    head = tuple(
        tuple(map(float, place)) for place in (tip, tip - 2 * ahead + aside, tip - 2 * ahead - aside)
    )
    north = middle + 4.0 * ahead
    base = float(north[1]) + cap_of(LEAST_SIZE) / 2
    made = [
        Line((tuple(map(float, foot)), tuple(map(float, tip))), 0.25, DARK),
        Area((head,), DARK),
        Text(float(north[0]), base, say("N"), LEAST_SIZE, True, "centre", DARK, "north"),
    ]
    start, end, level = left + 8.0, left + 8.0 + step, top + high - 1.6
    ends = ((start, level - 1.2), (start, level), (end, level), (end, level - 1.2))
    made.append(Line(ends, 0.3, DARK))
    made.append(Text((start + end) / 2, level - 1.0, label, 6.5, False, "centre", DARK, "measure"))
    return made


# --- cover ---------------------------------------------------------------------------------------------


def cover(course, width, height):
    """The cover's dark ground with the course on it in pale lines, below the title and above the event."""
    items = [Area((_ring(width, height),), _COVER)]
    band = height * 0.27, height * 0.78
    plan = CourseMap(course, width, band[1] - band[0], 0.1 * width)
    if not plan.empty:
        moved = []
        for shape in plan.shapes("fairway"):
            moved += filled(shape, _COVER_SHAPE)
        for kind in ("penalty_area", "fairway"):
            for shape in plan.shapes(kind):
                moved += edged(shape.boundary, 0.12, _COVER_LINE)
        for line in plan.lines().values():
            moved.append(Line(tuple(map(tuple, coordinates(line).tolist())), 0.18, PALE, (1.2, 0.9)))
        for shape in plan.shapes("green"):
            moved += filled(shape, PALE)
        items += [_lowered(one, band[0]) for one in moved]
    return Drawing(width, height, tuple(items))


def _lowered(item, by):
    if isinstance(item, Area):
        return replace(item, rings=tuple(tuple((x, y + by) for x, y in ring) for ring in item.rings))
    return replace(item, points=tuple((x, y + by) for x, y in item.points))


# --- scorecard -----------------------------------------------------------------------------------------


def cards(course, event, figures):
    """``[(title, columns, rows)]`` of the scorecards: one for all rounds that play the same holes at the same
    lengths.

    columns: names of flights, or of tee sets without any. rows: ``[(hole number, [figure or None, ...])]`` in
    the order of play. figures: a BookFigures.
    """
    if event is None or not event.flights:
        names = [one.name for one in sorted(course.tee_sets, key=lambda one: one.sort)]
        measured = {hole.number: dict(figures.lengths(hole.number)) for hole in course.holes}
        names = [name for name in names if any(name in one for one in measured.values())]
        rows = [(number, [lengths.get(name) for name in names]) for number, lengths in measured.items()]
        return [(say("Scorecard"), names, rows)]
    found = {}
    for number, rows in lengths_of_rounds(course, event, figures):
        found.setdefault(repr(rows), ([], rows))[0].append(number)
    made = []
    for rounds, rows in found.values():
        title = say("Scorecard")
        if len(found) > 1:
            said_rounds = ", ".join(map(str, rounds))
            title = say("Scorecard, round {number}", number=said_rounds)
        made.append((title, [one.name for one in event.flights], rows))
    return made


def lengths_of_rounds(course, event, figures):
    """``[(round's number, rows)]`` of an Event with flights, one of None while it has no round.

    rows: ``[(hole, [figure or None, ...])]`` in the order of play, a figure a flight: what is asked for, else
    what its tees measure. figures: a BookFigures.
    """
    unit = course.settings.unit
    asked = {(one.round, one.flight, one.hole): whole(to_unit(one.length, unit)) for one in event.lengths}
    measured = {hole.number: dict(figures.lengths(hole.number)) for hole in course.holes}
    found = []
    for number in [one.number for one in event.rounds] or [None]:
        held = event.round(number)
        holes = held.holes if held is not None and held.holes else [*measured]
        rows = []
        for hole in holes:
            own = measured.get(hole, {})
            rows.append(
                (hole, [asked.get((number, one.name, hole), own.get(one.tee_set)) for one in event.flights])
            )
        found.append((number, rows))
    return found


def scorecard(course, columns, rows, width, height):
    """The Drawings of a scorecard, several where its columns are many; a Place ``hole`` in each row.

    columns, rows: of ``cards``. Printed figures are added up, so that the sums agree with what one reads.
    """
    most = max(int((width - 24.0) // _CELL_MM), 1)
    parts = [slice(first, first + most) for first in range(0, max(len(columns), 1), most)]
    return [_card(course, columns[part], [(n, f[part]) for n, f in rows], width, height) for part in parts]


def _card(course, names, rows, width, height):
    holes = {hole.number: hole for hole in course.holes}
    lines, numbers = [], []
    halves = [rows[:9], rows[9:]] if len(rows) == 18 else [rows]
    for half, title in zip(halves, (say("Out"), say("In"))):
        for number, figures in half:
            hole = holes.get(number)
            cells = (str(number), _cell(hole and hole.par), _cell(hole and hole.stroke_index))
            lines.append(TableRow((*cells, *map(_cell, figures))))
            numbers.append(number)
        if len(halves) > 1:
            lines.append(_sum(title, half, holes))
            numbers.append(None)
    lines.append(_sum(say("Total"), rows, holes))
    numbers.append(None)
    fixed = (
        Column(say("Hole"), 1.25, bold=True),
        Column(say("Par"), 0.95, "right"),
        Column(say("Index"), 1.1, "right"),
    )
    columns = (*fixed, *(Column(name, 1.7, "right", True) for name in names))
    table = Table(columns, width, 12.0, 1.85)
    while table.size > 6.5 and _height(table, lines) > height:
        table = replace(table, size=table.size - 0.25)
    leading = (height - table.head_height - 0.5) / (len(lines) * height_of(table.size))
    table = replace(table, leading=min(max(leading, 1.15), 2.1))
    items, bottom = table.items(lines, 0.0, 0.0)
    places, y, shades = [], table.head_height, []
    for number, line in zip(numbers, lines):
        high = table.row_height(line)
        if number is None:
            shades.append(Area((((0, y), (width, y), (width, y + high), (0, y + high)),), GRASS))
        else:
            places.append(Place("hole", number, width / 2, y + high / 2))
        y += high
    unit = say("Metres") if course.settings.unit == "m" else say("Yards")
    if bottom + 1.6 + cap_of(6.5) <= height:
        items.append(
            Text(width, bottom + 1.6 + cap_of(6.5), unit, 6.5, align="right", tone=QUIET, about="unit")
        )
    return Drawing(width, height, (*shades, *items), tuple(places))


def _height(table, lines):
    return table.head_height + sum(map(table.row_height, lines)) + 0.5


def _cell(value):
    return "–" if value is None else str(value)


def _sum(title, rows, holes):
    pars = [holes[number].par if number in holes else None for number, _ in rows]
    columns = list(zip(*(figures for _, figures in rows)))
    cells = (title, _total(pars), "", *map(_total, columns))
    return TableRow(cells, bold=frozenset(range(len(cells))))


def _total(values):
    values = list(values)
    return "–" if not values or None in values else str(sum(values))


# --- notes ---------------------------------------------------------------------------------------------


def ruled(width, height):
    """Lines to write on."""
    count = int((height - 1.0) // _RULED_MM)
    levels = [number * _RULED_MM for number in range(1, count + 1)]
    return Drawing(width, height, tuple(Line(((0.0, y), (width, y)), 0.12, HAIR) for y in levels))


# --- imprint -------------------------------------------------------------------------------------------


def imprint(course, event, credits_of_pictures):
    """The text of the imprint: whose images, the cautions, what it was made with."""
    parts = [*map(said, CAUTIONS), ""]
    if credits_of_pictures:
        parts += [say("Pictures: {credits}", credits=_ended("; ".join(credits_of_pictures)))]
    drawn = list(dict.fromkeys(filter(None, map(credit_of, course.images))))
    drawn = [one for one in drawn if one not in credits_of_pictures]
    if drawn:
        parts += [say("Drawn from: {credits}", credits=_ended("; ".join(drawn)))]
    parts += ["", say("Figures in metres.") if course.settings.unit == "m" else say("Figures in yards.")]
    parts += [say("Made with Yardwright.")]
    return "\n".join(parts)


def credit_of(image):
    """Credit and licence of an ImageDate, "" without."""
    return ", ".join(filter(None, (image.credit, image.licence)))


def dates_of(event):
    """The days of an event as people write them."""
    days = [day(one) for one in (event.begins, event.ends) if one]
    return " – ".join(dict.fromkeys(days))


def _ended(text):
    return text if text.endswith((".", "!", "?")) else text + "."
