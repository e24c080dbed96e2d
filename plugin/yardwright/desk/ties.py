"""The part of the window “Register dates” where pairs of spots are set by hand."""

from qgis.core import QgsCoordinateTransform
from qgis.PyQt.QtCore import QObject, Qt
from qgis.PyQt.QtWidgets import (
    QGroupBox,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QPushButton,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
)

from ..compat import flags_number
from ..model.errors import YardwrightError
from .tie_tool import ON_BASE, ON_DATE, Pair, TieMarks, TieTool, legend_of_marks
from .words import told_in, tr


class TiesByHand(QObject):
    """Sets pairs for one date at a time. dialog: the RegisteringDialog, which shows ``box``.

    ``pairs``: Pairs of the date in hand, QgsPointXY on the map.
    """

    def __init__(self, dialog):
        super().__init__(dialog)
        self.dialog, self.panel = dialog, dialog.panel
        self.date = self.base = ""
        self.pairs = []
        self._tools, self._marks = {}, {}
        self._flipped = False
        self._build()

    def _build(self):
        self.box = QGroupBox(self.dialog)
        self.box.setObjectName("yardwright_ties")
        layout = QVBoxLayout(self.box)
        self.says = QLabel(self.box)
        self.says.setWordWrap(True)
        legend = QLabel(legend_of_marks(), self.box)
        self.list = QTreeWidget(self.box)
        self.list.setRootIsDecorated(False)
        self.list.setHeaderLabels([tr("Pair"), tr("East (m)"), tr("North (m)"), tr("Left (m)")])
        self.list.headerItem().setToolTip(
            3, tr("How far the pair is off when all of them are fitted together")
        )
        header = self.list.header()
        header.setStretchLastSection(False)
        for column in range(4):
            header.setSectionResizeMode(column, QHeaderView.ResizeMode.ResizeToContents)
        self.list.setMaximumHeight(130)
        self.list.currentItemChanged.connect(lambda *_: self._lay_marks())
        self.delete_button = QPushButton(tr("&Delete pair"), self.box)
        self.delete_button.clicked.connect(lambda _: self.delete(self._chosen()))
        self.use_button = QPushButton(tr("&Use these pairs"), self.box)
        self.use_button.setToolTip(
            tr("Lay the date on the base by these pairs alone; so does Enter on the map")
        )
        self.use_button.clicked.connect(lambda _: self.finish())
        self.leave_button = QPushButton(tr("&Leave it"), self.box)
        self.leave_button.clicked.connect(lambda _: self.end())
        row = QHBoxLayout()
        row.addWidget(legend, 1)
        for button in (self.delete_button, self.use_button, self.leave_button):
            button.setAutoDefault(False)
            row.addWidget(button)
        for part in (self.says, self.list):
            layout.addWidget(part)
        layout.addLayout(row)
        self.box.hide()

    @property
    def at_work(self):
        """Whether pairs are being set."""
        return bool(self._tools)

    # Setting

    def begin(self, date, base):
        """Begin to set pairs for a date and its base, ids."""
        shown = {one.id for one in self.panel.dates if one.layer_id}
        if not {date, base} <= shown:
            raise YardwrightError(
                tr("Both {} and {} must be layers of this project.").format(date, base),
                tr("Add their images to the project, then try again."),
            )
        self.end()
        self.date, self.base, self.pairs = date, base, []
        self.panel.show_date(base)
        self.panel.choose_second(date)
        self.panel.lay_elsewhere("", None)
        self._take_tool(self.panel.canvas, self._side_on_map)
        if self.panel.linked is not None:
            self._take_tool(self.panel.linked.view, lambda _place: ON_DATE)
        self.box.setTitle(tr("Ties by hand: {} on {}").format(date, base))
        self.box.show()
        self._fill()
        self._ask_next()

    def of(self, date):
        """Another row is chosen: pairs of another date are not its."""
        if self.at_work and date != self.date:
            self.end()

    def end(self):
        """Set no more pairs, and forget those that were set."""
        self._flip(False)
        for canvas, tool in self._tools.items():
            canvas.unsetMapTool(tool)
            canvas.scene().removeItem(self._marks[canvas])
            tool.deleteLater()
        self._tools, self._marks, self.pairs = {}, {}, []
        self.box.hide()

    def _take_tool(self, canvas, side_at):
        tool = TieTool(canvas, side_at)
        for signal, slot in (
            (tool.clicked, self.click),
            (tool.finished, self.finish),
            (tool.back, self.back),
            (tool.given_up, self.end),
        ):
            signal.connect(slot)
        self._tools[canvas], self._marks[canvas] = tool, TieMarks(canvas)
        canvas.setMapTool(tool)
        canvas.setFocus()

    def _side_on_map(self, place):
        return ON_DATE if self.panel.comparison.shows_second_at(place) else ON_BASE

    def click(self, side, place):
        """One end of a pair; the same side again sets that end anew."""
        if not self.pairs or self.pairs[-1].whole:
            self.pairs.append(Pair())
        if side == ON_DATE:
            self.pairs[-1].on_date = place
        else:
            self.pairs[-1].on_base = place
        self._fill()
        self._ask_next()

    def back(self):
        """Take the last click back."""
        if self.pairs:
            self.delete(len(self.pairs) - 1)

    def delete(self, number):
        """Take a pair out, by its number from 0."""
        if 0 <= number < len(self.pairs):
            del self.pairs[number]
            self._fill()
            self._ask_next()

    def finish(self):
        """Lay the date on the base by the pairs."""
        with told_in(self.dialog.bar):
            ties = self.ties()
            if not ties:
                raise YardwrightError(
                    tr("No pair is whole yet."), tr("Click the same spot on the date and on the base.")
                )
            date = self.date
            self.end()
            self.dialog.begin([date], {date: ties})

    # What is asked for

    def _ask_next(self):
        """Say what to click next and show the date that it is to be clicked on."""
        pair = self.pairs[-1] if self.pairs else Pair(None, None)
        half = not pair.whole and (pair.on_date is not None or pair.on_base is not None)
        wanted = ON_BASE if half and pair.on_base is None else ON_DATE
        number = len(self.pairs) + (0 if half else 1)
        if self.panel.linked is not None or self.panel.comparison.swiping:
            text = tr("Pair {}: click the same spot on both, in either order. Enter when done.").format(
                number
            )
        else:
            text = (
                tr("Pair {}: click a clear spot on {}. Enter when done.").format(number, self.date)
                if wanted == ON_DATE
                else tr("Pair {}: click the same spot on {}.").format(number, self.base)
            )
            self._flip(wanted == ON_DATE)
        self.says.setText(text)

    def _flip(self, on):
        """Show the date instead of the base, or no more; by us, not by the key."""
        if on != self._flipped:
            self._flipped = on
            self.panel.flip(on)

    # The list

    def ties(self):
        """``[((x, y) where the date's file puts a spot, (x, y) on the ground)]`` of whole pairs."""
        from .registering import file_places, ground_places

        layer = self.dialog.in_hand.layer("hole")
        crs = self.panel.canvas.mapSettings().destinationCrs()
        to_course = QgsCoordinateTransform(crs, layer.crs(), self.dialog.in_hand.project)
        whole = [pair for pair in self.pairs if pair.whole]
        on_date = [to_course.transform(pair.on_date) for pair in whole]
        on_base = [to_course.transform(pair.on_base) for pair in whole]
        if not whole:
            return []
        in_hand, dialog = self.dialog.in_hand, self.dialog
        in_file = file_places(in_hand, dialog.date(self.date), [(p.x(), p.y()) for p in on_date])
        on_ground = ground_places(in_hand, dialog.date(self.base), [(p.x(), p.y()) for p in on_base])
        return list(zip(in_file, on_ground))

    def _chosen(self):
        item = self.list.currentItem()
        return self.list.indexOfTopLevelItem(item) if item is not None else len(self.pairs) - 1

    def _fill(self):
        with told_in(self.dialog.bar):
            ties = self.ties()
            left = iter(self._left(ties))
            metre = self._metre()
            each = iter(ties)
            self.list.clear()
            for number, pair in enumerate(self.pairs, start=1):
                item = QTreeWidgetItem([str(number)])
                if pair.whole:
                    (x, y), (east, north) = next(each)
                    far = next(left, None)
                    item.setText(1, f"{(east - x) * metre:+.2f}")
                    item.setText(2, f"{(north - y) * metre:+.2f}")
                    item.setText(3, "–" if far is None else f"{far:.2f}")
                else:
                    item.setText(1, tr("half set"))
                for column in (1, 2, 3):
                    right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
                    item.setTextAlignment(column, flags_number(right))
                self.list.addTopLevelItem(item)
            self.delete_button.setEnabled(bool(self.pairs))
            self.use_button.setEnabled(bool(ties))
            self._lay_marks()

    def _left(self, ties):
        """What fitting all the pairs together leaves at each, metres; nothing where there are too few."""
        from .registering import left_by

        return left_by(ties, self._metre()) if len(ties) > 1 else []

    def _metre(self):
        from ..store.image_dates import metres_per_unit

        return metres_per_unit(self.dialog.in_hand.course().crs)

    def _lay_marks(self):
        item = self.list.currentItem()
        chosen = self.list.indexOfTopLevelItem(item) if item is not None else None
        for marks in self._marks.values():
            marks.lay(self.pairs, chosen)
