"""Where a hole turns, and where to stop short of the green."""

import math

from .accuracy import doubt, plus_minus
from .rows import DoglegRow, LayupRow
from .units import YARD


def dogleg_rows(view, images):
    """A row for each turn point ahead of the tee: how far, how sharp, to which side, what is left."""
    line, tee = view.tee.line, view.tee
    sure = plus_minus(tee.feature, view.played.hole, images)
    rows = []
    for turn, station in enumerate(line.turns, start=1):
        before, after = line.direction_at(station - 1e-3), line.direction_at(station + 1e-3)
        left_turn = before[0] * after[1] - before[1] * after[0]
        rows.append(
            DoglegRow(
                hole=view.played.number,
                tee_set=tee.tee_set,
                turn=turn,
                turn_station=float(station),
                turn_angle=abs(math.degrees(math.atan2(left_turn, float(before @ after)))),
                turn_side="left" if left_turn > 0 else "right",
                to_green=line.length - float(station),
                plus_minus=sure,
                remark=doubt(sure, view.settings),
            )
        )
    return rows


def layup_rows(view, images):
    """A row for each remaining distance that can be left to the green's middle from this tee."""
    sure = None
    if view.played.green is not None:
        sure = plus_minus(view.tee.feature, view.played.green.feature, images)
    return [
        LayupRow(
            hole=view.played.number,
            tee_set=view.tee.tee_set,
            remaining=remaining * YARD,
            station=view.tee.line.length - remaining * YARD,
            plus_minus=sure,
            remark=doubt(sure, view.settings),
        )
        for remaining in view.settings.layup_yd
        if remaining * YARD < view.tee.line.length
    ]
