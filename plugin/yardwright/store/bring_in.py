"""The one way into the course file for features from outside: candidates, checks, writing, report."""

from collections import Counter
from dataclasses import dataclass, field, replace
from types import MappingProxyType
from typing import NamedTuple

from ..model.kinds import BY_NAME, FEATURE_KINDS
from ..model.words import said, say, to_say

CLOSED_WITHIN_M = 1.0
"""A line whose ends are no further apart is taken as a closed outline (a walked track never meets itself)."""
SAME_WITHIN_M = 0.01
"""Two outlines nowhere further apart are one and the same."""
_OUTSIDE_DEGREES = 3.0
"""How far past the area its CRS was made for a feature is still taken; a course can straddle two zones."""


@dataclass(frozen=True)
class Candidate:
    """Something found in a source that may go into the course.

    kind: the layer. geometry: shapely, any type, in the course's CRS; None or empty where the source had
    none. origin: goes into the field of that name; with ``lasting`` it names the same thing at every
    import (an OpenStreetMap id), so that a second one is left out even if its outline has changed since.
    what: how the report calls it. attributes: values by field name (``number``, ``label``, ``view``...),
    without ``hole`` and ``holes``. holes: the numbers the source gives it to, empty to judge by its place.
    """

    kind: str
    geometry: object
    origin: str
    what: str
    attributes: dict = field(default_factory=dict)
    holes: tuple = ()
    lasting: bool = False


class LeftOut(NamedTuple):
    """What did not go into the course, and why."""

    what: str
    why: str


class Found(NamedTuple):
    """What a source holds: candidates in order, what was left out already, and remarks (texts)."""

    candidates: tuple
    left_out: tuple = ()
    remarks: tuple = ()


@dataclass(frozen=True)
class ImportReport:
    """How an import went. counts: features written, by layer; only layers with any."""

    counts: MappingProxyType
    left_out: tuple = ()
    remarks: tuple = ()

    @property
    def total(self):
        """How many features were written."""
        return sum(self.counts.values())

    def lines(self):
        """The report as lines of text: what came in, what did not and why, remarks."""
        lines = [
            say("{layer}: {count} brought in", layer=said(BY_NAME[kind].title), count=count)
            for kind, count in self.counts.items()
        ]
        if not lines:
            lines = [say("Nothing new was brought in.")]
        reasons = {}
        for what, why in self.left_out:
            reasons.setdefault(why, []).append(what)
        for why, things in reasons.items():
            lines.append(
                say(
                    "Left out ({count}), {why}: {things}",
                    count=len(things),
                    why=why,
                    things=", ".join(things),
                )
            )
        lines.extend(say("Remark: {remark}", remark=remark) for remark in self.remarks)
        return lines


@dataclass(frozen=True)
class _Piece:
    """A candidate whose geometry is one sound part of the layer's type; flat: the same in metres."""

    candidate: Candidate
    geometry: object
    flat: object
    holes: tuple = ()


def bring_in(course_layers, found, progress=None):
    """Check what was ``found``, write it into the course, all or nothing, and report.

    course_layers: an open ``CourseLayers``. progress: ``progress(done, total)``, False to stop.

    Returns an ``ImportReport``, or None when stopped: nothing is written then. Raises YardwrightError when
    the course cannot be written to.
    """
    from .reading import read_course
    from .writing import add_features

    tell = progress or (lambda done, total: True)
    course = read_course(course_layers)
    report = _Notes(list(found.left_out), list(found.remarks))
    placed = _inside_crs_area(found.candidates, course_layers.crs, report)
    if tell(1, 3) is False:
        return None
    pieces = _new_pieces(placed, course, course_layers, report) if placed else []
    if tell(2, 3) is False:
        return None
    add_features(course_layers, [_feature(piece) for piece in pieces])
    tell(3, 3)
    counted = Counter(piece.candidate.kind for piece in pieces)
    counts = {kind: counted[kind] for kind in FEATURE_KINDS if counted[kind]}
    return ImportReport(MappingProxyType(counts), tuple(report.left_out), tuple(report.remarks))


def _new_pieces(candidates, course, course_layers, report):
    """What of the candidates is to be written: sound, not there yet, given to holes."""
    drawn = [hole for hole in course.holes if hole.line is not None]
    around = [candidate.geometry for candidate in candidates] + [hole.line for hole in drawn]
    to_plane = plane_around(around, course_layers.crs)
    ground = _Ground(
        {hole.number: line for hole, line in zip(drawn, _flat([hole.line for hole in drawn], to_plane))},
        list(zip(course.features, _flat([feature.geometry for feature in course.features], to_plane))),
    )
    pieces = _sound_pieces(candidates, to_plane, report)
    pieces = _without_doubles(pieces, ground, _origins(course_layers), report)
    pieces = _turn_to_green(pieces, ground, report)
    pieces = _one_line_a_hole(pieces, ground, report)
    for piece in pieces:
        if piece.candidate.kind == "hole":
            _tell_contradictions(piece, course.hole(piece.candidate.attributes["number"]), report)
    pieces = _given_to_holes(pieces, ground, report)
    return _known_tee_sets(pieces, course.tee_sets)


def to_course_crs(from_crs, to_crs, transform_context=None):
    """A function from WKB (bytes) or QgsGeometry in ``from_crs`` to shapely in ``to_crs``.

    Curves become segments, heights and measures are dropped. The function returns None for what is no
    geometry and leaves coordinates that cannot be transformed infinite (they are reported later).
    """
    from qgis.core import (
        QgsCoordinateReferenceSystem,
        QgsCoordinateTransform,
        QgsCoordinateTransformContext,
        QgsCsException,
        QgsGeometry,
        QgsWkbTypes,
    )
    from shapely import wkb
    from shapely.errors import ShapelyError

    source = QgsCoordinateReferenceSystem(from_crs)
    transform = QgsCoordinateTransform(source, to_crs, transform_context or QgsCoordinateTransformContext())

    def move(shape):
        if isinstance(shape, QgsGeometry):
            geometry = QgsGeometry(shape)
        else:
            geometry = QgsGeometry()
            geometry.fromWkb(shape)
        if geometry.isNull() or geometry.isEmpty():
            return None
        if QgsWkbTypes.isCurvedType(geometry.wkbType()):
            geometry = QgsGeometry(geometry.constGet().segmentize())
        geometry.get().dropZValue()
        geometry.get().dropMValue()
        try:
            geometry.transform(transform)
        except QgsCsException:
            return _nowhere()
        try:
            return wkb.loads(bytes(geometry.asWkb()))
        except (ShapelyError, ValueError):
            return None

    return move


def has_extent(geometry):
    """Whether there is a geometry at all."""
    return geometry is not None and not geometry.is_empty


def _nowhere():
    """A point at infinity: stands for a place the course's CRS cannot hold."""
    from shapely.geometry import Point

    return Point(float("inf"), float("inf"))


def plane_around(geometries, crs):
    """The function from course coordinates, (n, 2), to metres in a plane whose middle is theirs.

    crs: the course's QgsCoordinateReferenceSystem.
    """
    from ..measure.frame import frame_about
    from ..model.geometry import bounds_array
    from .reading import crs_text

    text = crs_text(crs)
    return frame_about(bounds_array(geometries).reshape(-1, 2), text).to_frame(text)


def _degrees(points, crs):
    """Course coordinates, (n, 2), as longitude and latitude; infinite where they have none."""
    import numpy as np
    from pyproj import Transformer

    from ..measure.threads import keep_proj_alive
    from .reading import crs_text

    keep_proj_alive()
    transformer = Transformer.from_crs(crs_text(crs), "EPSG:4326", always_xy=True)
    return np.column_stack(transformer.transform(points[:, 0].tolist(), points[:, 1].tolist()))


class _Notes:
    """What the report gathers on the way."""

    def __init__(self, left_out, remarks):
        self.left_out = left_out
        self.remarks = remarks

    def leave_out(self, what, why):
        self.left_out.append(LeftOut(what, why))

    def remark(self, text):
        self.remarks.append(text)


class _Ground:
    """The course as it lies in the plane, growing while the import goes on.

    lines: ``{hole number: line}``, features: ``[(model Feature, flat geometry)]``.
    """

    def __init__(self, lines, features):
        self.lines = lines
        self.features = features

    def of_kind(self, kind):
        return [(feature, flat) for feature, flat in self.features if feature.kind == kind]


def _flat(geometries, to_plane):
    from ..model.geometry import map_points

    return map_points(geometries, to_plane)


def _inside_crs_area(candidates, crs, report):
    """Those candidates that have a geometry, of finite coordinates, where the course's CRS is good for."""
    import numpy as np

    from ..model.geometry import bounds_array, coordinates

    sound = []
    for candidate in candidates:
        geometry = candidate.geometry
        if not has_extent(geometry):
            report.leave_out(candidate.what, say("it has no geometry"))
        elif np.isnan(coordinates(geometry)).any():
            report.leave_out(candidate.what, say("a coordinate of it is not a number"))
        elif not np.isfinite(coordinates(geometry)).all():
            report.leave_out(candidate.what, _off_the_map(crs))
        else:
            sound.append(candidate)
    if not sound:
        return []
    bounds = bounds_array([candidate.geometry for candidate in sound])
    inside = _within_bounds(_degrees(bounds[:, :2], crs), crs) & _within_bounds(
        _degrees(bounds[:, 2:], crs), crs
    )
    for candidate, is_inside in zip(sound, inside):
        if not is_inside:
            report.leave_out(candidate.what, _off_the_map(crs))
    return [candidate for candidate, is_inside in zip(sound, inside) if is_inside]


def _off_the_map(crs):
    return say(
        "it lies outside the area the course’s coordinate system ({crs}) is made for", crs=crs.authid()
    )


def _within_bounds(degrees, crs):
    """Which of the (n, 2) longitudes and latitudes the CRS is good for; all if it does not say."""
    import numpy as np

    finite = np.isfinite(degrees).all(axis=1)
    area = crs.bounds()
    if area.isNull():
        return finite
    west, east = area.xMinimum(), area.xMaximum()
    # An area that crosses the antimeridian has its west east of its east.
    half = ((east - west) % 360.0 or 360.0) / 2
    with np.errstate(invalid="ignore"):
        from_middle = (degrees[:, 0] - (west + half) + 180.0) % 360.0 - 180.0
        return (
            finite
            & (np.abs(from_middle) <= half + _OUTSIDE_DEGREES)
            & (degrees[:, 1] >= area.yMinimum() - _OUTSIDE_DEGREES)
            & (degrees[:, 1] <= area.yMaximum() + _OUTSIDE_DEGREES)
        )


def close_to_area(geometry):
    """A line whose last point is its first as the polygon it encloses; anything else as it is.

    >>> from shapely.geometry import LineString
    >>> close_to_area(LineString([(0, 0), (1, 0), (1, 1), (0, 0)])).area
    0.5
    """
    from shapely.geometry import Polygon

    if geometry is None or geometry.geom_type not in ("LineString", "LinearRing"):
        return geometry
    points = list(geometry.coords)
    if len(points) >= 4 and points[0] == points[-1]:
        return Polygon(points)
    return geometry


def _sound_pieces(candidates, to_plane, report):
    """Each candidate as one or more pieces of its layer's type, mended where they had to be."""
    pieces = []
    flats = _flat([candidate.geometry for candidate in candidates], to_plane)
    for candidate, flat in zip(candidates, flats):
        parts, why = _parts(
            candidate.geometry, flat, BY_NAME[candidate.kind].geometry, candidate.what, report
        )
        if not parts:
            report.leave_out(candidate.what, why)
        for position, geometry in enumerate(parts, start=1):
            origin = candidate.origin if position == 1 else f"{candidate.origin}#{position}"
            what = candidate.what
            if len(parts) > 1:
                what = say("{thing}, part {number}", thing=what, number=position)
            pieces.append(
                _Piece(replace(candidate, origin=origin, what=what), geometry, None, candidate.holes)
            )
    flats = _flat([piece.geometry for piece in pieces], to_plane)
    return [replace(piece, flat=flat) for piece, flat in zip(pieces, flats)]


def _parts(geometry, flat, wanted, what, report):
    """``(sound parts of the wanted type, why there are none)``."""
    singles = list(zip(_singles(geometry), _singles(flat)))
    if wanted == "Polygon":
        singles = [
            (_closed(single, flat_single, what, report), flat_single) for single, flat_single in singles
        ]
    parts, strange, unclosed = [], 0, 0
    for single, _ in singles:
        if single.geom_type == "LinearRing":
            single = _as_line(single)
        if single.geom_type != wanted:
            strange += 1
            unclosed += wanted == "Polygon" and single.geom_type == "LineString"
        elif wanted == "Polygon":
            parts.extend(_mended(single, what, report))
        elif wanted == "LineString":
            parts.extend(_mended_line(single))
        else:
            parts.append(single)
    if parts:
        if strange:
            text = say(
                "{thing}: {count} of its parts are no {shape} and were left out.",
                thing=what,
                count=strange,
                shape=said(_PLAIN[wanted]),
            )
            report.remark(text)
        return parts, ""
    if unclosed:
        return [], say("its outline is not closed")
    if strange:
        return [], say(
            "it is {shape}, and its layer holds {shapes}",
            shape=shape_called(geometry, say("a mixture")),
            shapes=said(_PLAIN_MANY[wanted]),
        )
    return [], say("its geometry has no extent")


ONE_SHAPE = {"Polygon": to_say("an area"), "LineString": to_say("a line"), "Point": to_say("a point")}
"""What people call a geometry of each type."""
_PLAIN = {"Polygon": to_say("area"), "LineString": to_say("line"), "Point": to_say("point")}
_PLAIN_MANY = {"Polygon": to_say("areas"), "LineString": to_say("lines"), "Point": to_say("points")}


def shape_called(geometry, otherwise):
    """What people call a shapely geometry, in the user's language; ``otherwise`` one of several types."""
    plain = geometry.geom_type.replace("Multi", "").replace("LinearRing", "LineString")
    return said(ONE_SHAPE[plain]) if plain in ONE_SHAPE else otherwise


def _singles(geometry):
    """The single geometries a geometry is made of, however deep."""
    parts = getattr(geometry, "geoms", None)
    if parts is None:
        return [geometry] if not geometry.is_empty else []
    return [single for part in parts for single in _singles(part)]


def _as_line(ring):
    from shapely.geometry import LineString

    return LineString(ring.coords)


def _closed(single, flat, what, report):
    """A line that is or nearly is closed as a polygon, anything else as it is."""
    from math import dist

    from shapely.geometry import Polygon

    area = close_to_area(single)
    if area.geom_type != "LineString" or len(single.coords) < 3:
        return area
    gap = dist(flat.coords[0], flat.coords[-1])
    if gap > CLOSED_WITHIN_M or flat.length < 3 * gap:
        return single
    text = say(
        "{thing}: the ends of its outline were {gap} m apart and have been joined.",
        thing=what,
        gap=f"{gap:.2f}",
    )
    report.remark(text)
    return Polygon(single.coords)


def _mended(polygon, what, report):
    """The valid polygons with area that a polygon amounts to."""
    from shapely.validation import make_valid

    if polygon.is_valid and polygon.area > 0:
        return [polygon]
    mended = [
        single
        for single in _singles(make_valid(polygon))
        if single.geom_type == "Polygon" and single.area > 0
    ]
    if mended:
        if len(mended) == 1:
            text = say("{thing}: its outline crossed itself; it was mended.", thing=what)
        else:
            text = say(
                "{thing}: its outline crossed itself; it was mended and became {count} areas.",
                thing=what,
                count=len(mended),
            )
        report.remark(text)
    return mended


def _mended_line(line):
    """The line without points that stand twice; nothing when no length is left."""
    from shapely.geometry import LineString

    points = list(line.coords)
    kept = points[:1] + [point for before, point in zip(points, points[1:]) if point != before]
    return [LineString(kept)] if len(kept) > 1 else []


def _origins(course_layers):
    """The texts in the field ``origin`` of every layer of features."""
    from qgis.core import QgsFeatureRequest

    origins = set()
    for kind in FEATURE_KINDS:
        layer = course_layers.layers[kind]
        request = QgsFeatureRequest()
        request.setSubsetOfAttributes(["origin"], layer.fields())
        request.setFlags(QgsFeatureRequest.Flag.NoGeometry)
        for row in layer.getFeatures(request):
            if row["origin"]:
                origins.add((kind, str(row["origin"])))
    return origins


def _without_doubles(pieces, ground, origins, report):
    """The pieces that the course does not hold yet and that do not repeat one before them."""
    import numpy as np

    from ..model.geometry import bounds_array

    known = {}
    for kind in {piece.candidate.kind for piece in pieces}:
        if kind == "hole":
            known[kind] = [(line, None) for line in ground.lines.values()]
        else:
            known[kind] = [(flat, feature.get("tee_set")) for feature, flat in ground.of_kind(kind)]
    bounds = {kind: bounds_array([flat for flat, _ in items]) for kind, items in known.items()}
    fresh = []
    for piece in pieces:
        candidate, kind = piece.candidate, piece.candidate.kind
        mark = (kind, candidate.origin)
        tee_set = candidate.attributes.get("tee_set")
        box = np.array(piece.flat.bounds)
        close = np.flatnonzero((np.abs(bounds[kind] - box) <= SAME_WITHIN_M).all(axis=1))
        same = any(
            known[kind][index][0].hausdorff_distance(piece.flat) <= SAME_WITHIN_M
            and (kind not in ("tee", "plate") or _same_set(known[kind][index][1], tee_set))
            for index in close
        )
        if same or (candidate.lasting and mark in origins):
            report.leave_out(candidate.what, say("the course already has it"))
            continue
        if candidate.lasting:
            origins.add(mark)
        known[kind].append((piece.flat, tee_set))
        bounds[kind] = np.vstack([bounds[kind], box])
        fresh.append(piece)
    return fresh


def _same_set(one, other):
    """Whether two tee set names may mean the same; a tee that names none may be any."""
    return not one or not other or one.casefold() == other.casefold()


def _turn_to_green(pieces, ground, report):
    """Lines of play drawn from green to tee turned round: they start in a green and end in none."""
    from shapely.geometry import LineString

    from ..measure.whose import line_end, line_start

    greens = [flat for _, flat in ground.of_kind("green")]
    greens += [piece.flat for piece in pieces if piece.candidate.kind == "green"]
    turned = []
    for piece in pieces:
        if piece.candidate.kind == "hole":
            starts = any(green.distance(line_start(piece.flat)) == 0.0 for green in greens)
            ends = any(green.distance(line_end(piece.flat)) == 0.0 for green in greens)
            if starts and not ends:
                text = say(
                    "{thing}: it was drawn from green to tee and has been turned round.",
                    thing=piece.candidate.what,
                )
                report.remark(text)
                piece = replace(
                    piece,
                    geometry=LineString(list(piece.geometry.coords)[::-1]),
                    flat=LineString(list(piece.flat.coords)[::-1]),
                )
        turned.append(piece)
    return turned


def _one_line_a_hole(pieces, ground, report):
    """The pieces with one line for each hole number, and each line with a number; lines go to ``ground``."""
    lines = [piece for piece in pieces if piece.candidate.kind == "hole"]
    longest = {}
    for piece in lines:
        number = piece.candidate.attributes.get("number")
        if number is not None and (number not in longest or piece.flat.length > longest[number].flat.length):
            longest[number] = piece
    kept = []
    for piece in lines:
        number, what = piece.candidate.attributes.get("number"), piece.candidate.what
        if number is None:
            report.leave_out(what, say("no hole number can be read from it"))
        elif number in ground.lines:
            report.leave_out(what, say("hole {number} already has a line", number=number))
        elif longest[number] is not piece:
            why = say(
                "hole {number} stands twice in the source and the longest line was taken; "
                "limit the import with EXTENT if these are two courses",
                number=number,
            )
            report.leave_out(what, why)
        else:
            kept.append(piece)
            if piece.flat.coords[0] == piece.flat.coords[-1]:
                report.remark(say("{thing}: its line ends where it starts.", thing=what))
            elif not piece.flat.is_simple:
                report.remark(say("{thing}: its line crosses itself.", thing=what))
    kept.sort(key=lambda piece: piece.candidate.attributes["number"])
    ground.lines.update({piece.candidate.attributes["number"]: piece.flat for piece in kept})
    return kept + [piece for piece in pieces if piece.candidate.kind != "hole"]


def _given_to_holes(pieces, ground, report):
    """The pieces with the numbers of the holes they belong to."""
    from ..measure.whose import HoleHere, assign, greens_of_holes

    fresh = [piece for piece in pieces if piece.candidate.kind == "green"]
    greens = [flat for _, flat in ground.of_kind("green")] + [piece.flat for piece in fresh]
    named = [feature.holes for feature, _ in ground.of_kind("green")] + [piece.holes for piece in fresh]
    green_of = {number: index for index, numbers in enumerate(named) for number in numbers}
    rest = [(number, line) for number, line in ground.lines.items() if number not in green_of]
    green_of.update(greens_of_holes(rest, greens))
    holes = [
        HoleHere(number, line, greens[green_of[number]] if number in green_of else None)
        for number, line in sorted(ground.lines.items())
    ]
    first_fresh = len(greens) - len(fresh)
    by_geometry = {}
    for number, index in sorted(green_of.items()):
        by_geometry.setdefault(index - first_fresh, []).append(number)
    green_numbers = {id(piece): tuple(by_geometry.get(index, ())) for index, piece in enumerate(fresh)}
    given, alone = [], Counter()
    for piece in pieces:
        kind = piece.candidate.kind
        if not piece.holes:
            numbers = green_numbers[id(piece)] if kind == "green" else assign(kind, piece.flat, holes)
            piece = replace(piece, holes=numbers)
            if not numbers and _belongs(kind):
                alone[kind] += 1
        given.append(piece)
    for kind, count in alone.items():
        text = say(
            "{layer}: {count} without a hole number, because no hole is near enough or more than three are.",
            layer=said(BY_NAME[kind].title),
            count=count,
        )
        report.remark(text)
    return given


def _field_names(kind):
    return tuple(column.name for column in BY_NAME[kind].fields)


def _belongs(kind):
    """Whether the layer has a field for the holes a feature belongs to."""
    return "holes" in _field_names(kind) or "hole" in _field_names(kind)


def _known_tee_sets(pieces, tee_sets):
    """The pieces with the course's own spelling of a tee set that differs only in capitals."""
    known = {tee_set.name.casefold(): tee_set.name for tee_set in tee_sets}
    spelt = []
    for piece in pieces:
        name = piece.candidate.attributes.get("tee_set")
        if name and known.get(name.casefold(), name) != name:
            attributes = {**piece.candidate.attributes, "tee_set": known[name.casefold()]}
            piece = replace(piece, candidate=replace(piece.candidate, attributes=attributes))
        spelt.append(piece)
    return spelt


def _feature(piece):
    """The model Feature to be written."""
    from ..model.course import Feature

    candidate = piece.candidate
    own = dict(candidate.attributes)
    label, seen_in, view = own.pop("label", ""), own.pop("seen_in", ""), own.pop("view", "clear")
    own["origin"] = candidate.origin
    return Feature(
        kind=candidate.kind,
        fid=None,
        geometry=piece.geometry,
        holes=piece.holes,
        label=label,
        seen_in=seen_in,
        view=view,
        attributes=MappingProxyType(own),
    )


def _tell_contradictions(piece, row, report):
    """Remark where the source says one thing of a hole and the row it has without a line (or None) another.

    The row takes the line in and keeps what it says.
    """
    for name, value in piece.candidate.attributes.items():
        has = getattr(row, name, None)
        if name not in ("number", "seen_in", "view") and has not in (None, "") and has != value:
            text = say(
                "{thing}: {field} is {value} there and {own} in the course, which stays.",
                thing=piece.candidate.what,
                field=name,
                value=value,
                own=has,
            )
            report.remark(text)
