"""Writing into the layers: there and back the same, and all of a change or nothing of it."""

from dataclasses import replace

import pytest
from shapely.geometry import LineString, MultiPolygon, Point, box
from yardwright.model.course import Feature, Settings
from yardwright.model.errors import YardwrightError


def read(layers):
    from yardwright.store.reading import read_course

    return read_course(layers)


def reopened(layers):
    """What the file itself holds."""
    from yardwright.store.course_file import open_course

    with open_course(layers.place) as again:
        return read(again)


GREEN = Feature(
    "green",
    0,
    box(0, 0, 30, 25),
    (1, 2),
    "Home",
    "2023",
    "partly hidden",
    {"note": "soft", "origin": "survey"},
)
MARKER = Feature("marker", 0, Point(5, 5), (2,), attributes={"states_yd": 150.0, "approach": True})
POND = Feature("penalty_area", 0, box(50, 0, 60, 9), attributes={"stakes": "red", "water": False})
BAD = {
    "kind": Feature("lake", 0, Point(0, 0)),
    "field": Feature("green", 0, box(0, 0, 1, 1), attributes={"colour": "blue"}),
    "type": Feature("green", 0, LineString([(0, 0), (1, 1)])),
    "coordinate": Feature("marker", 0, Point(float("nan"), 1)),
    "value": Feature("marker", 0, Point(0, 1), attributes={"states_yd": "far"}),
    "nothing": Feature("green", 0, None),
}


@pytest.mark.parametrize("edited", [False, True], ids=["in the file", "while a layer is edited"])
class TestBothWays:
    @pytest.fixture(autouse=True)
    def _edit(self, course, edited):
        if edited:
            assert course["green"].startEditing()

    def test_added_features_come_back_as_they_were(self, course, edited):
        from yardwright.store.writing import add_features

        fids = add_features(course, [GREEN, MARKER, POND, GREEN])
        back = {(feature.kind, feature.fid): feature for feature in read(course).features}
        assert len(back) == 4 and all(fid != 0 for fid in fids)
        for given, fid in zip((GREEN, MARKER, POND, GREEN), fids):
            found = back[(given.kind, fid)]
            assert found.geometry.equals(given.geometry)
            assert (found.holes, found.label, found.seen_in, found.view) == (
                given.holes,
                given.label,
                given.seen_in,
                given.view,
            )
            expected = dict(given.attributes)
            if given.kind == "marker":
                expected["hole"] = 2
            assert dict(found.attributes) == expected
        saved = 0 if edited else 4
        assert len(reopened(course).features) == saved

    @pytest.mark.parametrize("what", BAD)
    def test_one_bad_feature_and_nothing_is_added(self, course, edited, what):
        from yardwright.store.writing import add_features

        with pytest.raises(YardwrightError):
            add_features(course, [GREEN, MARKER, BAD[what]])
        assert read(course).features == ()
        assert reopened(course).features == ()

    def test_an_exception_half_way_undoes_all(self, course, edited):
        from yardwright.store import writing

        with pytest.raises(ZeroDivisionError), writing.editing(course, ["green", "marker"]) as edit:
            edit.add("green", [writing.row_of(course, GREEN, GREEN.geometry)])
            edit.add("marker", [writing.row_of(course, MARKER, MARKER.geometry)])
            raise ZeroDivisionError
        assert read(course).features == ()
        assert reopened(course).features == ()
        assert course["green"].isEditable() == edited and not course["marker"].isEditable()

    def test_holes_of_features(self, course, edited):
        from yardwright.store.writing import add_features, set_holes

        first, second = add_features(course, [GREEN, GREEN])
        set_holes(course, "green", {first: (9, 4), second: ()})
        assert {f.fid: f.holes for f in read(course).features} == {first: (9, 4), second: ()}
        with pytest.raises(YardwrightError):
            set_holes(course, "green", {first: (1,), 99: (2,)})
        assert {f.fid: f.holes for f in read(course).features} == {first: (9, 4), second: ()}
        set_holes(course, "green", {})

    def test_windows_replace_those_that_show_the_same(self, course, edited):
        from yardwright.store.reading import read_features
        from yardwright.store.writing import replace_windows

        if edited:
            assert course["window"].startEditing()
        asked = ((1, "hole", 2000.0), (1, "green", 480.0), (2, "green", 480.0))
        replace_windows(course, [window(*one) for one in asked])
        (fid,) = replace_windows(course, [window(1, "green", 500.0)])
        found = {(w.get("hole"), w.get("shows")): w for w in read_features(course, "window")}
        assert {key: w.get("scale") for key, w in found.items()} == {
            (1, "hole"): 2000.0,
            (1, "green"): 500.0,
            (2, "green"): 480.0,
        }
        assert found[(1, "green")].fid == fid
        assert replace_windows(course, []) == []

    def test_a_line_of_play_goes_to_the_row_that_waits_for_it(self, course, edited):
        from yardwright.store.writing import add_features

        line = LineString([(0, 0), (100, 0)])
        given = {"number": 2, "par": 5, "name": "Mere"}
        (fid,) = add_features(course, [Feature("hole", 0, line, seen_in="2023", attributes=given)])
        holes = read(course).holes
        assert [(hole.number, hole.par) for hole in holes] == [(1, 4), (2, 3)]  # the card's par is kept
        assert (holes[1].fid, holes[1].name, holes[1].seen_in) == (fid, "Mere", "2023") and fid == 2
        assert holes[1].line.equals(line)
        (other,) = add_features(course, [Feature("hole", 0, line, attributes={"number": 3})])
        assert read(course).hole(3).fid == other


def window(hole, shows, scale):
    return Feature("window", 0, box(0, 0, 4, 4), attributes={"hole": hole, "shows": shows, "scale": scale})


def test_a_part_a_row(course):
    from yardwright.store.writing import add_features

    fids = add_features(course, [Feature("bunker", 0, MultiPolygon([box(0, 0, 4, 4), box(9, 0, 12, 4)]))])
    assert fids == [1, 2]
    assert [feature.geometry.bounds[0] for feature in read(course).features] == [0, 9]


def test_nothing_to_add(course):
    from yardwright.store.writing import add_features

    assert add_features(course, []) == []


def test_an_edit_is_one_step_to_undo(course):
    from yardwright.store.writing import add_features

    course["green"].startEditing()
    add_features(course, [GREEN, GREEN, GREEN])
    assert course["green"].undoStack().count() == 1
    course["green"].undoStack().undo()
    assert read(course).features == ()


def test_a_plate_has_one_hole(course):
    from yardwright.store.writing import add_features, set_holes

    (fid,) = add_features(course, [MARKER])
    with pytest.raises(YardwrightError, match="cannot be given to holes 1,2"):
        set_holes(course, "marker", {fid: (1, 2)})
    set_holes(course, "marker", {fid: (1,)})
    assert read(course).features[0].holes == (1,)
    with pytest.raises(YardwrightError):
        set_holes(course, "path", {1: (1,)})


def test_settings_there_and_back(course):
    from yardwright.store.writing import set_course_info, write_settings

    wanted = Settings(unit="m", tee_reference="centre", marker_point="front", height_m=85.5)
    wanted = replace(
        wanted, corridor_yd=40.0, marker_tolerance_yd=1.5, fairway_step_yd=5.0, layup_yd=(62.5, 90.0)
    )
    write_settings(course, wanted, name="Larkmere Old")
    back = reopened(course)
    assert (back.settings, back.name) == (wanted, "Larkmere Old")
    with pytest.raises(YardwrightError):
        set_course_info(course, {"height_m": float("inf")})
    assert reopened(course).settings == wanted


def test_a_file_that_may_not_be_written_to(course_file):
    import os

    if os.geteuid() == 0:
        pytest.skip("the superuser may write to any file")
    from yardwright.store.course_file import open_course
    from yardwright.store.writing import add_features

    course_file.chmod(0o444)
    with open_course(str(course_file)) as layers, pytest.raises(YardwrightError, match="cannot be written"):
        add_features(layers, [GREEN])


def test_a_file_others_are_writing_to(course, course_file):
    """Refused after SQLite's waiting time, with nothing changed; a connection of sqlite3 holds the file."""
    import sqlite3
    from contextlib import closing

    from yardwright.store.writing import add_features

    with closing(sqlite3.connect(course_file, isolation_level=None)) as other:
        other.execute("BEGIN EXCLUSIVE")
        with pytest.raises(YardwrightError):
            add_features(course, [GREEN])
        other.execute("ROLLBACK")
    assert reopened(course).features == ()
