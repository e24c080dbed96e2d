"""Which date shows what the base hides: decided over the whole extent, in cells of about a metre, so that no
block of the picture decides otherwise than its neighbour."""

from dataclasses import dataclass

import numpy as np
from scipy.ndimage import (
    binary_dilation,
    binary_erosion,
    distance_transform_edt,
    label,
    median,
)

from .abreast import two_threads
from .blending import even, membrane, smooth, summed
from .hiding import SHADE
from .lightening import learn_light
from .patches import grown

MOST_CELLS = 1_500_000
_WIDE_SPOT = 2500  # cells; a spot larger than that may take several dates
_NEAR = 14  # cells either way over which the likeness of two dates is averaged
_ABOUT = 4
_ODD = 10.0  # grey values
_DIM = 0.88
_STRANGE = 0.4
_TOO_BRIGHT = 1.4  # for ground that lay in deep shade, in the brightness of what lies about
_TONES = 12
_CLEAR_OF_CROWNS = 2
_LEAST_DROP = 0.2  # of the drop that deep shade makes
_SHOWN = 0.3  # of a cell, for another date to tell what it is like in the sun
_MUCH_NEARER = 0.4
_EDGE = 0.05  # the weight of a cell beside what is hidden, for shade fades out beyond its mask


def cell_size(width, height, gsd):
    """Pixels to a side of a cell, a power of two: about a metre, and no more than MOST_CELLS cells."""
    size = 4
    while size < 16 and size * 1.5 < 1 / gsd:
        size *= 2
    while (width / size) * (height / size) > MOST_CELLS:
        size *= 2
    return size


class Tally:
    """What the cells hold of each date: sums and counts of pixels, gathered block by block."""

    def __init__(self, width, height, size, others):
        self.size = size
        shape = (-(-height // size), -(-width // size))
        self.shape = shape
        self.pixels = np.zeros(shape, np.float32)
        self.seen = _Sums(shape, 1)
        self.shade = _Sums(shape, 1)
        self.need = np.zeros(shape, np.float32)
        self.both = [_Sums(shape, 2) for _ in range(others)]
        self.uncovered = [_Sums(shape, 1) for _ in range(others)]

    def add(self, block, pictures, masks):
        """Take in a Block: its pictures (h, w, 4) and masks (h, w), the base first. It begins on a cell."""
        size = self.size
        part = (
            slice(block.y // size, -(-(block.y + block.height) // size)),
            slice(block.x // size, -(-(block.x + block.width) // size)),
        )
        base, mask = pictures[0][..., :3], masks[0]
        seen = mask == 0
        self.pixels[part] = summed(np.ones(mask.shape, np.float32), size)
        self.need[part] = summed(~seen, size)
        self.seen.put(part, size, seen, base)
        self.shade.put(part, size, mask == SHADE, base)
        for k, (picture, other) in enumerate(zip(pictures[1:], masks[1:])):
            shown = other == 0
            self.both[k].put(part, size, seen & shown, base, picture[..., :3])
            self.uncovered[k].put(part, size, ~seen & shown, picture[..., :3])

    def shown_by(self, k):
        """``(mean colour of what another date shows (h, w, 3), of how many pixels (h, w))``."""
        count = self.both[k].count + self.uncovered[k].count
        total = self.both[k].sums[1] + self.uncovered[k].sums[0]
        return total / np.maximum(count, 1)[..., None], count

    def all_shade(self):
        """The cells whose every pixel lies in the base's shade, (h, w) bool."""
        return (self.shade.count >= self.pixels) & (self.pixels > 0)


class _Sums:
    """Counts of pixels in cells and sums of one or two pictures over them."""

    def __init__(self, shape, pictures):
        self.count = np.zeros(shape, np.float32)
        self.sums = [np.zeros((*shape, 3), np.float32) for _ in range(pictures)]

    def put(self, part, size, which, *pictures):
        self.count[part] = summed(which, size)
        if not which.any():
            return
        for total, picture in zip(self.sums, pictures):
            for band in range(3):
                total[(*part, band)] = summed(picture[..., band] * which, size)

    def mean(self, picture=0):
        """(h, w, 3) of the counted pixels, 0 where there are none."""
        return self.sums[picture] / np.maximum(self.count, 1)[..., None]


@dataclass(frozen=True)
class Choices:
    """What was decided for the cells.

    order: (h, w, others) of indices of the other dates, the likest first. gain, level: for each other date,
    what its matched colours are taken times, and what is added then, (h, w, 3). unfit: for each other date,
    (h, w) bool where it does not show the ground either. light: the Light of the base's shade, None where it
    has none. lit: (h, w, 3) what the sun would show."""

    size: int
    order: object
    level: tuple
    gain: tuple
    unfit: tuple
    light: object
    lit: object


def choose(tally, matches, gains, black, plain):
    """The Choices of a Tally.

    matches, gains: of each other date the Match to the base, and how much stronger its texture has to be made
    to be the base's. black: (3,) the base's. plain: (h, w) bool, the cells where nothing stands: only of
    those does one tell what the next is like."""
    area = tally.size * tally.size
    away = np.where(grown(tally.need > 0, 1), _EDGE, 1.0).astype(np.float32)

    def beside(both, match):
        """``(level, unlikeness)`` of another date."""
        rest = both.mean(0) - match.apply(np.rint(both.mean(1)).astype(np.uint8))
        known = both.count / area
        level = membrane(rest, _unlike_none(rest, known * plain * away))
        return level, _unlikeness(rest - level, known)

    sunny = tally.seen.count / area * plain * away
    with two_threads() as pool:
        field = pool.submit(lambda: membrane(tally.seen.mean(), sunny))
        found = list(pool.map(beside, tally.both, matches))
        levels, about = [level for level, _ in found], field.result()
        shade = pool.submit(_light, tally, matches, levels, black, sunny, about, plain)
        ordered = pool.submit(_orders, tally, [unlike for _, unlike in found])
        colours = list(pool.map(lambda k, match: _own_colour(tally, k, match), range(len(matches)), matches))
        light, lit = shade.result()
        others = range(len(matches))
        own = _own_lightened(tally, light)
        unfit = tuple(pool.map(lambda k: _unfit(tally, k, matches[k], levels[k], own, about), others))
        order = ordered.result()
    raised = tuple(level + (1 - gain) * one for level, gain, one in zip(levels, gains, colours))
    return Choices(tally.size, order, raised, tuple(gains), unfit, light, lit)


def _own_colour(tally, k, match):
    """(h, w, 3) what another date shows in each cell, in the base's colours, smooth where it shows
    nothing."""
    mean, count = tally.shown_by(k)
    return membrane(match.apply(np.rint(mean).astype(np.uint8)), count / (tally.size * tally.size))


def _own_lightened(tally, light):
    """(h, w, 3) what the base's shade would show in the sun, or None where it has none; in the soft edge of a
    shade, what goes on beside it, within."""
    if light is None:
        return None
    own = light.lit(tally.shade.mean())
    full = tally.all_shade()
    return np.where(full[..., None], own, membrane(own, full)) if full.any() else own


def _unfit(tally, k, match, level, own, about):
    """(h, w) bool: the cells where another date, said to show what the base shades, shows something else.

    It is unfit where it is much darker than both the base's ``own`` shade, lightened, and the sunlit ground
    ``about``, for then it lies in shade too; and where its colour is far from both, as a crown's is. What
    would be much brighter than anything about, lightened, lies in no deep shade, and tells nothing.
    """
    if own is None:
        return np.zeros(tally.shape, bool)
    shown = tally.uncovered[k]
    matched = match.apply(np.rint(shown.mean()).astype(np.uint8)) + level
    known = (tally.shade.count >= 0.5 * tally.pixels) & (shown.count > 0)
    in_sun, lit_own = even(about), even(own)
    known &= lit_own < _TOO_BRIGHT * in_sun
    darker = even(matched) < _DIM * np.minimum(lit_own, in_sun)
    far = np.minimum(_apart(matched, own), _apart(matched, about)) > _STRANGE
    return known & (darker | far)


def _apart(ours, theirs):
    """How far two fields of colours differ in any channel, as a part of their brightness, (h, w)."""
    off = np.abs(ours - theirs)
    most = np.maximum(np.maximum(off[..., 0], off[..., 1]), off[..., 2])
    return most / np.maximum(even(theirs), 30)


def _unlike_none(rest, known):
    """``known`` less what differs much from what is about it: a thing that one date alone shows."""
    bright = even(rest)
    for _ in range(2):
        middle = smooth(bright * known, _ABOUT) / np.maximum(smooth(known, _ABOUT), 1e-4)
        odd = ((bright - middle) / _ODD) ** 2
        known = known / (1 + odd * odd)
    return known


def _unlikeness(rest, known):
    """How much two dates differ about each cell beyond a smooth difference, (h, w)."""
    off = even(np.abs(rest)) * known
    near = smooth(known, _NEAR)
    return smooth(off, _NEAR) / np.maximum(near, 1e-3) + 20.0 * (near < 1e-3)


def _orders(tally, unlike):
    """Each cell's order of the other dates; a spot has one order throughout, unless it is very large."""
    high, wide = tally.shape
    if not unlike:
        return np.zeros((high, wide, 0), np.uint8)
    cost = np.stack(unlike, axis=-1)
    spots, many = label(tally.need > 0, np.ones((3, 3)))
    if many:
        for k in range(len(unlike)):
            sizes = np.bincount(spots.ravel(), minlength=many + 1)
            means = np.bincount(spots.ravel(), cost[..., k].ravel(), many + 1) / np.maximum(sizes, 1)
            one = (spots > 0) & (sizes[spots] <= _WIDE_SPOT)
            cost[..., k][one] = means[spots[one]]
        nearest = distance_transform_edt(spots == 0, return_distances=False, return_indices=True)
        cost = cost[nearest[0], nearest[1]]
    return np.argsort(cost, axis=-1, kind="stable").astype(np.uint8)


def _is_shade(lit, dark, light, deep):
    """Which of the deep cells are darker than what lies about them in the sun, as shade is: a dark verge or
    a hedge taken for shade is not. lit, dark: (h, w, 3) means in the sun, spread from about, and in shade."""
    drop = even(lit - dark) / np.maximum(even(lit - light.shaded(lit)), 1.0)
    spots, many = label(deep, np.ones((3, 3)))
    if not many:
        return deep
    middle = np.zeros(many + 1)
    middle[1:] = median(drop[deep], spots[deep], np.arange(1, many + 1))
    return (drop > _LEAST_DROP) & (middle[spots] > 2 * _LEAST_DROP)


def _gaps(own, about):
    """Which cells, lightened, are much brighter than those beside them and than what lies about: a gap
    between two shadows, (h, w) bool."""
    bright = even(own)
    found = bright > _TOO_BRIGHT * even(about)
    rows, columns = np.nonzero(found)
    wide = np.pad(bright, 1, "edge")
    beside = np.median([wide[rows + y, columns + x] for y in range(3) for x in range(3)], axis=0)
    found[rows, columns] = bright[rows, columns] > _TOO_BRIGHT * beside
    return found


def _shown_in_the_sun(colours, lit, sunny):
    """Which cells would have, in the sun, a colour that something has there: dark turf, lightened as if it
    lay in shade, has not, (h, w) bool. lit: (h, w, 3) what the cells show in the sun, sunny: how well that is
    known."""
    shown = np.zeros((_TONES,) * 3, bool)
    shown[tuple(_tones(lit[sunny >= 0.5]).T)] = True
    shown = binary_dilation(shown, np.ones((3, 3, 3), bool))
    return shown[tuple(np.moveaxis(_tones(colours), -1, 0))]


def _tones(colours):
    return np.clip(colours * (_TONES / 256), 0, _TONES - 1).astype(int)


def _light(tally, matches, levels, black, sunny, about, plain):
    """``(Light or None, lit field)`` of the base's shade.

    It is learnt where another date shows what lies in the base's deep shade, and across the shade's edges.
    sunny: (h, w) how well each cell is known in the sun. about: (h, w, 3) the smooth field through those.
    plain: (h, w) bool, where nothing stands.
    """
    full = tally.all_shade()
    deep = binary_erosion(full, border_value=1)
    if not deep.any():
        return None, about
    shown, by_another = _shown_by_another(tally, matches, levels)
    off = distance_transform_edt(sunny < 0.5) if (sunny >= 0.5).any() else np.full(sunny.shape, 99.0)
    lit = np.where(by_another[..., None], shown, about)
    known = deep & (by_another | (off <= 4.5))
    dark = tally.shade.mean()
    light = learn_light(
        lit[known], dark[known], black, binary_erosion(plain, iterations=_CLEAR_OF_CROWNS)[known]
    )
    if light is None:
        return None, about
    own = light.lit(dark)
    strange = full & ~_shown_in_the_sun(own, tally.seen.mean(), sunny)
    deep &= ~strange & ~_gaps(np.where(full[..., None], own, about), about)
    deep &= _is_shade(about, dark, light, deep)
    # A dark slope taken for shade comes out brighter than anything about.
    better = by_another & (~deep | (_apart(shown, about) < _MUCH_NEARER * _apart(own, about)))
    made = np.where(deep[..., None], own, tally.seen.mean())
    made = np.where(better[..., None], shown, made)
    made[strange] = dark[strange]
    return light, membrane(made, np.where(deep | strange | by_another, 1.0, sunny))


def _shown_by_another(tally, matches, levels):
    """``(what another date shows in the cells of which the base hides some (h, w, 3), where one does (h, w)
    bool)``, in the base's colours."""
    colours, known = np.zeros((*tally.shape, 3), np.float32), np.zeros(tally.shape, bool)
    for k, (match, level) in enumerate(zip(matches, levels)):
        mean, count = tally.shown_by(k)
        here = (tally.need > 0) & (count >= _SHOWN * tally.pixels) & (count > 0) & ~known
        colours[here] = (match.apply(np.rint(mean).astype(np.uint8)) + level)[here]
        known |= here
    return colours, known
