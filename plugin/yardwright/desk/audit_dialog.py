"""The committee's figures beside the pins that are drawn: listed, decided on pin by pin, taken over.

The window stays open while the map is used, and follows what is drawn there.
"""

import os

from qgis.core import Qgis, QgsSettings
from qgis.gui import QgsGui, QgsMessageBar
from qgis.PyQt.QtCore import QItemSelectionModel, QPoint, QRect, Qt, pyqtSignal
from qgis.PyQt.QtWidgets import (
    QAbstractItemView,
    QCheckBox,
    QDialog,
    QDialogButtonBox,
    QFileDialog,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QMessageBox,
    QPushButton,
    QSizePolicy,
    QTabWidget,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from ..measure.units import to_unit
from ..model.errors import YardwrightError
from ..resources import icon
from ..store.tables import safe_file_name
from .auditing import OURS, THEIRS, Audit
from .committee_figures import ask_file, copied_rows
from .listening import Listening
from .map_marks import PinPair, step_aside
from .turning import look_at, on_map
from .words import tell, tell_done, told_in, tr

_DECIDED_BY = "yardwright/audit_decided_by"
_LINE = Qt.ItemDataRole.UserRole
ROUND, HOLE, GIVEN, DRAWN, APART, VERDICT, DEPTH, SLOPE, DECISION, REMARK = range(10)


def audit(parent, in_hand, event, layers_to_write):
    """Open the window on an Event, or bring the one that is open to the front; the AuditDialog.

    in_hand: the CourseInHand. layers_to_write: a function that gives its CourseLayers, being edited.
    """
    for dialog in parent.findChildren(AuditDialog):
        if dialog.isVisible() and dialog.audit.name == event.name:
            dialog.raise_()
            dialog.activateWindow()
            return dialog
    dialog = AuditDialog(parent, in_hand, event, layers_to_write)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.show()
    return dialog


class _PinList(QTreeWidget):
    """Rows to choose. Signals ``looked_at`` (a row, by a click, Enter, or keys that move to it),
    ``opened_again`` (by Del)."""

    looked_at = pyqtSignal(QTreeWidgetItem)
    opened_again = pyqtSignal()

    def __init__(self, parent):
        super().__init__(parent)
        self.itemClicked.connect(lambda item, column: self.looked_at.emit(item))

    def keyPressEvent(self, event):
        """Enter shows the row, and does not press a button of the dialog."""
        before = self.currentItem()
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and before is not None:
            self.looked_at.emit(before)
        elif event.key() == Qt.Key.Key_Delete:
            self.opened_again.emit()
        else:
            super().keyPressEvent(event)
            if self.currentItem() is not None and self.currentItem() is not before:
                self.looked_at.emit(self.currentItem())


class AuditDialog(QDialog):
    """The list, the decisions on it, and those taken before. ``audit``: the Audit it shows; ``pair``: what it
    draws on the map of the row the keys are on."""

    def __init__(self, parent, in_hand, event, layers_to_write):
        super().__init__(parent)
        self.setObjectName("yardwright_audit")
        self.setWindowIcon(icon("event_panel"))
        self.setWindowFlag(Qt.WindowType.WindowContextHelpButtonHint, False)
        self.in_hand = in_hand
        self.layers_to_write = layers_to_write
        self.audit = Audit(in_hand, event)
        self.place = in_hand.place
        self.pair = None
        self._seen = None
        self._build()
        self._explain()
        self.resize(900, 500)
        QgsGui.enableAutoGeometryRestore(self)
        self._listening = Listening(
            (in_hand.edited, self._edited),
            (in_hand.course_changed, self._course_changed),
            (in_hand.iface.mapCanvas().destinationCrsChanged, self._draw_pair),
        )
        self.finished.connect(lambda _: self.let_go())
        with told_in(self.bar):
            self._fill_earlier()
        self._fill()

    def let_go(self):
        """Listen to nothing any more, and clear the map."""
        self._listening.stop()
        self._seen = None
        self._draw_pair()

    # Keeping up

    def _edited(self):
        """Something of the course or the event was changed elsewhere."""
        with told_in(self.bar):
            if self.audit.is_there():
                self.audit.look_again()
                self._fill_earlier()
        self._fill()

    def _course_changed(self):
        """Another course, or none: the audit goes with its own."""
        if self.in_hand.place != self.place:
            self.reject()
        else:
            self._edited()

    # The surface

    def _build(self):
        self.bar = QgsMessageBar(self)
        self.bar.setSizePolicy(QSizePolicy.Policy.Minimum, QSizePolicy.Policy.Fixed)
        self.file_button = self._button(tr("Read a &file…"), self.ask_file)
        self.paste_button = self._button(tr("Take copied &rows"), self.paste)
        self.all_box = QCheckBox(tr("Show those that a&gree too"), self)
        self.all_box.toggled.connect(lambda on: self._fill())
        self.head = QLabel(self)
        self.head.setWordWrap(True)
        self.head.setTextFormat(Qt.TextFormat.PlainText)
        self.list = self._list(
            _PinList(self),
            tr("Pins"),
            [
                tr("Round"),
                tr("Hole"),
                tr("Theirs"),
                tr("Ours"),
                tr("Apart"),
                tr("Verdict"),
                tr("Green deep, theirs / ours"),
                tr("Slope at ours"),
                tr("Decision"),
                tr("Remark"),
            ],
        )
        self.list.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.list.looked_at.connect(self._show_on_map)
        self.list.opened_again.connect(lambda: self._decide_chosen(None))
        self.list.itemSelectionChanged.connect(self._enable)
        self.list.currentItemChanged.connect(lambda item, _: self._tell_remark(item))
        self.remark = QLabel(self)
        self.remark.setWordWrap(True)
        self.remark.setTextFormat(Qt.TextFormat.PlainText)
        self.remark.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.remark.hide()

        self.theirs_button = self._button(tr("Take &theirs"), lambda: self._decide_chosen(THEIRS))
        self.ours_button = self._button(tr("Keep &ours"), lambda: self._decide_chosen(OURS))
        self.open_button = self._button(tr("&Leave open"), lambda: self._decide_chosen(None))
        self.all_theirs_button = self._button(
            tr("T&heirs for all that can be"), lambda: self._decide_all(THEIRS)
        )
        self.all_ours_button = self._button(tr("Ours for &all"), lambda: self._decide_all(OURS))
        self.by = QLineEdit(str(QgsSettings().value(_DECIDED_BY, "") or ""), self)
        self.by.setPlaceholderText(tr("Name"))
        self.by.setAccessibleName(tr("Decided by"))
        self.by.textChanged.connect(lambda text: self._enable())

        self.earlier = self._list(
            QTreeWidget(self),
            tr("Earlier decisions"),
            [
                tr("When"),
                tr("Round"),
                tr("Hole"),
                tr("Decided"),
                tr("Decided by"),
                tr("Theirs"),
                tr("Ours until then"),
            ],
        )
        self.tabs = QTabWidget(self)
        self.tabs.setDocumentMode(True)
        self.tabs.addTab(self._pins_tab(), tr("Pins"))
        self.tabs.addTab(self.earlier, tr("Earlier decisions"))

        self.table_button = self._button(tr("Save ta&ble…"), self.ask_table)
        self.sheet_button = self._button(tr("Save &sheet…"), self.ask_sheet)
        self.buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close, self)
        self.buttons.addButton(self.table_button, QDialogButtonBox.ButtonRole.ActionRole)
        self.buttons.addButton(self.sheet_button, QDialogButtonBox.ButtonRole.ActionRole)
        self.apply_button = self.buttons.addButton(tr("A&pply"), QDialogButtonBox.ButtonRole.ApplyRole)
        self.apply_button.clicked.connect(lambda: self._do(self.apply))
        self.buttons.rejected.connect(self.reject)
        # Enter shows a green on the map: it must not press a button meanwhile.
        for button in self.findChildren(QPushButton):
            button.setAutoDefault(False)
            button.setDefault(False)

        layout = QVBoxLayout(self)
        layout.addWidget(self.bar)
        layout.addLayout(_row(self.file_button, self.paste_button, None, self.all_box))
        layout.addWidget(self.head)
        layout.addWidget(self.tabs, 1)
        layout.addWidget(self.buttons)

    def _pins_tab(self):
        tab = QWidget(self)
        layout = QVBoxLayout(tab)
        layout.setContentsMargins(0, 6, 0, 0)
        layout.addWidget(self.list, 1)
        layout.addWidget(self.remark)
        layout.addLayout(
            _row(
                self.theirs_button,
                self.ours_button,
                self.open_button,
                None,
                self.all_theirs_button,
                self.all_ours_button,
            )
        )
        form = QFormLayout()
        form.addRow(tr("&Decided by"), self.by)
        layout.addLayout(form)
        return tab

    def _button(self, text, doing):
        button = QPushButton(text, self)
        button.clicked.connect(lambda: self._do(doing))
        return button

    def _list(self, tree, name, headings):
        tree.setAccessibleName(name)
        tree.setRootIsDecorated(False)
        tree.setUniformRowHeights(True)
        tree.setAlternatingRowColors(True)
        tree.setAllColumnsShowFocus(True)
        tree.setHeaderLabels(headings)
        return tree

    def _explain(self):
        for thing, text in (
            (self.file_button, tr("Reads the committee’s figures from a CSV file. Nothing is written.")),
            (
                self.paste_button,
                tr("Reads rows that were copied from a spreadsheet, their headings with them."),
            ),
            (self.all_box, tr("Only what differs is listed otherwise.")),
            (self.theirs_button, tr("The committee’s figures are to be drawn for the rows chosen.")),
            (self.ours_button, tr("What is drawn is to stay for the rows chosen; the log says so.")),
            (self.open_button, tr("Nothing is decided on the rows chosen.")),
            (
                self.all_theirs_button,
                tr("The committee’s figures wherever a green can have them and nothing was decided before."),
            ),
            (
                self.all_ours_button,
                tr("What is drawn stays wherever it differs and nothing was decided before."),
            ),
            (self.by, tr("Who decides; it stands in the log beside each decision.")),
            (self.earlier, tr("What was decided on this event’s pins, the last decision first.")),
            (self.table_button, tr("Saves the whole audit as pin_audit.csv in a folder.")),
            (
                self.sheet_button,
                tr("Saves the greens with their pins, as they are drawn now, as PDF for the committee."),
            ),
            (
                self.list,
                tr(
                    "The committee’s figures and ours. The row that is clicked, or reached by keys, "
                    "is shown on the map: both pins, and how far apart they are. Del leaves what is chosen "
                    "open."
                ),
            ),
        ):
            thing.setWhatsThis(text)
            if thing not in (self.list, self.earlier):
                thing.setToolTip(text)

    # What is shown

    def _fill(self):
        """The list anew; what was chosen stays chosen, and the keys stay where they were."""
        self.setWindowTitle(tr("Audit of the pins of “{}”").format(self.audit.name))
        chosen = {line.key for line in self._chosen()}
        current = self.list.currentItem() and self.list.currentItem().data(0, _LINE)
        self.list.blockSignals(True)
        self.list.clear()
        shown = [line for line in self.audit.lines if self.all_box.isChecked() or _worth_showing(line)]
        for line in shown:
            item = self._item(line)
            self.list.addTopLevelItem(item)
            if current is not None and line.key == current.key:
                self.list.setCurrentItem(item, 0, QItemSelectionModel.SelectionFlag.NoUpdate)
            item.setSelected(line.key in chosen)
        for number, reason in self.audit.bad:
            text = tr("line {} of the committee’s: {}").format(number, reason)
            item = QTreeWidgetItem(["", "", "", "", "", tr("✕ not read"), "", "", "", text])
            item.setToolTip(REMARK, text)
            self.list.addTopLevelItem(item)
        self.list.blockSignals(False)
        self._tell_remark(self.list.currentItem())
        self.list.setColumnHidden(SLOPE, not any(line.slope for line in self.audit.lines))
        _fit_columns(self.list)
        self.head.setText(self._told())
        self.tabs.setEnabled(self.audit.is_there())
        self._enable()
        self._draw_pair()

    def _item(self, line):
        row, unit = line.row, self.audit.unit
        item = QTreeWidgetItem(
            [
                str(row.round),
                str(row.hole),
                line.theirs,
                line.ours,
                _length(row.apart, unit),
                verdict_word(row.verdict),
                _depths(row, unit),
                line.slope,
                self._decision_word(line),
                row.remark,
            ]
        )
        item.setData(0, _LINE, line)
        for column in (APART, DEPTH):
            item.setTextAlignment(column, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        if row.remark:
            item.setToolTip(REMARK, row.remark)
        if line.differs:
            self._bold(item, VERDICT)
        if line.key in self.audit.decided and line.differs:
            self._bold(item, DECISION)
        return item

    def _bold(self, item, column):
        font = self.list.font()
        font.setBold(True)
        item.setFont(column, font)

    def _decision_word(self, line):
        if not line.differs:
            return ""
        side = self.audit.decided.get(line.key)
        if side is not None:
            return decision_word(side)
        if line.earlier is not None:
            return tr("before: {}").format(decision_word(line.earlier.decided))
        return tr("open")

    def _told(self):
        audit = self.audit
        if not audit.is_there():
            return tr(
                "The course has no event “{}” any more, so there is nothing to compare. Undo its removal, or "
                "close this window."
            ).format(audit.name)
        if not audit.was_read:
            return tr(
                "Nothing is read yet. Read the committee’s file, or copy its rows in a spreadsheet and take "
                "them: round, hole, on, off, from, and green_depth if they have it."
            )
        differing = sum(line.differs for line in audit.lines)
        texts = [
            tr("{} pins compared, {} differ. Nothing is written before Apply.").format(
                len(audit.lines), differing
            )
        ]
        if audit.bad:
            texts.append(
                tr(
                    "Lines that could not be read: {}. Pins that look as if nobody had asked for them are "
                    "therefore not taken out with all the others."
                ).format(len(audit.bad))
            )
        if audit.left_aside:
            texts.append(
                tr("The committee says nothing of these rounds, whose pins are left aside: {}.").format(
                    ", ".join(map(str, audit.left_aside))
                )
            )
        return " ".join(texts)

    def _tell_remark(self, item):
        """The whole remark of the row the keys are on, below the list."""
        text = "" if item is None else item.text(REMARK)
        self.remark.setText(text)
        self.remark.setVisible(bool(text))

    def _fill_earlier(self):
        self.earlier.clear()
        for one in self.audit.decisions():
            when = one.at.replace("T", " ")[:16]
            texts = [when, str(one.round), str(one.hole), decision_word(one.decided), one.by]
            item = QTreeWidgetItem([*texts, one.given or "–", one.drawn or "–"])
            self.earlier.addTopLevelItem(item)
        _fit_columns(self.earlier)

    def _enable(self):
        chosen = [line for line in self._chosen() if line.differs]
        self.theirs_button.setEnabled(any(line.may_be_theirs for line in chosen))
        self.ours_button.setEnabled(bool(chosen))
        self.open_button.setEnabled(any(line.key in self.audit.decided for line in chosen))
        self.all_theirs_button.setEnabled(any(line.may_be_theirs for line in self.audit.all_for(THEIRS)))
        self.all_ours_button.setEnabled(any(line.differs for line in self.audit.all_for(OURS)))
        there = self.audit.is_there()
        for thing in (self.file_button, self.paste_button, self.sheet_button):
            thing.setEnabled(there)
        self.all_box.setEnabled(self.audit.was_read and there)
        self.table_button.setEnabled(self.audit.was_read and there)
        why = (
            tr("Nothing is decided yet.")
            if not self.audit.decided or not there
            else ""
            if self.by.text().strip()
            else tr("Say who decided first.")
        )
        self.apply_button.setEnabled(not why)
        self.apply_button.setToolTip(
            why
            or tr("Draws what was decided and logs each decision; it can be undone, and is not saved yet.")
        )

    def _chosen(self):
        lines = [item.data(0, _LINE) for item in self.list.selectedItems()]
        return [line for line in lines if line is not None]

    # Doing

    def _do(self, doing):
        self.bar.clearWidgets()
        with told_in(self.bar):
            doing()

    def ask_file(self):
        """Ask for the committee's file, and audit what is in it."""
        path = ask_file(self, tr("The committee’s pins"))
        if path:
            self.read(path)

    def paste(self):
        """Audit the rows that lie on the clipboard."""
        self.read(copied_rows())

    def read(self, source):
        """Audit the committee's figures: the path of a file, or the text of copied rows."""
        self.audit.read(source)
        self.tabs.setCurrentIndex(0)
        self._fill()

    def _decide_chosen(self, side):
        self.audit.decide(self._chosen(), side)
        self._fill()

    def _decide_all(self, side):
        self.audit.decide(self.audit.all_for(side), side)
        self._fill()

    def apply(self):
        """Write what was decided, and audit the same figures again."""
        by = self.by.text().strip()
        taken, kept, step = self.audit.apply(self.layers_to_write, by)
        QgsSettings().setValue(_DECIDED_BY, by)
        self._fill_earlier()
        self._fill()
        text = tr("{} of the committee’s were taken over, {} of ours kept.").format(taken, kept)
        tell_done(self.bar, text, tr("Save the layers to keep it."), step)

    def _show_on_map(self, item):
        line = item.data(0, _LINE)
        if line is not None:
            self._do(lambda: self.show_green(line))

    def show_green(self, line):
        """Take the hole and round of an AuditLine in hand, and show its green, the approach up."""
        played = self.in_hand.played(line.row.hole)
        if played is None:
            raise YardwrightError(
                tr("Hole {} has no line of play, so it cannot be looked at.").format(line.row.hole),
                tr("Draw the line from tee to green in the layer “Line of play”, or bring features in."),
            )
        self.in_hand.choose_event(self.audit.name, line.row.round)
        self.in_hand.choose_hole(line.row.hole)
        canvas = self.in_hand.iface.mapCanvas()
        look_at(canvas, self.in_hand.layers().crs, played, "approach")
        self._seen = line
        self._draw_pair()
        step_aside(self, QRect(canvas.mapToGlobal(QPoint(0, 0)), canvas.size()))

    def _draw_pair(self):
        """Both pins of the row that was looked at last, as they lie now; none where it is gone."""
        canvas = self.in_hand.iface.mapCanvas()
        line = self._line_seen()
        if line is None:
            if self.pair is not None:
                canvas.scene().removeItem(self.pair)
                self.pair = None
            return
        if self.pair is None:
            self.pair = PinPair(canvas)
        theirs, ours = (on_map(self.in_hand, place) for place in (line.theirs_at, line.ours_at))
        self.pair.lay(theirs, ours, _length(line.row.apart, self.audit.unit))

    def _line_seen(self):
        """The AuditLine that was looked at last, as it is now; None without. Of several for one round and
        hole the one with the same figures of the committee's, else the first."""
        if self._seen is None or not self.audit.is_there():
            return None
        lines = [line for line in self.audit.lines if line.key == self._seen.key]
        alike = (line for line in lines if line.theirs == self._seen.theirs)
        return next(alike, None) or next(iter(lines), None)

    # Saving

    def ask_table(self):
        """Ask for a folder, and save the audit there."""
        folder = QFileDialog.getExistingDirectory(self, tr("Choose a folder for the tables"))
        if folder and self._may_replace(os.path.join(folder, "pin_audit.csv")):
            self._tell_saved(self.audit.write_table(folder))

    def _may_replace(self, path):
        if not os.path.exists(path):
            return True
        text = tr("“{}” is there already. Replace it?").format(path)
        answer = QMessageBox.question(self, tr("Replace the file?"), text)
        return answer == QMessageBox.StandardButton.Yes

    def ask_sheet(self):
        """Ask for a file, and save the sheet of the greens to be checked there."""
        name = f"{safe_file_name(self.audit.name)}.pdf"
        path, _ = QFileDialog.getSaveFileName(self, tr("The sheet to check"), name, tr("PDF (*.pdf)"))
        if not path:
            return
        if not path.lower().endswith(".pdf"):
            path = f"{path}.pdf"  # about which nobody was asked yet
            if not self._may_replace(path):
                return
        self.audit.write_sheet(path)
        self._tell_saved(path)

    def _tell_saved(self, path):
        tell(self.bar, tr("“{}” was written.").format(path), "", Qgis.MessageLevel.Success)


def verdict_word(verdict):
    """A verdict as a person says it, with a sign that tells it apart without colour."""
    return {
        "same": tr("= agrees"),
        "apart": tr("≠ apart"),
        "missing": tr("+ not drawn"),
        "extra": tr("− not asked for"),
        "impossible": tr("✕ impossible"),
    }.get(verdict, verdict)


def decision_word(decided):
    """A decision as a person says it."""
    return {THEIRS: tr("theirs"), OURS: tr("ours")}.get(decided, decided)


def _worth_showing(line):
    return line.differs or bool(line.row.remark)


def _row(*things):
    """Things beside each other; None is the gap that takes what is left."""
    row = QHBoxLayout()
    for thing in things:
        if thing is None:
            row.addStretch(1)
        else:
            row.addWidget(thing)
    return row


def _fit_columns(tree):
    """Each column as wide as what is in it, with a little room to the next; the last takes the rest."""
    for column in range(tree.columnCount() - 1):
        tree.resizeColumnToContents(column)
        tree.setColumnWidth(column, tree.columnWidth(column) + 10)


def _length(metres, unit):
    return "" if metres is None else f"{to_unit(metres, unit):.1f} {unit}"


def _depths(row, unit):
    """“28 / 27.6”; "" where the committee gives none."""
    if row.given_green_depth is None:
        return ""
    theirs = f"{round(to_unit(row.given_green_depth, unit), 1):g}"
    ours = "–" if row.green_depth is None else f"{to_unit(row.green_depth, unit):.1f}"
    return f"{theirs} / {ours}"
