"""The pins of one round as a table that is typed into: on, off, from; a row a hole."""

from qgis.PyQt.QtCore import QAbstractTableModel, QModelIndex, Qt, pyqtSignal
from qgis.PyQt.QtWidgets import QComboBox, QStyledItemDelegate

from ..compat import flags_number
from ..measure.fall import fall_said, fall_sign, falls
from ..model.event import SIDES
from .words import tr

HOLE, ON, OFF, FROM, BACK, MARGIN, SLOPE = range(7)
_TYPED = {ON: "on", OFF: "off", FROM: "off_from"}


class PinTable(QAbstractTableModel):
    """``lines``: ``[(hole, PinRow or None)]`` in the order of play.

    Signal ``typed``: hole, on, off, off_from, once all three of a hole are known and one was changed; on and
    off are numbers in the unit of the course.
    """

    typed = pyqtSignal(int, float, float, str)

    def __init__(self, parent=None):
        super().__init__(parent)
        self.lines = []
        self.unit = "yd"
        self._half = {}

    def show(self, lines, unit):
        """Show other lines; what was typed and is not complete yet stays."""
        self.beginResetModel()
        self.lines, self.unit = lines, unit
        placed = {hole for hole, row in lines if row is not None}
        self._half = {hole: half for hole, half in self._half.items() if hole not in placed}
        self.endResetModel()

    def forget(self):
        """Drop what was typed and is not complete: another round is shown."""
        self._half = {}

    # What Qt asks of it

    def rowCount(self, parent=QModelIndex()):  # noqa: B008 - the signature is Qt's
        return 0 if parent.isValid() else len(self.lines)

    def columnCount(self, parent=QModelIndex()):  # noqa: B008
        return 0 if parent.isValid() else 7

    def headerData(self, section, orientation, role=Qt.ItemDataRole.DisplayRole):
        if orientation != Qt.Orientation.Horizontal:
            return None
        if role == Qt.ItemDataRole.DisplayRole:
            return (tr("Hole"), tr("On"), tr("Off"), tr("From"), tr("Back"), tr("Margin"), tr("Slope"))[
                section
            ]
        if role == Qt.ItemDataRole.ToolTipRole:
            return (
                tr("Hole"),
                tr("From the green’s front, along the approach"),
                tr("In from the margin, or right of the approach line"),
                tr("What Off counts from"),
                tr("To the green’s back, along the approach"),
                tr("To the nearest point of the green’s margin"),
                tr("How steep the ground is there; the arrow points downhill, seen with the approach up"),
            )[section]
        return None

    def flags(self, index):
        flags = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
        return flags | Qt.ItemFlag.ItemIsEditable if index.column() in _TYPED else flags

    def data(self, index, role=Qt.ItemDataRole.DisplayRole):
        hole, row = self.lines[index.row()]
        column = index.column()
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.EditRole):
            return self._text(hole, row, column)
        if role == Qt.ItemDataRole.ToolTipRole and row is not None:
            if column == SLOPE and row.slope_pct is not None:
                return _slope_tip(row)
            return row.remark or None
        if role == Qt.ItemDataRole.TextAlignmentRole:
            left = column in (HOLE, FROM)
            side = Qt.AlignmentFlag.AlignLeft if left else Qt.AlignmentFlag.AlignRight
            return flags_number(side | Qt.AlignmentFlag.AlignVCenter)
        if role == Qt.ItemDataRole.FontRole and row is not None and row.remark:
            from qgis.PyQt.QtGui import QFont

            font = QFont()
            font.setItalic(True)
            return font
        return None

    def _text(self, hole, row, column):
        if column == HOLE:
            return str(hole)
        if column in _TYPED and hole in self._half and self._half[hole].get(_TYPED[column]) is not None:
            value = self._half[hole][_TYPED[column]]
            return side_word(value) if column == FROM else f"{value:g}"
        if row is None:
            return ""
        if column == FROM:
            return side_word(row.off_from)
        if column == SLOPE:
            sign = fall_sign(row.slope_pct, row.slope_turn)
            return "" if row.slope_pct is None else f"{sign} {row.slope_pct:.1f} %".strip()
        value = {ON: row.on, OFF: row.off, BACK: row.back, MARGIN: row.to_margin}[column]
        return _figure(value, self.unit)

    def setData(self, index, value, role=Qt.ItemDataRole.EditRole):
        hole, row = self.lines[index.row()]
        name = _TYPED.get(index.column())
        if role != Qt.ItemDataRole.EditRole or name is None:
            return False
        taken = _side_of(value) if name == "off_from" else _number_of(value)
        if taken is None:
            return False
        half = self._half.setdefault(hole, {})
        if row is not None:
            for other, known in (("on", row.on), ("off", row.off)):
                half.setdefault(other, None if known is None else _in_unit(known, self.unit))
            half.setdefault("off_from", row.off_from or None)
        half[name] = taken
        self.dataChanged.emit(index, index)
        if all(half.get(one) is not None for one in _TYPED.values()):
            self._half.pop(hole)
            self.typed.emit(hole, half["on"], half["off"], half["off_from"])
        return True


class SideDelegate(QStyledItemDelegate):
    """Lets the side be chosen from a list."""

    def createEditor(self, parent, option, index):
        box = QComboBox(parent)
        for side in SIDES:
            box.addItem(side_word(side), side)
        return box

    def setEditorData(self, editor, index):
        editor.setCurrentIndex(max(0, editor.findText(index.data() or "")))

    def setModelData(self, editor, model, index):
        model.setData(index, editor.currentData())


def side_word(side):
    """A side as a person says it."""
    return {"left": tr("left"), "right": tr("right"), "centre": tr("centre")}.get(side, side or "")


def row_text(row):
    """What is to be said of a PinRow beside its figures: how the ground falls there, and its remark."""
    told = tr("Slope: {}").format(slope_text(row)) if row.slope_pct is not None else ""
    return "\n".join(filter(None, (told, row.remark)))


def slope_text(row):
    """How the ground falls at a PinRow, with an arrow as seen with the approach up; "" where not known."""
    said, sign = fall_said(row.slope_pct, row.slope_turn), fall_sign(row.slope_pct, row.slope_turn)
    return f"{sign} {said}".strip()


def _slope_tip(row):
    said = fall_said(row.slope_pct, row.slope_turn)
    if not falls(row.slope_pct, row.slope_turn):
        return said
    text = tr("The ground falls {}, seen with the approach up; that is towards {}°, clockwise from north")
    return text.format(said, round(row.slope_azimuth) % 360)


def _side_of(text):
    text = str(text).strip().lower()
    words = {**{side: side for side in SIDES}, **{side_word(side).lower(): side for side in SIDES}}
    found = [side for word, side in words.items() if text and word.startswith(text)]
    return found[0] if found else None


def _number_of(text):
    try:
        return float(str(text).strip().replace(",", "."))
    except ValueError:
        return None


def _in_unit(metres, unit):
    from ..measure.units import to_unit

    return round(to_unit(metres, unit), 2)


def _figure(metres, unit):
    if metres is None:
        return ""
    text = f"{_in_unit(metres, unit):.1f}"
    return text[:-2] if text.endswith(".0") else text
