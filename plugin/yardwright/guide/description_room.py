"""How much room a hole's page has for what is said of the hole."""

import math

from .drawing import lines_within
from .hole_page import hole_page_frames
from .sheet_parts import LEAST_SIZE


def lines_left(text, size_mm, form="pages"):
    """How many more lines a hole's description may have on a page of (width, height) mm, negative where it is
    cut short there.

    Counted in the least letters, which ``hole_page`` takes before it leaves anything out: what the marks mean
    gives way to it. Raises YardwrightError for a page that is too small.
    """
    _, _, width, height = hole_page_frames(size_mm, form)["notes"]
    said = [part for part in text.split("\n") if part.strip()]
    lines, _, _ = lines_within(said, width, math.inf, LEAST_SIZE)
    many = ["x"] * 10_000
    room, _, _ = lines_within(many, width, height, LEAST_SIZE)
    return len(room) - len(lines)
