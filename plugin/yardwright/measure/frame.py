"""The plane a hole is measured in.

A transverse Mercator plane on WGS 84 laid through the middle of the hole, so that plane lengths equal
ground lengths to well under a millimetre anywhere within the hole. Nothing is ever measured in the
course's own CRS.
"""

import math
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from pyproj import CRS, Transformer
from pyproj.exceptions import CRSError, ProjError

from ..model.errors import YardwrightError
from ..model.words import say
from .threads import keep_proj_alive

EARTH_RADIUS = 6371008.8
"""Mean radius of the Earth in metres (IUGG), used to bring ellipsoidal lengths up to the ground."""


@dataclass(frozen=True)
class HoleFrame:
    """A transverse Mercator plane about one point: x east, y north, metres on the ground.

    longitude, latitude: its origin, degrees on WGS 84.
    height_m: mean ellipsoidal height of the ground; lengths grow by ``1 + height_m / EARTH_RADIUS``.
    """

    longitude: float
    latitude: float
    height_m: float = 0.0

    def to_frame(self, crs):
        """A function taking an (n, 2) array in ``crs`` (x east, y north) to frame metres."""
        to_degrees = _to_degrees(str(crs))
        plane = _plane(self)

        def transform(points):
            return _through(plane, _through(to_degrees, points))

        return transform

    def from_frame(self, crs):
        """The inverse: a function taking an (n, 2) array of frame metres to ``crs``."""
        to_degrees = _to_degrees(str(crs))
        plane = _plane(self)

        def transform(points):
            return _through(to_degrees, _through(plane, points, "INVERSE"), "INVERSE")

        return transform

    def true_azimuth(self, p, q):
        """Azimuth at ``p`` towards ``q``, degrees clockwise from true north, 0 <= azimuth < 360.

        The plane's north differs from true north by the meridian convergence at ``p``
        (``atan(tan(dlon) sin(lat))``, the spherical form in J. P. Snyder, Map Projections: A Working
        Manual, USGS Professional Paper 1395; formula quoted from memory); within a hole that is at most
        some hundredths of a degree, near the poles.
        """
        grid = math.degrees(math.atan2(q[0] - p[0], q[1] - p[1]))
        longitude, latitude = _through(_plane(self), p, "INVERSE")[0]
        change = math.radians((longitude - self.longitude + 180.0) % 360.0 - 180.0)
        convergence = math.degrees(math.atan(math.tan(change) * math.sin(math.radians(latitude))))
        azimuth = (grid + convergence) % 360.0
        return 0.0 if azimuth == 360.0 else azimuth


def frame_about(points, crs, height_m=0.0):
    """The frame through the middle of an (n, 2) array of points in ``crs``.

    The middle is taken in a way that does not mind the antimeridian: longitudes are counted from the
    first point's.
    """
    longitude, latitude = _through(_to_degrees(str(crs)), points).T
    turned = (longitude - longitude[0] + 180.0) % 360.0 - 180.0
    middle = longitude[0] + (turned.min() + turned.max()) / 2
    middle = (middle + 180.0) % 360.0 - 180.0
    return HoleFrame(float(middle), float((latitude.min() + latitude.max()) / 2), float(height_m))


def _through(transformer, points, direction="FORWARD"):
    """Points, one or many, through a transformer; copies, since pyproj may write into what it is given."""
    keep_proj_alive()
    points = np.array(points, dtype=float).reshape(-1, 2)
    if len(points) == 1:
        # pyproj takes an array of one for a number, which newer releases of numpy warn of.
        return np.array([transformer.transform(*points[0], direction=direction)])
    return np.column_stack(transformer.transform(points[:, 0], points[:, 1], direction=direction))


@lru_cache(maxsize=32)
def _to_degrees(crs):
    """From ``crs`` to degrees on WGS 84; kept, since making a transformer costs milliseconds."""
    keep_proj_alive()
    try:
        return Transformer.from_crs(CRS.from_user_input(crs), CRS.from_epsg(4326), always_xy=True)
    except (CRSError, ProjError) as error:
        raise YardwrightError(
            say("The coordinate reference system “{crs}” is not known here.", crs=crs[:60]),
            say("Choose another for the course, for instance the UTM zone it lies in."),
        ) from error


@lru_cache(maxsize=1024)
def _plane(frame):
    """From degrees on WGS 84 to the frame's plane; a bare pipeline, which PROJ sets up fastest."""
    keep_proj_alive()
    scale = 1.0 + frame.height_m / EARTH_RADIUS
    return Transformer.from_pipeline(
        "+proj=pipeline +step +proj=unitconvert +xy_in=deg +xy_out=rad "
        f"+step +proj=tmerc +ellps=WGS84 +lat_0={frame.latitude!r} +lon_0={frame.longitude!r} +k={scale!r}"
    )
