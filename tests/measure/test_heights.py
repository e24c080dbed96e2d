"""Heights of a hole: what they are taken at, what it plays like, and that no measured length knows of them."""

import math
from dataclasses import replace

import numpy as np
import pytest
from shapely.geometry import Polygon
from yardwright.imagery.terrain import Terrain
from yardwright.measure.course import measure_course
from yardwright.measure.heights import SlopeGrid, hole_heights, rises, slope_at, slope_grid
from yardwright.measure.hole import play_hole
from yardwright.measure.line import as_point
from yardwright.measure.units import YARD

from tests.loudly import left_over
from tests.makers import LOCAL, circle, course, dogleg_hole, feature, line, only, straight_hole, tables, tee


class Hill:
    """Heights by a function of the metres of LOCAL; nan where it says so."""

    remarks = ()

    def __init__(self, function):
        self.function = function

    def height_at(self, points, crs):
        assert crs == LOCAL
        return np.array([self.function(x, y) for x, y in points], dtype=float)


def rising(metres, over_yd=400.0):
    """Ground that rises up the page by so many metres over so many yards."""
    return Hill(lambda x, y: 100.0 + metres * y / (over_yd * YARD))


@pytest.mark.parametrize("rise", [10.0, 20.0, 30.0, -20.0])
def test_the_length_is_horizontal_whatever_the_rise(rise):
    """400 yd with 10, 20 and 30 m of rise would be 400.149, 400.598 and 401.343 yd along the slope (computed
    by Pythagoras): the length stays 400. "Plays" adds the rise (common practice, no source)."""
    with_terrain = tables(straight_hole(), terrain=rising(rise))
    (length,), (row,) = with_terrain.lengths, with_terrain.heights
    assert length.length == pytest.approx(400, abs=1e-3)
    assert row.length == length.length
    assert (row.tee_height_m, row.green_height_m) == pytest.approx((100, 100 + rise), abs=1e-3)
    assert row.rise_m == pytest.approx(rise, abs=1e-3)
    assert row.plays == pytest.approx(400 + rise / YARD, abs=1e-3)
    assert row.remark == ""


def test_heights_change_no_other_table_and_are_not_made_unasked():
    drawn = dogleg_hole()
    without, with_terrain = measure_course(drawn), measure_course(drawn, terrain=rising(10))
    assert without.heights == () and len(with_terrain.heights) == 1
    assert replace(with_terrain, heights=()) == without


def test_where_heights_are_taken():
    """Height = 1000 + yards up + 0.001 x yards right, so that each says where it was taken. Dogleg of 240 and
    160 yd from the tee's front, approach from 150 yd before the green, radius 15."""
    ground = Hill(lambda x, y: 1000 + y / YARD + 0.001 * x / YARD)
    back = tee(2, 0, -5)
    ahead = tee(3, 0, 65, tee_set="Front")
    past = tee(4, 40, 240, tee_set="Short", depth=6, width=10)
    drawn = dogleg_hole(tees=[back, ahead, past])
    found = tables(drawn, terrain=ground).heights
    wanted = {"Back": (1000.0, "1240.00"), "Front": (1070.0, "1240.00"), "Short": (1240.045, "")}
    for name, (height, turns) in wanted.items():
        row = only(found, tee_set=name)
        assert row.tee_height_m == pytest.approx(height, abs=2e-3)
        assert row.turn_heights_m == turns
        assert row.green_height_m == pytest.approx(1240.160, abs=2e-3)
        assert row.approach_height_m == pytest.approx(1240.010, abs=2e-3)
        assert (row.front_height_m, row.back_height_m) == pytest.approx((1240.145, 1240.175), abs=2e-3)
    assert [row.tee_set for row in found] == ["Back", "Front", "Short"]


def test_what_the_terrain_does_not_reach_is_remarked_on():
    def row_of(drawn, reached):
        ground = Hill(lambda x, y: 10.0 if reached(x / YARD, y / YARD) else math.nan)
        return only(tables(drawn, terrain=ground).heights)

    row = row_of(straight_hole(), lambda x, y: y > 100)
    assert (row.tee_height_m, row.rise_m, row.plays, row.green_height_m) == (None, None, None, 10)
    assert row.remark == "the terrain does not reach the tee"
    row = row_of(straight_hole(), lambda x, y: y < 300)
    assert (row.tee_height_m, row.rise_m, row.plays, row.green_height_m) == (10, None, None, None)
    assert row.remark == "the terrain does not reach the green"
    row = row_of(straight_hole(), lambda x, y: y < 410)
    assert (row.rise_m, row.back_height_m) == (0, None)
    assert row.remark == "the terrain reaches only a part of the green"
    row = row_of(dogleg_hole(), lambda x, y: not (y > 230 and x < 20))
    assert row.turn_heights_m == "" and row.rise_m == 0
    assert row.remark == (
        "the terrain does not reach every turn point; the terrain does not reach the approach point"
    )
    row = row_of(straight_hole(), lambda x, y: False)
    assert row.remark == "the terrain does not reach this hole"


def test_holes_without_tee_green_or_line():
    no_tee = tables(straight_hole(tees=[feature("bunker", 9, circle(30, 200, 5), 1)]), terrain=rising(10))
    (row,) = no_tee.heights
    assert (row.tee_set, row.rise_m, row.remark) == ("", None, "no tee is drawn")
    assert row.green_height_m == pytest.approx(110, abs=1e-3)

    no_green = tables(course([tee(2, 0, -5)], {1: line((0, -5), (0, 400))}), terrain=rising(10))
    (row,) = no_green.heights
    assert row.rise_m == pytest.approx(10, abs=1e-3)
    assert (row.front_height_m, row.approach_height_m) == (None, None)
    assert "no green is drawn" in row.remark

    (row,) = tables(course([], {1: None}), terrain=rising(10)).heights
    assert (row.hole, row.remark) == (1, "no line of play is drawn")


def test_remarks_are_said(loudly):
    reach = Hill(lambda x, y: 10.0 if y < 300 * YARD and x < 20 else math.nan)
    nowhere = Hill(lambda x, y: math.nan)
    texts = [
        row.remark
        for ground in (reach, nowhere)
        for drawn in (straight_hole(), dogleg_hole(), course([tee(2, 0, -5)], {1: line((0, -5), (0, 400))}))
        for row in tables(drawn, terrain=ground).heights
    ]
    assert all(texts) and not left_over(" ".join(texts))


# The sample course, whose ground is a function


@pytest.fixture(scope="module")
def sample(tmp_path_factory):
    """``(course, terrain)`` of Quernhallow."""
    from sample_project import drawing, pictures, terrain

    path = str(tmp_path_factory.mktemp("sample") / "terrain.tif")
    terrain.write_terrain(path, pictures.course_extent())
    with Terrain(path) as ground:
        yield drawing.course(), ground


def height_by_function(points, crs):
    """The function that the terrain was written from, at points of the course's CRS."""
    from sample_project import drawing, plan, terrain

    assert crs == plan.CRS
    local = drawing.to_local(np.asarray(points).reshape(-1, 2))
    return terrain.heights(local[:, 0], local[:, 1])


def test_heights_of_the_sample_course(sample):
    """Every height against the function itself, from which the pixels of 2 m were taken: a decimetre apart
    at most, where a bank is bent, and a centimetre mostly."""
    drawn, ground = sample
    apart = []
    for hole in drawn.holes:
        played = play_hole(drawn, hole.number)
        heights = hole_heights(played, ground, drawn.crs)
        back = played.frame.from_frame(drawn.crs)
        green = played.green
        for place, height in (
            (green.approach_point, heights.approach),
            (green.front, heights.front),
            (green.middle, heights.middle),
            (green.back, heights.back),
        ):
            apart.append(height - height_by_function(back([place]), drawn.crs)[0])
        for one, play in zip(heights.tees, played.tees):
            expected = height_by_function(back(play.line.points), drawn.crs)
            apart.extend(np.array([one.tee, *one.turns, one.green]) - expected)
            assert one.rise == pytest.approx(expected[-1] - expected[0], abs=0.15)
    assert len(apart) > 18 * 4 * 5 // 2
    assert np.abs(apart).max() < 0.1 and np.median(np.abs(apart)) < 0.01


def test_rows_of_the_sample_course(sample):
    drawn, ground = sample
    measures = measure_course(drawn, terrain=ground)
    lengths = {(row.hole, row.tee_set): row.length for row in measures.lengths}
    assert {(row.hole, row.tee_set): row.length for row in measures.heights} == lengths
    assert {row.remark for row in measures.heights} == {""}
    assert all(row.plays - row.length == pytest.approx(row.rise_m) for row in measures.heights)
    assert any("metres" in problem for problem in measures.problems)
    assert replace(measures, heights=(), problems=()) == replace(measure_course(drawn), problems=())


def test_slopes_of_the_sample_greens(sample):
    """The greens are planes that fall by 1.2 to 2.6 percent (sample_project/terrain.py): at their middles the
    slope is the function's own gradient, its direction that of true north."""
    drawn, ground = sample
    found = []
    for hole in drawn.holes:
        played = play_hole(drawn, hole.number)
        percent, azimuth = slope_at(played, ground, drawn.crs, played.green.middle)
        step = 0.5
        cross = played.green.middle + np.array([[step, 0], [-step, 0], [0, step], [0, -step]])
        east, west, north, south = height_by_function(played.frame.from_frame(drawn.crs)(cross), drawn.crs)
        to_east, to_north = (east - west) / (2 * step), (north - south) / (2 * step)
        assert percent == pytest.approx(100 * math.hypot(to_east, to_north), abs=0.02)
        expected = math.degrees(math.atan2(-to_east, -to_north))
        assert (azimuth - expected + 180) % 360 - 180 == pytest.approx(0, abs=0.3)
        found.append(percent)
    assert min(found) > 1.1 and max(found) < 2.7


def test_slope_grid_covers_the_green_and_no_more(sample):
    drawn, ground = sample
    played = play_hole(drawn, 4)
    green = played.green
    grid = slope_grid(ground, green, played.frame, 2.0, drawn.crs)
    assert grid.x.shape == grid.y.shape == grid.percent.shape == grid.azimuth.shape
    assert (np.diff(grid.x, axis=1) == 2).all() and (np.diff(grid.y, axis=0) == -2).all()
    for x, y, percent, azimuth in zip(*(array.ravel() for array in grid)):
        distance = green.geometry.distance(as_point((x, y)))
        assert np.isfinite(percent) == np.isfinite(azimuth)
        if distance == 0:
            assert np.isfinite(percent)
        elif distance > 3:
            assert np.isnan(percent)
    row, column = np.argwhere(np.isfinite(grid.percent))[40]
    place = (grid.x[row, column], grid.y[row, column])
    assert (grid.percent[row, column], grid.azimuth[row, column]) == pytest.approx(
        slope_at(played, ground, drawn.crs, place), abs=1e-6
    )
    by_degrees = slope_grid(ground, green, played.frame, 2.0)
    assert by_degrees.percent == pytest.approx(grid.percent, abs=1e-3, nan_ok=True)


def grid_of(fall_east, fall_north, known=lambda x, y: True):
    """A SlopeGrid of crossings 1 m apart, 0 to 4 east and 0 to 3 north, by the falls in percent there."""
    x, y = np.meshgrid(np.arange(5.0), np.arange(3.0, -1.0, -1.0))
    east, north = np.vectorize(fall_east)(x, y) * 1.0, np.vectorize(fall_north)(x, y) * 1.0
    percent, azimuth = np.hypot(east, north), np.degrees(np.arctan2(east, north)) % 360
    azimuth[percent == 0] = np.nan
    unknown = ~np.vectorize(known)(x, y)
    percent[unknown] = azimuth[unknown] = np.nan
    return SlopeGrid(x, y, percent, azimuth)


def test_the_slope_between_the_crossings():
    """3 % to the east and 4 % to the north are 5 % towards 36.87 degrees (3-4-5); where the fall grows by the
    metre it grows evenly between two of them."""
    percent, azimuth = grid_of(lambda x, y: 3.0, lambda x, y: 4.0).at(np.array([[0.3, 0.7], [4.0, 3.0]]))
    assert percent == pytest.approx([5, 5]) and azimuth == pytest.approx([36.8699, 36.8699], abs=1e-3)
    percent, azimuth = grid_of(lambda x, y: -x, lambda x, y: 0.0).at(np.array([[2.25, 1.5], [0.5, 2.9]]))
    assert percent == pytest.approx([2.25, 0.5]) and azimuth == pytest.approx([270, 270])


def test_the_bottom_of_a_hollow_is_level_between_its_sides():
    """East of 1.5 it falls 2 % to the west, west of it 2 % to the east: half-way between they cancel."""
    hollow = grid_of(lambda x, y: 2.0 if x < 1.5 else -2.0, lambda x, y: 0.0)
    percent, _ = hollow.at(np.array([[1.5, 1.0], [1.0, 1.0], [2.0, 1.0]]))
    assert percent == pytest.approx([0, 2, 2])


def test_level_crossings_are_known_and_others_are_not():
    grid = grid_of(lambda x, y: 0.0, lambda x, y: 0.0, known=lambda x, y: x < 3)
    percent, _ = grid.at(np.array([[1.5, 1.5], [2.5, 1.5], [-0.1, 1.0], [1.0, 3.1], [9.0, 1.0]]))
    assert percent[0] == 0 and np.isnan(percent[1:]).all()


def test_the_rise_from_markers_to_the_middle_of_the_green():
    """10 m in 400 yd: from 300 yd before the middle 7.5 m, from its own height none."""
    drawn = straight_hole()
    places = [(1, 0.0, 100 * YARD), (1, 5.0, 400 * YARD), (1, None, None), (7, 0.0, 0.0)]
    found = rises(drawn, None, places, rising(10))
    assert found[:2] == pytest.approx([7.5, 0.0], abs=1e-3) and found[2:] == [None, None]
    half = Hill(lambda x, y: 10.0 if y > 300 * YARD else math.nan)
    assert rises(drawn, None, places[:1], half) == [None]
    assert rises(drawn, None, [], rising(10)) == []


def test_slope_where_the_terrain_does_not_reach(sample):
    drawn, ground = sample
    played = play_hole(drawn, 1)
    assert slope_at(played, ground, drawn.crs, (50_000.0, 0.0)) == (None, None)
    far = replace(played.green, geometry=Polygon([(5e4, 0), (5e4, 20), (5e4 + 20, 20)]))
    grid = slope_grid(ground, far, played.frame, 5.0, drawn.crs)
    assert grid.percent.size and np.isnan(grid.percent).all()
