"""Notes on holes: from waypoints, points with texts and photographs into the course's layers, and out."""

import math
import os
import re
from dataclasses import replace

from shapely.geometry import Point

from ..measure.units import YARD
from ..model.course import Feature
from ..model.errors import YardwrightError
from ..model.notes import Note
from ..model.words import say
from .course_file import course_path
from .reading import crs_text, read_rows
from .writing import add_features

PICTURES = (".jpg", ".jpeg")
_POINTS = (".gpx", ".geojson", ".json", ".kml", ".gpkg")
_TEXTS = ("text", "note", "desc", "description", "cmt", "comment", "name", "title")
_DAYS = ("written", "date", "time", "timestamp", "when")
_SAME_M = 0.5
"""Notes of one day with one text that lie no farther apart are one."""
_REACH = 2.0
"""A note is given to a hole whose line of play is no farther than so many times the course's corridor."""
_ANGLE = re.compile(r"\(([-\d.]+)\)")


def read_notes(course_layers, problems=None):
    """All Notes of the course, those of the table hole_note first, each by hole and day."""
    problems = [] if problems is None else problems
    found = []
    for kind in ("hole_note", "field_note"):
        for _, values, shape in read_rows(course_layers, kind, problems):
            texts = {name: str(values.get(name) or "") for name in ("text", "source", "written", "picture")}
            place = None if shape is None else (shape.x, shape.y)
            found.append(
                Note(
                    hole=values.get("hole"),
                    place=place,
                    looks_towards=values.get("looks_towards"),
                    **texts,
                )
            )
    return tuple(sorted(found, key=lambda note: (note.hole or 0, note.place is not None, note.written)))


def notes_in(source, crs):
    """``(Notes, [(name, why)] of what was left out)`` of a file, or of all files of a folder.

    GPX, GeoJSON, KML and GeoPackages give a note a point that has a text, JPEGs with a position (Exif 2.3,
    CIPA DC-008: GPSLatitude and its Ref, GPSImgDirection) one each. Places are in ``crs``, pictures absolute
    paths. Raises YardwrightError when the source cannot be read or holds none of these.
    """
    if not os.path.exists(source):
        raise YardwrightError(
            say("“{path}” is not there.", path=source), say("Choose a file or a folder that is.")
        )
    single = os.path.isfile(source)
    paths = [source] if single else sorted(os.path.join(source, name) for name in os.listdir(source))
    found, left_out = [], []
    known = 0
    for path in paths:
        ending = os.path.splitext(path)[1].lower()
        if ending not in (*PICTURES, *_POINTS):
            continue
        known += 1
        try:
            notes, left = (_of_picture if ending in PICTURES else _of_points)(path, crs)
        except YardwrightError as error:
            if single:
                raise
            notes, left = [], [(os.path.basename(path), error.what)]
        found += notes
        left_out += left
    if not known:
        raise YardwrightError(
            say("“{path}” holds no notes.", path=source),
            say("Choose a GPX, GeoJSON or KML file, photographs with a position, or a folder of these."),
        )
    return found, left_out


def bring_in_notes(course_layers, course, notes, source):
    """Add Notes to the layer field_note; ``(how many were added, how many were there already)``.

    source: who wrote them. Each is given to the hole whose line of play is nearest, if it is near.
    Raises YardwrightError with nothing added.
    """
    there = [note for note in read_notes(course_layers) if note.place is not None]
    folder = os.path.dirname(os.path.realpath(course_path(course_layers.place)))
    new = []
    for note in notes:
        note = replace(note, source=source, picture=_kept_as(note.picture, folder))
        if not any(_same(note, one) for one in (*there, *new)):
            new.append(replace(note, hole=_hole_at(note.place, course)))
    add_features(course_layers, [_feature(note) for note in new])
    return len(new), len(notes) - len(new)


def _feature(note):
    values = {name: getattr(note, name) for name in ("source", "written", "text", "picture")}
    values = {name: value for name, value in values.items() if value}
    if note.looks_towards is not None:
        values["looks_towards"] = note.looks_towards
    if note.hole is not None:
        values["hole"] = note.hole
    return Feature("field_note", None, Point(note.place), attributes=values)


def _same(one, other):
    return (one.text, one.written, one.picture) == (other.text, other.written, other.picture) and math.dist(
        one.place, other.place
    ) <= _SAME_M


def _kept_as(picture, folder):
    """The path of a photograph as the course keeps it: from its own folder where it lies below that."""
    if not picture:
        return ""
    path = os.path.realpath(picture)
    try:
        below = os.path.commonpath([path, folder]) == folder
    except ValueError:  # another drive
        below = False
    return os.path.relpath(path, folder).replace(os.sep, "/") if below else path


def _hole_at(place, course):
    """The number of the hole nearest to a place, None where none is near."""
    lines = [hole for hole in course.holes if hole.line is not None]
    point = Point(place)
    nearest = min(lines, key=lambda hole: hole.line.distance(point), default=None)
    reach = _REACH * course.settings.corridor_yd * YARD
    return nearest.number if nearest is not None and nearest.line.distance(point) <= reach else None


# Files


def _of_points(path, crs):
    from osgeo import gdal, ogr

    from ..imagery.quiet import quiet_gdal

    with quiet_gdal(lambda reason: _unread(path, reason)):
        dataset = gdal.OpenEx(path, gdal.OF_VECTOR)
        if dataset is None:
            raise YardwrightError(
                _unread(path, gdal.GetLastErrorMsg() or say("GDAL gave no reason")), _check()
            )
        layers = [dataset.GetLayer(number) for number in range(dataset.GetLayerCount())]
        found, left_out = [], []
        for layer in layers:
            if layer.GetName() in ("route_points", "track_points"):
                continue
            move = None
            for row in layer:
                shape = row.GetGeometryRef()
                if shape is None or ogr.GT_Flatten(shape.GetGeometryType()) != ogr.wkbPoint:
                    continue
                values = {
                    name.lower(): value for name, value in row.items().items() if value not in (None, "")
                }
                text = "\n".join(dict.fromkeys(_texts(values)))
                name = f"{os.path.basename(path)}, {row.GetFID()}"
                if not text:
                    left_out.append((name, say("it has no text")))
                    continue
                move = move or _mover(layer.GetSpatialRef(), crs)
                place = move(shape.GetX(), shape.GetY())
                if place is None:
                    left_out.append((name, say("its place cannot be used")))
                    continue
                found.append(Note(text, written=_day(values), place=place, origin=name))
        layer = layers = dataset = None
    return found, left_out


def _texts(values):
    """What a point says: its text, and its name before it where that says something else."""
    texts = [str(values[key]).strip() for key in _TEXTS if str(values.get(key, "")).strip()]
    if not texts:
        return []
    name = str(values.get("name", "")).strip()
    # A name of figures alone is what a device counts its waypoints by.
    keep_name = name and name != texts[0] and not re.fullmatch(r"[\W\d_]+|wpt ?\d+", name, re.IGNORECASE)
    return [f"{name}: {texts[0]}"] if keep_name else texts[:1]


def _day(values):
    """The ISO day of a point's time, "" without one."""
    for key in _DAYS:
        match = re.match(r"(\d{4})[-/:](\d{2})[-/:](\d{2})", str(values.get(key, "")))
        if match:
            return "-".join(match.groups())
    return ""


def _of_picture(path, crs):
    from osgeo import gdal, osr

    from ..imagery.quiet import quiet_gdal

    name = os.path.basename(path)
    with quiet_gdal(lambda reason: _unread(path, reason)):
        dataset = gdal.OpenEx(path, gdal.OF_RASTER)
        if dataset is None:
            raise YardwrightError(
                _unread(path, gdal.GetLastErrorMsg() or say("GDAL gave no reason")), _check()
            )
        values = dataset.GetMetadata() or {}
        dataset = None
    at = [_degrees(values, name) for name in ("Longitude", "Latitude")]
    if None in at:
        return [], [(name, say("it has no position"))]
    wgs84 = osr.SpatialReference()
    wgs84.ImportFromEPSG(4326)
    place = _mover(wgs84, crs)(*at)
    if place is None:
        return [], [(name, say("its place cannot be used"))]
    day = _day({"date": values.get("EXIF_DateTimeOriginal", values.get("EXIF_DateTime", ""))})
    towards = _ANGLE.search(values.get("EXIF_GPSImgDirection", ""))
    # Towards magnetic north it is no direction on the map.
    true = values.get("EXIF_GPSImgDirectionRef", "T").strip().upper() != "M"
    angle = float(towards.group(1)) % 360 if towards and true else None
    text = values.get("EXIF_ImageDescription", "").strip()
    return [Note(text, written=day, place=place, picture=path, looks_towards=angle, origin=name)], []


def _degrees(values, which):
    """A part of a position from Exif's degrees, minutes and seconds; None without it."""
    parts = [float(part) for part in _ANGLE.findall(values.get(f"EXIF_GPS{which}", ""))]
    if not parts or not all(map(math.isfinite, parts)):
        return None
    value = sum(part / 60**place for place, part in enumerate(parts[:3]))
    behind = values.get(f"EXIF_GPS{which}Ref", "").strip().upper() in ("S", "W")
    return -value if behind else value


def _mover(reference, crs):
    """A function of x and y that gives the place in ``crs``, None for one that it cannot have."""
    from pyproj import CRS, Transformer

    source = CRS.from_user_input(4326 if reference is None else reference.ExportToWkt())
    transformer = Transformer.from_crs(source, CRS.from_user_input(crs), always_xy=True)

    def move(x, y):
        place = transformer.transform(x, y)
        return tuple(map(float, place)) if all(map(math.isfinite, place)) else None

    return move


def _unread(path, reason):
    return say("“{path}” cannot be read: {reason}.", path=path, reason=str(reason).rstrip("."))


def _check():
    return say("Check that the file is whole, or save it anew.")


def course_crs(course_layers):
    """The course's CRS as pyproj reads it."""
    return crs_text(course_layers.crs)
