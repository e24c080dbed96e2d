"""Drawing with the mouse on a map: what comes into the layer, what is filled in, and that it undoes as one."""

import pytest
from qgis.core import QgsPointXY, QgsRectangle
from qgis.PyQt.QtCore import QPoint, Qt
from qgis.PyQt.QtTest import QTest
from qgis.PyQt.QtWidgets import QInputDialog

from tests.desk.conftest import GRID, at
from tests.desk.test_toolbar import iface  # noqa: F401  the fixture

SIZE = 500


@pytest.fixture
def drawing(iface, place, qtbot):  # noqa: F811
    """The drawing bar of a course in hand; its map shows the ground about the first hole."""
    from yardwright.desk.drawing_bar import DrawingBar
    from yardwright.desk.in_hand import CourseInHand

    in_hand = CourseInHand(iface)
    in_hand.refresh()
    canvas = iface.canvas
    canvas.setDestinationCrs(in_hand.layer("hole").crs())
    canvas.resize(SIZE, SIZE)
    iface.window.resize(900, 900)
    iface.window.setCentralWidget(canvas)
    iface.window.show()
    qtbot.waitExposed(iface.window)
    middle = QgsPointXY(*at(0, 200))
    canvas.setExtent(QgsRectangle.fromCenterAndSize(middle, 500 * GRID, 500 * GRID))
    drawing = DrawingBar(in_hand)
    yield drawing
    for layer in in_hand.project.mapLayers().values():
        if layer.isEditable():
            layer.rollBack()
    drawing.remove()
    in_hand.let_go()


class Hand:
    """A hand with a mouse over the map; places are yards, as in the small course."""

    def __init__(self, drawing):
        self.canvas = drawing.iface.mapCanvas()

    def pixel(self, x, y):
        place = self.canvas.getCoordinateTransform().transform(QgsPointXY(*at(x, y)))
        return QPoint(round(place.x()), round(place.y()))

    def click(self, x, y, button=Qt.MouseButton.LeftButton):
        QTest.mouseMove(self.canvas.viewport(), self.pixel(x, y))
        QTest.mouseClick(self.canvas.viewport(), button, pos=self.pixel(x, y))

    def draw(self, *places):
        for x, y in places:
            self.click(x, y)
        self.click(*places[-1], button=Qt.MouseButton.RightButton)

    def key(self, key):
        QTest.keyClick(self.canvas, key)


@pytest.fixture
def hand(drawing):
    return Hand(drawing)


def new_rows(layer):
    return [feature for feature in layer.getFeatures() if feature.id() < 0]


def test_what_is_drawn_beyond_a_divider_was_seen_in_the_other_date(drawing, hand):
    divider = at(40, 0)[0]
    drawing.date_at = lambda place: "2023" if place.x() > divider else "2025"
    drawing.take("bunker")
    hand.draw((0, 250), (15, 250), (15, 265))
    hand.draw((60, 250), (75, 250), (75, 265))
    hand.draw((30, 250), (35, 250), (75, 265), (75, 270), (70, 275))
    rows = sorted(new_rows(drawing.in_hand.layer("bunker")), key=lambda row: -row.id())
    assert [row["seen_in"] for row in rows] == ["2025", "2023", "2023"]


def test_an_outline_is_a_feature_with_all_that_can_be_told(drawing, hand):
    drawing.date_at = lambda place: "2025"
    drawing.view_box.setCurrentIndex(1)
    drawing.take("bunker")
    hand.draw((30, 250), (45, 250), (45, 265), (30, 265))
    layer = drawing.in_hand.layer("bunker")
    (row,) = new_rows(layer)
    assert (row["holes"], row["seen_in"], row["view"]) == ("1", "2025", "partly hidden")
    # Fifteen yards square, to the pixel of a yard that the map has here.
    assert row.geometry().area() == pytest.approx((15 * GRID) ** 2, rel=0.15)
    assert layer.undoStack().count() == 1
    layer.undoStack().undo()
    assert new_rows(layer) == []


def test_the_only_image_on_the_map_is_the_one_drawn_from(drawing, hand, project, tmp_path):
    from qgis.core import QgsGeometry, QgsVectorLayerUtils

    from tests.desk.test_toolbar import image_layer

    image = image_layer(tmp_path)
    project.addMapLayer(image)
    rows = drawing.in_hand.layer("image")
    rows.startEditing()
    places = {
        rows.fields().lookupField(name): value for name, value in (("id", "may"), ("source", image.source()))
    }
    ground = QgsGeometry.fromRect(QgsRectangle(0, 0, 1, 1))
    rows.addFeature(QgsVectorLayerUtils.createFeature(rows, ground, places))
    assert drawing.seen_in([]) == "may"
    project.layerTreeRoot().findLayer(image.id()).setItemVisibilityChecked(False)
    assert drawing.seen_in([]) == ""


def test_a_patch_takes_the_date_that_is_seen_there(drawing, hand):
    divider = at(40, 0)[0]
    drawing.date_at = lambda place: "2023" if place.x() > divider else "2025"
    drawing.take("patch")
    hand.draw((60, 250), (75, 250), (75, 265))
    layer = drawing.in_hand.layer("patch")
    (row,) = new_rows(layer)
    assert row["image"] == "2023" and layer.undoStack().count() == 1
    assert drawing.iface.bar.messages == ["Here a composite takes 2023."]
    # No date on the map, as while a composite is looked at: the one that is compared.
    drawing.date_at, drawing.second_date = (lambda place: ""), (lambda: "2024")
    hand.draw((0, 250), (15, 250), (15, 265))
    assert sorted(one["image"] for one in new_rows(layer)) == ["2023", "2024"]


def test_a_patch_of_no_date_is_not_drawn(drawing, hand):
    drawing.date_at, drawing.second_date = (lambda place: ""), (lambda: "")
    drawing.take("patch")
    hand.draw((60, 250), (75, 250), (75, 265))
    assert new_rows(drawing.in_hand.layer("patch")) == []
    (message,) = drawing.iface.bar.messages
    assert "not known" in message and "beyond the divider" in message


def test_the_next_one_is_drawn_with_the_same_tool(drawing, hand):
    drawing.take("bunker")
    hand.draw((30, 250), (45, 250), (45, 265))
    hand.draw((60, 250), (75, 250), (75, 265))
    layer = drawing.in_hand.layer("bunker")
    assert len(new_rows(layer)) == 2 and layer.undoStack().count() == 2
    drawing.in_hand.choose_hole(2)
    layer.undoStack().undo()
    assert len(new_rows(layer)) == 1


def test_a_curve_goes_smoothly_through_the_clicks(drawing, hand):
    drawing.draw_as("curve")
    drawing.take("bunker")
    hand.draw((30, 250), (50, 250), (50, 270), (30, 270))
    (row,) = new_rows(drawing.in_hand.layer("bunker"))
    ring = row.geometry().asPolygon()[0]
    assert len(ring) == 4 * 8 + 1
    # Through the corners of a square it bulges beyond the sides, nearly to the circle through them.
    assert (20 * GRID) ** 2 * 1.1 < row.geometry().area() < (20 * GRID) ** 2 * 1.6


def test_following_the_pointer_takes_its_way(drawing, hand):
    drawing.draw_as("stream")
    drawing.take("path")
    hand.click(60, 100)
    for step in range(1, 21):
        QTest.mouseMove(hand.canvas.viewport(), hand.pixel(60 + step, 100 + 5 * step))
    hand.click(80, 200, button=Qt.MouseButton.RightButton)
    (row,) = new_rows(drawing.in_hand.layer("path"))
    assert len(row.geometry().asPolyline()) > 5
    assert row.geometry().length() == pytest.approx(102 * GRID, rel=0.1)


def test_backspace_takes_a_click_back_and_escape_gives_up(drawing, hand):
    drawing.take("bunker")
    for x, y in ((30, 250), (45, 250), (90, 90)):
        hand.click(x, y)
    assert len(drawing.tools["bunker"].clicked()) == 3
    hand.key(Qt.Key.Key_Backspace)
    assert len(drawing.tools["bunker"].clicked()) == 2
    hand.key(Qt.Key.Key_Escape)
    assert drawing.tools["bunker"].clicked() == []
    assert new_rows(drawing.in_hand.layer("bunker")) == []


def test_a_line_of_play_goes_into_the_row_the_card_left(drawing, hand):
    drawing.in_hand.choose_hole(3)
    drawing.take("hole")
    hand.draw((-120, 60), (-120, 200))
    layer = drawing.in_hand.layer("hole")
    assert new_rows(layer) == []
    (row,) = (feature for feature in layer.getFeatures() if feature["number"] == 3)
    assert row["par"] == 3 and row.geometry().length() == pytest.approx(140 * GRID, rel=0.02)
    assert drawing.in_hand.hole == 3 and drawing.in_hand.played().drawn is not None
    layer.undoStack().undo()
    assert drawing.in_hand.course().hole(3).line is None
    # All lines that wait are drawn: the next is of a new hole.
    layer.undoStack().redo()
    hand.draw((-200, 60), (-200, 200))
    assert [one["number"] for one in new_rows(layer)] == [4]
    assert drawing.in_hand.hole == 4


def test_the_tee_set_is_asked_for_once(drawing, hand, monkeypatch):
    asked = []

    def ask(*given):
        asked.append(given[3])
        return "Wren", True

    monkeypatch.setattr(QInputDialog, "getItem", ask)
    drawing.take("plate")
    hand.click(5, 60)
    hand.click(5, 80)
    rows = new_rows(drawing.in_hand.layer("plate"))
    assert [(row["hole"], row["tee_set"]) for row in rows] == [(1, "Wren"), (1, "Wren")]
    assert asked == [["Heron", "Wren"]] and drawing.in_hand.tee_set == "Wren"
    assert drawing.tee_box.currentText() == "Wren"


def test_a_tee_nobody_names_is_drawn_all_the_same(drawing, hand, monkeypatch):
    from qgis.core import NULL

    monkeypatch.setattr(QInputDialog, "getItem", lambda *given: ("", False))
    drawing.take("tee")
    hand.draw((-5, -5), (5, -5), (5, 5))
    (row,) = new_rows(drawing.in_hand.layer("tee"))
    assert row["tee_set"] == NULL and drawing.in_hand.tee_set == ""


def test_a_marker_states_the_round_distance_it_stands_near(drawing, hand):
    """150 yd: common practice, no source."""
    drawing.take("marker")
    hand.click(4, 206)
    (row,) = new_rows(drawing.in_hand.layer("marker"))
    assert (row["hole"], row["states_yd"]) == (1, 150.0)


def test_an_outline_that_crosses_itself_is_told_of(drawing, hand, iface):  # noqa: F811
    drawing.take("bunker")
    hand.draw((30, 250), (50, 270), (50, 250), (30, 270))
    assert len(new_rows(drawing.in_hand.layer("bunker"))) == 1
    (message,) = [text for text in iface.bar.messages if "crosses itself" in text]
    assert "Undo it" in message


def test_the_figures_follow_the_pointer(drawing, hand):
    told = []
    drawing.in_hand.choose_tee_set("Heron")
    drawing.take("green")
    drawing.pointer.figures.connect(told.append)
    hand.click(0, 340)
    figures = dict(told[-1])
    # The plate is at the origin, the green's middle 360 yards up and its depth 30: the map's pixel is a yard.
    assert figures["From Heron"] in ("339 yd", "340 yd", "341 yd")
    assert [int(one) for one in figures["To the green"].split(" · ")] == pytest.approx([5, 20, 35], abs=1)
    hand.click(20, 340)
    hand.click(20, 380)
    figures = dict(told[-1])
    assert "deep" in figures["Green"] and figures["Area"].endswith("sq yd")
    assert drawing.pointer.label.isVisible()
    hand.canvas.unsetMapTool(drawing.tools["green"])
    assert not drawing.pointer.label.isVisible() and told[-1] == []


@pytest.mark.parametrize("crs", ["EPSG:32630", "EPSG:3857", "EPSG:4326"])
@pytest.mark.parametrize("far", [1e7, 1e12, 1e30])
def test_a_pointer_beyond_the_earth_has_no_figures(drawing, hand, crs, far):
    from qgis.core import QgsCoordinateReferenceSystem

    hand.canvas.setDestinationCrs(QgsCoordinateReferenceSystem(crs))
    told = []
    drawing.follow_pointer().figures.connect(told.append)
    hand.canvas.xyCoordinates.emit(QgsPointXY(far, far))
    assert told == [[]]


def test_the_course_taken_away_amid_drawing(drawing, hand, project, qtbot):
    drawing.take("bunker")
    hand.click(30, 250)
    hand.click(45, 250)
    project.clear()
    qtbot.waitUntil(lambda: drawing.in_hand.place is None, timeout=20_000)
    assert hand.canvas.mapTool() is None
    hand.click(60, 250)
    assert not drawing.actions["draw_bunker"].isEnabled()
    drawing.take("bunker")
    assert hand.canvas.mapTool() is None and not drawing.actions["draw_bunker"].isChecked()
    assert "no course" in drawing.iface.messageBar().messages[-1]


def test_another_layer_in_the_project_leaves_the_hand_alone(drawing, hand, project, qtbot):
    from qgis.core import QgsVectorLayer

    drawing.take("bunker")
    hand.click(30, 250)
    hand.click(45, 250)
    with qtbot.waitSignal(drawing.in_hand.course_changed, timeout=20_000):
        project.addMapLayer(QgsVectorLayer("Point?crs=EPSG:32630", "Other", "memory"))
    assert len(drawing.tools["bunker"].clicked()) == 2
    hand.draw((45, 265))
    assert len(new_rows(drawing.in_hand.layer("bunker"))) == 1


def test_the_layer_that_was_current_taken_away_amid_drawing(drawing, hand, project):
    """QGIS's own tool would make it current again when it is laid down, and crash."""
    from qgis.core import QgsVectorLayer

    current = QgsVectorLayer("Point", "current", "memory")
    project.addMapLayer(current)
    hand.canvas.setCurrentLayer(current)
    drawing.take("bunker")
    hand.click(30, 250)
    project.removeMapLayer(current.id())
    assert hand.canvas.mapTool() is None and hand.canvas.currentLayer() is None
    drawing.take("bunker")
    assert hand.canvas.mapTool() is drawing.tools["bunker"]


def test_every_kind_that_is_drawn_has_its_tool_and_key(drawing):
    """The kinds of the course file that a person draws; images, windows, pins and notes are not."""
    from yardwright.desk.drawing_bar import HOW_KEYS, KEYS
    from yardwright.model.kinds import KINDS

    drawn = {kind.name for kind in KINDS} - {"image", "window", "pin", "field_note"}
    assert set(KEYS) == drawn
    keys = [*KEYS.values(), *HOW_KEYS.values()]
    assert len(set(keys)) == len(keys)
    for kind in drawn:
        drawing.take(kind)
        assert drawing.iface.mapCanvas().mapTool() is drawing.tools[kind]
        assert drawing.actions[f"draw_{kind}"].isChecked()
        assert f"Alt+Y, {KEYS[kind]}" in drawing.actions[f"draw_{kind}"].toolTip()
