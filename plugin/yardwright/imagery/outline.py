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
from .areas import colours, how_likely, searched
from .colours import lab, light
from .edges import best_path, length, outward, sample, signed_area, smoothed, spaced
from .regions import drawn, seen_at, sides, without_stripes
from .slopes import evenly_lit, placed, settled

_STANDS_OUT = 2.8
"""The contrast across a margin in that of like lines within it, below which it is taken for chance: outlines
in mere grain come to 2.75 at most, margins on aerial images to 3.1 at least (measured, tests/imagery)."""
_LEAST_SHARPNESS = 0.35
_PROPOSED = 4
"""So many unlike areas, and of their rough margins so many, are followed up for a margin on slopes."""
_WELL_EXPLAINED = 0.7
"""With a worth below this a margin on slopes is sought from beside the click too."""
_EXPLAINED = 0.55
"""The worth below which a margin on slopes is not believed in: those in mere grain and on flat turf come to
0.53 at most, those of tees on slopes to 0.57 to 0.83, but a part of one has come to 0.58 (measured on aerial
images and on the sample course)."""
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
    raised: bool = False


SOUGHT = {
    "green": Sought(110, 60, 500, 3000, 3.0, 2.5, 0.8, 0.6, 2.0, 1.15, mown=True, wide=4.0),
    "bunker": Sought(90, 4, 100, 4000, 6.0, 10.0, 1.0, 0.3, 0.4, 1.6, shaded=True),
    "tee": Sought(90, 8, 120, 3000, 4.0, 2.5, 0.6, 0.5, 1.0, 1.3, wide=2.0, raised=True),
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
    search, factor, reduced = searched(amounts, seen, (row - top, column - left), sought, gsd_m)
    best = search.best()
    if best is None:
        raise _no_margin()
    place = (point[0] - left, point[1] - top)
    whole = search.with_shade(best, reduced) if sought.shaded else best
    raised = _on_its_slopes(amounts, seen, search, factor, place, gsd_m) if sought.raised else None
    ring = _refined(amounts, whole.ring * factor, sought, gsd_m) if raised is None else raised
    ring = _sound(ring, seen.shape, place)
    if ring is None:
        raise _no_margin()
    told = _told(amounts, seen, ring, sought, gsd_m, shaded=whole is not best, explained=raised is not None)
    return Outline(told.ring + np.array([left, top], dtype=float), told.doubtful, told.sharpness, told.remark)


def _no_margin():
    return YardwrightError(
        say("No margin can be seen round this place."),
        say("Click well inside it, take an image in which it stands out, or draw it by hand."),
    )


# --- its margin ----------------------------------------------------------------------------------------

_FAR = ((2.4, 1.2), (1.4, 0.9), (0.8, 0.7))
_NEAR = ((0.9, 0.8), (0.6, 0.6))
"""Passes of moving a margin: how far, and how wide the colours on its sides are taken; for a blur of 0.4
m."""


def _refined(amounts, ring, sought, pixel):
    """A margin moved to where the colours change most across it."""
    image = ndimage.gaussian_filter(colours(amounts, sought), (0.7, 0.7, 0))
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


def _on_its_slopes(amounts, seen, search, factor, place, pixel):
    """The margin (n, 2) of what is raised on slopes, that of all areas proposed which is best explained.

    None where none is explained well: where the ground is flat, or the margin runs out of the picture. place:
    (column, row) of the click. pixel: metres.
    """
    image = evenly_lit(ndimage.gaussian_filter(lab(amounts), (0.5, 0.5, 0)))
    found = _best_explained(image, search, factor, place, pixel)
    if found.worth < _WELL_EXPLAINED:
        search.look_beside()
        found = _best_explained(image, search, factor, place, pixel)
    whole = _framed(_room(seen), found.ring).mean() <= _FRAMED_TOLD
    return found.ring if found.worth >= _EXPLAINED and whole else None


def _best_explained(image, search, factor, place, pixel):
    """The Margin on slopes that a step of colour fits best."""
    sought = search.sought
    rings = [one.ring * factor for one in search.unlike_ones(_PROPOSED)]
    rings.append(np.asarray(Polygon(search.best().ring * factor).convex_hull.exterior.coords)[:-1])
    rough = [each for ring in rings for each in placed(image, ring, pixel, sought.plain)]
    rough.sort(key=lambda one: -one.fits * _likely(one.ring, sought, pixel))
    ends = [settled(image, one, pixel, sought.plain) for one in rough[:_PROPOSED]]
    holding = [end for end in ends if Polygon(end.ring).buffer(0).contains(Point(place))] or ends
    return max(holding, key=lambda end: end.fits * _likely(end.ring, sought, pixel))


def _likely(ring, sought, pixel):
    return how_likely(max(abs(signed_area(ring)), 1.0) * pixel**2, length(ring) * pixel, sought)


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


def _told(amounts, seen, ring, sought, pixel, shaded, explained):
    """The Outline of a margin that has been found. Raises YardwrightError when it may be mere chance.

    shaded: whether part of it lies in the shade. explained: whether a step of colour explains it as it does
    not explain mere chance.
    """
    image = ndimage.gaussian_filter(colours(amounts, sought), (0.7, 0.7, 0))
    ring = spaced(ring, max(1.0, 0.3 / pixel))
    half_width = max(1.5, 1.5 * sought.blur / pixel)
    room = _room(seen)
    framed = _framed(room, ring)
    contrast = _contrast(image, ring, half_width)
    # What slopes change within a margin is no chance.
    chance = 0.0 if explained else _by_chance(image, ring, half_width, ~framed)
    sharpness = float(seen_at(np.where(framed, 0.0, contrast), sought.plain).mean())
    if sharpness < _LEAST_SHARPNESS or np.median(contrast[~framed]) < _STANDS_OUT * chance:
        raise _no_margin()
    if sought.whole and framed.mean() > _FRAMED_TOLD:
        raise _no_margin()
    if sought.even and _too_rough(image, room, ring, pixel):
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


def _room(seen):
    """How far each pixel lies from what the image does not show, pixels."""
    return ndimage.distance_transform_edt(np.pad(seen, 1))[1:-1, 1:-1]


def _framed(room, ring):
    """Which points of a ring lie where the image ends."""
    return sample(room[..., None], ring)[:, 0] < 2.5


def _too_rough(image, room, ring, pixel):
    """Whether what lies within a margin is no open water.

    room: how far each pixel lies from what the image does not show, pixels.
    """
    area = drawn(ring, image.shape[:2])
    narrow = 2 * area.sum() * pixel < _NARROW_M * length(ring)
    return _roughness(image, room * pixel > 1.0, area, pixel) > (_AS_ROUGH if narrow else _ROUGHER)


def _roughness(image, seen, area, pixel):
    """How much the colours of neighbours within an area differ at their most, in what they do round it."""
    step = np.diff(image, axis=0, prepend=image[:1])
    step = np.sqrt((step * step).sum(axis=-1))
    within = seen & (ndimage.distance_transform_edt(area) * pixel > 1.0)
    away = ndimage.distance_transform_edt(~area) * pixel
    around = seen & (away > 1.0) & (away < 15.0)
    if not within.any() or not around.any():
        return np.inf
    return float(np.quantile(step[within], 0.9) / np.quantile(step[around], 0.9))


def _by_chance(image, ring, half_width, shown):
    """The usual contrast across lines within a margin that run along with it where it is ``shown``."""
    if not shown.any():
        return np.inf
    away = outward(ring, 2)
    lines = [_contrast(image, ring - k * half_width * away, half_width)[shown] for k in (2.5, 3.25, 4.0)]
    return float(np.median(np.concatenate(lines)))


def _contrast(image, ring, half_width):
    inside, outside = sides(image, ring, half_width)
    return np.sqrt(((outside - inside) ** 2).sum(axis=-1))


def _corners_that_count(ring, tolerance):
    """The places in a ring of the points without which it would lie elsewhere by more than a tolerance."""
    simple = np.asarray(Polygon(ring).simplify(tolerance).exterior.coords)[:-1]
    places = {point: place for place, point in enumerate(map(tuple, ring.tolist()))}
    return np.array(sorted(places[point] for point in map(tuple, simple.tolist())))
