"""Whose a feature is: the holes a drawn thing belongs to, judged by where it lies.

Everything here works in one plane of metres that holds the whole course (``measure.frame.HoleFrame`` at
its middle is one). A hole is a ``HoleHere``: its number, its drawn line from tee to green, and its green
where that is known. Which hole a thing belongs to is common practice, no source; the distances below are
our own rule.
"""

from typing import NamedTuple

from .units import YARD

GREEN_REACH_M = 60 * YARD
"""A green further than this from the end of every line belongs to none (a practice green)."""
TEE_REACH_M = 60 * YARD
"""A tee further than this from the first half of every line belongs to none (a practice tee)."""
SHARED_WITHIN_M = 40 * YARD
"""A thing this near to the line of another hole counts on that hole too."""
NEAREST_WITHIN_M = 150 * YARD
"""A thing further than this from every hole belongs to none."""
LONG_KINDS = ("penalty_area", "trees", "rough")
MOST_HOLES = 3
"""A river or a wood that meets more holes than this is left open: it counts wherever a hole comes near."""


class HoleHere(NamedTuple):
    """A hole where it lies. line, green: shapely, in metres; green None where it is not known."""

    number: int
    line: object
    green: object = None


def line_end(line):
    """The last point of a line, as a shapely point: where the hole is played to."""
    from shapely.geometry import Point

    return Point(line.coords[-1])


def line_start(line):
    """The first point of a line, as a shapely point: the tee it was drawn from."""
    from shapely.geometry import Point

    return Point(line.coords[0])


def greens_of_holes(lines, greens):
    """Which of ``greens`` each hole is played to: ``{hole number: position in greens}``.

    lines: ``[(number, line)]``, greens: polygons. A hole takes the green its line ends in, else the one
    nearest to the line's end within ``GREEN_REACH_M``; a hole near none is absent. Two holes can take
    the same green: it is shared.
    """
    taken = {}
    for number, line in lines:
        end = line_end(line)
        away = [(green.distance(end), index) for index, green in enumerate(greens)]
        if away and min(away)[0] <= GREEN_REACH_M:
            taken[number] = min(away)[1]
    return taken


def holes_near_end(lines, green):
    """The numbers of the holes whose line ends in ``green``, else of the one that ends nearest to it.

    lines: ``[(number, line)]``. Empty when no line ends within ``GREEN_REACH_M``.
    """
    away = [(green.distance(line_end(line)), number) for number, line in lines]
    inside = tuple(sorted(number for distance, number in away if distance == 0.0))
    if inside:
        return inside
    near = [item for item in away if item[0] <= GREEN_REACH_M]
    return (min(near)[1],) if near else ()


def holes_near_start(holes, geometry):
    """The holes a tee or a plate belongs to: those whose line starts on it, else the nearest one.

    Nearest means nearest to the first half of a line, because forward tees stand along it while the tee
    of the next hole stands beside the end of this one.
    """
    from shapely.ops import substring

    starting = tuple(hole.number for hole in holes if geometry.distance(line_start(hole.line)) == 0.0)
    if starting:
        return tuple(sorted(starting))
    away = [
        (
            geometry.distance(substring(hole.line, 0, 0.5, normalized=True)),
            geometry.distance(line_start(hole.line)),
            hole.number,
        )
        for hole in holes
    ]
    near = [item for item in away if item[0] <= TEE_REACH_M]
    return (min(near)[2],) if near else ()


def holes_alongside(holes, geometry):
    """The numbers of the hole nearest to ``geometry`` and of all whose line is within ``SHARED_WITHIN_M``.

    The nearest comes first, the others by distance. A hole's distance is taken to its line and its green.
    Empty when the nearest is further than ``NEAREST_WITHIN_M``.
    """
    away = []
    for hole in holes:
        to_line = geometry.distance(hole.line)
        to_hole = to_line if hole.green is None else min(to_line, geometry.distance(hole.green))
        away.append((to_hole, to_line, hole.number))
    away.sort()
    if not away or away[0][0] > NEAREST_WITHIN_M:
        return ()
    return (away[0][2], *(number for _, to_line, number in away[1:] if to_line <= SHARED_WITHIN_M))


def assign(kind, geometry, holes):
    """The numbers of the holes that a feature of ``kind`` belongs to, the most likely first.

    geometry: shapely, in metres. holes: ``HoleHere`` or ``(number, line, green or None)``, those without
    a line are passed over. Empty: no hole near enough; for a river, a wood or rough it also stands for
    more than ``MOST_HOLES`` holes. A path and a boundary belong to no hole. A fairway belongs to the holes
    that are played over it, not to those beside it, whose width it would otherwise confuse.

    >>> from shapely.geometry import LineString, Point
    >>> holes = [(1, LineString([(0, 0), (0, 300)]), None), (2, LineString([(90, 300), (90, 0)]), None)]
    >>> assign("bunker", Point(20, 250).buffer(5), holes)
    (1,)
    >>> assign("bunker", Point(45, 250).buffer(12), holes)
    (1, 2)
    >>> assign("plate", Point(85, 280), holes)
    (2,)
    """
    holes = [hole for hole in (HoleHere(*hole) for hole in holes) if hole.line is not None]
    if kind in ("hole", "path", "boundary") or not holes:
        return ()
    if kind == "green":
        without = [(hole.number, hole.line) for hole in holes if hole.green is None]
        return holes_near_end(without, geometry)
    if kind in ("tee", "plate"):
        return holes_near_start(holes, geometry)
    if kind == "fairway":
        crossing = tuple(sorted(hole.number for hole in holes if hole.line.intersects(geometry)))
        return crossing or holes_alongside(holes, geometry)[:1]
    numbers = holes_alongside(holes, geometry)
    if kind == "marker":
        return numbers[:1]
    if kind in LONG_KINDS and len(numbers) > MOST_HOLES:
        return ()
    return numbers
