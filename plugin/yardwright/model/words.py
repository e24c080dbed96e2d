"""Texts of the rooms that know nothing of QGIS, in the user's language once ``speak`` has told how."""

_in_users_language = str


def say(text, **values):
    """``text``, a literal, in the user's language, with the named ``values`` put in."""
    return _in_users_language(text).format(**values)


def to_say(text):
    """``text`` as it is, marked for translation: it is said later, by ``say`` or ``tr`` of a variable."""
    return text


def speak(translate=None):
    """Translate by ``translate(text)`` from now on; None speaks plain English again."""
    global _in_users_language
    _in_users_language = translate or str
