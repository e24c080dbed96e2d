"""Yardwright: the yardage guide of a golf course, measured and drawn in QGIS.

Nothing heavy is imported here or in ``plugin``: QGIS loads both each time it starts.
"""

import sys
from importlib.util import find_spec

LIBRARIES = {"numpy": "numpy", "shapely": "shapely", "pyproj": "pyproj", "osgeo": "GDAL for Python"}
"""What the measuring needs besides QGIS: the module's name and what people call it."""


def missing_libraries():
    """The names people know of those libraries that this QGIS has not got; looks, imports nothing."""
    return tuple(name for module, name in LIBRARIES.items() if find_spec(module) is None)


def how_to_get(missing, platform=sys.platform):
    """``(what, remedy)``: what is lacking, and how to get it on the system ``platform`` (Python's name)."""
    from .model.words import say

    names = ", ".join(missing)
    what = say("This QGIS lacks {names}, without which nothing can be measured.", names=names)
    packages = [{"GDAL for Python": "gdal"}.get(name, name) for name in missing]
    pip = f"-m pip install {' '.join(packages)}"
    if platform == "win32":
        remedy = say(
            "Open the OSGeo4W Shell that came with QGIS and type “{command}”, then start QGIS again.",
            command=f"python {pip}",
        )
    elif platform == "darwin":
        remedy = say(
            "Open Terminal and type “{command}”, then start QGIS again.",
            command=f"/Applications/QGIS.app/Contents/MacOS/bin/python3 {pip}",
        )
    else:
        remedy = say(
            "Type “{command}” in a terminal, then start QGIS again.",
            command=f"sudo apt install {' '.join(f'python3-{name}' for name in packages)}",
        )
    return what, remedy


def classFactory(iface):
    """The plugin object; called by QGIS. ``iface`` is None in ``qgis_process``."""
    from .plugin import YardwrightPlugin

    return YardwrightPlugin(iface)
