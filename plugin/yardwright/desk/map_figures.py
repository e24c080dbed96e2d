"""The figures of the hole in hand, written on the map beside what they are about."""

from math import hypot

from qgis.core import QgsCsException, QgsPointXY
from qgis.gui import QgsMapCanvasItem
from qgis.PyQt.QtCore import QObject, QPointF, QRectF, Qt
from qgis.PyQt.QtGui import QColor, QFontMetricsF, QPainter, QPen

from .words import told_in, tr

_LEAST_LENGTH = 260
"""A hole shorter than this on the screen, pixels, has no room for figures."""
_LEAST_GREEN = 70
"""The same of a green's depth."""
_PAD = QPointF(6, 2)
_DARK = QColor(20, 24, 28)
_LIGHT = QColor(255, 255, 255)
_OF_GREEN = QColor(16, 84, 104, 225)
_GROUNDS = {
    "length": QColor(84, 52, 120, 225),
    **dict.fromkeys(("green", "front", "middle", "back", "green_size"), _OF_GREEN),
    "marker": QColor(140, 30, 24, 230),
}
_GROUND = QColor(20, 24, 28, 215)
_FAR_ONLY, _CLOSE_ONLY = ("green",), ("front", "middle", "back", "green_size")
"""What is said of the green as long as it is small on the screen, and what instead once it is not."""
_KEPT = ("marker", "plate")
_NOTHING = [], [], [], []


class MapFigures(QObject):
    """Writes the figures while ``shown``; they follow every edit, the hole and the tee set in hand."""

    def __init__(self, in_hand):
        super().__init__(in_hand)
        self.in_hand = in_hand
        self.canvas = in_hand.iface.mapCanvas()
        self.item = None
        for signal in (in_hand.course_changed, in_hand.hole_changed, in_hand.edited, in_hand.tee_set_changed):
            signal.connect(self.refresh)
        self.canvas.destinationCrsChanged.connect(self.refresh)

    @property
    def shown(self):
        """Whether the figures are wanted on the map."""
        return self.item is not None

    def show(self, on):
        """Write the figures on the map, or wipe them off."""
        if on == self.shown:
            return
        if on:
            self.item = _Labels(self.canvas)
            self.refresh()
        else:
            self.canvas.scene().removeItem(self.item)
            self.item = None

    def let_go(self):
        """Listen to nothing any more, and wipe the figures off."""
        self.show(False)
        self.canvas.destinationCrsChanged.disconnect(self.refresh)

    def refresh(self):
        """Work the figures out anew."""
        if not self.shown:
            return
        with told_in(self.in_hand.iface.messageBar()):
            self.item.lay(*self._on_the_map())

    def _on_the_map(self):
        """``(labels, kept, line, green)``, all places on the map: ``[(says, text, place, a place on its best
        side)]``, the places that are better not covered, the ends of the line of play and of the green."""
        from ..measure.callouts import callouts
        from ..model.errors import YardwrightError

        holes = self.in_hand.layer("hole")
        try:
            # Amid the closing of a project QGIS tells of its map when the layers are gone already.
            played = None if holes is None else self.in_hand.played()
            course = self.in_hand.course() if played is not None else None
        except YardwrightError:
            # The panel of the hole says what the matter is; there is nothing to write.
            played = None
        if played is None:
            return _NOTHING
        found = callouts(played, self.in_hand.measured(), self.in_hand.tee_set)
        to_map = self._to_map(holes.crs(), played)
        try:
            places = to_map([one.place for one in found])
            beside = to_map([(one.place[0] + one.away[0], one.place[1] + one.away[1]) for one in found])
            kept = to_map([f.geometry.coords[0] for f in played.features if f.kind in _KEPT])
            line = to_map([played.drawn.points[0], played.drawn.points[-1]])
            green = to_map([] if played.green is None else [played.green.front, played.green.back])
        except QgsCsException:  # the map's projection does not know the place
            return _NOTHING
        unit = course.settings.unit
        texts = [text_of(one, unit) for one in found]
        return list(zip([one.says for one in found], texts, places, beside)), kept, line, green

    def _to_map(self, crs, played):
        """A function from places in a hole's frame to a list of QgsPointXY on the map; crs: the course's."""
        from .turning import map_places

        transform = map_places(self.canvas, crs, played.frame)
        return lambda places: [QgsPointXY(x, y) for x, y in transform(places).tolist()] if places else []


def text_of(callout, unit):
    """What a Callout says, in whole units, as a short line."""
    figures = [_whole(one, unit) for one in callout.figures]
    words = {
        "length": tr("{name} {0}"),
        "hazard": tr("{0} – {1}"),
        "green": tr("{0} · {1} · {2}"),
        "green_size": tr("{0} deep, {1} wide"),
        "turn": tr("turn at {0}, {1} to go"),
        "marker": tr("{0} measures {1}"),
    }
    if callout.says == "hazard" and figures[0] == figures[1]:
        return figures[0]
    return words.get(callout.says, "{0}").format(*figures, name=callout.label or tr("Length"))


def _whole(metres, unit):
    from ..measure.units import to_unit, whole

    value = whole(to_unit(metres, unit))
    return "–" if value is None else str(value)


class _Labels(QgsMapCanvasItem):
    """Texts beside places on the map, none over another, with a line to their place."""

    def __init__(self, canvas):
        super().__init__(canvas)
        self.canvas = canvas
        self._labels, self._kept, self._line, self._green = _NOTHING
        self._boxes = []
        self.setZValue(-4)  # above a second date, which lies at -5, beneath rubber bands

    def lay(self, labels, kept, line, green):
        """Show ``[(says, text, place, a place on its best side)]``, QgsPointXY on the map.

        kept: places better not covered. line, green: the two ends of each, [] without.
        """
        self._labels, self._kept, self._line, self._green = labels, kept, line, green
        self.updatePosition()

    def label_boxes(self):
        """Where texts stand, QRectF in pixels of the map: other items keep off them."""
        return [box for _, _, box, _ in self._boxes]

    # What QGIS asks of it

    def boundingRect(self):
        size = self.canvas.viewport().size()
        return QRectF(0, 0, size.width(), size.height())

    def updatePosition(self):
        """Find every text its place again: the map has moved, turned or changed its scale."""
        self.prepareGeometryChange()
        self._boxes = self._placed()
        self.update()

    def _font(self):
        font = self.canvas.font()
        font.setBold(True)
        return font

    def _length(self, ends):
        if not ends:
            return 0.0
        one, two = (self.toCanvasCoordinates(end) for end in ends)
        return hypot(one.x() - two.x(), one.y() - two.y())

    def _placed(self):
        """``[(says, text, box, the place it is about)]`` of the texts that have room."""
        from ..guide.labels import placed

        if self._length(self._line) < _LEAST_LENGTH:
            return []
        area = self.boundingRect().adjusted(4, 4, -4, -4)
        unsaid = _FAR_ONLY if self._length(self._green) >= _LEAST_GREEN else _CLOSE_ONLY
        metrics = QFontMetricsF(self._font())
        wanted, sizes, sides = [], [], []
        for says, text, place, beside in self._labels:
            at = self.toCanvasCoordinates(place)
            if says not in unsaid and area.contains(at):
                side = self.toCanvasCoordinates(beside) - at
                far = hypot(side.x(), side.y()) or 1.0
                wanted.append((says, text, at))
                sizes.append(
                    (metrics.horizontalAdvance(text) + 2 * _PAD.x(), metrics.height() + 2 * _PAD.y())
                )
                sides.append((side.x() / far, side.y() / far))
        kept = [self.toCanvasCoordinates(place) for place in self._kept]
        middles = placed(
            [(at.x(), at.y()) for _, _, at in wanted],
            sizes,
            (area.left(), area.top(), area.right(), area.bottom()),
            gap=11.0,
            kept=[(at.x(), at.y()) for at in kept],
            first=sides,
        )
        boxes = []
        for (says, text, at), (width, height), middle in zip(wanted, sizes, middles):
            if middle is not None:
                box = QRectF(middle[0] - width / 2, middle[1] - height / 2, width, height)
                boxes.append((says, text, box, at))
        return boxes

    def paint(self, painter, option=None, widget=None):
        if not self._boxes:
            return
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        for _, _, box, at in self._boxes:
            end = _rim(box, at)
            for colour, width in ((_DARK, 3.2), (_LIGHT, 1.4)):
                painter.setPen(QPen(colour, width))
                painter.drawLine(at, end)
            painter.setPen(QPen(_DARK, 1))
            painter.setBrush(_LIGHT)
            painter.drawEllipse(at, 2.6, 2.6)
        painter.setFont(self._font())
        for says, text, box, _ in self._boxes:
            painter.setPen(QPen(QColor(255, 255, 255, 150), 1))
            painter.setBrush(_GROUNDS.get(says, _GROUND))
            painter.drawRoundedRect(box, 4, 4)
            painter.setPen(_LIGHT)
            painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)
        painter.restore()


def _rim(box, at):
    """The point of a box's rim nearest to a place outside it."""
    return QPointF(
        min(max(at.x(), box.left()), box.right()),
        min(max(at.y(), box.top()), box.bottom()),
    )
