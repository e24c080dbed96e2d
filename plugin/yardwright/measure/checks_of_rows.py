"""Checks of what fields and tables say: rows left out, odd values, tee sets, stroke indexes."""

from ..model.words import and_list, said, say, to_say
from .findings import (
    Change,
    Finding,
    Repair,
    about,
    box_of,
    called,
    kind_called,
    numbered,
    on_hole,
    quoted,
    sentence,
    sets_of,
)
from .hole import PLACED

_PRACTICE = to_say("practice")
"""What is written of a thing that belongs to no hole, in English or in the user's language."""


def left_out(layout):
    """What no hole could be found for, and what names a hole that is not there."""
    known = {hole.number for hole in layout.course.holes}
    for feature, numbers in zip(layout.course.features, layout.index.holes):
        absent = [number for number in numbers if number not in known]
        if absent:
            yield about(
                next((number for number in numbers if number in known), None),
                "no_such_hole",
                "wrong",
                say(
                    "{feature} names hole {numbers}, which is not there.",
                    feature=called(feature),
                    numbers=and_list(map(str, absent)),
                ),
                say("Correct the number, or draw that hole’s line of play."),
                (feature,),
            )
        elif feature.kind in PLACED and not numbers and not _for_practice(feature):
            yield about(
                None,
                "left_out",
                "doubtful",
                say("{feature} has no hole and lies near none: it is left out.", feature=called(feature)),
                say(
                    "Give it its hole’s number; write “{practice}” in its note if it belongs to none.",
                    practice=said(_PRACTICE),
                ),
                (feature,),
            )


def _for_practice(feature):
    texts = (feature.label, feature.get("note", ""), feature.get("tee_set", ""))
    return any(word.lower() in str(text).lower() for text in texts for word in {_PRACTICE, said(_PRACTICE)})


def unread(layout):
    """Rows that could not be read, which the reading has told of."""
    for problem in layout.course.problems:
        kind, fid = getattr(problem, "kind", ""), getattr(problem, "fid", None)
        if not kind:
            yield Finding(None, "unread", "doubtful", sentence(problem), say("Correct it in the table."))
        elif problem.code == "second":
            yield _second_hole(layout, fid, *problem.other)
        elif problem.code == "empty":
            yield Finding(
                None,
                "empty",
                "wrong",
                sentence(say("{feature} has no outline: it is left out.", feature=numbered(kind, fid))),
                say("Draw it anew, or delete its row."),
                ((kind, fid),),
                None,
                Repair(say("Delete the empty row"), (Change(kind, fid, delete=True),)),
            )
        else:
            text = say(
                "{kind} {number}: {reason}.", kind=kind_called(kind), number=fid, reason=problem.reason
            )
            yield Finding(
                None,
                "unread",
                "wrong" if problem.code == "left_out" else "doubtful",
                sentence(text),
                say("Correct the row in the attribute table, draw it anew, or delete it."),
                ((kind, fid),),
            )


def _second_hole(layout, fid, number, kept):
    hole = layout.course.hole(number)
    return Finding(
        number,
        "number_twice",
        "wrong",
        say("Two lines of play have the number {number}: one is left out.", number=number),
        say("Correct the number of one of them, or delete it."),
        (("hole", fid), ("hole", kept)),
        None if hole is None or hole.line is None else box_of(hole.line),
    )


def odd_values(layout):
    """Values that the reading did not understand or doubted."""
    for place in layout.of(*layout.places):
        feature = layout.course.features[place]
        if feature.remark:
            yield about(
                layout.hole_of(place),
                "value",
                "doubtful",
                say("{thing}: {remark}.", thing=called(feature), remark=feature.remark),
                say("Correct the value in the attribute table or the form."),
                (feature,),
            )


def tee_sets(layout):
    """Whether there is a table of tee sets, and whether the scorecard keeps to it."""
    course = layout.course
    known = {tee_set.name for tee_set in course.tee_sets}
    carded = dict.fromkeys(name for _, name in course.scorecard)
    drawn = [name for place in layout.of("tee", "plate") for name in sets_of(course.features[place])]
    if not known:
        if drawn or carded:
            yield Finding(
                None,
                "tee_set",
                "missing",
                _no_table(list(dict.fromkeys([*carded, *drawn]))),
                say("Write the tee sets into the table, in their order."),
            )
        return
    for name in carded:
        if name not in known:
            yield Finding(
                None,
                "tee_set",
                "wrong",
                say(
                    "The scorecard names the tee set “{name}”, which is not in the table of tee sets.",
                    name=name,
                ),
                say("Correct the scorecard, or add the tee set."),
            )


def _no_table(used):
    if len(used) == 1:
        return say("The table of tee sets is empty, but “{name}” is used.", name=used[0])
    names = and_list(map(quoted, used))
    return say("The table of tee sets is empty, but {names} are used.", names=names)


def stroke_indexes(layout):
    """Stroke indexes missing, and given to two holes."""
    holes = layout.course.holes
    given = {}
    for hole in holes:
        if hole.stroke_index is not None:
            given.setdefault(hole.stroke_index, []).append(hole)
    if holes and not given:
        yield Finding(
            None,
            "stroke_index",
            "missing",
            say("No hole has a stroke index."),
            say("Write them into the holes’ forms."),
        )
        return
    for hole in holes:
        if hole.stroke_index is None:
            yield on_hole(
                hole,
                "stroke_index",
                "missing",
                say("The hole has no stroke index."),
                say("Write it into the hole’s form."),
            )
        elif given[hole.stroke_index][0] is not hole:
            yield on_hole(
                hole,
                "stroke_index",
                "wrong",
                say(
                    "Stroke index {index} is hole {other}’s too.",
                    index=hole.stroke_index,
                    other=given[hole.stroke_index][0].number,
                ),
                say("Correct one of them: each index is given once."),
            )
