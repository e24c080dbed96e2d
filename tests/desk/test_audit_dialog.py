"""The audit: theirs beside ours, decided pin by pin, written into the edit buffers and logged."""

import csv

import pytest
from qgis.core import QgsSettings
from qgis.PyQt.QtCore import QPoint, QRect, QSize, Qt
from qgis.PyQt.QtGui import QColor, QImage, QPainter
from qgis.PyQt.QtTest import QTest
from qgis.PyQt.QtWidgets import QApplication, QFileDialog, QPushButton

from tests.desk.conftest import EAST, GRID, NORTH, at
from tests.desk.test_dates_compared import contrast
from tests.desk.test_drawing import drawing  # noqa: F401  the fixture
from tests.desk.test_toolbar import iface  # noqa: F401  the fixture

HEADINGS = "round\thole\ton\toff\tfrom\tgreen_depth\n"
GIVEN = (
    HEADINGS
    + "1\t1\t10\t5\tleft\t30\n"  # drawn just so
    + "1\t2\t12\t6\tright\t27\n"  # drawn 10 on: 2 yd apart; the green is 24 deep
    + "2\t1\t20\t4\tright\t30\n"  # not drawn
    + "2\t2\t40\t5\tleft\t24\n"  # beyond the back
)
"""Round 2 has a pin drawn on hole 2 besides, and round 3 one that nobody speaks of."""


@pytest.fixture
def event(drawing):  # noqa: F811
    """The in hand with the Heron Cup and its pins, nothing of it saved."""
    from yardwright.measure.pins import follow_in
    from yardwright.measure.units import YARD
    from yardwright.model.event import Event, Pin, Round
    from yardwright.store.events import write_event, write_pins

    in_hand = drawing.in_hand
    layers = in_hand.layers()
    for kind in ("event", "event_round", "pin"):
        layers.layers[kind].startEditing()
    write_event(layers, Event("Heron Cup", rounds=(Round(1), Round(2), Round(3))))
    drawn = [(1, 1, 10, 5, "left"), (1, 2, 10, 6, "right"), (2, 2, 9, 3, "centre"), (3, 1, 15, 0, "centre")]
    pins = [
        Pin("Heron Cup", number, hole, on * YARD, off * YARD, side) for number, hole, on, off, side in drawn
    ]
    points = [follow_in(in_hand.course(), in_hand.index(), pin).point for pin in pins]
    write_pins(layers, "Heron Cup", pins, points)
    in_hand.choose_event("Heron Cup")
    return in_hand


@pytest.fixture
def dialog(event, qtbot):
    """The dialog with nothing read; the name of who decides is not remembered from elsewhere."""
    from yardwright.desk.audit_dialog import AuditDialog
    from yardwright.desk.editing import begin_editing

    QgsSettings().remove("yardwright/audit_decided_by")

    def layers_to_write():
        layers = event.layers()
        for kind in ("event", "event_round", "pin"):
            begin_editing(layers.layers[kind])
        return layers

    dialog = AuditDialog(event.iface.window, event, event.event_in_hand(), layers_to_write)
    dialog.show()
    qtbot.waitExposed(dialog)
    yield dialog
    dialog.close()
    dialog.deleteLater()
    QgsSettings().remove("yardwright/audit_decided_by")


def read(dialog, text=GIVEN):
    QApplication.clipboard().setText(text)
    dialog.paste_button.click()


def click(dialog, row):
    """Click on a row of the list with the mouse."""
    item = dialog.list.topLevelItem(row)
    dialog.list.scrollToItem(item)
    place = dialog.list.visualItemRect(item).topLeft() + QPoint(20, 8)
    QTest.mouseClick(dialog.list.viewport(), Qt.MouseButton.LeftButton, pos=place)


def listed(dialog, *columns):
    """``{(round, hole): texts}`` of the list; a list of texts where a row has no hole."""
    items = [dialog.list.topLevelItem(row) for row in range(dialog.list.topLevelItemCount())]
    return {(item.text(0), item.text(1)): tuple(item.text(column) for column in columns) for item in items}


def choose(dialog, *keys):
    dialog.list.clearSelection()
    for row in range(dialog.list.topLevelItemCount()):
        item = dialog.list.topLevelItem(row)
        item.setSelected((item.text(0), item.text(1)) in keys)


def pins(in_hand):
    from yardwright.measure.units import YARD

    return {
        (pin.round, pin.hole): (round(pin.on / YARD, 6), round(pin.off / YARD, 6), pin.off_from)
        for pin in in_hand.event_in_hand().pins
    }


def message(dialog):
    return dialog.bar.currentItem().text()


DRAWN_AT_FIRST = {
    (1, 1): (10, 5, "left"),
    (1, 2): (10, 6, "right"),
    (2, 2): (9, 3, "centre"),
    (3, 1): (15, 0, "centre"),
}


def test_at_first_nothing_is_read(dialog):
    assert dialog.list.topLevelItemCount() == 0 and "Nothing is read yet" in dialog.head.text()
    assert not dialog.apply_button.isEnabled() and not dialog.table_button.isEnabled()
    # The sheet shows what is drawn: it needs no figures of the committee.
    assert dialog.sheet_button.isEnabled()


def test_what_differs_is_listed(dialog, event):
    from yardwright.desk.audit_dialog import APART, DEPTH, DRAWN, GIVEN, REMARK, VERDICT

    read(dialog)
    rows = listed(dialog, GIVEN, DRAWN, APART, VERDICT, DEPTH)
    assert list(rows) == [("1", "2"), ("2", "1"), ("2", "2")]
    theirs, ours, apart, verdict, depth = rows["1", "2"]
    assert (theirs, ours, verdict) == ("12 on, 6 from right", "10 on, 6 from right", "≠ apart")
    # The green of hole 2 is round, 12 yd about its middle. 6 in from the right margin lies
    # sqrt(12² - (12 - on)²) - 6 right of the middle: 5.832 at 10 on, 6.000 at 12; and they lie 2 on apart.
    # 9 on and 3 right of the middle is sqrt(12² - 3²) + 3 = 14.62 in from the left one.
    assert apart == "2.0 yd" and depth == "27 / 24.0"
    assert rows["2", "1"][:4] == ("20 on, 4 from right", "", "", "+ not drawn")
    assert (
        rows["2", "2"][:2] == ("40 on, 5 from left", "9 on, 14.6 from left")
        and rows["2", "2"][3] == "✕ impossible"
    )
    assert "24.0 yd deep" in listed(dialog, REMARK)["2", "2"][0]
    dialog.list.setCurrentItem(dialog.list.topLevelItem(2))
    assert dialog.remark.isVisible() and "24.0 yd deep" in dialog.remark.text()
    assert "left aside: 3" in dialog.head.text() and "4 pins compared, 3 differ" in dialog.head.text()
    dialog.all_box.click()
    assert listed(dialog, VERDICT)["1", "1"] == ("= agrees",)
    assert pins(event) == DRAWN_AT_FIRST


def test_theirs_is_drawn_and_ours_is_kept(dialog, event):
    from yardwright.desk.audit_dialog import DECISION, VERDICT

    read(dialog)
    choose(dialog, ("1", "2"), ("2", "1"))
    dialog.theirs_button.click()
    choose(dialog, ("2", "2"))
    assert not dialog.theirs_button.isEnabled()
    dialog.ours_button.click()
    assert listed(dialog, DECISION) == {
        ("1", "2"): ("theirs",),
        ("2", "1"): ("theirs",),
        ("2", "2"): ("ours",),
    }
    assert pins(event) == DRAWN_AT_FIRST
    assert not dialog.apply_button.isEnabled() and "who decided" in dialog.apply_button.toolTip()
    QTest.keyClicks(dialog.by, "Ada Finch")
    steps = event.layer("pin").undoStack().count()
    dialog.apply_button.click()
    assert pins(event) == {**DRAWN_AT_FIRST, (1, 2): (12, 6, "right"), (2, 1): (20, 4, "right")}
    # Hole 1: 30 deep from 345, 20 wide.
    (pin,) = (one for one in event.event_in_hand().pins if (one.round, one.hole) == (2, 1))
    assert pin.point == pytest.approx(at(6, 365), abs=0.01) and pin.given == "figures"
    assert "2 of the committee’s were taken over, 1 of ours kept" in message(dialog)
    assert listed(dialog, VERDICT, DECISION)["2", "2"] == ("✕ impossible", "before: ours")
    # What was decided on is not decided again with all the others, but alone.
    assert not dialog.all_ours_button.isEnabled()
    choose(dialog, ("2", "2"))
    assert dialog.ours_button.isEnabled()
    assert not dialog.apply_button.isEnabled()

    # One step in each layer, and nothing saved.
    for kind, count in (("pin", steps + 1), ("pin_decision", 1)):
        layer = event.layer(kind)
        assert layer.isEditable() and layer.isModified() and layer.undoStack().count() == count
    event.layer("pin").undoStack().undo()
    assert pins(event) == DRAWN_AT_FIRST


def test_decisions_are_logged_with_the_figures_of_both(dialog, event):
    from yardwright.store.events import read_decisions

    read(dialog)
    dialog.all_ours_button.click()
    choose(dialog, ("2", "1"))
    dialog.theirs_button.click()
    dialog.by.setText(" Ada Finch ")
    dialog.apply_button.click()
    logged = [
        (one.round, one.hole, one.decided, one.by, one.given, one.drawn)
        for one in read_decisions(event.layers(), "Heron Cup")
    ]
    assert logged == [
        (1, 2, "ours", "Ada Finch", "12 on, 6 from right", "10 on, 6 from right"),
        (2, 1, "theirs", "Ada Finch", "20 on, 4 from right", ""),
        (2, 2, "ours", "Ada Finch", "40 on, 5 from left", "9 on, 14.6 from left"),
    ]
    shown = [dialog.earlier.topLevelItem(row) for row in range(dialog.earlier.topLevelItemCount())]
    assert [(item.text(1), item.text(2), item.text(3)) for item in shown] == [
        ("2", "2", "ours"),
        ("2", "1", "theirs"),
        ("1", "2", "ours"),
    ]
    assert QgsSettings().value("yardwright/audit_decided_by") == "Ada Finch"


def test_a_pin_nobody_asked_for_is_taken_out(dialog, event):
    from yardwright.desk.audit_dialog import VERDICT

    read(dialog, HEADINGS + "1\t1\t10\t5\tleft\t30\n")
    assert listed(dialog, VERDICT) == {("1", "2"): ("− not asked for",)}
    dialog.all_theirs_button.click()
    dialog.by.setText("Ada Finch")
    dialog.apply_button.click()
    assert pins(event) == {key: value for key, value in DRAWN_AT_FIRST.items() if key != (1, 2)}
    assert dialog.list.topLevelItemCount() == 0


def test_a_line_that_cannot_be_read_takes_no_pin_out(dialog, event):
    """The line of hole 2 is there, but bad: the pin drawn only looks as if nobody had asked for it."""
    from yardwright.desk.audit_dialog import REMARK, VERDICT

    read(dialog, HEADINGS + "1\t1\t12\t5\tleft\t30\n1\t2\tten\t6\tright\t24\n")
    rows = listed(dialog, VERDICT, REMARK)
    assert rows["", ""][0] == "✕ not read" and "line 3" in rows["", ""][1] and "ten" in rows["", ""][1]
    dialog.all_theirs_button.click()
    assert dialog.audit.decided == {(1, 1): "theirs"}
    assert "could not be read: 1." in dialog.head.text()


def test_of_two_drawn_pins_theirs_leaves_one(dialog, event):
    from qgis.core import QgsFeature

    layer = event.layer("pin")
    (twin,) = (row for row in layer.getFeatures() if (row["round"], row["hole"]) == (1, 1))
    second = QgsFeature(twin)
    second["on_yd"] = 20.0
    second["fid"] = None
    geometry = second.geometry()
    geometry.translate(0, 9)
    second.setGeometry(geometry)
    assert layer.addFeature(second)
    read(dialog)
    choose(dialog, ("1", "1"))
    dialog.theirs_button.click()
    dialog.by.setText("Ada Finch")
    dialog.apply_button.click()
    there = [(pin.round, pin.hole) for pin in event.event_in_hand().pins]
    assert there.count((1, 1)) == 1 and pins(event)[1, 1] == (10, 5, "left")


def test_nothing_is_written_when_something_fails(dialog, event, monkeypatch):
    from yardwright.model.errors import YardwrightError
    from yardwright.store.events import read_decisions

    def refuse(*_):
        raise YardwrightError("The disk is full.", "Make room.")

    monkeypatch.setattr("yardwright.desk.auditing.write_pins", refuse)
    read(dialog)
    dialog.all_theirs_button.click()
    dialog.by.setText("Ada Finch")
    dialog.apply_button.click()
    assert "The disk is full. Make room." in message(dialog)
    assert read_decisions(event.layers(), "Heron Cup") == () and pins(event) == DRAWN_AT_FIRST
    # What was decided is not lost, and can be tried again.
    assert len(dialog.audit.decided) == 2 and dialog.apply_button.isEnabled()


@pytest.mark.parametrize("key", [None, Qt.Key.Key_Return, Qt.Key.Key_Down])
def test_the_green_is_shown_the_approach_up(dialog, event, key):
    from yardwright.desk.turning import in_view, map_places

    event.choose_hole(1)
    read(dialog)
    item = dialog.list.topLevelItem(0)
    assert (item.text(0), item.text(1)) == ("1", "2")
    canvas = event.iface.mapCanvas()
    assert canvas.rotation() == 0.0
    if key is None:
        click(dialog, 0)
    elif key == Qt.Key.Key_Return:
        dialog.list.setCurrentItem(item)
        assert canvas.rotation() == 0.0, "what is chosen by itself turns no map"
        QTest.keyClick(dialog.list, key)
    else:
        dialog.list.setCurrentItem(dialog.list.topLevelItem(1))
        QTest.keyClick(dialog.list, Qt.Key.Key_Up)
    assert event.hole == 2 and event.round == 1 and dialog.isVisible()
    # Its last leg runs north-east: turned by 45 degrees against the clock it points up.
    assert canvas.rotation() == pytest.approx(-45.0, abs=0.01)
    played = event.played(2)
    there = map_places(canvas, event.layers().crs, played.frame)([played.green.middle])
    assert in_view(canvas, there)


def test_the_dialog_steps_aside_for_the_map(dialog):
    """A map at the left of the screen: a dialog over its middle goes to the right, where it stays."""
    from yardwright.desk.map_marks import step_aside

    read(dialog)
    screen = dialog.screen().availableGeometry()
    dialog.resize(dialog.minimumSizeHint())
    width = screen.width() - dialog.frameGeometry().width()
    assert width > 40
    seen = QRect(screen.topLeft(), QSize(width, screen.height()))
    dialog.move(screen.topLeft())
    step_aside(dialog, seen)
    assert not dialog.frameGeometry().intersects(seen) and screen.contains(dialog.frameGeometry())
    before = dialog.pos()
    step_aside(dialog, seen)
    assert dialog.pos() == before


def test_a_decision_is_taken_back(dialog):
    from yardwright.desk.audit_dialog import DECISION

    read(dialog)
    dialog.all_ours_button.click()
    choose(dialog, ("2", "1"))
    dialog.open_button.click()
    dialog.list.setCurrentItem(dialog.list.topLevelItem(2))
    dialog.ours_button.click()
    # The list was made anew: the keys are on the same row, and its remark is told.
    assert dialog.list.currentItem().text(1) == "2" and "24.0 yd deep" in dialog.remark.text()
    QTest.keyClick(dialog.list, Qt.Key.Key_Delete)
    assert listed(dialog, DECISION) == {("1", "2"): ("ours",), ("2", "1"): ("open",), ("2", "2"): ("open",)}


def test_a_file_is_read_and_the_audit_is_saved(dialog, tmp_path, monkeypatch):
    path = tmp_path / "pins.csv"
    path.write_text(GIVEN.replace("\t", ","), "utf-8")
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_: (str(path), ""))
    monkeypatch.setattr(QFileDialog, "getExistingDirectory", lambda *_: str(tmp_path / "out"))
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(tmp_path / "greens"), ""))
    dialog.file_button.click()
    assert dialog.list.topLevelItemCount() == 3
    dialog.table_button.click()
    with open(tmp_path / "out" / "pin_audit.csv", encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))
    assert [(row["round"], row["hole"], row["verdict"]) for row in rows] == [
        ("1", "1", "same"),
        ("1", "2", "apart"),
        ("2", "1", "missing"),
        ("2", "2", "impossible"),
    ]
    assert rows[1]["given_on_yd"] == "12.00" and rows[1]["drawn_on_yd"] == "10.00"
    dialog.sheet_button.click()
    assert (tmp_path / "greens.pdf").read_bytes().startswith(b"%PDF")
    assert "greens.pdf" in message(dialog)


def test_what_is_no_list_of_pins_is_told_of(dialog, event):
    read(dialog)
    read(dialog, "on Sunday we play from the blue tees")
    assert "headings" in message(dialog)
    read(dialog, "  ")
    assert "no text on the clipboard" in message(dialog)
    # What was read before is there still.
    assert dialog.list.topLevelItemCount() == 3


def test_the_panel_opens_it(event):
    from yardwright.desk.audit_dialog import AuditDialog
    from yardwright.desk.event_panel import EventPanel

    panel = EventPanel(event, event.iface.window)
    try:
        panel.show()
        panel.audit_button.click()
        (dialog,) = panel.findChildren(AuditDialog)
        assert dialog.audit.name == "Heron Cup" and dialog.isVisible() and not dialog.isModal()
        panel.audit_button.click()
        assert panel.findChildren(AuditDialog) == [dialog] and event.iface.messageBar().messages == []
        # It goes with the panel, and what it drew with it.
        read(dialog)
        click(dialog, 0)
        pair = dialog.pair
        assert pair in event.iface.mapCanvas().scene().items()
    finally:
        panel.let_go()
        panel.deleteLater()
    assert not dialog.isVisible() and pair not in event.iface.mapCanvas().scene().items()


def test_the_slope_at_ours_is_shown_where_heights_are_known(dialog, project, tmp_path):
    """Hole 1 is played to the north, and rises there by 10 %: it falls to the player. Hole 2's green, where the
    approach comes from the south-west, has pins on it too."""
    from yardwright.desk.audit_dialog import SLOPE

    from tests.desk.test_propose_dialog import heights

    read(dialog)
    dialog.all_box.setChecked(True)
    assert dialog.list.isColumnHidden(SLOPE)
    project.addMapLayer(heights(tmp_path / "ground.tif", 180))
    read(dialog)
    assert not dialog.list.isColumnHidden(SLOPE)
    slopes = {key: texts[0] for key, texts in listed(dialog, SLOPE).items()}
    assert slopes["1", "1"] == "↓ 10.0 % to the front"
    drawn = {(str(number), str(hole)) for number, hole in DRAWN_AT_FIRST}
    assert {key for key, text in slopes.items() if text} <= drawn


# Beside the map


def on_the_map(dialog, side):
    """Where a pin of the pair lies, yards as in the small course."""
    place = dialog.pair.places[side]
    return (place.x() - EAST) / GRID, (place.y() - NORTH) / GRID


def move_pin(in_hand, number, hole, x, y):
    """Move the pin of a round and hole by yards, as QGIS's own tool does."""
    layer = in_hand.layer("pin")
    (row,) = (one for one in layer.getFeatures() if (one["round"], one["hole"]) == (number, hole))
    moved = row.geometry()
    moved.translate(x * GRID, y * GRID)
    assert layer.changeGeometry(row.id(), moved)


def test_both_pins_of_a_row_are_drawn_with_what_lies_between(dialog, event):
    """Hole 1: 30 deep from 345, 20 wide. Theirs is 12 on and 5 from the left, ours 10 on."""
    read(dialog, HEADINGS + "1\t1\t12\t5\tleft\t30\n2\t1\t20\t4\tright\t30\n")
    assert dialog.pair is None
    click(dialog, 0)
    assert on_the_map(dialog, "theirs") == pytest.approx((-5, 357), abs=0.02)
    assert on_the_map(dialog, "ours") == pytest.approx((-5, 355), abs=0.02)
    assert dialog.pair.texts() == ["theirs", "ours", "2.0 yd"]
    # Of a pin that is not drawn there is theirs alone.
    rows = [dialog.list.topLevelItem(n).text(0) for n in range(dialog.list.topLevelItemCount())]
    click(dialog, rows.index("2"))
    assert on_the_map(dialog, "theirs") == pytest.approx((6, 365), abs=0.02)
    assert dialog.pair.texts() == ["theirs"] and event.round == 2


@pytest.mark.parametrize("ground", ["#000000", "#ffffff", "#4f8a3c"])
def test_the_pair_is_seen_on_dark_and_bright_ground(dialog, ground):
    """A contrast of 3:1 is what WCAG 2.1 asks of graphics (1.4.11), by its own formula of luminance."""
    read(dialog, HEADINGS + "1\t1\t20\t5\tleft\t30\n")
    click(dialog, 0)
    size = dialog.pair.canvas.viewport().size()
    image = QImage(size, QImage.Format.Format_RGB32)
    image.fill(QColor(ground))
    painter = QPainter(image)
    dialog.pair.paint(painter)
    painter.end()
    for side in ("theirs", "ours"):
        at = dialog.pair.toCanvasCoordinates(dialog.pair.places[side]).toPoint()
        around = [image.pixelColor(at + QPoint(x, y)) for x in range(-12, 13) for y in range(-12, 13)]
        assert max(contrast(one, QColor(ground)) for one in around) >= 3
        assert max(contrast(one, other) for one in around for other in around[:200]) >= 3


def test_what_is_changed_meanwhile_shows(dialog, event, qtbot):
    from yardwright.desk.audit_dialog import APART, DECISION, VERDICT

    read(dialog)
    click(dialog, 0)
    choose(dialog, ("2", "2"))
    dialog.ours_button.click()
    move_pin(event, 1, 1, 0, 3)
    qtbot.waitUntil(lambda: ("1", "1") in listed(dialog), timeout=20_000)
    rows = listed(dialog, APART, VERDICT, DECISION)
    assert rows["1", "1"] == ("3.0 yd", "≠ apart", "open") and rows["2", "2"][2] == "ours"
    before = on_the_map(dialog, "ours")
    # North-east is up on hole 2, theirs lies 2 yd further on: ours goes there.
    move_pin(event, 1, 2, 2**0.5, 2**0.5)
    agrees = ("= agrees",)
    qtbot.waitUntil(lambda: listed(dialog, VERDICT)["1", "2"] == agrees, timeout=20_000)
    after = on_the_map(dialog, "ours")
    assert (after[0] - before[0], after[1] - before[1]) == pytest.approx((2**0.5, 2**0.5), abs=0.01)
    assert dialog.pair.texts()[:2] == ["theirs", "ours"]
    event.layer("pin").undoStack().undo()
    qtbot.waitUntil(lambda: listed(dialog, VERDICT)["1", "2"] != agrees, timeout=20_000)
    assert dialog.pair.texts()[2] == "2.0 yd"


def test_what_was_applied_is_undone_in_one(dialog, event, qtbot):
    """Pins and the log of decisions: by the button of the message, or in QGIS in either layer."""
    from yardwright.desk.audit_dialog import DECISION
    from yardwright.store.events import read_decisions

    read(dialog)
    dialog.all_theirs_button.click()
    dialog.by.setText("Ada Finch")
    dialog.apply_button.click()
    assert len(read_decisions(event.layers(), "Heron Cup")) == 2 and pins(event) != DRAWN_AT_FIRST
    (button,) = dialog.bar.currentItem().findChildren(QPushButton)
    button.click()
    assert read_decisions(event.layers(), "Heron Cup") == () and pins(event) == DRAWN_AT_FIRST
    qtbot.waitUntil(lambda: listed(dialog, DECISION)["1", "2"] == ("open",), timeout=20_000)
    assert dialog.earlier.topLevelItemCount() == 0
    event.layer("pin_decision").undoStack().redo()
    assert pins(event)[1, 2] == (12, 6, "right")
    event.layer("pin").undoStack().undo()
    assert read_decisions(event.layers(), "Heron Cup") == ()


def test_another_name_is_followed_and_an_event_removed_said(dialog, event, qtbot):
    from yardwright.desk.editing import one_step
    from yardwright.store.events import remove_event, rename_event, rows_of_event

    read(dialog)
    layers = event.layers()
    with one_step("Rename", *(layers.layers[kind] for kind in rows_of_event(layers, "Heron Cup"))):
        rename_event(layers, "Heron Cup", "Wren Cup")
    qtbot.waitUntil(lambda: "Wren Cup" in dialog.windowTitle(), timeout=20_000)
    assert len(listed(dialog)) == 3 and dialog.audit.name == "Wren Cup"
    event.layer("pin").undoStack().undo()
    qtbot.waitUntil(lambda: "Heron Cup" in dialog.windowTitle(), timeout=20_000)
    click(dialog, 0)
    with one_step("Remove", *(layers.layers[kind] for kind in rows_of_event(layers, "Heron Cup"))) as step:
        remove_event(layers, "Heron Cup")
    qtbot.waitUntil(lambda: "no event “Heron Cup” any more" in dialog.head.text(), timeout=20_000)
    assert not dialog.tabs.isEnabled() and not dialog.paste_button.isEnabled() and dialog.pair is None
    step.undo()
    qtbot.waitUntil(lambda: dialog.tabs.isEnabled(), timeout=20_000)
    assert len(listed(dialog)) == 3 and dialog.pair is not None


def test_it_goes_with_its_course(dialog, event, project, qtbot):
    read(dialog)
    click(dialog, 0)
    pair = dialog.pair
    for layer in project.mapLayers().values():
        if layer.isEditable():
            layer.rollBack()
    project.clear()
    qtbot.waitUntil(lambda: not dialog.isVisible(), timeout=20_000)
    assert pair not in event.iface.mapCanvas().scene().items() and event.iface.bar.messages == []
