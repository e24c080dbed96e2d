"""The grid of a picture's pixels over the ground."""

from dataclasses import dataclass

import numpy as np
from osgeo import osr

from ..model.errors import YardwrightError
from ..model.words import say


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
