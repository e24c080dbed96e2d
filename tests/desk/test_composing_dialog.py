"""One clean picture asked for in its window: of which dates, for which holes, where what came of it is seen."""

import numpy as np
import pytest
from osgeo import gdal
from qgis.core import QgsGeometry, QgsRectangle, QgsVectorLayerUtils
from qgis.PyQt.QtCore import Qt

from tests.desk.conftest import EAST, NORTH
from tests.desk.test_dates import add_raster, add_row
from tests.desk.test_in_hand import in_hand  # noqa: F401  the fixture
from tests.desk.test_registering_dialog import PIXEL, ground, write_picture
from tests.desk.test_toolbar import iface  # noqa: F401  the fixture

SHADOW = slice(300, 380), slice(300, 420)
"""Rows and columns of the base’s picture that lie in shade there."""


@pytest.fixture
def dated(in_hand, tmp_path):  # noqa: F811
    """The base with a shadow, an older date without, and one that may not be printed."""
    from qgis.PyQt.QtCore import QDate

    layers = {}
    for day, shaded, allowed in (
        ("2025-07-02", True, True),
        ("2024-10-09", False, True),
        ("2023-04-12", False, False),
    ):
        values = 0.55 * ground(1) + np.array([30.0, 55.0, 10.0])
        if shaded:
            values[SHADOW] *= (0.36, 0.40, 0.50)
        layers[day] = add_raster(write_picture(tmp_path / "images" / f"{day}.tif", values))
        add_row(
            in_hand.layer("image"),
            id=day,
            source=f"images/{day}.tif",
            taken=QDate.fromString(day, "yyyy-MM-dd"),
            gsd_m=PIXEL,
            licence="Look only" if not allowed else "CC0-1.0",
            print_allowed=allowed,
        )
    return layers


@pytest.fixture
def dialog(in_hand, dated, qtbot):  # noqa: F811
    from yardwright.desk.composing_dialog import ComposingDialog
    from yardwright.desk.dates_panel import DatesPanel

    window, canvas = in_hand.iface.window, in_hand.iface.canvas
    window.setCentralWidget(canvas)
    window.resize(700, 600)
    window.show()
    qtbot.waitExposed(window)
    canvas.setDestinationCrs(in_hand.layer("hole").crs())
    canvas.setExtent(QgsRectangle(EAST, NORTH + 50, EAST + 200, NORTH + 250))
    panel = DatesPanel(in_hand, window)
    dialog = ComposingDialog(in_hand, panel, window)
    dialog.show()
    yield dialog
    dialog.let_go()
    panel.let_go()


def rows(dialog):
    return {
        item.text(0): item
        for item in (dialog.list.topLevelItem(n) for n in range(dialog.list.topLevelItemCount()))
    }


def run(dialog, qtbot):
    dialog.begin_button.click()
    qtbot.waitUntil(lambda: dialog.run is None, timeout=120000)


def told(dialog):
    return [item.text() for item in dialog.bar.items()]


def test_a_date_that_may_not_be_printed_is_grey_and_says_why(dialog):
    refused = rows(dialog)["2023-04-12"]
    assert refused.isDisabled() and "May not be printed (Look only)" in refused.text(2)
    assert dialog.chosen() == ["2025-07-02", "2024-10-09"]
    dialog.look_only.setChecked(True)
    assert not rows(dialog)["2023-04-12"].isDisabled()
    assert dialog.chosen() == ["2025-07-02", "2024-10-09", "2023-04-12"]
    assert not dialog.asked().for_print


def test_a_date_on_a_server_is_taken_when_it_is_ticked(dialog):
    source = "type=xyz&url=https://tiles.invalid/{z}/{x}/{y}.png"
    add_row(dialog.in_hand.layer("image"), id="web", source=source, rmse_m=0.1)
    dialog.in_hand.refresh()
    dialog.refresh()
    assert "web" not in dialog.chosen() and not rows(dialog)["web"].isDisabled()
    rows(dialog)["web"].setCheckState(0, Qt.CheckState.Checked)
    dialog.refresh()
    assert "web" in dialog.chosen() and "may be printed" in rows(dialog)["web"].text(2)


def test_such_a_date_as_base_is_refused_with_the_reason(dialog):
    dialog.base_box.setCurrentIndex(dialog.base_box.findData("2023-04-12"))
    dialog.base_box.activated.emit(dialog.base_box.currentIndex())
    assert not dialog.begin_button.isEnabled() and "May not be printed" in dialog.says.text()
    dialog.look_only.setChecked(True)
    assert dialog.begin_button.isEnabled() and not dialog.says.isVisible()


def test_which_holes(dialog):
    in_hand = dialog.in_hand  # noqa: F811
    in_hand.choose_hole(2)
    assert dialog.one_hole.text() == "Hole 2" and dialog.asked().holes == (2,)
    dialog.all_holes.setChecked(True)
    assert dialog.asked().holes is None
    dialog.holes_edit.setText("1, 2")
    dialog.holes_edit.textEdited.emit("1, 2")
    assert dialog.some_holes.isChecked() and dialog.asked().holes == (1, 2)
    dialog.holes_edit.setText("17")
    dialog.begin_button.click()
    assert dialog.run is None and any("Hole 17 is not in the course" in text for text in told(dialog))


def test_what_is_not_ticked_is_not_taken(dialog):
    rows(dialog)["2024-10-09"].setCheckState(0, Qt.CheckState.Unchecked)
    assert dialog.asked().others == ()
    # It stays so when the list is filled again.
    dialog.look_only.setChecked(True)
    assert dialog.asked().others == ("2023-04-12",)


def test_a_picture_is_made_and_looked_at(dialog, qtbot, tmp_path):
    in_hand = dialog.in_hand  # noqa: F811
    in_hand.choose_hole(1)
    folder = tmp_path / "composites"
    assert dialog.folder.filePath() == str(folder)
    run(dialog, qtbot)
    assert (folder / "hole_01.tif").exists() and (folder / "recipe.json").exists()
    (picture,) = dialog.came.pictures
    shares = dict(picture.shares)
    assert sum(shares.values()) == pytest.approx(100, abs=0.5) and shares["2024-10-09"] > 0.5
    assert shares["2025-07-02"] > 80 and "2023-04-12" not in shares
    assert any("added to the project: 1." in text for text in told(dialog))
    top = dialog.result.topLevelItem(0)
    assert top.text(0) == "Hole 1"
    listed = {top.child(n).text(2): top.child(n).text(1) for n in range(top.childCount())}
    assert listed["2024-10-09"] == f"{shares['2024-10-09']:.1f} %"
    # In the project, over the base, and compared with it.
    panel = dialog.panel
    (composite,) = panel.composites
    assert composite.base == "2025-07-02" and panel.date_in_hand == composite.id
    assert panel.second_date() == "2025-07-02"
    # The shade is gone: about as bright as beside it.
    image = gdal.Open(str(folder / "hole_01.tif"))
    g = image.GetGeoTransform()
    green = image.GetRasterBand(2).ReadAsArray().astype(float)
    y, x = NORTH + 400 - 340 * PIXEL, EAST - 60 + 360 * PIXEL
    row, column = int((g[3] - y) / -g[5]), int((x - g[0]) / g[1])
    inside = green[row - 20 : row + 20, column - 30 : column + 30].mean()
    expected = (0.55 * ground(1) + np.array([30.0, 55.0, 10.0]))[320:360, 330:390, 1].mean()
    assert inside == pytest.approx(expected, rel=0.1)


def test_what_is_drawn_counts_though_it_is_not_saved(dialog, qtbot, tmp_path):
    """A patch drawn a moment ago: there the picture is of the date it asks for."""
    in_hand = dialog.in_hand  # noqa: F811
    in_hand.choose_hole(1)
    patches = in_hand.layer("patch")
    patches.startEditing()
    square = QgsGeometry.fromRect(QgsRectangle(EAST - 20, NORTH + 40, EAST + 20, NORTH + 80))
    fields = {patches.fields().lookupField("image"): "2024-10-09"}
    patches.addFeature(QgsVectorLayerUtils.createFeature(patches, square, fields))
    run(dialog, qtbot)
    source = gdal.Open(str(tmp_path / "composites" / "hole_01_source.tif"))
    g = source.GetGeoTransform()
    row, column = int((g[3] - NORTH - 60) / -g[5]), int((EAST - g[0]) / g[1])
    assert source.GetRasterBand(1).ReadAsArray()[row - 20 : row + 20, column - 20 : column + 20].min() == 2
    patches.rollBack()


def test_it_can_be_stopped_and_nothing_is_half_written(dialog, qtbot, tmp_path):
    dialog.in_hand.choose_hole(1)
    dialog.begin_button.click()
    assert dialog.stop_button.isVisible() and not dialog.begin_button.isEnabled()
    dialog.stop_button.click()
    qtbot.waitUntil(lambda: dialog.run is None, timeout=60000)
    assert dialog.came is None and dialog.begin_button.isEnabled()
    assert list((tmp_path / "composites").iterdir()) == []


def test_a_base_that_cannot_be_read_is_said(dialog, qtbot, tmp_path):
    (tmp_path / "images" / "2025-07-02.tif").write_bytes(b"no image")
    run(dialog, qtbot)
    assert dialog.came is None and any("2025-07-02" in text for text in told(dialog))


def test_closed_while_it_works_it_stops(dialog, qtbot, tmp_path):
    from yardwright.desk import background

    dialog.begin_button.click()
    dialog.close()
    qtbot.waitUntil(lambda: not background._at_work, timeout=60000)
    assert dialog.run is None and not list((tmp_path / "composites").glob("*.tif"))
