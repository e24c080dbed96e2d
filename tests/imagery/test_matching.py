"""One date's colours made another's: what is learnt, what must not be, and that nothing is turned about."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.ndimage import gaussian_filter
from yardwright.imagery.matching import learn_match

MATERIALS = {"turf": (70, 110, 50), "rough": (110, 112, 70), "sand": (220, 205, 170), "water": (35, 50, 55)}
SIDE = 160


def ground(rng, noise=4.0):
    """(h, w, 3) float32 of four materials in stripes, mottled."""
    stripes = np.repeat(np.arange(4), SIDE // 4)
    colours = np.array(list(MATERIALS.values()), np.float32)[stripes]
    picture = np.broadcast_to(colours[:, None, :], (SIDE, SIDE, 3))
    light = 1 + 0.15 * gaussian_filter(rng.standard_normal((SIDE, SIDE)), 4.0)[..., None] * 8
    return picture * light + rng.normal(0, noise, picture.shape)


def as_picture(values):
    picture = np.full((*values.shape[:2], 4), 255, np.uint8)
    picture[..., :3] = np.clip(np.rint(values), 0, 255)
    return picture


def another_season(values):
    """Other light, and turf that has gone brown: no curve of the channels alone does both."""
    made = values * (0.8, 0.9, 1.05) + (12, 8, 4)
    made[: SIDE // 4] += (14, -8, 0)
    return made


@pytest.fixture(scope="module")
def pair():
    rng = np.random.default_rng(3)
    base = ground(rng)
    return as_picture(base), as_picture(another_season(base) + rng.normal(0, 3, base.shape))


def error(base, made, where=slice(None)):
    """The mean over the channels of how far the average colour is off."""
    return np.abs(base[where][..., :3].reshape(-1, 3).mean(0) - made[where].reshape(-1, 3).mean(0)).mean()


def test_each_material_takes_its_own_colour(pair):
    base, other = pair
    made = learn_match(base, other).apply(other)
    for k, name in enumerate(MATERIALS):
        stripe = slice(k * SIDE // 4, (k + 1) * SIDE // 4)
        before = error(base, other[..., :3].astype(float), stripe)
        assert before > 4, name
        assert error(base, made, stripe) < max(1.5, 0.3 * before), name


def test_shade_on_one_date_is_not_learnt_as_its_colour(pair):
    """A third of the other date lies in shade; lit turf must come out the same, and shade stay dark."""
    base, other = pair
    shaded = other.copy()
    shaded[:, : SIDE // 3, :3] = shaded[:, : SIDE // 3, :3] * (0.36, 0.41, 0.52)
    made = learn_match(base, shaded).apply(shaded)
    lit, dark = made[:, SIDE // 3 :], made[:, : SIDE // 3]
    assert error(base[:, SIDE // 3 :], lit) < 2.5
    assert dark[: SIDE // 2].mean() < 0.62 * lit[: SIDE // 2].mean()


def test_unusable_ground_is_not_looked_at(pair):
    base, other = pair
    usable = np.ones(base.shape[:2], bool)
    usable[:, : SIDE // 2] = False
    spoilt = other.copy()
    spoilt[:, : SIDE // 2, :3] = np.clip(other[:, : SIDE // 2, :3].astype(int) + (40, -10, 20), 0, 255)
    clean = learn_match(base, other, usable)
    assert np.array_equal(learn_match(base, spoilt, usable).apply(other), clean.apply(other))


def test_the_same_colours_stay_as_they_are(pair):
    base, _ = pair
    made = learn_match(base, base).apply(base)
    assert np.abs(made - base[..., :3]).mean() < 1.0


@settings(max_examples=12, deadline=None)
@given(
    st.lists(st.floats(0.6, 1.6), min_size=3, max_size=3),
    st.lists(st.floats(-20, 30), min_size=3, max_size=3),
    st.integers(0, 10_000),
)
def test_what_is_brighter_stays_brighter(gains, offsets, seed):
    rng = np.random.default_rng(seed)
    base = ground(rng)
    other = as_picture(another_season(base) * gains + offsets + rng.normal(0, 3, base.shape))
    match = learn_match(as_picture(base), other)
    start = rng.integers(0, 120, 3)
    ramp = np.clip(start + np.arange(0, 136, 4)[:, None], 0, 255).astype(np.uint8)[None]
    made = match.apply(ramp)
    assert made.shape == ramp.shape and made.dtype == np.float32
    assert (np.diff(made[0], axis=0) >= -1e-3).all()
    assert np.isfinite(made).all() and made.min() >= 0 and made.max() <= 255


def test_it_is_smooth(pair):
    """Colours a level apart come out no more than a few levels apart."""
    base, other = pair
    match = learn_match(base, other)
    rng = np.random.default_rng(5)
    colours = rng.integers(0, 255, (1, 5000, 3)).astype(np.uint8)
    for channel in range(3):
        next_one = colours.copy()
        next_one[..., channel] += 1
        assert np.abs(match.apply(next_one) - match.apply(colours)).max() < 5.0


@pytest.mark.parametrize("clear", ["base", "other"])
def test_without_common_ground_nothing_is_changed(pair, clear):
    base, other = (picture.copy() for picture in pair)
    (base if clear == "base" else other)[..., 3] = 0
    match = learn_match(base, other)
    assert match.pairs == 0
    assert np.array_equal(match.apply(other), other[..., :3].astype(np.float32))


def test_one_colour_alone_is_enough():
    base = as_picture(np.full((40, 40, 3), (90.0, 120.0, 60.0)))
    other = as_picture(np.full((40, 40, 3), (100.0, 110.0, 70.0)))
    made = learn_match(base, other).apply(other)
    assert np.abs(made - base[..., :3]).max() < 3
