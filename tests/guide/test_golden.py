"""The pages of the sample's guide look as they did: compared with the pictures in ``golden/``.

They are no truth but what was looked at and found good (``tests/golden.py`` says how they are renewed). That a
callout a millimetre off its place would be seen is tested too.
"""

from dataclasses import replace
from pathlib import Path

import pypdf
import pytest
from qgis.core import QgsRasterLayer
from yardwright.guide import book, lettering
from yardwright.guide.book import Wanted
from yardwright.guide.book_image import book_image
from yardwright.guide.book_making import GuideMaker
from yardwright.guide.hole_page import SIZES
from yardwright.guide.page_cache import PageCache
from yardwright.guide.sheet_parts import Area, Text

from sample_project import cup, drawing, make, notes, pictures
from tests import golden
from tests.pdf_pages import rendered

pytestmark = pytest.mark.usefixtures("qgis_app")

KEPT = Path(__file__).parent / "golden"
HOLE = 5
PAGES = ("cover", "scorecard-1-1", "overview", "hole-5", "pins-1-1", "imprint")
OF_LABELS = ("cover", "imprint")


@pytest.fixture(scope="module")
def letters():
    """The font that every machine has which runs these tests, though it be not the first choice there."""
    measured = lettering._family, lettering._width, book._kept
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(lettering, "_FAMILIES", ("DejaVu Sans",))
        for known in measured:
            getattr(known, "cache_clear", getattr(known, "clear", None))()
        assert lettering.font_of(10.0).family() == "DejaVu Sans"
        yield
    for known in measured:
        getattr(known, "cache_clear", getattr(known, "clear", None))()


@pytest.fixture(scope="module")
def books(letters, tmp_path_factory):
    """``{form: (GuideMaker, Book, path of its PDF)}`` of the sample course with its event, one hole of it with
    a picture of a metre a pixel."""
    folder = tmp_path_factory.mktemp("golden")
    course = drawing.course()
    holes = tuple(replace(one, description=notes.DESCRIPTIONS[one.number]) for one in course.holes)
    course, place = replace(course, holes=holes), str(folder / "course.gpkg")
    extent = tuple(float(round(value)) for value in course.hole(HOLE).line.buffer(150).bounds)
    path = str(folder / "hole.tif")
    pictures.write_image(path, replace(pictures.SUMMER, gsd=1.0), extent, grain=False, people=False)
    given = cup.drawn_pins()
    pins = tuple(replace(pin, point=point) for pin, point in zip(given, make.points_of(course, given)))
    event = replace(cup.EVENT, pins=pins, lengths=cup.lengths())
    image = book_image(QgsRasterLayer(path, "hole"), course, place)
    image = replace(image, credit="Painted by script, CC0-1.0", named="Painted by script")
    made = {}
    for form, size in (("pages", "pocket"), ("screen", "phone")):
        maker = GuideMaker(course, place, event, image, PageCache(str(folder / form)))
        if made:
            maker.figures = made["pages"][0].figures  # measured already
        planned = maker.plan(Wanted(form, SIZES[size], (HOLE,), round=1, grid=True, dpi=150.0))
        made[form] = maker, planned, str(folder / f"{form}.pdf")
        maker.write(*made[form][1:])
    return made


def look(planned, path, name):
    """A page as it is trimmed, (rows, columns, 3) of bytes."""
    number = next(n for n, page in enumerate(planned.pages, 1) if page.name == name)
    pixels = rendered(path, number, golden.DPI)
    trim = pypdf.PdfReader(path).pages[number - 1].trimbox
    bleed = round((pixels.shape[1] - float(trim.width) / 72 * golden.DPI) / 2)
    return pixels[bleed : pixels.shape[0] - bleed, bleed : pixels.shape[1] - bleed]


@pytest.mark.parametrize("name", PAGES)
def test_pages_for_print_look_as_they_did(books, name, tmp_path):
    share = golden.LABELS_SHARE if name in OF_LABELS else golden.SHARE
    golden.assert_as_kept(look(*books["pages"][1:], name), KEPT / f"pocket_{name}.png", tmp_path, share)


def test_a_hole_on_the_phone_looks_as_it_did(books, tmp_path):
    golden.assert_as_kept(look(*books["screen"][1:], "hole-5"), KEPT / "phone_hole-5.png", tmp_path)


def moved(drawing, text, by):
    """A Drawing with one of its plates moved to the right."""
    label = next(one for one in drawing.items if isinstance(one, Text) and one.text == text)
    left, top, right, bottom = label.box
    made = []
    for item in drawing.items:
        if item is label:
            item = replace(item, x=item.x + by)
        elif isinstance(item, Area):
            xs, ys = zip(*item.rings[0])
            about = left - 2 < min(xs) and max(xs) < right + 2 and top - 2 < min(ys) and max(ys) < bottom + 2
            if about:
                item = replace(item, rings=tuple(tuple((x + by, y) for x, y in ring) for ring in item.rings))
        made.append(item)
    assert sum(one is not other for one, other in zip(made, drawing.items)) >= 3
    return replace(drawing, items=tuple(made))


@pytest.mark.parametrize(("form", "size"), [("pages", "pocket"), ("screen", "phone")])
def test_a_callout_a_millimetre_off_is_seen(books, form, size, tmp_path, monkeypatch):
    monkeypatch.delenv(golden.RENEW, raising=False)
    maker, planned, _ = books[form]
    page = next(one for one in planned.pages if one.kind == "hole")
    labels = [one.text for one in page.drawings["overlay"].items if getattr(one, "about", "") == "label"]
    figure = next(text for text in labels if "–" in text)
    drawings = {**page.drawings, "overlay": moved(page.drawings["overlay"], figure, 1.0)}
    pages = tuple(replace(one, drawings=drawings) if one is page else one for one in planned.pages)
    changed = replace(planned, pages=pages)
    path = str(tmp_path / "moved.pdf")
    maker.write(changed, path)
    with pytest.raises(AssertionError, match="of the pixels differ"):
        golden.assert_as_kept(look(changed, path, "hole-5"), KEPT / f"{size}_hole-5.png", tmp_path)
    assert (tmp_path / f"{size}_hole-5.png").exists()
