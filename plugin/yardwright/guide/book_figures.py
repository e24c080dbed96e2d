"""The figures of a course and its events, as a page prints them: what the expressions of layouts look up.

Every figure comes from the tables that ``measure`` makes, whole and in the course's unit, so that a text
never disagrees with a table.

QGIS imports this at its start: what is heavy is imported where it is used.
"""

from threading import RLock

from ..model.errors import YardwrightError
from ..model.words import or_list, say


class NotThere(LookupError):
    """What is asked for is not in the book; the text says what."""


class BookFigures:
    """Looks up figures of a model Course and its Events.

    index: the course's CourseIndex, where there is one. tables: ``{hole: its tables}`` of the very course
    that are known already; those measured are added. Holes and pins are measured when they are first asked
    for; threads may ask at once.
    """

    def __init__(self, course, events=(), index=None, tables=None):
        self.course = course
        self.events = tuple(events)
        self._index = index
        self._lock = RLock()
        self._tables, self._pins = {} if tables is None else tables, {}

    @property
    def unit(self):
        """``yd`` or ``m``."""
        return self.course.settings.unit

    # Holes

    def hole(self, number):
        """The model Hole of a number. Raises NotThere."""
        found = self.course.hole(number)
        if found is None:
            raise NotThere(say("Hole {number} is not in the course.", number=number))
        return found

    def length(self, number, tee_set):
        """From the tee to the green's middle."""
        rows = self._rows(number, "lengths")
        row = next((row for row in rows if _same(row.tee_set, tee_set)), None)
        if row is None:
            raise NotThere(
                say("Hole {number} has no tee set “{tee_set}”.", number=number, tee_set=tee_set)
                + " "
                + _choice(row.tee_set for row in rows)
            )
        return self._told(row.length, row.remark, number)

    def lengths(self, number):
        """``[(tee set, length)]`` in the order of the course's tee sets, those that are measured."""
        order = {one.name: one.sort for one in self.course.tee_sets}
        rows = [row for row in self._rows(number, "lengths") if row.length is not None]
        rows.sort(key=lambda row: (order.get(row.tee_set, len(order)), -row.length, row.tee_set))
        return [(row.tee_set, self._whole(row.length)) for row in rows]

    def total(self, tee_set):
        """The lengths of all holes of a tee set as they are printed, added up."""
        return sum(self.length(hole.number, tee_set) for hole in self.course.holes)

    def to_green(self, number, tee_set, where):
        """From the tee to the green's ``reach`` (front), ``middle`` or ``clear`` (back)."""
        rows = [row for row in self._from_tee(number, tee_set) if row.kind == "green"]
        if not rows:
            raise NotThere(say("Hole {number} has no green.", number=number))
        return self._told(getattr(rows[0], where), rows[0].remark, number)

    def to_feature(self, number, tee_set, label, where):
        """From the tee to ``reach`` or ``clear`` what is called ``label``, or along the line of play to where
        it begins to ``enter`` or ``leave`` it; of several the nearest."""
        rows = [row for row in self._from_tee(number, tee_set) if row.kind != "green"]
        named = [row for row in rows if _same(row.label, label)]
        if not named:
            raise NotThere(
                say("Nothing on hole {number} is called “{label}”.", number=number, label=label)
                + " "
                + _choice(row.label for row in rows)
            )
        return self._told(getattr(named[0], where), named[0].remark, number)

    def green(self, number, what):
        """``depth`` or ``width`` of the green."""
        row = self._rows(number, "greens")[0]
        return self._told(getattr(row, what), row.remark, number)

    def _from_tee(self, number, tee_set):
        self.length(number, tee_set)  # says which sets there are
        return [row for row in self._rows(number, "distances") if _same(row.tee_set, tee_set)]

    def tables(self, number):
        """All tables of a hole as ``measure_hole`` gives them. Raises NotThere."""
        from ..measure.course import measure_hole

        self.hole(number)
        with self._lock:
            if number not in self._tables:
                self._tables[number] = measure_hole(self.course, number, self._of_course())
            return self._tables[number]

    def _rows(self, number, table):
        return self.tables(number).get(table, ())

    def _of_course(self):
        if self._index is None:
            from ..measure.hole import CourseIndex

            self._index = CourseIndex(self.course)
        return self._index

    # Events

    def event(self, name):
        """The model Event of a name. Raises NotThere."""
        found = next((one for one in self.events if _same(one.name, name)), None)
        if found is None:
            raise NotThere(
                say("There is no event “{event}”.", event=name)
                + " "
                + _choice(one.name for one in self.events)
            )
        return found

    def pin(self, event, number, hole):
        """The PinRow of an event's round on a hole."""
        from ..measure.pins import pin_rows

        event = self.event(event)
        self.hole(hole)
        with self._lock:
            if event.name not in self._pins:
                rows = pin_rows(self.course, event, self._of_course())[0]
                self._pins[event.name] = {(row.round, row.hole): row for row in rows}
            row = self._pins[event.name].get((number, hole))
        if row is None:
            raise NotThere(
                say(
                    "“{event}” has no pin of round {round} on hole {hole}.",
                    event=event.name,
                    round=number,
                    hole=hole,
                )
            )
        return row

    def pin_figure(self, event, number, hole, what):
        """``on`` or ``off`` of a pin."""
        row = self.pin(event, number, hole)
        return self._told(getattr(row, what), row.remark, hole)

    def asked(self, event, number, flight, hole):
        """How long a hole shall play for a flight in a round."""
        event = self.event(event)
        self.hole(hole)
        for one in event.lengths:
            if (one.round, one.hole) == (number, hole) and _same(one.flight, flight):
                return self._whole(one.length)
        raise NotThere(
            say(
                "“{event}” asks for no length of hole {hole} for “{flight}” in round {round}.",
                event=event.name,
                hole=hole,
                flight=flight,
                round=number,
            )
        )

    # Figures

    def _whole(self, metres):
        from ..measure.units import to_unit, whole

        return whole(to_unit(metres, self.unit))

    def _told(self, metres, remark, number):
        figure = self._whole(metres)
        if figure is None:
            raise NotThere(
                say(
                    "Not measured on hole {number}: {reason}.",
                    number=number,
                    reason=remark or say("it is not drawn"),
                )
            )
        return figure


def _same(one, other):
    return str(one).strip().casefold() == str(other).strip().casefold()


def _choice(names):
    names = sorted({name for name in names if name})
    return say("There is {names}.", names=or_list([f"“{name}”" for name in names])) if names else ""


# Which book is in hand


class _InHand:
    """The book that expressions look into: the one a page is being made of, else what the desk gives."""

    def __init__(self):
        self.made_of = []
        self.look = None


_in_hand = _InHand()


def book_in_hand():
    """The BookFigures that expressions look into. Raises YardwrightError when there is none."""
    if _in_hand.made_of:
        return _in_hand.made_of[-1]
    found = None if _in_hand.look is None else _in_hand.look()
    if found is None:
        raise YardwrightError(
            say("There is no course to look figures up in."), say("Open a course, or make a page of one.")
        )
    return found


class made_of:
    """While a ``with`` block runs, expressions look into this BookFigures, in all threads."""

    def __init__(self, book):
        self.book = book

    def __enter__(self):
        _in_hand.made_of.append(self.book)
        return self.book

    def __exit__(self, *reason):
        _in_hand.made_of.remove(self.book)


def look_into(look):
    """Let expressions look into what ``look()`` gives, a BookFigures or None, while no page is being made; a
    callable that ends it. ``look`` is called in whatever thread an expression is evaluated in."""
    _in_hand.look = look

    def look_away():
        if _in_hand.look is look:
            _in_hand.look = None

    return look_away
