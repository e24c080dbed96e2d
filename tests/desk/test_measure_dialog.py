"""The measure dialog: what it shows, chooses, copies and saves."""

import csv

import pytest
from qgis.core import NULL, QgsProject
from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtWidgets import QApplication


@pytest.fixture
def dialog(qgis_iface, qtbot, place):
    from yardwright.desk.measure_dialog import MeasureDialog

    dialog = MeasureDialog(qgis_iface, place, 1)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose, False)
    qtbot.addWidget(dialog)
    dialog.show()
    settled(dialog, qtbot)
    yield dialog
    dialog.close()


def settled(dialog, qtbot):
    qtbot.waitUntil(lambda: not dialog._step.isActive() and not dialog._edited.isActive(), timeout=20_000)


def shown(dialog, name):
    """The table as it is seen: a list of dictionaries by heading."""
    view = dialog.views[name]
    model = view.model()
    places = [place for place in range(model.columnCount()) if not view.isColumnHidden(place)]
    return [
        {
            model.headerData(place, Qt.Orientation.Horizontal): model.index(row, place).data()
            for place in places
        }
        for row in range(model.rowCount())
    ]


def check_tees(dialog, *names):
    for row in range(dialog.tees_list.count()):
        item = dialog.tees_list.item(row)
        wanted = item.data(Qt.ItemDataRole.UserRole) in names
        item.setCheckState(Qt.CheckState.Checked if wanted else Qt.CheckState.Unchecked)


def test_figures_are_whole_and_exact_in_the_tooltip(dialog):
    """The figures follow from how the course is laid out (conftest)."""
    (length,) = shown(dialog, "lengths")
    assert (length["Length"], length["Scorecard"], length["Difference"]) == ("360", "360", "0")
    (green,) = shown(dialog, "greens")
    assert (green["Depth"], green["Width"], green["Azimuth"]) == ("30", "20", "000°")
    rows = {row["What"]: row for row in shown(dialog, "distances")}
    assert (rows["Green"]["Reach"], rows["Green"]["Middle"], rows["Green"]["Clear"]) == ("345", "360", "375")
    # The bunker from 223 to 237 up the line, 16 to 24 aside: hypot(16, 223), hypot(24, 237).
    assert (rows["Bunker"]["Reach"], rows["Bunker"]["Clear"], rows["Bunker"]["Side"]) == (
        "224",
        "238",
        "right",
    )
    model = dialog.views["greens"].model()
    names = [column.attribute for column in model.sourceModel().table.columns]
    tip = model.index(0, names.index("depth")).data(Qt.ItemDataRole.ToolTipRole)
    assert tip == "30.00 yd"


def test_markers_right_and_wrong(dialog):
    rows = {row["States"]: row for row in shown(dialog, "markers")}
    assert (rows["150"]["Measured"], rows["150"]["Verdict"]) == ("150", "true")
    # It stands 104 yards from the middle, so it states four too few.
    assert (rows["100"]["Measured"], rows["100"]["Error"], rows["100"]["Verdict"]) == ("104", "−4", "off")


def test_tee_sets_chosen(dialog):
    assert [row["Length"] for row in shown(dialog, "lengths")] == ["360"]
    check_tees(dialog, "Heron", "Wren")
    rows = shown(dialog, "lengths")
    assert [(row["Tee"], row["Length"]) for row in rows] == [("Heron", "360"), ("Wren", "320")]
    check_tees(dialog)
    assert shown(dialog, "lengths") == []
    assert len(shown(dialog, "greens")) == 1


def test_several_holes_and_one_without_line(dialog, qtbot):
    dialog.choose_holes(1, 2, 3)
    settled(dialog, qtbot)
    rows = shown(dialog, "lengths")
    assert [row["Hole"] for row in rows] == ["1", "2", "3"]
    assert rows[2]["Length"] == "" and "no line of play" in rows[2]["Remark"]
    dialog.choose_holes(3)
    settled(dialog, qtbot)
    assert "not drawn" in dialog.drawing.accessibleDescription()


def test_a_turn_and_its_row_on_the_drawing(dialog, qtbot):
    dialog.choose_holes(2)
    settled(dialog, qtbot)
    (turn,) = shown(dialog, "doglegs")
    assert (turn["At"], turn["By"], turn["Direction"], turn["To the green"]) == ("200", "45°", "left", "150")
    view = dialog.views["doglegs"]
    dialog.tabs.setCurrentWidget(view)
    view.selectRow(0)
    assert dialog.drawing._chosen.point is not None
    assert dialog.drawing._figures == ("turns at 200", "150 to the green")


def test_a_click_on_a_row_chooses_the_feature_on_the_map(dialog, qtbot):
    layer = dialog.layers["bunker"]
    view = dialog.views["distances"]
    dialog.tabs.setCurrentWidget(view)
    model = view.model()
    (row,) = [
        n
        for n in range(model.rowCount())
        if model.sourceModel().rows[model.mapToSource(model.index(n, 0)).row()].kind == "bunker"
    ]
    place = view.visualRect(model.index(row, 2)).center()
    qtbot.mouseClick(view.viewport(), Qt.MouseButton.LeftButton, pos=place)
    assert [feature["label"] for feature in layer.selectedFeatures()] == ["Ness"]
    assert dialog.drawing._figures == ("reach 224", "clear 238")
    dialog.close()
    assert layer.selectedFeatureCount() == 0


def test_a_click_on_the_drawing_chooses_the_row(dialog, qtbot):
    fid = next(dialog.layers["bunker"].getFeatures()).id()
    place = dialog.drawing.position_of("bunker", fid).toPoint()
    qtbot.mouseClick(dialog.drawing, Qt.MouseButton.LeftButton, pos=place)
    assert dialog.current_row().kind == "bunker"


def test_copy(dialog, qtbot):
    view = dialog.views["greens"]
    dialog.tabs.setCurrentWidget(view)
    view.setFocus()
    qtbot.keyClick(view, Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    lines = [line.split("\t") for line in QApplication.clipboard().text().split("\n")]
    copied = dict(zip(lines[0], lines[1]))
    assert (copied["Depth"], copied["Width"]) == ("30", "20")
    assert len(lines) == 2


def test_a_text_copied_is_no_formula(dialog, qtbot):
    layer = dialog.layers["bunker"]
    layer.startEditing()
    bunker = next(layer.getFeatures())
    layer.changeAttributeValue(bunker.id(), layer.fields().indexOf("label"), "=1+1")
    qtbot.waitUntil(lambda: any(row["Label"] == "=1+1" for row in shown(dialog, "distances")), timeout=20_000)
    dialog.tabs.setCurrentWidget(dialog.views["distances"])
    dialog.copy()
    cells = [cell for line in QApplication.clipboard().text().split("\n") for cell in line.split("\t")]
    assert "'=1+1" in cells and "=1+1" not in cells
    layer.rollBack()


def test_edits_are_followed(dialog, qtbot):
    layer = dialog.layers["hole"]
    layer.startEditing()
    hole = next(f for f in layer.getFeatures() if f["number"] == 1)
    layer.changeAttributeValue(hole.id(), layer.fields().indexOf("par"), 5)
    qtbot.waitUntil(lambda: shown(dialog, "lengths")[0]["Par"] == "5", timeout=20_000)
    assert dialog.chosen_holes() == [1]
    layer.rollBack()
    qtbot.waitUntil(lambda: shown(dialog, "lengths")[0]["Par"] == "4", timeout=20_000)


def test_save_what_is_chosen_and_all(dialog, tmp_path):
    paths = dialog.save(str(tmp_path / "some"), False, "csv")
    assert len(paths) == 7
    with open(tmp_path / "some" / "lengths.csv", encoding="utf-8") as file:
        rows = list(csv.DictReader(file))
    assert [(row["hole"], row["tee_set"]) for row in rows] == [("1", "Heron")]
    assert float(rows[0]["length_yd"]) == pytest.approx(360, abs=0.01)
    dialog.save(str(tmp_path / "all"), True, "csv")
    with open(tmp_path / "all" / "lengths.csv", encoding="utf-8") as file:
        assert {row["hole"] for row in csv.DictReader(file)} == {"1", "2", "3"}


def test_save_as_xlsx_can_be_read_again(dialog, tmp_path):
    from osgeo import ogr

    dialog.save(str(tmp_path), True, "xlsx")
    book = ogr.Open(str(tmp_path / "greens.xlsx"))
    first = book.GetLayer(0).GetNextFeature()
    assert float(first["depth_yd"]) == pytest.approx(30, abs=0.01)


def test_stopping_writes_nothing(dialog, tmp_path, monkeypatch):
    from qgis.PyQt.QtWidgets import QProgressDialog

    monkeypatch.setattr(QProgressDialog, "wasCanceled", lambda self: True)
    assert dialog.save(str(tmp_path / "none"), True, "csv") is None
    assert not (tmp_path / "none").exists()


def test_it_goes_with_the_course(dialog):
    assert dialog.isVisible()
    QgsProject.instance().removeMapLayer(dialog.layers["tree"].id())
    assert not dialog.isVisible()


def test_a_failure_is_told_in_the_bar(dialog, monkeypatch):
    from yardwright.model.errors import YardwrightError

    def fail(*_):
        raise YardwrightError("The disk is full.", "Make room.")

    monkeypatch.setattr("yardwright.desk.measure_dialog.read_course", fail)
    dialog.refresh()
    assert [item.text() for item in dialog.bar.items()] == ["The disk is full. Make room."]


def test_metres(qgis_iface, qtbot, place):
    from yardwright.desk.measure_dialog import MeasureDialog
    from yardwright.store.layer_group import course_groups, course_layers_of

    layer = course_layers_of(course_groups(QgsProject.instance())[place])["course_info"]
    layer.startEditing()
    info = next(layer.getFeatures())
    assert info["unit"] != NULL
    layer.changeAttributeValue(info.id(), layer.fields().indexOf("unit"), "m")
    dialog = MeasureDialog(qgis_iface, place, 1)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose, False)
    qtbot.addWidget(dialog)
    settled(dialog, qtbot)
    assert shown(dialog, "lengths")[0]["Length"] == "329"  # 360 yd = 329.18 m
    assert "metres" in dialog.note.text()
    dialog.close()
    layer.rollBack()


# Heights


@pytest.fixture
def ground(place, project, tmp_path):
    """Heights in the project: level to 180 yd, 10 % beyond."""
    from tests.desk.test_propose_dialog import heights

    layer = heights(tmp_path / "ground.tif", 180)
    project.addMapLayer(layer)
    return layer


def heights_tab(dialog):
    return dialog.tabs.isTabVisible(dialog.tabs.indexOf(dialog.views["heights"]))


def test_without_heights_there_is_no_table_of_them(dialog, tmp_path):
    assert not heights_tab(dialog) and dialog.caution.isHidden()
    assert [dialog.terrain_box.itemText(row) for row in range(2)] == ["None", "A file…"]
    paths = dialog.save(str(tmp_path), True, "csv")
    assert len(paths) == 7 and not (tmp_path / "heights.csv").exists()


def test_heights_stand_apart_from_the_lengths(ground, dialog, tmp_path):
    """From 0 and 40 yd, where it is level, to 360: 18 yd of rise, 16.45 m on the ground."""
    assert heights_tab(dialog) and dialog.terrain_box.currentText() == "Ground"
    check_tees(dialog, "Heron", "Wren")
    rows = {row["Tee"]: row for row in shown(dialog, "heights")}
    assert [rows["Heron"][name] for name in ("Rise (m)", "Length", "Plays")] == ["+16.5", "360", "378"]
    assert [rows["Wren"][name] for name in ("Rise (m)", "Length", "Plays")] == ["+16.5", "320", "338"]
    assert [row["Length"] for row in shown(dialog, "lengths")] == ["360", "320"]
    # The caution stands below this table and no other.
    assert dialog.caution.isHidden()
    dialog.tabs.setCurrentWidget(dialog.views["heights"])
    assert dialog.caution.isVisible() and "common practice" in dialog.caution.text()
    view = dialog.views["heights"]
    view.selectRow(0)
    assert dialog.current_row().tee_set in ("Heron", "Wren")
    dialog.tabs.setCurrentWidget(dialog.views["lengths"])
    assert dialog.caution.isHidden()
    paths = dialog.save(str(tmp_path), True, "csv")
    assert len(paths) == 8
    with open(tmp_path / "heights.csv", newline="", encoding="utf-8-sig") as file:
        row = next(csv.DictReader(file))
    assert float(row["rise_m"]) == pytest.approx(16.46, abs=0.02) and float(
        row["length_yd"]
    ) == pytest.approx(360)


def test_no_heights_and_heights_from_a_file(ground, dialog, qtbot, tmp_path):
    from tests.desk.test_propose_dialog import heights

    dialog.terrain_box.setCurrentIndex(0)
    dialog.terrain_box.activated.emit(0)
    settled(dialog, qtbot)
    assert not heights_tab(dialog) and shown(dialog, "lengths")[0]["Length"] == "360"
    heights(tmp_path / "other.tif", 270)
    dialog.take_terrain(str(tmp_path / "other.tif"))
    settled(dialog, qtbot)
    assert dialog.terrain_box.currentText() == "other.tif" and heights_tab(dialog)
    assert shown(dialog, "heights")[0]["Plays"] == "369"  # 90 yd at 10 %
    # It stays chosen when the course is read anew.
    dialog.refresh()
    settled(dialog, qtbot)
    assert dialog.terrain_box.currentText() == "other.tif" and heights_tab(dialog)


def test_a_file_without_heights_is_refused_and_nothing_changes(ground, dialog, qtbot, tmp_path, monkeypatch):
    from qgis.PyQt.QtWidgets import QFileDialog

    bad = tmp_path / "bad.tif"
    bad.write_text("no raster")
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_: (str(bad), ""))
    last = dialog.terrain_box.count() - 1
    dialog.terrain_box.setCurrentIndex(last)
    dialog.terrain_box.activated.emit(last)
    settled(dialog, qtbot)
    assert "bad.tif" in dialog.bar.currentItem().text()
    assert dialog.terrain_box.currentText() == "Ground" and heights_tab(dialog)
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_: ("", ""))
    dialog.terrain_box.setCurrentIndex(last)
    dialog.terrain_box.activated.emit(last)
    assert dialog.terrain_box.currentText() == "Ground"


def test_heights_that_fail_hide_no_length(ground, dialog, qtbot, tmp_path):
    """The file goes while the dialog is open: lengths are measured all the same, and it is said once."""
    (tmp_path / "ground.tif").write_bytes(b"gone")
    dialog.refresh()
    dialog.choose_holes(1, 2)
    settled(dialog, qtbot)
    assert not heights_tab(dialog)
    assert {row["Hole"] for row in shown(dialog, "lengths")} == {"1", "2"}
    told = [item for item in dialog.bar.items() if "ground.tif" in item.text()]
    assert len(told) == 1
