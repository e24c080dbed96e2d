"""The settings of an event on one surface: its days, its rounds, and what is to be kept."""

from dataclasses import replace

from qgis.PyQt.QtCore import Qt, pyqtSignal
from qgis.PyQt.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDoubleSpinBox,
    QFormLayout,
    QGroupBox,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QPushButton,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from ..model.event import STARTS
from .words import tr

DAY, HOLES, START = range(3)
_FIELDS = {DAY: "played_on", HOLES: "holes"}


class EventSettings(QWidget):
    """Changes an EventDraft. course_holes: the numbers there are; told_in: a context that tells errors.

    Signal ``changed``: something of the draft is another.
    """

    changed = pyqtSignal()

    def __init__(self, draft, course_holes, unit, told, parent=None):
        super().__init__(parent)
        self.draft, self.course_holes, self.unit, self._told = draft, course_holes, unit, told
        self._filling = False
        self._build()
        self.show_draft()

    def _build(self):
        self.name = QLabel(self)
        self.name.setTextFormat(Qt.TextFormat.PlainText)
        self.days = {}
        days = QFormLayout()
        days.addRow(tr("Event"), self.name)
        for field, title in (("begins", tr("First day")), ("ends", tr("Last day"))):
            edit = self.days[field] = QLineEdit(self)
            edit.setPlaceholderText(tr("year-month-day"))
            edit.setAccessibleName(title)
            edit.setToolTip(tr("Such as 2026-05-02; it may be left empty"))
            edit.setWhatsThis(edit.toolTip())
            edit.editingFinished.connect(lambda field=field: self._day_typed(field))
            days.addRow(title, edit)
        self.host = QPlainTextEdit(self)
        self.host.setAccessibleName(tr("Host"))
        self.host.setPlaceholderText(tr("Who invites, in a few lines"))
        self.host.setToolTip(tr("The first line stands on the guide’s cover, all of it on the event’s page"))
        self.host.setWhatsThis(self.host.toolTip())
        self.host.setTabChangesFocus(True)
        self.host.setFixedHeight(4 * self.fontMetrics().lineSpacing())
        self.host.textChanged.connect(self._host_typed)
        days.addRow(tr("Host"), self.host)

        self.rounds = QTableWidget(0, 3, self)
        self.rounds.setHorizontalHeaderLabels([tr("Played on"), tr("Holes in order of play"), tr("Start")])
        self.rounds.setAccessibleName(tr("Rounds"))
        self.rounds.setWhatsThis(
            tr(
                "The rounds. Holes in order of play such as 10-18,1-9; left empty all holes of the course "
                "are played in their own order. Only the holes of a round get pins, tees and a place on its "
                "sheets."
            )
        )
        self.rounds.horizontalHeader().setSectionResizeMode(HOLES, QHeaderView.ResizeMode.Stretch)
        self.rounds.horizontalHeader().setSectionResizeMode(START, QHeaderView.ResizeMode.ResizeToContents)
        self.rounds.setSelectionBehavior(QTableWidget.SelectionBehavior.SelectRows)
        self.rounds.itemChanged.connect(self._cell_typed)
        self.add_button = QPushButton(tr("&Add a round"), self)
        self.add_button.setToolTip(tr("Adds the next round, on all holes of the course"))
        self.add_button.clicked.connect(self.add_round)
        self.out_button = QPushButton(tr("Take round &out"), self)
        self.out_button.setToolTip(tr("Takes the round chosen out, with its lengths"))
        self.out_button.clicked.connect(self.take_out_round)
        buttons = QHBoxLayout()
        buttons.addWidget(self.add_button)
        buttons.addWidget(self.out_button)
        buttons.addStretch(1)

        self.limits = {}
        limits = QFormLayout()
        for name, title, tip in (
            (
                "margin",
                tr("Pin to the margin, at least"),
                tr("A pin nearer to the green’s margin is remarked"),
            ),
            ("apart", tr("Pins of two rounds apart, at least"), tr("Pins of one green nearer are remarked")),
            ("slope_pct", tr("Slope at a pin, at most"), tr("A pin on steeper ground is remarked")),
            ("tolerance", tr("Audit: the same up to"), tr("Pins so little apart count as the same")),
            (
                "wear",
                tr("Tee markers of two rounds apart, at least"),
                tr("Markers move across the tee to keep clear of the worn places of earlier rounds"),
            ),
        ):
            box = self.limits[name] = QDoubleSpinBox(self)
            box.setRange(0.0, 100.0)
            box.setDecimals(2 if name == "tolerance" else 1)
            box.setSingleStep(0.1 if name == "tolerance" else 0.5)
            box.setSuffix(" %" if name == "slope_pct" else f" {self.unit}")
            if name in ("slope_pct", "wear"):
                box.setSpecialValueText(tr("no limit"))
            box.setAccessibleName(title)
            box.setToolTip(tip)
            box.setWhatsThis(tip)
            box.valueChanged.connect(lambda value, name=name: self._limit_set(name, value))
            limits.addRow(title, box)
        kept = QGroupBox(tr("What is to be kept"), self)
        kept.setLayout(limits)

        self.rules = {}
        rules = QVBoxLayout()
        rules.setAlignment(Qt.AlignmentFlag.AlignTop)
        for rule, title in (
            ("green_scale", tr("A green is shown no larger than 1:480")),
            ("page_size", tr("A page with a green measures no more than 107.95 × 177.8 mm")),
        ):
            box = self.rules[rule] = QCheckBox(title, self)
            box.setToolTip(
                tr("Rules of Golf, Rule 4.3a. While it is ticked, no guide that breaks it is written.")
            )
            box.setWhatsThis(box.toolTip())
            box.toggled.connect(lambda on, rule=rule: self._rule_set(rule, on))
            rules.addWidget(box)
        on_pages = QGroupBox(tr("Rules that the guide keeps"), self)
        on_pages.setLayout(rules)

        layout = QVBoxLayout(self)
        layout.addLayout(days)
        layout.addWidget(self.rounds, 1)
        layout.addLayout(buttons)
        groups = QHBoxLayout()
        groups.addWidget(kept, 1)
        groups.addWidget(on_pages, 1)
        layout.addLayout(groups)

    def show_draft(self):
        """Show what the draft says now."""
        self._filling = True
        try:
            self.name.setText(self.draft.stored.name)
            for field, edit in self.days.items():
                edit.setText(self.draft.shown(None, field))
            self.host.setPlainText(self.draft.host)
            for rule, box in self.rules.items():
                box.setChecked(rule not in self.draft.rules_off)
            self.rounds.setRowCount(0)
            for number in self.draft.rounds:
                self._add_row(number)
            for name, box in self.limits.items():
                box.setValue(self._limit_shown(name))
        finally:
            self._filling = False
        self.out_button.setEnabled(bool(self.draft.rounds))

    def _add_row(self, number):
        row = self.rounds.rowCount()
        self.rounds.insertRow(row)
        self.rounds.setVerticalHeaderItem(row, QTableWidgetItem(tr("Round {}").format(number)))
        for column, field in _FIELDS.items():
            self.rounds.setItem(row, column, QTableWidgetItem(self.draft.shown(number, field)))
            self._mark(row, column, number, field)
        box = QComboBox(self.rounds)
        box.setAccessibleName(tr("Start of round {}").format(number))
        box.setToolTip(tr("Where groups start; it changes no figure"))
        for start, word in zip(STARTS, (tr("one tee"), tr("two tees"), tr("shotgun"))):
            box.addItem(word, start)
        box.setCurrentIndex(max(0, box.findData(self.draft.rounds[number].start)))
        box.activated.connect(lambda _, box=box, number=number: self._start_set(number, box.currentData()))
        self.rounds.setCellWidget(row, START, box)

    def _mark(self, row, column, number, field):
        """What is not understood stands in bold, with the reason as its tip."""
        item = self.rounds.item(row, column)
        _, reason = self.draft.texts.get((number, field), ("", ""))
        item.setToolTip(reason)
        font = item.font()
        font.setBold(bool(reason))
        item.setFont(font)

    # What the user does

    def _number_of(self, row):
        return list(self.draft.rounds)[row]

    def _cell_typed(self, item):
        if self._filling or item.column() not in _FIELDS:
            return
        number, field = self._number_of(item.row()), _FIELDS[item.column()]
        self.draft.type(number, field, item.text(), self.course_holes)
        self._filling = True
        try:
            self._mark(item.row(), item.column(), number, field)
        finally:
            self._filling = False
        self.changed.emit()

    def _start_set(self, number, start):
        self.draft.type(number, "start", start)
        self.changed.emit()

    def _day_typed(self, field):
        text = self.days[field].text()
        if text != self.draft.shown(None, field):
            self.draft.type(None, field, text)
            self.changed.emit()

    def _host_typed(self):
        if not self._filling:
            self.draft.host = self.host.toPlainText()
            self.changed.emit()

    def _rule_set(self, rule, on):
        if not self._filling:
            off = [one for one in self.draft.rules_off if one != rule]
            self.draft.rules_off = tuple(off if on else [*off, rule])
            self.changed.emit()

    def _limit_shown(self, name):
        from ..measure.units import to_unit

        value = getattr(self.draft.limits, name)
        if name == "slope_pct":
            return value or 0.0
        return to_unit(value, self.unit)

    def _limit_set(self, name, value):
        from ..measure.units import UNITS

        if self._filling:
            return
        value = (value or None) if name == "slope_pct" else value * UNITS[self.unit]
        self.draft.limits = replace(self.draft.limits, **{name: value})
        self.changed.emit()

    def add_round(self):
        """Add the next round."""
        self.draft.add_round()
        self.show_draft()
        self.rounds.selectRow(self.rounds.rowCount() - 1)
        self.changed.emit()

    def take_out_round(self):
        """Take the round chosen out, the last without."""
        if not self.draft.rounds:
            return
        row = self.rounds.currentRow()
        with self._told():
            self.draft.take_out_round(self._number_of(row if row >= 0 else self.rounds.rowCount() - 1))
        self.show_draft()
        self.changed.emit()
