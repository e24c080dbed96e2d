"""A date’s registration kept: its row says how the picture is moved, and what was drawn from it goes along.

All of it is one change of the course's layers: written whole or not at all, one step to undo in each layer.
"""

import math
from dataclasses import dataclass

import numpy as np
import shapely.wkb

from ..imagery.moved_file import take_away_moved, write_moved
from ..imagery.moves import STAY, move_of, move_text
from ..model.errors import YardwrightError
from ..model.geometry import bounds_array, map_points
from ..model.kinds import FEATURE_KINDS
from ..model.words import say
from .image_dates import dates_of, is_fetched, metres_per_unit, moved_path
from .reading import crs_text, plain_value, read_course
from .writing import editing, qgis_geometry

_NOISE_PIXELS = 0.1
"""A move that differs from the one kept by less is that one, found again."""
_NOISE_M = 0.001
"""The same for one set by hand."""


@dataclass(frozen=True)
class Kept:
    """What keeping a registration did.

    moved: whether the picture lies elsewhere now. furthest: metres, by how much at most. features:
    ``(kind, how many went along)`` of each. pins: how many went along with their green.
    """

    moved: bool
    furthest: float = 0.0
    features: tuple = ()
    pins: int = 0


def keep_registration(course_layers, registration, base_id=None):
    """Write an ``imagery.registration.Registration`` into the row of its date; a Kept.

    Features seen in that date go along, by where its picture put them before and puts them now; those from
    another source stay, whatever their ``seen_in``. A pin goes along with the green it lies on, so that its
    figures stay. What was found before and is found again moves nothing. The base, by which the date now
    lies, gets the error 0 where it has none, for it is what the others are measured by. Raises
    YardwrightError with nothing changed.
    """
    noise = _NOISE_M if registration.pixel is None else _NOISE_PIXELS * registration.pixel
    return _keep(course_layers, registration.id, registration.move, registration.rmse, noise, base_id)


def take_back(course_layers, date_id):
    """Let a date lie where its file puts it, with what was drawn from it, its error not known; a Kept."""
    return _keep(course_layers, date_id, STAY, None, 0.0, None)


def move_kept(course_layers, date_id):
    """The Move that the row of a date keeps. Raises YardwrightError."""
    return _move_of(_row(course_layers, date_id), metres_per_unit(crs_text(course_layers.crs)))


def ground_drawn(course, margin):
    """The box about all that is drawn of a Course and ``margin`` more, in its CRS; None while nothing is."""
    drawn = [feature.geometry for feature in course.features]
    drawn += [hole.line for hole in course.holes if hole.line is not None]
    if not drawn:
        return None
    bounds = bounds_array(drawn)
    low, high = bounds[:, :2].min(axis=0) - margin, bounds[:, 2:].max(axis=0) + margin
    return (*low.tolist(), *high.tolist())


def write_moved_images(course_layers):
    """Write the virtual image of each date that is moved beside the course file, and take away those of dates
    that are not any more; texts on what could not be done. Dates that only QGIS can fetch have none."""
    problems = []
    course = read_course(course_layers)
    for date in dates_of(course, course_layers.place):
        try:
            write_moved_image(date, course.crs, course_layers.place)
        except YardwrightError as error:
            problems.append(f"{date.id}: {error}")
    return problems


def write_moved_image(date, crs, place):
    """The path of the virtual image of a Date, written if need be; "" for one that has none, whose old one is
    then taken away. Raises YardwrightError."""
    path = moved_path(place, date.id)
    if date.move.stays() or not date.path or is_fetched(date.path):
        take_away_moved(path)
        return ""
    write_moved(date, date.move, crs, path)
    return path


def _keep(course_layers, date_id, move, rmse, noise, base_id):
    metre = metres_per_unit(crs_text(course_layers.crs))
    row = _row(course_layers, date_id)
    before = _move_of(row, metre)

    # A file keeps of a move what is written here: everything else goes by that, and so does this.
    move = move_of(round(move.east, 6), round(move.north, 6), move_text(move))

    def carried(points):
        return move.ahead(before.back(points))

    changes = {row.id(): {"rmse_m": None if rmse is None else round(rmse, 4)}}
    shapes = {}
    features, pins = {}, 0
    furthest = _furthest(course_layers, row, carried) * metre
    moved = furthest > noise
    if moved:
        features = {kind: _drawn_from(course_layers, kind, date_id) for kind in FEATURE_KINDS}
        on_greens = _pins_on(course_layers, features["green"])
        pins = len(on_greens)
        drawn = {"image": [row] if _shaped(row) else [], **features, "pin": on_greens}
        shapes = {kind: _carried(rows, carried) for kind, rows in drawn.items() if rows}
        changes[row.id()].update(
            shift_e_m=move.east * metre, shift_n_m=move.north * metre, moved=move_text(move) or None
        )
    base = _base_without_error(course_layers, base_id, date_id)
    if base is not None:
        changes[base] = {"rmse_m": 0.0}
    with editing(course_layers, ["image", *(kind for kind in shapes if kind != "image")]) as edit:
        edit.change("image", changes)
        for kind, rows in shapes.items():
            edit.reshape(kind, rows)
    counts = tuple((kind, len(rows)) for kind, rows in features.items() if rows)
    return Kept(moved, furthest if moved else 0.0, counts, pins)


def _row(course_layers, date_id):
    """The row of a date, a QgsFeature."""
    # To the end, for a row that is still being read for keeps the file from being written.
    rows = [row for row in course_layers.layers["image"].getFeatures() if _text(row["id"]) == date_id]
    if rows:
        return rows[0]
    raise YardwrightError(
        say("The course has no image date “{date}”.", date=date_id),
        say("Choose one of the dates listed in its layer “Image date”."),
    )


def _text(value):
    return str(plain_value(value) or "").strip()


def _move_of(row, metre):
    east, north = (plain_value(row[name]) or 0.0 for name in ("shift_e_m", "shift_n_m"))
    return move_of(east / metre, north / metre, _text(row["moved"]))


def _base_without_error(course_layers, base_id, date_id):
    """The number of the base's row where its error is not known; None without one."""
    if not base_id or base_id == date_id:
        return None
    row = _row(course_layers, base_id)
    return row.id() if plain_value(row["rmse_m"]) is None else None


def _drawn_from(course_layers, kind, date_id):
    """The rows of a layer that were drawn from a date and from nothing else."""
    return [
        row
        for row in course_layers.layers[kind].getFeatures()
        if _text(row["seen_in"]) == date_id and _text(row["view"]) != "from another source" and _shaped(row)
    ]


def _shaped(row):
    return row.hasGeometry() and not row.geometry().isEmpty()


def _pins_on(course_layers, greens):
    """The rows of the pins that lie on greens (rows)."""
    areas = [row.geometry() for row in greens]
    return [
        row
        for row in (course_layers.layers["pin"].getFeatures() if areas else ())
        if _shaped(row) and any(area.intersects(row.geometry()) for area in areas)
    ]


def _carried(rows, carried):
    """``{id: QgsGeometry}`` of rows, each point where it lies now."""
    return {row.id(): qgis_geometry(map_points([_shape(row)], carried)[0]) for row in rows}


def _shape(row):
    return shapely.wkb.loads(bytes(row.geometry().asWkb()))


def _furthest(course_layers, row, carried):
    """By how much, at most, a picture lies elsewhere, in the CRS's unit: over the course's own ground, or
    over the date's footprint where nothing is drawn yet."""
    box = None
    for kind in FEATURE_KINDS:
        for feature in course_layers.layers[kind].getFeatures():
            if _shaped(feature):
                own = feature.geometry().boundingBox()
                if box is None:
                    box = own
                box.combineExtentWith(own)
    if box is None:
        box = row.geometry().boundingBox() if _shaped(row) else None
    if box is None or not math.isfinite(box.width()):
        places = np.zeros((1, 2))
    else:
        x = np.linspace(box.xMinimum(), box.xMaximum(), 9)
        y = np.linspace(box.yMinimum(), box.yMaximum(), 9)
        places = np.stack(np.meshgrid(x, y), axis=-1).reshape(-1, 2)
    return float(np.hypot(*(carried(places) - places).T).max())
