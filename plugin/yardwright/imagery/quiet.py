"""GDAL's errors as the program's own."""

import contextlib

from osgeo import gdal

from ..model.errors import YardwrightError
from ..model.words import say


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
