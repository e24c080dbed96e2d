"""The dates panel in a real QGIS desktop: what the screen shows while two dates of flat colours are compared."""

import dataclasses
import math
import zipfile
from xml.etree import ElementTree

import numpy as np
import pytest
from desktop import ROOT, result_of, run_desktop
from osgeo import gdal, osr

from tests.desk.conftest import EAST, NORTH, features
from tests.desk.test_dates import COLOURS, add_row

pytestmark = pytest.mark.desktop

RED, BLUE, GREEN = ([*colour] for colour in COLOURS.values())
SPLIT_ACROSS = 12  # Qt.CursorShape.SplitHCursor
MARK = (250, 240, 10)
EXTENT = f"{EAST - 400} {NORTH - 350} {EAST} {NORTH - 50}"
"""Where the map begins: ground with nothing drawn on it, and the painted square in its middle."""


def paint(path, colour):
    """An image of one colour, 2400 m wide, with a square of 24 m in the middle of EXTENT."""
    size, pixel_m, west, north = 1200, 2.0, EAST - 1200, NORTH + 1200
    image = gdal.GetDriverByName("GTiff").Create(str(path), size, size, 3, gdal.GDT_Byte)
    image.SetGeoTransform((west, pixel_m, 0, north, 0, -pixel_m))
    crs = osr.SpatialReference()
    crs.ImportFromEPSG(32630)
    image.SetProjection(crs.ExportToWkt())
    column, row = int((EAST - 200 - west) / pixel_m), int((north - NORTH + 200) / pixel_m)
    for band, (value, mark) in enumerate(zip(colour, MARK), 1):
        pixels = np.full((size, size), value, np.uint8)
        pixels[row - 6 : row + 6, column - 6 : column + 6] = mark
        image.GetRasterBand(band).WriteArray(pixels)
    image = None


@pytest.fixture
def dated_project(qgis_app, tmp_path):
    """A project with the small course of the desk's tests and three dates, of which the newest is on."""
    from qgis.core import QgsProject, QgsRasterLayer
    from qgis.PyQt.QtCore import QDate
    from yardwright.store.course_file import create_course, open_course
    from yardwright.store.layer_group import add_course_group
    from yardwright.store.writing import add_features

    path = tmp_path / "Larkmere.gpkg"
    create_course(str(path), "Larkmere", "EPSG:32630", None)
    drawn = [
        dataclasses.replace(one, seen_in="2025-07-02", view="partly hidden")
        if one.kind == "bunker"
        else dataclasses.replace(one, seen_in="2023-04-12" if one.kind == "green" else "")
        for one in features()
    ]
    project = QgsProject.instance()
    project.clear()
    with open_course(str(path)) as layers:
        project.setCrs(layers.crs, True)
        add_features(layers, drawn)
        for day, colour in COLOURS.items():
            file = tmp_path / f"{day}.tif"
            paint(file, colour)
            taken = QDate.fromString(day, "yyyy-MM-dd")
            add_row(layers["image"], id=day, source=file.name, taken=taken)
        add_course_group(project, layers)
    for day in COLOURS:
        layer = QgsRasterLayer(str(tmp_path / f"{day}.tif"), day)
        project.addMapLayer(layer, False)
        project.layerTreeRoot().addLayer(layer).setItemVisibilityChecked(day == "2025-07-02")
    file = tmp_path / "larkmere.qgz"
    assert project.write(str(file))
    project.clear()
    return file


def content(element):
    """What an element of XML says, for comparison: QGIS writes attributes and options in any order."""
    inside = [content(one) for one in element]
    return (
        element.tag,
        sorted(element.items()),
        (element.text or "").strip(),
        sorted(inside) if element.tag == "Option" else inside,
    )


def in_project(path):
    """What a project file holds of maps, visibility and styles: ``(names of maps, ticks, renderers)``.

    ticks: ``{layer: whether it is ticked}`` in the order of the tree. renderers: ``{layer: content}``.
    """
    with zipfile.ZipFile(path) as archive:
        name = next(each for each in archive.namelist() if each.endswith(".qgs"))
        page = ElementTree.fromstring(archive.read(name))
    ticks = [(node.get("name"), node.get("checked")) for node in page.iter("layer-tree-layer")]
    renderers = {
        layer.findtext("layername"): content(layer.find("renderer-v2"))
        for layer in page.iter("maplayer")
        if layer.find("renderer-v2") is not None
    }
    maps = {node.get("name") for node in page.iter("mapcanvas")} - {"theMapCanvas", ""}
    return maps, ticks, renderers


def test_dates_compared_by_mouse_and_keyboard(dated_project, tmp_path):
    folder = tmp_path / "desktop"
    folder.mkdir()
    as_made = in_project(dated_project)
    environment = {
        "YARDWRIGHT_PROJECT": str(dated_project),
        "YARDWRIGHT_EXTENT": EXTENT,
        "YARDWRIGHT_MARK": " ".join(map(str, MARK)),
    }
    drive = ROOT / "tests" / "desktop" / "drive_dates.py"
    found = result_of(
        run_desktop(
            drive, folder, project=dated_project, environment=environment, size="1920x900", timeout=240
        )
    )
    assert found["log"] == [] and found["messages"] == []

    assert found["at_first"] == [GREEN, ["2025-07-02"]]
    assert found["chosen"] == [BLUE, ["2024-10-09"]]
    # The key held and let go, then the button.
    assert found["flips"] == [RED, GREEN, RED, GREEN]

    # The divider
    assert found["swiping"] == [GREEN, RED]
    assert found["shape_on_grip"] == SPLIT_ACROSS and found["shape_elsewhere"]
    share, *sides = found["dragged"]
    assert share == pytest.approx(0.2, abs=0.01) and sides == [GREEN, RED]
    share, *sides = found["line_dragged"]
    assert share == pytest.approx(0.8, abs=0.01) and sides == [GREEN, RED]
    assert found["map_stayed"]
    runs = [colour for colour, _ in found["divider_across"]]
    brightness = [sum(colour) / 3 for colour in runs]
    assert runs[0] == GREEN and runs[-1] == RED
    # Light, dark, light between the two: seen on any ground.
    darkest = brightness.index(min(brightness))
    assert min(max(brightness[1:darkest]), max(brightness[darkest:-1])) > 190 and min(brightness) < 40
    # Ten strokes of two hundredths to the left.
    before = found["line_dragged"][0]
    assert found["keyed"] == [pytest.approx(before - 0.2, abs=1e-6), RED, True]
    assert found["slid"] == [pytest.approx(0.32, abs=0.001), GREEN, RED]
    # What is drawn beyond the divider is drawn from the other date.
    assert found["drawn_from"] == ["2025-07-02", "2023-04-12"]
    assert found["clicked_vertices"] == 1
    assert found["above_and_below"] == [GREEN, RED]
    assert found["swiped"] == [GREEN, 0]

    # The second view
    width, first, second, panel_before, panel_then = found["widths"]
    assert abs(first - second) <= 4 and first + second > width - 12 and panel_then == panel_before
    assert found["two"] == [GREEN, RED]
    for step, (one, other) in found["squares"].items():
        assert other == pytest.approx(one, abs=1.5), step
    squares = {step: one for step, (one, _) in found["squares"].items()}
    # Dragged by 60 pixels to the right and up; zoomed about the middle by 2, QGIS's factor; turned by 40°.
    moved = [b - a for a, b in zip(squares["opened"], squares["panned"])]
    assert moved == pytest.approx([60, -60], abs=2)
    assert squares["zoomed"] == pytest.approx([2 * each for each in squares["panned"]], abs=4)
    x, y = squares["zoomed"]
    cos, sin = math.cos(math.radians(40)), math.sin(math.radians(40))
    assert squares["turned"] == pytest.approx([x * cos - y * sin, x * sin + y * cos], abs=4)
    # The second view dragged by 40 pixels to the left and down takes the map with it.
    moved = [b - a for a, b in zip(squares["turned"], squares["second_panned"])]
    assert moved == pytest.approx([-40, 40], abs=2)
    assert found["looks_alike"][0] == pytest.approx(found["looks_alike"][1])
    assert found["looks_alike"][0][2] == pytest.approx(2 * found["turned"][0][2])
    assert found["closed_again"][:2] == [width, width]
    assert found["closed_again"][3] == found["closed_again"][4]

    # The filter: the bunker was drawn from 2025 and is partly hidden.
    bunker = found["bunker"]
    assert bunker["all"] > 100 and bunker["from_2023"] == [0, 0]
    assert min(bunker["partly_hidden"]) > 100
    assert "2025-07-02 (1)" in found["texts"] and "2023-04-12 (2)" in found["texts"]
    assert found["count"] == "2 of 13 features shown; figures count them all."
    assert found["hidden_count"] == ["1 of 13 features shown; figures count them all.", "any date"]

    # Saved amid all of it, the project is what the user made it.
    assert found["saved"] and found["still_visible"] == ["2025-07-02"]
    assert in_project(dated_project) == as_made
    assert found["opened"]["visible"] == ["2025-07-02"]
    assert found["opened"]["filter"] == ["any date", False] and found["opened"]["bunker"] > 100

    # What is compared is taken away: another date takes its place, then there is none.
    assert found["one_less"] == [GREEN, RED, RED]
    assert found["none_left"] == [GREEN, True, False, 0]
    assert found["project_closed"] == [True, False, 0]
    left = found["unloaded"]
    assert left["visible"] == [["2025-07-02"], ["2025-07-02"]]
    assert (left["over_the_map"], left["overrides"], left["docks"]) == (0, 0, [])
    assert left["colour"] == [GREEN, GREEN]
