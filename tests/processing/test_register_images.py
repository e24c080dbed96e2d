"""``yardwright:registerimages`` from end to end: a painted date that lies off, one that cannot be laid, tiles."""

import csv
import os
import shutil
from contextlib import closing

import numpy as np
import pytest
from osgeo import gdal, ogr
from shapely.geometry import Point, box
from yardwright.model.course import Feature

from sample_project import pictures, plan

SPRING, SUMMER = pictures.SPRING, pictures.SUMMER


@pytest.fixture(scope="module")
def ground(tmp_path_factory, qgis_app):
    """A folder with images of a part of the painted course, and a course file with dates and a green."""
    from yardwright.store.course_file import create_course, open_course
    from yardwright.store.writing import add_features

    folder = tmp_path_factory.mktemp("ground")
    x0, _, _, y1 = pictures.course_extent()
    x, y = x0 + 5 * 84, y1 - 4 * 84
    extent = (x, y - 180.0, x + 180.0, y)
    os.makedirs(folder / "images")
    for season in (SPRING, SUMMER):
        pictures.write_image(str(folder / "images" / f"{season.id}.tif"), season, extent)
    grain = np.random.default_rng(2).integers(60, 190, (3, 500, 500)).astype(np.uint8)
    plain = gdal.Open(str(folder / "images" / f"{SUMMER.id}.tif"))
    image = gdal.GetDriverByName("GTiff").Create(str(folder / "images" / "grain.tif"), 500, 500, 3)
    image.SetGeoTransform((x, 0.36, 0, y, 0, -0.36))
    image.SetProjection(plain.GetProjection())
    for band in (1, 2, 3):
        image.GetRasterBand(band).WriteArray(grain[band - 1])
    image = None
    course = str(folder / "course.gpkg")
    create_course(course, "Test Links", plan.CRS)
    dates = [
        Feature(
            "image", None, box(*extent), attributes={"id": name, "source": f"images/{name}.tif", "gsd_m": gsd}
        )
        for name, gsd in ((SPRING.id, 0.35), (SUMMER.id, 0.25), ("grain", 0.36))
    ]
    middle = Point(x + 90, y - 90)
    with closing(open_course(course)) as layers:
        add_features(
            layers,
            [
                *dates,
                Feature("green", None, middle.buffer(9), (1,), seen_in=SPRING.id),
                Feature("rough", None, box(*extent).buffer(-32), seen_in=SUMMER.id),
            ],
        )
    return folder, extent, middle


@pytest.fixture
def course(ground, tmp_path):
    """A fresh copy of the folder's course, beside links to its images."""
    folder = ground[0]
    shutil.copy(folder / "course.gpkg", tmp_path / "course.gpkg")
    shutil.copytree(folder / "images", tmp_path / "images")
    return tmp_path / "course.gpkg"


def run(provider, **parameters):
    """``(results, warnings)`` of the algorithm."""
    from qgis.core import QgsApplication, QgsProcessingContext, QgsProcessingFeedback

    said = []

    class Log(QgsProcessingFeedback):
        def pushWarning(self, text):
            said.append(text)

    algorithm = QgsApplication.processingRegistry().createAlgorithmById("yardwright:registerimages")
    context = QgsProcessingContext()
    ok, reason = algorithm.checkParameterValues(parameters, context)
    assert ok, reason
    results, _ = algorithm.run(parameters, context, Log(), {}, False)
    return results, said


def rows_of(path):
    with open(path, encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def dates_in(course):
    from yardwright.store.course_file import open_course
    from yardwright.store.reading import read_images

    with closing(open_course(str(course))) as layers:
        return {one.id: one for one in read_images(layers)}


def test_parameters_have_the_names_others_rely_on(provider):
    """design: COURSE, BASE, IMAGES?, WRITE; others are optional."""
    from qgis.core import QgsApplication, QgsProcessingParameterDefinition

    algorithm = QgsApplication.processingRegistry().algorithmById("yardwright:registerimages")
    named = {parameter.name(): parameter for parameter in algorithm.parameterDefinitions()}
    optional = QgsProcessingParameterDefinition.Flag.FlagOptional
    assert {name for name, p in named.items() if not p.flags() & optional} == {"COURSE", "BASE", "WRITE"}
    assert "IMAGES" in named and all(parameter.help() for parameter in named.values())


def test_found_told_and_kept(provider, ground, course, tmp_path):
    _, _, middle = ground
    before = course.read_bytes()
    results, said = run(provider, COURSE=str(course), BASE=SUMMER.id, OUTPUT=str(tmp_path / "out"))
    found = results["REGISTERED"][SPRING.id]
    east, north = SPRING.shift
    assert (found["shift_e_m"], found["shift_n_m"]) == pytest.approx((-east, -north), abs=0.1 * SPRING.gsd)
    assert results["COUNT"] == 1 and list(results["REFUSED"]) == ["grain"]
    assert any("grain" in text for text in said)
    assert course.read_bytes() == before

    rows = {row["date"]: row for row in rows_of(results["REGISTRATIONS"])}
    assert rows[SPRING.id]["kind"] == "shift" and float(rows[SPRING.id]["shift_e_m"]) == pytest.approx(
        found["shift_e_m"], abs=0.001
    )
    assert rows["grain"]["kind"] == "refused" and rows["grain"]["remark"]
    ties = rows_of(results["RESIDUALS"])
    assert len(ties) == sum(int(rows[SPRING.id][name]) for name in ("ties", "checks", "outliers"))
    plot = gdal.Open(str(tmp_path / "out" / f"residuals_{SPRING.id}.png"))
    assert plot.RasterXSize >= 1100

    results, _ = run(
        provider, COURSE=str(course), BASE=str(tmp_path / "images" / f"{SUMMER.id}.tif"), WRITE=True
    )
    dates = dates_in(course)
    assert (dates[SPRING.id].shift_e_m, dates[SPRING.id].rmse_m) == pytest.approx(
        (found["shift_e_m"], found["rmse_m"]), abs=1e-3
    )
    assert dates[SUMMER.id].rmse_m == 0.0 and dates["grain"].rmse_m is None
    moved = gdal.Open(str(tmp_path / "course_dates" / f"{SPRING.id}_moved.vrt"))
    plain = gdal.Open(str(tmp_path / "images" / f"{SPRING.id}.tif"))
    assert moved.GetGeoTransform()[0] - plain.GetGeoTransform()[0] == pytest.approx(
        dates[SPRING.id].shift_e_m
    )

    from yardwright.store.course_file import open_course
    from yardwright.store.reading import read_features

    with closing(open_course(str(course))) as layers:
        (green,) = read_features(layers, "green")
    assert np.subtract(green.geometry.centroid.coords[0], middle.coords[0]) == pytest.approx(
        (dates[SPRING.id].shift_e_m, dates[SPRING.id].shift_n_m), abs=1e-3
    )


def test_only_those_asked_for(provider, course):
    from qgis.core import QgsProcessingException

    results, said = run(provider, COURSE=str(course), BASE=SUMMER.id, IMAGES=f" {SPRING.id}, ")
    assert list(results["REGISTERED"]) == [SPRING.id] and results["REFUSED"] == {} and said == []
    for asked, reason in (
        ({"BASE": "2019"}, "no image date “2019”"),
        ({"BASE": SUMMER.id, "IMAGES": "2019"}, "no image date “2019”"),
        ({"BASE": SUMMER.id, "IMAGES": SUMMER.id}, "no date to be laid"),
        ({"BASE": SUMMER.id, "IMAGES": "grain"}, "No date could be registered"),
    ):
        with pytest.raises(QgsProcessingException, match=reason):
            run(provider, COURSE=str(course), **asked)


ORIGIN, WORLD, ZOOM = 20037508.342789244, 40075016.685578488, 19


def tiles_of(path, folder):
    """Map tiles of the usual web scheme from an image; the layer’s source."""
    web = gdal.Warp("", path, format="MEM", dstSRS="EPSG:3857", xRes=0.15, yRes=0.15, resampleAlg="cubic")
    g, side = web.GetGeoTransform(), WORLD / 2**ZOOM
    right, low = g[0] + g[1] * web.RasterXSize, g[3] + g[5] * web.RasterYSize
    for column in range(int((g[0] + ORIGIN) / side), int((right + ORIGIN) / side) + 1):
        for row in range(int((ORIGIN - g[3]) / side), int((ORIGIN - low) / side) + 1):
            x, y = column * side - ORIGIN, ORIGIN - row * side
            tile = gdal.Warp(
                "", web, format="MEM", outputBounds=(x, y - side, x + side, y), width=256, height=256,
                resampleAlg="cubic", dstAlpha=True,
            )  # fmt: skip
            os.makedirs(folder / str(ZOOM) / str(column), exist_ok=True)
            gdal.GetDriverByName("PNG").CreateCopy(str(folder / str(ZOOM) / str(column) / f"{row}.png"), tile)
    return f"type=xyz&url=file://{folder}/{{z}}/{{x}}/{{y}}.png&zmin={ZOOM}&zmax={ZOOM}"


def test_tiles_from_the_web_are_fetched_and_registered(provider, course, tmp_path):
    """The spring flight as web tiles, resampled twice by then: found to a tenth of a pixel all the same."""
    from yardwright.store.course_file import open_course
    from yardwright.store.writing import add_features

    source = tiles_of(str(tmp_path / "images" / f"{SPRING.id}.tif"), tmp_path / "tiles")
    with closing(open_course(str(course))) as layers:
        web = Feature(
            "image", None, box(0, 0, 1, 1), attributes={"id": "web", "source": source, "gsd_m": 0.35}
        )
        add_features(layers, [web])
    results, _ = run(provider, COURSE=str(course), BASE=SUMMER.id, IMAGES="web", WRITE=True)
    found = results["REGISTERED"]["web"]
    east, north = SPRING.shift
    assert (found["shift_e_m"], found["shift_n_m"]) == pytest.approx((-east, -north), abs=0.1 * SPRING.gsd)
    assert found["kind"] == "shift"
    assert dates_in(course)["web"].shift_e_m == pytest.approx(found["shift_e_m"], abs=1e-5)
    assert not os.path.exists(tmp_path / "course_dates")


def test_pictures_are_cut_where_the_date_lies(provider, course, tmp_path):
    """A window cut from the spring date once it is registered lies as the same window of the base."""
    from qgis.core import QgsApplication, QgsProcessingContext, QgsProcessingFeedback
    from shapely.geometry import LineString
    from yardwright.imagery.alike import edges_of, likeness, peak_of
    from yardwright.store.course_file import open_course
    from yardwright.store.reading import read_features
    from yardwright.store.writing import add_features

    with closing(open_course(str(course))) as layers:
        (green,) = read_features(layers, "green")
        x, y = green.geometry.centroid.coords[0]
        line = LineString([(x - 60, y - 60), (x, y)])
        add_features(
            layers, [Feature("hole", None, line, seen_in=SUMMER.id, attributes={"number": 1, "par": 3})]
        )

    # Nobody has said whether the dates may be printed.
    rows = ogr.Open(str(course), 1)
    rows.ExecuteSQL("UPDATE image SET print_allowed = NULL")
    rows = None

    class Log(QgsProcessingFeedback):
        def __init__(self):
            super().__init__(False)
            self.said = []

        def pushWarning(self, text):
            self.said.append(text)

        def pushInfo(self, text):
            self.said.append(text)

    def cut(date, out):
        algorithm = QgsApplication.processingRegistry().createAlgorithmById("yardwright:exportwindows")
        log = Log()
        asked = {
            "COURSE": str(course), "IMAGE": date, "SHOWS": ["hole"], "WIDTH_MM": 50, "HEIGHT_MM": 60, "DPI": 150,
            "OUTPUT": str(tmp_path / out), "SCALE": 1500,
        }  # fmt: skip
        _, done = algorithm.run(asked, QgsProcessingContext(), log, {}, False)
        assert done
        pixels = gdal.Open(str(tmp_path / out / "hole_01.tif")).ReadAsArray()
        return np.moveaxis(pixels, 0, -1), log.said

    def beside(picture, other):
        peak = peak_of(likeness(edges_of(picture).within(9), edges_of(other), 9), picture[:, :, 0].size)
        return np.hypot(peak.right, peak.down) * 1500 / 1000 * 25.4 / 150

    spring, summer = (str(tmp_path / "images" / f"{date.id}.tif") for date in (SPRING, SUMMER))
    base, _ = cut(summer, "summer")
    as_it_lies, said = cut(spring, "before")
    assert beside(base, as_it_lies) == pytest.approx(np.hypot(*SPRING.shift), abs=0.15)
    assert any("may be printed" in text for text in said)

    run(provider, COURSE=str(course), BASE=SUMMER.id, IMAGES=SPRING.id, WRITE=True)
    # The green was drawn from spring: it has come along, and the window with it.
    base, _ = cut(summer, "again")
    moved, said = cut(spring, "after")
    assert any("shown where it was registered" in text for text in said)
    assert beside(base, moved) < 0.1
    by_virtual, _ = cut(str(tmp_path / "course_dates" / f"{SPRING.id}_moved.vrt"), "virtual")
    assert np.array_equal(by_virtual, moved)


def test_pictures_of_tiles_are_cut_where_their_date_lies(provider, course, tmp_path, ground):
    """A window of a web date that is moved shows what one of its file does, moved alike."""
    from qgis.core import QgsRasterLayer
    from shapely.geometry import LineString
    from yardwright.guide.rendered import image_source, make_picture
    from yardwright.guide.windows import Panel, plan_window
    from yardwright.imagery.alike import edges_of, likeness, peak_of
    from yardwright.imagery.moves import Move
    from yardwright.measure.hole import play_hole
    from yardwright.model.course import Course, Hole

    path = str(tmp_path / "images" / f"{SPRING.id}.tif")
    layer = QgsRasterLayer(tiles_of(path, tmp_path / "tiles"), "tiles", "wms")
    x, y = ground[2].coords[0]
    hole = Hole(1, LineString([(x - 40, y - 50), (x, y)]), fid=1, par=3)
    green = Feature("green", 1, ground[2].buffer(9), (1,))
    plan_of = plan_window(
        play_hole(Course("Test", plan.CRS, (hole,), (green,)), 1), "hole", Panel(60, 70, 120), plan.CRS
    )
    pictures_made = []
    for name, source, move in (
        ("tiles", image_source(layer), Move(7.5, -4.25)),
        ("file", image_source(QgsRasterLayer(path, "file")), Move(7.5, -4.25)),
        ("unmoved", image_source(QgsRasterLayer(path, "file")), Move()),
    ):
        os.makedirs(tmp_path / f"made_{name}")
        made = make_picture(source, plan_of, str(tmp_path / f"made_{name}"), move=move)
        pictures_made.append(np.moveaxis(gdal.Open(made.tif).ReadAsArray(), 0, -1))
    tiles, file, unmoved = (edges_of(one) for one in pictures_made)
    peak = peak_of(likeness(file.within(9), tiles, 9), pictures_made[0][:, :, 0].size)
    assert np.hypot(peak.right, peak.down) < 0.25
    assert peak_of(likeness(file.within(9), unmoved, 9), 1e4).alike < peak.alike / 2
