"""The Quernhallow Cup: an invented event of three rounds, with what its committee hands in.

``pins.csv`` and ``lengths.csv`` are the committee's. The pins of two rounds are drawn, all but two of them as
they stand there.
"""

import os
from dataclasses import replace

from yardwright.measure.units import YARD
from yardwright.model.event import Event, Flight, Limits, Round
from yardwright.store.committee import read_lengths, read_pins

FOLDER = os.path.dirname(os.path.abspath(__file__))
PINS = os.path.join(FOLDER, "pins.csv")
LENGTHS = os.path.join(FOLDER, "lengths.csv")
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
