"""The window of flights and tees: lengths typed and brought in, the place on the map, the rounds and limits, all
written at once by OK and nothing by Cancel."""

from contextlib import suppress

import pytest
from qgis.core import QgsPointXY, QgsRectangle
from qgis.PyQt import sip
from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtTest import QTest
from qgis.PyQt.QtWidgets import QApplication, QDialog, QLineEdit

from tests.desk.conftest import GRID, YARD, at, box
from tests.desk.test_drawing import drawing  # noqa: F401  the fixture
from tests.desk.test_event_panel import panel  # noqa: F401  the fixture
from tests.desk.test_toolbar import iface  # noqa: F401  the fixture

ASKED, FRONT, PLATE, VERDICT = range(4)


@pytest.fixture
def window(panel):  # noqa: F811
    """The window on an event of two rounds and one flight, Men from Heron.

    The tee of hole 1 reaches from 10 yd behind the plate to 10 yd ahead of it; the plate plays 360.
    """
    from yardwright.model.course import Feature
    from yardwright.model.event import Event, Flight, Round
    from yardwright.store.events import write_event
    from yardwright.store.writing import add_features

    in_hand = panel.in_hand
    layers = panel._layers()
    tee = Feature("tee", None, box(0, 0, 5, 10), (1,), attributes={"tee_set": "Heron"})
    add_features(layers, [tee])
    write_event(
        layers,
        Event("Heron Cup", "2026-05-02", "2026-05-03", (Round(1), Round(2)), (Flight("Men", "Heron"),)),
    )
    for layer in layers.layers.values():
        layer.undoStack().clear()
    in_hand.refresh()
    panel.tees_button.click()
    (window,) = panel.findChildren(QDialog, "yardwright_tees")
    yield window
    with suppress(RuntimeError):  # closed already
        window.reject()


def stored(window_or_panel):
    return window_or_panel.in_hand.event_in_hand()


def lengths_of(event):
    return {(one.round, one.flight, one.hole): round(one.length / YARD, 3) for one in event.lengths}


def cell(window, hole, column, flight=0):
    table = window.table
    return table.index(table.holes.index(hole), 4 * flight + column)


def type_in(window, hole, text, flight=0):
    """Type into a cell as its editor does."""
    window.view.setCurrentIndex(cell(window, hole, ASKED, flight))
    return window.table.setData(cell(window, hole, ASKED, flight), text)


def shown(window, hole, flight=0):
    return [cell(window, hole, column, flight).data() for column in range(4)]


def test_without_a_length_the_tee_sets_own_stands_in_grey(window):
    assert window.isVisible() and not window.isModal()
    assert window.table.holes == [1, 2, 3]
    assert shown(window, 1) == ["360", "", "", ""] and shown(window, 3) == ["", "", "", ""]
    soft = cell(window, 1, ASKED).data(Qt.ItemDataRole.ForegroundRole)
    assert soft == QApplication.palette().placeholderText()
    assert cell(window, 1, ASKED).data(Qt.ItemDataRole.EditRole) == ""
    assert "tee set plays 360.0 yd" in window.detail.text()


def test_a_typed_length_says_where_the_markers_stand(window):
    """365 yd: 5 behind the plate, so 15 from the front, with 5 of tee behind."""
    assert type_in(window, 1, "365")
    assert shown(window, 1) == ["365", "15.0", "5.0 behind", "✓ fits"]
    assert cell(window, 1, ASKED).data(Qt.ItemDataRole.ForegroundRole) is None
    assert "15.0 yd from the tee’s front, with 5.0 yd of tee" in window.detail.text()
    assert stored(window).lengths == ()
    type_in(window, 1, "352,5")
    assert shown(window, 1) == ["352.5", "2.5", "7.5 ahead", "✓ fits"]
    type_in(window, 1, "360")
    assert shown(window, 1)[2] == "level"
    type_in(window, 1, "")
    assert shown(window, 1) == ["360", "", "", ""]


def test_what_the_tee_does_not_allow_is_said_in_words(window):
    """Two club-lengths are 96 in, 2.67 yd: 370 - 2.67 is the most (Rules of Golf, teeing area)."""
    type_in(window, 1, "367.34")
    assert shown(window, 1)[3] == "≈ plays 367.33"
    type_in(window, 1, "380")
    assert shown(window, 1)[3] == "≈ plays 367.3"
    assert "longer than the tee allows" in window.detail.text()
    type_in(window, 2, "350")
    assert shown(window, 2)[1:] == ["", "", "✗ impossible"]
    assert "no tee of the set “Heron”" in window.detail.text()


@pytest.mark.parametrize("text", ["long", "0", "-5", "1001", "nan", "inf"])
def test_what_is_no_length_is_refused(window, text):
    assert not type_in(window, 1, text)
    assert text in window.hint.text() and window.hint.isVisible()
    assert window.draft.lengths == {}


def test_the_place_is_shown_on_the_map_and_its_hole_taken_in_hand(window):
    canvas = window.in_hand.iface.mapCanvas()
    canvas.setExtent(QgsRectangle.fromCenterAndSize(QgsPointXY(*at(0, 360)), 50 * GRID, 50 * GRID))
    window.in_hand.choose_hole(2)
    type_in(window, 1, "365")
    assert window.in_hand.hole == 1
    centres = [(mark.center().x(), mark.center().y()) for mark in window.mark.rings]
    assert len(centres) == 2 and centres[0] == pytest.approx(at(0, -5), abs=0.01) == centres[1]
    middle = canvas.extent().center()
    assert (middle.x(), middle.y()) == pytest.approx(at(0, -5), abs=0.01)
    # In sight already: the map stays.
    type_in(window, 1, "360")
    assert canvas.extent().center() == middle
    window.show_button.click()
    assert canvas.scale() == pytest.approx(600, rel=0.02)
    items = canvas.scene().items()
    marks = list(window.mark.rings)
    assert all(mark in items for mark in marks)
    window.reject()
    assert all(mark not in canvas.scene().items() for mark in marks)


def test_a_hole_without_place_has_no_mark(window):
    type_in(window, 1, "365")
    window.view.setCurrentIndex(cell(window, 2, ASKED))
    assert window.mark.rings == [] and not window.show_button.isEnabled()


def test_lengths_are_typed_down_the_card(window):
    """Tab goes on to the next hole of the flight and lets it be typed; Enter ends typing, not the window."""
    window.add_button.click()
    window.rename(1, "Ladies")
    window.view.setFocus()
    window.view.setCurrentIndex(cell(window, 1, ASKED))
    seen = []
    for text in ("365", "", "150"):
        window.view.edit(window.view.currentIndex())
        editor = window.view.viewport().findChildren(QLineEdit)[-1]
        editor.setText(text)
        QTest.keyClick(editor, Qt.Key.Key_Tab)
        seen.append((window.view.currentIndex().row(), window.view.currentIndex().column()))
    assert seen == [(1, 0), (2, 0), (0, 4)]
    assert {key: round(one / YARD) for key, one in window.draft.lengths.items()} == {
        (1, 0, 1): 365,
        (1, 0, 3): 150,
    }
    editor = window.view.viewport().findChildren(QLineEdit)[-1]
    QTest.keyClick(editor, Qt.Key.Key_Return)
    assert window.isVisible() and stored(window).lengths == ()


def test_ok_writes_all_in_one_step_a_layer_and_saves_nothing(window, panel):  # noqa: F811
    type_in(window, 1, "365")
    window.choose_round(2)
    type_in(window, 1, "355")
    window.add_button.click()
    window.rename(1, "Ladies")
    window.choose_tee_set(1, "Wren")
    type_in(window, 1, "320", flight=1)
    window.settings.rounds.item(0, 1).setText("2,1")
    window.settings.rounds.item(1, 0).setText("2026-05-04")
    window.settings.days["ends"].setText("2026-05-04")
    window.settings.days["ends"].editingFinished.emit()
    window.settings.limits["wear"].setValue(3.0)
    window.settings.limits["slope_pct"].setValue(2.5)
    assert stored(panel).lengths == () and window.ok_button.isEnabled()
    window.ok_button.click()
    event = stored(panel)
    assert lengths_of(event) == {(1, "Men", 1): 365, (2, "Men", 1): 355, (2, "Ladies", 1): 320}
    assert [(one.name, one.tee_set) for one in event.flights] == [("Men", "Heron"), ("Ladies", "Wren")]
    assert event.rounds[0].holes == (2, 1) and event.rounds[1].played_on == "2026-05-04"
    assert (event.begins, event.ends) == ("2026-05-02", "2026-05-04")
    assert event.limits.wear == pytest.approx(3 * YARD) and event.limits.slope_pct == 2.5
    for kind in ("event", "event_round", "event_flight", "event_length"):
        layer = panel.in_hand.layer(kind)
        assert layer.isEditable() and layer.undoStack().count() == 1, kind
    assert panel.in_hand.layer("pin").undoStack().count() == 0
    for kind in ("event", "event_round", "event_flight", "event_length"):
        panel.in_hand.layer(kind).undoStack().undo()
    event = stored(panel)
    assert event.lengths == () and len(event.flights) == 1 and event.rounds[0].holes == ()


def test_the_host_and_the_rules_of_the_guide_are_kept_and_changed(window, panel):  # noqa: F811
    settings = window.settings
    assert settings.rules["green_scale"].isChecked() and settings.rules["page_size"].isChecked()
    settings.host.setPlainText("The Heron Society\nLarkmere")
    settings.rules["page_size"].setChecked(False)
    window.ok_button.click()
    assert (stored(panel).host, stored(panel).rules_off) == ("The Heron Society\nLarkmere", ("page_size",))

    # What another change of the event leaves alone stays.
    panel.tees_button.click()
    (again,) = (one for one in panel.findChildren(QDialog, "yardwright_tees") if one.isVisible())
    assert again.settings.host.toPlainText() == "The Heron Society\nLarkmere"
    assert not again.settings.rules["page_size"].isChecked()
    again.settings.add_round()
    again.ok_button.click()
    assert len(stored(panel).rounds) == 3
    assert (stored(panel).host, stored(panel).rules_off) == ("The Heron Society\nLarkmere", ("page_size",))


def test_cancel_writes_nothing(window, panel):  # noqa: F811
    before = stored(panel)
    type_in(window, 1, "365")
    window.settings.add_round()
    window.buttons.button(window.buttons.StandardButton.Cancel).click()
    assert stored(panel) == before
    assert all(panel.in_hand.layer(kind).undoStack().count() == 0 for kind in ("event", "event_length"))


def test_a_length_emptied_and_a_flight_taken_out_are_gone_when_written(window, panel):  # noqa: F811
    from yardwright.model.event import AskedLength
    from yardwright.store.events import write_lengths

    asked = [AskedLength(1, "Men", 1, 365 * YARD), AskedLength(1, "Seniors", 1, 355 * YARD)]
    write_lengths(panel._layers(), "Heron Cup", [*asked, AskedLength(2, "Men", 1, 361 * YARD)])
    window._edited()
    assert shown(window, 1)[0] == "365" and shown(window, 1, flight=1)[0] == "355"
    type_in(window, 1, "")
    window.flights.selectRow(1)
    window.out_button.click()
    window.ok_button.click()
    event = stored(panel)
    assert lengths_of(event) == {(2, "Men", 1): 361} and [one.name for one in event.flights] == ["Men"]


def test_a_renamed_flight_keeps_its_lengths(window, panel):  # noqa: F811
    type_in(window, 1, "365")
    window.rename(0, "Seniors")
    assert shown(window, 1)[0] == "365"
    window.ok_button.click()
    assert lengths_of(stored(panel)) == {(1, "Seniors", 1): 365}


def test_worn_places_of_earlier_rounds_count(window):
    type_in(window, 1, "365")
    window.choose_round(2)
    type_in(window, 1, "365")
    assert "clear of the markers" not in window.detail.text()
    window.settings.limits["wear"].setValue(2.0)
    assert "2.0 yd to the right, clear of the markers of round 1" in window.detail.text()


def test_a_round_shows_its_holes_in_the_order_of_play(window):
    window.settings.rounds.item(0, 1).setText("3,1")
    assert window.table.holes == [3, 1]
    window.choose_round(2)
    assert window.table.holes == [1, 2, 3]


@pytest.mark.parametrize(
    ("row", "column", "text", "reason"),
    [
        (0, 1, "1-x", "is not a hole number"),
        (0, 1, "1,19", "no hole 19"),
        (1, 0, "2.5.2026", "is not a day"),
    ],
)
def test_what_is_not_understood_holds_ok_back_and_says_why(window, row, column, text, reason):
    item = window.settings.rounds.item(row, column)
    item.setText(text)
    assert not window.ok_button.isEnabled() and reason in window.hint.text()
    assert reason in item.toolTip() and item.text() == text
    item.setText("")
    assert window.ok_button.isEnabled() and not window.hint.isVisible()


def test_flights_need_names_of_their_own(window):
    window.add_button.click()
    assert "no name" in window.hint.text() and not window.ok_button.isEnabled()
    window.rename(1, " men ")
    assert "two flights" in window.hint.text() and not window.ok_button.isEnabled()
    window.rename(1, "Ladies")
    assert window.ok_button.isEnabled()


def test_days_run_forward(window):
    window.settings.days["ends"].setText("2026-05-01")
    window.settings.days["ends"].editingFinished.emit()
    assert "last day lies before" in window.hint.text() and not window.ok_button.isEnabled()


def test_a_round_with_pins_is_not_taken_out(window, panel):  # noqa: F811
    window.reject()
    panel.give(1, 10.0, 5.0, "left")
    panel.tees_button.click()
    window = panel.findChildren(QDialog, "yardwright_tees")[-1]
    window.settings.rounds.selectRow(0)
    window.settings.out_button.click()
    assert "it has pins: 1." in panel.in_hand.iface.bar.messages[-1]
    window.settings.rounds.selectRow(1)
    window.settings.out_button.click()
    assert list(window.draft.rounds) == [1]
    window.reject()


PASTED = "round\tflight\thole\tyards\n1\tMen\t1\t365\n1\tWren\t1\t320\n2\tmen\t1\t390\n1\tNobody\t1\t300\n7\tMen\t1\t9\n"


def paste(window, monkeypatch, answer):
    from yardwright.desk.bring_lengths import LengthsDialog

    seen = []

    def look(dialog):
        rows = [dialog.list.topLevelItem(row) for row in range(dialog.list.topLevelItemCount())]
        seen.extend([row.text(column) for column in range(6)] for row in rows)
        return answer

    monkeypatch.setattr(LengthsDialog, "exec", look)
    QApplication.clipboard().setText(PASTED)
    window.paste_button.click()
    return seen


def test_pasted_rows_are_listed_then_taken_over_and_written_by_ok_only(window, panel, monkeypatch):  # noqa: F811
    listed = paste(window, monkeypatch, QDialog.DialogCode.Accepted)
    assert listed[0] == ["2", "1", "Men", "1", "365", "✓ fits"]
    assert listed[1][:5] == ["3", "1", "Wren", "1", "320"]
    assert listed[2] == ["4", "2", "Men", "1", "390", "≈ plays 367.3"]
    assert "no flight “Nobody”" in listed[3][5] and "no round 7" in listed[4][5]
    assert shown(window, 1)[0] == "365" and shown(window, 1, flight=1)[0] == "320"
    assert stored(panel).lengths == ()
    window.ok_button.click()
    assert lengths_of(stored(panel)) == {(1, "Men", 1): 365, (1, "Wren", 1): 320, (2, "Men", 1): 390}


def test_a_list_that_nobody_wants_changes_nothing(window, monkeypatch):
    paste(window, monkeypatch, QDialog.DialogCode.Rejected)
    assert window.draft.lengths == {} and not window.draft.changed()


def test_a_row_for_a_hole_that_the_round_does_not_play_is_left_out(window, monkeypatch):
    window.settings.rounds.item(0, 1).setText("2,3")
    listed = paste(window, monkeypatch, QDialog.DialogCode.Accepted)
    assert listed[0][5] == "left out: round 1 does not play hole 1"
    assert list(window.draft.lengths) == [(2, 0, 1)]


def test_an_empty_clipboard_is_told_of(window):
    QApplication.clipboard().setText(" ")
    window.paste_button.click()
    assert "no text on the clipboard" in window.in_hand.iface.bar.messages[-1]


def test_an_edit_of_the_course_moves_the_markers(window, qtbot):
    from qgis.core import QgsGeometry

    type_in(window, 1, "365")
    layer = window.in_hand.layer("tee")
    layer.startEditing()
    (row,) = layer.getFeatures()
    layer.changeGeometry(row.id(), QgsGeometry.fromWkt(box(0, 0, 5, 8).wkt))
    qtbot.waitUntil(lambda: shown(window, 1)[1] == "13.0", timeout=20_000)


def test_an_event_changed_elsewhere_is_followed_or_told_of(window, panel, qtbot):  # noqa: F811
    panel.round_button.click()
    qtbot.waitUntil(lambda: list(window.draft.rounds) == [1, 2, 3], timeout=20_000)
    type_in(window, 1, "365")
    panel.round_button.click()
    qtbot.waitUntil(lambda: "changed elsewhere" in window.hint.text(), timeout=20_000)
    assert list(window.draft.rounds) == [1, 2, 3] and window.ok_button.isEnabled()


def test_it_is_opened_once_and_goes_with_the_panel(window, panel, project):  # noqa: F811
    panel.tees_button.click()
    assert len(panel.findChildren(QDialog, "yardwright_tees")) == 1
    type_in(window, 1, "365")
    marks = list(window.mark.rings)
    panel.let_go()
    assert not window.isVisible()
    assert all(mark not in panel.in_hand.iface.mapCanvas().scene().items() for mark in marks)


def test_it_closes_when_the_course_does(window, project, qtbot):
    in_hand = window.in_hand
    project.clear()
    qtbot.waitUntil(lambda: sip.isdeleted(window) or not window.isVisible(), timeout=20_000)
    assert in_hand.iface.bar.messages == []


def test_every_part_says_what_it_is(window):
    from qgis.PyQt.QtWidgets import QAbstractSpinBox, QComboBox, QLineEdit, QPushButton, QTableView

    for kind in (QPushButton, QComboBox, QLineEdit, QAbstractSpinBox, QTableView):
        for part in window.findChildren(kind):
            if part.parent().metaObject().className() in ("QDoubleSpinBox", "QDialogButtonBox"):
                continue
            assert part.toolTip() or part.accessibleName(), (kind, part)
