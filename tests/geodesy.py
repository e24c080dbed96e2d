"""Holes laid out on the ellipsoid with geographiclib, which knows nothing of our planes."""

from types import MappingProxyType

import numpy as np
from geographiclib.geodesic import Geodesic
from pyproj import Transformer
from shapely.geometry import LineString, Point, Polygon
from yardwright.model.course import Course, Feature, Hole, Settings
from yardwright.model.geometry import map_points

WGS84 = Geodesic.WGS84


def ahead(place, azimuth, metres):
    """The (longitude, latitude) that lies so far along a geodesic."""
    end = WGS84.Direct(place[1], place[0], azimuth, metres)
    return end["lon2"], end["lat2"]


def between(p, q):
    """Metres from one (longitude, latitude) to another."""
    return WGS84.Inverse(p[1], p[0], q[1], q[0])["s12"]


def azimuth(p, q):
    """Degrees at p towards q, 0 <= azimuth < 360."""
    return WGS84.Inverse(p[1], p[0], q[1], q[0])["azi1"] % 360


def ring(place, radius, first=0.0, corners=72):
    """Corners of a polygon about a place, the first in the direction ``first``."""
    return [ahead(place, first + 360 * corner / corners, radius) for corner in range(corners)]


def into(crs):
    """A function taking shapes in degrees to ``crs``."""
    transformer = Transformer.from_crs("EPSG:4326", crs, always_xy=True)

    def move(points):
        return np.array([transformer.transform(x, y) for x, y in points])

    return lambda shape: map_points([shape], move)[0]


def course_of(crs, way, features, par=4, **settings):
    """A Course of one hole. way: (longitude, latitude) of tee, turns, green. features: (kind, places, fields);
    one place is a point, more are the corners of an area."""
    lay = into(crs)
    made = []
    for fid, (kind, places, fields) in enumerate(features, start=1):
        shape = Point(places[0]) if len(places) == 1 else Polygon(places)
        made.append(Feature(kind, fid, lay(shape), (1,), attributes=MappingProxyType(fields)))
    return Course(
        name="Larkmere",
        crs=crs,
        holes=(Hole(1, lay(LineString(way)), fid=1, par=par),),
        features=tuple(made),
        settings=Settings(**settings),
    )
