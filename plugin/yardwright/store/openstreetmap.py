"""OpenStreetMap's golf course tags (``golf=*``) as candidates for the course file.

Three ways in: an OpenStreetMap file (``.osm``, ``.osm.pbf``) through GDAL's driver, a GeoJSON export, and
a vector layer whose fields are tags. The tags are those of the OpenStreetMap wiki, page Key:golf.
"""

import json
import os
import re
from typing import NamedTuple

from ..model.errors import YardwrightError
from ..model.kinds import BY_NAME, FEATURE_KINDS
from ..model.numbers import hole_number_in
from ..model.words import said, say, to_say
from .bring_in import Candidate, Found, LeftOut, close_to_area, has_extent, plane_around, to_course_crs

FILE_ENDINGS = (".osm", ".pbf")
GEOJSON_ENDINGS = (".geojson", ".json")

KIND_OF_GOLF = {
    "hole": "hole",
    "tee": "tee",
    "green": "green",
    "fringe": "apron",
    "apron": "apron",
    "fairway": "fairway",
    "bunker": "bunker",
    "rough": "rough",
    "water_hazard": "penalty_area",
    "lateral_water_hazard": "penalty_area",
    "cartpath": "path",
    "path": "path",
    "out_of_bounds": "boundary",
    "boundary": "boundary",
}
STAKES = {"water_hazard": "yellow", "lateral_water_hazard": "red"}
"""The colours the Rules of Golf give the two kinds of penalty area (definition of penalty area)."""

NOT_TAKEN = {
    "pin": to_say("the hole location is cut anew every day, so it is not kept with the course"),
    "clubhouse": to_say("a yardage guide measures no buildings"),
    "driving_range": to_say("the range is not part of a hole"),
    "practice": to_say("practice ground is not part of a hole"),
}

_OUTLINE = to_say(
    "the outline of the property is not out of bounds everywhere; it only showed which water and trees "
    "lie on the course"
)
_CLOSE_TO_PLAY_YD = 60.0
"""Water and trees not tagged as golf are taken this near to a line of play (the default corridor)."""
_ID = re.compile(r"^(n|node|w|way|r|relation)[/ ]?(\d+)$", re.IGNORECASE)
_TYPES = {"n": "node", "w": "way", "r": "relation"}
_PAIR = re.compile(r'"((?:[^"\\]|\\.)*)"=>(?:"((?:[^"\\]|\\.)*)"|NULL)')


class Thing(NamedTuple):
    """One tagged thing. tags: text by text; geometry: shapely, in the course's CRS, or None.

    origin: where it came from; lasting: whether that names the same thing next year too.
    """

    tags: dict
    geometry: object
    origin: str
    lasting: bool


def is_openstreetmap_file(path):
    """Whether the file is one of OpenStreetMap by its name, or a GeoJSON with golf tags in it."""
    ending = os.path.splitext(path)[1].lower()
    if ending in FILE_ENDINGS:
        return True
    if ending not in GEOJSON_ENDINGS or not os.path.isfile(path):
        return False
    try:
        document = _read_json(path)
    except YardwrightError:
        return False
    return any("golf" in _tags_of_properties(f.get("properties")) for f in _features_of(document))


def read_openstreetmap(path, to_crs, kind=None, extent=None, transform_context=None, progress=None):
    """What an OpenStreetMap file or a GeoJSON export of it holds for the course.

    path: ``.osm``, ``.osm.pbf``, ``.geojson`` or ``.json``. to_crs: the course's
    QgsCoordinateReferenceSystem. kind: only this layer's things, None for all. extent: a shapely polygon in
    the course's CRS; what does not meet it is passed over. progress: ``progress(done, total)``, False to
    stop.

    Returns a ``Found``. Raises YardwrightError when the file cannot be read.
    """
    if not os.path.isfile(path):
        raise YardwrightError(
            say("The file “{path}” is not there.", path=path),
            say("Choose an OpenStreetMap file (.osm, .osm.pbf or GeoJSON)."),
        )
    mover = to_course_crs("EPSG:4326", to_crs, transform_context)
    if os.path.splitext(path)[1].lower() in GEOJSON_ENDINGS:
        things = _things_of_geojson(path, mover)
    else:
        things = _things_of_file(path, mover, progress)
    return candidates_of(things, to_crs, kind, extent)


def things_of_rows(rows):
    """Things from rows of a vector layer whose fields are tags (one is ``golf``).

    rows: ``vector_source.Row``, their geometry in the course's CRS.
    """
    things = []
    for row in rows:
        tags = {}
        for name, value in row.values.items():
            if value is None or value == "":
                continue
            if name.lower() in ("other_tags", "all_tags"):
                tags.update(tags_of_hstore(str(value)))
            else:
                tags[name.lower()] = str(value)
        identity = _identity(tags)
        origin = f"osm:{identity}" if identity else row.origin
        things.append(Thing(tags, row.geometry, origin, bool(identity)))
    return things


def candidates_of(things, to_crs, kind=None, extent=None):
    """What of ``things`` goes into the course: a ``Found``, in an order that depends on nothing but them."""
    from shapely.prepared import prep

    candidates, left_out, remarks, ground = [], [], [], []
    outlines = []
    reach = prep(extent) if extent is not None else None
    outside = 0
    for thing in sorted(things, key=_order):
        verdict, is_golf = _classify(thing)
        if verdict is None:
            continue
        if reach is not None and has_extent(thing.geometry) and not reach.intersects(thing.geometry):
            outside += is_golf
            continue
        what = _what(thing)
        if verdict == "outline":
            outlines.append(thing)
        elif kind is not None and verdict != kind:
            continue
        elif is_golf and verdict not in BY_NAME:
            left_out.append(LeftOut(what, verdict))
        elif not is_golf:
            ground.append((verdict, thing))
        else:
            made, told = _candidate(verdict, thing, what)
            candidates.append(made)
            remarks.extend(told)
    lines = [
        thing.geometry
        for thing in things
        if thing.tags.get("golf") == "hole"
        and thing.geometry is not None
        and thing.geometry.geom_type == "LineString"
        and (reach is None or reach.intersects(thing.geometry))
    ]
    taken, told = _on_the_course(ground, lines, outlines, to_crs)
    for verdict, thing in taken:
        if verdict == "waterway":
            why = say("water drawn as a line has no width: draw its banks as a penalty area")
            left_out.append(LeftOut(_what(thing), why))
        else:
            made, more = _candidate(verdict, thing, _what(thing))
            candidates.append(made)
            remarks.extend(more)
    if kind is None:
        left_out.extend(LeftOut(_what(thing), said(_OUTLINE)) for thing in outlines)
    remarks.extend(told)
    if outside:
        remarks.append(
            say("{count} golf features lie outside the extent and were passed over.", count=outside)
        )
    rank = {name: index for index, name in enumerate(FEATURE_KINDS)}
    candidates.sort(key=lambda item: rank[item.kind])
    return Found(tuple(candidates), tuple(left_out), tuple(remarks))


def tags_of_hstore(text):
    r"""The tags in a text such as ``"golf"=>"tee","ref"=>"7"``, as GDAL writes them.

    >>> tags_of_hstore('"golf"=>"tee","name"=>"the \\"old\\" one"')
    {'golf': 'tee', 'name': 'the "old" one'}
    """
    return {_plain(key): _plain(value) for key, value in _PAIR.findall(text or "")}


def _plain(text):
    return re.sub(r"\\(.)", r"\1", text)


def _order(thing):
    """Nodes, ways, relations by number; then whatever has no lasting number, by its origin."""
    match = re.match(r"^osm:(node|way|relation)/(\d+)$", thing.origin)
    if match:
        return (0, ("node", "way", "relation").index(match.group(1)), int(match.group(2)), "")
    numbers = re.findall(r"\d+", thing.origin)
    return (1, 0, int(numbers[-1]) if numbers else 0, thing.origin)


def _what(thing):
    tags = thing.tags
    kind = tags.get("golf") or tags.get("natural") or tags.get("landuse") or tags.get("waterway")
    kind = kind or tags.get("leisure") or tags.get("boundary") or "thing"
    name = tags.get("ref") or tags.get("name")
    kind = kind.replace("_", " ")
    if not name:
        return f"{kind} ({thing.origin})"
    return say("{kind} “{name}” ({origin})", kind=kind, name=name, origin=thing.origin)


def _classify(thing):
    """``(verdict, whether it is tagged as golf)``.

    The verdict is the name of a layer, ``outline`` (the course's property), ``waterway`` (a line of
    water), a reason to leave it out, or None for what has nothing to do with a course.
    """
    tags, geometry = thing.tags, thing.geometry
    golf = tags.get("golf", "").strip().lower()
    kind = geometry.geom_type if geometry is not None else ""
    if golf:
        if golf in NOT_TAKEN:
            return said(NOT_TAKEN[golf]), True
        if golf not in KIND_OF_GOLF:
            return say("there is no layer for golf={tag}", tag=golf), True
        verdict = KIND_OF_GOLF[golf]
        if verdict == "tee" and kind in ("Point", "MultiPoint"):
            verdict = "plate"
        return verdict, True
    if tags.get("leisure") == "golf_course" and kind not in ("Point", "MultiPoint"):
        return "outline", True
    if tags.get("boundary") == "out_of_bounds":
        return "boundary", True
    if tags.get("natural") == "water":
        return ("penalty_area" if kind not in ("Point", "MultiPoint") else None), False
    if tags.get("waterway") in ("river", "stream", "canal", "ditch", "drain") and "Line" in kind:
        return "waterway", False
    if tags.get("natural") == "tree" and kind == "Point":
        return "tree", False
    is_wood = tags.get("natural") == "wood" or tags.get("landuse") == "forest"
    if is_wood and kind not in ("Point", "MultiPoint"):
        return "trees", False
    return None, False


def _candidate(kind, thing, what):
    """``(Candidate, remarks)`` of a thing that goes into layer ``kind``."""
    tags = thing.tags
    attributes, remarks, notes = {}, [], []
    name, ref = _text(tags.get("name")), _text(tags.get("ref"))
    if kind == "hole":
        attributes, remarks, notes = _hole_attributes(tags, what)
    elif kind in ("tee", "plate"):
        colours = [part.strip() for part in re.split(r"[;,]", tags.get("tee", "")) if part.strip()]
        if colours:
            attributes["tee_set"] = ",".join(colours)
        notes = [name] if name else []
    else:
        if name or ref:
            attributes["label"] = name or ref
    if kind == "penalty_area":
        attributes["water"] = True
        stakes = STAKES.get(tags.get("golf"))
        if stakes:
            attributes["stakes"] = stakes
    if kind == "tree":
        crown = _number(tags.get("diameter_crown"))
        if crown is not None and 0 < crown <= 100:
            attributes["crown_radius_m"] = crown / 2
    notes.extend(filter(None, [_text(tags.get("note"))]))
    if notes:
        attributes["note"] = "; ".join(notes)
    attributes["view"] = "from another source"
    geometry = thing.geometry
    if BY_NAME[kind].geometry == "Polygon":
        geometry = close_to_area(geometry)
    return Candidate(kind, geometry, thing.origin, what, attributes, lasting=thing.lasting), remarks


def _hole_attributes(tags, what):
    """``(attributes, remarks, notes)`` of a golf=hole."""
    attributes, remarks, notes = {}, [], []
    name = _text(tags.get("name"))
    number = hole_number_in(tags.get("ref"))
    if number is None:
        number = hole_number_in(name)
    if number is not None:
        attributes["number"] = number
    if name and not re.fullmatch(r"(?:hole|h)?\W*\d{1,2}\W*", name, re.IGNORECASE):
        attributes["name"] = name
    for field, tag in (("par", "par"), ("stroke_index", "handicap")):
        limits = BY_NAME["hole"].field(field)
        text = _text(tags.get(tag))
        value = _number(text)
        if value is not None and value == int(value) and limits.low <= value <= limits.high:
            attributes[field] = int(value)
        elif text:
            remark = say(
                "{thing}: {tag} “{value}” is not from {low} to {high} and was not taken.",
                thing=what,
                tag=tag,
                value=text,
                low=limits.low,
                high=limits.high,
            )
            remarks.append(remark)
        else:
            remarks.append(say("{thing}: the map gives no {tag}.", thing=what, tag=tag))
    if _text(tags.get("description")):
        attributes["description"] = _text(tags["description"])
    length = _text(tags.get("dist"))
    if length:
        # Metres unless it says yards: OpenStreetMap wiki, page Tag:golf=hole.
        unit = "" if re.search(r"[a-z]", length, re.IGNORECASE) else " m"
        notes.append(say("OpenStreetMap gives its length as {length}", length=f"{length}{unit}"))
    return attributes, remarks, notes


def _on_the_course(ground, lines, outlines, to_crs):
    """``(the things of ground that lie on the course, remarks)``.

    On the course means within its outline or within ``_CLOSE_TO_PLAY_YD`` of a line of play.
    """
    from shapely.ops import unary_union
    from shapely.prepared import prep

    from ..measure.units import YARD
    from ..model.geometry import map_points

    if not ground:
        return [], []
    areas = [close_to_area(thing.geometry) for thing in outlines]
    areas = [area.buffer(0) for area in areas if area is not None and "Polygon" in area.geom_type]
    if not lines and not areas:
        text = say(
            "{count} areas of water or trees were passed over: without a hole or the outline of the course "
            "in the same file nothing tells which of them lie on the course.",
            count=len(ground),
        )
        return [], [text]
    to_plane = plane_around(lines + areas, to_crs)
    near = [line.buffer(_CLOSE_TO_PLAY_YD * YARD) for line in map_points(lines, to_plane)]
    zone = prep(unary_union(near + [area.buffer(0) for area in map_points(areas, to_plane)]))
    geometries = [close_to_area(thing.geometry) for _, thing in ground]
    taken = [
        item
        for item, geometry in zip(ground, map_points(geometries, to_plane))
        if zone.intersects(geometry) and not zone.touches(geometry)
    ]
    return taken, []


def _text(value):
    return str(value).strip() if value is not None else ""


def _number(text):
    """The number a tag starts with (``12 m`` -> 12.0), None if it is none."""
    match = re.match(r"^\s*(\d+(?:\.\d+)?)\s*(?:m)?\s*$", text or "")
    return float(match.group(1)) if match else None


def _identity(tags):
    """``way/123`` from whichever field of an export keeps the id, None if none does."""
    for name in ("@id", "full_id", "id", "osm_id"):
        match = _ID.match(str(tags.get(name, "")))
        if match:
            return f"{_TYPES[match.group(1)[0].lower()]}/{match.group(2)}"
    number, kind = str(tags.get("osm_id", "")), str(tags.get("osm_type", tags.get("@type", ""))).lower()
    number = number or str(tags.get("@id", ""))
    if number.isdigit() and kind[:1] in _TYPES:
        return f"{_TYPES[kind[0]]}/{number}"
    return None


def _things_of_file(path, mover, progress):
    """The things of an ``.osm`` or ``.osm.pbf`` file, read in one pass whatever its size."""
    from osgeo import gdal

    if gdal.GetDriverByName("OSM") is None:
        raise YardwrightError(
            say("This QGIS was built without GDAL's OpenStreetMap driver."),
            say("Export the features as GeoJSON (overpass-turbo or QGIS elsewhere) and bring that in."),
        )
    settings = os.path.join(os.path.dirname(os.path.dirname(__file__)), "resources", "osmconf.ini")
    # An open option, not a configuration option: nothing of GDAL's state outlives this call.
    options = [f"CONFIG_FILE={settings}"]
    gdal.PushErrorHandler("CPLQuietErrorHandler")
    try:
        gdal.ErrorReset()
        return _read_with_gdal(gdal, path, options, mover, progress)
    except RuntimeError as error:
        # Only where the program around us switched GDAL's exceptions on.
        raise _unreadable(path, str(error)) from error
    finally:
        gdal.PopErrorHandler()


def _read_with_gdal(gdal, path, options, mover, progress):
    source = gdal.OpenEx(path, gdal.OF_VECTOR, allowed_drivers=["OSM"], open_options=options)
    if source is None:
        raise _unreadable(path, gdal.GetLastErrorMsg())
    things = []
    while True:
        feature, layer, done = source.GetNextFeature(include_layer=True, include_pct=True)
        if feature is None:
            break
        tags = tags_of_hstore(feature.GetField("all_tags"))
        if not _may_lie_on_a_course(tags):
            continue
        geometry = feature.GetGeometryRef()
        moved = mover(bytes(geometry.ExportToIsoWkb())) if geometry is not None else None
        things.append(Thing(tags, moved, _osm_origin(feature, layer.GetName()), True))
        if progress is not None and progress(done, 1.0) is False:
            break
    # Where a file is broken, the driver says so only in its last error and ends as if all had been read.
    if gdal.GetLastErrorType() >= gdal.CE_Failure:
        raise _unreadable(path, gdal.GetLastErrorMsg())
    return things


def _may_lie_on_a_course(tags):
    """Whether a thing is worth keeping at all: most of a map is roads and houses."""
    return (
        "golf" in tags
        or "waterway" in tags
        or tags.get("leisure") == "golf_course"
        or tags.get("boundary") == "out_of_bounds"
        or tags.get("natural") in ("water", "wood", "tree")
        or tags.get("landuse") == "forest"
    )


def _unreadable(path, detail):
    file, reason = os.path.basename(path), detail.strip().rstrip(".")
    return YardwrightError(
        say("“{file}” cannot be read as an OpenStreetMap file ({reason}).", file=file, reason=reason)
        if detail
        else say("“{file}” cannot be read as an OpenStreetMap file.", file=file),
        say("Download it again, or choose another file (.osm, .osm.pbf or GeoJSON)."),
    )


def _osm_origin(feature, layer):
    if layer == "points":
        return f"osm:node/{feature.GetField('osm_id')}"
    if layer == "lines":
        return f"osm:way/{feature.GetField('osm_id')}"
    if layer == "multipolygons" and feature.GetField("osm_way_id"):
        return f"osm:way/{feature.GetField('osm_way_id')}"
    return f"osm:relation/{feature.GetField('osm_id')}"


def _read_json(path):
    try:
        with open(path, encoding="utf-8-sig") as file:
            return json.load(file)
    except (OSError, ValueError) as error:
        raise YardwrightError(
            say("“{file}” cannot be read as GeoJSON ({reason}).", file=os.path.basename(path), reason=error),
            say("Export it again, or choose another file."),
        ) from error


def _features_of(document):
    """The features of a GeoJSON document, those that are none dropped."""
    if not isinstance(document, dict):
        return []
    features = document.get("features") if document.get("type") == "FeatureCollection" else [document]
    return [f for f in features or [] if isinstance(f, dict) and f.get("type") == "Feature"]


def _tags_of_properties(properties):
    """Tags of an export: the properties themselves, or an object or text of them under ``tags``."""
    if not isinstance(properties, dict):
        return {}
    tags = {name: value for name, value in properties.items() if name != "tags"}
    inner = properties.get("tags")
    if isinstance(inner, str):
        try:
            inner = json.loads(inner)
        except ValueError:
            inner = tags_of_hstore(inner)
    if isinstance(inner, dict):
        tags.update(inner)
    return {
        name: str(value)
        for name, value in tags.items()
        if value is not None and not isinstance(value, (dict, list))
    }


def _things_of_geojson(path, mover):
    """The things of a GeoJSON export; always longitude and latitude on WGS 84 (RFC 7946, section 4)."""
    from shapely.errors import ShapelyError
    from shapely.geometry import shape

    document = _read_json(path)
    if isinstance(document, dict) and not _is_wgs84(document.get("crs")):
        raise YardwrightError(
            say(
                "“{file}” is not in longitude and latitude, as OpenStreetMap always is.",
                file=os.path.basename(path),
            ),
            say("Give the KIND of its features to bring it in as a plain vector file."),
        )
    features = _features_of(document)
    if not features:
        raise YardwrightError(
            say("“{file}” holds no GeoJSON features.", file=os.path.basename(path)),
            say("Export it again, or choose another file."),
        )
    things = []
    for position, feature in enumerate(features, start=1):
        tags = _tags_of_properties(feature.get("properties"))
        identity = _identity(tags) or _identity({"id": feature.get("id", "")})
        origin = f"osm:{identity}" if identity else f"{os.path.basename(path)}/{position}"
        try:
            moved = mover(shape(feature["geometry"]).wkb) if feature.get("geometry") else None
        except (ShapelyError, ValueError, TypeError, KeyError, AttributeError, IndexError):
            # Coordinates that are no coordinates: reported further on as a thing without geometry.
            moved = None
        things.append(Thing(tags, moved, origin, bool(identity)))
    return things


def _is_wgs84(crs):
    if not crs:
        return True
    return bool(re.search(r"CRS84|EPSG:+4326", json.dumps(crs)))
