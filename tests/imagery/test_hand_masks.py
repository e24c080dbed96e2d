"""Masks corrected by hand: painted by strokes, kept beside the course, read through the move of their date."""

import numpy as np
import pytest
from osgeo import gdal
from yardwright.imagery.grid import Grid
from yardwright.imagery.hand_masks import (
    SEEN_BY_HAND,
    Stroke,
    grid_for_mask,
    keep_mask,
    paint,
    read_mask,
)
from yardwright.imagery.moves import LocalShifts, Move
from yardwright.model.errors import YardwrightError

CRS = "EPSG:32630"
GRID = Grid(200, 100, (500_000.0, 0.5, 0, 6_200_000.0, 0, -0.5), CRS)
"""100 by 50 metres."""


def disc(grid, x, y, radius):
    """(h, w) bool: the pixels whose middles lie within ``radius`` of a place: the definition of a round brush."""
    columns, rows = np.meshgrid(np.arange(grid.width) + 0.5, np.arange(grid.height) + 0.5)
    places = grid.to_ground(np.column_stack([columns.ravel(), rows.ravel()]))
    return (np.hypot(*(places - (x, y)).T) <= radius).reshape(grid.height, grid.width)


def test_a_dot_is_round():
    mask = np.zeros((100, 200), np.uint8)
    paint([Stroke(((500_050.0, 6_199_975.0),), 8.0, 1)], mask, GRID)
    assert ((mask == 1) ^ disc(GRID, 500_050, 6_199_975, 8)).sum() <= 8  # a ring of 48 corners


def test_later_strokes_lie_over_earlier_ones():
    mask = np.zeros((100, 200), np.uint8)
    line = ((500_010.0, 6_199_975.0), (500_090.0, 6_199_975.0))
    paint([Stroke(line, 5.0, 1), Stroke(line[:1], 3.0, SEEN_BY_HAND), Stroke(line[1:], 3.0, 0)], mask, GRID)
    assert mask[50, 20] == SEEN_BY_HAND and mask[50, 180] == 0 and mask[50, 100] == 1
    assert set(np.unique(mask)) == {0, 1, SEEN_BY_HAND}
    # A line of 80 m, 10 m wide with round ends.
    assert (mask > 0).sum() * 0.25 == pytest.approx(800 + np.pi * 25 - np.pi * 9, rel=0.03)


@pytest.mark.parametrize("place", [(499_000.0, 6_199_975.0), (500_050.0, 6_300_000.0)])
def test_a_stroke_beside_the_mask_is_none(place):
    mask = np.zeros((100, 200), np.uint8)
    paint([Stroke((place,), 8.0, 1)], mask, GRID)
    assert not mask.any()


def test_what_is_kept_is_read_again_and_added_to(tmp_path):
    path = str(tmp_path / "larkmere_dates" / "2024_hidden.tif")
    assert read_mask(path, GRID) is None
    first = Stroke(((500_020.0, 6_199_980.0),), 5.0, 1)
    keep_mask(path, [first], GRID)
    second = Stroke(((500_070.0, 6_199_980.0), (500_080.0, 6_199_960.0)), 4.0, SEEN_BY_HAND)
    keep_mask(path, [second], GRID)
    expected = np.zeros((100, 200), np.uint8)
    paint([first, second], expected, GRID)
    assert (read_mask(path, GRID) == expected).all()
    assert [one.name for one in (tmp_path / "larkmere_dates").iterdir()] == ["2024_hidden.tif"]
    # A window of it, elsewhere and coarser.
    window = Grid(40, 20, (500_040.0, 1.0, 0, 6_199_990.0, 0, -1.0), CRS)
    assert (read_mask(path, window) == expected[21:61:2, 81:161:2]).all()


@pytest.mark.parametrize(
    "move",
    [
        Move(3.0, -2.0),
        Move(1.0, 1.0, turn=2.0, stretch=1.01, about=(500_050.0, 6_199_975.0)),
        Move(
            1.0,
            0.5,
            local=LocalShifts(500_000.0, 6_200_000.0, 50.0, [[0, 1, 2], [1, 2, 3]], [[0, 1, 0], [0, 0, 1]]),
        ),
    ],
    ids=["shift", "turn", "local"],
)
def test_a_mask_goes_with_its_date(tmp_path, move):
    """Painted on the ground, kept where the file lies, seen on the ground in the same place again."""
    path = str(tmp_path / "a_hidden.tif")
    stroke = Stroke(((500_040.0, 6_199_975.0), (500_060.0, 6_199_970.0)), 6.0, 1)
    keep_mask(
        path, [stroke.moved_back(move)], grid_for_mask((499_980, 6_199_930, 500_120, 6_200_020), 0.25, CRS)
    )
    expected = np.zeros((100, 200), np.uint8)
    paint([stroke], expected, GRID)
    found = read_mask(path, GRID, move)
    # Along the rim half a pixel here or there.
    assert ((found > 0) & (expected > 0)).sum() / ((found > 0) | (expected > 0)).sum() > 0.95
    assert (read_mask(path, GRID) != found).any()


def test_a_mask_in_another_system_than_the_grid(tmp_path):
    path = str(tmp_path / "a_hidden.tif")
    stroke = Stroke(((500_050.0, 6_199_975.0),), 10.0, 4)
    keep_mask(path, [stroke], GRID)
    import pyproj

    to_web = pyproj.Transformer.from_crs(32630, 3857, always_xy=True)
    x, y = to_web.transform(500_050, 6_199_975)
    found = read_mask(path, Grid(21, 21, (x - 10.5, 1, 0, y + 10.5, 0, -1), "EPSG:3857"))
    # 10 m on the ground are 18 in Web Mercator at this latitude: the window lies within the dot.
    assert (found == 4).all()


def test_what_is_no_mask_is_said_and_stays(tmp_path):
    path = tmp_path / "a_hidden.tif"
    path.write_bytes(b"no raster")
    for doing in (
        lambda: read_mask(str(path), GRID),
        lambda: keep_mask(str(path), [Stroke(((500_050.0, 6_199_975.0),), 3.0, 1)], GRID),
    ):
        with pytest.raises(YardwrightError) as told:
            doing()
        assert "a_hidden.tif" in told.value.what and told.value.remedy
    assert path.read_bytes() == b"no raster" and len(list(tmp_path.iterdir())) == 1


def test_a_large_mask_takes_little_room(tmp_path):
    path = tmp_path / "a_hidden.tif"
    grid = grid_for_mask((500_000, 6_198_000, 502_000, 6_200_000), 0.1, CRS)
    assert (grid.width, grid.height) == (20_000, 20_000)
    keep_mask(str(path), [Stroke(((501_000.0, 6_199_000.0),), 5.0, 1)], grid)
    assert path.stat().st_size < 200_000
    keep_mask(str(path), [Stroke(((501_100.0, 6_199_000.0),), 5.0, 1)], grid)
    assert path.stat().st_size < 300_000
    kept = gdal.Open(str(path))
    assert kept.GetSpatialRef().GetAuthorityCode(None) == "32630"
