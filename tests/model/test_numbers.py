"""Hole numbers and lists of distances as people write them."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from yardwright.model.errors import YardwrightError
from yardwright.model.numbers import (
    format_distances,
    format_holes,
    hole_number_in,
    parse_distances,
    parse_holes,
)


@pytest.mark.parametrize(
    "text, holes",
    [
        ("1,4,7-9", (1, 4, 7, 8, 9)),
        (" 3 ; 1 ", (3, 1)),
        ("9-9", (9,)),
        ("2,1-3", (2, 1, 3)),
        ("07", (7,)),
        ("", ()),
        (None, ()),
        (",,", ()),
    ],
)
def test_numbers_and_ranges(text, holes):
    assert parse_holes(text) == holes


@pytest.mark.parametrize("text", ["0", "1,x", "9-7", "-3", "1-", "100", "1.5", "one", "1 2", "../1"])
def test_anything_else_is_told_of_with_a_remedy(text):
    with pytest.raises(YardwrightError) as error:
        parse_holes(text)
    assert error.value.what and error.value.remedy
    assert str(error.value) == f"{error.value.what} {error.value.remedy}"


@settings(max_examples=60, deadline=None, derandomize=True)
@given(st.lists(st.integers(1, 99), unique=True, max_size=8))
def test_what_is_written_is_read_again(holes):
    assert parse_holes(format_holes(holes)) == tuple(holes)


@pytest.mark.parametrize(
    "text, number",
    [
        ("7", 7),
        ("Hole #1", 1),
        ("H07", 7),
        ("hole 18", 18),
        ("7;8", None),
        ("", None),
        (None, None),
        ("100", None),
    ],
)
def test_the_number_in_a_reference(text, number):
    """References as OpenStreetMap has them: `7`, `Hole #7`, `H07`."""
    assert hole_number_in(text) == number


@pytest.mark.parametrize("text", ["150,x", "-100", "0", "1e3", "100-200", "nan", "12345"])
def test_a_list_of_distances_takes_positive_numbers_only(text):
    with pytest.raises(YardwrightError) as error:
        parse_distances(text)
    assert error.value.what and error.value.remedy


def test_distances_are_put_in_order_once_each():
    assert parse_distances(" 200; 100,150 ,100,") == (100.0, 150.0, 200.0)
    assert parse_distances("") == parse_distances(None) == ()
    assert parse_distances(format_distances((62.5, 150.0))) == (62.5, 150.0)
