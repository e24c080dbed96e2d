"""How wide the fairway is where a ball lands, where it begins and ends, and how far one may run."""

import numpy as np
from shapely.ops import unary_union

from .accuracy import doubt, plus_minus
from .line import chord_holding, chord_nearest, chords
from .rows import FairwayRow
from .units import YARD

LANDING_ZONES_YD = {
    "men": ((200, 250), (370, 470), (540, 540)),
    "women": ((150, 210), (280, 400), (410, 410)),
}
"""From the bogey player's landing to the scratch player's: Course Rating Manual 9, yards from the tee."""


def landing_stations(length_m, step_yd, players):
    """Stations in metres, every ``step_yd`` of the landing zones that lie short of the hole's length."""
    stations = []
    for first, last in LANDING_ZONES_YD[players or "men"]:
        stations.extend(np.arange(first, last + 1e-9, step_yd) * YARD)
    return [station for station in dict.fromkeys(stations) if station < length_m]


def fairway_rows(view, images, players=None):
    """A row a landing station; one row without a station where the fairway ends before the first."""
    features = [feature for feature, _, _ in view.parts if feature.kind == "fairway"]
    if not features:
        return []
    line = view.tee.line
    fairway = unary_union([feature.geometry for feature in features])
    crossing = line.crossings(view.fairway)
    first, last = crossing or line.extent(view.fairway)[:2]
    off_line = "" if crossing else "the line of play does not cross the fairway"
    run_out = run_out_through(line, fairway)
    margins = plus_minus(features[0], features[0], images)

    def row(station=None, left=None, right=None, remark=""):
        return FairwayRow(
            hole=view.played.number,
            tee_set=view.tee.tee_set,
            station=station,
            width=None if left is None else left + right,
            left=left,
            right=right,
            first=first,
            last=last,
            run_out=run_out,
            plus_minus=margins,
            remark="; ".join(filter(None, (remark, off_line, doubt(margins, view.settings)))),
        )

    rows = []
    for station in landing_stations(line.length, view.settings.fairway_step_yd, players):
        width = width_at(line, station, fairway, view.settings.corridor_yd * YARD)
        if width is not None:
            left, right, remark = width
            rows.append(row(station, left, right, remark))
    return rows or [row()]


def width_at(line, station, fairway, half_width):
    """``(left, right, remark)``: metres from the line to the margins of the fairway, square to play.

    Left and right are each positive on their own side; where the line does not lie on the fairway one of
    them is negative and the remark says so. None where no fairway lies within ``half_width`` metres.
    """
    ahead = line.direction_at(station)
    to_right = np.array([ahead[1], -ahead[0]])
    pieces = [
        p for p in chords(fairway, line.at(station), to_right) if p[0] <= half_width and p[1] >= -half_width
    ]
    if not pieces:
        return None
    held = chord_holding(pieces)
    piece = held or chord_nearest(pieces)
    return -piece[0], piece[1], "" if held else "the line of play lies off the fairway here"


def run_out_through(line, fairway):
    """Metres from the tee, straight through the first turn point, to where the fairway ends; None if
    the hole does not turn or the turn point is not on the fairway."""
    if not len(line.turns):
        return None
    turn = float(line.turns[0])
    piece = chord_holding(chords(fairway, line.at(turn), line.direction_at(0.0)))
    return None if piece is None else turn + piece[1]
