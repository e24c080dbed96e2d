"""Several lines of play asked at once, in arrays: where along them and beside them many points lie.

The tees of a hole each have a line of their own, and all features lie beside all of them: asked one by one
they would cost thousands of calls for a few numbers each.
"""

import numpy as np

from ..model.geometry import starts_of

SAME = 1e-6
"""Metres below which two places are one."""


class Lines:
    """Lines of play (LineOfPlay), to be asked by their place in the list.

    Everywhere below ``line`` is an (n,) array of such places, one for each point or geometry. Lines may have
    different numbers of legs: legs are counted so that the last of every line has the same number.
    """

    def __init__(self, lines):
        most = max(len(line.leg_lengths) for line in lines)
        # Of every leg: start, unit vector, length and station of its start; then the least and greatest
        # metres along it that count, for the first leg is thought to go on backwards and the last onwards.
        self._legs = np.full((most, 8, len(lines)), np.nan)
        self.lengths = np.array([line.length for line in lines])
        self.shapes = np.empty(len(lines), dtype=object)
        for place, line in enumerate(lines):
            own = self._legs[most - len(line.leg_lengths) :, :, place]
            own[:, 0:2], own[:, 2:4] = line.points[:-1], line.leg_units
            own[:, 4], own[:, 5] = line.leg_lengths, line.vertex_stations[:-1]
            own[:, 6], own[:, 7] = 0.0, line.leg_lengths
            own[0, 6], own[-1, 7] = -np.inf, np.inf
            self.shapes[place] = line.shape
        self._first = np.array([most - len(line.leg_lengths) for line in lines])

    def stations(self, points, line):
        """The station of the nearest place on their line for each of (n, 2) points.

        Beyond the ends the first and last leg are thought to go on, so that a station is negative behind
        the start and greater than the line's length past the end.
        """
        return self._locate(points, line)[0]

    def _locate(self, points, line):
        """Station (see ``stations``), leg and square of the distance from the line of (n, 2) points."""
        x, y = points[:, 0], points[:, 1]
        station = leg = nearest = None
        for number, columns in enumerate(self._legs):
            start_x, start_y, unit_x, unit_y, length, base, low, high = columns.take(line, axis=1)
            right, up = x - start_x, y - start_y
            along = right * unit_x + up * unit_y
            across = right * unit_y - up * unit_x
            away = across * across + (along - np.minimum(np.maximum(along, 0.0), length)) ** 2
            here = base + np.minimum(np.maximum(along, low), high)
            if number == 0:
                station, leg, nearest = here, np.zeros(len(points), dtype=int), away
                continue
            # Written so that any leg is nearer than one that the line does not have, which is nan.
            nearer = ~(away >= nearest)
            station = np.where(nearer, here, station)
            leg = np.where(nearer, number, leg)
            nearest = np.where(nearer, away, nearest)
        return station, leg, nearest

    def _leg_at(self, stations, line):
        """The leg each station lies on, at a turn point the leg ahead; past the ends the first or last."""
        bases = self._legs[:, 5].take(line, axis=1)
        return np.maximum((bases <= stations).sum(axis=0) - 1 + self._first[line], self._first[line])

    def at(self, stations, line):
        """The points at some stations, (n, 2); past the ends on the first or last leg prolonged."""
        start_x, start_y, unit_x, unit_y, _, base, _, _ = self._legs[self._leg_at(stations, line), :, line].T
        along = stations - base
        return np.column_stack([start_x + along * unit_x, start_y + along * unit_y])

    def directions(self, stations, line):
        """The unit vectors of play at some stations, (n, 2); at a turn point that of the leg ahead."""
        return self._legs[self._leg_at(stations, line), 2:4, line]

    def near_turns(self, stations, line, within):
        """The places of the stations that lie within some metres of a turn point, and the turn's station."""
        bases = self._legs[:, 5].take(line, axis=1)
        leg, place = np.nonzero((bases > 0.0) & (np.abs(stations - bases) < within))
        return place, bases[leg, place]

    def bends_between(self, one, other, line):
        """Whether a turn point lies strictly between two stations, (n,) of bool."""
        low, high = np.minimum(one, other) + SAME, np.maximum(one, other) - SAME
        bases = self._legs[:, 5].take(line, axis=1)
        return ((bases > 0.0) & (low < bases) & (bases < high)).any(axis=0)

    def sides(self, points, line):
        """``left`` or ``right`` for each of (n, 2) points: where it lies for one who looks along play at the
        nearest place. At a turn point two legs meet; the bisector decides, for a point outside the bend sees
        both."""
        _, leg, _ = self._locate(points, line)
        start_x, start_y, unit_x, unit_y, length, _, low, high = self._legs[leg, :, line].T
        along = (points[:, 0] - start_x) * unit_x + (points[:, 1] - start_y) * unit_y
        along = np.minimum(np.maximum(along, 0.0), length)
        away_x = points[:, 0] - start_x - along * unit_x
        away_y = points[:, 1] - start_y - along * unit_y
        at_start, at_end = (along < SAME) & (low == 0.0), (length - along < SAME) & (high == length)
        for at_turn, step in (at_start, -1), (at_end, 1):
            beyond = self._legs[leg[at_turn] + step, :, line[at_turn]]
            unit_x[at_turn] += beyond[:, 2]
            unit_y[at_turn] += beyond[:, 3]
        return np.where(unit_x * away_y - unit_y * away_x > 0, "left", "right")

    def crossings(self, vertices, areas, line):
        """Stations at which the line first and last meets each geometry, (n,) each; nan where it does not.

        vertices: the Outlines of the geometries. areas: (n,) of bool, which of them are polygons: a line that
        starts or ends inside one meets it from its start or to its end.
        """
        x, y, owner = vertices.points[:, 0], vertices.points[:, 1], vertices.owner
        joined = vertices.chain[1:] == vertices.chain[:-1]
        first = np.full(len(areas), np.inf)
        last = np.full(len(areas), -np.inf)
        final = len(self._legs) - 1
        for number, columns in enumerate(self._legs):
            start_x, start_y, unit_x, unit_y, length, base, low, _ = columns.take(line[owner], axis=1)
            right, up = x - start_x, y - start_y
            beside = right * unit_y - up * unit_x
            off = beside >= 0.0
            side = np.flatnonzero((off[1:] != off[:-1]) & joined)
            part = beside[side] / (beside[side] - beside[side + 1])
            along = right * unit_x + up * unit_y
            along = along[side] + part * (along[side + 1] - along[side])
            whose = owner[side]
            behind = np.bincount(whose[(along < 0.0) & (low[side] < 0.0)], minlength=len(areas))
            within = areas & (behind % 2 == 1)
            first[within] = last[within] = 0.0
            on = (along >= 0.0) & (along <= length[side])
            station = base[side][on] + along[on]
            np.minimum.at(first, whose[on], station)
            np.maximum.at(last, whose[on], station)
            if number == final:
                beyond = np.bincount(whose[along > length[side]], minlength=len(areas))
                within = areas & (beyond % 2 == 1)
                last[within] = self.lengths[line[within]]
                first[within] = np.minimum(first[within], last[within])
        met = first <= last
        return np.where(met, first, np.nan), np.where(met, last, np.nan)

    def extents(self, vertices, line):
        """Least station (n,), greatest station (n,) and the point of the greatest (n, 2) of each geometry.

        vertices: the Outlines of the geometries. Of several points of greatest station the one nearest to
        the line is given. On a line with bends stations jump where an outline passes from one leg's side to
        another's, so that the extremes may lie between two vertices: such places are looked at too.
        """
        points, owner, starts = vertices.points, vertices.owner, vertices.starts
        station, leg, nearest = self._locate(points, line[owner])
        mixed = np.minimum.reduceat(leg, starts) != np.maximum.reduceat(leg, starts)
        if mixed.any():
            more, whose = self._jumps(vertices, mixed, line)
            found = self._locate(more, line[whose])
            points, owner = np.concatenate([points, more]), np.concatenate([owner, whose])
            order = np.argsort(owner, kind="stable")
            points, owner, starts = points[order], owner[order], starts_of(owner[order])
            station = np.concatenate([station, found[0]])[order]
            nearest = np.concatenate([nearest, found[2]])[order]
        near, far = np.minimum.reduceat(station, starts), np.maximum.reduceat(station, starts)
        at_end = np.flatnonzero(station >= far[owner] - 1e-4)
        order = at_end[np.lexsort((nearest[at_end], owner[at_end]))]
        return near, far, points[order[starts_of(owner[order])]]

    def _jumps(self, vertices, wanted, line):
        """Points just before and just after each jump of the station along some outlines, and their owners.

        wanted: (n,) of bool, which of the geometries.
        """
        points, owner, chain = _in_steps(vertices.of(wanted), 5.0)
        _, leg, _ = self._locate(points, line[owner])
        jumps = np.flatnonzero((leg[1:] != leg[:-1]) & (chain[1:] == chain[:-1]))
        start, side, whose = points[jumps], points[jumps + 1] - points[jumps], owner[jumps]
        one, other = (
            self._beside(number, line[whose], start, side) for number in (leg[jumps], leg[jumps + 1])
        )
        parts = []
        # There both legs are equally far: how far a side is beside each changes evenly along it, so that the
        # place where the two are equal, or opposite, is found at once.
        for sign in (1.0, -1.0):
            fall = one[1] - sign * other[1]
            part = (sign * other[0] - one[0]) / np.where(fall == 0.0, np.inf, fall)
            parts.extend(np.clip(part + nudge, 0.0, 1.0) for nudge in (-1e-7, 1e-7))
        more = np.concatenate([start + part[:, None] * side for part in parts])
        return more, np.tile(whose, len(parts))

    def _beside(self, leg, line, points, sides):
        """How far points lie beside their leg, and how much that changes over their sides."""
        start_x, start_y, unit_x, unit_y = self._legs[leg, :4, line].T
        return (
            (points[:, 0] - start_x) * unit_y - (points[:, 1] - start_y) * unit_x,
            sides[:, 0] * unit_y - sides[:, 1] * unit_x,
        )


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
