"""What of a hole is drawn, and what is missing, with the reason why it is wanted."""

from dataclasses import dataclass

from ..model.kinds import BY_NAME
from ..model.words import or_list, said, say
from .hole import CourseIndex, longest_tee, play_hole
from .par import pars_for
from .units import to_unit, whole

THERE, MISSING, NONE = "there", "missing", "none"
COUNTED = ("bunker", "penalty_area", "trees", "tree", "marker", "target")
"""Kinds that a hole may well have none of."""


@dataclass(frozen=True)
class Item:
    """A line of the list. state: ``there``, ``missing`` (with the reason in ``text``) or ``none``, which is
    nothing to mend. kind: the layer it is drawn in, "" for what is written and not drawn."""

    kind: str
    state: str
    title: str
    text: str = ""


def checklist(course, number, index=None):
    """The Items of a hole, in the order in which it is drawn; () for a number that is not in the course."""
    hole = course.hole(number)
    if hole is None:
        return ()
    index = index or CourseIndex(course)
    here = {}
    for feature in index.named_of(number):
        here.setdefault(feature.kind, []).append(feature)
    played = play_hole(course, number, index)
    items = [
        _line(hole),
        _tees(course, number, here),
        _one("green", here, say("distances end where the line of play ends")),
        _fairway(hole, here),
    ]
    items += [_counted(kind, here) for kind in COUNTED]
    return (*items, _par(hole, played, course.settings.unit), _stroke_index(hole))


def _title(kind):
    return said(BY_NAME[kind].title)


def _line(hole):
    if hole.line is None:
        why = say("draw it from the back tee over the turns to the green")
        return Item("hole", MISSING, _title("hole"), why)
    return Item("hole", THERE, _title("hole"))


def _tees(course, number, here):
    grounds = here.get("tee", []) + here.get("plate", [])
    named = {name.strip() for f in grounds for name in str(f.get("tee_set", "")).split(",") if name.strip()}
    wanted = {name for (hole, name) in course.scorecard if hole == number}
    wanted = wanted or {tee_set.name for tee_set in course.tee_sets}
    lacking = [one.name for one in course.tee_sets if one.name in wanted - named]
    lacking += sorted(wanted - named - set(lacking))
    if not grounds:
        return Item("tee", MISSING, _title("tee"), say("distances are measured from it"))
    if lacking:
        return Item("tee", MISSING, _title("tee"), say("none of {tee_sets}", tee_sets=", ".join(lacking)))
    order = [one.name for one in course.tee_sets if one.name in named]
    return Item("tee", THERE, _title("tee"), ", ".join(order + sorted(named - set(order))))


def _one(kind, here, why):
    if kind in here:
        return Item(kind, THERE, _title(kind))
    return Item(kind, MISSING, _title(kind), why)


def _fairway(hole, here):
    if hole.par == 3 and "fairway" not in here:
        return Item("fairway", NONE, _title("fairway"), say("a par 3 may have none"))
    return _one("fairway", here, say("its widths, and the way round a hazard, come from it"))


def _counted(kind, here):
    count = len(here.get(kind, ()))
    text = str(count) if count else say("none of its own")
    return Item(kind, THERE if count else NONE, _title(kind), text)


def _par(hole, played, unit):
    if hole.par is not None:
        return Item("", THERE, say("Par"), str(hole.par))
    tee = None if played is None else longest_tee(played)
    if tee is None:
        return Item("", MISSING, say("Par"), say("the approach depends on it"))
    text = say(
        "by its {length} {unit} a par {likely}",
        length=whole(to_unit(tee.length, unit)),
        unit=unit,
        likely=or_list(str(par) for par in pars_for(tee.length, unit, "men")),
    )
    return Item("", MISSING, say("Par"), text)


def _stroke_index(hole):
    if hole.stroke_index is not None:
        return Item("", THERE, say("Stroke index"), str(hole.stroke_index))
    return Item("", MISSING, say("Stroke index"), say("the scorecard gives it"))
