"""Inside QGIS: things drawn by mouse, and then an end with nothing saved.

``YARDWRIGHT_END`` says which: ``drawing`` (killed amid an outline), ``saving`` (killed as soon as the first of
all layers has saved its part) or ``leaving`` (the user ends QGIS and saves nothing).
"""

import os

import desktop_drive
from qgis.core import NULL, QgsGeometry, QgsProject
from qgis.PyQt.QtWidgets import QMessageBox, QToolBar
from qgis.utils import iface

KINDS = ("bunker", "tree", "green", "tee_set")


def layer_of(kind):
    """The course's layer of a kind."""
    layers = QgsProject.instance().mapLayers().values()
    return next(one for one in layers if one.customProperty("yardwright/kind") == kind)


def tool(kind):
    """The button of a drawing tool."""
    bar = iface.mainWindow().findChild(QToolBar, "yardwright_drawing")
    return next(bar.widgetForAction(a) for a in bar.actions() if a.objectName() == f"yardwright_draw_{kind}")


def rows(kind):
    """What a layer holds, without keys: geometries as WKB, the rest as text."""
    found = []
    for row in layer_of(kind).getFeatures():
        values = [None if value == NULL else str(value) for value in row.attributes()[1:]]
        found.append([bytes(row.geometry().asWkb()).hex() if row.hasGeometry() else None, *values])
    return sorted(found, key=repr)


def draw(desk, *places, end=True):
    """Click on places, in parts of the map's width and height; a right click ends. Yields the pauses."""
    canvas = iface.mapCanvas()
    pixels = [(canvas.width() * x, canvas.height() * y) for x, y in places]
    for place in pixels:
        desk.click(canvas.viewport(), place)
        yield 250
    if end:
        desk.click(canvas.viewport(), pixels[-1], button=3)
        yield 250


def edit_without_mouse():
    """A geometry and an attribute changed, a row deleted, of layers that are saved."""
    from yardwright.desk.editing import one_step

    bunkers, greens, tee_sets = (layer_of(kind) for kind in ("bunker", "green", "tee_set"))
    with one_step("Change", bunkers, greens, tee_sets):
        ness = next(row for row in bunkers.getFeatures() if row["label"] == "Ness")
        box = ness.geometry().boundingBox()
        box.grow(1.5)
        bunkers.changeGeometry(ness.id(), QgsGeometry.fromRect(box))
        bunkers.changeAttributeValue(ness.id(), bunkers.fields().lookupField("note"), "wider now")
        greens.deleteFeature(next(greens.getFeatures()).id())
        first = next(tee_sets.getFeatures()).id()
        tee_sets.changeAttributeValue(first, tee_sets.fields().lookupField("colour"), "#fff")


def begin(desk):
    """A course opened, the project saved, two bunkers and two trees drawn, one of them undone."""
    from yardwright.desk.toolbar import CourseTools

    yield 800
    iface.mainWindow().findChild(CourseTools).add_course(os.environ["YARDWRIGHT_COURSE"])
    canvas = iface.mapCanvas()
    yield 600
    canvas.zoomByFactor(0.5)
    QgsProject.instance().write(os.environ["YARDWRIGHT_PROJECT"])
    yield 600
    desk.click(tool("bunker"))
    yield 400
    yield from draw(desk, (0.3, 0.3), (0.4, 0.3), (0.35, 0.4))
    yield from draw(desk, (0.6, 0.3), (0.7, 0.3), (0.7, 0.4), (0.6, 0.4))
    desk.click(tool("tree"))
    yield 400
    yield from draw(desk, (0.2, 0.7), end=False)
    yield from draw(desk, (0.25, 0.7), end=False)
    layer_of("tree").undoStack().undo()
    edit_without_mouse()
    desk.click(tool("bunker"))
    yield 400


def drive(desk):
    yield from begin(desk)
    end = os.environ["YARDWRIGHT_END"]
    # The last to be finished, and the next one is begun at once.
    yield from draw(desk, (0.5, 0.6), (0.6, 0.6), (0.55, 0.7))
    desk.result["rows"] = {kind: rows(kind) for kind in KINDS}
    if end == "drawing":
        yield from draw(desk, (0.7, 0.6), (0.8, 0.6), end=False)
        desk.result["under_the_hand"] = iface.mapCanvas().mapTool().size()
        desk.shot("killed")
        desk.kill()
    elif end == "saving":
        for kind in KINDS:
            layer = layer_of(kind)
            for name in ("FeaturesAdded", "FeaturesRemoved", "AttributeValuesChanges", "GeometriesChanges"):
                getattr(layer, f"committed{name}").connect(lambda *_: desk.kill())
        for kind in KINDS:
            layer_of(kind).commitChanges()
    else:
        desk.keep_result()
        desk.later(iface.actionExit().trigger)
        for _ in range(20):
            yield 400
            asked = desk.top_window()
            if isinstance(asked, QMessageBox):
                desk.shot("asked", asked)
                discard = asked.button(QMessageBox.StandardButton.Discard)
                desk.click(discard or asked.button(QMessageBox.StandardButton.Yes))


if __name__ == "__main__" or "YARDWRIGHT_END" in os.environ:
    desktop_drive.run(drive)
