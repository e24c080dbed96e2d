"""Inside QGIS: load the plugin and take it away, twice, and say what was there each time."""

import sys
from collections import Counter

import desktop_drive
from qgis.core import QgsApplication, QgsProject
from qgis.PyQt.QtWidgets import QAction, QDockWidget, QMenu, QToolBar, QWidget
from qgis.utils import iface, loadPlugin, plugins, startPlugin, unloadPlugin


def names(kind, text=lambda thing: thing.objectName()):
    return sorted(text(thing) for thing in iface.mainWindow().findChildren(kind))


def state():
    """All that a plugin may have put somewhere, as plain values that can be compared."""
    provider = QgsApplication.processingRegistry().providerById("yardwright")
    return {
        "toolbars": names(QToolBar),
        "panels": names(QDockWidget),
        "menus": names(QMenu, lambda menu: menu.title()),
        "actions": dict(Counter(names(QAction, lambda a: f"{a.objectName()}|{a.text()}"))),
        "widgets": dict(
            Counter(type(widget).__name__ for widget in iface.mainWindow().findChildren(QWidget))
        ),
        "providers": sorted(p.id() for p in QgsApplication.processingRegistry().providers()),
        "algorithms": sorted(a.id() for a in provider.algorithms()) if provider else [],
        "messages": len(iface.messageBar().items()),
        "canvas_items": len(iface.mapCanvas().scene().items()),
        "project_layers": len(QgsProject.instance().mapLayers()),
        "map_tool": type(iface.mapCanvas().mapTool()).__name__,
        "plugin": "yardwright" in plugins,
    }


def drive(desk):
    yield 1500
    desk.result["before"] = state()
    for turn in (1, 2):
        desk.result[f"loaded_{turn}"] = bool(loadPlugin("yardwright") and startPlugin("yardwright"))
        yield 800
        desk.result[f"with_{turn}"] = state()
        desk.result["file"] = sys.modules["yardwright"].__file__
        desk.shot(f"with_{turn}")
        desk.result[f"unloaded_{turn}"] = bool(unloadPlugin("yardwright"))
        yield 800
        desk.result[f"after_{turn}"] = state()
        desk.shot(f"after_{turn}")
    desk.result["modules"] = sorted(name for name in sys.modules if name.split(".")[0] == "yardwright")


desktop_drive.run(drive)
