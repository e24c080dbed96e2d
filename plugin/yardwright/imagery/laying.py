"""A block of the composite: the base with what other dates show in place of what hides, without a seam."""

from dataclasses import dataclass

import numpy as np
from scipy.ndimage import binary_propagation

from .aside import Block
from .blending import smooth, softened, spread, spread_at, stepped
from .hiding import EMPTY, MOVER, SHADE
from .lightening import depth_beside, depth_of_shade, lightened
from .patches import grown, highest

PHOTOGRAPHED, LIGHTENED, INVENTED, HIDDEN = 0, 1, 2, 3
"""How a pixel came about; HIDDEN: what hides could not be taken away, the base stays."""

STANDS = 64
"""A bit of the base's mask beside those of ``hiding``: a crown, which is not shade however dark."""

_LIGHTER = 0.2
_DISAGREE = 8.0  # grey values, averaged over 5 x 5 pixels
_EDGE = 2
_SHRED = 2
_FADES = 3  # pixels beyond a mask of shade in which it fades out


@dataclass(frozen=True)
class Rules:
    """What is the same for all blocks. choices: choosing.Choices. matches: of the other dates. noise: of the
    base, see ``lightening.grain_of``. ring: pixels about what is hidden in which a seam may lie."""

    choices: object
    matches: tuple
    noise: float
    ring: int

    @property
    def halo(self):
        """Pixels beyond a block that its own depend on."""
        return 2 * self.ring + 12


def lay(pictures, masks, asked, block, rules):
    """The block composed: ``(picture (h, w, 4) uint8, source (h, w, 2) uint8)``.

    pictures: (h, w, 4) uint8, the base first. masks: (h, w) uint8, of ``hiding``. asked: (h, w) uint8, the
    number of the date a person wants there (1: the base), 0 for none. block: the Block they lie in, its halo
    with it. source: the number of the date a pixel is from, 0 for none, and how it came about.
    """
    made = pictures[0].copy()
    source = np.zeros((*made.shape[:2], 2), np.uint8)
    source[..., 0] = made[..., 3] > 0
    stands = (masks[0] & STANDS) > 0
    masks = [masks[0] & ~np.uint8(STANDS), *masks[1:]]
    # What is shade or uneven among crowns belongs to them.
    need = (masks[0] != 0) & (asked != 1) & ~(stands & (masks[0] & ~np.uint8(SHADE | MOVER) == 0))
    wanted = need | (asked > 1)
    if not wanted.any():
        return made, source
    zone = grown(wanted, rules.ring)
    pick = _picked(masks, asked, zone, block, rules.choices, pictures)
    shade = need & (masks[0] == SHADE) & (rules.choices.light is not None)
    # A shred of another date amid lightened shade would look like a stain.
    shown = pick > 0
    pick[shade & ~(grown(~grown(~shown, _SHRED), _SHRED) & shown) & (asked <= 1)] = 0
    dark = shade & (pick == 0)
    source[..., 1][need & (pick == 0) & ~dark] = HIDDEN
    fade = _fade(stands, asked > 1, max(1, rules.ring // 2))
    if dark.any():
        depth = _lighten(made, dark, fade, pictures[1:], masks[1:], block, rules)
        source[..., 1][depth > _LIGHTER] = LIGHTENED
    if pick.any():
        _blend(made, source, pictures, pick, wanted, asked, fade, block, rules)
    return made, source


def _fade(stands, asked, pixels):
    """(h, w) float32, 1 in the open, 0 among crowns: shade stays there, and what was made clear beside it has
    to fade into it, or the crowns' outline as drawn would show."""
    if not stands.any():
        return np.ones(stands.shape, np.float32)
    fade = np.clip(1.25 - 1.75 * smooth(stands.astype(np.float32), pixels), 0, 1)
    return np.where(asked, 1, fade)


def _blend(made, source, pictures, pick, wanted, asked, fade, block, rules):
    """Blend what the dates picked show into a picture, in place, where it is wanted and a little about."""
    taken = wanted & (pick > 0)
    # Beyond what a date shows for sure, a little more, so that it does not end in a step.
    reach = np.where(pick > 0, pick, highest(pick) * wanted)
    rows, columns = np.nonzero(reach)
    own = made[rows, columns, :3].astype(np.float32)
    fill = _filled(pictures, reach, rows, columns, block, rules)
    off = np.zeros(pick.shape, np.float32)
    off[rows, columns] = (own - fill).mean(axis=1)
    apart = np.abs(smooth(off, 1)) > _DISAGREE
    # The soft edge of what hides, as far as the dates still disagree about it.
    edge = apart & grown(taken, _EDGE) & (pick > 0) & (asked != 1)
    inside = binary_propagation(taken, mask=taken | edge)
    share = (softened(inside, 1) * fade)[rows, columns]
    own += share[:, None] * (fill - own)
    made[rows, columns, :3] = np.clip(np.rint(own), 0, 255)
    over = share > 0.5
    rows, columns = rows[over], columns[over]
    made[rows, columns, 3] = 255
    source[rows, columns, 0] = reach[rows, columns] + 1
    source[rows, columns, 1] = PHOTOGRAPHED


def _picked(masks, asked, zone, block, choices, pictures):
    """For each pixel of the zone the index of the first date in order that shows it, from 1, 0 for none."""
    pick = np.zeros(zone.shape, np.uint8)
    bare = (masks[0] & EMPTY) > 0
    order = stepped(choices.order, block, choices.size)
    shown = [
        (mask == 0) & ~stepped(unfit, block, choices.size) for mask, unfit in zip(masks[1:], choices.unfit)
    ]
    for rank in range(order.shape[2]):
        for k, seen in enumerate(shown):
            pick[(pick == 0) & zone & seen & (order[..., rank] == k)] = k + 1
    for k, picture in enumerate(pictures[1:], start=1):
        # Where the base shows nothing at all, even shade is better.
        pick[(pick == 0) & bare & (picture[..., 3] > 127)] = k
        pick[(asked == k + 1) & (picture[..., 3] > 127)] = k
    return pick


def _lighten(made, dark, fade, others, masks, block, rules):
    """Take the shade out of a picture, in place, where it is ``dark``, and out of its soft edge, as far as
    ``fade`` lets; (h, w) how deep the shade was. others, masks: of the other dates, to tell how far the edge
    reaches."""
    choices = rules.choices
    soft = max(1, rules.ring // 6)
    rows, columns = _bounds(dark, rules.ring + 4)
    part = (slice(*rows), slice(*columns))
    inner = Block(block.x + columns[0], block.y + rows[0], columns[1] - columns[0], rows[1] - rows[0])
    own = made[part][..., :3].astype(np.float32)
    within = dark[part]
    inside = smooth((~grown(~within, 3 * soft)).astype(np.float32), soft)
    lit = spread(choices.lit, inner, choices.size)
    depth = depth_of_shade(own, lit, choices.light, inside) * softened(grown(within, _FADES), soft)
    beyond = (depth > 0) & ~within
    _limit(depth, own, beyond, [one[part] for one in others], [one[part] for one in masks], inner, rules)
    depth *= fade[part]
    light = lightened(own, depth, choices.light, rules.noise)
    made[part][..., :3] = np.where((depth > 0)[..., None], np.clip(np.rint(light), 0, 255), own)
    whole = np.zeros(dark.shape, np.float32)
    whole[part] = depth
    return whole


def _limit(depth, own, beyond, others, masks, block, rules):
    """Let the shade be no deeper, in place, beyond its mask than another date bears out: at the lip of a
    bunker the smooth field of what the sun shows there is too bright."""
    even = smooth(own, 1)
    for k, (picture, mask) in enumerate(zip(others, masks), start=1):
        rows, columns = np.nonzero(beyond & (mask == 0))
        if len(rows):
            lit = _in_base_colours(k, picture[rows, columns], block, rules, rows, columns)
            most = depth_beside(even[rows, columns], lit, rules.choices.light)
            depth[rows, columns] = np.clip(most, 0, depth[rows, columns])


def _bounds(mask, margin):
    """``((first row, last), (first column, last))`` of what is set, widened."""
    rows, columns = np.flatnonzero(mask.any(axis=1)), np.flatnonzero(mask.any(axis=0))
    return tuple(
        (max(int(at[0]) - margin, 0), min(int(at[-1]) + 1 + margin, size))
        for at, size in zip((rows, columns), mask.shape)
    )


def _filled(pictures, pick, rows, columns, block, rules):
    """(n, 3) float32: what the dates picked show at some pixels, in the base's colours; where two dates meet
    they are blended."""
    chosen = pick[rows, columns]
    taken = np.unique(chosen)
    total = np.zeros((len(rows), 3), np.float32)
    weights = np.zeros(len(rows), np.float32)
    for k in taken:
        picture = pictures[k][rows, columns]
        share = ((picture[:, 3] > 127) + 1e-3).astype(np.float32)
        if len(taken) > 1:
            share *= smooth((pick == k).astype(np.float32), 1)[rows, columns]
        total += share[:, None] * _in_base_colours(k, picture, block, rules, rows, columns)
        weights += share
    return total / np.maximum(weights, 1e-6)[:, None]


def _in_base_colours(k, pixels, block, rules, rows, columns):
    """(n, 3) float32: the pixels (n, 4) of another date, by its index from 1, as the base would show them."""
    seen = rules.matches[k - 1].apply(pixels[:, None])[:, 0]
    seen *= rules.choices.gain[k - 1]
    seen += spread_at(rules.choices.level[k - 1], block, rules.choices.size, rows, columns)
    return seen
