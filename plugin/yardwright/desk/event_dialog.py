"""Asks for a new event: its name, its days, and whether it is like the one in hand."""

from qgis.PyQt.QtCore import QDate, Qt
from qgis.PyQt.QtWidgets import (
    QCheckBox,
    QDateEdit,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QLineEdit,
    QSpinBox,
)

from .words import tr


def ask_event(parent, before=None):
    """``(Event, name of the event it is a copy of or "")``; None when nobody will say.

    before: the model Event in hand, which may be copied. A copy has its rounds, flights, lengths and limits
    and none of its pins.
    """
    dialog = _EventDialog(parent, before)
    if dialog.exec() != QDialog.DialogCode.Accepted:
        return None
    return dialog.asked(), (before.name if before is not None and dialog.copy.isChecked() else "")


class _EventDialog(QDialog):
    def __init__(self, parent, before):
        super().__init__(parent)
        self.setObjectName("yardwright_new_event")
        self.setWindowTitle(tr("New event"))
        self.name = QLineEdit(self)
        self.name.textChanged.connect(lambda text: self._enable())
        self.begins = QDateEdit(QDate.currentDate(), self)
        self.begins.setCalendarPopup(True)
        self.begins.setDisplayFormat("yyyy-MM-dd")
        self.rounds = QSpinBox(self)
        self.rounds.setRange(1, 12)
        self.copy = QCheckBox(self)
        self.copy.setVisible(before is not None)
        if before is not None:
            self.copy.setText(tr("Rounds, flights, lengths and limits as in “{}”").format(before.name))
        self.copy.toggled.connect(lambda on: self.rounds.setEnabled(not on))
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel, self
        )
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
        form = QFormLayout(self)
        form.addRow(tr("Name"), self.name)
        form.addRow(tr("First day"), self.begins)
        form.addRow(tr("Rounds"), self.rounds)
        form.addRow(self.copy)
        form.addRow(self.buttons)
        self._enable()

    def _enable(self):
        self.buttons.button(QDialogButtonBox.StandardButton.Ok).setEnabled(bool(self.name.text().strip()))

    def asked(self):
        """The model Event that was asked for; the rounds are played day after day."""
        from ..model.event import Event, Round

        first = self.begins.date()
        days = [first.addDays(n).toString(Qt.DateFormat.ISODate) for n in range(self.rounds.value())]
        rounds = tuple(Round(number, day) for number, day in enumerate(days, start=1))
        return Event(self.name.text().strip(), days[0], days[-1], rounds)
