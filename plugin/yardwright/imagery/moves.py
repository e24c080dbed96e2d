"""How the picture of a date is moved so that it lies on the ground: a shift, a turn, a stretch, local shifts.

Positions are x east and y north in the course's CRS, lengths in that CRS's own unit, azimuths clockwise.
"""

import json
import math
from dataclasses import dataclass, field

import numpy as np
from scipy.ndimage import map_coordinates

from ..model.errors import YardwrightError
from ..model.words import say
from .grid import Grid


@dataclass(frozen=True)
class LocalShifts:
    """Shifts that differ from place to place, known at the nodes of an upright grid.

    left, top: the first node. step: from node to node. east, north: (rows, columns) of floats, rows from
    north to south: by how much the picture is moved there. Straight between nodes, even beyond the outermost.
    """

    left: float
    top: float
    step: float
    east: object
    north: object

    def at(self, points):
        """(n, 2) places -> (n, 2) shifts east and north."""
        points = np.asarray(points, dtype=float).reshape(-1, 2)
        rows, columns = np.shape(self.east)
        at = [
            np.clip((self.top - points[:, 1]) / self.step, 0, rows - 1),
            np.clip((points[:, 0] - self.left) / self.step, 0, columns - 1),
        ]
        return np.column_stack(
            [
                map_coordinates(np.asarray(part, dtype=float), at, order=1, mode="nearest")
                for part in (self.east, self.north)
            ]
        )

    def most(self):
        """The length of the longest of its shifts."""
        return float(np.hypot(self.east, self.north).max())


@dataclass(frozen=True)
class Move:
    """How a date's picture is moved: where the file puts ``p``, the ground lies at ``ahead(p)``.

    east, north: the shift. turn: degrees clockwise, stretch: a factor, both about the place ``about``. local:
    LocalShifts on top of that, found by the place on the ground, or None.
    """

    east: float = 0.0
    north: float = 0.0
    turn: float = 0.0
    stretch: float = 1.0
    about: tuple = (0.0, 0.0)
    local: LocalShifts = field(default=None, compare=False)

    @property
    def matrix(self):
        """(2, 2): of turn and stretch, applied from the left to a column (east, north)."""
        c, s = (self.stretch * f(math.radians(self.turn)) for f in (math.cos, math.sin))
        return np.array([[c, s], [-s, c]])

    def stays(self):
        """Whether nothing is moved at all."""
        return self.local is None and (self.east, self.north, self.turn, self.stretch) == (0, 0, 0, 1)

    def back(self, points):
        """(n, 2) places on the ground -> where the file puts them."""
        points = np.asarray(points, dtype=float).reshape(-1, 2)
        if self.local is not None:
            points = points - self.local.at(points)
        about = np.asarray(self.about)
        return about + (points - about - (self.east, self.north)) @ np.linalg.inv(self.matrix).T

    def ahead(self, points):
        """(n, 2) places where the file puts them -> where they lie; the inverse of ``back``."""
        points = np.asarray(points, dtype=float).reshape(-1, 2)
        about = np.asarray(self.about)
        straight = about + (points - about) @ self.matrix.T + (self.east, self.north)
        if self.local is None:
            return straight
        found = straight
        # Local shifts change little over their own length, so that this closes in fast.
        for _ in range(8):
            found = straight + self.local.at(found)
        return found

    def grid(self, grid):
        """The grid in the file that a grid on the ground falls on, local shifts left aside."""
        g = grid.geotransform
        inverse = np.linalg.inv(self.matrix)
        about = np.asarray(self.about)
        left, top = about + inverse @ (np.array([g[0], g[3]]) - about - (self.east, self.north))
        (a, b), (c, d) = inverse @ np.array([[g[1], g[2]], [g[4], g[5]]])
        return Grid(grid.width, grid.height, (left, a, b, top, c, d), grid.crs)


STAY = Move()


def move_text(move):
    """What of a move is more than a shift, as text to keep; "" where there is nothing more."""
    kept = {}
    if move.turn or move.stretch != 1:
        kept.update(turn=move.turn, stretch=move.stretch, about=list(move.about))
    if move.local is not None:
        local = move.local
        kept["local"] = {
            "left": local.left,
            "top": local.top,
            "step": local.step,
            "east": np.round(np.asarray(local.east, dtype=float), 3).tolist(),
            "north": np.round(np.asarray(local.north, dtype=float), 3).tolist(),
        }
    return json.dumps(kept, separators=(",", ":")) if kept else ""


def move_of(east, north, text=""):
    """The Move of a shift and of what ``move_text`` wrote. Raises YardwrightError where the text is none."""
    try:
        kept = json.loads(text) if text else {}
        local = LocalShifts(**kept.pop("local")) if "local" in kept else None
        if local is not None and (np.ndim(local.east) != 2 or np.shape(local.east) != np.shape(local.north)):
            raise ValueError(say("its shifts are no table"))
        about = tuple(float(value) for value in kept.pop("about", (0.0, 0.0)))
        more = {name: float(value) for name, value in kept.items()}
        return Move(float(east or 0), float(north or 0), about=about, local=local, **more)
    except (TypeError, ValueError, AttributeError) as error:
        raise YardwrightError(
            say("How the date’s picture is moved cannot be read ({reason}).", reason=error),
            say("Register the date again."),
        ) from error
