"""The lengths of one round as a table: a row a hole, four columns a flight; the first is typed into."""

from dataclasses import dataclass

from qgis.PyQt.QtCore import QAbstractTableModel, QModelIndex, Qt, pyqtSignal
from qgis.PyQt.QtGui import QFont
from qgis.PyQt.QtWidgets import QApplication

from ..compat import flags_number
from .words import tr

ASKED, FRONT, PLATE, VERDICT = range(4)
COLUMNS = 4
LONGEST_YD, SHORTEST_YD = 1000.0, 1.0
"""What the field of a length takes (``model.kinds``, event_length)."""


@dataclass(frozen=True)
class Cell:
    """A hole of a flight: the length asked for and the tee set's own, metres or None; where the markers stand
    for it, a measure.rows.TeeSettingRow or None."""

    asked: float = None
    own: float = None
    row: object = None


class LengthTable(QAbstractTableModel):
    """``holes``: numbers in the order of play; ``flights``: ``[(key, name)]``; ``cells``: ``{(hole, key):
    Cell}``.

    Signals: ``typed`` (hole, key of the flight, metres or None), ``refused`` (a sentence on what was typed).
    """

    typed = pyqtSignal(int, int, object)
    refused = pyqtSignal(str)

    def __init__(self, parent=None):
        super().__init__(parent)
        self.holes, self.flights, self.cells, self.unit = [], [], {}, "yd"
        self._soft, self._firm = QFont(), QFont()
        self._soft.setItalic(True)
        self._firm.setBold(True)

    def show(self, holes, flights, cells, unit):
        """Show other cells; the same holes and flights keep what is chosen."""
        self.unit = unit
        if (holes, flights) == (self.holes, self.flights):
            self.cells = cells
            if holes and flights:
                last = self.index(len(holes) - 1, self.columnCount() - 1)
                self.dataChanged.emit(self.index(0, 0), last)
            return
        self.beginResetModel()
        self.holes, self.flights, self.cells = holes, flights, cells
        self.endResetModel()

    def at(self, index):
        """``(hole, key of the flight, which column of it)``."""
        return self.holes[index.row()], self.flights[index.column() // COLUMNS][0], index.column() % COLUMNS

    def place_of(self, hole, key):
        """The index of the cell that is typed into; an invalid one where it is not shown."""
        keys = [one for one, _ in self.flights]
        if hole not in self.holes or key not in keys:
            return QModelIndex()
        return self.index(self.holes.index(hole), keys.index(key) * COLUMNS)

    # What Qt asks of it

    def rowCount(self, parent=QModelIndex()):  # noqa: B008 - the signature is Qt's
        return 0 if parent.isValid() else len(self.holes)

    def columnCount(self, parent=QModelIndex()):  # noqa: B008
        return 0 if parent.isValid() else COLUMNS * len(self.flights)

    def headerData(self, section, orientation, role=Qt.ItemDataRole.DisplayRole):
        if orientation != Qt.Orientation.Horizontal:
            text = tr("Hole {}").format(self.holes[section])
            return text if role == Qt.ItemDataRole.DisplayRole else None
        number, column = divmod(section, COLUMNS)
        if role == Qt.ItemDataRole.DisplayRole:
            heading = (tr("Asked"), tr("From front"), tr("Plate"), tr("Verdict"))[column]
            return f"{self.flights[number][1] if column == ASKED else ''}\n{heading}"
        if role == Qt.ItemDataRole.ToolTipRole:
            return (
                tr("How long the hole shall play. Empty: the tee set’s own length, shown in grey"),
                tr("From the tee’s front edge back to the markers, along the line of play"),
                tr("Where the markers stand, seen from the tee set’s permanent plate"),
                tr("Whether the tee allows the length asked for"),
            )[column]
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return flags_number(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignBottom)
        return None

    def flags(self, index):
        flags = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
        return flags | Qt.ItemFlag.ItemIsEditable if index.column() % COLUMNS == ASKED else flags

    def data(self, index, role=Qt.ItemDataRole.DisplayRole):
        hole, key, column = self.at(index)
        cell = self.cells.get((hole, key), Cell())
        if role == Qt.ItemDataRole.DisplayRole:
            return self._text(cell, column)
        if role == Qt.ItemDataRole.EditRole:
            return figure(cell.asked, self.unit)
        if role == Qt.ItemDataRole.ToolTipRole and cell.row is not None:
            return cell.row.remark or None
        if role == Qt.ItemDataRole.TextAlignmentRole:
            side = Qt.AlignmentFlag.AlignLeft if column == VERDICT else Qt.AlignmentFlag.AlignRight
            return flags_number(side | Qt.AlignmentFlag.AlignVCenter)
        if column == ASKED and cell.asked is None:
            if role == Qt.ItemDataRole.FontRole:
                return self._soft
            if role == Qt.ItemDataRole.ForegroundRole:
                return QApplication.palette().placeholderText()
        if role == Qt.ItemDataRole.FontRole and column == VERDICT and cell.row is not None:
            return None if cell.row.verdict == "fits" else self._firm
        return None

    def _text(self, cell, column):
        if column == ASKED:
            if cell.asked is None:
                from ..measure.units import to_unit, whole

                return "" if cell.own is None else str(whole(to_unit(cell.own, self.unit)))
            return figure(cell.asked, self.unit)
        row = cell.row
        if row is None:
            return ""
        if column == FRONT:
            return "" if row.from_front is None else tenths(row.from_front, self.unit)
        if column == PLATE:
            return plate_text(row.from_plate, self.unit)
        return verdict_text(row, self.unit)

    def setData(self, index, value, role=Qt.ItemDataRole.EditRole):
        if role != Qt.ItemDataRole.EditRole or index.column() % COLUMNS != ASKED:
            return False
        hole, key, _ = self.at(index)
        text = str(value).strip()
        metres = self._metres(text) if text else None
        if text and metres is None:
            self.refused.emit(tr("“{}” is no length of a hole.").format(text))
            return False
        before = self.cells.get((hole, key), Cell()).asked
        if text != figure(before, self.unit):
            self.typed.emit(hole, key, metres)
        return True

    def _metres(self, text):
        from ..measure.units import UNITS, YARD

        try:
            metres = float(text.replace(",", ".")) * UNITS[self.unit]
        except ValueError:
            return None
        return metres if SHORTEST_YD <= metres / YARD <= LONGEST_YD else None


def figure(metres, unit):
    """A length as it is typed; "" for None."""
    from ..measure.units import to_unit

    return "" if metres is None else f"{round(to_unit(metres, unit), 2):g}"


def tenths(metres, unit):
    """A length that is measured with a tape: one decimal."""
    from ..measure.units import to_unit

    return f"{to_unit(metres, unit):.1f}"


def got_text(row, unit):
    """What the hole plays, with the decimals that tell it from what was asked for."""
    from ..measure.units import to_unit

    got, asked = to_unit(row.got, unit), to_unit(row.asked, unit)
    told_apart = row.verdict == "fits" or f"{got:.1f}" != f"{asked:.1f}"
    return f"{got:.1f}" if told_apart else f"{got:.2f}"


def plate_text(metres, unit):
    """Where markers stand from the plate, in words; "" without a plate."""
    if metres is None:
        return ""
    distance = tenths(abs(metres), unit)
    if float(distance) == 0.0:
        return tr("level")
    return tr("{} behind").format(distance) if metres > 0 else tr("{} ahead").format(distance)


def verdict_text(row, unit):
    """The verdict of a TeeSettingRow with its sign."""
    if row.verdict == "fits":
        return "✓ " + tr("fits")
    if row.verdict == "nearest":
        return "≈ " + tr("plays {}").format(got_text(row, unit))
    return "✗ " + tr("impossible")
