"""Where the markers of a flight stand so that a hole plays the length the committee asked for.

The place is sought on the line of play through the middle of the tee. It measures the asked length to the
green's middle, with two club-lengths of tee behind it; the asked length comes before everything else. Where
the markers of an earlier round stood too near, the place moves across the tee and keeps its length, as far as
the committee's limit asks; a tee too narrow for that keeps the markers on its middle (common practice, no
source).

The green's middle is that of the course as it is drawn: on a par 3 its approach comes from the longest tee
set, wherever the markers stand that day.
"""

import math
from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np

from ..model.event import Flight
from ..model.geometry import coordinates
from ..model.words import and_list, say
from .heights import rises
from .hole import CourseIndex, play_hole
from .line import LineOfPlay, as_point, chord_holding, chords, many_chords, middle_of_longest_chord
from .lines import SAME
from .rows import TeeSettingRow, told
from .units import YARD, to_unit, whole

TWO_CLUB_LENGTHS = 2 * 48 * 0.0254
"""The depth of the teeing area, which must be tee: Rules of Golf, definition of the teeing area; a club is no
longer than 48 in (Equipment Rules, from memory)."""

_EDGE = 1e-6
"""Metres a place stays inside the tee, so that it lies on it in every CRS."""
_SAME_LENGTH = 5e-4
"""Metres within which a length is the asked one; figures are promised to a millimetre."""
_STEP = 0.25
"""Metres between the places that are tried beside the middle line where no sum finds them."""
_CLEAR = 0.01
"""Metres by which a place may be nearer to a worn one than asked; nobody sets markers more exactly."""
_NO_MATTER = 0.5 * YARD
"""Metres of length that do not matter where the asked length cannot be had: figures are whole yards."""


def set_tees(course, event, lengths, index=None, terrain=None):
    """The rows of ``lengths`` (AskedLength), by round, flight and hole; a tuple of TeeSettingRow.

    A flight plays the tee set it names, else the one of its own name. Lengths that the event holds and
    ``lengths`` does not ask for anew count as places of earlier rounds. index: the course's CourseIndex,
    where it is measured more than once. terrain: an ``imagery.terrain.Terrain`` for the rise to the green.
    """
    index = index or CourseIndex(course)
    asked_anew = {_which(asked) for asked in lengths}
    kept = [asked for asked in event.lengths if _which(asked) not in asked_anew]
    by_round = sorted([(asked, True) for asked in lengths] + [(asked, False) for asked in kept], key=_order)
    to_row = _Setter(course, event, index)
    rows = [(to_row(asked), wanted) for asked, wanted in by_round]
    found = [row for row, wanted in rows if wanted]
    if terrain is None:
        return tuple(found)
    markers = [(row.hole, row.x, row.y) for row in found]
    return tuple(
        replace(row, rise_m=rise) for row, rise in zip(found, rises(course, index, markers, terrain))
    )


def tee_set_names(course):
    """The names of a course's tee sets: those it lists, then others that are drawn."""
    names = [tee_set.name for tee_set in course.tee_sets]
    for feature in course.features:
        if feature.kind in ("tee", "plate"):
            names += _sets_of(feature)
    first = {}
    for name in names:
        first.setdefault(_plain(name), name)
    return tuple(first.values())


def flights_of(course, names):
    """Flights of these names, each with the tee set of its own name where the course has one."""
    sets = {_plain(name): name for name in tee_set_names(course)}
    return tuple(Flight(name, sets.get(_plain(name), "")) for name in names)


def _which(asked):
    return asked.round, _plain(asked.flight), asked.hole


def _order(item):
    asked, _ = item
    return asked.round, asked.flight, asked.hole


@dataclass(frozen=True)
class _Place:
    """A place on a tee, metres in the hole's frame. aside: how far it moved to the right for the worn places.
    worn: the earlier rounds whose markers stood too near, and near: metres to the nearest of them."""

    ground: object
    point: object
    length: float
    fits: bool
    reason: str = ""
    aside: float = 0.0
    worn: tuple = ()
    near: float = None

    @cached_property
    def piece(self):
        """Tee behind the place and in front of it."""
        return self.ground.piece(self.point)


class _Setter:
    """Sets one length after the other and remembers where markers stood."""

    def __init__(self, course, event, index):
        self.course, self.event, self.index = course, event, index
        self.unit = course.settings.unit
        self.flights = {_plain(flight.name): flight for flight in event.flights}
        self.grounds = {}
        self.places = {}
        self.seen = set()

    def __call__(self, asked):
        """The row of one AskedLength; rounds must come in their order."""
        row = TeeSettingRow(
            event=self.event.name,
            round=asked.round,
            flight=asked.flight,
            hole=asked.hole,
            asked=asked.length,
            verdict="impossible",
        )
        around = self._remarks_of_round(asked)
        played, problem = self._played(asked)
        if problem:
            return replace(row, remark=told(problem, *around))
        tee_set, remark = self._tee_set(asked.flight)
        around = (*around, remark)
        tees, problem = _tees_of(played, tee_set)
        if not tees and remark:
            return replace(row, remark=told(self._no_set(asked.flight), *around[:-1]))
        if not tees:
            return replace(row, remark=told(problem, *around))
        places = [self._place(played, tee, asked) for tee in tees]
        places = [place for place in places if place is not None]
        if not places:
            return replace(row, remark=told(self._no_room(), *around, *_own(tees[0], played)))
        best = min(places, key=lambda place: _rank(place, asked.length))
        return self._row(row, played, tee_set, best, len(tees), around)

    def _remarks_of_round(self, asked):
        remarks = []
        if _which(asked) in self.seen:
            remarks.append(say("asked for more than once"))
        self.seen.add(_which(asked))
        played_round = self.event.round(asked.round)
        if self.event.rounds and played_round is None:
            remarks.append(say("the event has no round {number}", number=asked.round))
        if not self.event.plays(asked.round, asked.hole):
            remarks.append(say("the hole is not played in this round"))
        return tuple(remarks)

    def _played(self, asked):
        if not asked.length or not 0 < asked.length < math.inf:
            return None, say("no length is asked for")
        if self.course.hole(asked.hole) is None:
            return None, say("the course has no hole {number}", number=asked.hole)
        played = play_hole(self.course, asked.hole, self.index)
        if played is None:
            return None, say("no line of play is drawn")
        if played.green is None:
            small = [remark for remark in played.green_remarks if getattr(remark, "code", "") == "too_small"]
            return None, told(*small) or say("the hole has no green")
        return played, ""

    def _tee_set(self, name):
        """The tee set of a flight and a remark where the flight does not name one."""
        flight = self.flights.get(_plain(name))
        if flight is not None and flight.tee_set:
            return flight.tee_set, ""
        if flight is None:
            return name, say("the event has no flight “{name}”: the tee set of that name is taken", name=name)
        return name, say("the flight names no tee set: the one of its own name is taken")

    def _no_set(self, name):
        if _plain(name) in self.flights:
            return say("the flight names no tee set")
        return say("the event has no flight “{name}”", name=name)

    def _no_room(self):
        return say(
            "no place on the tee leaves two club-lengths ({distance}) behind it",
            distance=self._exactly(TWO_CLUB_LENGTHS),
        )

    def _exactly(self, metres):
        return f"{to_unit(metres, self.unit):.1f} {self.unit}"

    def _place(self, played, tee, asked):
        key = played.number, tee.fid
        if key not in self.grounds:
            self.grounds[key] = _Ground(played, tee)
        place = _place_on(self.grounds[key], asked.length, self._exactly)
        wear = self.event.limits.wear
        if place is None or not wear:
            return place
        earlier = [item for item in self.places.get(tee.fid, ()) if item[0] < asked.round]
        if not earlier:
            return place
        points = played.frame.to_frame(self.course.crs)([point for _, point in earlier])
        return _clear_of(place, [(number, point) for (number, _), point in zip(earlier, points)], wear)

    def _row(self, row, played, tee_set, place, tees, around):
        tee = place.ground.tee
        x, y = played.frame.from_frame(self.course.crs)([place.point])[0].tolist()
        if self.event.plays(row.round, row.hole):
            self.places.setdefault(tee.fid, []).append((row.round, (x, y)))
        from_plate = _from_plate(played, tee_set, place)
        remarks = [place.reason, self._beside_remark(place, row.asked)]
        remarks += [self._wear_remark(place), self._plate_remark(from_plate)]
        if tees > 1:
            remarks.append(say("on tee {number}, one of {count} of this set", number=tee.fid, count=tees))
        return replace(
            row,
            got=place.length,
            x=x,
            y=y,
            from_front=place.piece[1],
            behind=place.piece[0],
            verdict="fits" if place.fits else "nearest",
            from_plate=from_plate,
            remark=told(*remarks, *place.ground.remarks, *around, *_own(tee, played)),
        )

    def _beside_remark(self, place, asked):
        """Where else the tee would hold the length: one that lies askew to the line of play may."""
        aside = None if place.fits else place.ground.beside(asked)
        if aside is None:
            return ""
        distance = f"{max(1, whole(abs(to_unit(aside, self.unit))))} {self.unit}"
        if aside > 0:
            return say("the tee holds the asked length about {distance} to the right", distance=distance)
        return say("the tee holds the asked length about {distance} to the left", distance=distance)

    def _wear_remark(self, place):
        if not place.worn:
            return ""
        rounds = and_list([str(number) for number in sorted(set(place.worn))])
        if place.near is not None:
            return say(
                "{distance} from the markers of round {rounds}: the tee is too narrow to stay clear of them",
                distance=self._exactly(place.near),
                rounds=rounds,
            )
        distance = self._exactly(abs(place.aside))
        if place.aside > 0:
            return say(
                "{distance} to the right, clear of the markers of round {rounds}",
                distance=distance,
                rounds=rounds,
            )
        return say(
            "{distance} to the left, clear of the markers of round {rounds}",
            distance=distance,
            rounds=rounds,
        )

    def _plate_remark(self, from_plate):
        if from_plate is None:
            return ""
        figure = whole(abs(to_unit(from_plate, self.unit)))
        if not figure:
            return say("level with the plate")
        distance = f"{figure} {self.unit}"
        if from_plate > 0:
            return say("{distance} behind the plate", distance=distance)
        return say("{distance} ahead of the plate", distance=distance)


def _plain(name):
    return name.strip().casefold()


def _own(tee, played):
    """What is doubtful of the tee and the line themselves."""
    return (tee.remark, *played.line_remarks)


def _sets_of(feature):
    """The tee sets that a tee or a plate serves."""
    return [name.strip() for name in str(feature.get("tee_set", "")).split(",") if name.strip()]


def _serves(feature, tee_set):
    return _plain(tee_set) in map(_plain, _sets_of(feature))


def _tees_of(played, tee_set):
    """The tees of a set on a hole, the largest first, and the reason where there are none.

    A set of which only a plate is drawn stands on the tee its plate stands on.
    """
    drawn = [f for f in played.features if f.kind == "tee"]
    tees = [f for f in drawn if _serves(f, tee_set)]
    if not tees:
        plates = [f.geometry for f in played.features if f.kind == "plate" and _serves(f, tee_set)]
        tees = [f for f in drawn if any(f.geometry.covers(plate) for plate in plates)]
    if not tees:
        return [], say("no tee of the set “{name}” is drawn on this hole", name=tee_set)
    return sorted(tees, key=_largest), ""


def _largest(tee):
    return -tee.geometry.area, tee.fid or 0


def _rank(place, asked):
    """The less, the better a place serves."""
    out = 0.0 if place.fits else abs(place.length - asked)
    return (
        not place.fits,
        round(out, 6),
        place.near is not None,
        round(abs(place.aside), 6),
        *_largest(place.ground.tee),
    )


def _from_plate(played, tee_set, place):
    """How far a place lies behind the set's plate on its own line of play, metres; None without a plate."""
    plates = [f for f in played.features if f.kind == "plate" and _serves(f, tee_set)]
    if not plates:
        return None
    line = LineOfPlay([place.point, *place.ground.ahead(place.point)])
    return line.station(coordinates(plates[0].geometry)[0])


class _Ground:
    """A tee of a hole: the line of play through its middle, and what the hole measures from its places."""

    def __init__(self, played, tee):
        self.played, self.tee, self.polygon = played, tee, tee.geometry
        self.origin = coordinates(self.polygon.centroid)[0]
        self.direction = self.heading(self.origin)
        self.remarks = ()
        if not self.rooms:
            self._take_longest_chord()

    def _take_longest_chord(self):
        middle = middle_of_longest_chord(self.polygon, self.direction)
        if middle is None:
            return
        self.origin, self.direction = middle, self.heading(middle)
        del self.rooms
        self.remarks = (say("on the longest line of play over the tee, for its middle has no room"),)

    def ahead(self, point):
        """The points a ball from ``point`` is played to: the turn points still ahead, the green's middle."""
        drawn = self.played.drawn
        return [*drawn.turn_points_after(drawn.station(point)), self.played.end]

    def length(self, point):
        """What the hole measures from ``point``."""
        points = [point, *self.ahead(point)]
        return sum(map(math.dist, points, points[1:]))

    def heading(self, point):
        """The unit vector of the first leg from ``point``."""
        away = self.ahead(point)[0] - point
        distance = np.hypot(*away)
        return self.played.drawn.direction_at(0.0) if distance < SAME else away / distance

    def at(self, along):
        """The place so many metres from the middle towards the green."""
        return self.origin + along * self.direction

    @cached_property
    def rooms(self):
        """Where markers may stand on the line through the middle: ``[(from, to)]``, metres ``along`` it."""
        return _rooms(chords(self.polygon, self.origin, self.direction))

    @cached_property
    def most(self):
        """No place on the tee is further from another, metres."""
        return 2.0 * max(np.hypot(*(coordinates(self.polygon) - self.origin).T))

    def piece(self, point):
        """Tee behind a place and in front of it, metres along its own line of play; None off the tee."""
        found = chord_holding(chords(self.polygon, point, self.heading(point)))
        return None if found is None else (-found[0], found[1])

    def holds(self, point):
        """Whether markers may stand at a place."""
        piece = self.piece(point)
        return piece is not None and piece[0] >= TWO_CLUB_LENGTHS and self.polygon.covers(as_point(point))

    def measuring(self, asked):
        """Where on the line through the middle the hole measures ``asked``, if on the tee, metres along it.

        From behind a turn point the length is the way to it and a fixed rest, and so for each that may be
        the next; what is ahead of a place decides which of the answers is true.
        """
        found = []
        for aim, reach in self._aims(asked):
            to_aim = aim - self.origin
            level = float(to_aim @ self.direction)
            square = reach**2 - (float(to_aim @ to_aim) - level**2)
            if square >= 0.0:
                found += [level - math.sqrt(square), level + math.sqrt(square)]
        held = [min(max(along, low), high) for along in found for low, high in self.rooms]
        return [along for along in held if abs(self.length(self.at(along)) - asked) <= _SAME_LENGTH]

    def _aims(self, asked):
        """``(point, metres left for the way to it)`` of each point that may be the next for that length."""
        points = [*self.played.drawn.points[1:-1], self.played.end]
        for number, aim in enumerate(points):
            reach = asked - sum(map(math.dist, points[number:], points[number + 1 :]))
            if reach > 0.0:
                yield aim, reach

    def beside(self, asked):
        """How far right of the line through the middle the hole measures ``asked``; None if not on the tee.

        Tried in steps of ``_STEP``, the nearest first; negative to the left.
        """
        right = _right_of(self.direction)
        found = []
        for aim, reach in self._aims(asked):
            back = (self.origin - aim) / max(math.dist(self.origin, aim), SAME)
            turns = np.arange(-self.most, self.most, _STEP) / reach
            outward = np.outer(np.cos(turns), back) + np.outer(np.sin(turns), (-back[1], back[0]))
            points = aim + reach * outward
            for point, pieces in zip(points, many_chords(self.polygon, points, -outward)):
                piece = chord_holding(pieces)
                if piece is not None and -piece[0] >= TWO_CLUB_LENGTHS:
                    found.append((float((point - self.origin) @ right), point))
        for aside, point in sorted(found, key=lambda item: abs(item[0])):
            if abs(self.length(point) - asked) <= _SAME_LENGTH:
                return aside
        return None

    def ends(self):
        """The places at the ends of the rooms, and either side of where a turn point comes to lie behind."""
        return [along for room in self.rooms for along in (*room, *self._breaks(*room))]

    def _breaks(self, low, high):
        if len(self.ahead(self.at(low))) == len(self.ahead(self.at(high))):
            return []
        if high - low < _EDGE:
            return [low, high]
        middle = (low + high) / 2
        return self._breaks(low, middle) + self._breaks(middle, high)


def _place_on(ground, asked, exactly):
    """The place on a tee that serves best, worn places aside; None where markers may stand nowhere."""
    for along in sorted(ground.measuring(asked), key=abs):
        point = ground.at(along)
        if ground.holds(point):
            return _Place(ground, point, ground.length(point), fits=True)
    points = [ground.at(along) for along in sorted(ground.ends(), key=abs)]
    places = [
        _Place(ground, point, ground.length(point), fits=False) for point in points if ground.holds(point)
    ]
    if not places:
        return None
    best = min(places, key=lambda place: round(abs(place.length - asked), 6))
    return replace(best, reason=_reason(best.length, asked, places, exactly))


def _reason(got, asked, places, exactly):
    lengths = [place.length for place in places]
    if asked > max(lengths):
        return say(
            "longer than the tee allows: with two club-lengths behind it plays {distance} at most",
            distance=exactly(got),
        )
    if asked < min(lengths):
        return say("shorter than the tee allows: at its front it plays {distance}", distance=exactly(got))
    return say(
        "no tee lies where the asked length would be: the nearest is {distance}", distance=exactly(got)
    )


def _clear_of(place, earlier, wear):
    """The place moved across the tee, its length kept, until it is ``wear`` metres from all ``earlier``.

    earlier: ``[(round, point)]``. Of several moves the shortest is taken, of two the one to the right; where
    the tee holds none, the place stays.
    """

    def clear(point):
        return all(math.dist(point, other) >= wear - _CLEAR for _, other in earlier)

    away = [(math.dist(place.point, point), number) for number, point in earlier]
    too_near = [(distance, number) for distance, number in away if distance < wear - _CLEAR]
    if not too_near:
        return place
    worn = tuple(number for _, number in too_near)
    moves = _moves_of_one_length(place, earlier, wear)
    move = next((move for move in moves if clear(move[1])), None)
    if move is None and not place.fits:
        move = next((move for move in _moves_along_the_edge(place) if clear(move[1])), None)
    if move is None:
        return replace(place, worn=worn, near=min(too_near)[0])
    aside, moved = move
    return replace(place, point=moved, length=place.ground.length(moved), aside=aside, worn=worn)


def _moves_of_one_length(place, earlier, wear):
    """``[(metres to the right, point)]``: places of the same length just ``wear`` metres from an earlier one,
    the nearest first.

    Places of one length lie on a circle about the next turn point or the green's middle.
    """
    ground = place.ground
    aim = ground.ahead(place.point)[0]
    reach = math.dist(aim, place.point)
    right = _right_of(ground.heading(place.point))
    met = [moved for _, point in earlier for moved in _where_circles_meet(aim, reach, point, wear)]
    moves = [(float((moved - place.point) @ right), moved) for moved in met]
    return [
        (aside, moved)
        for aside, moved in sorted(moves, key=_shortest)
        if ground.holds(moved) and abs(ground.length(moved) - place.length) <= _SAME_LENGTH
    ]


def _moves_along_the_edge(place):
    """The same where the place is the last the tee allows: its length cannot be kept, but nearly."""
    ground = place.ground
    aim = ground.ahead(place.point)[0]
    reach = math.dist(aim, place.point)
    right = _right_of(ground.heading(place.point))
    steps = np.arange(_STEP, ground.most, _STEP)
    asides = np.column_stack([steps, -steps]).ravel()
    beside = place.point + np.outer(asides, right)
    left = np.hypot(*(aim - beside).T)
    headings = (aim - beside) / left[:, None]
    for number, pieces in enumerate(many_chords(ground.polygon, beside, headings)):
        wanted = left[number] - reach
        held = [min(max(wanted, low), high) for low, high in _rooms(pieces)]
        if held:
            along = min(held, key=lambda one: abs(one - wanted))
            moved = beside[number] + along * headings[number]
            if ground.holds(moved) and abs(ground.length(moved) - place.length) <= _NO_MATTER:
                yield float(asides[number]), moved


def _shortest(move):
    aside, _ = move
    return round(abs(aside), 6), -aside


def _right_of(heading):
    return np.array([heading[1], -heading[0]])


def _rooms(pieces):
    """Where markers may stand on the pieces of a line over a tee: two club-lengths from the back on."""
    rooms = [(low + TWO_CLUB_LENGTHS + _EDGE, high - _EDGE) for low, high in pieces]
    return [(low, high) for low, high in rooms if low <= high]


def _where_circles_meet(centre, radius, other, other_radius):
    """The two points that two circles share, none where they do not cut each other."""
    between = np.asarray(other) - centre
    distance = float(np.hypot(*between))
    if distance < SAME:
        return []
    along = (radius**2 - other_radius**2 + distance**2) / (2 * distance)
    square = radius**2 - along**2
    if square < 0.0:
        return []
    unit = between / distance
    across = math.sqrt(square) * np.array([unit[1], -unit[0]])
    return [centre + along * unit + across, centre + along * unit - across]
