"""Layouts painted as PDF, looked at from outside with pypdf and poppler's tools; and pages known again."""

import datetime
import os
import re
import subprocess
import threading
from dataclasses import replace

import numpy as np
import pypdf
import pytest
from qgis.core import QgsApplication, QgsExpression, QgsLayoutItemRenderContext, QgsProject, QgsRenderContext
from qgis.PyQt.QtGui import QImage, QPainter
from shapely.geometry import Point
from yardwright import classFactory
from yardwright.guide import drawn_item
from yardwright.guide.book_figures import BookFigures, made_of
from yardwright.guide.drawn_item import TYPE, DrawnItem, from_text, register_drawn_item
from yardwright.guide.page_cache import Bytes, PageCache, key_of, page_key
from yardwright.guide.page_layouts import PageContent, layout_of
from yardwright.guide.page_painting import FORMS, PageForm, paint_page, painted
from yardwright.guide.page_pictures import write_picture
from yardwright.guide.page_templates import built_in
from yardwright.guide.pdf_join import BookInfo, Leaf, join
from yardwright.guide.sheet_parts import Area, Dots, Line, Page, Place, Text, box_area
from yardwright.model.errors import YardwrightError

from tests.makers import straight_hole
from tests.pdf_pages import rendered

pytestmark = pytest.mark.usefixtures("qgis_app")

POCKET = (107.95, 177.8)
FRAMES = {
    "picture": (10, 30, 50.8, 101.6),
    "overlay": (10, 30, 50.8, 101.6),
    "ladder": (62, 30, 18, 101.6),
    "green": (82, 90, 20, 40),
    "head": (5, 5, 95, 18),
    "foot": (5, 150, 95, 20),
}


def square(width, height):
    """A black square of 10 mm, 20 mm from the left and 40 from the top."""
    return Page(width, height, (box_area(20, 40, 30, 50, "#000000"), Text(5, 8, "234", 9, True)))


def picture(path, seed=1):
    """A picture of 600 x 1200 pixels of grain: 300 dpi in the frame. Its pixels."""
    pixels = np.random.default_rng(seed).integers(150, 256, (1200, 600, 3), dtype=np.uint8)
    QImage(pixels.tobytes(), 600, 1200, 1800, QImage.Format.Format_RGB888).save(str(path))
    return pixels


def page(drawings=None, pictures=None, **variables):
    content = PageContent({"credit": "Larkmere 2026", **variables}, pictures or {}, drawings or {})
    return layout_of(QgsProject.instance(), built_in("hole", POCKET, FRAMES), content)


def bare_page(drawings=None):
    """A page with nothing dark on it but drawings."""
    layout = page(drawings, credit="")
    layout.removeLayoutItem(layout.itemById("number"))
    return layout


def dark(path):
    """Where a page is black: (left, top, right, bottom) in mm."""
    image = rendered(path)
    rows, columns = np.nonzero((image[:, :, :3] < 60).all(axis=2))
    edges = columns.min(), rows.min(), columns.max() + 1, rows.max() + 1
    return tuple(edge / 10 for edge in edges)


def test_paper_is_of_whole_points_and_joined_to_the_exact_size(tmp_path):
    path, book = str(tmp_path / "page.pdf"), str(tmp_path / "book.pdf")
    paint_page(page(), path, "pages")
    box = pypdf.PdfReader(path).pages[0].mediabox
    # 107.95 + 6 mm are 323.0 points and 177.8 + 6 mm 521.0: 323.008 goes up.
    assert (float(box.width), float(box.height)) == (324, 522)
    join([Leaf(path, bleed_mm=3, size_mm=POCKET)], book, BookInfo())
    trim = pypdf.PdfReader(book).pages[0].trimbox
    assert (float(trim.width), float(trim.height)) == pytest.approx((306, 504), abs=0.001)


@pytest.mark.parametrize("bleed", [0.0, 3.0])
def test_what_is_drawn_stands_at_its_place(tmp_path, bleed):
    path = str(tmp_path / "page.pdf")
    layout = bare_page({"overlay": lambda w, h: Page(w, h, square(w, h).items[:1])})
    paint_page(layout, path, PageForm(bleed))
    expected = [value + bleed for value in (30, 70, 40, 80)]
    assert dark(path) == pytest.approx(expected, abs=0.1)


def test_a_drawing_is_stretched_unless_it_keeps_its_shape(tmp_path):
    path = str(tmp_path / "page.pdf")
    drawing = Page(10, 10, (box_area(0, 0, 10, 10, "#000000"),))
    paint_page(bare_page({"ladder": drawing}), path, "screen")
    assert dark(path) == pytest.approx((62, 30, 80, 131.6), abs=0.1)
    paint_page(bare_page({"green": drawing}), path, "screen")
    # 20 x 40 mm hold a square of 20 mm in their middle.
    assert dark(path) == pytest.approx((82, 100, 102, 120), abs=0.1)


def test_text_stays_text_and_fonts_are_within(tmp_path):
    path = str(tmp_path / "page.pdf")
    paint_page(page({"overlay": square}, credit="Bäche & Gräben 2026"), path, "pages")
    said = subprocess.run(["pdftotext", path, "-"], capture_output=True, text=True, check=True).stdout
    assert "234" in said and "Bäche & Gräben 2026" in said
    fonts = subprocess.run(["pdffonts", path], capture_output=True, text=True, check=True).stdout
    rows = fonts.splitlines()[2:]
    assert rows and all(re.search(r"\byes +\w+ +yes +\d+", row) for row in rows)


def test_what_cannot_be_worked_out_is_left_out_of_print(tmp_path):
    path = str(tmp_path / "page.pdf")
    layout = page(hole_number=7)
    before = layout.itemById("par").text()
    paint_page(layout, path, "screen")
    said = subprocess.run(["pdftotext", path, "-"], capture_output=True, text=True, check=True).stdout
    # No course is in hand, so neither name nor par are known.
    assert said.split() == ["7", "Larkmere", "2026"]
    assert layout.itemById("par").text() == before


def images_of(path):
    objects = pypdf.PdfReader(path).pages[0]["/Resources"]["/XObject"]
    return [one.get_object() for one in objects.values() if one.get_object()["/Subtype"] == "/Image"]


def test_a_picture_keeps_every_pixel_in_print_and_is_small_on_a_screen(tmp_path):
    path = str(tmp_path / "page.pdf")
    pixels = picture(tmp_path / "hole.png")
    layout = page(pictures={"picture": str(tmp_path / "hole.png")})
    paint_page(layout, path, "pages")
    (image,) = images_of(path)
    assert (image["/Width"], image["/Height"]) == (600, 1200)
    assert image.get_data() == pixels.tobytes()
    lossless = os.path.getsize(path)
    paint_page(layout, path, "screen")
    (image,) = images_of(path)
    assert image["/Filter"] == "/DCTDecode" and os.path.getsize(path) < lossless


def test_pictures_for_pages_keep_their_pixels_and_are_white_where_clear(tmp_path):
    pixels = np.random.default_rng(3).integers(0, 256, (41, 31, 4), dtype=np.uint8)
    pixels[:, :, 3] = 255
    pixels[:20, :, 3] = 0
    pixels[20, :] = (100, 0, 200, 51)
    read = QImage(write_picture(pixels, str(tmp_path / "hole.bmp"))).convertToFormat(
        QImage.Format.Format_RGB888
    )
    rows = [[read.pixelColor(x, y).getRgb()[:3] for x in range(31)] for y in range(41)]
    assert np.array_equal(np.array(rows)[21:], pixels[21:, :, :3])
    assert (np.array(rows)[:20] == 255).all()
    # A fifth of the colour and four fifths of white.
    assert rows[20][0] == (224, 204, 244)
    with pytest.raises(YardwrightError):
        write_picture(pixels, str(tmp_path / "nowhere" / "hole.bmp"))


def test_a_picture_written_anew_is_shown_anew(tmp_path):
    path, file = str(tmp_path / "page.pdf"), str(tmp_path / "hole.png")
    for seed in (1, 2, 3):
        pixels = picture(file, seed)
        os.utime(file, ns=(seed * 10**9, seed * 10**9))
        paint_page(page(pictures={"picture": file}), path, "pages")
        assert images_of(path)[0].get_data() == pixels.tobytes()


def test_the_same_page_gives_the_same_bytes(tmp_path):
    picture(tmp_path / "hole.png")

    def made():
        return painted(page({"overlay": square}, {"picture": str(tmp_path / "hole.png")}), "pages")

    first = made()
    assert made() == first
    assert painted(page({"overlay": square}), "pages") != first
    assert len(pypdf.PdfReader(__import__("io").BytesIO(first)).pages) == 1


def test_a_picture_that_is_not_there_leaves_its_place_empty(tmp_path):
    path = str(tmp_path / "page.pdf")
    paint_page(bare_page(), path, "screen")
    assert (rendered(path)[:, :, :3] > 250).all()


def test_a_page_that_cannot_be_written_is_told_and_the_old_one_stays(tmp_path, monkeypatch):
    path = tmp_path / "page.pdf"
    path.write_bytes(b"the last good one")
    layout = page()

    class Full:
        def __enter__(self):
            return self

        def __exit__(self, *_):
            pass

        def write(self, _):
            raise OSError(28, "No space left on device")

    monkeypatch.setattr("yardwright.guide.page_painting.open", lambda *_: Full(), raising=False)
    with pytest.raises(YardwrightError, match="No space left"):
        paint_page(layout, str(path), "screen")
    assert path.read_bytes() == b"the last good one" and os.listdir(tmp_path) == ["page.pdf"]
    monkeypatch.undo()
    with pytest.raises(YardwrightError):
        paint_page(layout, str(tmp_path / "nowhere" / "page.pdf"), "screen")


def test_layouts_are_painted_in_the_main_thread_only():
    layout, told = page(), []

    def run():
        try:
            painted(layout, "screen")
        except ValueError as error:
            told.append(str(error))

    thread = threading.Thread(target=run)
    thread.start()
    thread.join()
    assert told == ["layouts are painted in the main thread only"]


@pytest.mark.parametrize("form", FORMS)
def test_texts_stay_in_their_boxes(tmp_path, form):
    """What was found to fit is there to its last word, and within the label's box."""
    path = str(tmp_path / "page.pdf")
    template = built_in("text", POCKET)
    for count in (40, 130, 260):
        words = [f"w{number}" for number in range(count)]
        remarks = []
        content = PageContent({"text": " ".join(words), "heading": "Rules"})
        layout = layout_of(QgsProject.instance(), template, content, remarks)
        assert not remarks
        paint_page(layout, path, replace(FORMS[form], bleed_mm=0.0))
        told = subprocess.run(["pdftotext", "-bbox", path, "-"], capture_output=True, text=True, check=True)
        found = re.findall(r'yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">(w\d+)<', told.stdout)
        assert [word for *_, word in found] == words
        item = layout.itemById("text")
        bottom = (item.pos().y() + item.rect().height()) * 72 / 25.4
        right = (item.pos().x() + item.rect().width()) * 72 / 25.4
        assert max(float(low) for _, _, low, _ in found) <= bottom + 1.5
        assert max(float(edge) for _, edge, _, _ in found) <= right + 0.5


# Drawn items


def drawn_on_a_screen(item, dpi):
    """What an item's own drawing gives in the designer."""
    size = item.rect().size()
    image = QImage(
        round(size.width() / 25.4 * dpi), round(size.height() / 25.4 * dpi), QImage.Format.Format_RGB32
    )
    image.fill(0xFFFFFFFF)
    painter = QPainter(image)
    rendering = QgsRenderContext.fromQPainter(painter)
    rendering.setScaleFactor(dpi / 25.4)
    item.draw(QgsLayoutItemRenderContext(rendering, 1.0))
    painter.end()
    bits = image.constBits()
    bits.setsize(image.sizeInBytes())
    return np.frombuffer(bits, np.uint8).reshape(image.height(), image.width(), 4)[:, :, :3].copy()


def test_a_part_without_a_drawing_says_what_it_is_in_the_designer_only():
    layout = page()
    item = layout.itemById("ladder")
    assert item.displayName() == "Distance ladder"
    assert (drawn_on_a_screen(item, 96) < 200).any()
    item.drawing = Page(18, 100, ())
    assert (drawn_on_a_screen(item, 96) == 255).all()


def test_letters_are_as_large_on_a_screen_as_on_paper():
    layout = page({"ladder": Page(18, 101.6, (Text(2, 50, "250", 12, True),))})
    item = layout.itemById("ladder")
    for dpi in (72, 150, 300):
        rows = np.nonzero((drawn_on_a_screen(item, dpi) < 128).any(axis=2).any(axis=1))[0]
        # Figures of 12 points are about 0.73 of that high: 3.1 mm.
        assert (rows.max() - rows.min() + 1) / dpi * 25.4 == pytest.approx(3.1, abs=0.35)


def test_all_that_is_drawn_comes_back_from_text():
    drawing = Page(
        30,
        40.125,
        (
            Text(1, 2.5, "“Ness”\n<&>", 7.25, True, "centre", "#112233", "label"),
            Line(((0.1, 0.2), (3, 4)), 0.2, "#000000", (1, 0.5)),
            Area((((0, 0), (1, 0), (1, 1)), ((0.2, 0.2), (0.4, 0.2), (0.4, 0.4))), "#ffffff"),
            Dots(((1, 1), (2, 2)), 0.3),
        ),
        (Place("pin", 7, 3.25, 4.5, 2),),
    )
    assert from_text(drawn_item.as_text(drawing)) == drawing
    for text in ("", "[]", "{}", '{"width": 1, "height": 0, "items": [], "places": []}', '{"width":1}'):
        with pytest.raises(ValueError, match="not a drawing"):
            from_text(text)
    with pytest.raises(ValueError, match="not a drawing"):
        from_text('{"width":1,"height":1,"items":[{"is":"Oblong"}],"places":[]}')


def test_the_item_is_registered_once_and_made_by_the_version_loaded_last(monkeypatch):
    class Newer(DrawnItem):
        pass

    register_drawn_item()
    registry = QgsApplication.layoutItemRegistry()
    layout = page()
    monkeypatch.setattr(drawn_item, "DrawnItem", Newer)
    register_drawn_item()
    assert type(layout.clone().itemById("ladder")) is Newer
    monkeypatch.undo()
    register_drawn_item()
    assert type(layout.clone().itemById("ladder")) is DrawnItem
    assert list(registry.itemTypes()).count(TYPE) == 1


def test_the_plugin_brings_items_and_functions_without_a_desktop():
    plugin = classFactory(None)
    plugin.initProcessing()
    assert QgsExpression.isFunctionName("to_reach")
    assert QgsApplication.layoutItemRegistry().itemMetadata(TYPE) is not None
    plugin.unload()
    assert not QgsExpression.isFunctionName("to_reach")
    # Layouts that are open keep their parts.
    assert isinstance(page().itemById("ladder"), DrawnItem)


# Pages known again


def test_keys_tell_what_goes_into_a_page(tmp_path):
    file = tmp_path / "a.bin"
    file.write_bytes(b"one")
    day = datetime.date(2026, 6, 5)
    values = [
        None, True, 1, 1.0, "1", b"1", (1,), ((1,),), (1, 2), {"a": 1}, {"a": 2}, Point(1, 2), Point(1, 3),
        np.array([1.0]), np.array([1]), day, Bytes(str(file)), Line(((0, 0),), 1), Line(((0, 0),), 2), ("ab", "c"), ("a", "bc"),
    ]  # fmt: skip
    keys = [key_of(value) for value in values]
    assert len(set(keys)) == len(keys)
    assert [key_of(value) for value in values] == keys
    assert key_of({"a": 1, "b": 2}) == key_of({"b": 2, "a": 1})
    file.write_bytes(b"two")
    assert key_of(Bytes(str(file))) != keys[16]
    with pytest.raises(ValueError):
        key_of(object())


def test_a_pages_key_goes_by_its_content():
    template = built_in("text", POCKET)
    content = PageContent({"text": "one"}, about=("course", 1))
    key = page_key(template, content, FORMS["screen"])
    assert key == page_key(
        built_in("text", POCKET), replace(content, drawings={"x": square}), FORMS["screen"]
    )
    assert key != page_key(template, replace(content, variables={"text": "two"}), FORMS["screen"])
    assert key != page_key(template, replace(content, about=("course", 2)), FORMS["screen"])
    assert key != page_key(template, content, FORMS["pages"])
    assert key != page_key(built_in("text", (105, 148)), content, FORMS["screen"])


def test_a_page_about_nothing_in_particular_is_known_by_the_whole_course():
    template, content, form = built_in("hole", POCKET), PageContent({"hole_number": 1}), FORMS["screen"]
    keys = [page_key(template, content, form)]
    course = straight_hole()
    renamed = replace(course, holes=(replace(course.holes[0], name="Burn"),))
    for one in (course, renamed, straight_hole(length=401.0)):
        with made_of(BookFigures(one)):
            keys.append(page_key(template, content, form))
            assert page_key(template, content, form) == keys[-1]
    assert len(set(keys)) == 4


def test_a_page_is_painted_once(tmp_path):
    cache = PageCache(str(tmp_path / "pages"))

    def make(path):
        paint_page(page(), path, "screen")

    first = cache.page("k" * 8, make)
    with open(first, "rb") as file:
        data = file.read()
    again = PageCache(cache.folder)
    assert again.page("k" * 8, lambda path: pytest.fail("painted again")) == first
    assert (cache.made, cache.found, again.made, again.found) == (1, 0, 0, 1)
    with open(first, "rb") as file:
        assert file.read() == data


def test_a_page_that_fails_is_not_kept(tmp_path):
    cache = PageCache(str(tmp_path / "pages"))

    def fail(path):
        with open(path, "w") as file:
            file.write("half")
        raise YardwrightError("No image.", "Bring it.")

    with pytest.raises(YardwrightError):
        cache.page("k", fail)
    assert os.listdir(cache.folder) == []
    (tmp_path / "file").write_text("")
    with pytest.raises(YardwrightError, match="cannot be made"):
        PageCache(str(tmp_path / "file")).page("k", fail)


def test_pages_not_used_for_longest_go_first(tmp_path):
    cache = PageCache(str(tmp_path / "pages"), most=250)

    def make(path):
        with open(path, "wb") as file:
            file.write(bytes(100))

    for number in range(4):
        os.utime(cache.page(str(number), make), (number, number))
    later = PageCache(cache.folder, most=250)
    later.page("0", make)
    later.keep_small()
    assert sorted(os.listdir(cache.folder)) == ["0.pdf", "3.pdf"]
    cache.forget()
    assert not os.path.exists(cache.folder)
