"""An event of the sample course by hand in a real desktop: from the committee's files to the sheets, and what the
course file and the PDF say of it, read from outside."""

import csv
import json
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest
from desktop import result_of, run_desktop
from osgeo import ogr
from pypdf import PdfReader

from sample_project import cup, drawing, make, pictures

pytestmark = pytest.mark.desktop

NAME = "Quernhallow Vase"
HOLE = 7
"""Where a pin is clicked; the sample's image is painted about its green."""
CLICKED = (14.0, 8.0)
"""Yards on, and in from the left."""
PASTED = [(2, 1, 20, 9, "right"), (2, 2, 8, 2, "centre"), (2, HOLE, 20, 8, "right")]
AUDITED = {(1, 3): (17, 9, "right"), (1, 5): (11, 0, "centre")}
"""What the committee has otherwise in its second file: 2 yd deeper or less deep than in the first."""
YARD = 0.9144


def rows_of(path):
    with open(path, newline="", encoding="utf-8") as file:
        return list(csv.DictReader(file))


def write_rows(path, rows):
    with open(path, "w", newline="", encoding="utf-8") as file:
        writer = csv.DictWriter(file, list(rows[0]), lineterminator="\n")
        writer.writeheader()
        writer.writerows(rows)
    return str(path)


@pytest.fixture(scope="module")
def made(qgis_app, tmp_path_factory):
    """``(folder of the sample project, the committee's files and all else that is asked, drive's results)``."""
    folder = tmp_path_factory.mktemp("event")
    project = sample_in(folder)
    asked = asked_in(folder)
    plan = folder / "event.json"
    plan.write_text(json.dumps(asked), "utf-8")
    desktop = folder / "desktop"
    desktop.mkdir()
    drive = __file__.replace("test_event_in_desktop", "drive_event")
    given = {"YARDWRIGHT_EVENT": str(plan)}
    run_desktop(drive, desktop, project=project, size="1520x1020", timeout=150, environment=given)
    return folder, asked, result_of(desktop)


def sample_in(folder):
    """The sample's course and event in a project over an image of one green."""
    course = drawing.course()
    path = str(folder / "course.gpkg")
    make.make_course(path, pictures.course_extent())
    make.make_event(path)
    image = str(folder / "image.tif")
    green = next(one for one in course.features if one.kind == "green" and HOLE in one.holes)
    x0, y0, x1, y1 = green.geometry.buffer(60).bounds
    pictures.write_image(image, pictures.SEASONS[-1], [6.0 * round(n / 6) for n in (x0, y0, x1, y1)])
    name = "Image"
    return make.make_project(str(folder / "quernhallow.qgz"), "Quernhallow", path, [(name, image)], name)


def asked_in(folder):
    """The committee's files, and what the hand is to do."""
    first = [row for row in rows_of(cup.PINS) if row["round"] == "1"]
    bad = [{**first[0], "hole": "19"}, {**first[0], "round": "2", "on": "ten"}]
    second = []
    for row in first:
        on, off, side = AUDITED.get((1, int(row["hole"])), (row["on"], row["off"], row["from"]))
        second.append({**row, "on": on, "off": off, "from": side})
    lengths = rows_of(cup.LENGTHS)
    changed = [{**row, "yards": int(row["yards"]) - 3} for row in lengths if row["round"] == "1"]
    heading = "round\thole\ton\toff\tfrom\n"
    return {
        "name": NAME,
        "hole": HOLE,
        "click": clicked_place(),
        "by": "Ada Finch",
        "pins": write_rows(folder / "pins.csv", [*first[:9], *bad, *first[9:]]),
        "pasted": heading + "".join("\t".join(map(str, row)) + "\n" for row in PASTED),
        "audited": write_rows(folder / "pins_again.csv", second),
        "decide": [(1, 3, "theirs"), (1, 5, "ours")],
        "lengths": write_rows(folder / "lengths.csv", changed),
        "sheets": {kind: str(folder / f"{kind}.pdf") for kind in ("table", "tees")},
    }


def clicked_place():
    from yardwright.model.event import Pin

    on, off = CLICKED
    pin = Pin(NAME, 3, HOLE, on * YARD, off * YARD, "left")
    ((x, y),) = make.points_of(drawing.course(), [pin])
    return x, y


def read(folder, query, *given):
    with closing(sqlite3.connect(str(folder / "course.gpkg"))) as file:
        return file.execute(query, given).fetchall()


def points(folder, number):
    """``{hole: (x, y)}`` of the pins of a round, as GDAL reads them."""
    file = ogr.Open(str(folder / "course.gpkg"))
    layer = file.GetLayerByName("pin")
    layer.SetAttributeFilter(f"event = '{NAME}' AND round = {number}")
    return {row["hole"]: row.GetGeometryRef().GetPoint_2D() for row in layer}


def test_a_copy_of_the_last_event_has_its_rounds_flights_and_limits(made):
    folder, _, found = made
    assert found["rounds"] == 3
    flights = "SELECT flight, tee_set FROM event_flight WHERE event = ? ORDER BY flight"
    assert read(folder, flights, NAME) == read(folder, flights, cup.NAME) != []
    limits = "SELECT margin_yd, slope_pct, apart_yd, tolerance_yd FROM event WHERE name = ?"
    assert read(folder, limits, NAME) == read(folder, limits, cup.NAME) == [(4.0, 3.0, 3.0, 0.5)]


def test_bad_rows_are_named_and_the_good_ones_taken(made):
    _, _, found = made
    # The heading is line 1; nine good rows stand before the bad ones.
    bad = {row[0]: row[3] for row in found["brought"] if row[1] == ""}
    assert list(bad) == ["11", "12"]
    assert "19" in bad["11"] and "ten" in bad["12"]
    assert len(found["brought"]) == 18 + 2 and [row[:3] for row in found["pasted"]] == [
        [str(line), str(row[0]), str(row[1])] for line, row in enumerate(PASTED, start=2)
    ]
    assert found["in_table"] == ["20", "9", "right"]


def test_the_pins_lie_in_the_file(made):
    folder, _, found = made
    wanted = {(row["round"], row["hole"]): row for row in rows_of(cup.PINS) if row["round"] == "1"}
    figures = {
        ("1", hole): (float(row["on"]), float(row["off"]), row["from"]) for (_, hole), row in wanted.items()
    }
    figures["1", "3"] = AUDITED[1, 3]
    figures.update({(str(row[0]), str(row[1])): row[2:] for row in PASTED})
    rows = read(
        folder,
        "SELECT round, hole, on_yd, off_yd, off_from, given FROM pin WHERE event = ? ORDER BY 1, 2",
        NAME,
    )
    typed = {(str(one[0]), str(one[1])): one[2:5] for one in rows if one[5] == "figures"}
    assert typed.keys() == figures.keys()
    for key, (on, off, side) in figures.items():
        assert typed[key] == (pytest.approx(on), pytest.approx(off), side), key

    # The one clicked: to the pixel, and half of one more for each of the two axes of a turned map.
    (clicked,) = (one for one in rows if one[5] == "point")
    assert clicked[:2] == (3, HOLE) and clicked[4] == "left" and abs(found["rotation"]) > 1
    away = 1.5 * found["m_per_pixel"]
    assert points(folder, 3)[HOLE] == pytest.approx(clicked_place(), abs=away)
    assert clicked[2:4] == pytest.approx(CLICKED, abs=2 * away / YARD)
    # All of them lie on their greens, by the outlines of the sample's own drawing.
    from shapely.geometry import Point

    greens = {
        hole: one.geometry for one in drawing.course().features if one.kind == "green" for hole in one.holes
    }
    for number in (1, 2, 3):
        for hole, place in points(folder, number).items():
            assert greens[hole].contains(Point(place)), (number, hole)


def test_what_the_audit_decided_is_drawn_and_logged(made):
    folder, _, found = made
    assert [row[:2] for row in found["differs"]] == [["1", "3"], ["1", "5"]]
    assert [row[4] for row in found["differs"]] == ["2.0 yd", "2.0 yd"]
    for moved, texts, number in found["shown"]:
        assert moved and texts == ["theirs", "ours", "2.0 yd"] and number == 1
    assert "1 of the committee’s were taken over, 1 of ours kept" in found["applied"]
    query = 'SELECT "round", hole, decided, decided_by, given, drawn FROM pin_decision WHERE event = ? ORDER BY hole'
    assert read(folder, query, NAME) == [
        (1, 3, "theirs", "Ada Finch", "17 on, 9 from right", "19 on, 9 from right"),
        (1, 5, "ours", "Ada Finch", "11 on, 0 from centre", "9 on, 0 from centre"),
    ]


def test_the_lengths_are_the_committee_s(made):
    folder, asked, found = made
    given = rows_of(asked["lengths"])
    assert found["lengths"] == len(given) == 54 and found["length_table"] == 18
    rows = read(folder, "SELECT round, flight, hole, yards FROM event_length WHERE event = ?", NAME)
    held = {(str(number), flight, str(hole)): yards for number, flight, hole, yards in rows}
    for row in given:
        assert held[row["round"], row["flight"], row["hole"]] == pytest.approx(float(row["yards"]))
    # Those of other rounds came with the copy, and stay.
    assert len(held) == len(rows_of(cup.LENGTHS))


def test_the_sheets_say_what_was_decided(made):
    _, asked, found = made
    texts = {}
    for kind, path in asked["sheets"].items():
        pages = PdfReader(path).pages
        texts[kind] = " ".join(" ".join(page.extract_text() for page in pages).split())
        assert NAME in texts[kind] and "round 1" in texts[kind].lower()
    words = texts["table"].split()
    # Hole 3 as the committee has it in its second file, hole 5 as it was drawn.
    assert has_run(words, ["3", "17", "9"]) and has_run(words, ["5", "9", "0"])
    assert not has_run(words, ["3", "19", "9"]) and not has_run(words, ["5", "11", "0"])
    first = next(row for row in rows_of(asked["lengths"]) if row["hole"] == "1")
    assert has_run(texts["tees"].split(), ["1", first["flight"], first["yards"]])
    assert found["messages"] == [] and found["log"] == []


def has_run(words, run):
    return any(words[n : n + len(run)] == run for n in range(len(words)))


def test_the_event_it_was_copied_from_is_as_it_was(made):
    folder, _, _ = made
    pins = read(folder, 'SELECT "round", hole, on_yd, off_yd, off_from FROM pin WHERE event = ?', cup.NAME)
    drawn = {(pin.round, pin.hole): (pin.on / YARD, pin.off / YARD, pin.off_from) for pin in cup.drawn_pins()}
    assert len(pins) == len(drawn)
    for number, hole, on, off, side in pins:
        assert (on, off, side) == (*map(pytest.approx, drawn[number, hole][:2]), drawn[number, hole][2])
    assert Path(folder / "course.gpkg").exists()
