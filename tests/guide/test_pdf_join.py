"""Books of PDF pages, looked at from outside: with pypdf and with poppler's tools."""

import errno
import io
import re
import tracemalloc
from dataclasses import replace
from datetime import datetime, timedelta, timezone

import numpy as np
import pypdf
import pytest
from yardwright.guide.pdf_join import POINT, BookInfo, Leaf, Link, fit, impose, join, sheets
from yardwright.model.errors import Cancelled, YardwrightError

from tests.pdf_pages import (
    FLAG,
    assert_same_picture,
    coarse,
    dark_box,
    flag_pdf,
    picture,
    plain_pdf,
    qt_page,
    rendered,
    said_by,
    stream,
    words_on,
)

pytestmark = pytest.mark.usefixtures("qgis_app")

INFO = BookInfo("Larkmere – Guide", "Larkmere Golf Club", "All holes", "golf", "en-GB")
SIZE = (100.0, 150.0)


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    return tmp_path_factory.mktemp("pages")


@pytest.fixture(scope="module")
def pages(folder):
    """Paths of nine pages, drawn with 3 mm of bleed; the even ones with lossless pictures."""
    size = SIZE[0] + 6, SIZE[1] + 6
    return [
        qt_page(folder / f"hole {number}.pdf", number, size, lossless=number % 2 == 0)
        for number in range(1, 10)
    ]


@pytest.fixture
def leaves(pages):
    return [
        Leaf(path, f"Hole {number}", 0, f"hole-{number}", bleed_mm=3.0, size_mm=SIZE)
        for number, path in enumerate(pages, 1)
    ]


def mm(box):
    return [float(side) * 25.4 / 72 for side in box]


def inside(box, other):
    """Whether the first lies within the second, to a hundred-thousandth of a point."""
    low = all(float(a) >= float(b) - 1e-5 for a, b in zip(box[:2], other[:2]))
    return low and all(float(a) <= float(b) + 1e-5 for a, b in zip(box[2:], other[2:]))


def streams_of(path):
    """The raw bytes of each page's content."""
    found = []
    for page in pypdf.PdfReader(path).pages:
        contents = page["/Contents"].get_object()
        parts = contents if isinstance(contents, list) else [contents]
        found.append([part.get_object()._data for part in parts])
    return found


def raw_stream(path):
    """The raw bytes of the content of a page as Qt wrote it, found without a reader of ours."""
    (data,) = streams_of(path)[0]
    with open(path, "rb") as file:
        assert data in file.read()
    return data


def refused(act, *words):
    """``act`` raises a YardwrightError of two parts whose text has the words."""
    with pytest.raises(YardwrightError) as caught:
        act()
    assert caught.value.what and caught.value.remedy
    for word in words:
        assert str(word) in caught.value.what
    return caught.value


# Pages


def test_joined_pages_look_as_the_single_ones(leaves, tmp_path):
    path = tmp_path / "book.pdf"
    join(leaves[:3], path, INFO)
    for number, leaf in enumerate(leaves[:3], 1):
        single, joined = rendered(leaf.path), rendered(path, number)
        # Qt's page is of whole points and up to one larger, and poppler begins a last row for a millionth.
        assert np.abs(np.array(joined.shape[:2]) - [1560, 1060]).max() <= 1
        assert_same_picture(single[:1560, :1060], joined[:1560, :1060], tmp_path, apart=2, share=0.001)


def test_a_page_without_a_size_looks_exactly_as_the_single_one(pages, tmp_path):
    path = tmp_path / "book.pdf"
    join([Leaf(pages[0]), Leaf(pages[1])], path, INFO)
    for number in (1, 2):
        assert_same_picture(rendered(pages[number - 1]), rendered(path, number), tmp_path)


def test_text_stays_text_and_fonts_are_within(leaves, tmp_path):
    path = tmp_path / "book.pdf"
    join(leaves, path, INFO)
    for number in range(1, 10):
        assert words_on(path, number) == f"Hole {number}: Bäche & Gräben"
    for line in said_by("pdffonts", str(path)).splitlines()[2:]:
        name, *_, embedded, _, to_unicode, _, _ = line.split()
        assert "DejaVu" in name and (embedded, to_unicode) == ("yes", "yes")


def test_boxes_are_the_page_its_bleed_and_its_marks(leaves, tmp_path):
    """TrimBox inside BleedBox inside MediaBox, bleed 3 mm: our table of check values (ISO 32000)."""
    path = tmp_path / "book.pdf"
    for marks, around in ((False, 3.0), (True, 9.0)):
        join(leaves[:2], path, INFO, marks=marks)
        for page in pypdf.PdfReader(path, strict=True).pages:
            left, bottom, right, top = mm(page.trimbox)
            assert (right - left, top - bottom) == pytest.approx(SIZE, abs=1e-3)
            bleed, media = mm(page.bleedbox), mm(page.mediabox)
            assert bleed == pytest.approx([left - 3, bottom - 3, right + 3, top + 3], abs=1e-3)
            assert media == pytest.approx(
                [left - around, bottom - around, right + around, top + around], abs=1e-3
            )
            assert inside(page.trimbox, page.bleedbox) and inside(page.bleedbox, page.mediabox)
            assert "/CropBox" not in page


def test_a_symbol_lies_where_it_was_drawn(leaves, tmp_path):
    """The black square lies 50, 90 mm from the corner of what was drawn: 47, 87 mm from the trim's."""
    path = tmp_path / "book.pdf"
    join(leaves[:1], path, INFO, marks=True)
    around = 9.0
    pixels = rendered(path)
    found = dark_box(pixels[900:1150, 450:800]) + [45, 90, 45, 90]
    expected = np.array([47, 87, 57, 97]) + around
    assert np.abs(found - expected).max() <= 0.11


def test_crop_marks_lie_outside_the_bleed(leaves, tmp_path):
    plain, path = tmp_path / "plain.pdf", tmp_path / "marks.pdf"
    join(leaves[:1], plain, INFO)
    join(leaves[:1], path, INFO, marks=True)
    # A last row that poppler begins for a ten-thousandth of a point is left out.
    pixels = rendered(path)[:1680, :1180]
    # The room for marks is 6 mm on each side.
    assert_same_picture(
        coarse(rendered(plain)), coarse(pixels[60:-60, 60:-60]), tmp_path, apart=60, share=0.01
    )
    # The trim is 9 mm within the paper; marks run from 3 to 8 mm outside it, seen in a row and a column.
    row, column = pixels[35].max(axis=1) < 128, pixels[:, 35].max(axis=1) < 128
    assert np.abs(np.flatnonzero(row).min() - 90) <= 1 and np.abs(np.flatnonzero(row).max() - 1090) <= 1
    assert np.abs(np.flatnonzero(column).min() - 90) <= 1 and np.abs(np.flatnonzero(column).max() - 1590) <= 1
    # A page is drawn beyond its edge, into the room for the marks: that is cut off.
    margin = np.ones(pixels.shape[:2], bool)
    margin[58:-58, 58:-58] = False
    assert (pixels.min(axis=2)[margin] < 128).mean() < 0.01
    for edge in (pixels[:5], pixels[-5:], pixels[:, :5], pixels[:, -5:]):
        assert edge.min() == 255


def test_without_marks_nothing_is_added_to_a_page(leaves, tmp_path):
    path = tmp_path / "book.pdf"
    join(leaves, path, INFO)
    assert streams_of(path) == [[raw_stream(leaf.path)] for leaf in leaves]


# The same again


def test_the_same_pages_give_the_same_bytes(leaves, tmp_path):
    for name, write in (("join", join), ("impose", impose)):
        one, other = tmp_path / f"{name} 1.pdf", tmp_path / f"{name} 2.pdf"
        write(leaves, one, INFO)
        write(leaves, other, INFO)
        assert one.read_bytes() == other.read_bytes()


def test_a_page_painted_anew_gives_the_same_bytes(leaves, pages, tmp_path):
    """Qt writes the time into each file; nothing of that goes into the book."""
    again = qt_page(tmp_path / "again.pdf", 1, (106, 156))
    with open(again, "rb") as file:
        data = file.read()
    other_time = re.sub(rb"D:\d{14}", b"D:19990101000000", data)
    assert data != other_time
    (tmp_path / "again.pdf").write_bytes(other_time)
    one, other = tmp_path / "one.pdf", tmp_path / "other.pdf"
    join(leaves, one, INFO)
    join([replace(leaves[0], path=again), *leaves[1:]], other, INFO)
    assert one.read_bytes() == other.read_bytes()


def test_one_changed_page_leaves_all_others_as_they_were(leaves, tmp_path):
    changed = qt_page(tmp_path / "changed.pdf", 40, (106, 156), colour="purple")
    before, after = tmp_path / "before.pdf", tmp_path / "after.pdf"
    join(leaves, before, INFO)
    join([*leaves[:4], replace(leaves[4], path=changed), *leaves[5:]], after, INFO)
    alike = [one == other for one, other in zip(streams_of(before), streams_of(after))]
    assert alike == [True] * 4 + [False] + [True] * 4
    unpacked = [
        [page.get_contents().get_data() for page in pypdf.PdfReader(path).pages] for path in (before, after)
    ]
    assert [one == other for one, other in zip(*unpacked)] == alike
    for number in (1, 9):
        assert_same_picture(rendered(before, number), rendered(after, number), tmp_path)


def test_what_comes_again_is_stored_once(pages, tmp_path):
    one, two = tmp_path / "one.pdf", tmp_path / "two.pdf"
    join([Leaf(pages[0])], one, INFO)
    join([Leaf(path) for path in pages[::2]], two, INFO)

    def pictures(path):
        return [
            line.split()[10]
            for line in said_by("pdfimages", "-list", str(path)).splitlines()[2:]
            if line.split()[2] == "image"
        ]

    # Two pictures on each page, the same on all.
    assert len(pictures(one)) == 2 and len(pictures(two)) == 10
    assert len(set(pictures(two))) == 2
    assert two.stat().st_size < one.stat().st_size + 5 * 12_000
    assert two.read_bytes().count(b"/Subtype /Image") == one.read_bytes().count(b"/Subtype /Image") == 3


# Bookmarks, links, what is said of the book


def test_bookmarks_are_nested_and_lead_to_their_pages(leaves, tmp_path):
    path = tmp_path / "book.pdf"
    titles = [("Titel – Übersicht", 0), ("Front nine", 0), ("Hole 1", 1), ("Pin (round 2)", 2), ("", 0),
              ("Hole 2", 1), ("Back nine", 0), ("Tee 日本 ⛳", 4), ("Imprint", 0)]  # fmt: skip
    leaves = [replace(leaf, title=title, level=level) for leaf, (title, level) in zip(leaves, titles)]
    join(leaves, path, INFO)
    reader = pypdf.PdfReader(path, strict=True)

    def tree(entries):
        return [
            tree(entry)
            if isinstance(entry, list)
            else (entry.title, reader.get_destination_page_number(entry))
            for entry in entries
        ]

    assert tree(reader.outline) == [
        ("Titel – Übersicht", 0),
        ("Front nine", 1),
        [("Hole 1", 2), [("Pin (round 2)", 3)], ("Hole 2", 5)],
        ("Back nine", 6),
        [("Tee 日本 ⛳", 7)],
        ("Imprint", 8),
    ]
    assert reader.trailer["/Root"]["/PageMode"] == "/UseOutlines"
    # What is open at first: the top.
    assert reader.trailer["/Root"]["/Outlines"]["/Count"] == 4


def test_no_titles_no_bookmarks(leaves, tmp_path):
    path = tmp_path / "book.pdf"
    join([replace(leaf, title="") for leaf in leaves], path, INFO)
    reader = pypdf.PdfReader(path)
    assert reader.outline == [] and "/PageMode" not in reader.trailer["/Root"]


@pytest.mark.parametrize("marks", [False, True])
def test_links_lie_where_they_are_and_lead_where_they_say(leaves, tmp_path, marks):
    path = tmp_path / "book.pdf"
    links = (
        Link((10, 20, 40, 30), "hole-9"),
        Link((50, 20, 90, 30), "https://larkmere.example/Gäste tour?a=1&b=(2)#top"),
        Link((50, 40, 90, 50), "mailto:office@larkmere.example"),
    )
    join([replace(leaves[0], links=links), *leaves[1:]], path, INFO, marks=marks)
    reader = pypdf.PdfReader(path, strict=True)
    page = reader.pages[0]
    annotations = [one.get_object() for one in page["/Annots"]]
    left, _, _, top = mm(page.trimbox)
    for link, found in zip(links, annotations):
        box = mm(found["/Rect"])
        assert [box[0] - left, top - box[3], box[2] - left, top - box[1]] == pytest.approx(link.box, abs=1e-3)
        assert found["/Subtype"] == "/Link" and found["/Border"] == [0, 0, 0]
    assert annotations[0]["/Dest"][0].get_object() == reader.pages[8]
    assert annotations[0]["/Dest"][0].idnum == reader.pages[8].indirect_reference.idnum
    assert annotations[1]["/A"]["/URI"] == "https://larkmere.example/G%C3%A4ste%20tour?a=1&b=(2)#top"
    assert annotations[2]["/A"]["/URI"] == "mailto:office@larkmere.example"
    assert all("/Annots" not in other for other in reader.pages[1:])


def test_a_link_that_leads_nowhere_is_named(leaves, tmp_path):
    for to in ("hole-19", "", "javascript:alert(1)", "file:///etc/hosts", "https://"):
        broken = [leaves[0], replace(leaves[1], links=(Link((0, 0, 9, 9), to),))]
        refused(lambda broken=broken: join(broken, tmp_path / "book.pdf", INFO), "page 2", to)
    twice = [leaves[0], replace(leaves[1], name="hole-1")]
    refused(lambda: join(twice, tmp_path / "book.pdf", INFO), "hole-1")
    assert not [*tmp_path.iterdir()]


def test_what_the_book_says_of_itself(leaves, tmp_path):
    path = tmp_path / "book.pdf"
    moment = datetime(2026, 6, 5, 7, 30, tzinfo=timezone(timedelta(hours=2)))
    join(leaves[:1], path, replace(INFO, made=moment))
    reader = pypdf.PdfReader(path, strict=True)
    found = reader.metadata
    assert (found.title, found.author, found.subject) == (INFO.title, INFO.author, INFO.subject)
    assert found["/Keywords"] == "golf" and found.creator == "Yardwright"
    assert found.creation_date == moment
    root = reader.trailer["/Root"]
    assert root["/Lang"] == "en-GB"
    assert root["/ViewerPreferences"]["/DisplayDocTitle"]
    assert root["/ViewerPreferences"]["/PrintScaling"] == "/None"
    join(leaves[:1], path, BookInfo())
    assert "/CreationDate" not in pypdf.PdfReader(path).metadata
    assert "/Lang" not in pypdf.PdfReader(path).trailer["/Root"]


def test_texts_of_any_kind_come_back(leaves, tmp_path):
    path = tmp_path / "book.pdf"
    for text in ("a (b) \\ c)", "two\nlines", "עברית", "𝄞 ⛳", "(", "é"):
        join([replace(leaves[0], title=text)], path, BookInfo(text))
        reader = pypdf.PdfReader(path, strict=True)
        assert (reader.metadata.title, reader.outline[0].title) == (text, text)


# The booklet


def test_pages_lie_on_the_sheets_by_the_formula():
    """n = 8: 8|1, 2|7, 6|3, 4|5: our table of check values."""
    assert sheets(8) == [((8, 1), (2, 7)), ((6, 3), (4, 5))]
    for count in range(1, 41):
        padded = -(-count // 4) * 4
        dealt = sheets(count)
        assert len(dealt) == padded // 4
        assert sorted(page for sides in dealt for side in sides for page in side) == [*range(1, padded + 1)]


def fold(dealt):
    """The pages in the order one reads them, found by folding: the sheets lie in each other, each a leaf at
    the right and one at the left; leafing on, the right half of an outside has the left half of its inside
    at its back."""
    front = [page for outside, inner in dealt for page in (outside[1], inner[0])]
    back = [page for outside, inner in reversed(dealt) for page in (inner[1], outside[0])]
    return front + back


def test_a_folded_booklet_reads_from_first_to_last():
    for count in (1, 4, 5, 8, 20, 44):
        assert fold(sheets(count)) == [*range(1, -(-count // 4) * 4 + 1)]


def halves_of(path):
    """What is written on the left and right half of each side, found by the words' places."""
    found = []
    reader = pypdf.PdfReader(path, strict=True)
    for number, page in enumerate(reader.pages, 1):
        wide, high = (round(float(side)) for side in page.mediabox[2:])
        words = []
        for left in (0, wide // 2):
            text = said_by(
                "pdftotext", "-r", "72", "-x", str(left), "-y", "0", "-W", str(wide // 2), "-H", str(high + 1),
                "-f", str(number), "-l", str(number), str(path), "-",
            )  # fmt: skip
            words.append(int((re.findall(r"Hole (\d+)", text) or ["0"])[0]))
        found.append(tuple(words))
    return found


def test_the_booklet_has_its_pages_in_their_places(leaves, tmp_path):
    path = tmp_path / "booklet.pdf"
    impose(leaves[:8], path, INFO)
    assert halves_of(path) == [(8, 1), (2, 7), (6, 3), (4, 5)]
    # Nine pages: three empty ones are added at the end, 10 to 12.
    impose(leaves, path, INFO)
    assert halves_of(path) == [(0, 1), (2, 0), (0, 3), (4, 9), (8, 5), (6, 7)]


def test_pages_meet_at_the_fold_and_look_as_the_single_ones(leaves, tmp_path):
    path = tmp_path / "booklet.pdf"
    impose(leaves[:4], path, INFO, sheet=(240, 180), marks=False)
    pixels = rendered(path)[:1800, :2400]
    # Fold at 120 mm, trims 100 mm to both sides, 15 mm from the top; page 4 left, 1 right.
    for leaf, left in ((leaves[3], 200), (leaves[0], 1200)):
        single = rendered(leaf.path)[30:1530, 30:1030]
        placed = pixels[150:1650, left : left + 1000]
        assert_same_picture(coarse(single), coarse(placed), tmp_path, apart=60, share=0.01)
        # A picture half a millimetre off is another one.
        with pytest.raises(AssertionError, match="differ"):
            assert_same_picture(coarse(single[:, 5:]), coarse(placed[:, :-5]), tmp_path, apart=60, share=0.01)
    page = pypdf.PdfReader(path).pages[0]
    assert mm(page.mediabox) == pytest.approx([0, 0, 240, 180], abs=1e-3)
    assert mm(page.trimbox) == pytest.approx([20, 15, 220, 165], abs=1e-3)
    assert mm(page.bleedbox) == pytest.approx([17, 12, 223, 168], abs=1e-3)


def squares(pixels):
    """Left edge in mm of the black square in the left and in the right half, and the fold's place."""
    rows = pixels[1030:1100]
    half = rows.shape[1] // 2
    left = np.flatnonzero((rows[:, :half].max(axis=2) < 60).all(axis=0)).min()
    right = np.flatnonzero((rows[:, half:].max(axis=2) < 60).all(axis=0)).min() + half
    return left / 10, right / 10


def test_creep_moves_inner_pages_towards_the_spine(leaves, tmp_path):
    """Sheet i lies in i others: its pages go i thicknesses of paper towards the fold (geometry, no source)."""
    path = tmp_path / "booklet.pdf"
    impose(leaves[:8], path, INFO, sheet=(240, 180), creep_mm=1.5, marks=False)
    reader = pypdf.PdfReader(path)
    for number, shift in ((1, 0.0), (2, 0.0), (3, 1.5), (4, 1.5)):
        left, right = squares(rendered(path, number))
        # The square is 47 mm from a page's left edge; pages begin at 20 and at 120 mm.
        assert (left, right) == pytest.approx((67 + shift, 167 - shift), abs=0.11)
        trim = mm(reader.pages[number - 1].trimbox)
        assert trim == pytest.approx([20 + shift, 15, 220 - shift, 165], abs=1e-3)


def test_nothing_reaches_over_the_fold(leaves, tmp_path):
    """A page is drawn 3 mm beyond its trim also at the spine, and creep moves more of it there."""
    path = tmp_path / "booklet.pdf"
    pages = [*leaves[:4], replace(leaves[4], path=leaves[0].path, name="")]
    impose(pages, path, INFO, sheet=(240, 180), creep_mm=2, marks=False)
    # The inside of the inner sheet: 4 | 5. The corner square of page 5 reaches over the fold on its left.
    (four_five,) = [n for n, halves in enumerate(halves_of(path), 1) if halves == (4, 1)]
    pixels = rendered(path, four_five)
    # The corner square is 3 mm wide within the trim; 1 mm of it is left, and nothing on the other page.
    assert pixels[150:175, 1100:1199].min() == 255
    row = 1000 + np.flatnonzero(pixels[160, 1000:].max(axis=1) < 60)
    assert (row.min() / 10, (row.max() + 1) / 10) == pytest.approx((120, 121), abs=0.11)


def test_flipping_about_the_top_turns_the_inside(leaves, tmp_path):
    """The inside is seen by turning the sheet. About an upright edge left and right change and top stays;
    about the top edge, top and foot change: what shall be upright must have been printed upside down."""
    for size, upright_edge, other in (((240, 180), "short", "long"), ((240, 260), "long", "short")):
        plain, turned = tmp_path / "plain.pdf", tmp_path / "turned.pdf"
        impose(leaves[:8], plain, INFO, sheet=size, flip=upright_edge)
        impose(leaves[:8], turned, INFO, sheet=size, flip=other)
        for number in (1, 3):
            assert_same_picture(rendered(plain, number, 100), rendered(turned, number, 100), tmp_path)
        for number in (2, 4):
            upright = rendered(plain, number, 100)
            other_way = rendered(turned, number, 100)[::-1, ::-1]
            # Rows of pixels do not end at the paper's edge, so the edges of what is drawn move by one.
            pictures = coarse(upright, 4), coarse(other_way, 4)
            assert np.abs(pictures[0] - pictures[1]).mean() < 4
            assert np.abs(pictures[0] - pictures[1][::-1, ::-1]).mean() > 10
        assert halves_of(plain)[1] == (2, 7) and halves_of(turned)[1] == (7, 2)
        edges = [
            pypdf.PdfReader(path).trailer["/Root"]["/ViewerPreferences"]["/Duplex"]
            for path in (plain, turned)
        ]
        assert edges == [f"/DuplexFlip{edge.title()}Edge" for edge in (upright_edge, other)]


def test_booklets_marks_show_where_to_cut_and_fold(leaves, tmp_path):
    path = tmp_path / "booklet.pdf"
    impose(leaves[:4], path, INFO)
    page = pypdf.PdfReader(path).pages[0]
    # Two pages, 3 mm of bleed, 5 mm of marks and 1 mm of air around.
    assert mm(page.mediabox) == pytest.approx([0, 0, 218, 168], abs=1e-3)
    pixels = rendered(path)
    above = np.flatnonzero(pixels[20:50].min(axis=(0, 2)) < 128)
    places = above[np.diff(above, prepend=-9) > 5] / 10
    assert places == pytest.approx([9, 109, 209], abs=0.15)
    beside = np.flatnonzero(pixels[:, 20:50].min(axis=(1, 2)) < 128)
    assert beside[np.diff(beside, prepend=-9) > 5] / 10 == pytest.approx([9, 159], abs=0.15)
    # The fold's line is dashed, those of the cut are whole.
    assert 0.3 < (pixels[15:55, 1085:1095].min(axis=(1, 2)) < 200).mean() < 0.9
    assert (pixels[15:55, 85:95].min(axis=(1, 2)) < 200).all()


def test_a_booklet_holds_each_page_once_and_as_it_is(leaves, tmp_path):
    path = tmp_path / "booklet.pdf"
    impose(leaves, path, INFO)
    data = path.read_bytes()
    for leaf in leaves:
        assert data.count(raw_stream(leaf.path)) == 1


def test_booklets_that_cannot_be(leaves, tmp_path, folder):
    path = tmp_path / "booklet.pdf"
    other = Leaf(qt_page(folder / "other size.pdf", 1, (80, 150)), title="x")
    refused(lambda: impose([leaves[0], other], path, INFO), "Page 2", "100.0 x 150.0", "other size.pdf")
    refused(lambda: impose(leaves, path, INFO, sheet=(199, 180)), "100.0 x 150.0", "199.0 x 180.0")
    refused(lambda: impose(leaves, path, INFO, creep_mm=-1), "-1 mm")
    refused(lambda: impose(leaves, path, INFO, creep_mm=30), "30 mm")
    refused(lambda: impose(leaves, path, INFO, creep_mm=float("nan")), "nan")
    refused(lambda: impose([], path, INFO))
    with pytest.raises(ValueError, match="sideways"):
        impose(leaves, path, INFO, flip="sideways")
    assert not [*tmp_path.iterdir()]


# Pages of other programs


@pytest.mark.parametrize("turned", [0, 90, 180, 270, -90, 450])
def test_turned_and_cropped_pages_look_as_they_did(tmp_path, turned):
    one = flag_pdf(tmp_path / "flag.pdf", f"/Rotate {turned} /CropBox [180 90 5 15]", box="0 0 200 100")
    path, booklet = tmp_path / "book.pdf", tmp_path / "booklet.pdf"
    single = rendered(one, dpi=72)
    sides = (175, 75) if turned % 180 == 0 else (75, 175)
    assert single.shape[1::-1] == sides
    link = Link((0, 0, 10, 5), "here")
    join([Leaf(one, links=(link,), name="here")], path, INFO)
    assert_same_picture(single, rendered(path, dpi=72), tmp_path)
    page = pypdf.PdfReader(path).pages[0]
    assert inside(page["/Annots"][0].get_object()["/Rect"], page.trimbox)
    impose([Leaf(one)], booklet, INFO, marks=False)
    right = rendered(booklet, dpi=72)[:, -sides[0] :]
    assert_same_picture(single, right, tmp_path, apart=2)


@pytest.mark.parametrize("turned", [0, 90, 180, 270])
def test_turned_pages_have_their_marks_and_links_upright(tmp_path, turned):
    """The link covers the blue foot of the flag; on a page without marks poppler shows where that is."""
    one = flag_pdf(tmp_path / "flag.pdf", f"/Rotate {turned}")
    single = rendered(one, dpi=72)
    blue = (single == [0, 0, 255]).all(axis=2)
    rows, columns = np.nonzero(blue)
    box = np.array([columns.min(), rows.min(), columns.max() + 1, rows.max() + 1]) / POINT
    path = tmp_path / "book.pdf"
    join([Leaf(one, name="a", links=(Link(tuple(box), "a"),))], path, INFO, marks=True)
    page = pypdf.PdfReader(path).pages[0]
    assert mm(page["/Annots"][0].get_object()["/Rect"]) == pytest.approx(mm([10, 20, 30, 30]), abs=0.01)
    marked = rendered(path, dpi=254)
    # 8 mm of marks: two lines across each edge.
    assert np.count_nonzero(np.diff(np.flatnonzero(marked[40].max(axis=1) < 200), prepend=-9) > 5) == 2
    assert np.count_nonzero(np.diff(np.flatnonzero(marked[:, 40].max(axis=1) < 200), prepend=-9) > 5) == 2


def test_a_unit_of_the_page_is_kept(tmp_path):
    """PDF 1.6 lets a page say how large its units are; Qt 6 does when it writes 1.6 or PDF/X."""
    one, two = (
        flag_pdf(tmp_path / f"{unit}.pdf", f"/UserUnit {unit}", box="0 0 200 100") for unit in ("1.0", "2.5")
    )
    path, booklet = tmp_path / "book.pdf", tmp_path / "booklet.pdf"
    join([Leaf(one), Leaf(two)], path, INFO)
    pages = pypdf.PdfReader(path).pages
    assert [float(page.user_unit) for page in pages] == [1.0, 2.5]
    assert "/UserUnit" not in pages[0]
    impose([Leaf(two)], booklet, INFO, marks=False)
    assert mm(pypdf.PdfReader(booklet).pages[0].mediabox)[2:] == pytest.approx(mm([1000, 250]), abs=1e-3)
    wide = rendered(booklet, dpi=72)[:, 500:]
    red = (wide == [255, 0, 0]).all(axis=2)
    rows, columns = np.nonzero(red)
    # The flag is 10 to 70 points from the left and 20 to 50 from the foot, times 2.5.
    assert np.abs(np.array([columns.min(), columns.max() + 1]) - [25, 175]).max() <= 1
    assert np.abs(250 - np.array([rows.min(), rows.max() + 1]) - [125, 50]).max() <= 1


def test_contents_in_parts_and_none_at_all(tmp_path):
    head, tail = FLAG[:20], FLAG[20:]
    parts = plain_pdf(
        tmp_path / "parts.pdf",
        [
            "<< /Type /Catalog /Pages 2 0 R >>",
            "<< /Type /Pages /Kids [3 0 R] /Count 1 /MediaBox [0 0 200 100] >>",
            "<< /Type /Page /Parent 2 0 R /Contents 6 0 R >>",
            stream(head),
            stream(tail),
            "[4 0 R 5 0 R]",
        ],
    )
    empty = plain_pdf(
        tmp_path / "empty.pdf",
        [
            "<< /Type /Catalog /Pages 2 0 R >>",
            "<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
            "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 200 100] >>",
        ],
    )
    path, booklet = tmp_path / "book.pdf", tmp_path / "booklet.pdf"
    whole = rendered(flag_pdf(tmp_path / "whole.pdf"), dpi=72)
    for marks in (False, True):
        join([Leaf(parts), Leaf(empty)], path, INFO, marks=marks)
        pypdf.PdfReader(path, strict=True).pages[1].extract_text()
        if not marks:
            assert_same_picture(whole, rendered(path, 1, dpi=72), tmp_path)
            assert rendered(path, 2, dpi=72).min() == 255
    impose([Leaf(parts), Leaf(empty)], booklet, INFO, marks=False)
    assert_same_picture(whole, rendered(booklet, 1, dpi=72)[:, 200:], tmp_path)


def test_objects_that_lead_back_to_themselves(tmp_path):
    """A form may name itself by way of its resources, and its page: other programs do."""
    path = plain_pdf(
        tmp_path / "ring.pdf",
        [
            "<< /Type /Catalog /Pages 2 0 R >>",
            "<< /Type /Pages /Kids [3 0 R] /Count 1 /MediaBox [0 0 200 100] >>",
            "<< /Type /Page /Parent 2 0 R /Contents 4 0 R /Resources 5 0 R >>",
            stream("/Flag Do"),
            "<< /XObject << /Flag 6 0 R >> /Other 7 0 R >>",
            stream(FLAG, "/Type /XObject /Subtype /Form /BBox [0 0 200 100] /Resources 5 0 R /Page 3 0 R"),
            "<< /Again 5 0 R /Self 7 0 R >>",
        ],
    )
    book = tmp_path / "book.pdf"
    join([Leaf(path), Leaf(path)], book, INFO)
    pages = pypdf.PdfReader(book, strict=True).pages
    assert len(pages) == 2
    other = pages[0]["/Resources"]["/Other"].get_object()
    assert other["/Self"].get_object() is other or other["/Self"].get_object() == other
    whole = rendered(flag_pdf(tmp_path / "whole.pdf"), dpi=72)
    for number in (1, 2):
        assert_same_picture(whole, rendered(book, number, dpi=72), tmp_path)


# What goes wrong


def test_pages_of_another_size_than_they_should_be(leaves, tmp_path, folder):
    wrong = Leaf(qt_page(folder / "wrong size.pdf", 1, (108, 156)), bleed_mm=3.0, size_mm=SIZE)
    refused(lambda: join([leaves[0], wrong], tmp_path / "book.pdf", INFO), "wrong size.pdf", "106.0 x 156.0")
    all_bleed = replace(leaves[0], bleed_mm=80.0, size_mm=None)
    refused(lambda: join([all_bleed], tmp_path / "book.pdf", INFO), "hole 1.pdf")
    for name, box in (("huge", "0 0 15000 100"), ("tiny", "0 0 1 100"), ("none", "0 0 0 0")):
        path = flag_pdf(tmp_path / f"{name}.pdf", box=box)
        refused(lambda path=path: join([Leaf(path)], tmp_path / "book.pdf", INFO), name)
    assert not (tmp_path / "book.pdf").exists()


class FullDisk(io.BytesIO):
    """A file that takes so many bytes and no more."""

    def __init__(self, room):
        super().__init__()
        self.room = room

    def write(self, data):
        if self.tell() + len(data) > self.room:
            raise OSError(errno.ENOSPC, "No space left on device")
        return super().write(data)


@pytest.mark.parametrize("write", [join, impose])
def test_a_full_disk_is_said_and_the_last_book_stays(leaves, tmp_path, monkeypatch, write):
    path = tmp_path / "book.pdf"
    write(leaves[:2], path, INFO)
    before, size = path.read_bytes(), path.stat().st_size
    for room in (0, 100, size // 2, size - 1):
        monkeypatch.setattr(
            "yardwright.guide.pdf_join.open", lambda *_, room=room: FullDisk(room), raising=False
        )
        error = refused(lambda: write(leaves[:2], path, INFO), "book.pdf", "No space left")
        assert "room on the disk" in error.remedy
        assert path.read_bytes() == before
        assert [one.name for one in tmp_path.iterdir()] == ["book.pdf"]


def test_a_book_that_cannot_be_made_leaves_the_last_one(leaves, tmp_path):
    path = tmp_path / "book.pdf"
    join(leaves, path, INFO)
    before = path.read_bytes()
    with open(leaves[1].path, "rb") as file:
        half = file.read()[:5000]
    (tmp_path / "half.pdf").write_bytes(half)
    broken = [*leaves[:3], Leaf(str(tmp_path / "half.pdf"))]
    for write in (join, impose):
        refused(lambda write=write: write(broken, path, INFO), "half.pdf", "damaged")
        with pytest.raises(Cancelled):
            write(leaves, path, INFO, progress=lambda done, total: done < 5)
        assert path.read_bytes() == before
    assert sorted(one.name for one in tmp_path.iterdir()) == ["book.pdf", "half.pdf"]
    refused(lambda: join([], path, INFO))
    refused(lambda: join(leaves, tmp_path / "nowhere" / "book.pdf", INFO), "nowhere")


def test_all_of_it_is_said_in_the_users_language(leaves, tmp_path, loudly):
    error = refused(lambda: join([], tmp_path / "book.pdf", INFO))
    assert str(error) == str(error).upper()


def test_memory_is_that_of_a_piece_and_not_of_a_book(tmp_path):
    """Twenty pages of 5 MB each: what Python holds stays below one of them."""
    rng = np.random.default_rng(7)
    leaves = []
    for number in range(20):
        data = rng.integers(0, 256, 5_000_000, dtype=np.uint8).tobytes()
        head = b"<< /Type /XObject /Subtype /Image /Width 1000 /Height 1666 /BitsPerComponent 8 "
        head += b"/ColorSpace /DeviceRGB /Length %d >>\nstream\n" % len(data)
        path = plain_pdf(
            tmp_path / f"{number}.pdf",
            [
                "<< /Type /Catalog /Pages 2 0 R >>",
                "<< /Type /Pages /Kids [3 0 R] /Count 1 /MediaBox [0 0 200 100] >>",
                "<< /Type /Page /Parent 2 0 R /Contents 4 0 R /Resources << /XObject << /Im 5 0 R >> >> >>",
                stream("q 200 0 0 100 0 0 cm /Im Do Q"),
                head + data + b"\nendstream",
            ],
        )
        leaves.append(Leaf(path))
    for write in (join, impose):
        tracemalloc.start()
        write(leaves, tmp_path / "book.pdf", INFO)
        _, most = tracemalloc.get_traced_memory()
        tracemalloc.stop()
        assert most < 3_000_000
        assert (tmp_path / "book.pdf").stat().st_size > 100_000_000


# A sponsor's page


def test_a_sponsors_page_is_brought_to_the_books_size(pages, tmp_path):
    """A flag of 200 by 100 points on a page of 306 by 504: 1.53 times as large, 153 points high, in the
    middle."""
    fitted = tmp_path / "fitted.pdf"
    fit(flag_pdf(tmp_path / "flag.pdf"), fitted, (107.95, 177.8))
    page = pypdf.PdfReader(fitted, strict=True).pages[0]
    assert mm(page.mediabox) == pytest.approx([0, 0, 107.95, 177.8], abs=1e-3)
    red = (rendered(fitted, dpi=72) == [255, 0, 0]).all(axis=2)
    rows, columns = np.nonzero(red)
    # On the flag's page red reaches from 10 to 70 across and from 20 to 50 up.
    assert np.abs(np.array([columns.min(), columns.max() + 1]) - [15.3, 107.1]).max() <= 1
    low = (504 - 153) / 2
    assert np.abs(504 - np.array([rows.max() + 1, rows.min()]) - [low + 30.6, low + 76.5]).max() <= 1
    # It is a leaf like any other, with bleed and in a booklet too.
    fit(pages[0], fitted, SIZE, 3.0)
    path, booklet = tmp_path / "book.pdf", tmp_path / "booklet.pdf"
    sponsor = Leaf(str(fitted), "Sponsor", bleed_mm=3.0, size_mm=SIZE)
    join([sponsor], path, INFO, marks=True)
    impose([sponsor], booklet, INFO)
    assert words_on(path, 1) == words_on(booklet, 1) == "Hole 1: Bäche & Gräben"


def test_a_page_of_many(tmp_path):
    many = qt_page(tmp_path / "many.pdf", pages=3)
    for number in (1, 3):
        fit(many, tmp_path / "fitted.pdf", SIZE, page=number)
        assert words_on(tmp_path / "fitted.pdf", 1) == "Hole 1: Bäche & Gräben"
    refused(lambda: fit(many, tmp_path / "other.pdf", SIZE, page=4), "many.pdf", "no page 4")
    refused(lambda: fit(many, tmp_path / "other.pdf", SIZE), "3 pages")
    assert not (tmp_path / "other.pdf").exists()


# Pages of a layout


@pytest.mark.parametrize("lossless", [False, True])
def test_pages_of_a_layout_are_taken_as_they_are(tmp_path, lossless):
    """What QGIS paints: an expression in a label, a map with something that shines through, a picture."""
    from qgis.core import (
        QgsFeature,
        QgsGeometry,
        QgsLayoutExporter,
        QgsLayoutItemLabel,
        QgsLayoutItemMap,
        QgsLayoutItemPicture,
        QgsLayoutSize,
        QgsPrintLayout,
        QgsProject,
        QgsRectangle,
        QgsVectorLayer,
    )
    from qgis.PyQt.QtCore import QMarginsF, QRectF, QSizeF
    from qgis.PyQt.QtGui import QPageSize, QPainter, QPdfWriter
    from yardwright.compat import text_as_text

    project = QgsProject()
    layer = QgsVectorLayer("Polygon?crs=EPSG:25832", "green", "memory")
    feature = QgsFeature()
    feature.setGeometry(QgsGeometry.fromWkt("POLYGON((0 0,100 0,100 100,0 0))"))
    layer.dataProvider().addFeatures([feature])
    layer.setOpacity(0.5)
    project.addMapLayer(layer)
    layout = QgsPrintLayout(project)
    layout.initializeDefaults()
    layout.pageCollection().page(0).setPageSize(QgsLayoutSize(107.95, 177.8))
    assert picture().save(str(tmp_path / "hole.png"))
    label, a_map, image = QgsLayoutItemLabel(layout), QgsLayoutItemMap(layout), QgsLayoutItemPicture(layout)
    label.setText("Par [% 3 + 1 %], Länge [% 400 + 5 %]")
    a_map.setExtent(QgsRectangle(-10, -10, 110, 110))
    a_map.setMapRotation(30)
    a_map.setBackgroundEnabled(False)
    image.setPicturePath(str(tmp_path / "hole.png"))
    for item, box in ((label, (10, 10, 80, 10)), (a_map, (10, 30, 60, 60)), (image, (10, 100, 60, 40))):
        item.attemptSetSceneRect(QRectF(*box))
        layout.addLayoutItem(item)
    layout.renderContext().setDpi(300)
    layout.renderContext().setTextRenderFormat(text_as_text())

    def painted(name):
        writer = QPdfWriter(str(tmp_path / name))
        writer.setResolution(300)
        writer.setPageSize(QPageSize(QSizeF(306, 504), QPageSize.Unit.Point))
        writer.setPageMargins(QMarginsF(0, 0, 0, 0))
        painter = QPainter(writer)
        painter.setRenderHint(QPainter.RenderHint.LosslessImageRendering, lossless)
        QgsLayoutExporter(layout).renderPage(painter, 0)
        painter.end()
        return str(tmp_path / name)

    leaves = [Leaf(painted(f"{number}.pdf"), size_mm=(107.95, 177.8)) for number in (1, 2)]
    path, booklet = tmp_path / "book.pdf", tmp_path / "booklet.pdf"
    join(leaves, path, INFO)
    for number, leaf in enumerate(leaves, 1):
        assert words_on(path, number) == "Par 4, Länge 405"
        assert_same_picture(rendered(leaf.path), rendered(path, number), tmp_path)
    one, other = streams_of(path)
    assert one == other == [raw_stream(leaves[0].path)]
    impose(leaves, booklet, INFO, marks=False)
    # 107.95 mm is 306 points, and a pixel at 72 dots an inch.
    placed = rendered(booklet, dpi=72)[:, 306:]
    assert_same_picture(rendered(leaves[0].path, dpi=72), placed, tmp_path, apart=2)
