"""Events in the course's layers <-> model Events: rounds, flights, lengths, pins and decisions on pins.

Metres in the model, yards in the tables. Rows are told apart by what they are for (event, round, hole...),
texts and numbers compared as they are read. What is written replaces the row for the same; a second row for
the same goes then. All of a change is written or nothing (``writing.editing``).
"""

import math
from dataclasses import dataclass, replace
from datetime import datetime

from shapely.geometry import Point

from ..measure.units import YARD
from ..model.course import Feature
from ..model.errors import YardwrightError
from ..model.event import AskedLength, Event, Flight, Limits, Pin, Round
from ..model.kinds import BY_NAME
from ..model.numbers import format_holes, parse_holes
from ..model.words import say
from .reading import left_out, problem_of, read_rows
from .writing import editing, parts_of, qgis_geometry, row_of

_KEYS = {
    "event": ("name",),
    "event_round": ("event", "round"),
    "event_flight": ("event", "flight"),
    "event_length": ("event", "round", "flight", "hole"),
    "pin": ("event", "round", "hole"),
    "guide_page": ("event", "sort"),
}
"""What tells the rows of a table apart."""
_PARTS = ("event_round", "event_flight", "event_length", "pin")
_NAMED_IN = {"event": "name", **dict.fromkeys((*_PARTS, "pin_decision", "guide_page"), "event")}
"""Every kind that has rows of an event, with the field that names it."""
_LIMITS = {
    "margin": ("margin_yd", YARD),
    "slope_pct": ("slope_pct", 1.0),
    "apart": ("apart_yd", YARD),
    "tolerance": ("tolerance_yd", YARD),
    "wear": ("wear_yd", YARD),
}


@dataclass(frozen=True)
class Decision:
    """What somebody decided on a pin. decided: ``theirs`` or ``ours``; at: ISO time; given, drawn: figures as
    texts, the committee's and those drawn until then."""

    event: str
    round: int
    hole: int
    decided: str
    by: str = ""
    at: str = ""
    given: str = ""
    drawn: str = ""
    note: str = ""


# Reading


def read_events(course_layers, problems=None):
    """All Events that the layers say at this moment, a tuple in the order they were made.

    Both of two pins for one hole and round are there; of anything else only the first. An event that only
    its parts name is there with the usual limits. Texts on what was left out or doubted are appended to the
    list ``problems``.
    """
    problems = [] if problems is None else problems
    events = _event_rows(course_layers, problems)
    found = {kind: {} for kind in _PARTS}
    for kind in _PARTS:
        for fid, values, shape in _told_apart(course_layers, kind, problems):
            part = _READERS[kind](fid, values, shape, problems)
            if part is None:
                continue
            name = values["event"]
            if name not in events:
                events[name] = Event(name)
                reason = say("the table event has no row for “{name}”", name=name)
                problems.append(problem_of(BY_NAME[kind], fid, reason))
            found[kind].setdefault(name, []).append(part)
    return tuple(
        replace(
            event,
            rounds=tuple(sorted(found["event_round"].get(name, ()), key=lambda one: one.number)),
            flights=tuple(found["event_flight"].get(name, ())),
            lengths=tuple(found["event_length"].get(name, ())),
            pins=tuple(sorted(found["pin"].get(name, ()), key=lambda one: (one.round, one.hole))),
        )
        for name, event in events.items()
    )


def read_event(course_layers, name, problems=None):
    """The Event of that name, None when there is none; ``problems`` as of ``read_events``."""
    return next((event for event in read_events(course_layers, problems) if event.name == name), None)


def read_decisions(course_layers, event_name, problems=None):
    """The Decisions on an event's pins, in the order they were taken."""
    kind, problems = BY_NAME["pin_decision"], [] if problems is None else problems
    decisions = []
    for fid, values, _ in read_rows(course_layers, kind.name, problems):
        if values.get("event") != event_name:
            continue
        if not {"round", "hole", "decided"} <= set(values):
            problems.append(left_out(kind, fid, say("it lacks round, hole or what was decided")))
            continue
        texts = {name: values.get(name, "") for name in ("given", "drawn", "note")}
        by, at = values.get("decided_by", ""), values.get("decided_at", "")
        decisions.append(
            Decision(event_name, values["round"], values["hole"], values["decided"], by, at, **texts)
        )
    return tuple(decisions)


def _event_rows(course_layers, problems):
    """``{name: Event}`` of the table event."""
    events = {}
    for fid, values, _ in _told_apart(course_layers, "event", problems):
        limits = _limits(fid, values, problems)
        name = values["name"]
        begins, ends = values.get("begins", ""), values.get("ends", "")
        host, off = values.get("host", ""), _words(values.get("rules_off", ""))
        events[name] = Event(name, begins, ends, limits=limits, host=host, rules_off=off, fid=fid)
    return events


def _told_apart(course_layers, kind, problems):
    """``read_rows`` of the rows that say what they are for; of two for the same the first, pins all."""
    seen = set()
    fields = [BY_NAME[kind].field(name) for name in _KEYS[kind]]
    for fid, values, shape in read_rows(course_layers, kind, problems):
        lacking = next((field.name for field in fields if not _says(field, values)), None)
        if lacking:
            problems.append(left_out(BY_NAME[kind], fid, say("it has no {field}", field=lacking)))
            continue
        key = tuple(values[field.name] for field in fields)
        if key in seen and kind != "pin":
            problems.append(left_out(BY_NAME[kind], fid, say("there is another one for the same")))
            continue
        seen.add(key)
        yield fid, values, shape


def _words(text):
    """The words of a list with commas between them, a tuple."""
    return tuple(filter(None, (part.strip() for part in text.split(","))))


def _says(field, values):
    """Whether a field says something that can be used."""
    value = values.get(field.name)
    if value is None:
        return False
    return (field.low is None or value >= field.low) and (field.high is None or value <= field.high)


def _limits(fid, values, problems):
    """The Limits of an event's row; one without a value that can be used is as usual."""
    given, kind = {}, BY_NAME["event"]
    for name, (column, unit) in _LIMITS.items():
        if _says(kind.field(column), values):
            given[name] = values[column] * unit
        elif column in values:
            reason = say("{field} {value} was not used", field=column, value=values[column])
            problems.append(problem_of(kind, fid, reason))
    return Limits(**given)


def _read_round(fid, values, shape, problems):
    try:
        holes = parse_holes(values.get("holes", ""))
    except YardwrightError as error:
        reason = say("the text in holes was not understood: {reason}", reason=error.what.rstrip("."))
        problems.append(problem_of(BY_NAME["event_round"], fid, reason))
        holes = ()
    return Round(values["round"], values.get("played_on", ""), holes, values.get("start", Round.start))


def _read_flight(fid, values, shape, problems):
    return Flight(values["flight"], values.get("tee_set", ""))


def _read_length(fid, values, shape, problems):
    kind = BY_NAME["event_length"]
    if not _says(kind.field("yards"), values):
        problems.append(left_out(kind, fid, say("it has no length")))
        return None
    return AskedLength(values["round"], values["flight"], values["hole"], values["yards"] * YARD)


def _read_pin(fid, values, shape, problems):
    on, off = (None if values.get(name) is None else values[name] * YARD for name in ("on_yd", "off_yd"))
    by_figures = None not in (on, off)
    return Pin(
        values["event"],
        values["round"],
        values["hole"],
        on,
        off,
        values.get("off_from", ""),
        values.get("given", "figures" if by_figures else "point"),
        None if shape is None else (shape.x, shape.y),
        fid,
        values.get("note", ""),
    )


_READERS = {
    "event_round": _read_round,
    "event_flight": _read_flight,
    "event_length": _read_length,
    "pin": _read_pin,
}


# Writing


def write_event(course_layers, event, with_lengths=False):
    """Write an Event's own row, its rounds and its flights; an event of that name is changed to it.

    Rounds and flights that the Event lacks go; with_lengths: its lengths are written too, and those it lacks
    go. Else they stay as they are, as pins always do: see ``write_lengths`` and ``write_pins``. Raises
    YardwrightError.
    """
    name = _name(event.name)
    change = _Change(course_layers)
    change.put("event", (name,), _event_values(event))
    for one in event.rounds:
        change.put("event_round", (name, one.number), _round_values(one))
    for one in event.flights:
        change.put("event_flight", (name, one.name.strip()), {"tee_set": one.tee_set})
    change.drop("event_round", name, {(name, one.number) for one in event.rounds})
    change.drop("event_flight", name, {(name, one.name.strip()) for one in event.flights})
    if with_lengths:
        keys = [(name, one.round, one.flight.strip(), one.hole) for one in event.lengths]
        for key, one in zip(keys, event.lengths):
            change.put("event_length", key, {"yards": _yards(one.length)})
        change.drop("event_length", name, set(keys))
    change.write()


def write_lengths(course_layers, event_name, lengths):
    """Write AskedLengths; each takes the place of the one for the same round, flight and hole.

    Event, rounds and flights are made where they are missing. Raises YardwrightError.
    """
    name = _name(event_name)
    change = _Change(course_layers)
    change.need("event", (name,))
    for one in lengths:
        flight = one.flight.strip()
        change.need("event_round", (name, one.round))
        change.need("event_flight", (name, flight))
        change.put("event_length", (name, one.round, flight, one.hole), {"yards": _yards(one.length)})
    change.write()


def write_pins(course_layers, event_name, pins, points):
    """Write Pins, ``points`` where each lies, (x, y) in the course's CRS; their ids, in order.

    Each takes the place of all pins of the event for the same round and hole; a note that stands there stays
    where the Pin has none. Event and rounds are made where they are missing. Raises YardwrightError for two
    Pins for one hole and round, or a point that is none, with nothing written.
    """
    name, pins, points = _name(event_name), tuple(pins), tuple(points)
    if len(pins) != len(points):
        raise ValueError(f"{len(pins)} pins, {len(points)} points")
    change = _Change(course_layers)
    change.need("event", (name,))
    keys = []
    for pin, point in zip(pins, points):
        if point is None or not all(map(math.isfinite, point)):
            raise YardwrightError(
                say("The pin of round {round} on hole {hole} has no place.", round=pin.round, hole=pin.hole),
                say("Leave it out, or mend its figures."),
            )
        keys.append((name, pin.round, pin.hole))
        change.need("event_round", keys[-1][:2])
        change.put("pin", keys[-1], _pin_values(pin), Point(*map(float, point)))
    doubled = next((key for key in keys if keys.count(key) > 1), None)
    if doubled:
        raise YardwrightError(
            say("There are two pins for round {round} on hole {hole}.", round=doubled[1], hole=doubled[2]),
            say("Leave one of them out."),
        )
    change.write()
    return [change.ids["pin", key] for key in keys]


def copy_event(course_layers, name, new_name, with_pins=False):
    """A new event like another: its limits, dates, host, rounds, flights, lengths and pages of the guide, and
    its pins when told.

    Raises YardwrightError when there is no such event, or one of the new name.
    """
    new_name = _name(new_name)
    names = _names(course_layers, name)
    refuse_name(new_name, names)
    change = _Change(course_layers)
    for kind in ("event", "guide_page", *(part for part in _PARTS if part != "pin" or with_pins)):
        change.copy(kind, name, new_name)
    change.write()


def rows_of_event(course_layers, name):
    """``{kind: [ids]}`` of all rows that name an event, the decisions on its pins among them; only kinds that
    have any, in the order of the tables."""
    found = {}
    for kind, field in _NAMED_IN.items():
        fids = [fid for fid, values, _ in read_rows(course_layers, kind, []) if values.get(field) == name]
        if fids:
            found[kind] = fids
    return found


def rename_event(course_layers, name, new_name):
    """Give an event another name, in all rows that say it. Raises YardwrightError when there is no such
    event, or another one of the new name."""
    new_name = _name(new_name)
    refuse_name(new_name, [one for one in _names(course_layers, name) if one != name])
    rows = rows_of_event(course_layers, name)
    with editing(course_layers, rows) as edit:
        for kind, fids in rows.items():
            edit.change(kind, {fid: {_NAMED_IN[kind]: new_name} for fid in fids})


def remove_event(course_layers, name):
    """Take an event out with all that is its own: rounds, flights, lengths, pins, the decisions on them and
    its pages of the guide. Raises YardwrightError when there is no such event."""
    _names(course_layers, name)
    rows = rows_of_event(course_layers, name)
    with editing(course_layers, rows) as edit:
        for kind, fids in rows.items():
            edit.delete(kind, fids)


def refuse_name(name, names):
    """Raise YardwrightError where a new event's name is that of one there is, but for capitals: their files
    would go by one name."""
    taken = next((one for one in names if one.casefold() == name.strip().casefold()), None)
    if taken is not None:
        raise YardwrightError(
            say("There is an event “{name}” already.", name=taken), say("Choose another name.")
        )


def _names(course_layers, name):
    """The names of all events, of which ``name`` must be one."""
    names = [event.name for event in read_events(course_layers)]
    if name not in names:
        raise YardwrightError(
            say("There is no event “{name}”.", name=name), say("Choose one of those there are.")
        )
    return names


def log_decision(course_layers, decision):
    """Add a Decision to the log, with the time of now where it has none. Raises YardwrightError."""
    field = BY_NAME["pin_decision"].field("decided")
    if decision.decided not in field.values:
        raise YardwrightError(
            say("“{value}” is no value for the field “{field}”.", value=decision.decided, field=field.name),
            say("Take one of {forms}.", forms=", ".join(field.values)),
        )
    attributes = {
        "event": _name(decision.event),
        "round": decision.round,
        "hole": decision.hole,
        "decided": decision.decided,
        "decided_by": decision.by,
        "decided_at": decision.at or datetime.now().astimezone().isoformat(timespec="seconds"),
        "given": decision.given,
        "drawn": decision.drawn,
        "note": decision.note,
    }
    with editing(course_layers, ["pin_decision"]) as edit:
        row = row_of(course_layers, Feature("pin_decision", None, None, attributes=attributes), None)
        edit.add("pin_decision", [row])


def _name(text):
    name = str(text or "").strip()
    if not name:
        raise YardwrightError(say("The event has no name."), say("Give it a name."))
    return name


def _yards(metres):
    """Yards of a length in metres, without the noise of the arithmetic; None stays None."""
    return None if metres is None else round(metres / YARD, 9)


def _event_values(event):
    limits = {
        column: _yards(getattr(event.limits, name)) if unit == YARD else getattr(event.limits, name)
        for name, (column, unit) in _LIMITS.items()
    }
    own = {"host": event.host, "rules_off": ", ".join(event.rules_off)}
    return {"begins": event.begins, "ends": event.ends, **own, **limits}


def _round_values(one):
    return {"played_on": one.played_on, "holes": format_holes(one.holes), "start": one.start}


def _pin_values(pin):
    values = {
        "on_yd": _yards(pin.on),
        "off_yd": _yards(pin.off),
        "off_from": pin.off_from,
        "given": pin.given,
    }
    return {**values, "note": pin.note} if pin.note else values


class _Change:
    """A change of the event tables and the pins, put together first and written as one.

    ``ids``: once written, the id of each row that was put, by kind and key.
    """

    def __init__(self, course_layers):
        self.ids = {}
        self._course_layers = course_layers
        self._rows = {}
        self._added = {}
        self._changed = {}
        self._moved = {}
        self._deleted = {}

    def put(self, kind, key, values, point=None):
        """Have one row for ``key`` with these values, and where it has a geometry this one."""
        rows = self._rows_for(kind, key)
        if not rows:
            self._added.setdefault(kind, {})[key] = (values, point)
            return
        (fid, old, shape), *others = rows
        self.ids[kind, key] = fid
        differing = {name: value for name, value in values.items() if old.get(name, "") != _read_back(value)}
        if differing:
            self._changed.setdefault(kind, {})[fid] = differing
        if point is not None and (shape is None or not shape.equals(point)):
            self._moved.setdefault(kind, {})[fid] = point
        self._delete(kind, others)

    def need(self, kind, key):
        """Have a row for ``key``, as it is or with the usual values."""
        if not self._rows_for(kind, key):
            self._added.setdefault(kind, {})[key] = ({}, None)

    def drop(self, kind, event_name, kept):
        """Have no row of the event but for the keys in ``kept``."""
        for key, rows in self._all(kind).items():
            if key[0] == event_name and key not in kept:
                self._delete(kind, rows)

    def copy(self, kind, event_name, new_name):
        """Have all rows of the event a second time under a new name."""
        for key, rows in self._all(kind).items():
            if key[0] == event_name:
                _, values, shape = rows[0]
                if kind != "pin" or shape is not None:
                    self._added.setdefault(kind, {})[(new_name, *key[1:])] = (values, shape)

    def write(self):
        """Write it, all or nothing; layers in which nothing changes are not touched."""
        kinds = [
            kind
            for kind in _KEYS
            if any(kind in part for part in (self._added, self._changed, self._moved, self._deleted))
        ]
        if not kinds:
            return
        with editing(self._course_layers, kinds) as edit:
            for kind in kinds:
                edit.delete(kind, self._deleted.get(kind, []))
                if kind in self._changed:
                    edit.change(kind, self._changed[kind])
                if kind in self._moved:
                    edit.reshape(
                        kind, {fid: qgis_geometry(point) for fid, point in self._moved[kind].items()}
                    )
                added = self._added.get(kind, {})
                fids = edit.add(kind, [self._new_row(kind, key, *what) for key, what in added.items()])
                self.ids.update(((kind, key), fid) for key, fid in zip(added, fids))

    def _new_row(self, kind, key, values, point):
        attributes = {**values, **dict(zip(_KEYS[kind], key))}
        feature = Feature(kind, None, point, attributes=attributes)
        (part,) = parts_of(feature)
        return row_of(self._course_layers, feature, part)

    def _delete(self, kind, rows):
        if rows:
            self._deleted.setdefault(kind, {}).update((fid, True) for fid, _, _ in rows)

    def _rows_for(self, kind, key):
        return self._all(kind).get(key, [])

    def _all(self, kind):
        """``{key: [(id, values, shape)]}`` of the rows that say what they are for."""
        if kind not in self._rows:
            rows = self._rows[kind] = {}
            for row in read_rows(self._course_layers, kind, []):
                key = tuple(row[1].get(name) for name in _KEYS[kind])
                if None not in key:
                    rows.setdefault(key, []).append(row)
        return self._rows[kind]


def _read_back(value):
    """A value as it will be read, "" where there will be none."""
    return "" if value is None else value
