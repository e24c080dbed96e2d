"""The colours of an image as an eye parts them."""

import numpy as np

_LINEAR = np.array(
    [v / 12.92 if v <= 0.04045 else ((v + 0.055) / 1.055) ** 2.4 for v in np.arange(256) / 255.0],
    dtype=np.float32,
)
# Rows: X, Y, Z, each for the white of daylight as 1 (sRGB, IEC 61966-2-1; D65; from memory).
_TO_XYZ = np.array(
    [
        [0.4124 / 0.9505, 0.3576 / 0.9505, 0.1805 / 0.9505],
        [0.2126, 0.7152, 0.0722],
        [0.0193 / 1.0890, 0.1192 / 1.0890, 0.9505 / 1.0890],
    ],
    dtype=np.float32,
)


def light(pixels):
    """sRGB (..., 3) of uint8 -> the amount of light (..., 3), 0 to 1, float32."""
    return _LINEAR[pixels[..., :3]]


def lab(amounts):
    """Amounts of light (..., 3) -> CIELAB (..., 3), float32.

    Lightness 0 to 100, green to red, blue to yellow; a distance of about 2 is just seen. CIE 1976, from
    memory; below 0.9 per cent of white the curve is straight.
    """
    xyz = np.maximum(amounts, 0.0) @ _TO_XYZ.T
    f = np.where(xyz > 216 / 24389, np.cbrt(xyz), xyz * (24389 / 27 / 116) + 16 / 116)
    x, y, z = f[..., 0], f[..., 1], f[..., 2]
    return np.stack([116 * y - 16, 500 * (x - y), 200 * (y - z)], axis=-1).astype(np.float32)
