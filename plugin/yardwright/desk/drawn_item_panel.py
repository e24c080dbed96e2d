"""The panel of a drawn part in QGIS's layout designer: whether it keeps its shape, and where it stands."""

from qgis.core import QgsApplication
from qgis.gui import (
    QgsGui,
    QgsLayoutItemAbstractGuiMetadata,
    QgsLayoutItemBaseWidget,
    QgsLayoutItemPropertiesWidget,
)
from qgis.PyQt.QtWidgets import QCheckBox, QLabel, QVBoxLayout

from ..guide.drawn_item import TYPE
from ..resources import icon
from .words import tr

_NAME = "yardwright_drawn_item_panel"


class DrawnItemPanel(QgsLayoutItemBaseWidget):
    """Shows and changes a DrawnItem."""

    def __init__(self, parent, item):
        super().__init__(parent, item)
        self._item = item
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        self.what = QLabel(f"<b>{item.what}</b>")
        layout.addWidget(self.what)
        self.keeps_shape = QCheckBox(tr("Keep its proportions"))
        self.keeps_shape.setToolTip(
            tr("Off, the drawing is stretched to the item, as a picture beneath it would be.")
        )
        self.keeps_shape.setChecked(item.keeps_shape)
        self.keeps_shape.toggled.connect(self._set_keeps_shape)
        layout.addWidget(self.keeps_shape)
        self.common = QgsLayoutItemPropertiesWidget(self, item)
        layout.addWidget(self.common)
        layout.addStretch(1)

    def setNewItem(self, item):
        """The designer asks whether the panel can show another item of its kind; a new one is simpler."""
        return False

    def _set_keeps_shape(self, keeps):
        self._item.beginCommand(tr("Keep its proportions"))
        self._item.keeps_shape = keeps
        self._item.endCommand()


class _PanelMetadata(QgsLayoutItemAbstractGuiMetadata):
    """How the designer makes the panel. Drawn parts come with their page and are not added by hand."""

    def __init__(self, makes):
        flags = QgsLayoutItemAbstractGuiMetadata.Flag.FlagNoCreationTools
        super().__init__(TYPE, tr("Part of a yardage guide"), "", False, flags)
        self.makes = makes

    def creationIcon(self):
        return icon("yardwright")

    def createItemWidget(self, item):
        return self.makes(None, item)


def register_panel():
    """Let the designer know of the panel. As with the items themselves, QGIS cannot take it away again: what
    was registered makes the panel of the version loaded last."""
    application = QgsApplication.instance()
    registered = application.property(_NAME)
    if registered is not None:
        registered.makes = DrawnItemPanel
        return
    metadata = _PanelMetadata(DrawnItemPanel)
    if QgsGui.layoutItemGuiRegistry().addLayoutItemGuiMetadata(metadata):
        application.setProperty(_NAME, metadata)
