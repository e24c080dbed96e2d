"""From a tee to everything that matters on the way: reach, clear, enter, leave, side, aside, carries."""

from dataclasses import dataclass
from functools import cached_property

import numpy as np
from shapely.geometry import LineString
from shapely.ops import unary_union
from shapely.prepared import prep

from ..model.geometry import coordinates
from ..model.kinds import BY_NAME, LISTED
from .accuracy import doubt, plus_minus
from .line import as_point
from .rows import DistanceRow
from .units import YARD

_ROUND = 64
"""Straight pieces in a quarter circle: the corridor's round end is true to 5 mm in 60 yd."""
_DIMENSION = {"Point": 0, "LineString": 1, "Polygon": 2}


class Corridor:
    """The ground either side of one tee's line of play: square at the tee, round about the green's end."""

    def __init__(self, line, half_width):
        flat = line.shape.buffer(half_width, _ROUND, cap_style=2)
        self.shape = flat.union(as_point(line.points[-1]).buffer(half_width, _ROUND))
        self._prepared = prep(self.shape)
        self.bounds = self.shape.bounds

    def cut(self, geometry):
        """The part of a geometry inside, of the same dimension; None where nothing lies inside."""
        low_x, low_y, high_x, high_y = geometry.bounds
        own = self.bounds
        if low_x > own[2] or high_x < own[0] or low_y > own[3] or high_y < own[1]:
            return None
        if self._prepared.contains(geometry):
            return geometry
        if not self._prepared.intersects(geometry):
            return None
        return of_dimension(geometry.intersection(self.shape), _dimension(geometry))


def _dimension(geometry):
    return _DIMENSION[geometry.geom_type.replace("Multi", "")]


def of_dimension(geometry, dimension):
    """The parts of a geometry with that dimension (0 points, 1 lines, 2 areas), joined; None if none."""
    parts = [
        p for p in getattr(geometry, "geoms", [geometry]) if not p.is_empty and _dimension(p) == dimension
    ]
    if not parts:
        return None
    return parts[0] if len(parts) == 1 else unary_union(parts)


def extent_of(feature):
    """What a feature covers: a tree its crown where the radius is known, anything else its geometry."""
    radius = feature.get("crown_radius_m") if feature.kind == "tree" else None
    return feature.geometry.buffer(radius, 32) if radius else feature.geometry


@dataclass(frozen=True)
class TeeView:
    """One tee's line of play with what lies in its corridor: ``parts`` is ``[(feature, shape, remark)]``."""

    played: object
    tee: object
    settings: object

    @cached_property
    def corridor(self):
        """The corridor of this tee's line."""
        return Corridor(self.tee.line, self.settings.corridor_yd * YARD)

    @cached_property
    def parts(self):
        """Every listed feature that counts from this tee, cut to the corridor."""
        parts = []
        for feature in self.played.features:
            if feature.kind not in LISTED:
                continue
            whole = extent_of(feature)
            inside = self.corridor.cut(whole)
            if inside is not None:
                parts.append((feature, inside, feature.remark))
            elif self.played.number in feature.holes:
                remark = "given to this hole but wholly outside its corridor"
                parts.append((feature, whole, "; ".join(filter(None, (feature.remark, remark)))))
        return parts

    @cached_property
    def fairway(self):
        """All fairway in the corridor as one shape; None where there is none."""
        shapes = [shape for feature, shape, _ in self.parts if feature.kind == "fairway"]
        return unary_union(shapes) if shapes else None


def distance_rows(view, images):
    """A row for the green, then one for each feature that counts from this tee, nearest first."""
    rows = [] if view.played.green is None else [_green_row(view, images)]
    features = [_feature_row(view, *part, images) for part in view.parts]
    features.sort(key=lambda row: (row.station_near, row.reach, row.kind, row.feature_id))
    return rows + features


def _green_row(view, images):
    green, line = view.played.green, view.tee.line
    front, back = line.legs_to(0.0, green.front), line.legs_to(0.0, green.back)
    near, far, _ = line.extent(green.geometry)
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
        remark="; ".join(filter(None, (*view.played.green_remarks, doubt(sure, view.settings)))),
    )


def _feature_row(view, feature, shape, remark, images):
    line, tee = view.tee.line, view.tee.reference
    points = coordinates(shape)
    aside = shape.distance(line.shape)
    crossing = line.crossings(shape) if aside == 0.0 else None
    near, far, farthest = line.extent(shape)
    if crossing:
        enter, leave = crossing
        side, past = "across", line.at(leave)
    else:
        enter = leave = None
        side, past = _side(line, shape), farthest
    sure = plus_minus(view.tee.feature, feature, images)
    return DistanceRow(
        hole=view.played.number,
        tee_set=view.tee.tee_set,
        kind=feature.kind,
        feature_id=feature.fid,
        label=feature.label,
        side=side,
        reach=shape.distance(as_point(tee)),
        clear=float(np.hypot(*(points - tee).T).max()),
        enter=enter,
        leave=leave,
        aside=aside,
        station_near=near,
        station_far=far,
        short_of_green=short_of_green(line, past, view.played.green),
        forced_carry="yes" if crossing and _is_forced(view, feature, shape, crossing) else "no",
        plus_minus=sure,
        remark="; ".join(filter(None, (remark, doubt(sure, view.settings)))),
    )


def _side(line, shape):
    from shapely.ops import nearest_points

    return line.side_of(coordinates(nearest_points(shape, line.shape)[0])[0])


def short_of_green(line, point, green):
    """How far a point lies short of the green's front, metres; negative beyond the front, None if no green.

    Straight where no bend of the line lies between, else along the line.
    """
    if green is None:
        return None
    here, front = line.station(point), line.station(green.front)
    if line.bends_between(here, front):
        return front - here
    straight = float(np.hypot(*(np.asarray(point) - green.front)))
    return straight if here <= front else -straight


def _is_forced(view, feature, shape, crossing):
    return BY_NAME[feature.kind].hazard and not way_round(
        view.tee.line, shape, crossing, view.corridor.shape, view.fairway
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
        near, far, _ = line.extent(piece)
        if near <= enter + 0.5 and far >= leave - 0.5:
            return True
    return False


def cross_section(line, station, half_width):
    """The line square to play at a station, ``half_width`` metres to the left and to the right."""
    ahead, foot = line.direction_at(station), line.at(station)
    left = np.array([-ahead[1], ahead[0]])
    return LineString([foot + half_width * left, foot - half_width * left])
