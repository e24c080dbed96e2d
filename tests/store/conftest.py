"""A course to try the store on: an invented one, two holes, UTM zone 30."""

import shutil

import pytest


@pytest.fixture(scope="session")
def made_course_file(qgis_app, tmp_path_factory):
    """A course file with an invented scorecard of two holes; tests work on copies of it."""
    from yardwright.store.course_file import create_course

    folder = tmp_path_factory.mktemp("course")
    card = folder / "card.csv"
    card.write_text("hole,par,stroke_index,name,Heron,Wren m\n1,4,2,Burn,402,350\n2,3,1,,161,\n", "utf-8")
    path = folder / "Larkmere.gpkg"
    create_course(str(path), "Larkmere", "EPSG:32630", str(card))
    return path


@pytest.fixture
def course_file(made_course_file, tmp_path):
    """The path of a new course file, alone in its folder."""
    path = tmp_path / made_course_file.name
    shutil.copyfile(made_course_file, path)
    return path


@pytest.fixture
def course(course_file):
    """The course file, open; closed after the test."""
    from yardwright.store.course_file import open_course

    layers = open_course(str(course_file))
    yield layers
    layers.close()
