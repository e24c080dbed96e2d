"""The scorecard as CSV: ``hole,par,stroke_index,name,<tee set>,<tee set>...``, yards or metres.

A column headed ``<tee set> m`` is in metres. UTF-8 with or without byte order mark; comma, semicolon or
tab between cells; with semicolon or tab a decimal comma is read as well.
"""

import csv
import math
import re
from dataclasses import dataclass, field
from types import MappingProxyType

from ..measure.units import YARD
from ..model.course import Hole, TeeSet
from ..model.errors import YardwrightError
from ..model.kinds import BY_NAME
from ..model.words import said, say, to_say
from .cells import bare, guarded
from .files import written_beside
from .separated import BadCell, key_of, named_rows, number_of, separator_of, split_rows, whole_number

_KNOWN = ("hole", "par", "stroke_index", "name")
_METRES = re.compile(r"(.*\S)\s+m")
_FORM = to_say("The first line must read hole,par,stroke_index,name and then a column for each tee set.")


@dataclass(frozen=True)
class Scorecard:
    """What a scorecard says.

    holes: model Holes without a line.  tee_sets: in the order of their columns.
    yards: ``{(hole, tee set): yards}``.  problems: ``((line, reason), ...)``, a row left out each.
    """

    holes: tuple = ()
    tee_sets: tuple = ()
    yards: MappingProxyType = field(default_factory=lambda: MappingProxyType({}))
    problems: tuple = ()


def read_scorecard(path):
    """The Scorecard in the CSV file ``path``.

    A bad row is left out and named in ``problems`` by its line and the reason. Raises YardwrightError
    when the file as a whole cannot be used.
    """
    text = _text_of(path)
    separator = separator_of(next((line for line in text.splitlines() if line.strip()), ""))
    try:
        lines = split_rows(text, separator)
    except csv.Error as error:
        raise YardwrightError(
            say("The scorecard “{path}” is not a CSV file ({reason}).", path=path, reason=error), said(_FORM)
        ) from error
    if not lines:
        raise YardwrightError(say("The scorecard “{path}” is empty.", path=path), said(_FORM))
    columns = _columns(path, lines[0][1])
    holes, yards, problems = {}, {}, []
    for line, cells in lines[1:]:
        try:
            hole, lengths = _row(columns, cells, separator != ",")
            if hole.number in holes:
                raise BadCell(say("hole {number} stands in the scorecard twice", number=hole.number))
        except BadCell as reason:
            problems.append((line, str(reason)))
            continue
        holes[hole.number] = hole
        yards.update({(hole.number, tee_set): value for tee_set, value in lengths.items()})
    if not holes and not problems:
        raise YardwrightError(
            say("The scorecard “{path}” has no hole.", path=path), say("Give it a row for each hole.")
        )
    tee_sets = [name for name, _ in columns if isinstance(name, _TeeColumn)]
    return Scorecard(
        holes=tuple(holes[number] for number in sorted(holes)),
        tee_sets=tuple(TeeSet(str(name), sort=place) for place, name in enumerate(tee_sets, 1)),
        yards=MappingProxyType(yards),
        problems=tuple(problems),
    )


def refuse_bad_rows(card, path):
    """Raise YardwrightError naming every bad row of ``card``, read from ``path``, if it has any."""
    if card.problems:
        raise YardwrightError(
            say(
                "The scorecard “{path}” has rows that cannot be used. {rows}.",
                path=path,
                rows=named_rows(card.problems),
            ),
            say("Mend these rows, or ask for the good rows only."),
        )


def write_scorecard(path, course):
    """Write the scorecard of a model Course as CSV that ``read_scorecard`` reads back to the same values.

    In metres when the course's unit is metres, else in yards. Holes and tee sets without a figure have
    empty cells. Raises YardwrightError when a tee set has the name of another column.
    """
    tee_sets = [tee_set.name for tee_set in course.tee_sets]
    tee_sets += sorted({tee_set for _, tee_set in course.scorecard} - set(tee_sets))
    for name in tee_sets:
        if not name.strip() or key_of(name) in _KNOWN:
            raise YardwrightError(
                say("A tee set named “{name}” cannot stand in a scorecard file.", name=name),
                say("Give the tee set another name."),
            )
    # A name that ends in " m" would be read as metres, so its column is written in metres.
    metric = {name: course.settings.unit == "m" or bool(_METRES.fullmatch(name)) for name in tee_sets}
    known = {hole.number: hole for hole in course.holes}
    numbers = sorted(set(known) | {number for number, _ in course.scorecard})
    with written_beside(path) as draft, open(draft, "w", encoding="utf-8", newline="") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow([*_KNOWN, *(guarded(f"{name} m" if metric[name] else name) for name in tee_sets)])
        for number in numbers:
            hole = known.get(number, Hole(number))
            lengths = [_length_text(course.scorecard.get((number, name)), metric[name]) for name in tee_sets]
            writer.writerow(
                [number, _blank(hole.par), _blank(hole.stroke_index), guarded(hole.name or ""), *lengths]
            )


class _TeeColumn(str):
    """The name of a tee set, so that it is never taken for one of the known columns."""


def _text_of(path):
    try:
        with open(path, "rb") as file:
            raw = file.read()
    except OSError as error:
        raise YardwrightError(
            say("The scorecard “{path}” cannot be read ({reason}).", path=path, reason=error.strerror),
            say("Check the path of the CSV file."),
        ) from error
    try:
        text = raw.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise YardwrightError(
            say("The scorecard “{path}” is not text in UTF-8.", path=path),
            say("Save it as “CSV UTF-8” and try again."),
        ) from error
    if "\x00" in text:
        raise YardwrightError(
            say("The scorecard “{path}” is not text.", path=path),
            say("Save it as “CSV UTF-8” and try again."),
        )
    return text


def _columns(path, header):
    """``[(name, metres in its unit)]`` of each column; the unit is None for a known one."""
    columns = []
    for cell in (bare(cell) for cell in header):
        if key_of(cell) in _KNOWN:
            columns.append((key_of(cell), None))
        elif _METRES.fullmatch(cell):
            columns.append((_TeeColumn(_METRES.fullmatch(cell).group(1)), 1.0))
        else:
            columns.append((_TeeColumn(cell), YARD))
    while columns and not columns[-1][0]:  # spreadsheets leave empty columns at the end
        columns.pop()
    names = [name for name, _ in columns]
    if "hole" not in names:
        raise YardwrightError(say("The scorecard “{path}” has no column “hole”.", path=path), said(_FORM))
    if "" in names:
        raise YardwrightError(
            say(
                "Column {number} of the scorecard “{path}” has no heading.",
                number=names.index("") + 1,
                path=path,
            ),
            say("Head it with the name of its tee set, or delete it."),
        )
    doubled = next((name for name in names if names.count(name) > 1), None)
    if doubled:
        raise YardwrightError(
            say("The scorecard “{path}” has two columns “{name}”.", path=path, name=doubled),
            say("Rename or delete one of them."),
        )
    return columns


def _row(columns, cells, decimal_comma):
    """``(Hole, {tee set: yards})`` of a row; BadCell says why it cannot be used."""
    if any(cells[len(columns) :]):
        raise BadCell(
            say("{count} cells where the first line has {wanted}", count=len(cells), wanted=len(columns))
        )
    if len(cells) < len(columns):
        raise BadCell(
            say(
                "only {count} cells where the first line has {wanted}",
                count=len(cells),
                wanted=len(columns),
            )
        )
    values, lengths = {}, {}
    for (name, unit), cell in zip(columns, cells):
        if unit is None:
            values[name] = cell
        elif cell:
            lengths[str(name)] = _yards(name, cell, unit, decimal_comma)
    number = whole_number(say("hole"), values["hole"], BY_NAME["hole"].field("number"))
    if number is None:
        raise BadCell(say("the hole's number is missing"))
    hole = Hole(
        number=number,
        name=bare(values.get("name", "")),
        par=whole_number(say("par"), values.get("par", ""), BY_NAME["hole"].field("par")),
        stroke_index=whole_number(
            say("stroke index"), values.get("stroke_index", ""), BY_NAME["hole"].field("stroke_index")
        ),
    )
    return hole, lengths


def _yards(tee_set, cell, unit, decimal_comma):
    number = number_of(cell, decimal_comma)
    if math.isnan(number):
        raise BadCell(say("the length “{value}” from {tee_set} is not a number", value=cell, tee_set=tee_set))
    yards = number * unit / YARD if unit != YARD else number
    limits = BY_NAME["scorecard"].field("yards")
    if not limits.low <= yards <= limits.high:
        raise BadCell(
            say(
                "the length {value} from {tee_set} is not between {low} and {high} yd",
                value=cell,
                tee_set=tee_set,
                low=limits.low,
                high=limits.high,
            )
        )
    return yards


def _blank(value):
    return "" if value is None else value


def _length_text(yards, metric):
    if yards is None:
        return ""
    text = f"{yards * YARD if metric else yards:.9f}".rstrip("0").rstrip(".")
    return text
