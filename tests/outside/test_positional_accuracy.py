"""The plus-minus against the standard for positional accuracy, and what rounding makes of it."""

import math

import numpy as np
import pytest
from yardwright.measure.accuracy import plus_minus
from yardwright.measure.units import YARD, whole
from yardwright.model.course import ImageDate

from tests.makers import feature, spot

NSSDA = 1.7308
"""95 % horizontal accuracy over RMSE_r: NSSDA, FGDC-STD-007.3-1998, as quoted by others."""


def seen(where):
    return feature("bunker", 1, spot(0, 0), seen_in=where)


@pytest.mark.parametrize("rmse_r, yards", [(0.233, 0.5), (0.467, 1.0)])
def test_the_error_that_half_a_yard_and_a_yard_allow(rmse_r, yards):
    """95 % of distances within 0.5 yd need RMSE_r of at most 0.233 m, within 1 yd 0.467 m (computed). RMSE_r is the
    root of the sum of both axes' squares: each axis has 1 / sqrt 2 of it."""
    images = {"a": ImageDate("a", gsd_m=rmse_r / math.sqrt(2))}
    assert plus_minus(seen("a"), seen("a"), images) / YARD == pytest.approx(yards, abs=0.002)


def test_a_point_stays_within_the_standards_circle_and_a_distance_within_its_own():
    """Simulation with one standard error an axis: 95 % of points within 1.7308 RMSE_r, 95 % of distances within ±."""
    random = np.random.default_rng(5)
    axis = 0.2
    ends = random.normal(0, axis, (2, 60_000, 2))
    assert np.mean(np.hypot(*ends[0].T) <= NSSDA * axis * math.sqrt(2)) == pytest.approx(0.95, abs=0.005)
    measured = np.hypot(*(np.array([150.0, 0.0]) + ends[1] - ends[0]).T)
    images = {"a": ImageDate("a", gsd_m=axis)}
    within = np.abs(measured - 150) <= plus_minus(seen("a"), seen("a"), images)
    assert np.mean(within) == pytest.approx(0.95, abs=0.005)


def test_a_common_shift_of_one_image_cancels():
    images = {"a": ImageDate("a", gsd_m=0.1, rmse_m=2.0), "b": ImageDate("b", gsd_m=0.1, rmse_m=2.0)}
    assert plus_minus(seen("a"), seen("a"), images) < 0.3 < 5 < plus_minus(seen("a"), seen("b"), images)


@pytest.mark.parametrize("sigma, share", [(0.1, 0.92), (0.25, 0.80), (0.5, 0.61), (1.0, 0.37)])
def test_how_often_a_rounded_yardage_is_exactly_right(sigma, share):
    """Chance that the printed yard is the true one: 92, 80, 61 and 37 % (computed)."""
    random = np.random.default_rng(11)
    true = random.uniform(100, 500, 4000)
    measured = true + random.normal(0, sigma, len(true))
    right = np.mean([whole(a) == whole(b) for a, b in zip(true, measured)])
    assert right == pytest.approx(share, abs=0.025)
