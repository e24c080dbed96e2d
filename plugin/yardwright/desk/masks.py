"""What hides the ground on a date: found in the background for what the map shows, corrected with a brush.

Nothing heavy is imported before it is used.
"""

import math
import tempfile
from contextlib import contextmanager

from qgis.core import QgsCoordinateTransform, QgsCsException, QgsGeometry, QgsPointXY
from qgis.PyQt.QtCore import QObject, QTimer, pyqtSignal

from ..model.errors import YardwrightError
from .background import Work
from .dates import default_base, ground_of_course
from .words import told_in, tr

COARSEST_M = 1.2
"""What a pixel of the screen may cover, metres, for what hides the ground to be found."""
_SOON_MS = 500
_WIDER_M = 60.0
"""How far about the course’s features the looks of the dates are learnt, metres."""
_KEPT_M = 500.0
"""How far about them corrections of a date on a server are kept, metres: farther than any picture goes."""


class Masks(QObject):
    """What hides the ground on one date.

    ``date``: its id, "" for none. ``grid``: the Grid of what is shown; ``mask``: what was found on it, (h, w)
    uint8 with what was corrected, and ``corrected``, the corrections alone; None before anything is found.
    ``strokes``: those not saved yet. ``busy``, ``says``: whether it is being looked for, and what is to be
    told of that.

    Signals: ``changed`` (another mask), ``told`` (``busy`` or ``says``).
    """

    changed = pyqtSignal()
    told = pyqtSignal()

    def __init__(self, in_hand, parent=None):
        super().__init__(parent)
        self.in_hand = in_hand
        self.canvas = in_hand.iface.mapCanvas()
        self.date = ""
        self.grid = self.mask = self.corrected = None
        self.strokes, self._undone = [], []
        self.says = ""
        self._found = self._looks = self._looks_of = self._kept = None
        self._work = None
        self._on = False
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(_SOON_MS)
        self._soon.timeout.connect(self.look)

    @property
    def busy(self):
        return self._work is not None

    def follow(self, on):
        """Find what hides wherever the map looks, or no more."""
        if on == self._on:
            return
        self._on = on
        signals = (self.canvas.extentsChanged, self.canvas.rotationChanged)
        for signal in signals:
            if on:
                signal.connect(self._soon.start)
            else:
                signal.disconnect(self._soon.start)
        if on:
            self.look()
        else:
            self.stop()

    def choose(self, date_id):
        """Look at another date; what was corrected on the one before is saved."""
        if date_id != self.date:
            self.save()
            self.date = date_id
            self._found = self.mask = self.corrected = None
            self.changed.emit()
            if self._on:
                self.look()

    def forget(self):
        """The course, its dates or their places are others."""
        self.stop()
        self._found = self._looks = self._looks_of = self._kept = None
        if self._on:
            self._soon.start()

    def stop(self):
        """Look for nothing any more."""
        self._soon.stop()
        work, self._work = self._work, None
        if work is not None:
            work.stop()
        self._tell("")

    # Finding

    def look(self):
        """Find what hides the ground on the date for what the map shows."""
        self.stop()
        try:
            self._begin()
        except YardwrightError as error:
            self._tell(f"{error.what} {error.remedy}")

    def _begin(self):
        from ..guide.fetched import pixels_of

        dates = self._dates() if self.in_hand.place is not None else []
        if self.date not in [date.id for date in dates]:
            self._tell(tr("Show one date alone to see what hides the ground on it."))
            return
        self.grid = self._grid_of_map()
        self._show()
        if self.grid is None:
            self._tell(tr("Zoom in: from this far what hides the ground cannot be told."))
            return
        pixels = pixels_of(dates, self.in_hand.course())
        job = _Job(dates, pixels, self._extent(), self._metre(), self.grid, self.date)
        job.ground_of = self._ground_of()
        if self._looks_of == job.key:
            job.looks = self._looks
        self._tell(tr("Looking for what hides the ground…"))
        title = tr("What hides the ground on {}").format(self.date)
        self._work = Work(title, job.run, self._done)
        self._work.begin()

    def _done(self, work):
        if work is not self._work:
            return
        self._work = None
        self._tell("")
        with told_in(self.in_hand.iface.messageBar()):
            if isinstance(work.error, YardwrightError):
                self._tell(f"{work.error.what} {work.error.remedy}")
            elif work.error is not None:
                raise work.error
            elif work.result is not None:
                job, mask = work.result
                self._looks, self._looks_of = job.looks, job.key
                self._found = job.grid, mask
                self._show()

    def _tell(self, text):
        self.says = text
        self.told.emit()

    def _dates(self):
        """The Dates, the base first. Of those on servers only the one that is looked at is fetched, and the
        base."""
        from ..store.image_dates import dates_of, is_fetched

        dates = [date for date in dates_of(self.in_hand.course(), self.in_hand.place) if date.id]
        newest = sorted(dates, key=lambda date: date.taken, reverse=True)
        base = default_base(self.in_hand, [date.id for date in newest])
        ordered = sorted(newest, key=lambda date: date.id != base)
        return [date for date in ordered if date.id in (self.date, base) or not is_fetched(date.path)]

    def _ground_of(self):
        """A function from a Grid to what is drawn there, made of plain values."""
        from ..imagery.drawn import DrawnGround

        return DrawnGround(self.in_hand.course().features, 1 / self._metre()).ground

    def _extent(self, wider=_WIDER_M):
        """x least, y least, x greatest, y greatest of the course and so many metres about it, in its CRS."""
        crs = self.in_hand.layer("hole").crs()
        box = ground_of_course(self.in_hand, crs, wider / self._metre())
        return box.xMinimum(), box.yMinimum(), box.xMaximum(), box.yMaximum()

    def _metre(self):
        from ..store.image_dates import metres_per_unit

        return metres_per_unit(self.in_hand.course().crs)

    def _grid_of_map(self):
        """The Grid that covers what the map shows, None where the map shows too much at once.

        Its pixels lie where those of every other such grid lie, so that nothing jumps as the map moves.
        """
        from ..imagery.grid import Grid

        box = self._map_in_course()
        metre = self._metre()
        screen = self.canvas.viewport().size()
        across = math.hypot(screen.width(), screen.height())
        coarse = math.hypot(box.width(), box.height()) / across
        if coarse * metre > COARSEST_M or not across:
            return None
        row = next((one for one in self.in_hand.course().images if one.id == self.date), None)
        finest = (row.gsd_m if row is not None and row.gsd_m else 0.25) / metre
        pixel = max(coarse, finest)
        left, top = math.floor(box.xMinimum() / pixel) * pixel, math.ceil(box.yMaximum() / pixel) * pixel
        width = math.ceil((box.xMaximum() - left) / pixel)
        height = math.ceil((top - box.yMinimum()) / pixel)
        return Grid(width, height, (left, pixel, 0.0, top, 0.0, -pixel), self.in_hand.course().crs)

    def _map_in_course(self):
        """The QgsRectangle in the course's CRS about what the map shows."""
        visible = self.canvas.mapSettings().visiblePolygon()
        to_course = self._to_course()
        try:
            corners = [to_course.transform(QgsPointXY(corner)) for corner in visible]
        except QgsCsException as error:
            raise YardwrightError(
                tr("The map shows no place that the course’s system knows."), tr("Zoom to the course.")
            ) from error
        return QgsGeometry.fromPolygonXY([corners]).boundingBox()

    def _to_course(self):
        layer = self.in_hand.layer("hole")
        crs = self.canvas.mapSettings().destinationCrs()
        return QgsCoordinateTransform(crs, crs if layer is None else layer.crs(), self.in_hand.project)

    # Correcting

    def add(self, line, radius, value):
        """Paint a stroke: a line of QgsPointXY on the map, a radius in metres, what the mask is to say."""
        from ..imagery.hand_masks import Stroke

        to_course = self._to_course()
        places = [to_course.transform(place) for place in line]
        metre = self._metre()
        self.strokes.append(Stroke(tuple((p.x(), p.y()) for p in places), radius / metre, value))
        self._undone = []
        self._show()

    def can_redo(self):
        return bool(self._undone)

    def undo(self):
        """Take the last stroke back that is not saved yet."""
        if self.strokes:
            self._undone.append(self.strokes.pop())
            self._show()

    def redo(self):
        """Paint again what was taken back last."""
        if self._undone:
            self.strokes.append(self._undone.pop())
            self._show()

    def save(self):
        """Keep the strokes beside the course; how many there were. Raises YardwrightError with the strokes
        as they were."""
        count = len(self.strokes)
        if not count:
            self._undone = []
            return 0
        from ..imagery.hand_masks import grid_for_mask, keep_mask
        from ..store.image_dates import dates_of

        course = self.in_hand.course()
        date = next((one for one in dates_of(course, self.in_hand.place) if one.id == self.date), None)
        if date is None:
            raise YardwrightError(
                tr("The date “{}” is not one of the course any more.").format(self.date),
                tr("Undo what took it out of the layer “Image date”."),
            )
        strokes = [stroke.moved_back(date.move) for stroke in self.strokes]
        keep_mask(self._path(), strokes, grid_for_mask(*self._reach(date, course), course.crs))
        self.strokes, self._undone, self._kept = [], [], None
        self._show()
        return count

    def _reach(self, date, course):
        """``(bounds, pixel)`` of a Date where its file puts them; a server's has no end: about the course."""
        from ..guide.fetched import pixel_of
        from ..imagery.reach import reach_of
        from ..store.image_dates import is_fetched

        if is_fetched(date.path):
            return self._extent(_KEPT_M), pixel_of(date.id, course)
        reach = reach_of(date, course.crs)
        return reach.bounds, reach.pixel

    # What is to be seen

    def _show(self):
        """Lay what was corrected over what was found, on the grid of what the map shows."""
        self.mask = self.corrected = None
        if self.grid is not None and self.date:
            from ..imagery.hand_masks import SEEN_BY_HAND, paint

            self.corrected = self._kept_here().copy()
            paint(self.strokes, self.corrected, self.grid)
            found = self._found_here()
            self.mask = found.copy()
            by_hand = self.corrected > 0
            self.mask[by_hand] = self.corrected[by_hand] & (0xFF ^ SEEN_BY_HAND)
        self.changed.emit()

    def _kept_here(self):
        """What was corrected and saved, on the grid that is shown now; read once for each."""
        import numpy as np

        from ..imagery.hand_masks import read_mask

        move = self._move()
        wanted = self.date, self.grid, move
        if self._kept is None or self._kept[0] != wanted:
            kept = read_mask(self._path(), self.grid, move)
            nothing = np.zeros((self.grid.height, self.grid.width), np.uint8)
            self._kept = wanted, nothing if kept is None else kept
        return self._kept[1]

    def _found_here(self):
        """What was found, on the grid that is shown now; nothing where nothing was looked for yet."""
        import numpy as np

        here = np.zeros((self.grid.height, self.grid.width), np.uint8)
        if self._found is None:
            return here
        grid, mask = self._found
        if grid == self.grid:
            return mask
        g, h = self.grid.geotransform, grid.geotransform
        columns = np.floor((g[0] + (np.arange(self.grid.width) + 0.5) * g[1] - h[0]) / h[1]).astype(int)
        rows = np.floor((g[3] + (np.arange(self.grid.height) + 0.5) * g[5] - h[3]) / h[5]).astype(int)
        across = (columns >= 0) & (columns < grid.width)
        down = (rows >= 0) & (rows < grid.height)
        here[np.ix_(down, across)] = mask[np.ix_(rows[down], columns[across])]
        return here

    def _path(self):
        from ..store.date_files import file_of_date

        return file_of_date(self.in_hand.place, self.date, "hidden.tif")

    def _move(self):
        from ..store.image_dates import dates_of

        dates = dates_of(self.in_hand.course(), self.in_hand.place)
        return next(date.move for date in dates if date.id == self.date)

    def corners(self):
        """The top left, top right and bottom left corner of what is shown, QgsPointXY on the map."""
        to_course = self._to_course()
        from_course = QgsCoordinateTransform(
            to_course.destinationCrs(), to_course.sourceCrs(), self.in_hand.project
        )
        corners = self.grid.corners().tolist()
        return [from_course.transform(QgsPointXY(*corners[n])) for n in (0, 1, 3)]

    def layers(self):
        """``{kind: (h, w) bool}`` for the map."""
        from .mask_item import CLOUD, CROWN, MOVER, SEEN, SHADE

        if self.mask is None:
            return {}
        made = {kind: (self.mask & kind) > 0 for kind in (SHADE, CROWN, CLOUD, MOVER)}
        made[SEEN] = self.corrected == SEEN
        return made


class _Job:
    """What the background needs, as plain values. ``pixels``: what a pixel of each date covers, by id.
    ``looks``: the ids of the dates that can be used and the Looks, of an earlier look; None for none."""

    def __init__(self, dates, pixels, extent, metre, grid, date_id):
        self.dates, self.pixels, self.extent, self.metre = dates, pixels, extent, metre
        self.grid, self.date = grid, date_id
        self.looks = self.ground_of = None
        # What the looks depend on. The extent grows with each feature: a little more of it changes nothing.
        self.key = tuple((one.id, one.path, one.move, one.taken_utc) for one in dates)

    def run(self, progress):
        """``(itself, the mask)``."""
        from ..imagery.looking import about, look_at_all, mask_on, whole_grid
        from ..imagery.told import Told

        told = Told(progress)
        if self.looks is None:
            whole = whole_grid(self.extent, self.grid.crs)
            with self._fetched(self.dates, whole, told.narrowed(0, 0.3)) as dates:
                usable, looks = look_at_all(dates, whole, self.metre, self.ground_of, told.narrowed(0.3, 0.5))
            self.looks = [date.id for date in usable], looks
        usable, looks = self.looks
        if self.date not in usable:
            raise YardwrightError(
                tr("The image of {} shows nothing of the course, or cannot be read.").format(self.date),
                tr("Check its source in the layer “Image date”."),
            )
        chosen = [date for date in self.dates if date.id in usable]
        with self._fetched(chosen, about(self.grid, self.metre), told.narrowed(0.5, 0.7)) as dates:
            number, rest = usable.index(self.date), told.narrowed(0.7, 1)
            return self, mask_on(dates, looks, number, self.grid, self.metre, self.ground_of, rest)

    @contextmanager
    def _fetched(self, dates, grid, told):
        """The Dates as files, those of servers fetched for a Grid and gone afterwards."""
        from ..guide.fetched import fetched

        with tempfile.TemporaryDirectory(prefix="yardwright-") as aside:
            yield fetched(dates, grid, self.pixels, aside, told)
