"""Asks what must be known of a raster before it becomes a date of the course."""

from qgis.PyQt.QtCore import QDate, Qt
from qgis.PyQt.QtWidgets import (
    QCheckBox,
    QDateEdit,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QLabel,
    QLineEdit,
)

from .dates import credit_of, day_in, gsd_told, licence_of
from .words import tr


class TakeUpDialog(QDialog):
    """Asks for the day, whom to credit, the licence, and whether it may be printed."""

    def __init__(self, in_hand, layer, parent=None):
        super().__init__(parent)
        self.setObjectName("yardwright_take_up_dialog")
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("Make “{}” a date").format(layer.name()))
        self.layer_id = layer.id()
        layout = QFormLayout(self)
        found = QDate.fromString(day_in(layer), Qt.DateFormat.ISODate)
        self.taken = QDateEdit(found if found.isValid() else QDate.currentDate(), self)
        self.taken.setDisplayFormat("yyyy-MM-dd")
        self.taken.setCalendarPopup(True)
        layout.addRow(tr("&Taken on"), self.taken)
        gsd, note = gsd_told(in_hand, layer)
        self.ground = QLabel(note or tr("{} m a pixel").format(f"{gsd:.3g}") if gsd or note else "–", self)
        self.ground.setWordWrap(True)
        layout.addRow(tr("On the ground"), self.ground)
        self.credit = QLineEdit(credit_of(layer), self)
        self.credit.setPlaceholderText(tr("who is to be named beside it"))
        layout.addRow(tr("&Credit"), self.credit)
        self.licence = QLineEdit(licence_of(layer), self)
        self.licence.setPlaceholderText(tr("what its owner allows, and where that is written"))
        layout.addRow(tr("&Licence"), self.licence)
        self.print_allowed = QCheckBox(tr("It may be &printed"), self)
        self.print_allowed.setToolTip(
            tr("Tick it only where the licence allows pictures on paper. Without, it is for looking at.")
        )
        layout.addRow(self.print_allowed)
        kinds = QDialogButtonBox.StandardButton
        self.buttons = QDialogButtonBox(kinds.Ok | kinds.Cancel, self)
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
        layout.addRow(self.buttons)
        self.setMinimumWidth(420)

    def day(self):
        """The day given, ISO text."""
        return self.taken.date().toString("yyyy-MM-dd")
