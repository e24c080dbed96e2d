"""What a committee hands in: every way people save and paste it, each bad row named by line and reason."""

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from yardwright.model.errors import YardwrightError
from yardwright.model.event import SIDES, AskedLength, Pin
from yardwright.store.committee import read_lengths, read_pins, refuse_bad_rows

YARD = 0.9144  # metres, exactly (international yard and pound agreement, 1959)
PINS = "round,hole,on,off,from,green_depth\n1,1,12.5,5,left,30\n1,2,8,-1.5,centre,\n"
LENGTHS = "round,flight,hole,yards\n1,Läufer,1,402.5\n1,Läufer,2,161\n"


def expect_pins(found):
    pins, bad = found
    assert bad == ()
    assert [(pin.round, pin.hole, pin.off_from, pin.given) for pin in pins] == [
        (1, 1, "left", "figures"),
        (1, 2, "centre", "figures"),
    ]
    figures = [(pin.on, pin.off, pin.green_depth) for pin in pins]
    assert figures == [
        pytest.approx((12.5 * YARD, 5 * YARD, 30 * YARD), abs=1e-12),
        (pytest.approx(8 * YARD), pytest.approx(-1.5 * YARD), None),
    ]
    assert [pin.point for pin in pins] == [None, None]


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "utf-16-le", "utf-16-be", "cp1252"])
@pytest.mark.parametrize("newline", ["\n", "\r\n", "\r"])
@pytest.mark.parametrize("separator", [",", ";", "\t"])
def test_the_ways_it_is_saved(tmp_path, encoding, newline, separator):
    path = tmp_path / "committee.csv"
    path.write_bytes(PINS.replace(",", separator).replace("\n", newline).encode(encoding))
    expect_pins(read_pins(str(path)))
    expect_pins(read_pins(Path(path)))
    path.write_bytes(LENGTHS.replace(",", separator).replace("\n", newline).encode(encoding))
    assert read_lengths(str(path)) == (
        (AskedLength(1, "Läufer", 1, 402.5 * YARD, 2), AskedLength(1, "Läufer", 2, 161 * YARD, 3)),
        (),
    )


@pytest.mark.parametrize("newline", ["\n", "\r\n", "\r"])
def test_pasted_from_a_spreadsheet(newline):
    pasted = PINS.replace(",", "\t").replace("\n", newline)
    expect_pins(read_pins(pasted))
    expect_pins(read_pins("\ufeff" + pasted))
    expect_pins(read_pins(pasted.replace(".", ",")))


def test_decimal_commas():
    expect_pins(read_pins(PINS.replace(",", ";").replace(".", ",")))
    expect_pins(read_pins(PINS.replace("12.5", '"12,5"').replace("-1.5", '"-1,5"')))
    # In a file with commas between its cells 1,250 may be a thousand and more, so it is not guessed at.
    assert read_lengths('round,flight,hole,yards\n1,A,1,"1,250"\n')[1] == (
        (2, "yards “1,250” is not a number"),
    )


def test_any_order_of_columns_below_a_title():
    text = (
        'Larkmere Cup; hole locations "final"\n\n;;;;\n'
        "from;note;Hole;OFF;On;Round;who\nr;behind the ridge;1;3;4;2;Ida\n;;;;;;\nl;;2;3;4;2;\n"
    )
    pins, bad = read_pins(text, event="Cup")
    assert bad == ()
    assert [(pin.event, pin.round, pin.hole, pin.note, pin.line) for pin in pins] == [
        ("Cup", 2, 1, "behind the ridge", 5),
        ("Cup", 2, 2, "", 7),
    ]
    assert (pins[0].on, pins[0].off, pins[0].off_from) == pytest.approx((4 * YARD, 3 * YARD, "right"))


@pytest.mark.parametrize(
    ("headings", "unit", "metres"),
    [
        ("on,off", "yd", (9 * YARD, 5 * YARD)),
        ("on,off", "m", (9.0, 5.0)),
        ("on m,off m", "yd", (9.0, 5.0)),
        ("on_m,OFF (M)", "yd", (9.0, 5.0)),
        ("on metres,off [meters]", "yd", (9.0, 5.0)),
        ("on yd,off", "m", (9 * YARD, 5.0)),
        ("on_yd,off (yards)", "m", (9 * YARD, 5 * YARD)),
    ],
)
def test_units(headings, unit, metres):
    pins, bad = read_pins(f"round,hole,{headings},from\n1,7,9,5,left\n", unit)
    assert bad == () and (pins[0].on, pins[0].off) == pytest.approx(metres, abs=1e-12)


@pytest.mark.parametrize(
    ("heading", "unit", "metres"),
    [
        ("yards", "yd", 400 * YARD),
        ("yards", "m", 400 * YARD),
        ("yds", "m", 400 * YARD),
        ("metres", "yd", 400.0),
        ("meters", "yd", 400.0),
        ("m", "yd", 400.0),
        ("yards m", "yd", 400.0),
        ("length", "m", 400.0),
        ("length", "yd", 400 * YARD),
        ("Length (m)", "yd", 400.0),
    ],
)
def test_units_of_lengths(heading, unit, metres):
    lengths, bad = read_lengths(f"round,flight,hole,{heading}\n1,A,7,400\n", unit)
    assert bad == () and lengths[0].length == pytest.approx(metres, abs=1e-12)


def test_a_unit_that_is_none():
    with pytest.raises(YardwrightError, match="not a unit"):
        read_pins(PINS, "ft")


@pytest.mark.parametrize(
    ("text", "side"),
    [
        *[(text, "left") for text in ("left", "Left", "LEFT", "l", "L", "links", "Links")],
        *[(text, "right") for text in ("right", "r", "R", "rechts", "RECHTS")],
        *[(text, "centre") for text in ("centre", "center", "c", "C", "Mitte", "mitte", "'mitte")],
    ],
)
def test_sides(text, side):
    pins, bad = read_pins(f"round,hole,on,off,from\n1,7,9,5,{text}\n")
    assert bad == () and pins[0].off_from == side and side in SIDES


def test_cells_a_spreadsheet_keeps_as_text():
    """The apostrophe that keeps a cell from being a formula or a number goes."""
    lengths, bad = read_lengths("round,flight,hole,yards\n'1,'=A,'7,'400\n2,'tis,7,'400\n")
    assert bad == ()
    assert [(one.round, one.flight, one.hole) for one in lengths] == [(1, "=A", 7), (2, "'tis", 7)]


@pytest.mark.parametrize(
    ("row", "reason"),
    [
        ("1,3,9,0,left,", "off is 0, which is the margin itself"),
        ("1,3,9,0.0,right,", "off is 0, which is the margin itself"),
        ("1,3,9,-1,left,", "off -1 is below zero"),
        ("1,3,-9,1,left,", "on -9 is below zero"),
        ("1,3,-9,1,centre,", "on -9 is below zero"),
        ("1,3,nine,1,left,", "on “nine” is not a number"),
        ("1,3,9 yd,1,left,", "on “9 yd” is not a number"),
        ("1,3,9,nan,left,", "off “nan” is not a number"),
        ("1,3,9,inf,left,", "off “inf” is not a number"),
        ("1,3,9,1_0,left,", "off “1_0” is not a number"),
        ("1,3,,1,left,", "on is missing"),
        ("1,3,9,,left,", "off is missing"),
        ("1,3,9,1,,", "from is missing"),
        ("1,3", "on is missing"),
        (",3,9,1,left,", "round is missing"),
        ("1,,9,1,left,", "hole is missing"),
        ("1,3,9,1,front,", "from “front” is none of left, right, centre"),
        ("1,3,9,1,left,0", "green_depth is 0"),
        ("1,3,9,1,left,-3", "green_depth -3 is below zero"),
        ("1,3,9,1,left,deep", "green_depth “deep” is not a number"),
        ("0,3,9,1,left,", "round 0 is not at least 1"),
        ("1,0,9,1,left,", "hole 0 is not between 1 and 99"),
        ("1,100,9,1,left,", "hole 100 is not between 1 and 99"),
        ("one,3,9,1,left,", "round “one” is not a whole number"),
        ("1,3.5,9,1,left,", "hole “3.5” is not a whole number"),
        ("1,19,9,1,left,", "the course has no hole 19"),
        ("5,3,9,1,left,", "the event has no round 5"),
        ("1,2,9,1,left,", "line 3 has this one already"),
        ("1,3,12,5,4,left,30", "7 cells where the headings are 6"),
    ],
)
def test_a_bad_row_is_named_and_the_good_ones_returned(row, reason):
    text = f"{PINS}{row}\n2,1,4,4,r,\n"
    pins, bad = read_pins(text, holes=range(1, 19), rounds=(1, 2, 3, 4))
    assert bad == ((4, reason),)
    assert [(pin.round, pin.hole) for pin in pins] == [(1, 1), (1, 2), (2, 1)]
    with pytest.raises(
        YardwrightError, match="“pasted text” has rows that cannot be used. line 4: "
    ) as caught:
        refuse_bad_rows(bad, text)
    assert reason in caught.value.what
    refuse_bad_rows((), text)


def test_off_may_be_nothing_or_to_the_left_from_the_centre():
    pins, bad = read_pins("round,hole,on,off,from\n1,1,0,0,centre\n1,2,3,-4,c\n")
    assert bad == () and [pin.off for pin in pins] == pytest.approx([0.0, -4 * YARD])


@pytest.mark.parametrize(
    ("row", "reason"),
    [
        ("1,A,3,0", "the length 0 is not between 1 and 1000 yd"),
        ("1,A,3,1001", "the length 1001 is not between 1 and 1000 yd"),
        ("1,A,3,-4", "yards -4 is below zero"),
        ("1,A,3,long", "yards “long” is not a number"),
        ("1,A,3,", "yards is missing"),
        ("1,,3,400", "flight is missing"),
        ("1,C,3,400", "the event has no flight “C”"),
        ("9,A,3,400", "the event has no round 9"),
        ("1,A,33,400", "the course has no hole 33"),
        ("1,A,1,400", "line 2 has this one already"),
        ("1,a,1,400", "line 2 has this one already"),
        ("Out,A,,3400", "round “Out” is not a whole number"),
    ],
)
def test_a_bad_length(row, reason):
    text = f"round,flight,hole,yards\n1,A,1,402\n{row}\n1,b,1,380\n"
    lengths, bad = read_lengths(text, holes=(1, 2, 3), rounds=(1,), flights=("A", "B"))
    assert bad == ((3, reason),)
    assert [one.flight for one in lengths] == ["A", "B"]


def test_lines_are_counted_as_an_editor_counts_them():
    text = 'Title\n\nround,hole,on,off,from,note\n1,1,4,4,l,"two\nlines"\n\n1,2,x,4,l,\n'
    pins, bad = read_pins(text)
    assert bad == ((7, "on “x” is not a number"),)
    assert [(pin.line, pin.note) for pin in pins] == [(5, "two\nlines")]


@pytest.mark.parametrize(
    ("content", "part"),
    [
        (b"", "no line with the headings round, hole, on, off, from"),
        (b"\n\n", "no line with the headings"),
        (b"hole,on,off,from\n1,2,3,left\n", "no line with the headings"),
        (b"1,1,4,4,left\n", "no line with the headings"),
        (b"round,hole,on,on m,off,from\n1,1,4,4,4,left\n", "two columns “on”"),
        (b'round,hole,on,off,from\n1,1,4,4,"left\n', "not a CSV file"),
        (b"PK\x03\x04 a workbook", "is not text"),
        (b"\xd0\xcf\x11\xe0 an older workbook", "is not text"),
        (b"round,hole\x81,on\n", "is not text"),
        (b"\xff\xfer\x00o", None),
    ],
)
def test_a_file_that_cannot_be_read(tmp_path, content, part):
    path = tmp_path / "committee.csv"
    path.write_bytes(content)
    with pytest.raises(YardwrightError, match=part) as caught:
        read_pins(str(path))
    assert "committee.csv" in caught.value.what and caught.value.remedy


def test_a_file_that_is_not_there(tmp_path):
    for path in (tmp_path / "none.csv", tmp_path):
        with pytest.raises(YardwrightError, match="cannot be read"):
            read_lengths(str(path))


def test_headings_alone_are_no_rows():
    assert read_pins("round,hole,on,off,from\n") == ((), ())


@given(
    st.lists(
        st.builds(
            Pin,
            st.just("Cup"),
            st.integers(1, 4),
            st.integers(1, 18),
            st.floats(0, 60).map(lambda value: round(value, 3)),
            st.floats(0.1, 60).map(lambda value: round(value, 3)),
            st.sampled_from(SIDES),
        ),
        unique_by=lambda pin: (pin.round, pin.hole),
    )
)
def test_there_and_back(pins):
    rows = [f"{pin.round}\t{pin.hole}\t{pin.on}\t{pin.off}\t{pin.off_from}" for pin in pins]
    back, bad = read_pins("\n".join(["round\thole\ton\toff\tfrom", *rows]), "m", event="Cup")
    assert bad == ()
    assert [(p.round, p.hole, p.on, p.off, p.off_from) for p in back] == [
        (p.round, p.hole, p.on, p.off, p.off_from) for p in pins
    ]


@given(st.text())
def test_no_text_brings_it_down(text):
    try:
        good, bad = read_pins(text + "\n")
    except YardwrightError:
        return
    assert all(isinstance(reason, str) for _, reason in bad) and isinstance(good, tuple)


@given(st.text("123.,;-'\"lefroundhole \t\n"))
def test_no_rows_bring_it_down(text):
    try:
        good, bad = read_pins("round,hole,on,off,from\n" + text)
    except YardwrightError:
        return
    assert all(pin.on >= 0 for pin in good)


def test_what_is_told_is_told_in_the_users_language(loudly):
    from tests.loudly import left_over

    _, bad = read_pins("round,hole,on,off,from\n1,1,4,0,l\n1,2,X,3,l\n9,1,1,1,l\n1,1,1,1,1,1\n", rounds=(1,))
    columns = ("round", "hole", "on", "off", "from")
    assert len(bad) == 4
    assert [[w for w in left_over(reason) if w not in columns] for _, reason in bad] == [[]] * 4
