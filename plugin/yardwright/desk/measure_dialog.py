"""The dialog that shows what was measured: a drawing of the hole, and its figures beside it."""

import math
import os
from functools import partial

from qgis.core import Qgis, QgsGeometry, QgsPointXY, QgsProject, QgsRectangle
from qgis.gui import QgsGui, QgsMessageBar
from qgis.PyQt.QtCore import QSortFilterProxyModel, Qt, QTimer
from qgis.PyQt.QtGui import QKeySequence
from qgis.PyQt.QtWidgets import (
    QAbstractItemView,
    QAction,
    QApplication,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFileDialog,
    QHBoxLayout,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QMenu,
    QMessageBox,
    QProgressDialog,
    QPushButton,
    QSizePolicy,
    QSplitter,
    QStyledItemDelegate,
    QTableView,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from ..measure import rows as row_types
from ..measure.units import to_unit, whole
from ..model.errors import Cancelled, YardwrightError
from ..resources import icon
from ..store.cells import guarded
from ..store.layer_group import course_groups, course_layers_of
from ..store.reading import read_course
from ..store.tables import write_tables
from .courses import hole_text
from .dates import rasters_of_heights
from .figures import HEIGHTS, FigureModel, caution, tables
from .hole_drawing import HoleDrawing, Sheet, drawn_figures
from .measuring import MeasuredHoles, Shown, thing_of
from .terrains import opener_of
from .turning import in_view, map_places
from .words import tell, told_in, tr

_ROW_TYPES = {
    "lengths": row_types.LengthRow,
    "greens": row_types.GreenRow,
    "distances": row_types.DistanceRow,
    "fairways": row_types.FairwayRow,
    "doglegs": row_types.DoglegRow,
    "layups": row_types.LayupRow,
    "markers": row_types.MarkerRow,
    HEIGHTS: row_types.HeightRow,
}
_OF_ALL_TEES = (row_types.GreenRow, row_types.MarkerRow)
_NO_HEIGHTS, _FROM_FILE = "", "file"
_NUMBER = Qt.ItemDataRole.UserRole
_AFTER_EDITS_MS = 400


class MeasureDialog(QDialog):
    """Figures of the holes chosen, from the tee sets chosen, beside a drawing. Not modal.

    iface: QGIS's interface (its canvas and main window are used). place: the course's place, of which the
    project holds the group. It follows the edits of the course's layers, and closes with the course.
    Raises YardwrightError when the course cannot be read.
    """

    def __init__(self, iface, place, hole=None):
        super().__init__(iface.mainWindow())
        self.setObjectName("yardwright_measure")
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowIcon(icon("measure"))
        self.canvas = iface.mapCanvas()
        self.place = place
        self.layers = None
        self._holes = None
        self._drawn = None
        self._terrain_file = self._terrain_before = ""
        self._told_trouble = None
        self._waiting = []
        self._selected_layer = None
        self._connections = []
        self._step = QTimer(self)
        self._step.setInterval(0)
        self._step.timeout.connect(self._measure_next)
        self._edited = QTimer(self)
        self._edited.setSingleShot(True)
        self._edited.setInterval(_AFTER_EDITS_MS)
        self._edited.timeout.connect(self.refresh)
        self._build()
        self._read()
        self._follow()
        self._fill_holes(hole)

    # The window

    def _build(self):
        self.setWindowTitle(tr("Measure"))
        self.resize(1280, 740)
        QgsGui.enableAutoGeometryRestore(self)
        self.bar = QgsMessageBar(self)
        self.bar.setSizePolicy(QSizePolicy.Policy.Minimum, QSizePolicy.Policy.Fixed)
        self.holes_list = self._list(
            tr("Holes"), tr("Choose a hole, or several with Ctrl or Shift; Ctrl+A chooses all.")
        )
        self.holes_list.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.holes_list.itemSelectionChanged.connect(self._holes_chosen)
        self.tees_list = self._list(tr("Tee sets"), tr("The tee sets whose figures are shown."))
        self.tees_list.itemChanged.connect(lambda item: self._fill_tables())
        self.drawing = HoleDrawing(self)
        self.drawing.thing_clicked.connect(self._drawing_clicked)
        self.drawing.setWhatsThis(
            tr("The hole as it is drawn, play upwards; a click on a thing finds its row in the table.")
        )
        self.tabs = QTabWidget(self)
        self.tabs.setDocumentMode(True)
        self.views = {}
        for table in tables():
            self.views[table.name] = self._table_view(table)
            self.tabs.addTab(self.views[table.name], table.title)
        self.problems_list = QListWidget(self)
        self.problems_list.setWordWrap(True)
        self.problems_list.setAccessibleName(tr("Remarks on the course"))
        self.problems_list.setWhatsThis(
            tr("What is to be said of the course as a whole and of no single figure.")
        )
        self.tabs.addTab(self.problems_list, tr("Course"))
        self.tabs.currentChanged.connect(lambda tab: self._row_changed())
        self.note = QLabel(self)
        self.note.setWordWrap(True)
        self.note.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)

        splitter = QSplitter(Qt.Orientation.Horizontal, self)
        splitter.setChildrenCollapsible(False)
        for widget in (self._lists(), self.drawing, self._tables()):
            splitter.addWidget(widget)
        splitter.setStretchFactor(1, 2)
        splitter.setStretchFactor(2, 3)
        splitter.setSizes([180, 330, 770])
        layout = QVBoxLayout(self)
        layout.addWidget(self.bar)
        layout.addWidget(splitter, 1)
        layout.addLayout(self._foot())

    def _list(self, name, tip):
        chooser = QListWidget(self)
        chooser.setAccessibleName(name)
        chooser.setToolTip(tip)
        chooser.setWhatsThis(tip)
        return chooser

    def _lists(self):
        side = QWidget(self)
        layout = QVBoxLayout(side)
        layout.setContentsMargins(0, 0, 0, 0)
        for title, chooser, share in (
            (tr("&Holes"), self.holes_list, 3),
            (tr("&Tee sets"), self.tees_list, 1),
        ):
            label = QLabel(title, side)
            label.setBuddy(chooser)
            layout.addWidget(label)
            layout.addWidget(chooser, share)
        tip = tr("The terrain model that the table of heights is taken from. No other figure knows of it.")
        self.terrain_box = QComboBox(side)
        self.terrain_box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.terrain_box.setMinimumContentsLength(12)
        self.terrain_box.setAccessibleName(tr("Heights from"))
        self.terrain_box.setToolTip(tip)
        self.terrain_box.setWhatsThis(tip)
        self.terrain_box.activated.connect(lambda _: self._terrain_chosen())
        label = QLabel(tr("H&eights from"), side)
        label.setBuddy(self.terrain_box)
        layout.addWidget(label)
        layout.addWidget(self.terrain_box)
        side.setMinimumWidth(150)
        return side

    def _tables(self):
        """The tables, and below them the whole remark of the row chosen."""
        self.remark = QLabel(self)
        self.remark.setWordWrap(True)
        self.remark.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.remark.setMargin(4)
        self.remark.hide()
        side = QWidget(self)
        layout = QVBoxLayout(side)
        layout.setContentsMargins(0, 0, 0, 0)
        self.caution = QLabel(caution(), self)
        self.caution.setWordWrap(True)
        self.caution.setMargin(4)
        self.caution.hide()
        layout.addWidget(self.tabs, 1)
        layout.addWidget(self.caution)
        layout.addWidget(self.remark)
        return side

    def _table_view(self, table):
        view = QTableView(self)
        view.setAccessibleName(table.title)
        model = FigureModel(table, view)
        proxy = QSortFilterProxyModel(view)
        proxy.setSourceModel(model)
        proxy.setSortRole(Qt.ItemDataRole.UserRole)
        view.setModel(proxy)
        view.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        view.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        view.setAlternatingRowColors(True)
        view.setShowGrid(False)
        view.setItemDelegate(_Spaced(view))
        view.setWordWrap(False)
        view.setTabKeyNavigation(False)
        view.verticalHeader().hide()
        view.verticalHeader().setDefaultSectionSize(view.fontMetrics().height() + 8)
        view.horizontalHeader().setHighlightSections(False)
        view.horizontalHeader().setStretchLastSection(True)
        view.horizontalHeader().setSortIndicator(-1, Qt.SortOrder.AscendingOrder)
        view.setSortingEnabled(True)
        view.setWhatsThis(
            tr(
                "A row a figure is about: a click shows it on the drawing and on the map, a click on a "
                "heading sorts. Point at a figure to read it unrounded with its uncertainty; rows in "
                "italics have a remark."
            )
        )
        view.selectionModel().currentRowChanged.connect(lambda *_: self._row_changed())
        view.clicked.connect(lambda index: self._row_to_map())
        view.activated.connect(lambda index: self._row_to_map())
        copy = QAction(tr("Copy"), view)
        copy.setShortcut(QKeySequence(QKeySequence.StandardKey.Copy))
        copy.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        copy.triggered.connect(lambda: self.copy())
        view.addAction(copy)
        view.setContextMenuPolicy(Qt.ContextMenuPolicy.ActionsContextMenu)
        return view

    def _foot(self):
        self.copy_button = QPushButton(tr("&Copy"), self)
        self.copy_button.setToolTip(tr("Copy the rows chosen, or else the whole table, as shown (Ctrl+C)."))
        self.copy_button.clicked.connect(lambda: self.copy())
        self.save_button = QPushButton(tr("&Save"), self)
        self.save_button.setToolTip(tr("Write the tables, with two decimals, to files in a folder."))
        menu = QMenu(self.save_button)
        for text, every, form in (
            (tr("The holes and tee sets chosen, as CSV…"), False, "csv"),
            (tr("The holes and tee sets chosen, as XLSX…"), False, "xlsx"),
            (tr("The whole course, as CSV…"), True, "csv"),
            (tr("The whole course, as XLSX…"), True, "xlsx"),
        ):
            action = menu.addAction(text)
            action.triggered.connect(lambda checked=False, every=every, form=form: self._save(every, form))
        self.save_button.setMenu(menu)
        self.refresh_button = QPushButton(tr("&Refresh"), self)
        self.refresh_button.setToolTip(
            tr("Read the course again and measure anew. Edits are followed by themselves.")
        )
        self.refresh_button.clicked.connect(lambda: self.refresh())
        close = QDialogButtonBox(QDialogButtonBox.StandardButton.Close, self)
        close.rejected.connect(self.close)
        for button in (self.copy_button, self.save_button, self.refresh_button):
            button.setAutoDefault(False)
        close.button(QDialogButtonBox.StandardButton.Close).setAutoDefault(False)
        foot = QHBoxLayout()
        foot.addWidget(self.note, 1)
        for widget in (self.copy_button, self.save_button, self.refresh_button, close):
            foot.addWidget(widget)
        return foot

    # The course

    def _read(self):
        """Read the course's layers as they are now; on the main thread, to which layers belong."""
        group = course_groups(QgsProject.instance())[self.place]
        self.layers = course_layers_of(group)
        course = read_course(self.layers)
        self._fill_terrains()
        self._measure_anew(course)
        settings = course.settings
        self.setWindowTitle(tr("Measure: {}").format(course.name) if course.name else tr("Measure"))
        units = {"yd": tr("Distances in yards"), "m": tr("Distances in metres")}
        points = {
            "front": tr("from the front of the tee"),
            "centre": tr("from the centre of the tee"),
            "back": tr("from the back of the tee"),
        }
        self.note.setText(
            tr(
                "{}, {} or its permanent marker. A row in italics has a remark; "
                "the mouse held over a figure shows it unrounded."
            ).format(units[settings.unit], points[settings.tee_reference])
        )

    def _measure_anew(self, course):
        try:
            open_terrain = self._open_terrain()
        except YardwrightError as error:
            open_terrain = None
            tell(self.bar, error.what, error.remedy)
        self._holes = MeasuredHoles(course, open_terrain)

    # The heights

    def _fill_terrains(self):
        """The heights that may be taken; the topmost of the project at first, then what was chosen before."""
        first = self.terrain_box.count() == 0
        before = self.terrain_box.currentData()
        self.terrain_box.clear()
        self.terrain_box.addItem(tr("None"), _NO_HEIGHTS)
        for layer in rasters_of_heights(QgsProject.instance()):
            self.terrain_box.addItem(layer.name(), layer.id())
        if self._terrain_file:
            self.terrain_box.addItem(os.path.basename(self._terrain_file), self._terrain_file)
        self.terrain_box.addItem(tr("A file…"), _FROM_FILE)
        if first and self.terrain_box.count() > 2:
            self.terrain_box.setCurrentIndex(1)
        else:
            self.terrain_box.setCurrentIndex(max(0, self.terrain_box.findData(before)))
        self._terrain_before = self.terrain_box.currentData()

    def _open_terrain(self):
        """A function that opens the heights chosen, None for none. Raises YardwrightError."""
        chosen = self.terrain_box.currentData()
        if chosen == _NO_HEIGHTS:
            return None
        if chosen == self._terrain_file:
            from ..imagery.terrain import Terrain

            return partial(Terrain, chosen)
        layer = QgsProject.instance().mapLayer(chosen)
        return None if layer is None else opener_of(layer)

    def _terrain_chosen(self):
        """Measure with the heights chosen; a file is asked for where that is wanted."""
        with told_in(self.bar):
            if self.terrain_box.currentData() == _FROM_FILE:
                path, _ = QFileDialog.getOpenFileName(self, tr("Choose a terrain model"))
                if not path:
                    self.terrain_box.setCurrentIndex(self.terrain_box.findData(self._terrain_before))
                    return
                self.take_terrain(path)
                return
            self._terrain_before = self.terrain_box.currentData()
            self._measure_anew(self._holes.course)
            self._holes_chosen()

    def take_terrain(self, path):
        """Take the heights out of a file. Raises YardwrightError, and stays as it was, where it has none."""
        from ..imagery.terrain import Terrain

        self.terrain_box.setCurrentIndex(self.terrain_box.findData(self._terrain_before))
        Terrain(path).close()
        self._terrain_file = path
        self._fill_terrains()
        self.terrain_box.setCurrentIndex(self.terrain_box.findData(path))
        self._terrain_before = path
        self._measure_anew(self._holes.course)
        self._holes_chosen()

    def _tell_trouble(self):
        """Say once why there are no heights, where they failed."""
        trouble = self._holes.trouble
        if trouble is not None and trouble is not self._told_trouble:
            self._told_trouble = trouble
            tell(self.bar, trouble.what, trouble.remedy)

    def _follow(self):
        """Watch the layers for edits, and the project for the course's going away."""
        for layer in self.layers.layers.values():
            for signal in (
                layer.layerModified,
                layer.dataChanged,
                layer.afterRollBack,
                layer.afterCommitChanges,
            ):
                self._connect(signal, self._soon)
        ours = {layer.id() for layer in self.layers.layers.values()}
        self._connect(
            QgsProject.instance().layersWillBeRemoved, lambda ids: self.close() if ours & set(ids) else None
        )

    def _soon(self, *_):
        """Refresh once the edits have come to rest."""
        self._edited.start()

    def _connect(self, signal, slot):
        self._connections.append((signal, signal.connect(slot)))

    def closeEvent(self, event):
        """Let go of the course when the window is closed, seen or not."""
        self._let_go()
        super().closeEvent(event)

    def done(self, result):
        """Let go of the course when Escape or a button ends the dialog."""
        self._let_go()
        super().done(result)

    def _let_go(self):
        self._step.stop()
        self._edited.stop()
        while self._connections:
            signal, connection = self._connections.pop()
            signal.disconnect(connection)
        self._unselect()

    def refresh(self):
        """Read and measure anew; what was chosen stays chosen."""
        with told_in(self.bar):
            chosen = self.chosen_holes()
            self._read()
            self._fill_holes(*chosen)

    # What is chosen

    def chosen_holes(self):
        """The numbers of the holes chosen, in order."""
        items = self.holes_list.selectedItems()
        return sorted(item.data(_NUMBER) for item in items)

    def chosen_tees(self):
        """The names of the tee sets chosen, in order of play."""
        items = (self.tees_list.item(row) for row in range(self.tees_list.count()))
        return [item.data(_NUMBER) for item in items if item.checkState() == Qt.CheckState.Checked]

    def choose_holes(self, *numbers):
        """Choose holes by their numbers; those that are not there are ignored."""
        items = [self.holes_list.item(row) for row in range(self.holes_list.count())]
        wanted = [item for item in items if item.data(_NUMBER) in numbers]
        self.holes_list.blockSignals(True)
        self.holes_list.clearSelection()
        if wanted:
            self.holes_list.setCurrentItem(wanted[0])
        for item in wanted:
            item.setSelected(True)
        self.holes_list.blockSignals(False)
        self._holes_chosen()

    def _fill_holes(self, *chosen):
        self.holes_list.blockSignals(True)
        self.holes_list.clear()
        for hole in self._holes.course.holes:
            item = QListWidgetItem(hole_text(hole.number, hole.name, hole.par), self.holes_list)
            item.setData(_NUMBER, hole.number)
        self.holes_list.blockSignals(False)
        numbers = [hole.number for hole in self._holes.course.holes]
        kept = [number for number in chosen if number in numbers]
        self.choose_holes(*(kept or numbers[:1]))

    def _holes_chosen(self):
        self._waiting = [number for number in self.chosen_holes() if not self._holes.knows(number)]
        if self._waiting:
            self._step.start()
        else:
            self._show_holes()

    def _measure_next(self):
        """Measure one hole and come back for the next, so that the window stays alive meanwhile."""
        if self._waiting:
            number = self._waiting.pop(0)
            with told_in(self.bar):
                self._holes.hole(number)
        if not self._waiting:
            self._step.stop()
            self._show_holes()

    # What is shown

    def _measured(self):
        """The MeasuredHoles chosen; one that could not be measured has told so, and is left out."""
        return [self._holes.hole(number) for number in self.chosen_holes() if self._holes.knows(number)]

    def _show_holes(self):
        with told_in(self.bar):
            self._tell_trouble()
            self._fill_tees()
            self._fill_tables()
            self._fill_problems()

    def _fill_tees(self):
        """The tee sets of the course and of the holes; a choice is kept, the first is chosen at first."""
        chosen = self.chosen_tees()
        names = self._holes.tee_sets([one.hole.number for one in self._measured()])
        here = {row.tee_set for one in self._measured() for row in one.measures.lengths}
        if here and not here & set(chosen):
            chosen += [name for name in names if name in here][:1]
        self.tees_list.blockSignals(True)
        self.tees_list.clear()
        for name in names:
            item = QListWidgetItem(name or tr("(no set named)"), self.tees_list)
            item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            item.setData(_NUMBER, name)
            item.setCheckState(Qt.CheckState.Checked if name in chosen else Qt.CheckState.Unchecked)
        self.tees_list.blockSignals(False)

    def _fill_tables(self):
        measured, tees = self._measured(), set(self.chosen_tees())
        unit = self._holes.course.settings.unit
        for name, view in self.views.items():
            rows = [
                row
                for one in measured
                for row in getattr(one.measures, name)
                if not hasattr(row, "tee_set") or row.tee_set in tees
            ]
            model = view.model().sourceModel()
            model.show(rows, unit)
            for place, column in enumerate(model.table.columns):
                empty = all(getattr(row, column.attribute) in (None, "") for row in rows)
                needless = column.attribute == "hole" and len(measured) < 2
                needless |= column.attribute == "tee_set" and len(tees) < 2
                view.setColumnHidden(place, needless or (empty and column.attribute != "remark"))
            _fit_columns(view)
        self.tabs.setTabVisible(self.tabs.indexOf(self.views[HEIGHTS]), self._knows_heights())
        self._show_drawing(measured[0] if measured else None)

    def _knows_heights(self):
        return self._holes.open_terrain is not None and self._holes.trouble is None

    def _fill_problems(self):
        course = self._holes.course
        problems = dict.fromkeys(course.problems)
        for one in self._measured():
            problems.update(dict.fromkeys(one.measures.problems))
        self.problems_list.clear()
        self.problems_list.addItems(
            list(problems) or [tr("There is nothing to remark on the course itself.")]
        )
        place = self.tabs.indexOf(self.problems_list)
        self.tabs.setTabText(place, tr("Course ({})").format(len(problems)) if problems else tr("Course"))

    def _show_drawing(self, measured):
        """Draw a MeasuredHole, from the first tee set chosen that it has."""
        self._drawn = measured
        if measured is None:
            self.drawing.show_message(tr("No hole is chosen."))
            return
        played, course = measured.played, self._holes.course
        hole = measured.hole
        title = hole_text(hole.number, hole.name, hole.par)
        if played is None:
            self.drawing.show_message(tr("{}\nIts line of play is not drawn yet.").format(title))
            return
        tees = {tee.tee_set: tee for tee in played.tees}
        tee = next((tees[name] for name in self.chosen_tees() if name in tees), None)
        unit = course.settings.unit
        subtitle = _subtitle(measured.hole, tee, unit)
        markers = measured.measures.markers
        self.drawing.show_sheet(Sheet(played, tee, markers, unit, title, subtitle, course.crs))

    # A row chosen

    def _view(self):
        """The table in front, None when the remarks are."""
        view = self.tabs.currentWidget()
        return view if isinstance(view, QTableView) else None

    def current_row(self):
        """The row of measure.rows that is chosen in the table in front, None when none is."""
        view = self._view()
        index = view.selectionModel().currentIndex() if view else None
        if index is None or not index.isValid():
            return None
        return view.model().sourceModel().rows[view.model().mapToSource(index).row()]

    def _row_changed(self):
        """Make what the row is about stand out in the drawing."""
        with told_in(self.bar):
            self.caution.setVisible(self.tabs.currentWidget() is self.views[HEIGHTS])
            row = self.current_row()
            remark = row.remark if row is not None else ""
            self.remark.setText(tr("Remark: {}").format(remark))
            self.remark.setVisible(bool(remark))
            if row is None:
                self.drawing.choose(None)
                return
            one = self._holes.hole(row.hole)
            if one is not self._drawn:
                self._show_drawing(one)
            unit = self._holes.course.settings.unit
            self.drawing.choose(thing_of(row, one.played), drawn_figures(row, unit))

    def _row_to_map(self):
        """Show what the row is about on the map: chosen, flashing, and moved into view."""
        with told_in(self.bar):
            row = self.current_row()
            shown = None if row is None else thing_of(row, self._holes.hole(row.hole).played)
            if shown is not None:
                self._show_on_map(shown, self._holes.hole(row.hole).played)

    def _show_on_map(self, shown, played):
        self._unselect()
        if shown.point is not None:
            place = map_places(self.canvas, self.layers.crs, played.frame)([shown.point])
            if not in_view(self.canvas, place):
                self.canvas.setCenter(QgsPointXY(*place[0]))
                self.canvas.refresh()
            crs = self.canvas.mapSettings().destinationCrs()
            self.canvas.flashGeometries([QgsGeometry.fromPointXY(QgsPointXY(*place[0]))], crs)
            return
        layer = self.layers[shown.kind]
        layer.selectByIds(list(shown.fids))
        self._selected_layer = layer
        box = self.canvas.mapSettings().layerExtentToOutputExtent(layer, layer.boundingBoxOfSelected())
        corners = [(x, y) for x in (box.xMinimum(), box.xMaximum()) for y in (box.yMinimum(), box.yMaximum())]
        if not in_view(self.canvas, corners):
            self._bring_into_view(box, corners)
        self.canvas.flashFeatureIds(layer, list(shown.fids))

    def _bring_into_view(self, box, corners):
        """Move the map to a rectangle, and zoom out where it is larger than what is seen."""
        self.canvas.setCenter(box.center())
        if not in_view(self.canvas, corners):
            side = 1.1 * math.hypot(box.width(), box.height())  # it fits however the map is turned
            self.canvas.setExtent(QgsRectangle.fromCenterAndSize(box.center(), side, side))
        self.canvas.refresh()

    def _unselect(self):
        """Take back the selection this dialog made, nobody else's."""
        from qgis.PyQt import sip

        if self._selected_layer is not None and not sip.isdeleted(self._selected_layer):
            self._selected_layer.removeSelection()
        self._selected_layer = None

    def _drawing_clicked(self, kind, fid):
        """Choose the row of a thing that was clicked in the drawing, in the table in front if it has one."""
        with told_in(self.bar):
            front = self._view()
            for view in filter(None, (front, *self.views.values())):
                model = view.model().sourceModel()
                for place, row in enumerate(model.rows):
                    if row.hole != self._drawn.hole.number:
                        continue
                    thing = thing_of(row, self._drawn.played)
                    if thing is not None and thing.kind == kind and fid in thing.fids:
                        self.tabs.setCurrentWidget(view)
                        view.selectRow(view.model().mapFromSource(model.index(place, 0)).row())
                        self._row_changed()
                        self._row_to_map()
                        return
            played = self._drawn.played
            self.drawing.choose(Shown(kind, (fid,)))
            self._show_on_map(Shown(kind, (fid,)), played)

    # Copy and save

    def copy(self):
        """Copy the rows chosen of the table in front, or all, as they are shown, with tabs between."""
        view = self._view()
        if view is None:
            texts = [self.problems_list.item(row).text() for row in range(self.problems_list.count())]
            QApplication.clipboard().setText("\n".join(texts))
            return
        model = view.model()
        chosen = sorted({index.row() for index in view.selectionModel().selectedRows()})
        if len(chosen) < 1:
            chosen = range(model.rowCount())
        shown = [place for place in range(model.columnCount()) if not view.isColumnHidden(place)]
        lines = [[model.headerData(place, Qt.Orientation.Horizontal) for place in shown]]
        lines += [[_cell(model.index(row, place)) for place in shown] for row in chosen]
        QApplication.clipboard().setText("\n".join("\t".join(line) for line in lines))

    def _save(self, every, form):
        with told_in(self.bar):
            folder = QFileDialog.getExistingDirectory(self, tr("Choose a folder for the tables"))
            if folder and self._may_replace(folder, form):
                self.save(folder, every, form)

    def _may_replace(self, folder, form):
        there = [name for name in _ROW_TYPES if os.path.exists(os.path.join(folder, f"{name}.{form}"))]
        if not there:
            return True
        answer = QMessageBox.question(
            self,
            tr("Replace the tables?"),
            tr("“{}” already holds tables: {}. Replace them?").format(
                folder, ", ".join(f"{name}.{form}" for name in there)
            ),
        )
        return answer == QMessageBox.StandardButton.Yes

    def save(self, folder, every, form):
        """Write the tables as ``form`` (``csv`` or ``xlsx``) into a folder; the paths written.

        every: the whole course; else the holes chosen, and of tables by tee set the tee sets chosen.
        The user may stop it, and nothing is written then: None.
        """
        numbers = None if every else self.chosen_holes()
        measures = self._measure_with_progress(numbers)
        if measures is None:
            return None
        tees = None if every else set(self.chosen_tees())
        written = {}
        for name, row_type in _ROW_TYPES.items():
            rows = getattr(measures, name)
            if name == HEIGHTS and not self._knows_heights():
                continue
            if tees is not None and row_type not in _OF_ALL_TEES:
                rows = [row for row in rows if row.tee_set in tees]
            written[name] = (row_type, rows)
        paths = write_tables(folder, written, self._holes.course.settings.unit, (form,))
        tell(
            self.bar,
            tr("{} tables were written to “{}”.").format(len(paths), folder),
            "",
            Qgis.MessageLevel.Success,
        )
        return paths

    def _measure_with_progress(self, numbers):
        if numbers is not None and not numbers:
            return row_types.Measures()
        waiting = QProgressDialog(tr("Measuring the course…"), tr("Cancel"), 0, 100, self)
        waiting.setWindowModality(Qt.WindowModality.WindowModal)
        waiting.setMinimumDuration(500)

        def progress(done, total):
            waiting.setMaximum(total)
            waiting.setValue(done)
            return not waiting.wasCanceled()

        try:
            return self._holes.measure(numbers, progress)
        except Cancelled:
            return None
        finally:
            waiting.close()
            waiting.deleteLater()


class _Spaced(QStyledItemDelegate):
    """Keeps a little room between a figure at the right of its column and a word at the left of the next."""

    def displayText(self, value, locale):
        return f"\u2002{value}\u2002"


def _fit_columns(view):
    """Each column as wide as its heading and its longest text, and no wider."""
    model, header, metrics = view.model(), view.horizontalHeader(), view.fontMetrics()
    for place in range(model.columnCount()):
        texts = {model.index(row, place).data() or "" for row in range(model.rowCount())}
        widest = max((metrics.horizontalAdvance(f"\u2002{text}\u2002") for text in texts), default=0)
        heading = header.fontMetrics().horizontalAdvance(
            model.headerData(place, Qt.Orientation.Horizontal) or ""
        )
        view.setColumnWidth(place, min(420, max(widest + 12, heading + 14)))


def _cell(index):
    """A cell's text, harmless to a spreadsheet it is pasted into, on one line."""
    text = str(index.data() or "").replace("\t", " ").replace("\n", " ")
    return guarded(text.replace("−", "-") if text.startswith("−") else text)


def _subtitle(hole, tee, unit):
    length = ""
    if tee is not None:
        name = tee.tee_set or tr("the tee")
        length = tr("{} {} from {}").format(whole(to_unit(tee.length, unit)), unit, name)
    index = tr("stroke index {}").format(hole.stroke_index) if hole.stroke_index else ""
    return ", ".join(filter(None, (length, index)))
