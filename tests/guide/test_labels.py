"""Labels beside places: none over another, none outside, and each as near as there is room."""

import math

import numpy as np
from hypothesis import given
from hypothesis import strategies as st
from yardwright.guide.labels import placed

AREA = (0.0, 0.0, 800.0, 600.0)
SIZE = st.tuples(st.floats(20, 120), st.floats(12, 24))
PLACE = st.tuples(st.floats(0, 800), st.floats(0, 600))


def box_of(middle, size):
    return middle[0] - size[0] / 2, middle[1] - size[1] / 2, middle[0] + size[0] / 2, middle[1] + size[1] / 2


def test_a_label_stands_on_its_best_side():
    for side in ((1, 0), (-1, 0), (0, -1), (0, 1)):
        ((x, y),) = placed([(400, 300)], [(60, 20)], AREA, gap=10, first=[side])
        assert (np.sign(round(x - 400)), np.sign(round(y - 300))) == side
        # The rim of the box keeps the gap from the place.
        assert math.isclose(max(abs(x - 400) - 30, abs(y - 300) - 10), 10)


def test_a_place_at_the_edge_has_its_label_inside():
    ((x, _),) = placed([(798, 300)], [(60, 20)], AREA, first=[(1, 0)])
    assert x + 30 <= 800


def test_where_there_is_no_room_the_first_ones_have_it():
    many = [(50, 15)] * 40
    found = placed(many, [(90, 20)] * 40, (0, 0, 100, 60))
    assert found[0] is not None and found[-1] is None


def test_a_kept_place_is_not_covered_while_there_is_another_spot():
    ((x, y),) = placed([(400, 300)], [(60, 20)], AREA, gap=10, kept=[(435, 300)], first=[(1, 0)])
    left, top, right, bottom = box_of((x, y), (60, 20))
    assert not (left < 435 < right and top < 300 < bottom)


def test_nothing_to_place():
    assert placed([], [], AREA) == []


@given(st.lists(st.tuples(PLACE, SIZE), max_size=30))
def test_none_over_another_and_none_outside(labels):
    places, sizes = [place for place, _ in labels], [size for _, size in labels]
    found = placed(places, sizes, AREA)
    assert len(found) == len(labels) and found == placed(places, sizes, AREA)
    boxes = [box_of(middle, size) for middle, size in zip(found, sizes) if middle is not None]
    for place, one in enumerate(boxes):
        assert one[0] >= 0 and one[1] >= 0 and one[2] <= 800 and one[3] <= 600
        for other in boxes[:place]:
            apart = one[2] <= other[0] or other[2] <= one[0] or one[3] <= other[1] or other[3] <= one[1]
            assert apart
