"""Inside QGIS: the dates panel over flat colours, by mouse and keyboard, looked at in the pixels of the screen."""

import os

import desktop_drive
from qgis.core import QgsApplication, QgsProject, QgsRectangle
from qgis.gui import QgsMapCanvas, QgsMapToolPan
from qgis.PyQt.QtCore import QPoint
from qgis.PyQt.QtWidgets import QApplication, QToolBar
from qgis.utils import iface, unloadPlugin

MARK = tuple(map(int, os.environ["YARDWRIGHT_MARK"].split()))
"""The colour of a square that is painted into all images."""
PROJECT = os.environ["YARDWRIGHT_PROJECT"]


def screen():
    """A picture of the whole screen as it is now."""
    return QApplication.primaryScreen().grabWindow(0).toImage()


def colour_at(widget, x, y):
    """The colour on the screen at a share of a widget's width and height, (red, green, blue)."""
    place = widget.mapToGlobal(QPoint(round(widget.width() * x), round(widget.height() * y)))
    return screen().pixelColor(place).getRgb()[:3]


def colours_on_line(widget, y):
    """The colours on the screen along a line of pixels across a widget, in order, each named once a run."""
    shot, runs = screen(), []
    for x in range(1, widget.width() - 1):
        place = widget.mapToGlobal(QPoint(x, round(widget.height() * y)))
        colour = shot.pixelColor(place).getRgb()[:3]
        if not runs or runs[-1][0] != colour:
            runs.append([colour, 0])
        runs[-1][1] += 1
    return runs


def square(canvas):
    """The middle of the painted square in a map's view on the screen, from the middle of the view; None."""
    view, shot = canvas.viewport(), screen()
    corner = view.mapToGlobal(QPoint(0, 0))
    found = [
        (x, y)
        for x in range(view.width())
        for y in range(view.height())
        if shot.pixelColor(corner + QPoint(x, y)).getRgb()[:3] == MARK
    ]
    if not found:
        return None
    middle = [(sum(each) / len(found) + 0.5) for each in zip(*found)]
    return middle[0] - view.width() / 2, middle[1] - view.height() / 2


def look(canvas):
    """Where a map looks: its middle, ground a pixel, and turn."""
    return canvas.center().x(), canvas.center().y(), canvas.mapUnitsPerPixel(), canvas.rotation()


def drawn_on(canvas, layer):
    """How many pixels about a layer's first feature are not of the flat colour of the map's corner."""
    place = next(layer.getFeatures()).geometry().boundingBox().center()
    pixel = canvas.getCoordinateTransform().transform(place)
    shot, view = screen(), canvas.viewport()
    ground = colour_at(view, 0.03, 0.5)
    corner = view.mapToGlobal(QPoint(round(pixel.x()) - 12, round(pixel.y()) - 12))
    return sum(
        shot.pixelColor(corner + QPoint(x, y)).getRgb()[:3] != ground for x in range(24) for y in range(24)
    )


def visible():
    """The days of the image layers that are ticked in the tree."""
    nodes = QgsProject.instance().layerTreeRoot().findLayers()
    return sorted(one.name() for one in nodes if one.name().startswith("20") and one.isVisible())


def layer_of(kind):
    """The course's layer of a kind."""
    layers = QgsProject.instance().mapLayers().values()
    return next(one for one in layers if one.customProperty("yardwright/kind") == kind)


def settled(pause):
    """Let QGIS work for a while, ms, and then on until no map is being drawn any more."""
    from yardwright.desk.comparing import SecondPicture

    yield pause
    window = iface.mainWindow()
    for _ in range(100):
        maps = window.findChildren(QgsMapCanvas)
        pictures = window.findChildren(SecondPicture)
        if not any(one.isDrawing() for one in maps) and not any(one.busy for one in pictures):
            break
        yield 100
    yield 150


def drag(desk, widget, start, end):
    """Drag with the left button from one place to another, pixels of a widget."""
    desk.move(widget, start)
    desk._mouse("mousedown", "1")
    for n in range(1, 9):
        desk.move(widget, [a + (b - a) * n / 8 for a, b in zip(start, end)])
        yield 60
    desk._mouse("mouseup", "1")
    yield from settled(700)


def grip(panel):
    """The middle of the divider's handle in pixels of the map."""
    middle = panel.comparison.overlay.grip().center()
    return middle.x(), middle.y()


def choose(desk, panel, day):
    """Click on a date in the panel's list."""
    item = next(
        panel.list.topLevelItem(n)
        for n in range(panel.list.topLevelItemCount())
        if panel.list.topLevelItem(n).text(0) == day
    )
    middle = panel.list.visualItemRect(item).center()
    desk.click(panel.list.viewport(), (30, middle.y()))


def pick(desk, box, text):
    """Choose an entry that begins with a text in a combo box, by keyboard."""
    row = next(n for n in range(box.count()) if box.itemText(n).startswith(text))
    box.setFocus()
    desk.key(*["Up"] * box.count(), *["Down"] * row)


def scene(canvas):
    """What lies over the map."""
    return len(canvas.scene().items())


def drive(desk):
    from yardwright.desk.toolbar import CourseTools

    log = []
    QgsApplication.messageLog().messageReceived.connect(
        lambda text, tag, level: log.append(text) if tag in ("Yardwright", "Python error") else None
    )
    found = desk.result
    window, canvas = iface.mainWindow(), iface.mapCanvas()
    window.move(0, 0)
    window.resize(1900, 880)
    yield from settled(1000)
    canvas.setExtent(QgsRectangle(*map(float, os.environ["YARDWRIGHT_EXTENT"].split())))
    yield from settled(1000)
    view = canvas.viewport()
    tools = window.findChild(CourseTools)
    tools.show_figures(False)  # they would stand among the pixels that are looked at
    bar = window.findChild(QToolBar, "yardwright_toolbar")
    before = scene(canvas)
    action = tools.actions["dates_panel"]
    desk.click(bar.widgetForAction(action))
    yield from settled(1200)
    panel = tools.panels["dates_panel"]
    found["at_first"] = colour_at(view, 0.25, 0.3), visible()
    choose(desk, panel, "2024-10-09")
    yield from settled(1200)
    found["chosen"] = colour_at(view, 0.25, 0.3), visible()
    choose(desk, panel, "2025-07-02")
    yield from settled(1200)
    pick(desk, panel.second_box, "2023")
    yield from settled(400)

    # Flip: while the key or the button is held
    canvas.setFocus()
    flips = []
    for down, up in (
        (("keydown", "F4"), ("keyup", "F4")),
        (("mousedown", "1"), ("mouseup", "1")),
    ):
        if "mousedown" in down:
            desk.move(panel.flip_button, (10, 10))
        desk._mouse(*down)
        yield from settled(1200)
        flips.append(colour_at(view, 0.25, 0.3))
        desk._mouse(*up)
        yield from settled(500)
        flips.append(colour_at(view, 0.25, 0.3))
    found["flips"] = flips

    # Swipe: the divider dragged by its handle, by itself, and moved by keys
    desk.click(panel.swipe_button, (15, 15))
    yield from settled(1500)
    found["swiping"] = colour_at(view, 0.25, 0.3), colour_at(view, 0.75, 0.3)
    desk.move(view, grip(panel))
    yield from settled(300)
    found["shape_on_grip"] = view.cursor().shape()
    desk.shot("grip")
    at = grip(panel)
    looked = look(canvas)
    yield from drag(desk, view, at, (view.width() * 0.2, at[1] - 40))
    found["dragged"] = panel.comparison.divider, colour_at(view, 0.1, 0.3), colour_at(view, 0.25, 0.3)
    line = view.width() * panel.comparison.divider
    yield from drag(desk, view, (line + 2, view.height() * 0.2), (view.width() * 0.8, view.height() * 0.4))
    found["line_dragged"] = panel.comparison.divider, colour_at(view, 0.75, 0.3), colour_at(view, 0.9, 0.3)
    found["map_stayed"] = look(canvas) == looked
    desk.move(view, (view.width() * 0.4, view.height() * 0.2))
    yield from settled(300)
    found["shape_elsewhere"] = view.cursor().shape() == canvas.cursor().shape()
    found["divider_across"] = colours_on_line(view, 0.3)
    canvas.setFocus()
    desk.key(*["ctrl+Left"] * 10)
    yield from settled(400)
    found["keyed"] = panel.comparison.divider, colour_at(view, 0.75, 0.3), look(canvas) == looked
    panel.divider_slider.setFocus()
    desk.key("Home", "Page_Up", "Page_Up", "Page_Up")
    yield from settled(400)
    found["slid"] = panel.comparison.divider, colour_at(view, 0.2, 0.3), colour_at(view, 0.4, 0.3)
    tools.drawing.take("bunker")
    line = view.width() * panel.comparison.divider
    to_map = canvas.getCoordinateTransform()
    sides = [to_map.toMapCoordinates(round(line + aside), round(view.height() * 0.3)) for aside in (-40, 100)]
    found["drawn_from"] = [tools.drawing.seen_in([place]) for place in sides]
    desk.click(view, (line, view.height() * 0.3))
    yield from settled(300)
    # A click on the divider is the drawing tool's: only the handle is the divider's.
    found["clicked_vertices"] = canvas.mapTool().size()
    desk.click(view, (line, view.height() * 0.3), button=3)
    yield from settled(300)
    pan = QgsMapToolPan(canvas)
    canvas.setMapTool(pan)
    layer_of("bunker").rollBack()
    panel.down_action.trigger()
    yield from settled(900)
    found["above_and_below"] = colour_at(view, 0.1, 0.1), colour_at(view, 0.1, 0.9)
    desk.shot("above_and_below")
    panel.across_action.trigger()
    desk.click(panel.swipe_button, (15, 15))
    yield from settled(600)
    found["swiped"] = colour_at(view, 0.9, 0.3), scene(canvas) - before

    # Side by side
    width = canvas.width()
    docks = panel.width()
    desk.click(panel.linked_button)
    yield from settled(1800)
    second = panel.linked.view
    found["widths"] = width, canvas.width(), second.width(), docks, panel.width()
    found["two"] = colour_at(view, 0.1, 0.2), colour_at(second.viewport(), 0.1, 0.2)
    found["squares"] = {"opened": (square(canvas), square(second))}
    desk.shot("side_by_side")
    yield from drag(desk, view, (100, 300), (160, 240))
    found["squares"]["panned"] = (square(canvas), square(second))
    desk.click(view, (view.width() / 2, view.height() / 2), button=4)
    yield from settled(1500)
    found["squares"]["zoomed"] = (square(canvas), square(second))
    canvas.setRotation(40)
    yield from settled(1500)
    found["squares"]["turned"] = (square(canvas), square(second))
    found["turned"] = look(canvas), look(second)
    yield from drag(desk, second.viewport(), (100, 300), (60, 340))
    found["squares"]["second_panned"] = (square(canvas), square(second))
    desk.click(second.viewport(), (150, 200), button=5)
    yield from settled(1500)
    found["squares"]["second_zoomed"] = (square(canvas), square(second))
    found["looks_alike"] = look(canvas), look(second)
    canvas.setRotation(0)
    yield from settled(800)

    # Saved while everything is on
    bunker = layer_of("bunker")
    canvas.zoomToFeatureExtent(bunker.extent().buffered(60))
    yield from settled(1200)
    found["bunker"] = {"all": drawn_on(canvas, bunker)}
    pick(desk, panel.seen_in_box, "2023-04-12")
    yield from settled(1200)
    found["bunker"]["from_2023"] = drawn_on(canvas, bunker), drawn_on(second, bunker)
    found["texts"] = [panel.seen_in_box.itemText(n) for n in range(panel.seen_in_box.count())]
    found["count"] = panel.count_label.text()
    pick(desk, panel.seen_in_box, "any")
    desk.click(panel.hidden_box, (10, panel.hidden_box.height() / 2))
    yield from settled(1200)
    found["bunker"]["partly_hidden"] = drawn_on(canvas, bunker), drawn_on(second, bunker)
    found["hidden_count"] = panel.count_label.text(), panel.seen_in_box.currentText()
    desk.shot("hidden")
    pick(desk, panel.seen_in_box, "2023-04-12")
    desk.click(panel.swipe_button, (15, 15))
    yield from settled(800)
    canvas.setFocus()
    desk._mouse("keydown", "F4")
    yield from settled(500)
    QgsProject.instance().setDirty(True)
    desk.key("ctrl+s")
    yield from settled(1500)
    desk._mouse("keyup", "F4")
    found["saved"] = not QgsProject.instance().isDirty()
    desk.shot("saved")
    widths = canvas.width()
    desk.click(panel.linked_button)
    yield from settled(1200)
    found["closed_again"] = width, canvas.width(), widths, docks, panel.width()
    found["still_visible"] = visible()

    # Opened again
    iface.addProject(PROJECT)
    yield from settled(2500)
    canvas.zoomToFeatureExtent(layer_of("bunker").extent().buffered(60))
    yield from settled(1500)
    found["opened"] = {
        "visible": visible(),
        "filter": (panel.seen_in_box.currentText(), panel.hidden_box.isChecked()),
        "bunker": drawn_on(canvas, layer_of("bunker")),
    }

    # What it looks at is taken away
    choose(desk, panel, "2025-07-02")
    yield from settled(600)
    pick(desk, panel.second_box, "2024")
    for each in (panel.swipe_button, panel.linked_button):
        if not each.isChecked():
            desk.click(each, (15, 15))
            yield from settled(900)
    canvas.setFocus()
    desk._mouse("keydown", "F4")
    yield from settled(900)
    gone = next(date.layer_id for date in panel.dates if date.id == "2024-10-09")
    QgsProject.instance().removeMapLayer(gone)
    yield from settled(1200)
    desk._mouse("keyup", "F4")
    yield from settled(600)
    # Another date takes its place as the other of the pair.
    found["one_less"] = (
        colour_at(view, 0.1, 0.1),
        colour_at(view, 0.95, 0.1),
        colour_at(panel.linked.view.viewport(), 0.1, 0.1),
    )
    last = next(date.layer_id for date in panel.dates if date.id == "2023-04-12")
    QgsProject.instance().removeMapLayer(last)
    yield from settled(1200)
    found["none_left"] = (
        colour_at(view, 0.95, 0.1),
        panel.linked is None,
        panel.swipe_button.isEnabled(),
        scene(canvas) - before,
    )
    QgsProject.instance().setDirty(False)
    iface.addProject(PROJECT)
    yield from settled(2500)
    for each in (panel.swipe_button, panel.linked_button):
        desk.click(each, (15, 15))
        yield from settled(900)
    desk.shot("before_close")
    iface.newProject()
    yield from settled(1500)
    found["project_closed"] = panel.linked is None, panel.comparison.swiping, scene(canvas) - before
    iface.addProject(PROJECT)
    yield from settled(2500)
    looked = visible()
    for each in (panel.swipe_button, panel.linked_button):
        desk.click(each, (15, 15))
        yield from settled(900)
    panel.hidden_box.setChecked(True)
    canvas.setFocus()
    desk._mouse("keydown", "F4")
    yield from settled(900)
    desk.move(view, (10, 10))
    unloadPlugin("yardwright")
    yield 1500
    desk._mouse("keyup", "F4")
    yield 1500
    found["unloaded"] = {
        "visible": (looked, visible()),
        "over_the_map": scene(canvas) - before,
        "overrides": len(canvas.layerStyleOverrides()),
        "colour": (colour_at(view, 0.1, 0.1), colour_at(view, 0.95, 0.1)),
        "docks": [one.objectName() for one in window.findChildren(type(panel)) if one.isVisible()],
    }
    desk.shot("unloaded")
    found["log"] = log
    found["messages"] = [one.text() for one in iface.messageBar().items() if one.title() == "Yardwright"]


desktop_drive.run(drive)
