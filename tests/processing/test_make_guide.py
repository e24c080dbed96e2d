"""makeguide from end to end on a small invented course; its PDFs are read back by pypdf and poppler.

Hole 1 plays 360 yd due north on the central meridian of its zone; its green is 30 yd deep and 20 wide.
"""

import os
import re
import subprocess

import numpy as np
import pypdf
import pytest
from osgeo import gdal, osr
from qgis.core import QgsApplication, QgsProcessingContext, QgsProcessingFeedback
from shapely.geometry import box

from tests.processing.test_pins import GIVEN, run, small_course, written

POCKET = (107.95, 177.8)
MM = 25.4 / 72
CREDIT = "Flown for the tests"


@pytest.fixture(autouse=True)
def own_cache(monkeypatch, tmp_path):
    """No page of another test is found again."""
    from yardwright.guide import book_making, page_cache

    folder = str(tmp_path / "cache")
    monkeypatch.setattr(book_making, "PageCache", lambda: page_cache.PageCache(folder))
    return folder


def write_image(path, low, high):
    """An image of the ground between two places of the course, given in yards."""
    (left, bottom), (right, top) = small_course().at(*low), small_course().at(*high)
    size = int(right - left), int(top - bottom)
    reference = osr.SpatialReference()
    reference.SetFromUserInput("EPSG:32630")
    image = gdal.GetDriverByName("GTiff").Create(str(path), *size, 3)
    image.SetGeoTransform((left, 1.0, 0, top, 0, -1.0))
    image.SetSpatialRef(reference)
    for band in (1, 2, 3):
        noise = np.random.default_rng(band).integers(60, 120, size[::-1]).astype(np.uint8)
        image.GetRasterBand(band).WriteArray(noise)
    image = None
    return str(path)


@pytest.fixture
def course_file(provider, tmp_path):
    from yardwright.store.course_file import create_course, open_course
    from yardwright.store.writing import add_features

    card = written(
        tmp_path, "hole,par,stroke_index,name,Heron,Wren\n1,4,2,Burn,360,320\n2,4,1,Elbow,350,\n3,3,3,,150,\n"
    )
    path = tmp_path / "Larkmere.gpkg"
    create_course(str(path), "Larkmere", "EPSG:32630", card)
    with open_course(str(path)) as layers:
        add_features(layers, small_course().features())
    return path


@pytest.fixture
def image(tmp_path):
    return write_image(tmp_path / "flown.tif", (-300, -200), (700, 700))


def know(course_file, path, allowed=True):
    """Make an image a date of the course."""
    from yardwright.model.course import Feature
    from yardwright.store.course_file import open_course
    from yardwright.store.writing import add_features

    values = {
        "id": "flown",
        "source": os.path.basename(path),
        "credit": CREDIT,
        "licence": "CC0",
        "print_allowed": allowed,
    }
    ground = box(*small_course().at(-300, -200), *small_course().at(700, 700))
    with open_course(str(course_file)) as layers:
        add_features(layers, [Feature("image", None, ground, attributes=values)])


@pytest.fixture
def known(course_file, image, tmp_path):
    """The course with the Heron Cup's pins of two rounds, and its image known to it."""
    _, ok, log = run("placepins", COURSE=str(course_file), EVENT="Heron Cup", PINS=written(tmp_path, GIVEN))
    assert ok, log
    know(course_file, image)
    return str(course_file)


def guide(course, image, tmp_path, form="screen", name="guide.pdf", **more):
    """``(results, went well, log, path)`` of makeguide."""
    path = str(tmp_path / name)
    results, ok, log = run("makeguide", COURSE=course, IMAGE=image, FORM=form, OUTPUT=path, **more)
    return results, ok, log, path


def said_on(page):
    """A page's text, a blank between words."""
    return " ".join(page.extract_text().split())


def bookmarks(reader):
    """``[(level, title, page from 0)]``."""

    def walk(entries, level):
        for entry in entries:
            if isinstance(entry, list):
                yield from walk(entry, level + 1)
            else:
                yield level, entry.title, reader.get_destination_page_number(entry)

    return list(walk(reader.outline, 0))


def targets(reader, page):
    """The pages, from 0, that a page's links lead to."""
    ids = {one.indirect_reference.idnum: number for number, one in enumerate(reader.pages)}
    found = []
    for one in reader.pages[page].get("/Annots", ()):
        found.append(ids[one.get_object()["/Dest"][0].idnum])
    return found


def test_a_guide_for_the_screen(known, image, tmp_path):
    results, ok, log, path = guide(known, image, tmp_path, EVENT="Heron Cup")
    assert ok, log
    reader = pypdf.PdfReader(path)
    assert results["PAGES"] == len(reader.pages) and results["PAINTED"] == len(reader.pages)
    marks = {title: (level, page) for level, title, page in bookmarks(reader)}
    assert [*marks] == [
        "Cover",
        "Heron Cup",
        "Scorecard",
        "The course",
        "1 Burn",
        "2 Elbow",
        "Pins, round 1",
        "Pins, round 2",
        "Imprint",
    ]
    assert marks["1 Burn"][0] == 1 and marks["The course"][0] == 0
    for page in reader.pages:
        trim = page.trimbox
        size = float(trim.width) * MM, float(trim.height) * MM
        assert size == pytest.approx((90, 195), abs=0.01)
    texts = [said_on(page) for page in reader.pages]
    first, course_map = marks["1 Burn"][1], marks["The course"][1]
    assert "Burn" in texts[first] and "360" in texts[first] and CREDIT in texts[first]
    assert "Larkmere" in texts[0] and "Heron Cup" in texts[0]
    assert f"{CREDIT}, CC0" in texts[-1] and "no survey" in texts[-1]
    # The map leads to the holes, a hole to the map and to the first pins, the pins to their holes.
    assert sorted(targets(reader, course_map)) == [first, first + 1]
    pins = marks["Pins, round 1"][1]
    assert targets(reader, first) == [course_map, pins]
    assert targets(reader, pins) == [first, first + 1]
    assert sorted(targets(reader, marks["Scorecard"][1])) == [first, first + 1]


def test_pages_for_a_printer(known, image, tmp_path):
    _, ok, log, path = guide(known, image, tmp_path, "pages", EVENT="Heron Cup")
    assert ok, log
    reader = pypdf.PdfReader(path)
    for page in reader.pages:
        left, bottom, right, top = (float(side) * MM for side in page.trimbox)
        assert (right - left, top - bottom) == pytest.approx(POCKET, abs=0.01)
        bleed = [float(side) * MM for side in page.bleedbox]
        assert [left - bleed[0], bottom - bleed[1], bleed[2] - right, bleed[3] - top] == pytest.approx(
            [3] * 4, abs=0.01
        )
    told = subprocess.run(["pdffonts", path], capture_output=True, text=True, check=True).stdout
    fonts = [row.split() for row in told.splitlines()[2:]]
    assert fonts and all(row[-5] == "yes" for row in fonts)
    told = subprocess.run(["pdfimages", "-list", path], capture_output=True, text=True, check=True).stdout
    dots = [tuple(map(int, row.split()[12:14])) for row in told.splitlines()[2:]]
    assert len(dots) >= 2 and all(x == pytest.approx(300, abs=1) == y for x, y in dots)


def test_a_booklet_is_imposed(known, image, tmp_path):
    """Saddle stitch, from the outside: n | 1 and 2 | n - 1, then n - 2 | 3 and 4 | n - 3, and so on."""
    flat, ok, log, path = guide(known, image, tmp_path, "pages", EVENT="Heron Cup")
    texts = [said_on(page) for page in pypdf.PdfReader(path).pages]
    results, ok, log, path = guide(known, image, tmp_path, "booklet", "fold.pdf", EVENT="Heron Cup")
    assert ok, log
    count = results["PAGES"]
    assert count % 4 == 0 and 0 <= count - flat["PAGES"] < 4
    # The very pages of the other form, but those for notes and the imprint, whose number is another then.
    assert results["PAINTED"] == (0 if count == flat["PAGES"] else count - flat["PAGES"] + 1)
    filled = [*texts[:-1], *["Notes"] * (count - len(texts)), "Imprint"]
    sides = [said_on(page) for page in pypdf.PdfReader(path).pages]
    assert len(sides) == count // 2
    for sheet in range(count // 4):
        outside, inside = sides[2 * sheet : 2 * sheet + 2]
        assert filled[count - 2 * sheet - 1] in outside and filled[2 * sheet] in outside
        assert filled[2 * sheet + 1] in inside and filled[count - 2 * sheet - 2] in inside


def test_the_same_course_gives_the_same_bytes_and_a_pin_renews_only_its_pages(known, image, tmp_path):
    asked = {"EVENT": "Heron Cup"}
    results, _, _, path = guide(known, image, tmp_path, **asked)
    with open(path, "rb") as file:
        before = file.read()
    again, _, _, path = guide(known, image, tmp_path, **asked)
    with open(path, "rb") as file:
        assert file.read() == before
    assert again["PAINTED"] == 0
    contents = [page.get_contents().get_data() for page in pypdf.PdfReader(path).pages]
    moved = written(tmp_path, GIVEN.replace("1,1,10,5,left", "1,1,12,6,left"))
    run("placepins", COURSE=known, EVENT="Heron Cup", PINS=moved)
    third, _, _, path = guide(known, image, tmp_path, **asked)
    assert third["PAINTED"] == 2  # hole 1, and the pins of round 1
    reader = pypdf.PdfReader(path)
    changed = [n for n, page in enumerate(reader.pages) if page.get_contents().get_data() != contents[n]]
    marks = {title: page for _, title, page in bookmarks(reader)}
    assert changed == [marks["1 Burn"], marks["Pins, round 1"]]


def test_a_course_without_event_and_an_image_of_a_part(course_file, tmp_path):
    part = write_image(tmp_path / "part.tif", (-60, -60), (20, 420))
    _, ok, log, path = guide(str(course_file), part, tmp_path, "pages")
    assert ok, log
    marks = {title: page for _, title, page in bookmarks(pypdf.PdfReader(path))}
    assert [*marks] == ["Cover", "Scorecard", "The course", "1 Burn", "2 Elbow", "Imprint"]
    assert "the image does not reach hole 2" in log and "hole 1 has no description" in log
    assert "Hole 3 cannot be shown" in log
    assert "nobody is named for the image" in log and "may be printed is not known" in log
    texts = [said_on(page) for page in pypdf.PdfReader(path).pages]
    assert "no image of this hole" in texts[marks["2 Elbow"]]
    assert "no image of this hole" not in texts[marks["1 Burn"]]


def test_a_hole_without_a_green_is_shown(course_file, image, tmp_path):
    from yardwright.store.course_file import open_course
    from yardwright.store.writing import editing

    with open_course(str(course_file)) as layers, editing(layers, ["green"]) as edit:
        edit.delete("green", [row.id() for row in layers["green"].getFeatures()])
    _, ok, log, path = guide(str(course_file), image, tmp_path, HOLES="1")
    assert ok, log
    assert "1 Burn" in [title for _, title, _ in bookmarks(pypdf.PdfReader(path))]


def test_an_image_that_must_not_be_printed_stops_print_only(course_file, image, tmp_path):
    know(course_file, image, False)
    kept = tmp_path / "guide.pdf"
    kept.write_bytes(b"the last good guide")
    for form in ("pages", "booklet"):
        _, ok, log, _ = guide(str(course_file), image, tmp_path, form, HOLES="1")
        assert not ok and "“flown” may not be printed" in log and "Traceback" not in log
    assert kept.read_bytes() == b"the last good guide"
    _, ok, log, _ = guide(str(course_file), image, tmp_path, HOLES="1")
    assert ok, log


def test_a_page_too_large_to_carry_is_named(course_file, image, tmp_path):
    asked = {"form": "pages", "HOLES": "1", "PAGE": "A5"}
    _, ok, log, path = guide(str(course_file), image, tmp_path, **asked)
    assert not ok and "“1 Burn” measures 148 x 210 mm" in log and not os.path.exists(path)
    _, ok, log, path = guide(str(course_file), image, tmp_path, **asked, RULES_OFF=["page_size"])
    assert ok, log
    size = pypdf.PdfReader(path).pages[0].trimbox
    assert [float(size.width) * MM, float(size.height) * MM] == pytest.approx([148, 210], abs=0.01)


@pytest.mark.parametrize(
    ("more", "said"),
    [
        ({"PAGE": "tiny"}, "“tiny” is no size of a page"),
        ({"PAGE": "60 x 90"}, "60 x 90"),
        ({"EVENT": "Wren Cup"}, "The course has no event “Wren Cup”"),
        ({"HOLES": "12"}, "Hole 12 is not in the course"),
    ],
)
def test_what_cannot_be_made_is_told(course_file, image, tmp_path, more, said):
    _, ok, log, path = guide(str(course_file), image, tmp_path, **more)
    assert not ok and said in log and "Traceback" not in log
    assert not os.path.exists(path)


def test_cancelling_leaves_the_last_guide(known, image, tmp_path):
    kept = tmp_path / "guide.pdf"
    kept.write_bytes(b"the last good guide")

    class Stops(QgsProcessingFeedback):
        def setProgress(self, share):
            if share > 40:
                self.cancel()

    algorithm = QgsApplication.processingRegistry().createAlgorithmById("yardwright:makeguide")
    asked = {"COURSE": known, "IMAGE": image, "FORM": "screen", "OUTPUT": str(kept)}
    feedback = Stops(False)
    results, _ = algorithm.run(asked, QgsProcessingContext(), feedback)
    assert "PAGES" not in results and feedback.isCanceled()
    assert kept.read_bytes() == b"the last good guide"
    assert os.listdir(tmp_path / "cache")  # what was painted is not lost


def test_the_green_stands_at_the_scale_that_is_printed(known, image, tmp_path):
    """The depth of hole 1's green, 30 yd, is measured on the page of pins between its front and back."""
    from yardwright.guide.book import Wanted, plan_book
    from yardwright.guide.book_figures import BookFigures
    from yardwright.store.course_file import open_course
    from yardwright.store.events import read_event
    from yardwright.store.reading import read_course

    with open_course(known) as layers:
        course, event = read_course(layers), read_event(layers, "Heron Cup", [])
    book = plan_book(course, event, Wanted("pages", POCKET), BookFigures(course, (event,)))
    page = next(one for one in book.pages if one.kind == "pins")
    spots = {one.symbol: one for one in page.drawings["pins"].places if one.hole == 1}
    foot = " ".join(one.text for one in page.drawings["pins"].items if getattr(one, "about", "") == "foot")
    scale = float(re.search(r"1:(\d+)", foot)[1])
    depth = abs(spots["front"].y - spots["back"].y)
    assert depth * scale / 1000 == pytest.approx(30 * 0.9144, rel=0.002)
    assert scale >= 480
    assert book.broken == ()
