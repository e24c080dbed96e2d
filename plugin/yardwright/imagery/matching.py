"""The colours of one date made those of another, for all that has not changed between them."""

from dataclasses import dataclass
from functools import cached_property

import numpy as np
from scipy.ndimage import gaussian_filter

MOST_PIXELS = 400_000
_ENOUGH = 60_000  # pixels for what is one line or curve for all of them
_LEVELS = 128
_COARSE = 32
_STEPS = 64  # of a level: 255 of them and what a material has beside it fit into 16 bits
_OFFSET = 10.0  # keeps haze and noise from weighing much where the logarithm of a dark value is taken
_LEAST_SLOPE = 0.15
_STEEPEST = 10.0  # levels from one coarse cell to the next
_LEAST_PAIRS = 400


@dataclass(frozen=True)
class Match:
    """How colours are turned into those of the base.

    steps: (3, 256) int16, the base's red by the other's red, and so on. table: (128, 128, 128, 3) int16, what
    each material has beside that, by red, green and blue; both in 64ths of a level. pairs: how many pixels it
    was learnt from; 0 for one that changes nothing.
    """

    steps: object
    table: object
    pairs: int

    def apply(self, picture):
        """(h, w, 3 or 4) uint8 in the other's colours -> (h, w, 3) float32 in the base's, 0 to 255."""
        if not self.pairs:
            return picture[..., :3].astype(np.float32)
        made = self._in_steps(picture).astype(np.float32)
        made *= np.float32(1 / _STEPS)
        return np.clip(made, 0, 255, out=made)

    def rounded(self, picture):
        """The same as (h, w, 3) uint8, in a third of the time; where the curve of a channel is not as steep
        as its values, every other of those may come out a level off."""
        if not self.pairs:
            return picture[..., :3]
        planes, cell = _cells(picture)
        made = self._bytes.take(cell, 0)
        for k in range(3):
            made[..., k] += planes[k] & 1
        return made

    @cached_property
    def _bytes(self):
        """(128 ** 3, 3) uint8: what the even values of a cell become."""
        made = self.table + (_STEPS // 2)
        for k, shape in enumerate(_AXES):
            made[..., k] += self.steps[k, ::2].reshape(shape)
        made >>= _STEPS.bit_length() - 1
        return np.clip(made, 0, 254, out=made).astype(np.uint8).reshape(-1, 3)

    def _in_steps(self, picture):
        planes, cell = _cells(picture)
        made = self.table.reshape(-1, 3).take(cell, 0)
        for k in range(3):
            made[..., k] += self.steps[k].take(planes[k])
        return made


def _cells(picture):
    """``(red, green and blue of a picture, the numbers of their cells of the table)``."""
    # Planes that lie together and ``take`` are twice as quick as indices.
    planes = [np.ascontiguousarray(picture[..., k]) for k in range(3)]
    cell = (planes[0] >> 1).astype(np.int32)
    for plane in planes[1:]:
        cell <<= _LEVELS.bit_length() - 1
        cell |= plane >> 1
    return planes, cell


_AXES = ((-1, 1, 1), (1, -1, 1), (1, 1, -1))


SAME = Match(None, None, 0)
"""The Match that changes nothing."""


def learn_match(base, other, usable=None):
    """The Match that gives ``other`` the colours of ``base``.

    base, other: (h, w, 4) uint8 pictures of one grid. usable: (h, w) bool, where both show the same bare
    ground; None for all that both show. What changed between them (shade, people, another crop) may be in it
    as long as it is not the most. Without enough common ground the Match changes nothing.
    """
    ours, theirs = _pairs(base, other, usable)
    if len(ours) < _LEAST_PAIRS:
        return SAME
    kept = _unchanged(ours, theirs)
    if kept.sum() < _LEAST_PAIRS:
        return SAME
    ours, theirs = ours[kept], theirs[kept]
    few = slice(None, None, max(1, len(ours) // _ENOUGH))
    curves = np.stack([_curve(theirs[few, k], ours[few, k]) for k in range(3)])
    rest = ours - np.stack([curves[k][theirs[:, k].astype(int)] for k in range(3)], axis=1)
    steps = np.rint(np.clip(curves, -60, 315) * _STEPS).astype(np.int16)
    return Match(steps, _table(curves, _by_material(theirs, rest)), int(len(ours)))


def _pairs(base, other, usable):
    """(n, 3) float32 colours of both where both show ground, at most MOST_PIXELS of them, evenly spread."""
    both = (base[..., 3] > 127) & (other[..., 3] > 127)
    if usable is not None:
        both &= usable
    at = np.flatnonzero(both)
    at = at[:: max(1, len(at) // MOST_PIXELS)]
    return tuple(p.reshape(-1, 4)[at, :3].astype(np.float32) for p in (base, other))


def _unchanged(ours, theirs):
    """Which pairs follow the way brightness went from one to the other, (n,) bool: a straight line of the
    logarithms, found from the many and refused to the few."""
    across, up = (np.log(p.mean(axis=1) + _OFFSET) for p in (theirs, ours))
    step = max(1, len(across) // _ENOUGH)
    x, y = across[::step], up[::step]
    middle = np.median(x)
    x = x - middle
    slope, level = 1.0, np.median(y - x)
    for _ in range(8):
        off = y - level - slope * x
        spread = np.clip(1.4826 * np.median(np.abs(off)), 0.03, 0.15)
        weight = np.clip(1 - (off / (3 * spread)) ** 2, 0, None) ** 2
        total = weight.sum()
        if total <= 0:
            break
        mx, my = (weight @ x) / total, (weight @ y) / total
        wide = weight @ (x - mx) ** 2
        # A few pixels' worth of slope 1 holds the line where all brightness is the same.
        slope = (weight @ ((x - mx) * (y - my)) + 0.001 * total) / (wide + 0.001 * total)
        slope = float(np.clip(slope, 0.6, 1.6))
        level = my - slope * mx
    return np.abs(up - level - slope * (across - middle)) < np.clip(2.5 * spread, 0.1, 0.35)


def _curve(x, y):
    """A rising curve y of x, (256,) float32: medians of slices, made rising, smoothed; beyond the data it
    goes on with slope 1."""
    order = np.argsort(x, kind="stable")
    slices = max(4, min(40, len(x) // 100))
    parts = np.array_split(order, slices)
    at = np.array([np.median(x[part]) for part in parts])
    to = np.array([np.median(y[part]) for part in parts])
    counts = np.array([len(part) for part in parts], float)
    at, which = np.unique(at, return_inverse=True)
    weight = np.bincount(which, counts)
    to = _rising(np.bincount(which, counts * to) / weight, weight)
    values = np.arange(256.0)
    curve = np.interp(values, at, to)
    curve += np.where(values < at[0], values - at[0], 0) + np.where(values > at[-1], values - at[-1], 0)
    ends = 24
    long = np.concatenate([curve[0] - np.arange(ends, 0, -1), curve, curve[-1] + np.arange(1, ends + 1)])
    smooth = gaussian_filter(long, 6.0)[ends:-ends]
    steps = np.clip(np.diff(smooth), _LEAST_SLOPE, None)
    raised = np.concatenate([[0.0], np.cumsum(steps)])
    return (raised + np.median(smooth - raised)).astype(np.float32)


def _rising(values, weights):
    """The rising sequence nearest to values (least squares, pooled neighbours)."""
    pools = []
    for value, weight in zip(values.tolist(), weights.tolist()):
        pools.append([value, weight, 1])
        while len(pools) > 1 and pools[-2][0] >= pools[-1][0]:
            high = pools.pop()
            low = pools[-1]
            total = low[1] + high[1]
            pools[-1] = [(low[0] * low[1] + high[0] * high[1]) / total, total, low[2] + high[2]]
    return np.concatenate([np.full(many, value) for value, _, many in pools])


def _by_material(theirs, rest):
    """What is left beside the curves, by colour, (32, 32, 32, 3): near colours share, far ones do not, and
    where no pixel has such a colour it fades."""
    cell = (theirs.astype(np.int32) >> 3) @ np.array([_COARSE * _COARSE, _COARSE, 1])
    shape, size = (_COARSE,) * 3, _COARSE**3
    count = np.bincount(cell, minlength=size).reshape(shape).astype(np.float32)
    rest = np.clip(rest, -40, 40)
    sums = [np.bincount(cell, rest[:, k], size).reshape(shape).astype(np.float32) for k in range(3)]
    found = np.zeros((*shape, 3), np.float32)
    trusted = max(4.0, 2e-4 * len(theirs))
    for sigma in (5.0, 2.0, 1.0):
        near = gaussian_filter(count, sigma, mode="constant")
        for k in range(3):
            total = gaussian_filter(sums[k], sigma, mode="constant")
            faith = trusted / (2.5 * sigma) ** 3
            found[..., k] = (total + faith * found[..., k]) / (near + faith)
    return found


def _table(curves, by_material):
    """The Match's table; where the materials would turn the order of bright and dark about, or change at a
    stroke, they are smoothed until they do not."""
    steps = np.diff(curves[:, 3::8], axis=1)
    for sigma in (0.0, 0.7, 1.0, 1.5, 2.0, 3.0, 5.0, 8.0):
        smooth = gaussian_filter(by_material, (sigma, sigma, sigma, 0), mode="nearest")
        if _is_gentle(smooth, steps):
            break
    else:
        smooth = np.broadcast_to(by_material.mean(axis=(0, 1, 2)), by_material.shape)
    return np.rint(_doubled(_doubled(smooth)) * _STEPS).astype(np.int16)


def _is_gentle(cells, steps):
    """Whether what is brighter in all channels stays so in each, and no neighbouring colours part."""
    along = cells[1:, 1:, 1:] - cells[:-1, :-1, :-1]
    if any((along[..., k] + steps[k].reshape(shape)).min() <= 0 for k, shape in enumerate(_AXES)):
        return False
    return all(np.abs(np.diff(cells, axis=axis)).max() < _STEEPEST for axis in range(3))


def _doubled(cells):
    """(n, n, n, 3) -> (2n, 2n, 2n, 3), straight between the middles of the cells."""
    for axis in range(3):
        n = cells.shape[axis]
        before = np.take(cells, np.maximum(np.arange(n) - 1, 0), axis)
        after = np.take(cells, np.minimum(np.arange(n) + 1, n - 1), axis)
        low, high = 0.75 * cells + 0.25 * before, 0.75 * cells + 0.25 * after
        pair = np.stack([low, high], axis + 1)
        cells = pair.reshape(*cells.shape[:axis], 2 * n, *cells.shape[axis + 1 :])
    return cells
