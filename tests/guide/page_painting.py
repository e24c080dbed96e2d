"""A hole's page on a picture, without layouts: to look at, and to be looked at by tests."""

from qgis.PyQt.QtCore import QRectF
from qgis.PyQt.QtGui import QColor, QImage, QPainter
from yardwright.guide.painted_sheets import paint


def painted_page(page, picture=None, dpi=300.0, grey=False):
    """The QImage of a HolePage; picture: the path of its plan's picture, or a colour's name."""
    width, height = page.size
    per_mm = dpi / 25.4
    image = QImage(round(width * per_mm), round(height * per_mm), QImage.Format.Format_RGB32)
    image.setDotsPerMeterX(round(per_mm * 1000))
    image.setDotsPerMeterY(round(per_mm * 1000))
    image.fill(QColor("white"))
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
    try:
        left, top, wide, high = (value * per_mm for value in page.frames["picture"])
        ground = QColor(picture or "#5c7a4a")
        if ground.isValid():
            painter.fillRect(QRectF(left, top, wide, high), ground)
        else:
            painter.drawImage(QRectF(left, top, wide, high), QImage(picture))
        for name, drawing in page.drawings.items():
            left, top, _, _ = page.frames[name]
            painter.save()
            painter.translate(left * per_mm, top * per_mm)
            paint(drawing, painter, dpi)
            painter.restore()
    finally:
        painter.end()
    return image.convertToFormat(QImage.Format.Format_Grayscale8) if grey else image
