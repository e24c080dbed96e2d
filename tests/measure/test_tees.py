"""The tee reference, and the line of play of each tee: design of the measurements, "Line of play"."""

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
    spot,
    straight_hole,
    tables,
    tee,
)


def length(a_course, tee_set="Back"):
    return only(tables(a_course).lengths, tee_set=tee_set).length


@pytest.mark.parametrize("which, expected", [("front", 400.0), ("centre", 405.0), ("back", 410.0)])
def test_the_setting_chooses_front_centre_or_back_of_the_tee(which, expected):
    assert length(straight_hole(settings={"tee_reference": which})) == pytest.approx(expected, abs=1e-6)


def test_the_reference_lies_on_the_ray_from_the_centroid_along_the_first_leg():
    # A triangle with its base at the front: centroid 10/3 behind it, apex 10 behind it.
    triangle = feature("tee", 2, area((-6, 0), (6, 0), (0, -10)), 1, tee_set="Back")
    assert length(straight_hole(tees=[triangle])) == pytest.approx(400.0, abs=1e-6)
    assert length(straight_hole(tees=[triangle], settings={"tee_reference": "centre"})) == pytest.approx(
        400 + 10 / 3, abs=1e-6
    )
    assert length(straight_hole(tees=[triangle], settings={"tee_reference": "back"})) == pytest.approx(
        410, abs=1e-6
    )


def test_the_ray_aims_at_the_turn_point_not_along_the_drawn_line():
    # The tee stands 30 yd left of the line; it aims at the turn point (0, 240) from its own centroid.
    a_course = dogleg_hole(tees=[tee(2, -30, 0)])
    centroid_to_front = 5 / 240 * (30**2 + 240**2) ** 0.5  # where the ray rises by the half depth of 5
    assert length(a_course) == pytest.approx((30**2 + 240**2) ** 0.5 - centroid_to_front + 160, abs=1e-6)


def test_a_plate_of_the_tee_set_overrides_the_tee():
    plate = feature("plate", 3, spot(2, -3), 1, tee_set="Back")
    for which in ("front", "centre", "back"):
        a_course = straight_hole(plate, settings={"tee_reference": which})
        assert length(a_course) == pytest.approx((2**2 + 403**2) ** 0.5, abs=1e-5)


def test_a_plate_of_another_set_or_hole_does_not():
    plates = [
        feature("plate", 3, spot(2, -3), 1, tee_set="Front"),
        feature("plate", 4, spot(0, 9), 2, tee_set="Back"),
    ]
    a_course = straight_hole(*plates)
    assert length(a_course) == pytest.approx(400.0, abs=1e-6)
    assert length(a_course, "Front") == pytest.approx((2**2 + 403**2) ** 0.5, abs=1e-5)


def test_a_turn_point_behind_the_tee_is_passed_over():
    # The forward tee stands past the bend: its line is straight, from its front on its own first leg.
    forward = tee(5, 60, 240, tee_set="Forward", depth=6, width=10)
    a_course = dogleg_hole(tees=[tee(2, 0, -5), forward])
    assert length(a_course) == pytest.approx(400.0, abs=1e-6)
    assert length(a_course, "Forward") == pytest.approx(160 - 65, abs=1e-6)
    assert [row.tee_set for row in tables(a_course).doglegs] == ["Back"]


def test_a_tee_level_with_the_turn_but_just_short_of_it_still_bends():
    short_of_it = tee(5, 10, 230, tee_set="Forward", depth=4, width=4)
    a_course = dogleg_hole(tees=[tee(2, 0, -5), short_of_it])
    row = only(tables(a_course).doglegs, tee_set="Forward")
    assert row.turn_station + row.to_green == pytest.approx(length(a_course, "Forward"), abs=1e-9)
    assert row.to_green == pytest.approx(160.0, abs=1e-6)


def test_one_tee_may_serve_several_sets():
    a_course = straight_hole(tees=[tee(2, 0, -5, tee_set="White, Yellow")])
    assert [(row.tee_set, round(row.length, 6)) for row in tables(a_course).lengths] == [
        ("White", 400.0),
        ("Yellow", 400.0),
    ]


def test_rows_come_in_the_order_of_the_tee_sets():
    tees = [tee(2, 0, -5, tee_set="B"), tee(3, 0, 30, tee_set="A"), tee(4, 0, 50, tee_set="Stray")]
    a_course = straight_hole(tees=tees, tee_sets=[TeeSet("B", sort=1), TeeSet("A", sort=2)])
    assert [row.tee_set for row in tables(a_course).lengths] == ["B", "A", "Stray"]


def test_of_several_tees_of_a_set_the_largest_counts_and_a_remark_names_the_rest():
    a_course = straight_hole(tees=[tee(2, 0, -5), tee(3, 0, 40, depth=30, width=20)])
    row = only(tables(a_course).lengths, tee_set="Back")
    assert row.length == pytest.approx(400 - 55, abs=1e-6)
    assert "several tees of this set" in row.remark and "2" in row.remark


def test_a_tee_without_a_set_is_measured_with_a_remark():
    a_course = straight_hole(tees=[feature("tee", 2, rectangle(-3, -10, 3, 0), 1)])
    row = only(tables(a_course).lengths, hole=1)
    assert row.tee_set == "" and row.length == pytest.approx(400.0, abs=1e-6)
    assert "names no tee set" in row.remark


def test_a_tee_without_hole_is_given_to_the_hole_it_stands_on_with_a_remark():
    lost = feature("tee", 2, rectangle(-3, -10, 3, 0), tee_set="Back")
    row = only(tables(straight_hole(tees=[lost])).lengths, tee_set="Back")
    assert row.length == pytest.approx(400.0, abs=1e-6)
    assert "has no hole number" in row.remark


def test_a_practice_tee_far_from_every_line_is_measured_nowhere():
    # 100 yd beside the second half of the bent hole, well inside the hole's bounding box.
    practice = feature("tee", 9, rectangle(130, 60, 150, 70), tee_set="Practice")
    found = tables(dogleg_hole(practice))
    assert {row.tee_set for row in found.lengths} == {"Back"}
    assert any("tee 9" in problem for problem in found.problems)


def test_the_length_counts_legs_between_turn_points():
    # Two bends of legs 3-4-5: 150 up, then 80-60-100, then 120 up.
    a_course = course(
        [feature("green", 1, circle(60, 350, 12), 1), tee(2, 0, -5)],
        {1: line((0, -5), (0, 150), (60, 230), (60, 350))},
        {1: 4},
    )
    assert length(a_course) == pytest.approx(150 + 100 + 120, abs=1e-6)
