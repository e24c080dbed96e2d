"""The plus-minus of a distance, against a simulation and the rule it follows."""

import math
from dataclasses import replace

import numpy as np
import pytest
from yardwright.measure.accuracy import doubt, plus_minus
from yardwright.measure.units import YARD
from yardwright.model.course import ImageDate, Settings

from tests.makers import feature, image, only, rectangle, spot, straight_hole, tables, tee


def seen(where="summer", view="clear"):
    return feature("bunker", 1, spot(0, 0), seen_in=where, view=view)


IMAGES = {"summer": image("summer", 0.1, 0.3), "winter": image("winter", 0.2, 0.5)}


def test_two_images_count_registration_and_pointing_of_both():
    expected = 1.96 * math.sqrt(0.3**2 + 0.1**2 + 0.5**2 + 0.2**2)
    assert plus_minus(seen(), seen("winter"), IMAGES) == pytest.approx(expected)


def test_one_image_leaves_the_registration_out():
    assert plus_minus(seen(), seen(), IMAGES) == pytest.approx(1.96 * math.sqrt(2) * 0.1)
    free = {"summer": ImageDate("summer", gsd_m=0.1)}
    assert plus_minus(seen(), seen(), free) == pytest.approx(1.96 * math.sqrt(2) * 0.1)


def test_partly_hidden_is_pointed_at_to_two_pixels():
    assert plus_minus(seen(view="partly hidden"), seen(), IMAGES) == pytest.approx(
        1.96 * math.hypot(0.2, 0.1)
    )


@pytest.mark.parametrize(
    "end, images",
    [
        (seen(""), IMAGES),
        (seen("autumn"), IMAGES),
        (seen(view="from another source"), IMAGES),
        (seen(), {"summer": ImageDate("summer", rmse_m=0.3)}),
    ],
)
def test_unknown_where_an_end_is_unknown(end, images):
    assert plus_minus(end, end, images) is None
    assert (
        plus_minus(seen("winter"), end, {**IMAGES, **images} if end.seen_in == "autumn" else images) is None
    )


def test_unknown_where_another_images_registration_is():
    images = {**IMAGES, "winter": ImageDate("winter", gsd_m=0.2)}
    assert plus_minus(seen(), seen("winter"), images) is None


def test_ninety_five_of_a_hundred_simulated_distances_lie_within():
    """Simulation: each end moved by a normal error of the standard error named, along and across."""
    random = np.random.default_rng(1)
    count = 40_000
    ends = []
    for rmse, gsd in ((0.3, 0.1), (0.5, 0.2)):
        ends.append(random.normal(0, math.hypot(rmse, gsd), (count, 2)))
    measured = np.hypot(*(np.array([0, 200.0]) + ends[1] - ends[0]).T)
    within = np.mean(np.abs(measured - 200) <= plus_minus(seen(), seen("winter"), IMAGES))
    assert within == pytest.approx(0.95, abs=0.005)


def test_a_figure_less_sure_than_the_setting_is_remarked_on():
    settings = Settings()
    assert doubt(0.99 * YARD, settings) == "" and doubt(None, settings) == ""
    assert doubt(1.26 * YARD, settings) == "uncertain: ± 1.3 yd"
    assert doubt(1.26, Settings(unit="m")) == "uncertain: ± 1.3 m"


def test_the_rows_carry_it():
    back = tee(2, 0, -5, seen_in="winter")
    green_image = {"seen_in": "summer"}
    bunker = feature("bunker", 5, rectangle(20, 200, 30, 210), seen_in="summer", view="partly hidden")
    a_course = straight_hole(bunker, tees=[back], images=list(IMAGES.values()))
    features = tuple(replace(f, **green_image) if f.kind == "green" else f for f in a_course.features)
    found = tables(replace(a_course, features=features))
    both = 1.96 * math.sqrt(0.3**2 + 0.1**2 + 0.5**2 + 0.2**2) / YARD
    assert only(found.lengths, hole=1).plus_minus == pytest.approx(both)
    assert "uncertain: ± 1.3 yd" in only(found.lengths, hole=1).remark
    assert only(found.greens, hole=1).plus_minus == pytest.approx(1.96 * math.sqrt(2) * 0.1 / YARD)
    hidden = 1.96 * math.sqrt(0.3**2 + 0.2**2 + 0.5**2 + 0.2**2) / YARD
    assert only(found.distances, feature_id=5).plus_minus == pytest.approx(hidden)


def test_unknown_images_leave_it_empty():
    found = tables(straight_hole())
    assert only(found.lengths, hole=1).plus_minus is None and only(found.greens, hole=1).plus_minus is None
