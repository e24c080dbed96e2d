"""What moves: people, carts, machines. Small things that one date shows and the others do not, or that stand
out from even turf or sand where there is but one date."""

import numpy as np
from scipy.ndimage import find_objects, label

from .patches import coarser, finer, grown, highest, lowest, mean_about

LEAST_M2, MOST_M2 = 0.2, 12.0
_SEED, _KIND, _FAINT, _EDGE = 22, 16, 10, 7
_LONGEST_M = 7.5
_STEEP = 0.6
_ABOUT_M, _DIRECTIONS = 3.0, 12
_ALONE = 18
_COMPANY_M, _SHADOW_M = 7.0, 0.8
_STEPS = np.arange(256)
_OTHERS = (np.minimum(_STEPS, 20) + 0.4 * np.maximum(_STEPS - 20, 0)).astype(np.uint8)
_OWN = np.clip(1.5 * (_STEPS - 10), 0, 255).astype(np.uint8)
"""How much of a difference unevenness explains, by its levels: that of the other dates at the place, that of
the date itself for metres about."""


def evenness(planes):
    """How much each pixel of (3, h, w) differs from its neighbours, (h, w) uint8: 0 for even ground."""
    sharp = None
    for plane in planes:
        range_here = highest(plane) - lowest(plane)
        sharp = range_here if sharp is None else np.maximum(sharp, range_here, out=sharp)
    return sharp


def differing(dates, sharp, seen, gsd):
    """How far each date is from what any other date shows within a pixel, strictly and in doubt for it:
    [((h, w) uint8, (h, w) uint8), ...].

    dates: [(3, h, w) uint8, ...] in the colours of one of them. sharp: ``evenness`` of each. seen: [(h, w)
    bool, ...], where the date shows the ground. Where no other date does, 0. Where another date is uneven
    (margins of sand), or the date itself for metres about (tall grass, gorse in bloom), light may well fall
    otherwise: a part of that is taken off, half of it in doubt.
    """
    own = [_OWN[_usual(one, gsd, 2.5, 3)] for one in sharp]
    others = [_OTHERS[np.maximum(highest(one, 2), _rise(date, gsd))] for one, date in zip(sharp, dates)]
    apart = _apart(dates)
    differences = []
    for k in range(len(dates)):
        least = np.full(seen[k].shape, 255, np.uint8)
        known = np.zeros(seen[k].shape, bool)
        allowed = own[k]
        for j in range(len(dates)):
            if j != k:
                np.minimum(least, apart[k][j], out=least, where=seen[j])
                allowed = np.maximum(allowed, others[j])
                known |= seen[j]
        least[~(known & seen[k])] = 0
        differences.append((above(least, allowed), above(least, allowed >> 1)))
    return differences


def above(plane, floor):
    """How far a plane of uint8 is above another, 0 where it is not."""
    return np.maximum(plane, floor) - floor


def _apart(dates):
    """apart[k][j], (h, w) uint8: how far date k is from all that date j shows within a pixel."""
    apart = [[np.zeros(date.shape[1:], np.uint8) for _ in dates] for date in dates]
    for channel in range(3):
        for j, date in enumerate(dates):
            low, high = lowest(date[channel]), highest(date[channel])
            for k, other in enumerate(dates):
                if k != j:
                    np.maximum(apart[k][j], _outside(other[channel], low, high), out=apart[k][j])
    return apart


def _outside(plane, low, high):
    """How far a plane of uint8 is above high or below low."""
    over = np.maximum(plane, high)
    over -= high
    under = np.minimum(plane, low)
    np.subtract(low, under, out=under)
    return np.maximum(over, under, out=over)


def _rise(planes, gsd):
    """How much the ground changes within a metre and a half of each pixel, (h, w) uint8."""
    factor = max(1, round(1.0 / gsd))
    return finer(evenness([coarser(plane, factor) for plane in planes]), factor, planes.shape[1:])


def contrast(planes, gsd, strictly=False):
    """How far each pixel is from all that lies three metres about it, (h, w) uint8; planes: (3, h, w) uint8.

    What goes on in a line (a margin, a path, a slope) has its own colour about it to both sides: the
    outermost neighbour either way is left out. strictly: what lies a metre nearer and farther counts too.
    """
    factor = max(1, round(1.0 / gsd))
    away = np.zeros(planes.shape[1:], np.uint8)
    for plane in planes:
        about = _about(coarser(plane, factor), factor * gsd, strictly)
        low, high = (finer(one, factor, away.shape) for one in about)
        np.maximum(away, _outside(plane, low, high), out=away)
    return away


def _about(plane, gsd, strictly):
    """The second least and the second greatest value in a ring about each pixel."""
    reach = max(1, round(_ABOUT_M / gsd))
    wide = np.pad(plane, reach, "edge")
    least, most = (lowest(wide), highest(wide)) if strictly else (wide, wide)
    h, w = plane.shape
    first, low = np.full((2, h, w), 255, np.uint8)
    last, high = np.zeros((2, h, w), np.uint8)
    for angle in np.arange(_DIRECTIONS) * (2 * np.pi / _DIRECTIONS):
        row, column = (reach + round(reach * float(f(angle))) for f in (np.sin, np.cos))
        there = (slice(row, row + h), slice(column, column + w))
        low = np.minimum(low, np.maximum(first, least[there]))
        first = np.minimum(first, least[there])
        high = np.maximum(high, np.minimum(last, most[there]))
        last = np.maximum(last, most[there])
    return low, high


def alone(stands_out, sharp, gsd):
    """How much each pixel stands out from even ground, (h, w) uint8, where one date is all there is."""
    uneven = np.minimum(_OWN[_usual(sharp, gsd, 2.5, 3)], 255 - _ALONE) + np.uint8(_ALONE)
    return above(stands_out, uneven)


def outlined(score, sharp, gsd, barred, faint=None):
    """The mask of movers: compact parts of the size of people, carts and machines, each with its shadow.

    score: how much each pixel stands out, sharp: how much it differs from its neighbours, both (h, w) uint8;
    what fades away slowly is a slope in another light. Beside a mover that is plain to see, what is fainter
    (by score, or by ``faint``, a kinder score) belongs to its company, and what touches it is its shadow.
    """
    # What the ground about differs by is no mark of a mover.
    rest = above(score, _usual(score, gsd, 9.0, 0))
    parts = _Parts((rest > _EDGE) & ~barred, rest, sharp, gsd)
    plain = parts.compact & (parts.size >= LEAST_M2) & (parts.peak >= _SEED)
    if not plain.any():
        return np.zeros(score.shape, bool)
    company = parts.about(plain, round(_COMPANY_M / gsd))
    shadow = parts.touching(parts.about(plain, max(1, round(_SHADOW_M / gsd))))
    fainter = parts.touching(company) & (parts.size >= LEAST_M2) & (parts.peak >= _FAINT)
    reach = max(1, round(0.3 / gsd))
    made = parts.about(plain | (parts.compact & (shadow | fainter)), reach)
    if faint is not None:
        parts = _Parts(company & (faint > _EDGE) & ~barred, faint, sharp, gsd)
        made |= parts.about(parts.compact & (parts.size >= LEAST_M2) & (parts.peak >= _KIND), reach)
    return made


class _Parts:
    """The connected parts of a mask (corners count), by their numbers, 0 for what is in none: peak, the
    greatest score in each; size, m2; compact, whether of the shape of what moves and sharp enough."""

    def __init__(self, mask, score, sharp, gsd):
        self.numbers, many = label(mask, np.ones((3, 3), bool))
        self.boxes = find_objects(self.numbers)
        inside = self.numbers[mask]
        self.peak, steep = _greatest(inside, many, score[mask], sharp[mask])
        self.size = np.bincount(inside, minlength=many + 1) * gsd**2
        self.compact = _compact(self.boxes, self.size, gsd) & (steep >= _STEEP * self.peak)

    def about(self, kept, reach):
        """The mask of the parts kept, (many + 1,) bool, and of ``reach`` pixels about them. They are few and
        small: each is grown by itself, not the whole plane."""
        made = np.zeros(self.numbers.shape, bool)
        for number in np.flatnonzero(kept):
            box = tuple(slice(max(one.start - reach, 0), one.stop + reach) for one in self.boxes[number - 1])
            made[box] |= grown(self.numbers[box] == number, reach)
        return made

    def touching(self, mask):
        """Which parts a mask touches."""
        touched = np.zeros(len(self.size), bool)
        touched[self.numbers[mask]] = True
        touched[0] = False
        return touched


def _greatest(numbers, many, *values):
    """For each of ``values``, (n,) uint8, the greatest by number, (many + 1,) uint8; 0 where there is none.
    numbers: (n,) of 0 to many."""
    order = np.argsort(numbers, kind="stable")
    ordered = numbers[order]
    first = np.flatnonzero(np.diff(ordered, prepend=-1))
    made = np.zeros((len(values), many + 1), np.uint8)
    if len(first):
        for one, found in zip(values, made):
            found[ordered[first]] = np.maximum.reduceat(one[order], first)
    return made


def _compact(boxes, size, gsd):
    """Which of the parts have the size (m2, (n + 1,)) and, by their boxes, the shape of what moves, (n + 1,)
    bool."""
    kept = size <= 2 * MOST_M2
    kept[0] = False
    for number, box in enumerate(boxes, start=1):
        if kept[number]:
            tall, wide = ((part.stop - part.start) * gsd for part in box)
            longest = max(tall, wide)
            kept[number] = longest <= _LONGEST_M and (size[number] > 0.25 * tall * wide or longest < 2.5)
    return kept


def _usual(plane, gsd, metres, reach):
    """The mean of a (h, w) uint8 over a square of so many metres, found in squares of about one, without
    what stands up on fewer than ``reach`` of them to each side."""
    factor = max(1, round(1.0 / gsd))
    small = coarser(plane, factor).astype(np.float32)
    mean = np.rint(mean_about(small, round(metres / (factor * gsd)))).astype(np.uint8)
    if reach:
        mean = highest(lowest(mean, reach), reach)
    return finer(mean, factor, plane.shape)
