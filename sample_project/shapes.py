"""Smooth outlines and lines in local metres, x east and y north, as a course architect draws them."""

import numpy as np
from shapely.geometry import LineString, Polygon


def unit(vector):
    """``vector`` at length 1."""
    vector = np.asarray(vector, float)
    return vector / np.hypot(*vector)


def right_of(direction):
    """The unit vector square to ``direction``, to its right."""
    return np.array([direction[1], -direction[0]])


def _spline(points, count, closed):
    """``count`` points evenly along the Catmull-Rom curve through ``points``."""
    points = np.asarray(points, float)
    if closed:
        padded = np.vstack([points[-1], points, points[:2]])
    else:
        padded = np.vstack([2 * points[0] - points[1], points, 2 * points[-1] - points[-2]])
    t = np.linspace(0, 1, 24, endpoint=False)[:, None]
    p0, p1, p2, p3 = padded[:-3, None], padded[1:-2, None], padded[2:-1, None], padded[3:, None]
    dense = 0.5 * (
        2 * p1 + (p2 - p0) * t + (2 * p0 - 5 * p1 + 4 * p2 - p3) * t**2 + (3 * p1 - p0 - 3 * p2 + p3) * t**3
    )
    dense = np.vstack([dense.reshape(-1, 2), points[0] if closed else points[-1]])
    station = np.concatenate([[0], np.cumsum(np.hypot(*np.diff(dense, axis=0).T))])
    wanted = np.linspace(0, station[-1], count + 1 if closed else count)[: count if closed else None]
    return np.column_stack([np.interp(wanted, station, dense[:, k]) for k in (0, 1)])


def smooth_ring(points, count=48):
    """A polygon of ``count`` vertices on the smooth closed curve through ``points``."""
    return Polygon(_spline(points, count, True))


def smooth_line(points, count=60):
    """A line of ``count`` vertices on the smooth open curve through ``points``."""
    return LineString(_spline(points, count, False))


def blob(centre, length, width, direction, rng, wobble=0.1, count=36):
    """An organic outline about ``centre``: ``length`` along ``direction``, ``width`` across it.

    ``wobble`` is how far, as a share of the radius, three slow waves push the margin in and out.
    """
    angle = np.linspace(0, 2 * np.pi, count, endpoint=False)
    radius = np.ones(count)
    for waves, share in ((2, 0.6), (3, 1.0), (4, 0.5), (5, 0.3)):
        radius += wobble * share * rng.uniform(0.4, 1) * np.cos(waves * angle + rng.uniform(0, 2 * np.pi))
    along = np.asarray(direction, float)
    across = right_of(along)
    points = (
        np.asarray(centre)
        + np.outer(radius * np.cos(angle) * length / 2, along)
        + np.outer(radius * np.sin(angle) * width / 2, across)
    )
    return Polygon(points)


def pad(centre, length, width, direction, rng, count=28):
    """A teeing ground: a rectangle with well rounded corners, hardly ever quite regular."""
    angle = np.linspace(0, 2 * np.pi, count, endpoint=False)
    power = rng.uniform(0.42, 0.55)
    along = np.sign(np.cos(angle)) * np.abs(np.cos(angle)) ** power * length / 2
    across = np.sign(np.sin(angle)) * np.abs(np.sin(angle)) ** power * width / 2
    across = across * (1 + rng.uniform(-0.12, 0.12) * along / length)
    direction = np.asarray(direction, float)
    return Polygon(np.asarray(centre) + np.outer(along, direction) + np.outer(across, right_of(direction)))


def rounded(points, radius=70.0, step=6.0):
    """The line through ``points`` with its corners rounded, a point about every ``step`` metres; (n, 2)."""
    points = np.asarray(points, float)
    out = [points[0]]
    for before, corner, after in zip(points[:-2], points[1:-1], points[2:]):
        reach = min(radius, 0.45 * np.hypot(*(corner - before)), 0.45 * np.hypot(*(after - corner)))
        start, end = corner + unit(before - corner) * reach, corner + unit(after - corner) * reach
        t = np.linspace(0, 1, 9)[:, None]
        out.extend((1 - t) ** 2 * start + 2 * t * (1 - t) * corner + t**2 * end)
    out.append(points[-1])
    line = LineString(out)
    stations = np.linspace(0, line.length, max(3, int(line.length / step) + 1))
    return np.array([line.interpolate(station).coords[0] for station in stations])


def point_and_direction(points, station):
    """The point of the line ``points`` at ``station`` metres, and the unit direction there."""
    points = np.asarray(points, float)
    steps = np.diff(points, axis=0)
    lengths = np.hypot(*steps.T)
    starts = np.concatenate([[0], np.cumsum(lengths)])
    k = int(np.clip(np.searchsorted(starts, station, "right") - 1, 0, len(steps) - 1))
    direction = steps[k] / lengths[k]
    return points[k] + direction * (station - starts[k]), direction


def ribbon(points, first, last, half_left, half_right, rng, wobble=0.14, step=20.0):
    """A fairway: a band along ``points`` from station ``first`` to ``last`` with swaying margins.

    ``half_left`` and ``half_right`` are functions of the share of the way (0 to 1) that give metres.
    """
    stations = np.linspace(first, last, max(4, int((last - first) / step)))
    share = (stations - first) / (last - first)
    sway = [rng.uniform(0, 2 * np.pi, 3) for _ in (0, 1)]
    left, right = [], []
    for station, s in zip(stations, share):
        point, direction = point_and_direction(points, station)
        bend = [sum(np.sin(2 * np.pi * w * s + p) for w, p in zip((1.1, 2.3, 3.4), phase)) for phase in sway]
        taper = min(1.0, 0.72 + 1.6 * s, 0.72 + 1.9 * (1 - s))
        left.append(point - right_of(direction) * half_left(s) * taper * (1 + wobble * bend[0] / 1.8))
        right.append(point + right_of(direction) * half_right(s) * taper * (1 + wobble * bend[1] / 1.8))
    (tail, tail_way), (nose, nose_way) = point_and_direction(points, first), point_and_direction(points, last)
    ring = [*left, nose + nose_way * half_left(1) * 0.45, *right[::-1], tail - tail_way * half_left(0) * 0.45]
    return smooth_ring(ring, min(80, 3 * len(ring)))


def stream(points, width, rng, count=90):
    """A watercourse: a band of swaying width along the smooth curve through ``points``."""
    line = np.asarray(smooth_line(points, count).coords)
    way = np.gradient(line, axis=0)
    way /= np.hypot(*way.T)[:, None]
    sway = np.convolve(rng.uniform(-1, 1, count + 8), np.ones(9) / 9, "valid")
    half = width / 2 * (1 + 0.9 * sway)
    across = np.column_stack([way[:, 1], -way[:, 0]]) * half[:, None]
    return Polygon(np.vstack([line + across, (line - across)[::-1]])).buffer(0)
