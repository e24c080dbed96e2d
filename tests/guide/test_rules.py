"""Which pages may be carried: 1:480 and 4 1/4 x 7 in (Rules of Golf, Rule 4.3a, interpretation on
green-reading materials), and images that may not be printed."""

import pytest
from yardwright.guide.rules import green_scale, image_rights, page_size, stop_for
from yardwright.model.errors import YardwrightError

POCKET = (107.95, 177.8)


def test_a_green_may_not_be_larger_than_one_to_480():
    assert green_scale("Hole 1", 480) == [] == green_scale("Hole 1", None)
    (broken,) = green_scale("Hole 7", 479)
    assert broken.page == "Hole 7" and "1:479" in broken.what


@pytest.mark.parametrize(
    ("size", "greens", "form", "allowed"),
    [
        (POCKET, 1, "pages", True),
        (POCKET[::-1], 1, "booklet", True),
        ((108.1, 177.8), 1, "pages", False),
        ((90, 178.5), 2, "booklet", False),
        ((210, 297), 9, "pages", True),
        ((210, 297), 8, "pages", False),
        ((210, 297), 0, "pages", True),
        ((90, 195), 1, "screen", True),
    ],
)
def test_how_large_a_page_may_be(size, greens, form, allowed):
    assert (page_size("Hole 1", size, greens, form) == []) is allowed


def test_an_image_that_may_not_be_printed_is_for_screens_only():
    assert image_rights("may", ["Hole 1"], "screen") == [] == image_rights(None, ["Hole 1"], "pages")
    assert image_rights("may", [], "booklet") == []
    (broken,) = image_rights("may", ["Hole 1", "Hole 2"], "pages")
    assert "“may”" in broken.what and broken.page == "Hole 1"


def test_a_broken_rule_stops_unless_it_does_not_apply():
    both = green_scale("Hole 1", 400) + page_size("Hole 2", (210, 297), 1, "pages")
    with pytest.raises(YardwrightError, match="Hole 1"):
        stop_for(both)
    with pytest.raises(YardwrightError, match="Hole 2"):
        stop_for(both, ["green_scale"])
    stop_for(both, ["green_scale", "page_size"])
    with pytest.raises(YardwrightError, match="may not be printed"):
        stop_for(image_rights("may", ["Hole 1"], "pages"), ["image", "green_scale", "page_size"])


def test_how_many_pages_break_it_is_said():
    broken = [one for number in range(1, 4) for one in green_scale(f"Hole {number}", 300)]
    with pytest.raises(YardwrightError, match="2 other pages"):
        stop_for(broken)
