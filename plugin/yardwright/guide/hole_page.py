"""A hole's page: where its parts lie on any size of paper or screen, and all that goes into them.

The picture with its overlay, the ladder beside it at the same height, the green, the notes, a head and a
foot. On pages wide enough the green stands in a column of its own, so that the picture has the page's whole
height, for holes are long and narrow; on a phone and on small pages it stands below.
"""

import math
from dataclasses import dataclass, field

from shapely.geometry import box

from ..measure.course import measure_hole
from ..measure.hole import CourseIndex, play_hole
from ..measure.pins import pin_rows
from ..measure.units import to_unit, whole
from ..model.errors import YardwrightError
from ..model.remarks import Remark
from ..model.words import said, say, to_say
from .drawing import (
    DARK,
    FLAG,
    PALE,
    QUIET,
    TEE,
    Drawing,
    Plate,
    broken,
    hatched,
    lines_within,
    paper,
    rounded,
    spot,
)
from .green_panel import green_panel
from .hole_overlay import hole_overlay
from .ladder import ladder, tee_of
from .sheet_parts import HAIR, LEAST_SIZE, Line, Text, cap_of, fitted, height_of, width_of
from .windows import MARGIN_MM, Panel, plan_window

SIZES = {"pocket": (107.95, 177.8), "phone": (90.0, 195.0), "A6": (105.0, 148.0)}
FORMS = ("screen", "pages", "booklet")
LEAST_PAGE = (70.0, 110.0)
_COLUMN_FROM_MM = 88.0
_COLUMN_SHAPE = 0.52
_GAP = 2.4
_LEGEND = {
    "bunker": to_say("bunker"),
    "penalty_area": to_say("water, penalty area"),
    "trees": to_say("trees"),
}


@dataclass(frozen=True)
class HolePage:
    """All of one hole's page.

    size: (width, height) in mm. plan: the WindowPlan of its picture. frames: ``{id: (left, top, width,
    height)}``. drawings: ``{id: Drawing}``, each of its frame's size. texts: ``{id: text}`` as they stand
    in head, notes and foot. remarks: what a user should know of it.
    """

    number: int
    size: tuple
    plan: object
    frames: dict
    drawings: dict
    texts: dict
    remarks: tuple = field(default=())


def hole_page_frames(size_mm, form="pages"):
    """``{id: (left, top, width, height)}`` in mm of a page of any size from 70 x 110 mm up.

    ids: ``head`` (in it ``number``, ``title`` and ``lengths``), ``picture``, ``overlay`` (the same place),
    ``ladder``, ``green``, ``notes``, ``foot``. form: one of FORMS; a screen needs less white about it.
    Raises YardwrightError for a page that is too small.
    """
    width, height = size_mm
    if not (math.isfinite(width + height) and width >= LEAST_PAGE[0] and height >= LEAST_PAGE[1]):
        raise YardwrightError(
            say(
                "A hole does not fit a page of {width} x {height} mm.",
                width=f"{width:g}",
                height=f"{height:g}",
            ),
            say("Choose a page of 70 x 110 mm or larger."),
        )
    margin = 2.5 if form == "screen" else min(max(0.038 * width, 3.0), 10.0)
    inner = width - 2 * margin
    head = min(max(0.075 * height, 9.0), 16.0)
    foot = 1.3 * height_of(LEAST_SIZE)
    top, bottom = margin + head + 1.4, height - margin - foot - 0.9
    scale = min(max(inner / 100.0, 0.82), 1.5)
    rung = 20.0 * scale
    left = margin
    frames = {
        "head": (left, margin, inner, head),
        "number": (left, margin, 1.12 * head, head),
        "title": (left + 1.12 * head + 2.0, margin, 0.3 * inner, head),
    }
    start = frames["title"][0] + frames["title"][2] + 1.0
    frames["lengths"] = (start, margin, left + inner - start, head)
    if inner >= _COLUMN_FROM_MM and width / height >= _COLUMN_SHAPE:
        side = max(0.345 * inner, 30.0)
        picture = inner - rung - _GAP - side
        green = min(side + 21.0, 0.5 * (bottom - top))
        column = left + picture + rung + _GAP
        places = (
            (left, top, picture, bottom - top),
            (column, top, side, green),
            (column, top + green + _GAP, side, bottom - top - green - _GAP),
        )
    else:
        picture = inner - rung
        green = min(max(0.26 * height, 30.0), 0.62 * inner + 14.0)
        base = bottom - green
        half = max(0.5 * inner, 30.0)
        places = (
            (left, top, picture, base - top - 1.6),
            (left, base, half, green),
            (left + half + _GAP, base, inner - half - _GAP, green),
        )
    frames["picture"] = frames["overlay"] = places[0]
    x, y, wide, high = places[0]
    frames["ladder"] = (x + wide, y, rung, high)
    frames["green"], frames["notes"] = places[1:]
    frames["foot"] = (left, height - margin - foot, inner, foot)
    return frames


def frames_in_pixels(size_mm, form, dpi):
    """The same with a picture of whole pixels, as ``hole_page`` takes them."""
    return _whole_pixels(hole_page_frames(size_mm, form), dpi)


def hole_page(
    course,
    index=None,
    number=1,
    event=None,
    size_mm=SIZES["pocket"],
    form="pages",
    tee_set="",
    round_number=None,
    grid=False,
    markers=True,
    description=None,
    notes=(),
    credit="",
    dpi=300.0,
    rows=None,
    frames=None,
    tables=None,
):
    """The HolePage of a hole of a Course.

    index: the course's CourseIndex. event: a model Event, for its pins and its flights' lengths. tee_set:
    whose figures; the longest where it has none here. round_number: whose pins, None for all rounds'. grid:
    over the green. markers: whether distance markers stand on the picture. description: None for the hole's
    own. notes: further texts to be printed. credit: of the images. dpi: of the picture. rows: the event's
    PinRows, where they are known already. frames: those of a template that lie elsewhere than in
    ``frames_in_pixels``. tables: of the hole, where it was measured.
    Raises YardwrightError where the hole cannot be shown or the page is too small.
    """
    index = index or CourseIndex(course)
    played = play_hole(course, number, index)
    if played is None:
        raise YardwrightError(
            say(
                "Hole {number} cannot be shown: neither a line of play nor a tee and a green are drawn.",
                number=number,
            ),
            say("Draw its line of play from the back tee to the green."),
        )
    frames = {**frames_in_pixels(size_mm, form, dpi), **(frames or {})}
    _, _, wide, high = frames["picture"]
    margin = min(MARGIN_MM + 1.0, wide / 8)
    plan = plan_window(played, "hole", Panel(wide, high, dpi), course.crs, margin_mm=margin)
    tables = measure_hole(course, number, index) if tables is None else tables
    if rows is None:
        rows = () if event is None else pin_rows(course, event, index)[0]
    rows = [row for row in rows if row.hole == number and (event is None or event.plays(row.round, number))]
    corners = plan.grid.corners()
    near = index.named_of(number) + index.open_within((*corners.min(axis=0), *corners.max(axis=0)))
    texts = _texts(course, played, plan, tables, event, description, notes, credit)
    tee = tee_of(played, tee_set)
    drawings = {
        "overlay": hole_overlay(plan, played, course, tables, tee_set, near, markers),
        "ladder": ladder(plan, played, course, tables, tee_set, frames["ladder"][2:]),
        "green": green_panel(course, index, number, frames["green"][2:], rows, round_number, grid),
    }
    drawings["head"] = _head(frames, texts, _lengths(course, played, tables, event), number)
    used = {place.symbol for name in ("ladder", "overlay") for place in drawings[name].places}
    drawings["notes"] = _notes(frames["notes"][2:], texts, tee, course.settings.unit, used, number)
    drawings["foot"] = _foot(frames["foot"][2:], texts, number)
    remarks = [*plan.remarks]
    for one in drawings.values():
        remarks += one.remarks
    return HolePage(number, tuple(size_mm), plan, frames, drawings, texts, tuple(remarks))


def _whole_pixels(frames, dpi):
    """The frames with a picture of whole pixels, which is then neither stretched nor off the ladder."""
    left, top, wide, high = frames["picture"]
    wide, high = (math.floor(value / 25.4 * dpi + 1e-6) / dpi * 25.4 for value in (wide, high))
    picture = (left, top, wide, high)
    _, _, rung, _ = frames["ladder"]
    return {**frames, "picture": picture, "overlay": picture, "ladder": (left + wide, top, rung, high)}


def _texts(course, played, plan, tables, event, description, notes, credit):
    hole, unit = played.hole, course.settings.unit
    facts = []
    if hole.par is not None:
        facts.append(say("Par {par}", par=hole.par))
    if hole.stroke_index is not None:
        facts.append(say("Index {index}", index=hole.stroke_index))
    lengths = _lengths(course, played, tables, event)
    own = hole.description if description is None else description
    return {
        "number": str(played.number),
        "name": hole.name,
        "facts": " · ".join(facts),
        "lengths": "\n".join(say("{name} {length}", name=name, length=said) for name, said, _ in lengths),
        "description": own.strip(),
        "notes": "\n".join(notes),
        "credit": credit,
        "about": " · ".join(
            filter(
                None,
                (
                    course.name,
                    say("1:{scale}", scale=f"{plan.scale:g}"),
                    say("metres") if unit == "m" else say("yards"),
                ),
            )
        ),
    }


def _lengths(course, played, tables, event):
    """``[(name, figure, colour)]``: a flight's length where the event has flights, else each tee set's."""
    unit = course.settings.unit
    measured = {row.tee_set: row.length for row in tables.get("lengths", ()) if row.length is not None}
    colours = {one.name: one.colour for one in course.tee_sets}
    order = {one.name: one.sort for one in course.tee_sets}
    if event is not None and event.flights:
        found = []
        for flight in event.flights:
            asked = {
                whole(to_unit(one.length, unit))
                for one in event.lengths
                if one.flight == flight.name
                and one.hole == played.number
                and event.plays(one.round, one.hole)
            }
            own = whole(to_unit(measured.get(flight.tee_set), unit))
            ends = sorted(asked) or ([own] if own is not None else [])
            if ends:
                text = str(ends[0]) if len(ends) == 1 else say("{low}–{high}", low=ends[0], high=ends[-1])
                found.append((flight.name, text, colours.get(flight.tee_set, "")))
        if found:
            return found
    names = sorted(measured, key=lambda name: (order.get(name, 99), -measured[name]))
    return [(name, str(whole(to_unit(measured[name], unit))), colours.get(name, "")) for name in names]


# --- head ----------------------------------------------------------------------------------------------


def _head(frames, texts, lengths, number):
    left, top, width, height = frames["head"]
    square = frames["number"][2]
    items = [paper(width, height), rounded(0.0, 0.0, square, height, DARK, 0.9)]
    size = _size_for(texts["number"], square - 2.0, height - 2.2)
    items.append(
        Text(square / 2, (height + cap_of(size)) / 2, texts["number"], size, True, "centre", PALE, "number")
    )
    start = frames["title"][0] - left
    least = start + max(frames["title"][2], 18.0)
    made, begins, left_out = _length_cells(lengths, least, width, height)
    items += made
    room = begins - 1.5 - start
    big = min(max(0.85 * height, 8.0), 13.0)
    name = texts["name"] or say("Hole {number}", number=number)
    shown, big = fitted(name, room, big, True)
    items.append(Text(start, 0.46 * height, shown, big, True, tone=DARK, about="name"))
    small = min(max(0.58 * height, 6.5), 9.0)
    line, small = fitted(texts["facts"], room, small)
    if line:
        items.append(Text(start, 0.88 * height, line, small, tone=QUIET, about="facts"))
    items.append(Line(((square + 1.0, height - 0.1), (width, height - 0.1)), 0.25, DARK))
    remarks = []
    if left_out:
        text = say(
            "head of hole {number}: no room for the lengths of {names}",
            number=number,
            names=", ".join(left_out),
        )
        remarks.append(Remark(text, "no_room"))
    if shown != name:
        text = say("the name of hole {number} is cut short", number=number)
        remarks.append(Remark(text, "cut_short"))
    return Drawing(width, height, tuple(items), (), tuple(remarks))


def _size_for(text, width, height):
    """The largest size of a bold text within a box, points."""
    by_height = height / cap_of(1.0)
    by_width = width / max(width_of(text, 1.0, True), 1e-6)
    return max(min(by_height, by_width), LEAST_SIZE)


def _length_cells(lengths, least, width, height):
    """``(items, where they begin, names left out)``: large figures where one row holds them, else small."""
    if not lengths:
        return [], width, []
    big = min(max(0.8 * height, 8.0), 12.0)
    cells = [
        max(width_of(name, LEAST_SIZE) + 1.9, width_of(figure, big, True)) + 2.4
        for name, figure, _ in lengths
    ]
    if sum(cells) <= width - least:
        items, right = [], width
        for (name, figure, colour), cell in reversed(list(zip(lengths, cells))):
            items.append(Text(right, 0.3 * height, name, LEAST_SIZE, align="right", tone=QUIET, about="tee"))
            items += _swatch(right - width_of(name, LEAST_SIZE) - 1.1, 0.3 * height, colour)
            items.append(Text(right, 0.82 * height, figure, big, True, "right", DARK, "length"))
            right -= cell
        return items, right, []
    step = 1.18 * height_of(LEAST_SIZE)
    rows = max(math.floor((height - 0.6) / step), 1)
    items, right, shown = [], width, 0
    columns = [lengths[n : n + rows] for n in range(0, len(lengths), rows)]
    sizes, room = [], width - least
    for column in columns:
        figures = max(width_of(figure, LEAST_SIZE, True) for _, figure, _ in column)
        names = min(max(width_of(name, LEAST_SIZE) for name, _, _ in column), 16.0)
        needed = figures + names + 1.0 + 2.0 + (1.6 if sizes else 0.0)
        if sum(sizes) + needed > room:
            break
        sizes.append(needed)
        shown += len(column)
    begins = width - sum(sizes)
    left = begins
    for column, cell in zip(columns, sizes):
        inset = 1.6 if column is not columns[0] else 0.0
        for line, (name, figure, colour) in enumerate(column):
            base = 0.2 + step * line + cap_of(LEAST_SIZE)
            right = left + cell
            items.append(Text(right, base, figure, LEAST_SIZE, True, "right", DARK, "length"))
            free = cell - inset - 2.0 - width_of(figure, LEAST_SIZE, True) - 0.6
            text, _ = fitted(name, free, LEAST_SIZE)
            items.append(Text(left + inset + 2.0, base, text, LEAST_SIZE, tone=QUIET, about="tee"))
            items += _swatch(left + inset + 0.9, base, colour)
        left += cell
    return items, begins, [name for name, _, _ in lengths[shown:]]


def _swatch(x, base, colour):
    return spot(x, base - cap_of(LEAST_SIZE) / 2, 0.62, colour or PALE, QUIET, 0.15)


# --- notes and foot ------------------------------------------------------------------------------------


def _notes(size, texts, tee, unit, used, number):
    """What is said of the hole, what the marks mean, and lines for what the player finds out."""
    width, height = size
    items, remarks = [paper(width, height)], []
    entries = [_Entry(*entry, width) for entry in _legend(tee, unit, used)]
    said_texts = [part for part in (texts["description"] + "\n" + texts["notes"]).split("\n") if part.strip()]
    for keep in range(len(entries), -1, -1):
        legend = sum(entry.height for entry in entries[:keep])
        room = height - legend - (1.5 if keep else 0.0)
        lines, points, all_said = lines_within(said_texts, width, max(room, 0.0), 7.5)
        if all_said and room >= 0.0:
            break
    y = 0.0
    for line in lines:
        base = y + cap_of(points) + 0.2
        if line:
            items.append(Text(0.0, base, line, points, tone=DARK, about="description"))
        y += 1.28 * height_of(points)
    if not all_said:
        text = say("the description of hole {number} is too long for its place", number=number)
        remarks.append(Remark(text, "cut_short"))
    top = height - legend
    ruled = 5.2
    count = math.floor((top - y - 3.0) / ruled)
    for line in range(1, count + 1):
        at = y + 1.0 + line * ruled
        items.append(Line(((0.0, at), (width, at)), 0.12, HAIR))
    for entry in entries[:keep]:
        items += entry.items(top)
        top += entry.height
    return Drawing(width, height, tuple(items), (), tuple(remarks))


def _legend(tee, unit, used):
    """What the marks of the page mean: ``[(kind, sample, words)]``, the most needed first."""
    units = say("metres") if unit == "m" else say("yards")
    made = []
    if tee is not None:
        made.append((TEE, "214", say("{unit} from {name}", unit=units, name=tee.tee_set)))
    made.append((FLAG, "150", say("{unit} to the green’s front", unit=units)))
    if "marker_proposed" in used:
        made.append(("marker", "", say("distance marker and what it says")))
    if "landing" in used:
        made.append(("landing", "", say("landing zone and width of the fairway")))
    made += [(kind, "", said(words)) for kind, words in _LEGEND.items() if kind in used]
    return made


class _Entry:
    """A line of the legend: a sample of a mark and what it means."""

    _SAMPLE = 8.4

    def __init__(self, kind, sample, words, width):
        self.kind, self.sample = kind, sample
        self.lines = broken(words, width - self._SAMPLE - 1.0, LEAST_SIZE)
        self.height = max(3.35, 1.15 * height_of(LEAST_SIZE) * len(self.lines) + 0.8)

    def items(self, top):
        """What is painted of it with its top at a height."""
        wide, y = self._SAMPLE, top + self.height / 2
        if self.kind in (TEE, FLAG):
            made = Plate(((self.kind, self.sample),), LEAST_SIZE).items(wide / 2, y, "legend")
        elif self.kind == "marker":
            made = spot(wide / 2, y, 0.5)
        elif self.kind == "landing":
            made = [
                Line(((x + inwards, y - 1.1), (x, y - 1.1), (x, y + 1.1), (x + inwards, y + 1.1)), 0.3, DARK)
                for x, inwards in ((0.9, 0.8), (wide - 0.9, -0.8))
            ]
        else:
            made = hatched(box(0.9, y - 1.1, wide - 0.9, y + 1.1), self.kind)
        step = 1.15 * height_of(LEAST_SIZE)
        base = y + cap_of(LEAST_SIZE) / 2 - step * (len(self.lines) - 1) / 2
        for number, line in enumerate(self.lines):
            at = base + step * number
            made.append(Text(wide + 1.0, at, line, LEAST_SIZE, tone=QUIET, about="legend"))
        return made


def _foot(size, texts, number):
    width, height = size
    base = (height + cap_of(LEAST_SIZE)) / 2
    items = [paper(width, height)]
    # The credit has to stand; of what the page is about the ends suffice.
    parts = texts["about"].split(" · ")
    room = width - width_of(texts["credit"], LEAST_SIZE) - 3.0
    while len(parts) > 1 and width_of(" · ".join(parts), LEAST_SIZE) > room:
        parts = parts[1:]
    about, _ = fitted(" · ".join(parts), 0.6 * width, LEAST_SIZE)
    items.append(Text(width, base, about, LEAST_SIZE, align="right", tone=QUIET, about="about"))
    room = width - width_of(about, LEAST_SIZE) - 3.0
    credit, _ = fitted(texts["credit"], room, LEAST_SIZE)
    remarks = ()
    if credit:
        items.append(Text(0.0, base, credit, LEAST_SIZE, tone=QUIET, about="credit"))
    if credit != texts["credit"]:
        text = say("the credit on the page of hole {number} is cut short", number=number)
        remarks = (Remark(text, "cut_short"),)
    return Drawing(width, height, tuple(items), (), remarks)
