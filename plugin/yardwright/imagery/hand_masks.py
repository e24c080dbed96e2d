"""Masks corrected by hand: strokes of a brush, kept in a raster that lies where the file of their date lies.

A pixel of the raster is 0 where nothing was corrected, bits of ``imagery.hiding`` where a person says what
hides the ground, SEEN_BY_HAND where one says that it is seen for sure.
"""

import math
import os
from dataclasses import dataclass

import numpy as np
from osgeo import gdal, ogr, osr
from scipy.ndimage import map_coordinates

from ..model.errors import YardwrightError
from ..model.words import say
from .grid import Grid, grid_crs
from .moves import STAY
from .quiet import quiet_gdal

SEEN_BY_HAND = 128
"""The value that says: here the ground is seen, whatever was found."""
_ROUND = 12
"""Corners of a quarter of a circle."""
_LARGEST = 40_000
"""Pixels to a side of a mask at most."""


@dataclass(frozen=True)
class Stroke:
    """One stroke of the brush. line: ``((x, y), ...)``, one place for a dot; radius in the same unit. value:
    what the mask is given: bits of ``imagery.hiding``, SEEN_BY_HAND, or 0 for as it was found."""

    line: tuple
    radius: float
    value: int

    def moved_back(self, move):
        """The same stroke where the file of a date puts its places, which its Move brings onto the ground."""
        line = tuple(map(tuple, move.back(self.line).tolist()))
        return Stroke(line, self.radius / move.stretch, self.value)


def paint(strokes, mask, grid):
    """Paint strokes, one over the other, into a mask (h, w) uint8 of a Grid, in place."""
    for stroke in strokes:
        _paint_one(stroke, mask, grid)


def _paint_one(stroke, mask, grid):
    left, top, wide, high = _window(stroke, grid)
    if wide > 0 and high > 0:
        part = mask[top : top + high, left : left + wide]
        part[_covered(stroke, _part(grid, left, top, wide, high))] = stroke.value


def _part(grid, left, top, wide, high):
    """The Grid of so many pixels of another."""
    g, corner = grid.geotransform, grid.to_ground([(left, top)])[0]
    return Grid(wide, high, (corner[0], g[1], g[2], corner[1], g[4], g[5]), grid.crs)


def _window(stroke, grid):
    """The pixels of a grid that a stroke may cover: left, top, width, height; none where it is beside it."""
    at = grid.to_pixels(stroke.line)
    reach = stroke.radius / _pixel(grid) + 1
    low = np.clip(np.floor(at.min(axis=0) - reach), 0, (grid.width, grid.height))
    high = np.clip(np.ceil(at.max(axis=0) + reach), 0, (grid.width, grid.height))
    return (*low.astype(int).tolist(), *(high - low).astype(int).tolist())


def _covered(stroke, grid):
    """(h, w) bool: the pixels of a grid whose middles a stroke covers."""
    crs = grid_crs(grid)
    raster = gdal.GetDriverByName("MEM").Create("", grid.width, grid.height, 1)
    raster.SetGeoTransform(grid.geotransform)
    raster.SetSpatialRef(crs)
    source = ogr.GetDriverByName("Memory").CreateDataSource("")
    layer = source.CreateLayer("stroke", crs, ogr.wkbUnknown)
    shape = ogr.Geometry(ogr.wkbPoint if len(stroke.line) == 1 else ogr.wkbLineString)
    for x, y in stroke.line:
        shape.AddPoint_2D(x, y)
    row = ogr.Feature(layer.GetLayerDefn())
    row.SetGeometryDirectly(shape.Buffer(stroke.radius, _ROUND))
    layer.CreateFeature(row)
    gdal.RasterizeLayer(raster, [1], layer, burn_values=[1])
    return raster.ReadAsArray().astype(bool)


def _pixel(grid):
    g = grid.geotransform
    return math.sqrt(abs(g[1] * g[5] - g[2] * g[4]))


def read_mask(path, grid, move=STAY):
    """The mask kept at ``path`` on a Grid on the ground, (h, w) uint8; None where there is no such file.

    move: the Move of its date, so that it stays true when the date is registered anew. Raises YardwrightError
    when it cannot be read.
    """
    if not os.path.exists(path):
        return None
    found = np.zeros((grid.height, grid.width), np.uint8)
    with quiet_gdal(_cannot_be_read):
        kept = gdal.OpenEx(path, gdal.OF_RASTER)
        if kept is None or kept.RasterCount != 1:
            raise _unreadable(path)
        values = kept.GetRasterBand(1)
        own = Grid(kept.RasterXSize, kept.RasterYSize, kept.GetGeoTransform(), kept.GetProjection())
        columns, rows, inside = _drawn_from(own, grid, move)
        if not inside.any():
            return found
        left, top = int(columns[inside].min()), int(rows[inside].min())
        wide, high = int(columns[inside].max()) - left + 1, int(rows[inside].max()) - top + 1
        part = values.ReadAsArray(left, top, wide, high)
        if part is None:
            raise _unreadable(path)
        found[inside] = part[rows[inside] - top, columns[inside] - left]
    return found


def _drawn_from(own, grid, move):
    """Columns and rows in a mask's own grid that the pixels of another grid are drawn from, and where they
    lie within it. A move is smooth: it is worked out at every 16th pixel, and spread between."""
    step = 16
    rows = np.arange(0, grid.height + step, step)
    columns = np.arange(0, grid.width + step, step)
    nodes = np.stack(np.meshgrid(columns, rows), axis=-1).reshape(-1, 2) + 0.5
    at = own.to_pixels(_in_crs(move.back(grid.to_ground(nodes)), grid, own))
    coarse = at.reshape(len(rows), len(columns), 2)
    y, x = np.arange(grid.height) / step, np.arange(grid.width) / step
    spread = np.stack(np.meshgrid(y, x, indexing="ij"))
    found = [
        np.floor(map_coordinates(coarse[:, :, k], spread, order=1, mode="nearest")).astype(int)
        for k in (0, 1)
    ]
    inside = (found[0] >= 0) & (found[0] < own.width) & (found[1] >= 0) & (found[1] < own.height)
    return (*found, inside)


def _in_crs(points, grid, own):
    """Places in a grid's CRS in that of another grid."""
    one, other = grid_crs(grid), grid_crs(own)
    if one.IsSame(other):
        return points
    places = osr.CoordinateTransformation(one, other).TransformPoints(points.tolist())
    return np.array(places, dtype=float)[:, :2]


def keep_mask(path, strokes, grid):
    """Paint strokes into the mask kept at ``path``, which is made over ``grid`` where it is not there yet.

    strokes: where the file of the date puts them, in the CRS of the grid (``Stroke.moved_back``). A mask kept
    before keeps its own grid, which must be in that CRS. Written beside its place, then put there. Raises
    YardwrightError with the mask kept before untouched.
    """
    os.makedirs(os.path.dirname(os.path.abspath(path)), exist_ok=True)
    draft = f"{path}.part"
    try:
        with quiet_gdal(_cannot_be_written):
            raster = _copy(path, draft) if os.path.exists(path) else _empty(draft, grid)
            own = Grid(raster.RasterXSize, raster.RasterYSize, raster.GetGeoTransform(), grid.crs)
            for stroke in strokes:
                _keep_one(stroke, raster.GetRasterBand(1), own)
            raster.FlushCache()
            raster = None
        os.replace(draft, path)
    except OSError as error:
        raise YardwrightError(
            say("“{path}” cannot be written ({reason}).", path=path, reason=error.strerror),
            say("Check that the disk has room and that you may write to the folder."),
        ) from error
    finally:
        if os.path.exists(draft):
            os.remove(draft)


def _keep_one(stroke, band, own):
    left, top, wide, high = _window(stroke, own)
    if wide <= 0 or high <= 0:
        return
    part = band.ReadAsArray(left, top, wide, high)
    paint([stroke], part, _part(own, left, top, wide, high))
    band.WriteArray(part, left, top)


_OPTIONS = ("TILED=YES", "COMPRESS=DEFLATE", "SPARSE_OK=TRUE", "BIGTIFF=IF_SAFER")


def _empty(path, grid):
    raster = gdal.GetDriverByName("GTiff").Create(
        path, grid.width, grid.height, 1, gdal.GDT_Byte, list(_OPTIONS)
    )
    if raster is None:
        raise _unwritable(path)
    raster.SetGeoTransform(grid.geotransform)
    raster.SetSpatialRef(grid_crs(grid))
    return raster


def _copy(path, draft):
    kept = gdal.OpenEx(path, gdal.OF_RASTER)
    if kept is None or kept.RasterCount != 1:
        raise _unreadable(path)
    copy = gdal.GetDriverByName("GTiff").CreateCopy(draft, kept, 0, list(_OPTIONS))
    if copy is None:
        raise _unwritable(draft)
    return copy


def grid_for_mask(bounds, pixel, crs):
    """The Grid of a new mask. bounds: x least, y least, x greatest, y greatest of a date's image."""
    x0, y0, x1, y1 = bounds
    pixel = max(pixel, (x1 - x0) / _LARGEST, (y1 - y0) / _LARGEST)
    width, height = math.ceil((x1 - x0) / pixel), math.ceil((y1 - y0) / pixel)
    return Grid(width, height, (x0, pixel, 0.0, y1, 0.0, -pixel), crs)


def _unreadable(path):
    return YardwrightError(
        say("The mask corrected by hand, “{name}”, cannot be read.", name=os.path.basename(path)),
        say("Take it out of its folder, or put a copy of it back, then try again."),
    )


def _unwritable(path):
    return YardwrightError(
        say("“{path}” cannot be written ({reason}).", path=path, reason=gdal.GetLastErrorMsg()),
        say("Check that the disk has room and that you may write to the folder."),
    )


def _cannot_be_read(reason):
    return say("The mask corrected by hand cannot be read: {reason}.", reason=reason)


def _cannot_be_written(reason):
    return say("The mask corrected by hand cannot be written: {reason}.", reason=reason)
