"""Courses that lack or repeat things: a remark or a problem that names it, never an error, never a guess."""

from dataclasses import replace

import pytest
from shapely.geometry import MultiPolygon
from yardwright.measure.course import measure_course
from yardwright.measure.hole import play_hole
from yardwright.model.errors import Cancelled, YardwrightError

from tests.makers import circle, course, feature, line, only, rectangle, spot, straight_hole, tables, tee


def test_no_line_no_tee_no_green_at_all():
    found = tables(course([], {1: None}, {1: 4}))
    assert only(found.lengths, hole=1).remark == "no line of play is drawn"
    assert only(found.lengths, hole=1).par == 4
    assert only(found.greens, hole=1).depth is None
    assert found.distances == found.markers == []


def test_no_hole_at_all():
    found = tables(course([feature("bunker", 5, rectangle(0, 0, 5, 5))], {}))
    assert found.lengths == found.greens == []


def test_a_card_without_drawing_is_listed():
    found = tables(
        course([], {1: None}, {1: 4}, scorecard={(1, "Back"): 400, (1, "Front"): 350, (2, "Back"): 1})
    )
    assert [(row.tee_set, row.scorecard, row.length) for row in found.lengths] == [
        ("Back", pytest.approx(400), None),
        ("Front", pytest.approx(350), None),
    ]


def test_no_green_measures_to_the_end_of_the_line():
    found = tables(course([tee(2, 0, -5)], {1: line((0, -5), (0, 400))}, {1: 4}))
    row = only(found.lengths, hole=1)
    assert row.length == pytest.approx(400, abs=1e-6) and "no green is drawn" in row.remark
    assert "no green is drawn" in only(found.greens, hole=1).remark


def test_no_green_has_hazards_without_distance_to_it():
    bunker = feature("bunker", 5, rectangle(20, 200, 30, 210))
    found = tables(course([tee(2, 0, -5), bunker], {1: line((0, -5), (0, 400))}, {1: 4}))
    row = only(found.distances, feature_id=5)
    assert row.short_of_green is None and row.reach is not None


def test_no_tee_still_gives_the_green():
    found = tables(course([feature("green", 1, circle(0, 400, 15), 1)], {1: line((0, 0), (0, 400))}, {1: 4}))
    assert only(found.lengths, hole=1).remark == "no tee is drawn"
    assert only(found.greens, hole=1).depth == pytest.approx(30, abs=1e-6)


def test_no_line_but_tee_and_green_gives_a_straight_line_with_a_remark():
    found = tables(course([feature("green", 1, circle(0, 400, 15), 1), tee(2, 0, -5)], {1: None}, {1: 4}))
    row = only(found.lengths, hole=1)
    assert row.length == pytest.approx(400, abs=1e-6) and "a straight one is taken" in row.remark


def test_a_green_without_hole_is_the_green_of_the_line_that_ends_in_it():
    lost = feature("green", 1, circle(0, 400, 15))
    found = tables(course([lost, tee(2, 0, -5)], {1: line((0, -5), (0, 400))}, {1: 4}))
    assert only(found.greens, hole=1).depth == pytest.approx(30, abs=1e-6)


def test_a_green_of_no_hole_is_a_problem():
    lost = feature("green", 9, circle(900, 400, 15))
    found = tables(straight_hole(lost))
    assert any("green 9" in problem for problem in found.problems)
    assert only(found.greens, hole=1).depth == pytest.approx(30, abs=1e-6)


def test_a_feature_of_a_hole_that_is_not_there_is_a_problem():
    found = tables(straight_hole(feature("bunker", 5, rectangle(20, 200, 30, 210), 17)))
    assert any("bunker 5" in problem and "17" in problem for problem in found.problems)


def test_a_hole_asked_for_that_is_not_there_is_a_problem():
    found = tables(straight_hole(), holes=[1, 12])
    assert [row.hole for row in found.lengths] == [1]
    assert any("12" in problem for problem in found.problems)


def test_only_the_holes_asked_for_are_measured():
    features = [feature("green", 1, circle(0, 400, 15), 1), feature("green", 2, circle(300, 400, 15), 2)]
    a_course = course(
        [*features, tee(3, 0, -5), tee(4, 300, -5, hole=2)],
        {1: line((0, -5), (0, 400)), 2: line((300, -5), (300, 400))},
    )
    assert {row.hole for row in tables(a_course, holes=[2]).lengths} == {2}
    assert {row.hole for row in tables(a_course).lengths} == {1, 2}


def test_a_tee_set_on_the_card_without_tee_is_told_of():
    found = tables(straight_hole(scorecard={(1, "Back"): 400, (1, "Gold"): 380}))
    row = only(found.lengths, tee_set="Gold")
    assert (
        row.length is None
        and row.remark == "no tee of this set is drawn"
        and row.scorecard == pytest.approx(380)
    )


@pytest.mark.parametrize("card, remark", [(404.9, ""), (405.1, "5 yd shorter"), (394.9, "5 yd longer")])
def test_the_scorecards_difference(card, remark):
    row = only(tables(straight_hole(scorecard={(1, "Back"): card})).lengths, hole=1)
    assert row.difference == pytest.approx(400 - card, abs=1e-6)
    assert (remark in row.remark) if remark else row.remark == ""


def test_cancel_and_progress():
    seen = []

    def stop_after_one(done, total):
        seen.append((done, total))
        return False

    features = [feature("green", 1, circle(0, 400, 15), 1, 2), tee(3, 0, -5)]
    a_course = course(features, {1: line((0, -5), (0, 400)), 2: line((0, -5), (0, 400))})
    with pytest.raises(Cancelled):
        measure_course(a_course, progress=stop_after_one)
    assert seen == [(1, 2)]


def test_a_crs_nobody_knows_is_named():
    with pytest.raises(YardwrightError) as error:
        measure_course(replace(straight_hole(), crs="EPSG:1"))
    assert "EPSG:1" in error.value.what and error.value.remedy


def test_coordinates_outside_the_crs_are_a_message_or_a_remark():
    """Coordinates drawn in another CRS than the course claims: nothing finite comes of them."""
    features = [feature("green", 1, circle(0, 400, 15), 1), tee(2, 0, -5)]
    a_course = course(features, {1: line((0, -5), (0, 400))}, {1: 4}, moved=(3e8, 3e8), crs="EPSG:32630")
    try:
        found = tables(a_course)
    except YardwrightError as error:
        assert error.what and error.remedy
    else:
        assert only(found.lengths, hole=1).length is None and only(found.lengths, hole=1).remark


def test_one_feature_outside_the_crs_leaves_the_others_alone():
    stray = feature("bunker", 5, rectangle(3e8, 3e8, 3.1e8, 3.1e8), 1)
    a_course = straight_hole(stray, crs="EPSG:32630", moved=(500_000, 6_000_000))
    found = tables(a_course)
    assert only(found.lengths, hole=1).length == pytest.approx(400 / 0.9996, abs=0.001)
    assert all(row.reach is None or row.reach == row.reach for row in found.distances)


@pytest.mark.parametrize("size", [1e-7, 1e-4, 1e-3])
def test_a_green_of_no_size_is_no_crash(size):
    found = tables(straight_hole(green=rectangle(0, 400, size, 400 + size)))
    assert only(found.lengths, hole=1).length == pytest.approx(400, abs=0.01)


def test_a_sliver_of_a_green_square_to_play_is_no_crash():
    found = tables(straight_hole(green=rectangle(-10, 400, 10, 400.0001)))
    assert only(found.lengths, hole=1).length == pytest.approx(400, abs=0.01)


def test_a_green_and_a_tee_in_two_parts():
    green = MultiPolygon([circle(0, 395, 8), circle(0, 420, 8)])
    pads = MultiPolygon([rectangle(-3, -10, 3, 0), rectangle(-3, -30, 3, -20)])
    a_course = straight_hole(green=green, tees=[feature("tee", 2, pads, 1, tee_set="Back")])
    found = tables(a_course)
    assert only(found.greens, hole=1).chords == 2
    assert only(found.lengths, hole=1).length is not None


def test_a_bunker_under_the_tee_and_one_on_the_line_exactly():
    a_course = straight_hole(
        feature("bunker", 5, rectangle(-10, -20, 10, 20)),
        feature("target", 6, spot(0, 200)),
        feature("bunker", 7, rectangle(0, 100, 5, 110)),
    )
    found = tables(a_course)
    under = only(found.distances, feature_id=5)
    assert (under.reach, under.enter, under.side) == (pytest.approx(0), pytest.approx(0), "across")
    assert only(found.distances, feature_id=6).aside == pytest.approx(0, abs=1e-6)
    assert only(found.distances, feature_id=7).aside == pytest.approx(0, abs=1e-6)


def test_a_line_that_ends_where_it_begins_or_doubles_points():
    features = [feature("green", 1, circle(0, 400, 15), 1), tee(2, 0, -5)]
    doubled = course(features, {1: line((0, -5), (0, -5), (0, 200), (0, 200), (0, 400))}, {1: 4})
    assert only(tables(doubled).lengths, hole=1).length == pytest.approx(400, abs=1e-6)
    nothing = course(features, {1: line((0, 400), (0, 400))}, {1: 4})
    try:
        found = tables(nothing)
    except YardwrightError as error:
        assert error.remedy
    else:
        assert only(found.lengths, hole=1).remark


def test_a_tee_on_the_green_has_no_line():
    a_course = straight_hole(tees=[tee(2, 0, 400)])
    found = tables(a_course)
    assert found.lengths


def test_a_played_hole_without_anything():
    assert play_hole(course([], {1: None}), 1) is None
    assert play_hole(course([], {1: None}), 9) is None
