"""Where the labels of a picture stand: off each other, off what they name, and led to it where they are away.

``Board`` thinks of the page as small cells: some are taken, others would rather be left free. ``spread`` is
the same for figures along one line.
"""

import math

import numpy as np

from ..model.geometry import holding

CELL = 0.5
"""Millimetres; a label keeps off what is taken by at least half of it."""
_TURNS = 24
_STEPS = (0.0, 1.0, 2.5, 4.5, 7.0, 10.0, 14.0, 19.0, 25.0, 32.0)
_WRONG_SIDE = 2.5
_OVER_A_THING, _OVER_GROUND = 6.0, 0.25
_LEADER_FROM = 1.2
"""So far from its place a label needs a line that leads to it."""


class Board:
    """A picture on which labels find their places one by one, the most important first.

    width, height: millimetres. inset: what a label keeps from the edge.
    """

    def __init__(self, width, height, inset=0.8):
        self.width, self.height, self.inset = width, height, inset
        rows, columns = math.ceil(height / CELL) + 1, math.ceil(width / CELL) + 1
        self._taken = np.zeros((rows, columns), dtype=bool)
        self._boxes = np.zeros((rows, columns), dtype=bool)
        self._leaders = np.zeros((rows, columns), dtype=bool)
        self._cost = np.zeros((rows, columns))
        self._sums = None

    def take(self, shape):
        """No label may stand on this shapely shape, nor on the cells it comes near."""
        rows, columns, inside = self._cells(shape)
        self._taken[rows, columns] |= inside
        self._sums = None

    def shun(self, shape, cost):
        """Labels had better not stand on a shape; cost: a square millimetre’s, as millimetres farther."""
        rows, columns, inside = self._cells(shape)
        self._cost[rows, columns] += inside * cost * CELL * CELL
        self._sums = None

    def take_box(self, left, top, right, bottom):
        """The same as ``take`` of an upright box."""
        self._fill(self._taken, (left, top, right, bottom))
        self._sums = None

    def is_free(self, box):
        """Whether nothing is taken within an upright box of the picture."""
        first_x, first_y = (math.floor(value / CELL) for value in box[:2])
        last_x, last_y = (math.floor(value / CELL) + 1 for value in box[2:])
        return not self._taken[max(first_y, 0) : last_y, max(first_x, 0) : last_x].any()

    def place(self, anchor, size, aside=None, gap=0.9, own=None, away=True, lead_from=_LEADER_FROM):
        """``(middle, leader)`` of a label for an anchor, or None without room.

        size: (width, height). aside: unit vector of the side it stands best on. gap: from the anchor to its
        edge. own: the shapely shape it names, which it keeps off too. away: whether it may stand apart, led
        by a line, which it needs from ``lead_from`` on. leader: ``((x, y), (x, y))`` from the anchor to the
        label's edge, None where it is near.
        """
        turns = 2 * np.pi * np.arange(_TURNS) / _TURNS
        around = np.column_stack([np.cos(turns), np.sin(turns)])
        half = np.asarray(size, dtype=float) / 2
        reach = (half / np.maximum(np.abs(around), 1e-9)).min(axis=1)
        steps = _STEPS if away else _STEPS[:2]
        middles = np.concatenate([np.asarray(anchor) + around * (reach + gap + s)[:, None] for s in steps])
        costs = np.repeat(np.asarray(steps), _TURNS)
        if aside is not None:
            costs = costs + np.tile(_WRONG_SIDE * (1 - around @ np.asarray(aside)), len(steps))
        taken = self._with(own)
        low, high = middles - half, middles + half
        free = (low >= self.inset).all(axis=1)
        free &= (high <= np.array([self.width, self.height]) - self.inset).all(axis=1)
        free[free] = self._sum(taken, low[free], high[free]) == 0
        places = np.flatnonzero(free)
        costs = costs[places] + self._sum(self._costs(), low[places], high[places])
        best = None
        for place, cost in sorted(zip(places.tolist(), costs.tolist()), key=lambda one: one[1]):
            if best is not None and cost >= best[0]:
                break
            middle = middles[place]
            leader = _leader(anchor, middle, half, lead_from)
            if leader is not None:
                if self._crossed(leader):
                    continue
                cost += self._over(leader)
            if best is None or cost < best[0]:
                best = cost, middle, leader
        if best is None:
            return None
        _, middle, leader = best
        self._settle(middle, half, leader)
        return (float(middle[0]), float(middle[1])), leader

    def _over(self, leader):
        """What it costs a leader to run over other things than the one it leaves."""
        rows, columns = self._on_the_way(leader)
        crossed = self._taken[rows, columns].astype(int)
        again = int((np.diff(crossed) > 0).sum())
        burden = float((self._cost[rows, columns] > 0).sum()) * CELL / 2
        return _OVER_A_THING * again + _OVER_GROUND * burden

    def _settle(self, middle, half, leader):
        box = (*(middle - half - 0.15), *(middle + half + 0.15))
        self._fill(self._taken, box)
        self._fill(self._boxes, box)
        if leader is not None:
            rows, columns = self._on_the_way(leader)
            self._taken[rows, columns] = True
            self._leaders[rows, columns] = True
        self._sums = None

    def _crossed(self, leader):
        rows, columns = self._on_the_way(leader)
        return bool((self._boxes[rows, columns] | self._leaders[rows, columns]).any())

    def _on_the_way(self, leader):
        (x, y), (to_x, to_y) = leader
        count = max(math.ceil(math.hypot(to_x - x, to_y - y) / (CELL / 2)), 1)
        shares = np.linspace(0.0, 1.0, count + 1)
        rows = ((y + (to_y - y) * shares) / CELL).astype(int).clip(0, self._taken.shape[0] - 1)
        columns = ((x + (to_x - x) * shares) / CELL).astype(int).clip(0, self._taken.shape[1] - 1)
        return rows, columns

    def _with(self, own):
        if own is None:
            return self._sum_of(self._taken)
        rows, columns, inside = self._cells(own)
        taken = self._taken.copy()
        taken[rows, columns] |= inside
        return self._sum_of(taken)

    def _costs(self):
        if self._sums is None:
            self._sums = self._sum_of(self._cost)
        return self._sums

    @staticmethod
    def _sum_of(cells):
        sums = np.zeros((cells.shape[0] + 1, cells.shape[1] + 1))
        sums[1:, 1:] = cells.cumsum(axis=0, dtype=float).cumsum(axis=1)
        return sums

    def _sum(self, sums, low, high):
        """What boxes hold of cells summed from the top left corner, (n,)."""
        first = np.floor(low / CELL).astype(int).clip(0)
        last = np.floor(high / CELL).astype(int) + 1
        last = np.minimum(last, [sums.shape[1] - 1, sums.shape[0] - 1])
        held = sums[last[:, 1], last[:, 0]] - sums[first[:, 1], last[:, 0]]
        return np.round(held - sums[last[:, 1], first[:, 0]] + sums[first[:, 1], first[:, 0]], 9)

    def _fill(self, cells, box):
        first_x, first_y = (max(math.floor(value / CELL), 0) for value in box[:2])
        last_x, last_y = (math.floor(value / CELL) + 1 for value in box[2:])
        cells[first_y : max(last_y, 0), first_x : max(last_x, 0)] = True

    def _cells(self, shape):
        """``(rows, columns, inside)``: some cells, as slices, and which of them a shape comes near."""
        empty = slice(0, 0), slice(0, 0), np.zeros((0, 0), dtype=bool)
        if shape.is_empty:
            return empty
        wider = shape.buffer(0.71 * CELL)
        left, top, right, bottom = wider.bounds
        first_x, first_y = max(math.floor(left / CELL), 0), max(math.floor(top / CELL), 0)
        last_x = min(math.ceil(right / CELL), self._taken.shape[1])
        last_y = min(math.ceil(bottom / CELL), self._taken.shape[0])
        if last_x <= first_x or last_y <= first_y:
            return empty
        x, y = np.meshgrid(np.arange(first_x, last_x) + 0.5, np.arange(first_y, last_y) + 0.5)
        middles = np.column_stack([x.ravel(), y.ravel()]) * CELL
        inside = holding(wider, middles).reshape(x.shape)
        return slice(first_y, last_y), slice(first_x, last_x), inside


def _leader(anchor, middle, half, lead_from):
    """From the anchor to the nearest place of a box; None where it is next to it."""
    x, y = float(anchor[0]), float(anchor[1])
    to_x = min(max(x, middle[0] - half[0]), middle[0] + half[0])
    to_y = min(max(y, middle[1] - half[1]), middle[1] + half[1])
    if math.hypot(to_x - x, to_y - y) <= lead_from:
        return None
    # It ends short of the edge, so that its last cell is not the label's own.
    return (x, y), (float(to_x), float(to_y))


def spread(wanted, sizes, low, high):
    """Where figures stand along a line so that none overlaps, as near as may be to where they belong.

    wanted, sizes: (n,), wanted rising. All keep between low and high. A list, None where they do not fit.
    The sum of squares of what they are moved by is least (pooled neighbours, as in isotonic regression).
    """
    wanted, sizes = np.asarray(wanted, dtype=float), np.asarray(sizes, dtype=float)
    if not len(wanted):
        return []
    offsets = np.concatenate([[0.0], np.cumsum((sizes[1:] + sizes[:-1]) / 2)])
    least, most = low + sizes[0] / 2, high - sizes[-1] / 2 - offsets[-1]
    if most < least - 1e-9:
        return None
    pools = []
    for value in wanted - offsets:
        pools.append([float(value), 1])
        while len(pools) > 1 and pools[-2][0] > pools[-1][0]:
            value, count = pools.pop()
            before = pools[-1]
            before[0] = (before[0] * before[1] + value * count) / (before[1] + count)
            before[1] += count
    flat = np.repeat([pool[0] for pool in pools], [pool[1] for pool in pools])
    return (np.clip(flat, least, max(least, most)) + offsets).tolist()


def kept_apart(wanted, sizes, low, high, most):
    """``spread`` of those figures, given the most important first, that can stand within ``most`` of where
    they belong: ``{place in the list: where it stands}``; the others are left out."""
    kept, found = [], {}
    for number in range(len(wanted)):
        tried = sorted([*kept, number], key=lambda one: (wanted[one], -one))
        where = spread([wanted[one] for one in tried], [sizes[one] for one in tried], low, high)
        if where is None:
            continue
        if all(abs(place - wanted[one]) <= most for one, place in zip(tried, where)):
            kept, found = tried, dict(zip(tried, where))
    return found
