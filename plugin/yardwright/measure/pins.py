"""Hole locations: from the committee's figures to the point on the green and back, and what to say of them.

``on`` runs from the green's front along its approach, ``off`` on the line square to the approach at that
depth: in from the left or right margin, or right of the approach line (``centre``). The margin is the end of
that line's main chord: the one that holds the approach line, else the nearest to it. Remarks never change a
pin.
"""

import math
from collections import Counter
from dataclasses import dataclass, replace
from numbers import Real

import numpy as np

from ..model.event import SIDES
from ..model.remarks import Problem, Remark
from ..model.words import said, say
from .fall import turn_of
from .hole import CourseIndex, play_hole
from .line import as_point, chord_nearest, chords
from .rows import PinRow, told
from .units import to_unit

LEFT, RIGHT, CENTRE = SIDES
REDRAWN_M = 0.01
"""A point further than this from its figures no longer agrees with them: tables have no further decimals."""
_KEPT_M = 0.001
"""A limit missed by less than this is kept: so far figures and points agree there and back."""
_HAIR_M = 1e-6
"""Two places nearer than this are one: arithmetic, not ground."""


class NotPlaceable(ValueError):
    """Figures that no point of the square line answers to; ``remark`` (a Remark) says why."""

    def __init__(self, remark):
        super().__init__(remark)
        self.remark = remark


@dataclass(frozen=True)
class PinPlace:
    """Where a pin lies on a green, metres.

    point: (x, y) array in the hole frame. on: from the front along the approach. across: right of the
    approach line, negative to its left. left, right: from the pin to the two ends of the main chord of the
    square line, negative past an end; None where the square line misses the green. to_margin: to the nearest
    point of the green's margin, negative off the green. back: along the approach to the back.
    """

    point: object
    on: float
    across: float
    left: float
    right: float
    to_margin: float
    back: float
    remarks: tuple = ()


@dataclass(frozen=True)
class PlacedPin:
    """A Pin and where it comes to lie.

    played: its PlayedHole, None without. place: PinPlace, None where it has none. point: (x, y) in the
    course's CRS, None without place. on, off, off_from: the figures it was given, or those of its point.
    slope: (percent, azimuth of the fall), None where not asked for. remarks: Remarks, told apart by code.
    """

    pin: object
    played: object = None
    place: object = None
    point: tuple = None
    on: float = None
    off: float = None
    off_from: str = ""
    slope: tuple = None
    remarks: tuple = ()


# One pin on one green


def place_pin(green, on, off, off_from, unit="yd"):
    """The PinPlace of figures on a GreenPlay; metres, spoken of in ``unit``. Raises NotPlaceable."""
    if off_from not in SIDES:
        text = say("off counts from left, right or centre, not from “{side}”", side=off_from)
        raise NotPlaceable(Remark(text, "no_side"))
    if not all(isinstance(one, Real) and math.isfinite(one) for one in (on, off)):
        raise NotPlaceable(Remark(say("a pin needs two figures, on and off"), "no_figures"))
    beyond = _beyond(green, on, unit)
    if beyond is not None:
        raise NotPlaceable(beyond)
    chord, count = _square_chord(green, on)
    across = off
    if off_from != CENTRE:
        _refuse_off(chord, on, off, off_from, unit)
        across = chord[0] + off if off_from == LEFT else chord[1] - off
    return _place(green, on, across, chord, count, unit)


def locate_pin(green, point, unit="yd"):
    """The PinPlace of a point (x, y) in the hole frame, on the green or off it; spoken of in ``unit``."""
    away = np.asarray(point, dtype=float) - green.front
    direction = green.direction
    on = float(away @ direction)
    across = float(away[0] * direction[1] - away[1] * direction[0])
    return _place(green, on, across, *_square_chord(green, on), unit)


def figures_of(place, off_from=None):
    """``(on, off, off_from)``, how a committee says a place: from the nearer margin, of two equal ones the
    left, unless told; from the centre where the place lies outside the main chord of its square line."""
    inside = place.left is not None and min(place.left, place.right) > _HAIR_M
    if off_from not in SIDES:
        off_from = CENTRE if not inside else RIGHT if place.right < place.left - _HAIR_M else LEFT
    if place.left is None:
        off_from = CENTRE
    off = {LEFT: place.left, RIGHT: place.right, CENTRE: place.across}[off_from]
    return place.on, off, off_from


def _place(green, on, across, chord, count, unit):
    """The PinPlace at ``on`` and ``across``; chord, count: of its square line, see ``_square_chord``."""
    direction = green.direction
    square = np.array([direction[1], -direction[0]])
    point = green.front + on * direction + across * square
    spot = as_point(point)
    to_margin = green.geometry.boundary.distance(spot)
    if to_margin < _HAIR_M:
        to_margin = 0.0
    elif not green.geometry.covers(spot):
        to_margin = -to_margin
    return PinPlace(
        point=point,
        on=on,
        across=across,
        left=None if chord is None else across - chord[0],
        right=None if chord is None else chord[1] - across,
        to_margin=to_margin,
        back=green.depth - on,
        remarks=tuple(_remarks_on(green, on, chord, count, to_margin, unit)),
    )


def _remarks_on(green, on, chord, count, to_margin, unit):
    if to_margin < 0:
        (distance,) = _figures(unit, -to_margin)
        yield Remark(say("it lies {distance} off the green", distance=distance), "off_green")
    beyond = _beyond(green, on, unit)
    if beyond is not None:
        yield beyond
    if count > 1:
        text = say("the line square to the approach cuts the green in {count} pieces there", count=count)
        yield Remark(text, "chords")
    if chord is not None and not chord[0] - _HAIR_M <= 0.0 <= chord[1] + _HAIR_M:
        text = say("the approach line lies outside the green there: off counts in the nearest piece")
        yield Remark(text, "aside")


def _beyond(green, on, unit):
    """The Remark on a figure ``on`` that does not lie between front and back, else None."""
    if on < -_HAIR_M:
        (figure,) = _figures(unit, on)
        return Remark(say("{on} on lies before the green’s front", on=figure), "before_front")
    if on > green.depth + _HAIR_M:
        figure, depth = _figures(unit, on, green.depth)
        text = say(
            "{on} on lies beyond the green’s back: the green is {depth} deep along its approach",
            on=figure,
            depth=depth,
        )
        return Remark(text, "beyond_back")
    return None


def _refuse_off(chord, on, off, off_from, unit):
    """Raise NotPlaceable for a figure ``off`` that does not lie between the margins."""
    side = said(off_from)
    if chord is None:
        (there,) = _figures(unit, on)
        raise NotPlaceable(
            Remark(say("{on} on the green has no margin to count from", on=there), "no_margin")
        )
    width = chord[1] - chord[0]
    if off < -_HAIR_M:
        (figure,) = _figures(unit, off)
        text = say("{off} from {side} lies outside the margin it counts from", off=figure, side=side)
        raise NotPlaceable(Remark(text, "outside"))
    if off <= _HAIR_M:
        (figure,) = _figures(unit, abs(off))
        text = say("{off} from {side} is the margin itself", off=figure, side=side)
        raise NotPlaceable(Remark(text, "on_margin"))
    if off > width - _HAIR_M:
        figure, wide = _figures(unit, off, width)
        (there,) = _figures(unit, on)
        text = say(
            "{off} from {side} reaches the other margin: the green is {width} wide {on} on",
            off=figure,
            side=side,
            width=wide,
            on=there,
        )
        raise NotPlaceable(Remark(text, "too_wide"))


def _square_chord(green, on):
    """``(main chord of the square line or None, how many chords)``, metres right of the approach line.

    At the front and at the back themselves the line is laid a hair inside: along a straight margin it would
    have no chord of its own.
    """
    if abs(on) < _HAIR_M:
        on = _HAIR_M
    elif abs(on - green.depth) < _HAIR_M:
        on = green.depth - _HAIR_M
    direction = green.direction
    pieces = chords(green.geometry, green.front + on * direction, (direction[1], -direction[0]))
    return chord_nearest(pieces), len(pieces)


def _figures(unit, *metres):
    """Lengths as texts, with as many decimals as tell them apart: one as a rule, three at most."""
    different = len({round(one, 6) for one in metres})
    for decimals in (1, 2, 3):
        texts = [f"{to_unit(one, unit):.{decimals}f} {unit}" for one in metres]
        if len(set(texts)) == different:
            break
    return texts


# The pins of an event


def pin_row(played, pin, limits, course_crs, earlier=(), slope=None, unit="yd"):
    """The PinRow of a Pin on its PlayedHole, with the remarks its Limits call for.

    earlier: ``(round, hole, (x, y) in the hole frame)`` of earlier rounds' pins on this green. slope:
    (percent, true azimuth of the fall) there, nan where heights end; None where no heights are known.
    """
    placed = follow(played, pin, course_crs, unit)
    return row_of(_checked(placed, limits, earlier, slope, unit), pin.event)


def pin_rows(course, event, index=None, terrain=None):
    """``(PinRows by round and hole, Problems)`` of an Event's pins: a row each, a Problem for each that
    could not be placed. terrain: what has ``slope_at(points, crs)`` -> (percent, azimuth), arrays."""
    pins = placed_pins(course, event, index, terrain)
    rows = tuple(row_of(placed, event.name) for placed in pins)
    return rows, tuple(_problem(placed) for placed in pins if placed.point is None)


def placed_pins(course, event, index=None, terrain=None):
    """The PlacedPin of each of an Event's pins with all its remarks, by round and hole; as ``pin_rows``."""
    index = index or CourseIndex(course)
    unit = course.settings.unit
    placed = [follow_in(course, index, pin) for pin in sorted(event.pins, key=_by_round_and_hole)]
    greens = _by_green(one for one in placed if event.plays(one.pin.round, one.pin.hole))
    times = Counter(map(_by_round_and_hole, event.pins))
    slopes = _slopes(placed, terrain, course.crs)
    return tuple(
        _checked(
            one,
            event.limits,
            _earlier(one, greens, course.crs),
            slope,
            unit,
            (*round_remarks(event, one.pin), *_twice(times[_by_round_and_hole(one.pin)])),
        )
        for one, slope in zip(placed, slopes)
    )


def _by_round_and_hole(pin):
    return pin.round, pin.hole


def _twice(count):
    if count > 1:
        text = say("the event has {count} pins for this hole and round", count=count)
        yield Remark(text, "double")


def follow(played, pin, course_crs, unit="yd"):
    """The PlacedPin of a Pin by what it follows, its figures or its point, with the remarks on its place.

    A pin without figures follows its point, whatever it was given by. played: None for a hole that is not
    laid out.
    """
    by_point = pin.given == "point" or pin.on is None or pin.off is None
    lone = PlacedPin(pin, played, None, None, pin.on, pin.off, pin.off_from)
    if by_point and pin.point is None:
        return _with(lone, _no_point())
    if played is None or played.green is None:
        remarks = (_no_green(played),)
        return _with(lone, *remarks, point=pin.point if by_point else None)
    if by_point:
        return _by_point(lone, course_crs, unit)
    return _by_figures(lone, course_crs, unit)


def _by_figures(lone, course_crs, unit):
    pin, played = lone.pin, lone.played
    try:
        place = place_pin(played.green, pin.on, pin.off, pin.off_from, unit)
    except NotPlaceable as error:
        return _with(lone, error.remark)
    remarks = list(place.remarks)
    drawn = point_of(pin, played, course_crs)
    if drawn is not None:
        away = math.dist(drawn, place.point)
        if away > REDRAWN_M:
            (distance,) = _figures_long(unit, away)
            text = say(
                "the point drawn lies {distance} from its figures, which are followed"
                " (was the green redrawn, or the point moved?)",
                distance=distance,
            )
            remarks.append(Remark(text, "redrawn"))
    x, y = played.frame.from_frame(course_crs)(place.point)[0]
    return _with(lone, *remarks, place=place, point=(float(x), float(y)))


def _by_point(lone, course_crs, unit):
    pin, played = lone.pin, lone.played
    point = point_of(pin, played, course_crs)
    if point is None:
        return _with(lone, _no_point())
    place = locate_pin(played.green, point, unit)
    on, off, off_from = figures_of(place, pin.off_from)
    remarks = list(place.remarks)
    stored = None not in (pin.on, pin.off) and pin.off_from in SIDES
    if stored and (off_from != pin.off_from or math.dist((on, off), (pin.on, pin.off)) > REDRAWN_M):
        stored_on, stored_off = _figures_long(unit, pin.on, pin.off)
        text = say(
            "its figures, {on} on and {off} from {side}, no longer fit its point, which is followed"
            " (was the green redrawn, or the point moved?)",
            on=stored_on,
            off=stored_off,
            side=said(pin.off_from),
        )
        remarks.append(Remark(text, "redrawn"))
    return _with(lone, *remarks, place=place, point=tuple(pin.point), on=on, off=off, off_from=off_from)


def point_of(pin, played, course_crs):
    """The point of a Pin in its hole's frame, (x, y); None without, or where it lies off the map."""
    if pin.point is None:
        return None
    point = played.frame.to_frame(course_crs)(pin.point)[0]
    return point if np.isfinite(point).all() else None


def _no_point():
    return Remark(say("it has no point"), "no_point")


def _with(lone, *remarks, **found):
    return replace(lone, remarks=remarks, **found)


def _figures_long(unit, *metres):
    """Lengths as the tables have them, with two decimals."""
    return [f"{to_unit(one, unit):.2f} {unit}" for one in metres]


def _no_green(played):
    if played is None:
        return Remark(say("no line of play is drawn"), "no_line")
    small = (remark for remark in played.green_remarks if getattr(remark, "code", "") == "too_small")
    return next(small, Remark(say("the hole has no green"), "no_green"))


def follow_in(course, index, pin):
    """The PlacedPin of a Pin on its hole of a course, as ``follow``."""
    if course.hole(pin.hole) is not None:
        played = play_hole(course, pin.hole, index)
        return follow(played, pin, course.crs, course.settings.unit)
    remark = Remark(say("the course has no hole {number}", number=pin.hole), "no_hole")
    return PlacedPin(pin, None, None, pin.point, pin.on, pin.off, pin.off_from, remarks=(remark,))


def round_remarks(event, pin):
    """The Remarks on a pin whose round is not there or leaves its hole out. An event without any round is
    not set out yet: its rounds are not missed."""
    held = event.round(pin.round)
    if held is None and event.rounds:
        return (Remark(say("the event has no round {number}", number=pin.round), "no_round"),)
    if not event.plays(pin.round, pin.hole):
        text = say("the hole is not played in round {number}", number=pin.round)
        return (Remark(text, "not_played"),)
    return ()


def _checked(placed, limits, earlier, slope, unit, doubts=()):
    """A PlacedPin with its slope and the remarks on what the committee wants kept."""
    if placed.place is None:
        return replace(placed, remarks=(*placed.remarks, *doubts))
    remarks = (
        *placed.remarks,
        *doubts,
        *_margin_remarks(placed.place, limits, unit),
        *_slope_remarks(slope, limits),
        *_apart_remarks(placed, limits, earlier, unit),
    )
    known = slope is not None and math.isfinite(slope[0])
    return replace(placed, slope=tuple(slope) if known else None, remarks=remarks)


def _margin_remarks(place, limits, unit):
    if 0 <= place.to_margin < limits.margin - _KEPT_M:
        distance, least = _figures(unit, place.to_margin, limits.margin)
        text = say("{distance} from the margin, less than {least}", distance=distance, least=least)
        yield Remark(text, "near_margin")


def _slope_remarks(slope, limits):
    if slope is None:
        return
    if not math.isfinite(slope[0]):
        yield Remark(say("the heights do not reach here"), "no_slope")
    elif limits.slope_pct is not None and slope[0] > limits.slope_pct:
        text = say(
            "the ground falls {slope} % here, more than {most} %",
            slope=f"{slope[0]:.1f}",
            most=f"{limits.slope_pct:g}",
        )
        yield Remark(text, "steep")


def _apart_remarks(placed, limits, earlier, unit):
    for number, hole, point in earlier:
        away = math.dist(placed.place.point, point)
        if away >= limits.apart - _KEPT_M:
            continue
        distance, least = _figures(unit, away, limits.apart)
        if hole == placed.pin.hole:
            text = say(
                "{distance} from the pin of round {number}, less than {least}",
                distance=distance,
                number=number,
                least=least,
            )
        else:
            text = say(
                "{distance} from the pin of hole {hole} in round {number}, less than {least}",
                distance=distance,
                hole=hole,
                number=number,
                least=least,
            )
        yield Remark(text, "near_earlier")


def _by_green(placed):
    """The pins that have a place, by the green they lie on: two holes may share one. A hole that its round
    does not play is not cut."""
    greens = {}
    for one in placed:
        if one.place is not None:
            greens.setdefault(one.played.green.feature.fid, []).append(one)
    return greens


def _earlier(placed, greens, course_crs):
    """``(round, hole, point in its frame)`` of each pin of an earlier round on the same green."""
    if placed.place is None:
        return
    for other in greens.get(placed.played.green.feature.fid, ()):
        if other.pin.round >= placed.pin.round:
            continue
        point = other.place.point
        if other.played is not placed.played:
            point = placed.played.frame.to_frame(course_crs)(other.point)[0]
        yield other.pin.round, other.pin.hole, point


def _slopes(placed, terrain, course_crs):
    """(percent, azimuth) at each pin; None at those without place, and everywhere without terrain."""
    here = [number for number, one in enumerate(placed) if one.place is not None]
    slopes = [None] * len(placed)
    if terrain is None or not here:
        return slopes
    percents, azimuths = terrain.slope_at(np.array([placed[number].point for number in here]), course_crs)
    for number, percent, azimuth in zip(here, percents, azimuths):
        slopes[number] = (float(percent), float(azimuth))
    return slopes


def row_of(placed, event_name):
    """The PinRow of a PlacedPin."""
    place = placed.place
    x, y = (None, None) if placed.point is None else placed.point
    percent, azimuth = (None, None) if placed.slope is None else placed.slope
    approach = None if placed.slope is None else placed.played.green.azimuth
    return PinRow(
        event=event_name,
        round=placed.pin.round,
        hole=placed.pin.hole,
        on=placed.on,
        off=placed.off,
        off_from=placed.off_from,
        across=None if place is None else place.across,
        to_margin=None if place is None else place.to_margin,
        back=None if place is None else place.back,
        x=x,
        y=y,
        slope_pct=percent,
        slope_azimuth=azimuth,
        slope_turn=turn_of(azimuth, approach),
        remark=told(*placed.remarks),
    )


def _problem(placed):
    pin, remark = placed.pin, placed.remarks[0]
    text = say(
        "Pin of round {number}, hole {hole}: {reason}.", number=pin.round, hole=pin.hole, reason=remark
    )
    return Problem(text, remark.code, "pin", pin.fid, remark)
