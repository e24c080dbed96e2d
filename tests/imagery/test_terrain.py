"""Heights and slopes out of rasters: against hand-made figures, surfaces that geographiclib lays out, GDAL.

A plane is laid out by the geodesic: the height of each pixel's middle follows from its distance and azimuth
from the middle of the raster, so that neither our own transformations nor GDAL's say what is expected.
"""

import glob
import importlib.util
import math
import os
import tracemalloc

import numpy as np
import pytest
from geographiclib.geodesic import Geodesic
from osgeo import gdal, osr
from yardwright.imagery.terrain import Terrain
from yardwright.model.errors import YardwrightError

from tests.loudly import left_over

UTM = "EPSG:32630"
PLACE = (500_000.0, 1.0, 0.0, 4_500_000.0, 0.0, -1.0)
FOOT = 0.3048
SURVEY_FOOT = 1200 / 3937


def spatial(crs):
    srs = osr.SpatialReference()
    srs.SetFromUserInput(crs)
    srs.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
    return srs


def save(path, heights, place=PLACE, crs=UTM, kind=gdal.GDT_Float64, unit="m", nodata=None, bands=1, **more):
    """Write (rows, columns) of heights as a GeoTIFF; returns the path. more: scale, offset."""
    heights = np.asarray(heights)
    rows, columns = heights.shape
    raster = gdal.GetDriverByName("GTiff").Create(str(path), columns, rows, bands, kind)
    if place:
        raster.SetGeoTransform(place)
    if crs:
        raster.SetSpatialRef(spatial(crs))
    for number in range(1, bands + 1):
        band = raster.GetRasterBand(number)
        band.WriteArray(heights)
        if nodata is not None:
            band.SetNoDataValue(nodata)
        if unit:
            band.SetUnitType(unit)
        if more:
            band.SetScale(more.get("scale", 1.0))
            band.SetOffset(more.get("offset", 0.0))
    raster.FlushCache()
    return str(path)


def middle_of(column, row, place=PLACE):
    """The middle of a pixel, in the raster's CRS."""
    x = place[0] + (column + 0.5) * place[1] + (row + 0.5) * place[2]
    return x, place[3] + (column + 0.5) * place[4] + (row + 0.5) * place[5]


def heights_of(path, points, crs=UTM):
    with Terrain(path) as terrain:
        return terrain.height_at(points, crs).tolist()


# Heights


SMALL = [[10.0, 20.0, 40.0], [30.0, 60.0, 20.0]]


def test_between_the_middles_of_pixels(tmp_path):
    """By hand: a quarter right and half down of 10, 20, 30, 60 is 12.5 and 37.5, together 25."""
    path = save(tmp_path / "small.tif", SMALL)
    asked = [middle_of(0, 0), middle_of(2, 0), middle_of(1, 1), middle_of(0.25, 0.5), middle_of(1.5, 0)]
    assert heights_of(path, asked) == pytest.approx([10, 40, 60, 25, 30])


def test_nothing_beyond_the_outermost_middles(tmp_path):
    path = save(tmp_path / "small.tif", SMALL)
    beyond = [middle_of(-0.01, 0), middle_of(2.01, 1), middle_of(1, -0.3), middle_of(0, 1.4), (0, 0)]
    assert np.isnan(heights_of(path, beyond)).all()


def test_a_pixel_without_height_takes_its_neighbourhood_but_not_more(tmp_path):
    path = save(tmp_path / "hole.tif", [[10, 20, -99, 40], [10, 20, 30, 40]], nodata=-99)
    asked = [middle_of(0.5, 0), middle_of(1, 0), middle_of(1, 0.5), middle_of(1.01, 0.5), middle_of(2, 1)]
    found = heights_of(path, asked)
    assert found[:3] == pytest.approx([15, 20, 20]) and math.isnan(found[3]) and found[4] == 30


def test_not_a_number_is_no_height(tmp_path):
    path = save(tmp_path / "nan.tif", [[np.nan, 2.0, np.inf], [1.0, 2.0, 3.0]])
    found = heights_of(path, [middle_of(0, 0), middle_of(1, 0), middle_of(2, 0), middle_of(2, 1)])
    assert np.isnan([found[0], found[2]]).all() and (found[1], found[3]) == (2.0, 3.0)


@pytest.mark.parametrize("kind", [gdal.GDT_Byte, gdal.GDT_Float32], ids=["whole numbers", "floats"])
def test_an_opacity_band_says_where_there_is_no_height(tmp_path, kind):
    driver = gdal.GetDriverByName("GTiff")
    raster = driver.Create(str(tmp_path / "clear.tif"), 2, 2, 2, kind, ["ALPHA=YES"])
    raster.SetGeoTransform(PLACE)
    raster.SetSpatialRef(spatial(UTM))
    raster.GetRasterBand(1).WriteArray(np.array([[5.0, 6.0], [7.0, 8.0]]))
    raster.GetRasterBand(2).WriteArray(np.array([[0, 255], [255, 255]]))
    raster = None
    found = heights_of(str(tmp_path / "clear.tif"), [middle_of(0, 0), middle_of(1, 0), middle_of(1, 1)])
    assert math.isnan(found[0]) and found[1:] == [6.0, 8.0]


def test_whole_numbers_with_scale_and_offset(tmp_path):
    path = save(
        tmp_path / "scaled.tif", [[1000, 2000], [-32768, 3000]], kind=gdal.GDT_Int16, nodata=-32768,
        scale=0.01, offset=100.0,
    )  # fmt: skip
    assert heights_of(path, [middle_of(0, 0), middle_of(1, 0)]) == pytest.approx([110.0, 120.0])
    assert math.isnan(heights_of(path, [middle_of(0, 1)])[0])


@pytest.mark.parametrize(
    ("unit", "metres"),
    [
        ("m", 1.0),
        ("metre", 1.0),
        ("ft", FOOT),
        ("foot", FOOT),
        ("US survey foot", SURVEY_FOOT),
        ("ftUS", SURVEY_FOOT),
        ("us-ft", SURVEY_FOOT),
    ],
)
def test_the_unit_a_band_states(tmp_path, unit, metres):
    """International foot 0.3048 m, US survey foot 1200/3937 m, both by definition."""
    path = save(tmp_path / "unit.tif", [[1e6, 1e6], [1e6, 1e6]], unit=unit)
    with Terrain(path) as terrain:
        assert terrain.remarks == ()
        assert terrain.height_at([middle_of(0, 0)], UTM) == pytest.approx(1e6 * metres, rel=1e-12)


@pytest.mark.parametrize(
    ("vertical", "metres"),
    [("EPSG:6360", SURVEY_FOOT), ("EPSG:8228", FOOT), ("EPSG:5703", 1.0)],
    ids=["NAVD88 in US survey feet", "in feet", "in metres"],
)
def test_the_unit_of_a_vertical_crs(tmp_path, vertical, metres):
    """A virtual raster states no unit of its own, as GeoTIFF does for its vertical CRS."""
    source = save(tmp_path / "plain.tif", [[1e6, 1e6], [1e6, 1e6]], unit=None)
    raster = gdal.Translate(str(tmp_path / "tall.vrt"), source, format="VRT")
    raster.SetSpatialRef(spatial(f"EPSG:32630+{vertical.split(':')[1]}"))
    raster = None
    with Terrain(str(tmp_path / "tall.vrt")) as terrain:
        assert terrain.remarks == ()
        assert terrain.height_at([middle_of(0, 0)], UTM) == pytest.approx(1e6 * metres, rel=1e-12)


def test_scale_and_offset_are_in_the_stated_unit(tmp_path):
    path = save(tmp_path / "feet.tif", [[10, 10], [10, 10]], unit="ft", scale=2.0, offset=5.0)
    assert heights_of(path, [middle_of(0, 0)]) == pytest.approx([25 * FOOT])


def test_an_unstated_or_unknown_unit_is_remarked_on(tmp_path):
    for name, unit, told in (("none", None, "does not say"), ("odd", "cubits", "“cubits”")):
        with Terrain(save(tmp_path / f"{name}.tif", SMALL, unit=unit)) as terrain:
            (remark,) = terrain.remarks
            assert told in remark and "metres" in remark
            assert terrain.height_at([middle_of(0, 0)], UTM).tolist() == [10]


def test_remarks_are_said(tmp_path, loudly):
    path = save(tmp_path / "odd.tif", SMALL, unit="CUBITS")
    with Terrain(path) as terrain:
        assert not left_over(" ".join(terrain.remarks))


def test_a_turned_raster(tmp_path):
    turn = math.radians(30)
    place = (5e5, 2 * math.cos(turn), 2 * math.sin(turn), 4.5e6, 2 * math.sin(turn), -2 * math.cos(turn))
    rows, columns = np.mgrid[0:20, 0:30]
    path = save(tmp_path / "turned.tif", 3.0 * columns - 2.0 * rows, place)
    asked = [middle_of(column, row, place) for column, row in ((4, 7), (10.5, 3.25), (29, 19))]
    assert heights_of(path, asked) == pytest.approx([-2, 25, 49], abs=1e-6)


def test_one_row_of_pixels(tmp_path):
    path = save(tmp_path / "row.tif", [[1.0, 2.0, 3.0]])
    assert heights_of(path, [middle_of(0.5, 0), middle_of(2, 0)]) == pytest.approx([1.5, 3.0])


def test_the_degrees_of_a_file_may_count_otherwise(tmp_path):
    """Longitudes from 0 to 360, and beyond 180, both asked in the usual way."""
    place = (357.0, 0.5, 0, 57.0, 0, -0.5)
    path = save(tmp_path / "round.tif", [[1.0, 2.0, 3.0], [4.0, 5.0, 6.0]], place, "EPSG:4326")
    assert heights_of(path, [(-2.75, 56.75), (-1.75, 56.25)], "EPSG:4326") == pytest.approx([1, 6])
    place = (179.0, 0.5, 0, -16.0, 0, -0.5)
    path = save(tmp_path / "date line.tif", [[1, 2, 3, 4], [5, 6, 7, 8]], place, "EPSG:4326")
    assert heights_of(path, [(-179.25, -16.25), (179.25, -16.75)], "EPSG:4326") == pytest.approx([4, 5])


def test_a_place_that_no_way_leads_to(tmp_path):
    path = save(tmp_path / "small.tif", SMALL)
    with Terrain(path) as terrain:
        points = [(0.0, 95.0), (np.nan, 0.0), (np.inf, 1.0), (30.0, -60.0)]
        assert np.isnan(terrain.height_at(points, "EPSG:4326")).all()
        assert np.isnan(terrain.slope_at(points, "EPSG:4326")).all()
        assert terrain.height_at(np.empty((0, 2)), "EPSG:4326").shape == (0,)


def test_the_layers_crs_is_taken_before_the_files(tmp_path):
    path = save(tmp_path / "bare.tif", SMALL, crs=None)
    with pytest.raises(YardwrightError, match="coordinate reference system"):
        Terrain(path)
    with Terrain(path, crs=UTM) as terrain:
        assert terrain.height_at([middle_of(1, 1)], UTM).tolist() == [60]


# Slopes


def plane(crs, start, percent, azimuth, size=30, pixel=1.0, metres=1.0):
    """Heights of a plane that falls by ``percent`` to ``azimuth``, and the place of its pixels.

    start: (latitude, longitude) of the middle; pixel: in the unit of the CRS; metres: in the file's unit of
    heights.
    """
    to_degrees = osr.CoordinateTransformation(spatial(crs), spatial("EPSG:4326"))
    back = osr.CoordinateTransformation(spatial("EPSG:4326"), spatial(crs))
    x, y, _ = back.TransformPoint(start[1], start[0])
    place = (x - size / 2 * pixel, pixel, 0, y + size / 2 * pixel, 0, -pixel)
    points = [middle_of(column, row, place) for row in range(size) for column in range(size)]
    heights = []
    for longitude, latitude, _ in to_degrees.TransformPoints(points):
        line = Geodesic.WGS84.Inverse(*start, latitude, longitude)
        fall = line["s12"] * math.cos(math.radians(line["azi1"] - azimuth))
        heights.append((500.0 - fall * percent / 100) / metres)
    return np.array(heights).reshape(size, size), place


@pytest.mark.parametrize(
    ("crs", "start", "pixel", "unit", "metres"),
    [
        ("EPSG:32630", (56.3, -3.0), 1.0, "m", 1.0),
        ("EPSG:32633", (69.65, 17.9), 0.5, "m", 1.0),
        ("EPSG:4326", (69.65, 18.9), 2e-5, "m", 1.0),
        ("EPSG:4326", (-37.95, 145.03), 1e-5, "ft", FOOT),
        ("EPSG:3857", (64.1, -21.9), 2.0, "m", 1.0),
        ("EPSG:2225", (40.0, -122.0), 3.0, "US survey foot", SURVEY_FOOT),
    ],
    ids=["UTM", "UTM, edge of zone, 70 N", "degrees, 70 N", "degrees, feet", "Web Mercator", "survey feet"],
)
@pytest.mark.parametrize(("percent", "azimuth"), [(2.0, 17.0), (0.4, 181.0), (35.0, 300.0)])
def test_planes_of_known_slope_and_direction(tmp_path, crs, start, pixel, unit, metres, percent, azimuth):
    """To 0.1 % of the slope and a twentieth of a degree, asked in degrees as in the raster's own CRS."""
    heights, place = plane(crs, start, percent, azimuth, pixel=pixel, metres=metres)
    own = osr.CoordinateTransformation(spatial("EPSG:4326"), spatial(crs))
    turned = [(start[1] + 3 * 1e-6, start[0] - 2e-6)]
    with Terrain(save(tmp_path / "plane.tif", heights, place, crs, unit=unit)) as terrain:
        for points, asked in ((turned, "EPSG:4326"), ([own.TransformPoint(*turned[0])[:2]], crs)):
            for over in (None, 6.0):
                steep, fall = terrain.slope_at(points, asked, over)
                assert steep[0] == pytest.approx(percent, rel=1e-3)
                assert fall[0] == pytest.approx(azimuth, abs=0.05)


def test_a_level_place_falls_nowhere(tmp_path):
    with Terrain(save(tmp_path / "level.tif", np.full((9, 9), 7.0))) as terrain:
        percent, azimuth = terrain.slope_at([middle_of(4, 4)], UTM)
    assert percent == pytest.approx([0.0], abs=1e-9) and np.isnan(azimuth).all()


def test_a_slope_is_taken_over_a_metre_or_two_pixels(tmp_path):
    """A step of 1 m between columns 9 and 10: within reach of it or not says over how much was measured."""
    for pixel, reach in ((0.1, 0.5), (1.0, 1.0), (5.0, 5.0)):
        place = (5e5, pixel, 0, 4.5e6, 0, -pixel)
        heights = np.zeros((20, 40))
        heights[:, 20:] = 1.0
        edge = place[0] + 20.5 * pixel
        with Terrain(save(tmp_path / f"step {pixel}.tif", heights, place)) as terrain:
            asked = [(edge - pixel - factor * reach, 4.5e6 - 10 * pixel) for factor in (0.98, 1.02)]
            percent, azimuth = terrain.slope_at(asked, UTM)
        assert percent[0] > 0 and percent[1] == 0
        assert azimuth[0] == pytest.approx(270, abs=0.1)


def test_no_slope_at_the_edge(tmp_path):
    rows, _ = np.mgrid[0:9, 0:9]
    with Terrain(save(tmp_path / "edge.tif", rows)) as terrain:
        percent, azimuth = terrain.slope_at([middle_of(0.5, 4), middle_of(4, 4)], UTM)
    assert np.isnan([percent[0], azimuth[0]]).all()
    assert percent[1] == pytest.approx(100, rel=1e-3) and azimuth[1] == pytest.approx(0, abs=1e-3)


def lidar_terrain():
    """A terrain model of 400 x 400 m that a package of the registry carries."""
    found = importlib.util.find_spec("lidar")
    if found is None or not found.submodule_search_locations:
        pytest.skip("lidar is not installed")
    (path,) = glob.glob(os.path.join(found.submodule_search_locations[0], "data", "dem.tif"))
    return path


@pytest.fixture
def ground(tmp_path):
    """That model laid where grid north is true and the scale is 1, so that GDAL measures on the ground too;
    ``(path, CRS, slopes of gdaldem by name, columns, rows)``."""
    model = gdal.Open(lidar_terrain())
    crs = "+proj=tmerc +lat_0=46.5 +lon_0=-93.92 +k=1 +x_0=200 +y_0=200 +datum=WGS84 +units=m"
    raster = gdal.GetDriverByName("GTiff").Create(str(tmp_path / "ground.tif"), 400, 400, 1, gdal.GDT_Float32)
    raster.SetGeoTransform((0, 1, 0, 400, 0, -1))
    raster.SetSpatialRef(spatial(crs))
    raster.GetRasterBand(1).SetUnitType("m")
    raster.GetRasterBand(1).WriteArray(model.ReadAsArray())
    raster.FlushCache()
    theirs = {}
    for name in ("Horn", "ZevenbergenThorne"):
        for what in ("slope", "aspect"):
            options = {"slopeFormat": "percent"} if what == "slope" else {}
            made = gdal.DEMProcessing("", raster, what, format="MEM", alg=name, **options)
            theirs[name, what] = made.ReadAsArray()
    raster = None
    chosen = np.random.default_rng(7).integers(2, 398, (4000, 2))
    return str(tmp_path / "ground.tif"), crs, theirs, chosen[:, 0], chosen[:, 1]


def test_real_ground_against_gdal(ground):
    """gdaldem by Zevenbergen and Thorne takes the same cross over two pixels: the same figures. By Horn it
    takes all eight neighbours, which is smoother: the same on the whole."""
    path, crs, theirs, columns, rows = ground
    with Terrain(path) as terrain:
        percent, azimuth = terrain.slope_at(np.column_stack([columns + 0.5, 399.5 - rows]), crs)
    cross = theirs["ZevenbergenThorne", "slope"][rows, columns]
    assert np.isfinite(percent).all() and np.median(percent) > 2
    assert np.abs(percent - cross).max() < 0.02
    apart = (azimuth - theirs["ZevenbergenThorne", "aspect"][rows, columns] + 180) % 360 - 180
    assert np.abs(apart[cross > 1]).max() < 0.3
    horn = theirs["Horn", "slope"][rows, columns]
    assert abs(np.median(percent - horn)) < 0.05 * np.median(horn)
    assert np.corrcoef(percent, horn)[0, 1] > 0.97


def test_real_ground_as_it_comes(tmp_path):
    """Heights at pixel middles are the file's own, and no unit is stated."""
    path = lidar_terrain()
    model = gdal.Open(path)
    values, place = model.ReadAsArray().astype(float), model.GetGeoTransform()
    asked = [(3, 5), (200, 100), (399, 399)]
    with Terrain(path) as terrain:
        assert len(terrain.remarks) == 1
        found = terrain.height_at([middle_of(*pixel, place) for pixel in asked], model.GetProjection())
    assert found == pytest.approx([values[row, column] for column, row in asked], abs=1e-4)


# Large files, and files that are no terrain


def test_a_large_raster_is_read_where_it_is_asked(tmp_path):
    """60,000 x 60,000 pixels (14 GB), asked at 3,000 places all over it: what is held stays small."""
    options = ["TILED=YES", "SPARSE_OK=TRUE", "BIGTIFF=YES"]
    path = str(tmp_path / "large.tif")
    raster = gdal.GetDriverByName("GTiff").Create(path, 60_000, 60_000, 1, gdal.GDT_Float32, options)
    raster.SetGeoTransform((5e5, 0.1, 0, 4.5e6, 0, -0.1))
    raster.SetSpatialRef(spatial(UTM))
    raster.GetRasterBand(1).WriteArray(np.full((2, 2), 40.0), 30_000, 50_000)
    raster = None
    asked = np.random.default_rng(1).uniform(0, 6000, (3000, 2)) * [1, -1] + [5e5, 4.5e6]
    asked[0] = (5e5 + 3000.1, 4.5e6 - 5000.1)
    tracemalloc.start()
    try:
        with Terrain(path) as terrain:
            found = terrain.height_at(asked, UTM)
        most = tracemalloc.get_traced_memory()[1]
    finally:
        tracemalloc.stop()
    assert found[0] == 40 and (found[1:] == 0).all()
    assert most < 60 << 20


def test_what_was_read_is_kept(tmp_path, monkeypatch):
    rows, columns = np.mgrid[0:600, 0:600]
    read = []
    own = Terrain._read
    monkeypatch.setattr(Terrain, "_read", lambda self, *at: read.append(at) or own(self, *at))
    with Terrain(save(tmp_path / "blocks.tif", rows + columns / 1000)) as terrain:
        points = [middle_of(column, row) for column, row in ((10, 10), (255.5, 255.5), (256, 30), (599, 599))]
        wanted = [10.01, 255.5 + 0.2555, 30.256, 599.599]
        assert terrain.height_at(points, UTM) == pytest.approx(wanted, abs=1e-6)
        assert sorted(read) == [(0, 0), (256, 0), (512, 512)]
        assert terrain.height_at(points, UTM) == pytest.approx(wanted, abs=1e-6)
        assert len(read) == 3


@pytest.mark.parametrize(
    ("how", "told"),
    [
        ({"bands": 3}, "picture"),
        ({"crs": None}, "coordinate reference system"),
        ({"place": None}, "where on the ground"),
        ({"crs": 'LOCAL_CS["somewhere",UNIT["metre",1]]'}, "coordinate reference system"),
    ],
    ids=["three bands", "no CRS", "no place", "a local CRS"],
)
def test_what_is_no_terrain_is_refused_in_two_sentences(tmp_path, how, told):
    path = save(tmp_path / "other.tif", SMALL, **how)
    with pytest.raises(YardwrightError, match=told) as raised:
        Terrain(path)
    assert raised.value.remedy


def test_a_table_of_colours_is_refused(tmp_path):
    raster = gdal.GetDriverByName("GTiff").Create(str(tmp_path / "cover.tif"), 2, 2, 1, gdal.GDT_Byte)
    raster.SetGeoTransform(PLACE)
    raster.SetSpatialRef(spatial(UTM))
    colours = gdal.ColorTable()
    colours.SetColorEntry(1, (0, 200, 0, 255))
    raster.GetRasterBand(1).SetColorTable(colours)
    raster = None
    with pytest.raises(YardwrightError, match="picture"):
        Terrain(str(tmp_path / "cover.tif"))


@pytest.mark.parametrize("exceptions", [False, True])
def test_a_missing_or_broken_file_is_told(tmp_path, exceptions):
    before = gdal.GetUseExceptions()
    path = save(tmp_path / "broken.tif", np.random.default_rng(3).random((600, 600)))
    with open(path, "r+b") as file:
        file.truncate(100_000)
    (gdal.UseExceptions if exceptions else gdal.DontUseExceptions)()
    try:
        with pytest.raises(YardwrightError, match="terrain"):
            Terrain(str(tmp_path / "none.tif"))
        with pytest.raises(YardwrightError, match="terrain"), Terrain(path) as terrain:
            terrain.height_at([middle_of(500, 500)], UTM)
    finally:
        (gdal.UseExceptions if before else gdal.DontUseExceptions)()
