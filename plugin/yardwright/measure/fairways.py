"""How wide the fairway is where a ball lands, where it begins and ends, and how far one may run."""

import numpy as np

from ..model.words import say
from .accuracy import doubt, plus_minus
from .line import chord_holding, chord_nearest, many_chords
from .rows import FairwayRow, told
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
    if not view.fairways:
        return []
    line = view.tee.line
    fairway = view.ground.fairway([view.positions[place] for place in view.fairways])
    figures, places = view.figures, view.fairways
    crossing = bool(np.isfinite(figures.enter[places]).any())
    starts, ends = (figures.enter, figures.leave) if crossing else (figures.near, figures.far)
    first, last = float(np.nanmin(starts[places])), float(np.nanmax(ends[places]))
    off_line = "" if crossing else say("the line of play does not cross the fairway")
    margin = view.features[view.fairways[0]]
    margins = plus_minus(margin, margin, images)

    doubted = doubt(margins, view.settings)

    stations = landing_stations(line.length, view.settings.fairway_step_yd, players)
    widths, run_out = cuts_through(fairway, line, stations, view.settings.corridor_yd * YARD)

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
            remark=told(remark, off_line, doubted),
        )

    rows = [row(station, *width) for station, width in zip(stations, widths) if width is not None]
    return rows or [row()]


def cuts_through(fairway, line, stations, half_width):
    """Widths of a fairway at some stations, and how far one may run through its first bend.

    Returns ``[(left, right, remark)]``, metres from the line to the margins of the fairway, square to play.
    Left and right are each positive on their own side; where the line does not lie on the fairway one of
    them is negative and the remark says so. None where no fairway lies within ``half_width`` metres.
    Then the run-out: metres from the tee, straight through the first turn point, to where the fairway ends;
    None if the hole does not turn or the turn point is not on the fairway.
    """
    feet = [line.at(station) for station in stations]
    square = [(y, -x) for x, y in map(line.direction_at, stations)]
    turn = float(line.turns[0]) if len(line.turns) else None
    if turn is not None:
        feet.append(line.at(turn))
        square.append(line.direction_at(0.0))
    cuts = many_chords(fairway, feet, square) if feet else []
    through = None if turn is None else chord_holding(cuts.pop())
    widths = [_width([p for p in pieces if p[0] <= half_width and p[1] >= -half_width]) for pieces in cuts]
    return widths, None if through is None else turn + through[1]


def _width(pieces):
    held = chord_holding(pieces)
    piece = held or chord_nearest(pieces)
    if piece is None:
        return None
    return -piece[0], piece[1], "" if held else say("the line of play lies off the fairway here")
