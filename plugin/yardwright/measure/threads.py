"""PROJ in threads that come and go, as QGIS runs algorithms and tasks in.

pyproj 3.7 lets go of a thread's PROJ context when Python leaves the thread, but goes on using it when Python
comes back to the same thread of QGIS's pool: the process dies. An object of pyproj that is kept keeps its
context: one is made and kept for every time Python enters a thread.
"""

import threading

from pyproj.crs import Ellipsoid

_kept: list = []
_here = threading.local()


def keep_proj_alive():
    """To be called in a thread before pyproj is used in it."""
    if not getattr(_here, "kept", False):
        _kept.append(Ellipsoid.from_epsg(7030))
        _here.kept = True
