"""A green along its line of approach: front, middle, back, depth and width."""

from dataclasses import dataclass

import numpy as np

from ..model.geometry import coordinates
from ..model.remarks import Remark
from ..model.words import say
from .line import as_point, chord_holding, chord_nearest, chords, middle_of_longest_chord


class TooSmall(Exception):
    """The green is no area that a line could cut."""


@dataclass(frozen=True)
class GreenPlay:
    """A hole's green, metres in its hole frame.

    approach_from: where the approach is taken from, in words. approach_point, anchor, front, middle,
    back: (x, y) arrays. direction: unit vector of the approach. azimuth: true, at the green, degrees.
    pieces: the chords the approach line cuts, ``(from, to)`` in metres from the anchor.
    """

    feature: object
    geometry: object
    approach_from: str
    approach_point: object
    anchor: object
    direction: object
    azimuth: float
    front: object
    middle: object
    back: object
    depth: float
    width: float
    overall_depth: float
    overall_width: float
    area: float
    pieces: tuple
    remarks: tuple = ()


def anchor_of(polygon, last_leg):
    """The point of a green that its approach leads through.

    The centroid; where that lies outside the polygon, the middle of the longest chord square to
    ``last_leg`` (the unit vector of the drawn line's last leg), of two equal ones the nearer to the player.
    """
    centroid = coordinates(polygon.centroid)[0]
    if polygon.covers(as_point(centroid)):
        return centroid
    middle = middle_of_longest_chord(polygon, (-last_leg[1], last_leg[0]))
    return centroid if middle is None else middle


def green_along(feature, approach_from, approach_point, anchor, frame):
    """The green of ``feature`` (geometry in the frame) cut by the line from approach point to anchor.

    Raises TooSmall where it cannot be cut: a sliver or a dot somebody drew by mistake.
    """
    polygon = feature.geometry
    approach_point = np.asarray(approach_point, dtype=float)
    away = anchor - approach_point
    direction = away / np.hypot(*away)
    across = np.array([direction[1], -direction[0]])

    pieces = chords(polygon, anchor, direction)
    if not pieces:
        raise TooSmall()
    main = chord_holding(pieces) or max(pieces, key=lambda piece: piece[1] - piece[0])
    front, back = anchor + main[0] * direction, anchor + main[1] * direction
    middle = (front + back) / 2
    beside = chord_nearest(chords(polygon, middle, across))
    if beside is None:
        raise TooSmall()

    points = coordinates(polygon)
    return GreenPlay(
        feature=feature,
        geometry=polygon,
        approach_from=approach_from,
        approach_point=approach_point,
        anchor=anchor,
        direction=direction,
        azimuth=frame.true_azimuth(anchor, anchor + direction),
        front=front,
        middle=middle,
        back=back,
        depth=main[1] - main[0],
        width=beside[1] - beside[0],
        overall_depth=float(np.ptp(points @ direction)),
        overall_width=float(np.ptp(points @ across)),
        area=polygon.area,
        pieces=tuple(pieces),
        remarks=_remarks(polygon, main, anchor, approach_point),
    )


def _remarks(polygon, main, anchor, approach_point):
    remarks = []
    if polygon.covers(as_point(approach_point)):
        remarks.append(Remark(say("the approach point lies on the green"), "on_green"))
    if chord_holding([main]) is None:
        text = say("the approach line's longest cut is taken, since none holds the green's anchor")
        remarks.append(Remark(text, "longest_cut"))
    return tuple(remarks)
