"""Shows what the committee's figures would become before any of it is written."""

from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QLabel,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
)

from .pin_table import side_word
from .words import tr


def ask_pins(parent, in_hand, event, source):
    """``[(Pin, (x, y) in the course's CRS)]`` of the committee's figures that the user wants placed.

    source: the path of a file, or the text of copied rows. Empty when nobody wants them.
    """
    good, bad = read_given(in_hand, event, source)
    dialog = PinsDialog(parent, good, bad, in_hand.course().settings.unit)
    return good if dialog.exec() == QDialog.DialogCode.Accepted else []


def read_given(in_hand, event, source):
    """``(good, bad)``: ``[(Pin, point)]`` of what can be placed, ``[(line, reason)]`` of what cannot."""
    from dataclasses import replace

    from ..measure.pins import pin_rows
    from ..store.committee import read_pins

    course = in_hand.course()
    rounds = [one.number for one in event.rounds] or None
    holes = [hole.number for hole in course.holes]
    pins, bad = read_pins(source, course.settings.unit, event.name, holes, rounds)
    rows, _ = pin_rows(course, replace(event, pins=pins), in_hand.index())
    placed = {(row.round, row.hole): row for row in rows}
    good, bad = [], list(bad)
    for pin in pins:
        row = placed[pin.round, pin.hole]
        if row.x is None:
            bad.append((pin.line, row.remark))
        elif not event.plays(pin.round, pin.hole):
            bad.append((pin.line, tr("round {} does not play hole {}").format(pin.round, pin.hole)))
        else:
            good.append((pin, (row.x, row.y)))
    return good, sorted(bad)


class PinsDialog(QDialog):
    """Lists pins and refused lines; OK is there only when something can be placed."""

    def __init__(self, parent, good, bad, unit):
        super().__init__(parent)
        self.setObjectName("yardwright_bring_pins")
        self.setWindowTitle(tr("The committee’s pins"))
        self.resize(560, 560)
        from ..measure.units import to_unit

        self.list = QTreeWidget(self)
        self.list.setRootIsDecorated(False)
        self.list.setAlternatingRowColors(True)
        self.list.setHeaderLabels([tr("Line"), tr("Round"), tr("Hole"), tr("Figures")])
        lines = [
            (
                pin.line or 0,
                str(pin.round),
                str(pin.hole),
                tr("{} on, {} from {}").format(
                    f"{to_unit(pin.on, unit):g}", f"{to_unit(pin.off, unit):g}", side_word(pin.off_from)
                ),
                "",
            )
            for pin, _ in good
        ] + [(line or 0, "", "", "", reason) for line, reason in bad]
        for line, number, hole, figures, reason in sorted(lines):
            item = QTreeWidgetItem([str(line), number, hole, figures or tr("left out: {}").format(reason)])
            if reason:
                font = item.font(3)
                font.setBold(True)
                item.setFont(3, font)
            self.list.addTopLevelItem(item)
        for column in range(3):
            self.list.resizeColumnToContents(column)
        head = QLabel(self)
        head.setWordWrap(True)
        head.setText(
            tr("{} pins can be placed, {} lines cannot. Nothing is written yet.").format(len(good), len(bad))
        )
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel, self)
        place = buttons.addButton(tr("Place them"), QDialogButtonBox.ButtonRole.AcceptRole)
        place.setEnabled(bool(good))
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        layout = QVBoxLayout(self)
        layout.addWidget(head)
        layout.addWidget(self.list, 1)
        layout.addWidget(buttons)
        self.setWindowFlag(Qt.WindowType.WindowContextHelpButtonHint, False)
