"""Which figures of a hole are worth writing beside the thing they are about, and where that thing is."""

from dataclasses import dataclass

import numpy as np
from shapely.ops import nearest_points

from ..model.geometry import coordinates
from .hole import longest_tee
from .line import as_point

HAZARDS = ("bunker", "penalty_area")
"""What is played over or kept short of. Woods are hazards too, but their figures would cover all else."""
_INTO_M = 4.0
"""So far inside its edge, at most, is a hazard pointed at."""

_ON_LINE_M = 0.5


@dataclass(frozen=True)
class Callout:
    """Figures of one thing, and the place (x, y) in the hole's frame that they belong to.

    says: ``length`` (figures: the hole's length), ``hazard`` (reach, clear), ``green`` (from the tee to
    front, middle and back), ``front``, ``middle`` and ``back`` (one of these at its own place),
    ``green_size`` (depth, width), ``turn`` (from the tee, then to the green's middle), ``marker`` (stated,
    measured; only of one that is off). figures: metres, None where there is none. away: the unit vector
    towards the side on which a label stands best, off the line of play. label: the tee set or the hazard's
    name, "" for none.
    """

    says: str
    place: tuple
    figures: tuple
    away: tuple
    label: str = ""


def callouts(played, tables, tee_set=""):
    """The Callouts of a hole, those first that matter most where there is no room for all.

    played: a PlayedHole. tables: what ``measure.course.measure_hole`` says of it. tee_set: the set that the
    figures start from; the longest tee where it has none here.
    """
    tee = next((tee for tee in played.tees if tee_set and tee.tee_set == tee_set), None)
    tee = tee or longest_tee(played)
    rows = [row for row in tables.get("distances", ()) if tee is not None and row.tee_set == tee.tee_set]
    found = _of_green(played, rows)
    if tee is not None:
        behind = -tee.line.direction_at(0.0)
        found.append(Callout("length", _xy(tee.reference), (tee.length,), _xy(behind), tee.tee_set))
        found += _of_turns(tee, tables)
        found += _of_hazards(played, tee, rows)
    return found + _of_markers(played, tables)


def _xy(point):
    return float(point[0]), float(point[1])


def _beside(line, place):
    """The unit vector from the line of play to a place beside it; to play's right from a place on it."""
    place = np.asarray(place, dtype=float)
    station = line.station(place)
    off = place - line.at(station)
    far = float(np.hypot(*off))
    along = line.direction_at(station)
    return _xy(off / far) if far > _ON_LINE_M else _xy((along[1], -along[0]))


def _of_green(played, rows):
    green = played.green
    if green is None:
        return []
    onwards = played.drawn.direction_at(played.drawn.length)
    aside = _xy((onwards[1], -onwards[0]))
    found = []
    for row in rows:
        if row.kind == "green":
            ends = ("front", row.reach), ("middle", row.middle), ("back", row.clear)
            found.append(Callout("green", _xy(green.middle), tuple(figure for _, figure in ends), aside))
            found += [Callout(name, _xy(getattr(green, name)), (figure,), aside) for name, figure in ends]
    found.append(Callout("green_size", _xy(green.back), (green.depth, green.width), _xy(onwards)))
    return found


def _of_turns(tee, tables):
    found = []
    for row in tables.get("doglegs", ()):
        if row.tee_set == tee.tee_set:
            place, along = tee.line.at(row.turn_station), tee.line.direction_at(row.turn_station)
            outer = (-along[1], along[0]) if row.turn_side == "right" else (along[1], -along[0])
            found.append(Callout("turn", _xy(place), (row.turn_station, row.to_green), _xy(outer)))
    return found


def _of_hazards(played, tee, rows):
    hazards = {(f.kind, f.fid): f for f in played.features if f.kind in HAZARDS}
    found = []
    for row in rows:
        feature = hazards.get((row.kind, row.feature_id))
        if feature is not None:
            place = _where_played(feature.geometry, tee.line, row)
            away = _beside(tee.line, place)
            found.append(Callout("hazard", place, (row.reach, row.clear), away, feature.label))
    return found


def _where_played(shape, line, row):
    """The place of a hazard nearest to the line of play beside it, a little inside; a crossing's middle.

    A long hazard's own middle may lie far from where this hole meets it.
    """
    if row.enter is not None:
        return _xy(line.at((row.enter + row.leave) / 2))
    beside = as_point(line.at((row.station_near + row.station_far) / 2))
    _, near = nearest_points(beside, shape)
    edge = coordinates(near)[0]
    inwards = coordinates(shape.representative_point())[0] - edge
    return _xy(edge + inwards * min(1.0, _INTO_M / max(float(np.hypot(*inwards)), 1e-9)))


def _of_markers(played, tables):
    posts = {str(feature.fid): feature for feature in played.features if feature.kind == "marker"}
    found = []
    for row in tables.get("markers", ()):
        if row.verdict == "off" and row.marker_id in posts:
            place = _xy(coordinates(posts[row.marker_id].geometry)[0])
            found.append(Callout("marker", place, (row.states, row.measured), _beside(played.drawn, place)))
    return found
