"""Composites in the project and in the dates panel: over their base, one alone, or compared with a date."""

import numpy as np
import pytest
from osgeo import gdal, osr
from qgis.core import QgsProject, QgsRasterLayer, QgsRectangle
from yardwright.desk.composing import holes_of
from yardwright.desk.composites import add_composites, composites_of, named_values
from yardwright.desk.dates import rasters_without_date
from yardwright.model.errors import YardwrightError

from tests.desk.conftest import EAST, NORTH
from tests.desk.test_dates import COLOURS, dated, pixels  # noqa: F401  the fixture
from tests.desk.test_dates_compared import panel, seen  # noqa: F401  the fixture
from tests.desk.test_in_hand import in_hand  # noqa: F401  the fixture
from tests.desk.test_toolbar import iface  # noqa: F401  the fixture

CLEAN = (210, 200, 60)
NAMES = ("", "2025-07-02", "2024-10-09")


def write_composite(folder, name, colour=CLEAN, shape=(100, 200)):
    """A composite of one colour and its source raster: the left half of one date, the right of another, and a
    stripe that was invented; named as ``imagery.composite_file`` names them."""
    folder.mkdir(exist_ok=True)
    high, wide = shape
    crs = osr.SpatialReference()
    crs.ImportFromEPSG(32630)
    sources = np.zeros((2, high, wide), np.uint8)
    sources[0, :, : wide // 2], sources[0, :, wide // 2 :] = 1, 2
    sources[1, :10] = 2
    picture = np.stack([np.full(shape, value, np.uint8) for value in (*colour, 255)])
    paths = []
    for path, values in ((folder / f"{name}.tif", picture), (folder / f"{name}_source.tif", sources)):
        image = gdal.GetDriverByName("GTiff").Create(str(path), wide, high, len(values), gdal.GDT_Byte)
        image.SetGeoTransform((EAST - 300, 2.0, 0, NORTH - 150, 0, -2.0))
        image.SetProjection(crs.ExportToWkt())
        image.WriteArray(values)
        if values is sources:
            for band, names in (
                (1, NAMES),
                (2, ("as photographed", "lightened", "invented", "still hidden")),
            ):
                image.GetRasterBand(band).SetRasterCategoryNames(list(names))
                for value in range(len(names)):
                    image.GetRasterBand(band).SetMetadataItem(f"COLOUR_{value}", f"{40 * value} 90 160 255")
        image = None
        paths.append(str(path))
    return (name, *paths)


@pytest.fixture
def made(tmp_path):
    folder = tmp_path / "composites"
    return [write_composite(folder, "hole_01"), write_composite(folder, "hole_02", shape=(50, 50))]


def test_they_come_in_a_group_above_the_dates(in_hand, dated, made, tmp_path):  # noqa: F811
    project = QgsProject.instance()
    ids = add_composites(project, made, "2025-07-02", str(tmp_path / "composites"))
    assert len(ids) == 2
    root = project.layerTreeRoot()
    (composite,) = composites_of(project)
    assert composite.base == "2025-07-02" and set(composite.layer_ids) == set(ids)
    order = [layer.id() for layer in root.layerOrder()]
    assert max(order.index(one) for one in ids) < min(order.index(one.id()) for one in dated.values())
    shown = {node.layer().source(): node.isVisible() for node in root.findLayers() if node.layerId() in ids}
    assert list(shown.values()) == [True, True]
    sources = [n for n in root.findLayers() if n.layer().source().endswith("_source.tif")]
    assert len(sources) == 4 and not any(node.isVisible() for node in sources)
    # Not offered as dates of the course.
    assert rasters_without_date(in_hand) == []


def test_composed_again_they_are_read_anew_where_they_are(in_hand, dated, made, tmp_path):  # noqa: F811
    project, folder = QgsProject.instance(), str(tmp_path / "composites")
    before = add_composites(project, made, "2025-07-02", folder)
    write_composite(tmp_path / "composites", "hole_01", (10, 20, 30))
    count = len(project.mapLayers())
    assert add_composites(project, made, "2025-07-02", folder) == before
    assert len(project.mapLayers()) == count
    value = project.mapLayer(before[0]).dataProvider().sample(next(iter([centre(project, before[0])])), 1)
    assert value == (10.0, True)


def centre(project, layer_id):
    return project.mapLayer(layer_id).extent().center()


def test_a_source_raster_has_names_and_colours(in_hand, made, tmp_path):  # noqa: F811
    project = QgsProject.instance()
    add_composites(project, made[:1], "2025-07-02", str(tmp_path / "composites"))
    by_name = {
        layer.name(): layer for layer in project.mapLayers().values() if isinstance(layer, QgsRasterLayer)
    }
    dates = by_name["hole_01: from which date"].renderer().classes()
    assert [(one.value, one.label) for one in dates] == [(1, "2025-07-02"), (2, "2024-10-09")]
    assert dates[1].color.getRgb()[:3] == (80, 90, 160)
    how = by_name["hole_01: lightened and invented"].renderer().classes()
    # As photographed is clear, so that the picture is seen through it.
    assert [(one.value, one.label) for one in how] == [(1, "lightened"), (2, "invented"), (3, "still hidden")]
    assert [value for value, _, _ in named_values(made[0][2], 1)] == [1, 2]


def test_the_panel_shows_one_alone_and_compares_it(panel, made, tmp_path, qtbot):  # noqa: F811
    project = panel.in_hand.project
    add_composites(project, made, "2025-07-02", str(tmp_path / "composites"))
    panel.refresh()
    (composite,) = panel.composites
    texts = [panel.list.topLevelItem(n).text(0) for n in range(panel.list.topLevelItemCount())]
    assert "Composite on 2025-07-02" in texts
    panel.show_date(composite.id)
    root = project.layerTreeRoot()
    on = {node.layerId() for node in root.findLayers() if node.isVisible()}
    base = next(date.layer_id for date in panel.dates if date.id == "2025-07-02")
    # Over its base, for it does not cover all of the course.
    assert set(composite.layer_ids) <= on and base in on
    assert not on & {date.layer_id for date in panel.dates if date.id != "2025-07-02"}
    assert panel.date_in_hand == composite.id and panel.date_alone() == ""
    # What is drawn over it counts as drawn from its base.
    assert panel.date_at(panel.canvas.center()) == "2025-07-02"

    panel.choose_second("2025-07-02")
    panel.canvas.setExtent(QgsRectangle(EAST - 250, NORTH - 300, EAST - 150, NORTH - 200))
    panel.canvas.setLayers([project.mapLayer(one) for one in (*composite.layer_ids, base)])
    qtbot.waitUntil(lambda: seen(panel) == (CLEAN, CLEAN), timeout=20_000)
    panel.flip(True)
    before = COLOURS["2025-07-02"]
    qtbot.waitUntil(lambda: seen(panel) == (before, before), timeout=20_000)
    panel.flip(False)
    panel.swipe(True)
    qtbot.waitUntil(lambda: seen(panel) == (CLEAN, before), timeout=20_000)
    panel.swipe(False)
    # The other way round, from the date.
    panel.show_date("2025-07-02")
    assert panel.date_in_hand == "2025-07-02"
    panel.choose_second(composite.id)
    panel.canvas.setLayers([project.mapLayer(base)])
    panel.flip(True)
    qtbot.waitUntil(lambda: seen(panel) == (CLEAN, CLEAN), timeout=20_000)
    assert panel.second_date() == ""


@pytest.mark.parametrize("text", ["", "1,99", "front nine", "7-4"])
def test_holes_that_are_none(text):
    with pytest.raises(YardwrightError):
        holes_of(text, range(1, 19))


def test_holes_as_they_are_typed():
    assert holes_of(" 1, 4,7 - 9 ", range(1, 19)) == (1, 4, 7, 8, 9)
