"""The list of a guide's pages: ticked where they are shown, moved by dragging or by keys."""

from dataclasses import replace

from qgis.PyQt.QtCore import Qt, pyqtSignal
from qgis.PyQt.QtGui import QKeySequence
from qgis.PyQt.QtWidgets import QAbstractItemView, QListWidget, QListWidgetItem, QShortcut

from ..model.guide_pages import PAGE_KINDS, moved, problems_of
from .words import tr

_WARNING = "⚠"


class PageList(QListWidget):
    """Shows GuidePages. ``pages``: as they stand now. Signals: ``changed`` (the pages are others, or in
    another order), ``chosen`` (another page is in hand)."""

    changed = pyqtSignal()
    chosen = pyqtSignal()

    def __init__(self, parent=None):
        super().__init__(parent)
        self.pages = ()
        self._filling = False
        self.setDragDropMode(QAbstractItemView.DragDropMode.InternalMove)
        self.setDefaultDropAction(Qt.DropAction.MoveAction)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setAccessibleName(tr("Pages of the guide"))
        self.setWhatsThis(
            tr("The pages of the guide in their order. Drag a page to move it; untick it to leave it out.")
        )
        self.itemChanged.connect(self._ticked)
        self.currentRowChanged.connect(lambda _: None if self._filling else self.chosen.emit())
        self.model().rowsMoved.connect(lambda *_: self._dragged())
        for keys, step in (("Alt+Up", -1), ("Alt+Down", 1)):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetShortcut)
            shortcut.activated.connect(lambda step=step: self.move(step))

    @property
    def page(self):
        """The page in hand, None without one."""
        row = self.currentRow()
        return self.pages[row] if 0 <= row < len(self.pages) else None

    def show_pages(self, pages, row=None):
        """Show other pages; row: the one to be in hand, the one there is where it is None."""
        row = self.currentRow() if row is None else row
        self.pages = tuple(pages)
        told = {}
        for place, remark in problems_of(self.pages):
            if place is not None:
                told.setdefault(place, []).append(str(remark))
        self._filling = True
        try:
            self.clear()
            for place, page in enumerate(self.pages):
                mark = f"  {_WARNING}" if place in told else ""
                item = QListWidgetItem(f"{page.called}{mark}")
                item.setData(Qt.ItemDataRole.UserRole, place)
                flags = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
                flags |= Qt.ItemFlag.ItemIsDragEnabled | Qt.ItemFlag.ItemIsUserCheckable
                item.setFlags(flags)
                shown = page.shown or PAGE_KINDS[page.kind].always
                item.setCheckState(Qt.CheckState.Checked if shown else Qt.CheckState.Unchecked)
                item.setToolTip("\n".join(told.get(place, [])))
                self.addItem(item)
            self.setCurrentRow(min(max(row, 0), len(self.pages) - 1))
        finally:
            self._filling = False

    def move(self, step):
        """Move the page in hand up or down."""
        row = self.currentRow()
        to = row + step
        if 0 <= row < len(self.pages) and 0 <= to < len(self.pages):
            self._take(moved(self.pages, row, to), to)

    def add(self, page):
        """Put a page in after the one in hand, and take it in hand."""
        row = self.currentRow() + 1
        self._take((*self.pages[:row], page, *self.pages[row:]), row)

    def remove(self):
        """Take the page in hand out; one that must stay stays."""
        row, page = self.currentRow(), self.page
        if page is not None and not PAGE_KINDS[page.kind].always:
            self._take((*self.pages[:row], *self.pages[row + 1 :]), row)

    def change(self, **values):
        """Change the page in hand."""
        row, page = self.currentRow(), self.page
        if page is not None and any(getattr(page, name) != value for name, value in values.items()):
            made = replace(page, **values)
            self._take((*self.pages[:row], made, *self.pages[row + 1 :]), row)

    def _take(self, pages, row):
        self.show_pages(pages, row)
        self.changed.emit()
        self.chosen.emit()

    def _dragged(self):
        order = [self.item(row).data(Qt.ItemDataRole.UserRole) for row in range(self.count())]
        if not self._filling and len(order) == len(self.pages) and order != sorted(order):
            self._take(tuple(self.pages[place] for place in order), self.currentRow())

    def _ticked(self, item):
        if self._filling:
            return
        place = item.data(Qt.ItemDataRole.UserRole)
        page, shown = self.pages[place], item.checkState() == Qt.CheckState.Checked
        pages = (*self.pages[:place], replace(page, shown=shown), *self.pages[place + 1 :])
        self._take(pages, place)
