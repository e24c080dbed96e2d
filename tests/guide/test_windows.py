"""Windows planned over holes, and where the symbols fall in them.

The course is invented: one dogleg par 4 and one par 3, laid out about a place given in degrees, so that the
geodesic (geographiclib, by C. Karney) can judge what comes out.
"""

import math

import numpy as np
import pytest
from geographiclib.geodesic import Geodesic
from hypothesis import given, settings
from hypothesis import strategies as st
from pyproj import Transformer
from shapely.geometry import LineString, Point, Polygon
from yardwright.guide.windows import (
    GREEN_LIMIT,
    Panel,
    longest_tee,
    placements,
    plan_window,
    window_feature,
)
from yardwright.measure.course import measure_hole
from yardwright.measure.frame import HoleFrame
from yardwright.measure.hole import CourseIndex, play_hole
from yardwright.model.course import Course, Feature, Hole, TeeSet
from yardwright.model.errors import YardwrightError

PANEL = Panel(107.95, 177.8, 300)
YARD = 0.9144


def course_at(latitude=56.343, longitude=-2.803, crs="EPSG:32630", green_radius=10.0):
    """Hole 1: tee, 220 m north-west, turn right, 150 m on. Hole 2: 140 m, south-east of it."""
    to_crs = HoleFrame(longitude, latitude).from_frame(crs)

    def area(points):
        return Polygon(to_crs(np.array(points, dtype=float)))

    def round_area(x, y, radius):
        turns = np.arange(0, 2 * np.pi, 0.1)
        return area(np.column_stack([x + radius * np.cos(turns), y + radius * np.sin(turns)]))

    def square(x, y, half):
        return area([(x - half, y - half), (x + half, y - half), (x + half, y + half), (x - half, y + half)])

    def line(points):
        return LineString(to_crs(np.array(points, dtype=float)))

    def point(x, y):
        return Point(to_crs(np.array([(x, y)], dtype=float))[0])

    features = (
        Feature("tee", 1, square(0, 0, 5), (1,), attributes={"tee_set": "blue"}),
        Feature("tee", 2, square(-20, 30, 5), (1,), attributes={"tee_set": "red"}),
        Feature("green", 3, round_area(-110, 330, green_radius), (1,)),
        Feature("bunker", 4, round_area(-125, 320, 4), (1,), label="Left trap"),
        Feature("bunker", 5, round_area(-150, 150, 5), ()),
        Feature("bunker", 6, round_area(30, 40, 5), (2,)),
        Feature("marker", 7, point(-145, 200), (1,), attributes={"states_yd": 150.0}),
        Feature("penalty_area", 8, area([(-400, 100), (-60, 100), (-60, 112), (-400, 112)]), ()),
        Feature("plate", 9, point(1, 4), (1,), attributes={"tee_set": "blue"}),
        Feature("tee", 10, square(40, -20, 5), (2,), attributes={"tee_set": "blue"}),
        Feature("green", 11, round_area(140, -120, 9), (2,)),
        Feature("tree", 12, point(-20, 5000), ()),
    )
    holes = (
        Hole(1, line([(0, 0), (-150, 165), (-110, 330)]), fid=1, par=4),
        Hole(2, line([(40, -20), (140, -120)]), fid=2, par=3),
        Hole(3, None, fid=3, par=4),
        Hole(4, line([(0, 600), (-100, 900)]), fid=4, par=4),
    )
    return Course("Test", crs, holes, features, (TeeSet("blue"), TeeSet("red", sort=1)))


@pytest.fixture(scope="module")
def course():
    return course_at()


def to_degrees(crs, points):
    transformer = Transformer.from_crs(crs, "EPSG:4326", always_xy=True)
    longitude, latitude = transformer.transform(*np.transpose(points))
    return list(zip(latitude, longitude))


@pytest.mark.parametrize("shows", ["hole", "green"])
@pytest.mark.parametrize(
    "latitude, longitude, crs",
    [
        (56.343, -2.803, "EPSG:32630"),
        (70.0, 23.0, "EPSG:32634"),
        (-37.95, 145.03, "EPSG:28355"),
        (-16.8, 179.9999, "EPSG:32760"),
        (56.343, -2.803, "EPSG:3857"),
        (56.343, -2.803, "EPSG:4326"),
    ],
)
def test_the_window_lies_as_it_says(shows, latitude, longitude, crs):
    """Sides and upward direction by geographiclib: ground = px / dpi * 25.4 * scale, azimuth true."""
    played = play_hole(course_at(latitude, longitude, crs), 1)
    plan = plan_window(played, shows, PANEL, crs)
    corners = to_degrees(crs, plan.grid.corners())
    top_left, top_right, bottom_right, bottom_left = corners
    height_m = 2100 / 300 * 25.4 / 1000 * plan.scale
    width_m = 1275 / 300 * 25.4 / 1000 * plan.scale
    left = Geodesic.WGS84.Inverse(*bottom_left, *top_left)
    right = Geodesic.WGS84.Inverse(*bottom_right, *top_right)
    for side in (left, right):
        assert side["s12"] == pytest.approx(height_m, rel=1e-4)
    for a, b in ((top_left, top_right), (bottom_left, bottom_right)):
        assert Geodesic.WGS84.Inverse(*a, *b)["s12"] == pytest.approx(width_m, rel=1e-4)
    turned = (left["azi1"] + right["azi1"]) / 2 % 360
    assert turned == pytest.approx(plan.up_azimuth, abs=0.02)
    assert 0 <= plan.up_azimuth < 360


def test_play_points_up_and_the_approach_does(course):
    played = play_hole(course, 1)
    hole = plan_window(played, "hole", PANEL, course.crs)
    tee, middle = longest_tee(played).reference, played.green.middle
    ends = to_degrees(course.crs, played.frame.from_frame(course.crs)(np.array([tee, middle])))
    true = Geodesic.WGS84.Inverse(*ends[0], *ends[1])["azi1"] % 360
    assert hole.up_azimuth == pytest.approx(true, abs=0.005)
    px = hole.grid.to_pixels(played.frame.from_frame(course.crs)(np.array([tee, middle])))
    assert px[0][0] == pytest.approx(px[1][0], abs=0.2)
    assert px[1][1] < px[0][1]

    green = plan_window(played, "green", PANEL, course.crs)
    assert green.up_azimuth == pytest.approx(played.green.azimuth)
    front_back = played.frame.from_frame(course.crs)(np.array([played.green.front, played.green.back]))
    px = green.grid.to_pixels(front_back)
    assert px[0][0] == pytest.approx(px[1][0], abs=0.2)
    assert px[1][1] < px[0][1]


def test_the_largest_scale_that_holds_the_hole(course):
    played = play_hole(course, 1)
    plan = plan_window(played, "hole", PANEL, course.crs, margin_mm=8)
    to_course = played.frame.from_frame(course.crs)
    shown = [played.drawn.points, *(np.atleast_2d(tee.reference) for tee in played.tees)]
    shown.append(np.array(played.green.geometry.exterior.coords))
    at = plan.panel.to_mm(plan.grid.to_pixels(to_course(np.concatenate(shown))))
    assert at.min() > 8 - 0.02
    assert (at < np.array([107.95, 177.8]) - 8 + 0.02).all()
    assert plan.scale == round(plan.scale)
    smaller = plan.scale - 1
    ground_mm = np.ptp(at, axis=0) * plan.scale / smaller
    around = 10 * YARD * 1000 / smaller
    assert ground_mm[1] + around > 177.8 - 16 or ground_mm[0] + 2 * around > 107.95 - 16


def test_a_given_scale_is_kept_even_where_the_hole_does_not_fit(course):
    played = play_hole(course, 1)
    plan = plan_window(played, "hole", PANEL, course.crs, scale=600)
    assert plan.scale == 600
    assert "cut off" in plan.remarks[0]
    assert plan_window(played, "hole", PANEL, course.crs, scale=5000).remarks == ()


def test_no_green_is_shown_larger_than_the_rules_allow(course):
    """Rules of Golf, Rule 4.3a, interpretation: 3/8 inch to 5 yards; 5 yd are 180 in, so 1:480."""
    assert GREEN_LIMIT == 5 * 36 / (3 / 8)
    played = play_hole(course, 1)
    assert plan_window(played, "green", PANEL, course.crs).scale == 480
    held = plan_window(played, "green", PANEL, course.crs, scale=200)
    assert held.scale == 480
    assert "4.3a" in held.remarks[0]
    assert plan_window(played, "hole", Panel(900, 1400, 50), course.crs).scale == 480
    lifted = plan_window(played, "green", PANEL, course.crs, scale=200, above_limit=True)
    assert (lifted.scale, lifted.remarks) == (200, ())
    assert plan_window(played, "green", PANEL, course.crs, above_limit=True).scale < 480
    assert plan_window(played, "green", Panel(30, 30, 300), course.crs).scale > 480


def test_worked_values_of_the_largest_page(course):
    """4 1/4 x 7 in at 300 dpi is 1275 x 2100 px; at 1:480 it covers 56.67 x 93.33 yd, a pixel 4.06 cm."""
    plan = plan_window(play_hole(course, 1), "green", PANEL, course.crs)
    assert (plan.grid.width, plan.grid.height) == (1275, 2100)
    assert np.array(plan.ground) / YARD == pytest.approx([56.67, 93.33], abs=0.005)
    assert plan.ground[0] / plan.grid.width == pytest.approx(0.0406, abs=5e-5)


def test_the_feature_in_the_window_layer(course):
    plan = plan_window(play_hole(course, 1), "green", Panel(100, 100, 300), course.crs)
    feature = window_feature(plan)
    assert np.array(feature.geometry.exterior.coords)[:4] == pytest.approx(plan.grid.corners())
    assert dict(feature.attributes) == {
        "hole": 1,
        "shows": "green",
        "up_azimuth": plan.up_azimuth,
        "scale": 480.0,
        "width_mm": round(1181 / 300 * 25.4, 6),
        "height_mm": round(1181 / 300 * 25.4, 6),
    }
    assert plan.name == "green_01"


def test_a_hole_without_green_has_no_window_of_it(course):
    with pytest.raises(YardwrightError, match="no green"):
        plan_window(play_hole(course, 4), "green", PANEL, course.crs)
    assert plan_window(play_hole(course, 4), "hole", PANEL, course.crs).hole == 4


@pytest.mark.parametrize("size", [(0, 1, 300), (100, -1, 300), (1, 1, 0), (math.nan, 1, 1), (9e9, 9e9, 300)])
def test_panels_that_are_none(size):
    with pytest.raises(YardwrightError):
        Panel(*size)


def test_margin_and_scale_that_make_no_sense(course):
    played = play_hole(course, 1)
    with pytest.raises(YardwrightError, match="margin"):
        plan_window(played, "hole", PANEL, course.crs, margin_mm=60)
    for scale in (0, -5, math.nan):
        with pytest.raises(YardwrightError, match="means nothing"):
            plan_window(played, "hole", PANEL, course.crs, scale=scale)


def test_a_crs_that_bends_the_ground_is_refused():
    """Degrees across the antimeridian: the picture would run the long way round the Earth."""
    course = course_at(-16.8, 179.9995, "EPSG:4326")
    with pytest.raises(YardwrightError, match="bends the ground"):
        plan_window(play_hole(course, 1), "hole", PANEL, course.crs)


@settings(deadline=None, max_examples=40)
@given(
    width=st.floats(20, 300),
    height=st.floats(20, 300),
    dpi=st.floats(30, 300),
    scale=st.floats(480, 5000),
)
def test_pixels_and_millimetres_agree(width, height, dpi, scale):
    course = course_at()
    plan = plan_window(play_hole(course, 1), "green", Panel(width, height, dpi), course.crs, scale)
    assert plan.grid.width == pytest.approx(width / 25.4 * dpi, abs=0.5001)
    pixel = plan.ground[0] / plan.grid.width
    assert pixel == pytest.approx(25.4 / dpi * scale / 1000, rel=1e-9)
    assert plan.ground[1] / plan.grid.height == pytest.approx(pixel, rel=1e-9)


# --- placements ----------------------------------------------------------------------------------------


def rows_of(course, number, shows, scale=None):
    index = CourseIndex(course)
    played = play_hole(course, number, index)
    plan = plan_window(played, shows, PANEL, course.crs, scale)
    tables = measure_hole(course, number, index)
    features = [f for f in course.features if not f.holes or number in f.holes]
    return plan, played, tables, placements(plan, played, course, tables, features)


def test_every_symbol_has_its_place(course):
    plan, played, tables, rows = rows_of(course, 1, "hole")
    found = [(row.symbol, row.feature_id) for row in rows]
    assert {"approach", "front", "middle", "back", "turn", "tee", "plate", "marker", "marker_proposed"} <= {
        symbol for symbol, _ in found
    }
    assert [fid for symbol, fid in found if symbol == "tee"] == [9, 2]
    assert {("bunker", 4), ("bunker", 5), ("penalty_area", 8)} <= set(found)
    assert ("bunker", 6) not in found
    assert ("tree", 12) not in found
    for row in rows:
        assert row.window == "hole_01"
        assert 0 <= row.x_px <= 1275
        assert 0 <= row.y_px <= 2100
        assert row.x_mm == pytest.approx(row.x_px / 300 * 25.4)
        assert row.y_mm == pytest.approx(row.y_px / 300 * 25.4)


def test_distances_between_symbols_are_those_on_the_ground(course):
    """Millimetres times scale: the blue plate to the green's middle, by geographiclib."""
    plan, played, tables, rows = rows_of(course, 1, "hole")
    at = {(row.symbol, row.feature_id): np.array([row.x_mm, row.y_mm]) for row in rows}
    apart = np.hypot(*(at["plate", 9] - at["middle", 3])) * plan.scale / 1000
    plate = course.features[8].geometry.coords[0]
    middle = played.frame.from_frame(course.crs)(np.array([played.green.middle]))[0]
    ends = to_degrees(course.crs, [plate, middle])
    assert apart == pytest.approx(Geodesic.WGS84.Inverse(*ends[0], *ends[1])["s12"], abs=0.01)


def test_texts(course):
    plan, played, tables, rows = rows_of(course, 1, "hole")
    texts = {(row.symbol, row.feature_id): row.text for row in rows}
    longest = longest_tee(played)
    own = next(r for r in tables["distances"] if r.kind == "green" and r.tee_set == longest.tee_set)
    assert texts["front", 3] == str(math.floor(own.reach / YARD + 0.5))
    assert texts["back", 3] == str(math.floor(own.clear / YARD + 0.5))
    assert texts["tee", 2] == "red"
    assert texts["plate", 9] == "blue"
    assert texts["marker", 7] == texts["marker_proposed", 7] == "150"
    assert texts["bunker", 4] == "Left trap"
    bunker = next(r for r in tables["distances"] if r.feature_id == 5 and r.tee_set == longest.tee_set)
    ends = [math.floor(value / YARD + 0.5) for value in (bunker.reach, bunker.clear)]
    assert texts["bunker", 5] == f"{ends[0]} to {ends[1]}"

    plan, played, tables, rows = rows_of(course, 1, "green")
    texts = {row.symbol: row.text for row in rows}
    assert texts["front"] == "0"
    assert texts["back"] == str(math.floor(played.green.depth / YARD + 0.5))


def test_a_long_area_stands_inside_the_part_that_shows(course):
    plan, played, tables, rows = rows_of(course, 1, "hole")
    river = next(row for row in rows if row.symbol == "penalty_area")
    place = plan.grid.to_ground([(river.x_px, river.y_px)])[0]
    assert course.features[7].geometry.buffer(1e-6).contains(Point(place))


def test_a_marker_goes_to_where_it_would_be_true(course):
    plan, played, tables, rows = rows_of(course, 1, "hole")
    proposed = next(row for row in rows if row.symbol == "marker_proposed")
    place = plan.grid.to_ground([(proposed.x_px, proposed.y_px)])[0]
    middle = played.frame.from_frame(course.crs)(np.array([played.green.middle]))[0]
    ends = to_degrees(course.crs, [place, middle])
    assert Geodesic.WGS84.Inverse(*ends[0], *ends[1])["s12"] == pytest.approx(150 * YARD, abs=0.001)


def test_a_hole_without_green_has_a_window_without_green_symbols(course):
    plan, played, tables, rows = rows_of(course, 4, "hole")
    assert not {"front", "middle", "back", "approach"} & {row.symbol for row in rows}
