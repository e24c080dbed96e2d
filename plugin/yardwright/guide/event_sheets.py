"""Which sheets an event has, each by a name: the desk shows them, Processing writes them, both from here."""

from contextlib import nullcontext
from dataclasses import dataclass

from ..measure.hole import CourseIndex
from ..measure.pins import pin_rows
from ..measure.tee_setting import set_tees
from ..model.words import said, say, to_say
from ..store.tables import safe_file_name
from .sheets import audit_sheet, hole_sheet, pin_sheet, pin_table, tee_sheet


@dataclass(frozen=True)
class Kind:
    """A kind of sheet. of: what each is about, ``round``, ``hole`` or ``event``; page: its usual one;
    heights: whether it usually tells them. Those for players do not: see ``sheets`` on Local Rules."""

    title: str
    of: str
    page: str = "A4"
    heights: bool = False


KINDS = {
    "greens": Kind(to_say("Pins of a round, on small greens"), "round"),
    "table": Kind(to_say("Pins of a round, as a table"), "round"),
    "hole": Kind(to_say("Pins of all rounds on one green"), "hole", "A6"),
    "audit": Kind(to_say("Audit sheet for the committee"), "event", heights=True),
    "tees": Kind(to_say("Tee sheet for the ground staff"), "round", heights=True),
}


class EventSheets:
    """The sheets of a model Event of a Course; pins and tees are worked out once for all of them.

    open_terrain: a function that gives a context with an ``imagery.terrain.Terrain``, None without heights.
    """

    def __init__(self, course, event, index=None, open_terrain=None):
        self.open_terrain = open_terrain
        self.look_at(course, event, index)

    def look_at(self, course, event, index=None):
        """Take another course and event, or what became of them."""
        self.course, self.event = course, event
        self.index = index or CourseIndex(course)
        self._pins, self._tees = {}, {}

    def pins(self, heights=False):
        """The event's PinRows; heights: whether with the slope at them."""
        if heights not in self._pins:
            with self._terrain(heights) as terrain:
                self._pins[heights] = tuple(pin_rows(self.course, self.event, self.index, terrain)[0])
        return self._pins[heights]

    def tees(self, heights=False):
        """The event's TeeSettingRows; heights: whether with the rise to the green."""
        if heights not in self._tees:
            with self._terrain(heights) as terrain:
                self._tees[heights] = set_tees(
                    self.course, self.event, self.event.lengths, self.index, terrain
                )
        return self._tees[heights]

    def _terrain(self, heights):
        return self.open_terrain() if heights and self.open_terrain is not None else nullcontext()

    def sheet(self, kind, number=None, page=None, heights=False):
        """A ``sheet_parts.Sheet``.

        kind: a key of KINDS. number: of the round or the hole it is about. page: a key of ``sheets.PAGES`` or
        (width, height) in mm; None: the usual one. heights: whether it tells how the ground falls at pins and
        rises to greens, where that is known. Raises YardwrightError when there is nothing to show.
        """
        page = page or KINDS[kind].page
        if kind == "audit":
            return audit_sheet(self.course, self.event, self.pins(heights), page, self.index)
        if kind == "tees":
            return tee_sheet(self.course, self.event, number, self.tees(heights), page)
        make = {"greens": pin_sheet, "table": pin_table, "hole": hole_sheet}[kind]
        return make(self.course, self.event, number, self.pins(heights), page, self.index)

    def file_name(self, kind, number=None):
        """The name of a sheet's file, told from those of other events, rounds and kinds; without a folder."""
        return file_name(self.event.name, kind, number)


def name_of(kind, number=None):
    """A sheet in a few words, for a message."""
    title = said(KINDS[kind].title)
    if KINDS[kind].of == "round":
        return say("{sheet}, round {number}", sheet=title, number=number)
    if KINDS[kind].of == "hole":
        return say("{sheet}, hole {number}", sheet=title, number=number)
    return title


def file_name(event_name, kind, number=None):
    """As of ``EventSheets.file_name``.

    >>> file_name("Heron Cup", "greens", 2), file_name("Heron Cup", "hole", 7), file_name("A/B", "audit")
    ('Heron Cup_round_2_greens.pdf', 'Heron Cup_hole_07.pdf', 'A_B_audit.pdf')
    """
    parts = {"round": f"_round_{number}_{kind}", "event": f"_{kind}"}
    about = f"_hole_{number:02d}" if KINDS[kind].of == "hole" else parts[KINDS[kind].of]
    return safe_file_name(event_name)[:80].rstrip(" ._") + about + ".pdf"
