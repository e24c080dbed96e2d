"""Areas and cuts of shapely against QGIS's own geometry, and lengths against QgsDistanceArea."""

import numpy as np
import pytest
from shapely.geometry import Polygon
from yardwright.measure.hole import play_hole
from yardwright.measure.units import YARD

from tests.geodesy import ahead, azimuth, course_of, ring
from tests.makers import circle, feature, only, straight_hole, tables


@pytest.fixture
def qgis(qgis_app):
    import qgis.core

    return qgis.core


def wobbly(seed, x=0.0, y=400.0):
    """A green's outline with a hollow in it now and then; always simple, for it is drawn about its middle."""
    random = np.random.default_rng(seed)
    corners = 24
    turns = np.sort(random.uniform(0, 2 * np.pi, corners))
    radii = random.uniform(8, 18, corners)
    outline = Polygon(np.column_stack([x + radii * np.cos(turns), y + radii * np.sin(turns)])).buffer(0)
    return outline.difference(circle(x + 4, y + 3, 2)) if seed % 2 else outline


@pytest.mark.parametrize("seed", range(6))
def test_area_depth_and_width_by_qgis(qgis, seed):
    a_course = straight_hole(green=wobbly(seed))
    played = play_hole(a_course, 1)
    green = played.green
    theirs = qgis.QgsGeometry()
    theirs.fromWkb(green.geometry.wkb)
    assert green.area == pytest.approx(theirs.area(), rel=1e-9)

    def cut(origin, direction):
        ends = [qgis.QgsPointXY(*(origin + away * direction)) for away in (-100, 100)]
        shared = theirs.intersection(qgis.QgsGeometry.fromPolylineXY(ends))
        pieces = shared.asMultiPolyline() if shared.isMultipart() else [shared.asPolyline()]
        along = [
            sorted(np.dot(np.array([p.x(), p.y()]) - origin, direction) for p in piece) for piece in pieces
        ]
        return [(piece[0], piece[-1]) for piece in along]

    pieces = cut(green.anchor, green.direction)
    holding = [piece for piece in pieces if piece[0] <= 1e-6 and piece[1] >= -1e-6]
    low, high = holding[0] if holding else max(pieces, key=lambda piece: piece[1] - piece[0])
    assert green.depth == pytest.approx(high - low, abs=1e-6)
    assert np.allclose(green.front, green.anchor + low * green.direction, atol=1e-6)
    assert np.allclose(green.middle, green.anchor + (low + high) / 2 * green.direction, atol=1e-6)
    across = np.array([green.direction[1], -green.direction[0]])
    low, high = next(piece for piece in cut(green.middle, across) if piece[0] <= 1e-6 and piece[1] >= -1e-6)
    assert green.width == pytest.approx(high - low, abs=1e-6)


@pytest.mark.parametrize("start", [(-2.803, 56.343), (0.0, 0.0), (145.03, -37.95), (25.0, 70.0)])
def test_areas_and_lengths_on_the_ellipsoid_by_qgis(qgis, start):
    """QgsDistanceArea on WGS 84: the green's area and the hole's legs."""
    turn = ahead(start, 30, 240 * YARD)
    end = ahead(turn, 75, 160 * YARD)
    corners = ring(end, 15, azimuth(end, turn), 36)
    features = [("plate", [start], {"tee_set": "Back"}), ("green", corners, {})]
    found = tables(course_of("EPSG:4326", [start, turn, end], features))

    measure = qgis.QgsDistanceArea()
    project = qgis.QgsProject()
    measure.setSourceCrs(qgis.QgsCoordinateReferenceSystem("EPSG:4326"), project.transformContext())
    measure.setEllipsoid("EPSG:7030")
    way = [qgis.QgsPointXY(*point) for point in (start, turn, end)]
    assert only(found.lengths, hole=1).length == pytest.approx(measure.measureLine(way) / YARD, abs=0.001)
    outline = qgis.QgsGeometry.fromPolygonXY([[qgis.QgsPointXY(*corner) for corner in corners]])
    assert only(found.greens, hole=1).area == pytest.approx(measure.measureArea(outline) / YARD**2, rel=1e-5)


def test_a_bunkers_reach_by_qgis(qgis):
    bunker = wobbly(3, 22, 230)
    a_course = straight_hole(feature("bunker", 5, bunker, 1))
    theirs = qgis.QgsGeometry()
    theirs.fromWkb(bunker.wkb)
    tee = qgis.QgsGeometry.fromPointXY(qgis.QgsPointXY(0, 0))
    way = qgis.QgsGeometry.fromPolylineXY([qgis.QgsPointXY(0, 0), qgis.QgsPointXY(0, 400)])
    row = only(tables(a_course).distances, feature_id=5)
    assert row.reach == pytest.approx(theirs.distance(tee), abs=1e-4)
    assert row.aside == pytest.approx(theirs.distance(way), abs=1e-4)
    assert row.clear == pytest.approx(theirs.hausdorffDistance(tee), abs=1e-4)
