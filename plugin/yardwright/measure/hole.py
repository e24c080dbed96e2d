"""One hole laid out in its frame: its green and approach, its tees, and the line of play of each."""

import math
from dataclasses import dataclass, replace
from functools import reduce

import numpy as np

from ..model.geometry import bounds_array, coordinates, map_points
from ..model.remarks import Remark
from ..model.words import say
from .frame import frame_about
from .green import TooSmall, anchor_of, green_along
from .line import LineOfPlay, NoLine, as_point, tee_reference
from .par import pars_for
from .rows import told
from .units import UNITS, YARD
from .whose import HoleHere, assign

APPROACH_YD = 150.0
SHORT_APPROACH_YD = 100.0
SHORT_HOLE_YD = 300.0
"""The approach is taken from about the 150 yd marker, on a very short par 4 from the 100 yd marker
(common practice, no source)."""

PLACED = ("green", "tee", "plate", "marker")
"""The kinds that serve the hole they belong to or none; all others count wherever a hole comes near."""


@dataclass(frozen=True)
class TeePlay:
    """One tee set of a hole: ``feature`` is its tee or plate, ``reference`` (x, y) where it is measured
    from, ``line`` its own line of play."""

    tee_set: str
    feature: object
    reference: object
    line: LineOfPlay
    remarks: tuple = ()

    @property
    def length(self):
        """The hole's length from this tee, metres."""
        return self.line.length


@dataclass(frozen=True)
class PlayedHole:
    """A hole in its frame (metres). ``line``: the drawn line, shapely; ``drawn``: the same as LineOfPlay;
    ``green``: GreenPlay or None; ``tees``: TeePlay from the longest set's order of the course;
    ``features``: all that may matter here, geometry in the frame."""

    number: int
    hole: object
    frame: object
    drawn: LineOfPlay = None
    green: object = None
    tees: tuple = ()
    features: tuple = ()
    line_remarks: tuple = ()
    green_remarks: tuple = ()

    @property
    def line(self):
        """The drawn line as a shapely LineString, None when there is none."""
        return None if self.drawn is None else self.drawn.shape

    @property
    def remarks(self):
        """All remarks on the line, the green and the tees."""
        own = self.line_remarks + self.green_remarks
        return own + tuple(remark for tee in self.tees for remark in tee.remarks)

    @property
    def end(self):
        """Where a line of play ends: the green's middle, else the end of the drawn line."""
        return self.drawn.points[-1] if self.green is None else self.green.middle


class CourseIndex:
    """A course made quick to ask: bounds of all features, and which holes those without number serve.

    ``open`` marks the features that count wherever a hole comes near: those given to no hole, but for
    the kinds in PLACED. Holes that were laid out are kept in ``played``, by number.
    """

    def __init__(self, course):
        self.course = course
        self.bounds = bounds_array([feature.geometry for feature in course.features])
        self.holes = _holes_of_all(course)
        self.played = {}
        self.named = {}
        for position, numbers in enumerate(self.holes):
            for number in numbers:
                self.named.setdefault(number, []).append(position)
        self.open = np.array(
            [not numbers and f.kind not in PLACED for f, numbers in zip(course.features, self.holes)],
            dtype=bool,
        )

    def named_of(self, number):
        """The features given to a hole, by its number or by where they lie."""
        return [self.course.features[position] for position in self.named.get(number, ())]

    def open_within(self, box):
        """The features given to no hole whose bounds meet ``box`` (x least, y least, x most, y most)."""
        return [self.course.features[position] for position in np.flatnonzero(self.open & self._meets(box))]

    def within(self, box):
        """All features whose bounds meet ``box`` (x least, y least, x most, y most)."""
        return [self.course.features[position] for position in np.flatnonzero(self._meets(box))]

    def _meets(self, box):
        if not len(self.bounds):
            return np.zeros(0, dtype=bool)
        low_x, low_y, high_x, high_y = self.bounds.T
        return (low_x <= box[2]) & (high_x >= box[0]) & (low_y <= box[3]) & (high_y >= box[1])


def _holes_of_all(course):
    holes = [feature.holes for feature in course.features]
    lost = [i for i, f in enumerate(course.features) if f.kind in PLACED and not f.holes]
    found = _assigned(course, [(course.features[i].kind, course.features[i].geometry) for i in lost])
    for position, numbers in zip(lost, found):
        holes[position] = numbers
    return holes


def holes_near(course, kind, shape):
    """The numbers of the holes that a shape (in the course's CRS) of a kind belongs to by where it lies."""
    return _assigned(course, [(kind, shape)])[0]


def _assigned(course, things):
    """The holes of each ``(kind, shape)`` by where it lies, among the holes whose line is drawn."""
    lines = [hole for hole in course.holes if hole.line is not None]
    if not things or not lines:
        return [() for _ in things]
    frame = frame_about(np.concatenate([coordinates(hole.line) for hole in lines]), course.crs)
    to_plane = frame.to_frame(course.crs)
    greens = [f for f in course.features if f.kind == "green" and f.holes]
    green_of = {
        n: s for f, s in zip(greens, map_points([f.geometry for f in greens], to_plane)) for n in f.holes
    }
    here = [
        HoleHere(hole.number, shape, green_of.get(hole.number))
        for hole, shape in zip(lines, map_points([hole.line for hole in lines], to_plane))
    ]
    shapes = map_points([shape for _, shape in things], to_plane)
    return [assign(kind, shape, here) for (kind, _), shape in zip(things, shapes)]


def play_hole(course, number, index=None):
    """Hole ``number`` of a course laid out for measuring; None when there is nothing to lay out.

    A hole can be laid out when its line (two different points at least) is drawn, or when it has a tee (or
    plate) and a green. ``index`` saves work when many holes are asked for, or one more than once.
    """
    index = index or CourseIndex(course)
    if number not in index.played:
        index.played[number] = _lay_out(course, number, index)
    return index.played[number]


def longest_tee(played):
    """The TeePlay of a hole that measures longest, None when no tee is drawn."""
    return max(played.tees, key=lambda tee: tee.length, default=None)


def _lay_out(course, number, index):
    hole = course.hole(number)
    named = index.named_of(number)
    kinds = {feature.kind for feature in named}
    if hole is None or (hole.line is None and not ("green" in kinds and kinds & {"tee", "plate"})):
        return None

    anchors = [f.geometry for f in named if f.kind in ("green", "tee", "plate")]
    core = anchors if hole.line is None else [hole.line]
    frame = frame_about(
        np.concatenate([coordinates(shape) for shape in core]), course.crs, course.settings.height_m
    )
    to_frame = frame.to_frame(course.crs)
    own = _in_frame(named, to_frame)
    try:
        drawn, line_remarks = _drawn_line(hole, own, to_frame)
    except NoLine:
        return None
    reach = np.concatenate([coordinates(shape) for shape in anchors + core])
    box = _box(reach, course.settings.corridor_yd * YARD + 5.0, frame.from_frame(course.crs))
    features = own + _in_frame(index.open_within(box), to_frame)

    green_feature, green_remarks = _green_of(own, drawn)
    played = PlayedHole(number, hole, frame, drawn, None, (), tuple(features), line_remarks, green_remarks)
    try:
        return _with_green_and_tees(played, green_feature, course)
    except TooSmall:
        text = say(
            "green {number} is too small to measure: distances end where the line of play ends",
            number=green_feature.fid,
        )
        small = replace(played, green_remarks=(Remark(text, "too_small"),))
        return _with_green_and_tees(small, None, course)


def _in_frame(features, to_frame):
    shapes = map_points([feature.geometry for feature in features], to_frame)
    finite = np.isfinite(bounds_array(shapes)).all(axis=1).tolist()
    moved = []
    for feature, shape, sound in zip(features, shapes, finite):
        if not sound:
            continue
        remark = feature.remark
        if feature.mended:
            remark = told(feature.mended, remark)
        if feature.kind in PLACED and not feature.holes:
            remark = told(remark, say("has no hole number, given to this hole by where it lies"))
        moved.append(replace(feature, geometry=shape, remark=remark))
    return moved


def _box(points, margin, from_frame):
    """The bounds of ``points`` in the course's CRS, at least ``margin`` metres wider on every side.

    The points are left in the CRS they were drawn in: sent through the frame and back, a longitude drawn
    beyond 180 degrees would come back from the other end of the map.
    """
    origin, east, north = from_frame([(0.0, 0.0), (1.0, 0.0), (0.0, 1.0)])
    wider = 1.1 * margin * (np.abs(east - origin) + np.abs(north - origin))
    return (*(points.min(axis=0) - wider), *(points.max(axis=0) + wider))


def _drawn_line(hole, own, to_frame):
    greens = [f.geometry for f in own if f.kind == "green"]
    if hole.line is None:
        tees = [coordinates(f.geometry.centroid)[0] for f in own if f.kind in ("tee", "plate")]
        green = coordinates(greens[0].centroid)[0]
        start = max(tees, key=lambda tee: np.hypot(*(tee - green)))
        return LineOfPlay([start, green]), (say("no line of play is drawn: a straight one is taken"),)
    points = to_frame(coordinates(hole.line))
    starts, ends = (any(g.distance(as_point(points[i])) < 1.0 for g in greens) for i in (0, -1))
    remarks = tuple(filter(None, (hole.mended, hole.remark)))
    if starts and not ends:
        turned = say("the line is drawn from green to tee: it is turned round")
        return LineOfPlay(points[::-1]), (*remarks, turned)
    return LineOfPlay(points), remarks


def _green_of(own, drawn):
    greens = [f for f in own if f.kind == "green"]
    if not greens:
        return None, (say("no green is drawn: distances end where the line of play ends"),)
    end = as_point(drawn.points[-1])
    greens.sort(key=lambda f: f.geometry.distance(end))
    chosen = greens[0]
    remarks = [chosen.remark] if chosen.remark else []
    if len(greens) > 1:
        others = ", ".join(str(f.fid) for f in greens[1:])
        text = say("other greens of this hole are left aside: feature {numbers}", numbers=others)
        remarks.append(Remark(text, "other_greens"))
    shared = [str(number) for number in chosen.holes]
    if len(shared) > 1:
        remarks.append(say("one green for holes {numbers}", numbers=reduce(_and, shared)))
    return chosen, tuple(remarks)


def _and(most, last):
    return say("{most} and {last}", most=most, last=last)


def _with_green_and_tees(played, green_feature, course):
    settings = course.settings
    grounds = _teeing_grounds(played, course)
    if green_feature is None:
        return replace(played, tees=_tees(grounds, played.drawn, played.end, settings))

    last_leg = played.drawn.direction_at(played.drawn.length)
    anchor = anchor_of(green_feature.geometry, last_leg)

    def along(approach_from, point):
        return green_along(green_feature, approach_from, point, anchor, played.frame)

    def tees_to(end):
        return _tees(grounds, played.drawn, end, settings)

    remarks, tees = [], None
    named = _named_approach(played, anchor)
    par = played.hole.par
    if par is None:
        par = pars_for(_longest(tees_to(anchor), played.drawn, anchor)[1], "yd", "men")[0]
        if named is None and played.hole.approach_yd is None:
            remarks.append(say("no par: approach as on a par {par}, judged by its length", par=par))
    if named is not None:
        green = along(*named)
    elif played.hole.approach_yd is not None:
        green = along(*_approach_on_line(played.drawn, anchor, played.hole.approach_yd, remarks))
    elif par == 3:
        green = along(say("tee"), _longest(tees_to(anchor), played.drawn, anchor)[0])
    else:
        taken = []
        green = along(*_approach_on_line(played.drawn, anchor, APPROACH_YD, taken))
        tees = tees_to(green.middle)
        if _longest(tees, played.drawn, green.middle)[1] < SHORT_HOLE_YD * YARD:
            taken, tees = [], None
            green = along(*_approach_on_line(played.drawn, anchor, SHORT_APPROACH_YD, taken))
        remarks += taken

    return replace(
        played,
        green=green,
        tees=tees_to(green.middle) if tees is None else tees,
        green_remarks=played.green_remarks
        + tuple(remarks)
        + _chord_remarks(green, settings.unit)
        + green.remarks,
    )


def _longest(tees, drawn, end):
    """Where the longest tee is measured from and its length; without tees those of the drawn line."""
    if not tees:
        return drawn.points[0], drawn.legs_to(0.0, end)
    tee = max(tees, key=lambda tee: tee.length)
    return tee.reference, tee.length


def _chord_remarks(green, unit):
    if len(green.pieces) < 2:
        return ()
    start = green.pieces[0][0]
    cuts = ", ".join(
        say(
            "{low} to {high}",
            low=f"{(low - start) / UNITS[unit]:.1f}",
            high=f"{(high - start) / UNITS[unit]:.1f}",
        )
        for low, high in green.pieces
    )
    return (
        say(
            "the approach line cuts the green in {count} pieces: {cuts} {unit}",
            count=len(green.pieces),
            cuts=cuts,
            unit=unit,
        ),
    )


def _named_approach(played, anchor):
    """An approach point that somebody drew: a target or a marker marked as such; None if none."""
    for feature in played.features:
        if feature.get("approach") and (feature.kind == "marker" or played.number in feature.holes):
            point = coordinates(feature.geometry)[0]
            if np.hypot(*(point - anchor)) < 1.0:
                continue
            if feature.kind == "target":
                return say("point"), point
            if feature.kind == "marker":
                return say("marker"), _middle_of_pair(played, feature)
    return None


def _middle_of_pair(played, marker):
    """Where a marker stands; for one of a pair, the middle between its posts."""
    pair = marker.get("pair")
    posts = [f for f in played.features if f.kind == "marker" and pair and f.get("pair") == pair]
    return np.mean([coordinates(post.geometry)[0] for post in posts or [marker]], axis=0)


def _approach_on_line(drawn, anchor, distance_yd, remarks):
    station = drawn.station(anchor) - distance_yd * YARD
    if station < 0:
        text = say(
            "the line of play is shorter than {distance} yd: the approach is taken from its start",
            distance=f"{distance_yd:g}",
        )
        remarks.append(Remark(text, "from_start"))
        return say("start of the line"), drawn.points[0]
    return f"{distance_yd:g} yd", drawn.at(station)


def _teeing_grounds(played, course):
    """``[(tee set, feature, remarks)]`` in the course's order of tee sets; plates before tees."""
    by_set, unnamed = {}, []
    for feature in played.features:
        if feature.kind not in ("tee", "plate"):
            continue
        names = [name.strip() for name in str(feature.get("tee_set", "")).split(",") if name.strip()]
        for name in names:
            by_set.setdefault(name, []).append(feature)
        if not names:
            unnamed.append(feature)

    order = {tee_set.name: (tee_set.sort or 0, place) for place, tee_set in enumerate(course.tee_sets)}
    last = (float("inf"), 0)
    grounds = [
        (name, *_ground_of(by_set[name])) for name in sorted(by_set, key=lambda n: (*order.get(n, last), n))
    ]
    end = played.drawn.points[-1]
    unnamed.sort(key=lambda f: -np.hypot(*(coordinates(f.geometry.centroid)[0] - end)))
    for place, feature in enumerate(unnamed, start=1):
        name = "" if len(unnamed) == 1 else say("tee {number}", number=place)
        grounds.append((name, feature, (say("the tee names no tee set"), *_own_remark(feature))))
    return grounds


def _own_remark(feature):
    return (feature.remark,) if feature.remark else ()


def _ground_of(features):
    plates = [f for f in features if f.kind == "plate"]
    pool = plates or sorted(features, key=lambda f: -f.geometry.area)
    remarks = list(_own_remark(pool[0]))
    if len(pool) > 1:
        taken, others = pool[0].fid, ", ".join(str(f.fid) for f in pool[1:])
        if plates:
            text = say(
                "several plates of this set: feature {taken} is taken, not {others}",
                taken=taken,
                others=others,
            )
            remarks.append(Remark(text, "several_plates"))
        else:
            text = say(
                "several tees of this set: feature {taken} is taken, not {others}",
                taken=taken,
                others=others,
            )
            remarks.append(Remark(text, "several_tees"))
    return pool[0], tuple(remarks)


def _tees(grounds, drawn, end, settings):
    tees = []
    for name, feature, remarks in grounds:
        reference = _reference(feature, drawn, end, settings.tee_reference)
        points = [reference, *drawn.turn_points_after(drawn.station(reference)), end]
        if sum(map(math.dist, points, points[1:])) > 1.0:
            tees.append(TeePlay(name, feature, reference, LineOfPlay(points), remarks))
    return tuple(tees)


def _reference(feature, drawn, end, which):
    if feature.kind == "plate":
        return coordinates(feature.geometry)[0]
    station = drawn.station(coordinates(feature.geometry.centroid)[0])
    ahead = drawn.turn_points_after(station)
    return tee_reference(feature.geometry, ahead[0] if len(ahead) else end, which)
