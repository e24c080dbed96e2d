"""How sure a figure is: the plus-minus of a distance, from the images its two ends were seen in."""

import math

from ..model.words import say
from .units import YARD, to_unit

POINTING_PIXELS = {"clear": 1.0, "partly hidden": 2.0}
"""How well a margin can be pointed at, in pixels of the image (our own rule, common practice, no source)."""
TWO_SIDED_95 = 1.96
"""Standard normal quantile: 95 % of errors lie within 1.96 standard errors."""


def plus_minus(end_a, end_b, images):
    """The 95 % plus-minus in metres of a distance between two features; None where it is not known.

    end_a, end_b: anything with ``seen_in`` and ``view``. images: ``{id: ImageDate}``. The registration
    error is left out when both ends come from one image, since it moves them alike.
    """
    variance = 0.0
    together = end_a.seen_in == end_b.seen_in
    for end in (end_a, end_b):
        image = images.get(end.seen_in)
        pixels = POINTING_PIXELS.get(end.view)
        if image is None or image.gsd_m is None or pixels is None:
            return None
        variance += (pixels * image.gsd_m) ** 2
        if not together:
            if image.rmse_m is None:
                return None
            variance += image.rmse_m**2
    return TWO_SIDED_95 * math.sqrt(variance)


def doubt(plus_minus_m, settings):
    """The remark on a figure whose plus-minus exceeds the course's setting, else an empty text."""
    if plus_minus_m is None or plus_minus_m <= settings.uncertain_yd * YARD:
        return ""
    figure = f"{to_unit(plus_minus_m, settings.unit):.1f}"
    return say("uncertain: ± {figure} {unit}", figure=figure, unit=settings.unit)
