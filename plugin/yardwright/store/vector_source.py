"""Any vector layer or file with a chosen kind as candidates for the course file.

Shapefile, KML, GPX, DXF, GeoPackage and whatever else QGIS opens come as layers; a CSV of surveyed points
is read here.
"""

import csv
import os
import re
from typing import NamedTuple

from ..model.errors import YardwrightError
from ..model.kinds import BOOLEAN, BY_NAME, DATE, FEATURE_KINDS, INTEGER, REAL, TEXT
from ..model.numbers import hole_number_in, parse_holes
from ..model.words import said, say
from .bring_in import ONE_SHAPE, Candidate, Found, LeftOut, has_extent, shape_called, to_course_crs

CSV_ENDINGS = (".csv", ".tsv")
_DEGREES = (("lon", "lat"), ("long", "lat"), ("longitude", "latitude"))
_PLANE = (("x", "y"), ("easting", "northing"), ("east", "north"), ("e", "n"))
_OUTLINE_COLUMN = "feature"
_VERTEX_LAYERS = ("route_points", "track_points")
"""GPX: the vertices of routes and tracks once more, as points."""
_DBF_WIDTH = 10
"""A shapefile keeps the first ten characters of a field's name."""


class Row(NamedTuple):
    """One feature of a source. values: by field name, None for NULL. geometry: shapely, in the course's
    CRS, or None. origin: file or layer and feature id; what: how the report calls it."""

    values: dict
    geometry: object
    origin: str
    what: str


def read_vector(source, kind, to_crs, source_crs=None, extent=None, transform_context=None, progress=None):
    """The features of a vector source as candidates of one kind.

    source: path of a file (``FILE|layername=NAME`` for one layer of it) or a QgsVectorLayer. kind: the
    name of one of our layers. to_crs: the course's QgsCoordinateReferenceSystem. source_crs: the same for a
    source that names none. extent: a shapely polygon in the course's CRS; what does not meet it is passed
    over. progress: ``progress(done, total)``, False to stop.

    Returns a ``Found``. Raises YardwrightError when the source cannot be read or has no CRS.
    """
    if kind not in FEATURE_KINDS:
        raise YardwrightError(
            say("There is no layer “{kind}”.", kind=kind),
            say("Choose one of {kinds}.", kinds=", ".join(FEATURE_KINDS)),
        )
    rows, left_out, remarks = read_rows(source, kind, to_crs, source_crs, transform_context, progress)
    candidates, outside = [], 0
    for row in rows:
        if extent is not None and has_extent(row.geometry) and not extent.intersects(row.geometry):
            outside += 1
            continue
        candidate, told = _candidate(row, kind)
        candidates.append(candidate)
        remarks.extend(told)
    if outside:
        remarks.append(say("{count} features lie outside the extent and were passed over.", count=outside))
    return Found(tuple(candidates), tuple(left_out), tuple(remarks))


def read_rows(source, kind, to_crs, source_crs=None, transform_context=None, progress=None):
    """``(rows, left out, remarks)`` of a vector source, as ``read_vector`` takes it."""
    if isinstance(source, str) and os.path.splitext(source)[1].lower() in CSV_ENDINGS:
        return _csv_rows(source, kind, to_crs, source_crs, transform_context)
    from .reading import plain_value

    layers = open_layers(source) if isinstance(source, str) else [source]
    wanted = BY_NAME[kind].geometry if kind else None
    remarks, rows, left_out = [], [], []
    total = sum(max(layer.featureCount(), 0) for layer in layers) or 1
    for layer in layers:
        mover = to_course_crs(_crs_of(layer, source_crs, remarks), to_crs, transform_context)
        name = _source_name(layer)
        for feature in layer.getFeatures():
            what = f"{name} {feature.id()}"
            values = {
                field.name(): plain_value(value) for field, value in zip(layer.fields(), feature.attributes())
            }
            geometry = mover(feature.geometry())
            if geometry is not None and wanted and _has_nothing_of(geometry, wanted):
                left_out.append(LeftOut(what, _misfit(geometry, wanted)))
            else:
                rows.append(Row(values, geometry, f"{name}/{feature.id()}", what))
            if progress is not None and progress(len(rows) + len(left_out), total) is False:
                return rows, left_out, remarks
    return rows, left_out, remarks


def has_golf_tags(source):
    """Whether a vector source keeps OpenStreetMap's tags as fields: one of them is ``golf``."""
    if isinstance(source, str) and os.path.splitext(source)[1].lower() in CSV_ENDINGS:
        return False
    layers = open_layers(source) if isinstance(source, str) else [source]
    return any(field.name().lower() == "golf" for layer in layers for field in layer.fields())


def open_layers(path):
    """The layers with geometry of a vector file, one for each type of geometry in it.

    path: a file, ``|layername=NAME`` after it for one of its layers. Raises YardwrightError.
    """
    from qgis.core import (
        Qgis,
        QgsCoordinateTransformContext,
        QgsMapLayerType,
        QgsProviderRegistry,
        QgsProviderSublayerDetails,
        QgsVectorLayer,
        QgsWkbTypes,
    )

    file = path.split("|")[0]
    if not os.path.exists(file):
        raise _not_there(file)
    options = QgsProviderSublayerDetails.LayerOptions(QgsCoordinateTransformContext())
    named = re.search(r"\|layername=([^|]+)", path)
    layers = []
    by_type = Qgis.SublayerQueryFlag.ResolveGeometryType
    for details in QgsProviderRegistry.instance().querySublayers(file, by_type):
        if details.type() != QgsMapLayerType.VectorLayer or details.providerKey() != "ogr":
            continue
        if details.name() in _VERTEX_LAYERS or (named and details.name() != named.group(1)):
            continue
        layer = details.toLayer(options)
        usable = isinstance(layer, QgsVectorLayer) and layer.isValid()
        if usable and layer.geometryType() != QgsWkbTypes.GeometryType.NullGeometry:
            layers.append(layer)
    if not layers:
        raise YardwrightError(
            say("“{file}” holds no vector layer that can be read.", file=os.path.basename(path)),
            say(
                "Choose another file; a drawing has to be saved in a form QGIS opens, such as DXF or "
                "GeoPackage."
            ),
        )
    return layers


def _not_there(path):
    return YardwrightError(
        say("The file “{path}” is not there.", path=path), say("Choose an existing file as SOURCE.")
    )


def _source_name(layer):
    """The file's name without its folder and, where it differs, the layer's: for ``origin``."""
    from qgis.core import QgsProviderRegistry

    parts = QgsProviderRegistry.instance().decodeUri(layer.providerType(), layer.source())
    file = os.path.basename(str(parts.get("path") or ""))
    inner = str(parts.get("layerName") or "")
    if not file:
        return layer.name()
    return file if not inner or inner == os.path.splitext(file)[0] else f"{file}:{inner}"


def _crs_of(layer, source_crs, remarks):
    """The CRS of a layer: its own, else the one given."""
    own = layer.crs()
    given = source_crs is not None and source_crs.isValid()
    if own.isValid():
        if given and own != source_crs:
            text = say(
                "SOURCE_CRS was not used: {source} has its own, {crs}.",
                source=_source_name(layer),
                crs=own.authid() or say("unnamed"),
            )
            if text not in remarks:
                remarks.append(text)
        return own
    if not given:
        raise YardwrightError(
            say("“{source}” does not say what its coordinates mean.", source=_source_name(layer)),
            say("Give its coordinate system as SOURCE_CRS, such as EPSG:32630."),
        )
    return source_crs


def _has_nothing_of(geometry, wanted):
    """Whether a geometry is of a type that can never become the wanted one (a line can close to an area)."""
    kind = geometry.geom_type.replace("Multi", "").replace("LinearRing", "LineString")
    if kind == "GeometryCollection":
        return False
    return kind != wanted and not (wanted == "Polygon" and kind == "LineString")


def _misfit(geometry, wanted):
    return say(
        "it is {shape}, and {wanted} is wanted",
        shape=shape_called(geometry, say("something else")),
        wanted=said(ONE_SHAPE[wanted]),
    )


def _candidate(row, kind):
    """``(Candidate, remarks)`` of a row: our fields by name, whatever their capitals."""
    remarks = []
    named = {name.lower(): value for name, value in row.values.items()}
    attributes = {}
    for column in BY_NAME[kind].fields:
        if column.name in ("hole", "holes", "origin"):
            continue
        value = _named(named, column.name)
        if value is None:
            continue
        taken = _fitted(value, column)
        if taken is None:
            text = say(
                "{thing}: {field} “{value}” does not fit and was not taken.",
                thing=row.what,
                field=column.name,
                value=value,
            )
            remarks.append(text)
        else:
            attributes[column.name] = taken
    name = _text(_named(named, "name"))
    if kind == "hole" and "number" not in attributes:
        number = hole_number_in(_named(named, "ref")) or hole_number_in(name)
        if number is not None:
            attributes["number"] = number
    fields = [column.name for column in BY_NAME[kind].fields]
    if name and "name" not in fields:
        attributes.setdefault("label" if "label" in fields else "note", name)
    if "view" not in attributes and "seen_in" not in attributes:
        attributes["view"] = "from another source"
    holes = ()
    if "hole" in fields or "holes" in fields:
        holes, told = _holes(named, row.what)
        remarks.extend(told)
        holes = holes[:1] if "hole" in fields else holes
    return Candidate(kind, row.geometry, row.origin, row.what, attributes, holes), remarks


def _named(values, name):
    """The value of a field of ours by its name, or by what a shapefile leaves of it."""
    if values.get(name) is not None:
        return values[name]
    return values.get(name[:_DBF_WIDTH]) if len(name) > _DBF_WIDTH else None


def _holes(named, what):
    """``(hole numbers, remarks)`` of a row that has a field ``holes`` or ``hole``."""
    for name in ("holes", "hole"):
        value = named.get(name)
        if value is None:
            continue
        text = _text(value)
        try:
            return parse_holes(text), []
        except YardwrightError:
            number = hole_number_in(text)
            if number is not None:
                return (number,), []
            remark = say(
                "{thing}: {field} “{value}” is no hole number and was not taken.",
                thing=what,
                field=name,
                value=text,
            )
            return (), [remark]
    return (), []


def _text(value):
    """A value as text, a whole number without its decimals."""
    if value is None:
        return ""
    if isinstance(value, float) and value == int(value):
        return str(int(value))
    return str(value).strip()


def _fitted(value, column):
    """The value as the column's type, within its limits and allowed values; None if it cannot be."""
    if column.type == TEXT:
        text = _text(value)
        if column.values is None:
            return text or None
        return next((allowed for allowed in column.values if allowed.lower() == text.lower()), None)
    if column.type == BOOLEAN:
        return {"true": True, "1": True, "yes": True, "false": False, "0": False, "no": False}.get(
            _text(value).lower()
        )
    if column.type == DATE:
        text = _text(value)
        return text if re.fullmatch(r"\d{4}-\d{2}-\d{2}", text) else None
    number = _number(value)
    if number is None or (column.type == INTEGER and number != int(number)):
        return None
    if (column.low is not None and number < column.low) or (column.high is not None and number > column.high):
        return None
    return float(number) if column.type == REAL else int(number)


def _number(value):
    """A finite number of a value or of its text, with a decimal point or comma; None if it is none."""
    from math import isfinite

    try:
        number = float(str(value).strip().replace(",", "."))
    except ValueError:
        return None
    return number if isfinite(number) else None


def _csv_rows(path, kind, to_crs, source_crs, transform_context):
    """``(rows, left out, remarks)`` of a CSV of surveyed points.

    A row is a point. For a layer of lines or areas, the rows with the same text in the column ``feature``
    are the points of one outline, in their order.
    """
    from qgis.core import QgsCoordinateReferenceSystem

    table = _read_csv(path)
    name = os.path.basename(path)
    columns = {column.strip().lower(): column for column in table[0][1]} if table else {}
    degrees, pair = _coordinate_columns(columns)
    if pair is None:
        raise YardwrightError(
            say("“{file}” has no columns of coordinates.", file=name),
            say(
                "Name them lon and lat (degrees), or x and y (in SOURCE_CRS or the course’s coordinate "
                "system)."
            ),
        )
    remarks, left_out, points = [], [], []
    crs = source_crs if source_crs is not None and source_crs.isValid() else None
    if crs is None and degrees:
        crs = QgsCoordinateReferenceSystem("EPSG:4326")
    elif crs is None:
        crs = to_crs
        text = say(
            "{file} does not say what its coordinates mean; the course’s own coordinate system ({crs}) was "
            "taken. Name another as SOURCE_CRS if they are in that.",
            file=name,
            crs=to_crs.authid(),
        )
        remarks.append(text)
    for line, values in table:
        x, y = (_number(values.get(columns[column])) for column in pair)
        if x is None or y is None:
            why = say("{x} or {y} is not a number", x=pair[0], y=pair[1])
            left_out.append(LeftOut(_line_called(name, line), why))
        else:
            points.append((line, x, y, values))
    grouped = _grouped(points, kind, columns, name)
    mover = to_course_crs(crs, to_crs, transform_context)
    rows = []
    for label, members in grouped:
        geometry = _shape(members, BY_NAME[kind].geometry)
        values = {column: _plain_csv(text) for column, text in members[0][3].items()}
        if BY_NAME[kind].geometry != "Point":
            # The name of an outline serves where it has no better one.
            values.setdefault("name", label)
        for column in pair:
            values.pop(columns[column], None)
        what = _line_called(name, members[0][0])
        if geometry is None:
            called = say("{thing} (“{label}”)", thing=what, label=label)
            left_out.append(LeftOut(called, say("it has too few points")))
        else:
            rows.append(Row(values, mover(geometry.wkb), f"{name}/{members[0][0]}", what))
    return rows, left_out, remarks


def _line_called(name, line):
    return say("{file} line {line}", file=name, line=line)


def _plain_csv(text):
    text = (text or "").strip()
    return text or None


def _coordinate_columns(columns):
    """``(whether they are degrees, (x column, y column) or None)``."""
    for degrees, pairs in ((True, _DEGREES), (False, _PLANE)):
        for pair in pairs:
            if all(column in columns for column in pair):
                return degrees, pair
    return False, None


def _grouped(points, kind, columns, name):
    """``[(label, points)]``: one point each, or the points of each outline."""
    if BY_NAME[kind].geometry == "Point":
        return [(str(point[0]), [point]) for point in points]
    if _OUTLINE_COLUMN not in columns:
        raise YardwrightError(
            say("The rows of “{file}” are points, and the layer {kind} holds none.", file=name, kind=kind),
            say(
                "Add a column “{column}” that names the outline of each point, or choose another KIND.",
                column=_OUTLINE_COLUMN,
            ),
        )
    groups = {}
    for point in points:
        label = (point[3].get(columns[_OUTLINE_COLUMN]) or "").strip()
        groups.setdefault(label, []).append(point)
    return list(groups.items())


def _shape(members, wanted):
    """The shapely geometry of surveyed points; None when they are too few. An area closes by itself."""
    from shapely.geometry import LineString, Point, Polygon

    points = [(x, y) for _, x, y, _ in members]
    if wanted == "Point":
        return Point(points[0])
    if len(points) < (3 if wanted == "Polygon" else 2):
        return None
    return Polygon(points) if wanted == "Polygon" else LineString(points)


def _read_csv(path):
    """``[(line number, {column: text})]``; UTF-8 with or without BOM; comma, semicolon or tab."""
    name = os.path.basename(path)
    if not os.path.isfile(path):
        raise _not_there(path)
    try:
        with open(path, encoding="utf-8-sig", newline="") as file:
            head = file.readline()
            file.seek(0)
            mark = max(",;\t", key=head.count)
            reader = csv.DictReader(file, delimiter=mark)
            rows = [
                (reader.line_num, row) for row in reader if any(v for v in row.values() if isinstance(v, str))
            ]
    except (OSError, UnicodeDecodeError, csv.Error) as error:
        raise YardwrightError(
            say("“{file}” cannot be read as CSV ({reason}).", file=name, reason=error),
            say("Save it as CSV in UTF-8 with a row of column names."),
        ) from error
    if not rows:
        raise YardwrightError(
            say("“{file}” has no rows.", file=name),
            say("It needs a row of column names and a row for each point."),
        )
    return [
        (line, {column: text for column, text in row.items() if column is not None}) for line, row in rows
    ]
