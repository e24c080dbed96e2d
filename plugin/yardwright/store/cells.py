"""Texts in the cells of a table, safe to open with a spreadsheet."""

_STARTS = tuple("=+-@\t\r\n＝＋－＠")
"""What makes a spreadsheet take a cell for a formula; the wide forms count in East Asian editions."""


def guarded(text):
    """``text`` so that no spreadsheet runs it: an apostrophe before what looks like a formula.

    A number stays as it is. ``bare`` takes the apostrophe off again.

    >>> [guarded(text) for text in ("=1+1", "-5", "-Blue", "'=x", "5 = 5")]
    ["'=1+1", '-5', "'-Blue", "''=x", '5 = 5']
    """
    inside = text.lstrip(" '")
    if not inside.startswith(_STARTS) and not text.startswith(_STARTS):
        return text
    return text if _is_number(text) else "'" + text


def bare(text):
    """The text that ``guarded`` wrote as ``text``.

    >>> [bare(text) for text in ("'=1+1", "-5", "''=x", "'tis")]
    ['=1+1', '-5', "'=x", "'tis"]
    """
    return text[1:] if text.startswith("'") and guarded(text[1:]) == text else text


def _is_number(text):
    try:
        float(text)
    except ValueError:
        return False
    return text == text.strip() and text.isascii() and "_" not in text
