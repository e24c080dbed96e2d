"""Shows what the committee's lengths would become before any of them is taken over."""

from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QLabel,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
)

from .length_table import figure, verdict_text
from .words import tr


def ask_lengths(parent, in_hand, event, source):
    """``(Flights that are new, AskedLengths)`` of the committee that the user wants; both empty for none.

    source: the path of a file, or the text of copied rows.
    """
    good, bad, flights = read_given(in_hand, event, source)
    dialog = LengthsDialog(parent, good, bad, in_hand.course().settings.unit)
    if dialog.exec() != QDialog.DialogCode.Accepted:
        return (), []
    return flights, [asked for asked, _ in good]


def read_given(in_hand, event, source):
    """``(good, bad, flights)``: ``[(AskedLength, TeeSettingRow)]`` of what can be used, ``[(line, reason)]``
    of what cannot, and the Flights that the event does not have yet."""
    from dataclasses import replace

    from ..measure.tee_setting import flights_of, set_tees, tee_set_names
    from ..store.committee import read_lengths

    course = in_hand.course()
    rounds = [one.number for one in event.rounds] or None
    names = None
    if event.flights:
        names = [*tee_set_names(course), *(flight.name for flight in event.flights)]
    holes = [hole.number for hole in course.holes]
    lengths, bad = read_lengths(source, course.settings.unit, holes, rounds, names)
    lengths, not_played = (
        [one for one in lengths if event.plays(one.round, one.hole) is played] for played in (True, False)
    )
    bad = [*bad]
    for one in not_played:
        bad.append((one.line, tr("round {} does not play hole {}").format(one.round, one.hole)))
    known = {flight.name.casefold() for flight in event.flights}
    flights = flights_of(course, dict.fromkeys(a.flight for a in lengths if a.flight.casefold() not in known))
    lengths = sorted(lengths, key=lambda one: (one.round, one.flight, one.hole))
    rows = set_tees(course, replace(event, flights=(*event.flights, *flights)), lengths, in_hand.index())
    return list(zip(lengths, rows)), sorted(bad), flights


class LengthsDialog(QDialog):
    """Lists lengths and refused lines; OK is there only when something can be taken over."""

    def __init__(self, parent, good, bad, unit):
        super().__init__(parent)
        self.setObjectName("yardwright_bring_lengths")
        self.setWindowTitle(tr("The committee’s lengths"))
        self.resize(620, 560)
        self.list = QTreeWidget(self)
        self.list.setRootIsDecorated(False)
        self.list.setAlternatingRowColors(True)
        self.list.setAccessibleName(tr("Lengths read"))
        self.list.setWhatsThis(tr("What was read, line by line, and what the tee allows of it."))
        self.list.setHeaderLabels(
            [tr("Line"), tr("Round"), tr("Flight"), tr("Hole"), tr("Length"), tr("Verdict")]
        )
        lines = [
            (
                asked.line or 0,
                str(asked.round),
                asked.flight,
                str(asked.hole),
                figure(asked.length, unit),
                verdict_text(row, unit),
                row.remark,
            )
            for asked, row in good
        ] + [(line or 0, "", "", "", "", tr("left out: {}").format(reason), reason) for line, reason in bad]
        for line, *texts, remark in sorted(lines):
            item = QTreeWidgetItem([str(line), *texts])
            item.setToolTip(5, remark)
            if not texts[0]:
                font = item.font(5)
                font.setBold(True)
                item.setFont(5, font)
            self.list.addTopLevelItem(item)
        for column in range(5):
            self.list.resizeColumnToContents(column)
        head = QLabel(self)
        head.setWordWrap(True)
        head.setText(
            tr("{} lengths can be taken over, {} lines cannot. Nothing is written yet.").format(
                len(good), len(bad)
            )
        )
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel, self)
        take = buttons.addButton(tr("Take them over"), QDialogButtonBox.ButtonRole.AcceptRole)
        take.setToolTip(tr("Puts them into the table of lengths"))
        take.setEnabled(bool(good))
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        layout = QVBoxLayout(self)
        layout.addWidget(head)
        layout.addWidget(self.list, 1)
        layout.addWidget(buttons)
        self.setWindowFlag(Qt.WindowType.WindowContextHelpButtonHint, False)
