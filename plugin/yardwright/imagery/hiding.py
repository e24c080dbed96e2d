"""What hides the ground on a date: shade, crowns, clouds; and what moves over it: people, carts, machines."""

from dataclasses import dataclass, replace

import numpy as np

from . import canopy, movers, shade
from .abreast import abreast
from .matching import learn_match
from .patches import coarser, finer, grown, mean_about, planes_of, softened

SHADE, CROWN, CLOUD, MOVER, EMPTY = 1, 2, 4, 8, 16
"""The bits of a mask, (h, w) uint8."""

HALO_M = 60.0
"""How much more than a block to give, on each side, for the block to come out as a part of the whole."""

_FINE_M, _BROAD_M = 0.3, 0.6
_NEAR_M = 20.0
"""How much more than what is asked for movers need about them: a group, and the ground beside it."""
_PALE = 0.3
_WATER, _ON_WATER = 50, 0.7
_BRICK = 0.2


@dataclass(frozen=True)
class Ground:
    """What is drawn, on the grid of the pictures; any may be None. open: tees, greens, aprons, fairways,
    bunkers. woods: trees and crowns. water: (h, w) bool, all of them."""

    open: object = None
    woods: object = None
    water: object = None


NOTHING_DRAWN = Ground()


@dataclass(frozen=True)
class Looks:
    """How the dates look, learnt from the whole of them, so that one block is judged as the next.

    matches: for each date, the Match to the first. turfs: a Turf each. suns: a Sun each, or None. waters: how
    bright drawn water is on each, matched; None where too little is drawn.
    """

    matches: tuple
    turfs: tuple
    suns: tuple
    waters: tuple = None


def learn_looks(pictures, gsd, suns=(), grounds=None):
    """The Looks of dates from coarse pictures of the whole ground.

    pictures: [(h, w, 4) uint8, ...] of one upright grid, the base first. gsd: metres a pixel. suns: a Sun or
    None each, its azimuth counted from the pictures' upward direction. grounds: the Ground there.
    """
    ground = grounds or NOTHING_DRAWN
    bare = np.ones(pictures[0].shape[:2], bool)
    for drawn in (ground.woods, ground.water):
        if drawn is not None:
            bare &= ~drawn
    matches = (None, *abreast(lambda other: learn_match(pictures[0], other, bare), pictures[1:]))
    far = _Broad(pictures, [_in_base_colours(*both) for both in zip(pictures, matches)], gsd, ground)
    turfs = [shade.learn_turf(*both, bare) for both in zip(pictures, far.seen)]
    stands = far.stands(turfs)
    plain = bare & ~stands
    turfs = [shade.learn_turf(*both, plain) for both in zip(pictures, far.seen)]
    known = (*suns, *[None] * (len(pictures) - len(suns)))
    _, thin, _ = far.likeness(turfs, stands, far.clouds(), far.reaches(stands, known))
    thresholds = [shade.threshold_of(one[plain], sun is not None) for one, sun in zip(thin, known)]
    turfs = [replace(turf, threshold=found) for turf, found in zip(turfs, thresholds)]
    return Looks(matches, tuple(turfs), known, far.waters())


def _in_base_colours(picture, match):
    """(h, w, 3) uint8."""
    return picture[..., :3] if match is None else match.rounded(picture)


def hidden(pictures, gsd, looks, ground=None, inner=None):
    """What hides the ground on each date: [(h, w) uint8 of the bits above, ...].

    pictures: [(h, w, 4) uint8, ...] as for ``learn_looks`` but of any part, with a halo of HALO_M. inner:
    (rows, columns), slices of what is asked for; the masks are of that alone. None for all.
    """
    ground = ground or NOTHING_DRAWN
    fine = max(1, int(_FINE_M / gsd + 0.01))
    broad = max(1, int(_BROAD_M / (gsd * fine) + 0.01))
    step = fine * broad
    coarse = [coarser(p, step) for p in pictures]
    matched = [_in_base_colours(*both) for both in zip(coarse, looks.matches)]
    masks, stands = _Broad(coarse, matched, gsd * step, _coarser_ground(ground, step)).masks(looks)
    inner = inner or tuple(slice(0, size) for size in pictures[0].shape[:2])
    # What moves is small: it needs no more than what lies close about.
    part, inside = _close_about(inner, pictures[0].shape, int(np.ceil(_NEAR_M / gsd)), step)
    cells = tuple(slice(one.start // step, -(-one.stop // step)) for one in part)
    near = [coarser(p[part], fine) for p in pictures]
    shape = near[0].shape[:2]
    seen = [p[..., 3] > 127 for p in near]
    soft = [_soft_planes(p) for p in near]
    matched = [_in_base_colours(p.transpose(1, 2, 0), m) for p, m in zip(soft, looks.matches)]
    masks = [finer(mask[cells], broad, shape).copy() for mask in masks]
    barred = finer(grown(stands, 2)[cells], broad, shape)
    if ground.water is not None:
        barred = barred | coarser(ground.water[part], fine)
    moving = _moving(soft, matched, seen, masks, gsd * fine, barred)
    made = []
    for picture, mask, moves in zip(pictures, masks, moving):
        mask[moves] |= MOVER
        mask = finer(mask, fine, pictures[0][part].shape)[inside].copy()
        mask[picture[inner][..., 3] < 128] = EMPTY
        made.append(mask)
    return made


def _close_about(inner, shape, reach, step):
    """``(the part with so many pixels about it, where the part lies in that)``, both (rows, columns) of
    slices; the wider one begins at a multiple of ``step``."""
    part, inside = [], []
    for one, size in zip(inner, shape):
        start = max(one.start - reach, 0) // step * step
        part.append(slice(start, min(one.stop + reach, size)))
        inside.append(slice(one.start - start, one.stop - start))
    return tuple(part), tuple(inside)


def _coarser_ground(ground, factor):
    parts = (ground.open, ground.woods, ground.water)
    return Ground(*(None if part is None else coarser(part, factor) for part in parts))


class _Broad:
    """The dates at about half a metre a pixel: what hides much of them.

    pictures, matched: as taken, and in the colours of the first.
    """

    def __init__(self, pictures, matched, gsd, ground):
        self.pictures, self.matched, self.gsd, self.ground = pictures, matched, gsd, ground
        self.seen = [p[..., 3] > 127 for p in pictures]
        self.bright = [shade.brightness(p) for p in pictures]
        self.blue = [shade.blueness(p) for p in pictures]
        self.rough = [canopy.roughness(b, gsd) for b in self.bright]

    def masks(self, looks):
        """A mask for each date without its movers, and where crowns stand."""
        stands, cloudy = self.stands(looks.turfs), self.clouds()
        reaches = self.reaches(stands, looks.suns)
        likes, thin, nowhere_lit = self.likeness(looks.turfs, stands, cloudy, reaches)
        if looks.waters is not None:
            self._add_shade_on_water(likes, thin, looks.waters, stands, cloudy)
        lips = self.lips(looks.turfs)
        for one in (*likes, *thin):
            one[lips & (one < shade.USUAL)] = 0
        masks = []
        for k, dark in enumerate(self._shades(likes, thin, looks.turfs, reaches, nowhere_lit)):
            mask = np.zeros(stands.shape, np.uint8)
            mask[dark & ~stands] |= SHADE
            mask[canopy.overhanging(self.rough[k], stands, self.ground.open, self.gsd)] |= CROWN
            mask[cloudy[k]] |= CLOUD
            masks.append(mask)
        return masks, stands

    def stands(self, turfs):
        """Where crowns stand, (h, w) bool."""
        pale = np.logical_and.reduce([b > turf.bright + _PALE for b, turf in zip(self.bright, turfs)])
        return canopy.standing(self.rough, pale, self.gsd, self.ground.woods, self.ground.open)

    def reaches(self, stands, suns):
        """Where each date's shadows may fall, [(h, w) bool or None, ...]."""
        return [shade.in_reach(stands, sun, self.gsd) for sun in suns]

    def clouds(self):
        """Where each date shows clouds, [(h, w) bool, ...]."""
        return [
            canopy.clouds(p, r, self.gsd, self.matched[:k] + self.matched[k + 1 :])
            for k, (p, r) in enumerate(zip(self.matched, self.rough))
        ]

    def water(self, turfs, blue):
        """Where water lies, (h, w) bool: as drawn, else what looks like it on every date that shows it."""
        if self.ground.water is not None:
            return self.ground.water
        looks = zip(self.bright, blue, self.rough, turfs, self.seen)
        return np.logical_and.reduce(
            [canopy.water(*planes, self.gsd, turf.bright) | ~seen for *planes, turf, seen in looks]
        )

    def roofs(self):
        """What is red on every date that shows it, as no ground in the light of the sky is, (h, w) bool."""
        return np.logical_and.reduce(
            [(mean_about(shade.redness(p), 3) > _BRICK) | ~s for p, s in zip(self.pictures, self.seen)]
        )

    def lips(self, turfs):
        """The margins of sand, (h, w) bool: slopes that each date's sun lights otherwise, so that only what
        is plainly shade is shade there."""
        looks = zip(self.bright, self.blue, turfs)
        return np.logical_or.reduce([shade.lips(*one, self.gsd, self.ground.open) for one in looks])

    def waters(self):
        """How bright the drawn water is on each date, matched: a tuple, or None for too little of it."""
        water = self.ground.water
        if (
            len(self.pictures) == 1
            or water is None
            or (water & np.logical_and.reduce(self.seen)).sum() < _WATER
        ):
            return None
        return tuple(
            float(np.median(shade.brightness(p)[water & s])) for p, s in zip(self.matched, self.seen)
        )

    def _add_shade_on_water(self, likes, thin, waters, stands, cloudy):
        """Set in ``likes`` and ``thin``, in place, how much each date looks like shade on drawn water: darker
        than another shows it, each beside how bright water is on it. By itself water is too dark and blue to
        tell."""
        seen = [s & ~c & ~stands & self.ground.water for s, c in zip(self.seen, cloudy)]
        levels = [shade.brightness(p) - level for p, level in zip(self.matched, waters)]
        top = np.maximum.reduce([np.where(s, level, -np.inf) for s, level in zip(seen, levels)])
        for like, weak, level, here in zip(likes, thin, levels, seen):
            like[here] = weak[here] = _ON_WATER * (top - level)[here]

    def likeness(self, turfs, stands, cloudy, reaches):
        """How much each date looks like shade, and thin shade too, two [(h, w) float32, ...], and where even
        the brightest of them does, (h, w) bool; None for that where there is but one."""
        blue = [mean_about(one, 3) for one in self.blue]
        barred = stands | self.water(turfs, blue) | self.roofs()
        seen = [s & ~c & ~barred for s, c in zip(self.seen, cloudy)]
        alone = [
            shade.by_itself(*planes, self.gsd, s, self.ground.open)
            for *planes, s in zip(self.bright, blue, turfs, seen)
        ]
        if len(alone) == 1:
            return alone, alone, None
        even = [shade.brightness(p) for p in self.matched]
        bluer = [tint - turf.blue for tint, turf in zip(blue, turfs)]
        *compared, brightest = shade.by_comparison(even, bluer, seen, reaches)
        # Where even the brightest of the dates looks like shade, each is judged by itself; elsewhere what a
        # date looks like by itself counts as far as the comparison half bears it out.
        nowhere_lit = np.choose(brightest, alone) > 0.6 * shade.USUAL
        likes, thin = (
            [np.maximum(c, np.where(nowhere_lit, a, np.minimum(a, 2 * c))) for c, a in zip(one, alone)]
            for one in compared
        )
        return likes, thin, nowhere_lit

    def _shades(self, likes, thin, turfs, reaches, nowhere_lit):
        """Where each date lies in shade, [(h, w) bool, ...], crowns among it."""
        masks = []
        for like, weak, turf, reach in zip(likes, thin, turfs, reaches):
            threshold = turf.threshold
            if threshold is None:
                threshold = np.inf if len(likes) == 1 else shade.USUAL
            masks.append(shade.outlined(like, weak, threshold, self.gsd, reach))
        return masks if nowhere_lit is None else shade.thrown(masks, reaches, nowhere_lit, self.gsd)


def _moving(planes, matched, seen, masks, gsd, barred):
    """Where each date shows something that moves, [(h, w) bool, ...]. planes: the dates in their own
    colours, (3, h, w), matched: in those of the first, (h, w, 3)."""
    clear = [s & (mask & (SHADE | CROWN | CLOUD) == 0) for s, mask in zip(seen, masks)]
    alone = len(planes) == 1
    out = [movers.contrast(p, gsd, alone) for p in planes]
    dates = [planes_of(p) for p in matched]
    sharp = [movers.evenness(date) for date in dates]
    if alone:
        return [movers.outlined(movers.alone(out[0], sharp[0], gsd), sharp[0], gsd, barred | ~clear[0])]
    apart = movers.differing(dates, sharp, clear, gsd)
    # Beside the shade of any date a penumbra, or ground that only one other date shows, looks like a mover.
    doubtful = grown(~np.logical_and.reduce(clear), max(1, round(1.0 / gsd)))
    found = []
    for k, (strictly, in_doubt) in enumerate(apart):
        others = np.minimum.reduce([away for j, away in enumerate(out) if j != k])
        # What stands out a little on the others too is a slope that this date's sun lights otherwise.
        score = _agreed(strictly, movers.above(out[k], np.minimum(others, 85) * np.uint8(3)))
        score[doubtful] >>= 1
        faint = _agreed(in_doubt, movers.above(out[k], others))
        found.append(movers.outlined(score, sharp[k], gsd, barred | ~clear[k], faint))
    return found


def _agreed(differs, stands_out):
    """What differs from the other dates and stands out on its own. In the colours of another date what no
    ground looks like may have paled."""
    return np.minimum(np.minimum(differs, 127) * np.uint8(2), stands_out)


def _soft_planes(picture):
    """Red, green and blue with their grain softened, (3, h, w) uint8."""
    return np.stack([softened(picture[..., k]) for k in range(3)])


def standing(pictures, gsd, looks, ground=None):
    """Where crowns stand, drawn or found on all dates: (h, w) bool. The arguments are those of ``hidden``."""
    matched = [_in_base_colours(*both) for both in zip(pictures, looks.matches)]
    return _Broad(pictures, matched, gsd, ground or NOTHING_DRAWN).stands(looks.turfs)
