"""What a guide does with a disk that is full, images that fail and texts that are too much: it stops with a
reason and leaves the last good book, or its page says what it lacks.

Where words stand on a page is told by poppler (``pdftotext -bbox``).
"""

import os
import re
import resource
import subprocess
from contextlib import contextmanager
from dataclasses import replace

import pypdf
import pytest
from yardwright.guide.book import Wanted
from yardwright.guide.book_making import GuideMaker
from yardwright.guide.page_cache import PageCache
from yardwright.model.course import TeeSet
from yardwright.model.errors import YardwrightError
from yardwright.model.event import Event, Flight, Pin, Round

from tests.makers import straight_hole, tee
from tests.processing.test_make_guide import (  # noqa: F401 - fixtures
    course_file,
    guide,
    image,
    known,
    own_cache,
    said_on,
    write_image,
)

POCKET = (107.95, 177.8)
LAST = b"the last good guide"
YARD = 0.9144


# --- no room on the disk -----------------------------------------------------------------------------------


@contextmanager
def files_no_larger(size):
    """While it runs, this process can write no file beyond so many bytes: as on a full disk, writing fails in the
    middle of a file (EFBIG for ENOSPC)."""
    soft, hard = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (size, hard))
    try:
        yield
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, (soft, hard))


def test_a_full_disk_stops_the_guide_with_a_reason(known, image, tmp_path):  # noqa: F811
    """The limits stop it at its first file, at a page, and at a picture or the book that all pages go into."""
    folder = tmp_path / "books"
    folder.mkdir()
    (folder / "guide.pdf").write_bytes(LAST)
    asked = {"EVENT": "Heron Cup", "DPI": 300}
    for size in (0, 20_000, 400_000):
        with files_no_larger(size):
            _, ok, log, _ = guide(known, image, folder, "pages", **asked)
        assert not ok and "Traceback" not in log
        assert re.search("could not be written|cannot be written|cannot be made", log), log
        assert "room on the disk" in log or "folder that exists" in log
        assert os.listdir(folder) == ["guide.pdf"]
        assert (folder / "guide.pdf").read_bytes() == LAST
    # What was painted before the disk was full is whole: with room again the book is the same as ever.
    results, ok, log, path = guide(known, image, folder, "pages", **asked)
    assert ok and 0 < results["PAINTED"] < results["PAGES"], log
    os.rename(tmp_path / "cache", tmp_path / "put away")
    _, ok, log, other = guide(known, image, folder, "pages", "other.pdf", **asked)
    assert ok, log
    with open(path, "rb") as one, open(other, "rb") as two:
        assert one.read() == two.read()


def test_a_folder_that_may_not_be_written_to(known, image, tmp_path, monkeypatch):  # noqa: F811
    _, ok, log, _ = guide(known, image, tmp_path / "nowhere")
    assert not ok and "cannot be written" in log and "Traceback" not in log


# --- images ------------------------------------------------------------------------------------------------


def test_an_image_cut_short_stops_the_guide_and_is_named(known, image, tmp_path):  # noqa: F811
    (tmp_path / "guide.pdf").write_bytes(LAST)
    with open(image, "r+b") as file:
        file.truncate(os.path.getsize(image) // 3)
    _, ok, log, path = guide(known, image, tmp_path)
    assert "Traceback" not in log
    assert not ok and "flown.tif" in log
    with open(path, "rb") as file:
        assert file.read() == LAST


def test_an_image_that_vanished_stops_the_guide_and_is_named(known, image, tmp_path):  # noqa: F811
    from qgis.core import QgsRasterLayer

    (tmp_path / "guide.pdf").write_bytes(LAST)
    layer = QgsRasterLayer(image, "flown")
    os.remove(image)
    _, ok, log, path = guide(known, layer, tmp_path)
    assert "Traceback" not in log
    assert not ok and "flown" in log
    with open(path, "rb") as file:
        assert file.read() == LAST


def test_the_page_without_a_picture_says_so_and_the_others_have_theirs(known, tmp_path):  # noqa: F811
    part = write_image(tmp_path / "part.tif", (-60, -60), (20, 420))
    _, ok, log, path = guide(known, part, tmp_path, "pages", EVENT="Heron Cup")
    assert ok, log
    lacking = [
        n for n, page in enumerate(pypdf.PdfReader(path).pages) if "no image of this hole" in said_on(page)
    ]
    assert len(lacking) == 1 and "the image does not reach hole 2" in log


# --- texts -------------------------------------------------------------------------------------------------


def too_much(names, hole_name, **fields):
    """A hole with 27 teeing grounds, each of a set of its own."""
    tees = [tee(20 + n, (n % 3 - 1) * 9, -5 + 5 * n, tee_set=name) for n, name in enumerate(names)]
    sets = [TeeSet(name, "#c02020", n) for n, name in enumerate(names)]
    return replace(
        straight_hole(tees=tees, tee_sets=sets, hole_fields={"name": hole_name, "stroke_index": 7, **fields}),
        name=fields.get("description", "Larkmere")[:200] or "Larkmere",
    )


def an_event(name, sets):
    pins = (Pin(name, 1, 1, 10 * YARD, 5 * YARD, "left"), Pin(name, 2, 1, 20 * YARD, 5 * YARD, "right"))
    flights = tuple(Flight(f"Flight of the {one}", one) for one in sets)
    return Event(name, "2031-05-04", "2031-05-07", (Round(1), Round(2)), flights, (), pins)


def make(course, event, folder, form="pages", size=POCKET):
    """``(Book, path, remarks)``."""
    maker = GuideMaker(course, str(folder / "course.gpkg"), event, None, PageCache(str(folder / "pages")))
    book = maker.plan(Wanted(form, size))
    path = str(folder / "guide.pdf")
    maker.write(book, path)
    return book, path, [*book.remarks, *maker.remarks]


def words_beyond(path):
    """``[(page, word)]`` that do not lie within the trimmed page, by poppler."""
    told = subprocess.run(
        ["pdftotext", "-bbox", path, "-"], capture_output=True, check=True, timeout=120
    ).stdout.decode("utf-8", "replace")  # Qt writes halves of emoji as letters
    found = []
    parts = told.split("<page ")[1:]
    for page, part in zip(pypdf.PdfReader(path).pages, parts):
        trim, media = page.trimbox, page.mediabox
        left, right = float(trim.left) - float(media.left), float(trim.right) - float(media.left)
        top, bottom = float(media.top) - float(trim.top), float(media.top) - float(trim.bottom)
        boxes = re.findall(
            r'xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*?)<', part
        )
        for x0, y0, x1, y1, word in boxes:
            box = [float(one) for one in (x0, y0, x1, y1)]
            if box[0] < left - 1 or box[1] < top - 1 or box[2] > right + 1 or box[3] > bottom + 1:
                found.append((part[:40], word, box))
    assert len(parts) == len(pypdf.PdfReader(path).pages) and "<word" in told
    return found


LONG = "The Very Long Dell behind the Old Brickworks beside the Canal " * 4
NAMES = [f"Set {n} of twenty-seven" for n in range(1, 28)]
CASES = {
    "27 tee sets": (NAMES, "Long Shaw", {}),
    "names too long": ([LONG + str(n) for n in range(3)], LONG, {"description": "word " * 900}),
    "one long word": (["X" * 300, "Y" * 300], "X" * 300, {"description": "Z" * 3000}),
    "emoji": (["🏌️ Gold", "⛳ Red"], "🏌️‍♀️ Emoji 🦆", {"description": "⛳ 🏌️ 🦆 keep left " * 20}),
    "right to left": (["ذهبي", "أحمر"], "الحفرة الطويلة", {"description": "ابق على يسار الخندق " * 20}),
    "signs of PDF": (["a(b", "c\\d"], "(<>[]{}/%)\\", {"description": "(unclosed \\( 100 % <<\n" * 5}),
}


@pytest.mark.usefixtures("qgis_app")
@pytest.mark.parametrize("case", list(CASES))
def test_texts_that_are_too_much_stay_on_their_pages(case, tmp_path):
    names, hole_name, fields = CASES[case]
    course = too_much(names, hole_name, **fields)
    book, path, remarks = make(course, an_event(LONG if "long" in case else "Heron Cup", names), tmp_path)
    assert len(pypdf.PdfReader(path).pages) == len(book.pages)
    assert words_beyond(path) == []
    if case == "27 tee sets":
        # All 27 are on the cards, though not all find room on the hole's page, which is said.
        texts = [said_on(page) for page in pypdf.PdfReader(path).pages]
        cards = " ".join(t for t, page in zip(texts, book.pages) if page.kind == "scorecard")
        assert all(re.search(rf"\b{n}\b", cards) for n in range(1, 28))
        assert any("no room for the lengths of" in one for one in remarks)
    if "long" in case:
        assert any("cut short" in one for one in remarks)
    if case == "emoji":
        assert any("no font here has the letters" in one and "🦆" in one for one in remarks)


@pytest.mark.usefixtures("qgis_app")
def test_letters_that_no_font_has_are_told_page_by_page(tmp_path):
    """U+E000 is of the private use area: no font has to draw it."""
    course = replace(too_much(["Back"], "Long \ue000 Shaw"), name="Larkmere \ue001")
    book, path, remarks = make(course, None, tmp_path)
    told = [one for one in remarks if "no font here has the letters" in one]
    assert any("Long" in one and "\ue000" in one for one in told)
    assert any("\ue001" in one for one in told)


@pytest.mark.usefixtures("qgis_app")
@pytest.mark.parametrize("size", [(69.0, 150.0), (float("nan"), 150.0)])
def test_a_page_that_is_too_small_leaves_the_last_guide(size, tmp_path):
    (tmp_path / "guide.pdf").write_bytes(LAST)
    with pytest.raises(YardwrightError):
        make(straight_hole(), None, tmp_path, size=size)
    assert (tmp_path / "guide.pdf").read_bytes() == LAST
