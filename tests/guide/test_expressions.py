"""Figures as functions of QGIS's expressions. Expected values: worked out from what is drawn, in plain yards."""

from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace

import pytest
from qgis.core import NULL, QgsExpression, QgsExpressionContext
from yardwright.guide.book_figures import BookFigures, look_into, made_of
from yardwright.guide.expressions import FUNCTIONS, GROUP, add_expressions, worked_out
from yardwright.measure.units import YARD
from yardwright.model.course import TeeSet
from yardwright.model.event import AskedLength, Event, Flight, Pin, Round

from tests.loudly import left_over
from tests.makers import feature, rectangle, straight_hole, tee

pytestmark = pytest.mark.usefixtures("functions")

CUP = Event(
    "Heron Cup",
    rounds=(Round(1), Round(2)),
    flights=(Flight("Club", "Back"),),
    lengths=(AskedLength(2, "Club", 1, 395.5 * YARD),),
    pins=(
        Pin("Heron Cup", 2, 1, on=15 * YARD, off=5 * YARD, off_from="left"),
        Pin("Heron Cup", 1, 1, on=99 * YARD, off=5 * YARD, off_from="left"),
    ),
)


@pytest.fixture
def functions(qgis_app):
    take_away = add_expressions()
    yield
    take_away()


def the_course(description="", settings=None):
    """A straight hole of 400 yd to a green of 30 by 30 yd, with a bunker from 200.5 to 210 yd."""
    course = straight_hole(
        feature("bunker", 5, rectangle(-4, 200.5, 6, 210), 1, label="Ness"),
        tees=[tee(2, 0, -5), tee(3, 0, 35, tee_set="Front")],
        tee_sets=[TeeSet("Front", sort=2), TeeSet("Back", sort=1)],
        settings=settings or {},
    )
    hole = replace(course.holes[0], name="Burn", stroke_index=7, description=description)
    return replace(course, holes=(hole,))


@pytest.fixture
def book():
    with made_of(BookFigures(the_course(), (CUP,))) as figures:
        yield figures


def value(text):
    expression = QgsExpression(text)
    found = expression.evaluate(QgsExpressionContext())
    assert not expression.hasParserError(), expression.parserErrorString()
    assert not expression.hasEvalError(), expression.evalErrorString()
    return found


def refusal(text):
    expression = QgsExpression(text)
    assert expression.evaluate(QgsExpressionContext()) in (None, NULL)
    assert expression.hasEvalError()
    return expression.evalErrorString()


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("hole_name(1)", "Burn"),
        ("hole_par(1)", 4),
        ("hole_par('1')", 4),
        ("stroke_index(1)", 7),
        ("hole_length(1, 'Back')", 400),
        ("hole_length(tee_set:='front', hole:=1)", 360),
        ("hole_lengths(1)", "Back\u00a0400   Front\u00a0360"),
        ("course_length('Back')", 400),
        ("course_name()", "Larkmere"),
        ("course_unit()", "yd"),
        ("to_reach(1, 'Back', 'Ness')", 201),
        ("to_clear(1, 'Back', 'ness ')", 210),
        ("to_clear(1, 'Front', 'Ness')", 170),
        ("to_enter(1, 'Back', 'Ness')", 201),
        ("to_leave(1, 'Front', 'Ness')", 170),
        ("to_front(1, 'Back')", 385),
        ("to_middle(1, 'Back')", 400),
        ("to_back(1, 'Back')", 415),
        ("green_depth(1)", 30),
        ("green_width(1)", 30),
        ("pin_on('Heron Cup', 2, 1)", 15),
        ("pin_off('Heron Cup', 2, 1)", 5),
        ("pin_side('Heron Cup', 2, 1)", "left"),
        ("asked_length('Heron Cup', 2, 'Club', 1)", 396),
    ],
)
def test_what_functions_give(book, text, expected):
    assert value(text) == expected


def test_figures_are_in_the_unit_of_the_course():
    with made_of(BookFigures(the_course(settings={"unit": "m"}))):
        # 400 yd are 365.76 m, 385 yd 352.044 m.
        assert (value("hole_length(1, 'Back')"), value("to_front(1, 'Back')")) == (366, 352)
        assert value("course_unit()") == "m"


@pytest.mark.parametrize(
    ("text", "reason"),
    [
        ("hole_length(2, 'Back')", "Hole 2 is not in the course."),
        ("hole_length(1, 'Gold')", "There is “Back” or “Front”."),
        ("hole_length(NULL, 'Back')", "“hole” must be a whole number."),
        ("hole_length(1.5, 'Back')", "“hole” must be a whole number."),
        ("hole_length(1, NULL)", "“tee_set” is empty."),
        ("to_reach(1, 'Back', 'Nest')", "There is “Ness”."),
        ("pin_on('Lark Cup', 2, 1)", "There is “Heron Cup”."),
        ("pin_on('Heron Cup', 3, 1)", "no pin of round 3 on hole 1"),
        ("asked_length('Heron Cup', 1, 'Club', 1)", "asks for no length of hole 1 for “Club” in round 1"),
    ],
)
def test_what_is_not_there_is_null_and_says_why(book, text, reason):
    assert reason in refusal(text)


def test_a_pin_that_lies_nowhere_still_has_the_figures_it_was_given(book):
    assert value("pin_on('Heron Cup', 1, 1)") == 99


def test_without_a_course_the_error_says_so():
    assert "no course" in refusal("hole_par(1)")


def test_the_desk_is_asked_only_while_no_page_is_made():
    other = replace(the_course(), name="Heronsgate")
    look_away = look_into(lambda: BookFigures(other))
    try:
        assert value("course_name()") == "Heronsgate"
        with made_of(BookFigures(the_course())):
            assert value("course_name()") == "Larkmere"
        assert value("course_name()") == "Heronsgate"
    finally:
        look_away()
    assert "no course" in refusal("course_name()")


def test_figures_in_a_description_are_worked_out():
    text = "[% to_reach(@hole, 'Back', 'Ness') %] to carry, [%1/2%] of it [% NULL %]; 50 [% open"
    with made_of(BookFigures(the_course("Aim left: [% to_reach(1, 'Back', 'Ness') %] carries."))):
        assert value("hole_description(1)") == "Aim left: 201 carries."
        context = QgsExpressionContext()
        made, errors = worked_out(text, context)
    assert made == " to carry, 0.5 of it ; 50 [% open"
    assert len(errors) == 1 and "must be a whole number" in errors[0]


def test_a_description_with_a_wrong_figure_says_which():
    with made_of(BookFigures(the_course("[% to_reach(1, 'Back', 'Nest') %] carries."))):
        assert "to_reach(1, 'Back', 'Nest')" in refusal("hole_description(1)")


def test_a_description_that_asks_for_itself_ends():
    with made_of(BookFigures(the_course("See [% hole_description(1) %]."))):
        assert "asks for itself" in refusal("hole_description(1)")
        # And what came of it is over.
        assert value("hole_par(1)") == 4


def test_threads_get_the_same(book):
    texts = ["to_reach(1, 'Back', 'Ness')", "hole_length(1, 'Front')", "pin_on('Heron Cup', 2, 1)"] * 20
    with ThreadPoolExecutor(4) as pool:
        assert list(pool.map(value, texts)) == [201, 360, 15] * 20


def test_the_expression_builder_shows_help_in_our_group():
    there = {one.name(): one for one in QgsExpression.Functions()}
    for function in FUNCTIONS:
        one = there[function.name]
        assert one.groups() == [GROUP]
        assert function.example.split("(")[0] == function.name
        assert not QgsExpression(function.example).hasParserError()
        for name, what in function.takes:
            assert name in one.helpText() and what in one.helpText()
        assert [parameter.name() for parameter in one.parameters()] == [name for name, _ in function.takes]


def test_no_function_of_qgis_bears_the_name(functions):
    take_away = add_expressions()  # those of the fixture are there already: none is added
    take_away()
    assert QgsExpression.isFunctionName("to_reach")


def test_functions_are_taken_away_and_added_again(qgis_app):
    names = [function.name for function in FUNCTIONS]
    for _ in range(2):
        take_away = add_expressions()
        take_away()
    ours = [name for name in names if QgsExpression.isFunctionName(name)]
    # The fixture's own are left alone by a second adding.
    assert ours == names


def test_reasons_are_said_in_the_users_language(book, loudly):
    assert not left_over(refusal("hole_length(9, 'BACK')"), "hole_length")
