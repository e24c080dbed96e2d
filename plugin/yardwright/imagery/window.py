"""Windows: pictures turned so that play points up, cut out of an image with GDAL.

A window's picture is a grid of square pixels laid over the ground at any angle. It is written twice, as a
rotated GeoTIFF and as a PNG or JPEG with a world file and an ``.aux.xml`` (which brings the CRS that a world
file cannot hold), so that both land in their place in a map and one can go straight onto a page.
"""

import glob
import os
import shutil
import tempfile
from dataclasses import dataclass
from html import escape

import numpy as np
from osgeo import gdal

from ..model.errors import YardwrightError
from ..model.words import say
from .grid import grid_crs
from .image import Image, outside, picture_in_memory, pixels_of
from .moves import STAY
from .quiet import quiet_gdal
from .told import Told

FORMS = {"png": ("PNG", ".png", ".pgw"), "jpeg": ("JPEG", ".jpg", ".jgw")}
"""Forms of the picture beside the GeoTIFF: GDAL's driver, suffix, suffix of the world file."""

_MADE_BY = "yardwright"


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


def cut(
    source,
    grid,
    folder,
    name,
    form="png",
    source_crs=None,
    open_options=(),
    progress=None,
    move=STAY,
    retouch=None,
):
    """Cut a window out of an image; returns a Cut.

    source: what GDAL opens. grid: the window. folder, name: ``folder/name.tif`` and ``folder/name.png`` (or
    ``.jpg``) are written, replacing those of an earlier run. form: a key of FORMS. source_crs: WKT or
    ``EPSG:n``, for an image that does not say its own. open_options: GDAL's, ``NAME=VALUE``.
    move: the Move that brings the image onto the ground. progress: called with (done, total); when it
    returns False, Cancelled is raised. retouch: ``function(pixels) -> pixels``, (height, width, 4) of uint8.

    Memory is bounded by the window, not by the image: the coarsest overview that is still as fine as the
    window is read, in pieces. Raises YardwrightError when the image cannot be used, OutsideImage when it
    does not reach the window.
    """
    _refuse_own_output(source, folder, name)
    told = Told(progress)
    with Image(source, source_crs, open_options, move) as image, quiet_gdal(_cannot_be_written):
        target = image.raster(grid, told.narrowed(0.0, 0.8))
        try:
            remarks = [*image.remarks, *_cover_remark(target, source)]
            if retouch is not None:
                _put_pixels(target, retouch(pixels_of(target)))
            told(0.8)
            made = _write(target, grid, folder, name, form, told)
            told(1.0)
        finally:
            target = None
    return Cut(*made, tuple(remarks))


def write(pixels, grid, folder, name, form="png"):
    """Write a picture that is already drawn: ``pixels`` is (height, width, 4) of uint8, RGB and opacity.

    The files are those of ``cut``. Raises OutsideImage when every pixel is clear.
    """
    with quiet_gdal(_cannot_be_written):
        target = picture_in_memory(grid)
        try:
            _put_pixels(target, pixels)
            remarks = _cover_remark(target, "")
            made = _write(target, grid, folder, name, form, Told(None))
        finally:
            target = None
    return Cut(*made, tuple(remarks))


def _put_pixels(target, pixels):
    for band in range(4):
        target.GetRasterBand(band + 1).WriteArray(np.ascontiguousarray(pixels[:, :, band]))


def _cover_remark(target, source):
    """A remark when part of the window is empty; OutsideImage when all of it is."""
    opacity = target.GetRasterBand(4).ReadAsArray()
    empty = 1.0 - np.count_nonzero(opacity) / opacity.size
    if empty == 1.0:
        raise outside(source)
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


def _cannot_be_written(reason):
    return say("The picture cannot be written: {reason}.", reason=reason)
