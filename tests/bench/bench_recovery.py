"""What the recovery copy adds to an edit of the sample course, with 50 features unsaved.

``bash tests/run tests/bench/bench_recovery.py -s``

The whole of it is counted: what is taken out of the edit buffers, encoded and written. All unsaved outlines are
of one kind, the worst case: the copy encodes again only the layers that an edit has touched.
"""

import math
import time

import pytest
from qgis.core import QgsGeometry, QgsPointXY, QgsProject, QgsVectorLayerUtils

from tests.desk.test_toolbar import iface  # noqa: F401  the fixture

pytestmark = pytest.mark.bench

LIMIT_MS = 10.0
UNSAVED = 50
EDITS = 60
VERTICES = 60
"""Of a drawn outline: a smooth curve through some fifteen clicks."""


def outline(middle, number):
    """A round outline some way from the middle of the course."""
    east, north = middle.x() + 10 * number, middle.y()
    angles = [2 * math.pi * corner / VERTICES for corner in range(VERTICES)]
    return QgsGeometry.fromPolygonXY(
        [[QgsPointXY(east + 4 * math.cos(angle), north + 6 * math.sin(angle)) for angle in angles]]
    )


def test_an_edit(iface, qgis_new_project, layers):  # noqa: F811
    from yardwright.desk.editing import one_step
    from yardwright.desk.in_hand import CourseInHand
    from yardwright.desk.keeping import Keeping
    from yardwright.store.layer_group import add_course_group
    from yardwright.store.recovery import copies

    saved = sum(layer.featureCount() for layer in layers.layers.values())
    add_course_group(QgsProject.instance(), layers)
    in_hand = CourseInHand(iface)
    keeping = Keeping(in_hand)
    in_hand.refresh()
    bunkers = in_hand.layer("bunker")
    middle = bunkers.extent().center()
    fids = [feature.id() for feature in bunkers.getFeatures()]

    def draw(number):
        with one_step("Draw", bunkers):
            shape = outline(middle, number)
            bunkers.addFeature(QgsVectorLayerUtils.createFeature(bunkers, shape, {1: "1", 5: "clear"}))

    def reshape(number):
        with one_step("Reshape", bunkers):
            bunkers.changeGeometry(fids[number % len(fids)], outline(middle, number))

    for number in range(UNSAVED - 10):
        draw(number)
    for number in range(10):
        reshape(number)
    keeping.write()
    times = []
    for edit in range(EDITS):
        if edit % 2:
            bunkers.undoStack().undo()
        else:
            (draw if edit % 4 else reshape)(edit)
        start = time.perf_counter()
        keeping.write()
        times.append(1000 * (time.perf_counter() - start))
    (path,) = copies([f"{in_hand.place}-unsaved"])
    with open(path, "rb") as file:
        size = len(file.read())
    bunkers.rollBack()
    keeping.let_go()
    in_hand.let_go()
    taken, worst = sorted(times)[EDITS // 2], max(times)
    print(
        f"\n{saved} rows saved, {UNSAVED} unsaved: an edit is in the copy ({size / 1000:.0f} kB) after "
        f"{taken:.2f} ms (limit {LIMIT_MS} ms), the longest {worst:.2f} ms"
    )
    assert taken <= LIMIT_MS
