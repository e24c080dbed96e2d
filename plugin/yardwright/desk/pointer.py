"""The figures under the pointer: worked out as it moves, shown beside it and told to whoever listens."""

from qgis.core import QgsCsException
from qgis.PyQt.QtCore import QObject, QPoint, Qt, pyqtSignal
from qgis.PyQt.QtWidgets import QLabel

from ..model.kinds import BY_NAME
from .words import tr

_FAR_M = 1500.0
"""Further than this from the hole's line the figures of that hole say nothing."""


class PointerFigures(QObject):
    """Follows the pointer over the map.

    Signal ``figures``: a list of ``(title, text)`` of the place under the pointer, empty where there is
    nothing to say. The label beside the pointer is shown only while something is drawn (``follow``).
    """

    figures = pyqtSignal(list)

    def __init__(self, in_hand):
        super().__init__(in_hand)
        self.in_hand = in_hand
        self.canvas = in_hand.iface.mapCanvas()
        self.label = QLabel(self.canvas.viewport())
        self.label.setObjectName("yardwright_pointer")
        self.label.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.label.setStyleSheet(
            "background: rgba(20, 24, 28, 215); color: white; border-radius: 4px; padding: 4px 7px;"
        )
        self.label.hide()
        self._tool = None
        self._ways = None
        self.canvas.xyCoordinates.connect(self._moved)
        for signal in (in_hand.course_changed, in_hand.hole_changed, in_hand.edited):
            signal.connect(self._forget)
        self.canvas.destinationCrsChanged.connect(self._forget)

    def let_go(self):
        """Listen to nothing any more, and take the label away."""
        self.follow(None)
        self.canvas.xyCoordinates.disconnect(self._moved)
        self.canvas.destinationCrsChanged.disconnect(self._forget)
        self.label.deleteLater()

    def follow(self, tool):
        """Show the label while ``tool`` (a DrawTool) is in hand; None hides it."""
        if self._tool is not None:
            self._tool.pointed.disconnect(self._pointed)
        self._tool = tool
        self.label.hide()
        if tool is not None:
            tool.pointed.connect(self._pointed)

    def _forget(self):
        self._ways = None

    def _moved(self, place):
        if self._tool is None:
            self.figures.emit(self.told(place, [], None))

    def _pointed(self, place, outline):
        if place is None:
            self.label.hide()
            self.figures.emit([])
            return
        told = self.told(place, outline, self._tool.kind)
        self.figures.emit(told)
        self._show(told, place)

    def _show(self, told, place):
        if not told:
            self.label.hide()
            return
        self.label.setText("\n".join(f"{title}  {text}" for title, text in told))
        self.label.adjustSize()
        pixel = self.canvas.getCoordinateTransform().transform(place)
        at = QPoint(int(pixel.x()) + 18, int(pixel.y()) + 18)
        room = self.canvas.viewport().size()
        if at.x() + self.label.width() > room.width():
            at.setX(at.x() - self.label.width() - 36)
        if at.y() + self.label.height() > room.height():
            at.setY(at.y() - self.label.height() - 36)
        self.label.move(at)
        self.label.show()

    # What is told

    def told(self, place, outline, kind):
        """``[(title, text)]`` of a place on the map; outline: what would be drawn there of a ``kind``."""
        from ..measure.pointer import point_figures

        played, to_frame = self._way_to_frame()
        if played is None:
            return []
        try:
            (point,) = to_frame([place]).tolist()
        except QgsCsException:  # the pointer is beyond the Earth's edge
            return []
        found = point_figures(played, point, self.in_hand.tee_set)
        # Places far beyond it come out as infinite or as no number: neither is “not further than”.
        if found is None or not found.aside <= _FAR_M:
            return []
        unit = self.in_hand.course().settings.unit
        if kind == "pin":
            return self._of_pin(played, point, unit)
        told = _of_point(found, unit)
        if kind == "marker":
            told += self._of_marker(played, point, unit)
        elif outline:
            told += self._of_outline(played, to_frame(outline).tolist(), kind, unit)
        return told

    def _way_to_frame(self):
        """``(PlayedHole, function from places on the map to its frame)``, kept until something changes."""
        if self._ways is None:
            from ..model.errors import YardwrightError

            holes = self.in_hand.layer("hole")
            try:
                # Amid the closing of a project the pointer moves when the layers are gone already.
                played = None if holes is None else self.in_hand.played()
            except YardwrightError:
                played = None
            self._ways = None, None
            if played is not None:
                from .turning import places_in_frame

                self._ways = played, places_in_frame(self.canvas, holes.crs(), played.frame)
        return self._ways

    def _of_marker(self, played, point, unit):
        from ..measure.pointer import marker_figures

        found = marker_figures(played, point, self.in_hand.course().settings)
        if found is None:
            return []
        text = tr("{} stated, {} measured").format(_whole(found.states, unit), _one(found.measures, unit))
        return [(tr("Marker"), text)]

    def _of_pin(self, played, point, unit):
        from ..measure.pins import locate_pin

        if played.green is None:
            return []
        place = locate_pin(played.green, point)
        if not place.to_margin >= 0:
            return []
        return [
            (tr("On"), tr("{}, {} from the back").format(_one(place.on, unit), _one(place.back, unit))),
            (tr("From left"), _or_none(place.left, unit)),
            (tr("From right"), _or_none(place.right, unit)),
            (tr("To the margin"), f"{_one(place.to_margin, unit)} {unit}"),
            *self._of_slope(played, point),
        ]

    def _of_slope(self, played, point):
        """How the ground falls at a pin, seen with the approach up; nothing where no heights are known."""
        from ..measure.fall import fall_said, fall_sign, turn_of

        percent, azimuth = self._tool.slope_at(played, point) if self._tool is not None else (None, None)
        if percent is None:
            return []
        turn = turn_of(azimuth, played.green.azimuth)
        return [(tr("Slope"), f"{fall_sign(percent, turn)} {fall_said(percent, turn)}".strip())]

    def _of_outline(self, played, points, kind, unit):
        from ..measure.pointer import line_length, outline_figures

        if BY_NAME[kind].geometry == "LineString":
            return [(tr("Length"), f"{_one(line_length(points), unit)} {unit}")]
        found = outline_figures(played, points, of_green=kind == "green")
        if found is None:
            return []
        if found.area is None:
            return [(tr("Outline"), tr("crosses itself"))]
        told = [(tr("Area"), _area(found.area, unit))]
        if found.depth is not None:
            text = tr("{} deep, {} wide").format(_one(found.depth, unit), _one(found.width, unit))
            told.append((tr("Green"), text))
        return told


def _of_point(found, unit):
    side = tr("left") if found.side == "left" else tr("right")
    name = tr("From {}").format(found.tee_set) if found.tee_set else tr("From the tee")
    told = [
        (name, f"{_whole(found.from_tee, unit)} {unit}"),
        (tr("Along"), tr("{}, {} {}").format(_whole(found.station, unit), _whole(found.aside, unit), side)),
    ]
    if found.middle is not None:
        figures = (_whole(one, unit) for one in (found.front, found.middle, found.back))
        told.append((tr("To the green"), " · ".join(figures)))
    return told


def _whole(metres, unit):
    from ..measure.units import to_unit, whole

    return str(whole(to_unit(metres, unit)))


def _one(metres, unit):
    from ..measure.units import to_unit

    return f"{to_unit(metres, unit):.1f}"


def _or_none(metres, unit):
    return "–" if metres is None else f"{_one(metres, unit)} {unit}"


def _area(square_metres, unit):
    from ..measure.units import to_square_unit, whole

    return tr("{} sq {}").format(whole(to_square_unit(square_metres, unit)), unit)
