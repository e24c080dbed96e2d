"""The toolbar and menu: courses opened and made, holes looked at, tables and pictures asked for.

QGIS imports this at its start: what is heavy is imported in the handlers.
"""

import os

from qgis.core import Qgis, QgsApplication, QgsRasterLayer, QgsSettings, QgsVectorLayer
from qgis.PyQt.QtCore import QObject, Qt
from qgis.PyQt.QtWidgets import QAction, QComboBox, QFileDialog, QMenu, QToolBar

from ..model.kinds import BY_NAME
from ..resources import icon
from .courses import hole_text
from .date_actions import DateActions
from .drawing_bar import DrawingBar
from .in_hand import CourseInHand
from .keeping import Keeping
from .map_figures import MapFigures
from .moved_layers import MovedLayers
from .page_designer import PageDesigners
from .words import tell, told_in, tr, with_keys

_FIGURES_SHOWN = "yardwright/figures_shown"
_VIEWS = ("north", "play", "approach")
_KEYS = {
    "new_course": "Alt+Y, N",
    "open_course": "Alt+Y, Ctrl+O",
    "previous": "Alt+PgUp",
    "next": "Alt+PgDown",
    "view_north_up": "Alt+1",
    "view_play_up": "Alt+2",
    "view_approach_up": "Alt+3",
    "map_figures": "Alt+Y, S",
    "import_features": "Alt+Y, I",
    "measure": "Alt+Y, D",
    "check_markers": "Alt+Y, C",
    "export_windows": "Alt+Y, V",
    "hole_panel": "Alt+Y, J",
    "dates_panel": "Alt+Y, Y",
    "checks_panel": "Alt+Y, Q",
    "event_panel": "Alt+Y, U",
    "make_guide": "Alt+Y, Z",
}
"""What is done again and again has one stroke, all else the letter that follows Alt+Y (see also
``drawing_bar.KEYS``). A test in a real desktop sees that QGIS has no such keys of its own."""


def add_toolbar(iface):
    """Add the toolbar and the menu to QGIS; a callable that takes them away again."""
    return CourseTools(iface).remove


class CourseTools(QObject):
    """What the toolbar holds, and how the map is turned.

    ``in_hand``: the CourseInHand that it shows and chooses. ``view``: ``north``, ``play``, ``approach``, or
    None when the map was turned by other means.
    """

    def __init__(self, iface):
        super().__init__(iface.mainWindow())
        self.iface = iface
        self.in_hand = CourseInHand(iface, self)
        self.keeping = Keeping(self.in_hand)
        self.moved_layers = MovedLayers(self.in_hand)
        self.page_designers = PageDesigners(self.in_hand)
        self.view = "north"
        self.actions = {}
        self.panels = {}
        self._tips = {}
        self._windows = []
        self._build()
        self.date_actions = DateActions(self.in_hand, lambda: self.panel("dates_panel"))
        self.menu.insertMenu(self.actions["checks_panel"], self.date_actions.menu)
        self.drawing = DrawingBar(self.in_hand)
        self.in_hand.course_changed.connect(self._show_courses)
        self.in_hand.hole_changed.connect(self._show_holes)
        self.iface.mapCanvas().rotationChanged.connect(self._map_turned)
        self.figures = MapFigures(self.in_hand)
        self.show_figures(QgsSettings().value(_FIGURES_SHOWN, True, type=bool))
        with told_in(iface.messageBar()):
            self.in_hand.refresh()

    @property
    def place(self):
        """The place of the course in hand, None without one."""
        return self.in_hand.place

    @property
    def hole(self):
        """The number of the hole in hand, None without one."""
        return self.in_hand.hole

    # Building

    def _build(self):
        window = self.iface.mainWindow()
        self.bar = QToolBar(tr("Yardwright"), window)
        self.bar.setObjectName("yardwright_toolbar")
        self.menu = QMenu(tr("&Yardwright"), window)
        self.menu.setObjectName("yardwright_menu")
        self.menu.setIcon(icon("yardwright"))
        self.menu.setToolTipsVisible(True)

        self._add(
            "new_course",
            tr("&Start a course…"),
            tr("Make a new, empty course file and open it"),
            self.new_course,
        )
        self._add(
            "open_course", tr("&Open course…"), tr("Open a course file in this project"), self.open_course
        )
        self._gap()
        self.course_box = self._box("yardwright_course", tr("Course"), tr("The course in hand"))
        self.course_box.activated.connect(lambda row: self.in_hand.choose(self.course_box.itemData(row)))
        arrow = QgsApplication.getThemeIcon
        previous, following = tr("Look at the hole before"), tr("Look at the next hole")
        self._add(
            "previous", tr("&Previous hole"), previous, lambda: self.step(-1), arrow("/mActionArrowLeft.svg")
        )
        self.hole_box = self._box(
            "yardwright_hole",
            tr("Hole"),
            tr("Choose the hole to look at; type its number, or use the arrow keys"),
        )
        self.hole_box.activated.connect(lambda row: self._hole_chosen(self.hole_box.itemData(row)))
        self._add("next", tr("Ne&xt hole"), following, lambda: self.step(1), arrow("/mActionArrowRight.svg"))
        for view, text, tip in (
            ("north", tr("No&rth up"), tr("Show the hole with the map not turned")),
            ("play", tr("Play &up"), tr("Show the hole with play from the longest tee upwards")),
            ("approach", tr("&Approach up"), tr("Show the green with its approach upwards")),
        ):
            self._add(f"view_{view}_up", text, tip, lambda view=view: self.turn(view))
            self.actions[f"view_{view}_up"].setCheckable(True)
        self._add(
            "map_figures",
            tr("&Figures on the map"),
            tr("Write the figures of the hole on the map: to reach and clear, to the green, its size"),
            lambda: self.show_figures(self.actions["map_figures"].isChecked()),
        )
        self.actions["map_figures"].setCheckable(True)
        self._gap()
        self._add(
            "import_features",
            tr("&Bring features in…"),
            tr("Bring features in from OpenStreetMap or another file or layer"),
            self.bring_in,
        )
        self._add(
            "measure", tr("&Measure…"), tr("See the figures of a hole beside its drawing"), self.measure
        )
        self._add(
            "check_markers",
            tr("&Check markers…"),
            tr("Find the distance markers that do not stand where they say"),
            lambda: self.run_algorithm("checkmarkers", self._folder("tables")),
        )
        self._add(
            "export_windows",
            tr("&Export windows…"),
            tr("Cut the turned pictures of holes and greens out of an image"),
            self.export_windows,
        )
        self._gap()
        self._add("hole_panel", tr("&Hole panel"), tr("See what of the hole is drawn, and its figures"))
        self._add(
            "dates_panel",
            tr("&Dates panel"),
            tr("Show the images of the course by date, and compare two of them"),
            own_icon=icon("dates"),
        )
        self._add(
            "checks_panel",
            tr("Chec&ks panel"),
            tr("List what is wrong, doubtful or missing, and repair it"),
            own_icon=icon("checks"),
        )
        self._add("event_panel", tr("E&vent panel"), tr("Place the pins of an event, round by round"))
        self._gap()
        self._add(
            "make_guide",
            tr("Ma&ke the guide…"),
            tr("See the guide page by page, order its pages, and save it for phone or print"),
            self.guide,
        )
        self.iface.addToolBar(self.bar)
        self.iface.pluginMenu().addMenu(self.menu)

    def _add(self, name, text, tip, handler=None, own_icon=None):
        """Add an action; one without a handler shows and hides the panel of its name."""
        action = QAction(own_icon or icon(name), text, self)
        action.setObjectName(f"yardwright_{name}")

        if handler is None:
            action.setCheckable(True)

        def run(checked=False):
            with told_in(self.iface.messageBar()):
                if handler is None:
                    self.panel(name).setUserVisible(checked)
                else:
                    handler()

        action.triggered.connect(run)
        self._tips[name] = with_keys(tip, _KEYS[name])
        action.setWhatsThis(f"{tip}.")
        self.actions[name] = action
        self.bar.addAction(action)
        self.menu.addAction(action)
        self.iface.registerMainWindowAction(action, _KEYS[name])

    def _gap(self):
        self.bar.addSeparator()
        self.menu.addSeparator()

    def _box(self, name, title, tip):
        box = QComboBox(self.bar)
        box.setObjectName(name)
        box.setAccessibleName(title)
        box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        box.setMaximumWidth(230)
        self._tips[name] = tip
        box.setWhatsThis(f"{tip}.")
        self.bar.addWidget(box)
        return box

    def remove(self):
        """Take everything away from QGIS again."""
        self.date_actions.let_go()
        for panel in self.panels.values():
            panel.let_go()
            self.iface.removeDockWidget(panel)
            panel.deleteLater()
        self.drawing.remove()
        self.figures.let_go()
        self.keeping.let_go()
        self.moved_layers.let_go()
        self.page_designers.let_go()
        self.in_hand.let_go()
        self.iface.mapCanvas().rotationChanged.disconnect(self._map_turned)
        self._close_windows()
        for action in self.actions.values():
            self.iface.unregisterMainWindowAction(action)
        self.iface.pluginMenu().removeAction(self.menu.menuAction())
        self.iface.mainWindow().removeToolBar(self.bar)
        for thing in (self.menu, self.bar, self):
            thing.deleteLater()

    def _close_windows(self):
        from qgis.PyQt import sip

        for window in self._windows:
            if not sip.isdeleted(window):
                window.close()
                window.deleteLater()
        self._windows = []

    # The course in hand

    def _show_courses(self):
        self.course_box.clear()
        for place, group in self.in_hand.groups.items():
            self.course_box.addItem(group.name(), place)
        if self.place is None:
            self.course_box.addItem(tr("No course"))
        else:
            self.course_box.setCurrentIndex(list(self.in_hand.groups).index(self.place))

    def _show_holes(self):
        self.hole_box.clear()
        for hole in self.in_hand.holes:
            self.hole_box.addItem(hole_text(*hole), hole[0])
        if not self.in_hand.holes:
            self.hole_box.addItem(tr("No hole"))
        self.hole_box.setCurrentIndex(max(0, self.hole_box.findData(self.hole)))
        self._enable()

    def _hole_chosen(self, number):
        self.in_hand.choose_hole(number)
        self.show_hole(or_say=False)

    def _enable(self):
        """What cannot be done now is off, and says why."""
        reasons = dict.fromkeys(self._tips, self.in_hand.why_no_course())
        reasons["new_course"] = reasons["open_course"] = ""
        for name in ("yardwright_hole", "previous", "next", *(f"view_{view}_up" for view in _VIEWS)):
            reasons[name] = self.in_hand.why_no_hole()
        row, last = self.hole_box.currentIndex(), self.hole_box.count() - 1
        if not reasons["previous"] and row <= 0:
            reasons["previous"] = tr("This is the first hole.")
        if not reasons["next"] and row >= last:
            reasons["next"] = tr("This is the last hole.")
        boxes = {"yardwright_course": self.course_box, "yardwright_hole": self.hole_box}
        for name, reason in reasons.items():
            thing = boxes.get(name) or self.actions[name]
            thing.setEnabled(not reason)
            tip = self._tips[name]
            thing.setToolTip(f"{tip}\n{reason}" if reason else tip)
        self._check_view()

    # Holes and views

    def step(self, by):
        """Look at the hole ``by`` places further in the list."""
        row = self.hole_box.currentIndex() + by
        if 0 <= row < self.hole_box.count():
            self._hole_chosen(self.hole_box.itemData(row))

    def turn(self, view):
        """Look at the hole in another way: ``north``, ``play`` or ``approach``."""
        before, self.view = self.view, view
        if not self.show_hole():
            self.view = before
        self._check_view()

    def show_hole(self, or_say=True):
        """Turn and zoom the map to the hole in hand; whether it could be done.

        or_say: say so where the hole is not drawn yet. One who steps through the holes that are still to be
        drawn is told nothing.
        """
        self._enable()
        with told_in(self.iface.messageBar()):
            from ..model.errors import YardwrightError
            from .turning import look_at

            layers, played = self.in_hand.layers(), self.in_hand.played()
            if played is None and not or_say:
                return False
            if played is None:
                raise YardwrightError(
                    tr("Hole {} has no line of play, so it cannot be looked at.").format(self.hole),
                    tr("Draw the line from tee to green in the layer “Line of play”, or bring features in."),
                )
            view = self.view
            look_at(self.iface.mapCanvas(), layers.crs, played, view)
            self.view = view  # turning the map has told _map_turned meanwhile
            self._check_view()
            return True
        return False

    def _map_turned(self, rotation):
        """Somebody else turned the map: no view is in force then."""
        if rotation == 0:
            self.view = "north"
        else:
            self.view = None
        self._check_view()

    def _check_view(self):
        for view in _VIEWS:
            self.actions[f"view_{view}_up"].setChecked(view == self.view)

    # Panels

    def panel(self, name):
        """A panel by the name of its action, made when it is first asked for."""
        if name not in self.panels:
            panel = getattr(self, f"_make_{name}")()
            self.panels[name] = panel
            self.iface.addDockWidget(Qt.DockWidgetArea.RightDockWidgetArea, panel)
            panel.setToggleVisibilityAction(self.actions[name])
        return self.panels[name]

    def _make_hole_panel(self):
        from .hole_panel import HolePanel

        panel = HolePanel(self.in_hand, self.iface.mainWindow())
        panel.step.connect(self.step)
        panel.draw.connect(self.drawing.take)
        self.drawing.follow_pointer().figures.connect(panel.show_pointer)
        return panel

    def _make_dates_panel(self):
        from .dates_panel import DatesPanel

        panel = DatesPanel(self.in_hand, self.iface.mainWindow(), self.date_actions.actions.values())
        self.drawing.date_at, self.drawing.second_date = panel.date_at, panel.second_date
        return panel

    def _make_event_panel(self):
        from .event_panel import EventPanel

        return EventPanel(self.in_hand, self.iface.mainWindow())

    def _make_checks_panel(self):
        from .checks_panel import ChecksPanel

        return ChecksPanel(self.in_hand, self.iface.mainWindow())

    def show_figures(self, on):
        """Write the figures of the hole in hand on the map, or wipe them off; the next start remembers."""
        self.actions["map_figures"].setChecked(on)
        self.figures.show(on)
        QgsSettings().setValue(_FIGURES_SHOWN, on)

    # Other windows

    def new_course(self):
        """Ask for a new course and open it."""

        from .courses import suggested_start

        def made(results):
            self.add_course(str(results["COURSE"]))

        self.run_algorithm("startcourse", suggested_start(self.in_hand.project, self.iface.mapCanvas()), made)

    def bring_in(self):
        """Ask for features to bring into the course in hand.

        Proposed is a layer that is not a course's; without one a file is asked for first.
        """
        from .courses import other_layers

        layers = other_layers(self.in_hand.project, self.in_hand.groups, QgsVectorLayer)
        source = layers[0] if layers else self._ask_for_source()
        if source:
            self.run_algorithm("importfeatures", {"SOURCE": source}, self._brought_in)

    def _brought_in(self, results):
        """Say what came in, and show it where the map shows none of the course yet."""
        self._reload()
        extent = self._extent()
        if extent is not None and not extent.intersects(self.iface.mapCanvas().extent()):
            self._look_at(extent)
        counts = ", ".join(f"{tr(BY_NAME[kind].title)} {count}" for kind, count in results["COUNTS"].items())
        text = tr("Brought in: {}.").format(counts) if counts else tr("Nothing new was brought in.")
        tell(self.iface.messageBar(), text, tr("The log says more."), Qgis.MessageLevel.Success)

    def _ask_for_source(self):
        kinds = (
            (tr("All files"), "*"),
            (tr("OpenStreetMap"), "*.osm *.pbf *.geojson *.json"),
            (tr("Drawings and maps"), "*.gpkg *.shp *.kml *.kmz *.gpx *.dxf *.gml"),
            (tr("Points of a survey"), "*.csv *.txt"),
        )
        filters = ";;".join(f"{title} ({pattern})" for title, pattern in kinds)
        window = self.iface.mainWindow()
        return QFileDialog.getOpenFileName(window, tr("Bring features in from a file"), "", filters)[0]

    def export_windows(self):
        """Ask for the windows of the course in hand; proposed is the topmost image on the map."""
        from .courses import other_layers

        shown = self.iface.mapCanvas().layers()
        images = [layer for layer in shown if isinstance(layer, QgsRasterLayer)]
        images = images or other_layers(self.in_hand.project, {}, QgsRasterLayer)
        image = {"IMAGE": images[0]} if images else {}
        self.run_algorithm("exportwindows", {**image, **self._folder("windows")})

    def guide(self):
        """Show the guide of the course in hand, page by page."""
        from .guide_dialog import show_guide

        show_guide(self.in_hand)

    def _folder(self, name):
        """Results are proposed to go beside the course; {} where it lies in no folder."""
        folder = os.path.dirname(self.place)
        return {"OUTPUT": os.path.join(folder, name)} if os.path.isdir(folder) else {}

    def open_course(self):
        """Ask for a course file and open it."""
        path, _ = QFileDialog.getOpenFileName(
            self.iface.mainWindow(), tr("Open a course"), "", tr("Course file (*.gpkg);;All files (*)")
        )
        if path:
            self.add_course(path)

    def add_course(self, place):
        """Open a course in the project and take it in hand; one of an older version is brought up to date
        first, where the user says so. Raises YardwrightError."""
        from ..store.course_file import OlderCourse, open_course
        from ..store.layer_group import add_course_group, place_of_group

        try:
            layers = open_course(place)
        except OlderCourse as older:
            if not self._brought_up_to_date(older):
                return
            layers = open_course(place)
        try:
            place = place_of_group(add_course_group(self.in_hand.project, layers))
        finally:
            layers.close()
        self.in_hand.place = place
        self.in_hand.refresh()
        extent = self._extent()
        if extent is not None:
            self._look_at(extent)

    def _brought_up_to_date(self, older):
        """Ask whether to bring a course file up to date, and do it; whether it was done."""
        from qgis.PyQt.QtWidgets import QMessageBox

        from ..store.layer_group import reopen_layers
        from ..store.upgrade import upgrade_course

        question = tr("Bring it up to date? The old file is kept beside it.")
        buttons = QMessageBox.StandardButton
        answer = QMessageBox.question(
            self.iface.mainWindow(),
            tr("Open a course"),
            f"{older.what}\n{question}",
            buttons.Yes | buttons.No,
            buttons.Yes,
        )
        if answer != buttons.Yes:
            return False
        kept = upgrade_course(older.path)
        reopen_layers(self.in_hand.project, older.path)
        text = tr("The course is up to date; the old file is kept as “{}”.").format(os.path.basename(kept))
        tell(self.iface.messageBar(), text, level=Qgis.MessageLevel.Success)
        return True

    def _look_at(self, extent):
        canvas = self.iface.mapCanvas()
        canvas.setExtent(extent)
        canvas.refresh()

    def _extent(self):
        """The extent of the course's lines of play on the map, None while there are none."""
        layer = self.in_hand.layer("hole")
        if layer is None:
            return None
        layer.updateExtents()
        extent = layer.extent()
        if extent.isEmpty() or not extent.isFinite():
            return None
        extent = self.iface.mapCanvas().mapSettings().layerExtentToOutputExtent(layer, extent)
        extent.scale(1.1)
        return extent

    def run_algorithm(self, name, proposed=None, done=None):
        """Open the dialog of an algorithm for the course in hand.

        proposed: values of parameters to begin with. ``done(results)`` is called once it has succeeded,
        without one the course's layers are read again.
        """
        from ..model.errors import YardwrightError

        try:
            import processing
        except ImportError as error:
            raise YardwrightError(
                tr("QGIS’s Processing is not there, and this needs it."),
                tr("Turn the plugin “Processing” on in the list of plugins."),
            ) from error
        given = {**({"COURSE": self.place} if self.place else {}), **(proposed or {})}
        window = processing.createAlgorithmDialog(f"yardwright:{name}", given)
        if window is None:
            raise YardwrightError(
                tr("The algorithm “{}” is not there.").format(name),
                tr("Turn Yardwright off and on again in the list of plugins."),
            )

        def finished(successful, results):
            window.showLog()  # QGIS leaves it in the background where an algorithm runs in the main thread
            with told_in(self.iface.messageBar()):
                if successful and done is not None:
                    done(results)
                elif successful:
                    self._reload()

        window.algorithmFinished.connect(finished)
        self._windows.append(window)
        window.show()

    def _reload(self):
        """Show what an algorithm has written into the course's file."""
        for node in self.in_hand.group.findLayers() if self.in_hand.group is not None else ():
            layer = node.layer()
            if layer is not None:
                layer.reload()
                layer.updateExtents()
                layer.triggerRepaint()

    def measure(self):
        """Open the measure dialog for the course in hand."""
        from .measure_dialog import MeasureDialog

        window = MeasureDialog(self.iface, self.place, self.hole)
        self._windows.append(window)
        window.show()
        return window
