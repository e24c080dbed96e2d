"""A hole drawn on a sheet: play upwards, the line of play with its distances, and what is chosen."""

import math
from dataclasses import dataclass

import numpy as np
from qgis.PyQt.QtCore import QPointF, QRectF, QSize, Qt, pyqtSignal
from qgis.PyQt.QtGui import (
    QBrush,
    QColor,
    QFont,
    QFontMetricsF,
    QPainter,
    QPainterPath,
    QPen,
    QPolygonF,
    QTextOption,
)
from qgis.PyQt.QtWidgets import QToolTip, QWidget

from ..guide.windows import hole_points, up_of
from ..measure.units import UNITS, to_unit, whole
from ..model.geometry import coordinates
from ..model.kinds import BY_NAME
from .words import tr

PAPER = QColor("#f4f2ea")
INK = QColor("#22302a")
FAINT = QColor("#7d867c")
CHOSEN = QColor("#d4480b")
OFF = QColor("#c0341d")


@dataclass(frozen=True)
class _Look:
    """How a kind of area is painted: fill, outline and its width in pixels."""

    fill: str
    outline: str
    width: float = 1.0


_AREAS = {
    "rough": _Look("#e7e9d8", "#d5d9c1", 0.8),
    "fairway": _Look("#cbdcb0", "#a9c088", 1.0),
    "apron": _Look("#b5d09a", "#98b87b", 0.8),
    "penalty_area": _Look("#b9d6e6", "#5f98bb", 1.2),
    "trees": _Look("#93ad8b", "#76936f", 0.8),
    "tee": _Look("#a9c795", "#6f9260", 1.0),
    "green": _Look("#8cc07b", "#3f7b3c", 1.4),
    "bunker": _Look("#f6e6b4", "#c4a660", 1.0),
}
"""In the order they are painted."""
_DRY = _Look("#e8dcd2", "#b0856c", 1.2)
_MARGIN = 26.0
_TICK_EVERY = 50


@dataclass(frozen=True)
class Sheet:
    """What is drawn. played: PlayedHole. tee: the TeePlay whose line is shown, None for the drawn line.
    markers: measure.rows.MarkerRow of the hole. unit: ``yd`` or ``m``. title, subtitle: in words.
    crs: the course's CRS, in which the markers' proposed places are."""

    played: object
    tee: object
    markers: tuple
    unit: str
    title: str
    subtitle: str
    crs: str


class HoleDrawing(QWidget):
    """Paints a Sheet. ``show_sheet`` and ``choose`` change what is seen; a click on a thing is signalled."""

    thing_clicked = pyqtSignal(str, int)
    """The kind and feature id of what was clicked."""

    def __init__(self, parent=None):
        super().__init__(parent)
        self._sheet = None
        self._message = ""
        self._chosen = None
        self._figures = ()
        self._paths = []
        self._place = None
        self.setMinimumSize(220, 320)
        self.setMouseTracking(True)
        self.setAccessibleName(tr("Drawing of the hole"))

    def sizeHint(self):
        return QSize(340, 620)

    def show_sheet(self, sheet):
        """Draw another hole; nothing is chosen then."""
        self._sheet, self._message = sheet, ""
        self._chosen, self._figures = None, ()
        self.setAccessibleDescription(f"{sheet.title}. {sheet.subtitle}")
        self.update()

    def show_message(self, text):
        """Show a text instead of a hole."""
        self._sheet, self._message = None, text
        self._chosen, self._figures = None, ()
        self.setAccessibleDescription(text)
        self.update()

    def choose(self, shown, figures=()):
        """Make a ``measuring.Shown`` stand out (None: nothing), with ``figures``, short texts, beside it."""
        self._chosen, self._figures = shown, tuple(figures)
        self.update()

    def position_of(self, kind, fid):
        """Where on the widget a feature is drawn (QPointF), None when it is not."""
        self._lay_out()
        for path, of_kind, of_fid, _ in self._paths:
            if (of_kind, of_fid) == (kind, fid):
                return path.boundingRect().center()
        return None

    # Where things fall

    def _lay_out(self):
        """The scale and place of the sheet, and the outline of each feature on it."""
        self._paths, self._place = [], None
        if self._sheet is None or self._sheet.played is None:
            return
        played = self._sheet.played
        _, up = up_of(played)
        self._place = _Placing(hole_points(played), up, QRectF(self.rect()), _MARGIN, self._head())
        for feature in played.features:
            if feature.kind in _PATHS:
                path = _PATHS[feature.kind](feature, self._place)
                if path.boundingRect().adjusted(-1, -1, 1, 1).intersects(QRectF(self.rect())):
                    self._paths.append((path, feature.kind, feature.fid, feature))

    def _head(self):
        return 2.0 * QFontMetricsF(self._font(1.35, True)).height() + 14.0

    def _font(self, factor=1.0, bold=False):
        font = QFont(self.font())
        font.setPointSizeF(max(6.0, font.pointSizeF() * factor))
        font.setBold(bold)
        return font

    # Painting

    def paintEvent(self, event):
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.rect(), PAPER)
        self._lay_out()
        if self._place is None:
            self._paint_message(painter)
        else:
            self._paint_ground(painter)
            self._paint_line(painter)
            self._paint_markers(painter)
            self._paint_chosen(painter)
            self._paint_margin(painter)
        painter.end()

    def _paint_message(self, painter):
        painter.setPen(FAINT)
        text = self._message
        if self._sheet is not None:
            text = "\n".join((self._sheet.title, self._sheet.subtitle))
        area = QRectF(self.rect()).adjusted(24, 24, -24, -24)
        _say(painter, area, text, Qt.AlignmentFlag.AlignCenter)

    def _paint_ground(self, painter):
        by_kind = {}
        for path, kind, _, feature in self._paths:
            by_kind.setdefault(kind, []).append((path, feature))
        for kind in ("rough", "penalty_area", "fairway", "apron", "path", "tee", "green", "bunker", "trees"):
            for path, feature in by_kind.get(kind, ()):
                if kind == "path":
                    painter.strokePath(path, QPen(QColor("#d6cfc0"), 3.0))
                    continue
                look = _DRY if kind == "penalty_area" and feature.get("water") is False else _AREAS[kind]
                painter.fillPath(path, QColor(look.fill))
                painter.strokePath(path, QPen(QColor(look.outline), look.width))
        crown = QColor("#93ad8b")
        for path, _ in by_kind.get("tree", ()):
            painter.fillPath(path, crown)
            painter.strokePath(path, QPen(QColor("#6f8d68"), 0.9))
        dashes = QPen(QColor("#8b8f88"), 1.4)
        dashes.setDashPattern([5, 4])
        for path, _ in by_kind.get("boundary", ()):
            painter.strokePath(path, dashes)
        for kind, colour in (("plate", "#3f5a47"), ("target", "#5c5470")):
            for path, _ in by_kind.get(kind, ()):
                painter.fillPath(path, QColor(colour))

    def _paint_line(self, painter):
        sheet, place = self._sheet, self._place
        line = sheet.played.drawn if sheet.tee is None else sheet.tee.line
        pen = QPen(INK, 1.5)
        pen.setCapStyle(Qt.PenCapStyle.RoundCap)
        path = _line_path(place.all(line.points))
        painter.strokePath(path, QPen(QColor(255, 255, 255, 150), 3.5))
        painter.strokePath(path, pen)
        self._paint_ticks(painter, line)
        start, end = place.one(line.points[0]), place.one(line.points[-1])
        painter.setPen(QPen(INK, 1.4))
        painter.setBrush(QBrush(PAPER))
        painter.drawEllipse(start, 3.4, 3.4)
        painter.setBrush(QBrush(INK))
        painter.drawEllipse(end, 2.6, 2.6)
        self._paint_depth(painter)

    def _paint_ticks(self, painter, line):
        """A tick every 50 before the green's middle, with what remains from there."""
        size = UNITS[self._sheet.unit]
        painter.setFont(self._font(0.82))
        for count in range(_TICK_EVERY, int(line.length / size) - 14, _TICK_EVERY):
            station = line.length - count * size
            middle, ahead = line.at(station), line.direction_at(station)
            centre = self._place.one(middle)
            side = self._place.direction((ahead[1], -ahead[0]))
            painter.setPen(QPen(INK, 1.2))
            painter.drawLine(centre - 5 * side, centre + 5 * side)
            place = centre + 9 * side
            if self._marker_near(centre + 20 * side):
                if self._marker_near(centre - 20 * side):
                    place -= 15 * self._place.direction(ahead)
                else:
                    side = -side
                    place = centre + 9 * side
            _write(painter, str(count), place, INK, towards=side)

    def _marker_near(self, place):
        """Whether a distance marker would lie under a label at ``place``."""
        markers = (path.boundingRect() for path, kind, _, _ in self._paths if kind == "marker")
        return any(rect.adjusted(-13, -7, 13, 7).contains(place) for rect in markers)

    def _paint_depth(self, painter):
        green = self._sheet.played.green
        if green is None:
            return
        front, back = self._place.one(green.front), self._place.one(green.back)
        painter.setPen(QPen(QColor("#2f6030"), 1.0))
        painter.drawLine(front, back)
        across = self._place.direction((green.direction[1], -green.direction[0]))
        for point in (front, back):
            painter.drawLine(point - 4 * across, point + 4 * across)

    def _paint_markers(self, painter):
        to_frame = self._sheet.played.frame.to_frame(self._sheet.crs)
        verdicts = {row.marker_id: row for row in self._sheet.markers}
        for path, kind, fid, _ in self._paths:
            if kind != "marker":
                continue
            row = verdicts.get(str(fid))
            off = row is not None and row.verdict == "off"
            centre = path.boundingRect().center()
            if off and row.proposed_x is not None:
                proposed = self._place.one(to_frame([(row.proposed_x, row.proposed_y)])[0])
                painter.setPen(QPen(OFF, 1.2))
                painter.drawLine(centre, proposed)
                painter.setBrush(QBrush(PAPER))
                painter.drawEllipse(proposed, 3.2, 3.2)
            painter.setPen(QPen(QColor("#ffffff"), 1.0))
            painter.setBrush(QBrush(OFF if off else QColor("#2f6030")))
            painter.drawPath(path)

    def _paint_chosen(self, painter):
        shown = self._chosen
        if shown is None:
            return
        bounds = QRectF()
        pen = QPen(CHOSEN, 2.4)
        pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
        halo = QPen(QColor(255, 255, 255, 200), 5.0)
        for path, kind, fid, _ in self._paths:
            if kind == shown.kind and fid in shown.fids:
                if kind not in ("path", "boundary"):
                    tint = QColor(CHOSEN)
                    tint.setAlpha(50)
                    painter.fillPath(path, tint)
                painter.strokePath(path, halo)
                painter.strokePath(path, pen)
                bounds = bounds.united(path.boundingRect())
        if shown.point is not None:
            centre = self._place.one(shown.point)
            painter.setPen(halo)
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawEllipse(centre, 6.5, 6.5)
            painter.setPen(pen)
            painter.drawEllipse(centre, 6.5, 6.5)
            bounds = QRectF(centre.x() - 7, centre.y() - 7, 14, 14)
        if not bounds.isNull() and self._figures:
            self._paint_figures(painter, bounds)

    def _paint_figures(self, painter, bounds):
        """The chosen thing's figures in a small box beside it, kept on the sheet."""
        font = self._font(0.95, True)
        painter.setFont(font)
        metrics = QFontMetricsF(font)
        width = max(metrics.horizontalAdvance(text) for text in self._figures) + 14
        height = metrics.height() * len(self._figures) + 8
        sheet = QRectF(self.rect()).adjusted(6, self._head(), -6, -6)
        bounds = bounds.intersected(sheet)
        x = bounds.right() + 8
        if x + width > sheet.right():
            x = bounds.left() - 8 - width
        x = min(max(x, sheet.left()), sheet.right() - width)
        y = min(max(bounds.center().y() - height / 2, sheet.top()), sheet.bottom() - height)
        box = QRectF(x, y, width, height)
        painter.setPen(QPen(CHOSEN, 1.2))
        painter.setBrush(QBrush(QColor(255, 255, 255, 240)))
        painter.drawRoundedRect(box, 4, 4)
        painter.setPen(INK)
        for row, text in enumerate(self._figures):
            line = QRectF(x + 7, y + 4 + row * metrics.height(), width - 14, metrics.height())
            _say(painter, line, text, Qt.AlignmentFlag.AlignLeft)

    def _paint_margin(self, painter):
        """Title, scale bar and north, over all else."""
        head = QRectF(self.rect())
        head.setHeight(self._head() - 4)
        veil = QColor(PAPER)
        veil.setAlpha(235)
        painter.fillRect(head, veil)
        painter.setPen(INK)
        painter.setFont(self._font(1.35, True))
        title_height = QFontMetricsF(painter.font()).height()
        area = QRectF(14, 8, self.width() - 28.0, title_height)
        _say(painter, area, _elided(painter, self._sheet.title, area.width()), Qt.AlignmentFlag.AlignLeft)
        painter.setFont(self._font())
        painter.setPen(FAINT)
        area.translate(0, title_height + 1)
        _say(painter, area, _elided(painter, self._sheet.subtitle, area.width()), Qt.AlignmentFlag.AlignLeft)
        self._paint_scale(painter)
        self._paint_north(painter)

    def _paint_scale(self, painter):
        size = UNITS[self._sheet.unit]
        length = next((n for n in (100, 50, 20, 10) if n * size * self._place.scale < self.width() / 4), 10)
        pixels = length * size * self._place.scale
        x, y = 14.0, self.height() - 14.0
        painter.setFont(self._font(0.82))
        text = f"{length} {self._sheet.unit}"
        _veil(
            painter,
            QRectF(x - 4, y - 20, max(pixels, QFontMetricsF(painter.font()).horizontalAdvance(text)) + 8, 28),
        )
        painter.setPen(QPen(INK, 1.2))
        painter.drawLine(QPointF(x, y), QPointF(x + pixels, y))
        for end in (x, x + pixels):
            painter.drawLine(QPointF(end, y - 3), QPointF(end, y + 3))
        painter.drawText(QPointF(x, y - 6), text)

    def _paint_north(self, painter):
        north = self._place.direction((0.0, 1.0))
        centre = QPointF(self.width() - 24.0, self.height() - 26.0)
        _veil(painter, QRectF(centre.x() - 20, centre.y() - 22, 40, 44))
        side = QPointF(-north.y(), north.x())
        tip = centre + 13 * north
        arrow = QPolygonF(
            [tip, centre - 8 * north + 5 * side, centre - 4 * north, centre - 8 * north - 5 * side]
        )
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QBrush(INK))
        painter.drawPolygon(arrow)
        painter.setFont(self._font(0.75, True))
        painter.setPen(INK)
        letter = centre - 15 * north
        _say(painter, QRectF(letter.x() - 10, letter.y() - 10, 20, 20), tr("N"), Qt.AlignmentFlag.AlignCenter)

    # The mouse

    def _thing_at(self, position):
        for path, kind, fid, feature in sorted(self._paths, key=lambda one: _over(one[1]), reverse=True):
            if kind not in ("path", "boundary") and (
                path.contains(position) or (kind in _SMALL and _near(path, position))
            ):
                return kind, fid, feature
        return None

    def mousePressEvent(self, event):
        found = self._thing_at(QPointF(event.pos()))
        if found is not None:
            self.thing_clicked.emit(found[0], found[1])

    def mouseMoveEvent(self, event):
        found = self._thing_at(QPointF(event.pos()))
        text = ""
        if found is not None:
            kind, _, feature = found
            own = feature.label or feature.get("tee_set") or _stated(feature, self._sheet.unit)
            text = ": ".join(filter(None, (tr(BY_NAME[kind].title), own)))
        self.setToolTip(text)
        if not text:
            QToolTip.hideText()


class _Placing:
    """From the hole's frame, metres, to the widget, pixels: ``up`` points up, the points fit inside."""

    def __init__(self, points, up, area, margin, head):
        self.up = np.asarray(up, dtype=float)
        self.right = np.array([self.up[1], -self.up[0]])
        across, along = points @ self.right, points @ self.up
        room = area.adjusted(margin, head + 8, -margin, -margin)
        self.scale = max(
            1e-3,
            min(room.width() / max(np.ptp(across), 90.0), room.height() / max(np.ptp(along), 30.0)),
        )
        self._middle = ((across.min() + across.max()) / 2, (along.min() + along.max()) / 2)
        self._centre = room.center()

    def all(self, points):
        """(n, 2) frame points as a list of QPointF."""
        points = np.asarray(points, dtype=float).reshape(-1, 2)
        x = self._centre.x() + (points @ self.right - self._middle[0]) * self.scale
        y = self._centre.y() - (points @ self.up - self._middle[1]) * self.scale
        return [QPointF(a, b) for a, b in zip(x.tolist(), y.tolist())]

    def one(self, point):
        """One frame point as QPointF."""
        return self.all([point])[0]

    def direction(self, vector):
        """A unit vector of the frame as one of the widget."""
        vector = np.asarray(vector, dtype=float)
        return QPointF(float(vector @ self.right), -float(vector @ self.up))


# The outline of each kind on the sheet


def _area_path(feature, place):
    path = QPainterPath()
    path.setFillRule(Qt.FillRule.OddEvenFill)
    for part in getattr(feature.geometry, "geoms", [feature.geometry]):
        for ring in (part.exterior, *part.interiors):
            path.addPolygon(QPolygonF(place.all(coordinates(ring))))
            path.closeSubpath()
    return path


def _lines_path(feature, place):
    path = QPainterPath()
    for part in getattr(feature.geometry, "geoms", [feature.geometry]):
        path.addPolygon(QPolygonF(place.all(coordinates(part))))
    return path


def _line_path(points):
    path = QPainterPath(points[0])
    for point in points[1:]:
        path.lineTo(point)
    return path


def _tree_path(feature, place):
    radius = max(2.5, (feature.get("crown_radius_m") or 3.0) * place.scale)
    path = QPainterPath()
    path.addEllipse(place.one(coordinates(feature.geometry)[0]), radius, radius)
    return path


def _marker_path(feature, place):
    centre = place.one(coordinates(feature.geometry)[0])
    path = QPainterPath()
    path.addRect(QRectF(centre.x() - 3.5, centre.y() - 3.5, 7, 7))
    return path


def _dot_path(feature, place):
    path = QPainterPath()
    path.addEllipse(place.one(coordinates(feature.geometry)[0]), 2.6, 2.6)
    return path


def _target_path(feature, place):
    centre = place.one(coordinates(feature.geometry)[0])
    path = QPainterPath()
    path.addPolygon(QPolygonF([centre + QPointF(*p) for p in ((0, -5), (5, 4), (-5, 4))]))
    path.closeSubpath()
    return path


_PATHS = {
    **dict.fromkeys(_AREAS, _area_path),
    "path": _lines_path,
    "boundary": _lines_path,
    "tree": _tree_path,
    "marker": _marker_path,
    "plate": _dot_path,
    "target": _target_path,
}
_SMALL = ("marker", "plate", "target", "tree")


def _over(kind):
    return BY_NAME[kind].drawn_over


def _near(path, position):
    away = path.boundingRect().center() - position
    return math.hypot(away.x(), away.y()) < 7.0


def _stated(feature, unit):
    """What a marker says, with its own unit."""
    for field, of_unit in (("states_yd", "yd"), ("states_m", "m")):
        if feature.get(field) is not None:
            return f"{feature.get(field):g} {of_unit}"
    return ""


def _write(painter, text, place, colour, towards):
    """A short text with a halo beside ``place``, on the side the unit vector ``towards`` points to."""
    metrics = QFontMetricsF(painter.font())
    width, height = metrics.horizontalAdvance(text), metrics.ascent()
    centre = place + QPointF(towards.x() * width / 2, towards.y() * height / 2)
    path = QPainterPath()
    path.addText(QPointF(centre.x() - width / 2, centre.y() + height / 2 - 1), painter.font(), text)
    halo = QPen(QColor(255, 255, 255, 190), 3.0)
    halo.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    painter.strokePath(path, halo)
    painter.fillPath(path, colour)


def _say(painter, area, text, alignment):
    """A text in an area; by QTextOption, since PyQt 5 and 6 want different flags of ``drawText``."""
    painter.drawText(area, text, QTextOption(alignment))


def _veil(painter, area):
    colour = QColor(PAPER)
    colour.setAlpha(205)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QBrush(colour))
    painter.drawRoundedRect(area, 4, 4)


def _elided(painter, text, width):
    return QFontMetricsF(painter.font()).elidedText(text, Qt.TextElideMode.ElideRight, width)


def drawn_figures(row, unit):
    """The short texts that stand beside a chosen row's feature on the sheet."""
    named = {
        "DistanceRow": (("reach", tr("reach {}")), ("clear", tr("clear {}"))),
        "LengthRow": (("length", "{}"),),
        "HeightRow": (("length", "{}"),),
        "GreenRow": (("depth", tr("{} deep")), ("width", tr("{} wide"))),
        "FairwayRow": (("station", tr("at {}")), ("width", tr("{} wide"))),
        "DoglegRow": (("turn_station", tr("turns at {}")), ("to_green", tr("{} to the green"))),
        "LayupRow": (("station", tr("play {}")), ("remaining", tr("leaves {}"))),
        "MarkerRow": (("states", tr("states {}")), ("measured", tr("measured {}"))),
    }
    if getattr(row, "kind", "") == "green":
        names = (("reach", tr("front {}")), ("middle", tr("middle {}")), ("clear", tr("back {}")))
    else:
        names = named[type(row).__name__]
    figures = ((text, whole(to_unit(getattr(row, name), unit))) for name, text in names)
    return tuple(text.format(figure) for text, figure in figures if figure is not None)
