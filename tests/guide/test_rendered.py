"""Windows of layers that only QGIS can fetch: drawn by its renderer, in their place like those of GDAL."""

import math
import os

import numpy as np
import pytest
from osgeo import gdal, osr
from shapely.geometry import LineString, Polygon
from yardwright.guide.windows import Panel, plan_window
from yardwright.measure.frame import HoleFrame
from yardwright.measure.hole import play_hole
from yardwright.model.course import Course, Feature, Hole

CRS = "EPSG:32630"
HERE = HoleFrame(-2.803, 56.343)
SPOTS = np.array([(0.0, 0.0), (-6.0, 9.0), (8.0, -5.0), (2.0, -11.0)])
ORIGIN, WORLD = 20037508.342789244, 40075016.685578488
ZOOM = 20


@pytest.fixture(scope="module")
def plan():
    """The green's window of a short hole that is played to the south-west."""
    to_crs = HERE.from_frame(CRS)
    turns = np.arange(0, 2 * np.pi, 0.1)
    green = Polygon(to_crs(8 * np.column_stack([np.cos(turns), np.sin(turns)])))
    line = LineString(to_crs(np.array([(90.0, 120.0), (0.0, 0.0)])))
    course = Course("Test", CRS, (Hole(1, line, fid=1, par=4),), (Feature("green", 1, green, (1,)),))
    return plan_window(play_hole(course, 1), "green", Panel(60, 60, 150), CRS)


@pytest.fixture(scope="module")
def tiles(tmp_path_factory):
    """Map tiles of the usual web scheme on disk, with a bright spot at each of SPOTS; the layer's source."""
    folder = tmp_path_factory.mktemp("tiles")
    x, y = HERE.from_frame("EPSG:3857")(np.array([(0.0, 0.0)]))[0]
    side = WORLD / 2**ZOOM
    column, row = int((x + ORIGIN) / side), int((ORIGIN - y) / side)
    size, reach = 256, 3
    to_frame = HERE.to_frame("EPSG:3857")
    middles = (np.arange(size) + 0.5) * side / size
    for tile_x in range(column - reach, column + reach + 1):
        for tile_y in range(row - reach, row + reach + 1):
            east, north = np.meshgrid(tile_x * side - ORIGIN + middles, ORIGIN - tile_y * side - middles)
            ground = to_frame(np.column_stack([east.ravel(), north.ravel()]))
            values = np.full(len(ground), 60.0)
            for spot in SPOTS:
                values += 150 * np.exp(-((ground - spot) ** 2).sum(axis=1) / (2 * 0.8**2))
            memory = gdal.GetDriverByName("MEM").Create("", size, size, 3)
            for band in range(3):
                memory.GetRasterBand(band + 1).WriteArray(np.clip(values, 0, 255).reshape(size, size))
            os.makedirs(folder / str(ZOOM) / str(tile_x), exist_ok=True)
            gdal.GetDriverByName("PNG").CreateCopy(
                str(folder / str(ZOOM) / str(tile_x) / f"{tile_y}.png"), memory
            )
    return f"type=xyz&url=file://{folder}/{{z}}/{{x}}/{{y}}.png&zmin={ZOOM}&zmax={ZOOM}"


def middle_of(values, at, reach):
    column, row = np.meshgrid(np.arange(values.shape[1]) + 0.5, np.arange(values.shape[0]) + 0.5)
    near = (column - at[0]) ** 2 + (row - at[1]) ** 2 < reach**2
    weight = np.where(near, np.clip(values.astype(float) - 60, 0, None), 0)
    return np.array([(column * weight).sum(), (row * weight).sum()]) / weight.sum()


def test_tiles_from_the_web_lie_where_the_window_says(qgis_app, tmp_path, plan, tiles):
    """Within a quarter of a pixel, 2 cm on the ground: QGIS reprojects less exactly than GDAL."""
    from qgis.core import QgsRasterLayer
    from yardwright.guide.rendered import image_source, make_picture

    layer = QgsRasterLayer(tiles, "tiles", "wms")
    assert layer.isValid()
    made = make_picture(image_source(layer), plan, str(tmp_path))
    assert set(os.listdir(tmp_path)) == {
        "green_01.tif",
        "green_01.png",
        "green_01.pgw",
        "green_01.png.aux.xml",
    }
    pixels = gdal.Open(made.tif).ReadAsArray()
    assert (pixels[3] == 255).all()
    pixel_m = plan.ground[0] / plan.grid.width
    expected = plan.grid.to_pixels(HERE.from_frame(CRS)(SPOTS))
    for at in expected:
        assert np.abs(middle_of(pixels[0], at, 2.5 / pixel_m) - at).max() < 0.25


def test_a_server_that_is_not_there(qgis_app, tmp_path, plan):
    from qgis.core import QgsRasterLayer
    from yardwright.guide.rendered import image_source, make_picture
    from yardwright.model.errors import YardwrightError

    source = f"type=xyz&url=file://{tmp_path}/none/{{z}}/{{x}}/{{y}}.png&zmax=20&zmin=20"
    layer = QgsRasterLayer(source, "none", "wms")
    folder = tmp_path / "out"
    folder.mkdir()
    with pytest.raises(YardwrightError):
        make_picture(image_source(layer), plan, str(folder))
    assert os.listdir(folder) == []


def test_drawing_can_be_stopped(qgis_app, tmp_path, plan, tiles, monkeypatch):
    from qgis.core import QgsRasterLayer
    from yardwright.guide import rendered
    from yardwright.model.errors import Cancelled

    monkeypatch.setattr(rendered, "_LOOK_EVERY_MS", 0)
    layer = QgsRasterLayer(tiles, "tiles", "wms")
    with pytest.raises(Cancelled):
        rendered.make_picture(
            rendered.image_source(layer), plan, str(tmp_path), progress=lambda done, total: False
        )
    assert os.listdir(tmp_path) == []


def test_an_image_file_is_cut_with_gdal(qgis_app, tmp_path, plan):
    """Through a layer whose file names no CRS: the one set in QGIS counts."""
    from qgis.core import QgsCoordinateReferenceSystem, QgsRasterLayer
    from yardwright.guide.rendered import image_source, make_picture

    path = str(tmp_path / "image.tif")
    x, y = plan.grid.to_ground([(plan.grid.width / 2, plan.grid.height / 2)])[0]
    image = gdal.GetDriverByName("GTiff").Create(path, 300, 300, 3)
    image.SetGeoTransform((x - 30, 0.2, 0, y + 30, 0, -0.2))
    for band in range(3):
        image.GetRasterBand(band + 1).Fill(77)
    image = None
    layer = QgsRasterLayer(path, "image")
    layer.setCrs(QgsCoordinateReferenceSystem(CRS))
    source = image_source(layer)
    assert (source.provider, source.path, source.crs) == ("gdal", path, CRS)
    made = make_picture(source, plan, str(tmp_path))
    middle = gdal.Open(made.tif).ReadAsArray()[:, plan.grid.height // 2, plan.grid.width // 2]
    assert tuple(middle) == (77, 77, 77, 255)


def test_a_raster_inside_a_geopackage(qgis_app, tmp_path, plan):
    from qgis.core import QgsRasterLayer
    from yardwright.guide.rendered import image_source, make_picture

    path = str(tmp_path / "images.gpkg")
    x, y = plan.grid.to_ground([(plan.grid.width / 2, plan.grid.height / 2)])[0]
    memory = gdal.GetDriverByName("MEM").Create("", 300, 300, 3)
    memory.SetGeoTransform((x - 30, 0.2, 0, y + 30, 0, -0.2))
    srs = osr.SpatialReference()
    srs.SetFromUserInput(CRS)
    memory.SetSpatialRef(srs)
    for band in range(3):
        memory.GetRasterBand(band + 1).Fill(77)
    gdal.GetDriverByName("GPKG").CreateCopy(path, memory, 0, ["RASTER_TABLE=summer", "TILE_FORMAT=PNG"])
    layer = QgsRasterLayer(f"GPKG:{path}:summer", "image")
    assert layer.isValid()
    made = make_picture(image_source(layer), plan, str(tmp_path))
    middle = gdal.Open(made.tif).ReadAsArray()[:3, plan.grid.height // 2, plan.grid.width // 2]
    assert tuple(middle) == (77, 77, 77)


def test_the_frame_is_the_same_plane_in_qgis(qgis_app):
    from qgis.core import QgsCoordinateReferenceSystem, QgsCoordinateTransform, QgsPointXY, QgsProject
    from yardwright.guide.rendered import frame_crs

    frame = HoleFrame(-2.803, 56.343, 900.0)
    transform = QgsCoordinateTransform(
        QgsCoordinateReferenceSystem("EPSG:4326"), frame_crs(frame), QgsProject.instance()
    )
    there = transform.transform(QgsPointXY(-2.80, 56.345))
    ours = frame.to_frame("EPSG:4326")(np.array([(-2.80, 56.345)]))[0]
    assert math.hypot(there.x() - ours[0], there.y() - ours[1]) < 1e-4


def test_in_a_task_as_processing_runs_it(qgis_app, qtbot, tmp_path, plan, tiles):
    """The desktop runs an algorithm outside the main thread: the layer is opened anew there."""
    from qgis.core import QgsApplication, QgsRasterLayer, QgsTask
    from yardwright.guide.rendered import image_source, make_picture

    source = image_source(QgsRasterLayer(tiles, "tiles", "wms"))
    ended = []

    def work(task):
        return make_picture(source, plan, str(tmp_path)).picture

    def finished(error, picture=None):
        ended.append((error, picture))

    task = QgsTask.fromFunction("window", work, on_finished=finished)
    QgsApplication.taskManager().addTask(task)
    qtbot.waitUntil(lambda: bool(ended), timeout=20000)
    assert ended == [(None, str(tmp_path / "green_01.png"))]
    pixels = gdal.Open(str(tmp_path / "green_01.tif")).ReadAsArray()
    assert (pixels[3] == 255).all()
    assert pixels[0].max() > 200
