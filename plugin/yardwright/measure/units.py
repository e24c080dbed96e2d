"""Yards, metres and whole figures."""

import math
from decimal import ROUND_HALF_UP, Decimal

YARD = 0.9144
"""Metres in an international yard, exactly (international yard and pound agreement, 1959)."""

UNITS = {"yd": YARD, "m": 1.0}


def to_unit(metres, unit):
    """A length in metres as ``yd`` or ``m``; None stays None."""
    return None if metres is None else metres / UNITS[unit]


def to_square_unit(square_metres, unit):
    """An area in square metres as square yards or square metres; None stays None."""
    return None if square_metres is None else square_metres / UNITS[unit] ** 2


def whole(value):
    """A printed figure: the nearest whole number, halves rounded up; None stays None.

    The value is first taken to a thousandth, so that 222.5 that arithmetic left as 222.49999999 still
    prints as 223. Halves go up as in the German federation's handbook for course measuring (2012):
    234.5 -> 235, 312.4 -> 312. Below zero, up means towards zero: -0.5 -> 0.

    >>> [whole(value) for value in (222.5, 234.5, 312.4, -0.5, -1.5)]
    [223, 235, 312, 0, -1]
    """
    if value is None or not math.isfinite(value):
        return None
    thousandths = Decimal(repr(float(value))).quantize(Decimal("0.001"), ROUND_HALF_UP)
    return math.floor(thousandths + Decimal("0.5"))
