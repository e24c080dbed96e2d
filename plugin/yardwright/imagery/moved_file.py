"""A virtual image that shows a date moved onto the ground, for programs that know nothing of moves.

The date's own file is never changed. A plain shift is written as a shifted place of the same pixels. All else
is a warp by an array of places, a value for every few pixels, between which GDAL interpolates.
"""

import contextlib
import os
import re
import tempfile
from html import escape, unescape

import numpy as np
from osgeo import gdal, osr

from ..model.errors import YardwrightError
from ..model.words import say
from .grid import Grid, grid_crs
from .quiet import quiet_gdal

_STRAIGHT = 0.02
"""A move is a plain shift of the file when no pixel of it lies further off than this share of one."""
_MOST_NODES = 400


def write_moved(date, move, crs, path):
    """Write a virtual image that shows a Date where its move lays it; whether ``path`` was written.

    move: in ``crs``, the course's. path: of the VRT; what a warp needs besides is written beside it, its name
    begun likewise. It names the date's file relative to its own folder where it can. Nothing is written when
    it would be the same. Raises YardwrightError, with what was there left as it was.
    """
    folder = os.path.dirname(os.path.abspath(path))
    with quiet_gdal(_cannot_be_moved):
        file = gdal.OpenEx(date.path, gdal.OF_RASTER, open_options=list(date.open_options))
        if file is None:
            raise YardwrightError(
                _cannot_be_moved(gdal.GetLastErrorMsg()), say("Check that the file is there and whole.")
            )
        places = _Places(file, date.crs, move, crs)
        shift = places.plain_shift()
        parts = (
            {path: _shifted(file, shift, folder)}
            if shift is not None
            else _warped(file, places, path, folder)
        )
        file = None
    return _put(folder, parts)


def take_away_moved(path):
    """Take a virtual image away, with what lies beside it for its warp."""
    for name in (path, _inner(path), _nodes(path)):
        with contextlib.suppress(FileNotFoundError):
            os.remove(name)


def _inner(path):
    return os.path.splitext(path)[0] + "_source.vrt"


def _nodes(path):
    return os.path.splitext(path)[0] + "_places.tif"


def _cannot_be_moved(reason):
    return say("The image of a date cannot be shown moved: {reason}.", reason=reason)


class _Places:
    """Where the pixels of a file lie, in its own CRS, as it says and as they are moved."""

    def __init__(self, file, file_crs, move, crs):
        self.size = (file.RasterXSize, file.RasterYSize)
        self.crs = _crs_of(file, file_crs)
        self._move = move
        self._as_told = gdal.Transformer(file, None, [])
        ground = grid_crs(Grid(1, 1, (0, 1, 0, 0, 0, -1), crs))
        self._ahead = osr.CoordinateTransformation(self.crs, ground)
        self._back = osr.CoordinateTransformation(ground, self.crs)
        self._gt = file.GetGeoTransform(can_return_null=True)

    def told(self, pixels):
        """(n, 2) columns and rows -> (n, 2) places as the file says."""
        found, _ = self._as_told.TransformPoints(0, np.asarray(pixels, dtype=float).tolist())
        return np.array(found, dtype=float)[:, :2]

    def moved(self, pixels):
        """The same as they are moved."""
        ground = np.array(self._ahead.TransformPoints(self.told(pixels).tolist()), dtype=float)[:, :2]
        back = np.array(self._back.TransformPoints(self._move.ahead(ground).tolist()), dtype=float)[:, :2]
        if not np.isfinite(back).all():
            raise YardwrightError(
                say("The image reaches beyond the course's coordinate reference system."),
                say("Cut out the part of it that shows the course, and take that as the date."),
            )
        return back

    def nodes(self, step):
        """Columns and rows, (n,) each, of nodes ``step`` pixels apart, the last at or beyond the far rim."""
        return [np.arange(0, size + step, step, dtype=float) for size in self.size]

    def rim(self):
        """The box about all pixels as they are moved: x least, y least, x greatest, y greatest."""
        (width, height), along = self.size, np.linspace(0, 1, 65)
        sides = [(along * width, along * 0), (along * width, along * 0 + height)]
        sides += [(along * 0, along * height), (along * 0 + width, along * height)]
        places = self.moved(np.concatenate([np.column_stack(side) for side in sides]))
        return (*places.min(axis=0).tolist(), *places.max(axis=0).tolist())

    def plain_shift(self):
        """``(x, y)`` by which the whole file lies off, in its CRS; None where its parts lie off otherwise."""
        if self._gt is None:
            return None
        columns, rows = (np.linspace(0, size, 9) for size in self.size)
        pixels = np.stack(np.meshgrid(columns, rows), axis=-1).reshape(-1, 2)
        if self._move.local is not None:
            return None
        off = self.moved(pixels) - self.told(pixels)
        shift = off.mean(axis=0)
        inverse = np.linalg.inv([[self._gt[1], self._gt[2]], [self._gt[4], self._gt[5]]])
        return shift if np.abs((off - shift) @ inverse.T).max() < _STRAIGHT else None


def _crs_of(file, given):
    crs = osr.SpatialReference()
    if given:
        crs.SetFromUserInput(given)
    else:
        own = file.GetSpatialRef() or file.GetGCPSpatialRef()
        if own is None:
            raise YardwrightError(
                say("The image does not say in which coordinate reference system it lies."),
                say("Set the layer's CRS in QGIS (Layer, Set CRS of Layer), or write it into the file."),
            )
        crs = own.Clone()
    crs.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
    return crs


def _shifted(file, shift, folder):
    """The text of a VRT of the same pixels, shifted."""
    left, across, across_down, top, down_across, down = file.GetGeoTransform()
    moved = gdal.Translate("", file, format="VRT")
    moved.SetGeoTransform((left + shift[0], across, across_down, top + shift[1], down_across, down))
    return _related(_text_of(moved), folder)


def _warped(file, places, path, folder):
    """``{path: text or bytes}`` of a warp by an array of places, the inner image and the array."""
    step = max(8, -(-max(places.size) // _MOST_NODES))
    columns, rows = places.nodes(step)
    pixels = np.stack(np.meshgrid(columns, rows), axis=-1).reshape(-1, 2)
    at = places.moved(pixels).reshape(len(rows), len(columns), 2)
    nodes = gdal.GetDriverByName("MEM").Create("", len(columns), len(rows), 2, gdal.GDT_Float64)
    for band in (0, 1):
        nodes.GetRasterBand(band + 1).WriteArray(at[:, :, band])
    array = _nodes(path)
    inner = gdal.Translate("", file, format="VRT")
    inner.SetMetadata(
        {
            "X_DATASET": array, "X_BAND": "1", "Y_DATASET": array, "Y_BAND": "2", "PIXEL_OFFSET": "0",
            "LINE_OFFSET": "0", "PIXEL_STEP": str(step), "LINE_STEP": str(step),
            "SRS": places.crs.ExportToWkt(), "GEOREFERENCING_CONVENTION": "TOP_LEFT_CORNER",
        },
        "GEOLOCATION",
    )  # fmt: skip
    text = _related(_text_of(inner), folder)
    with tempfile.TemporaryDirectory() as aside:
        # GDAL opens the array to write the warp, which names its place: that is put right thereafter.
        draft = os.path.join(aside, os.path.basename(array))
        gdal.GetDriverByName("GTiff").CreateCopy(draft, nodes, 0, ["COMPRESS=DEFLATE"]).FlushCache()
        told = inner.GetMetadata("GEOLOCATION")
        inner.SetMetadata({**told, "X_DATASET": draft, "Y_DATASET": draft}, "GEOLOCATION")
        warp = _warp_text(inner, file, at, places.rim())
        with open(draft, "rb") as made:
            places_bytes = made.read()
    named = f'<SourceDataset relativeToVRT="1">{escape(os.path.basename(_inner(path)))}</SourceDataset>'
    warp = re.sub(r"<SourceDataset.*?</SourceDataset>", lambda _: named, warp, flags=re.DOTALL)
    warp = re.sub(r"(<MDI key=.[XY]_DATASET.>)[^<]*", lambda found: found.group(1) + escape(array), warp)
    return {array: places_bytes, _inner(path): text, path: warp}


def _warp_text(inner, file, at, bounds):
    """The text of GDAL's own warp of an image with an array of places; at: (rows, columns, 2). bounds: of
    what it covers."""
    # Between pixels colours of a palette cannot be mixed.
    palette = file.GetRasterBand(1).GetColorTable() is not None
    beside = np.hypot(*(at[:-1, 1:] - at[:-1, :-1]).reshape(-1, 2).T)
    step = int(inner.GetMetadataItem("PIXEL_STEP", "GEOLOCATION"))
    pixel = float(np.median(beside)) / step
    alpha = gdal.GCI_AlphaBand in [
        file.GetRasterBand(band).GetColorInterpretation() for band in range(1, file.RasterCount + 1)
    ]
    plain = file.GetRasterBand(1).GetNoDataValue() is None and not alpha
    warp = gdal.Warp(
        "",
        inner,
        format="VRT",
        geoloc=True,
        resampleAlg="near" if palette else "cubic",
        xRes=pixel,
        yRes=pixel,
        outputBounds=bounds,
        dstAlpha=plain,
        errorThreshold=0.02,
    )
    return _text_of(warp)


def _text_of(virtual):
    return virtual.GetMetadata("xml:VRT")[0]


def _related(text, folder):
    """The text of a VRT with its files named from the folder it will lie in, as far as they can be."""

    def related(found):
        name = unescape(found.group(2))
        with contextlib.suppress(ValueError):  # on another drive
            if os.path.isfile(name):
                name = os.path.relpath(name, folder).replace(os.sep, "/")
                how = re.sub(r'relativeToVRT="\d"', 'relativeToVRT="1"', found.group(1))
                return f"<SourceFilename{how}>{escape(name)}</SourceFilename>"
        return found.group(0)

    return re.sub(r"<SourceFilename([^>]*)>([^<]*)</SourceFilename>", related, text)


def _put(folder, parts):
    """Put texts and bytes where they belong, ``{path: content}``, unless they are there already."""
    contents = {
        path: content if isinstance(content, bytes) else content.encode("utf-8")
        for path, content in parts.items()
    }
    if all(_holds(path, content) for path, content in contents.items()):
        return False
    try:
        os.makedirs(folder, exist_ok=True)
        with tempfile.TemporaryDirectory(prefix=".yardwright-", dir=folder) as aside:
            for path, content in contents.items():
                with open(os.path.join(aside, os.path.basename(path)), "wb") as file:
                    file.write(content)
            for path in contents:
                os.replace(os.path.join(aside, os.path.basename(path)), path)
    except OSError as error:
        raise YardwrightError(
            say("“{folder}” cannot be written to ({reason}).", folder=folder, reason=error.strerror),
            say("Choose a folder you may write to, and close the image in other programs."),
        ) from error
    return True


def _holds(path, content):
    try:
        with open(path, "rb") as file:
            return file.read() == content
    except OSError:
        return False
