"""Reading PDFs: what is understood, and what is said of those that are not."""

import random
import re
import subprocess
import sys
from pathlib import Path

import pypdf
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from yardwright.guide.pdf_join import BookInfo, Leaf, impose, join
from yardwright.guide.pdf_objects import PdfFile, Reference, Stream
from yardwright.guide.pdf_unpacking import foretold
from yardwright.guide.pdf_writing import serialised
from yardwright.model.errors import YardwrightError

from tests.pdf_pages import (
    FLAG,
    assert_same_picture,
    flag_pdf,
    packed_pdf,
    plain_pdf,
    qt_page,
    rendered,
    stream,
)

PACKAGE = Path(__file__).resolve().parents[2] / "plugin"


def objects_pdf(path, *objects):
    return plain_pdf(path, ["<< /Type /Catalog >>", *objects])


def read(path, *bodies):
    """Objects as they are read."""
    with PdfFile(objects_pdf(path, *bodies)) as file:
        return [file.get(Reference(number, 0)) for number in range(2, len(bodies) + 2)]


def refused(path, *words):
    """The page can neither be joined nor imposed, and why is said."""
    before = sorted(path.parent.iterdir())
    for write in (join, impose):
        with pytest.raises(YardwrightError) as caught:
            write([Leaf(str(path))], path.parent / "book.pdf", BookInfo())
        assert path.name in caught.value.what and caught.value.remedy
        for word in words:
            assert word in caught.value.what
    assert sorted(path.parent.iterdir()) == before


# Values


def test_values_of_all_kinds(tmp_path):
    found = read(
        tmp_path / "a.pdf",
        "<< /A 1 /B [ 2 0 R -.5 null /C#20d ] % a remark >> \n /D (a \\) (b) \\\\) /E <0A fF> /F <</G true>>>>",
        "[1 0 2 0 R 3 0 R]",
        "(plain)",
        "[]",
        "<<>>",
        "7 % the end\n",
    )
    assert found == [
        {
            b"/A": b"1",
            b"/B": [Reference(2, 0), b"-.5", b"null", b"/C#20d"],
            b"/D": b"(a \\) (b) \\\\)",
            b"/E": b"<0A fF>",
            b"/F": {b"/G": b"true"},
        },
        [b"1", b"0", Reference(2, 0), Reference(3, 0)],
        b"(plain)",
        [],
        {},
        b"7",
    ]


def test_values_larger_than_what_is_read_at_once(tmp_path):
    long_string = "(" + "a\\)" * 900 + ")"
    for padding in range(0, 200, 7):
        text = "x" * (880 + padding)
        (found,) = read(tmp_path / "a.pdf", f"<< /A ({text}) /B [1 0 R] /C {long_string} >>")
        assert found == {b"/A": f"({text})".encode(), b"/B": [Reference(1, 0)], b"/C": long_string.encode()}
    numbers = " ".join(map(str, range(30_000)))
    (found,) = read(tmp_path / "a.pdf", f"[{numbers}]")
    assert found == [str(number).encode() for number in range(30_000)]


texts = st.text(st.characters(min_codepoint=32, max_codepoint=126, exclude_characters="()\\"), max_size=20)
names = st.text(st.sampled_from("abcXYZ019-_."), min_size=1, max_size=8).map(
    lambda text: b"/" + text.encode()
)
leaves = st.one_of(
    names,
    st.integers(-(10**9), 10**9).map(lambda number: b"%d" % number),
    texts.map(lambda text: b"(" + text.encode() + b")"),
    st.tuples(st.integers(0, 99999), st.integers(0, 9)).map(lambda pair: Reference(*pair)),
    st.sampled_from([b"true", b"null", b"<0aF>"]),
)
values = st.recursive(
    leaves,
    lambda inner: st.one_of(st.lists(inner, max_size=5), st.dictionaries(names, inner, max_size=5)),
    max_leaves=30,
)


@settings(deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(value=values)
def test_what_is_written_is_read_again(tmp_path, value):
    path = plain_pdf(tmp_path / "a.pdf", ["<< >>", serialised([value])])
    with PdfFile(path) as file:
        assert file.get(Reference(2, 0)) == [value]


def test_what_is_written_is_what_another_reader_reads(tmp_path):
    written = {b"/A": "Bäche (1)", b"/B": [1, -2.5, 0.0000001, -0.0000001, 1e6, 1 / 3], b"/C": {b"/D": b"/E"}}
    path = plain_pdf(tmp_path / "a.pdf", ["<< /Type /Catalog /Pages 2 0 R >>", serialised(written)])
    found = pypdf.PdfReader(path, strict=True).get_object(2)
    assert found["/A"] == "Bäche (1)"
    assert [float(one) for one in found["/B"]] == [1, -2.5, 0, 0, 1e6, 0.333333]
    assert found["/C"]["/D"] == "/E"


def test_streams_are_known_by_their_place(tmp_path):
    path = objects_pdf(
        tmp_path / "a.pdf",
        b"<< /Length 3 0 R >>\nstream\r\nendstream within\nendstream",
        "16",
        b"<< /Length 0 >>\nstream\n\nendstream",
    )
    with PdfFile(path) as file:
        found = file.get(Reference(2, 0))
        assert isinstance(found, Stream)
        assert b"".join(file.chunks(found)) == b"endstream within"
        assert b"".join(file.chunks(file.get(Reference(4, 0)))) == b""
        assert file.get(Reference(9, 0)) == b"null"
        assert file.get(Reference(2, 1)) == b"null"


def test_a_changed_file_is_read_as_it_is_now(tmp_path):
    """Programs append what has changed, and a table of that; the older table is found from it."""
    path = Path(flag_pdf(tmp_path / "a.pdf"))
    data = path.read_bytes()
    first = data.rindex(b"xref\n0")
    new = data + b"4 0 obj\n" + stream("1 0 0 rg").encode() + b"\nendobj\n"
    table = len(new)
    new += b"xref\n4 1\n%010d 00000 n \ntrailer\n<< /Size 5 /Root 1 0 R /Prev %d >>\n" % (len(data), first)
    path.write_bytes(new + b"startxref\n%d\n%%%%EOF\n" % table)
    with PdfFile(path) as file:
        page = file.page()
        assert b"".join(file.chunks(file.get(page[b"/Contents"]))) == b"1 0 0 rg"
    # What the newer table strikes out is not found in the older one.
    path.write_bytes(
        path.read_bytes().replace(b"%010d 00000 n \ntrailer" % len(data), b"0000000000 00001 f \ntrailer")
    )
    with PdfFile(path) as file:
        assert file.get(file.page()[b"/Contents"]) == b"null"


@pytest.mark.usefixtures("qgis_app")
def test_a_qt_page_is_read_as_another_reader_reads_it(tmp_path):
    path = qt_page(tmp_path / "a.pdf")
    theirs = pypdf.PdfReader(path, strict=True).pages[0]
    with PdfFile(path) as file:
        page = file.page()
        assert [file.number(side) for side in page[b"/MediaBox"]] == [float(side) for side in theirs.mediabox]
        contents = file.get(page[b"/Contents"])
        assert b"".join(file.chunks(contents)) == theirs["/Contents"].get_object()._data
        kinds = {key.encode() for key in theirs["/Resources"]}
        assert set(file.dictionary(page[b"/Resources"])) == kinds


# What is not taken


def test_no_file_and_no_pdf(tmp_path):
    refused(tmp_path / "nowhere.pdf", "No such file")
    (tmp_path / "folder.pdf").mkdir()
    refused(tmp_path / "folder.pdf")
    for number, data in enumerate((b"", b"%PDF", b"\x89PNG\r\n", b"<html>" * 1000)):
        path = tmp_path / f"{number}.pdf"
        path.write_bytes(data)
        refused(path, "is no PDF")


def test_several_pages_and_none(tmp_path):
    path = tmp_path / "two.pdf"
    with pypdf.PdfWriter() as writer:
        for _ in range(3):
            writer.add_blank_page(200, 100)
        writer.write(path)
    refused(path, "3 pages")
    none = tmp_path / "none.pdf"
    plain_pdf(none, ["<< /Type /Catalog /Pages 2 0 R >>", "<< /Type /Pages /Kids [] /Count 0 >>"])
    refused(none, "damaged")


@pytest.mark.usefixtures("qgis_app")
def test_two_pages_of_qt(tmp_path):
    refused(Path(qt_page(tmp_path / "two.pdf", pages=2)), "2 pages")


def test_locked_files(tmp_path):
    path = tmp_path / "locked.pdf"
    with pypdf.PdfWriter() as writer:
        writer.add_blank_page(200, 100)
        writer.encrypt("secret", algorithm="RC4-128")
        writer.write(path)
    refused(path, "locked")


PACKED = [
    "<< /Type /Catalog /Pages 2 0 R >>",
    "<< /Type /Pages /Kids [3 0 R] /Count 1 /MediaBox [0 0 200 100] >>",
    "<< /Type /Page /Parent 2 0 R /Contents 4 0 R >>",
]


@pytest.mark.parametrize("predictor", [False, True])
def test_packed_objects_and_tables(tmp_path, predictor):
    """As most programs write since PDF 1.5; pypdf and poppler read the same."""
    path = packed_pdf(tmp_path / "packed.pdf", PACKED, [stream(FLAG)], predictor)
    assert pypdf.PdfReader(path, strict=True).pages[0].get_contents().get_data() == FLAG.encode()
    book = tmp_path / "book.pdf"
    join([Leaf(path)], book, BookInfo())
    assert pypdf.PdfReader(book, strict=True).pages[0].get_contents().get_data() == FLAG.encode()
    assert_same_picture(rendered(path), rendered(book), tmp_path)
    assert_same_picture(rendered(flag_pdf(tmp_path / "plain.pdf")), rendered(book), tmp_path)


def test_a_packed_table_beside_a_plain_one(tmp_path):
    """Some programs write both: what old readers shall not see stands in the packed one alone."""
    path = Path(packed_pdf(tmp_path / "both.pdf", PACKED, [stream(FLAG)]))
    data = path.read_bytes()
    packed_table = int(data.split(b"startxref\n")[1].split()[0])
    data = data[: data.rindex(b"startxref")]
    table = b"xref\n0 1\n0000000000 65535 f \n4 1\n"
    table += b"%010d 00000 n \n" % data.index(b"4 0 obj")
    table += b"trailer\n<< /Size 7 /Root 1 0 R /XRefStm %d >>\n" % packed_table
    path.write_bytes(data + table + b"startxref\n%d\n%%%%EOF\n" % len(data))
    assert pypdf.PdfReader(path).pages[0].get_contents().get_data() == FLAG.encode()
    book = tmp_path / "book.pdf"
    join([Leaf(str(path))], book, BookInfo())
    assert_same_picture(rendered(path), rendered(book), tmp_path)


def test_broken_packs_are_said_or_do_no_harm(tmp_path):
    path, book = tmp_path / "broken.pdf", tmp_path / "book.pdf"
    # Not compressed, so that what is changed has its effect.
    data = Path(packed_pdf(path, PACKED, [stream(FLAG)], False, level=0)).read_bytes()
    chance = random.Random(7)
    told = 0
    for _ in range(600):
        broken = bytearray(data)
        for _ in range(chance.randint(1, 4)):
            broken[chance.randrange(8, len(broken))] = chance.choice(b"0123456789 /<>[]R\n\0\1\2\xffxobj")
        path.write_bytes(broken)
        try:
            join([Leaf(str(path))], book, BookInfo())
        except YardwrightError as error:
            assert "broken.pdf" in str(error)
            told += 1
    assert 100 < told < 600


def test_a_pack_that_is_needed_to_open_itself(tmp_path):
    path = tmp_path / "ring.pdf"
    data = Path(packed_pdf(path, [*PACKED, "99"])).read_bytes()
    length = re.search(rb"/Length (\d+) /Type /ObjStm", data)
    ring = b"/Length 4 0 R".ljust(len(length[0]) - len(b" /Type /ObjStm")) + b" /Type /ObjStm"
    assert data.count(length[0]) == 1
    moved = data.replace(length[0], ring)
    shift = len(moved) - len(data)
    start = int(data.split(b"startxref\n")[1].split()[0])
    path.write_bytes(moved.replace(b"startxref\n%d" % start, b"startxref\n%d" % (start + shift)))
    refused(path, "damaged")


@given(rows=st.lists(st.tuples(st.integers(0, 4), st.binary(min_size=6, max_size=6)), min_size=1, max_size=8))
def test_rows_that_were_foretold(rows):
    """The filters as PNG's specification writes them, the other way round: from the bytes to what is kept."""
    kept, above = b"", bytes(6)
    for kind, row in rows:
        kept += bytes([kind])
        for k, byte in enumerate(row):
            a, b, c = (row[k - 1] if k else 0), above[k], (above[k - 1] if k else 0)
            pa, pb, pc = abs(b - c), abs(a - c), abs(a + b - 2 * c)
            paeth = a if pa <= pb and pa <= pc else b if pb <= pc else c
            kept += bytes([(byte - (0, a, b, (a + b) // 2, paeth)[kind]) % 256])
        above = row
    assert foretold(kept, 15, 6) == b"".join(row for _, row in rows)


def test_drawings_in_parts_that_are_packed_unusually(tmp_path):
    """A booklet needs the parts of a page's drawing as one; joined, they may stay as they are."""
    path = plain_pdf(
        tmp_path / "parts.pdf",
        [
            "<< /Type /Catalog /Pages 2 0 R >>",
            "<< /Type /Pages /Kids [3 0 R] /Count 1 /MediaBox [0 0 200 100] >>",
            "<< /Type /Page /Parent 2 0 R /Contents [4 0 R 4 0 R] >>",
            stream("71>", "/Filter /ASCIIHexDecode"),
        ],
    )
    join([Leaf(path)], tmp_path / "book.pdf", BookInfo())
    assert pypdf.PdfReader(tmp_path / "book.pdf").pages[0].get_contents().get_data().split() == [b"q", b"q"]
    with pytest.raises(YardwrightError, match=r"parts\.pdf.*packed in an unusual way"):
        impose([Leaf(path)], tmp_path / "booklet.pdf", BookInfo())


@pytest.mark.parametrize(
    "page",
    ["/Rotate 45", "/Rotate (a)", "/Rotate 1 0 R", "/UserUnit 0", "/MediaBox [0 0 200]", "/MediaBox 7",
     "/MediaBox [0 0 /a 100]", "/Resources 7", "/Contents (a)", "/Contents [1 0 R]", "/CropBox null",
     "/Rotate " + "9" * 400, "/MediaBox " + "[" * 5000 + "]" * 5000, "/A << /B", "/A ("],
)  # fmt: skip
def test_pages_that_say_nonsense(tmp_path, page):
    path = tmp_path / "page.pdf"
    flag_pdf(path, page)
    refused(path, "damaged")


@pytest.mark.parametrize(
    "content",
    ["<< /Length 999999 >>\nstream\nq\nendstream", "<< /Length 1 >>\nstream\nq Q\nendstream",
     "<< /Length -4 >>\nstream\nq Q\nendstream", "<< >>\nstream\nq Q\nendstream",
     "<< /Length 99999999999999999999999 >>\nstream\nq Q\nendstream",
     "<< /Length 4 0 R >>\nstream\nq Q\nendstream", "4 0 R", ">>", "<< /A"],
)  # fmt: skip
def test_contents_that_are_not_whole(tmp_path, content):
    path = tmp_path / "page.pdf"
    flag_pdf(path, content=content)
    refused(path, "damaged")


def test_a_length_that_leads_back_to_its_stream(tmp_path):
    path = tmp_path / "page.pdf"
    plain_pdf(
        path,
        [
            "<< /Type /Catalog /Pages 2 0 R >>",
            "<< /Type /Pages /Kids [3 0 R] /Count 1 /MediaBox [0 0 200 100] >>",
            "<< /Type /Page /Parent 2 0 R /Contents 5 0 R >>",
            "5 0 R",
            "<< /Length 4 0 R >>\nstream\nq Q\nendstream",
        ],
    )
    refused(path, "damaged")


def test_a_stream_in_another_file_is_not_fetched(tmp_path):
    path = tmp_path / "page.pdf"
    flag_pdf(path, content=stream("", "/F (other.bin)"))
    refused(path, "another file")


def test_trees_of_pages_that_never_end(tmp_path):
    path = tmp_path / "ring.pdf"
    plain_pdf(path, ["<< /Type /Catalog /Pages 2 0 R >>", "<< /Type /Pages /Kids [2 0 R 2 0 R] >>"])
    refused(path, "damaged")
    plain_pdf(path, ["<< /Pages 2 0 R >>", "<< /Kids [<< /Kids [2 0 R] >>] >>"])
    refused(path, "damaged")
    deep = [f"<< /Kids [{number + 1} 0 R] >>" for number in range(2, 300)]
    plain_pdf(path, ["<< /Pages 2 0 R >>", *deep, "<< /MediaBox [0 0 200 100] >>"])
    refused(path, "damaged")
    chain = [f"<< /Next {number + 1} 0 R >>" for number in range(4, 3000)]
    page = "<< /MediaBox [0 0 200 100] /Resources << /First 4 0 R >> >>"
    plain_pdf(path, ["<< /Pages 2 0 R >>", "<< /Kids [3 0 R] >>", page, *chain])
    refused(path, "damaged")


def test_a_table_that_leads_back_to_itself(tmp_path):
    path = tmp_path / "a.pdf"
    data = Path(flag_pdf(path)).read_bytes()
    flag_pdf(path, trailer=f"/Prev {data.rindex(b'xref', 0, -40)}")
    refused(path, "damaged")
    flag_pdf(path, trailer="/Prev 99999999")
    refused(path, "damaged")


@pytest.mark.usefixtures("qgis_app")
def test_a_file_cut_off_anywhere_is_damaged(tmp_path):
    data = Path(qt_page(tmp_path / "whole.pdf")).read_bytes()
    path = tmp_path / "part.pdf"
    for share in range(1, 20):
        path.write_bytes(data[: len(data) * share // 20])
        refused(path, "damaged")


@pytest.mark.usefixtures("qgis_app")
def test_broken_bytes_are_said_or_do_no_harm(tmp_path):
    """Whatever is wrong, it ends in a book or in what a user can read, never in another error."""
    data = Path(qt_page(tmp_path / "whole.pdf")).read_bytes()
    path, book = tmp_path / "broken.pdf", tmp_path / "book.pdf"
    chance = random.Random(6)
    told = 0
    for _ in range(400):
        broken = bytearray(data)
        for _ in range(chance.randint(1, 40)):
            # Most of the file is pictures; what is not is the more telling part.
            place = chance.randrange(len(broken)) if chance.random() < 0.2 else -chance.randrange(1, 12_000)
            broken[place] = chance.choice(b"0123456789 /<>[]()\n\0\xffRxobj")
        path.write_bytes(broken)
        for write in (join, impose):
            try:
                write([Leaf(str(path))], book, BookInfo())
            except YardwrightError as error:
                assert "broken.pdf" in str(error)
                told += 1
            else:
                assert len(pypdf.PdfReader(book).pages) in (1, 2)
    assert 100 < told < 800


def test_all_of_it_runs_without_qgis_and_numpy(tmp_path):
    code = f"""
import sys
sys.path.insert(0, {str(PACKAGE)!r})
sys.modules.update(dict.fromkeys(("qgis", "PyQt5", "PyQt6", "numpy", "shapely", "osgeo")))
from yardwright.guide.pdf_join import BookInfo, Leaf, impose, join
leaf = Leaf({flag_pdf(tmp_path / "flag.pdf")!r})
join([leaf], {str(tmp_path / "book.pdf")!r}, BookInfo())
impose([leaf], {str(tmp_path / "booklet.pdf")!r}, BookInfo())
"""
    subprocess.run([sys.executable, "-c", code], check=True, timeout=60)
    assert len(pypdf.PdfReader(tmp_path / "book.pdf").pages) == 1
    assert len(pypdf.PdfReader(tmp_path / "booklet.pdf").pages) == 2
