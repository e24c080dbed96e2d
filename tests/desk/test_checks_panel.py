"""The panel of checks: a planted fault appears, is repaired, undone and appears again; repairs do all or nothing."""

import pytest
from qgis.core import QgsFeature, QgsGeometry, QgsPointXY, QgsRectangle
from qgis.PyQt.QtCore import Qt
from shapely import wkb
from yardwright.model.errors import YardwrightError

from tests.desk.conftest import at, box
from tests.desk.test_in_hand import in_hand  # noqa: F401  the fixture
from tests.desk.test_toolbar import iface  # noqa: F401  the fixture


@pytest.fixture
def panel(in_hand, qtbot):  # noqa: F811
    from yardwright.desk.checks_panel import ChecksPanel

    panel = ChecksPanel(in_hand)
    panel.resize(360, 600)
    panel.show()
    qtbot.waitUntil(lambda: panel.findings() != [], timeout=20_000)
    yield panel
    panel.let_go()
    panel.close()
    panel.deleteLater()
    roll_back(in_hand)


def roll_back(in_hand):  # noqa: F811
    """Undo all edits of the course's layers."""
    for node in in_hand.group.findLayers() if in_hand.group is not None else ():
        node.layer().rollBack()


def qgis_shape(shape):
    geometry = QgsGeometry()
    geometry.fromWkb(shape.wkb)
    return geometry


def add(layer, geometry, **values):
    """A row in a layer's edit buffer; its id."""
    from yardwright.desk.editing import checked, one_step

    row = QgsFeature(layer.fields())
    row.setGeometry(geometry)
    for name, value in values.items():
        row.setAttribute(name, value)
    with one_step("Planted", layer):
        checked(layer.addFeature(row), layer)
    return row.id()


def kept(layer):
    """All of a layer: ``{id: geometry's bytes}``."""
    return {row.id(): bytes(row.geometry().asWkb()) for row in layer.getFeatures()}


def checks_of(panel):
    return sorted((f.hole or 0, f.check) for f in panel.findings())


def wait_for(panel, qtbot, condition):
    qtbot.waitUntil(lambda: condition(panel.findings()), timeout=20_000)


def named(panel, check):
    return next(f for f in panel.findings() if f.check == check)


OWN = [(1, "marker"), (3, "no_green"), (3, "no_line"), (3, "no_tee")]
"""What is found on the small course as it is: a marker of 100 stands 104 yd away, hole 3 is not drawn."""


def planted(in_hand):  # noqa: F811
    """A bunker that overlaps the green of hole 1; its id."""
    return add(in_hand.layer("bunker"), qgis_shape(box(11, 360, 3, 4)), holes="1")


def test_what_is_found_on_the_small_course(panel):
    assert checks_of(panel) == OWN
    counts = [button.text() for button in panel.gravity_buttons.values()]
    assert counts == ["Wrong 0", "Missing 3", "Doubtful 1"]
    assert panel.tree.topLevelItem(0).text(0) == "Hole 1  Burn"
    assert panel.tree.topLevelItem(0).toolTip(0) == "Hole 1  Burn: 1 doubtful"
    group = panel.tree.topLevelItem(1)
    assert group.data(0, Qt.ItemDataRole.AccessibleTextRole) == "Hole 3: 3 missing"
    said = group.child(0).data(0, Qt.ItemDataRole.AccessibleTextRole)
    assert said.startswith("Missing: ")


def test_a_fault_appears_is_repaired_undone_and_appears_again(panel, in_hand, qtbot):  # noqa: F811
    greens = in_hand.layer("green")
    before = kept(greens)
    planted(in_hand)
    wait_for(panel, qtbot, lambda findings: any(f.check == "overlap" for f in findings))
    assert panel.choose(named(panel, "overlap"))
    assert (
        panel.repair_button.isEnabled() and "Cut the bunker out of the green" in panel.repair_button.toolTip()
    )
    panel.repair_button.click()
    assert greens.undoStack().count() == 1 and kept(greens) != before
    wait_for(panel, qtbot, lambda findings: not any(f.check == "overlap" for f in findings))
    greens.undoStack().undo()
    assert kept(greens) == before
    wait_for(panel, qtbot, lambda findings: any(f.check == "overlap" for f in findings))
    greens.undoStack().redo()
    wait_for(panel, qtbot, lambda findings: not any(f.check == "overlap" for f in findings))
    assert in_hand.iface.bar.messages == []


def line(*places):
    return QgsGeometry.fromPolylineXY([QgsPointXY(*at(*place)) for place in places])


PLANTED = {
    "overlap": ("bunker", lambda: qgis_shape(box(11, 360, 3, 4)), {"holes": "1"}),
    "twice": ("bunker", lambda: qgis_shape(box(20, 230, 4, 7)), {"holes": "1"}),
    "sliver": ("bunker", lambda: qgis_shape(box(30, 100, 0.1, 7)), {"holes": "1"}),
    "empty": ("bunker", QgsGeometry, {"holes": "1"}),
    "boundary_gap": ("boundary", lambda: line((-90, 0), (-90, 400), (90, 400), (90, 0), (-88, 0)), {}),
    "crossing": (
        "bunker",
        lambda: QgsGeometry.fromPolygonXY(
            [[QgsPointXY(*at(x, y)) for x, y in ((40, 99.5), (40, 120), (60, 120), (60, 100), (39.5, 100))]]
        ),
        {"holes": "1"},
    ),
}


@pytest.mark.parametrize("check", PLANTED)
def test_every_repair_heals_and_is_undone_to_the_letter(in_hand, check):  # noqa: F811
    from yardwright.desk.repairing import repair
    from yardwright.measure.checks import check_course

    def findings():
        return [f for f in check_course(in_hand.course()) if f.check == check]

    kind, shape, values = PLANTED[check]
    assert findings() == []
    add(in_hand.layer(kind), shape(), **values)
    planted_there = {name: kept(in_hand.layer(name)) for name in ("bunker", "green", "boundary")}
    (finding,) = findings()
    changed = {change.kind for change in finding.repair.changes}
    counts = {name: in_hand.layer(name).undoStack().count() for name in changed}
    repair(in_hand, finding)
    assert findings() == []
    for name in changed:
        layer = in_hand.layer(name)
        assert layer.undoStack().count() == counts[name] + 1
        layer.undoStack().undo()
    assert {name: kept(in_hand.layer(name)) for name in planted_there} == planted_there
    assert findings() == [finding]
    roll_back(in_hand)


@pytest.mark.parametrize(
    "drawn, check",
    [(((0, 360), (2, 200), (0, 0)), "line_backwards"), (((0, 0), (2, 200), (0, 337)), "line_end")],
)
def test_lines_of_play_are_mended_and_undone(in_hand, drawn, check):  # noqa: F811
    from yardwright.desk.repairing import repair
    from yardwright.measure.checks import check_course

    layer = in_hand.layer("hole")
    fid = next(row.id() for row in layer.getFeatures() if row["number"] == 1)
    layer.startEditing()
    layer.changeGeometry(fid, line(*drawn))
    before = kept(layer)
    (finding,) = [f for f in check_course(in_hand.course()) if f.check == check]
    repair(in_hand, finding)
    assert not [f for f in check_course(in_hand.course()) if f.check == check]
    ends = wkb.loads(kept(layer)[fid]).coords
    if check == "line_backwards":
        assert list(ends) == list(wkb.loads(before[fid]).coords)[::-1]
    else:
        assert ends[-1] == pytest.approx(at(0, 360), abs=0.02) and len(ends) == 3
    layer.undoStack().undo()
    assert kept(layer) == before
    layer.rollBack()


def test_a_repair_refuses_what_has_changed(in_hand):  # noqa: F811
    from yardwright.desk.repairing import repair
    from yardwright.measure.checks import check_course

    bunkers, greens = in_hand.layer("bunker"), in_hand.layer("green")
    fid = planted(in_hand)

    def overlap():
        return next(f for f in check_course(in_hand.course()) if f.check == "overlap")

    finding, before = overlap(), kept(greens)
    bunkers.changeGeometry(fid, qgis_shape(box(11.01, 360, 3, 4)))
    with pytest.raises(YardwrightError, match="changed or deleted"):
        repair(in_hand, finding)
    finding = overlap()
    bunkers.deleteFeature(fid)
    with pytest.raises(YardwrightError, match="changed or deleted"):
        repair(in_hand, finding)
    assert kept(greens) == before and greens.undoStack().count() == 0
    bunkers.rollBack()


def test_an_empty_row_that_was_drawn_meanwhile_stays(in_hand):  # noqa: F811
    from yardwright.desk.repairing import repair
    from yardwright.measure.checks import check_course

    bunkers = in_hand.layer("bunker")
    fid = add(bunkers, QgsGeometry(), holes="1")
    finding = next(f for f in check_course(in_hand.course()) if f.check == "empty")
    bunkers.changeGeometry(fid, qgis_shape(box(40, 100, 5, 5)))
    before = kept(bunkers)
    with pytest.raises(YardwrightError, match="changed or deleted"):
        repair(in_hand, finding)
    assert kept(bunkers) == before
    bunkers.rollBack()


def test_a_repair_that_fails_midway_leaves_nothing(in_hand, monkeypatch):  # noqa: F811
    from dataclasses import replace

    from yardwright.desk.repairing import repair
    from yardwright.measure.checks import check_course
    from yardwright.measure.findings import Change

    planted(in_hand)
    greens, trees = in_hand.layer("green"), in_hand.layer("trees")
    finding = next(f for f in check_course(in_hand.course()) if f.check == "overlap")
    first = finding.repair.changes[0]
    bad = Change("trees", next(trees.getFeatures()).id(), fields={"no such field": 1})
    both = replace(finding, repair=replace(finding.repair, changes=(first, bad)))
    before = kept(greens)
    with pytest.raises(YardwrightError):
        repair(in_hand, both)
    assert kept(greens) == before and greens.undoStack().count() == 0
    with pytest.raises(YardwrightError):
        repair(in_hand, replace(finding, repair=None))
    for layer in (greens, trees, in_hand.layer("bunker")):
        layer.rollBack()


def test_reading_tells_of_two_holes_with_one_number(in_hand):  # noqa: F811
    from yardwright.measure.checks import check_course

    layer = in_hand.layer("hole")
    kept_id = next(row.id() for row in layer.getFeatures() if row["number"] == 2)
    fid = add(layer, line((0, 0), (0, 100)), number=2)
    finding = next(f for f in check_course(in_hand.course()) if f.check == "number_twice")
    assert (finding.hole, finding.features) == (2, (("hole", fid), ("hole", kept_id)))
    layer.rollBack()


def test_the_map_shows_what_is_chosen_turned_as_it_was(panel, in_hand, qtbot):  # noqa: F811
    fid = planted(in_hand)
    wait_for(panel, qtbot, lambda findings: any(f.check == "overlap" for f in findings))
    canvas = in_hand.iface.mapCanvas()
    canvas.setDestinationCrs(in_hand.layers().crs)
    canvas.setRotation(-37)
    canvas.setExtent(QgsRectangle(*at(-500, -500), *at(500, 900)))
    panel.choose(named(panel, "overlap"))
    panel.tree.setFocus()
    qtbot.keyClick(panel.tree, Qt.Key.Key_Return)
    assert canvas.rotation() == -37
    assert (canvas.center().x(), canvas.center().y()) == pytest.approx(at(9, 360), abs=0.5)
    shown = QgsGeometry.fromPolygonXY(
        [[QgsPointXY(p) for p in canvas.mapSettings().visiblePolygon().toPolygon()]]
    )
    assert shown.contains(qgis_shape(box(9, 360, 1, 4))) and shown.area() < 150 * 150
    assert in_hand.layer("bunker").selectedFeatureIds() == [fid]
    assert len(in_hand.layer("green").selectedFeatureIds()) == 1
    # A double click does the same, and what was selected before no longer is.
    panel.choose(named(panel, "no_green"))
    item = panel.tree.currentItem()
    panel.tree.scrollToItem(item)
    place = panel.tree.visualItemRect(item).center()
    qtbot.mouseClick(panel.tree.viewport(), Qt.MouseButton.LeftButton, pos=place)
    qtbot.mouseDClick(panel.tree.viewport(), Qt.MouseButton.LeftButton, pos=place)
    assert in_hand.layer("bunker").selectedFeatureIds() == []
    assert len(in_hand.layer("hole").selectedFeatureIds()) == 1
    assert in_hand.hole == panel.chosen().hole != 1


def test_what_is_listed_can_be_chosen(panel, in_hand, qtbot):  # noqa: F811
    planted(in_hand)
    wait_for(panel, qtbot, lambda findings: any(f.check == "overlap" for f in findings))
    assert in_hand.hole == 1
    panel.holes_box.setCurrentIndex(1)
    panel.holes_box.activated.emit(1)
    assert checks_of(panel) == [(1, "marker"), (1, "overlap")]
    in_hand.choose_hole(2)
    assert panel.findings() == [] and panel.pages.currentWidget() is panel.nothing
    assert panel.nothing.text() == "Nothing wrong found on hole 2, but on others."
    panel.holes_box.setCurrentIndex(0)
    panel.holes_box.activated.emit(0)
    panel.gravity_buttons["missing"].setChecked(False)
    panel.gravity_buttons["doubtful"].setChecked(False)
    assert checks_of(panel) == [(1, "overlap")]
    panel.gravity_buttons["wrong"].setChecked(False)
    assert panel.nothing.text() == "Nothing of the kinds chosen above was found."
    # The counts stand there all the same.
    assert panel.gravity_buttons["missing"].text() == "Missing 3"


def test_buttons_without_a_choice_and_without_a_repair(panel):
    assert not panel.repair_button.isEnabled() and not panel.show_button.isEnabled()
    panel.choose(named(panel, "no_tee"))
    assert not panel.repair_button.isEnabled() and "no repair" in panel.repair_button.toolTip()
    assert panel.remedy.text() == named(panel, "no_tee").remedy


def test_a_choice_and_a_folded_hole_outlive_an_edit(panel, in_hand, qtbot):  # noqa: F811
    chosen = named(panel, "no_tee")
    panel.choose(chosen)
    planted(in_hand)
    wait_for(panel, qtbot, lambda findings: any(f.check == "overlap" for f in findings))
    assert panel.chosen() == chosen
    panel.tree.topLevelItem(0).setExpanded(False)
    panel.check_again()
    qtbot.waitUntil(lambda: not panel._step.isActive(), timeout=20_000)
    assert [panel.tree.topLevelItem(row).isExpanded() for row in range(2)] == [False, True]


def test_nothing_wrong(panel, in_hand, qtbot):  # noqa: F811
    for kind, field, value in (("hole", "number", 3), ("marker", "states_yd", 100)):
        layer = in_hand.layer(kind)
        layer.startEditing()
        layer.deleteFeature(next(row.id() for row in layer.getFeatures() if row[field] == value))
    wait_for(panel, qtbot, lambda findings: findings == [])
    assert panel.nothing.text() == "Nothing wrong found on 2 holes."
    assert panel.pages.currentWidget() is panel.nothing


def test_without_a_course_it_says_why_it_is_empty(panel, in_hand, project, qtbot):  # noqa: F811
    project.clear()
    qtbot.waitUntil(lambda: "no course" in panel.nothing.text(), timeout=20_000)
    assert panel.findings() == [] and in_hand.iface.bar.messages == []


def test_out_of_sight_it_rests(panel, in_hand, qtbot, monkeypatch):  # noqa: F811
    from yardwright.measure import checks

    panel.hide()
    made = []
    own = checks.CourseChecks.__init__
    monkeypatch.setattr(checks.CourseChecks, "__init__", lambda *given: (made.append(1), own(*given))[1])
    with qtbot.waitSignal(in_hand.edited, timeout=20_000):
        planted(in_hand)
    assert made == []
    panel.show()
    wait_for(panel, qtbot, lambda findings: any(f.check == "overlap" for f in findings))
    assert made == [1]


def test_what_nobody_foresaw_is_told_and_ends_the_checking(panel, in_hand, qtbot, monkeypatch):  # noqa: F811
    from yardwright.measure import checks

    def broken(*_):
        raise ValueError("odd")

    monkeypatch.setattr(checks.CourseChecks, "of_hole", broken)
    panel.check_again()
    qtbot.waitUntil(lambda: not panel._step.isActive(), timeout=20_000)
    assert len(in_hand.iface.bar.messages) == 1 and "odd" in in_hand.iface.bar.messages[0]


def test_let_go_hears_nothing_more(panel, in_hand, qtbot):  # noqa: F811
    panel.let_go()
    before = panel.findings()
    with qtbot.waitSignal(in_hand.edited, timeout=20_000):
        planted(in_hand)
    qtbot.wait(100)
    assert panel.findings() == before
