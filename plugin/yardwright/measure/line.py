"""The line of play: a chain of straight legs, and where along it and beside it things lie."""

from functools import cached_property

import numpy as np
from shapely.geometry import LineString, Point

from ..model.geometry import coordinates

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
        steps = np.hypot(*np.diff(points, axis=0).T)
        self.points = points[np.concatenate([[True], steps > _SAME])]
        if len(self.points) < 2:
            raise NoLine("a line of play needs two different points")
        legs = np.diff(self.points, axis=0)
        self._lengths = np.hypot(legs[:, 0], legs[:, 1])
        self._units = legs / self._lengths[:, None]
        self.vertex_stations = np.concatenate([[0.0], np.cumsum(self._lengths)])

    @property
    def length(self):
        """Metres from the first point to the last."""
        return float(self.vertex_stations[-1])

    @property
    def turns(self):
        """The stations of the turn points: all vertices but the ends."""
        return self.vertex_stations[1:-1]

    @cached_property
    def shape(self):
        """The line as a shapely LineString."""
        return LineString(self.points)

    def stations(self, points):
        """The station of the nearest place on the line for each of (n, 2) points.

        Beyond the ends the first and last leg are thought to go on, so that a station is negative
        behind the start and greater than ``length`` past the end.
        """
        points = np.asarray(points, dtype=float).reshape(-1, 2)
        from_start = points[:, None, :] - self.points[None, :-1, :]
        along = np.einsum("nki,ki->nk", from_start, self._units)
        held = np.clip(along, 0.0, self._lengths)
        off = from_start - held[:, :, None] * self._units
        leg = np.argmin(np.einsum("nki,nki->nk", off, off), axis=1)
        rows = np.arange(len(points))
        station = self.vertex_stations[leg] + held[rows, leg]
        last = len(self._lengths) - 1
        past = (leg == last) & (along[rows, leg] > self._lengths[last])
        station[past] = self.vertex_stations[last] + along[rows, leg][past]
        before = (leg == 0) & (along[:, 0] < 0)
        station[before] = along[before, 0]
        return station

    def station(self, point):
        """The station of one point; see ``stations``."""
        return float(self.stations([point])[0])

    def leg_at(self, station):
        """The number of the leg a station lies on, counted from 0; past the ends the first or last."""
        leg = int(np.searchsorted(self.vertex_stations, station, side="right")) - 1
        return min(max(leg, 0), len(self._lengths) - 1)

    def at(self, station):
        """The point at a station, as an array; past the ends on the first or last leg prolonged."""
        leg = self.leg_at(station)
        return self.points[leg] + (station - self.vertex_stations[leg]) * self._units[leg]

    def direction_at(self, station):
        """The unit vector of play at a station; at a turn point that of the leg ahead."""
        return self._units[self.leg_at(station)]

    def side_of(self, point):
        """``left`` or ``right``: where a point lies for one who looks along play at the nearest place."""
        station = min(max(self.station(point), 0.0), self.length)
        leg = self.leg_at(station)
        foot = self.at(station)
        ahead = self._units[leg]
        # At a turn point two legs meet; the bisector decides, for a point outside the bend sees both.
        if leg > 0 and abs(station - self.vertex_stations[leg]) < _SAME:
            ahead = self._units[leg - 1] + self._units[leg]
        away = np.asarray(point) - foot
        return "left" if ahead[0] * away[1] - ahead[1] * away[0] > 0 else "right"

    def bends_between(self, station_a, station_b):
        """Whether a turn point lies strictly between two stations."""
        low, high = sorted((station_a, station_b))
        return bool(np.any((self.turns > low + _SAME) & (self.turns < high - _SAME)))

    def crossings(self, geometry):
        """Stations of the first and the last point that the line shares with a geometry; None if none."""
        shared = self.shape.intersection(geometry)
        if shared.is_empty:
            return None
        stations = np.clip(self.stations(coordinates(shared)), 0.0, self.length)
        return float(stations.min()), float(stations.max())

    def extent(self, geometry):
        """Least station, greatest station and the point of the greatest, over a whole geometry.

        On a line with bends the outline is first cut into short steps, because the extremes may then
        lie between two vertices.
        """
        points = coordinates(geometry)
        if len(self._lengths) > 1 and len(points) > 1:
            points = _in_steps(points, 2.0)
        stations = self.stations(points)
        farthest = int(np.argmax(stations))
        return float(stations.min()), float(stations[farthest]), points[farthest]

    def legs_to(self, station, point):
        """Length of the way from a station over the turn points still ahead, then straight to ``point``."""
        ahead = self.turns[self.turns > station + _SAME]
        if not len(ahead):
            return float(np.hypot(*(np.asarray(point) - self.at(station))))
        return float(ahead[-1] - station + np.hypot(*(np.asarray(point) - self.at(ahead[-1]))))


def _in_steps(points, step):
    """Points along a chain of vertices, no two further apart than ``step``; the vertices stay."""
    lengths = np.hypot(*np.diff(points, axis=0).T)
    counts = np.maximum(1, np.ceil(lengths / step).astype(int))
    if counts.max(initial=1) == 1:
        return points
    start = np.repeat(points[:-1], counts, axis=0)
    leg = np.repeat(np.diff(points, axis=0), counts, axis=0)
    part = np.concatenate([np.arange(count) / count for count in counts])
    return np.concatenate([start + leg * part[:, None], points[-1:]])


def chords(geometry, origin, direction):
    """Where the whole straight line through ``origin`` cuts a polygon.

    direction: unit vector. Returns ``[(from, to)]`` in order, metres from ``origin`` along
    ``direction``, pieces shorter than a millimetre left out.
    """
    origin, direction = np.asarray(origin, dtype=float), np.asarray(direction, dtype=float)
    reach = float(np.abs(coordinates(geometry) - origin).sum(axis=1).max()) + 1.0
    cut = LineString([origin - reach * direction, origin + reach * direction]).intersection(geometry)
    pieces = []
    for part in getattr(cut, "geoms", [cut]):
        if part.geom_type == "LineString" and not part.is_empty:
            along = (coordinates(part) - origin) @ direction
            pieces.append((float(along.min()), float(along.max())))
    pieces.sort()
    joined = []
    for piece in pieces:
        if joined and piece[0] - joined[-1][1] < 1e-6:
            joined[-1] = (joined[-1][0], piece[1])
        else:
            joined.append(piece)
    return [piece for piece in joined if piece[1] - piece[0] > 1e-3]


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

    def longest_at(offset):
        return max(chords(geometry, offset * normal, direction), key=_chord_length, default=None)

    best, band = 0.0, None
    for low, high in zip(offsets[:-1], offsets[1:]):
        if high - low < 4 * nudge:
            continue
        for offset in (low + nudge, high - nudge):
            piece = longest_at(offset)
            length = 0.0 if piece is None else _chord_length(piece)
            if length > best + 1e-3:
                best, band = length, (offset, offset)
            elif band and length > best - 1e-3:
                between = longest_at((band[1] + offset) / 2)
                joined = between is not None and _chord_length(between) > best - 1e-3
                band = (band[0] if joined else offset, offset)
    if band is None:
        return None
    offset = (band[0] + band[1]) / 2
    piece = longest_at(offset)
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
