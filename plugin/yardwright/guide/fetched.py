"""What only QGIS can fetch (tiles, map services) laid down as a GeoTIFF, for the work on pixels."""

import math
import os
import tempfile
from dataclasses import fields, replace
from itertools import product
from urllib.parse import parse_qs

import numpy as np
from osgeo import gdal
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsCoordinateTransformContext,
    QgsCsException,
    QgsMapSettings,
    QgsPointXY,
    QgsRectangle,
)
from qgis.PyQt.QtCore import QSize
from qgis.PyQt.QtGui import QColor

from ..imagery.dates import Lost
from ..imagery.grid import Grid, grid_crs
from ..imagery.quiet import quiet_gdal
from ..model.errors import YardwrightError
from ..model.words import say
from ..store.files import written_beside
from ..store.image_dates import is_fetched, metres_per_unit
from ..store.reading import crs_text
from ..store.tables import safe_file_name
from .rendered import ImageSource, drawn, raster_layer

USUAL_M = 0.3
"""What a pixel is to cover where no date says what its own do, metres."""

_BLOCK, _TILE = 2048, 256
_ROOM = 8  # pixels beyond what is asked for
_WORLD = 40_075_016.685578488
"""Metres round the equator in Web Mercator (EPSG:3857): the width of the one tile of zoom 0."""
_MOST = 16_384
"""Pixels a side that are fetched at most."""
_TIFF = ("TILED=YES", "COMPRESS=DEFLATE", "ZLEVEL=1", "PHOTOMETRIC=RGB", "ALPHA=NON-PREMULTIPLIED")


def pixel_of(date_id, course):
    """How fine a date is worth fetching, in the unit of the Course's CRS: as its row says, else as the finest
    that says so."""
    stated = {image.id: image.gsd_m for image in course.images if image.gsd_m}
    return stated.get(date_id, min(stated.values(), default=USUAL_M)) / metres_per_unit(course.crs)


def pixels_of(dates, course):
    """The same for several Dates, by id."""
    return {date.id: pixel_of(date.id, course) for date in dates}


def around(places, move, pixel):
    """x least, y least, x greatest, y greatest of what is to be fetched for a picture that a Move brings onto
    the ground. places: (n, 2) that it is to show, where its file puts them. pixel: the side of one."""
    # What is drawn of it later needs its surroundings.
    room = _ROOM * pixel + (0.0 if move.local is None else move.local.most())
    return (*(places.min(axis=0) - room).tolist(), *(places.max(axis=0) + room).tolist())


def readable(date, bounds, crs, pixel, folder, progress=None):
    """A Date as one that GDAL opens: what only QGIS can fetch is laid down in a folder, any other is itself.

    bounds: x least, y least, x greatest, y greatest on the ground in ``crs``, what is to be seen of it there;
    it may lie as the Date's move says, or as it is. The rest as for ``fetch``.
    """
    if not is_fetched(date.path):
        return date
    x0, y0, x1, y1 = bounds
    corners = np.array([(x0, y0), (x1, y0), (x1, y1), (x0, y1)])
    whole = around(np.concatenate([corners, date.move.back(corners)]), date.move, pixel)
    # Two ids may make one file name.
    path = os.path.join(tempfile.mkdtemp(dir=folder), f"{safe_file_name(date.id)}.tif")
    fetch(ImageSource(date.id, "wms", date.path, "", None), whole, crs, pixel, path, progress)
    return replace(date, path=path, crs="")


def fetched(dates, grid, pixels, folder, told):
    """The Dates, those of servers fetched for an upright Grid into a folder, or Lost.

    pixels: how fine each is, by id, in the unit of the grid; no finer than its own is fetched. told: a Told.
    """
    corners, made = grid.corners(), []
    bounds = (*corners.min(axis=0).tolist(), *corners.max(axis=0).tolist())
    for done, date in enumerate(dates):
        part = told.narrowed(done / len(dates), (done + 1) / len(dates))
        pixel = max(pixels[date.id], grid.geotransform[1])
        try:
            made.append(readable(date, bounds, grid.crs, pixel, folder, part.count))
        except YardwrightError as error:
            made.append(Lost(**{one.name: getattr(date, one.name) for one in fields(date)}, why=error))
    return made


def endless(date_id):
    """The error that a date of a server has no end to take for that of the course."""
    return YardwrightError(
        say("Nothing of the course is drawn yet, and “{date}” has no end.", date=date_id),
        say("Take a date as base that is a file, or draw the lines of play first."),
    )


def fetch(image, bounds, crs, pixel, path, progress=None):
    """Write what an ImageSource shows of ``bounds`` to a GeoTIFF of red, green, blue and opacity; its Grid.

    bounds: x least, y least, x greatest, y greatest in ``crs``, the course's. pixel: how fine it is to be, in
    its unit. The file is in the layer's own CRS, and of tiles on their own pixels: QGIS draws what it has to
    reproject a pixel or two out of place. progress: called with (done, total); False stops with Cancelled.
    Drawn block by block. Raises YardwrightError when the layer cannot be opened or drawn, with nothing
    written.
    """
    layer = raster_layer(image)
    grid = _grid(layer, bounds, crs, pixel)
    settings_of = _settings_of_tiles if _is_tiles(layer) else _settings
    if _is_tiles(layer):
        _draw_as_they_are(layer)
    blocks = [(x, y) for y in range(0, grid.height, _BLOCK) for x in range(0, grid.width, _BLOCK)]
    with written_beside(path) as draft, quiet_gdal(_cannot_be_written):
        target = gdal.GetDriverByName("GTiff").Create(
            draft, grid.width, grid.height, 4, gdal.GDT_Byte, list(_TIFF)
        )
        target.SetGeoTransform(grid.geotransform)
        target.SetSpatialRef(grid_crs(grid))
        for done, (x, y) in enumerate(blocks):
            size = min(_BLOCK, grid.width - x), min(_BLOCK, grid.height - y)

            def told(share, total, done=done):
                return progress is None or progress(done + share / total, len(blocks))

            settings, (left, up) = settings_of(layer, grid, x, y, size)
            values = drawn(settings, told)[up : up + size[1], left : left + size[0]]
            for band in range(4):
                target.GetRasterBand(band + 1).WriteArray(np.ascontiguousarray(values[:, :, band]), x, y)
        target = None
    return grid


def _grid(layer, bounds, crs, pixel):
    """The Grid to fetch on, in the layer's CRS."""
    here = QgsCoordinateReferenceSystem()
    here.createFromUserInput(crs)
    to_layer = QgsCoordinateTransform(here, layer.crs(), QgsCoordinateTransformContext())
    x0, y0, x1, y1 = bounds
    try:
        box = to_layer.transformBoundingBox(QgsRectangle(x0, y0, x1, y1))
        middle, right, up = (
            to_layer.transform(QgsPointXY((x0 + x1) / 2 + a, (y0 + y1) / 2 + b))
            for a, b in ((0, 0), (pixel, 0), (0, pixel))
        )
    except QgsCsException as error:
        raise YardwrightError(
            say("The layer “{layer}” does not reach the course.", layer=layer.name()),
            say("Check the CRS of the layer and of the course."),
        ) from error
    across = math.hypot(right.x() - middle.x(), up.x() - middle.x())
    down = math.hypot(right.y() - middle.y(), up.y() - middle.y())
    origin = (box.xMinimum(), box.yMaximum())
    if _is_tiles(layer):
        given = parse_qs(layer.source())
        levels = [int(given.get(name, [usual])[0]) for name, usual in (("zmin", "0"), ("zmax", "22"))]
        zoom = min(max(math.ceil(math.log2(_WORLD / 256 / across) - 0.01), levels[0]), levels[1])
        across = down = _WORLD / _TILE / 2**zoom
        columns, rows = (
            math.floor(at / across / _TILE) for at in (origin[0] + _WORLD / 2, _WORLD / 2 - origin[1])
        )
        origin = (columns * _TILE * across - _WORLD / 2, _WORLD / 2 - rows * _TILE * down)
    width = math.ceil((box.xMaximum() - origin[0]) / across)
    height = math.ceil((origin[1] - box.yMinimum()) / down)
    if _is_tiles(layer):
        width, height = (-(-size // _TILE) * _TILE for size in (width, height))
    if max(width, height) > _MOST:
        raise YardwrightError(
            say("{width} x {height} pixels are too many to fetch.", width=width, height=height),
            say("State a larger ground sample distance for the date, or take a smaller part of the course."),
        )
    return Grid(width, height, (origin[0], across, 0.0, origin[1], 0.0, -down), crs_text(layer.crs()))


def _is_tiles(layer):
    """Whether a layer is one of tiles by the usual scheme, whose own pixels are fetched, tile by tile."""
    given = parse_qs(layer.source())
    usual = given.get("crs", ["EPSG:3857"]) == ["EPSG:3857"] and given.get("tilePixelRatio") != ["2"]
    return given.get("type") == ["xyz"] and usual


def _draw_as_they_are(layer):
    """Let QGIS draw the pixels of tiles as they are: to smooth them it fetches up to 64 times as many, of
    deeper levels, and takes many times as long for what is no nearer to the truth."""
    layer.resampleFilter().setZoomedInResampler(None)
    layer.resampleFilter().setZoomedOutResampler(None)


def _settings(layer, grid, x, y, size):
    """``(QgsMapSettings that draw a block of a grid, (columns, rows) drawn before it)``."""
    (left, top), (right, low) = grid.to_ground([(x, y), (x + size[0], y + size[1])])
    settings = QgsMapSettings()
    settings.setLayers([layer])
    settings.setDestinationCrs(layer.crs())
    settings.setOutputDpi(96)
    settings.setOutputSize(QSize(*size))
    settings.setExtent(QgsRectangle(left, low, right, top))
    settings.setBackgroundColor(QColor(0, 0, 0, 0))
    return settings, (0, 0)


def _settings_of_tiles(layer, grid, x, y, size):
    """The same for whole tiles. QGIS puts some of them a pixel off where the corner of what it draws is other
    than 0, 0, be it by the last bit; with a tile more on one side or another it is."""
    for more in product((0, _TILE), repeat=4):
        left, up, right, down = more
        wider = size[0] + left + right, size[1] + up + down
        settings, _ = _settings(layer, grid, x - left, y - up, wider)
        extent = settings.visibleExtent()
        corner = settings.mapToPixel().transform(extent.xMinimum(), extent.yMaximum())
        if corner.x() == 0 and corner.y() == 0:
            return settings, (left, up)
    return _settings(layer, grid, x, y, size)


def _cannot_be_written(reason):
    return say("The picture cannot be written: {reason}.", reason=reason)
