"""The margin of a tee on its slopes: the sun lights those that face it and leaves the others darker.

That light changes more than the turf does, and it begins within the margin on one side and ends without it on
the other: by the colours alone the margin would lie too far towards the sun. But one sun shines all round, so
what it adds goes with the way a slope faces. Several such lights are tried; under the right one the colours,
less that light, are those of the tee up to one line and others at once beyond it.
"""

from dataclasses import dataclass
from itertools import product

import numpy as np
from scipy import ndimage
from scipy.special import erf

from .edges import best_paths, outward, sample, smoothed, spaced
from .regions import drawn

_STEP_M = 0.125
_HALF_M = 1.8
"""How far on either side of a margin the colours must agree; slopes of tees are about as wide."""
_RESIDUE = 30.0
"""What is not explained, a mean square over both sides, counts so much more than the square of the step: a
tenth of the step left over costs a quarter of the worth. So does the square of how far the colour within lies
from the tee's."""
_STIFFNESS = 0.02
_LONGEST = 2
"""What a margin's move from place to place costs, and how many steps of _STEP_M it may move."""
_CORE_M = 1.2
"""So far within its margin a tee is flat, and not lit as a slope."""


@dataclass(frozen=True)
class SlopeLight:
    """What the sun adds to the lightness of slopes. towards: (x, y) in the picture, as long as what it adds
    to a slope that faces it, in L. middle, width: metres, where it is strongest outside the margin, and the
    width of the bell over which it fades."""

    towards: tuple
    middle: float = 0.0
    width: float = 1.0

    def scaled(self, factor):
        return SlopeLight(tuple(factor * at for at in self.towards), self.middle, self.width)

    def turned(self, angle):
        x, y = self.towards
        cos, sin = np.cos(angle), np.sin(angle)
        return SlopeLight((cos * x - sin * y, sin * x + cos * y), self.middle, self.width)


_AT_FIRST = ((SlopeLight((0.0, 0.0)),),) + tuple(
    tuple(
        SlopeLight((strength * np.cos(turn), strength * np.sin(turn)), middle)
        for middle, turn in product((0.0, 0.7), np.arange(12) * np.pi / 6)
    )
    for strength in (5.0, 10.0, 15.0)
)
"""No slopes, and gentle to steep ones, at the margin and beyond it, with every side the sun may stand on."""
_FORMS = tuple(product((0.0, 0.4, 0.8), (0.6, 0.9, 1.3)))
_PASSES = ((1.5, 1.2), (1.0, 1.0), (1.0, 1.0), (0.8, 1.0), (0.8, 1.0), (0.6, 1.0))
"""How far a margin is moved either way, and over what length of it the colours are taken together, metres."""


def _neighbours(lamp):
    """Lights like one, and itself: other forms, strengths and directions."""
    forms = [SlopeLight(lamp.towards, *form) for form in _FORMS]
    strengths = [lamp.scaled(factor) for factor in (0.6, 0.8, 1.25, 1.6)]
    turns = [lamp.turned(angle) for angle in (-0.5, -0.2, 0.2, 0.5)]
    return [lamp, *forms, *strengths, *turns]


def evenly_lit(colours):
    """Colours (h, w, 3) in CIE L*a*b* with a and b as they would be were all as light as what is usual.

    Light that differs changes L + 16, a and b by one factor.
    """
    lightness = colours[..., :1]
    return np.concatenate(
        [lightness, colours[..., 1:] * (np.median(lightness) + 16) / (lightness + 16)], axis=-1
    )


@dataclass(frozen=True)
class Margin:
    """ring: (n, 2) pixels. light: the SlopeLight on its slopes. fits: 0 to 1, how well a step of colour fits
    along it, in comparison with other rings in the picture. worth: 0 to 1, how far to believe that it is one;
    both are below 0 where the colours step the other way on most of it."""

    ring: object
    light: SlopeLight
    fits: float
    worth: float


def placed(image, ring, pixel, plain):
    """The Margins on slopes of each steepness: a rough ring moved to near where it lies.

    image: (h, w, 3) colours, evenly lit. ring: (n, 2) pixels. pixel: metres. plain: the step in colour that
    counts half.
    """
    return [_moved(image, ring, pixel, plain, (-2.0, 3.0), 1.5, lamps) for lamps in _AT_FIRST]


def settled(image, margin, pixel, plain):
    """The Margin that one which was ``placed`` comes to rest at; as for that."""
    for reach, along in _PASSES:
        lamps = _neighbours(margin.light)
        margin = _moved(image, margin.ring, pixel, plain, (-reach, reach), along, lamps)
    return margin


def _moved(image, ring, pixel, plain, reach, along, lamps):
    """The Margin under the one of the lights that fits best."""
    step = max(1.2, 0.4 / pixel)
    ring = smoothed(spaced(ring, step), 1.0 / pixel / step)
    away = outward(ring, 3)
    offsets = np.arange(reach[0], reach[1] + _STEP_M / 2, _STEP_M)
    across = np.arange(reach[0] - _HALF_M, reach[1] + _HALF_M + _STEP_M / 2, _STEP_M)
    profile = sample(image, ring[:, None, :] + across[None, :, None] / pixel * away[:, None, :])
    profile = ndimage.gaussian_filter1d(profile, along / pixel / step, axis=0, mode="wrap")
    steps = _Steps(profile, pixel, _core(image, ring, pixel))
    paths, fits, worths = steps.best(away, lamps, plain)
    best = int(fits.argmax())
    moves = ndimage.gaussian_filter1d(offsets[paths[best]], 1.0, mode="wrap")
    moved = smoothed(ring + (moves / pixel)[:, None] * away, 1.0 / pixel / step)
    return Margin(moved, lamps[best], float(fits[best]), float(worths[best]))


def _core(image, ring, pixel):
    """The usual colour (3,) well within a margin."""
    depth = ndimage.distance_transform_edt(drawn(ring, image.shape[:2])) * pixel
    deep = depth >= min(_CORE_M, 0.5 * depth.max())
    return np.median(image[deep & (depth > 0)], axis=0) if depth.any() else image.mean(axis=(0, 1))


class _Steps:
    """How well a step of colour explains a profile (n, m, 3) across a margin, at every place and offset."""

    def __init__(self, profile, pixel, core):
        self.core = core
        self.at = np.arange(-_HALF_M, _HALF_M + _STEP_M / 2, _STEP_M)
        inner = 0.5 * (1 - erf(self.at / np.hypot(0.2, 0.8 * pixel) / np.sqrt(2)))
        self.sides = np.stack([inner, 1 - inner], axis=1)
        self.weight = np.exp(-0.5 * (self.at / (0.6 * _HALF_M)) ** 2)
        self.weight /= self.weight.sum()
        weighted = self.sides * self.weight[:, None]
        self.solved = np.linalg.solve(weighted.T @ self.sides, weighted.T)
        self.windows = np.lib.stride_tricks.sliding_window_view(profile, len(self.at), axis=1)
        self.fitted = self.windows @ self.solved.T
        rest = self.windows - self.fitted @ self.sides.T
        self.residue = (rest * rest) @ self.weight
        self.usual = np.quantile(self.residue.sum(axis=-1), 0.25) + 1e-3

    def best(self, away, lamps, plain):
        """``(paths, fits, worths)``: under each of k lights the best offsets (k, n), how well they fit and
        what they are worth (k,).

        away: (n, 2) outwards. How well a path fits tells it from others here: what is left unexplained counts
        in that which turf leaves anyhow. What it is worth tells a margin from none: what is left counts in
        the step, so that steps in coarse grain, which leave much, are worth little.
        """
        inside, outside, residue = self._under(away, lamps)
        step = outside - inside
        strange = inside - self.core
        left = residue + (strange * strange).sum(axis=-1) / _RESIDUE
        whole = (step * step).sum(axis=-1) + plain**2
        clear = self.usual / (self.usual + left) / whole
        toward = np.sqrt((step * step).sum(axis=-1))
        # First any step, then those alone that change the colours as most of the margin does: one side of
        # a slope is as plain a step as the margin, but on the tee's two sides it goes opposite ways.
        for _ in range(3):
            paths = best_paths(toward * np.abs(toward) * clear, _LONGEST, _STIFFNESS)
            common = _along(step, paths).mean(axis=1)
            common /= np.linalg.norm(common, axis=-1, keepdims=True) + 1e-9
            toward = (step * common[:, None, None, :]).sum(axis=-1)
        signed = toward * np.abs(toward)
        fits = _along(signed * clear, paths).mean(axis=1)
        return paths, fits, _along(signed / (whole + _RESIDUE * left), paths).mean(axis=1)

    def _under(self, away, lamps):
        """Colours within and without, each (k, n, q, 3), and what they leave unexplained, (k, n, q)."""
        bells = np.stack([np.exp(-0.5 * ((self.at - one.middle) / one.width) ** 2) for one in lamps])
        added = np.stack([away @ np.array(one.towards) for one in lamps])[:, :, None]
        shares = bells @ self.solved.T
        rest = bells - shares @ self.sides.T
        alike = np.moveaxis(self.windows[:, :, 0] @ (rest * self.weight).T, -1, 0)
        own = ((rest * rest) @ self.weight)[:, None, None]
        residue = self.residue.sum(axis=-1) - 2 * added * alike + added * added * own
        count = (len(lamps), 1, 1, 1)
        inside, outside = np.tile(self.fitted[..., 0], count), np.tile(self.fitted[..., 1], count)
        inside[..., 0] -= added * shares[:, None, None, 0]
        outside[..., 0] -= added * shares[:, None, None, 1]
        return inside, outside, residue


def _along(values, paths):
    """Of values (k, n, q) or (k, n, q, c) those at the offsets of paths (k, n): (k, n) or (k, n, c)."""
    count, n = paths.shape
    return values[np.arange(count)[:, None], np.arange(n)[None, :], paths]
