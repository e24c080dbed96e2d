"""Inside a German QGIS: what the toolbars, panels and dialogs of Yardwright say, and whether it has room."""

import os

import desktop_drive
from qgis.core import QgsProject, QgsRasterLayer
from qgis.PyQt.QtWidgets import (
    QAbstractButton,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QDockWidget,
    QGroupBox,
    QLabel,
    QLineEdit,
    QTableView,
    QTabWidget,
    QToolBar,
    QTreeWidget,
    QWidget,
)
from qgis.utils import iface


def said(window):
    """All that a window and what is in it say, tips included: a set of texts."""
    texts = set()
    for thing in (window, *window.findChildren(QWidget)):
        if isinstance(thing.parent(), QDialogButtonBox):
            continue  # the words of its buttons are Qt's own
        texts |= {thing.toolTip(), thing.whatsThis(), thing.accessibleName()}
        if thing.isWindow() or isinstance(thing, QDockWidget):  # no other shows its title
            texts.add(thing.windowTitle())
        if isinstance(thing, (QLabel, QAbstractButton)):
            texts.add(thing.text())
        elif isinstance(thing, QGroupBox):
            texts.add(thing.title())
        elif isinstance(thing, QLineEdit):
            texts.add(thing.placeholderText())
        elif isinstance(thing, QComboBox):
            texts |= {thing.itemText(row) for row in range(thing.count())}
        elif isinstance(thing, QTabWidget):
            texts |= {thing.tabText(tab) for tab in range(thing.count())}
        elif isinstance(thing, QTreeWidget):
            head = thing.headerItem()
            texts |= {head.text(column) for column in range(thing.columnCount())}
            texts |= {head.toolTip(column) for column in range(thing.columnCount())}
        elif isinstance(thing, QTableView):
            model = thing.model()
            for column in range(model.columnCount()):
                texts |= {model.headerData(column, 1), model.headerData(column, 1, 3)}
                texts |= {model.index(row, column).data() for row in range(model.rowCount())}
        for action in thing.actions():
            texts |= {action.text(), action.toolTip()}
    return sorted(texts - {"", None})


def cramped(window):
    """Texts of buttons and of labels on one line that are wider than the room they have."""
    found = []
    for thing in window.findChildren(QWidget):
        if not thing.isVisible() or not isinstance(thing, (QAbstractButton, QLabel)) or not thing.text():
            continue
        folded = isinstance(thing, QLabel) and thing.wordWrap()
        if not folded and thing.width() < thing.minimumSizeHint().width():
            found.append(f"{thing.text()} ({thing.width()} of {thing.minimumSizeHint().width()})")
    return found


def drive(desk):
    from yardwright.desk.dates import day_in, rasters_without_date, take_up
    from yardwright.desk.dates_panel import TakeUpDialog
    from yardwright.desk.measure_dialog import MeasureDialog
    from yardwright.desk.toolbar import CourseTools

    yield 800
    bar = iface.mainWindow().findChild(QToolBar, "yardwright_toolbar")
    drawing = iface.mainWindow().findChild(QToolBar, "yardwright_drawing")
    tools = iface.mainWindow().findChild(CourseTools)
    desk.result["first"] = said(bar)
    for path in os.environ["YARDWRIGHT_IMAGES"].split(os.pathsep):
        QgsProject.instance().addMapLayer(QgsRasterLayer(path, os.path.basename(path)))
    tools.add_course(os.environ["YARDWRIGHT_COURSE"])
    for layer in rasters_without_date(tools.in_hand)[1:]:
        take_up(tools.in_hand, layer, day_in(layer), "Ada Lund")
    yield 800
    said_by, no_room = {"toolbar": said(bar), "drawing": said(drawing), "menu": said(tools.menu)}, {}
    for name in ("hole_panel", "dates_panel", "checks_panel"):
        panel = tools.panel(name)
        panel.setUserVisible(True)
        panel.raise_()
        iface.mainWindow().resizeDocks([panel], [340], 1)
        yield 1500
        said_by[name], no_room[name] = said(panel), cramped(panel)
        desk.shot(name)
        if name == "dates_panel":
            panel.list.setCurrentItem(panel.list.topLevelItem(panel.list.topLevelItemCount() - 1))
            desk.later(panel._ask_date)
            yield 700
            dialog = desk.top_window()
            said_by["take_up"], no_room["take_up"] = said(dialog), cramped(dialog)
            desk.result["asks"] = isinstance(dialog, TakeUpDialog)
            desk.shot("take_up", dialog)
            dialog.reject()
            yield 300
        panel.setUserVisible(False)
    tools.measure()
    yield 1500
    window = iface.mainWindow().findChild(MeasureDialog)
    for tab in range(window.tabs.count()):
        window.tabs.setCurrentIndex(tab)
        yield 300
        view = window.tabs.currentWidget()
        if isinstance(view, QTableView) and view.model().rowCount():
            view.selectRow(0)
            yield 200
        desk.shot(f"measure_{tab}", window)
    said_by["measure"], no_room["measure"] = said(window), cramped(window)
    window.close()
    yield 300
    for name, opened in (
        ("guide", tools.actions["make_guide"].trigger),
        ("description", tools.panel("hole_panel").describe),
    ):
        opened()
        yield 2500
        (window,) = iface.mainWindow().findChildren(QDialog, f"yardwright_{name}")
        said_by[name], no_room[name] = said(window), cramped(window)
        desk.shot(name, window)
        window.close()
        yield 300
    for name in ("startcourse", "importfeatures", "checkmarkers", "exportwindows"):
        tools.run_algorithm(name)
        yield 900
        dialog = tools._windows[-1]
        said_by[name] = said(dialog)
        desk.shot(name, dialog)
        dialog.close()
        yield 300
    desk.result["said"], desk.result["no_room"] = said_by, no_room


desktop_drive.run(drive)
