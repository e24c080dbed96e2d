"""What hides the ground on one date, for a part of the course that somebody looks at."""

import math

import numpy as np

from ..model.errors import YardwrightError
from ..model.words import say
from .aside import Block
from .grid import Grid
from .hiding import EMPTY, HALO_M, hidden, learn_looks
from .sun import sun_on_grid
from .told import Told

_COARSE_SIDE = 1000
"""Pixels to a side of the pictures that the dates' looks are learnt from."""


def whole_grid(bounds, crs):
    """The coarse Grid that the looks of dates are learnt on. bounds: of the whole course, x least, y least, x
    greatest, y greatest in ``crs``."""
    x0, y0, x1, y1 = bounds
    pixel = max((x1 - x0) / _COARSE_SIDE, (y1 - y0) / _COARSE_SIDE)
    return Grid(
        math.ceil((x1 - x0) / pixel), math.ceil((y1 - y0) / pixel), (x0, pixel, 0, y1, 0, -pixel), crs
    )


def look_at_all(dates, grid, metre, ground_of=None, told=None):
    """``(dates that can be used, Looks)`` of Dates, the base first, over the whole course.

    grid: as of ``whole_grid``, the unit of its CRS ``metre`` metres. ground_of: a function from a Grid to the
    Ground drawn there, or None. told: a Told. Dates that cannot be read, or show nothing there, are left out;
    YardwrightError where none is left; Cancelled.
    """
    told = told or Told(None)
    pixel = grid.geotransform[1]
    usable, pictures, reasons = [], [], []
    for number, date in enumerate(dates):
        told(number / len(dates))
        told.check()
        try:
            with date.open() as image:
                picture = image.pixels(grid, told.narrowed(number / len(dates), (number + 1) / len(dates)))
        except YardwrightError as error:
            reasons.append(error)
            continue
        if picture[..., 3].any():
            usable.append(date)
            pictures.append(picture)
    if not usable:
        raise reasons[0] if reasons else _nothing_there()
    middle = grid.corners().mean(axis=0)
    suns = tuple(sun_on_grid(date, grid.crs, middle) for date in usable)
    ground = ground_of(grid) if ground_of is not None else None
    return tuple(usable), learn_looks(pictures, pixel * metre, suns, ground)


def about(grid, metre):
    """An upright Grid with what lies about it that its masks depend on."""
    edge = _edge(grid, metre)
    return Block(-edge, -edge, grid.width + 2 * edge, grid.height + 2 * edge).grid(grid)


def _edge(grid, metre):
    return math.ceil(HALO_M / metre / grid.geotransform[1])


def mask_on(dates, looks, number, grid, metre, ground_of=None, told=None):
    """What hides the ground on the date of that number on an upright Grid, (h, w) uint8 of ``hiding``'s bits.

    dates, looks: as ``look_at_all`` gives them. Raises YardwrightError, Cancelled.
    """
    told = told or Told(None)
    wide, edge = about(grid, metre), _edge(grid, metre)
    pictures = []
    for done, date in enumerate(dates):
        part = told.narrowed(0.6 * done / len(dates), 0.6 * (done + 1) / len(dates))
        with date.open() as image:
            pictures.append(image.pixels(wide, part))
        told.check()
    ground = ground_of(wide) if ground_of is not None else None
    mask = hidden(pictures, grid.geotransform[1] * metre, looks, ground)[number]
    told.check()
    return mask[edge : edge + grid.height, edge : edge + grid.width]


def shares(mask):
    """``{bit: share of what the date shows}`` of a mask."""
    shown = max(np.count_nonzero(mask & EMPTY == 0), 1)
    bits = (1 << power for power in range(4))
    return {bit: np.count_nonzero(mask & bit) / shown for bit in bits}


def _nothing_there():
    return YardwrightError(
        say("No date of the course shows anything of it."),
        say("Check that the images of the dates lie where the course lies."),
    )
