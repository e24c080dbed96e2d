"""By which names one source of pictures goes; nothing heavy is imported here, for the desk uses it."""

import os
from urllib.parse import parse_qs


def kept_as(path, folder):
    """A path as a course keeps it whose file lies in ``folder``: from there where it lies below, else as it
    is. A path is followed through links first; "" for no folder."""
    inside, home = os.path.realpath(path), os.path.realpath(folder) if folder else ""
    if home and os.path.normcase(inside).startswith(os.path.normcase(os.path.join(home, ""))):
        return os.path.relpath(inside, home).replace(os.sep, "/")
    return path


def names_of(source, folder=""):
    """All that one source goes by, a set of texts: itself, its real path, the address of its tiles.

    >>> sorted(names_of("type=xyz&url=https%3A%2F%2Ftiles.example%2F{z}%2F{x}%2F{y}.png&zmax=19"))[0]
    'https://tiles.example/{z}/{x}/{y}.png'
    """
    text = str(source or "").strip()
    if not text:
        return set()
    names = {text}
    given = parse_qs(text)
    if "url" in given:
        # A server of maps has many layers at one address; one of tiles has one.
        names.add(" ".join([*given["url"], *given.get("layers", [])]))
    elif "://" not in text:
        names.add(os.path.normcase(os.path.realpath(os.path.join(folder, text))))
    return names
