"""Windows: pictures turned so that play points up, cut out of an image with GDAL.

A window's picture is a grid of square pixels laid over the ground at any angle. It is written twice, as a
rotated GeoTIFF and as a PNG or JPEG with a world file and an ``.aux.xml`` (which brings the CRS that a world
file cannot hold), so that both land in their place in a map and one can go straight onto a page.
"""

import contextlib
import glob
import os
import shutil
import tempfile
from dataclasses import dataclass
from html import escape

import numpy as np
from osgeo import gdal, osr

from ..model.errors import Cancelled, YardwrightError
from ..model.words import say
from .quiet import quiet_gdal

FORMS = {"png": ("PNG", ".png", ".pgw"), "jpeg": ("JPEG", ".jpg", ".jgw")}
"""Forms of the picture beside the GeoTIFF: GDAL's driver, suffix, suffix of the world file."""

_CACHE = 256 << 20
_MADE_BY = "yardwright"


class OutsideImage(YardwrightError):
    """The image shows nothing of the window."""


@dataclass(frozen=True)
class Grid:
    """Where the pixels of a picture lie.

    width, height: pixels. geotransform: GDAL's six numbers; a point of the picture, counted in pixels from
    the outer top-left corner of the top-left pixel (column to the right, row downwards), lies at
    ``x = g[0] + column * g[1] + row * g[2]``, ``y = g[3] + column * g[4] + row * g[5]``.
    crs: WKT or ``EPSG:n``; x east and y north, also where the CRS itself names north first.
    """

    width: int
    height: int
    geotransform: tuple
    crs: str

    def to_ground(self, pixels):
        """(n, 2) columns and rows -> (n, 2) x and y in the grid's CRS."""
        pixels = np.asarray(pixels, dtype=float).reshape(-1, 2)
        g = self.geotransform
        return pixels @ np.array([[g[1], g[4]], [g[2], g[5]]]) + np.array([g[0], g[3]])

    def to_pixels(self, points):
        """(n, 2) x and y in the grid's CRS -> (n, 2) columns and rows; the inverse of ``to_ground``."""
        points = np.asarray(points, dtype=float).reshape(-1, 2)
        g = self.geotransform
        return (points - np.array([g[0], g[3]])) @ np.linalg.inv(np.array([[g[1], g[4]], [g[2], g[5]]]))

    def corners(self):
        """Its outer corners on the ground, (4, 2): top left, top right, bottom right, bottom left."""
        w, h = self.width, self.height
        return self.to_ground([(0, 0), (w, 0), (w, h), (0, h)])


@dataclass(frozen=True)
class Cut:
    """What ``cut`` or ``write`` wrote: the paths of the GeoTIFF and the picture, and remarks on the image."""

    tif: str
    picture: str
    remarks: tuple = ()


def world_file(geotransform):
    """The six lines of a world file: A, D, B, E and C, F, the middle of the top-left pixel.

    Half a pixel lies between GDAL's origin, the outer corner of that pixel, and a world file's.
    """
    g = geotransform
    lines = (g[1], g[4], g[2], g[5], g[0] + (g[1] + g[2]) / 2, g[3] + (g[4] + g[5]) / 2)
    return "".join(f"{value!r}\n" for value in map(float, lines))


def cut(source, grid, folder, name, form="png", source_crs=None, open_options=(), progress=None):
    """Cut a window out of an image; returns a Cut.

    source: what GDAL opens. grid: the window. folder, name: ``folder/name.tif`` and ``folder/name.png`` (or
    ``.jpg``) are written, replacing those of an earlier run. form: a key of FORMS. source_crs: WKT or
    ``EPSG:n``, for an image that does not say its own. open_options: GDAL's, ``NAME=VALUE``.
    progress: called with (done, total); when it returns False, Cancelled is raised.

    Memory is bounded by the window, not by the image: the coarsest overview that is still as fine as the
    window is read, in pieces. Raises YardwrightError when the image cannot be used, OutsideImage when it
    does not reach the window.
    """
    _refuse_own_output(source, folder, name)
    told = _Progress(progress)
    with quiet_gdal(_cannot_be_used), _modest_cache():
        image = _open(source, open_options)
        try:
            prepared = _prepare(image, source_crs)
            target = _warp(prepared, grid, told)
            remarks = [*prepared.remarks, *_cover_remark(target, source)]
            told(0.8)
            made = _write(target, grid, folder, name, form, told)
            told(1.0)
        finally:
            target = prepared = image = None
    return Cut(*made, tuple(remarks))


def write(pixels, grid, folder, name, form="png"):
    """Write a picture that is already drawn: ``pixels`` is (height, width, 4) of uint8, RGB and opacity.

    The files are those of ``cut``. Raises OutsideImage when every pixel is clear.
    """
    with quiet_gdal(_cannot_be_used):
        target = _target(grid)
        try:
            for band in range(4):
                target.GetRasterBand(band + 1).WriteArray(np.ascontiguousarray(pixels[:, :, band]))
            remarks = _cover_remark(target, "")
            made = _write(target, grid, folder, name, form, _Progress(None))
        finally:
            target = None
    return Cut(*made, tuple(remarks))


# --- the image -----------------------------------------------------------------------------------------


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


# --- the warp ------------------------------------------------------------------------------------------


def _target(grid, kind=gdal.GDT_Byte, colours=3):
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


def grid_crs(grid):
    """The grid's CRS for GDAL, x east and y north."""
    crs = osr.SpatialReference()
    if crs.SetFromUserInput(grid.crs) != 0:
        raise YardwrightError(
            say("“{crs}” is not a coordinate reference system.", crs=grid.crs[:60]),
            say("Choose the course's CRS as EPSG:n."),
        )
    crs.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
    return crs


def _warp(prepared, grid, told):
    """The window's RGBA pixels, an image in memory."""
    byte = prepared.stretch is None
    target = _target(grid, gdal.GDT_Byte if byte else gdal.GDT_Float32, prepared.colours)
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
        options=gdal.WarpOptions(options=options, overviewLevel=level, callback=told.part(0.0, 0.8)),
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
        raise _outside(image.GetDescription())
    x, y = grid.width / 2, grid.height / 2
    (middle, right, below), found = transformer.TransformPoints(1, [(x, y), (x + 1, y), (x, y + 1)])
    if not all(found):
        raise _outside(image.GetDescription())
    steps = np.hypot(np.subtract(right, middle), np.subtract(below, middle))[:2]
    level, factors = "NONE", np.ones(2)
    first = image.GetRasterBand(1)
    for number in range(first.GetOverviewCount()):
        overview = first.GetOverview(number)
        factor = np.array([image.RasterXSize / overview.XSize, image.RasterYSize / overview.YSize])
        if (factor <= steps * 1.001).all() and factor.prod() > factors.prod():
            level, factors = number, factor
    return level, tuple(np.minimum(1.0, factors / steps))


def _outside(source):
    name = os.path.basename(source)
    return OutsideImage(
        say("The image “{image}” shows nothing of this window.", image=name)
        if name
        else say("The image shows nothing of this window."),
        say("Choose an image of the course's ground; if it is one, check its CRS."),
    )


def _as_rgba(target, grid, prepared):
    """Grey or wide-ranging values as red, green, blue of 0 to 255."""
    rgba = _target(grid)
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


def _cover_remark(target, source):
    """A remark when part of the window is empty; OutsideImage when all of it is."""
    opacity = target.GetRasterBand(4).ReadAsArray()
    empty = 1.0 - np.count_nonzero(opacity) / opacity.size
    if empty == 1.0:
        raise _outside(source)
    if empty >= 0.001:
        share = f"{max(empty * 100, 0.1):.1f}"
        return (say("{share} % of the window lies outside the image and is left clear.", share=share),)
    return ()


# --- the files -----------------------------------------------------------------------------------------


def _write(target, grid, folder, name, form, told):
    """Write the GeoTIFF and the picture with its two companions; all are made aside, then put in place."""
    driver, suffix, world_suffix = FORMS[form]
    aside = tempfile.mkdtemp(prefix=".window-", dir=folder)
    try:
        _copy(target, os.path.join(aside, name + ".tif"), "GTiff", list(_TIFF), told.part(0.8, 0.9))
        picture = target if driver == "PNG" else _on_white(target, grid)
        options = ["ZLEVEL=1"] if driver == "PNG" else ["QUALITY=92"]
        _copy(picture, os.path.join(aside, name + suffix), driver, options, told.part(0.9, 1.0))
        for stray in glob.glob(os.path.join(glob.escape(aside), "*.aux.xml")):
            os.remove(stray)
        _write_text(os.path.join(aside, name + world_suffix), world_file(grid.geotransform))
        _write_text(os.path.join(aside, name + suffix + ".aux.xml"), _aux_xml(grid))
        _put_in_place(aside, folder, name, form)
    finally:
        shutil.rmtree(aside, ignore_errors=True)
    return os.path.join(folder, name + ".tif"), os.path.join(folder, name + suffix)


_TIFF = ("COMPRESS=DEFLATE", "ZLEVEL=1", "TILED=YES", "PHOTOMETRIC=RGB", "ALPHA=NON-PREMULTIPLIED")


def _copy(dataset, path, driver, options, callback):
    copy = gdal.GetDriverByName(driver).CreateCopy(path, dataset, 0, options, callback)
    callback.told.check()
    if copy is None:
        raise YardwrightError(
            say(
                "“{file}” cannot be written: {reason}.",
                file=os.path.basename(path),
                reason=gdal.GetLastErrorMsg() or say("unknown reason"),
            ),
            say("Check that the disk has room and that you may write to the folder."),
        )
    copy.FlushCache()


def _on_white(target, grid):
    """The picture without opacity, what was clear now white: JPEG knows no opacity."""
    opacity = target.GetRasterBand(4).ReadAsArray().astype(np.uint16)
    flat = gdal.GetDriverByName("MEM").Create("", grid.width, grid.height, 3, gdal.GDT_Byte)
    for band in range(1, 4):
        values = target.GetRasterBand(band).ReadAsArray().astype(np.uint16)
        mixed = (values * opacity + 255 * (255 - opacity) + 127) // 255
        flat.GetRasterBand(band).WriteArray(mixed.astype(np.uint8))
    return flat


def _write_text(path, text):
    with open(path, "w", encoding="utf-8", newline="\n") as file:
        file.write(text)


def _aux_xml(grid):
    crs = grid_crs(grid)
    axes = ",".join(str(axis) for axis in crs.GetDataAxisToSRSAxisMapping())
    return (
        "<PAMDataset>\n"
        f'  <SRS dataAxisToSRSAxisMapping="{axes}">{escape(crs.ExportToWkt())}</SRS>\n'
        f'  <Metadata domain="{_MADE_BY}">\n    <MDI key="made_by">{_MADE_BY}</MDI>\n  </Metadata>\n'
        "</PAMDataset>\n"
    )


def _put_in_place(aside, folder, name, form):
    """Move the finished files to their folder and take away what an earlier run left of this window."""
    try:
        for made in sorted(os.listdir(aside)):
            os.replace(os.path.join(aside, made), os.path.join(folder, made))
        # Statistics and overviews of the earlier picture would be taken for the new one's.
        stale = [name + ".tif.aux.xml", name + ".tif.ovr", name + FORMS[form][1] + ".ovr"]
        for other, (_, suffix, world_suffix) in FORMS.items():
            if other != form and _is_ours(os.path.join(folder, name + suffix + ".aux.xml")):
                stale += [name + suffix, name + world_suffix, name + suffix + ".aux.xml"]
        for path in (os.path.join(folder, old) for old in stale):
            if os.path.exists(path):
                os.remove(path)
    except OSError as error:
        raise YardwrightError(
            say("The files of “{name}” cannot be replaced ({reason}).", name=name, reason=error.strerror),
            say("Close programs that show them (remove their layers in QGIS too) and run again."),
        ) from error


def _is_ours(aux_path):
    try:
        with open(aux_path, encoding="utf-8", errors="replace") as file:
            return f'<Metadata domain="{_MADE_BY}">' in file.read()
    except OSError:
        return False


def _refuse_own_output(source, folder, name):
    for suffix in (".tif", *(form[1] for form in FORMS.values())):
        path = os.path.join(folder, name + suffix)
        if os.path.exists(path) and os.path.exists(source) and os.path.samefile(path, source):
            raise YardwrightError(
                say("“{file}” is to be read and replaced at once.", file=name + suffix),
                say("Choose another folder for the results, or another image."),
            )


# --- GDAL's habits -------------------------------------------------------------------------------------


class _Progress:
    """Tells the caller how far the work is and remembers that it was cancelled."""

    def __init__(self, tell):
        self._tell = tell
        self.cancelled = False

    def __call__(self, share):
        if self._tell is not None and self._tell(share, 1.0) is False:
            self.cancelled = True
        return 0 if self.cancelled else 1

    def check(self):
        if self.cancelled:
            raise Cancelled

    def part(self, first, last):
        """A GDAL callback for the part of the work from ``first`` to ``last`` (0 to 1)."""

        def callback(share, _message, _data):
            return self(first + (last - first) * share)

        callback.told = self
        return callback


def _cannot_be_used(reason):
    return say("The image cannot be used: {reason}.", reason=reason)


@contextlib.contextmanager
def _modest_cache():
    """GDAL keeps read blocks up to a twentieth of the machine's memory; a window needs far less."""
    before = gdal.GetCacheMax()
    gdal.SetCacheMax(min(before, _CACHE))
    try:
        yield
    finally:
        gdal.SetCacheMax(before)
