"""The hole frame against geographiclib and its own inverse."""

import numpy as np
import pytest
from geographiclib.geodesic import Geodesic
from pyproj import Transformer
from yardwright.measure.frame import EARTH_RADIUS, HoleFrame, frame_about
from yardwright.model.errors import YardwrightError

PLACES = [(56.343, -2.803), (0.0, 0.0), (70.0, 25.0), (-37.95, 145.03), (-45.0, 180.0), (85.0, -179.9999)]


@pytest.mark.parametrize("latitude, longitude", PLACES)
def test_lengths_and_azimuths_equal_the_geodesics(latitude, longitude):
    """geographiclib 2.1: pairs up to 700 m, lengths within 0.01 mm and azimuths within a hundredth of a degree."""
    frame = HoleFrame(longitude, latitude)
    to_frame = frame.to_frame("EPSG:4326")
    random = np.random.default_rng(3)
    for _ in range(20):
        ends = []
        for azimuth, away in zip(random.uniform(0, 360, 2), random.uniform(0, 350, 2)):
            end = Geodesic.WGS84.Direct(latitude, longitude, azimuth, away)
            ends.append((end["lon2"], end["lat2"]))
        p, q = to_frame(np.array(ends))
        true = Geodesic.WGS84.Inverse(ends[0][1], ends[0][0], ends[1][1], ends[1][0])
        assert np.hypot(*(q - p)) == pytest.approx(true["s12"], abs=1e-5)
        difference = (frame.true_azimuth(p, q) - true["azi1"] + 180) % 360 - 180
        assert abs(difference) < 0.005


def test_convergence_is_not_left_out():
    """At 85 degrees north, 300 m east of the origin, the plane's north is 0.03 degrees off."""
    frame = HoleFrame(10.0, 85.0)
    p = frame.to_frame("EPSG:4326")([[10.0309, 85.0]])[0]
    north = frame.to_frame("EPSG:4326")([[10.0309, 85.001]])[0]
    assert (
        frame.true_azimuth(p, north) == pytest.approx(0.0, abs=1e-4)
        or frame.true_azimuth(p, north) > 359.9999
    )


@pytest.mark.parametrize("azimuth", [0, 90, 180, 270, 359.99])
def test_azimuths_are_at_least_0_and_less_than_360(azimuth):
    frame = HoleFrame(10.0, 50.0)
    turned = np.radians(azimuth)
    value = frame.true_azimuth((0.0, 0.0), (np.sin(turned), np.cos(turned)))
    assert 0 <= value < 360
    assert value == pytest.approx(azimuth, abs=1e-6) or value == pytest.approx(azimuth + 360, abs=1e-6)


@pytest.mark.parametrize(
    "crs, within", [("EPSG:32630", 1e-6), ("EPSG:4326", 1e-6), ("EPSG:3857", 1e-6), ("EPSG:27700", 1e-3)]
)
def test_there_and_back(crs, within):
    """To a micrometre; through OSGB36 PROJ's seven-parameter shift and its inverse differ by 0.8 mm, one shift for all."""
    frame = HoleFrame(-2.803, 56.343)
    points = np.array([[0.0, 0.0], [200.0, -300.0], [-350.0, 10.0]])
    again = frame.to_frame(crs)(frame.from_frame(crs)(points))
    assert np.abs(again - points).max() < within
    assert np.ptp(again - points, axis=0).max() < 1e-6


def test_height_makes_lengths_grow():
    low, high = HoleFrame(10.0, 50.0), HoleFrame(10.0, 50.0, 1500.0)
    point = np.array([[10.005, 50.001]])
    ratio = np.hypot(*high.to_frame("EPSG:4326")(point)[0]) / np.hypot(*low.to_frame("EPSG:4326")(point)[0])
    assert ratio == pytest.approx(1 + 1500 / EARTH_RADIUS, abs=1e-9)


def test_points_handed_in_stay_as_they_are():
    points = np.array([[10.001, 50.001], [10.002, 50.002]])
    before = points.copy()
    HoleFrame(10.0, 50.0).to_frame("EPSG:4326")(points)
    assert (points == before).all()


def test_the_frame_lies_in_the_middle_of_its_points():
    frame = frame_about([[10.0, 50.0], [10.01, 50.004]], "EPSG:4326", 120.0)
    assert (frame.longitude, frame.latitude, frame.height_m) == pytest.approx((10.005, 50.002, 120.0))


@pytest.mark.parametrize("east, west", [(179.999, -179.999), (-179.999, 179.999), (179.999, 180.001)])
def test_the_middle_across_the_antimeridian(east, west):
    frame = frame_about([[east, -17.0], [west, -17.0]], "EPSG:4326")
    assert abs(frame.longitude) == pytest.approx(180.0, abs=1e-9)


def test_an_unknown_crs_is_named_with_a_remedy():
    with pytest.raises(YardwrightError) as error:
        HoleFrame(0, 0).to_frame("no such thing")
    assert "no such thing" in error.value.what and error.value.remedy


def test_wkt_is_taken_too():
    wkt = Transformer.from_crs("EPSG:32630", "EPSG:4326").source_crs.to_wkt()
    point = np.array([[500_000.0, 6_000_000.0]])
    assert np.allclose(
        HoleFrame(-3, 54).to_frame(wkt)(point), HoleFrame(-3, 54).to_frame("EPSG:32630")(point)
    )
