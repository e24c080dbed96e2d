"""The arrows of what a registration leaves: how long, which way, and told apart."""

import numpy as np
import pytest
from qgis.core import QgsCoordinateTransform, QgsProject, QgsRectangle
from qgis.gui import QgsMapCanvas
from yardwright.desk.residuals import CHECK, FIT, OUTLIER, Residuals, enlarged_by
from yardwright.imagery.registration import Tie

from tests.desk.conftest import EAST, NORTH
from tests.desk.test_dates import pixels


def tie(x, y, east, north, role=FIT):
    return Tie(EAST + x, NORTH + y, 0.0, 0.0, east, north, role, 8.0)


@pytest.fixture
def item(qgis_app, project):
    from qgis.core import QgsCoordinateReferenceSystem

    canvas = QgsMapCanvas()
    crs = QgsCoordinateReferenceSystem("EPSG:32630")
    canvas.setDestinationCrs(crs)
    canvas.resize(600, 600)
    canvas.setExtent(QgsRectangle(EAST, NORTH, EAST + 300, NORTH + 300))
    item = Residuals(canvas)
    item.transform = QgsCoordinateTransform(crs, crs, QgsProject.instance())
    yield item
    canvas.deleteLater()


@pytest.mark.parametrize(
    ("lengths", "pixel", "factor"),
    [([0.1] * 9, 0.5, 200), ([0.05] * 9, 0.5, 200), ([0.04] * 9, 0.5, 500), ([100.0], 0.5, 1), ([0.0, 0.0], 0.5, 1), ([], 1, 1)],
)  # fmt: skip
def test_how_much_arrows_are_enlarged(lengths, pixel, factor):
    """The largest of 1, 2, 5, 10… that leaves the usual arrow no longer than 42 pixels."""
    assert enlarged_by(lengths, pixel) == factor


def test_an_arrow_points_where_the_picture_lies_off(item):
    item.lay("a on b", [tie(100, 150, 0.1, 0.0), tie(200, 150, 0.0, -0.1, CHECK)], item.transform, 1.0)
    (_, foot, tip, cut), (_, other, down, _) = item._arrows
    pixel = item.canvas.mapUnitsPerPixel()
    assert tip.x() - foot.x() == pytest.approx(0.1 * item.factor / pixel, abs=0.1)
    assert tip.y() == pytest.approx(foot.y(), abs=0.1) and not cut
    # South is down the screen.
    assert down.y() - other.y() == pytest.approx(0.1 * item.factor / pixel, abs=0.1)
    assert 20 < tip.x() - foot.x() <= 42.1


def test_the_arrows_stay_as_long_when_the_map_zooms(item):
    item.lay("a on b", [tie(150, 150, 0.1, 0.0)], item.transform, 1.0)
    before = item.factor
    item.canvas.zoomScale(item.canvas.scale() / 10)
    item.updatePosition()
    (_, foot, tip, _) = item._arrows[0]
    assert item.factor == pytest.approx(before / 10) and 20 < tip.x() - foot.x() <= 42.1


def test_what_was_set_aside_does_not_decide_and_is_cut_off(item):
    ties = [tie(100, 150, 0.1, 0.0), tie(200, 150, 9.0, 0.0, OUTLIER)]
    item.lay("a on b", ties, item.transform, 1.0)
    roles = {role: (tip.x() - foot.x(), cut) for role, foot, tip, cut in item._arrows}
    assert roles[FIT][0] > 20 and not roles[FIT][1]
    assert roles[OUTLIER] == (pytest.approx(96), True)


def test_a_unit_other_than_the_metre(item):
    """In US survey feet: the places are feet, the residuals metres all the same."""
    foot_m = 1200 / 3937
    item.lay("a on b", [tie(150, 150, 0.1, 0.0)], item.transform, foot_m)
    (_, foot, tip, _) = item._arrows[0]
    assert tip.x() - foot.x() == pytest.approx(
        0.1 / foot_m * item.factor / item.canvas.mapUnitsPerPixel(), abs=0.1
    )


def test_marks_and_legend_are_painted(item):
    empty = pixels(item.canvas.viewport().grab().toImage())
    item.lay("2024 on 2025", [tie(150, 200, 0.1, 0.0), tie(250, 250, 0.05, 0.1, CHECK)], item.transform, 1.0)
    shot = pixels(item.canvas.viewport().grab().toImage())
    changed = (np.abs(shot.astype(int) - empty) > 20).any(axis=2)
    height = changed.shape[0]
    assert changed[-120:-14, 14:150].mean() > 0.5  # the legend at the lower left
    assert changed[: height // 2].any()
    blue, orange = (np.abs(shot.astype(int) - ink).sum(axis=2) < 12 for ink in ((0, 114, 178), (230, 159, 0)))
    assert blue.sum() > 30 and orange.sum() > 30
