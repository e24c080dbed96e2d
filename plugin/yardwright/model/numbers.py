"""Hole numbers and lists of distances as people write them."""

import re

from .errors import YardwrightError
from .words import said, say, to_say

_RANGE = re.compile(r"^(\d{1,2})\s*-\s*(\d{1,2})$")
_DISTANCE = re.compile(r"^\d{1,4}(\.\d{1,3})?$")
_ADVICE = to_say("Write numbers and ranges with commas between them, such as 1,4,7-9.")


def parse_holes(text):
    """Hole numbers from ``1,4,7-9``, in the order written, without doubles; empty text gives none.

    Raises YardwrightError for anything else.

    >>> parse_holes("1,4, 7-9")
    (1, 4, 7, 8, 9)
    >>> parse_holes("")
    ()
    """
    numbers = []
    for part in filter(None, (part.strip() for part in re.split(r"[,;]", text or ""))):
        match = _RANGE.match(part)
        if match:
            first, last = int(match.group(1)), int(match.group(2))
            if first > last:
                raise YardwrightError(
                    say("The range of holes “{text}” runs backwards.", text=part), said(_ADVICE)
                )
            numbers.extend(range(first, last + 1))
        elif part.isdigit() and len(part) <= 2:
            numbers.append(int(part))
        else:
            raise YardwrightError(say("“{text}” is not a hole number.", text=part), said(_ADVICE))
    if 0 in numbers:
        raise YardwrightError(say("There is no hole 0."), said(_ADVICE))
    return tuple(dict.fromkeys(numbers))


def format_holes(numbers):
    """Hole numbers as the ``holes`` field keeps them.

    >>> format_holes((4, 1))
    '4,1'
    """
    return ",".join(str(number) for number in numbers)


def parse_distances(text):
    """Distances from ``100, 125,150``: positive numbers in rising order, without doubles.

    Raises YardwrightError for anything else.

    >>> parse_distances("150, 100,125.5")
    (100.0, 125.5, 150.0)
    """
    distances = []
    for part in filter(None, (part.strip() for part in re.split(r"[,;]", text or ""))):
        if not _DISTANCE.match(part) or float(part) == 0.0:
            raise YardwrightError(
                say("“{text}” is not a distance.", text=part),
                say("Write numbers with commas between them, such as 100,150,200."),
            )
        distances.append(float(part))
    return tuple(sorted(set(distances)))


def format_distances(distances):
    """Distances as ``layup_yd`` keeps them.

    >>> format_distances((100.0, 125.5))
    '100,125.5'
    """
    return ",".join(f"{distance:g}" for distance in distances)


_REF = re.compile(r"(?<!\d)0*([1-9]\d?)(?!\d)")


def hole_number_in(text):
    """The one hole number in a text such as ``7``, ``Hole #7`` or ``H07``; None if none or several.

    >>> [hole_number_in(text) for text in ("7", "Hole #7", "H07", "7;8", "Course 2 hole 7", "", None)]
    [7, 7, 7, None, 7, None, None]
    """
    text = str(text or "")
    named = re.search(r"(?:hole|\bh)\W{0,3}0*([1-9]\d?)(?!\d)", text, re.IGNORECASE)
    if named:
        return int(named.group(1))
    found = _REF.findall(text)
    return int(found[0]) if len(found) == 1 else None
