"""An audit of an event's pins in hand: what differs, what was decided on it, and the decisions written."""

from collections import Counter
from dataclasses import dataclass, replace

from ..measure.pin_audit import EXTRA, IMPOSSIBLE, SAME, audit_pins
from ..measure.pins import figures_of, follow_in, pin_rows
from ..measure.rows import PinAuditRow
from ..measure.units import to_unit
from ..model.errors import YardwrightError
from ..store.committee import read_pins
from ..store.events import Decision, log_decision, read_decisions, write_pins
from .editing import checked, one_step
from .pin_table import side_word, slope_text
from .terrains import heights_in
from .words import tr

THEIRS, OURS = "theirs", "ours"


@dataclass(frozen=True)
class AuditLine:
    """A PinAuditRow with both sides' figures as texts, "" where a side has none.

    side: what ours counts from. may_be_theirs: whether the committee's figures can be taken. earlier: the
    Decision that was taken on these very figures before, or None. slope: how the ground falls at ours.
    theirs_at, ours_at: (x, y) in the course's CRS, None for a side without a place.
    """

    row: PinAuditRow
    theirs: str = ""
    ours: str = ""
    may_be_theirs: bool = False
    earlier: Decision = None
    slope: str = ""
    theirs_at: tuple = None
    ours_at: tuple = None

    @property
    def key(self):
        """(round, hole): what is decided on."""
        return self.row.round, self.row.hole

    @property
    def differs(self):
        """Whether there is something to decide."""
        return self.row.verdict != SAME


class Audit:
    """The audit of one event of the course in hand. Nothing is written before ``apply``.

    ``lines``: AuditLines; ``bad``: ``(line, reason)`` of what could not be read; ``left_aside``: rounds with
    pins drawn of which the committee's figures say nothing; ``decided``: ``{(round, hole): THEIRS or OURS}``.
    Several lines for one round and hole are decided on together.
    """

    def __init__(self, in_hand, event):
        self.in_hand = in_hand
        self.name, self._fid = event.name, event.fid
        self.given = ()
        self.lines = ()
        self.bad = ()
        self.left_aside = ()
        self.decided = {}
        self.was_read = False

    @property
    def event(self):
        """The model Event as it is drawn now, by its other name too. Raises YardwrightError when it is
        gone."""
        event = self.in_hand.find_event(self.name, self._fid)
        if event is None:
            raise YardwrightError(
                tr("The course has no event “{}” any more.").format(self.name),
                tr("Undo its removal, or close the audit."),
            )
        self.name, self._fid = event.name, event.fid
        return event

    def is_there(self):
        """Whether the course still has the event."""
        return self.in_hand.find_event(self.name, self._fid) is not None

    @property
    def unit(self):
        """The course's unit."""
        return self.in_hand.course().settings.unit

    def decisions(self):
        """The Decisions taken on this event's pins, the last one first."""
        return tuple(reversed(read_decisions(self.in_hand.layers(), self.name)))

    def read(self, source):
        """Audit the committee's figures: the path of a file, or the text of copied rows.

        Rounds and holes that are not there are read too, for the audit to say so. Raises YardwrightError.
        """
        self.given, self.bad = read_pins(source, self.unit)
        self.was_read = True
        self.decided = {}
        self.look_again()

    def look_again(self):
        """Audit the figures read before against what is drawn now."""
        event = self.event
        rounds = {pin.round for pin in self.given}
        self.left_aside = tuple(sorted({pin.round for pin in event.pins} - rounds))
        asked = replace(event, pins=tuple(pin for pin in event.pins if pin.round in rounds))
        course, index = self.in_hand.course(), self.in_hand.index()
        rows = audit_pins(course, asked, self.given, index=index)
        impossible = {(row.round, row.hole) for row in rows if row.verdict == IMPOSSIBLE}
        earlier = {}
        for decision in self.decisions():
            earlier.setdefault((decision.round, decision.hole), decision)
        sides = _Sides(course, index, event, self.given)
        slopes = self._slopes(asked)
        lines = (
            _line(row, sides, self.unit, (row.round, row.hole) not in impossible, earlier) for row in rows
        )
        self.lines = tuple(
            replace(line, slope=slopes.get(line.key, "") if line.ours else "") for line in lines
        )
        still = {line.key for line in self.lines if line.differs}
        self.decided = {key: side for key, side in self.decided.items() if key in still}

    def _slopes(self, event):
        """``{(round, hole): how the ground falls}`` at the pins drawn, of those there is only one of."""
        with heights_in(self.in_hand.project) as terrain:
            if terrain is None:
                return {}
            rows, _ = pin_rows(self.in_hand.course(), event, self.in_hand.index(), terrain)
        times = Counter((row.round, row.hole) for row in rows)
        return {(row.round, row.hole): slope_text(row) for row in rows if times[row.round, row.hole] == 1}

    def decide(self, lines, side):
        """Decide on AuditLines: THEIRS, OURS or None, which takes it back. Those that cannot be are left."""
        for line in lines:
            if side is None:
                self.decided.pop(line.key, None)
            elif line.differs and (side == OURS or line.may_be_theirs):
                self.decided[line.key] = side

    def all_for(self, side):
        """The lines that all together may be decided for a side: those nothing was decided on before.

        Where lines of the committee's could not be read, a pin may only look as if nobody had asked for it:
        such a one is not taken out with all the others.
        """
        doubtful = bool(self.bad) and side == THEIRS
        return [
            line
            for line in self.lines
            if line.earlier is None and not (doubtful and line.row.verdict == EXTRA)
        ]

    def apply(self, layers_to_write, by):
        """Write what was decided, and log it as decided ``by``; ``(how many taken over, kept, the Step)``.

        layers_to_write: gives the CourseLayers, being edited. All or nothing, one step to undo.
        """
        decided = dict(self.decided)
        pins, points, out = self._changes({key for key, side in decided.items() if side == THEIRS})
        logged = self._log(decided, by)
        layers = layers_to_write()
        kinds = ["pin_decision", *(["pin"] if pins or out else [])]
        with one_step(tr("Audit pins"), *(layers.layers[kind] for kind in kinds)) as step:
            for decision in logged:
                log_decision(layers, decision)
            if out:
                checked(layers.layers["pin"].deleteFeatures(out), layers.layers["pin"])
            if pins:
                write_pins(layers, self.name, pins, points)
        self.decided = {}
        self.look_again()
        taken = sum(side == THEIRS for side in decided.values())
        return taken, len(decided) - taken, step

    def _changes(self, keys):
        """``(pins, points, ids of pins to take out)`` that make the committee's figures of ``keys`` true."""
        course, index = self.in_hand.course(), self.in_hand.index()
        pins = [pin for pin in self.given if (pin.round, pin.hole) in keys]
        points = [follow_in(course, index, pin).point for pin in pins]
        gone = keys - {(pin.round, pin.hole) for pin in pins}
        out = [pin.fid for pin in self.event.pins if (pin.round, pin.hole) in gone and pin.fid is not None]
        return pins, points, out

    def _log(self, decided, by):
        """Decisions for the log: one for each line that differs and was decided on."""
        return [
            Decision(self.name, *line.key, decided[line.key], by.strip(), given=line.theirs, drawn=line.ours)
            for line in self.lines
            if line.differs and line.key in decided
        ]

    # On paper

    def write_table(self, folder):
        """Write the whole audit as ``pin_audit.csv`` into a folder; its path."""
        from ..store.tables import write_tables

        rows = [line.row for line in self.lines]
        (path,) = write_tables(folder, {"pin_audit": (PinAuditRow, rows)}, self.unit)
        return path

    def write_sheet(self, path):
        """Write the event's greens with their pins as they are drawn now, as a PDF."""
        from ..guide.painted_sheets import write_sheet
        from ..guide.sheets import audit_sheet

        course, index = self.in_hand.course(), self.in_hand.index()
        with heights_in(self.in_hand.project) as terrain:
            rows, _ = pin_rows(course, self.event, index, terrain)
        write_sheet(audit_sheet(course, self.event, rows, index=index), path)


class _Sides:
    """What the rows of an audit have no column for: where both pins lie, and from which side the figures of
    the drawn one are counted."""

    def __init__(self, course, index, event, given):
        self.course, self.index = course, index
        self.drawn, self.given = _by_key(event.pins), _by_key(given)

    def ours(self, row):
        """``(left, right or centre, point)`` of the drawn pin; "" and None without one."""
        if row.drawn_on is None or row.drawn_off is None:
            return "", None
        for pin in self.drawn.get((row.round, row.hole), ()):
            on, off, side, point = self._drawn(pin, row.given_off_from)
            if (on, off) == (row.drawn_on, row.drawn_off):
                return side, point
        return row.given_off_from, None

    def theirs(self, row):
        """The point of the committee's figures, None where they have none."""
        for pin in self.given.get((row.round, row.hole), ()):
            placed = follow_in(self.course, self.index, pin)
            if (placed.on, placed.off, placed.off_from) == (row.given_on, row.given_off, row.given_off_from):
                return placed.point
        return None

    def _drawn(self, pin, given_side):
        by = pin.given if pin.point is None else "point"
        placed = follow_in(self.course, self.index, replace(pin, given=by))
        if placed.place is None:
            return pin.on, pin.off, pin.off_from, placed.point
        return (*figures_of(placed.place, given_side or pin.off_from), placed.point)


def _by_key(pins):
    """Pins by (round, hole)."""
    found = {}
    for pin in pins:
        found.setdefault((pin.round, pin.hole), []).append(pin)
    return found


def _line(row, sides, unit, possible, earlier):
    theirs = _figures(row.given_on, row.given_off, row.given_off_from, unit)
    side, ours_at = sides.ours(row)
    ours = _figures(row.drawn_on, row.drawn_off, side, unit)
    places = {"theirs_at": sides.theirs(row), "ours_at": ours_at}
    line = AuditLine(row, theirs, ours, possible and row.verdict != SAME, **places)
    before = earlier.get(line.key)
    same = before is not None and (before.given, before.drawn) == (theirs, ours)
    return replace(line, earlier=before if same else None)


def _figures(on, off, side, unit):
    """A pin's figures as a committee says them, "" without any."""
    if on is None or off is None:
        return ""
    on, off = (f"{round(to_unit(one, unit), 1) + 0.0:g}" for one in (on, off))
    return tr("{} on, {} from {}").format(on, off, side_word(side))
