"""The event panel: events and rounds, pins typed, clicked, pasted and brought in, and nothing saved unasked."""

import pytest
from qgis.core import QgsPointXY, QgsRectangle
from qgis.PyQt.QtCore import QDate, QPoint, Qt
from qgis.PyQt.QtTest import QTest
from qgis.PyQt.QtWidgets import QApplication, QDialog, QMessageBox, QPushButton

from tests.desk.conftest import GRID, YARD, at
from tests.desk.test_drawing import Hand, drawing, hand  # noqa: F401  the fixtures
from tests.desk.test_toolbar import iface  # noqa: F401  the fixture


@pytest.fixture
def panel(drawing, qtbot):  # noqa: F811
    """The panel with an event of two rounds in hand."""
    from yardwright.desk.event_panel import EventPanel
    from yardwright.model.event import Event, Round
    from yardwright.store.events import write_event

    in_hand = drawing.in_hand
    panel = EventPanel(in_hand, drawing.iface.window)
    panel.show()
    qtbot.waitExposed(panel)
    panel._layers()
    write_event(in_hand.layers(), Event("Heron Cup", "2026-05-02", "2026-05-03", (Round(1), Round(2))))
    panel.refresh()
    yield panel
    panel.let_go()
    panel.deleteLater()


def table(panel):
    """``{hole: texts of the row}``."""
    model = panel.table
    return {
        int(model.index(row, 0).data()): [model.index(row, column).data() for column in range(1, 6)]
        for row in range(model.rowCount())
    }


def type_in(panel, hole, **given):
    """Type into the cells of a hole's row as the editor of a cell does."""
    from yardwright.desk.pin_table import FROM, OFF, ON

    row = [hole for hole, _ in panel.table.lines].index(hole)
    for name, column in (("on", ON), ("off", OFF), ("off_from", FROM)):
        if name in given:
            panel.table.setData(panel.table.index(row, column), given[name])


def pins(panel):
    return [(pin.round, pin.hole, pin.given) for pin in panel.in_hand.event_in_hand().pins]


def test_the_round_has_a_row_a_hole(panel):
    assert panel.in_hand.event == "Heron Cup" and panel.in_hand.round == 1
    assert list(table(panel)) == [1, 2, 3] and table(panel)[1] == ["", "", "", "", ""]
    assert [panel.round_box.itemText(row) for row in range(2)] == ["Round 1", "Round 2"]


def test_typed_figures_place_a_pin(panel):
    """The green of hole 1: 30 yd deep from 345, 20 wide. 10 on, 5 from the left: 355 up, 5 left of the line."""
    type_in(panel, 1, on="10", off="5")
    assert pins(panel) == []
    type_in(panel, 1, off_from="left")
    assert pins(panel) == [(1, 1, "figures")]
    assert table(panel)[1] == ["10", "5", "left", "20", "5"]
    (pin,) = panel.in_hand.event_in_hand().pins
    assert pin.point == pytest.approx(at(-5, 355), abs=0.01)
    layer = panel.in_hand.layer("pin")
    assert layer.isEditable() and layer.undoStack().count() == 1
    # Another figure moves it, and there is still one.
    type_in(panel, 1, on="12.5")
    (pin,) = panel.in_hand.event_in_hand().pins
    assert pin.point == pytest.approx(at(-5, 357.5), abs=0.01)
    layer.undoStack().undo()
    (pin,) = panel.in_hand.event_in_hand().pins
    assert pin.point == pytest.approx(at(-5, 355), abs=0.01)


def test_rounds_are_kept_apart(panel):
    type_in(panel, 1, on="10", off="5", off_from="left")
    panel.in_hand.choose_round(2)
    assert table(panel)[1] == ["", "", "", "", ""]
    type_in(panel, 1, on="20", off="6", off_from="right")
    assert pins(panel) == [(1, 1, "figures"), (2, 1, "figures")]
    panel.in_hand.choose_round(1)
    assert table(panel)[1][:3] == ["10", "5", "left"]


@pytest.mark.parametrize(
    ("given", "reason"),
    [
        ({"on": "31", "off": "5", "off_from": "left"}, "30.0 yd deep"),
        ({"on": "10", "off": "0", "off_from": "left"}, "margin itself"),
        ({"on": "10", "off": "25", "off_from": "right"}, "20.0 yd wide"),
    ],
)
def test_figures_no_green_can_have_are_refused(panel, given, reason):
    type_in(panel, 1, **given)
    (message,) = panel.in_hand.iface.bar.messages
    assert "The pin of hole 1 is not placed" in message and reason in message
    assert pins(panel) == []


def test_what_is_no_number_is_not_taken(panel):
    type_in(panel, 1, on="ten", off="5", off_from="somewhere")
    assert table(panel)[1][:3] == ["", "5", ""] and pins(panel) == []


def test_a_remark_stands_below(panel):
    """Two yards from the margin are less than the four the committee wants."""
    type_in(panel, 1, on="10", off="2", off_from="left")
    panel.in_hand.choose_hole(1)
    assert "2.0 yd from the margin" in panel.remark.text()


def test_a_click_on_the_green_places_the_pin_of_the_hole(panel, drawing, hand):  # noqa: F811
    canvas = panel.in_hand.iface.mapCanvas()
    canvas.setExtent(QgsRectangle.fromCenterAndSize(QgsPointXY(*at(0, 360)), 50 * GRID, 50 * GRID))
    panel.place_button.click()
    assert canvas.mapTool() is panel.tool and panel.place_button.isChecked()
    QTest.mouseMove(canvas.viewport(), hand.pixel(-4, 360))
    assert len(panel.tool._bands) == 6
    told = drawing.pointer.label.text()
    assert "From left  6." in told or "From left  5." in told
    hand.click(-4, 360)
    (pin,) = panel.in_hand.event_in_hand().pins
    assert pin.given == "point" and pin.off_from == "left"
    assert pin.point == pytest.approx(at(-4, 360), abs=0.2)
    hand.click(-20, 360)
    assert len(panel.in_hand.event_in_hand().pins) == 1
    hand.key(Qt.Key.Key_Escape)
    assert canvas.mapTool() is not panel.tool and not panel.place_button.isChecked()
    assert panel.tool._bands == []


def test_the_chosen_pins_are_taken_out(panel):
    type_in(panel, 1, on="10", off="5", off_from="left")
    type_in(panel, 2, on="10", off="5", off_from="left")
    panel.view.selectRow(0)
    panel.take_out_button.click()
    assert pins(panel) == [(1, 2, "figures")]


PASTED = (
    "round\thole\ton\toff\tfrom\n1\t1\t10\t5\tleft\n1\t2\t40\t5\tleft\n2\t1\t12\t6\tright\n3\t1\t1\t1\tleft\n"
)


def test_pasted_rows_are_listed_before_they_are_placed(panel, monkeypatch):
    from yardwright.desk.bring_pins import PinsDialog

    seen = []

    def look(dialog):
        rows = [dialog.list.topLevelItem(row) for row in range(dialog.list.topLevelItemCount())]
        seen.append([(row.text(0), row.text(3)) for row in rows])
        seen.append(pins(panel))
        return QDialog.DialogCode.Accepted

    monkeypatch.setattr(PinsDialog, "exec", look)
    QApplication.clipboard().setText(PASTED)
    panel.paste_button.click()
    listed, before = seen
    assert before == []
    assert listed[0] == ("2", "10 on, 5 from left") and listed[2] == ("4", "12 on, 6 from right")
    assert listed[1][0] == "3" and "24.0 yd deep" in listed[1][1]
    assert listed[3][0] == "5" and "left out" in listed[3][1]
    assert pins(panel) == [(1, 1, "figures"), (2, 1, "figures")]


def test_a_list_that_nobody_wants_writes_nothing(panel, monkeypatch):
    from yardwright.desk.bring_pins import PinsDialog

    monkeypatch.setattr(PinsDialog, "exec", lambda dialog: QDialog.DialogCode.Rejected)
    QApplication.clipboard().setText(PASTED)
    panel.paste_button.click()
    assert pins(panel) == []


def test_an_empty_clipboard_is_told_of(panel):
    QApplication.clipboard().setText("  ")
    panel.paste_button.click()
    assert "no text on the clipboard" in panel.in_hand.iface.bar.messages[-1]


def test_a_new_event_like_the_last_one_has_none_of_its_pins(panel, monkeypatch):
    from yardwright.desk.event_dialog import _EventDialog

    type_in(panel, 1, on="10", off="5", off_from="left")

    def fill(dialog):
        assert not dialog.buttons.button(dialog.buttons.StandardButton.Ok).isEnabled()
        dialog.name.setText("Wren Cup")
        dialog.copy.setChecked(True)
        return QDialog.DialogCode.Accepted

    monkeypatch.setattr(_EventDialog, "exec", fill)
    panel.new_button.click()
    assert panel.in_hand.event == "Wren Cup"
    assert [one.number for one in panel.in_hand.event_in_hand().rounds] == [1, 2]
    assert pins(panel) == []
    panel.in_hand.choose_event("Heron Cup")
    assert len(pins(panel)) == 1


def test_a_new_event_with_rounds_day_after_day(panel, monkeypatch):
    from yardwright.desk.event_dialog import _EventDialog

    def fill(dialog):
        dialog.name.setText("Ness Open")
        dialog.begins.setDate(QDate(2026, 6, 30))
        dialog.rounds.setValue(3)
        return QDialog.DialogCode.Accepted

    monkeypatch.setattr(_EventDialog, "exec", fill)
    panel.new_button.click()
    event = panel.in_hand.event_in_hand()
    assert (event.begins, event.ends) == ("2026-06-30", "2026-07-02")
    assert [one.played_on for one in event.rounds] == ["2026-06-30", "2026-07-01", "2026-07-02"]
    panel.round_button.click()
    assert panel.in_hand.round == 4


def test_a_course_without_event_says_so(panel, project, qtbot):
    layer = panel.in_hand.layer("event")
    layer.deleteFeatures([row.id() for row in layer.getFeatures()])
    layer = panel.in_hand.layer("event_round")
    layer.deleteFeatures([row.id() for row in layer.getFeatures()])
    qtbot.waitUntil(lambda: panel.in_hand.event == "", timeout=20_000)
    assert "start one" in panel.bring_button.toolTip() and not panel.bring_button.isEnabled()
    project.clear()
    qtbot.waitUntil(lambda: panel.in_hand.place is None, timeout=20_000)
    assert panel.table.rowCount() == 0 and not panel.new_button.isEnabled()
    assert panel.in_hand.iface.bar.messages == []


def test_let_go_twice(panel):
    panel.place_button.click()
    panel.let_go()
    assert panel.in_hand.iface.mapCanvas().mapTool() is None
    panel.let_go()


def test_nowhere_on_the_map_is_a_pin_placed_without_a_green(panel, hand):  # noqa: F811
    panel.in_hand.choose_hole(3)
    panel.place_button.click()
    hand.click(0, 250)
    QTest.mouseMove(panel.in_hand.iface.mapCanvas().viewport(), QPoint(5, 5))
    assert pins(panel) == [] and panel.in_hand.iface.bar.messages == []


def test_a_round_takes_pins_on_its_own_holes_only(panel, hand, monkeypatch):  # noqa: F811
    from dataclasses import replace

    from yardwright.desk.bring_pins import PinsDialog
    from yardwright.model.event import Round
    from yardwright.store.events import write_event

    event = panel.in_hand.event_in_hand()
    write_event(panel._layers(), replace(event, rounds=(Round(1, holes=(2,)), Round(2, holes=(2, 1)))))
    panel.refresh()
    assert list(table(panel)) == [2]
    panel.in_hand.choose_hole(1)
    canvas = panel.in_hand.iface.mapCanvas()
    canvas.setExtent(QgsRectangle.fromCenterAndSize(QgsPointXY(*at(0, 360)), 50 * GRID, 50 * GRID))
    panel.place_button.click()
    hand.click(-4, 360)
    assert pins(panel) == [] and "Round 1 does not play hole 1." in panel.in_hand.iface.bar.messages[-1]
    monkeypatch.setattr(PinsDialog, "exec", lambda dialog: QDialog.DialogCode.Accepted)
    QApplication.clipboard().setText(PASTED)
    panel.paste_button.click()
    assert pins(panel) == [(2, 1, "figures")]
    panel.in_hand.choose_round(2)
    assert list(table(panel)) == [2, 1]
    hand.click(-4, 360)
    assert pins(panel) == [(2, 1, "point")]


def test_a_terrain_of_the_project_tells_the_slope(panel, project, tmp_path):
    """A plane that falls 3 % to the east."""
    import numpy as np
    from osgeo import gdal, osr
    from qgis.core import QgsRasterLayer
    from yardwright.desk.pin_table import SLOPE

    type_in(panel, 1, on="10", off="5", off_from="left")
    assert panel.view.isColumnHidden(SLOPE)
    path = str(tmp_path / "plane.tif")
    raster = gdal.GetDriverByName("GTiff").Create(path, 400, 400, 1, gdal.GDT_Float32)
    east, north = at(0, 355)
    raster.SetGeoTransform((east - 200, 1.0, 0, north + 200, 0, -1.0))
    reference = osr.SpatialReference()
    reference.ImportFromEPSG(32630)
    raster.SetProjection(reference.ExportToWkt())
    raster.GetRasterBand(1).WriteArray(np.tile(np.arange(400, dtype="float32") * -0.03, (400, 1)))
    raster = None
    project.addMapLayer(QgsRasterLayer(path, "Ground"))
    panel.refresh()
    index = panel.table.index(0, SLOPE)
    assert not panel.view.isColumnHidden(SLOPE) and index.data() == "→ 3.0 %"
    tip = index.data(Qt.ItemDataRole.ToolTipRole)
    assert "falls 3.0 % to the right" in tip and "towards 90°" in tip
    panel.in_hand.choose_hole(1)
    assert panel.remark.text() == "Slope: → 3.0 % to the right"


# Another name, and none


def rows_named(panel):
    """How many rows of each table name which event."""
    from collections import Counter

    found = {}
    for kind in ("event", "event_round", "event_flight", "event_length", "pin", "pin_decision"):
        field = "name" if kind == "event" else "event"
        found[kind] = dict(Counter(row[field] for row in panel.in_hand.layer(kind).getFeatures()))
    return {kind: names for kind, names in found.items() if names}


@pytest.fixture
def full(panel):
    """The panel with an event of which every table has rows."""
    from dataclasses import replace

    from yardwright.model.event import AskedLength, Flight
    from yardwright.store.events import Decision, log_decision, write_event, write_lengths

    type_in(panel, 1, on="10", off="5", off_from="left")
    layers = panel._layers()
    panel.in_hand.layer("pin_decision").startEditing()
    write_event(layers, replace(panel.in_hand.event_in_hand(), flights=(Flight("Men", "Heron"),)))
    write_lengths(layers, "Heron Cup", [AskedLength(1, "Men", 1, 330.0)])
    log_decision(layers, Decision("Heron Cup", 1, 1, "ours", "Ada Finch"))
    panel.refresh()
    return panel


ROWS = {"event": 1, "event_round": 2, "event_flight": 1, "event_length": 1, "pin": 1, "pin_decision": 1}


def all_named(name):
    return {kind: {name: count} for kind, count in ROWS.items()}


def give_name(monkeypatch, name):
    """Type a name into the dialog that asks for it, and press OK where that can be done; what it said."""
    from yardwright.desk.event_dialog import _NameDialog

    said = []

    def fill(dialog):
        dialog.name.setText(name)
        ok = dialog.buttons.button(dialog.buttons.StandardButton.Ok)
        said.append((ok.isEnabled(), dialog.refusal.text()))
        return QDialog.DialogCode.Accepted if ok.isEnabled() else QDialog.DialogCode.Rejected

    monkeypatch.setattr(_NameDialog, "exec", fill)
    return said


def changing(panel, number):
    """Choose an entry of the menu “Change”: 0 another name, 1 away with it."""
    panel.change_button.menu().actions()[number].trigger()


def test_an_event_gets_another_name_in_one_step(full, monkeypatch, qtbot):
    give_name(monkeypatch, " Wren Trophy ")
    assert rows_named(full) == all_named("Heron Cup")
    full.in_hand.choose_round(2)
    changing(full, 0)
    assert rows_named(full) == all_named("Wren Trophy")
    assert (full.in_hand.event, full.in_hand.round) == ("Wren Trophy", 2)
    assert full.event_box.currentText() == "Wren Trophy"
    assert "“Heron Cup” is now called “Wren Trophy”" in full.in_hand.iface.bar.messages[-1]
    # Undone in whichever layer, it is undone, and the panel goes with it.
    full.in_hand.layer("event_length").undoStack().undo()
    assert rows_named(full) == all_named("Heron Cup")
    qtbot.waitUntil(lambda: full.event_box.currentText() == "Heron Cup", timeout=20_000)
    assert (full.in_hand.event, full.in_hand.round) == ("Heron Cup", 2)
    full.in_hand.layer("pin_decision").undoStack().redo()
    assert rows_named(full) == all_named("Wren Trophy")


def test_the_button_of_the_message_takes_it_back(full, monkeypatch):
    give_name(monkeypatch, "Wren Trophy")
    changing(full, 0)
    (item,) = full.in_hand.iface.bar.items
    item.findChild(QPushButton).click()
    assert rows_named(full) == all_named("Heron Cup") and full.in_hand.iface.bar.items == []


def test_an_event_that_is_not_the_last_keeps_in_hand(full, monkeypatch, qtbot):
    from yardwright.model.event import Event, Round
    from yardwright.store.events import write_event

    write_event(full._layers(), Event("Zephyr Bowl", rounds=(Round(1),)))
    full.refresh()
    give_name(monkeypatch, "Wren Trophy")
    changing(full, 0)
    full.in_hand.layer("pin").undoStack().undo()
    qtbot.waitUntil(
        lambda: full.event_box.count() == 2 and full.event_box.currentText() != "", timeout=20_000
    )
    qtbot.waitUntil(lambda: full.in_hand.event == "Heron Cup", timeout=20_000)


@pytest.mark.parametrize("name", ["Zephyr Bowl", " zephyr bowl "])
def test_a_name_in_use_is_refused(full, monkeypatch, name):
    from yardwright.model.event import Event, Round
    from yardwright.store.events import write_event

    write_event(full._layers(), Event("Zephyr Bowl", rounds=(Round(1),)))
    full.refresh()
    said = give_name(monkeypatch, name)
    before = rows_named(full)
    changing(full, 0)
    # Nor can a new one be begun with it, which would have changed the one there is.
    full.new_button.click()
    refusal = "There is an event “Zephyr Bowl” already. Choose another name."
    assert said == [(False, refusal)] * 2 and rows_named(full) == before


def answer(monkeypatch, removes):
    """Answer the question whether to remove an event; what it said."""
    said = []

    def press(box):
        said.append(f"{box.text()}\n{box.informativeText()}")
        (remove,) = (one for one in box.buttons() if one.text() == "Remove")
        assert box.defaultButton() is not remove
        monkeypatch.setattr(QMessageBox, "clickedButton", lambda box: remove if removes else None)

    monkeypatch.setattr(QMessageBox, "exec", press)
    return said


def test_an_event_is_removed_once_that_is_wanted(full, monkeypatch, qtbot):
    said = answer(monkeypatch, removes=False)
    changing(full, 1)
    assert rows_named(full) == all_named("Heron Cup")
    (asked,) = said
    for part in ("“Heron Cup”", "Rounds: 2", "Flights: 1", "Lengths: 1", "Pins: 1", "Decisions on pins: 1"):
        assert part in asked
    answer(monkeypatch, removes=True)
    changing(full, 1)
    assert rows_named(full) == {} and full.in_hand.event == ""
    assert not full.change_button.isEnabled() and "start one" in full.change_button.toolTip()
    (item,) = full.in_hand.iface.bar.items
    item.findChild(QPushButton).click()
    assert rows_named(full) == all_named("Heron Cup")
    qtbot.waitUntil(lambda: full.in_hand.event == "Heron Cup", timeout=20_000)


def test_flights_and_tees_follow_another_name(full, monkeypatch, qtbot):
    """Its OK would else write a second event, under the name that is gone."""
    full.tees_button.click()
    (window,) = full.findChildren(QDialog, "yardwright_tees")
    window.choose_round(1)
    window.set_length(1, 0, 340.0)
    give_name(monkeypatch, "Wren Trophy")
    changing(full, 0)
    qtbot.waitUntil(lambda: "Wren Trophy" in window.windowTitle(), timeout=20_000)
    window.write()
    assert rows_named(full) == all_named("Wren Trophy")
    (asked,) = full.in_hand.event_in_hand().lengths
    assert asked.length == pytest.approx(340.0)


def test_flights_and_tees_of_an_event_that_is_gone_say_so(full, monkeypatch, qtbot):
    full.tees_button.click()
    (window,) = full.findChildren(QDialog, "yardwright_tees")
    answer(monkeypatch, removes=True)
    changing(full, 1)
    qtbot.waitUntil(lambda: "no event “Heron Cup” any more" in window.hint.text(), timeout=20_000)
    window.write()
    assert rows_named(full) == {
        kind: names for kind, names in all_named("Heron Cup").items() if kind not in ("pin", "pin_decision")
    }


def test_a_copy_is_played_on_its_own_days(panel, monkeypatch):
    """The cup of 2 and 3 May, begun on 30 April of the next year: 30 April and 1 May."""
    from dataclasses import replace

    from yardwright.desk.event_dialog import _EventDialog
    from yardwright.store.events import write_event

    def fill(dialog):
        dialog.name.setText("Wren Cup")
        dialog.begins.setDate(QDate(2027, 4, 30))
        dialog.copy.setChecked(True)
        return QDialog.DialogCode.Accepted

    monkeypatch.setattr(_EventDialog, "exec", fill)
    days = {1: "2026-05-02", 2: ""}
    event = panel.in_hand.event_in_hand()
    rounds = tuple(replace(one, played_on=days[one.number]) for one in event.rounds)
    write_event(panel._layers(), replace(event, rounds=rounds))
    panel.new_button.click()
    copy = panel.in_hand.event_in_hand()
    assert (copy.name, copy.begins, copy.ends) == ("Wren Cup", "2027-04-30", "2027-05-01")
    assert [one.played_on for one in copy.rounds] == ["2027-04-30", ""]
    before = panel.in_hand.find_event("Heron Cup")
    assert (before.begins, before.ends) == ("2026-05-02", "2026-05-03")


# A green without a place


def with_limits(panel, **limits):
    from dataclasses import replace

    from yardwright.store.events import write_event

    event = panel.in_hand.event_in_hand()
    write_event(panel._layers(), replace(event, limits=replace(event.limits, **limits)))
    panel.refresh()


def test_a_green_without_a_place_says_which_limit_takes_it(panel, project, tmp_path, monkeypatch):
    """Hole 1: 20 yd wide and 30 deep. 10 yd from the margin there is nothing; with 4, a pin of round 1 in the
    middle closes all within 15 yd; ground of 10 % from 345 on is steeper than 3 %."""
    from tests.desk.test_propose_dialog import heights

    panel.in_hand.choose_hole(1)
    assert not panel.closed.isVisible() and panel.closed.text() == ""
    with_limits(panel, margin=10 * YARD)
    assert (
        "Hole 1" in panel.closed.text() and "no place is 10 yd from the green’s margin" in panel.closed.text()
    )
    panel.in_hand.choose_hole(3)
    assert panel.closed.text() == "", "a hole without a green says nothing of it"
    panel.in_hand.choose_hole(1)
    assert panel.closed.isVisible()
    with_limits(panel, margin=4 * YARD)
    assert not panel.closed.isVisible()
    type_in(panel, 1, on="15", off="10", off_from="left")
    with_limits(panel, apart=15 * YARD)
    assert panel.closed.text() == ""
    panel.in_hand.choose_round(2)
    assert "within 15 yd of holes of earlier rounds" in panel.closed.text()
    project.addMapLayer(heights(tmp_path / "ground.tif", 340))
    with_limits(panel, apart=0.0, slope_pct=3.0)
    assert "4 yd from the margin is steeper than 3 %" in panel.closed.text()


def test_pins_are_laid_out_once_a_change(panel, monkeypatch, qtbot):
    from yardwright.measure import pins as measured

    real, asked = measured.pin_rows, []
    monkeypatch.setattr(measured, "pin_rows", lambda *given: asked.append(1) or real(*given))
    qtbot.waitUntil(lambda: not panel.in_hand._edited.isActive(), timeout=20_000)
    type_in(panel, 1, on="10", off="5", off_from="left")
    assert asked == [1] and table(panel)[1][:3] == ["10", "5", "left"]
    with qtbot.waitSignal(panel.in_hand.edited, timeout=20_000):
        pass
    assert asked == [1]
    # What is changed elsewhere is laid out all the same, and so is another round.
    panel.in_hand.layer("pin").undoStack().undo()
    qtbot.waitUntil(lambda: table(panel)[1][:3] == ["", "", ""], timeout=20_000)
    assert asked == [1, 1]
    panel.in_hand.choose_round(2)
    assert asked == [1, 1, 1]
