"""What of a hole is drawn and what is missing."""

from dataclasses import replace

import pytest
from yardwright.measure.checklist import checklist
from yardwright.model.course import Hole, TeeSet

from tests.makers import course, feature, rectangle, straight_hole, tee


def items(a_course, number=1):
    return {item.kind or item.title: item for item in checklist(a_course, number)}


def states(a_course, number=1):
    return {name: item.state for name, item in items(a_course, number).items()}


def test_a_hole_of_which_everything_is_drawn():
    bunker = feature("bunker", 5, rectangle(20, 200, 30, 210), 1)
    fairway = feature("fairway", 6, rectangle(-15, 100, 15, 380), 1)
    a_course = straight_hole(bunker, fairway, tees=[tee(2, 0, -5, tee_set="Heron")])
    a_course = replace(a_course, holes=(replace(a_course.holes[0], stroke_index=3),))
    found = states(a_course)
    assert "missing" not in found.values()
    assert found["bunker"] == "there" and found["penalty_area"] == "none"
    assert items(a_course)["tee"].text == "Heron" and items(a_course)["bunker"].text == "1"


def test_a_hole_of_which_only_the_card_is_known():
    a_course = replace(course([], {}), holes=(Hole(4, par=5),), scorecard={(4, "Heron"): 480})
    found = states(a_course, 4)
    assert [kind for kind, state in found.items() if state == "missing"] == [
        "hole",
        "tee",
        "green",
        "fairway",
        "Stroke index",
    ]


def test_tee_sets_of_the_card_that_are_not_drawn():
    a_course = straight_hole(tees=[tee(2, 0, -5, tee_set="Heron")])
    a_course = replace(
        a_course,
        tee_sets=(TeeSet("Heron"), TeeSet("Wren"), TeeSet("Lark")),
        scorecard={(1, "Lark"): 350, (1, "Heron"): 400, (2, "Wren"): 300},
    )
    assert items(a_course)["tee"].text == "none of Lark" and items(a_course)["tee"].state == "missing"
    # Without a card every tee set of the course is looked for.
    assert items(replace(a_course, scorecard={}))["tee"].text == "none of Wren, Lark"


@pytest.mark.parametrize("par, state", [(3, "none"), (4, "missing"), (5, "missing")])
def test_a_par_3_may_have_no_fairway(par, state):
    assert states(straight_hole(par=par))["fairway"] == state


def test_a_par_is_proposed_by_the_length():
    """400 yd: a par 4 (USGA, Rules of Handicapping, appendix F; see ``measure.par``)."""
    assert items(straight_hole(par=None))["Par"].text == "by its 400 yd a par 4"


def test_a_number_that_is_not_there():
    assert checklist(straight_hole(), 9) == ()
