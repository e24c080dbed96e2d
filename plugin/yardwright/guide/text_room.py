"""Whether a text fits its box on a page, how small it must be set, and which letters no font here has.

Lines are broken as Qt breaks them, so right-to-left texts and those written without spaces are measured too.
"""

import math
import re
import unicodedata
from functools import lru_cache

from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtGui import QFontMetricsF, QTextLayout, QTextOption

from .lettering import MM_PER_POINT, font_of, parts_of_word
from .sheet_parts import LEAST_SIZE

_PIXELS = 200
"""Letters are measured at this size."""
_SPARE = 0.98
"""Of a box's width, for QGIS lays a label's text out on its own grid."""
_STEP = 0.25
_UNSEEN = ("Cc", "Cf", "Mn", "Me")
"""Categories of characters that show nothing, or only together with another."""


def room_for(text, box, size, bold=False):
    """How many more lines a box would hold below a text set at a size, negative where it is too long.

    box: (width, height) in mm; size: points. Needs a QGuiApplication.
    """
    width, height = box
    return math.floor(height / line_height(size, bold) + 1e-6) - lines_of(text, width, size, bold)


def fitting_size(text, box, size, bold=False):
    """``(size, lines left)``: the largest size in points, at most ``size`` and at least 6, at which a text
    fits; where even the least is too much, lines left tells how many are over, as a negative number."""
    while True:
        left = room_for(text, box, size, bold)
        if left >= 0 or size <= LEAST_SIZE:
            return size, left
        size = max(size - _STEP, LEAST_SIZE)


def line_height(size, bold=False):
    """From line to line, millimetres."""
    return _metrics(bold).lineSpacing() / _PIXELS * size * MM_PER_POINT


def lines_of(text, width, size, bold=False):
    """How many lines of a width in mm a text takes, one at least; an empty text none.

    A word that is wider than a line counts as several, although QGIS would not break it.
    """
    text = str(text or "")
    if not text.strip():
        return 0
    room = width * _SPARE / (size * MM_PER_POINT) * _PIXELS
    return sum(_lines(paragraph, room, bold) for paragraph in text.split("\n"))


def words_broken(text, width, size, bold=False):
    """A text with line breaks within words that are wider than a line of ``width`` mm: QGIS would let them
    run out of their box."""

    return re.sub(
        r"\S+", lambda found: "\n".join(parts_of_word(found[0], width, size, bold)), str(text or "")
    )


def missing_letters(text, bold=False):
    """The characters of a text that no font of this computer draws, each once, in order."""
    return "".join(one for one in dict.fromkeys(str(text or "")) if not _drawn(one, bold))


def _lines(paragraph, room, bold):
    layout = _layout(paragraph, bold)
    layout.beginLayout()
    count = 0
    while True:
        line = layout.createLine()
        if not line.isValid():
            break
        line.setLineWidth(room)
        count += 1
    layout.endLayout()
    return max(count, 1)


def _layout(text, bold):
    layout = QTextLayout(text, _font(bold))
    option = QTextOption()
    option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
    option.setTextDirection(Qt.LayoutDirection.LayoutDirectionAuto)
    layout.setTextOption(option)
    return layout


@lru_cache(maxsize=4096)
def _drawn(character, bold):
    if character.isspace() or unicodedata.category(character) in _UNSEEN:
        return True
    layout = _layout(character, bold)
    layout.beginLayout()
    layout.createLine().setLineWidth(1e6)
    layout.endLayout()
    # The glyph 0 of every font is the box that stands for what it has not.
    runs = layout.glyphRuns()
    return bool(runs) and all(0 not in run.glyphIndexes() for run in runs)


@lru_cache(maxsize=2)
def _metrics(bold):
    return QFontMetricsF(_font(bold))


def _font(bold):
    font = font_of(10.0, bold)
    font.setPixelSize(_PIXELS)
    return font
