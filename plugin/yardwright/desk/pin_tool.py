"""Places a pin by a click on the green of the hole in hand, with the lines its figures are counted on."""

from qgis.core import QgsCsException, QgsGeometry, QgsPointXY, QgsWkbTypes
from qgis.gui import QgsMapTool, QgsRubberBand
from qgis.PyQt.QtCore import Qt, pyqtSignal
from qgis.PyQt.QtGui import QColor

from .words import told_in

_LIGHT, _DARK, _NAMED = QColor(255, 255, 255), QColor(20, 24, 28, 210), QColor("#ff8fc7")


class PinTool(QgsMapTool):
    """The map tool of one round's pins. in_hand: the CourseInHand.

    Signals: ``pointed`` (the pointer's place on the map, QgsPointXY, None when the tool is laid down, and an
    empty list: as drawing tools have it), ``placed`` (a measure.pins.PinPlace on the green of the hole in
    hand, where it was clicked).
    """

    pointed = pyqtSignal(object, object)
    placed = pyqtSignal(object)
    kind = "pin"

    def __init__(self, in_hand):
        super().__init__(in_hand.iface.mapCanvas())
        self.in_hand = in_hand
        self._bands = []
        self.setCursor(Qt.CursorShape.CrossCursor)

    def deactivate(self):
        """QGIS calls this when another tool is taken in hand."""
        self._show(())
        self.pointed.emit(None, [])
        super().deactivate()

    def canvasMoveEvent(self, event):
        """Follows the pointer over the green."""
        place = self.toMapCoordinates(event.pos())
        with told_in(self.in_hand.iface.messageBar()):
            self._show(self._lines(place))
        self.pointed.emit(place, [])

    def canvasReleaseEvent(self, event):
        """A click on the green places the pin; one beside it nothing."""
        if event.button() != Qt.MouseButton.LeftButton:
            return
        with told_in(self.in_hand.iface.messageBar()):
            found = self._located(self.toMapCoordinates(event.pos()))
            if found is not None:
                self.placed.emit(found[1])

    def keyPressEvent(self, event):
        """Esc lays the tool down."""
        if event.key() == Qt.Key.Key_Escape:
            self.canvas().unsetMapTool(self)
        else:
            super().keyPressEvent(event)

    def _located(self, place):
        """``(PlayedHole, PinPlace, function from its frame to the map)`` on the green, None beside it."""
        from ..measure.pins import locate_pin
        from .turning import map_places, places_in_frame

        holes = self.in_hand.layer("hole")
        played = None if holes is None else self.in_hand.played()
        if played is None or played.green is None:
            return None
        canvas = self.canvas()
        try:
            (point,) = places_in_frame(canvas, holes.crs(), played.frame)([place])
        except QgsCsException:  # the pointer is beyond the Earth's edge
            return None
        found = locate_pin(played.green, point)
        if not found.to_margin >= 0:
            return None
        return played, found, map_places(canvas, holes.crs(), played.frame)

    def _lines(self, place):
        """``[(colour, width, places on the map)]``: the depth, the square line, its part to the margin."""
        import numpy as np

        found = self._located(place)
        if found is None:
            return ()
        played, pin, to_map = found
        green = played.green
        square = np.array([green.direction[1], -green.direction[0]])
        left = pin.point - square * (pin.left or 0.0)
        right = pin.point + square * (pin.right or 0.0)
        nearer = left if (pin.left or 0.0) <= (pin.right or 0.0) else right
        lines = []
        for colour, width, ends in (
            (_LIGHT, 2, (green.front, green.back)),
            (_LIGHT, 2, (left, right)),
            (_NAMED, 4, (pin.point, nearer)),
        ):
            places = [QgsPointXY(x, y) for x, y in to_map(np.array(ends)).tolist()]
            lines += [(_DARK, width + 2, places), (colour, width, places)]
        return lines

    def _show(self, lines):
        for band in self._bands:
            self.canvas().scene().removeItem(band)
        self._bands = []
        for colour, width, places in lines:
            band = QgsRubberBand(self.canvas(), QgsWkbTypes.GeometryType.LineGeometry)
            band.setColor(colour)
            band.setWidth(width)
            band.setToGeometry(QgsGeometry.fromPolylineXY(places), None)
            self._bands.append(band)
