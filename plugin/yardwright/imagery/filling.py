"""Small things that no date goes without, filled with ground of the same kind from close by."""

from dataclasses import dataclass

import numpy as np
from scipy.ndimage import binary_dilation

from .blending import membrane, softened

_RING = 3  # pixels about a gap that a patch is compared in
_ALIKE = 26.0  # grey values: a ring that varies more than this is not ground of one kind


@dataclass(frozen=True)
class Patch:
    """What is laid over a gap: the picture with it, (h, w, 3) float32, and how much of it, (h, w) 0 to 1."""

    picture: object
    share: object


def plain(picture, gap, usable, reach):
    """Whether the ground about a gap is all of one kind as far as ``reach`` pixels: no sand, water, path or
    margin among it. picture: (h, w, 3); gap: (h, w) bool; usable: (h, w) bool, what may be looked at."""
    about = binary_dilation(gap, iterations=reach) & usable & ~binary_dilation(gap, iterations=2)
    values = picture[about].astype(np.float32)
    if len(values) < 20:
        return False
    middle = np.median(values, axis=0)
    off = np.abs(values - middle).max(axis=1)
    return float((off > _ALIKE).mean()) < 0.02


def patch_of(picture, gap, usable, reach):
    """The Patch for a gap, copied from where its surroundings look most like the gap's own, or None.

    picture: (h, w, 3) uint8. gap: (h, w) bool. usable: (h, w) bool, what may be copied and compared. reach:
    pixels a copy may come from. The same picture gives the same patch.
    """
    wide = binary_dilation(gap, iterations=1)
    ring = binary_dilation(wide, iterations=_RING) & ~wide & usable
    rows, columns = np.nonzero(ring)
    if len(rows) < 8:
        return None
    values = picture.astype(np.float32)
    moves = _moves(wide, usable, reach)
    if not moves:
        return None
    own = values[rows, columns]
    costs = [_cost(values, usable, rows, columns, own, move) for move in moves]
    best = int(np.argmin(costs))
    if not np.isfinite(costs[best]):
        return None
    down, right = moves[best]
    high, wide_ = gap.shape
    at = np.ix_(np.clip(np.arange(high) + down, 0, high - 1), np.clip(np.arange(wide_) + right, 0, wide_ - 1))
    moved = values[at]
    level = membrane(np.where(ring[..., None], values - moved, 0), 0.6 * ring)
    share = softened(wide, 1)
    return Patch(values + (moved + level - values) * share[..., None], share)


def _moves(gap, usable, reach):
    """``[(rows down, columns right)]`` by which all of a gap falls on what may be copied, near ones first."""
    rows, columns = np.nonzero(gap)
    high, wide = gap.shape
    span = max(np.ptp(rows), np.ptp(columns)) + 2
    steps = range(-reach, reach + 1, 2)
    moves = [(d, r) for d in steps for r in steps if max(abs(d), abs(r)) >= span]
    moves.sort(key=lambda move: (move[0] ** 2 + move[1] ** 2, move))
    kept = []
    for down, right in moves:
        if rows.min() + down < 0 or rows.max() + down >= high:
            continue
        if columns.min() + right < 0 or columns.max() + right >= wide:
            continue
        if usable[rows + down, columns + right].all():
            kept.append((down, right))
    return kept


def _cost(values, usable, rows, columns, own, move):
    """How unlike the ring about a gap is to the same ring moved; infinite where that leaves the picture."""
    down, right = rows + move[0], columns + move[1]
    high, wide = usable.shape
    inside = (down >= 0) & (down < high) & (right >= 0) & (right < wide)
    if inside.sum() < 0.8 * len(rows):
        return np.inf
    there = inside.copy()
    there[inside] = usable[down[inside], right[inside]]
    if there.sum() < 0.8 * len(rows):
        return np.inf
    off = np.abs(own[there] - values[down[there], right[there]])
    # A nearby copy of equal likeness is the better one, for turf changes slowly.
    return float(off.mean()) * (1 + 0.002 * float(np.hypot(*move)))
