"""Shade lightened in place: the picture's own light and colour brought back to what the sun would show."""

from dataclasses import dataclass

import numpy as np

from .blending import smooth
from .patches import mean_about

_LUMA = np.array([0.3, 0.55, 0.15], np.float32)
_LEAST_PAIRS = 12
_WIDE = 0.4  # of the logarithm of what shade leaves, about one kind of shade
_USUAL = np.log(0.4)  # the logarithm of what shade leaves under a clear sky (from memory)
_STRAYS = 0.4
TEXTURE_CELL = 8
_GRAIN = 7  # pixels over which grain is told from texture
_ROUGHER = 1.5  # the grain of turf beside that of the smoothest ground
_ALL_SHADE = (0.95, 0.8)  # at the edge of a shade, and well within it


@dataclass(frozen=True)
class Light:
    """What shade does to a picture. gain: (3,) the part of red, green and blue that deep shade leaves, above
    ``black``, (3,) the value of what sends no light at all (haze)."""

    gain: object
    black: object

    def lit(self, values, depth=1.0):
        """(..., 3) values in shade as the sun would show them; depth: (...) of shade, 0 none, 1 deep."""
        left = 1 - (1 - self.gain) * np.asarray(depth, np.float32)[..., None]
        return self.black + (values - self.black) / left

    def shaded(self, values):
        """(..., 3) sunlit values as deep shade shows them."""
        return self.black + (values - self.black) * self.gain


def learn_light(lit, dark, black, best):
    """The Light of pairs of one ground in the sun and in deep shade, (n, 3) each, or None where there are too
    few, or they show no shade: darker in all channels, and least so in blue.

    best: (n,) bool, those that lie clear of crowns; beside them the ground is darker than it is about, in the
    sun too. Where they are enough, they alone count.
    """
    if len(lit) < _LEAST_PAIRS:
        return None
    black = np.asarray(black, np.float32)
    bright = (lit - black).min(axis=1) > 15
    if bright.sum() < _LEAST_PAIRS:
        return None
    left = (dark[bright] - black) / (lit[bright] - black)
    alike = _commonest(np.log(np.maximum(left @ _LUMA, 0.01)))
    best = best[bright] & alike
    gain = np.median(left[best if best.sum() >= _LEAST_PAIRS else alike], axis=0)
    if not (gain > 0.12).all() or not (gain < 0.92).all():
        return None
    return Light(gain.astype(np.float32), black)


def _commonest(values):
    """Which of the logarithms of what is left, (n,), lie where most of them do, (n,) bool, as far as shade is
    likely to leave so much: what is no shade, as water of another hour, lies elsewhere."""
    ordered = np.sort(values)
    many = np.searchsorted(ordered, ordered + _WIDE, "right") - np.arange(len(ordered))
    likely = np.exp(-(((ordered + _WIDE / 2 - _USUAL) / _STRAYS) ** 2) / 2)
    least = ordered[np.argmax(many * likely)]
    return (values >= least) & (values <= least + _WIDE)


def depth_of_shade(picture, lit, light, inside):
    """How deep each pixel lies in shade, (h, w) 0 to 1.

    lit: (h, w, 3) a smooth field of what the sun would show. inside: (h, w) 0 at the shade's edge, 1 well
    within it, where nearly full shade is taken for full: else the ground's own texture would count as shade.
    """
    share = depth_beside(smooth(picture, 1), lit, light)
    full = _ALL_SHADE[0] + (_ALL_SHADE[1] - _ALL_SHADE[0]) * inside
    return np.clip(share / full, 0, 1)


def depth_beside(values, lit, light):
    """How deep in shade values (..., 3) lie, (...) 1 for deep, beside what the sun would show, ``lit``."""
    most = (lit - light.shaded(lit)) @ _LUMA
    return (lit - values) @ _LUMA / np.maximum(most, 1.0)


def lightened(picture, depth, light, noise):
    """The picture with its shade taken out, (h, w, 3) float32.

    depth: (h, w) of shade. noise: standard deviation of the picture's grain, which grows with the light: that
    much is smoothed away, the texture above it stays.
    """
    made = light.lit(picture, depth)
    left = 1 - (1 - light.gain.mean()) * depth
    # What of it was measured is where the picture is smoothest.
    noise = _ROUGHER * noise
    grain = (noise / left) ** 2 - noise**2
    middle = mean_about(made, _GRAIN)
    # Texture is one of brightness; what differs in colour from pixel to pixel is grain.
    bright = middle @ _LUMA
    rest = made @ _LUMA - bright
    spread = mean_about(rest * rest, _GRAIN)
    keep = np.clip(1 - grain / np.maximum(spread, 1e-3), 0.15, 1)
    even = middle * (1 + keep * rest / np.maximum(bright, 1))[..., None]
    return made + np.minimum(3 * depth, 1)[..., None] * (even - made)


def grain_of(picture):
    """The standard deviation of a picture's grain, from where it is smoothest: (h, w, 3 or 4) -> float."""
    values = picture[..., 1].astype(np.float32)
    step = (values[1:, 1:] - values[:-1, 1:] - values[1:, :-1] + values[:-1, :-1]) / 2
    high, wide = step.shape[0] // 8 * 8, step.shape[1] // 8 * 8
    if not high or not wide:
        return 0.0
    cells = step[:high, :wide].reshape(high // 8, 8, wide // 8, 8)
    return float(np.quantile(np.sqrt((cells * cells).mean(axis=(1, 3))), 0.3))


def texture_of(picture):
    """(h // 8, w // 8) how strong fine texture of a picture (h, w, 3) float32 is, by cells of 8 pixels."""
    bright = picture @ _LUMA
    fine = bright - smooth(bright, 1)
    n = TEXTURE_CELL
    high, wide = fine.shape[0] // n * n, fine.shape[1] // n * n
    cells = fine[:high, :wide].reshape(high // n, n, wide // n, n)
    return np.sqrt((cells * cells).mean(axis=(1, 3)))
