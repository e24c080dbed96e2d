"""The tool that places pins: the ground where no hole may be cut lies under a veil while it is in hand."""

from dataclasses import replace

import pytest
from qgis.core import QgsPointXY, QgsRectangle
from qgis.PyQt.QtCore import QPointF, Qt
from qgis.PyQt.QtGui import QColor, QImage, QPainter
from qgis.PyQt.QtTest import QTest

from tests.desk.conftest import GRID, at
from tests.desk.test_drawing import drawing, hand  # noqa: F401  the fixtures
from tests.desk.test_event_panel import panel, type_in  # noqa: F401  the fixture
from tests.desk.test_propose_dialog import heights
from tests.desk.test_toolbar import iface  # noqa: F401  the fixture


@pytest.fixture
def tool(panel):  # noqa: F811
    """The tool in hand over the green of hole 1, which is 20 yd wide and 30 deep about (0, 360)."""
    canvas = panel.in_hand.iface.mapCanvas()
    canvas.setExtent(QgsRectangle.fromCenterAndSize(QgsPointXY(*at(0, 360)), 50 * GRID, 50 * GRID))
    panel.in_hand.choose_hole(1)
    panel.place_button.click()
    return panel.tool


def veiled(tool, x, y):
    """Whether a place, in yards, lies under the veil."""
    return tool.veil.path.contains(tool.veil.toCanvasCoordinates(QgsPointXY(*at(x, y))))


def test_ground_too_near_the_margin_is_veiled(tool):
    """Four yards are asked for: 0 to 4 yd in from each margin is closed, the rest is open."""
    assert veiled(tool, -9, 360) and veiled(tool, -6.2, 360) and not veiled(tool, -5.8, 360)
    assert veiled(tool, 0, 348.8) and not veiled(tool, 0, 349.2) and veiled(tool, 0, 374)
    assert not veiled(tool, 0, 360)
    assert not veiled(tool, -11, 360), "beyond the green there is nothing to close"


def test_ground_too_near_an_earlier_round_is_veiled(panel, tool):  # noqa: F811
    """Three yards from the hole of round 1 in round 2; in round 1 itself it is nobody's neighbour."""
    type_in(panel, 1, on="15", off="10", off_from="left")
    tool._veil_again()
    assert not veiled(tool, 0, 360)
    panel.in_hand.choose_round(2)
    assert veiled(tool, 0, 360) and veiled(tool, 2.8, 360) and not veiled(tool, 3.2, 360)
    panel.in_hand.choose_round(1)
    assert not veiled(tool, 0, 360)


def test_the_veil_follows_hole_and_edits(panel, tool, qtbot):  # noqa: F811
    panel.in_hand.choose_hole(2)
    assert not veiled(tool, -9, 360)
    panel.in_hand.choose_hole(1)
    assert veiled(tool, -9, 360)
    layer = panel.in_hand.layer("green")
    layer.startEditing()
    (green,) = [one for one in layer.getFeatures() if one["holes"] == "1"]
    moved = green.geometry()
    moved.translate(-5 * GRID, 0)
    layer.changeGeometry(green.id(), moved)
    qtbot.waitUntil(lambda: veiled(tool, -14, 360), timeout=20_000)
    assert not veiled(tool, -9, 360)


def test_a_hole_without_green_has_no_veil(panel, tool):  # noqa: F811
    panel.in_hand.choose_hole(3)
    assert tool.veil.path.isEmpty() and panel.in_hand.iface.bar.messages == []


def test_it_goes_with_the_tool(panel, tool, hand):  # noqa: F811
    canvas = panel.in_hand.iface.mapCanvas()
    veil = tool.veil
    assert veil in canvas.scene().items()
    hand.key(Qt.Key.Key_Escape)
    assert tool.veil is None and veil not in canvas.scene().items()
    # And it does not come back by itself.
    panel.in_hand.choose_hole(2)
    assert tool.veil is None
    panel.place_button.click()
    assert tool.veil is not None


def test_the_pointer_does_not_work_it_out_again(panel, tool, hand, qtbot, monkeypatch):  # noqa: F811
    from yardwright.desk import pin_tool

    # The news of the event being written is out.
    qtbot.waitUntil(lambda: not panel.in_hand._edited.isActive(), timeout=20_000)
    asked = []
    real = pin_tool.closed_ground
    monkeypatch.setattr(pin_tool, "closed_ground", lambda in_hand: asked.append(1) or real(in_hand))
    for x in range(-8, 9):
        QTest.mouseMove(panel.in_hand.iface.mapCanvas().viewport(), hand.pixel(x, 360))
    assert asked == [] and len(tool._bands) == 6
    panel.in_hand.choose_hole(2)
    assert asked == [1]


def test_it_follows_the_map(tool, panel):  # noqa: F811
    canvas = panel.in_hand.iface.mapCanvas()
    canvas.setRotation(70)
    canvas.zoomByFactor(1.7)
    assert veiled(tool, -9, 360) and not veiled(tool, 0, 360)


def test_it_lies_beneath_the_guides_and_above_a_second_date(tool, hand, panel):  # noqa: F811
    QTest.mouseMove(panel.in_hand.iface.mapCanvas().viewport(), hand.pixel(-5, 357))
    assert -5 < tool.veil.zValue() < min(band.zValue() for band in tool._bands)


@pytest.mark.parametrize("ground", ["#000000", "#ffffff", "#4f8a3c"])
def test_it_is_seen_on_dark_and_bright_ground_without_its_colour(tool, ground):
    """Its lines stand out from its own ground in lightness, on whatever it lies (threshold: our own)."""
    size = tool.canvas().size()
    image = QImage(size, QImage.Format.Format_RGB32)
    image.fill(QColor(ground))
    painter = QPainter(image)
    tool.veil.paint(painter)
    painter.end()

    def lightness(x, y):
        middle = tool.veil.toCanvasCoordinates(QgsPointXY(*at(x, y))) - QPointF(6, 6)
        return [
            image.pixelColor(int(middle.x()) + a, int(middle.y()) + b).lightness()
            for a in range(12)
            for b in range(12)
        ]

    closed, open_ = lightness(-8, 360), lightness(0, 360)
    assert max(closed) - min(closed) > 70
    assert max(open_) == min(open_) == QColor(ground).lightness()


def test_ground_too_steep_is_veiled_where_heights_are_known(panel, tool, project, tmp_path):  # noqa: F811
    """10 % from 365 yd on; the event allows 3 %, or says nothing of slope."""
    project.addMapLayer(heights(tmp_path / "ground.tif", 365))
    tool._veil_again()
    assert not veiled(tool, 0, 369)
    in_hand = panel.in_hand
    event = in_hand.event_in_hand()
    in_hand._events = (replace(event, limits=replace(event.limits, slope_pct=3.0)),)
    tool._veil_again()
    assert veiled(tool, 0, 369) and not veiled(tool, 0, 360)
