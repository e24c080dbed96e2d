"""What can be told of a thing that was just drawn: its hole, its number, what a marker states."""

from dataclasses import dataclass, field

from ..model.kinds import BY_NAME
from ..model.numbers import format_holes
from .hole import holes_near, play_hole
from .pointer import marker_figures
from .units import YARD


@dataclass(frozen=True)
class Filled:
    """``fields``: values by field name. ``row``: the id of a row without geometry that the drawn thing
    belongs in, as a scorecard leaves for each hole; None for a new one. ``holes``: numbers it is given."""

    fields: dict = field(default_factory=dict)
    row: int = None
    holes: tuple = ()


def fill_in(course, kind, shape, hole=None, tee_set="", seen_in="", view="clear", index=None):
    """The Filled of a shape (shapely, in the course's CRS) drawn as a kind.

    hole: the number of the hole in hand. It decides as long as that hole has no line of play: then nothing
    drawn tells whose a thing is. Afterwards nearness does (``whose.assign``), and the hole in hand only where
    nothing is near. tee_set, seen_in, view: what is in hand of these.
    """
    names = {one.name for one in BY_NAME[kind].fields}
    if kind == "patch":
        return Filled({"image": seen_in or None})
    fields = {"seen_in": seen_in or None, "view": view} if "seen_in" in names else {}
    if kind == "hole":
        number, row = _number_of_line(course, hole)
        return Filled({**fields, "number": number}, row, (number,))
    numbers = _holes_of(course, kind, shape, hole) if names & {"hole", "holes"} else ()
    if "holes" in names:
        fields["holes"] = format_holes(numbers) or None
    elif "hole" in names:
        fields["hole"] = numbers[0] if numbers else None
    if "tee_set" in names:
        fields["tee_set"] = tee_set or None
    if kind == "marker" and numbers:
        fields.update(_stated(course, shape, numbers[0], index))
    return Filled(fields, None, tuple(numbers))


def _number_of_line(course, hole):
    """The number a new line of play gets, and the row that waits for it."""
    waiting = {one.number: one.fid for one in course.holes if one.line is None}
    if hole in waiting:
        return hole, waiting[hole]
    if waiting:
        number = min(waiting)
        return number, waiting[number]
    return max((one.number for one in course.holes), default=0) + 1, None


def _holes_of(course, kind, shape, hole):
    in_hand = None if hole is None else course.hole(hole)
    if in_hand is not None and in_hand.line is None and kind not in ("path", "boundary"):
        return (hole,)
    numbers = holes_near(course, kind, shape)
    if not numbers and hole is not None and kind in ("tee", "plate", "green", "marker"):
        return (hole,)
    return numbers


def _stated(course, shape, number, index):
    played = play_hole(course, number, index)
    if played is None:
        return {}
    point = played.frame.to_frame(course.crs)([(shape.x, shape.y)])[0]
    found = marker_figures(played, point, course.settings)
    if found is None:
        return {}
    if course.settings.unit == "m":
        return {"states_m": float(round(found.states))}
    return {"states_yd": float(round(found.states / YARD))}
