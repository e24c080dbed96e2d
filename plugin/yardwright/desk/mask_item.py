"""What hides the ground, laid over the map: a colour and a pattern for each kind, so that they are told apart
by whoever sees no colours too."""

from qgis.core import QgsPointXY
from qgis.gui import QgsMapCanvasItem
from qgis.PyQt.QtCore import QPointF, QRect, QRectF, Qt
from qgis.PyQt.QtGui import QBrush, QColor, QImage, QPainter, QPen, QPixmap, QTransform

SHADE, CROWN, CLOUD, MOVER, SEEN = 1, 2, 4, 8, 128
"""Bits of a mask, see ``imagery.hiding`` and ``imagery.hand_masks``, which QGIS’s start must not load."""
KINDS = (SHADE, CROWN, CLOUD, MOVER, SEEN)

_GROUNDS = {
    SHADE: QColor(0, 70, 140, 105),
    CROWN: QColor(0, 105, 70, 110),
    CLOUD: QColor(235, 238, 250, 130),
    MOVER: QColor(225, 85, 0, 160),
    SEEN: QColor(250, 225, 60, 95),
}
"""Apart for colour-blind eyes too: blue, green-blue, white, vermilion, yellow."""
_LINES = {
    SHADE: QColor(225, 238, 255, 210),
    CROWN: QColor(215, 255, 235, 220),
    CLOUD: QColor(70, 80, 100, 200),
    MOVER: QColor(255, 240, 225, 230),
    SEEN: QColor(90, 70, 0, 200),
}
_RIMS = {
    SHADE: QColor(205, 228, 255, 235),
    CROWN: QColor(150, 245, 200, 235),
    CLOUD: QColor(50, 58, 75, 235),
    MOVER: QColor(255, 95, 0, 255),
    SEEN: QColor(255, 232, 70, 245),
}
_TILE = 12


def brush(kind):
    """The brush that a kind is painted with."""
    tile = QPixmap(_TILE, _TILE)
    tile.fill(_GROUNDS[kind])
    painter = QPainter(tile)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QPen(_LINES[kind], 1.4))
    for line in _PATTERNS.get(kind, ()):
        painter.drawLine(*(QPointF(*end) for end in line))
    if kind == CROWN:
        painter.setPen(QPen(_LINES[kind], 1.2))
        painter.drawEllipse(QPointF(3.5, 3.5), 2.4, 2.4)
        painter.drawEllipse(QPointF(9.0, 9.0), 2.4, 2.4)
    painter.end()
    return QBrush(tile)


_T = _TILE
_PATTERNS = {
    SHADE: [((-1, _T + 1), (_T + 1, -1)), ((-1, 1), (1, -1)), ((_T - 1, _T + 1), (_T + 1, _T - 1))],
    CLOUD: [((0, 3), (_T, 3)), ((0, 9), (_T, 9))],
    MOVER: [
        *(((-1, y + _T / 2), (_T / 2 + 1, y - 1)) for y in (0, _T / 2, _T)),
        ((-1, -1), (_T + 1, _T + 1)),
        ((_T + 1, -1), (-1, _T + 1)),
    ],
    SEEN: [((3, 0), (3, _T)), ((9, 0), (9, _T))],
}


def swatch(kind, width=34, height=18):
    """A QPixmap of a kind, for a legend."""
    made = QPixmap(width, height)
    made.fill(QColor(120, 158, 98))
    painter = QPainter(made)
    painter.fillRect(made.rect(), brush(kind))
    painter.setPen(QPen(_RIMS[kind], 2))
    painter.drawRect(QRect(1, 1, width - 2, height - 2))
    painter.end()
    return made


class MaskItem(QgsMapCanvasItem):
    """Paints masks over the map, above a second date, beneath figures and rubber bands.

    ``shown``: the kinds that are painted.
    """

    def __init__(self, canvas):
        super().__init__(canvas)
        self.canvas = canvas
        self.shown = set(KINDS)
        self._layers = []
        self._corners = None
        self._painted = None
        self.setZValue(-4.7)

    def lay(self, masks, corners):
        """Show ``{kind: (h, w) bool}``; corners: the QgsPointXY on the map of the top left, top right and
        bottom left corner of what they cover. An empty dict shows nothing."""
        self._layers = [
            (kind, _alpha(mask), _alpha(_rim(mask))) for kind, mask in masks.items() if mask.any()
        ]
        self._corners = corners
        self.updatePosition()

    def show_only(self, kinds):
        """Paint only these kinds."""
        self.shown = set(kinds)
        self.updatePosition()

    # What QGIS asks of it

    def boundingRect(self):
        size = self.canvas.viewport().size()
        return QRectF(0, 0, size.width(), size.height())

    def updatePosition(self):
        self.prepareGeometryChange()
        self._painted = None
        self.update()

    def paint(self, painter, option=None, widget=None):
        if not self._layers:
            return
        if self._painted is None:
            self._painted = self._paint()
        painter.drawImage(0, 0, self._painted)

    def _paint(self):
        size = self.canvas.viewport().size()
        made = QImage(size, QImage.Format.Format_ARGB32_Premultiplied)
        made.fill(Qt.GlobalColor.transparent)
        painter = QPainter(made)
        for kind, alpha, rim in self._layers:
            if kind in self.shown:
                for mask, ink in ((alpha, brush(kind)), (rim, QBrush(_RIMS[kind]))):
                    painter.drawImage(0, 0, self._filled(mask, ink, size))
        painter.end()
        return made

    def _filled(self, mask, ink, size):
        """A mask on the screen, filled with a brush whose pattern stays as large whatever the scale."""
        made = QImage(size, QImage.Format.Format_ARGB32_Premultiplied)
        made.fill(Qt.GlobalColor.transparent)
        painter = QPainter(made)
        painter.setTransform(self._placed(mask))
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        painter.drawImage(0, 0, mask)
        painter.resetTransform()
        painter.setCompositionMode(QPainter.CompositionMode.CompositionMode_SourceIn)
        painter.fillRect(made.rect(), ink)
        painter.end()
        return made

    def _placed(self, mask):
        """From the pixels of a mask to those of the screen."""
        origin, right, below = (self.toCanvasCoordinates(QgsPointXY(place)) for place in self._corners)
        across, down = (right - origin) / mask.width(), (below - origin) / mask.height()
        return QTransform(across.x(), across.y(), down.x(), down.y(), origin.x(), origin.y())


def _alpha(mask):
    """A mask as a QImage that is opaque there."""
    import numpy as np

    values = np.ascontiguousarray(mask.astype(np.uint8) * 255)
    height, width = values.shape
    image = QImage(values.tobytes(), width, height, width, QImage.Format.Format_Alpha8)
    return image.copy()


def _rim(mask):
    """The pixels of a mask along its rim."""
    from scipy.ndimage import binary_erosion

    return mask & ~binary_erosion(mask, border_value=1)
