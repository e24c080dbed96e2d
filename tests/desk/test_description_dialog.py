"""The window of a hole's description: what it says of the room is so, notes and figures go into the text."""

import pytest
from yardwright.model.course import Feature

from tests.desk.test_drawing import drawing  # noqa: F401  the fixture
from tests.desk.test_hole_panel import panel  # noqa: F401  the fixture
from tests.desk.test_toolbar import iface  # noqa: F401  the fixture
from tests.processing.test_pins import small_course


@pytest.fixture
def dialog(panel, qtbot):  # noqa: F811
    """On hole 1, with a note of the table and one from the ground."""
    from shapely.geometry import Point
    from yardwright.desk.description_dialog import DescriptionDialog
    from yardwright.store.writing import add_features

    in_hand = panel.in_hand
    in_hand.choose_hole(1)
    layers = in_hand.layers()
    told = {"hole": 1, "source": "professional", "text": "Keep left.", "written": "2025-05-01"}
    add_features(layers, [Feature("hole_note", None, None, attributes=told)])
    seen = {"hole": 1, "source": "own visit", "text": "A ridge hides the flag."}
    add_features(layers, [Feature("field_note", None, Point(small_course().at(3, 200)), attributes=seen)])
    add_features(
        layers, [Feature("field_note", None, Point(small_course().at(3, 200)), attributes={"hole": 2})]
    )
    dialog = DescriptionDialog(in_hand.iface.mainWindow(), in_hand, 1)
    dialog.show()
    qtbot.waitExposed(dialog)
    yield dialog
    dialog.reject()
    dialog.deleteLater()


def listed(dialog):
    return [dialog.list.item(row).text() for row in range(dialog.list.count())]


def test_the_notes_of_the_hole_stand_beside_and_go_in(dialog):
    assert listed(dialog) == ["professional, 2025-05-01\nKeep left.", "own visit\nA ridge hides the flag."]
    assert not dialog.take_button.isEnabled()
    for row in (0, 1):
        dialog.list.setCurrentRow(row)
        assert dialog.look_button.isEnabled() == (row == 1) and not dialog.open_button.isEnabled()
        dialog.take_note()
    assert dialog.text_box.toPlainText().endswith("Keep left. A ridge hides the flag.")


def test_the_room_is_told_while_typing(dialog, qtbot):
    dialog.text_box.setPlainText("Short.")
    qtbot.waitUntil(lambda: "lines left" in dialog.room_label.text(), timeout=20_000)
    dialog.text_box.setPlainText("long " * 900)
    qtbot.waitUntil(lambda: "lines too long" in dialog.room_label.text(), timeout=20_000)


def test_figures_are_worked_out_and_errors_told(dialog):
    dialog.text_box.setPlainText("Two and two: [% 2 + 2 %]. [% nothing( %]")
    dialog.tell()
    assert "Two and two: 4." in dialog.printed.text() and "⚠" in dialog.printed.text()


def test_a_figure_is_put_in_with_the_number_of_the_hole(dialog):
    dialog.text_box.setPlainText("")
    actions = {action.text(): action for action in dialog.figure_button.menu().actions()}
    next(one for text, one in actions.items() if "deep" in text).trigger()
    assert dialog.text_box.toPlainText() == "[% green_depth(1) %]"


def test_it_is_kept_in_one_step_that_can_be_undone(dialog):
    layer = dialog.in_hand.layers().layers["hole"]
    dialog.text_box.setPlainText("Aim at the oak.")
    dialog.keep()
    in_hand = dialog.in_hand
    (row,) = [one for one in layer.getFeatures() if one["number"] == 1]
    assert row["description"] == "Aim at the oak."
    layer.undoStack().undo()
    (row,) = [one for one in layer.getFeatures() if one["number"] == 1]
    assert row["description"] != "Aim at the oak." and in_hand is not None


def test_the_map_goes_to_a_note(dialog):
    dialog.list.setCurrentRow(1)
    dialog.look_at_place()
    canvas = dialog.in_hand.iface.mapCanvas()
    x, y = small_course().at(3, 200)
    centre = canvas.center()
    if canvas.mapSettings().destinationCrs() == dialog.in_hand.layer("field_note").crs():
        assert abs(centre.x() - x) < 1 and abs(centre.y() - y) < 1
