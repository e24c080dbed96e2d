"""The sheets of an event, as plain values and as PDF seen from outside (poppler's tools)."""

import math
import re
import subprocess
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from yardwright.guide.painted_sheets import write_sheet
from yardwright.guide.sheet_parts import GREEN, LEAST_SIZE, Area, Dots, Line, Text, fitted, wrapped
from yardwright.guide.sheets import (
    PAGES,
    audit_sheet,
    hole_sheet,
    page_size,
    pin_sheet,
    pin_table,
    tee_sheet,
)
from yardwright.measure.hole import CourseIndex, play_hole
from yardwright.measure.rows import PinRow, TeeSettingRow
from yardwright.measure.units import YARD
from yardwright.model.errors import YardwrightError
from yardwright.model.event import Event, Flight, Round

from tests.loudly import left_over
from tests.makers import area, circle, course, feature, line, tee

pytestmark = pytest.mark.usefixtures("qgis_app")

CUP = "Larkmere Cup"
TURNED = 33.0


def event(rounds=4, holes=(), name=CUP):
    return Event(
        name,
        "2026-06-05",
        "2026-06-08",
        tuple(Round(number, f"2026-06-0{number + 4}", holes) for number in range(1, rounds + 1)),
        (Flight("Championship", "Back"), Flight("Club", "Back")),
    )


def many_holes(count=18, radius=None, settings=None):
    """Straight holes side by side, their round greens 400 yd up, turned as a whole."""
    features, lines = [], {}
    for n in range(1, count + 1):
        x, size = 300.0 * n, radius or 12 + n % 5
        features.append(feature("green", n, circle(x, 400, size, 64), n))
        features.append(
            feature("apron", n, circle(x, 400, size + 4, 64).difference(circle(x, 400, size, 64)), n)
        )
        features.append(feature("bunker", n, circle(x + size + 6, 404, 4, 24), n))
        features.append(tee(n, x, -5, hole=n))
        lines[n] = line((x, -5), (x, 400))
    return course(features, lines, dict.fromkeys(lines, 4), turned=TURNED, settings=settings or {})


def pin(a_course, hole, number, on, off, off_from, name=CUP, remark=""):
    """A PinRow on the round green of ``many_holes``, figures in yards, worked out by the circle's formula."""
    played = play_hole(a_course, hole)
    green = played.green
    half = math.sqrt(max((green.depth / 2) ** 2 - (green.depth / 2 - on * YARD) ** 2, 0.0))
    off *= YARD
    across = {"left": off - half, "right": half - off, "centre": off}[off_from]
    right = np.array([green.direction[1], -green.direction[0]])
    x, y = played.frame.from_frame(a_course.crs)(
        [green.front + on * YARD * green.direction + across * right]
    )[0]
    margin = green.depth / 2 - math.hypot(across, green.depth / 2 - on * YARD)
    return PinRow(
        name,
        number,
        hole,
        on * YARD,
        off,
        off_from,
        across,
        margin,
        green.depth - on * YARD,
        x,
        y,
        remark=remark,
    )


SIDES = ("left", "right", "centre")


def pins_of(a_course, rounds=(1, 2, 3, 4)):
    return [
        pin(
            a_course,
            hole.number,
            number,
            4 + (5 * number + 3 * hole.number) % 16,
            3 + (hole.number + number) % 4,
            SIDES[(hole.number + number) % 3],
            remark="nearer to the margin than 4 yd" if hole.number % 5 == number else "",
        )
        for hole in a_course.holes
        for number in rounds
    ]


@pytest.fixture(scope="module")
def links():
    return many_holes()


@pytest.fixture(scope="module")
def rows(links):
    return pins_of(links)


def tees_of(count=18):
    made = []
    for hole in range(1, count + 1):
        for flight in ("Club", "Championship"):
            made.append(
                TeeSettingRow(
                    CUP, 2, flight, hole, 400 * YARD, 400 * YARD, 0, 0, 3.2 * YARD, 4 * YARD, "fits", 12 * YARD,
                    remark="12 yd behind the plate",
                )
            )  # fmt: skip
    return made


def texts(page, about=None):
    return [item for item in page.items if isinstance(item, Text) and about in (None, item.about)]


def words(sheet):
    return [item.text for page in sheet.pages for item in texts(page)]


def overlap(one, other):
    return one[0] < other[2] and other[0] < one[2] and one[1] < other[3] and other[1] < one[3]


def check_page(page):
    """All letters large enough, within the page, and none over another."""
    boxes = [(item.box, item.text) for item in texts(page)]
    for item in texts(page):
        assert item.size >= 6.0
    for box, text in boxes:
        assert box[0] >= 1 and box[1] >= 1 and box[2] <= page.width - 1 and box[3] <= page.height - 1, text
    for place, (box, text) in enumerate(boxes):
        for other, beside in boxes[:place]:
            assert not overlap(box, other), (text, beside, page.width, page.height)


def all_sheets(links, rows):
    sheets = [pin_sheet(links, event(), 2, rows, page) for page in PAGES]
    sheets += [pin_table(links, event(), 2, rows, page) for page in PAGES]
    sheets += [hole_sheet(links, event(), 7, rows, page) for page in ("A6", "pocket", "phone", "A5")]
    sheets += [audit_sheet(links, event(), rows, page) for page in ("A4", "Letter", "A5", "A6")]
    return sheets + [tee_sheet(links, event(), 2, tees_of(), page) for page in ("A4", "A5", "A6")]


# Letters


def test_letters_never_run_into_each_other(links, rows):
    for sheet in all_sheets(links, rows):
        for page in sheet.pages:
            check_page(page)


def test_nor_in_a_language_with_longer_words(links, rows, loudly):
    """Capitals are about a quarter wider."""
    for sheet in all_sheets(links, rows):
        for page in sheet.pages:
            check_page(page)


def test_all_of_it_is_said_in_the_users_language(links, loudly):
    shouted = [replace(row, event="CUP", remark="") for row in pins_of(links)]
    tees = [replace(row, event="CUP", flight="A", remark="") for row in tees_of()]
    an_event = replace(event(name="CUP"), rounds=tuple(Round(n) for n in (1, 2, 3, 4)), begins="", ends="")
    named = replace(links, name="CLUB")
    for sheet in all_sheets_of(named, an_event, shouted, tees):
        for text in words(sheet):
            assert left_over(text) == [], text


def all_sheets_of(links, an_event, rows, tees):
    return [
        pin_sheet(links, an_event, 2, rows),
        pin_table(links, an_event, 2, rows),
        hole_sheet(links, an_event, 7, rows),
        audit_sheet(links, an_event, rows),
        tee_sheet(links, an_event, 2, tees),
    ]


def test_small_letters_are_refused():
    with pytest.raises(ValueError):
        Text(0, 0, "18", LEAST_SIZE - 0.1)


def test_a_long_text_is_set_smaller_and_then_cut_short():
    text, size = fitted("A very long name of a very long event, too long", 40.0, 9.0)
    assert size == LEAST_SIZE and text.endswith("…") and Text(0, 0, text, size).box[2] <= 40.0 + 1e-6
    assert fitted("Cup", 40.0, 9.0) == ("Cup", 9.0)
    lines = wrapped("one two three Donaudampfschifffahrtsgesellschaft", 12.0, 8.0)
    assert len(lines) > 2 and all(Text(0, 0, one, 8.0).box[2] <= 12.0 for one in lines)


@settings(max_examples=25, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(
    st.integers(1, 27),
    st.floats(74, 300),
    st.floats(74, 420),
    st.sampled_from([10.0, 14.0, 22.0]),
)
def test_any_page_is_either_legible_or_refused(count, width, height, radius):
    made = many_holes(count, radius)
    given_rows = pins_of(made, rounds=(1, 2))
    for make in (lambda: pin_sheet(made, event(), 2, given_rows, (width, height)),
                 lambda: hole_sheet(made, event(), 1, given_rows, (width, height))):  # fmt: skip
        try:
            sheet = make()
        except YardwrightError as error:
            # Thirteen greens cannot be parted into pages of nine or more, as a page larger than 4.25 x 7 in asks.
            assert error.remedy and min(width, height) < 125
            continue
        assert sheet.scale >= 480
        for page in sheet.pages:
            check_page(page)
            for place in page.places:
                assert 0 < place.x < width and 0 < place.y < height


# Pages


@pytest.mark.parametrize("name", PAGES)
def test_the_pdf_has_the_page_asked_for(links, rows, tmp_path, name):
    sheet = pin_sheet(links, event(), 2, rows, name)
    path = tmp_path / "pins.pdf"
    write_sheet(sheet, str(path))
    told = subprocess.run(["pdfinfo", path], capture_output=True, text=True, check=True).stdout
    width, height = map(float, re.search(r"Page size: +([\d.]+) x ([\d.]+) pts", told).groups())
    # Qt writes a page in whole points.
    assert (width / 72 * 25.4, height / 72 * 25.4) == pytest.approx(PAGES[name], abs=0.18)
    assert int(re.search(r"Pages: +(\d+)", told).group(1)) == len(sheet.pages)
    assert f"Title:           {CUP}: Round 2" in told


def test_eighteen_greens_stand_on_one_page_of_A4_and_twenty_seven_too(links, rows):
    assert len(pin_sheet(links, event(), 2, rows).pages) == 1
    more = many_holes(27)
    sheet = pin_sheet(more, event(), 1, pins_of(more, (1,)))
    assert sum(len(texts(page, f"hole {n}")) for page in sheet.pages for n in range(1, 28)) == 27


def test_a_page_too_large_for_few_greens_is_remarked_on(links, rows):
    """4 1/4 x 7 in, free with nine greens and more (Rules of Golf, Rule 4.3a, interpretation on green-reading
    materials; quoted in several associations' notices)."""

    def codes(sheet):
        return [remark.code for remark in sheet.remarks]

    assert codes(pin_sheet(links, event(), 2, rows, "A4")) == []
    few = event(holes=tuple(range(1, 9)))
    eight = [row for row in rows if row.hole < 9]
    assert codes(pin_sheet(links, few, 2, eight, "A4")) == ["page_size"]
    assert codes(pin_sheet(links, few, 2, eight, (107.95, 177.8))) == []
    assert codes(pin_sheet(links, few, 2, eight, (177.8, 107.95))) == []
    assert codes(pin_sheet(links, few, 2, eight, (108.2, 177.8))) == ["page_size"]
    nine = event(holes=tuple(range(1, 10)))
    assert codes(pin_sheet(links, nine, 2, [row for row in rows if row.hole < 10], "A4")) == []
    assert codes(pin_sheet(links, event(), 2, rows, "A4", per_page=6)) == ["page_size"]
    assert codes(hole_sheet(links, event(), 3, rows, "A6")) == []
    assert codes(hole_sheet(links, event(), 3, rows, "A5")) == ["page_size"]


@pytest.mark.parametrize("name", ("phone", "A5"))
def test_no_page_larger_than_a_book_has_fewer_than_nine_greens_of_many(links, rows, name):
    sheet = pin_sheet(links, event(), 2, rows, name)
    assert all(sum(len(texts(page, f"hole {n}")) for n in range(1, 19)) >= 9 for page in sheet.pages)


@pytest.mark.parametrize("page", ("A0", (10, 10), (math.nan, 100), (100,), None, ("a", "b"), (100, 5000)))
def test_no_page_at_all(page):
    with pytest.raises(YardwrightError):
        page_size(page)


# Scale


def test_a_known_green_has_its_depth_on_paper(links, rows):
    """A green 40 yd deep at 1:480 is 3.000 in, 76.2 mm (computed; tests' list of outside values)."""
    made = many_holes(1, 20.0)
    sheet = hole_sheet(made, event(), 1, pins_of(made), "pocket", scale=480)
    (page,) = sheet.pages
    front, back = (next(p for p in page.places if p.symbol == name) for name in ("front", "back"))
    assert front.y - back.y == pytest.approx(76.2, abs=0.01) and front.x == pytest.approx(back.x, abs=0.01)
    rings = np.concatenate(
        [np.array(a.rings[0]) for a in page.items if isinstance(a, Area) and a.tone == GREEN]
    )
    assert np.ptp(rings, axis=0) == pytest.approx([76.2, 76.2], abs=0.02)


def test_all_greens_of_a_sheet_have_the_one_scale_stated_on_it(links, rows):
    sheet = pin_sheet(links, event(), 2, rows)
    assert f"1:{sheet.scale:g}" in " ".join(words(sheet))
    for hole in range(1, 19):
        places = {p.symbol: p for page in sheet.pages for p in page.places if p.hole == hole}
        depth = 2 * (12 + hole % 5) * YARD * 1000 / sheet.scale
        assert places["front"].y - places["back"].y == pytest.approx(depth, abs=0.01)


def test_larger_than_1_to_480_is_refused(links, rows):
    """Rules of Golf, Rule 4.3a, interpretation on green-reading materials: 3/8 inch to 5 yards."""
    assert pytest.approx(1 / 480) == 3 / 8 * 25.4 / (5 * YARD * 1000)
    few = event(holes=(1, 2))
    two = [row for row in rows if row.hole < 3]
    for scale in (479.9, 100, 0, -5, math.nan):
        with pytest.raises(YardwrightError):
            pin_sheet(links, few, 2, two, "A4", scale=scale)
        with pytest.raises(YardwrightError):
            hole_sheet(links, few, 1, two, "A4", scale=scale)
        with pytest.raises(YardwrightError):
            audit_sheet(links, few, two, scale=scale)
    assert pin_sheet(links, few, 2, two, "A4").scale == 480
    assert pin_sheet(links, few, 2, two, "A4", scale=750).scale == 750
    fits = pin_sheet(links, event(), 2, rows, "A4").scale
    asked = [pin_sheet(links, event(), 2, rows, "A4", scale=scale) for scale in (fits + 200, fits - 50)]
    assert [(len(sheet.pages), sheet.scale) for sheet in asked] == [(1, fits + 200), (2, fits - 50)]
    with pytest.raises(YardwrightError, match="1:500"):
        pin_sheet(links, event(), 2, rows, "A4", scale=500)


# Pins


def test_each_pin_lies_where_its_figures_say(links, rows):
    """On the paper up from the front by *on*, and from the green's own painted edge by *off*."""
    sheet = pin_sheet(links, event(), 2, rows, "A4")
    (page,) = sheet.pages
    per_yard = YARD * 1000 / sheet.scale
    fills = [np.array(item.rings[0]) for item in page.items if isinstance(item, Area) and item.tone == GREEN]
    pins = [place for place in page.places if place.symbol == "pin"]
    assert [place.hole for place in pins] == list(range(1, 19)) and {place.round for place in pins} == {2}
    for place in pins:
        row = next(row for row in rows if row.hole == place.hole and row.round == 2)
        ring = next(one for one in fills if one[:, 0].min() < place.x < one[:, 0].max()
                    and one[:, 1].min() < place.y < one[:, 1].max())  # fmt: skip
        radius = (12 + place.hole % 5) * per_yard
        middle_x = (ring[:, 0].min() + ring[:, 0].max()) / 2
        assert ring[:, 1].max() - place.y == pytest.approx(row.on * 1000 / sheet.scale, abs=0.1)
        half = math.sqrt(radius**2 - (ring[:, 1].max() - radius - place.y) ** 2)
        from_side = {
            "left": place.x - (middle_x - half),
            "right": middle_x + half - place.x,
            "centre": place.x - middle_x,
        }[row.off_from]
        assert from_side == pytest.approx(row.off * 1000 / sheet.scale, abs=0.1)


@pytest.mark.parametrize("make", (pin_sheet, hole_sheet, audit_sheet))
def test_the_dots_are_found_there_in_the_printed_page(links, rows, tmp_path, make):
    """Within 0.2 mm, in poppler's picture of the PDF."""
    given_to = {pin_sheet: (2, rows, "A4"), hole_sheet: (7, rows, "A6"), audit_sheet: (rows, "A4")}[make]
    sheet = make(links, event(), *given_to)
    path = tmp_path / "sheet.pdf"
    write_sheet(sheet, str(path))
    subprocess.run(["pdftoppm", "-r", "508", "-gray", path, tmp_path / "page"], check=True)
    looked_at = 0
    for page, picture in zip(sheet.pages, sorted(tmp_path.glob("page*.pgm"))):
        grey = read_pgm(picture)
        radii = {d.points[0]: d.radius for d in page.items if isinstance(d, Dots) and d.tone == "#000000"}
        for place in (place for place in page.places if place.symbol == "pin"):
            radius = radii[place.x, place.y]
            x, y, dark = dot_near(grey, place, radius + 0.3)
            assert math.hypot(x - place.x, y - place.y) < 0.2, (place, x, y)
            assert dark == pytest.approx(math.pi * radius**2, rel=0.2)
            looked_at += 1
    assert looked_at == {pin_sheet: 18, hole_sheet: 4, audit_sheet: 72}[make]


def read_pgm(path):
    data = path.read_bytes()
    width, height = map(int, re.match(rb"P5\s+(\d+)\s+(\d+)\s+255\s", data).groups())
    return np.frombuffer(data[-width * height :], dtype=np.uint8).reshape(height, width)


def dot_near(grey, place, reach):
    """Middle and size of what is black within ``reach`` mm of a place; 508 dots an inch are 20 a millimetre."""
    top, left = (max(0, int((at - 3) * 20)) for at in (place.y, place.x))
    rows, columns = np.nonzero(grey[top : top + 120, left : left + 120] < 100)
    x, y = (left + columns + 0.5) / 20, (top + rows + 0.5) / 20
    near = np.hypot(x - place.x, y - place.y) < reach
    return x[near].mean(), y[near].mean(), near.sum() / 400


def test_two_pins_a_step_apart_keep_both_numbers(links):
    close = [pin(links, 1, number, 10 + number * 0.7, 6, "left") for number in (1, 2, 3, 4)]
    sheet = hole_sheet(links, event(), 1, close)
    (page,) = sheet.pages
    labels = texts(page, "label")
    assert sorted(label.text for label in labels) == ["1", "2", "3", "4"] and not sheet.remarks
    for place in (place for place in page.places if place.symbol == "pin"):
        for label in labels:
            x = min(max(place.x, label.box[0]), label.box[2])
            y = min(max(place.y, label.box[1]), label.box[3])
            assert math.hypot(x - place.x, y - place.y) > 0.9


def test_lines_show_what_is_counted(links, rows):
    """From the front up to the pin's depth, and from the named margin to the pin."""
    few = event(holes=(1,))
    one = [pin(links, 1, 2, 10, 6, "left")]
    sheet = pin_sheet(links, few, 2, one, "A6")
    (page,) = sheet.pages
    heavy = [item.points for item in page.items if isinstance(item, Line) and item.width > 0.45]
    spot = next(place for place in page.places if place.symbol == "pin")
    front = next(place for place in page.places if place.symbol == "front")
    per_yard = YARD * 1000 / sheet.scale
    lengths = sorted(math.dist(*ends) / per_yard for ends in heavy)
    assert lengths == pytest.approx([6, 10], abs=0.01)
    assert any(math.dist(ends[1], (spot.x, spot.y)) < 0.01 for ends in heavy)
    assert any(math.dist(ends[0], (front.x, front.y)) < 0.01 for ends in heavy)


def test_a_pin_far_from_its_green_and_one_without_place_are_named_and_not_drawn(links, rows):
    wild = [replace(row, x=row.x + 5000.0) if row.hole == 3 else row for row in rows]
    wild = [replace(row, x=None, y=None) if row.hole == 4 else row for row in wild]
    wild = [replace(row, x=math.nan) if row.hole == 5 else row for row in wild]
    sheet = pin_sheet(links, event(), 2, wild)
    assert [remark.code for remark in sheet.remarks] == ["lost_pin"] * 3
    assert sheet.scale == pin_sheet(links, event(), 2, rows).scale
    assert len([place for page in sheet.pages for place in page.places if place.symbol == "pin"]) == 15
    audit = audit_sheet(links, event(), wild)
    assert [remark.code for remark in audit.remarks] == ["lost_pin"] * 12
    assert [text for text in words(audit) if text == "–"]


def test_a_hole_without_green_and_one_without_pin_keep_their_cells(links, rows):
    greens = tuple(f for f in links.features if not (f.kind == "green" and f.holes == (6,)))
    lacking = replace(links, features=greens)
    sheet = pin_sheet(lacking, event(), 2, [row for row in rows if row.hole != 8])
    assert sorted(remark.code for remark in sheet.remarks) == ["no_green", "no_pin"]
    said = words(sheet)
    assert " ".join(said[said.index("no") :][:2]) == "no green drawn" or "no green" in said
    assert " ".join(said).count("no pin") == 1
    assert [item.about for item in texts(sheet.pages[0]) if item.about.startswith("hole")] == [
        f"hole {n}" for n in range(1, 19)
    ]
    bare = replace(links, features=())
    for make in (
        lambda: pin_sheet(bare, event(), 2, []),
        lambda: hole_sheet(bare, event(), 1, []),
        lambda: audit_sheet(bare, event(), []),
        lambda: tee_sheet(bare, event(), 2, []),
    ):
        with pytest.raises(YardwrightError):
            make()


def test_rows_of_other_events_and_rounds_are_left_aside(links, rows):
    others = [replace(row, event="Other Cup", x=row.x + 3) for row in rows]
    assert pin_sheet(links, event(), 2, [*others, *rows]) == pin_sheet(links, event(), 2, rows)


def test_the_order_of_play_is_the_rounds(links, rows):
    turned = event(holes=(*range(10, 19), *range(1, 10)))
    sheet = pin_sheet(links, turned, 2, rows)
    shown = [item.about for item in texts(sheet.pages[0]) if item.about.startswith("hole")]
    assert shown[:2] == ["hole 10", "hole 11"] and len(shown) == 18


def test_a_green_of_two_holes_shows_the_part_its_pins_lie_on():
    """A double green 100 yd wide: the hole's own part at a scale that the others can have too."""
    wide = area((-20, 385), (80, 385), (80, 415), (-20, 415))
    made = course(
        [feature("green", 1, wide, 1, 2), tee(2, 0, -5), tee(3, 60, -5, hole=2)],
        {1: line((0, -5), (0, 400)), 2: line((60, -5), (60, 400))},
        {1: 4, 2: 4},
    )
    played = play_hole(made, 1)
    spot = played.green.front + 10 * YARD * played.green.direction
    x, y = played.frame.from_frame(made.crs)([spot])[0]
    row = PinRow(CUP, 1, 1, 10 * YARD, 0.0, "centre", 0.0, 10 * YARD, 20 * YARD, x, y)
    sheet = hole_sheet(made, event(), 1, [row], "pocket")
    assert sheet.scale < 800
    (page,) = sheet.pages
    fills = np.concatenate(
        [np.array(a.rings[0]) for a in page.items if isinstance(a, Area) and a.tone == GREEN]
    )
    assert fills[:, 0].min() >= 0 and fills[:, 0].max() <= page.width
    assert any(place.symbol == "pin" for place in page.places)


# Words and figures


def pdf_text(sheet, tmp_path):
    path = tmp_path / "text.pdf"
    write_sheet(sheet, str(path))
    fonts = subprocess.run(["pdffonts", path], capture_output=True, text=True, check=True).stdout
    images = subprocess.run(["pdfimages", "-list", path], capture_output=True, text=True, check=True).stdout
    assert len(images.splitlines()) == 2, "a head and no picture: all is drawn as lines and areas"
    assert re.findall(r"\b(yes|no) +(?:yes|no) +(?:yes|no) +\d+ +\d+$", fonts, re.M) == ["yes", "yes"], fonts
    return subprocess.run(
        ["pdftotext", "-layout", path, "-"], capture_output=True, text=True, check=True
    ).stdout


def test_text_is_text_and_its_fonts_are_in_the_file(links, tmp_path):
    one = [
        pin(links, 1, 2, 18, 6, "right"),
        pin(links, 2, 2, 11, -5, "centre"),
        pin(links, 3, 2, 9, 3, "centre"),
    ]
    few = event(holes=(1, 2, 3))
    found = pdf_text(pin_sheet(links, few, 2, one, "A6"), tmp_path)
    for text in (
        CUP,
        "Larkmere",
        "Round 2",
        "18",
        "on",
        "depth 26",
        "depth 28",
        "approach up",
        "no survey",
        "Local",
    ):
        assert text in found, text
    flat = " ".join(words(pin_sheet(links, few, 2, one, "A6")))
    assert "left of centre" in flat and "right of centre" in flat and "from right" in flat and "-" not in flat


def test_the_table_form(links, rows, tmp_path):
    found = pdf_text(pin_table(links, event(), 2, rows), tmp_path)
    row = next(row for row in rows if row.hole == 7 and row.round == 2)
    side = {"left": "from left", "right": "from right"}.get(row.off_from, "right of centre")
    figures = (round(row.on / YARD), round(row.off / YARD), side, 2 * (12 + 7 % 5))
    assert re.search(r"^ *7 +{} +{} {} +{} *$".format(*figures), found, re.M), found
    assert len(re.findall(r"^ *\d+ +\d+ +\d+ ", found, re.M)) == 18


def test_figures_in_metres():
    made = many_holes(9, 20 / YARD, {"unit": "m"})
    one = [pin(made, 1, 1, 12 / YARD, 5 / YARD, "left")]
    said = words(pin_table(made, event(), 1, one))
    assert said[said.index("Depth") + 1 :][:5] == ["1", "12", "5", "from left", "40"]
    assert any("metres" in text for text in said)


def test_the_audit_sheet_says_all_figures_both_ways(links):
    """Larkmere's hole 3 is a circle of 15 yd: half the chord at 6 on is sqrt(15^2 - 9^2) = 12."""
    sheet = audit_sheet(links, event(), [pin(links, 3, 1, 6, 5, "left", remark="near the margin")])
    said = words(sheet)
    start = said.index("Margin", said.index("Hole 3"))
    # round, front, back, left, right, off centre; the margin is nearest along the radius: 15 - hypot(7, 9) = 3.6
    assert said[start + 1 : start + 9] == ["1", "6", "24", "5", "19", "7 L", "4", "near the margin"]
    assert {"Hole 1", "Hole 18"} <= set(said) and "depth 30, approach from 150 yd" in said
    bold = {item.text for page in sheet.pages for item in texts(page) if item.bold}
    assert {"6", "5"} <= bold and "19" not in bold


def test_the_audit_sheet_is_of_as_many_pages_as_it_needs(links, rows):
    sheet = audit_sheet(links, event(), rows)
    assert len(sheet.pages) > 1 and [f"Hole {n}" for n in range(1, 19)] == [
        text for text in words(sheet) if text.startswith("Hole ")
    ]
    count = len(sheet.pages)
    assert [item.text for page in sheet.pages for item in texts(page, "page")] == [
        f"{n} / {count}" for n in range(1, count + 1)
    ]


def test_the_tee_sheet(links, tmp_path):
    tees = tees_of()
    tees[0] = replace(
        tees[0], verdict="nearest", got=397 * YARD, remark="the tee is too short", from_plate=-2 * YARD
    )
    tees[2] = replace(
        tees[2], verdict="impossible", got=None, from_front=None, from_plate=None, remark="no tee"
    )
    sheet = tee_sheet(links, event(), 2, tees)
    said = words(sheet)
    start = said.index("1", said.index("From the plate"))
    assert said[start : start + 6] == ["1", "Championship", "400", "400", "3.2", "12.0 behind"]
    assert said[start + 6 : start + 12] == [
        "Club", "400", "397", "3.2", "2.0 ahead", "the nearest length this tee allows; the tee is too short",
    ]  # fmt: skip
    assert not [text for text in said if "plate" in text and text != "From the plate"]
    impossible = said.index("cannot be set; no tee")
    assert said[impossible - 5 : impossible] == ["Club", "400", "–", "–", "–"]
    assert all(item.size >= 12 for page in sheet.pages for item in texts(page) if item.text == "Championship")
    found = pdf_text(sheet, tmp_path)
    assert re.search(r"^ *1 +Championship +400 +400 +3.2 +12.0 behind *$", found, re.M), found


def test_a_tees_flights_stay_together(links):
    """A hole is never torn over two pages."""
    sheet = tee_sheet(links, event(), 2, tees_of(), "A6")
    assert len(sheet.pages) > 1
    for page in sheet.pages:
        flights = [item.text for item in texts(page) if item.text in ("Championship", "Club")]
        assert flights == ["Championship", "Club"] * (len(flights) // 2)


# Writing


def test_the_same_sheet_gives_the_same_file(links, rows, tmp_path):
    made = []
    for name in ("one.pdf", "two.pdf"):
        write_sheet(pin_sheet(links, event(), 2, rows), str(tmp_path / name))
        made.append(re.sub(rb"/CreationDate \(.*?\)", b"", (tmp_path / name).read_bytes()))
    assert made[0] == made[1] and made[0].startswith(b"%PDF")
    assert sorted(path.name for path in tmp_path.iterdir()) == ["one.pdf", "two.pdf"]


def test_a_failure_leaves_what_was_there(links, rows, tmp_path):
    path = tmp_path / "pins.pdf"
    path.write_bytes(b"old")
    sheet = pin_sheet(links, event(), 2, rows)
    with pytest.raises(KeyError):
        write_sheet(replace(sheet, pages=(replace(sheet.pages[0], items=("no item",)),)), str(path))
    assert path.read_bytes() == b"old" and [one.name for one in tmp_path.iterdir()] == ["pins.pdf"]
    with pytest.raises(YardwrightError):
        write_sheet(sheet, str(tmp_path / "missing" / "pins.pdf"))


def test_a_sheet_is_made_in_half_a_second(links, rows, tmp_path):
    import time

    index = CourseIndex(links)
    pin_sheet(links, event(), 1, rows, index=index)
    started = time.perf_counter()
    write_sheet(pin_sheet(links, event(), 2, rows, index=index), str(tmp_path / "pins.pdf"))
    assert time.perf_counter() - started < 1.0


def test_the_sheets_of_two_nines_of_27_holes_show_no_other_hole():
    """Rounds of the third and the first nine; a pin and a length on hole 12, which nobody plays."""
    made, nines = many_holes(27), (*range(19, 28), *range(1, 10))
    cup = event(rounds=2, holes=nines)
    rows = [pin(made, hole, number, 9, 6, "left") for number in (1, 2) for hole in (*nines, 12)]

    def holes_of(sheet):
        said = [re.fullmatch(r"Hole (\d+)", word) for word in words(sheet)]
        return [int(found.group(1)) for found in said if found]

    audit = audit_sheet(made, cup, rows)
    assert holes_of(audit) == [*range(1, 10), *range(19, 28)]
    assert [remark.code for remark in audit.remarks if remark.code == "not_played"] == ["not_played"] * 2
    tees = [
        TeeSettingRow(CUP, 1, "Club", hole, 400.0, 400.0, 0, 0, 5.0, 5.0, "fits") for hole in (*nines, 12)
    ]
    for sheet in (
        pin_sheet(made, cup, 1, rows),
        pin_table(made, cup, 1, rows),
        tee_sheet(made, cup, 1, tees),
    ):
        (left_out,) = [remark for remark in sheet.remarks if remark.code == "not_played"]
        assert left_out == "hole 12 is left out: round 1 does not play it"
        assert not [remark for remark in sheet.remarks if "12" in remark and remark is not left_out]
    table = words(pin_table(made, cup, 1, rows))
    assert "12" not in table
    told = words(hole_sheet(made, replace(cup, rounds=(cup.rounds[0], Round(2))), 12, rows))
    assert "2" in told and "1" not in told


# Heights


def falling(rows, percent=2.1):
    """The same pins on ground that falls to the front left, steeper from round to round."""
    return [replace(row, slope_pct=percent + row.round, slope_azimuth=0.0, slope_turn=225.0) for row in rows]


def rising(rows):
    return [replace(row, rise_m=row.hole - 5.0) for row in rows]


def arrows(page):
    """The ways that small arrows point on a page, degrees clockwise from up: from an arrow's shaft to its tip."""
    found = []
    for shaft, head in zip(page.items, page.items[1:]):
        if isinstance(shaft, Line) and isinstance(head, Area) and len(head.rings[0]) == 3:
            (x, y), (tip_x, tip_y) = shaft.points[0], head.rings[0][0]
            found.append(round(math.degrees(math.atan2(tip_x - x, y - tip_y)) % 360, 3))
    return found


def test_letters_keep_apart_with_heights_too(links, rows, loudly):
    sheets = all_sheets(links, falling(rows))
    sheets += [tee_sheet(links, event(), 2, rising(tees_of()), page) for page in ("A4", "A5", "A6")]
    for sheet in sheets:
        for page in sheet.pages:
            check_page(page)


def test_the_fall_stands_beside_a_pins_figures_with_an_arrow_downhill(links, rows):
    for page in ("A4", "pocket"):
        sheet = pin_sheet(links, event(), 2, falling(rows), page)
        told = [item.text for one in sheet.pages for item in texts(one, "fall")]
        assert told == ["4.1 %"] * 18
        ways = [way for one in sheet.pages for way in arrows(one)]
        assert ways == [225.0] * 18
    assert "downhill" in " ".join(words(sheet)) and "slope_told" in [one.code for one in sheet.remarks]


@pytest.mark.parametrize("turn", [0.0, 37.0, 200.0, 359.0])
def test_tables_of_pins_have_a_column_for_it(links, rows, turn):
    steep = [replace(row, slope_turn=turn) for row in falling(rows)]
    table = pin_table(links, event(), 2, steep)
    assert "Slope" in words(table) and words(table).count("4.1 %") == 18
    assert [way for page in table.pages for way in arrows(page)] == pytest.approx([turn] * 18)
    hole = hole_sheet(links, event(), 7, steep)
    assert [text for text in words(hole) if "%" in text] == ["3.1 %", "4.1 %", "5.1 %", "6.1 %"]
    assert arrows(hole.pages[0]) == pytest.approx([turn] * 4)
    audit = audit_sheet(links, event(), steep)
    assert words(audit).count("5.1 %") == 18
    assert "slope_told" not in [one.code for one in audit.remarks], "the committee’s own sheet"


def test_level_ground_has_a_figure_and_no_arrow(links, rows):
    level = [replace(row, slope_pct=0.0, slope_azimuth=None, slope_turn=None) for row in rows]
    sheet = pin_sheet(links, event(), 2, level)
    assert words(sheet).count("0.0 %") == 18 and arrows(sheet.pages[0]) == []


def test_a_pin_that_no_height_reaches_has_a_dash(links, rows):
    known = falling(rows)
    known[1] = replace(known[1], slope_pct=None, slope_azimuth=None, slope_turn=None)  # hole 1, round 2
    assert known[1].hole == 1 and known[1].round == 2
    assert len(texts(pin_sheet(links, event(), 2, known).pages[0], "fall")) == 17
    table = pin_table(links, event(), 2, known)
    assert words(table).count("4.1 %") == 17 and "–" in words(table)


def test_without_heights_nothing_is_said_of_them(links, rows):
    for sheet in all_sheets_of(links, event(), rows, tees_of()):
        said = " ".join(words(sheet))
        assert "Slope" not in said and "Rise" not in said
        assert "slope_told" not in [one.code for one in sheet.remarks]


def test_the_tee_sheet_tells_the_rise_to_the_green(links):
    """5 m lower on hole 1 … 13 m higher on hole 18, and as high on hole 5."""
    told = words(tee_sheet(links, event(), 2, rising(tees_of())))
    assert "Rise (m)" in told
    assert told.count("−4.0") == 2 and told.count("0.0") == 2 and told.count("+13.0") == 2


# Tees without a plate


def test_no_plate_anywhere_is_said_once(links):
    bare = [replace(row, from_plate=None, remark="") for row in tees_of()]
    sheet = tee_sheet(links, event(), 2, bare)
    said = words(sheet)
    assert "From the plate" not in said and "–" not in said
    assert said.count("3.2") == 36, "from the front"
    feet = [" ".join(item.text for item in texts(page, "foot")) for page in sheet.pages]
    assert all(foot.count("No plate is drawn for these tees") == 1 for foot in feet)


def test_without_a_plate_the_front_is_named(links):
    some = [
        replace(row, from_plate=None, from_front=0.0 if row.hole == 3 else 3.2 * YARD, remark="")
        if row.flight == "Club"
        else row
        for row in tees_of()
    ]
    some[0] = replace(some[0], from_front=None, verdict="impossible")
    sheet = tee_sheet(links, event(), 2, some)
    said = words(sheet)
    assert said.count("12.0 behind") == 18 and said.count("3.2 from front") == 16
    assert said.count("at the front") == 1 and said.count("–") == 2, "of what cannot be set"
    foot = " ".join(item.text for item in texts(sheet.pages[0], "foot"))
    assert foot.count("no plate is drawn") == 1
    all_with = tee_sheet(links, event(), 2, tees_of())
    assert "plate is drawn" not in " ".join(words(all_with))
