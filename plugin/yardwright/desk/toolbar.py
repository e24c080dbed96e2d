"""The toolbar and menu: courses opened and made, holes looked at, tables and pictures asked for.

QGIS imports this at its start: what is heavy is imported in the handlers.
"""

import os

from qgis.core import Qgis, QgsApplication, QgsProject, QgsRasterLayer, QgsVectorLayer
from qgis.PyQt.QtCore import QObject, QTimer
from qgis.PyQt.QtWidgets import QAction, QComboBox, QFileDialog, QMenu, QToolBar

from ..model.kinds import BY_NAME
from ..resources import icon
from .words import tell, told_in, tr

_VIEWS = ("north", "play", "approach")


def add_toolbar(iface):
    """Add the toolbar and the menu to QGIS; a callable that takes them away again."""
    return CourseTools(iface).remove


class CourseTools(QObject):
    """What the toolbar holds and knows: the course and hole in hand, and how the map is turned.

    ``place``: the course in hand, None without one. ``hole``: its number, None without one. ``view``:
    ``north``, ``play``, ``approach``, or None when the map was turned by other means.
    """

    def __init__(self, iface):
        super().__init__(iface.mainWindow())
        self.iface = iface
        self.project = QgsProject.instance()
        self.place = None
        self.view = "north"
        self.actions = {}
        self._groups = {}
        self._tips = {}
        self._windows = []
        self._read = None
        self._edit_connections = []
        self._connections = []
        self._refresh = QTimer(self)
        self._refresh.setSingleShot(True)
        self._refresh.setInterval(50)
        self._refresh.timeout.connect(self.refresh)
        self._build()
        self._watch()
        self.refresh()

    @property
    def hole(self):
        """The number of the hole in hand, None without one."""
        return self.hole_box.currentData()

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
        self.course_box.activated.connect(lambda row: self.choose_course(self.course_box.itemData(row)))
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
        self.hole_box.activated.connect(lambda row: self.show_hole())
        self._add("next", tr("Ne&xt hole"), following, lambda: self.step(1), arrow("/mActionArrowRight.svg"))
        for view, text, tip in (
            ("north", tr("No&rth up"), tr("Show the hole with the map not turned")),
            ("play", tr("Play &up"), tr("Show the hole with play from the longest tee upwards")),
            ("approach", tr("&Approach up"), tr("Show the green with its approach upwards")),
        ):
            self._add(f"view_{view}_up", text, tip, lambda view=view: self.turn(view))
            self.actions[f"view_{view}_up"].setCheckable(True)
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
        self.iface.addToolBar(self.bar)
        self.iface.pluginMenu().addMenu(self.menu)

    def _add(self, name, text, tip, handler, own_icon=None):
        action = QAction(own_icon or icon(name), text, self)
        action.setObjectName(f"yardwright_{name}")

        def run(checked=False):
            with told_in(self.iface.messageBar()):
                handler()

        action.triggered.connect(run)
        self._tips[name] = tip
        self.actions[name] = action
        self.bar.addAction(action)
        self.menu.addAction(action)
        self.iface.registerMainWindowAction(action, "")

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
        self.bar.addWidget(box)
        return box

    def _watch(self):
        for signal, slot in (
            (self.project.readProject, self._soon),
            (self.project.cleared, self._soon),
            (self.project.layersAdded, self._soon),
            (self.project.layersRemoved, self._soon),
            (self.project.layerTreeRoot().nameChanged, self._soon),
            (self.iface.currentLayerChanged, self._layer_chosen),
            (self.iface.mapCanvas().rotationChanged, self._map_turned),
        ):
            self._connections.append((signal, signal.connect(slot)))

    def remove(self):
        """Take everything away from QGIS again."""
        self._refresh.stop()
        self._forget()
        while self._connections:
            signal, connection = self._connections.pop()
            signal.disconnect(connection)
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

    def refresh(self):
        """Look again which courses and holes the project holds."""
        with told_in(self.iface.messageBar()):
            from .courses import courses_in, place_of

            self._forget()
            self._groups = courses_in(self.project)
            if self.place not in self._groups:
                active = place_of(self._groups, self.iface.activeLayer())
                self.place = active or next(iter(self._groups), None)
            self._fill_courses()
            self._fill_holes()
            self._enable()

    def _soon(self, *_):
        """Refresh once all that is happening now has happened."""
        self._refresh.start()

    def choose_course(self, place):
        """Take another of the project's courses in hand."""
        self.place = place
        self.refresh()

    def _layer_chosen(self, layer):
        from .courses import place_of

        place = place_of(self._groups, layer)
        if place is not None and place != self.place:
            self.choose_course(place)

    def _fill_courses(self):
        self.course_box.clear()
        for place, group in self._groups.items():
            self.course_box.addItem(group.name(), place)
        if self._groups:
            self.course_box.setCurrentIndex(list(self._groups).index(self.place))
        else:
            self.course_box.addItem(tr("No course"))

    def _fill_holes(self):
        from .courses import holes_of, layer_of

        before = self.hole
        self.hole_box.clear()
        if self.place is None:
            self.hole_box.addItem(tr("No hole"))
            return
        for number, name, par in holes_of(self._groups[self.place]):
            par_text = tr("par {}").format(par) if par else ""
            self.hole_box.addItem("  ".join(filter(None, (str(number), name, par_text))), number)
        if not self.hole_box.count():
            self.hole_box.addItem(tr("No hole"))
        self.hole_box.setCurrentIndex(max(0, self.hole_box.findData(before)))
        layer = layer_of(self._groups[self.place], "hole")
        for signal in (layer.layerModified, layer.dataChanged) if layer is not None else ():
            self._edit_connections.append((layer, signal, signal.connect(self._soon)))

    def _forget(self):
        """Let go of the layer of holes watched so far."""
        from qgis.PyQt import sip

        for layer, signal, connection in self._edit_connections:
            if not sip.isdeleted(layer):
                signal.disconnect(connection)
        self._edit_connections = []

    def _enable(self):
        """What cannot be done now is off, and says why."""
        no_course = tr("There is no course in this project: start a new one, or open one.")
        no_hole = tr("The course has no hole yet: draw its line of play, or bring features in.")
        reasons = dict.fromkeys(self._tips, no_course if self.place is None else "")
        reasons["new_course"] = reasons["open_course"] = ""
        for name in ("yardwright_hole", "previous", "next", *(f"view_{view}_up" for view in _VIEWS)):
            if self.place is not None and self.hole is None:
                reasons[name] = no_hole
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
            self.hole_box.setCurrentIndex(row)
            self.show_hole()

    def turn(self, view):
        """Look at the hole in another way: ``north``, ``play`` or ``approach``."""
        before, self.view = self.view, view
        if not self.show_hole():
            self.view = before
        self._check_view()

    def show_hole(self):
        """Turn and zoom the map to the hole in hand; whether it could be done."""
        self._enable()
        with told_in(self.iface.messageBar()):
            from ..measure.hole import play_hole
            from ..model.errors import YardwrightError
            from ..store.layer_group import course_layers_of
            from ..store.reading import read_course
            from .turning import look_at

            layers = course_layers_of(self._groups[self.place])
            played = play_hole(read_course(layers), self.hole)
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

    # Other windows

    def new_course(self):
        """Ask for a new course and open it."""

        from .courses import suggested_start

        def made(results):
            self.add_course(str(results["COURSE"]))

        self.run_algorithm("startcourse", suggested_start(self.project, self.iface.mapCanvas()), made)

    def bring_in(self):
        """Ask for features to bring into the course in hand.

        Proposed is a layer that is not a course's; without one a file is asked for first.
        """
        from .courses import other_layers

        layers = other_layers(self.project, self._groups, QgsVectorLayer)
        source = layers[0] if layers else self._ask_for_source()
        if source:
            self.run_algorithm("importfeatures", {"SOURCE": source}, self._brought_in)

    def _brought_in(self, results):
        """Say what came in, and show it where the map shows none of the course yet."""
        self._reload()
        extent = self._extent()
        if extent is not None and not extent.intersects(self.iface.mapCanvas().extent()):
            self._look_at(extent)
        counts = ", ".join(f"{BY_NAME[kind].title} {count}" for kind, count in results["COUNTS"].items())
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
        images = images or other_layers(self.project, {}, QgsRasterLayer)
        image = {"IMAGE": images[0]} if images else {}
        self.run_algorithm("exportwindows", {**image, **self._folder("windows")})

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
        """Open a course in the project and take it in hand. Raises YardwrightError."""
        from ..store.course_file import open_course
        from ..store.layer_group import add_course_group, place_of_group

        layers = open_course(place)
        try:
            self.place = place_of_group(add_course_group(self.project, layers))
        finally:
            layers.close()
        self.refresh()
        extent = self._extent()
        if extent is not None:
            self._look_at(extent)

    def _look_at(self, extent):
        canvas = self.iface.mapCanvas()
        canvas.setExtent(extent)
        canvas.refresh()

    def _extent(self):
        """The extent of the course's lines of play on the map, None while there are none."""
        from .courses import layer_of

        layer = layer_of(self._groups[self.place], "hole")
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
        for node in self._groups[self.place].findLayers() if self.place in self._groups else ():
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
