"""Areas round a place in an image that could be the thing which lies there, and how well each is set off."""

from dataclasses import dataclass

import numpy as np
from scipy import ndimage

from .edges import outward, sample, smoothed, spaced, trace

_LEVELS = 32
_COLLAR = 0.6


@dataclass(frozen=True)
class Candidate:
    """area: (h, w) of bool, one piece without holes. ring: its margin, (n, 2). contrast: (n,), how far apart
    the colours on its two sides lie. score: 0 to 1, how well it is set off from what lies round it."""

    area: object
    ring: object
    contrast: object
    score: float


def evened(image, times, strength):
    """The image (h, w, k) with its grain evened out and its edges kept.

    Neighbours mix the less the further their colours are apart; ``strength`` is the distance at which they
    mix half (P. Perona and J. Malik, Scale-space and edge detection using anisotropic diffusion, 1990;
    from memory).
    """
    image = image.copy()
    for _ in range(times):
        flow = np.zeros_like(image)
        for axis in (0, 1):
            step = np.diff(image, axis=axis)
            passes = 1.0 / (1.0 + (step * step).sum(axis=-1, keepdims=True) / strength**2)
            step *= 0.2 * passes
            ahead = [slice(None)] * 3
            behind = [slice(None)] * 3
            behind[axis], ahead[axis] = slice(None, -1), slice(1, None)
            flow[tuple(behind)] += step
            flow[tuple(ahead)] -= step
        image += flow
    return image


def grain(image):
    """How far apart the colours of neighbours usually are: the median over an image (h, w, k)."""
    step = np.diff(image[:, ::2], axis=0)
    return float(np.median(np.sqrt((step * step).sum(axis=-1)))) + 1e-3


def at_levels(cost, levels, click, least, most, thin):
    """Areas round a click, by where a cost (h, w) stays below a level: a list of (h, w) of bool.

    levels: rising. least, most: pixels an area may have. thin: radius in pixels of what is too thin to
    belong to it, or to be a bay of it.
    """
    found, last = [], 0
    for level in levels[levels > cost[click]]:
        pieces, _ = ndimage.label(cost <= level)
        area = pieces == pieces[click]
        size = int(area.sum())
        if size < least or size < 1.03 * last:
            continue
        if size > 1.5 * most:
            break
        last = size
        area = evenly_bounded(area, click, thin)
        if area is not None and least <= area.sum() <= most:
            found.append(area)
    return found


def shares(cost, least):
    """Levels of a cost below which rising shares of the picture lie, from half of ``least`` pixels on."""
    known = cost[np.isfinite(cost)]
    return np.unique(np.quantile(known, np.geomspace(max(0.5 * least / cost.size, 1e-3), 0.98, _LEVELS)))


def unlike(image, area, seen, near, far):
    """How much more alike the ground outside an area than the ground within it each pixel looks, (h, w).

    The logarithm of how much more often its colour is met there, -3 to 3. image: (h, w, 3) evened. near, far:
    pixels from the margin; what lies nearer to it than ``near`` shows neither, and outside counts what lies
    within ``far``.
    """
    within = ndimage.distance_transform_edt(area)
    without = ndimage.distance_transform_edt(~area)
    inner, outer = (within > near) & seen, (without > near) & (without <= far) & seen
    if inner.sum() < 8 or outer.sum() < 8:
        return None
    low, high = np.quantile(image[inner | outer], (0.01, 0.99), axis=0)
    size = np.maximum((high - low) / 40, 0.4)
    cells = np.clip(((image - low) / size + 4), 0, 47.999).astype(int)
    counts = []
    for part in (inner, outer):
        count = np.zeros((48, 48, 48), dtype=np.float32)
        np.add.at(count, tuple(cells[part].T), 1.0)
        counts.append(ndimage.gaussian_filter(count / part.sum(), 1.5))
    floor = 1e-6
    ratio = np.log((counts[1] + floor) / (counts[0] + floor))
    return np.clip(ratio[tuple(np.moveaxis(cells, -1, 0))], -3, 3)


def evenly_bounded(area, click, radius):
    """The piece of an area at a click without holes, and without arms and bays thinner than twice the radius.

    None where it is all so thin. Of a thing cut by the frame of the image, what lies beyond counts as more
    of it.
    """
    margin = int(radius) + 2
    rows, columns = np.flatnonzero(area.any(axis=1)), np.flatnonzero(area.any(axis=0))
    top, left = max(rows[0] - margin, 0), max(columns[0] - margin, 0)
    part = area[top : rows[-1] + margin + 1, left : columns[-1] + margin + 1]
    padded = np.pad(filled(part), margin, mode="edge")
    core = ndimage.distance_transform_edt(padded) > radius
    if not core.any():
        return None
    opened = padded & (ndimage.distance_transform_edt(~core) <= radius)
    pieces, _ = ndimage.label(opened)
    number = pieces[click[0] - top + margin, click[1] - left + margin]
    if number == 0:
        return None
    kept = pieces == number
    swollen = ndimage.distance_transform_edt(~kept) <= radius
    closed = filled(kept | (ndimage.distance_transform_edt(swollen) > radius))
    made = np.zeros_like(area)
    made[top : top + part.shape[0], left : left + part.shape[1]] = closed[margin:-margin, margin:-margin]
    return made


def filled(area):
    """An area without its holes."""
    around, count = ndimage.label(~np.pad(area, 1))
    return (around != around[0, 0])[1:-1, 1:-1] if count > 1 else area


def drawn(ring, shape):
    """The pixels (h, w) of bool whose centres lie within a ring (n, 2)."""
    h, w = shape
    x0, y0 = ring.T
    x1, y1 = np.roll(x0, -1), np.roll(y0, -1)
    crossings = np.zeros((h, w + 1), dtype=np.int32)
    for ax, ay, bx, by in zip(x0.tolist(), y0.tolist(), x1.tolist(), y1.tolist()):
        low, high = (ay, by) if ay < by else (by, ay)
        rows = np.arange(max(0, int(np.ceil(low - 0.5))), min(h - 1, int(np.ceil(high - 0.5)) - 1) + 1)
        if rows.size:
            at = ax + (rows + 0.5 - ay) * (bx - ax) / (by - ay)
            np.add.at(crossings, (rows, np.clip(np.ceil(at - 0.5), 0, w).astype(int)), 1)
    return (np.cumsum(crossings, axis=1)[:, :w] % 2).astype(bool)


def judged(area, image, half_width, plain, collar=None):
    """The Candidate of an area: contrast is measured over ``half_width`` pixels on either side of its margin.

    plain: the contrast that counts half. collar: pixels within the margin where nothing else should begin,
    None where that may be. The frame of the image is no margin: what lies along it counts as not seen.
    """
    h, w = area.shape
    ring = smoothed(spaced(trace(area), 1.5), 1.0)
    inside, outside = sides(image, ring, half_width)
    contrast = np.sqrt(((outside - inside) ** 2).sum(axis=-1))
    framed = (ring.min(axis=1) < 1.5) | (ring[:, 0] > w - 1.5) | (ring[:, 1] > h - 1.5)
    contrast = np.where(framed, 0.0, contrast)
    score = float(seen_at(contrast, plain).mean())
    if collar is not None:
        near, far = bands(image, ring, (0.2 * collar, 0.5 * collar), (collar, 1.5 * collar))
        changes = np.sqrt(((far - near) ** 2).sum(axis=-1))
        score *= 1.0 - _COLLAR * float(seen_at(changes, plain).mean())
    return Candidate(area, ring, contrast, score)


def seen_at(contrast, plain):
    """How well a contrast is seen, 0 to 1; one of ``plain`` half."""
    return contrast**2 / (contrast**2 + plain**2)


def bands(image, ring, *reaches):
    """Mean colours, each (n, k), between two distances within a margin, smoothed along it."""
    away = outward(ring, 2)
    means = []
    for reach in reaches:
        offsets = -np.linspace(*reach, 4)
        mean = sample(image, ring[:, None, :] + offsets[None, :, None] * away[:, None, :]).mean(axis=1)
        means.append(ndimage.gaussian_filter1d(mean, 1.5, axis=0, mode="wrap"))
    return means


def sides(image, ring, half_width):
    """Mean colours just within and just without a margin, each (n, k), smoothed along it."""
    return bands(image, ring, (0.4 * half_width, 1.2 * half_width), (-0.4 * half_width, -1.2 * half_width))


def unlike_in_shade(amounts, lit):
    """How far each pixel is from looking like something of the light ``lit`` (3,) that lies in the shade,
    (h, w).

    What lies in the shade of a tree still has the light of the sky: it is darker by a factor of 1.4 to 7, and
    bluer (measured on sand in aerial images). Of logarithms, so 0.1 is a tenth more or less light; 0 is
    alike. amounts: light, (h, w, 3).
    """
    change = np.log((amounts + 1e-3) / (lit + 1e-3))
    fall, green, blue = -change[..., 1], change[..., 1] - change[..., 0], change[..., 2] - change[..., 0]
    beyond = [0.35 - fall, fall - 1.95, 0.2 - blue, blue - 1.0, -0.15 - green, green - 0.4]
    return sum(np.maximum(one, 0.0) for one in beyond)


def without_stripes(image, area, pixel):
    """The image (h, w, k) without the light and dark stripes that a mower leaves, as they run within an area.

    Stripes are what changes with the place across one direction alone; the direction is the one in which that
    explains most of how the colours change within the area, and none is taken out where it explains little.
    Done twice, for greens are mown crosswise. pixel: metres.
    """
    area = ndimage.distance_transform_edt(np.pad(area, 1))[1:-1, 1:-1] > 1.5 / pixel
    for _ in range(2):
        rows, columns = np.nonzero(area)
        if len(rows) < 200:
            return image
        some = slice(None, None, max(1, len(rows) // 6000))
        colours = image[rows[some], columns[some]]
        colours = colours - colours.mean(axis=0)
        whole = float((colours**2).sum())
        explained, turn = max(
            (_explained(colours, rows[some], columns[some], turn, pixel), turn)
            for turn in np.linspace(0, np.pi, 36, endpoint=False)
        )
        if explained < 0.2 * whole:
            return image
        image = image - _stripes(image, area, turn, pixel)
    return image


def _across(rows, columns, turn, pixel):
    return np.floor((columns * np.cos(turn) + rows * np.sin(turn)) * pixel / 0.4).astype(int)


def _explained(colours, rows, columns, turn, pixel):
    """The sum of squares that the place across a direction explains beyond what broad shades do."""
    at = _across(rows, columns, turn, pixel)
    at = at - at.min()
    counts = np.bincount(at)
    sums = np.stack([np.bincount(at, colour) for colour in colours.T], axis=-1)
    means = sums / np.maximum(counts, 1)[:, None]
    means = np.where((counts >= 8)[:, None], means, 0.0)
    means = means - ndimage.gaussian_filter1d(means, 8.0, axis=0)
    return float((counts[:, None] * means**2).sum())


def _stripes(image, area, turn, pixel):
    """What the stripes across a direction add to an image, (h, w, k)."""
    h, w = area.shape
    down, right = np.mgrid[:h, :w]
    at = _across(down, right, turn, pixel)
    at = at - at.min()
    most = at.max() + 1
    counts = np.bincount(at[area], minlength=most)
    known = counts >= 8
    means = (
        np.stack(
            [np.bincount(at[area], image[..., k][area], minlength=most) for k in range(image.shape[-1])],
            axis=-1,
        )
        / np.maximum(counts, 1)[:, None]
    )
    weight = ndimage.gaussian_filter1d(known.astype(float), 8.0)[:, None]
    means = np.where(known[:, None], means, 0.0)
    broad = ndimage.gaussian_filter1d(means, 8.0, axis=0) / np.maximum(weight, 1e-3)
    pattern = np.where(known[:, None], means - broad, 0.0).astype(np.float32)
    return pattern[at]
