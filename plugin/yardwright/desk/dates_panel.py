"""The dates panel: the course's images by date, one alone or two compared, and what was drawn from each."""

from functools import partial

from qgis.core import QgsApplication
from qgis.gui import QgsDockWidget
from qgis.PyQt import sip
from qgis.PyQt.QtCore import QEvent, QSize, Qt, QTimer, pyqtSignal
from qgis.PyQt.QtGui import QFont, QKeySequence
from qgis.PyQt.QtWidgets import (
    QAbstractItemView,
    QAction,
    QActionGroup,
    QCheckBox,
    QComboBox,
    QDockWidget,
    QFormLayout,
    QGroupBox,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QMenu,
    QPushButton,
    QSizePolicy,
    QSlider,
    QStackedWidget,
    QStyle,
    QToolButton,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from ..model.errors import YardwrightError
from ..resources import icon
from .comparing import STEP, Comparison, LinkedView, layers_with
from .composites import CompositeOfDates, composites_of
from .dates import (
    NOT_SAID,
    counts,
    course_layers,
    dates_of,
    drawn_from,
    drawn_only,
    expression_of,
    rasters_without_date,
    take_up,
)
from .take_up_dialog import TakeUpDialog
from .words import told_in, tr

FLIP_KEY = Qt.Key.Key_F4
_STEPS = {
    Qt.Key.Key_Left: (True, -1),
    Qt.Key.Key_Right: (True, 1),
    Qt.Key.Key_Up: (False, -1),
    Qt.Key.Key_Down: (False, 1),
}
"""With Ctrl, on the map: the divider that a key moves (whether the dates are left and right), and whither."""
_KEYPAD = Qt.KeyboardModifier.KeypadModifier
_SLIDER = 1000
_LEAST_WIDTH = 160
"""What is left of the map at least beside the second view, pixels."""
_DATE, _RASTER = Qt.ItemDataRole.UserRole, Qt.ItemDataRole.UserRole + 1
_GROUND, _LIES, _PRINT, _CREDIT = range(1, 5)


class DatesPanel(QgsDockWidget):
    """The course's dates.

    ``date_in_hand``: the id of the date chosen here, or the only one that the map shows, "" for none.
    ``date_changed`` tells of another. ``date_at(place)`` knows of the divider too.
    """

    date_changed = pyqtSignal()

    def __init__(self, in_hand, parent=None, actions=()):
        """actions: what else can be done with dates, as buttons."""
        super().__init__(parent)
        self.setObjectName("yardwright_dates_panel")
        self.setWindowTitle(tr("Dates"))
        self.setWindowIcon(icon("dates"))
        self.in_hand = in_hand
        self.canvas = in_hand.iface.mapCanvas()
        self.date_in_hand = ""
        self.dates, self.composites = [], []
        self.linked = None
        self._second = ""
        self._stand_in = ("", None)
        self._showing = False
        self._place = self._pair = self._worn = None
        self._styles = {}
        self._held_by_key = False
        self._sizes_before = []
        self._least_width = 0
        self._build(actions)
        self.comparison = Comparison(self.canvas, self._second_layers, self)
        self.comparison.moved.connect(self._divider_moved)
        self._divider_moved()
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(30)
        self._soon.timeout.connect(self.refresh)
        root = in_hand.project.layerTreeRoot()
        self._connections = [
            (signal, signal.connect(slot))
            for signal, slot in (
                (in_hand.course_changed, self._soon.start),
                (in_hand.edited, self._soon.start),
                (in_hand.project.cleared, self._project_closed),
                (root.visibilityChanged, self._visibility_changed),
                (self.visibilityChanged, self._shown),
            )
        ]
        self._style_connections = []
        self._watched = [self.canvas, in_hand.iface.mainWindow(), self]
        for one in self._watched:
            one.installEventFilter(self)
        self.refresh()

    def let_go(self):
        """Listen to nothing any more, and leave the map as it was found."""
        self._soon.stop()
        while self._connections:
            signal, connection = self._connections.pop()
            signal.disconnect(connection)
        for one in self._watched:
            one.removeEventFilter(self)
        self._watched = []
        self._close_linked()
        self.comparison.let_go()
        self._wear({})

    # The surface

    def _build(self, actions):
        self.pages = QStackedWidget(self)
        self.empty = QLabel(self.pages)
        self.empty.setWordWrap(True)
        self.empty.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.empty.setMargin(16)
        self.pages.addWidget(self.empty)
        body = QWidget(self.pages)
        layout = QVBoxLayout(body)
        layout.setContentsMargins(6, 6, 6, 6)
        layout.addWidget(self._build_list(), 1)
        layout.addLayout(self._build_actions(actions))
        layout.addWidget(self._build_comparing())
        layout.addWidget(self._build_filter())
        self.pages.addWidget(body)
        self.setWidget(self.pages)

    def _build_list(self):
        box = QWidget(self)
        layout = QVBoxLayout(box)
        layout.setContentsMargins(0, 0, 0, 0)
        self.list = QTreeWidget(box)
        self.list.setObjectName("yardwright_dates")
        self.list.setAccessibleName(tr("Dates"))
        self.list.setWhatsThis(
            tr("The dates of the course’s images, newest first. Click one to see it alone on the map.")
        )
        self.list.setHeaderLabels([tr("Date"), tr("Ground"), tr("Lies"), tr("Print"), tr("Credit")])
        head = self.list.headerItem()
        head.setToolTip(_GROUND, tr("What a pixel covers on the ground"))
        head.setToolTip(_LIES, tr("How well it lies on the base: its standard error, once it is registered"))
        head.setToolTip(_PRINT, tr("Whether it may be printed"))
        self.list.setRootIsDecorated(False)
        self.list.setAllColumnsShowFocus(True)
        self.list.setUniformRowHeights(True)
        self.list.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.list.setMinimumHeight(96)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        header = self.list.header()
        for column in range(_CREDIT):
            header.setSectionResizeMode(column, QHeaderView.ResizeMode.ResizeToContents)
        # The credit takes what room is left, and the tip says all of it. As Qt's own “last section” it would
        # never become narrower than it was at first.
        header.setStretchLastSection(False)
        header.setSectionResizeMode(_CREDIT, QHeaderView.ResizeMode.Stretch)
        self.list.itemClicked.connect(self._clicked)
        self.list.itemActivated.connect(self._clicked)
        self.list.currentItemChanged.connect(lambda *_: self._enable())
        layout.addWidget(self.list)
        self.take_up_button = QPushButton(icon("dates_take_up"), tr("&Make it a date…"), box)
        self.take_up_button.setObjectName("yardwright_take_up")
        self.take_up_button.setToolTip(tr("Make the chosen raster layer one of the course’s dates"))
        self.take_up_button.clicked.connect(self._ask_date)
        layout.addWidget(self.take_up_button, 0, Qt.AlignmentFlag.AlignLeft)
        return box

    def _build_actions(self, actions):
        row = QHBoxLayout()
        row.setSpacing(4)
        for action in actions:
            button = QToolButton(self)
            button.setDefaultAction(action)
            self._shape(button)
            row.addWidget(button)
        return row

    def _build_comparing(self):
        box = QGroupBox(tr("Compare with"), self)
        layout = QVBoxLayout(box)
        self.second_box = QComboBox(box)
        self.second_box.setObjectName("yardwright_second_date")
        self.second_box.setAccessibleName(tr("Compare with"))
        self.second_box.setToolTip(tr("The other date of the pair"))
        self.second_box.setWhatsThis(
            tr("The date that is compared with the one shown: while flipped, beyond the divider, beside it.")
        )
        self.second_box.activated.connect(lambda row: self.choose_second(self.second_box.itemData(row)))
        layout.addWidget(self.second_box)
        row = QHBoxLayout()
        key = QKeySequence(FLIP_KEY).toString(QKeySequence.SequenceFormat.NativeText)
        self.flip_button = self._button(
            "dates_flip",
            tr("Flip"),
            tr("While held, the map shows the other date; so does the key {}").format(key),
        )
        self.flip_button.pressed.connect(lambda: self.flip(True))
        self.flip_button.released.connect(lambda: self.flip(False))
        self.swipe_button = self._button(
            "dates_swipe", tr("Swipe"), tr("Lay the other date beyond a divider; drag it by its handle")
        )
        self.swipe_button.setCheckable(True)
        self.swipe_button.setPopupMode(QToolButton.ToolButtonPopupMode.MenuButtonPopup)
        self.swipe_button.setMenu(self._directions())
        self.swipe_button.clicked.connect(self.swipe)
        self.linked_button = self._button(
            "dates_side_by_side",
            tr("Side by side"),
            tr("See the other date in a second view that moves, zooms and turns with the map"),
        )
        self.linked_button.setCheckable(True)
        self.linked_button.clicked.connect(self.show_linked)
        for button in (self.flip_button, self.swipe_button, self.linked_button):
            row.addWidget(button)
        layout.addLayout(row)
        layout.addWidget(self._build_divider(box))
        self.compare_box = box
        return box

    def _build_divider(self, box):
        """What moves the divider without a mouse; there while there is a divider."""
        self.divider_row = QWidget(box)
        layout = QHBoxLayout(self.divider_row)
        layout.setContentsMargins(0, 0, 0, 0)
        label = QLabel(tr("D&ivider"), self.divider_row)
        self.divider_slider = QSlider(Qt.Orientation.Horizontal, self.divider_row)
        self.divider_slider.setObjectName("yardwright_divider")
        self.divider_slider.setAccessibleName(tr("Divider"))
        self.divider_slider.setRange(0, _SLIDER)
        self.divider_slider.setSingleStep(round(STEP * _SLIDER))
        self.divider_slider.setPageStep(_SLIDER // 10)
        keys = [
            QKeySequence(f"Ctrl+{key}").toString(QKeySequence.SequenceFormat.NativeText)
            for key in ("Left", "Right", "Up", "Down")
        ]
        tip = tr("Moves the divider; on the map {}, {}, {} and {} do").format(*keys)
        self.divider_slider.setToolTip(tip)
        self.divider_slider.setWhatsThis(tip)
        self.divider_slider.valueChanged.connect(self._slider_moved)
        label.setBuddy(self.divider_slider)
        layout.addWidget(label)
        layout.addWidget(self.divider_slider, 1)
        self.divider_row.hide()
        return self.divider_row

    def _button(self, name, text, tip):
        button = QToolButton(self)
        button.setObjectName(f"yardwright_{name}")
        button.setIcon(icon(name))
        button.setText(text)
        button.setToolTip(tip)
        button.setWhatsThis(tip)
        self._shape(button)
        return button

    def _shape(self, button):
        button.setIconSize(QSize(24, 24))
        button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextUnderIcon)
        button.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def _directions(self):
        menu = QMenu(self)
        group = QActionGroup(menu)
        self.across_action = QAction(tr("Left and right"), group)
        self.down_action = QAction(tr("Above and below"), group)
        for action in (self.across_action, self.down_action):
            action.setCheckable(True)
            menu.addAction(action)
            action.triggered.connect(lambda *_: self.swipe(True))
        self.across_action.setChecked(True)
        return menu

    def _build_filter(self):
        box = QGroupBox(tr("Show only"), self)
        box.setToolTip(
            tr("This is for the eye: features that are not shown stay in the course and in all figures.")
        )
        layout = QFormLayout(box)
        self.seen_in_box = QComboBox(box)
        self.seen_in_box.setObjectName("yardwright_seen_in")
        self.seen_in_box.setAccessibleName(tr("What was drawn from"))
        self.seen_in_box.setWhatsThis(
            tr(
                "Shows only what was drawn from one date. For the eye only: nothing is taken out of the "
                "course."
            )
        )
        self.seen_in_box.activated.connect(lambda *_: self._filter())
        layout.addRow(tr("Drawn from"), self.seen_in_box)
        self.hidden_box = QCheckBox(tr("What is &partly hidden"), box)
        self.hidden_box.setObjectName("yardwright_partly_hidden")
        self.hidden_box.toggled.connect(lambda *_: self._filter())
        layout.addRow(self.hidden_box)
        self.count_label = QLabel(box)
        self.count_label.setWordWrap(True)
        layout.addRow(self.count_label)
        return box

    # Keeping up

    def refresh(self, *_):
        """Read the dates again; the lists only while somebody sees them."""
        with told_in(self.in_hand.iface.messageBar()):
            if self._place != self.in_hand.place:
                self._place = self.in_hand.place
                self._show_all()
            self.dates = dates_of(self.in_hand)
            self.composites = composites_of(self.in_hand.project) if self.in_hand.place else []
            self._settle()
            if self.isVisible():
                self._fill()
            self._restyle()
            if self.isVisible():
                self._count()

    def _shown(self, visible):
        if visible:
            self._soon.start()
        elif self.isHidden():
            # Closed, and not only behind another panel: nobody would see any more why features are not shown.
            self._show_all()
            self._filter()

    def _show_all(self):
        """Set the filter to let everything through."""
        self.hidden_box.setChecked(False)
        self.seen_in_box.setCurrentIndex(0)

    def _project_closed(self):
        """Begin with the next project as with the first, be it the same file."""
        with told_in(self.in_hand.iface.messageBar()):
            self._show_all()
            self.flip(False)
            self.swipe(False)
            self.show_linked(False)
            self._wear({})
            self._worn = None
        self._soon.start()

    def _visibility_changed(self, *_):
        """Somebody has ticked a layer on or off."""
        if not self._showing:
            with told_in(self.in_hand.iface.messageBar()):
                self._settle()
            self._soon.start()

    def _settle(self):
        """Find the date in hand and its pair, and let go of comparisons that have none."""
        seen = [date.id for date in self.dates if self._is_on_map(date)]
        over = [one.id for one in self.composites if self._is_on_map(one)]
        # A composite lies over the dates.
        seen = over or seen
        chosen = self.date_in_hand if self.date_in_hand in seen else ""
        if len(seen) == 1:
            chosen = seen[0]
        before, self.date_in_hand = self.date_in_hand, chosen
        others = [date.id for date in self._pairable()]
        if self._second not in others:
            self._second = before if before in others else next(iter(others), "")
        self._compare_again()
        if chosen != before:
            self.date_changed.emit()

    def _pairable(self):
        """The dates that the one in hand can be compared with."""
        return [one for one in self._all() if one.id != self.date_in_hand and self._layers(one)]

    def _all(self):
        """The dates, then the composites."""
        return [*self.dates, *self.composites]

    def _date(self, date_id):
        return next((one for one in self._all() if one.id == date_id), None)

    def _shown_by(self, date):
        """The ids of the layers that are on where a date or a composite is shown alone: a composite does not
        cover the whole course, and lies over its base."""
        if isinstance(date, CompositeOfDates):
            return (*date.layer_ids, *self._shown_by(self._date(date.base)))
        return date.layer_ids if date is not None else ()

    def _layers(self, date):
        """The layers of the project that show a date or a composite, topmost first, [] for none."""
        layers = [self.in_hand.project.mapLayer(one) for one in self._shown_by(date)]
        return [layer for layer in layers if layer is not None]

    def _nodes(self, layer_ids):
        root = self.in_hand.project.layerTreeRoot()
        nodes = [root.findLayer(one) for one in layer_ids]
        return [node for node in nodes if node is not None]

    def _is_on_map(self, date):
        return any(node.isVisible() for node in self._nodes(date.layer_ids))

    def _fill(self):
        if self.in_hand.place is None:
            self._say_empty(self.in_hand.why_no_course())
            return
        rasters = rasters_without_date(self.in_hand)
        if not self.dates and not rasters:
            self._say_empty(
                tr(
                    "The course has no images yet: add an aerial image to the project, "
                    "then make it one of the course’s dates here."
                )
            )
            return
        self.pages.setCurrentIndex(1)
        chosen = self.list.currentItem()
        chosen = (chosen.data(0, _DATE), chosen.data(0, _RASTER)) if chosen is not None else None
        self.list.clear()
        for date in self.dates:
            self._add_date(date)
        for composite in self.composites:
            self._add_composite(composite)
        for layer in rasters:
            self._add_raster(layer)
        for row in range(self.list.topLevelItemCount()):
            item = self.list.topLevelItem(row)
            if (item.data(0, _DATE), item.data(0, _RASTER)) == chosen:
                self.list.setCurrentItem(item)
        self._fill_boxes()
        self._enable()

    def _say_empty(self, text):
        self.empty.setText(text)
        self.pages.setCurrentIndex(0)

    def _add_date(self, date):
        ground = "" if date.gsd_m is None else tr("{} m").format(f"{date.gsd_m:.3g}")
        item = QTreeWidgetItem([date.title, ground, _lies(date), "", date.credit])
        item.setText(_PRINT, _may_be_printed(date))
        item.setIcon(_PRINT, icon("print_allowed" if date.print_allowed else "print_refused"))
        if self._begin_row(item, date):
            tip = tr("The map shows this date, and what is drawn is drawn from it.")
        elif not self._layers(date):
            self._dim(item)
            tip = tr("No layer of this project shows it.") + "\n" + _how_to_show(date)
        else:
            tip = tr("Click to see this date alone.")
        credit = "\n".join(filter(None, (tip, date.credit, date.licence)))
        tips = {_LIES: _how_it_lies(date), _PRINT: _whether_printed(date)}
        for column in range(_CREDIT + 1):
            item.setToolTip(column, tips.get(column, credit))
        self.list.addTopLevelItem(item)

    def _begin_row(self, item, picture):
        """What the rows of dates and of composites have in common; whether it is the one in hand."""
        item.setData(0, _DATE, picture.id)
        eye = "/mActionShowAllLayers.svg" if self._is_on_map(picture) else "/mActionHideAllLayers.svg"
        item.setIcon(0, QgsApplication.getThemeIcon(eye))
        in_hand = picture.id == self.date_in_hand and bool(picture.id)
        if in_hand:
            font = QFont(self.list.font())
            font.setBold(True)
            item.setFont(0, font)
        return in_hand

    def _add_composite(self, composite):
        item = QTreeWidgetItem([composite.title])
        in_hand = self._begin_row(item, composite)
        self.list.addTopLevelItem(item)
        item.setFirstColumnSpanned(True)
        shown = tr("The map shows this composite; what is drawn counts as drawn from its base.")
        item.setToolTip(0, shown if in_hand else tr("Click to see this composite alone."))

    def _add_raster(self, layer):
        item = QTreeWidgetItem([layer.name()])
        item.setData(0, _RASTER, layer.id())
        self._dim(item)
        self.list.addTopLevelItem(item)
        item.setText(0, tr("{} (not yet one of the course’s dates)").format(layer.name()))
        item.setFirstColumnSpanned(True)
        item.setToolTip(0, tr("Choose it and press “Make it a date”."))

    def _dim(self, item):
        font = QFont(self.list.font())
        font.setItalic(True)
        for column in range(_CREDIT + 1):
            item.setFont(column, font)
            item.setForeground(column, self.palette().placeholderText())

    def _fill_boxes(self):
        self.second_box.clear()
        for date in self._pairable():
            self.second_box.addItem(date.title, date.id)
        self.second_box.setCurrentIndex(self.second_box.findData(self._second))
        if not self.second_box.count():
            self.second_box.addItem(tr("No other date is in this project"))
        chosen = self.seen_in_box.currentData()
        drawn = drawn_from(course_layers(self.in_hand))
        self.seen_in_box.clear()
        self.seen_in_box.addItem(tr("any date"), None)
        for date in self.dates:
            if date.id:
                self.seen_in_box.addItem(tr("{} ({})").format(date.title, drawn.pop(date.id, 0)), date.id)
        unsaid = drawn.pop(NOT_SAID, 0)
        for strange in sorted(drawn):
            text = tr("{}, not one of the dates ({})").format(strange, drawn[strange])
            self.seen_in_box.addItem(text, strange)
        self.seen_in_box.addItem(tr("no date that is known ({})").format(unsaid), NOT_SAID)
        self.seen_in_box.setCurrentIndex(max(0, self.seen_in_box.findData(chosen)))

    def _enable(self):
        pair = self._pair_exists()
        reason = "" if pair else tr("It needs two dates of the course in the project.")
        self.compare_box.setToolTip(reason)
        for thing in (self.second_box, self.flip_button, self.swipe_button, self.linked_button):
            thing.setEnabled(pair)
        self.swipe_button.setChecked(self.comparison.swiping)
        self.linked_button.setChecked(self.linked is not None)
        self.divider_row.setVisible(self.comparison.swiping)
        item = self.list.currentItem()
        self.take_up_button.setVisible(
            any(self.list.topLevelItem(row).data(0, _RASTER) for row in range(self.list.topLevelItemCount()))
        )
        self.take_up_button.setEnabled(item is not None and bool(item.data(0, _RASTER)))

    def _pair_exists(self):
        return bool(self._layers(self._date(self._second)))

    # One date

    def _clicked(self, item, _column=0):
        with told_in(self.in_hand.iface.messageBar()):
            if item.data(0, _RASTER) is None:
                self.show_date(item.data(0, _DATE))

    def show_date(self, date_id):
        """Show one date or composite alone: of all their layers only its own are on. Raises
        YardwrightError."""
        date = self._date(date_id)
        nodes = self._nodes(self._shown_by(date))
        if not nodes:
            raise YardwrightError(
                tr("No layer of this project shows the image of {}.").format(
                    date.title if date is not None else date_id
                ),
                _how_to_show(date),
            )
        self._showing = True
        try:
            for node in self._nodes(layer_id for one in self._all() for layer_id in one.layer_ids):
                if node not in nodes:
                    node.setItemVisibilityChecked(False)
            for node in nodes:
                if not node.isVisible():
                    node.setItemVisibilityCheckedParentRecursive(True)
        finally:
            self._showing = False
        self._settle()
        self._soon.start()

    def date_at(self, place):
        """The id of the date that the map shows at a QgsPointXY in its CRS: beyond the divider the other; of
        a composite its base."""
        return self._seen_in(self._second if self.comparison.shows_second_at(place) else self.date_in_hand)

    def _seen_in(self, picture_id):
        picture = self._date(picture_id)
        return picture.base if isinstance(picture, CompositeOfDates) else picture_id

    def date_alone(self):
        """The id of the date that the map shows alone, "" for none; a composite is none."""
        return "" if isinstance(self._date(self.date_in_hand), CompositeOfDates) else self.date_in_hand

    def second_date(self):
        """The id of the date that the one in hand is compared with, "" for none."""
        return "" if isinstance(self._date(self._second), CompositeOfDates) else self._second

    # Two dates

    def choose_second(self, date_id):
        """Choose the date that the one in hand is compared with."""
        if date_id and date_id != self._second:
            self._second = date_id
            self._compare_again()

    def lay_elsewhere(self, date_id, layer):
        """Where a date is compared, draw ``layer`` (a raster layer that need not be in the project) in place
        of its own; None: its own again. For a date that is looked at where it might be moved to."""
        if (date_id, layer) != self._stand_in:
            self._stand_in = (date_id, layer)
            self._compare_again()

    def _compared(self, date):
        """The layers that are drawn of a date where it is compared, [] where there are none."""
        own = self._layers(date)
        date_id, layer = self._stand_in
        return [layer] if own and layer is not None and date.id == date_id else own

    def flip(self, on):
        """Show the other date while ``on``, then the first again; the map stays where it is."""
        with told_in(self.in_hand.iface.messageBar()):
            self.comparison.hold(on and self._pair_exists())

    def swipe(self, on):
        """Divide the map between the two dates, or no more."""
        with told_in(self.in_hand.iface.messageBar()):
            self.comparison.swipe(on and self._pair_exists(), self.across_action.isChecked())
        self._enable()

    def _slider_moved(self, value):
        self.comparison.move_to(value / _SLIDER)
        self._divider_moved()

    def _divider_moved(self):
        self.divider_slider.blockSignals(True)
        self.divider_slider.setValue(round(self.comparison.divider * _SLIDER))
        self.divider_slider.blockSignals(False)

    def show_linked(self, on):
        """Open the second view, or close it."""
        with told_in(self.in_hand.iface.messageBar()):
            if on and self.linked is None and self._pair_exists():
                self._open_linked()
            elif not on:
                self._close_linked()
        self.linked_button.setChecked(self.linked is not None)

    def _open_linked(self):
        window = self.in_hand.iface.mainWindow()
        self._sizes_before = _sizes_of_docks(window)
        width = self.canvas.width()
        # QGIS keeps the map as wide as its page of greeting would need to be, which is not shown now.
        self._least_width = window.centralWidget().minimumWidth()
        window.centralWidget().setMinimumWidth(_LEAST_WIDTH)
        self.linked = LinkedView(self.canvas, self._second_layers, window)
        self.linked.closed.connect(self._linked_closed)
        self.linked.view.installEventFilter(self)
        self.linked.name(self._date(self._second).title)
        self.comparison.name(True)
        _put_beside_map(window, self.linked)
        # Only once the new dock has its place does QGIS's window keep to the sizes.
        QTimer.singleShot(0, partial(self._halve_map, self.linked, width))

    def _halve_map(self, linked, width):
        """Let the second view have half of the width that the map had."""
        if linked is not self.linked or linked.isFloating():
            return
        window = self.in_hand.iface.mainWindow()
        gap = window.style().pixelMetric(QStyle.PixelMetric.PM_DockWidgetSeparatorExtent, None, window)
        _resize_docks([*self._sizes_before, (linked, (width - gap) // 2, linked.height())])

    def _linked_closed(self):
        self._close_linked()
        self.linked_button.setChecked(False)

    def _close_linked(self):
        linked, self.linked = self.linked, None
        if linked is not None:
            linked.closed.disconnect(self._linked_closed)
            linked.view.removeEventFilter(self)
            linked.let_go()
            self.comparison.name(False)
            window = self.in_hand.iface.mainWindow()
            window.centralWidget().setMinimumWidth(self._least_width)
            window.removeDockWidget(linked)
            linked.deleteLater()
            # The map, and not its neighbours, gets the room back.
            QTimer.singleShot(0, partial(_resize_docks, self._sizes_before))

    def _second_layers(self):
        """The map's layers with the second date in the place of the first."""
        second = self._compared(self._date(self._second))
        shown = {layer_id for one in self._all() for layer_id in one.layer_ids}
        return layers_with(self.canvas.layers(), shown, second)

    def _compare_again(self):
        """The pair, or what the map shows of it, may be another."""
        pair = self.date_in_hand, self._second, self._compared(self._date(self._second))
        first, second = self._date(self.date_in_hand), self._date(self._second)
        self.comparison.set_titles(first.title if first else "", second.title if second else "")
        if not self._pair_exists():
            self.comparison.swipe(False)
            self.comparison.hold(False)
            self._close_linked()
        elif pair != self._pair:
            self.comparison.picture.again()
            if self.linked is not None:
                self.linked.follow_layers()
        if self.linked is not None:
            self.linked.name(second.title)
        self._pair = pair
        self._enable()

    # The key

    def eventFilter(self, watched, event):
        kind = event.type()
        if kind in (QEvent.Type.KeyPress, QEvent.Type.KeyRelease, QEvent.Type.ShortcutOverride):
            return self._key(event, kind) or (watched is self.canvas and self._divider_key(event, kind))
        if kind in (QEvent.Type.FocusOut, QEvent.Type.WindowDeactivate) and self._held_by_key:
            # The key's release may go to another window.
            self._held_by_key = False
            self.flip(False)
        return False

    def _key(self, event, kind):
        if event.key() != FLIP_KEY or event.modifiers() != Qt.KeyboardModifier.NoModifier:
            return False
        if not self._pair_exists():
            return False
        if kind == QEvent.Type.ShortcutOverride:
            event.accept()
        elif not event.isAutoRepeat():
            self._held_by_key = kind == QEvent.Type.KeyPress
            self.flip(self._held_by_key)
        return True

    def _divider_key(self, event, kind):
        """Ctrl and an arrow on the map move the divider, and not the map."""
        if not self.comparison.swiping or event.modifiers() & ~_KEYPAD != Qt.KeyboardModifier.ControlModifier:
            return False
        across, whither = _STEPS.get(event.key(), (None, 0))
        if across != self.comparison.across:
            return False
        if kind == QEvent.Type.ShortcutOverride:
            event.accept()
        elif kind == QEvent.Type.KeyPress:
            self.comparison.move_to(self.comparison.divider + whither * STEP)
        return True

    # What was drawn from which

    def _filter(self):
        with told_in(self.in_hand.iface.messageBar()):
            self._restyle()
            self._count()

    def _expression(self):
        if self.in_hand.place is None:
            return ""
        return expression_of(self.seen_in_box.currentData(), self.hidden_box.isChecked())

    def _count(self):
        layers = course_layers(self.in_hand)
        expression = self._expression()
        shown, every = counts(layers, expression)
        left = [layer.name() for layer in layers if expression and layer.id() not in self._styles]
        if left:
            text = tr(
                "{} of {} features shown; figures count them all. "
                "These layers are drawn as one picture and show all: {}."
            ).format(shown, every, ", ".join(left))
        elif expression:
            text = tr("{} of {} features shown; figures count them all.").format(shown, every)
        else:
            text = tr("All {} features shown.").format(every)
        self.count_label.setText(text)

    def _style_changed(self):
        """Somebody has given a layer another look: the filter is laid over that one."""
        self._worn = None
        self._soon.start()

    def _restyle(self):
        """Let the map draw only what the filter lets through; with none, everything."""
        expression = self._expression()
        layers = course_layers(self.in_hand) if expression else []
        worn = expression, [layer.id() for layer in layers]
        if worn == self._worn:
            return
        self._worn = worn
        styles = {layer.id(): drawn_only(layer, expression) for layer in layers}
        self._wear({layer_id: style for layer_id, style in styles.items() if style}, layers)

    def _wear(self, styles, layers=()):
        """Have the maps draw layers in other styles, in place of those they have worn from here so far."""
        for layer, signal, connection in self._style_connections:
            if not sip.isdeleted(layer):
                signal.disconnect(connection)
        self._style_connections = [
            (layer, layer.styleChanged, layer.styleChanged.connect(self._style_changed)) for layer in layers
        ]
        if styles == self._styles:
            return
        others = {
            layer_id: style
            for layer_id, style in self.canvas.layerStyleOverrides().items()
            if layer_id not in self._styles
        }
        self._styles = styles
        self.canvas.setLayerStyleOverrides({**others, **styles})
        self.canvas.refresh()

    # A raster becomes a date

    def _ask_date(self):
        item = self.list.currentItem()
        layer = self.in_hand.project.mapLayer(item.data(0, _RASTER) or "") if item is not None else None
        if layer is None:
            return
        dialog = TakeUpDialog(self.in_hand, layer, self)

        def taken_up():
            with told_in(self.in_hand.iface.messageBar()):
                if self.in_hand.project.mapLayer(dialog.layer_id) is None:
                    raise YardwrightError(
                        tr("The layer is not in the project any more."), tr("Add it, then try again.")
                    )
                take_up(
                    self.in_hand,
                    self.in_hand.project.mapLayer(dialog.layer_id),
                    dialog.day(),
                    dialog.credit.text().strip(),
                    dialog.print_allowed.isChecked(),
                    dialog.licence.text().strip(),
                )
                self.refresh()

        dialog.accepted.connect(taken_up)
        dialog.open()


def _lies(date):
    """How a date lies on the base, as short as a list wants it; "" where nobody has looked."""
    if date.rmse_m is not None:
        return tr("± {} m").format(f"{date.rmse_m:.2f}") if date.rmse_m else tr("base")
    return tr("moved") if date.moved else ""


def _how_it_lies(date):
    if date.rmse_m == 0:
        return tr("Others are registered on it.")
    if date.rmse_m is not None:
        return tr("Registered: it lies on the base with a standard error of {} m.").format(
            f"{date.rmse_m:.2f}"
        )
    if date.moved:
        return tr("It is moved to lie on the ground; how well it lies there is not known.")
    return tr("Not registered: it lies as its file puts it.")


def _may_be_printed(date):
    if date.print_allowed is None:
        return tr("not said")
    return tr("yes") if date.print_allowed else tr("no")


def _whether_printed(date):
    if date.print_allowed:
        return tr("It may be printed.")
    if date.print_allowed is None:
        return tr("Nobody has said that it may be printed: see to its licence before you print.")
    return tr("It may not be printed: it is for looking at and drawing from only.")


def _how_to_show(date):
    """What a user does to have the image of a date (None: of one that is gone) on the map."""
    if date is not None and date.source:
        return tr("Add {} to the project.").format(date.source)
    return tr("Add its image to the project.")


def _docks_on_top(window, side):
    """The docks at one side of a QMainWindow's map that can be seen; of tabs the one on top."""
    return [
        one
        for one in window.findChildren(QDockWidget)
        if window.dockWidgetArea(one) == side
        and one.isVisible()
        and not one.isFloating()
        # Qt keeps the tabs behind as visible as the one on top, but far outside of the window.
        and window.rect().intersects(one.geometry())
    ]


def _sizes_of_docks(window):
    """``[(dock, width, height)]`` of what is docked beside a QMainWindow's map."""
    sides = (Qt.DockWidgetArea.LeftDockWidgetArea, Qt.DockWidgetArea.RightDockWidgetArea)
    return [(one, one.width(), one.height()) for side in sides for one in _docks_on_top(window, side)]


def _resize_docks(sizes):
    """Give docks, ``[(dock, width, height)]``, these sizes as far as they are still docked."""
    there = [
        each for each in sizes if not (sip.isdeleted(each[0]) or each[0].isHidden() or each[0].isFloating())
    ]
    if there:
        docks, widths, heights = (list(each) for each in zip(*there))
        window = docks[0].parentWidget()
        window.resizeDocks(docks, widths, Qt.Orientation.Horizontal)
        window.resizeDocks(docks, heights, Qt.Orientation.Vertical)


def _put_beside_map(window, dock):
    """Dock to the right of a QMainWindow's map, next to it: what is docked there stands beyond."""
    side = Qt.DockWidgetArea.RightDockWidgetArea
    on_top = [one for one in _docks_on_top(window, side) if one is not dock]
    window.addDockWidget(side, dock)
    above = None
    for one in sorted(on_top, key=lambda one: (one.x(), one.y())):
        tabs = window.tabifiedDockWidgets(one)
        if above is None:
            window.splitDockWidget(dock, one, Qt.Orientation.Horizontal)
        else:
            window.splitDockWidget(above, one, Qt.Orientation.Vertical)
        for tab in tabs:
            window.tabifyDockWidget(one, tab)
        one.raise_()
        above = one
