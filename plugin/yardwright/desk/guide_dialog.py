"""The window of the guide: its pages in their order, each seen as it will be printed, saved as PDF.

It stays open while the map is used, and follows what is changed there. Pages are painted in QGIS's main
thread, one after the other: the one looked at first, and between two of them the window lives.
"""

import atexit
import os
import re
import shutil
import tempfile
from dataclasses import replace

from qgis.core import QgsMapLayerProxyModel, QgsProject
from qgis.gui import QgsGui, QgsMapLayerComboBox, QgsMessageBar
from qgis.PyQt.QtCore import QCoreApplication, QEvent, QLocale, Qt, QTimer
from qgis.PyQt.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFileDialog,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QMenu,
    QProgressBar,
    QPushButton,
    QSizePolicy,
    QSplitter,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from ..model.errors import Cancelled, YardwrightError
from ..model.guide_pages import PAGE_KINDS, GuidePage, pages_for
from ..model.words import said
from .dates import dates_of, default_base
from .editing import begin_editing
from .leafing import Leafing
from .listening import Listening
from .page_editor import PageEditor
from .page_list import PageList
from .page_view import PictureView
from .words import size_called, tell_saved, telling, told_in, tr

_SEEN_DPI = 96.0
_PRINT_DPI, _SCREEN_DPI = 300.0, 200.0
_WIDTH = 700
"""Pixels across that a page is painted to be looked at."""
_KEPT = 60
_SOON_MS = 150


def show_guide(in_hand):
    """Open the window of the guide, or bring the one that is open to the front; the GuideDialog. Raises
    YardwrightError without a course."""
    in_hand.layers()
    parent = in_hand.iface.mainWindow()
    for dialog in parent.findChildren(GuideDialog):
        if dialog.isVisible():
            dialog.raise_()
            dialog.activateWindow()
            return dialog
    dialog = GuideDialog(parent, in_hand)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.show()
    return dialog


class GuideDialog(QDialog):
    """The pages on the left, the page looked at in the middle, what the guide is made of on the right.

    in_hand: the CourseInHand. ``book``: the Book as it is planned to be looked at, None while it cannot be.
    """

    def __init__(self, parent, in_hand):
        super().__init__(parent)
        self.setObjectName("yardwright_guide")
        self.setWindowTitle(tr("Guide"))
        self.resize(1220, 780)
        self.setWindowFlag(Qt.WindowType.WindowContextHelpButtonHint, False)
        QgsGui.enableAutoGeometryRestore(self)
        self.in_hand, self.place = in_hand, in_hand.place
        self.book = self.maker = self._made_for = None
        self._pictures, self._stopped, self._busy, self._designed = {}, False, False, False
        self.bar = QgsMessageBar(self)
        self.bar.setSizePolicy(QSizePolicy.Policy.Minimum, QSizePolicy.Policy.Fixed)
        self._planning = self._timer(self._plan)
        self._painting = self._timer(self._paint)
        self._build()
        self._fill_events()
        self._fill_pages()
        self._soon()
        self._listening = Listening(
            (in_hand.edited, self._edited),
            (in_hand.event_changed, self._edited),
            (in_hand.course_changed, self._course_changed),
        )
        self.finished.connect(lambda _: self.let_go())

    def _timer(self, slot):
        timer = QTimer(self)
        timer.setSingleShot(True)
        timer.setInterval(_SOON_MS)
        timer.timeout.connect(telling(self.bar, slot))
        return timer

    def let_go(self):
        """Listen to nothing any more."""
        self._stopped = True
        self._planning.stop()
        self._painting.stop()
        self._listening.stop()

    def reject(self):
        """Close the window; while a guide is written, stop that instead."""
        self._stopped = True
        if not self._busy:
            self.editor.take()
            super().reject()

    # The surface

    def _build(self):
        split = QSplitter(Qt.Orientation.Horizontal, self)
        split.addWidget(self._left())
        split.addWidget(self._middle())
        split.addWidget(self._right())
        for place, stretch in enumerate((3, 5, 3)):
            split.setStretchFactor(place, stretch)
            split.setCollapsible(place, False)
        self.progress = QProgressBar(self)
        self.progress.setVisible(False)
        self.save_button = QPushButton(tr("Save as P&DF…"), self)
        self.save_button.setDefault(True)
        self.save_button.clicked.connect(lambda: self._ask_and_save())
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close, self)
        self.close_button = buttons.button(QDialogButtonBox.StandardButton.Close)
        self._close = self.close_button.text()  # as Qt says it
        self.close_button.setAutoDefault(False)
        buttons.addButton(self.save_button, QDialogButtonBox.ButtonRole.ActionRole)
        buttons.rejected.connect(self.reject)
        foot = QHBoxLayout()
        foot.addWidget(self.progress, 1)
        foot.addWidget(buttons)
        layout = QVBoxLayout(self)
        layout.addWidget(self.bar)
        layout.addWidget(split, 1)
        layout.addLayout(foot)

    def _left(self):
        self.list = PageList(self)
        self.list.changed.connect(self._keep)
        self.list.chosen.connect(self._chosen)
        self.whose_label = QLabel(self)
        self.whose_label.setWordWrap(True)
        self.add_button = QToolButton(self)
        self.add_button.setText(tr("Add"))
        self.add_button.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        self.add_button.setToolTip(tr("Add a page after the one chosen"))
        menu = QMenu(self.add_button)
        for kind, one in PAGE_KINDS.items():
            action = menu.addAction(said(one.title))
            action.setData(kind)
            action.triggered.connect(lambda _=False, kind=kind: self.list.add(GuidePage(kind)))
        menu.aboutToShow.connect(self._offer)
        self.add_button.setMenu(menu)
        self.remove_button = self._tool(tr("Remove"), tr("Take the page chosen out"), self.list.remove)
        up = self._tool("▲", tr("Move the page up (Alt+Up)"), lambda: self.list.move(-1))
        down = self._tool("▼", tr("Move the page down (Alt+Down)"), lambda: self.list.move(1))
        row = QHBoxLayout()
        for button in (self.add_button, self.remove_button, up, down):
            row.addWidget(button)
        row.addStretch(1)
        self.editor = PageEditor(self)
        self.editor.edited.connect(lambda values: self.list.change(**values))
        side = QWidget(self)
        layout = QVBoxLayout(side)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.list, 3)
        layout.addLayout(row)
        layout.addWidget(self.whose_label)
        layout.addSpacing(6)
        layout.addWidget(self.editor, 2)
        return side

    def _tool(self, text, tip, slot):
        button = QToolButton(self)
        button.setText(text)
        button.setToolTip(tip)
        button.setAccessibleName(tip)
        button.setWhatsThis(tip)
        button.clicked.connect(telling(self.bar, slot))
        return button

    def _middle(self):
        self.view = PictureView(self)
        self.leafing = Leafing(self)
        self.leafing.turned.connect(self._turned)
        self.design_button = self._tool(
            tr("Change its look…"),
            tr(
                "Open this page in QGIS’s layout designer. What is kept there as the course’s template is "
                "the look of all such pages."
            ),
            self.design,
        )
        row = QHBoxLayout()
        row.addStretch(1)
        row.addWidget(self.leafing)
        row.addStretch(1)
        row.addWidget(self.design_button)
        middle = QWidget(self)
        layout = QVBoxLayout(middle)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.view, 1)
        layout.addLayout(row)
        return middle

    def _right(self):
        from ..guide.book import FORMS
        from ..guide.hole_page import SIZES
        from ..guide.sheets import PAGES

        form = QFormLayout()
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        self.event_box = self._box(
            tr("The event whose guide it is; its own list of pages, pins and lengths.")
        )
        self.round_box = self._box(tr("Whose pins stand in the guide."))
        self.image_box = QgsMapLayerComboBox(self)
        self.image_box.setFilters(QgsMapLayerProxyModel.Filter.RasterLayer)
        self.image_box.setToolTip(tr("The image that the holes’ pictures are cut from."))
        self.image_box.layerChanged.connect(lambda _: self._soon())
        self.form_box = self._box(
            tr("For the phone, or for print: single pages, or sheets to fold and staple.")
        )
        names = {
            "screen": tr("For the phone"),
            "pages": tr("Single pages for print"),
            "booklet": tr("Booklet for print"),
        }
        for name in FORMS:
            self.form_box.addItem(names[name], name)
        self.size_box = self._box(tr("The size of a page."))
        self.size_box.addItem(tr("Usual for the form"), "")
        for name, size in {**PAGES, **SIZES}.items():
            self.size_box.addItem(size_called(name, *size), name)
        self.tees_box = self._box(tr("The tee set whose figures stand on the holes’ pictures."))
        for title, box in (
            (tr("&Event"), self.event_box), (tr("&Round"), self.round_box), (tr("&Image"), self.image_box),
            (tr("&Form"), self.form_box), (tr("&Page"), self.size_box), (tr("&Tees"), self.tees_box),
        ):  # fmt: skip
            form.addRow(title, box)
            box.setAccessibleName(title.replace("&", ""))
            box.setWhatsThis(box.toolTip())
        self.grid_box = self._check(tr("&Grid over the greens"), tr("Lines every five yards or metres."))
        self.marks_box = self._check(tr("&Crop marks"), tr("Marks where pages are cut and folded."))
        form.addRow("", self.grid_box)
        form.addRow("", self.marks_box)
        self.remarks_title = QLabel(self)
        self.remarks_title.setWordWrap(True)
        self.remarks = QListWidget(self)
        self.remarks.setWordWrap(True)
        self.remarks.setAccessibleName(tr("What is missing"))
        self.remarks.setToolTip(tr("What is missing in the guide. Click a remark to look at its page."))
        self.remarks.setWhatsThis(self.remarks.toolTip())
        self.remarks.itemClicked.connect(self._go_to_remark)
        side = QWidget(self)
        layout = QVBoxLayout(side)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addLayout(form)
        layout.addSpacing(6)
        layout.addWidget(self.remarks_title)
        layout.addWidget(self.remarks, 1)
        layout.addStretch(0)
        return side

    def _box(self, tip):
        box = QComboBox(self)
        box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        box.setMinimumContentsLength(16)
        box.setToolTip(tip)
        box.activated.connect(lambda _, box=box: self._box_chosen(box))
        return box

    def _check(self, text, tip):
        box = QCheckBox(text, self)
        box.setToolTip(tip)
        box.setWhatsThis(tip)
        box.clicked.connect(lambda _: self._soon())
        return box

    # What there is

    @property
    def event_shown(self):
        """The model Event of the guide, None for one of the course alone."""
        name = self.event_box.currentData()
        return self.in_hand.find_event(name) if name else None

    def _fill_events(self):
        """The events, their rounds and the tee sets; what is chosen stays so where it is still there."""
        first = not self.event_box.count()
        events = [one.name for one in self.in_hand.events()]
        wanted = self.event_box.currentData()
        if first:
            wanted = self.in_hand.event or (events[-1] if events else "")
        self.event_box.clear()
        self.event_box.addItem(tr("No event"), "")
        for name in events:
            self.event_box.addItem(name, name)
        self.event_box.setCurrentIndex(max(self.event_box.findData(wanted), 0))
        number, event = self.round_box.currentData(), self.event_shown
        self.round_box.clear()
        self.round_box.addItem(tr("All rounds"), None)
        for one in event.rounds if event is not None else ():
            self.round_box.addItem(
                f"{tr('Round {}').format(one.number)}  {one.played_on}".strip(), one.number
            )
        self.round_box.setCurrentIndex(max(self.round_box.findData(number), 0))
        tees = self.tees_box.currentData()
        self.tees_box.clear()
        self.tees_box.addItem(tr("The longest of each hole"), "")
        for one in sorted(self.in_hand.course().tee_sets, key=lambda one: one.sort):
            self.tees_box.addItem(one.name, one.name)
        self.tees_box.setCurrentIndex(max(self.tees_box.findData(tees), 0))
        if first:
            layer = self._base_layer()
            if layer is not None:
                self.image_box.setLayer(layer)

    def _base_layer(self):
        """The layer of the date that most is drawn from, None where none is shown."""
        dates = {one.id: one for one in dates_of(self.in_hand)}
        base = dates.get(default_base(self.in_hand, [*dates]))
        return QgsProject.instance().mapLayer(base.layer_id) if base is not None and base.layer_id else None

    def _fill_pages(self):
        """Show the list that the guide follows, and whose it is."""
        from ..store.guide_pages import read_guide_pages

        name = self.event_box.currentData() or ""
        kept = read_guide_pages(self.in_hand.layers())
        pages = pages_for(kept, name)
        self._whose = name
        own = any(page.event == name for page in kept)
        self.list.show_pages([replace(page, event=name) for page in pages])
        self._tell_whose(own)
        self._show_editor()

    def _tell_whose(self, own):
        """Say whose list it is; own: whether it is kept for the event, or for the course without one."""
        usual, of_event = tr("The usual pages, until one is changed."), bool(self._whose)
        kept = tr("The event’s own list of pages.") if of_event else tr("The course’s list of pages.")
        self.whose_label.setText(kept if own else usual)

    def _keep(self):
        """Keep the list as it stands now, one step that can be undone, to be saved with the course."""
        from ..store.guide_pages import write_guide_pages

        with told_in(self.bar):
            layers = self.in_hand.layers()
            layer = layers.layers["guide_page"]
            begin_editing(layer)
            write_guide_pages(layers, self._whose, self.list.pages)
            self._tell_whose(True)
            self._soon()

    # Keeping up

    def _edited(self):
        with told_in(self.bar):
            self._fill_events()
            self._fill_pages()
            self._soon()

    def _course_changed(self):
        if self.in_hand.place != self.place:
            self.reject()
        else:
            self._edited()

    def _box_chosen(self, box):
        with told_in(self.bar):
            if box is self.event_box:
                self.editor.take()
                self._fill_events()
                self._fill_pages()
            self._soon()

    def _offer(self):
        """Offer pages that may still be added."""
        there = {page.kind for page in self.list.pages}
        for action in self.add_button.menu().actions():
            kind = action.data()
            action.setVisible(not (PAGE_KINDS[kind].once and kind in there))

    def _soon(self):
        if not self._busy:
            self._planning.start()

    # What is looked at

    def _chosen(self):
        self._show_editor()
        if self.book is not None:
            row = self.list.currentRow()
            number = next((n for n, page in enumerate(self.book.pages) if page.listed == row), None)
            if number is not None:
                self.look_at(number)

    def _show_editor(self):
        from ..guide.page_templates import guide_folder

        self.editor.folder = guide_folder(self.place)
        self.editor.show_page(self.list.page)
        page = self.list.page
        self.remove_button.setEnabled(page is not None and not PAGE_KINDS[page.kind].always)

    def wanted(self, dpi=None):
        """The Wanted of the book that the boxes say."""
        from ..guide.book import Wanted, page_of

        form = self.form_box.currentData()
        dpi = dpi or (_SCREEN_DPI if form == "screen" else _PRINT_DPI)
        return Wanted(
            form, page_of(self.size_box.currentData(), form), (), self.tees_box.currentData() or "",
            self.round_box.currentData(), self.grid_box.isChecked(), dpi, pages=self.list.pages,
        )  # fmt: skip

    def _make_maker(self):
        """A GuideMaker of the course as it is now: the last one, which has measured it, while that is as it
        was."""
        from ..guide.book_image import book_image
        from ..guide.book_making import GuideMaker
        from ..guide.page_cache import key_of

        course, layer = self.in_hand.course(), self.image_box.currentLayer()
        image = book_image(layer, course, self.place) if layer is not None and layer.isValid() else None
        event = self.event_shown
        key = key_of(course), event, image
        if self._made_for != key:
            self._made_for, self.maker = key, GuideMaker(course, self.place, event, image)
        return self.maker

    def _plan(self):
        """Plan the book to be looked at, tell what it lacks, show the page in hand."""
        if self._busy or self._stopped:
            return
        number = self.view.number
        try:
            self.book = self._make_maker().plan(self.wanted(_SEEN_DPI))
        except YardwrightError as error:
            self.book = None
            self.view.show_message(f"{error.what}\n\n{error.remedy}")
            self._tell([])
            self._tell_page()
            return
        self._tell([*self.book.remarks, *dict.fromkeys(one.what for one in self.book.broken)])
        self.look_at(min(number, len(self.book.pages) - 1))

    def _tell(self, remarks):
        self.remarks.clear()
        for remark in remarks:
            self.remarks.addItem(QListWidgetItem(str(remark)))
        if self.book is None:
            self.remarks_title.setText("")
        elif remarks:
            self.remarks_title.setText(tr("What is missing, or to be known: {}").format(len(remarks)))
        else:
            self.remarks_title.setText(tr("Nothing is missing."))
        self.remarks.setVisible(bool(remarks))
        self.save_button.setEnabled(self.book is not None)

    def _go_to_remark(self, item):
        """Look at the page that a remark is about: the first whose title, or hole, it names."""
        text = item.text().casefold()
        for number, page in enumerate(self.book.pages if self.book is not None else ()):
            hole = page.variables.get("hole_number")
            named = page.title and page.title.casefold() in text
            # Hole 1 is not meant where hole 12 is named.
            number_said = rf"\b{tr('hole {}').format(hole)}\b"
            by_number = hole is not None and re.search(number_said, text, re.IGNORECASE)
            if named or by_number:
                self.look_at(number)
                self._follow()
                return

    def look_at(self, number):
        """Show a page of the book, from 0."""
        if self.book is None:
            return
        self.view.number = min(max(number, 0), len(self.book.pages) - 1)
        self._tell_page()
        picture = self._pictures.get(self._key())
        if picture is not None:
            self.view.show_picture(picture)
        else:
            self._painting.start()

    def _follow(self):
        """Choose the row of the list that the page looked at comes from."""
        row = -1 if self.book is None else self.book.pages[self.view.number].listed
        if row == self.list.currentRow() or not 0 <= row < self.list.count():
            return
        self.editor.take()
        self.list.blockSignals(True)
        self.list.setCurrentRow(row)
        self.list.blockSignals(False)
        self._show_editor()

    def turn(self, step):
        """Leaf on by some pages, or back."""
        self.look_at(self.view.number + step)
        self._follow()

    def _turned(self, step):
        with told_in(self.bar):
            self.turn(step)

    def _key(self):
        return self.maker.shown_key(self.book, self.book.pages[self.view.number], _WIDTH)

    def _paint(self):
        """Paint the page in hand."""
        if self.book is None or self._busy or self._stopped:
            return
        page, key = self.book.pages[self.view.number], self._key()
        picture = self.maker.shown(self.book, page, _WIDTH * self.devicePixelRatioF())
        if picture is None or picture.isNull():
            name = os.path.basename(page.given)
            self.view.show_message(tr("Page {} of “{}”, as it is in the file.").format(page.given_page, name))
            return
        self._pictures[key] = picture
        while len(self._pictures) > _KEPT:
            self._pictures.pop(next(iter(self._pictures)))
        self.view.show_picture(picture)

    def design(self):
        """Open the page looked at in QGIS's layout designer."""
        from ..guide.page_design import title_of
        from .page_designer import open_in_designer

        if self.book is None:
            return
        book = self.maker.plan(self.wanted())
        page = book.pages[min(self.view.number, len(book.pages) - 1)]
        # The designer shows the page's picture as long as QGIS runs.
        folder = tempfile.mkdtemp(prefix="yardwright-")
        atexit.register(shutil.rmtree, folder, ignore_errors=True)
        layout = self.maker.layout(book, page, folder)
        open_in_designer(self.in_hand.iface, layout, page.title or title_of(page.kind))
        self._designed = True

    def changeEvent(self, event):
        super().changeEvent(event)
        # Back from the designer, where a template may have been kept.
        if event.type() == QEvent.Type.ActivationChange and self.isActiveWindow() and self._designed:
            self._designed = False
            self._soon()

    def _tell_page(self):
        count = len(self.book.pages) if self.book is not None else 0
        given = self.book is not None and self.book.pages[self.view.number].given_page
        self.design_button.setEnabled(self.book is not None and not given)
        self.leafing.tell(self.view.number, count)

    # Saving

    def _ask_and_save(self):
        with told_in(self.bar):
            self.editor.take()
            name = self.event_shown.name if self.event_shown is not None else self.in_hand.course().name
            name = "".join(one if one.isalnum() or one in " -_" else "_" for one in name).strip()
            proposed = os.path.join(
                QgsProject.instance().absolutePath(), f"{name} {self.form_box.currentData()}.pdf"
            )
            path, _ = QFileDialog.getSaveFileName(
                self, tr("Save the guide"), proposed, f"{tr('PDF')} (*.pdf)"
            )
            if path:
                self.save(path)

    def save(self, path):
        """Write the guide as a PDF, and offer to open it; its path, None where that was cancelled."""
        from ..guide.book_making import Binding

        path = path if path.lower().endswith(".pdf") else path + ".pdf"
        self._planning.stop()
        self._painting.stop()
        self._set_busy(True)
        try:
            maker = self._make_maker()
            book = maker.plan(self.wanted(), self._living(0, 15))
            binding = Binding(self.marks_box.isChecked(), language=QLocale().bcp47Name())
            maker.write(book, path, binding, (), self._living(15, 100))
        except Cancelled:
            self.bar.pushMessage("Yardwright", tr("No guide was written; what was there is as it was."))
            return None
        finally:
            self._set_busy(False)
        self._tell([*book.remarks, *dict.fromkeys(maker.remarks)])
        tell_saved(self.bar, tr("The guide was saved: {}").format(os.path.basename(path)), path)
        return path

    def _living(self, first, last):
        def tell(done, total):
            if total:
                self.progress.setValue(int(first + (last - first) * done / total))
            QCoreApplication.processEvents()
            return not self._stopped

        return tell

    def _set_busy(self, busy):
        self._busy = busy
        self._stopped = False
        self.progress.setVisible(busy)
        self.progress.setValue(0)
        for thing in (
            self.list,
            self.editor,
            self.save_button,
            self.event_box,
            self.add_button,
            self.design_button,
        ):
            thing.setEnabled(not busy)
        self.close_button.setText(tr("Stop") if busy else self._close)
