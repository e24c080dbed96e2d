"""From a tee to everything that matters on the way: reach, clear, enter, leave, side, aside, carries."""

import math
from dataclasses import dataclass
from functools import cached_property

import numpy as np
from shapely.geometry import Polygon
from shapely.ops import unary_union

from ..model.geometry import (
    array_of,
    bounds_array,
    contained,
    coordinates,
    distances,
    intersections,
    nearest_to,
    outlines,
)
from ..model.kinds import BY_NAME, LISTED
from .accuracy import doubt, plus_minus
from .line import as_point
from .rows import DistanceRow, told
from .units import YARD

_ROUND = 64
"""Straight pieces in a quarter circle: the corridor's round end is true to 5 mm in 60 yd."""
_CORNERS = 128
"""Corners of a tree's crown, half their sagitta outside the circle: true to a millimetre in 6 m. Distances of
a whole crown are worked out from its circle."""
_DIMENSION = {"Point": 0, "LineString": 1, "Polygon": 2}


class Ground:
    """The listed features of a hole: ``features``, the ``shapes`` they cover and their ``bounds``."""

    def __init__(self, played):
        self.features = [feature for feature in played.features if feature.kind in LISTED]
        self.shapes = array_of([extent_of(feature) for feature in self.features])
        self.bounds = bounds_array(self.shapes)
        self._fairways = {}

    def fairway(self, positions):
        """The fairways at these positions as one shape, whole; kept, for most tees of a hole ask the same."""
        key = tuple(positions)
        if key not in self._fairways:
            self._fairways[key] = _joined([self.shapes[position] for position in key])
        return self._fairways[key]


def extent_of(feature):
    """What a feature covers: a tree its crown where the radius is known, anything else its geometry."""
    radius = crown_radius(feature)
    if not radius:
        return feature.geometry
    half_step = np.pi / _CORNERS
    turns = 2.0 * half_step * np.arange(_CORNERS)
    corners = 2.0 / (1.0 + np.cos(half_step)) * np.column_stack([np.cos(turns), np.sin(turns)])
    return Polygon(coordinates(feature.geometry)[0] + radius * corners)


def crown_radius(feature):
    """The radius of a tree's crown in metres; 0.0 for anything else and where it is not known."""
    return (feature.get("crown_radius_m") or 0.0) if feature.kind == "tree" else 0.0


def corridor_of(line, half_width):
    """The ground either side of a line of play: square at the tee, round about the green's end."""
    flat = line.shape.buffer(half_width, _ROUND, cap_style=2)
    return flat.union(as_point(line.points[-1]).buffer(half_width, _ROUND))


def _dimension(geometry):
    return _DIMENSION[geometry.geom_type.replace("Multi", "")]


def of_dimension(geometry, dimension):
    """The parts of a geometry with that dimension (0 points, 1 lines, 2 areas), joined; None if none."""
    parts = [
        p for p in getattr(geometry, "geoms", [geometry]) if not p.is_empty and _dimension(p) == dimension
    ]
    return _joined(parts) if parts else None


def _joined(shapes):
    return shapes[0] if len(shapes) == 1 else unary_union(shapes)


@dataclass(frozen=True)
class Part:
    """What counts of a feature from one tee: its ``shape``, cut to the corridor or whole, and a remark.

    position: its place on the hole's Ground. crown: the radius of a whole crown in metres, 0.0 for all else.
    """

    position: int
    feature: object
    shape: object
    remark: str
    crown: float = 0.0


@dataclass(frozen=True)
class TeeView:
    """One tee's line of play with what lies in its corridor. ``ground``: the hole's Ground."""

    played: object
    tee: object
    settings: object
    ground: Ground

    @cached_property
    def corridor(self):
        """The corridor of this tee's line, a polygon."""
        return corridor_of(self.tee.line, self.settings.corridor_yd * YARD)

    @cached_property
    def parts(self):
        """A Part for every listed feature that counts from this tee."""
        parts = []
        for position, (feature, inside) in enumerate(zip(self.ground.features, self._cut())):
            if inside is not None:
                whole = inside is self.ground.shapes[position]
                parts.append(
                    Part(position, feature, inside, feature.remark, crown_radius(feature) if whole else 0.0)
                )
            elif self.played.number in feature.holes:
                remark = "given to this hole but wholly outside its corridor"
                remark = told(feature.remark, remark)
                parts.append(
                    Part(position, feature, self.ground.shapes[position], remark, crown_radius(feature))
                )
        return parts

    def _cut(self):
        """Of each listed shape the part in the corridor, of the same dimension; None where there is none."""
        shapes, cut = self.ground.shapes, [None] * len(self.ground.shapes)
        if not len(shapes):
            return cut
        low_x, low_y, high_x, high_y = self.ground.bounds.T
        own = self.corridor.bounds
        meets = (low_x <= own[2]) & (high_x >= own[0]) & (low_y <= own[3]) & (high_y >= own[1])
        near = np.flatnonzero(meets)
        inside = contained(shapes[near], self.corridor)
        for position in near[inside].tolist():
            cut[position] = shapes[position]
        across = near[~inside]
        for position, shared in zip(across.tolist(), intersections(shapes[across], self.corridor)):
            cut[position] = of_dimension(shared, _dimension(shapes[position]))
        return cut

    @cached_property
    def figures(self):
        """The Figures of all parts."""
        return _figures(self)

    @cached_property
    def fairways(self):
        """The places among the parts of all fairways."""
        return [place for place, part in enumerate(self.parts) if part.feature.kind == "fairway"]

    @cached_property
    def fairway(self):
        """All fairway that counts from this tee as one shape; None where there is none."""
        shapes = [self.parts[place].shape for place in self.fairways]
        return _joined(shapes) if shapes else None


@dataclass(frozen=True)
class Figures:
    """Arrays over the parts of a TeeView, metres.

    Straight distances from the tee and from the line; least and greatest station, and the point of the
    greatest (n, 2); the stations at which the line first and last meets the part, nan where it does not.
    """

    reach: object
    clear: object
    aside: object
    near: object
    far: object
    farthest: object
    enter: object
    leave: object


def distance_rows(view, images):
    """A row for the green, then one for each feature that counts from this tee, nearest first."""
    rows = [] if view.played.green is None else [_green_row(view, images)]
    features = _feature_rows(view, images)
    features.sort(key=lambda row: (round(row.station_near, 4), row.kind, row.feature_id))
    return rows + features


def _green_row(view, images):
    green, line = view.played.green, view.tee.line
    front, back = line.legs_to(0.0, green.front), line.legs_to(0.0, green.back)
    near, far = line.extent(green.geometry)
    sure = plus_minus(view.tee.feature, green.feature, images)
    return DistanceRow(
        hole=view.played.number,
        tee_set=view.tee.tee_set,
        kind="green",
        feature_id=green.feature.fid,
        label=green.feature.label,
        side="across",
        reach=front,
        clear=back,
        enter=front,
        leave=back,
        aside=0.0,
        station_near=near,
        station_far=far,
        forced_carry="no",
        middle=line.length,
        plus_minus=sure,
        remark=told(*view.played.green_remarks, doubt(sure, view.settings)),
    )


def _feature_rows(view, images):
    if not view.parts:
        return []
    line, figures = view.tee.line, view.figures
    crossed = np.isfinite(figures.enter).tolist()
    aside = np.where(crossed, 0.0, figures.aside).tolist()
    reach, clear, near, far = (a.tolist() for a in (figures.reach, figures.clear, figures.near, figures.far))
    enter, leave = figures.enter.tolist(), figures.leave.tolist()
    sides = line.sides(nearest_to(array_of([part.shape for part in view.parts]), line.shape))
    to_front = _ToFront(line, view.played.green)
    sureness = {}

    rows = []
    for place, part in enumerate(view.parts):
        feature, crossing = part.feature, None
        seen = (feature.seen_in, feature.view)
        if seen not in sureness:
            sure = plus_minus(view.tee.feature, feature, images)
            sureness[seen] = sure, doubt(sure, view.settings)
        sure, doubted = sureness[seen]
        if crossed[place]:
            crossing = enter[place], leave[place]
            short = to_front.of(line.at(crossing[1]), crossing[1])
        else:
            short = to_front.of(figures.farthest[place], far[place])
        rows.append(
            DistanceRow(
                hole=view.played.number,
                tee_set=view.tee.tee_set,
                kind=feature.kind,
                feature_id=feature.fid,
                label=feature.label,
                side="across" if crossing else sides[place],
                reach=reach[place],
                clear=clear[place],
                enter=crossing[0] if crossing else None,
                leave=crossing[1] if crossing else None,
                aside=aside[place],
                station_near=near[place],
                station_far=far[place],
                short_of_green=short,
                forced_carry="yes" if crossing and _is_forced(view, part, crossing) else "no",
                plus_minus=sure,
                remark=told(part.remark, doubted),
            )
        )
    return rows


def _figures(view):
    """All parts at once, in arrays, for a course has thousands of rows.

    A whole crown is worked out from its circle, which is exact and quick, anything else from its outline.
    """
    line, tee = view.tee.line, view.tee.reference
    shapes = array_of([part.shape for part in view.parts])
    areas = np.array([_dimension(shape) == 2 for shape in shapes])
    crowns = np.array([part.crown for part in view.parts])
    of_crowns = np.flatnonzero(crowns)
    stems = shapes.copy()
    for place in of_crowns.tolist():
        stems[place] = view.parts[place].feature.geometry
    to_stems = distances(stems, as_point(tee))
    reach = np.maximum(to_stems - crowns, 0.0)
    aside = np.maximum(distances(stems, line.shape) - crowns, 0.0)

    radius = np.zeros(len(shapes))
    if len(of_crowns):
        plain = of_crowns[_on_one_leg(line, outlines(stems[of_crowns]).points, crowns[of_crowns])]
        radius[plain] = crowns[plain]
        shapes[plain] = stems[plain]
    vertices = outlines(shapes)
    from_tee = vertices.points - tee
    clear = np.maximum.reduceat(np.hypot(from_tee[:, 0], from_tee[:, 1]), vertices.starts)
    clear[of_crowns] = to_stems[of_crowns] + crowns[of_crowns]
    near, far, farthest = line.extents(vertices)
    enter, leave = line.crossings(vertices, areas & (radius == 0.0))
    for place in np.flatnonzero(radius).tolist():
        station, r = float(far[place]), float(radius[place])
        farthest[place] += r * line.direction_at(station)
        if aside[place] == 0.0:
            half = math.sqrt(max(r * r - math.dist(coordinates(stems[place])[0], line.at(station)) ** 2, 0.0))
            enter[place], leave[place] = max(station - half, 0.0), min(station + half, line.length)
    # Outside a bend a whole wedge of ground has the turn point's station: there its nearest point counts.
    for turn in line.turns.tolist():
        level = np.flatnonzero((np.abs(far - turn) < 1e-4) & (radius == 0.0))
        if len(level):
            nearest = nearest_to(shapes[level], as_point(line.at(turn)))
            wedged = np.abs(line.stations(nearest) - turn) < 1e-4
            farthest[level[wedged]] = nearest[wedged]
    # What only touches the line, or lies on it as a point may, is met where it is nearest.
    for place in np.flatnonzero((aside < 1e-6) & np.isnan(enter)).tolist():
        touch = line.station(nearest_to(shapes[place : place + 1], line.shape)[0])
        enter[place] = leave[place] = min(max(touch, 0.0), line.length)
    return Figures(reach, clear, aside, near - radius, far + radius, farthest, enter, leave)


def _on_one_leg(line, centres, radius):
    """Whether all of each circle counts on one leg, (n,) of bool; eight places of it are looked at."""
    if not len(line.turns):
        return np.ones(len(centres), dtype=bool)
    station = line.stations(centres)
    ahead = np.array([line.direction_at(s) for s in station.tolist()])
    turns = np.arange(8) * (np.pi / 4)
    along, left = np.cos(turns), np.sin(turns)
    beside = np.column_stack([-ahead[:, 1], ahead[:, 0]])
    places = centres[:, None] + radius[:, None, None] * (
        along[:, None] * ahead[:, None, :] + left[:, None] * beside[:, None, :]
    )
    there = line.stations(places.reshape(-1, 2)).reshape(len(centres), -1)
    return (np.abs(there - (station[:, None] + radius[:, None] * along)) < 1e-6).all(axis=1)


class _ToFront:
    """How far points lie short of a green's front, for one line of play."""

    def __init__(self, line, green):
        self.line = line
        self.front = None if green is None else green.front
        self.station = None if green is None else line.station(green.front)

    def of(self, point, station):
        """Metres from a point, whose station is known, to the front; negative beyond it, None if no green.

        Straight where no bend of the line lies between, else along the line.
        """
        if self.front is None:
            return None
        if self.line.bends_between(station, self.station):
            return self.station - station
        straight = math.dist(point, self.front)
        return straight if station <= self.station else -straight


def _is_forced(view, part, crossing):
    # The hazard is taken whole: cut to the corridor, a hair of ground could stay along the corridor's margin.
    hazard = view.ground.shapes[part.position]
    return BY_NAME[part.feature.kind].hazard and not way_round(
        view.tee.line, hazard, crossing, view.corridor, view.fairway
    )


def way_round(line, hazard, crossing, corridor, fairway):
    """Whether fairway lies beside a crossing, so that a player need not carry it.

    There is a way round when one piece of fairway that the hazard does not cut runs beside the whole
    crossing, and the ground it lies on joins the ground before the crossing to that behind it within
    the corridor. (A stream right across the corridor leaves no way round even where, running slantwise,
    it has fairway on both sides at one station.)
    """
    if fairway is None:
        return False
    enter, leave = crossing
    ground = corridor.difference(hazard)
    banks = [as_point(line.at(s)) for s in (enter - 0.5, leave + 0.5) if 0.0 < s < line.length]
    open_ground = [
        piece for piece in getattr(ground, "geoms", [ground]) if all(piece.covers(bank) for bank in banks)
    ]
    clear_fairway = fairway.difference(hazard)
    for piece in getattr(clear_fairway, "geoms", [clear_fairway]):
        if piece.is_empty or not any(piece.intersects(area) for area in open_ground):
            continue
        near, far = line.extent(piece)
        if near <= enter + 0.5 and far >= leave - 0.5:
            return True
    return False
