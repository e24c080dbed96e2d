"""What ground the file of a date covers and how fine it is, told from its header alone."""

import math
from dataclasses import dataclass

import numpy as np
from osgeo import gdal, osr

from ..model.errors import YardwrightError
from ..model.words import say
from .grid import Grid, grid_crs
from .quiet import quiet_gdal


@dataclass(frozen=True)
class Reach:
    """bounds: x least, y least, x greatest, y greatest; pixel: the longer side of one in its middle. Both in
    the CRS asked for, as the file has it, before any move."""

    bounds: tuple
    pixel: float


def reach_of(date, crs):
    """The Reach of a Date in a CRS. Raises YardwrightError when it cannot be read or lies nowhere there."""
    with quiet_gdal(_cannot_be_used):
        raster = gdal.OpenEx(date.path, gdal.OF_RASTER, open_options=list(date.open_options))
        if raster is None:
            raise YardwrightError(
                say(
                    "The image of {date} cannot be read: {reason}.",
                    date=date.id,
                    reason=gdal.GetLastErrorMsg(),
                ),
                say("Check that the file is there and whole, and opens in QGIS as a raster layer."),
            )
        options = [f"DST_SRS={grid_crs(Grid(1, 1, (0, 1, 0, 0, 0, 1), crs)).ExportToWkt()}"]
        if date.crs:
            given = osr.SpatialReference()
            given.SetFromUserInput(date.crs)
            options.append(f"SRC_SRS={given.ExportToWkt()}")
        transformer = gdal.Transformer(raster, None, options)
        width, height = raster.RasterXSize, raster.RasterYSize
        rim = [(x * width, y * height) for x in np.linspace(0, 1, 9) for y in (0, 0.25, 0.5, 0.75, 1)]
        x, y = width / 2, height / 2
        places, found = transformer.TransformPoints(0, [*rim, (x, y), (x + 1, y), (x, y + 1)])
    places = np.array(places, dtype=float)[:, :2]
    if not np.all(found) or not np.isfinite(places).all():
        raise YardwrightError(
            say("The image of {date} lies outside the course's coordinate reference system.", date=date.id),
            say("Check the CRS of the image."),
        )
    middle, right, below = places[-3:]
    rim = places[: len(rim)]
    pixel = max(math.dist(middle, right), math.dist(middle, below))
    return Reach((*rim.min(axis=0).tolist(), *rim.max(axis=0).tolist()), pixel)


def _cannot_be_used(reason):
    return say("The image cannot be used: {reason}.", reason=reason)
