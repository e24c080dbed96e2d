"""The map turned so that play points up: checked by where QGIS itself puts places on the screen."""

import pytest
from qgis.core import QgsCoordinateReferenceSystem, QgsCoordinateTransform, QgsPointXY, QgsProject
from qgis.gui import QgsMapCanvas


@pytest.fixture
def canvas(qgis_app):
    canvas = QgsMapCanvas()
    canvas.resize(500, 700)
    yield canvas
    canvas.deleteLater()


@pytest.fixture
def course(place):
    from yardwright.store.layer_group import course_groups, course_layers_of
    from yardwright.store.reading import read_course

    layers = course_layers_of(course_groups(QgsProject.instance())[place])
    return layers.crs, read_course(layers)


def on_screen(canvas, crs, played, point):
    x, y = played.frame.from_frame(crs.authid())([point])[0]
    to_map = QgsCoordinateTransform(crs, canvas.mapSettings().destinationCrs(), QgsProject.instance())
    pixel = canvas.getCoordinateTransform().transform(to_map.transform(QgsPointXY(x, y)))
    return pixel.x(), pixel.y()


# UTM, its neighbour zone (turned by about 5 degrees here), polar stereographic (turned by much), degrees.
@pytest.mark.parametrize("map_crs", ["EPSG:32630", "EPSG:32631", "EPSG:3995", "EPSG:4326", "EPSG:3857"])
@pytest.mark.parametrize("number", [1, 2])
def test_play_and_approach_point_up_in_any_crs(canvas, course, map_crs, number):
    from yardwright.desk.turning import look_at, up_of
    from yardwright.measure.hole import play_hole

    crs, model = course
    played = play_hole(model, number)
    canvas.setDestinationCrs(QgsCoordinateReferenceSystem(map_crs))

    look_at(canvas, crs, played, "play")
    start, up = up_of(played)
    low = on_screen(canvas, crs, played, start)
    high = on_screen(canvas, crs, played, start + 20 * up)
    assert high[1] < low[1] - 5
    assert abs(high[0] - low[0]) < 0.01 * (low[1] - high[1])
    for end in (start, played.green.middle):
        x, y = on_screen(canvas, crs, played, end)
        assert 0 < x < 500 and 0 < y < 700

    look_at(canvas, crs, played, "approach")
    front = on_screen(canvas, crs, played, played.green.front)
    back = on_screen(canvas, crs, played, played.green.back)
    assert back[1] < front[1] - 50
    assert abs(back[0] - front[0]) < 0.01 * (front[1] - back[1])
    assert all(0 < x < 500 and 0 < y < 700 for x, y in (front, back))


def test_north_up_is_not_turned_and_none_keeps_the_turn(canvas, course):
    from yardwright.desk.turning import look_at
    from yardwright.measure.hole import play_hole

    crs, model = course
    canvas.setDestinationCrs(crs)
    assert look_at(canvas, crs, play_hole(model, 2), "play") != 0
    turned = canvas.rotation()
    look_at(canvas, crs, play_hole(model, 1), None)
    assert canvas.rotation() == turned
    look_at(canvas, crs, play_hole(model, 1), "north")
    assert canvas.rotation() == 0


def test_play_on_hole_two_is_known(canvas, course):
    """From (100, 0) to (406.07, 106.07) yards: an azimuth of atan2(306.07, 106.07) = 70.89 degrees."""
    from yardwright.desk.turning import look_at
    from yardwright.measure.hole import play_hole

    crs, model = course
    canvas.setDestinationCrs(crs)
    assert look_at(canvas, crs, play_hole(model, 2), "play") == pytest.approx(-70.89, abs=0.02)


def test_a_hole_without_green_has_no_approach(canvas, course):
    from dataclasses import replace

    from yardwright.desk.turning import look_at
    from yardwright.measure.hole import play_hole
    from yardwright.model.errors import YardwrightError

    crs, model = course
    model = replace(model, features=tuple(f for f in model.features if f.kind != "green"))
    with pytest.raises(YardwrightError, match="no green"):
        look_at(canvas, crs, play_hole(model, 1), "approach")
