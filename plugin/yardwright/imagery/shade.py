"""Where a date lies in shade: darker than other dates show the same ground, or darker and bluer than it lies
about, and on the side of standing things that the sun does not see.

Brightness is the logarithm of the mean of red, green and blue. Planes are (h, w) float32.
"""

import math
from dataclasses import dataclass

import numpy as np
from scipy.ndimage import gaussian_filter, label

from .patches import finer, grown, holding, mean_about, opened

OFFSET = 8.0
TALLEST_M = 25.0
USUAL = 0.25
_LOWEST, _HIGHEST, _LEAST_FALL, _LEAST_SHARE = 0.22, 0.3, 10.0, 0.001
_LOWEST_IN_REACH = 0.16
_FEW = 200
_LEAST_M2 = 1.5
_OF_THIN = (0.7, 1.5)  # the shade of a crown without leaves is hardly bluer
_THIN, _WEAKER, _PENUMBRA, _CORE_SHARE = 0.7, 0.6, 0.45, 0.25
_REACH_MOST_M = 60.0
_SAND, _BUNKER_M, _LIP_M = 0.35, 4.0, 2.0
_REACHED, _MOSTLY = 0.2, 0.5  # shares of a part
_BROAD_SHADOW_M = 3.0  # a car's is narrower


@dataclass(frozen=True)
class Turf:
    """How lit turf looks on a date: its brightness and its blueness. threshold: what is more like shade than
    that is shade, None where the date shows no clear shade of its own. sand: brightness and blueness of lit
    sand, None where there is none."""

    bright: float
    blue: float
    threshold: float = None
    sand: tuple = None


def brightness(picture):
    """(h, w, 3 or more) 0 to 255 -> (h, w) float32, the logarithm."""
    total = picture[..., 0].astype(np.float32)
    total += picture[..., 1]
    total += picture[..., 2]
    total *= 1 / 3
    total += OFFSET
    return np.log(total, out=total)


def blueness(picture):
    """The logarithm of blue over green, (h, w) float32."""
    blue = picture[..., 2] + np.float32(OFFSET)
    blue /= picture[..., 1] + np.float32(OFFSET)
    return np.log(blue, out=blue)


def redness(picture):
    """The logarithm of red over green, (h, w) float32."""
    red = picture[..., 0] + np.float32(OFFSET)
    red /= picture[..., 1] + np.float32(OFFSET)
    return np.log(red, out=red)


# Thresholds from the whole


def learn_turf(picture, clear, bare):
    """The Turf of a coarse picture. clear: (h, w) bool, where it shows anything. bare: where neither crowns
    nor water are known to be."""
    bright, blue = brightness(picture), blueness(picture)
    usable = clear & bare
    if usable.sum() < _FEW:
        usable = clear
    if not usable.any():
        return Turf(math.log(120 + OFFSET), -0.5)
    green = usable & (blue < 0.0) & (picture[..., 1] >= picture[..., 0])
    if green.sum() < max(_FEW, 0.05 * usable.sum()):
        green = usable
    level = _commonest(bright[green])
    about = green & (np.abs(bright - level) < 0.25)
    turf_blue = float(np.median(blue[about]))
    sand = usable & (bright > level + _SAND) & (blue < 0) & (picture[..., 0] >= picture[..., 1])
    if sand.sum() < 10:
        return Turf(level, turf_blue)
    return Turf(level, turf_blue, sand=(float(np.median(bright[sand])), float(np.median(blue[sand]))))


def _commonest(values):
    """The commonest of the brighter half of values."""
    values = values[values >= np.median(values)]
    counts, edges = np.histogram(values, 60)
    smooth = gaussian_filter(counts.astype(float), 2.0)
    k = int(np.argmax(smooth))
    return float((edges[k] + edges[k + 1]) / 2)


def threshold_of(like, sun_known):
    """The threshold between what only happens to look a little like shade, whose share falls off by the same
    factor from step to step, and what is shade; None where there is too little beyond to be a kind of its
    own. like: (n,) of the places that could lie in shade. sun_known: whether thin shade is told by where it
    lies too."""
    if len(like) < _FEW:
        return None
    counts, edges = np.histogram(like, 75, (0.0, 1.5))
    share = counts / len(like)
    middles = (edges[:-1] + edges[1:]) / 2
    # How fast the happenstance falls off, from 0.04-0.10 to 0.10-0.16.
    near, far = share[2:5].sum(), share[5:8].sum()
    fall = max(math.log(near / far) / 0.06, _LEAST_FALL) if near > far > 0 else _LEAST_FALL
    expected = share[2] * np.exp(-fall * (middles - middles[2]))
    smooth = gaussian_filter(share, 1.0)
    apart = np.flatnonzero(
        (middles >= (_LOWEST_IN_REACH if sun_known else _LOWEST)) & (smooth > 2.5 * expected)
    )
    if not len(apart):
        return None
    first = apart[0]
    beyond = share[first:].sum()
    if beyond < _LEAST_SHARE or beyond < 3 * expected[first:].sum():
        return None
    return float(min(middles[first], _HIGHEST))


# The masks


def by_comparison(bright, bluer, seen, reaches):
    """How much each date looks like shade beside the brightest of the dates that show the place: ``(likes,
    thin, which)``. likes: [(h, w) float32, ...], 0 where no other date shows it. thin: the same where thin
    shade counts too, in reach of what stands. which: (h, w), the date that is the brightest.

    bright: [(h, w), ...] in the colours of one date. bluer: how much bluer the date is there than its lit
    turf. seen: [(h, w) bool, ...]. reaches: of each date, see ``in_reach``.
    """
    stack = [np.where(s, b, -np.inf) for b, s in zip(bright, seen)]
    top, tint = stack[0].copy(), bluer[0].copy()
    which = np.zeros(top.shape, np.uint8)
    for k, (plane, blue) in enumerate(zip(stack[1:], bluer[1:]), start=1):
        higher = plane > top
        which[higher] = k
        np.copyto(top, plane, where=higher)
        np.copyto(tint, blue, where=higher)
    likes, thin = [], []
    for b, blue, s, reach in zip(bright, bluer, seen, reaches):
        darker, lift = top - b, blue - tint
        likes.append(likeness(darker, lift) * s)
        if reach is None:
            thin.append(likes[-1])
        else:
            weak = likeness(darker, lift, *_OF_THIN)
            thin.append(np.where(s & reach, np.maximum(likes[-1], weak), likes[-1]))
    return likes, thin, which


def likeness(darker, bluer, least=0.3, rise=3.5):
    """How much like shade: how much darker, and that the more the bluer too; what is not bluer may be another
    crop or wet ground. least, rise: the weight of what is no bluer, and how that rises."""
    weight = np.clip(least + rise * bluer, 0.1, 1.25)
    weight *= np.clip(darker, 0, None)
    return weight


def by_itself(bright, blue, turf, gsd, seen, sandy=None):
    """How much like shade each place looks beside the lit ground about it, 0 where it is no bluer.

    seen: (h, w) bool, where the date shows the ground, and no dark things that are not shade. sandy: where
    bunkers may be, None for anywhere beside lit sand.
    """
    lit = seen & (bright > turf.bright - 0.3) & (bright < turf.bright + _SAND)
    about = _smooth_where(bright, lit, max(1, round(4.0 / gsd)), 3.0, turf.bright)
    lift = blue - turf.blue
    like = likeness(about - bright, lift)
    like[~((lift > 0.03) & (lift < 0.75) & seen)] = 0
    if turf.sand is not None:
        np.maximum(like, _on_sand(bright, blue, turf.sand, gsd, seen, sandy), out=like)
    return like


def _on_sand(bright, blue, sand, gsd, seen, sandy):
    """How much like shaded sand each place beside lit sand looks. The margin of a bunker is a mixture of sand
    and turf and no bluer than sand."""
    level, tint = sand
    lit = seen & _lit_sand(bright, blue, sand)
    beside = grown(opened(lit, 1), max(1, round(_BUNKER_M / gsd))) & seen
    beside &= (blue > tint + 0.06) & (bright < level - 0.25)
    if sandy is not None:
        beside &= sandy
    return np.where(beside, likeness(level - bright, blue - tint), 0)


def lips(bright, blue, turf, gsd, sandy=None):
    """The margins of lit sand, (h, w) bool: slopes that each date's sun lights otherwise. sandy: as for
    ``by_itself``."""
    if turf.sand is None:
        return np.zeros(bright.shape, bool)
    lit = opened(_lit_sand(bright, blue, turf.sand), 1)
    if sandy is not None:
        lit &= sandy
    return grown(lit, max(1, round(_LIP_M / gsd)))


def _lit_sand(bright, blue, sand):
    level, tint = sand
    return (bright > level - 0.2) & (np.abs(blue - tint) < 0.15)


def _smooth_where(plane, where, step, sigma, otherwise):
    """The mean of a plane where told, in squares of ``step`` pixels, smoothed over ``sigma`` squares."""
    h, w = plane.shape
    rows, columns = np.arange(0, h, step), np.arange(0, w, step)
    counts = np.add.reduceat(np.add.reduceat(where.astype(np.float32), rows, 0), columns, 1)
    sums = np.add.reduceat(np.add.reduceat(np.where(where, plane, 0), rows, 0), columns, 1)
    counts, sums = gaussian_filter(counts, sigma), gaussian_filter(sums, sigma)
    faith = 0.02 * step * step
    return finer((sums + faith * otherwise) / (counts + faith), step, plane.shape)


def outlined(like, thin, threshold, gsd, more_likely):
    """The mask of shade from how much like it each place looks: seeds well over the threshold, grown out into
    the penumbra.

    like, thin: (h, w), see ``by_comparison``. Thin shade has to be broad: a margin that lies a little
    elsewhere on one of the dates is as dark. more_likely: (h, w) bool, the ground that standing things can
    throw their shadow on, or None.
    """
    fine = gsd < 0.8
    soft, softer = (mean_about(like, 3), mean_about(thin, 3)) if fine else (like, thin)

    def broad_over(part):
        return (soft > part * threshold) | opened(softer > part * threshold, 2 if fine else 1)

    core = soft > threshold
    if fine:
        core = opened(core, 1)
    if more_likely is not None:
        core |= opened(softer > _THIN * threshold, 2 if fine else 1)
        core = _with_weaker(core & (more_likely | (soft > 1.25 * threshold)), core)
    core = _with_weaker(core, broad_over(_WEAKER))
    least = max(3, int(_LEAST_M2 / gsd**2))
    core = holding(core, core, least)
    edge = (like > _PENUMBRA * threshold) | broad_over(_PENUMBRA)
    reach = max(1, round(1.2 / gsd))
    return core | (grown(core, reach) & edge)


def _with_weaker(core, weaker):
    """The parts of a weaker mask of which a good share is core: a shadow that hovers about the threshold."""
    return core | _Parts(weaker | core).with_more_than(_CORE_SHARE, core)


def thrown(masks, reaches, nowhere_lit, gsd):
    """What of the dates' masks of shade something may throw, [(h, w) bool, ...].

    A part dark on every date, in reach of nothing that stands, is none: dark turf is so, and a shadow that
    nothing throws would be lit under another sun. What throws a part at the picture's border may stand beyond
    it. Most of a short shadow is dark on every date too: where it lies within a broad one that another sun
    makes the same thing throw, as a house, it stays. Of a narrow one out of reach only what another date
    shows in the sun stays: the rest is the thing itself, a dark car.

    masks: [(h, w) bool, ...]. reaches: of each date, see ``in_reach``. nowhere_lit: (h, w) bool, where no
    date shows lit ground. gsd: metres a pixel.
    """
    parts = [_Parts(mask) for mask in masks]
    width = max(1, round(_BROAD_SHADOW_M / 2 / gsd))
    broad = np.logical_or.reduce(
        [one.with_more_than(0, opened(one.mask & ~nowhere_lit, width)) for one in parts]
    )
    return [
        mask if reach is None else one.thrown(reach, nowhere_lit, broad)
        for mask, one, reach in zip(masks, parts, reaches)
    ]


class _Parts:
    """The parts of a mask that hang together."""

    def __init__(self, mask):
        self.mask = mask
        self.named, self.many = label(mask, np.ones((3, 3), bool))
        self.size = np.bincount(self.named.ravel(), minlength=self.many + 1)

    def share(self, of):
        """Of each part the share that lies in another mask; the first is what lies in none."""
        return np.bincount(self.named[self.mask & of], minlength=self.many + 1) / np.maximum(self.size, 1)

    def with_more_than(self, share, of):
        """(h, w) bool, the parts of which more lies in another mask."""
        return self.mask & (self.share(of) > share).take(self.named)

    def thrown(self, reach, nowhere_lit, broad):
        kept = (self.share(reach) > _REACHED) | (self.share(broad) > _MOSTLY)
        for border in (self.named[0], self.named[-1], self.named[:, 0], self.named[:, -1]):
            kept[border] = True
        shown = self.share(nowhere_lit) < _MOSTLY
        return self.mask & (kept.take(self.named) | (shown.take(self.named) & ~nowhere_lit))


def in_reach(standing, sun, gsd):
    """Where standing things may throw shadows: (h, w) bool, themselves included; None without a sun."""
    if sun is None:
        return None
    length = min(TALLEST_M / math.tan(math.radians(max(sun.elevation, 3.0))), _REACH_MOST_M) / gsd
    away = math.radians(sun.azimuth + 180)
    right, down = math.sin(away), -math.cos(away)
    made = grown(standing, max(1, round(1.5 / gsd)))
    done = 0.0
    step = 1.0
    while done < length:
        step = min(step, length - done)
        made = made | _moved(made, int(round(down * step)), int(round(right * step)))
        done += step
        step = max(done, 1.0)
    return made


def _moved(mask, down, right):
    made = np.zeros_like(mask)
    h, w = mask.shape
    if abs(down) >= h or abs(right) >= w:
        return made
    made[max(down, 0) : h + min(down, 0), max(right, 0) : w + min(right, 0)] = mask[
        max(-down, 0) : h + min(-down, 0), max(-right, 0) : w + min(-right, 0)
    ]
    return made
