"""Hole length, rounding and par against what the rating, handicapping and rules bodies print."""

import math

import pytest
from yardwright.measure.par import check_par, pars_for
from yardwright.measure.units import YARD, to_unit, whole
from yardwright.model.course import TeeSet

from tests.geodesy import ahead, azimuth, between, course_of, ring
from tests.makers import circle, course, feature, line, only, spot, straight_hole, tables, tee


@pytest.mark.parametrize("measured, printed", [(234.5, 235), (312.4, 312)])
def test_totals_are_rounded_halves_up(measured, printed):
    """German federation's handbook for course measuring (2012): 234.5 m is 235, 312.4 m is 312."""
    assert whole(measured) == printed


def test_legs_to_a_tenth_of_a_metre_make_the_total():
    """The same handbook: legs to 0.1 m, the total rounded. Three legs of a double dogleg, in metres."""
    legs = (120.3, 64.1, 50.1)
    stops = [0.0]
    for leg in legs:
        stops.append(stops[-1] + leg / YARD)
    points = [(0, -5), (0, stops[1]), (legs[1] / YARD, stops[1]), (legs[1] / YARD, stops[1] + legs[2] / YARD)]
    green = feature("green", 1, circle(*points[-1], 14), 1)
    found = tables(course([green, tee(2, 0, -5)], {1: line(*points)}, {1: 4}, settings={"unit": "m"}))
    metres = only(found.lengths, hole=1).length * YARD
    assert metres == pytest.approx(234.5, abs=1e-4)
    assert whole(to_unit(metres, "m")) == 235


def test_to_the_nearest_yard_from_each_tees_permanent_marker():
    """Rules of Handicapping, Appendix G: each tee, from its permanent marker, to the nearest yard or metre."""
    plates = [
        feature("plate", 3, spot(0, 0.6), 1, tee_set="Back"),
        feature("plate", 4, spot(0, 31.4), 1, tee_set="Front"),
    ]
    found = tables(straight_hole(*plates))
    assert whole(only(found.lengths, tee_set="Back").length) == 399
    assert whole(only(found.lengths, tee_set="Front").length) == 369


def test_a_dogleg_is_measured_in_straight_legs_through_its_pivot_points():
    """CONGU Unified Handicapping System, Appendix A: horizontal, along the designed line, doglegs as straight legs
    through pivot points, to the green's centre. The legs by geographiclib 2.1."""
    start = (-2.803, 56.343)
    first = ahead(start, 20, 250 * YARD)
    second = ahead(first, 75, 140 * YARD)
    end = ahead(second, 350, 110 * YARD)
    features = [("plate", [start], {"tee_set": "Back"}), ("green", ring(end, 13, azimuth(end, second)), {})]
    found = tables(course_of("EPSG:32630", [start, first, second, end], features, par=5))
    assert only(found.lengths, hole=1).length == pytest.approx(500, abs=0.001)
    straight = between(start, end) / YARD
    assert straight < 440  # the crow flies much less


def test_an_error_of_a_yard_at_250_is_more_than_the_tool_makes():
    """CONGU, Appendix A: accuracy of a yard at 250 yards."""
    start = (-2.803, 56.343)
    end = ahead(start, 123, 250 * YARD)
    features = [("plate", [start], {"tee_set": "Back"}), ("green", ring(end, 13, azimuth(end, start)), {})]
    found = tables(course_of("EPSG:32630", [start, end], features))
    assert abs(only(found.lengths, hole=1).length - 250) < 1 / 1000


@pytest.mark.parametrize("corners", [3, 5, 72])
def test_the_centre_is_the_average_of_the_readings_to_front_and_back(corners):
    """Course Rating Manual 6: from a tee in line with the approach, the length is the mean of both readings."""
    green = circle(0, 400, 15, corners)
    found = tables(straight_hole(green=green))
    row = only(found.distances, kind="green")
    assert only(found.lengths, hole=1).length == pytest.approx((row.reach + row.clear) / 2, abs=0.01)
    assert row.middle == pytest.approx(only(found.lengths, hole=1).length, abs=1e-9)


# Rules of Handicapping, Appendix F: least and greatest length of each par, yards and metres

APPENDIX_F = {
    ("men", "yd"): {3: (1, 260), 4: (240, 490), 5: (450, 710), 6: (670, 999)},
    ("men", "m"): {3: (1, 240), 4: (220, 450), 5: (410, 650), 6: (610, 999)},
    ("women", "yd"): {3: (1, 220), 4: (200, 420), 5: (370, 600), 6: (570, 999)},
    ("women", "m"): {3: (1, 200), 4: (180, 380), 5: (340, 550), 6: (520, 999)},
}
EDGES = [
    (players, unit, par, low, high)
    for (players, unit), pars in APPENDIX_F.items()
    for par, (low, high) in pars.items()
]


@pytest.mark.parametrize("players, unit, par, low, high", EDGES)
def test_every_edge_of_appendix_f(players, unit, par, low, high):
    metre = YARD if unit == "yd" else 1.0
    for length in (low, high):
        assert par in pars_for(length * metre, unit, players)
        assert check_par(par, length * metre, unit, players) == "fits"
    if low > 1:
        assert check_par(par, (low - 1) * metre, unit, players) == f"short for par {par}"
    if high < 999:
        assert check_par(par, (high + 1) * metre, unit, players) == f"long for par {par}"


@pytest.mark.parametrize("players, unit", list(APPENDIX_F))
def test_every_whole_length_has_the_pars_of_the_table(players, unit):
    metre = YARD if unit == "yd" else 1.0
    for length in range(1, 800):
        expected = tuple(p for p, (low, high) in APPENDIX_F[players, unit].items() if low <= length <= high)
        assert pars_for(length * metre, unit, players) == expected
        assert expected  # no length without par


def test_the_rounded_length_decides():
    """The printed figure is what the table is read with: 260.49 yd is 260, 260.5 is 261."""
    assert check_par(3, 260.49 * YARD, "yd", "men") == "fits"
    assert check_par(3, 260.5 * YARD, "yd", "men") == "long for par 3"


def test_players_unknown_fits_when_either_table_does():
    assert check_par(3, 255 * YARD, "yd", None) == "fits"  # men
    assert check_par(5, 380 * YARD, "yd", None) == "fits"  # women
    assert check_par(5, 360 * YARD, "yd", None) == "short for par 5"
    assert check_par(4, 495 * YARD, "yd", None) == "long for par 4"
    assert check_par(None, 360 * YARD, "yd", None) == "no par"


@pytest.mark.parametrize("players, length, check", [("men", 440, "short for par 5"), ("women", 440, "fits")])
def test_the_tee_sets_players_choose_the_table(players, length, check):
    a_course = straight_hole(length=length, par=5, tee_sets=[TeeSet("Back", players=players)])
    assert only(tables(a_course).lengths, hole=1).par_check == check


def test_the_green_of_the_handicap_manual_stands_for_its_middle_at_any_angle():
    """Course Rating Manual 6 again: halfway between front and back on the line through the green, here slantwise."""
    target = feature("target", 9, spot(-60, 330), 1, approach=True)
    found = tables(straight_hole(target, green=circle(4, 402, 15)))
    row = only(found.distances, kind="green")
    assert math.hypot(4, 402) == pytest.approx(row.middle, abs=1e-3)
