"""The course in hand: read once, read again after an edit, and told of what changes. Steps that undo as one."""

import pytest
from yardwright.model.errors import YardwrightError

from tests.desk.test_toolbar import iface  # noqa: F401  the fixture


@pytest.fixture
def in_hand(iface, place):  # noqa: F811
    from yardwright.desk.in_hand import CourseInHand

    in_hand = CourseInHand(iface)
    in_hand.refresh()
    yield in_hand
    in_hand.let_go()


def test_it_takes_the_projects_course_and_its_first_hole(in_hand, place):
    assert (in_hand.place, in_hand.hole) == (place, 1)
    assert [hole[0] for hole in in_hand.holes] == [1, 2, 3]
    assert in_hand.played().number == 1 and in_hand.played(2).number == 2
    assert in_hand.played(3) is None


def test_a_course_is_read_again_only_after_an_edit(in_hand, qtbot):
    from yardwright.desk.editing import one_step

    before = in_hand.course()
    assert in_hand.course() is before and in_hand.played(2) is in_hand.played(2)
    layer = in_hand.layer("bunker")
    with qtbot.waitSignal(in_hand.edited, timeout=20_000):
        with one_step("Away with it", layer):
            layer.deleteFeature(next(layer.getFeatures()).id())
        # Nobody is told yet, and whoever asks is given what is drawn now.
        assert [f.kind for f in in_hand.course().features].count("bunker") == 0
    layer.undoStack().undo()
    assert [f.kind for f in in_hand.course().features].count("bunker") == 1
    layer.rollBack()


def test_holes_and_tee_sets_are_chosen(in_hand, qtbot):
    with qtbot.waitSignal(in_hand.hole_changed, timeout=20_000):
        in_hand.choose_hole(2)
    with qtbot.assertNotEmitted(in_hand.hole_changed):
        in_hand.choose_hole(2)
        in_hand.choose_hole(77)
    with qtbot.waitSignal(in_hand.tee_set_changed, timeout=20_000):
        in_hand.choose_tee_set("Wren")
    assert (in_hand.hole, in_hand.tee_set) == (2, "Wren")


def test_a_project_just_closed_has_no_course(in_hand, project):
    """Asked before the news of it is here, as a panel's timer may."""
    project.clear()
    assert in_hand.group is None and in_hand.layer("green") is None
    with pytest.raises(YardwrightError):
        in_hand.course()


def test_without_a_course_there_is_nothing_in_hand(in_hand, project, qtbot):
    project.clear()
    qtbot.waitUntil(lambda: in_hand.place is None, timeout=20_000)
    assert in_hand.hole is None and in_hand.holes == [] and in_hand.layer("green") is None
    with pytest.raises(YardwrightError):
        in_hand.layers()


def test_a_step_is_undone_as_one_and_by_any_error(in_hand):
    from yardwright.desk.editing import one_step

    bunkers, greens = in_hand.layer("bunker"), in_hand.layer("green")

    def counts():
        return bunkers.featureCount(), greens.featureCount()

    assert counts() == (1, 2)
    with one_step("Two kinds", bunkers, greens):
        bunkers.deleteFeature(next(bunkers.getFeatures()).id())
        greens.deleteFeatures([f.id() for f in greens.getFeatures()])
    assert counts() == (0, 0)
    assert bunkers.undoStack().count() == greens.undoStack().count() == 1
    # Undone in one layer, as QGIS does with the one that is chosen, it is undone in the other; so is redoing.
    greens.undoStack().undo()
    assert counts() == (1, 2)
    bunkers.undoStack().redo()
    assert counts() == (0, 0)
    greens.undoStack().undo()
    with pytest.raises(OSError), one_step("Broken off", greens):
        greens.deleteFeatures([f.id() for f in greens.getFeatures()])
        raise OSError
    assert counts() == (1, 2)
    for layer in (bunkers, greens):
        layer.rollBack()
    assert counts() == (1, 2)


@pytest.fixture
def two_kinds(in_hand):
    """``(bunkers, greens, the Step that took all of them out, function that counts both)``."""
    from yardwright.desk.editing import one_step

    bunkers, greens = in_hand.layer("bunker"), in_hand.layer("green")
    with one_step("Two kinds", bunkers, greens) as step:
        for layer in (bunkers, greens):
            layer.deleteFeatures([row.id() for row in layer.getFeatures()])
    yield bunkers, greens, step, lambda: tuple(sum(1 for _ in one.getFeatures()) for one in (bunkers, greens))
    for layer in in_hand.project.mapLayers().values():
        if layer.isEditable():
            layer.rollBack()


def with_a_bunker(layer):
    """Draw one more, as a step of its own."""
    from qgis.core import QgsFeature, QgsGeometry
    from yardwright.desk.editing import one_step

    row = QgsFeature(layer.fields())
    row.setGeometry(QgsGeometry.fromWkt("POLYGON((0 0,9 0,9 9,0 0))"))
    with one_step("Draw", layer):
        assert layer.addFeature(row)


def test_what_was_changed_since_stays(two_kinds):
    bunkers, greens, step, counts = two_kinds
    assert step.may_undo()
    with_a_bunker(bunkers)
    assert not step.may_undo()
    with pytest.raises(YardwrightError) as told:
        step.undo()
    assert told.value.remedy and counts() == (1, 0)
    greens.undoStack().undo()
    assert counts() == (1, 2), "the bunker drawn since is on top of the bunkers' list"
    bunkers.undoStack().undo()
    bunkers.undoStack().undo()
    assert counts() == (1, 2)
    step_again = bunkers.undoStack().canRedo() and greens.undoStack().canRedo()
    assert step_again


def test_a_step_is_not_taken_for_one_in_its_place(two_kinds):
    """What was undone is gone once something else is done in its stead: nothing is redone elsewhere for it."""
    bunkers, greens, step, counts = two_kinds
    step.undo()
    assert counts() == (1, 2)
    with_a_bunker(bunkers)
    assert counts() == (2, 2) and greens.undoStack().canRedo() and not step.may_undo()
    bunkers.undoStack().undo()
    bunkers.undoStack().redo()
    assert counts() == (2, 2)


def test_a_layer_saved_or_taken_away_ends_it(two_kinds, project):
    bunkers, greens, step, counts = two_kinds
    assert bunkers.commitChanges()
    assert not step.may_undo() and counts() == (0, 0)
    greens.undoStack().undo()
    assert counts() == (0, 2)
    greens.undoStack().redo()
    greens.rollBack()
    project.removeMapLayer(greens.id())
    with pytest.raises(YardwrightError):
        step.undo()
