"""Fairway widths and run-out, doglegs, lay-ups."""

import math

import pytest
from yardwright.model.course import TeeSet

from tests.makers import (
    area,
    circle,
    course,
    dogleg_hole,
    feature,
    line,
    only,
    rectangle,
    straight_hole,
    tables,
    tee,
)


def near(value):
    return pytest.approx(value, abs=1e-4)


def rows(a_course, table="fairways", tee_set="Back"):
    return [row for row in getattr(tables(a_course), table) if row.tee_set == tee_set]


def test_width_left_and_right_every_ten_yards_of_the_landing_zones():
    """Landing zones of men: Course Rating Manual 9, bogey 200 and 370, scratch 250 and 470 yards."""
    fairway = feature("fairway", 5, area((-20, 150), (15, 150), (15, 425), (-20, 425)))
    found = rows(straight_hole(fairway, length=480))
    assert [row.station for row in found] == near([*range(200, 251, 10), *range(370, 421, 10)])
    assert all((row.left, row.right, row.width) == (near(20), near(15), near(35)) for row in found)
    assert all((row.first, row.last) == (near(150), near(425)) for row in found)


def test_the_zones_of_women_are_nearer():
    """Course Rating Manual 9: bogey 150 and 280, scratch 210 and 400 yards."""
    fairway = feature("fairway", 5, rectangle(-20, 100, 20, 360))
    a_course = straight_hole(fairway, tee_sets=[TeeSet("Back", players="women")])
    assert [row.station for row in rows(a_course)] == near([*range(150, 211, 10), *range(280, 361, 10)])


def test_the_step_is_a_setting():
    fairway = feature("fairway", 5, rectangle(-20, 100, 20, 300))
    found = rows(straight_hole(fairway, length=360, settings={"fairway_step_yd": 25}))
    assert [row.station for row in found] == near([200, 225, 250])


def test_the_width_is_square_to_the_leg_at_its_station():
    # Past the bend play is to the right; the fairway there is 12 yd to the left, 9 to the right of the line.
    fairway = feature("fairway", 5, rectangle(-15, 120, 140, 252))
    clear = feature("fairway", 5, area((-15, 120), (15, 120), (15, 231), (140, 231), (140, 252), (-15, 252)))
    a_course = dogleg_hole(clear, first=240, second=220)
    row = next(row for row in rows(a_course) if row.station == near(370))
    assert (row.left, row.right) == (near(12), near(9))
    whole = next(row for row in rows(dogleg_hole(fairway, second=220)) if row.station == near(370))
    assert whole.right == near(120)  # the chord ends at the polygon's margin, not at the corridor


def test_a_line_beside_the_fairway_is_told_of():
    fairway = feature("fairway", 5, rectangle(8, 150, 40, 350))
    found = rows(straight_hole(fairway))
    assert found[0].width == near(32) and found[0].left == near(-8) and found[0].right == near(40)
    assert "off the fairway" in found[0].remark and "does not cross" in found[0].remark


def test_an_island_of_rough_splits_the_chord():
    ring = rectangle(-20, 150, 20, 350).difference(rectangle(5, 190, 10, 260))
    row = rows(straight_hole(feature("fairway", 5, ring)))[0]
    assert (row.left, row.right) == (near(20), near(5))


def test_two_pieces_of_fairway_are_one():
    pieces = [
        feature("fairway", 5, rectangle(-20, 150, 0, 350)),
        feature("fairway", 6, rectangle(0, 150, 14, 350)),
    ]
    row = rows(straight_hole(*pieces))[0]
    assert (row.left, row.right, row.width) == (near(20), near(14), near(34))


def test_a_hole_without_fairway_has_no_rows():
    a_course = straight_hole(length=170, par=3)
    assert rows(a_course) == []
    assert rows(a_course, "lengths")[0].length == near(170)


def test_a_fairway_that_ends_before_the_first_station_still_has_first_and_last():
    found = rows(straight_hole(feature("fairway", 5, rectangle(-20, 90, 20, 180))))
    assert len(found) == 1 and found[0].station is None
    assert (found[0].first, found[0].last) == (near(90), near(180))


def test_the_run_out_goes_straight_through_the_turn_point():
    fairway = feature("fairway", 5, rectangle(-15, 120, 100, 262))
    found = rows(dogleg_hole(fairway))
    assert found[0].run_out == near(262)
    assert rows(straight_hole(fairway))[0].run_out is None


def test_the_run_out_counts_from_each_tee_on_its_own_way_to_the_turn():
    fairway = feature("fairway", 5, rectangle(-40, 120, 100, 272))
    tees = [tee(2, 0, -5), tee(3, 30, -5, tee_set="Side", depth=0.002, width=0.002)]
    a_course = dogleg_hole(fairway, tees=tees)
    scale = math.hypot(30, 245) / 245
    assert rows(a_course, tee_set="Side")[0].run_out == pytest.approx(277 * scale, abs=0.01)


def test_the_dogleg_table():
    # 150 up, then the 4-3-5 leg to the right, then up again: 36.87 degrees each way.
    a_course = course(
        [feature("green", 1, circle(60, 350, 12), 1), tee(2, 0, -5)],
        {1: line((0, -5), (0, 150), (60, 230), (60, 350))},
        {1: 4},
    )
    first, second = rows(a_course, "doglegs")
    angle = math.degrees(math.atan2(60, 80))
    assert (first.turn, first.turn_side, first.turn_station) == (1, "right", near(150))
    assert (second.turn, second.turn_side, second.turn_station) == (2, "left", near(250))
    assert first.turn_angle == near(angle) and second.turn_angle == near(angle)
    assert (first.to_green, second.to_green) == (near(220), near(120))


def test_a_straight_hole_has_no_doglegs():
    assert rows(straight_hole(), "doglegs") == []


def test_lay_ups_from_each_tee():
    tees = [tee(2, 0, -5), tee(3, 0, 35, tee_set="Front")]
    a_course = straight_hole(tees=tees)
    assert [(row.remaining, row.station) for row in rows(a_course, "layups")] == [
        (near(100), near(300)),
        (near(125), near(275)),
        (near(150), near(250)),
        (near(200), near(200)),
    ]
    assert [row.station for row in rows(a_course, "layups", "Front")] == near([260, 235, 210, 160])


def test_lay_ups_along_the_bend_and_never_behind_the_tee():
    a_course = dogleg_hole(first=80, second=60, settings={"layup_yd": (50.0, 100.0, 200.0)})
    assert [row.station for row in rows(a_course, "layups")] == near([90, 40])


def test_lay_ups_leave_the_distance_to_the_middle_not_to_the_end_of_the_line():
    green = feature("green", 1, area((0, 385), (15, 415), (-15, 415)), 1)
    a_course = course([green, tee(2, 0, -5)], {1: line((0, -5), (0, 409))}, {1: 4})
    assert only(rows(a_course, "layups"), remaining=near(100)).station == near(300)
