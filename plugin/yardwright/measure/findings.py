"""What a check finds, how it can be mended, and what all checks need: the course laid out, and words.

Limits of the checks are our own rule, common practice without a source, unless one is named.
"""

import math
from dataclasses import dataclass
from functools import cached_property

import numpy as np

from ..model.geometry import bounds_array, coordinates, map_points
from ..model.kinds import BY_NAME
from ..model.words import said, say
from .frame import frame_about
from .units import to_square_unit, to_unit
from .whose import NEAREST_WITHIN_M

GRAVITIES = ("wrong", "missing", "doubtful")
"""How grave a finding is, the gravest first."""


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
        return {key_of(feature): feature for feature in self.course.features}

    def drawn(self, feature):
        """The feature of the course, in its CRS, that one in a hole's frame is."""
        return self._by_key[key_of(feature)]

    @cached_property
    def images(self):
        """The course's images, by id."""
        return {image.id: image for image in self.course.images}


# Words


def kind_called(name):
    """A thing of a kind within a sentence."""
    return said(BY_NAME[name].noun)


def numbered(kind, fid):
    """A feature within a sentence, by its number; what is not saved yet has none."""
    if fid < 0:
        return say("an unsaved {kind}", kind=kind_called(kind))
    return say("{kind} {number}", kind=kind_called(kind), number=fid)


def called(feature):
    """A feature within a sentence: by its label or tee set, else by its number."""
    own = feature.label or (feature.get("tee_set") if feature.kind in ("tee", "plate") else "")
    if own:
        return say("{kind} “{name}”", kind=kind_called(feature.kind), name=own)
    return numbered(feature.kind, feature.fid)


def quoted(name):
    """A name as it was written, within a sentence."""
    return say("“{name}”", name=name)


def tee_called(tee):
    """A TeePlay within a sentence."""
    return tee.tee_set or say("the tee")


def sets_of(feature):
    """The tee sets that a tee or plate names."""
    return [name.strip() for name in str(feature.get("tee_set", "")).split(",") if name.strip()]


def sentence(text):
    """A text with a capital and a full stop."""
    return f"{text[0].upper()}{text[1:].rstrip('.')}."


# Findings made


def key_of(feature):
    """What a Change and a Finding know a feature by."""
    return feature.kind, feature.fid


def box_of(*shapes):
    """The bounds of shapely geometries together; None of none."""
    bounds = bounds_array([shape for shape in shapes if shape is not None])
    return (*bounds[:, :2].min(axis=0).tolist(), *bounds[:, 2:].max(axis=0).tolist()) if len(bounds) else None


def about(hole, check, gravity, text, remedy, features, box=None, repair=None):
    """A Finding on model Features; its box is theirs unless one is given."""
    keys = tuple(dict.fromkeys(key_of(feature) for feature in features))
    box = box or box_of(*(feature.geometry for feature in features))
    return Finding(hole, check, gravity, sentence(text), remedy, keys, box, repair)


def on_hole(hole, check, gravity, text, remedy, repair=None):
    """A Finding on a hole as such: its line of play."""
    keys = () if hole.fid is None else (("hole", hole.fid),)
    box = None if hole.line is None else box_of(hole.line)
    return Finding(hole.number, check, gravity, sentence(text), remedy, keys, box, repair)
