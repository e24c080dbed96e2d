"""The list of locations proposed: worked out beside the window, ticked, and placed only when it is wanted."""

import threading
from dataclasses import replace

import numpy as np
import pytest
from osgeo import gdal, osr
from qgis.core import QgsFeature, QgsRasterLayer
from qgis.PyQt.QtCore import Qt, QTimer

from tests.desk.conftest import EAST, NORTH, at
from tests.desk.test_drawing import drawing  # noqa: F401  the fixture
from tests.desk.test_event_panel import panel, pins, type_in  # noqa: F401  the fixture
from tests.desk.test_toolbar import iface  # noqa: F401  the fixture


def made(panel, terrains=()):  # noqa: F811
    from yardwright.desk.propose_dialog import ProposalDialog

    return ProposalDialog(panel, panel.in_hand, panel.in_hand.event_in_hand(), terrains)


def write(panel, event):  # noqa: F811
    from yardwright.store.events import write_event

    write_event(panel._layers(), event)


@pytest.fixture
def dialog(panel, qtbot):  # noqa: F811
    """The dialog with what it found, nothing placed yet."""
    dialog = made(panel)
    dialog.show()
    dialog.begin()
    qtbot.waitUntil(lambda: dialog.found is not None, timeout=20000)
    yield dialog
    dialog.stop()
    dialog.let_go()
    dialog.deleteLater()


def rows(tree):
    """``{text of a top row: [texts of its children]}``."""
    columns = range(tree.columnCount())
    tops = [tree.topLevelItem(n) for n in range(tree.topLevelItemCount())]
    return {
        top.text(0).split("  ")[0]: [
            [top.child(n).text(column) for column in columns] for n in range(top.childCount())
        ]
        for top in tops
    }


def remarks(dialog):
    return [dialog.remarks.item(n).text() for n in range(dialog.remarks.count())]


def test_every_hole_with_a_green_is_proposed_a_place_in_every_round(dialog, panel):  # noqa: F811
    found = rows(dialog.list)
    assert list(found) == ["Round 1", "Round 2"]
    for of_round in found.values():
        assert [row[0] for row in of_round] == ["Hole 1", "Hole 2"]
        for _, figures, part, grade in of_round:
            assert " on, " in figures and part.split(", ")[0] in ("left", "centre", "right")
            assert part.split(", ")[1] in ("front third", "middle third", "back third")
            assert grade in ("easy", "moderate", "hard")
    assert [(pin.round, pin.hole) for pin, _ in dialog.chosen()] == [(1, 1), (1, 2), (2, 1), (2, 2)]
    assert "Locations proposed: 4, ticked: 4." in dialog.head.text()
    assert not dialog.progress.isVisible()
    assert pins(panel) == [], "nothing is written by looking"


def test_the_figures_shown_are_those_of_the_place(dialog, panel):  # noqa: F811
    """The green of hole 1: front at 345 yd, 20 yd wide about the line."""
    pin, (x, y) = dialog.chosen()[0]
    on, off = pin.on / 0.9144, pin.off / 0.9144
    side = {"left": -1, "right": 1}[pin.off_from]
    assert (x, y) == pytest.approx(at(side * (10 - off), 345 + on), abs=0.01)
    assert rows(dialog.list)["Round 1"][0][1] == f"{on:g} on, {off:g} from {pin.off_from}"


def test_a_hole_that_got_none_is_named_with_the_reason(dialog):
    first = remarks(dialog)[0]
    assert "hole 3" in first and "rounds 1 and 2" in first.replace("round 1", "rounds 1")
    assert "it has no green" in first and first.startswith("✗")


def test_the_balance_follows_the_ticks(dialog):
    def counted():
        top = dialog.balance_tree.topLevelItem(0)
        return top.text(1), [dialog.balance_tree.topLevelItem(n).text(1) for n in range(2)]

    assert counted()[1] == ["0 → 2", "0 → 2"]
    assert rows(dialog.balance_tree)["Round 1"][0][:2] == ["Holes 1-9", "0 → 2"]
    assert rows(dialog.balance_tree)["Round 2"][0][0] == "Holes 1-9"
    of_round = dialog.list.topLevelItem(0)
    of_round.child(1).setCheckState(0, Qt.CheckState.Unchecked)
    dialog._recount.timeout.emit()
    assert counted()[1] == ["0 → 1", "0 → 2"]
    assert of_round.checkState(0) == Qt.CheckState.PartiallyChecked
    # A tick at the round holds for all its holes.
    of_round.setCheckState(0, Qt.CheckState.Unchecked)
    dialog._recount.timeout.emit()
    assert counted()[1] == ["0", "0 → 2"]
    assert [(pin.round, pin.hole) for pin, _ in dialog.chosen()] == [(2, 1), (2, 2)]
    assert "ticked: 2." in dialog.head.text() and dialog.place_button.isEnabled()
    dialog.list.topLevelItem(1).setCheckState(0, Qt.CheckState.Unchecked)
    dialog._recount.timeout.emit()
    assert dialog.chosen() == [] and not dialog.place_button.isEnabled()


def test_the_counts_of_a_row_add_up(dialog):
    row = rows(dialog.balance_tree)["Round 1"][0][2:]
    after = [int(text.split("→")[-1].strip(" !")) for text in row]
    assert [sum(after[n : n + 3]) for n in (0, 3, 6)] == [2, 2, 2]


def opened(panel, qtbot):  # noqa: F811
    """The dialog as the panel opens it, with what it found."""
    from yardwright.desk.propose_dialog import ProposalDialog

    panel.propose_button.click()
    (dialog,) = panel.findChildren(ProposalDialog)
    assert dialog.isVisible() and not dialog.isModal()
    qtbot.waitUntil(lambda: dialog.found is not None, timeout=20000)
    return dialog


def test_what_is_ticked_is_placed_and_can_be_undone(panel, qtbot):  # noqa: F811
    type_in(panel, 1, on="10", off="5", off_from="left")
    dialog = opened(panel, qtbot)
    dialog.list.topLevelItem(1).child(0).setCheckState(0, Qt.CheckState.Unchecked)
    dialog.place_button.click()
    assert panel.in_hand.iface.bar.messages == []
    assert sorted(pins(panel)) == [(1, 1, "figures"), (1, 2, "figures"), (2, 2, "figures")]
    layer = panel.in_hand.layer("pin")
    assert layer.isEditable() and layer.undoStack().count() == 2
    layer.undoStack().undo()
    assert pins(panel) == [(1, 1, "figures")]


def test_a_proposal_that_nobody_wants_writes_nothing(panel, qtbot):  # noqa: F811
    opened(panel, qtbot).reject()
    assert pins(panel) == [] and panel.in_hand.iface.bar.messages == []


def test_the_window_lives_while_it_looks_and_cancel_ends_the_search(panel, qtbot, monkeypatch):  # noqa: F811
    """The search is held up at its first look at a green until it is told to stop."""
    from yardwright.desk import propose_dialog

    looked, go = threading.Event(), threading.Event()
    real = propose_dialog._WatchedGrounds.hole

    def slow(grounds, number):
        looked.set()
        go.wait(10)
        return real(grounds, number)

    monkeypatch.setattr(propose_dialog._WatchedGrounds, "hole", slow)
    dialog = made(panel)
    dialog.show()
    dialog.begin()
    qtbot.waitUntil(looked.is_set, timeout=20_000)
    assert dialog.progress.isVisible() and not dialog.place_button.isEnabled() and dialog.found is None
    ticks = []
    QTimer.singleShot(0, lambda: ticks.append(1))
    qtbot.waitUntil(lambda: bool(ticks), timeout=20_000)
    run = dialog._run
    run.stopped.set()
    go.set()
    dialog.buttons.button(dialog.buttons.StandardButton.Cancel).click()
    assert run.done and type(run.error).__name__ == "Cancelled" and run.result is None
    assert dialog.found is None and dialog.chosen() == []
    assert not dialog.isVisible()


def test_a_location_is_shown_on_the_map(dialog, panel):  # noqa: F811
    from yardwright.desk.turning import on_map

    canvas = panel.in_hand.iface.mapCanvas()
    panel.in_hand.choose_hole(1)
    item = dialog.list.topLevelItem(1).child(1)
    dialog.list.setCurrentItem(item)
    pin = item.data(0, Qt.ItemDataRole.UserRole)
    # The last leg of hole 2 runs north-east.
    assert (panel.in_hand.hole, panel.in_hand.round) == (2, 2) and canvas.rotation() == pytest.approx(
        -45, abs=0.01
    )
    assert dialog.mark.place == on_map(panel.in_hand, pin.point)
    ring = dialog.mark.rings[0]
    assert ring in canvas.scene().items()
    dialog.reject()
    assert ring not in canvas.scene().items()


def test_what_was_proposed_for_something_else_is_not_placed(panel, qtbot):  # noqa: F811
    """A pin placed by hand meanwhile would be replaced by the one proposed for its hole."""
    from yardwright.store.events import rename_event

    dialog = opened(panel, qtbot)
    assert len(dialog.chosen()) == 4
    type_in(panel, 1, on="10", off="5", off_from="left")
    qtbot.waitUntil(lambda: not dialog.place_button.isEnabled(), timeout=20_000)
    assert "Look again first" in dialog.head.text()
    panel.in_hand.layer("pin").undoStack().undo()
    qtbot.waitUntil(lambda: dialog.place_button.isEnabled(), timeout=20_000)
    panel.in_hand.layer("pin").undoStack().redo()
    qtbot.waitUntil(lambda: not dialog.place_button.isEnabled(), timeout=20_000)
    dialog.again_button.click()
    qtbot.waitUntil(lambda: dialog.place_button.isEnabled(), timeout=20000)
    assert len(dialog.chosen()) == 3
    # A note on the course is nothing to it.
    layer = panel.in_hand.layer("hole_note")
    layer.startEditing()
    row = QgsFeature(layer.fields())
    row["hole"] = 1
    with qtbot.waitSignal(panel.in_hand.edited, timeout=20_000):
        assert layer.addFeature(row)
    assert dialog.place_button.isEnabled()
    # Nor is another name, which they are placed under.
    rename_event(panel._layers(), "Heron Cup", "Wren Cup")
    qtbot.waitUntil(lambda: "Wren Cup" in dialog.windowTitle(), timeout=20_000)
    dialog.place_button.click()
    assert [one.name for one in panel.in_hand.events()] == ["Wren Cup"]
    assert (1, 1, "figures") in pins(panel) and len(pins(panel)) == 4


def test_a_proposal_for_an_event_that_is_gone_says_so(panel, qtbot):  # noqa: F811
    from yardwright.store.events import remove_event

    dialog = opened(panel, qtbot)
    remove_event(panel._layers(), "Heron Cup")
    qtbot.waitUntil(lambda: not dialog.place_button.isEnabled(), timeout=20_000)
    assert "no event “Heron Cup” any more" in dialog.head.text() and not dialog.again_button.isEnabled()


def test_nothing_to_propose_is_said(panel, qtbot):  # noqa: F811
    for number in (1, 2):
        panel.in_hand.choose_round(number)
        for hole in (1, 2):
            type_in(panel, hole, on=str(6 + 6 * number), off="6", off_from="left")
    event = panel.in_hand.event_in_hand()
    write(panel, replace(event, rounds=tuple(replace(one, holes=(1, 2)) for one in event.rounds)))
    dialog = made(panel)
    dialog.begin()
    qtbot.waitUntil(lambda: dialog.found is not None, timeout=20000)
    assert "has a pin already" in dialog.head.text() and not dialog.place_button.isEnabled()
    assert [dialog.balance_tree.topLevelItem(n).text(1) for n in range(2)] == ["2", "2"]


def heights(path, steep_above):
    """Heights about hole 1, level up to ``steep_above`` yards north of the tee and of 10 % beyond."""
    (left, bottom), (right, top) = at(-60, -20), at(450, 420)
    columns, lines = round(right - left), round(top - bottom)
    north = top - np.arange(lines) - 0.5
    rise = np.maximum(north - at(0, steep_above)[1], 0.0) * 0.1
    raster = gdal.GetDriverByName("GTiff").Create(str(path), columns, lines, 1, gdal.GDT_Float32)
    crs = osr.SpatialReference()
    crs.ImportFromEPSG(32630)
    raster.SetProjection(crs.ExportToWkt())
    raster.SetGeoTransform((left, 1.0, 0.0, top, 0.0, -1.0))
    raster.GetRasterBand(1).SetUnitType("m")
    raster.GetRasterBand(1).WriteArray(np.repeat(rise[:, None], columns, axis=1).astype("float32"))
    raster = None
    return QgsRasterLayer(str(path), "Ground")


def test_ground_too_steep_is_left_out_by_the_layer_of_heights(panel, project, tmp_path, qtbot):  # noqa: F811
    """Level up to 15 yd into the green of hole 1 (front at 345 yd), steeper than the 3 % asked beyond."""
    from yardwright.desk.dates import rasters_of_heights
    from yardwright.desk.terrains import opener_of

    assert at(0, 0) == (EAST, NORTH)
    project.addMapLayer(heights(tmp_path / "ground.tif", 360))
    (layer,) = rasters_of_heights(project)
    event = panel.in_hand.event_in_hand()
    write(panel, replace(event, limits=replace(event.limits, slope_pct=3.0)))
    dialog = made(panel, [(layer.name(), opener_of(layer))])
    assert dialog.terrain_box.currentText() == "Ground" and dialog.terrain_box.isEnabled()
    dialog.begin()
    qtbot.waitUntil(lambda: dialog.found is not None, timeout=20000)
    level = [pin.on / 0.9144 for pin, _ in dialog.chosen() if pin.hole == 1]
    assert len(level) == 2 and max(level) <= 15
    # The terrain is closed, and the grades are still known.
    dialog.list.topLevelItem(0).child(0).setCheckState(0, Qt.CheckState.Unchecked)
    dialog._recount.timeout.emit()
    assert "ticked: 3." in dialog.head.text()
    # Without heights, the whole depth is there again.
    dialog.terrain_box.setCurrentIndex(0)
    dialog.terrain_box.activated.emit(0)
    assert dialog.found is None and dialog.chosen() == []
    qtbot.waitUntil(lambda: dialog.found is not None, timeout=20000)
    assert max(pin.on / 0.9144 for pin, _ in dialog.chosen() if pin.hole == 1) > 15


def test_heights_that_cannot_be_read_are_told_of(panel, project, tmp_path, qtbot):  # noqa: F811
    from yardwright.desk.terrains import opener_of

    layer = heights(tmp_path / "ground.tif", 360)
    event = panel.in_hand.event_in_hand()
    write(panel, replace(event, limits=replace(event.limits, slope_pct=3.0)))
    dialog = made(panel, [(layer.name(), opener_of(layer))])
    (tmp_path / "ground.tif").write_bytes(b"no heights")
    told = []
    dialog.bar.pushMessage = lambda title, text, level, duration: told.append(text)
    dialog.begin()
    qtbot.waitUntil(lambda: bool(told), timeout=20000)
    assert "ground.tif" in told[0] and "Nothing is proposed" in dialog.head.text()
    assert dialog.chosen() == [] and not dialog.progress.isVisible()
