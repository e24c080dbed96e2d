"""The dialog of an event's sheets: chosen, seen as they will be printed, and saved as PDF.

The window stays open while the map is used, and follows what is changed there.
"""

import os
from functools import partial

from qgis.core import QgsProject
from qgis.gui import QgsGui, QgsMessageBar
from qgis.PyQt.QtCore import Qt, QUrl
from qgis.PyQt.QtGui import QImage, QPainter, QPixmap
from qgis.PyQt.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFileDialog,
    QFormLayout,
    QFrame,
    QHBoxLayout,
    QLabel,
    QListWidget,
    QPushButton,
    QScrollArea,
    QSizePolicy,
    QToolButton,
    QVBoxLayout,
)

from ..guide.event_sheets import KINDS, EventSheets
from ..guide.painted_sheets import paint, write_sheet
from ..guide.sheets import PAGES
from ..model.errors import YardwrightError
from ..model.words import said
from .courses import hole_text
from .leafing import Leafing
from .listening import Listening
from .terrains import heights_in, why_no_heights
from .words import size_called, tell_saved, told_in, tr

_MARGIN = 12
_LEAST_DPI, _MOST_DPI = 20, 400


def write_sheets(parent, in_hand, event):
    """Open the window on an event's sheets, or bring the one that is open to the front; the SheetsDialog.
    Raises YardwrightError without a course."""
    for dialog in parent.findChildren(SheetsDialog):
        if dialog.isVisible() and dialog.sheets.event.name == event.name:
            dialog.raise_()
            dialog.activateWindow()
            return dialog
    dialog = SheetsDialog(parent, in_hand, event)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.show()
    return dialog


class SheetsDialog(QDialog):
    """What is chosen on the left, the page on the right. in_hand: the CourseInHand; event: a model Event."""

    def __init__(self, parent, in_hand, event):
        super().__init__(parent)
        self.setObjectName("yardwright_sheets")
        self.resize(1040, 760)
        self.setWindowFlag(Qt.WindowType.WindowContextHelpButtonHint, False)
        QgsGui.enableAutoGeometryRestore(self)
        open_terrain = partial(heights_in, in_hand.project)
        self.sheets = EventSheets(in_hand.course(), event, in_hand.index(), open_terrain)
        self.sheet = None
        self._pages = {name: kind.page for name, kind in KINDS.items()}
        self._why_no_heights = why_no_heights(in_hand.project)
        self._heights = {name: kind.heights and not self._why_no_heights for name, kind in KINDS.items()}
        self.in_hand, self.place = in_hand, in_hand.place
        self._build()
        self._fill(in_hand)
        self.choose()
        self._listening = Listening(
            (in_hand.edited, self._edited), (in_hand.course_changed, self._course_changed)
        )
        self.finished.connect(lambda _: self.let_go())

    def let_go(self):
        """Listen to nothing any more."""
        self._listening.stop()

    # Keeping up

    def _edited(self):
        """The course or the event was changed: the page shown is made anew."""
        with told_in(self.bar):
            before = self.sheets.event
            event = self.in_hand.find_event(before.name, before.fid)
            if event is None:
                self._show_gone(before.name)
                return
            self.sheets.look_at(self.in_hand.course(), event, self.in_hand.index())
            page = self.view.number
            self._fill_numbers(self.round_box.currentData(), self.hole_box.currentData())
            self.choose()
            self.turn(page)

    def _show_gone(self, name):
        self.sheet = None
        text = tr("The course has no event “{}” any more.").format(name)
        self.view.show_message(f"{text}\n\n{tr('Undo its removal, or close this window.')}")
        self.remarks.clear()
        self.remarks_title.setText("")
        self._enable_saving()
        self._tell_page()

    def _course_changed(self):
        if self.in_hand.place != self.place:
            self.reject()
        else:
            self._edited()

    # The surface

    def _build(self):
        self.bar = QgsMessageBar(self)
        self.bar.setSizePolicy(QSizePolicy.Policy.Minimum, QSizePolicy.Policy.Fixed)
        self.kind_box = self._box(tr("Which of the event’s sheets is shown and saved."))
        self.round_box = self._box(tr("The round whose pins or tees stand on the sheet."))
        self.hole_box = self._box(tr("The hole whose green is shown."))
        self.page_box = self._box(
            tr(
                "The size of the page. A sheet of fewer than nine greens may be used during a round only up "
                "to 107.95 × 177.8 mm (Rules of Golf, Rule 4.3a)."
            )
        )
        form = QFormLayout()
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        for title, box in (
            (tr("&Sheet"), self.kind_box),
            (tr("&Round"), self.round_box),
            (tr("&Hole"), self.hole_box),
            (tr("&Page"), self.page_box),
        ):
            form.addRow(title, box)
            box.setAccessibleName(title.replace("&", ""))
        self.heights_box = QCheckBox(tr("How the &ground falls and rises"), self)
        tip = tr(
            "Tells how the ground falls at the pins and rises from tee to green. Local Rules may forbid "
            "players to carry such figures: their sheets are without them unless you wish it."
        )
        self.heights_box.setToolTip(self._why_no_heights or tip)
        self.heights_box.setWhatsThis(tip)
        self.heights_box.setEnabled(not self._why_no_heights)
        self.heights_box.clicked.connect(lambda on: self.choose(heights=on))
        form.addRow("", self.heights_box)
        self.remarks_title = QLabel(self)
        self.remarks_title.setWordWrap(True)
        self.remarks = QListWidget(self)
        self.remarks.setWordWrap(True)
        self.remarks.setSelectionMode(QListWidget.SelectionMode.NoSelection)
        self.remarks.setAccessibleName(tr("Remarks on this sheet"))
        self.remarks.setToolTip(tr("What is missing on this sheet, or to be known of it before it is used."))
        self.remarks.setWhatsThis(self.remarks.toolTip())
        self.save_button = QPushButton(tr("Save as P&DF…"), self)
        self.save_button.setDefault(True)
        self.save_button.setWhatsThis(
            tr("Writes the sheet as a PDF: lines and letters, sharp at any size, its fonts in the file.")
        )
        self.save_button.clicked.connect(lambda: self._ask_and_save())
        side = QVBoxLayout()
        side.addLayout(form)
        side.addSpacing(8)
        side.addWidget(self.remarks_title)
        side.addWidget(self.remarks, 1)
        side.addStretch(0)

        self.view = PageView(self)
        right = QVBoxLayout()
        right.addWidget(self.view, 1)
        right.addLayout(self._leafing())

        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close, self)
        buttons.addButton(self.save_button, QDialogButtonBox.ButtonRole.ActionRole)
        buttons.button(QDialogButtonBox.StandardButton.Close).setAutoDefault(False)
        buttons.rejected.connect(self.reject)
        middle = QHBoxLayout()
        middle.addLayout(side, 1)
        middle.addLayout(right, 3)
        layout = QVBoxLayout(self)
        layout.addWidget(self.bar)
        layout.addLayout(middle, 1)
        layout.addWidget(buttons)

    def _box(self, tip):
        box = QComboBox(self)
        box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        box.setMinimumContentsLength(24)
        box.setToolTip(tip)
        box.setWhatsThis(tip)
        box.activated.connect(lambda row: self.choose())
        return box

    def _leafing(self):
        """The row below the page: back, which page, on; and how large it is shown."""
        self.leafing = Leafing(self)
        self.leafing.turned.connect(self.turn)
        self.wide_button = QToolButton(self)
        self.wide_button.setText(tr("Larger"))
        self.wide_button.setCheckable(True)
        self.wide_button.setToolTip(tr("Show the page as wide as the window, to read it closely"))
        self.wide_button.setWhatsThis(self.wide_button.toolTip())
        self.wide_button.toggled.connect(lambda on: self.view.show_wide(on))
        row = QHBoxLayout()
        row.addStretch(1)
        row.addWidget(self.leafing)
        row.addStretch(1)
        row.addWidget(self.wide_button)
        return row

    def _fill(self, in_hand):
        for name, kind in KINDS.items():
            self.kind_box.addItem(said(kind.title), name)
        self._fill_numbers(in_hand.round, in_hand.hole)
        for name, size in PAGES.items():
            self.page_box.addItem(size_called(name, *size), name)
        self._kind = self.kind_box.currentData()
        self.page_box.setCurrentIndex(self.page_box.findData(self._pages[self._kind]))

    def _fill_numbers(self, number, hole):
        """The event's name, its rounds and the holes; number, hole: what is to be chosen, if it is there."""
        event = self.sheets.event
        self.setWindowTitle(tr("Sheets: {}").format(event.name))
        self.round_box.clear()
        for one in event.rounds:
            self.round_box.addItem(
                f"{tr('Round {}').format(one.number)}  {one.played_on}".strip(), one.number
            )
        self.hole_box.clear()
        for one in self.sheets.course.holes:
            self.hole_box.addItem(hole_text(one.number, one.name, one.par), one.number)
        for box, value in ((self.round_box, number), (self.hole_box, hole)):
            box.setCurrentIndex(max(box.findData(value), 0 if box.count() else -1))

    # What is chosen

    def choose(self, kind=None, number=None, page=None, heights=None):
        """Show a sheet: what the boxes say, or another kind, round or hole, page, with heights or without."""
        if kind is not None:
            self.kind_box.setCurrentIndex(self.kind_box.findData(kind))
        if self.kind_box.currentData() != self._kind:
            # Each kind of sheet keeps the page it was last shown on, and whether it tells heights.
            self._kind = self.kind_box.currentData()
            self.page_box.setCurrentIndex(self.page_box.findData(self._pages[self._kind]))
        if page is not None:
            self.page_box.setCurrentIndex(self.page_box.findData(page))
        self._pages[self._kind] = self.page_box.currentData()
        if heights is not None:
            self._heights[self._kind] = heights
        self.heights_box.setChecked(self._heights[self._kind])
        box = {"round": self.round_box, "hole": self.hole_box}.get(KINDS[self._kind].of)
        if number is not None and box is not None:
            box.setCurrentIndex(box.findData(number))
        for one in (self.round_box, self.hole_box):
            one.setEnabled(one is box)
        with told_in(self.bar):
            self._show()

    def number(self):
        """The round or the hole that the sheet is about, None where it is about the event."""
        box = {"round": self.round_box, "hole": self.hole_box}.get(KINDS[self._kind].of)
        return None if box is None else box.currentData()

    def _show(self):
        """Make the sheet chosen and show its first page, or why there is none."""
        self.sheet, remarks = None, []
        try:
            self.sheet = self.sheets.sheet(
                self._kind, self.number(), self.page_box.currentData(), self._heights[self._kind]
            )
            remarks = list(dict.fromkeys(str(remark) for remark in self.sheet.remarks))
            self.view.show_pages(self.sheet.pages)
        except YardwrightError as error:
            self.view.show_message(f"{error.what}\n\n{error.remedy}")
        self.remarks.clear()
        self.remarks.addItems(remarks)
        self.remarks_title.setText(
            tr("Remarks on this sheet: {}").format(len(remarks))
            if remarks
            else tr("No remarks on this sheet.")
            if self.sheet is not None
            else ""
        )
        self.remarks.setVisible(bool(remarks))
        self._enable_saving()
        self._tell_page()

    def _enable_saving(self):
        self.save_button.setEnabled(self.sheet is not None)
        self.save_button.setToolTip("" if self.sheet is not None else tr("There is no sheet to save."))

    def turn(self, step):
        """Leaf on by some pages, or back."""
        self.view.turn(step)
        self._tell_page()

    def _tell_page(self):
        count = len(self.view.pages)
        self.leafing.tell(self.view.number, count)
        self.wide_button.setEnabled(bool(count))

    # Saving

    def _ask_and_save(self):
        with told_in(self.bar):
            folder = QgsProject.instance().absolutePath()
            proposed = os.path.join(folder, self.sheets.file_name(self._kind, self.number()))
            path, _ = QFileDialog.getSaveFileName(
                self, tr("Save the sheet"), proposed, f"{tr('PDF')} (*.pdf)"
            )
            if path:
                self.save(path)

    def save(self, path):
        """Write the sheet shown as a PDF, and offer to open it; the path, with its ending."""
        if not path.lower().endswith(".pdf"):
            path += ".pdf"
        write_sheet(self.sheet, path)
        link = QUrl.fromLocalFile(path)
        text = tr("The sheet was saved: {}").format(
            f'<a href="{bytes(link.toEncoded()).decode()}">{_plain(os.path.basename(path))}</a>'
        )
        tell_saved(self.bar, text, path)
        return path


class PageView(QScrollArea):
    """Shows a page of a sheet as it will be printed, whole or as wide as there is room."""

    def __init__(self, parent=None):
        super().__init__(parent)
        self.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.setFrameShape(QFrame.Shape.StyledPanel)
        self.setMinimumSize(320, 320)
        self.setAccessibleName(tr("The page as it will be printed"))
        self.setWhatsThis(tr("The page as it will be printed; what is chosen on the left shows at once."))
        self.setToolTip("")
        self.label = QLabel(self)
        self.label.setWordWrap(True)
        self.label.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.label.setMargin(_MARGIN)
        self.setWidget(self.label)
        self.pages, self.number, self.wide = (), 0, False

    def show_pages(self, pages):
        """Show the first of some pages."""
        self.pages, self.number = tuple(pages), 0
        self._draw()

    def show_message(self, text):
        """Show a text in place of a page."""
        self.pages, self.number = (), 0
        self.label.clear()
        self.setWidgetResizable(True)
        self.label.setText(text)

    def turn(self, step):
        """Show another page, as many on as ``step`` says; it stays on the first and the last."""
        self.number = min(max(self.number + step, 0), max(len(self.pages) - 1, 0))
        self.verticalScrollBar().setValue(0)
        self._draw()

    def show_wide(self, wide):
        """Show the page as wide as there is room, or whole."""
        self.wide = wide
        self._draw()

    def resizeEvent(self, event):
        """Fit the page to the new room."""
        super().resizeEvent(event)
        self._draw()

    def _draw(self):
        if not self.pages:
            return
        page = self.pages[self.number]
        self.setWidgetResizable(False)
        ratio = self.devicePixelRatioF()
        # The scroll bar of a page that is taller than the room takes some of its width.
        frame = 2 * (_MARGIN + self.frameWidth())
        bar = self.verticalScrollBar().sizeHint().width() if self.wide else 0
        per_mm = (self.width() - frame - bar) / page.width
        if not self.wide:
            per_mm = min(per_mm, (self.height() - frame) / page.height)
        dpi = min(max(int(per_mm * 25.4 * ratio), _LEAST_DPI), _MOST_DPI)
        picture = QPixmap.fromImage(picture_of(page, dpi))
        picture.setDevicePixelRatio(ratio)
        self.label.setPixmap(picture)
        self.label.adjustSize()


def picture_of(page, dpi):
    """A page of a Sheet as a QImage; dpi: a whole number, for an image knows no other."""
    size = [round(length / 25.4 * dpi) for length in (page.width, page.height)]
    image = QImage(*size, QImage.Format.Format_RGB32)
    # Letters are sized in points, and so follow what the image says of its dots.
    image.setDotsPerMeterX(round(dpi / 0.0254))
    image.setDotsPerMeterY(round(dpi / 0.0254))
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    try:
        paint(page, painter, dpi)
    finally:
        painter.end()
    return image


def _plain(text):
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
