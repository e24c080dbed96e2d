"""The distance ladder: what lies between the tee and the green, beside the picture and at its height.

The ladder is the hole pulled straight. **Up and down** it is the picture: every y of it is the y of the
picture beside it, so that a hazard's bar stands level with the hazard. A bar runs from the place of the
hazard where it is reached from the tee to the place where it is cleared; the rungs are places of the line of
play. Where play turns away from straight up, rungs come closer together, for so they lie on the picture; no
figure is read off the ladder's length, each is measured and stands at its own place. **Across**, the spine
is the line of play, and things lie left and right of it by their distance from it, at one scale for all
holes, ``ACROSS_M`` to either edge; what is farther off stands at the edge.

Water that the line of play crosses is drawn as it lies, and told where the line enters and leaves it.

Left stand the figures from the tee (at a bar's lower end to reach it, at its upper end to clear it), right
those to the green's front from the same two places: what is left when a ball stops short of the hazard, and
just past it. From the tee they are the straight distances of the table; of what lies well past a turn, where
nobody plays straight at it, its stations, as the rungs are. From the green's front on only the green's own
three figures stand, on dark plates; how far the bunkers there reach is seen beside them.
"""

import math
from dataclasses import dataclass

import numpy as np
from shapely.geometry import Polygon, box
from shapely.ops import nearest_points

from ..measure.callouts import HAZARDS
from ..measure.distances import tee_views
from ..measure.fairways import LANDING_ZONES_YD, cuts_through
from ..measure.hole import longest_tee
from ..measure.line import as_point
from ..measure.units import UNITS, YARD, to_unit, whole
from ..model.geometry import coordinates
from ..model.remarks import Remark
from ..model.words import say
from .callout_places import kept_apart
from .drawing import (
    DARK,
    FLAG,
    LEAF,
    PALE,
    QUIET,
    TEE,
    Drawing,
    OnPicture,
    Plate,
    edged,
    filled,
    flag,
    hatched,
    paper,
    parts_of,
    rounded,
)
from .sheet_parts import HAIR, LEAST_SIZE, Dots, Line, Place, Text, box_area, cap_of, width_of

ACROSS_M = 36.0
"""Ground to either edge: a fairway and what lies beside it (our own rule)."""
BARS = (*HAZARDS, "trees", "tree")
_EVERY = 50
_STEP_M = 3.0
_LEAST_BAR_MM = 0.9
_MOST_MOVED_MM = 5.5
_NEAR_LINE_M = 45.0
_WELL_PAST_M = 50 * YARD
"""What lies less past a turn may be played at over the corner, straight (our own rule)."""
_LEVEL_M = 4.0
_CLOSE_MM = 0.35


@dataclass(frozen=True)
class Bar:
    """A hazard on the ladder. kind: of its feature; row: its DistanceRow; shape: what counts of it, in
    the hole's frame. reach, clear: where it is reached
    and cleared, (x, y) there. from_tee: metres to these two. to_front: metres from them to the
    green's front, None where it is not ahead. left, right: metres across, from the line of play, left
    negative."""

    kind: str
    row: object
    shape: object
    reach: tuple
    clear: tuple
    from_tee: tuple
    to_front: tuple
    left: float
    right: float


def tee_of(played, tee_set=""):
    """The TeePlay of a set, the longest where it has none here; None without tees."""
    named = (tee for tee in played.tees if tee_set and tee.tee_set == tee_set)
    return next(named, None) or longest_tee(played)


def from_tee(row, tee):
    """The two figures of a hazard's DistanceRow that a page says, metres, and whether they are stations."""
    if crosses(row):
        return (row.enter, row.leave), True
    if _past_a_turn(row, tee):
        return (row.station_near, row.station_far), True
    return (row.reach, row.clear), False


def crosses(row):
    """Whether a DistanceRow is of water that the line of play crosses: on the line it has to be carried."""
    return row.kind == "penalty_area" and row.enter is not None


def _past_a_turn(row, tee):
    return any(turn < row.station_near - _WELL_PAST_M for turn in tee.line.turns.tolist())


def ladder(plan, played, course, tables, tee_set="", size=(20.0, 150.0)):
    """The Drawing of a hole's ladder; size: (width, height) in mm, height that of the picture of ``plan``.

    tables: what ``measure.course.measure_hole`` says of the hole.
    """
    return _Ladder(plan, played, course, tables, tee_of(played, tee_set), size).drawing()


def bars_of(played, course, tables, tee):
    """The Bars of a tee's hazards, in the order of its rows."""
    view = next((one for one in tee_views(played, course.settings) if one.tee.tee_set == tee.tee_set), None)
    return [] if view is None else _bars(view, tables)


def _bars(view, tables):
    tee = view.tee
    rows = {
        (row.kind, row.feature_id): row
        for row in tables.get("distances", ())
        if row.tee_set == tee.tee_set and row.kind in BARS
    }
    made = []
    for place, feature in enumerate(view.features):
        row = rows.get((feature.kind, feature.fid))
        if row is None or view.outside[place] or (feature.kind == "tree" and row.aside > ACROSS_M / 2):
            continue
        shape = view.shapes[place]
        corners = coordinates(shape)
        offsets, stations = _offsets(tee.line, corners)
        figures, along = from_tee(row, tee)
        if crosses(row):
            near, far = tee.line.at(row.enter), tee.line.at(row.leave)
        elif along:
            near, far = corners[np.argmin(stations)], corners[np.argmax(stations)]
        else:
            near = coordinates(nearest_points(as_point(tee.reference), shape)[1])[0]
            far = corners[np.argmax(np.hypot(*(corners - tee.reference).T))]
        on_line = row.enter is not None
        made.append(
            Bar(
                kind=feature.kind,
                row=row,
                shape=shape,
                reach=(float(near[0]), float(near[1])),
                clear=(float(far[0]), float(far[1])),
                from_tee=figures,
                to_front=_to_front(view.played, tee, near, row),
                left=min(float(offsets.min()), 0.0 if on_line else math.inf),
                right=max(float(offsets.max()), 0.0 if on_line else -math.inf),
            )
        )
    return made


def _to_front(played, tee, reach, row):
    """Metres from the two ends to the green's front; the farther end's as its row says."""
    if played.green is None:
        return None, None
    front = played.green.front
    station = tee.line.station(reach)
    ahead = station < tee.line.station(front) - 0.5
    short = row.short_of_green
    turns = tee.line.turns_after(station)
    left = tee.line.legs_to(station, front) if turns else math.dist(reach, front)
    return left if ahead else None, short if short is not None and short > 0.5 else None


def _offsets(line, points):
    """How far right of the line of play points lie, metres, (n,); and their stations."""
    stations = line.stations(points)
    legs = np.clip(np.searchsorted(line.vertex_stations, stations, side="right") - 1, 0, len(line.points) - 2)
    feet = line.points[legs] + line.leg_units[legs] * (stations - line.vertex_stations[legs])[:, None]
    away, along = points - feet, line.leg_units[legs]
    beside = away[:, 0] * along[:, 1] - away[:, 1] * along[:, 0]
    # Off a corner the foot is the corner itself: the distance counts, the side is that of the leg.
    return np.copysign(np.hypot(*away.T), beside), stations


class _Ladder:
    """One ladder being laid out."""

    def __init__(self, plan, played, course, tables, tee, size):
        self.width, self.height = size
        self.played, self.course, self.tables, self.tee = played, course, tables, tee
        self.unit = course.settings.unit
        self.on = OnPicture(plan)
        self.line = played.drawn if tee is None else tee.line
        self.size = min(max(LEAST_SIZE, self.width * 0.33), 7.0)
        column = width_of("888", self.size, True) + 1.5
        self.left, self.right = column, self.width - column
        self.middle = self.width / 2
        self.per_metre = (self.right - self.left) / 2 / ACROSS_M
        self.caption = cap_of(LEAST_SIZE) + 1.5
        self.low, self.high = 0.3, self.height - self.caption - 0.9
        self.items, self.places, self.remarks = [], [], []
        views = tee_views(played, course.settings) if tee is not None else []
        self.view = next((one for one in views if one.tee.tee_set == tee.tee_set), None)
        self.bars = [] if self.view is None else _bars(self.view, tables)

    def drawing(self):
        self.items.append(paper(self.width, self.height))
        self._ground()
        woods = [bar for bar in self.bars if bar.kind in ("trees", "tree")]
        hazards = [bar for bar in self.bars if bar.kind in HAZARDS]
        beside = [bar for bar in hazards if bar.row.enter is None and bar.kind == "penalty_area"]
        for bar in [*woods, *beside]:
            self._bar(bar)
        self._fairway()
        for bar in hazards:
            if bar not in beside:
                self._bar(bar)
        self._green()
        self._spine()
        self._widths()
        self._figures(hazards, [bar for bar in woods if bar.row.enter is not None])
        self._caption()
        return Drawing(self.width, self.height, tuple(self.items), tuple(self.places), tuple(self.remarks))

    def _y(self, place):
        return self.on.at(place)[1]

    def _x(self, across):
        return self.middle + max(min(across, ACROSS_M), -ACROSS_M) * self.per_metre

    def _ground(self):
        start, end = self._y(self.line.points[0]), self._top()
        self.items.append(box_area(self.left, min(start, end), self.right, max(start, end), "#eef0ec"))

    def _top(self):
        """The y of the green's back, else of the line's end."""
        green = self.played.green
        return self._y(self.line.points[-1] if green is None else green.back)

    def _bar(self, bar):
        if crosses(bar.row):
            self._crossing(bar)
            return
        low, high = sorted((self._y(bar.reach), self._y(bar.clear)))
        if high - low < _LEAST_BAR_MM:
            middle = (low + high) / 2
            low, high = middle - _LEAST_BAR_MM / 2, middle + _LEAST_BAR_MM / 2
        left, right = self._x(bar.left), self._x(bar.right)
        if bar.kind in ("trees", "penalty_area") and bar.row.enter is None:
            # Of what runs along the hole only its nearest margin is known at every height.
            nearest = bar.row.aside if bar.row.side == "right" else -bar.row.aside
            left, right = (self._x(nearest), self.right) if nearest > 0 else (self.left, self._x(nearest))
        if right - left < _LEAST_BAR_MM:
            half = _LEAST_BAR_MM / 2
            middle = min(max((left + right) / 2, self.left + half), self.right - half)
            left, right = middle - half, middle + half
        top = self._top() if bar.kind in ("trees", "tree") else 0.0
        body = box(self.left, top, self.right, max(self._y(self.line.points[0]), top))
        shape = box(left, low, right, high).intersection(body)
        if shape.is_empty or not shape.area:
            return
        self.items += hatched(shape, bar.kind)
        if bar.kind in HAZARDS:
            self.items += edged(shape.boundary, 0.18, DARK)
        self.places.append(Place(bar.kind, self.played.number, shape.centroid.x, shape.centroid.y))

    def _crossing(self, bar):
        """Water across the line of play, pulled straight as the hole is."""
        drawn = []
        for part in parts_of(bar.shape, "Polygon"):
            corners = _close_together(coordinates(part.exterior))
            across, _ = _offsets(self.line, corners)
            heights = self.on.points(corners)[:, 1]
            drawn.append(Polygon([(self._x(a), y) for a, y in zip(across, heights)]).buffer(0))
        body = box(self.left, 0.0, self.right, self.height)
        for shape in drawn:
            shown = shape.intersection(body)
            if not shown.is_empty:
                self.items += hatched(shown, bar.kind)
                self.items += edged(shown.boundary, 0.18, DARK)
        middle = (self._y(bar.reach) + self._y(bar.clear)) / 2
        self.places.append(Place(bar.kind, self.played.number, self.middle, middle))

    # --- the ground of the ladder ---

    def _fairway(self):
        fairway = None if self.view is None else self.view.fairway
        if fairway is None:
            return
        stations = np.arange(0.0, self.line.length, _STEP_M)
        cuts, _ = cuts_through(fairway, self.line, stations, self.course.settings.corridor_yd * YARD)
        run = []
        for station, cut in [*zip(stations, cuts), (None, None)]:
            if cut is not None and not (cut[2] and min(cut[0], cut[1]) < -ACROSS_M):
                run.append((self._y(self.line.at(station)), self._x(-cut[0]), self._x(cut[1])))
                continue
            if len(run) > 1:
                left = [(x, y) for y, x, _ in run]
                right = [(x, y) for y, _, x in run]
                ribbon = Polygon([*left, *right[::-1]]).buffer(0)
                self.items += filled(ribbon, LEAF)
                self.items += [Line(tuple(left), 0.15, QUIET), Line(tuple(right), 0.15, QUIET)]
            run = []

    def _widths(self):
        """The landing zones, each with the fairway's width at its ends and amid it."""
        fairway = None if self.view is None else self.view.fairway
        if fairway is None:
            return
        players = {one.name: one.players for one in self.course.tee_sets}.get(self.tee.tee_set) or "men"
        end = self.line.length if self.played.green is None else self.line.station(self.played.green.front)
        wanted, found = [], []
        for first, last in LANDING_ZONES_YD[players]:
            first, last = first * YARD, last * YARD
            if last > end - 30 * YARD and first > end - 60 * YARD:
                continue
            last = min(last, end - 20 * YARD)
            low, high = sorted((self._y(self.line.at(first)), self._y(self.line.at(last))))
            for x in (self.left, self.right):
                inwards = 0.9 if x == self.left else -0.9
                self.items.append(
                    Line(((x + inwards, low), (x, low), (x, high), (x + inwards, high)), 0.3, DARK)
                )
            self.places.append(Place("landing", self.played.number, self.middle, (low + high) / 2))
            wanted += [(first + last) / 2, first, last] if last > first else [first]
        cuts, _ = cuts_through(fairway, self.line, wanted, self.course.settings.corridor_yd * YARD)
        size = LEAST_SIZE
        high = cap_of(size) + 0.9
        for station, cut in zip(wanted, cuts):
            if cut is None or cut[2]:
                continue
            text = str(whole(to_unit(cut[0] + cut[1], self.unit)))
            y = self._y(self.line.at(station))
            x = (self._x(-cut[0]) + self._x(cut[1])) / 2
            x = min(max(x, self.left + 1.8), self.right - 1.8)
            if all(abs(y - other) > high for other in found) and not self._on_a_bar(x, y, text, size):
                found.append(y)
                self.items += _arrowed(x, y, self._x(-cut[0]), self._x(cut[1]), text, size)

    def _on_a_bar(self, x, y, text, size):
        half = width_of(text, size) / 2 + 0.3
        mine = box(x - half, y - cap_of(size) / 2 - 0.3, x + half, y + cap_of(size) / 2 + 0.3)
        for bar in self.bars:
            if bar.kind in HAZARDS:
                low, high = sorted((self._y(bar.reach), self._y(bar.clear)))
                left, right = self._x(bar.left), self._x(bar.right)
                if mine.intersects(box(left, low, max(right, left + 0.9), max(high, low + 0.9))):
                    return True
        return False

    def _green(self):
        green = self.played.green
        if green is None:
            return
        own = coordinates(green.geometry)
        across, _ = _offsets(self.line, own)
        ring = Polygon([(self._x(a), self._y(place)) for a, place in zip(across, own)]).buffer(0)
        if ring.is_empty:
            return
        self.items += filled(ring, PALE)
        self.items += edged(ring.boundary, 0.35, DARK)
        x, y = self.middle, self._y(green.middle)
        self.items += flag(x, y + 0.9, 2.6, DARK)

    def _spine(self):
        top = self._y(self.played.end)
        foot = self._y(self.line.points[0])
        self.items.append(Line(((self.middle, foot), (self.middle, top)), 0.12, QUIET, (0.6, 0.6)))
        for turn in self.line.turns.tolist():
            y = self._y(self.line.at(turn))
            self.items.append(Dots(((self.middle, y),), 0.45, DARK))
            self.places.append(Place("turn", self.played.number, self.middle, y))
        self.items.append(Line(((self.left, foot), (self.right, foot)), 0.3, DARK))
        for x in (self.left, self.right):
            self.items.append(Line(((x, foot), (x, self._top())), 0.12, HAIR))

    # --- the figures ---

    def _figures(self, hazards, woods):
        green = self.played.green
        front = None if green is None else self.line.station(green.front)
        near, far = [], []
        if self.tee is not None and green is not None:
            for row in self.tables.get("distances", ()):
                if row.kind == "green" and row.tee_set == self.tee.tee_set:
                    near += [
                        (green.front, row.reach, 0),
                        (green.middle, row.middle, 0),
                        (green.back, row.clear, 0),
                    ]
        order = sorted(hazards, key=lambda bar: _rank(bar, front))
        for bar in [*order, *woods]:
            near += [
                (place, figure, 1)
                for place, figure in zip((bar.reach, bar.clear), bar.from_tee)
                if front is None or self.line.station(place) < front - _LEVEL_M
            ]
            far += [
                (place, figure, 1)
                for place, figure in zip((bar.reach, bar.clear), bar.to_front)
                if figure is not None
            ]
        step = _EVERY * UNITS[self.unit]
        if self.tee is not None:
            end = self.line.length if front is None else front
            near += [(self.line.at(s), s, 2) for s in np.arange(step, end - step / 4, step)]
        if green is not None:
            far += [(place, figure, 2) for place, figure in self._rungs_to_front(front, step)]
        self._column(near, TEE)
        self._column(far, FLAG)

    def _rungs_to_front(self, front, step):
        """Places of the line of play from which it is so far to the front, over the turns ahead."""
        stations = np.arange(0.0, front, 1.0)
        left = np.array([self._left_at(station) for station in stations])
        return [
            (self.line.at(float(np.interp(-figure, -left, stations))), figure)
            for figure in np.arange(step, left.max(initial=0.0) - step / 4, step).tolist()
        ]

    def _left_at(self, station):
        return self.line.legs_to(station, self.played.green.front)

    def _column(self, figures, kind):
        """Figures beside the bars, moved apart; a rung without room is left out, a hazard is remarked on."""
        texts, ys, ranks = [], [], []
        for place, metres, rank in figures:
            text, y = str(whole(to_unit(metres, self.unit))), self._y(place)
            doubled = any(text == known and abs(y - other) < _CLOSE_MM * 4 for known, other in zip(texts, ys))
            if not doubled and self.low <= y <= self.high:
                texts.append(text)
                ys.append(y)
                ranks.append(rank)
        firm = [number for number, rank in enumerate(ranks) if rank < 2]
        high = cap_of(self.size) + 0.85
        found = kept_apart([ys[n] for n in firm], [high] * len(firm), self.low, self.high, _MOST_MOVED_MM)
        stands = {firm[n]: y for n, y in found.items()}
        for number, rank in enumerate(ranks):
            y = ys[number]
            inside = self.low + high / 2 <= y <= self.high - high / 2
            if rank == 2 and inside and all(abs(y - other) >= high for other in stands.values()):
                stands[number] = y
        left = kind == TEE
        edge, x = (self.left, self.left - 1.1) if left else (self.right, self.right + 1.1)
        out = -1.0 if left else 1.0
        for number, rank in enumerate(ranks):
            y = ys[number]
            if rank == 2:
                self.items.append(Line(((edge, y), (edge - out * 0.9, y)), 0.2, QUIET))
            if number not in stands:
                continue
            at = stands[number]
            if rank < 2:
                way = ((edge, y), (edge + out * 0.55, at), (edge + out * 0.85, at))
                self.items.append(Line(way, 0.15, DARK))
            size = self.size if rank < 2 else LEAST_SIZE
            base, tone = at + cap_of(size) / 2, (PALE, DARK, QUIET)[rank]
            text = Text(x, base, texts[number], size, rank < 2, "right" if left else "left", tone, kind)
            if rank == 0:
                ends = text.box
                half = cap_of(size) / 2 + 0.38
                self.items.append(rounded(ends[0] - 0.4, at - half, ends[2] + 0.4, at + half, DARK, 0.4))
            self.items.append(text)
        lost = [texts[n] for n in firm if n not in stands]
        if lost:
            text = say(
                "ladder of hole {number}: no room for {figures}",
                number=self.played.number,
                figures=", ".join(lost),
            )
            self.remarks.append(Remark(text, "no_room"))

    def _caption(self):
        """What each column counts, on plates as everywhere on the page."""
        y = self.height - self.caption / 2
        half = self.width / 2 - 0.5
        for kind, text, x in (
            (TEE, say("tee"), half / 2 + 0.2),
            (FLAG, say("front"), self.width - half / 2 - 0.2),
        ):
            room = half - 1.3 - (1.25 if kind == FLAG else 0.0)
            # A word cut short would say less than the mark alone.
            text = text if width_of(text, LEAST_SIZE, True) <= room else ""
            if kind == TEE or self.played.green is not None:
                self.items += Plate(((kind, text),), LEAST_SIZE).items(x, y, "caption")


def _rank(bar, front):
    """Which hazards' figures matter most: those in the way, then those near the line, short of the green."""
    row = bar.row
    beyond = front is not None and row.station_near > front - 5.0
    return (row.enter is None, beyond, row.aside > _NEAR_LINE_M, row.aside)


def _close_together(ring, step=4.0):
    """A ring with points at most so many metres apart."""
    found = []
    for start, end in zip(ring[:-1], ring[1:]):
        count = max(math.ceil(math.dist(start, end) / step), 1)
        found.append(start + (end - start) * (np.arange(count) / count)[:, None])
    return np.concatenate(found)


def _arrowed(x, y, left, right, text, size):
    """A width written between two small arrow heads at the margins."""
    half = width_of(text, size) / 2 + 0.35
    made = [Text(x, y + cap_of(size) / 2, text, size, align="centre", tone=DARK, about="width", halo=LEAF)]
    for edge, inwards, until in ((left, 0.55, x - half), (right, -0.55, x + half)):
        if (until - edge) * (1 if inwards > 0 else -1) > 0.3:
            made.append(Line(((edge, y), (until, y)), 0.12, DARK))
            made.append(Line(((edge + inwards, y - 0.35), (edge, y), (edge + inwards, y + 0.35)), 0.12, DARK))
    return made
