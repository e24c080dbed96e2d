"""What is laid over a window's picture before it is written: clear margins, markers where they are true."""

from dataclasses import dataclass

import numpy as np
from qgis.PyQt.QtCore import QPointF, Qt
from qgis.PyQt.QtGui import QColor, QImage, QPainter, QPainterPath, QPen

from ..imagery.margins import KINDS, with_margins
from .lettering import MM_PER_POINT, font_of
from .windows import stated_at

_DOT_MM, _RIM_MM = 1.1, 0.28
_POINTS = 6.5
"""The figure of a marker; nothing on a page is smaller than 6 points."""
_INK, _PAPER = QColor(24, 26, 28), QColor(255, 255, 255)


@dataclass(frozen=True)
class Retouch:
    """How the pictures of windows are retouched.

    margins: how strongly margins are made clear, 0 (not) to 1. markers: whether distance markers are burnt
    in where they would be true.
    """

    margins: float = 0.0
    markers: bool = False

    def of(self, plan, features, marker_rows):
        """``function(pixels) -> pixels`` for a WindowPlan, None where nothing is asked for.

        features: the model Features that may show in it. marker_rows: the MarkerRows of its hole.
        """
        if not self.margins and not self.markers:
            return None
        outlines = {kind: [one.geometry for one in features if one.kind == kind] for kind in KINDS}
        dots = stated_at(marker_rows, features) if self.markers else []

        def retouched(pixels):
            made = with_margins(pixels, plan.grid, outlines, self.margins)
            return with_markers(made, plan, dots) if dots else made

        return retouched


def with_markers(pixels, plan, dots):
    """The picture with distance markers on it.

    pixels: (height, width, 4) of uint8, RGB and opacity, of the WindowPlan. dots: ``[((x, y), text)]``,
    places in the course's CRS and what each states. A marker is a white dot with a dark rim, its figure
    beside it.
    """
    places = plan.grid.to_pixels([place for place, _ in dots])
    height, width = pixels.shape[:2]
    rows = np.ascontiguousarray(pixels)
    image = QImage(rows.data, width, height, 4 * width, QImage.Format.Format_RGBA8888)
    image = image.convertToFormat(QImage.Format.Format_ARGB32_Premultiplied)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
    px = plan.panel.dpi / 25.4
    font = font_of(_POINTS, bold=True)
    font.setPixelSize(max(round(_POINTS * MM_PER_POINT * px), 1))
    try:
        for (x, y), (_, text) in zip(places.tolist(), dots):
            _draw_marker(painter, QPointF(x, y), text, font, px)
    finally:
        painter.end()
    plain = image.convertToFormat(QImage.Format.Format_RGBA8888)
    data = plain.constBits()
    data.setsize(plain.sizeInBytes())
    made = np.frombuffer(data, np.uint8).reshape(height, plain.bytesPerLine())
    return made[:, : width * 4].reshape(height, width, 4).copy()


def _draw_marker(painter, place, text, font, px):
    radius = _DOT_MM * px / 2
    painter.setPen(QPen(_INK, _RIM_MM * px))
    painter.setBrush(_PAPER)
    painter.drawEllipse(place, radius, radius)
    if not text:
        return
    letters = QPainterPath()
    letters.addText(QPointF(0, 0), font, text)
    box = letters.boundingRect()
    letters.translate(place.x() + radius + 0.6 * px - box.left(), place.y() - box.center().y())
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(_PAPER, 0.45 * px, join=Qt.PenJoinStyle.RoundJoin))
    painter.drawPath(letters)
    painter.fillPath(letters, _INK)
