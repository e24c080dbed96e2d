"""The committee's pins against those drawn."""

import math

import pytest
from yardwright.measure.hole import CourseIndex
from yardwright.measure.pin_audit import VERDICTS, audit_pins
from yardwright.measure.units import YARD
from yardwright.model.event import Limits, Round

from tests.loudly import left_over
from tests.makers import circle, course, feature, in_yards, line
from tests.measure.test_pins import HORNED, event, hole_of, pin


def audit(drawn, given, a_course=None, tolerance=None, **how):
    """The rows in yards."""
    rows = audit_pins(a_course or hole_of(), event(*drawn, **{"limits": Limits(), **how}), given, tolerance)
    return [in_yards(row) for row in rows]


def test_the_same_pin():
    (row,) = audit([pin(10, 5, "left", at=(-8, 280))], [pin(10, 5, "left")])
    assert (row.event, row.round, row.hole, row.verdict, row.remark) == ("Cup", 1, 1, "same", "")
    assert (row.given_on, row.given_off, row.given_off_from) == (10, 5, "left")
    assert (row.drawn_on, row.drawn_off) == pytest.approx((10, 5), abs=1e-3)
    assert row.apart == pytest.approx(0, abs=1e-3)
    assert row.green_depth == pytest.approx(30, abs=1e-3) and row.given_green_depth is None


def test_apart_is_the_way_from_one_place_to_the_other():
    (row,) = audit([pin(13, 9, "left", at=(-4, 283))], [pin(10, 5, "left")])
    assert row.verdict == "apart" and row.apart == pytest.approx(5, abs=1e-3)
    assert (row.drawn_on, row.drawn_off) == pytest.approx((13, 9), abs=1e-3)


def test_half_a_yard_is_no_difference():
    """The tolerance is ours; the committee's own is asked first."""
    drawn = [pin(10, 5, "left")]
    assert audit(drawn, [pin(10.5, 5, "left")])[0].verdict == "same"
    assert audit(drawn, [pin(10.51, 5, "left")])[0].verdict == "apart"
    assert audit(drawn, [pin(11, 5, "left")], limits=Limits(tolerance=YARD))[0].verdict == "same"
    assert audit(drawn, [pin(11, 5, "left")], tolerance=1.1 * YARD)[0].verdict == "same"
    assert audit(drawn, [pin(10.1, 5, "left")], tolerance=0.0)[0].verdict == "apart"


def test_the_same_place_said_from_the_other_side():
    (row,) = audit([pin(10, 5, "left", at=(-8, 280))], [pin(10, 21, "right")])
    assert row.verdict == "same" and row.drawn_off == pytest.approx(21, abs=1e-3)
    (row,) = audit([pin(10, 5, "left", at=(-8, 280))], [pin(10, -8, "centre")])
    assert row.verdict == "same" and row.drawn_off == pytest.approx(-8, abs=1e-3)


def test_missing_and_extra():
    rows = audit([pin(10, 5, "left", number=2)], [pin(12, 6, "right")])
    assert [(row.round, row.verdict) for row in rows] == [(1, "missing"), (2, "extra")]
    missing, extra = rows
    assert (missing.given_on, missing.given_off, missing.drawn_on, missing.apart) == (12, 6, None, None)
    assert (extra.given_on, extra.given_off_from, extra.apart) == (None, "", None)
    assert (extra.drawn_on, extra.drawn_off) == pytest.approx((10, 5))
    assert extra.remark == "the drawn off counts from left"


def test_figures_that_cannot_be_placed():
    rows = audit([pin(10, 5, "left", at=(-8, 280))], [pin(10, 27, "left"), pin(31, 5, "left", number=2)])
    assert [row.verdict for row in rows] == ["impossible", "impossible"]
    assert rows[0].drawn_off == pytest.approx(5, abs=1e-3) and rows[0].apart is None
    assert "26.0 yd wide" in rows[0].remark and "30.0 yd deep" in rows[1].remark
    (lost,) = audit([], [pin(10, 5, "left", hole=7)])
    assert (lost.verdict, lost.remark, lost.green_depth) == ("impossible", "the course has no hole 7", None)


def test_a_committees_pin_off_the_green_is_compared_all_the_same():
    (row,) = audit([pin(10, 15, "centre")], [pin(10, 15, "centre")])
    assert row.verdict == "same" and "off the green" in row.remark


def test_a_drawn_pin_lies_where_its_point_does():
    """Its figures agree with the committee's, but on the map it lies elsewhere: after redrawing the green."""
    (row,) = audit([pin(10, 5, "left", at=(-8, 282))], [pin(10, 5, "left")])
    assert row.verdict == "apart" and row.apart == pytest.approx(2, abs=1e-3)
    assert row.drawn_on == pytest.approx(12, abs=1e-3)
    assert "2.00 yd from its figures" in row.remark
    (moved,) = audit([pin(10, 5, "left", given="point", at=(-8, 282))], [pin(12, 5, "left")])
    assert moved.verdict == "same" and "no longer fit its point" in moved.remark


def test_a_drawn_pin_without_a_place_is_missing():
    (row,) = audit([pin(10, 99, "left")], [pin(10, 5, "left")])
    assert row.verdict == "missing" and row.drawn_off == 99 and "from left reaches" in row.remark
    (still_there,) = audit([pin(10, 99, "left", at=(-8, 280))], [pin(10, 5, "left")])
    assert still_there.verdict == "same"


def test_another_depth_of_the_green():
    drawn, given = [pin(10, 5, "left")], [pin(10, 5, "left", green_depth=33 * YARD)]
    (row,) = audit(drawn, given)
    assert row.verdict == "same" and row.given_green_depth == pytest.approx(33)
    assert row.remark == "the committee has the green 33.0 yd deep, it is 30.0 yd"
    assert audit(drawn, [pin(10, 5, "left", green_depth=30.4 * YARD)])[0].remark == ""
    assert audit(drawn, given, tolerance=3.1 * YARD)[0].remark == ""


def test_of_several_the_nearest_are_matched():
    drawn = [pin(20, 5, "left"), pin(10, 5, "left"), pin(28, 1, "right")]
    given = [pin(10.2, 5, "left"), pin(20.2, 5, "left")]
    rows = audit(drawn, given)
    assert [(row.given_on, row.drawn_on, row.verdict) for row in rows] == [
        (pytest.approx(10.2), pytest.approx(10), "same"),
        (pytest.approx(20.2), pytest.approx(20), "same"),
        (None, pytest.approx(28), "extra"),
    ]
    for row in rows:
        assert "the committee has 2 pins" in row.remark and "the event has 3 pins" in row.remark
    twice = audit([pin(20, 5, "left")], [pin(20, 5, "left"), pin(20, 5, "left")])
    assert [row.verdict for row in twice] == ["same", "missing"]


def test_rows_come_by_round_and_hole_and_say_what_round_is_not_there():
    made = course(
        [feature("green", n, circle(100 * n, 300, 15), n) for n in (1, 2)],
        {n: line((100 * n, 0), (100 * n, 300)) for n in (1, 2)},
    )
    given = [pin(10, 0, "centre", number=n, hole=h) for n, h in [(3, 1), (2, 2), (1, 2), (2, 1), (1, 1)]]
    rows = audit(given[1:], given, made, rounds=[Round(1), Round(2)])
    assert [(row.round, row.hole) for row in rows] == [(1, 1), (1, 2), (2, 1), (2, 2), (3, 1)]
    assert [row.remark for row in rows] == ["", "", "", "", "the event has no round 3"]
    assert audit(given[:0:-1], given[::-1], made, rounds=[Round(1), Round(2)]) == rows


def test_another_events_pins_do_not_match():
    other = [type(one)("Shield", 1, 1, one.on, one.off, one.off_from) for one in [pin(10, 5, "left")]]
    rows = audit([pin(10, 5, "left")], other)
    assert [(row.event, row.verdict) for row in rows] == [("Cup", "extra"), ("Shield", "missing")]
    unnamed = [type(one)("", 1, 1, one.on, one.off, one.off_from) for one in other]
    assert [(row.event, row.verdict) for row in audit([pin(10, 5, "left")], unnamed)] == [("Cup", "same")]


def test_nothing_to_compare():
    assert audit([], []) == []


def test_remarks_in_another_language(loudly):
    made = hole_of(HORNED)
    drawn = [
        pin(10, 5, "left", at=(-8, 282)),
        pin(28, 5, "left", given="point", at=(9, 262), number=2),
        pin(28, 5, "left", number=3),
        pin(28, 5, "left", number=3),
        pin(28, 50, "left", number=4),
    ]
    given = [
        pin(10, 5, "left", green_depth=40 * YARD),
        pin(10, 50, "left"),
        pin(10, 3, "right", number=2),
        pin(math.nan, 3, "right", number=4),
    ]
    rows = audit_pins(made, event(*drawn, rounds=[Round(1)]), given, index=CourseIndex(made))
    assert {row.verdict for row in rows} <= set(VERDICTS)
    assert len(rows) == 6 and not [left for row in rows for left in left_over(row.remark)]
