"""The ground of Quernhallow: gentle hills, a burn in its valley, greens with a little tilt."""

import os

import numpy as np

from . import plan
from .drawing import drawing, to_local

CELL = 2.0
# level in metres (None: as the ground runs, 1.6 m below it) and how far the banks reach
WATERS = {"Lake": (11.0, 26.0), "Stew pond": (19.5, 14.0), "Burn": (None, 14.0), "Outlet": (None, 14.0)}


def _hills(x, y):
    """Bare hills, metres above the sea, at local metres."""
    z = 15.5 + 0.0042 * (y - 480) - 0.0028 * (x - 600)
    for cx, cy, high, wide in (
        (190, 760, 7.5, 150), (420, 250, 6, 160), (560, 780, 8.5, 170), (760, 860, 7, 130),
        (960, 560, 5.5, 190),
        (1120, 880, 8, 150), (1130, 330, 4.5, 170), (300, 480, 3, 120), (820, 230, -5.5, 130),
        (60, 200, 4, 160),
    ):  # fmt: skip
        z = z + high * np.exp(-((x - cx) ** 2 + (y - cy) ** 2) / (2 * wide**2))
    for k, (a, b, high) in enumerate(((61, 83, 0.5), (37, 44, 0.28), (23, 29, 0.14))):
        z = z + high * np.sin(x / a + 1.7 * k + 0.6 * np.sin(y / b)) * np.cos(y / b + k)
    return z


def _smooth_step(t):
    t = np.clip(t, 0, 1)
    return t * t * (3 - 2 * t)


def _distance_to(shape, x, y, reach):
    """Distance in metres from each cell to ``shape`` (0 inside), only looked at within ``reach``."""
    import shapely
    from shapely.geometry import Point

    x0, y0, x1, y1 = shape.bounds
    near = (x > x0 - reach) & (x < x1 + reach) & (y > y0 - reach) & (y < y1 + reach)
    distance = np.full(x.shape, np.inf)
    if hasattr(shapely, "points"):
        shapely.prepare(shape)
        distance[near] = shapely.distance(shapely.points(x[near], y[near]), shape)
    else:
        distance[near] = [shape.distance(Point(p)) for p in zip(x[near], y[near])]
    return distance


def heights(x, y):
    """Metres above the sea at local metres ``x`` and ``y``, arrays of one shape."""
    drawn = drawing()
    z = _hills(x, y)
    waters = [area for area in drawn.of("penalty_area") if area.get("water")]
    for water in sorted(waters, key=lambda water: water.label == "Lake"):
        share = 1 - _smooth_step(_distance_to(water.geometry, x, y, 30.0) / WATERS[water.label][1])
        level = WATERS[water.label][0]
        z = z + share * (-1.6 if level is None else level - z)
    rng = np.random.default_rng(4)
    for green in drawn.of("green"):
        centre = np.array(green.geometry.centroid.coords[0])
        turn, percent = rng.uniform(0, 2 * np.pi), rng.uniform(1.2, 2.6)
        level = float(_hills(centre[0], centre[1])) + 0.5
        tilt = percent / 100 * ((x - centre[0]) * np.cos(turn) + (y - centre[1]) * np.sin(turn))
        share = 1 - _smooth_step(_distance_to(green.geometry, x, y, 16.0) / 15.0)
        z = z + share * (level + tilt - z)
    for tee in drawn.of("tee"):
        centre = tee.geometry.centroid
        share = 1 - _smooth_step(_distance_to(tee.geometry, x, y, 6.0) / 5.0)
        z = z + share * (float(_hills(centre.x, centre.y)) + 0.4 - z)
    return z


def write_terrain(path, extent):
    """A float GeoTIFF of heights over ``extent`` (x least, y least, x greatest, y greatest in plan.CRS)."""
    from osgeo import gdal, osr

    x0, y0, x1, y1 = extent
    columns, rows = int(round((x1 - x0) / CELL)), int(round((y1 - y0) / CELL))
    x, y = np.meshgrid(x0 + CELL * (np.arange(columns) + 0.5), y1 - CELL * (np.arange(rows) + 0.5))
    local = to_local(np.column_stack([x.ravel(), y.ravel()]))
    z = heights(local[:, 0], local[:, 1]).reshape(rows, columns).astype("float32")
    crs = osr.SpatialReference()
    crs.ImportFromEPSG(int(plan.CRS.split(":")[1]))
    beside = path + ".part"
    options = ["COMPRESS=DEFLATE", "PREDICTOR=3", "TILED=YES"]
    image = gdal.GetDriverByName("GTiff").Create(beside, columns, rows, 1, gdal.GDT_Float32, options)
    image.SetGeoTransform((x0, CELL, 0, y1, 0, -CELL))
    image.SetProjection(crs.ExportToWkt())
    image.GetRasterBand(1).WriteArray(z)
    image.GetRasterBand(1).SetDescription("Height above the sea, metres")
    image = None
    os.replace(beside, path)
    return path
