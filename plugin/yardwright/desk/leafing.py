"""The row below a page: back, which page it is, on."""

from qgis.PyQt.QtCore import Qt, pyqtSignal
from qgis.PyQt.QtWidgets import QHBoxLayout, QLabel, QToolButton, QWidget

from .words import tr


class Leafing(QWidget):
    """Signal: ``turned`` with 1 for the next page, -1 for the one before."""

    turned = pyqtSignal(int)

    def __init__(self, parent=None):
        super().__init__(parent)
        self.back_button = self._turner("‹", tr("The page before"), -1)
        self.on_button = self._turner("›", tr("The next page"), 1)
        self.label = QLabel(self)
        self.label.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.label.setMinimumWidth(self.fontMetrics().horizontalAdvance("M" * 14))
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        for thing in (self.back_button, self.label, self.on_button):
            row.addWidget(thing)

    def tell(self, number, count):
        """Say which of ``count`` pages is shown, from 0."""
        self.label.setText(tr("Page {} of {}").format(number + 1, count) if count else "")
        self.back_button.setEnabled(number > 0)
        self.on_button.setEnabled(number + 1 < count)

    def _turner(self, text, tip, step):
        button = QToolButton(self)
        button.setText(text)
        button.setAccessibleName(tip)
        button.setToolTip(tip)
        button.setWhatsThis(tip)
        button.clicked.connect(lambda: self.turned.emit(step))
        return button
