"""Where on a green a hole may be cut, and the places in it that figures can tell.

What a committee wants kept is in ``model.event.Limits``.
"""

from dataclasses import dataclass

import numpy as np
from shapely.geometry import MultiPolygon, Polygon
from shapely.ops import unary_union

from ..model.geometry import contained, discs, distances, spots
from ..model.remarks import Remark
from ..model.words import say
from .line import chord_nearest, many_chords
from .units import YARD

PACE_M = YARD
"""Ground in which no disc one pace across finds room is too thin for a hole (our own rule)."""
SPECK_SQM = 1e-4
"""A piece of ground this small is left by rounding."""
CELL_M = 1.0
"""How finely ground is asked for its slope."""
EDGE_M = 1e-3
"""A place this near to the edge of the middle third counts as in it, so that rounding decides nothing."""
SAFE_M = 1e-6
"""By how much a place must keep more than is asked, so that no other reckoning finds it short."""
ROUND_CORNERS = 256


@dataclass(frozen=True)
class Ground:
    """Where a hole may be cut: ``area`` in the hole's frame, empty when there is none; ``remarks`` say what
    was left out and why nothing is left."""

    area: object
    remarks: tuple = ()

    @property
    def empty(self):
        """Whether no place is left."""
        return self.area.is_empty


def cutting_area(green, limits, earlier=(), slope=None):
    """Where on a GreenPlay a hole may be cut, shapely, in the hole's frame; see ``cutting_ground``."""
    return cutting_ground(green, limits, earlier, slope).area


def cutting_ground(green, limits, earlier=(), slope=None):
    """The Ground of a GreenPlay.

    It is the green less what lies nearer to its margin than ``limits.margin``, less what is steeper than
    ``limits.slope_pct`` and less what lies nearer than ``limits.apart`` to a hole in ``earlier``, (n, 2)
    points in the frame. slope: a function of (n, 2) points giving percent, nan where not known, or a grid
    ``(x, y, percent, ...)`` of arrays; ground of unknown slope is kept, with a remark. Pieces in which no
    disc of PACE_M finds room are left out.
    """
    remarks = []
    area = _roomy(green.geometry.buffer(-limits.margin, 64), remarks)
    if area.is_empty:
        reason = say("no place on the green is as far from its margin as is asked")
        return Ground(area, (*remarks, Remark(reason, "no_margin")))
    if slope is not None and limits.slope_pct is not None:
        cells = _Cells(slope, area)
        if not cells.known_within(area):
            remarks.append(Remark(say("the slope is not known on all of the green"), "slope_unknown"))
        area = _roomy(area.difference(cells.steeper_than(limits.slope_pct)), remarks)
        if area.is_empty:
            reason = say("all ground far enough from the margin is steeper than is asked")
            return Ground(area, (*remarks, Remark(reason, "no_level")))
    taken = np.asarray([tuple(point) for point in earlier], dtype=float).reshape(-1, 2)
    if len(taken) and limits.apart > 0.0:
        around = discs(taken, np.full(len(taken), limits.apart), ROUND_CORNERS)
        area = _roomy(area.difference(unary_union(around)), remarks)
        if area.is_empty:
            reason = say("all ground that is left lies too near to other rounds’ holes")
            return Ground(area, (*remarks, Remark(reason, "no_apart")))
    return Ground(area, tuple(dict.fromkeys(remarks)))


def _roomy(area, remarks):
    """The pieces of an area that have room for a hole; a remark where one has not."""
    pieces = [piece for piece in getattr(area, "geoms", (area,)) if piece.geom_type == "Polygon"]
    pieces = [piece for piece in pieces if piece.area > SPECK_SQM]
    kept = [piece for piece in pieces if not piece.buffer(-PACE_M / 2).is_empty]
    if len(kept) < len(pieces):
        remarks.append(Remark(say("ground too thin for a hole is left out"), "thin"))
    if not kept:
        return Polygon()
    return kept[0] if len(kept) == 1 else MultiPolygon(kept)


class _Cells:
    """The slope over an area as a lattice of cells. ``percent`` (rows, columns); the middle of a cell lies at
    ``origin + column * right + row * up``."""

    def __init__(self, slope, area=None):
        if callable(slope):
            low_x, low_y, high_x, high_y = area.bounds
            x, y = np.arange(low_x, high_x + CELL_M, CELL_M), np.arange(low_y, high_y + CELL_M, CELL_M)
            x, y = np.meshgrid(x, y)
            middles = np.column_stack([x.ravel(), y.ravel()])
            asked = np.asarray(contained(spots(middles), area.buffer(CELL_M)), dtype=bool)
            percent = np.full(len(middles), np.nan)
            percent[asked] = slope(middles[asked])
        else:
            x, y, percent = (np.asarray(part, dtype=float) for part in slope[:3])
            if x.ndim == 1:
                x, y = np.meshgrid(x, y)
        if min(x.shape) < 2:
            raise ValueError("a grid of slopes needs two rows and two columns")
        self.percent = percent.reshape(x.shape)
        self.origin = np.array([x[0, 0], y[0, 0]])
        self.right = np.array([x[0, 1], y[0, 1]]) - self.origin
        self.up = np.array([x[1, 0], y[1, 0]]) - self.origin

    def steeper_than(self, limit):
        """The ground of all cells steeper than ``limit`` percent, row by row in one piece where they meet."""
        return self._ground(self.percent > limit)

    def known_within(self, area):
        """Whether the slope is known all over an area, but for specks."""
        known = self._ground(np.isfinite(self.percent))
        return area.difference(known).area < abs(float(np.linalg.det([self.right, self.up])))

    def _ground(self, wanted):
        strips = []
        for row in np.flatnonzero(wanted.any(axis=1)).tolist():
            steps = np.diff(np.concatenate([[0], wanted[row].astype(int), [0]]))
            for first, end in zip(np.flatnonzero(steps == 1), np.flatnonzero(steps == -1)):
                corners = ((first, row), (end, row), (end, row + 1), (first, row + 1))
                strips.append(
                    Polygon([self.origin + (a - 0.5) * self.right + (b - 0.5) * self.up for a, b in corners])
                )
        return unary_union(strips) if strips else Polygon()

    def at(self, points):
        """The slope of the cell that each of (n, 2) points lies in; nan outside."""
        away = np.linalg.solve(np.column_stack([self.right, self.up]), (points - self.origin).T)
        column, row = np.floor(away + 0.5).astype(int)
        rows, columns = self.percent.shape
        inside = (column >= 0) & (column < columns) & (row >= 0) & (row < rows)
        found = np.full(len(points), np.nan)
        found[inside] = self.percent[row[inside], column[inside]]
        return found


def slope_at(slope, points):
    """Percent of a slope (function or grid, see ``cutting_ground``) at (n, 2) points; nan where unknown."""
    points = np.asarray(points, dtype=float).reshape(-1, 2)
    found = slope(points) if callable(slope) else _Cells(slope).at(points)
    return np.asarray(found, dtype=float).reshape(-1)


# Places by their figures


def thirds(values, low, high):
    """In which third between ``low`` and ``high`` a value lies, 0, 1 or 2; beyond them the first or last."""
    third = (np.asarray(high) - np.asarray(low)) / 3
    first_ends, last_begins = low + third - EDGE_M, low + 2 * third + EDGE_M
    return (np.asarray(values) >= first_ends).astype(int) + (np.asarray(values) > last_begins)


@dataclass(frozen=True)
class Places:
    """Places on a green by their figures, arrays (n,) in metres; ``side``: 0 counted from the left margin, 1
    from the right. ``across``: right of the approach; that of the two margins is ``low`` and ``high``.
    ``points`` (n, 2) in the frame; ``fine``: how many of the two figures are no whole units."""

    on: object
    off: object
    side: object
    across: object
    low: object
    high: object
    points: object
    to_margin: object
    fine: object

    def __len__(self):
        return len(self.on)

    def of(self, kept):
        """The places that ``kept`` (n,) of bool marks."""
        return Places(*(values[kept] for values in vars(self).values()))

    def parts(self, green):
        """``(sides, depths)`` of all, as ``part_of``."""
        return thirds(self.across, self.low, self.high), thirds(self.on, 0.0, green.depth)


def places_within(green, area, unit, share=1):
    """The Places of a green that lie in an area and whose figures are whole units, or whole parts of one.

    unit: metres. share: 1 for whole units, 2 for halves. They come in order of depth, then from the left
    margin inwards, then from the right one: each is counted from the nearer margin.
    """
    direction = np.asarray(green.direction, dtype=float)
    right = np.array([direction[1], -direction[0]])
    step = unit / share
    rows = np.arange(1, _steps(green.depth, step) + 1)
    found = []
    cuts = many_chords(
        green.geometry, green.front + np.outer(rows * step, direction), np.tile(right, (len(rows), 1))
    )
    for row, pieces in zip(rows.tolist(), cuts):
        piece = chord_nearest(pieces)
        if piece is None:
            continue
        low, high = piece
        middle = (high - low) / 2
        columns = range(1, _steps(middle, step) + 1)
        for column in columns:
            found.append((row, column, 0, low + column * step, low, high))
        for column in columns:
            if column * step < middle - EDGE_M:
                found.append((row, column, 1, high - column * step, low, high))
    row, column, side, across, low, high = np.array(found, dtype=float).reshape(-1, 6).T
    points = green.front + np.outer(row * step, direction) + np.outer(across, right)
    places = Places(
        on=row * step,
        off=column * step,
        side=side.astype(int),
        across=across,
        low=low,
        high=high,
        points=points,
        to_margin=np.asarray(distances(spots(points), green.geometry.boundary), dtype=float).reshape(-1),
        fine=(row % share != 0).astype(int) + (column % share != 0),
    )
    return places.of(np.asarray(contained(spots(points), area), dtype=bool)) if len(points) else places


def _steps(length, step):
    """How many steps a length holds, one that ends on its end counted."""
    return int((length + SAFE_M) / step)
