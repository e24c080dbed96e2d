"""Draws one kind of thing on the map: QGIS's own capturing, and what can be told is filled in.

Snapping, the advanced digitising panel, Backspace, Esc and the right click are QGIS's own.
"""

from qgis.core import Qgis, QgsCoordinateTransform, QgsGeometry, QgsPointXY, QgsVectorLayerUtils, QgsWkbTypes
from qgis.gui import QgsMapToolCapture, QgsMapToolDigitizeFeature, QgsRubberBand
from qgis.PyQt.QtCore import pyqtSignal
from qgis.PyQt.QtGui import QColor

from ..compat import capture_streaming
from ..model.kinds import BY_NAME
from .editing import begin_editing, checked, one_step
from .words import tell, told_in, tr

HOWS = ("clicks", "curve", "stream")
"""How a line or an outline is drawn: straight from click to click, smooth through the clicks, or along the
moving pointer."""
_MODES = {
    "Point": QgsMapToolCapture.CaptureMode.CapturePoint,
    "LineString": QgsMapToolCapture.CaptureMode.CaptureLine,
    "Polygon": QgsMapToolCapture.CaptureMode.CapturePolygon,
}


class DrawTool(QgsMapToolDigitizeFeature):
    """The map tool of one kind.

    in_hand: the CourseInHand. defaults: an object with ``seen_in(places)`` and ``view``, what is drawn from,
    ``patch_from(places)``, the date that a patch takes, and ``ask_tee_set()``, which returns the tee set in
    hand, asked for once, or None when nobody will say.

    Signal: ``pointed`` (the pointer's place on the map after snapping, QgsPointXY, None when the tool is
    laid down, and what would be drawn were it clicked there: places in the map's CRS, [] while nothing is
    begun).
    """

    pointed = pyqtSignal(object, object)

    def __init__(self, in_hand, kind, defaults):
        super().__init__(
            in_hand.iface.mapCanvas(), in_hand.iface.cadDockWidget(), _MODES[BY_NAME[kind].geometry]
        )
        self.in_hand = in_hand
        self.kind = kind
        self.defaults = defaults
        self._how = "clicks"
        self._layer_id = None
        self._needed = set()
        self._watch = None
        self._band = None
        self.digitizingCompleted.connect(self._completed)

    # How it is drawn

    def draw_as(self, how):
        """Draw from now on by one of HOWS; what is drawn so far is kept."""
        self._how = how
        if self.isActive():
            capture_streaming(self, how == "stream")
        self._show_curve(None)

    def activate(self):
        """QGIS calls this when the tool is taken in hand."""
        with told_in(self.in_hand.iface.messageBar()):
            layer = self.in_hand.layers().layers[self.kind]
            begin_editing(layer)
            self._layer_id = layer.id()
            self.setLayer(layer)
            current = self.canvas().currentLayer()
            self._needed = {layer.id(), "" if current is None else current.id()}
            super().activate()
            if self._watch is None:
                self._watch = self.in_hand.project.layersWillBeRemoved.connect(self._layers_go)
            capture_streaming(self, self._how == "stream")
            return
        self.in_hand.iface.mapCanvas().unsetMapTool(self)

    def deactivate(self):
        """QGIS calls this when another tool is taken in hand."""
        self._show_curve(None)
        self.pointed.emit(None, [])
        if self._watch is not None:
            self.in_hand.project.layersWillBeRemoved.disconnect(self._watch)
            self._watch = None
        super().deactivate()

    def _layers_go(self, layer_ids):
        """Be laid down before the layer goes that was the current one: QGIS makes it that again afterwards,
        without a look whether it is still there."""
        if self._needed.intersection(layer_ids):
            self.canvas().unsetMapTool(self)

    def cadCanvasMoveEvent(self, event):
        """Follows the pointer; ``event`` is a QgsMapMouseEvent that is snapped already."""
        super().cadCanvasMoveEvent(event)
        self._point(event.mapPoint())

    def cadCanvasReleaseEvent(self, event):
        """A click; the right one ends a line or an outline."""
        super().cadCanvasReleaseEvent(event)
        self._point(event.mapPoint())

    def keyPressEvent(self, event):
        """Backspace takes the last click back, Esc gives up: after either the curve is another."""
        super().keyPressEvent(event)
        self._show_curve(None)

    def draws_into(self, layer):
        """Whether it is this layer, None for no layer, that the tool was taken in hand for."""
        return layer is not None and layer.id() == self._layer_id

    def clicked(self):
        """The places clicked so far, in the map's CRS."""
        if self.mode() == QgsMapToolCapture.CaptureMode.CapturePoint or not self.size():
            return []
        to_map = self._to_map()
        return [to_map.transform(point.x(), point.y()) for point in self.pointsZM()]

    def _corners(self, geometry):
        """The corners of what was drawn, in the map's CRS; the one that closes an outline counts once."""
        to_map = self._to_map()
        corners = [to_map.transform(point.x(), point.y()) for point in geometry.vertices()]
        return corners[:-1] if geometry.type() == QgsWkbTypes.GeometryType.PolygonGeometry else corners

    def _to_map(self):
        crs = self.canvas().mapSettings().destinationCrs()
        layer = self.in_hand.layer(self.kind)
        return QgsCoordinateTransform(crs if layer is None else layer.crs(), crs, self.in_hand.project)

    def _point(self, place):
        places = self.clicked()
        outline = [*places, place] if places else []
        if outline and self._how == "curve":
            outline = _smooth(outline, self.mode() == QgsMapToolCapture.CaptureMode.CapturePolygon)
            self._show_curve(outline)
        else:
            self._show_curve(None)
        self.pointed.emit(place, outline)

    def _show_curve(self, curve):
        """Show the smooth curve as it would become; None shows none."""
        if curve is None:
            if self._band is not None:
                self.canvas().scene().removeItem(self._band)
                self._band = None
            return
        if self._band is None:
            self._band = QgsRubberBand(self.canvas(), QgsWkbTypes.GeometryType.LineGeometry)
            self._band.setColor(QColor("#ffb627"))
            self._band.setSecondaryStrokeColor(QColor(20, 24, 28, 200))
            self._band.setWidth(2)
        self._band.setToGeometry(QgsGeometry.fromPolylineXY(curve), None)

    # What was drawn

    def _completed(self, feature):
        self._show_curve(None)
        with told_in(self.in_hand.iface.messageBar()):
            geometry = QgsGeometry(feature.geometry())
            corners = self._corners(geometry)
            of_patch = self.kind == "patch"
            seen_in = self.defaults.patch_from(corners) if of_patch else self.defaults.seen_in(corners)
            if self._how == "curve":
                geometry = _smoothed(geometry)
            add_drawn(self.in_hand, self.kind, geometry, self.defaults, seen_in, self.defaults.view)
            if of_patch:
                text = tr("Here a composite takes {}.").format(seen_in)
                tell(self.in_hand.iface.messageBar(), text, level=Qgis.MessageLevel.Success)
            if not geometry.isGeosValid():
                tell(
                    self.in_hand.iface.messageBar(),
                    tr("The outline crosses itself, so that it cannot be measured as it is."),
                    tr("Undo it, or move its corners with the vertex tool."),
                )


def add_drawn(in_hand, kind, geometry, defaults, seen_in, view):
    """Put a geometry in the course's CRS into the layer of its kind, in one step, with all that can be told.

    defaults: as of DrawTool. seen_in, view: of what it was drawn from. Raises YardwrightError.
    """
    from shapely import wkb

    from ..measure.filling import fill_in

    course = in_hand.course()
    names = {field.name for field in BY_NAME[kind].fields}
    tee_set = defaults.ask_tee_set() if "tee_set" in names else ""
    filled = fill_in(
        course,
        kind,
        wkb.loads(bytes(geometry.asWkb())),
        in_hand.hole,
        tee_set=tee_set or "",
        seen_in=seen_in,
        view=view,
        index=in_hand.index(),
    )
    layer = in_hand.layer(kind)
    places = {name: layer.fields().lookupField(name) for name in filled.fields}
    values = {places[name]: value for name, value in filled.fields.items() if places[name] >= 0}
    with one_step(tr("Draw: {}").format(layer.name()), layer):
        if filled.row is not None:
            checked(layer.changeGeometry(filled.row, geometry), layer)
            given = {place: value for place, value in values.items() if value is not None}
            checked(layer.changeAttributeValues(filled.row, given), layer)
        else:
            new = QgsVectorLayerUtils.createFeature(layer, geometry, values)
            checked(layer.addFeature(new), layer)
    if kind == "hole":
        in_hand.look_for_holes()
        in_hand.choose_hole(filled.holes[0])


def _smooth(places, closed):
    from ..model.curves import smooth_through

    curve = smooth_through([(place.x(), place.y()) for place in places], closed)
    return [QgsPointXY(x, y) for x, y in curve.tolist()]


def _smoothed(geometry):
    """A line or an outline with a smooth curve through its corners; a point as it is."""
    if geometry.type() == QgsWkbTypes.GeometryType.LineGeometry:
        return QgsGeometry.fromPolylineXY(_smooth(geometry.asPolyline(), False))
    if geometry.type() == QgsWkbTypes.GeometryType.PolygonGeometry:
        return QgsGeometry.fromPolygonXY([_smooth(ring, True) for ring in geometry.asPolygon()])
    return geometry
