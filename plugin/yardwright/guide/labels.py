"""Where labels stand so that none covers another, nor what another names."""

import numpy as np

_SIDES = 16
_STEPS = (0.0, 12.0, 30.0, 55.0, 90.0)
"""So many directions and so far from its place, beyond its own gap, a label is tried at."""
_ON_A_PLACE = 60.0
_WRONG_SIDE = 3.0
"""What it costs a label to cover a place, and to stand opposite its best side, in pixels farther away."""


def placed(places, sizes, area, gap=8.0, kept=(), first=None):
    """Where each label stands, a list of (x, y) of its middle, None for a label without room.

    places: (n, 2), what the labels name, the most important first. sizes: (n, 2) widths and heights. area:
    (left, top, right, bottom) that all labels stay within. gap: how far a label keeps from its place, at
    least. kept: (m, 2) further places that are better not covered. first: (n, 2) unit vectors, the side on
    which each label stands best; upwards is negative y. All in one unit, pixels say. A label goes to the
    first best of a ring of spots; what would overlap another label or leave the area is never taken.
    """
    places = np.asarray(places, dtype=float).reshape(-1, 2)
    sizes = np.asarray(sizes, dtype=float).reshape(-1, 2)
    shunned = np.concatenate([places, np.asarray(kept, dtype=float).reshape(-1, 2)])
    turns = 2 * np.pi * np.arange(_SIDES) / _SIDES
    around = np.column_stack([np.cos(turns), np.sin(turns)])
    boxes, found = np.empty((0, 4)), []
    for place, size, side in zip(places, sizes, [None] * len(places) if first is None else first):
        spots, costs = _spots(place, size, around, gap, side)
        corners = np.column_stack([spots - size / 2, spots + size / 2])
        free = ((corners[:, :2] >= area[:2]) & (corners[:, 2:] <= area[2:])).all(axis=1)
        free &= ~_overlap(corners, boxes).any(axis=1)
        if not free.any():
            found.append(None)
            continue
        costs = costs + _ON_A_PLACE * _holds(corners, shunned).sum(axis=1)
        best = int(np.argmin(np.where(free, costs, np.inf)))
        boxes = np.vstack([boxes, corners[best] + [-2, -2, 2, 2]])
        found.append((float(spots[best][0]), float(spots[best][1])))
    return found


def _spots(place, size, around, gap, side):
    """The middles a label may have round its place, and how good each is: the nearer the better."""
    # From a box's middle to its rim in each direction.
    reach = (size / 2 / np.maximum(np.abs(around), 1e-9)).min(axis=1)
    spots = np.concatenate([place + around * (reach + gap + step)[:, None] for step in _STEPS])
    costs = np.repeat(np.array(_STEPS), len(around))
    if side is not None:
        costs = costs + np.tile(_WRONG_SIDE * (1 - around @ np.asarray(side)), len(_STEPS))
    return spots, costs


def _overlap(corners, boxes):
    """(n, m): which of n boxes overlap which of m."""
    return (
        (corners[:, None, 0] < boxes[None, :, 2])
        & (corners[:, None, 2] > boxes[None, :, 0])
        & (corners[:, None, 1] < boxes[None, :, 3])
        & (corners[:, None, 3] > boxes[None, :, 1])
    )


def _holds(corners, places):
    """(n, m): which of n boxes hold which of m places."""
    return (
        (places[None, :, 0] > corners[:, None, 0])
        & (places[None, :, 0] < corners[:, None, 2])
        & (places[None, :, 1] > corners[:, None, 1])
        & (places[None, :, 1] < corners[:, None, 3])
    )
