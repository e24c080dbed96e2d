"""QGIS layers to a model Course: unsaved edits included, NULL turned into None, bad data told of.

Nothing in the layers stops the reading. What cannot be used is left out with a text in the course's
problems that names layer and feature; what could be mended carries a remark.
"""

import math
from types import MappingProxyType

import numpy as np
import shapely
from qgis.core import NULL, QgsFeatureRequest, QgsGeometry, QgsWkbTypes
from qgis.PyQt.QtCore import QDate, QDateTime
from shapely.geometry import LineString, MultiLineString, MultiPolygon, Point, Polygon
from shapely.ops import linemerge
from shapely.validation import make_valid

from ..model.course import Course, Feature, Hole, ImageDate, Settings, TeeSet
from ..model.errors import YardwrightError
from ..model.geometry import coordinates
from ..model.kinds import BOOLEAN, BY_NAME, DATE, FEATURE_KINDS, INTEGER, REAL
from ..model.numbers import parse_distances, parse_holes
from ..model.remarks import Problem, Remark
from ..model.words import said, say

_OWN_PLACE = ("holes", "label", "seen_in", "view")  # Feature has attributes of its own for these
_SHAPELY_2 = hasattr(shapely, "from_wkb")
_PLAIN = (
    QgsWkbTypes.Type.Point,
    QgsWkbTypes.Type.LineString,
    QgsWkbTypes.Type.Polygon,
    QgsWkbTypes.Type.MultiPoint,
    QgsWkbTypes.Type.MultiLineString,
    QgsWkbTypes.Type.MultiPolygon,
)


def read_course(course_layers):
    """Everything the layers say at this moment, as a model Course.

    ``features`` holds the kinds of ``model.kinds.FEATURE_KINDS`` but ``hole``; ``read_features`` gives
    the others.
    """
    problems = []
    info = _course_info(course_layers, problems)
    features = []
    for kind in FEATURE_KINDS:
        if kind != "hole":
            features.extend(_features(course_layers, BY_NAME[kind], problems))
    return Course(
        name=info.get("name") or "",
        crs=crs_text(course_layers.crs),
        holes=_holes(course_layers, problems),
        features=tuple(features),
        tee_sets=_tee_sets(course_layers, problems),
        images=_images(course_layers, problems),
        scorecard=MappingProxyType(_scorecard(course_layers, problems)),
        settings=_settings(info, problems),
        problems=tuple(problems),
    )


def read_features(course_layers, kind, problems=None):
    """The model Features of one kind (``window``, ``pin``, ``green``...), a tuple.

    Texts on what was left out are appended to the list ``problems``.
    """
    return tuple(_features(course_layers, BY_NAME[kind], [] if problems is None else problems))


def read_images(course_layers):
    """The ImageDates of a course, a tuple, without reading anything else of it."""
    return _images(course_layers, [])


def read_rows(course_layers, kind, problems):
    """``(id, values by field, shape)`` of each row of a table or layer; a field without a value is absent.

    shape: shapely, None where there is none. Texts on what was doubted are appended to ``problems``.
    """
    kind = BY_NAME[kind]
    rows = _Rows(course_layers, kind)
    problems.extend(rows.missing_fields())
    shapes = [([], "")] * len(rows.ids)
    if kind.geometry is not None:
        shapes = _geometries(kind, rows.features, rows.ids, problems, may_lack_geometry=True)
    for fid, (values, remarks), (geometries, _) in zip(rows.ids, rows.values(), shapes):
        problems.extend(_doubted(kind, fid, remarks))
        yield fid, values, geometries[0] if geometries else None


def crs_text(crs):
    """A QgsCoordinateReferenceSystem as ``EPSG:n`` or, where it has no such name, as WKT."""
    if crs.authid().upper().startswith("EPSG:"):
        return crs.authid()
    return crs.toWkt(type(crs).WktVariant.WKT_PREFERRED)


def plain_value(value):
    """An attribute as QGIS hands it out, as a plain Python value: NULL is None, a date its ISO text."""
    if value is None or value == NULL:
        return None
    if isinstance(value, QDate):
        return value.toString("yyyy-MM-dd") if value.isValid() else None
    if isinstance(value, QDateTime):
        return plain_value(value.date())
    return value


class _Rows:
    """The rows of one layer: ids, clean values by field, remarks, and geometries as QGIS has them."""

    def __init__(self, course_layers, kind):
        layer = course_layers.layers[kind.name]
        request = QgsFeatureRequest()
        if kind.geometry is None:
            request.setFlags(QgsFeatureRequest.Flag.NoGeometry)
        places = [(field, layer.fields().lookupField(field.name)) for field in kind.fields]
        self.kind = kind
        self.places = [(field, place) for field, place in places if place >= 0]
        self.missing = [field.name for field, place in places if place < 0]
        self.features = sorted(layer.getFeatures(request), key=_order_of_making)
        self.ids = [feature.id() for feature in self.features]

    def values(self):
        """``(values by field name, [remark, ...])`` of each row; a field without a value is absent."""
        for feature in self.features:
            attributes = feature.attributes()
            values, remarks = {}, []
            for field, place in self.places:
                value = attributes[place]
                if type(value) is not str and type(value) is not int:
                    value = plain_value(value)
                if value is None or value == "":
                    continue
                value = _clean(field, value, remarks)
                if value is not None:
                    values[field.name] = value
            yield values, remarks

    def missing_fields(self):
        if not self.missing:
            return []
        return [
            say(
                "Layer {layer} lacks the fields {fields}; they count as empty.",
                layer=self.kind.name,
                fields=", ".join(self.missing),
            )
        ]


def problem_of(kind, fid, reason, code="", other=None):
    """The Problem of a row of a layer or table. reason: without a full stop."""
    if kind.geometry is None:
        text = say("Table {table}, row {row}: {reason}.", table=kind.name, row=fid, reason=reason)
    else:
        text = say("Layer {layer}, feature {number}: {reason}.", layer=kind.name, number=fid, reason=reason)
    return Problem(text, code, kind.name, fid, reason, other)


def left_out(kind, fid, reason, code="left_out"):
    return problem_of(kind, fid, say("{reason}; it was left out", reason=reason), code)


def _doubted(kind, fid, remarks):
    """The Problems of what was remarked on a row's values."""
    return [problem_of(kind, fid, remark, remark.code) for remark in remarks]


def _order_of_making(feature):
    """Saved features first, then the unsaved ones, which QGIS numbers -2, -3..."""
    fid = feature.id()
    return (fid < 0, abs(fid))


def _clean(field, value, remarks):
    """The value in its field's type, or None with a remark where it has not got one."""
    try:
        if field.type == INTEGER:
            number = float(value)
            if not number.is_integer():
                raise ValueError
            value = int(number)
        elif field.type == REAL:
            value = float(value)
            if not math.isfinite(value):
                raise ValueError
        elif field.type == BOOLEAN:
            return bool(value)
        else:
            value = str(value).strip()
            if field.type == DATE:
                return value or None
    except (TypeError, ValueError, OverflowError):
        text = say(
            "{field} “{value}” is not a number of its kind and was left out", field=field.name, value=value
        )
        remarks.append(Remark(text, "left_out"))
        return None
    if field.values is not None and value not in field.values:
        if value:
            text = say(
                "{field} “{value}” is none of {values} and was left out",
                field=field.name,
                value=value,
                values=", ".join(map(said, field.values)),
            )
            remarks.append(Remark(text, "left_out"))
        return None
    if field.low is not None and value < field.low or field.high is not None and value > field.high:
        remarks.append(Remark(_out_of_limits(field, value)))
    return value


def _out_of_limits(field, value):
    if field.high is None:
        return say("{field} {value} is not at least {low}", field=field.name, value=value, low=field.low)
    return say(
        "{field} {value} is not between {low} and {high}",
        field=field.name,
        value=value,
        low=field.low,
        high=field.high,
    )


def _features(course_layers, kind, problems):
    rows = _Rows(course_layers, kind)
    problems.extend(rows.missing_fields())
    shapes = _geometries(kind, rows.features, rows.ids, problems)
    features = []
    for fid, (values, remarks), (geometries, mended) in zip(rows.ids, rows.values(), shapes):
        if not geometries:
            continue
        holes = _holes_given(kind, values, remarks)
        remark = "; ".join(remarks)
        own = MappingProxyType({name: value for name, value in values.items() if name not in _OWN_PLACE})
        for geometry in geometries:
            features.append(
                Feature(
                    kind=kind.name,
                    fid=fid,
                    geometry=geometry,
                    holes=holes,
                    label=values.get("label", ""),
                    seen_in=values.get("seen_in", ""),
                    view=values.get("view", "clear"),
                    attributes=own,
                    remark=remark,
                    mended=mended,
                )
            )
    return features


def _holes_given(kind, values, remarks):
    if "hole" in values:
        return (values["hole"],) if 1 <= values["hole"] <= 99 else ()
    try:
        return parse_holes(values.get("holes", ""))
    except YardwrightError as error:
        remarks.append(say("the text in holes was not understood: {reason}", reason=error.what))
        return ()


def _holes(course_layers, problems):
    kind = BY_NAME["hole"]
    rows = _Rows(course_layers, kind)
    problems.extend(rows.missing_fields())
    told = []  # a row without a line is quite right here: startcourse makes such rows
    shapes = _geometries(kind, rows.features, rows.ids, told, may_lack_geometry=True)
    problems.extend(told)
    holes = {}
    for fid, (values, remarks), (geometries, mended) in zip(rows.ids, rows.values(), shapes):
        number = values.get("number")
        if number is None or not 1 <= number <= 99:
            reason = say("it has no hole number and was left out")
            problems.append(problem_of(kind, fid, reason, "left_out"))
            continue
        line = geometries[0] if geometries else None
        if line is not None and line.geom_type != "LineString":
            line = max(line.geoms, key=lambda part: part.length)
            mended = say("the line of play is in several parts; the longest was taken")
        hole = Hole(
            number=number,
            line=line,
            fid=fid,
            name=values.get("name", ""),
            par=values.get("par"),
            stroke_index=values.get("stroke_index"),
            approach_yd=values.get("approach_yd"),
            seen_in=values.get("seen_in", ""),
            view=values.get("view", "clear"),
            description=values.get("description", ""),
            remark="; ".join(remarks),
            mended=mended,
        )
        other = holes.get(number)
        if other is not None:
            keep, drop = (other, hole) if other.line is not None or line is None else (hole, other)
            reason = say(
                "there is another hole {number} (feature {kept}); this one was left out",
                number=number,
                kept=keep.fid,
            )
            problems.append(problem_of(kind, drop.fid, reason, "second", (number, keep.fid)))
            hole = keep
        holes[number] = hole
    return tuple(holes[number] for number in sorted(holes))


def _tee_sets(course_layers, problems):
    kind = BY_NAME["tee_set"]
    rows = _Rows(course_layers, kind)
    tee_sets = {}
    for fid, (values, remarks) in zip(rows.ids, rows.values()):
        problems.extend(_doubted(kind, fid, remarks))
        name = values.get("name")
        if not name or name in tee_sets:
            reason = say("there is another tee set “{name}”", name=name) if name else say("it has no name")
            problems.append(left_out(kind, fid, reason))
            continue
        tee_sets[name] = TeeSet(name, values.get("colour", ""), values.get("sort", 0), values.get("players"))
    return tuple(sorted(tee_sets.values(), key=lambda tee_set: tee_set.sort))


def _images(course_layers, problems):
    kind = BY_NAME["image"]
    rows = _Rows(course_layers, kind)
    images = {}
    for fid, (values, remarks) in zip(rows.ids, rows.values()):
        problems.extend(_doubted(kind, fid, remarks))
        name = values.get("id")
        if not name or name in images:
            reason = say("there is another image “{name}”", name=name) if name else say("it has no id")
            problems.append(left_out(kind, fid, reason))
            continue
        images[name] = ImageDate(
            id=name,
            gsd_m=values.get("gsd_m"),
            rmse_m=values.get("rmse_m"),
            source=values.get("source", ""),
            taken=values.get("taken", ""),
            taken_utc=values.get("taken_utc", ""),
            shift_e_m=values.get("shift_e_m", 0.0),
            shift_n_m=values.get("shift_n_m", 0.0),
            moved=values.get("moved", ""),
            credit=values.get("credit", ""),
            licence=values.get("licence", ""),
            print_allowed=values.get("print_allowed"),
        )
    return tuple(images.values())


def _scorecard(course_layers, problems):
    kind = BY_NAME["scorecard"]
    rows = _Rows(course_layers, kind)
    yards = {}
    for fid, (values, remarks) in zip(rows.ids, rows.values()):
        problems.extend(_doubted(kind, fid, remarks))
        key = (values.get("hole"), values.get("tee_set"))
        if None in key:
            reason = say("it lacks hole or tee set and was left out")
            problems.append(problem_of(kind, fid, reason, "left_out"))
        elif key in yards:
            reason = say(
                "hole {number} from {tee_set} is there twice; the first counts",
                number=key[0],
                tee_set=key[1],
            )
            problems.append(problem_of(kind, fid, reason))
        elif values.get("yards") is not None:
            yards[key] = values["yards"]
    return yards


def _course_info(course_layers, problems):
    rows = _Rows(course_layers, BY_NAME["course_info"])
    problems.extend(rows.missing_fields())
    every = list(rows.values())
    if len(every) != 1:
        problems.append(
            say("Table course_info has {count} rows instead of one; the first counts.", count=len(every))
        )
    if not every:
        return {}
    values, remarks = every[0]
    problems.extend(say("Table course_info: {remark}.", remark=remark) for remark in remarks)
    return values


def _settings(info, problems):
    """The settings the course's row gives; one that is out of its limits counts as not given."""
    given = {}
    for field in BY_NAME["course_info"].fields:
        value = info.get(field.name)
        if value is None or not hasattr(Settings, field.name):
            continue
        if field.low is not None and value < field.low:
            problems.append(
                say(
                    "Table course_info: {field} {value} was not used; {default} counts.",
                    field=field.name,
                    value=value,
                    default=field.default,
                )
            )
            continue
        if field.name == "layup_yd":
            try:
                value = parse_distances(value)
            except YardwrightError as error:
                problems.append(
                    say(
                        "Table course_info, layup_yd: {reason} {default} counts.",
                        reason=error.what,
                        default=field.default,
                    )
                )
                continue
        given[field.name] = value
    return Settings(**given)


# Geometry. Each row gives (list of shapely geometries, remark); an empty list when it was left out.


def _geometries(kind, features, ids, problems, may_lack_geometry=False):
    def leave_out(fid, reason, code="left_out"):
        problems.append(left_out(kind, fid, reason, code))
        return [], ""

    raw = [feature.geometry() for feature in features]
    wkb = [None if geometry.isNull() else bytes(_flat(geometry).asWkb()) for geometry in raw]
    shapes = _from_wkb(wkb)
    sound = _sound(kind, shapes)
    results = []
    for geometry, fid, shape, is_sound in zip(raw, ids, shapes, sound):
        if is_sound:
            results.append(([shape], ""))
            continue
        if geometry.isNull() or geometry.isEmpty():
            results.append(
                ([], "") if may_lack_geometry else leave_out(fid, say("it has no geometry"), "empty")
            )
            continue
        try:
            results.append(_mended(kind, geometry, shape))
        except _Unusable as reason:
            results.append(leave_out(fid, str(reason)))
    return results


class _Unusable(Exception):
    """Why a geometry is left out."""


def _flat(geometry):
    """The geometry without Z and M, its curves as segments."""
    if geometry.wkbType() in _PLAIN:
        return geometry
    if QgsWkbTypes.isCurvedType(geometry.wkbType()):
        flat = QgsGeometry(geometry.constGet().segmentize())
    else:
        flat = QgsGeometry(geometry)
    inner = flat.get()
    inner.dropZValue()
    inner.dropMValue()
    return flat


def _from_wkb(wkb):
    """shapely geometries; None for one that GEOS does not take (a ring not closed, too few points)."""
    if _SHAPELY_2:
        with np.errstate(invalid="ignore"):  # a coordinate that is not a number is told of later
            return list(shapely.from_wkb(np.array(wkb, dtype=object), on_invalid="ignore")) if wkb else []
    from shapely.wkb import loads

    shapes = []
    for one in wkb:
        try:
            shapes.append(None if one is None else loads(one))
        except Exception:
            shapes.append(None)
    return shapes


def _sound(kind, shapes):
    """Whether each shape can be taken as it is: of the layer's type, finite, not empty, valid."""
    if not _SHAPELY_2:
        return [
            shape is not None
            and shape.geom_type == kind.geometry
            and not shape.is_empty
            and bool(np.isfinite(coordinates(shape)).all())
            and shape.is_valid
            for shape in shapes
        ]
    if not shapes:
        return []
    array = np.array(shapes, dtype=object)
    type_id = {"Point": 0, "LineString": 1, "Polygon": 3}[kind.geometry]
    points, owner = shapely.get_coordinates(array, return_index=True)
    sound = (shapely.get_type_id(array) == type_id) & ~shapely.is_empty(array)
    sound[owner[~np.isfinite(points).all(axis=1)]] = False
    sound[sound] = shapely.is_valid(array[sound])
    return sound.tolist()


def _mended(kind, geometry, shape):
    """``([shapely geometry, ...], remark)`` of a geometry that cannot be taken as it is."""
    if shape is None:
        shape = _rebuilt(geometry)
    if not np.isfinite(coordinates(shape)).all():
        raise _Unusable(say("it has a coordinate that is not a number"))
    mend = {"Point": _points, "LineString": _line, "Polygon": _areas}[kind.geometry]
    return mend(list(_simple_parts(shape)))


def _rebuilt(geometry):
    """A shapely geometry from the vertices QGIS sees: rings closed, parts with too few points dropped."""
    polygons, lines = [], []
    for part in _flat(geometry).constParts():
        if QgsWkbTypes.geometryType(part.wkbType()) == QgsWkbTypes.GeometryType.PolygonGeometry:
            rings = [part.exteriorRing()] + [part.interiorRing(i) for i in range(part.numInteriorRings())]
            rings = [_vertices(ring) for ring in rings if ring is not None]
            if rings and len(set(rings[0])) >= 3:
                polygons.append(Polygon(rings[0], [ring for ring in rings[1:] if len(set(ring)) >= 3]))
        else:
            vertices = _vertices(part)
            if len(set(vertices)) >= 2:
                lines.append(LineString(vertices))
    if not polygons and not lines:
        raise _Unusable(say("it has too few points"))
    return MultiPolygon(polygons) if polygons else MultiLineString(lines)


def _vertices(part):
    vertices = [(vertex.x(), vertex.y()) for vertex in part.vertices()]
    if not np.isfinite(vertices).all():
        raise _Unusable(say("it has a coordinate that is not a number"))
    return vertices


def _simple_parts(shape):
    parts = getattr(shape, "geoms", None)
    if parts is None:
        if not shape.is_empty:
            yield shape
        return
    for part in parts:
        yield from _simple_parts(part)


def _points(parts):
    points = [part for part in parts if part.geom_type == "Point"]
    if not points:
        raise _Unusable(say("it is not a point"))
    return [Point(point.x, point.y) for point in points], ""


def _line(parts):
    lines = [part for part in parts if part.geom_type in ("LineString", "LinearRing") and part.length > 0]
    if not lines:
        raise _Unusable(say("it is not a line of two points or more"))
    line = lines[0] if len(lines) == 1 else linemerge(lines)
    return [line], ""


def _areas(parts):
    """One polygon, or a multi-polygon where the parts lie apart."""
    polygons = [part for part in parts if part.geom_type == "Polygon"]
    if not polygons:
        raise _Unusable(say("it is not an area"))
    shape = polygons[0] if len(polygons) == 1 else MultiPolygon(polygons)
    remark = ""
    if not shape.is_valid:
        made = make_valid(shape)
        polygons = [part for part in _simple_parts(made) if part.geom_type == "Polygon" and part.area > 0]
        if not polygons:
            raise _Unusable(say("its outline encloses nothing"))
        shape = polygons[0] if len(polygons) == 1 else MultiPolygon(polygons)
        remark = say("the outline crosses or touches itself and was mended")
    return [shape], remark
