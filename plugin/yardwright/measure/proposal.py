"""A proposal of hole locations for the rounds of an event that have none yet."""

from dataclasses import dataclass
from itertools import combinations
from typing import NamedTuple

import numpy as np

from ..model.event import Pin
from ..model.remarks import Remark
from ..model.words import and_list, say
from .cutting import SAFE_M, cutting_ground
from .fair import SIDES_OF_NINE, grounds_of, holes_of, nine_of, part_of, pins_of
from .pins import NotPlaceable, place_pin
from .units import YARD

# What a departure costs, whole numbers: sums of them are the same in any order.
COUNT_COST = {"side": 4, "depth": 2, "grade": 4, "nine_grade": 1}
"""Of one hole too many or too few, squared, and times 81."""
SAME_SIDE, SAME_DEPTH, SAME_PART = 60, 120, 240
"""Of two rounds of one hole in the same third of the width, of the depth, in the same of both."""
CLOSE_COST = 400
"""Of two rounds of one hole in the same place, falling to nothing at half the green's depth or width."""
EDGE_COST = 60
"""Of a hole as near to the margin as is allowed, falling to nothing at EASE_M beyond that."""
EASE_M = 4 * YARD
FINE_COST = 5000
"""Of a figure in halves of a unit."""

CLASSES = 27
MOST_CYCLES = 40
ENOUGH = 400
"""Places of a green that are enough to tell how much of it a hole takes."""


class Proposal(NamedTuple):
    """``pins``: tuple of Pin, by round and hole as they are played. problems: Remarks on the holes for which
    none is proposed, by number."""

    pins: tuple
    problems: tuple


def propose(course, event, index=None, terrain=None, grounds=None):
    """A Proposal for the holes of the event's rounds that have no pin yet; the others are kept, and count.

    Every place lies in its cutting area (``cutting.cutting_ground``), ``limits.apart`` from every other hole
    cut in that green during the event, and is given by whole units on and off from the nearer margin; by
    halves where no whole ones are left. Of all such places those are sought for which the sum is least of

    - a nine's holes left, centre and right against four, one and four of nine, and in the front, middle and
      back third against a third each; a round's holes easy, moderate and hard against a third each, and with
      less weight those of a nine: the square of what is too many or too few;
    - two rounds of one hole in the same third of the green, or close together;
    - holes hard by the margin that is asked for.

    It is sought from a first choice that leaves most room to the other rounds, by moving one hole, two holes
    of one round, or changing two rounds of one hole with each other, as long as that makes it less: a good
    proposal, if not surely the best. Nothing is left to chance: the same event gives the same proposal.
    """
    return _Search(course, event, grounds or grounds_of(course, event, index, terrain)).proposal()


@dataclass(frozen=True)
class _Choices:
    """What a hole offers: Places, their points in the frame that all holes of one green share, the class of
    each (side, depth and grade in one number) and what it costs by itself."""

    places: object
    points: object
    kinds: object
    own: object

    def __len__(self):
        return len(self.own)

    def of(self, kept):
        """Those that ``kept`` marks."""
        return _Choices(self.places.of(kept), self.points[kept], self.kinds[kept], self.own[kept])


@dataclass
class _Slot:
    """One hole of one round. ``chosen``: the place in ``choices``, None until there is one; a pin that is
    given has its one choice and is ``fixed``."""

    round: int
    hole: int
    green: int
    nine: tuple
    choices: _Choices
    fixed: bool = False
    chosen: int = None

    @property
    def kind(self):
        """The class chosen."""
        return int(self.choices.kinds[self.chosen])

    @property
    def point(self):
        """The point chosen."""
        return self.choices.points[self.chosen]


_SIDE, _DEPTH, _GRADE = np.arange(CLASSES) // 9, np.arange(CLASSES) // 3 % 3, np.arange(CLASSES) % 3
_OF = {"side": _SIDE, "depth": _DEPTH, "grade": _GRADE, "nine_grade": _GRADE}
OF_NINE = ("side", "depth", "nine_grade")


class _Counts:
    """How many holes of a nine, or of a round, are of each part, against what is wanted."""

    def __init__(self, what, holes):
        self.what, self.now = what, [0, 0, 0]
        shares = SIDES_OF_NINE if what == "side" else (3, 3, 3)
        self.wanted = [holes * share for share in shares]

    def cost(self):
        """What the counts cost as they are."""
        return COUNT_COST[self.what] * sum((9 * n - w) ** 2 for n, w in zip(self.now, self.wanted))

    def of_one_more(self):
        """What one more hole of each class adds to the cost, (27,)."""
        weight = COUNT_COST[self.what]
        grown = [weight * (81 + 18 * (9 * n - w)) for n, w in zip(self.now, self.wanted)]
        return np.array(grown, dtype=np.int64)[_OF[self.what]]

    def add(self, kind, by=1):
        """Count a class once more, or less."""
        self.now[int(_OF[self.what][kind])] += by


def _of_two_more(what):
    """What two holes of classes (27, 27) add beyond what each adds alone."""
    same = _OF[what][:, None] == _OF[what][None, :]
    return (2 * 81 * COUNT_COST[what] * same).astype(np.int64)


class _Search:
    """The search for one event; ``slots`` in the order of play."""

    def __init__(self, course, event, grounds):
        self.course, self.event, self.grounds = course, event, grounds
        self.apart = event.limits.apart + SAFE_M
        self.problems, self.slots, self.greens = [], [], {}
        self._frames = {}
        self._lay_out()
        self._count()

    # What there is to choose from

    def _lay_out(self):
        given, lost = pins_of(self.course, self.event), {}
        for one in self.event.rounds:
            for hole in holes_of(self.course, one):
                ground = self.grounds.hole(hole)
                pin = given.get((one.number, hole))
                if ground is None:
                    if pin is None:
                        lost.setdefault(hole, []).append(one.number)
                    continue
                green = ground.green.feature.fid
                slot = _Slot(one.number, hole, green, (one.number, nine_of(hole)), None)
                if pin is not None:
                    slot.choices, slot.fixed, slot.chosen = self._given(slot, pin), True, 0
                    if slot.choices is None:
                        continue
                self.slots.append(slot)
                self.greens.setdefault(green, []).append(slot)
        for hole, rounds in lost.items():
            self._name(hole, rounds, say("it has no green"))
        for green, slots in self.greens.items():
            self._fill(green, slots)
        self.slots = [slot for slot in self.slots if slot.chosen is not None]

    def _name(self, hole, rounds, reason):
        text = say(
            "no place is proposed on hole {hole} in round {rounds}: {reason}",
            hole=hole,
            rounds=and_list([str(number) for number in rounds]),
            reason=reason,
        )
        self.problems.append((hole, Remark(text, "no_place")))

    def _frames_of(self, green, hole):
        """The frame of a hole, and that of the first hole that plays to the same green, which all share."""
        frame = self.grounds.hole(hole).played.frame
        return frame, self._frames.setdefault(green, frame)

    def _between(self, points, frame, other):
        """Points of a frame in another."""
        if frame == other or not len(points):
            return points
        return other.to_frame(self.course.crs)(frame.from_frame(self.course.crs)(points))

    def _shared(self, slot, points):
        """Points of a slot's hole in the frame that its green's holes share."""
        frame, shared = self._frames_of(slot.green, slot.hole)
        return self._between(points, frame, shared)

    def _given(self, slot, pin):
        """The one choice of a pin that is given; None where it names no place, as the check of pins says."""
        try:
            place = self.grounds.place_of(pin)
        except NotPlaceable:
            return None
        if place is None:
            return None
        side, depth = part_of(self.grounds.hole(pin.hole).green, place)
        kind = 9 * side + 3 * depth + self.grounds.grade_of(pin.hole, place)
        points = self._shared(slot, np.asarray(place.point, dtype=float).reshape(1, 2))
        return _Choices(None, points, np.array([kind]), np.zeros(1, dtype=np.int64))

    def _fill(self, green, slots):
        """A first choice for the slots of a green, in whole units, or in halves where those do not do."""
        fixed = np.array([slot.point for slot in slots if slot.fixed]).reshape(-1, 2)
        open_ = [slot for slot in slots if not slot.fixed]
        for share in (1, 2):
            choices = {}
            for slot in open_:
                if slot.hole not in choices:
                    choices[slot.hole] = self._choices(slot, fixed, share)
                slot.choices, slot.chosen = choices[slot.hole], None
            self._choose_roomy(open_)
            if all(slot.chosen is not None for slot in open_):
                return
        lost = {}
        for slot in open_:
            if slot.chosen is None:
                lost.setdefault(slot.hole, []).append(slot.round)
        for hole, rounds in lost.items():
            self._name(hole, rounds, self._why(green, hole, slots))

    def _why(self, green, hole, slots):
        """Why a green has no place left on a hole beside what is chosen in the others of its slots."""
        one = self.grounds.hole(hole)
        there = np.array([slot.point for slot in slots if slot.chosen is not None]).reshape(-1, 2)
        frame, shared = self._frames_of(green, hole)
        earlier = self._between(there, shared, frame)
        ground = cutting_ground(one.green, self.event.limits, earlier, one.slope)
        if ground.empty:
            return ground.remarks[-1]
        return say("no figures tell a place that is left")

    def _choices(self, slot, fixed, share):
        """What a slot has to choose from beside the fixed holes of its green."""
        one = self.grounds.hole(slot.hole)
        places, hard = self.grounds.offer(slot.hole, share)
        sides, depths = places.parts(one.green)
        points = self._shared(slot, places.points)
        spare = np.clip(1.0 - (places.to_margin - self.event.limits.margin) / EASE_M, 0.0, 1.0)
        own = np.rint(EDGE_COST * spare).astype(np.int64) + FINE_COST * places.fine
        kinds = 9 * sides + 3 * depths + self.grounds.grades(hard)
        kept = np.ones(len(own), dtype=bool)
        for point in fixed:
            kept &= np.hypot(*(points - point).T) >= self.apart
        return _Choices(places, points, kinds, own).of(kept)

    def _choose_roomy(self, slots):
        """Choose for each slot in turn the place that takes fewest from what is left to the others."""
        left = {id(slot): np.ones(len(slot.choices), dtype=bool) for slot in slots}
        for slot in slots:
            candidates = np.flatnonzero(left[id(slot)])
            if not len(candidates):
                continue
            points = slot.choices.points[candidates]
            some = points[:: len(points) // ENOUGH + 1]
            near = np.hypot(*(points[:, None] - some[None, :]).transpose(2, 0, 1)) < self.apart
            slot.chosen = int(candidates[np.argmin(near.sum(axis=1))])
            for other in slots:
                left[id(other)] &= np.hypot(*(other.choices.points - slot.point).T) >= self.apart

    # What it costs

    def _count(self):
        nines, rounds = {}, {}
        for slot in self.slots:
            nines[slot.nine] = nines.get(slot.nine, 0) + 1
            rounds[slot.round] = rounds.get(slot.round, 0) + 1
        self.counts = {("grade", number): _Counts("grade", holes) for number, holes in rounds.items()}
        for what in OF_NINE:
            self.counts.update({(what, nine): _Counts(what, holes) for nine, holes in nines.items()})
        for slot in self.slots:
            self._take(slot)

    def _counts_of(self, slot):
        return (self.counts["grade", slot.round], *(self.counts[what, slot.nine] for what in OF_NINE))

    def _take(self, slot, by=1):
        for counts in self._counts_of(slot):
            counts.add(slot.kind, by)

    def _of_one_more(self, slot):
        return sum(counts.of_one_more() for counts in self._counts_of(slot))

    def _beside(self, slot):
        """What each choice of a slot costs beside the others of its green, and whether it may be, (n,)."""
        choices = slot.choices
        cost, may = choices.own.copy(), np.ones(len(choices), dtype=bool)
        green = self.grounds.hole(slot.hole).green
        spread = max(green.depth, green.width) / 2
        for other in self.greens[slot.green]:
            if other is slot or other.chosen is None:
                continue
            away = np.hypot(*(choices.points - other.point).T)
            may &= away >= self.apart
            if other.hole == slot.hole:
                same_side = _SIDE[choices.kinds] == _SIDE[other.kind]
                same_depth = _DEPTH[choices.kinds] == _DEPTH[other.kind]
                cost += SAME_SIDE * same_side + SAME_DEPTH * same_depth + SAME_PART * (same_side & same_depth)
                cost += np.rint(CLOSE_COST * np.clip(1.0 - away / spread, 0.0, 1.0)).astype(np.int64)
        return cost, may

    # The search

    def proposal(self):
        """Search, and give the pins."""
        for _ in range(MOST_CYCLES):
            moved = self._move_single()
            moved = self._change_rounds() or moved
            moved = self._move_pairs() or moved
            if not moved:
                break
        pins = tuple(self._pin(slot) for slot in self.slots if not slot.fixed)
        return Proposal(pins, tuple(remark for _, remark in sorted(self.problems, key=lambda one: one[0])))

    def _move_single(self):
        any_moved, moved = False, True
        while moved:
            moved = False
            for slot in self.slots:
                if slot.fixed:
                    continue
                cost, may = self._beside(slot)
                self._take(slot, -1)
                cost = cost + self._of_one_more(slot)[slot.choices.kinds]
                found = int(np.argmin(np.where(may, cost, np.iinfo(np.int64).max)))
                if may[found] and cost[found] < cost[slot.chosen]:
                    slot.chosen, moved, any_moved = found, True, True
                self._take(slot)
        return any_moved

    def _change_rounds(self):
        """Let two rounds change places on one hole where that is better: both stay where they may be."""
        any_moved = False
        by_hole = {}
        for slot in self.slots:
            if not slot.fixed:
                by_hole.setdefault(slot.hole, []).append(slot)
        for slots in by_hole.values():
            for one, other in combinations(slots, 2):
                touched = [*self._counts_of(one), *self._counts_of(other)]
                before = sum(counts.cost() for counts in touched)
                self._change(one, other)
                if sum(counts.cost() for counts in touched) < before:
                    any_moved = True
                else:
                    self._change(one, other)
        return any_moved

    def _change(self, one, other):
        self._take(one, -1)
        self._take(other, -1)
        one.chosen, other.chosen = other.chosen, one.chosen
        self._take(one)
        self._take(other)

    def _move_pairs(self):
        """Move two holes of one round together: the best of each class for each."""
        any_moved = False
        best = {}
        by_round = {}
        for slot in self.slots:
            if not slot.fixed:
                by_round.setdefault(slot.round, []).append(slot)
        cross = {what: _of_two_more(what) for what in COUNT_COST}
        for slots in by_round.values():
            for one, other in combinations(range(len(slots)), 2):
                first, second = slots[one], slots[other]
                if first.green == second.green:
                    continue
                for slot in (first, second):
                    if id(slot) not in best:
                        best[id(slot)] = self._best_of_classes(slot)
                moved = self._move_pair(first, second, best, cross)
                if moved:
                    any_moved = True
                    for slot in (first, second):
                        for beside in self.greens[slot.green]:
                            best.pop(id(beside), None)
        return any_moved

    def _best_of_classes(self, slot):
        """``(places in the choices, costs)`` of the best of each class, (27,), -1: none; the present cost."""
        cost, may = self._beside(slot)
        places, costs = np.full(CLASSES, -1), np.zeros(CLASSES, dtype=np.int64)
        order = np.flatnonzero(may)[np.argsort(cost[may], kind="stable")]
        kinds, first = np.unique(slot.choices.kinds[order], return_index=True)
        places[kinds] = order[first]
        costs[kinds] = cost[order[first]]
        return places, costs, int(cost[slot.chosen])

    def _move_pair(self, first, second, best, cross):
        was = (first.kind, second.kind)
        self._take(first, -1)
        self._take(second, -1)
        both = cross["grade"]
        if first.nine == second.nine:
            both = both + sum(cross[what] for what in OF_NINE)
        more_first, more_second = self._of_one_more(first), self._of_one_more(second)
        places_first, costs_first, own_first = best[id(first)]
        places_second, costs_second, own_second = best[id(second)]
        total = (costs_first + more_first)[:, None] + (costs_second + more_second)[None, :] + both
        now = own_first + own_second + more_first[was[0]] + more_second[was[1]] + both[was]
        barred = (places_first < 0)[:, None] | (places_second < 0)[None, :]
        total = np.where(barred, np.iinfo(np.int64).max, total)
        a, b = np.unravel_index(int(np.argmin(total)), total.shape)
        better = bool(total[a, b] < now)
        if better:
            first.chosen, second.chosen = int(places_first[a]), int(places_second[b])
        self._take(first)
        self._take(second)
        return better

    def _pin(self, slot):
        played = self.grounds.hole(slot.hole).played
        places, n = slot.choices.places, slot.chosen
        on, off = float(places.on[n]), float(places.off[n])
        off_from = ("left", "right")[int(places.side[n])]
        place = place_pin(played.green, on, off, off_from)
        x, y = played.frame.from_frame(self.course.crs)(place.point)[0].tolist()
        return Pin(self.event.name, slot.round, slot.hole, on, off, off_from, "figures", (x, y))
