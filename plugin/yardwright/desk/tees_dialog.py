"""The flights of an event, how long each hole is to play for them, and where the tee markers stand for it.

The window stays open while the map is used. Nothing is written before OK, and then all of it at once.
"""

from dataclasses import replace

from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtWidgets import (
    QAbstractItemView,
    QApplication,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QLineEdit,
    QPushButton,
    QTableView,
    QTableWidget,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from ..model.errors import YardwrightError
from ..model.event import Flight
from .committee_figures import ask_file, copied_rows
from .event_draft import EventDraft, same_settings
from .event_settings import EventSettings
from .length_table import ASKED, COLUMNS, Cell, LengthTable, figure, got_text, tenths
from .map_marks import PlaceMark
from .words import told_in, tr

_CLOSE_SCALE = 600.0
"""The scale at which a tee is shown."""


def set_tees(parent, in_hand, event, layers_to_write):
    """Open the window on an Event, or bring the one that is open to the front; the TeesDialog.

    layers_to_write: gives the CourseLayers being edited, called when there is something to write.
    """
    for dialog in parent.findChildren(TeesDialog):
        if dialog.isVisible() and dialog.draft.stored.name == event.name:
            dialog.raise_()
            dialog.activateWindow()
            return dialog
        dialog.reject()
    dialog = TeesDialog(parent, in_hand, event, layers_to_write)
    dialog.show()
    return dialog


class _LengthsView(QTableView):
    """Lengths are typed down the card: Tab goes on to the next hole, after the last to the next flight."""

    def moveCursor(self, action, modifiers):
        actions = QAbstractItemView.CursorAction
        step = {actions.MoveNext: 1, actions.MovePrevious: -1}.get(action)
        index, model = self.currentIndex(), self.model()
        if step is None or not index.isValid():
            return super().moveCursor(action, modifiers)
        holes, flights = model.rowCount(), model.columnCount() // COLUMNS
        place = (index.column() // COLUMNS * holes + index.row() + step) % (holes * flights)
        return model.index(place % holes, place // holes * COLUMNS + ASKED)


class TeesDialog(QDialog):
    """Works on an EventDraft; ``rows()`` gives what the table shows."""

    def __init__(self, parent, in_hand, event, layers_to_write):
        super().__init__(parent)
        self.setObjectName("yardwright_tees")
        self.setWindowFlag(Qt.WindowType.WindowContextHelpButtonHint, False)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.resize(min(1080, parent.screen().availableGeometry().width() - 60), 680)
        self.in_hand, self.layers_to_write = in_hand, layers_to_write
        self.place = in_hand.place
        self.draft = EventDraft(event)
        self.round = in_hand.round if in_hand.round in self.draft.rounds else None
        self.mark = PlaceMark(in_hand.iface.mapCanvas())
        self._begun_with = event
        self._build()
        self._connections = [
            (signal, signal.connect(slot))
            for signal, slot in (
                (in_hand.edited, self._edited),
                (in_hand.course_changed, self._course_changed),
            )
        ]
        self.finished.connect(lambda _: self.let_go())
        self._fill_flights()
        self.refresh()
        self._choose_hole_in_hand()

    def let_go(self):
        """Listen to nothing any more, and clear the map."""
        self.mark.put(None)
        while self._connections:
            signal, connection = self._connections.pop()
            signal.disconnect(connection)

    # The surface

    def _build(self):
        self.flights = QTableWidget(0, 2, self)
        self.flights.setHorizontalHeaderLabels([tr("Flight"), tr("Tee set")])
        self.flights.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        self.flights.verticalHeader().hide()
        self.flights.setSelectionBehavior(QTableWidget.SelectionBehavior.SelectRows)
        self.flights.setAccessibleName(tr("Flights"))
        self.flights.setMaximumHeight(6 * self.fontMetrics().height() + 30)
        self.flights.setWhatsThis(
            tr("Who plays the same lengths, and the tee set whose tees they play from.")
        )
        self.add_button = QPushButton(tr("&Add a flight"), self)
        self.add_button.setToolTip(tr("Adds a flight; give it a name and choose its tee set"))
        self.add_button.clicked.connect(lambda: self._do(self.add_flight))
        self.out_button = QPushButton(tr("Take flight &out"), self)
        self.out_button.setToolTip(tr("Takes the flight chosen out, with its lengths in all rounds"))
        self.out_button.clicked.connect(lambda: self._do(self.take_out_flight))
        beside = QVBoxLayout()
        beside.addWidget(self.add_button)
        beside.addWidget(self.out_button)
        beside.addStretch(1)
        top = QHBoxLayout()
        top.addWidget(self.flights, 1)
        top.addLayout(beside)

        self.round_box = QComboBox(self)
        self.round_box.setAccessibleName(tr("Round"))
        self.round_box.setToolTip(tr("The round whose lengths are shown"))
        self.round_box.setWhatsThis(self.round_box.toolTip())
        self.round_box.activated.connect(
            lambda row: self._do(self.choose_round, self.round_box.itemData(row))
        )
        self.bring_button = QPushButton(tr("&Bring lengths in…"), self)
        self.bring_button.setToolTip(
            tr("Reads round, flight, hole and yards from a file; what is read is listed first")
        )
        self.bring_button.clicked.connect(lambda: self._do(self.bring_in))
        self.paste_button = QPushButton(tr("Pas&te"), self)
        self.paste_button.setToolTip(
            tr("The same of rows copied from a spreadsheet, their headings with them")
        )
        self.paste_button.clicked.connect(lambda: self._do(self.paste))
        middle = QHBoxLayout()
        middle.addWidget(self.round_box, 1)
        middle.addStretch(1)
        middle.addWidget(self.bring_button)
        middle.addWidget(self.paste_button)

        self.table = LengthTable(self)
        self.table.typed.connect(lambda *given: self._do(self.set_length, *given))
        self.table.refused.connect(self._refuse)
        self.view = _LengthsView(self)
        self.view.setModel(self.table)
        self.view.setAccessibleName(tr("Lengths"))
        self.view.setAlternatingRowColors(True)
        self.view.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.view.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        self.view.horizontalHeader().setHighlightSections(False)
        self.view.verticalHeader().setDefaultSectionSize(self.fontMetrics().height() + 8)
        self.view.selectionModel().currentChanged.connect(lambda *_: self._do(self._chosen))
        self.view.setWhatsThis(
            tr(
                "Type how long a hole shall play; empty, it plays the tee set’s own length, shown in grey. "
                "Beside it stand the markers: how far back from the tee’s front, where from the plate, and "
                "whether the tee allows the length. The place chosen is shown on the map."
            )
        )
        self.detail = QLabel(self)
        self.detail.setWordWrap(True)
        self.detail.setTextFormat(Qt.TextFormat.PlainText)
        self.detail.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.detail.setMinimumHeight(3 * self.fontMetrics().lineSpacing())
        self.detail.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.show_button = QPushButton(tr("&Show the tee"), self)
        self.show_button.setToolTip(tr("Zooms the map to the markers chosen"))
        self.show_button.clicked.connect(lambda: self._do(self.show_tee))
        foot = QHBoxLayout()
        foot.addWidget(self.detail, 1)
        foot.addWidget(self.show_button, 0, Qt.AlignmentFlag.AlignTop)

        lengths = QWidget(self)
        layout = QVBoxLayout(lengths)
        layout.addLayout(top)
        layout.addLayout(middle)
        layout.addWidget(self.view, 1)
        layout.addLayout(foot)

        course = self.in_hand.course()
        holes = [hole.number for hole in course.holes]
        self.settings = EventSettings(self.draft, holes, course.settings.unit, self._told, self)
        self.settings.changed.connect(lambda: self._do(self.refresh))
        self.tabs = QTabWidget(self)
        self.tabs.addTab(lengths, tr("Flights and lengths"))
        self.tabs.addTab(self.settings, tr("Rounds and limits"))
        self.hint = QLabel(self)
        self.hint.setWordWrap(True)
        self.hint.setTextFormat(Qt.TextFormat.PlainText)
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel, self
        )
        self.ok_button = self.buttons.button(QDialogButtonBox.StandardButton.Ok)
        self.buttons.accepted.connect(lambda: self._do(self.write))
        self.buttons.rejected.connect(self.reject)
        # Enter in a cell ends its typing; it must not press a button.
        for button in self.findChildren(QPushButton):
            button.setAutoDefault(False)
            button.setDefault(False)
        layout = QVBoxLayout(self)
        layout.addWidget(self.tabs, 1)
        layout.addWidget(self.hint)
        layout.addWidget(self.buttons)

    def _told(self):
        return told_in(self.in_hand.iface.messageBar())

    def _do(self, doing, *given):
        with self._told():
            doing(*given)

    # Showing

    def refresh(self):
        """Show the draft as it is now."""
        self.setWindowTitle(tr("Flights and tees of “{}”").format(self.draft.stored.name))
        self.settings.name.setText(self.draft.stored.name)
        self._fill_rounds()
        course = self.in_hand.course()
        flights = [(key, flight.name) for key, flight in self.draft.flights.items()]
        self.table.show(self._holes(course), flights, self._cells(course), course.settings.unit)
        self._enable()
        self._chosen()

    def rows(self):
        """``{(hole, name of the flight): Cell}`` of the round shown."""
        names = {key: flight.name for key, flight in self.draft.flights.items()}
        return {(hole, names[key]): cell for (hole, key), cell in self.table.cells.items()}

    def _fill_rounds(self):
        numbers = list(self.draft.rounds)
        if self.round not in numbers:
            self.round = next(iter(numbers), None)
        self.round_box.clear()
        for one in self.draft.rounds.values():
            text = tr("Round {}").format(one.number)
            self.round_box.addItem(f"{text}  {one.played_on}".strip(), one.number)
        self.round_box.setCurrentIndex(self.round_box.findData(self.round))

    def _holes(self, course):
        """The holes of the round shown, in the order of play."""
        if self.round is None:
            return []
        return list(self.draft.rounds[self.round].holes or (hole.number for hole in course.holes))

    def _cells(self, course):
        from ..measure.tee_setting import set_tees

        event = self.draft.event()
        # Earlier rounds matter only for the places they have worn.
        earlier = (
            self.draft.asked([n for n in self.draft.rounds if n < self.round]) if event.limits.wear else ()
        )
        asked = self.draft.asked([self.round])
        rows = set_tees(course, replace(event, lengths=earlier), asked, self.in_hand.index())
        found = {(row.hole, row.flight.strip().casefold()): row for row in rows}
        cells = {}
        for hole in self._holes(course):
            own = self._own_lengths(hole)
            for key, flight in self.draft.flights.items():
                name = flight.name.strip().casefold()
                cells[hole, key] = Cell(
                    self.draft.lengths.get((self.round, key, hole)),
                    own.get((flight.tee_set or flight.name).strip().casefold()),
                    found.get((hole, name)),
                )
        return cells

    def _own_lengths(self, hole):
        """``{tee set: metres}`` of a hole as it is drawn; the longest where a set has several tees."""
        played = self.in_hand.played(hole)
        own = {}
        for tee in played.tees if played is not None and played.green is not None else ():
            name = tee.tee_set.strip().casefold()
            own[name] = max(own.get(name, 0.0), tee.length)
        return own

    def _enable(self):
        problems, stored = self.draft.problems(), self._stored()
        if not problems and stored is None:
            self.hint.setText(
                tr("The course has no event “{}” any more. OK writes it anew, without any pins.").format(
                    self.draft.stored.name
                )
            )
        elif not problems and not same_settings(stored, self._begun_with):
            self.hint.setText(
                tr("The event was changed elsewhere since this window opened. OK writes what stands here.")
            )
        else:
            self.hint.setText(" ".join(problems))
        self.hint.setVisible(bool(self.hint.text()))
        self.ok_button.setEnabled(not problems)
        self.ok_button.setToolTip(
            tr("Writes all of it into the layers, for you to save") if not problems else problems[0]
        )
        self.out_button.setEnabled(bool(self.draft.flights))

    def _stored(self):
        """The Event as the course has it now, by its other name too; None when it is gone."""
        return self.in_hand.find_event(self.draft.stored.name, self.draft.stored.fid)

    def _refuse(self, text):
        self.hint.setText(text)
        self.hint.setVisible(True)

    def _edited(self):
        """The course or the event was edited elsewhere: what nobody has changed here follows."""
        with self._told():
            stored = self._stored()
            if (
                stored is not None
                and not self.draft.changed()
                and not same_settings(stored, self._begun_with)
            ):
                self._begun_with = stored
                self.draft = self.settings.draft = EventDraft(stored)
                self.settings.show_draft()
                self._fill_flights()
            elif stored is not None:
                self.draft.stored = stored
            self.refresh()

    def _course_changed(self):
        if self.in_hand.place != self.place:
            self.reject()
        else:
            self._edited()

    # Flights

    def _fill_flights(self):
        from ..measure.tee_setting import tee_set_names

        names = tee_set_names(self.in_hand.course())
        self.flights.setRowCount(0)
        for row, (key, flight) in enumerate(self.draft.flights.items()):
            self.flights.insertRow(row)
            name = QLineEdit(flight.name, self.flights)
            name.setFrame(False)
            name.setPlaceholderText(tr("name of the flight"))
            name.setAccessibleName(tr("Flight"))
            name.setToolTip(tr("The name of the flight; its lengths keep with it"))
            name.textEdited.connect(lambda text, key=key: self._do(self.rename, key, text))
            box = QComboBox(self.flights)
            box.setAccessibleName(tr("Tee set of the flight"))
            box.setToolTip(tr("The tee set whose tees the flight plays from"))
            box.addItem(tr("(the one of its own name)"), "")
            for one in dict.fromkeys([*names, *filter(None, [flight.tee_set])]):
                box.addItem(one, one)
            box.setCurrentIndex(max(0, box.findData(flight.tee_set)))
            box.activated.connect(
                lambda _, box=box, key=key: self._do(self.choose_tee_set, key, box.currentData())
            )
            self.flights.setCellWidget(row, 0, name)
            self.flights.setCellWidget(row, 1, box)

    def add_flight(self):
        """Add a flight without a name, and let it be typed."""
        used = {flight.tee_set for flight in self.draft.flights.values()}
        from ..measure.tee_setting import tee_set_names

        free = [name for name in tee_set_names(self.in_hand.course()) if name not in used]
        self.draft.add_flight(Flight("", free[0] if free else ""))
        self._fill_flights()
        self.refresh()
        row = self.flights.rowCount() - 1
        self.flights.selectRow(row)
        self.flights.cellWidget(row, 0).setFocus()

    def take_out_flight(self):
        """Take the flight chosen out, the last without."""
        row = self._flight_row()
        self.draft.take_out_flight(list(self.draft.flights)[row])
        self._fill_flights()
        self.refresh()

    def _flight_row(self):
        """The row of the flight that is chosen or typed into."""
        focus = QApplication.focusWidget()
        for row in range(self.flights.rowCount()):
            if focus is not None and focus in (self.flights.cellWidget(row, column) for column in (0, 1)):
                return row
        chosen = self.flights.currentRow()
        return chosen if chosen >= 0 else self.flights.rowCount() - 1

    def rename(self, key, name):
        """Give a flight another name."""
        self.draft.flights[key] = replace(self.draft.flights[key], name=name)
        self.refresh()

    def choose_tee_set(self, key, name):
        """Let a flight play another tee set."""
        self.draft.flights[key] = replace(self.draft.flights[key], tee_set=name)
        self.refresh()

    # Lengths

    def choose_round(self, number):
        """Show another round."""
        self.round = number
        self.refresh()

    def set_length(self, hole, key, metres):
        """How long a hole of the round shown shall play for a flight; None for the tee set's own length."""
        self.draft.set_length(self.round, key, hole, metres)
        self.refresh()

    def bring_in(self):
        """Ask for the committee's file, show what is in it, and take over what is wanted."""
        path = ask_file(self, tr("The committee’s lengths"))
        if path:
            self._take(path)

    def paste(self):
        """The same of what lies on the clipboard."""
        self._take(copied_rows())

    def _take(self, source):
        from .bring_lengths import ask_lengths

        flights, lengths = ask_lengths(self, self.in_hand, self.draft.event(), source)
        if lengths:
            self.draft.bring(flights, lengths)
            self.settings.show_draft()
            self._fill_flights()
            self.refresh()

    # The place chosen

    def _choose_hole_in_hand(self):
        index = self.table.place_of(self.in_hand.hole, next(iter(self.draft.flights), None))
        if index.isValid():
            self.view.setCurrentIndex(index)

    def chosen(self):
        """``(hole, key of the flight, Cell)``, None where none is chosen."""
        index = self.view.currentIndex()
        if not index.isValid() or index.row() >= len(self.table.holes):
            return None
        hole, key, _ = self.table.at(index)
        return hole, key, self.table.cells.get((hole, key), Cell())

    def _chosen(self):
        chosen = self.chosen()
        self.mark.put(None)
        if chosen is None:
            self.detail.setText(
                tr("Add a flight, then type the lengths of its holes.") if not self.draft.flights else ""
            )
            self.show_button.setEnabled(False)
            return
        hole, key, cell = chosen
        self.detail.setText(self._told_of(hole, key, cell))
        self.in_hand.choose_hole(hole)
        place = self._place_on_map(cell.row)
        self.show_button.setEnabled(place is not None)
        if place is not None:
            self.mark.put(place)
            self._bring_in_sight(place)

    def _told_of(self, hole, key, cell):
        """All that is known of a cell, in sentences."""
        unit = self.table.unit
        name = self.draft.flights[key].name
        row = cell.row
        if row is None:
            if cell.own is None:
                return tr("Hole {}, {}: the tee set has no length here.").format(hole, name)
            return tr("Hole {}, {}: no length is asked for; the tee set plays {} {}.").format(
                hole, name, tenths(cell.own, unit), unit
            )
        asked = figure(row.asked, unit)
        if row.got is None:
            said = tr("Hole {}, {}: {} {} cannot be set.").format(hole, name, asked, unit)
        else:
            said = tr(
                "Hole {}, {}: asked for {} {}, plays {} {}. The markers stand {} {} from the tee’s front, "
                "with {} {} of tee behind them."
            ).format(
                hole,
                name,
                asked,
                unit,
                got_text(row, unit),
                unit,
                tenths(row.from_front, unit),
                unit,
                tenths(row.behind, unit),
                unit,
            )
        return f"{said}\n{row.remark}".strip()

    def _place_on_map(self, row):
        """Where the markers stand, in the map's CRS; None without a place, or beyond the map."""
        from .turning import on_map

        return None if row is None or row.x is None else on_map(self.in_hand, (row.x, row.y))

    def _bring_in_sight(self, place):
        """Move the map to a place that is out of sight."""
        from .turning import in_view

        canvas = self.in_hand.iface.mapCanvas()
        if not in_view(canvas, [(place.x(), place.y())]):
            canvas.setCenter(place)
            canvas.refresh()

    def show_tee(self):
        """Zoom the map to the markers chosen."""
        chosen = self.chosen()
        place = self._place_on_map(chosen[2].row) if chosen is not None else None
        if place is not None:
            canvas = self.in_hand.iface.mapCanvas()
            canvas.setCenter(place)
            canvas.zoomScale(_CLOSE_SCALE)
            canvas.refresh()

    # Writing

    def write(self):
        """Write all of it into the edit buffers, and close. Raises YardwrightError with nothing written."""
        from ..store.events import write_event

        problems = self.draft.problems()
        if problems:
            raise YardwrightError(problems[0], tr("Mend it, then try again."))
        if self.draft.changed() or self._stored() is None:
            write_event(self.layers_to_write(), self.draft.event(), with_lengths=True)
        self.accept()
