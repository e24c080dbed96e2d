"""What counts from each tee of a hole: the listed features, cut to the corridor of the tee's line of play."""

from dataclasses import dataclass
from functools import cached_property

import numpy as np
from shapely.ops import unary_union

from ..model.geometry import (
    array_of,
    bounds_array,
    contained,
    discs,
    intersections,
    meeting,
    outlines,
)
from ..model.kinds import LISTED
from .line import as_point
from .units import YARD

_ROUND = 64
"""Straight pieces in a quarter circle: the corridor's round end is true to 5 mm in 60 yd."""
_CORNERS = 128
"""Corners of a tree's crown: true to a millimetre in 6 m. Distances of a whole crown are worked out from its
circle."""
_DIMENSION = {"Point": 0, "LineString": 1, "Polygon": 2}


class Ground:
    """The listed features of a hole: ``features``, the ``shapes`` they cover with their ``bounds`` and
    ``dimensions``, and which are ``given`` to the hole.

    A tree whose crown is known covers a disc: ``crowns`` is its radius, 0.0 for all else, ``stems`` the
    (x, y) it stands at, nan for all else, and ``drawn`` the shapes with the points of such trees.
    """

    def __init__(self, played):
        self.features = [feature for feature in played.features if feature.kind in LISTED]
        self.drawn = array_of([feature.geometry for feature in self.features])
        self.shapes = self.drawn.copy()
        self.crowns = np.array([_crown_radius(feature) for feature in self.features])
        self.stems = np.full((len(self.features), 2), np.nan)
        trees = np.flatnonzero(self.crowns)
        if len(trees):
            self.stems[trees] = outlines(self.drawn[trees]).points
            self.shapes[trees] = array_of(discs(self.stems[trees], self.crowns[trees], _CORNERS))
        self.dimensions = np.array([dimension_of(shape) for shape in self.shapes], dtype=int)
        self.bounds = bounds_array(self.shapes)
        self.given = np.array([played.number in feature.holes for feature in self.features], dtype=bool)
        self._fairways = {}

    def fairway(self, positions):
        """The fairways at these positions as one shape, whole; kept, for most tees of a hole ask the same."""
        key = tuple(positions)
        if key not in self._fairways:
            self._fairways[key] = joined([self.shapes[position] for position in key])
        return self._fairways[key]


def _crown_radius(feature):
    return (feature.get("crown_radius_m") or 0.0) if feature.kind == "tree" else 0.0


def joined(shapes):
    """Shapes as one; a single one is left as it is."""
    return shapes[0] if len(shapes) == 1 else unary_union(shapes)


def dimension_of(shape):
    """0 for points, 1 for lines, 2 for areas."""
    return _DIMENSION[shape.geom_type.replace("Multi", "")]


def of_dimension(shape, dimension):
    """The parts of a shape that have a dimension, as one; None if it has none."""
    if shape.is_empty:
        return None
    if shape.geom_type != "GeometryCollection":
        return shape if dimension_of(shape) == dimension else None
    parts = [part for part in shape.geoms if not part.is_empty and dimension_of(part) == dimension]
    return joined(parts) if parts else None


def corridors_of(lines, half_width):
    """The ground either side of lines of play that end in one place: square at the tee, round about the
    green's end."""
    around = as_point(lines[-1].points[-1]).buffer(half_width, _ROUND)
    return [line.shape.buffer(half_width, _ROUND, cap_style=2).union(around) for line in lines]


@dataclass(frozen=True)
class Counting:
    """What counts of a hole's features from its tees, a part an entry, tee by tee.

    corridors: one a tee; tee: (n,), the place of the tee, rising; position: (n,), the feature's place on the
    Ground; shapes: (n,), cut to the corridor or whole; outside: (n,) of bool, given to the hole but wholly
    outside the corridor, and so whole.
    """

    ground: Ground
    corridors: list
    tee: object
    position: object
    shapes: object
    outside: object

    @cached_property
    def crowns(self):
        """The radius of each whole crown in metres, 0.0 for all else."""
        pairs = zip(self.shapes, self.ground.shapes[self.position])
        whole = np.array([shape is full for shape, full in pairs], dtype=bool)
        return np.where(whole, self.ground.crowns[self.position], 0.0)


def counting_from(ground, lines, settings):
    """The Counting of some lines of play, which end in one place.

    Of each listed feature counts what lies in the corridor and has the feature's own dimension: a stream that
    only touches the margin in a point is left out.
    """
    corridors = corridors_of(lines, settings.corridor_yd * YARD)
    margins = bounds_array(corridors)[:, None, :]
    low_x, low_y, high_x, high_y = ground.bounds.T
    meets = (low_x <= margins[..., 2]) & (high_x >= margins[..., 0])
    meets &= (low_y <= margins[..., 3]) & (high_y >= margins[..., 1])
    tee, position = np.nonzero(meets)
    shapes, areas = ground.shapes[position], array_of(corridors)[tee]
    across = np.flatnonzero(~contained(shapes, areas))
    apart = ~meeting(shapes[across], areas[across])
    kept = np.ones(len(shapes), dtype=bool)
    kept[across[apart]] = False
    across = across[~apart]
    shared = intersections(shapes[across], areas[across])
    for place, shape, dimension in zip(across.tolist(), shared, ground.dimensions[position[across]].tolist()):
        shapes[place] = of_dimension(shape, dimension)
        kept[place] = shapes[place] is not None

    counted = np.zeros(meets.shape, dtype=bool)
    counted[tee[kept], position[kept]] = True
    more_tee, more_position = np.nonzero(~counted & ground.given)
    outside = np.repeat([False, True], [kept.sum(), len(more_tee)])
    tee = np.concatenate([tee[kept], more_tee])
    position = np.concatenate([position[kept], more_position])
    shapes = np.concatenate([shapes[kept], ground.shapes[more_position]])
    order = np.lexsort((position, tee))
    return Counting(ground, corridors, tee[order], position[order], shapes[order], outside[order])
