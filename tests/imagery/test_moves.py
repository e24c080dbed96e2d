"""How the picture of a date is moved onto the ground, and read so."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from osgeo import gdal, osr
from yardwright.imagery.grid import Grid
from yardwright.imagery.image import Image
from yardwright.imagery.moves import STAY, LocalShifts, Move, move_of, move_text
from yardwright.model.errors import YardwrightError

LOCAL = LocalShifts(
    500_000, 6_200_100, 50, [[0.0, 0.4, 0.2], [0.3, 0.1, -0.3]], [[0.1, 0.0, -0.2], [0.2, 0.5, 0.0]]
)
MOVES = st.builds(
    Move,
    st.floats(-3, 3),
    st.floats(-3, 3),
    st.floats(-2, 2),
    st.floats(0.98, 1.02),
    st.just((500_050.0, 6_200_050.0)),
    st.sampled_from([None, LOCAL]),
)
PLACES = st.lists(
    st.tuples(st.floats(499_950, 500_150), st.floats(6_199_950, 6_200_150)), min_size=1, max_size=5
)


@given(MOVES, PLACES)
def test_there_and_back(move, places):
    assert np.allclose(move.back(move.ahead(places)), places, atol=1e-5)


@given(MOVES)
def test_text_there_and_back(move):
    again = move_of(move.east, move.north, move_text(move))
    points = [(500_010, 6_200_020), (500_140, 6_199_990)]
    assert np.allclose(again.ahead(points), move.ahead(points), atol=1e-3)


def test_a_turn_is_clockwise_and_a_shift_east_and_north():
    assert np.allclose(Move(turn=90).ahead([(0, 1)]), [(1, 0)])
    assert np.allclose(Move(2, -1).ahead([(10, 10)]), [(12, 9)])
    assert STAY.stays() and not Move(0, 1e-3).stays() and not Move(local=LOCAL).stays()
    assert move_text(Move(2, -1)) == ""


@pytest.mark.parametrize("text", ["{", "[1]", '{"turn":"a"}', '{"other":1}', '{"local":{"left":1}}'])
def test_a_text_that_is_none_is_refused(text):
    with pytest.raises(YardwrightError, match="cannot be read"):
        move_of(0, 0, text)


def waves(points):
    """A smooth picture of the ground, 0 to 255."""
    x, y = np.asarray(points).T - np.array([[500_000], [6_200_000]])
    return 127 + 60 * np.sin(x / 2.7) + 55 * np.cos(y / 3.4 + x / 9)


@pytest.mark.parametrize(
    "move",
    [
        Move(0.83, -0.62),
        Move(0.4, 0.2, 0.7, 1.004, (500_050.0, 6_200_050.0)),
        Move(0.4, -0.9, 0.3, 1.0, (500_050.0, 6_200_050.0), LOCAL),
    ],
    ids=["shift", "turn", "local"],
)
@pytest.mark.parametrize("turned", [False, True])
def test_a_moved_image_shows_the_ground(move, turned, tmp_path):
    """The file holds what lies at ``ahead`` of each of its pixels: read through the move, that is the ground."""
    size, pixel = 480, 0.25
    file = Grid(size, size, (500_000 - 10, pixel, 0, 6_200_000 + 110, 0, -pixel), "EPSG:32630")
    centres = np.stack(np.meshgrid(np.arange(size) + 0.5, np.arange(size) + 0.5), -1).reshape(-1, 2)
    image = gdal.GetDriverByName("GTiff").Create(str(tmp_path / "waves.tif"), size, size, 3)
    image.SetGeoTransform(file.geotransform)
    crs = osr.SpatialReference()
    crs.ImportFromEPSG(32630)
    image.SetSpatialRef(crs)
    painted = np.rint(waves(move.ahead(file.to_ground(centres)))).reshape(size, size).astype(np.uint8)
    for band in (1, 2, 3):
        image.GetRasterBand(band).WriteArray(painted)
    image = None

    c, s = (np.cos(0.5), np.sin(0.5)) if turned else (1, 0)
    grid = Grid(
        160, 120, (500_040, 0.3 * c, 0.3 * s, 6_200_070, 0.3 * s, -0.3 * c), "EPSG:32630"
    )  # fmt: skip
    with Image(str(tmp_path / "waves.tif"), move=move) as opened:
        pixels = opened.pixels(grid)
    places = np.stack(np.meshgrid(np.arange(160) + 0.5, np.arange(120) + 0.5), -1).reshape(-1, 2)
    wanted = waves(grid.to_ground(places)).reshape(120, 160)
    assert (pixels[:, :, 3] == 255).all()
    assert np.abs(pixels[:, :, 0] - wanted).mean() < 0.6
    assert np.abs(pixels[:, :, 0] - wanted).max() < 4


def test_beyond_the_image_all_is_clear(tmp_path):
    raster = gdal.GetDriverByName("GTiff").Create(str(tmp_path / "small.tif"), 10, 10, 3)
    raster.SetGeoTransform((500_000, 1, 0, 6_200_000, 0, -1))
    crs = osr.SpatialReference()
    crs.ImportFromEPSG(32630)
    raster.SetSpatialRef(crs)
    raster = None
    with Image(str(tmp_path / "small.tif")) as opened:
        pixels = opened.pixels(Grid(8, 6, (600_000, 1, 0, 6_200_000, 0, -1), "EPSG:32630"))
    assert pixels.shape == (6, 8, 4) and not pixels.any()
