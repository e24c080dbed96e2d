"""The figures under the moving pointer, and of an outline while it is being drawn: quick, for one hole.

All places are in the hole's frame, metres.
"""

import math
from dataclasses import dataclass

import numpy as np
from shapely.geometry import Polygon

from .green import TooSmall, anchor_of, green_along
from .hole import longest_tee
from .line import LineOfPlay, NoLine
from .lines import SAME
from .markers import measured_from
from .units import YARD

COMMONLY_STATED_YD = (50, 100, 150, 200, 250)
"""What distance markers commonly state (common practice, no source)."""


@dataclass(frozen=True)
class PointFigures:
    """A place seen from a tee, metres.

    tee_set: whose tee, "" when the line's start stands for one. from_tee: straight. station: along that
    tee's line of play. aside: from the line, with ``side`` ``left`` or ``right``. front, middle, back: to the
    green, over the bends still ahead; None without a green.
    """

    tee_set: str
    from_tee: float
    station: float
    aside: float
    side: str
    front: float = None
    middle: float = None
    back: float = None


@dataclass(frozen=True)
class OutlineFigures:
    """An outline: ``area`` in square metres, None while it crosses itself; ``depth`` and ``width`` along and
    across the approach, metres, None where there is no approach to it."""

    area: float = None
    depth: float = None
    width: float = None


@dataclass(frozen=True)
class MarkerFigures:
    """Where a marker stands: what it ``measures``, and what it most likely ``states``, metres."""

    measures: float
    states: float


def tee_line(played, tee_set=""):
    """``(tee set, LineOfPlay)`` to measure from: of the tee set asked for, else of the longest tee, else the
    drawn line; None while nothing is drawn."""
    if played is None:
        return None
    for tee in played.tees:
        if tee.tee_set == tee_set:
            return tee.tee_set, tee.line
    longest = longest_tee(played)
    if longest is not None:
        return longest.tee_set, longest.line
    return None if played.drawn is None else ("", played.drawn)


def point_figures(played, point, tee_set=""):
    """The PointFigures of a place (x, y) on a PlayedHole; None while no line of play is drawn."""
    found = tee_line(played, tee_set)
    if found is None:
        return None
    name, line = found
    station = line.station(point)
    foot = line.at(min(max(station, 0.0), line.length))
    ahead = line.direction_at(min(max(station, 0.0), line.length))
    off = (point[0] - foot[0], point[1] - foot[1])
    left = ahead[0] * off[1] - ahead[1] * off[0] > 0
    to_green = {}
    if played.green is not None:
        for name_of in ("front", "middle", "back"):
            to_green[name_of] = measured_from(line, point, getattr(played.green, name_of))
    return PointFigures(
        tee_set=name,
        from_tee=math.dist(point, line.points[0]),
        station=station,
        aside=math.hypot(*off),
        side="left" if left else "right",
        **to_green,
    )


def outline_figures(played, points, of_green=False):
    """The OutlineFigures of (n, 2) corners, closed or not; None of fewer than three.

    of_green: whether it is the green of the hole, which is cut along its line of approach: from the approach
    point of the hole's drawn green, else from where the last leg of the line of play begins.
    """
    points = np.asarray(points, dtype=float).reshape(-1, 2)
    if len(points) < 3:
        return None
    outline = Polygon(points)
    if not outline.is_valid:
        return OutlineFigures()
    if not of_green or played is None or played.drawn is None:
        return OutlineFigures(outline.area)
    anchor = anchor_of(outline, played.drawn.direction_at(played.drawn.length))
    start = played.drawn.points[-2] if played.green is None else played.green.approach_point
    if math.dist(start, anchor) < SAME:
        return OutlineFigures(outline.area)
    try:
        green = green_along(_Outline(outline), "", start, anchor, played.frame)
    except TooSmall:
        return OutlineFigures(outline.area)
    return OutlineFigures(outline.area, green.depth, green.width)


@dataclass(frozen=True)
class _Outline:
    """Stands for the feature that is not there yet."""

    geometry: object


def line_length(points):
    """The length of (n, 2) points joined by straight legs, metres; 0.0 of fewer than two."""
    try:
        return LineOfPlay(points).length
    except NoLine:
        return 0.0


def marker_figures(played, point, settings, states=None, states_to=None):
    """The MarkerFigures of a marker at (x, y); None without a green.

    states: metres it is said to state; None takes the nearest of what markers commonly state, in the
    course's unit. states_to: front, middle or back; None takes the course's setting.
    """
    if played is None or played.green is None:
        return None
    target = getattr(played.green, states_to or settings.marker_point)
    measures = measured_from(played.drawn, point, target)
    if states is None:
        unit = YARD if settings.unit == "yd" else 1.0
        states = min((stated * unit for stated in COMMONLY_STATED_YD), key=lambda one: abs(one - measures))
    return MarkerFigures(measures, states)
