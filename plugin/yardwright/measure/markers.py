"""The course's own distance markers: what they say, what is true, and where they belong."""

import math
from dataclasses import dataclass, replace

import numpy as np

from ..model.geometry import coordinates
from ..model.words import say
from .accuracy import doubt, plus_minus
from .hole import CourseIndex, play_hole
from .rows import MarkerRow, told
from .units import YARD, to_unit

_SAME_M = 0.01
"""A place that measures what is stated to within this measures it: the tables have no further decimals."""


@dataclass(frozen=True)
class _Post:
    """A marker, or the middle between the posts of a pair: ``marker_id`` names the posts it stands for."""

    marker_id: str
    feature: object
    place: object
    remark: str = ""


def check_markers(course, tolerance_yd=None, holes=None, index=None):
    """A row for every distance marker of the course, by hole; see ``marker_rows``.

    tolerance_yd: a marker further out than this is ``off``; None takes the course's setting. A marker
    that no hole can be found for is left out here: ``measure.course`` names it among the problems.
    """
    index = index or CourseIndex(course)
    rows = []
    for hole in course.holes:
        if holes and hole.number not in holes:
            continue
        played = play_hole(course, hole.number, index)
        if played is not None:
            rows.extend(marker_rows(played, course, tolerance_yd))
    return tuple(rows)


def marker_rows(played, course, tolerance_yd=None):
    """A row for each post on a hole and one for the middle between the posts of each pair."""
    settings = course.settings
    tolerance = (settings.marker_tolerance_yd if tolerance_yd is None else tolerance_yd) * YARD
    images = {image.id: image for image in course.images}
    to_course = played.frame.from_frame(course.crs)
    return [_row(played, post, settings, tolerance, images, to_course) for post in _posts(played)]


def _posts(played):
    markers = [f for f in played.features if f.kind == "marker"]
    posts, pairs = [], {}
    for marker in sorted(markers, key=lambda f: f.fid):
        posts.append(_Post(str(marker.fid), marker, coordinates(marker.geometry)[0], marker.remark))
        if marker.get("pair"):
            pairs.setdefault(marker.get("pair"), []).append(marker)
    for pair in pairs.values():
        name = "+".join(str(marker.fid) for marker in pair)
        if len(pair) < 2:
            continue
        remark = say("middle between the pair of posts")
        if len({stated_m(marker) for marker in pair}) > 1:
            remark = told(remark, say("the posts state different distances, the first is taken"))
        middle = np.mean([coordinates(marker.geometry)[0] for marker in pair], axis=0)
        posts.append(_Post(name, pair[0], middle, remark))
    return posts


def stated_m(marker):
    """What a marker states, metres: ``states_yd``, else ``states_m``; None where it states neither."""
    yards, metres = marker.get("states_yd"), marker.get("states_m")
    if yards is not None:
        return yards * YARD
    return metres


def _row(played, post, settings, tolerance, images, to_course):
    stated = stated_m(post.feature)
    states_to = post.feature.get("states_to") or settings.marker_point
    row = MarkerRow(hole=played.number, marker_id=post.marker_id, states=stated, states_to=states_to)
    remarks = [post.remark]
    if played.green is None or stated is None or stated <= 0:
        why = say("the hole has no green") if played.green is None else say("states no distance")
        remarks.append(why)
        return replace(row, remark=told(*remarks))

    target = getattr(played.green, states_to)
    towards, rest = _next_on_the_way(played.drawn, post.place, target)
    away = post.place - towards
    measured = measured_from(played.drawn, post.place, target)
    remains = stated - rest
    proposed = None
    if remains <= 0:
        remarks.append(say("the stated distance ends past the bend: it cannot be moved along its bearing"))
    elif np.hypot(*away) < 1e-3:
        remarks.append(say("it stands where its distance ends: there is no bearing to move it along"))
    else:
        proposed = towards + away * (remains / np.hypot(*away))
        again = measured_from(played.drawn, proposed, target)
        if abs(again - stated) > _SAME_M:
            text = say(
                "the place proposed lies on the other side of a bend, where it measures {distance}",
                distance=f"{to_unit(again, settings.unit):.1f} {settings.unit}",
            )
            remarks.append(text)
    sure = plus_minus(post.feature, played.green.feature, images)
    remarks.append(doubt(sure, settings))
    row = replace(
        row,
        measured=measured,
        error=stated - measured,
        verdict="off" if abs(stated - measured) > tolerance else "true",
        plus_minus=sure,
        remark=told(*remarks),
    )
    if proposed is None:
        return row
    moved = float(np.hypot(*(proposed - post.place)))
    x, y = to_course(proposed)[0]
    return replace(
        row,
        proposed_x=float(x),
        proposed_y=float(y),
        move_m=moved,
        move_azimuth=played.frame.true_azimuth(post.place, proposed) if moved > 1e-6 else None,
    )


def measured_from(drawn, place, target):
    """Metres from a place to a point of the green: straight, or along the line of play if that bends."""
    towards, rest = _next_on_the_way(drawn, place, target)
    return math.dist(place, towards) + rest


def _next_on_the_way(drawn, place, target):
    """The next point on the way from a place to the green, and the length of the way from there on."""
    ahead = drawn.turns_after(drawn.station(place))
    if not ahead:
        return target, 0.0
    return drawn.at(ahead[0]), drawn.legs_to(ahead[0], target)
