"""eventsheets as Processing runs it: which files, what stands in them (read back by poppler's tools), and what is
told when a sheet cannot be made.

The course is the small one of the desk's tests; the green of its hole 1 is 30 yd deep and 20 wide.
"""

import csv
import os
import re
import subprocess
from pathlib import Path

import pytest
from qgis.core import QgsProcessingFeedback

from tests.processing.test_pins import GIVEN, course_file, run, written  # noqa: F401  course_file: the fixture


@pytest.fixture
def event_file(course_file, tmp_path):  # noqa: F811
    """The course with the pins of two rounds of the Heron Cup, and lengths for the first."""
    _, ok, log = run("placepins", COURSE=str(course_file), EVENT="Heron Cup", PINS=written(tmp_path, GIVEN))
    assert ok, log
    asked = "round,flight,hole,yards\n1,Heron,1,360\n1,Heron,2,350\n"
    _, ok, log = run(
        "settees",
        COURSE=str(course_file),
        EVENT="Heron Cup",
        LENGTHS=written(tmp_path, asked, "lengths.csv"),
        OUTPUT=str(tmp_path / "tees"),
    )
    assert ok, log
    return str(course_file)


def sheets(event_file, folder, *kinds, **more):
    return run(
        "eventsheets", COURSE=event_file, EVENT="Heron Cup", SHEETS=list(kinds), OUTPUT=str(folder), **more
    )


def pdf_text(path):
    return subprocess.run(
        ["pdftotext", "-layout", str(path), "-"], capture_output=True, text=True, check=True
    ).stdout


def pdf_pages(path):
    """``(number of pages, (width, height) in mm)``."""
    told = subprocess.run(["pdfinfo", str(path)], capture_output=True, text=True, check=True).stdout
    size = map(float, re.search(r"Page size: +([\d.]+) x ([\d.]+) pts", told).groups())
    return int(re.search(r"Pages: +(\d+)", told).group(1)), tuple(side / 72 * 25.4 for side in size)


def names(folder):
    return sorted(os.listdir(folder))


def test_every_sheet_of_the_event(event_file, tmp_path):
    out = tmp_path / "out"
    results, ok, log = sheets(event_file, out, "greens", "table", "hole", "audit", "tees")
    assert ok, log
    assert names(out) == [
        "Heron Cup_audit.pdf",
        "Heron Cup_hole_01.pdf",
        "Heron Cup_hole_02.pdf",
        "Heron Cup_round_1_greens.pdf",
        "Heron Cup_round_1_table.pdf",
        "Heron Cup_round_1_tees.pdf",
        "Heron Cup_round_2_greens.pdf",
        "Heron Cup_round_2_table.pdf",
        "pins.csv",
        "tee_setting.csv",
    ]
    assert results["COUNT"] == 8 and "8 sheets written" in log
    assert pdf_pages(out / "Heron Cup_audit.pdf") == (1, pytest.approx((210, 297), abs=0.2))
    assert pdf_pages(out / "Heron Cup_hole_01.pdf") == (1, pytest.approx((105, 148), abs=0.2))


def test_what_stands_on_the_sheets(event_file, tmp_path):
    """10 on and 5 from the left, of a green 30 deep and 20 wide: 20 from the back, 15 from the right."""
    out = tmp_path / "out"
    _, ok, log = sheets(event_file, out, "table", "audit", "tees")
    assert ok, log
    table = pdf_text(out / "Heron Cup_round_1_table.pdf")
    assert re.search(r"^ *1 +10 +5 +from left +30$", table, re.MULTILINE), table
    assert "Round 1" in table and "Larkmere" in table
    audit = pdf_text(out / "Heron Cup_audit.pdf")
    assert re.search(r" 1 +10 +20 +5 +15 +5 ?L +5$", audit, re.MULTILINE), audit
    # Round 2: 23 on and 9 from the right, 7 from the back and 11 from the left.
    assert re.search(r" 2 +23 +7 +11 +9 +1 ?R +7$", audit, re.MULTILINE), audit
    tees = pdf_text(out / "Heron Cup_round_1_tees.pdf")
    assert re.search(r"^ *1 +Heron +360", tees, re.MULTILINE), tees


def test_one_round(event_file, tmp_path):
    out = tmp_path / "out"
    results, ok, log = sheets(event_file, out, "greens", ROUND=2)
    assert ok, log
    assert names(out) == ["Heron Cup_round_2_greens.pdf", "pins.csv", "tee_setting.csv"]
    with open(results["PINS"], newline="", encoding="utf-8-sig") as file:
        assert [(row["round"], row["hole"]) for row in csv.DictReader(file)] == [("2", "1")]
    assert "hole 2 has no pin in this round" in log


@pytest.mark.parametrize(("page", "size"), [("A6", (105, 148)), ("phone", (90, 195))])
def test_the_page_chosen_and_how_large_it_may_be(event_file, tmp_path, page, size):
    """Fewer than nine greens: no larger than 4 1/4 x 7 in (Rules of Golf, 4.3a, interpretations)."""
    out = tmp_path / "out"
    _, ok, log = sheets(event_file, out, "greens", ROUND=1, PAGE=page)
    assert ok, log
    assert pdf_pages(out / "Heron Cup_round_1_greens.pdf")[1] == pytest.approx(size, abs=0.2)
    assert ("fewer than nine greens" in log) == (size[1] > 177.8)


def test_holes_chosen_and_a_hole_without_green(event_file, tmp_path):
    out = tmp_path / "out"
    results, ok, log = sheets(event_file, out, "hole", HOLES="2,3")
    assert ok, log
    assert names(out) == ["Heron Cup_hole_02.pdf", "pins.csv", "tee_setting.csv"]
    assert results["COUNT"] == 1
    assert "hole 3: Hole 3 has no green to show." in log


def test_a_second_run_replaces(event_file, tmp_path):
    out = tmp_path / "out"
    sheets(event_file, out, "table", ROUND=1)
    assert re.search(r"^ *1 +10 +5", pdf_text(out / "Heron Cup_round_1_table.pdf"), re.MULTILINE)
    moved = written(tmp_path, "round,hole,on,off,from\n1,1,12,5,left\n")
    run("placepins", COURSE=event_file, EVENT="Heron Cup", PINS=moved)
    sheets(event_file, out, "table", ROUND=1)
    assert re.search(r"^ *1 +12 +5", pdf_text(out / "Heron Cup_round_1_table.pdf"), re.MULTILINE)
    assert len(names(out)) == 3


def test_nothing_in_the_course_is_changed(event_file, tmp_path):
    before = Path(event_file).read_bytes()
    assert sheets(event_file, tmp_path / "out", "greens", "tees")[1]
    assert Path(event_file).read_bytes() == before


@pytest.mark.parametrize(
    ("change", "told"),
    [
        ({"EVENT": "Wren Cup"}, "no event “Wren Cup”. Check its name; the course has Heron Cup"),
        ({"EVENT": " "}, "No event is named"),
        ({"ROUND": 4}, "has no round 4"),
        ({"SHEETS": ["tees"], "ROUND": 2}, "No sheet was written. No tee is set for round 2."),
        ({"SHEETS": ["hole"], "HOLES": "3"}, "No sheet was written. Hole 3 has no green to show."),
        ({"HOLES": "one"}, "one"),
    ],
)
def test_what_cannot_be_is_told_and_nothing_written(event_file, tmp_path, change, told):
    out = tmp_path / "out"
    given = {"COURSE": event_file, "EVENT": "Heron Cup", "SHEETS": ["greens"], "OUTPUT": str(out), **change}
    _, ok, log = run("eventsheets", **given)
    assert not ok and told in log and "Traceback" not in log
    assert not out.exists() or names(out) == []


def test_cancelled_writes_nothing(event_file, tmp_path):
    from qgis.core import QgsApplication, QgsProcessingContext

    feedback = QgsProcessingFeedback(False)
    feedback.cancel()
    algorithm = QgsApplication.processingRegistry().createAlgorithmById("yardwright:eventsheets")
    given = {
        "COURSE": event_file,
        "EVENT": "Heron Cup",
        "SHEETS": ["greens"],
        "OUTPUT": str(tmp_path / "out"),
    }
    algorithm.run(given, QgsProcessingContext(), feedback)
    assert not (tmp_path / "out").exists()


def test_two_events_never_share_a_file(event_file, tmp_path):
    pins = written(tmp_path, "round,hole,on,off,from\n1,1,20,4,right\n")
    run("placepins", COURSE=event_file, EVENT="Wren Cup", PINS=pins)
    out = tmp_path / "out"
    sheets(event_file, out, "table", ROUND=1)
    run("eventsheets", COURSE=event_file, EVENT="Wren Cup", SHEETS=["table"], OUTPUT=str(out))
    assert re.search(r"^ *1 +10 +5", pdf_text(out / "Heron Cup_round_1_table.pdf"), re.MULTILINE)
    assert re.search(r"^ *1 +20 +4", pdf_text(out / "Wren Cup_round_1_table.pdf"), re.MULTILINE)


def test_the_parameters_offer_all_sheets_and_pages(qgis_app):
    from yardwright.guide.event_sheets import KINDS
    from yardwright.guide.sheets import PAGES as SIZES
    from yardwright.processing.event_sheets import PAGES, SHEETS

    assert tuple(KINDS) == SHEETS and tuple(SIZES) == PAGES


def plane(path, fall_east):
    """A plane about hole 1 that falls so many per cent to the east and rises 5 % to the north."""
    import numpy as np
    from osgeo import gdal, osr

    from tests.desk.conftest import at

    raster = gdal.GetDriverByName("GTiff").Create(str(path), 600, 800, 1, gdal.GDT_Float32)
    west, north = at(0, 700)
    raster.SetGeoTransform((west - 300, 1.0, 0, north, 0, -1.0))
    reference = osr.SpatialReference()
    reference.ImportFromEPSG(32630)
    raster.SetProjection(reference.ExportToWkt())
    east, down = np.meshgrid(np.arange(600.0), np.arange(800.0))
    raster.GetRasterBand(1).SetUnitType("m")
    raster.GetRasterBand(1).WriteArray((200 - east * fall_east / 100 - down * 0.05).astype("float32"))
    return str(path)


def test_a_terrain_tells_falls_and_rises(event_file, tmp_path):
    """12 % to the east, so to the right of hole 1, and 5 % to the south, to its front: a fall of 13 % (5-12-13).
    360 yd up at 5 %: 16.5 m."""
    from yardwright.model.course import Feature
    from yardwright.store.course_file import open_course
    from yardwright.store.writing import add_features

    from tests.desk.conftest import box

    with open_course(event_file) as layers:
        add_features(layers, [Feature("tee", None, box(0, 0, 5, 10), (1,), attributes={"tee_set": "Heron"})])
    out = tmp_path / "out"
    kinds = ("greens", "table", "audit", "tees")
    results, ok, log = sheets(event_file, out, *kinds, TERRAIN=plane(tmp_path / "plane.tif", 12.0), ROUND=1)
    assert ok, log
    assert "Local Rules let a player carry it" in log
    table = pdf_text(out / "Heron Cup_round_1_table.pdf")
    assert re.search(r"^ *1 +10 +5 +from left +30 +13.0 %$", table, re.MULTILINE), table
    for kind in ("round_1_greens", "audit"):
        assert "13.0 %" in pdf_text(out / f"Heron Cup_{kind}.pdf")
    tees = pdf_text(out / "Heron Cup_round_1_tees.pdf")
    assert re.search(r"^ *1 +Heron .*\+16\.5$", tees, re.MULTILINE), tees
    with open(results["PINS"], newline="", encoding="utf-8-sig") as file:
        row = next(csv.DictReader(file))
    # atan2(12, -5): 112.62 degrees clockwise from the approach, which runs due north here.
    assert float(row["slope_pct"]) == pytest.approx(13.0, abs=0.05)
    assert float(row["slope_turn"]) == pytest.approx(112.62, abs=0.2)


def test_without_a_terrain_no_sheet_speaks_of_heights(event_file, tmp_path):
    out = tmp_path / "out"
    _, ok, log = sheets(event_file, out, "greens", "tees", ROUND=1)
    assert ok and "Local Rules" not in log
    assert "%" not in pdf_text(out / "Heron Cup_round_1_greens.pdf")
    assert "Rise" not in pdf_text(out / "Heron Cup_round_1_tees.pdf")


def test_a_picture_is_no_terrain(event_file, tmp_path):
    from osgeo import gdal

    path = str(tmp_path / "picture.tif")
    raster = gdal.GetDriverByName("GTiff").Create(path, 4, 4, 3)
    raster.SetGeoTransform((0, 1, 0, 0, 0, -1))
    raster = None
    out = tmp_path / "out"
    _, ok, log = sheets(event_file, out, "greens", TERRAIN=path)
    assert not ok and "holds a picture and not heights" in log
    assert not out.exists() or names(out) == []
