"""The course, the hole and the tee set in hand: what the toolbar and all panels look at.

QGIS imports this at its start: what is heavy is imported where it is used.
"""

from functools import partial

from qgis.core import QgsProject
from qgis.PyQt.QtCore import QObject, QTimer, pyqtSignal

from .courses import courses_in, holes_of, layer_of, place_of
from .words import told_in, tr


def no_course():
    """What is said where a course is needed."""
    return tr("There is no course in this project: start a new one, or open one.")


def no_hole():
    """What is said where a hole is needed."""
    return tr("The course has no hole yet: draw its line of play, or bring features in.")


class CourseInHand(QObject):
    """What is in hand. One object of it serves all of the desk.

    ``place``: the course's place, None without one. ``hole``: the hole's number, None without one.
    ``tee_set``: the name of the tee set last chosen, "" until one is. ``event``, ``round``: the name of the
    event and the number of its round, "" and None without one.

    Signals: ``course_changed`` (another course, or other layers of it), ``hole_changed`` (another number, or
    the list of holes is another), ``edited`` (something of the course was drawn or changed, saved or not;
    several changes at once are told once), ``tee_set_changed`` and ``event_changed`` (another event or round,
    or the list of events is another).
    """

    course_changed = pyqtSignal()
    hole_changed = pyqtSignal()
    edited = pyqtSignal()
    tee_set_changed = pyqtSignal()
    event_changed = pyqtSignal()

    def __init__(self, iface, parent=None):
        super().__init__(parent)
        self.iface = iface
        self.project = QgsProject.instance()
        self.place = None
        self.hole = None
        self.tee_set = ""
        self.event = ""
        self.round = None
        self._event_row = None, None
        self.groups = {}
        self.holes = []
        self._forget_course()
        self._layer_connections = []
        self._connections = []
        self._refresh = self._timer(50, self.refresh)
        self._edited = self._timer(120, self._tell_edited)
        for signal, slot in (
            (self.project.readProject, self._soon),
            (self.project.cleared, self._soon),
            (self.project.layersAdded, self._soon),
            (self.project.layersRemoved, self._soon),
            (self.project.layerTreeRoot().nameChanged, self._soon),
            (iface.currentLayerChanged, self._layer_chosen),
        ):
            self._connections.append((signal, signal.connect(slot)))

    def _timer(self, milliseconds, slot):
        timer = QTimer(self)
        timer.setSingleShot(True)
        timer.setInterval(milliseconds)

        def run():
            with told_in(self.iface.messageBar()):
                slot()

        timer.timeout.connect(run)
        return timer

    def let_go(self):
        """Listen to nothing any more."""
        self._refresh.stop()
        self._edited.stop()
        self._forget_layers()
        while self._connections:
            signal, connection = self._connections.pop()
            signal.disconnect(connection)

    # What is in hand

    @property
    def group(self):
        """The course's QgsLayerTreeGroup, None without a course.

        A project that is closed takes its groups away before the news of it is here.
        """
        from qgis.PyQt import sip

        group = self.groups.get(self.place)
        return None if group is None or sip.isdeleted(group) else group

    def why_no_course(self):
        """Why nothing can be done without a course; "" while one is in hand."""
        return no_course() if self.place is None else ""

    def why_no_hole(self):
        """Why nothing can be done without a hole; "" while one is in hand."""
        return self.why_no_course() or (no_hole() if self.hole is None else "")

    def layer(self, kind):
        """The course's layer of a kind in the project, None when it is not there."""
        return None if self.group is None else layer_of(self.group, kind)

    def layers(self):
        """CourseLayers of the project's own layers. Raises YardwrightError when some are missing."""
        from ..model.errors import YardwrightError
        from ..store.layer_group import course_layers_of

        if self.group is None:
            raise YardwrightError(
                tr("There is no course in this project."), tr("Start a new one, or open one.")
            )
        return course_layers_of(self.group)

    def course(self):
        """The model Course as it is drawn now, unsaved edits included; read again only after an edit."""
        if self._course is None:
            from ..store.reading import read_course

            self._course = read_course(self.layers())
        return self._course

    def index(self):
        """The CourseIndex of ``course()``, which keeps the holes laid out so far."""
        if self._index is None:
            from ..measure.hole import CourseIndex

            self._index = CourseIndex(self.course())
        return self._index

    def events(self):
        """The model Events of the course, unsaved edits included; read again only after an edit."""
        if self._events is None:
            from ..store.events import read_events

            self._events = read_events(self.layers())
        return self._events

    def find_event(self, name, fid=None):
        """The model Event of a name, else the one whose row has the id ``fid``: it may have got another name,
        or its old one back. None without."""
        events = self.events() if self.group is not None else ()
        named = (one for one in events if one.name == name)
        of_row = (one for one in events if fid is not None and one.fid == fid)
        return next(named, None) or next(of_row, None)

    def event_in_hand(self):
        """The model Event of the name in hand; None without one."""
        return self.find_event(self.event) if self.event else None

    def played(self, number=None):
        """The PlayedHole of a number, of the hole in hand unless one is given; None when it is not drawn."""
        from ..measure.hole import play_hole

        number = self.hole if number is None else number
        return None if number is None else play_hole(self.course(), number, self.index())

    def measured(self):
        """The rows of the hole in hand, ``{table: [row]}``; measured again only after an edit."""
        from ..measure.course import measure_hole

        measure = partial(measure_hole, self.course(), self.hole, self.index())
        return self.kept(("measured", self.hole), measure)

    def kept(self, key, make):
        """What ``make()`` gave for a key before; made again only after an edit."""
        if key not in self._kept:
            self._kept[key] = make()
        return self._kept[key]

    # Choosing

    def choose(self, place):
        """Take another of the project's courses in hand."""
        if place != self.place:
            self.place = place
            self.refresh()

    def choose_hole(self, number):
        """Take a hole in hand."""
        if number != self.hole and number in [hole[0] for hole in self.holes]:
            self.hole = number
            self.hole_changed.emit()

    def choose_tee_set(self, name):
        """Take a tee set in hand."""
        if name != self.tee_set:
            self.tee_set = name
            self.tee_set_changed.emit()

    def choose_event(self, name, number=None):
        """Take an event in hand, and one of its rounds: the first unless another is named."""
        before = self.event, self.round
        self.event = name
        self._choose_round(number)
        if (self.event, self.round) != before:
            self.event_changed.emit()

    def choose_round(self, number):
        """Take another round of the event in hand."""
        self.choose_event(self.event, number)

    def look_for_event(self):
        """See that the event and round in hand are still there; without, take the last event in hand."""
        place, fid = self._event_row
        there = self.find_event(self.event, fid if place == self.place else None)
        if there is not None:
            self.choose_event(there.name, self.round)
        else:
            events = self.events() if self.group is not None else ()
            self.choose_event(events[-1].name if events else "")

    def _choose_round(self, number):
        event = self.event_in_hand() if self.group is not None else None
        self._event_row = self.place, None if event is None else event.fid
        numbers = [one.number for one in event.rounds] if event is not None else []
        self.round = number if number in numbers else next(iter(numbers), None)

    # Keeping up with the project

    def refresh(self):
        """Look again which courses and holes the project holds."""
        self._forget_layers()
        self.groups = courses_in(self.project)
        if self.place not in self.groups:
            active = place_of(self.groups, self.iface.activeLayer())
            self.place = active or next(iter(self.groups), None)
        self._forget_course()
        self._watch_layers()
        self.course_changed.emit()
        self._list_holes()

    def _soon(self, *_):
        """Refresh once all that is happening now has happened."""
        self._refresh.start()

    def _layer_chosen(self, layer):
        from qgis.PyQt import sip

        # Amid the closing of a project QGIS tells of a layer when the groups are gone already.
        there = {place: group for place, group in self.groups.items() if not sip.isdeleted(group)}
        place = place_of(there, layer)
        if place is not None:
            self.choose(place)

    def _list_holes(self):
        self.holes = [] if self.group is None else holes_of(self.group)
        numbers = [hole[0] for hole in self.holes]
        if self.hole not in numbers:
            self.hole = numbers[0] if numbers else None
        self.hole_changed.emit()

    def _watch_layers(self):
        for node in self.group.findLayers() if self.group is not None else ():
            layer = node.layer()
            for name in ("layerModified", "dataChanged", "afterCommitChanges", "afterRollBack"):
                signal = getattr(layer, name, None)
                if signal is not None:
                    self._layer_connections.append((layer, signal, signal.connect(self._layer_edited)))

    def _forget_layers(self):
        from qgis.PyQt import sip

        for layer, signal, connection in self._layer_connections:
            if not sip.isdeleted(layer):
                signal.disconnect(connection)
        self._layer_connections = []

    def _layer_edited(self, *_):
        # Whoever asks before the news is out gets what is drawn now all the same.
        self._forget_course()
        self._edited.start()

    def _forget_course(self):
        """Read and measure again when next asked."""
        self._course = self._index = self._events = None
        self._kept = {}

    def look_for_holes(self):
        """List the holes at once, without waiting for ``edited``."""
        before = self.holes
        self.holes = [] if self.group is None else holes_of(self.group)
        if self.holes != before:
            self._list_holes()

    def _tell_edited(self):
        self.look_for_holes()
        self.edited.emit()
