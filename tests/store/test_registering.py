"""A registration kept in the course: the row, what was drawn from the date, pins, all or nothing."""

import numpy as np
import pytest
from qgis.core import QgsPointXY, QgsVectorLayer
from shapely.geometry import LineString, Point, Polygon
from yardwright.imagery.moves import LocalShifts, Move
from yardwright.imagery.registration import Registration, Tie
from yardwright.measure.accuracy import plus_minus
from yardwright.model.course import Feature
from yardwright.model.errors import YardwrightError
from yardwright.store.image_dates import dates_of
from yardwright.store.reading import read_course, read_features, read_images
from yardwright.store.registering import ground_drawn, keep_registration, move_kept, take_back
from yardwright.store.writing import add_features, editing

EAST, NORTH = 512_000.0, 6_244_000.0
MAY, JULY = "2024-05-09", "2025-07-02"


def square(x, y, half=5.0):
    return Polygon(
        [(EAST + x + a * half, NORTH + y + b * half) for a, b in ((-1, -1), (1, -1), (1, 1), (-1, 1))]
    )


def place(x, y):
    return Point(EAST + x, NORTH + y)


def image(date_id, **more):
    values = {"id": date_id, "source": f"{date_id}.tif", "taken": date_id, "gsd_m": 0.2, **more}
    return Feature("image", None, square(150, 0, 400), attributes=values)


def drawn():
    """May is the date that lies off: a green, a hole and a bunker are from it; another bunker from July, one
    from another source."""
    line = LineString([(EAST, NORTH), (EAST + 300, NORTH)])
    return [
        image(MAY),
        image(JULY, rmse_m=None),
        Feature("hole", None, line, seen_in=MAY, attributes={"number": 1}),
        Feature("green", None, square(300, 0, 9), (1,), seen_in=MAY),
        Feature("bunker", None, square(280, 20), (1,), "May", seen_in=MAY, view="partly hidden"),
        Feature("bunker", None, square(280, -20), (1,), "July", seen_in=JULY),
        Feature("bunker", None, square(250, 20), (1,), "plan", seen_in=MAY, view="from another source"),
        Feature("tee", None, square(0, 0), (1,), seen_in=JULY, attributes={"tee_set": "Heron"}),
        Feature(
            "pin", None, place(303, 2), attributes={"event": "Cup", "round": 1, "hole": 1, "given": "point"}
        ),
        Feature(
            "pin", None, place(600, 2), attributes={"event": "Cup", "round": 1, "hole": 2, "given": "point"}
        ),
    ]


@pytest.fixture
def laid(course):
    add_features(course, drawn())
    return course


def registration(move, rmse=0.04, pixel=0.2, date_id=MAY):
    tie = Tie(EAST, NORTH, move.east, move.north, 0.0, 0.0, "fit", 9.0)
    return Registration(date_id, move, "shift", rmse, (tie,), pixel)


def everything(layers):
    """All shapes and the rows of the dates, to be compared."""
    shapes = {
        kind: [(row.id(), row.geometry().asWkt(6)) for row in layers[kind].getFeatures()]
        for kind in ("hole", "green", "bunker", "tee", "pin", "image")
    }
    return shapes, [row.attributes() for row in layers["image"].getFeatures()]


def shapes_of(layers, kind):
    return {
        feature.label or str(feature.get("hole", "")): feature.geometry
        for feature in read_features(layers, kind)
    }


def test_the_row_and_what_was_drawn_from_it(laid):
    before = {kind: shapes_of(laid, kind) for kind in ("green", "bunker", "pin", "tee")}
    kept = keep_registration(laid, registration(Move(2.0, -1.5)), JULY)
    assert (kept.moved, kept.furthest, kept.pins) == (True, pytest.approx(2.5), 1)
    assert dict(kept.features) == {"hole": 1, "green": 1, "bunker": 1}

    may, july = read_images(laid)
    assert (may.shift_e_m, may.shift_n_m, may.rmse_m, may.moved) == (2.0, -1.5, 0.04, "")
    assert july.rmse_m == 0.0

    after = {kind: shapes_of(laid, kind) for kind in before}
    for kind, label, moved in (
        ("green", "", True), ("bunker", "May", True), ("bunker", "July", False), ("bunker", "plan", False),
        ("tee", "", False), ("pin", "1", True), ("pin", "2", False),
    ):  # fmt: skip
        shift = np.subtract(after[kind][label].centroid.coords[0], before[kind][label].centroid.coords[0])
        assert shift == pytest.approx((2.0, -1.5) if moved else (0, 0), abs=1e-6), (kind, label)
    hole = read_course(laid).holes[0]
    assert hole.line.coords[0] == pytest.approx((EAST + 2, NORTH - 1.5))
    footprint = next(laid["image"].getFeatures()).geometry().boundingBox()
    assert footprint.xMinimum() == pytest.approx(EAST - 250 + 2)


def test_registered_again_moves_only_by_the_difference(laid):
    keep_registration(laid, registration(Move(2.0, -1.5)))
    first = everything(laid)
    again = keep_registration(laid, registration(Move(2.01, -1.5), rmse=0.03))
    assert not again.moved and again.features == ()
    shapes, _ = everything(laid)
    assert shapes == first[0]
    assert (read_images(laid)[0].shift_e_m, read_images(laid)[0].rmse_m) == (2.0, 0.03)
    assert keep_registration(laid, registration(Move(2.6, -1.5))).furthest == pytest.approx(0.6)
    assert shapes_of(laid, "green")[""].centroid.x == pytest.approx(EAST + 302.6)


def test_turns_and_local_shifts_are_carried_too(laid):
    local = LocalShifts(EAST - 100, NORTH + 300, 200, [[0.0, 0.5, 1.0]] * 4, [[0.2, 0.0, -0.4]] * 4)
    move = Move(1.0, 0.5, 0.4, 1.002, (EAST + 100, NORTH), local)
    before = np.array(shapes_of(laid, "green")[""].exterior.coords)
    keep_registration(laid, registration(move))
    after = np.array(shapes_of(laid, "green")[""].exterior.coords)
    assert np.allclose(after, move.ahead(before), atol=2e-3)
    (may, _) = dates_of(read_course(laid), laid.place)
    assert np.allclose(may.move.ahead(before), move.ahead(before), atol=2e-3)
    assert move_kept(laid, MAY).turn == pytest.approx(0.4)


def test_taken_back_all_lies_where_it_lay(laid):
    before, _ = everything(laid)
    local = LocalShifts(EAST - 100, NORTH + 300, 200, [[0.0, 0.5, 1.0]] * 4, [[0.2, 0.0, -0.4]] * 4)
    keep_registration(laid, registration(Move(1.0, 0.5, 0.4, 1.002, (EAST + 100, NORTH), local)))
    assert take_back(laid, MAY).moved
    after, _ = everything(laid)
    for kind, rows in before.items():
        for (_, was), (_, now) in zip(rows, after[kind]):
            numbers = [np.array([float(n) for n in part(text)]) for text in (was, now) for part in [_numbers]]
            assert np.allclose(*numbers, atol=1e-4), kind
    may = read_images(laid)[0]
    assert (may.shift_e_m, may.moved, may.rmse_m) == (0.0, "", None)


def _numbers(text):
    import re

    return re.findall(r"-?\d+\.?\d*", text)


def test_a_failure_leaves_everything_as_it_was(laid, monkeypatch):
    before = everything(laid)
    monkeypatch.setattr("yardwright.store.writing._Edit.reshape", _refuse)
    with pytest.raises(YardwrightError, match="refused"):
        keep_registration(laid, registration(Move(2.0, -1.5)), JULY)
    assert everything(laid) == before


def _refuse(self, kind, geometries):
    raise YardwrightError("It was refused.", "Try again.")


def test_in_the_edit_buffers_it_is_one_step_of_each_layer(laid):
    before = everything(laid)
    layers = [laid[kind] for kind in ("image", "green", "bunker", "hole", "pin")]
    for layer in layers:
        assert layer.startEditing()
    keep_registration(laid, registration(Move(2.0, -1.5)), JULY)
    assert [layer.undoStack().count() for layer in layers] == [1] * 5
    for layer in layers:
        layer.undoStack().undo()
    assert everything(laid) == before
    for layer in layers:
        layer.rollBack()


def test_a_date_that_is_not_there(laid):
    with pytest.raises(YardwrightError, match="no image date “2019”"):
        keep_registration(laid, registration(Move(1, 1), date_id="2019"))
    before = everything(laid)
    with pytest.raises(YardwrightError, match="no image date “2019”"):
        keep_registration(laid, registration(Move(2, 1)), "2019")
    assert everything(laid) == before


def test_what_was_drawn_over_a_date_that_lies_off_measures_true_afterwards(laid):
    """The truth: tee to green 300 m, middle to middle. Drawn from a date that lies (+0.83, -0.62) beside its place, the green came
    0.83 m too far; the tee is from the base. Its move takes that out, and the ± of a distance between the two
    now holds the error of the registration: 1.96 times the root of 0.04^2 + 0 + 2 x 0.2^2."""
    (green,) = laid["green"].getFeatures()
    geometry = green.geometry()
    geometry.translate(0.83, -0.62)
    with editing(laid, ["green"]) as edit:
        edit.reshape("green", {green.id(): geometry})
    tee = shapes_of(laid, "tee")[""].centroid
    assert shapes_of(laid, "green")[""].centroid.distance(tee) == pytest.approx(300.83, abs=0.01)
    keep_registration(laid, registration(Move(-0.83, 0.62), rmse=0.04), JULY)
    assert shapes_of(laid, "green")[""].centroid.distance(tee) == pytest.approx(300.0, abs=1e-5)
    course = read_course(laid)
    ends = [next(one for one in course.features if one.kind == kind) for kind in ("green", "tee")]
    error = plus_minus(*ends, {one.id: one for one in course.images})
    assert error == pytest.approx(1.96 * (0.04**2 + 2 * 0.2**2) ** 0.5)


def test_by_hand_even_a_centimetre_counts(laid):
    assert keep_registration(laid, registration(Move(0.01, 0), pixel=None)).moved
    assert not keep_registration(laid, registration(Move(0.01, 0), pixel=None)).moved


def test_other_programs_read_the_same(laid):
    keep_registration(laid, registration(Move(2.0, -1.5)))
    other = QgsVectorLayer(f"{laid.place}|layername=green", "green", "ogr")
    middle = next(other.getFeatures()).geometry().centroid().asPoint()
    assert middle.distance(QgsPointXY(EAST + 302, NORTH - 1.5)) < 1e-6


def test_the_ground_drawn(laid, course_file):
    course = read_course(laid)
    assert ground_drawn(course, 10.0) == pytest.approx((EAST - 15, NORTH - 35, EAST + 319, NORTH + 35))
