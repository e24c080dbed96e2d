"""Whether a player must carry a hazard that the line of play crosses."""

from ..model.geometry import coordinates
from .line import as_point

SLACK_M = 0.5
"""A fairway that falls short of a crossing's end by no more than this still runs beside it (our own rule)."""


def way_round(line, hazard, crossing, corridor, fairway):
    """Whether fairway lies beside a crossing, so that a player need not carry it.

    There is a way round when one piece of fairway that the hazard does not cut runs beside the whole
    crossing, and the ground it lies on joins the ground before the crossing to that behind it within
    the corridor. (A stream right across the corridor leaves no way round even where, running slantwise,
    it has fairway on both sides at one station.)
    """
    enter, leave = crossing
    clear_fairway = fairway.difference(hazard)
    beside = []
    for piece in getattr(clear_fairway, "geoms", [clear_fairway]):
        if not piece.is_empty and _runs_beside(line, piece, enter + SLACK_M, leave - SLACK_M):
            beside.append(piece)
    if not beside:
        return False
    ground = corridor.difference(hazard)
    banks = [as_point(line.at(s)) for s in (enter - SLACK_M, leave + SLACK_M) if 0.0 < s < line.length]
    return any(
        all(area.covers(bank) for bank in banks) and any(piece.intersects(area) for piece in beside)
        for area in getattr(ground, "geoms", [ground])
    )


def _runs_beside(line, piece, first, last):
    # Of most pieces the corners tell; where the line bends a piece may reach further between two corners.
    stations = line.stations(coordinates(piece))
    if stations.min() <= first and stations.max() >= last:
        return True
    if not len(line.turns):
        return False
    near, far = line.extent(piece)
    return near <= first and far >= last
