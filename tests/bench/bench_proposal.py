"""Proposing the hole locations of four rounds for the whole sample course, and the balance of them.

``bash tests/run tests/bench/bench_proposal.py -s``

Measured from a course already read, its holes not yet laid out; with and without the slope of its ground.
"""

import time
from dataclasses import replace

import numpy as np
import pytest

pytestmark = pytest.mark.bench

LIMIT_S = 5.0
BALANCE_LIMIT_S = 2.0
ROUNDS = 3


class Ground:
    """A slope that costs about what reading it from an image of heights does; asked in the course's CRS."""

    def slope_at(self, points, crs):
        x, y = np.asarray(points).T
        waves = sum(np.sin(x / size) * np.cos(y / size) for size in range(3, 23))
        return np.abs(waves), np.zeros(len(x))


@pytest.mark.parametrize("sloping", [False, True], ids=["level", "sloping"])
def test_proposing_four_rounds(sloping):
    from yardwright.measure.fair import balance
    from yardwright.measure.proposal import propose
    from yardwright.model.event import Event, Limits, Round

    from sample_project.drawing import course

    a_course = course()
    limits = Limits(slope_pct=4.0 if sloping else None)
    event = Event("Cup", rounds=tuple(Round(number) for number in (1, 2, 3, 4)), limits=limits)
    terrain = Ground() if sloping else None
    seconds = []
    for _ in range(ROUNDS):
        begun = time.perf_counter()
        pins, problems = propose(a_course, event, terrain=terrain)
        proposed = time.perf_counter()
        found = balance(a_course, replace(event, pins=pins), terrain=terrain)
        seconds.append((proposed - begun, time.perf_counter() - proposed))
    proposing, balancing = (sorted(column)[ROUNDS // 2] for column in zip(*seconds))
    print(f"\n{len(pins)} holes proposed in {proposing:.2f} s, balance {balancing:.2f} s")
    assert len(pins) == 72 == len(found.locations) and problems == ()
    assert proposing < LIMIT_S and balancing < BALANCE_LIMIT_S
