"""Yardwright: the yardage guide of a golf course, measured and drawn in QGIS.

Nothing heavy is imported here or in ``plugin``: QGIS loads both each time it starts.
"""

from importlib.util import find_spec

LIBRARIES = {"numpy": "numpy", "shapely": "shapely", "pyproj": "pyproj", "osgeo": "GDAL for Python"}
"""What the measuring needs besides QGIS: the module's name and what people call it."""


def missing_libraries():
    """The names people know of those libraries that this QGIS has not got; looks, imports nothing."""
    return tuple(name for module, name in LIBRARIES.items() if find_spec(module) is None)


def how_to_get(missing):
    """``(what, remedy)``: what is lacking, and how to get it on each system."""
    names = ", ".join(missing)
    packages = {"GDAL for Python": ("gdal", "python3-gdal")}
    pip_names = " ".join(packages.get(name, (name,))[0] for name in missing)
    apt_names = " ".join(packages.get(name, ("", f"python3-{name}"))[1] for name in missing)
    return (
        f"Yardwright cannot measure: this QGIS lacks {names}.",
        f"On Windows start the OSGeo4W Shell that came with QGIS and type "
        f"“python -m pip install {pip_names}”; on macOS type "
        f"“/Applications/QGIS.app/Contents/MacOS/bin/python3 -m pip install {pip_names}” in "
        f"Terminal; on Debian or Ubuntu type “sudo apt install {apt_names}”. Then start QGIS again.",
    )


def classFactory(iface):
    """The plugin object; called by QGIS. ``iface`` is None in ``qgis_process``."""
    from .plugin import YardwrightPlugin

    return YardwrightPlugin(iface)
