"""The map of the course in true geometry, the scorecard's sums, the imprint's credits."""

import math
from types import SimpleNamespace

import numpy as np
import pytest
from shapely.geometry import LineString
from yardwright.guide.book_figures import BookFigures
from yardwright.guide.book_pages import CAUTIONS, CourseMap, cards, cover, imprint, overview, ruled, scorecard
from yardwright.guide.sheet_parts import LEAST_SIZE, Text
from yardwright.measure.units import YARD
from yardwright.model.course import Course, Hole, ImageDate
from yardwright.model.event import AskedLength, Event, Flight, Round

from tests.makers import LOCAL, circle, course, feature, line, tee

pytestmark = pytest.mark.usefixtures("qgis_app")


def two_holes(**more):
    """Hole 1 plays 400 yd up the page, hole 2 back beside it."""
    return course(
        [
            feature("green", 1, circle(0, 400, 12), 1),
            tee(2, 0, -5),
            feature("green", 3, circle(60, 0, 12), 2),
            tee(4, 60, 405, 2),
        ],
        {1: line((0, -5), (0, 400)), 2: line((60, 405), (60, 0))},
        {1: 4, 2: 5},
        **more,
    )


def texts(drawing, about=None):
    return [one for one in drawing.items if isinstance(one, Text) and about in (None, one.about)]


def test_the_map_is_true_to_scale():
    plan = CourseMap(two_holes(), 80, 120)
    a, b, c = plan.to_page(np.array([[0, 0], [0, 100.0], [100.0, 0]]))
    assert np.hypot(*(b - a)) == pytest.approx(100 * plan.per_metre)
    assert np.hypot(*(c - a)) == pytest.approx(100 * plan.per_metre)
    assert np.dot(b - a, c - a) == pytest.approx(0.0, abs=1e-6)
    assert plan.turn == 0 and b[1] < a[1]  # north is up
    shown = np.concatenate([np.asarray(one.coords) for one in plan.lines().values()])
    assert (shown > 0).all() and (shown < (80, 120)).all()


def test_a_wide_course_is_turned_to_fill_a_tall_page_and_the_arrow_tells():
    wide = two_holes(turned=-90.0)
    plan = CourseMap(wide, 60, 150)
    assert abs(plan.turn) >= 60
    north, south = plan.to_page(np.array([[0, 100.0], [0, 0]]))
    away = north - south
    assert math.degrees(math.atan2(away[0], -away[1])) == pytest.approx(plan.turn)
    assert plan.per_metre > 1.5 * CourseMap(wide, 60, 60).per_metre


def test_each_hole_has_a_number_of_its_own_on_the_map():
    """Nine holes that begin at one place: no number stands on another."""
    holes = tuple(
        Hole(n, LineString([(0, 0), (300 * math.cos(n), 300 * math.sin(n))]), fid=n) for n in range(1, 10)
    )
    drawing = overview(Course("Larkmere", LOCAL, holes), 96, 140)
    places = {one.hole: (one.x, one.y) for one in drawing.places}
    assert set(places) == set(range(1, 10))
    boxes = [one.box for one in texts(drawing, "hole")]
    assert len(boxes) == 9
    for place, (x, y) in places.items():
        others = [math.dist((x, y), at) for n, at in places.items() if n != place]
        assert min(others) > 3.0


def test_a_course_without_anything_drawn_has_an_empty_map():
    bare = Course("Larkmere", LOCAL, (Hole(1),))
    assert overview(bare, 90, 120).places == () and cover(bare, 90, 120).items


def event(*rounds, lengths=()):
    return Event("Cup", rounds=rounds, flights=(Flight("A", "Back"), Flight("B", "")), lengths=lengths)


def test_a_scorecard_shows_what_is_asked_and_else_what_is_measured():
    ground = two_holes()
    asked = (AskedLength(1, "A", 1, 380 * YARD), AskedLength(1, "B", 1, 350 * YARD))
    made = cards(ground, event(Round(1), lengths=asked), BookFigures(ground))
    assert made == [("Scorecard", ["A", "B"], [(1, [380, 350]), (2, [400, None])])]


def test_rounds_of_other_lengths_have_a_card_of_their_own():
    ground = two_holes()
    asked = (AskedLength(2, "A", 1, 380 * YARD),)
    made = cards(ground, event(Round(1), Round(2), Round(3), lengths=asked), BookFigures(ground))
    assert [title for title, _, _ in made] == ["Scorecard, round 1, 3", "Scorecard, round 2"]


def test_without_an_event_the_tee_sets_are_shown():
    ground = two_holes(tee_sets=("Back", "Nobody's"))
    assert cards(ground, None, BookFigures(ground)) == [("Scorecard", ["Back"], [(1, [400]), (2, [400])])]


def test_sums_are_of_the_printed_figures_and_nothing_is_summed_up_that_lacks():
    ground = SimpleNamespace(
        holes=[Hole(n, par=4, stroke_index=n) for n in range(1, 19)], settings=SimpleNamespace(unit="yd")
    )
    rows = [(n, [100 + n, None if n == 12 else 50]) for n in range(1, 19)]
    (drawing,) = scorecard(ground, ["A", "B"], rows, 90, 150)
    said = [one.text for one in texts(drawing)]
    assert said.count("36") == 2 and "72" in said
    out, home = sum(range(101, 110)), sum(range(110, 119))
    for figure in (out, home, out + home, 450):
        assert str(figure) in said
    assert [one.hole for one in drawing.places] == list(range(1, 19))
    assert max(one.box[3] for one in texts(drawing)) <= 150


def test_many_tee_sets_take_several_pages_and_nothing_is_too_small():
    ground = SimpleNamespace(
        holes=[Hole(n, par=4) for n in range(1, 19)], settings=SimpleNamespace(unit="yd")
    )
    names = [f"Tee set number {n}" for n in range(27)]
    made = scorecard(ground, names, [(n, [300] * 27) for n in range(1, 19)], 80, 120)
    assert len(made) == 7
    for drawing in made:
        assert all(one.size >= LEAST_SIZE for one in texts(drawing))
        assert all(one.box[0] >= -0.01 and one.box[2] <= 80.01 for one in texts(drawing))


def test_the_imprint_names_every_image_and_the_cautions():
    images = (
        ImageDate("may", credit="Anna Bell", licence="CC0"),
        ImageDate("june", credit="Survey of 2024."),
    )
    text = imprint(course([], {}, images=images), None, ["Anna Bell, CC0"])
    assert "Pictures: Anna Bell, CC0.\n" in text and "Drawn from: Survey of 2024.\n" in text
    assert all(caution in text for caution in CAUTIONS)


def test_lines_to_write_on_stay_within_their_frame():
    levels = [one.points[0][1] for one in ruled(80, 100).items]
    assert len(levels) > 10 and min(levels) > 0 and max(levels) < 100
    assert all(6 <= b - a <= 8 for a, b in zip(levels, levels[1:]))
