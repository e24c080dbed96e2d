"""Where the sun stood, against worked examples; and on the grid of a map."""

from datetime import datetime

import pytest
from osgeo import gdal
from yardwright.imagery.dates import Date
from yardwright.imagery.sun import sun_on_grid, sun_position

LATITUDE = 54.9


def test_declination_of_a_worked_example():
    """J. Meeus, Astronomical Algorithms, example 25.a: 13 October 1992, 0 h TD (59 s before that in UTC),
    declination -7.78507. From memory of the book. At the pole the declination is the elevation."""
    _, elevation = sun_position(0.0, 90.0, datetime(1992, 10, 12, 23, 59, 1))
    assert elevation == pytest.approx(-7.78507, abs=0.002)


def test_azimuth_and_elevation_of_a_worked_example():
    """I. Reda and A. Andreas, Solar Position Algorithm (NREL/TP-560-34302), appendix A.5: 17 October 2003,
    12:30:30 at UTC-7; azimuth 194.34024, zenith 50.11162 with 0.016 of refraction. From memory of the paper."""
    azimuth, elevation = sun_position(-105.1786, 39.742476, datetime(2003, 10, 17, 19, 30, 30))
    assert azimuth == pytest.approx(194.34024, abs=0.01)
    assert elevation == pytest.approx(90 - 50.11162 - 0.016, abs=0.01)


@pytest.mark.parametrize(
    ("when", "declination"),
    [
        (datetime(2025, 3, 20, 12), 0.0),
        (datetime(2025, 6, 21, 12), 23.44),
        (datetime(2025, 12, 21, 12), -23.44),
    ],
)
def test_the_sun_culminates_as_the_declination_says(when, declination):
    """At culmination the elevation is 90 - latitude + declination; declinations of the equinox (its day, not
    its hour) and the solstices from memory."""
    day = [sun_position(0.0, LATITUDE, when.replace(hour=h, minute=m)) for h in (11, 12) for m in range(60)]
    azimuth, elevation = max(day, key=lambda p: p[1])
    assert elevation == pytest.approx(90 - LATITUDE + declination, abs=0.1)
    assert azimuth == pytest.approx(180, abs=1)


def test_the_grid_turns_the_azimuth_by_the_convergence():
    """UTM's meridian convergence is about (longitude - central meridian) * sin(latitude); the textbook's
    first term, good to a hundredth of a degree here."""
    import math

    date = Date("a", "", taken="2025-07-02", taken_utc="09:30")
    on_globe = sun_on_grid(date, "EPSG:4326", (7.2, LATITUDE))
    expected = sun_position(7.2, LATITUDE, datetime(2025, 7, 2, 9, 30))
    assert (on_globe.azimuth, on_globe.elevation) == pytest.approx(expected, abs=1e-6)
    from osgeo import osr

    globe, utm = osr.SpatialReference(), osr.SpatialReference()
    for crs, number in ((globe, 4326), (utm, 25832)):
        crs.ImportFromEPSG(number)
        crs.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
    x, y, _ = osr.CoordinateTransformation(globe, utm).TransformPoint(7.2, LATITUDE)
    on_map = sun_on_grid(date, "EPSG:25832", (x, y))
    convergence = (7.2 - 9.0) * math.sin(math.radians(LATITUDE))
    assert on_map.azimuth - on_globe.azimuth == pytest.approx(-convergence, abs=0.02)
    assert on_map.elevation == pytest.approx(on_globe.elevation, abs=1e-4)


def stamped(path, text):
    image = gdal.GetDriverByName("GTiff").Create(str(path), 4, 4, 1)
    image.SetMetadataItem("TIFFTAG_DATETIME", text)
    image.FlushCache()
    return str(path)


def test_the_hour_is_the_courses_else_the_files(tmp_path):
    path = stamped(tmp_path / "a.tif", "2025:07:02 12:00:00")
    place = (7.2, LATITUDE)
    told = sun_on_grid(Date("a", path, taken="2025-07-02", taken_utc="09:30"), "EPSG:4326", place)
    found = sun_on_grid(Date("a", path, taken="2025-07-02"), "EPSG:4326", place)
    assert told.azimuth < found.azimuth
    assert (found.azimuth, found.elevation) == sun_position(*place, datetime(2025, 7, 2, 12))


@pytest.mark.parametrize("text", ["2025:07:02 00:00:00", "2025", ""])
def test_no_hour_no_sun(tmp_path, text):
    path = stamped(tmp_path / "a.tif", text)
    assert sun_on_grid(Date("a", path, taken="2025-07-02"), "EPSG:4326", (7.2, LATITUDE)) is None
    assert sun_on_grid(Date("a", str(tmp_path / "none.tif")), "EPSG:4326", (7.2, LATITUDE)) is None


def test_an_hour_of_the_night_or_a_place_off_the_globe_gives_no_sun():
    night = Date("a", "", taken="2025-01-02", taken_utc="23:30")
    assert sun_on_grid(night, "EPSG:4326", (7.2, LATITUDE)) is None
    day = Date("a", "", taken="2025-07-02", taken_utc="09:30")
    assert sun_on_grid(day, "nonsense", (7.2, LATITUDE)) is None
    assert sun_on_grid(day, "EPSG:25832", (1e12, 1e12)) is None
