"""The tables of the measure dialog: their columns in plain words, and figures as a player reads them."""

import math
from dataclasses import dataclass

from qgis.PyQt.QtCore import QAbstractTableModel, QModelIndex, Qt
from qgis.PyQt.QtGui import QColor, QFont

from ..compat import flags_number
from ..measure.fall import rise_said
from ..measure.units import to_square_unit, to_unit, whole
from ..model.kinds import BY_NAME
from .words import tr

HEIGHTS = "heights"
"""The table that only a terrain fills."""


@dataclass(frozen=True)
class Column:
    """One column: its heading, the row's attribute, in what form it is shown, and what it means.

    form: ``whole`` (a distance as a whole figure), ``signed`` (a difference), ``sure`` (plus or minus, one
    decimal), ``area``, ``azimuth``, ``degrees``, ``metres``, ``rise`` (metres with their sign), ``count`` or
    ``text``.
    """

    heading: str
    attribute: str
    form: str
    meaning: str = ""


@dataclass(frozen=True)
class Table:
    """One table: ``name`` as in measure.rows.Measures, its title, and its columns."""

    name: str
    title: str
    columns: tuple


def tables():
    """All tables, in the order of the dialog's tabs; made when asked for, since texts are translated."""
    tee = Column(tr("Tee"), "tee_set", "text", tr("The tee set played from"))
    sure = Column(tr("±"), "plus_minus", "sure", tr("How sure the figure is: one standard error"))
    remark = Column(tr("Remark"), "remark", "text", tr("What is doubtful about this row"))
    hole = Column(tr("Hole"), "hole", "count")

    def whole_figure(heading, attribute, meaning):
        return Column(heading, attribute, "whole", meaning)

    return (
        Table(
            "distances",
            tr("Distances"),
            (
                hole,
                tee,
                Column(tr("What"), "kind", "text", tr("What is measured to")),
                Column(tr("Label"), "label", "text", tr("What it is called")),
                Column(tr("Side"), "side", "text", tr("The side of the line of play it lies on")),
                whole_figure(tr("Reach"), "reach", tr("To the nearest point of it; of a green its front")),
                whole_figure(tr("Clear"), "clear", tr("To be past it; of a green its back")),
                whole_figure(tr("Middle"), "middle", tr("To the green’s middle")),
                whole_figure(tr("Enter"), "enter", tr("Where the line of play comes into it")),
                whole_figure(tr("Leave"), "leave", tr("Where the line of play comes out of it")),
                whole_figure(tr("Aside"), "aside", tr("From the line of play to it, square; 0 on the line")),
                whole_figure(tr("Short of green"), "short_of_green", tr("From its far end to the green")),
                Column(tr("Carry"), "forced_carry", "text", tr("Whether it has to be carried to go on")),
                sure,
                remark,
            ),
        ),
        Table(
            "lengths",
            tr("Lengths"),
            (
                hole,
                tee,
                whole_figure(tr("Length"), "length", tr("Along the line of play to the green’s middle")),
                sure,
                whole_figure(tr("Scorecard"), "scorecard", tr("What the scorecard says")),
                Column(tr("Difference"), "difference", "signed", tr("Measured less scorecard")),
                Column(tr("Par"), "par", "count"),
                Column(tr("Par check"), "par_check", "text", tr("What the length says of the par")),
                remark,
            ),
        ),
        Table(
            "greens",
            tr("Greens"),
            (
                hole,
                Column(tr("Approach"), "approach_from", "text", tr("Where the approach is taken from")),
                Column(tr("Azimuth"), "approach_azimuth", "azimuth", tr("True direction of the approach")),
                whole_figure(tr("Depth"), "depth", tr("From front to back along the approach")),
                whole_figure(tr("Width"), "width", tr("Through the middle, square to the approach")),
                whole_figure(
                    tr("Overall depth"), "overall_depth", tr("From its nearest to its farthest point")
                ),
                whole_figure(
                    tr("Overall width"), "overall_width", tr("From its leftmost to its rightmost point")
                ),
                Column(tr("Area"), "area", "area"),
                sure,
                remark,
            ),
        ),
        Table(
            "fairways",
            tr("Fairways"),
            (
                hole,
                tee,
                whole_figure(tr("At"), "station", tr("From the tee, along the line of play")),
                whole_figure(tr("Width"), "width", tr("Of the fairway there, square to the line of play")),
                whole_figure(tr("Left"), "left", tr("From the line of play to the left edge")),
                whole_figure(tr("Right"), "right", tr("From the line of play to the right edge")),
                whole_figure(tr("Starts"), "first", tr("Where the line of play comes onto the fairway")),
                whole_figure(tr("Ends"), "last", tr("Where the line of play leaves the fairway")),
                whole_figure(tr("Run-out"), "run_out", tr("How far a straight shot stays on the fairway")),
                sure,
                remark,
            ),
        ),
        Table(
            "doglegs",
            tr("Turns"),
            (
                hole,
                tee,
                Column(tr("Turn"), "turn", "count", tr("Counted from the tee")),
                whole_figure(tr("At"), "turn_station", tr("From the tee, along the line of play")),
                Column(tr("By"), "turn_angle", "degrees", tr("How much the line of play turns")),
                Column(tr("Direction"), "turn_side", "text"),
                whole_figure(tr("To the green"), "to_green", tr("From the turn to the green’s middle")),
                sure,
                remark,
            ),
        ),
        Table(
            "layups",
            tr("Lay-ups"),
            (
                hole,
                tee,
                whole_figure(tr("To leave"), "remaining", tr("What remains to the green’s middle")),
                whole_figure(tr("Play"), "station", tr("From the tee, along the line of play")),
                sure,
                remark,
            ),
        ),
        Table(
            "markers",
            tr("Markers"),
            (
                hole,
                Column(
                    tr("Marker"), "marker_id", "text", tr("The feature; 4+5 is the middle between a pair")
                ),
                whole_figure(tr("States"), "states", tr("What is written on it")),
                Column(
                    tr("To the"), "states_to", "text", tr("The point of the green it states the distance to")
                ),
                whole_figure(tr("Measured"), "measured", tr("The true distance")),
                Column(tr("Error"), "error", "signed", tr("What it states less what is true")),
                Column(tr("Verdict"), "verdict", "text", tr("Whether it stands where it says")),
                Column(tr("Move (m)"), "move_m", "metres", tr("How far it has to be moved to be true")),
                Column(tr("Towards"), "move_azimuth", "azimuth", tr("True direction to move it in")),
                sure,
                remark,
            ),
        ),
        Table(
            HEIGHTS,
            tr("Heights"),
            (
                hole,
                tee,
                Column(tr("Tee (m)"), "tee_height_m", "metres", tr("How high the tee lies, in metres")),
                Column(tr("Green (m)"), "green_height_m", "metres", tr("How high the green’s middle lies")),
                Column(tr("Rise (m)"), "rise_m", "rise", tr("How much higher than the tee the green lies")),
                whole_figure(tr("Length"), "length", tr("As measured, level: no height is in it")),
                whole_figure(tr("Plays"), "plays", tr("Length and rise together: common practice, no rule")),
                Column(tr("Turns (m)"), "turn_heights_m", "text", tr("The same at the turns ahead")),
                Column(tr("Front (m)"), "front_height_m", "metres", tr("How high the green’s front lies")),
                Column(tr("Back (m)"), "back_height_m", "metres", tr("How high the green’s back lies")),
                remark,
            ),
        ),
    )


def caution():
    """What is to be said wherever a hole is told to play longer or shorter than it measures."""
    return tr(
        "“Plays” adds the rise from tee to green to the length, as is common practice; no rule says so. It "
        "never takes the place of the measured length, which goes on the card and into every other figure."
    )


def as_read(value, form, unit):
    """A value as a player reads it: whole figures in the course's unit; "" for None."""
    if value is None or value == "":
        return ""
    if form == "text":
        return _word(str(value))
    if not math.isfinite(value):
        return ""
    if form == "count":
        return str(int(value))
    if form == "azimuth":
        return f"{whole(value) % 360:03d}°"
    if form == "degrees":
        return f"{whole(value)}°"
    if form == "metres":
        return f"{value:.1f}"
    if form == "rise":
        return rise_said(value)
    if form == "area":
        return str(whole(to_square_unit(value, unit)))
    if form == "sure":
        return f"{to_unit(value, unit):.1f}"
    figure = whole(to_unit(value, unit))
    if form == "signed":
        return f"+{figure}" if figure > 0 else str(figure).replace("-", "−")
    return str(figure).replace("-", "−")


def exact(value, form, unit):
    """A distance, an area or an angle unrounded, for the tooltip; "" for what is not rounded."""
    if value is None or form in ("text", "count") or not math.isfinite(value):
        return ""
    if form in ("azimuth", "degrees"):
        return f"{value:.2f}°"
    if form in ("metres", "rise"):
        return f"{value:.2f} m"
    if form == "area":
        return tr("{:.2f} square {}").format(to_square_unit(value, unit), unit)
    return f"{to_unit(value, unit):.2f} {unit}"


def _word(text):
    """A code of the tables as a person says it; any other text as it is."""
    if text in BY_NAME:
        return tr(BY_NAME[text].title)
    return _words().get(text, text)


def _words():
    return {
        "left": tr("left"),
        "right": tr("right"),
        "across": tr("across"),
        "yes": tr("yes"),
        "no": "",
        "front": tr("front"),
        "middle": tr("middle"),
        "back": tr("back"),
        "off": tr("off"),
        "true": tr("true"),
        "fits": tr("fits"),
        "tee": tr("tee"),
    }


class FigureModel(QAbstractTableModel):
    """The rows of one table for a view. ``rows`` are those of measure.rows, as they were given."""

    def __init__(self, table, parent=None):
        super().__init__(parent)
        self.table = table
        self.rows = ()
        self.unit = "yd"
        self._italic = QFont()
        self._italic.setItalic(True)

    def show(self, rows, unit):
        """Show other rows."""
        self.beginResetModel()
        self.rows, self.unit = tuple(rows), unit
        self.endResetModel()

    def rowCount(self, parent=QModelIndex()):  # noqa: B008 - the signature is Qt's
        return 0 if parent.isValid() else len(self.rows)

    def columnCount(self, parent=QModelIndex()):  # noqa: B008
        return 0 if parent.isValid() else len(self.table.columns)

    def headerData(self, section, orientation, role=Qt.ItemDataRole.DisplayRole):
        if orientation != Qt.Orientation.Horizontal:
            return None
        column = self.table.columns[section]
        if role == Qt.ItemDataRole.DisplayRole:
            return column.heading
        if role == Qt.ItemDataRole.ToolTipRole:
            return column.meaning or column.heading
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return _alignment(column)
        return None

    def data(self, index, role=Qt.ItemDataRole.DisplayRole):
        column = self.table.columns[index.column()]
        value = getattr(self.rows[index.row()], column.attribute)
        if role == Qt.ItemDataRole.DisplayRole:
            return as_read(value, column.form, self.unit)
        if role == Qt.ItemDataRole.ToolTipRole:
            own = exact(value, column.form, self.unit) or as_read(value, column.form, self.unit)
            remark = self.rows[index.row()].remark if column.attribute != "remark" else ""
            return "\n".join(filter(None, (own, remark))) or None
        if role == Qt.ItemDataRole.FontRole and self.rows[index.row()].remark:
            return self._italic
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return _alignment(column)
        if role == Qt.ItemDataRole.UserRole:
            return as_read(value, "text", self.unit) if column.form == "text" else value
        if role == Qt.ItemDataRole.ForegroundRole and column.attribute == "verdict" and value == "off":
            return QColor("#c0341d")
        return None


def _alignment(column):
    side = Qt.AlignmentFlag.AlignLeft if column.form == "text" else Qt.AlignmentFlag.AlignRight
    return flags_number(side | Qt.AlignmentFlag.AlignVCenter)
