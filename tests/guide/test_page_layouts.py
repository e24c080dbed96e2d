"""Pages as layouts of QGIS: templates, what is put into them, texts that fit or are told of."""

import os

import pytest
from qgis.core import QgsLayoutItemLabel, QgsProject
from yardwright.compat import font_of_label
from yardwright.guide.book_figures import BookFigures, made_of
from yardwright.guide.drawn_item import DrawnItem
from yardwright.guide.expressions import add_expressions
from yardwright.guide.page_design import BLEED_MM, KINDS, TextPart, parts_of
from yardwright.guide.page_layouts import PageContent, fit_texts, frames_of, layout_of, texts_of
from yardwright.guide.page_templates import (
    built_in,
    drop_template,
    empty_layout,
    items_of,
    keep_template,
    page_size,
    template_of,
    template_path,
)
from yardwright.guide.sheet_parts import INK, Line, Page, Text
from yardwright.guide.text_room import fitting_size, line_height, lines_of, missing_letters, room_for
from yardwright.model.errors import YardwrightError

from tests.makers import straight_hole

POCKET = (107.95, 177.8)
SIZES = {
    "pocket": POCKET,
    "phone": (90.0, 195.0),
    "A6": (105.0, 148.0),
    "least": (70.0, 110.0),
    "A4": (210, 297),
}


@pytest.fixture(autouse=True)
def functions(qgis_app):
    take_away = add_expressions()
    yield
    take_away()


@pytest.fixture
def place(tmp_path):
    return str(tmp_path / "Larkmere.gpkg")


def scale(width, height):
    """A drawing as large as it is asked to be."""
    return Page(width, height, (Line(((0, 0), (width, height)), 0.3), Text(1, 5, "150", 7, True)))


def content(**variables):
    drawn = dict.fromkeys(("overlay", "ladder", "green", "scorecard", "overview", "pins", "lines"), scale)
    return PageContent({"hole_number": 1, "book_page": 9, "heading": "Local rules", **variables}, {}, drawn)


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("size", SIZES.values(), ids=SIZES)
def test_built_in_pages_keep_to_the_page_and_apart(kind, size):
    parts = parts_of(kind, size)
    assert set(KINDS[kind].needs) <= {part.id for part in parts}
    for part in parts:
        left, top, width, height = part.box
        over = BLEED_MM if left < 0 else 0.0
        assert width > 0 and height > 0
        assert left >= -over and top >= -over
        assert left + width <= size[0] + over + 1e-9 and top + height <= size[1] + over + 1e-9
    texts = [part for part in parts if isinstance(part, TextPart)]
    for number, one in enumerate(texts):
        assert one.size >= 6
        # A line of its own size goes into it, or it could never be read.
        assert line_height(6) <= one.box[3] + 1e-6
        for other in texts[number + 1 :]:
            across = min(one.box[0] + one.box[2], other.box[0] + other.box[2]) - max(one.box[0], other.box[0])
            down = min(one.box[1] + one.box[3], other.box[1] + other.box[3]) - max(one.box[1], other.box[1])
            assert across <= 1e-9 or down <= 1e-9, (one.id, other.id)


def test_frames_worked_out_elsewhere_are_taken():
    frames = {
        "head": (4, 4, 100, 13),
        "number": (4, 4, 15, 13),
        "title": (21, 4, 30, 13),
        "lengths": (52, 4, 52, 13),
        "picture": (4, 19, 45, 148),
        "overlay": (4, 19, 45, 148),
        "ladder": (49, 19, 20, 148),
        "green": (71, 19, 33, 54),
        "notes": (71, 75, 33, 92),
        "foot": (4, 170, 100, 3),
    }
    boxes = {part.id: part.box for part in parts_of("hole", POCKET, frames)}
    for name in ("number", "lengths", "picture", "overlay", "ladder", "green"):
        assert boxes[name] == frames[name]
    assert boxes["description"][:3] == boxes["notes"][:1] + (75, 33)
    assert boxes["notes"][1] + boxes["notes"][3] == pytest.approx(167)
    assert boxes["description"][1] + boxes["description"][3] <= boxes["notes"][1]
    assert boxes["name"][0] == boxes["par"][0] == 21


def test_a_page_that_is_too_small_is_refused():
    with pytest.raises(YardwrightError, match="20 x 30 mm"):
        parts_of("hole", (20, 30))


def test_a_hole_page_takes_its_texts_from_the_course():
    with made_of(BookFigures(straight_hole())):
        layout = layout_of(QgsProject.instance(), built_in("hole", POCKET), content(credit="Larkmere, 2026"))
        texts = texts_of(layout)
    assert (
        texts["number"] == "1" and texts["lengths"] == "Back\u00a0400" and texts["credit"] == "Larkmere, 2026"
    )
    # It has a par of 4 and no stroke index.
    assert texts["par"].strip() == "Par 4"
    assert page_size(layout) == pytest.approx(POCKET)


def test_there_is_nothing_to_undo_in_a_page_just_made():
    layout = layout_of(QgsProject.instance(), built_in("text", POCKET), content(text="Free drop. " * 250))
    assert layout.undoStack().stack().count() == 0


def test_no_built_in_text_has_a_figure_typed_by_hand():
    for kind in KINDS:
        for part in parts_of(kind, POCKET):
            if isinstance(part, TextPart):
                typed = "".join(text.rsplit("%]", 1)[-1] for text in part.text.split("[%"))
                assert "[%" in part.text and not any(letter.isdigit() for letter in typed)


def test_drawings_are_made_as_large_as_the_template_says():
    asked = {}

    def ladder(width, height):
        asked["ladder"] = width, height
        return scale(width, height)

    frames = {
        "picture": (5, 30, 60, 100),
        "overlay": (5, 30, 60, 100),
        "ladder": (66, 30, 17.5, 100),
        "green": (84, 80, 20, 40),
        "head": (5, 5, 90, 18),
        "foot": (5, 150, 90, 20),
    }
    remarks = []
    template = built_in("hole", POCKET, frames)
    layout = layout_of(QgsProject.instance(), template, PageContent(drawings={"ladder": ladder}), remarks)
    assert asked["ladder"] == pytest.approx((17.5, 100))
    assert frames_of(layout)["green"] == pytest.approx(frames["green"])
    # Without a hole the head cannot be worked out, and that is told.
    assert {remark.code for remark in remarks} == {"expression"}
    assert any("“name”" in remark and "hole_name" in remark for remark in remarks)


def test_a_drawing_is_kept_in_a_saved_layout(place):
    layout = layout_of(QgsProject.instance(), built_in("scorecard", POCKET), content())
    drawn = layout.itemById("scorecard").drawing
    again = layout.clone().itemById("scorecard")
    assert isinstance(again, DrawnItem)
    assert again.drawing.items == drawn.items
    assert (again.drawing.width, again.drawing.height) == (drawn.width, drawn.height)


# Texts and their room


def test_room_is_counted_in_lines():
    line = line_height(9)
    assert room_for("Left", (50, 3.5 * line), 9) == 2
    assert room_for("Left\nRight\nOver", (50, 2.5 * line), 9) == -1
    assert room_for("", (50, 2.5 * line), 9) == 2
    assert fitting_size("word " * 400, (40, 10), 9)[0] == 6
    assert fitting_size("word", (40, 10), 9) == (9, 1)


def test_lines_break_in_all_scripts():
    for text in ("Bach links. " * 40, "球場" * 120, "שלום " * 60, "مرحبا " * 60, "x" * 300):
        wide, narrow = lines_of(text, 80, 8), lines_of(text, 40, 8)
        assert wide >= 2 and 1.7 <= narrow / wide <= 3.5


def test_letters_that_no_font_has_are_told():
    assert missing_letters("Ñandú – Bäche ½ 7 →") == ""
    # The last characters of Unicode's private planes mean nothing anywhere.
    assert missing_letters("a\U0010fffdb\U0010fffd") == "\U0010fffd"
    remarks = []
    layout_of(QgsProject.instance(), built_in("text", POCKET), content(text="Hole \U0010fffd"), remarks)
    assert [remark.code for remark in remarks] == ["letters"]


def test_a_long_text_is_set_smaller_and_then_told_of():
    remarks = []
    layout = layout_of(
        QgsProject.instance(), built_in("text", POCKET), content(text="Free drop. " * 250), remarks
    )
    label = layout.itemById("text")
    assert 6 <= font_of_label(label).pointSizeF() < 9 and not remarks
    layout = layout_of(
        QgsProject.instance(), built_in("text", POCKET), content(text="Free drop. " * 900), remarks
    )
    assert font_of_label(layout.itemById("text")).pointSizeF() == 6
    assert [remark.code for remark in remarks] == ["long"] and "lines too long" in remarks[0]


def test_a_text_gets_its_size_back_when_it_is_short_again():
    layout = layout_of(QgsProject.instance(), built_in("text", POCKET), content(text="Free drop. " * 250))
    label = layout.itemById("text")
    label.setText("short")
    assert fit_texts(layout) == ()
    assert font_of_label(label).pointSizeF() == 9


# The course's own templates


def test_a_template_is_kept_and_used_without_what_the_page_showed(place):
    layout = layout_of(QgsProject.instance(), built_in("text", POCKET), content(text="Free drop. " * 250))
    label = QgsLayoutItemLabel(layout)
    label.setId("motto")
    label.setText("Larkmere since ever")
    layout.addLayoutItem(label)
    path = keep_template(layout, "text", place)
    assert (
        path
        == template_path("text", place)
        == os.path.join(os.path.dirname(place), "Larkmere_guide", "text.qpt")
    )
    with open(path, encoding="utf-8") as file:
        saved = file.read()
    assert "Free drop" not in saved and "Larkmere since ever" in saved
    # The page itself goes on showing what it showed.
    assert "Free drop" in texts_of(layout)["text"]
    template = template_of("text", place, POCKET)
    assert template.path == path and not template.remarks
    again = layout_of(QgsProject.instance(), template, content(text="Provisional ball"))
    assert texts_of(again)["motto"] == "Larkmere since ever"
    assert texts_of(again)["text"] == "Provisional ball"
    assert font_of_label(again.itemById("text")).pointSizeF() == 9
    assert template.key != built_in("text", POCKET).key


def test_drawings_do_not_go_into_a_template(place):
    layout = layout_of(QgsProject.instance(), built_in("scorecard", POCKET), content())
    path = keep_template(layout, "scorecard", place)
    with open(path, encoding="utf-8") as file:
        assert "drawing=" not in file.read()
    assert layout.itemById("scorecard").drawing is not None
    kept = empty_layout(QgsProject.instance(), template_of("scorecard", place, POCKET))
    assert isinstance(kept.itemById("scorecard"), DrawnItem) and kept.itemById("scorecard").drawing is None


def test_a_template_that_lacks_parts_is_told_and_not_used(place):
    layout = empty_layout(QgsProject.instance(), built_in("hole", POCKET))
    path = keep_template(layout, "hole", place)
    with open(path, encoding="utf-8") as file:
        text = file.read()
    with open(path, "w", encoding="utf-8") as file:
        file.write(text.replace('id="ladder"', 'id="stairs"').replace('id="picture"', 'id="pic"'))
    template = template_of("hole", place, POCKET)
    assert template.path == "" and "it lacks “picture” and “ladder”" in template.remarks[0]
    remarks = []
    layout_of(QgsProject.instance(), template, content(), remarks)
    assert remarks[0].code == "template"


@pytest.mark.parametrize("data", [b"", b"<Layout", b"<html/>", b"\x00\xff", b"<Layout/>"])
def test_a_broken_template_is_told_and_not_used(place, data):
    path = template_path("cover", place)
    os.makedirs(os.path.dirname(path))
    with open(path, "wb") as file:
        file.write(data)
    template = template_of("cover", place, POCKET)
    assert template.path == "" and path in template.remarks[0]
    assert (
        texts_of(layout_of(QgsProject.instance(), template, content(title="Larkmere")))["title"] == "Larkmere"
    )


def test_a_template_of_another_size_is_told_and_not_used(place):
    keep_template(empty_layout(QgsProject.instance(), built_in("notes", POCKET)), "notes", place)
    template = template_of("notes", place, (105, 148))
    assert "107.9 x 177.8 mm" in template.remarks[0] or "108.0 x 177.8 mm" in template.remarks[0]


def test_a_page_without_its_parts_is_not_kept_and_the_old_one_stays(place):
    layout = empty_layout(QgsProject.instance(), built_in("hole", POCKET))
    path = keep_template(layout, "hole", place)
    with open(path, "rb") as file:
        before = file.read()
    layout.removeLayoutItem(layout.itemById("green"))
    with pytest.raises(YardwrightError, match="lacks “green”"):
        keep_template(layout, "hole", place)
    with open(path, "rb") as file:
        assert file.read() == before


def test_the_built_in_page_is_taken_again(place):
    assert not drop_template("notes", place)
    path = keep_template(empty_layout(QgsProject.instance(), built_in("notes", POCKET)), "notes", place)
    assert drop_template("notes", place)
    assert template_of("notes", place, POCKET).path == "" and os.path.exists(path + "~")


def test_a_folder_that_cannot_be_written_is_told(tmp_path):
    blocked = tmp_path / "Larkmere_guide"
    blocked.write_text("a file where the folder should be")
    layout = empty_layout(QgsProject.instance(), built_in("notes", POCKET))
    with pytest.raises(YardwrightError, match="cannot be written"):
        keep_template(layout, "notes", str(tmp_path / "Larkmere.gpkg"))


def test_labels_are_plain_labels_of_qgis():
    layout = empty_layout(QgsProject.instance(), built_in("hole", POCKET))
    labels = {label.id(): label for label in items_of(layout, QgsLayoutItemLabel)}
    assert labels["name"].text() == "[% hole_name(@hole_number) %]"
    assert font_of_label(labels["number"]).bold() and INK == "#000000"
