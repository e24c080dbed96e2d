"""Asks for a new event: its name, its days, and whether it is like the one in hand; or for another name."""

from dataclasses import replace

from qgis.PyQt.QtCore import QDate, Qt
from qgis.PyQt.QtWidgets import (
    QCheckBox,
    QDateEdit,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QLabel,
    QLineEdit,
    QSpinBox,
)

from ..model.errors import YardwrightError
from .words import tr


def ask_event(parent, names, before=None):
    """``(Event, name of the event it is a copy of or "")``; None when nobody will say.

    names: those of the events there are, which are refused. before: the model Event in hand, which may be
    copied. A copy has its rounds, flights, lengths and limits and none of its pins.
    """
    dialog = _EventDialog(parent, names, before)
    if dialog.exec() != QDialog.DialogCode.Accepted:
        return None
    return dialog.asked(), (before.name if before is not None and dialog.copy.isChecked() else "")


def moved_to(event, first_day):
    """An Event with all of its days so much later or earlier that it begins on another, an ISO day; one whose
    first day is not known keeps its days, as those that are not known themselves do."""
    first = QDate.fromString(event.begins, Qt.DateFormat.ISODate)
    later = first.daysTo(QDate.fromString(first_day, Qt.DateFormat.ISODate)) if first.isValid() else 0

    def moved(day):
        date = QDate.fromString(day, Qt.DateFormat.ISODate)
        return date.addDays(later).toString(Qt.DateFormat.ISODate) if date.isValid() else day

    rounds = tuple(replace(one, played_on=moved(one.played_on)) for one in event.rounds)
    return replace(event, begins=moved(event.begins), ends=moved(event.ends), rounds=rounds)


def ask_name(parent, names, name):
    """Another name for the event ``name``; "" when nobody will say, or it stays the same."""
    dialog = _NameDialog(parent, [one for one in names if one != name])
    dialog.setObjectName("yardwright_rename_event")
    dialog.setWindowTitle(tr("Rename “{}”").format(name))
    dialog.name.setText(name)
    dialog.name.selectAll()
    accepted = dialog.exec() == QDialog.DialogCode.Accepted
    asked = dialog.name.text().strip()
    return asked if accepted and asked != name else ""


class _NameDialog(QDialog):
    """A name that none of ``names`` is, but for capitals; below it stands why one will not do."""

    def __init__(self, parent, names):
        super().__init__(parent)
        self.names = names
        self.setWindowFlag(Qt.WindowType.WindowContextHelpButtonHint, False)
        self.name = QLineEdit(self)
        self.name.setMinimumWidth(self.fontMetrics().horizontalAdvance("M" * 20))
        self.name.textChanged.connect(lambda text: self._enable())
        self.refusal = QLabel(self)
        self.refusal.setWordWrap(True)
        self.refusal.setTextFormat(Qt.TextFormat.PlainText)
        self.refusal.hide()
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel, self
        )
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
        self.form = QFormLayout(self)
        self.form.addRow(tr("Name"), self.name)
        self.form.addRow(self.refusal)
        self._fill()
        self.form.addRow(self.buttons)
        self._enable()

    def _fill(self):
        """What else is asked."""

    def _enable(self):
        from ..store.events import refuse_name

        try:
            refuse_name(self.name.text(), self.names)
            why = ""
        except YardwrightError as refused:
            why = f"{refused.what} {refused.remedy}"
        self.refusal.setText(why)
        self.refusal.setVisible(bool(why))
        # A label that folds its text is given no more room by itself.
        self.adjustSize()
        ok = self.buttons.button(QDialogButtonBox.StandardButton.Ok)
        ok.setEnabled(bool(self.name.text().strip()) and not why)
        ok.setToolTip(why)


class _EventDialog(_NameDialog):
    def __init__(self, parent, names, before):
        self.before = before
        super().__init__(parent, names)
        self.setObjectName("yardwright_new_event")
        self.setWindowTitle(tr("New event"))

    def _fill(self):
        self.begins = QDateEdit(QDate.currentDate(), self)
        self.begins.setCalendarPopup(True)
        self.begins.setDisplayFormat("yyyy-MM-dd")
        self.rounds = QSpinBox(self)
        self.rounds.setRange(1, 12)
        self.copy = QCheckBox(self)
        self.copy.setVisible(self.before is not None)
        if self.before is not None:
            self.copy.setText(tr("Rounds, flights, lengths and limits as in “{}”").format(self.before.name))
        self.copy.toggled.connect(lambda on: self.rounds.setEnabled(not on))
        self.form.addRow(tr("First day"), self.begins)
        self.form.addRow(tr("Rounds"), self.rounds)
        self.form.addRow(self.copy)

    def asked(self):
        """The model Event that was asked for; the rounds are played day after day."""
        from ..model.event import Event, Round

        first = self.begins.date()
        days = [first.addDays(n).toString(Qt.DateFormat.ISODate) for n in range(self.rounds.value())]
        rounds = tuple(Round(number, day) for number, day in enumerate(days, start=1))
        return Event(self.name.text().strip(), days[0], days[-1], rounds)
