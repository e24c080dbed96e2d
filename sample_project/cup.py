"""The Quernhallow Cup: an invented event of three rounds, with what its committee hands in.

``pins.csv`` and ``lengths.csv`` are the committee's. The pins of two rounds are drawn, all but two of them as
they stand there.
"""

import os
from dataclasses import replace

from yardwright.measure.units import YARD
from yardwright.model.event import Event, Flight, Limits, Round
from yardwright.model.guide_pages import GuidePage
from yardwright.store.committee import read_lengths, read_pins

FOLDER = os.path.dirname(os.path.abspath(__file__))
PINS = os.path.join(FOLDER, "pins.csv")
LENGTHS = os.path.join(FOLDER, "lengths.csv")
SPONSOR = os.path.join(FOLDER, "sponsor.svg")
NAME = "Quernhallow Cup"
EVENT = Event(
    NAME,
    "2025-07-18",
    "2025-07-20",
    rounds=(
        Round(1, "2025-07-18", start="two tees"),
        Round(2, "2025-07-19", start="two tees"),
        Round(3, "2025-07-20"),
    ),
    flights=(Flight("Champions", "Black"), Flight("Seniors", "Yellow"), Flight("Ladies", "Red")),
    limits=Limits(slope_pct=3.0),
    host="The Quernhallow Golfers’ Society\nStarter’s hut, by the first tee",
)

DRAWN_OTHERWISE = {(1, 7): (10.0, 7.0, "left"), (2, 12): (20.0, 10.0, "right")}
"""(round, hole): on, off (yd) and margin of the pins that are not drawn as the committee has them."""


def given_pins():
    """The committee's Pins."""
    pins, _ = read_pins(PINS, event=NAME)
    return pins


def drawn_pins():
    """The Pins that are drawn, by their figures; none is placed yet."""
    pins = []
    for pin in given_pins():
        if (pin.round, pin.hole) in DRAWN_OTHERWISE:
            on, off, side = DRAWN_OTHERWISE[pin.round, pin.hole]
            pin = replace(pin, on=on * YARD, off=off * YARD, off_from=side)
        pins.append(pin)
    return tuple(pins)


def lengths():
    """The AskedLengths of the committee."""
    return read_lengths(LENGTHS)[0]


PAGES = (
    GuidePage("cover", event=NAME),
    GuidePage("event", event=NAME),
    GuidePage(
        "notices",
        text=(
            "**Report** to the starter ten minutes before your time.\n\n"
            "- The horn: *one long blast* stops play, two short ones resume it.\n"
            "- Carts stay on the paths at 4, 10 and 18.\n"
            "- On the double green of 9 and 18 the white flags are those of the 9th.\n\n"
            "## Pace\n\nFour hours and twenty minutes. From the 10th tee the lake side is slow: "
            "let groups through at the 12th, which measures [% hole_length(12, 'Black') %] from Black.\n"
        ),
        event=NAME,
    ),
    GuidePage(
        "local_rules",
        text=(
            "1. **Out of bounds** is beyond the boundary wall and the hedge of the 4th.\n"
            "2. **Red penalty areas**: the lake, the burn and the gorse of the 16th.\n"
            "3. **Yellow penalty area**: the stew pond of the 3rd.\n"
            "4. The standing stone of the 15th is part of the course: no relief.\n"
        ),
        event=NAME,
    ),
    GuidePage("scorecard", event=NAME),
    GuidePage("overview", event=NAME),
    GuidePage("holes", event=NAME),
    GuidePage("pins", event=NAME),
    GuidePage("sponsor", source="sponsor.svg", title="Fallowbeck", event=NAME),
    GuidePage("notes", event=NAME),
    GuidePage("imprint", event=NAME),
)
"""What the guide of the Cup holds, in its order; the sponsor is as invented as the rest."""
