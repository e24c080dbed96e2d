"""A page of the guide in a real layout designer: what it shows, kept as a template by a click."""

from pathlib import Path

import pytest
from desktop import result_of, run_desktop
from qgis.core import QgsProject

pytestmark = pytest.mark.desktop


def course_project(folder):
    """The path of a project of a small course, both written into a folder."""
    from yardwright.store.course_file import create_course, open_course
    from yardwright.store.layer_group import add_course_group
    from yardwright.store.writing import add_features

    from tests.desk.conftest import features

    card = folder / "card.csv"
    card.write_text("hole,par,stroke_index,name,Heron\n1,4,2,Burn,360\n2,4,1,Elbow,350\n", "utf-8")
    path = str(folder / "Larkmere.gpkg")
    create_course(path, "Larkmere", "EPSG:32630", str(card))
    project = QgsProject()
    with open_course(path) as layers:
        add_features(layers, features())
        add_course_group(project, layers)
        project.write(str(folder / "Larkmere.qgz"))
    return folder / "Larkmere.qgz"


def driven(folder, drive):
    """``(folder of the course, what the script found)`` of a script run on the small course."""
    project, desktop = course_project(folder), folder / "desktop"
    desktop.mkdir()
    run_desktop(Path(__file__).with_name(drive), desktop, project=project, timeout=120)
    return folder, result_of(desktop)


@pytest.fixture(scope="module")
def found(qgis_app, tmp_path_factory):
    return driven(tmp_path_factory.mktemp("pages"), "drive_pages.py")


def test_labels_show_figures_of_the_course_in_hand(found):
    texts = found[1]["texts"]
    # The line of play is 360 yd long, as it is drawn; Wren's plate stands 40 yd ahead.
    assert (texts["number"], texts["name"]) == ("1", "Burn")
    assert texts["lengths"].split() == ["Heron", "360", "Wren", "320"]


def test_a_click_keeps_the_page_as_the_courses_template(found):
    folder, result = found
    template = folder / "Larkmere_guide" / "hole.qpt"
    assert str(template) in result["said"][-1]
    text = template.read_text("utf-8")
    assert 'position="70,40,mm"' in text and "drawing=" not in text


def test_actions_go_with_the_plugin_and_the_page_stays(found):
    result = found[1]
    assert result["unloaded"] and result["left"] == []
    assert result["part"] == "DrawnItem"
