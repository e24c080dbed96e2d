"""``yardwright:importfeatures`` as Processing runs it: each form of SOURCE, KIND, EXTENT, the results."""

from pathlib import Path

import pytest
from qgis.core import (
    QgsFeature,
    QgsGeometry,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProject,
    QgsVectorLayer,
)
from yardwright.model.kinds import FEATURE_KINDS
from yardwright.store.course_file import create_course, open_course
from yardwright.store.reading import read_course

DEL_RIO = Path(__file__).resolve().parents[3] / "shared" / "data" / "osm" / "delrio.osm"

OSM = """<?xml version='1.0' encoding='UTF-8'?>
<osm version="0.6" generator="a test">
<node id="1" lat="10" lon="9"/><node id="2" lat="10.003" lon="9"/>
<node id="3" lat="10.0029" lon="8.9999"/><node id="4" lat="10.0031" lon="8.9999"/>
<node id="5" lat="10.0031" lon="9.0001"/><node id="6" lat="10.0029" lon="9.0001"/>
<node id="7" lat="10.0001" lon="9"><tag k="golf" v="tee"/><tag k="tee" v="red"/></node>
<node id="8" lat="10.003" lon="9"><tag k="golf" v="pin"/></node>
<way id="20"><nd ref="1"/><nd ref="2"/><tag k="golf" v="hole"/><tag k="ref" v="Hole #7"/></way>
<way id="21"><nd ref="3"/><nd ref="4"/><nd ref="5"/><nd ref="6"/><nd ref="3"/><tag k="golf" v="green"/></way>
</osm>
"""
GEOJSON = (
    '{"type": "FeatureCollection", "features": [{"type": "Feature", "properties": {%s}, "geometry": '
    '{"type": "Polygon", "coordinates": [[[9, 10], [9.0001, 10], [9.0001, 10.0001], [9, 10]]]}}]}'
)


@pytest.fixture
def course(qgis_app, tmp_path):
    path = tmp_path / "course.gpkg"
    create_course(str(path), "Invented Links", "EPSG:32632")
    return str(path)


@pytest.fixture
def algorithm(qgis_app):
    from yardwright.processing.import_features import ImportFeatures

    return ImportFeatures().create()


class Log(QgsProcessingFeedback):
    def __init__(self):
        super().__init__(False)
        self.texts, self.warnings, self.steps = [], [], []
        self.progressChanged.connect(self.steps.append)

    def pushInfo(self, text):
        self.texts.append(text)

    def pushWarning(self, text):
        self.warnings.append(text)


def run(algorithm, feedback=None, project=None, **parameters):
    """The results, after the check of the parameters that Processing makes itself."""
    context = QgsProcessingContext()
    if project is not None:
        context.setProject(project)
    sound, why = algorithm.checkParameterValues(parameters, context)
    assert sound, why
    results, done = algorithm.run(parameters, context, feedback or Log(), catchExceptions=False)
    assert done
    return results


def file_of(tmp_path, text, name):
    path = tmp_path / name
    path.write_text(text, encoding="utf-8")
    return str(path)


def test_an_openstreetmap_file(algorithm, course, tmp_path):
    log = Log()
    source = file_of(tmp_path, OSM, "map.osm")
    results = run(algorithm, log, COURSE=course, SOURCE=source)
    assert results["COUNTS"] == {"hole": 1, "plate": 1, "green": 1}
    assert results["COUNT"] == 3
    assert len(results["LEFT_OUT"]) == 1
    assert results["LEFT_OUT"][0].startswith("pin (osm:node/8): the hole location")
    assert len(results["REMARKS"]) == 2
    assert "Line of play: 1 brought in" in log.texts
    assert any("gives no par" in text for text in log.warnings)
    assert log.steps == sorted(log.steps)
    assert log.steps[-1] == 100.0
    assert run(algorithm, COURSE=course, SOURCE=source)["COUNT"] == 0
    with open_course(course) as layers:
        features = read_course(layers).features
    assert {(feature.kind, feature.holes) for feature in features} == {("plate", (7,)), ("green", (7,))}


def test_a_kind_of_an_openstreetmap_file(algorithm, course, tmp_path):
    results = run(algorithm, COURSE=course, SOURCE=file_of(tmp_path, OSM, "map.osm"), KIND="green")
    assert results["COUNTS"] == {"green": 1}


def test_the_extent_in_another_crs(algorithm, course, tmp_path):
    source = file_of(tmp_path, OSM, "map.osm")
    results = run(algorithm, COURSE=course, SOURCE=source, EXTENT="8.9,9.1,10.002,10.1 [EPSG:4326]")
    assert results["COUNTS"] == {"hole": 1, "green": 1}
    results = run(algorithm, COURSE=course, SOURCE=source, EXTENT="9.1,9.2,10.002,10.1 [EPSG:4326]")
    assert results["COUNT"] == 0


def test_geojson_with_and_without_golf_tags(algorithm, course, tmp_path):
    tagged = file_of(tmp_path, GEOJSON % '"golf": "bunker", "@id": "way/3"', "tagged.geojson")
    assert run(algorithm, COURSE=course, SOURCE=tagged)["COUNTS"] == {"bunker": 1}
    # A kind that is named says what the features are, whatever their fields.
    assert run(algorithm, COURSE=course, SOURCE=tagged, KIND="rough")["COUNTS"] == {"rough": 1}
    plain = file_of(tmp_path, GEOJSON % '"name": "x"', "plain.geojson")
    with pytest.raises(QgsProcessingException, match="KIND"):
        run(algorithm, COURSE=course, SOURCE=plain)


def layer_of(wkt, fields="field=label:string", values=("Oak",), kind="Point"):
    layer = QgsVectorLayer(f"{kind}?crs=EPSG:4326&{fields}", "drawn by hand", "memory")
    feature = QgsFeature(layer.fields())
    feature.setAttributes(list(values))
    feature.setGeometry(QgsGeometry.fromWkt(wkt))
    layer.dataProvider().addFeatures([feature])
    return layer


def test_a_layer_of_the_project_by_id_name_and_itself(algorithm, course):
    project = QgsProject()
    layer = layer_of("Point (9 10)")
    project.addMapLayer(layer)
    assert run(algorithm, project=project, COURSE=course, SOURCE=layer.id(), KIND="tree")["COUNT"] == 1
    for source in ("drawn by hand", layer):
        again = run(algorithm, project=project, COURSE=course, SOURCE=source, KIND="tree")
        assert again["COUNT"] == 0
        assert "already has it" in again["LEFT_OUT"][0]


def test_a_layer_with_edits_that_are_not_saved(algorithm, course):
    layer = layer_of("Point (9 10)")
    layer.startEditing()
    feature = QgsFeature(layer.fields())
    feature.setGeometry(QgsGeometry.fromWkt("Point (9.001 10)"))
    layer.addFeature(feature)
    assert run(algorithm, COURSE=course, SOURCE=layer, KIND="tree")["COUNT"] == 2


def test_a_layer_whose_fields_are_tags(algorithm, course):
    layer = layer_of("Point (9 10)", "field=golf:string&field=tee:string", ("tee", "red"))
    assert run(algorithm, COURSE=course, SOURCE=layer)["COUNTS"] == {"plate": 1}


@pytest.mark.parametrize("layer", ["", "|layername=green"])
def test_a_course_is_not_brought_into_itself(algorithm, course, layer):
    with pytest.raises(QgsProcessingException) as error:
        run(algorithm, COURSE=course, SOURCE=course + layer, KIND="green")
    assert "this very course. Choose another" in str(error.value)


def test_a_survey_with_and_without_its_crs(algorithm, course, tmp_path):
    source = file_of(tmp_path, "x,y,label\n9,10,Oak\n", "survey.csv")
    results = run(algorithm, COURSE=course, SOURCE=source, KIND="tree", SOURCE_CRS="EPSG:4326")
    assert results["COUNTS"] == {"tree": 1}
    source = file_of(tmp_path, "x,y,label\n500100,1105100,Elm\n", "survey2.csv")
    results = run(algorithm, COURSE=course, SOURCE=source, KIND="tree")
    assert results["COUNTS"] == {"tree": 1}
    assert "own coordinate system" in results["REMARKS"][0]


@pytest.mark.parametrize(
    ("parameters", "says"),
    [
        ({"SOURCE": "nowhere.osm"}, "is not there"),
        ({"SOURCE": "nowhere.shp", "KIND": "bunker"}, "is not there"),
        ({"SOURCE": "nowhere.geojson"}, "is not there"),
        ({"SOURCE": "nowhere.csv"}, "KIND"),
        ({"SOURCE": "bad.dat", "KIND": "bunker"}, "no vector layer"),
        ({"SOURCE": "bad.osm"}, "cannot be read as an OpenStreetMap file"),
    ],
)
def test_what_cannot_be_read_says_so_and_leaves_the_course_alone(
    algorithm, course, tmp_path, monkeypatch, parameters, says
):
    monkeypatch.chdir(tmp_path)
    for name in ("bad.dat", "bad.osm"):
        file_of(tmp_path, "nothing of the kind", name)
    before = Path(course).read_bytes()
    with pytest.raises(QgsProcessingException, match=says):
        run(algorithm, COURSE=course, **parameters)
    assert Path(course).read_bytes() == before


def test_a_course_that_is_none(algorithm, tmp_path):
    source = file_of(tmp_path, OSM, "map.osm")
    with pytest.raises(QgsProcessingException, match="no file"):
        run(algorithm, COURSE=str(tmp_path / "none.gpkg"), SOURCE=source)
    with pytest.raises(QgsProcessingException, match="not a GeoPackage"):
        run(algorithm, COURSE=source, SOURCE=source)


def test_cancelled_before_anything_is_written(algorithm, course, tmp_path):
    class Cancelled(Log):
        def isCanceled(self):
            return True

    before = Path(course).read_bytes()
    source = file_of(tmp_path, OSM, "map.osm")
    assert run(algorithm, Cancelled(), COURSE=course, SOURCE=source) == {}
    assert Path(course).read_bytes() == before


def test_its_parameters(algorithm):
    definitions = {definition.name(): definition for definition in algorithm.parameterDefinitions()}
    assert list(definitions) == ["COURSE", "SOURCE", "KIND", "EXTENT", "SOURCE_CRS"]
    optional = [name for name, d in definitions.items() if d.flags() & d.Flag.FlagOptional]
    assert optional == ["KIND", "EXTENT", "SOURCE_CRS"]
    assert all(definition.help() for definition in definitions.values())
    assert tuple(definitions["KIND"].options()) == FEATURE_KINDS


@pytest.mark.skipif(not DEL_RIO.exists(), reason="the open data is not beside the repository")
def test_a_real_nine_hole_course(algorithm, qgis_app, tmp_path):
    # (c) OpenStreetMap contributors, ODbL 1.0.
    path = str(tmp_path / "open.gpkg")
    create_course(path, "Open data", "EPSG:32611")
    results = run(algorithm, COURSE=path, SOURCE=str(DEL_RIO))
    assert results["COUNTS"] == {"hole": 9, "tee": 9, "green": 9, "fairway": 10, "bunker": 18, "path": 13}
    assert len(results["REMARKS"]) == 3
    assert run(algorithm, COURSE=path, SOURCE=str(DEL_RIO))["COUNT"] == 0
