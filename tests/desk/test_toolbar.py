"""The toolbar: what it offers, when it is off and why, and that it goes away."""

import sqlite3
from contextlib import closing
from pathlib import Path

import pytest
from qgis.core import QgsProject
from qgis.gui import QgsAdvancedDigitizingDockWidget, QgsMapCanvas
from qgis.PyQt.QtCore import QObject, pyqtSignal
from qgis.PyQt.QtWidgets import QHBoxLayout, QLabel, QMainWindow, QMenu, QMessageBox, QToolBar

from tests.older import make_older

PLUGIN = Path(__file__).resolve().parents[2] / "plugin"


class Bar:
    def __init__(self):
        self.messages = []
        self.items = []

    def pushMessage(self, title, text, level, duration):
        self.messages.append(text)

    def createMessage(self, title, text):
        item = QLabel(text)
        QHBoxLayout(item)
        return item

    def pushWidget(self, item, level, duration):
        self.messages.append(item.text())
        self.items.append(item)

    def popWidget(self, item):
        self.items.remove(item)


class Iface(QObject):
    """As much of QGIS's interface as the toolbar uses; a call of anything else fails."""

    currentLayerChanged = pyqtSignal(object)
    initializationCompleted = pyqtSignal()
    layoutDesignerOpened = pyqtSignal(object)

    def __init__(self):
        super().__init__()
        self.window = QMainWindow()
        self.canvas = QgsMapCanvas(self.window)
        self.canvas.resize(500, 700)
        self.menu = QMenu(self.window)
        self.bar = Bar()
        self.cad = QgsAdvancedDigitizingDockWidget(self.canvas, self.window)
        self.active = None
        self.registered = []
        self.docks = []

    def mainWindow(self):
        return self.window

    def mapCanvas(self):
        return self.canvas

    def messageBar(self):
        return self.bar

    def cadDockWidget(self):
        return self.cad

    def addDockWidget(self, area, dock):
        self.docks.append(dock)
        self.window.addDockWidget(area, dock)

    def removeDockWidget(self, dock):
        self.docks.remove(dock)
        self.window.removeDockWidget(dock)

    def pluginMenu(self):
        return self.menu

    def activeLayer(self):
        return self.active

    def addToolBar(self, bar):
        self.window.addToolBar(bar)

    def registerMainWindowAction(self, action, shortcut):
        self.registered.append(action)
        return True

    def unregisterMainWindowAction(self, action):
        self.registered.remove(action)
        return True


@pytest.fixture
def iface(qgis_app):
    iface = Iface()
    yield iface
    iface.window.deleteLater()


@pytest.fixture
def tools(iface, project):
    from yardwright.desk.toolbar import CourseTools

    tools = CourseTools(iface)
    yield tools
    tools.remove()


def test_without_a_course_it_is_off_and_says_why(tools):
    for name in ("measure", "import_features", "check_markers", "export_windows", "view_play_up", "next"):
        assert not tools.actions[name].isEnabled()
        assert "no course in this project" in tools.actions[name].toolTip()
    assert tools.actions["new_course"].isEnabled() and tools.actions["open_course"].isEnabled()
    assert not tools.hole_box.isEnabled()


def test_a_course_opened_and_taken_away(tools, iface, course_file, qtbot):
    tools.add_course(str(course_file))
    assert tools.course_box.currentText() == "Larkmere"
    titles = [tools.hole_box.itemText(row) for row in range(tools.hole_box.count())]
    assert titles == ["1  Burn  par 4", "2  Elbow  par 4", "3  par 3"]
    assert tools.actions["measure"].isEnabled()
    assert "no course" not in tools.actions["measure"].toolTip()
    assert not tools.actions["previous"].isEnabled()
    QgsProject.instance().clear()
    qtbot.waitUntil(lambda: tools.place is None, timeout=20_000)
    assert not tools.actions["measure"].isEnabled()
    assert iface.bar.messages == []


@pytest.mark.parametrize("said", [QMessageBox.StandardButton.Yes, QMessageBox.StandardButton.No])
def test_an_older_course_is_brought_up_to_date_where_the_user_says_so(
    tools, iface, course_file, monkeypatch, said
):
    asked = []
    monkeypatch.setattr(QMessageBox, "question", staticmethod(lambda *what: asked.append(what[2]) or said))
    make_older(course_file, 1)
    before = course_file.read_bytes()
    kept = course_file.with_name("Larkmere-1.gpkg")
    tools.add_course(str(course_file))
    assert len(asked) == 1 and "version 1" in asked[0] and "Bring it up to date?" in asked[0]
    if said == QMessageBox.StandardButton.No:
        assert tools.place is None and course_file.read_bytes() == before and not kept.exists()
        assert iface.bar.messages == []
        return
    assert tools.course_box.currentText() == "Larkmere" and kept.read_bytes() == before
    (message,) = iface.bar.messages
    assert "up to date" in message and "Larkmere-1.gpkg" in message
    assert tools.in_hand.layer("event_flight").isValid()
    tools.add_course(str(course_file))
    assert len(asked) == 1


def test_an_older_course_in_use_is_told(tools, iface, course_file, monkeypatch):
    yes = QMessageBox.StandardButton.Yes
    monkeypatch.setattr(QMessageBox, "question", staticmethod(lambda *_: yes))
    make_older(course_file, 1)
    monkeypatch.setattr(
        "qgis.PyQt.QtWidgets.QFileDialog.getOpenFileName", staticmethod(lambda *_: (str(course_file), ""))
    )
    with closing(sqlite3.connect(course_file, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        tools.actions["open_course"].trigger()
    (message,) = iface.bar.messages
    assert "in use" in message and "try again" in message and tools.place is None


def test_views(tools, iface, course_file):
    tools.add_course(str(course_file))
    tools.step(1)
    assert tools.hole == 2
    tools.actions["view_play_up"].trigger()
    # From (100, 0) to (406.07, 106.07) yards: atan2(306.07, 106.07) = 70.89 degrees.
    assert iface.canvas.rotation() == pytest.approx(-70.89, abs=0.02)
    tools.actions["view_approach_up"].trigger()
    assert iface.canvas.rotation() == pytest.approx(-45, abs=0.02)
    assert tools.actions["view_approach_up"].isChecked() and not tools.actions["view_play_up"].isChecked()
    iface.canvas.setRotation(10)
    assert not tools.actions["view_approach_up"].isChecked() and tools.view is None
    tools.actions["view_north_up"].trigger()
    assert iface.canvas.rotation() == 0 and tools.actions["view_north_up"].isChecked()


def test_a_hole_that_is_not_drawn_is_told(tools, iface, course_file):
    tools.add_course(str(course_file))
    tools.step(2)
    assert tools.hole == 3 and iface.bar.messages == []
    tools.actions["view_play_up"].trigger()
    (message,) = iface.bar.messages
    assert "Hole 3 has no line of play" in message and "Draw the line" in message
    assert tools.view == "north" and tools.actions["view_north_up"].isChecked()


def test_a_file_that_is_no_course_is_told(tools, iface, tmp_path, monkeypatch):
    from qgis.PyQt.QtWidgets import QFileDialog

    path = tmp_path / "other.gpkg"
    path.write_text("not a course")
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_: (str(path), ""))
    tools.actions["open_course"].trigger()
    (message,) = iface.bar.messages
    assert "is not a GeoPackage" in message
    assert tools.place is None


def test_two_courses_the_active_layer_decides(tools, iface, course_file, tmp_path):
    from yardwright.desk.courses import layer_of
    from yardwright.store.course_file import create_course

    other = tmp_path / "Fenwick.gpkg"
    create_course(str(other), "Fenwick", "EPSG:32630")
    tools.add_course(str(course_file))
    tools.add_course(str(other))
    assert tools.course_box.currentText() == "Fenwick"
    assert "no hole yet" in tools.hole_box.toolTip()
    first = next(group for place, group in tools.in_hand.groups.items() if place == str(course_file))
    iface.currentLayerChanged.emit(layer_of(first, "green"))
    assert tools.course_box.currentText() == "Larkmere" and tools.hole == 1


def test_holes_drawn_meanwhile_are_listed(tools, course_file, qtbot):
    from yardwright.desk.courses import layer_of

    tools.add_course(str(course_file))
    layer = layer_of(tools.in_hand.groups[tools.place], "hole")
    layer.startEditing()
    hole = next(f for f in layer.getFeatures() if f["number"] == 3)
    layer.changeAttributeValue(hole.id(), layer.fields().indexOf("name"), "Quarry")
    qtbot.waitUntil(
        lambda: "3  Quarry  par 3" in [tools.hole_box.itemText(r) for r in range(3)], timeout=20_000
    )
    layer.rollBack()


def test_nothing_is_left_behind(iface, project, course_file, qtbot):
    from yardwright.desk.toolbar import CourseTools

    for _ in range(2):
        tools = CourseTools(iface)
        tools.add_course(str(course_file))
        tools.actions["hole_panel"].trigger()
        tools.drawing.take("bunker")
        assert len(iface.docks) == 1 and iface.canvas.mapTool() is tools.drawing.tools["bunker"]
        tools.remove()
        assert iface.canvas.mapTool() is None
        qtbot.wait(50)
        bars = [bar.objectName() for bar in iface.window.findChildren(QToolBar)]
        assert [name for name in bars if name.startswith("yardwright")] == [] and iface.docks == []
        assert iface.menu.actions() == [] and iface.registered == []
        assert iface.window.findChildren(CourseTools) == []


def test_an_error_nobody_foresaw_is_told_and_logged(iface, qgis_app):
    from qgis.core import QgsApplication
    from yardwright.desk.words import told_in

    logged = []
    log = QgsApplication.messageLog()
    connection = log.messageReceived[str, str, type(__import__("qgis.core").core.Qgis.Warning)].connect(
        lambda text, tag, level: logged.append(text)
    )
    with told_in(iface.bar):
        {}["absent"]
    log.disconnect(connection)
    (message,) = iface.bar.messages
    assert "absent" in message and "log of QGIS" in message
    assert "KeyError" in logged[0]


class Asked:
    """Stands for the dialogs of algorithms: what they were opened with."""

    def __init__(self, tools, monkeypatch):
        self.calls = []
        monkeypatch.setattr(tools, "run_algorithm", lambda *given: self.calls.append(given))


def image_layer(folder):
    import numpy as np
    from osgeo import gdal, osr
    from qgis.core import QgsRasterLayer

    path = str(folder / "image.tif")
    data = gdal.GetDriverByName("GTiff").Create(path, 4, 4, 1)
    data.SetGeoTransform((145.0, 0.1, 0, -37.0, 0, -0.1))
    degrees = osr.SpatialReference()
    degrees.SetWellKnownGeogCS("WGS84")
    data.SetProjection(degrees.ExportToWkt())
    data.GetRasterBand(1).WriteArray(np.ones((4, 4), dtype=np.uint8))
    del data
    return QgsRasterLayer(path, "From the air")


def test_a_new_course_begins_beside_the_project_in_the_zone_of_the_map(project, iface, tmp_path):
    from qgis.core import QgsCoordinateReferenceSystem
    from yardwright.desk.courses import suggested_start

    empty = suggested_start(project, iface.canvas)
    assert set(empty) == {"COURSE"} and Path(empty["COURSE"]).parent.is_dir()
    project.setFileName(str(tmp_path / "guide.qgz"))
    (tmp_path / "course.gpkg").write_text("")
    layer = image_layer(tmp_path)
    iface.canvas.setLayers([layer])
    iface.canvas.setDestinationCrs(QgsCoordinateReferenceSystem("EPSG:3857"))
    iface.canvas.setExtent(iface.canvas.mapSettings().layerExtentToOutputExtent(layer, layer.extent()))
    found = suggested_start(project, iface.canvas)
    assert found["COURSE"] == str(tmp_path / "course2.gpkg")
    # 145.2 degrees east is in the zone from 144 to 150, the 55th; south of the equator EPSG numbers it 327..
    assert found["CRS"].authid() == "EPSG:32755"


def test_what_is_brought_in_is_never_the_course_itself(tools, project, course_file, monkeypatch):
    from qgis.core import QgsVectorLayer
    from qgis.PyQt.QtWidgets import QFileDialog

    tools.add_course(str(course_file))
    asked = Asked(tools, monkeypatch)
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *given: ("", ""))
    tools.actions["import_features"].trigger()
    assert asked.calls == []
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *given: ("/maps/town.osm", ""))
    tools.actions["import_features"].trigger()
    assert [call[:2] for call in asked.calls] == [("importfeatures", {"SOURCE": "/maps/town.osm"})]
    survey = QgsVectorLayer("Point?crs=EPSG:32630", "Survey", "memory")
    project.addMapLayer(survey)
    tools.actions["import_features"].trigger()
    assert asked.calls[-1][:2] == ("importfeatures", {"SOURCE": survey})


def test_what_came_in_is_told_and_shown(tools, iface, course_file):
    from qgis.core import QgsRectangle

    tools.add_course(str(course_file))
    iface.canvas.setExtent(QgsRectangle(0, 0, 10, 10))
    tools._brought_in({"COUNTS": {"bunker": 2, "green": 1}})
    assert iface.bar.messages == ["Brought in: Bunker 2, Green 1. The log says more."]
    assert iface.canvas.extent().contains(tools._extent())
    closer = QgsRectangle.fromCenterAndSize(tools._extent().center(), 100, 100)
    iface.canvas.setExtent(closer)
    before = iface.canvas.extent()
    tools._brought_in({"COUNTS": {}})
    assert iface.canvas.extent() == before
    assert iface.bar.messages[1].startswith("Nothing new was brought in.")


def test_windows_are_cut_out_of_the_image_on_top(tools, iface, project, course_file, monkeypatch, tmp_path):
    tools.add_course(str(course_file))
    asked = Asked(tools, monkeypatch)
    tools.actions["export_windows"].trigger()
    layer = image_layer(tmp_path)
    project.addMapLayer(layer)
    tools.actions["export_windows"].trigger()
    windows = str(course_file.parent / "windows")
    assert [call[1] for call in asked.calls] == [{"OUTPUT": windows}, {"IMAGE": layer, "OUTPUT": windows}]


def test_everything_says_what_it_is(tools, iface, course_file):
    """What the question mark of QGIS's help menu shows: of every action, of every box and list."""
    from qgis.PyQt.QtWidgets import QAbstractItemView, QComboBox, QListWidget, QTableView, QTreeWidget

    tools.add_course(str(course_file))
    for action in (*tools.actions.values(), *tools.drawing.actions.values()):
        assert action.whatsThis(), action.objectName()
    tools.measure()
    parts = [tools.bar, tools.drawing.bar, tools._windows[-1], *map(tools.panel, tools_panels())]
    silent = [
        (part.objectName(), thing.objectName() or type(thing).__name__)
        for part in parts
        for thing in part.findChildren((QComboBox, QListWidget, QTableView, QTreeWidget))
        if not thing.whatsThis()
        and not isinstance(thing.parent(), (QComboBox, QAbstractItemView))
        and not isinstance(thing.parent().parent(), QComboBox)
    ]
    tools._windows[-1].close()
    assert silent == []


def tools_panels():
    return ("hole_panel", "dates_panel", "checks_panel")
