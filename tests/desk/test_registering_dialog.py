"""Dates laid one on another in their window: found, looked at, set by hand, accepted, left."""

import numpy as np
import pytest
from osgeo import gdal, osr
from qgis.core import QgsPointXY, QgsRectangle
from qgis.PyQt.QtCore import QDate, QPoint, Qt
from qgis.PyQt.QtTest import QTest
from scipy.ndimage import gaussian_filter
from yardwright.model.errors import YardwrightError

from tests.desk.conftest import EAST, NORTH
from tests.desk.test_dates import add_raster, add_row, pixels
from tests.desk.test_in_hand import in_hand  # noqa: F401  the fixture
from tests.desk.test_toolbar import iface  # noqa: F401  the fixture
from tests.tiles import tiles_of

PIXEL, SIDE = 0.5, 900
ORIGIN = EAST - 60, NORTH + 400
OFF = 1.35, -0.8
"""By how much the file of the date of 2024 puts everything too far east and north, metres."""


def ground(seed):
    """Fields with edges of all directions and some grain, (SIDE, SIDE, 3)."""
    random = np.random.default_rng(seed)
    fields = gaussian_filter(random.normal(0, 1, (SIDE, SIDE)), 9)
    steps = np.digitize(fields, np.quantile(fields, (0.25, 0.5, 0.75))) * 28.0
    grain = 5 * gaussian_filter(random.normal(0, 1, (SIDE, SIDE)), 0.8) * 2
    return np.array([70.0, 96.0, 60.0]) + (steps + grain)[..., None]


def write_picture(path, values, off=(0.0, 0.0)):
    path.parent.mkdir(exist_ok=True)
    image = gdal.GetDriverByName("GTiff").Create(str(path), SIDE, SIDE, 3, gdal.GDT_Byte)
    image.SetGeoTransform((ORIGIN[0] + off[0], PIXEL, 0, ORIGIN[1] + off[1], 0, -PIXEL))
    crs = osr.SpatialReference()
    crs.ImportFromEPSG(32630)
    image.SetProjection(crs.ExportToWkt())
    for band in range(3):
        image.GetRasterBand(band + 1).WriteArray(np.clip(values[..., band], 0, 255).astype(np.uint8))
    image = None
    return path


@pytest.fixture
def dated(in_hand, tmp_path):  # noqa: F811
    """The newest date, one of the same ground that lies off by OFF, and one of quite another ground."""
    made = {
        "2025-07-02": (ground(1), (0.0, 0.0)),
        "2024-10-09": (0.8 * ground(1) + 12, OFF),
        "2023-04-12": (ground(2), (0.0, 0.0)),
    }
    layers = {}
    for day, (values, off) in made.items():
        layers[day] = add_raster(write_picture(tmp_path / "images" / f"{day}.tif", values, off))
        taken = QDate.fromString(day, "yyyy-MM-dd")
        add_row(in_hand.layer("image"), id=day, source=f"images/{day}.tif", taken=taken, gsd_m=PIXEL)
    return layers


@pytest.fixture
def dialog(in_hand, dated, qtbot):  # noqa: F811
    from yardwright.desk.dates_panel import DatesPanel
    from yardwright.desk.registering_dialog import RegisteringDialog

    window, canvas = in_hand.iface.window, in_hand.iface.canvas
    window.setCentralWidget(canvas)
    window.resize(700, 600)
    window.show()
    qtbot.waitExposed(window)
    canvas.setDestinationCrs(in_hand.layer("hole").crs())
    canvas.setLayers([*dated.values()])
    canvas.setExtent(QgsRectangle(EAST, NORTH + 50, EAST + 200, NORTH + 250))
    panel = DatesPanel(in_hand, window)
    dialog = RegisteringDialog(in_hand, panel, window)
    dialog.show()
    yield dialog
    dialog.let_go()
    panel.let_go()


def run(dialog, qtbot):
    dialog.begin_button.click()
    qtbot.waitUntil(lambda: dialog._work is None, timeout=90000)


def row(dialog, date_id):
    items = [dialog.list.topLevelItem(n) for n in range(dialog.list.topLevelItemCount())]
    item = next(each for each in items if each.text(0) == date_id)
    return [item.text(column) for column in range(7)]


def choose(dialog, date_id):
    items = [dialog.list.topLevelItem(n) for n in range(dialog.list.topLevelItemCount())]
    dialog.list.setCurrentItem(next(each for each in items if each.text(0) == date_id))


def test_what_is_asked_at_first(dialog):
    assert dialog.base_id() == "2025-07-02"
    assert dialog.ticked() == ["2024-10-09", "2023-04-12"]
    assert row(dialog, "2024-10-09")[6] == "Not looked at yet."
    assert dialog.begin_button.isEnabled() and not dialog.accept_button.isEnabled()


def test_the_base_is_what_most_is_drawn_from(in_hand, dated):  # noqa: F811
    from yardwright.desk.registering import dates_to_register

    layer = in_hand.layer("green")
    layer.startEditing()
    for feature in layer.getFeatures():
        layer.changeAttributeValue(feature.id(), layer.fields().lookupField("seen_in"), "2024-10-09")
    base, dates = dates_to_register(in_hand)
    assert base == "2024-10-09"
    assert [date.id for date in dates] == ["2025-07-02", "2024-10-09", "2023-04-12"]
    layer.rollBack()


def test_a_date_is_found_to_lie_off_and_another_cannot_be(dialog, qtbot):
    run(dialog, qtbot)
    found = dialog.registration("2024-10-09")
    assert found.shift == pytest.approx((-OFF[0], -OFF[1]), abs=0.05)
    texts = row(dialog, "2024-10-09")
    assert [float(text) for text in texts[1:3]] == pytest.approx([-OFF[0], -OFF[1]], abs=0.06)
    # The file puts it 1.35 m east and 0.8 m south: to the south-east of its place.
    assert texts[3] == "shifted" and "1.5" in texts[6] and "south-east" in texts[6]
    item = dialog.list.topLevelItem(0)
    assert item.toolTip(1).endswith(" yd") and float(item.toolTip(1).split()[0]) == pytest.approx(
        -OFF[0] / 0.9144, abs=0.06
    )
    assert isinstance(dialog.found["2023-04-12"], YardwrightError)
    assert "by hand" in row(dialog, "2023-04-12")[6]
    assert dialog.accept_button.isEnabled()


def test_only_what_is_ticked_is_looked_at(dialog, qtbot):
    dialog.list.topLevelItem(1).setCheckState(0, Qt.CheckState.Unchecked)
    run(dialog, qtbot)
    assert set(dialog.found) == {"2024-10-09"}
    dialog.list.topLevelItem(0).setCheckState(0, Qt.CheckState.Unchecked)
    assert not dialog.begin_button.isEnabled() and not dialog.accept_button.isEnabled()


def test_the_arrows_of_the_row_that_is_chosen(dialog, qtbot):
    canvas = dialog.canvas
    there = len(canvas.scene().items())
    run(dialog, qtbot)
    choose(dialog, "2024-10-09")
    assert len(dialog._arrows._arrows) == len(dialog.registration("2024-10-09").ties)
    choose(dialog, "2023-04-12")
    assert dialog._arrows is None
    choose(dialog, "2024-10-09")
    dialog.arrows_tick.setChecked(False)
    assert dialog._arrows is None
    dialog.arrows_tick.setChecked(True)
    dialog.close()
    assert len(canvas.scene().items()) == there


def test_it_can_be_stopped_and_begun_again(dialog, qtbot):
    dialog.begin_button.click()
    assert dialog.stop_button.isVisible() and not dialog.begin_button.isEnabled()
    dialog.stop_button.click()
    assert dialog._work is None and dialog.begin_button.isEnabled()
    run(dialog, qtbot)
    assert dialog.registration("2024-10-09") is not None


def test_a_date_from_the_web_is_fetched_and_found(dialog, qtbot, tmp_path):
    source = tiles_of(tmp_path / "images" / "2024-10-09.tif", tmp_path / "tiles")
    add_row(dialog.in_hand.layer("image"), id="web", source=source, taken=QDate(2022, 5, 1), gsd_m=PIXEL)
    dialog.in_hand.refresh()
    dialog.refresh()
    for n in range(dialog.list.topLevelItemCount()):
        item = dialog.list.topLevelItem(n)
        item.setCheckState(0, Qt.CheckState.Checked if item.text(0) == "web" else Qt.CheckState.Unchecked)
    run(dialog, qtbot)
    assert list(dialog.found) == ["web"]
    # Half a pixel: QGIS reprojects tiles less exactly than GDAL does files.
    assert dialog.registration("web").shift == pytest.approx((-OFF[0], -OFF[1]), abs=0.25)


def click(dialog, x, y):
    """A click on the map at a place on the ground."""
    canvas = dialog.canvas
    place = canvas.getCoordinateTransform().transform(QgsPointXY(x, y))
    QTest.mouseClick(
        canvas.viewport(), Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier,
        QPoint(round(place.x()), round(place.y())),
    )  # fmt: skip


SPOTS = [(EAST + 40, NORTH + 100), (EAST + 160, NORTH + 120), (EAST + 90, NORTH + 200)]


def test_ties_by_hand(dialog, qtbot):
    choose(dialog, "2024-10-09")
    dialog.ties_button.click()
    ties = dialog.ties
    assert ties.at_work and dialog.panel.date_in_hand == "2025-07-02"
    for number, (x, y) in enumerate(SPOTS, start=1):
        # The date is shown first, and the spot clicked where its file puts it; then the base.
        assert dialog.panel.comparison.held and f"Pair {number}" in ties.says.text()
        click(dialog, x + 10 * OFF[0], y + 10 * OFF[1])
        assert not dialog.panel.comparison.held
        click(dialog, x, y)
    pixel = dialog.canvas.mapUnitsPerPixel()
    for number in range(3):
        item = ties.list.topLevelItem(number)
        assert float(item.text(1)) == pytest.approx(-10 * OFF[0], abs=2 * pixel)
        assert float(item.text(2)) == pytest.approx(-10 * OFF[1], abs=2 * pixel)
        assert float(item.text(3)) <= 2 * pixel
    ties.delete(1)
    assert ties.list.topLevelItemCount() == 2
    QTest.keyClick(dialog.canvas, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: dialog._work is None and "2024-10-09" in dialog.found, timeout=20000)
    assert not ties.at_work and not dialog.panel.comparison.held
    found = dialog.registration("2024-10-09")
    assert found.shift == pytest.approx((-10 * OFF[0], -10 * OFF[1]), abs=2 * pixel)
    assert [tie.role for tie in found.ties] == ["hand", "hand"]


def test_which_side_a_click_is_on_is_what_is_seen(dialog, qtbot):
    """With the divider: beyond it the date, before it the base; in either order."""
    choose(dialog, "2024-10-09")
    dialog.panel.swipe(True)
    dialog.ties_button.click()
    ties = dialog.ties
    (x, y), _, _ = SPOTS
    click(dialog, EAST + 40, NORTH + 100)
    assert ties.pairs[0].on_base is not None and ties.pairs[0].on_date is None
    click(dialog, EAST + 160, NORTH + 100)
    assert ties.pairs[0].whole and len(ties.pairs) == 1
    QTest.keyClick(dialog.canvas, Qt.Key.Key_Backspace)
    assert ties.pairs == []
    QTest.keyClick(dialog.canvas, Qt.Key.Key_Escape)
    assert not ties.at_work


def test_accepted_the_date_and_what_was_drawn_from_it_move(dialog, qtbot):
    in_hand = dialog.in_hand  # noqa: F811
    bunkers, greens = in_hand.layer("bunker"), in_hand.layer("green")
    for layer, day in ((bunkers, "2024-10-09"), (greens, "2025-07-02")):
        layer.startEditing()
        for feature in layer.getFeatures():
            layer.changeAttributeValue(feature.id(), layer.fields().lookupField("seen_in"), day)
        assert layer.commitChanges()
    before = [one.geometry().centroid().asPoint() for one in (*bunkers.getFeatures(), *greens.getFeatures())]
    run(dialog, qtbot)
    dialog.accept_button.click()
    now = [one.geometry().centroid().asPoint() for one in (*bunkers.getFeatures(), *greens.getFeatures())]
    assert (now[0].x() - before[0].x(), now[0].y() - before[0].y()) == pytest.approx(
        (-OFF[0], -OFF[1]), abs=0.06
    )
    assert now[1:] == before[1:]
    told = [item.text() for item in dialog.bar.items()]
    assert any("moved along: 1." in text for text in told), told
    images = in_hand.layer("image")
    rows = {one["id"]: one for one in images.getFeatures()}
    assert rows["2024-10-09"]["shift_e_m"] == pytest.approx(-OFF[0], abs=0.06)
    assert 0 <= rows["2024-10-09"]["rmse_m"] < 0.1
    # Not saved; one step to undo in each layer.
    assert images.isEditable() and images.isModified() and bunkers.undoStack().count() == 1
    assert row(dialog, "2024-10-09")[6].startswith("Registered before, with ± 0.0")
    bunkers.undoStack().undo()
    images.undoStack().undo()
    back = next(bunkers.getFeatures()).geometry().centroid().asPoint()
    assert back.distance(before[0]) < 1e-6
    for layer in (images, bunkers):
        layer.rollBack()


def test_flipped_the_date_is_seen_where_it_was_found_to_lie(dialog, qtbot):
    """The map holds still while it is flipped: the two dates show the same ground, so they look the same."""
    run(dialog, qtbot)
    choose(dialog, "2024-10-09")
    panel, canvas = dialog.panel, dialog.canvas
    root = dialog.in_hand.project.layerTreeRoot()
    layer = next(date.layer_id for date in panel.dates if date.id == "2025-07-02")
    canvas.setLayers([root.findLayer(layer).layer()])
    dialog.arrows_tick.setChecked(False)

    def shot(flipped):
        panel.flip(flipped)
        qtbot.waitUntil(lambda: not flipped or panel.comparison.picture.image is not None, timeout=20_000)
        qtbot.waitUntil(lambda: not panel.comparison.picture.busy, timeout=20_000)
        canvas.waitWhileRendering()
        found = pixels(canvas.viewport().grab().toImage()).astype(float).mean(axis=2)
        panel.flip(False)
        return found[60:-120, 60:-60]

    def alike(one, other):
        return np.corrcoef(one.ravel(), other.ravel())[0, 1]

    base = shot(False)
    as_found = alike(base, shot(True))
    dialog.moved_tick.setChecked(False)
    as_it_lies = alike(base, shot(True))
    assert as_found > 0.97 and as_found > as_it_lies + 0.02


def test_enter_without_a_pair_says_so(dialog):
    choose(dialog, "2024-10-09")
    dialog.ties_button.click()
    QTest.keyClick(dialog.canvas, Qt.Key.Key_Return)
    assert dialog.ties.at_work
    assert any("No pair is whole" in item.text() for item in dialog.bar.items())


def test_closed_it_leaves_the_map_as_it_was(dialog, qtbot):
    canvas = dialog.canvas
    there = len(canvas.scene().items())
    choose(dialog, "2024-10-09")
    dialog.ties_button.click()
    click(dialog, *SPOTS[0])
    dialog.close()
    assert len(canvas.scene().items()) == there
    assert canvas.mapTool() is None or not hasattr(canvas.mapTool(), "side_at")
