"""Where the sun stood over an image: its azimuth and elevation, and the direction on the map's grid."""

import math
from dataclasses import dataclass
from datetime import datetime

from osgeo import gdal, osr

from ..model.errors import YardwrightError
from .grid import Grid, grid_crs
from .quiet import quiet_gdal


@dataclass(frozen=True)
class Sun:
    """The sun over a map, degrees. azimuth: clockwise from the map's upward direction (grid north), where the
    sun stands; shadows fall to the other side. elevation: above the horizon."""

    azimuth: float
    elevation: float


def sun_position(longitude, latitude, when):
    """(azimuth, elevation) of the sun in degrees; azimuth clockwise from true north.

    longitude, latitude: degrees, east and north positive. when: a datetime in UTC. J. Meeus, Astronomical
    Algorithms, chapter 25, "low accuracy": a hundredth of a degree for this century and the last. Refraction
    is left out: below 10 degrees of elevation the sun seems a tenth of a degree higher and more.
    """
    days = (when - datetime(2000, 1, 1, 12)).total_seconds() / 86400
    right_ascension, declination = _sun_among_the_stars((days + 66 / 86400) / 36525)
    sidereal = 280.46061837 + 360.98564736629 * days + longitude
    angle = math.radians(sidereal) - right_ascension
    lat = math.radians(latitude)
    up = math.sin(lat) * math.sin(declination) + math.cos(lat) * math.cos(declination) * math.cos(angle)
    east = -math.cos(declination) * math.sin(angle)
    north = math.cos(lat) * math.sin(declination) - math.sin(lat) * math.cos(declination) * math.cos(angle)
    return math.degrees(math.atan2(east, north)) % 360, math.degrees(math.asin(min(1.0, max(-1.0, up))))


def _sun_among_the_stars(t):
    """Apparent right ascension and declination, radians; t: centuries since the beginning of 2000, of the
    uniform time that runs about 66 s ahead of UTC."""
    mean_longitude = 280.46646 + 36000.76983 * t + 0.0003032 * t * t
    anomaly = math.radians(357.52911 + 35999.05029 * t - 0.0001537 * t * t)
    centre = (
        (1.914602 - 0.004817 * t - 0.000014 * t * t) * math.sin(anomaly)
        + (0.019993 - 0.000101 * t) * math.sin(2 * anomaly)
        + 0.000289 * math.sin(3 * anomaly)
    )
    node = math.radians(125.04 - 1934.136 * t)
    longitude = math.radians(mean_longitude + centre - 0.00569 - 0.00478 * math.sin(node))
    tilt = math.radians(23.4392911 - 0.0130042 * t + 0.00256 * math.cos(node))
    right_ascension = math.atan2(math.cos(tilt) * math.sin(longitude), math.cos(longitude))
    return right_ascension, math.asin(math.sin(tilt) * math.sin(longitude))


def sun_on_grid(date, crs, place):
    """The Sun over ``place`` (x, y in ``crs``) as the Date was taken, or None where its hour is unknown, the
    place cannot be found on the globe, or the sun was below the horizon then, so that the hour must be wrong.

    The hour is what the course says (UTC), else what the file says of itself, taken for UTC.
    """
    when = hour_of(date)
    found = None if when is None else _on_globe(crs, place)
    if found is None:
        return None
    longitude, latitude, north = found
    azimuth, elevation = sun_position(longitude, latitude, when)
    return Sun((azimuth - north) % 360, elevation) if elevation > 0 else None


def _on_globe(crs, place):
    """(longitude, latitude, azimuth of the grid's upward direction from true north) of a place, degrees, or
    None where there is none."""
    x, y = float(place[0]), float(place[1])
    try:
        map_crs = grid_crs(Grid(1, 1, (x, 1, 0, y, 0, -1), crs))
        globe = osr.SpatialReference()
        globe.ImportFromEPSG(4326)
        globe.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
        way = osr.CoordinateTransformation(map_crs, globe)
        step = 1e-3 if map_crs.IsGeographic() else 100.0
        points = way.TransformPoints([(x, y), (x, y + step)])
    except (YardwrightError, RuntimeError):
        return None
    (longitude, latitude), (east, north) = (point[:2] for point in points)
    if not all(map(math.isfinite, (longitude, latitude, east, north))):
        return None
    across = (east - longitude) * math.cos(math.radians(latitude))
    return longitude, latitude, math.degrees(math.atan2(across, north - latitude))


def hour_of(date):
    """When a Date was taken, a datetime in UTC, or None where no hour is known."""
    try:
        return datetime.strptime(f"{date.taken} {date.taken_utc}", "%Y-%m-%d %H:%M")
    except ValueError:
        return _hour_in_file(date.path)


def _hour_in_file(path):
    """What the file's TIFFTAG_DATETIME says, or None. Midnight stands for "no hour" there."""
    try:
        with quiet_gdal(str):
            image = gdal.OpenEx(path, gdal.OF_RASTER)
            text = image.GetMetadataItem("TIFFTAG_DATETIME") if image is not None else None
        when = datetime.strptime((text or "").strip(), "%Y:%m:%d %H:%M:%S")
    except (YardwrightError, ValueError):
        return None
    return None if (when.hour, when.minute, when.second) == (0, 0, 0) else when
