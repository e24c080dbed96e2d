"""Shows a proposal of hole locations, and what it does to the balance of an event, before any is written.

The window stays open while the map is used; a location chosen is shown there.
"""

import threading
from contextlib import ExitStack
from dataclasses import dataclass, replace

from qgis.gui import QgsGui, QgsMessageBar
from qgis.PyQt.QtCore import QPoint, QRect, Qt, QTimer
from qgis.PyQt.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QProgressBar,
    QPushButton,
    QSplitter,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from ..compat import flags_number
from ..measure.fair import Grounds, balance
from ..measure.proposal import propose
from ..model.errors import Cancelled
from ..model.words import said
from .listening import Listening
from .map_marks import PlaceMark, step_aside
from .pin_table import side_word
from .words import told_in, tr

_PLACE = 0
_COUNTED = ("pins", "left", "centre", "right", "front", "middle", "back", "easy", "moderate", "hard")
_PIN = Qt.ItemDataRole.UserRole
_LOOK_MS = 40


def show_proposal(parent, in_hand, event, place):
    """Open the window on an Event, or bring the one that is open to the front; the ProposalDialog.

    place: called with ``[(Pin, (x, y) in the course's CRS)]`` of the locations that the user wants placed.
    Nothing is written here.
    """
    from .dates import rasters_of_heights
    from .terrains import opener_of

    for dialog in parent.findChildren(ProposalDialog):
        if dialog.isVisible() and dialog.event.name == event.name:
            dialog.raise_()
            dialog.activateWindow()
            return dialog
    terrains = [(layer.name(), opener_of(layer)) for layer in rasters_of_heights(in_hand.project)]
    dialog = ProposalDialog(parent, in_hand, event, terrains)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.accepted.connect(lambda: place(dialog.event.name, dialog.chosen()))
    dialog.show()
    dialog.begin()
    return dialog


# The work, which the window does not wait for


class _WatchedGrounds(Grounds):
    """Grounds that can be told to stop, and that know a grade asked before without the terrain: it belongs to
    the thread that opened it, and is closed once the proposal is there."""

    def __init__(self, stopped, *given):
        super().__init__(*given)
        self._stopped, self._grades = stopped, {}

    def hole(self, number):
        if self._stopped.is_set():
            raise Cancelled
        return super().hole(number)

    def grade_of(self, number, place):
        key = (number, *(float(value) for value in place.point))
        if key not in self._grades:
            self._grades[key] = super().grade_of(number, place)
        return self._grades[key]


@dataclass(frozen=True)
class Proposed:
    """A Proposal (``pins``, ``problems``), the Balance of the event before and after, the grounds they were
    taken from, and what is to be said of the terrain."""

    pins: tuple
    problems: tuple
    before: object
    after: object
    grounds: object
    remarks: tuple = ()


def proposed(course, event, open_terrain=None, stopped=None):
    """Work out the Proposed of an event. open_terrain: a function, None without. Raises Cancelled once the
    threading.Event ``stopped`` is set, and YardwrightError where the terrain cannot be read."""
    stopped = stopped or threading.Event()
    with ExitStack() as opened:
        terrain = opened.enter_context(open_terrain()) if open_terrain is not None else None
        grounds = _WatchedGrounds(stopped, course, event.limits, None, terrain)
        pins, problems = propose(course, event, grounds=grounds)
        before = balance(course, event, grounds=grounds)
        after = balance(course, replace(event, pins=(*event.pins, *pins)), grounds=grounds)
        remarks = tuple(terrain.remarks) if terrain is not None else ()
    return Proposed(pins, problems, before, after, grounds, remarks)


class _Run:
    """``work`` in a thread of its own; ``done``, then ``result`` or ``error``."""

    def __init__(self, work):
        self.stopped = threading.Event()
        self.result = self.error = None
        self._thread = threading.Thread(target=self._work, args=(work,), daemon=True)
        self._thread.start()

    def _work(self, work):
        try:
            self.result = work(self.stopped)
        except Exception as error:  # told in the window's own thread
            self.error = error

    @property
    def done(self):
        return not self._thread.is_alive()

    def stop(self):
        """Stop it, and see that it ends: it looks up at every green and every move."""
        self.stopped.set()
        self._thread.join()


# The window


class ProposalDialog(QDialog):
    """Lists what is proposed by round and hole, a tick each, above it the balance before and after.

    terrains: ``[(name, function that opens it)]``. ``begin`` sets to work; ``chosen`` is what is ticked.
    """

    def __init__(self, parent, in_hand, event, terrains=()):
        super().__init__(parent)
        self.setObjectName("yardwright_proposal")
        self.in_hand, self.place = in_hand, in_hand.place
        self.course, self.event, self.terrains = in_hand.course(), event, list(terrains)
        self.mark = PlaceMark(in_hand.iface.mapCanvas())
        self.stale = False
        self.found = None
        self._run = None
        self._look = QTimer(self)
        self._look.setInterval(_LOOK_MS)
        self._look.timeout.connect(self._look_after)
        self._recount = QTimer(self)
        self._recount.setSingleShot(True)
        self._recount.setInterval(0)
        self._recount.timeout.connect(self._ticked)
        self._build()
        self._explain()
        self._listening = Listening(
            (in_hand.edited, self._edited),
            (in_hand.course_changed, self._course_changed),
        )
        self.finished.connect(lambda _: self.let_go())

    def let_go(self):
        """Listen to nothing any more, and clear the map."""
        self.mark.put(None)
        self._listening.stop()

    # Keeping up

    def _edited(self):
        """What was proposed for another event, or other greens, is not placed."""
        event = self.in_hand.find_event(self.event.name, self.event.fid)
        stale = event is None or _matters(self.in_hand.course(), event) != _matters(self.course, self.event)
        if not stale and event.name != self.event.name:
            self.event = event
            self._entitle()
        if stale != self.stale:
            self.stale = stale
            self._ticked()
        self.again_button.setEnabled(event is not None)

    def _entitle(self):
        self.setWindowTitle(tr("Locations proposed for “{}”").format(self.event.name))

    def look_again(self):
        """Propose anew for what the event and its greens are now."""
        self.event = self.in_hand.find_event(self.event.name, self.event.fid)
        self.course = self.in_hand.course()
        self.stale = False
        self._entitle()
        self.begin()

    def _course_changed(self):
        if self.in_hand.place != self.place:
            self.reject()
        else:
            self._edited()

    def _show_place(self, item):
        """Show the green of a location on the map, the approach up, and mark where it would be cut."""
        from .turning import look_at, on_map

        pin = item.data(_PLACE, _PIN)
        played = None if pin is None else self.in_hand.played(pin.hole)
        if played is None:
            return
        self.in_hand.choose_event(self.event.name, pin.round)
        self.in_hand.choose_hole(pin.hole)
        canvas = self.in_hand.iface.mapCanvas()
        look_at(canvas, self.in_hand.layers().crs, played, "approach")
        self.mark.put(on_map(self.in_hand, pin.point))
        step_aside(self, QRect(canvas.mapToGlobal(QPoint(0, 0)), canvas.size()))

    # The surface

    def _build(self):
        self._entitle()
        self.setWindowFlag(Qt.WindowType.WindowContextHelpButtonHint, False)
        self.resize(860, 700)
        QgsGui.enableAutoGeometryRestore(self)
        self.bar = QgsMessageBar(self)
        self.head = QLabel(self)
        self.head.setWordWrap(True)
        self.terrain_box = QComboBox(self)
        self.terrain_box.addItem(tr("None: the slope is not looked at"), None)
        for name, open_terrain in self.terrains:
            self.terrain_box.addItem(name, open_terrain)
        self.terrain_box.setCurrentIndex(1 if self.terrains else 0)
        self.terrain_box.setEnabled(bool(self.terrains))
        self.terrain_box.activated.connect(lambda _: self._do(self.begin))
        terrain_label = QLabel(tr("&Heights from"), self)
        terrain_label.setBuddy(self.terrain_box)
        self.progress = QProgressBar(self)
        self.progress.setRange(0, 0)
        self.progress.setTextVisible(False)

        self.balance_tree = self._tree(
            [
                *(tr("Round"), tr("Pins"), tr("Left"), tr("Centre"), tr("Right")),
                *(tr("Front"), tr("Middle"), tr("Back"), tr("Easy"), tr("Moderate"), tr("Hard")),
            ]
        )
        self.list = self._tree([tr("Hole"), tr("Figures"), tr("Part of the green"), tr("Hardness")])
        for tree in (self.balance_tree, self.list):
            header = tree.header()
            for column in range(tree.columnCount()):
                header.setSectionResizeMode(column, QHeaderView.ResizeMode.ResizeToContents)
        self.balance_tree.header().setStretchLastSection(False)
        self.balance_tree.header().setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        self.balance_tree.header().setMinimumSectionSize(62)
        self.list.header().setMinimumSectionSize(130)
        for column in range(1, len(_COUNTED) + 1):
            self.balance_tree.headerItem().setTextAlignment(
                column, flags_number(Qt.AlignmentFlag.AlignCenter)
            )
        self.list.itemChanged.connect(lambda *_: self._recount.start())
        self.list.currentItemChanged.connect(
            lambda item, _: self._do(self._show_place, item) if item is not None else None
        )
        self.remarks = QListWidget(self)
        self.remarks.setWordWrap(True)
        self.remarks.setSelectionMode(QAbstractItemView.SelectionMode.NoSelection)
        self.buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel, self)
        self.place_button = self.buttons.addButton(tr("&Place them"), QDialogButtonBox.ButtonRole.AcceptRole)
        self.place_button.setDefault(True)
        self.again_button = QPushButton(tr("Look a&gain"), self)
        self.again_button.clicked.connect(lambda: self._do(self.look_again))
        self.buttons.addButton(self.again_button, QDialogButtonBox.ButtonRole.ActionRole)
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)

        top = QHBoxLayout()
        top.addWidget(terrain_label)
        top.addWidget(self.terrain_box, 1)
        self.guidance = QLabel(
            tr(
                "Wanted of nine holes: four left, one in the centre, four right. Of a round: a third each "
                "front, middle and back, and a third each easy, moderate and hard."
            ),
            self,
        )
        self.guidance.setWordWrap(True)
        splitter = QSplitter(Qt.Orientation.Vertical, self)
        splitter.setChildrenCollapsible(False)
        for title, widget in (
            (tr("Balance, before → after"), self.balance_tree),
            (tr("Locations"), self.list),
            (tr("Remarks"), self.remarks),
        ):
            splitter.addWidget(_titled(title, widget))
        splitter.setSizes([240, 320, 120])
        layout = QVBoxLayout(self)
        layout.addWidget(self.bar)
        layout.addLayout(top)
        layout.addWidget(self.head)
        layout.addWidget(self.progress)
        layout.addWidget(self.guidance)
        layout.addWidget(splitter, 1)
        layout.addWidget(self.buttons)

    def _tree(self, headings):
        tree = QTreeWidget(self)
        tree.setAlternatingRowColors(True)
        tree.setHeaderLabels(headings)
        return tree

    def _explain(self):
        for widget, name, text in (
            (
                self.terrain_box,
                tr("Heights from"),
                tr(
                    "The layer that says how steep a green is. Ground steeper than the event allows is left "
                    "out, and a slope makes a location harder."
                ),
            ),
            (
                self.balance_tree,
                tr("Balance"),
                tr(
                    "How many holes of each round, and of each nine of it, are cut where, and how hard they "
                    "are: as the pins lie now, and with what is ticked below. What is more than one off is "
                    "marked with an exclamation mark."
                ),
            ),
            (
                self.list,
                tr("Locations proposed"),
                tr(
                    "What is ticked is placed. A tick at a round holds for all its holes. The location "
                    "chosen is shown on the map."
                ),
            ),
            (
                self.remarks,
                tr("Remarks"),
                tr("Holes for which no place is proposed, and why; then the rest."),
            ),
            (self.progress, tr("At work"), tr("Locations are being looked for.")),
            (self.place_button, tr("Place them"), tr("Places the locations that are ticked.")),
            (
                self.again_button,
                tr("Look again"),
                tr("Proposes locations for the event and its greens as they are now."),
            ),
            (
                self.buttons.button(QDialogButtonBox.StandardButton.Cancel),
                tr("Cancel"),
                tr("Stops the search and writes nothing."),
            ),
        ):
            widget.setAccessibleName(name)
            widget.setWhatsThis(text)
            widget.setToolTip(text)

    # Working

    def begin(self):
        """Look for locations, anew if need be; the window stays alive meanwhile."""
        self.stop()
        self.found = None
        self.bar.clearWidgets()
        self._show()
        open_terrain = self.terrain_box.currentData()
        course, event = self.course, self.event
        self._run = _Run(lambda stopped: proposed(course, event, open_terrain, stopped))
        self.progress.show()
        self.head.setText(tr("Looking for locations…"))
        self._look.start()

    def stop(self):
        """Stop looking, if it is not done."""
        self._look.stop()
        self.progress.hide()
        if self._run is not None:
            self._run.stop()
            self._run = None

    def done(self, result):
        """Qt calls this when the dialog is closed in whatever way."""
        self.stop()
        super().done(result)

    def _look_after(self):
        if self._run is not None and self._run.done:
            run = self._run
            self._run = None
            self.stop()
            self._do(self._take, run)

    def _do(self, doing, *given):
        with told_in(self.bar):
            doing(*given)

    def _take(self, run):
        if run.error is not None:
            self.head.setText(tr("Nothing is proposed."))
            raise run.error
        self.found = run.result
        self._show()

    # Showing

    def _show(self):
        """Fill the lists with what was found; empty them without."""
        self.list.blockSignals(True)
        self.list.clear()
        self.mark.put(None)
        if self.found is not None:
            self._fill_list()
        self.list.blockSignals(False)
        self._ticked()

    def _fill_list(self):
        places = {(one.round, one.hole): one for one in self.found.after.locations}
        rounds = {}
        for pin in self.found.pins:
            if pin.round not in rounds:
                top = QTreeWidgetItem(self.list, [self._round(pin.round)])
                top.setFlags(top.flags() | Qt.ItemFlag.ItemIsAutoTristate | Qt.ItemFlag.ItemIsUserCheckable)
                rounds[pin.round] = top
            place = places[pin.round, pin.hole]
            item = QTreeWidgetItem(
                rounds[pin.round],
                [
                    tr("Hole {}").format(pin.hole),
                    self._figures(pin),
                    f"{said(place.side)}, {said(place.depth)}",
                    said(place.grade),
                ],
            )
            item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            item.setCheckState(_PLACE, Qt.CheckState.Checked)
            item.setData(_PLACE, _PIN, pin)
        self.list.expandAll()

    def _round(self, number):
        played_on = self.event.round(number).played_on
        return f"{tr('Round {}').format(number)}  {played_on}".strip()

    def _figures(self, pin):
        from ..measure.units import to_unit

        unit = self.course.settings.unit
        return tr("{} on, {} from {}").format(
            f"{to_unit(pin.on, unit):g}", f"{to_unit(pin.off, unit):g}", side_word(pin.off_from)
        )

    def chosen(self):
        """``[(Pin, (x, y) in the course's CRS)]`` of what is ticked."""
        tops = [self.list.topLevelItem(row) for row in range(self.list.topLevelItemCount())]
        items = [top.child(row) for top in tops for row in range(top.childCount())]
        pins = [item.data(_PLACE, _PIN) for item in items if item.checkState(_PLACE) == Qt.CheckState.Checked]
        return [(pin, pin.point) for pin in pins]

    def _ticked(self):
        """The balance, the remarks and the head, as they are with what is ticked."""
        with told_in(self.bar):
            chosen = [pin for pin, _ in self.chosen()]
            self.place_button.setEnabled(bool(chosen) and not self.stale)
            self.balance_tree.clear()
            self.remarks.clear()
            if self.found is None:
                return
            after = self.found.after
            if len(chosen) < len(self.found.pins):
                event = replace(self.event, pins=(*self.event.pins, *chosen))
                after = balance(self.course, event, grounds=self.found.grounds)
            self._fill_balance(after)
            self._fill_remarks(after)
            self.head.setText(self._told(len(chosen)))

    def _told(self, chosen):
        if self.stale and self.in_hand.find_event(self.event.name, self.event.fid) is None:
            gone = tr("The course has no event “{}” any more.").format(self.event.name)
            return f"{gone} {tr('Undo its removal, or close this window.')}"
        if self.stale:
            return tr(
                "The event or its greens were changed since these locations were looked for, so they are not "
                "placed. Look again first."
            )
        if not self.found.pins and not self.found.problems:
            return tr("Every hole of every round has a pin already: there is nothing to propose.")
        return tr("Locations proposed: {}, ticked: {}. Nothing is written yet.").format(
            len(self.found.pins), chosen
        )

    def _fill_balance(self, after):
        top = None
        for before, now in zip(self.found.before.rounds, after.rounds):
            label = self._round(now.round) if not now.holes else tr("Holes {}").format(now.holes)
            item = QTreeWidgetItem([label])
            for column, name in enumerate(_COUNTED, start=1):
                was, is_ = getattr(before, name), getattr(now, name)
                mark = " !" if _off(now, name) else ""
                item.setText(column, f"{was} → {is_}{mark}" if was != is_ else f"{is_}{mark}")
                item.setTextAlignment(column, flags_number(Qt.AlignmentFlag.AlignCenter))
                if mark:
                    font = item.font(column)
                    font.setBold(True)
                    item.setFont(column, font)
                    item.setToolTip(column, "\n".join(now.remarks))
            if not now.holes:
                self.balance_tree.addTopLevelItem(item)
                top = item
            else:
                top.addChild(item)
        self.balance_tree.expandAll()

    def _fill_remarks(self, after):
        for problem in (*self.found.problems, *after.problems):
            self._remark(str(problem), strong=True)
        for one in after.rounds:
            where = tr("Round {}").format(one.round)
            if one.holes:
                where = tr("Round {}, holes {}").format(one.round, one.holes)
            for remark in one.remarks:
                self._remark(f"{where}: {remark}")
        for hole in after.holes:
            where = tr("Hole {}").format(hole.hole)
            for remark in hole.remarks:
                self._remark(f"{where}: {remark}")
        for remark in self.found.remarks:
            self._remark(str(remark))
        if not self.remarks.count():
            self._remark(tr("None."))

    def _remark(self, text, strong=False):
        item = QListWidgetItem(f"✗ {text}" if strong else text, self.remarks)
        if strong:
            font = item.font()
            font.setBold(True)
            item.setFont(font)


def _matters(course, event):
    """What of a course and an Event a proposal is made from: two are equal when it would be the same."""
    pins = tuple(replace(pin, event="", fid=None, note="") for pin in event.pins)
    greens = {one.fid: (one.holes, one.geometry.wkb) for one in course.features if one.kind == "green"}
    lines = {hole.number: hole.line.wkb for hole in course.holes if hole.line is not None}
    return event.rounds, event.limits, pins, sorted(greens.values()), lines


_CODES = {
    **dict.fromkeys(("left", "centre", "right"), "sides"),
    **dict.fromkeys(("front", "middle", "back"), "depths"),
    **dict.fromkeys(("easy", "moderate", "hard"), "grades"),
}


def _off(counts, name):
    """Whether a RoundBalance has a remark on the group of counts that one belongs to."""
    return any(remark.code == _CODES.get(name) for remark in counts.remarks)


def _titled(title, widget):
    """A widget under its title."""
    box = QWidget()
    layout = QVBoxLayout(box)
    layout.setContentsMargins(0, 0, 0, 0)
    label = QLabel(title, box)
    label.setBuddy(widget)
    layout.addWidget(label)
    layout.addWidget(widget, 1)
    return box
