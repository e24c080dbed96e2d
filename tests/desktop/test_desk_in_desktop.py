"""The toolbar and the measure dialog in a real QGIS desktop, used by mouse and keyboard."""

import importlib.util
from pathlib import Path

import pytest
from desktop import ROOT, result_of, run_desktop

pytestmark = pytest.mark.desktop


BUNKER = """{"type": "FeatureCollection", "features": [{"type": "Feature", "properties": {"golf": "bunker"},
"geometry": {"type": "Polygon", "coordinates": [[[-2.9997, 55.9465], [-2.9995, 55.9465], [-2.9996, 55.9467],
[-2.9997, 55.9465]]]}}]}"""
"""A bunker in OpenStreetMap's tags, beside the first hole."""


@pytest.fixture
def course_file(qgis_app, tmp_path):
    """The small course that the tests of the desk use (tests/desk/conftest.py), in a file of its own."""
    from yardwright.store.course_file import create_course, open_course
    from yardwright.store.writing import add_features

    spec = importlib.util.spec_from_file_location("small_course", Path(ROOT, "tests", "desk", "conftest.py"))
    small_course = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(small_course)
    card = tmp_path / "card.csv"
    card.write_text("hole,par,stroke_index,name,Heron,Wren\n1,4,2,Burn,360,320\n2,4,1,Elbow,350,\n", "utf-8")
    path = tmp_path / "Larkmere.gpkg"
    create_course(str(path), "Larkmere", "EPSG:32630", str(card))
    with open_course(str(path)) as layers:
        add_features(layers, small_course.features())
    return path


def test_a_hole_chosen_turned_and_measured(course_file, tmp_path):
    folder = tmp_path / "desktop"
    folder.mkdir()
    drive = ROOT / "tests" / "desktop" / "drive_desk.py"
    survey = tmp_path / "bunkers.geojson"
    survey.write_text(BUNKER, "utf-8")
    given = {"YARDWRIGHT_COURSE": str(course_file), "YARDWRIGHT_SOURCE": str(survey)}
    found = result_of(run_desktop(drive, folder, environment=given))

    enabled, why = found["off"]["yardwright_measure"]
    assert not enabled and "no course in this project" in why
    assert found["course"] == "Larkmere"
    assert found["hole"] == "2  Elbow  par 4"
    ((start_x, start_y), (end_x, end_y)), (width, height) = found["play_up"]
    # Play points up: the plate and the green's middle are the ends of the drawn line here.
    assert end_y < start_y - height / 2
    assert abs(end_x - start_x) < 0.01 * (start_y - end_y)
    assert all(0 < x < width for x in (start_x, end_x)) and all(0 < y < height for y in (start_y, end_y))
    assert found["rotation_of_approach"] == pytest.approx(-45, abs=0.05)
    assert found["hole_by_key"] == "1  Burn  par 4"

    ours, others = found["keys"]["ours"], found["keys"]["others"]
    assert len(ours) == len(set(ours.values())) >= 30 and "Ctrl+S" in others
    for mine in ours.values():
        clashes = [one for one in others if one == mine or mine.startswith(f"{one}, ")]
        assert clashes == [], mine

    assert found["title"] == "Measure: Larkmere"
    # The bunker begins 223 yards up and 16 aside: hypot(16, 223) = 223.6.
    assert found["reach"] == "224"
    assert found["selected"] == ["Ness"]
    assert (
        "Bunker" in found["copied"]
        and "224" in found["copied"].split("\t")
        and found["copied"].count("\n") == 1
    )
    assert found["left"] == 0
    assert found["messages"] == []
    assert found["prefilled"] == str(course_file)
    assert found["bunkers"] == 2 and found["log_is_shown"]
    # Drawn by mouse after a stroke of keys, in one step that undoes.
    assert found["drawn"] == [3, 1] and found["undone"] == 2
    assert "✓  Green" in found["panel"] and "✓  Line of play" in found["panel"]
    assert found["told"] == ["Brought in: Bunker 1. The log says more."]
