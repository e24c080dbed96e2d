"""Margins made clear: where the tone changes, how much, and that all else stays."""

import numpy as np
import pytest
from shapely.geometry import Point, box
from yardwright.imagery.grid import Grid
from yardwright.imagery.margins import with_margins

PIXEL = 0.1
MIDDLE = (500_040.03, 6_200_029.96)
GREEN = Point(MIDDLE).buffer(12, 64)


def grid_of(turn=0.0):
    c, s = PIXEL * np.cos(turn), PIXEL * np.sin(turn)
    left, top = np.array(MIDDLE) - 400 * np.array([c, s]) - 300 * np.array([s, -c])
    return Grid(800, 600, (left, c, s, top, s, -c), "EPSG:32630")


def plain(value=120):
    pixels = np.full((600, 800, 4), value, np.uint8)
    pixels[:, :, 3] = 255
    return pixels


def away_from(shape_radius, grid):
    """Metres of each pixel's middle from the circle's margin, positive inside."""
    columns, rows = np.meshgrid(np.arange(800) + 0.5, np.arange(600) + 0.5)
    places = grid.to_ground(np.stack([columns, rows], -1).reshape(-1, 2)) - MIDDLE
    return (shape_radius - np.hypot(*places.T)).reshape(600, 800)


@pytest.mark.parametrize("turn", [0.0, 0.7, 2.9])
def test_lighter_just_inside_darker_just_outside(turn):
    """Against the circle's own equation."""
    grid = grid_of(turn)
    before = plain()
    made = with_margins(before, grid, {"green": [GREEN]}, 0.5)
    away, change = away_from(12.0, grid), made[:, :, 0].astype(int) - 120
    assert (before == 120)[:, :, :3].all() and (made[:, :, 3] == 255).all()
    assert change[(away > 0.05) & (away < 0.3)].min() > 8
    assert change[(away < -0.05) & (away > -0.25)].max() < -12
    assert not change[np.abs(away) > 1.7].any()
    # The change turns from one to the other at the margin, to a tenth of a pixel.
    inside, outside = change > 2, change < -2
    assert away[inside].min() > -0.02 and away[outside].max() < 0.02


def test_strength():
    grid = grid_of()
    faint, strong = (
        with_margins(plain(), grid, {"green": [GREEN]}, strength)[:, :, 0].astype(int) - 120
        for strength in (0.2, 1.0)
    )
    assert 2 * np.abs(faint).max() < np.abs(strong).max() and faint.any()
    assert (with_margins(plain(), grid, {"green": [GREEN]}, 0.0) == plain()).all()
    assert (with_margins(plain(), grid, {}, 1.0) == plain()).all()


def test_colours_keep_their_hue_and_sand_does_not_burn_out():
    pixels = plain()
    pixels[:, :, :3] = (240, 220, 180)
    made = with_margins(pixels, grid_of(), {"bunker": [GREEN]}, 1.0)[:, :, :3].astype(float)
    ratio = made / made.sum(axis=2, keepdims=True)
    assert np.abs(ratio - np.array([240, 220, 180]) / 640).max() < 0.004


def test_an_apron_that_ends_at_its_green_leaves_the_green_its_margin():
    grid = grid_of()
    apron = GREEN.buffer(2).difference(GREEN.buffer(0.03))
    alone = with_margins(plain(), grid, {"green": [GREEN]}, 0.5)
    both = with_margins(plain(), grid, {"green": [GREEN], "apron": [apron]}, 0.5)
    away = away_from(12.0, grid)
    assert (alone == both)[np.abs(away) < 0.5].all()
    assert (away_from(14.0, grid)[(both != alone).any(axis=2)] > -1.7).all() and (both != alone).any()


def test_a_margin_outside_the_picture_and_holes_within():
    grid = grid_of()
    far = box(0, 0, 10, 10)
    assert (with_margins(plain(), grid, {"tee": [far]}, 1.0) == plain()).all()
    ring = GREEN.difference(Point(MIDDLE).buffer(4, 64))
    change = with_margins(plain(), grid, {"bunker": [ring]}, 0.5)[:, :, 0].astype(int) - 120
    away = away_from(4.0, grid)
    assert (
        change[(away > 0.05) & (away < 0.25)].max() < -12 and change[(away < -0.05) & (away > -0.3)].min() > 8
    )


def test_the_same_in_pieces():
    """A picture cut in two shows what the whole does: nothing depends on where the picture ends."""
    grid = grid_of(0.4)
    whole = with_margins(plain(), grid, {"green": [GREEN]}, 0.5)
    left, top = grid.to_ground([(0, 250)])[0]
    g = grid.geotransform
    part = Grid(800, 350, (left, g[1], g[2], top, g[4], g[5]), grid.crs)
    assert (
        np.abs(with_margins(plain()[250:], part, {"green": [GREEN]}, 0.5).astype(int) - whole[250:]).max()
        <= 1
    )
