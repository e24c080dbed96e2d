"""Inside QGIS: the window of the guide, a page of it in the layout designer, its template kept, the guide saved."""

import os

import desktop_drive
from qgis.core import QgsLayoutPoint, QgsProject
from qgis.PyQt.QtWidgets import QApplication, QMainWindow
from qgis.utils import iface


def designer_window():
    windows = [one for one in QApplication.topLevelWidgets() if isinstance(one, QMainWindow)]
    return next(one for one in windows if one.isVisible() and one is not iface.mainWindow())


def drive(desk):
    from yardwright.desk.guide_dialog import GuideDialog
    from yardwright.desk.toolbar import CourseTools

    yield 800
    tools = iface.mainWindow().findChild(CourseTools)
    tools.actions["make_guide"].trigger()
    yield 2500
    (window,) = iface.mainWindow().findChildren(GuideDialog)
    desk.result["kinds"] = [page.kind for page in window.list.pages]
    holes = desk.result["kinds"].index("holes")
    place = window.list.visualItemRect(window.list.item(holes)).center()
    desk.click(window.list.viewport(), (place.x(), place.y()))
    yield 2500
    desk.shot("guide", window)
    desk.result["remarks"] = [window.remarks.item(row).text() for row in range(window.remarks.count())]
    desk.result["looked_at"] = window.book.pages[window.view.number].kind
    desk.click(window.design_button)
    yield 3000
    designer = iface.openLayoutDesigners()[0]
    # QGIS 3.40 opens it so small that its toolbar hides most buttons.
    designer_window().resize(1300, 820)
    yield 700
    desk.shot("designer", designer_window())
    desk.result["name"] = designer.masterLayout().name()
    layout = designer.layout()
    item = layout.itemById("green")
    desk.result["part"] = type(item).__name__
    item.attemptMove(QgsLayoutPoint(30, 12))
    yield 300
    (keep,) = [one for one in designer.layoutMenu().actions() if one.text().startswith("Keep as")]
    desk.click(designer.layoutToolbar().widgetForAction(keep))
    yield 1500
    desk.result["told"] = [one.text() for one in designer.messageBar().items()]
    desk.shot("kept", designer_window())
    designer.close()
    yield 500
    before = window.book
    window.raise_()
    window.activateWindow()
    yield 3000
    desk.result["planned_again"] = window.book is not before
    desk.shot("guide_again", window)
    path = os.path.join(os.path.dirname(QgsProject.instance().fileName()), "guide.pdf")
    desk.result["saved"] = window.save(path) == path
    desk.shot("saved", window)
    window.close()
    yield 500
    QgsProject.instance().setDirty(False)


desktop_drive.run(drive)
