"""Small tools for masks and planes of pixels: coarser, finer, averaged, grown, sorted by size."""

import numpy as np
from scipy.ndimage import label, uniform_filter1d

_SHORT = 4  # pixels


def coarser(picture, factor):
    """(h, w, ...) -> (ceil(h / factor), ceil(w / factor), ...), the mean of each square, same type; the last
    row and column count again where the factor does not divide."""
    if factor == 1:
        return picture
    h, w = picture.shape[:2]
    down, right = -h % factor, -w % factor
    if down or right:
        picture = np.pad(picture, ((0, down), (0, right)) + ((0, 0),) * (picture.ndim - 2), "edge")
    whole = picture.dtype.kind in "ub"
    wide = (np.uint16 if factor <= 16 else np.uint32) if whole else picture.dtype
    total = picture[0::factor].astype(wide, order="C")
    for row in range(1, factor):
        total += picture[row::factor]
    # Four sums of 16 bits lie side by side in one of 64, and never run over: a fifth of the time.
    if wide is np.uint16 and total.shape[2:] == (4,):
        total = total.view(np.uint64)
    sums = total[:, 0::factor].copy()
    for column in range(1, factor):
        sums += total[:, column::factor]
    sums = sums.view(wide)
    if picture.dtype == bool:
        return 2 * sums > factor * factor
    if picture.dtype.kind == "u":
        return ((sums + factor * factor // 2) // (factor * factor)).astype(picture.dtype)
    return sums / np.asarray(factor * factor, picture.dtype)


def finer(plane, factor, shape):
    """Every pixel as a square of factor x factor, cut to shape."""
    if factor == 1:
        return plane[: shape[0], : shape[1]]
    high, wide = plane.shape
    made = np.empty((high, factor, wide * factor), plane.dtype)
    # Four times as quick as ``repeat``, which besides lets no other thread run.
    for column in range(factor):
        made[:, 0, column::factor] = plane
    made[:, 1:] = made[:, :1]
    return made.reshape(high * factor, -1)[: shape[0], : shape[1]]


def mean_about(plane, pixels):
    """The mean over a square of that many pixels (made odd) about each, of (h, w, ...) float32."""
    reach = int(pixels) // 2
    for axis in (0, 1):
        if reach > _SHORT:
            plane = uniform_filter1d(plane, 2 * reach + 1, axis=axis, mode="nearest")
        elif reach:
            plane = _mean_along(plane, reach, axis)
    return plane


def _mean_along(plane, reach, axis):
    """The mean of the pixels within reach along an axis: a few sums of whole planes are up to three times as
    quick as a running one."""
    lines, many = plane.swapaxes(0, axis), plane.shape[axis]
    # Beyond the border it goes on as it ends.
    lines = np.concatenate([*[lines[:1]] * reach, lines, *[lines[-1:]] * reach])
    total = lines[:many] + lines[1 : many + 1]
    for step in range(2, 2 * reach + 1):
        total += lines[step : many + step]
    total *= np.float32(1 / (2 * reach + 1))
    return total.swapaxes(0, axis)


def planes_of(picture):
    """Red, green and blue of a picture as three planes, (3, h, w)."""
    return np.ascontiguousarray(picture[..., :3].transpose(2, 0, 1))


def softened(plane):
    """A (h, w) uint8 with its grain softened: each pixel and its eight neighbours, weighted 1, 2, 1 along
    rows and columns."""
    for axis in (0, 1):
        made = np.empty_like(plane)
        lines, soft = plane.swapaxes(0, axis), made.swapaxes(0, axis)
        if len(lines) < 2:
            continue
        pairs = _mean(lines[:-1], lines[1:])
        # Beyond the border it goes on as it ends.
        soft[0] = pairs[0]
        _mean(pairs[1:], pairs[:-1], soft[1:-1])
        _mean(pairs[-1], lines[-1], soft[-1])
        plane = made
    return plane


def _mean(a, b, out=None):
    """The mean of two uint8, rounded down, without need of more bits."""
    half = np.bitwise_xor(a, b, out=out)
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
    made = np.empty_like(plane)
    lines, new = plane.swapaxes(0, axis), made.swapaxes(0, axis)
    which(lines[:-step], lines[step:], out=new[:-step])
    new[-step:] = lines[-step:]
    which(new[step:], lines[:-step], out=new[step:])
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
