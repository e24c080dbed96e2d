"""Drawing beside QGIS's own tools, and whatever may happen to the project meanwhile: nothing is lost."""

import shutil
import warnings

import pytest
from qgis.core import QgsPointXY, QgsSnappingConfig, QgsTolerance
from qgis.gui import QgsMapToolPan
from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtTest import QTest

from tests.desk.conftest import GRID, at
from tests.desk.test_drawing import Hand, drawing, hand, new_rows  # noqa: F401  the fixtures
from tests.desk.test_toolbar import iface  # noqa: F401  the fixture


@pytest.fixture
def bunkers(drawing):  # noqa: F811
    return drawing.in_hand.layer("bunker")


def corners(feature):
    return [(point.x(), point.y()) for point in feature.geometry().asPolygon()[0]]


def test_a_click_snaps_to_what_is_drawn_already(drawing, hand, bunkers, project, qtbot):  # noqa: F811
    """With snapping on, as QGIS's own toolbar sets it, a click six pixels off takes a corner exactly."""
    green = drawing.in_hand.layer("green")
    wanted = at(-10, 345)
    config = QgsSnappingConfig(project)
    config.setEnabled(True)
    config.setMode(QgsSnappingConfig.SnappingMode.AllLayers)
    config.setTypeFlag(QgsSnappingConfig.SnappingTypes.VertexFlag)
    config.setTolerance(12)
    config.setUnits(QgsTolerance.UnitType.Pixels)
    hand.canvas.setLayers([green, bunkers])
    hand.canvas.snappingUtils().setMapSettings(hand.canvas.mapSettings())
    hand.canvas.snappingUtils().setConfig(config)
    assert any(tuple(p) == pytest.approx(wanted, abs=1e-6) for f in green.getFeatures() for p in corners(f))
    # QGIS collects what can be snapped to in the background, while the pointer moves.
    near = QgsPointXY(*at(-13, 342))
    qtbot.waitUntil(lambda: hand.canvas.snappingUtils().snapToMap(near).isValid(), timeout=20_000)
    drawing.take("bunker")
    hand.draw((-13, 342), (-40, 345), (-40, 320))
    (row,) = new_rows(bunkers)
    assert corners(row)[0] == pytest.approx(wanted, abs=1e-9)
    hand.canvas.snappingUtils().setConfig(QgsSnappingConfig())


def test_the_advanced_digitising_panel_holds_a_length(drawing, hand, bunkers, iface):  # noqa: F811
    drawing.take("bunker")
    iface.cad.enableAction().trigger()
    try:
        hand.click(0, 250)
        iface.cad.constraintDistance().setLockMode(iface.cad.constraintDistance().LockMode.HardLock)
        iface.cad.constraintDistance().setValue(20.0)
        hand.click(40, 250)
    finally:
        iface.cad.enableAction().trigger()
    first, second = drawing.tools["bunker"].clicked()
    assert first.distance(second) == pytest.approx(20.0, abs=1e-6)


def test_another_tool_in_between_keeps_what_was_drawn(drawing, hand, bunkers):  # noqa: F811
    drawing.take("bunker")
    hand.draw((30, 250), (45, 250), (45, 265))
    pan = QgsMapToolPan(hand.canvas)
    hand.canvas.setMapTool(pan)
    assert not drawing.actions["draw_bunker"].isChecked() and len(new_rows(bunkers)) == 1
    drawing.take("bunker")
    hand.draw((60, 250), (75, 250), (75, 265))
    assert len(new_rows(bunkers)) == 2
    hand.canvas.unsetMapTool(hand.canvas.mapTool())


def test_a_layer_taken_away_under_the_tool(drawing, hand, bunkers, project, qtbot):  # noqa: F811
    drawing.take("bunker")
    hand.click(30, 250)
    hand.click(45, 250)
    project.removeMapLayer(bunkers.id())
    qtbot.waitUntil(lambda: drawing.in_hand.layer("bunker") is None, timeout=20_000)
    hand.click(45, 265)
    hand.click(45, 265, button=Qt.MouseButton.RightButton)
    assert hand.canvas.mapTool() is not drawing.tools["bunker"]
    assert not any("Traceback" in text for text in drawing.iface.bar.messages)


def test_the_course_switched_amid_drawing(drawing, hand, bunkers, course_file, project, tmp_path, qtbot):  # noqa: F811
    """What is half drawn is given up with its tool; what is drawn stays unsaved in its own course."""
    from yardwright.store.course_file import open_course
    from yardwright.store.layer_group import add_course_group

    other = tmp_path / "other" / "Fernlea.gpkg"
    other.parent.mkdir()
    shutil.copyfile(course_file, other)
    first = drawing.in_hand.place
    drawing.take("bunker")
    hand.draw((30, 250), (45, 250), (45, 265))
    hand.click(60, 250)
    layers = open_course(str(other))
    add_course_group(project, layers)
    qtbot.waitUntil(lambda: len(drawing.in_hand.groups) == 2, timeout=20_000)
    second = next(place for place in drawing.in_hand.groups if place != first)
    drawing.in_hand.choose(second)
    assert hand.canvas.mapTool() is not drawing.tools["bunker"]
    drawing.take("bunker")
    hand.draw((90, 250), (105, 250), (105, 265))
    assert len(new_rows(bunkers)) == 1
    theirs = drawing.in_hand.layer("bunker")
    assert theirs is not bunkers and len(new_rows(theirs)) == 1
    drawing.in_hand.choose(first)
    assert len(new_rows(drawing.in_hand.layer("bunker"))) == 1


def test_an_edit_by_qgis_itself_is_followed_and_undone_in_its_order(drawing, hand, bunkers):  # noqa: F811
    """A corner moved with the vertex tool, a part cut off with the split tool: both are plain edits of QGIS."""
    drawing.take("bunker")
    hand.draw((30, 250), (50, 250), (50, 270), (30, 270))
    (row,) = new_rows(bunkers)
    bunkers.beginEditCommand("moved")
    assert bunkers.moveVertex(*at(30, 245), row.id(), 0)
    bunkers.endEditCommand()
    assert drawing.in_hand.course().features
    before = len(new_rows(bunkers))
    bunkers.beginEditCommand("split")
    with warnings.catch_warnings():
        # QGIS 3.22 takes the newer form for a line of QgsPointXY, and refuses it.
        warnings.simplefilter("ignore", DeprecationWarning)
        assert bunkers.splitFeatures([QgsPointXY(*at(20, 260)), QgsPointXY(*at(60, 260))]) == 0
    bunkers.endEditCommand()
    assert len(new_rows(bunkers)) == before + 1
    drawn = [f for f in drawing.in_hand.course().features if f.kind == "bunker"]
    assert len(drawn) == 3 and all(f.holes == (1,) for f in drawn)
    drawing.in_hand.choose_hole(2)
    for left in (before, before, before - 1):
        bunkers.undoStack().undo()
        assert len(new_rows(bunkers)) == left


def test_a_green_may_be_given_a_hole_of_its_own(drawing, hand):  # noqa: F811
    """QGIS's tool for a ring inside an area: the area that is measured is the less for it."""
    greens = drawing.in_hand.layer("green")
    drawing.take("green")
    hand.draw((100, 250), (140, 250), (140, 290), (100, 290))
    (row,) = new_rows(greens)
    ring = [QgsPointXY(*at(x, y)) for x, y in ((115, 265), (125, 265), (125, 275), (115, 265))]
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", DeprecationWarning)
        assert greens.addRing(ring)[0] == 0
    area = next(f for f in new_rows(greens)).geometry().area()
    assert area == pytest.approx((1600 - 50) * GRID**2, rel=0.05)


def test_escape_leaves_the_tool_in_hand(drawing, hand, bunkers):  # noqa: F811
    drawing.take("bunker")
    hand.click(30, 250)
    hand.click(45, 250)
    QTest.keyClick(hand.canvas, Qt.Key.Key_Escape)
    assert drawing.tools["bunker"].clicked() == [] and hand.canvas.mapTool() is drawing.tools["bunker"]
    hand.draw((30, 250), (45, 250), (45, 265))
    assert len(new_rows(bunkers)) == 1
