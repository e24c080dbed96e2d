"""Windows cut from images: do they land where they say, look right, and survive the traps of real images."""

import glob
import importlib.util
import math
import os

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from osgeo import gdal, osr
from yardwright.imagery.grid import Grid
from yardwright.imagery.image import OutsideImage
from yardwright.imagery.window import cut, world_file, write
from yardwright.model.errors import Cancelled, YardwrightError

UTM = "EPSG:32630"
EAST, NORTH = 500_000.0, 4_500_000.0


def turned(centre, pixel, azimuth, width, height, crs=UTM):
    """A grid about ``centre`` whose upward direction is ``azimuth`` degrees clockwise from grid north."""
    a = math.radians(azimuth)
    right, down = (math.cos(a), -math.sin(a)), (-math.sin(a), -math.cos(a))
    g = (pixel * right[0], pixel * down[0], pixel * right[1], pixel * down[1])
    x0 = centre[0] - width / 2 * g[0] - height / 2 * g[1]
    y0 = centre[1] - width / 2 * g[2] - height / 2 * g[3]
    return Grid(width, height, (x0, g[0], g[1], y0, g[2], g[3]), crs)


def save(path, bands, geotransform=None, crs=UTM, tags=None, nodata=None, kind=gdal.GDT_Byte, options=()):
    """Write (bands, rows, columns) as a GeoTIFF; returns the path."""
    bands = np.asarray(bands)
    count, rows, columns = bands.shape
    image = gdal.GetDriverByName("GTiff").Create(str(path), columns, rows, count, kind, list(options))
    image.SetGeoTransform(geotransform or (EAST, 0.2, 0, NORTH, 0, -0.2))
    if crs:
        srs = osr.SpatialReference()
        srs.SetFromUserInput(crs)
        image.SetSpatialRef(srs)
    for number, values in enumerate(bands, start=1):
        band = image.GetRasterBand(number)
        if nodata is not None:
            band.SetNoDataValue(nodata)
        if tags:
            band.SetColorInterpretation(tags[number - 1])
        band.WriteArray(values)
    image.FlushCache()
    return str(path)


def read(path):
    image = gdal.Open(path)
    return image.ReadAsArray(), image.GetGeoTransform(), image.GetSpatialRef()


def blobs(points, geotransform, rows, columns, sigma, ground=60.0, height=150.0):
    """An image with a Gaussian hill at each ground point, sampled at pixel centres; sigma in CRS units."""
    g = geotransform
    column, row = np.meshgrid(np.arange(columns) + 0.5, np.arange(rows) + 0.5)
    x, y = g[0] + column * g[1] + row * g[2], g[3] + column * g[4] + row * g[5]
    values = np.full((rows, columns), ground)
    for px, py in points:
        values += height * np.exp(-((x - px) ** 2 + (y - py) ** 2) / (2 * sigma**2))
    return values


def middle_of(values, at, reach, ground=60.0):
    """The centre of gravity of what stands above the ground within ``reach`` px of ``at``, in pixels."""
    column, row = np.meshgrid(np.arange(values.shape[1]) + 0.5, np.arange(values.shape[0]) + 0.5)
    near = (column - at[0]) ** 2 + (row - at[1]) ** 2 < reach**2
    weight = np.where(near, np.clip(values.astype(float) - ground, 0, None), 0)
    return np.array([(column * weight).sum(), (row * weight).sum()]) / weight.sum()


POINTS = [(EAST + x, NORTH - y) for x, y in ((60, 50), (85, 70), (70, 95), (100, 52), (80, 80))]


@pytest.mark.parametrize("azimuth", [0, 37, 90, 200])
@pytest.mark.parametrize("pixel", [0.13, 0.2, 0.5])
def test_a_blob_lies_where_the_grid_says(tmp_path, azimuth, pixel):
    shape = (0.2, 800, 800)
    geotransform = (EAST, shape[0], 0, NORTH, 0, -shape[0])
    sigma = 1.2
    image = blobs(POINTS, geotransform, 800, 800, sigma)
    source = save(tmp_path / "image.tif", [image] * 3)
    side = int(110 / pixel)
    grid = turned((EAST + 80, NORTH - 75), pixel, azimuth, side, side)
    made = cut(source, grid, str(tmp_path), "hole_01")
    pixels, geotransform, _ = read(made.tif)
    assert pixels.shape == (4, side, side)
    for at in grid.to_pixels(POINTS):
        found = middle_of(pixels[0], at, 4 * sigma / pixel)
        assert np.abs(found - at).max() < 0.05
    picture, *_ = read(made.picture)
    assert np.array_equal(picture, pixels)


@pytest.mark.parametrize("azimuth", [0, 37, 90])
@pytest.mark.parametrize("overviews", [False, True])
def test_contrast_is_kept_however_the_window_is_turned(tmp_path, azimuth, overviews):
    """Stripes 8 m wide a period, window pixels 1 m, image 0.2 m: nine tenths of the contrast must remain."""
    x = (np.arange(1000) + 0.5) * 0.2
    stripes = np.tile(128 + 100 * np.sin(2 * np.pi * x / 8.0), (1000, 1))
    source = save(tmp_path / "image.tif", [stripes] * 3)
    if overviews:
        image = gdal.Open(source, gdal.GA_Update)
        image.BuildOverviews("AVERAGE", [2, 4, 8])
        image = None
    grid = turned((EAST + 100, NORTH - 100), 1.0, azimuth, 100, 100)
    pixels, *_ = read(cut(source, grid, str(tmp_path), "hole_01").tif)
    inner = pixels[0][15:85, 15:85].astype(float)
    assert inner.std() / (100 / math.sqrt(2)) > 0.9


@pytest.mark.parametrize("azimuth", [0, 45, 90])
def test_oblong_pixels(tmp_path, azimuth):
    geotransform = (EAST, 0.1, 0, NORTH, 0, -0.4)
    source = save(tmp_path / "image.tif", [blobs(POINTS, geotransform, 400, 1600, 1.5)] * 3, geotransform)
    grid = turned((EAST + 80, NORTH - 75), 0.5, azimuth, 200, 200)
    pixels, *_ = read(cut(source, grid, str(tmp_path), "hole_01").tif)
    for at in grid.to_pixels(POINTS):
        assert np.abs(middle_of(pixels[0], at, 12) - at).max() < 0.05


def test_south_up_image(tmp_path):
    geotransform = (EAST, 0.2, 0, NORTH - 160, 0, 0.2)
    source = save(tmp_path / "image.tif", [blobs(POINTS, geotransform, 800, 800, 1.2)] * 3, geotransform)
    grid = turned((EAST + 80, NORTH - 75), 0.25, 30, 400, 400)
    pixels, *_ = read(cut(source, grid, str(tmp_path), "hole_01").tif)
    for at in grid.to_pixels(POINTS):
        assert np.abs(middle_of(pixels[0], at, 20) - at).max() < 0.05


@pytest.mark.parametrize("crs", ["EPSG:4326", "EPSG:3857", "EPSG:32629"])
def test_image_in_another_crs(tmp_path, crs):
    """The image is drawn pixel by pixel through pyproj, an independent way to the same ground."""
    pyproj = pytest.importorskip("pyproj")
    to_image = pyproj.Transformer.from_crs(UTM, crs, always_xy=True)
    back = pyproj.Transformer.from_crs(crs, UTM, always_xy=True)
    x, y = to_image.transform([EAST, EAST + 160, EAST, EAST + 160], [NORTH, NORTH, NORTH - 160, NORTH - 160])
    n = 900
    step_x, step_y = (max(x) - min(x)) / n, (max(y) - min(y)) / n
    geotransform = (min(x), step_x, 0, max(y), 0, -step_y)
    column, row = np.meshgrid(np.arange(n) + 0.5, np.arange(n) + 0.5)
    east, north = back.transform(geotransform[0] + column * step_x, geotransform[3] - row * step_y)
    values = np.full((n, n), 60.0)
    for px, py in POINTS:
        values += 150 * np.exp(-((east - px) ** 2 + (north - py) ** 2) / (2 * 1.5**2))
    source = save(tmp_path / "image.tif", [values] * 3, geotransform, crs)
    grid = turned((EAST + 80, NORTH - 75), 0.3, 37, 330, 330)
    pixels, _, srs = read(cut(source, grid, str(tmp_path), "hole_01").tif)
    assert srs.GetAuthorityCode(None) == "32630"
    for at in grid.to_pixels(POINTS):
        assert np.abs(middle_of(pixels[0], at, 20) - at).max() < 0.06


# --- files ---------------------------------------------------------------------------------------------


def test_world_file_worked_example(tmp_path):
    """A 0.3 m pixel turned 10 degrees clockwise; lines A D B E C F as in the published world file layout.

    Figures: A .295442326, D -.052094453, B -.052094453, E -.295442326; C and F are the middle of the top-left
    pixel, GDAL's origin its outer corner.
    """
    grid = turned((EAST, NORTH), 0.3, 10, 100, 200)
    a, d, b, e, c, f = (float(line) for line in world_file(grid.geotransform).splitlines())
    assert (a, d, b, e) == pytest.approx((0.295442326, -0.052094453, -0.052094453, -0.295442326), abs=5e-10)
    assert math.hypot(a, d) == pytest.approx(0.3)
    assert (c, f) == pytest.approx(tuple(grid.to_ground([(0.5, 0.5)])[0]), abs=1e-6)


@pytest.mark.parametrize("form, suffix, world", [("png", ".png", ".pgw"), ("jpeg", ".jpg", ".jgw")])
def test_the_files_of_a_window(tmp_path, form, suffix, world):
    source = save(tmp_path / "image.tif", [blobs(POINTS, (EAST, 0.2, 0, NORTH, 0, -0.2), 800, 800, 1.2)] * 3)
    out = tmp_path / "out"
    out.mkdir()
    grid = turned((EAST + 80, NORTH - 75), 0.25, 200, 300, 400)
    made = cut(source, grid, str(out), "green_07", form)
    names = {"green_07.tif", "green_07" + suffix, "green_07" + world, f"green_07{suffix}.aux.xml"}
    assert set(os.listdir(out)) == names
    assert made.picture == str(out / ("green_07" + suffix))
    for path in (made.tif, made.picture):
        pixels, geotransform, srs = read(path)
        assert geotransform == pytest.approx(grid.geotransform, abs=1e-6)
        assert srs.GetAuthorityCode(None) == "32630"
        assert pixels.shape == (3 if path.endswith("jpg") else 4, 400, 300)


@pytest.mark.parametrize("form", ["png", "jpeg"])
def test_qgis_places_both_files(tmp_path, qgis_app, form):
    from qgis.core import QgsPointXY, QgsRasterLayer

    source = save(tmp_path / "image.tif", [blobs(POINTS, (EAST, 0.2, 0, NORTH, 0, -0.2), 800, 800, 1.2)] * 3)
    grid = turned((EAST + 80, NORTH - 75), 0.25, 37, 400, 400)
    made = cut(source, grid, str(tmp_path), "hole_01", form)
    for path in (made.tif, made.picture):
        layer = QgsRasterLayer(path, "window")
        assert layer.isValid()
        assert layer.crs().authid() == UTM
        for x, y in POINTS:
            there, ok = layer.dataProvider().sample(QgsPointXY(x, y), 1)
            beside, _ = layer.dataProvider().sample(QgsPointXY(x + 5, y), 1)
            assert ok
            assert there > 190 > 80 > beside


def test_a_second_run_replaces_the_first_and_leaves_strangers_alone(tmp_path):
    source = save(tmp_path / "image.tif", np.full((3, 400, 400), 90))
    stranger = tmp_path / "hole_02.jpg"
    stranger.write_bytes(b"not ours")
    grid = turned((EAST + 40, NORTH - 40), 0.25, 20, 100, 100)
    cut(source, grid, str(tmp_path), "hole_01", "jpeg")
    (tmp_path / "hole_01.tif.aux.xml").write_text("<PAMDataset/>")
    cut(source, grid, str(tmp_path), "hole_01", "png")
    cut(source, grid, str(tmp_path), "hole_02", "png")
    names = set(os.listdir(tmp_path))
    ours = {n + s for n in ("hole_01", "hole_02") for s in (".tif", ".png", ".pgw", ".png.aux.xml")}
    assert names == ours | {"image.tif", "hole_02.jpg"}
    assert stranger.read_bytes() == b"not ours"


def test_cancelling_leaves_nothing(tmp_path):
    source = save(tmp_path / "image.tif", np.full((3, 400, 400), 90))
    grid = turned((EAST + 40, NORTH - 40), 0.25, 20, 100, 100)
    with pytest.raises(Cancelled):
        cut(source, grid, str(tmp_path), "hole_01", progress=lambda done, total: False)
    assert os.listdir(tmp_path) == ["image.tif"]


def test_progress_rises_to_the_end(tmp_path):
    source = save(tmp_path / "image.tif", np.full((3, 400, 400), 90))
    shares = []
    grid = turned((EAST + 40, NORTH - 40), 0.25, 20, 100, 100)
    cut(source, grid, str(tmp_path), "hole_01", progress=lambda done, total: shares.append(done / total))
    assert shares == sorted(shares)
    assert shares[-1] == 1.0


def test_an_image_is_not_replaced_by_its_own_window(tmp_path):
    source = save(tmp_path / "hole_01.tif", np.full((3, 400, 400), 90))
    grid = turned((EAST + 40, NORTH - 40), 0.25, 20, 100, 100)
    with pytest.raises(YardwrightError, match="read and replaced at once"):
        cut(source, grid, str(tmp_path), "hole_01")
    assert read(source)[0].shape == (3, 400, 400)


def test_write_keeps_the_pixels_given(tmp_path):
    pixels = np.random.default_rng(5).integers(0, 255, (30, 40, 4), dtype=np.uint8)
    grid = turned((EAST, NORTH), 0.5, 60, 40, 30)
    made = write(pixels, grid, str(tmp_path), "hole_09")
    assert np.array_equal(np.moveaxis(read(made.tif)[0], 0, 2), pixels)
    with pytest.raises(OutsideImage):
        write(np.zeros_like(pixels), grid, str(tmp_path), "hole_10")


# --- the grid ------------------------------------------------------------------------------------------

numbers = st.floats(-5000, 5000)


@settings(deadline=None)
@given(azimuth=st.floats(0, 360), pixel=st.floats(0.01, 5), x=numbers, y=numbers)
def test_there_and_back(azimuth, pixel, x, y):
    grid = turned((EAST, NORTH), pixel, azimuth, 700, 900)
    there = grid.to_ground([(x, y)])
    assert grid.to_pixels(there)[0] == pytest.approx((x, y), abs=1e-4)
    assert grid.to_pixels(grid.corners()) == pytest.approx(
        np.array([(0, 0), (700, 0), (700, 900), (0, 900)]), abs=1e-4
    )


@given(azimuth=st.floats(0, 359.9), pixel=st.floats(0.01, 5))
@settings(deadline=None)
def test_up_is_up(azimuth, pixel):
    grid = turned((EAST, NORTH), pixel, azimuth, 700, 900)
    (x0, y0), (x1, y1) = grid.to_ground([(350, 450), (350, 0)])
    found = math.degrees(math.atan2(x1 - x0, y1 - y0)) % 360
    assert min(abs(found - azimuth), 360 - abs(found - azimuth)) < 1e-4


# --- traps of real images ------------------------------------------------------------------------------

RGBA = (gdal.GCI_RedBand, gdal.GCI_GreenBand, gdal.GCI_BlueBand, gdal.GCI_AlphaBand)
MIDDLE = turned((EAST + 40, NORTH - 40), 0.25, 20, 100, 100)


def test_near_infrared_tagged_as_opacity(tmp_path):
    near_infrared = np.random.default_rng(1).integers(20, 240, (400, 400))
    source = save(tmp_path / "image.tif", [*np.full((3, 400, 400), 90), near_infrared], tags=RGBA)
    made = cut(source, MIDDLE, str(tmp_path), "hole_01")
    pixels = read(made.tif)[0]
    assert (pixels[3] == 255).all()
    assert (pixels[:3] == 90).all()
    assert "near infrared" in made.remarks[0]


def test_true_opacity_is_kept(tmp_path):
    opacity = np.zeros((400, 400))
    opacity[:, :200] = 255
    source = save(tmp_path / "image.tif", [*np.full((3, 400, 400), 90), opacity], tags=RGBA)
    made = cut(source, turned((EAST + 40, NORTH - 40), 0.25, 0, 100, 100), str(tmp_path), "hole_01")
    pixels = read(made.tif)[0]
    assert (pixels[3][:, :48] == 255).all()
    assert (pixels[3][:, 52:] == 0).all()
    assert "outside the image" in made.remarks[0]


def test_registry_raster_with_a_mistagged_band(tmp_path):
    """obia's Chesapeake image: 1 m, red, green, blue and near infrared, the last tagged Alpha."""
    found = importlib.util.find_spec("obia")
    if found is None or not found.submodule_search_locations:
        pytest.skip("obia is not installed")
    place = found.submodule_search_locations[0]
    source = glob.glob(os.path.join(place, "**", "test_image.tif"), recursive=True)[0]
    image = gdal.Open(source)
    assert image.GetRasterBand(4).GetColorInterpretation() == gdal.GCI_AlphaBand
    g, crs = image.GetGeoTransform(), image.GetProjection()
    grid = Grid(400, 300, (g[0] + 300, 1, 0, g[3] - 200, 0, -1), crs)
    made = cut(source, grid, str(tmp_path), "hole_01")
    pixels = read(made.tif)[0]
    assert (pixels[3] == 255).all()
    assert np.array_equal(pixels[:3], image.ReadAsArray(300, 200, 400, 300)[:3])


def test_white_sand_does_not_drop_out(tmp_path):
    picture = np.full((3, 400, 400), 90)
    picture[:, 180:220, 180:220] = 255
    source = save(tmp_path / "image.tif", picture, nodata=255)
    made = cut(source, MIDDLE, str(tmp_path), "hole_01")
    pixels = read(made.tif)[0]
    assert (pixels[3] == 255).all()
    assert (pixels[:3, 48:52, 48:52] == 255).all()
    assert any("white" in remark for remark in made.remarks)


def test_black_collar_is_clear_but_dark_shadow_is_not(tmp_path):
    picture = np.full((3, 400, 400), 90)
    picture[:, :, :200] = 0
    picture[:, 150:250, 220:260] = np.array([0, 4, 0])[:, None, None]
    source = save(tmp_path / "image.tif", picture, nodata=0)
    grid = turned((EAST + 40, NORTH - 40), 0.2, 0, 200, 200)
    pixels = read(cut(source, grid, str(tmp_path), "hole_01").tif)[0]
    assert (pixels[3][:, :98] == 0).all()
    assert (pixels[3][:, 103:] == 255).all()


@pytest.mark.parametrize("kind, top", [(gdal.GDT_UInt16, 3000), (gdal.GDT_Float32, 0.8)])
def test_wide_values_are_spread(tmp_path, kind, top):
    ramp = np.tile(np.linspace(0, top, 400), (400, 1))
    source = save(tmp_path / "image.tif", [ramp, ramp, ramp, ramp], kind=kind)
    grid = turned((EAST + 40, NORTH - 40), 0.2, 0, 400, 400)
    made = cut(source, grid, str(tmp_path), "hole_01")
    pixels = read(made.tif)[0]
    assert pixels.dtype == np.uint8
    assert (pixels[3] == 255).all()
    expected = np.linspace(0, 255, 400)
    assert np.abs(pixels[0][200].astype(float) - expected).max() < 4
    assert "spread" in made.remarks[0]


def test_sixteen_bits_that_hold_eight(tmp_path):
    source = save(tmp_path / "image.tif", np.full((3, 400, 400), 90), kind=gdal.GDT_UInt16)
    pixels = read(cut(source, MIDDLE, str(tmp_path), "hole_01").tif)[0]
    assert (pixels[:3] == 90).all()


def test_grey_image_with_a_hole_of_no_data(tmp_path):
    grey = np.full((1, 400, 400), 400.0)
    grey[0, :, 200:] = 380.0
    grey[0, 190:210, 190:210] = -9999
    source = save(tmp_path / "image.tif", grey, nodata=-9999, kind=gdal.GDT_Float32)
    grid = turned((EAST + 40, NORTH - 40), 0.2, 0, 200, 200)
    pixels = read(cut(source, grid, str(tmp_path), "hole_01").tif)[0]
    assert pixels.shape[0] == 4
    assert (pixels[3][92:108, 92:108] == 0).all()
    assert (pixels[:3, 50, 20] == 255).all()
    assert (pixels[:3, 50, 180] == 0).all()


def test_palette_image(tmp_path):
    index = np.zeros((400, 400), dtype=np.uint8)
    index[:, 200:] = 1
    path = save(tmp_path / "image.tif", [np.zeros((400, 400))])
    table = gdal.ColorTable()
    table.SetColorEntry(0, (10, 120, 30, 255))
    table.SetColorEntry(1, (200, 180, 90, 255))
    image = gdal.GetDriverByName("GTiff").Create(path, 400, 400, 1)
    image.SetGeoTransform((EAST, 0.2, 0, NORTH, 0, -0.2))
    srs = osr.SpatialReference()
    srs.ImportFromEPSG(32630)
    image.SetSpatialRef(srs)
    image.GetRasterBand(1).SetColorTable(table)
    image.GetRasterBand(1).WriteArray(index)
    image = None
    grid = turned((EAST + 40, NORTH - 40), 0.4, 0, 100, 100)
    pixels = read(cut(path, grid, str(tmp_path), "hole_01").tif)[0]
    assert tuple(pixels[:, 50, 20]) == (10, 120, 30, 255)
    assert tuple(pixels[:, 50, 80]) == (200, 180, 90, 255)


def test_window_partly_outside_is_remarked_and_clear_there(tmp_path):
    source = save(tmp_path / "image.tif", np.full((3, 400, 400), 90))
    grid = turned((EAST, NORTH - 40), 0.25, 0, 100, 100)
    made = cut(source, grid, str(tmp_path), "hole_01")
    assert made.remarks == ("50.0 % of the window lies outside the image and is left clear.",)
    assert (read(made.tif)[0][3][:, :49] == 0).all()
    white = read(cut(source, grid, str(tmp_path), "hole_01", "jpeg").picture)[0]
    assert (white[:, 50, 10] > 250).all()


@pytest.mark.parametrize("place", [(EAST + 9000, NORTH), (EAST, NORTH + 9000)])
def test_raster_elsewhere(tmp_path, place):
    source = save(tmp_path / "image.tif", np.full((3, 400, 400), 90))
    with pytest.raises(OutsideImage, match="shows nothing of this window"):
        cut(source, turned(place, 0.25, 0, 100, 100), str(tmp_path), "hole_01")
    assert os.listdir(tmp_path) == ["image.tif"]


def test_raster_on_the_other_side_of_the_world(tmp_path):
    geotransform = (140.0, 1e-5, 0, -30.0, 0, -1e-5)
    source = save(tmp_path / "image.tif", np.full((3, 400, 400), 90), geotransform, "EPSG:4326")
    with pytest.raises(OutsideImage):
        cut(source, MIDDLE, str(tmp_path), "hole_01")


def test_raster_without_crs_is_refused_unless_one_is_given(tmp_path):
    source = save(tmp_path / "image.tif", np.full((3, 400, 400), 90), crs=None)
    with pytest.raises(YardwrightError, match="coordinate reference system"):
        cut(source, MIDDLE, str(tmp_path), "hole_01")
    made = cut(source, MIDDLE, str(tmp_path), "hole_01", source_crs=UTM)
    assert (read(made.tif)[0][3] == 255).all()


def test_raster_without_a_place(tmp_path):
    path = str(tmp_path / "image.tif")
    image = gdal.GetDriverByName("GTiff").Create(path, 50, 50, 3)
    srs = osr.SpatialReference()
    srs.ImportFromEPSG(32630)
    image.SetSpatialRef(srs)
    image = None
    with pytest.raises(YardwrightError, match="where on the ground"):
        cut(path, MIDDLE, str(tmp_path), "hole_01")


def test_missing_and_damaged_files(tmp_path):
    with pytest.raises(YardwrightError, match="cannot be read"):
        cut(str(tmp_path / "nothing.tif"), MIDDLE, str(tmp_path), "hole_01")
    (tmp_path / "text.tif").write_text("this is no image")
    with pytest.raises(YardwrightError, match="cannot be read"):
        cut(str(tmp_path / "text.tif"), MIDDLE, str(tmp_path), "hole_01")
    rng = np.random.default_rng(3)
    source = save(tmp_path / "image.tif", rng.integers(0, 255, (3, 400, 400)), options=["COMPRESS=DEFLATE"])
    os.truncate(source, os.path.getsize(source) // 2)
    with pytest.raises(YardwrightError):
        cut(source, MIDDLE, str(tmp_path), "hole_01")
    assert sorted(os.listdir(tmp_path)) == ["image.tif", "text.tif"]


@pytest.mark.parametrize("exceptions", [False, True])
def test_gdal_is_left_as_it_was(tmp_path, exceptions):
    before, cache = gdal.GetUseExceptions(), gdal.GetCacheMax()
    gdal.UseExceptions() if exceptions else gdal.DontUseExceptions()
    try:
        with pytest.raises(YardwrightError):
            cut(str(tmp_path / "nothing.tif"), MIDDLE, str(tmp_path), "hole_01")
        assert gdal.GetUseExceptions() == int(exceptions)
    finally:
        gdal.UseExceptions() if before else gdal.DontUseExceptions()
    assert gdal.GetCacheMax() == cache
