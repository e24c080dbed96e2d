"""Pages compared with pictures of them that are kept: what changed without anybody meaning it.

Letters and edges fall a little otherwise with other versions of Qt, QGIS and the fonts: both pictures are blurred
by half a millimetre, and a few pixels may differ even so.
"""

import os

import numpy as np
from qgis.PyQt.QtGui import QImage
from scipy import ndimage

DPI = 72
BLUR_MM = 0.5
APART = 24
"""Levels of 255 by which a pixel may differ without being counted."""
SHARE = 0.0002
"""The share of a page's pixels that may: 31 of a pocket page's 154 000, as much as four square millimetres. A
callout a millimetre off its place changes more than twice as many; Debian 13 instead of 12 none."""
LABELS_SHARE = 0.015
"""The same of pages whose text QGIS sets in labels of its own: 3.22 and 3.40 space the letters otherwise."""
_STEP = 8
"""Levels of a kept picture's colours, which takes less room than all of them would: 4 are lost at most."""
RENEW = "YARDWRIGHT_RENEW_GOLDEN"
"""Set in the environment, kept pictures are written anew instead: look at what git says has changed."""


def differing(one, other):
    """(rows, columns) of bool: where two pictures of one size differ."""
    sigma = BLUR_MM / 25.4 * DPI
    soft = [ndimage.gaussian_filter(pixels.astype(np.float32), (sigma, sigma, 0)) for pixels in (one, other)]
    return np.abs(soft[0] - soft[1]).max(axis=2) > APART


def assert_as_kept(pixels, kept, folder, share=SHARE):
    """A picture, (rows, columns, 3) of bytes, looks like the PNG at ``kept`` but for a share of its pixels.

    Where it does not, the picture, the kept one and where they differ, in red, are written side by side to the
    folder.
    """
    if os.environ.get(RENEW):
        # White stays white.
        write_png(np.where(pixels >= 256 - _STEP, 255, pixels // _STEP * _STEP + _STEP // 2), kept)
        return
    wanted = read_png(kept)
    assert pixels.shape == wanted.shape, f"{kept}: {pixels.shape} is not {wanted.shape}"
    where = differing(pixels, wanted)
    print(f"{os.path.basename(kept)}: {where.mean():.4%} of the pixels differ")
    if where.mean() > share:
        seen = (0.4 * pixels + 153).astype(np.uint8)
        seen[where] = (220, 0, 0)
        shown = os.path.join(str(folder), os.path.basename(kept))
        write_png(np.hstack([pixels, wanted, seen]), shown)
        rows, columns = np.nonzero(where)
        box = [
            round(float(value) * 25.4 / DPI, 1)
            for value in (columns.min(), rows.min(), columns.max(), rows.max())
        ]
        raise AssertionError(
            f"{where.mean():.3%} of the pixels differ ({share:.3%} may), within {box} mm of the page: see {shown}. "
            f"If that is meant, run the test with {RENEW}=1 and look at the pictures before keeping them."
        )


def read_png(path):
    """(rows, columns, 3) of bytes."""
    image = QImage(str(path)).convertToFormat(QImage.Format.Format_RGB888)
    assert not image.isNull(), f"{path} is no picture"
    bits = image.constBits()
    bits.setsize(image.sizeInBytes())
    rows = np.frombuffer(bits, np.uint8).reshape(image.height(), image.bytesPerLine())
    return rows[:, : 3 * image.width()].reshape(image.height(), image.width(), 3).copy()


def write_png(pixels, path):
    """The same back, as small as it goes."""
    data = np.ascontiguousarray(pixels, dtype=np.uint8)
    rows, columns = data.shape[:2]
    image = QImage(data.data, columns, rows, 3 * columns, QImage.Format.Format_RGB888)
    assert image.save(str(path), "PNG", 0), path
