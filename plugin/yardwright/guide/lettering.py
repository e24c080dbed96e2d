"""The letters of a printed sheet: which font, how wide a text runs, and days as people write them."""

from functools import lru_cache

from qgis.PyQt.QtCore import QDate, QLocale, Qt
from qgis.PyQt.QtGui import QFont, QFontInfo, QFontMetricsF

MM_PER_POINT = 25.4 / 72
_FAMILIES = ("Arial", "Liberation Sans", "DejaVu Sans Condensed", "Noto Sans", "DejaVu Sans")
"""Plain ones with figures that are told apart at arm's length; the first that is there is taken."""
_MEASURED_AT = 1000


def font_of(size, bold=False):
    """The QFont of a sheet's text; size: points."""
    font = _font(bold)
    font.setPointSizeF(size)
    return font


def width_of(text, size, bold=False):
    """How wide a text runs, millimetres; size: points. Needs a QGuiApplication."""
    return _width(text, bold) * size * MM_PER_POINT


def parts_of_word(word, width, size, bold=False):
    """The parts of a word that each fit into a width in mm, as few as may be, of one letter at least."""
    parts = []
    while width_of(word, size, bold) > width and len(word) > 1:
        cut = _letters_within(word, width, size, bold)
        parts.append(word[:cut])
        word = word[cut:]
    return [*parts, word]


def _letters_within(word, width, size, bold):
    """How many letters of a word fit into a width in mm, one at least."""
    low, high = 1, len(word) - 1
    while low < high:
        middle = (low + high + 1) // 2
        if width_of(word[:middle], size, bold) <= width:
            low = middle
        else:
            high = middle - 1
    return low


def day(iso):
    """An ISO day in the user's own way of writing; what is no day comes back as it is.

    >>> day("soon")
    'soon'
    """
    date = QDate.fromString(iso, Qt.DateFormat.ISODate)
    return QLocale().toString(date, QLocale.FormatType.LongFormat) if date.isValid() else iso


def _font(bold):
    font = QFont(_family())
    font.setBold(bold)
    # At a printer's resolution letters need no fitting to pixels; fitted ones would be wider here than there.
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    font.setStyleStrategy(QFont.StyleStrategy.PreferOutline)
    return font


@lru_cache(maxsize=1)
def _family():
    return next((name for name in _FAMILIES if QFontInfo(QFont(name)).family() == name), "Sans Serif")


@lru_cache(maxsize=4096)
def _width(text, bold):
    """The same as a share of the size."""
    font = _font(bold)
    font.setPixelSize(_MEASURED_AT)
    return QFontMetricsF(font).horizontalAdvance(text) / _MEASURED_AT
