"""Margins in an image: traced round an area of pixels, and moved to where the colours change most.

A ring is (n, 2) columns and rows counted in pixels from the outer top-left corner of the image, closed
without its first point again.
"""

import numpy as np
from scipy import ndimage


def trace(area):
    """The outer margin of an area (h, w) of bool that is one piece without holes, (n, 2), along pixels."""
    padded = np.pad(area, 1)
    down, right = np.nonzero(padded)
    starts, ends = [], []
    # Each side of a pixel that borders on none of the area, directed so that the area lies to one hand.
    for (dr, dc), (a, b) in (
        ((-1, 0), ((1, 0), (0, 0))),
        ((0, -1), ((0, 0), (0, 1))),
        ((1, 0), ((0, 1), (1, 1))),
        ((0, 1), ((1, 1), (1, 0))),
    ):
        bare = ~padded[down + dr, right + dc]
        row, column = down[bare] - 1, right[bare] - 1
        starts.append(np.column_stack([column + a[0], row + a[1]]))
        ends.append(np.column_stack([column + b[0], row + b[1]]))
    starts, ends = np.concatenate(starts), np.concatenate(ends)
    following = {}
    for start, end in zip(map(tuple, starts.tolist()), map(tuple, ends.tolist())):
        following.setdefault(start, []).append(end)
    best = []
    while following:
        ring = _walk(following)
        if len(ring) > len(best):
            best = ring
    return np.array(best, dtype=float)


def _walk(following):
    """Take one closed ring out of the sides; where two meet in a corner, turn towards the area."""
    start = next(iter(following))
    ring, here, before = [], start, None
    while True:
        ring.append(here)
        choices = following[here]
        if len(choices) > 1 and before is not None:
            heading = (here[0] - before[0], here[1] - before[1])
            choices.sort(key=lambda end: _turn(heading, (end[0] - here[0], end[1] - here[1])))
        ahead = choices.pop()
        if not choices:
            del following[here]
        before, here = here, ahead
        if here == start:
            return ring


def _turn(heading, leaving):
    return heading[1] * leaving[0] - heading[0] * leaving[1]


def spaced(ring, step):
    """The ring with points about ``step`` apart, at least 12, evenly along its sides."""
    sides = np.diff(np.concatenate([ring, ring[:1]]), axis=0)
    along = np.concatenate([[0.0], np.cumsum(np.hypot(*sides.T))])
    count = max(12, int(round(along[-1] / step)))
    at = np.arange(count) * along[-1] / count
    closed = np.concatenate([ring, ring[:1]])
    return np.column_stack([np.interp(at, along, closed[:, 0]), np.interp(at, along, closed[:, 1])])


def smoothed(ring, sigma):
    """The ring without bends shorter than ``sigma`` points, and as large as before.

    A smoothing draws a ring together; a second one, of what the first took away, puts most of it back.
    """
    once = ndimage.gaussian_filter1d(ring, sigma, axis=0, mode="wrap")
    return once + ndimage.gaussian_filter1d(ring - once, sigma, axis=0, mode="wrap")


def outward(ring, reach=1):
    """Unit vectors (n, 2) square to the ring, out of it. reach: points on either side that count."""
    ahead = np.roll(ring, -reach, axis=0) - np.roll(ring, reach, axis=0)
    square = np.column_stack([-ahead[:, 1], ahead[:, 0]])
    if signed_area(ring) > 0:
        square = -square
    return square / np.maximum(np.hypot(*square.T), 1e-9)[:, None]


def signed_area(ring):
    """Area within the ring, below zero where it runs the other way round."""
    x, y = ring.T
    return 0.5 * float(np.sum(x * np.roll(y, -1) - np.roll(x, -1) * y))


def length(ring):
    """Length of the closed ring."""
    return float(np.hypot(*(np.roll(ring, -1, axis=0) - ring).T).sum())


def sample(image, places):
    """The channels of an image (h, w, k) at places (..., 2), also between its pixels: (..., k)."""
    at = [places[..., 1] - 0.5, places[..., 0] - 0.5]
    channels = [
        ndimage.map_coordinates(image[..., k], at, order=1, mode="nearest") for k in range(image.shape[-1])
    ]
    return np.stack(channels, axis=-1)


def best_path(gains, most, stiffness):
    """The best place in each row of gains (n, m), as a closed path: (n,) of int.

    From row to row, and from the last to the first, a path moves at most ``most`` places; a move of k costs
    ``stiffness * k * k``.
    """
    return best_paths(gains[None], most, stiffness)[0]


def best_paths(gains, most, stiffness):
    """The best path of each of k gains (k, n, m) at once: (k, n) of int; see ``best_path``."""
    count, n, m = gains.shape
    # Walked twice: the first round forgets where it began, the second is closed.
    moves = np.arange(-most, most + 1)
    costs = stiffness * moves.astype(float) ** 2
    came = np.zeros((2 * n, count, m), dtype=np.int16)
    total = gains[:, 0].astype(float)
    padded = np.full((count, m + 2 * most), -np.inf)
    for row in range(1, 2 * n):
        padded[:, most : most + m] = total
        options = np.stack([padded[:, k : k + m] - costs[k] for k in range(2 * most + 1)])
        choice = options.argmax(axis=0)
        came[row] = moves[choice]
        total = options.max(axis=0) + gains[:, row % n]
    each = np.arange(count)
    paths = np.empty((count, 2 * n), dtype=int)
    paths[:, -1] = total.argmax(axis=1)
    for row in range(2 * n - 1, 0, -1):
        paths[:, row - 1] = paths[:, row] + came[row, each, paths[:, row]]
    half = n // 2
    return np.concatenate([paths[:, n : n + half], paths[:, half:n]], axis=1)
