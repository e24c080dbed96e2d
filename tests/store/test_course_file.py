"""The course file: a sound GeoPackage with our layers, made whole or not at all, opened with care."""

import os
import shutil
import sqlite3
from contextlib import closing

import pytest
from yardwright.model.errors import YardwrightError
from yardwright.model.kinds import BY_NAME, KINDS, SCHEMA_VERSION, TABLES


def sql(path, statement, *values):
    with closing(sqlite3.connect(path)) as database, database:
        return database.execute(statement, values).fetchall()


def test_is_a_geopackage_1_3(course_file):
    """OGC GeoPackage 1.3 (12-128r17): requirements 2 (application_id, user_version), 6, 7, 10, 13, 22."""
    assert sql(course_file, "PRAGMA application_id") == [(0x47504B47,)]
    assert sql(course_file, "PRAGMA user_version") == [(10300,)]
    assert sql(course_file, "PRAGMA integrity_check") == [("ok",)]
    assert sql(course_file, "PRAGMA foreign_key_check") == []
    required = {-1, 0, 4326, 32630}
    assert required <= {row[0] for row in sql(course_file, "SELECT srs_id FROM gpkg_spatial_ref_sys")}
    listed = dict(sql(course_file, "SELECT table_name, data_type FROM gpkg_contents"))
    columns = {
        table: (column, shape, srs, z, m)
        for table, column, shape, srs, z, m in sql(course_file, "SELECT * FROM gpkg_geometry_columns")
    }
    assert {kind.name: listed[kind.name] for kind in KINDS} == {kind.name: "features" for kind in KINDS}
    assert {kind.name: listed[kind.name] for kind in TABLES} == {kind.name: "attributes" for kind in TABLES}
    assert columns == {kind.name: ("geom", kind.geometry.upper(), 32630, 0, 0) for kind in KINDS}


def test_has_the_fields_of_each_kind(course_file):
    types = {"text": "TEXT", "integer": "MEDIUMINT", "real": "REAL", "boolean": "BOOLEAN", "date": "DATE"}
    for kind in KINDS + TABLES:
        found = {row[1]: row[2] for row in sql(course_file, f"PRAGMA table_info({kind.name})")}
        wanted = {field.name: types[field.type] for field in kind.fields}
        wanted["fid"] = "INTEGER"
        if kind.geometry:
            wanted["geom"] = kind.geometry.upper()
        assert found == wanted, kind.name


def test_layers_named_by_the_interface_are_there():
    """The names of the course file's public face (design/interface.md), word for word."""
    layers = (
        "hole tee plate green apron fairway bunker rough penalty_area trees tree path boundary marker target "
        "image patch window pin"
    )
    tables = "course_info tee_set scorecard event event_round event_length hole_note"
    assert {kind.name for kind in KINDS} == {*layers.split(), "field_note"}
    assert {kind.name for kind in TABLES} == {*tables.split(), "event_flight", "pin_decision", "guide_page"}


def test_holds_what_the_scorecard_says(course_file):
    assert sql(course_file, "SELECT number, par, stroke_index, name, geom FROM hole") == [
        (1, 4, 2, "Burn", None),
        (2, 3, 1, None, None),
    ]
    assert sql(course_file, "SELECT name, sort FROM tee_set") == [("Heron", 1), ("Wren", 2)]
    # 350 m in yards of 0.9144 m (international yard and pound agreement, 1959)
    assert sql(course_file, "SELECT hole, tee_set, yards FROM scorecard") == [
        (1, "Heron", 402.0),
        (1, "Wren", pytest.approx(350 / 0.9144, abs=1e-9)),
        (2, "Heron", 161.0),
    ]
    info = sql(course_file, "SELECT schema_version, name, unit, corridor_yd FROM course_info")
    assert info == [(SCHEMA_VERSION, "Larkmere", "yd", 60.0)]


def test_tables_are_empty_without_a_scorecard(qgis_app, tmp_path):
    from yardwright.store.course_file import create_course

    path = tmp_path / "bare.gpkg"
    create_course(str(path), "Bare", "epsg:27700 ", unit="m")
    for table in ("hole", "tee_set", "scorecard"):
        assert sql(path, f"SELECT count(*) FROM {table}") == [(0,)]
    assert sql(path, "SELECT unit FROM course_info") == [("m",)]
    assert os.listdir(tmp_path) == ["bare.gpkg"]


@pytest.mark.parametrize(
    ("crs", "part"),
    [
        ("EPSG:999999", "no coordinate reference system EPSG:999999"),
        ("32630", "not a coordinate reference system"),
        ("", "not a coordinate reference system"),
        (None, "not a coordinate reference system"),
        ("EPSG:5703", "not a system for places on a map"),  # a height, NAVD88
        ("EPSG:4978", "not a system for places on a map"),  # geocentric WGS 84
    ],
)
def test_refuses_a_crs_it_cannot_use(qgis_app, tmp_path, crs, part):
    from yardwright.store.course_file import create_course

    with pytest.raises(YardwrightError, match=part):
        create_course(str(tmp_path / "c.gpkg"), "C", crs)
    assert os.listdir(tmp_path) == []


def test_never_overwrites(course_file):
    from yardwright.store.course_file import create_course

    before = course_file.read_bytes()
    with pytest.raises(YardwrightError, match="already exists"):
        create_course(str(course_file), "Other", "EPSG:32630")
    assert course_file.read_bytes() == before


def test_refuses_other_places(qgis_app, tmp_path):
    from yardwright.store.course_file import create_course

    with pytest.raises(YardwrightError, match="no folder"):
        create_course(str(tmp_path / "nowhere" / "c.gpkg"), "C", "EPSG:32630")
    with pytest.raises(YardwrightError, match="ends in .gpkg"):
        create_course(str(tmp_path / "c.shp"), "C", "EPSG:32630")
    with pytest.raises(YardwrightError, match="no name"):
        create_course(str(tmp_path / "c.gpkg"), " ", "EPSG:32630")
    with pytest.raises(YardwrightError, match="not available in this version"):
        create_course("postgres:club:larkmere", "C", "EPSG:32630")
    assert os.listdir(tmp_path) == []


def test_bad_rows_are_refused_by_name_or_left_out(qgis_app, tmp_path):
    from yardwright.store.course_file import create_course

    card = tmp_path / "card.csv"
    card.write_text("hole,par,Heron\n1,4,402\n2,9,300\nx,4,300\n", "utf-8")
    path = tmp_path / "c.gpkg"
    with pytest.raises(YardwrightError, match=r"line 3: par 9 .*; line 4: hole “x”"):
        create_course(str(path), "C", "EPSG:32630", str(card))
    assert not path.exists()
    left_out = create_course(str(path), "C", "EPSG:32630", str(card), take_good_rows=True)
    assert [line for line, _ in left_out] == [3, 4]
    assert sql(path, "SELECT number FROM hole") == [(1,)]


def test_nothing_is_left_when_the_last_step_fails(qgis_app, tmp_path, monkeypatch):
    from yardwright.store import course_file, styling

    def fail(dataset, crs):
        raise RuntimeError("disk full")

    monkeypatch.setattr(styling, "save_styles", fail)
    with pytest.raises(YardwrightError, match="disk full"):
        course_file.create_course(str(tmp_path / "c.gpkg"), "C", "EPSG:32630")
    assert os.listdir(tmp_path) == []


def test_odd_names_are_kept(qgis_app, tmp_path):
    from yardwright.store.course_file import create_course, open_course

    path = tmp_path / "50% #1 ?Ñ’.gpkg"
    create_course(str(path), "L’Étang '; drop table hole; --", "EPSG:32630")
    with open_course(str(path)) as layers:
        assert next(layers["course_info"].getFeatures())["name"] == "L’Étang '; drop table hole; --"


def test_opens_all_layers(course):
    assert set(course.layers) == {kind.name for kind in KINDS + TABLES}
    assert course.crs.authid() == "EPSG:32630"
    assert all(layer.isValid() for layer in course.layers.values())


def test_closing_lets_go_of_the_file(course_file):
    from shapely.geometry import Point
    from yardwright.model.course import Feature
    from yardwright.store.course_file import open_course
    from yardwright.store.writing import add_features

    layers = open_course(str(course_file))
    add_features(layers, [Feature("green", 0, Point(0, 0).buffer(10))])
    layers.close()
    layers.close()
    assert layers.layers == {}
    beside = [name for name in os.listdir(course_file.parent) if name.startswith(course_file.name)]
    assert beside == [course_file.name]  # no -wal, no -shm
    with closing(sqlite3.connect(course_file, timeout=0, isolation_level=None)) as database:
        assert database.execute("PRAGMA journal_mode").fetchall() == [("delete",)]
        database.execute("BEGIN EXCLUSIVE")  # refused while anybody holds the file
        database.execute("ROLLBACK")


def refused(path, part):
    from yardwright.store.course_file import open_course

    before = path.read_bytes() if path.is_file() else None
    with pytest.raises(YardwrightError, match=part) as caught:
        open_course(str(path))
    assert caught.value.what and caught.value.remedy
    assert (path.read_bytes() if path.is_file() else None) == before


def test_open_refuses_what_is_no_course(course_file, tmp_path):
    refused(tmp_path / "none.gpkg", "There is no file")
    text = tmp_path / "text.gpkg"
    text.write_text("hole,par\n1,4\n")
    refused(text, "not a GeoPackage")
    plain = tmp_path / "plain.gpkg"
    sql(plain, "CREATE TABLE t (a)")
    refused(plain, "not a GeoPackage")
    cut = tmp_path / "cut.gpkg"
    cut.write_bytes(course_file.read_bytes()[:5000])
    refused(cut, "damaged or in use|cannot be read")
    refused(tmp_path, "There is no file")
    with pytest.raises(YardwrightError, match="No course was given"):
        from yardwright.store.course_file import open_course

        open_course("")
    with pytest.raises(YardwrightError, match="not available in this version"):
        open_course("postgres:club:larkmere")


@pytest.mark.parametrize(
    ("statements", "part"),
    [
        ([f"UPDATE course_info SET schema_version = {SCHEMA_VERSION + 1}"], "newer Yardwright"),
        ([f"UPDATE course_info SET schema_version = {SCHEMA_VERSION - 1}"], "older than"),
        (["UPDATE course_info SET schema_version = NULL"], "does not say which version"),
        (["DELETE FROM course_info"], "does not say which version"),
        (["DELETE FROM gpkg_contents WHERE table_name = 'course_info'"], "holds no course"),
        (
            [
                "DELETE FROM gpkg_geometry_columns WHERE table_name = 'green'",
                "DELETE FROM gpkg_contents WHERE table_name = 'green'",
            ],
            "lacks these layers: green",
        ),
        (
            [
                "UPDATE gpkg_geometry_columns SET srs_id = -1",
                "UPDATE gpkg_contents SET srs_id = -1 WHERE data_type = 'features'",
            ],
            "does not say which coordinate reference system",
        ),
        (
            ["UPDATE gpkg_geometry_columns SET srs_id = 4326 WHERE table_name = 'green'"],
            "in different coordinate reference systems",
        ),
    ],
)
def test_open_refuses_a_course_it_does_not_understand(course_file, tmp_path, statements, part):
    path = tmp_path / "other.gpkg"
    shutil.copy(course_file, path)
    with closing(sqlite3.connect(path)) as database, database:
        database.execute("PRAGMA foreign_keys = OFF")
        for statement in statements:
            database.execute(statement)
    refused(path, part)


def test_default_crs_is_the_utm_zone():
    """Against PROJ: the zone's area of use in the EPSG register holds the place."""
    from pyproj import CRS
    from yardwright.store.course_file import default_crs

    for longitude in (-180, -179.9, -3.01, -2.99, 0, 5.9, 6.1, 144.5, 179.99):
        for latitude in (-55.0, -0.01, 0.01, 36.5, 70.0):
            area = CRS(default_crs(longitude, latitude)).area_of_use
            assert area.west <= longitude <= area.east, (longitude, latitude)
            assert area.south <= latitude <= area.north, (longitude, latitude)
    for place in ((float("nan"), 0), (0, 91), (float("inf"), 0)):
        with pytest.raises(YardwrightError):
            default_crs(*place)


def test_every_limit_of_a_field_can_be_met():
    for kind in BY_NAME.values():
        for field in kind.fields:
            if field.low is not None and field.high is not None:
                assert field.low <= field.high
            if field.values is not None and field.default is not None:
                assert field.default in field.values
