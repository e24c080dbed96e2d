"""Tie points set by hand: the same spot clicked on a date and on its base.

Which of the two a click was made on is what the map shows where it was made: the base, or, while it is
flipped, beyond the divider or in the second view, the date.
"""

from dataclasses import dataclass

from qgis.core import QgsPointXY
from qgis.gui import QgsMapCanvasItem, QgsMapTool
from qgis.PyQt.QtCore import QPointF, QRectF, Qt, pyqtSignal
from qgis.PyQt.QtGui import QColor, QFont, QPainter, QPen

from .words import tr

ON_DATE, ON_BASE = "date", "base"
_DATE_INK, _BASE_INK, _DARK, _LIGHT = (
    QColor("#ffb627"),
    QColor("#5ec8ff"),
    QColor(20, 24, 28),
    QColor("white"),
)


@dataclass
class Pair:
    """The same spot twice, QgsPointXY on the map; None for what is not clicked yet."""

    on_date: object = None
    on_base: object = None

    @property
    def whole(self):
        return self.on_date is not None and self.on_base is not None


class TieTool(QgsMapTool):
    """Clicks for pairs on one map. side_at: a function that gives ON_DATE or ON_BASE for a QgsPointXY.

    Signals: ``clicked`` (side, QgsPointXY), ``finished`` (Enter), ``given_up`` (Esc), ``back`` (Backspace).
    """

    clicked = pyqtSignal(str, object)
    finished = pyqtSignal()
    given_up = pyqtSignal()
    back = pyqtSignal()

    def __init__(self, canvas, side_at):
        super().__init__(canvas)
        self.side_at = side_at
        self.setCursor(Qt.CursorShape.CrossCursor)

    def canvasReleaseEvent(self, event):
        """A click sets one end of a pair."""
        if event.button() == Qt.MouseButton.LeftButton:
            place = self.toMapCoordinates(event.pos())
            self.clicked.emit(self.side_at(place), QgsPointXY(place))

    def keyPressEvent(self, event):
        """Enter is done with it, Backspace takes a click back, Esc gives up."""
        signals = {
            Qt.Key.Key_Return: self.finished,
            Qt.Key.Key_Enter: self.finished,
            Qt.Key.Key_Backspace: self.back,
            Qt.Key.Key_Escape: self.given_up,
        }
        signal = signals.get(event.key())
        if signal is None:
            super().keyPressEvent(event)
        else:
            event.accept()
            signal.emit()


class TieMarks(QgsMapCanvasItem):
    """The pairs on a map, numbered: a square where the date shows the spot, a ring where the base does."""

    def __init__(self, canvas):
        super().__init__(canvas)
        self.canvas = canvas
        self._pairs, self._chosen = [], None
        self.setZValue(50)

    def lay(self, pairs, chosen=None):
        """Show Pairs; chosen: the number of the one that stands out, from 0."""
        self._pairs, self._chosen = list(pairs), chosen
        self.updatePosition()

    # What QGIS asks of it

    def boundingRect(self):
        size = self.canvas.viewport().size()
        return QRectF(0, 0, size.width(), size.height())

    def updatePosition(self):
        self.prepareGeometryChange()
        self.update()

    def paint(self, painter, option=None, widget=None):
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        font = QFont(self.canvas.font())
        font.setBold(True)
        painter.setFont(font)
        for number, pair in enumerate(self._pairs):
            ends = [
                None if place is None else QPointF(self.toCanvasCoordinates(place))
                for place in (pair.on_date, pair.on_base)
            ]
            if all(ends):
                for colour, width in ((_DARK, 4), (_LIGHT, 2)):
                    painter.setPen(QPen(colour, width))
                    painter.drawLine(*ends)
            for at, ink, square in ((ends[0], _DATE_INK, True), (ends[1], _BASE_INK, False)):
                if at is not None:
                    self._paint_end(painter, at, ink, square, number)
        painter.restore()

    def _paint_end(self, painter, at, ink, square, number):
        size = 8.0 if number == self._chosen else 6.0
        box = QRectF(at.x() - size, at.y() - size, 2 * size, 2 * size)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for colour, width in ((_DARK, 4.5), (ink, 2.2)):
            painter.setPen(QPen(colour, width))
            painter.drawRect(box) if square else painter.drawEllipse(box)
            painter.drawPoint(at)
        text = QPointF(at.x() + size + 4, at.y() - size + 2)
        for dx, dy in ((-1, 0), (1, 0), (0, -1), (0, 1)):
            painter.setPen(_DARK)
            painter.drawText(text + QPointF(dx, dy), str(number + 1))
        painter.setPen(ink)
        painter.drawText(text, str(number + 1))


def legend_of_marks():
    """What the marks mean, as a line of text with their colours."""
    return tr(
        "<span style='color:#b57600'>■</span> on the date &nbsp; "
        "<span style='color:#0b7fc0'>●</span> on the base"
    )
