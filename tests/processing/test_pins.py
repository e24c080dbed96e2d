"""placepins and auditpins as Processing runs them, on a green whose figures can be worked out on paper.

Hole 1 of the small course plays due north on the central meridian of its zone: the green is 30 yd deep from
345 yd and 20 wide about the line. The columns are those of the public face, word for word.
"""

import csv
import importlib.util
from pathlib import Path

import pytest
from qgis.core import QgsApplication, QgsProcessingContext, QgsProcessingFeedback

PINS = "event round hole on_yd off_yd off_from across_yd to_margin_yd back_yd x y"
AUDIT = "event round hole given_on_yd given_off_yd given_off_from drawn_on_yd drawn_off_yd apart_yd verdict"


def small_course():
    path = Path(__file__).parents[1] / "desk" / "conftest.py"
    spec = importlib.util.spec_from_file_location("small_course_of_the_desk", path)
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


@pytest.fixture
def course_file(provider, tmp_path):
    from yardwright.store.course_file import create_course, open_course
    from yardwright.store.writing import add_features

    path = tmp_path / "Larkmere.gpkg"
    create_course(str(path), "Larkmere", "EPSG:32630")
    with open_course(str(path)) as layers:
        add_features(layers, small_course().features())
    return path


def run(name, **parameters):
    """``(results, went well, log)`` of an algorithm run as Processing does."""
    feedback = QgsProcessingFeedback(False)
    algorithm = QgsApplication.processingRegistry().createAlgorithmById(f"yardwright:{name}")
    context = QgsProcessingContext()
    good, reason = algorithm.checkParameterValues(parameters, context)
    assert good, reason
    results, ok = algorithm.run(parameters, context, feedback)
    return results, ok, feedback.textLog()


def written(tmp_path, text, name="pins.csv"):
    path = tmp_path / name
    path.write_text(text, encoding="utf-8")
    return str(path)


def rows_of(path):
    with open(path, newline="", encoding="utf-8-sig") as file:
        return list(csv.DictReader(file))


def drawn(course_file):
    from yardwright.store.course_file import open_course
    from yardwright.store.events import read_event

    with open_course(str(course_file)) as layers:
        event = read_event(layers, "Heron Cup")
    return {} if event is None else {(pin.round, pin.hole): pin for pin in event.pins}


GIVEN = "round,hole,on,off,from\n1,1,10,5,left\n1,2,6,4,right\n2,1,23,9,right\n"


def test_pins_are_placed_and_told(course_file, tmp_path):
    pins, out = written(tmp_path, GIVEN), str(tmp_path / "out")
    results, ok, log = run("placepins", COURSE=str(course_file), EVENT="Heron Cup", PINS=pins, OUTPUT=out)
    assert ok, log
    first, second, third = rows_of(results["PINS"])
    assert set(PINS.split()) <= set(first)
    assert (first["on_yd"], first["off_yd"], first["off_from"]) == ("10.00", "5.00", "left")
    assert (first["across_yd"], first["to_margin_yd"], first["back_yd"]) == ("-5.00", "5.00", "20.00")
    x, y = small_course().at(-5, 355)
    assert (float(first["x"]), float(first["y"])) == pytest.approx((x, y), abs=0.002)
    # R&A, Guidance on Running a Competition, Appendix E: 23 deep of 30 leaves 7 to the back.
    assert (third["round"], third["back_yd"], third["across_yd"]) == ("2", "7.00", "1.00")
    assert "3 pins placed" in log
    assert set(drawn(course_file)) == {(1, 1), (1, 2), (2, 1)}


def test_a_second_run_replaces_and_the_table_may_be_left_out(course_file, tmp_path):
    run("placepins", COURSE=str(course_file), EVENT="Heron Cup", PINS=written(tmp_path, GIVEN))
    moved = written(tmp_path, "round,hole,on,off,from\n1,1,12,5,left\n")
    results, ok, log = run("placepins", COURSE=str(course_file), EVENT="Heron Cup", PINS=moved)
    assert ok, log
    assert "PINS" not in results and results["COUNT"] == 1
    pins = drawn(course_file)
    assert len(pins) == 3 and pins[1, 1].on == pytest.approx(12 * 0.9144)


@pytest.mark.parametrize(
    ("row", "reason"),
    [
        ("1,1,31,5,left", "30.0 yd deep"),
        ("1,1,10,0,left", "margin itself"),
        ("1,1,ten,5,left", "ten"),
        ("1,1,10,5,above", "above"),
        ("1,9,10,5,left", "9"),
        ("1,1,10,-5,left", "-5"),
    ],
)
def test_a_bad_row_is_named_and_nothing_is_written(course_file, tmp_path, row, reason):
    pins = written(tmp_path, f"round,hole,on,off,from\n1,2,6,4,right\n{row}\n")
    _, ok, log = run("placepins", COURSE=str(course_file), EVENT="Heron Cup", PINS=pins)
    assert not ok and "line 3" in log.lower() and reason in log
    assert drawn(course_file) == {}
    _, ok, log = run("placepins", COURSE=str(course_file), EVENT="Heron Cup", PINS=pins, TAKE_GOOD_ROWS=True)
    assert ok and "left out" in log and reason in log
    assert set(drawn(course_file)) == {(1, 2)}


def test_two_pins_for_one_hole_and_round(course_file, tmp_path):
    pins = written(tmp_path, GIVEN + "1,1,11,5,left\n")
    _, ok, log = run("placepins", COURSE=str(course_file), EVENT="Heron Cup", PINS=pins)
    assert not ok and "line 5" in log.lower() and drawn(course_file) == {}


def test_two_events_never_share_a_pin(course_file, tmp_path):
    from yardwright.store.course_file import open_course
    from yardwright.store.events import read_events

    for name, text in (("Heron Cup", GIVEN), ("Wren Cup", "round,hole,on,off,from\n1,1,20,4,right\n")):
        _, ok, log = run("placepins", COURSE=str(course_file), EVENT=name, PINS=written(tmp_path, text))
        assert ok, log
    with open_course(str(course_file)) as layers:
        counts = {event.name: len(event.pins) for event in read_events(layers)}
    assert counts == {"Heron Cup": 3, "Wren Cup": 1}


def test_the_audit_tells_what_differs_and_changes_nothing(course_file, tmp_path):
    run("placepins", COURSE=str(course_file), EVENT="Heron Cup", PINS=written(tmp_path, GIVEN))
    before = drawn(course_file)
    theirs = "round,hole,on,off,from,green_depth\n1,1,10,5,left,30\n1,2,8,4,right,24\n3,1,40,5,left,30\n"
    results, ok, log = run(
        "auditpins",
        COURSE=str(course_file),
        EVENT="Heron Cup",
        PINS=written(tmp_path, theirs, "theirs.csv"),
        TOLERANCE=0.5,
        OUTPUT=str(tmp_path / "audit"),
    )
    assert ok, log
    rows = rows_of(results["PIN_AUDIT"])
    assert set(AUDIT.split()) <= set(rows[0])
    verdicts = {(row["round"], row["hole"]): row["verdict"] for row in rows}
    assert verdicts == {
        ("1", "1"): "same",
        ("1", "2"): "apart",
        ("2", "1"): "extra",
        ("3", "1"): "impossible",
    }
    assert drawn(course_file) == before


def test_an_audit_of_an_event_that_is_not_there(course_file, tmp_path):
    _, ok, log = run(
        "auditpins",
        COURSE=str(course_file),
        EVENT="Nobody's",
        PINS=written(tmp_path, GIVEN),
        OUTPUT=str(tmp_path),
    )
    assert not ok and "no event “Nobody's”" in log


def test_figures_in_metres(course_file, tmp_path):
    pins = written(tmp_path, "round;hole;on m;off m;from\n1;1;9,144;4,572;links\n")
    _, ok, log = run("placepins", COURSE=str(course_file), EVENT="Heron Cup", PINS=pins)
    assert ok, log
    pin = drawn(course_file)[1, 1]
    assert (pin.on, pin.off, pin.off_from) == (pytest.approx(9.144), pytest.approx(4.572), "left")


def test_a_terrain_tells_the_slope_at_each_pin(course_file, tmp_path):
    """A plane that falls 3 % to the east, as a raster of heights: its slope is known at every place."""
    import numpy as np
    from osgeo import gdal, osr

    grid = np.arange(400, dtype="float32") * -0.03
    path = str(tmp_path / "plane.tif")
    raster = gdal.GetDriverByName("GTiff").Create(path, 400, 400, 1, gdal.GDT_Float32)
    east, north = small_course().at(0, 355)
    raster.SetGeoTransform((east - 200, 1.0, 0, north + 200, 0, -1.0))
    reference = osr.SpatialReference()
    reference.ImportFromEPSG(32630)
    raster.SetProjection(reference.ExportToWkt())
    raster.GetRasterBand(1).WriteArray(np.tile(grid, (400, 1)))
    raster = None
    results, ok, log = run(
        "placepins",
        COURSE=str(course_file),
        EVENT="Heron Cup",
        PINS=written(tmp_path, "round,hole,on,off,from\n1,1,10,5,left\n"),
        TERRAIN=path,
        OUTPUT=str(tmp_path / "out"),
    )
    assert ok, log
    (row,) = rows_of(results["PINS"])
    assert float(row["slope_pct"]) == pytest.approx(3.0, abs=0.1)
    assert float(row["slope_azimuth"]) == pytest.approx(90.0, abs=0.5)
