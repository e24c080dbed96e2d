"""Inside QGIS: what the plugin is and has, when QGIS loaded it at its own start."""

import desktop_drive
from qgis.core import QgsApplication
from qgis.utils import plugins


def drive(desk):
    yield 500
    provider = QgsApplication.processingRegistry().providerById("yardwright")
    desk.result["plugin"] = "yardwright" in plugins
    desk.result["algorithms"] = sorted(a.id() for a in provider.algorithms()) if provider else []
    desk.result["runnable"] = {a.id(): a.canExecute() for a in provider.algorithms()} if provider else {}
    desk.result["icon"] = provider is not None and not provider.icon().isNull()
    desk.shot("started")


desktop_drive.run(drive)
