"""What a guide's page about the event says, as Markdown: days, host, rounds, flights."""

from ..measure.units import to_unit, whole
from ..model.numbers import format_holes
from ..model.words import said, say
from .book_pages import dates_of
from .flowing_text import plain
from .lettering import day


def event_text(course, event, figures):
    """The Markdown of an Event's page, without its heading. figures: a BookFigures."""
    parts = []
    if dates_of(event):
        parts.append(plain(dates_of(event)))
    if event.host.strip():
        lines = [plain(line) for line in event.host.strip().splitlines() if line.strip()]
        parts.append("\n\n".join([f"### {say('Host')}", "  \n".join(lines)]))
    if event.rounds:
        parts += [f"### {say('Rounds')}", _rounds(event)]
    if event.flights:
        parts += [f"### {say('Flights')}", _flights(course, event, figures)]
    if event.pins:
        by_figures = any(pin.given == "figures" for pin in event.pins)
        if by_figures:
            parts.append(
                say("Pins: so far on from the green’s front, so far in from the side that is named.")
            )
    return "\n\n".join(parts)


def _rounds(event):
    """A table of the rounds; what no round says has no column."""
    columns = [
        (say("Round"), [str(one.number) for one in event.rounds]),
        (say("Day"), [plain(day(one.played_on)) if one.played_on else "" for one in event.rounds]),
        (say("Holes"), [plain(_holes(one.holes)) for one in event.rounds]),
        (say("Start"), [plain(said(one.start)) for one in event.rounds]),
    ]
    return _table([column for place, column in enumerate(columns) if place in (0, 3) or any(column[1])])


def _holes(numbers):
    """Hole numbers as ranges where they follow each other.

    >>> _holes((1, 2, 3, 7, 10, 9))
    '1–3, 7, 10, 9'
    """
    parts = []
    for number in numbers:
        if parts and number == parts[-1][1] + 1:
            parts[-1][1] = number
        else:
            parts.append([number, number])
    return ", ".join(format_holes([a]) if a == b else f"{a}–{b}" for a, b in parts)


def _flights(course, event, figures):
    """A table of the flights: from which tees they play, and how long each round is for them."""
    unit = course.settings.unit
    asked = {(one.round, one.flight, one.hole): whole(to_unit(one.length, unit)) for one in event.lengths}
    columns = [
        (say("Flight"), [plain(one.name) for one in event.flights]),
        (say("Tees"), [plain(one.tee_set) for one in event.flights]),
    ]
    rounds = event.rounds or (None,)
    own = {}
    for hole in course.holes:
        own[hole.number] = dict(figures.lengths(hole.number))
    totals = []
    for held in rounds:
        number = None if held is None else held.number
        holes = held.holes if held is not None and held.holes else list(own)
        lengths = [
            [asked.get((number, one.name, hole), own.get(hole, {}).get(one.tee_set)) for hole in holes]
            for one in event.flights
        ]
        totals.append((number, ["" if None in row or not row else str(sum(row)) for row in lengths]))
    if len({tuple(row) for _, row in totals}) == 1:
        totals = [(None, totals[0][1])]
    word = say("Metres") if unit == "m" else say("Yards")
    for number, row in totals:
        title = word if number is None else say("{unit}, round {number}", unit=word, number=number)
        columns.append((title, row))
    return _table([column for place, column in enumerate(columns) if not place or any(column[1])])


def _table(columns):
    heads = [head for head, _ in columns]
    rows = zip(*(cells for _, cells in columns))
    lines = ["| " + " | ".join(one) + " |" for one in (heads, ["---"] * len(heads), *rows)]
    return "\n".join(lines)
