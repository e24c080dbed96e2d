"""Result tables: columns and decimals, cells no spreadsheet runs, names that stay in their folder."""

import csv
import math
import os
import sqlite3
import zipfile
from contextlib import closing
from pathlib import Path, PurePosixPath, PureWindowsPath
from xml.etree import ElementTree

import pytest
from hypothesis import given
from hypothesis import strategies as st
from yardwright.measure.rows import DistanceRow, DoglegRow, GreenRow, LengthRow, MarkerRow
from yardwright.model.errors import YardwrightError
from yardwright.store.cells import bare, guarded
from yardwright.store.tables import safe_file_name, write_tables

LENGTHS = (LengthRow, [LengthRow(7, "Heron", 367.5888, 0.2, 366.0, 1.5888, 4, "", "=cmd|' /C calc'!A0")])
MARKERS = (
    MarkerRow,
    [
        MarkerRow(
            7, "-3", 91.44, "middle", 87.8, 3.64, "off", 512345.67891, 6243210.5, 3.64, 359.999, None, ""
        )
    ],
)


def cells(path):
    with open(path, encoding="utf-8", newline="") as file:
        return list(csv.reader(file))


def test_columns_and_decimals(tmp_path):
    """402 yd are 367.5888 m at 0.9144 m a yard (international yard and pound agreement, 1959)."""
    (path,) = write_tables(str(tmp_path), {"lengths": LENGTHS}, "yd")
    assert path == str(tmp_path / "lengths.csv")
    head, row = cells(path)
    assert ",".join(head).startswith(
        "hole,tee_set,length_yd,plus_minus_yd,scorecard_yd,difference_yd,par,par_check"
    )
    assert row[:8] == ["7", "Heron", "402.00", "0.22", "400.26", "1.74", "4", ""]
    assert row[8] == "'=cmd|' /C calc'!A0"
    raw = (tmp_path / "lengths.csv").read_bytes()
    assert not raw.startswith(b"\xef\xbb\xbf") and b"\r" not in raw and raw.endswith(b"\n")


def test_metres(tmp_path):
    (path,) = write_tables(str(tmp_path), {"lengths": LENGTHS}, "m")
    head, row = cells(path)
    assert head[2:4] == ["length_m", "plus_minus_m"] and row[2:4] == ["367.59", "0.20"]


def test_coordinates_azimuths_and_gaps(tmp_path):
    (path,) = write_tables(str(tmp_path), {"markers": MARKERS}, "yd")
    row = dict(zip(*cells(path)))
    assert (row["proposed_x"], row["proposed_y"]) == ("512345.679", "6243210.500")
    assert row["move_azimuth"] == "0.00"  # 359.999, to two decimals, and below 360
    assert (row["move_m"], row["states_yd"], row["plus_minus_yd"]) == ("3.64", "100.00", "")
    assert row["marker_id"] == "-3"  # a number is no formula


def test_areas_angles_and_what_is_no_number(tmp_path):
    tables = {
        "greens": (GreenRow, [GreenRow(1, area=0.83612736 * 500, depth=math.nan, width=math.inf)]),
        "doglegs": (DoglegRow, [DoglegRow(1, turn=1, turn_angle=-0.0004)]),
        "distances": (DistanceRow, []),
    }
    greens, doglegs, distances = write_tables(str(tmp_path), tables, "yd")
    row = dict(zip(*cells(greens)))
    assert (row["area_sqyd"], row["depth_yd"], row["width_yd"]) == (
        "500.00",
        "",
        "",
    )  # 1 sq yd = 0.83612736 m2
    assert dict(zip(*cells(doglegs)))["turn_angle"] == "0.00"
    assert len(cells(distances)) == 1


def test_columns_of_the_interface(tmp_path):
    """Word for word those of design/interface.md, in their order; further ones may stand between."""
    named = {
        "lengths": (
            LengthRow,
            "hole, tee_set, length_yd, plus_minus_yd, scorecard_yd, difference_yd, par, par_check",
        ),
        "greens": (
            GreenRow,
            "hole, approach_from, approach_azimuth, depth_yd, width_yd, overall_depth_yd, overall_width_yd, "
            "area_sqyd, chords, remark",
        ),
        "distances": (
            DistanceRow,
            "hole, tee_set, kind, feature_id, label, side, reach_yd, clear_yd, enter_yd, leave_yd, aside_yd, "
            "station_near_yd, station_far_yd, short_of_green_yd, forced_carry, middle_yd, plus_minus_yd, "
            "remark",
        ),
        "markers": (
            MarkerRow,
            "hole, marker_id, states_yd, states_to, measured_yd, error_yd, verdict, proposed_x, proposed_y, "
            "move_m, move_azimuth",
        ),
    }
    paths = write_tables(str(tmp_path), {name: (row_type, []) for name, (row_type, _) in named.items()}, "yd")
    for path, (_, names) in zip(paths, named.values()):
        wanted = names.split(", ")
        assert [name for name in cells(path)[0] if name in wanted] == wanted


def sheet(path):
    """The cells of a workbook's one sheet, numbers as float, texts as str (ECMA-376, part 1, 18.3.1.4)."""
    space = {"s": "http://schemas.openxmlformats.org/spreadsheetml/2006/main"}
    with zipfile.ZipFile(path) as book:
        strings = ElementTree.fromstring(book.read("xl/sharedStrings.xml"))
        texts = ["".join(item.itertext()).strip() for item in strings.findall("s:si", space)]
        root = ElementTree.fromstring(book.read("xl/worksheets/sheet1.xml"))
    assert root.findall(".//s:f", space) == []  # no formula
    rows = []
    for row in root.findall(".//s:row", space):
        values = {}
        for cell in row.findall("s:c", space):
            value = cell.find("s:v", space).text
            column = cell.get("r").rstrip("0123456789")
            values[column] = texts[int(value)] if cell.get("t") == "s" else float(value)
        rows.append(values)
    return rows


def test_sheets_hold_numbers_as_numbers(tmp_path):
    (path,) = write_tables(str(tmp_path), {"lengths": LENGTHS}, "yd", ("xlsx",))
    head, row = sheet(path)
    assert (head["A"], head["C"]) == ("hole", "length_yd")
    assert (row["A"], row["B"], row["C"]) == (7.0, "Heron", 402.0)
    assert row["I"] == "'=cmd|' /C calc'!A0"


def test_geopackage_tables(tmp_path):
    (path,) = write_tables(str(tmp_path), {"markers": MARKERS}, "yd", ("gpkg",))
    with closing(sqlite3.connect(path)) as database:
        assert database.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
        row = database.execute("SELECT hole, marker_id, states_yd, plus_minus_yd FROM markers").fetchone()
    assert row == (7, "-3", 100.0, None)


def test_all_forms_and_again(tmp_path):
    folder = tmp_path / "new" / "folder"
    for _ in range(2):
        paths = write_tables(str(folder), {"lengths": LENGTHS}, "yd", ("csv", "xlsx", "gpkg"))
    assert [os.path.basename(path) for path in paths] == ["lengths.csv", "lengths.xlsx", "lengths.gpkg"]
    assert sorted(os.listdir(folder)) == sorted(os.path.basename(path) for path in paths)


def test_what_cannot_be_written(tmp_path):
    with pytest.raises(YardwrightError, match="cannot be written as “pdf”"):
        write_tables(str(tmp_path), {"lengths": LENGTHS}, "yd", ("pdf",))
    (tmp_path / "file").write_text("")
    with pytest.raises(YardwrightError, match="cannot be made"):
        write_tables(str(tmp_path / "file" / "folder"), {"lengths": LENGTHS}, "yd")
    (tmp_path / "lengths.csv").mkdir()
    with pytest.raises(YardwrightError, match="cannot be written"):
        write_tables(str(tmp_path), {"lengths": LENGTHS}, "yd")
    assert sorted(os.listdir(tmp_path)) == ["file", "lengths.csv"]


def test_an_old_table_stays_when_the_new_one_fails(tmp_path):
    (path,) = write_tables(str(tmp_path), {"lengths": LENGTHS}, "yd")
    before = Path(path).read_bytes()

    def rows():
        yield LENGTHS[1][0]
        raise ZeroDivisionError

    with pytest.raises(ZeroDivisionError):
        write_tables(str(tmp_path), {"lengths": (LengthRow, rows())}, "yd")
    assert Path(path).read_bytes() == before and os.listdir(tmp_path) == ["lengths.csv"]


def test_a_name_that_climbs_stays_in_the_folder(tmp_path):
    folder = tmp_path / "out"
    (path,) = write_tables(str(folder), {"../../lengths": LENGTHS}, "yd")
    assert os.path.dirname(os.path.realpath(path)) == os.path.realpath(folder)


@given(
    st.text(max_size=300)
    | st.sampled_from(["..", ".", "/", "\\", "nul.txt", "COM1", "a/../b", "~", "C:x", "é" * 200])
)
def test_file_names_name_a_file_of_the_folder(text):
    """One part on either system, none reserved (Microsoft, “Naming files, paths, and namespaces”), short."""
    name = safe_file_name(text)
    for flavour in (PurePosixPath, PureWindowsPath):
        path = flavour("folder") / name
        assert path.parent == flavour("folder") and path.name == name
    assert not PureWindowsPath(name).is_reserved()
    assert 0 < len(name.encode("utf-8")) <= 121
    assert name not in (".", "..") and not name.endswith((".", " ")) and name.isprintable()
    assert safe_file_name(name) == name


@given(st.text(max_size=20) | st.from_regex(r"['=+\-@\t ]{1,4}[0-9a-z]*"))
def test_guarded_cells_come_back(text):
    cell = guarded(text)
    assert bare(cell) == text
    if not _number(text):
        assert not cell.startswith(tuple("=+-@\t\r"))


def _number(text):
    try:
        float(text)
    except ValueError:
        return False
    return True
