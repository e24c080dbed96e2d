"""Inside QGIS: how long it takes to import the plugin and to let it add its things."""

import time

import desktop_drive
from qgis.utils import loadPlugin, startPlugin


def drive(desk):
    yield 1500
    start = time.perf_counter()
    loaded = loadPlugin("yardwright") and startPlugin("yardwright")
    desk.result["seconds"] = time.perf_counter() - start
    if not loaded:
        raise RuntimeError("the plugin did not start")


desktop_drive.run(drive)
