"""Texts with separators between their cells (CSV, or pasted from a spreadsheet): what all readers share."""

import csv
import io
import math
import re

from ..model.words import say


class BadCell(Exception):
    """Why a row is left out."""


def split_rows(text, separator):
    """``[(line, cells)]`` of the rows that hold anything, cells stripped. Raises csv.Error."""
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=separator, strict=True)
    rows = [(reader.line_num, [cell.strip() for cell in row]) for row in reader]
    return [(line, cells) for line, cells in rows if any(cells)]


def separator_of(line):
    """The separator that a line uses most; a comma when it has none."""
    unquoted = re.sub(r'"[^"]*"', "", line)
    return max(",;\t", key=unquoted.count)


def key_of(text):
    """A heading as it is compared.

    >>> key_of(" Stroke Index")
    'stroke_index'
    """
    return re.sub(r"[\s_]+", "_", text.strip().casefold())


def number_of(cell, decimal_comma):
    """The number in a cell, nan where it holds none."""
    try:
        number = float(cell.replace(",", ".", 1) if decimal_comma else cell)
    except ValueError:
        return math.nan
    return number if math.isfinite(number) and "_" not in cell else math.nan


def whole_number(what, cell, limits):
    """The whole number in a cell within the limits of a model Field; None in an empty one. Raises BadCell."""
    if not cell:
        return None
    if not re.fullmatch(r"[0-9]{1,4}", cell):
        raise BadCell(say("{what} “{value}” is not a whole number", what=what, value=cell))
    value = int(cell)
    if limits.high is None and value < limits.low:
        raise BadCell(say("{what} {value} is not at least {low}", what=what, value=value, low=limits.low))
    if limits.high is not None and not limits.low <= value <= limits.high:
        raise BadCell(
            say(
                "{what} {value} is not between {low} and {high}",
                what=what,
                value=value,
                low=limits.low,
                high=limits.high,
            )
        )
    return value


def named_rows(bad):
    """Rows left out, ``((line, reason), ...)``, as one text."""
    return "; ".join(say("line {line}: {reason}", line=line, reason=reason) for line, reason in bad)
