"""An event while it is worked on in a dialog: nothing of it is written until its user says so."""

from dataclasses import replace

from ..model.errors import YardwrightError
from ..model.event import AskedLength, Flight, Round
from .words import tr


class EventDraft:
    """``flights``: ``{key: Flight}``, the key stays when the name changes. ``lengths``: ``{(round, key of the
    flight, hole): metres}``. ``rounds``: ``{number: Round}``. ``texts``: what was typed and is not
    understood, ``{(round number or None, field): (text, reason)}``. ``begins``, ``ends``, ``limits``,
    ``host``, ``rules_off``: as of an Event.
    """

    def __init__(self, event):
        self.stored = event
        self.begins, self.ends, self.limits = event.begins, event.ends, event.limits
        self.host, self.rules_off = event.host, event.rules_off
        self.rounds = {one.number: one for one in event.rounds}
        self.texts = {}
        self.flights = {}
        for flight in event.flights:
            self.add_flight(flight)
        self.lengths = {}
        for asked in event.lengths:
            self.set_length(asked.round, self.key_of(asked.flight), asked.hole, asked.length)
        self._begun = self.event()

    # Flights and lengths

    def add_flight(self, flight):
        """Its key."""
        key = max(self.flights, default=-1) + 1
        self.flights[key] = flight
        return key

    def key_of(self, name):
        """The key of the flight of that name, which is made if need be."""
        for key, flight in self.flights.items():
            if _plain(flight.name) == _plain(name):
                return key
        return self.add_flight(Flight(name))

    def take_out_flight(self, key):
        """With all its lengths."""
        del self.flights[key]
        self.lengths = {one: length for one, length in self.lengths.items() if one[1] != key}

    def set_length(self, number, key, hole, metres):
        """How long a hole shall play; None for the tee set's own length."""
        if metres is None:
            self.lengths.pop((number, key, hole), None)
        else:
            self.lengths[number, key, hole] = metres

    def bring(self, flights, lengths):
        """Take over AskedLengths, with ``flights`` (Flight) and rounds that are not there yet."""
        for flight in flights:
            if all(_plain(flight.name) != _plain(one.name) for one in self.flights.values()):
                self.add_flight(flight)
        for asked in lengths:
            self.rounds.setdefault(asked.round, Round(asked.round))
            self.set_length(asked.round, self.key_of(asked.flight), asked.hole, asked.length)
        self.rounds = dict(sorted(self.rounds.items()))

    def asked(self, numbers=None):
        """The AskedLengths of rounds, of all without ``numbers``."""
        return tuple(
            AskedLength(number, self.flights[key].name, hole, length)
            for (number, key, hole), length in sorted(self.lengths.items())
            if numbers is None or number in numbers
        )

    # Rounds and days

    def add_round(self):
        """The number of the round that was added."""
        number = max(self.rounds, default=0) + 1
        self.rounds[number] = Round(number)
        return number

    def take_out_round(self, number):
        """With its lengths. Raises YardwrightError where pins are placed for it."""
        pins = sum(pin.round == number for pin in self.stored.pins)
        if pins:
            raise YardwrightError(
                tr("Round {} cannot be taken out, for it has pins: {}.").format(number, pins),
                tr("Take its pins out first, then the round."),
            )
        del self.rounds[number]
        self.lengths = {one: length for one, length in self.lengths.items() if one[0] != number}
        self.texts = {key: text for key, text in self.texts.items() if key[0] != number}

    def type(self, number, field, text, course_holes=()):
        """Take over what was typed: ``played_on``, ``holes`` or ``start`` of a round, ``begins`` or ``ends``
        of the event (number None). What is not understood is kept in ``texts`` and changes nothing."""
        self.texts.pop((number, field), None)
        try:
            value = _holes(text, course_holes) if field == "holes" else text
            value = _day(text) if field in ("played_on", "begins", "ends") else value
        except YardwrightError as error:
            self.texts[number, field] = text, str(error)
            return
        if number is None:
            setattr(self, field, value)
        else:
            self.rounds[number] = replace(self.rounds[number], **{field: value})

    def shown(self, number, field):
        """What a cell shows: what was typed there last, understood or not."""
        from ..model.numbers import format_holes

        if (number, field) in self.texts:
            return self.texts[number, field][0]
        value = getattr(self if number is None else self.rounds[number], field)
        return format_holes(value) if field == "holes" else value

    # The whole

    def event(self):
        """The Event as it would be written; its pins are those that are stored."""
        return replace(
            self.stored,
            begins=self.begins,
            ends=self.ends,
            rounds=tuple(self.rounds.values()),
            flights=tuple(replace(one, name=one.name.strip()) for one in self.flights.values()),
            lengths=self.asked(),
            limits=self.limits,
            host=self.host.strip(),
            rules_off=self.rules_off,
        )

    def changed(self):
        """Whether anything was changed here."""
        return bool(self.texts) or not same_settings(self.event(), self._begun)

    def problems(self):
        """Why it cannot be written, sentences."""
        found = [reason for _, reason in self.texts.values()]
        names = [_plain(flight.name) for flight in self.flights.values()]
        if "" in names:
            found.append(tr("A flight has no name."))
        doubled = {name: flight.name for name, flight in zip(names, self.flights.values()) if name}
        found += [
            tr("There are two flights “{}”.").format(doubled[name])
            for name in doubled
            if names.count(name) > 1
        ]
        if self.begins and self.ends and self.ends < self.begins:
            found.append(tr("The last day lies before the first."))
        return found


def same_settings(one, other):
    """Whether two Events are the same but for their pins, and for the order of their lengths."""

    def settings(event):
        lengths = {(asked.round, _plain(asked.flight), asked.hole): asked.length for asked in event.lengths}
        own = event.begins, event.ends, event.host, event.rules_off, event.limits
        return own, event.rounds, event.flights, lengths

    return settings(one) == settings(other)


def _plain(name):
    return name.strip().casefold()


def _day(text):
    """An ISO day, "" where none is said."""
    import datetime

    text = text.strip()
    try:
        return datetime.date.fromisoformat(text).isoformat() if text else ""
    except ValueError as error:
        raise YardwrightError(
            tr("“{}” is not a day.").format(text), tr("Write year, month and day, such as 2026-05-02.")
        ) from error


def _holes(text, course_holes):
    """Hole numbers in the order of play, () for all of the course."""
    from ..model.numbers import parse_holes

    holes = parse_holes(text)
    unknown = [str(hole) for hole in holes if course_holes and hole not in course_holes]
    if unknown:
        raise YardwrightError(
            tr("The course has no hole {}.").format(", ".join(unknown)),
            tr("Write the numbers of its holes in the order of play, such as 10-18,1-9."),
        )
    return holes
