"""The margin of a thing, found round one place in an image and laid on the ground."""

import math
import os
import tempfile
from dataclasses import dataclass

import numpy as np
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsCoordinateTransformContext,
    QgsCsException,
    QgsPointXY,
)
from scipy.spatial import cKDTree
from shapely.geometry import Point, Polygon

from ..imagery.dates import Date
from ..imagery.grid import Grid
from ..imagery.image import Image
from ..imagery.outline import SOUGHT, outline
from ..imagery.reach import reach_of
from ..model.errors import Cancelled, YardwrightError
from ..model.words import say
from .fetched import around, fetch

_ROOM = 1.05
"""How much wider the window is than what is sought asks for."""
_FINEST = 0.25
"""Pixels finer than this share of the width of a margin tell no more of it."""
_FETCHED = 0.5
"""The same for what a server is asked for."""
_MOST = 2000
"""Pixels along the side of a window at most."""
_MOST_GUESSED = 0.6
"""A margin of which more than this share is guessed is none."""
_TOLERANCE = 0.25
"""How far, in pixels, a margin with few corners lies from the one found."""


@dataclass(frozen=True)
class Traced:
    """A margin on the ground.

    ring: (n, 2), places of the margin as found, closed without its first again. doubtful: (n,) of bool,
    whether it is guessed from a place to the next. crs: of ``ring``, projected, as text. metre: metres in its
    unit there. pixel: side of the pixels looked at, in its unit. image: which of the images it was seen in,
    counted from 0. place: the place clicked, in ``crs``.
    """

    kind: str
    ring: object
    doubtful: object
    crs: str
    metre: float
    pixel: float
    place: tuple
    sharpness: float
    remark: str = ""
    image: int = 0

    def polygon(self, wider=0.0):
        """The margin with few corners, a valid shapely Polygon that holds the place; None where it would not.

        wider: metres that it lies outside what was found, below 0 inside.
        """
        whole = Polygon(self.ring)
        if not whole.is_valid:
            whole = whole.buffer(0)
        if wider:
            whole = whole.buffer(wider / self.metre, 8)
        at = Point(self.place)
        whole = next((one for one in getattr(whole, "geoms", (whole,)) if one.contains(at)), None)
        if whole is None:
            return None
        whole = Polygon(whole.exterior)
        few = Polygon(whole.simplify(_TOLERANCE * self.pixel).exterior)
        return few if few.is_valid and few.contains(at) else whole

    def stretches(self, polygon):
        """``[(doubtful, (n, 2) places)]`` once round a polygon that ``polygon`` gave."""
        corners = np.asarray(polygon.exterior.coords)[:, :2]
        step = max(2.0 * self.pixel, polygon.length / 2000)
        places = [corners[:1]]
        for one, other in zip(corners[:-1], corners[1:]):
            count = max(1, int(math.ceil(math.dist(one, other) / step)))
            places.append(one + (other - one) * (np.arange(1, count + 1) / count)[:, None])
        places = np.concatenate(places)
        middles = (places[:-1] + places[1:]) / 2
        guessed = np.asarray(self.doubtful)[cKDTree(self.ring).query(middles)[1]]
        turns = np.flatnonzero(guessed[1:] != guessed[:-1]) + 1
        ends = [0, *turns.tolist(), len(guessed)]
        return [(bool(guessed[a]), places[a : b + 1]) for a, b in zip(ends[:-1], ends[1:])]

    def share_doubtful(self):
        """How much of the margin's length is guessed, 0 to 1."""
        steps = np.hypot(*(np.roll(self.ring, -1, axis=0) - self.ring).T)
        return float(steps[np.asarray(self.doubtful)].sum() / steps.sum())


def trace(images, place, crs, kind, progress=None):
    """The Traced of the thing of a kind at a place, (x, y) in ``crs``, in the first image that shows it.

    images: ``[(ImageSource, Move)]``, topmost first; moves are of ``crs``. kind: a key of
    ``imagery.outline.SOUGHT``. Its CRS is ``crs`` where that is projected, else a plane about the place.
    progress: called with (done, total); False stops with Cancelled. Raises YardwrightError where no margin is
    seen, no image shows the place or it cannot be read.
    """
    sought = SOUGHT[kind]
    plane, middle, metre = _plane(crs, place)
    if not images:
        raise _no_image()
    for number, (image, move) in enumerate(images):
        with tempfile.TemporaryDirectory() as aside:
            pixels, grid = _window(image, move, middle, plane, metre, sought, aside, progress)
        (at,) = grid.to_pixels([middle])
        if pixels[int(at[1]), int(at[0]), 3] > 127 or number == len(images) - 1:
            break
    if progress is not None and progress(1, 2) is False:
        raise Cancelled
    pixel = grid.geotransform[1]
    found = outline(pixels, tuple(at.tolist()), kind, pixel * metre)
    traced = Traced(
        kind,
        grid.to_ground(found.ring),
        np.asarray(found.doubtful, dtype=bool),
        plane,
        metre,
        pixel,
        middle,
        float(found.sharpness),
        found.remark,
        number,
    )
    if traced.share_doubtful() > _MOST_GUESSED:
        raise YardwrightError(
            say("No margin can be seen round this place."),
            say("Click well inside, choose an image in which it stands out, or draw it by hand."),
        )
    if traced.polygon() is None:
        raise YardwrightError(
            say("The margin found leaves the place itself out."),
            say("Click well inside, away from the margin."),
        )
    return traced


def _no_image():
    return YardwrightError(
        say("No image on the map shows this place."),
        say("Show an image of the course there, or draw it by hand."),
    )


def _plane(crs, place):
    """``(crs as text, place in it, metres in its unit there)``."""
    given = QgsCoordinateReferenceSystem()
    given.createFromUserInput(crs)
    if not given.isValid():
        raise YardwrightError(
            say("It is not known where on Earth the place lies."),
            say("Set the coordinate reference system of the image and of the place."),
        )
    degrees = QgsCoordinateReferenceSystem("EPSG:4326")
    nowhere = QgsCoordinateTransformContext()
    try:
        spot = QgsCoordinateTransform(given, degrees, nowhere).transform(QgsPointXY(*place))
        text = (
            f"+proj=tmerc +lat_0={spot.y()!r} +lon_0={spot.x()!r} +k=1 +x_0=0 +y_0=0 +datum=WGS84 +units=m"
            " +no_defs"
        )
        local = QgsCoordinateReferenceSystem.fromProj(text)
        if given.isGeographic():
            return text, (0.0, 0.0), 1.0
        to_local = QgsCoordinateTransform(given, local, nowhere)
        (x, y), step = place, 10.0
        right, left, up, down = (
            to_local.transform(QgsPointXY(x + a, y + b))
            for a, b in ((step, 0.0), (-step, 0.0), (0.0, step), (0.0, -step))
        )
    except QgsCsException as error:
        raise YardwrightError(
            say("The place lies outside its coordinate reference system."),
            say("Check the CRS of the image and of the place."),
        ) from error
    across, along = right - left, up - down
    area = abs(across.x() * along.y() - across.y() * along.x())
    return crs, (float(x), float(y)), math.sqrt(area) / (2 * step)


def _window(image, move, middle, plane, metre, sought, aside, progress):
    """``(pixels, Grid)`` about a place: (h, w, 4) of uint8."""
    side = sought.window * _ROOM / metre
    date = Date(image.name, image.path, image.crs, image.open_options)
    if image.provider != "gdal":
        wanted = max(_FETCHED * sought.blur / metre, side / _MOST)
        path = os.path.join(aside, "fetched.tif")
        corners = move.back(np.array([middle])) + np.array([(-0.5, -0.5), (0.5, 0.5)]) * side
        fetch(image, around(corners, move, wanted), plane, wanted, path, progress)
        date = Date(image.name, path)
    pixel = max(reach_of(date, plane).pixel, _FINEST * sought.blur / metre, side / _MOST)
    size = max(3, math.ceil(side / pixel))
    corner = middle[0] - size / 2 * pixel, middle[1] + size / 2 * pixel
    grid = Grid(size, size, (corner[0], pixel, 0.0, corner[1], 0.0, -pixel), plane)
    with Image(date.path, date.crs or None, date.open_options, move) as opened:
        return opened.pixels(grid), grid
