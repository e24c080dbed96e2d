"""Figures of the course as functions of QGIS's expressions, for labels of layouts and texts of holes.

They stand in the expression builder in the group “Yardwright”, each with what it takes and an example. What
is not there gives NULL, and the expression says why.
"""

import math
from contextlib import contextmanager
from dataclasses import dataclass
from threading import local

from qgis.core import (
    NULL,
    QgsExpression,
    QgsExpressionContext,
    QgsExpressionContextUtils,
    QgsExpressionFunction,
)

from ..model.errors import YardwrightError
from ..model.words import said, say, to_say
from .book_figures import NotThere, book_in_hand

GROUP = "Yardwright"

_HOLE = "hole", to_say("the hole’s number")
_TEE_SET = "tee_set", to_say("the name of a tee set")
_LABEL = "label", to_say("what the thing is called on the course")
_EVENT = "event", to_say("the event’s name")
_ROUND = "round", to_say("the round’s number")
_FLIGHT = "flight", to_say("the flight’s name")


@dataclass(frozen=True)
class Function:
    """A function. takes: ``((name, what it is), ...)``; gives: called with the book and what was given;
    example: an expression; says: what it gives, in a sentence."""

    name: str
    takes: tuple
    says: str
    example: str
    gives: object
    result: str


FUNCTIONS = (
    Function(
        "hole_name",
        (_HOLE,),
        to_say("The hole’s name."),
        "hole_name(7)",
        lambda book, hole: book.hole(hole).name,
        "'Long Rigg'",
    ),
    Function(
        "hole_par",
        (_HOLE,),
        to_say("The hole’s par."),
        "hole_par(7)",
        lambda book, hole: _known(book.hole(hole).par, say("Hole {number} has no par.", number=hole)),
        "4",
    ),
    Function(
        "stroke_index",
        (_HOLE,),
        to_say("The hole’s stroke index."),
        "stroke_index(7)",
        lambda book, hole: _known(
            book.hole(hole).stroke_index, say("Hole {number} has no stroke index.", number=hole)
        ),
        "11",
    ),
    Function(
        "hole_description",
        (_HOLE,),
        to_say("What the course says of the hole; expressions between [% and %] in it are worked out."),
        "hole_description(7)",
        None,
        "'Burn: 234'",
    ),
    Function(
        "hole_length",
        (_HOLE, _TEE_SET),
        to_say("From the tee along the line of play to the green’s middle, whole units of the course."),
        "hole_length(7, 'Blue')",
        lambda book, hole, tee_set: book.length(hole, tee_set),
        "412",
    ),
    Function(
        "hole_lengths",
        (_HOLE,),
        to_say("The hole’s lengths from all tee sets, each with its name, in the order of the sets."),
        "hole_lengths(7)",
        lambda book, hole: "   ".join(
            # A line must not end between a name and its figure.
            say("{tee_set} {length}", tee_set=name, length=length).replace(" ", "\u00a0")
            for name, length in book.lengths(hole)
        ),
        "'Black 433   Blue 412'",
    ),
    Function(
        "course_length",
        (_TEE_SET,),
        to_say("The lengths of all holes from a tee set, as they are printed, added up."),
        "course_length('Blue')",
        lambda book, tee_set: book.total(tee_set),
        "6412",
    ),
    Function(
        "course_name",
        (),
        to_say("The course’s name."),
        "course_name()",
        lambda book: book.course.name,
        "'Quernhallow'",
    ),
    Function(
        "course_unit",
        (),
        to_say("The unit of all figures: yd or m."),
        "course_unit()",
        lambda book: book.unit,
        "'yd'",
    ),
    Function(
        "to_reach",
        (_HOLE, _TEE_SET, _LABEL),
        to_say("From the tee to the nearest point of what bears a label."),
        "to_reach(7, 'Blue', 'Ness')",
        lambda book, hole, tee_set, label: book.to_feature(hole, tee_set, label, "reach"),
        "234",
    ),
    Function(
        "to_clear",
        (_HOLE, _TEE_SET, _LABEL),
        to_say("From the tee to where one is past what bears a label."),
        "to_clear(7, 'Blue', 'Ness')",
        lambda book, hole, tee_set, label: book.to_feature(hole, tee_set, label, "clear"),
        "249",
    ),
    Function(
        "to_enter",
        (_HOLE, _TEE_SET, _LABEL),
        to_say("From the tee along the line of play to where it enters what bears a label."),
        "to_enter(7, 'Blue', 'Burn')",
        lambda book, hole, tee_set, label: book.to_feature(hole, tee_set, label, "enter"),
        "212",
    ),
    Function(
        "to_leave",
        (_HOLE, _TEE_SET, _LABEL),
        to_say(
            "From the tee along the line of play to where it leaves what bears a label: what it must carry."
        ),
        "to_leave(7, 'Blue', 'Burn')",
        lambda book, hole, tee_set, label: book.to_feature(hole, tee_set, label, "leave"),
        "221",
    ),
    Function(
        "to_front",
        (_HOLE, _TEE_SET),
        to_say("From the tee to the green’s front."),
        "to_front(7, 'Blue')",
        lambda book, hole, tee_set: book.to_green(hole, tee_set, "reach"),
        "397",
    ),
    Function(
        "to_middle",
        (_HOLE, _TEE_SET),
        to_say("From the tee to the green’s middle."),
        "to_middle(7, 'Blue')",
        lambda book, hole, tee_set: book.to_green(hole, tee_set, "middle"),
        "412",
    ),
    Function(
        "to_back",
        (_HOLE, _TEE_SET),
        to_say("From the tee to the green’s back."),
        "to_back(7, 'Blue')",
        lambda book, hole, tee_set: book.to_green(hole, tee_set, "clear"),
        "428",
    ),
    Function(
        "green_depth",
        (_HOLE,),
        to_say("How deep the green is along the approach."),
        "green_depth(7)",
        lambda book, hole: book.green(hole, "depth"),
        "31",
    ),
    Function(
        "green_width",
        (_HOLE,),
        to_say("How wide the green is across the approach."),
        "green_width(7)",
        lambda book, hole: book.green(hole, "width"),
        "24",
    ),
    Function(
        "pin_on",
        (_EVENT, _ROUND, _HOLE),
        to_say("How far a pin lies on the green, from its front."),
        "pin_on('Heron Cup', 2, 7)",
        lambda book, event, number, hole: book.pin_figure(event, number, hole, "on"),
        "14",
    ),
    Function(
        "pin_off",
        (_EVENT, _ROUND, _HOLE),
        to_say("How far a pin lies in from the side that pin_side gives."),
        "pin_off('Heron Cup', 2, 7)",
        lambda book, event, number, hole: book.pin_figure(event, number, hole, "off"),
        "5",
    ),
    Function(
        "pin_side",
        (_EVENT, _ROUND, _HOLE),
        to_say("The side that a pin is counted from: left, right or centre."),
        "pin_side('Heron Cup', 2, 7)",
        lambda book, event, number, hole: said(book.pin(event, number, hole).off_from),
        "'left'",
    ),
    Function(
        "asked_length",
        (_EVENT, _ROUND, _FLIGHT, _HOLE),
        to_say("How long the committee wants a hole to play for a flight in a round."),
        "asked_length('Heron Cup', 2, 'Club', 7)",
        lambda book, event, number, flight, hole: book.asked(event, number, flight, hole),
        "405",
    ),
)

_deep = local()
_held: list = []
"""The functions that QGIS has: it does not hold them itself."""


class _Expression(QgsExpressionFunction):
    """A Function as QGIS calls it."""

    def __init__(self, function, gives):
        parameters = [QgsExpressionFunction.Parameter(name) for name, _ in function.takes]
        # It handles NULL itself, or an empty number would give NULL without a reason.
        super().__init__(function.name, parameters, GROUP, help_of(function), False, True, True)
        self._function, self._gives = function, gives

    def func(self, values, context, parent, node):
        try:
            given = [
                _number(name, value) if name in ("hole", "round") else _text(name, value)
                for (name, _), value in zip(self._function.takes, values)
            ]
            return self._gives(book_in_hand(), context, *given)
        except (NotThere, YardwrightError) as error:
            parent.setEvalErrorString(f"{self._function.name}: {error}")
            return NULL


def add_expressions():
    """Let QGIS's expressions know of the functions; a callable that takes them away again."""
    added = []
    for function in FUNCTIONS:
        # Of a name that is taken already QGIS takes no second function: it is left as it is.
        made = _Expression(function, _gives_of(function))
        if QgsExpression.registerFunction(made):
            added.append(made)
    _held.extend(added)

    def take_away():
        while added:
            made = added.pop()
            QgsExpression.unregisterFunction(made.name())
            _held.remove(made)

    return take_away


def global_context():
    """A QgsExpressionContext of what every expression may ask."""
    context = QgsExpressionContext()
    context.appendScope(QgsExpressionContextUtils.globalScope())
    return context


def worked_out(text, context):
    """``(text, errors)``: a text with what stands between [% and %] worked out; what cannot be is left out.

    errors: a tuple of texts, one for each that could not be.
    """
    made, errors = [], []
    for place, part in enumerate(_parts(text)):
        if place % 2 == 0:
            made.append(part)
            continue
        expression = QgsExpression(part)
        value = expression.evaluate(context) if not expression.hasParserError() else None
        if expression.hasParserError() or expression.hasEvalError():
            reason = expression.parserErrorString() or expression.evalErrorString()
            errors.append(
                say("“{expression}” cannot be worked out: {reason}", expression=part, reason=reason.strip())
            )
        elif value is not None and value != NULL:
            made.append(f"{value:g}" if isinstance(value, float) else str(value))
    return "".join(made), tuple(errors)


def help_of(function):
    """What the expression builder shows of a Function, as HTML in the manner of its other functions."""
    call = ", ".join(f"<span class='argument'>{name}</span>" for name, _ in function.takes)
    rows = "".join(
        f"<tr><td class='argument'>{name}</td><td>{_escaped(said(what))}</td></tr>"
        for name, what in function.takes
    )
    parts = [
        f"<h3>{function.name}</h3>",
        f"<div class='description'><p>{_escaped(said(function.says))}</p></div>",
        f"<h4>{_escaped(say('Syntax'))}</h4>",
        f"<div class='syntax'><code><span class='functionname'>{function.name}</span>({call})</code></div>",
        f"<h4>{_escaped(say('Arguments'))}</h4><div class='arguments'><table>{rows}</table></div>"
        * bool(rows),
        f"<h4>{_escaped(say('Example'))}</h4>",
        f"<div class='examples'><code>{_escaped(function.example)}</code>",
        f" &rarr; <code>{_escaped(function.result)}</code></div>",
    ]
    return "".join(parts)


def _escaped(text):
    # The library's own takes longer to import than all of this.
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")


def _gives_of(function):
    if function.gives is None:
        return _description
    return lambda book, context, *given: function.gives(book, *given)


def _description(book, context, hole):
    text = book.hole(hole).description
    with _one_deeper(hole):
        made, errors = worked_out(text, context)
    if errors:
        raise NotThere(" ".join(errors))
    return made


@contextmanager
def _one_deeper(hole):
    """A description that names itself would be worked out for ever."""
    within = getattr(_deep, "holes", ())
    if hole in within:
        raise NotThere(say("The description of hole {number} asks for itself.", number=hole))
    _deep.holes = (*within, hole)
    try:
        yield
    finally:
        _deep.holes = within


def _parts(text):
    """Plain parts of a text and what stands between [% and %], by turns; an end that lacks is plain."""
    parts, rest = [], str(text or "")
    while True:
        start = rest.find("[%")
        end = rest.find("%]", start + 2) if start >= 0 else -1
        if end < 0:
            return [*parts, rest]
        parts += [rest[:start], rest[start + 2 : end].strip()]
        rest = rest[end + 2 :]


def _known(value, lacking):
    if value is None:
        raise NotThere(lacking)
    return value


def _number(name, value):
    try:
        number = float(value)
    except (TypeError, ValueError):
        number = math.nan
    if not number.is_integer():
        raise NotThere(say("“{name}” must be a whole number.", name=name))
    return int(number)


def _text(name, value):
    if value is None or value == NULL:
        raise NotThere(say("“{name}” is empty.", name=name))
    return str(value)
