"""Coordinates as arrays, and the functions that shapely 1.8 and 2 do differently, against plain shapely."""

import numpy as np
import pytest
from shapely.geometry import LineString, MultiPolygon, Point, Polygon, box
from yardwright.model import geometry
from yardwright.model.geometry import (
    bounds_array,
    contained,
    coordinates,
    discs,
    distances,
    intersections,
    map_points,
    meeting,
    nearest_to,
    outlines,
)

RING = Polygon([(0, 0), (9, 0), (9, 9), (0, 9)], [[(3, 3), (6, 3), (6, 6)]])
SHAPES = [
    box(0, 0, 2, 3),
    RING,
    LineString([(1, 1), (5, 2), (7, 7)]),
    Point(4, 5),
    MultiPolygon([box(0, 0, 1, 1), RING.buffer(-1)]),
]


@pytest.fixture(params=["as installed", "one by one"])
def way(request, monkeypatch):
    """Both ways: the arrays of shapely 2 where it is installed, and one geometry after another as for 1.8."""
    if request.param == "one by one":
        monkeypatch.setattr(geometry, "_VECTORISED", False)


def test_coordinates(way):
    assert len(coordinates(RING)) == 5 + 4
    assert coordinates(Point(4, 5)).tolist() == [[4, 5]]
    assert coordinates(LineString([(1, 1, 9), (2, 2, 9)])).tolist() == [[1, 1], [2, 2]]


@pytest.mark.filterwarnings("ignore:The 'shapely.ops.transform:DeprecationWarning")
def test_map_points_keeps_rings_and_parts(way):
    moved = map_points(SHAPES, lambda points: points + (10, 20))
    for before, after in zip(SHAPES, moved):
        assert after.geom_type == before.geom_type and after.area == pytest.approx(before.area)
        assert np.allclose(coordinates(after), coordinates(before) + (10, 20))
    assert map_points([], lambda points: points) == []


def test_bounds(way):
    assert bounds_array(SHAPES).tolist() == [list(shape.bounds) for shape in SHAPES]
    assert bounds_array([]).shape == (0, 4)


def test_outlines_know_their_owner_and_their_ring(way):
    vertices = outlines(SHAPES)
    for place, shape in enumerate(SHAPES):
        assert np.allclose(vertices.points[vertices.owner == place], coordinates(shape))
    assert [len(set(vertices.chain[vertices.owner == place])) for place in range(5)] == [1, 2, 1, 1, 3]
    assert vertices.starts.tolist() == [0, 5, 14, 17, 18]
    single = outlines([box(0, 0, 2, 3)])
    assert set(single.owner) == set(single.chain) == {0} and len(single.points) == 5


def test_distances_nearest_points_and_cuts(way):
    other = LineString([(-5, 4), (20, 6)])
    assert distances(SHAPES, other).tolist() == pytest.approx([shape.distance(other) for shape in SHAPES])
    for shape, point in zip(SHAPES, nearest_to(SHAPES, other)):
        assert shape.distance(Point(point)) == pytest.approx(0, abs=1e-9)
        assert other.distance(Point(point)) == pytest.approx(shape.distance(other), abs=1e-9)
    for shape, shared in zip(SHAPES, intersections(SHAPES, other)):
        assert shared.equals(shape.intersection(other))


def test_each_with_its_partner(way):
    others = [shape.centroid.buffer(1 + place) for place, shape in enumerate(SHAPES)]
    pairs = list(zip(SHAPES, others))
    assert distances(SHAPES, others).tolist() == pytest.approx([one.distance(other) for one, other in pairs])
    for point, (one, other) in zip(nearest_to(SHAPES, others), pairs):
        assert other.distance(Point(point)) == pytest.approx(one.distance(other), abs=1e-9)
    for shared, (one, other) in zip(intersections(SHAPES, others), pairs):
        assert shared.equals(one.intersection(other))
    assert contained(SHAPES, others).tolist() == [one.within(other) for one, other in pairs]
    assert meeting(SHAPES, others).tolist() == [one.intersects(other) for one, other in pairs]
    assert nearest_to([], []).shape == (0, 2)


def test_contained_and_meeting(way):
    within = box(-1, -1, 6, 6)
    assert contained(SHAPES, within).tolist() == [shape.within(within) for shape in SHAPES]
    assert contained([], within).tolist() == []
    beside = box(8.5, -1, 20, 20)
    assert meeting(SHAPES, beside).tolist() == [shape.intersects(beside) for shape in SHAPES]


def test_discs_lie_half_outside_their_circle(way):
    for disc, centre, radius in zip(discs([(3, 4), (-5, 0)], [2.0, 7.0], 32), [(3, 4), (-5, 0)], [2.0, 7.0]):
        away = np.hypot(*(coordinates(disc) - centre).T)
        inwards = radius - disc.exterior.distance(Point(centre))
        assert len(away) == 33 and np.ptp(away) < 1e-12
        assert away[0] - radius == pytest.approx(inwards)
        assert disc.area == pytest.approx(np.pi * radius**2, rel=0.002)
