"""Areas round a click proposed for what lies there, and what each is worth.

Where the colour stays like the colour there, what no plain edge parts from it, and what looks like the best
of these and unlike the ground round it.
"""

import numpy as np
from scipy import ndimage

from .colours import lab
from .edges import length
from .regions import (
    at_levels,
    evened,
    grain,
    judged,
    shares,
    unlike,
    unlike_in_shade,
    without_stripes,
)

_COARSE = 280
"""Pixels along the longer side of the picture in which areas are sought."""
_PLAIN_ENOUGH = 0.75
"""With a worth of so much, sand is not looked for from beside the click."""
_SAME = 0.75
"""Areas that share so much of what either covers are nearly the same."""


def colours(amounts, sought):
    """Light (h, w, 3) in CIE L*a*b*, its lightness counted as much as what is sought asks for."""
    return lab(amounts) * np.array([sought.brightness, 1.0, 1.0], dtype=np.float32)


def searched(amounts, seen, click, sought, gsd_m):
    """``(Search, factor, light)`` round a click: areas proposed in a picture smaller by a factor, its light.

    amounts: light, (h, w, 3). seen: (h, w) of bool. click: row and column. sought: a ``Sought``.
    """
    factor = -(-max(seen.shape) // _COARSE)
    amounts = _reduced(amounts, factor)
    seen = _reduced(seen[..., None].astype(np.float32), factor)[..., 0] > 0.5
    click = tuple(min(at // factor, size - 1) for at, size in zip(click, seen.shape))
    search = Search(colours(amounts, sought), seen, click, sought, gsd_m * factor)
    search.look_from(click)
    if sought.shaded and search.worth() < _PLAIN_ENOUGH:
        search.look_beside()
    for _ in range(2):
        search.look_closer()
    return search, factor, amounts


def _reduced(image, factor):
    """The image (h, w, k) with squares of ``factor`` pixels drawn together."""
    if factor == 1:
        return image
    h, w, k = image.shape
    padded = np.pad(image, ((0, -h % factor), (0, -w % factor), (0, 0)), mode="edge")
    squares = padded.reshape(padded.shape[0] // factor, factor, padded.shape[1] // factor, factor, k)
    return squares.mean(axis=(1, 3))


class Search:
    """Areas found round a click so far and what each is worth: ``found``, a list of (worth, Candidate).

    image: (h, w, 3) colours. seen: (h, w) of bool. click: row and column. pixel: metres.
    """

    def __init__(self, image, seen, click, sought, pixel):
        blurred = ndimage.gaussian_filter(image, (0.8, 0.8, 0))
        self.image = evened(blurred, 20, 3 * grain(blurred))
        self.seen, self.click, self.sought, self.pixel = seen, click, sought, pixel
        self.found = []

    def look_from(self, place):
        """Propose areas that hold the click, by the colour at a place and by the edges round the click."""
        spot = self._spot(place)
        usual = np.median(self.image[spot], axis=0)
        costs = [np.sqrt(((self.image - usual) ** 2).sum(axis=-1))]
        if place == self.click:
            blur = max(1.0, 0.5 * self.sought.blur / self.pixel)
            steps = [ndimage.gaussian_gradient_magnitude(self.image[..., k], blur) for k in range(3)]
            costs.append(np.sqrt(sum(step * step for step in steps)))
        for cost in costs:
            cost[~self.seen] = np.inf
            cost[spot] = 0.0
            self._propose(cost, shares(cost, self.sought.least / self.pixel**2))

    def look_beside(self):
        """Propose areas by the colours next to the click: it may lie in a shaded corner of its thing."""
        away = max(2.0, 4.0 * self.sought.blur / self.pixel)
        h, w = self.seen.shape
        for turn in np.arange(6) * np.pi / 3:
            row = int(round(self.click[0] + away * np.sin(turn)))
            column = int(round(self.click[1] + away * np.cos(turn)))
            if 0 <= row < h and 0 <= column < w and self.seen[row, column]:
                self.look_from((row, column))

    def look_closer(self):
        """Propose areas that look like the best so far and unlike what lies round it."""
        best = self.best()
        if best is None:
            return
        if self.sought.mown:
            self.image = without_stripes(self.image, best.area, self.pixel)
        far = max(4.0 / self.pixel, 0.5 * np.sqrt(best.area.sum() / np.pi))
        cost = unlike(self.image, best.area, self.seen, 0.7 * self.sought.blur / self.pixel, far)
        if cost is not None:
            cost = ndimage.gaussian_filter(cost, self.sought.blur / self.pixel)
            cost[~self.seen] = np.inf
            self._propose(cost, np.linspace(-1.5, 1.5, 9))
        if self.sought.mown:
            self.look_from(self.click)

    def with_shade(self, best, amounts):
        """The Candidate with what of its thing lies in the shade of a tree; ``best`` itself where nothing
        does.

        A shadow's edge is plainer than most margins, so that the lit part alone is set off best. amounts:
        light, (h, w, 3).
        """
        lit_alone, self.found = self.found, []
        cost = ndimage.gaussian_filter(unlike_in_shade(amounts, np.median(amounts[best.area], axis=0)), 0.8)
        cost[best.area] = 0.0
        cost[~self.seen] = np.inf
        self._propose(cost, np.array([0.02, 0.05, 0.1, 0.15, 0.2, 0.3, 0.4]))
        worth, whole = max(self.found, key=lambda one: one[0], default=(0.0, best))
        self.found = lit_alone
        more = whole.area.sum() / best.area.sum()
        bends = [length(one.ring) / np.sqrt(one.area.sum()) for one in (whole, best)]
        if worth > 0.6 * self.worth() and 1.08 < more < 4.0 and bends[0] < 1.1 * bends[1]:
            return whole
        return best

    def worth(self):
        """What the best is worth, 0 to 1."""
        return max((worth for worth, _ in self.found), default=0.0)

    def best(self):
        """The Candidate worth most, None of none; a much smaller one instead that is worth nearly as much.

        Two bunkers side by side are set off as well as one of them.
        """
        if not self.found:
            return None
        worth, best = max(self.found, key=lambda one: one[0])
        smaller = [
            (value, one)
            for value, one in self.found
            if value >= 0.95 * worth and one.area.sum() < 0.7 * best.area.sum()
        ]
        return max(smaller, key=lambda one: one[0])[1] if smaller else best

    def unlike_ones(self, count):
        """The Candidates worth most of which no two are nearly the same, ``count`` at most."""
        kept = []
        for _, one in sorted(self.found, key=lambda found: -found[0]):
            if all(_shared(one.area, other.area) < _SAME for other in kept):
                kept.append(one)
        return kept[:count]

    def _spot(self, place):
        h, w = self.seen.shape
        down, right = np.ogrid[:h, :w]
        radius = max(1.5, 1.2 * self.sought.blur / self.pixel)
        return ((down - place[0]) ** 2 + (right - place[1]) ** 2 <= radius**2) & self.seen

    def _propose(self, cost, levels):
        sought, pixel = self.sought, self.pixel
        cost[self.click] = cost.min()
        least, most = sought.least / pixel**2, sought.most / pixel**2
        half_width = max(1.5, 1.5 * sought.blur / pixel)
        collar = 3.0 / pixel if sought.wide else None
        for area in at_levels(cost, levels, self.click, least, most, max(1.0, sought.thin / pixel)):
            one = judged(area, self.image, half_width, sought.plain, collar)
            likely = how_likely(area.sum() * pixel**2, length(one.ring) * pixel, sought)
            self.found.append((one.score * likely, one))


def how_likely(size, around, sought):
    """How likely a thing of the kind is as large (m2) and as bent (m of margin), 1 for the usual."""
    away = np.log(size / sought.usual) / np.log(sought.spread)
    bends = around / np.sqrt(4 * np.pi * size) / sought.bends
    return float(np.exp(-0.3 * away * away - max(0.0, bends - 1.0)))


def _shared(one, other):
    """Intersection over union of two areas (h, w) of bool."""
    return (one & other).sum() / (one | other).sum()
