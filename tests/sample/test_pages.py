"""The pages of the sample course’s holes, as its drawing has them: all legible, nothing left out unsaid."""

import pytest
from yardwright.guide.hole_page import SIZES, hole_page
from yardwright.guide.sheet_parts import Text
from yardwright.measure.hole import CourseIndex

from sample_project import drawing
from tests.guide.test_hole_page import assert_legible, said_in

pytestmark = pytest.mark.usefixtures("qgis_app")


@pytest.fixture(scope="module")
def index():
    return CourseIndex(drawing.course())


@pytest.mark.parametrize("number", range(1, 19))
def test_every_hole_gives_a_legible_page(index, number):
    for size in SIZES.values():
        page = hole_page(index.course, index, number, size_mm=size)
        assert_legible(page)
        lost = [remark for remark in page.remarks if remark.code == "no_room"]
        said = [item.text for one in page.drawings.values() for item in one.items if isinstance(item, Text)]
        assert len(lost) <= 1 and len(said) > 20
        assert said_in(page.drawings["ladder"], "tee") and said_in(page.drawings["ladder"], "flag")
