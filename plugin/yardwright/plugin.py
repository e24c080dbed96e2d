"""What is added to QGIS, and taken away again."""

import sys

from qgis.core import Qgis, QgsApplication, QgsMessageLog

from . import how_to_get, missing_libraries


class YardwrightPlugin:
    """Keeps one list of callables that undo what was added; ``unload`` runs it from the end."""

    def __init__(self, iface):
        self.iface = iface
        self._undo = []

    def initProcessing(self):
        """Add the Processing provider and what layouts need; QGIS calls this alone in ``qgis_process``.

        The user's language comes first of all, for whatever is added has its texts from then on.
        """
        from .guide.drawn_item import register_drawn_item
        from .guide.expressions import add_expressions
        from .processing.provider import YardwrightProvider
        from .translation import speak_users_language

        self._undo.append(speak_users_language())
        register_drawn_item()
        self._undo.append(add_expressions())

        registry = QgsApplication.processingRegistry()
        provider = YardwrightProvider()
        # The registry deletes, and reports in QGIS's log, a provider whose name is taken already.
        if registry.addProvider(provider):
            self._undo.append(lambda: registry.removeProvider(provider))

    def initGui(self):
        """Add everything to the desktop; what was added is taken away again should a part fail."""
        self._undo.append(_forget_modules)
        try:
            self.initProcessing()
            missing = missing_libraries()
            self._add_toolbar()
            if missing:
                self._tell_missing(missing)
        except Exception:
            self.unload()
            raise

    def _add_toolbar(self):
        from .desk.toolbar import add_toolbar

        self._undo.append(add_toolbar(self.iface))

    def unload(self):
        """Take everything away, last added first; one failure does not keep the rest in QGIS."""
        while self._undo:
            undo = self._undo.pop()
            try:
                undo()
            except Exception as error:
                QgsMessageLog.logMessage(
                    f"Something could not be taken away: {error!r}", "Yardwright", Qgis.MessageLevel.Warning
                )

    def _tell_missing(self, missing):
        bar = self.iface.messageBar()
        item = bar.createMessage("Yardwright", " ".join(how_to_get(missing)))
        bar.pushWidget(item, Qgis.MessageLevel.Warning)
        # Once its cross has been clicked the item is gone, and the bar no longer lists it.
        self._undo.append(lambda: item in bar.items() and bar.popWidget(item))


def _forget_modules():
    """Take our modules out of Python's list, or a newer version would meet parts of the old one.

    QGIS does so itself, but misses a package of which only modules inside were imported.
    """
    inside = __package__ + "."
    for name in [name for name in sys.modules if name.startswith(inside)]:
        del sys.modules[name]
