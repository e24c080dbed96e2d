"""An image open for reading: which of its bands are the picture, what its values mean, windows of any turn.

Memory is bounded by the window, not by the image: the coarsest overview that is still as fine as the window
is read, in pieces.
"""

import math
import os
from dataclasses import dataclass

import numpy as np
from osgeo import gdal, osr
from scipy.ndimage import map_coordinates

from ..model.errors import YardwrightError
from ..model.words import say
from .grid import Grid, grid_crs
from .moves import STAY
from .quiet import modest_cache, quiet_gdal
from .told import Told


class OutsideImage(YardwrightError):
    """The image shows nothing of the window."""


class Image:
    """An image file made ready once, to read any number of windows out of it; a context that closes it.

    source: what GDAL opens. crs: WKT or ``EPSG:n``, for an image that does not say its own. open_options:
    GDAL's, ``NAME=VALUE``. move: the Move that brings it onto the ground. remarks: what had to be doubted.
    Raises YardwrightError when the image cannot be used.
    """

    def __init__(self, source, crs=None, open_options=(), move=STAY):
        self.source, self.move = source, move
        with quiet_gdal(_cannot_be_used):
            self._file = _open(source, open_options)
            self._prepared = _prepare(self._file, crs)
        self.remarks = self._prepared.remarks

    def __enter__(self):
        return self

    def __exit__(self, *_):
        self.close()

    def close(self):
        """Let go of the file."""
        self._prepared = self._file = None

    def file_and_crs(self):
        """``(GDAL dataset, osr.SpatialReference)`` the picture is read from, as long as the Image is open."""
        return self._prepared.bands, self._prepared.crs

    def raster(self, grid, told=None):
        """The window as a GDAL dataset in memory: red, green, blue and opacity, bytes.

        told: a Told. Raises OutsideImage when the image does not reach the window, YardwrightError when it
        cannot be read, Cancelled.
        """
        with quiet_gdal(_cannot_be_used), modest_cache():
            if self.move.local is None:
                made = _warp(self._prepared, self.move.grid(grid), told or Told(None))
                made.SetGeoTransform(grid.geotransform)
                return made
            return self._bent(grid, told or Told(None))

    def pixels(self, grid, told=None):
        """The window as (height, width, 4) of uint8, RGB and opacity; all clear where the image ends."""
        try:
            made = self.raster(grid, told)
        except OutsideImage:
            return np.zeros((grid.height, grid.width, 4), np.uint8)
        return pixels_of(made)

    def _bent(self, grid, told):
        """The window under local shifts: a slightly larger one, resampled with splines."""
        local = self.move.local
        g = grid.geotransform
        pixel = math.sqrt(abs(g[1] * g[5] - g[2] * g[4]))
        edge = math.ceil(local.most() / pixel) + 4
        corner = grid.to_ground([(-edge, -edge)])[0]
        wide = Grid(
            grid.width + 2 * edge,
            grid.height + 2 * edge,
            (corner[0], g[1], g[2], corner[1], g[4], g[5]),
            grid.crs,
        )
        straight = _warp(self._prepared, self.move.grid(wide), told)
        at = _drawn_from(grid, local, edge)
        made = picture_in_memory(grid)
        for band in range(1, 5):
            values = straight.GetRasterBand(band).ReadAsArray().astype(np.float32)
            found = map_coordinates(values, at, order=3 if band < 4 else 1, mode="nearest")
            made.GetRasterBand(band).WriteArray(np.clip(np.rint(found), 0, 255).astype(np.uint8))
        return made


def pixels_of(raster):
    """(height, width, 4) of uint8: the four bands of what ``Image.raster`` gives."""
    # One band after the other: gathering all at once holds the window twice.
    pixels = np.empty((raster.RasterYSize, raster.RasterXSize, 4), np.uint8)
    for band in range(4):
        pixels[:, :, band] = raster.GetRasterBand(band + 1).ReadAsArray()
    return pixels


def _drawn_from(grid, local, edge):
    """Rows and columns, (2, height, width), that each pixel of a grid is drawn from in one wider by ``edge``
    on each side. Local shifts are smooth: they are found at every 16th pixel and spread between."""
    step = 16
    rows = np.arange(0, grid.height + step, step)
    columns = np.arange(0, grid.width + step, step)
    nodes = np.stack(np.meshgrid(columns + 0.5, rows + 0.5), axis=-1).reshape(-1, 2)
    places = grid.to_ground(nodes)
    moved = grid.to_pixels(places - local.at(places)) - nodes
    coarse = moved.reshape(len(rows), len(columns), 2)
    y, x = np.arange(grid.height, dtype=np.float32), np.arange(grid.width, dtype=np.float32)
    spread = np.stack(np.meshgrid(y / step, x / step, indexing="ij"))
    down, right = (map_coordinates(coarse[:, :, k], spread, order=1).astype(np.float32) for k in (1, 0))
    return np.stack([y[:, None] + down + edge, x[None, :] + right + edge])


@dataclass(frozen=True)
class _Prepared:
    """An image made ready for the warp.

    bands: dataset of one band (grey) or three (colour), and an opacity band after them if ``opacity``.
    nodata: the value that means "no image here", None for none. stretch: (low, high) values that become
    black and white, None when the values are 0 to 255 already.
    """

    bands: object
    colours: int
    opacity: bool
    nodata: float
    crs: object
    stretch: tuple
    remarks: tuple


def _open(source, open_options):
    image = gdal.OpenEx(source, gdal.OF_RASTER, open_options=list(open_options))
    if image is None or image.RasterCount == 0:
        raise YardwrightError(
            say(
                "The image “{image}” cannot be read: {reason}.",
                image=os.path.basename(source) or source,
                reason=gdal.GetLastErrorMsg() or say("it holds no picture"),
            ),
            say("Check that the file is there and whole, and opens in QGIS as a raster layer."),
        )
    return image


def _prepare(image, source_crs):
    crs = _crs_of(image, source_crs)
    if image.GetGeoTransform(can_return_null=True) is None and image.GetGCPCount() == 0:
        raise YardwrightError(
            say("The image does not say where on the ground it lies."),
            say("Georeference it first (Raster, Georeferencer) and choose the georeferenced image."),
        )
    first = image.GetRasterBand(1)
    if first.GetColorInterpretation() == gdal.GCI_PaletteIndex and first.GetColorTable() is not None:
        expanding = gdal.TranslateOptions(format="VRT", bandList=[1], rgbExpand="rgba", noData="none")
        expanded = gdal.Translate("", image, options=expanding)
        return _Prepared(expanded, 3, True, None, crs, None, ())
    colours, opacity, remarks = _bands_of(image)
    stretch, nodata, more = _values_of(image, colours)
    remarks = (*remarks, *more)
    wanted = [*colours, *([opacity] if opacity else [])]
    plain = wanted == list(range(1, image.RasterCount + 1))
    if not plain or _alpha_of(image) != opacity:
        image = _chosen_bands(image, wanted, bool(opacity))
    return _Prepared(image, len(colours), bool(opacity), nodata, crs, stretch, remarks)


def _crs_of(image, source_crs):
    if source_crs:
        crs = osr.SpatialReference()
        crs.SetFromUserInput(source_crs)
    else:
        crs = image.GetSpatialRef() or image.GetGCPSpatialRef()
        crs = crs.Clone() if crs is not None else osr.SpatialReference()
    if not (crs.IsProjected() or crs.IsGeographic() or crs.IsDerivedGeographic()):
        raise YardwrightError(
            say("The image does not say in which coordinate reference system it lies."),
            say("Set the layer's CRS in QGIS (Layer, Set CRS of Layer), or write it into the file."),
        )
    crs.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
    return crs


def _alpha_of(image):
    """The number of the band tagged as opacity, 0 for none."""
    for number in range(1, image.RasterCount + 1):
        if image.GetRasterBand(number).GetColorInterpretation() == gdal.GCI_AlphaBand:
            return number
    return 0


def _bands_of(image):
    """``([red, green, blue] or [grey], opacity band or 0, remarks)`` as band numbers."""
    opacity = _alpha_of(image)
    remarks = ()
    if opacity and not _is_opacity(image.GetRasterBand(opacity)):
        remark = say(
            "Band {number} of the image is tagged as opacity but holds a picture (often near infrared); "
            "it was left out.",
            number=opacity,
        )
        remarks = (remark,)
        pictures = [n for n in range(1, image.RasterCount + 1) if n != opacity]
        opacity = 0
    else:
        pictures = [n for n in range(1, image.RasterCount + 1) if n != opacity]
    if not pictures:
        return [1], 0, remarks
    tagged = {image.GetRasterBand(n).GetColorInterpretation(): n for n in reversed(pictures)}
    rgb = [tagged.get(colour) for colour in (gdal.GCI_RedBand, gdal.GCI_GreenBand, gdal.GCI_BlueBand)]
    if all(rgb):
        return rgb, opacity, remarks
    return (pictures[:3] if len(pictures) >= 3 else pictures[:1]), opacity, remarks


def _is_opacity(band):
    """Whether a band tagged as opacity is one.

    A mask is clear or opaque and at most a little in between along its edges; a picture (the near infrared of
    aerial images wrongly tagged so) takes many values, most of them neither lowest nor highest.
    """
    values = _sample(band)
    top = {gdal.GDT_Byte: 255, gdal.GDT_UInt16: 65535}.get(band.DataType) or max(float(values.max()), 1e-9)
    between = values[(values > 0.03 * top) & (values < 0.97 * top)]
    return between.size <= 0.1 * values.size or np.unique(between).size <= 4


def _values_of(image, colours):
    """``(stretch, nodata, remarks)`` for the bands in ``colours``."""
    bands = [image.GetRasterBand(number) for number in colours]
    nodata = bands[0].GetNoDataValue()
    if bands[0].DataType == gdal.GDT_Byte:
        if nodata == 255:
            remark = say(
                "The image counts pure white as “no image”; it was kept, or white sand would drop out."
            )
            return None, None, (remark,)
        return None, nodata, ()
    values = np.concatenate([_sample(band).ravel() for band in bands]).astype(float)
    usable = np.isfinite(values)
    if nodata is not None and np.isfinite(nodata):
        usable &= ~np.isclose(values, nodata, rtol=1e-6, atol=0)
    values = values[usable]
    if values.size == 0:
        return (0.0, 255.0), nodata, ()
    if bands[0].DataType in (gdal.GDT_UInt16, gdal.GDT_Int16) and values.min() >= 0 and values.max() <= 255:
        return (0.0, 255.0), nodata, ()
    low, high = np.percentile(values, (0.5, 99.5))
    if not high > low:
        low, high = low - 0.5, low + 0.5
    remark = say(
        "The image's values were spread so that {low} is black and {high} white.",
        low=f"{low:.6g}",
        high=f"{high:.6g}",
    )
    return (float(low), float(high)), nodata, (remark,)


def _sample(band, pieces=5, side=96):
    """Values from small squares spread over a band, so that no large file is read whole."""
    squares = []
    for row in range(pieces):
        for column in range(pieces):
            width, height = min(side, band.XSize), min(side, band.YSize)
            x = (band.XSize - width) * column // max(pieces - 1, 1)
            y = (band.YSize - height) * row // max(pieces - 1, 1)
            values = band.ReadAsArray(x, y, width, height)
            if values is None:
                raise _unreadable()
            squares.append(values.ravel())
    return np.concatenate(squares)


def _unreadable():
    return YardwrightError(
        say(
            "Part of the image cannot be read: {reason}.",
            reason=gdal.GetLastErrorMsg() or say("the file seems damaged"),
        ),
        say("Fetch the image again, or choose another one."),
    )


def _chosen_bands(image, wanted, opacity):
    """A virtual image of the wanted bands, the last of them opacity if ``opacity``."""
    chosen = gdal.Translate(
        "", image, options=gdal.TranslateOptions(format="VRT", bandList=wanted, noData="none")
    )
    _tag(chosen, 3 if len(wanted) > 2 else 1, opacity)
    return chosen


def _tag(image, colours, opacity):
    """Say of each band what it holds; the warp takes a band for opacity by its tag alone."""
    rgb = [gdal.GCI_RedBand, gdal.GCI_GreenBand, gdal.GCI_BlueBand]
    tags = (rgb if colours == 3 else [gdal.GCI_GrayIndex]) + ([gdal.GCI_AlphaBand] if opacity else [])
    for number, tag in enumerate(tags, start=1):
        image.GetRasterBand(number).SetColorInterpretation(tag)


def picture_in_memory(grid, kind=gdal.GDT_Byte, colours=3):
    """An empty image in memory on the grid: ``colours`` bands and opacity."""
    target = gdal.GetDriverByName("MEM").Create("", grid.width, grid.height, colours + 1, kind)
    if target is None:
        raise YardwrightError(
            say(
                "A picture of {width} x {height} pixels does not fit into memory.",
                width=grid.width,
                height=grid.height,
            ),
            say("Choose a smaller panel or fewer dots per inch."),
        )
    target.SetGeoTransform(grid.geotransform)
    target.SetSpatialRef(grid_crs(grid))
    _tag(target, colours, opacity=True)
    return target


def _warp(prepared, grid, told):
    """The window's RGBA pixels, an image in memory."""
    byte = prepared.stretch is None
    target = picture_in_memory(grid, gdal.GDT_Byte if byte else gdal.GDT_Float32, prepared.colours)
    level, ratios = _resolution(prepared, target, grid)
    # Without the scales the warp takes its smoothing from the upright box round the turned window: a blur.
    hints = [f"XSCALE={ratios[0]:.9g}", f"YSCALE={ratios[1]:.9g}"]
    hints.append(f"NUM_THREADS={min(os.cpu_count() or 1, 4)}")
    options = ["-r", "cubic", "-dstalpha", "-et", "0.02", "-wm", "128", "-s_srs", prepared.crs.ExportToWkt()]
    options += ["-srcalpha"] if prepared.opacity else ["-nosrcalpha"]
    if prepared.nodata is None:
        options += ["-srcnodata", "None"]
    else:
        options += ["-srcnodata", repr(prepared.nodata)]
        hints.append("UNIFIED_SRC_NODATA=YES")
    if not byte:
        hints.append("DST_ALPHA_MAX=255")
    for hint in hints:
        options += ["-wo", hint]
    done = gdal.Warp(
        target,
        prepared.bands,
        options=gdal.WarpOptions(options=options, overviewLevel=level, callback=told.part(0.0, 1.0)),
    )
    told.check()
    if not done:
        raise _unreadable()
    if byte and prepared.colours == 3:
        return target
    return _as_rgba(target, grid, prepared)


def _resolution(prepared, target, grid):
    """``(overview level or "NONE", (ratio along the image's x, along its y))``.

    A ratio is image pixel / window pixel, at most 1, both taken on the ground: from how far apart the
    window's pixels fall in the image, so that turned, oblong and reprojected pixels all count right. The
    overview is the coarsest that is still no coarser than the window along either axis.
    """
    options = [f"SRC_SRS={prepared.crs.ExportToWkt()}", f"DST_SRS={grid_crs(grid).ExportToWkt()}"]
    transformer = gdal.Transformer(prepared.bands, target, options)
    steps = [(x, y) for y in np.linspace(0, grid.height, 9) for x in np.linspace(0, grid.width, 9)]
    at, found = transformer.TransformPoints(1, steps) if transformer else ([], [])
    at = np.array(at, dtype=float)[np.array(found, dtype=bool)] if len(at) else np.empty((0, 3))
    image = prepared.bands
    size = [image.RasterXSize, image.RasterYSize]
    if not len(at) or (at[:, :2].max(axis=0) < 0).any() or (at[:, :2].min(axis=0) > size).any():
        raise outside(image.GetDescription())
    x, y = grid.width / 2, grid.height / 2
    (middle, right, below), found = transformer.TransformPoints(1, [(x, y), (x + 1, y), (x, y + 1)])
    if not all(found):
        raise outside(image.GetDescription())
    steps = np.hypot(np.subtract(right, middle), np.subtract(below, middle))[:2]
    level, factors = "NONE", np.ones(2)
    first = image.GetRasterBand(1)
    for number in range(first.GetOverviewCount()):
        overview = first.GetOverview(number)
        factor = np.array([image.RasterXSize / overview.XSize, image.RasterYSize / overview.YSize])
        if (factor <= steps * 1.001).all() and factor.prod() > factors.prod():
            level, factors = number, factor
    return level, tuple(np.minimum(1.0, factors / steps))


def outside(source):
    """The OutsideImage of a source, "" where it has no name."""
    name = os.path.basename(source)
    return OutsideImage(
        say("The image “{image}” shows nothing of this window.", image=name)
        if name
        else say("The image shows nothing of this window."),
        say("Choose an image of the course's ground; if it is one, check its CRS."),
    )


def _as_rgba(target, grid, prepared):
    """Grey or wide-ranging values as red, green, blue of 0 to 255."""
    rgba = picture_in_memory(grid)
    for band in range(3):
        values = target.GetRasterBand(min(band, prepared.colours - 1) + 1).ReadAsArray()
        if prepared.stretch is not None:
            low, high = prepared.stretch
            values = np.nan_to_num((values - low) * (255.0 / (high - low)))
            values = np.clip(np.rint(values), 0, 255).astype(np.uint8)
        rgba.GetRasterBand(band + 1).WriteArray(values)
    opacity = target.GetRasterBand(prepared.colours + 1).ReadAsArray()
    rgba.GetRasterBand(4).WriteArray(np.clip(np.rint(opacity), 0, 255).astype(np.uint8))
    return rgba


def _cannot_be_used(reason):
    return say("The image cannot be used: {reason}.", reason=reason)
