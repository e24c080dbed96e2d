"""What a committee hands in: pins and lengths, as a CSV file or as text pasted from a spreadsheet.

Pins: ``round,hole,on,off,from[,green_depth]``; lengths: ``round,flight,hole,yards``. The line of headings may
stand below a title, its columns in any order, others among them. Comma, semicolon or tab between cells,
decimal point or comma; UTF-8, UTF-16 or Windows-1252. A heading may name its unit: ``on m``, ``on (yd)``.
"""

import codecs
import csv
import math
import os
import re
from dataclasses import dataclass

from ..measure.units import UNITS, YARD
from ..model.errors import YardwrightError
from ..model.event import SIDES, AskedLength, Pin
from ..model.kinds import BY_NAME
from ..model.words import said, say, to_say
from .cells import bare
from .separated import BadCell, key_of, named_rows, number_of, split_rows, whole_number

_UNIT_OF = {"m": 1.0, "metre": 1.0, "meter": 1.0, "yd": YARD, "yard": YARD}
_WITH_UNIT = re.compile(r"(.*?)_?[(\[]?(m|metre|meter|yd|yard)s?[)\]]?")
_SIDES = {
    "left": ("left", "l", "links"),
    "right": ("right", "r", "rechts"),
    "centre": ("centre", "center", "c", "mitte"),
}
_SIDE_OF = {word: side for side, words in _SIDES.items() for word in words}
_TITLE_LINES = 20
"""So many lines may stand above the headings."""


@dataclass(frozen=True)
class _Form:
    """What a file of one kind is headed. needed, free: columns that it must and may have; distances: those
    that hold a distance; others: headings that mean a column."""

    needed: tuple
    free: tuple
    distances: tuple
    others: dict
    advice: str


_PINS = _Form(
    ("round", "hole", "on", "off", "from"),
    ("green_depth", "note"),
    ("on", "off", "green_depth"),
    {"off_from": "from", "side": "from", "depth": "green_depth"},
    to_say("A line must read round,hole,on,off,from and may go on with green_depth."),
)
_LENGTHS = _Form(
    ("round", "flight", "hole", "yards"),
    (),
    ("yards",),
    {"length": "yards"},
    to_say("A line must read round,flight,hole,yards."),
)


def read_pins(source, unit="yd", event="", holes=None, rounds=None):
    """``(pins, bad rows)`` of a committee: model Pins and ``(line, reason)``, two tuples.

    source: the path of a file, or its text. unit: ``yd`` or ``m``, for columns whose heading names none.
    event: what the Pins belong to. holes, rounds: the numbers there are, None where any may be. Only the
    first of several rows for one hole and round is good. Raises YardwrightError when nothing can be read.
    """

    def pin(row):
        number, hole = row.round_and_hole(rounds, holes)
        on = row.distance("on")
        off_from = _side(row.text("from"))
        off = row.distance("off", below_zero=off_from == "centre")
        if off == 0.0 and off_from != "centre":
            raise BadCell(say("off is 0, which is the margin itself"))
        depth = row.distance("green_depth", needed=False)
        if depth == 0.0:
            raise BadCell(say("{column} is 0", column="green_depth"))
        note = row.text("note", needed=False)
        return Pin(event, number, hole, on, off, off_from, note=note, green_depth=depth, line=row.line)

    return _read(source, unit, _PINS, pin, lambda pin: (pin.round, pin.hole))


def read_lengths(source, unit="yd", holes=None, rounds=None, flights=None):
    """``(lengths, bad rows)`` of a committee: model AskedLengths and ``(line, reason)``, two tuples.

    As ``read_pins``; flights: the names there are, None where any may be. A column headed ``yards`` is in
    yards, one headed ``metres`` in metres and ``length`` in ``unit``.
    """
    known = None if flights is None else {name.casefold(): name for name in flights}

    def length(row):
        number, hole = row.round_and_hole(rounds, holes)
        flight = row.text("flight")
        if known is not None and flight.casefold() not in known:
            raise BadCell(say("the event has no flight “{name}”", name=flight))
        flight = flight if known is None else known[flight.casefold()]
        metres, limits = row.distance("yards"), BY_NAME["event_length"].field("yards")
        if not limits.low <= metres / YARD <= limits.high:
            raise BadCell(
                say(
                    "the length {value} is not between {low} and {high} yd",
                    value=row.cells["yards"],
                    low=limits.low,
                    high=limits.high,
                )
            )
        return AskedLength(number, flight, hole, metres, row.line)

    return _read(source, unit, _LENGTHS, length, lambda one: (one.round, one.flight.casefold(), one.hole))


def refuse_bad_rows(bad, source):
    """Raise YardwrightError that names every bad row of what was read from ``source``, if there is any."""
    if bad:
        raise YardwrightError(
            say(
                "“{source}” has rows that cannot be used. {rows}.",
                source=_name_of(source),
                rows=named_rows(bad),
            ),
            say("Mend these rows, or ask for the good rows only."),
        )


@dataclass(frozen=True)
class _Row:
    """One row. cells: texts by column; units: metres in its unit by column; surplus: see ``_surplus``."""

    line: int
    cells: dict
    units: dict
    decimal_comma: bool
    surplus: str = ""

    def text(self, column, needed=True):
        """The text of a cell, "" of an empty one that is not needed."""
        text = bare(self.cells.get(column, ""))
        if not text and needed:
            raise BadCell(say("{column} is missing", column=column))
        return text

    def whole(self, column):
        """The number of a round or hole."""
        text = self.text(column).lstrip("'")
        return whole_number(column, text, BY_NAME["event_length"].field(column))

    def round_and_hole(self, rounds, holes):
        """Their numbers, each one of those there are."""
        number, hole = self.whole("round"), self.whole("hole")
        if rounds is not None and number not in rounds:
            raise BadCell(say("the event has no round {number}", number=number))
        if holes is not None and hole not in holes:
            raise BadCell(say("the course has no hole {number}", number=hole))
        return number, hole

    def distance(self, column, needed=True, below_zero=False):
        """Metres; None of an empty cell that is not needed."""
        text = self.text(column, needed).lstrip("'")
        if not text:
            return None
        number = number_of(text, self.decimal_comma or re.fullmatch(r"-?\d+,\d{1,2}", text))
        if math.isnan(number):
            raise BadCell(say("{column} “{value}” is not a number", column=column, value=text))
        if number < 0.0 and not below_zero:
            raise BadCell(say("{column} {value} is below zero", column=column, value=text))
        return number * self.units[column]


def _side(text):
    side = _SIDE_OF.get(text.lstrip("'").casefold())
    if side is None:
        sides = ", ".join(map(said, SIDES))
        raise BadCell(say("from “{value}” is none of {sides}", value=text, sides=sides))
    return side


def _read(source, unit, form, made_of, key):
    """The good rows as ``made_of`` makes them of a _Row, and the bad ones."""
    if unit not in UNITS:
        raise YardwrightError(say("“{unit}” is not a unit of distances.", unit=unit), say("Take yd or m."))
    good, bad, lines = [], [], {}
    for row in _rows(source, unit, form):
        try:
            if row.surplus:
                raise BadCell(row.surplus)
            made = made_of(row)
            first = lines.setdefault(key(made), row.line)
            if first != row.line:
                raise BadCell(say("line {line} has this one already", line=first))
        except BadCell as reason:
            bad.append((row.line, str(reason)))
        else:
            good.append(made)
    return tuple(good), tuple(bad)


def _rows(source, unit, form):
    """The _Rows below the headings."""
    name, text = _name_of(source), _text_of(source)
    parts = re.split(r"(\r\n|\r|\n)", text)
    above, separator, columns = _headings(name, parts[::2], form)
    try:
        _, *lines = split_rows("".join(parts[2 * above :]), separator)
    except csv.Error as error:
        raise YardwrightError(
            say("“{source}” is not a CSV file ({reason}).", source=name, reason=error), said(form.advice)
        ) from error
    units = {
        column: UNITS[unit] if own is None else own for column, own in columns if column in form.distances
    }
    return [
        _Row(
            above + line,
            {column: cell for (column, _), cell in zip(columns, cells) if column},
            units,
            separator != ",",
            _surplus(cells, len(columns)),
        )
        for line, cells in lines
    ]


def _surplus(cells, wanted):
    """Why cells beyond the last heading are wrong, "" where there are none that say anything."""
    if not any(cells[wanted:]):
        return ""
    return say("{count} cells where the headings are {wanted}", count=len(cells), wanted=wanted)


def _headings(name, lines, form):
    """``(lines above the headings, separator, [(column, metres in the unit it names)])``."""
    for above, line in enumerate(lines[:_TITLE_LINES]):
        for separator in ",;\t":
            cells = next(csv.reader([line], delimiter=separator), [])
            columns = [_column(cell, form) for cell in cells]
            names = [column for column, _ in columns]
            if not set(form.needed) <= set(names):
                continue
            doubled = next((column for column in names if column and names.count(column) > 1), None)
            if doubled:
                raise YardwrightError(
                    say("“{source}” has two columns “{name}”.", source=name, name=doubled),
                    say("Rename or delete one of them."),
                )
            return above, separator, columns
    raise YardwrightError(
        say(
            "“{source}” has no line with the headings {headings}.",
            source=name,
            headings=", ".join(form.needed),
        ),
        said(form.advice),
    )


def _column(cell, form):
    """``(column, metres in its unit)`` of a heading; None for a column nobody asks for, and for no unit."""
    key = key_of(bare(cell.strip()))
    named = _WITH_UNIT.fullmatch(key)
    if "yards" in form.distances and named and not named.group(1):
        return "yards", _UNIT_OF[named.group(2)]
    column = form.others.get(key, key)
    if column in form.needed + form.free:
        return column, None
    column = form.others.get(named.group(1), named.group(1)) if named else None
    return (column, _UNIT_OF[named.group(2)]) if column in form.distances else (None, None)


def _is_text(source):
    return isinstance(source, str) and any(sign in source for sign in "\n\r\t")


def _name_of(source):
    return say("pasted text") if _is_text(source) else os.fspath(source)


def _text_of(source):
    if _is_text(source):
        return source.lstrip("\ufeff")
    path = os.fspath(source)
    try:
        with open(path, "rb") as file:
            raw = file.read()
    except OSError as error:
        raise YardwrightError(
            say("The file “{path}” cannot be read ({reason}).", path=path, reason=error.strerror),
            say("Check the path of the CSV file."),
        ) from error
    text = _decoded(raw)
    if text is None:
        raise YardwrightError(
            say("The file “{path}” is not text.", path=path),
            say("Save the sheet as “CSV UTF-8”, or paste its cells."),
        )
    return text


def _decoded(raw):
    """The text of bytes as spreadsheets write it, None of what is no text."""
    if raw.startswith((b"PK\x03\x04", b"\xd0\xcf\x11\xe0")):  # a workbook
        return None
    if raw.startswith((codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE)):
        encodings = ("utf-16",)
    elif b"\x00" in raw:
        encodings = ("utf-16-le" if raw[1::2].count(0) > raw[::2].count(0) else "utf-16-be",)
    else:
        encodings = ("utf-8-sig", "cp1252")
    for encoding in encodings:
        try:
            text = raw.decode(encoding)
        except UnicodeDecodeError:
            continue
        return None if "\x00" in text else text
    return None
