"""The ground's heights out of a raster of them, and how steep it is (GDAL and numpy), without QGIS."""

import os
import re
from collections import OrderedDict

import numpy as np
from osgeo import gdal, osr

from ..model.errors import YardwrightError
from ..model.words import say
from .quiet import quiet_gdal

LEAST_SLOPE_M = 1.0
"""A slope is taken over so many metres at least, or over two pixels where these are more."""

_SIDE = 256
_BLOCKS = 64
_DEGREES = "EPSG:4326"
_FOOT, _SURVEY_FOOT = 0.3048, 1200 / 3937
_UNITS = {
    **dict.fromkeys(("m", "metre", "metres", "meter", "meters"), 1.0),
    **dict.fromkeys(("cm", "centimetre", "centimeter"), 0.01),
    **dict.fromkeys(("mm", "millimetre", "millimeter"), 0.001),
    **dict.fromkeys(("ft", "foot", "feet", "internationalfoot", "internationalfeet"), _FOOT),
    **dict.fromkeys(("usft", "ftus", "ussurveyfoot", "ussurveyfeet", "footus"), _SURVEY_FOOT),
}
"""Metres in the units a file may state, letters only. A foot is 0.3048 m exactly, a US survey foot
1200/3937 m."""

_EQUATOR, _FLATTENING = 6378137.0, 1 / 298.257223563
_FLAT = 1e-6


class Terrain:
    """A raster of heights, asked at points.

    Points are (n, 2) arrays, x east and y north, also where their CRS itself names north first; ``crs`` is
    ``EPSG:n`` or WKT. Heights are metres, whatever the file's unit, above whatever the file counts from.
    ``remarks``: what is doubtful about the file. To be used in the thread it was made in, and to be closed:
    it is a context manager.
    """

    def __init__(self, path, crs=None, open_options=()):
        """path: what GDAL opens. crs: for a file that does not say its own, or says a wrong one.

        Raises YardwrightError when it holds no heights that lie somewhere on the ground.
        """
        self._blocks = OrderedDict()
        self._ways = {}
        with quiet_gdal(_cannot_be_used):
            self._raster = _open(path, open_options)
            self._band = self._raster.GetRasterBand(1)
            self._size = np.array([self._raster.RasterXSize, self._raster.RasterYSize])
            self._geotransform, self._to_grid = _placing(self._raster)
            stated = self._raster.GetSpatialRef()
            self._crs = _flat_crs(crs or stated)
            metres, self.remarks = _unit_of(self._band, stated)
            self._scale = (self._band.GetScale() or 1.0) * metres
            self._offset = (self._band.GetOffset() or 0.0) * metres
            self._masks = _masks_of(self._raster)

    def close(self):
        """Let go of the file."""
        self._blocks.clear()
        self._masks = self._band = self._raster = None

    def __enter__(self):
        return self

    def __exit__(self, *error):
        self.close()

    def height_at(self, points, crs):
        """The height at each point, (n,) metres: straight between the middles of the four pixels around it.

        nan beyond the middles of the outermost pixels, and where one of the four holds no height.
        """
        with quiet_gdal(_cannot_be_used):
            return self._between(self._pixels(points, crs))

    def slope_at(self, points, crs, over=None):
        """``(percent, azimuth)`` of the fall of the ground at each point, (n,) each.

        The ground is taken at the two ends of a cross about the point, true north to south and east to west,
        each ``over`` metres long; where not said, LEAST_SLOPE_M or twice the longer side of a pixel there.
        azimuth: where the ground falls to, degrees clockwise from true north, 0 <= azimuth < 360; nan where
        it is level. Both nan where a height is missing.
        """
        with quiet_gdal(_cannot_be_used):
            places = self._carry(points, crs, _DEGREES)
            if over is None:
                over = np.maximum(LEAST_SLOPE_M, 2.0 * self._pixel_sizes(places))
            half = np.broadcast_to(np.asarray(over, dtype=float), len(places)) / 2.0
            step = half[:, None] / _metres_in_a_degree(places[:, 1])
            along, up = step * [1.0, 0.0], step * [0.0, 1.0]
            cross = np.concatenate([places + along, places - along, places + up, places - up])
            east, west, north, south = self._between(self._pixels(cross, _DEGREES)).reshape(4, -1)
        to_east, to_north = (east - west) / (2.0 * half), (north - south) / (2.0 * half)
        percent = 100.0 * np.hypot(to_east, to_north)
        azimuth = np.degrees(np.arctan2(-to_east, -to_north)) % 360.0
        azimuth[azimuth == 360.0] = 0.0
        azimuth[percent < _FLAT] = np.nan
        return percent, azimuth

    def _pixels(self, points, crs):
        """Points as columns and rows, counted from the middle of the top-left pixel, (n, 2)."""
        places = self._carry(points, crs, None)
        if self._crs.IsGeographic():
            # A file may count its longitudes from 0 to 360 or beyond 180.
            turn = 2.0 * np.pi / self._crs.GetAngularUnits()
            middle = self._ground(self._size / 2.0)[0, 0]
            places[:, 0] = middle + (places[:, 0] - middle + turn / 2) % turn - turn / 2
        g = self._to_grid
        return places @ np.array([[g[1], g[4]], [g[2], g[5]]]) + np.array([g[0], g[3]]) - 0.5

    def _ground(self, pixels):
        """Columns and rows, counted from the outer corner of the top-left pixel, in the raster's CRS."""
        g = self._geotransform
        pixels = np.asarray(pixels, dtype=float).reshape(-1, 2)
        return pixels @ np.array([[g[1], g[4]], [g[2], g[5]]]) + np.array([g[0], g[3]])

    def _pixel_sizes(self, places):
        """The longer side, metres on the ground, of a pixel at each of (n, 2) places in degrees."""
        pixels = self._pixels(places, _DEGREES) + 0.5
        corners = np.concatenate([pixels, pixels + [1.0, 0.0], pixels + [0.0, 1.0]])
        here, beside, below = self._carry(self._ground(corners), None, _DEGREES).reshape(3, -1, 2)
        metres = _metres_in_a_degree(places[:, 1])
        sides = [np.hypot(*(_less_than_half_turn(there - here) * metres).T) for there in (beside, below)]
        return np.maximum(*sides)

    def _carry(self, points, start, end):
        """Points from one CRS to another, None for the raster's own; a copy. nan where there is no way."""
        points = np.array(points, dtype=float).reshape(-1, 2)
        key = (None if start is None else str(start), end)
        if key not in self._ways:
            one, other = (self._crs if crs is None else _flat_crs(crs) for crs in (start, end))
            self._ways[key] = None if one.IsSame(other) else osr.CoordinateTransformation(one, other)
        if self._ways[key] is None or not len(points):
            return points
        carried = np.array(self._ways[key].TransformPoints(points.tolist()))[:, :2]
        carried[~np.isfinite(carried)] = np.nan
        return carried

    def _between(self, pixels):
        """The heights at columns and rows counted from the middle of the top-left pixel."""
        last = self._size - 1
        # A thousandth of a pixel: what rounding on the way through another CRS may take a point beyond.
        inside = (np.isfinite(pixels) & (pixels >= -1e-3) & (pixels <= last + 1e-3)).all(axis=1)
        heights = np.full(len(pixels), np.nan)
        if not inside.any():
            return heights
        held = np.clip(pixels[inside], 0, last)
        low = np.minimum(np.floor(held).astype(int), np.maximum(last - 1, 0))
        share = held - low
        numbers, which = np.unique(low // _SIDE, axis=0, return_inverse=True)
        found = np.empty(len(held))
        for number, (column, row) in enumerate(numbers.tolist()):
            mine = which.ravel() == number
            block = self._block(column, row)
            found[mine] = _bilinear(block, low[mine] - (column * _SIDE, row * _SIDE), share[mine])
        heights[inside] = found
        return heights

    def _block(self, column, row):
        """Heights of a square of pixels and of one more to the right and below, read or kept."""
        key = (column, row)
        if key in self._blocks:
            self._blocks.move_to_end(key)
            return self._blocks[key]
        while len(self._blocks) >= _BLOCKS:
            self._blocks.popitem(last=False)
        self._blocks[key] = self._read(column * _SIDE, row * _SIDE)
        return self._blocks[key]

    def _read(self, left, top):
        width, height = (int(n) for n in np.minimum(self._size - (left, top), _SIDE + 1))
        values, *masks = [band.ReadAsArray(left, top, width, height) for band in (self._band, *self._masks)]
        if any(array is None for array in (values, *masks)):
            raise YardwrightError(
                say(
                    "Part of the terrain cannot be read: {reason}.",
                    reason=gdal.GetLastErrorMsg() or say("the file seems damaged"),
                ),
                say("Fetch the terrain again, or choose another one."),
            )
        values = values.astype(float)
        values[~np.isfinite(values)] = np.nan
        for mask in masks:
            values[mask == 0] = np.nan
        return values * self._scale + self._offset


def _bilinear(block, low, share):
    """Between the pixels of ``block`` at (n, 2) columns and rows ``low`` and the next ones.

    A pixel that has no part in a height may hold none.
    """
    near = np.round(share)
    share = np.where(np.abs(share - near) < 1e-9, near, share)
    total = np.zeros(len(low))
    for right in (0, 1):
        for down in (0, 1):
            column = np.minimum(low[:, 0] + right, block.shape[1] - 1)
            row = np.minimum(low[:, 1] + down, block.shape[0] - 1)
            part = np.abs(1 - right - share[:, 0]) * np.abs(1 - down - share[:, 1])
            total += np.where(part > 0.0, part * block[row, column], 0.0)
    return total


def _less_than_half_turn(degrees):
    return (degrees + 180.0) % 360.0 - 180.0


def _metres_in_a_degree(latitude):
    """Metres on WGS 84 in a degree of longitude and of latitude, (n, 2), by the two radii of curvature."""
    phi = np.radians(np.asarray(latitude, dtype=float))
    squared = _FLATTENING * (2.0 - _FLATTENING)
    bent = 1.0 - squared * np.sin(phi) ** 2
    across = _EQUATOR / np.sqrt(bent) * np.cos(phi)
    along = _EQUATOR * (1.0 - squared) / bent**1.5
    return np.radians(np.column_stack([across, along]))


# --- the file ------------------------------------------------------------------------------------------


def _open(path, open_options):
    name = os.path.basename(path) or path
    raster = gdal.OpenEx(path, gdal.OF_RASTER, open_options=list(open_options))
    if raster is None or raster.RasterCount == 0:
        raise YardwrightError(
            say(
                "The terrain “{terrain}” cannot be read: {reason}.",
                terrain=name,
                reason=gdal.GetLastErrorMsg() or say("it holds no heights"),
            ),
            say("Check that the file is there and whole, and opens in QGIS as a raster layer."),
        )
    bands = [raster.GetRasterBand(number) for number in range(1, raster.RasterCount + 1)]
    kinds = [band.GetColorInterpretation() for band in bands]
    if len([kind for kind in kinds if kind != gdal.GCI_AlphaBand]) != 1 or kinds[0] in (
        gdal.GCI_PaletteIndex,
        gdal.GCI_AlphaBand,
    ):
        raise YardwrightError(
            say("The terrain “{terrain}” holds a picture and not heights.", terrain=name),
            say("Choose a raster with one band of heights, such as a digital terrain model."),
        )
    return raster


def _masks_of(raster):
    """The bands that are 0 where there is no height: GDAL's own for nodata and masks, and opacity, which GDAL
    does not take for a mask where it holds floats."""
    first = raster.GetRasterBand(1)
    masks = [] if first.GetMaskFlags() & gdal.GMF_ALL_VALID else [first.GetMaskBand()]
    others = [raster.GetRasterBand(number) for number in range(2, raster.RasterCount + 1)]
    return [*masks, *others]


def _placing(raster):
    """The geotransform and its inverse."""
    geotransform = raster.GetGeoTransform(can_return_null=True)
    inverse = geotransform and gdal.InvGeoTransform(geotransform)
    if not inverse:
        raise YardwrightError(
            say("The terrain does not say where on the ground it lies."),
            say("Georeference it first (Raster, Georeferencer) and choose the georeferenced terrain."),
        )
    return geotransform, inverse


def _flat_crs(given):
    """A CRS for GDAL without its heights, x east and y north. given: ``EPSG:n``, WKT, or GDAL's own."""
    if isinstance(given, osr.SpatialReference):
        crs = given.Clone()
    else:
        crs = osr.SpatialReference()
        if given and crs.SetFromUserInput(str(given)) != 0:
            raise YardwrightError(
                say("“{crs}” is not a coordinate reference system.", crs=str(given)[:60]),
                say("Choose the course's CRS as EPSG:n."),
            )
    if not (crs.IsProjected() or crs.IsGeographic() or crs.IsDerivedGeographic()):
        raise YardwrightError(
            say("The terrain does not say in which coordinate reference system it lies."),
            say("Set the layer's CRS in QGIS (Layer, Set CRS of Layer), or write it into the file."),
        )
    if crs.IsCompound():
        crs.StripVertical()
    if crs.GetAxesCount() > 2:
        crs.DemoteTo2D()
    crs.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
    return crs


def _unit_of(band, crs):
    """``(metres in the unit of the heights, remarks)``: the band's unit, else that of the vertical CRS."""
    stated = band.GetUnitType()
    known = _UNITS.get(re.sub(r"[^a-z]", "", stated.lower()))
    if known:
        return known, ()
    if stated.strip():
        remark = say(
            "The terrain states its heights in “{unit}”, which is not known here: they are taken for metres.",
            unit=stated.strip(),
        )
        return 1.0, (remark,)
    if crs is not None and crs.IsCompound():
        return crs.GetTargetLinearUnits("VERT_CS"), ()
    if crs is not None and crs.GetAxesCount() > 2:
        return 1.0, ()
    remark = say("The terrain does not say in which unit its heights are: they are taken for metres.")
    return 1.0, (remark,)


def _cannot_be_used(reason):
    return say("The terrain cannot be used: {reason}.", reason=reason)
