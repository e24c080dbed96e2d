"""Where two pictures of one ground are alike: masked correlation of the directions of their edges.

Grass turns brown and light turns with the hour, but a margin keeps its direction. So it is the direction of
the gradient that is compared, its strength counting only up to what is usual in the picture, and pixels
without picture count for nothing: the normalised correlation of masked pictures (D. Padfield, “Masked object
registration in the Fourier domain”, IEEE Transactions on Image Processing 21, 2012) of gradient directions
(A. Fitch and others, “Orientation correlation”, British Machine Vision Conference 2002); both from memory.
"""

import math
from dataclasses import dataclass

import numpy as np
from scipy import fft
from scipy.ndimage import gaussian_filter

from .patches import highest, lowest, mean_about, planes_of

SIGMA = 1.0
"""The edges that are compared, pixels: finer than the soft margin of a shadow, coarser than grain."""
_USUAL = 2.0
"""An edge of so many times the median strength counts half."""
_DARK = 0.2
"""In shade is what is darker than its surroundings by so much, as the logarithm of light..."""
_AROUND = 41
"""...that reach so many pixels across."""
_APART = 3
"""Another peak is one at least so many pixels away."""
_LEAST_SHARED = 0.35
"""How much of the window must lie over picture in both, of what does where it is most."""
_CHANCE = 2.45
"""The standard deviation of the likeness of unlike pictures times the root of their pixels: neighbouring
directions hang together over 4 pi sigma squared pixels, and half of a complex product is real."""


@dataclass(frozen=True)
class Edges:
    """direction: (h, w) complex64, east real and down imaginary, length 0 to 1. seen: (h, w) bool, where
    there is picture in the light."""

    direction: object
    seen: object

    def within(self, margin):
        """The same with nothing seen along the sides, ``margin`` pixels deep."""
        seen = np.zeros_like(self.seen)
        inner = (slice(margin, self.seen.shape[0] - margin), slice(margin, self.seen.shape[1] - margin))
        seen[inner] = self.seen[inner]
        return Edges(np.where(seen, self.direction, 0), seen)


@dataclass(frozen=True)
class Peak:
    """right, down: pixels by which the second picture lies off the first. alike: the correlation there, up to
    1. clear: by how much it is more alike than any other place, in standard deviations of unlike pictures."""

    right: float
    down: float
    alike: float
    clear: float


def edges_of(picture):
    """The Edges of a picture, (h, w, 4) of uint8. What lies in shade is not seen: shadows fall elsewhere at
    another hour, and would draw the one date towards the other's."""
    light = np.log(sum(planes_of(picture).astype(np.float32)) * np.float32(1 / 3) + np.float32(16))
    east = gaussian_filter(light, SIGMA, order=(0, 1))
    down = gaussian_filter(light, SIGMA, order=(1, 0))
    # An edge of the picture itself is none of the ground.
    seen = lowest(picture[:, :, 3], math.ceil(3 * SIGMA)) > 250
    shade = mean_about(light, 3) < mean_about(light, _AROUND) - _DARK
    seen &= ~highest(shade, 2)
    length = np.hypot(east, down)
    usual = np.median(length[seen]) if seen.any() else 1.0
    direction = (east + 1j * down) / (length + _USUAL * usual + np.float32(1e-6))
    return Edges(np.where(seen, direction, 0).astype(np.complex64), seen)


def likeness(first, second, reach):
    """How alike two Edges of one size are when the second is shifted, (2 reach + 1, 2 reach + 1), -1 to 1.

    Row ``reach + d``, column ``reach + r`` is for a second picture that lies d down and r to the right. The
    first must be blank along its sides, ``reach`` deep.
    """
    shape = [fft.next_fast_len(size, real=True) for size in first.seen.shape]
    steps = np.arange(-reach, reach + 1)

    def shared(one, other):
        product = np.conj(fft.fft2(one, shape)) * fft.fft2(other, shape)
        return fft.ifft2(product).real[np.ix_(steps, steps)]

    def shared_real(one, other):
        product = np.conj(fft.rfft2(one, shape)) * fft.rfft2(other, shape)
        return np.maximum(fft.irfft2(product, shape)[np.ix_(steps, steps)], 0)

    strong_first, strong_second = (np.abs(one.direction) ** 2 for one in (first, second))
    own_first = shared_real(strong_first, second.seen.astype(np.float32))
    own_second = shared_real(first.seen.astype(np.float32), strong_second)
    enough = np.minimum(own_first / max(own_first.max(), 1e-6), own_second / max(own_second.max(), 1e-6))
    alike = shared(first.direction, second.direction) / np.sqrt(np.maximum(own_first * own_second, 1e-6))
    return np.where(enough > _LEAST_SHARED, alike, 0)


def peak_of(surface, pixels):
    """The Peak of a surface of ``likeness``; None where it is highest at its rim, or nowhere above chance.

    pixels: of the first picture that were seen.
    """
    reach = surface.shape[0] // 2
    row, column = np.unravel_index(np.argmax(surface), surface.shape)
    height = float(surface[row, column])
    if min(row, column) == 0 or max(row, column) == 2 * reach or height <= 0:
        return None
    rows, columns = np.ogrid[: 2 * reach + 1, : 2 * reach + 1]
    elsewhere = surface[np.maximum(abs(rows - row), abs(columns - column)) > _APART].max(initial=0.0)
    right = _top(*surface[row, column - 1 : column + 2])
    down = _top(*surface[row - 1 : row + 2, column])
    clear = (height - elsewhere) * math.sqrt(pixels) / _CHANCE
    return Peak(float(column - reach + right), float(row - reach + down), height, float(clear))


def _top(before, here, after):
    """Where a parabola through three neighbours has its top, -0.5 to 0.5 from the middle one."""
    bend = before - 2 * here + after
    return float(0.5 * (before - after) / bend) if bend < 0 else 0.0
