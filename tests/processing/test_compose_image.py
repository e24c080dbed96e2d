"""``yardwright:composeimage`` from end to end on an invented course with three image dates."""

import csv
import json
import shutil
from contextlib import closing

import numpy as np
import pytest
from osgeo import gdal, osr
from scipy.ndimage import gaussian_filter
from shapely.geometry import LineString, Point, box
from yardwright.model.course import Feature

from tests.tiles import tiles_of

CRS = "EPSG:32630"
EAST, NORTH = 512_000.0, 6_244_000.0
SIDE, PIXEL = 700, 0.3
SHADE = (60, 20, 25)
"""Where the shade of April lies: x, y of its middle and half its width, metres from EAST and NORTH."""


def date(number, name, source, **more):
    return Feature(
        "image", number, box(EAST - 80, NORTH - 100, EAST + 130, NORTH + 110),
        attributes={
            "id": name, "source": source, "taken": "2024-04-02", "credit": f"{name} flight", "licence": "CC0-1.0",
            "print_allowed": True, "rmse_m": 0.1, **more,
        },
    )  # fmt: skip


FEATURES = (
    Feature(
        "hole", None, LineString([(EAST, NORTH), (EAST + 60, NORTH)]), attributes={"number": 1, "par": 3}
    ),
    Feature("hole", None, None, attributes={"number": 2, "par": 4}),
    Feature("tee", None, box(EAST - 4, NORTH - 4, EAST + 4, NORTH + 4), (1,), attributes={"tee_set": "blue"}),
    Feature("green", None, Point(EAST + 60, NORTH).buffer(9), (1,)),
    date(1, "april", "april.tif"),
    date(2, "may", "may.tif"),
    date(3, "secret", "may.tif", print_allowed=False, licence="to look at"),
    date(4, "tiles", "type=xyz&url=https://tiles.invalid/{z}/{x}/{y}.png"),
    Feature("patch", None, box(EAST + 20, NORTH - 24, EAST + 40, NORTH - 12), attributes={"image": "may"}),
)


@pytest.fixture(scope="module")
def ground(tmp_path_factory, qgis_app):
    """A folder with a course file and its images."""
    from yardwright.store.course_file import create_course, open_course
    from yardwright.store.writing import add_features

    folder = tmp_path_factory.mktemp("ground")
    course = str(folder / "course.gpkg")
    create_course(course, "Test Links", CRS)
    with closing(open_course(course)) as layers:
        add_features(layers, FEATURES)
    srs = osr.SpatialReference()
    srs.SetFromUserInput(CRS)
    rng = np.random.default_rng(8)
    mottle = sum(
        part / part.std() for part in (gaussian_filter(rng.normal(size=(SIDE, SIDE)), s) for s in (1, 6, 30))
    )
    turf = np.array([100, 122, 70]) * (1 + 0.05 * mottle[..., None])
    x, y, half = SHADE
    column, row, reach = int((x + 80) / PIXEL), int((110 - y) / PIXEL), int(half / PIXEL)
    depth = np.zeros((SIDE, SIDE))
    depth[row - reach // 2 : row + reach // 2, column - reach : column + reach] = 1
    shaded = turf * (1 - gaussian_filter(depth, 1.2)[..., None] * np.array([0.62, 0.57, 0.45]))
    for name, picture in (("april", shaded), ("may", turf * (1.05, 0.96, 0.92))):
        image = gdal.GetDriverByName("GTiff").Create(str(folder / f"{name}.tif"), SIDE, SIDE, 3)
        image.SetGeoTransform((EAST - 80, PIXEL, 0, NORTH + 110, 0, -PIXEL))
        image.SetSpatialRef(srs)
        noisy = np.clip(picture + rng.normal(0, 2, picture.shape), 0, 255).astype(np.uint8)
        for band in range(3):
            image.GetRasterBand(band + 1).WriteArray(noisy[..., band])
        image = None
    return folder


@pytest.fixture
def course(ground, tmp_path):
    """A fresh copy of the course file beside its images."""
    for name in ("course.gpkg", "april.tif", "may.tif"):
        shutil.copy(ground / name, tmp_path / name)
    return tmp_path / "course.gpkg"


def run(provider, name, parameters, feedback=None):
    """``(results, warnings)`` of an algorithm."""
    from qgis.core import QgsApplication, QgsProcessingContext, QgsProcessingFeedback

    said = []

    class Log(QgsProcessingFeedback):
        def pushWarning(self, text):
            said.append(text)

    algorithm = QgsApplication.processingRegistry().createAlgorithmById(f"yardwright:{name}")
    context = QgsProcessingContext()
    ok, reason = algorithm.checkParameterValues(parameters, context)
    assert ok, reason
    results, _ = algorithm.run(parameters, context, feedback or Log(), {}, False)
    return results, said


def compose(provider, course, out, feedback=None, **more):
    return run(
        provider,
        "composeimage",
        {"COURSE": str(course), "BASE": "april", "OUTPUT": str(out), **more},
        feedback,
    )


def rows_of(path):
    with open(path, encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def test_only_course_base_and_output_are_compulsory(provider):
    from qgis.core import QgsApplication, QgsProcessingParameterDefinition

    algorithm = QgsApplication.processingRegistry().algorithmById("yardwright:composeimage")
    optional = QgsProcessingParameterDefinition.Flag.FlagOptional
    needed = {p.name() for p in algorithm.parameterDefinitions() if not p.flags() & optional}
    assert needed == {"COURSE", "BASE", "OUTPUT"}


def test_a_hole_is_composed(provider, course, tmp_path):
    out = tmp_path / "out"
    results, said = compose(provider, course, out)
    assert results["PICTURES"] == 1
    made = sorted(path.name for path in out.iterdir() if not path.name.endswith(".aux.xml"))
    assert made == ["composites.csv", "hole_01.tif", "hole_01_source.tif", "recipe.json", "uncovered.csv"]
    picture, source = (gdal.Open(str(out / name)) for name in ("hole_01.tif", "hole_01_source.tif"))
    assert picture.GetGeoTransform()[1] == PIXEL, "the base's own pixels"
    left, _, _, top, _, _ = picture.GetGeoTransform()
    assert (left - EAST + 80) / PIXEL == pytest.approx(round((left - EAST + 80) / PIXEL), abs=1e-6)
    x, y, _ = SHADE
    at = (int((EAST + x - left) / PIXEL), int((top - NORTH - y) / PIXEL))
    assert source.GetRasterBand(1).ReadAsArray(*at, 1, 1).item() == 2, "the shade of April is taken from May"
    patch = (int((EAST + 30 - left) / PIXEL), int((top - NORTH + 18) / PIXEL))
    assert source.GetRasterBand(1).ReadAsArray(*patch, 1, 1).item() == 2, "the patch drawn"
    shares = {row["date"]: float(row["share_pct"]) for row in rows_of(results["COMPOSITES"])}
    assert set(shares) == {"april", "may", "lightened", "invented"}
    assert sum(shares.values()) == pytest.approx(100, abs=0.2) and shares["may"] > 2
    assert picture.GetMetadataItem("TIFFTAG_COPYRIGHT") == "april flight, CC0-1.0; may flight, CC0-1.0"
    assert any("secret was left out" in text and "to look at" in text for text in said)
    assert any("tiles was left out" in text for text in said)


def test_what_may_not_be_printed_can_be_looked_at(provider, course, tmp_path):
    from qgis.core import QgsProcessingException

    with pytest.raises(QgsProcessingException, match="secret cannot be the base.*to look at"):
        compose(provider, course, tmp_path / "out", BASE="secret")
    results, _ = compose(provider, course, tmp_path / "out", BASE="secret", FOR_PRINT=False)
    assert results["PICTURES"] == 1


def test_bases_that_are_none(provider, course, tmp_path):
    from qgis.core import QgsProcessingException

    with pytest.raises(QgsProcessingException, match="no image date “june”.*april, may"):
        compose(provider, course, tmp_path / "out", BASE="june")
    with pytest.raises(QgsProcessingException, match="tiles"):
        compose(provider, course, tmp_path / "out", BASE="tiles")
    (tmp_path / "april.tif").unlink()
    with pytest.raises(QgsProcessingException, match="april.tif"):
        compose(provider, course, tmp_path / "out")


def test_a_date_that_is_gone_or_not_registered_is_said(provider, course, tmp_path):
    from yardwright.store.course_file import open_course
    from yardwright.store.writing import editing

    with closing(open_course(str(course))) as layers:
        row = next(f for f in layers["image"].getFeatures() if f["id"] == "may")
        with editing(layers, ["image"]) as edit:
            edit.change("image", {row.id(): {"rmse_m": None}})
    _, said = compose(provider, course, tmp_path / "out", DATES="may")
    assert any("may is not registered" in text for text in said)
    (tmp_path / "may.tif").unlink()
    results, said = compose(provider, course, tmp_path / "out", DATES="may")
    assert results["PICTURES"] == 1 and any("may could not be used" in text for text in said)


def on_server(course, source):
    """Let the date “tiles” be tiles, and what April shows of its own."""
    from yardwright.store.course_file import open_course
    from yardwright.store.writing import editing

    with closing(open_course(str(course))) as layers:
        row = next(f for f in layers["image"].getFeatures() if f["id"] == "tiles")
        with editing(layers, ["image"]) as edit:
            edit.change("image", {row.id(): {"source": source, "gsd_m": PIXEL}})


def test_a_date_on_a_server_is_fetched_where_it_is_named(provider, course, tmp_path):
    on_server(course, tiles_of(tmp_path / "may.tif", tmp_path / "tiles", 19, PIXEL))
    _, said = compose(provider, course, tmp_path / "all")
    assert any("tiles was left out: it lies on a server" in text for text in said)
    compose(provider, course, tmp_path / "file", DATES="may")
    results, said = compose(provider, course, tmp_path / "web", DATES="tiles")
    assert results["PICTURES"] == 1 and not any("tiles" in text for text in said)
    shares = {row["date"]: float(row["share_pct"]) for row in rows_of(tmp_path / "web" / "composites.csv")}
    assert shares["tiles"] > 2
    # Where May uncovers the ground its tiles do, and look like it but for being drawn twice.
    pictures = [gdal.Open(str(tmp_path / name / "hole_01.tif")) for name in ("web", "file")]
    web, file = (picture.ReadAsArray().astype(float)[:3] for picture in pictures)
    left, _, _, top, _, _ = pictures[0].GetGeoTransform()
    x, y, half = SHADE
    column, row = int((EAST + x - left) / PIXEL), int((top - NORTH - y) / PIXEL)
    reach = int(half / PIXEL) - 6
    there = (slice(None), slice(row - 15, row + 15), slice(column - reach, column + reach))
    assert row > 15
    assert np.abs(web - file)[there].mean() < 4 and np.abs((web - file)[there].mean()) < 1


def test_a_date_on_a_server_is_the_base(provider, course, tmp_path):
    on_server(course, tiles_of(tmp_path / "april.tif", tmp_path / "tiles", 19, PIXEL))
    results, _ = compose(provider, course, tmp_path / "out", BASE="tiles", DATES="may")
    assert results["PICTURES"] == 1
    shares = {row["date"]: float(row["share_pct"]) for row in rows_of(tmp_path / "out" / "composites.csv")}
    assert shares["tiles"] > 50 and shares["may"] > 2
    assert gdal.Open(str(tmp_path / "out" / "hole_01.tif")).GetGeoTransform()[1] == PIXEL


def test_a_server_that_is_not_there_is_said_and_the_other_dates_used(provider, course, tmp_path):
    results, said = compose(provider, course, tmp_path / "out", DATES="may,tiles")
    assert results["PICTURES"] == 1
    assert any("tiles" in text and ("could not be used" in text or "shows nothing" in text) for text in said)
    shares = {row["date"]: float(row["share_pct"]) for row in rows_of(tmp_path / "out" / "composites.csv")}
    assert shares["may"] > 2


def test_a_recipe_makes_the_same_pictures_again(provider, course, tmp_path):
    first, second = tmp_path / "first", tmp_path / "second"
    compose(provider, course, first, KEEP_M=5)
    compose(provider, course, second, RECIPE=str(first / "recipe.json"))
    kept = json.loads((first / "recipe.json").read_text("utf-8"))
    assert kept["dates"] == ["april", "may"] and kept["options"]["keep_m"] == 5
    assert (first / "recipe.json").read_bytes() == (second / "recipe.json").read_bytes()
    for name in ("hole_01.tif", "hole_01_source.tif"):
        one, other = (gdal.Open(str(folder / name)).ReadAsArray() for folder in (first, second))
        assert (one == other).all()


def test_without_a_hole_drawn_the_whole_course_is_composed(provider, ground, tmp_path):
    from yardwright.store.course_file import create_course, open_course
    from yardwright.store.writing import add_features

    for name in ("april.tif", "may.tif"):
        shutil.copy(ground / name, tmp_path / name)
    course = str(tmp_path / "bare.gpkg")
    create_course(course, "Bare", CRS)
    with closing(open_course(course)) as layers:
        add_features(layers, [date(1, "april", "april.tif"), date(2, "may", "may.tif")])
    results, _ = compose(provider, course, tmp_path / "out", PIXEL_M=0.6)
    picture = gdal.Open(str(tmp_path / "out" / "course.tif"))
    assert results["PICTURES"] == 1
    assert picture.GetGeoTransform()[1] == 0.6
    assert abs(picture.RasterXSize - SIDE / 2) <= 1


def test_windows_are_cut_from_a_composite(provider, course, tmp_path):
    compose(provider, course, tmp_path / "out")
    image = str(tmp_path / "out" / "hole_01.tif")
    results, _ = run(
        provider,
        "exportwindows",
        {"COURSE": str(course), "IMAGE": image, "OUTPUT": str(tmp_path / "windows")},
    )
    assert results["WINDOWS"] == 2
    picture = gdal.Open(str(tmp_path / "windows" / "hole_01.tif")).ReadAsArray()
    assert (picture[3] > 0).mean() > 0.999, "the composite covers all of the window"


def test_cancelled_nothing_is_left(provider, course, tmp_path):
    from qgis.core import QgsProcessingFeedback

    class Stopped(QgsProcessingFeedback):
        def isCanceled(self):
            return True

    results, _ = compose(provider, course, tmp_path / "out", Stopped())
    assert not results.get("PICTURES")
    assert list((tmp_path / "out").iterdir()) == []
