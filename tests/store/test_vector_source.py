"""Vector files of every common form, made here with GDAL, read back as candidates of a chosen kind."""

import pytest
from osgeo import ogr, osr
from pyproj import Transformer
from qgis.core import QgsCoordinateReferenceSystem, QgsFeature, QgsGeometry, QgsVectorLayer
from shapely.geometry import box
from yardwright.model.errors import YardwrightError
from yardwright.store.openstreetmap import candidates_of, things_of_rows
from yardwright.store.vector_source import has_golf_tags, open_layers, read_rows, read_vector

CRS = "EPSG:32632"
EAST, NORTH = 500000.0, 1105000.0
SQUARE = box(EAST, NORTH, EAST + 10, NORTH + 10).wkt
DEGREES = "POLYGON ((9 10,9.0002 10,9.0002 10.0002,9 10.0002,9 10))"
DEGREES_LINE = "LINESTRING (9 10,9.0002 10,9.0002 10.003)"


def crs(name=CRS):
    return QgsCoordinateReferenceSystem(name)


def reference(code):
    if code is None:
        return None
    made = osr.SpatialReference()
    made.ImportFromEPSG(code)
    made.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
    return made


def write(path, driver, features, code=32632, fields=(), kind=ogr.wkbUnknown, layer="layer"):
    """A vector file. features: (WKT, {field: value}), fields: (name, ogr type)."""
    source = ogr.GetDriverByName(driver).CreateDataSource(str(path))
    made = source.CreateLayer(layer, reference(code), kind)
    for name, field_type in fields:
        made.CreateField(ogr.FieldDefn(name, field_type))
    for wkt, values in features:
        feature = ogr.Feature(made.GetLayerDefn())
        for name, value in values.items():
            feature.SetField(name, value)
        if wkt:
            feature.SetGeometry(ogr.CreateGeometryFromWkt(wkt))
        made.CreateFeature(feature)
    made = source = None
    return str(path)


def test_a_shapefile_with_fields_of_ours(qgis_app, tmp_path):
    fields = [
        ("HOLES", ogr.OFTString),
        ("Label", ogr.OFTString),
        ("STAKES", ogr.OFTString),
        ("water", ogr.OFTInteger),
    ]
    path = write(
        tmp_path / "ponds.shp",
        "ESRI Shapefile",
        [
            (SQUARE, {"HOLES": "3, 5-6", "Label": "Mill Pond", "STAKES": "RED", "water": 0}),
            (SQUARE, {"HOLES": "the lot", "STAKES": "pink"}),
        ],
        fields=fields,
        kind=ogr.wkbPolygon,
    )
    found = read_vector(path, "penalty_area", crs())
    first, second = found.candidates
    assert first.holes == (3, 5, 6)
    assert first.attributes["label"] == "Mill Pond"
    assert (first.attributes["stakes"], first.attributes["water"]) == ("red", False)
    assert first.origin == "ponds.shp/0"
    assert second.holes == ()
    assert len(found.remarks) == 2
    assert "“the lot”" in " ".join(found.remarks)
    assert "“pink”" in " ".join(found.remarks)


def test_a_shapefile_cuts_our_names_at_ten_characters(qgis_app, tmp_path):
    fields = [
        ("number", ogr.OFTInteger),
        ("stroke_ind", ogr.OFTInteger),
        ("approach_y", ogr.OFTReal),
        ("par", ogr.OFTString),
    ]
    line = f"LINESTRING ({EAST} {NORTH}, {EAST} {NORTH + 300})"
    path = write(
        tmp_path / "lines.shp",
        "ESRI Shapefile",
        [(line, {"number": 4, "stroke_ind": 17, "approach_y": 120.5, "par": "7"})],
        fields=fields,
        kind=ogr.wkbLineString,
    )
    found = read_vector(path, "hole", crs())
    attributes = found.candidates[0].attributes
    assert (attributes["number"], attributes["stroke_index"], attributes["approach_yd"]) == (4, 17, 120.5)
    assert "par" not in attributes
    assert "par “7” does not fit" in found.remarks[0]


def test_another_crs_is_transformed(qgis_app, tmp_path):
    path = write(
        tmp_path / "green.gpkg", "GPKG", [(DEGREES, {})], code=4326, kind=ogr.wkbPolygon, layer="green"
    )
    (candidate,) = read_vector(path, "green", crs()).candidates
    east, north = Transformer.from_crs("EPSG:4326", CRS, always_xy=True).transform([9, 9.0002], [10, 10.0002])
    assert candidate.geometry.bounds == pytest.approx((east[0], north[0], east[1], north[1]), abs=0.01)


def test_kml_of_several_types_of_geometry(qgis_app, tmp_path):
    path = write(
        tmp_path / "places.kml",
        "KML",
        [
            (DEGREES, {"Name": "Hole 7"}),
            (DEGREES_LINE, {"Name": "Hole 8"}),
            ("POINT (9 10)", {"Name": "Oak"}),
        ],
        code=4326,
        layer="places",
    )
    lines = read_vector(path, "hole", crs())
    assert [c.attributes["number"] for c in lines.candidates] == [8]
    assert sorted(why for _, why in lines.left_out) == [
        "it is a point, and a line is wanted",
        "it is an area, and a line is wanted",
    ]
    (oak,) = read_vector(path, "tree", crs()).candidates
    assert oak.attributes["label"] == "Oak"


def test_gpx_tracks_and_waypoints_but_not_their_vertices(qgis_app, tmp_path):
    text = """<?xml version="1.0"?><gpx version="1.1" creator="a test" xmlns="http://www.topografix.com/GPX/1/1">
    <wpt lat="10" lon="9"><name>150 post</name></wpt>
    <trk><name>Hole #12</name><trkseg><trkpt lat="10" lon="9"><ele>31</ele></trkpt>
    <trkpt lat="10.002" lon="9"/></trkseg></trk></gpx>"""
    path = tmp_path / "walk.gpx"
    path.write_text(text, encoding="utf-8")
    (hole,) = read_vector(str(path), "hole", crs()).candidates
    assert hole.attributes["number"] == 12
    assert not hole.geometry.has_z
    found = read_vector(str(path), "target", crs())
    assert [c.attributes["label"] for c in found.candidates] == ["150 post"]
    assert [what for what, _ in found.left_out] == ["walk.gpx:tracks 0"]


def test_dxf_needs_to_be_told_its_crs(qgis_app, tmp_path):
    closed = SQUARE.replace("POLYGON ((", "LINESTRING (").replace("))", ")")
    path = write(
        tmp_path / "plan.dxf", "DXF", [(closed, {}), (f"POINT ({EAST} {NORTH})", {})], layer="entities"
    )
    with pytest.raises(YardwrightError, match="SOURCE_CRS"):
        read_vector(path, "bunker", crs())
    found = read_vector(path, "bunker", crs(), source_crs=crs())
    assert [c.geometry.geom_type for c in found.candidates] == ["LineString"]
    assert found.candidates[0].geometry.bounds == (EAST, NORTH, EAST + 10, NORTH + 10)
    assert len(found.left_out) == 1


def test_source_crs_does_not_overrule_the_source(qgis_app, tmp_path):
    path = write(tmp_path / "green.gpkg", "GPKG", [(DEGREES, {})], code=4326, kind=ogr.wkbPolygon)
    found = read_vector(path, "green", crs(), source_crs=crs("EPSG:32631"))
    assert "was not used" in found.remarks[0]
    assert found.candidates[0].geometry.bounds[0] == pytest.approx(500000, abs=0.01)


def test_curves_become_segments_on_the_curve_and_heights_go(qgis_app):
    layer = QgsVectorLayer(f"CurvePolygonZ?crs={CRS}&field=label:string", "greens", "memory")
    feature = QgsFeature(layer.fields())
    feature.setGeometry(
        QgsGeometry.fromWkt(
            "CurvePolygonZ(CircularStringZ(500010 0 5, 500020 10 5, 500010 20 5, 500000 10 5, 500010 0 5))"
        )
    )
    layer.dataProvider().addFeatures([feature])
    (candidate,) = read_vector(layer, "green", crs()).candidates
    assert candidate.geometry.geom_type == "Polygon"
    assert not candidate.geometry.has_z
    # A circle of 10 m radius: pi r2, less what chords cut off.
    assert candidate.geometry.area == pytest.approx(314.159, rel=2e-3)
    assert candidate.origin == "greens/1"


def test_one_layer_of_a_file_by_name(qgis_app, tmp_path):
    path = write(tmp_path / "two.gpkg", "GPKG", [(SQUARE, {})], kind=ogr.wkbPolygon, layer="greens")
    source = ogr.Open(path, 1)
    made = source.CreateLayer("bunkers", reference(32632), ogr.wkbPolygon)
    feature = ogr.Feature(made.GetLayerDefn())
    feature.SetGeometry(ogr.CreateGeometryFromWkt(SQUARE))
    made.CreateFeature(feature)
    made = source = None
    assert len(open_layers(path)) == 2
    (candidate,) = read_vector(f"{path}|layername=bunkers", "bunker", crs()).candidates
    assert candidate.origin == "two.gpkg:bunkers/1"
    with pytest.raises(YardwrightError, match="no vector layer"):
        read_vector(f"{path}|layername=tees", "bunker", crs())


def test_only_what_meets_the_extent(qgis_app, tmp_path):
    path = write(tmp_path / "g.gpkg", "GPKG", [(SQUARE, {})], kind=ogr.wkbPolygon)
    near, far = box(EAST + 5, NORTH + 5, EAST + 90, NORTH + 90), box(EAST + 50, NORTH, EAST + 90, NORTH + 90)
    assert len(read_vector(path, "green", crs(), extent=near).candidates) == 1
    found = read_vector(path, "green", crs(), extent=far)
    assert found.candidates == ()
    assert "1 features lie outside" in found.remarks[0]


def survey(tmp_path, text, name="survey.csv", encoding="utf-8"):
    path = tmp_path / name
    path.write_text(text, encoding=encoding)
    return str(path)


def test_a_survey_in_degrees(qgis_app, tmp_path):
    path = survey(tmp_path, "Lon,Lat,hole,states_yd,pair\n9.002,10.001,7,150,a\n9.003,10.001,H07,oak,a\n")
    found = read_vector(path, "marker", crs())
    first, second = found.candidates
    east, north = Transformer.from_crs("EPSG:4326", CRS, always_xy=True).transform(9.002, 10.001)
    assert (first.geometry.x, first.geometry.y) == pytest.approx((east, north), abs=0.001)
    assert (first.holes, first.attributes["states_yd"], first.attributes["pair"]) == ((7,), 150.0, "a")
    assert second.holes == (7,)
    assert "states_yd “oak”" in found.remarks[0]
    assert first.origin == "survey.csv/2"


def test_a_survey_in_the_courses_own_crs_says_so(qgis_app, tmp_path):
    path = survey(
        tmp_path,
        f"easting;northing;label\r\n{EAST + 0.25};1105000,5;Oak\r\n".replace("0.25", "0,25"),
        encoding="utf-8-sig",
    )
    found = read_vector(path, "tree", crs())
    assert found.candidates[0].geometry.coords[0] == (EAST + 0.25, 1105000.5)
    assert "course’s own coordinate system" in found.remarks[0]


def test_a_survey_in_a_crs_that_is_named(qgis_app, tmp_path):
    path = survey(tmp_path, "x\ty\n9\t10\n", "survey.tsv")
    found = read_vector(path, "target", crs(), source_crs=crs("EPSG:4326"))
    assert found.candidates[0].geometry.x == pytest.approx(500000, abs=0.01)
    assert found.remarks == ()


def test_surveyed_outlines(qgis_app, tmp_path):
    left = "0,0,left bunker\n10,0,left bunker\n10,10,left bunker\n"
    rows = f"x,y,feature\n{left}0,0,stray\n50,0,right\n60,0,right\n60,9,right\n"
    found = read_vector(survey(tmp_path, rows), "bunker", crs())
    assert [c.geometry.area for c in found.candidates] == [50.0, 45.0]
    assert [c.attributes["label"] for c in found.candidates] == ["left bunker", "right"]
    assert found.left_out == (("survey.csv line 5 (“stray”)", "it has too few points"),)
    paths = read_vector(survey(tmp_path, rows), "path", crs())
    assert [round(c.geometry.length, 3) for c in paths.candidates] == [20.0, 19.0]
    with pytest.raises(YardwrightError, match="column “feature”"):
        read_vector(survey(tmp_path, "x,y\n1,2\n"), "bunker", crs())


def test_bad_rows_of_a_survey_are_named_by_line(qgis_app, tmp_path):
    found = read_vector(survey(tmp_path, "x,y\n1,2\nnan,3\n,4\nabc,5\n6,7\n"), "tree", crs())
    assert len(found.candidates) == 2
    assert [what for what, _ in found.left_out] == [
        "survey.csv line 3",
        "survey.csv line 4",
        "survey.csv line 5",
    ]


@pytest.mark.parametrize(
    ("name", "content", "says"),
    [
        ("none.csv", None, "is not there"),
        ("none.shp", None, "is not there"),
        ("empty.csv", b"", "has no rows"),
        ("head.csv", b"x,y\n", "has no rows"),
        ("other.csv", b"a,b\n1,2\n", "no columns of coordinates"),
        ("latin.csv", b"x,y,label\n1,2,caf\xe9\n", "cannot be read as CSV"),
        ("broken.shp", b"nothing of the kind", "no vector layer"),
        ("broken.gpkg", b"nothing of the kind", "no vector layer"),
        ("words.txt", b"nothing of the kind", "no vector layer"),
    ],
)
def test_files_that_cannot_be_read_say_so(qgis_app, tmp_path, name, content, says):
    path = tmp_path / name
    if content is not None:
        path.write_bytes(content)
    with pytest.raises(YardwrightError, match=says) as caught:
        read_vector(str(path), "tree", crs())
    assert caught.value.remedy


def test_an_unknown_kind_is_refused(qgis_app, tmp_path):
    with pytest.raises(YardwrightError, match="no layer “lake”"):
        read_vector(str(tmp_path / "x.shp"), "lake", crs())


def test_null_geometry_is_handed_on(qgis_app, tmp_path):
    path = write(tmp_path / "g.gpkg", "GPKG", [(None, {}), (SQUARE, {})], kind=ogr.wkbPolygon)
    assert [c.geometry is None for c in read_vector(path, "green", crs()).candidates] == [True, False]


def test_a_layer_whose_fields_are_tags(qgis_app, tmp_path):
    # The fields that map exports commonly have: full_id, osm_type, and a field a tag.
    fields = [(name, ogr.OFTString) for name in ("full_id", "golf", "ref", "par", "handicap")]
    path = write(
        tmp_path / "tags.gpkg",
        "GPKG",
        [(DEGREES, {"full_id": "w12", "golf": "green"}), (DEGREES, {"golf": "clubhouse"})],
        code=4326,
        fields=fields,
        kind=ogr.wkbPolygon,
    )
    assert has_golf_tags(path)
    rows, _, _ = read_rows(path, None, crs())
    found = candidates_of(things_of_rows(rows), crs())
    assert [(c.kind, c.origin, c.lasting) for c in found.candidates] == [("green", "osm:way/12", True)]
    assert len(found.left_out) == 1
    assert not has_golf_tags(write(tmp_path / "plain.gpkg", "GPKG", [(SQUARE, {})], kind=ogr.wkbPolygon))
