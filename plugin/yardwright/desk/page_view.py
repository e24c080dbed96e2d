"""A picture of a page, shown whole."""

from qgis.PyQt.QtCore import QRect, QSize, Qt
from qgis.PyQt.QtGui import QColor, QPainter
from qgis.PyQt.QtWidgets import QFrame

from .words import tr

_MARGIN = 12


class PictureView(QFrame):
    """Shows the picture of a page as large as it goes. ``number``: which page it is, from 0."""

    def __init__(self, parent=None):
        super().__init__(parent)
        self.number = 0
        self._picture, self._text = None, ""
        self.setFrameShape(QFrame.Shape.StyledPanel)
        self.setMinimumSize(300, 320)
        self.setAccessibleName(tr("The page as it will be printed"))
        self.setWhatsThis(tr("The page as it will be printed; what is chosen on the left shows at once."))

    def sizeHint(self):
        return QSize(480, 700)

    def show_picture(self, picture):
        """Show a QImage."""
        self._picture, self._text = picture, ""
        self.update()

    def show_message(self, text):
        """Show a text in place of a page."""
        self._picture, self._text = None, text
        self.update()

    def paintEvent(self, event):
        super().paintEvent(event)
        painter = QPainter(self)
        room = self.rect().adjusted(_MARGIN, _MARGIN, -_MARGIN, -_MARGIN)
        if self._picture is None:
            painter.drawText(room, Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap, self._text)
            return
        size = self._picture.size().scaled(room.size(), Qt.AspectRatioMode.KeepAspectRatio)
        frame = QRect(0, 0, size.width(), size.height())
        frame.moveCenter(room.center())
        ratio = self.devicePixelRatioF()
        # Made smaller by Qt's own smooth scaling; the painter's would leave small letters ragged.
        fitted = self._picture.scaled(
            size * ratio, Qt.AspectRatioMode.IgnoreAspectRatio, Qt.TransformationMode.SmoothTransformation
        )
        painter.fillRect(frame.adjusted(2, 2, 3, 3), QColor(0, 0, 0, 60))
        painter.drawImage(frame, fitted)
