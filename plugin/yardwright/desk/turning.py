"""The map turned so that play, or the approach to the green, points up on the screen."""

import math

import numpy as np
from qgis.core import (
    QgsCoordinateTransform,
    QgsCsException,
    QgsGeometry,
    QgsPointXY,
    QgsProject,
    QgsRectangle,
)

from ..guide.windows import hole_points, up_of
from ..measure.units import YARD
from ..model.errors import YardwrightError
from ..model.geometry import coordinates
from .words import tr

VIEWS = ("north", "play", "approach")
_AROUND_GREEN_YD = 25.0
_STEP_M = 20.0


def look_at(canvas, course_crs, played, view):
    """Turn and zoom a QgsMapCanvas to a PlayedHole; the rotation set, degrees as the canvas counts them.

    view: ``north`` shows the hole with the map not turned, ``play`` with the way from the longest tee to the
    green's middle upwards, ``approach`` the green with its approach upwards; None shows the hole and leaves
    the map turned as it is.
    course_crs: the QgsCoordinateReferenceSystem the hole was read in.
    Upwards is so in the project's own CRS, whatever that is: two points of the hole's frame are taken there.
    """
    points, start, up = _shown(played, view)
    ahead = np.asarray(start) + _STEP_M * np.asarray(up)
    to_map = map_places(canvas, course_crs, played.frame)
    on_map, line = to_map(points), to_map([start, ahead])
    if view is None:
        rotation = canvas.rotation()
    else:
        rotation = 0.0 if view == "north" else -math.degrees(math.atan2(*(line[1] - line[0])))
    canvas.freeze(True)
    try:
        canvas.setRotation(rotation)
        canvas.setExtent(_extent(on_map, rotation))
    finally:
        canvas.freeze(False)
    canvas.refresh()
    return rotation


def places_in_frame(canvas, course_crs, frame):
    """A function taking a list of QgsPointXY in the map's CRS to (n, 2) points of a hole's frame.

    It raises QgsCsException for a place that the course's CRS does not know.
    """
    from ..store.reading import crs_text

    to_frame = frame.to_frame(crs_text(course_crs))
    to_course = QgsCoordinateTransform(
        canvas.mapSettings().destinationCrs(), course_crs, QgsProject.instance().transformContext()
    )

    def transform(places):
        there = [to_course.transform(place) for place in places]
        return to_frame([(place.x(), place.y()) for place in there])

    return transform


def map_places(canvas, course_crs, frame):
    """A function taking (n, 2) points of a hole's frame to the map's CRS."""
    from ..store.reading import crs_text

    to_course = frame.from_frame(crs_text(course_crs))
    to_map = QgsCoordinateTransform(
        course_crs, canvas.mapSettings().destinationCrs(), QgsProject.instance().transformContext()
    )

    def transform(points):
        places = [to_map.transform(QgsPointXY(float(x), float(y))) for x, y in to_course(points)]
        return np.array([(place.x(), place.y()) for place in places])

    return transform


def on_map(in_hand, place):
    """A place (x, y) in the course's CRS as a QgsPointXY on the map; None for None, without a course, or
    beyond what the map's projection knows."""
    layer = in_hand.layer("hole")
    if place is None or layer is None:
        return None
    to_map = QgsCoordinateTransform(
        layer.crs(),
        in_hand.iface.mapCanvas().mapSettings().destinationCrs(),
        QgsProject.instance().transformContext(),
    )
    try:
        return to_map.transform(QgsPointXY(*place))
    except QgsCsException:
        return None


def in_view(canvas, points):
    """Whether all of (n, 2) points in the map's CRS lie on the visible, perhaps turned, map."""
    seen = QgsGeometry.fromPolygonXY(
        [[QgsPointXY(p) for p in canvas.mapSettings().visiblePolygon().toPolygon()]]
    )
    return all(seen.contains(QgsPointXY(float(x), float(y))) for x, y in points)


def _shown(played, view):
    """What is to be seen, ``(points, start, unit vector upwards)`` in the frame."""
    if view != "approach":
        start, up = up_of(played)
        return _wider(hole_points(played), 15.0), start, up
    green = played.green
    if green is None:
        raise YardwrightError(
            tr("Hole {} has no green, so there is no approach to it.").format(played.number),
            tr("Draw the green and give it this hole’s number."),
        )
    return _wider(coordinates(green.geometry), _AROUND_GREEN_YD * YARD), green.anchor, green.direction


def _wider(points, margin):
    """Points with others about each, ``margin`` metres away."""
    turns = np.radians(np.arange(0, 360, 45))
    ring = margin * np.column_stack([np.sin(turns), np.cos(turns)])
    return (points[:, None, :] + ring).reshape(-1, 2)


def _extent(points, rotation):
    """The rectangle, before the map is turned by ``rotation`` about its middle, that holds the points."""
    turn = math.radians(rotation)
    # The map's own right and up, as seen on the screen, in the map's CRS.
    right = np.array([math.cos(turn), math.sin(turn)])
    up = np.array([-math.sin(turn), math.cos(turn)])
    across, along = points @ right, points @ up
    middle = (across.min() + across.max()) / 2 * right + (along.min() + along.max()) / 2 * up
    half_width, half_height = np.ptp(across) / 2, np.ptp(along) / 2
    return QgsRectangle(
        middle[0] - half_width, middle[1] - half_height, middle[0] + half_width, middle[1] + half_height
    )
