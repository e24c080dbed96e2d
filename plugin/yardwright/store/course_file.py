"""The course file: a GeoPackage with one layer for each kind of thing on a course."""

import math
import os
import re
import sqlite3
from contextlib import closing, contextmanager, suppress

from ..model.errors import YardwrightError
from ..model.kinds import BOOLEAN, BY_NAME, DATE, INTEGER, KINDS, REAL, SCHEMA_VERSION, TABLES, TEXT
from ..model.words import said, say, to_say
from .files import written_beside

_NOT_OURS = to_say("Choose a course file made with “Start a course”.")
_HEADER = b"SQLite format 3\x00"
_APPLICATION_ID = b"GPKG"  # at byte 68 of the file: OGC GeoPackage 1.3 (12-128r17), requirement 2


class OlderCourse(YardwrightError):
    """A course file of an older version, which ``store.upgrade`` brings up to date. path: where it lies."""

    def __init__(self, what, remedy, path):
        super().__init__(what, remedy)
        self.path = path


class CourseLayers:
    """A course's layers and tables, open.

    place: where the course lies, as it was given (a file's path is made absolute).
    crs: the QgsCoordinateReferenceSystem of every geometry.
    layers: ``{kind's name: QgsVectorLayer}``, tables too.
    """

    def __init__(self, place, crs, layers):
        self.place = place
        self.crs = crs
        self.layers = layers

    def __getitem__(self, kind):
        return self.layers[kind]

    def __enter__(self):
        return self

    def __exit__(self, *reason):
        self.close()

    def close(self):
        """Let go of the layers and of the file. Layers that a project owns stay open in the project."""
        from qgis.PyQt import sip

        ours = [layer for layer in self.layers.values() if not sip.isdeleted(layer) and sip.ispyowned(layer)]
        self.layers = {}
        for layer in ours:
            sip.delete(layer)
        if ours:
            leave_write_ahead(self.place)


def leave_write_ahead(path):
    """Bring the file back from the mode QGIS writes in, which cannot be read from a read-only folder.

    While others have the file open SQLite refuses, which is right: whoever closes last does it then.
    """
    with suppress(sqlite3.Error, OSError), open(path, "rb") as file:
        if file.read(20)[18:] == b"\x02\x02":  # SQLite database file format, bytes 18 and 19
            with closing(sqlite3.connect(f"{file_uri(path)}?mode=rw", uri=True, timeout=0)) as database:
                database.execute("PRAGMA journal_mode = DELETE")


def create_course(path, name, crs, scorecard=None, take_good_rows=False, unit="yd"):
    """Make a course file: all layers and tables, their styles and forms, and what the scorecard says.

    path: the new file, ending in ``.gpkg``; an existing one is never overwritten.
    crs: ``EPSG:n`` of all geometries.  scorecard: a CSV file (see ``store.scorecard``), or None.
    take_good_rows: when the scorecard has bad rows, take the others instead of refusing it.
    unit: ``yd`` or ``m``, the unit of tables and printed figures.
    Returns the rows of the scorecard left out, as ``[(line, reason), ...]``.
    Raises YardwrightError; nothing is left behind then.
    """
    from .scorecard import Scorecard, read_scorecard, refuse_bad_rows

    path = _new_file(path)
    name = str(name or "").strip()
    if not name:
        raise YardwrightError(say("The course has no name."), say("Give it a name."))
    reference = _spatial_reference(crs)
    card = read_scorecard(scorecard) if scorecard else Scorecard()
    if not take_good_rows:
        refuse_bad_rows(card, scorecard)
    with written_beside(path) as draft:
        with gdal_errors(path):
            _write_course(draft, reference, crs.strip(), _first_rows(name, unit, card))
        if os.path.exists(path):
            raise _exists(path)
    return list(card.problems)


def open_course(place):
    """The course at ``place`` (a course file's path), checked, as CourseLayers.

    Raises YardwrightError when there is no such file, or it is no course file of this version (OlderCourse
    where it can be brought up to date); the file is only read. Close what it returns to let go of the file.
    """
    from qgis.core import QgsVectorLayer

    path = course_path(place)
    check_course_file(path)
    options = QgsVectorLayer.LayerOptions()
    options.loadDefaultStyle = False
    layers = {}
    for kind in KINDS + TABLES:
        layer = QgsVectorLayer(f"{path}|layername={kind.name}", said(kind.title), "ogr", options)
        if not layer.isValid():
            raise YardwrightError(
                say(
                    "The layer “{layer}” of the course file “{path}” cannot be read.",
                    layer=kind.name,
                    path=path,
                ),
                take_a_backup(),
            )
        layers[kind.name] = layer
    crs = layers["hole"].crs()
    if not crs.isValid():
        raise _no_crs(path)
    return CourseLayers(path, crs, layers)


def course_path(place):
    """The absolute path of the course file that ``place`` names.

    ``place`` is a path, or ``postgres:CONNECTION:SCHEMA``; the latter is refused, for this version keeps
    courses in files only.
    """
    text = str(place or "").strip()
    if not text:
        raise YardwrightError(say("No course was given."), say("Choose a course file (.gpkg)."))
    if re.match(r"postgres(ql)?:", text, re.IGNORECASE):
        raise YardwrightError(
            say("Courses in a shared database are not available in this version."),
            say("Choose a course file (.gpkg) instead."),
        )
    return os.path.abspath(text)


def check_course_file(path):
    """Raise YardwrightError unless ``path`` is a course file of this version, OlderCourse where it is one of
    an older version. Only reads."""
    if not os.path.isfile(path):
        raise YardwrightError(
            say("There is no file “{path}”.", path=path), say("Check the path, or start a new course.")
        )
    try:
        with open(path, "rb") as file:
            head = file.read(100)
    except OSError as error:
        raise YardwrightError(
            say("The file “{path}” cannot be read ({reason}).", path=path, reason=error.strerror),
            say("Check that you may read it."),
        ) from error
    if not head.startswith(_HEADER) or head[68:72] != _APPLICATION_ID:
        raise YardwrightError(say("The file “{path}” is not a GeoPackage.", path=path), said(_NOT_OURS))
    try:
        with closing(sqlite3.connect(f"{file_uri(path)}?mode=ro", uri=True, timeout=5)) as database:
            tables = {row[0] for row in database.execute("SELECT table_name FROM gpkg_contents")}
            versions = _versions(database) if "course_info" in tables else None
            systems = dict(database.execute("SELECT table_name, srs_id FROM gpkg_geometry_columns"))
    except sqlite3.Error as error:
        raise YardwrightError(
            say("The file “{path}” is damaged or in use ({reason}).", path=path, reason=error),
            say("Close it in other programs and try again; if that does not help, take a backup."),
        ) from error
    if versions is None:
        raise YardwrightError(say("The GeoPackage “{path}” holds no course.", path=path), said(_NOT_OURS))
    _check_version(path, versions)
    missing = [kind.name for kind in KINDS + TABLES if kind.name not in tables]
    if missing:
        raise lacking_layers(path, missing)
    used = {systems.get(kind.name) for kind in KINDS}
    if used & {-1, 0, None}:  # OGC GeoPackage 1.3 (12-128r17), requirement 11: undefined ones
        raise _no_crs(path)
    if len(used) > 1:
        raise YardwrightError(
            say(
                "The layers of the course file “{path}” are in different coordinate reference systems.",
                path=path,
            ),
            say("Start a new course and bring the features in."),
        )


def lacking_layers(path, missing):
    """The YardwrightError of a course file without some of its layers."""
    return YardwrightError(
        say(
            "The course file “{path}” lacks these layers: {layers}.",
            path=path,
            layers=", ".join(missing),
        ),
        take_a_backup(),
    )


def take_a_backup():
    """What to do about a damaged course file."""
    return say("Take a copy of the file from a backup, or start a new course and bring the features in.")


def _no_crs(path):
    return YardwrightError(
        say("The course file “{path}” does not say which coordinate reference system it uses.", path=path),
        say("Set the system of its layers in QGIS, or start a new course and bring the features in."),
    )


def default_crs(longitude, latitude):
    """``EPSG:n`` of the UTM zone (WGS 84) of a place in degrees.

    Zones are 6 degrees wide everywhere; the wider ones of the military grid off Norway are not followed.

    >>> default_crs(-2.803, 56.343), default_crs(145.03, -37.95), default_crs(180.0, 10.0)
    ('EPSG:32630', 'EPSG:32755', 'EPSG:32601')
    """
    if not (math.isfinite(longitude) and math.isfinite(latitude) and abs(latitude) <= 90):
        raise YardwrightError(
            say(
                "{longitude}, {latitude} is not a longitude and latitude in degrees.",
                longitude=longitude,
                latitude=latitude,
            ),
            say("Give a CRS as EPSG:n."),
        )
    zone = int((longitude + 180.0) % 360.0 // 6.0) + 1
    return f"EPSG:{(32600 if latitude >= 0 else 32700) + zone}"


def _new_file(path):
    path = course_path(path)
    if not path.lower().endswith(".gpkg"):
        raise YardwrightError(
            say("“{path}” is no name for a course file.", path=path),
            say("Choose a name that ends in .gpkg."),
        )
    if os.path.lexists(path):
        raise _exists(path)
    if not os.path.isdir(os.path.dirname(path)):
        raise YardwrightError(
            say("There is no folder “{folder}”.", folder=os.path.dirname(path)),
            say("Make it first, or choose another folder."),
        )
    return path


def _exists(path):
    return YardwrightError(
        say("The file “{path}” already exists and was left as it is.", path=path),
        say("Choose another name for the new course, or move the old file away first."),
    )


def _spatial_reference(crs):
    """The osgeo.osr.SpatialReference of ``EPSG:n``, x east and y north."""
    from osgeo import osr

    match = re.fullmatch(r"\s*EPSG:(\d{1,7})\s*", str(crs or ""), re.IGNORECASE)
    if not match:
        raise YardwrightError(
            say("“{crs}” is not a coordinate reference system.", crs=crs or ""),
            say("Write it as EPSG:n, such as EPSG:32630."),
        )
    reference = osr.SpatialReference()
    with gdal_errors(str(crs)) as failures:
        try:
            known = reference.ImportFromEPSG(int(match.group(1))) == 0
        except RuntimeError as error:  # raised instead of returned once somebody has called UseExceptions
            failures.append(str(error))
            known = False
    if not known:
        raise YardwrightError(
            say("There is no coordinate reference system {crs}.", crs=crs.strip()),
            say("Check the number, or take the UTM zone of the course."),
        )
    if not (reference.IsProjected() or reference.IsGeographic()):
        raise YardwrightError(
            say("{crs} is not a system for places on a map.", crs=crs.strip()),
            say("Take the UTM zone of the course."),
        )
    reference.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
    return reference


@contextmanager
def gdal_errors(path):
    """Keep GDAL from printing; a failure it raises becomes a YardwrightError. Gives the list of its texts."""
    from osgeo import gdal

    texts = []

    def note(severity, number, text):
        if severity >= gdal.CE_Failure:
            texts.append(text)

    gdal.PushErrorHandler(note)
    try:
        yield texts
    except RuntimeError as error:
        raise YardwrightError(
            say("“{path}” cannot be written ({reason}).", path=path, reason=error),
            say("Check the folder and the disk."),
        ) from error
    finally:
        gdal.PopErrorHandler()


def _first_rows(name, unit, card):
    """``{table: [row as a dict]}`` a new course starts with."""
    info = {field.name: field.default for field in BY_NAME["course_info"].fields}
    if unit not in BY_NAME["course_info"].field("unit").values:
        raise YardwrightError(say("“{unit}” is not a unit of distances.", unit=unit), say("Take yd or m."))
    info.update(schema_version=SCHEMA_VERSION, name=name, unit=unit)
    holes = [
        {
            "number": hole.number,
            "name": hole.name or None,
            "par": hole.par,
            "stroke_index": hole.stroke_index,
            "view": "clear",
        }
        for hole in card.holes
    ]
    tee_sets = [{"name": tee_set.name, "sort": tee_set.sort} for tee_set in card.tee_sets]
    yards = [
        {"hole": hole, "tee_set": tee_set, "yards": value} for (hole, tee_set), value in card.yards.items()
    ]
    return {"course_info": [info], "hole": holes, "tee_set": tee_sets, "scorecard": yards}


def _write_course(draft, reference, crs, first_rows):
    from osgeo import gdal

    from .styling import save_styles

    driver = gdal.GetDriverByName("GPKG")
    dataset = driver.Create(draft, 0, 0, 0, gdal.GDT_Unknown, ["VERSION=1.3"])
    if dataset is None:
        raise RuntimeError(gdal.GetLastErrorMsg() or say("GDAL gave no reason"))
    try:
        dataset.StartTransaction()
        for kind in KINDS + TABLES:
            layer = add_layer(dataset, kind, reference)
            for row in first_rows.get(kind.name, ()):
                add_row(layer, row)
        save_styles(dataset, crs)
        if dataset.CommitTransaction() != 0:
            raise RuntimeError(gdal.GetLastErrorMsg() or say("the last step failed"))
    finally:
        layer = dataset = None  # closes the file


def add_layer(dataset, kind, reference):
    """Add the empty layer or table of a kind to a GeoPackage open with GDAL; the OGR layer."""
    from osgeo import ogr

    shapes = {
        "Point": ogr.wkbPoint,
        "LineString": ogr.wkbLineString,
        "Polygon": ogr.wkbPolygon,
        None: ogr.wkbNone,
    }
    options = ["FID=fid", f"IDENTIFIER={kind.title}"]
    if kind.geometry:
        options.append("GEOMETRY_NAME=geom")
    layer = dataset.CreateLayer(
        kind.name, reference if kind.geometry else None, shapes[kind.geometry], options
    )
    for field in kind.fields:
        layer.CreateField(column_of(field))
    return layer


def column_of(field):
    """The OGR definition of a field."""
    from osgeo import ogr

    types = {
        TEXT: ogr.OFTString,
        INTEGER: ogr.OFTInteger,
        REAL: ogr.OFTReal,
        BOOLEAN: ogr.OFTInteger,
        DATE: ogr.OFTDate,
    }
    column = ogr.FieldDefn(field.name, types[field.type])
    if field.type == BOOLEAN:
        column.SetSubType(ogr.OFSTBoolean)
    return column


def add_row(layer, row):
    """Add a row without geometry, a dict, to an OGR layer; a value None stays null."""
    from osgeo import gdal, ogr

    feature = ogr.Feature(layer.GetLayerDefn())
    for name, value in row.items():
        if value is None:
            feature.SetFieldNull(name)
        else:
            feature.SetField(name, int(value) if isinstance(value, bool) else value)
    if layer.CreateFeature(feature) != 0:
        raise RuntimeError(gdal.GetLastErrorMsg() or say("a row was refused"))


def file_uri(path):
    """The ``file:`` address SQLite opens; ``?``, ``#`` and ``%`` in a name are escaped."""
    from pathlib import Path

    return Path(path).as_uri()


def _versions(database):
    columns = {row[1] for row in database.execute("PRAGMA table_info(course_info)")}
    if "schema_version" not in columns:
        return []
    return [row[0] for row in database.execute("SELECT schema_version FROM course_info")]


def _check_version(path, versions):
    version = versions[0] if versions else None
    if version == SCHEMA_VERSION:
        return
    if not isinstance(version, int) or version < 1:
        raise YardwrightError(
            say("The file “{path}” does not say which version of course file it is.", path=path),
            said(_NOT_OURS),
        )
    if version > SCHEMA_VERSION:
        raise YardwrightError(
            say(
                "The course file “{path}” has version {version}; this program knows version {known}.",
                path=path,
                version=version,
                known=SCHEMA_VERSION,
            ),
            say("It was made with a newer Yardwright: update the plugin."),
        )
    raise OlderCourse(
        say(
            "The course file “{path}” has version {version}, older than the version {known} used now.",
            path=path,
            version=version,
            known=SCHEMA_VERSION,
        ),
        say("Open it in QGIS with “Open course…”, which brings it up to date and keeps the old file."),
        path,
    )
