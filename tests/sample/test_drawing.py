"""The sample course is sound: what is drawn, what is wrong on purpose, and nothing else."""

import csv
from itertools import combinations

import pytest
from pyproj import Geod, Transformer
from shapely.geometry import Point
from yardwright.measure.course import measure_course
from yardwright.measure.markers import check_markers
from yardwright.measure.units import YARD
from yardwright.model.kinds import FEATURE_KINDS

from sample_project import drawing, plan


@pytest.fixture(scope="module")
def drawn():
    return drawing.drawing()


@pytest.fixture(scope="module")
def course():
    return drawing.course()


def of(course, kind, hole=None):
    return [f for f in course.features if f.kind == kind and (hole is None or hole in f.holes)]


def geodesic_yards(a, b):
    """The geodesic between two points of the course's CRS, by PROJ's geodesic routines (Karney 2013)."""
    to_degrees = Transformer.from_crs(plan.CRS, "EPSG:4258", always_xy=True)
    (lon1, lon2), (lat1, lat2) = to_degrees.transform((a[0], b[0]), (a[1], b[1]))
    return Geod(ellps="GRS80").inv(lon1, lat1, lon2, lat2)[2] / YARD


def test_every_kind_is_there_and_every_shape_is_valid(course):
    assert {f.kind for f in course.features} | {"hole"} == set(FEATURE_KINDS)
    assert [f for f in course.features if not f.geometry.is_valid or f.geometry.is_empty] == []


def test_outlines_are_drawn_with_care(course):
    for kind in ("green", "bunker", "fairway", "tee"):
        counts = [len(f.geometry.exterior.coords) for f in of(course, kind)]
        assert min(counts) >= 20
        assert max(counts) <= 160


def test_holes_lead_to_their_greens_without_crossing(course):
    assert [hole.number for hole in course.holes] == list(range(1, 19))
    assert sum(hole.par for hole in course.holes) == 72
    for hole in course.holes:
        (green,) = of(course, "green", hole.number)
        assert green.geometry.contains(Point(hole.line.coords[-1]))
        assert any(
            tee.geometry.buffer(0.5).contains(Point(hole.line.coords[0]))
            for tee in of(course, "tee", hole.number)
        )
    for one, other in combinations(course.holes, 2):
        assert not one.line.crosses(other.line)


@pytest.mark.parametrize(
    ("kind", "other", "apart"),
    [("bunker", "green", 1.0), ("bunker", "penalty_area", 0.5), ("tee", "penalty_area", 0.5),
     ("tee", "green", 5.0), ("path", "green", 3.0), ("path", "bunker", 1.2), ("path", "tee", 1.0),
     ("trees", "green", 5.0), ("bunker", "bunker", 0.1), ("tee", "tee", 0.1), ("tree", "path", 1.0)],
)  # fmt: skip
def test_things_keep_off_each_other(drawn, kind, other, apart):
    near = [
        (a.kind, a.fid, b.kind, b.fid)
        for a in drawn.of(kind)
        for b in drawn.of(other)
        if a is not b and a.geometry.distance(b.geometry) < apart
    ]
    assert near == []


def test_all_lies_within_the_boundary(drawn):
    (site,) = drawn.scenery["site"]
    outside = [(f.kind, f.fid) for f in drawn.features if not site.buffer(0.01).contains(f.geometry)]
    assert {kind for kind, _ in outside} <= {"target", "boundary"}


def test_stroke_indexes():
    """Rules of Handicapping, Appendix E: odd on one nine, even on the other; 1 and 2 in the middle triad of
    their nine; no low pair (6 or less) on consecutive holes."""
    index = [hole.index for hole in plan.HOLES]
    assert sorted(index) == list(range(1, 19))
    assert {i % 2 for i in index[:9]} == {1}
    assert {i % 2 for i in index[9:]} == {0}
    assert index.index(1) in (3, 4, 5)
    assert index.index(2) in (12, 13, 14)
    assert not any(a <= 6 and b <= 6 for a, b in zip(index, [*index[1:], index[0]]))


def test_the_trade_case(course):
    """Common practice, no source: 223 yd to a bunker, 267 to the front of a green 19 yd deep, on hole 5."""
    tee = next(p for p in of(course, "plate", 5) if p.get("tee_set") == "Black").geometry.coords[0]
    bunkers = [
        min(geodesic_yards(tee, p) for p in b.geometry.segmentize(0.05).exterior.coords)
        for b in of(course, "bunker", 5)
    ]
    assert min(bunkers) == pytest.approx(223, abs=0.02)
    (green,) = of(course, "green", 5)
    along = course.hole(5).line.intersection(green.geometry)
    away = course.hole(5).line.coords[-1]
    assert geodesic_yards(tee, along.coords[0]) == pytest.approx(267, abs=0.02)
    (row,) = measure_course(course, [5]).greens
    assert row.depth / YARD == pytest.approx(19, abs=0.01)
    middle = 267 + 19 / 2
    assert geodesic_yards(tee, away) == pytest.approx(middle, abs=1.5)


def test_odd_greens(drawn):
    by_hole = {hole: green.geometry for green in drawn.of("green") for hole in green.holes}
    assert not by_hole[14].contains(by_hole[14].centroid)
    assert by_hole[9] is by_hole[18]
    narrow = by_hole[6].convex_hull.area / by_hole[6].area
    assert narrow > 1.08


def test_one_tee_stands_beyond_a_turn(course):
    rows = measure_course(course, [7]).doglegs
    assert {row.tee_set for row in rows} == {"Black", "White", "Yellow", "Blue"}


def test_markers_are_wrong_where_and_as_much_as_the_truth_says(course, drawn):
    """The tool's own check of the markers against the drawing's account of how they were placed."""
    by_id = {str(f.fid): f for f in of(course, "marker")}
    found = {}
    for row in check_markers(course):
        first = by_id[row.marker_id.split("+")[0]]
        alone = not first.get("pair")
        if row.verdict == "off" and (alone or "+" in row.marker_id):
            found[row.hole, str(round(row.states / YARD))] = row.error / YARD
    told = {(hole, which): by for what, hole, which, by in drawn.truth if what == "marker"}
    moved = plan.MOVED_POST
    told[moved[0], str(moved[1])] = moved[2] / 2
    assert found == pytest.approx(told, abs=0.12)


def test_the_card_is_wrong_where_the_truth_says(course, drawn):
    told = {(hole, which): by for what, hole, which, by in drawn.truth if what == "card"}
    rows = measure_course(course).lengths
    off = {(row.hole, row.tee_set): row.difference / YARD for row in rows if abs(row.difference / YARD) > 5}
    assert set(off) == set(told)
    assert all(abs(off[key] + by) <= 0.51 for key, by in told.items())


def test_kept_files_are_what_the_drawing_says(tmp_path):
    for write, kept in ((drawing.write_scorecard, drawing.SCORECARD), (drawing.write_truth, drawing.TRUTH)):
        write(tmp_path / "made.csv")
        with open(tmp_path / "made.csv", encoding="utf-8") as made, open(kept, encoding="utf-8") as there:
            assert list(csv.reader(made)) == list(csv.reader(there))
