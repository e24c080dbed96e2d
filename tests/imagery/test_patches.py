"""The small tools for masks, against scipy's and against sums done by hand."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.ndimage import binary_opening, convolve, maximum_filter, minimum_filter
from yardwright.imagery import patches

RNG = np.random.default_rng(4)
PLANE = RNG.integers(0, 256, (37, 53)).astype(np.uint8)
MASK = RNG.random((60, 70)) > 0.35


@pytest.mark.parametrize("reach", [1, 2, 3, 5, 8])
def test_highest_and_lowest_are_scipys(reach):
    """Beyond the margin there is nothing, which is what "nearest" says of a greatest and a least."""
    assert np.array_equal(patches.highest(PLANE, reach), maximum_filter(PLANE, 2 * reach + 1, mode="nearest"))
    assert np.array_equal(patches.lowest(PLANE, reach), minimum_filter(PLANE, 2 * reach + 1, mode="nearest"))


@pytest.mark.parametrize("reach", [1, 2])
def test_opening_is_scipys_away_from_the_margin(reach):
    square = np.ones((2 * reach + 1,) * 2, bool)
    inner = (slice(8, -8), slice(8, -8))
    assert np.array_equal(patches.opened(MASK, reach)[inner], binary_opening(MASK, square)[inner])


def test_softened_is_the_weighted_mean():
    kernel = np.outer((1, 2, 1), (1, 2, 1)) / 16
    wanted = convolve(PLANE.astype(float), kernel, mode="nearest")
    inner = (slice(1, -1), slice(1, -1))
    assert np.abs(patches.softened(PLANE) - wanted)[inner].max() <= 4  # four times rounded down
    assert (patches.softened(np.full((5, 4), 200, np.uint8)) == 200).all()


@settings(max_examples=40, deadline=None)
@given(st.integers(1, 40), st.integers(1, 40), st.integers(1, 5))
def test_coarser_and_finer_fit(rows, columns, factor):
    plane = np.full((rows, columns), 77, np.uint8)
    small = patches.coarser(plane, factor)
    assert small.shape == (-(-rows // factor), -(-columns // factor)) and (small == 77).all()
    assert np.array_equal(patches.finer(small, factor, plane.shape), plane)


def test_coarser_is_the_mean_and_for_masks_the_most():
    assert patches.coarser(np.array([[1, 3], [5, 8]], np.uint8), 2) == 4
    assert patches.coarser(np.array([[1.0, 2.0], [3.0, 4.0]]), 2) == 2.5
    assert not patches.coarser(np.array([[True, True], [False, False]]), 2)
    assert patches.coarser(np.array([[True, True], [True, False]]), 2)
    picture = np.stack([PLANE, PLANE // 2], axis=-1)
    assert np.array_equal(patches.coarser(picture, 3)[..., 0], patches.coarser(PLANE, 3))


def test_parts_that_hold_a_seed():
    mask = np.array([[1, 1, 0, 0, 1], [0, 0, 1, 0, 0], [0, 0, 0, 0, 1]], bool)
    seeds = np.zeros_like(mask)
    seeds[1, 2] = seeds[1, 4] = True
    wanted = np.array([[1, 1, 0, 0, 0], [0, 0, 1, 0, 0], [0, 0, 0, 0, 0]], bool)
    assert np.array_equal(patches.holding(mask, seeds), wanted)
    assert not patches.holding(mask, seeds, least=4).any()
    assert not patches.holding(np.zeros_like(mask), seeds).any()
