"""What a registration leaves, drawn on the map as arrows, enlarged, with a legend that says by how much."""

import math

from qgis.core import QgsPointXY
from qgis.gui import QgsMapCanvasItem
from qgis.PyQt.QtCore import QPointF, QRectF, Qt
from qgis.PyQt.QtGui import QColor, QFontMetricsF, QPainter, QPen, QPolygonF

from .words import tr

FIT, CHECK, OUTLIER, HAND = "fit", "check", "outlier", "hand"
"""What a ``registration.Tie`` was used for, as it says itself."""
_INKS = {
    FIT: QColor(0, 114, 178),
    CHECK: QColor(230, 159, 0),
    OUTLIER: QColor(204, 121, 167),
    HAND: QColor(0, 158, 115),
}
"""Told apart by colour-blind eyes too; each has a mark of its own besides."""
_DARK, _LIGHT = QColor(20, 24, 28), QColor(255, 255, 255)
_GROUND = QColor(20, 24, 28, 225)
_LONG, _CUT = 42.0, 96.0
"""Pixels: how long all but the longest few arrows become, and where an arrow is cut off."""
_STEPS = (1, 2, 5)


def enlarged_by(lengths, pixel):
    """The factor, 1, 2 or 5 and noughts, that makes the longest of all but a few arrows about ``_LONG``.

    lengths: metres; pixel: metres on the ground that one of the screen covers.

    >>> enlarged_by([0.05, 0.1, 0.1], 0.5)
    200
    """
    usual = sorted(lengths)[int(0.9 * (len(lengths) - 1))] if lengths else 0.0
    wanted = _LONG * pixel / usual if usual > 0 else 1.0
    return _nice(wanted) if wanted >= 1 else 1


def _nice(value):
    """The largest of 1, 2 and 5 with noughts (or behind them) that is not above a value."""
    power = 10 ** math.floor(math.log10(value))
    number = max((step for step in _STEPS if step * power <= value * 1.0001), default=1) * power
    return int(number) if number >= 1 else number


class Residuals(QgsMapCanvasItem):
    """Paints ties: a mark where each lies, an arrow for what the move leaves there. ``factor``: how much the
    arrows are enlarged now; another at each scale of the map."""

    def __init__(self, canvas):
        super().__init__(canvas)
        self.canvas = canvas
        self.factor = 1
        self.title = ""
        self._ties, self._arrows = [], []
        self._to_map = None
        self._metre = 1.0
        self.setZValue(-3)

    def lay(self, title, ties, to_map, metre):
        """Show ``registration.Tie``s. to_map: a QgsCoordinateTransform from the course's CRS, whose unit is
        ``metre`` metres, to the map's."""
        self.title, self._ties, self._to_map, self._metre = title, list(ties), to_map, metre
        self.updatePosition()

    # What QGIS asks of it

    def boundingRect(self):
        size = self.canvas.viewport().size()
        return QRectF(0, 0, size.width(), size.height())

    def updatePosition(self):
        """Work the arrows out for the map as it is now."""
        self.prepareGeometryChange()
        self._arrows = []
        if self._ties:
            pixel = self._ground_of_pixel()
            lengths = [math.hypot(t.off_east, t.off_north) for t in self._ties if t.role != OUTLIER]
            self.factor = enlarged_by(lengths, pixel)
            self._arrows = [self._arrow(tie) for tie in self._ties]
        self.update()

    def _screen(self, x, y):
        return QPointF(self.toCanvasCoordinates(self._to_map.transform(QgsPointXY(x, y))))

    def _ground_of_pixel(self):
        """Metres on the ground that a pixel of the screen covers, where the first tie lies."""
        tie = self._ties[0]
        across = self._screen(tie.x + 100 / self._metre, tie.y) - self._screen(tie.x, tie.y)
        return 100.0 / max(math.hypot(across.x(), across.y()), 1e-6)

    def _arrow(self, tie):
        """``(role, foot, tip, whether it was cut off)``, on the screen."""
        foot = self._screen(tie.x, tie.y)
        by = self.factor / self._metre
        tip = self._screen(tie.x + by * tie.off_east, tie.y + by * tie.off_north)
        length = math.hypot(tip.x() - foot.x(), tip.y() - foot.y())
        if length <= _CUT:
            return tie.role, foot, tip, False
        return tie.role, foot, foot + (tip - foot) * (_CUT / length), True

    def paint(self, painter, option=None, widget=None):
        if not self._arrows:
            return
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        for role, foot, tip, cut in sorted(self._arrows, key=lambda arrow: arrow[0] != OUTLIER):
            _paint_arrow(painter, role, foot, tip, cut)
        for role, foot, _tip, _cut in self._arrows:
            _paint_mark(painter, role, foot)
        self._paint_legend(painter)
        painter.restore()

    def _paint_legend(self, painter):
        font = self.canvas.font()
        font.setBold(True)
        metrics = QFontMetricsF(font)
        row, pad = metrics.height() + 7, 10.0
        counts = {role: sum(tie.role == role for tie in self._ties) for role in _INKS}
        rows = [(role, f"{text} ({counts[role]})") for role, text in _meanings().items() if counts[role]]
        heading = tr("What is left, {} times enlarged").format(self.factor)
        metres = _nice(max(1.2 * _LONG * self._ground_of_pixel() / self.factor, 1e-4))
        scale = metres / self._ground_of_pixel() * self.factor
        texts = [self.title, heading, *(text for _, text in rows), tr("{} m").format(f"{metres:g}")]
        width = max(
            metrics.horizontalAdvance(texts[0]),
            metrics.horizontalAdvance(texts[1]),
            *(metrics.horizontalAdvance(text) + 34 for text in texts[2:-1]),
            metrics.horizontalAdvance(texts[-1]) + scale + 14,
        )
        height = row * len(texts) + 2 * pad - 6
        box = QRectF(12, self.boundingRect().height() - height - 12, width + 2 * pad, height)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(_GROUND)
        painter.drawRoundedRect(box, 6, 6)
        painter.setFont(font)
        left, top = box.left() + pad, box.top() + pad - 3
        for number, text in enumerate(texts):
            line = QRectF(left, top + number * row, width, row)
            middle = QPointF(left + 10, line.center().y())
            if 2 <= number < len(texts) - 1:
                role = rows[number - 2][0]
                _paint_arrow(painter, role, middle - QPointF(8, 0), middle + QPointF(14, 0), False)
                _paint_mark(painter, role, middle - QPointF(8, 0))
                line.setLeft(left + 34)
            elif number == len(texts) - 1:
                ends = QPointF(left, middle.y()), QPointF(left + scale, middle.y())
                painter.setPen(QPen(_LIGHT, 2))
                painter.drawLine(*ends)
                for end in ends:
                    painter.drawLine(end - QPointF(0, 4), end + QPointF(0, 4))
                line.setLeft(left + scale + 12)
            painter.setPen(_LIGHT)
            painter.drawText(line, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, text)


def _meanings():
    return {
        FIT: tr("took part in the fit"),
        CHECK: tr("kept out, to check it"),
        HAND: tr("set by hand"),
        OUTLIER: tr("set aside: its neighbours say otherwise"),
    }


def _paint_arrow(painter, role, foot, tip, cut):
    along = tip - foot
    length = math.hypot(along.x(), along.y())
    if length < 1.5:
        return
    ahead = along / length
    side = QPointF(-ahead.y(), ahead.x())
    head = min(8.0, 0.6 * length)
    neck = tip - ahead * head
    style = Qt.PenStyle.DashLine if role == OUTLIER else Qt.PenStyle.SolidLine
    for colour, width in ((_DARK, 5.0), (_LIGHT, 3.6), (_INKS[role], 2.2)):
        pen = QPen(colour, width, style if colour is _INKS[role] else Qt.PenStyle.SolidLine)
        painter.setPen(pen)
        painter.drawLine(foot, neck)
    painter.setPen(QPen(_DARK, 1))
    painter.setBrush(_LIGHT if cut else _INKS[role])
    painter.drawPolygon(QPolygonF([tip, neck + side * 0.55 * head, neck - side * 0.55 * head]))


def _paint_mark(painter, role, at):
    """A disc for what was fitted, a square for a check, a lozenge by hand, a cross for what was set aside."""
    size = 4.2
    if role == OUTLIER:
        for colour, width in ((_DARK, 4.5), (_INKS[role], 2.4)):
            painter.setPen(QPen(colour, width))
            for sign in (-1, 1):
                painter.drawLine(at + QPointF(-size, sign * size), at + QPointF(size, -sign * size))
        return
    painter.setPen(QPen(_DARK, 1.2))
    painter.setBrush(_INKS[role])
    if role == CHECK:
        painter.drawRect(QRectF(at.x() - size, at.y() - size, 2 * size, 2 * size))
    elif role == HAND:
        corners = [(0, -1.3 * size), (1.3 * size, 0), (0, 1.3 * size), (-1.3 * size, 0)]
        painter.drawPolygon(QPolygonF([at + QPointF(*corner) for corner in corners]))
    else:
        painter.drawEllipse(at, size, size)
