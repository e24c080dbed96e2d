"""Fair hole locations: in which part of a green a hole is, how hard it is to get at, and how an event's holes
are spread over its greens and rounds.

What has a published source stands beside it; the parts of a green and the grades of difficulty are our own
rules and are told here.
"""

from dataclasses import dataclass
from functools import cached_property
from itertools import combinations

import numpy as np
from shapely.ops import unary_union

from ..model.geometry import distances, spots
from ..model.remarks import Remark
from ..model.words import and_list, say, to_say
from .cutting import SAFE_M, Ground, cutting_ground, places_within, slope_at, thirds
from .hole import CourseIndex, play_hole
from .pins import NotPlaceable, locate_pin, place_pin
from .units import UNITS, YARD

SIDE_PARTS = (to_say("left"), to_say("centre"), to_say("right"))
DEPTH_PARTS = (to_say("front third"), to_say("middle third"), to_say("back third"))
GRADES = (to_say("easy"), to_say("moderate"), to_say("hard"))

SIDES_OF_NINE = (4, 1, 4)
"""How many of nine holes are wanted left, in the centre and right; and of a round a third easy, a third
moderate and a third hard (guidance for committees, read in a secondary source). Front, middle and back a
third each is our own rule."""
LEAST_TO_JUDGE = 6
"""Fewer pins than this are not held against the guidance (our own rule)."""

DEEP_INSIDE_M = 12 * YARD
"""A hole this far from the margin is no harder for it."""
GUARDED_WITHIN_M = 20 * YARD
"""A bunker or penalty area this far from a hole makes it no harder."""
BUNKER_WEIGHT = 0.75
"""How hard a bunker makes a hole beside it, a penalty area being 1."""
STEEP_PCT = 3.0
"""The slope at which a hole is as hard as slope makes it, where the committee names no limit."""
DEPTH_WEIGHT = 0.5


# Parts of a green


def part_of(green, place):
    """``(side, depth)`` of a PinPlace: its places in SIDE_PARTS and DEPTH_PARTS.

    Our own rule. Depth: the thirds of the green's depth, from its front along the approach. Side: the thirds
    of the width that the green has at that depth, on the line square to the approach, between the same two
    margins from which a pin is measured.
    """
    depth = int(thirds(place.on, 0.0, green.depth))
    if place.left is None:
        return 1, depth
    return int(thirds(place.left, 0.0, place.left + place.right)), depth


# How hard a place is


def hardness(played, limits, on, to_margin, points, percent=None):
    """How hard it is to get near to holes at (n, 2) points, (n,) of 0 (easy) to 1 (hard).

    Our own rule, the mean of four, each 0 to 1:

    - margin: 1 at ``limits.margin`` or nearer, 0 from DEEP_INSIDE_M;
    - guard: 1 at the edge of a penalty area, BUNKER_WEIGHT at that of a bunker, falling to 0 at
      GUARDED_WITHIN_M, whichever is more: what lies on the other side of the green is too far to count;
    - slope, ``percent`` (n,): 1 at ``limits.slope_pct`` (STEEP_PCT without); left out of the mean where it is
      not known;
    - depth: 0 at the front, 1 at the back, weighing DEPTH_WEIGHT.
    """
    inside = np.maximum(DEEP_INSIDE_M - limits.margin, YARD)
    by_margin = np.clip(1.0 - (to_margin - limits.margin) / inside, 0.0, 1.0)
    by_guard = _guarded(played, points)
    by_depth = np.clip(on / played.green.depth, 0.0, 1.0)
    total = by_margin + by_guard + DEPTH_WEIGHT * by_depth
    weight = np.full(len(total), 2.0 + DEPTH_WEIGHT)
    if percent is not None:
        by_slope = np.clip(percent / (limits.slope_pct or STEEP_PCT), 0.0, 1.0)
        known = np.isfinite(by_slope)
        total[known] += by_slope[known]
        weight[known] += 1.0
    # Rounded, so that two places alike are alike.
    return np.round(total / weight, 9)


def _guarded(played, points):
    guard, holes = np.zeros(len(points)), spots(points)
    near = played.green.geometry.buffer(GUARDED_WITHIN_M)
    for kind, weight in (("bunker", BUNKER_WEIGHT), ("penalty_area", 1.0)):
        shapes = [one.geometry for one in played.features if one.kind == kind]
        shapes = [shape for shape in shapes if shape.intersects(near)]
        if shapes and len(holes):
            away = np.asarray(distances(holes, unary_union(shapes).intersection(near)), dtype=float)
            guard = np.maximum(guard, weight * (1.0 - np.minimum(away / GUARDED_WITHIN_M, 1.0)))
    return guard


@dataclass(frozen=True)
class HoleGround:
    """A hole's green as holes are cut in it: ``ground`` before any other hole is cut, and the slope (a
    function, None where no terrain is known)."""

    played: object
    ground: Ground
    slope: object = None

    @property
    def green(self):
        """The GreenPlay."""
        return self.played.green

    def percent(self, points):
        """The slope at (n, 2) points, None where no terrain is known."""
        return None if self.slope is None else slope_at(self.slope, points)


class Grounds:
    """The greens of a course for one committee's limits, each looked at once.

    index: CourseIndex. terrain: ``imagery.terrain.Terrain`` or None. Three grades of difficulty are told
    within ``holes`` (numbers; None: all of the course): the two bounds between them are set so that a third
    of the ground where holes may be cut is easy, a third moderate and a third hard, each green counting alike
    (our own rule).
    """

    def __init__(self, course, limits, index=None, terrain=None, holes=None):
        self.numbers = [hole.number for hole in course.holes] if holes is None else holes
        self.course, self.limits, self.terrain = course, limits, terrain
        self.index = index or CourseIndex(course)
        self._holes, self._offers = {}, {}

    @property
    def unit(self):
        """Metres in the unit that figures are paced in."""
        return UNITS[self.course.settings.unit]

    def hole(self, number):
        """The HoleGround of a hole, None where it has no green."""
        if number not in self._holes:
            self._holes[number] = self._look_at(number)
        return self._holes[number]

    def _look_at(self, number):
        played = play_hole(self.course, number, self.index)
        if played is None or played.green is None:
            return None
        slope = self._slope_of(played)
        ground = cutting_ground(played.green, self.limits, slope=slope)
        return HoleGround(played, ground, slope)

    def offer(self, number, share=1):
        """``(Places, how hard each is)`` of a hole with a green, before another is cut: in whole units, or in
        parts of ``share`` to one."""
        if (number, share) not in self._offers:
            one, limits = self.hole(number), self.limits
            places = places_within(one.green, one.ground.area, self.unit, share)
            kept = places.to_margin >= limits.margin + SAFE_M
            percent = one.percent(places.points)
            if percent is not None:
                if limits.slope_pct is not None:
                    kept &= ~(percent > limits.slope_pct)
                percent = percent[kept]
            places = places.of(kept)
            hard = hardness(one.played, limits, places.on, places.to_margin, places.points, percent)
            self._offers[number, share] = places, hard
        return self._offers[number, share]

    def _slope_of(self, played):
        if self.terrain is None:
            return None
        to_course = played.frame.from_frame(self.course.crs)
        return lambda points: self.terrain.slope_at(to_course(points), self.course.crs)[0]

    @cached_property
    def bounds(self):
        """The hardness from which a place is moderate, and from which it is hard."""
        numbers = [number for number in self.numbers if self.hole(number) is not None]
        found = [hard for hard in (self.offer(number)[1] for number in numbers) if len(hard)]
        if not found:
            return 1 / 3, 2 / 3
        values = np.concatenate(found)
        weights = np.concatenate([np.full(len(one), 1.0 / len(one)) for one in found])
        order = np.argsort(values, kind="stable")
        upto = np.cumsum(weights[order]) / len(found)
        return tuple(float(values[order][np.searchsorted(upto, share - 1e-9)]) for share in (1 / 3, 2 / 3))

    def grades(self, hard):
        """The grade, a place in GRADES, of each of (n,) values of hardness."""
        return np.searchsorted(np.array(self.bounds), np.asarray(hard), side="right")

    def grade_of(self, number, place):
        """The grade of a PinPlace of a hole."""
        one = self.hole(number)
        point = np.asarray(place.point, dtype=float).reshape(1, 2)
        on, to_margin = np.array([place.on]), np.array([place.to_margin])
        hard = hardness(one.played, self.limits, on, to_margin, point, one.percent(point))
        return int(self.grades(hard)[0])

    def place_of(self, pin):
        """The PinPlace of a Pin, None where it names none or its hole has no green; raises NotPlaceable."""
        one = self.hole(pin.hole)
        if one is None:
            return None
        if pin.given == "figures" and pin.on is not None and pin.off is not None:
            return place_pin(one.green, pin.on, pin.off, pin.off_from)
        if pin.point is None:
            return None
        return locate_pin(one.green, one.played.frame.to_frame(self.course.crs)([pin.point])[0])


# The balance of an event


@dataclass(frozen=True)
class Location:
    """One hole location: metres from the front and right of the approach, its third of the width and of the
    depth, its grade of difficulty, the share of the green's depth that it lies on (0 front, 1 back)."""

    round: int
    hole: int
    on: float
    across: float
    to_margin: float
    side: str
    depth: str
    grade: str
    share: float


@dataclass(frozen=True)
class RoundBalance:
    """How many of a round's holes, or of one nine of it, are cut where.

    holes: the numbers counted, as ``1-9``; "" for the whole round. share: the mean share of the greens'
    depth. longer: metres by which the holes that were cut in the round before too lie deeper now, taken
    together; None for the first round.
    """

    round: int
    holes: str
    pins: int
    left: int
    centre: int
    right: int
    front: int
    middle: int
    back: int
    easy: int
    moderate: int
    hard: int
    share: float = None
    longer: float = None
    remarks: tuple = ()


@dataclass(frozen=True)
class HoleBalance:
    """One green over the rounds: what its locations are, a tuple each, in order of ``rounds``."""

    hole: int
    rounds: tuple
    sides: tuple
    depths: tuple
    grades: tuple
    shares: tuple
    remarks: tuple = ()


@dataclass(frozen=True)
class Balance:
    """``rounds``: RoundBalance, the whole round before its nines. problems: Remarks on pins not counted."""

    event: str
    locations: tuple = ()
    rounds: tuple = ()
    holes: tuple = ()
    problems: tuple = ()


def holes_of(course, round_):
    """The hole numbers of a Round, in order of play."""
    return tuple(dict.fromkeys(round_.holes)) or tuple(hole.number for hole in course.holes)


def grounds_of(course, event, index=None, terrain=None):
    """The Grounds of the holes that an event's rounds play, for its limits."""
    holes = event.holes_in_play([hole.number for hole in course.holes])
    return Grounds(course, event.limits, index, terrain, holes)


def nine_of(hole):
    """Which nine a hole belongs to, by its number: 0 for 1 to 9, 1 for 10 to 18, 2 for 19 to 27."""
    return (hole - 1) // 9


def pins_of(course, event):
    """``{(round, hole): Pin}``, the first of each, of the event's rounds and their holes, in that order."""
    given = {}
    for pin in event.pins:
        given.setdefault((pin.round, pin.hole), pin)
    wanted = [(one.number, hole) for one in event.rounds for hole in holes_of(course, one)]
    return {key: given[key] for key in wanted if key in given}


def balance(course, event, index=None, terrain=None, grounds=None):
    """The Balance of an event's pins against the guidance.

    A remark is made where a count is more than one off what is wanted of so many holes; fewer than
    LEAST_TO_JUDGE are left in peace. grounds: as of ``grounds_of``, made here without.
    """
    grounds = grounds or grounds_of(course, event, index, terrain)
    locations, problems = [], []
    for (number, hole), pin in pins_of(course, event).items():
        try:
            place = grounds.place_of(pin)
            reason = say("it has no green or no place")
        except NotPlaceable as error:
            place, reason = None, error.remark
        if place is None:
            text = say(
                "hole {hole} of round {round} is left out of the balance: {reason}",
                hole=hole,
                round=number,
                reason=reason,
            )
            problems.append(Remark(text, "left_out"))
        else:
            locations.append(_location(grounds, number, hole, place))
    rounds, before = [], {}
    for one in event.rounds:
        here = [location for location in locations if location.round == one.number]
        now = {location.hole: location.on for location in here}
        both = [now[hole] - before[hole] for hole in now if hole in before]
        rounds.append(_round_balance(one.number, "", here, sum(both) if both else None))
        for nine in sorted({nine_of(hole) for hole in holes_of(course, one)}):
            label = f"{9 * nine + 1}-{9 * nine + 9}"
            of_nine = [location for location in here if nine_of(location.hole) == nine]
            rounds.append(_round_balance(one.number, label, of_nine))
        before = now
    holes = tuple(
        _hole_balance(number, [location for location in locations if location.hole == number])
        for number in sorted({location.hole for location in locations})
    )
    return Balance(event.name, tuple(locations), tuple(rounds), holes, tuple(problems))


def _location(grounds, number, hole, place):
    green = grounds.hole(hole).green
    side, depth = part_of(green, place)
    grade = grounds.grade_of(hole, place)
    return Location(
        number,
        hole,
        place.on,
        place.across,
        place.to_margin,
        SIDE_PARTS[side],
        DEPTH_PARTS[depth],
        GRADES[grade],
        place.on / green.depth,
    )


def _round_balance(number, label, locations, longer=None):
    sides = [sum(one.side == part for one in locations) for part in SIDE_PARTS]
    depths = [sum(one.depth == part for one in locations) for part in DEPTH_PARTS]
    grades = [sum(one.grade == grade for one in locations) for grade in GRADES]
    remarks = []
    if label and _off(sides, SIDES_OF_NINE):
        left, centre, right = sides
        text = say(
            "{left} left, {centre} in the centre, {right} right: of nine holes four, one and four are wanted",
            left=left,
            centre=centre,
            right=right,
        )
        remarks.append(Remark(text, "sides"))
    if not label and _off(grades, (1, 1, 1)):
        easy, moderate, hard = grades
        text = say(
            "{easy} easy, {moderate} moderate, {hard} hard: a third of each is wanted",
            easy=easy,
            moderate=moderate,
            hard=hard,
        )
        remarks.append(Remark(text, "grades"))
    if not label and _off(depths, (1, 1, 1)):
        front, middle, back = depths
        text = say(
            "{front} front, {middle} middle, {back} back: a third of each is wanted",
            front=front,
            middle=middle,
            back=back,
        )
        remarks.append(Remark(text, "depths"))
    share = sum(one.share for one in locations) / len(locations) if locations else None
    return RoundBalance(
        number, label, len(locations), *sides, *depths, *grades, share, longer, tuple(remarks)
    )


def _off(counts, wanted):
    """Whether a count is more than one off its share."""
    pins, whole = sum(counts), sum(wanted)
    far = any(abs(count * whole - pins * part) > whole for count, part in zip(counts, wanted))
    return pins >= LEAST_TO_JUDGE and far


def _hole_balance(number, locations):
    remarks = []
    for one, other in combinations(locations, 2):
        if (one.side, one.depth) == (other.side, other.depth):
            text = say(
                "in rounds {rounds} the hole is in the same part of the green",
                rounds=and_list([str(one.round), str(other.round)]),
            )
            remarks.append(Remark(text, "same_part"))
    columns = zip(*((one.round, one.side, one.depth, one.grade, one.share) for one in locations))
    return HoleBalance(number, *columns, tuple(remarks))
