"""GDAL's habits: its errors as the program's own, and its memory kept small."""

import contextlib

from osgeo import gdal

from ..model.errors import YardwrightError
from ..model.words import say

_CACHE = 256 << 20


@contextlib.contextmanager
def quiet_gdal(cannot):
    """Turn what GDAL raises inside into a YardwrightError, whichever way the process has set GDAL to report.

    cannot: a function that says, of GDAL's reason, what cannot be used.
    """
    gdal.PushErrorHandler("CPLQuietErrorHandler")
    gdal.ErrorReset()
    try:
        yield
    except RuntimeError as error:
        if type(error) is not RuntimeError:  # GDAL raises just that; any other is a fault of ours
            raise
        raise YardwrightError(
            cannot(error), say("Check that the file is whole and opens in QGIS, or choose another.")
        ) from error
    finally:
        gdal.PopErrorHandler()


@contextlib.contextmanager
def modest_cache():
    """GDAL keeps read blocks up to a twentieth of the machine's memory; a window needs far less."""
    before = gdal.GetCacheMax()
    gdal.SetCacheMax(min(before, _CACHE))
    try:
        yield
    finally:
        gdal.SetCacheMax(before)
