"""Time and memory of cutting one window of 2000 x 4000 px out of an image of 20,000 x 20,000.

Run: ``python3 tests/bench/bench_windows.py [folder]``. The image (1.2 GB, 120 MB on disk) is made once
in the folder, a temporary one by default. Prints the ratio of ``imagery.window.cut`` to a bare gdal warp of
the same grid that writes the same two files, the two run turn by turn, and the peak memory of a fresh process
that only cuts. Limits: ratio 1.5, memory 700 MB.
"""

import math
import os
import resource
import statistics
import subprocess
import sys
import tempfile
import time

import numpy as np
from osgeo import gdal, osr

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..", "plugin"))

from yardwright.imagery.grid import Grid
from yardwright.imagery.window import cut

SIDE, PIXEL = 20_000, 0.1
EAST, NORTH = 500_000.0, 4_500_000.0
RATIO, MEMORY_MB = 1.5, 700
ROUNDS = 5


def grid_of(azimuth=37.0, width=2000, height=4000, pixel=0.25):
    """The window: turned, in the image's middle, 500 x 1000 m."""
    a = math.radians(azimuth)
    g1, g2, g4, g5 = (pixel * v for v in (math.cos(a), -math.sin(a), -math.sin(a), -math.cos(a)))
    x = EAST + SIDE * PIXEL / 2 - width / 2 * g1 - height / 2 * g2
    y = NORTH - SIDE * PIXEL / 2 - width / 2 * g4 - height / 2 * g5
    return Grid(width, height, (x, g1, g2, y, g4, g5), "EPSG:32630")


def make_image(path):
    """Ground-like grain of several sizes, tiled, with overviews."""
    rng = np.random.default_rng(7)
    block = np.zeros((3, 2000, 2000))
    for size in (4, 20, 100):
        grain = rng.normal(0, 14, (3, 2000 // size, 2000 // size))
        block += np.repeat(np.repeat(grain, size, axis=1), size, axis=2)
    block = np.clip(block + np.array([90, 120, 70])[:, None, None], 0, 255).astype(np.uint8)
    options = ["TILED=YES", "COMPRESS=JPEG", "PHOTOMETRIC=YCBCR", "JPEG_QUALITY=85"]
    image = gdal.GetDriverByName("GTiff").Create(path, SIDE, SIDE, 3, gdal.GDT_Byte, options)
    image.SetGeoTransform((EAST, PIXEL, 0, NORTH, 0, -PIXEL))
    crs = osr.SpatialReference()
    crs.ImportFromEPSG(32630)
    image.SetSpatialRef(crs)
    for y in range(0, SIDE, 2000):
        for x in range(0, SIDE, 2000):
            image.WriteRaster(x, y, 2000, 2000, block.tobytes())
    image.FlushCache()
    image.BuildOverviews("AVERAGE", [2, 4, 8, 16])
    image = None


def bare_warp(source, grid, folder):
    """What anyone would write with GDAL alone, with every hint that makes it right and fast."""
    target = gdal.GetDriverByName("MEM").Create("", grid.width, grid.height, 4)
    target.SetGeoTransform(grid.geotransform)
    crs = osr.SpatialReference()
    crs.SetFromUserInput(grid.crs)
    target.SetSpatialRef(crs)
    for number, tag in enumerate(
        (gdal.GCI_RedBand, gdal.GCI_GreenBand, gdal.GCI_BlueBand, gdal.GCI_AlphaBand), start=1
    ):
        target.GetRasterBand(number).SetColorInterpretation(tag)
    overview_pixel = PIXEL * 2
    scale = min(1.0, overview_pixel / math.hypot(grid.geotransform[1], grid.geotransform[4]))
    hints = [f"XSCALE={scale}", f"YSCALE={scale}", "NUM_THREADS=2"]
    options = {"resampleAlg": "cubic", "dstAlpha": True, "overviewLevel": 0, "warpMemoryLimit": 128}
    gdal.Warp(target, source, warpOptions=hints, **options)
    tiff = ["COMPRESS=DEFLATE", "ZLEVEL=1", "TILED=YES", "PHOTOMETRIC=RGB", "ALPHA=NON-PREMULTIPLIED"]
    for driver, name, options in (("GTiff", "bare.tif", tiff), ("PNG", "bare.png", ["ZLEVEL=1"])):
        gdal.GetDriverByName(driver).CreateCopy(os.path.join(folder, name), target, 0, options).FlushCache()


def seconds(function, *arguments):
    start = time.perf_counter()
    function(*arguments)
    return time.perf_counter() - start


def own_peak_mb():
    """Peak resident memory of this process since its start, MB.

    The kernel's own line where there is one: ``getrusage`` would count the parent's memory at the fork too.
    """
    try:
        with open("/proc/self/status", encoding="ascii") as status:
            return next(int(line.split()[1]) / 1024 for line in status if line.startswith("VmHWM"))
    except OSError:
        return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


def peak_mb(source, folder):
    """Peak resident memory of a process that imports the package and cuts one window, MB."""
    command = [sys.executable, os.path.abspath(__file__), "--cut", source, folder]
    done = subprocess.run(command, check=True, capture_output=True, text=True)
    return float(done.stdout.split()[-1])


def main(folder):
    source = os.path.join(folder, "bench_20000.tif")
    if not os.path.exists(source):
        print(f"making the image took {seconds(make_image, source):.0f} s")
    grid = grid_of()
    cut(source, grid, folder, "warm")
    bare_warp(source, grid, folder)
    ours, bare = [], []
    for _ in range(ROUNDS):
        bare.append(seconds(bare_warp, source, grid, folder))
        ours.append(seconds(cut, source, grid, folder, "hole_01"))
    ratio = statistics.median(ours) / statistics.median(bare)
    memory = peak_mb(source, folder)
    print(
        f"window 2000 x 4000 from {SIDE} x {SIDE}: ours {statistics.median(ours):.2f} s, "
        f"bare warp {statistics.median(bare):.2f} s, ratio {ratio:.2f} (limit {RATIO}), "
        f"peak memory {memory:.0f} MB (limit {MEMORY_MB})"
    )
    return 0 if ratio <= RATIO and memory <= MEMORY_MB else 1


if __name__ == "__main__":
    if sys.argv[1:2] == ["--cut"]:
        cut(sys.argv[2], grid_of(), sys.argv[3], "hole_02")
        print(own_peak_mb())
        sys.exit(0)
    if len(sys.argv) > 1:
        sys.exit(main(sys.argv[1]))
    with tempfile.TemporaryDirectory() as made:
        sys.exit(main(made))
