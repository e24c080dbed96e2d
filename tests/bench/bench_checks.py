"""Checking the whole sample course, and the longest that drawing is held up by it.

``bash tests/run tests/bench/bench_checks.py -s``

The panel checks a hole a turn of the event loop: the longest turn is that in which the course is read again and
laid out in one plane, or that of the hole with most to lay out.
"""

import time

import pytest

pytestmark = pytest.mark.bench

LIMIT_S = 0.5
TURN_LIMIT_S = 0.2
ROUNDS = 5


def turns(layers):
    """Seconds of each turn, the first with reading the course."""
    from yardwright.measure.checks import CourseChecks
    from yardwright.store.reading import read_course

    start = time.perf_counter()
    checks = CourseChecks(read_course(layers))
    seconds = [time.perf_counter() - start]
    for look in (checks.of_course, *(lambda n=n: checks.of_hole(n) for n in checks.numbers)):
        start = time.perf_counter()
        look()
        seconds.append(time.perf_counter() - start)
    return seconds


def test_checking_the_sample_course(layers):
    rounds = [turns(layers) for _ in range(ROUNDS)]
    whole = sorted(sum(one) for one in rounds)[ROUNDS // 2]
    reading, course, hole = (
        sorted(picked(one) for one in rounds)[ROUNDS // 2]
        for picked in (lambda one: one[0], lambda one: one[1], lambda one: max(one[2:]))
    )
    print(
        f"\nread {reading:.3f} s, among themselves {course:.3f} s, worst hole {hole:.3f} s, all {whole:.3f} s"
    )
    assert whole < LIMIT_S
    assert max(reading, course, hole) < TURN_LIMIT_S
