"""Scorecards as CSV: every way people save them, each bad row named, there and back the same."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from yardwright.model.course import Course, Hole, Settings, TeeSet
from yardwright.model.errors import YardwrightError
from yardwright.store.scorecard import read_scorecard, refuse_bad_rows, write_scorecard

CARD = "hole,par,stroke_index,name,Heron,Wren m\n1,4,7,Burn,402,350\n2,3,15,,161.5,\n"


def card(tmp_path, text, encoding="utf-8"):
    path = tmp_path / "card.csv"
    path.write_bytes(text if isinstance(text, bytes) else text.encode(encoding))
    return read_scorecard(str(path))


def expect(found):
    assert found.holes == (Hole(1, name="Burn", par=4, stroke_index=7), Hole(2, par=3, stroke_index=15))
    assert found.tee_sets == (TeeSet("Heron", sort=1), TeeSet("Wren", sort=2))
    # 0.9144 m to the yard exactly (international yard and pound agreement, 1959)
    yards = {(1, "Heron"): 402.0, (2, "Heron"): 161.5, (1, "Wren"): 350 / 0.9144}
    assert dict(found.yards) == pytest.approx(yards, abs=1e-12)
    assert found.problems == ()


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig"])
@pytest.mark.parametrize("newline", ["\n", "\r\n", "\r"])
@pytest.mark.parametrize("separator", [",", ";", "\t"])
def test_the_ways_it_is_saved(tmp_path, encoding, newline, separator):
    expect(card(tmp_path, CARD.replace(",", separator).replace("\n", newline), encoding))


def test_a_decimal_comma_where_no_comma_separates(tmp_path):
    expect(card(tmp_path, CARD.replace(",", ";").replace("161.5", "161,5")))


def test_columns_in_any_order_and_spelling(tmp_path):
    found = card(tmp_path, "Heron,Stroke Index,HOLE ,,\n402,7,1,,\n\n,,,,\n380,1,2,,\n")
    assert [(hole.number, hole.stroke_index, hole.par) for hole in found.holes] == [
        (1, 7, None),
        (2, 1, None),
    ]
    assert dict(found.yards) == {(1, "Heron"): 402.0, (2, "Heron"): 380.0}


def test_quoted_cells_and_guarded_ones(tmp_path):
    found = card(tmp_path, 'hole,name,"Blue, back"\n1,"The ""Gap"", far",410\n2,\'=1+1,300\n')
    assert [hole.name for hole in found.holes] == ['The "Gap", far', "=1+1"]
    assert found.tee_sets[0].name == "Blue, back"


@pytest.mark.parametrize(
    ("row", "reason"),
    [
        ("0,4,1,,402,350", "hole 0 is not between 1 and 99"),
        ("100,4,1,,402,350", "hole 100 is not between 1 and 99"),
        (",4,1,,402,350", "the hole's number is missing"),
        ("Out,36,,,402,350", "hole “Out” is not a whole number"),
        ("3.5,4,1,,402,350", "hole “3.5” is not a whole number"),
        ("-3,4,1,,402,350", "hole “-3” is not a whole number"),
        ("1,4,1,,402,350", "hole 1 stands in the scorecard twice"),
        ("3,2,1,,402,350", "par 2 is not between 3 and 6"),
        ("3,7,1,,402,350", "par 7 is not between 3 and 6"),
        ("3,four,1,,402,350", "par “four” is not a whole number"),
        ("3,4,37,,402,350", "stroke index 37 is not between 1 and 36"),
        ("3,4,1,,nan,350", "the length “nan” from Heron is not a number"),
        ("3,4,1,,inf,350", "the length “inf” from Heron is not a number"),
        ("3,4,1,,4_0_0,350", "the length “4_0_0” from Heron is not a number"),
        ("3,4,1,,402 yd,350", "the length “402 yd” from Heron is not a number"),
        ("3,4,1,,-402,350", "the length -402 from Heron is not between 1 and 1000 yd"),
        ("3,4,1,,402,0", "the length 0 from Wren is not between 1 and 1000 yd"),
        ("3,4,1,,402,950", "the length 950 from Wren is not between 1 and 1000 yd"),
        ("3,4,1,,402,350,1", "7 cells where the first line has 6"),
        ("3,4,1", "only 3 cells where the first line has 6"),
        ('3,4,1,,"402,5",350', "the length “402,5” from Heron is not a number"),
        ("٣,4,1,,402,350", "hole “٣” is not a whole number"),
    ],
)
def test_a_bad_row_is_named_and_left_out(tmp_path, row, reason):
    found = card(tmp_path, CARD + row + "\n4,5,3,,500,\n")
    assert found.problems == ((4, reason),)
    assert [hole.number for hole in found.holes] == [1, 2, 4]
    with pytest.raises(YardwrightError, match="line 4: ") as caught:
        refuse_bad_rows(found, "card.csv")
    assert reason in str(caught.value)


@pytest.mark.parametrize(
    ("text", "part"),
    [
        ("", "is empty"),
        ("\n ,\n", "is empty"),
        ("par,Heron\n4,402\n", "no column “hole”"),
        ("hole,Heron,Heron\n1,402,400\n", "two columns “Heron”"),
        ("hole,par,Par\n1,4,4\n", "two columns “par”"),
        ("hole,,Heron\n1,,402\n", "no heading"),
        ("hole,par\n", "no hole"),
        (b"hole,par\n1,4\xff\n", "not text in UTF-8"),
        (b"hole,par\n1,\x004\n", "not text"),
        ('hole,par\n1,"4\n', "not a CSV file"),
        ("hole,par\n1,4\n".encode("utf-16"), "not text"),
    ],
)
def test_a_file_that_is_no_scorecard(tmp_path, text, part):
    with pytest.raises(YardwrightError, match=part):
        card(tmp_path, text)


def test_a_file_that_is_not_there(tmp_path):
    with pytest.raises(YardwrightError, match="cannot be read"):
        read_scorecard(str(tmp_path / "none.csv"))
    with pytest.raises(YardwrightError, match="cannot be read"):
        read_scorecard(str(tmp_path))


def a_course(unit="yd", names=("Heron", "Wren"), yards=None, hole_name="Burn"):
    return Course(
        "Larkmere",
        "EPSG:32630",
        holes=(Hole(1, name=hole_name, par=4, stroke_index=7), Hole(2)),
        tee_sets=tuple(TeeSet(name, sort=place) for place, name in enumerate(names, 1)),
        scorecard=yards or {(1, names[0]): 402.0, (2, names[-1]): 350 / 0.9144},
        settings=Settings(unit=unit),
    )


@pytest.mark.parametrize("unit", ["yd", "m"])
def test_written_text(tmp_path, unit):
    path = tmp_path / "card.csv"
    write_scorecard(str(path), a_course(unit))
    lines = path.read_bytes().decode("utf-8").split("\n")
    assert (
        lines
        == {
            "yd": ["hole,par,stroke_index,name,Heron,Wren", "1,4,7,Burn,402,", "2,,,,,382.764654418", ""],
            "m": ["hole,par,stroke_index,name,Heron m,Wren m", "1,4,7,Burn,367.5888,", "2,,,,,350", ""],
        }[unit]
    )


text = (
    st.text(st.characters(blacklist_categories=("Cs", "Cc")), min_size=1, max_size=12)
    .map(str.strip)
    .filter(bool)
)


@given(
    names=st.lists(text, min_size=1, max_size=4, unique=True),
    hole_name=text,
    unit=st.sampled_from(["yd", "m"]),
    length=st.floats(1, 1000),
)
def test_there_and_back(tmp_path_factory, names, hole_name, unit, length):
    from yardwright.store.scorecard import _KNOWN
    from yardwright.store.separated import key_of

    if any(key_of(name) in _KNOWN or key_of(name).removesuffix("_m") in _KNOWN for name in names):
        return
    path = tmp_path_factory.mktemp("card") / "card.csv"
    course = a_course(unit, names, {(1, names[-1]): length}, hole_name)
    write_scorecard(str(path), course)
    back = read_scorecard(str(path))
    assert back.problems == ()
    assert back.holes == course.holes
    assert [tee_set.name for tee_set in back.tee_sets] == names
    assert dict(back.yards) == pytest.approx(dict(course.scorecard), abs=1e-8)


def test_a_tee_set_that_would_be_another_column(tmp_path):
    path = tmp_path / "card.csv"
    with pytest.raises(YardwrightError, match="tee set named “Par”"):
        write_scorecard(str(path), a_course(names=("Par",)))
    assert not path.exists()


def test_a_tee_set_whose_name_ends_like_metres(tmp_path):
    """“Men m” would be read as the tee set “Men” in metres, so it is written as “Men m m”, in metres."""
    path = tmp_path / "card.csv"
    course = a_course(names=("Men m", "-Back", "=sum(a1)"), yards={(1, "Men m"): 400.0, (1, "-Back"): 410.0})
    write_scorecard(str(path), course)
    assert path.read_text("utf-8").startswith("hole,par,stroke_index,name,Men m m,'-Back,'=sum(a1)\n")
    back = read_scorecard(str(path))
    assert [tee_set.name for tee_set in back.tee_sets] == ["Men m", "-Back", "=sum(a1)"]
    assert dict(back.yards) == pytest.approx(dict(course.scorecard), abs=1e-8)
