"""Reach, clear, enter, leave, side, aside, station, short of green, forced carries, the corridor."""

import math

import pytest

from tests.makers import (
    area,
    circle,
    course,
    dogleg_hole,
    feature,
    line,
    only,
    rectangle,
    spot,
    straight_hole,
    tables,
    tee,
)

HYPOT = math.hypot


def row_of(a_course, fid, tee_set="Back", hole=1):
    rows = [row for row in tables(a_course).distances if row.kind != "green"]
    return only(rows, feature_id=fid, tee_set=tee_set, hole=hole)


def near(value):
    return pytest.approx(value, abs=1e-4)


# Straight holes


def test_a_bunker_beside_the_line():
    row = row_of(straight_hole(feature("bunker", 5, rectangle(20, 220, 34, 240), label="Long one")), 5)
    assert row.kind == "bunker" and row.label == "Long one" and row.side == "right"
    assert row.reach == near(HYPOT(20, 220)) and row.clear == near(HYPOT(34, 240))
    assert row.enter is None and row.leave is None and row.middle is None
    assert row.aside == near(20)
    assert (row.station_near, row.station_far) == (near(220), near(240))
    assert row.forced_carry == "no"


def test_reach_is_to_the_outline_not_to_a_vertex():
    row = row_of(straight_hole(feature("bunker", 5, rectangle(-60, 200, 60, 210))), 5)
    assert row.reach == near(200) and row.clear == near(HYPOT(60, 210))


def test_a_stream_right_across():
    row = row_of(straight_hole(feature("penalty_area", 5, rectangle(-100, 180, 100, 195))), 5)
    assert (row.side, row.aside) == ("across", 0)
    assert (row.enter, row.leave) == (near(180), near(195))
    assert row.forced_carry == "yes"
    assert row.short_of_green == near(385 - 195)


def test_enter_and_leave_of_a_hazard_crossed_twice_are_first_and_last():
    hook = area(
        (-10, 200),
        (10, 200),
        (10, 210),
        (0.001, 210),
        (0.001, 230),
        (10, 230),
        (10, 240),
        (-10, 240),
        (-10, 230),
        (-0.001, 230),
        (-0.001, 210),
        (-10, 210),
    )
    row = row_of(straight_hole(feature("bunker", 5, hook)), 5)
    assert (row.enter, row.leave) == (near(200), near(240))


def test_a_path_is_crossed_at_one_place():
    path = feature("path", 5, line((-50, 190), (50, 210)))
    row = row_of(straight_hole(path), 5)
    assert row.enter == row.leave == near(200)
    assert row.side == "across" and row.forced_carry == "no"


def test_a_tree_counts_with_its_crown():
    row = row_of(straight_hole(feature("tree", 5, spot(-30, 200), crown_radius_m=4 * 0.9144)), 5)
    assert row.side == "left"
    assert row.reach == pytest.approx(HYPOT(30, 200) - 4, abs=0.001)
    assert row.clear == pytest.approx(HYPOT(30, 200) + 4, abs=0.001)
    assert row.aside == pytest.approx(26, abs=0.001)


def test_a_tree_of_unknown_crown_is_a_point():
    row = row_of(straight_hole(feature("tree", 5, spot(30, 200))), 5)
    assert row.reach == row.clear == near(HYPOT(30, 200)) and row.side == "right"


def test_a_target_has_its_distance():
    row = row_of(straight_hole(feature("target", 5, spot(3, 250), label="Chimney")), 5)
    assert row.reach == row.clear == near(HYPOT(3, 250)) and row.short_of_green == near(HYPOT(3, 135))


def test_the_green_is_a_row_for_each_tee_set():
    tees = [tee(2, 0, -5), tee(3, 0, 35, tee_set="Front")]
    a_course = straight_hole(tees=tees)
    for tee_set, shift in (("Back", 0), ("Front", 40)):
        row = only(tables(a_course).distances, kind="green", tee_set=tee_set)
        assert (row.reach, row.middle, row.clear) == (near(385 - shift), near(400 - shift), near(415 - shift))
        assert row.feature_id == 1


# Short of the green


def test_short_of_green_of_a_bunker_beside_is_straight_from_its_point_of_greatest_station():
    row = row_of(straight_hole(feature("bunker", 5, area((20, 300), (30, 320), (24, 330)))), 5)
    assert row.station_far == near(330)
    assert row.short_of_green == near(HYPOT(24, 55))


def test_a_bunker_behind_the_front_of_the_green_is_negative():
    beside = row_of(straight_hole(feature("bunker", 5, rectangle(20, 390, 26, 400))), 5)
    assert beside.short_of_green == near(-HYPOT(20, 15)) or beside.short_of_green == near(-HYPOT(26, 15))
    behind = row_of(straight_hole(feature("bunker", 5, area((-3, 420), (5, 420), (1, 430)))), 5)
    assert behind.short_of_green == near(-HYPOT(1, 45))
    assert behind.station_near == near(420) and behind.station_far == near(430)


def test_past_a_bend_short_of_green_is_the_difference_of_stations():
    # Beside the first leg, to its left; the green's front is at station 240 + 145.
    row = row_of(dogleg_hole(feature("bunker", 5, rectangle(-40, 180, -25, 200))), 5)
    assert (row.side, row.aside) == ("left", near(25))
    assert row.short_of_green == near(385 - 200)


def test_after_the_bend_side_and_station_follow_the_second_leg():
    a_course = dogleg_hole(
        feature("bunker", 5, rectangle(60, 255, 80, 270)), feature("bunker", 6, rectangle(60, 200, 80, 220))
    )
    left, right = row_of(a_course, 5), row_of(a_course, 6)
    assert (left.side, left.aside, left.station_near, left.station_far) == (
        "left",
        near(15),
        near(300),
        near(320),
    )
    assert (right.side, right.aside) == ("right", near(20))
    assert left.reach == near(HYPOT(60, 255))  # straight from the tee, over the corner


def test_a_bunker_outside_the_elbow_is_on_the_outer_side():
    row = row_of(dogleg_hole(feature("bunker", 5, rectangle(-30, 250, -10, 270))), 5)
    assert row.side == "left"


def test_the_green_past_a_bend_counts_legs_to_the_turn_point_then_straight():
    row = only(tables(dogleg_hole()).distances, kind="green")
    assert (row.reach, row.middle, row.clear) == (near(385), near(400), near(415))


# Forced carries


def pond(fid=5):
    return feature("penalty_area", fid, rectangle(-30, 180, 30, 200))


def test_a_pond_with_fairway_beside_it_is_no_forced_carry():
    beside = feature("fairway", 6, rectangle(30, 150, 50, 350))
    before = feature("fairway", 6, rectangle(-20, 120, 20, 170))
    assert row_of(straight_hole(pond(), beside), 5).forced_carry == "no"
    assert row_of(straight_hole(pond(), before), 5).forced_carry == "yes"
    assert row_of(straight_hole(pond()), 5).forced_carry == "yes"


def test_fairway_outside_the_corridor_is_no_way_round():
    far = feature("fairway", 6, rectangle(61, 150, 90, 350))
    assert row_of(straight_hole(pond(), far), 5).forced_carry == "yes"


def test_a_stream_through_the_fairway_is_a_forced_carry():
    stream = feature("penalty_area", 5, area((-90, 150), (-90, 160), (90, 230), (90, 220)))
    fairway = feature("fairway", 6, rectangle(-20, 120, 20, 360))
    row = row_of(straight_hole(stream, fairway), 5)
    assert row.forced_carry == "yes"


def test_the_fairway_itself_is_no_carry():
    row = row_of(straight_hole(feature("fairway", 6, rectangle(-20, 120, 20, 360))), 6)
    assert (row.side, row.enter, row.leave, row.forced_carry) == ("across", near(120), near(360), "no")


def test_each_tee_set_has_its_own_carry():
    tees = [tee(2, 0, -5), tee(3, 0, 205, tee_set="Front")]
    a_course = straight_hole(pond(), tees=tees)
    assert row_of(a_course, 5).forced_carry == "yes"
    rows = [row for row in tables(a_course).distances if row.tee_set == "Front" and row.feature_id == 5]
    assert rows == []  # wholly behind the forward tee


# Corridor, and whose a feature is


def test_a_long_river_is_cut_to_the_corridor():
    river = feature("penalty_area", 5, rectangle(-400, 180, 400, 195))
    row = row_of(straight_hole(river), 5)
    assert row.reach == near(180)
    assert row.clear == pytest.approx(HYPOT(60, 195), abs=1e-3)


def test_the_corridor_is_a_setting():
    river = feature("penalty_area", 5, rectangle(-400, 180, 400, 195))
    row = row_of(straight_hole(river, settings={"corridor_yd": 25}), 5)
    assert row.clear == pytest.approx(HYPOT(25, 195), abs=1e-3)


@pytest.mark.parametrize("aside, counts", [(59.9, True), (60.1, False)])
def test_a_feature_without_hole_counts_within_60_yd(aside, counts):
    bunker = feature("bunker", 5, rectangle(aside, 200, aside + 20, 210))
    rows = [row for row in tables(straight_hole(bunker)).distances if row.feature_id == 5]
    assert bool(rows) is counts


def test_a_feature_given_to_other_holes_only_is_out():
    a_course = straight_hole(feature("bunker", 5, rectangle(20, 220, 34, 240), 2))
    assert [row.kind for row in tables(a_course).distances] == ["green"]
    both = straight_hole(feature("bunker", 5, rectangle(20, 220, 34, 240), 2, 1))
    assert row_of(both, 5).reach == near(HYPOT(20, 220))


def test_a_feature_given_to_the_hole_but_outside_is_listed_uncut_with_a_remark():
    row = row_of(straight_hole(feature("bunker", 5, rectangle(70, 220, 90, 240), 1)), 5)
    assert row.remark == "given to this hole but wholly outside its corridor"
    assert (row.reach, row.clear, row.aside) == (near(HYPOT(70, 220)), near(HYPOT(90, 240)), near(70))


def test_a_given_feature_partly_inside_is_cut():
    row = row_of(straight_hole(feature("bunker", 5, rectangle(50, 220, 90, 240), 1)), 5)
    assert row.remark == "" and row.clear == pytest.approx(HYPOT(60, 240), abs=1e-3)


def test_what_is_not_listed_has_no_row():
    kinds = ("apron", "rough", "boundary")
    shapes = {"boundary": line((-10, 200), (-10, 300))}
    extras = [
        feature(kind, n, shapes.get(kind, rectangle(-10, 200, 10, 300)), 1)
        for n, kind in enumerate(kinds, 10)
    ]
    assert [row.kind for row in tables(straight_hole(*extras)).distances] == ["green"]


def test_two_holes_that_share_a_bunker_each_measure_it():
    # Parallel holes 80 yd apart, played opposite ways, a bunker between them given to none.
    features = [
        feature("green", 1, circle(0, 400, 15), 1),
        tee(2, 0, -5),
        feature("green", 3, circle(80, 0, 15), 2),
        tee(4, 80, 405, hole=2),
        feature("bunker", 5, rectangle(35, 150, 45, 170)),
    ]
    a_course = course(features, {1: line((0, -5), (0, 400)), 2: line((80, 405), (80, 0))}, {1: 4, 2: 4})
    one, two = row_of(a_course, 5, hole=1), row_of(a_course, 5, hole=2)
    assert (one.side, two.side) == ("right", "right")
    assert one.reach == near(HYPOT(35, 150))
    assert two.reach == near(HYPOT(35, 230))


def test_rows_of_a_tee_come_nearest_first():
    bunkers = [feature("bunker", 10 + n, rectangle(20, y, 30, y + 5)) for n, y in enumerate((300, 100, 200))]
    rows = [row for row in tables(straight_hole(*bunkers)).distances if row.kind != "green"]
    assert [row.feature_id for row in rows] == [11, 12, 10]


def test_figures_in_metres_when_the_course_is_in_metres():
    """The rows hold metres inside; only remarks and par checks are in the course's unit."""
    a_course = straight_hole(settings={"unit": "m"}, scorecard={(1, "Back"): 410})
    row = only(tables(a_course).lengths, hole=1)
    assert row.difference == near(-10)
    assert "9 m shorter than the scorecard" in row.remark


# What the sampling and the mirrors of test_properties brought to light


@pytest.mark.parametrize("turned", [0, 17, 40, 73, 131, 222, 301])
def test_a_stream_right_across_the_corridor_is_a_carry_however_the_hole_lies(turned):
    """Cut to the corridor, the stream must not leave a hair of ground along the corridor's margin."""
    stream = feature("penalty_area", 5, area((-300, 70), (-300, 79), (300, 49), (300, 40)))
    fairway = feature("fairway", 6, rectangle(-20, 20, 20, 360))
    a_course = straight_hole(stream, fairway, turned=turned)
    assert row_of(a_course, 5).forced_carry == "yes"


@pytest.mark.parametrize("turned", range(0, 360, 24))
def test_a_fairway_that_begins_under_the_tee_is_crossed_however_the_hole_lies(turned):
    """Cut square at the tee, the fairway begins at the very point where the line does."""
    fairway = feature("fairway", 6, rectangle(-20, -40, 20, 360))
    row = row_of(dogleg_hole(fairway, turned=turned), 6)
    assert (row.side, row.aside) == ("across", 0)
    assert (row.enter, row.leave) == (near(0), near(240 + 20))


def test_outside_a_bend_the_nearest_point_of_a_wood_counts():
    """A wood in the wedge outside the elbow lies at the turn's station as a whole: from its point nearest to the
    turn point it is straight to the front of the green, at (145, 240)."""
    wood = feature("trees", 5, area((-10, 250), (-30, 250), (-30, 280), (-10, 280)))
    row = row_of(dogleg_hole(wood), 5)
    assert row.station_near == row.station_far == near(240)
    assert row.short_of_green == near(HYPOT(155, 10))


def test_stations_across_the_inside_of_a_bend():
    """Inside the elbow the station jumps on the bisector, from 190 to 290 at (50, 190): a bunker that reaches
    across with one corner, (45, 200), has its greatest station where its side leaves the bisector."""
    row = row_of(dogleg_hole(feature("bunker", 5, area((30, 180), (60, 170), (45, 200)))), 5)
    assert (row.station_near, row.station_far) == (near(170), near(290))
    assert row.short_of_green == near(HYPOT(145 - 50, 50))


def test_a_point_on_the_line_is_across():
    row = row_of(straight_hole(feature("target", 5, spot(0, 200))), 5)
    assert row.aside == pytest.approx(0, abs=1e-6)
    if row.side == "across":
        assert row.enter == row.leave == near(200)
