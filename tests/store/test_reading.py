"""Layers to a Course: what is drawn comes through as it is, what is bad is told of and never stops it."""

import math
import re

import pytest
from shapely.geometry import LineString, Point, Polygon, box
from yardwright.model.course import Feature, Settings
from yardwright.model.kinds import KINDS, TABLES

from tests.loudly import left_over

BOWTIE = "Polygon ((0 0, 10 10, 10 0, 0 10, 0 0))"


def draw(layers, kind, wkt, **values):
    """Put a feature into a layer's edit buffer, unsaved, with whatever geometry; its id."""
    from qgis.core import QgsFeature, QgsGeometry

    layer = layers[kind]
    if not layer.isEditable():
        assert layer.startEditing()
    feature = QgsFeature(layer.fields())
    for name, value in values.items():
        feature.setAttribute(name, value)
    if wkt is not None:
        geometry = QgsGeometry.fromWkt(wkt) if isinstance(wkt, str) else wkt
        feature.setGeometry(geometry)
    assert layer.addFeature(feature)
    return feature.id()


def read(layers):
    from yardwright.store.reading import read_course

    return read_course(layers)


def test_reads_a_new_course(course):
    read_back = read(course)
    assert (read_back.name, read_back.crs, read_back.problems) == ("Larkmere", "EPSG:32630", ())
    assert [(hole.number, hole.par, hole.name, hole.line) for hole in read_back.holes] == [
        (1, 4, "Burn", None),
        (2, 3, "", None),
    ]
    assert [tee_set.name for tee_set in read_back.tee_sets] == ["Heron", "Wren"]
    assert read_back.scorecard[(1, "Wren")] == pytest.approx(350 / 0.9144)
    assert read_back.settings == Settings()
    assert read_back.features == ()


def test_unsaved_edits_are_read(course):
    fid = draw(course, "bunker", "Polygon ((0 0, 4 0, 4 4, 0 4, 0 0))", holes="3, 1", label="Deep")
    bunker = read(course).features[0]
    assert fid < 0 and bunker.fid == fid
    assert bunker == Feature("bunker", fid, bunker.geometry, (3, 1), "Deep", view="clear")
    assert bunker.geometry.equals(box(0, 0, 4, 4))


def test_null_is_an_absent_value(course):
    from qgis.core import NULL

    draw(course, "marker", "Point (1 2)", hole=NULL, states_yd=150.0, view=NULL, states_to=NULL)
    marker = read(course).features[0]
    assert dict(marker.attributes) == {"states_yd": 150.0}
    assert (marker.holes, marker.view, marker.label, marker.remark) == ((), "clear", "", "")


def test_kinds_with_one_hole(course):
    draw(course, "plate", "Point (1 2)", hole=7, tee_set="Heron")
    plate = read(course).features[0]
    assert plate.holes == (7,)
    assert plate.get("hole") == 7 and plate.get("tee_set") == "Heron"


def test_three_dimensions_and_curves_and_single_parts(course):
    draw(course, "target", "PointZM (1 2 3 4)")
    draw(course, "green", "MultiPolygon (((0 0, 4 0, 4 4, 0 4, 0 0)))")
    draw(course, "tee", "CurvePolygon (CircularString (10 0, 0 10, -10 0, 0 -10, 10 0))")
    draw(course, "path", "MultiLineString ((0 0, 5 0), (5 0, 9 3))")
    by_kind = {feature.kind: feature.geometry for feature in read(course).features}
    assert by_kind["target"].wkt == Point(1, 2).wkt
    assert by_kind["green"].geom_type == "Polygon"
    assert by_kind["tee"].area == pytest.approx(math.pi * 100, rel=1e-3)  # a circle of radius 10
    assert by_kind["path"].equals(LineString([(0, 0), (5, 0), (9, 3)]))
    assert by_kind["path"].geom_type == "LineString"


def test_several_parts(course):
    draw(course, "bunker", "MultiPolygon (((0 0, 4 0, 4 4, 0 0)), ((10 0, 14 0, 14 4, 10 0)))")
    draw(course, "tree", "MultiPoint ((1 1), (2 2))")
    draw(course, "path", "MultiLineString ((0 0, 5 0), (7 0, 9 3))")
    read_back = read(course)
    kinds = [(feature.kind, feature.geometry.geom_type) for feature in read_back.features]
    assert sorted(kinds) == [
        ("bunker", "MultiPolygon"),
        ("path", "MultiLineString"),
        ("tree", "Point"),
        ("tree", "Point"),
    ]
    assert read_back.problems == ()


def test_a_self_crossing_outline_is_mended(course):
    draw(course, "green", BOWTIE)
    green = read(course).features[0]
    assert green.geometry.is_valid and green.geometry.area == pytest.approx(50)  # two triangles of 25
    assert "crosses or touches itself" in green.mended


def test_an_open_ring_is_closed(course):
    from qgis.core import QgsGeometry, QgsLineString, QgsPoint, QgsPolygon

    ring = QgsLineString([QgsPoint(0, 0), QgsPoint(4, 0), QgsPoint(4, 4), QgsPoint(0, 4)])
    draw(course, "green", QgsGeometry(QgsPolygon(ring)))
    assert read(course).features[0].geometry.equals(box(0, 0, 4, 4))


def open_ring_wkb():
    """A polygon whose ring is not closed, as a careless program writes it (OGC 06-103r4, 8.2 WKB)."""
    import struct

    points = [(0, 0), (4, 0), (4, 4), (0, 4)]
    head = struct.pack("<BIII", 1, 3, 1, len(points))
    return head + b"".join(struct.pack("<dd", *point) for point in points)


def test_a_ring_stored_open_is_closed(course):
    from qgis.core import QgsGeometry

    geometry = QgsGeometry()
    geometry.fromWkb(open_ring_wkb())
    draw(course, "green", geometry)
    assert read(course).features[0].geometry.equals(box(0, 0, 4, 4))


@pytest.mark.parametrize(
    ("kind", "wkt", "reason"),
    [
        ("green", None, "no geometry"),
        ("green", "Polygon EMPTY", "no geometry"),
        ("green", "LineString (0 0, 1 1)", "not an area"),
        ("green", "Polygon ((0 0, 5 0, 9 0, 0 0))", "encloses nothing"),
        ("path", "LineString (1 1, 1 1)", "not a line of two points"),
        ("path", "LineString (1 1)", "too few points|not a line"),
        ("target", "Polygon ((0 0, 5 0, 9 9, 0 0))", "not a point"),
    ],
)
def test_what_cannot_be_used_is_left_out_and_named(course, kind, wkt, reason):
    bad = draw(course, kind, wkt)
    draw(course, "tee", "Polygon ((0 0, 4 0, 4 4, 0 0))")
    read_back = read(course)
    assert [feature.kind for feature in read_back.features] == ["tee"]
    (problem,) = read_back.problems
    assert problem.startswith(f"Layer {kind}, feature {bad}: ") and re.search(reason, problem)


@pytest.mark.parametrize("value", [math.nan, math.inf, -math.inf])
def test_coordinates_that_are_no_numbers(course, value):
    from qgis.core import QgsGeometry, QgsLineString, QgsPoint, QgsPolygon

    ring = [QgsPoint(0, 0), QgsPoint(4, value), QgsPoint(4, 4), QgsPoint(0, 0)]
    draw(course, "green", QgsGeometry(QgsPolygon(QgsLineString(ring))))
    draw(course, "path", QgsGeometry(QgsLineString(ring)))
    read_back = read(course)
    assert read_back.features == ()
    assert len(read_back.problems) == 2
    assert all("not a number" in problem or "no geometry" in problem for problem in read_back.problems)


def test_doubtful_values_are_remarks(course):
    draw(course, "bunker", "Polygon ((0 0, 4 0, 4 4, 0 0))", holes="third", view="foggy")
    draw(course, "marker", "Point (1 2)", states_yd=9000.0, states_to="flag")
    bunker, marker = read(course).features
    assert (bunker.holes, bunker.view) == ((), "clear")
    assert "“third” is not a hole number" in bunker.remark and "view “foggy”" in bunker.remark
    assert marker.get("states_yd") == 9000.0 and marker.get("states_to") is None
    assert "states_yd 9000.0 is not between 1 and 700" in marker.remark


def test_a_figure_that_is_no_number_counts_as_empty(course):
    draw(course, "marker", "Point (1 2)", states_yd=math.nan)
    marker = read(course).features[0]
    assert marker.get("states_yd") is None and "states_yd" in marker.remark


def test_two_holes_of_one_number(course):
    """The one with a line is kept; of two with one, the first."""
    line = draw(course, "hole", "LineString (0 0, 100 0)", number=1, par=5)
    draw(course, "hole", None, number=2)
    draw(course, "hole", "LineString (0 0, 100 0)")
    draw(course, "hole", "LineString (0 0, 100 0)", number=100)
    read_back = read(course)
    assert [(hole.number, hole.fid, hole.par) for hole in read_back.holes] == [(1, line, 5), (2, 2, 3)]
    assert sum("there is another hole" in problem for problem in read_back.problems) == 2
    assert sum("no hole number" in problem for problem in read_back.problems) == 2


def test_a_line_of_play_in_two_parts(course):
    draw(course, "hole", "MultiLineString ((0 0, 100 0), (300 0, 500 0))", number=5)
    hole = read(course).hole(5)
    assert hole.line.equals(LineString([(300, 0), (500, 0)]))
    assert "several parts" in hole.mended


def test_tables_that_contradict_themselves(course):
    draw(course, "tee_set", None, name="Heron")
    draw(course, "tee_set", None)
    draw(course, "scorecard", None, hole=1, tee_set="Heron", yards=1.5)
    draw(course, "scorecard", None, hole=1)
    draw(course, "image", "Polygon ((0 0, 4 0, 4 4, 0 0))", id="2023", gsd_m=0.1, taken="2023-06-01")
    draw(course, "image", "Polygon ((0 0, 4 0, 4 4, 0 0))", id="2023", gsd_m=0.2)
    read_back = read(course)
    assert len(read_back.tee_sets) == 2
    assert len(read_back.problems) == 5
    ((image,), number) = (read_back.images, len(read_back.scorecard))
    assert (image.id, number) == ("2023", 3)


def test_what_could_not_be_read_is_known_by_code_in_any_language(course, loudly):
    """What ``measure.checks`` makes of it; the words are only shown."""
    from yardwright.measure.checks import check_course

    draw(course, "hole", "LineString (0 0, 100 0)", number=1)
    second = draw(course, "hole", "LineString (0 0, 100 0)", number=1)
    empty = draw(course, "bunker", None)
    odd = draw(course, "green", "LineString (0 0, 1 1)")
    draw(course, "bunker", BOWTIE, view="FOGGY")
    draw(course, "hole", "MultiLineString ((0 0, 100 0), (300 0, 500 0))", number=5)
    draw(course, "tee_set", None, name="HERON", sort="FIRST")
    read_back = read(course)
    names = [name for kind in KINDS + TABLES for name in (kind.name, *(f.name for f in kind.fields))]
    texts = [
        *read_back.problems,
        *(f"{f.remark} {f.mended}" for f in (*read_back.features, *read_back.holes)),
    ]
    assert not [left for text in texts for left in left_over(text, *names)]
    about = {problem.code: (problem.kind, problem.fid) for problem in read_back.problems if problem.code}
    assert about["empty"] == ("bunker", empty) and about["second"] == ("hole", second)
    assert ("green", odd) in [(p.kind, p.fid) for p in read_back.problems if p.code == "left_out"]
    found = {finding.check for finding in check_course(read_back)}
    assert {"empty", "number_twice", "unread", "crossing", "value"} <= found


def test_settings_that_cannot_be(course):
    layer = course["course_info"]
    row = next(layer.getFeatures())
    layer.startEditing()
    names = layer.fields().names()
    for name, value in (
        ("unit", "furlong"),
        ("corridor_yd", -3.0),
        ("height_m", 120.5),
        ("layup_yd", "100,x"),
    ):
        layer.changeAttributeValue(row.id(), names.index(name), value)
    read_back = read(course)
    assert read_back.settings == Settings(height_m=120.5)
    assert any("unit “furlong”" in problem for problem in read_back.problems)
    assert any("corridor_yd -3.0 was not used" in problem for problem in read_back.problems)
    assert any("“x” is not a distance. 100,125,150,200 counts." in problem for problem in read_back.problems)


def test_a_crs_without_a_number_is_wkt(qgis_app):
    from pyproj import CRS
    from qgis.core import QgsCoordinateReferenceSystem
    from yardwright.store.reading import crs_text

    proj = "+proj=tmerc +lat_0=56.34 +lon_0=-2.8 +k=1 +ellps=WGS84 +units=m +type=crs"
    text = crs_text(QgsCoordinateReferenceSystem.fromProj(proj))
    assert CRS(text).is_projected
    assert crs_text(QgsCoordinateReferenceSystem("EPSG:27700")) == "EPSG:27700"


def test_windows_are_read_apart(course):
    from yardwright.store.reading import read_features

    draw(course, "window", "Polygon ((0 0, 4 0, 4 4, 0 4, 0 0))", hole=3, shows="green", scale=480.0)
    assert read(course).features == ()
    (window,) = read_features(course, "window")
    assert (window.holes, window.get("hole"), window.get("shows")) == ((3,), 3, "green")


def test_the_shapely_1_way_gives_the_same(course, monkeypatch):
    """Both branches of the checks agree, whichever shapely is installed."""
    from yardwright.store import reading

    draw(course, "green", BOWTIE)
    draw(course, "bunker", "Polygon ((0 0, 4 0, 4 4, 0 0))")
    draw(course, "path", "LineString (1 1, 1 1)")
    draw(course, "tee", None)
    now = read(course)
    monkeypatch.setattr(reading, "_SHAPELY_2", False)
    then = read(course)
    assert now.problems == then.problems and len(now.problems) == 2
    assert [f.geometry.equals(g.geometry) for f, g in zip(now.features, then.features)] == [True, True]
    assert isinstance(then.features[1].geometry, Polygon)
