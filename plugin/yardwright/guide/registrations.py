"""What is shown of a registration: its rows in tables, and the plot of what it leaves at each tie."""

import math
from dataclasses import dataclass, field

import numpy as np
from qgis.PyQt.QtCore import QPointF, QRectF, Qt
from qgis.PyQt.QtGui import QBrush, QColor, QFontMetricsF, QImage, QPainter, QPainterPath, QPen, QPolygonF

from ..imagery.grid import Grid
from ..model.errors import YardwrightError
from ..model.words import said, say, to_say
from ..store.files import written_beside
from .lettering import font_of


def _text():
    return field(default="", metadata={"holds": "text"})


def _count():
    return field(default=None, metadata={"holds": "count"})


def _millimetres():
    """Metres to the millimetre, or a place of the course’s CRS."""
    return field(default=None, metadata={"holds": "coordinate"})


@dataclass(frozen=True)
class RegistrationRow:
    """A date on the base. The shift is the mean of the ties'; stretch_ppm: millionths beyond 1; ties: those
    fitted to; checks: those kept out of the fit."""

    date: str = _text()
    base: str = _text()
    kind: str = _text()
    shift_e_m: float = _millimetres()
    shift_n_m: float = _millimetres()
    turn_deg: float = _millimetres()
    stretch_ppm: int = _count()
    rmse_m: float = _millimetres()
    ties: int = _count()
    checks: int = _count()
    outliers: int = _count()
    remark: str = _text()


@dataclass(frozen=True)
class ResidualRow:
    """A tie: its place on the base, by how much the file’s picture is to be moved there, and what of that the
    move leaves."""

    date: str = _text()
    x: float = _millimetres()
    y: float = _millimetres()
    east_m: float = _millimetres()
    north_m: float = _millimetres()
    off_east_m: float = _millimetres()
    off_north_m: float = _millimetres()
    role: str = _text()


def registration_row(registration, base_id):
    """The RegistrationRow of an ``imagery.registration.Registration``."""
    roles = [tie.role for tie in registration.ties]
    east, north = registration.shift
    return RegistrationRow(
        date=registration.id,
        base=base_id,
        kind=registration.kind,
        shift_e_m=east,
        shift_n_m=north,
        turn_deg=registration.move.turn,
        stretch_ppm=round((registration.move.stretch - 1) * 1e6),
        rmse_m=registration.rmse,
        ties=roles.count("fit") + roles.count("hand"),
        checks=roles.count("check"),
        outliers=roles.count("outlier"),
        remark=registration.remark,
    )


def residual_rows(registration):
    """The ResidualRows of a registration, a list."""
    return [
        ResidualRow(registration.id, tie.x, tie.y, tie.east, tie.north, tie.off_east, tie.off_north, tie.role)
        for tie in registration.ties
    ]


# --- the plot ------------------------------------------------------------------------------------------

_LONG_SIDE = 1600
_ARROW = 70.0
"""Pixels: how long an arrow that is longer than nine of ten is drawn."""
_LONGEST = 110.0
_LINE = 30.0
_ROLES = {
    "fit": (to_say("fitted to"), "#0b4fa8"),
    "check": (to_say("kept out as a check"), "#d1540b"),
    "outlier": (to_say("set aside as an outlier"), "#7a7a7a"),
    "hand": (to_say("set by hand"), "#a0157a"),
}
_KINDS = {
    "shift": to_say("shifted"),
    "similarity": to_say("shifted, turned and stretched"),
    "local": to_say("shifted from place to place"),
}


def write_residual_plot(path, base, registration, crs):
    """Draw what a registration leaves at its ties, as arrows over the picture of the base; a PNG at ``path``.

    base: the Date. crs: the course's. Arrows are enlarged, and the legend says how much. Raises
    YardwrightError with nothing written.
    """
    grid = _grid(registration.ties, crs)
    with base.open() as opened:
        pixels = opened.pixels(grid)
    scale = _enlarged(registration.ties)
    image = _canvas(pixels, grid)
    painter = QPainter(image)
    try:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
        for tie in sorted(registration.ties, key=lambda one: one.role != "outlier"):
            _draw_tie(painter, tie, grid, scale)
        _legend(painter, image, grid.height, base.id, registration, scale)
    finally:
        painter.end()
    with written_beside(path) as draft:
        if not image.save(draft, "PNG"):
            raise YardwrightError(
                say("“{path}” could not be written.", path=path),
                say("Check that there is room on the disk and try again."),
            )


def _grid(ties, crs):
    """A grid over the ties with room about them."""
    places = np.array([(tie.x, tie.y) for tie in ties])
    (x0, y0), (x1, y1) = places.min(axis=0), places.max(axis=0)
    room = max(0.09 * max(x1 - x0, y1 - y0), 5.0)
    x0, y0, x1, y1 = x0 - room, y0 - room, x1 + room, y1 + room
    pixel = max(x1 - x0, y1 - y0) / _LONG_SIDE
    size = [max(1, math.ceil(extent / pixel)) for extent in (x1 - x0, y1 - y0)]
    return Grid(*size, (x0, pixel, 0.0, y1, 0.0, -pixel), crs)


def _enlarged(ties):
    """Pixels of the plot for a metre of what is left: nine of ten that count fit into an arrow."""
    off = [math.hypot(tie.off_east, tie.off_north) for tie in ties if tie.role != "outlier"]
    usual = float(np.quantile(off, 0.9)) if off else 0.0
    return _ARROW / max(usual, 1e-4)


def _canvas(pixels, grid):
    """The picture of the base, paled, with room for the legend beneath."""
    pale = pixels.copy()
    pale[:, :, :3] = 255 - (255 - pixels[:, :, :3].astype(np.uint16)) * 11 // 20
    picture = QImage(pale.tobytes(), grid.width, grid.height, 4 * grid.width, QImage.Format.Format_RGBA8888)
    width = max(grid.width, 1100)
    image = QImage(width, grid.height + int(6.2 * _LINE), QImage.Format.Format_RGB32)
    image.fill(QColor("white"))
    painter = QPainter(image)
    painter.drawImage(0, 0, picture)
    painter.end()
    return image


def _draw_tie(painter, tie, grid, scale):
    (x, y) = grid.to_pixels([(tie.x, tie.y)])[0]
    east, north = tie.off_east * scale, tie.off_north * scale
    length = math.hypot(east, north)
    if length > _LONGEST:
        east, north = east * _LONGEST / length, north * _LONGEST / length
    _arrow(painter, QPointF(x, y), QPointF(x + east, y - north), QColor(_ROLES[tie.role][1]))


def _arrow(painter, start, end, colour):
    """An arrow on a white rim, its start a dot; a very short one is the dot alone."""
    along = end - start
    length = math.hypot(along.x(), along.y())
    shapes = QPainterPath()
    shapes.addEllipse(start, 4.5, 4.5)
    if length > 6:
        unit, aside = along / length, QPointF(-along.y(), along.x()) / length
        neck = end - unit * min(13.0, length)
        shapes.addPolygon(QPolygonF([end, neck + aside * 6, neck - aside * 6, end]))
    for pen in (QPen(QColor("white"), 7.0), QPen(colour, 3.0)):
        painter.setPen(pen)
        painter.drawLine(start, end)
        painter.setPen(QPen(QColor("white"), 3.0) if pen.widthF() > 4 else Qt.PenStyle.NoPen)
        painter.setBrush(QBrush(colour))
        painter.drawPath(shapes)


def _legend(painter, image, top, base_id, registration, scale):
    left, line = 24.0, top + _LINE
    bold, plain = font_of(15, True), font_of(13)
    for font in (bold, plain):
        font.setPixelSize(round(font.pointSizeF() * 1.5))
    painter.setPen(QPen(QColor("black")))
    painter.setFont(bold)
    painter.drawText(QPointF(left, line), say("{date} on {base}", date=registration.id, base=base_id))
    painter.setFont(plain)
    east, north = registration.shift
    error = (
        say("not known")
        if registration.rmse is None
        else say("{rmse} m along an axis", rmse=f"{registration.rmse:.3f}")
    )
    painter.drawText(
        QPointF(left, line + _LINE),
        say(
            "{kind}: {east} m east, {north} m north in the middle; error: {error}",
            kind=said(_KINDS[registration.kind]),
            east=f"{east:+.2f}",
            north=f"{north:+.2f}",
            error=error,
        ),
    )
    shown = _round(_ARROW / scale)
    y = line + 1.8 * _LINE
    _arrow(painter, QPointF(left + 4, y), QPointF(left + 4 + shown * scale, y), QColor("black"))
    painter.setPen(QPen(QColor("black")))
    painter.drawText(
        QPointF(left + 24 + shown * scale, y + 6),
        say(
            "so long: {metres} m still to be moved; at most {most} m",
            metres=f"{shown:g}",
            most=_most(registration),
        ),
    )
    y += _LINE
    x = left
    for role, (text, colour) in _ROLES.items():
        count = sum(tie.role == role for tie in registration.ties)
        if count:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QBrush(QColor(colour)))
            painter.drawRect(QRectF(x, y - 10, 14, 14))
            painter.setPen(QPen(QColor("black")))
            label = say("{count} {role}", count=count, role=said(text))
            painter.drawText(QPointF(x + 22, y + 4), label)
            x += 22 + QFontMetricsF(plain).horizontalAdvance(label) + 34
    if registration.remark:
        painter.drawText(QPointF(left, y + _LINE + 4), registration.remark)


def _most(registration):
    off = [math.hypot(one.off_east, one.off_north) for one in registration.ties if one.role != "outlier"]
    return f"{max(off, default=0.0):.3f}"


def _round(metres):
    """The largest 1, 2 or 5 times a power of ten that is no more.

    >>> [_round(metres) for metres in (0.034, 0.5, 7.9)]
    [0.02, 0.5, 5.0]
    """
    power = 10.0 ** math.floor(math.log10(metres))
    return float(f"{next(step for step in (5, 2, 1) if step * power <= metres * (1 + 1e-9)) * power:.3g}")
