"""The green shaded by its slope: the right shade in the right place, arrows downhill, a legend, and no work while
only the pointer moves. The ground is made here, so that the slopes are known."""

import math
from dataclasses import replace

import numpy as np
import pytest
from osgeo import gdal, osr
from qgis.core import QgsPointXY, QgsRasterLayer, QgsRectangle
from qgis.PyQt.QtCore import QPointF
from qgis.PyQt.QtGui import QColor, QImage, QPainter
from qgis.PyQt.QtTest import QTest

from tests.desk.conftest import GRID, at
from tests.desk.test_drawing import drawing, hand  # noqa: F401  the fixtures
from tests.desk.test_event_panel import panel, type_in  # noqa: F401  the fixture
from tests.desk.test_toolbar import iface  # noqa: F401  the fixture


def ground(path, height, columns=400, lines=500):
    """A layer of heights, metres, about hole 1: ``height(x, y)`` of grid metres east and north of (0, 360)."""
    east, north = at(0, 360)
    x, y = np.meshgrid(np.arange(columns) + 0.5 - columns / 2, lines / 2 - np.arange(lines) - 0.5)
    raster = gdal.GetDriverByName("GTiff").Create(str(path), columns, lines, 1, gdal.GDT_Float64)
    raster.SetGeoTransform((east - columns / 2, 1.0, 0, north + lines / 2, 0, -1.0))
    reference = osr.SpatialReference()
    reference.ImportFromEPSG(32630)
    raster.SetProjection(reference.ExportToWkt())
    raster.GetRasterBand(1).SetNoDataValue(-9999)
    raster.GetRasterBand(1).WriteArray(np.where(np.isfinite(height(x, y)), height(x, y), -9999))
    raster = None
    return QgsRasterLayer(str(path), path.stem)


def steps(x, y):
    """Falls to the north (to the back): 0.5 % in the front half of the green, 3.5 % in the back half."""
    return -np.where(y > 0, 3.5, 0.5) / 100 * y


@pytest.fixture
def shaded(panel, project, tmp_path, qtbot):  # noqa: F811
    """The panel with the green of hole 1, 20 yd wide and 30 deep about (0, 360), shaded; limit 3 %."""
    limited(panel, 3.0)
    project.addMapLayer(ground(tmp_path / "ground.tif", steps))
    qtbot.waitUntil(lambda: not panel.in_hand._refresh.isActive(), timeout=20_000)
    panel.in_hand.choose_hole(1)
    panel.refresh()
    look(panel, 0, 360)
    panel.slope_box.setChecked(True)
    return panel


def limited(panel, percent):  # noqa: F811
    from yardwright.store.events import write_event

    event = panel.in_hand.event_in_hand()
    limits = replace(event.limits, slope_pct=percent)
    write_event(panel._layers(), replace(event, limits=limits))


def look(panel, x, y, yards=50):  # noqa: F811
    canvas = panel.in_hand.iface.mapCanvas()
    canvas.setExtent(QgsRectangle.fromCenterAndSize(QgsPointXY(*at(x, y)), yards * GRID, yards * GRID))


def colour(panel, x, y):  # noqa: F811
    """The QColor that is painted at a place, in yards."""
    item = panel.shading.item
    pixel = item.toCanvasCoordinates(QgsPointXY(*at(x, y))) - item.corner
    place = int(pixel.x()), int(pixel.y())
    inside = 0 <= place[0] < item.image.width() and 0 <= place[1] < item.image.height()
    return item.image.pixelColor(*place) if inside else QColor(0, 0, 0, 0)


def shade_at(panel, x, y):  # noqa: F811
    """The shade of most of the pixels about a place, by its colour; "" where nothing is painted."""
    item = panel.shading.item
    pixel = item.toCanvasCoordinates(QgsPointXY(*at(x, y))) - item.corner
    counted = {}
    for across in range(-12, 13):
        for down in range(-12, 13):
            place = int(pixel.x()) + across, int(pixel.y()) + down
            if not (0 <= place[0] < item.image.width() and 0 <= place[1] < item.image.height()):
                continue
            found = item.image.pixelColor(*place)
            name = "" if found.alpha() < 60 else found.name()
            counted[name] = counted.get(name, 0) + 1
    return max(counted, key=counted.get) if counted else ""


def near(one, other):
    """Whether two colours are the same but for rounding."""
    return all(abs(a - b) < 6 for a, b in zip(QColor(one).getRgb()[:3], QColor(other).getRgb()[:3]))


def test_what_lies_above_the_limit_is_plainly_another_shade(shaded):
    level, *_, steep = shaded.shading.item.green.shades
    assert steep.beyond and steep.above == 3.0
    assert near(shade_at(shaded, -4, 352), level.colour) and near(shade_at(shaded, 4, 352), level.colour)
    assert near(shade_at(shaded, -4, 368), steep.colour) and near(shade_at(shaded, 4, 368), steep.colour)
    # And it is hatched: told apart without colours.
    hatch = [near(colour(shaded, x / 10, 367), "#ffffff") for x in range(-80, 81)]
    assert 0.15 < sum(hatch) / len(hatch) < 0.6
    assert not any(near(colour(shaded, x / 10, 353.7), "#ffffff") for x in range(-80, -30))


def test_the_margin_and_all_around_it_stay_clear(shaded):
    for x, y in ((-10, 352), (10, 368), (0, 345), (0, 375), (-10.1, 360), (-14, 360), (0, 380), (0, 340)):
        assert colour(shaded, x, y).alpha() == 0, (x, y)
    assert colour(shaded, -8.5, 352).alpha() > 150


def test_the_limit_of_the_event_moves_the_border(shaded, qtbot):
    limited(shaded, 4.0)
    qtbot.waitUntil(lambda: shaded.shading.item.green.shades[-1].above == 4.0, timeout=20_000)
    steep = next(one for one in shaded.shading.item.green.shades if one.up_to == 4.0)
    assert near(shade_at(shaded, -4, 368), steep.colour) and not steep.beyond
    limited(shaded, None)
    qtbot.waitUntil(lambda: not shaded.shading.item.green.shades[-1].beyond, timeout=20_000)


@pytest.mark.parametrize(
    ("limit", "edges"),
    [
        (None, [0, 1, 2, 3, 4]),
        (3.0, [0, 1, 2, 3]),
        (2.5, [0, 1, 2, 2.5]),
        (2.1, [0, 1, 2.1]),
        (0.8, [0, 0.8]),
        (9.0, [0, 1, 2, 3, 4, 9]),
    ],
)
def test_the_borders_between_shades(limit, edges):
    from yardwright.desk.slope_shading import shade_text, shades_for

    shades = shades_for(limit)
    assert [shade.above for shade in shades] == edges
    assert [shade.up_to for shade in shades] == [*edges[1:], None]
    assert [shade.beyond for shade in shades] == [False] * (len(edges) - 1) + [limit is not None]
    # From shade to shade darker, and each text another.
    lights = [QColor(shade.colour).lightnessF() for shade in shades if not shade.beyond]
    assert lights == sorted(lights, reverse=True) and len({*map(shade_text, shades)}) == len(shades)


def as_seen_by(colour, kind):
    """A colour as one sees it who lacks a kind of cones (Viénot, Brettel, Mollon 1999, from memory): linear RGB,
    (r, g, b)."""
    linear = np.array([(c / 255) ** 2.2 for c in QColor(colour).getRgb()[:3]])
    to_cones = np.array(
        [[17.8824, 43.5161, 4.11935], [3.45565, 27.1554, 3.86714], [0.0299566, 0.184309, 1.46709]]
    )
    lacking = {
        "red": np.array([[0, 2.02344, -2.52581], [0, 1, 0], [0, 0, 1]]),
        "green": np.array([[1, 0, 0], [0.494207, 0, 1.24827], [0, 0, 1]]),
    }[kind]
    return np.linalg.inv(to_cones) @ lacking @ to_cones @ linear


@pytest.mark.parametrize("kind", ["red", "green"])
def test_shades_are_told_apart_by_colour_blind_eyes(kind):
    from yardwright.desk.slope_shading import shades_for

    for limit in (None, 9.0):
        seen = [as_seen_by(shade.colour, kind) for shade in shades_for(limit)]
        for place, one in enumerate(seen):
            for other in seen[:place]:
                assert math.dist(one, other) > 0.12


def arrows(panel):  # noqa: F811
    """``[(middle, unit vector on the screen, y down)]`` of the arrows painted now."""
    from yardwright.desk import slope_shading

    found, real = [], slope_shading._add_arrow

    def seen(path, start, end):
        way = end - start
        length = math.hypot(way.x(), way.y())
        found.append((start + way / 2, (way.x() / length, way.y() / length)))
        real(path, start, end)

    slope_shading._add_arrow = seen
    try:
        panel.shading.item.updatePosition()
    finally:
        slope_shading._add_arrow = real
    return found


@pytest.mark.parametrize("rotation", [0.0, -90.0, 33.0])
def test_arrows_point_downhill_however_the_map_is_turned(shaded, rotation):
    """The ground falls to the north; the map turned by 90 degrees clockwise shows north on the right."""
    canvas = shaded.in_hand.iface.mapCanvas()
    canvas.setRotation(rotation)
    found = arrows(shaded)
    assert len(found) >= 8
    north = shaded.shading.item.toCanvasCoordinates(QgsPointXY(*at(0, 370))) - (
        shaded.shading.item.toCanvasCoordinates(QgsPointXY(*at(0, 360)))
    )
    length = math.hypot(north.x(), north.y())
    for _, way in found:
        assert way == pytest.approx((north.x() / length, north.y() / length), abs=0.02)
    middles = [middle for middle, _ in found]
    apart = min(math.dist((a.x(), a.y()), (b.x(), b.y())) for n, a in enumerate(middles) for b in middles[:n])
    assert apart >= 39, "none runs into another"


def test_level_ground_has_no_arrows(panel, project, tmp_path):  # noqa: F811
    project.addMapLayer(ground(tmp_path / "level.tif", lambda x, y: 0.0 * x))
    panel.in_hand.choose_hole(1)
    look(panel, 0, 360)
    panel.shading.show(True)
    assert arrows(panel) == [] and colour(panel, 3, 352).alpha() > 150


def test_the_legend_says_what_the_shades_mean(shaded):
    assert shaded.shading.legend.lines() == [
        "Slope of the green, hole 1",
        "up to 1 %",
        "1 to 2 %",
        "2 to 3 %",
        "above 3 %: steeper than the limit",
        "Arrows point downhill.",
    ]
    image = shaded.shading.legend.image
    painted = {
        image.pixelColor(x, y).name() for x in range(0, image.width(), 2) for y in range(image.height())
    }
    for shade in shaded.shading.legend.green.shades:
        assert any(near(one, shade.colour) for one in painted)
    # Far off the green and from far away there is nothing to explain.
    look(shaded, 2000, 0)
    assert shaded.shading.legend.lines() == [] and shaded.shading.legend.image is None
    look(shaded, 0, 360, yards=3000)
    assert shaded.shading.legend.lines() == []


def test_a_green_without_heights_says_so_in_one_sentence(panel, project, tmp_path):  # noqa: F811
    project.addMapLayer(ground(tmp_path / "away.tif", lambda x, y: np.full(x.shape, np.nan)))
    panel.in_hand.choose_hole(1)
    look(panel, 0, 360)
    panel.shading.show(True)
    assert panel.shading.legend.lines() == ["The heights do not reach the green of hole 1."]
    assert panel.shading.item.image is None and panel.shading.legend.image is not None
    panel.in_hand.choose_hole(3)  # it is not drawn at all
    assert panel.shading.legend.lines() == []
    assert panel.in_hand.iface.bar.messages == []


def test_a_hole_without_green_says_so(shaded, qtbot):
    layer = shaded.in_hand.layer("green")
    layer.startEditing()
    layer.deleteFeatures([one.id() for one in layer.getFeatures() if one["holes"] == "1"])
    said = ["Hole 1 has no green to be shaded."]
    qtbot.waitUntil(lambda: shaded.shading.legend.lines() == said, timeout=20_000)
    assert shaded.shading.item.image is None


def test_part_of_a_green_that_no_height_reaches_is_left_clear(panel, project, tmp_path):  # noqa: F811
    half = ground(tmp_path / "half.tif", lambda x, y: np.where(x < 0, 0.02 * x, np.nan))
    project.addMapLayer(half)
    panel.in_hand.choose_hole(1)
    look(panel, 0, 360)
    panel.shading.show(True)
    assert colour(panel, -5, 352).alpha() > 150 and colour(panel, 5, 352).alpha() == 0


def test_without_heights_the_switch_is_off_and_says_why(panel, project, tmp_path, qtbot):  # noqa: F811
    panel.refresh()
    assert not panel.slope_box.isEnabled() and "no heights in this project" in panel.slope_box.toolTip()
    layer = ground(tmp_path / "ground.tif", steps)
    project.addMapLayer(layer)
    qtbot.waitUntil(panel.slope_box.isEnabled, timeout=20_000)
    panel.slope_box.setChecked(True)
    look(panel, 0, 360)
    assert panel.shading.shown and panel.shading.item.green is not None
    # The heights go: the sentence comes, and the switch can still be taken back.
    project.removeMapLayer(layer.id())
    qtbot.waitUntil(lambda: panel.shading.item.green is None, timeout=20_000)
    assert "no heights in this project" in panel.shading.legend.lines()[0]
    assert panel.slope_box.isEnabled()
    panel.slope_box.setChecked(False)
    assert not panel.shading.shown


def test_it_is_no_layer_and_leaves_nothing_behind(shaded, project):
    layers = set(project.mapLayers())
    scene = shaded.in_hand.iface.mapCanvas().scene()
    items = {shaded.shading.item, shaded.shading.legend, shaded.shading.pins}
    assert items <= set(scene.items())
    shaded.slope_box.setChecked(False)
    assert not items & set(scene.items()) and set(project.mapLayers()) == layers
    shaded.in_hand.choose_hole(2)
    assert not shaded.shading.shown
    shaded.slope_box.setChecked(True)
    shaded.let_go()
    assert not shaded.shading.shown


def test_it_follows_the_hole_and_the_green(shaded, qtbot):
    assert colour(shaded, -8.5, 352).alpha() > 150
    layer = shaded.in_hand.layer("green")
    layer.startEditing()
    (green,) = [one for one in layer.getFeatures() if one["holes"] == "1"]
    moved = green.geometry()
    moved.translate(-5 * GRID, 0)
    layer.changeGeometry(green.id(), moved)
    qtbot.waitUntil(lambda: colour(shaded, -13.5, 352).alpha() > 150, timeout=20_000)
    assert colour(shaded, 7, 352).alpha() == 0
    shaded.in_hand.choose_hole(2)
    assert shaded.shading.legend.title.endswith("hole 2")


def test_slopes_are_worked_out_once_a_green(shaded, hand, qtbot, monkeypatch):  # noqa: F811
    from yardwright.measure import heights

    qtbot.waitUntil(lambda: not shaded.in_hand._edited.isActive(), timeout=20_000)
    asked, real = [], heights.slope_grid

    def seen(*given, **more):
        asked.append(given)
        return real(*given, **more)

    monkeypatch.setattr(heights, "slope_grid", seen)
    made, painted = [], type(shaded.shading.item)._make
    monkeypatch.setattr(type(shaded.shading.item), "_make", lambda self: made.append(1) or painted(self))
    for x in range(-8, 9):
        QTest.mouseMove(shaded.in_hand.iface.mapCanvas().viewport(), hand.pixel(x, 360))
    assert asked == [] and made == [], "the pointer costs nothing"
    shaded.in_hand.choose_hole(2)
    shaded.in_hand.choose_hole(1)
    assert len(asked) == 1, "hole 2 alone, once"
    look(shaded, 1, 361)
    assert made and len(asked) == 1


def test_pins_are_seen_on_the_shades(shaded, qtbot):
    """10 on and 5 from the left is 355 up and 5 left of the line; another in round 2, which is not in hand."""
    type_in(shaded, 1, on="10", off="5", off_from="left")
    shaded.in_hand.choose_round(2)
    type_in(shaded, 1, on="20", off="5", off_from="right")
    qtbot.waitUntil(lambda: len(shaded.shading.item.green.pins) == 2, timeout=20_000)
    assert [(number, own) for number, _, own in shaded.shading.item.green.pins] == [(1, False), (2, True)]
    item = shaded.shading.pins

    def disc(x, y):
        pixel = item.toCanvasCoordinates(QgsPointXY(*at(x, y))) - item.corner
        around = [(across, down) for across in range(-5, 6) for down in range(-5, 6)]
        found = [item.image.pixelColor(int(pixel.x()) + a, int(pixel.y()) + d).lightness() for a, d in around]
        return sorted(found)[len(found) // 2]

    assert disc(-5, 355) > 200 and disc(5, 365) < 60


def test_the_veil_of_the_tool_leaves_the_shades_their_colours(shaded):
    shaded.place_button.click()
    assert not shaded.tool.veil.dark
    shaded.slope_box.setChecked(False)
    assert shaded.tool.veil.dark
    shaded.place_button.click()
    shaded.slope_box.setChecked(True)
    shaded.place_button.click()
    assert not shaded.tool.veil.dark
    assert shaded.shading.item.zValue() < shaded.tool.veil.zValue() < shaded.shading.pins.zValue()


def test_the_legend_makes_way_for_the_green(shaded):
    """The map moved so that the green comes to lie in its lower left corner."""
    legend, item = shaded.shading.legend, shaded.shading.item
    assert legend.corner.y() > 20 and legend.corner.x() == 10
    look(shaded, 12, 372, yards=50)
    seen = item._seen()[1]
    if legend.boundingRect().intersects(seen):
        pytest.fail(f"{legend.boundingRect()} covers {seen}")


def test_it_is_painted_where_it_was_made(shaded):
    """Painting copies: what paints on a picture of the canvas is the image at its corner."""
    item = shaded.shading.item
    size = shaded.in_hand.iface.mapCanvas().viewport().size()
    picture = QImage(size, QImage.Format.Format_ARGB32_Premultiplied)
    picture.fill(0)
    painter = QPainter(picture)
    item.paint(painter)
    painter.end()
    place = item.toCanvasCoordinates(QgsPointXY(*at(-8.5, 352)))
    assert picture.pixelColor(int(place.x()), int(place.y())).alpha() > 150
    assert item.boundingRect().contains(QPointF(place))


def test_a_layer_that_cannot_be_read_says_so(panel, project, tmp_path):  # noqa: F811
    layer = ground(tmp_path / "gone.tif", steps)
    project.addMapLayer(layer)
    panel.in_hand.choose_hole(1)
    look(panel, 0, 360)
    (tmp_path / "gone.tif").write_bytes(b"no raster")
    panel.shading.show(True)
    (line,) = panel.shading.legend.lines()
    assert "gone.tif" in line and "cannot be read" in line


def test_the_pointer_tells_the_slope_of_a_pin(shaded, drawing, hand, qtbot):  # noqa: F811
    """5 yd into the back half it falls 3.5 % to the back, in the front half 0.5 %."""
    shaded.place_button.click()
    viewport = shaded.in_hand.iface.mapCanvas().viewport()
    QTest.mouseMove(viewport, hand.pixel(-4, 367))
    qtbot.waitUntil(lambda: "3.5 % to the back" in drawing.pointer.label.text(), timeout=20_000)
    assert "Slope  ↑ 3.5 % to the back" in drawing.pointer.label.text()
    QTest.mouseMove(viewport, hand.pixel(-4, 351))
    qtbot.waitUntil(lambda: "0.5 % to the back" in drawing.pointer.label.text(), timeout=20_000)
    heights = shaded.tool.heights
    assert heights._terrain is not None
    shaded.in_hand.iface.mapCanvas().unsetMapTool(shaded.tool)
    assert heights._terrain is None, "the file is let go with the tool"


def test_the_pointer_says_nothing_of_slopes_without_heights(panel, drawing, hand, qtbot):  # noqa: F811
    panel.in_hand.choose_hole(1)
    look(panel, 0, 360)
    panel.place_button.click()
    QTest.mouseMove(panel.in_hand.iface.mapCanvas().viewport(), hand.pixel(-4, 367))
    qtbot.waitUntil(lambda: "To the margin" in drawing.pointer.label.text(), timeout=20_000)
    assert "Slope" not in drawing.pointer.label.text()
