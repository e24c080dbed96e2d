"""A course of 27 holes of which an event plays two nines: only the holes of a round count in it."""

from dataclasses import replace

import pytest
from yardwright.measure.fair import Grounds, balance, grounds_of
from yardwright.measure.pin_audit import audit_pins
from yardwright.measure.pins import placed_pins
from yardwright.measure.proposal import propose
from yardwright.measure.tee_setting import set_tees
from yardwright.measure.units import YARD
from yardwright.model.event import AskedLength, Event, Flight, Limits, Pin, Round

from tests.makers import circle, course, feature, line, tee

NINES = (*range(19, 28), *range(1, 10))
"""The third nine and then the first; the second is not played."""


def links():
    """Straight holes side by side; greens of the second nine are ringed by bunkers, so that they are hard."""
    features, lines = [], {}
    for n in range(1, 28):
        x = 300.0 * n
        features.append(feature("green", n, circle(x, 400, 15, 64), n))
        features.append(tee(100 + n, x, -10, hole=n, depth=20.0))
        if 10 <= n <= 18:
            ring = circle(x, 400, 20, 64).difference(circle(x, 400, 16, 64))
            features.append(feature("bunker", 200 + n, ring, n))
        lines[n] = line((x, -10), (x, 400))
    return course(features, lines, dict.fromkeys(lines, 4))


LINKS = links()


def event(**more):
    rounds = (Round(1, holes=NINES), Round(2, holes=NINES))
    return Event("Cup", rounds=rounds, flights=(Flight("Men", "Back"),), **more)


def pin(hole, number=1, on=10, off=8):
    return Pin("Cup", number, hole, on * YARD, off * YARD, "left")


def codes(remarks):
    return [remark.code for remark in remarks]


def test_an_event_knows_its_holes_in_play():
    cup = event()
    assert cup.holes_in_play(range(1, 28)) == (*range(1, 10), *range(19, 28))
    assert cup.plays(1, 19) and not cup.plays(1, 10)
    # A round that is not set out, and one without a list, play all.
    assert cup.plays(3, 10) and Event("Cup", rounds=(Round(1),)).plays(1, 10)
    assert Event("Cup").holes_in_play((1, 2)) == (1, 2)


def test_a_pin_on_a_hole_out_of_play_is_remarked_and_wears_nothing():
    first, second = placed_pins(LINKS, event(pins=(pin(10), pin(10, 2))))
    assert codes(first.remarks) == ["not_played"] and codes(second.remarks) == ["not_played"]
    first, second = placed_pins(LINKS, event(pins=(pin(19), pin(19, 2))))
    assert codes(first.remarks) == [] and codes(second.remarks) == ["near_earlier"]


def test_a_hole_not_cut_in_an_earlier_round_keeps_no_place_free():
    cup = event(pins=(pin(10), pin(10, 2)))
    cup = replace(cup, rounds=(cup.rounds[0], Round(2)))
    _, second = placed_pins(LINKS, cup)
    assert codes(second.remarks) == []


def test_the_audit_says_which_hole_is_out_of_play():
    rows = audit_pins(LINKS, event(pins=(pin(19),)), (pin(19), pin(10)))
    assert [(row.hole, row.verdict) for row in rows] == [(10, "missing"), (19, "same")]
    assert "not played in round 1" in rows[0].remark and rows[1].remark == ""


def test_markers_of_a_hole_out_of_play_are_remarked_and_wear_nothing():
    cup = event(limits=Limits(wear=2 * YARD))
    asked = [AskedLength(number, "Men", hole, 410 * YARD) for number in (1, 2) for hole in (10, 19)]
    rows = {(row.round, row.hole): row for row in set_tees(LINKS, cup, asked)}
    assert "not played in this round" in rows[1, 10].remark and "clear of" not in rows[2, 10].remark
    assert "clear of the markers of round 1" in rows[2, 19].remark
    cup = replace(cup, rounds=(cup.rounds[0], Round(2)))
    rows = {(row.round, row.hole): row for row in set_tees(LINKS, cup, asked)}
    assert rows[2, 10].remark == ""


def test_the_proposal_and_the_balance_leave_the_nine_out_that_nobody_plays():
    cup = event()
    proposal = propose(LINKS, cup)
    assert [one.hole for one in proposal.pins] == [*NINES, *NINES] and proposal.problems == ()
    found = balance(LINKS, replace(cup, pins=(*proposal.pins, pin(10))))
    assert {one.hole for one in found.locations} == set(NINES)
    assert [(one.round, one.holes) for one in found.rounds if one.round == 1] == [
        (1, ""),
        (1, "1-9"),
        (1, "19-27"),
    ]


def test_easy_and_hard_are_told_among_the_holes_in_play():
    """The nine ringed by bunkers would move the bounds up, and all that is played would count as easy."""
    cup = event()
    alone = Grounds(LINKS, cup.limits, holes=sorted(NINES)).bounds
    assert grounds_of(LINKS, cup).bounds == pytest.approx(alone)
    assert grounds_of(LINKS, Event("Cup")).bounds == pytest.approx(Grounds(LINKS, cup.limits).bounds)
    assert grounds_of(LINKS, Event("Cup")).bounds[1] > alone[1] + 0.01
