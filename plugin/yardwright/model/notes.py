"""What many sources say of a hole, as plain frozen values."""

from dataclasses import dataclass

from .words import to_say

SOURCES = (
    to_say("course"),
    to_say("professional"),
    to_say("player"),
    to_say("own visit"),
    to_say("other"),
)
"""Who usually writes notes; other words are as good."""


@dataclass(frozen=True)
class Note:
    """A note. hole: its number, None where it is given to none. written: ISO day. place: (x, y) in the
    course's CRS, None of one that was written without a place. picture: path of a photograph, from the course
    file's folder or absolute. looks_towards: degrees clockwise from north that it was taken towards, None
    unknown. origin: where it was brought in from, for a message."""

    text: str = ""
    hole: int = None
    source: str = ""
    written: str = ""
    place: tuple = None
    picture: str = ""
    looks_towards: float = None
    origin: str = ""
