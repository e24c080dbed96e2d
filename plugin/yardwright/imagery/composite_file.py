"""The files of a composite: the picture and where each of its pixels is from, as cloud-optimised GeoTIFFs."""

import os

import numpy as np
from osgeo import gdal

from ..model.errors import YardwrightError
from ..model.words import say
from .aside import blocks
from .blending import averaged
from .grid import grid_crs
from .quiet import quiet_gdal

_OPTIONS = ("COMPRESS=DEFLATE", "LEVEL=1", "NUM_THREADS=ALL_CPUS", "BIGTIFF=IF_SAFER")
_SMALLEST = 512  # pixels a side of the last overview at most
_COLOURS = (
    (0, 0, 0, 0), (90, 90, 90, 255), (38, 110, 190, 255), (222, 140, 40, 255), (120, 60, 150, 255),
    (60, 150, 90, 255), (200, 60, 80, 255), (150, 130, 60, 255), (70, 170, 180, 255),
)  # fmt: skip
_HOW_COLOURS = ((0, 0, 0, 0), (240, 200, 40, 255), (220, 40, 140, 255), (30, 30, 30, 255))


def how_names():
    """What the values of a source raster's second band say, by value."""
    return [say("as photographed"), say("lightened"), say("invented"), say("still hidden")]


def write_composite(made, source, grid, path, source_path, ids, used, folder, told):
    """Write both files beside their places, then put them there.

    made, source: Asides of four and of two bands. ids: of the dates as the source counts them. used: the
    Dates the picture shows, whose credits go into it. folder: one on the same disk, for drafts. told: a Told.
    """
    with quiet_gdal(_cannot_be_written):
        try:
            picture = _draft(made, grid, os.path.join(folder, "picture.tif"), 4, lambda p: averaged(p, 2))
            credits = "; ".join(dict.fromkeys(filter(None, (_credit(date) for date in used))))
            picture.SetMetadataItem("TIFFTAG_COPYRIGHT", credits)
            picture.SetMetadataItem("TIFFTAG_IMAGEDESCRIPTION", ", ".join(date.id for date in used))
            options = [*_OPTIONS, "PREDICTOR=YES"]
            first = _optimised(picture, os.path.join(folder, "out.tif"), options, told.part(0.0, 0.7))
            picture = None
            origin = _draft(source, grid, os.path.join(folder, "origin.tif"), 2, lambda p: p[::2, ::2])
            _name(origin, ids)
            second = _optimised(origin, os.path.join(folder, "out_source.tif"), _OPTIONS, told.part(0.7, 1.0))
            origin = None
            _put(first, path)
            _put(second, source_path)
        except OSError as error:
            raise YardwrightError(
                say("“{path}” cannot be written ({reason}).", path=path, reason=error.strerror),
                say("Check that the disk has room; close programs that show the picture and run again."),
            ) from error


def _credit(date):
    """A date's credit and licence."""
    return ", ".join(filter(None, (date.credit, date.licence)))


def _draft(aside, grid, path, bands, halved):
    """A plain GeoTIFF of an Aside with its overviews, open. halved: gives pixels (h, w, bands) at half their
    number a side; GDAL's own averaging takes three times as long as all the rest of writing."""
    options = ["TILED=YES", "INTERLEAVE=PIXEL", "BIGTIFF=IF_SAFER"]
    options += ["PHOTOMETRIC=RGB", "ALPHA=NON-PREMULTIPLIED"] if bands == 4 else ["PHOTOMETRIC=MINISBLACK"]
    draft = gdal.GetDriverByName("GTiff").Create(path, grid.width, grid.height, bands, gdal.GDT_Byte, options)
    if draft is None:
        raise _refused(path)
    draft.SetGeoTransform(grid.geotransform)
    draft.SetSpatialRef(grid_crs(grid))
    levels = max(int(np.ceil(np.log2(max(grid.width, grid.height) / _SMALLEST))), 0)
    if levels and draft.BuildOverviews("NONE", [2**level for level in range(1, levels + 1)]) != 0:
        raise _refused(path)
    for block in blocks(grid.width, grid.height, max(1024, 2**levels)):
        pixels, left, top = aside.read(block), block.x, block.y
        for level in range(levels + 1):
            if level:
                pixels, left, top = halved(pixels), left // 2, top // 2
            for band in range(1, bands + 1):
                one = draft.GetRasterBand(band)
                one = one.GetOverview(level - 1) if level else one
                if one.WriteArray(np.ascontiguousarray(pixels[..., band - 1]), left, top) != 0:
                    raise _refused(path)
    return draft


def _name(origin, ids):
    """Say in the file what its numbers mean."""
    for number, (title, names, colours) in enumerate(
        ((say("date"), ["", *ids], _COLOURS), (say("how"), how_names(), _HOW_COLOURS)), start=1
    ):
        band = origin.GetRasterBand(number)
        band.SetDescription(title)
        band.SetRasterCategoryNames(names)
        for value, name in enumerate(names):
            band.SetMetadataItem(f"VALUE_{value}", name)
            band.SetMetadataItem(f"COLOUR_{value}", " ".join(map(str, colours[value % len(colours)])))


def _optimised(draft, path, options, callback):
    """The path of a cloud-optimised copy."""
    copy = gdal.GetDriverByName("COG").CreateCopy(path, draft, 0, options, callback)
    callback.told.check()
    if copy is None:
        raise _refused(path)
    copy.FlushCache()
    return path


def _put(made, path):
    """Move a finished file to its place, and what GDAL wrote beside it."""
    os.replace(made, path)
    if os.path.exists(made + ".aux.xml"):
        os.replace(made + ".aux.xml", path + ".aux.xml")
    elif os.path.exists(path + ".aux.xml"):
        os.remove(path + ".aux.xml")


def _refused(path):
    return YardwrightError(
        say(
            "“{file}” cannot be written: {reason}.",
            file=os.path.basename(path),
            reason=gdal.GetLastErrorMsg() or say("unknown reason"),
        ),
        say("Check that the disk has room and that you may write to the folder."),
    )


def _cannot_be_written(reason):
    return say("The picture cannot be written: {reason}.", reason=reason)
