"""measurecourse and checkmarkers, as Processing runs them, on a hole laid out with geographiclib.

Every expected length comes from the geodesic (geographiclib), by which the hole is laid out; column names are
the public ones, word for word. A 150 yd marker that is right and a 100 yd marker that stands four yards
out: common practice, no source.
"""

import csv
import os
from dataclasses import dataclass

import pytest
from geographiclib.geodesic import Geodesic
from qgis.core import QgsApplication, QgsProcessingContext, QgsProcessingFeedback

YARD = 0.9144
TEE = (56.3, -2.8)  # latitude, longitude
PLAY = 37.0  # azimuth at the tee
LENGTH_YD = 400.0
GREEN_RADIUS = 12.0
COLUMNS = {
    "lengths": "hole tee_set length_yd plus_minus_yd scorecard_yd difference_yd par par_check",
    "greens": "hole approach_from approach_azimuth depth_yd width_yd overall_depth_yd overall_width_yd "
    "area_sqyd chords remark",
    "distances": "hole tee_set kind feature_id label side reach_yd clear_yd enter_yd leave_yd aside_yd "
    "station_near_yd station_far_yd short_of_green_yd forced_carry middle_yd plus_minus_yd remark",
    "heights": "hole tee_set tee_height_m green_height_m rise_m length_yd plays_yd turn_heights_m "
    "approach_height_m front_height_m back_height_m remark",
    "markers": "hole marker_id states_yd states_to measured_yd error_yd verdict proposed_x proposed_y "
    "move_m move_azimuth",
}


def ahead(place, azimuth, metres):
    """``((latitude, longitude), azimuth there)`` of the geodesic's end."""
    end = Geodesic.WGS84.Direct(*place, azimuth, metres)
    return (end["lat2"], end["lon2"]), end["azi2"]


def circle(centre, radius, azimuth=0.0, corners=72):
    return [ahead(centre, azimuth + 360 * k / corners, radius)[0] for k in range(corners)]


@dataclass
class Laid:
    """The course file, and where things are by the geodesic: (latitude, longitude), azimuths."""

    path: str
    green: tuple
    arrival: float
    bunker: list
    near_marker: tuple


@pytest.fixture
def laid(qgis_app, tmp_path):
    from pyproj import Transformer
    from shapely.geometry import LineString, Point, Polygon
    from yardwright.model.course import Feature
    from yardwright.store.course_file import create_course, open_course
    from yardwright.store.writing import add_features

    to_utm = Transformer.from_crs("EPSG:4326", "EPSG:32630", always_xy=True)

    def utm(places):
        return [to_utm.transform(longitude, latitude) for latitude, longitude in places]

    green, arrival = ahead(TEE, PLAY, LENGTH_YD * YARD)
    station, play_there = ahead(TEE, PLAY, 250 * YARD)
    bunker = circle(ahead(station, play_there + 90, 20 * YARD)[0], 4.0)
    right_marker = ahead(green, arrival + 180, 150 * YARD)[0]
    near_marker = ahead(green, arrival + 180, 96 * YARD)[0]
    card = tmp_path / "card.csv"
    card.write_text("hole,par,stroke_index,name,White\n1,4,1,Burn,398\n", encoding="utf-8")
    path = str(tmp_path / "laid.gpkg")
    create_course(path, "Laid Out Links", "EPSG:32630", scorecard=str(card))
    with open_course(path) as layers:
        add_features(
            layers,
            [
                Feature("hole", None, LineString(utm([TEE, green])), attributes={"number": 1}),
                Feature("plate", None, Point(utm([TEE])[0]), attributes={"hole": 1, "tee_set": "White"}),
                Feature("green", None, Polygon(utm(circle(green, GREEN_RADIUS, arrival))), holes=(1,)),
                Feature("bunker", None, Polygon(utm(bunker)), holes=(1,), label="=Deep"),
                Feature(
                    "marker", None, Point(utm([right_marker])[0]), attributes={"hole": 1, "states_yd": 150}
                ),
                Feature(
                    "marker", None, Point(utm([near_marker])[0]), attributes={"hole": 1, "states_yd": 100}
                ),
            ],
        )
    return Laid(path, green, arrival, bunker, near_marker)


def run(name, parameters, feedback=None):
    """``(results, went well, log)`` of an algorithm run as Processing does."""
    feedback = feedback or QgsProcessingFeedback(False)
    algorithm = QgsApplication.processingRegistry().createAlgorithmById(f"yardwright:{name}")
    context = QgsProcessingContext()
    good, reason = algorithm.checkParameterValues(parameters, context)
    assert good, reason
    results, ok = algorithm.run(parameters, context, feedback)
    return results, ok, feedback.textLog()


def rows_of(path):
    with open(path, encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def test_figures_are_those_of_the_geodesic(provider, laid, tmp_path):
    results, ok, log = run("measurecourse", {"COURSE": laid.path, "OUTPUT": str(tmp_path / "out")})
    assert ok, log
    assert results["OUTPUT"] == str(tmp_path / "out")
    assert sorted(os.listdir(tmp_path / "out")) == [
        f"{name}.csv" for name in sorted(("lengths", "greens", "distances", "fairways", "doglegs", "layups"))
    ]

    (length,) = rows_of(results["LENGTHS"])
    assert float(length["length_yd"]) == pytest.approx(LENGTH_YD, abs=0.0051)
    assert float(length["difference_yd"]) == pytest.approx(LENGTH_YD - 398, abs=0.0051)

    (green,) = rows_of(results["GREENS"])
    assert float(green["approach_azimuth"]) == pytest.approx(laid.arrival, abs=0.0051)
    assert float(green["depth_yd"]) == pytest.approx(2 * GREEN_RADIUS / YARD, abs=0.0051)
    assert float(green["width_yd"]) == pytest.approx(2 * GREEN_RADIUS / YARD, abs=0.0051)

    distances = {row["kind"]: row for row in rows_of(results["DISTANCES"])}
    to_bunker = [Geodesic.WGS84.Inverse(*TEE, *place)["s12"] / YARD for place in laid.bunker]
    assert float(distances["bunker"]["reach_yd"]) == pytest.approx(min(to_bunker), abs=0.02)
    assert float(distances["bunker"]["clear_yd"]) == pytest.approx(max(to_bunker), abs=0.0051)
    assert distances["bunker"]["side"] == "right"
    assert float(distances["green"]["reach_yd"]) == pytest.approx(LENGTH_YD - GREEN_RADIUS / YARD, abs=0.0051)
    assert float(distances["green"]["middle_yd"]) == pytest.approx(LENGTH_YD, abs=0.0051)
    assert float(distances["green"]["clear_yd"]) == pytest.approx(LENGTH_YD + GREEN_RADIUS / YARD, abs=0.0051)


def test_columns_have_their_public_names(provider, laid, rising, tmp_path):
    parameters = {"COURSE": laid.path, "TERRAIN": rising, "OUTPUT": str(tmp_path / "out")}
    results, ok, log = run("measurecourse", parameters)
    more, fine, further = run("checkmarkers", {"COURSE": laid.path, "OUTPUT": str(tmp_path / "out")})
    assert ok and fine, log + further
    results.update(more)
    for table, names in COLUMNS.items():
        header = rows_of(results[table.upper()])[0].keys()
        assert [name for name in header if name in names.split()] == names.split()


def test_a_text_that_a_spreadsheet_would_run_is_guarded(provider, laid, tmp_path):
    results, ok, log = run("measurecourse", {"COURSE": laid.path, "OUTPUT": str(tmp_path / "out")})
    assert ok, log
    labels = [row["label"] for row in rows_of(results["DISTANCES"]) if row["kind"] == "bunker"]
    assert labels and "Deep" in labels[0]
    assert labels[0][0] not in "=+-@"


def test_markers_off_and_true(provider, laid, tmp_path):
    results, ok, log = run("checkmarkers", {"COURSE": laid.path, "OUTPUT": str(tmp_path / "out")})
    assert ok, log
    rows = {row["states_yd"]: row for row in rows_of(results["MARKERS"])}
    assert rows["150.00"]["verdict"] == "true"
    assert float(rows["150.00"]["error_yd"]) == pytest.approx(0, abs=0.0051)
    off = rows["100.00"]
    assert off["verdict"] == "off"
    assert float(off["error_yd"]) == pytest.approx(4, abs=0.0051)
    assert float(off["move_m"]) == pytest.approx(4 * YARD, abs=0.0051)
    assert float(off["move_azimuth"]) == pytest.approx(laid.arrival + 180, abs=0.02)

    from pyproj import Transformer

    to_degrees = Transformer.from_crs("EPSG:32630", "EPSG:4326", always_xy=True)
    longitude, latitude = to_degrees.transform(float(off["proposed_x"]), float(off["proposed_y"]))
    back = Geodesic.WGS84.Inverse(latitude, longitude, *laid.green)
    assert back["s12"] == pytest.approx(100 * YARD, abs=0.002)
    assert "1 of them off" in log


def test_tolerance_decides(provider, laid, tmp_path):
    parameters = {"COURSE": laid.path, "TOLERANCE": 5, "OUTPUT": str(tmp_path / "out")}
    results, ok, log = run("checkmarkers", parameters)
    assert ok, log
    assert {row["verdict"] for row in rows_of(results["MARKERS"])} == {"true"}


def test_without_a_tolerance_the_course_decides(provider, laid, tmp_path):
    from yardwright.store.course_file import open_course
    from yardwright.store.writing import set_course_info

    with open_course(laid.path) as layers:
        set_course_info(layers, {"marker_tolerance_yd": 4.5})
    results, ok, log = run("checkmarkers", {"COURSE": laid.path, "OUTPUT": str(tmp_path / "out")})
    assert ok, log
    assert {row["verdict"] for row in rows_of(results["MARKERS"])} == {"true"}


def test_forms_asked_for(provider, laid, tmp_path):
    parameters = {"COURSE": laid.path, "FORMS": ["xlsx", "gpkg"], "OUTPUT": str(tmp_path / "out")}
    results, ok, log = run("checkmarkers", parameters)
    assert ok, log
    assert sorted(os.listdir(tmp_path / "out")) == ["markers.gpkg", "markers.xlsx"]
    assert results["MARKERS"].endswith("markers.xlsx")


def raster(path, heights, corner, bands=1):
    """A GeoTIFF of heights about the hole, 10 m pixels in UTM, from its top left corner."""
    from osgeo import gdal, osr

    srs = osr.SpatialReference()
    srs.ImportFromEPSG(32630)
    made = gdal.GetDriverByName("GTiff").Create(str(path), 100, 100, bands, gdal.GDT_Float64)
    made.SetGeoTransform((corner[0], 10, 0, corner[1], 0, -10))
    made.SetSpatialRef(srs)
    for band in range(1, bands + 1):
        made.GetRasterBand(band).WriteArray(heights)
        made.GetRasterBand(band).SetUnitType("m")
    made.FlushCache()
    return str(path)


@pytest.fixture
def rising(laid, tmp_path):
    """Ground that rises northwards, 2 in 100 of UTM, from 20 m at the tee."""
    import numpy as np
    from pyproj import Transformer

    east, north = Transformer.from_crs(4326, 32630, always_xy=True).transform(TEE[1], TEE[0])
    rows = np.arange(100)[:, None] * np.ones(100)
    return raster(tmp_path / "ground.tif", 20 + (495 - 10 * rows) * 0.02, (east - 500, north + 500))


def test_heights_of_a_terrain(provider, laid, rising, tmp_path):
    """The rise is 2 in 100 of the UTM northing between the geodesic's ends; "plays" is the length and the
    rise (common practice, no source), and the measured length stays as it is."""
    from pyproj import Transformer

    parameters = {"COURSE": laid.path, "TERRAIN": rising, "OUTPUT": str(tmp_path / "out")}
    results, ok, log = run("measurecourse", parameters)
    assert ok, log
    (row,) = rows_of(results["HEIGHTS"])
    assert list(row) == COLUMNS["heights"].split()
    to_utm = Transformer.from_crs(4326, 32630, always_xy=True)
    rise = 0.02 * (to_utm.transform(*laid.green[::-1])[1] - to_utm.transform(*TEE[::-1])[1])
    assert 5 < rise < 7
    assert float(row["tee_height_m"]) == pytest.approx(20, abs=0.0051)
    assert float(row["green_height_m"]) == pytest.approx(20 + rise, abs=0.0051)
    assert float(row["rise_m"]) == pytest.approx(rise, abs=0.0051)
    assert float(row["length_yd"]) == pytest.approx(LENGTH_YD, abs=0.0051)
    assert float(row["plays_yd"]) == pytest.approx(LENGTH_YD + rise / YARD, abs=0.0051)
    assert row["remark"] == ""
    assert "heights: 1 rows" in log


def test_a_terrain_changes_no_other_file(provider, laid, rising, tmp_path):
    for folder, more in (("without", {}), ("with", {"TERRAIN": rising})):
        _, ok, log = run("measurecourse", {"COURSE": laid.path, "OUTPUT": str(tmp_path / folder), **more})
        assert ok, log
    names = sorted(os.listdir(tmp_path / "without"))
    assert sorted(os.listdir(tmp_path / "with")) == sorted([*names, "heights.csv"])
    for name in names:
        assert (tmp_path / "with" / name).read_bytes() == (tmp_path / "without" / name).read_bytes()


def test_a_terrain_that_lies_elsewhere_is_remarked_on(provider, laid, tmp_path):
    import numpy as np

    far = raster(tmp_path / "far.tif", np.zeros((100, 100)), (200_000, 5_000_000))
    parameters = {"COURSE": laid.path, "TERRAIN": far, "OUTPUT": str(tmp_path / "out")}
    results, ok, log = run("measurecourse", parameters)
    assert ok, log
    assert "heights, hole 1: the terrain does not reach this hole" in log
    (row,) = rows_of(results["HEIGHTS"])
    assert (row["tee_height_m"], row["rise_m"], row["plays_yd"]) == ("", "", "")


def test_a_picture_is_no_terrain(provider, laid, tmp_path):
    import numpy as np
    from qgis.core import QgsRasterLayer

    picture = raster(tmp_path / "picture.tif", np.zeros((100, 100)), (0, 0), bands=3)
    tiles = QgsRasterLayer("type=xyz&url=http://localhost/{z}/{x}/{y}.png&zmin=0&zmax=5", "Tiles", "wms")
    assert tiles.isValid()
    for terrain, said in ((picture, "holds a picture"), (tiles, "from a server")):
        parameters = {"COURSE": laid.path, "TERRAIN": terrain, "OUTPUT": str(tmp_path / "out")}
        _, ok, log = run("measurecourse", parameters)
        assert not ok
        assert said in log and "Traceback" not in log
        assert not (tmp_path / "out").exists()


@pytest.mark.parametrize(
    ("change", "said"),
    [
        ({"HOLES": "1,x"}, "is not a hole number"),
        ({"COURSE": "nowhere.gpkg"}, "nowhere.gpkg"),
        ({"COURSE": "postgres:club:course"}, "database"),
    ],
    ids=["holes", "missing course", "database"],
)
def test_a_wrong_parameter_is_said_and_nothing_written(provider, laid, tmp_path, change, said):
    parameters = {"COURSE": laid.path, "OUTPUT": str(tmp_path / "out"), **change}
    _, ok, log = run("measurecourse", parameters)
    assert not ok
    assert said in log
    assert "Traceback" not in log
    assert not (tmp_path / "out").exists()


def test_a_folder_that_cannot_be_made_is_said(provider, laid, tmp_path):
    (tmp_path / "file").write_text("in the way")
    _, ok, log = run("measurecourse", {"COURSE": laid.path, "OUTPUT": str(tmp_path / "file" / "out")})
    assert not ok
    assert "cannot be made" in log
    assert "Traceback" not in log


def test_cancelled_writes_nothing(provider, laid, tmp_path):
    feedback = QgsProcessingFeedback(False)
    feedback.cancel()
    run("measurecourse", {"COURSE": laid.path, "OUTPUT": str(tmp_path / "out")}, feedback)
    assert not os.path.exists(tmp_path / "out") or not os.listdir(tmp_path / "out")


def test_each_parameter_has_help_and_each_algorithm_an_icon(provider):
    for algorithm in provider.algorithms():
        assert not algorithm.icon().isNull()
        assert os.path.isfile(algorithm.svgIconPath()), algorithm.id()
        for parameter in algorithm.parameterDefinitions():
            assert parameter.help(), f"{algorithm.id()} {parameter.name()}"
            assert parameter.help() in algorithm.shortHelpString()


def test_only_the_public_parameters_are_compulsory(provider):
    from qgis.core import QgsProcessingParameterDefinition

    optional = QgsProcessingParameterDefinition.Flag.FlagOptional
    may_be_asked = {
        "startcourse": {"COURSE", "NAME", "CRS"},
        "importfeatures": {"COURSE", "SOURCE"},
        "measurecourse": {"COURSE", "OUTPUT"},
        "checkmarkers": {"COURSE", "TOLERANCE", "OUTPUT"},
        "exportwindows": {"COURSE", "IMAGE", "SHOWS", "WIDTH_MM", "HEIGHT_MM", "DPI", "OUTPUT"},
    }
    for name, allowed in may_be_asked.items():
        algorithm = provider.algorithm(name)
        compulsory = {
            parameter.name()
            for parameter in algorithm.parameterDefinitions()
            if not parameter.flags() & optional and parameter.defaultValue() is None
        }
        assert compulsory <= allowed, name
