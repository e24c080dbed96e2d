"""The guide by a list of pages: their order, Markdown, sponsors' files; read back by pypdf and poppler."""

import os

import numpy as np
import pypdf
import pytest
from osgeo import gdal
from yardwright.model.guide_pages import GuidePage

from tests.processing.test_make_guide import (  # noqa: F401 - fixtures
    MM,
    bookmarks,
    course_file,
    guide,
    image,
    known,
    own_cache,
    said_on,
)

NOTICE = """Play the ball **as it lies**.

- Horn: *one long blast* stops play.
- Hole 2 measures [% hole_length(2, 'Heron') %] yards.

See [the draw](https://quernhallow.example/draw).
"""


def listed(course, *pages, event="Heron Cup", host=""):
    """Keep a list of pages for an event."""
    from dataclasses import replace

    from yardwright.store.course_file import open_course
    from yardwright.store.events import read_event, write_event
    from yardwright.store.guide_pages import write_guide_pages

    with open_course(course) as layers:
        write_guide_pages(layers, event, pages)
        if host:
            write_event(layers, replace(read_event(layers, event), host=host))


def sponsors_folder(course):
    folder = os.path.splitext(course)[0] + "_guide"
    os.makedirs(folder, exist_ok=True)
    return folder


def write_png(path, wide, high):
    """A red picture with a white middle."""
    pixels = np.zeros((3, high, wide), np.uint8)
    pixels[0] = 200
    pixels[:, high // 4 : 3 * high // 4, wide // 4 : 3 * wide // 4] = 255
    memory = gdal.GetDriverByName("MEM").Create("", wide, high, 3)
    for band in range(3):
        memory.GetRasterBand(band + 1).WriteArray(pixels[band])
    gdal.GetDriverByName("PNG").CreateCopy(path, memory)


def write_pdf(path, sizes):
    """A PDF of empty pages, (width, height) in points each."""
    writer = pypdf.PdfWriter()
    for size in sizes:
        writer.add_blank_page(*size)
    with open(path, "wb") as file:
        writer.write(file)


def test_pages_come_in_the_order_of_the_list(known, image, tmp_path):  # noqa: F811
    listed(
        known,
        GuidePage("pins"), GuidePage("notices", "Read this first", NOTICE), GuidePage("holes"),
        GuidePage("overview", shown=False), GuidePage("text", "Thanks", "# To all\n\nwho helped."),
        GuidePage("imprint", "Small print"), GuidePage("cover", "Front"), GuidePage("notes"), GuidePage("notes"),
    )  # fmt: skip
    _, ok, log, path = guide(known, image, tmp_path, EVENT="Heron Cup")
    assert ok, log
    reader = pypdf.PdfReader(path)
    titles = [title for _, title, _ in bookmarks(reader)]
    assert titles == [
        "Pins, round 1", "Pins, round 2", "Read this first", "1 Burn", "2 Elbow", "Thanks", "Small print",
        "Front", "Notes",
    ]  # fmt: skip
    assert len(reader.pages) == len(titles) + 1


def has_slanted_letters():
    """Whether the pages' font has them here."""
    from qgis.PyQt.QtGui import QFontDatabase
    from yardwright.guide.lettering import font_of

    styles = QFontDatabase().styles(font_of(10.0).family())
    return any("Oblique" in style or "Italic" in style for style in styles)


def test_markdown_is_set_as_text_with_its_figures_and_links(known, image, tmp_path):  # noqa: F811
    listed(known, GuidePage("notices", text=NOTICE), GuidePage("local_rules", text="1. Stakes."))
    _, ok, log, path = guide(known, image, tmp_path, EVENT="Heron Cup")
    assert ok, log
    reader = pypdf.PdfReader(path)
    text = said_on(reader.pages[0])
    assert "Notices to players" in text and "as it lies" in text and "**" not in text
    assert "Hole 2 measures 350 yards" in text
    fonts = {str(font.get_object()["/BaseFont"]) for font in reader.pages[0]["/Resources"]["/Font"].values()}
    assert any("Bold" in name for name in fonts)
    if has_slanted_letters():  # else Qt slants the upright ones
        assert any("Oblique" in name or "Italic" in name for name in fonts)
    (link,) = [one.get_object() for one in reader.pages[0]["/Annots"]]
    assert link["/A"]["/URI"] == "https://quernhallow.example/draw"
    left, bottom, right, top = map(float, link["/Rect"])
    assert 0 < left < right < reader.pages[0].mediabox.width and 5 < top - bottom < 20
    # The committee's notice prevails: said on the page itself.
    assert "prevails over this page" in said_on(reader.pages[1])


def test_long_texts_flow_over_pages_and_nothing_is_lost(known, image, tmp_path):  # noqa: F811
    words = " ".join(f"word{number}" for number in range(900))
    listed(known, GuidePage("text", "Long", f"## Start\n\n{words}\n\n## End\n\nlast"))
    _, ok, log, path = guide(known, image, tmp_path, EVENT="Heron Cup", PAGE="pocket", form="pages")
    assert ok, log
    reader = pypdf.PdfReader(path)
    said = " ".join(said_on(page) for page in reader.pages)
    assert [one for one in said.split() if one.startswith("word")] == words.split() and "last" in said
    assert len(reader.pages) > 3 and [title for _, title, _ in bookmarks(reader)] == ["Long", "Imprint"]


def test_sponsors_pages(known, image, tmp_path):  # noqa: F811
    """An image in a page whole, no larger than 300 dots per inch need; each page of a PDF, in its middle."""
    folder = sponsors_folder(known)
    write_png(os.path.join(folder, "large.png"), 4000, 2000)
    write_pdf(os.path.join(folder, "two.pdf"), [(300, 300), (200, 400)])
    listed(
        known,
        GuidePage("sponsor", "Tern & Sons", source="large.png"),
        GuidePage("sponsor", source="two.pdf"),
        GuidePage("imprint"),
    )
    _, ok, log, path = guide(known, image, tmp_path, EVENT="Heron Cup", PAGE="pocket", form="pages")
    assert ok, log
    reader = pypdf.PdfReader(path)
    assert [title for _, title, _ in bookmarks(reader)] == ["Tern & Sons", "Page of a sponsor", "Imprint"]
    assert len(reader.pages) == 4 and "Tern & Sons" in said_on(reader.pages[0])
    (picture,) = reader.pages[0].images
    wide, high = picture.image.size
    assert abs(wide / high - 2) < 0.01 and wide <= 107.95 / 25.4 * 300 * 1.34
    for page in reader.pages[:3]:
        trim = page.trimbox
        assert float(trim.width) * MM == pytest.approx(107.95, abs=0.1)


def test_files_that_cannot_be_used_are_said_on_the_page_and_in_the_log(known, image, tmp_path):  # noqa: F811
    folder = sponsors_folder(known)
    with open(os.path.join(folder, "broken.pdf"), "wb") as file:
        file.write(b"%PDF-1.4\nnothing more")
    with open(os.path.join(folder, "words.png"), "wb") as file:
        file.write(b"no picture")
    write_pdf(os.path.join(folder, "many.pdf"), [(200, 300)] * 500)
    listed(
        known,
        GuidePage("sponsor", "Tern", source="broken.pdf"), GuidePage("sponsor", "Knot", source="words.png"),
        GuidePage("sponsor", "Coot", source="nowhere.png"), GuidePage("sponsor", "Teal", source="many.pdf"),
        GuidePage("notices"), GuidePage("sponsor", "Rail"),
    )  # fmt: skip
    _, ok, log, path = guide(known, image, tmp_path, EVENT="Heron Cup")
    assert ok, log
    reader = pypdf.PdfReader(path)
    assert len(reader.pages) == 3 + 8 + 1
    for number, name in enumerate(("broken.pdf", "words.png", "nowhere.png")):
        assert name in said_on(reader.pages[number]) and name in log
    assert "500 pages" in log and "“Notices to players” has no text" in log and "“Rail” names no file" in log


def test_the_event_s_page(known, image, tmp_path):  # noqa: F811
    listed(
        known,
        GuidePage("event", text="*Welcome.*"),
        GuidePage("cover"),
        host="The Heron Society\nat Larkmere",
    )
    _, ok, log, path = guide(known, image, tmp_path, EVENT="Heron Cup")
    assert ok, log
    reader = pypdf.PdfReader(path)
    text = said_on(reader.pages[0])
    for said in ("Heron Cup", "Welcome.", "Host", "The Heron Society", "at Larkmere", "Rounds", "one tee"):
        assert said in text
    assert text.index("Welcome.") < text.index("Host") < text.index("Rounds")
    assert "The Heron Society" in said_on(reader.pages[1])


def test_a_booklet_s_spare_pages_follow_those_for_notes(known, image, tmp_path):  # noqa: F811
    from yardwright.guide.book import Wanted, plan_book
    from yardwright.guide.book_figures import BookFigures
    from yardwright.store.course_file import open_course
    from yardwright.store.reading import read_course

    with open_course(known) as layers:
        course = read_course(layers)
    pages = (GuidePage("cover"), GuidePage("notes", "Jot"), GuidePage("holes"), GuidePage("imprint"))
    book = plan_book(course, None, Wanted("booklet", (107.95, 177.8), pages=pages), BookFigures(course))
    kinds = [page.kind for page in book.pages]
    assert len(kinds) % 4 == 0 and kinds[0] == "cover" and kinds[-1] == "text"
    notes = [number for number, kind in enumerate(kinds) if kind == "notes"]
    assert notes == [*range(1, 1 + len(notes))]
