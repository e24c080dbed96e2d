"""The line of play: a chain of straight legs, and where along it and beside it things lie."""

import math
from bisect import bisect_right
from functools import cached_property

import numpy as np
from shapely.geometry import LineString, Point

from ..model.geometry import coordinates, outlines
from .lines import SAME, Lines


class NoLine(ValueError):
    """The points make no line."""


class LineOfPlay:
    """A line from tee to green in a hole frame, metres.

    points: (n, 2) array, n >= 2; doubled points are dropped. Stations count along it from its start.
    """

    def __init__(self, points):
        kept = []
        for x, y in np.asarray(points, dtype=float).reshape(-1, 2).tolist():
            if not (math.isfinite(x) and math.isfinite(y)):
                raise NoLine("a line of play needs finite coordinates")
            if not kept or math.dist(kept[-1], (x, y)) > SAME:
                kept.append((x, y))
        if len(kept) < 2:
            raise NoLine("a line of play needs two different points")
        # The legs as plain numbers, for what is asked of one place: arrays of two numbers are slow.
        self._legs, stations = [], [0.0]
        for (x, y), (next_x, next_y) in zip(kept, kept[1:]):
            length = math.dist((x, y), (next_x, next_y))
            self._legs.append((x, y, (next_x - x) / length, (next_y - y) / length, length, stations[-1]))
            stations.append(stations[-1] + length)
        self._stations = stations
        self.points = np.array(kept)
        self.vertex_stations = np.array(stations)

    @property
    def leg_units(self):
        """The unit vector of each leg, (n - 1, 2)."""
        return np.array([leg[2:4] for leg in self._legs])

    @property
    def leg_lengths(self):
        """The length of each leg, (n - 1,)."""
        return np.array([leg[4] for leg in self._legs])

    @property
    def length(self):
        """Metres from the first point to the last."""
        return self._stations[-1]

    @property
    def turns(self):
        """The stations of the turn points: all vertices but the ends."""
        return self.vertex_stations[1:-1]

    def turns_after(self, station):
        """The stations of the turn points that lie ahead of a station."""
        return [turn for turn in self._stations[1:-1] if turn > station + SAME]

    def turn_points_after(self, station):
        """The (n, 2) turn points that lie ahead of a station."""
        return self.points[1:-1][self.turns > station + SAME]

    @cached_property
    def shape(self):
        """The line as a shapely LineString."""
        return LineString(self.points)

    @cached_property
    def as_lines(self):
        """This line as Lines, for what is asked of many points."""
        return Lines([self])

    def stations(self, points):
        """The station of the nearest place on the line for each of (n, 2) points; see ``Lines``."""
        points = np.asarray(points, dtype=float).reshape(-1, 2)
        return self.as_lines.stations(points, np.zeros(len(points), dtype=int))

    def station(self, point):
        """The station of one point; see ``Lines.stations``."""
        found, nearest, last = 0.0, math.inf, len(self._legs) - 1
        for number, (x, y, unit_x, unit_y, length, base) in enumerate(self._legs):
            right, up = point[0] - x, point[1] - y
            along = right * unit_x + up * unit_y
            across = right * unit_y - up * unit_x
            held = min(max(along, 0.0), length)
            away = across * across + (along - held) ** 2
            if away < nearest:
                goes_on = (along < held and number == 0) or (along > held and number == last)
                found, nearest = base + (along if goes_on else held), away
        return float(found)

    def _leg_at(self, station):
        """The leg a station lies on; past the ends the first or last."""
        return self._legs[min(max(bisect_right(self._stations, station) - 1, 0), len(self._legs) - 1)]

    def at(self, station):
        """The point at a station, as an array; past the ends on the first or last leg prolonged."""
        x, y, unit_x, unit_y, _, base = self._leg_at(station)
        return np.array([x + (station - base) * unit_x, y + (station - base) * unit_y])

    def direction_at(self, station):
        """The unit vector of play at a station; at a turn point that of the leg ahead."""
        return np.array(self._leg_at(station)[2:4])

    def extent(self, geometry):
        """Least and greatest station of one geometry; see ``Lines.extents``."""
        near, far, _ = self.as_lines.extents(outlines([geometry]), np.zeros(1, dtype=int))
        return float(near[0]), float(far[0])

    def legs_to(self, station, point):
        """Length of the way from a station over the turn points still ahead, then straight to ``point``."""
        ahead = self.turns_after(station)
        start = ahead[-1] if ahead else station
        return start - station + math.dist(point, self.at(start))


def chords(geometry, origin, direction):
    """Where the whole straight line through ``origin`` cuts a polygon.

    direction: unit vector. Returns ``[(from, to)]`` in order, metres from ``origin`` along
    ``direction``, pieces shorter than a millimetre left out.
    """
    return many_chords(geometry, [origin], [direction])[0]


def many_chords(geometry, origins, directions):
    """``chords`` of one polygon for many lines, (n, 2) origins and directions; a list of lists.

    A line enters or leaves wherever the outline passes from one side of it to the other.
    """
    vertices = outlines([geometry])
    away = vertices.points - np.asarray(origins, dtype=float).reshape(-1, 1, 2)
    unit = np.asarray(directions, dtype=float).reshape(-1, 1, 2)
    beside = away[:, :, 1] * unit[:, :, 0] - away[:, :, 0] * unit[:, :, 1]
    along = away[:, :, 0] * unit[:, :, 0] + away[:, :, 1] * unit[:, :, 1]
    left = beside >= 0.0
    joined = vertices.chain[1:] == vertices.chain[:-1]
    line, side = np.nonzero((left[:, 1:] != left[:, :-1]) & joined)
    here, there = beside[line, side], beside[line, side + 1]
    cut = along[line, side] + here / (here - there) * (along[line, side + 1] - along[line, side])
    order = np.lexsort((cut, line))
    line, cut = line[order].tolist(), cut[order].tolist()
    found = [[] for _ in origins]
    # Every ring is closed, so that each line has an even number of cuts: in and out by turns.
    for number, low, high in zip(line[::2], cut[::2], cut[1::2]):
        pieces = found[number]
        if pieces and low - pieces[-1][1] < 1e-6:
            pieces[-1] = (pieces[-1][0], high)
        else:
            pieces.append((low, high))
    return [[piece for piece in pieces if piece[1] - piece[0] > 1e-3] for pieces in found]


def chord_holding(pieces, at=0.0):
    """The chord that holds the place ``at``, else None."""
    for piece in pieces:
        if piece[0] - SAME <= at <= piece[1] + SAME:
            return piece
    return None


def chord_nearest(pieces, at=0.0):
    """The chord that holds the place ``at``, else the one nearest to it; None when there is none."""
    if not pieces:
        return None
    return min(pieces, key=lambda piece: max(piece[0] - at, at - piece[1], 0.0))


def middle_of_longest_chord(geometry, direction):
    """The middle of a polygon's longest chord in ``direction``.

    The length of a chord changes in straight steps between one vertex and the next, so the longest is
    found next to a vertex; where a whole band of chords is equally long, the middle of the band is taken.
    Of several bands that lie apart (the two arms of a C) it is the last to the left of ``direction``. None
    where no chord can be found.
    """
    direction = np.asarray(direction, dtype=float)
    normal = np.array([-direction[1], direction[0]])
    points = coordinates(geometry)
    offsets = np.unique(np.round(points @ normal, 9))
    nudge = 1e-6

    def longest_at(offsets):
        cuts = many_chords(geometry, np.outer(offsets, normal), np.tile(direction, (len(offsets), 1)))
        return [max(pieces, key=_chord_length, default=(0.0, 0.0)) for pieces in cuts]

    apart = offsets[1:] - offsets[:-1] >= 4 * nudge
    beside = np.column_stack([offsets[:-1][apart] + nudge, offsets[1:][apart] - nudge]).ravel()
    best, band = 0.0, None
    for offset, piece in zip(beside.tolist(), longest_at(beside)):
        length = _chord_length(piece)
        if length > best + 1e-3:
            best, band = length, (offset, offset)
        elif band and length > best - 1e-3:
            joined = _chord_length(longest_at([(band[1] + offset) / 2])[0]) > best - 1e-3
            band = (band[0] if joined else offset, offset)
    if band is None:
        return None
    offset = (band[0] + band[1]) / 2
    piece = longest_at([offset])[0]
    return offset * normal + (piece[0] + piece[1]) / 2 * direction


def _chord_length(piece):
    return piece[1] - piece[0]


def tee_reference(polygon, towards, which):
    """The point of a tee polygon that distances are measured from.

    towards: the point the first leg leads to. which: ``front`` (where the ray from the centroid leaves
    the polygon), ``centre`` (the centroid) or ``back`` (the same, looking backwards).
    """
    centre = coordinates(polygon.centroid)[0]
    away = np.asarray(towards, dtype=float) - centre
    distance = np.hypot(*away)
    if which == "centre" or distance < SAME:
        return centre
    direction = away / distance
    piece = chord_nearest(chords(polygon, centre, direction))
    if piece is None:
        return centre
    return centre + (piece[1] if which == "front" else piece[0]) * direction


def as_point(place):
    """A shapely point from a pair of numbers."""
    return Point(float(place[0]), float(place[1]))
