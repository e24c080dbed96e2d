"""The cost of the masks of three dates of 2000 x 4000 px beside that of warping the three.

Run: ``bash tests/run tests/bench/bench_hiding.py -s``. The dates are painted from the sample course and
read on a grid of half their pixel, for the painting takes longer than all else. Time is the processor's, so
that what else the machine does is not counted. Limits: ratio 3.5, memory 450 MB beside the pictures.
"""

import statistics
import subprocess
import sys
import time
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
RATIO, MEMORY_MB, ROUNDS = 3.5, 450, 3
pytestmark = pytest.mark.bench


def measure(folder):
    """(seconds of warping, seconds of masks, MB above the pictures) in this process."""
    import numpy as np
    from yardwright.imagery.dates import Date
    from yardwright.imagery.grid import Grid
    from yardwright.imagery.hiding import hidden, learn_looks
    from yardwright.imagery.patches import coarser

    from sample_project import pictures, plan
    from tests.bench.bench_windows import own_peak_mb

    left, bottom, _, top = pictures.course_extent()
    dates = []
    for season in pictures.SEASONS:
        path = str(Path(folder) / f"{season.id}.tif")
        pictures.write_image(path, season, (left, top - 504, left + 252, top))
        dates.append(Date(season.id, path))
    grid = Grid(2000, 4000, (left, 0.125, 0, top, 0, -0.125), plan.CRS)
    warps, masks = [], []
    before = 0.0
    for _ in range(ROUNDS):
        start = time.process_time()
        shown = []
        for date in dates:
            with date.open() as image:
                shown.append(image.pixels(grid))
        warps.append(time.process_time() - start)
        before = before or own_peak_mb()
        looks = learn_looks([coarser(p, 8) for p in shown], 1.0)
        start = time.process_time()
        # A pixel of this grid is told to be as large as those painted, for the full work on each.
        found = hidden(shown, 0.25, looks)
        masks.append(time.process_time() - start)
        assert all(np.shape(mask) == (4000, 2000) for mask in found)
    return statistics.median(warps), statistics.median(masks), own_peak_mb() - before


def test_masks_cost_little_beside_the_warp(tmp_path):
    done = subprocess.run(
        [sys.executable, __file__, str(tmp_path)], check=True, capture_output=True, text=True, cwd=ROOT
    )
    warp, mask, memory = map(float, done.stdout.split()[-3:])
    print(f"three dates: warp {warp:.2f} s, masks {mask:.2f} s, ratio {mask / warp:.2f}, {memory:.0f} MB")
    assert mask <= RATIO * warp
    assert memory <= MEMORY_MB


if __name__ == "__main__":
    sys.path[:0] = [str(ROOT), str(ROOT / "plugin")]
    print(*measure(sys.argv[1]))
