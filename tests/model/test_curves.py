"""The smooth curve through clicked points."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.interpolate import CubicHermiteSpline
from shapely.geometry import LineString, Polygon
from yardwright.model.curves import smooth_through

FEW = settings(max_examples=40, deadline=None, derandomize=True)
PLACES = st.lists(
    st.tuples(st.integers(-200, 200), st.integers(-200, 200)), min_size=3, max_size=12, unique=True
)


@FEW
@given(PLACES, st.booleans())
def test_it_goes_through_every_point_in_order(points, closed):
    curve = smooth_through(points, closed)
    wanted = [*points, points[0]] if closed else points
    assert np.array_equal(curve[::8], np.array(wanted, dtype=float))


@FEW
@given(PLACES)
def test_turned_moved_and_mirrored_it_is_the_same_curve(points):
    turned = np.array([[0.6, -0.8], [0.8, 0.6]])
    mirrored = np.array([[-1.0, 0.0], [0.0, 1.0]])
    points = np.array(points, dtype=float)
    for way in (turned, mirrored):
        there = smooth_through(points @ way + (7, -3), True)
        assert np.allclose(there, smooth_through(points, True) @ way + (7, -3), atol=1e-9)
    assert np.allclose(smooth_through(points[::-1], False), smooth_through(points, False)[::-1], atol=1e-9)


def test_against_the_hermite_form_of_scipy():
    """Each span of the curve is the cubic of its two points and their tangents, which scipy knows of too."""
    points = np.array([(0, 0), (30, 5), (60, 40), (50, 90)], dtype=float)
    knots = np.concatenate([[0.0], np.cumsum(np.sqrt(np.hypot(*np.diff(points, axis=0).T)))])

    def tangent(i):
        before, ahead = knots[i] - knots[i - 1], knots[i + 1] - knots[i]
        return (
            (points[i] - points[i - 1]) / before
            - (points[i + 1] - points[i - 1]) / (before + ahead)
            + (points[i + 1] - points[i]) / ahead
        )

    span = CubicHermiteSpline(knots[1:3], points[1:3], [tangent(1), tangent(2)])
    at = np.linspace(knots[1], knots[2], 9)
    assert np.allclose(smooth_through(points, False)[8:17], span(at), atol=1e-9)


def test_a_circle_clicked_at_eight_points_comes_out_round():
    turns = np.radians(np.arange(0, 360, 45))
    curve = smooth_through(15 * np.column_stack([np.cos(turns), np.sin(turns)]), True)
    away = np.hypot(*curve.T)
    assert np.ptp(away) < 0.02 * 15  # straight sides would be 7.6 per cent off
    assert Polygon(curve).is_valid and np.array_equal(curve[0], curve[-1])


def test_uneven_clicks_make_no_loop():
    curve = smooth_through([(0, 0), (100, 0), (101, 1), (101, 100)], False)
    assert LineString(curve).is_simple


def test_two_points_and_doubled_points():
    assert smooth_through([(0, 0), (5, 5)], False).tolist() == [[0, 0], [5, 5]]
    assert smooth_through([(0, 0), (5, 5)], True).tolist() == [[0, 0], [5, 5], [0, 0]]
    assert smooth_through([], False).shape == (0, 2)
    once, twice = [(0, 0), (9, 1), (5, 8)], [(0, 0), (0, 0), (9, 1), (9, 1), (5, 8), (0, 0)]
    assert np.array_equal(smooth_through(once, True), smooth_through(twice, True))
    assert smooth_through(once, False)[-1].tolist() == pytest.approx([5, 8])
