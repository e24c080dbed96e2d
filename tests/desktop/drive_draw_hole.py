"""Inside QGIS: a whole hole drawn from nothing by mouse and keys, over an image, and saved.

YARDWRIGHT_HOLE names a JSON file: the hole's number and the things on it, in the order they are drawn: kind, how
it is drawn, tee set ("" for none), places in the map's CRS. The map is moved by a call; all else is the hand's.
"""

import json
import os
import time

import desktop_drive
from qgis.core import QgsPointXY, QgsProject, QgsRectangle
from qgis.PyQt.QtWidgets import (
    QApplication,
    QComboBox,
    QDialogButtonBox,
    QDockWidget,
    QInputDialog,
    QToolBar,
)
from qgis.utils import iface

MARGIN = 1.25
LEAST_M = 60.0
DRAW = {"hole": "l", "tee": "t", "plate": "p", "green": "g", "apron": "a"}
DRAW.update(fairway="f", bunker="b", marker="m")
HOW = {"clicks": "1", "curve": "2"}


class Hand:
    """The hand on mouse and keys; counts what it does."""

    def __init__(self, desk):
        self.desk = desk
        self.strokes = self.corners = self.ends = 0

    def key(self, *names):
        self.strokes += 1
        self.desk.key(*names)

    def draw(self, places, ends):
        """Click at places of the map, one stream of real clicks; a right click at the last one ends."""
        canvas = iface.mapCanvas()
        to_pixel = canvas.getCoordinateTransform()
        words = []
        for x, y in places:
            pixel = to_pixel.transform(QgsPointXY(x, y))
            point = canvas.viewport().mapToGlobal(pixel.toQPointF().toPoint())
            words += ["mousemove", str(point.x()), str(point.y()), "click", "1"]
        if ends:
            words += ["click", "3"]
        self.corners += len(places)
        self.ends += ends
        self.desk._mouse(*words)


def layer_of(kind):
    layers = QgsProject.instance().mapLayers().values()
    return next(one for one in layers if one.customProperty("yardwright/kind") == kind)


def drawn(kind):
    """How many things of a kind are drawn: a hole of the scorecard counts once it has its line."""
    return sum(1 for row in layer_of(kind).getFeatures() if row.hasGeometry() and not row.geometry().isNull())


def look_at(places):
    """Move the map so that all places have room."""
    x, y = zip(*places)
    box = QgsRectangle(min(x), min(y), max(x), max(y))
    middle = box.center()
    size = max(LEAST_M, MARGIN * box.width()), max(LEAST_M, MARGIN * box.height())
    iface.mapCanvas().setExtent(QgsRectangle.fromCenterAndSize(middle, *size))
    iface.mapCanvas().refresh()


def drive(desk):
    with open(os.environ["YARDWRIGHT_HOLE"], encoding="utf-8") as file:
        hole = json.load(file)
    window = iface.mainWindow()
    for dock in ("Layers", "Browser"):
        window.findChild(QDockWidget, dock).hide()
    window.move(20, 20)
    window.resize(1400, 1250)
    iface.messageBar().clearWidgets()  # QGIS's own, on fonts, would cover the map
    yield 1500
    bar = window.findChild(QToolBar, "yardwright_drawing")
    desk.click(bar, (bar.width() - 5, 5))  # nothing is there, but the keys go to the window from now on
    yield 300
    hand = Hand(desk)
    hand.key("alt+y", "j")
    yield 500
    desk.result["hole"] = window.findChild(QComboBox, "yardwright_hole").currentText()
    tee_sets = bar.findChild(QComboBox, "yardwright_tee_set")

    began = time.monotonic()
    kind = how = None
    for thing in hole["things"]:
        look_at(thing["places"])
        yield 250
        if thing["how"] != how:
            how = thing["how"]
            hand.key("alt+y", HOW[how])
        if thing["kind"] != kind:
            kind = thing["kind"]
            hand.key("alt+y", DRAW[kind])
        yield 120
        asked = thing["tee_set"] and tee_sets.currentData() == ""
        if thing["tee_set"] and not asked and tee_sets.currentData() != thing["tee_set"]:
            tee_sets.setFocus()
            hand.strokes += 1
            desk.type(thing["tee_set"][:2])
            yield 200
        before = drawn(kind)
        hand.draw(thing["places"], thing["ends"])
        for _ in range(60):
            yield 50
            if asked and isinstance(QApplication.activeModalWidget(), QInputDialog):
                question = QApplication.activeModalWidget()
                desk.shot("asked", question)
                desk.click(question.findChild(QDialogButtonBox).button(QDialogButtonBox.StandardButton.Ok))
                asked = False
            if drawn(kind) > before:
                break
        else:
            desk.shot("not_drawn")
            raise AssertionError(f"{thing['kind']} was not drawn: {before} before, {drawn(kind)} now")
        if kind in ("green", "bunker"):
            desk.shot(f"drawn_{kind}")
    desk.result["seconds"] = time.monotonic() - began
    desk.result["counted"] = {"corners": hand.corners, "ends": hand.ends, "strokes": hand.strokes}
    desk.key("alt+2")
    yield 2500
    desk.shot("hole")
    steps = {kind: layer_of(kind).undoStack().count() for kind in DRAW}
    desk.result["steps"] = steps
    desk.later(iface.actionSaveAllEdits().trigger)
    yield 500
    question = QApplication.activeModalWidget()
    desk.click(question.button(question.StandardButton.Yes))
    yield 1500
    ours = [item for item in iface.messageBar().items() if item.title() == "Yardwright"]
    desk.result["messages"] = [item.text() for item in ours]


desktop_drive.run(drive)
