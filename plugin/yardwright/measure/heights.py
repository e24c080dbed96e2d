"""How high the places of a hole lie, what it plays like, and how its green falls.

A terrain is anything with ``height_at(points, crs)`` and ``slope_at(points, crs)``, see
``imagery.terrain.Terrain``. Heights are metres, None where the terrain holds none. No height ever enters a
measured length.
"""

from dataclasses import dataclass
from typing import NamedTuple

import numpy as np

from ..model.geometry import contained
from ..model.words import say
from .hole import play_hole
from .line import as_point
from .rows import HeightRow, told

DEGREES = "EPSG:4326"


@dataclass(frozen=True)
class TeeHeights:
    """The heights along the line of play of one tee set: at its tee reference, at the turn points ahead of
    it, and where the line ends: at the green's middle. length: the measured one, metres."""

    tee_set: str
    length: float
    tee: float
    turns: tuple
    green: float

    @property
    def rise(self):
        """How much higher than the tee the green lies, metres; below zero where it lies lower."""
        return None if self.tee is None or self.green is None else self.green - self.tee

    @property
    def plays(self):
        """The length and the rise together, metres: what a hole plays like (common practice, no source)."""
        return None if self.rise is None else self.length + self.rise


@dataclass(frozen=True)
class HoleHeights:
    """The heights of a hole: ``tees`` in the order of PlayedHole.tees; approach point and the green's front,
    middle and back. Without a green ``middle`` is the end of the drawn line, the others None."""

    tees: tuple
    approach: float
    front: float
    middle: float
    back: float


def hole_heights(played, terrain, crs):
    """The HoleHeights of a PlayedHole. crs: the course's, by which the terrain is asked."""
    green = played.green
    own = [] if green is None else [green.approach_point, green.front, green.back]
    chains = [tee.line.points for tee in played.tees]
    places = np.concatenate([*chains, np.array([played.end, *own]).reshape(-1, 2)])
    found = terrain.height_at(played.frame.from_frame(crs)(places), crs)
    heights = [_known(height) for height in found]
    tees, at = [], 0
    for tee, chain in zip(played.tees, chains):
        first, *turns, last = heights[at : at + len(chain)]
        tees.append(TeeHeights(tee.tee_set, tee.length, first, tuple(turns), last))
        at += len(chain)
    middle, approach, front, back = [*heights[at:], None, None, None][:4]
    return HoleHeights(tuple(tees), approach, front, middle, back)


def rises(course, index, places, terrain):
    """How much higher than each place the middle of its hole's green lies, metres, a list.

    places: ``(hole, x, y)`` in the course's CRS. None where x is None, there is no green, or no height.
    """
    middles = {}
    for hole in {hole for hole, x, _ in places if x is not None}:
        played = play_hole(course, hole, index)
        if played is not None and played.green is not None:
            (middles[hole],) = played.frame.from_frame(course.crs)([played.green.middle])
    asked = [place for place in places if place[1] is not None and place[0] in middles]
    if not asked:
        return [None] * len(places)
    ends = np.array([middles[hole] for hole, _, _ in asked] + [place[1:] for place in asked])
    greens, starts = terrain.height_at(ends, course.crs).reshape(2, -1)
    found = {place: _known(green - start) for place, green, start in zip(asked, greens, starts)}
    return [found.get(place) for place in places]


def slope_at(played, terrain, crs, point):
    """``(percent, azimuth)`` of the ground's fall at a point of the hole's frame, see ``Terrain.slope_at``;
    None where the terrain does not tell."""
    percent, azimuth = terrain.slope_at(played.frame.from_frame(crs)([point]), crs)
    return _known(percent[0]), _known(azimuth[0])


class SlopeGrid(NamedTuple):
    """How a green falls, at the crossings of a grid: arrays of one shape, rows from north to south.

    x, y: metres in the hole's frame. percent, azimuth: of the fall, true; nan off the green and where the
    terrain does not tell.
    """

    x: object
    y: object
    percent: object
    azimuth: object

    def at(self, points):
        """``(percent, azimuth)`` between the crossings at (n, 2) points, arrays; nan where it is not told.

        The fall to east and the fall to north run straight from crossing to crossing, so that the two sides
        of a hollow cancel each other on its bottom.
        """
        step = self.x[0, 1] - self.x[0, 0]
        across, down = (points[:, 0] - self.x[0, 0]) / step, (self.y[0, 0] - points[:, 1]) / step
        rows, columns = self.x.shape
        column = np.clip(np.floor(across).astype(int), 0, columns - 2)
        row = np.clip(np.floor(down).astype(int), 0, rows - 2)
        right, below = across - column, down - row
        outside = (right < 0) | (right > 1) | (below < 0) | (below > 1)
        falls = []
        for part in self._components():
            upper = part[row, column] * (1 - right) + part[row, column + 1] * right
            lower = part[row + 1, column] * (1 - right) + part[row + 1, column + 1] * right
            falls.append(np.where(outside, np.nan, upper * (1 - below) + lower * below))
        east, north = falls
        return np.hypot(east, north), np.degrees(np.arctan2(east, north)) % 360.0

    def _components(self):
        """The fall to east and to north, percent; level ground has no azimuth and falls nowhere."""
        turn = np.radians(np.where(np.isnan(self.azimuth), 0.0, self.azimuth))
        level = np.isnan(self.azimuth) & np.isfinite(self.percent)
        percent = np.where(level, 0.0, self.percent)
        return percent * np.sin(turn), percent * np.cos(turn)


def slope_grid(terrain, green, frame, step=1.0, crs=DEGREES):
    """The SlopeGrid of a GreenPlay, its crossings ``step`` metres apart, at whole steps of the frame.

    It reaches one step beyond the margin, so that a picture of it can be cut along the margin without gaps.
    crs: by which the terrain is asked; the course's own saves it a way round.
    """
    reach = green.geometry.buffer(step * 2**0.5)
    left, low, right, high = reach.bounds
    across = np.arange(np.floor(left / step), np.ceil(right / step) + 1) * step
    down = np.arange(np.ceil(high / step), np.floor(low / step) - 1, -1) * step
    x, y = np.meshgrid(across, down)
    places = np.column_stack([x.ravel(), y.ravel()])
    wanted = contained([as_point(place) for place in places], reach)
    percent, azimuth = np.full(x.size, np.nan), np.full(x.size, np.nan)
    percent[wanted], azimuth[wanted] = terrain.slope_at(frame.from_frame(crs)(places[wanted]), crs)
    return SlopeGrid(x, y, percent.reshape(x.shape), azimuth.reshape(x.shape))


def height_rows(played, terrain, crs):
    """The rows of the table ``heights`` of a PlayedHole, one a tee set; without tees one for the green."""
    heights = hole_heights(played, terrain, crs)
    if not heights.tees:
        remark = told(say("no tee is drawn"), *_green_remarks(played, heights))
        return [HeightRow(green_height_m=heights.middle, remark=remark, **_of_hole(played, heights))]
    return [
        HeightRow(
            tee_set=tee.tee_set,
            tee_height_m=tee.tee,
            green_height_m=tee.green,
            rise_m=tee.rise,
            length=tee.length,
            plays=tee.plays,
            turn_heights_m="; ".join("" if height is None else f"{height:.2f}" for height in tee.turns),
            remark=told(*_remarks(played, heights, tee)),
            **_of_hole(played, heights),
        )
        for tee in heights.tees
    ]


def _of_hole(played, heights):
    return {
        "hole": played.number,
        "approach_height_m": heights.approach,
        "front_height_m": heights.front,
        "back_height_m": heights.back,
    }


def _remarks(played, heights, tee):
    green = (heights.approach, heights.front, heights.back)
    if all(height is None for height in (tee.tee, *tee.turns, tee.green, *green)):
        yield say("the terrain does not reach this hole")
        return
    if tee.tee is None:
        yield say("the terrain does not reach the tee")
    if None in tee.turns:
        yield say("the terrain does not reach every turn point")
    yield from _green_remarks(played, heights)


def _green_remarks(played, heights):
    if played.green is None:
        yield from played.green_remarks
        if heights.middle is None:
            yield say("the terrain does not reach the end of the line of play")
        return
    if heights.approach is None:
        yield say("the terrain does not reach the approach point")
    on_green = (heights.front, heights.middle, heights.back)
    if on_green == (None, None, None):
        yield say("the terrain does not reach the green")
    elif None in on_green:
        yield say("the terrain reaches only a part of the green")


def _known(value):
    return float(value) if np.isfinite(value) else None
