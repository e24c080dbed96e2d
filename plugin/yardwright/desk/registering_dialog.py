"""The window in which the dates are laid one on another: found in the background, looked at, accepted."""

from functools import partial

from qgis.core import Qgis, QgsCoordinateTransform
from qgis.gui import QgsMessageBar
from qgis.PyQt.QtCore import Qt, QTimer
from qgis.PyQt.QtGui import QKeySequence
from qgis.PyQt.QtWidgets import (
    QAbstractItemView,
    QCheckBox,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QGroupBox,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QProgressBar,
    QPushButton,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
)

from ..compat import flags_number
from ..model.errors import YardwrightError
from ..resources import icon
from . import registering
from .background import Work
from .dates import dates_of
from .residuals import Residuals
from .ties import TiesByHand
from .words import tell, told_in, tr

_DATE, _EAST, _NORTH, _HOW, _ERROR, _TIES, _REMARK = range(7)
_ID = Qt.ItemDataRole.UserRole
_LOOK_MS = 250


class RegisteringDialog(QDialog):
    """Lays dates on a base. Not modal: the map is looked at meanwhile. panel: the DatesPanel.

    ``found``: a Registration, or the YardwrightError that says why there is none, by the id of the date.
    """

    def __init__(self, in_hand, panel, parent=None):
        super().__init__(parent)
        self.setObjectName("yardwright_registering")
        self.setWindowTitle(tr("Register dates"))
        self.setWindowIcon(icon("dates_register"))
        self.in_hand, self.panel = in_hand, panel
        self.canvas = in_hand.iface.mapCanvas()
        self.found, self.dates = {}, []
        self._work = self._arrows = None
        self._busy_with, self._registered = {}, {}
        self._as_found_layers = registering.LayersAsFound(in_hand)
        self._build()
        self.ties = TiesByHand(self)
        self.layout().insertWidget(self.layout().indexOf(self.look_box), self.ties.box)
        self._look = QTimer(self)
        self._look.setInterval(_LOOK_MS)
        self._look.timeout.connect(self._fill)
        self._connections = [
            (signal, signal.connect(slot))
            for signal, slot in (
                (in_hand.course_changed, self.refresh),
                (self.canvas.destinationCrsChanged, self._chosen),
            )
        ]
        self.refresh()

    # The surface

    def _build(self):
        self.bar = QgsMessageBar(self)
        self.base_box = QComboBox(self)
        self.base_box.setObjectName("yardwright_base")
        self.base_box.setToolTip(tr("The date that stays where it is; the others are laid on it"))
        self.base_box.activated.connect(lambda _: self._base_chosen())
        base_label = QLabel(tr("&Base"), self)
        base_label.setBuddy(self.base_box)
        self.begin_button = QPushButton(icon("dates_register"), tr("&Register"), self)
        self.begin_button.setToolTip(tr("Find how the dates that are ticked lie to the base"))
        self.begin_button.clicked.connect(lambda _: self.begin())
        self.stop_button = QPushButton(tr("&Stop"), self)
        self.stop_button.clicked.connect(lambda _: self.stop())
        self.progress = QProgressBar(self)
        top = QHBoxLayout()
        for widget in (base_label, self.base_box, self.begin_button, self.stop_button):
            top.addWidget(widget)
        top.setStretch(1, 1)

        self.list = QTreeWidget(self)
        self.list.setObjectName("yardwright_registrations")
        self.list.setAccessibleName(tr("Dates to register"))
        self.list.setRootIsDecorated(False)
        self.list.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.list.setHeaderLabels(
            [tr("Date"), tr("East (m)"), tr("North (m)"), tr("How"), tr("± (m)"), tr("Spots"), tr("Remark")]
        )
        head = self.list.headerItem()
        for column, tip in (
            (_EAST, tr("How far its picture is moved to the east")),
            (_NORTH, tr("How far its picture is moved to the north")),
            (_ERROR, tr("The standard error along one axis, at spots that had no part in the fit")),
            (_TIES, tr("Spots that were found on both dates and count")),
        ):
            head.setToolTip(column, tip)
        header = self.list.header()
        for column in range(_REMARK):
            header.setSectionResizeMode(column, QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(_REMARK, QHeaderView.ResizeMode.Stretch)
        self.list.setWordWrap(True)
        self.list.currentItemChanged.connect(lambda *_: self._chosen())
        self.list.itemChanged.connect(lambda *_: self._enable())

        self.look_box = QGroupBox(tr("On the map"), self)
        look = QVBoxLayout(self.look_box)
        self.arrows_tick = QCheckBox(tr("&Arrows: what is left at each spot, enlarged"), self.look_box)
        self.arrows_tick.setChecked(True)
        self.arrows_tick.toggled.connect(lambda _: self._chosen())
        self.moved_tick = QCheckBox(
            tr("The date as it was &found to lie, and not as it lies now"), self.look_box
        )
        self.moved_tick.setChecked(True)
        self.moved_tick.toggled.connect(lambda _: self._chosen())
        from .dates_panel import FLIP_KEY

        key = QKeySequence(FLIP_KEY).toString(QKeySequence.SequenceFormat.NativeText)
        hint = QLabel(
            tr("Hold {} on the map: it flips from the base to the date that is chosen above.").format(key),
            self.look_box,
        )
        hint.setWordWrap(True)
        for widget in (self.arrows_tick, self.moved_tick, hint):
            look.addWidget(widget)

        self.buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close, self)
        self.accept_button = self.buttons.addButton(
            tr("Acce&pt what is ticked"), QDialogButtonBox.ButtonRole.ActionRole
        )
        self.accept_button.setToolTip(
            tr(
                "Move these dates, and with them what was drawn from them. It is saved by you, and can be "
                "undone."
            )
        )
        self.accept_button.clicked.connect(lambda _: self.take())
        self.ties_button = self.buttons.addButton(
            tr("Set &ties by hand…"), QDialogButtonBox.ButtonRole.ActionRole
        )
        self.ties_button.setToolTip(
            tr("Click the same spots on the date that is chosen and on the base, where it cannot be found")
        )
        self.ties_button.clicked.connect(lambda _: self._set_ties())
        self.buttons.rejected.connect(self.reject)
        for button in (*self.buttons.buttons(), self.begin_button, self.stop_button):
            button.setAutoDefault(False)

        layout = QVBoxLayout(self)
        layout.addWidget(self.bar)
        layout.addLayout(top)
        layout.addWidget(self.progress)
        layout.addWidget(self.list, 1)
        layout.addWidget(self.look_box)
        layout.addWidget(self.buttons)
        self.resize(760, 400)

    # What there is

    def refresh(self, *_):
        """List the course's dates again; what was found of those still there stays."""
        with told_in(self.bar):
            if self.in_hand.place is None:
                self.stop()
                self.close()
                return
            base, dates = registering.dates_to_register(self.in_hand)
            if self._work is not None and dates == self.dates:
                # Something else of the course was changed: what is at work is not concerned.
                return
            self.stop()
            self.dates = dates
            self._registered = {one.id: one for one in dates_of(self.in_hand) if one.registered}
            ids = [date.id for date in self.dates]
            chosen = self.base_box.currentData()
            self.base_box.clear()
            for date in self.dates:
                self.base_box.addItem(date.id, date.id)
            self.base_box.setCurrentIndex(self.base_box.findData(chosen if chosen in ids else base))
            self.found = {one: found for one, found in self.found.items() if one in ids}
            self._list()

    def _base_chosen(self):
        """With another base all is found anew."""
        self.stop()
        self.found = {}
        self.ties.end()
        self._list()

    def _list(self):
        chosen = self.chosen_id()
        self.list.clear()
        for date in self.dates:
            if date.id == self.base_id():
                continue
            item = QTreeWidgetItem([date.id])
            item.setData(_DATE, _ID, date.id)
            item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            item.setCheckState(_DATE, Qt.CheckState.Checked)
            for column in (_EAST, _NORTH, _ERROR, _TIES):
                item.setTextAlignment(
                    column, flags_number(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
                )
            self.list.addTopLevelItem(item)
            if date.id == chosen:
                self.list.setCurrentItem(item)
        if self.list.currentItem() is None and self.list.topLevelItemCount():
            self.list.setCurrentItem(self.list.topLevelItem(0))
        self._fill()

    def base_id(self):
        """The id of the date that stays."""
        return self.base_box.currentData() or ""

    def chosen_id(self):
        """The id of the date whose row is chosen, "" without one."""
        item = self.list.currentItem()
        return item.data(_DATE, _ID) if item is not None else ""

    def ticked(self):
        """The ids of the dates that are ticked."""
        items = [self.list.topLevelItem(row) for row in range(self.list.topLevelItemCount())]
        return [i.data(_DATE, _ID) for i in items if i.checkState(_DATE) == Qt.CheckState.Checked]

    def date(self, date_id):
        """The Date of an id, None where it is gone."""
        return next((one for one in self.dates if one.id == date_id), None)

    def registration(self, date_id):
        """What was found of a date, None where nothing was."""
        found = self.found.get(date_id)
        return None if found is None or isinstance(found, Exception) else found

    # Finding

    def begin(self, ids=None, ties=None):
        """Find how dates lie to the base: those ticked unless named. ties: by hand, ``registering.Asked``."""
        with told_in(self.bar):
            self.stop()
            self.bar.clearWidgets()
            wanted = self.ticked() if ids is None else ids
            others = tuple(date for date in self.dates if date.id in wanted and date.id != self.base_id())
            if not others:
                raise YardwrightError(
                    tr("No date is ticked that could be laid on the base."), tr("Tick one in the list.")
                )
            asked = registering.asked_of(self.in_hand, self.date(self.base_id()), others, ties or {})
            for date in others:
                self.found.pop(date.id, None)
            self._busy_with = dict.fromkeys(wanted)
            work = partial(registering.register_all, asked, self.found)
            self._work = Work(tr("Register dates"), work, self._done)
            self._work.progressChanged.connect(lambda share: self.progress.setValue(int(share)))
            self._work.begin()
            self._look.start()
            self._fill()

    def stop(self):
        """Stop finding; what was found stays."""
        self._look.stop()
        work, self._work = self._work, None
        if work is not None:
            work.stop()
            self._fill()

    def _done(self, work):
        if work is not self._work:
            return
        self._look.stop()
        self._work = None
        self._fill()
        self._chosen()
        with told_in(self.bar):
            if work.error is not None:
                raise work.error

    def _fill(self):
        """Write what was found into the rows."""
        self.list.blockSignals(True)
        for row in range(self.list.topLevelItemCount()):
            item = self.list.topLevelItem(row)
            self._fill_row(item, item.data(_DATE, _ID))
        self.list.blockSignals(False)
        self.progress.setVisible(self._work is not None)
        self._enable()

    def _fill_row(self, item, date_id):
        found = self.found.get(date_id)
        texts = [""] * 5 + [self._state(date_id)]
        tips = [""] * 6
        if isinstance(found, YardwrightError):
            texts[5] = f"{found.what} {found.remedy}"
        elif found is not None:
            unit = self.in_hand.course().settings.unit
            east, north = found.shift
            counted = [tie for tie in found.ties if tie.role != "outlier"]
            texts = [
                _signed(east),
                _signed(north),
                registering.how(found),
                "–" if found.rmse is None else f"{found.rmse:.2f}",
                str(len(counted)),
                registering.told(found),
            ]
            tips[0], tips[1] = (registering.in_unit(value, unit) for value in (east, north))
            if found.rmse is not None:
                tips[3] = registering.in_unit(found.rmse, unit).lstrip("+")
            aside = len(found.ties) - len(counted)
            tips[4] = (
                tr("{} more were set aside: their neighbours say otherwise.").format(aside) if aside else ""
            )
        for column, (text, tip) in enumerate(zip(texts, tips), start=1):
            item.setText(column, text)
            item.setToolTip(column, tip or text)

    def _state(self, date_id):
        if self._work is not None and date_id in self._busy_with:
            return tr("Being looked at…")
        known = self._registered.get(date_id)
        if known is None:
            return tr("Not looked at yet.")
        if not known.rmse_m:
            return tr("Registered before.")
        return tr("Registered before, with ± {} m.").format(f"{known.rmse_m:.2f}")

    def _enable(self):
        busy = self._work is not None
        self.begin_button.setEnabled(not busy and bool(self.ticked()))
        self.stop_button.setVisible(busy)
        self.base_box.setEnabled(not busy)
        chosen = self.chosen_id()
        self.ties_button.setEnabled(bool(chosen) and not busy)
        self.accept_button.setEnabled(
            not busy and any(self.registration(one) is not None for one in self.ticked())
        )

    # Looking

    def _chosen(self, *_):
        """Show the row that is chosen on the map: its arrows, and the pair of dates to flip between."""
        with told_in(self.bar):
            self._enable()
            self.ties.of(self.chosen_id())
            self._show_arrows()
            self._show_pair()

    def _show_arrows(self):
        found = self.registration(self.chosen_id())
        if not self.isVisible() or found is None or not self.arrows_tick.isChecked():
            self._take_arrows_off()
            return
        from ..store.image_dates import metres_per_unit

        layer = self.in_hand.layer("hole")
        if self._arrows is None:
            self._arrows = Residuals(self.canvas)
        to_map = QgsCoordinateTransform(
            layer.crs(), self.canvas.mapSettings().destinationCrs(), self.in_hand.project
        )
        title = tr("{} on {}").format(found.id, self.base_id())
        self._arrows.lay(title, found.ties, to_map, metres_per_unit(self.in_hand.course().crs))

    def _take_arrows_off(self):
        if self._arrows is not None:
            self.canvas.scene().removeItem(self._arrows)
            self._arrows = None

    def _show_pair(self):
        """The base on the map, and the date to flip to; where the project shows both."""
        chosen = self.chosen_id()
        shown = {date.id for date in self.panel.dates if date.layer_id}
        if self.isVisible() and chosen in shown and self.base_id() in shown:
            if self.panel.date_in_hand != self.base_id():
                self.panel.show_date(self.base_id())
            self.panel.choose_second(chosen)
            found = self.registration(chosen) if self.moved_tick.isChecked() else None
            layer = self._as_found(found) if found is not None else None
            self.panel.lay_elsewhere(chosen if layer is not None else "", layer)
        else:
            self.panel.lay_elsewhere("", None)

    def _as_found(self, found):
        """The layer that shows a date where it was found to lie, None where that cannot be shown."""
        return self._as_found_layers.layer(self.date(found.id), found.move)

    def showEvent(self, event):
        super().showEvent(event)
        self._chosen()

    def done(self, result):
        """Qt calls this when the window is closed in whatever way. What was found is let go; the map is left
        as it was."""
        self.let_go()
        super().done(result)

    def let_go(self):
        """Stop, listen to nothing any more, and take everything off the map."""
        self.stop()
        self.ties.end()
        self._take_arrows_off()
        self.panel.lay_elsewhere("", None)
        self._as_found_layers.let_go()
        while self._connections:
            signal, connection = self._connections.pop()
            signal.disconnect(connection)

    # By hand

    def _set_ties(self):
        with told_in(self.bar):
            self.ties.begin(self.chosen_id(), self.base_id())

    # Accepting

    def take(self):
        """Accept what is ticked and was found."""
        with told_in(self.bar):
            found = [self.registration(one) for one in self.ticked()]
            found = [one for one in found if one is not None]
            moved = registering.accept(self.in_hand, found, self.base_id())
            for one in found:
                self.found.pop(one.id)
            self.refresh()
            text = tr("Registered; features that moved along: {}.").format(moved)
            tell(self.bar, text, tr("Save the layers to keep it."), Qgis.MessageLevel.Success)


def _signed(metres):
    """A shift as a list has it: to a hundredth, and no zero with a sign."""
    return f"{round(metres, 2) + 0.0:+.2f}" if abs(metres) >= 0.005 else "0.00"
