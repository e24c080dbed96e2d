"""What is told by its texture: crowns that stand over the ground, water that lies in it, clouds above."""

import numpy as np
from scipy.ndimage import find_objects, label

from .patches import grown, holding, mean_about, opened, shrunk

_ROUGH = 0.048
_CLOUD_M = 6.0
_GRAIN, _SOFT = 0.02, 0.04


def roughness(bright, gsd):
    """How rough a date is about each pixel: the mean size of what a plane of brightness holds finer than
    about a metre and a half, over two and a half metres; (h, w) float32."""
    fine = np.abs(bright - mean_about(bright, max(3, round(1.5 / gsd))))
    return mean_about(fine, max(3, round(2.5 / gsd)))


def standing(rough, pale, gsd, woods=None, open_ground=None):
    """Where crowns stand: (h, w) bool. rough: [(h, w) float32, ...] of every date. pale: what every date
    shows much brighter than turf: sand, paths. woods: where they are drawn; open_ground: where nothing
    stands, though they may hang over it; None where not drawn.

    A crown is rough on every date, the margin of a shadow on its own one only.
    """
    most = _middle(rough)
    most[grown(pale, max(1, round(2.0 / gsd)))] = 0
    # Over five metres other margins are too narrow to count.
    most = mean_about(most, max(3, round(5.0 / gsd)))
    # The mean over a square reaches half its side beyond the crown.
    found = opened(shrunk(most > _ROUGH, max(1, round(1.2 / gsd))), max(1, round(0.9 / gsd)))
    found = holding(found, found, max(4, round(8.0 / gsd**2)))
    if woods is not None:
        # Drawn woods need no help but where their crowns reach over the ground of play.
        found &= grown(woods, max(1, round(4.0 / gsd)))
        if open_ground is not None:
            found &= open_ground
        found |= woods
    return found


def _middle(planes):
    """The middle one of some planes at each pixel, the lower of the two where they are even in number: put in
    order plane by plane, in a tenth of the time that sorting each pixel's values takes."""
    ordered = []
    for plane in planes:
        for k, lower in enumerate(ordered):
            ordered[k], plane = np.minimum(lower, plane), np.maximum(lower, plane)
        ordered.append(plane)
    return ordered[(len(ordered) - 1) // 2].copy()


def water(bright, blue, rough, gsd, level):
    """Where a date shows what may be water, (h, w) bool: dark, not green, and smoother over five metres than
    lit turf of that brightness (level) is, for shade lets the grain of the ground stand out.

    bright, blue: planes of brightness and blueness.
    """
    dark = (bright < level - 0.25) & (blue > -0.2)
    if not dark.any():
        return dark
    lit = np.abs(bright - level) < 0.25
    grain = float(np.median(rough[lit])) if lit.sum() > 400 else _GRAIN
    smooth = dark & (mean_about(rough, max(3, round(5.0 / gsd))) < 1.15 * grain)
    reach = max(1, round(3.0 / gsd))
    return grown(opened(smooth, reach), reach) & dark


def overhanging(rough, stands, open_ground, gsd):
    """Where crowns of one date hang over ground that is drawn as open; without drawings, where they stand."""
    here = stands & (rough > _ROUGH)
    return here if open_ground is None else here & open_ground


def clouds(picture, rough, gsd, others=()):
    """Where one date is bright, colourless and smooth over many metres and fades out softly, and other dates
    (pictures) are not as bright; (h, w) bool. Sand is too yellow for it; roofs, tarmac and quarries have
    sharp margins."""
    low, high = _of_channels(picture, np.minimum), _of_channels(picture, np.maximum)
    white = (low > 160) & (rough < 0.05)
    if not white.any():
        return white
    white &= low > 0.88 * high
    for other in others:
        white &= _of_channels(other, np.maximum) < 0.9 * high
    return _soft(opened(white, max(1, round(_CLOUD_M / gsd))), rough, max(1, round(2.0 / gsd)))


def _of_channels(picture, which):
    return which(which(picture[..., 0], picture[..., 1]), picture[..., 2])


def _soft(mask, rough, reach):
    """The parts of a mask whose surroundings, ``reach`` pixels wide, are not rough."""
    parts, many = label(mask, np.ones((3, 3), bool))
    if not many:
        return mask
    soft = np.zeros(many + 1, bool)
    for number, box in enumerate(find_objects(parts), start=1):
        wider = tuple(slice(max(part.start - reach, 0), part.stop + reach) for part in box)
        part = parts[wider] == number
        margin = grown(part, reach) & ~part
        soft[number] = not margin.any() or np.percentile(rough[wider][margin], 75) < _SOFT
    return soft[parts]
