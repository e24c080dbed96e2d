"""OpenStreetMap's golf tags, as the OpenStreetMap wiki describes them (Key:golf and its further pages)."""

import json
from collections import Counter
from pathlib import Path

import pytest
from pyproj import Transformer
from qgis.core import QgsCoordinateReferenceSystem
from shapely.geometry import box
from yardwright.model.errors import YardwrightError
from yardwright.store.openstreetmap import (
    is_openstreetmap_file,
    read_openstreetmap,
    tags_of_hstore,
)

DEL_RIO = Path(__file__).resolve().parents[3] / "shared" / "data" / "osm" / "delrio.osm"
CRS = "EPSG:32632"
SIDE = 0.0001


def crs():
    return QgsCoordinateReferenceSystem(CRS)


class Map:
    """Writes the text of an OpenStreetMap file, places in degrees east and north of 9 E 10 N."""

    def __init__(self):
        self.nodes, self.ways, self.relations = [], [], []

    def node(self, place, **tags):
        self.nodes.append((len(self.nodes) + 1, place, tags))
        return len(self.nodes)

    def way(self, number, places, **tags):
        refs = [self.node(place) for place in dict.fromkeys(places)]
        by_place = dict(zip(dict.fromkeys(places), refs))
        self.ways.append((number, [by_place[place] for place in places], tags))

    def area(self, number, east, north, side=SIDE, **tags):
        corners = [(east, north), (east + side, north), (east + side, north + side), (east, north + side)]
        self.way(number, corners + corners[:1], **tags)

    def relation(self, number, members, **tags):
        self.relations.append((number, members, tags))

    def write(self, path):
        def tagged(tags):
            pairs = ((key.replace("__", ":"), value) for key, value in tags.items())
            return "".join(f'<tag k="{key}" v="{value}"/>' for key, value in pairs)

        text = ["<?xml version='1.0' encoding='UTF-8'?>", '<osm version="0.6" generator="a test">']
        for number, (east, north), tags in self.nodes:
            text.append(
                f'<node id="{number}" lon="{9 + east:.7f}" lat="{10 + north:.7f}">{tagged(tags)}</node>'
            )
        for number, refs, tags in self.ways:
            nodes = "".join(f'<nd ref="{ref}"/>' for ref in refs)
            text.append(f'<way id="{number}">{nodes}{tagged(tags)}</way>')
        for number, members, tags in self.relations:
            ways = "".join(f'<member type="way" ref="{ref}" role="{role}"/>' for ref, role in members)
            text.append(f'<relation id="{number}">{ways}{tagged(tags)}</relation>')
        path.write_text("\n".join([*text, "</osm>"]), encoding="utf-8")
        return str(path)


@pytest.fixture
def osm():
    return Map()


def found_in(osm, tmp_path, **options):
    return read_openstreetmap(osm.write(tmp_path / "map.osm"), crs(), **options)


def only(found):
    assert len(found.candidates) == 1, found
    return found.candidates[0]


@pytest.mark.parametrize("ref", ["7", "07", "Hole #7", "H07", "hole 7", "No. 7"])
def test_the_number_is_read_from_the_ref(qgis_app, osm, tmp_path, ref):
    osm.way(20, [(0, 0), (0, 0.003)], golf="hole", ref=ref, par="4", handicap="11")
    hole = only(found_in(osm, tmp_path))
    assert (hole.kind, hole.origin) == ("hole", "osm:way/20")
    assert {name: hole.attributes[name] for name in ("number", "par", "stroke_index")} == {
        "number": 7,
        "par": 4,
        "stroke_index": 11,
    }


def test_the_number_is_read_from_the_name_where_there_is_no_ref(qgis_app, osm, tmp_path):
    osm.way(20, [(0, 0), (0, 0.003)], golf="hole", name="Hole 12", par="3", handicap="2")
    osm.way(21, [(0, 0), (0, 0.003)], golf="hole", name="Heather", ref="4", par="3", handicap="2")
    first, second = found_in(osm, tmp_path).candidates
    assert first.attributes["number"] == 12
    assert "name" not in first.attributes
    assert (second.attributes["number"], second.attributes["name"]) == (4, "Heather")


def test_missing_and_impossible_par_and_handicap_are_remarks(qgis_app, osm, tmp_path):
    osm.way(20, [(0, 0), (0, 0.003)], golf="hole", ref="1")
    osm.way(21, [(0, 0), (0, 0.003)], golf="hole", ref="2", par="9", handicap="first")
    found = found_in(osm, tmp_path)
    assert [set(hole.attributes) & {"par", "stroke_index"} for hole in found.candidates] == [set(), set()]
    assert len(found.remarks) == 4
    assert "gives no par" in found.remarks[0]
    assert "“9”" in found.remarks[2]


@pytest.mark.parametrize(("dist", "kept"), [("320", "320 m"), ("350 yd", "350 yd")])
def test_dist_is_noted_in_metres_unless_it_says_yards(qgis_app, osm, tmp_path, dist, kept):
    # OpenStreetMap wiki, Tag:golf=hole: dist is in metres unless it says yd.
    osm.way(20, [(0, 0), (0, 0.003)], golf="hole", ref="1", dist=dist)
    assert only(found_in(osm, tmp_path)).attributes["note"].endswith(f"length as {kept}")


@pytest.mark.parametrize(
    ("golf", "kind", "further"),
    [
        ("green", "green", {}),
        ("tee", "tee", {}),
        ("fairway", "fairway", {}),
        ("bunker", "bunker", {}),
        ("rough", "rough", {}),
        # Rules of Golf, definition of penalty area: yellow, and red where it is lateral.
        ("water_hazard", "penalty_area", {"stakes": "yellow", "water": True}),
        ("lateral_water_hazard", "penalty_area", {"stakes": "red", "water": True}),
    ],
)
def test_closed_ways_become_areas(qgis_app, osm, tmp_path, golf, kind, further):
    osm.area(30, 0, 0, golf=golf)
    candidate = only(found_in(osm, tmp_path))
    assert candidate.kind == kind
    assert candidate.geometry.geom_type == "Polygon"
    assert {name: candidate.attributes.get(name) for name in further} == further


def test_the_place_is_that_of_an_independent_transformation(qgis_app, osm, tmp_path):
    osm.node((0.002, 0.001), golf="tee", tee="red")
    tee = only(found_in(osm, tmp_path))
    east, north = Transformer.from_crs("EPSG:4326", CRS, always_xy=True).transform(9.002, 10.001)
    assert (tee.geometry.x, tee.geometry.y) == pytest.approx((east, north), abs=0.001)


def test_a_node_tee_is_a_plate_and_keeps_its_colour(qgis_app, osm, tmp_path):
    osm.node((0, 0), golf="tee", tee="red;yellow")
    tee = only(found_in(osm, tmp_path))
    assert (tee.kind, tee.origin, tee.attributes["tee_set"]) == ("plate", "osm:node/1", "red,yellow")


def test_paths_stay_lines_even_when_closed(qgis_app, osm, tmp_path):
    osm.area(30, 0, 0, golf="cartpath", highway="path")
    osm.way(31, [(0, 0), (0.001, 0)], golf="path", highway="footway", name="to 2")
    closed, open_path = found_in(osm, tmp_path).candidates
    assert (closed.kind, closed.geometry.geom_type, closed.geometry.is_closed) == ("path", "LineString", True)
    assert open_path.attributes["label"] == "to 2"


def test_a_relation_keeps_its_inner_ring(qgis_app, osm, tmp_path):
    osm.area(40, 0, 0, side=0.001)
    osm.area(41, 0.0004, 0.0004, side=0.0002)
    osm.relation(50, [(40, "outer"), (41, "inner")], type="multipolygon", golf="fairway")
    fairway = only(found_in(osm, tmp_path))
    assert fairway.origin == "osm:relation/50"
    (polygon,) = fairway.geometry.geoms
    assert len(polygon.interiors) == 1
    assert polygon.area / polygon.convex_hull.area == pytest.approx(1 - 0.2**2, abs=1e-4)


def test_an_area_tagged_so_is_a_way_all_the_same(qgis_app, osm, tmp_path):
    osm.area(40, 0, 0, golf="bunker", area="yes", ref="3R")
    bunker = only(found_in(osm, tmp_path))
    assert (bunker.origin, bunker.attributes["label"]) == ("osm:way/40", "3R")


def test_what_is_not_taken_is_named_with_its_reason(qgis_app, osm, tmp_path):
    osm.node((0, 0), golf="pin")
    osm.area(30, 0, 0, golf="clubhouse")
    osm.area(31, 0, 0, golf="driving_range")
    osm.area(32, 0, 0, golf="moat")
    osm.area(33, 0, 0, side=0.01, leisure="golf_course", name="Invented Links")
    found = found_in(osm, tmp_path)
    assert found.candidates == ()
    reasons = {what.split(" (")[0]: why for what, why in found.left_out}
    assert set(reasons) == {"pin", "clubhouse", "driving range", "moat", "golf course “Invented Links”"}
    assert "every day" in reasons["pin"]
    assert "golf=moat" in reasons["moat"]
    assert "out of bounds" in reasons["golf course “Invented Links”"]


def test_roads_and_houses_are_no_matter(qgis_app, osm, tmp_path):
    osm.way(30, [(0, 0), (0.01, 0)], highway="residential", name="Some Road")
    osm.area(31, 0, 0, building="yes")
    assert found_in(osm, tmp_path) == ((), (), ())


def test_water_and_trees_near_play_are_taken_and_others_are_not(qgis_app, osm, tmp_path):
    osm.way(20, [(0, 0), (0, 0.003)], golf="hole", ref="1")
    # One degree of longitude is 109.6 km at 10 N: 0.0004 is 44 m, within 60 yd (54.9 m); 0.0006 is 66 m.
    osm.area(30, 0.0004, 0.001, natural="water")
    osm.area(31, 0.0006, 0.001, natural="water")
    osm.area(32, -0.0003, 0.001, natural="wood")
    osm.area(33, 0.02, 0.02, landuse="forest")
    osm.node((0.0002, 0.001), natural="tree", diameter_crown="9 m")
    osm.node((0.03, 0.001), natural="tree")
    found = found_in(osm, tmp_path)
    assert [(c.kind, c.origin.split("/")[0]) for c in found.candidates] == [
        ("hole", "osm:way"),
        ("penalty_area", "osm:way"),
        ("trees", "osm:way"),
        ("tree", "osm:node"),
    ]
    water, _, tree = found.candidates[1:]
    assert water.origin == "osm:way/30"
    assert water.attributes["water"] is True
    assert "stakes" not in water.attributes
    assert tree.attributes["crown_radius_m"] == 4.5


def test_water_inside_the_outline_of_the_course_is_taken(qgis_app, osm, tmp_path):
    osm.way(20, [(0, 0), (0, 0.003)], golf="hole", ref="1")
    osm.area(30, 0.004, 0.001, natural="water", name="Mill Pond")
    osm.area(40, -0.001, -0.001, side=0.008, leisure="golf_course")
    water = found_in(osm, tmp_path).candidates[1]
    assert (water.kind, water.attributes["label"]) == ("penalty_area", "Mill Pond")


def test_water_without_a_course_is_passed_over_with_a_remark(qgis_app, osm, tmp_path):
    osm.area(30, 0.004, 0.001, natural="water")
    found = found_in(osm, tmp_path)
    assert found.candidates == ()
    assert "without a hole or the outline" in found.remarks[0]


def test_a_stream_across_play_is_left_out_with_advice(qgis_app, osm, tmp_path):
    osm.way(20, [(0, 0), (0, 0.003)], golf="hole", ref="1")
    osm.way(30, [(-0.002, 0.001), (0.002, 0.001)], waterway="stream")
    osm.way(31, [(0.5, 0.001), (0.6, 0.001)], waterway="stream")
    found = found_in(osm, tmp_path)
    assert [what for what, _ in found.left_out] == ["stream (osm:way/30)"]
    assert "draw its banks" in found.left_out[0].why


def test_only_what_meets_the_extent_is_taken(qgis_app, osm, tmp_path):
    osm.area(30, 0, 0, golf="bunker")
    osm.area(31, 0.01, 0, golf="bunker")
    east, north = Transformer.from_crs("EPSG:4326", CRS, always_xy=True).transform(9, 10)
    found = found_in(osm, tmp_path, extent=box(east + 5, north + 5, east + 300, north + 300))
    assert only(found).origin == "osm:way/30"
    assert found.remarks == ("1 golf features lie outside the extent and were passed over.",)


def test_a_kind_takes_only_its_own(qgis_app, osm, tmp_path):
    osm.area(30, 0, 0, golf="bunker")
    osm.area(31, 0, 0, golf="green")
    osm.area(32, 0, 0, golf="clubhouse")
    found = found_in(osm, tmp_path, kind="green")
    assert only(found).origin == "osm:way/31"
    assert found.left_out == ()


def test_the_order_is_by_kind_and_number(qgis_app, osm, tmp_path):
    for number in (9, 100, 20, 3):
        osm.area(number, 0, 0, golf="bunker")
    osm.area(50, 0, 0, golf="green")
    origins = [c.origin for c in found_in(osm, tmp_path).candidates]
    assert origins == [f"osm:way/{number}" for number in (50, 3, 9, 20, 100)]


def test_tags_with_quotes_and_arrows():
    text = r'"golf"=>"tee","name"=>"the \"old\" one","note"=>"a=>b, \\c"'
    assert tags_of_hstore(text) == {"golf": "tee", "name": 'the "old" one', "note": "a=>b, \\c"}
    assert tags_of_hstore(None) == {}


SQUARE = [[[9, 10], [9.0002, 10], [9.0002, 10.0002], [9, 10.0002], [9, 10]]]


def write_geojson(path, features, **further):
    document = {
        "type": "FeatureCollection",
        **further,
        "features": [
            {"type": "Feature", "properties": properties, "geometry": geometry, **more}
            for properties, geometry, more in features
        ],
    }
    path.write_text(json.dumps(document), encoding="utf-8")
    return str(path)


def test_geojson_exports_of_each_form(qgis_app, tmp_path):
    area = {"type": "Polygon", "coordinates": SQUARE}
    ring = {"type": "LineString", "coordinates": SQUARE[0]}
    line = {"type": "LineString", "coordinates": [[9, 10], [9, 10.003]]}
    path = write_geojson(
        tmp_path / "export.geojson",
        [
            ({"@id": "way/7", "golf": "green"}, area, {}),
            ({"id": 9, "tags": {"golf": "bunker"}}, ring, {"id": "way/9"}),
            ({"full_id": "r11", "tags": '{"golf": "fairway"}'}, area, {}),
            ({"golf": "hole", "ref": "Hole #3", "par": 5, "handicap": "1"}, line, {}),
            (
                {"osm_id": "13", "osm_type": "node", "golf": "tee"},
                {"type": "Point", "coordinates": [9, 10]},
                {},
            ),
            ({"golf": "rough"}, None, {}),
        ],
    )
    assert is_openstreetmap_file(path)
    found = read_openstreetmap(path, crs())
    by_kind = {c.kind: c for c in found.candidates}
    assert {kind: c.origin for kind, c in by_kind.items()} == {
        "green": "osm:way/7",
        "bunker": "osm:way/9",
        "fairway": "osm:relation/11",
        "hole": "export.geojson/4",
        "plate": "osm:node/13",
        "rough": "export.geojson/6",
    }
    assert by_kind["bunker"].geometry.geom_type == "Polygon"
    assert (by_kind["hole"].attributes["number"], by_kind["hole"].attributes["par"]) == (3, 5)
    assert by_kind["green"].lasting
    assert not by_kind["hole"].lasting
    assert by_kind["rough"].geometry is None


def test_geojson_with_broken_coordinates_is_a_thing_without_geometry(qgis_app, tmp_path):
    path = write_geojson(
        tmp_path / "odd.geojson",
        [
            ({"golf": "green"}, {"type": "Polygon", "coordinates": [[[9, 10]]]}, {}),
            ({"golf": "green"}, {"type": "Polygon", "coordinates": "here"}, {}),
            ({"golf": "green"}, {"type": "Circle", "coordinates": [9, 10]}, {}),
        ],
    )
    assert [c.geometry for c in read_openstreetmap(path, crs()).candidates] == [None, None, None]


def test_geojson_without_golf_is_no_map(tmp_path):
    area = {"type": "Polygon", "coordinates": SQUARE}
    assert not is_openstreetmap_file(write_geojson(tmp_path / "plain.geojson", [({"name": "x"}, area, {})]))
    assert not is_openstreetmap_file(str(tmp_path / "missing.geojson"))


def test_geojson_in_metres_is_refused(qgis_app, tmp_path):
    area = {"type": "Polygon", "coordinates": SQUARE}
    named = {"type": "name", "properties": {"name": "urn:ogc:def:crs:EPSG::32632"}}
    path = write_geojson(tmp_path / "metres.geojson", [({"golf": "green"}, area, {})], crs=named)
    with pytest.raises(YardwrightError, match="not in longitude and latitude"):
        read_openstreetmap(path, crs())


@pytest.mark.parametrize(
    ("name", "text", "says"),
    [
        ("none.osm", None, "is not there"),
        ("empty.osm", "", "cannot be read"),
        ("words.osm", "nothing of the kind", "cannot be read"),
        ("cut.osm", '<osm version="0.6"><node id="1" lat="10" lon="9"/><way id="2"><nd re', "cannot be read"),
        ("words.osm.pbf", "nothing of the kind", "cannot be read"),
        ("words.geojson", "{", "cannot be read"),
        ("empty.geojson", '{"type": "FeatureCollection", "features": []}', "no GeoJSON features"),
    ],
)
def test_files_that_cannot_be_read_say_so(qgis_app, tmp_path, name, text, says):
    path = tmp_path / name
    if text is not None:
        path.write_text(text, encoding="utf-8")
    with pytest.raises(YardwrightError, match=says) as caught:
        read_openstreetmap(str(path), crs())
    assert caught.value.remedy


def varint(number):
    out = bytearray()
    while number > 127:
        out.append(number & 127 | 128)
        number >>= 7
    return bytes(out + bytes([number]))


def entry(field, value):
    """One field of a protocol buffer: an integer, or bytes with their length."""
    if isinstance(value, int):
        return varint(field << 3) + varint(value)
    return varint(field << 3 | 2) + varint(len(value)) + value


def zigzag(number):
    return number << 1 if number >= 0 else (-number << 1) - 1


def pbf_of_node(path, number, east, north, tags):
    """An .osm.pbf with one node, after the OpenStreetMap wiki, page PBF Format."""
    strings = [b"", *(text.encode() for pair in tags.items() for text in pair)]
    keys = b"".join(varint(index) for index in range(1, len(strings), 2))
    values = b"".join(varint(index) for index in range(2, len(strings), 2))
    degrees = [zigzag(round(value * 1e7)) for value in (north, east)]
    node = (
        entry(1, zigzag(number))
        + entry(2, keys)
        + entry(3, values)
        + entry(8, degrees[0])
        + entry(9, degrees[1])
    )
    block = entry(1, b"".join(entry(1, text) for text in strings)) + entry(2, entry(1, node))
    header = entry(4, b"OsmSchema-V0.6")
    with open(path, "wb") as file:
        for kind, content in ((b"OSMHeader", header), (b"OSMData", block)):
            blob = entry(1, content) + entry(2, len(content))
            start = entry(1, kind) + entry(3, len(blob))
            file.write(len(start).to_bytes(4, "big") + start + blob)
    return str(path)


def test_the_binary_form_is_read(qgis_app, tmp_path):
    path = pbf_of_node(tmp_path / "one.osm.pbf", 77, 9.002, 10.001, {"golf": "tee", "tee": "white"})
    assert is_openstreetmap_file(path)
    tee = only(read_openstreetmap(path, crs()))
    east, north = Transformer.from_crs("EPSG:4326", CRS, always_xy=True).transform(9.002, 10.001)
    assert (tee.kind, tee.origin, tee.attributes["tee_set"]) == ("plate", "osm:node/77", "white")
    assert (tee.geometry.x, tee.geometry.y) == pytest.approx((east, north), abs=0.02)


def test_gdal_is_left_as_it_was(qgis_app, osm, tmp_path):
    from osgeo import gdal

    gdal.SetConfigOption("OSM_CONFIG_FILE", "somewhere")
    try:
        osm.area(30, 0, 0, golf="bunker")
        only(found_in(osm, tmp_path))
        assert gdal.GetConfigOption("OSM_CONFIG_FILE") == "somewhere"
    finally:
        gdal.SetConfigOption("OSM_CONFIG_FILE", None)


@pytest.mark.skipif(not DEL_RIO.exists(), reason="the open data is not beside the repository")
def test_a_real_nine_hole_course(qgis_app):
    # (c) OpenStreetMap contributors, ODbL 1.0; counted by hand in the file's tags.
    found = read_openstreetmap(str(DEL_RIO), QgsCoordinateReferenceSystem("EPSG:32611"))
    assert Counter(c.kind for c in found.candidates) == {
        "hole": 9,
        "tee": 9,
        "green": 9,
        "fairway": 10,
        "bunker": 18,
        "path": 13,
    }
    holes = [c for c in found.candidates if c.kind == "hole"]
    assert sorted(c.attributes["number"] for c in holes) == list(range(1, 10))
    remarks = " ".join(found.remarks)
    assert remarks.count("gives no par") == 1
    assert remarks.count("gives no handicap") == 2
    assert sorted(what.split(" ")[0] for what, _ in found.left_out) == [
        "clubhouse",
        "driving",
        "golf",
        "river",
    ]
