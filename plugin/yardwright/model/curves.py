"""A smooth curve through clicked points, as the many short sides that a layer keeps."""

import numpy as np


def smooth_through(points, closed, pieces=8):
    """A curve through (n, 2) points as an (m, 2) array that holds each of them.

    closed: whether it runs back to the first point, which is then the last of the result again. pieces: sides
    between two points. Of fewer than three points the straight sides are left as they are.

    The curve is the centripetal one of Catmull and Rom, which forms neither loops nor cusps between its
    points (P. J. Barry and R. N. Goldman, A recursive evaluation algorithm for a class of Catmull-Rom
    splines, 1988; C. Yuksel, S. Schaefer and J. Keyser, On the parameterization of Catmull-Rom curves, 2009;
    both from memory).
    """
    points = _without_doubles(np.asarray(points, dtype=float).reshape(-1, 2), closed)
    count = len(points)
    if count < 3:
        return np.concatenate([points, points[:1]]) if closed and count > 1 else points
    if closed:
        guides = np.concatenate([points[-1:], points, points[:2]])
    else:
        # Beyond an open end the curve goes on as its mirror: the end's own side gives the direction there.
        guides = np.concatenate([2 * points[:1] - points[1:2], points, 2 * points[-1:] - points[-2:-1]])
    before, start, end, after = guides[:-3], guides[1:-2], guides[2:-1], guides[3:]
    first = np.sqrt(_apart(before, start))[:, None, None]
    second = first + np.sqrt(_apart(start, end))[:, None, None]
    third = second + np.sqrt(_apart(end, after))[:, None, None]
    at = first + (second - first) * (np.arange(pieces) / pieces)[None, :, None]
    p, q, r, s = (one[:, None, :] for one in (before, start, end, after))
    a = p + (q - p) * (at / first)
    b = q + (r - q) * ((at - first) / (second - first))
    c = r + (s - r) * ((at - second) / (third - second))
    d = a + (b - a) * (at / second)
    e = b + (c - b) * ((at - first) / (third - first))
    curve = d + (e - d) * ((at - first) / (second - first))
    curve[:, 0] = start  # to the last digit
    last = points[:1] if closed else points[-1:]
    return np.concatenate([curve.reshape(-1, 2), last])


def _apart(one, other):
    return np.hypot(*(other - one).T)


def _without_doubles(points, closed):
    kept = np.ones(len(points), dtype=bool)
    kept[1:] = np.hypot(*np.diff(points, axis=0).T) > 0.0
    points = points[kept]
    if closed and len(points) > 1 and (points[0] == points[-1]).all():
        points = points[:-1]
    return points
