"""The committee's figures: where they are taken from, and the list of what they would become."""

from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtWidgets import (
    QApplication,
    QDialog,
    QDialogButtonBox,
    QFileDialog,
    QLabel,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
)

from ..model.errors import YardwrightError
from .words import tr


def ask_file(parent, title):
    """The path of a file of the committee's, "" when nobody names one."""
    filters = f"{tr('CSV (*.csv *.txt)')};;{tr('All files')} (*)"
    return QFileDialog.getOpenFileName(parent, title, "", filters)[0]


def copied_rows():
    """The rows on the clipboard, as text. Raises YardwrightError when there is none."""
    text = QApplication.clipboard().text()
    if not text.strip():
        raise YardwrightError(
            tr("There is no text on the clipboard."),
            tr("Copy the rows in the spreadsheet, with their headings, then paste."),
        )
    # Without a line's end it would be taken for the path of a file.
    return text if "\n" in text else f"{text}\n"


class GivenDialog(QDialog):
    """Lists lines of a committee and what they would become; they can be taken when ``take`` is enabled.

    ``lines``: ``[(line's number, texts of the other columns, tip, whether it is refused)]``.
    """

    def __init__(self, parent, title, head, headings, lines):
        super().__init__(parent)
        self.setWindowTitle(title)
        self.list = QTreeWidget(self)
        self.list.setRootIsDecorated(False)
        self.list.setAlternatingRowColors(True)
        self.list.setHeaderLabels([tr("Line"), *headings])
        last = len(headings)
        for number, texts, tip, refused in sorted(lines):
            item = QTreeWidgetItem([str(number), *texts])
            item.setToolTip(last, tip)
            if refused:
                font = item.font(last)
                font.setBold(True)
                item.setFont(last, font)
            self.list.addTopLevelItem(item)
        for column in range(last):
            self.list.resizeColumnToContents(column)
        label = QLabel(head, self)
        label.setWordWrap(True)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel, self)
        self.take = buttons.addButton("", QDialogButtonBox.ButtonRole.AcceptRole)
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        layout = QVBoxLayout(self)
        layout.addWidget(label)
        layout.addWidget(self.list, 1)
        layout.addWidget(buttons)
        self.setWindowFlag(Qt.WindowType.WindowContextHelpButtonHint, False)
