"""The figures of the hole in hand on the map: that they are written, follow every edit, and go away."""

import pytest
from qgis.core import QgsCoordinateReferenceSystem, QgsPointXY, QgsRectangle

from tests.desk.conftest import GRID, at
from tests.desk.test_drawing import Hand, drawing, hand  # noqa: F401  the fixtures
from tests.desk.test_toolbar import iface  # noqa: F401  the fixture


@pytest.fixture
def figures(drawing):  # noqa: F811
    from yardwright.desk.map_figures import MapFigures

    figures = MapFigures(drawing.in_hand)
    figures.show(True)
    yield figures
    figures.let_go()


def written(figures):
    """What stands on the map, by what it says."""
    found = {}
    for says, text, _, _ in figures.item._boxes:
        found.setdefault(says, []).append(text)
    return found


def test_the_hole_in_hand_is_written_on_the_map(figures):
    found = written(figures)
    assert found["length"] == ["Heron 360"]
    # The green is 30 yd deep about 360; the bunker reaches from 223 to 237, 16 to 24 yd to the right.
    assert found["green"] == ["345 · 360 · 375"]
    assert "224 – 238" in found["hazard"] and "84 – 108" in found["hazard"]
    assert "front" not in found


def test_close_to_the_green_its_parts_are_written(figures):
    canvas = figures.canvas
    canvas.setExtent(QgsRectangle.fromCenterAndSize(QgsPointXY(*at(0, 360)), 60 * GRID, 60 * GRID))
    found = written(figures)
    assert (found["front"], found["middle"], found["back"]) == (["345"], ["360"], ["375"])
    assert found["green_size"] == ["30 deep, 20 wide"] and "green" not in found


def test_from_afar_nothing_is_written(figures):
    figures.canvas.setExtent(QgsRectangle.fromCenterAndSize(QgsPointXY(*at(0, 200)), 5000, 5000))
    assert written(figures) == {}


def test_they_follow_the_tee_set_the_hole_and_every_edit(figures, drawing, hand, qtbot):  # noqa: F811
    drawing.in_hand.choose_tee_set("Wren")
    assert written(figures)["length"] == ["Wren 320"]
    before = len(written(figures)["hazard"])
    drawing.take("bunker")
    hand.draw((-30, 250), (-20, 250), (-20, 262), (-30, 262))
    qtbot.waitUntil(lambda: len(written(figures)["hazard"]) == before + 1, timeout=20_000)
    drawing.in_hand.choose_hole(3)
    assert written(figures) == {}


def test_the_texts_stay_beside_their_places_when_the_map_moves(figures):
    def of_length():
        return next((box, at) for says, _, box, at in figures.item._boxes if says == "length")

    (_, before) = of_length()
    figures.canvas.setCenter(QgsPointXY(*at(50, 200)))
    figures.item.updatePosition()
    box, after = of_length()
    moved = 50 * GRID / figures.canvas.mapUnitsPerPixel()
    assert before.x() - after.x() == pytest.approx(moved, abs=2)
    assert box.adjusted(-14, -14, 14, 14).contains(after) and not box.contains(after)


def test_a_map_that_cannot_show_the_place_has_none(figures):
    polar = QgsCoordinateReferenceSystem.fromProj("+proj=gnom +lat_0=-90 +datum=WGS84")
    figures.canvas.setDestinationCrs(polar)
    assert written(figures) == {}


def test_wiped_off_and_let_go(figures, drawing):  # noqa: F811
    item = figures.item
    assert item in figures.canvas.scene().items()
    figures.show(False)
    assert item not in figures.canvas.scene().items() and not figures.shown
    drawing.in_hand.choose_hole(2)
    figures.show(True)
    assert written(figures)["length"] == ["Heron 350"]


def test_the_course_taken_away(figures, project, qtbot):
    project.clear()
    qtbot.waitUntil(lambda: figures.in_hand.place is None, timeout=20_000)
    assert written(figures) == {}
    assert figures.in_hand.iface.bar.messages == []


def test_the_map_changes_while_the_project_closes(figures, project):
    """QGIS changes the map's projection before the news of the project's end is here."""
    figures.in_hand.course()
    project.layerTreeRoot().removeAllChildren()
    figures.canvas.setDestinationCrs(QgsCoordinateReferenceSystem("EPSG:3857"))
    assert written(figures) == {} and figures.in_hand.iface.bar.messages == []
    assert figures.in_hand.layer("hole") is None
