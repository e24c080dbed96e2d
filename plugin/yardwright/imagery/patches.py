"""Small tools for masks and planes of pixels: coarser, finer, averaged, grown, sorted by size."""

import numpy as np
from scipy.ndimage import label, uniform_filter


def coarser(picture, factor):
    """(h, w, ...) -> (ceil(h / factor), ceil(w / factor), ...), the mean of each square, same type; the last
    row and column count again where the factor does not divide."""
    if factor == 1:
        return picture
    h, w = picture.shape[:2]
    down, right = -h % factor, -w % factor
    if down or right:
        picture = np.pad(picture, ((0, down), (0, right)) + ((0, 0),) * (picture.ndim - 2), "edge")
    wide = np.uint32 if picture.dtype.kind in "ub" else picture.dtype
    total = picture[0::factor].astype(wide)
    for row in range(1, factor):
        total += picture[row::factor]
    sums = total[:, 0::factor].copy()
    for column in range(1, factor):
        sums += total[:, column::factor]
    if picture.dtype == bool:
        return 2 * sums > factor * factor
    if picture.dtype.kind == "u":
        return ((sums + factor * factor // 2) // (factor * factor)).astype(picture.dtype)
    return sums / np.asarray(factor * factor, picture.dtype)


def finer(plane, factor, shape):
    """Every pixel as a square of factor x factor, cut to shape."""
    if factor == 1:
        return plane[: shape[0], : shape[1]]
    return plane.repeat(factor, axis=0).repeat(factor, axis=1)[: shape[0], : shape[1]]


def mean_about(plane, pixels):
    """The mean over a square of that many pixels (made odd) about each."""
    return uniform_filter(plane, 2 * (int(pixels) // 2) + 1, mode="nearest")


def planes_of(picture):
    """Red, green and blue of a picture as three planes, (3, h, w)."""
    return np.ascontiguousarray(picture[..., :3].transpose(2, 0, 1))


def softened(plane):
    """A (h, w) uint8 with its grain softened: each pixel and its eight neighbours, weighted 1, 2, 1 along
    rows and columns."""
    for axis in (0, 1):
        pairs = _mean(plane, _next(plane, axis, 1))
        plane = _mean(pairs, _next(pairs, axis, -1))
    return plane


def _next(plane, axis, step):
    """The plane a pixel on along an axis (step 1) or back (-1), its last row or column twice."""
    made = plane.copy()
    ahead, behind = [slice(None)] * 2, [slice(None)] * 2
    ahead[axis], behind[axis] = slice(1, None), slice(None, -1)
    to, of = (behind, ahead) if step > 0 else (ahead, behind)
    made[tuple(to)] = plane[tuple(of)]
    return made


def _mean(a, b):
    """The mean of two uint8, rounded down, without need of more bits."""
    half = a ^ b
    half >>= 1
    half += a & b
    return half


def grown(mask, reach):
    """A mask and all within ``reach`` pixels of it, along rows and columns."""
    return _spread(mask, reach, np.logical_or)


def shrunk(mask, reach):
    """What of a mask is farther than ``reach`` pixels from what it does not cover."""
    return ~_spread(~mask, reach, np.logical_or)


def highest(plane, reach=1):
    """The greatest value within ``reach`` pixels along rows and columns."""
    return _spread(plane, reach, np.maximum)


def lowest(plane, reach=1):
    """The least value within ``reach`` pixels along rows and columns."""
    return _spread(plane, reach, np.minimum)


def _spread(plane, reach, which):
    for axis in (0, 1):
        done = 0
        while done < reach:
            step = min(reach - done, done + 1 if done else 1)
            plane = _with_neighbours(plane, step, axis, which)
            done += step
    return plane


def _with_neighbours(plane, step, axis, which):
    made = plane.copy()
    ahead = [slice(None)] * plane.ndim
    behind = [slice(None)] * plane.ndim
    ahead[axis], behind[axis] = slice(step, None), slice(None, -step)
    a, b = tuple(ahead), tuple(behind)
    which(made[b], plane[a], out=made[b])
    which(made[a], plane[b], out=made[a])
    return made


def opened(mask, reach):
    """A mask without what is nowhere wider than ``2 * reach + 1`` pixels."""
    return grown(shrunk(mask, reach), reach) & mask


def holding(mask, seeds, least=1):
    """The connected parts of a mask (corners count) that hold a seed and ``least`` pixels."""
    parts, many = label(mask, np.ones((3, 3), bool))
    if not many:
        return mask
    size = np.bincount(parts.ravel(), minlength=many + 1)
    kept = size >= least
    kept[0] = False
    held = np.zeros(many + 1, bool)
    held[parts[seeds]] = True
    return (kept & held)[parts]
