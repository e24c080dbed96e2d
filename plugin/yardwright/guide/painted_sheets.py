"""Sheets brought to paper: a PDF of lines, areas and text that stays text, its fonts within it."""

from qgis.PyQt.QtCore import QMarginsF, QPointF, QSizeF, Qt
from qgis.PyQt.QtGui import (
    QBrush,
    QColor,
    QPageLayout,
    QPageSize,
    QPainter,
    QPainterPath,
    QPdfWriter,
    QPen,
    QPolygonF,
    QTransform,
)

from ..model.errors import YardwrightError
from ..model.words import say
from ..store.files import written_beside
from .flowing_text import paint_flow
from .lettering import MM_PER_POINT, font_of
from .sheet_parts import Area, Dots, Flow, Line, Text

_DPI = 2540
"""A unit of the page is a hundredth of a millimetre."""
_HALO_MM = 0.28
_OUTLINED_AT = 100


def write_sheet(sheet, path):
    """Write a Sheet as a PDF; what was at ``path`` stays as it was until all is written.

    Raises YardwrightError when it cannot be written.
    """
    with written_beside(path) as draft:
        writer = QPdfWriter(draft)
        writer.setResolution(_DPI)
        writer.setTitle(sheet.title)
        writer.setCreator("Yardwright")
        painter = QPainter()
        try:
            for number, page in enumerate(sheet.pages):
                writer.setPageLayout(_layout(page))
                if not (writer.newPage() if number else painter.begin(writer)):
                    raise _unwritable(path)
                paint(page, painter, _DPI)
        finally:
            # The painter goes before what it paints on, or Qt crashes.
            ended = painter.end()
        if not ended:
            raise _unwritable(path)


def paint(page, painter, dpi):
    """Paint a page with a QPainter, its top left corner at the painter's origin; dpi: of its device."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
    for item in page.items:
        _PAINT[type(item)](item, painter, dpi / 25.4)


def _layout(page):
    # A PDF's page is of whole points in Qt, which cuts off what is over: the nearest is chosen here.
    points = QSizeF(round(page.width / MM_PER_POINT), round(page.height / MM_PER_POINT))
    size = QPageSize(points, QPageSize.Unit.Point, "", QPageSize.SizeMatchPolicy.ExactMatch)
    return QPageLayout(size, QPageLayout.Orientation.Portrait, QMarginsF(0, 0, 0, 0))


def _unwritable(path):
    return YardwrightError(
        say("“{path}” could not be written.", path=path),
        say("Check that there is room on the disk and try again."),
    )


def _text(item, painter, per_mm):
    if item.halo:
        _halo(item, painter, per_mm)
    painter.setFont(font_of(item.size, item.bold))
    painter.setPen(QPen(QColor(item.tone)))
    # Where it begins is worked out as for the layout, so that both know of one place.
    painter.drawText(QPointF(item.box[0] * per_mm, item.y * per_mm), item.text)


def _halo(item, painter, per_mm):
    """The rim about letters: their outline under them, so that they themselves stay text."""
    font = font_of(item.size, item.bold)
    font.setPixelSize(_OUTLINED_AT)
    letters = QPainterPath()
    letters.addText(QPointF(0, 0), font, item.text)
    scale = item.size * MM_PER_POINT * per_mm / _OUTLINED_AT
    placed = QTransform.fromTranslate(item.box[0] * per_mm, item.y * per_mm).scale(scale, scale)
    pen = QPen(QColor(item.halo), 2 * _HALO_MM * per_mm)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    painter.strokePath(placed.map(letters), pen)


def _line(item, painter, per_mm):
    pen = QPen(QColor(item.tone), item.width * per_mm)
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    if item.dash:
        # Qt counts dashes in widths of the pen.
        pen.setDashPattern([length / item.width for length in item.dash])
    painter.strokePath(_path([item.points], per_mm), pen)


def _area(item, painter, per_mm):
    path = _path(item.rings, per_mm)
    path.setFillRule(Qt.FillRule.OddEvenFill)
    painter.fillPath(path, QBrush(QColor(item.tone)))


def _dots(item, painter, per_mm):
    path = QPainterPath()
    radius = item.radius * per_mm
    for x, y in item.points:
        path.addEllipse(QPointF(x * per_mm, y * per_mm), radius, radius)
    painter.fillPath(path, QBrush(QColor(item.tone)))


def _path(chains, per_mm):
    path = QPainterPath()
    for chain in chains:
        path.addPolygon(QPolygonF([QPointF(x * per_mm, y * per_mm) for x, y in chain]))
    return path


_PAINT = {Text: _text, Line: _line, Area: _area, Dots: _dots, Flow: paint_flow}
