"""Places a pin by a click on the green of the hole in hand, with the lines its figures are counted on.

The ground where no hole may be cut is veiled while the tool is in hand.
"""

from contextlib import contextmanager

from qgis.core import QgsCsException, QgsGeometry, QgsPointXY, QgsWkbTypes
from qgis.gui import QgsMapCanvasItem, QgsMapTool, QgsRubberBand
from qgis.PyQt.QtCore import QRectF, Qt, pyqtSignal
from qgis.PyQt.QtGui import QBrush, QColor, QPainter, QPainterPath, QPen, QPolygonF

from ..model.errors import YardwrightError
from .terrains import HeldHeights
from .words import told_in

_LIGHT, _DARK, _NAMED = QColor(255, 255, 255), QColor(20, 24, 28, 210), QColor("#ff8fc7")
_VEIL, _HATCH = QColor(20, 24, 28, 105), QColor(255, 255, 255, 190)


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
        self._connections = []
        self.veil = None
        self.over_shades = False
        self.heights = HeldHeights(in_hand.project)
        self.setCursor(Qt.CursorShape.CrossCursor)

    def activate(self):
        """QGIS calls this when the tool is taken in hand."""
        super().activate()
        self._take_veil_off()
        self.veil = _Veil(self.canvas())
        self.veil.dark = not self.over_shades
        self._connections = [
            (signal, signal.connect(self._veil_again))
            for signal in (
                self.in_hand.course_changed,
                self.in_hand.hole_changed,
                self.in_hand.edited,
                self.in_hand.event_changed,
                self.canvas().destinationCrsChanged,
            )
        ]
        changed = self.in_hand.course_changed
        self._connections.append((changed, changed.connect(self.heights.let_go)))
        self._veil_again()

    def lie_over_shades(self, on):
        """Whether the green is shaded beneath the veil, which then leaves the shades their colours."""
        self.over_shades = on
        if self.veil is not None:
            self.veil.dark = not on
            self.veil.update()

    def deactivate(self):
        """QGIS calls this when another tool is taken in hand."""
        self._show(())
        self._take_veil_off()
        self.heights.let_go()
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

    # The ground that is closed

    def _take_veil_off(self):
        while self._connections:
            signal, connection = self._connections.pop()
            signal.disconnect(connection)
        if self.veil is not None:
            self.canvas().scene().removeItem(self.veil)
            self.veil = None

    def _veil_again(self, *_):
        """Once for a hole, a round or an edit; the pointer moves over what is there already."""
        with told_in(self.in_hand.iface.messageBar()):
            self.veil.lay(self._closed_on_the_map())

    def _closed_on_the_map(self):
        """The rings, lists of QgsPointXY, of the ground of the green in hand where no hole may be cut."""
        from .turning import map_places

        holes = self.in_hand.layer("hole")
        try:
            closed = None if holes is None else closed_ground(self.in_hand)
        except YardwrightError:
            # Amid the closing of a project its layers are gone already; the panel says what else may be.
            closed = None
        if closed is None or closed.is_empty:
            return []
        to_map = map_places(self.canvas(), holes.crs(), self.in_hand.played().frame)
        polygons = [one for one in getattr(closed, "geoms", (closed,)) if one.geom_type == "Polygon"]
        rings = [ring for one in polygons for ring in (one.exterior, *one.interiors)]
        try:
            return [[QgsPointXY(x, y) for x, y in to_map(ring.coords).tolist()] for ring in rings]
        except QgsCsException:  # the map's projection does not know the place
            return []

    # The pin

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

    def slope_at(self, played, point):
        """``(percent, azimuth)`` of the ground at a point of a hole's frame, None where not known."""
        return self.heights.slope_at(played, self.in_hand.course().crs, point)

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


def closed_ground(in_hand):
    """Where on the green of the hole in hand no hole may be cut in the round in hand, shapely, in the hole's
    frame: by the limits of the event and the pins of its earlier rounds. None without event or green."""
    ground = ground_in_hand(in_hand)
    return None if ground is None else in_hand.played().green.geometry.difference(ground.area)


def ground_in_hand(in_hand):
    """The measure.cutting.Ground of the green of the hole in hand in the round in hand, by the limits of the
    event and the pins of its earlier rounds. None without event or green."""
    event = in_hand.event_in_hand()
    played = None if event is None or in_hand.round is None else in_hand.played()
    if played is None or played.green is None:
        return None
    return in_hand.kept(
        ("ground", event, in_hand.round, in_hand.hole), lambda: _ground(in_hand, event, played)
    )


def _ground(in_hand, event, played):
    from ..measure.cutting import cutting_ground

    earlier = _earlier_pins(in_hand, event, played)
    with _slope_of(in_hand, event.limits, played) as slope:
        return cutting_ground(played.green, event.limits, earlier, slope)


def _earlier_pins(in_hand, event, played):
    """The pins of earlier rounds on the green of a hole, in its frame."""
    before = [pin for pin in event.pins if pin.round < in_hand.round]
    return [point for _, point in pins_on_green(in_hand, before, played)]


def pins_on_green(in_hand, pins, played):
    """``[(Pin, its point in the hole's frame)]`` of those on the green of a PlayedHole, whichever hole they
    are of."""
    from ..measure.pins import follow_in

    course, index = in_hand.course(), in_hand.index()
    placed = [follow_in(course, index, pin) for pin in pins]
    here = [
        one
        for one in placed
        if one.place is not None and one.played.green.feature.fid == played.green.feature.fid
    ]
    points = played.frame.to_frame(course.crs)([one.point for one in here]) if here else ()
    return [(one.pin, point) for one, point in zip(here, points)]


@contextmanager
def _slope_of(in_hand, limits, played):
    """The slope of a hole's ground, a function of places in its frame, from the topmost layer of heights;
    None where there is none or nothing is asked of the slope."""
    from .terrains import heights_in

    if limits.slope_pct is None:
        yield None
        return
    crs = in_hand.course().crs
    to_course = played.frame.from_frame(crs)
    with heights_in(in_hand.project) as terrain:
        yield None if terrain is None else lambda points: terrain.slope_at(to_course(points), crs)[0]


class _Veil(QgsMapCanvasItem):
    """A hatch over ground on the map: dark for bright images, with light lines for dark ones."""

    def __init__(self, canvas):
        super().__init__(canvas)
        self._rings = []
        self.path = QPainterPath()
        self.dark = True
        self.setZValue(-4.5)  # above a second date, which lies at -5, beneath figures and rubber bands

    def lay(self, rings):
        """Cover what lies within an odd number of rings, lists of QgsPointXY."""
        self._rings = rings
        self.updatePosition()

    # What QGIS asks of it

    def boundingRect(self):
        if self.path.isEmpty():
            return QRectF()
        return self.path.boundingRect().adjusted(-2, -2, 2, 2)

    def updatePosition(self):
        """Lay it anew: the map has moved, turned or changed its scale."""
        self.prepareGeometryChange()
        self.path = QPainterPath()
        self.path.setFillRule(Qt.FillRule.OddEvenFill)
        for ring in self._rings:
            self.path.addPolygon(QPolygonF([self.toCanvasCoordinates(place) for place in ring]))
        self.update()

    def paint(self, painter, option=None, widget=None):
        if self.path.isEmpty():
            return
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if self.dark:
            painter.fillPath(self.path, _VEIL)
        painter.fillPath(self.path, QBrush(_HATCH, Qt.BrushStyle.BDiagPattern))
        for colour, width in ((_DARK, 3.0), (_LIGHT, 1.2)):
            painter.strokePath(self.path, QPen(colour, width))
        painter.restore()
