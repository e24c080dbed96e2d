"""What hides the ground: found for what the map shows, corrected with the brush, kept beside the course."""

import numpy as np
import pytest
from osgeo import gdal, osr
from qgis.core import QgsRasterLayer, QgsRectangle
from qgis.PyQt.QtCore import QDate, QEvent, QPoint, QPointF, Qt
from qgis.PyQt.QtGui import QKeyEvent, QMouseEvent, QWheelEvent
from qgis.PyQt.QtTest import QTest
from qgis.PyQt.QtWidgets import QApplication
from scipy.ndimage import gaussian_filter

from tests.desk.conftest import EAST, NORTH
from tests.desk.test_dates import add_raster, add_row, pixels
from tests.desk.test_in_hand import in_hand  # noqa: F401  the fixture
from tests.desk.test_toolbar import iface  # noqa: F401  the fixture
from tests.tiles import tiles_of

SHADE, MOVER, SEEN = 1, 8, 128
ORIGIN = EAST - 250, NORTH + 150
PIXEL, SIDE = 0.4, 500
SHADOW = slice(200, 260), slice(150, 350)
"""Rows and columns of turf that lie in shade on the older date only."""


def turf(seed):
    """Mown grass with its grain, (SIDE, SIDE, 3)."""
    grain = np.random.default_rng(seed).normal(0, 1, (SIDE, SIDE))
    texture = 6 * gaussian_filter(grain, 1.2) * 3 + 4 * gaussian_filter(grain, 12) * 12
    return np.array([104.0, 138.0, 74.0]) + texture[..., None]


def write_picture(path, values):
    path.parent.mkdir(exist_ok=True)
    image = gdal.GetDriverByName("GTiff").Create(str(path), SIDE, SIDE, 3, gdal.GDT_Byte)
    image.SetGeoTransform((ORIGIN[0], PIXEL, 0, ORIGIN[1], 0, -PIXEL))
    crs = osr.SpatialReference()
    crs.ImportFromEPSG(32630)
    image.SetProjection(crs.ExportToWkt())
    for band in range(3):
        image.GetRasterBand(band + 1).WriteArray(np.clip(values[..., band], 0, 255).astype(np.uint8))
    image = None
    return path


@pytest.fixture
def dated(in_hand, tmp_path):  # noqa: F811
    """Two dates of turf: on the older one a shadow, darker, and bluer for the sky lights it."""
    pictures = {"2025-07-02": turf(1), "2024-10-09": turf(1) * 0.95}
    older = pictures["2024-10-09"]
    older[SHADOW] *= (0.36, 0.40, 0.50)
    layers = {}
    for day, values in pictures.items():
        layers[day] = add_raster(write_picture(tmp_path / "images" / f"{day}.tif", values))
        taken = QDate.fromString(day, "yyyy-MM-dd")
        add_row(in_hand.layer("image"), id=day, source=f"images/{day}.tif", taken=taken, gsd_m=PIXEL)
    return layers


@pytest.fixture
def panel(in_hand, dated, qtbot):  # noqa: F811
    from yardwright.desk.dates_panel import DatesPanel
    from yardwright.desk.hidden_panel import HiddenPanel

    window, canvas = in_hand.iface.window, in_hand.iface.canvas
    window.setCentralWidget(canvas)
    window.resize(1000, 700)
    window.show()
    qtbot.waitExposed(window)
    canvas.setDestinationCrs(in_hand.layer("hole").crs())
    canvas.setLayers([*dated.values()])
    canvas.setExtent(QgsRectangle(EAST - 200, NORTH + 0, EAST - 100, NORTH + 100))
    dates = DatesPanel(in_hand, window)
    dates.show_date("2024-10-09")
    panel = HiddenPanel(in_hand, dates, window)
    in_hand.iface.addDockWidget(Qt.DockWidgetArea.RightDockWidgetArea, panel)
    panel.show()
    yield panel
    panel.let_go()
    dates.let_go()


def found(panel, qtbot):
    """The mask once it is found."""
    qtbot.waitUntil(lambda: panel.masks._found is not None and not panel.masks.busy, timeout=30000)
    return panel.masks.mask


def at(panel, rows, columns):
    """Where pixels of the pictures lie in the mask that is shown: rows and columns of the mask."""
    g = panel.masks.grid.geotransform
    x, y = ORIGIN[0] + (np.asarray(columns) + 0.5) * PIXEL, ORIGIN[1] - (np.asarray(rows) + 0.5) * PIXEL
    return np.floor((g[3] - y) / -g[5]).astype(int), np.floor((x - g[0]) / g[1]).astype(int)


def on_screen(panel, rows, columns):
    """The same on the screen, QPoint."""
    x, y = ORIGIN[0] + columns * PIXEL, ORIGIN[1] - rows * PIXEL
    place = panel.canvas.getCoordinateTransform().transform(x, y)
    return QPoint(round(place.x()), round(place.y()))


def stroke(panel, *places):
    view = panel.canvas.viewport()
    first, *others = (on_screen(panel, *place) for place in places)
    QTest.mousePress(view, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, first)
    for place in others:
        button, no_key = Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier
        move = QMouseEvent(QEvent.Type.MouseMove, QPointF(place), button, button, no_key)
        QApplication.sendEvent(view, move)
    end = others[-1] if others else first
    QTest.mouseRelease(view, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, end)


def test_what_hides_is_found_for_what_the_map_shows(panel, qtbot):
    mask = found(panel, qtbot)
    rows, columns = np.meshgrid(np.arange(205, 255, 5), np.arange(160, 340, 10), indexing="ij")
    shaded = mask[at(panel, rows, columns)]
    assert (shaded & SHADE).astype(bool).mean() > 0.9
    elsewhere = mask[at(panel, rows + 90, columns)]
    assert (elsewhere & SHADE).astype(bool).mean() < 0.05
    assert "%" in panel.ticks[SHADE].text() and panel.in_hand.iface.bar.messages == []


def test_it_is_seen_on_the_map_and_each_kind_can_be_left_out(panel, qtbot):
    found(panel, qtbot)
    view = panel.canvas.viewport()
    place = on_screen(panel, 230, 250)
    window = slice(place.y() - 12, place.y() + 12), slice(place.x() - 12, place.x() + 12)

    def shot():
        panel.canvas.waitWhileRendering()
        return pixels(view.grab().toImage())[window].astype(int)

    with_shade = shot()
    panel.ticks[SHADE].setChecked(False)
    without = shot()
    assert np.abs(with_shade - without).mean() > 15
    # A pattern, not only a colour: it varies from pixel to pixel more than what lies below.
    assert with_shade.std(axis=(0, 1)).mean() > without.std(axis=(0, 1)).mean() + 5
    panel.ticks[SHADE].setChecked(True)
    assert np.abs(shot() - with_shade).mean() < 1


def test_the_brush_says_what_is_hidden_and_what_is_seen(panel, qtbot, tmp_path):
    found(panel, qtbot)
    panel.brush_button.click()
    assert panel.canvas.mapTool() is panel.tool
    panel.tool.resize(4.0)
    panel.values.button(SEEN).click()
    stroke(panel, (230, 180), (230, 220))
    panel.values.button(MOVER).click()
    stroke(panel, (400, 300))
    mask = panel.masks.mask
    assert mask[at(panel, 230, 200)] == 0 and panel.masks.corrected[at(panel, 230, 200)] == SEEN
    assert mask[at(panel, 400, 300)] == MOVER
    assert mask[at(panel, 230, 300)] & SHADE
    # As found again, in the middle of it.
    panel.values.button(0).click()
    stroke(panel, (230, 200))
    assert panel.masks.mask[at(panel, 230, 200)] & SHADE
    assert len(panel.masks.strokes) == 3
    kept = tmp_path / "Larkmere_dates" / "2024-10-09_hidden.tif"
    assert not kept.exists()
    panel.save_button.click()
    assert kept.exists() and panel.masks.strokes == []
    assert panel.masks.mask[at(panel, 400, 300)] == MOVER
    assert not panel.save_button.isEnabled()


def test_a_stroke_is_taken_back_and_painted_again(panel, qtbot):
    found(panel, qtbot)
    panel.brush_button.click()
    panel.values.button(MOVER).click()
    stroke(panel, (400, 300))
    stroke(panel, (400, 340))
    canvas = panel.canvas
    QTest.keyClick(canvas, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert [panel.masks.mask[at(panel, 400, column)] for column in (300, 340)] == [MOVER, 0]
    QTest.keyClick(canvas, Qt.Key.Key_Y, Qt.KeyboardModifier.ControlModifier)
    assert panel.masks.mask[at(panel, 400, 340)] == MOVER
    panel.undo_button.click()
    panel.undo_button.click()
    assert not panel.undo_button.isEnabled() and panel.redo_button.isEnabled()
    assert panel.masks.mask[at(panel, 400, 300)] == 0


def test_what_was_corrected_is_kept_when_the_brush_is_laid_down(panel, qtbot, tmp_path):
    found(panel, qtbot)
    panel.brush_button.click()
    stroke(panel, (400, 300))
    QTest.keyClick(panel.canvas, Qt.Key.Key_Escape)
    assert panel.canvas.mapTool() is not panel.tool and not panel.brush_button.isChecked()
    kept = tmp_path / "Larkmere_dates" / "2024-10-09_hidden.tif"
    assert kept.exists()
    # Of the other date nothing was corrected; of this one it is still there.
    panel.dates.show_date("2025-07-02")
    assert panel.masks.date == "2025-07-02" and not panel.masks.corrected.any()
    panel.dates.show_date("2024-10-09")
    assert panel.masks.corrected[at(panel, 400, 300)] == SHADE


def test_the_size_of_the_brush(panel, qtbot):
    found(panel, qtbot)
    panel.brush_button.click()
    panel.tool.resize(4.0)
    canvas = panel.canvas
    scale = canvas.scale()
    for text, key in (
        ("]", Qt.Key.Key_BracketRight),
        ("]", Qt.Key.Key_BracketRight),
        ("[", Qt.Key.Key_BracketLeft),
    ):
        canvas.keyPressEvent(QKeyEvent(QKeyEvent.Type.KeyPress, key, Qt.KeyboardModifier.NoModifier, text))
    assert panel.tool.radius == pytest.approx(5.0) and panel.radius_box.value() == 5.0
    middle = canvas.viewport().rect().center()
    wheel = QWheelEvent(
        middle, canvas.viewport().mapToGlobal(middle), QPoint(), QPoint(0, 120), Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.ShiftModifier, Qt.ScrollPhase.NoScrollPhase, False,
    )  # fmt: skip
    canvas.wheelEvent(wheel)
    assert panel.tool.radius == pytest.approx(6.25) and canvas.scale() == scale
    # The ring is as large as the brush: 6.25 m on the ground.
    assert panel.tool.pixels() == pytest.approx(6.25 / canvas.mapUnitsPerPixel(), rel=0.001)
    panel.radius_box.setValue(2.0)
    assert panel.tool.radius == 2.0


def test_too_far_off_to_tell(panel, qtbot):
    found(panel, qtbot)
    panel.canvas.setExtent(QgsRectangle(EAST - 3000, NORTH - 3000, EAST + 3000, NORTH + 3000))
    qtbot.waitUntil(lambda: "Zoom in" in panel.says.text(), timeout=20_000)
    assert panel.masks.mask is None and panel.item._layers == []


def test_no_date_on_the_map(panel, qtbot):
    found(panel, qtbot)
    root = panel.in_hand.project.layerTreeRoot()
    for node in root.findLayers():
        node.setItemVisibilityChecked(False)
    qtbot.waitUntil(lambda: panel.masks.date == "", timeout=20_000)
    assert "one date alone" in panel.says.text() and not panel.brush_button.isEnabled()
    assert panel.in_hand.iface.bar.messages == []


def test_a_date_that_cannot_be_read_is_said(panel, qtbot, tmp_path):
    found(panel, qtbot)
    (tmp_path / "images" / "2024-10-09.tif").write_bytes(b"no image")
    panel.masks.forget()
    qtbot.waitUntil(lambda: "2024-10-09" in panel.says.text() and not panel.masks.busy, timeout=20000)


def test_a_date_on_a_server_is_fetched_and_can_be_corrected(panel, qtbot, tmp_path):
    source = tiles_of(tmp_path / "images" / "2024-10-09.tif", tmp_path / "tiles", 18, PIXEL)
    layer = QgsRasterLayer(source, "tiles", "wms")
    panel.in_hand.project.addMapLayer(layer)
    panel.canvas.setLayers([layer])
    taken = QDate(2023, 5, 1)
    add_row(panel.in_hand.layer("image"), id="tiles", source=source, taken=taken, gsd_m=PIXEL)
    found(panel, qtbot)
    panel.in_hand.refresh()
    panel.dates.refresh()
    panel.dates.show_date("tiles")
    assert panel.masks.date == "tiles"
    mask = found(panel, qtbot)
    assert not panel.masks.says
    rows, columns = np.meshgrid(np.arange(205, 255, 5), np.arange(160, 340, 10), indexing="ij")
    assert (mask[at(panel, rows, columns)] & SHADE > 0).mean() > 0.9
    assert (mask[at(panel, rows + 90, columns)] & SHADE > 0).mean() < 0.05
    panel.brush_button.click()
    panel.values.button(SEEN).click()
    stroke(panel, (230, 180), (230, 220))
    assert panel.masks.save() == 1
    assert (tmp_path / "Larkmere_dates" / "tiles_hidden.tif").exists()
    assert panel.masks.mask[at(panel, 230, 200)] == 0


def test_closed_it_leaves_the_map_as_it_was(panel, qtbot):
    found(panel, qtbot)
    canvas = panel.canvas
    there = len(canvas.scene().items())
    panel.brush_button.click()
    panel.hide()
    assert len(canvas.scene().items()) == there - 1 and canvas.mapTool() is not panel.tool
    assert not panel.masks.busy


def test_on_a_map_that_is_turned_and_in_another_system(panel, qtbot):
    """The brush paints where it is on the ground, and what is shown lies there."""
    from qgis.core import QgsCoordinateReferenceSystem, QgsCoordinateTransform, QgsPointXY, QgsProject

    canvas = panel.canvas
    web = QgsCoordinateReferenceSystem("EPSG:3857")
    to_web = QgsCoordinateTransform(
        panel.in_hand.layer("hole").crs(), web, QgsProject.instance().transformContext()
    )
    canvas.setDestinationCrs(web)
    canvas.setRotation(25)
    middle = to_web.transform(QgsPointXY(EAST - 150, NORTH + 58))
    canvas.setExtent(QgsRectangle(middle.x() - 80, middle.y() - 80, middle.x() + 80, middle.y() + 80))
    found(panel, qtbot)
    panel.brush_button.click()
    panel.values.button(MOVER).click()
    panel.tool.resize(4.0)
    spot = EAST - 130.0, NORTH + 90.0
    place = canvas.getCoordinateTransform().transform(to_web.transform(QgsPointXY(*spot)))
    QTest.mouseClick(
        canvas.viewport(),
        Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
        QPoint(round(place.x()), round(place.y())),
    )
    row, column = round((ORIGIN[1] - spot[1]) / PIXEL), round((spot[0] - ORIGIN[0]) / PIXEL)
    mask = panel.masks.mask
    assert mask[at(panel, row, column)] == MOVER
    # 4 m on the ground, not 4 m of the map, which are half as long here.
    area = (mask == MOVER).sum() * panel.masks.grid.geotransform[1] ** 2
    assert area == pytest.approx(np.pi * 16, rel=0.1)
    # The corners of what is shown lie on the map where the grid's lie on the ground.
    left, top = panel.masks.grid.to_ground([(0, 0)])[0]
    assert panel.masks.corners()[0].distance(to_web.transform(QgsPointXY(left, top))) < 0.01
