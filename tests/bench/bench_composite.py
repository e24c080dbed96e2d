"""Time and memory of composing one window of 2000 x 4000 px out of three dates of 12,000 x 12,000.

Run: ``python3 tests/bench/bench_composite.py [folder]``. The images (a course-like ground of turf, sand, water and
trees, each date with shadows of its own and people, 3 x 430 MB of pixels) are made once in the folder, a temporary
one by default. Prints the ratio of ``imagery.composing.compose`` to warping the three dates to the same window and
writing them, the two run turn by turn, and the peak memory of a fresh process that only composes, once from
these and once from images four times smaller: it must not grow with the images. Limits: ratio 6, memory 1000 MB.
"""

import os
import statistics
import subprocess
import sys
import tempfile
import time

import numpy as np
from osgeo import gdal, osr
from scipy.ndimage import gaussian_filter

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..", "plugin"))
sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))

from bench_windows import own_peak_mb
from yardwright.imagery.composing import compose
from yardwright.imagery.dates import Date
from yardwright.imagery.grid import Grid
from yardwright.imagery.moves import Move

SIDE, PIXEL = 12_000, 0.25
EAST, NORTH = 500_000.0, 6_200_000.0
CRS = "EPSG:32630"
RATIO, MEMORY_MB = 6.0, 1000
ROUNDS = 3
MOVES = (Move(), Move(0.31, -0.22), Move(-0.4, 0.13))
HOURS = (("2024-05-12", "10:20"), ("2024-09-20", "13:30"), ("2024-06-20", "06:10"))  # as the shadows fall


def grid_of():
    """The window, upright, in the images' middle."""
    left, top = EAST + SIDE * PIXEL / 2 - 250, NORTH - SIDE * PIXEL / 2 + 500
    return Grid(2000, 4000, (left, PIXEL, 0, top, 0, -PIXEL), CRS)


def ground_of(rng, side):
    """(side, side, 3) of turf with sand and paths, and (side, side) how high things stand, metres."""
    broad = gaussian_filter(rng.normal(size=(side, side)), 40, mode="wrap")
    fine = gaussian_filter(rng.normal(size=(side, side)), 1.2, mode="wrap")
    light = 1 + 0.08 * broad / broad.std() + 0.05 * fine / fine.std()
    colour = np.array([96, 116, 66])[None, None] * light[..., None]
    y, x = np.mgrid[:side, :side]
    for _ in range(10):
        cx, cy, r = rng.uniform(0, side), rng.uniform(0, side), rng.uniform(12, 30)
        colour[(x - cx) ** 2 + (y - cy) ** 2 < r * r] = (225, 208, 172)
    height = np.zeros((side, side))
    for _ in range(70):
        cx, cy, r = rng.uniform(30, side - 30), rng.uniform(30, side - 30), rng.uniform(8, 20)
        inside = (x - cx) ** 2 + (y - cy) ** 2 < r * r
        height[inside] = r * 0.6
        colour[inside] = np.array([52, 78, 40]) * (1 + 0.2 * fine[inside] / fine.std())[:, None]
    return colour, height


def date_of(colour, height, rng, towards, tint, people):
    """The ground on a date: its shadows fall ``towards`` (columns, rows a metre of height)."""
    made = colour * np.array(tint)
    shade = np.zeros(height.shape)
    for step in np.arange(1, height.max(), 0.5):
        moved = np.roll(height, (int(towards[1] * step), int(towards[0] * step)), (0, 1))
        shade = np.maximum(shade, moved > step)
    shade = gaussian_filter(shade * (height == 0), 1.0)
    made = made * (1 - shade[..., None] * np.array([0.62, 0.57, 0.45]))
    for _ in range(people):
        cx, cy = rng.integers(10, height.shape[0] - 10, 2)
        made[cy : cy + 4, cx : cx + 5] = rng.choice([240, 30])
    return np.clip(made + rng.normal(0, 2.5, made.shape), 0, 255).astype(np.uint8)


def make_images(folder, side):
    """Three dates of ``side`` pixels a side, tiled from a block of 2000."""
    rng = np.random.default_rng(11)
    colour, height = ground_of(rng, 2000)
    crs = osr.SpatialReference()
    crs.SetFromUserInput(CRS)
    options = ["TILED=YES", "COMPRESS=JPEG", "PHOTOMETRIC=YCBCR", "JPEG_QUALITY=90"]
    corner = (SIDE - side) / 2 * PIXEL
    for number, (towards, tint, people) in enumerate(
        (((-3, -4), (1, 1, 1), 30), ((2, -5), (1.1, 0.98, 0.95), 0), ((-5, 1), (0.93, 1.05, 1.0), 10))
    ):
        block = date_of(colour, height, rng, towards, tint, people).transpose(2, 0, 1)
        path = os.path.join(folder, f"date_{number}_{side}.tif")
        image = gdal.GetDriverByName("GTiff").Create(path, side, side, 3, gdal.GDT_Byte, options)
        move = MOVES[number]
        image.SetGeoTransform((EAST + corner - move.east, PIXEL, 0, NORTH - corner - move.north, 0, -PIXEL))
        image.SetSpatialRef(crs)
        for y in range(0, side, 2000):
            for x in range(0, side, 2000):
                image.WriteRaster(x, y, 2000, 2000, block.tobytes())
        image.FlushCache()
        image.BuildOverviews("AVERAGE", [2, 4, 8])
        image = None


def dates_of(folder, side):
    return [
        Date(f"date {k}", os.path.join(folder, f"date_{k}_{side}.tif"), "", (), move, *hour)
        for k, (move, hour) in enumerate(zip(MOVES, HOURS))
    ]


def warped(dates, grid, folder):
    """The three dates each warped to the window's grid and written, as anyone has to who wants to compare them."""
    for number, date in enumerate(dates):
        with date.open() as image:
            made = image.raster(grid)
            path = os.path.join(folder, f"warped_{number}.tif")
            options = ["COMPRESS=DEFLATE", "ZLEVEL=1", "PREDICTOR=2", "TILED=YES", "NUM_THREADS=ALL_CPUS"]
            gdal.GetDriverByName("GTiff").CreateCopy(path, made, 0, options).FlushCache()


def compose_into(dates, grid, folder):
    return compose(dates, grid, None, None, [], None, os.path.join(folder, "composite.tif"))


def seconds(function, *arguments):
    start = time.perf_counter()
    function(*arguments)
    return time.perf_counter() - start


def peak_mb(folder, side):
    """Peak resident memory of a process that imports the package and composes once, MB."""
    command = [sys.executable, os.path.abspath(__file__), "--compose", folder, str(side)]
    done = subprocess.run(command, check=True, capture_output=True, text=True)
    return float(done.stdout.split()[-1])


def main(folder):
    for side in (SIDE, SIDE // 2):
        if not os.path.exists(os.path.join(folder, f"date_2_{side}.tif")):
            print(f"making images of {side} x {side} took {seconds(make_images, folder, side):.0f} s")
    grid, dates = grid_of(), dates_of(folder, SIDE)
    warped(dates, grid, folder)
    ours, bare = [], []
    for _ in range(ROUNDS):
        bare.append(seconds(warped, dates, grid, folder))
        ours.append(seconds(compose_into, dates, grid, folder))
    ratio = statistics.median(ours) / statistics.median(bare)
    memory, small = peak_mb(folder, SIDE), peak_mb(folder, SIDE // 2)
    print(
        f"three dates of 2000 x 4000 from {SIDE} x {SIDE}: composed {statistics.median(ours):.2f} s, "
        f"warped {statistics.median(bare):.2f} s, ratio {ratio:.2f} (limit {RATIO}), peak memory {memory:.0f} MB, "
        f"from images a quarter as large {small:.0f} MB (limit {MEMORY_MB})"
    )
    return 0 if ratio <= RATIO and memory <= MEMORY_MB and memory < 1.25 * small else 1


if __name__ == "__main__":
    if sys.argv[1:2] == ["--compose"]:
        compose_into(dates_of(sys.argv[2], int(sys.argv[3])), grid_of(), sys.argv[2])
        print(own_peak_mb())
        sys.exit(0)
    if len(sys.argv) > 1:
        sys.exit(main(sys.argv[1]))
    with tempfile.TemporaryDirectory() as made:
        sys.exit(main(made))
