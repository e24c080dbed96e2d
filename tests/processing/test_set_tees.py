"""settees as Processing runs it, on a hole laid out with geographiclib: every expected length is the geodesic's.
Two club-lengths of 48 in: Rules of Golf, definition of the teeing area (from memory)."""

import csv
import os
from pathlib import Path

import pytest
from geographiclib.geodesic import Geodesic
from qgis.core import QgsApplication, QgsProcessingContext, QgsProcessingFeedback

YARD = 0.9144
FRONT = (56.3, -2.8)  # latitude, longitude of the middle of the tee's front
PLAY = 37.0  # azimuth there
COLUMNS = "event round flight hole asked_yd got_yd x y from_front_yd behind_yd verdict"


def ahead(place, azimuth, metres):
    """``((latitude, longitude), azimuth there)`` of the geodesic's end."""
    end = Geodesic.WGS84.Direct(*place, azimuth, metres)
    return (end["lat2"], end["lon2"]), end["azi2"]


@pytest.fixture
def laid(qgis_app, tmp_path):
    """A hole of 400 yd from the front of a tee 40 yd deep, with a plate 8 yd back; ``(path, green's middle)``."""
    from pyproj import Transformer
    from shapely.geometry import LineString, Point, Polygon
    from yardwright.model.course import Feature
    from yardwright.store.course_file import create_course, open_course
    from yardwright.store.writing import add_features

    to_utm = Transformer.from_crs("EPSG:4326", "EPSG:32630", always_xy=True)

    def utm(places):
        return [to_utm.transform(longitude, latitude) for latitude, longitude in places]

    green, arrival = ahead(FRONT, PLAY, 400 * YARD)
    back = ahead(FRONT, PLAY + 180, 40 * YARD)[0]
    corners = [
        ahead(place, PLAY + side, 6 * YARD)[0]
        for place, side in zip((back, back, FRONT, FRONT), (-90, 90, 90, -90))
    ]
    plate = ahead(FRONT, PLAY + 180, 8 * YARD)[0]
    circle = [ahead(green, arrival + 5 * step, 12.0)[0] for step in range(72)]
    card = tmp_path / "card.csv"
    card.write_text("hole,par,stroke_index,name,White\n1,4,1,Burn,408\n", encoding="utf-8")
    path = str(tmp_path / "laid.gpkg")
    create_course(path, "Laid Out Links", "EPSG:32630", scorecard=str(card))
    with open_course(path) as layers:
        add_features(
            layers,
            [
                Feature("hole", None, LineString(utm([FRONT, green])), attributes={"number": 1}),
                Feature("tee", None, Polygon(utm(corners)), holes=(1,), attributes={"tee_set": "White"}),
                Feature("plate", None, Point(utm([plate])[0]), attributes={"hole": 1, "tee_set": "White"}),
                Feature("green", None, Polygon(utm(circle)), holes=(1,)),
            ],
        )
    return path, green


def run(parameters):
    """``(results, went well, log)`` of settees run as Processing does."""
    feedback = QgsProcessingFeedback(False)
    algorithm = QgsApplication.processingRegistry().createAlgorithmById("yardwright:settees")
    context = QgsProcessingContext()
    good, reason = algorithm.checkParameterValues(parameters, context)
    assert good, reason
    results, ok = algorithm.run(parameters, context, feedback)
    return results, ok, feedback.textLog()


@pytest.fixture
def settees(provider, laid, tmp_path):
    """Runs settees on the hole with the lines of a lengths file, further parameters by name."""

    def run_with(*lines, **parameters):
        path = tmp_path / "lengths.csv"
        path.write_text("\n".join(["round,flight,hole,yards", *lines]) + "\n", encoding="utf-8")
        own = {
            "COURSE": laid[0],
            "EVENT": "Larkmere Cup",
            "LENGTHS": str(path),
            "OUTPUT": str(tmp_path / "out"),
        }
        return run({**own, **parameters})

    return run_with


def rows_of(path):
    with open(path, encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def events_of(path):
    from yardwright.store.course_file import open_course
    from yardwright.store.events import read_events

    with open_course(path) as layers:
        return read_events(layers)


def test_markers_stand_where_the_geodesic_measures_the_length(settees, laid, tmp_path):
    from pyproj import Transformer

    results, ok, log = settees("1,White,1,425", "2,White,1,450")
    assert ok, log
    assert os.listdir(tmp_path / "out") == ["tee_setting.csv"]
    first, second = rows_of(results["TEE_SETTING"])
    assert [name for name in first if name in COLUMNS.split()] == COLUMNS.split()
    assert (first["event"], first["round"], first["flight"], first["hole"]) == (
        "Larkmere Cup",
        "1",
        "White",
        "1",
    )
    assert (first["asked_yd"], first["got_yd"], first["verdict"]) == ("425.00", "425.00", "fits")
    assert (first["from_front_yd"], first["behind_yd"], first["from_plate_yd"]) == ("25.00", "15.00", "17.00")
    to_degrees = Transformer.from_crs("EPSG:32630", "EPSG:4326", always_xy=True)
    longitude, latitude = to_degrees.transform(float(first["x"]), float(first["y"]))
    way = Geodesic.WGS84.Inverse(latitude, longitude, *laid[1])
    assert way["s12"] == pytest.approx(425 * YARD, abs=0.002)
    assert way["azi1"] == pytest.approx(PLAY, abs=0.01)

    assert second["verdict"] == "nearest"
    assert float(second["got_yd"]) == pytest.approx(440 - 96 / 36, abs=0.0051)
    assert "Round 1, White, hole 1: 17 yd behind the plate" in log
    assert "Round 2, White, hole 1: longer than the tee allows" in log
    assert "2 lengths set: 1 fit, 1 nearest, 0 impossible" in log


def test_a_new_event_is_made_with_its_rounds_and_flights(settees, laid):
    _, ok, log = settees("2,white,1,425", "1,Men,1,410")
    assert ok, log
    (event,) = events_of(laid[0])
    assert event.name == "Larkmere Cup"
    assert [one.number for one in event.rounds] == [1, 2]
    assert {(one.name, one.tee_set) for one in event.flights} == {("white", "White"), ("Men", "")}
    assert {(one.round, one.flight, round(one.length / YARD, 6)) for one in event.lengths} == {
        (2, "white", 425),
        (1, "Men", 410),
    }
    assert "Round 1, Men, hole 1: the flight names no tee set" in log


def test_a_known_event_keeps_what_it_says(settees, laid):
    from yardwright.model.event import Event, Flight, Limits, Round
    from yardwright.store.course_file import open_course
    from yardwright.store.events import write_event

    kept = Event(
        "Larkmere Cup",
        rounds=(Round(1, "2031-05-04"),),
        flights=(Flight("Men", "White"),),
        limits=Limits(wear=3 * YARD),
    )
    with open_course(laid[0]) as layers:
        write_event(layers, kept)
    assert settees("1,Men,1,425")[1]
    results, ok, log = settees("2,Men,1,425")
    assert ok, log
    # Round 1, of an earlier run, has worn the middle of the tee.
    (row,) = rows_of(results["TEE_SETTING"])
    assert (
        row["verdict"] == "fits" and "3.0 yd to the right, clear of the markers of round 1" in row["remark"]
    )
    (event,) = events_of(laid[0])
    assert [(one.number, one.played_on) for one in event.rounds] == [(1, "2031-05-04"), (2, "")]
    assert event.flights == kept.flights and event.limits.wear == pytest.approx(3 * YARD)
    assert len(event.lengths) == 2


def test_a_length_asked_for_again_is_replaced(settees, laid):
    assert settees("1,White,1,425")[1] and settees("1,White,1,415")[1]
    (event,) = events_of(laid[0])
    assert [round(one.length / YARD, 6) for one in event.lengths] == [415]


@pytest.mark.parametrize("bad", ["1,White,1,far", "1,White,7,400", "1,White,1,-3"])
def test_a_bad_row_is_named_and_nothing_written(settees, laid, tmp_path, bad):
    before = Path(laid[0]).read_bytes()
    _, ok, log = settees("2,White,1,425", bad)
    assert not ok
    assert "line 3" in log.lower() and "Traceback" not in log
    assert not (tmp_path / "out").exists()
    assert events_of(laid[0]) == ()
    assert Path(laid[0]).read_bytes() == before


def test_the_good_rows_are_taken_when_asked(settees, laid):
    results, ok, log = settees("1,White,1,425", "2,White,1,far", TAKE_GOOD_ROWS=True)
    assert ok, log
    assert [row["round"] for row in rows_of(results["TEE_SETTING"])] == ["1"]
    assert "line 3" in log.lower() and "left out" in log
    assert len(events_of(laid[0])[0].lengths) == 1


def test_a_flight_a_known_event_does_not_have_is_a_bad_row(settees):
    assert settees("1,White,1,425")[1]
    _, ok, log = settees("1,Whit,1,425")
    assert not ok and "Whit" in log and "line 2" in log


def test_an_event_without_a_name_is_refused(settees, tmp_path):
    _, ok, log = settees("1,White,1,425", EVENT="   ")
    assert not ok and "No event is named." in log and not (tmp_path / "out").exists()


def test_a_file_without_a_length_is_refused(settees, laid):
    _, ok, log = settees()
    assert not ok and "has no length in it" in log and "Traceback" not in log
    assert events_of(laid[0]) == ()


def test_a_file_that_is_not_there_is_refused(settees):
    _, ok, log = settees("1,White,1,425", LENGTHS="nowhere.csv")
    assert not ok and "nowhere.csv" in log and "Traceback" not in log


def test_only_the_public_parameters_are_compulsory(provider):
    from qgis.core import QgsProcessingParameterDefinition

    optional = QgsProcessingParameterDefinition.Flag.FlagOptional
    compulsory = {
        parameter.name()
        for parameter in provider.algorithm("settees").parameterDefinitions()
        if not parameter.flags() & optional and parameter.defaultValue() is None
    }
    assert compulsory <= {"COURSE", "EVENT", "LENGTHS", "OUTPUT"}
