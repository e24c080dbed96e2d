"""The sample course's event is sound: its files can be read, its pins lie where a hole may be cut."""

import csv
import math
import os
import re
import subprocess
from collections import Counter

import pytest
from yardwright.measure.course import measure_course
from yardwright.measure.hole import CourseIndex, play_hole
from yardwright.measure.units import YARD
from yardwright.store.committee import read_lengths, read_pins

from sample_project import cup, drawing, make

HOLES = range(1, 19)


@pytest.fixture(scope="module")
def course():
    return drawing.course()


@pytest.fixture(scope="module")
def greens(course):
    index = CourseIndex(course)
    return {number: play_hole(course, number, index).green for number in HOLES}


def test_every_row_of_the_files_is_good():
    pins, bad = read_pins(cup.PINS, holes=HOLES, rounds=(1, 2, 3))
    assert bad == () and {(pin.round, pin.hole) for pin in pins} == {(r, h) for r in (1, 2) for h in HOLES}
    flights = [flight.name for flight in cup.EVENT.flights]
    lengths, bad = read_lengths(cup.LENGTHS, holes=HOLES, rounds=(1, 2, 3), flights=flights)
    assert bad == () and len(lengths) == 3 * len(flights) * 18


def test_the_committee_writes_whole_yards():
    with open(cup.PINS, newline="", encoding="utf-8") as file:
        rows = list(csv.DictReader(file))
    assert all(row[name].lstrip("-").isdigit() for row in rows for name in ("on", "off", "green_depth"))


def test_the_committee_knows_how_deep_the_greens_are(greens):
    for pin in cup.given_pins():
        assert abs(pin.green_depth - greens[pin.hole].depth) <= 0.5 * YARD + 1e-6


def test_all_pins_but_two_are_drawn_as_given():
    given, drawn = cup.given_pins(), cup.drawn_pins()
    otherwise = {
        (a.round, a.hole)
        for a, b in zip(given, drawn)
        if (a.on, a.off, a.off_from) != (b.on, b.off, b.off_from)
    }
    assert otherwise == set(cup.DRAWN_OTHERWISE) and len(otherwise) == 2


def test_pins_are_spread_over_the_greens():
    sides = Counter((pin.round, pin.off_from) for pin in cup.given_pins())
    assert min(sides.values()) >= 4 and len(sides) == 6


def test_lengths_are_near_those_of_the_ground(course):
    sets = {flight.name: flight.tee_set for flight in cup.EVENT.flights}
    measured = {(row.hole, row.tee_set): row.length for row in measure_course(course).lengths}
    for one in cup.lengths():
        assert abs(one.length - measured[one.hole, sets[one.flight]]) < 4 * YARD


def test_pins_lie_where_a_hole_may_be_cut(course, greens):
    """At least four yards from the margin (R&A, Guidance on Running a Competition: four paces)."""
    from yardwright.measure import pins

    for given in (cup.given_pins(), cup.drawn_pins()):
        places = {}
        for pin in given:
            place = pins.place_pin(greens[pin.hole], pin.on, pin.off, pin.off_from)
            assert place.to_margin >= cup.EVENT.limits.margin, (pin.round, pin.hole)
            places[pin.round, pin.hole] = place.point
        for hole in HOLES:
            apart = math.dist(places[1, hole], places[2, hole])
            assert apart >= cup.EVENT.limits.apart, hole


def test_the_event_in_the_course_file(qgis_app, tmp_path, course):
    from yardwright.store.course_file import open_course
    from yardwright.store.events import read_event

    path = make.make_course(str(tmp_path / "Quernhallow.gpkg"), (0, 0, 1, 1))
    make.make_event(path)
    problems = []
    with open_course(path) as layers:
        event = read_event(layers, cup.NAME, problems)
    assert problems == []
    assert (event.rounds, event.flights) == (cup.EVENT.rounds, cup.EVENT.flights)
    assert (len(event.pins), len(event.lengths)) == (36, 162)
    greens = {
        number: feature.geometry
        for feature in course.features
        if feature.kind == "green"
        for number in feature.holes
    }
    from shapely.geometry import Point

    assert all(greens[pin.hole].contains(Point(pin.point)) for pin in event.pins)


def test_the_sheets_of_the_sample(provider, tmp_path):
    """Round 1 has a pin on each of the eighteen greens, which stand on one page."""
    path = make.make_course(str(tmp_path / "Quernhallow.gpkg"), (0, 0, 1, 1))
    make.make_event(path)
    folder = tmp_path / "sheets"
    assert make.write_sheets(path, str(folder)) == 2
    assert sorted(os.listdir(folder)) == [
        "Quernhallow Cup_audit.pdf",
        "Quernhallow Cup_round_1_greens.pdf",
        "pins.csv",
        "tee_setting.csv",
    ]
    assert len(make.rows_of(folder / "pins.csv")) == 18
    assert len(make.rows_of(folder / "tee_setting.csv")) == 54
    told = subprocess.run(
        ["pdfinfo", folder / "Quernhallow Cup_round_1_greens.pdf"], capture_output=True, text=True, check=True
    ).stdout
    assert re.search(r"^Pages: +1$", told, re.MULTILINE)
