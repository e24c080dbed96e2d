"""The line of play: a chain of straight legs, and where along it and beside it things lie."""

from bisect import bisect_right
from functools import cached_property

import numpy as np
from shapely.geometry import LineString, Point

from ..model.geometry import Outlines, coordinates, outlines, starts_of

_SAME = 1e-6


class NoLine(ValueError):
    """The points make no line."""


class LineOfPlay:
    """A line from tee to green in a hole frame, metres.

    points: (n, 2) array, n >= 2; doubled points are dropped. Stations count along it from its start.
    """

    def __init__(self, points):
        points = np.asarray(points, dtype=float).reshape(-1, 2)
        if not np.isfinite(points).all():
            raise NoLine("a line of play needs finite coordinates")
        steps = points[1:] - points[:-1]
        self.points = points[np.concatenate([[True], np.hypot(steps[:, 0], steps[:, 1]) > _SAME])]
        if len(self.points) < 2:
            raise NoLine("a line of play needs two different points")
        legs = self.points[1:] - self.points[:-1]
        self._lengths = np.hypot(legs[:, 0], legs[:, 1])
        self._units = legs / self._lengths[:, None]
        self.vertex_stations = np.concatenate([[0.0], np.cumsum(self._lengths)])
        self._vertex_stations = self.vertex_stations.tolist()

    @property
    def length(self):
        """Metres from the first point to the last."""
        return float(self.vertex_stations[-1])

    @property
    def turns(self):
        """The stations of the turn points: all vertices but the ends."""
        return self.vertex_stations[1:-1]

    def turns_after(self, station):
        """The stations of the turn points that lie ahead of a station."""
        return self.turns[self.turns > station + _SAME]

    def turn_points_after(self, station):
        """The (n, 2) turn points that lie ahead of a station."""
        return self.points[1:-1][self.turns > station + _SAME]

    @cached_property
    def shape(self):
        """The line as a shapely LineString."""
        return LineString(self.points)

    def stations(self, points):
        """The station of the nearest place on the line for each of (n, 2) points.

        Beyond the ends the first and last leg are thought to go on, so that a station is negative
        behind the start and greater than ``length`` past the end.
        """
        return self._locate(np.asarray(points, dtype=float).reshape(-1, 2))[0]

    def _locate(self, points):
        """Station (see ``stations``), leg and square of the distance from the line of (n, 2) points."""
        x, y = points[:, 0], points[:, 1]
        last = len(self._lengths) - 1
        station = leg = nearest = None
        for number, (start, unit, length) in enumerate(zip(self.points, self._units, self._lengths)):
            right, up = x - start[0], y - start[1]
            along = right * unit[0] + up * unit[1]
            across = right * unit[1] - up * unit[0]
            held = np.minimum(np.maximum(along, 0.0), length)
            away = across * across + (along - held) ** 2
            if number == 0:
                held = np.minimum(along, held)
            if number == last:
                held = np.maximum(along, held)
            here = self.vertex_stations[number] + held
            if number == 0:
                station, leg, nearest = here, np.zeros(len(points), dtype=int), away
                continue
            nearer = away < nearest
            station = np.where(nearer, here, station)
            leg = np.where(nearer, number, leg)
            nearest = np.where(nearer, away, nearest)
        return station, leg, nearest

    def station(self, point):
        """The station of one point; see ``stations``."""
        if len(self._lengths) == 1:
            away, unit = point - self.points[0], self._units[0]
            return float(away[0] * unit[0] + away[1] * unit[1])
        return float(self.stations([point])[0])

    def leg_at(self, station):
        """The number of the leg a station lies on, counted from 0; past the ends the first or last."""
        return min(max(bisect_right(self._vertex_stations, station) - 1, 0), len(self._lengths) - 1)

    def at(self, station):
        """The point at a station, as an array; past the ends on the first or last leg prolonged."""
        leg = self.leg_at(station)
        return self.points[leg] + (station - self.vertex_stations[leg]) * self._units[leg]

    def direction_at(self, station):
        """The unit vector of play at a station; at a turn point that of the leg ahead."""
        return self._units[self.leg_at(station)]

    def sides(self, points):
        """``left`` or ``right`` for each of (n, 2) points: where it lies for one who looks along play at the
        nearest place. At a turn point two legs meet; the bisector decides, for a point outside the bend sees
        both."""
        points = np.asarray(points, dtype=float).reshape(-1, 2)
        station = np.clip(self.stations(points), 0.0, self.length)
        leg = np.searchsorted(self.vertex_stations, station, side="right") - 1
        leg = np.clip(leg, 0, len(self._lengths) - 1)
        along = station - self.vertex_stations[leg]
        away = points - (self.points[leg] + along[:, None] * self._units[leg])
        at_turn = (leg > 0) & (along < _SAME)
        ahead = self._units[leg] + np.where(at_turn[:, None], self._units[np.maximum(leg, 1) - 1], 0.0)
        return np.where(ahead[:, 0] * away[:, 1] - ahead[:, 1] * away[:, 0] > 0, "left", "right").tolist()

    def bends_between(self, station_a, station_b):
        """Whether a turn point lies strictly between two stations."""
        low, high = sorted((station_a, station_b))
        return any(low + _SAME < turn < high - _SAME for turn in self._vertex_stations[1:-1])

    def crossings(self, vertices, areas):
        """Stations at which the line first and last meets each geometry, (n,) each; nan where it does not.

        vertices: the Outlines of the geometries. areas: (n,) of bool, which of them are polygons: a line that
        starts or ends inside one meets it from its start or to its end.
        """
        points, owner = vertices.points, vertices.owner
        joined = vertices.chain[1:] == vertices.chain[:-1]
        first = np.full(len(areas), np.inf)
        last = np.full(len(areas), -np.inf)
        final = len(self._lengths) - 1
        for number, (start, unit, length) in enumerate(zip(self.points, self._units, self._lengths)):
            right, up = points[:, 0] - start[0], points[:, 1] - start[1]
            beside = right * unit[1] - up * unit[0]
            off = beside >= 0.0
            side = np.flatnonzero((off[1:] != off[:-1]) & joined)
            part = beside[side] / (beside[side] - beside[side + 1])
            along = right[side] * unit[0] + up[side] * unit[1]
            along = along + part * (right[side + 1] * unit[0] + up[side + 1] * unit[1] - along)
            whose = owner[side]
            if number == 0:
                behind = np.bincount(whose[along < 0.0], minlength=len(areas))
                first[areas & (behind % 2 == 1)] = 0.0
                last[areas & (behind % 2 == 1)] = 0.0
            on = (along >= 0.0) & (along <= length)
            station = self.vertex_stations[number] + along[on]
            np.minimum.at(first, whose[on], station)
            np.maximum.at(last, whose[on], station)
            if number == final:
                beyond = np.bincount(whose[along > length], minlength=len(areas))
                last[areas & (beyond % 2 == 1)] = self.length
                inside = areas & (beyond % 2 == 1)
                first[inside] = np.minimum(first[inside], self.length)
        met = first <= last
        return np.where(met, first, np.nan), np.where(met, last, np.nan)

    def extents(self, vertices):
        """Least station (n,), greatest station (n,) and the point of the greatest (n, 2) of each geometry.

        vertices: the Outlines of the geometries. Of several points of greatest station the one nearest to
        the line is given. On a line with bends stations jump where an outline passes from one leg's side to
        another's, so that the extremes may lie between two vertices: such places are looked at too.
        """
        points, owner = vertices.points, vertices.owner
        station, leg, nearest = self._locate(points)
        starts = vertices.starts
        mixed = np.minimum.reduceat(leg, starts) != np.maximum.reduceat(leg, starts)
        if mixed.any():
            more, whose = self._jumps(vertices, mixed[owner])
            points, owner = np.concatenate([points, more]), np.concatenate([owner, whose])
            order = np.argsort(owner, kind="stable")
            points, owner = points[order], owner[order]
            station, _, nearest = self._locate(points)
            starts = starts_of(owner)
        near, far = np.minimum.reduceat(station, starts), np.maximum.reduceat(station, starts)
        at_end = np.flatnonzero(station >= far[owner] - 1e-4)
        order = at_end[np.lexsort((nearest[at_end], owner[at_end]))]
        return near, far, points[order[starts_of(owner[order])]]

    def extent(self, geometry):
        """Least and greatest station of one geometry; see ``extents``."""
        near, far, _ = self.extents(outlines([geometry]))
        return float(near[0]), float(far[0])

    def _jumps(self, vertices, wanted):
        """Points just before and just after each jump of the station along some outlines, and their owners.

        wanted: (n,) of bool, the vertices of those outlines.
        """
        picked = Outlines(vertices.points[wanted], vertices.owner[wanted], vertices.chain[wanted])
        points, owner, chain = _in_steps(picked, 5.0)
        _, leg, _ = self._locate(points)
        jumps = np.flatnonzero((leg[1:] != leg[:-1]) & (chain[1:] == chain[:-1]))
        start, side = points[jumps], points[jumps + 1] - points[jumps]
        one, other = (self._beside(number, start, side) for number in (leg[jumps], leg[jumps + 1]))
        parts = []
        # There both legs are equally far: how far a side is beside each changes evenly along it, so that the
        # place where the two are equal, or opposite, is found at once.
        for sign in (1.0, -1.0):
            fall = one[1] - sign * other[1]
            part = (sign * other[0] - one[0]) / np.where(fall == 0.0, np.inf, fall)
            parts.extend(np.clip(part + nudge, 0.0, 1.0) for nudge in (-1e-7, 1e-7))
        more = np.concatenate([start + part[:, None] * side for part in parts])
        return more, np.tile(owner[jumps], len(parts))

    def _beside(self, leg, points, sides):
        """How far points lie beside their leg, and how much that changes over their sides."""
        unit, away = self._units[leg], points - self.points[leg]
        return (
            away[:, 0] * unit[:, 1] - away[:, 1] * unit[:, 0],
            sides[:, 0] * unit[:, 1] - sides[:, 1] * unit[:, 0],
        )

    def legs_to(self, station, point):
        """Length of the way from a station over the turn points still ahead, then straight to ``point``."""
        ahead = self.turns_after(station)
        if not len(ahead):
            return float(np.hypot(*(np.asarray(point) - self.at(station))))
        return float(ahead[-1] - station + np.hypot(*(np.asarray(point) - self.at(ahead[-1]))))


def _in_steps(vertices, step):
    """Points, owners and chains of Outlines, no two neighbours of a chain further apart than ``step``."""
    points, owner, chain = vertices.points, vertices.owner, vertices.chain
    sides = points[1:] - points[:-1]
    lengths = np.where(chain[1:] == chain[:-1], np.hypot(sides[:, 0], sides[:, 1]), 0.0)
    counts = np.append(np.maximum(1, np.ceil(lengths / step)).astype(int), 1)
    if counts.max() == 1:
        return points, owner, chain
    first = np.repeat(np.arange(len(points)), counts)
    number = np.arange(len(first)) - np.repeat(np.cumsum(counts) - counts, counts)
    part = number / counts[first]
    sides = np.concatenate([sides, [[0.0, 0.0]]])
    return points[first] + sides[first] * part[:, None], owner[first], chain[first]


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
        if piece[0] - _SAME <= at <= piece[1] + _SAME:
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
    if which == "centre" or distance < _SAME:
        return centre
    direction = away / distance
    piece = chord_nearest(chords(polygon, centre, direction))
    if piece is None:
        return centre
    return centre + (piece[1] if which == "front" else piece[0]) * direction


def as_point(place):
    """A shapely point from a pair of numbers."""
    return Point(float(place[0]), float(place[1]))
