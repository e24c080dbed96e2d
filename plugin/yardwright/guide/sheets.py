"""The sheets of an event: where the pins of a round are, those of a hole, what the committee checks, and
where the tee markers go. Each gives a ``sheet_parts.Sheet``, for ``painted_sheets.write_sheet``.

Greens are shown with the approach up, all of a sheet at one scale, never larger than 1:480.
"""

import math
from dataclasses import replace

from ..measure.fall import falls, rise_said
from ..measure.hole import CourseIndex
from ..measure.units import to_unit, whole
from ..model.errors import YardwrightError
from ..model.remarks import Remark
from ..model.words import said, say, to_say
from .lettering import day
from .sheet_cells import (
    best_grid,
    chosen_scale,
    dealt,
    depth_said,
    fall_figure,
    figures_said,
    least_on_a_page,
    may_be_used,
    shown,
    too_large_a_page,
)
from .sheet_greens import (
    approach_arrow,
    depth_line,
    ground,
    numbered,
    plotted,
    ruler,
    scale_needed,
    view_green,
)
from .sheet_parts import (
    HAIR,
    LEAST_SIZE,
    SOFT,
    Column,
    Line,
    Page,
    Sheet,
    Shell,
    Table,
    TableRow,
    Text,
    cap_of,
    fitted,
    width_of,
)

PAGES = {
    "A4": (210.0, 297.0),
    "A5": (148.0, 210.0),
    "A6": (105.0, 148.0),
    "Letter": (215.9, 279.4),
    "pocket": (107.95, 177.8),
    "phone": (90.0, 195.0),
}
"""Width and height of common pages, millimetres."""

_LARGEST_MM = 1200.0

_CAUTION = to_say(
    "The committee’s notices and the Local Rules prevail. Distances are measured on images and are no survey."
)
_READING = to_say(
    "On: from the front of the green, along the approach. From left or right: in from the green’s margin, "
    "square to the approach."
)
_FALL = to_say("Slope: how steep the ground is at the pin; the arrow points downhill, the approach up.")
_RISE = to_say("Rise: how much higher than the markers the green’s middle lies. No length counts it.")
_FALL_RULE = to_say(
    "the slope at the pins helps to read the greens: see first whether the Local Rules let a player carry it"
)


# --- the pins of one round -----------------------------------------------------------------------------


def pin_sheet(course, event, number, rows, page="A4", index=None, scale=None, per_page=None):
    """The pins of one round, a small green a hole.

    event: model Event; number: of the round. rows: PinRows, those of other events and rounds are left aside.
    page: a key of PAGES or (width, height) in mm. scale: the denominator; None: the largest that fits.
    per_page: greens on a page; None: as few pages as stay legible. Raises YardwrightError where the scale is
    larger than 1:480 or nothing fits.
    """
    width, height = page_size(page)
    index = index or CourseIndex(course)
    remarks = _not_played(event, rows, number)
    rows = _rows_of(event, rows, number)
    holes = _holes_of(course, event, number, rows)
    views = []
    for hole in holes:
        view = view_green(course, index, hole, rows)
        views.append(view)
        if view is None:
            remarks.append(Remark(say("hole {number} has no green", number=hole), "no_green"))
            continue
        remarks += _lost(view)
    with_green = [hole for hole, view in zip(holes, views) if view is not None]
    remarks += _without_pin(with_green, rows, number)
    drawn = [view for view in views if view is not None]
    if not drawn:
        raise YardwrightError(
            say("Round {number} has no green to show.", number=number),
            say("Draw the greens of its holes and place their pins first."),
        )
    unit = course.settings.unit
    remarks += _fall_remarks(rows)
    shell = _shell(course, event, number, width, height, _pin_foot(unit, rows))
    # The line about the scale is as long at any scale.
    planned = _with_scale(shell, 99999)
    grid = best_grid(drawn, len(holes), planned.inner, unit, scale, per_page, width, height)
    least = least_on_a_page(len(holes), grid.per_page)
    if not may_be_used(width, height, least):
        remarks.append(too_large_a_page())
    shell = _with_scale(shell, grid.scale)
    parts = dealt(list(zip(holes, views)), grid.per_page)
    pages = []
    for position, part in enumerate(parts, start=1):
        items, places = grid.page(part, number, unit)
        pages.append(Page(width, height, (*shell.items(position, len(parts)), *items), tuple(places)))
    return Sheet(
        _title(event, say("Round {number}", number=number)), tuple(pages), grid.scale, tuple(remarks)
    )


# --- the same as a table -------------------------------------------------------------------------------


def pin_table(course, event, number, rows, page="A4", index=None):
    """The pins of one round as a table: hole, on, off, from, depth of the green."""
    width, height = page_size(page)
    index = index or CourseIndex(course)
    unit = course.settings.unit
    remarks = _not_played(event, rows, number)
    rows = _rows_of(event, rows, number)
    holes = _holes_of(course, event, number, rows)
    lines = []
    for hole in holes:
        view = view_green(course, index, hole, rows)
        row = next((row for row in rows if row.hole == hole), None)
        figures = figures_said(row, unit) if row is not None else (("–", ""), ("–", ""))
        depth = shown(None if view is None else view.depth, unit)
        cells = (str(hole), figures[0][0], figures[1][0], figures[1][1], depth)
        lines.append(_with_fall(TableRow(cells), row, rows))
    remarks += _fall_remarks(rows)
    shell = _shell(course, event, number, width, height, _pin_foot(unit, rows))
    columns = (
        Column(say("Hole"), 1.8, bold=True),
        Column(say("On"), 1.6, "right", True),
        Column(say("Off"), 1.8, "right", True),
        Column(say("From"), 4.8),
        Column(say("Depth"), 2.0, "right"),
        *_fall_column(rows, 2.4),
    )
    table = _filling(columns, lines, shell.inner, 20.0, 9.0)
    title = _title(event, say("Round {number}", number=number))
    return _tabled(title, shell, table, lines, [*remarks, *_without_pin(holes, rows, number)])


def _filling(columns, lines, inner, largest, least):
    """The Table whose letters are as large as lets all rows stand on one page, within limits."""
    wide, high = inner[2] - inner[0], inner[3] - inner[1] - 1.5
    table = Table(columns, wide, largest)
    while table.size > least and len(table.parted(lines, high)) > 1:
        table = replace(table, size=max(least, table.size - 0.5))
    return table


def _tabled(title, shell, table, lines, remarks=()):
    left, top, _, bottom = shell.inner
    top += 1.5
    parts = table.parted(lines, bottom - top) or [[]]
    pages = tuple(
        Page(
            shell.width,
            shell.height,
            (*shell.items(position, len(parts)), *table.items(part, left, top)[0]),
        )
        for position, part in enumerate(parts, start=1)
    )
    return Sheet(title, pages, None, tuple(remarks))


# --- all rounds of one hole ----------------------------------------------------------------------------


def hole_sheet(course, event, hole, rows, page="A6", index=None, scale=None):
    """One green with the pins of all rounds of an event, numbered by round; arguments as of ``pin_sheet``."""
    width, height = page_size(page)
    unit = course.settings.unit
    rows = [row for row in rows if row.hole == hole]
    left_out = _not_played(event, rows)
    rows = _rows_of(event, rows)
    view = view_green(course, index or CourseIndex(course), hole, rows)
    if view is None:
        raise YardwrightError(
            say("Hole {number} has no green to show.", number=hole),
            say("Draw the green and give it this hole’s number."),
        )
    foot = _pin_foot(unit, rows)
    corner = say("Hole {number}", number=hole)
    line = " · ".join(filter(None, (course.name, depth_said(view, unit))))
    shell = Shell(width, height, event.name or course.name, line, corner, foot)
    planned = _with_scale(shell, 99999)
    left, top, right, bottom = planned.inner
    by_round = sorted(rows, key=lambda row: row.round)
    lines = [_with_fall(TableRow(_said_row(row, unit)), row, rows) for row in by_round]
    columns = (
        Column(say("Round"), 1.9, bold=True),
        Column(say("On"), 1.5, "right", True),
        Column(say("Off"), 1.9, "right", True),
        Column(say("From"), 4.5),
        *_fall_column(rows, 2.6),
    )
    weight = shell.weight
    table = Table(columns, right - left, max(8.0, 15.0 * weight), 1.7)
    table_height = table.head_height + sum(map(table.row_height, lines))
    size = max(LEAST_SIZE, 9.0 * weight)
    inside = left + width_of("40", size) + 2.5, top, right, bottom - table_height - 3.5
    found = scale_needed([view], inside[2] - inside[0], inside[3] - inside[1])
    if not math.isfinite(found) or inside[3] - inside[1] < 20.0:
        raise YardwrightError(
            say(
                "A page of {width} x {height} mm is too small for this green.",
                width=f"{width:g}",
                height=f"{height:g}",
            ),
            say("Choose a larger page."),
        )
    scale = chosen_scale(found, scale)
    left_out += _fall_remarks(rows)
    remarks = [*left_out, *_lost(view), *([] if may_be_used(width, height, 1) else [too_large_a_page()])]
    plot = plotted(view, inside, scale)
    items, places, more = _rounds_on(plot, unit, size, max(11.0, 15.0 * weight), inside[0] - 0.8)
    made, _ = table.items(lines, left, bottom - table_height - 1.0)
    shell = _with_scale(shell, scale)
    shown = Page(width, height, (*shell.items(1, 1), *items, *made), tuple(places))
    return Sheet(_title(event, corner), (shown,), scale, tuple(remarks + more))


def _said_row(row, unit):
    (on, _), (off, word) = figures_said(row, unit)
    return str(row.round), on, off, word


def _rounds_on(plot, unit, size, label_size, ruler_x):
    """``(items, places, remarks)`` of a green with all its pins and a measure of its depth."""
    made = ground(plot)
    items, places = depth_line(plot, unit)
    made += items
    made += ruler(plot, unit, size, ruler_x)
    texts = [str(pin.round) for pin in plot.view.pins]
    items, spots, unplaced = numbered(plot, texts, label_size, 0.9)
    remarks = [
        Remark(
            say(
                "the number of round {round} finds no room on hole {number}",
                round=pin.round,
                number=plot.view.hole,
            ),
            "no_room",
        )
        for pin in unplaced
    ]
    return made + items, places + spots, remarks


# --- what the committee checks -------------------------------------------------------------------------


def audit_sheet(course, event, rows, page="A4", index=None, scale=None):
    """Every green with the pins of all rounds, and their figures both ways, for the committee to check."""
    width, height = page_size(page, PAGES["A6"][0])
    index = index or CourseIndex(course)
    unit = course.settings.unit
    left_out = _not_played(event, rows)
    rows = _rows_of(event, rows)
    holes = _holes_of(course, event, None, rows)
    foot = (
        _units(unit),
        say(
            "For checking by the committee, not for use during a round. Bold: the figures as they are given."
        ),
        say("Left and right: to the green’s margin, square to the approach. Margin: to its nearest point."),
        *_fall_foot(rows),
        said(_CAUTION),
    )
    line = " · ".join(filter(None, (course.name, _days(event))))
    shell = Shell(width, height, event.name or course.name, line, say("Pins to check"), foot)
    planned = _with_scale(shell, 99999)
    left, top, right, bottom = planned.inner
    weight = min(1.0, (right - left) / 190.0)
    parts = [
        _AuditPart(view_green(course, index, hole, rows), hole, rows, unit, weight, right - left)
        for hole in holes
    ]
    drawn = [part.view for part in parts if part.view is not None]
    if not drawn:
        raise YardwrightError(
            say("The course has no green to show."),
            say("Draw the greens and give them their holes’ numbers."),
        )
    tallest = min(bottom - top, 84.0) - _AuditPart.HEAD
    found = scale_needed(drawn, parts[0].drawing_width, tallest - 6.0)
    scale = chosen_scale(found, scale)
    remarks = left_out + [
        Remark(say("hole {number} has no green", number=part.hole), "no_green")
        for part in parts
        if part.view is None
    ]
    remarks += [remark for view in drawn for remark in _lost(view)]
    pages, y = [[]], top
    for part in parts:
        high = part.height(scale, tallest)
        if pages[-1] and y + high > bottom:
            pages.append([])
            y = top
        pages[-1].append((part, y))
        y += high
    shell = _with_scale(shell, scale)
    made = []
    for number, page_parts in enumerate(pages, start=1):
        items, places = shell.items(number, len(pages)), []
        for position, (part, y) in enumerate(page_parts):
            if position:
                items.append(Line(((left, y), (right, y)), 0.15, HAIR))
            more_items, more_places, more_remarks = part.shown(left, y, scale, tallest)
            items += more_items
            places += more_places
            remarks += more_remarks
        made.append(Page(width, height, tuple(items), tuple(places)))
    return Sheet(_title(event, say("Pins to check")), tuple(made), scale, tuple(remarks))


class _AuditPart:
    """One green of the audit sheet: drawn on the left, its pins' figures in a table on the right."""

    HEAD = 2.0
    """White above it, millimetres."""

    def __init__(self, view, hole, rows, unit, weight, width):
        self.view, self.hole, self.unit, self.weight, self.width = view, hole, unit, weight, width
        self.drawing_width = 0.42 * width - 12.0 * weight
        self.left_of_table = 0.45 * width
        columns = (
            Column(say("Round"), 1.5, bold=True),
            Column(say("Front"), 1.4, "right"),
            Column(say("Back"), 1.4, "right"),
            Column(say("Left"), 1.4, "right"),
            Column(say("Right"), 1.4, "right"),
            Column(say("Centre"), 1.7, "right"),
            Column(say("Margin"), 1.7, "right"),
            *_fall_column(rows, 2.2),
        )
        self.rows = rows
        self.table = Table(
            columns, width - self.left_of_table, max(8.5, 12.0 * weight), 1.75, 1, max(7.0, 8.0 * weight)
        )
        self.lines = [] if view is None else [self._line(pin) for pin in view.pins]
        lost = [row for row in rows if row.hole == hole] if view is None else view.lost
        blank = ["–"] * (len(columns) - 1)
        self.lines += [TableRow((str(row.round), *blank), row.remark) for row in lost]

    def _line(self, pin):
        row, unit = pin.row, self.unit
        across = whole(to_unit(pin.across, unit))
        side = say("{distance} R", distance=across) if across > 0 else say("{distance} L", distance=-across)
        cells = (
            str(pin.round),
            shown(pin.on, unit),
            shown(self.view.depth - pin.on, unit),
            shown(pin.left, unit),
            shown(pin.right, unit),
            side if across else "0",
            shown(row.to_margin, unit),
        )
        said_by = {"left": 3, "right": 4, "centre": 5}.get(row.off_from)
        return _with_fall(TableRow(cells, row.remark, bold=frozenset({1, said_by})), row, self.rows)

    def _drawing_height(self, scale, tallest):
        if self.view is None:
            return 0.0
        return min(self.view.size()[1] * 1000.0 / scale + 6.0 + 5.0, tallest)

    @property
    def _table_top(self):
        """Below the hole's number and the green's depth."""
        return self.HEAD + cap_of(17.0 * self.weight) + 4.0

    def height(self, scale, tallest):
        """Of the whole part, millimetres."""
        rows = self.table.head_height + sum(map(self.table.row_height, self.lines))
        return max(self._table_top + rows + 3.0, self.HEAD + self._drawing_height(scale, tallest) + 1.5, 30.0)

    def shown(self, left, top, scale, tallest):
        """``(items, places, remarks)`` with its top left corner at a place."""
        size = 17.0 * self.weight
        x, base = left + self.left_of_table, top + self.HEAD + cap_of(size) + 0.6
        title = say("Hole {number}", number=self.hole)
        made = [Text(x + 0.8, base, title, size, True, about=f"hole {self.hole}")]
        small = max(7.5, 9.5 * self.weight)
        if self.view is None:
            text = say("no green drawn")
        else:
            text = say(
                "depth {depth}, approach from {where}",
                depth=shown(self.view.depth, self.unit),
                where=self.view.approach_from,
            )
        room = self.width - self.left_of_table - 0.8 - width_of(title, size, True) - 4.0
        text, small = fitted(text, room, small)
        made.append(Text(left + self.width - 0.8, base, text, small, align="right", tone=SOFT, about="depth"))
        if self.lines:
            made += self.table.items(self.lines, x, top + self._table_top)[0]
        else:
            made.append(Text(x + 0.8, top + self._table_top + cap_of(small) + 2.0, say("no pin"), small))
        if self.view is None:
            return made, [], []
        inside = (
            left + 10.0 * self.weight,
            top + self.HEAD,
            left + 10.0 * self.weight + self.drawing_width,
            top + self.HEAD + self._drawing_height(scale, tallest),
        )
        room = inside[0], inside[1], inside[2], inside[3] - 5.0
        plot = plotted(self.view, room, scale)
        items, places, remarks = _rounds_on(
            plot, self.unit, max(LEAST_SIZE, 7.5 * self.weight), 12.0 * self.weight, inside[0] - 0.8
        )
        arrow = plot.at(0.0, 0.0)[0]
        items += approach_arrow(min(max(arrow, inside[0] + 1), inside[2] - 1), inside[3], 4.6)
        return made + items, places, remarks


# --- how the ground falls at the pins ------------------------------------------------------------------


def _knows_falls(rows):
    return any(row.slope_pct is not None for row in rows)


def _fall_column(rows, share):
    """The last column of a table of pins, where the slope of any of them is known."""
    return [Column(say("Slope"), share, "right")] if _knows_falls(rows) else []


def _with_fall(line, row, rows):
    """A TableRow with the cell of that column; row: its PinRow, None without a pin."""
    if not _knows_falls(rows):
        return line
    cell = "–" if row is None else fall_figure(row) or "–"
    downhill = row is not None and falls(row.slope_pct, row.slope_turn)
    arrows = {len(line.cells): row.slope_turn} if downhill else {}
    return replace(line, cells=(*line.cells, cell), arrows=arrows)


def _fall_foot(rows):
    return [said(_FALL)] if _knows_falls(rows) else []


def _fall_remarks(rows):
    """A Remark on a sheet for players that tells them the slope. Model Local Rule G-11 (from memory) lets a
    committee restrict what they may carry to read a green."""
    return [Remark(said(_FALL_RULE), "slope_told")] if _knows_falls(rows) else []


def _pin_foot(unit, rows):
    return _units(unit), said(_READING), *_fall_foot(rows), said(_CAUTION)


# --- where the tee markers go --------------------------------------------------------------------------


def tee_sheet(course, event, number, rows, page="A4"):
    """Where the markers of each flight stand in a round, for the ground staff; rows: TeeSettingRows."""
    width, height = page_size(page)
    unit = course.settings.unit
    remarks = _not_played(event, rows, number)
    rows = _rows_of(event, rows, number)
    if not rows:
        raise YardwrightError(
            say("No tee is set for round {number}.", number=number),
            say("Give the lengths of its holes and set the tees first."),
        )
    order = {hole: place for place, hole in enumerate(_holes_of(course, event, number, rows))}
    flights = {flight.name: place for place, flight in enumerate(event.flights)}
    rows = sorted(rows, key=lambda row: (order.get(row.hole, 99), flights.get(row.flight, 99), row.flight))
    plates = any(row.from_plate is not None for row in rows)
    heights = any(row.rise_m is not None for row in rows)
    lines, hole = [], None
    for row in rows:
        begins = row.hole != hole
        hole = row.hole
        cells = (
            str(hole) if begins else "",
            row.flight,
            shown(row.asked, unit),
            shown(row.got, unit),
            _tenths(row.from_front, unit),
            *([_plate(row, unit)] if plates else []),
            *(["–" if row.rise_m is None else rise_said(row.rise_m)] if heights else []),
        )
        lines.append(TableRow(cells, _note(row, unit), begins))
    foot = (
        _units(unit),
        say("From the front: back from the tee’s front edge along the line of play to the markers."),
        *_plate_foot(rows),
        *([said(_RISE)] if heights else []),
        said(_CAUTION),
    )
    shell = _shell(course, event, number, width, height, foot, say("Tees, round {number}", number=number))
    columns = (
        Column(say("Hole"), 1.3, bold=True),
        Column(say("Flight"), 3.6),
        Column(say("Asked"), 1.9, "right"),
        Column(say("Plays"), 1.9, "right", True),
        Column(say("From the front"), 2.3, "right", True),
        *([Column(say("From the plate"), 3.8, "right", True)] if plates else []),
        *([Column(say("Rise (m)"), 1.9, "right")] if heights else []),
    )
    table = _filling(columns, lines, shell.inner, 15.0, max(9.0, 12.0 * shell.weight))
    return _tabled(
        _title(event, say("Tees, round {number}", number=number)),
        shell,
        replace(table, note_from=1),
        lines,
        remarks,
    )


def _tenths(metres, unit):
    """A length that is measured with a tape: one decimal."""
    return "–" if metres is None else f"{to_unit(metres, unit):.1f}"


def _plate_foot(rows):
    """One sentence on tees without a permanent marker, where there are any."""
    of_tees = [row.from_plate is not None for row in rows if row.from_front is not None]
    if all(of_tees):
        return []
    if any(of_tees):
        return [say("Where no plate is drawn, the tee’s front is named instead.")]
    return [say("No plate is drawn for these tees: all is counted from their front.")]


def _plate(row, unit):
    """Where markers stand from the permanent one, in words; without one, from the tee's front."""
    metres = row.from_plate
    if metres is None:
        distance = _tenths(row.from_front, unit)
        if row.from_front is None:
            return "–"
        return (
            say("at the front") if float(distance) == 0.0 else say("{distance} from front", distance=distance)
        )
    figure = f"{abs(to_unit(metres, unit)):.1f}"
    if float(figure) == 0.0:
        return say("level with it")
    if metres > 0:
        return say("{distance} behind", distance=figure)
    return say("{distance} ahead", distance=figure)


def _plate_remark(metres, unit):
    """How ``measure.tee_setting`` remarks on what has a column of its own here."""
    figure = whole(to_unit(abs(metres), unit)) if metres is not None else None
    if not figure:
        return say("level with the plate") if figure == 0 else ""
    distance = f"{figure} {unit}"
    if metres > 0:
        return say("{distance} behind the plate", distance=distance)
    return say("{distance} ahead of the plate", distance=distance)


def _note(row, unit):
    """What a tee's row has to say beyond its figures."""
    known = _plate_remark(row.from_plate, unit)
    remarks = [part for part in row.remark.split("; ") if part not in ("", known)]
    if row.verdict == "impossible":
        remarks.insert(0, say("cannot be set"))
    elif row.verdict == "nearest":
        remarks.insert(0, say("the nearest length this tee allows"))
    return "; ".join(dict.fromkeys(remarks))


# --- what they share -----------------------------------------------------------------------------------


def page_size(page, least=74.0):
    """(width, height) in mm of a key of PAGES or of two numbers; YardwrightError where either is smaller
    than ``least`` or no page at all."""
    width, height = PAGES[page] if isinstance(page, str) and page in PAGES else _two_numbers(page)
    if not least <= min(width, height) <= max(width, height) <= _LARGEST_MM:
        raise YardwrightError(
            say("A page of {width} x {height} mm cannot be made.", width=f"{width:g}", height=f"{height:g}"),
            say(
                "Give a width and a height between {least} and {most} mm, such as 210 x 297.",
                least=f"{least:g}",
                most=f"{_LARGEST_MM:g}",
            ),
        )
    return width, height


def _two_numbers(page):
    try:
        width, height = (float(value) for value in page)
    except (TypeError, ValueError) as error:
        raise YardwrightError(
            say("“{page}” is no size of a page.", page=page),
            say(
                "Choose one of {pages}, or give a width and a height in millimetres.", pages=", ".join(PAGES)
            ),
        ) from error
    return (width, height) if math.isfinite(width) and math.isfinite(height) else (0.0, 0.0)


def _rows_of(event, rows, number=None):
    """The event's rows, of one round where told, on holes that their rounds play."""
    return [row for row in _all_rows_of(event, rows, number) if event.plays(row.round, row.hole)]


def _all_rows_of(event, rows, number=None):
    return [row for row in rows if row.event == event.name and number in (None, row.round)]


def _not_played(event, rows, number=None):
    """A Remark on each row that is left out because its round does not play its hole."""
    return [
        Remark(
            say("hole {hole} is left out: round {round} does not play it", hole=row.hole, round=row.round),
            "not_played",
        )
        for row in _all_rows_of(event, rows, number)
        if not event.plays(row.round, row.hole)
    ]


def _holes_of(course, event, number, rows):
    """Hole numbers in the order of play: of the round, else of the course; and others that rows name."""
    played = event.round(number) if number is not None else None
    holes = (
        list(played.holes) if played is not None and played.holes else [hole.number for hole in course.holes]
    )
    if number is None:
        holes = event.holes_in_play(holes)
    return list(dict.fromkeys([*holes, *sorted(row.hole for row in rows)]))


def _shell(course, event, number, width, height, foot, corner=None):
    played = event.round(number)
    line = " · ".join(
        filter(None, (course.name, day(played.played_on) if played and played.played_on else ""))
    )
    return Shell(
        width, height, event.name or course.name, line, corner or say("Round {number}", number=number), foot
    )


def _with_scale(shell, scale):
    return replace(shell, foot=(say("Greens 1:{scale}, approach up.", scale=f"{scale:g}"), *shell.foot))


def _units(unit):
    return say("Figures in metres.") if unit == "m" else say("Figures in yards.")


def _without_pin(holes, rows, number):
    """A Remark on each hole without a pin in a round; one for all where none has."""
    with_pin = {row.hole for row in rows}
    without = [hole for hole in holes if hole not in with_pin]
    if len(without) == len(holes):
        return [Remark(say("round {number} has no pin yet", number=number), "no_pin")]
    return [Remark(say("hole {number} has no pin in this round", number=hole), "no_pin") for hole in without]


def _lost(view):
    """A Remark on each pin that cannot be shown."""
    return [
        Remark(
            say(
                "the pin of round {round} is not on or near the green of hole {hole}",
                round=row.round,
                hole=row.hole,
            ),
            "lost_pin",
        )
        for row in view.lost
    ]


def _days(event):
    return " – ".join(dict.fromkeys(day(one) for one in (event.begins, event.ends) if one))


def _title(event, what):
    return f"{event.name}: {what}" if event.name else what
