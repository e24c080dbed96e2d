"""What is wrong, missing or doubtful in a drawn course, and how it can safely be mended.

``check_course`` looks at a whole course, ``CourseChecks`` at a hole when it is asked for. A check is a small
function that gives Findings: of those in ``SHARED`` each is called once with the Layout of the course, of
those in ``OF_A_HOLE`` once a hole with the Layout, the model Hole and its PlayedHole (None where there is
nothing to lay out). Nothing here changes the course: a Repair only says what would.

All limits below are our own rule, common practice without a source, unless one is named.
"""

import math
import re
from dataclasses import dataclass
from functools import cached_property

import numpy as np
from shapely.geometry import LineString, Polygon
from shapely.ops import linemerge, unary_union

from ..model.errors import Cancelled
from ..model.geometry import bounds_array, coordinates, map_points
from ..model.kinds import BY_NAME
from .accuracy import doubt, plus_minus
from .course import CARD_TOLERANCE_YD, GREEN_DEPTHS_YD
from .frame import frame_about
from .hole import PLACED, CourseIndex, play_hole
from .line import as_point
from .markers import marker_rows
from .par import check_par
from .units import YARD, to_square_unit, to_unit, whole
from .whose import NEAREST_WITHIN_M

GRAVITIES = ("wrong", "missing", "doubtful")
"""How grave a finding is, the gravest first."""

OVERLAP_M2 = 0.5
"""Areas that share no more than this overlap by the hand's own trembling."""
CUT_SHARE = 0.25
"""A repair cuts at most this share off an area: more is no slip of the hand, and somebody must look."""
WITHIN_SHARE = 0.95
"""An area that lies in another by this share was put there, not drawn over its margin."""
SAME_SHARE = 0.9
"""Two areas that share this much of what they cover together are one thing drawn twice."""
SAME_PLACE_M = 0.3
"""Two points, or two lines all along, no further apart than this are one thing drawn twice."""
SLIVER_M = 0.3
"""An area nowhere wider than this is left over from drawing or cutting."""
SPECK_M2 = 0.5
"""An area, or a hole in one, smaller than this is too."""
MENDED_SHARE = 0.01
"""An outline is mended where its area stays the same within this share."""
END_REACH_M = 15.0
"""A line of play that ends no further from its green than this was meant to end on it."""
TEE_BEHIND_YD = 30.0
TEE_OFF_YD = 40.0
"""A tee further behind the start of the line, or further beside the line, than this is doubtful."""
GAP_M = 1.0
"""Two pieces of one thing that come nearer than this, and do not touch, were meant to."""
TOUCHING_M = 0.01
BOUNDARY_GAP_M = 5.0
"""A boundary whose ends come nearer than this was meant to be closed; see also ``_CLOSED_AFTER``."""
_CLOSED_AFTER = 20.0
"""So many times its gap must a boundary be long: a short fence is no ring."""

SPECIFIC = ("penalty_area", "bunker", "green", "tee")
"""Where a ball lies that lies in two of them: in the first. Rules of Golf, Rule 2.2c, for the first three
(from memory); the tee comes last by our own rule. What overlaps is cut off the later one."""
OVERLAPPING = (("green", "bunker"), ("green", "penalty_area"), ("bunker", "penalty_area"), ("tee", "bunker"))
IN_PIECES = ("fairway", "penalty_area")
"""Kinds of which a hole has several pieces that may be meant to touch."""
_POINTS = ("tree", "marker", "plate", "target")
_LINES = ("path", "boundary")
_AREAS = ("tee", "green", "apron", "fairway", "bunker", "rough", "penalty_area", "trees")
_NO_MATTER = ("origin",)
"""Fields that two drawings of one thing may differ in."""


@dataclass(frozen=True)
class Change:
    """What becomes of one feature: another geometry (shapely, in the course's CRS), other ``fields``
    (``{name: value}``), or its deletion."""

    kind: str
    fid: int
    geometry: object = None
    fields: dict = None
    delete: bool = False


@dataclass(frozen=True)
class Repair:
    """What can be done without further thought. ``text`` says it; ``changes``: Changes, all or none;
    ``before``: the model Features and Holes it was worked out from, which must still be so. A feature without
    geometry has none there."""

    text: str
    changes: tuple
    before: tuple = ()


@dataclass(frozen=True)
class Finding:
    """One thing that is not as it should be.

    hole: a number of the course, None where it concerns no single hole. check: which check found it.
    gravity: one of GRAVITIES. text, remedy: what is the matter, what to do; sentences. features: ``(kind,
    fid)`` of what it is about, the feature to mend first. box: where it is, in the course's CRS (x least, y
    least, x greatest, y greatest), None if nowhere. repair: a Repair, None where somebody must judge.
    """

    hole: int
    check: str
    gravity: str
    text: str
    remedy: str
    features: tuple = ()
    box: tuple = None
    repair: Repair = None


def check_course(course, holes=None, progress=None, index=None):
    """The Findings of a model Course, a tuple: by hole (those of no hole first), then by gravity and feature.

    holes: numbers to look at, None for all; those of no hole are left out where numbers are given.
    progress: ``progress(done, total)`` is called after every hole and returns False to stop, which raises
    Cancelled. index: the course's CourseIndex.
    """
    checks = CourseChecks(course, index)
    found = [] if holes else list(checks.of_course())
    numbers = [number for number in checks.numbers if not holes or number in holes]
    for done, number in enumerate(numbers, start=1):
        found.extend(checks.of_hole(number))
        if progress is not None and progress(done, len(numbers)) is False:
            raise Cancelled()
    return tuple(found)


def checks_of_hole(course, number, index=None):
    """The Findings of one hole, the gravest first. CourseChecks saves work where several are asked for."""
    return CourseChecks(course, index).of_hole(number)


class CourseChecks:
    """The checks of one model Course, a hole at a time. ``numbers``: the numbers of its holes."""

    def __init__(self, course, index=None):
        self.numbers = tuple(hole.number for hole in course.holes)
        self._layout = Layout(course, index or CourseIndex(course))

    def of_course(self):
        """The Findings that concern no single hole, the gravest first."""
        return _in_order(self._shared.get(None, ()))

    def of_hole(self, number):
        """The Findings of one hole, the gravest first."""
        layout = self._layout
        hole = layout.course.hole(number)
        if hole is None:
            return ()
        played = play_hole(layout.course, number, layout.index)
        found = list(self._shared.get(number, ()))
        for check in OF_A_HOLE:
            found.extend(check(layout, hole, played))
        return _in_order(found)

    @cached_property
    def _shared(self):
        """What the checks in SHARED find, ``{hole or None: [Finding]}``."""
        by_hole = {}
        for check in SHARED:
            for finding in check(self._layout):
                known = finding.hole if finding.hole in self.numbers else None
                by_hole.setdefault(known, []).append(finding)
        return by_hole


def _in_order(findings):
    return tuple(sorted(findings, key=lambda f: (GRAVITIES.index(f.gravity), f.features, f.check, f.text)))


class Layout:
    """A course in one plane of metres, for what is asked of features among themselves.

    course, index: the model Course and its CourseIndex. shapes: the features' geometries in the plane,
    bounds: theirs, (n, 4). places: ``{kind: positions in course.features}``, those that the plane can hold.
    lines: ``{number: line of play in the plane}``.

    The plane is that of a hole frame about the middle of the course, as true as any within some kilometres:
    the scale is off by half the square of the distance over the Earth's radius, a millionth at 9 km.
    """

    def __init__(self, course, index):
        self.course = course
        self.index = index
        drawn = [hole for hole in course.holes if hole.line is not None]
        core = [hole.line for hole in drawn] or [feature.geometry for feature in course.features]
        self.shapes, self.bounds, self.places, self.lines = [], np.empty((0, 4)), {}, {}
        if not core:
            return
        frame = frame_about(
            np.concatenate([coordinates(one) for one in core]), course.crs, course.settings.height_m
        )
        to_plane = frame.to_frame(course.crs)
        self.shapes = map_points([feature.geometry for feature in course.features], to_plane)
        self.bounds = bounds_array(self.shapes)
        for place in np.flatnonzero(np.isfinite(self.bounds).all(axis=1)).tolist():
            self.places.setdefault(course.features[place].kind, []).append(place)
        self.lines = dict(
            zip((hole.number for hole in drawn), map_points([hole.line for hole in drawn], to_plane))
        )

    def of(self, *kinds):
        """The positions of the features of some kinds."""
        return [place for kind in kinds for place in self.places.get(kind, ())]

    def near(self, ones, others, margin=0.0):
        """Pairs of positions, one of each list, whose bounds come within ``margin`` metres; each once."""
        if not ones or not others:
            return []
        others_low, others_high = self.bounds[others][:, :2], self.bounds[others][:, 2:]
        pairs = []
        for place in ones:
            low, high = self.bounds[place, :2] - margin, self.bounds[place, 2:] + margin
            meets = ((others_low <= high) & (low <= others_high)).all(axis=1)
            pairs += [(place, others[other]) for other in np.flatnonzero(meets)]
        same = ones == others
        return [(i, j) for i, j in pairs if i < j or (not same and i != j)]

    def hole_of(self, *places):
        """The hole that features count for together: one they share, else one that any was given to, else
        the nearest; None where there is none."""
        given = [[n for n in self.index.holes[place] if self.course.hole(n)] for place in places]
        common = set(given[0]).intersection(*given[1:])
        if common:
            return min(common)
        for numbers in given:
            if numbers:
                return numbers[0]
        away = [(self.shapes[place].distance(line), n) for place in places for n, line in self.lines.items()]
        nearest = min(away, default=(math.inf, None))
        return nearest[1] if nearest[0] <= NEAREST_WITHIN_M else None

    def may_share_a_hole(self, i, j):
        """Whether two features count for one hole: a number in common, or one that was given to none."""
        one, other = self.index.holes[i], self.index.holes[j]
        return not one or not other or bool(set(one) & set(other))

    def area(self, square_metres):
        """An area as text in the course's unit."""
        unit = self.course.settings.unit
        return f"{to_square_unit(square_metres, unit):.1f} {'m²' if unit == 'm' else 'sq yd'}"

    def length(self, metres):
        """A length as text in the course's unit, one decimal."""
        unit = self.course.settings.unit
        return f"{to_unit(metres, unit):.1f} {unit}"

    @cached_property
    def _by_key(self):
        return {_key(feature): feature for feature in self.course.features}

    def drawn(self, feature):
        """The feature of the course, in its CRS, that one in a hole's frame is."""
        return self._by_key[_key(feature)]

    @cached_property
    def images(self):
        """The course's images, by id."""
        return {image.id: image for image in self.course.images}


# Words


def _kind(name):
    """A kind's title within a sentence."""
    return BY_NAME[name].title.split(" (")[0].lower()


def _called(feature):
    """A feature within a sentence: by its label or tee set, else by its number."""
    own = feature.label or (feature.get("tee_set") if feature.kind in ("tee", "plate") else "")
    if own:
        return f"{_kind(feature.kind)} “{own}”"
    return f"{_kind(feature.kind)} {feature.fid}" if feature.fid >= 0 else f"an unsaved {_kind(feature.kind)}"


def _sentence(text):
    return f"{text[0].upper()}{text[1:].rstrip('.')}."


def _and(texts):
    texts = list(texts)
    return " and ".join(filter(None, [", ".join(texts[:-1]), *texts[-1:]]))


def _from(tee):
    return tee.tee_set or "the tee"


def _key(feature):
    return feature.kind, feature.fid


def _box(*shapes):
    """The bounds of shapely geometries together; None of none."""
    bounds = bounds_array([shape for shape in shapes if shape is not None])
    return (*bounds[:, :2].min(axis=0).tolist(), *bounds[:, 2:].max(axis=0).tolist()) if len(bounds) else None


def _about(hole, check, gravity, text, remedy, features, box=None, repair=None):
    """A Finding on model Features; its box is theirs unless one is given."""
    keys = tuple(dict.fromkeys(_key(feature) for feature in features))
    box = box or _box(*(feature.geometry for feature in features))
    return Finding(hole, check, gravity, _sentence(text), remedy, keys, box, repair)


def _on_hole(hole, check, gravity, text, remedy, repair=None):
    """A Finding on a hole as such: its line of play."""
    keys = () if hole.fid is None else (("hole", hole.fid),)
    return Finding(
        hole.number,
        check,
        gravity,
        _sentence(text),
        remedy,
        keys,
        None if hole.line is None else _box(hole.line),
        repair,
    )


# Checks of features among themselves


def overlaps(layout):
    """Two things on one piece of ground where only one can be."""
    features = layout.course.features
    for pair in OVERLAPPING:
        lesser_kind, greater_kind = sorted(pair, key=SPECIFIC.index, reverse=True)
        for i, j in layout.near(layout.of(lesser_kind), layout.of(greater_kind)):
            shared = layout.shapes[i].intersection(layout.shapes[j]).area
            if shared <= OVERLAP_M2:
                continue
            lesser, greater = features[i], features[j]
            within = shared >= WITHIN_SHARE * layout.shapes[i].area
            yield _about(
                layout.hole_of(i, j),
                "overlap",
                "doubtful" if within else "wrong",
                f"{_called(lesser)} lies within {_called(greater)}"
                if within
                else f"{_called(lesser)} and {_called(greater)} overlap by {layout.area(shared)}",
                f"A ball there lies in the {_kind(greater.kind)}: draw the margin of one of them anew.",
                (lesser, greater),
                _box(lesser.geometry.intersection(greater.geometry)),
                _cut(lesser, greater, shared / layout.shapes[i].area),
            )
    for i, j in layout.near(layout.of("bunker"), layout.of("bunker")):
        shared = layout.shapes[i].intersection(layout.shapes[j]).area
        if shared > OVERLAP_M2 and not _same_area(layout.shapes[i], layout.shapes[j], shared):
            one, other = features[i], features[j]
            yield _about(
                layout.hole_of(i, j),
                "overlap",
                "doubtful",
                f"{_called(one)} and {_called(other)} overlap by {layout.area(shared)}",
                "Merge them if they are one bunker; else draw the margin of one of them anew.",
                (one, other),
                _box(one.geometry.intersection(other.geometry)),
            )


def _cut(lesser, greater, share):
    """The Repair that cuts ``greater`` out of ``lesser``; None where little or no single area is left."""
    if share > CUT_SHARE:
        return None
    left = lesser.geometry.difference(greater.geometry)
    parts = list(getattr(left, "geoms", [left]))
    # A cut may leave crumbs beside what remains; two real pieces are for somebody to judge.
    parts = [part for part in parts if part.area > 0.01 * lesser.geometry.area]
    if len(parts) != 1 or parts[0].geom_type != "Polygon" or not parts[0].is_valid:
        return None
    text = f"Cut the {_kind(greater.kind)} out of the {_kind(lesser.kind)}"
    return Repair(text, (Change(*_key(lesser), geometry=parts[0]),), (lesser, greater))


def drawn_twice(layout):
    """One thing drawn twice."""
    features = layout.course.features
    for kind in _AREAS + _POINTS + _LINES:
        places = layout.of(kind)
        for i, j in layout.near(places, places, SAME_PLACE_M):
            one, other = features[i], features[j]
            if one.fid == other.fid or not _may_be_one(one, other):
                continue
            if not _same(kind, layout, i, j):
                continue
            # Saved features have numbers from 1, unsaved ones -2, -3 and so on.
            first, later = sorted((one, other), key=lambda f: (f.fid < 0, abs(f.fid)))
            surplus = later if _says_no_more(later, first) else first if _says_no_more(first, later) else None
            repair = None
            if surplus is not None:
                which = str(surplus.fid) if surplus.fid >= 0 else "that is not saved yet"
                text = f"Delete the {_kind(kind)} {which}"
                repair = Repair(text, (Change(*_key(surplus), delete=True),), (first, later))
            yield _about(
                layout.hole_of(i, j),
                "twice",
                "wrong",
                f"{_called(first)} is drawn twice: {_number(first)} and {_number(later)}",
                "Delete one of them. One feature may serve several holes, and one tee several tee sets.",
                (later, first),
                None,
                repair,
            )


def _number(feature):
    return f"feature {feature.fid}" if feature.fid >= 0 else "one not saved yet"


def _same(kind, layout, i, j):
    one, other = layout.shapes[i], layout.shapes[j]
    if kind in _POINTS:
        return one.distance(other) <= SAME_PLACE_M
    if kind in _LINES:
        return one.hausdorff_distance(other) <= SAME_PLACE_M
    smaller, larger = sorted((one.area, other.area))
    return smaller >= SAME_SHARE * larger and _same_area(one, other, one.intersection(other).area)


def _same_area(one, other, shared):
    return shared >= SAME_SHARE * (one.area + other.area - shared)


def _may_be_one(one, other):
    """Whether nothing was said of two drawings that tells them apart: a tee for each of two tee sets and a
    post for each of two distances are meant."""
    if one.kind in ("tee", "plate"):
        return one.get("tee_set", "") == other.get("tee_set", "") or not (
            one.get("tee_set") and other.get("tee_set")
        )
    if one.kind in _POINTS:
        return not any(
            name in one.attributes and name in other.attributes and one.get(name) != other.get(name)
            for name in ("states_yd", "states_m", "states_to")
        )
    return True


def _says_no_more(one, other):
    """Whether all that was said of one drawing stands with the other too."""
    if not set(one.holes) <= set(other.holes):
        return False
    own, others = (
        {**f.attributes, "label": f.label, "seen_in": f.seen_in, "view": f.view} for f in (one, other)
    )
    return all(others.get(name) == said for name, said in own.items() if said and name not in _NO_MATTER)


def crossing_outlines(layout):
    """Areas whose outline crosses itself; the reading mends what it can and says so in the remark."""
    for place in layout.of(*_AREAS):
        feature = layout.course.features[place]
        if not any(map(_tells_of_mending, feature.remark.split("; "))):
            continue
        whole_area = _one_area(feature.geometry, layout.shapes[place])
        repair = None
        if whole_area is not None:
            text = "Take away the loop"
            repair = Repair(text, (Change(*_key(feature), geometry=whole_area),), (feature,))
        yield _about(
            layout.hole_of(place),
            "crossing",
            "wrong",
            f"the outline of {_called(feature)} crosses or touches itself",
            "Move its vertices with the vertex tool until it does not, or split it in two.",
            (feature,),
            None,
            repair,
        )


def _tells_of_mending(remark):
    return remark.endswith("was mended")


def _one_area(mended, on_ground):
    """The mended outline without its loops, where they are next to nothing; None where they are not."""
    parts, sizes = zip(*zip(getattr(mended, "geoms", [mended]), getattr(on_ground, "geoms", [on_ground])))
    greatest = max(range(len(parts)), key=lambda k: sizes[k].area)
    kept = _without_specks(parts[greatest], sizes[greatest])
    same = abs(kept.area - mended.area) <= MENDED_SHARE * mended.area
    return kept if same and kept.is_valid else None


def _without_specks(polygon, on_ground):
    """A polygon without the holes that are smaller than a speck."""
    rings = [
        ring for ring, size in zip(polygon.interiors, on_ground.interiors) if Polygon(size).area >= SPECK_M2
    ]
    return polygon if len(rings) == len(polygon.interiors) else Polygon(polygon.exterior, rings)


def slivers(layout):
    """Areas too narrow to be anything, and specks left open inside one."""
    for place in layout.of(*_AREAS):
        feature, shape = layout.course.features[place], layout.shapes[place]
        if _is_sliver(shape):
            yield _about(
                layout.hole_of(place),
                "sliver",
                "wrong",
                f"{_called(feature)} is a sliver of {layout.area(shape.area)}",
                "Delete it, or draw it anew.",
                (feature,),
                None,
                Repair(
                    f"Delete the {_kind(feature.kind)}", (Change(*_key(feature), delete=True),), (feature,)
                ),
            )
        elif shape.geom_type == "Polygon" and len(shape.interiors):
            filled = _without_specks(feature.geometry, shape)
            specks = len(shape.interiors) - len(filled.interiors)
            if not specks:
                continue
            repair = None
            if filled.is_valid and filled.area - feature.geometry.area <= MENDED_SHARE * filled.area:
                repair = Repair(
                    "Fill what was left open", (Change(*_key(feature), geometry=filled),), (feature,)
                )
            yield _about(
                layout.hole_of(place),
                "speck",
                "doubtful",
                f"{_called(feature)} has {specks} hole{'s' * (specks > 1)} too small to be meant",
                "Delete the ring with the vertex tool or “Delete ring”.",
                (feature,),
                None,
                repair,
            )


def _is_sliver(shape):
    if shape.area < SPECK_M2:
        return True
    # Twice area over outline is the width of a strip; whatever is far wider needs no closer look.
    return 2.0 * shape.area / shape.length < 2.0 * SLIVER_M and shape.buffer(-SLIVER_M / 2).is_empty


def gaps(layout):
    """Pieces of one hole's fairway or penalty area that nearly touch."""
    for kind in IN_PIECES:
        places = layout.of(kind)
        for i, j in layout.near(places, places, GAP_M):
            apart = layout.shapes[i].distance(layout.shapes[j])
            if not TOUCHING_M < apart < GAP_M or not layout.may_share_a_hole(i, j):
                continue
            one, other = layout.course.features[i], layout.course.features[j]
            yield _about(
                layout.hole_of(i, j),
                "gap",
                "doubtful",
                f"{_called(one)} and {_called(other)} are only {layout.length(apart)} apart",
                "If they are one piece of ground, draw the gap over with “Reshape”, or merge them.",
                (one, other),
            )


def boundary_gaps(layout):
    """A boundary that is nearly closed, and two boundaries that nearly meet."""
    features = layout.course.features
    ends = []
    for place in layout.of("boundary"):
        points = coordinates(layout.shapes[place])
        if layout.shapes[place].geom_type != "LineString":
            continue
        if np.hypot(*(points[0] - points[-1])) > TOUCHING_M:
            ends += [(place, 0, points[0]), (place, -1, points[-1])]
    met = set()
    for here, (place, end, point) in enumerate(ends):
        away = [
            (float(np.hypot(*(point - theirs))), there)
            for there, (_, _, theirs) in enumerate(ends)
            if there != here
        ]
        apart, there = min(away)
        if apart <= TOUCHING_M or frozenset((here, there)) in met:
            continue
        met.add(frozenset((here, there)))
        other, other_end, _ = ends[there]
        own = other == place
        long_enough = layout.shapes[place].length > _CLOSED_AFTER * apart
        if apart < BOUNDARY_GAP_M and long_enough if own else apart < GAP_M:
            yield _boundary_gap(layout, features[place], end, features[other], other_end, apart)


def _boundary_gap(layout, one, end, other, other_end, apart):
    points, others = coordinates(one.geometry), coordinates(other.geometry)
    if one is other:
        text = f"{_called(one)} is not closed: its ends are {layout.length(apart)} apart"
        done, line = "Close the boundary", np.concatenate([points, points[:1]])
        changed = one
    else:
        text = f"the ends of {_called(one)} and {_called(other)} are {layout.length(apart)} apart"
        done, line, changed = "Join the ends", others.copy(), other
        line[other_end] = points[end]
    return _about(
        None,
        "boundary_gap",
        "wrong",
        text,
        "Draw its end on to where it belongs.",
        (changed,) if one is other else (changed, one),
        _box(as_point(points[end]), as_point(others[other_end])),
        Repair(
            done,
            (Change(*_key(changed), geometry=LineString(line)),),
            (one,) if one is other else (one, other),
        ),
    )


def outside(layout):
    """Tees and greens beyond the boundary, where one is closed about their hole."""
    ground = _within_boundary(layout)
    if ground is None:
        return
    for place in layout.of("tee", "plate", "green"):
        feature = layout.course.features[place]
        number = layout.hole_of(place)
        line = layout.lines.get(number)
        # A ring about a part of the course says nothing of the holes beside it.
        if line is None or not ground.covers(line.interpolate(0.5, normalized=True)):
            continue
        if not ground.covers(layout.shapes[place].centroid):
            yield _about(
                number,
                "outside",
                "wrong",
                f"{_called(feature)} lies outside the course’s boundary",
                "Look whether it, or the boundary, was drawn in the wrong place.",
                (feature,),
            )


def _within_boundary(layout):
    """The ground that closed boundaries enclose and holes are played on; None without such."""
    lines = [
        part
        for place in layout.of("boundary")
        for part in getattr(layout.shapes[place], "geoms", [layout.shapes[place]])
    ]
    if not lines:
        return None
    merged = linemerge(lines) if len(lines) > 1 else lines[0]
    rings = []
    for part in getattr(merged, "geoms", [merged]):
        points = coordinates(part)
        if len(points) > 3 and np.hypot(*(points[0] - points[-1])) <= TOUCHING_M:
            ring = Polygon(points).buffer(0)
            if any(ring.covers(line.interpolate(0.5, normalized=True)) for line in layout.lines.values()):
                rings.append(ring)
    return unary_union(rings) if rings else None


def left_out(layout):
    """What no hole could be found for, and what names a hole that is not there."""
    known = {hole.number for hole in layout.course.holes}
    for feature, numbers in zip(layout.course.features, layout.index.holes):
        absent = [number for number in numbers if number not in known]
        if absent:
            yield _about(
                next((number for number in numbers if number in known), None),
                "no_such_hole",
                "wrong",
                f"{_called(feature)} names hole {_and(map(str, absent))}, which is not there",
                "Correct the number, or draw that hole’s line of play.",
                (feature,),
            )
        elif feature.kind in PLACED and not numbers and not _for_practice(feature):
            yield _about(
                None,
                "left_out",
                "doubtful",
                f"{_called(feature)} has no hole and lies near none: it is left out",
                "Give it its hole’s number; write “practice” in its note if it belongs to none.",
                (feature,),
            )


def _for_practice(feature):
    said = (feature.label, feature.get("note", ""), feature.get("tee_set", ""))
    return any("practice" in str(text).lower() for text in said)


_PROBLEM = re.compile(r"^(?:Layer|Table) (\w+), (?:feature|row) (-?\d+): (.*)$")
_OTHER_HOLE = re.compile(r"there is another hole (\d+) \(feature (-?\d+)\)")


def unread(layout):
    """Rows that could not be read, which the reading has told of."""
    for problem in layout.course.problems:
        parts = _PROBLEM.match(problem)
        if parts is None:
            yield Finding(None, "unread", "doubtful", _sentence(problem), "Correct it in the table.")
            continue
        kind, fid, reason = parts.group(1), int(parts.group(2)), parts.group(3)
        other = _OTHER_HOLE.search(reason)
        if other:
            yield _second_hole(layout, fid, int(other.group(1)), int(other.group(2)))
        elif reason.startswith("it has no geometry"):
            text = f"{_kind(kind)} {fid}" if fid >= 0 else f"an unsaved {_kind(kind)}"
            yield Finding(
                None,
                "empty",
                "wrong",
                _sentence(f"{text} has no outline: it is left out"),
                "Draw it anew, or delete its row.",
                ((kind, fid),),
                None,
                Repair("Delete the empty row", (Change(kind, fid, delete=True),)),
            )
        else:
            yield Finding(
                None,
                "unread",
                "wrong" if "left out" in reason else "doubtful",
                _sentence(f"{_kind(kind)} {fid}: {reason}"),
                "Correct the row in the attribute table, draw it anew, or delete it.",
                ((kind, fid),),
            )


def _second_hole(layout, fid, number, kept):
    hole = layout.course.hole(number)
    return Finding(
        number,
        "number_twice",
        "wrong",
        f"Two lines of play have the number {number}: one is left out.",
        "Correct the number of one of them, or delete it.",
        (("hole", fid), ("hole", kept)),
        None if hole is None or hole.line is None else _box(hole.line),
    )


def odd_values(layout):
    """Values that the reading did not understand or doubted."""
    remedy = "Correct the value in the attribute table or the form."
    for place in layout.of(*layout.places):
        feature = layout.course.features[place]
        said = _but_for_mending(feature.remark)
        if said:
            text = f"{_called(feature)}: {said}"
            yield _about(layout.hole_of(place), "value", "doubtful", text, remedy, (feature,))


def _but_for_mending(remark):
    return "; ".join(part for part in remark.split("; ") if part and not _tells_of_mending(part))


def tee_sets(layout):
    """Whether there is a table of tee sets, and whether the scorecard keeps to it."""
    course = layout.course
    known = {tee_set.name for tee_set in course.tee_sets}
    carded = dict.fromkeys(name for _, name in course.scorecard)
    drawn = [name for place in layout.of("tee", "plate") for name in _sets_of(course.features[place])]
    if not known:
        if drawn or carded:
            used = list(dict.fromkeys([*carded, *drawn]))
            verb = "are" if len(used) > 1 else "is"
            text = f"The table of tee sets is empty, but {_and(f'“{name}”' for name in used)} {verb} used."
            yield Finding(
                None, "tee_set", "missing", text, "Write the tee sets into the table, in their order."
            )
        return
    for name in carded:
        if name not in known:
            text = f"The scorecard names the tee set “{name}”, which is not in the table of tee sets."
            yield Finding(None, "tee_set", "wrong", text, "Correct the scorecard, or add the tee set.")


def _sets_of(feature):
    return [name.strip() for name in str(feature.get("tee_set", "")).split(",") if name.strip()]


def stroke_indexes(layout):
    """Stroke indexes missing, and given to two holes."""
    holes = layout.course.holes
    given = {}
    for hole in holes:
        if hole.stroke_index is not None:
            given.setdefault(hole.stroke_index, []).append(hole)
    if holes and not given:
        yield Finding(
            None,
            "stroke_index",
            "missing",
            "No hole has a stroke index.",
            "Write them into the holes’ forms.",
        )
        return
    for hole in holes:
        if hole.stroke_index is None:
            yield _on_hole(
                hole,
                "stroke_index",
                "missing",
                "the hole has no stroke index",
                "Write it into the hole’s form.",
            )
        elif given[hole.stroke_index][0] is not hole:
            first = given[hole.stroke_index][0].number
            yield _on_hole(
                hole,
                "stroke_index",
                "wrong",
                f"stroke index {hole.stroke_index} is hole {first}’s too",
                "Correct one of them: each index is given once.",
            )


# Checks of a hole


def missing_parts(layout, hole, played):
    """A hole without line of play, green or tee."""
    kinds = {feature.kind for feature in layout.index.named_of(hole.number)}
    if hole.line is None:
        yield _on_hole(
            hole,
            "no_line",
            "missing",
            "the hole has no line of play",
            "Draw it from the back tee over the turn points to the green.",
        )
    elif played is None:
        yield _on_hole(
            hole,
            "no_line",
            "wrong",
            "the line of play has no two different points",
            "Delete it and draw it from the back tee to the green.",
        )
    if "green" not in kinds:
        yield _on_hole(hole, "no_green", "missing", "the hole has no green", "Draw its green.")
    if not kinds & {"tee", "plate"}:
        yield _on_hole(
            hole, "no_tee", "missing", "the hole has no tee", "Draw its tees, or their permanent markers."
        )


def line_of_play(layout, hole, played):
    """A line drawn the wrong way, one that misses its green, and one that crosses itself."""
    if hole.line is None or played is None:
        return
    said = _but_for_mending(hole.remark)
    if said:
        gravity = "wrong" if "several parts" in said else "doubtful"
        yield _on_hole(hole, "value", gravity, said, "Correct the hole’s line, or its form.")
    if not hole.line.is_simple:
        yield _on_hole(
            hole,
            "line_crosses",
            "wrong",
            "the line of play crosses itself",
            "Move or delete its turn points.",
        )
    green = played.green
    if green is None:
        return
    points = played.frame.to_frame(layout.course.crs)(coordinates(hole.line))
    from_start, from_end = (green.geometry.distance(as_point(points[place])) for place in (0, -1))
    if from_start < from_end and from_start <= END_REACH_M and _tees_near_end(played, points):
        turned = LineString(coordinates(hole.line)[::-1])
        yield _on_hole(
            hole,
            "line_backwards",
            "wrong",
            "the line of play is drawn from green to tee",
            "Turn it round: it leads from the back tee to the green.",
            Repair("Turn the line round", (Change("hole", hole.fid, geometry=turned),), (hole,)),
        )
    elif from_end > 0.0:
        yield _on_hole(
            hole,
            "line_end",
            "wrong",
            f"the line of play ends {layout.length(from_end)} from the green",
            "Move its end to the middle of the green.",
            _end_on_green(layout, hole, played, green, from_end),
        )


def _tees_near_end(played, points):
    """Whether the tees, if there are any, lie nearer to where the line is drawn to than to where from."""
    if not played.tees:
        return True
    tees = np.array([tee.reference for tee in played.tees])
    from_start, from_end = (np.hypot(*(tees - points[place]).T).max() for place in (0, -1))
    return bool(from_end < from_start)


def _end_on_green(layout, hole, played, green, away):
    """The Repair that moves the line's last point to the green's middle, its turn points left as they are."""
    line = played.drawn
    if away > END_REACH_M or line.station(green.middle) <= line.vertex_stations[-2]:
        return None
    points = coordinates(hole.line).copy()
    middle = played.frame.from_frame(layout.course.crs)([green.middle])[0]
    if np.hypot(*(middle - points[-1])) > 180.0:
        return None  # in degrees, beyond the edge of the map: it would come back from its other end
    points[-1] = middle
    text = "Move the end of the line to the middle of the green"
    return Repair(
        text, (Change("hole", hole.fid, geometry=LineString(points)),), (hole, layout.drawn(green.feature))
    )


_REMARKS = (
    (
        "the approach point lies on the green",
        "approach",
        "wrong",
        "Give the hole another approach distance, or move the point it is taken from.",
    ),
    ("the approach is taken from its start", "approach", "doubtful", "Give the hole an approach distance."),
    ("longest cut is taken", "approach", "doubtful", "Look at the green’s outline and approach."),
    ("is too small to measure", "green", "wrong", "Draw the green anew."),
    (
        "other greens of this hole",
        "green",
        "doubtful",
        "Give each green only the holes that are played to it.",
    ),
    ("several tees of this set", "tee", "doubtful", "Give each tee the tee set that plays from it."),
    ("several plates of this set", "tee", "doubtful", "Keep one permanent marker a tee set."),
)
"""Of a PlayedHole's remarks those that something can be done about: how each is known, which check that is,
how grave, and what to do."""


def remarks(layout, hole, played):
    """What laying the hole out has remarked on."""
    if played is None:
        return
    about = [(remark, None) for remark in played.line_remarks + played.green_remarks]
    about += [(remark, tee) for tee in played.tees for remark in tee.remarks]
    for remark, tee in about:
        for known, check, gravity, remedy in _REMARKS:
            if known not in remark:
                continue
            if tee is not None:
                text = f"{_from(tee)}: {remark}"
                yield _about(hole.number, check, gravity, text, remedy, [layout.drawn(tee.feature)])
            else:
                yield _on_green(layout, hole, check, gravity, remark, remedy)


def _on_green(layout, hole, check, gravity, text, remedy):
    greens = [f for f in layout.index.named_of(hole.number) if f.kind == "green"]
    return _about(hole.number, check, gravity, text, remedy, greens)


def green_depth(layout, hole, played):
    """A green of unusual depth."""
    green = None if played is None else played.green
    if green is not None and not GREEN_DEPTHS_YD[0] <= green.depth / YARD <= GREEN_DEPTHS_YD[1]:
        yield _about(
            hole.number,
            "green_depth",
            "doubtful",
            f"the green is {layout.length(green.depth)} deep along its approach, which is unusual",
            "Look again at its outline and at the approach.",
            [layout.drawn(green.feature)],
        )


def misplaced_tees(layout, hole, played):
    """Tees far behind the start of the line of play, or far beside it."""
    if played is None or hole.line is None:
        return
    for tee in played.tees:
        station = played.drawn.station(tee.reference)
        aside = played.line.distance(as_point(tee.reference))
        if station < -TEE_BEHIND_YD * YARD:
            where = f"lies {layout.length(-station)} behind the start of the line of play"
        elif aside > TEE_OFF_YD * YARD:
            where = f"lies {layout.length(aside)} beside the line of play"
        else:
            continue
        feature = layout.drawn(tee.feature)
        yield _about(
            hole.number,
            "tee_off",
            "doubtful",
            f"{_called(feature)} {where}",
            "Begin the line at the back tee, or give the tee to the hole that is played from it.",
            (feature,),
        )


def tees_and_sets(layout, hole, played):
    """Tees without a tee set or with one nobody knows, and sets of the scorecard that have no tee here."""
    grounds = [f for f in layout.index.named_of(hole.number) if f.kind in ("tee", "plate")]
    unnamed = [feature for feature in grounds if not _sets_of(feature)]
    if unnamed:
        which = _and(str(feature.fid) for feature in unnamed if feature.fid >= 0) or "not saved yet"
        yield _about(
            hole.number,
            "tee_set",
            "missing",
            f"tee {which} names no tee set",
            "Choose its tee set in the form; several with commas between them.",
            unnamed,
        )
    known = {tee_set.name for tee_set in layout.course.tee_sets}
    strange = dict.fromkeys(n for f in grounds for n in _sets_of(f) if known and n not in known)
    for name in strange:
        yield _about(
            hole.number,
            "tee_set",
            "wrong",
            f"the tee set “{name}” is not in the table of tee sets",
            "Correct the name on the tee, or add the tee set to the table.",
            [feature for feature in grounds if name in _sets_of(feature)],
        )
    drawn = {name for feature in grounds for name in _sets_of(feature)}
    carded = [name for number, name in layout.course.scorecard if number == hole.number]
    absent = [name for name in carded if name not in drawn]
    if absent and drawn:
        yield _on_hole(
            hole,
            "tee_missing",
            "missing",
            f"no tee is drawn for {_and(f'“{name}”' for name in absent)}, which the scorecard has",
            "Draw the tee, or name the set on the tee it shares.",
        )


def length_on_card(layout, hole, played):
    """Lengths that differ from the scorecard."""
    differing = []
    for tee in _measured_tees(played):
        card = layout.course.scorecard.get((hole.number, tee.tee_set))
        difference = 0.0 if card is None else tee.length - card * YARD
        if abs(difference) > CARD_TOLERANCE_YD * YARD:
            more = "longer" if difference > 0 else "shorter"
            differing.append((tee, f"{_from(tee)} {layout.length(abs(difference))} {more}"))
    if differing:
        yield _about(
            hole.number,
            "length",
            "doubtful",
            f"measured against the scorecard: {_and(text for _, text in differing)}",
            "Look at the tees, the turn points and the green; or correct the scorecard.",
            [layout.drawn(tee.feature) for tee, _ in differing],
            None if hole.line is None else _box(hole.line),
        )


def _measured_tees(played):
    """The tees whose length is that of the hole; without a green none is."""
    return () if played is None or played.green is None else played.tees


def par(layout, hole, played):
    """No par, or one that the length does not bear out."""
    if hole.par is None:
        remedy = "Write the par into the hole’s form: where the approach is taken from depends on it."
        yield _on_hole(hole, "par", "missing", "the hole has no par", remedy)
        return
    unit = layout.course.settings.unit
    players = {tee_set.name: tee_set.players for tee_set in layout.course.tee_sets}
    verdicts = [
        (tee, check_par(hole.par, tee.length, unit, players.get(tee.tee_set)))
        for tee in _measured_tees(played)
    ]
    unfit = [(tee, verdict) for tee, verdict in verdicts if verdict != "fits"]
    if unfit:
        by_verdict = {}
        for tee, verdict in unfit:
            length = f"{_from(tee)} {whole(to_unit(tee.length, unit))} {unit}"
            by_verdict.setdefault(verdict, []).append(length)
        said = "; ".join(f"{verdict}: {_and(lengths)}" for verdict, lengths in by_verdict.items())
        yield _about(
            hole.number,
            "par",
            "doubtful",
            said,
            "Look at the length; if it is right, the par is the committee’s to decide.",
            [layout.drawn(tee.feature) for tee, _ in unfit],
            None if hole.line is None else _box(hole.line),
        )


def uncertain(layout, hole, played):
    """Figures less sure than the course wants them."""
    if played is None or played.green is None:
        return
    settings, green = layout.course.settings, layout.drawn(played.green.feature)
    sure = [(tee, plus_minus(tee.feature, green, layout.images)) for tee in played.tees]
    unsure = [(tee, size) for tee, size in sure if doubt(size, settings)]
    depth = plus_minus(green, green, layout.images)
    remedy = "Draw it from a sharper or better registered image, or one in which nothing hides it."
    if unsure:
        names = _and(dict.fromkeys(_from(tee) for tee, _ in unsure))
        worst = max(size for _, size in unsure)
        yield _about(
            hole.number,
            "uncertain",
            "doubtful",
            f"the length from {names} is uncertain by ± {layout.length(worst)}",
            remedy,
            [*(layout.drawn(tee.feature) for tee, _ in unsure), green],
        )
    if doubt(depth, settings):
        text = f"the green’s depth is uncertain by ± {layout.length(depth)}"
        yield _about(hole.number, "uncertain", "doubtful", text, remedy, (green,))


def markers(layout, hole, played):
    """Distance markers that do not stand where they say; posts of a pair are judged by their middle."""
    if played is None or played.green is None:
        return
    rows = marker_rows(played, layout.course)
    off = {row.marker_id for row in rows if row.verdict == "off"}
    paired = {fid for row in rows if "+" in row.marker_id for fid in row.marker_id.split("+")}
    for row in rows:
        if row.marker_id in paired:
            continue
        fids = [int(fid) for fid in row.marker_id.split("+")]
        posts = [f for f in layout.index.named_of(hole.number) if f.kind == "marker" and f.fid in fids]
        name = _called(posts[0]) if len(posts) == 1 else _pair_called(posts, off)
        if row.states is None:
            yield _about(
                hole.number,
                "marker",
                "missing",
                f"{name} states no distance",
                "Write the distance it states into its form.",
                posts,
            )
        elif row.verdict == "off":
            yield _about(
                hole.number,
                "marker",
                "doubtful",
                f"{name} states {layout.length(row.states)} to the green’s {row.states_to}"
                f" but measures {layout.length(row.measured)}",
                _where_true(layout, row),
                posts,
            )


def _pair_called(posts, off):
    """The middle of a pair of posts within a sentence, with the one that brings it out of its place."""
    wrong = [post for post in posts if str(post.fid) in off]
    single = wrong[0] if len(wrong) == 1 < len(posts) else None
    number = f" (see post {single.fid})" if single is not None and single.fid >= 0 else ""
    return f"the middle of a pair of posts{number}"


def _where_true(layout, row):
    """What to do about a marker that is off; nothing is moved without somebody on the ground."""
    if row.proposed_x is None:
        return "Look at where it was drawn, and at what it states."
    return (
        f"Look at where it was drawn. It would be true {layout.length(row.move_m)} away, on a bearing of "
        f"{row.move_azimuth:.0f}°, at {row.proposed_x:.2f}, {row.proposed_y:.2f}."
    )


SHARED = (
    unread,
    left_out,
    overlaps,
    drawn_twice,
    crossing_outlines,
    slivers,
    gaps,
    boundary_gaps,
    outside,
    odd_values,
    tee_sets,
    stroke_indexes,
)
"""Checks of a whole course: ``check(layout)`` gives Findings, each with its hole."""

OF_A_HOLE = (
    missing_parts,
    line_of_play,
    remarks,
    green_depth,
    misplaced_tees,
    tees_and_sets,
    length_on_card,
    par,
    uncertain,
    markers,
)
"""Checks of one hole: ``check(layout, hole, played)`` gives its Findings."""
