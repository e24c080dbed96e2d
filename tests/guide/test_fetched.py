"""What lies on a server, fetched: of tiles their own pixels, of the level asked for."""

import os

import numpy as np
import pytest
from osgeo import gdal
from yardwright.guide.fetched import fetch
from yardwright.guide.rendered import ImageSource

WORLD = 40075016.685578488


def write_tiles(folder, zoom, column, row, values):
    """The tiles (256 n, 256 m, 3) from a column and row on."""
    for x in range(values.shape[1] // 256):
        for y in range(values.shape[0] // 256):
            tile = gdal.GetDriverByName("MEM").Create("", 256, 256, 3)
            for band in range(3):
                part = values[256 * y : 256 * y + 256, 256 * x : 256 * x + 256, band]
                tile.GetRasterBand(band + 1).WriteArray(np.ascontiguousarray(part))
            os.makedirs(folder / str(zoom) / str(column + x), exist_ok=True)
            path = folder / str(zoom) / str(column + x) / f"{row + y}.png"
            gdal.GetDriverByName("PNG").CreateCopy(str(path), tile)


@pytest.mark.parametrize("seed", range(12))
def test_tiles_are_fetched_as_they_are_and_none_deeper(qgis_app, tmp_path, seed):
    """Each pixel in its place, wherever on the globe; a deeper level, here black, is left alone."""
    rng = np.random.default_rng(seed)
    zoom = int(rng.integers(14, 20))
    column, row = (int(rng.integers(0.3 * 2**zoom, 0.6 * 2**zoom)) for _ in range(2))
    noise = rng.integers(0, 256, (512, 768, 3), dtype=np.uint8)
    write_tiles(tmp_path, zoom, column, row, noise)
    write_tiles(tmp_path, zoom + 1, 2 * column, 2 * row, np.zeros((1024, 1536, 3), np.uint8))
    source = f"type=xyz&url=file://{tmp_path}/{{z}}/{{x}}/{{y}}.png&zmin=0&zmax={zoom + 1}"
    pixel = WORLD / 256 / 2**zoom
    left, top = column * 256 * pixel - WORLD / 2, WORLD / 2 - row * 256 * pixel
    first, last = rng.integers(1, 250, 2), rng.integers(260, 500, 2)
    bounds = (
        *(left + first[0] * pixel, top - last[1] * pixel),
        *(left + last[0] * pixel, top - first[1] * pixel),
    )
    path = str(tmp_path / "fetched.tif")
    grid = fetch(ImageSource("web", "wms", source, "", None), bounds, "EPSG:3857", pixel, path)
    at = round((grid.geotransform[0] - left) / pixel), round((top - grid.geotransform[3]) / pixel)
    assert at[0] <= first[0] and at[1] <= first[1]
    assert at[0] + grid.width >= last[0] and at[1] + grid.height >= last[1]
    expected = noise[at[1] : at[1] + grid.height, at[0] : at[0] + grid.width]
    found = gdal.Open(path).ReadAsArray()[:3].transpose(1, 2, 0)[: expected.shape[0], : expected.shape[1]]
    assert np.array_equal(found, expected)
