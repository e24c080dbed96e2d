"""Events in the layers and back: the same there as here, all of a change or nothing, one row for one thing."""

import math
from dataclasses import replace
from datetime import datetime

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from shapely.geometry import Point
from yardwright.model.course import Feature
from yardwright.model.errors import YardwrightError
from yardwright.model.event import STARTS, AskedLength, Event, Flight, Limits, Pin, Round

YARD = 0.9144  # metres, exactly (international yard and pound agreement, 1959)
CUP = Event(
    "Larkmere Cup",
    "2026-06-11",
    "2026-06-13",
    rounds=(Round(1, "2026-06-11", (), "two tees"), Round(2, "2026-06-12", (2, 1), "shotgun"), Round(3)),
    flights=(Flight("Herons", "Heron"), Flight("=Wrens", "Wren"), Flight("Guests")),
    limits=Limits(margin=3.0, slope_pct=2.5, apart=4 * YARD, tolerance=0.25, wear=2.0),
    host="The Larkmere Society\nenquiries at the starter’s hut",
    rules_off=("page_size",),
)
LENGTHS = (AskedLength(1, "Herons", 1, 402.5 * YARD), AskedLength(2, "=Wrens", 2, 150.0))
PINS = (
    Pin("Larkmere Cup", 1, 1, 9 * YARD, 5 * YARD, "left", note="behind the ridge"),
    Pin("Larkmere Cup", 1, 2, 7.25, -1.5, "centre"),
    Pin("Larkmere Cup", 2, 1, given="point"),
)
POINTS = ((500_000.0, 6_200_000.0), (500_010.123, 6_200_020.5), (500_001.0, 6_200_003.0))


@pytest.fixture(params=["file", "edited"])
def layers(request, course):
    """The course's layers: nobody edits them, or somebody does and has saved nothing."""
    if request.param == "edited":
        for layer in course.layers.values():
            assert layer.startEditing()
    yield course
    for layer in course.layers.values():
        if layer.isEditable():
            layer.rollBack()


@pytest.fixture
def cup(layers):
    """The layers with the event in them."""
    from yardwright.store.events import write_event, write_lengths, write_pins

    write_event(layers, CUP)
    write_lengths(layers, CUP.name, LENGTHS)
    write_pins(layers, CUP.name, PINS, POINTS)
    return layers


def read(layers, name=CUP.name, problems=None):
    from yardwright.store.events import read_event

    return read_event(layers, name, problems)


def rows(layers, kind):
    return [row.attributes() for row in layers[kind].getFeatures()]


def plain(event):
    """An event without ids of pins, and its figures without the noise of the arithmetic."""

    def metres(value):
        return None if value is None else round(value, 8)

    return replace(
        event,
        lengths=tuple(replace(one, length=metres(one.length)) for one in event.lengths),
        pins=tuple(replace(pin, fid=None, on=metres(pin.on), off=metres(pin.off)) for pin in event.pins),
        limits=Limits(**{name: metres(value) for name, value in vars(event.limits).items()}),
    )


def add(layers, kind, shape=None, **attributes):
    from yardwright.store.writing import editing, row_of

    with editing(layers, [kind]) as edit:
        edit.add(kind, [row_of(layers, Feature(kind, None, shape, attributes=attributes), shape)])


# There and back


def test_an_event_is_read_as_it_was_written(cup):
    problems = []
    pins = tuple(replace(pin, point=point) for pin, point in zip(PINS, POINTS))
    assert plain(read(cup, problems=problems)) == plain(replace(CUP, lengths=LENGTHS, pins=pins))
    assert problems == []


def test_lengths_stand_in_the_tables_in_yards(cup):
    assert [row["yards"] for row in cup["event_length"].getFeatures()] == [402.5, round(150 / YARD, 9)]
    assert [row["on_yd"] for row in cup["pin"].getFeatures()][:2] == [9.0, round(7.25 / YARD, 9)]
    (row,) = cup["event"].getFeatures()
    assert (row["apart_yd"], row["slope_pct"]) == (4.0, 2.5)


def test_saved_it_is_the_same(course_file, qgis_app):
    from yardwright.store.course_file import open_course
    from yardwright.store.events import write_event, write_lengths, write_pins

    with open_course(str(course_file)) as layers:
        write_event(layers, CUP)
        write_lengths(layers, CUP.name, LENGTHS)
        fids = write_pins(layers, CUP.name, PINS, POINTS)
    with open_course(str(course_file)) as layers:
        event = read(layers)
    assert plain(replace(event, pins=(), lengths=())) == plain(CUP)
    assert [pin.fid for pin in event.pins] == fids and [pin.point for pin in event.pins] == list(POINTS)


def test_an_edited_layer_takes_one_step_each(course):
    """Undoing it once in every layer leaves nothing of it; layers in which nothing changes are not touched."""
    from yardwright.store.events import write_event, write_pins

    for kind in ("event", "event_round", "event_flight", "pin"):
        course[kind].startEditing()
    write_event(course, CUP)
    write_pins(course, CUP.name, PINS, POINTS)
    steps = {
        kind: course[kind].undoStack().count() for kind in ("event", "event_round", "event_flight", "pin")
    }
    assert steps == {"event": 1, "event_round": 1, "event_flight": 1, "pin": 1}
    write_pins(course, CUP.name, [replace(PINS[0], on=4.0)], [POINTS[2]])
    write_event(course, CUP)
    assert {kind: course[kind].undoStack().count() for kind in steps} == {**steps, "pin": 2}
    course["pin"].undoStack().undo()
    assert read(course).pins[0].point == POINTS[0]
    for kind in steps:
        course[kind].undoStack().undo()
    assert read(course) is None
    for kind in steps:
        course[kind].rollBack()


def test_within_a_step_of_the_desk_it_is_part_of_that_step(course):
    from yardwright.desk.editing import one_step
    from yardwright.store.events import write_event, write_pins

    write_event(course, CUP)
    layer = course["pin"]
    with one_step("Place pins", layer):
        write_pins(course, CUP.name, PINS[:1], POINTS[:1])
        write_pins(course, CUP.name, PINS[1:], POINTS[1:])
    assert (layer.undoStack().count(), layer.undoStack().text(0)) == (1, "Place pins")
    assert len(read(course).pins) == 3
    layer.undoStack().undo()
    assert read(course).pins == ()
    layer.rollBack()


text = st.text(st.characters(blacklist_categories=("Cs", "Cc")), min_size=1, max_size=8).map(str.strip)
name = text.filter(bool)


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], max_examples=25, deadline=None)
@given(
    st.builds(
        Event,
        name,
        st.dates().map(str),
        st.just(""),
        st.lists(
            st.builds(Round, st.integers(1, 9), st.dates().map(str), start=st.sampled_from(STARTS)),
            unique_by=lambda one: one.number,
        ).map(lambda rounds: tuple(sorted(rounds, key=lambda one: one.number))),
        st.lists(st.builds(Flight, name, text), unique_by=lambda one: one.name).map(tuple),
        limits=st.builds(Limits, *[st.floats(0, 50).map(lambda value: round(value, 3))] * 5),
    )
)
def test_any_event_there_and_back(course, event):
    from yardwright.store.events import write_event

    write_event(course, event)
    assert plain(read(course, event.name)) == plain(event)


# Never two


def test_a_pin_takes_the_place_of_the_one_for_the_same(cup):
    from yardwright.store.events import write_pins

    before = {(pin.round, pin.hole): pin.fid for pin in read(cup).pins}
    new = [Pin(CUP.name, 1, 1, 4.0, 3.0, "right"), Pin(CUP.name, 3, 2, 2.0, 2.0, "left", note="new")]
    fids = write_pins(cup, CUP.name, new, [(500_005, 6_200_005), (500_006, 6_200_006)])
    pins = {(pin.round, pin.hole): pin for pin in read(cup).pins}
    assert set(pins) == {*before, (3, 2)}
    assert (pins[1, 1].fid, pins[3, 2].fid) == tuple(fids) and fids[0] == before[1, 1]
    assert pins[1, 1].point == (500_005.0, 6_200_005.0)
    assert (pins[1, 1].on, pins[1, 1].off, pins[1, 1].off_from) == pytest.approx((4.0, 3.0, "right"))
    assert pins[1, 1].note == "behind the ridge"  # what somebody wrote of the place stays
    assert [pins[key].fid for key in before if key != (1, 1)] == [
        before[key] for key in before if key != (1, 1)
    ]


def test_two_that_were_drawn_become_one(cup):
    from yardwright.store.events import write_pins

    add(cup, "pin", Point(500_100, 6_200_100), event=CUP.name, round=1, hole=1)
    add(cup, "pin", Point(500_200, 6_200_200), event="Bowl", round=1, hole=1)
    assert [(pin.round, pin.hole) for pin in read(cup).pins] == [(1, 1), (1, 1), (1, 2), (2, 1)]
    write_pins(cup, CUP.name, [PINS[0]], [POINTS[0]])
    assert [(pin.round, pin.hole) for pin in read(cup).pins] == [(1, 1), (1, 2), (2, 1)]
    assert len(read(cup, "Bowl").pins) == 1


def test_a_pin_that_was_typed_gets_its_place(cup):
    from yardwright.store.events import write_pins

    add(cup, "pin", event=CUP.name, round=3, hole=1, on_yd=9, off_yd=5, off_from="left")
    problems = []
    pin = next(pin for pin in read(cup, problems=problems).pins if pin.round == 3)
    assert (pin.point, pin.given, problems) == (None, "figures", [])
    assert write_pins(cup, CUP.name, [pin], [(500_001, 6_200_001)]) == [pin.fid]
    assert read(cup).pins[-1].point == (500_001.0, 6_200_001.0)


def test_two_for_the_same_or_none_at_all_are_refused(cup):
    from yardwright.store.events import write_pins

    before = read(cup)
    for pins, points, part in (
        ([PINS[1], PINS[0], PINS[0]], POINTS, "two pins for round 1 on hole 1"),
        ([Pin(CUP.name, 3, 1), Pin(CUP.name, 3, 2)], [POINTS[0], None], "round 3 on hole 2 has no place"),
        ([Pin(CUP.name, 3, 1)], [(math.nan, 0.0)], "round 3 on hole 1 has no place"),
    ):
        with pytest.raises(YardwrightError, match=part) as caught:
            write_pins(cup, CUP.name, pins, points)
        assert caught.value.remedy
    assert read(cup) == before


def test_lengths_take_the_place_of_those_for_the_same(cup):
    from yardwright.store.events import write_lengths

    write_lengths(cup, CUP.name, [AskedLength(1, "Herons", 1, 300.0), AskedLength(4, "Owls", 1, 310.0)])
    event = read(cup)
    assert [(one.round, one.flight, one.hole) for one in event.lengths] == [
        (1, "Herons", 1),
        (2, "=Wrens", 2),
        (4, "Owls", 1),
    ]
    assert [one.length for one in event.lengths] == pytest.approx([300.0, 150.0, 310.0])
    # What the lengths name is made where it was missing, and stays as it was where it was there.
    assert event.rounds == (*CUP.rounds, Round(4)) and event.flights == (*CUP.flights, Flight("Owls"))
    assert event.limits == read(cup).limits and event.begins == CUP.begins


def test_pins_make_a_new_event(layers):
    from yardwright.store.events import read_events, write_pins

    assert read_events(layers) == () and read(layers) is None
    write_pins(layers, " Bowl ", [Pin("", 2, 1, 4.0, 3.0, "left")], [POINTS[0]])
    (event,) = read_events(layers)
    assert (event.name, event.rounds, event.limits) == ("Bowl", (Round(2),), Limits())
    assert len(event.pins) == 1


def test_an_event_written_again_is_changed(cup):
    from yardwright.store.events import read_events, write_event

    before = read(cup)
    changed = replace(
        CUP, begins="", rounds=(Round(2, "", (1,)),), flights=(Flight("Herons", "Wren"), Flight("Owls")),
        limits=Limits(),
    )  # fmt: skip
    write_event(cup, changed)
    assert plain(read(cup)) == plain(replace(changed, lengths=before.lengths, pins=before.pins))
    write_event(cup, Event("Bowl", rounds=(Round(1),)))
    assert [event.name for event in read_events(cup)] == [CUP.name, "Bowl"]
    assert len(rows(cup, "event")) == 2 and len(rows(cup, "event_round")) == 2


def test_an_event_written_with_its_lengths_has_no_others(cup):
    from yardwright.store.events import write_event

    before = read(cup)
    write_event(cup, replace(before, lengths=()))
    assert read(cup).lengths == before.lengths
    kept = replace(before.lengths[0], length=320.0)
    write_event(cup, replace(before, lengths=(kept,)), with_lengths=True)
    after = read(cup)
    assert [(one.round, one.flight, one.hole) for one in after.lengths] == [
        (kept.round, kept.flight, kept.hole)
    ]
    assert after.lengths[0].length == pytest.approx(320.0) and after.pins == before.pins


@pytest.fixture
def decided(cup):
    """The layers with a decision on one of the cup's pins, and another event beside it."""
    from yardwright.store.events import Decision, log_decision, write_event, write_pins

    log_decision(cup, Decision(CUP.name, 1, 1, "ours", "Ada Finch"))
    write_event(cup, Event("Bowl", rounds=(Round(1),)))
    write_pins(cup, "Bowl", [Pin("", 1, 1, 4.0, 3.0, "left")], [POINTS[0]])
    return cup


def test_all_that_is_an_event_s_own_follows_its_new_name(decided):
    from yardwright.store.events import read_decisions, read_events, rename_event, rows_of_event

    before, bowl = read(decided), read(decided, "Bowl")
    held = rows_of_event(decided, CUP.name)
    assert {kind: len(fids) for kind, fids in held.items()} == {
        "event": 1, "event_round": 3, "event_flight": 3, "event_length": 2, "pin": 3, "pin_decision": 1,
    }  # fmt: skip
    rename_event(decided, CUP.name, " Larkmere Trophy ")
    assert [one.name for one in read_events(decided)] == ["Larkmere Trophy", "Bowl"]
    after = read(decided, "Larkmere Trophy")
    pins = tuple(replace(pin, event=after.name) for pin in before.pins)
    assert plain(after) == plain(replace(before, name=after.name, pins=pins))
    assert [one.by for one in read_decisions(decided, after.name)] == ["Ada Finch"]
    assert read_decisions(decided, CUP.name) == () and rows_of_event(decided, CUP.name) == {}
    assert rows_of_event(decided, after.name) == held and read(decided, "Bowl") == bowl
    # Other capitals are another name of the same event.
    rename_event(decided, after.name, "LARKMERE Trophy")
    assert read(decided, "LARKMERE Trophy").rounds == before.rounds


@pytest.mark.parametrize(
    ("name", "new_name", "part"),
    [("Vase", "New", "no event “Vase”"), (CUP.name, "bowl", "“Bowl” already"), (CUP.name, " ", "no name")],
)
def test_a_name_that_will_not_do_changes_nothing(decided, name, new_name, part):
    from yardwright.store.events import read_events, rename_event

    before = read_events(decided)
    with pytest.raises(YardwrightError, match=part) as told:
        rename_event(decided, name, new_name)
    assert told.value.remedy and read_events(decided) == before


def test_an_event_goes_with_all_that_is_its_own(decided):
    from yardwright.store.events import read_decisions, read_events, remove_event, rows_of_event

    bowl = read(decided, "Bowl")
    remove_event(decided, CUP.name)
    assert read_events(decided) == (bowl,) and rows_of_event(decided, CUP.name) == {}
    assert read_decisions(decided, CUP.name) == ()
    with pytest.raises(YardwrightError, match="no event"):
        remove_event(decided, CUP.name)


def test_an_event_without_a_name_is_refused(layers):
    from yardwright.store.events import write_event, write_lengths, write_pins

    for write in (
        lambda: write_event(layers, Event(" ")),
        lambda: write_lengths(layers, "", LENGTHS),
        lambda: write_pins(layers, None, PINS, POINTS),
    ):
        with pytest.raises(YardwrightError, match="no name"):
            write()
    assert rows(layers, "event") == rows(layers, "pin") == []


def test_nothing_is_written_when_a_layer_refuses(cup, monkeypatch):
    from yardwright.store import writing
    from yardwright.store.events import write_event, write_pins

    before = read(cup)
    add_rows = writing._Edit.add

    def refuse(self, kind, new):
        if kind in ("event_flight", "pin") and new:
            raise YardwrightError("refused", "try")
        return add_rows(self, kind, new)

    monkeypatch.setattr(writing._Edit, "add", refuse)
    with pytest.raises(YardwrightError, match="refused"):
        write_event(cup, replace(CUP, ends="", rounds=(Round(7),), flights=(Flight("New"),)))
    with pytest.raises(YardwrightError, match="refused"):
        write_pins(cup, CUP.name, [PINS[0], Pin("", 8, 1)], [POINTS[2], POINTS[2]])
    assert read(cup) == before


# Copies and decisions


def test_a_copy_without_pins(cup):
    from yardwright.store.events import copy_event, read_events

    copy_event(cup, CUP.name, "Larkmere Cup 2027")
    assert [event.name for event in read_events(cup)] == [CUP.name, "Larkmere Cup 2027"]
    copied, source = read(cup, "Larkmere Cup 2027"), read(cup)
    assert copied.pins == () and len(source.pins) == 3
    assert replace(copied, name=CUP.name, pins=source.pins) == source


def test_a_copy_with_pins(cup):
    from yardwright.store.events import copy_event

    copy_event(cup, CUP.name, "Again", with_pins=True)
    copied, source = read(cup, "Again"), read(cup)
    assert [replace(pin, event="", fid=None) for pin in copied.pins] == [
        replace(pin, event="", fid=None) for pin in source.pins
    ]
    assert not {pin.fid for pin in copied.pins} & {pin.fid for pin in source.pins}


@pytest.mark.parametrize(
    ("old", "new", "part"),
    [("Bowl", "New", "no event “Bowl”"), (CUP.name, CUP.name, "already"), (CUP.name, " ", "no name")],
)
def test_a_copy_that_cannot_be(cup, old, new, part):
    from yardwright.store.events import copy_event, read_events

    before = read_events(cup)
    with pytest.raises(YardwrightError, match=part):
        copy_event(cup, old, new)
    assert read_events(cup) == before


def test_decisions_are_logged_in_order(cup):
    from yardwright.store.events import Decision, log_decision, read_decisions

    first = Decision(CUP.name, 1, 7, "theirs", "Ida", "2026-06-10T18:30:00+02:00", "9 on", "8 on", "a ridge")
    log_decision(cup, first)
    log_decision(cup, Decision(CUP.name, 1, 7, "ours"))
    log_decision(cup, Decision("Bowl", 1, 7, "ours"))
    decisions = read_decisions(cup, CUP.name)
    assert decisions[0] == first
    made = datetime.fromisoformat(decisions[1].at)
    assert made.tzinfo is not None and abs((datetime.now().astimezone() - made).total_seconds()) < 60
    assert replace(decisions[1], at="") == Decision(CUP.name, 1, 7, "ours")
    with pytest.raises(YardwrightError, match="no value for the field"):
        log_decision(cup, Decision(CUP.name, 1, 7, "neither"))
    assert len(read_decisions(cup, CUP.name)) == 2


# Rows that are not right


def test_what_cannot_be_used_is_named(layers):
    add(layers, "event", name="Cup", margin_yd=-4.0, wear_yd=2.0)
    add(layers, "event", name=" Cup ", margin_yd=6.0)
    add(layers, "event", note="nameless")
    add(layers, "event_round", event="Cup", round=1, holes="1,x")
    add(layers, "event_round", event="Cup", round=1, holes="2")
    add(layers, "event_round", event="Cup", round=0)
    add(layers, "event_round", event="Cup", start="at dawn", round=2)
    add(layers, "event_flight", event="Cup")
    add(layers, "event_length", event="Cup", round=1, flight="A", hole=1)
    add(layers, "event_length", event="Cup", round=1, flight="A", hole=100, yards=300)
    add(layers, "pin", Point(500_000, 6_200_000), event="Cup", round=1)
    add(layers, "pin", Point(500_000, 6_200_000), event="Bowl", round=1, hole=2)
    from yardwright.store.events import read_events

    problems = []
    events = read_events(layers, problems)
    assert [event.name for event in events] == ["Cup", "Bowl"]
    assert events[0].limits == Limits(wear=2 * YARD)
    assert [(one.number, one.holes, one.start) for one in events[0].rounds] == [
        (1, (), "one tee"),
        (2, (), "one tee"),
    ]
    assert events[0].flights == events[0].lengths == events[0].pins == ()
    assert [(pin.hole, pin.given) for pin in events[1].pins] == [(2, "point")]
    told = {(problem.kind, problem.reason) for problem in problems}
    assert told >= {
        ("event", "margin_yd -4.0 was not used"),
        ("event", "there is another one for the same; it was left out"),
        ("event", "it has no name; it was left out"),
        ("event_round", "the text in holes was not understood: “x” is not a hole number"),
        ("event_round", "there is another one for the same; it was left out"),
        ("event_round", "it has no round; it was left out"),
        ("event_round", "start “at dawn” is none of one tee, two tees, shotgun and was left out"),
        ("event_flight", "it has no flight; it was left out"),
        ("event_length", "it has no length; it was left out"),
        ("event_length", "it has no hole; it was left out"),
        ("pin", "it has no hole; it was left out"),
        ("pin", "the table event has no row for “Bowl”"),
    }
    assert all(problem.fid is not None and str(problem) for problem in problems)


def test_unsaved_edits_count(course):
    from yardwright.store.events import write_event

    write_event(course, CUP)
    layer = course["event_round"]
    layer.startEditing()
    row = next(layer.getFeatures())
    layer.changeAttributeValue(row.id(), layer.fields().lookupField("played_on"), "2026-06-21")
    assert read(course).rounds[0].played_on == "2026-06-21"
    layer.deleteFeature(row.id())
    assert [one.number for one in read(course).rounds] == [2, 3]
    layer.rollBack()
