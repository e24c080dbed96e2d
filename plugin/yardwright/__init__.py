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
    what = f"This QGIS lacks {', '.join(missing)}, without which nothing can be measured."
    packages = [{"GDAL for Python": "gdal"}.get(name, name) for name in missing]
    pip = f"-m pip install {' '.join(packages)}"
    if platform == "win32":
        remedy = f"Open the OSGeo4W Shell that came with QGIS and type “python {pip}”"
    elif platform == "darwin":
        remedy = f"Open Terminal and type “/Applications/QGIS.app/Contents/MacOS/bin/python3 {pip}”"
    else:
        remedy = f"Type “sudo apt install {' '.join(f'python3-{name}' for name in packages)}” in a terminal"
    return what, f"{remedy}, then start QGIS again."


def classFactory(iface):
    """The plugin object; called by QGIS. ``iface`` is None in ``qgis_process``."""
    from .plugin import YardwrightPlugin

    return YardwrightPlugin(iface)
