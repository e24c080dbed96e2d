"""The committee's pins against those that are drawn. Nothing is changed."""

import math
from dataclasses import dataclass, replace

from ..model.remarks import Remark
from ..model.words import said, say, to_say
from .hole import CourseIndex
from .pins import figures_of, follow_in, locate_pin, point_of, round_remarks
from .rows import PinAuditRow, told
from .units import to_unit

VERDICTS = (to_say("same"), to_say("apart"), to_say("missing"), to_say("extra"), to_say("impossible"))
SAME, APART, MISSING, EXTRA, IMPOSSIBLE = VERDICTS
_HAIR_M = 1e-6
"""What differs by the tolerance and less than this more is within it: arithmetic, not ground."""


@dataclass(frozen=True)
class _Matched:
    """PlacedPins of one round and hole: the committee's and the one drawn, None where there is none."""

    theirs: object
    drawn: object
    apart: float = None
    remarks: tuple = ()


def audit_pins(course, event, given, tolerance=None, index=None):
    """PinAuditRows by round and hole: the committee's Pins ``given`` against those of the Event.

    They are matched by event (the committee's may leave it out), round and hole; of several for one hole the
    nearest to each other first. tolerance: metres, None takes the event's. A drawn pin lies where its point
    does, whatever its figures; one without a point where its figures place it.
    """
    index = index or CourseIndex(course)
    tolerance = event.limits.tolerance if tolerance is None else tolerance
    theirs = _grouped(given, event, lambda pin: follow_in(course, index, pin))
    drawn = _grouped(event.pins, event, lambda pin: _drawn(course, index, pin))
    rows = []
    for key in sorted({*theirs, *drawn}):
        for matched in _matched(theirs.get(key, ()), drawn.get(key, ())):
            rows.append(_row(key, matched, event, tolerance, course.settings.unit))
    return tuple(rows)


def _grouped(pins, event, placed):
    """PlacedPins by (round, hole, event's name)."""
    groups = {}
    for pin in pins:
        groups.setdefault((pin.round, pin.hole, pin.event or event.name), []).append(placed(pin))
    return groups


def _drawn(course, index, pin):
    """The PlacedPin of a drawn Pin where its point is, if it has one."""
    followed = follow_in(course, index, pin)
    if followed.played is None or followed.played.green is None:
        return followed
    point = point_of(pin, followed.played, course.crs)
    if point is None:
        return followed
    place = locate_pin(followed.played.green, point, course.settings.unit)
    return replace(followed, place=place, point=tuple(pin.point))


def _matched(theirs, drawn):
    """Each of the committee's pins with a drawn one as far as there are enough, then the drawn left over."""
    pairs = sorted(
        (_apart(one, other), here, there)
        for here, one in enumerate(theirs)
        for there, other in enumerate(drawn)
    )
    apart, partner, taken = {}, {}, set()
    for distance, here, there in pairs:
        if here not in partner and there not in taken:
            apart[here], partner[here] = distance, drawn[there]
            taken.add(there)
    remarks = tuple(_counted(len(theirs), len(drawn)))
    for here, one in enumerate(theirs):
        yield _Matched(one, partner.get(here), apart.get(here, math.inf), remarks)
    for there, other in enumerate(drawn):
        if there not in taken:
            yield _Matched(None, other, math.inf, remarks)


def _apart(one, other):
    """Metres between two pins of a hole, without end where one has no place."""
    if one.place is None or other.place is None:
        return math.inf
    return math.dist(one.place.point, other.place.point)


def _counted(given, drawn):
    if given > 1:
        text = say("the committee has {count} pins for this hole and round", count=given)
        yield Remark(text, "given_twice")
    if drawn > 1:
        text = say("the event has {count} pins for this hole and round", count=drawn)
        yield Remark(text, "double")


def _row(key, matched, event, tolerance, unit):
    number, hole, name = key
    theirs, drawn = matched.theirs, matched.drawn
    played = (theirs or drawn).played
    depth = None if played is None or played.green is None else played.green.depth
    row = PinAuditRow(event=name, round=number, hole=hole, green_depth=depth)
    side, remarks = "", list(matched.remarks)
    if theirs is not None:
        side, theirs_deep = theirs.off_from, theirs.pin.green_depth
        row = replace(
            row,
            given_on=theirs.on,
            given_off=theirs.off,
            given_off_from=side,
            given_green_depth=theirs_deep,
        )
        remarks += theirs.remarks + tuple(_depth_remarks(theirs_deep, depth, tolerance, unit))
    if drawn is not None:
        on, off = drawn.on, drawn.off
        if drawn.place is not None:
            on, off, off_from = figures_of(drawn.place, side or drawn.pin.off_from)
            remarks += _side_remarks(off_from, side)
        row = replace(row, drawn_on=on, drawn_off=off)
        shared = theirs is not None and drawn.place is not None
        remarks += [one for one in drawn.remarks if not shared or one.code == "redrawn"]
    remarks += round_remarks(event, (theirs or drawn).pin)
    return replace(
        row,
        apart=matched.apart if math.isfinite(matched.apart) else None,
        verdict=_verdict(matched, tolerance),
        remark=told(*dict.fromkeys(remarks)),
    )


def _verdict(matched, tolerance):
    theirs, drawn = matched.theirs, matched.drawn
    if theirs is None:
        return EXTRA
    if theirs.place is None:
        return IMPOSSIBLE
    if drawn is None or drawn.place is None:
        return MISSING
    return SAME if matched.apart <= tolerance + _HAIR_M else APART


def _depth_remarks(theirs, ours, tolerance, unit):
    if theirs is None or ours is None or abs(theirs - ours) <= tolerance + _HAIR_M:
        return
    text = say(
        "the committee has the green {theirs} deep, it is {ours}",
        theirs=f"{to_unit(theirs, unit):.1f} {unit}",
        ours=f"{to_unit(ours, unit):.1f} {unit}",
    )
    yield Remark(text, "green_depth")


def _side_remarks(off_from, side):
    """The column says which side only the committee's figure counts from."""
    if off_from != side:
        yield Remark(say("the drawn off counts from {side}", side=said(off_from)), "side")
