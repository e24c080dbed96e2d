"""What a page of the guide needs of a person: its title, its text, its file."""

import os
import shutil

from qgis.PyQt.QtCore import QTimer, pyqtSignal
from qgis.PyQt.QtWidgets import (
    QFileDialog,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from ..model.errors import YardwrightError
from ..model.guide_pages import PAGE_KINDS
from ..model.words import said
from .words import tr

_TYPED_MS = 500
"""So long after the last letter a text is taken."""
_WITH_TEXT = ("event",)
"""Kinds that may have a text, though they do without."""


class PageEditor(QWidget):
    """Edits one GuidePage. Signal: ``edited`` with the fields that are others, ``{name: value}``."""

    edited = pyqtSignal(dict)

    def __init__(self, parent=None):
        super().__init__(parent)
        self.folder = ""
        self._page = None
        self.kind_label = QLabel(self)
        self.title_line = QLineEdit(self)
        self.title_line.setAccessibleName(tr("Title of the page"))
        self.title_line.setToolTip(tr("The page’s title, and that of its bookmark. Empty: the usual one."))
        self.text_box = QPlainTextEdit(self)
        self.text_box.setTabChangesFocus(True)
        self.text_box.setAccessibleName(tr("Text of the page"))
        self.text_box.setToolTip(
            tr(
                "Markdown: # before a heading, **bold**, *slanted*, - before the items of a list. What "
                "stands between [% and %] is worked out, such as [% hole_length(12, 'Black') %]."
            )
        )
        self.file_label = QLabel(self)
        self.file_label.setWordWrap(True)
        self.file_button = QPushButton(tr("Choose the &file…"), self)
        self.file_button.setToolTip(
            tr("An image or a PDF. It is copied into the course’s folder of the guide, to stay with it.")
        )
        self.file_button.setAutoDefault(False)
        self.file_button.clicked.connect(lambda: self._ask_file())
        for box in (self.title_line, self.text_box, self.file_button):
            box.setWhatsThis(box.toolTip())
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.setInterval(_TYPED_MS)
        self._timer.timeout.connect(self.take)
        self.title_line.textEdited.connect(lambda _: self._timer.start())
        self.text_box.textChanged.connect(self._typed)
        row = QHBoxLayout()
        row.addWidget(self.file_button)
        row.addWidget(self.file_label, 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.kind_label)
        layout.addWidget(self.title_line)
        layout.addWidget(self.text_box, 1)
        layout.addLayout(row)
        layout.addStretch(0)

    def show_page(self, page):
        """Edit another GuidePage, None for none."""
        if page == self._page:
            return
        typing = self._timer.isActive()
        same = page is not None and self._page is not None and page.kind == self._page.kind
        self._page = page
        self.setEnabled(page is not None)
        if page is None:
            return
        kind = PAGE_KINDS[page.kind]
        self.kind_label.setText(f"<b>{said(kind.title)}</b>")
        self.title_line.setPlaceholderText(said(kind.title))
        # What is being typed stays as it is, and the cursor where it is.
        if not (same and typing):
            self._filled(self.title_line, page.title)
            self._filled(self.text_box, page.text)
        with_text = kind.needs == "text" or page.kind in _WITH_TEXT
        self.text_box.setVisible(with_text)
        self.file_button.setVisible(kind.needs == "source")
        self.file_label.setVisible(kind.needs == "source")
        self.file_label.setText(os.path.basename(page.source) or tr("no file yet"))

    def take(self):
        """Take what was typed."""
        self._timer.stop()
        if self._page is None:
            return
        found = {"title": self.title_line.text(), "text": self.text_box.toPlainText()}
        other = {name: value for name, value in found.items() if getattr(self._page, name) != value}
        if other:
            self.edited.emit(other)

    def take_file(self, path):
        """Copy a file into the guide's folder and let the page show it. Raises YardwrightError."""
        name = os.path.basename(path)
        target = os.path.join(self.folder, name)
        try:
            os.makedirs(self.folder, exist_ok=True)
            if not (os.path.exists(target) and os.path.samefile(path, target)):
                target = _free(target, path)
                shutil.copyfile(path, target)
        except OSError as error:
            raise YardwrightError(
                tr("“{}” cannot be copied into “{}” ({}).").format(path, self.folder, error.strerror),
                tr("Check that there is room on the disk and that you may write there."),
            ) from error
        self.edited.emit({"source": os.path.basename(target)})

    def _ask_file(self):
        kinds = f"{tr('Images and PDFs')} (*.pdf *.png *.jpg *.jpeg *.tif *.tiff *.svg)"
        path, _ = QFileDialog.getOpenFileName(self, tr("The page’s file"), "", kinds)
        if path:
            self.take_file(path)

    def _typed(self):
        if self._page is not None and self.text_box.toPlainText() != self._page.text:
            self._timer.start()

    def _filled(self, box, text):
        box.blockSignals(True)
        if isinstance(box, QLineEdit):
            box.setText(text)
        elif box.toPlainText() != text:
            box.setPlainText(text)
        box.blockSignals(False)


def _free(target, path):
    """A name in the folder that is no other file's: the same again where its bytes are."""
    stem, ending = os.path.splitext(target)
    number = 1
    while os.path.exists(target) and not _alike(target, path):
        number += 1
        target = f"{stem}-{number}{ending}"
    return target


def _alike(one, other):
    with open(one, "rb") as first, open(other, "rb") as second:
        return first.read() == second.read()
