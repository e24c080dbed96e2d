"""Which raster is which date, and what is drawn from each: flat colours, so that a pixel names its date."""

import numpy as np
import pytest
from osgeo import gdal, osr
from qgis.core import (
    QgsCategorizedSymbolRenderer,
    QgsFeature,
    QgsGeometry,
    QgsHeatmapRenderer,
    QgsMapRendererParallelJob,
    QgsMapSettings,
    QgsPointXY,
    QgsProject,
    QgsRasterLayer,
    QgsRectangle,
    QgsRendererCategory,
    QgsSymbol,
)
from qgis.PyQt.QtCore import QDate, QSize
from qgis.PyQt.QtGui import QColor
from qgis.PyQt.QtXml import QDomDocument
from yardwright.desk.dates import (
    IMAGE_MARK,
    NOT_SAID,
    counts,
    course_layers,
    credit_of,
    dates_of,
    day_in,
    drawn_from,
    drawn_only,
    expression_of,
    ground_sample_distance,
    gsd_told,
    matched,
    names_of,
    rasters_without_date,
    take_up,
)
from yardwright.model.errors import YardwrightError

from tests.desk.conftest import EAST, NORTH
from tests.desk.test_in_hand import in_hand  # noqa: F401  the fixture
from tests.desk.test_toolbar import iface  # noqa: F401  the fixture

COLOURS = {"2023-04-12": (200, 40, 40), "2024-10-09": (40, 40, 200), "2025-07-02": (40, 160, 40)}


def write_raster(
    path, colour, epsg=32630, origin=(EAST - 300, NORTH + 600), pixel=(4.0, 4.0), size=(250, 250)
):
    """An image of one colour; origin: its top left corner."""
    path.parent.mkdir(parents=True, exist_ok=True)
    options = ["PHOTOMETRIC=RGB"] if len(colour) == 3 else []
    kind = gdal.GDT_Byte if len(colour) == 3 else gdal.GDT_Float32
    image = gdal.GetDriverByName("GTiff").Create(str(path), *size, len(colour), kind, options)
    image.SetGeoTransform((origin[0], pixel[0], 0, origin[1], 0, -pixel[1]))
    crs = osr.SpatialReference()
    crs.ImportFromEPSG(epsg)
    image.SetProjection(crs.ExportToWkt())
    for band, value in enumerate(colour, 1):
        image.GetRasterBand(band).Fill(value)
    image = None
    return path


def add_raster(path, name=None):
    layer = QgsRasterLayer(str(path), name or path.stem)
    assert layer.isValid()
    QgsProject.instance().addMapLayer(layer)
    return layer


def add_row(images, **values):
    """A row of the layer “Image date”, saved."""
    row = QgsFeature(images.fields())
    for name, value in values.items():
        row.setAttribute(name, value)
    assert images.dataProvider().addFeatures([row])[0]


def picture(canvas_or_settings, layers=None):
    """The map as QGIS draws it, (height, width, 3)."""
    settings = canvas_or_settings
    job = QgsMapRendererParallelJob(settings)
    job.start()
    job.waitForFinished()
    return pixels(job.renderedImage())


def pixels(image):
    image = image.convertToFormat(image.Format.Format_RGB32)
    bits = image.constBits()
    bits.setsize(image.sizeInBytes())
    array = np.frombuffer(bits, np.uint8).reshape(image.height(), image.bytesPerLine() // 4, 4)
    return array[:, : image.width(), 2::-1].copy()


@pytest.fixture
def dated(in_hand, tmp_path):  # noqa: F811
    """The small course with three dates, each a flat colour; {id: layer}."""
    images = in_hand.layer("image")
    layers = {}
    for day, colour in COLOURS.items():
        path = write_raster(tmp_path / "images" / f"larkmere_{day}.tif", colour)
        layers[day] = add_raster(path)
        add_row(
            images,
            id=day,
            source=f"images/larkmere_{day}.tif",
            taken=QDate.fromString(day, "yyyy-MM-dd"),
            gsd_m=4.0,
            credit=f"Painter of {day[:4]}",
            print_allowed=day.startswith("2025"),
        )
    return layers


def test_sources_are_compared_as_places(tmp_path):
    (tmp_path / "real").mkdir()
    (tmp_path / "link").symlink_to(tmp_path / "real")
    file = str(tmp_path / "real" / "a.tif")
    assert names_of("link/a.tif", str(tmp_path)) & names_of(file)
    assert not names_of("link/b.tif", str(tmp_path)) & names_of(file)
    assert names_of("") == names_of(None) == set()
    address = "https://tiles.example/{z}/{x}/{y}.png"
    tiles = "type=xyz&url=https%3A%2F%2Ftiles.example%2F{z}%2F{x}%2F{y}.png&zmax=19&zmin=0"
    assert names_of(address) & names_of(tiles)
    server = "crs=EPSG:3857&format=image/png&layers={}&styles=&url=https://maps.example/wms"
    assert not names_of(server.format("spring")) & names_of(server.format("autumn"))


def test_a_mark_counts_before_a_source():
    rasters = [("one", "", {"a"}), ("two", "spring", {"b"}), ("three", "", {"a"})]
    rows = [("spring", "a"), ("summer", "a"), ("autumn", "c"), ("winter", "b")]
    # The layer marked as spring is no other date's, though its source is.
    assert matched(rows, rasters, "") == ["two", "one", None, None]


def test_dates_are_listed_newest_first(in_hand, dated):  # noqa: F811
    dates = dates_of(in_hand)
    assert [date.id for date in dates] == sorted(COLOURS, reverse=True)
    newest = dates[0]
    assert (newest.taken, newest.credit, newest.print_allowed, newest.gsd_m) == (
        "2025-07-02",
        "Painter of 2025",
        True,
        4.0,
    )
    assert [date.layer_id for date in dates] == [dated[date.id].id() for date in dates]
    assert not dates[1].print_allowed
    assert rasters_without_date(in_hand) == []


def test_a_date_without_layer_and_a_layer_without_date(in_hand, dated, tmp_path):  # noqa: F811
    QgsProject.instance().removeMapLayer(dated["2024-10-09"].id())
    assert [bool(date.layer_id) for date in dates_of(in_hand)] == [True, False, True]
    other = add_raster(write_raster(tmp_path / "new.tif", (9, 9, 9)))
    add_raster(write_raster(tmp_path / "heights.tif", (12.5,)))
    assert rasters_without_date(in_hand) == [other]
    other.setCustomProperty(IMAGE_MARK, "2024-10-09")
    assert dates_of(in_hand)[1].layer_id == other.id()
    assert rasters_without_date(in_hand) == []
    other.setName("renamed")
    assert dates_of(in_hand)[1].layer_id == other.id()


def test_rows_that_say_little_are_dates_too(in_hand):  # noqa: F811
    add_row(in_hand.layer("image"), id="old plan")
    add_row(in_hand.layer("image"))
    first, second = dates_of(in_hand)
    assert (first.id, first.title, first.taken, first.gsd_m, first.layer_id) == (
        "old plan",
        "old plan",
        "",
        None,
        None,
    )
    assert second.title == "without a day"


def test_a_raster_becomes_a_date_in_one_step(in_hand, dated, tmp_path):  # noqa: F811
    """The pixel on the ground, worked out with pyproj: 0.9996 is the scale of UTM on its central meridian."""
    path = write_raster(tmp_path / "images" / "north_20220630.tif", (9, 9, 9), size=(200, 100))
    layer = add_raster(path)
    metadata = layer.metadata()
    metadata.setRights(["Ines Painter"])
    metadata.setLicenses(["CC0-1.0"])
    layer.setMetadata(metadata)
    assert day_in(layer) == "2022-06-30"
    images = in_hand.layer("image")
    assert take_up(in_hand, layer, "2022-06-30") == "2022-06-30"
    assert images.undoStack().count() == 1
    row = next(f for f in images.getFeatures() if f["id"] == "2022-06-30")
    assert row["source"] == "images/north_20220630.tif"
    assert row["taken"] == QDate(2022, 6, 30)
    assert (row["credit"], row["licence"], row["print_allowed"]) == ("Ines Painter", "CC0-1.0", False)
    # 100 m west of the meridian the scale is 0.9996 to seven places.
    assert row["gsd_m"] == pytest.approx(4 / 0.9996, abs=2e-4)
    assert row.geometry().boundingBox() == QgsRectangle(EAST - 300, NORTH + 200, EAST + 500, NORTH + 600)
    assert dates_of(in_hand)[-1].layer_id == layer.id()
    with pytest.raises(YardwrightError, match="cannot become"):
        take_up(in_hand, layer, "2022-06-30")
    images.undoStack().undo()
    assert len(dates_of(in_hand)) == 3
    images.rollBack()


def test_two_of_one_day_have_ids_of_their_own(in_hand, dated, tmp_path):  # noqa: F811
    layer = add_raster(write_raster(tmp_path / "again.tif", (9, 9, 9)))
    with pytest.raises(YardwrightError, match="no date"):
        take_up(in_hand, layer, "2025-02-30")
    assert not in_hand.layer("image").isEditable()
    assert take_up(in_hand, layer, "2025-07-02", "Me", True) == "2025-07-02-2"
    row = next(date for date in dates_of(in_hand) if date.id == "2025-07-02-2")
    assert (row.credit, row.print_allowed, row.title) == ("Me", True, "2025-07-02 (2025-07-02-2)")
    in_hand.layer("image").rollBack()


def test_ground_distance_in_degrees_and_web_mercator(qgis_new_project, tmp_path):
    """Against the geodesic of pyproj (GeographicLib's) for the same pixel."""
    import pyproj

    geod = pyproj.Geod(ellps="WGS84")
    unit, lon, lat = 1e-5, -3.0, 55.9
    place = (lon - 50 * unit, lat + 50 * unit)
    degrees = add_raster(
        write_raster(tmp_path / "degrees.tif", (9, 9, 9), 4326, place, (unit, unit), (100, 100))
    )
    east = geod.inv(lon, lat, lon + unit, lat)[2]
    north = geod.inv(lon, lat, lon, lat + unit)[2]
    assert ground_sample_distance(degrees) == pytest.approx((east * north) ** 0.5, abs=2e-4)
    to_web = pyproj.Transformer.from_crs(4326, 3857, always_xy=True)
    x, y = to_web.transform(lon, lat)
    web = add_raster(
        write_raster(tmp_path / "web.tif", (9, 9, 9), 3857, (x - 50, y + 50), (1, 1), (100, 100))
    )
    corners = [to_web.transform(*at, direction="INVERSE") for at in ((x, y), (x + 1, y), (x, y + 1))]
    sides = [geod.inv(*corners[0], *corner)[2] for corner in corners[1:]]
    assert ground_sample_distance(web) == pytest.approx((sides[0] * sides[1]) ** 0.5, abs=2e-4)


def test_a_web_source_is_as_large_as_the_course(in_hand):  # noqa: F811
    tiles = QgsRasterLayer("type=xyz&url=https://tiles.example/{z}/{x}/{y}.png&zmax=19&zmin=0", "Web", "wms")
    QgsProject.instance().addMapLayer(tiles)
    assert take_up(in_hand, tiles, "2024-05-01") == "2024-05-01"
    images = in_hand.layer("image")
    row = next(images.getFeatures())
    box = row.geometry().boundingBox()
    # The course lies between 50 yards west and some 430 east of the first tee, and 375 yards to the north.
    assert EAST - 260 < box.xMinimum() < EAST - 200 and NORTH + 500 < box.yMaximum() < NORTH + 560
    assert row["source"] == tiles.source()
    assert dates_of(in_hand)[0].layer_id == tiles.id()
    images.rollBack()


def test_how_fine_a_web_layer_is(in_hand):  # noqa: F811
    """Measured at the course, where the deepest level is told; else nothing is made up, and that is noted.

    Expected: a level has 2 to its power tiles of 256 pixels about the equator, and in Web Mercator lengths
    grow by the secant of the latitude (EPSG Guidance Note 7-2, method 1024); the ellipsoid makes 0.3 % of it.
    """
    import math

    import pyproj

    latitude = pyproj.Transformer.from_crs(32630, 4326, always_xy=True).transform(EAST, NORTH)[1]
    expected = 2 * math.pi * 6378137 / 256 / 2**19 * math.cos(math.radians(latitude))
    url = "type=xyz&url=https://tiles.example/{z}/{x}/{y}.png"
    server = (
        "contextualWMSLegend=0&crs=EPSG:32630&format=image/png&layers=a&styles=&url=https://maps.example/wms"
    )
    for number, (source, gsd) in enumerate(
        (
            (f"{url}&zmax=19&zmin=0", expected),
            (f"{url}&zmax=19&zmin=0&tilePixelRatio=2", expected / 2),
            (url, None),
            (server, None),
        )
    ):
        layer = QgsRasterLayer(source, f"Web {number}", "wms")
        if not layer.isValid():  # a server of maps is asked what it has, and there is none here
            layer.setCrs(in_hand.layer("green").crs())
        found, note = gsd_told(in_hand, layer)
        assert found == (gsd and pytest.approx(gsd, rel=0.005)), source
        assert bool(note) == (gsd is None), source


def test_a_date_keeps_its_licence_and_what_is_not_known(in_hand):  # noqa: F811
    tiles = QgsRasterLayer("type=xyz&url=https://tiles.example/{z}/{x}/{y}.png", "Web", "wms")
    metadata = tiles.metadata()
    metadata.setLicenses(["Look, do not print"])
    tiles.setMetadata(metadata)
    QgsProject.instance().addMapLayer(tiles)
    take_up(in_hand, tiles, "2024-05-01")
    (date,) = dates_of(in_hand)
    assert (date.licence, date.gsd_m, date.print_allowed) == ("Look, do not print", None, False)
    row = next(in_hand.layer("image").getFeatures())
    assert row["note"] == "The service does not say what a pixel covers on the ground."
    in_hand.layer("image").rollBack()


def test_how_a_date_lies(in_hand, dated):  # noqa: F811
    images = in_hand.layer("image")
    places = {name: images.fields().lookupField(name) for name in ("shift_e_m", "rmse_m")}
    rows = {row["id"]: row.id() for row in images.getFeatures()}
    images.startEditing()
    images.changeAttributeValue(rows["2023-04-12"], places["shift_e_m"], -0.83)
    images.changeAttributeValue(rows["2023-04-12"], places["rmse_m"], 0.12)
    images.changeAttributeValue(rows["2024-10-09"], places["shift_e_m"], 0.5)
    found = {date.id: (date.registered, date.rmse_m) for date in dates_of(in_hand)}
    assert found == {"2023-04-12": (True, 0.12), "2024-10-09": (True, None), "2025-07-02": (False, None)}
    images.rollBack()


# What was drawn from which


def mark_features(in_hand):  # noqa: F811
    """The greens drawn from 2023, the bunker from 2025 and partly hidden, the rest says nothing."""
    for kind, seen_in, view in (("green", "2023-04-12", "clear"), ("bunker", "2025-07-02", "partly hidden")):
        layer = in_hand.layer(kind)
        seen, how = layer.fields().lookupField("seen_in"), layer.fields().lookupField("view")
        changes = {f.id(): {seen: seen_in, how: view} for f in layer.getFeatures()}
        assert layer.startEditing()
        assert all(layer.changeAttributeValues(fid, values) for fid, values in changes.items())
        assert layer.commitChanges()


def test_counts_of_what_is_shown(in_hand):  # noqa: F811
    mark_features(in_hand)
    layers = course_layers(in_hand)
    every = sum(len(list(layer.getFeatures())) for layer in layers)
    assert every == 14  # 13 features and the third hole's row without line
    assert counts(layers, expression_of()) == (every, every)
    assert counts(layers, expression_of("2023-04-12")) == (2, every)
    assert counts(layers, expression_of("2023-04-12", True)) == (0, every)
    assert counts(layers, expression_of(None, True)) == (1, every)
    assert counts(layers, expression_of(NOT_SAID)) == (every - 3, every)
    assert counts(layers, expression_of("it's gone")) == (0, every)
    bunkers = in_hand.layer("bunker")
    bunkers.startEditing()
    bunkers.deleteFeature(next(bunkers.getFeatures()).id())
    assert counts(layers, expression_of(None, True)) == (0, every - 1)
    bunkers.rollBack()


def test_counts_by_date_one_by_one(in_hand):  # noqa: F811
    """Right after another layer of the file was saved, when QGIS has no count of the layers (-1), and with
    what is not saved yet."""
    mark_features(in_hand)
    layers = course_layers(in_hand)
    assert drawn_from(layers) == {"2023-04-12": 2, "2025-07-02": 1, NOT_SAID: 11}
    assert counts(layers, "") == (14, 14)
    bunkers = in_hand.layer("bunker")
    bunkers.startEditing()
    more = QgsFeature(bunkers.fields())
    more.setAttribute("seen_in", "2023-04-12")
    bunkers.addFeature(more)
    greens = in_hand.layer("green")
    greens.startEditing()
    green = next(greens.getFeatures())
    greens.changeAttributeValue(green.id(), greens.fields().lookupField("seen_in"), "a lost one")
    assert drawn_from(layers) == {"2023-04-12": 2, "2025-07-02": 1, "a lost one": 1, NOT_SAID: 11}
    assert counts(layers, expression_of("2023-04-12")) == (2, 15)
    bunkers.rollBack()
    greens.rollBack()
    assert drawn_from(layers) == {"2023-04-12": 2, "2025-07-02": 1, NOT_SAID: 11}


def test_the_ground_of_a_course_knows_what_is_not_saved(in_hand):  # noqa: F811
    tiles = QgsRasterLayer("type=xyz&url=https://tiles.example/{z}/{x}/{y}.png&zmax=19&zmin=0", "Web", "wms")
    QgsProject.instance().addMapLayer(tiles)
    trees = in_hand.layer("tree")
    trees.startEditing()
    tree = QgsFeature(trees.fields())
    tree.setGeometry(QgsGeometry.fromPointXY(QgsPointXY(EAST + 2000, NORTH + 3000)))
    trees.addFeature(tree)
    take_up(in_hand, tiles, "2024-05-01")
    images = in_hand.layer("image")
    box = next(images.getFeatures()).geometry().boundingBox()
    # 200 metres beyond the tree.
    assert (box.xMaximum(), box.yMaximum()) == (EAST + 2200, NORTH + 3200)
    trees.rollBack()
    images.rollBack()


def test_whom_a_layer_credits(qgis_new_project, tmp_path):
    layer = add_raster(write_raster(tmp_path / "plain.tif", (9, 9, 9)))
    assert credit_of(layer) == ""
    told = layer.serverProperties() if hasattr(layer.serverProperties(), "setAttribution") else layer
    told.setAttribution("Larkmere Survey")
    assert credit_of(layer) == "Larkmere Survey"
    metadata = layer.metadata()
    metadata.setRights(["Ines Painter", "Jon Painter"])
    layer.setMetadata(metadata)
    assert credit_of(layer) == "Ines Painter; Jon Painter"


def style_of(layer):
    page = QDomDocument()
    layer.exportNamedStyle(page)
    return page.toString()


@pytest.fixture
def settings(in_hand):  # noqa: F811
    settings = QgsMapSettings()
    settings.setDestinationCrs(in_hand.layer("green").crs())
    settings.setOutputSize(QSize(300, 300))
    settings.setExtent(QgsRectangle(EAST - 100, NORTH + 50, EAST + 400, NORTH + 550))
    settings.setBackgroundColor(QColor(255, 255, 255))
    return settings


def test_only_some_features_are_drawn_and_nothing_else_changes(in_hand, settings):  # noqa: F811
    mark_features(in_hand)
    greens = in_hand.layer("green")
    seen = greens.fields().lookupField("seen_in")
    kept, left = (f.id() for f in greens.getFeatures())
    greens.startEditing()
    greens.beginEditCommand("Seen elsewhere")
    greens.changeAttributeValue(left, seen, "2024-10-09")
    greens.endEditCommand()
    QgsProject.instance().setDirty(False)
    style, renderer = style_of(greens), type(greens.renderer())

    def drawn(expression):
        overrides = {greens.id(): drawn_only(greens, expression)} if expression else {}
        settings.setLayerStyleOverrides(overrides)
        settings.setLayers([greens])
        return (picture(settings) != 255).any(axis=2)

    everything, old, new = drawn(""), drawn(expression_of("2023-04-12")), drawn(expression_of("2024-10-09"))
    # The edit counts, though it is not saved: one green each, and the two make up the whole.
    assert old.any() and new.any() and not (old & new).any()
    assert ((old | new) == everything).all()
    assert not drawn(expression_of("no such")).any()
    assert (drawn("") == everything).all()

    assert style_of(greens) == style and type(greens.renderer()) is renderer
    assert greens.subsetString() == "" and greens.isEditable() and greens.undoStack().count() == 1
    assert not QgsProject.instance().isDirty()
    greens.undoStack().undo()
    assert kept and greens.getFeature(left)["seen_in"] == "2023-04-12"
    greens.rollBack()


def test_any_renderer_that_draws_feature_by_feature_can_leave_some_out(in_hand, settings):  # noqa: F811
    mark_features(in_hand)
    greens = in_hand.layer("green")
    categories = [
        QgsRendererCategory(value, QgsSymbol.defaultSymbol(greens.geometryType()), value)
        for value in ("clear", "partly hidden")
    ]
    greens.setRenderer(QgsCategorizedSymbolRenderer("view", categories))
    settings.setLayers([greens])
    for seen_in, any_drawn in (("2023-04-12", True), ("2025-07-02", False)):
        settings.setLayerStyleOverrides({greens.id(): drawn_only(greens, expression_of(seen_in))})
        assert (picture(settings) != 255).any() == any_drawn
    plates = in_hand.layer("plate")
    plates.setRenderer(QgsHeatmapRenderer())
    assert drawn_only(plates, expression_of("2023-04-12")) == ""
