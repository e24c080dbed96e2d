"""Inside QGIS: the plugin where a library is lacking; the warning is left, then closed with the mouse."""

import desktop_drive
from qgis.core import QgsApplication
from qgis.PyQt.QtWidgets import QToolButton
from qgis.utils import iface, loadPlugin, startPlugin, unloadPlugin


def messages():
    return [f"{item.title()} {item.text()}" for item in iface.messageBar().items()]


def drive(desk):
    logged = []
    QgsApplication.messageLog().messageReceived.connect(
        lambda text, tag, level: logged.append(text) if tag == "Yardwright" else None
    )
    yield 1000
    desk.result["before"] = messages()
    for turn in ("left", "closed"):
        loadPlugin("yardwright")
        import yardwright.plugin
        import yardwright.processing.algorithm

        yardwright.plugin.missing_libraries = lambda: ("shapely",)
        yardwright.processing.algorithm.missing_libraries = lambda: ("shapely",)
        desk.result[f"started_{turn}"] = startPlugin("yardwright")
        yield 500
        desk.result[f"with_{turn}"] = messages()
        algorithm = QgsApplication.processingRegistry().createAlgorithmById("yardwright:measurecourse")
        desk.result[f"runnable_{turn}"] = algorithm.canExecute()
        algorithm = None
        if turn == "closed":
            desk.shot("warned")
            buttons = [b for b in iface.messageBar().findChildren(QToolButton) if b.isVisible()]
            desk.click(buttons[-1])
            yield 800
            desk.result["clicked"] = messages()
        desk.result[f"unloaded_{turn}"] = unloadPlugin("yardwright")
        yield 500
        desk.result[f"after_{turn}"] = messages()
    desk.result["logged"] = logged


desktop_drive.run(drive)
