"""Pictures for pages, written so that they are read again in no time."""

import numpy as np
from qgis.PyQt.QtGui import QImage

from ..model.errors import YardwrightError
from ..model.words import say
from ..store.files import written_beside


def write_picture(pixels, path):
    """Write pixels, (height, width, 4) of uint8, RGB and opacity, as a bitmap at ``path`` (``….bmp``), what
    is clear as white paper; the path.

    A bitmap is large and lasts as long as its page is being made: packing a picture and unpacking it again
    takes longer than painting it. Raises YardwrightError when it cannot be written.
    """
    height, width = pixels.shape[:2]
    opacity = pixels[:, :, 3:].astype(np.uint16)
    colours = pixels[:, :, :3]
    if (opacity < 255).any():
        colours = ((colours * opacity + 255 * (255 - opacity) + 127) // 255).astype(np.uint8)
    data = np.ascontiguousarray(colours)
    image = QImage(data.data, width, height, 3 * width, QImage.Format.Format_RGB888)
    with written_beside(path) as draft:
        if not image.save(draft, "BMP"):
            raise YardwrightError(
                say("“{path}” could not be written.", path=path),
                say("Check that there is room on the disk and try again."),
            )
    return path
