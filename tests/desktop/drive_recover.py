"""Inside QGIS, started after another one was killed: what was not saved put back by a click, then saved."""

import os

import desktop_drive
from drive_kill import KINDS, layer_of, rows
from qgis.core import QgsProject
from qgis.PyQt.QtWidgets import QPushButton
from qgis.utils import iface


def messages():
    return [item.text() for item in iface.messageBar().items() if item.title() == "Yardwright"]


def drive(desk):
    yield 1500
    desk.result["offered"] = messages()
    desk.result["before"] = {kind: rows(kind) for kind in KINDS}
    desk.shot("offered")
    button = iface.messageBar().findChild(QPushButton, "yardwright_put_back")
    if button is not None:
        desk.click(button)
    yield 1000
    desk.result["told"] = messages()
    desk.shot("put_back")
    desk.result["rows"] = {kind: rows(kind) for kind in KINDS}
    desk.result["steps"] = {kind: layer_of(kind).undoStack().count() for kind in KINDS}
    folder = os.path.dirname(os.environ["YARDWRIGHT_COURSE"])
    desk.result["beside"] = sorted(name for name in os.listdir(folder) if "-unsaved" in name)
    for kind in KINDS:
        layer = layer_of(kind)
        if layer.isEditable() and not layer.commitChanges():
            raise RuntimeError(layer.commitErrors())
    desk.result["saved"] = {kind: rows(kind) for kind in KINDS}
    desk.result["left"] = sorted(name for name in os.listdir(folder) if "-unsaved" in name)
    QgsProject.instance().clear()
    yield 300


desktop_drive.run(drive)
