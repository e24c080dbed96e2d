"""Facts of the trade. All of them: common practice, no source."""

import math

import pytest
from yardwright.measure.units import YARD, whole

from tests.makers import feature, only, rectangle, spot, straight_hole, tables

FRONT, DEPTH = 267.0, 19.0


def very_short_par_4(*more):
    """A bunker from 223 yd, the green's front at 267, the green 19 deep; so its middle at 276.5."""
    bunker = feature("bunker", 5, rectangle(-12, 223, 12, 236), 1)
    fairway = feature("fairway", 6, rectangle(-20, 120, 40, 260), 1)
    green = rectangle(-13, FRONT, 13, FRONT + DEPTH)
    return straight_hole(bunker, fairway, *more, green=green, length=FRONT + DEPTH / 2)


def post(fid, x, to_middle, states):
    return feature("marker", fid, spot(x, FRONT + DEPTH / 2 - to_middle), 1, states_yd=states)


def test_a_very_short_par_4_is_approached_from_the_100_marker():
    found = tables(very_short_par_4())
    assert only(found.greens, hole=1).approach_from == "100 yd"


@pytest.mark.parametrize("par, length", [(4, 330), (4, 460), (5, 520)])
def test_other_par_4s_and_5s_from_about_the_150(par, length):
    assert only(tables(straight_hole(length=length, par=par)).greens, hole=1).approach_from == "150 yd"


def test_the_card_of_the_hole():
    found = tables(very_short_par_4())
    assert whole(only(found.distances, kind="bunker").reach) == 223
    green = only(found.distances, kind="green")
    assert (whole(green.reach), whole(green.clear)) == (267, 286)
    assert whole(only(found.greens, hole=1).depth) == 19
    assert whole(only(found.lengths, hole=1).length) == 277  # 276.5: halves go up
    assert only(found.distances, kind="bunker").forced_carry == "no"  # fairway beside it


def test_the_150_marker_is_right_and_the_100_marker_is_to_be_moved_about_four_yards():
    found = tables(very_short_par_4(post(7, 0, 150, 150.0), post(8, 0, 96.2, 100.0)))
    right, wrong = only(found.markers, marker_id="7"), only(found.markers, marker_id="8")
    assert (right.verdict, whole(right.measured)) == ("true", 150)
    assert (wrong.verdict, whole(wrong.measured), whole(wrong.error)) == ("off", 96, 4)
    assert wrong.move_m / YARD == pytest.approx(3.8, abs=1e-3)
    assert wrong.move_azimuth == pytest.approx(180, abs=0.05)  # away from the green, back down the hole


def test_a_drive_over_a_bend_is_straight_for_reach_and_clear():
    found = tables(straight_hole(feature("bunker", 5, rectangle(30, 200, 45, 215), 1)))
    row = only(found.distances, kind="bunker")
    assert row.reach == pytest.approx(math.hypot(30, 200), abs=1e-4)
    assert row.clear == pytest.approx(math.hypot(45, 215), abs=1e-4)
