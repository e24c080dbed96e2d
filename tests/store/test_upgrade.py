"""Older course files brought up to date: on a copy, the old one kept, every row as it was."""

import os
import shutil
import sqlite3
import threading
from contextlib import closing
from pathlib import Path

import pytest
from shapely.geometry import Point
from yardwright.model.course import Feature
from yardwright.model.errors import YardwrightError
from yardwright.model.event import Event, Limits, Round
from yardwright.model.kinds import BY_NAME, KINDS, SCHEMA_VERSION, TABLES

from tests.older import make_older


def sql(path, statement, *values):
    with closing(sqlite3.connect(path)) as database, database:
        return database.execute(statement, values).fetchall()


@pytest.fixture
def old_file(course_file):
    """A course file of version 1 with an event, a round, a length, a green and a pin."""
    from yardwright.store.course_file import open_course
    from yardwright.store.writing import add_features

    with open_course(str(course_file)) as layers:
        add_features(
            layers,
            [
                Feature("green", None, Point(500_000, 6_200_000).buffer(12), (1,), "Burn side"),
                Feature(
                    "pin", None, Point(500_003, 6_200_001), (1,), attributes={"event": "Cup", "round": 1}
                ),
                Feature("event", None, None, attributes={"name": "Cup"}),
                Feature("event_round", None, None, attributes={"event": "Cup", "round": 1}),
                Feature(
                    "event_length",
                    None,
                    None,
                    attributes={"event": "Cup", "round": 1, "flight": "A", "hole": 1, "yards": 390.5},
                ),
            ],
        )
    make_older(course_file, 1)
    return course_file


def content(path):
    """All rows of the tables of version 1, without what came with version 2."""
    columns = {}
    for kind in KINDS + TABLES:
        columns[kind.name] = [row[1] for row in sql(path, f"PRAGMA table_info({kind.name})")]
    return {
        name: sql(path, f"SELECT {', '.join(names)} FROM {name} ORDER BY fid")
        for name, names in columns.items()
        if names and name != "course_info"
    }


def test_an_older_file_is_refused_and_told_apart(old_file):
    from yardwright.store.course_file import OlderCourse, open_course

    before = old_file.read_bytes()
    with pytest.raises(OlderCourse, match="has version 1, older than the version 4") as caught:
        open_course(str(old_file))
    assert caught.value.what and caught.value.remedy and caught.value.path == str(old_file)
    assert old_file.read_bytes() == before


def test_it_is_brought_up_to_date_and_the_old_one_kept(old_file):
    from yardwright.store.course_file import open_course
    from yardwright.store.events import read_event
    from yardwright.store.upgrade import upgrade_course

    before, rows = old_file.read_bytes(), content(old_file)
    kept = upgrade_course(str(old_file))
    assert kept == str(old_file.parent / "Larkmere-1.gpkg")
    assert Path(kept).read_bytes() == before
    assert sorted(os.listdir(old_file.parent)) == ["Larkmere-1.gpkg", "Larkmere.gpkg"]
    now = content(old_file)
    for name, old in rows.items():
        assert [row[: len(old[0])] for row in now[name]] == old if old else now[name] == [], name
    assert sql(old_file, "SELECT margin_yd, slope_pct, apart_yd FROM event") == [(4.0, None, 3.0)]
    with open_course(str(old_file)) as layers:
        event = read_event(layers, "Cup")
    assert event.rounds == (Round(1),) and event.limits == Limits()
    assert len(event.lengths) == len(event.pins) == 1


def test_it_is_then_what_a_new_file_is(old_file, tmp_path):
    """OGC GeoPackage 1.3 (12-128r17): requirements 2, 6, 7, 13; and the columns and styles of a new file."""
    from yardwright.store.course_file import create_course
    from yardwright.store.upgrade import upgrade_course

    upgrade_course(str(old_file))
    new = tmp_path / "new.gpkg"
    create_course(str(new), "New", "EPSG:32630")
    for pragma in ("application_id", "user_version", "integrity_check", "foreign_key_check"):
        assert sql(old_file, f"PRAGMA {pragma}") == sql(new, f"PRAGMA {pragma}")
    for kind in KINDS + TABLES:
        columns = [
            {(row[1], row[2]) for row in sql(path, f"PRAGMA table_info({kind.name})")}
            for path in (old_file, new)
        ]
        assert columns[0] == columns[1], kind.name
    for query in (
        "SELECT table_name, data_type, srs_id FROM gpkg_contents ORDER BY 1",
        "SELECT * FROM gpkg_geometry_columns ORDER BY 1",
        "SELECT f_table_name, styleName, useAsDefault, description FROM layer_styles ORDER BY 1",
        "SELECT schema_version FROM course_info",
    ):
        assert sql(old_file, query) == sql(new, query)
    for table in ("event", "event_round", "event_flight", "pin_decision"):
        (style,) = sql(old_file, "SELECT styleQML FROM layer_styles WHERE f_table_name = ?", table)
        assert all(field.name in style[0] for field in BY_NAME[table].fields), table


def test_a_file_of_version_2(course_file):
    from yardwright.store.course_file import open_course
    from yardwright.store.reading import read_course
    from yardwright.store.upgrade import upgrade_course
    from yardwright.store.writing import add_features

    date = {"id": "may", "source": "may.tif", "taken": "2025-05-09", "shift_e_m": 0.25, "rmse_m": 0.1}
    with open_course(str(course_file)) as layers:
        ground = Point(500_000, 6_200_000).buffer(100, 1)
        add_features(layers, [Feature("image", None, ground, attributes=date)])
    make_older(course_file, 2)
    before = sql(course_file, "SELECT * FROM image")
    upgrade_course(str(course_file))
    (after,) = sql(course_file, "SELECT * FROM image")
    assert [after[: len(before[0])]] == before and after[len(before[0]) :] == (None, None)
    with open_course(str(course_file)) as layers:
        (image,) = read_course(layers).images
    assert (image.source, image.shift_e_m, image.shift_n_m, image.moved) == ("may.tif", 0.25, 0.0, "")


def test_a_file_of_version_3(course_file):
    from yardwright.store.course_file import open_course
    from yardwright.store.events import read_event
    from yardwright.store.guide_pages import read_guide_pages
    from yardwright.store.upgrade import upgrade_course
    from yardwright.store.writing import add_features

    with open_course(str(course_file)) as layers:
        add_features(layers, [Feature("event", None, None, attributes={"name": "Cup", "note": "in May"})])
    make_older(course_file, 3)
    upgrade_course(str(course_file))
    assert sql(course_file, "SELECT name, note, host, rules_off FROM event") == [
        ("Cup", "in May", None, None)
    ]
    with open_course(str(course_file)) as layers:
        event = read_event(layers, "Cup")
        assert read_guide_pages(layers) == () and layers.layers["field_note"].featureCount() == 0
    assert event.host == "" and event.rules_off == ()


def test_a_style_somebody_made_stays(old_file):
    from yardwright.store.upgrade import upgrade_course

    sql(old_file, "UPDATE layer_styles SET styleQML = 'mine' WHERE f_table_name = 'green'")
    upgrade_course(str(old_file))
    assert sql(old_file, "SELECT styleQML FROM layer_styles WHERE f_table_name = 'green'") == [("mine",)]


def test_the_next_free_name(old_file):
    from yardwright.store.upgrade import upgrade_course

    for number in (1, 2):
        (old_file.parent / f"Larkmere-{number}.gpkg").write_text("somebody's")
    assert upgrade_course(str(old_file)).endswith("Larkmere-3.gpkg")
    assert (old_file.parent / "Larkmere-1.gpkg").read_text() == "somebody's"


def test_where_no_file_has_two_names(old_file, monkeypatch):
    from yardwright.store import upgrade

    def refuse(*_):
        raise OSError("not here")

    before = old_file.read_bytes()
    monkeypatch.setattr(upgrade.os, "link", refuse)
    assert Path(upgrade.upgrade_course(str(old_file))).read_bytes() == before
    assert len(os.listdir(old_file.parent)) == 2


@pytest.mark.skipif(os.name == "nt", reason="links need rights there")
def test_what_a_link_leads_to_is_brought_up_to_date(old_file, tmp_path_factory):
    from yardwright.store.upgrade import upgrade_course

    link = tmp_path_factory.mktemp("desk") / "course.gpkg"
    link.symlink_to(old_file)
    assert upgrade_course(str(link)) == str(old_file.parent / "Larkmere-1.gpkg")
    assert link.is_symlink() and os.listdir(link.parent) == ["course.gpkg"]
    assert sql(old_file, "SELECT schema_version FROM course_info") == [(SCHEMA_VERSION,)]


def test_nothing_to_do(course_file):
    from yardwright.store.upgrade import upgrade_course

    before = course_file.read_bytes()
    assert upgrade_course(str(course_file)) is None
    assert course_file.read_bytes() == before and os.listdir(course_file.parent) == [course_file.name]


def refused(path, part):
    from yardwright.store.upgrade import upgrade_course

    before, beside = path.read_bytes(), sorted(os.listdir(path.parent))
    with pytest.raises(YardwrightError, match=part) as caught:
        upgrade_course(str(path))
    assert caught.value.what and caught.value.remedy
    assert path.read_bytes() == before and sorted(os.listdir(path.parent)) == beside


def test_a_newer_file_is_left_alone(course_file):
    sql(course_file, f"UPDATE course_info SET schema_version = {SCHEMA_VERSION + 1}")
    refused(course_file, "newer Yardwright")


def test_a_file_that_lacks_more_is_left_alone(old_file):
    with closing(sqlite3.connect(old_file)) as database, database:
        database.execute("DROP TABLE hole_note")
        database.execute("DELETE FROM gpkg_contents WHERE table_name = 'hole_note'")
        database.execute("DELETE FROM gpkg_ogr_contents WHERE table_name = 'hole_note'")
    refused(old_file, "lacks these layers: hole_note")


def test_nothing_is_left_when_a_step_fails(old_file, monkeypatch):
    from yardwright.store import styling, upgrade

    def fail(*_):
        raise RuntimeError("disk full")

    monkeypatch.setattr(styling, "save_style", fail)
    refused(old_file, "disk full")
    monkeypatch.undo()
    bring_up = upgrade._bring_up

    def spoil(path, draft, version):
        bring_up(path, draft, version)
        sql(draft, spoilings[-1])

    monkeypatch.setattr(upgrade, "_bring_up", spoil)
    spoilings = [
        "UPDATE event_length SET yards = 390.6",
        "UPDATE event SET name = NULL",
        "INSERT INTO event (name) VALUES ('Bowl')",
        "DELETE FROM event_round",
        "UPDATE course_info SET schema_version = 1",
    ]
    while spoilings:
        refused(old_file, "could not be brought up to date|older than")
        spoilings.pop()
    monkeypatch.undo()
    replace = os.replace

    def no_replacing(source, target):
        if target == str(old_file):
            raise PermissionError(13, "in use")
        replace(source, target)

    monkeypatch.setattr(os, "replace", no_replacing)
    refused(old_file, "cannot be written")


def test_a_file_somebody_writes_to_is_left_alone(old_file):
    with closing(sqlite3.connect(old_file, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        refused(old_file, "damaged or in use")


def test_a_file_in_the_mode_qgis_writes_in(old_file):
    """Its last changes lie beside it in a file of their own, and come along."""
    from yardwright.store.upgrade import upgrade_course

    with closing(sqlite3.connect(old_file)) as other, other:
        other.execute("PRAGMA journal_mode = WAL")
    with closing(sqlite3.connect(old_file)) as other:
        other.execute("UPDATE event SET name = 'Bowl'")
        other.commit()
        aside = old_file.parent / "aside"
        aside.mkdir()
        for name in ("Larkmere.gpkg", "Larkmere.gpkg-wal"):
            shutil.copy(old_file.parent / name, aside / name)
    upgrade_course(str(aside / "Larkmere.gpkg"))
    assert sql(aside / "Larkmere.gpkg", "SELECT name FROM event") == [("Bowl",)]
    assert sorted(os.listdir(aside)) == ["Larkmere-1.gpkg", "Larkmere.gpkg"]


def test_layers_that_are_being_edited_stand_in_the_way(old_file, qgis_app):
    from qgis.core import QgsVectorLayer

    layer = QgsVectorLayer(f"{old_file}|layername=green", "green", "ogr")
    assert layer.startEditing()
    row = next(layer.getFeatures())
    layer.changeAttributeValue(row.id(), layer.fields().lookupField("label"), "Hill")
    with pytest.raises(YardwrightError, match="in use"):
        from yardwright.store.upgrade import upgrade_course

        upgrade_course(str(old_file))
    assert layer.commitChanges()
    assert not [name for name in os.listdir(old_file.parent) if "-1" in name]


def test_layers_of_a_project_read_the_new_file(old_file, qgis_new_project):
    """A project that holds the layers of the old file writes into the new one from then on."""
    from qgis.core import QgsProject, QgsVectorLayer
    from yardwright.store.course_file import open_course
    from yardwright.store.layer_group import (
        COURSE_MARK,
        KIND_MARK,
        add_course_group,
        course_layers_of,
        reopen_layers,
    )
    from yardwright.store.upgrade import upgrade_course

    project = QgsProject.instance()
    group = project.layerTreeRoot().addGroup("Larkmere")
    group.setCustomProperty(COURSE_MARK, str(old_file))
    for kind in KINDS + TABLES:
        layer = QgsVectorLayer(f"{old_file}|layername={kind.name}", kind.title, "ogr")
        if layer.isValid():
            layer.setCustomProperty(KIND_MARK, kind.name)
            project.addMapLayer(layer, False)
            group.addLayer(layer)
    kept = upgrade_course(str(old_file))
    reopen_layers(project, str(old_file))
    with open_course(str(old_file)) as layers:
        add_course_group(project, layers)
    course = course_layers_of(group)
    assert "margin_yd" in course["event"].fields().names()
    assert (
        course["event"].editorWidgetSetup(course["event"].fields().lookupField("begins")).type() == "DateTime"
    )
    layer = course["green"]
    assert layer.startEditing()
    row = next(layer.getFeatures())
    layer.changeAttributeValue(row.id(), layer.fields().lookupField("label"), "Hill")
    assert layer.commitChanges()
    project.clear()
    assert sql(old_file, "SELECT label FROM green") == [("Hill",)]
    assert sql(kept, "SELECT label FROM green") == [("Burn side",)]


def test_nobody_writes_to_the_old_file_meanwhile(old_file, monkeypatch):
    """A writer that comes while the copy is made waits, and fails if it will not."""
    from yardwright.store import upgrade

    bring_up, failures = upgrade._bring_up, []

    def write():
        try:
            with closing(sqlite3.connect(old_file, timeout=0)) as other, other:
                other.execute("UPDATE event SET name = 'Bowl'")
        except sqlite3.OperationalError as error:
            failures.append(str(error))

    def meanwhile(*how):
        thread = threading.Thread(target=write)
        thread.start()
        thread.join()
        return bring_up(*how)

    monkeypatch.setattr(upgrade, "_bring_up", meanwhile)
    kept = upgrade.upgrade_course(str(old_file))
    assert failures == ["database is locked"]
    assert sql(kept, "SELECT name FROM event") == sql(old_file, "SELECT name FROM event") == [("Cup",)]


def test_an_event_keeps_its_name(old_file):
    from yardwright.store.course_file import open_course
    from yardwright.store.events import read_events, write_event
    from yardwright.store.upgrade import upgrade_course

    upgrade_course(str(old_file))
    with open_course(str(old_file)) as layers:
        write_event(layers, Event("Bowl", rounds=(Round(1, "2026-05-01", (2, 1), "two tees"),)))
        assert [event.name for event in read_events(layers)] == ["Cup", "Bowl"]
