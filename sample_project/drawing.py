"""The drawing of Quernhallow, made from the plan: every feature as a polygon, line or point.

``course()`` gives it as the tool's own ``Course`` in the course's CRS, ``drawing()`` in local metres (true
ground lengths: a transverse Mercator plane through the middle of the course). Always the same drawing.
"""

import csv
import os
from dataclasses import dataclass, replace
from functools import lru_cache

import numpy as np
from shapely.geometry import LineString, MultiPoint, Point, Polygon
from shapely.ops import unary_union
from shapely.prepared import prep
from yardwright.measure.units import YARD, whole
from yardwright.model.course import Course, Feature, Hole, TeeSet
from yardwright.model.geometry import map_points
from yardwright.model.numbers import format_holes

from . import plan
from .shapes import (
    blob,
    pad,
    point_and_direction,
    ribbon,
    right_of,
    rounded,
    smooth_line,
    smooth_ring,
    stream,
    unit,
)

SCORECARD = os.path.join(os.path.dirname(os.path.abspath(__file__)), "scorecard.csv")
TRUTH = os.path.join(os.path.dirname(os.path.abspath(__file__)), "truth.csv")


@dataclass(frozen=True)
class Drawing:
    """All of it in local metres. ``truth``: (what, hole, which, yards) of each thing wrong on purpose.
    ``ways``: the rounded line of each hole, (n, 2), by number. ``scenery``: outlines no one measures."""

    features: tuple
    holes: tuple
    scorecard: dict
    truth: tuple
    ways: dict
    scenery: dict

    def of(self, kind):
        """The features of a kind."""
        return tuple(feature for feature in self.features if feature.kind == kind)


# Greens


def _green_outline(hole, rng):
    depth, width, turned, shape = hole.green
    if shape == "hourglass":
        along = np.array([19, 17, 9, 1, -8, -16, -19.5, -17, -9, 0, 8, 16])
        across = np.array([1, 9, 11.5, 6.2, 9.5, 10.5, 1, -9.5, -10.5, -6, -9, -10.5])
        return smooth_ring(np.column_stack([across, along]), 56)
    if shape == "crescent":
        # A bow open to the left of play, fatter at the far end.
        turn = np.radians(np.linspace(-108, 104, 9))
        half = np.linspace(5.4, 7.6, 9)
        outer = np.column_stack([np.cos(turn) * (17 + half), np.sin(turn) * (17 + half)])
        inner = np.column_stack([np.cos(turn) * (17 - half), np.sin(turn) * (17 - half)])
        return smooth_ring(np.vstack([outer, inner[::-1]]), 72)
    turned = np.radians(turned)
    return blob((0, 0), depth, width, (np.sin(turned), np.cos(turned)), rng, 0.11, 44)


def _turned_to(shape, direction):
    """A shape drawn with play up the y axis, turned to play along ``direction``, about the origin."""
    return map_points(
        [shape], lambda p: np.outer(p[:, 1], direction) + np.outer(p[:, 0], right_of(direction))
    )[0]


def _largest(shape):
    """The largest part of a polygon that a cut may have left in pieces."""
    return max(getattr(shape, "geoms", [shape]), key=lambda part: part.area)


def _moved(shape, by):
    return map_points([shape], lambda p: p + np.asarray(by))[0]


def _chord(shape, point, direction):
    """First and last point, along ``direction``, of what ``shape`` cuts from the line through ``point``."""
    reach = 200 * np.asarray(direction)
    cut = LineString([point - reach, point + reach]).intersection(shape)
    pieces = [p for p in getattr(cut, "geoms", [cut]) if p.length > 0]
    holding = [p for p in pieces if p.distance(Point(point)) < 1e-6]
    piece = np.asarray(max(holding or pieces, key=lambda p: p.length).coords)
    ends = piece[np.argsort(piece @ direction)]
    return ends[0], ends[-1]


def _anchor(shape, direction):
    """The centroid, or (crescents) the middle of the longest chord square to ``direction``."""
    centre = np.array(shape.centroid.coords[0])
    if shape.contains(Point(centre)):
        return centre
    across = right_of(direction)
    reach = np.asarray(shape.exterior.coords) @ direction - centre @ direction
    chords = [
        _chord(shape, centre + t * direction, across) for t in np.arange(reach.min() + 0.1, reach.max(), 0.02)
    ]
    first, last = max(chords, key=lambda ends: np.hypot(*(ends[1] - ends[0])))
    return (first + last) / 2


def _before(line, distance, end):
    """The point ``distance`` metres before station ``end`` on ``line``."""
    return np.array(line.interpolate(max(end - distance, 0)).coords[0])


def _approach(hole, line, green, start, length):
    """Front, middle and back of a hole's green, as (2,) arrays, from the back tee's ``start``."""
    points = np.asarray(line.coords)
    anchor = _anchor(green, unit(points[-1] - points[-2]))
    if hole.par == 3:
        origin = start
    else:
        origin = _before(line, (100 if length < 300 * YARD else 150) * YARD, line.project(Point(anchor)))
    front, back = _chord(green, anchor, unit(anchor - origin))
    return front, (front + back) / 2, back


def _greens(rng):
    """``{hole number: polygon}``; holes 9 and 18 hold the same one."""
    greens = {}
    for hole in plan.HOLES:
        shape = hole.green[3]
        if shape == "double":
            continue
        points = np.asarray(hole.line, float)
        direction = unit(points[-1] - points[-2])
        outline = _turned_to(_green_outline(hole, rng), direction)
        greens[hole.number] = _moved(outline, points[-1] - _anchor(outline, direction))
    double = smooth_ring(
        [(624, 179), (640, 175), (657, 183), (674, 184), (692, 182), (701, 194), (694, 208), (678, 210),
         (662, 203), (646, 207), (629, 204), (618, 193)], 64,
    )  # fmt: skip
    greens[9] = greens[18] = double
    greens[5] = _trade_green(greens[5])
    return greens


def _trade_green(green):
    """Hole 5's green made 19 yd deep on the approach line, its front 267 yd from the back tee (see plan)."""
    start, end = (np.asarray(point, float) for point in _hole(5).line)
    direction = unit(end - start)
    for _ in range(30):
        centre = np.array(green.centroid.coords[0])
        front, back = _chord(green, centre, direction)
        stretch = 19 * YARD / np.hypot(*(back - front))

        def deeper(points, centre=centre, stretch=stretch):
            along = (points - centre) @ direction
            return points + np.outer(along * (stretch - 1), direction)

        green = map_points([green], deeper)[0]
        centre = np.array(green.centroid.coords[0])
        front, _ = _chord(green, centre, direction)
        on_line = direction * (267 * YARD - (front - start) @ direction)
        aside = right_of(direction) * ((centre - start) @ right_of(direction))
        green = _moved(green, on_line - aside)
    return green


def _hole(number):
    return plan.HOLES[number - 1]


# Fairways and sand


def _fairways(ways, greens, waters, rng):
    fairways = []
    wet = unary_union([water.buffer(2.5) for water in waters])
    for hole in plan.HOLES:
        if hole.fairway is None:
            continue
        first, half = hole.fairway
        half += 2 if hole.par > 3 else 1
        way, green = ways[hole.number], greens[hole.number]
        length = LineString(way).length
        first = min(first, length - 45)
        last = length - (2 if hole.green[3] == "double" else hole.green[0] * 0.35)
        left, right = rng.uniform(0.92, 1.12, 2) * half
        neck = 0.72 if hole.par > 3 else 1.0

        def width(base, neck=neck):
            return lambda s: base * (1 - (1 - neck) * max(0.0, s - 0.72) / 0.28)

        band = ribbon(way, first, last, width(left), width(right), rng, 0.22)
        band = band.difference(green.buffer(3.4)).difference(wet)
        parts = [p.buffer(-2.2).buffer(2.2, 6).simplify(0.12) for p in getattr(band, "geoms", [band])]
        for part in parts:
            for piece in getattr(part, "geoms", [part]):
                if piece.area > 160:
                    fairways.append((hole.number, Polygon(piece.exterior)))
    return fairways


def _bunkers(ways, greens, rng):
    bunkers = []
    for hole in plan.HOLES:
        way, green = ways[hole.number], greens[hole.number]

        def dig(shape, green=green, number=hole.number):
            others = [other.buffer(1.5) for _, other in bunkers]
            cut = _largest(shape.difference(unary_union([green.buffer(1.7), *others])))
            bunkers.append((number, _largest(cut.buffer(-0.8).buffer(0.8, 5).simplify(0.04))))

        for station, aside, length, width in hole.bunkers:
            point, direction = point_and_direction(way, station)
            turned = unit(direction + rng.uniform(-0.5, 0.5) * right_of(direction))
            dig(blob(point + aside * right_of(direction), length, width, turned, rng, 0.17))
        end = way[-1]
        play = unit(way[-1] - way[-4])
        for clock, length, width in hole.greenside:
            out = np.cos(np.radians(clock)) * play + np.sin(np.radians(clock)) * right_of(play)
            ray = LineString([end, end + 80 * out]).intersection(green.exterior)
            edge = np.array(max(getattr(ray, "geoms", [ray]), key=lambda p: p.distance(Point(end))).coords[0])
            if hole.green[3] == "crescent" and clock == 270:
                edge = np.array(green.centroid.coords[0]) - out * (width / 2 + 2.5)
            dig(blob(edge + out * (width / 2 + 2.2), length, width, right_of(out), rng, 0.17))
    bunkers[_TRADE_BUNKER] = (5, _trade_bunker(bunkers[_TRADE_BUNKER][1]))
    return bunkers


_TRADE_BUNKER = sum(len(hole.bunkers) + len(hole.greenside) for hole in plan.HOLES[:4])


def _trade_bunker(shape):
    """Hole 5's fairway bunker moved until its nearest point lies 223 yd from the back tee."""
    start, end = (np.asarray(point, float) for point in _hole(5).line)
    for _ in range(30):
        shape = _moved(shape, unit(end - start) * (223 * YARD - shape.distance(Point(start))))
    return shape


# Tees


def _tees(ways, rng):
    """Teeing grounds ``(hole, tee sets text, polygon)`` and plates ``(hole, tee set, (x, y))``."""
    tees, plates = [], []
    shares = {name: share for name, _, _, share in plan.TEE_SETS}
    for hole in plan.HOLES:
        way = np.asarray(hole.line, float)
        length = LineString(way).length
        spread = max(1.0, 1.25 * 190 / length) if hole.par == 3 else 1.0

        def station_of(name, length=length, spread=spread, number=hole.number):
            return plan.TEE_STATIONS.get((number, name), shares[name] * length * spread)

        stations = [[station_of(name) for name in sets.split(",")] for sets in hole.pads]
        for sets, at in zip(hole.pads, stations):
            names = sets.split(",")
            point, direction = point_and_direction(way, (at[0] + at[-1]) / 2)
            point = point + right_of(direction) * (0 if names[0] == "Black" else rng.uniform(-5, 5))
            room = at[-1] - at[0]
            k = stations.index(at)
            apart = [at[0] - stations[k - 1][-1]] if k else []
            apart += [stations[k + 1][0] - at[-1]] if k + 1 < len(stations) else []
            beyond = min(rng.uniform(10.5, 14.5), min(apart) - 1.2)
            shape = pad(point, room + beyond, rng.uniform(7.5, 9.5), direction, rng)
            if names[0] == "Black":
                shape = _moved(shape, direction * -0.5)
            tees.append((hole.number, sets, shape))
            if len(names) > 1 or names[0] == "Black":
                for name, station in zip(names, at):
                    back = point + direction * (station - (at[0] + at[-1]) / 2)
                    plates.append((hole.number, name, back))
    return tees, plates


def _reference(hole, name, tees, plates):
    """Where a hole is measured from: the plate, else the front of the tee on the ray from its centroid."""
    for number, tee_set, point in plates:
        if (number, tee_set) == (hole.number, name):
            return np.asarray(point)
    shape = next(shape for number, sets, shape in tees if number == hole.number and name in sets.split(","))
    centre = np.array(shape.centroid.coords[0])
    line = LineString(hole.line)
    ahead = [
        np.asarray(p) for p in hole.line[1:-1] if line.project(Point(p)) > line.project(Point(centre))
    ]  # fmt: skip
    aim = ahead[0] if ahead else np.asarray(hole.line[-1])
    _, front = _chord(shape, centre, unit(aim - centre))
    return front


def _play(line, start, middle):
    """The line of play from ``start``: the turn points still ahead of it, then the green's middle."""
    station = line.project(Point(start))
    turns = [p for p in line.coords[1:-1] if line.project(Point(p)) > station]
    return LineString([tuple(start), *turns, tuple(middle)])


# Markers


def _markers(lines, middles, references):
    """``(hole, states, states_to, pair, (x, y))`` of each post, and the truth of those that stand wrong.

    Pairs of posts stand where the way to the green is straight; before a bend a single one lies on the line.
    """
    markers, truth = [], []
    for hole in plan.HOLES:
        if hole.par == 3:
            continue
        play = _play(lines[hole.number], references[hole.number, "Black"], middles[hole.number][1])
        way = np.asarray(play.coords)
        for states in (200, 150, 100):
            if states == 200 and play.length < 300 * YARD:
                continue
            error = plan.WRONG_MARKERS.get((hole.number, states), 0.0)
            to = "front" if (hole.number, states) == (17, 100) else None
            end = states * YARD
            if to == "front":
                end += np.hypot(*(middles[17][1] - middles[17][0]))
            station = play.length - end + error * YARD
            point, direction = point_and_direction(way, station)
            straight = station > play.length - np.hypot(*(way[-1] - way[-2])) + 20
            if error:
                truth.append(("marker", hole.number, str(states), error))
            paired = {200: hole.par == 5, 150: True, 100: hole.number in plan.PAIRED_HUNDREDS}[states]
            if paired and straight:
                half = {100: 10.5, 150: 14.5, 200: 15.5}[states]
                moved = plan.MOVED_POST[:2] == (hole.number, states)
                for side, name in ((-1, "left"), (1, "right")):
                    post = point + side * half * right_of(direction)
                    if moved and side == -1:
                        post = post + direction * plan.MOVED_POST[2] * YARD
                        truth.append(("post", hole.number, f"{states} {name}", plan.MOVED_POST[2]))
                    markers.append((hole.number, states, to, str(states), post))
            else:
                markers.append((hole.number, states, to, None, point))
    return markers, truth


# Trees, rough, paths


def _smooth_union(shapes, by=4.0):
    """The union of shapes with its corners rounded; a list of polygons."""
    merged = unary_union(shapes).buffer(-by / 2).buffer(by, 6).buffer(-by / 2, 6).simplify(0.35)
    return [part for part in getattr(merged, "geoms", [merged]) if not part.is_empty]


def _woods(open_ground, site, rng):
    """Groves between the holes: random blobs clipped to where no one is meant to play."""
    allowed = site.buffer(-4).difference(open_ground)
    x0, y0, x1, y1 = site.bounds
    blobs = []
    for _ in range(1100):
        centre = rng.uniform((x0, y0), (x1, y1))
        size, turn = rng.uniform(13, 52), rng.uniform(0, np.pi)
        blobs.append(
            blob(centre, size * rng.uniform(1, 1.7), size, (np.sin(turn), np.cos(turn)), rng, 0.16, 28)
        )
    chosen = [s for s in blobs if s.intersection(allowed).area > 0.72 * s.area]
    parts = _smooth_union([shape.intersection(allowed) for shape in chosen], 7.0)
    return [
        Polygon(part.exterior, [r for r in part.interiors if Polygon(r).area > 120])
        for part in parts
        if part.area > 190
    ]


def _lone_trees(open_ground, woods, paths, site, rng, count=130):
    """Single trees off the lines of play, ``((x, y), crown radius)``, nearer to play than the groves."""
    taken = prep(
        unary_union(
            [
                open_ground.buffer(-7),
                *(wood.buffer(5) for wood in woods),
                *(line.buffer(1.5) for _, line in paths),
            ]
        )
    )
    inside, near = prep(site.buffer(-5)), prep(open_ground.buffer(9))
    x0, y0, x1, y1 = site.bounds
    trees = []
    while len(trees) < count:
        place = rng.uniform((x0, y0), (x1, y1))
        radius = round(float(rng.uniform(2.2, 5.6)), 1)
        point = Point(place)
        if not inside.contains(point) or taken.intersects(point.buffer(radius)) or not near.contains(point):
            continue
        if all(np.hypot(*(place - other)) > radius + size + 1 for other, size in trees):
            trees.append((place, radius))
    return trees


def _paths(ways, greens, tees, bunkers, fairways, waters, site, rng):
    """A cart path a hole, from beside its back tee to its green and on to the next tee."""
    keep_off = unary_union(
        [shape.buffer(4) for shape in (*greens.values(), *(b for _, b in bunkers), *(t for _, _, t in tees))]
        + [water.buffer(4) for water in waters]
        + [site.exterior.buffer(4)]
    )
    prepared = prep(keep_off)
    paths, beaten = [], []
    for hole in plan.HOLES:
        way = ways[hole.number]
        length = LineString(way).length
        reach = hole.fairway[1] if hole.fairway else 12
        stations = np.linspace(4, length - 4, max(4, int(length / 25)))
        points = []
        for station in stations:
            point, direction = point_and_direction(way, station)
            share = station / length
            aside = 9 + (reach + 5) * np.clip((share - 0.12) / 0.25, 0, 1) + rng.uniform(-2, 2)
            across = right_of(direction) * hole.side
            for further in range(0, 40, 2):
                place = point + across * (aside + further)
                if not prepared.intersects(Point(place).buffer(4)):
                    break
            points.append(place)
        beaten.append(points)
    keep_off = unary_union([keep_off, *(shape.buffer(1) for _, shape in fairways)])
    for hole, points, following in zip(plan.HOLES, beaten, [*beaten[1:], None]):
        if following is not None:
            way = np.asarray(plan.HOLES[hole.number].line, float)
            behind = way[0] - 17 * unit(way[1] - way[0])
            points = [*points, *_way_round(points[-1], following[0], behind, keep_off)]
        paths.append((f"Path of hole {hole.number}", smooth_line(points, 72)))
    return paths


def _way_round(start, end, behind, keep_off):
    """Points from ``start`` to ``end``, bent aside no more than it takes to stay off ``keep_off``.

    behind: a point behind the next tee to go round by, where that is better.
    """
    middle, across = (start + end) / 2, right_of(unit(end - start))
    ways = [
        [middle + across * k * side, *via, end]
        for k in range(0, 72, 4)
        for side in (1, -1)
        for via in ((), (behind,))
    ]

    def trespass(points):
        way = smooth_line([start, *points], 30)
        return way.intersection(keep_off).length + 0.01 * way.length

    return min(ways, key=trespass)


def _scenery():
    """Buildings, tarmac and turf of the clubhouse: painted in the images, measured by nobody."""

    def box(x, y, length, width, turn):
        turn = np.radians(turn)
        along = np.array([np.cos(turn), np.sin(turn)])
        corners = [(1, 1), (1, -1), (-1, -1), (-1, 1)]
        return Polygon(
            [np.array([x, y]) + a * length / 2 * along + b * width / 2 * right_of(along) for a, b in corners]
        )

    return {
        "roof": (
            box(640, 96, 34, 14, 8),
            box(662, 88, 15, 22, 8),
            box(700, 118, 22, 11, -20),
            box(40, 660, 9, 7, 30),
        ),
        "tarmac": (
            box(700, 72, 58, 40, 8),
            LineString([(700, 72), (712, 40), (690, 6), (700, -60)]).buffer(3.2),
            LineString([(640, 80), (672, 68), (700, 72)]).buffer(2.2),
        ),
        "practice": (blob((598, 112), 24, 17, unit((1, 0.3)), np.random.default_rng(5), 0.1),),
    }


@lru_cache(maxsize=1)
def drawing():
    """The whole drawing in local metres, see Drawing."""
    rng = np.random.default_rng(20)
    site = smooth_ring(plan.SITE, 80)
    ways = {hole.number: rounded(hole.line) for hole in plan.HOLES}
    greens = _greens(rng)
    lake, pond = smooth_ring(plan.LAKE, 60), smooth_ring(plan.POND, 40)
    burn = stream(plan.BURN, 4.6, rng).difference(lake)
    outlet = stream(plan.OUTLET, 4.2, rng, 50).difference(lake)
    waters = (lake, pond, burn, outlet)
    bunkers = _bunkers(ways, greens, rng)
    sand = unary_union([shape.buffer(1.2) for _, shape in bunkers])
    fairways = []
    for number, shape in _fairways(ways, greens, waters, rng):
        cut = shape.difference(sand)
        cut = _largest(cut)
        fairways.append((number, cut.buffer(-0.7).buffer(0.7, 5).simplify(0.1)))
    tees, plates = _tees(ways, rng)
    lines = {}
    for hole in plan.HOLES:
        points = np.asarray(hole.line, float)
        if hole.number == 5:
            points[-1] = greens[5].centroid.coords[0]
        lines[hole.number] = LineString(points)
    references = {
        (hole.number, name): _reference(hole, name, tees, plates)
        for hole in plan.HOLES
        for name, *_ in plan.TEE_SETS
    }
    middles = {
        hole.number: _approach(
            hole,
            lines[hole.number],
            greens[hole.number],
            references[hole.number, "Black"],
            lines[hole.number].length,
        )
        for hole in plan.HOLES
    }
    markers, truth = _markers(lines, middles, references)
    paths = _paths(ways, greens, tees, bunkers, fairways, (lake, pond), site, rng)
    scenery = _scenery()
    gorse = smooth_ring(plan.GORSE, 32)
    open_ground = unary_union(
        [LineString(way).buffer(27) for way in ways.values()]
        + [shape.buffer(13) for _, shape in fairways]
        + [green.buffer(20) for green in greens.values()]
        + [shape.buffer(7) for _, shape in bunkers]
        + [shape.buffer(9) for _, _, shape in tees]
        + [water.buffer(5) for water in waters]
        + [line.buffer(5) for _, line in paths]
        + [shape.buffer(22) for shapes in scenery.values() for shape in shapes]
        + [gorse.buffer(3), *(Point(place).buffer(7) for _, _, place in plan.TARGETS)]
        + [Polygon([(548, 40), (760, 30), (760, 130), (690, 175), (620, 160), (560, 120)])]
    )
    woods = _woods(open_ground, site, rng)
    trees = _lone_trees(open_ground, woods, paths, site, rng)
    grass = [
        blob((x, y), length, width, (np.cos(np.radians(turn)), np.sin(np.radians(turn))), rng, 0.18, 40)
        for x, y, length, width, turn in plan.ROUGH
    ]
    mown = unary_union([
        *(shape.buffer(5) for _, shape in fairways), *(g.buffer(8) for g in greens.values()), gorse.buffer(1),
        *(t.buffer(4) for _, _, t in tees), *(w.buffer(2) for w in waters),
        *(b.buffer(2) for _, b in bunkers),
        *(line.buffer(2.5) for _, line in paths),
    ])  # fmt: skip
    grass = [
        p
        for shape in grass
        for p in _smooth_union([shape.difference(mown).intersection(site.buffer(-6))], 3)
        if p.area > 200
    ]

    card = {
        (hole.number, name): whole(
            _play(lines[hole.number], references[hole.number, name], middles[hole.number][1]).length / YARD
        )
        + plan.WRONG_ON_CARD.get((hole.number, name), 0)
        for hole in plan.HOLES
        for name, *_ in plan.TEE_SETS
    }
    truth += [("card", hole, name, float(by)) for (hole, name), by in plan.WRONG_ON_CARD.items()]

    features = []

    def add(kind, geometry, holes=(), label="", **attributes):
        attributes = {k: v for k, v in attributes.items() if v is not None}
        fid = sum(feature.kind == kind for feature in features) + 1
        hidden = kind == "bunker" and any(wood.distance(geometry) < 7 for wood in woods)
        view = "partly hidden" if hidden else "clear"
        features.append(Feature(kind, fid, geometry, tuple(holes), label, plan.NEWEST, view, attributes))

    for number, sets, shape in tees:
        add("tee", shape, (number,), tee_set=sets)
    for number, name, point in plates:
        add("plate", Point(point), (number,), tee_set=name)
    for number in sorted(set(greens) - {18}):
        numbers = (9, 18) if number == 9 else (number,)
        label = "Double green" if number == 9 else ""
        add("green", greens[number], numbers, label)
        apron = greens[number].buffer(3.2, 10).difference(greens[number]).difference(sand)
        add("apron", _largest(apron), numbers, label)
    for number, shape in fairways:
        add("fairway", shape, (number,))
    for number, shape in bunkers:
        add("bunker", shape, (number,))
    for shape in grass:
        add("rough", shape, (), "Long grass")
    add("penalty_area", lake, (10, 13, 18), "Lake", stakes="red", water=True)
    add("penalty_area", pond, (3,), "Stew pond", stakes="yellow", water=True)
    for name, shape, holes, stakes in (
        ("Burn", burn, (2, 4, 7, 9, 10), "yellow"), ("Outlet", outlet, (18,), "yellow"),
    ):  # fmt: skip
        shape = shape.intersection(site)
        add("penalty_area", _largest(shape), holes, name, stakes=stakes, water=True)
    add("penalty_area", gorse, (16,), "Gorse", stakes="red", water=False)
    for shape in woods:
        add("trees", shape)
    for place, radius in trees:
        add("tree", Point(place), crown_radius_m=radius)
    for label, line in paths:
        add("path", line, (), label)
    add("boundary", LineString(site.exterior.coords), (), "Out of bounds")
    for number, states, to, pair, point in markers:
        add("marker", Point(point), (number,), states_yd=float(states), states_to=to, pair=pair)
    for label, holes, place in plan.TARGETS:
        add("target", Point(place), holes, label)

    holes = tuple(
        Hole(
            hole.number, lines[hole.number], hole.number, hole.name, hole.par, hole.index, seen_in=plan.NEWEST
        )
        for hole in plan.HOLES
    )
    scenery["site"] = (site,)
    return Drawing(tuple(features), holes, card, tuple(truth), ways, scenery)


# Into the course's CRS


@lru_cache(maxsize=2)
def _transformers(crs):
    from pyproj import Transformer

    x, y = plan.ORIGIN
    middle = f"+lat_0={plan.LATITUDE} +lon_0={plan.LONGITUDE} +x_0={x} +y_0={y}"
    local = f"+proj=tmerc {middle} +k=1 +ellps=GRS80 +units=m"
    return Transformer.from_crs(local, crs, always_xy=True), Transformer.from_crs(crs, local, always_xy=True)


def to_crs(points):
    """(n, 2) local metres -> (n, 2) in the course's CRS."""
    return np.column_stack(_transformers(plan.CRS)[0].transform(*points.T.tolist()))


def to_local(points):
    """(n, 2) in the course's CRS -> (n, 2) local metres."""
    return np.column_stack(_transformers(plan.CRS)[1].transform(*points.T.tolist()))


def _to_millimetres(points):
    return np.round(to_crs(points), 3)


def course():
    """Quernhallow as a ``Course`` in ``plan.CRS``: 18 holes, five tee sets, the printed scorecard."""
    drawn = drawing()
    shapes = map_points([feature.geometry for feature in drawn.features], _to_millimetres)
    lines = map_points([hole.line for hole in drawn.holes], _to_millimetres)
    return Course(
        plan.NAME,
        plan.CRS,
        holes=tuple(replace(hole, line=line) for hole, line in zip(drawn.holes, lines)),
        features=tuple(replace(feature, geometry=shape) for feature, shape in zip(drawn.features, shapes)),
        tee_sets=tuple(
            TeeSet(name, colour, k, players) for k, (name, colour, players, _) in enumerate(plan.TEE_SETS)
        ),
        scorecard=drawn.scorecard,
    )


def write_scorecard(path=SCORECARD):
    """The printed scorecard as CSV, yards."""
    names = [name for name, *_ in plan.TEE_SETS]
    card = drawing().scorecard
    with open(path, "w", newline="", encoding="utf-8") as file:
        rows = csv.writer(file, lineterminator="\n")
        rows.writerow(["hole", "par", "stroke_index", "name", *names])
        for hole in plan.HOLES:
            rows.writerow(
                [hole.number, hole.par, hole.index, hole.name, *(card[hole.number, n] for n in names)]
            )


def write_truth(path=TRUTH):
    """What is wrong on purpose, as CSV: a marker's stated less true distance, the card's less the true."""
    with open(path, "w", newline="", encoding="utf-8") as file:
        rows = csv.writer(file, lineterminator="\n")
        rows.writerow(["what", "hole", "which", "wrong_by_yd"])
        rows.writerows(drawing().truth)


def extent():
    """x least, y least, x greatest, y greatest of the course in its CRS."""
    bounds = MultiPoint([p for hole in course().holes for p in hole.line.coords]).buffer(20).bounds
    return tuple(bounds)


if __name__ == "__main__":
    write_scorecard()
    write_truth()
    kinds = {feature.kind for feature in drawing().features}
    print(
        {kind: len(drawing().of(kind)) for kind in sorted(kinds)},
        format_holes(h.number for h in drawing().holes),
    )
