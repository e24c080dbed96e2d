"""Two dates compared: one beside the other under a divider on the map, one in place of the other, or the
second in a view of its own that moves with the map.

Nothing here touches the project: the second date is drawn from a copy of the map's settings.
"""

from functools import partial

from qgis.core import QgsMapRendererParallelJob, QgsMapSettings, QgsProject, QgsRasterLayer, QgsRectangle
from qgis.gui import QgsDockWidget, QgsMapCanvas, QgsMapCanvasItem, QgsMapToolPan, QgsMapToolZoom
from qgis.PyQt.QtCore import QEvent, QObject, QPointF, QRectF, Qt, QTimer, pyqtSignal
from qgis.PyQt.QtGui import QColor, QFontMetricsF, QPainter, QPen, QPolygonF, QTransform

from .words import tr

GRIP_LONG, GRIP_SHORT = 27.0, 16.0
"""Half the length of the divider's handle across the divider, and half its width along it, pixels."""
_FROM_EDGE = 58
_REACH = 5
"""How far beside the divider and its handle the mouse still takes hold of them, pixels."""
_EDGE = 0.02
"""The share of the map at either end that the divider does not enter: it must be seen to be fetched back."""
STEP = 0.02
"""How far a stroke of a key moves the divider, as a share of the map."""
_DARK = QColor(24, 32, 40)
_SHADE = QColor(24, 32, 40, 110)
_PILL = QColor(24, 32, 40, 205)
_LIGHT = QColor(255, 255, 255)
_TAKEN = QColor(0, 92, 168)


def layers_with(layers, dates, seconds):
    """A map's layers, topmost first, with the rasters ``seconds`` in the place of all that show a date.

    dates: ids of the layers that show one. Without one on the map they lie above the other rasters, beneath
    everything else. [] without ``seconds``.
    """
    if not seconds:
        return []
    place = next((n for n, one in enumerate(layers) if one.id() in dates), None)
    if place is None:
        place = next((n for n, one in enumerate(layers) if isinstance(one, QgsRasterLayer)), len(layers))
    above = [one for one in layers[:place] if one.id() not in dates]
    below = [one for one in layers[place:] if one.id() not in dates]
    return [*above, *seconds, *below]


class SecondPicture(QObject):
    """The map drawn once more with other layers, once each time QGIS draws the map.

    ``image``: a QImage, None until one is drawn. ``settings``: the QgsMapSettings it was drawn with.
    ``wanted``: whether anybody looks; while nobody does a change of the map only drops the image.
    """

    drawn = pyqtSignal()

    def __init__(self, canvas, layers, parent=None):
        """layers: a function that gives the layers to draw, topmost first, [] for none."""
        super().__init__(parent)
        self.canvas, self.layers = canvas, layers
        self.image = self.settings = None
        self.wanted = False
        self._job = None
        self._ending = []
        self._progress = QTimer(self)
        self._progress.setInterval(250)
        self._progress.timeout.connect(self._show_so_far)
        self._connections = [
            (signal, signal.connect(slot))
            for signal, slot in (
                (canvas.renderStarting, self.map_changed),
                (QgsProject.instance().layersWillBeRemoved, self._wait),
            )
        ]

    def let_go(self):
        """Stop drawing and listen to nothing any more."""
        _disconnect(self._connections)
        self.wanted = False
        self._wait()
        self.image = self.settings = None

    def want(self, wanted):
        """Say whether anybody looks; what is lacking is drawn then."""
        self.wanted = wanted
        if wanted and self.image is None and self._job is None:
            self._begin()

    def map_changed(self):
        """Draw again. What was drawn stays until then, for it still shows where it shows."""
        if self.wanted:
            self._begin()
        else:
            self.forget()

    def forget(self):
        """What was drawn is of no use any more."""
        self._cancel()
        self.image = self.settings = None

    def again(self):
        """Other layers are to be drawn: nothing is shown until they are."""
        self.forget()
        if self.wanted:
            self._begin()
        self.drawn.emit()

    @property
    def busy(self):
        """Whether it is being drawn now."""
        return self._job is not None

    def _begin(self):
        self._cancel()
        layers = self.layers()
        if not layers or not self.canvas.mapSettings().hasValidSettings():
            self.image = self.settings = None
            self.drawn.emit()
            return
        settings = QgsMapSettings(self.canvas.mapSettings())
        settings.setLayers(layers)
        # The job belongs to Qt: Python must not delete it while it tells that it has finished.
        job = QgsMapRendererParallelJob(settings)
        job.setParent(self)
        job.finished.connect(partial(self._finished, job))
        self._job = job
        self._progress.start()
        job.start()

    def _cancel(self):
        self._progress.stop()
        job, self._job = self._job, None
        if job is not None:
            self._ending.append(job)
            job.cancelWithoutBlocking()

    def _wait(self, *_):
        """Until nothing is being drawn: layers are about to go."""
        self._cancel()
        for job in list(self._ending):
            job.cancel()

    def _finished(self, job):
        if job is self._job:
            self._progress.stop()
            self._job = None
            self.image, self.settings = job.renderedImage(), QgsMapSettings(job.mapSettings())
            self.drawn.emit()
        elif job in self._ending:
            self._ending.remove(job)
        job.deleteLater()

    def _show_so_far(self):
        """Slow images come in bit by bit, as on the map itself, once none of the older picture is of use."""
        if self._job is not None and self.image is None:
            self.image, self.settings = self._job.renderedImage(), QgsMapSettings(self._job.mapSettings())
            self.drawn.emit()
            self.image = None


class Overlay(QgsMapCanvasItem):
    """A picture laid over the map, beyond a divider or everywhere; under all that is drawn by hand.

    ``divider``: where it stands, 0 to 1 of the map's width (``across``) or height; None without one.
    ``whole``: the picture covers all of the map. ``titles``: what each side shows. ``named``: the first of
    them stands on a map that is not divided. ``pointed``: whether the mouse is where it can take hold of the
    divider.
    """

    def __init__(self, canvas):
        super().__init__(canvas)
        self.canvas = canvas
        self.divider = None
        self.across = True
        self.whole = self.named = False
        self.titles = ("", "")
        self.pointed = False
        self._image = self._settings = None
        self._placed = QTransform()
        self.setZValue(-5)  # QGIS's own map lies at -10, rubber bands at 0 and above
        self.updatePosition()

    def lay(self, image, settings):
        """Show a QImage that was drawn with these QgsMapSettings; None for none."""
        self._image, self._settings = image, settings
        self.updatePosition()

    def far_side(self):
        """The part of the map, in pixels, that shows the picture."""
        area = self.boundingRect()
        if not self.whole and self.divider is not None:
            if self.across:
                area.setLeft(self._line())
            else:
                area.setTop(self._line())
        return area

    def grip(self):
        """The divider's handle, a QRectF in pixels."""
        area = self.boundingRect()
        if self.across:
            middle = QPointF(self._line(), area.height() - min(_FROM_EDGE, area.height() / 2))
            half_width, half_height = GRIP_LONG, GRIP_SHORT
        else:
            middle = QPointF(area.width() - min(_FROM_EDGE, area.width() / 2), self._line())
            half_width, half_height = GRIP_SHORT, GRIP_LONG
        return QRectF(middle.x() - half_width, middle.y() - half_height, 2 * half_width, 2 * half_height)

    def is_near(self, place, whole_line):
        """Whether the mouse at a place in pixels takes hold: of the handle, or anywhere of the divider."""
        if self.grip().adjusted(-_REACH, -_REACH, _REACH, _REACH).contains(place):
            return True
        return whole_line and abs((place.x() if self.across else place.y()) - self._line()) <= _REACH

    def _line(self):
        area = self.boundingRect()
        return round((area.width() if self.across else area.height()) * self.divider)

    # What QGIS asks of it

    def boundingRect(self):
        size = self.canvas.viewport().size()
        return QRectF(0, 0, size.width(), size.height())

    def updatePosition(self):
        """Move, stretch and turn the picture with the map until it is drawn anew."""
        self.prepareGeometryChange()
        if self._settings is not None:
            of_picture = self._settings.mapToPixel()
            size = self._settings.outputSize()
            here = [
                self.toCanvasCoordinates(of_picture.toMapCoordinates(x, y))
                for x, y in ((0, 0), (size.width(), 0), (0, size.height()))
            ]
            right, down = here[1] - here[0], here[2] - here[0]
            values = (
                right.x() / size.width(),
                right.y() / size.width(),
                down.x() / size.height(),
                down.y() / size.height(),
                here[0].x(),
                here[0].y(),
            )
            still = all(abs(a - b) < 1e-6 for a, b in zip(values[:4], (1, 0, 0, 1)))
            # Pixel on pixel while nothing moved, for a rounding would blur it.
            self._placed = (
                QTransform(1, 0, 0, 1, round(values[4]), round(values[5])) if still else QTransform(*values)
            )
        self.update()

    def paint(self, painter, option=None, widget=None):
        area = self.far_side()
        if self._image is not None and (self.whole or self.divider is not None):
            painter.save()
            painter.setClipRect(area)
            painter.setTransform(self._placed, True)
            painter.drawImage(QPointF(0, 0), self._image)
            painter.restore()
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if self.divider is not None and not self.whole:
            self._paint_divider(painter)
        elif self.whole or self.named:
            at = QPointF(area.width() / 2, area.height() - _FROM_EDGE)
            self._pill(painter, self.titles[1 if self.whole else 0], at, 0, area)
        painter.restore()

    def _paint_divider(self, painter):
        area, at, grip = self.boundingRect(), self._line(), self.grip()
        ends = (
            (QPointF(at, 0), QPointF(at, area.height()))
            if self.across
            else (QPointF(0, at), QPointF(area.width(), at))
        )
        # A dark line in a light casing with a shade about it: one of the three stands out on any ground.
        for colour, width in ((_SHADE, 8), (_LIGHT, 5.5), (_TAKEN if self.pointed else _DARK, 2.5)):
            painter.setPen(QPen(colour, width))
            painter.drawLine(*ends)
        self._paint_titles(painter, area, grip)
        self._paint_grip(painter, grip)

    def _paint_titles(self, painter, area, grip):
        near, far = QRectF(area), self.far_side()
        middle = grip.center()
        if self.across:
            near.setRight(far.left())
            for sign, title, side in ((-1, self.titles[0], near), (1, self.titles[1], far)):
                self._pill(painter, title, middle + QPointF(sign * (GRIP_LONG + 10), 0), sign, side)
        else:
            near.setBottom(far.top())
            for sign, title, side in ((-1, self.titles[0], near), (1, self.titles[1], far)):
                at = QPointF(grip.right(), middle.y() + sign * (GRIP_LONG + 22))
                self._pill(painter, title, at, -1, side)

    def _paint_grip(self, painter, grip):
        """A rounded handle: arrows in the directions of the drag, and ridges as on a thing to be held."""
        ground, ink = (_TAKEN, _LIGHT) if self.pointed else (_LIGHT, _DARK)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(_SHADE)
        painter.drawRoundedRect(grip.adjusted(-3, -3, 3, 3), GRIP_SHORT + 3, GRIP_SHORT + 3)
        painter.setPen(QPen(_DARK if not self.pointed else _LIGHT, 2))
        painter.setBrush(ground)
        painter.drawRoundedRect(grip, GRIP_SHORT, GRIP_SHORT)
        painter.save()
        painter.translate(grip.center())
        if not self.across:
            painter.rotate(90)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(ink)
        for sign in (-1, 1):
            arrow = ((sign * 21, 0), (sign * 12, -6.5), (sign * 12, 6.5))
            painter.drawPolygon(QPolygonF([QPointF(x, y) for x, y in arrow]))
        painter.setPen(QPen(ink, 2))
        for x in (-5, 0, 5):
            painter.drawLine(QPointF(x, -6.5), QPointF(x, 6.5))
        painter.restore()

    def _pill(self, painter, text, at, side, room):
        """A text on a dark ground, to the left of a place (-1), to its right (1) or in its middle (0).

        room: the QRectF it must fit into, for half a title would be read as another date.
        """
        if not text:
            return
        font = self.canvas.font()
        font.setBold(True)
        size = QFontMetricsF(font).size(0, text)
        width, height = size.width() + 18, size.height() + 8
        left = at.x() + {-1: -width, 0: -width / 2, 1: 0}[side]
        box = QRectF(left, at.y() - height / 2, width, height)
        if not room.contains(box):
            return
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(_PILL)
        painter.drawRoundedRect(box, height / 2, height / 2)
        painter.setFont(font)
        painter.setPen(_LIGHT)
        painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)


class Comparison(QObject):
    """The second date on the map: beyond a divider (``swipe``), or everywhere while it is ``held``.

    The divider is dragged by its handle, and anywhere while the map's tool only moves the map; every other
    click goes to that tool as ever. ``divider``: where it stands, 0 to 1 of the map; ``moved`` tells of it.
    """

    moved = pyqtSignal()

    def __init__(self, canvas, layers, parent=None):
        """layers: a function that gives the map's layers with the second date, [] for none."""
        super().__init__(parent)
        self.canvas = canvas
        self.picture = SecondPicture(canvas, layers, self)
        self.picture.drawn.connect(self._show)
        self.overlay = None
        self.swiping = self.held = self.named = False
        self._across, self._at = True, 0.5
        self._titles = ("", "")
        self._pointed = False
        self._held_at = None

    def let_go(self):
        """Leave the map as it was found."""
        self.swipe(False)
        self.hold(False)
        self.name(False)
        self.picture.let_go()

    def swipe(self, on, across=None):
        """Divide the map, or no more. across: whether the dates stand left and right, or above and below."""
        if across is not None:
            self._across = across
        if on != self.swiping:
            self.swiping = on
            if on:
                self.canvas.viewport().installEventFilter(self)
            else:
                self.canvas.viewport().removeEventFilter(self)
                self._held_at = None
                self._point(False)
        self._show()

    @property
    def across(self):
        """Whether the dates stand left and right of the divider, and not above and below."""
        return self._across

    @property
    def divider(self):
        """Where the divider stands or would stand, as a share of the map's width or height."""
        return self._at

    def move_to(self, at):
        """Set the divider to a share of the map; it stays in sight."""
        at = min(1 - _EDGE, max(_EDGE, at))
        if at != self._at:
            self._at = at
            self._show()
            self.moved.emit()

    def hold(self, on):
        """Show the second date everywhere, or no more."""
        self.held = on
        self._show()

    def name(self, on):
        """Have the map say what it shows also while it is not divided, or no more."""
        self.named = on
        self._show()

    def set_titles(self, first, second):
        """What the two sides are called."""
        self._titles = (first, second)
        self._show()

    def shows_second_at(self, place):
        """Whether a QgsPointXY in the map's CRS lies where the second date is to be seen."""
        if not (self.swiping or self.held):
            return False
        return self.overlay.far_side().contains(self.overlay.toCanvasCoordinates(place))

    def _show(self):
        looked_at = self.swiping or self.held
        wanted = looked_at or self.named
        if wanted and self.overlay is None:
            self.overlay = Overlay(self.canvas)
        elif not wanted and self.overlay is not None:
            self.canvas.scene().removeItem(self.overlay)
            self.overlay = None
        self.picture.wanted = looked_at
        if self.overlay is not None:
            self.overlay.divider = self._at if self.swiping else None
            self.overlay.across, self.overlay.whole = self._across, self.held
            self.overlay.named = self.named
            self.overlay.titles, self.overlay.pointed = self._titles, self._pointed
            self.overlay.lay(self.picture.image, self.picture.settings)
            if looked_at and self.picture.image is None and not self.picture.busy and self.picture.layers():
                self.picture.want(True)

    # The divider under the mouse

    def eventFilter(self, watched, event):
        kind = event.type()
        if kind not in _MOUSE or not self.swiping or self.held:
            return False
        if kind == QEvent.Type.Leave:
            if self._held_at is None:
                self._point(False)
            return False
        place = QPointF(event.pos())
        if self._held_at is not None:
            if kind == QEvent.Type.MouseMove:
                self.move_to(self._share(place) + self._held_at)
            elif kind == QEvent.Type.MouseButtonRelease and event.button() == Qt.MouseButton.LeftButton:
                self._held_at = None
                self._point(self._near(place))
            return True
        if kind == QEvent.Type.MouseMove:
            self._point(event.buttons() == Qt.MouseButton.NoButton and self._near(place))
            return False
        taken = event.button() == Qt.MouseButton.LeftButton and self._near(place)
        if taken and kind == QEvent.Type.MouseButtonPress:
            # Held where it was taken, so that it does not jump under the mouse.
            self._held_at = self._at - self._share(place)
            self._point(True)
        return taken

    def _share(self, place):
        area = self.overlay.boundingRect()
        return place.x() / area.width() if self._across else place.y() / area.height()

    def _near(self, place):
        tool = self.canvas.mapTool()
        only_moves = tool is None or isinstance(tool, (QgsMapToolPan, QgsMapToolZoom))
        return self.overlay.is_near(place, only_moves)

    def _point(self, pointed):
        """The mouse shows that the divider can be dragged; elsewhere it looks as the map's tool wants it."""
        if pointed == self._pointed:
            return
        self._pointed = pointed
        if self.overlay is not None:
            self.overlay.pointed = pointed
            self.overlay.update()
        if pointed:
            shape = Qt.CursorShape.SplitHCursor if self._across else Qt.CursorShape.SplitVCursor
            self.canvas.viewport().setCursor(shape)
        else:
            self.canvas.viewport().unsetCursor()


_MOUSE = (
    QEvent.Type.MouseButtonPress,
    QEvent.Type.MouseButtonRelease,
    QEvent.Type.MouseButtonDblClick,
    QEvent.Type.MouseMove,
    QEvent.Type.Leave,
)


class Cross(QgsMapCanvasItem):
    """Where the mouse is on the other map: legible on bright and on dark."""

    _ARM = 11

    def __init__(self, canvas):
        super().__init__(canvas)
        self._place = None
        self.setZValue(100)
        self.hide()

    def point_at(self, place):
        """Show a QgsPointXY in the map's CRS; None for nothing."""
        self._place = place
        self.setVisible(place is not None)
        self.updatePosition()

    def boundingRect(self):
        return QRectF(-self._ARM - 2, -self._ARM - 2, 2 * self._ARM + 4, 2 * self._ARM + 4)

    def updatePosition(self):
        if self._place is not None:
            self.setPos(self.toCanvasCoordinates(self._place))

    def paint(self, painter, option=None, widget=None):
        for colour, width in ((_DARK, 4), (_LIGHT, 2)):
            painter.setPen(QPen(colour, width))
            for sign in (-1, 1):
                painter.drawLine(QPointF(sign * 3, 0), QPointF(sign * self._ARM, 0))
                painter.drawLine(QPointF(0, sign * 3), QPointF(0, sign * self._ARM))


class LinkedView(QgsDockWidget):
    """The second date in its own view, which moves, zooms and turns with the map, and the map with it."""

    def __init__(self, canvas, layers, parent=None):
        """layers: a function that gives the layers to show, topmost first."""
        super().__init__(parent)
        self.setObjectName("yardwright_second_view")
        self.canvas, self.layers = canvas, layers
        self.view = QgsMapCanvas(self)
        self.view.setObjectName("yardwright_second_map")
        self.view.setCanvasColor(canvas.canvasColor())
        self.view.setSelectionColor(canvas.selectionColor())
        self.view.enableAntiAliasing(canvas.antiAliasingEnabled())
        self.view.setParallelRenderingEnabled(True)
        self.view.setMinimumSize(120, 120)
        self.tool = QgsMapToolPan(self.view)
        self.view.setMapTool(self.tool)
        self.setWidget(self.view)
        self._matching = False
        self._size = None
        self.crosses = {canvas: Cross(canvas), self.view: Cross(self.view)}
        self.caption = Overlay(self.view)
        self.caption.named = True
        self._connections = [
            (signal, signal.connect(slot))
            for signal, slot in (
                (canvas.extentsChanged, self.follow_map),
                (canvas.rotationChanged, self.follow_map),
                (canvas.destinationCrsChanged, self.follow_map),
                (canvas.layersChanged, self.follow_layers),
                (canvas.layerStyleOverridesChanged, self.follow_layers),
                (self.view.extentsChanged, self._view_moved),
                (self.view.rotationChanged, self._view_moved),
                (canvas.xyCoordinates, self.crosses[self.view].point_at),
                (self.view.xyCoordinates, self.crosses[canvas].point_at),
                (QgsProject.instance().writeProject, self._leave_project),
            )
        ]
        for one in self.crosses:
            one.viewport().installEventFilter(self)
        self.follow_layers()
        self.follow_map()

    def let_go(self):
        """Take everything off the map."""
        _disconnect(self._connections)
        for canvas, cross in self.crosses.items():
            canvas.viewport().removeEventFilter(self)
            canvas.scene().removeItem(cross)
        self.crosses = {}
        self.view.stopRendering()
        self.view.unsetMapTool(self.tool)

    def name(self, title):
        """Say in the view and above it what it shows."""
        self.setWindowTitle(tr("Image of {}").format(title))
        self.caption.titles = (title, "")
        self.caption.update()

    def _leave_project(self, page):
        """Take out of a project that is being saved what every QgsMapCanvas writes there of itself."""
        maps = page.elementsByTagName("mapcanvas")
        for one in [maps.at(n).toElement() for n in range(maps.count())]:
            if one.attribute("name") == self.view.objectName():
                one.parentNode().removeChild(one)

    def follow_layers(self):
        """Show what the map shows, with the second date."""
        self.view.setLayers(self.layers())
        self.view.setLayerStyleOverrides(self.canvas.layerStyleOverrides())
        self.view.refresh()

    def follow_map(self, *_):
        """Look where the map looks: the same middle, scale and turn."""
        self._match(self.view, self.canvas)

    def _view_moved(self, *_):
        # A view that became larger or smaller has not been moved by anybody.
        if self._size != self.view.size():
            self.follow_map()
        else:
            self._match(self.canvas, self.view)

    def _match(self, one, other):
        """Move ``one`` to where ``other`` is. What it tells while it moves is no news."""
        if self._matching or not other.mapSettings().hasValidSettings():
            return
        self._matching = True
        try:
            self._size = self.view.size()
            if one.mapSettings().destinationCrs() != other.mapSettings().destinationCrs():
                one.setDestinationCrs(other.mapSettings().destinationCrs())
            if _alike(one, other):
                return
            size, unit, middle = one.mapSettings().outputSize(), other.mapUnitsPerPixel(), other.center()
            half_width, half_height = size.width() * unit / 2, size.height() * unit / 2
            one.freeze(True)
            try:
                one.setRotation(other.rotation())
                one.setExtent(
                    QgsRectangle(
                        middle.x() - half_width,
                        middle.y() - half_height,
                        middle.x() + half_width,
                        middle.y() + half_height,
                    )
                )
            finally:
                one.freeze(False)
            one.refresh()
        finally:
            self._matching = False

    def eventFilter(self, watched, event):
        if event.type() == QEvent.Type.Leave:
            for canvas, cross in self.crosses.items():
                if canvas.viewport() is not watched:
                    cross.point_at(None)
        elif event.type() == QEvent.Type.Resize and watched is self.view.viewport():
            QTimer.singleShot(0, self.follow_map)
        return False


def _alike(one, other):
    """Whether two maps look at the same middle in the same scale and turn, to a hundredth of a pixel."""
    unit = other.mapUnitsPerPixel()
    apart = one.center().distance(other.center())
    return (
        apart <= 0.01 * unit
        and abs(one.mapUnitsPerPixel() - unit) <= 1e-6 * unit
        and abs(one.rotation() - other.rotation()) < 1e-9
    )


def _disconnect(connections):
    """Take connections, ``[(signal, connection)]``, back and out of their list."""
    while connections:
        signal, connection = connections.pop()
        signal.disconnect(connection)
