"""Tiles of an image, cut to files as a server of maps has them."""

import numpy as np
from osgeo import gdal

_WORLD = 2 * np.pi * 6378137
"""The side of the usual scheme's world in Web Mercator."""


def tiles_of(path, folder, zoom=18, pixel=0.5):
    """Cut the tiles of one level, from the image drawn at so many Mercator metres a pixel; the source of
    their layer."""
    side, edge = _WORLD / 2**zoom, _WORLD / 2
    web = gdal.Warp(
        "",
        str(path),
        format="MEM",
        dstSRS="EPSG:3857",
        xRes=pixel,
        yRes=pixel,
        resampleAlg="cubic",
        dstAlpha=True,
    )
    g = web.GetGeoTransform()
    right, low = g[0] + g[1] * web.RasterXSize, g[3] + g[5] * web.RasterYSize
    for column in range(int((g[0] + edge) / side), int((right + edge) / side) + 1):
        (folder / str(zoom) / str(column)).mkdir(parents=True)
        for row in range(int((edge - g[3]) / side), int((edge - low) / side) + 1):
            x, y = column * side - edge, edge - row * side
            bounds = {"outputBounds": (x, y - side, x + side, y), "width": 256, "height": 256}
            tile = gdal.Warp("", web, format="MEM", resampleAlg="cubic", dstAlpha=True, **bounds)
            gdal.GetDriverByName("PNG").CreateCopy(str(folder / str(zoom) / str(column) / f"{row}.png"), tile)
    return f"type=xyz&url=file://{folder}/{{z}}/{{x}}/{{y}}.png&zmin={zoom}&zmax={zoom}"
