"""On the map the pins of other rounds look apart from those of the round in hand, and the layer's style stays."""

import pytest
from qgis.core import (
    QgsCategorizedSymbolRenderer,
    QgsMapLayerStyle,
    QgsMapRendererSequentialJob,
    QgsMarkerSymbol,
    QgsPointXY,
    QgsRectangle,
    QgsRendererCategory,
    QgsVectorLayerSimpleLabeling,
)
from qgis.PyQt.QtGui import QColor

from tests.desk.conftest import GRID, at
from tests.desk.test_dates_compared import contrast
from tests.desk.test_drawing import drawing  # noqa: F401  the fixture
from tests.desk.test_event_panel import panel, type_in  # noqa: F401  the fixture
from tests.desk.test_toolbar import iface  # noqa: F401  the fixture

FIRST, SECOND, OTHER = (-5, 355), (6, 365), (0, 351)
"""Where the pins of round 1 and 2 lie on hole 1, yards, and that of another event."""
GROUND = QColor("#4f8a3c")


@pytest.fixture
def pins(panel):  # noqa: F811
    """The panel with a pin a round of the Heron Cup, and one of the Bowl; round 1 is in hand."""
    from yardwright.model.event import Pin
    from yardwright.store.events import write_pins

    canvas = panel.in_hand.iface.mapCanvas()
    canvas.setExtent(QgsRectangle.fromCenterAndSize(QgsPointXY(*at(0, 360)), 50 * GRID, 50 * GRID))
    write_pins(panel._layers(), "Bowl", [Pin("", 1, 1, given="point")], [at(*OTHER)])
    type_in(panel, 1, on="10", off="5", off_from="left")
    panel.in_hand.choose_round(2)
    type_in(panel, 1, on="20", off="4", off_from="right")
    panel.in_hand.choose_round(1)
    return panel


def picture(panel, ground=GROUND):  # noqa: F811
    """What the map draws of the pins, on a ground of one colour."""
    canvas = panel.in_hand.iface.mapCanvas()
    settings = canvas.mapSettings()
    settings.setLayers([panel.in_hand.layer("pin")])
    settings.setBackgroundColor(ground)
    job = QgsMapRendererSequentialJob(settings)
    job.start()
    job.waitForFinished()
    return job.renderedImage()


def around(panel, image, place, left=-14, right=34, up=30, down=10):  # noqa: F811
    """The colours about a place in yards, pixels of the map."""
    at_pixel = panel.in_hand.iface.mapCanvas().getCoordinateTransform().transform(QgsPointXY(*at(*place)))
    x, y = round(at_pixel.x()), round(at_pixel.y())
    return [image.pixelColor(x + a, y + b) for a in range(left, right) for b in range(-up, down)]


def drawn(panel, place, ground=GROUND):  # noqa: F811
    """``(how many pixels are drawn about a place, how far the strongest is from the ground)``."""
    colours = around(panel, picture(panel, ground), place)
    away = [sum(abs(a - b) for a, b in zip(one.getRgb()[:3], ground.getRgb()[:3])) for one in colours]
    return sum(one > 30 for one in away), max(away)


def test_the_round_in_hand_stands_out_and_the_rule_follows_it(pins):
    first, second, other = (drawn(pins, place) for place in (FIRST, SECOND, OTHER))
    assert first[0] > 1.3 * second[0] > other[0] > 0, "larger, then smaller, then smallest"
    assert first[1] > 1.15 * second[1] > second[1] > other[1] > 60, "full, then paler, then palest"
    pins.in_hand.choose_round(2)
    first, second = (drawn(pins, place) for place in (FIRST, SECOND))
    assert second[0] > 1.3 * first[0] and second[1] > 1.15 * first[1]


def test_the_number_tells_the_round(pins):
    """Another number draws other pixels beside the pin, the same one the same."""
    layer = pins.in_hand.layer("pin")
    (row,) = (one for one in layer.getFeatures() if one["event"] == "Heron Cup" and one["round"] == 2)
    as_2 = around(pins, picture(pins), SECOND)
    layer.changeAttributeValue(row.id(), layer.fields().lookupField("round"), 7)
    as_7 = around(pins, picture(pins), SECOND)
    differing = sum(one != other for one, other in zip(as_2, as_7))
    assert 10 < differing < 300
    layer.changeAttributeValue(row.id(), layer.fields().lookupField("round"), 2)
    assert around(pins, picture(pins), SECOND) == as_2


@pytest.mark.parametrize("ground", ["#ffffff", "#000000", "#808080", "#f3e6c4", "#23301a"])
def test_they_stay_legible_on_any_ground(pins, ground):
    """A contrast of 3:1 is what WCAG 2.1 asks of graphics (1.4.11), by its own formula of luminance: of the pin,
    of its number, and within the number, light against its rim."""
    ground = QColor(ground)
    image = picture(pins, ground)
    pin = around(pins, image, SECOND, left=-3, right=4)
    assert max(contrast(one, ground) for one in pin) >= 3
    number = around(pins, image, SECOND, left=5, right=14, up=11, down=4)
    assert max(contrast(one, ground) for one in number) >= 3
    lights, darks = max(number, key=QColor.lightness), min(number, key=QColor.lightness)
    assert contrast(lights, darks) >= 3


def test_the_layer_s_own_style_knows_nothing_of_it(pins):
    def styled():
        style = QgsMapLayerStyle()
        style.readFromLayer(layer)
        return style.xmlData()

    layer, canvas = pins.in_hand.layer("pin"), pins.in_hand.iface.mapCanvas()
    worn = styled()
    assert list(canvas.layerStyleOverrides()) == [layer.id()]
    picture(pins)
    pins.in_hand.choose_round(2)
    picture(pins)
    assert styled() == worn and layer.renderer().type() == "singleSymbol"
    assert layer.labeling().type() == QgsVectorLayerSimpleLabeling(layer.labeling().settings()).type()


def test_it_goes_with_the_panel_and_leaves_others_alone(pins, qtbot):
    canvas = pins.in_hand.iface.mapCanvas()
    worn = canvas.layerStyleOverrides()
    canvas.setLayerStyleOverrides({**worn, "another layer": "<qgis/>"})
    pins.in_hand.choose_round(2)
    assert (
        canvas.layerStyleOverrides()["another layer"] == "<qgis/>" and len(canvas.layerStyleOverrides()) == 2
    )
    pins.hide()
    qtbot.waitUntil(lambda: canvas.layerStyleOverrides() == {"another layer": "<qgis/>"}, timeout=20_000)
    alike = [drawn(pins, place)[0] for place in (FIRST, SECOND)]
    assert alike[0] == pytest.approx(alike[1], rel=0.1)
    pins.show()
    qtbot.waitUntil(lambda: len(canvas.layerStyleOverrides()) == 2, timeout=20_000)
    pins.let_go()
    assert canvas.layerStyleOverrides() == {"another layer": "<qgis/>"}


def test_a_style_of_one_s_own_is_kept(pins, qtbot):
    """A colour a round, without labels: each keeps its colour, what is not in hand is smaller and has a number."""
    layer = pins.in_hand.layer("pin")
    colours = {1: "#ff0000", 2: "#0000ff"}
    symbols = {
        number: QgsMarkerSymbol.createSimple(
            {"name": "square", "color": colour, "size": "8", "outline_style": "no"}
        )
        for number, colour in colours.items()
    }
    categories = [QgsRendererCategory(number, symbol, str(number)) for number, symbol in symbols.items()]
    layer.setLabelsEnabled(False)
    layer.setRenderer(QgsCategorizedSymbolRenderer("round", categories))
    layer.triggerRepaint()
    layer.styleChanged.emit()

    def count(place, colour):
        seen = around(pins, picture(pins), place, left=-20, right=20, up=20, down=20)
        return sum(one == QColor(colour) for one in seen)

    assert count(FIRST, "#ff0000") > 500 and count(SECOND, "#0000ff") == 0
    blue = max(around(pins, picture(pins), SECOND, 0, 3, 3, 0), key=QColor.blue)
    assert blue.blue() > 150 > blue.red()
    pins.in_hand.choose_round(2)
    assert count(SECOND, "#0000ff") > 500 and count(FIRST, "#ff0000") == 0


def test_a_name_with_a_quote_is_a_name(pins):
    from yardwright.store.events import rename_event

    rename_event(pins._layers(), "Heron Cup", "Wren's “Cup”")
    pins.in_hand.choose_event("Wren's “Cup”", 2)
    pins.refresh()
    first, second = (drawn(pins, place) for place in (FIRST, SECOND))
    assert second[0] > 1.3 * first[0] > 0
