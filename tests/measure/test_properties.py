"""What must hold for any course: figures do not change with place and direction, mirrors swap sides, and
plain dense sampling finds the same figures."""

import math
from dataclasses import replace
from decimal import ROUND_FLOOR, Decimal

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from shapely.affinity import scale
from shapely.geometry import LineString, Point, Polygon
from yardwright.measure.hole import play_hole
from yardwright.measure.line import LineOfPlay, chords
from yardwright.measure.markers import check_markers
from yardwright.measure.units import YARD, whole

from tests.makers import area, circle, course, feature, line, only, spot, tables, tee

FEW = settings(max_examples=25, deadline=None, derandomize=True)
MORE = settings(max_examples=60, deadline=None, derandomize=True)


def blob(random, x, y, low, high, corners=14):
    """A simple polygon about a point, not convex as a rule."""
    turns = (np.arange(corners) + random.uniform(0.1, 0.9, corners)) * (2 * math.pi / corners)
    radii = random.uniform(low, high, corners)
    return Polygon(np.column_stack([x + radii * np.cos(turns), y + radii * np.sin(turns)]))


@st.composite
def drawings(draw):
    """Features and the line of one hole, in yards: up to two bends, bunkers, a stream, fairway, markers."""
    random = np.random.default_rng(draw(st.integers(0, 2**32 - 1)))
    bends = draw(st.integers(0, 2))
    points, heading = [np.array([0.0, 0.0])], random.uniform(-0.4, 0.4)
    for _ in range(bends + 1):
        points.append(
            points[-1] + random.uniform(110, 220) * np.array([math.sin(heading), math.cos(heading)])
        )
        heading += random.choice([-1, 1]) * random.uniform(0.25, 0.9)
    way = LineString(points)
    features = [
        feature("green", 1, blob(random, *points[-1], 9, 17), 1),
        tee(2, *points[0], tee_set="Back"),
        tee(3, *(points[0] + 0.25 * (points[1] - points[0]) + (9, 0)), tee_set="Front"),
        feature("fairway", 4, way.buffer(random.uniform(12, 22), 4), 1),
    ]
    for fid in range(5, 10):
        place = way.interpolate(random.uniform(0.15, 1.0) * way.length)
        beside = random.uniform(-45, 45, 2)
        features.append(feature("bunker", fid, blob(random, place.x + beside[0], place.y + beside[1], 3, 9)))
    stream = points[0] * 0.6 + points[1] * 0.4
    features.append(
        feature("penalty_area", 10, LineString([stream + (-300, 20), stream + (300, -10)]).buffer(4, 2))
    )
    for fid in (11, 12):
        place = way.interpolate(way.length - random.uniform(60, 190))
        features.append(
            feature(
                "marker",
                fid,
                spot(place.x + random.uniform(-6, 6), place.y + random.uniform(-3, 3)),
                1,
                states_yd=120.0,
            )
        )
    return features, way


def figures(a_course):
    """Every figure but coordinates and directions, by table, hole, set, feature and station."""
    found = tables(a_course)
    kept = {}
    for name, rows in vars(found).items():
        if name == "problems":
            continue
        for number, row in enumerate(rows):
            key = (name, getattr(row, "tee_set", ""), getattr(row, "feature_id", None) or number)
            drop = ("proposed_x", "proposed_y", "move_azimuth", "approach_azimuth")
            kept[key] = {field: value for field, value in vars(row).items() if field not in drop}
    return kept


def differences(ours, theirs, within):
    found = []
    if set(ours) != set(theirs):
        return [f"rows: {set(ours) ^ set(theirs)}"]
    for key, row in ours.items():
        for field, value in row.items():
            other = theirs[key][field]
            if isinstance(value, float) and isinstance(other, float):
                if abs(value - other) > within:
                    found.append((key, field, value, other))
            elif value != other:
                found.append((key, field, value, other))
    return found


@FEW
@given(drawings(), st.floats(-180, 180), st.floats(-1500, 1500), st.floats(-1500, 1500))
def test_figures_do_not_change_when_the_course_is_turned_and_moved(drawing, turned, east, north):
    features, way = drawing
    here = figures(course(features, {1: way}, {1: 4}))
    there = figures(course(features, {1: way}, {1: 4}, turned=turned, moved=(east, north)))
    assert differences(here, there, 0.0005) == []


@FEW
@given(drawings())
def test_a_mirror_swaps_left_and_right_and_nothing_else(drawing):
    features, way = drawing

    def mirrored(shape):
        return scale(shape, -1, 1, origin=(0, 0))

    here = figures(course(features, {1: way}, {1: 4}))
    other = [replace(one, geometry=mirrored(one.geometry)) for one in features]
    there = figures(course(other, {1: mirrored(way)}, {1: 4}))
    swap = {"left": "right", "right": "left"}
    for row in there.values():
        for field in ("side", "turn_side"):
            if field in row:
                row[field] = swap.get(row[field], row[field])
        if "left" in row:
            row["left"], row["right"] = row["right"], row["left"]
    assert differences(here, there, 0.0005) == []


@FEW
@given(drawings())
def test_reach_clear_aside_and_stations_by_dense_sampling(drawing):
    """Sampled every quarter of a yard along outlines that the corridor does not cut."""
    features, way = drawing
    a_course = course(features, {1: way}, {1: 4})
    played = play_hole(a_course, 1)
    rows = tables(a_course).distances
    for view in played.tees:
        line_of_play = view.line.shape
        for one in played.features:
            if one.kind != "bunker" or not line_of_play.buffer(59 * YARD, 32, cap_style=2).contains(
                one.geometry
            ):
                continue
            row = only(rows, feature_id=one.fid, tee_set=view.tee_set)
            edge = one.geometry.exterior
            outline = [edge.interpolate(s) for s in np.arange(0, edge.length, 0.25 * YARD)]
            samples = np.array([(p.x, p.y) for p in outline] + list(edge.coords)) / YARD
            away = np.hypot(*(samples - view.reference / YARD).T)
            inside = one.geometry.contains(Point(view.reference))
            assert row.reach == pytest.approx(0 if inside else away.min(), abs=0.02)
            assert row.reach <= (0 if inside else away.min()) + 1e-9
            assert row.clear == pytest.approx(away.max(), abs=1e-6)
            stations = [line_of_play.project(Point(*(xy * YARD))) / YARD for xy in samples]
            # On the bisector of a bend the station jumps: sampled too, so a little room.
            assert row.station_near <= min(stations) + 0.02 and row.station_far >= max(stations) - 0.02
            if row.side == "across":
                met = meetings(view.line.points / YARD, np.array(edge.coords) / YARD)
                assert row.enter == pytest.approx(0 if inside else min(met), abs=1e-6)
                if not one.geometry.contains(Point(view.line.points[-1])):
                    assert row.leave == pytest.approx(max(met), abs=1e-6)
            else:
                beside = min(line_of_play.distance(Point(*(xy * YARD))) for xy in samples) / YARD
                assert row.aside == pytest.approx(beside, abs=0.02)


def meetings(way, outline):
    """Stations at which the legs of a way meet the sides of an outline, by Cramer's rule, two by two."""
    found, walked = [], 0.0
    for p, q in zip(way[:-1], way[1:]):
        leg = q - p
        for a, b in zip(outline[:-1], outline[1:]):
            side = b - a
            area_of_both = leg[0] * side[1] - leg[1] * side[0]
            if area_of_both:
                t = ((a - p)[0] * side[1] - (a - p)[1] * side[0]) / area_of_both
                u = ((a - p)[0] * leg[1] - (a - p)[1] * leg[0]) / area_of_both
                if 0 <= t <= 1 and 0 <= u <= 1:
                    found.append(walked + t * np.hypot(*leg))
        walked += np.hypot(*leg)
    return found


@FEW
@given(drawings())
def test_order_of_figures(drawing):
    features, way = drawing
    found = tables(course(features, {1: way}, {1: 4}))
    for row in found.distances:
        assert row.reach <= row.clear
        assert row.station_near <= row.station_far
        assert (row.enter is None) == (row.leave is None) == (row.side != "across")
        if row.enter is not None and row.kind != "green":
            assert row.enter <= row.leave and row.aside == 0
            assert row.reach <= row.enter + 1e-9  # straight is never longer than along the line
        else:
            assert row.kind == "green" or row.aside > 0
    for tee_set in ("Back", "Front"):
        turns = [row.turn_station for row in found.doglegs if row.tee_set == tee_set]
        assert turns == sorted(turns)
        length = only(found.lengths, tee_set=tee_set).length
        for row in found.doglegs:
            if row.tee_set == tee_set:
                assert row.turn_station + row.to_green == pytest.approx(length, abs=1e-9)
        for row in found.layups:
            if row.tee_set == tee_set:
                assert row.station + row.remaining == pytest.approx(length, abs=1e-9)


@FEW
@given(drawings())
def test_a_marker_put_where_it_is_proposed_measures_what_it_states(drawing):
    """As long as no bend lies between where it stood and where it is put."""
    features, way = drawing
    a_course = course(features, {1: way}, {1: 4})
    played = play_hole(a_course, 1)
    to_frame = played.frame.to_frame(a_course.crs)
    for row in check_markers(a_course):
        assume(row.proposed_x is not None)
        was = next(f for f in played.features if f.kind == "marker" and str(f.fid) == row.marker_id)
        to = to_frame([(row.proposed_x, row.proposed_y)])[0]
        stations = [played.drawn.station(xy) for xy in (was.geometry.coords[0], to)]
        if any(min(stations) < turn < max(stations) for turn in played.drawn.turns):
            continue
        moved = tuple(
            replace(f, geometry=Point(row.proposed_x, row.proposed_y))
            if f.kind == "marker" and str(f.fid) == row.marker_id
            else f
            for f in a_course.features
        )
        again = next(
            r for r in check_markers(replace(a_course, features=moved)) if r.marker_id == row.marker_id
        )
        assert again.measured == pytest.approx(row.states, abs=1e-5)
        assert again.verdict == "true" and again.move_m < 1e-4
        assert row.move_m == pytest.approx(abs(row.error), abs=1e-6)


@MORE
@given(st.integers(0, 2**32 - 1), st.floats(-10, 10), st.floats(-10, 10), st.floats(0, 2 * math.pi))
def test_chords_by_brute_force(seed, x, y, turned):
    shape = blob(np.random.default_rng(seed), 0, 0, 4, 20)
    direction = np.array([math.cos(turned), math.sin(turned)])
    steps = np.arange(-45, 45, 0.02)
    inside = np.array([shape.contains(Point(*((x, y) + s * direction))) for s in steps[::5]])
    edges = np.flatnonzero(np.diff(inside.astype(int)))
    pieces = [piece for piece in chords(shape, (x, y), direction) if piece[1] - piece[0] > 0.3]
    # Every piece found is inside from end to end, and all that is inside is in a piece.
    for low, high in pieces:
        for s in np.linspace(low + 1e-6, high - 1e-6, 9):
            assert shape.buffer(1e-6).contains(Point(*((x, y) + s * direction)))
        for s in (low - 1e-3, high + 1e-3):
            assert not shape.buffer(-1e-4).contains(Point(*((x, y) + s * direction)))
    for s in steps[::5][inside]:
        assert any(low - 1e-9 <= s <= high + 1e-9 for low, high in chords(shape, (x, y), direction))
    assert len(pieces) <= len(edges) // 2 + 1


@MORE
@given(
    st.lists(st.tuples(st.floats(-300, 300), st.floats(-300, 300)), min_size=2, max_size=6),
    st.integers(0, 2**32 - 1),
)
def test_stations_by_shapely(points, seed):
    """The station of a point beside the line is the one shapely projects it to, or equally near."""
    steps = np.hypot(*np.diff(np.array(points), axis=0).T)
    assume((steps > 1).all())
    way = LineOfPlay(points)
    assert way.length == pytest.approx(way.shape.length)
    others = np.random.default_rng(seed).uniform(-320, 320, (12, 2))
    for point, station in zip(others, way.stations(others)):
        held = min(max(station, 0.0), way.length)
        assert np.hypot(*(way.at(held) - point)) == pytest.approx(way.shape.distance(Point(point)), abs=1e-6)
        assert np.allclose(way.at(held), np.array(way.shape.interpolate(held).coords[0]), atol=1e-6)


@MORE
@given(st.decimals(min_value=-2000, max_value=2000, places=3))
def test_whole_figures_by_decimal(value):
    """Halves up: floor(x + 1/2) in exact arithmetic, for every figure with three decimals."""
    exact = (value + Decimal("0.5")).to_integral_value(ROUND_FLOOR)
    assert whole(float(value)) == int(exact)


@pytest.mark.parametrize("value", [None, float("nan"), float("inf")])
def test_no_figure_stays_none(value):
    assert whole(value) is None


@MORE
@given(st.integers(0, 700))
def test_what_arithmetic_leaves_of_a_half_goes_up(yards):
    assert whole((yards + 0.5) * YARD / YARD) == yards + 1
    assert whole(yards + 0.5 - 1e-7) == yards + 1
    assert whole(yards + 0.498) == yards


def test_two_sets_on_one_spot_have_equal_figures():
    pads = [tee(2, 0, -5, tee_set="A"), tee(3, 0, -5, tee_set="B")]
    green, bunker = (
        feature("green", 1, circle(0, 400, 15), 1),
        feature("bunker", 5, area((9, 200), (30, 220), (20, 240))),
    )
    found = tables(course([green, *pads, bunker], {1: line((0, -5), (0, 400))}, {1: 4}))
    first, second = (only(found.distances, kind="bunker", tee_set=name) for name in "AB")
    assert {**vars(first), "tee_set": "B"} == vars(second)
