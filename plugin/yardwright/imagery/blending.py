"""Smooth fields between what is known, and the arithmetic of laying one picture into another."""

import numpy as np

from .patches import coarser, grown, mean_about

_TRUST = 0.5
_THIRDS = np.full(3, 1 / 3, np.float32)


def membrane(values, weights):
    """A smooth field through values known in part: (h, w, c) float32 and (h, w) of 0 to 1 -> (h, w, c).

    The known is averaged to ever coarser grids until no gap is left, and handed back from coarse to fine;
    at full weight half of a cell's own value counts, so that a single noisy cell does not shine through.
    Where nothing at all is known the field is 0.
    """
    values = np.asarray(values, np.float32)
    weights = np.clip(np.asarray(weights, np.float32), 0, 1)
    levels = []
    while True:
        levels.append((values, weights))
        if max(weights.shape) <= 2:
            break
        values, weights = _coarser(values, weights)
    total = weights.sum()
    middle = (values * weights[..., None]).sum(axis=(0, 1)) / max(total, 1e-6)
    field = np.where(weights[..., None] > 0, values, middle).astype(np.float32)
    for values, weights in reversed(levels[:-1]):
        field = _finer(field, weights.shape)
        share = (_TRUST * weights)[..., None]
        field += share * (values - field)
    return field


def _coarser(values, weights):
    """Averages of each four cells, and how well the four together are known."""
    high, wide = weights.shape
    edge = ((0, high % 2), (0, wide % 2))
    weights = np.pad(weights, edge)
    values = np.pad(values, (*edge, (0, 0)), mode="edge") * weights[..., None]
    total = _fours(weights)
    mean = _fours(values) / np.maximum(total, 1e-6)[..., None]
    return mean, np.minimum(total, 1.0)


def _fours(array):
    return array[0::2, 0::2] + array[1::2, 0::2] + array[0::2, 1::2] + array[1::2, 1::2]


def _finer(field, shape):
    """Twice as many cells either way, straight between the middles of the coarse ones."""
    for axis in (0, 1):
        n = field.shape[axis]
        before = np.take(field, np.maximum(np.arange(n) - 1, 0), axis)
        after = np.take(field, np.minimum(np.arange(n) + 1, n - 1), axis)
        pair = np.stack([0.75 * field + 0.25 * before, 0.75 * field + 0.25 * after], axis + 1)
        field = pair.reshape(*field.shape[:axis], 2 * n, *field.shape[axis + 1 :])
    return field[: shape[0], : shape[1]]


def spread(coarse, block, factor):
    """The part of a coarse field that lies under a Block, at every pixel: straight between its cells.

    coarse: (h, w, ...) with a cell for each ``factor`` x ``factor`` pixels.
    """
    out = np.asarray(coarse, np.float32)
    for axis, (first, count) in enumerate(((block.y, block.height), (block.x, block.width))):
        at = (np.arange(first, first + count, dtype=np.float32) + 0.5) / factor - 0.5
        low = np.clip(np.floor(at).astype(int), 0, out.shape[axis] - 1)
        high = np.minimum(low + 1, out.shape[axis] - 1)
        share = np.clip(at - low, 0, 1).reshape([-1 if k == axis else 1 for k in range(out.ndim)])
        part = out.take(low, axis)
        part += share * (out.take(high, axis) - part)
        out = part
    return out


def spread_at(coarse, block, factor, rows, columns):
    """The same at some pixels of the Block alone, (n, ...)."""
    high, wide = coarse.shape[:2]
    down = (rows + (block.y + 0.5)) / factor - 0.5
    right = (columns + (block.x + 0.5)) / factor - 0.5
    top, left = (np.clip(np.floor(at).astype(int), 0, n - 1) for at, n in ((down, high), (right, wide)))
    bottom, end = np.minimum(top + 1, high - 1), np.minimum(left + 1, wide - 1)
    down, right = (np.clip(at - low, 0, 1).astype(np.float32) for at, low in ((down, top), (right, left)))
    shape = (-1,) + (1,) * (coarse.ndim - 2)
    down, right = down.reshape(shape), right.reshape(shape)
    upper = coarse[top, left] * (1 - right) + coarse[top, end] * right
    lower = coarse[bottom, left] * (1 - right) + coarse[bottom, end] * right
    return upper * (1 - down) + lower * down


def stepped(coarse, block, factor):
    """The part of a coarse field that lies under a Block, each pixel as its cell."""
    rows = np.arange(block.y, block.y + block.height) // factor
    columns = np.arange(block.x, block.x + block.width) // factor
    return coarse.take(rows, 0).take(columns, 1)


def summed(array, factor):
    """Sums over each ``factor`` x ``factor`` pixels, float32; the last cells may be smaller."""
    high, wide = array.shape[:2]
    edge = [(0, -high % factor), (0, -wide % factor)] + [(0, 0)] * (array.ndim - 2)
    if edge[0][1] or edge[1][1]:
        array = np.pad(array, edge)
    # Whole numbers of bytes add up exactly and fast.
    kind = np.float32 if array.dtype.kind == "f" else np.uint16 if factor <= 16 else np.uint32
    total = array[0::factor].astype(kind)
    for row in range(1, factor):
        total += array[row::factor]
    sums = total[:, 0::factor].copy()
    for column in range(1, factor):
        sums += total[:, column::factor]
    return sums.astype(np.float32)


def averaged(pixels, step):
    """A picture (h, w, 4) uint8 ``step`` times coarser; what is clear does not darken the rest."""
    shown = pixels[..., 3] > 127
    if step == 1 or shown.all():
        return coarser(pixels, step)
    count = summed(shown, step)
    made = np.zeros((*count.shape, 4), np.uint8)
    for band in range(3):
        total = summed(np.where(shown, pixels[..., band], 0), step)
        made[..., band] = np.rint(total / np.maximum(count, 1))
    made[..., 3] = np.where(count * 2 >= step * step, 255, 0)
    return made


def even(colours):
    """(..., 3) float32 -> (...) the mean of red, green and blue; ``mean`` takes fifty times as long."""
    return colours @ _THIRDS


def softened(mask, pixels):
    """A mask grown and let fade, (h, w) float32: 1 within it, 0 further off than about 3 x ``pixels``."""
    return np.clip(smooth(grown(mask, 2 * pixels).astype(np.float32), pixels), 0, 1)


def smooth(array, pixels):
    """Means of a square of ``2 * pixels + 1``, taken twice, so that it has no corners."""
    return mean_about(mean_about(array, 2 * pixels + 1), 2 * pixels + 1)
