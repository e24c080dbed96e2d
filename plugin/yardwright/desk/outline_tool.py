"""Outlines a thing by one click inside it: its margin is found in the image, shown, and taken or dropped."""

from qgis.core import (
    Qgis,
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsCsException,
    QgsGeometry,
    QgsPointXY,
    QgsRasterLayer,
    QgsRectangle,
    QgsWkbTypes,
)
from qgis.gui import QgsMapTool, QgsRubberBand
from qgis.PyQt import sip
from qgis.PyQt.QtCore import Qt, QTimer, pyqtSignal
from qgis.PyQt.QtGui import QColor

from ..model.errors import YardwrightError
from .draw_tool import add_drawn
from .editing import begin_editing
from .words import tell, told_in, tr

_DARK, _SURE, _GUESSED = QColor(20, 24, 28, 220), QColor("#ffb627"), QColor("#ff8fc7")
_TAKING = (Qt.Key.Key_Return, Qt.Key.Key_Enter)
_WIDER = (Qt.Key.Key_Plus, Qt.Key.Key_Equal)
_TIGHTER = (Qt.Key.Key_Minus, Qt.Key.Key_Underscore)
_STEP_M = 0.1
"""How much wider or tighter it becomes at a stroke, metres; half a pixel where that is more."""
_HIDDEN_FROM = 0.25
"""From this share of a margin that is guessed on, a thing counts as partly hidden."""
_TOLD_S = 8
_AFTER_MS = 60
"""So long after a search what it found is told: older versions of QGIS tell first that a task has ended, and
would lay that over it."""


class OutlineTool(QgsMapTool):
    """The map tool of one kind. in_hand: the CourseInHand. defaults: as of draw_tool.DrawTool, and
    ``date_at(place)``, ``second_date()``, functions or None.

    Signal: ``pointed``, as of DrawTool; of a proposal its corners. ``proposal``: the Traced that is shown,
    None for none.
    """

    pointed = pyqtSignal(object, object)

    def __init__(self, in_hand, kind, defaults):
        super().__init__(in_hand.iface.mapCanvas())
        self.in_hand = in_hand
        self.kind = kind
        self.defaults = defaults
        self.proposal = None
        self._layer_id = None
        self._work = None
        self._wider = 0.0
        self._polygon = None
        self._seen_in = ""
        self._bands = []
        self._hinted = False
        self._told = None
        self.setCursor(Qt.CursorShape.CrossCursor)

    # What QGIS calls

    def activate(self):
        """QGIS calls this when the tool is taken in hand."""
        super().activate()
        with told_in(self.in_hand.iface.messageBar()):
            layer = self.in_hand.layers().layers[self.kind]
            begin_editing(layer)
            self._layer_id = layer.id()
            self.canvas().destinationCrsChanged.connect(self._show)
            return
        self.canvas().unsetMapTool(self)

    def deactivate(self):
        """QGIS calls this when another tool is taken in hand."""
        if self._layer_id is not None:
            self.canvas().destinationCrsChanged.disconnect(self._show)
            self._layer_id = None
        self.drop()
        self.pointed.emit(None, [])
        super().deactivate()

    def canvasMoveEvent(self, event):
        """Follows the pointer; the figures are those of the proposal, as long as there is one."""
        self.pointed.emit(self.toMapCoordinates(event.pos()), self._corners())

    def canvasReleaseEvent(self, event):
        """A click outlines what is there; one inside the proposal takes it, a right one too."""
        place = self.toMapCoordinates(event.pos())
        if event.button() == Qt.MouseButton.RightButton:
            self.take()
        elif event.button() == Qt.MouseButton.LeftButton:
            if self.proposal is not None and self._holds(place):
                self.take()
            else:
                self.look_at(place)

    def keyPressEvent(self, event):
        """Enter takes the proposal, Esc drops it, + and - make it wider and tighter."""
        if event.key() in _TAKING:
            self.take()
        elif event.key() in (Qt.Key.Key_Escape, Qt.Key.Key_Backspace):
            self.drop()
        elif event.key() in _WIDER:
            self.widen(1)
        elif event.key() in _TIGHTER:
            self.widen(-1)
        else:
            super().keyPressEvent(event)

    def draw_as(self, how):
        """As of a DrawTool; this one knows one way only."""

    def draws_into(self, layer):
        """Whether it is this layer, None for no layer, that the tool was taken in hand for."""
        return layer is not None and layer.id() == self._layer_id

    # Looking

    def at_work(self):
        """Whether it is looking for a margin."""
        return self._work is not None

    def look_at(self, place):
        """Look, in the background, for the margin round a QgsPointXY of the map's CRS."""
        from .background import Work

        self.drop()
        with told_in(self.in_hand.iface.messageBar()):
            crs, at = self._in_course(place)
            images = self._images_at(place)
            kind = self.kind

            def work(progress):
                from ..guide.outlining import trace

                return trace([(image, move) for image, move, _ in images], at, crs, kind, progress)

            dates = [date_id for _, _, date_id in images]
            title = tr("Yardwright: outlining")

            def done(ended):
                QTimer.singleShot(_AFTER_MS, lambda: self._looked(ended, dates))

            self._work = Work(title, work, done).begin()
            self.setCursor(Qt.CursorShape.BusyCursor)

    def _in_course(self, place):
        """``(the course's CRS as text, a place of the map in it)``."""
        from ..store.reading import crs_text

        layer = self.in_hand.layers().layers[self.kind]
        to_course = QgsCoordinateTransform(self._map_crs(), layer.crs(), self.in_hand.project)
        try:
            moved = to_course.transform(place)
        except QgsCsException as error:
            raise _nowhere() from error
        return crs_text(layer.crs()), (moved.x(), moved.y())

    def _images_at(self, place):
        """``[(ImageSource, Move, id of its date or "")]`` of what the map may show at a place, top first."""
        from ..guide.rendered import as_date, image_source
        from ..imagery.moves import STAY
        from ..store.image_dates import dates_of

        dates = dates_of(self.in_hand.course(), self.in_hand.place)
        found = []
        for layer in self._layers_at(place):
            image, date = as_date(image_source(layer), dates, self.in_hand.place)
            found.append((image, STAY if date is None else date.move, "" if date is None else date.id))
        return found

    def _layers_at(self, place):
        """The raster layers that the map may show at a place, the topmost first."""
        from .dates import dates_of, rasters_of_heights

        project = self.in_hand.project
        heights = {layer.id() for layer in rasters_of_heights(project)}
        layers = [
            layer
            for layer in self.canvas().layers()
            if isinstance(layer, QgsRasterLayer) and layer.id() not in heights
        ]
        beyond = self.defaults.second_date() if self.defaults.second_date is not None else ""
        if beyond and self.defaults.date_at is not None and self.defaults.date_at(place) == beyond:
            # Beyond the divider: that date is drawn over the map, its layer need not be shown.
            shown = {date.id: date.layer_id for date in dates_of(self.in_hand)}.get(beyond)
            over = project.mapLayer(shown) if shown else None
            if over is not None:
                layers = [over, *(layer for layer in layers if layer is not over)]
        return [layer for layer in layers if layer.isValid() and self._reaches(layer, place)]

    def _reaches(self, layer, place):
        to_layer = QgsCoordinateTransform(self._map_crs(), layer.crs(), self.in_hand.project)
        try:
            at = to_layer.transform(place)
        except QgsCsException:
            return False
        return layer.extent().isEmpty() or QgsRectangle(layer.extent()).contains(at)

    def _looked(self, work, dates):
        """A search has ended: show what it found, say why it found nothing."""
        if work is not self._work:
            return  # dropped meanwhile
        self._work = None
        self.setCursor(Qt.CursorShape.CrossCursor)
        if self._layer_id is None:
            return
        with told_in(self.in_hand.iface.messageBar()):
            if work.error is not None:
                raise work.error
            if work.result is None:
                return
            self.proposal, self._wider = work.result, 0.0
            self._seen_in = dates[work.result.image]
            self._polygon = self.proposal.polygon()
            self._show()
            self._hint()

    def _hint(self):
        """Say once what can be done with a proposal, and of each what of it is doubtful."""
        said = []
        if self.proposal.remark:
            said.append(self.proposal.remark)
        if self.proposal.share_doubtful() > 0:
            said.append(tr("Where it is dashed the image shows no plain margin: look there, and reshape it."))
        if not self._hinted:
            said.append(tr("Enter takes it, Esc drops it, + and - make it wider and tighter."))
            self._hinted = True
        if said:
            bar = self.in_hand.iface.messageBar()
            self._told = bar.createMessage("Yardwright", " ".join(said))
            bar.pushWidget(self._told, Qgis.MessageLevel.Info, _TOLD_S)

    def _untell(self):
        """Take away what was said of a proposal that is gone, if it still stands there."""
        told, self._told = self._told, None
        if told is not None and not sip.isdeleted(told):
            self.in_hand.iface.messageBar().popWidget(told)

    # The proposal

    def drop(self):
        """Drop the proposal, and what is being looked for."""
        if self._work is not None:
            work, self._work = self._work, None
            work.cancel()
            self.setCursor(Qt.CursorShape.CrossCursor)
        self.proposal = self._polygon = None
        self._untell()
        self._show()

    def let_go(self):
        """Look for nothing any more, and wait until the search has ended: QGIS takes the tool away."""
        if self._work is not None:
            self._work.stop()
            self._work = None
        self.drop()

    def widen(self, steps):
        """Make the proposal so many steps wider, below 0 tighter; as tight as it can be stays as it is."""
        if self.proposal is None:
            return
        step = max(_STEP_M, 0.5 * self.proposal.pixel * self.proposal.metre)
        polygon = self.proposal.polygon(self._wider + steps * step)
        if polygon is not None:
            self._wider += steps * step
            self._polygon = polygon
            self._show()

    def take(self):
        """Make a feature of the proposal; nothing where there is none."""
        if self.proposal is None:
            return
        with told_in(self.in_hand.iface.messageBar()):
            layer = self.in_hand.layers().layers[self.kind]
            geometry = self._laid(layer.crs())
            if QgsWkbTypes.isMultiType(layer.wkbType()):
                geometry.convertToMultiType()
            seen_in = self._seen_in or self.defaults.seen_in(self._corners())
            view = self.defaults.view
            if view == "clear" and self.proposal.share_doubtful() >= _HIDDEN_FROM:
                view = "partly hidden"
                text = tr("Much of its margin is guessed, so that it is marked as partly hidden.")
                tell(self.in_hand.iface.messageBar(), text, level=Qgis.MessageLevel.Success)
            add_drawn(self.in_hand, self.kind, geometry, self.defaults, seen_in, view)
            self.drop()

    def _laid(self, crs):
        """The proposal's QgsGeometry in a CRS."""
        geometry = QgsGeometry()
        geometry.fromWkb(self._polygon.wkb)
        geometry.transform(self._way_to(crs))
        return geometry

    def _way_to(self, crs):
        plane = QgsCoordinateReferenceSystem()
        plane.createFromUserInput(self.proposal.crs)
        return QgsCoordinateTransform(plane, crs, self.in_hand.project)

    def _corners(self):
        """The proposal's corners in the map's CRS, [] without one."""
        if self.proposal is None:
            return []
        try:
            return self._laid(self._map_crs()).asPolygon()[0][:-1]
        except QgsCsException:
            return []

    def _holds(self, place):
        return self._laid(self._map_crs()).contains(place)

    def _map_crs(self):
        return self.canvas().mapSettings().destinationCrs()

    def _show(self):
        """Show the proposal: amber where the margin is seen, dashes of rose where it is guessed, both on a
        dark ground."""
        for band in self._bands:
            self.canvas().scene().removeItem(band)
        self._bands = []
        if self.proposal is None:
            return
        to_map = self._way_to(self._map_crs())
        lines = {False: [], True: []}
        for guessed, places in self.proposal.stretches(self._polygon):
            try:
                lines[guessed].append([to_map.transform(QgsPointXY(x, y)) for x, y in places.tolist()])
            except QgsCsException:  # the map's projection does not know the place
                return
        for guessed, colour, style in (
            (False, _SURE, Qt.PenStyle.SolidLine),
            (True, _GUESSED, Qt.PenStyle.DashLine),
        ):
            if lines[guessed]:
                geometry = QgsGeometry.fromMultiPolylineXY(lines[guessed])
                self._band(geometry, _DARK, 5, Qt.PenStyle.SolidLine)
                self._band(geometry, colour, 2, style)

    def _band(self, geometry, colour, width, style):
        band = QgsRubberBand(self.canvas(), QgsWkbTypes.GeometryType.LineGeometry)
        band.setColor(colour)
        band.setWidth(width)
        band.setLineStyle(style)
        band.setToGeometry(geometry, None)
        self._bands.append(band)


def _nowhere():
    return YardwrightError(
        tr("This place lies outside the course’s coordinate reference system."),
        tr("Click on the course, or check the CRS of the project."),
    )
