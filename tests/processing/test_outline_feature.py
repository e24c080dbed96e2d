"""``yardwright:outlinefeature``: a painted green and bunker found in images of several makes, and what it refuses.

The expected margins are those that were painted.
"""

import math

import numpy as np
import pytest
from osgeo import gdal, osr
from shapely import wkt
from shapely.geometry import Point, Polygon

from sample_project import plan
from tests.tiles import tiles_of

GSD = 0.2
SIZE = 700
EAST, NORTH = 412_000.0, 6_270_000.0
"""The top left corner of the images, somewhere in the sample's zone."""
MIDDLE = (EAST + 70.0, NORTH - 70.0)
ROUGH, TURF, SAND = (86, 104, 58), (112, 158, 92), (226, 214, 176)
BUNKER = (EAST + 105.0, NORTH - 70.0)


def lobed(middle, radius, corners=720):
    """A thing with three soft lobes: (n, 2)."""
    turns = np.arange(corners) * 2 * math.pi / corners
    reach = radius * (1 + 0.12 * np.sin(3 * turns))
    return np.column_stack([middle[0] + reach * np.cos(turns), middle[1] + reach * np.sin(turns)])


def painted(shapes, seed=4):
    """(height, width, 3) of float, 0 to 255: things with soft margins on grainy rough."""
    fine = 4
    rows, columns = np.mgrid[0 : SIZE * fine, 0 : SIZE * fine]
    x, y = EAST + (columns + 0.5) * GSD / fine, NORTH - (rows + 0.5) * GSD / fine
    picture = np.full((SIZE, SIZE, 3), ROUGH, dtype=float)
    for middle, radius, colour in shapes:
        turn = np.arctan2(y - middle[1], x - middle[0])
        inside = np.hypot(x - middle[0], y - middle[1]) < radius * (1 + 0.12 * np.sin(3 * turn))
        cover = inside.reshape(SIZE, fine, SIZE, fine).mean(axis=(1, 3))[..., None]
        picture = picture * (1 - cover) + np.array(colour) * cover
    return picture + np.random.default_rng(seed).normal(0, 4, (SIZE, SIZE, 1))


THINGS = ((MIDDLE, 12.0, TURF), (BUNKER, 6.0, SAND))


@pytest.fixture(scope="module")
def picture():
    return painted(THINGS)


def write(path, picture, kind=gdal.GDT_Byte, opacity=None, tagged=True):
    """A GeoTIFF of a picture. opacity: a fourth band. tagged: whether that says that it is opacity."""
    bands = [*np.moveaxis(picture, -1, 0), *([] if opacity is None else [opacity])]
    options = ["PHOTOMETRIC=RGB"] + ([f"ALPHA={'YES' if tagged else 'NO'}"] if opacity is not None else [])
    image = gdal.GetDriverByName("GTiff").Create(str(path), SIZE, SIZE, len(bands), kind, options)
    image.SetGeoTransform((EAST, GSD, 0, NORTH, 0, -GSD))
    crs = osr.SpatialReference()
    crs.SetFromUserInput(plan.CRS)
    image.SetProjection(crs.ExportToWkt())
    most = 255 if kind == gdal.GDT_Byte else 65535
    for number, band in enumerate(bands):
        values = np.clip(np.rint(band), 0, most)
        image.GetRasterBand(number + 1).WriteArray(values.astype(np.uint8 if most == 255 else np.uint16))
    image = None
    return str(path)


@pytest.fixture(scope="module")
def image(picture, tmp_path_factory):
    return write(tmp_path_factory.mktemp("outlined") / "image.tif", picture)


def run(tmp_path, image, kind, place, crs=plan.CRS):
    """``(feature, its layer)`` of what was outlined."""
    from qgis.core import (
        QgsApplication,
        QgsProcessingContext,
        QgsProcessingFeedback,
        QgsProject,
        QgsVectorLayer,
    )

    algorithm = QgsApplication.processingRegistry().createAlgorithmById("yardwright:outlinefeature")
    context, feedback = QgsProcessingContext(), QgsProcessingFeedback()
    context.setProject(QgsProject.instance())
    path = str(tmp_path / "outline.gpkg")
    given = {"IMAGE": image, "KIND": kind, "POINT": f"{place[0]},{place[1]} [{crs}]", "OUTPUT": path}
    ok, reason = algorithm.checkParameterValues(given, context)
    assert ok, reason
    results, _ = algorithm.run(given, context, feedback, {}, False)
    layer = QgsVectorLayer(f"{path}|layername=outline", "outline", "ogr")
    (feature,) = layer.getFeatures()
    assert results["SHARPNESS"] == pytest.approx(feature["sharpness"], abs=1e-4)
    return feature, layer


def shape_of(feature):
    return wkt.loads(feature.geometry().asWkt(9))


def furthest(shape, margin):
    """How far the places of a known margin are from that of a shape, at most."""
    return max(shape.exterior.distance(Point(place)) for place in margin)


def moved_to(points, crs, given=plan.CRS):
    """(n, 2) of one CRS in another."""
    from pyproj import Transformer

    x, y = Transformer.from_crs(given, crs, always_xy=True).transform(*np.asarray(points).T)
    return np.column_stack([x, y])


def test_parameters_have_the_names_others_rely_on(provider):
    from qgis.core import QgsApplication, QgsProcessingParameterDefinition

    algorithm = QgsApplication.processingRegistry().algorithmById("yardwright:outlinefeature")
    named = {parameter.name(): parameter for parameter in algorithm.parameterDefinitions()}
    optional = QgsProcessingParameterDefinition.Flag.FlagOptional
    asked = {name for name, p in named.items() if not p.flags() & optional}
    assert asked == {"IMAGE", "POINT", "KIND", "OUTPUT"}
    assert all(parameter.help() for parameter in named.values())


def test_the_kinds_are_those_that_are_sought():
    from yardwright.imagery.outline import SOUGHT
    from yardwright.model.kinds import BY_NAME, OUTLINED

    assert set(OUTLINED) == set(SOUGHT)
    assert {BY_NAME[kind].geometry for kind in OUTLINED} == {"Polygon"}


@pytest.mark.parametrize("kind, thing", [("green", THINGS[0]), ("bunker", THINGS[1])])
def test_the_margin_is_the_painted_one(provider, image, tmp_path, kind, thing):
    middle, radius, _ = thing
    feature, layer = run(tmp_path, image, kind, (middle[0] + 1.5, middle[1] - 1.0))
    shape, margin = shape_of(feature), lobed(middle, radius)
    assert layer.crs().authid() == plan.CRS and feature["kind"] == kind
    assert shape.is_valid and shape.contains(Point(middle[0] + 1.5, middle[1] - 1.0))
    assert furthest(shape, margin) < GSD
    # r squared times pi, and half the square of the lobes' share more
    assert feature["area_m2"] == pytest.approx(math.pi * radius**2 * (1 + 0.12**2 / 2), rel=0.01)
    assert feature["area_m2"] == pytest.approx(shape.area, rel=1e-3)
    assert 0.5 < feature["sharpness"] <= 1.0 and feature["guessed"] < 0.1
    # A person can edit it: no more than a corner every half metre.
    assert 8 < len(shape.exterior.coords) < shape.length / 0.5


@pytest.mark.parametrize("crs", ["EPSG:4326", "EPSG:3857"])
def test_an_image_in_another_crs(provider, image, tmp_path, crs):
    """Areas are those of the ground: in Web Mercator a metre there is little more than half of one."""
    other = str(tmp_path / "other.tif")
    gdal.Warp(other, image, dstSRS=crs, resampleAlg="cubic", dstAlpha=True)
    feature, layer = run(tmp_path, other, "green", MIDDLE)
    assert layer.crs().authid() == crs
    (middle,) = moved_to([MIDDLE], crs)
    shape = shape_of(feature)
    assert shape.contains(Point(middle))
    assert feature["area_m2"] == pytest.approx(math.pi * 12.0**2 * (1 + 0.12**2 / 2), rel=0.015)
    # Its margin laid back on the ground is the painted one.
    back = Polygon(moved_to(shape.exterior.coords, plan.CRS, crs))
    assert furthest(back, lobed(MIDDLE, 12.0)) < 1.5 * GSD


def test_sixteen_bits_a_false_opacity_and_a_hole(provider, picture, tmp_path):
    infrared = 0.8 * picture[..., 1] + 10
    opaque = np.full((SIZE, SIZE), 255)
    makes = {
        "sixteen": write(tmp_path / "sixteen.tif", picture * 20 + 300, gdal.GDT_UInt16),
        "infrared": write(tmp_path / "infrared.tif", picture, opacity=infrared),
        "opaque": write(tmp_path / "opaque.tif", picture, opacity=opaque),
    }
    for name, path in makes.items():
        folder = tmp_path / name
        folder.mkdir()
        feature, _ = run(folder, path, "green", MIDDLE)
        assert furthest(shape_of(feature), lobed(MIDDLE, 12.0)) < GSD, name


def refused(tmp_path, image, kind, place):
    from qgis.core import QgsProcessingException

    with pytest.raises(QgsProcessingException) as told:
        run(tmp_path, image, kind, place)
    assert not (tmp_path / "outline.gpkg").exists()
    return str(told.value)


def test_plain_turf_is_declined_with_two_sentences(provider, tmp_path):
    plain = write(tmp_path / "plain.tif", painted(()))
    told = refused(tmp_path, plain, "green", MIDDLE)
    assert "No margin can be seen" in told and "draw it by hand" in told


def test_a_place_beside_the_image_or_where_it_is_clear_is_declined(provider, picture, image, tmp_path):
    assert "shows nothing" in refused(tmp_path, image, "green", (EAST - 40.0, NORTH - 70.0))
    opacity = np.full((SIZE, SIZE), 255)
    opacity[250:450, 250:450] = 0
    holed = write(tmp_path / "holed.tif", picture, opacity=opacity)
    assert "shows nothing" in refused(tmp_path, holed, "green", MIDDLE)


def test_tiles_are_fetched(provider, image, tmp_path):
    """Tiles cut from the image by GDAL, taken as a server's."""
    source = tiles_of(image, tmp_path / "tiles", 20, 40_075_016.685578488 / 256 / 2**20)
    from qgis.core import QgsProject, QgsRasterLayer

    layer = QgsRasterLayer(source, "tiles", "wms")
    assert layer.isValid()
    QgsProject.instance().addMapLayer(layer)
    try:
        feature, made = run(tmp_path, layer.id(), "green", MIDDLE)
    finally:
        QgsProject.instance().removeMapLayer(layer.id())
    assert made.crs().authid() == "EPSG:3857"
    assert feature["area_m2"] == pytest.approx(math.pi * 12.0**2 * (1 + 0.12**2 / 2), rel=0.03)
    (middle,) = moved_to([MIDDLE], "EPSG:3857")
    assert shape_of(feature).contains(Point(middle))
