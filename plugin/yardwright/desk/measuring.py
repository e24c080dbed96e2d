"""A course's holes measured one at a time, as they are asked for, and kept until the course changes."""

from dataclasses import dataclass

from ..measure.course import measure_course
from ..measure.hole import CourseIndex, play_hole
from ..model.errors import YardwrightError


@dataclass(frozen=True)
class MeasuredHole:
    """A hole laid out (``played``: PlayedHole or None) and measured (``measures``: rows.Measures)."""

    hole: object
    played: object
    measures: object


class MeasuredHoles:
    """The holes of one model Course. Nothing here knows QGIS.

    open_terrain: a function that gives an imagery.terrain.Terrain to be closed, None without heights.
    ``trouble``: the YardwrightError that heights have met with; the holes are measured without them then.
    """

    def __init__(self, course, open_terrain=None):
        self.course = course
        self.open_terrain = open_terrain
        self.trouble = None
        self._index = CourseIndex(course)
        self._known = {}

    def knows(self, number):
        """Whether a hole has been measured already."""
        return number in self._known

    def hole(self, number):
        """The MeasuredHole of a number that is in the course."""
        if number not in self._known:
            self._known[number] = MeasuredHole(
                self.course.hole(number),
                play_hole(self.course, number, self._index),
                self.measure((number,)),
            )
        return self._known[number]

    def measure(self, numbers=None, progress=None):
        """The rows.Measures of holes, of all where none is named; as ``measure_course``."""
        if self.open_terrain is not None and self.trouble is None:
            try:
                with self.open_terrain() as terrain:
                    return measure_course(self.course, numbers, progress, self._index, terrain)
            except YardwrightError as error:
                self.trouble = error
        return measure_course(self.course, numbers, progress, self._index)

    def tee_sets(self, numbers):
        """The names of the tee sets of the course and of the holes given, in order of play."""
        names = dict.fromkeys(tee_set.name for tee_set in self.course.tee_sets)
        for number in numbers:
            for row in self.hole(number).measures.lengths:
                names.setdefault(row.tee_set)
        return list(names)


@dataclass(frozen=True)
class Shown:
    """What a row is about: ``fids`` of features of a ``kind``, or a ``point`` (x, y) in the hole's frame."""

    kind: str = ""
    fids: tuple = ()
    point: object = None


def thing_of(row, played):
    """What a row of any table is about, as Shown; None when nothing of it is drawn."""
    name = type(row).__name__
    if name == "DistanceRow":
        return Shown(row.kind, (row.feature_id,))
    if name == "MarkerRow":
        return Shown("marker", tuple(int(fid) for fid in row.marker_id.split("+")))
    if played is None:
        return None
    if name == "GreenRow":
        return None if played.green is None else Shown("green", (played.green.feature.fid,))
    tee = next((tee for tee in played.tees if tee.tee_set == row.tee_set), None)
    if tee is None:
        return None
    if name in ("LengthRow", "HeightRow"):
        return Shown(tee.feature.kind, (tee.feature.fid,))
    station = row.turn_station if name == "DoglegRow" else row.station
    return None if station is None else Shown(point=tuple(tee.line.at(station)))
