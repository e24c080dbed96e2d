"""Candidates into a course file: checked, written once, given to holes, reported."""

import math
from pathlib import Path

import pytest
from qgis.core import QgsCoordinateReferenceSystem
from shapely.affinity import rotate, translate
from shapely.geometry import GeometryCollection, LineString, MultiPolygon, Point, Polygon, box
from yardwright.model.errors import YardwrightError
from yardwright.store import bring_in as module
from yardwright.store.bring_in import Candidate, Found, LeftOut, bring_in, close_to_area
from yardwright.store.course_file import create_course, open_course
from yardwright.store.openstreetmap import read_openstreetmap
from yardwright.store.reading import read_course

DEL_RIO = Path(__file__).resolve().parents[3] / "shared" / "data" / "osm" / "delrio.osm"
CRS = "EPSG:32632"
EAST, NORTH = 500000.0, 1105000.0


def at(shape, east=0.0, north=0.0):
    """A shape drawn around 0, 0 where the course lies."""
    return translate(shape, EAST + east, NORTH + north)


def candidate(kind, shape, what="thing", origin=None, holes=(), lasting=False, **attributes):
    return Candidate(kind, shape, origin or what, what, attributes, holes, lasting)


LINE = at(LineString([(0, 0), (0, 200), (20, 380)]))
GREEN = at(Point(20, 380).buffer(12))
TEE = at(box(-5, -8, 5, 4))
HOLE = (
    candidate("hole", LINE, "line", number=1, par=4),
    candidate("tee", TEE, "tee"),
    candidate("green", GREEN, "green"),
    candidate("bunker", at(Point(12, 350).buffer(4)), "bunker"),
)


@pytest.fixture
def course_file(qgis_app, tmp_path):
    path = str(tmp_path / "course.gpkg")
    create_course(path, "Invented Links", CRS)
    return path


def into(path, *candidates, left_out=(), remarks=()):
    with open_course(path) as layers:
        return bring_in(layers, Found(tuple(candidates), left_out, remarks))


def course_of(path):
    with open_course(path) as layers:
        return read_course(layers)


def of_kind(course, kind):
    return [feature for feature in course.features if feature.kind == kind]


def test_a_hole_with_its_features(course_file):
    report = into(course_file, *HOLE)
    assert dict(report.counts) == {"hole": 1, "tee": 1, "green": 1, "bunker": 1}
    assert report.total == 4
    course = course_of(course_file)
    assert (course.hole(1).par, course.hole(1).line.equals(LINE)) == (4, True)
    assert [(feature.kind, feature.holes) for feature in course.features] == [
        ("tee", (1,)),
        ("green", (1,)),
        ("bunker", (1,)),
    ]
    assert of_kind(course, "bunker")[0].get("origin") == "bunker"


def test_the_same_import_twice_makes_no_doubles(course_file):
    into(course_file, *HOLE)
    before = course_of(course_file)
    report = into(course_file, *HOLE)
    assert report.total == 0
    assert [what for what, _ in report.left_out] == ["line", "tee", "green", "bunker"]
    assert {why for _, why in report.left_out} == {"the course already has it"}
    assert len(course_of(course_file).features) == len(before.features)


def test_the_same_outline_drawn_from_elsewhere_is_a_double(course_file):
    square = box(0, 0, 10, 10)
    from_another_corner = Polygon([(10, 10), (0, 10), (0, 0), (10, 0)])
    into(course_file, candidate("bunker", at(square), "one"))
    report = into(
        course_file,
        candidate("bunker", at(from_another_corner, 0.005), "the same"),
        candidate("bunker", at(square, 0.02), "moved 2 cm"),
        candidate("green", at(square), "another kind"),
        candidate("bunker", at(rotate(square, 45)), "another shape"),
    )
    assert [what for what, _ in report.left_out] == ["the same"]


def test_doubles_inside_one_source(course_file):
    report = into(course_file, *[candidate("bunker", at(box(0, 0, 5, 5)), f"bunker {n}") for n in (1, 2)])
    assert [what for what, _ in report.left_out] == ["bunker 2"]


def test_a_lasting_origin_is_a_double_whatever_its_outline(course_file):
    into(course_file, candidate("bunker", at(box(0, 0, 5, 5)), origin="osm:way/1", lasting=True))
    moved = at(box(50, 0, 55, 5))
    assert into(course_file, candidate("bunker", moved, origin="osm:way/1", lasting=True)).total == 0
    # A file's row numbers last no longer than the file: the same name again may be another thing.
    into(course_file, candidate("bunker", at(box(0, 30, 5, 35)), origin="plan.shp/1"))
    assert into(course_file, candidate("bunker", moved, origin="plan.shp/1")).total == 1


def test_one_tee_used_by_two_sets_is_not_a_double(course_file):
    report = into(
        course_file,
        candidate("tee", TEE, "white", tee_set="White"),
        candidate("tee", TEE, "yellow", tee_set="Yellow"),
        candidate("tee", TEE, "white again", tee_set="white"),
    )
    assert [what for what, _ in report.left_out] == ["white again"]


def scorecard(tmp_path):
    path = tmp_path / "card.csv"
    path.write_text("hole,par,stroke_index,name,White\n1,4,7,Heather,385\n2,3,15,,160\n", encoding="utf-8")
    return str(path)


def test_a_line_goes_into_the_row_a_scorecard_made(qgis_app, tmp_path):
    path = str(tmp_path / "card.gpkg")
    create_course(path, "Invented Links", CRS, scorecard(tmp_path))
    report = into(
        path,
        candidate("hole", LINE, "line", number=1, par=5, name="Gorse", description="Left is safe."),
        candidate("tee", TEE, "tee", tee_set="white"),
    )
    assert report.counts["hole"] == 1
    course = course_of(path)
    assert [hole.number for hole in course.holes] == [1, 2]
    hole = course.hole(1)
    assert hole.line.equals(LINE)
    assert (hole.par, hole.stroke_index, hole.name, hole.description) == (4, 7, "Heather", "Left is safe.")
    assert course.problems == ()
    assert sorted(report.remarks) == [
        "line: name is Gorse there and Heather in the course, which stays.",
        "line: par is 5 there and 4 in the course, which stays.",
    ]
    # The card's own spelling, so that the tee belongs to that set.
    assert of_kind(course, "tee")[0].get("tee_set") == "White"


def test_a_second_line_for_a_hole_is_left_out(course_file):
    into(course_file, HOLE[0])
    report = into(course_file, candidate("hole", at(LineString([(0, 0), (9, 300)])), "other", number=1))
    assert report.left_out == (LeftOut("other", "hole 1 already has a line"),)


def test_of_two_lines_in_one_source_the_longest_is_taken(course_file):
    short = candidate("hole", at(LineString([(0, 100), (0, 380)])), "from the forward tee", number=1)
    report = into(course_file, short, HOLE[0])
    assert [what for what, _ in report.left_out] == ["from the forward tee"]
    assert "EXTENT" in report.left_out[0].why
    assert course_of(course_file).hole(1).line.equals(LINE)


def test_a_line_without_a_number_is_left_out(course_file):
    report = into(course_file, candidate("hole", LINE, "somewhere"))
    assert report.left_out == (LeftOut("somewhere", "no hole number can be read from it"),)


def test_a_line_drawn_from_green_to_tee_is_turned_round(course_file):
    backwards = LineString(list(LINE.coords)[::-1])
    report = into(course_file, candidate("hole", backwards, "line", number=1), HOLE[2])
    assert course_of(course_file).hole(1).line.coords[0] == LINE.coords[0]
    assert "turned round" in report.remarks[0]


def test_odd_lines_are_taken_with_a_remark(course_file):
    crossing = at(LineString([(0, 0), (0, 100), (50, 50), (-50, 50)]))
    round_trip = at(LineString([(200, 0), (200, 100), (250, 50), (200, 0)]))
    report = into(
        course_file,
        candidate("hole", crossing, "crossing", number=1),
        candidate("hole", round_trip, "round", number=2),
    )
    assert report.counts["hole"] == 2
    assert [remark.split(":")[0] for remark in report.remarks] == ["crossing", "round"]


def test_numbers_a_source_gives_are_kept(course_file):
    into(
        course_file,
        HOLE[0],
        candidate("bunker", at(Point(12, 350).buffer(4)), holes=(7, 8)),
        candidate("marker", at(Point(0, 230)), "post", holes=(7,), states_yd=150.0),
        candidate("marker", at(Point(3, 230)), "other post", states_yd=150.0),
    )
    course = course_of(course_file)
    assert of_kind(course, "bunker")[0].holes == (7, 8)
    assert [(m.holes, m.get("states_yd")) for m in of_kind(course, "marker")] == [
        ((7,), 150.0),
        ((1,), 150.0),
    ]


def test_features_are_given_to_holes_that_were_there_before(course_file):
    into(course_file, HOLE[0])
    into(course_file, *HOLE[1:])
    assert {feature.holes for feature in course_of(course_file).features} == {(1,)}


def test_a_shared_green_and_a_practice_green(course_file):
    second = at(LineString([(60, 0), (50, 380)]))
    report = into(
        course_file,
        HOLE[0],
        candidate("hole", second, "second", number=2),
        candidate("green", at(box(5, 370, 60, 395)), "shared"),
        candidate("green", at(box(70, 375, 80, 385)), "practice"),
    )
    shared, practice = of_kind(course_of(course_file), "green")
    assert (shared.holes, practice.holes) == ((1, 2), ())
    assert any("Green: 1 without a hole" in remark for remark in report.remarks)


def test_bow_ties_are_mended_with_a_remark(course_file):
    bow_tie = Polygon([(0, 0), (10, 10), (10, 0), (0, 10)])
    report = into(course_file, candidate("bunker", at(bow_tie), "bow tie", origin="osm:way/5", lasting=True))
    assert report.counts["bunker"] == 2
    bunkers = of_kind(course_of(course_file), "bunker")
    assert sorted(bunker.get("origin") for bunker in bunkers) == ["osm:way/5", "osm:way/5#2"]
    # Two triangles of base 10 and height 5.
    assert [bunker.geometry.area for bunker in bunkers] == pytest.approx([25.0, 25.0])
    assert "crossed itself" in report.remarks[0]
    again = into(course_file, candidate("bunker", at(bow_tie), "bow tie", origin="osm:way/5", lasting=True))
    assert again.total == 0


def test_several_parts_become_several_features(course_file):
    two = MultiPolygon([box(0, 0, 5, 5), box(20, 0, 25, 5)])
    mixed = GeometryCollection([box(40, 0, 45, 5), Point(60, 0)])
    report = into(course_file, candidate("bunker", at(two), "two"), candidate("bunker", at(mixed), "mixed"))
    assert report.counts["bunker"] == 3
    assert "mixed: 1 of its parts" in report.remarks[0]


def test_lines_close_to_areas_within_a_metre(course_file):
    corners = [(0, 0), (20, 0), (20, 20)]
    report = into(
        course_file,
        candidate("bunker", at(LineString([*corners, (0, 0)])), "closed"),
        candidate("bunker", at(LineString([*corners, (0, 0.9)]), 50), "nearly closed"),
        candidate("bunker", at(LineString([*corners, (0, 1.1)]), 100), "open"),
        candidate("bunker", at(LineString([(0, 0), (0.4, 0), (0.4, 0.4)]), 150), "a mere corner"),
    )
    assert report.counts["bunker"] == 2
    assert [(what, why) for what, why in report.left_out] == [
        ("open", "its outline is not closed"),
        ("a mere corner", "its outline is not closed"),
    ]
    assert [remark for remark in report.remarks if "joined" in remark] == [
        "nearly closed: the ends of its outline were 0.90 m apart and have been joined."
    ]


@pytest.mark.parametrize(
    ("kind", "shape", "why"),
    [
        ("bunker", None, "no geometry"),
        ("bunker", Polygon(), "no geometry"),
        ("tree", Point(math.nan, 5), "not a number"),
        ("tree", Point(math.inf, math.inf), "outside the area"),
        # A place half the Earth away, in metres of the course's zone.
        ("tree", Point(12000000, 1105000), "outside the area"),
        ("path", at(LineString([(0, 0), (0, 0)])), "no extent"),
        ("bunker", at(Polygon([(0, 0), (5, 5), (0, 0)])), "no extent"),
        ("bunker", at(Point(0, 0)), "it is a point, and its layer holds areas"),
        ("path", at(box(0, 0, 5, 5)), "it is an area, and its layer holds lines"),
    ],
)
def test_what_cannot_be_taken_is_left_out_and_the_rest_comes_in(course_file, kind, shape, why):
    report = into(course_file, candidate(kind, shape, "bad"), candidate("green", GREEN, "good"))
    assert dict(report.counts) == {"green": 1}
    assert [what for what, _ in report.left_out] == ["bad"]
    assert why in report.left_out[0].why


def test_repeated_points_of_a_line_go(course_file):
    into(course_file, candidate("path", at(LineString([(0, 0), (0, 0), (0, 9), (0, 9), (5, 9)]))))
    assert len(of_kind(course_of(course_file), "path")[0].geometry.coords) == 3


def test_rivers_past_many_holes_are_left_open(course_file):
    lines = [candidate("hole", translate(LINE, 80 * n), f"line {n}", number=n) for n in range(1, 6)]
    report = into(course_file, *lines, candidate("penalty_area", at(box(0, 180, 500, 195)), "river"))
    assert of_kind(course_of(course_file), "penalty_area")[0].holes == ()
    assert any("Penalty area: 1 without a hole" in remark for remark in report.remarks)


def test_all_or_nothing(course_file):
    into(course_file, HOLE[0])
    bad = candidate("bunker", at(box(0, 0, 5, 5)), "bad", no_such_field="x")
    with pytest.raises(YardwrightError, match="no_such_field"):
        into(course_file, HOLE[2], bad)
    course = course_of(course_file)
    assert course.features == ()
    assert len(course.holes) == 1


def test_stopped_before_writing(course_file):
    for last in (1, 2):
        with open_course(course_file) as layers:
            assert bring_in(layers, Found(HOLE), lambda done, total, last=last: done < last) is None
    assert course_of(course_file).features == ()


def test_the_report_as_text(course_file):
    report = into(
        course_file,
        *HOLE,
        candidate("bunker", None, "ghost"),
        candidate("bunker", None, "spectre"),
        left_out=(LeftOut("pin", "it moves"),),
        remarks=("Mind the gap.",),
    )
    assert report.lines() == [
        "Line of play: 1 brought in",
        "Tee: 1 brought in",
        "Green: 1 brought in",
        "Bunker: 1 brought in",
        "Left out (1), it moves: pin",
        "Left out (2), it has no geometry: ghost, spectre",
        "Remark: Mind the gap.",
    ]
    assert into(course_file).lines() == ["Nothing new was brought in."]


@pytest.mark.parametrize(
    ("crs", "inside", "outside"),
    [
        # Zone 60 ends at 180 degrees east: a course may lie across that line.
        ("EPSG:32660", [(179.9, 10), (-179.9, 10), (172, 10)], [(-170, 10), (160, 10), (179, -20)]),
        ("EPSG:32630", [(-2.8, 56.3), (0.5, 56.3)], [(9, 10), (-2.8, -40)]),
    ],
)
def test_where_a_crs_is_good_for(qgis_app, crs, inside, outside):
    import numpy as np

    reference = QgsCoordinateReferenceSystem(crs)
    assert module._within_bounds(np.array(inside, dtype=float), reference).all()
    assert not module._within_bounds(np.array(outside, dtype=float), reference).any()


def test_only_closed_lines_become_areas():
    assert close_to_area(None) is None
    assert close_to_area(LineString([(0, 0), (1, 0), (0, 0)])).geom_type == "LineString"
    assert close_to_area(Point(0, 0)).geom_type == "Point"


@pytest.mark.skipif(not DEL_RIO.exists(), reason="the open data is not beside the repository")
def test_a_real_nine_hole_course(qgis_app, tmp_path):
    # (c) OpenStreetMap contributors, ODbL 1.0.
    path = str(tmp_path / "delrio.gpkg")
    create_course(path, "Open data", "EPSG:32611")
    with open_course(path) as layers:
        found = read_openstreetmap(str(DEL_RIO), layers.crs)
        report = bring_in(layers, found)
        again = bring_in(layers, found)
    assert dict(report.counts) == {
        "hole": 9,
        "tee": 9,
        "green": 9,
        "fairway": 10,
        "bunker": 18,
        "path": 13,
    }
    assert again.total == 0
    course = course_of(path)
    assert [hole.number for hole in course.holes] == list(range(1, 10))
    assert [hole.number for hole in course.holes if hole.par is None] == [9]
    assert [hole.number for hole in course.holes if hole.stroke_index is None] == [3, 9]
    for kind in ("tee", "green"):
        assert sorted(feature.holes for feature in of_kind(course, kind)) == [(n,) for n in range(1, 10)]
    assert all(bunker.holes for bunker in of_kind(course, "bunker"))
    assert course.problems == ()
