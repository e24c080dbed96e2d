"""Marks that a window puts on the map: a place looked at, or two pins of one hole and what lies between."""

from math import hypot

from qgis.gui import QgsMapCanvasItem, QgsVertexMarker
from qgis.PyQt.QtCore import QPoint, QPointF, QRect, QRectF, Qt
from qgis.PyQt.QtGui import QColor, QFontMetricsF, QPainter, QPen

from .words import tr

_DARK, _LIGHT, _NAMED = QColor(20, 24, 28), QColor(255, 255, 255), QColor("#ffd24a")
_GROUNDS = {"theirs": QColor(140, 30, 24, 235), "ours": QColor(16, 84, 104, 235), "": QColor(20, 24, 28, 225)}
_PAD = QPointF(6, 2)
_REACH = 9.0
"""How far the sign of a pin reaches from its place, pixels."""


class PlaceMark:
    """A ring about one place at most."""

    def __init__(self, canvas):
        self.canvas = canvas
        self.place = None
        self.rings = []

    def put(self, place):
        """Show a place on the map, a QgsPointXY; None for none."""
        self.place = place
        for ring in self.rings:
            self.canvas.scene().removeItem(ring)
        self.rings = []
        for colour, width, size in ((_DARK, 6, 20), (_NAMED, 3, 18)) if place is not None else ():
            ring = QgsVertexMarker(self.canvas)
            ring.setIconType(QgsVertexMarker.IconType.ICON_CIRCLE)
            ring.setColor(colour)
            ring.setPenWidth(width)
            ring.setIconSize(size)
            ring.setCenter(place)
            self.rings.append(ring)


class PinPair(QgsMapCanvasItem):
    """Theirs as a diamond, ours as a circle, for they are told apart without their colours too."""

    def __init__(self, canvas):
        super().__init__(canvas)
        self.canvas = canvas
        self.places = {}
        self.apart = ""
        self._boxes = []
        self.setZValue(-3)  # above the figures of the hole, which lie at -4, beneath rubber bands

    def lay(self, theirs, ours, apart):
        """Show two places on the map, QgsPointXY, None for one that is not there, and the text between."""
        self.places = {
            side: place for side, place in (("theirs", theirs), ("ours", ours)) if place is not None
        }
        self.apart = apart if len(self.places) == 2 else ""
        self.updatePosition()

    def texts(self):
        """What is written, in order."""
        return [text for text, _, _ in self._boxes]

    # What QGIS asks of it

    def boundingRect(self):
        size = self.canvas.viewport().size()
        return QRectF(0, 0, size.width(), size.height())

    def updatePosition(self):
        """Lay it anew: the map has moved, turned or changed its scale."""
        self.prepareGeometryChange()
        self._boxes = self._placed()
        self.update()

    def _font(self):
        font = self.canvas.font()
        font.setBold(True)
        return font

    def _pixels(self):
        return {side: self.toCanvasCoordinates(place) for side, place in self.places.items()}

    def _others(self):
        """The boxes of texts that other items have on the map."""
        items = (one for one in self.canvas.scene().items() if hasattr(one, "label_boxes"))
        return [box for one in items for box in one.label_boxes()]

    def _placed(self):
        """``[(text, side, box)]``: each pin's name beyond it as seen from the other, the distance aside."""
        from ..guide.labels import placed

        pixels = self._pixels()
        if not pixels:
            return []
        area = self.boundingRect().adjusted(4, 4, -4, -4)
        ends = [pixels.get(side) for side in ("theirs", "ours")]
        one, other = (ends[0] or ends[1]), (ends[1] or ends[0])
        along = other - one
        far = hypot(along.x(), along.y())
        out = along / far if far > 1 else QPointF(1, 0)
        names = {"theirs": tr("theirs"), "ours": tr("ours")}
        wanted = [
            (names[side], side, pixels[side], out if side == "ours" else -out)
            for side in ("theirs", "ours")
            if side in pixels
        ]
        if self.apart:
            wanted.append((self.apart, "", (one + other) / 2, QPointF(-out.y(), out.x())))
        metrics = QFontMetricsF(self._font())
        middles = placed(
            [(at.x(), at.y()) for _, _, at, _ in wanted],
            [
                (metrics.horizontalAdvance(text) + 2 * _PAD.x(), metrics.height() + 2 * _PAD.y())
                for text, _, _, _ in wanted
            ],
            (area.left(), area.top(), area.right(), area.bottom()),
            gap=_REACH + 4,
            kept=[spot for box in self._others() for spot in _spots(box)],
            first=[(side.x(), side.y()) for _, _, _, side in wanted],
        )
        boxes = []
        for (text, side, _, _), middle in zip(wanted, middles):
            if middle is not None:
                width = metrics.horizontalAdvance(text) + 2 * _PAD.x()
                height = metrics.height() + 2 * _PAD.y()
                boxes.append(
                    (text, side, QRectF(middle[0] - width / 2, middle[1] - height / 2, width, height))
                )
        return boxes

    def paint(self, painter, option=None, widget=None):
        pixels = self._pixels()
        if not pixels:
            return
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for colour, width in ((_DARK, 4.5), (_LIGHT, 2.0)):
            painter.setPen(QPen(colour, width))
            if len(pixels) == 2:
                painter.drawLine(pixels["theirs"], pixels["ours"])
        for side, at in pixels.items():
            for colour, width in ((_DARK, 6.0), (_LIGHT, 3.0), (_GROUNDS[side], 1.4)):
                painter.setPen(QPen(colour, width))
                _sign(painter, side, at)
        painter.setFont(self._font())
        for text, side, box in self._boxes:
            painter.setPen(QPen(QColor(255, 255, 255, 150), 1))
            painter.setBrush(_GROUNDS[side])
            painter.drawRoundedRect(box, 4, 4)
            painter.setPen(_LIGHT)
            painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)
        painter.restore()


def step_aside(window, seen):
    """Move a window that hides the middle of ``seen``, a QRect of the screen, to the corner where it hides
    least of it."""
    frame, screen = window.frameGeometry(), window.screen().availableGeometry()
    quarter = QPoint(seen.width() // 4, seen.height() // 4)
    if not frame.intersects(QRect(seen.topLeft() + quarter, seen.size() / 2)):
        return
    right = max(screen.left(), screen.right() + 1 - frame.width())
    bottom = max(screen.top(), screen.bottom() + 1 - frame.height())
    corners = [QPoint(x, y) for y in (bottom, screen.top()) for x in (right, screen.left())]
    window.move(min(corners, key=lambda corner: _area(QRect(corner, frame.size()).intersected(seen))))


def _area(rectangle):
    return max(0, rectangle.width()) * max(0, rectangle.height())


def _spots(box):
    """So many places of a box that a text of ours which covers some of it covers one of them."""
    heights = (box.top(), box.center().y(), box.bottom())
    return [(box.left() + box.width() * n / 4, y) for n in range(5) for y in heights]


def _sign(painter, side, at):
    """A diamond or a circle about a place, open, so that what lies there is seen."""
    if side == "ours":
        painter.drawEllipse(at, _REACH - 2, _REACH - 2)
        return
    corners = (QPointF(0, -_REACH), QPointF(_REACH, 0), QPointF(0, _REACH), QPointF(-_REACH, 0))
    painter.drawPolygon(*(at + corner for corner in corners))
