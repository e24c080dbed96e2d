"""How a fall is told. Front is the player's side of a green, left and right are theirs (common practice, no
source); what is expected follows from a map with the approach drawn on it."""

import math

import pytest
from yardwright.measure.fall import fall_said, fall_sign, rise_said, turn_of

from tests.loudly import left_over


@pytest.mark.parametrize(
    ("azimuth", "approach", "turn", "words", "sign"),
    [
        (0.0, 0.0, 0.0, "2.1 % to the back", "↑"),
        (180.0, 0.0, 180.0, "2.1 % to the front", "↓"),
        (90.0, 0.0, 90.0, "2.1 % to the right", "→"),
        # Played due east, what falls to the north falls to the player's left.
        (0.0, 90.0, 270.0, "2.1 % to the left", "←"),
        (350.0, 305.0, 45.0, "2.1 % to the back right", "↗"),
        # Played to the south-west, what falls to the north goes past the player's right, towards them.
        (0.0, 225.0, 135.0, "2.1 % to the front right", "↘"),
        (45.0, 180.0, 225.0, "2.1 % to the front left", "↙"),
        (10.0, 60.0, 310.0, "2.1 % to the back left", "↖"),
        # Half an eighth decides, and just below a full turn it is the back again.
        (22.0, 0.0, 22.0, "2.1 % to the back", "↑"),
        (23.0, 0.0, 23.0, "2.1 % to the back right", "↗"),
        (359.0, 0.0, 359.0, "2.1 % to the back", "↑"),
    ],
)
def test_a_fall_is_told_as_it_is_seen_with_the_approach_up(azimuth, approach, turn, words, sign):
    found = turn_of(azimuth, approach)
    assert found == pytest.approx(turn)
    assert (fall_said(2.1, found), fall_sign(2.1, found)) == (words, sign)


def test_level_ground_has_no_direction():
    for percent, turn in ((0.0, None), (0.049, 90.0)):
        assert (fall_said(percent, turn), fall_sign(percent, turn)) == ("0.0 %, level", "")
    assert fall_said(0.06, 90.0) == "0.1 % to the right"
    assert turn_of(math.nan, 10.0) is None and turn_of(None, 10.0) is None and turn_of(10.0, None) is None


def test_nothing_is_said_of_ground_that_is_not_known():
    assert (fall_said(None, None), fall_sign(None, None)) == ("", "")


def test_a_turn_is_never_a_full_one():
    assert turn_of(1e-17, 1e-16) < 360.0


def test_rises():
    assert [rise_said(one) for one in (3.21, -0.44, 0.0, -0.04, 12.0)] == [
        "+3.2",
        "−0.4",
        "0.0",
        "0.0",
        "+12.0",
    ]


def test_it_is_said_in_the_users_language(loudly):
    assert left_over(fall_said(2.1, 45.0)) == [] and left_over(fall_said(0.0, None)) == []
