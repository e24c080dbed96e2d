"""What is drawn over the picture of a hole: measured arcs, symbols where things are, and callouts.

Arcs run about the green's front, each so far from it as its plate with the flag says (light on the page),
and about the tee (dark plates, dashed arcs). A to-green arc stands only where no turn lies between: there a
straight line is the way. Callouts are placed by ``callout_places.Board``.
"""

import math

import numpy as np
from shapely.geometry import LineString, Point, box

from ..measure.callouts import HAZARDS, callouts
from ..measure.units import UNITS, to_unit, whole
from ..model.geometry import map_points
from ..model.remarks import Remark
from ..model.words import say
from .callout_places import Board
from .drawing import (
    BARE,
    DARK,
    FLAG,
    PALE,
    TEE,
    Drawing,
    OnPicture,
    Plate,
    cased,
    diamond,
    parts_of,
    ring_points,
    spot,
)
from .ladder import from_tee, tee_of
from .sheet_parts import LEAST_SIZE, Area, Line, Place, Text, cap_of, width_of
from .windows import placements

_EVERY = 50
_ARC_M = 26.0
"""So far from the line of play an arc runs to either side."""
_APART_MM = 5.0
_SIZE = 6.5


def hole_overlay(plan, played, course, tables, tee_set="", features=(), markers=True):
    """The Drawing over the picture of a WindowPlan of a whole hole.

    tables: what ``measure.course.measure_hole`` says of it. tee_set: whose figures; the longest where it has
    none here. features: the model Features that may show, in the course's CRS (as for
    ``windows.placements``). markers: whether distance markers are drawn, where they are true.
    """
    return _Overlay(plan, played, course, tables, tee_set, features, markers).drawing()


class _Overlay:
    """One overlay being laid out."""

    def __init__(self, plan, played, course, tables, tee_set, features, markers):
        self.plan, self.played, self.course, self.tables = plan, played, course, tables
        self.unit = course.settings.unit
        self.on = OnPicture(plan)
        self.tee = tee_of(played, tee_set)
        self.line = played.drawn if self.tee is None else self.tee.line
        self.markers = markers
        self.rows = placements(plan, played, course, tables, features)
        self.board = Board(self.on.width, self.on.height)
        self.under, self.marks, self.labels = [], [], []
        self.places, self.lost = [], []
        self.callouts = callouts(played, tables, "" if self.tee is None else self.tee.tee_set)

    def drawing(self):
        self._take_ground()
        self._line_of_play()
        self._symbols()
        arcs = self._arcs()
        self._hazards()
        self._turns()
        self._arc_labels(arcs)
        self._target_labels()
        self._marker_labels()
        self._tee_labels()
        self._north()
        remarks = ()
        if self.lost:
            text = say(
                "picture of hole {number}: no room for {labels}",
                number=self.played.number,
                labels=", ".join(self.lost),
            )
            remarks = (Remark(text, "no_room"),)
        return Drawing(
            self.on.width,
            self.on.height,
            (*self.under, *self.marks, *self.labels),
            tuple(self.places),
            remarks,
        )

    # --- what is there ---

    def _shapes(self, *kinds):
        found = [one.geometry for one in self.played.features if one.kind in kinds]
        return map_points(found, self.on.points)

    def _take_ground(self):
        self.own = {}
        frame = self.on.frame
        for feature in self.played.features:
            if feature.kind in HAZARDS:
                shape = map_points([feature.geometry], self.on.points)[0].buffer(0)
                self.own[(feature.kind, feature.fid)] = shape.intersection(frame)
        for (kind, _), shape in self.own.items():
            if kind == "bunker":
                self.board.take(shape)
            else:
                self.board.shun(shape, 0.3)
        if self.played.green is not None:
            green = map_points([self.played.green.geometry], self.on.points)[0]
            self.board.take(green.intersection(frame))
        for shape in self._shapes("tee"):
            self.board.take(shape.intersection(frame))
        for shape in self._shapes("fairway"):
            self.board.shun(shape.buffer(0).intersection(frame), 0.35)
        line = LineString(self.on.points(self.line.points)).intersection(frame)
        self.board.shun(line.buffer(0.8), 2.0)

    def _line_of_play(self):
        points = self.on.points(self.line.points)
        # Light dashes upon a darker line: seen on sand and in the shade of woods.
        points = tuple((float(x), float(y)) for x, y in points)
        self.under.append(Line(points, 0.34, DARK))
        self.under.append(Line(points, 0.16, PALE, (1.8, 0.8)))

    def _symbols(self):
        for row in self.rows:
            x, y = row.x_mm, row.y_mm
            if row.symbol == "tee":
                own = self.tee is not None and row.text == self.tee.tee_set
                colour = {one.name: one.colour for one in self.course.tee_sets}.get(row.text) or PALE
                self.marks += spot(x, y, 0.75 if own else 0.55, colour, PALE if _is_dark(colour) else DARK)
            elif row.symbol == "turn":
                self.marks += diamond(x, y, 0.62)
            elif row.symbol == "marker_proposed" and row.feature_id is not None and self.markers:
                self.marks += spot(x, y, 0.5)
            elif row.symbol == "target":
                self.marks += diamond(x, y, 0.7, DARK, PALE)
            elif row.symbol == "front":
                self.marks += spot(x, y, 0.3)
            else:
                continue
            self.places.append(Place(row.symbol, self.played.number, x, y))
            self.board.take(Point(x, y).buffer(0.9))

    # --- arcs ---

    def _arcs(self):
        """``[(kind, figure, shapely line)]`` of the arcs that find room one above the other."""
        if self.played.green is None:
            return []
        step = _EVERY * UNITS[self.unit]
        front = self.played.green.front
        front_at = self.line.station(front)
        last_turn = self.line.turns[-1] if len(self.line.turns) else 0.0
        to_front = [
            (FLAG, n * _EVERY, front_at - n * step, front, n * step)
            for n in range(1, int(front_at / step) + 1)
            if front_at - n * step >= last_turn - 1.0 and front_at - n * step > 25.0
        ]
        found = to_front[:3]
        if self.tee is not None and self.played.hole.par != 3:
            start = self.tee.reference
            first_turn = self.line.turns[0] if len(self.line.turns) else self.line.length
            from_tee = [
                (TEE, n * _EVERY, n * step, start, n * step)
                for n in (5, 4, 6, 3)
                if n * step <= min(first_turn + 25.0, front_at - 40.0)
            ]
            found += from_tee
        found += to_front[3:5]
        kept, made = [], []
        for kind, figure, station, centre, radius in found:
            y = self.on.at(self.line.at(station))[1]
            arc = self._arc(centre, radius, station)
            if arc is None or any(abs(y - other) < _APART_MM for other in kept):
                continue
            kept.append(y)
            made.append((kind, figure, arc))
        return made

    def _arc(self, centre, radius, station):
        """The part of a circle about a place near a station of the line, as a line on the page."""
        place = self.line.at(station)
        away = place - np.asarray(centre)
        mid = math.atan2(away[1], away[0])
        half = min(_ARC_M / max(radius, 1.0), 0.9)
        turns = mid + np.linspace(-half, half, 49)
        ring = np.asarray(centre) + radius * np.column_stack([np.cos(turns), np.sin(turns)])
        shown = LineString(self.on.points(ring)).intersection(self.on.frame.buffer(-0.4))
        parts = parts_of(shown, "LineString")
        return max(parts, key=lambda part: part.length, default=None)

    # --- labels ---

    def _plate(self, parts, size=_SIZE):
        return Plate(tuple(parts), size)

    def _set(self, plate, anchor, aside=None, own=None, away=True, gap=0.9, name="", dot=False, **more):
        """Place a plate and draw it with its leader; its box, None where it finds no room."""
        found = self.board.place(
            anchor, (plate.width + 0.4, plate.height + 0.4), aside, gap, own, away, **more
        )
        if found is None:
            if name:
                self.lost.append(name)
            return None
        middle, leader = found
        if leader is not None:
            self.marks += cased(leader, 0.16)
            if dot:
                self.marks += spot(*anchor, 0.28)
        self.labels += plate.items(*middle)
        (x, y), wide, high = middle, plate.width / 2, plate.height / 2
        return x - wide, y - high, x + wide, y + high

    def _hazards(self):
        rows = {
            (row.reach, row.clear): row
            for row in self.tables.get("distances", ())
            if self.tee is not None and row.tee_set == self.tee.tee_set and row.kind in HAZARDS
        }
        wanted = [(rows[one.figures], one) for one in self.callouts if one.says == "hazard"]
        for row, one in sorted(wanted, key=lambda part: self._rank(part[0])):
            anchor = self.on.at(one.place)
            if not self.on.frame.contains(Point(anchor)):
                continue
            low, high = (str(whole(to_unit(value, self.unit))) for value in from_tee(row, self.tee)[0])
            text = low if low == high else say("{low}–{high}", low=low, high=high)
            own = self.own.get((row.kind, row.feature_id))
            self._set(self._plate([(TEE, text)]), anchor, self.on.turned(one.away), own, name=text, dot=True)

    def _rank(self, row):
        front = None if self.played.green is None else self.line.station(self.played.green.front)
        beyond = front is not None and row.station_near > front - 5.0
        return (0 if row.forced_carry == "yes" else 1, 1 if beyond else 0, row.aside)

    def _turns(self):
        front = None if self.played.green is None else self.played.green.front
        for one in self.callouts:
            if one.says != "turn":
                continue
            parts = [(TEE, str(whole(to_unit(one.figures[0], self.unit))))]
            if front is not None:
                left = self.line.legs_to(one.figures[0], front)
                parts.append((FLAG, str(whole(to_unit(left, self.unit)))))
            anchor = self.on.at(one.place)
            self._set(self._plate(parts), anchor, self.on.turned(one.away), gap=1.2, name=parts[0][1])

    def _arc_labels(self, arcs):
        """Arcs with their plates, at the end where there is room; without a plate an arc says nothing."""
        for kind, figure, arc in arcs:
            plate = self._plate([(kind, str(figure))])
            ends = sorted((arc.coords[0], arc.coords[-1]), key=lambda end: -end[0])
            for (x, y), side in zip(ends, (1.0, -1.0)):
                held = self._set(plate, (float(x), float(y)), (side, 0.0), away=False, gap=0.2)
                if held is not None:
                    # No end of it pokes out behind its plate.
                    parts = parts_of(arc.difference(box(*held).buffer(0.4)), "LineString")
                    longest = max(parts, key=lambda part: part.length)
                    dash = (1.1, 0.7) if kind == TEE else ()
                    self.under += cased(ring_points(longest), 0.24, dash=dash)
                    break

    def _marker_labels(self):
        """What distance markers say, bare, for it is written on them: no plate of ours."""
        if not self.markers:
            return
        shown = [row for row in self.rows if row.symbol == "marker_proposed" and row.feature_id is not None]
        for row in shown:
            size = (width_of(row.text, LEAST_SIZE, True) + 0.7, cap_of(LEAST_SIZE) + 0.8)
            found = row.text and self.board.place(
                (row.x_mm, row.y_mm), size, (1.0, 0.0), 0.55, away=False, lead_from=9.0
            )
            if found:
                (x, y), _ = found
                base = y + cap_of(LEAST_SIZE) / 2
                self.labels.append(Text(x, base, row.text, LEAST_SIZE, True, "centre", PALE, "marker", DARK))

    def _target_labels(self):
        """What else is worth a distance: its name, and how far it is."""
        rows = {
            row.feature_id: row
            for row in self.tables.get("distances", ())
            if self.tee is not None and row.tee_set == self.tee.tee_set and row.kind == "target"
        }
        for one in self.rows:
            if one.symbol == "target" and one.feature_id in rows:
                row = rows[one.feature_id]
                name = [(BARE, row.label)] if row.label else []
                figure = str(whole(to_unit(from_tee(row, self.tee)[0][0], self.unit)))
                plate = self._plate([*name, (TEE, figure)], LEAST_SIZE)
                self._set(plate, (one.x_mm, one.y_mm), name=row.label or figure)

    def _tee_labels(self):
        for row in self.rows:
            if row.symbol == "tee" and row.text:
                plate = self._plate([(BARE, row.text)], LEAST_SIZE)
                self._set(plate, (row.x_mm, row.y_mm), (1.0, 0.2), lead_from=2.6)

    def _north(self):
        """A needle that points north, where a corner is free: for the wind."""
        radius = 2.4
        corners = [
            (x, y)
            for y in (radius + 1.6, self.on.height - radius - 1.6)
            for x in (radius + 1.6, self.on.width - radius - 1.6)
        ]
        for x, y in corners:
            if self.board.is_free((x - radius - 0.4, y - radius - 0.4, x + radius + 0.4, y + radius + 0.4)):
                break
        else:
            return
        turn = math.radians(-self.plan.up_azimuth)
        ahead = np.array([math.sin(turn), -math.cos(turn)])
        beside = np.array([-ahead[1], ahead[0]])
        middle = np.array([x, y])
        tip, tail = middle + ahead * (radius - 0.1), middle - ahead * (radius - 0.1)
        self.marks += spot(x, y, radius, PALE, DARK, 0.2)

        def ring(*points):
            return (tuple((float(a), float(b)) for a, b in points),)

        wing = 0.62
        self.marks.append(Area(ring(tip, middle + beside * wing, middle - beside * wing), DARK))
        self.marks.append(Area(ring(tail, middle + beside * wing, middle - beside * wing), "#b9c1bc"))
        self.places.append(Place("north", self.played.number, float(tip[0]), float(tip[1])))
        self.board.take_box(x - radius, y - radius, x + radius, y + radius)


def _is_dark(colour):
    value = colour.lstrip("#")
    if len(value) != 6:
        return False
    red, green, blue = (int(value[n : n + 2], 16) for n in (0, 2, 4))
    return 0.3 * red + 0.59 * green + 0.11 * blue < 110
