"""An event as plain frozen values: its rounds and flights, the lengths asked for, and its pins.

Lengths are metres, whatever the committee wrote them in. ``line`` is the line of the committee's file that a
value was read from, None for one that is drawn or typed.
"""

from dataclasses import dataclass, field

from .words import to_say

SIDES = (to_say("left"), to_say("right"), to_say("centre"))
"""What the figure *off* of a pin counts from: a margin, or the line of approach."""
STARTS = (to_say("one tee"), to_say("two tees"), to_say("shotgun"))


@dataclass(frozen=True)
class Limits:
    """What the committee wants kept. A pin or tee that does not is remarked on, and never moved for it.

    margin: least metres from a hole to the green's margin; 4 yd (Course Rating Manual; R&A, Guidance on
    Running a Competition: four paces). slope_pct: the steepest ground at a hole, None for no limit. apart:
    least metres from an earlier round's hole; 3 paces of a yard (the same guidance). tolerance: metres that
    the committee's figures and a drawn pin may differ by. wear: least metres between the places of tee
    markers in different rounds, 0 for no matter.
    """

    margin: float = 4 * 0.9144
    slope_pct: float = None
    apart: float = 3 * 0.9144
    tolerance: float = 0.5 * 0.9144
    wear: float = 0.0


@dataclass(frozen=True)
class Pin:
    """A hole location of one round.

    on: metres from the green's front along the approach. off: metres in from the margin named by off_from,
    or right of the approach line where that is ``centre``; None where only the point is known. given:
    ``figures`` or ``point``, which of the two it was given by and follows. point: (x, y) in the course's
    CRS, None while it is not placed. green_depth: the committee's own figure of the green's depth, metres,
    None without.
    """

    event: str
    round: int
    hole: int
    on: float = None
    off: float = None
    off_from: str = ""
    given: str = "figures"
    point: tuple = None
    fid: int = None
    note: str = ""
    green_depth: float = None
    line: int = None


@dataclass(frozen=True)
class AskedLength:
    """How long a hole shall play for a flight in a round, metres."""

    round: int
    flight: str
    hole: int
    length: float
    line: int = None


@dataclass(frozen=True)
class Round:
    """A round. holes: the numbers in the order of play, () for all of the course in their own order. start:
    one of STARTS; it changes the order in which groups play, never a figure."""

    number: int
    played_on: str = ""
    holes: tuple = ()
    start: str = "one tee"


@dataclass(frozen=True)
class Flight:
    """A group of players who play the same lengths, from one tee set ("" where that is not said)."""

    name: str
    tee_set: str = ""


@dataclass(frozen=True)
class Event:
    """All of one event. begins, ends: ISO days, "" where not said. host: who invites, in a few lines.
    rules_off: keys of the rules on a guide's pages that do not apply to it, see ``guide.rules``. fid: the id
    of its own row, or None."""

    name: str
    begins: str = ""
    ends: str = ""
    rounds: tuple = ()
    flights: tuple = ()
    lengths: tuple = ()
    pins: tuple = ()
    limits: Limits = field(default_factory=Limits)
    host: str = ""
    rules_off: tuple = ()
    fid: int = field(default=None, compare=False)

    def round(self, number):
        """The Round of that number, or None."""
        return next((one for one in self.rounds if one.number == number), None)

    def plays(self, number, hole):
        """Whether a round plays a hole; one that is not set out is taken to play them all."""
        held = self.round(number)
        return held is None or not held.holes or hole in held.holes

    def holes_in_play(self, numbers):
        """Those of the hole numbers that some round plays; all of them while there is no round."""
        rounds = [one.number for one in self.rounds]
        return tuple(hole for hole in numbers if not rounds or any(self.plays(one, hole) for one in rounds))
