"""The panel of the hole in hand: what it says, that it follows edits, and what it starts."""

import pytest
from qgis.core import QgsGeometry, QgsPointXY

from tests.desk.conftest import at
from tests.desk.test_drawing import Hand, drawing, hand  # noqa: F401  the fixtures
from tests.desk.test_toolbar import iface  # noqa: F401  the fixture


@pytest.fixture
def panel(drawing, qtbot):  # noqa: F811
    from yardwright.desk.hole_panel import HolePanel

    panel = HolePanel(drawing.in_hand, drawing.iface.window)
    panel.show()
    qtbot.waitExposed(panel)
    panel.refresh()
    yield panel
    panel.let_go()
    panel.deleteLater()


def rows(view):
    """The texts of a list, by row."""
    lines = [view.topLevelItem(row) for row in range(view.topLevelItemCount())]
    return [[line.text(column) for column in range(view.columnCount())] for line in lines]


def test_it_shows_the_hole_in_hand(panel):
    assert panel.title.text() == "1  Burn  par 4"
    # From the plates at 0 and 40 yards to the green's middle at 360; the card says 360 and 320.
    assert rows(panel.figures) == [["Heron", "360", "360", "fits"], ["Wren", "320", "320", "fits"]]
    assert panel.green.text() == "Green 30.0 yd deep, 20.0 wide; approach 0° (150 yd)"
    drawn = dict(rows(panel.drawn))
    assert drawn["✓  Tee"] == "Heron, Wren" and drawn["✓  Bunker"] == "1"
    assert not panel.before.isEnabled() and panel.after.isEnabled() and panel.empty.isHidden()


def test_a_hole_that_is_only_on_the_card(panel):
    panel.in_hand.choose_hole(3)
    assert panel.title.text() == "3  par 3" and not panel.after.isEnabled()
    drawn = dict(rows(panel.drawn))
    assert "from the back tee" in drawn["○  Line of play"] and "○  Green" in drawn
    assert panel.green.text() == "Green: not measured yet"


def test_it_tells_the_rise_where_the_project_has_heights(panel, project, tmp_path, qtbot, monkeypatch):
    """Level to 180 yd and 10 % beyond: 18 yd in 180 to the green's middle (grid scale 0.9996), 16.5 m. From 0 and
    40 yd alike; 360 + 18 and 320 + 18."""
    from tests.desk.test_propose_dialog import heights

    assert panel.heights.isHidden() and panel.heights.text() == ""
    project.addMapLayer(heights(tmp_path / "ground.tif", 180))
    qtbot.waitUntil(lambda: not panel.heights.isHidden(), timeout=20_000)
    said = "From {}: rise +16.5 m to the green, plays {} yd (common practice; the length stays {})"
    assert panel.heights.text() == said.format("Heron", 378, 360)
    assert "no rule says so" in panel.heights.toolTip()
    from yardwright.imagery.terrain import Terrain

    asked, real = [], Terrain.height_at
    monkeypatch.setattr(Terrain, "height_at", lambda self, *given: asked.append(1) or real(self, *given))
    panel.in_hand.choose_tee_set("Wren")
    assert asked == [], "worked out once a hole"
    assert panel.heights.text() == said.format("Wren", 338, 320)
    assert rows(panel.figures)[0][1] == "360", "no length knows of it"
    layer = panel.in_hand.layer("hole")
    layer.startEditing()
    (row,) = [one for one in layer.getFeatures() if one["number"] == 1]
    longer = QgsGeometry.fromPolylineXY(
        [QgsPointXY(*at(0, 0)), QgsPointXY(*at(3, 200)), QgsPointXY(*at(0, 360))]
    )
    layer.changeGeometry(row.id(), longer)
    qtbot.waitUntil(lambda: asked != [], timeout=20_000)
    panel.in_hand.choose_hole(3)
    assert panel.heights.isHidden() and panel.in_hand.iface.bar.messages == []


def test_it_guides_through_a_first_hole(panel, drawing, hand, monkeypatch, qtbot):  # noqa: F811
    """Line of play, tee, green, fairway: each is asked for until it is drawn, then nothing is left."""
    panel.draw.connect(drawing.take)
    drawing.in_hand.choose_tee_set("Heron")
    panel.in_hand.choose_hole(3)
    steps = {
        "line of play": ((-120, 60), (-120, 180)),
        "tees": ((-125, 50), (-115, 50), (-115, 60), (-125, 60)),
        "the green": ((-130, 170), (-110, 170), (-110, 190), (-130, 190)),
    }
    for words, places in steps.items():
        qtbot.waitUntil(lambda words=words: words in panel.guide.text(), timeout=20_000)
        panel.take.click()
        hand.draw(*places)
    qtbot.waitUntil(lambda: panel.guide.isHidden() and panel.take.isHidden(), timeout=20_000)
    # A par 3 of 120 yards from the front of its tee.
    assert rows(panel.figures)[0][:2] == ["Heron", "120"]


def test_it_follows_every_edit(panel, drawing, hand, qtbot):  # noqa: F811
    drawing.take("bunker")
    hand.draw((30, 250), (45, 250), (45, 265))
    qtbot.waitUntil(lambda: dict(rows(panel.drawn)).get("✓  Bunker") == "2", timeout=20_000)
    layer = drawing.in_hand.layer("plate")
    layer.startEditing()
    plate = next(one for one in layer.getFeatures() if one["hole"] == 1 and one["tee_set"] == "Wren")
    layer.deleteFeature(plate.id())
    qtbot.waitUntil(lambda: dict(rows(panel.drawn)).get("○  Tee") == "none of Wren", timeout=20_000)


def test_a_line_of_the_list_takes_its_tool_in_hand(panel, qtbot):
    item = next(
        panel.drawn.topLevelItem(row)
        for row in range(panel.drawn.topLevelItemCount())
        if "Green" in panel.drawn.topLevelItem(row).text(0)
    )
    with qtbot.waitSignal(panel.draw, timeout=20_000) as emitted:
        panel.drawn.itemActivated.emit(item, 0)
    assert emitted.args == ["green"]


def test_notes_from_the_ground_stand_beside_those_written_here(panel):
    from shapely.geometry import Point
    from yardwright.model.course import Feature
    from yardwright.store.writing import add_features

    said = {"text": "The ditch is dry in June.", "source": "own visit", "written": "2026-05-02"}
    photograph = {"text": "", "source": "player", "picture": "photographs/ditch.jpg"}
    rows = [(1, said), (1, photograph), (2, {"text": "Of another hole."})]
    notes = [
        Feature("field_note", None, Point(500_000, 6_200_000), attributes={"hole": hole, **values})
        for hole, values in rows
    ]
    add_features(panel.in_hand.layers(), notes)
    panel.in_hand.choose_hole(2)
    assert panel.notes.toPlainText() == "Of another hole."
    panel.in_hand.choose_hole(1)
    assert panel.notes.toPlainText().splitlines() == [
        "own visit, 2026-05-02: The ditch is dry in June.",
        "player: ditch.jpg",
    ]


def test_a_note_is_written_into_the_course(panel):
    panel.note.setText("  The back bunker cannot be seen from the tee. ")
    panel.add.click()
    layer = panel.in_hand.layer("hole_note")
    (row,) = layer.getFeatures()
    assert (row["hole"], row["text"]) == (1, "The back bunker cannot be seen from the tee.")
    assert panel.notes.toPlainText().endswith("The back bunker cannot be seen from the tee.")
    assert panel.note.text() == "" and layer.undoStack().count() == 1
    panel.add.click()
    assert layer.featureCount() == 1
    panel.in_hand.choose_hole(2)
    assert panel.notes.toPlainText() == ""


def test_without_a_course_it_says_why_it_is_empty(panel, project, qtbot):
    project.clear()
    qtbot.waitUntil(lambda: panel.title.text() == "No hole", timeout=20_000)
    assert "no course in this project" in panel.empty.text() and not panel.drawn.isEnabled()


def test_the_place_under_the_pointer(panel):
    panel.show_pointer([("From Heron", "231 yd"), ("Along", "230, 24 right")])
    assert [line[1].text().strip() for line in panel._pointer_lines] == [
        "231 yd",
        "230, 24 right",
        "",
        "",
        "",
    ]
    panel.show_pointer([])
    assert all(not line[1].text().strip() for line in panel._pointer_lines)
