"""The green of the hole in hand shaded by its slope on the map, with arrows downhill and a legend.

QGIS imports this at its start: what is heavy is imported where it is used.
"""

from dataclasses import dataclass

from qgis.core import QgsCsException, QgsPointXY
from qgis.gui import QgsMapCanvasItem
from qgis.PyQt.QtCore import QObject, QPointF, QRectF, Qt
from qgis.PyQt.QtGui import QColor, QFontMetricsF, QImage, QPainter, QPainterPath, QPen, QPolygonF

from ..model.errors import YardwrightError
from .words import told_in, tr

_BORDERS = (1.0, 2.0, 3.0, 4.0)
"""Per cent between two shades: whole ones, for committees and greenkeepers speak of these (common practice,
no source). The committee's own limit is one more, and what lies above it is one shade."""
_NEAR_LIMIT = 0.25
"""A border so near below the limit would make a shade too thin to be seen."""
_SHADES = ("#fff4bd", "#b5dba4", "#5fb2b0", "#2f78a6", "#253a78")
"""From level to steep, each darker than the one before, so that they are told apart without colours too."""
_ABOVE, _HATCH, _EDGE = "#d2451e", "#ffffff", "#14181c"
"""Above the limit: another colour, a hatch, and a line about it."""
_OPAQUE = 205
_HATCH_APART, _HATCH_WIDE = 9, 3
_CLEAR_PX = 4.0
"""So much of the map is left free along the green's margin, within it."""
_ARROW_PX, _ARROWS_APART_PX, _LEAST_ARROW_PCT = 19.0, 40.0, 0.3
_ENDS = (-_ARROW_PX / 2, _ARROW_PX / 2)
_MOST_PIXELS = 400_000
_LEAST_GREEN_PX, _LEAST_EXPLAINED_PX = 24.0, 130.0
"""How large a green must be on the screen to be shaded; to have its shades explained and its pins shown."""
_PIN_PX = 8.0
_FAR_M = 20.0
_DARK, _LIGHT = QColor(20, 24, 28), QColor(255, 255, 255)
_GROUND = QColor(20, 24, 28, 225)
_PAD, _SWATCH = 9.0, 26.0


@dataclass(frozen=True)
class Shade:
    """A class of slopes. above: the percent it begins over; beyond: whether that is the committee's limit."""

    above: float
    up_to: float
    colour: str
    beyond: bool = False


def shades_for(limit):
    """The Shades from level to steep. limit: the committee's, percent, None without one."""
    if limit is None:
        edges = [0.0, *_BORDERS, None]
        return tuple(Shade(low, high, colour) for low, high, colour in zip(edges, edges[1:], _SHADES))
    edges = [0.0, *(border for border in _BORDERS if border < limit - _NEAR_LIMIT), limit]
    below = [Shade(low, high, colour) for low, high, colour in zip(edges, edges[1:], _SHADES)]
    return (*below, Shade(limit, None, _ABOVE, True))


def shade_text(shade):
    """What a shade means, in words."""
    if shade.beyond:
        return tr("above {} %: steeper than the limit").format(f"{shade.above:g}")
    if shade.up_to is None:
        return tr("above {} %").format(f"{shade.above:g}")
    if not shade.above:
        return tr("up to {} %").format(f"{shade.up_to:g}")
    return tr("{} to {} %").format(f"{shade.above:g}", f"{shade.up_to:g}")


@dataclass(frozen=True)
class ShadedGreen:
    """What is shown of a green. grid: its SlopeGrid; rings: its margin on the map, lists of QgsPointXY;
    corners: where on the map ``origin`` lies, a point of the frame, and two points _FAR_M to its east and to
    its north; pins: ``[(round, place on the map, whether of the round in hand)]``, for the shades lie over
    the layer that shows them."""

    grid: object
    shades: tuple
    rings: list
    origin: tuple
    corners: list
    pins: list


class SlopeShading(QObject):
    """Shades the green of the hole in hand while ``shown``; follows the hole, the limits and every edit."""

    def __init__(self, in_hand):
        super().__init__(in_hand)
        from .terrains import KeptSlopes

        self.in_hand = in_hand
        self.canvas = in_hand.iface.mapCanvas()
        self.slopes = KeptSlopes(in_hand.project)
        self.item = self.legend = self.pins = None
        self._connections = []

    @property
    def shown(self):
        """Whether the green is shaded, or the map says why it is not."""
        return self.item is not None

    def show(self, on):
        """Shade the green, or wipe the shades off."""
        if on == self.shown:
            return
        if not on:
            self.let_go()
            return
        self.item, self.legend = _Shades(self.canvas), _Legend(self.canvas)
        self.pins = _Pins(self.canvas)
        self._connections = [
            (signal, signal.connect(self.refresh))
            for signal in (
                self.in_hand.course_changed,
                self.in_hand.hole_changed,
                self.in_hand.edited,
                self.in_hand.event_changed,
                self.canvas.destinationCrsChanged,
            )
        ]
        self.refresh()

    def let_go(self):
        """Wipe the shades off and listen to nothing any more."""
        while self._connections:
            signal, connection = self._connections.pop()
            signal.disconnect(connection)
        for item in filter(None, (self.item, self.legend, self.pins)):
            self.canvas.scene().removeItem(item)
        self.item = self.legend = self.pins = None

    def refresh(self, *_):
        """Look again which green it is, and how it falls."""
        if not self.shown:
            return
        with told_in(self.in_hand.iface.messageBar()):
            green, why_not = self._green()
            self.item.lay(green)
            self.pins.lay(green)
            self.legend.explain(tr("Slope of the green, hole {}").format(self.in_hand.hole), green, why_not)

    def _green(self):
        """``(ShadedGreen or None, the sentence why there is none)``."""
        import numpy as np

        try:
            # Amid the closing of a project the news comes when the layers are gone already.
            played = None if self.in_hand.layer("hole") is None else self.in_hand.played()
            course = None if played is None else self.in_hand.course()
        except YardwrightError:
            played = None
        if played is None:
            return None, ""
        if played.green is None:
            return None, tr("Hole {} has no green to be shaded.").format(played.number)
        try:
            grid = self.slopes.of(played, course.crs)
        except YardwrightError as error:
            return None, str(error).strip()
        if not np.isfinite(grid.percent).any():
            return None, tr("The heights do not reach the green of hole {}.").format(played.number)
        return self._on_the_map(played, grid), ""

    def _on_the_map(self, played, grid):
        from .turning import map_places

        to_map = map_places(self.canvas, self.in_hand.layer("hole").crs(), played.frame)
        x, y = (float(one) for one in played.green.middle)

        def places(points):
            return [QgsPointXY(*place) for place in to_map(points).tolist()]

        green = played.green.geometry
        event = self.in_hand.event_in_hand() if self.in_hand.event else None
        try:
            rings = [places(list(ring.coords)) for ring in (green.exterior, *green.interiors)]
            corners = places([(x, y), (x + _FAR_M, y), (x, y + _FAR_M)])
            pins = [(number, *places([point]), own) for number, point, own in self._pins(event, played)]
        except QgsCsException:  # the map's projection does not know the place
            return None
        limit = None if event is None else event.limits.slope_pct
        return ShadedGreen(grid, shades_for(limit), rings, (x, y), corners, pins)

    def _pins(self, event, played):
        """``(round, point of the frame, whether of the round in hand)`` of the event's pins on the green;
        those of the round in hand come last."""
        from .pin_tool import pins_on_green

        if event is None:
            return []
        found = pins_on_green(self.in_hand, event.pins, played)
        pins = [(pin.round, point, pin.round == self.in_hand.round) for pin, point in found]
        return sorted(pins, key=lambda one: one[2])


class _OnTheMap(QgsMapCanvasItem):
    """Something painted once for a view of the map, and only copied while nothing but the pointer moves."""

    def __init__(self, canvas, height):
        super().__init__(canvas)
        self.canvas = canvas
        self.green = None
        self.image, self.corner = None, QPointF()
        self.setZValue(height)

    def boundingRect(self):
        if self.image is None:
            return QRectF()
        ratio = self.image.devicePixelRatioF()
        return QRectF(
            self.corner.x(), self.corner.y(), self.image.width() / ratio, self.image.height() / ratio
        )

    def updatePosition(self):
        """Paint it anew: the map has moved, turned or changed its scale."""
        self.prepareGeometryChange()
        self.image = None
        self._make()
        self.update()

    def paint(self, painter, option=None, widget=None):
        if self.image is not None:
            painter.drawImage(self.corner, self.image)

    def _seen(self, least=_LEAST_GREEN_PX):
        """The view, and the rectangle of the green in it; an empty one of a green smaller than ``least``."""
        size = self.canvas.viewport().size()
        view = QRectF(0, 0, size.width(), size.height())
        if self.green is None:
            return view, QRectF()
        whole = QPolygonF([self.toCanvasCoordinates(place) for place in self.green.rings[0]]).boundingRect()
        if max(whole.width(), whole.height()) < least:
            return view, QRectF()
        return view, whole.intersected(view)

    def lay(self, green):
        """Show what belongs to a ShadedGreen, None for none."""
        self.green = green
        self.updatePosition()


class _Shades(_OnTheMap):
    """The shades of a ShadedGreen and its arrows, above the map and beneath the pin tool's veil."""

    def __init__(self, canvas):
        super().__init__(canvas, -4.6)

    def _make(self):
        _, seen = self._seen()
        if seen.isEmpty():
            return
        self.corner = QPointF(int(seen.left()), int(seen.top()))
        width, height = int(seen.width()) + 2, int(seen.height()) + 2
        self.image = self._shaded(width, height)
        margin = QPainterPath()
        margin.setFillRule(Qt.FillRule.OddEvenFill)
        for ring in self.green.rings:
            margin.addPolygon(QPolygonF([self.toCanvasCoordinates(one) - self.corner for one in ring]))
        painter = QPainter(self.image)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        outside = QPainterPath()
        outside.addRect(QRectF(self.image.rect()))
        painter.setCompositionMode(QPainter.CompositionMode.CompositionMode_DestinationOut)
        painter.fillPath(outside.subtracted(margin), _DARK)
        painter.strokePath(margin, QPen(_DARK, 2 * _CLEAR_PX))
        painter.setCompositionMode(QPainter.CompositionMode.CompositionMode_SourceOver)
        self._arrows(painter, margin)
        painter.end()

    def _axes(self):
        """``(origin, matrix)``: pixels of the image = origin + metres from the green's origin @ matrix."""
        import numpy as np

        pixels = [self.toCanvasCoordinates(place) - self.corner for place in self.green.corners]
        origin, east, north = (np.array([pixel.x(), pixel.y()]) for pixel in pixels)
        return origin, np.array([east - origin, north - origin]) / _FAR_M

    def _shaded(self, width, height):
        """A QImage of the view: each pixel in the shade of the slope there, clear where none is known."""
        import numpy as np

        every = max(1, int(np.ceil((width * height / _MOST_PIXELS) ** 0.5)))
        across, down = np.arange(0, width, every), np.arange(0, height, every)
        x, y = np.meshgrid(across + every / 2, down + every / 2)
        origin, matrix = self._axes()
        metres = (np.column_stack([x.ravel(), y.ravel()]) - origin) @ np.linalg.inv(matrix)
        percent = self.green.grid.at(metres + self.green.origin)[0].reshape(x.shape)
        colours = _pixels_of(percent, self.green.shades, every)
        rows, columns = colours.shape
        held = colours.tobytes()  # a QImage looks at it until it is converted
        image = QImage(held, columns, rows, 4 * columns, QImage.Format.Format_ARGB32)
        image = image.convertToFormat(QImage.Format.Format_ARGB32_Premultiplied)
        return image.scaled(width, height) if every > 1 else image

    def _arrows(self, painter, margin):
        """Arrows downhill at the crossings of a grid of whole metres, as far apart as they are legible."""
        import numpy as np

        grid, (origin, matrix) = self.green.grid, self._axes()
        apart = max(1.0, np.ceil(_ARROWS_APART_PX / np.hypot(*matrix[0])))
        left, right = np.ceil(grid.x[0, 0] / apart), np.floor(grid.x[0, -1] / apart)
        low, high = np.ceil(grid.y[-1, 0] / apart), np.floor(grid.y[0, 0] / apart)
        x, y = np.meshgrid(np.arange(left, right + 1) * apart, np.arange(low, high + 1) * apart)
        points = np.column_stack([x.ravel(), y.ravel()])
        percent, azimuth = grid.at(points)
        turn = np.radians(azimuth)
        ahead = np.column_stack([np.sin(turn), np.cos(turn)]) @ matrix
        ahead /= np.hypot(*ahead.T)[:, None]
        middles = (points - self.green.origin) @ matrix + origin
        path = QPainterPath()
        for middle, way, steep in zip(middles.tolist(), ahead.tolist(), percent.tolist()):
            start, end = (QPointF(*(m + k * w for m, w in zip(middle, way))) for k in _ENDS)
            if steep >= _LEAST_ARROW_PCT and margin.contains(start) and margin.contains(end):
                _add_arrow(path, start, end)
        for colour, wide in ((_LIGHT, 4.2), (_DARK, 1.9)):
            pen = QPen(colour, wide)
            pen.setCapStyle(Qt.PenCapStyle.RoundCap)
            pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
            painter.strokePath(path, pen)


def _pixels_of(percent, shades, every):
    """Slopes as pixels of a QImage, 0xAARRGGBB; every: how many pixels of the map are one of these."""
    import numpy as np

    colours = np.array([_argb(shade.colour) for shade in shades] + [0], dtype=np.uint32)
    kind = np.searchsorted([shade.up_to for shade in shades[:-1]], percent, side="left")
    kind[np.isnan(percent)] = len(shades)
    found = colours[kind]
    if shades[-1].beyond:
        beyond = kind == len(shades) - 1
        row, column = np.indices(percent.shape) * every
        # Across the hatch of the pin tool's veil, so that ground under both is told from either.
        found[beyond & ((row - column) % _HATCH_APART < _HATCH_WIDE)] = _argb(_HATCH)
        known = kind < len(shades)
        for axis in (0, 1):
            near, far = (np.delete(beyond, end, axis) for end in (-1, 0))
            both = np.delete(known, -1, axis) & np.delete(known, 0, axis)
            edge = np.argwhere((near != far) & both)
            found[edge[:, 0], edge[:, 1]] = _argb(_EDGE, 255)
            edge[:, axis] += 1
            found[edge[:, 0], edge[:, 1]] = _argb(_EDGE, 255)
    return np.ascontiguousarray(found)


def _argb(colour, opaque=_OPAQUE):
    colour = QColor(colour)
    colour.setAlpha(opaque)
    return colour.rgba()


def _add_arrow(path, start, end):
    back = (start - end) / _ARROW_PX
    side = QPointF(-back.y(), back.x())
    path.moveTo(start)
    path.lineTo(end)
    path.moveTo(end + 6.0 * back + 4.2 * side)
    path.lineTo(end)
    path.lineTo(end + 6.0 * back - 4.2 * side)


class _Pins(_OnTheMap):
    """The pins on a ShadedGreen: discs with the number of their round, that of the round in hand dark."""

    def __init__(self, canvas):
        super().__init__(canvas, -4.4)  # above the veil, which lies at -4.5

    def _make(self):
        _, seen = self._seen(_LEAST_EXPLAINED_PX)
        if seen.isEmpty() or not self.green.pins:
            return
        self.corner = QPointF(int(seen.left()), int(seen.top()))
        ratio = self.canvas.devicePixelRatioF()
        size = [int(side * ratio) + 2 for side in (seen.width(), seen.height())]
        self.image = QImage(*size, QImage.Format.Format_ARGB32_Premultiplied)
        self.image.setDevicePixelRatio(ratio)
        self.image.fill(Qt.GlobalColor.transparent)
        painter = QPainter(self.image)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(self.canvas.font())
        for number, place, own in self.green.pins:
            middle = self.toCanvasCoordinates(place) - self.corner
            painter.setPen(QPen(_LIGHT if own else _DARK, 1.6))
            painter.setBrush(_DARK if own else _LIGHT)
            painter.drawEllipse(middle, _PIN_PX, _PIN_PX)
            box = QRectF(middle.x() - 20, middle.y() - 20, 40, 40)
            painter.drawText(box, Qt.AlignmentFlag.AlignCenter, str(number))
        painter.end()


class _Legend(_OnTheMap):
    """What the shades mean, in a corner of the map; or why a green has none."""

    def __init__(self, canvas):
        super().__init__(canvas, -3.8)  # above the figures, which lie at -4
        self.title = self.why_not = ""

    def explain(self, title, green, why_not):
        """Explain a ShadedGreen, or say ``why_not`` where there is none."""
        self.title, self.why_not = title, why_not
        self.lay(green)

    def lines(self):
        """The texts it shows now, from top to bottom."""
        if self.green is None:
            return [self.why_not] if self.why_not else []
        if self._seen(_LEAST_EXPLAINED_PX)[1].isEmpty():
            return []
        return [self.title, *map(shade_text, self.green.shades), tr("Arrows point downhill.")]

    def _make(self):
        lines = self.lines()
        if not lines:
            return
        view, _ = self._seen()
        metrics = QFontMetricsF(self.canvas.font())
        high = metrics.height() + 5.0
        shades = self.green.shades if self.green is not None else ()
        room = view.width() - 2 * (_PAD + 10)
        lines = [metrics.elidedText(line, Qt.TextElideMode.ElideRight, room) for line in lines]
        swatches = [None, *shades, None] if shades else [None]
        widths = [
            metrics.horizontalAdvance(line) + (_SWATCH + 7 if shade else 0)
            for line, shade in zip(lines, swatches)
        ]
        width, height = max(widths) + 2 * _PAD, len(lines) * high + 2 * _PAD - 5.0
        ratio = self.canvas.devicePixelRatioF()
        image = QImage(
            int(width * ratio) + 1, int(height * ratio) + 1, QImage.Format.Format_ARGB32_Premultiplied
        )
        image.setDevicePixelRatio(ratio)
        image.fill(Qt.GlobalColor.transparent)
        painter = QPainter(image)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(255, 255, 255, 150), 1))
        painter.setBrush(_GROUND)
        painter.drawRoundedRect(QRectF(0.5, 0.5, width - 1, height - 1), 4, 4)
        painter.setFont(self.canvas.font())
        for number, (line, shade) in enumerate(zip(lines, swatches)):
            top = _PAD + number * high
            left = _PAD
            if shade is not None:
                _paint_swatch(painter, QRectF(left, top + 1, _SWATCH, high - 6), shade)
                left += _SWATCH + 7
            painter.setPen(_LIGHT)
            painter.drawText(QPointF(left, top + metrics.ascent()), line)
        painter.end()
        self.image = image
        self.corner = self._free_corner(view, width, height)

    def _free_corner(self, view, width, height):
        """Where it stands: the lower left, unless it would cover the green there and not elsewhere."""
        green = self._seen()[1]
        low, right = view.height() - height - 10.0, view.width() - width - 10.0
        corners = [QPointF(10.0, low), QPointF(right, low), QPointF(10.0, 10.0), QPointF(right, 10.0)]
        free = (one for one in corners if not QRectF(one.x(), one.y(), width, height).intersects(green))
        return next(free, corners[0])


def _paint_swatch(painter, box, shade):
    painter.fillRect(box, QColor(shade.colour))
    if shade.beyond:
        painter.save()
        painter.setClipRect(box)
        painter.setPen(QPen(QColor(_HATCH), _HATCH_WIDE / 1.4))
        for step in range(0, int(box.width() + box.height()) + _HATCH_APART, _HATCH_APART):
            painter.drawLine(
                QPointF(box.left() + step, box.bottom()),
                QPointF(box.left() + step - box.height(), box.top()),
            )
        painter.restore()
