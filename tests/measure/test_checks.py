"""What the checks find: for each a case that fires and the nearest that does not.

The limits are our own rule, common practice without a source, unless one is named beside the test; those of
par are of Rules of Handicapping, Appendix F. All courses are drawn in yards (see ``tests.makers``).
"""

import inspect
import math
from dataclasses import replace

import numpy as np
import pytest
from shapely.geometry import LineString, MultiPolygon, Polygon
from yardwright.measure import checks, checks_of_drawing, checks_of_holes, checks_of_rows
from yardwright.measure.checks import CourseChecks, check_course, checks_of_hole
from yardwright.measure.findings import Layout
from yardwright.model.course import TeeSet
from yardwright.model.errors import Cancelled
from yardwright.model.geometry import map_points
from yardwright.model.remarks import Problem, Remark

from tests.makers import YARD, circle, course, feature, image, line, rectangle, spot, straight_hole, tee

M = 1 / YARD
"""A metre, in yards."""


def clean(*more, indexed=True, tees=None, **how):
    """A straight hole of 400 yd in which nothing is to be found, and what is added to it."""
    how.setdefault("tee_sets", ["Back"])
    made = straight_hole(*more, tees=tees, **how)
    return with_indexes(made) if indexed else made


def with_indexes(made):
    return replace(made, holes=tuple(replace(hole, stroke_index=hole.number) for hole in made.holes))


def found(made, check=None):
    """The findings of a check, or all."""
    return [finding for finding in check_course(made) if check in (None, finding.check)]


def one(made, check):
    findings = found(made, check)
    assert len(findings) == 1, findings
    return findings[0]


def only_finding(made):
    """The one thing found in a course."""
    findings = found(made)
    assert len(findings) == 1, findings
    return findings[0]


def by_key(made, kind, fid):
    return next(f for f in made.features if (f.kind, f.fid) == (kind, fid))


def repaired(made, finding):
    """The course with a finding's repair done."""
    features = {(f.kind, f.fid): f for f in made.features}
    holes = {hole.fid: hole for hole in made.holes}
    for change in finding.repair.changes:
        if change.kind == "hole":
            holes[change.fid] = replace(holes[change.fid], line=change.geometry)
        elif change.delete:
            del features[change.kind, change.fid]
        else:
            key = (change.kind, change.fid)
            features[key] = replace(features[key], geometry=change.geometry, mended="")
    return replace(made, holes=tuple(holes.values()), features=tuple(features.values()))


def test_nothing_is_found_on_a_hole_that_is_drawn_properly():
    made = clean(
        feature("fairway", 3, rectangle(-20, 150, 20, 370), 1),
        feature("bunker", 4, rectangle(18, 390, 26, 410), 1),
        feature("penalty_area", 5, rectangle(-60, 200, -30, 300), 1),
        feature("path", 6, line((30, 0), (40, 390))),
        feature("apron", 7, circle(0, 400, 18), 1),
        feature("marker", 8, spot(0, 250), 1, states_yd=150),
        feature("boundary", 9, line((-90, -40), (-90, 450), (90, 450), (90, -40), (-90, -40))),
        scorecard={(1, "Back"): 402},
        images=[image()],
    )
    assert found(made) == []


# Overlaps


@pytest.mark.parametrize(
    "lesser, greater, cut",
    [
        ("green", "bunker", "Cut the bunker out of the green"),
        ("green", "penalty_area", "Cut the penalty area out of the green"),
        ("bunker", "penalty_area", "Cut the penalty area out of the bunker"),
        ("tee", "bunker", "Cut the bunker out of the tee"),
    ],
)
def test_what_overlaps_is_cut_off_the_lesser(lesser, greater, cut):
    """A ball in two of them lies in the penalty area, then in the bunker: Rules of Golf, Rule 2.2c (memory)."""
    places = {"green": (0, 400, 15), "bunker": (60, 200, 12), "tee": (0, -5, 3)}
    x, y, half = places[lesser]
    over = feature(greater, 20, rectangle(x + half - 1, y - 2, x + half + 9, y + 2), 1)
    more = [feature("bunker", 10, rectangle(48, 190, 72, 210), 1)] if lesser == "bunker" else []
    made = clean(over, *more)
    finding = only_finding(made)
    assert (finding.hole, finding.check, finding.gravity) == (1, "overlap", "wrong")
    assert "overlap by" in finding.text and finding.repair.text == cut
    assert [kind for kind, _ in finding.features] == [lesser, greater]
    assert [change.kind for change in finding.repair.changes] == [lesser]
    after = repaired(made, finding)
    assert found(after) == []
    # What was shared is gone from the one, and nothing else.
    kind, fid = finding.features[0]
    was, now = by_key(made, kind, fid).geometry, by_key(after, kind, fid).geometry
    other = by_key(made, greater, 20).geometry
    assert now.area == pytest.approx(was.area - was.intersection(other).area, abs=1e-6)
    assert now.intersection(other).area < 1e-6


@pytest.mark.parametrize("square_metres, wrong", [(0.45, False), (0.55, True)])
def test_areas_may_share_half_a_square_metre(square_metres, wrong):
    deep = square_metres / 10 * M
    made = clean(
        feature("bunker", 3, rectangle(40, 200, 50, 200 + 10 * M), 1),
        feature("penalty_area", 4, rectangle(50 - deep, 190, 70, 220), 1),
    )
    assert bool(found(made, "overlap")) == wrong


def test_a_bunker_amid_a_green_leaves_a_ring():
    made = clean(feature("bunker", 3, circle(4, 405, 3), 1))
    finding = only_finding(made)
    after = by_key(repaired(made, finding), "green", 1).geometry
    assert len(after.interiors) == 1 and found(repaired(made, finding)) == []


@pytest.mark.parametrize("share, repairable", [(0.24, True), (0.26, False)])
def test_more_than_a_quarter_is_not_cut_off(share, repairable):
    made = clean(
        feature("bunker", 3, rectangle(40, 200, 60, 210), 1),
        feature("penalty_area", 4, rectangle(60 - 20 * share, 190, 80, 220), 1),
    )
    assert (one(made, "overlap").repair is not None) == repairable


def test_what_a_cut_would_part_is_left_to_somebody():
    made = clean(
        feature("bunker", 3, rectangle(40, 200, 60, 210), 1),
        feature("penalty_area", 4, rectangle(48, 190, 51, 220), 1),
    )
    assert one(made, "overlap").repair is None


def test_a_bunker_within_a_penalty_area_is_doubtful():
    made = clean(
        feature("bunker", 3, rectangle(40, 200, 50, 210), 1),
        feature("penalty_area", 4, rectangle(30, 190, 70, 220), 1),
    )
    finding = only_finding(made)
    assert finding.gravity == "doubtful" and "lies within" in finding.text and finding.repair is None


def test_two_bunkers_that_overlap_may_be_one():
    made = clean(
        feature("bunker", 3, rectangle(40, 200, 50, 210), 1),
        feature("bunker", 4, rectangle(48, 200, 58, 210), 1),
    )
    finding = only_finding(made)
    assert (finding.check, finding.gravity, finding.repair) == ("overlap", "doubtful", None)


def test_the_box_of_an_overlap_is_where_they_overlap():
    made = clean(
        feature("bunker", 3, rectangle(40, 200, 60, 210), 1),
        feature("penalty_area", 4, rectangle(58, 190, 80, 220), 1),
    )
    assert one(made, "overlap").box == pytest.approx((58 * YARD, 200 * YARD, 60 * YARD, 210 * YARD))


# Drawn twice


def test_a_bunker_drawn_twice():
    made = clean(
        feature("bunker", 3, rectangle(40, 200, 60, 210), 1, label="Ness"),
        feature("bunker", 4, rectangle(40.3, 200, 60, 210)),
    )
    finding = only_finding(made)
    assert (finding.check, finding.features[0]) == ("twice", ("bunker", 4))
    assert finding.repair.text == "Delete the bunker 4"
    assert found(repaired(made, finding)) == []


def test_of_two_drawings_the_one_that_says_less_goes():
    made = clean(
        feature("bunker", 3, rectangle(40, 200, 60, 210)),
        feature("bunker", -2, rectangle(40, 200, 60, 210), 1, label="Ness", seen_in="summer"),
    )
    finding = only_finding(made)
    assert finding.repair.changes[0].fid == 3
    told_apart = clean(
        feature("bunker", 3, rectangle(40, 200, 60, 210), 1, seen_in="spring"),
        feature("bunker", 4, rectangle(40, 200, 60, 210), 1, seen_in="summer"),
    )
    assert only_finding(told_apart).repair is None


@pytest.mark.parametrize("share, twice", [(0.91, True), (0.89, False)])
def test_nine_tenths_in_common_are_one_thing(share, twice):
    # Two rectangles of one size, moved against each other: they share s of 2 - s.
    moved = 20 * (1 - 2 * share / (1 + share))
    made = clean(
        feature("trees", 3, rectangle(40, 200, 60, 210), 1),
        feature("trees", 4, rectangle(40 + moved, 200, 60 + moved, 210), 1),
    )
    assert bool(found(made, "twice")) == twice


@pytest.mark.parametrize("apart, twice", [(0.25, True), (0.35, False)])
def test_points_and_lines_a_hand_apart_are_one_thing(apart, twice):
    made = clean(
        feature("tree", 3, spot(40, 200)),
        feature("tree", 4, spot(40 + apart * M, 200)),
        feature("path", 5, line((60, 0), (60, 100))),
        feature("path", 6, line((60 + apart * M, 0), (60 + apart * M, 100))),
    )
    assert [f.features[0] for f in found(made, "twice")] == ([("path", 6), ("tree", 4)] if twice else [])


def test_a_tee_for_each_of_two_sets_and_a_post_for_each_of_two_distances_are_meant():
    made = clean(
        feature("marker", 5, spot(0, 250), 1, states_yd=150, states_to="middle"),
        feature("marker", 6, spot(0, 250), 1, states_yd=135, states_to="front"),
        tees=[tee(2, 0, -5), tee(3, 0, -5, tee_set="White")],
        tee_sets=["Back", "White"],
    )
    assert found(made, "twice") == []
    same_set = clean(tees=[tee(2, 0, -5), tee(3, 0, -5)])
    assert one(same_set, "twice").features == (("tee", 3), ("tee", 2))


# Outlines


def mended(shape):
    made = feature("bunker", 3, shape, 1, remark="label is odd")
    return replace(made, mended="the outline crosses or touches itself and was mended")


def test_a_loop_that_is_next_to_nothing_is_taken_away():
    body = rectangle(40, 200, 60, 220)
    made = clean(mended(MultiPolygon([body, rectangle(60, 220, 61, 221)])))
    finding = one(made, "crossing")
    assert finding.gravity == "wrong"
    assert finding.repair.changes[0].geometry.equals(by_key(clean(mended(body)), "bunker", 3).geometry)
    assert one(made, "value").text.endswith("label is odd.")


@pytest.mark.parametrize("side, repairable", [(1.9, True), (2.1, False)])
def test_the_area_stays_the_same_within_a_hundredth(side, repairable):
    # The loop is side² of 400 + side² square yards: 0.9 or 1.1 hundredths.
    made = clean(
        mended(MultiPolygon([rectangle(40, 200, 60, 220), rectangle(60, 220, 60 + side, 220 + side)]))
    )
    assert (one(made, "crossing").repair is not None) == repairable


@pytest.mark.parametrize("width, sliver", [(0.28, True), (0.32, False)])
def test_an_area_nowhere_wider_than_a_foot_is_a_sliver(width, sliver):
    made = clean(feature("fairway", 3, rectangle(40, 200, 40 + width * M, 260), 1))
    assert bool(found(made)) == sliver
    if sliver:
        assert only_finding(made).check == "sliver" and found(repaired(made, only_finding(made))) == []


@pytest.mark.parametrize("square_metres, sliver", [(0.45, True), (0.55, False)])
def test_a_dot_is_a_sliver(square_metres, sliver):
    side = math.sqrt(square_metres) * M
    made = clean(feature("bunker", 3, rectangle(40, 200, 40 + side, 200 + side), 1))
    assert [f.check for f in found(made)] == (["sliver"] if sliver else [])


@pytest.mark.parametrize("square_metres, speck", [(0.45, True), (0.55, False)])
def test_a_speck_left_open_is_filled(square_metres, speck):
    side = math.sqrt(square_metres) * M
    hole = rectangle(50, 210, 50 + side, 210 + side)
    made = clean(feature("bunker", 3, rectangle(40, 200, 60, 220).difference(hole), 1))
    assert [f.check for f in found(made)] == (["speck"] if speck else [])
    if speck:
        after = by_key(repaired(made, only_finding(made)), "bunker", 3).geometry
        assert not len(after.interiors) and after.area == pytest.approx(400 * YARD**2)


# Gaps


@pytest.mark.parametrize("kind", ["fairway", "penalty_area"])
@pytest.mark.parametrize("apart, gap", [(0.0, False), (0.05, True), (0.95, True), (1.05, False)])
def test_pieces_that_nearly_touch(kind, apart, gap):
    made = clean(
        feature(kind, 3, rectangle(40, 200, 60, 220), 1),
        feature(kind, 4, rectangle(60 + apart * M, 200, 80, 220), 1),
    )
    assert [f.check for f in found(made)] == (["gap"] if gap else [])


def test_fairways_of_two_holes_may_lie_side_by_side():
    def made(number):
        return with_indexes(
            course(
                [
                    feature("green", 1, circle(0, 400, 15), 1),
                    tee(2, 0, -5),
                    feature("green", 3, circle(90, 400, 15), 2),
                    tee(4, 90, -5, hole=2),
                    feature("fairway", 5, rectangle(-20, 100, 44.8, 350), 1),
                    feature("fairway", 6, rectangle(45.2, 100, 110, 350), number),
                ],
                {1: line((0, -5), (0, 400)), 2: line((90, -5), (90, 400))},
                {1: 4, 2: 4},
                tee_sets=["Back"],
            )
        )

    assert found(made(2)) == []
    assert only_finding(made(1)).check == "gap"


def fence(gap, *more):
    return feature(
        "boundary", 9, line((-90, -40), (-90, 450), (90, 450), (90, -40), *more, (-90 + gap * M, -40))
    )


@pytest.mark.parametrize("gap, found_gap", [(0.0, False), (0.5, True), (4.9, True), (5.1, False)])
def test_a_boundary_that_is_nearly_closed_is_closed(gap, found_gap):
    made = clean(fence(gap))
    assert [f.check for f in found(made)] == (["boundary_gap"] if found_gap else [])
    if found_gap:
        finding = only_finding(made)
        assert finding.hole is None
        after = repaired(made, finding)
        ring = by_key(after, "boundary", 9).geometry
        assert ring.is_ring and list(ring.coords)[:-1] == list(by_key(made, "boundary", 9).geometry.coords)
        assert found(after) == []


@pytest.mark.parametrize("long, gap", [(19, False), (21, True)])
def test_a_short_fence_is_no_ring(long, gap):
    # Two sides and the gap of 2 yd between their ends.
    made = clean(feature("boundary", 9, line((80, 0), (81, long - 0.1), (82, 0))))
    assert bool(found(made)) == gap


@pytest.mark.parametrize("apart, gap", [(0.9, True), (1.1, False)])
def test_two_boundaries_that_nearly_meet_are_joined(apart, gap):
    made = clean(
        feature("boundary", 8, line((80, 0), (80, 200))),
        feature("boundary", 9, line((80, 200 + apart * M), (80, 400))),
    )
    assert bool(found(made)) == gap
    if gap:
        joined = repaired(made, only_finding(made))
        ends = by_key(joined, "boundary", 9).geometry.coords
        assert ends[0] == by_key(made, "boundary", 8).geometry.coords[-1] and len(ends) == 2
        assert found(joined) == []


# Where things lie


@pytest.mark.parametrize("x, out", [(89, False), (91, True)])
def test_a_tee_outside_the_boundary(x, out):
    tees = [tee(2, 0, -5), tee(3, x - 60, 50, tee_set="White")]
    ring = feature("boundary", 9, line((-90, -40), (-90, 450), (30, 450), (30, -40), (-90, -40)))
    made = clean(ring, tees=tees, tee_sets=["Back", "White"])
    assert [f.check for f in found(made)] == (["outside"] if out else [])


def test_an_open_boundary_or_one_about_other_ground_tells_nothing():
    tees = [tee(2, 0, -5), tee(3, 35, 50, tee_set="White")]
    an_open = feature("boundary", 9, line((-90, -40), (-90, 450), (30, 450), (30, -40)))
    elsewhere = feature("boundary", 9, line((-90, -40), (-90, 450), (-30, 450), (-30, -40), (-90, -40)))
    for fence in (an_open, elsewhere):
        assert found(clean(fence, tees=tees, tee_sets=["Back", "White"])) == []


def test_a_boundary_drawn_in_two_lines_encloses_too():
    halves = [
        feature("boundary", 8, line((-90, -40), (-90, 450), (30, 450))),
        feature("boundary", 9, line((30, 450), (30, -40), (-90, -40))),
    ]
    made = clean(*halves, tees=[tee(2, 0, -5), tee(3, 35, 50, tee_set="White")], tee_sets=["Back", "White"])
    assert only_finding(made).features == (("tee", 3),)


@pytest.mark.parametrize(
    "place, off",
    [((0, -34.5), False), ((0, -35.5), True), ((39, 50), False), ((41, 50), True)],
)
def test_a_tee_far_behind_the_line_or_beside_it(place, off):
    # The line begins at -5.
    tees = [tee(2, 0, -5), feature("plate", 3, spot(*place), 1, tee_set="White")]
    made = clean(tees=tees, tee_sets=["Back", "White"])
    assert [f.check for f in found(made)] == (["tee_off"] if off else [])


def test_what_lies_near_no_hole_is_left_out():
    made = clean(feature("green", 7, circle(400, 400, 10)))
    finding = only_finding(made)
    assert (finding.hole, finding.check, finding.gravity) == (None, "left_out", "doubtful")
    assert found(clean(feature("green", 7, circle(400, 400, 10), note="Practice green"))) == []
    assert found(clean(feature("tree", 7, spot(400, 400)))) == []


def test_a_hole_that_is_not_there():
    made = clean(feature("bunker", 7, rectangle(40, 200, 50, 210), 1, 12))
    finding = only_finding(made)
    assert (finding.hole, finding.check) == (1, "no_such_hole") and "hole 12" in finding.text


# The line of play


def bare(*features, drawn=None, **how):
    """A hole whose line is ``drawn``."""
    how.setdefault("tee_sets", ["Back"])
    return with_indexes(course(features, {1: drawn}, {1: 4}, **how))


GREEN = feature("green", 1, circle(0, 400, 15), 1)


def test_a_hole_without_line_green_or_tee():
    assert [f.check for f in found(bare(drawn=None))] == ["no_green", "no_line", "no_tee"]
    assert {f.gravity for f in found(bare(drawn=None))} == {"missing"}
    assert only_finding(bare(GREEN, tee(2, 0, -5))).check == "no_line"
    assert only_finding(bare(tee(2, 0, -5), drawn=line((0, -5), (0, 400)))).check == "no_green"
    assert only_finding(bare(GREEN, drawn=line((0, -5), (0, 400)))).check == "no_tee"


@pytest.mark.parametrize(
    "end, wrong, repairable",
    [(386, False, False), (384, True, True), (368.7, True, True), (368.5, True, False)],
)
def test_a_line_that_does_not_end_on_its_green(end, wrong, repairable):
    # The green begins at 385; 15 m before it is 368.6.
    made = bare(GREEN, tee(2, 0, -5), drawn=line((0, -5), (3, 200), (0, end)))
    assert [f.check for f in found(made)] == (["line_end"] if wrong else [])
    if wrong:
        finding = only_finding(made)
        assert (finding.repair is not None) == repairable
    if repairable:
        after = repaired(made, finding)
        drawn = list(after.holes[0].line.coords)
        assert drawn[:-1] == list(made.holes[0].line.coords)[:-1]
        assert drawn[-1] == pytest.approx((0, 400 * YARD), abs=0.05)
        assert found(after) == []


def test_a_line_that_runs_beyond_its_green_is_cut():
    made = bare(GREEN, tee(2, 0, -5), drawn=line((0, -5), (0, 425)))
    finding = only_finding(made)
    assert found(repaired(made, finding)) == []
    turn_beyond = bare(GREEN, tee(2, 0, -5), drawn=line((0, -5), (0, 425), (5, 426)))
    assert one(turn_beyond, "line_end").repair is None


@pytest.mark.parametrize("start", [400, 384.5, 370])
def test_a_line_drawn_from_green_to_tee_is_turned(start):
    # On the green, half a yard before it, and 15 yd before it.
    made = bare(GREEN, tee(2, 0, -5), drawn=line((0, start), (3, 200), (0, -5)))
    finding = one(made, "line_backwards")
    after = repaired(made, finding)
    assert list(after.holes[0].line.coords) == list(made.holes[0].line.coords)[::-1]
    assert {f.check for f in found(after)} <= {"line_end"}


def test_a_line_that_crosses_itself_is_told():
    made = bare(GREEN, tee(2, 0, -5), drawn=line((0, -5), (0, 300), (20, 250), (-20, 260), (0, 400)))
    assert one(made, "line_crosses").gravity == "wrong"


# The green, its approach and what laying out remarks on


def test_an_approach_from_the_green_itself():
    made = clean(approach={1: 10})
    assert only_finding(made).check == "approach" and only_finding(made).gravity == "wrong"
    assert found(clean(approach={1: 20})) == []


def test_an_approach_from_before_the_line():
    made = clean(approach={1: 410})
    assert (only_finding(made).check, only_finding(made).gravity) == ("approach", "doubtful")
    assert found(clean(approach={1: 400})) == []


def test_a_green_too_small_to_measure():
    # A millimetre across: the approach line cuts nothing of it that counts.
    made = clean(green=circle(0, 400, 0.0005))
    assert {"green", "sliver"} <= {f.check for f in found(made)}


def test_an_approach_that_misses_the_greens_anchor():
    """No drawing is known that leads there, so the remark is given to the check as it stands in its source."""
    from pathlib import Path

    from yardwright.measure import green as green_module
    from yardwright.measure.hole import CourseIndex, play_hole

    remark = "the approach line's longest cut is taken, since none holds the green's anchor"
    assert remark in Path(green_module.__file__).read_text("utf-8")
    made, index = clean(), CourseIndex(clean())
    played = replace(play_hole(made, 1, index), green_remarks=(Remark(remark, "longest_cut"),))
    findings = list(checks_of_holes.remarks(Layout(made, index), made.holes[0], played))
    assert [(f.check, f.gravity, f.features) for f in findings] == [("approach", "doubtful", (("green", 1),))]


def test_a_second_green():
    made = clean(feature("green", 7, circle(40, 400, 12), 1))
    assert only_finding(made).check == "green" and "feature 7" in only_finding(made).text


def test_several_tees_of_one_set():
    made = clean(tees=[tee(2, 0, -5), tee(3, 20, -5)])
    assert only_finding(made).check == "tee" and ("tee", 2) in only_finding(made).features
    plates = [feature("plate", fid, spot(fid, 0), 1, tee_set="Back") for fid in (3, 4)]
    assert only_finding(clean(*plates)).features == (("plate", 3),)


@pytest.mark.parametrize("deep, odd", [(11.9, True), (12.1, False), (49.9, False), (50.1, True)])
def test_a_green_of_unusual_depth(deep, odd):
    """Greens are commonly 20 to 40 yd deep: common practice, no source."""
    made = clean(green=rectangle(-10, 400 - deep / 2, 10, 400 + deep / 2))
    assert [f.check for f in found(made)] == (["green_depth"] if odd else [])


# Numbers of the hole


@pytest.mark.parametrize("card, odd", [(395.1, False), (394.9, True), (404.9, False), (405.1, True)])
def test_a_length_that_differs_from_the_card(card, odd):
    made = clean(scorecard={(1, "Back"): card})
    assert [f.check for f in found(made)] == (["length"] if odd else [])


def test_lengths_of_several_sets_are_one_finding():
    made = clean(
        tees=[tee(2, 0, -5), tee(3, 0, 45, tee_set="White")],
        tee_sets=["Back", "White"],
        scorecard={(1, "Back"): 410, (1, "White"): 340},
    )
    text = only_finding(made).text
    assert "Back 10.0 yd shorter" in text and "White 10.0 yd longer" in text
    assert only_finding(made).features == (("tee", 2), ("tee", 3))


@pytest.mark.parametrize("par, fits", [(3, False), (4, True), (5, False)])
def test_a_doubtful_par(par, fits):
    """400 yd: Rules of Handicapping, Appendix F: for men par 4 only, for women 4 (to 420) or 5 (from 370)."""
    made = clean(par=par, tee_sets=[TeeSet("Back", players="men")])
    assert [f.check for f in found(made)] == ([] if fits else ["par"])
    assert fits or only_finding(made).text == f"{'Long' if par < 4 else 'Short'} for par {par}: Back 400 yd."
    women = clean(par=5, tee_sets=[TeeSet("Back", players="women")])
    assert found(women) == []


def test_no_par():
    made = clean(par=None)
    assert (only_finding(made).check, only_finding(made).gravity) == ("par", "missing")


@pytest.mark.parametrize("gsd, unsure", [(0.32, False), (0.34, True)])
def test_uncertain_figures(gsd, unsure):
    # Both ends from one image: 1.96 sqrt(2) gsd against a yard, so 0.330 m.
    green = feature("green", 1, circle(0, 400, 15), 1, seen_in="summer")
    made = bare(
        green, tee(2, 0, -5, seen_in="summer"), drawn=line((0, -5), (0, 400)), images=[image(gsd=gsd)]
    )
    assert [f.check for f in found(made)] == (["uncertain", "uncertain"] if unsure else [])


@pytest.mark.parametrize("y, off", [(250.9, False), (251.1, True), (248.9, True)])
def test_a_marker_that_is_off(y, off):
    made = clean(feature("marker", 7, spot(0, y), 1, states_yd=150))
    assert [f.check for f in found(made)] == (["marker"] if off else [])
    if off:
        assert only_finding(made).repair is None and "It would be true" in only_finding(made).remedy


def test_a_pair_of_posts_is_judged_by_its_middle():
    def posts(left, right):
        return [
            feature("marker", 7, spot(-30, left), 1, states_yd=150, pair="a"),
            feature("marker", 8, spot(30, right), 1, states_yd=150, pair="a"),
        ]

    # Each on its own is 3 yd further than the middle between them: sqrt(30² + 150²).
    assert found(clean(*posts(250, 250))) == []
    finding = only_finding(clean(*posts(254, 250)))
    assert "middle of a pair" in finding.text and len(finding.features) == 2


def test_a_marker_that_states_nothing():
    made = clean(feature("marker", 7, spot(0, 250), 1))
    assert (only_finding(made).check, only_finding(made).gravity) == ("marker", "missing")


# Numbers of the course


def two_holes(first, second):
    made = course(
        [
            feature("green", 1, circle(0, 400, 15), 1),
            tee(2, 0, -5),
            feature("green", 3, circle(200, 400, 15), 2),
            tee(4, 200, -5, hole=2),
        ],
        {1: line((0, -5), (0, 400)), 2: line((200, -5), (200, 400))},
        {1: 4, 2: 4},
        tee_sets=["Back"],
    )
    indexes = {1: first, 2: second}
    return replace(made, holes=tuple(replace(h, stroke_index=indexes[h.number]) for h in made.holes))


def test_stroke_indexes():
    assert found(two_holes(1, 2)) == []
    finding = only_finding(two_holes(5, 5))
    assert (finding.hole, finding.gravity) == (2, "wrong") and "hole 1’s too" in finding.text
    assert (only_finding(two_holes(5, None)).hole, only_finding(two_holes(5, None)).gravity) == (2, "missing")
    assert (only_finding(two_holes(None, None)).hole, len(found(two_holes(None, None)))) == (None, 1)


def test_tee_sets():
    assert only_finding(clean(tees=[tee(2, 0, -5, tee_set="Bakc")])).text.startswith("The tee set “Bakc”")
    unnamed = clean(tees=[feature("tee", 2, rectangle(-3, -10, 3, 0), 1)])
    assert (only_finding(unnamed).check, only_finding(unnamed).gravity) == ("tee_set", "missing")
    no_table = only_finding(clean(tee_sets=[]))
    assert no_table.hole is None and no_table.text == "The table of tee sets is empty, but “Back” is used."
    shared = clean(tees=[tee(2, 0, -5, tee_set="Back, White")], tee_sets=["Back", "White"])
    assert found(shared) == []


def test_a_set_on_the_card_that_is_not_drawn():
    card = {(1, "Back"): 400, (1, "White"): 380}
    made = clean(scorecard=card, tee_sets=["Back", "White"])
    assert (only_finding(made).check, only_finding(made).gravity) == ("tee_missing", "missing")
    strange = found(clean(scorecard=card))
    assert [(f.hole, f.check) for f in strange] == [(None, "tee_set"), (1, "tee_missing")]


def test_what_could_not_be_read():
    """The texts of ``store.reading``, which tests/desk/test_checks_panel.py reads from layers."""
    made = replace(
        clean(),
        problems=(
            Problem("", "empty", "bunker", 12, "it has no geometry; it was left out"),
            Problem("", "second", "hole", 7, "there is another hole 1 (feature 1)", (1, 1)),
            Problem("", "left_out", "scorecard", 3, "it lacks hole or tee set and was left out"),
            "Table course_info has 2 rows instead of one; the first counts.",
        ),
    )
    found_here = {f.check: f for f in check_course(made)}
    assert found_here["empty"].features == (("bunker", 12),) and found_here["empty"].repair.changes[0].delete
    assert (found_here["number_twice"].hole, found_here["number_twice"].features) == (
        1,
        (("hole", 7), ("hole", 1)),
    )
    assert sorted(f.gravity for f in found(made, "unread")) == ["doubtful", "wrong"]
    lost = next(f for f in found(made, "unread") if f.gravity == "wrong")
    assert lost.text == "Scorecard 3: it lacks hole or tee set and was left out."


# The whole


def test_findings_come_by_hole_then_gravity_then_feature():
    made = two_holes(None, None)
    made = replace(made, features=made.features[1:], problems=("Something odd",))
    bunkers = [
        feature("bunker", fid, rectangle(x * YARD, 180 * YARD, (x + 9) * YARD, 190 * YARD), 2)
        for fid, x in ((9, 260), (8, 240))
    ]
    pond = feature("penalty_area", 5, rectangle(245 * YARD, 170 * YARD, 265 * YARD, 200 * YARD), 2)
    made = replace(made, features=(*made.features, *bunkers, pond))
    assert [(f.hole, f.gravity, f.features[:1]) for f in check_course(made)] == [
        (None, "missing", ()),
        (None, "doubtful", ()),
        (1, "missing", (("hole", 1),)),
        (2, "wrong", (("bunker", 8),)),
        (2, "wrong", (("bunker", 9),)),
    ]
    assert {f.hole for f in check_course(made, holes=[2])} == {2}
    assert checks_of_hole(made, 2) == check_course(made, holes=[2])
    assert checks_of_hole(made, 7) == ()


def test_progress_and_cancel():
    made, seen = two_holes(1, 2), []
    check_course(made, progress=lambda done, total: seen.append((done, total)))
    assert seen == [(1, 2), (2, 2)]
    with pytest.raises(Cancelled):
        check_course(made, progress=lambda done, total: False)


def test_a_course_of_nothing_and_figures_in_metres():
    empty = course([], {})
    assert check_course(empty) == () and CourseChecks(empty).numbers == ()
    metric = clean(
        feature("bunker", 3, rectangle(40, 200, 60, 210), 1),
        feature("penalty_area", 4, rectangle(58, 190, 80, 220), 1),
        settings={"unit": "m"},
    )
    assert "16.7 m²" in one(metric, "overlap").text  # 20 sq yd


def test_every_check_is_in_one_of_the_lists():
    listed = [*checks.SHARED, *checks.OF_A_HOLE]
    assert len(set(listed)) == len(listed)
    rooms = (checks_of_drawing, checks_of_holes, checks_of_rows)
    written = {
        function
        for room in rooms
        for name, function in vars(room).items()
        if inspect.isgeneratorfunction(function) and name[0] != "_" and function.__module__ == room.__name__
    }
    assert set(listed) == written


def test_where_it_is_drawn_does_not_matter():
    """The same course in a projection that stretches by 1.8 (Web Mercator at 56 degrees) and turned."""
    from pyproj import Transformer

    made = clean(
        feature("bunker", 3, rectangle(40, 200, 60, 210), 1),
        feature("penalty_area", 4, rectangle(58, 190, 80, 220), 1),
        turned=37.0,
    )
    transformer = Transformer.from_crs(made.crs, "EPSG:3857", always_xy=True)

    def to_web(shape):
        return map_points([shape], lambda points: np.column_stack(transformer.transform(*points.T)))[0]

    moved = replace(
        made,
        crs="EPSG:3857",
        holes=tuple(replace(hole, line=to_web(hole.line)) for hole in made.holes),
        features=tuple(replace(f, geometry=to_web(f.geometry)) for f in made.features),
    )
    assert [f.text for f in check_course(moved)] == [f.text for f in check_course(made)]
    assert found(repaired(moved, only_finding(moved))) == []


def test_geometry_that_the_ground_cannot_hold_is_passed_over():
    made = clean()
    far = replace(
        feature("bunker", 9, rectangle(0, 0, 1, 1)), geometry=Polygon([(1e12, 0), (2e12, 0), (2e12, 1e12)])
    )
    assert found(replace(made, features=(*made.features, far))) == []
    lines = tuple(replace(h, line=LineString([(0, 0), (0, 0)])) for h in made.holes)
    assert one(replace(made, holes=lines), "no_line").gravity == "wrong"
