"""The outline of a green, a bunker, a tee, a pond or a fairway from one place inside it.

First areas round the place are proposed: where the colour stays like the colour there, what no plain edge
parts from it, and what looks like the best of these and unlike the ground round it. The one that is best
set off all round wins. Then its margin is moved, between the pixels, to where the colours change most.
"""

from dataclasses import dataclass

import numpy as np
from scipy import ndimage
from shapely.geometry import Point, Polygon, box

from ..model.errors import YardwrightError
from ..model.words import say
from .colours import lab, light
from .edges import best_path, length, outward, sample, smoothed, spaced
from .regions import (
    at_levels,
    drawn,
    evened,
    grain,
    judged,
    seen_at,
    shares,
    sides,
    unlike,
    unlike_in_shade,
    without_stripes,
)

_COARSE = 280
"""Pixels along the longer side of the picture in which areas are sought."""
_PLAIN_ENOUGH = 0.75
"""With a worth of so much, sand is not looked for from beside the click."""
_STANDS_OUT = 2.8
"""The contrast across a margin in that of like lines within it, below which it is taken for chance: outlines
in mere grain come to 2.75 at most, margins on aerial images to 3.1 at least (measured, tests/imagery)."""
_LEAST_SHARPNESS = 0.35
_ROUGHER, _AS_ROUGH, _NARROW_M = 1.3, 0.55, 8.0
"""How rough water may be in the roughness of what lies round it, wide and narrow, and how wide narrow is.
Ponds come to 0.42 at most, brooks to 0.63 and more, woods taken for water to 1.48 and more (measured on the
sample course's three seasons)."""
_DOUBT_TOLD = 0.08
_FRAMED_TOLD = 0.01
"""The shares of a margin that may be guessed, or lie on the frame of the picture, without a word."""


@dataclass(frozen=True)
class Sought:
    """What is sought of a kind; metres and square metres, common practice, no source.

    window: side of the ground to look at. least, usual, most: area. spread: how far areas are from the
    usual one, as a factor. plain: the contrast with what lies round it that counts half. brightness: how
    much light and dark count beside colour: the slopes of turf are lit and shaded. blur: width of its
    margin. thin: half the width of what is too thin to belong to it. bends: how long its margin usually
    is, for a circle of the same area 1. mown: whether a mower leaves stripes on it. wide: how far within
    what is set off best its own margin may lie: a green lies within its collar. shaded: whether what of it
    lies in the shade can be told. even: whether it is smoother than what lies round it. whole: whether it
    can be no larger than the ground looked at.
    """

    window: float
    least: float
    usual: float
    most: float
    spread: float
    plain: float
    brightness: float
    blur: float
    thin: float
    bends: float
    mown: bool = False
    wide: float = 0.0
    shaded: bool = False
    even: bool = False
    whole: bool = False


SOUGHT = {
    "green": Sought(110, 60, 500, 3000, 3.0, 2.5, 0.8, 0.6, 2.0, 1.15, mown=True, wide=4.0),
    "bunker": Sought(90, 4, 100, 4000, 6.0, 10.0, 1.0, 0.3, 0.4, 1.6, shaded=True),
    "tee": Sought(90, 8, 120, 3000, 4.0, 2.5, 0.6, 0.5, 1.0, 1.3, wide=2.0),
    "penalty_area": Sought(320, 30, 3000, 60000, 12.0, 6.0, 1.0, 0.5, 1.0, 1.6, even=True),
    "fairway": Sought(420, 200, 8000, 80000, 5.0, 2.5, 0.6, 0.8, 3.0, 1.6, mown=True),
    "apron": Sought(130, 30, 900, 5000, 3.0, 2.5, 0.6, 0.6, 0.5, 1.3, whole=True),
}
"""The kinds that can be outlined. Of a penalty area its water is sought."""


@dataclass(frozen=True)
class Outline:
    """ring: the margin (n, 2), columns and rows in pixels from the outer top-left corner, closed without its
    first point again. doubtful: (n,) of bool, whether the margin is guessed from a point to the next.
    sharpness: 0 to 1, how plainly it is seen all round. remark: what is doubtful of it, "" for nothing."""

    ring: object
    doubtful: object
    sharpness: float
    remark: str = ""


def outline(pixels, point, kind, gsd_m):
    """The Outline of the thing at a point.

    pixels: (h, w, 3 or 4) of uint8, RGB and opacity; what is farther from the point than half the kind's
    window is left out. point: (column, row) in pixels from the outer top-left corner. kind: a key of
    SOUGHT. gsd_m: metres a pixel. Raises YardwrightError when no margin is seen.
    """
    sought = SOUGHT[kind]
    column, row = int(np.floor(point[0])), int(np.floor(point[1]))
    h, w = pixels.shape[:2]
    half = int(np.ceil(sought.window / gsd_m / 2))
    left, top = max(0, column - half), max(0, row - half)
    pixels = pixels[top : max(0, row + half), left : max(0, column + half)]
    seen = pixels[..., 3] > 127 if pixels.shape[2] > 3 else np.ones(pixels.shape[:2], dtype=bool)
    if not (0 <= column < w and 0 <= row < h and seen[row - top, column - left]):
        raise YardwrightError(
            say("The image shows nothing at this place."),
            say("Choose a place that the image covers, or another image."),
        )
    amounts = light(pixels)
    found = _best_area(amounts, seen, (row - top, column - left), sought, gsd_m)
    if found is None:
        raise _no_margin()
    ring, shaded = found
    ring = _sound(_refined(amounts, ring, sought, gsd_m), seen.shape, (point[0] - left, point[1] - top))
    if ring is None:
        raise _no_margin()
    told = _told(amounts, seen, ring, sought, gsd_m, shaded)
    return Outline(told.ring + np.array([left, top], dtype=float), told.doubtful, told.sharpness, told.remark)


def _no_margin():
    return YardwrightError(
        say("No margin can be seen round this place."),
        say("Click well inside it, take an image in which it stands out, or draw it by hand."),
    )


def _colours(amounts, sought):
    return lab(amounts) * np.array([sought.brightness, 1.0, 1.0], dtype=np.float32)


# --- the area ------------------------------------------------------------------------------------------


def _best_area(amounts, seen, click, sought, gsd_m):
    """``(margin, whether part lies in the shade)`` of the area that is best set off; None where none is.

    margin: (n, 2) in the picture's pixels.
    """
    factor = -(-max(seen.shape) // _COARSE)
    amounts = _reduced(amounts, factor)
    seen = _reduced(seen[..., None].astype(np.float32), factor)[..., 0] > 0.5
    click = tuple(min(at // factor, size - 1) for at, size in zip(click, seen.shape))
    search = _Search(_colours(amounts, sought), seen, click, sought, gsd_m * factor)
    search.look_from(click)
    if sought.shaded and search.worth() < _PLAIN_ENOUGH:
        for place in search.beside():
            search.look_from(place)
    for _ in range(2):
        search.look_closer()
    best = search.best()
    if best is None:
        return None
    whole = search.with_shade(best, amounts) if sought.shaded else best
    return whole.ring * factor, whole is not best


def _reduced(image, factor):
    """The image (h, w, k) with squares of ``factor`` pixels drawn together."""
    if factor == 1:
        return image
    h, w, k = image.shape
    padded = np.pad(image, ((0, -h % factor), (0, -w % factor), (0, 0)), mode="edge")
    squares = padded.reshape(padded.shape[0] // factor, factor, padded.shape[1] // factor, factor, k)
    return squares.mean(axis=(1, 3))


class _Search:
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

    def beside(self):
        """Places next to the click: it may lie in a shaded corner of its thing."""
        away = max(2.0, 4.0 * self.sought.blur / self.pixel)
        h, w = self.seen.shape
        for turn in np.arange(6) * np.pi / 3:
            row = int(round(self.click[0] + away * np.sin(turn)))
            column = int(round(self.click[1] + away * np.cos(turn)))
            if 0 <= row < h and 0 <= column < w and self.seen[row, column]:
                yield row, column

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
            self.found.append((one.score * _likely(one, pixel, sought), one))


def _likely(candidate, pixel, sought):
    """How likely a thing of the kind is as large and as bent, 1 for the usual."""
    size = candidate.area.sum()
    away = np.log(size * pixel**2 / sought.usual) / np.log(sought.spread)
    bends = length(candidate.ring) / np.sqrt(4 * np.pi * size) / sought.bends
    return float(np.exp(-0.3 * away * away - max(0.0, bends - 1.0)))


# --- its margin ----------------------------------------------------------------------------------------

_FAR = ((2.4, 1.2), (1.4, 0.9), (0.8, 0.7))
_NEAR = ((0.9, 0.8), (0.6, 0.6))
"""Passes of moving a margin: how far, and how wide the colours on its sides are taken; for a blur of 0.4
m."""


def _refined(amounts, ring, sought, pixel):
    """A margin moved to where the colours change most across it."""
    image = ndimage.gaussian_filter(_colours(amounts, sought), (0.7, 0.7, 0))
    if sought.mown:
        image = without_stripes(image, drawn(ring, image.shape[:2]), pixel)
    if sought.wide:
        for _ in range(2):
            ring = _first_edge(image, ring, sought, pixel)
        ring = _steepest(image, ring, _NEAR, sought, pixel)
        within = _collar(image, ring, sought, pixel)
        if within:
            ring = _steepest(image, ring - within / pixel * outward(ring, 3), _NEAR, sought, pixel)
    else:
        ring = _steepest(image, ring, _FAR, sought, pixel)
    step = max(1.2, 0.4 / pixel)
    return smoothed(spaced(ring, step), 1.5 * sought.blur / pixel / step)


def _steepest(image, ring, passes, sought, pixel):
    """A margin moved to where the colours change most from one side of it to the other."""
    for far, wide in passes:
        reach = max(far * (0.6 + sought.blur) / pixel, 2.5)
        ring = smoothed(spaced(ring, max(1.2, 0.4 / pixel)), 1.5)
        inside, outside = sides(image, ring, max(wide * (0.6 + sought.blur) / pixel, 1.5))
        across = outside - inside
        contrast = np.sqrt((across * across).sum(axis=-1, keepdims=True))
        across = across / np.maximum(contrast, 1e-6)
        offsets = np.arange(-np.ceil(4 * reach), np.ceil(4 * reach) + 1) / 4
        away = outward(ring, 2)
        profile = (_profiles(image, ring, offsets, away) * across[:, None, :]).sum(axis=-1)
        sigma = 4 * max(0.6, 0.35 * sought.blur / pixel)
        rise = ndimage.gaussian_filter1d(profile, sigma, axis=1, order=1) * sigma
        path = best_path(np.maximum(rise, 0.0) / (contrast + sought.plain), 2, 0.01)
        ring = _shifted(ring, offsets[path], away)
    return ring


def _first_edge(image, ring, sought, pixel):
    """A margin moved to the innermost plain edge near it."""
    step = max(1.2, 0.4 / pixel)
    ring = smoothed(spaced(ring, step), 2.0 / pixel / step)
    reach = np.ceil(sought.wide / pixel)
    offsets = np.arange(-reach, reach + 0.1, 0.5)
    away = outward(ring, 3)
    profile = ndimage.gaussian_filter1d(
        _profiles(image, ring, offsets, away), 1.0 / pixel / step, axis=0, mode="wrap"
    )
    span = max(2, int(round(1.6 / pixel)))
    half = span // 2 + 1
    change = np.pad(_changes(profile, span, half), ((0, 0), (half, half)))
    change = np.maximum(change - np.median(change[:, : len(offsets) // 3]), 0.0)
    gain = seen_at(change, sought.plain)
    # Edges farther in than this are others; one of two is the outer margin of a collar.
    apart = int(3.0 / pixel)
    before = np.pad(np.cumsum(gain, axis=1), ((0, 0), (apart, 0)))[:, : len(offsets)] / (2 * half)
    path = best_path(gain * np.exp(-before), 2, 0.02)
    return _shifted(ring, offsets[path], away)


def _collar(image, ring, sought, pixel):
    """How far within a margin, in metres, another one runs along with it; 0 for none.

    That of a green within its collar: at that distance the colours change more, all round, than farther in
    and than just before the outer margin.
    """
    step = max(1.2, 0.4 / pixel)
    ring = smoothed(spaced(ring, step), 1.0 / pixel / step)
    metres = np.arange(-sought.wide - 1.0, 0.3, 0.5 * pixel)
    profile = ndimage.gaussian_filter1d(
        _profiles(image, ring, metres / pixel, outward(ring, 3)), 1.5 / pixel / step, axis=0, mode="wrap"
    )
    span = max(1, int(round(1.0 / pixel)))
    usual = np.median(_changes(profile, span, span), axis=0)
    metres = metres[span:-span]
    plain = max(1.8 * float(np.median(usual[metres < -sought.wide])), 0.6 * sought.plain)
    for at in np.flatnonzero((metres >= -sought.wide) & (metres <= -0.6))[::-1]:
        highest = usual[max(0, at - span) : at + span + 1].max()
        valley = usual[at:][metres[at:] <= 0.0].min()
        if usual[at] == highest and usual[at] > plain and valley < 0.96 * usual[at]:
            return float(-metres[at])
    return 0.0


def _profiles(image, ring, offsets, away):
    """The colours (n, m, k) across a margin, at (m,) pixels outwards from it."""
    return sample(image, ring[:, None, :] + offsets[None, :, None] * away[:, None, :])


def _changes(profile, span, half):
    """How far apart the colours ``half`` places before and after each place are; (n, m - 2 * half)."""
    mean = ndimage.uniform_filter1d(profile, span, axis=1)
    return np.sqrt(((mean[:, 2 * half :] - mean[:, : -2 * half]) ** 2).sum(axis=-1))


def _shifted(ring, moves, away):
    return ring + ndimage.gaussian_filter1d(moves, 1.0, mode="wrap")[:, None] * away


def _sound(ring, shape, point):
    """The margin without loops, kept on the picture (h, w); None where the point does not lie within it."""
    h, w = shape
    area = Polygon(ring).buffer(0).intersection(box(0, 0, w, h))
    parts = [part for part in getattr(area, "geoms", (area,)) if part.geom_type == "Polygon"]
    for part in sorted(parts, key=lambda one: -one.area):
        if part.contains(Point(point)):
            return np.asarray(part.exterior.coords)[:-1]
    return None


def _told(amounts, seen, ring, sought, pixel, shaded):
    """The Outline of a margin that has been found. Raises YardwrightError when it may be mere chance."""
    image = ndimage.gaussian_filter(_colours(amounts, sought), (0.7, 0.7, 0))
    ring = spaced(ring, max(1.0, 0.3 / pixel))
    half_width = max(1.5, 1.5 * sought.blur / pixel)
    room = ndimage.distance_transform_edt(np.pad(seen, 1))[1:-1, 1:-1]
    framed = sample(room[..., None], ring)[:, 0] < 2.5
    contrast = _contrast(image, ring, half_width)
    within = [
        _contrast(image, ring - k * half_width * outward(ring, 2), half_width) for k in (2.5, 3.25, 4.0)
    ]
    chance = (
        float(np.median(np.concatenate([one[~framed] for one in within]))) if not framed.all() else np.inf
    )
    sharpness = float(seen_at(np.where(framed, 0.0, contrast), sought.plain).mean())
    if sharpness < _LEAST_SHARPNESS or np.median(contrast[~framed]) < _STANDS_OUT * chance:
        raise _no_margin()
    if sought.whole and framed.mean() > _FRAMED_TOLD:
        raise _no_margin()
    if sought.even and _too_rough(image, ring, pixel):
        raise YardwrightError(
            say("No even water can be seen round this place."),
            say("Click on open water, or draw it by hand: a brook is not seen whole under crowns."),
        )
    doubtful = framed | (contrast < max(0.6 * sought.plain, 1.6 * chance))
    remarks = []
    if framed.mean() > _FRAMED_TOLD:
        remarks.append(say("It runs on beyond the ground that was looked at."))
    guessed = (doubtful & ~framed).mean()
    if guessed > _DOUBT_TOLD:
        remarks.append(
            say("{share} % of its margin is not plainly seen and is guessed.", share=round(100 * guessed))
        )
    if shaded:
        remarks.append(say("Part of it lies in the shade."))
    kept = _corners_that_count(ring, max(0.03 / pixel, 0.1))
    return Outline(ring[kept], doubtful[kept], sharpness, " ".join(remarks))


def _too_rough(image, ring, pixel):
    """Whether what lies within a margin is no open water."""
    area = drawn(ring, image.shape[:2])
    narrow = 2 * area.sum() * pixel < _NARROW_M * length(ring)
    return _roughness(image, area, pixel) > (_AS_ROUGH if narrow else _ROUGHER)


def _roughness(image, area, pixel):
    """How much the colours of neighbours within an area differ at their most, in what they do round it."""
    step = np.diff(image, axis=0, prepend=image[:1])
    step = np.sqrt((step * step).sum(axis=-1))
    within = ndimage.distance_transform_edt(area) * pixel > 1.0
    away = ndimage.distance_transform_edt(~area) * pixel
    around = (away > 1.0) & (away < 15.0)
    if not within.any() or not around.any():
        return np.inf
    return float(np.quantile(step[within], 0.9) / np.quantile(step[around], 0.9))


def _contrast(image, ring, half_width):
    inside, outside = sides(image, ring, half_width)
    return np.sqrt(((outside - inside) ** 2).sum(axis=-1))


def _corners_that_count(ring, tolerance):
    """The places in a ring of the points without which it would lie elsewhere by more than a tolerance."""
    simple = np.asarray(Polygon(ring).simplify(tolerance).exterior.coords)[:-1]
    places = {point: place for place, point in enumerate(map(tuple, ring.tolist()))}
    return np.array(sorted(places[point] for point in map(tuple, simple.tolist())))
