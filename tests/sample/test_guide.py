"""What the club says of its holes: every figure in it can be worked out."""

import re

import pytest
from qgis.core import QgsExpressionContext
from yardwright.guide.book_figures import BookFigures, made_of
from yardwright.guide.expressions import add_expressions, worked_out

from sample_project import drawing, notes

pytestmark = pytest.mark.usefixtures("qgis_app")


def test_every_hole_has_a_description_and_all_its_figures_are_there():
    course = drawing.course()
    assert sorted(notes.DESCRIPTIONS) == [hole.number for hole in course.holes]
    take_away = add_expressions()
    try:
        with made_of(BookFigures(course)):
            made = {n: worked_out(text, QgsExpressionContext()) for n, text in notes.DESCRIPTIONS.items()}
    finally:
        take_away()
    assert [errors for _, errors in made.values() if errors] == []
    with_figures = [n for n, text in notes.DESCRIPTIONS.items() if "[%" in text]
    assert len(with_figures) >= 8
    assert all(re.search(r"[1-9]\d+", made[n][0]) for n in with_figures)
