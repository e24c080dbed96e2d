"""A made-up language for tests: English in capitals, so that what is not said in it shows."""

import re

_PLACE = re.compile(r"(\{[^}]*\})")


def loud(text):
    """``text`` in capitals, its named places left as they are."""
    return "".join(part if _PLACE.fullmatch(part) else part.upper() for part in _PLACE.split(text))


def left_over(text, *data):
    """The words of a text that are in small letters and neither a unit nor ``data``: names of fields..."""
    known = {"yd", "sq", "m", *data}
    return [word for word in re.findall(r"[A-Za-z_]*[a-z][A-Za-z_]*", text) if word not in known]
