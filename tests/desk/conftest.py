"""A small invented course in the project of the test: what the desktop's parts are tried on.

Hole 1: 360 yd due north. Hole 2: a dogleg, 200 yd east and then 150 north-east. Hole 3: a row without line.
"""

import math

import pytest
from shapely.affinity import translate
from shapely.geometry import LineString, Point, Polygon

YARD = 0.9144
EAST, NORTH = 500_000.0, 6_200_000.0
"""On the central meridian of UTM zone 30, where grid north is true north, at the scale 0.9996."""
GRID = 0.9996 * YARD


def at(x, y):
    """A place ``x`` yards east and ``y`` north of the first tee, in the course's CRS."""
    return EAST + x * GRID, NORTH + y * GRID


def box(x, y, half_width, half_height):
    """A rectangle about a place, yards."""
    corners = ((-1, -1), (1, -1), (1, 1), (-1, 1))
    return Polygon([at(x + a * half_width, y + b * half_height) for a, b in corners])


def features():
    """The model Features of the course."""
    from yardwright.model.course import Feature

    diagonal = 150 / math.sqrt(2)
    end = (100 + 200 + diagonal, diagonal)
    round_green = Point(0, 0).buffer(12 * GRID, 32)
    return [
        Feature("hole", None, LineString([at(0, 0), at(0, 360)]), attributes={"number": 1}),
        Feature("hole", None, LineString([at(100, 0), at(300, 0), at(*end)]), attributes={"number": 2}),
        Feature("plate", None, Point(at(0, 0)), (1,), attributes={"hole": 1, "tee_set": "Heron"}),
        Feature("plate", None, Point(at(0, 40)), (1,), attributes={"hole": 1, "tee_set": "Wren"}),
        Feature("plate", None, Point(at(100, 0)), (2,), attributes={"hole": 2, "tee_set": "Heron"}),
        Feature("green", None, box(0, 360, 10, 15), (1,)),
        Feature("green", None, translate(round_green, *at(*end)), (2,)),
        Feature("fairway", None, box(0, 230, 18, 100), (1,)),
        Feature("bunker", None, box(20, 230, 4, 7), (1,), "Ness"),
        Feature("marker", None, Point(at(0, 210)), (1,), attributes={"hole": 1, "states_yd": 150.0}),
        Feature("marker", None, Point(at(0, 256)), (1,), attributes={"hole": 1, "states_yd": 100.0}),
        Feature("trees", None, box(-40, 180, 10, 60)),
        Feature("penalty_area", None, box(0, 90, 50, 6), (1,), "Burn"),
    ]


@pytest.fixture(scope="session")
def made_course(qgis_app, tmp_path_factory):
    """The course file; tests work on copies of it."""
    from yardwright.store.course_file import create_course, open_course
    from yardwright.store.writing import add_features

    folder = tmp_path_factory.mktemp("desk")
    card = folder / "card.csv"
    card.write_text(
        "hole,par,stroke_index,name,Heron,Wren\n1,4,2,Burn,360,320\n2,4,1,Elbow,350,\n3,3,3,,150,\n", "utf-8"
    )
    path = folder / "Larkmere.gpkg"
    create_course(str(path), "Larkmere", "EPSG:32630", str(card))
    with open_course(str(path)) as layers:
        add_features(layers, features())
    return path


@pytest.fixture
def course_file(made_course, tmp_path):
    """The path of a new course file."""
    import shutil

    path = tmp_path / made_course.name
    shutil.copyfile(made_course, path)
    return path


@pytest.fixture
def project(qgis_new_project):
    """The project, empty at first and at last."""
    from qgis.core import QgsProject

    yield QgsProject.instance()
    QgsProject.instance().clear()


@pytest.fixture
def place(project, course_file):
    """The place of the course, opened in the project."""
    from yardwright.store.course_file import open_course
    from yardwright.store.layer_group import COURSE_MARK, add_course_group

    layers = open_course(str(course_file))
    group = add_course_group(project, layers)
    layers.close()
    return group.customProperty(COURSE_MARK)
