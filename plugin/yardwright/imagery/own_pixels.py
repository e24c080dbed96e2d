"""The pixels that an image has of its own: how large they are on the ground, and where they begin."""

from dataclasses import dataclass

import numpy as np
from osgeo import gdal

from .grid import Grid, grid_crs
from .image import outside


@dataclass(frozen=True)
class OwnPixels:
    """size: the side of a pixel in the CRS asked for (of an oblong one: of the square as large). left, top: a
    corner of one of them on the ground; a grid that begins there, upright, takes the pixels as they are."""

    size: float
    left: float
    top: float

    def grid(self, bounds, crs):
        """The least upright Grid of such pixels over (x least, y least, x greatest, y greatest)."""
        x0, y0, x1, y1 = bounds
        first, last = (np.floor((x0 - self.left) / self.size), np.ceil((x1 - self.left) / self.size))
        upper, lower = (np.floor((self.top - y1) / self.size), np.ceil((self.top - y0) / self.size))
        corner = (self.left + first * self.size, self.top - upper * self.size)
        transform = (float(corner[0]), self.size, 0.0, float(corner[1]), 0.0, -self.size)
        return Grid(int(max(last - first, 1)), int(max(lower - upper, 1)), transform, crs)


def own_pixels(date, crs, at=None):
    """The OwnPixels of a Date in ``crs`` near the place ``at``, the middle of the image by default.

    Raises YardwrightError where the image cannot be used, OutsideImage where it does not lie in that CRS.
    """
    with date.open() as image:
        width, height, to_ground = _transformer(image, crs)
        middle = np.array([width / 2, height / 2])
        if at is not None:
            back = date.move.back([at])[0]
            found = to_ground.TransformPoints(1, [tuple(back)])
            if all(found[1]):
                middle = np.clip(np.floor(found[0][0][:2]), 0, [width, height])
        middle = np.floor(middle)
        corners = [tuple(middle), tuple(middle + (1, 0)), tuple(middle + (0, 1))]
        points, found = to_ground.TransformPoints(0, corners)
    if not all(found):
        raise outside(date.path)
    a, b, c = date.move.ahead(np.array(points)[:, :2])
    (ax, ay), (bx, by) = b - a, c - a
    size = float(np.sqrt(abs(ax * by - ay * bx)))
    # Rounding, so that a pixel of 0.25 m is not one of 0.2500000001.
    return OwnPixels(float(f"{size:.9g}"), float(a[0]), float(a[1]))


def bounds_of(date, crs):
    """(x least, y least, x greatest, y greatest) of a Date's picture on the ground, in ``crs``."""
    with date.open() as image:
        width, height, to_ground = _transformer(image, crs)
        edge = np.linspace(0, 1, 9)
        ring = [(x * width, y * height) for x in edge for y in edge]
        points, found = to_ground.TransformPoints(0, ring)
    points = np.array(points)[np.array(found, bool), :2]
    if not len(points):
        raise outside(date.path)
    points = date.move.ahead(points)
    return (*points.min(axis=0).tolist(), *points.max(axis=0).tolist())


def _transformer(image, crs):
    """``(width, height, transformer of pixels to places)`` of an open Image."""
    bands, own = image.file_and_crs()
    options = [
        f"SRC_SRS={own.ExportToWkt()}",
        f"DST_SRS={grid_crs(Grid(1, 1, (0, 1, 0, 0, 0, -1), crs)).ExportToWkt()}",
    ]
    return bands.RasterXSize, bands.RasterYSize, gdal.Transformer(bands, None, options)
