"""The little that shapely 1.8 and 2 do differently, and coordinates as arrays."""

from dataclasses import dataclass
from functools import cached_property
from itertools import repeat

import numpy as np
import shapely
from shapely.geometry import Point, Polygon
from shapely.ops import nearest_points
from shapely.ops import transform as _transform_one
from shapely.prepared import prep

_VECTORISED = hasattr(shapely, "transform")


def coordinates(geometry):
    """All vertices of any shapely geometry as an (n, 2) array of floats."""
    if _VECTORISED:
        return shapely.get_coordinates(geometry)
    parts = getattr(geometry, "geoms", None)
    if parts is not None:
        arrays = [coordinates(part) for part in parts]
        return np.concatenate(arrays) if arrays else np.empty((0, 2))
    if geometry.geom_type == "Polygon":
        rings = [geometry.exterior, *geometry.interiors]
        return np.concatenate([np.asarray(ring.coords)[:, :2] for ring in rings])
    return np.asarray(geometry.coords)[:, :2].reshape(-1, 2)


def map_points(geometries, function):
    """Each geometry with ``function((n, 2) array) -> (n, 2) array`` applied to its vertices; a list."""
    if _VECTORISED:
        if not len(geometries):
            return []
        return list(shapely.transform(array_of(geometries), function))

    def one(x, y, z=None):
        moved = function(np.column_stack([np.atleast_1d(x), np.atleast_1d(y)]))
        return moved[:, 0], moved[:, 1]

    return [_transform_one(one, geometry) for geometry in geometries]


def bounds_array(geometries):
    """The bounds of each geometry, (n, 4): x least, y least, x greatest, y greatest."""
    if not len(geometries):
        return np.empty((0, 4))
    if _VECTORISED:
        return shapely.bounds(array_of(geometries))
    return np.array([geometry.bounds for geometry in geometries])


@dataclass(frozen=True)
class Outlines:
    """The vertices of many geometries in a row: ``points`` (n, 2); ``owner`` (n,), the place of the geometry
    each belongs to, rising; ``chain`` (n,), the ring, line or point it belongs to: neighbours of one chain
    are joined by a straight side."""

    points: object
    owner: object
    chain: object

    @cached_property
    def starts(self):
        """Where the vertices of each geometry begin, for ``numpy.ufunc.reduceat``."""
        return starts_of(self.owner)

    def of(self, wanted):
        """The vertices of those geometries only that ``wanted`` (n,) of bool marks, their places kept."""
        kept = wanted[self.owner]
        return Outlines(self.points[kept], self.owner[kept], self.chain[kept])


def starts_of(owner):
    """Where each run of equal numbers begins."""
    return np.concatenate([[0], np.flatnonzero(owner[1:] != owner[:-1]) + 1])


def array_of(geometries):
    """Geometries as an array, (n,); the functions below are quicker with one than with a list."""
    if isinstance(geometries, np.ndarray):
        return geometries
    array = np.empty(len(geometries), dtype=object)
    for place, geometry in enumerate(geometries):
        array[place] = geometry
    return array


def outlines(geometries):
    """The Outlines of a list of geometries, none of them empty."""
    if len(geometries) == 1 and geometries[0].geom_type == "Polygon" and not len(geometries[0].interiors):
        points = coordinates(geometries[0])
        same = np.zeros(len(points), dtype=int)
        return Outlines(points, same, same)
    if _VECTORISED:
        chains, owners = _chains(array_of(geometries))
        points, chain = shapely.get_coordinates(chains, return_index=True)
        return Outlines(points, owners[chain], chain)
    arrays, owners = [], []
    for owner, geometry in enumerate(geometries):
        for part in getattr(geometry, "geoms", (geometry,)):
            rings = (part.exterior, *part.interiors) if part.geom_type == "Polygon" else (part,)
            arrays.extend(np.asarray(ring.coords)[:, :2].reshape(-1, 2) for ring in rings)
            owners.extend([owner] * len(rings))
    chain = np.repeat(np.arange(len(arrays)), [len(array) for array in arrays])
    return Outlines(np.concatenate(arrays), np.asarray(owners)[chain], chain)


def _chains(geometries):
    """The rings, lines and points of geometries in order, and the place of the geometry each belongs to."""
    parts, owners = shapely.get_parts(geometries, return_index=True)
    polygon = shapely.get_type_id(parts) == 3
    if not polygon.any():
        return parts, owners
    rings, of = shapely.get_rings(parts[polygon], return_index=True)
    if polygon.all():
        return rings, owners[of]
    chains = np.concatenate([rings, parts[~polygon]])
    owners = np.concatenate([owners[polygon][of], owners[~polygon]])
    order = np.argsort(owners, kind="stable")
    return chains[order], owners[order]


def distances(geometries, other):
    """The distance of each geometry from another, or from its partner in a list of others, (n,)."""
    if _VECTORISED:
        return shapely.distance(array_of(geometries), _partners(other))
    return np.array([geometry.distance(partner) for geometry, partner in _pairs(geometries, other)])


def nearest_to(geometries, other):
    """The point of each geometry that is nearest to another, or to its partner, (n, 2)."""
    if _VECTORISED:
        lines = shapely.shortest_line(array_of(geometries), _partners(other))
        return shapely.get_coordinates(lines)[::2]
    pairs = _pairs(geometries, other)
    found = [nearest_points(geometry, partner)[0].coords[0][:2] for geometry, partner in pairs]
    return np.array(found).reshape(-1, 2)


def intersections(geometries, other):
    """What each geometry shares with another, or with its partner; a list."""
    if _VECTORISED:
        return list(shapely.intersection(array_of(geometries), _partners(other)))
    return [geometry.intersection(partner) for geometry, partner in _pairs(geometries, other)]


def contained(geometries, area):
    """Whether each geometry lies within an area, or within its own of a list of areas, (n,) of bool."""
    return _asked("contains", geometries, area)


def holding(area, places):
    """Whether an area holds each of (n, 2) places, those on its edge left out, (n,) of bool."""
    if _VECTORISED:
        shapely.prepare(area)
        return shapely.contains_xy(area, *np.asarray(places, dtype=float).reshape(-1, 2).T)
    return contained(spots(places), area)


def meeting(geometries, area):
    """Whether each geometry has a point in common with an area, or with its own of a list, (n,) of bool."""
    return _asked("intersects", geometries, area)


def _asked(question, geometries, area):
    """A question to areas that are asked many times, and are prepared for it."""
    if _VECTORISED:
        areas = _partners(area)
        shapely.prepare(areas)
        return getattr(shapely, question)(areas, array_of(geometries))
    prepared = {}
    answers = []
    for geometry, one in _pairs(geometries, area):
        if id(one) not in prepared:
            prepared[id(one)] = prep(one)
        answers.append(getattr(prepared[id(one)], question)(geometry))
    return np.array(answers, dtype=bool)


def spots(points):
    """(n, 2) points as shapely points, an array or a list."""
    if _VECTORISED:
        return shapely.points(np.asarray(points, dtype=float).reshape(-1, 2))
    return [Point(x, y) for x, y in points.tolist()]


def discs(centres, radii, corners):
    """Polygons about (n, 2) centres, their (n,) radii halved into the sagitta of ``corners`` corners: as far
    outside the circle at a corner as inside it amid a side. A list."""
    half_step = np.pi / corners
    turns = 2.0 * half_step * (np.arange(corners + 1) % corners)
    ring = 2.0 / (1.0 + np.cos(half_step)) * np.column_stack([np.cos(turns), np.sin(turns)])
    rings = np.asarray(centres)[:, None] + np.asarray(radii)[:, None, None] * ring
    if _VECTORISED:
        return list(shapely.polygons(rings))
    return [Polygon(one) for one in rings]


def _partners(other):
    return array_of(other) if isinstance(other, (list, np.ndarray)) else other


def _pairs(geometries, other):
    return zip(geometries, other if isinstance(other, (list, np.ndarray)) else repeat(other))
