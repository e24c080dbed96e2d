"""What is drawn of a course, as the work on its pictures needs to know it."""

from shapely.geometry import box

from .burning import burnt
from .hiding import Ground

_OPEN = ("tee", "green", "apron", "fairway", "bunker")
_CROWN_M = 4.0  # the radius of a crown for a tree drawn without one: common size, no source


class DrawnGround:
    """The drawing of a course over any grid.

    features: model Features in the grids' CRS. metre: how many of that CRS's units a metre is. keep_m:
    nothing may be invented nearer than that to a hazard, the margin of a green or a tee.
    """

    def __init__(self, features, metre=1.0, keep_m=3.0):
        self._open = [f.geometry for f in features if f.kind in _OPEN]
        self._woods = [f.geometry for f in features if f.kind == "trees"]
        self._woods += [
            f.geometry.buffer((f.get("crown_radius_m") or _CROWN_M) * metre)
            for f in features
            if f.kind == "tree"
        ]
        self._water = [f.geometry for f in features if f.kind == "penalty_area" and f.get("water", True)]
        kept = [f.geometry for f in features if f.kind in ("bunker", "penalty_area", "tee")]
        kept += [f.geometry.boundary for f in features if f.kind in ("green", "apron")]
        self._kept = [shape.buffer(keep_m * metre) for shape in kept]

    def ground(self, grid):
        """The ``hiding.Ground`` of a grid; a part of which nothing is drawn at all is None."""
        return Ground(*(self._burnt(shapes, grid) for shapes in (self._open, self._woods, self._water)))

    def keep(self, grid):
        """(h, w) bool, where nothing may be invented; None where nothing is drawn."""
        return self._burnt(self._kept, grid)

    def _burnt(self, shapes, grid):
        if not shapes:
            return None
        corners = grid.corners()
        about = box(*corners.min(axis=0), *corners.max(axis=0))
        return burnt([(1, shape.wkb) for shape in shapes if shape.intersects(about)], grid) > 0
