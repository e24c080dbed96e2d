"""From a tee to everything that matters on the way: reach, clear, enter, leave, side, aside, carries."""

from dataclasses import dataclass, fields
from functools import cached_property
from math import isnan

import numpy as np

from ..model.geometry import array_of, outlines
from ..model.kinds import BY_NAME
from ..model.words import said, to_say
from .accuracy import doubt, plus_minus
from .carry import SLACK_M, way_round
from .corridor import Ground, counting_from, joined
from .figures import Figures, figures_of
from .lines import Lines
from .rows import DistanceRow, told

_OUTSIDE = to_say("given to this hole but wholly outside its corridor")


@dataclass(frozen=True)
class TeeView:
    """One tee's line of play with what counts from it.

    ground: the hole's Ground; corridor: a polygon; positions: the places on the Ground of the parts that
    count; shapes: what counts of each; outside: whether it lies wholly outside the corridor; figures: the
    Figures of the parts; green_extent: least and greatest station of the green, None without a green.
    """

    played: object
    tee: object
    settings: object
    ground: Ground
    corridor: object
    positions: list
    shapes: object
    outside: list
    figures: Figures
    green_extent: tuple = None

    @property
    def features(self):
        """The feature of each part."""
        return [self.ground.features[position] for position in self.positions]

    @cached_property
    def fairways(self):
        """The places among the parts of all fairways."""
        return [place for place, feature in enumerate(self.features) if feature.kind == "fairway"]

    @cached_property
    def fairway(self):
        """All fairway that counts from this tee as one shape; None where there is none."""
        return joined([self.shapes[place] for place in self.fairways]) if self.fairways else None


def tee_views(played, settings):
    """A TeeView for each tee of a hole; worked out together, which is several times as fast."""
    if not played.tees:
        return []
    ground = Ground(played)
    lines = Lines([tee.line for tee in played.tees])
    counting = counting_from(ground, [tee.line for tee in played.tees], settings)
    figures = figures_of(counting, lines, np.array([tee.reference for tee in played.tees]), played.green)
    greens = _green_extents(played, lines)
    bounds = np.searchsorted(counting.tee, np.arange(len(played.tees) + 1)).tolist()
    views = []
    for place, tee in enumerate(played.tees):
        own = slice(bounds[place], bounds[place + 1])
        views.append(
            TeeView(
                played=played,
                tee=tee,
                settings=settings,
                ground=ground,
                corridor=counting.corridors[place],
                positions=counting.position[own].tolist(),
                shapes=counting.shapes[own],
                outside=counting.outside[own].tolist(),
                figures=figures.of(own),
                green_extent=greens[place],
            )
        )
    return views


def _green_extents(played, lines):
    count = len(played.tees)
    if played.green is None:
        return [None] * count
    near, far, _ = lines.extents(outlines(array_of([played.green.geometry] * count)), np.arange(count))
    return list(zip(near.tolist(), far.tolist()))


def distance_rows(view, images):
    """A row for the green, then one for each feature that counts from this tee, nearest first."""
    rows = [] if view.played.green is None else [_green_row(view, images)]
    features = _feature_rows(view, images)
    features.sort(key=lambda row: (round(row.station_near, 4), row.kind, row.feature_id))
    return rows + features


def _green_row(view, images):
    green, line = view.played.green, view.tee.line
    front, back = line.legs_to(0.0, green.front), line.legs_to(0.0, green.back)
    near, far = view.green_extent
    sure = plus_minus(view.tee.feature, green.feature, images)
    return DistanceRow(
        hole=view.played.number,
        tee_set=view.tee.tee_set,
        kind="green",
        feature_id=green.feature.fid,
        label=green.feature.label,
        side="across",
        reach=front,
        clear=back,
        enter=front,
        leave=back,
        aside=0.0,
        station_near=near,
        station_far=far,
        forced_carry="no",
        middle=line.length,
        plus_minus=sure,
        remark=told(*view.played.green_remarks, doubt(sure, view.settings)),
    )


def _feature_rows(view, images):
    columns = view.figures
    reach, clear, aside, near, far, enter, leave, side, short = (
        getattr(columns, field.name).tolist() for field in fields(columns)
    )
    sureness, outside = {}, said(_OUTSIDE)
    rows = []
    for place, feature in enumerate(view.features):
        seen = (feature.seen_in, feature.view)
        if seen not in sureness:
            sure = plus_minus(view.tee.feature, feature, images)
            sureness[seen] = sure, doubt(sure, view.settings)
        sure, doubted = sureness[seen]
        crossing = None if isnan(enter[place]) else (enter[place], leave[place])
        rows.append(
            DistanceRow(
                hole=view.played.number,
                tee_set=view.tee.tee_set,
                kind=feature.kind,
                feature_id=feature.fid,
                label=feature.label,
                side="across" if crossing else side[place],
                reach=reach[place],
                clear=clear[place],
                enter=crossing[0] if crossing else None,
                leave=crossing[1] if crossing else None,
                aside=aside[place],
                station_near=near[place],
                station_far=far[place],
                short_of_green=None if view.played.green is None else short[place],
                forced_carry="yes" if crossing and _is_forced(view, place, feature, crossing) else "no",
                plus_minus=sure,
                remark=told(feature.remark, outside if view.outside[place] else "", doubted),
            )
        )
    return rows


def _is_forced(view, place, feature, crossing):
    if not BY_NAME[feature.kind].hazard:
        return False
    near, far = view.figures.near[view.fairways], view.figures.far[view.fairways]
    if not len(near) or near.min() > crossing[0] + SLACK_M or far.max() < crossing[1] - SLACK_M:
        return True
    # The hazard is taken whole: cut to the corridor, a hair of ground could stay along the corridor's margin.
    hazard = view.ground.shapes[view.positions[place]]
    return not way_round(view.tee.line, hazard, crossing, view.corridor, view.fairway)
