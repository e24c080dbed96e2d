"""``yardwright:startcourse`` as Processing runs it."""

import pytest
from yardwright.model.errors import YardwrightError


@pytest.fixture
def run(provider):
    """``run(**parameters)``: the results, and what the log said."""
    from qgis.core import QgsProcessingContext, QgsProcessingFeedback, QgsProject

    def run(**parameters):
        algorithm = provider.algorithm("startcourse")
        context = QgsProcessingContext()
        context.setProject(QgsProject.instance())
        feedback = QgsProcessingFeedback(False)
        accepted, reason = algorithm.checkParameterValues(parameters, context)
        if not accepted:
            return {"refused": reason}, ""
        results, done = algorithm.create().run(parameters, context, feedback)
        return (results if done else {}), feedback.textLog()

    return run


def opened(path):
    from yardwright.store.course_file import open_course
    from yardwright.store.reading import read_course

    with open_course(path) as layers:
        return read_course(layers)


def test_makes_a_course(run, tmp_path):
    path = str(tmp_path / "c.gpkg")
    card = tmp_path / "card.csv"
    card.write_text("hole,par,Heron\n1,4,402\n", "utf-8")
    results, _ = run(COURSE=path, NAME="Larkmere", CRS="EPSG:32630", SCORECARD=str(card))
    assert results == {"COURSE": path}
    course = opened(path)
    assert (course.name, course.crs, course.hole(1).par) == ("Larkmere", "EPSG:32630", 4)
    assert dict(course.scorecard) == {(1, "Heron"): 402.0}


def test_a_crs_as_an_object_and_metres(run, tmp_path):
    from qgis.core import QgsCoordinateReferenceSystem

    path = str(tmp_path / "c.gpkg")
    run(COURSE=path, NAME="Larkmere", CRS=QgsCoordinateReferenceSystem("EPSG:27700"), UNIT="m")
    course = opened(path)
    assert (course.crs, course.settings.unit, course.holes) == ("EPSG:27700", "m", ())


def test_only_the_named_parameters_are_compulsory(provider):
    """COURSE, NAME, CRS and SCORECARD? of design/interface.md; each has its help."""
    from qgis.core import QgsProcessingParameterDefinition

    optional = QgsProcessingParameterDefinition.Flag.FlagOptional
    definitions = provider.algorithm("startcourse").parameterDefinitions()
    assert {d.name() for d in definitions if not d.flags() & optional} == {"COURSE", "NAME", "CRS"}
    assert "SCORECARD" in {d.name() for d in definitions}
    assert all(d.help() for d in definitions)


@pytest.mark.parametrize(
    ("changed", "said"),
    [
        ({"CRS": "EPSG:999999"}, "EPSG:999999"),
        ({"NAME": " "}, "no name"),
        ({"SCORECARD": "none.csv"}, "cannot be read"),
    ],
)
def test_says_what_is_wrong(run, tmp_path, changed, said):
    path = tmp_path / "c.gpkg"
    results, log = run(**{"COURSE": str(path), "NAME": "L", "CRS": "EPSG:32630", **changed})
    assert said in log + str(results.get("refused", ""))
    assert not path.exists()


def test_refuses_to_overwrite(run, course_file):
    before = course_file.read_bytes()
    results, log = run(COURSE=str(course_file), NAME="Other", CRS="EPSG:32630")
    assert results == {} and "already exists" in log
    assert course_file.read_bytes() == before


def test_bad_rows_by_choice(run, tmp_path):
    path = str(tmp_path / "c.gpkg")
    card = tmp_path / "card.csv"
    card.write_text("hole,par,Heron\n1,4,402\n2,12,300\n", "utf-8")
    results, log = run(COURSE=path, NAME="L", CRS="EPSG:32630", SCORECARD=str(card))
    assert results == {} and "line 3: par 12" in log
    with pytest.raises(YardwrightError, match="There is no file"):
        opened(path)
    results, log = run(COURSE=path, NAME="L", CRS="EPSG:32630", SCORECARD=str(card), TAKE_GOOD_ROWS=True)
    assert results == {"COURSE": path} and "line 3: par 12" in log
    assert [hole.number for hole in opened(path).holes] == [1]


def test_refuses_a_file_that_qgis_would_throw_away(run):
    from qgis.core import QgsProcessing

    results, _ = run(COURSE=QgsProcessing.TEMPORARY_OUTPUT, NAME="Larkmere", CRS="EPSG:32630")
    assert results == {"refused": "No course file is named. Say in which file the course is to be kept."}
