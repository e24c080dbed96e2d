"""Inside QGIS: a page of the guide in the layout designer, a part moved, the page kept as a template."""

import desktop_drive
from qgis.core import QgsLayoutPoint, QgsProject
from qgis.PyQt.QtWidgets import QApplication, QMainWindow
from qgis.utils import iface, plugins, unloadPlugin
from yardwright.desk.page_designer import open_in_designer
from yardwright.guide.page_layouts import PageContent, layout_of, texts_of
from yardwright.guide.page_templates import built_in
from yardwright.guide.sheet_parts import Line, Page, Text

SIZE = (107.95, 177.8)


def ladder(width, height):
    """A scale with figures."""
    middle = width / 2
    marks = [Text(middle, height * step / 10, str(50 * step), 7, True, "centre") for step in range(1, 10)]
    return Page(width, height, (Line(((1, 0), (1, height)), 0.5, "#aa0000"), *marks))


def designer_window():
    windows = [one for one in QApplication.topLevelWidgets() if isinstance(one, QMainWindow)]
    return next(one for one in windows if one.isVisible() and one is not iface.mainWindow())


def drive(desk):
    project = QgsProject.instance()
    yield 500
    content = PageContent({"hole_number": 1, "book_page": 4, "credit": "Larkmere"}, {}, {"ladder": ladder})
    layout = layout_of(project, built_in("hole", SIZE), content)
    designer = open_in_designer(iface, layout, "Hole 1")
    designer.window().resize(1150, 760)
    yield 1500
    desk.result["texts"] = texts_of(layout)
    item = layout.itemById("ladder")
    layout.setSelectedItem(item)
    designer.showItemOptions(item)
    yield 800
    desk.shot("designer", designer_window())
    item.attemptMove(QgsLayoutPoint(70, 40))
    layout.itemById("green").attemptMove(QgsLayoutPoint(62, 90))
    yield 600
    (keep,) = [one for one in designer.layoutMenu().actions() if one.text().startswith("Keep as")]
    desk.click(designer.layoutToolbar().widgetForAction(keep))
    yield 1200
    desk.shot("kept", designer_window())
    desk.result["said"] = [one.text() for one in designer.messageBar().items()]
    desk.result["size"] = designer_window().size().width(), designer_window().size().height()
    unloadPlugin("yardwright")
    yield 500
    desk.result["left"] = [one.text() for one in designer.layoutMenu().actions() if "Course" in one.text()]
    desk.result["unloaded"] = "yardwright" not in plugins
    # The page goes on showing its parts without the plugin.
    desk.result["part"] = type(layout.clone().itemById("ladder")).__name__
    desk.shot("unloaded", designer_window())
    project.setDirty(False)


desktop_drive.run(drive)
