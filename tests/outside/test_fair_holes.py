"""Guidance for those who cut the holes, with its sources."""

import math
from dataclasses import replace

import numpy as np
import pytest
from shapely.geometry import Point
from yardwright.measure.cutting import cutting_area
from yardwright.measure.fair import Grounds, balance
from yardwright.measure.hole import play_hole
from yardwright.measure.pins import place_pin
from yardwright.measure.proposal import propose
from yardwright.measure.units import YARD
from yardwright.model.event import Event, Limits, Round

from sample_project.drawing import course
from tests.makers import circle, straight_hole

PACE = YARD
"""One pace is about a yard (common practice, no source)."""


@pytest.fixture(scope="module")
def proposed():
    """The sample course, and four rounds proposed for it by the limits as they stand."""
    a_course, event = course(), Event("Cup", rounds=tuple(Round(number) for number in (1, 2, 3, 4)))
    return a_course, replace(event, pins=propose(a_course, event).pins)


@pytest.mark.parametrize("margin, share", [(4, 0.489), (5, 0.389)])
def test_what_a_margin_leaves_of_a_round_green_of_5000_square_feet(margin, share):
    """Computed: r = 13.298 yd; 4 yd off its margin leave 48.9 % of its area, 5 yd 38.9 %."""
    radius = math.sqrt(5000 / 9 / math.pi)
    assert radius == pytest.approx(13.298, abs=5e-4)
    green = play_hole(straight_hole(green=circle(0, 400, radius, corners=1024)), 1).green
    left = cutting_area(green, Limits(margin=margin * YARD))
    assert left.area / green.area == pytest.approx(share, abs=5e-4)


def test_holes_at_least_four_paces_from_any_edge(proposed):
    """R&A, Guidance on Running a Competition, and the Course Rating Manual: four paces, four yards."""
    a_course, event = proposed
    assert len(event.pins) == 72
    for pin in event.pins:
        green = play_hole(a_course, pin.hole).green
        place = place_pin(green, pin.on, pin.off, pin.off_from)
        assert green.geometry.boundary.distance(Point(*place.point)) >= 4 * PACE


def test_no_hole_within_three_paces_of_a_recent_one(proposed):
    """R&A, Guidance on Running a Competition."""
    a_course, event = proposed
    for hole in a_course.holes:
        played = play_hole(a_course, hole.number)
        points = np.array(
            [
                place_pin(played.green, pin.on, pin.off, pin.off_from).point
                for pin in event.pins
                if pin.hole == hole.number
            ]
        )
        away = np.hypot(*(points[:, None] - points[None, :]).transpose(2, 0, 1))
        assert away[~np.eye(len(points), dtype=bool)].min() >= 3 * PACE


def test_six_hard_six_moderate_six_easy_and_four_left_four_right_one_centre(proposed):
    """Guidance for committees, secondary source: the first of a round, the second of a nine."""
    a_course, event = proposed
    found = balance(a_course, event, grounds=Grounds(a_course, event.limits))
    whole = [row for row in found.rounds if not row.holes]
    nines = [row for row in found.rounds if row.holes]
    assert [(row.easy, row.moderate, row.hard) for row in whole] == [(6, 6, 6)] * 4
    assert [(row.left, row.centre, row.right) for row in nines] == [(4, 1, 4)] * 8
    assert [row.remarks for row in found.rounds] == [()] * 12
