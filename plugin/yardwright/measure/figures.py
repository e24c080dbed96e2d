"""The figures of all that counts from the tees of a hole, worked out together, for a course has thousands."""

from dataclasses import dataclass, fields

import numpy as np

from ..model.geometry import array_of, distances, nearest_to, outlines
from .line import as_point

_AT_TURN = 1e-4
"""Metres within which a station is that of a turn point."""
_TOUCHING = 1e-6
"""Metres within which a line meets what it only touches, or a tee lies on a margin."""


@dataclass(frozen=True)
class Figures:
    """Arrays over the parts that count, metres.

    Straight distances from the tee (reach, clear) and from the line (aside); least and greatest station
    (near, far); the stations at which the line first and last meets the part, nan where it does not; ``left``
    or ``right``, for a part that the line meets without meaning; how far short of the green's front, nan
    without a green.
    """

    reach: object
    clear: object
    aside: object
    near: object
    far: object
    enter: object
    leave: object
    side: object
    short_of_green: object

    def of(self, places):
        """The same of some parts, a slice."""
        return Figures(*(getattr(self, field.name)[places] for field in fields(self)))


def figures_of(counting, lines, tees, green):
    """The Figures of a Counting. lines: Lines, one a tee; tees: where each is measured from, (n, 2); green:
    GreenPlay or None.

    A whole crown is worked out from its circle, which is exact and quick, anything else from its outline.
    """
    if not len(counting.tee):
        return Figures(*(np.empty(0) for _ in fields(Figures)))
    ground, tee, crowns = counting.ground, counting.tee, counting.crowns
    areas = ground.dimensions[counting.position] == 2
    stems = ground.stems[counting.position]
    trees = np.flatnonzero(crowns)
    shapes = counting.shapes.copy()
    shapes[trees] = ground.drawn[counting.position[trees]]
    from_tee = distances(shapes, array_of([as_point(place) for place in tees])[tee])
    reach = np.maximum(from_tee - crowns, 0.0)
    aside = np.maximum(distances(shapes, lines.shapes[tee]) - crowns, 0.0)

    plain = trees[_on_one_leg(lines, tee[trees], stems[trees], crowns[trees])]
    radius = np.zeros(len(shapes))
    radius[plain] = crowns[plain]
    bent = np.setdiff1d(trees, plain)
    shapes[bent] = counting.shapes[bent]
    vertices = outlines(shapes)
    away = vertices.points - tees[tee[vertices.owner]]
    clear = np.maximum.reduceat(np.hypot(away[:, 0], away[:, 1]), vertices.starts)
    clear[trees] = from_tee[trees] + crowns[trees]
    near, far, farthest = lines.extents(vertices, tee)
    enter, leave = lines.crossings(vertices.of(aside < _TOUCHING), areas & (radius == 0.0), tee)

    _meet_crowns(lines, tee, stems[plain], plain, radius, aside, far, farthest, enter, leave)
    _look_outside_bends(lines, tee, shapes, radius, far, farthest)
    # What only touches the line, or lies on it as a point may, is met where it is nearest.
    touching = np.flatnonzero((aside < _TOUCHING) & np.isnan(enter))
    if len(touching):
        touched = nearest_to(shapes[touching], lines.shapes[tee[touching]])
        station = lines.stations(touched, tee[touching])
        enter[touching] = leave[touching] = np.clip(station, 0.0, lines.lengths[tee[touching]])

    near, far, met = near - radius, far + radius, np.isfinite(enter)
    side = np.full(len(shapes), "", dtype="<U5")
    apart = np.flatnonzero(~met)
    side[apart] = lines.sides(nearest_to(shapes[apart], lines.shapes[tee[apart]]), tee[apart])
    farthest[met] = lines.at(leave[met], tee[met])
    short = _short_of(green, lines, tee, np.where(met, leave, far), farthest)
    return Figures(reach, clear, np.where(met, 0.0, aside), near, far, enter, leave, side, short)


def _on_one_leg(lines, tee, centres, radius):
    """Whether all of each circle counts on one leg, (n,) of bool; eight places of it are looked at."""
    station = lines.stations(centres, tee)
    ahead = lines.directions(station, tee)
    beside = np.column_stack([-ahead[:, 1], ahead[:, 0]])
    turns = np.arange(8) * (np.pi / 4)
    along, left = np.cos(turns), np.sin(turns)
    places = centres[:, None] + radius[:, None, None] * (
        along[:, None] * ahead[:, None, :] + left[:, None] * beside[:, None, :]
    )
    there = lines.stations(places.reshape(-1, 2), np.repeat(tee, 8)).reshape(len(centres), 8)
    return (np.abs(there - (station[:, None] + radius[:, None] * along)) < 1e-6).all(axis=1)


def _meet_crowns(lines, tee, stems, plain, radius, aside, far, farthest, enter, leave):
    """Fill in where the line meets whole crowns, and their farthest points; ``plain``: their places."""
    station, r, line = far[plain], radius[plain], tee[plain]
    farthest[plain] += r[:, None] * lines.directions(station, line)
    off = stems - lines.at(station, line)
    half = np.sqrt(np.maximum(r * r - (off * off).sum(axis=1), 0.0))
    met = aside[plain] == 0.0
    enter[plain[met]] = np.maximum(station - half, 0.0)[met]
    leave[plain[met]] = np.minimum(station + half, lines.lengths[line])[met]


def _look_outside_bends(lines, tee, shapes, radius, far, farthest):
    """Outside a bend a whole wedge of ground has the turn point's station: there its nearest point counts."""
    place, turn = lines.near_turns(far, tee, _AT_TURN)
    place, turn = place[radius[place] == 0.0], turn[radius[place] == 0.0]
    if len(place):
        bends = lines.at(turn, tee[place])
        nearest = nearest_to(shapes[place], array_of([as_point(bend) for bend in bends]))
        wedged = np.abs(lines.stations(nearest, tee[place]) - turn) < _AT_TURN
        farthest[place[wedged]] = nearest[wedged]


def _short_of(green, lines, tee, station, points):
    """Metres from points, whose stations are known, to a green's front; negative beyond it, nan if no green.

    Straight where no bend of the line lies between, else along the line.
    """
    if green is None:
        return np.full(len(tee), np.nan)
    fronts = lines.stations(np.tile(green.front, (len(lines.lengths), 1)), np.arange(len(lines.lengths)))[tee]
    straight = np.hypot(*(points - green.front).T)
    straight = np.where(station <= fronts, straight, -straight)
    return np.where(lines.bends_between(station, fronts, tee), fronts - station, straight)
