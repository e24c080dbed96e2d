"""The panel that lists what is wrong, missing or doubtful in the course, hole by hole.

What is found, and what a repair would do, is worked out in ``measure.checks``; here it is only shown. QGIS
imports this at its start: what is heavy is imported where it is used.
"""

from html import escape

from qgis.gui import QgsDockWidget
from qgis.PyQt.QtCore import QPoint, QPointF, QRect, QRectF, QSize, Qt, QTimer
from qgis.PyQt.QtGui import (
    QColor,
    QFont,
    QFontMetrics,
    QIcon,
    QPainter,
    QPen,
    QPixmap,
    QPolygonF,
    QTextOption,
)
from qgis.PyQt.QtWidgets import (
    QApplication,
    QComboBox,
    QHBoxLayout,
    QLabel,
    QMenu,
    QPushButton,
    QSizePolicy,
    QStackedWidget,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QToolButton,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from ..compat import flags_number
from ..model.errors import YardwrightError
from ..resources import icon
from .in_hand import no_course, no_hole
from .words import told_in, tr

_FINDING = Qt.ItemDataRole.UserRole
_HOLE = Qt.ItemDataRole.UserRole + 1
_COUNTS = Qt.ItemDataRole.UserRole + 2
_ALL_HOLES, _THIS_HOLE = "all", "this"
_SYMBOL = 16
_AROUND_M = 8.0
_LEAST_RADIUS_M = 30.0
"""The map shows this much about what was found, and at least this far about its middle."""


class ChecksPanel(QgsDockWidget):
    """Everything the checks find in the course in hand.

    in_hand: the CourseInHand. While the panel can be seen it follows every edit; a hole is checked a turn of
    the event loop, so that drawing is not held up. ``findings()`` gives what is listed now.
    """

    def __init__(self, in_hand, parent=None):
        super().__init__(parent)
        self.in_hand = in_hand
        self.setObjectName("yardwright_checks_panel")
        self.setWindowTitle(tr("Checks"))
        self.setWindowIcon(icon("checks"))
        self._found = {}
        self._holes = 0
        self._reason = ""
        self._seen = False
        self._stale = True
        self._folded = set()
        self._checks = None
        self._waiting = []
        self._finding = {}
        self._step = QTimer(self)
        self._step.setInterval(0)
        self._step.timeout.connect(self._check_next)
        self._build()
        self._connections = [
            (signal, signal.connect(slot))
            for signal, slot in (
                (in_hand.course_changed, self._course_changed),
                (in_hand.edited, self._out_of_date),
                (in_hand.hole_changed, self._hole_changed),
                (self.visibilityChanged, self._seen_or_not),
            )
        ]

    def let_go(self):
        """Listen to nothing any more."""
        self._step.stop()
        self._checks, self._waiting = None, []
        while self._connections:
            signal, connection = self._connections.pop()
            signal.disconnect(connection)

    # The surface

    def _build(self):
        self.holes_box = QComboBox(self)
        self.holes_box.setAccessibleName(tr("Holes listed"))
        self.holes_box.setToolTip(tr("List what was found on all holes, or on the hole in hand only"))
        self.holes_box.addItem(tr("All holes"), _ALL_HOLES)
        self.holes_box.addItem(tr("This hole"), _THIS_HOLE)
        self.holes_box.activated.connect(lambda row: self._fill())
        self.again_button = QPushButton(tr("Check &again"), self)
        self.again_button.setToolTip(tr("Look through the whole course once more"))
        self.again_button.clicked.connect(lambda: self.check_again())
        top = QHBoxLayout()
        top.addWidget(self.holes_box, 1)
        top.addWidget(self.again_button)

        self.gravity_buttons = {}
        gravities = QHBoxLayout()
        gravities.setSpacing(3)
        for gravity, tip in (
            ("wrong", tr("List what is wrong: it must be mended before figures are right")),
            ("missing", tr("List what is missing")),
            ("doubtful", tr("List what is doubtful: look at it, it may be right")),
        ):
            button = QToolButton(self)
            button.setCheckable(True)
            button.setChecked(True)
            button.setIcon(_symbol_icon(gravity, self.devicePixelRatioF()))
            button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
            button.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
            button.setToolTip(tip)
            button.toggled.connect(lambda on: self._fill())
            self.gravity_buttons[gravity] = button
            gravities.addWidget(button)

        self.tree = _Tree(self)
        self.tree.itemSelectionChanged.connect(self._chosen_changed)
        self.tree.itemActivated.connect(lambda item, column: self.show_on_map())
        self.tree.itemCollapsed.connect(lambda item: self._folded.add(item.data(0, _HOLE)))
        self.tree.itemExpanded.connect(lambda item: self._folded.discard(item.data(0, _HOLE)))
        self.tree.customContextMenuRequested.connect(self._menu)
        self.nothing = QLabel(self)
        self.nothing.setWordWrap(True)
        self.nothing.setMargin(16)
        self.nothing.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.pages = QStackedWidget(self)
        self.pages.addWidget(self.tree)
        self.pages.addWidget(self.nothing)

        self.remedy = QLabel(self)
        self.remedy.setWordWrap(True)
        self.remedy.setMargin(2)
        self.remedy.setTextFormat(Qt.TextFormat.PlainText)
        self.remedy.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.show_button = QPushButton(tr("&Show on map"), self)
        self.show_button.clicked.connect(lambda: self.show_on_map())
        self.repair_button = QPushButton(tr("&Repair"), self)
        self.repair_button.clicked.connect(lambda: self.repair_chosen())
        foot = QHBoxLayout()
        foot.addWidget(self.show_button)
        foot.addWidget(self.repair_button)

        surface = QWidget(self)
        layout = QVBoxLayout(surface)
        layout.setContentsMargins(6, 6, 6, 6)
        layout.addLayout(top)
        layout.addLayout(gravities)
        layout.addWidget(self.pages, 1)
        layout.addWidget(self.remedy)
        layout.addLayout(foot)
        self.setWidget(surface)
        self._explain()
        self._chosen_changed()

    def _explain(self):
        """What the question mark of the help menu says of each part."""
        self.tree.setWhatsThis(
            tr(
                "What was found in the course, by hole; it is looked through again after each edit. A double "
                "click shows the place on the map and selects the features. Below the list stands what to do."
            )
        )
        self.holes_box.setWhatsThis(self.holes_box.toolTip())
        self.repair_button.setWhatsThis(
            tr(
                "Mends what is chosen, where that is safe, in one step that Undo takes back. Nothing is "
                "saved by it."
            )
        )
        self.show_button.setWhatsThis(tr("Zooms the map to what is chosen and selects its features."))

    # Checking

    def check_again(self):
        """Look through the whole course once more, even while the panel cannot be seen."""
        self._stale = False
        self._checks, self._waiting, self._finding = None, [], {}
        with told_in(self.in_hand.iface.messageBar()):
            reason = self._begin()
            if reason:
                self._show(0, {}, reason)
        if self._checks is None:
            self._step.stop()
        elif not self._step.isActive():
            self._step.start()

    def _begin(self):
        """Begin to check; why there is nothing to check, else an empty text."""
        if self.in_hand.group is None:
            return no_course()
        from ..measure.checks import CourseChecks

        try:
            course, index = self.in_hand.course(), self.in_hand.index()
        except YardwrightError as error:
            return f"{error.what} {error.remedy}"
        self._checks = CourseChecks(course, index)
        # The hole that is being drawn first, for its findings are waited for.
        self._waiting = [None, *sorted(self._checks.numbers, key=lambda n: (n != self.in_hand.hole, n))]
        return ""

    def _check_next(self):
        with told_in(self.in_hand.iface.messageBar()):
            if self._checks is not None and self._waiting:
                number = self._waiting.pop(0)
                checks = self._checks
                self._finding[number] = checks.of_course() if number is None else checks.of_hole(number)
                if not self._waiting:
                    self._show(len(checks.numbers), self._finding)
                    self._checks = None
                return
        # Done, or something failed that has been told of.
        self._step.stop()
        self._checks, self._waiting = None, []

    def _show(self, holes, found, reason=""):
        self._holes, self._reason = holes, reason
        self._found = {number: findings for number, findings in found.items() if findings}
        self._fill()

    def _course_changed(self):
        self._folded.clear()
        self._out_of_date()

    def _out_of_date(self):
        self._stale = True
        if self._seen:
            self.check_again()

    def _seen_or_not(self, seen):
        self._seen = seen
        if seen and self._stale:
            self.check_again()

    def _hole_changed(self):
        if self.holes_box.currentData() == _THIS_HOLE:
            self._fill()

    # Listing

    def findings(self):
        """The Findings listed now, in the order of the list."""
        groups = (self.tree.topLevelItem(row) for row in range(self.tree.topLevelItemCount()))
        return [group.child(row).data(0, _FINDING) for group in groups for row in range(group.childCount())]

    def chosen(self):
        """The Finding chosen in the list, None while none is."""
        items = self.tree.selectedItems()
        return items[0].data(0, _FINDING) if items else None

    def choose(self, finding):
        """Choose a Finding in the list; whether it is there."""
        for item in self._items():
            if item.data(0, _FINDING) == finding:
                self.tree.setCurrentItem(item)
                return True
        return False

    def _items(self):
        for row in range(self.tree.topLevelItemCount()):
            group = self.tree.topLevelItem(row)
            for child in range(group.childCount()):
                yield group.child(child)

    def _fill(self):
        before, scrolled = self.chosen(), self.tree.verticalScrollBar().value()
        self.tree.blockSignals(True)
        self.tree.clear()
        this_hole = self.holes_box.currentData() == _THIS_HOLE
        names = {number: name for number, name, _ in self.in_hand.holes}
        counts = dict.fromkeys(self.gravity_buttons, 0)
        for number in sorted(self._found, key=lambda n: -1 if n is None else n):
            if this_hole and number != self.in_hand.hole:
                continue
            for finding in self._found[number]:
                counts[finding.gravity] += 1
            listed = [f for f in self._found[number] if self.gravity_buttons[f.gravity].isChecked()]
            if listed:
                self._add_group(number, names.get(number, ""), listed)
        self.tree.blockSignals(False)
        for gravity, button in self.gravity_buttons.items():
            button.setText(f"{_gravity_word(gravity)} {counts[gravity]}")
        self._say_if_empty(sum(counts.values()))
        self._choose_again(before)
        self._chosen_changed()
        self.tree.doItemsLayout()
        self.tree.verticalScrollBar().setValue(scrolled)

    def _add_group(self, number, name, listed):
        title = (
            tr("The course")
            if number is None
            else "  ".join(filter(None, (tr("Hole {}").format(number), name)))
        )
        group = QTreeWidgetItem(self.tree, [title])
        group.setData(0, _HOLE, number)
        group.setData(0, _COUNTS, _counts(listed))
        counted = _counted(listed)
        group.setData(0, Qt.ItemDataRole.AccessibleTextRole, f"{title}: {counted}")
        group.setToolTip(0, f"{title}: {counted}")
        group.setFlags(Qt.ItemFlag.ItemIsEnabled)
        for finding in listed:
            item = QTreeWidgetItem(group, [finding.text])
            item.setData(0, _FINDING, finding)
            word = _gravity_word(finding.gravity)
            item.setData(0, Qt.ItemDataRole.AccessibleTextRole, f"{word}: {finding.text}")
            tip = f"<b>{escape(word)}</b>: {escape(finding.text)}<br>{escape(finding.remedy)}"
            item.setToolTip(0, tip)
        group.setExpanded(number not in self._folded)

    def _say_if_empty(self, hidden):
        """In place of an empty list: why it is empty."""
        if self.tree.topLevelItemCount():
            self.pages.setCurrentWidget(self.tree)
            return
        this_hole = self.holes_box.currentData() == _THIS_HOLE
        if self._reason:
            text = self._reason
        elif hidden:
            text = tr("Nothing of the kinds chosen above was found.")
        elif this_hole and self._found:
            text = tr("Nothing wrong found on hole {}, but on others.").format(self.in_hand.hole)
        elif this_hole and self._holes:
            text = tr("Nothing wrong found on hole {}.").format(self.in_hand.hole)
        elif self._holes == 1:
            text = tr("Nothing wrong found on 1 hole.")
        elif self._holes:
            text = tr("Nothing wrong found on {} holes.").format(self._holes)
        else:
            text = no_hole()
        self.nothing.setText(text)
        self.pages.setCurrentWidget(self.nothing)

    def _choose_again(self, before):
        """Choose what was chosen before the list was filled anew, else the same thing in other words."""
        if before is None or self.choose(before):
            return
        for item in self._items():
            finding = item.data(0, _FINDING)
            if (finding.hole, finding.check, finding.features) == (
                before.hole,
                before.check,
                before.features,
            ):
                self.tree.setCurrentItem(item)
                return

    def _chosen_changed(self):
        finding = self.chosen()
        self.remedy.setText("" if finding is None else finding.remedy)
        self.remedy.setVisible(finding is not None)
        self.show_button.setEnabled(finding is not None and self._can_show(finding))
        self.show_button.setToolTip(
            tr("Zoom the map to it and select its features (Enter, or a double click)")
            if finding is None or self._can_show(finding)
            else tr("This is not drawn anywhere on the map.")
        )
        self.repair_button.setEnabled(finding is not None and finding.repair is not None)
        if finding is None:
            tip = tr("Choose something in the list first.")
        elif finding.repair is None:
            tip = tr("There is no repair for this that is safe: mend it with QGIS’s own tools.")
        else:
            tip = tr("{}. Can be undone.").format(finding.repair.text)
        self.repair_button.setToolTip(tip)

    def _can_show(self, finding):
        return finding.box is not None or bool(finding.features)

    def _menu(self, place):
        finding = self.chosen()
        if finding is None or self.tree.itemAt(place) is None:
            return
        menu = QMenu(self)
        menu.setToolTipsVisible(True)
        show = menu.addAction(self.show_button.text(), self.show_on_map)
        show.setEnabled(self.show_button.isEnabled())
        text = self.repair_button.text() if finding.repair is None else finding.repair.text
        mend = menu.addAction(text, self.repair_chosen)
        mend.setEnabled(finding.repair is not None)
        mend.setToolTip(self.repair_button.toolTip())
        menu.addAction(tr("Copy text"), lambda: QApplication.clipboard().setText(_as_text(finding)))
        menu.addSeparator()
        menu.addAction(self.again_button.text(), self.check_again)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        menu.popup(self.tree.viewport().mapToGlobal(place))

    # Doing

    def show_on_map(self):
        """Zoom the map to what is chosen, turned as it is, select its features and take its hole in hand."""
        finding = self.chosen()
        if finding is None:
            return
        with told_in(self.in_hand.iface.messageBar()):
            self.in_hand.choose_hole(finding.hole)
            self._select(finding.features)
            if finding.box is not None:
                self._zoom(finding.box)

    def _select(self, features):
        for node in self.in_hand.group.findLayers() if self.in_hand.group is not None else ():
            layer = node.layer()
            if layer is not None and layer.isValid():
                layer.removeSelection()
        by_kind = {}
        for kind, fid in features:
            by_kind.setdefault(kind, []).append(fid)
        for kind, fids in by_kind.items():
            layer = self.in_hand.layer(kind)
            if layer is not None:
                layer.selectByIds(fids)

    def _zoom(self, box):
        """A circle about the box fits the map however it is turned."""
        import numpy as np
        from qgis.core import QgsRectangle

        from ..measure.frame import frame_about
        from ..store.reading import crs_text
        from .turning import map_places

        crs = self.in_hand.layers().crs
        corners = np.array([(box[i], box[j]) for i in (0, 2) for j in (1, 3)])
        frame = frame_about(corners, crs_text(crs))
        placed = frame.to_frame(crs_text(crs))(corners)
        low, high = placed.min(axis=0), placed.max(axis=0)
        radius = max(float(np.hypot(*(high - low))) / 2 + _AROUND_M, _LEAST_RADIUS_M)
        turns = np.radians(np.arange(0, 360, 15))
        ring = (low + high) / 2 + radius * np.column_stack([np.sin(turns), np.cos(turns)])
        canvas = self.in_hand.iface.mapCanvas()
        on_map = map_places(canvas, crs, frame)(ring)
        canvas.setExtent(QgsRectangle(*on_map.min(axis=0).tolist(), *on_map.max(axis=0).tolist()))
        canvas.refresh()

    def repair_chosen(self):
        """Do the repair of what is chosen; it can be undone as one step."""
        finding = self.chosen()
        if finding is None or finding.repair is None:
            return
        with told_in(self.in_hand.iface.messageBar()):
            from .repairing import repair

            repair(self.in_hand, finding)
            self.tree.setFocus()


def _gravity_word(gravity):
    return {"wrong": tr("Wrong"), "missing": tr("Missing"), "doubtful": tr("Doubtful")}[gravity]


def _counts(findings):
    """``[(gravity, how many)]`` of those there are, the gravest first."""
    numbers = [(gravity, sum(f.gravity == gravity for f in findings)) for gravity in _DRAWN]
    return [(gravity, number) for gravity, number in numbers if number]


def _counted(findings):
    """``2 wrong, 1 doubtful``."""
    texts = {"wrong": tr("{} wrong"), "missing": tr("{} missing"), "doubtful": tr("{} doubtful")}
    return ", ".join(texts[gravity].format(number) for gravity, number in _counts(findings))


def _as_text(finding):
    where = tr("The course") if finding.hole is None else tr("Hole {}").format(finding.hole)
    return f"{where}: {_gravity_word(finding.gravity)}: {finding.text} {finding.remedy}"


class _Tree(QTreeWidget):
    """The list. Its texts are folded to its width."""

    def __init__(self, parent):
        super().__init__(parent)
        self.setAccessibleName(tr("What the checks found"))
        self.setHeaderHidden(True)
        self.setIndentation(10)
        self.setUniformRowHeights(False)
        self.setExpandsOnDoubleClick(False)
        self.setContextMenuPolicy(Qt.ContextMenuPolicy.CustomContextMenu)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollMode(QTreeWidget.ScrollMode.ScrollPerPixel)
        self.setItemDelegate(_Folded(self))

    def resizeEvent(self, event):
        super().resizeEvent(event)
        self.scheduleDelayedItemsLayout()


class _Folded(QStyledItemDelegate):
    """A group's line in bold; a finding's text folded to the width, its gravity's symbol before it and, where
    there is a repair, a word behind it."""

    _GAP = 5

    def sizeHint(self, option, index):
        """As tall as the folded text."""
        if index.data(_FINDING) is None:
            return super().sizeHint(self._bold(option), index) + QSize(0, 6)
        tree = self.parent()
        width = tree.viewport().width() - 2 * tree.indentation()
        box = option.fontMetrics.boundingRect(
            QRect(0, 0, self._room(option, index, width), 10_000),
            flags_number(Qt.TextFlag.TextWordWrap),
            index.data(),
        )
        return QSize(width, max(box.height(), _SYMBOL) + 2 * self._GAP)

    def paint(self, painter, option, index):
        """The symbol, the folded text, and the word that there is a repair."""
        finding = index.data(_FINDING)
        if finding is None:
            self._paint_group(painter, option, index)
            return
        style = option.widget.style()
        style.drawPrimitive(QStyle.PrimitiveElement.PE_PanelItemViewItem, option, painter, option.widget)
        area, gap = option.rect, self._GAP
        ratio = option.widget.devicePixelRatioF()
        painter.drawPixmap(QPoint(area.left() + gap, area.top() + gap), _symbol(finding.gravity, ratio))
        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        palette = option.palette
        colour = palette.highlightedText() if chosen else palette.text()
        painter.save()
        painter.setPen(colour.color())
        painter.setFont(option.font)
        room = QRectF(
            area.left() + _SYMBOL + 2 * gap,
            area.top() + gap,
            self._room(option, index, area.width()),
            area.height() - gap,
        )
        folding = QTextOption(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)
        folding.setWrapMode(QTextOption.WrapMode.WordWrap)
        painter.drawText(room, index.data(), folding)
        if finding.repair is not None:
            self._paint_word(painter, option, chosen)
        painter.restore()

    def _paint_group(self, painter, option, index):
        """The hole in bold; at the right end how much was found, by symbol and number."""
        area, gap, metrics = option.rect, self._GAP, option.fontMetrics
        ratio = option.widget.devicePixelRatioF()
        painter.save()
        painter.setPen(option.palette.text().color())
        painter.setFont(option.font)
        right = area.right() - gap
        middle = QTextOption(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        middle.setWrapMode(QTextOption.WrapMode.NoWrap)
        for gravity, number in reversed(index.data(_COUNTS)):
            width = metrics.horizontalAdvance(str(number))
            painter.drawText(QRectF(right - width, area.top(), width + 2, area.height()), str(number), middle)
            right -= width + _SYMBOL + 3
            top = area.top() + (area.height() - _SYMBOL) // 2
            painter.drawPixmap(QPoint(right, top), _symbol(gravity, ratio))
            right -= 2 * gap
        bold = self._bold(option).font
        painter.setFont(bold)
        left = area.left() + 3
        room = right - left
        title = QFontMetrics(bold).elidedText(index.data(), Qt.TextElideMode.ElideRight, room)
        painter.drawText(QRectF(left, area.top(), room + 2, area.height()), title, middle)
        painter.restore()

    def _paint_word(self, painter, option, chosen):
        word, gap = tr("repair"), self._GAP
        metrics = option.fontMetrics
        width, height = metrics.horizontalAdvance(word) + 8, metrics.height() + 1
        plate = QRectF(option.rect.right() - width - gap, option.rect.top() + gap - 1, width, height)
        colour = option.palette.highlightedText().color() if chosen else QColor("#2f7d4a")
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(colour, 1.0))
        painter.drawRoundedRect(plate, 3, 3)
        painter.drawText(plate, word, QTextOption(Qt.AlignmentFlag.AlignCenter))

    def _room(self, option, index, width):
        """The width a finding's text has."""
        word = 0
        if index.data(_FINDING).repair is not None:
            word = option.fontMetrics.horizontalAdvance(tr("repair")) + 8 + self._GAP
        return max(60, width - _SYMBOL - 3 * self._GAP - word)

    @staticmethod
    def _bold(option):
        bold = QStyleOptionViewItem(option)
        bold.font = QFont(option.font)
        bold.font.setBold(True)
        return bold


# The symbols of the gravities: told apart by their shape


def _symbol_icon(gravity, ratio):
    return QIcon(_symbol(gravity, ratio))


def _symbol(gravity, ratio):
    """A full square on its corner with a cross, an open ring, or a triangle with a question mark."""
    picture = QPixmap(round(_SYMBOL * ratio), round(_SYMBOL * ratio))
    picture.setDevicePixelRatio(ratio)
    picture.fill(Qt.GlobalColor.transparent)
    painter = QPainter(picture)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    _DRAWN[gravity](painter)
    painter.end()
    return picture


def _draw_wrong(painter):
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor("#c0301c"))
    painter.drawPolygon(QPolygonF([QPointF(8, 0.3), QPointF(15.7, 8), QPointF(8, 15.7), QPointF(0.3, 8)]))
    painter.setPen(QPen(QColor("white"), 1.9))
    painter.drawLine(QPointF(5.6, 5.6), QPointF(10.4, 10.4))
    painter.drawLine(QPointF(10.4, 5.6), QPointF(5.6, 10.4))


def _draw_missing(painter):
    pen = QPen(QColor("#3a76b5"), 2.2)
    pen.setDashPattern([1.9, 1.15])
    painter.setPen(pen)
    painter.drawEllipse(QRectF(2, 2, 12, 12))


def _draw_doubtful(painter):
    painter.setPen(QPen(QColor("#8a5b00"), 1.2))
    painter.setBrush(QColor("#ffd873"))
    painter.drawPolygon(QPolygonF([QPointF(8, 1.2), QPointF(15.2, 14.6), QPointF(0.8, 14.6)]))
    font = QFont(painter.font())
    font.setPixelSize(10)
    font.setBold(True)
    painter.setFont(font)
    painter.setPen(QColor("#4a3000"))
    painter.drawText(QRectF(0, 3.6, 16, 12), "?", QTextOption(Qt.AlignmentFlag.AlignCenter))


_DRAWN = {"wrong": _draw_wrong, "missing": _draw_missing, "doubtful": _draw_doubtful}
