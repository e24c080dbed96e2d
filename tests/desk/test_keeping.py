"""The recovery copy: written as soon as something is drawn, gone when nothing is unsaved, offered when left."""

import hashlib
import json
import os
import shutil
import signal
import sqlite3
import subprocess
import sys
from contextlib import closing
from pathlib import Path

import pytest
from qgis.core import NULL, Qgis, QgsApplication, QgsGeometry, QgsProject, QgsVectorLayerUtils
from qgis.gui import QgsMessageBar
from qgis.PyQt.QtCore import QObject
from qgis.PyQt.QtWidgets import QMessageBox, QPushButton
from qgis.testing import start_app
from yardwright.desk.courses import layer_of
from yardwright.store import recovery
from yardwright.store.course_file import open_course
from yardwright.store.layer_group import add_course_group

from tests.desk.conftest import box
from tests.desk.test_toolbar import Iface, iface  # noqa: F401  the fixture

ROOT = Path(__file__).resolve().parents[2]


@pytest.fixture
def bar(iface):  # noqa: F811
    """A message bar as QGIS has it."""
    iface.bar = QgsMessageBar(iface.window)
    return iface.bar


@pytest.fixture
def profile(tmp_path, monkeypatch):
    """The folder of the user's profile."""
    folder = tmp_path / "profile"
    monkeypatch.setattr(QgsApplication, "qgisSettingsDirPath", staticmethod(lambda: f"{folder}/"))
    return folder


class Qgs:
    """As much of a QGIS as keeps copies: the course in hand and the Keeping."""

    def __init__(self, iface):  # noqa: F811
        from yardwright.desk.in_hand import CourseInHand
        from yardwright.desk.keeping import Keeping

        self.in_hand = CourseInHand(iface)
        self.keeping = Keeping(self.in_hand)
        self.in_hand.refresh()

    def end(self):
        self.keeping.let_go()
        self.in_hand.let_go()


@pytest.fixture
def start(iface, bar, profile, project):  # noqa: F811
    """Makes a Qgs; all are ended after the test."""
    started = []

    def start():
        started.append(Qgs(iface))
        return started[-1]

    yield start
    for layer in list(project.mapLayers().values()):
        if layer.isEditable():
            layer.rollBack()
    for one in started:
        one.end()
    assert [message for message in texts(bar) if "could not do that" in message] == []


@pytest.fixture
def qgs(start, place):
    return start()


def texts(bar):
    return [item.text() for item in bar.items()]


def draw(in_hand, kind="bunker", y=100, **values):
    """Add a thing as the drawing tools do, as one step."""
    from yardwright.desk.editing import one_step

    layer = in_hand.layer(kind)
    shape = QgsGeometry()
    shape.fromWkb(box(0, y, 3, 3).wkb)
    places = {layer.fields().lookupField(name): value for name, value in values.items()}
    with one_step("Draw", layer):
        assert layer.addFeature(QgsVectorLayerUtils.createFeature(layer, shape, places))
    return layer


def copy_of(place, number=1):
    return f"{place}-unsaved~" if number == 1 else f"{place}-unsaved-{number}~"


def parts(path):
    return recovery.read_copy(path).parts


def drawn(path):
    """How many bunkers the copy holds; 0 without a copy."""
    return len(parts(path)["bunker"]["added"]) if os.path.exists(path) else 0


def left_by_a_killed_qgis(qgs, place, qtbot):
    """What is drawn now, left as a kill leaves it: the copy stays and the buffers are lost."""
    qtbot.waitUntil(lambda: os.path.exists(copy_of(place)), timeout=20_000)
    qgs.keeping.write()
    kept = f"{place}.safe"
    shutil.copyfile(copy_of(place), kept)
    for layer in qgs.in_hand.project.mapLayers().values():
        if layer.isEditable():
            layer.rollBack()
    qgs.end()
    assert not os.path.exists(copy_of(place))
    os.rename(kept, copy_of(place))


def press(bar, name):
    (button,) = [
        one
        for one in bar.findChildren(QPushButton, f"yardwright_{name}")
        if one.parent() is bar.currentItem()
    ]
    button.click()


def litter(place):
    """What lies beside the course, less SQLite's own."""
    names = os.listdir(os.path.dirname(place))
    own = (os.path.basename(place), "profile")
    return [name for name in names if name not in own and not name.endswith(("-wal", "-shm"))]


# Writing


def test_what_is_drawn_is_in_the_copy_at_once_and_goes_when_saved(qgs, place, qtbot):
    layer = draw(qgs.in_hand, label="Ness", holes="2")
    qtbot.waitUntil(lambda: os.path.exists(copy_of(place)), timeout=200)
    (row,) = parts(copy_of(place))["bunker"]["added"]
    assert (row["values"]["label"], row["values"]["holes"]) == ("Ness", "2")
    draw(qgs.in_hand, y=120)
    qtbot.waitUntil(lambda: drawn(copy_of(place)) == 2, timeout=200)
    assert layer.commitChanges()
    assert litter(place) == []


def test_undo_and_redo_are_followed(qgs, place, qtbot):
    layer = draw(qgs.in_hand)
    qtbot.waitUntil(lambda: drawn(copy_of(place)) == 1, timeout=20_000)
    layer.undoStack().undo()
    qtbot.waitUntil(lambda: not os.path.exists(copy_of(place)), timeout=20_000)
    layer.undoStack().redo()
    qtbot.waitUntil(lambda: drawn(copy_of(place)) == 1, timeout=20_000)


def test_edits_outside_any_step_are_followed(qgs, place, qtbot):
    """As a script or QGIS's own form makes them."""
    layer = qgs.in_hand.layer("tee_set")
    layer.startEditing()
    fid = next(layer.getFeatures()).id()
    layer.changeAttributeValue(fid, layer.fields().lookupField("colour"), "#ffffff")
    qtbot.waitUntil(lambda: os.path.exists(copy_of(place)), timeout=20_000)
    (change,) = parts(copy_of(place))["tee_set"]["changed"]
    assert (
        change["after"] == {"values": {"colour": "#ffffff"}} and change["before"]["values"]["colour"] is None
    )


def test_rolled_back_by_the_user_nothing_is_kept(qgs, place, qtbot):
    layer = draw(qgs.in_hand)
    qtbot.waitUntil(lambda: os.path.exists(copy_of(place)), timeout=20_000)
    layer.rollBack()
    assert litter(place) == []


def test_a_layer_saved_leaves_the_copy_of_the_others(qgs, place, qtbot):
    bunkers = draw(qgs.in_hand)
    draw(qgs.in_hand, "green")
    qtbot.waitUntil(lambda: os.path.exists(copy_of(place)), timeout=20_000)
    assert bunkers.commitChanges()
    assert list(parts(copy_of(place))) == ["green"]


def test_a_save_that_fails_keeps_what_is_left(start, place, qtbot):
    """The change of one row is saved, a new row is refused by the file."""
    with closing(sqlite3.connect(place)) as database:
        database.execute(
            "CREATE TRIGGER refuse BEFORE INSERT ON bunker BEGIN SELECT RAISE(ABORT, 'No more.'); END"
        )
    qgs = start()
    layer = draw(qgs.in_hand)
    layer.changeAttributeValue(1, layer.fields().lookupField("label"), "Hurn")
    qtbot.waitUntil(lambda: os.path.exists(copy_of(place)), timeout=20_000)
    qgs.keeping.write()
    part = parts(copy_of(place))["bunker"]
    assert (len(part["added"]), len(part["changed"])) == (1, 1)
    assert not layer.commitChanges()
    assert [one["label"] for one in layer.dataProvider().getFeatures()] == ["Hurn"]
    qgs.keeping.write()
    part = parts(copy_of(place))["bunker"]
    assert (len(part["added"]), part["changed"]) == (1, [])


def test_only_layers_that_were_touched_are_looked_at_again(qgs, place, qtbot, monkeypatch):
    draw(qgs.in_hand)
    draw(qgs.in_hand, "green")
    qgs.keeping.write()
    looked = []
    take = recovery.unsaved
    monkeypatch.setattr(
        recovery, "unsaved", lambda layer, saved: looked.append(layer.name()) or take(layer, saved)
    )
    draw(qgs.in_hand, "green", y=300)
    qgs.keeping.write()
    assert looked == ["Green"]
    assert [len(part["added"]) for part in parts(copy_of(place)).values()] == [1, 2]


def test_all_courses_of_the_project_are_kept(qgs, place, project, tmp_path, qtbot):
    from yardwright.store.course_file import create_course
    from yardwright.store.layer_group import place_of_group

    create_course(str(tmp_path / "Second.gpkg"), "Second", "EPSG:32630")
    with open_course(str(tmp_path / "Second.gpkg")) as layers:
        second = place_of_group(add_course_group(project, layers))
    qgs.in_hand.refresh()
    draw(qgs.in_hand)
    qgs.in_hand.choose(second)
    draw(qgs.in_hand)
    qtbot.waitUntil(lambda: drawn(copy_of(second)) == drawn(copy_of(place)) == 1, timeout=20_000)


def test_a_course_whose_folder_refuses_has_its_copy_in_the_profile(qgs, place, profile, qtbot, monkeypatch):
    monkeypatch.setattr(recovery, "_lock", refusing(recovery._lock, os.path.dirname(place)))
    said = []
    QgsApplication.messageLog().messageReceived.connect(lambda text, tag, level: said.append((text, tag)))
    layer = draw(qgs.in_hand)
    qgs.keeping.write()
    draw(qgs.in_hand)
    qgs.keeping.write()
    (name,) = [one for one in os.listdir(profile / "yardwright" / "unsaved") if one.endswith("~")]
    assert drawn(profile / "yardwright" / "unsaved" / name) == 2
    ours = [text for text, tag in said if tag == "Yardwright"]
    assert len(ours) == 1 and name in ours[0]
    layer.rollBack()
    assert os.listdir(profile / "yardwright" / "unsaved") == []


def refusing(lock, folder):
    """``lock`` as it is where ``folder`` cannot be written to; the tests may run as one who may do all."""

    def refused(path):
        if os.path.dirname(path) == folder:
            raise PermissionError(path)
        return lock(path)

    return refused


def test_a_copy_that_cannot_be_written_is_told_once(qgs, place, bar, qtbot, monkeypatch):
    def full(*_):
        raise OSError(28, "No space left on device")

    with monkeypatch.context() as patched:
        patched.setattr(recovery, "write_copy", full)
        for y in (100, 120, 140):
            draw(qgs.in_hand, y=y)
            qgs.keeping.write()
        assert len(texts(bar)) == 1 and "No space left on device" in texts(bar)[0]
    qtbot.waitUntil(lambda: drawn(copy_of(place)) == 3, timeout=20_000)  # tried again without another edit
    assert len(texts(bar)) == 1


# The end


def test_let_go_writes_what_waits_and_leaves_it(qgs, place):
    draw(qgs.in_hand)
    qgs.keeping.let_go()
    assert drawn(copy_of(place)) == 1
    draw(qgs.in_hand)
    qgs.keeping.let_go()
    assert drawn(copy_of(place)) == 1
    assert recovery.hold(copy_of(place)) is not None


def test_turned_off_and_on_again_amid_edits_nothing_is_offered(qgs, start, place, bar):
    """All that the copy holds is still in the buffers."""
    draw(qgs.in_hand)
    qgs.end()
    start()
    assert texts(bar) == []
    (path,) = recovery.copies([f"{place}-unsaved"])
    assert drawn(path) == 1


def test_a_project_closed_while_an_edit_waits_keeps_it(qgs, place, project, qtbot, bar):
    draw(qgs.in_hand)
    project.clear()
    qtbot.waitUntil(lambda: qgs.in_hand.place is None, timeout=20_000)
    assert drawn(copy_of(place)) == 1 and texts(bar) == []


def test_a_layer_removed_amid_edits_keeps_its_copy(qgs, place, project, qtbot):
    layer = draw(qgs.in_hand)
    draw(qgs.in_hand, "green")
    project.removeMapLayer(layer.id())
    qtbot.waitUntil(lambda: os.path.exists(copy_of(place, 2)), timeout=20_000)
    assert drawn(copy_of(place)) == 1 and list(parts(copy_of(place, 2))) == ["green"]


def test_a_saved_layer_removed_leaves_nothing(qgs, place, project, qtbot):
    layer = draw(qgs.in_hand)
    qgs.keeping.write()
    layer.commitChanges()
    project.removeMapLayer(layer.id())
    qtbot.wait(200)
    assert litter(place) == []


# Killed


def digests(group):
    """``{kind: what of a layer's rows, their keys aside, is the same only if all of them are}``."""
    found = {}
    for kind in ("bunker", "green", "marker"):
        rows = []
        for row in layer_of(group, kind).getFeatures():
            values = [None if value == NULL else str(value) for value in row.attributes()[1:]]
            rows.append(repr((bytes(row.geometry().asWkb()), values)))
        found[kind] = hashlib.sha256("".join(sorted(rows)).encode()).hexdigest()
    return found


def save_until_the_end(path, seconds):
    """Draw a lot, say what is drawn, and save it until the kernel ends the process; run in one of its own."""
    start_app(cleanup=False)
    window = Iface()
    window.bar = QgsMessageBar(window.window)
    with open_course(path) as layers:
        group = add_course_group(QgsProject.instance(), layers)
    qgs = Qgs(window)
    for number in range(150):
        draw(qgs.in_hand, "bunker", y=number, label=f"Bunker {number}")
        draw(qgs.in_hand, "green", y=number, label=f"Green {number}")
    bunkers, markers = (qgs.in_hand.layer(kind) for kind in ("bunker", "marker"))
    bunkers.changeAttributeValue(1, bunkers.fields().lookupField("note"), "deeper")
    markers.startEditing()
    markers.deleteFeature(next(markers.getFeatures()).id())
    qgs.keeping.write()
    print(json.dumps(digests(group)), flush=True)
    signal.setitimer(signal.ITIMER_REAL, seconds)  # nobody handles the alarm: it kills, within C++ too
    for layer in (bunkers, markers, qgs.in_hand.layer("green")):
        layer.commitChanges()
    signal.pause()


@pytest.mark.parametrize("milliseconds", [1, 4, 10, 16, 24, 40, 400])
def test_killed_at_any_moment_of_saving_nothing_is_lost_or_there_twice(
    start, place, project, bar, milliseconds, tmp_path
):
    script = "import sys; from tests.desk.test_keeping import save_until_the_end as save; save(sys.argv[1], float(sys.argv[2]))"
    beside = tmp_path / "killed"
    beside.mkdir()
    path = str(shutil.copyfile(place, beside / "Larkmere.gpkg"))
    done = subprocess.run(
        [sys.executable, "-c", script, path, str(milliseconds / 1000)],
        cwd=ROOT,
        env={**os.environ, "PYTHONPATH": f"{ROOT / 'plugin'}{os.pathsep}{ROOT}"},
        capture_output=True,
        text=True,
        timeout=120,
        check=False,
    )
    assert done.returncode == -signal.SIGALRM, done.stderr
    drawn = json.loads(done.stdout.splitlines()[-1])
    with closing(sqlite3.connect(path)) as database:
        assert database.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
    qgs = start()
    project.clear()
    with open_course(path) as layers:
        group = add_course_group(project, layers)
    qgs.in_hand.refresh()
    assert bool(texts(bar)) == os.path.exists(copy_of(path))
    if texts(bar):
        press(bar, "put_back")
    assert digests(group) == drawn
    for kind in ("bunker", "green", "marker"):
        layer = layer_of(group, kind)
        assert not layer.isEditable() or layer.commitChanges()
    assert digests(group) == drawn and litter(path) == []


# Offering


@pytest.fixture
def killed(qgs, place, qtbot):
    """A QGIS has been killed that had drawn two bunkers, renamed one and deleted a green."""
    layer = draw(qgs.in_hand, label="First")
    draw(qgs.in_hand, y=140, label="Second", note=NULL, view="partly hidden")
    ness = next(one.id() for one in layer.getFeatures() if one["label"] == "Ness")
    layer.changeAttributeValue(ness, layer.fields().lookupField("label"), "Hurn")
    greens = qgs.in_hand.layer("green")
    greens.startEditing()
    greens.deleteFeature(next(greens.getFeatures()).id())
    left_by_a_killed_qgis(qgs, place, qtbot)


def test_what_was_left_is_put_back_as_one_step_a_layer(killed, start, place, bar):
    qgs = start()
    (text,) = texts(bar)
    assert text.startswith("4 things of “Larkmere” left unsaved, ")
    press(bar, "put_back")
    bunkers, greens = qgs.in_hand.layer("bunker"), qgs.in_hand.layer("green")
    labels = {one["label"]: one["view"] for one in bunkers.getFeatures()}
    assert set(labels) == {"Hurn", "First", "Second"} and labels["Second"] == "partly hidden"
    assert greens.featureCount() == 1
    assert bunkers.undoStack().count() == greens.undoStack().count() == 1
    assert [item.text() for item in bar.items() if item.level() == Qgis.MessageLevel.Success] == [
        "Put back, not saved yet: Bunker 3, Green 1."
    ]
    # They are unsaved as before, and kept as before.
    assert recovery.copies([f"{place}-unsaved"]) == [copy_of(place, 2)]
    bunkers.undoStack().undo()
    assert {one["label"] for one in bunkers.getFeatures()} == {"Ness"}
    bunkers.undoStack().redo()
    assert bunkers.commitChanges() and greens.commitChanges()
    assert litter(place) == []


def test_looked_at_later_it_is_offered_again_by_the_next(killed, start, place, bar):
    qgs = start()
    press(bar, "later")
    assert texts(bar) == [] and os.path.exists(copy_of(place))
    qgs.in_hand.refresh()
    assert texts(bar) == []
    draw(qgs.in_hand)
    qgs.keeping.write()
    assert drawn(copy_of(place)) == 2 and drawn(copy_of(place, 2)) == 1
    qgs.in_hand.layer("bunker").rollBack()
    qgs.end()
    start()
    assert len(texts(bar)) == 1


@pytest.mark.parametrize("said", [QMessageBox.StandardButton.Yes, QMessageBox.StandardButton.No])
def test_it_is_thrown_away_only_when_that_is_meant(killed, start, place, bar, monkeypatch, said):
    monkeypatch.setattr(QMessageBox, "question", staticmethod(lambda *_: said))
    start()
    press(bar, "throw_away")
    assert os.path.exists(copy_of(place)) == (said == QMessageBox.StandardButton.No)


def test_a_copy_of_which_all_is_saved_goes_unasked(qgs, start, place, bar):
    layer = draw(qgs.in_hand)
    qgs.keeping.write()
    shutil.copyfile(copy_of(place), f"{place}.safe")
    assert layer.commitChanges()
    qgs.end()
    os.rename(f"{place}.safe", copy_of(place))
    start()
    assert texts(bar) == [] and litter(place) == []


def test_what_does_not_fit_any_more_is_named_and_set_aside(killed, start, place, bar):
    qgs = start()
    layer = qgs.in_hand.layer("bunker")
    layer.startEditing()
    ness = next(one.id() for one in layer.getFeatures() if one["label"] == "Ness")
    layer.changeAttributeValue(ness, layer.fields().lookupField("label"), "Sand")
    assert layer.commitChanges(False)
    press(bar, "put_back")
    assert {one["label"] for one in layer.getFeatures()} == {"Sand", "First", "Second"}
    text = bar.currentItem().text()
    assert "Not put back: Bunker “Ness”: it was changed in the course meanwhile." in text
    kept = f"{place}-unsaved-kept~"
    assert kept in text and recovery.read_copy(kept).number == 4
    layer.rollBack()
    qgs.in_hand.layer("green").rollBack()
    assert os.path.exists(kept) and not os.path.exists(copy_of(place))


def test_a_layer_that_refuses_undoes_all_and_keeps_the_copy(killed, start, place, bar, monkeypatch):
    from yardwright.model.errors import YardwrightError

    qgs = start()
    bunkers, greens = qgs.in_hand.layer("bunker"), qgs.in_hand.layer("green")
    put_back = recovery.put_back

    def refuses(layer, plan):
        put_back(layer, plan)
        if layer is greens:
            raise YardwrightError("It did not.", "Wait.")

    monkeypatch.setattr(recovery, "put_back", refuses)
    press(bar, "put_back")
    assert "It did not." in texts(bar)[0]
    assert (bunkers.featureCount(), greens.featureCount()) == (1, 2)
    assert drawn(copy_of(place)) == 2


def test_the_copy_of_a_living_qgis_is_neither_offered_nor_written_over(qgs, start, place, bar, qtbot):
    draw(qgs.in_hand)
    qgs.keeping.write()
    held = recovery.read_copy(copy_of(place))
    second = start()
    assert texts(bar) == []
    draw(second.in_hand, y=140)
    second.keeping.write()
    assert drawn(copy_of(place, 2)) == 2
    assert recovery.read_copy(copy_of(place)).written >= held.written


def test_one_that_was_faster_is_told_of(killed, start, place, bar):
    start()
    held = recovery.hold(copy_of(place))
    press(bar, "put_back")
    assert "another QGIS has it" in texts(bar)[0]
    held.release()
    assert drawn(copy_of(place)) == 2


def test_a_broken_copy_is_told_of_and_kept(killed, start, place, bar):
    with open(copy_of(place), "r+", encoding="utf-8") as file:
        file.truncate(300)
    qgs = start()
    (text,) = texts(bar)
    assert "damaged" in text and f"{place}-unsaved-kept~" in text
    draw(qgs.in_hand)
    qgs.keeping.write()
    assert drawn(copy_of(place)) == 1


def test_the_offer_goes_with_its_course(killed, start, project, bar, qtbot):
    start()
    assert len(texts(bar)) == 1
    project.clear()
    qtbot.waitUntil(lambda: texts(bar) == [], timeout=20_000)


def test_closing_the_message_is_looking_later(killed, start, place, bar, qtbot):
    qgs = start()
    bar.popWidget()
    qtbot.wait(50)
    assert os.path.exists(copy_of(place))
    qgs.end()
    start()
    assert len(texts(bar)) == 1


def test_the_toolbar_keeps(iface, bar, profile, project, course_file, qtbot):  # noqa: F811
    from yardwright.desk.toolbar import CourseTools

    tools = CourseTools(iface)
    tools.add_course(str(course_file))
    draw(tools.in_hand)
    qtbot.waitUntil(lambda: os.path.exists(copy_of(tools.place)), timeout=20_000)
    tools.in_hand.layer("bunker").rollBack()
    assert not os.path.exists(copy_of(tools.place))
    tools.remove()
    assert isinstance(tools, QObject) and QgsProject.instance() is project
