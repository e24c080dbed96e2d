"""Where tee markers stand: design of the measurements, "Tee setting". Courses are drawn in yards, so that the
expected figures can be worked out on paper; the two club-lengths are those of the Rules of Golf (definition
of the teeing area; 48 in a club, from memory). The move across a worn tee is common practice, no source."""

import math
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from shapely.affinity import translate
from shapely.geometry import LineString, Point, Polygon
from yardwright.measure.course import measure_course
from yardwright.measure.hole import CourseIndex, play_hole
from yardwright.measure.tee_setting import set_tees
from yardwright.measure.units import YARD
from yardwright.model.course import Feature
from yardwright.model.event import AskedLength, Event, Flight, Limits, Round

from tests.makers import (
    LOCAL,
    area,
    circle,
    course,
    dogleg_hole,
    feature,
    in_yards,
    line,
    only,
    rectangle,
    spot,
    straight_hole,
    tee,
)

CLUBS = 96 / 36  # two clubs of 48 in, in yards
MANY = settings(max_examples=60, deadline=None, derandomize=True)


def event(*flights, wear=0.0, **more):
    """An event in which flight Men plays from Back unless told otherwise; wear in yards."""
    return Event("Cup", flights=flights or (Flight("Men", "Back"),), limits=Limits(wear=wear * YARD), **more)


def asked(yards, hole=1, flight="Men", number=1):
    return AskedLength(number, flight, hole, yards * YARD)


def settings_of(a_course, *lengths, of=None, **how):
    """Rows in yards, with the place in yards as drawn."""
    rows = []
    for row in set_tees(a_course, of or event(), lengths, **how):
        found = in_yards(row)
        if row.x is not None:
            found.x, found.y = row.x / YARD, row.y / YARD
        rows.append(found)
    return rows


def setting(a_course, *lengths, of=None):
    (row,) = settings_of(a_course, *lengths, of=of)
    return row


class Ramp:
    """Ground that rises a metre in a hundred up the page."""

    def height_at(self, points, crs):
        return np.array([y / 100 for _, y in points])


def test_the_rise_from_the_markers_to_the_green():
    """417 yd at 1 in 100: 3.813 m. Without heights, and where no markers stand, none is told."""
    drawn = straight_hole(tees=[long_tee()])
    lengths = asked(417), asked(500, hole=9, number=2)
    rows = set_tees(drawn, event(), lengths, terrain=Ramp())
    assert rows[0].rise_m == pytest.approx(4.17 * YARD, abs=1e-3) and rows[1].rise_m is None
    without = set_tees(drawn, event(), lengths)
    assert [row.rise_m for row in without] == [None, None]
    assert tuple(replace(row, rise_m=None) for row in rows) == without


def long_tee(depth=40.0, width=12.0, fid=2, front=0.0, **more):
    """A tee with its front at y = ``front``, whose yards from the front are the hole's length less 400."""
    return tee(fid, 0, front - depth / 2, depth=depth, width=width, **more)


def tee_of(*corners, fid=2, **more):
    return feature("tee", fid, area(*corners), 1, tee_set="Back", **more)


def test_a_straight_hole_is_set_by_walking_back_from_the_front():
    row = setting(straight_hole(tees=[long_tee()]), asked(417))
    assert row.verdict == "fits" and row.event == "Cup" and row.asked == pytest.approx(417)
    assert (row.x, row.y) == pytest.approx((0, -17), abs=1e-5)
    assert row.got == pytest.approx(417, abs=1e-6)
    assert row.from_front == pytest.approx(17, abs=1e-5)
    assert row.behind == pytest.approx(23, abs=1e-5)
    assert row.from_plate is None and row.remark == ""


def test_two_club_lengths_stay_behind_the_markers():
    row = setting(straight_hole(tees=[long_tee()]), asked(440))
    assert row.verdict == "nearest"
    assert row.got == pytest.approx(440 - CLUBS, abs=1e-5)
    assert row.behind == pytest.approx(CLUBS, abs=1e-5) and row.behind >= CLUBS
    assert row.remark.startswith("longer than the tee allows") and "437.3 yd" in row.remark


@pytest.mark.parametrize(
    ("yards", "verdict"),
    [(440 - CLUBS, "fits"), (440 - CLUBS + 0.01, "nearest"), (400, "fits"), (399.9, "nearest")],
)
def test_the_tee_is_used_up_to_its_edges(yards, verdict):
    assert setting(straight_hole(tees=[long_tee()]), asked(yards)).verdict == verdict


def test_shorter_than_the_front_allows():
    row = setting(straight_hole(tees=[long_tee()]), asked(350))
    assert row.verdict == "nearest"
    assert row.got == pytest.approx(400, abs=1e-5) and row.from_front == pytest.approx(0, abs=1e-5)
    assert row.remark.startswith("shorter than the tee allows") and "400.0 yd" in row.remark


def test_turn_points_ahead_count():
    row = setting(dogleg_hole(tees=[long_tee()]), asked(420))
    assert (row.x, row.y) == pytest.approx((0, -20), abs=1e-5)
    row = setting(dogleg_hole(tees=[tee(2, -30, -20, depth=40, width=20)]), asked(430))
    to_turn = math.dist((row.x, row.y), (0, 240))
    assert row.verdict == "fits" and to_turn + 160 == pytest.approx(430, abs=1e-5)
    # on the ray from the tee's middle to the turn point
    assert (row.x + 30) / 30 == pytest.approx((row.y + 20) / 260, abs=1e-5)


def test_a_forward_tee_past_the_bend_plays_straight():
    row = setting(
        dogleg_hole(tees=[tee(2, 0, -5), tee(5, 60, 240, width=30, depth=8, tee_set="Front")]),
        asked(95),
        of=event(Flight("Men", "Front")),
    )
    assert row.verdict == "fits"
    assert (row.x, row.y) == pytest.approx((65, 240), abs=1e-5)


def test_a_tee_about_the_bend_itself_is_measured_from_both_sides():
    """A tee drawn over the turn point: behind it the leg to it counts, past it the straight way."""
    around = feature("tee", 5, rectangle(-8, 200, 8, 260), 1, tee_set="Front")
    a_course = dogleg_hole(tees=[tee(2, 0, -5), around])
    for yards in (162, 175, 190, 197):
        row = setting(a_course, asked(yards), of=event(Flight("Men", "Front")))
        assert row.verdict == "fits" and row.got == pytest.approx(yards, abs=5e-4)
        assert measured(a_course, row.x * YARD, row.y * YARD) == pytest.approx(yards, abs=1e-3)


# --- tees of any shape


def test_a_tee_shorter_than_two_club_lengths_holds_no_markers():
    row = setting(straight_hole(tees=[long_tee(depth=2.6)]), asked(401))
    assert row.verdict == "impossible"
    assert (row.got, row.x, row.y, row.from_front, row.behind) == (None,) * 5
    assert "two club-lengths (2.7 yd)" in row.remark


def test_the_smallest_tee_holds_markers_at_its_front_only():
    row = setting(straight_hole(tees=[long_tee(depth=CLUBS + 1e-4)]), asked(401))
    assert row.verdict == "nearest"
    assert row.got == pytest.approx(400, abs=1e-3) and row.behind == pytest.approx(CLUBS, abs=1e-3)


def test_an_l_is_set_on_the_line_through_its_centroid():
    # A bar 40 deep and 6 wide with a foot 12 deep: centroid at x = (240 * -3 + 216 * 9) / 456 = 2.68, on the foot.
    ell = tee_of((-6, 0), (0, 0), (0, -28), (18, -28), (18, -40), (-6, -40))
    x, y = (240 * -3 + 216 * 9) / 456, (240 * -20 + 216 * -34) / 456
    row = setting(straight_hole(tees=[ell]), asked(432))
    assert row.verdict == "fits"
    assert (row.x - x) / (row.y - y) == pytest.approx(-x / (400 - y), abs=1e-5)
    assert math.dist((row.x, row.y), (0, 400)) == pytest.approx(432, abs=1e-5)
    short = setting(straight_hole(tees=[ell]), asked(410))
    assert short.verdict == "nearest" and short.from_front == pytest.approx(0, abs=1e-5)
    assert short.got == pytest.approx(428, abs=0.1)


def test_several_pieces_along_the_line():
    # A C open to the right: two bars 10 deep, joined by a spine that the middle line does not meet.
    cee = tee_of((-10, 0), (30, 0), (30, -10), (-4, -10), (-4, -30), (30, -30), (30, -40), (-10, -40))
    a_course = straight_hole(tees=[cee])
    front, back, gap = settings_of(a_course, asked(405), asked(434, number=2), asked(424, number=3))
    assert front.verdict == back.verdict == "fits"
    assert front.from_front == pytest.approx(5, abs=0.2) and front.behind == pytest.approx(5, abs=0.2)
    # Counted on the piece the markers stand on.
    assert back.from_front == pytest.approx(4, abs=0.2) and back.behind == pytest.approx(6, abs=0.2)
    assert gap.verdict == "nearest" and "no tee lies where the asked length would be" in gap.remark
    assert gap.got == pytest.approx(430, abs=0.2) and gap.from_front == pytest.approx(0, abs=1e-5)


def test_a_tee_of_two_parts_is_one_tee():
    parts = rectangle(-5, -10, 5, 0).union(rectangle(-5, -40, 5, -30))
    a_course = straight_hole(tees=[feature("tee", 2, parts, 1, tee_set="Back")])
    assert setting(a_course, asked(434)).verdict == "fits"
    assert setting(a_course, asked(415)).got == pytest.approx(410 - CLUBS, abs=1e-5)
    assert setting(a_course, asked(420)).got == pytest.approx(430, abs=1e-5)


def test_where_the_middle_line_has_no_room_the_longest_chord_is_taken():
    # Two wide wings ahead of a gap: the middle line crosses 2 yd of tee only, the right wing is 20 deep.
    tee_shape = tee_of((-20, 0), (-10, 0), (-10, -18), (10, -18), (10, 0), (21, 0), (21, -20), (-20, -20))
    row = setting(straight_hole(tees=[tee_shape]), asked(410))
    assert row.verdict == "fits" and abs(row.x) > 9
    assert "longest line of play over the tee" in row.remark


def test_of_several_tees_the_one_that_serves_best_is_taken():
    tees = [long_tee(20), long_tee(30, fid=3, front=50, width=20)]
    a_course = straight_hole(tees=tees)
    back, front, between, beyond = settings_of(
        a_course, asked(410), asked(360, number=2), asked(390, number=3), asked(500, number=4)
    )
    assert back.verdict == front.verdict == "fits"
    assert "on tee 2, one of 2 of this set" in back.remark and "on tee 3" in front.remark
    assert between.verdict == "nearest" and between.got == pytest.approx(400, abs=1e-5)
    assert beyond.got == pytest.approx(420 - CLUBS, abs=1e-5)


def test_of_two_tees_that_serve_alike_the_larger_is_taken():
    tees = [long_tee(20), long_tee(20, fid=3, width=20)]
    assert "on tee 3" in setting(straight_hole(tees=tees), asked(410)).remark
    assert "on tee 3" in setting(straight_hole(tees=tees[::-1]), asked(410)).remark


def test_a_tee_askew_to_the_line_of_play_tells_where_it_would_hold_the_length():
    # A strip 8 yd wide from (-12, 0) back to (12, -40): the middle line crosses its middle part only.
    strip = tee_of((-16, 0), (-8, 0), (16, -40), (8, -40))
    row = setting(straight_hole(tees=[strip]), asked(434))
    assert row.verdict == "nearest" and row.x == pytest.approx(0, abs=1e-6)
    # The left edge is at x = -16 - 0.6 y, so that CLUBS lie behind a place 34 yd back where x >= 6.
    assert "the tee holds the asked length about 6 yd to the right" in row.remark
    row = setting(straight_hole(tees=[strip]), asked(404))
    # The right edge is at x = -8 - 0.6 y: 4 yd back the tee ends at x = -5.6.
    assert "the tee holds the asked length about 6 yd to the left" in row.remark
    assert "holds the asked length" not in setting(straight_hole(tees=[strip]), asked(470)).remark


# --- whose tee


def test_one_tee_serves_two_flights_in_one_round():
    a_course = straight_hole(tees=[long_tee(tee_set="White, Yellow")])
    two = event(Flight("Men", "Yellow"), Flight("Boys", "white"), wear=10)
    rows = settings_of(a_course, asked(410), asked(412, flight="Boys"), of=two)
    assert [(row.flight, row.verdict) for row in rows] == [("Boys", "fits"), ("Men", "fits")]
    assert [row.x for row in rows] == pytest.approx([0, 0], abs=1e-6)


def test_a_flight_that_names_no_set_plays_the_one_of_its_name():
    row = setting(straight_hole(tees=[long_tee()]), asked(410, flight="Back"), of=event(Flight("Back")))
    assert row.verdict == "fits" and "names no tee set" in row.remark
    row = setting(straight_hole(tees=[long_tee()]), asked(410, flight="back"))
    assert row.verdict == "fits" and "the event has no flight “back”: the tee set of that name" in row.remark


@pytest.mark.parametrize(
    ("a_course", "length", "said"),
    [
        (straight_hole(), asked(400, flight="Boys"), "the event has no flight “Boys”"),
        (straight_hole(), asked(400, hole=2), "the course has no hole 2"),
        (straight_hole(tees=[tee(2, 0, -5, tee_set="Front")]), asked(400), "no tee of the set “Back”"),
        (course([tee(2, 0, -5)], {1: line((0, -5), (0, 400))}), asked(400), "the hole has no green"),
        (straight_hole(green=rectangle(0, 400, 1e-4, 400.0001)), asked(400), "too small to measure"),
        (course([tee(2, 0, -5)], {1: None}), asked(400), "no line of play is drawn"),
        (straight_hole(), asked(0), "no length is asked for"),
        (straight_hole(), asked(math.nan), "no length is asked for"),
    ],
    ids=["no flight", "no hole", "no tee", "no green", "a dot of a green", "no line", "zero", "not a number"],
)
def test_what_cannot_be_set_is_said(a_course, length, said):
    row = setting(a_course, length)
    assert row.verdict == "impossible" and said in row.remark
    assert (row.got, row.x, row.y, row.from_front, row.behind, row.from_plate) == (None,) * 6


def test_a_flight_without_set_whose_name_is_no_set_is_impossible():
    row = setting(straight_hole(), asked(400), of=event(Flight("Men")))
    assert row.verdict == "impossible" and row.remark == "the flight names no tee set"


def test_a_round_the_event_does_not_have_and_a_hole_it_does_not_play_are_remarked():
    of = event(rounds=(Round(1, holes=(2, 3)), Round(2)))
    rows = settings_of(straight_hole(tees=[long_tee()]), *(asked(410, number=n) for n in (1, 2, 3)), of=of)
    assert [row.remark for row in rows] == [
        "the hole is not played in this round",
        "",
        "the event has no round 3",
    ]
    assert {row.verdict for row in rows} == {"fits"}


def test_rows_come_by_round_flight_and_hole_and_a_second_asking_is_remarked():
    tees = [long_tee(), long_tee(fid=3, front=30, tee_set="Front")]
    of = event(Flight("Men", "Back"), Flight("Boys", "Front"))
    lengths = [asked(410, number=2), asked(412), asked(380, flight="Boys"), asked(413)]
    rows = settings_of(straight_hole(tees=tees), *lengths, of=of)
    assert [(row.round, row.flight, round(row.asked)) for row in rows] == [
        (1, "Boys", 380),
        (1, "Men", 412),
        (1, "Men", 413),
        (2, "Men", 410),
    ]
    assert ["more than once" in row.remark for row in rows] == [False, False, True, False]


# --- the plate


@pytest.mark.parametrize(
    ("yards", "from_plate", "said"),
    [
        (420, 12, "12 yd behind the plate"),
        (405, -3, "3 yd ahead of the plate"),
        (408.4, 0.4, "level with the plate"),
    ],
)
def test_the_markers_are_told_from_the_plate(yards, from_plate, said):
    plate = feature("plate", 9, spot(0, -8), 1, tee_set="Back")
    row = setting(straight_hole(plate, tees=[long_tee()]), asked(yards))
    assert row.from_plate == pytest.approx(from_plate, abs=1e-5) and row.remark == said


def test_in_metres_the_plate_is_told_in_metres():
    plate = feature("plate", 9, spot(0, -8), 1, tee_set="Back")
    row = setting(straight_hole(plate, tees=[long_tee()], settings={"unit": "m"}), asked(420))
    assert row.remark == "11 m behind the plate"  # 12 yd are 10.97 m


def test_a_set_with_a_plate_alone_stands_on_the_tee_its_plate_is_on():
    plate = feature("plate", 9, spot(0, -8), 1, tee_set="Front")
    a_course = straight_hole(plate, tees=[long_tee()])
    row = setting(a_course, asked(420), of=event(Flight("Men", "Front")))
    assert row.verdict == "fits" and row.from_plate == pytest.approx(12, abs=1e-5)


# --- worn places


def across(rows):
    return [round(row.x, 4) for row in rows]


def test_worn_places_are_left_sideways_and_the_length_kept():
    lengths = [asked(410, number=number) for number in (1, 2, 3, 4)]
    rows = settings_of(straight_hole(tees=[long_tee()]), *lengths, of=event(wear=3))
    # 12 yd of width hold middle, 3 right and 3 left; 6 to the right, at the very edge, the length is off the tee.
    assert across(rows)[:3] == pytest.approx([0, 3, -3], abs=0.02)
    assert across(rows)[3] == pytest.approx(0, abs=1e-4)
    assert [row.verdict for row in rows] == ["fits"] * 4
    assert [row.got for row in rows] == pytest.approx([410] * 4, abs=1e-6)
    assert "3.0 yd to the right, clear of the markers of round 1" in rows[1].remark
    assert "3.0 yd to the left, clear of the markers of round 1" in rows[2].remark
    assert rows[3].remark.startswith("0.0 yd from the markers of round 1: the tee is too narrow")


def test_a_place_far_enough_along_the_line_does_not_move():
    rows = settings_of(straight_hole(tees=[long_tee()]), asked(410), asked(413, number=2), of=event(wear=3))
    assert across(rows) == [0, 0] and rows[1].remark == ""


def test_it_moves_no_further_than_the_wear_asks():
    rows = settings_of(straight_hole(tees=[long_tee()]), asked(410), asked(412, number=2), of=event(wear=3))
    first, second = rows
    assert math.dist((first.x, first.y), (second.x, second.y)) == pytest.approx(3, abs=1e-5)
    assert second.x == pytest.approx(math.sqrt(9 - 4), abs=0.02)


def test_a_tee_too_narrow_keeps_the_length_and_says_so():
    rows = settings_of(
        straight_hole(tees=[long_tee(width=4)]), asked(410), asked(411, number=2), of=event(wear=3)
    )
    assert across(rows) == [0, 0] and rows[1].got == pytest.approx(411, abs=1e-6)
    assert "1.0 yd from the markers of round 1: the tee is too narrow" in rows[1].remark


def test_at_the_front_edge_it_moves_too_though_the_length_cannot_be_kept_to_the_millimetre():
    """Places of one length lie on a circle, and beside the middle of a straight front they are off the tee."""
    lengths = [asked(390, number=number) for number in (1, 2, 3)]
    rows = settings_of(straight_hole(tees=[long_tee()]), *lengths, of=event(wear=3))
    assert [row.verdict for row in rows] == ["nearest"] * 3
    assert across(rows) == pytest.approx([0, 3, -3], abs=0.28)
    assert min(row.x**2 for row in rows[1:]) >= (3 - 0.02) ** 2
    assert [row.got for row in rows] == pytest.approx([400] * 3, abs=0.02)
    assert [row.y for row in rows] == pytest.approx([0] * 3, abs=1e-5)
    assert "to the left, clear of the markers of round 1" in rows[2].remark


def test_any_flight_of_an_earlier_round_wears_the_tee():
    a_course = straight_hole(tees=[long_tee(tee_set="Back,Front")])
    two = event(Flight("Men", "Back"), Flight("Boys", "Front"), wear=3)
    rows = settings_of(a_course, asked(410, number=2), asked(410, flight="Boys"), of=two)
    assert across(rows) == pytest.approx([0, 3], abs=0.02)


def test_lengths_the_event_holds_of_earlier_rounds_wear_the_tee_too():
    of = event(wear=3, lengths=(asked(410), asked(500, number=2)))
    (row,) = settings_of(straight_hole(tees=[long_tee()]), asked(410, number=2, flight="men"), of=of)
    assert row.x == pytest.approx(3, abs=0.02) and "round 1" in row.remark


def test_another_tee_of_the_set_that_is_not_worn_is_preferred():
    tees = [long_tee(width=12), feature("tee", 3, rectangle(20, -40, 23, 0), 1, tee_set="Back")]
    rows = settings_of(straight_hole(tees=tees), asked(410), asked(410, number=2), of=event(wear=7))
    assert "on tee 2" in rows[0].remark and "on tee 3" in rows[1].remark
    assert rows[1].verdict == "fits" and "narrow" not in rows[1].remark


def test_a_tee_two_holes_share_is_worn_by_both():
    shared = feature("tee", 2, rectangle(-6, -40, 6, 0), 1, 2, tee_set="Back")
    greens = [feature("green", 1, circle(0, 400, 15), 1), feature("green", 3, circle(0, 380, 15), 2)]
    lines = {1: line((0, -5), (0, 400)), 2: line((0, -5), (0, 380))}
    a_course = course([shared, *greens], lines, {1: 4, 2: 4})
    rows = settings_of(a_course, asked(410), asked(390, hole=2, number=2), of=event(wear=3))
    assert across(rows) == pytest.approx([0, 3], abs=0.02)


# --- what must hold for any tee


def measured(a_course, x, y):
    """The hole's length from a plate of its own set at a place (course's CRS), as the tables measure it, yards."""
    plate = Feature("plate", 999, Point(x, y), (1,), attributes={"tee_set": "Set today"})
    found = measure_course(replace(a_course, features=(*a_course.features, plate)))
    return only(found.lengths, hole=1, tee_set="Set today").length / YARD


def blob(random, corners=9):
    turns = (np.arange(corners) + random.uniform(0.1, 0.9, corners)) * (2 * math.pi / corners)
    radii = random.uniform(2, 16, corners)
    return Polygon(np.column_stack([radii * np.cos(turns), radii * np.sin(turns)]))


@st.composite
def tees_and_holes(draw):
    """A hole with up to two bends, turned and moved anyhow, and a tee of any shape about its start."""
    random = np.random.default_rng(draw(st.integers(0, 2**32 - 1)))
    points, heading = [np.array([0.0, 0.0])], random.uniform(-0.4, 0.4)
    for _ in range(draw(st.integers(1, 3))):
        points.append(
            points[-1] + random.uniform(190, 250) * np.array([math.sin(heading), math.cos(heading)])
        )
        heading += random.choice([-1, 1]) * random.uniform(0.25, 0.9)
    if len(points) == 2:
        points[1] = points[1] * 1.9
    shape = translate(blob(random), *random.uniform(-20, 20, 2))
    features = [
        feature("tee", 2, shape, 1, tee_set="Back"),
        feature("green", 3, circle(*points[-1], random.uniform(9, 17)), 1),
    ]
    crs, origin = draw(st.sampled_from([(LOCAL, (0, 0)), ("EPSG:32630", (490000, 6240000))]))
    a_course = course(
        features,
        {1: LineString(points)},
        {1: 4},
        turned=random.uniform(0, 360),
        moved=np.array(origin) + random.uniform(-3000, 3000, 2),
        crs=crs,
    )
    middle = play_hole(a_course, 1).tees[0].length / YARD
    return a_course, middle + draw(st.floats(-30, 30))


@MANY
@given(tees_and_holes())
def test_a_fitting_place_measures_the_asked_length_and_is_a_teeing_area(drawn):
    a_course, yards = drawn
    (row,) = set_tees(a_course, event(), [asked(yards)])
    assume(row.verdict == "fits")
    assert abs(measured(a_course, row.x, row.y) - yards) * YARD < 1e-3
    assert row.behind >= 2.4384
    assert stands_well(a_course, row)


@MANY
@given(tees_and_holes())
def test_no_place_on_the_middle_line_serves_better(drawn):
    """Dense sampling of the line of play through the tee's middle, with shapely alone."""
    a_course, yards = drawn
    (row,) = set_tees(a_course, event(), [asked(yards)])
    assume("longest line" not in row.remark)
    played = play_hole(a_course, 1)
    shape = next(f.geometry for f in played.features if f.kind == "tee")
    way = LineString([shape.centroid, *map(tuple, played.drawn.points[1:-1]), tuple(played.end)])
    towards = np.array(way.coords[1]) - np.array(way.coords[0])
    unit = towards / np.hypot(*towards)
    best = math.inf
    for along in np.arange(-30, 30, 0.25):
        place = np.array(way.coords[0]) + along * unit
        if LineString([place, place - 2.44 * unit]).within(shape):
            length = way.length - along
            best = min(best, abs(length - yards * YARD))
    if row.verdict == "impossible":
        assert best == math.inf
    else:
        assert abs(row.got - yards * YARD) <= best + 1e-3
        assert stands_well(a_course, row)
    assert (row.verdict == "fits") == (row.got is not None and abs(row.got - yards * YARD) < 1e-3)


def stands_well(a_course, row):
    """On the tee, with two club-lengths of it behind, on the way to the next turn point: by shapely."""
    played = play_hole(a_course, 1)
    (place,) = played.frame.to_frame(a_course.crs)([(row.x, row.y)])
    shape = next(f.geometry for f in played.features if f.kind == "tee").buffer(1e-5)
    aim = played.drawn.points[1] if len(played.drawn.points) > 2 else played.end
    unit = (aim - place) / np.hypot(*(aim - place))
    return LineString([place, place - 2.4384 * unit]).within(shape)


@MANY
@given(tees_and_holes(), st.floats(0.5, 6))
def test_no_two_rounds_wear_one_place_unless_it_is_said(drawn, wear):
    a_course, yards = drawn
    lengths = [asked(yards + change, number=number) for number, change in enumerate((0, 0.5, -1), start=1)]
    rows = set_tees(a_course, event(wear=wear), lengths)
    assume(rows[0].verdict == "fits")
    to_frame = play_hole(a_course, 1).frame.to_frame(a_course.crs)
    for number, row in enumerate(rows):
        assert stands_well(a_course, row)
        if row.verdict == "fits":
            assert abs(measured(a_course, row.x, row.y) * YARD - row.asked) < 1e-3
        places = to_frame([(one.x, one.y) for one in rows[: number + 1]])
        nearest = min((math.dist(places[-1], place) for place in places[:-1]), default=math.inf)
        assert (nearest < wear * YARD - 0.01 - 1e-5) == ("too narrow" in row.remark)


def test_eighteen_holes_four_rounds_three_flights_are_one_index():
    """One index for all, so that no hole is laid out twice."""
    a_course = straight_hole(tees=[long_tee()])
    index = CourseIndex(a_course)
    settings_of(a_course, asked(410), index=index)
    assert list(index.played) == [1]
