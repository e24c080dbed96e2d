"""The panel of the event in hand: its rounds, and the pins of each, typed, clicked or brought in.

QGIS imports this at its start: what is heavy is imported where it is used.
"""

from qgis.gui import QgsDockWidget
from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDialog,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QMenu,
    QMessageBox,
    QPushButton,
    QTableView,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from ..model.errors import YardwrightError
from ..resources import icon
from .committee_figures import ask_file, copied_rows
from .editing import begin_editing, checked, one_step
from .pin_rounds import RoundsApart
from .pin_table import FROM, HOLE, SLOPE, PinTable, SideDelegate, row_text
from .slope_shading import SlopeShading
from .terrains import why_no_heights
from .words import tell_done, told_in, tr

_WRITTEN = ("event", "event_round", "event_flight", "event_length", "pin")


class _Same:
    """Equal to itself and to another one of the same object."""

    def __init__(self, thing):
        self.thing = thing

    def __eq__(self, other):
        return isinstance(other, _Same) and self.thing is other.thing

    __hash__ = None


class EventPanel(QgsDockWidget):
    """The event, the round and its pins. in_hand: the CourseInHand."""

    def __init__(self, in_hand, parent=None):
        super().__init__(parent)
        self.setObjectName("yardwright_event_panel")
        self.setWindowTitle(tr("Event"))
        self.setWindowIcon(icon("event_panel"))
        self.in_hand = in_hand
        self.tool = None
        self.shading = SlopeShading(in_hand)
        self.rounds_apart = RoundsApart(in_hand)
        self._stale = True
        self._laid_out = None
        self._build()
        self._explain()
        self._connections = [
            (signal, signal.connect(slot))
            for signal, slot in (
                (in_hand.course_changed, self.refresh),
                (in_hand.edited, self.refresh),
                (in_hand.event_changed, self._event_changed),
                (in_hand.hole_changed, self._hole_changed),
                (self.visibilityChanged, self._shown),
                (in_hand.iface.mapCanvas().mapToolSet, self._tool_set),
            )
        ]

    def let_go(self):
        """Listen to nothing any more, and lay the tool down."""
        for dialog in self.findChildren(QDialog):
            dialog.reject()
        while self._connections:
            signal, connection = self._connections.pop()
            signal.disconnect(connection)
        self.shading.let_go()
        if self.tool is not None:
            self.in_hand.iface.mapCanvas().unsetMapTool(self.tool)
            self.tool.deleteLater()
            self.tool = None
        self.rounds_apart.let_go()

    # The surface

    def _build(self):
        self.event_box = QComboBox(self)
        self.event_box.setAccessibleName(tr("Event"))
        self.event_box.activated.connect(
            lambda row: self._do(self.in_hand.choose_event, self.event_box.itemData(row))
        )
        self.new_button = QToolButton(self)
        self.new_button.setText(tr("New…"))
        self.new_button.setToolTip(tr("Start an event, empty or as a copy of the one in hand"))
        self.new_button.clicked.connect(lambda: self._do(self.new_event))
        self.change_button = QPushButton(tr("Change"), self)
        menu = QMenu(self.change_button)
        menu.addAction(tr("&Rename…"), lambda: self._do(self.rename))
        menu.addAction(tr("Re&move…"), lambda: self._do(self.remove))
        self.change_button.setMenu(menu)
        self.round_box = QComboBox(self)
        self.round_box.setAccessibleName(tr("Round"))
        self.round_box.activated.connect(
            lambda row: self._do(self.in_hand.choose_round, self.round_box.itemData(row))
        )
        self.round_button = QToolButton(self)
        self.round_button.setText(tr("Add a round"))
        self.round_button.clicked.connect(lambda: self._do(self.add_round))

        self.table = PinTable(self)
        self.table.typed.connect(lambda *given: self._do(self.give, *given))
        self.view = QTableView(self)
        self.view.setModel(self.table)
        self.view.setItemDelegateForColumn(FROM, SideDelegate(self.view))
        self.view.setSelectionBehavior(QTableView.SelectionBehavior.SelectRows)
        self.view.setAlternatingRowColors(True)
        self.view.verticalHeader().hide()
        self.view.verticalHeader().setDefaultSectionSize(self.view.fontMetrics().height() + 8)
        self.view.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        self.view.horizontalHeader().setStretchLastSection(True)
        self.view.selectionModel().currentRowChanged.connect(lambda row, _: self._row_chosen(row))
        self.remark = QLabel(self)
        self.remark.setWordWrap(True)
        self.remark.setTextFormat(Qt.TextFormat.PlainText)
        self.closed = QLabel(self)
        self.closed.setWordWrap(True)
        self.closed.setTextFormat(Qt.TextFormat.PlainText)
        self.closed.hide()

        self.place_button = QPushButton(tr("&Place on the map"), self)
        self.place_button.setCheckable(True)
        self.place_button.setIcon(icon("place_pin"))
        self.place_button.clicked.connect(lambda on: self._do(self.take_tool, on))
        self.take_out_button = QPushButton(tr("Take &out"), self)
        self.take_out_button.clicked.connect(lambda: self._do(self.take_out))
        self.slope_box = QCheckBox(tr("Shade the &green by its slope"), self)
        self.slope_box.toggled.connect(lambda on: self._do(self.shade, on))
        self.bring_button = QPushButton(tr("&Bring pins in…"), self)
        self.bring_button.clicked.connect(lambda: self._do(self.bring_in))
        self.paste_button = QPushButton(tr("Pas&te"), self)
        self.paste_button.clicked.connect(lambda: self._do(self.paste))

        self.propose_button = QPushButton(tr("P&ropose…"), self)
        self.propose_button.clicked.connect(lambda: self._do(self.propose))
        self.audit_button = QPushButton(tr("&Audit…"), self)
        self.audit_button.clicked.connect(lambda: self._do(self.audit))
        self.tees_button = QPushButton(tr("&Flights and tees…"), self)
        self.tees_button.clicked.connect(lambda: self._do(self.set_tees))
        self.sheets_button = QPushButton(tr("S&heets…"), self)
        self.sheets_button.clicked.connect(lambda: self._do(self.sheets))

        surface = QWidget(self)
        layout = QVBoxLayout(surface)
        layout.setContentsMargins(6, 6, 6, 6)
        for things in (
            (self.event_box, self.new_button, self.change_button),
            (self.round_box, self.round_button),
            (self.view,),
            (self.remark,),
            (self.closed,),
            (self.place_button, self.take_out_button),
            (self.slope_box,),
            (self.bring_button, self.paste_button),
            (self.propose_button, self.audit_button),
            (self.tees_button, self.sheets_button),
        ):
            row = QHBoxLayout()
            for thing in things:
                aside = isinstance(thing, QToolButton) or thing is self.change_button
                row.addWidget(thing, 0 if aside else 1)
            layout.addLayout(row, 1 if things == (self.view,) else 0)
        self.setWidget(surface)

    def _explain(self):
        """What the question mark of the help menu says of each part."""
        self.event_box.setWhatsThis(
            tr("The event whose pins are shown and placed. Two events of a course never share a pin.")
        )
        self.round_box.setWhatsThis(
            tr(
                "The round whose pins are shown and placed. On the map the pins of other rounds are smaller "
                "and paler, each with the number of its round; those of other events are paler still."
            )
        )
        self.change_button.setWhatsThis(
            tr("Gives the event another name, or takes it out with all that belongs to it.")
        )
        self.closed.setWhatsThis(tr("Why no hole can be cut on the green of the hole in hand."))
        self.view.setWhatsThis(
            tr(
                "The pins of the round. Type how far on, how far off, and from which side: the pin is placed "
                "once all three are there. A row in italics has a remark, which stands below."
            )
        )
        self.place_button.setWhatsThis(
            tr(
                "A click on the green of the hole in hand places its pin. The lines show the depth, the "
                "square line through the pointer, and what is counted off."
            )
        )
        self.slope_box.setWhatsThis(
            tr(
                "Shades the green of the hole in hand on the map by how steep it is, with arrows downhill. "
                "Ground steeper than the event’s limit is hatched. The project needs a terrain model for it."
            )
        )
        self.bring_button.setWhatsThis(
            tr(
                "Reads the committee’s figures from a file. What is read is listed before anything is "
                "written."
            )
        )
        self.propose_button.setWhatsThis(
            tr(
                "Proposes locations for the holes and rounds that have none: fair, in balance, and apart "
                "from those of earlier rounds. You choose what is taken over."
            )
        )
        self.audit_button.setWhatsThis(
            tr(
                "Puts the committee’s figures beside the pins that are drawn; theirs or ours is decided pin "
                "by pin, and the decision is kept."
            )
        )
        self.tees_button.setWhatsThis(
            tr("The flights, how long each hole is to play for them, and where the tee markers stand for it.")
        )
        self.sheets_button.setWhatsThis(tr("Sheets for players, committee and ground staff, as PDF."))
        self.paste_button.setWhatsThis(
            tr("The same of figures that were copied from a spreadsheet, their headings with them.")
        )

    # Keeping up

    def _shown(self, visible):
        if visible and self._stale:
            self.refresh()

    def _event_changed(self):
        self.table.forget()
        self.refresh()

    def refresh(self):
        """Look again at the event in hand; put off while the panel is hidden."""
        self._stale = not self.isVisible()
        if self._stale:
            self.rounds_apart.show(False)
            return
        with told_in(self.in_hand.iface.messageBar()):
            self.in_hand.look_for_event()
            self.rounds_apart.show(True)
            source = self._source()
            if self._laid_out is None or source != self._laid_out:
                self._laid_out = None
                self._fill()
                self._laid_out = source
            else:
                # After a change of our own the news of it comes when all is laid out already.
                self._choose_row()
                self._enable()

    def _source(self):
        """What the pins are laid out from. What is read of a course is one object until the next edit; two
        are told apart without a look inside."""
        from .dates import rasters_of_heights

        in_hand = self.in_hand
        read = (None, None) if in_hand.group is None else (in_hand.course(), in_hand.events())
        heights = [layer.id() for layer in rasters_of_heights(in_hand.project)]
        return (*map(_Same, read), heights, in_hand.event, in_hand.round)

    def _fill(self):
        events = self.in_hand.events() if self.in_hand.group is not None else ()
        event = self.in_hand.event_in_hand() if self.in_hand.event else None
        self.event_box.clear()
        for one in events:
            self.event_box.addItem(one.name, one.name)
        self.event_box.setCurrentIndex(self.event_box.findData(self.in_hand.event))
        self.round_box.clear()
        for one in event.rounds if event is not None else ():
            text = tr("Round {}").format(one.number)
            self.round_box.addItem(f"{text}  {one.played_on}".strip(), one.number)
        self.round_box.setCurrentIndex(self.round_box.findData(self.in_hand.round))
        lines = self._lines(event)
        self.table.show(lines, self._unit())
        self.view.setColumnHidden(SLOPE, all(row is None or row.slope_pct is None for _, row in lines))
        self._widen()
        self._choose_row()
        self._enable()

    def _widen(self):
        """No column lies beyond the panel’s edge."""
        header = self.view.horizontalHeader()
        shown = [column for column in range(header.count()) if not self.view.isColumnHidden(column)]
        wide = sum(max(header.sectionSizeHint(one), self.view.sizeHintForColumn(one)) for one in shown)
        beside = self.view.verticalScrollBar().sizeHint().width() + 2 * self.view.frameWidth()
        self.view.setMinimumWidth(wide + beside)
        # A column that was hidden comes back as wide as any; the last one is stretched from its own width.
        header.setStretchLastSection(False)
        header.resizeSections(QHeaderView.ResizeMode.ResizeToContents)
        header.setStretchLastSection(True)

    def _unit(self):
        return self.in_hand.course().settings.unit if self.in_hand.group is not None else "yd"

    def _lines(self, event):
        """``[(hole, PinRow or None)]`` of the round in hand."""
        played = event.round(self.in_hand.round) if event is not None else None
        if played is None:
            return []
        from ..measure.pins import pin_rows
        from .terrains import heights_in

        course = self.in_hand.course()
        with heights_in(self.in_hand.project) as terrain:
            rows, _ = pin_rows(course, event, self.in_hand.index(), terrain)
        by_hole = {row.hole: row for row in rows if row.round == played.number}
        holes = played.holes or tuple(hole.number for hole in course.holes)
        return [(hole, by_hole.get(hole)) for hole in holes]

    def _enable(self):
        reason = self.in_hand.why_no_course()
        self.new_button.setEnabled(not reason)
        without_event = reason or ("" if self.in_hand.event else tr("There is no event yet: start one."))
        without_round = without_event or (
            "" if self.in_hand.round is not None else tr("The event has no round yet: add one.")
        )
        for thing, why in (
            (self.event_box, without_event),
            (self.change_button, without_event),
            (self.round_button, without_event),
            (self.round_box, without_round),
            (self.view, without_round),
            (self.place_button, without_round or self.in_hand.why_no_hole()),
            (self.slope_box, self.in_hand.why_no_hole() or why_no_heights(self.in_hand.project)),
            (self.bring_button, without_event),
            (self.paste_button, without_event),
            (self.take_out_button, without_round),
            (self.propose_button, without_round),
            (self.audit_button, without_event),
            (self.tees_button, without_event),
            (self.sheets_button, without_round),
        ):
            thing.setEnabled(not why or thing is self.slope_box and self.slope_box.isChecked())
            thing.setToolTip(why)
        if not self.place_button.isEnabled() and self.tool is not None:
            self.in_hand.iface.mapCanvas().unsetMapTool(self.tool)

    def _hole_changed(self):
        self._choose_row()

    def _choose_row(self):
        """The row of the hole in hand is the current one."""
        holes = [hole for hole, _ in self.table.lines]
        if self.in_hand.hole in holes:
            row = holes.index(self.in_hand.hole)
            if self.view.currentIndex().row() != row:
                self.view.setCurrentIndex(self.table.index(row, HOLE))
        self._tell_row()

    def _row_chosen(self, index):
        if index.isValid():
            self.in_hand.choose_hole(self.table.lines[index.row()][0])
        self._tell_row()

    def _tell_row(self):
        index = self.view.currentIndex()
        row = self.table.lines[index.row()][1] if 0 <= index.row() < len(self.table.lines) else None
        self.remark.setText("" if row is None else row_text(row))
        self.closed.setText(self._why_closed())
        self.closed.setVisible(bool(self.closed.text()))

    def _why_closed(self):
        """Which of the committee's limits leaves no place on the green of the hole in hand, "" while there is
        one."""
        from ..measure.units import to_unit
        from .pin_tool import ground_in_hand

        ground = ground_in_hand(self.in_hand) if self.in_hand.round is not None else None
        if ground is None or not ground.empty:
            return ""
        limits, unit = self.in_hand.event_in_hand().limits, self._unit()
        margin, apart = (f"{round(to_unit(one, unit), 2):g} {unit}" for one in (limits.margin, limits.apart))
        # The last remark is the limit that took the rest away.
        told = {
            "no_margin": tr(
                "Hole {hole}: no hole can be cut, for no place is {margin} from the green’s margin."
            ),
            "no_level": tr(
                "Hole {hole}: no hole can be cut, for all ground {margin} from the margin is steeper than "
                "{slope} %."
            ),
            "no_apart": tr(
                "Hole {hole}: no hole can be cut, for what margin and slope leave lies within {apart} of "
                "holes of earlier rounds."
            ),
        }[ground.remarks[-1].code].format(
            hole=self.in_hand.hole, margin=margin, apart=apart, slope=f"{limits.slope_pct or 0:g}"
        )
        return f"{told} {tr('The limits stand under “Flights and tees”.')}"

    # Doing

    def _do(self, doing, *given):
        with told_in(self.in_hand.iface.messageBar()):
            doing(*given)

    def new_event(self):
        """Ask for a name, and start an event; it may be a copy of the one in hand, without its pins."""
        from ..store.events import copy_event, read_event, rows_of_event, write_event
        from .event_dialog import ask_event, moved_to

        asked = ask_event(self, self._names(), self.in_hand.event_in_hand())
        if asked is None:
            return
        event, copied = asked
        layers = self._layers()
        kinds = ["event", "event_round"]
        if copied:
            own = {"event", *rows_of_event(layers, copied)} - {"pin", "pin_decision"}
            kinds = [kind for kind in _WRITTEN if kind in own]
        with one_step(tr("New event “{}”").format(event.name), *(layers.layers[kind] for kind in kinds)):
            if copied:
                copy_event(layers, copied, event.name)
                event = moved_to(read_event(layers, event.name), event.begins)
            write_event(layers, event)
        self.in_hand.choose_event(event.name)
        self.refresh()

    def _names(self):
        return [one.name for one in self.in_hand.events()]

    def rename(self):
        """Ask for another name of the event in hand; all that belongs to it follows, as one step."""
        from ..store.events import rename_event, rows_of_event
        from .event_dialog import ask_name

        name = self.in_hand.event
        new_name = ask_name(self, self._names(), name)
        if not new_name:
            return
        layers = self._layers()
        text = tr("Rename “{}” to “{}”").format(name, new_name)
        with one_step(text, *(layers.layers[kind] for kind in rows_of_event(layers, name))) as step:
            rename_event(layers, name, new_name)
        self.refresh()
        self._tell_step(tr("“{}” is now called “{}”.").format(name, new_name), step)

    def remove(self):
        """Take the event in hand out with all that belongs to it, once its user has said so."""
        from ..store.events import remove_event, rows_of_event

        name = self.in_hand.event
        layers = self.in_hand.layers()
        rows = rows_of_event(layers, name)
        if not self._may_remove(name, {kind: len(fids) for kind, fids in rows.items()}):
            return
        with one_step(tr("Remove “{}”").format(name), *(layers.layers[kind] for kind in rows)) as step:
            remove_event(layers, name)
        self.refresh()
        self._tell_step(tr("“{}” was removed.").format(name), step)

    def _may_remove(self, name, counts):
        goes = [
            f"{title}: {counts[kind]}"
            for kind, title in (
                ("event_round", tr("Rounds")),
                ("event_flight", tr("Flights")),
                ("event_length", tr("Lengths")),
                ("pin", tr("Pins")),
                ("pin_decision", tr("Decisions on pins")),
            )
            if kind in counts
        ]
        box = QMessageBox(self)
        box.setObjectName("yardwright_remove_event")
        box.setIcon(QMessageBox.Icon.Question)
        box.setWindowTitle(tr("Remove the event?"))
        box.setText(tr("Remove the event “{}” with all that belongs to it?").format(name))
        keeps = tr("It can be undone, and the course file keeps it until the layers are saved.")
        box.setInformativeText("\n".join([*goes, "", keeps] if goes else [keeps]))
        box.setStandardButtons(QMessageBox.StandardButton.Cancel)
        remove = box.addButton(tr("Remove"), QMessageBox.ButtonRole.DestructiveRole)
        box.setDefaultButton(QMessageBox.StandardButton.Cancel)
        box.exec()
        return box.clickedButton() is remove

    def _tell_step(self, text, step):
        tell_done(self.in_hand.iface.messageBar(), text, tr("Save the layers to keep it."), step)

    def add_round(self):
        """Add the next round to the event in hand."""
        from dataclasses import replace

        from ..model.event import Round
        from ..store.events import write_event

        event = self.in_hand.event_in_hand()
        number = max((one.number for one in event.rounds), default=0) + 1
        write_event(self._layers(), replace(event, rounds=(*event.rounds, Round(number))))
        self.in_hand.choose_round(number)
        self.refresh()

    def give(self, hole, on, off, off_from):
        """Place a pin by its figures, in the course's unit. Raises YardwrightError when it cannot be."""
        from ..measure.pins import NotPlaceable, place_pin
        from ..measure.units import UNITS
        from ..model.event import Pin

        played = self.in_hand.played(hole)
        if played is None or played.green is None:
            raise YardwrightError(
                tr("Hole {} has no green to place a pin on.").format(hole),
                tr("Draw its line of play and its green first."),
            )
        size = UNITS[self._unit()]
        try:
            place = place_pin(played.green, on * size, off * size, off_from, self._unit())
        except NotPlaceable as refused:
            raise YardwrightError(
                tr("The pin of hole {} is not placed: {}.").format(hole, refused.remark),
                tr("Check its figures against the committee’s."),
            ) from refused
        pin = Pin(self.in_hand.event, self.in_hand.round, hole, on * size, off * size, off_from, "figures")
        self._write([pin], [self._in_course(played, place.point)])

    def place(self, place):
        """Place the pin of the hole in hand where it was clicked, a measure.pins.PinPlace."""
        from ..measure.pins import figures_of
        from ..model.event import Pin

        if not self.in_hand.event_in_hand().plays(self.in_hand.round, self.in_hand.hole):
            raise YardwrightError(
                tr("Round {} does not play hole {}.").format(self.in_hand.round, self.in_hand.hole),
                tr("Take one of its holes in hand, or change its holes under “Flights and tees”."),
            )
        on, off, off_from = figures_of(place)
        played = self.in_hand.played()
        pin = Pin(self.in_hand.event, self.in_hand.round, self.in_hand.hole, on, off, off_from, "point")
        self._write([pin], [self._in_course(played, place.point)])

    def _in_course(self, played, point):
        ((x, y),) = played.frame.from_frame(self.in_hand.course().crs)([point])
        return float(x), float(y)

    def _write(self, pins, points):
        from ..store.events import write_pins

        write_pins(self._layers(), self.in_hand.event, pins, points)
        self.refresh()

    def _layers(self):
        """The course's layers, those of events being edited: what is written waits for the user to save."""
        layers = self.in_hand.layers()
        for kind in _WRITTEN:
            begin_editing(layers.layers[kind])
        return layers

    def take_out(self):
        """Take the pins of the rows chosen out of the round."""
        holes = {self.table.lines[index.row()][0] for index in self.view.selectionModel().selectedRows()}
        event = self.in_hand.event_in_hand()
        fids = [
            pin.fid
            for pin in event.pins
            if pin.round == self.in_hand.round and pin.hole in holes and pin.fid is not None
        ]
        layer = self.in_hand.layer("pin")
        if fids:
            with one_step(tr("Take pins out"), layer):
                checked(layer.deleteFeatures(fids), layer)

    # Figures brought in

    def bring_in(self):
        """Ask for the committee's file, show what is in it, and place what is wanted."""
        path = ask_file(self, tr("The committee’s pins"))
        if path:
            self._take(path)

    def paste(self):
        """The same of what lies on the clipboard."""
        self._take(copied_rows())

    def _take(self, source):
        from .bring_pins import ask_pins

        event = self.in_hand.event_in_hand()
        chosen = ask_pins(self, self.in_hand, event, source)
        if chosen:
            self._write([pin for pin, _ in chosen], [point for _, point in chosen])

    # What else belongs to an event

    def propose(self):
        """Show locations for the rounds that have none, and place those that are wanted."""
        from .propose_dialog import show_proposal

        def place(name, chosen):
            self.in_hand.choose_event(name, self.in_hand.round)
            self._write([pin for pin, _ in chosen], [point for _, point in chosen])

        show_proposal(self, self.in_hand, self.in_hand.event_in_hand(), lambda *what: self._do(place, *what))

    def audit(self):
        """Put the committee's figures beside the pins drawn, and take over what is decided."""
        from .audit_dialog import audit

        audit(self, self.in_hand, self.in_hand.event_in_hand(), self._layers)

    def set_tees(self):
        """Show the flights of the event, the lengths asked for, and where the markers stand for them."""
        from .tees_dialog import set_tees

        set_tees(self, self.in_hand, self.in_hand.event_in_hand(), self._layers)

    def sheets(self):
        """Write sheets of the event's pins and tees as PDF."""
        from .sheets_dialog import write_sheets

        write_sheets(self, self.in_hand, self.in_hand.event_in_hand())

    # The tool, and the shades beneath it

    def shade(self, on):
        """Shade the green of the hole in hand by its slope, or wipe the shades off."""
        self.shading.show(on)
        if self.tool is not None:
            self.tool.lie_over_shades(on)

    def take_tool(self, on):
        """Take the tool that places pins in hand, or lay it down."""
        canvas = self.in_hand.iface.mapCanvas()
        if not on:
            if self.tool is not None:
                canvas.unsetMapTool(self.tool)
            return
        if self.tool is None:
            from .pin_tool import PinTool

            self.tool = PinTool(self.in_hand)
            self.tool.placed.connect(lambda place: self._do(self.place, place))
            self.tool.lie_over_shades(self.shading.shown)
        canvas.setMapTool(self.tool)

    def _tool_set(self, tool, _=None):
        self.place_button.setChecked(tool is not None and tool is self.tool)
