"""The brush that corrects what hides the ground."""

from qgis.core import QgsDistanceArea, QgsPointXY, QgsProject
from qgis.gui import QgsMapCanvasItem, QgsMapTool
from qgis.PyQt.QtCore import QEvent, QPointF, QRectF, Qt, pyqtSignal
from qgis.PyQt.QtGui import QColor, QPainter, QPen, QPolygonF

from .words import told_in

LEAST_M, MOST_M = 0.3, 40.0
_STEP = 1.25
_LEAST_MOVE = 3
"""Pixels from one place of a stroke to the next."""
_DARK, _LIGHT = QColor(20, 24, 28, 220), QColor(255, 255, 255)


class MaskTool(QgsMapTool):
    """Paints strokes into a ``masks.Masks``. ``value``: what is painted; ``radius``: of the brush, metres on
    the ground. The keys [ and ], or Shift and the wheel, change it; Ctrl+Z and Ctrl+Y undo and redo.

    Signals: ``resized`` (another radius), ``laid_down`` (another tool is in hand).
    """

    resized = pyqtSignal()
    laid_down = pyqtSignal()

    def __init__(self, in_hand, masks):
        super().__init__(in_hand.iface.mapCanvas())
        self.in_hand, self.masks = in_hand, masks
        self.value = 0
        self.radius = 3.0
        self.colour = _LIGHT
        self._line = []
        self._ring = None
        self.setCursor(Qt.CursorShape.CrossCursor)

    def activate(self):
        """QGIS calls this when the tool is taken in hand."""
        super().activate()
        if self._ring is None:
            self._ring = _Ring(self.canvas())
        # QGIS's own Ctrl+Z is a shortcut of its window, which would be first.
        self.canvas().installEventFilter(self)

    def deactivate(self):
        """QGIS calls this when another tool is taken in hand."""
        self.canvas().removeEventFilter(self)
        self._end()
        if self._ring is not None:
            self.canvas().scene().removeItem(self._ring)
            self._ring = None
        super().deactivate()
        self.laid_down.emit()

    def resize(self, radius):
        """Take another radius, metres, within what makes sense."""
        radius = min(MOST_M, max(LEAST_M, radius))
        if radius != self.radius:
            self.radius = radius
            self._follow(self._ring.place if self._ring is not None else None)
            self.resized.emit()

    def pixels(self):
        """The radius in pixels of the screen."""
        canvas = self.canvas()
        tape = QgsDistanceArea()
        crs = canvas.mapSettings().destinationCrs()
        tape.setSourceCrs(crs, QgsProject.instance().transformContext())
        tape.setEllipsoid(crs.ellipsoidAcronym() or "EPSG:7030")
        middle = canvas.center()
        unit = canvas.mapUnitsPerPixel() or 1.0
        ground = tape.measureLine(middle, QgsPointXY(middle.x() + unit, middle.y()))
        return self.radius / ground if ground > 0 else 1.0

    # The mouse

    def canvasPressEvent(self, event):
        """Begins a stroke."""
        if event.button() == Qt.MouseButton.LeftButton:
            self._line = [event.pos()]
            self._follow(self.toMapCoordinates(event.pos()))

    def canvasMoveEvent(self, event):
        """Follows the pointer, and the stroke."""
        if self._line:
            last = self._line[-1]
            if (event.pos() - last).manhattanLength() >= _LEAST_MOVE:
                self._line.append(event.pos())
        self._follow(self.toMapCoordinates(event.pos()))

    def canvasReleaseEvent(self, event):
        """Ends the stroke."""
        if event.button() == Qt.MouseButton.LeftButton:
            self._end()
            self._follow(self.toMapCoordinates(event.pos()))

    def _end(self):
        line, self._line = self._line, []
        if line:
            with told_in(self.in_hand.iface.messageBar()):
                self.masks.add([self.toMapCoordinates(place) for place in line], self.radius, self.value)

    def wheelEvent(self, event):
        """With Shift the brush grows and shrinks; without, QGIS zooms."""
        if event.modifiers() & Qt.KeyboardModifier.ShiftModifier:
            turned = event.angleDelta().y() or event.angleDelta().x()  # some systems turn it with Shift
            self.resize(self.radius * (_STEP if turned > 0 else 1 / _STEP))
            event.accept()
        else:
            event.ignore()

    # The keys

    def keyPressEvent(self, event):
        """[ and ] shrink and grow the brush, Esc lays it down."""
        if event.key() == Qt.Key.Key_Escape:
            self.canvas().unsetMapTool(self)
        elif not self._key(event, really=True):
            super().keyPressEvent(event)

    def eventFilter(self, watched, event):
        if event.type() == QEvent.Type.ShortcutOverride and self._key(event, really=False):
            event.accept()
            return True
        return False

    def _key(self, event, really):
        """Whether a key is one of the tool's; done what it stands for, if ``really``."""
        control = event.modifiers() & Qt.KeyboardModifier.ControlModifier
        shift = event.modifiers() & Qt.KeyboardModifier.ShiftModifier
        doing = None
        if control and event.key() == Qt.Key.Key_Z:
            doing = self.masks.redo if shift else self.masks.undo
        elif control and event.key() == Qt.Key.Key_Y:
            doing = self.masks.redo
        elif event.text() in ("[", "]"):
            doing = self._shrink if event.text() == "[" else self._grow
        if doing is not None and really:
            with told_in(self.in_hand.iface.messageBar()):
                doing()
        return doing is not None

    def _grow(self):
        self.resize(self.radius * _STEP)

    def _shrink(self):
        self.resize(self.radius / _STEP)

    def _follow(self, place):
        if self._ring is not None and place is not None:
            stroke = [self.toMapCoordinates(each) for each in self._line]
            self._ring.show_at(place, self.pixels(), self.colour, stroke)


class _Ring(QgsMapCanvasItem):
    """The brush at the pointer, and the stroke under way: legible on bright and on dark."""

    def __init__(self, canvas):
        super().__init__(canvas)
        self.canvas = canvas
        self.place = None
        self._radius, self._colour, self._stroke = 1.0, _LIGHT, []
        self.setZValue(100)

    def show_at(self, place, radius, colour, stroke):
        """place: QgsPointXY on the map; radius: pixels; stroke: QgsPointXY of the stroke so far."""
        self.place, self._radius, self._colour, self._stroke = place, radius, colour, stroke
        self.updatePosition()

    def boundingRect(self):
        size = self.canvas.viewport().size()
        return QRectF(0, 0, size.width(), size.height())

    def updatePosition(self):
        self.prepareGeometryChange()
        self.update()

    def paint(self, painter, option=None, widget=None):
        if self.place is None:
            return
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if self._stroke:
            ink = QColor(self._colour)
            ink.setAlpha(130)
            pen = QPen(ink, 2 * self._radius)
            pen.setCapStyle(Qt.PenCapStyle.RoundCap)
            pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
            painter.setPen(pen)
            places = [self.toCanvasCoordinates(place) for place in self._stroke]
            painter.drawPolyline(QPolygonF(places)) if len(places) > 1 else painter.drawPoint(places[0])
        at = QPointF(self.toCanvasCoordinates(self.place))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for colour, width in ((_DARK, 3.6), (_LIGHT, 1.6)):
            painter.setPen(QPen(colour, width))
            painter.drawEllipse(at, self._radius, self._radius)
        painter.restore()
