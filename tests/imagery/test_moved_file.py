"""Virtual images that show a date moved: every pixel where the move lays it, to a tenth of one."""

import os
import shutil

import numpy as np
import pytest
from osgeo import gdal, osr
from yardwright.imagery.dates import Date
from yardwright.imagery.moved_file import take_away_moved, write_moved
from yardwright.imagery.moves import LocalShifts, Move
from yardwright.model.errors import YardwrightError

CRS = "EPSG:32630"
EAST, NORTH = 500_000.0, 6_200_000.0
SIDE, PIXEL = 500, 0.25
ABOUT = (EAST + 60, NORTH + 60)
ROWS = np.linspace(-2, 2, 6)
LOCAL = LocalShifts(
    EAST - 20,
    NORTH + 160,
    36,
    np.outer(np.sin(ROWS), np.cos(ROWS)).tolist(),
    np.outer(ROWS / 3, ROWS / 4).tolist(),
)
MOVES = {
    "shift": Move(0.83, -0.62),
    "turn": Move(1.5, 0.4, 1.2, 1.004, ABOUT),
    "local": Move(0.3, -0.9, local=LOCAL),
    "all": Move(-2.0, 0.7, -0.4, 0.998, ABOUT, LOCAL),
}


def spots():
    """Columns and rows of bright spots, well apart."""
    return (
        np.stack(np.meshgrid(np.arange(40, SIDE - 30, 60), np.arange(40, SIDE - 30, 60)), -1).reshape(-1, 2)
        + 0.3
    )


def write_spots(path, crs=CRS, kind=gdal.GDT_Byte, gcps=False):
    """An image with a smooth spot at each of ``spots``; of longitude and latitude when so asked."""
    x, y = np.meshgrid(np.arange(SIDE) + 0.5, np.arange(SIDE) + 0.5)
    values = sum(np.exp(-((x - a) ** 2 + (y - b) ** 2) / (2 * 2.5**2)) for a, b in spots()) * 200 + 20
    image = gdal.GetDriverByName("GTiff").Create(str(path), SIDE, SIDE, 3, kind)
    reference = osr.SpatialReference()
    reference.SetFromUserInput(crs)
    reference.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
    if crs == "EPSG:4326":
        to_degrees = osr.CoordinateTransformation(utm(), reference)
        (left, top, _), (right, low, _) = to_degrees.TransformPoints(
            [(EAST, NORTH + SIDE * PIXEL), (EAST + SIDE * PIXEL, NORTH)]
        )
        place = (left, (right - left) / SIDE, 0, top, 0, (low - top) / SIDE)
    else:
        place = (EAST, PIXEL, 0, NORTH + SIDE * PIXEL, 0, -PIXEL)
    if gcps:
        image.SetGCPs(
            [
                gdal.GCP(*gdal.ApplyGeoTransform(place, float(a), float(b)), 0, float(a), float(b))
                for a, b in ((0, 0), (SIDE, 0), (0, SIDE), (SIDE, SIDE), (SIDE / 2, SIDE / 3))
            ],
            reference.ExportToWkt(),
        )
    else:
        image.SetGeoTransform(place)
        image.SetSpatialRef(reference)
    for band in (1, 2, 3):
        image.GetRasterBand(band).WriteArray(np.rint(values))
    image = None
    return place, reference


def utm():
    reference = osr.SpatialReference()
    reference.SetFromUserInput(CRS)
    return reference


def should_lie(place, reference, move):
    """(n, 2) where the spots lie on the ground once moved, in the file's CRS."""
    told = [gdal.ApplyGeoTransform(place, float(a), float(b)) for a, b in spots()]
    ground = np.array(osr.CoordinateTransformation(reference, utm()).TransformPoints(told))[:, :2]
    back = osr.CoordinateTransformation(utm(), reference).TransformPoints(move.ahead(ground).tolist())
    return np.array(back)[:, :2]


def off_by(path, wanted):
    """By how many pixels of a picture, at most, its spots lie beside where they should."""
    image = gdal.Open(str(path))
    inverse = gdal.InvGeoTransform(image.GetGeoTransform())
    values = image.GetRasterBand(1).ReadAsArray().astype(float)
    worst = 0.0
    x, y = np.meshgrid(np.arange(values.shape[1]) + 0.5, np.arange(values.shape[0]) + 0.5)
    for place in wanted:
        column, row = gdal.ApplyGeoTransform(inverse, *map(float, place))
        near = np.clip(values, 20, None) - 20
        weight = np.where((x - column) ** 2 + (y - row) ** 2 < 12**2, near, 0)
        found = np.array([(x * weight).sum(), (y * weight).sum()]) / weight.sum()
        worst = max(worst, float(np.abs(found - (column, row)).max()))
    return worst


@pytest.mark.parametrize("name", MOVES)
@pytest.mark.parametrize("crs", [CRS, "EPSG:4326"])
def test_every_spot_lies_where_the_move_lays_it(name, crs, tmp_path):
    place, reference = write_spots(tmp_path / "may.tif", crs)
    out = tmp_path / "course_dates" / "may_moved.vrt"
    assert write_moved(Date("may", str(tmp_path / "may.tif")), MOVES[name], CRS, str(out))
    assert off_by(out, should_lie(place, reference, MOVES[name])) < 0.1


def test_a_file_placed_by_control_points(tmp_path):
    place, reference = write_spots(tmp_path / "may.tif", gcps=True)
    out = tmp_path / "may_moved.vrt"
    write_moved(Date("may", str(tmp_path / "may.tif")), MOVES["shift"], CRS, str(out))
    assert off_by(out, should_lie(place, reference, MOVES["shift"])) < 0.1


def test_a_plain_shift_keeps_every_pixel_and_moves_with_its_folder(tmp_path):
    (tmp_path / "here" / "images").mkdir(parents=True)
    write_spots(tmp_path / "here" / "images" / "may.tif")
    before = (tmp_path / "here" / "images" / "may.tif").read_bytes()
    out = tmp_path / "here" / "course_dates" / "may_moved.vrt"
    write_moved(Date("may", str(tmp_path / "here" / "images" / "may.tif")), MOVES["shift"], CRS, str(out))
    assert os.listdir(out.parent) == ["may_moved.vrt"]
    assert str(tmp_path) not in out.read_text("utf-8")
    shutil.move(tmp_path / "here", tmp_path / "there")
    moved = gdal.Open(str(tmp_path / "there" / "course_dates" / "may_moved.vrt"))
    plain = gdal.Open(str(tmp_path / "there" / "images" / "may.tif"))
    assert np.array_equal(moved.ReadAsArray(), plain.ReadAsArray())
    assert np.subtract(moved.GetGeoTransform(), plain.GetGeoTransform()) == pytest.approx(
        [0.83, 0, 0, -0.62, 0, 0]
    )
    assert (tmp_path / "there" / "images" / "may.tif").read_bytes() == before


@pytest.mark.parametrize("name", ["shift", "local"])
def test_written_again_only_when_it_would_be_another(name, tmp_path):
    write_spots(tmp_path / "may.tif")
    date, out = Date("may", str(tmp_path / "may.tif")), str(tmp_path / "may_moved.vrt")
    assert write_moved(date, MOVES[name], CRS, out)
    assert not write_moved(date, MOVES[name], CRS, out)
    assert write_moved(date, MOVES["all"], CRS, out)
    take_away_moved(out)
    assert os.listdir(tmp_path) == ["may.tif"]


def test_opacity_and_sixteen_bits_stay(tmp_path):
    write_spots(tmp_path / "may.tif", kind=gdal.GDT_UInt16)
    write_moved(Date("may", str(tmp_path / "may.tif")), MOVES["turn"], CRS, str(tmp_path / "may_moved.vrt"))
    image = gdal.Open(str(tmp_path / "may_moved.vrt"))
    assert [image.GetRasterBand(n).DataType for n in range(1, 5)] == [gdal.GDT_UInt16] * 4
    opacity = image.GetRasterBand(4).ReadAsArray()
    assert image.GetRasterBand(4).GetColorInterpretation() == gdal.GCI_AlphaBand
    assert opacity[0, 0] == 0 and opacity[SIDE // 2, SIDE // 2] == 65535


def test_failures_leave_what_was_there(tmp_path):
    write_spots(tmp_path / "may.tif")
    out = tmp_path / "may_moved.vrt"
    out.write_text("as it was", "utf-8")
    for path in (tmp_path / "none.tif", out):
        with pytest.raises(YardwrightError, match="cannot be"):
            write_moved(Date("may", str(path)), MOVES["shift"], CRS, str(out))
    assert out.read_text("utf-8") == "as it was"
