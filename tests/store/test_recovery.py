"""What is not saved, taken out of edit buffers, written, read and put back: exactly, and only where it fits."""

import json
import math
import os
import struct
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from qgis.core import NULL, Qgis, QgsFeature, QgsGeometry, QgsVectorLayer, QgsVectorLayerUtils
from qgis.PyQt.QtCore import QByteArray, QDate, QDateTime, QTime
from yardwright.model.errors import YardwrightError
from yardwright.store import recovery

SQUARE = "Polygon ((500000.1 6200000, 500010 6200000, 500010 6200010.7, 500000.1 6200000))"
OTHER = "Polygon ((500100 6200000, 500110 6200000, 500110 6200010, 500100 6200000))"


def add(layer, wkt=None, **values):
    """Add a row as the drawing tools do."""
    layer.startEditing()
    places = {layer.fields().lookupField(name): value for name, value in values.items()}
    shape = QgsGeometry.fromWkt(wkt) if wkt else QgsGeometry()
    assert layer.addFeature(QgsVectorLayerUtils.createFeature(layer, shape, places))


def change(layer, fid, **values):
    for name, value in values.items():
        assert layer.changeAttributeValue(fid, layer.fields().lookupField(name), value)


def taken(layer):
    return recovery.unsaved(layer, recovery.SavedRows(layer))


def rows(layer):
    """What a layer holds, its keys left out: WKT at full length and values."""
    found = []
    for feature in layer.getFeatures():
        values = [None if value == NULL else value for value in feature.attributes()[1:]]
        found.append((feature.geometry().asWkt(17) if feature.hasGeometry() else "", *values))
    return sorted(found, key=repr)


def end(layer):
    """The buffer is lost, as when QGIS is killed."""
    layer.rollBack()
    layer.startEditing()


def restored(layer, part, kind="bunker"):
    """Put ``part`` back after a journey through a file; the Plan."""
    path = os.path.join(os.path.dirname(layer.source().split("|")[0]), "copy~")
    recovery.write_copy(path, "Larkmere.gpkg", {kind: recovery.as_text(part)})
    plan = recovery.plan_for(layer, kind, recovery.read_copy(path).parts[kind])
    layer.startEditing()
    recovery.put_back(layer, plan)
    return plan


@pytest.fixture
def bunkers(course):
    """The layer of bunkers with two saved rows; not being edited afterwards."""
    layer = course["bunker"]
    add(layer, SQUARE, label="Ness", holes="1", note="")
    add(layer, OTHER, label="Hurn")
    assert layer.commitChanges()
    yield layer
    layer.rollBack()


def fid_of(layer, label):
    return next(one.id() for one in layer.getFeatures() if one["label"] == label)


# Values


dates = st.dates().map(lambda day: QDate(day.year, day.month, day.day))
times = st.times().map(lambda t: QTime(t.hour, t.minute, t.second, t.microsecond // 1000))
moments = st.builds(QDateTime, dates, times)
leaves = st.one_of(
    st.booleans(),
    st.integers(-(2**63), 2**63 - 1),
    st.floats(),
    st.text(st.characters(codec="utf-16")),
    dates,
    times,
    moments,
    moments.map(lambda moment: moment.toUTC()),
    moments.map(lambda moment: moment.toOffsetFromUtc(5400)),
    st.binary().map(QByteArray),
)
inner = st.recursive(
    st.none() | leaves, lambda some: st.lists(some) | st.dictionaries(st.text(), some), max_leaves=6
)


@settings(deadline=None)
@given(leaves | st.lists(inner) | st.dictionaries(st.text(), inner))
def test_values_come_back_exactly(value):
    back = recovery.value_of(json.loads(json.dumps(recovery.plain(value))))
    if isinstance(value, float):
        assert struct.pack("d", back) == struct.pack("d", value) or (math.isnan(back) and math.isnan(value))
    elif isinstance(value, (list, dict)):
        assert repr(back) == repr(value)
    else:
        assert type(back) is type(value) and back == value
    if isinstance(value, QDateTime):
        assert back.timeSpec() == value.timeSpec() and back.offsetFromUtc() == value.offsetFromUtc()


def test_nothing_comes_back_as_null():
    assert recovery.value_of(recovery.plain(NULL)) == NULL and recovery.value_of(recovery.plain(None)) == NULL
    assert recovery.value_of(recovery.plain(QDate())) == NULL


numbers = st.floats(allow_nan=False, allow_infinity=False)
texts = st.none() | st.text(st.characters(codec="utf-8", exclude_characters="\0"), max_size=8)


@settings(deadline=None, max_examples=60)
@given(
    st.sampled_from(["Point", "PointZ", "LineString", "PolygonZM", "MultiPolygon"]),
    st.lists(st.tuples(numbers, numbers, numbers, numbers), min_size=3, max_size=9),
    texts,
    st.none() | st.booleans(),
    st.none() | numbers,
    st.none() | dates,
)
def test_rows_come_back_exactly(qgis_app, wkb_type, places, text, truth, number, day):
    fields = "field=text:string&field=truth:bool&field=number:double&field=day:date"
    layer = QgsVectorLayer(f"{wkb_type}?crs=EPSG:32630&{fields}", "any", "memory")
    layer.startEditing()
    feature = QgsFeature(layer.fields())
    feature.setGeometry(QgsGeometry.fromWkt(_wkt(wkb_type, places)))
    feature.setAttributes([text, truth, number, day])
    assert layer.addFeature(feature)

    def now():
        (row,) = layer.getFeatures()
        values = [None if value == NULL else value for value in row.attributes()]
        return bytes(row.geometry().asWkb()), values, [type(value) for value in values]

    before, part = now(), json.loads(recovery.as_text(taken(layer)))
    end(layer)
    recovery.put_back(layer, recovery.plan_for(layer, "any", part))
    assert now() == before


def _wkt(wkb_type, places):
    used = {"Z": 3, "M": 4}.get(wkb_type[-1], 2)
    points = [" ".join(map(repr, place[:used])) for place in places]
    if wkb_type.startswith("Point"):
        return f"{wkb_type} ({points[0]})"
    line = ", ".join(points)
    if wkb_type == "LineString":
        return f"LineString ({line})"
    ring = f"(({line}, {points[0]}))"
    return f"{wkb_type} ({ring})" if wkb_type.startswith("Multi") else f"{wkb_type} {ring}"


# Edit buffers


def test_nothing_unsaved_is_nothing(bunkers):
    assert taken(bunkers) is None
    bunkers.startEditing()
    assert taken(bunkers) is None
    add(bunkers, SQUARE)
    bunkers.undoStack().undo()
    assert taken(bunkers) is None


def test_all_that_was_done_is_back_after_the_end(bunkers):
    add(bunkers, OTHER.replace("500100", "500200"), label="Third", holes="2", view="clear")
    add(bunkers, OTHER.replace("500100", "500300"))
    bunkers.changeGeometry(fid_of(bunkers, "Ness"), QgsGeometry.fromWkt(OTHER.replace("500100", "500101")))
    change(bunkers, fid_of(bunkers, "Ness"), note="deeper now", holes=NULL)
    bunkers.deleteFeature(fid_of(bunkers, "Hurn"))
    before, part = rows(bunkers), taken(bunkers)
    assert recovery.number_of(part) == 4
    end(bunkers)
    assert rows(bunkers) != before
    plan = restored(bunkers, part)
    assert (plan.number, plan.there, plan.refused) == (4, 0, [])
    assert rows(bunkers) == before
    assert bunkers.commitChanges(), bunkers.commitErrors()
    assert rows(bunkers) == before


def test_rows_of_a_table_and_of_other_types(course):
    image, info = course["image"], course["course_info"]
    add(image, SQUARE, id="may", taken=QDate(2025, 5, 9), gsd_m=0.1, print_allowed=True, shift_e_m=-0.0)
    info.startEditing()
    fid = next(info.getFeatures()).id()
    change(info, fid, corridor_yd=1 / 3, layup_yd=NULL)
    before = rows(image), rows(info)
    parts = taken(image), taken(info)
    for layer in (image, info):
        end(layer)
    for layer, kind, part in zip((image, info), ("image", "course_info"), parts):
        assert restored(layer, part, kind).number == 1
    assert (rows(image), rows(info)) == before
    assert image.commitChanges() and info.commitChanges()
    assert (rows(image), rows(info)) == before


def test_a_shape_given_to_a_row_and_one_taken_away(bunkers):
    add(bunkers, None, label="Bare")
    assert bunkers.commitChanges()
    bunkers.startEditing()
    assert bunkers.changeGeometry(fid_of(bunkers, "Bare"), QgsGeometry.fromWkt(SQUARE))
    assert bunkers.changeGeometry(fid_of(bunkers, "Ness"), QgsGeometry())
    before, part = rows(bunkers), taken(bunkers)
    end(bunkers)
    assert restored(bunkers, part).number == 2
    assert rows(bunkers) == before


def test_a_change_and_a_deletion_of_one_row_is_a_deletion(bunkers):
    bunkers.startEditing()
    fid = fid_of(bunkers, "Ness")
    change(bunkers, fid, note="x")
    bunkers.deleteFeature(fid)
    part = taken(bunkers)
    assert (part["changed"], [one["fid"] for one in part["deleted"]]) == ([], [fid])


def test_what_was_saved_before_the_end_is_not_put_back_twice(bunkers):
    """Killed amid saving: the copy is still that of before."""
    for _ in range(2):  # two alike, both wanted
        add(bunkers, SQUARE, label="Twin")
    change(bunkers, fid_of(bunkers, "Ness"), note="deeper")
    bunkers.deleteFeature(fid_of(bunkers, "Hurn"))
    part = taken(bunkers)
    assert bunkers.commitChanges()
    before = rows(bunkers)
    plan = restored(bunkers, part)
    assert (plan.number, plan.there, plan.refused) == (0, 4, [])
    assert rows(bunkers) == before


def test_what_is_put_back_already_is_not_put_back_twice(bunkers):
    add(bunkers, OTHER.replace("500100", "500200"), label="Third")
    part = taken(bunkers)
    end(bunkers)
    assert restored(bunkers, part).number == 1
    again = restored(bunkers, part)
    assert (again.number, again.there) == (0, 1)


def test_a_row_like_one_saved_long_ago_is_put_back(bunkers):
    add(bunkers, SQUARE, label="Ness", holes="1", note="")
    part = taken(bunkers)
    end(bunkers)
    assert restored(bunkers, part).number == 1
    assert len(rows(bunkers)) == 3


def test_what_has_gone_on_meanwhile_is_told_and_left(bunkers):
    add(bunkers, OTHER.replace("500100", "500200"), label="Third")
    bunkers.commitChanges()
    bunkers.startEditing()
    fids = {label: fid_of(bunkers, label) for label in ("Ness", "Hurn", "Third")}
    change(bunkers, fids["Ness"], note="mine")
    change(bunkers, fids["Third"], note="mine too")
    bunkers.deleteFeature(fids["Hurn"])
    part = taken(bunkers)
    end(bunkers)
    change(bunkers, fids["Ness"], note="another's")
    change(bunkers, fids["Hurn"], note="another's")
    bunkers.deleteFeature(fids["Third"])
    bunkers.commitChanges()
    before = rows(bunkers)
    plan = restored(bunkers, part)
    assert plan.number == 0 and rows(bunkers) == before
    why = dict(plan.refused)
    assert "changed in the course meanwhile" in why["Bunker “Ness”"]
    assert "no longer in the course" in why["Bunker “Third”"]
    assert "was to be deleted" in why["Bunker “Hurn”"]


def test_another_field_changed_meanwhile_does_no_harm(bunkers):
    bunkers.startEditing()
    fid = fid_of(bunkers, "Ness")
    change(bunkers, fid, note="mine")
    part = taken(bunkers)
    end(bunkers)
    change(bunkers, fid, holes="3")
    bunkers.commitChanges()
    assert restored(bunkers, part).number == 1
    assert [bunkers.getFeature(fid)[name] for name in ("note", "holes")] == ["mine", "3"]


def test_a_layer_that_does_not_fit_takes_nothing(bunkers):
    add(bunkers, SQUARE, label="Third")
    part = taken(bunkers)
    end(bunkers)
    for layer, wrong in (
        (None, part),
        (bunkers, {**part, "crs": "EPSG:4326"}),
        (bunkers, {**part, "added": [{"geometry": None, "values": {"label": "Third", "depth": 2}}]}),
        (
            bunkers,
            {
                **part,
                "added": [
                    {"geometry": None, "values": {"label": "Third", "note": {"is": "other", "value": "?"}}}
                ],
            },
        ),
    ):
        plan = recovery.plan_for(layer, "bunker", wrong)
        assert plan.number == 0 and [name for name, _ in plan.refused] == ["Bunker “Third”"]


def test_edits_within_an_open_transaction(bunkers, qgis_new_project):
    """A project may have edits go into the file at once, within a transaction: a kill takes them back."""
    from qgis.core import QgsProject

    project = QgsProject.instance()
    mine = bunkers.clone()
    if hasattr(project, "setTransactionMode"):
        project.setTransactionMode(Qgis.TransactionMode.AutomaticGroups)
    else:
        project.setAutoTransaction(True)
    project.addMapLayer(mine)
    assert mine.startEditing() and recovery.writes_through(mine)
    add(mine, OTHER.replace("500100", "500200"), label="Third")
    change(mine, fid_of(mine, "Ness"), note="deeper")
    mine.deleteFeature(fid_of(mine, "Hurn"))
    before, part = rows(mine), taken(mine)
    mine.rollBack()
    project.clear()
    plan = restored(bunkers, part)
    assert (plan.number, plan.refused) == (3, [])
    assert rows(bunkers) == before


# The file


@pytest.fixture
def copy(bunkers, tmp_path):
    add(bunkers, SQUARE, label="Third")
    path = str(tmp_path / "Larkmere.gpkg-unsaved~")
    recovery.write_copy(path, "Larkmere.gpkg", {"bunker": recovery.as_text(taken(bunkers))})
    return path


def test_a_copy_says_what_it_is(copy):
    with open(copy, encoding="utf-8") as file:
        whole = json.load(file)
    assert whole["by"]["pid"] == os.getpid() and whole["version"] == recovery.VERSION
    read = recovery.read_copy(copy)
    assert (read.course, read.number, list(read.parts)) == ("Larkmere.gpkg", 1, ["bunker"])
    assert os.listdir(os.path.dirname(copy)).count("Larkmere.gpkg-unsaved~part") == 0


def broken(whole, how):
    text = json.dumps(whole)
    part = whole["layers"]["bunker"]
    if how == "cut":
        return text[: len(text) // 2]
    if how == "foreign":
        return '{"type": "FeatureCollection"}'
    if how == "list":
        return "[]"
    if how == "geometry":
        part["added"][0]["geometry"] = part["added"][0]["geometry"][:40]
    if how == "no geometry":
        del part["added"][0]["geometry"]
    if how == "value":
        part["added"][0]["values"]["note"] = {"is": "secret", "value": "x"}
    if how == "part":
        whole["layers"]["bunker"] = 7
    if how == "fid":
        part["deleted"] = [{"fid": "1", "before": None}]
    return json.dumps(whole)


@pytest.mark.parametrize("how", ["cut", "foreign", "list", "geometry", "no geometry", "value", "part", "fid"])
def test_a_broken_copy_is_refused_and_kept(copy, how):
    with open(copy, encoding="utf-8") as file:
        text = broken(json.load(file), how)
    with open(copy, "w", encoding="utf-8") as file:
        file.write(text)
    with pytest.raises(YardwrightError) as caught:
        recovery.read_copy(copy)
    kept = copy.replace("-unsaved~", "-unsaved-kept~")
    assert kept in caught.value.remedy and not os.path.exists(copy)
    with open(kept, encoding="utf-8") as file:
        assert file.read() == text


def test_bytes_that_are_no_text_are_a_broken_copy(copy):
    with open(copy, "wb") as file:
        file.write(b"\xff\x00\x81")
    with pytest.raises(YardwrightError):
        recovery.read_copy(copy)


def test_a_copy_of_a_newer_program_waits_for_it(copy):
    with open(copy, encoding="utf-8") as file:
        whole = json.load(file)
    with open(copy, "w", encoding="utf-8") as file:
        json.dump({**whole, "version": recovery.VERSION + 1}, file)
    with pytest.raises(YardwrightError) as caught:
        recovery.read_copy(copy)
    assert "newer" in caught.value.what and os.path.exists(copy)


def test_copies_set_aside_never_take_each_others_place(tmp_path):
    kept = []
    for number in range(3):
        path = tmp_path / "a.gpkg-unsaved-2~"
        path.write_text(str(number))
        kept.append(recovery.set_aside(str(path)))
    assert [Path(path).read_text() for path in kept] == ["0", "1", "2"]
    assert recovery.copies([str(tmp_path / "a.gpkg-unsaved")]) == []


# Places


def test_places_are_beside_the_course_and_then_in_the_profile(course_file, tmp_path):
    stems = recovery.copy_stems(str(course_file), str(tmp_path / "profile"))
    assert stems[0] == f"{course_file}-unsaved"
    assert stems[1].startswith(str(tmp_path / "profile"))
    link = tmp_path / "link.gpkg"
    link.symlink_to(course_file)
    assert recovery.copy_stems(str(link), str(tmp_path / "profile"))[1] == stems[1]
    (only,) = recovery.copy_stems("postgres:club:larkmere", str(tmp_path / "profile"))
    assert only.startswith(str(tmp_path / "profile")) and only != stems[1]


def test_a_place_is_held_by_one_only(tmp_path):
    stems = [str(tmp_path / "a.gpkg-unsaved")]
    first, second = recovery.hold_new(stems), recovery.hold_new(stems)
    assert [os.path.basename(one.path) for one in (first, second)] == ["a.gpkg-unsaved~", "a.gpkg-unsaved-2~"]
    recovery.write_copy(first.path, "a.gpkg", {})
    assert recovery.hold(first.path) is None
    first.release()
    third = recovery.hold_new(stems)  # a copy that was left is never written over
    assert os.path.basename(third.path) == "a.gpkg-unsaved-3~"
    assert recovery.copies(stems) == [first.path]
    again = recovery.hold(first.path)
    again.remove()
    assert recovery.copies(stems) == [] and recovery.hold(first.path) is None
    for held in (second, third):
        held.remove()
    assert os.listdir(tmp_path) == []


def test_the_lock_of_a_process_that_is_gone_counts_for_nothing(tmp_path):
    import subprocess
    import sys

    path = str(tmp_path / "a.gpkg-unsaved~")
    script = (
        "import os, sys; from qgis.PyQt.QtCore import QLockFile; lock = QLockFile(sys.argv[1]);"
        "lock.setStaleLockTime(0); print(lock.tryLock(0), flush=True); os.kill(os.getpid(), 9)"
    )
    done = subprocess.run(
        [sys.executable, "-c", script, f"{path}lock"], capture_output=True, text=True, timeout=60, check=False
    )
    assert done.stdout == "True\n" and done.returncode == -9 and os.path.exists(f"{path}lock")
    recovery.write_copy(path, "a.gpkg", {})
    assert recovery.hold(path) is not None


def test_where_nothing_can_be_written_the_next_place_is_taken(tmp_path):
    (tmp_path / "file").write_text("")
    bad, good = str(tmp_path / "file" / "a-unsaved"), str(tmp_path / "new" / "b-unsaved")
    held = recovery.hold_new([bad, good])
    assert held.path == f"{good}~"
    held.release()
    with pytest.raises(YardwrightError):
        recovery.hold_new([bad])
