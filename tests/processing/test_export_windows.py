"""``yardwright:exportwindows`` from end to end on an invented course, by Processing and a terminal."""

import csv
import glob
import json
import os
import shutil
import subprocess
from contextlib import closing
from pathlib import Path

import numpy as np
import pytest
from osgeo import gdal, ogr, osr
from shapely.geometry import LineString, Point, Polygon
from yardwright.model.course import Feature

CRS = "EPSG:32630"
EAST, NORTH = 512_000.0, 6_244_000.0


def square(x, y, half):
    corners = [(x - half, y - half), (x + half, y - half), (x + half, y + half), (x - half, y + half)]
    return Polygon([(EAST + a, NORTH + b) for a, b in corners])


def line(*points):
    return LineString([(EAST + a, NORTH + b) for a, b in points])


FEATURES = (
    Feature("hole", None, line((0, 0), (300, 0)), attributes={"number": 1, "par": 4}),
    Feature("hole", None, line((0, 60), (0, 200)), attributes={"number": 2, "par": 3}),
    Feature("hole", None, None, attributes={"number": 3, "par": 4}),
    Feature("tee", None, square(0, 0, 4), (1,), attributes={"tee_set": "blue"}),
    Feature("green", None, Point(EAST + 300, NORTH).buffer(9), (1,)),
    Feature("bunker", None, square(292, 12, 2), (1,), label="=SUM(1)"),
    Feature("tee", None, square(0, 60, 4), (2,), attributes={"tee_set": "blue"}),
    Feature("green", None, Point(EAST, NORTH + 200).buffer(9), (2,)),
)


@pytest.fixture(scope="module")
def ground(tmp_path_factory, qgis_app):
    """A folder with a course file and an image on which greens are bright."""
    from yardwright.store.course_file import create_course, open_course
    from yardwright.store.writing import add_features

    folder = tmp_path_factory.mktemp("ground")
    course = str(folder / "course.gpkg")
    create_course(course, "Test Links", CRS)
    with closing(open_course(course)) as layers:
        add_features(layers, FEATURES)
    srs = osr.SpatialReference()
    srs.SetFromUserInput(CRS)
    path = str(folder / "image.tif")
    image = gdal.GetDriverByName("GTiff").Create(path, 2400, 2400, 3, options=["TILED=YES"])
    image.SetGeoTransform((EAST - 200, 0.3, 0, NORTH + 400, 0, -0.3))
    image.SetSpatialRef(srs)
    for band, value in enumerate((60, 90, 40), start=1):
        image.GetRasterBand(band).Fill(value)
    greens = ogr.GetDriverByName("Memory").CreateDataSource("")
    layer = greens.CreateLayer("greens", srs)
    for feature in FEATURES:
        if feature.kind == "green":
            row = ogr.Feature(layer.GetLayerDefn())
            row.SetGeometry(ogr.CreateGeometryFromWkb(feature.geometry.wkb))
            layer.CreateFeature(row)
    gdal.RasterizeLayer(image, [1, 2, 3], layer, burn_values=[200, 220, 180])
    image = None
    return folder


@pytest.fixture
def course(ground, tmp_path):
    """A fresh copy of the course file."""
    return shutil.copy(ground / "course.gpkg", tmp_path / "course.gpkg")


def run(provider, parameters, feedback=None):
    """``(results, warnings)`` of the algorithm."""
    from qgis.core import QgsApplication, QgsProcessingContext, QgsProcessingFeedback

    said = []

    class Log(QgsProcessingFeedback):
        def pushWarning(self, text):
            said.append(text)

    algorithm = QgsApplication.processingRegistry().createAlgorithmById("yardwright:exportwindows")
    context = QgsProcessingContext()
    ok, reason = algorithm.checkParameterValues(parameters, context)
    assert ok, reason
    results, _ = algorithm.run(parameters, context, feedback or Log(), {}, False)
    return results, said


def asked(ground, course, out, **more):
    return {
        "COURSE": str(course),
        "IMAGE": str(ground / "image.tif"),
        "WIDTH_MM": 60,
        "HEIGHT_MM": 90,
        "DPI": 100,
        "OUTPUT": str(out),
        **more,
    }


def windows_of(course):
    from yardwright.store.course_file import open_course
    from yardwright.store.reading import read_features

    with closing(open_course(str(course))) as layers:
        return read_features(layers, "window")


def rows_of(folder):
    with open(folder / "placements.csv", encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def test_parameters_have_the_names_others_rely_on(provider):
    """design: COURSE, IMAGE, HOLES?, SHOWS, WIDTH_MM, HEIGHT_MM, DPI, SCALE?, OUTPUT; others are optional."""
    from qgis.core import QgsApplication, QgsProcessingParameterDefinition

    algorithm = QgsApplication.processingRegistry().algorithmById("yardwright:exportwindows")
    named = {parameter.name(): parameter for parameter in algorithm.parameterDefinitions()}
    needed = {"COURSE", "IMAGE", "SHOWS", "WIDTH_MM", "HEIGHT_MM", "DPI", "OUTPUT"}
    assert needed | {"HOLES", "SCALE"} <= set(named)
    optional = QgsProcessingParameterDefinition.Flag.FlagOptional
    assert {name for name, p in named.items() if not p.flags() & optional} <= needed
    assert all(parameter.help() for parameter in named.values())


def test_windows_of_all_holes(provider, ground, course, tmp_path):
    out = tmp_path / "out"
    results, said = run(provider, asked(ground, course, out))
    assert results["WINDOWS"] == 4
    made = {"hole_01", "green_01", "hole_02", "green_02"}
    files = {name + suffix for name in made for suffix in (".tif", ".png", ".pgw", ".png.aux.xml")}
    assert set(os.listdir(out)) == files | {"placements.csv"}
    assert any("Hole 3" in text for text in said)

    windows = windows_of(course)
    assert {f"{w.get('shows')}_0{w.get('hole')}" for w in windows} == made
    for window in windows:
        image = gdal.Open(str(out / f"{window.get('shows')}_{window.get('hole'):02d}.tif"))
        g, w, h = image.GetGeoTransform(), image.RasterXSize, image.RasterYSize
        assert (w, h) == (236, 354)
        drawn = np.array(window.geometry.exterior.coords)[:-1]
        for x, y in ((0, 0), (w, 0), (w, h), (0, h)):
            corner = gdal.ApplyGeoTransform(g, x, y)
            assert np.hypot(*(drawn - corner).T).min() < 1e-6
        assert window.get("width_mm") == pytest.approx(236 / 100 * 25.4)
        assert window.get("scale") >= 480
    first = next(w for w in windows if (w.get("hole"), w.get("shows")) == (1, "green"))
    # Grid east is 90 degrees; true azimuth differs by the meridian convergence at 12 km east of 3 deg W.
    assert first.get("up_azimuth") == pytest.approx(90.16, abs=0.02)


def test_the_green_is_where_placements_say(provider, ground, course, tmp_path):
    out = tmp_path / "out"
    run(provider, asked(ground, course, out, HOLES="1", SHOWS="green"))
    pixels = gdal.Open(str(out / "green_01.png")).ReadAsArray()[0]
    rows = {row["symbol"]: row for row in rows_of(out)}
    assert set(rows) == {"front", "middle", "back", "bunker"}
    column, row = float(rows["middle"]["x_px"]), float(rows["middle"]["y_px"])
    bright = pixels > 130
    ys, xs = np.nonzero(bright)
    assert (xs.mean() + 0.5, ys.mean() + 0.5) == pytest.approx((column, row), abs=0.5)
    assert float(rows["front"]["y_px"]) > row > float(rows["back"]["y_px"])
    assert ys.max() + 1 == pytest.approx(float(rows["front"]["y_px"]), abs=2)
    assert ys.min() == pytest.approx(float(rows["back"]["y_px"]), abs=2)
    for symbol in rows.values():
        assert float(symbol["x_mm"]) == pytest.approx(float(symbol["x_px"]) / 100 * 25.4, abs=0.001)
    assert rows["bunker"]["text"] != "=SUM(1)"
    assert rows["bunker"]["text"].endswith("=SUM(1)")


@pytest.mark.parametrize(
    "shows, made",
    [
        ("hole", {"hole"}),
        ("green", {"green"}),
        ("both", {"hole", "green"}),
        ("hole,green", {"hole", "green"}),
        (["green"], {"green"}),
        (["hole", "green"], {"hole", "green"}),
    ],
)
def test_shows(provider, ground, course, tmp_path, shows, made):
    results, _ = run(provider, asked(ground, course, tmp_path / "out", HOLES="2", SHOWS=shows))
    assert results["WINDOWS"] == len(made)
    assert {w.get("shows") for w in windows_of(course)} == made


def test_run_again_it_replaces_its_own(provider, ground, course, tmp_path):
    out = tmp_path / "out"
    run(provider, asked(ground, course, out, HOLES="1", SHOWS="hole", SCALE=4000))
    run(provider, asked(ground, course, out, HOLES="1-2", SHOWS="hole", SCALE=5000, PICTURE="jpeg"))
    assert {w.get("scale") for w in windows_of(course)} == {5000}
    assert len(windows_of(course)) == 2
    made = {f"hole_0{n}{s}" for n in (1, 2) for s in (".tif", ".jpg", ".jgw", ".jpg.aux.xml")}
    assert set(os.listdir(out)) == made | {"placements.csv"}
    assert {row["window"] for row in rows_of(out)} == {"hole_01", "hole_02"}


def pixels_of(path):
    image = gdal.Open(str(path))
    return image.ReadAsArray().transpose(1, 2, 0).astype(int)


def test_margins_made_clear(provider, ground, course, tmp_path):
    shown = {"SHOWS": ["green"], "HOLES": "1"}
    run(provider, asked(ground, course, tmp_path / "plain", **shown))
    run(provider, asked(ground, course, tmp_path / "clear", MARGINS=0.6, **shown))
    plain, clear = (pixels_of(tmp_path / kind / "green_01.tif") for kind in ("plain", "clear"))
    change = clear[:, :, :3].sum(axis=2) - plain[:, :, :3].sum(axis=2)
    image = gdal.Open(str(tmp_path / "clear" / "green_01.tif"))
    g = image.GetGeoTransform()
    rows, columns = np.indices(change.shape) + 0.5
    x, y = g[0] + columns * g[1] + rows * g[2], g[3] + columns * g[4] + rows * g[5]
    # The circle's own equation: shapely's 64 sides lie at most 1.1 cm inside it.
    away = 9 - np.hypot(x - EAST - 300, y - NORTH)
    assert change[(away > 0.1) & (away < 0.3)].min() > 20
    assert change[(away < -0.15) & (away > -0.3)].max() < -8
    assert not change[(np.abs(away) > 2.5) & (np.hypot(x - EAST - 292, y - NORTH - 12) > 5.5)].any()


def test_markers_where_they_are_true(provider, ground, course, tmp_path):
    """A post that states 100 yd stands 95 yd before the middle: 5 yd nearer to the tee it is burnt in."""
    from yardwright.store.course_file import open_course
    from yardwright.store.writing import add_features

    stands = Point(EAST + 300 - 95 * 0.9144, NORTH)
    with closing(open_course(str(course))) as layers:
        add_features(layers, [Feature("marker", None, stands, attributes={"hole": 1, "states_yd": 100})])
    shown = {"SHOWS": ["hole"], "HOLES": "1", "DPI": 200}
    run(provider, asked(ground, course, tmp_path / "plain", **shown))
    run(provider, asked(ground, course, tmp_path / "drawn", MARKERS=True, **shown))
    plain, drawn = (pixels_of(tmp_path / kind / "hole_01.tif") for kind in ("plain", "drawn"))
    (row,) = [r for r in rows_of(tmp_path / "drawn") if r["symbol"] == "marker_proposed"]
    x, y = float(row["x_px"]), float(row["y_px"])
    image = gdal.Open(str(tmp_path / "drawn" / "hole_01.tif"))
    g = image.GetGeoTransform()
    there = (g[0] + x * g[1] + y * g[2], g[3] + x * g[4] + y * g[5])
    # UTM stretches the yard here by less than 0.04 %.
    assert np.allclose(there, (EAST + 300 - 100 * 0.9144, NORTH), atol=0.06)
    assert drawn[int(y), int(x), :3].min() > 250
    rows, columns = np.nonzero((plain != drawn).any(axis=2))
    assert np.hypot(rows - y, columns - x).max() < 6 / 25.4 * 200
    assert columns.max() - x > 2 / 25.4 * 200 and (drawn[rows, columns].min(axis=0)[:3] < 60).all()


def test_the_limit_of_greens_is_lifted_knowingly(provider, ground, course, tmp_path):
    _, said = run(provider, asked(ground, course, tmp_path / "a", HOLES="1", SHOWS="green", SCALE=200))
    assert any("4.3a" in text for text in said)
    assert windows_of(course)[0].get("scale") == 480
    more = {"SCALE": 200, "LARGER_GREENS": True}
    run(provider, asked(ground, course, tmp_path / "b", HOLES="1", SHOWS="green", **more))
    assert windows_of(course)[0].get("scale") == 200


def test_a_layer_of_the_project(provider, ground, course, tmp_path, qgis_new_project):
    from qgis.core import (
        QgsApplication,
        QgsProcessingContext,
        QgsProcessingFeedback,
        QgsProject,
        QgsRasterLayer,
    )

    layer = QgsRasterLayer(str(ground / "image.tif"), "Summer")
    QgsProject.instance().addMapLayer(layer)
    context = QgsProcessingContext()
    context.setProject(QgsProject.instance())
    algorithm = QgsApplication.processingRegistry().createAlgorithmById("yardwright:exportwindows")
    parameters = asked(ground, course, tmp_path / "out", IMAGE=layer.id(), HOLES="1", SHOWS="hole")
    results, ok = algorithm.run(parameters, context, QgsProcessingFeedback())
    assert ok
    assert results["WINDOWS"] == 1


@pytest.mark.parametrize(
    "change, message",
    [
        ({"COURSE": "missing.gpkg"}, "missing.gpkg"),
        ({"HOLES": "9"}, "Hole 9 is not in the course"),
        ({"HOLES": "3"}, "Hole 3 cannot be shown"),
        ({"HOLES": "1-x"}, "not a hole number"),
        ({"MARGIN_MM": 45.0}, "margin"),
    ],
)
def test_what_cannot_be_done_is_said(provider, ground, course, tmp_path, change, message):
    from qgis.core import QgsProcessingException

    before = Path(course).read_bytes()
    with pytest.raises(QgsProcessingException, match=message):
        run(provider, asked(ground, course, tmp_path / "out", **change))
    assert Path(course).read_bytes() == before
    assert glob.glob(str(tmp_path / "out" / "*")) == []


@pytest.mark.parametrize("allowed", [False, None, True])
def test_a_date_that_may_not_be_printed_is_refused_unless_only_looked_at(
    allowed, provider, ground, course, tmp_path
):
    from qgis.core import QgsProcessingException
    from yardwright.store.course_file import open_course
    from yardwright.store.writing import add_features

    row = {
        "id": "may",
        "source": str(ground / "image.tif"),
        "licence": "to look at",
        "print_allowed": allowed,
    }
    with closing(open_course(course)) as layers:
        add_features(layers, [Feature("image", None, square(0, 0, 100), attributes=row)])
    if allowed is None:
        rows = ogr.Open(str(course), 1)
        rows.ExecuteSQL("UPDATE image SET print_allowed = NULL")
        rows = None
    if allowed is False:
        with pytest.raises(QgsProcessingException, match="may not be printed .*to look at.*"):
            run(provider, asked(ground, course, tmp_path / "out"))
        assert glob.glob(str(tmp_path / "out" / "*.tif")) == [] and windows_of(course) == ()
    looked, said = run(
        provider, asked(ground, course, tmp_path / "seen", HOLES="1", FOR_PRINT=allowed is not False)
    )
    assert looked["WINDOWS"] == 2
    assert any("may be printed" in text for text in said) == (allowed is None)


def test_an_image_of_another_place(provider, ground, course, tmp_path):
    from qgis.core import QgsProcessingException

    path = str(tmp_path / "elsewhere.tif")
    gdal.Translate(path, str(ground / "image.tif"), outputBounds=[0, 100, 100, 0]).FlushCache()
    with pytest.raises(QgsProcessingException, match="shows nothing of this window"):
        run(provider, asked(ground, course, tmp_path / "out", IMAGE=path))
    assert windows_of(course) == ()


def test_cancelling_stops(provider, ground, course, tmp_path):
    from qgis.core import QgsProcessingFeedback

    feedback = QgsProcessingFeedback()
    feedback.cancel()
    results, _ = run(provider, asked(ground, course, tmp_path / "out"), feedback)
    assert results.get("WINDOWS", 0) == 0
    assert glob.glob(str(tmp_path / "out" / "*.tif")) == []


def test_from_a_terminal(ground, course, tmp_path):
    """qgis_process: the plugin enabled in a profile of its own, everything given as text."""
    command = shutil.which("qgis_process.bin") or shutil.which("qgis_process")
    if command is None:
        pytest.skip("qgis_process is not installed")
    environment = {
        **os.environ,
        "QT_QPA_PLATFORM": "offscreen",
        "QGIS_PLUGINPATH": str(Path(__file__).resolve().parents[2] / "plugin"),
        "QGIS_CUSTOM_CONFIG_PATH": str(tmp_path / "profile"),
    }
    plain = {"env": environment, "capture_output": True, "text": True, "timeout": 120}
    subprocess.run([command, "plugins", "enable", "yardwright"], check=True, **plain)
    parameters = asked(ground, course, tmp_path / "out", HOLES="1,2", SHOWS="hole,green", SCALE=2400)
    texts = [f"{name}={value}" for name, value in parameters.items()]
    done = subprocess.run([command, "--json", "run", "yardwright:exportwindows", "--", *texts], **plain)
    assert done.returncode == 0, done.stderr
    assert json.loads(done.stdout)["results"]["WINDOWS"] == 4
    assert {w.get("scale") for w in windows_of(course)} == {2400}
