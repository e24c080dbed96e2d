"""The painted images: place, size, shift, shadows, and the same each time. And the ground."""

from dataclasses import replace

import numpy as np
import pytest
from osgeo import gdal

from sample_project import pictures
from sample_project.drawing import drawing, to_crs
from sample_project.terrain import heights


def spot(x, y, across=48.0):
    """A small extent about a local point, whole metres."""
    (east, north), half = np.round(to_crs(np.array([[x, y]]))[0]), across / 2
    return east - half, north - half, east + half, north + half


def view_of(extent, gsd):
    x0, y0, x1, y1 = extent
    return pictures.View(x0, y1, gsd, int((x1 - x0) / gsd), int((y1 - y0) / gsd))


def read(path):
    image = gdal.Open(str(path))
    return image.ReadAsArray(), image.GetGeoTransform(), image.GetRasterBand(1).GetOverviewCount()


def test_an_image_lies_where_it_says_and_is_shifted_as_it_says(tmp_path):
    extent = spot(205, 217)
    season = pictures.SPRING
    assert 0.8 < np.hypot(*season.shift) < 1.3
    pictures.write_image(str(tmp_path / "shifted.tif"), season, extent)
    pictures.write_image(str(tmp_path / "true.tif"), replace(season, shift=(0.0, 0.0)), extent)
    shifted, there, overviews = read(tmp_path / "shifted.tif")
    true, here, _ = read(tmp_path / "true.tif")
    assert np.array_equal(shifted, true)
    assert (there[0] - here[0], there[3] - here[3]) == pytest.approx(season.shift)
    assert (here[0], here[3]) == (extent[0], extent[3])
    assert shifted.shape == (3, round(48 / season.gsd), round(48 / season.gsd))
    assert overviews == 4
    assert [p.name for p in tmp_path.iterdir() if p.suffix == ".part"] == []


def test_the_same_each_time_and_sand_is_where_it_was_drawn():
    bunker = drawing().of("bunker")[20].geometry
    view = view_of(spot(*bunker.centroid.coords[0], 40.0), 0.25)
    first = pictures.paint(view, pictures.SUMMER, shadows=False)
    assert np.array_equal(first, pictures.paint(view, pictures.SUMMER, shadows=False))
    from yardwright.model.geometry import map_points

    inside = pictures._burn(view, map_points([bunker.buffer(-0.6)], to_crs)).astype(bool)
    outside = ~pictures._burn(view, map_points([bunker.buffer(0.9)], to_crs)).astype(bool)
    blue = first[2].astype(float)
    assert blue[inside].mean() > blue[outside].mean() + 60


def test_a_tile_shows_the_same_as_the_whole():
    whole = view_of(spot(420, 300, 96.0), 0.25)
    part = pictures.View(whole.left + 24, whole.top - 24, 0.25, 192, 192)
    wanted = pictures.paint(whole, pictures.SUMMER, grain=False)[:, 96:288, 96:288].astype(int)
    got = pictures.paint(part, pictures.SUMMER, grain=False).astype(int)
    inner = (slice(None), slice(24, -24), slice(24, -24))
    assert np.abs(got - wanted)[inner].mean() < 1.5


def test_shadows_fall_away_from_the_sun():
    """A tower of 10 m at 45 degrees of elevation throws 10 m of shadow, due west for a sun due east."""
    height = np.zeros((81, 81), np.float32)
    height[40, 40] = 10
    shade = pictures._shadow(height, 0.5, 90.0, 45.0)
    rows, columns = np.nonzero(shade > 0.3)
    assert set(rows) == {40}
    assert columns.max() == 39
    assert 18 <= 40 - columns.min() <= 20


def test_shadows_and_people_can_be_left_out():
    place = np.array(drawing().ways[1]).mean(axis=0)
    view = view_of(spot(*place, 120.0), 0.5)
    truth = pictures.paint(view, pictures.AUTUMN, shadows=False, people=False, grain=False)
    shaded = pictures.paint(view, pictures.AUTUMN, people=False, grain=False)
    assert shaded.mean() < truth.mean() - 1
    played = pictures.paint(view, pictures.SUMMER, shadows=False, grain=False)
    empty = pictures.paint(view, pictures.SUMMER, shadows=False, people=False, grain=False)
    assert 0 < (np.abs(played.astype(int) - empty).max(axis=0) > 30).mean() < 0.02


def test_greens_tilt_a_little_and_water_lies_flat():
    lake = next(f for f in drawing().of("penalty_area") if f.label == "Lake").geometry.buffer(-1)
    x0, y0, x1, y1 = lake.bounds
    x, y = np.meshgrid(np.linspace(x0, x1, 30), np.linspace(y0, y1, 30))
    from shapely.geometry import Point

    inside = np.array([lake.contains(Point(p)) for p in zip(x.ravel(), y.ravel())]).reshape(x.shape)
    assert np.ptp(heights(x, y)[inside]) < 1e-6
    for green in drawing().of("green"):
        cx, cy = green.geometry.representative_point().coords[0]
        near = heights(np.array([cx - 1, cx + 1, cx, cx]), np.array([cy, cy, cy - 1, cy + 1]))
        slope = np.hypot(near[1] - near[0], near[3] - near[2]) / 2
        assert 0.011 < slope < 0.027
