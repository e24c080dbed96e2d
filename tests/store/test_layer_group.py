"""The course's group in a project: ours by its mark, once a course, and the same layers again from it."""

import pytest
from yardwright.model.errors import YardwrightError
from yardwright.model.kinds import KINDS, TABLES

from tests.loudly import left_over


@pytest.fixture
def project(qgis_app):
    from qgis.core import QgsProject

    project = QgsProject()
    yield project
    project.clear()


def opened(path):
    from yardwright.store.course_file import open_course

    return open_course(str(path))


def add(project, path):
    from yardwright.store.layer_group import add_course_group

    layers = opened(path)
    group = add_course_group(project, layers)
    layers.close()
    return group


def test_the_group(project, course_file):
    group = add(project, course_file)
    assert group.name() == "Larkmere"
    assert group.customProperty("yardwright/course") == str(course_file)
    order = [node.layer().customProperty("yardwright/kind") for node in group.findLayers()]
    kinds = sorted(KINDS, key=lambda kind: -kind.drawn_over)
    assert order == [kind.name for kind in (*kinds, *TABLES)]
    assert len(project.mapLayers()) == len(KINDS) + len(TABLES)
    tables = group.findGroup("Tables")
    assert not tables.isExpanded() and len(tables.findLayers()) == len(TABLES)


def test_in_another_language_it_is_the_same_group(project, course_file, loudly):
    """Nothing is found by the name it is shown by."""
    from yardwright.model.words import speak
    from yardwright.store.layer_group import course_layers_of

    group = add(project, course_file)
    names = [node.layer().name() for node in group.findLayers()]
    assert not left_over(" ".join(names)) and group.findGroup("TABLES") is not None
    hole = course_layers_of(group)["hole"]
    assert hole.fields().at(hole.fields().lookupField("name")).alias() == "NAME"
    speak()
    assert add(project, course_file) is group
    assert [node.layer().name() for node in group.findLayers()] == names
    assert set(course_layers_of(group).layers) == {kind.name for kind in KINDS + TABLES}


def test_layers_come_with_their_style(project, course_file):
    group = add(project, course_file)
    by_kind = {node.layer().customProperty("yardwright/kind"): node.layer() for node in group.findLayers()}
    assert by_kind["hole"].labelsEnabled() and by_kind["penalty_area"].renderer().type() == "RuleRenderer"
    assert by_kind["hole"].name() == "Line of play"


def test_an_empty_project_takes_the_crs_and_the_ellipsoid(project, course_file):
    add(project, course_file)
    assert project.crs().authid() == "EPSG:32630"
    assert project.ellipsoid() in ("EPSG:7030", "WGS84")


def test_a_project_with_layers_keeps_its_crs(project, course_file):
    from qgis.core import QgsCoordinateReferenceSystem, QgsVectorLayer

    project.setCrs(QgsCoordinateReferenceSystem("EPSG:27700"))
    project.addMapLayer(QgsVectorLayer("Point?crs=EPSG:27700", "mine", "memory"))
    add(project, course_file)
    assert project.crs().authid() == "EPSG:27700"


def test_twice_the_same_course_is_one_group(project, course_file):
    from yardwright.store.layer_group import course_groups

    first = add(project, course_file)
    first.setName("Renamed by somebody")
    other_way = course_file.parent / "." / course_file.name
    assert add(project, other_way) is first
    assert list(course_groups(project)) == [str(course_file)]
    assert len(project.mapLayers()) == len(KINDS) + len(TABLES)


def test_a_group_of_the_same_name_is_not_ours(project, course_file):
    from yardwright.store.layer_group import course_groups

    theirs = project.layerTreeRoot().addGroup("Larkmere")
    ours = add(project, course_file)
    assert ours is not theirs and theirs.findLayers() == []
    assert list(course_groups(project).values()) == [ours]


def test_two_courses(project, course_file, tmp_path):
    from yardwright.store.course_file import create_course
    from yardwright.store.layer_group import course_groups

    add(project, course_file)
    create_course(str(tmp_path / "other.gpkg"), "Thornby", "EPSG:32631")
    add(project, tmp_path / "other.gpkg")
    assert {group.name() for group in course_groups(project).values()} == {"Larkmere", "Thornby"}
    assert project.crs().authid() == "EPSG:32630"


def test_the_course_from_the_group(project, course_file):
    from yardwright.store.layer_group import course_layers_of
    from yardwright.store.reading import read_course

    group = add(project, course_file)
    layers = course_layers_of(group)
    assert layers.crs.authid() == "EPSG:32630" and layers.place == str(course_file)
    assert layers["green"] in project.mapLayers().values()
    assert read_course(layers).name == "Larkmere"
    layers.close()
    assert all(layer.isValid() for layer in project.mapLayers().values())


def test_a_removed_layer_is_missed_and_comes_back(project, course_file):
    from yardwright.store.layer_group import course_layers_of

    group = add(project, course_file)
    project.removeMapLayer(course_layers_of(group)["green"].id())
    with pytest.raises(YardwrightError, match="lacks these layers: green"):
        course_layers_of(group)
    assert add(project, course_file) is group
    assert course_layers_of(group)["green"].isValid()
    order = [node.layer().customProperty("yardwright/kind") for node in group.findLayers()]
    kinds = sorted(KINDS, key=lambda kind: -kind.drawn_over)
    assert order == [kind.name for kind in (*kinds, *TABLES)]


def test_a_project_moved_with_its_course_knows_the_new_place(project, course_file, tmp_path):
    """Saved with paths beside the project, as QGIS does of itself."""
    import shutil

    from yardwright.store.layer_group import course_groups, course_layers_of

    (tmp_path / "old").mkdir()
    moved = shutil.copy(course_file, tmp_path / "old" / "course.gpkg")
    add(project, moved)
    project.write(str(tmp_path / "old" / "guide.qgs"))
    project.clear()
    (tmp_path / "old").rename(tmp_path / "new")
    assert project.read(str(tmp_path / "new" / "guide.qgs"))
    ((place, group),) = course_groups(project).items()
    assert place == str(tmp_path / "new" / "course.gpkg")
    assert course_layers_of(group).place == place
    assert add(project, place) is group


def test_a_saved_project_knows_its_courses_again(project, course_file, tmp_path):
    from qgis.core import QgsProject
    from yardwright.store.layer_group import course_groups, course_layers_of

    add(project, course_file)
    assert project.write(str(tmp_path / "p.qgz"))
    again = QgsProject()
    assert again.read(str(tmp_path / "p.qgz"))
    ((place, group),) = course_groups(again).items()
    assert course_layers_of(group)["hole"].featureCount() == 2
    again.clear()
