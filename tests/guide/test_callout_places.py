"""Labels and figures placed: none over another, none over what is taken, near where they belong."""

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import minimize
from shapely.geometry import LineString, Point, box
from yardwright.guide.callout_places import CELL, Board, kept_apart, spread

heights = st.floats(1.0, 4.0)
wants = st.lists(st.tuples(st.floats(0.0, 100.0), heights), min_size=1, max_size=12)


@given(wants)
def test_figures_along_a_line_never_overlap(pairs):
    pairs = sorted(pairs)
    wanted, sizes = [y for y, _ in pairs], [size for _, size in pairs]
    found = spread(wanted, sizes, 0.0, 100.0)
    assert len(found) == len(wanted)
    ends = [(y - size / 2, y + size / 2) for y, size in zip(found, sizes)]
    assert ends[0][0] >= -1e-6 and ends[-1][1] <= 100.0 + 1e-6
    assert all(before[1] <= after[0] + 1e-6 for before, after in zip(ends, ends[1:]))


@settings(max_examples=15, deadline=None)
@given(st.lists(st.floats(0.0, 30.0), min_size=2, max_size=5))
def test_figures_are_moved_as_little_as_may_be(wanted):
    """scipy's SLSQP solves the same quadratic problem another way."""
    wanted, size = sorted(wanted), 3.0
    found = np.array(spread(wanted, [size] * len(wanted), 0.0, 40.0))
    apart = [{"type": "ineq", "fun": lambda y, k=k: y[k + 1] - y[k] - size} for k in range(len(wanted) - 1)]
    ends = [
        {"type": "ineq", "fun": lambda y: y[0] - size / 2},
        {"type": "ineq", "fun": lambda y: 40.0 - size / 2 - y[-1]},
    ]
    start = np.linspace(5.0, 35.0, len(wanted))
    best = minimize(lambda y: ((y - wanted) ** 2).sum(), start, constraints=apart + ends, method="SLSQP")
    assert ((found - wanted) ** 2).sum() <= best.fun + 1e-3


def test_figures_for_which_there_is_no_room():
    assert spread([1.0, 2.0, 3.0], [2.0] * 3, 0.0, 5.0) is None
    assert spread([], [], 0.0, 5.0) == []


def test_the_most_important_figures_stay():
    # Five figures of 2 mm at one place: with 2.5 mm to move, three find room about it.
    found = kept_apart([10.0] * 5, [2.0] * 5, 0.0, 20.0, 2.5)
    assert sorted(found) == [0, 1, 2]
    assert sorted(found.values()) == pytest.approx([8.0, 10.0, 12.0])


def boxes_of(labels):
    return [
        (box(x - w / 2, y - h / 2, x + w / 2, y + h / 2), anchor, leader)
        for anchor, (w, h), ((x, y), leader) in labels
    ]


@settings(max_examples=40, deadline=None)
@given(
    st.lists(
        st.tuples(st.floats(2.0, 38.0), st.floats(2.0, 78.0), st.floats(3.0, 14.0)), min_size=1, max_size=25
    ),
    st.lists(st.tuples(st.floats(5.0, 35.0), st.floats(5.0, 75.0), st.floats(0.6, 5.0)), max_size=8),
)
def test_labels_cover_neither_each_other_nor_what_is_taken(labels, things):
    board = Board(40.0, 80.0)
    taken = [Point(x, y).buffer(r) for x, y, r in things]
    for shape in taken:
        board.take(shape)
    placed = []
    for x, y, wide in labels:
        found = board.place((x, y), (wide, 3.0))
        if found is not None:
            placed.append(((x, y), (wide, 3.0), found))
    shown = boxes_of(placed)
    for number, (one, anchor, leader) in enumerate(shown):
        assert board.inset - 1e-9 <= one.bounds[0] and one.bounds[2] <= 40.0 - board.inset + 1e-9
        assert not any(one.intersects(other) for other, _, _ in shown[number + 1 :])
        assert not any(one.intersection(shape).area > 1e-9 for shape in taken)
        if leader is not None:
            line = LineString(leader)
            assert line.coords[0] == pytest.approx(anchor)
            assert one.distance(Point(line.coords[-1])) < 1e-6
            others = [other for other, _, _ in shown if other is not one]
            assert not any(line.crosses(other.buffer(-CELL)) for other in others)


def test_a_label_keeps_off_what_it_names_and_on_its_side():
    board = Board(60.0, 60.0)
    lake = Point(30, 30).buffer(9)
    (x, y), leader = board.place((30.0, 30.0), (8.0, 3.0), aside=(-1.0, 0.0), own=lake)
    label = box(x - 4, y - 1.5, x + 4, y + 1.5)
    assert not label.intersects(lake) and label.distance(lake) < 3.0
    assert x < 30.0 and leader is not None


def test_a_label_next_to_its_place_needs_no_leader_and_none_apart_is_asked_for():
    board = Board(60.0, 60.0)
    middle, leader = board.place((30.0, 30.0), (8.0, 3.0), aside=(1.0, 0.0))
    assert leader is None and math.dist(middle, (30.0, 30.0)) < 8.0
    board.take_box(0.0, 0.0, 60.0, 60.0)
    assert board.place((30.0, 30.0), (8.0, 3.0)) is None
    assert not board.is_free((10.0, 10.0, 20.0, 20.0))
