"""What the plugin adds to the start of QGIS: its import and initGui, in a real desktop.

``bash tests/run tests/bench/bench_start.py -s``
"""

import shutil
import statistics

import pytest
from desktop import PLUGIN_PATH, ROOT, result_of, run_desktop

pytestmark = [pytest.mark.bench, pytest.mark.desktop]

LIMIT_S = 0.15
STARTS = 3


def test_start_adds_little(tmp_path):
    """Each start is a new QGIS; the first finds no compiled Python, as right after the installation."""
    plugins = tmp_path / "plugins"
    shutil.copytree(
        PLUGIN_PATH / "yardwright", plugins / "yardwright", ignore=shutil.ignore_patterns("__pycache__")
    )
    drive = ROOT / "tests" / "desktop" / "drive_time_start.py"
    seconds = []
    for number in range(1 + STARTS):
        folder = tmp_path / str(number)
        folder.mkdir()
        written = {"PYTHONDONTWRITEBYTECODE": ""}
        found = result_of(run_desktop(drive, folder, plugin_path=plugins, enabled=False, environment=written))
        seconds.append(found["seconds"])
    first, typical = seconds[0], statistics.median(seconds[1:])
    print(f"\nplugin adds {typical:.3f} s to QGIS's start (limit {LIMIT_S} s), {first:.3f} s the first time")
    assert typical <= LIMIT_S
