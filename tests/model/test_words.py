"""Texts in another language; see ``tests.loudly``."""

import ast
import re
import string
from dataclasses import replace
from pathlib import Path

import pytest
from shapely.geometry import Polygon
from yardwright.measure.checklist import checklist
from yardwright.measure.checks import check_course
from yardwright.model.errors import YardwrightError
from yardwright.model.kinds import BY_NAME, KINDS, TABLES
from yardwright.model.numbers import parse_distances, parse_holes
from yardwright.model.remarks import Problem
from yardwright.model.words import and_list, or_list, said, say, speak, to_say

from tests.loudly import left_over
from tests.makers import (
    area,
    circle,
    course,
    dogleg_hole,
    feature,
    image,
    line,
    rectangle,
    spot,
    straight_hole,
    tables,
    tee,
)

PACKAGE = Path(__file__).resolve().parents[2] / "plugin" / "yardwright"
ROOMS = ("model", "measure", "imagery", "store", "guide")


# say, to_say, speak


def test_plain_english_until_somebody_translates():
    assert say("no tee") == "no tee" == to_say("no tee") == said("no tee")
    assert say("{tee} and {other}", tee="{odd}", other=2) == "{odd} and 2"


def test_another_language_and_back(loudly):
    assert (say("no tee"), to_say("no tee"), said("no tee"), said("")) == ("NO TEE", "no tee", "NO TEE", "")
    assert say("hole {number}, {what}", number=7, what="small") == "HOLE 7, small"
    speak()
    assert say("hole {number}", number=7) == "hole 7"


def test_a_text_may_stand_in_another_order():
    speak({"{one} of {all}": "{all}: {one}"}.get)
    try:
        assert say("{one} of {all}", one="tee", all="hole") == "hole: tee"
    finally:
        speak()


def test_lists(loudly):
    assert [and_list(names) for names in ([], ["a"], ["a", "b"], ("a", "b", "c"))] == [
        "",
        "a",
        "a AND b",
        "a, b AND c",
    ]
    assert or_list(str(number) for number in (3, 4)) == "3 OR 4"


# What the floors say


def crowded():
    """A hole with many things wrong, all names in capitals."""
    made = straight_hole(
        feature("bunker", 3, rectangle(40, 200, 60, 210), 1),
        feature("penalty_area", 4, rectangle(58, 190, 80, 220), 1),
        feature("bunker", 5, rectangle(-60, 200, -40, 210), 1, label="DEEP"),
        feature("bunker", 6, rectangle(-60.01, 200, -40, 210), 1),
        feature("bunker", -7, rectangle(-59, 209, -50, 215), 1),
        feature("fairway", 8, rectangle(-20, 250, -10, 300), 1),
        feature("fairway", 9, rectangle(-9.5, 250, 0, 300), 1),
        feature("trees", 10, rectangle(20, 100, 20.1, 150), 1),
        feature("trees", 11, area((60, 100), (60, 150), (70, 150), (70, 100)), 1, remark="LABEL IS ODD"),
        feature("rough", 12, hollow(), 1),
        feature("green", 13, circle(40, 400, 12), 1),
        feature("green", 14, circle(900, 4000, 12)),
        feature("bunker", 15, rectangle(40, 300, 50, 310), 1, 17),
        feature("path", 16, line((100, 0), (100, 300))),
        feature("path", 17, line((100, 0), (100, 300))),
        feature("boundary", 18, line((-200, -100), (200, -100), (200, 380), (-200, 380), (-200, -97))),
        feature("boundary", 19, line((-200, -100.5), (-300, -200))),
        feature("marker", 20, spot(0, 250), 1, states_yd=100.0),
        feature("marker", 21, spot(5, 250), 1, states_yd=150.0, pair="A"),
        feature("marker", 22, spot(-5, 240), 1, states_yd=140.0, pair="A"),
        feature("marker", 23, spot(9, 240), 1),
        feature("tee", 24, rectangle(20, -60, 25, -50), 1, tee_set="ODD"),
        feature("tee", 25, rectangle(60, 20, 65, 30), 1, tee_set="BACK"),
        feature("tee", 26, rectangle(-20, -10, -14, 0), 1),
        tees=[tee(2, 0, -5, tee_set="BACK", seen_in="A", view="partly hidden")],
        green=circle(0, 420, 5),
        par=3,
        tee_sets=["BACK", "WHITE"],
        scorecard={(1, "BACK"): 300, (1, "WHITE"): 280, (1, "RED"): 200},
        approach={1: 440},
        images=[image("A", gsd=1.0)],
        hole_fields={"stroke_index": 4},
    )
    seen = {"green": "A"}
    features = [replace(one, seen_in=seen.get(one.kind, one.seen_in)) for one in made.features]
    features = [replace(one, mended="MENDED") if one.fid == 11 else one for one in features]
    problems = (
        Problem("", "empty", "bunker", 30, "ODD"),
        Problem("", "second", "hole", 7, "ODD", (1, 1)),
        Problem("", "left_out", "tee_set", 3, "ODD"),
        "ODD",
    )
    return replace(made, features=tuple(features), problems=problems)


def hollow():
    """An area with a hole too small to be meant."""
    return Polygon(
        rectangle(80, 300, 120, 340).exterior, [rectangle(90, 310, 90.4, 310.4).exterior.coords[::-1]]
    )


def nothing_drawn():
    """Holes that lack their parts, and a line drawn the wrong way."""
    return course(
        [feature("green", 1, circle(0, 0, 15), 2), tee(2, 0, 400, hole=2, tee_set="BACK")],
        {1: None, 2: line((0, 0), (0, 400)), 3: line((900, 0), (900, 100), (950, 50), (850, 50))},
        {2: 4},
        scorecard={(2, "BACK"): 400},
    )


@pytest.mark.parametrize("made", [crowded, nothing_drawn])
def test_a_whole_check(loudly, made):
    findings = check_course(made())
    for finding in findings:
        repair = "" if finding.repair is None else finding.repair.text
        assert left_over(f"{finding.text} {finding.remedy} {repair}") == []
    found = {finding.check for finding in findings}
    wanted = {
        "overlap",
        "twice",
        "gap",
        "sliver",
        "speck",
        "crossing",
        "boundary_gap",
        "marker",
        "par",
        "length",
    }
    wanted |= {"tee_set", "tee_off", "uncertain", "approach", "green", "unread", "empty", "value", "left_out"}
    wanted = wanted if made is crowded else {"no_line", "no_tee", "line_backwards", "line_crosses"}
    assert wanted <= found, wanted - found


def test_the_checks_know_things_by_code_and_not_by_their_words(loudly):
    loud_ones = [(f.hole, f.check, f.gravity, f.features, f.repair is None) for f in check_course(crowded())]
    speak()
    assert loud_ones == [
        (f.hole, f.check, f.gravity, f.features, f.repair is None) for f in check_course(crowded())
    ]


def test_practice_may_be_written_in_either_language(loudly):
    speak(lambda text: "Übung" if text == "practice" else text)
    for note in ("Übungsgrün", "practice green"):
        made = course([feature("green", 1, circle(0, 0, 15), note=note)], {1: line((900, 900), (900, 1200))})
        assert "left_out" not in {finding.check for finding in check_course(made)}


def bent():
    """A dogleg without green, set or par, and with a marker beyond its bend."""
    made = dogleg_hole(
        feature("fairway", 5, rectangle(50, 10, 80, 30), 1),
        feature("bunker", 6, rectangle(500, 0, 510, 10), 1),
        feature("marker", 7, spot(0, 100), 1, states_yd=30.0),
        feature("target", 8, spot(100, 240), 1, approach=True),
        tees=[tee(2, 0, -5, tee_set=""), tee(3, 10, -5, tee_set="")],
        par=None,
    )
    return made


@pytest.mark.parametrize("made", [crowded, nothing_drawn, bent])
def test_a_measuring(loudly, made):
    found = tables(made(), holes=[1, 2, 3, 99])
    texts = [row.remark for name, rows in vars(found).items() if name != "problems" for row in rows]
    texts += [row.par_check for row in found.lengths] + [row.approach_from for row in found.greens]
    texts += [row.tee_set for row in found.lengths]
    texts += found.problems
    assert len(set(texts)) > 5
    for text in texts:
        assert left_over(text) == []


@pytest.mark.parametrize("made", [crowded, nothing_drawn, bent])
def test_a_checklist(loudly, made):
    items = [item for number in (1, 2, 3) for item in checklist(made(), number)]
    assert items and not [left for item in items for left in left_over(f"{item.title} {item.text}")]
    assert {item.state for item in items} <= {"there", "missing", "none"}


@pytest.mark.parametrize(
    "parse, text", [(parse_holes, "X"), (parse_holes, "9-7"), (parse_holes, "0"), (parse_distances, "X")]
)
def test_an_error(loudly, parse, text):
    with pytest.raises(YardwrightError) as caught:
        parse(text)
    assert left_over(f"{caught.value.what} {caught.value.remedy}") == []


def test_kinds_are_said_where_they_are_shown():
    """Titles, nouns and fields are the same in every language until they are said."""
    for kind in KINDS + TABLES:
        assert kind.title and kind.noun and kind.noun == kind.noun.lower()
    assert BY_NAME["penalty_area"].title == "Penalty area"


# What the sources say


def sources():
    return [path for room in ROOMS for path in sorted((PACKAGE / room).rglob("*.py"))]


def calls_of(tree, *names):
    return [
        node
        for node in ast.walk(tree)
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in names
    ]


def docstrings(tree):
    return {
        id(node.value)
        for node in ast.walk(tree)
        if isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant)
    }


NOT_SAID = re.compile(
    r"^Yardwright: edits not saved$|\+proj=|SELECT |PRAGMA|\"\w+\" |(is|not) null|coalesce|^CPL|Sans|</?\w+|^sq yd$|^a line of play needs"
)
"""Texts of two words and more that are no text for the user: of PROJ, SQL, QGIS's expressions, XML, fonts, units;
and why a NoLine is raised, which nobody is shown."""
STORED = {value for kind in KINDS + TABLES for field in kind.fields for value in field.values or ()}


def unsaid(source):
    """``(line, text)`` of what looks like a text for the user and goes neither through say nor to_say."""
    tree = ast.parse(source)
    known = docstrings(tree)
    # A ValueError goes from one part of the program to another: nobody is shown what it says.
    known |= {id(part) for call in calls_of(tree, "ValueError") for part in ast.walk(call)}
    known |= {id(part) for call in calls_of(tree, "say", "to_say") for part in ast.walk(call.args[0])}
    for node in ast.walk(tree):
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in known:
            spoken = re.search(r"[a-z]{2,}[,.:;]? [a-z]{2,}", node.value) or re.search(
                r"[a-z]{3,}\.$", node.value
            )
            if spoken and node.value not in STORED and not NOT_SAID.search(node.value):
                yield node.lineno, node.value


def test_the_search_finds_a_text_that_is_not_said():
    assert list(unsaid('"""A text."""\nraise Error(f"the {hole} has none", say("the hole"))\n')) == [
        (2, " has none")
    ]


@pytest.mark.parametrize("path", sources(), ids=lambda path: str(path.relative_to(PACKAGE)))
def test_every_text_goes_through_say(path):
    assert list(unsaid(path.read_text(encoding="utf-8"))) == []


@pytest.mark.parametrize("path", sources(), ids=lambda path: str(path.relative_to(PACKAGE)))
def test_say_takes_a_literal_and_what_it_names(path):
    tree = ast.parse(path.read_text(encoding="utf-8"))
    for call in calls_of(tree, "say", "to_say"):
        text = call.args[0]
        assert isinstance(text, ast.Constant) and len(call.args) == 1, f"{path}:{call.lineno}"
        named = {name for _, name, _, _ in string.Formatter().parse(text.value) if name is not None}
        given = {keyword.arg for keyword in call.keywords}
        if call.func.id == "say" and None not in given:
            assert named == given, f"{path}:{call.lineno}"


@pytest.mark.parametrize("path", sources(), ids=lambda path: str(path.relative_to(PACKAGE)))
def test_nothing_is_said_while_a_module_is_loaded(path):
    """It would be English for ever."""
    tree = ast.parse(path.read_text(encoding="utf-8"))
    inside = {
        id(node)
        for function in ast.walk(tree)
        if isinstance(function, (ast.FunctionDef, ast.Lambda))
        for part in (function.body if isinstance(function.body, list) else [function.body])
        for node in ast.walk(part)
    }
    assert [call.lineno for call in calls_of(tree, "say", "said") if id(call) not in inside] == []
