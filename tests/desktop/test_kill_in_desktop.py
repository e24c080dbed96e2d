"""Safe hands in a real QGIS: killed amid drawing or amid saving, all but what was under the hand is back."""

import os
import sqlite3
from contextlib import closing

import pytest
from desktop import ROOT, result_of, run_desktop
from test_desk_in_desktop import course_file  # noqa: F401  the fixture

pytestmark = pytest.mark.desktop

DRIVES = ROOT / "tests" / "desktop"


def end_by(how, course_file, tmp_path):  # noqa: F811
    """Let QGIS end so; what it held by then."""
    folder = tmp_path / "first"
    folder.mkdir()
    given = surroundings(course_file, tmp_path)
    found = run_desktop(
        DRIVES / "drive_kill.py",
        folder,
        environment={**given, "YARDWRIGHT_END": how},
        killed=how != "leaving",
    )
    return result_of(found)


def start_again(course_file, tmp_path):  # noqa: F811
    folder = tmp_path / "second"
    folder.mkdir()
    given = surroundings(course_file, tmp_path)
    project = given["YARDWRIGHT_PROJECT"]
    return result_of(run_desktop(DRIVES / "drive_recover.py", folder, project, environment=given))


def surroundings(course_file, tmp_path):  # noqa: F811
    return {"YARDWRIGHT_COURSE": str(course_file), "YARDWRIGHT_PROJECT": str(tmp_path / "Larkmere.qgz")}


def sound(course_file):  # noqa: F811
    """Whether SQLite finds nothing wrong with the file; and how many bunkers it holds."""
    with closing(sqlite3.connect(course_file)) as database:
        checked = database.execute("PRAGMA integrity_check").fetchall()
        strangers = database.execute("PRAGMA foreign_key_check").fetchall()
        (count,) = database.execute("SELECT count(*) FROM bunker").fetchone()
    assert (checked, strangers) == ([("ok",)], [])
    return count


def unsaved_beside(course_file):  # noqa: F811
    return sorted(name for name in os.listdir(course_file.parent) if "-unsaved" in name)


@pytest.mark.parametrize("how", ["drawing", "saving"])
def test_killed_all_but_what_was_under_the_hand_is_back(how, course_file, tmp_path):  # noqa: F811
    killed = end_by(how, course_file, tmp_path)
    drawn = killed["rows"]
    # One bunker and no tree were there, two greens; three bunkers and one tree are drawn, a green is deleted.
    assert {kind: len(rows) for kind, rows in drawn.items()} == {
        "bunker": 4,
        "tree": 1,
        "green": 1,
        "tee_set": 2,
    }
    assert how == "saving" or killed["under_the_hand"] == 2
    assert f"{course_file.name}-unsaved~" in unsaved_beside(course_file)
    assert sound(course_file) in (1, 4)

    found = start_again(course_file, tmp_path)
    (offer,) = found["offered"]
    assert "7 things of “Larkmere” left unsaved" in offer
    assert found["before"] != drawn
    assert found["rows"] == drawn
    assert all(steps <= 1 for steps in found["steps"].values()) and sum(found["steps"].values()) >= 3
    assert "Put back, not saved yet" in found["told"][0]
    # The new copy is there before the old one goes.
    assert f"{course_file.name}-unsaved~" not in found["beside"] and len(found["beside"]) == 2
    assert found["saved"] == drawn and found["left"] == []
    assert sound(course_file) == 4 and unsaved_beside(course_file) == []


def test_what_the_user_gives_up_is_not_kept(course_file, tmp_path):  # noqa: F811
    end_by("leaving", course_file, tmp_path)
    assert sound(course_file) == 1 and unsaved_beside(course_file) == []
    found = start_again(course_file, tmp_path)
    assert found["offered"] == [] and found["before"]["bunker"][0][1:3] == ["1", "Ness"]
