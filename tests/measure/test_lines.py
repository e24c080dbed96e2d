"""Lines asked together against the same asked one by one, and against shapely."""

import numpy as np
import pytest
from shapely.geometry import LineString, Point, box
from yardwright.measure.line import LineOfPlay
from yardwright.measure.lines import Lines
from yardwright.model.geometry import outlines

WAYS = [
    LineOfPlay([(0, 0), (0, 200), (120, 320), (60, 450)]),
    LineOfPlay([(10, 230), (120, 320), (60, 450)]),
    LineOfPlay([(40, 380), (60, 450)]),
]


@pytest.fixture(scope="module")
def lines():
    """Lines of three, two and one leg: the tees of one hole, two of them ahead of a turn point."""
    return Lines(WAYS)


@pytest.fixture(scope="module")
def points():
    return np.random.default_rng(7).uniform((-150, -80), (250, 560), (400, 2))


@pytest.mark.parametrize("place", range(3))
def test_stations_are_those_of_shapely_between_the_ends(lines, points, place):
    way = WAYS[place]
    stations = lines.stations(points, np.full(len(points), place))
    within = (stations > 0) & (stations < way.length)
    assert within.any() and not within.all()
    for point, station, inside in zip(points, stations.tolist(), within.tolist()):
        assert way.station(point) == pytest.approx(station, abs=1e-9)
        if inside:
            assert way.shape.project(Point(point)) == pytest.approx(station, abs=1e-9)
        else:
            assert way.shape.project(Point(point)) in (0.0, pytest.approx(way.length))


def test_places_directions_and_bends(lines):
    stations = np.array([-20.0, 0.0, 150.0, 200.0, 300.0, 900.0])
    for place, way in enumerate(WAYS):
        which = np.full(len(stations), place)
        assert np.allclose(lines.at(stations, which), [way.at(s) for s in stations])
        assert np.allclose(lines.directions(stations, which), [way.direction_at(s) for s in stations])
        bends = [any(5.0 < turn < s for turn in way.turns) for s in stations]
        assert lines.bends_between(np.full(len(stations), 5.0), stations, which).tolist() == bends


def test_sides_by_the_sense_of_the_triangle(lines):
    """Outside a bend, where two legs are equally near, the bisector decides."""
    across = np.array([(-5.0, 100.0), (5.0, 100.0), (-30.0, 230.0), (60.0, 200.0), (140.0, 325.0)])
    assert lines.sides(across, np.zeros(5, dtype=int)).tolist() == ["left", "right", "left", "right", "right"]
    assert lines.sides(across[4:], np.array([1])).tolist() == ["right"]


def test_crossings_and_extents_of_one_shape_on_every_line(lines):
    shape = box(-20, 300, 200, 400)
    vertices = outlines(np.array([shape] * 3, dtype=object))
    enter, leave = lines.crossings(vertices, np.ones(3, dtype=bool), np.arange(3))
    near, far, farthest = lines.extents(vertices, np.arange(3))
    for place, way in enumerate(WAYS):
        shared = way.shape.intersection(shape)
        ends = [way.shape.project(Point(xy)) for xy in (shared.coords[0], shared.coords[-1])]
        assert (enter[place], leave[place]) == pytest.approx((min(ends), max(ends)))
        edge = LineString(shape.exterior.coords)
        dense = way.stations([edge.interpolate(s).coords[0] for s in np.arange(0, edge.length, 0.05)])
        assert near[place] == pytest.approx(dense.min(), abs=0.06)
        assert far[place] == pytest.approx(dense.max(), abs=0.06)
        assert way.station(farthest[place]) == pytest.approx(far[place], abs=1e-3)
