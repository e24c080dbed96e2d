"""Algorithms and tasks measure in threads of QGIS's pool, one after the other in the same thread."""

import subprocess
import sys
from pathlib import Path

PLUGIN = Path(__file__).parents[2] / "plugin"

SCRIPT = """
import os
import sys

sys.path.insert(0, sys.argv[1])
from qgis.core import QgsApplication, QgsTask
from yardwright.measure.frame import frame_about

application = QgsApplication([], False)
application.initQgis()


class Measured(QgsTask):
    ended = False
    place = None

    def run(self):
        self.place = frame_about([(384000, 6084000), (384100, 6084200)], "EPSG:25832").to_frame(
            "EPSG:25832"
        )([(384050, 6084100)])
        return True

    def finished(self, _):
        self.ended = True


for number in range(4):
    task = Measured(f"measure {number}")
    QgsApplication.taskManager().addTask(task)
    while not task.ended:
        application.processEvents()
    assert abs(task.place).max() < 0.01
print("measured", flush=True)
os._exit(0)
"""


def test_a_thread_that_python_comes_back_to():
    """With pyproj 3.7 the second task in a thread ended the process."""
    done = subprocess.run(
        [sys.executable, "-c", SCRIPT, str(PLUGIN)], capture_output=True, text=True, timeout=120
    )
    assert done.returncode == 0 and "measured" in done.stdout, done.stderr[-2000:]
