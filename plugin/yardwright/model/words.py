"""What the floors without Qt say to the user, in the language the program speaks.

``say`` and ``to_say`` take a literal, for the list of texts to be translated is made from the sources. A text
is a whole sentence, or what stands alone in a table, with named places for what changes in it.
"""

_translate = None


def speak(translate=None):
    """From now on say what ``translate(text)`` makes of a text; None: plain English."""
    global _translate
    _translate = translate


def say(text, /, **values):
    """``text``, a literal, in the user's language, its named places filled in.

    >>> say("hole {number} has no green", number=7)
    'hole 7 has no green'
    """
    spoken = text if _translate is None else _translate(text)
    return spoken.format(**values) if values else spoken


def to_say(text):
    """``text`` as it is: a literal that ``said`` will give in the user's language where it is shown."""
    return text


def said(text):
    """A text that ``to_say`` has marked, in the user's language."""
    return text if _translate is None or not text else _translate(text)


def and_list(texts):
    """Texts as a list within a sentence; an empty text of none.

    >>> and_list(["one", "two", "three"])
    'one, two and three'
    """
    *most, last = [*texts] or [""]
    return say("{most} and {last}", most=", ".join(most), last=last) if most else last


def or_list(texts):
    """The same of texts of which one holds.

    >>> or_list(["3", "4"])
    '3 or 4'
    """
    *most, last = [*texts] or [""]
    return say("{most} or {last}", most=", ".join(most), last=last) if most else last
