"""The pins of an event on the sample course: 18 holes by 4 rounds placed, checked and audited.

``bash tests/run tests/bench/bench_pins.py -s``

From a course already read; laying out its holes is part of it. The committee's figures are whole yards; a
tenth of the drawn points are moved, so that the audit has something to find.
"""

import time
from dataclasses import replace

import pytest

pytestmark = pytest.mark.bench

LIMIT_S = 0.2
AGAIN = 7
ROUNDS = (1, 2, 3, 4)


def figures(course):
    """A committee's Pins in whole yards, and the Event they are for."""
    from yardwright.measure.hole import CourseIndex, play_hole
    from yardwright.measure.units import YARD
    from yardwright.model.event import Event, Pin, Round

    index, pins = CourseIndex(course), []
    for number in ROUNDS:
        for hole in course.holes:
            green = play_hole(course, hole.number, index).green
            on = int(green.depth / YARD * (0.15 + 0.15 * number))
            off = 3 + (5 * hole.number + 2 * number) % 6
            pins.append(
                Pin("Cup", number, hole.number, on * YARD, off * YARD, "left" if off % 2 else "right")
            )
    return Event("Cup", rounds=tuple(Round(number) for number in ROUNDS), pins=tuple(pins))


def test_placing_checking_and_auditing_an_event(layers):
    from yardwright.measure.hole import CourseIndex
    from yardwright.measure.pin_audit import audit_pins
    from yardwright.measure.pins import pin_rows
    from yardwright.store.reading import read_course

    course = read_course(layers)
    event = figures(course)
    first = pin_rows(course, event)[0]
    drawn = tuple(
        replace(pin, point=(row.x + (1.0 if place % 10 == 0 else 0.0), row.y))
        for place, (pin, row) in enumerate(zip(event.pins, first))
    )
    event, given = replace(event, pins=drawn), event.pins

    seconds = []
    for _ in range(AGAIN):
        start = time.perf_counter()
        index = CourseIndex(course)
        rows, problems = pin_rows(course, event, index)
        placed = time.perf_counter()
        audit = audit_pins(course, event, given, index=index)
        seconds.append((placed - start, time.perf_counter() - placed))

    placing, auditing = min(seconds, key=sum)
    verdicts = {
        verdict: sum(row.verdict == verdict for row in audit) for verdict in {row.verdict for row in audit}
    }
    print(f"\n{len(rows)} pins: placed and checked {placing:.3f} s, audited {auditing:.3f} s, {verdicts}")
    assert not problems and len(rows) == len(ROUNDS) * 18
    assert verdicts == {"same": 64, "apart": 8}
    assert placing + auditing <= LIMIT_S
