"""The little that shapely 1.8 and 2 do differently, and coordinates as arrays."""

import numpy as np
import shapely
from shapely.ops import transform as _transform_one

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
        return list(shapely.transform(np.asarray(geometries, dtype=object), function))

    def one(x, y, z=None):
        moved = function(np.column_stack([np.atleast_1d(x), np.atleast_1d(y)]))
        return moved[:, 0], moved[:, 1]

    return [_transform_one(one, geometry) for geometry in geometries]


def bounds_array(geometries):
    """The bounds of each geometry, (n, 4): x least, y least, x greatest, y greatest."""
    if not len(geometries):
        return np.empty((0, 4))
    if _VECTORISED:
        return shapely.bounds(np.asarray(geometries, dtype=object))
    return np.array([geometry.bounds for geometry in geometries])
