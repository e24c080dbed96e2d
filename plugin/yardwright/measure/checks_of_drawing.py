"""Checks of what is drawn, feature against feature: overlaps, doubles, slivers, gaps, the boundary.

All limits below are our own rule, common practice without a source, unless one is named.
"""

import numpy as np
from shapely.geometry import LineString, Polygon
from shapely.ops import linemerge, unary_union

from ..model.geometry import coordinates
from ..model.words import say
from .findings import Change, Repair, about, box_of, called, key_of, kind_called
from .line import as_point

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
            yield about(
                layout.hole_of(i, j),
                "overlap",
                "doubtful" if within else "wrong",
                say("{one} lies within {other}.", one=called(lesser), other=called(greater))
                if within
                else _overlap(layout, lesser, greater, shared),
                say(
                    "A ball there lies in the {kind}: draw the margin of one of them anew.",
                    kind=kind_called(greater.kind),
                ),
                (lesser, greater),
                box_of(lesser.geometry.intersection(greater.geometry)),
                _cut(lesser, greater, shared / layout.shapes[i].area),
            )
    for i, j in layout.near(layout.of("bunker"), layout.of("bunker")):
        shared = layout.shapes[i].intersection(layout.shapes[j]).area
        if shared > OVERLAP_M2 and not _same_area(layout.shapes[i], layout.shapes[j], shared):
            one, other = features[i], features[j]
            yield about(
                layout.hole_of(i, j),
                "overlap",
                "doubtful",
                _overlap(layout, one, other, shared),
                say("Merge them if they are one bunker; else draw the margin of one of them anew."),
                (one, other),
                box_of(one.geometry.intersection(other.geometry)),
            )


def _overlap(layout, one, other, shared):
    return say(
        "{one} and {other} overlap by {area}.",
        one=called(one),
        other=called(other),
        area=layout.area(shared),
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
    text = say(
        "Cut the {greater} out of the {lesser}",
        greater=kind_called(greater.kind),
        lesser=kind_called(lesser.kind),
    )
    return Repair(text, (Change(*key_of(lesser), geometry=parts[0]),), (lesser, greater))


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
                changes = (Change(*key_of(surplus), delete=True),)
                repair = Repair(_delete(surplus), changes, (first, later))
            yield about(
                layout.hole_of(i, j),
                "twice",
                "wrong",
                say(
                    "{thing} is drawn twice: {first} and {later}.",
                    thing=called(first),
                    first=_number(first),
                    later=_number(later),
                ),
                say("Delete one of them. One feature may serve several holes, and one tee several tee sets."),
                (later, first),
                None,
                repair,
            )


def _number(feature):
    return say("feature {number}", number=feature.fid) if feature.fid >= 0 else say("one not saved yet")


def _delete(feature):
    if feature.fid < 0:
        return say("Delete the {kind} that is not saved yet", kind=kind_called(feature.kind))
    return say("Delete the {kind} {number}", kind=kind_called(feature.kind), number=feature.fid)


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
    """Areas whose outline crosses itself; the reading mends what it can and says so."""
    for place in layout.of(*_AREAS):
        feature = layout.course.features[place]
        if not feature.mended:
            continue
        whole_area = _one_area(feature.geometry, layout.shapes[place])
        repair = None
        if whole_area is not None:
            repair = Repair(
                say("Take away the loop"), (Change(*key_of(feature), geometry=whole_area),), (feature,)
            )
        yield about(
            layout.hole_of(place),
            "crossing",
            "wrong",
            say("The outline of {thing} crosses or touches itself.", thing=called(feature)),
            say("Move its vertices with the vertex tool until it does not, or split it in two."),
            (feature,),
            None,
            repair,
        )


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
            yield about(
                layout.hole_of(place),
                "sliver",
                "wrong",
                say("{thing} is a sliver of {area}.", thing=called(feature), area=layout.area(shape.area)),
                say("Delete it, or draw it anew."),
                (feature,),
                None,
                Repair(
                    say("Delete the {kind}", kind=kind_called(feature.kind)),
                    (Change(*key_of(feature), delete=True),),
                    (feature,),
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
                    say("Fill what was left open"), (Change(*key_of(feature), geometry=filled),), (feature,)
                )
            yield about(
                layout.hole_of(place),
                "speck",
                "doubtful",
                say("{thing} has 1 hole too small to be meant.", thing=called(feature))
                if specks == 1
                else say(
                    "{thing} has {count} holes too small to be meant.", thing=called(feature), count=specks
                ),
                say("Delete the ring with the vertex tool or “Delete ring”."),
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
            yield about(
                layout.hole_of(i, j),
                "gap",
                "doubtful",
                say(
                    "{one} and {other} are only {distance} apart.",
                    one=called(one),
                    other=called(other),
                    distance=layout.length(apart),
                ),
                say("If they are one piece of ground, draw the gap over with “Reshape”, or merge them."),
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
        text = say(
            "{thing} is not closed: its ends are {distance} apart.",
            thing=called(one),
            distance=layout.length(apart),
        )
        done, line = say("Close the boundary"), np.concatenate([points, points[:1]])
        changed = one
    else:
        text = say(
            "The ends of {one} and {other} are {distance} apart.",
            one=called(one),
            other=called(other),
            distance=layout.length(apart),
        )
        done, line, changed = say("Join the ends"), others.copy(), other
        line[other_end] = points[end]
    return about(
        None,
        "boundary_gap",
        "wrong",
        text,
        say("Draw its end on to where it belongs."),
        (changed,) if one is other else (changed, one),
        box_of(as_point(points[end]), as_point(others[other_end])),
        Repair(
            done,
            (Change(*key_of(changed), geometry=LineString(line)),),
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
            yield about(
                number,
                "outside",
                "wrong",
                say("{thing} lies outside the course’s boundary.", thing=called(feature)),
                say("Look whether it, or the boundary, was drawn in the wrong place."),
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
