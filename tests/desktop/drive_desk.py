"""Inside QGIS: a course opened, a hole chosen and turned, and its figures looked at, by mouse and keyboard."""

import os

import desktop_drive
from qgis.core import QgsCoordinateTransform, QgsGeometry, QgsPointXY, QgsProject
from qgis.PyQt.QtWidgets import QAction, QApplication, QComboBox, QShortcut, QToolBar
from qgis.utils import iface


def tool(bar, name):
    """The button of an action on the toolbar."""
    return next(bar.widgetForAction(a) for a in bar.actions() if a.objectName() == f"yardwright_{name}")


def layer_of(kind):
    """The course's layer of a kind."""
    layers = QgsProject.instance().mapLayers().values()
    return next(one for one in layers if one.customProperty("yardwright/kind") == kind)


def keys():
    """The keys of our actions, and those of all others: ``{"ours": {name: keys}, "others": [keys]}``."""
    ours, others = {}, set()
    for action in iface.mainWindow().findChildren(QAction):
        for one in action.shortcuts():
            if action.objectName().startswith("yardwright_"):
                ours[action.objectName()] = one.toString()
            else:
                others.add(one.toString())
    others.update(one.key().toString() for one in iface.mainWindow().findChildren(QShortcut))
    return {"ours": ours, "others": sorted(others - {""})}


def line_on_screen(number):
    """The first and last point of a hole's drawn line in the pixels of the map."""
    canvas = iface.mapCanvas()
    layer = layer_of("hole")
    line = QgsGeometry(next(f for f in layer.getFeatures() if f["number"] == number).geometry())
    crs = canvas.mapSettings().destinationCrs()
    line.transform(QgsCoordinateTransform(layer.crs(), crs, QgsProject.instance()))
    points = line.asPolyline()
    pixels = [canvas.getCoordinateTransform().transform(QgsPointXY(p)) for p in (points[0], points[-1])]
    return [(pixel.x(), pixel.y()) for pixel in pixels], (canvas.width(), canvas.height())


def drive(desk):
    from yardwright.desk.measure_dialog import MeasureDialog
    from yardwright.desk.toolbar import CourseTools

    yield 800
    bar = iface.mainWindow().findChild(QToolBar, "yardwright_toolbar")
    desk.result["off"] = {
        action.objectName(): (action.isEnabled(), action.toolTip())
        for action in bar.actions()
        if action.objectName()
    }
    tools = iface.mainWindow().findChild(CourseTools)
    tools.add_course(os.environ["YARDWRIGHT_COURSE"])
    yield 800
    desk.result["course"] = bar.findChild(QComboBox, "yardwright_course").currentText()
    desk.shot("opened")

    desk.result["keys"] = keys()
    holes = bar.findChild(QComboBox, "yardwright_hole")
    desk.click(tool(bar, "next"))
    yield 600
    desk.result["hole"] = holes.currentText()
    desk.key("alt+2")
    yield 900
    desk.result["play_up"] = line_on_screen(2)
    desk.shot("play_up")
    desk.click(tool(bar, "view_approach_up"))
    yield 900
    desk.result["rotation_of_approach"] = iface.mapCanvas().rotation()
    desk.shot("approach_up")
    holes.setFocus()
    desk.key("Up")
    yield 900
    desk.result["hole_by_key"] = holes.currentText()

    desk.click(tool(bar, "measure"))
    yield 1500
    window = iface.mainWindow().findChild(MeasureDialog)
    desk.result["title"] = window.windowTitle()
    view = window.views["distances"]
    model = view.model()
    names = [column.attribute for column in model.sourceModel().table.columns]
    kinds = [model.index(row, names.index("kind")).data() for row in range(model.rowCount())]
    index = model.index(kinds.index("Bunker"), names.index("reach"))
    place = view.viewport().mapTo(view, view.visualRect(index).center())
    desk.click(view, (place.x(), place.y()))
    yield 600
    desk.result["reach"] = index.data()
    desk.result["selected"] = [feature["label"] for feature in window.layers["bunker"].selectedFeatures()]
    desk.shot("measured", window)
    desk.key("ctrl+c")
    yield 300
    desk.result["copied"] = QApplication.clipboard().text()
    window.tabs.setCurrentWidget(window.views["markers"])
    yield 300
    desk.shot("markers", window)
    desk.key("Escape")
    yield 400
    desk.result["left"] = len(iface.mainWindow().findChildren(MeasureDialog))
    # QGIS has messages of its own, on fonts it would fetch.
    ours = [item for item in iface.messageBar().items() if item.title() == "Yardwright"]
    desk.result["messages"] = [item.text() for item in ours]

    desk.click(tool(bar, "check_markers"))
    yield 1200
    dialog = tools._windows[-1]
    desk.shot("algorithm", dialog)
    desk.result["prefilled"] = dialog.createProcessingParameters().get("COURSE")
    dialog.close()
    yield 200

    desk.click(tool(bar, "import_features"))
    yield 800
    desk.type(os.environ["YARDWRIGHT_SOURCE"])
    desk.key("Return")
    yield 1200
    dialog = tools._windows[-1]
    desk.click(dialog.runButton())
    yield 1500
    desk.shot("brought_in", dialog)
    desk.result["log_is_shown"] = dialog.runButton().isVisible() is False
    desk.result["bunkers"] = layer_of("bunker").featureCount()
    dialog.close()
    yield 300
    desk.click(tool(bar, "hole_panel"))
    yield 600
    desk.key("alt+y", "b")
    yield 400
    canvas = iface.mapCanvas()
    places = [(canvas.width() * x, canvas.height() * y) for x, y in ((0.5, 0.4), (0.6, 0.4), (0.55, 0.5))]
    for place in places:
        desk.click(canvas.viewport(), place)
        yield 250
    desk.shot("drawing")
    desk.click(canvas.viewport(), places[-1], button=3)
    yield 600
    desk.result["drawn"] = (layer_of("bunker").featureCount(), layer_of("bunker").undoStack().count())
    panel = tools.panels["hole_panel"]
    desk.result["panel"] = [
        panel.drawn.topLevelItem(row).text(0) for row in range(panel.drawn.topLevelItemCount())
    ]
    layer_of("bunker").undoStack().undo()
    desk.result["undone"] = layer_of("bunker").featureCount()
    layer_of("bunker").rollBack()
    canvas.unsetMapTool(canvas.mapTool())
    desk.result["told"] = [item.text() for item in iface.messageBar().items() if item.title() == "Yardwright"]


desktop_drive.run(drive)
