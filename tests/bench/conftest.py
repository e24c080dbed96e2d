"""The sample course, made without its images, with its layers open."""

from contextlib import closing

import pytest


@pytest.fixture(scope="module")
def layers(qgis_app, tmp_path_factory):
    from yardwright.store.course_file import open_course

    from sample_project import make

    path = str(tmp_path_factory.mktemp("bench") / "Quernhallow.gpkg")
    with closing(open_course(make.make_course(path, (0, 0, 1, 1)))) as course_layers:
        yield course_layers
