"""Hole pages: that all can be read, stands where it is and says what the tables say.

Courses are drawn by hand in yards (``tests.makers``), so that places and figures can be worked out on paper.
Six points as the least size is our own rule; 1:480 for greens is Rule 4.3a's interpretation on green-reading
materials.
"""

import math
from dataclasses import replace
from itertools import combinations

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from qgis.PyQt.QtGui import QColor
from shapely.geometry import box
from yardwright.guide.drawing import OnPicture
from yardwright.guide.green_panel import green_panel, grid_lines
from yardwright.guide.hole_page import SIZES, hole_page, hole_page_frames
from yardwright.guide.ladder import ACROSS_M, bars_of, tee_of
from yardwright.guide.sheet_greens import plotted, view_green
from yardwright.guide.sheet_parts import LEAST_SIZE, Area, Line, Text
from yardwright.guide.windows import placements
from yardwright.measure.course import measure_hole
from yardwright.measure.hole import CourseIndex, play_hole
from yardwright.measure.pins import pin_rows
from yardwright.measure.units import YARD, whole
from yardwright.model.course import TeeSet
from yardwright.model.errors import YardwrightError
from yardwright.model.event import AskedLength, Event, Flight, Pin, Round
from yardwright.model.geometry import map_points

from tests.guide.page_painting import painted_page
from tests.loudly import left_over
from tests.makers import circle, course, dogleg_hole, feature, line, rectangle, spot, straight_hole, tee

pytestmark = pytest.mark.usefixtures("qgis_app")

EVERY_SIZE = [*SIZES.values(), (70.0, 110.0), (148.0, 210.0), (178.0, 120.0)]


def furnished(**how):
    """A straight par 4 with a bit of everything, in yards up the page from the tee's front at the origin."""
    return straight_hole(
        feature("fairway", 10, rectangle(-18, 120, 16, 380), 1),
        feature("bunker", 11, rectangle(20, 200, 30, 215), 1),
        feature("bunker", 12, rectangle(-34, 240, -24, 252), 1, label="Old pit"),
        feature("bunker", 13, circle(22, 398, 5, 32), 1),
        feature("penalty_area", 14, rectangle(-90, 300, 90, 310), 1),
        feature("trees", 15, rectangle(40, 60, 70, 330), 1),
        feature("marker", 16, spot(0, 250), 1, states_yd=150.0),
        feature("target", 17, spot(-10, 330), 1, label="Lone ash"),
        feature("apron", 18, circle(0, 400, 19, 64), 1),
        tees=[tee(2, 0, -5), tee(3, 0, 35, tee_set="Forward")],
        hole_fields={"name": "Long Shaw", "stroke_index": 7, "description": "Keep left of the pit."},
        tee_sets=[TeeSet("Back", "#101010", players="men"), TeeSet("Forward", "#c02020", 1)],
        **how,
    )


def texts_of(drawing):
    return [item for item in drawing.items if isinstance(item, Text)]


def said_in(drawing, about=None):
    return [item.text for item in texts_of(drawing) if about in (None, item.about)]


def assert_legible(page):
    """All within its frame, nothing below six points, no text on another."""
    for name, drawing in page.drawings.items():
        frame = page.frames[name]
        assert (drawing.width, drawing.height) == pytest.approx(frame[2:], abs=0.01)
        boxes = [box(*item.box) for item in texts_of(drawing)]
        for item, shape in zip(texts_of(drawing), boxes):
            assert item.size >= LEAST_SIZE
            left, top, right, bottom = shape.bounds
            # Figures reach no lower than their base line.
            bottom = item.y if item.text.isdigit() else bottom
            assert left >= -0.05 and top >= -0.05, (name, item)
            assert right <= drawing.width + 0.05 and bottom <= drawing.height + 0.3, (name, item)
        for (one, first), (other, second) in combinations(zip(texts_of(drawing), boxes), 2):
            assert first.intersection(second).area < 1e-6, (name, one.text, other.text)


# --- the design ----------------------------------------------------------------------------------------


@pytest.mark.parametrize("size", EVERY_SIZE)
@pytest.mark.parametrize("form", ["pages", "screen", "booklet"])
def test_frames_fill_a_page_of_any_size_and_none_covers_another(size, form):
    frames = hole_page_frames(size, form)
    page = box(0, 0, *size)
    parts = ("head", "picture", "ladder", "green", "notes", "foot")
    shapes = [box(x, y, x + wide, y + high) for x, y, wide, high in (frames[name] for name in parts)]
    assert all(page.contains(shape) for shape in shapes)
    assert all(one.intersection(other).area < 1e-6 for one, other in combinations(shapes, 2))
    assert sum(shape.area for shape in shapes) > 0.75 * page.area
    assert frames["overlay"] == frames["picture"]
    # The ladder shares the picture's upright scale: side by side, the same height.
    assert frames["ladder"][1::2] == pytest.approx(frames["picture"][1::2])
    assert frames["ladder"][0] == pytest.approx(frames["picture"][0] + frames["picture"][2])


@pytest.mark.parametrize("size", [(60, 150), (90, 90), (math.nan, 200)])
def test_a_page_too_small_is_refused(size):
    with pytest.raises(YardwrightError, match="70 x 110"):
        hole_page_frames(size)


# --- the whole page ------------------------------------------------------------------------------------


@pytest.mark.parametrize("size", EVERY_SIZE)
@pytest.mark.parametrize("unit", ["yd", "m"])
def test_a_page_is_legible_at_any_size(size, unit):
    page = hole_page(furnished(settings={"unit": unit}), number=1, size_mm=size)
    assert_legible(page)
    assert page.size == tuple(size)


def test_the_head_says_the_hole():
    page = hole_page(furnished(), number=1)
    said = said_in(page.drawings["head"])
    assert {"1", "Long Shaw", "Par 4 · Index 7", "Back", "400", "Forward", "360"} <= set(said)
    assert page.texts["description"] == "Keep left of the pit."
    assert "Keep left of the" in " ".join(said_in(page.drawings["notes"], "description"))


def test_the_head_says_the_flights_of_an_event():
    event = Event(
        "Larkmere Cup",
        rounds=(Round(1), Round(2)),
        flights=(Flight("Masters", "Back"), Flight("Guests", "Forward")),
        lengths=(AskedLength(1, "Masters", 1, 390 * YARD), AskedLength(2, "Masters", 1, 402 * YARD)),
    )
    head = hole_page(furnished(), number=1, event=event).drawings["head"]
    assert {"Masters", "390–402", "Guests", "360"} <= set(said_in(head))


def test_two_pages_of_one_hole_are_the_same():
    first, second = (hole_page(furnished(), number=1) for _ in range(2))
    assert first.drawings == second.drawings and first.texts == second.texts


# --- the overlay ---------------------------------------------------------------------------------------


def test_symbols_stand_where_the_window_has_them():
    a_course = furnished(turned=33.0)
    index = CourseIndex(a_course)
    page = hole_page(a_course, index, 1)
    played, tables = play_hole(a_course, 1, index), measure_hole(a_course, 1, index)
    rows = placements(page.plan, played, a_course, tables, a_course.features)
    drawn = [(place.symbol, place.x, place.y) for place in page.drawings["overlay"].places]
    wanted = [row for row in rows if row.symbol in ("tee", "target", "front", "marker_proposed")]
    assert len(wanted) == 5
    for row in wanted:
        near = [(x, y) for symbol, x, y in drawn if symbol == row.symbol]
        assert min(math.dist(place, (row.x_mm, row.y_mm)) for place in near) < 0.2


def test_callouts_say_reach_and_clear_and_cover_no_hazard():
    a_course = furnished()
    page = hole_page(a_course, number=1)
    overlay = page.drawings["overlay"]
    # From the tee's front at the origin, by Pythagoras.
    wanted = [(math.hypot(20, 200), math.hypot(30, 215)), (math.hypot(24, 240), math.hypot(34, 252))]
    for low, high in wanted:
        assert f"{whole(low)}–{whole(high)}" in said_in(overlay, "label")
    assert "300–310" in said_in(overlay, "label")
    played = play_hole(a_course, 1)
    on = OnPicture(page.plan)
    things = [f.geometry for f in played.features if f.kind in ("bunker", "green")]
    for shape in map_points(things, on.points):
        for item in texts_of(overlay):
            assert not box(*item.box).intersects(shape), item.text


def test_to_green_arcs_are_measured_to_the_front_and_say_so():
    page = hole_page(furnished(), number=1)
    overlay, on = page.drawings["overlay"], OnPicture(page.plan)
    front = on.at(play_hole(furnished(), 1).green.front)
    per_yard = YARD * 1000.0 / page.plan.scale
    arcs = [item.points for item in overlay.items if isinstance(item, Line) and len(item.points) > 20]
    radii = {round(math.dist(arc[len(arc) // 2], front) / per_yard) for arc in arcs}
    assert {50, 100, 150} <= radii
    for arc in arcs:
        away = [math.dist(point, front) for point in arc]
        from_tee = [math.dist(point, on.at(tee_of(play_hole(furnished(), 1)).reference)) for point in arc]
        assert min(np.ptp(away), np.ptp(from_tee)) < 0.01


def test_the_needle_points_north():
    for turned in (0.0, 40.0, 200.0):
        a_course = furnished(turned=turned)
        page = hole_page(a_course, number=1)
        north = next(p for p in page.drawings["overlay"].places if p.symbol == "north")
        # The course is drawn up the page and turned anticlockwise, so north lies that far clockwise of up.
        mid = {
            (x, y)
            for item in page.drawings["overlay"].items
            if hasattr(item, "radius")
            for x, y in item.points
        }
        centre = min(mid, key=lambda place: abs(math.dist(place, (north.x, north.y)) - 2.3))
        turn = math.degrees(math.atan2(north.x - centre[0], -(north.y - centre[1])))
        assert (turn - turned + 180) % 360 - 180 == pytest.approx(0.0, abs=0.5)


# --- the ladder ----------------------------------------------------------------------------------------


def test_bars_agree_with_the_table_and_with_paper():
    a_course = furnished()
    index = CourseIndex(a_course)
    page = hole_page(a_course, index, 1)
    played, tables = play_hole(a_course, 1, index), measure_hole(a_course, 1, index)
    bars = {bar.row.feature_id: bar for bar in bars_of(played, a_course, tables, tee_of(played))}
    rows = {
        row.feature_id: row for row in tables["distances"] if row.tee_set == "Back" and row.kind != "green"
    }
    assert set(bars) == {11, 12, 13, 14, 15}
    assert bars[11].from_tee == (rows[11].reach, rows[11].clear)
    assert bars[11].from_tee[0] / YARD == pytest.approx(math.hypot(20, 200), abs=1e-6)
    # The front of the round green lies 385 yd up the line.
    assert bars[11].to_front[0] / YARD == pytest.approx(math.hypot(20, 185), abs=1e-3)
    assert bars[11].to_front[1] == rows[11].short_of_green
    assert bars[14].from_tee == (rows[14].enter, rows[14].leave)
    assert bars[14].to_front[0] / YARD == pytest.approx(85, abs=1e-3)
    ladder = page.drawings["ladder"]
    assert {str(whole(math.hypot(20, 200))), "300", "310", "385", "400", "415"} <= set(said_in(ladder, "tee"))
    assert {"75", "85"} <= set(said_in(ladder, "flag"))


def test_the_ladder_stands_at_the_height_of_the_picture():
    a_course = furnished(turned=70.0)
    page = hole_page(a_course, number=1)
    on, played = OnPicture(page.plan), play_hole(a_course, 1)
    tee_y, front_y = (on.at(place)[1] for place in (tee_of(played).reference, played.green.front))

    def height(yards):
        """By the straight hole's own proportion, not by way of the plan."""
        return tee_y + (front_y - tee_y) * yards / 385.0

    edges = [
        (min(y for _, y in item.points), max(y for _, y in item.points))
        for item in page.drawings["ladder"].items
        if isinstance(item, Line) and len(item.points) == 5
    ]
    for low, high in ((200, 215), (240, 252)):
        assert any(edge == pytest.approx((height(high), height(low)), abs=0.02) for edge in edges), (
            low,
            high,
        )


def test_a_fairway_is_as_wide_on_the_ladder_as_it_lies_and_says_it():
    page = hole_page(furnished(), number=1)
    ladder = page.drawings["ladder"]
    assert said_in(ladder, "width") and set(said_in(ladder, "width")) == {"34"}
    ribbon = next(item for item in ladder.items if isinstance(item, Area) and item.tone == "#d3e4c4")
    xs = [x for x, _ in ribbon.rings[0]]
    middle = ladder.width / 2
    rim = max(
        x
        for item in ladder.items
        if isinstance(item, Line) and item.tone == "#9a9a9a"
        for x, _ in item.points
    )
    per_yard = (rim - middle) / (ACROSS_M / YARD)
    assert (middle - min(xs), max(xs) - middle) == pytest.approx((18 * per_yard, 16 * per_yard), abs=0.02)


def test_past_a_turn_the_ladder_counts_along_the_line():
    # 240 yd up, then 160 right: a bunker 100 yd past the turn.
    a_course = dogleg_hole(feature("bunker", 11, rectangle(100, 250, 110, 260), 1))
    index = CourseIndex(a_course)
    played, tables = play_hole(a_course, 1, index), measure_hole(a_course, 1, index)
    bar = bars_of(played, a_course, tables, tee_of(played))[0]
    assert np.array(bar.from_tee) / YARD == pytest.approx([340, 350], abs=1e-3)
    assert bar.to_front[0] / YARD == pytest.approx(math.hypot(45, 10), abs=0.2)
    page = hole_page(a_course, index, 1)
    assert "340–350" in said_in(page.drawings["overlay"], "label")
    assert_legible(page)


@settings(max_examples=25, deadline=None, suppress_health_check=list(HealthCheck))
@given(
    st.lists(
        st.tuples(st.floats(-50, 50), st.floats(20, 410), st.floats(2, 14), st.booleans()),
        min_size=1,
        max_size=24,
    ),
    st.sampled_from(EVERY_SIZE),
    st.floats(60, 300),
)
def test_no_labels_overlap_whatever_the_hazards(hazards, size, first):
    things = [
        feature("penalty_area" if wet else "bunker", 20 + n, circle(x, y, r, 24), 1)
        for n, (x, y, r, wet) in enumerate(hazards)
    ]
    a_course = dogleg_hole(*things, first=first, second=400 - first)
    page = hole_page(a_course, number=1, size_mm=size)
    assert_legible(page)
    on = OnPicture(page.plan)
    played = play_hole(a_course, 1)
    for shape in map_points([f.geometry for f in played.features if f.kind == "bunker"], on.points):
        for item in texts_of(page.drawings["overlay"]):
            if item.about == "label":
                assert not box(*item.box).intersects(shape)


# --- the green -----------------------------------------------------------------------------------------


@pytest.mark.parametrize("radius", [5, 15, 24])
@pytest.mark.parametrize("size", EVERY_SIZE)
def test_the_green_is_at_the_scale_it_says_and_no_larger_than_allowed(radius, size):
    page = hole_page(straight_hole(green=circle(0, 400, radius, 128)), number=1, size_mm=size)
    green = page.drawings["green"]
    places = {place.symbol: (place.x, place.y) for place in green.places}
    measured = 2 * radius * YARD * 1000.0 / math.dist(places["front"], places["back"])
    said = float(said_in(green, "scale")[0].split(":")[1])
    assert measured == pytest.approx(said, rel=1e-3)
    assert said >= 480.0
    assert places["front"][1] > places["back"][1] and places["front"][0] == pytest.approx(places["back"][0])
    assert said_in(green, "size") == [f"{2 * radius} deep · {2 * radius} wide"]


def test_a_small_green_is_shown_at_the_limit_itself():
    green = hole_page(straight_hole(green=circle(0, 400, 5, 64)), number=1).drawings["green"]
    assert said_in(green, "scale") == ["1:480"]
    a_course = straight_hole()
    with pytest.raises(YardwrightError, match="Rule 4.3a"):
        green_panel(a_course, CourseIndex(a_course), 1, (60.0, 80.0), scale=400.0)


def test_the_grid_is_of_five_yards():
    a_course = straight_hole()
    view = view_green(a_course, CourseIndex(a_course), 1, ())
    lines = grid_lines(plotted(view, (0.0, 0.0, 60.0, 60.0), 600.0), "yd")
    level = sorted({round(one.points[0][1], 4) for one in lines if one.points[0][1] == one.points[-1][1]})
    assert len(level) >= 5
    assert np.diff(level) == pytest.approx(5 * YARD * 1000 / 600, abs=1e-3)


def with_pins():
    rounds = tuple(Round(number) for number in (1, 2, 3, 4))
    pins = tuple(
        Pin("Larkmere Cup", number, 1, (5 + 6 * number) * YARD, 6 * YARD, side)
        for number, side in ((1, "left"), (2, "right"), (3, "left"))
    )
    return Event("Larkmere Cup", rounds=rounds, pins=pins)


def test_pins_stand_at_their_figures():
    a_course, event = straight_hole(), with_pins()
    index = CourseIndex(a_course)
    for number, count in ((None, 3), (2, 1)):
        page = hole_page(a_course, index, 1, event, round_number=number)
        green = page.drawings["green"]
        scale = float(said_in(green, "scale")[0].split(":")[1])
        front = next(place for place in green.places if place.symbol == "front")
        pins = [place for place in green.places if place.symbol == "pin"]
        assert len(pins) == count
        rows = {row.round: row for row in pin_rows(a_course, event, index)[0]}
        for pin in pins:
            row = rows[pin.round]
            assert (front.y - pin.y) * scale / 1000 == pytest.approx((5 + 6 * pin.round) * YARD, abs=1e-3)
            assert (pin.x - front.x) * scale / 1000 == pytest.approx(row.across, abs=1e-3)
            assert f"{5 + 6 * pin.round} on" in said_in(green, "pin")
        assert_legible(page)


# --- on paper ------------------------------------------------------------------------------------------


def test_what_is_painted_stands_where_the_drawing_says():
    page = hole_page(furnished(), number=1)
    for ground in ("#f2ead0", "#101810"):
        image = painted_page(page, ground, grey=True)
        left, top, _, _ = page.frames["overlay"]
        front = next(place for place in page.drawings["overlay"].places if place.symbol == "front")
        per_mm = 300 / 25.4
        x, y = (left + front.x) * per_mm, (top + front.y) * per_mm
        tones = [QColor(image.pixel(int(x + step), int(y))).lightness() for step in range(-9, 10)]
        # A light dot in a dark rim, on sand as in the shade.
        assert tones[9] > 200 and min(tones) < 90


# --- the uncommon --------------------------------------------------------------------------------------


def crowded():
    bunkers = [
        feature("bunker", 100 + n, circle((-1) ** n * (22 + 3 * (n % 4)), 90 + 8 * n, 3, 16), 1)
        for n in range(40)
    ]
    return straight_hole(*bunkers)


def many_tees():
    names = [f"Set {n} of twenty-seven" for n in range(1, 28)]
    tees = [tee(20 + n, (n % 3 - 1) * 9, -5 + 5 * n, tee_set=name) for n, name in enumerate(names)]
    return straight_hole(tees=tees, tee_sets=names)


def nameless():
    a_course = furnished()
    return replace(a_course, holes=(replace(a_course.holes[0], name="", description="", par=None),))


CASES = {
    "par 3": lambda: straight_hole(length=150.0, par=3),
    "no green": lambda: course([tee(2, 0, -5)], {1: line((0, -5), (0, 400))}, {1: 4}),
    "no tee": lambda: course(
        [feature("green", 1, circle(0, 400, 15), 1)], {1: line((0, -5), (0, 400))}, {1: 4}
    ),
    "40 bunkers": crowded,
    "27 tee sets": many_tees,
    "sharp dogleg": lambda: dogleg_hole(feature("bunker", 9, circle(20, 220, 6, 24), 1)),
    "hairpin": lambda: course(
        [feature("green", 1, circle(120, 60, 15), 1), tee(2, 0, -5)],
        {1: line((0, -5), (0, 260), (120, 260), (120, 60))},
        {1: 5},
    ),
    "no names": nameless,
}


@pytest.mark.parametrize("case", list(CASES))
@pytest.mark.parametrize("size", [SIZES["pocket"], (70.0, 110.0)])
def test_uncommon_holes_give_legible_pages(case, size):
    page = hole_page(CASES[case](), number=1, size_mm=size)
    assert_legible(page)
    assert set(page.drawings) == {"overlay", "ladder", "green", "head", "notes", "foot"}


@pytest.mark.parametrize(
    "name, description",
    [
        ("長い名前のホール", "左の林を避けて右から攻める。" * 12),
        ("الحفرة الطويلة", "ابق على يسار الخندق " * 20),
        ("Über " * 20, "Donaudampfschifffahrtsgesellschaftskapitänsmütze " * 8),
        ("🏌️ Emoji", "⛳ " * 40),
        ("X" * 200, "word " * 900),
    ],
)
@pytest.mark.parametrize("size", [SIZES["pocket"], (70.0, 110.0)])
def test_any_script_and_any_length_keeps_within_its_frame(name, description, size):
    a_course = furnished()
    hole = replace(a_course.holes[0], name=name, description=description)
    page = hole_page(replace(a_course, holes=(hole,)), number=1, size_mm=size)
    assert_legible(page)


def test_what_finds_no_room_is_remarked_on():
    page = hole_page(furnished(), number=1, description="word " * 900, credit="c" * 400)
    codes = {remark.code for remark in page.remarks}
    assert "cut_short" in codes
    assert any("description" in remark for remark in page.remarks)
    assert any("credit" in remark for remark in page.remarks)
    tees = hole_page(many_tees(), number=1)
    assert any("no room for the lengths of" in remark for remark in tees.remarks)


@pytest.mark.parametrize("size, form", [("pocket", "pages"), ("phone", "screen"), ("A6", "pages")])
def test_the_room_told_is_the_room_there_is(size, form):
    """Longer and longer: the page cuts short just what is said to be too long, and by as many lines."""
    from yardwright.guide.description_room import lines_left
    from yardwright.guide.hole_page import SIZES

    cut = set()
    for words in (1, 120, 260, 320, 500):
        text = " ".join(f"word{number}" for number in range(words)) + "\nA second paragraph."
        left = lines_left(text, SIZES[size], form)
        page = hole_page(furnished(), number=1, size_mm=SIZES[size], form=form, description=text)
        said = [one for one in page.drawings["notes"].items if getattr(one, "about", "") == "description"]
        cut.add("cut_short" in {remark.code for remark in page.remarks})
        assert ("cut_short" in {remark.code for remark in page.remarks}) == (left < 0)
        if left < 0:
            assert len(said) == lines_left("", SIZES[size], form)
    assert cut == {True, False}


def test_a_hole_that_is_not_drawn_is_refused():
    with pytest.raises(YardwrightError, match="Hole 7 cannot be shown"):
        hole_page(furnished(), number=7)


def test_every_text_is_said_in_the_users_language(loudly):
    page = hole_page(furnished(), number=1, event=with_pins())
    said = [text for drawing in page.drawings.values() for text in said_in(drawing)]
    own = {"Back", "Forward", "Long", "Shaw", "Lone", "ash", "Larkmere", "Keep", "left", "of", "the", "pit"}
    for text in said:
        assert not [word for word in left_over(text) if word.strip(".") not in own], text
