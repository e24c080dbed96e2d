"""Outlining by one click on a map: what is proposed, taken, dropped, and why something is not.

The images are painted here: round things on grainy rough, so that the margin is known.
"""

import math

import numpy as np
import pytest
from osgeo import gdal, osr
from qgis.core import QgsGeometry, QgsProject, QgsRasterLayer, QgsRectangle, QgsVectorLayerUtils
from qgis.PyQt.QtCore import Qt

from tests.desk.conftest import at
from tests.desk.test_drawing import Hand, drawing, new_rows  # noqa: F401  the fixture
from tests.desk.test_toolbar import iface  # noqa: F401  the fixture

GSD = 0.2
SIZE = 800
BUNKER, RADIUS = (30, 250), 7.0
ROUGH, SAND, TURF = (86, 104, 58), (226, 214, 176), (112, 158, 92)
"""A bunker's middle in yards, its radius in metres of the grid."""


def picture(things, shift=0.0, fading=False):
    """(SIZE, SIZE, 3) of bytes about BUNKER, of (middle, radius, colour); ``shift`` metres east of its place.

    fading: whether the east half of the things' margins is lost in a slow change of colour.
    """
    x0, y0 = corner()
    rows, columns = np.mgrid[0:SIZE, 0:SIZE]
    x, y = x0 + (columns + 0.5) * GSD - shift, y0 - (rows + 0.5) * GSD
    made = np.full((SIZE, SIZE, 3), ROUGH, dtype=float)
    for middle, radius, colour in things:
        east, north = x - at(*middle)[0], y - at(*middle)[1]
        width = np.where(east > -1.0, 14.0, GSD) if fading else GSD
        cover = np.clip(0.5 + (radius - np.hypot(east, north)) / width, 0, 1)[..., None]
        made = made * (1 - cover) + np.array(colour) * cover
    made += np.random.default_rng(3).normal(0, 4, (SIZE, SIZE, 1))
    return np.clip(np.rint(made), 0, 255).astype(np.uint8)


def corner():
    x, y = at(*BUNKER)
    return x - SIZE * GSD / 2, y + SIZE * GSD / 2


def write(path, pixels):
    image = gdal.GetDriverByName("GTiff").Create(str(path), SIZE, SIZE, 3)
    image.SetGeoTransform((corner()[0], GSD, 0, corner()[1], 0, -GSD))
    crs = osr.SpatialReference()
    crs.ImportFromEPSG(32630)
    image.SetProjection(crs.ExportToWkt())
    for band in range(3):
        image.GetRasterBand(band + 1).WriteArray(pixels[..., band])
    image = None
    return str(path)


def shown(drawing, path, name="image"):  # noqa: F811
    """The raster layer of a file, in the project and on the map."""
    layer = QgsRasterLayer(path, name)
    QgsProject.instance().addMapLayer(layer)
    drawing.in_hand.iface.mapCanvas().setLayers([layer])
    return layer


@pytest.fixture
def hand(drawing, qtbot):  # noqa: F811
    return Outliner(drawing, qtbot)


class Outliner(Hand):
    """A hand that outlines."""

    def __init__(self, drawing, qtbot):  # noqa: F811
        super().__init__(drawing)
        self.drawing, self.qtbot = drawing, qtbot

    @property
    def tool(self):
        return self.canvas.mapTool()

    def take(self, kind):
        self.drawing.draw_as("outline")
        self.drawing.take(kind)

    def outline(self, x, y):
        """Click, and wait until the search has ended."""
        self.click(x, y)
        assert self.tool.at_work()
        self.qtbot.waitUntil(lambda: not self.tool.at_work(), timeout=60_000)


@pytest.fixture
def bunker(drawing, tmp_path):  # noqa: F811
    return shown(drawing, write(tmp_path / "bunker.tif", picture([(BUNKER, RADIUS, SAND)])))


def radii(geometry):
    x, y = at(*BUNKER)
    return [math.hypot(point.x() - x, point.y() - y) for point in geometry.vertices()]


def test_a_click_proposes_and_enter_takes_it_in_one_step(drawing, hand, bunker):  # noqa: F811
    hand.take("bunker")
    layer = drawing.in_hand.layer("bunker")
    hand.outline(32, 249)
    assert new_rows(layer) == [] and hand.tool.proposal is not None
    hand.key(Qt.Key.Key_Return)
    (row,) = new_rows(layer)
    assert hand.tool.proposal is None
    assert row["holes"] == "1" and row["view"] == "clear"
    assert radii(row.geometry()) == pytest.approx([RADIUS] * len(radii(row.geometry())), abs=GSD)
    assert 12 <= len(radii(row.geometry())) < 2 * math.pi * RADIUS / 0.5
    assert layer.undoStack().count() == 1
    layer.undoStack().undo()
    assert new_rows(layer) == []


@pytest.mark.parametrize("how", ["inside", "right"])
def test_a_click_inside_or_a_right_one_takes_it_too(drawing, hand, bunker, how):  # noqa: F811
    hand.take("bunker")
    hand.outline(30, 250)
    hand.click(28, 251, Qt.MouseButton.LeftButton if how == "inside" else Qt.MouseButton.RightButton)
    assert len(new_rows(drawing.in_hand.layer("bunker"))) == 1
    assert not hand.tool.at_work()


def test_esc_drops_it_and_a_right_click_then_takes_nothing(drawing, hand, bunker):  # noqa: F811
    hand.take("bunker")
    hand.outline(30, 250)
    hand.key(Qt.Key.Key_Escape)
    assert hand.tool.proposal is None
    hand.click(30, 250, Qt.MouseButton.RightButton)
    hand.key(Qt.Key.Key_Return)
    assert new_rows(drawing.in_hand.layer("bunker")) == []
    # What is dropped while it is looked for does not come back.
    hand.click(30, 250)
    hand.key(Qt.Key.Key_Escape)
    hand.qtbot.wait(1500)
    assert hand.tool.proposal is None and not hand.tool.at_work()


def test_wider_and_tighter_before_it_is_taken(drawing, hand, bunker):  # noqa: F811
    """Half a metre in five steps of 0.1 m; at 0.2 m a pixel half a pixel is no more."""
    hand.take("bunker")
    layer = drawing.in_hand.layer("bunker")
    for key, wanted in ((Qt.Key.Key_Plus, RADIUS + 0.5), (Qt.Key.Key_Minus, RADIUS - 0.5)):
        hand.outline(30, 250)
        for _ in range(5):
            hand.key(key)
        hand.key(Qt.Key.Key_Enter)
        row = min(new_rows(layer), key=lambda one: one.id())
        assert math.sqrt(row.geometry().area() / math.pi) == pytest.approx(wanted, abs=0.1)
    hand.outline(30, 250)
    for _ in range(100):
        hand.key(Qt.Key.Key_Minus)
    hand.key(Qt.Key.Key_Enter)
    row = min(new_rows(layer), key=lambda one: one.id())
    assert row.geometry().isGeosValid() and row.geometry().area() > 0


def test_plain_ground_is_declined_with_what_to_do(drawing, hand, tmp_path):  # noqa: F811
    shown(drawing, write(tmp_path / "plain.tif", picture([])))
    hand.take("bunker")
    hand.outline(30, 250)
    (message,) = drawing.iface.bar.messages
    assert "No margin can be seen" in message and "draw it by hand" in message
    assert hand.tool.proposal is None


def test_where_no_image_is_shown_it_says_so(drawing, hand):  # noqa: F811
    hand.take("bunker")
    hand.outline(30, 250)
    (message,) = drawing.iface.bar.messages
    assert "No image on the map shows this place" in message


def test_the_topmost_image_that_shows_the_place_counts(drawing, hand, bunker, tmp_path):  # noqa: F811
    """A clear one above is looked through, and one without end is none of the reasons to fail."""
    smaller = write(tmp_path / "smaller.tif", picture([(BUNKER, 4.0, SAND)]))
    clear = str(tmp_path / "clear.tif")
    gdal.Warp(
        clear,
        write(tmp_path / "black.tif", np.zeros((SIZE, SIZE, 3), np.uint8)),
        srcNodata="0 0 0",
        dstAlpha=True,
    )
    layers = [QgsRasterLayer(clear, "clear"), QgsRasterLayer(smaller, "smaller"), bunker]
    QgsProject.instance().addMapLayers(layers[:2])
    hand.canvas.setLayers(layers)
    hand.take("bunker")
    hand.outline(30, 250)
    hand.key(Qt.Key.Key_Return)
    (row,) = new_rows(drawing.in_hand.layer("bunker"))
    assert math.sqrt(row.geometry().area() / math.pi) == pytest.approx(4.0, abs=0.15)


def test_a_registered_date_is_outlined_where_it_lies_on_the_ground(drawing, hand, tmp_path):  # noqa: F811
    """Its picture lies 3 m too far east: the outline does not, and says which date it was seen in."""
    path = write(tmp_path / "off.tif", picture([(BUNKER, RADIUS, SAND)], shift=3.0))
    shown(drawing, path)
    rows = drawing.in_hand.layer("image")
    rows.startEditing()
    told = {"id": "may", "source": path, "shift_e_m": -3.0, "shift_n_m": 0.0}
    places = {rows.fields().lookupField(name): value for name, value in told.items()}
    ground = QgsGeometry.fromRect(QgsRectangle(0, 0, 1, 1))
    rows.addFeature(QgsVectorLayerUtils.createFeature(rows, ground, places))
    hand.take("bunker")
    hand.outline(30, 250)
    hand.key(Qt.Key.Key_Return)
    (row,) = new_rows(drawing.in_hand.layer("bunker"))
    assert row["seen_in"] == "may"
    assert radii(row.geometry()) == pytest.approx([RADIUS] * len(radii(row.geometry())), abs=GSD)


def test_what_is_guessed_is_dashed_and_marks_it_partly_hidden(drawing, hand, tmp_path):  # noqa: F811
    shown(drawing, write(tmp_path / "fading.tif", picture([(BUNKER, RADIUS, SAND)], fading=True)))
    hand.take("bunker")
    hand.outline(27, 250)
    found = hand.tool.proposal
    stretches = found.stretches(found.polygon())
    guessed = np.concatenate([places for guess, places in stretches if guess])
    assert guessed[:, 0].mean() > at(*BUNKER)[0] + 0.5
    assert {guess for guess, _ in stretches} == {True, False}
    lengths = [np.hypot(*np.diff(places, axis=0).T).sum() for guess, places in stretches if guess]
    assert sum(lengths) / found.polygon().length == pytest.approx(found.share_doubtful(), abs=0.05)
    (item,) = drawing.iface.bar.items
    assert "dashed" in item.text()
    hand.key(Qt.Key.Key_Return)
    (row,) = new_rows(drawing.in_hand.layer("bunker"))
    assert (row["view"] == "partly hidden") == (found.share_doubtful() >= 0.25)
    assert drawing.iface.bar.items == []  # what was said of the proposal goes with it
    assert row["view"] == "partly hidden" and "partly hidden" in drawing.iface.bar.messages[-1]


def test_what_has_no_margin_is_drawn_by_hand_and_the_tip_says_why(drawing, hand):  # noqa: F811
    from yardwright.desk.draw_tool import DrawTool
    from yardwright.desk.outline_tool import OutlineTool

    action = drawing.actions["outline"]
    hand.take("green")
    assert isinstance(hand.tool, OutlineTool) and action.isChecked() and action.isEnabled()
    for kind in ("marker", "path", "trees"):
        drawing.take(kind)
        assert isinstance(hand.tool, DrawTool)
        assert not action.isEnabled() and "draw it by hand" in action.toolTip()
        assert drawing.actions["draw_clicks"].isChecked()
    drawing.take("fairway")
    assert isinstance(hand.tool, OutlineTool) and action.isEnabled() and action.isChecked()
    assert "by hand" not in action.toolTip()


def test_the_way_of_drawing_changes_with_the_kind_in_hand_kept(drawing, hand):  # noqa: F811
    from yardwright.desk.draw_tool import DrawTool
    from yardwright.desk.outline_tool import OutlineTool

    drawing.take("green")
    drawing.actions["outline"].trigger()
    assert isinstance(hand.tool, OutlineTool) and hand.tool.kind == "green"
    assert drawing.actions["draw_green"].isChecked()
    drawing.actions["draw_curve"].trigger()
    assert isinstance(hand.tool, DrawTool) and hand.tool.kind == "green"
    assert not drawing.actions["outline"].isChecked()


def test_laid_down_amid_the_search_it_leaves_nothing(drawing, hand, bunker):  # noqa: F811
    hand.take("bunker")
    hand.click(30, 250)
    tool = hand.tool
    drawing.take("marker")
    hand.qtbot.wait(1500)
    assert tool.proposal is None and drawing.iface.bar.messages == []
    assert new_rows(drawing.in_hand.layer("bunker")) == []
