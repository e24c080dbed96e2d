"""importnotes: waypoints, points with texts and photographs become notes of the nearest hole, each once.

Hole 1 plays due north from the course's origin; hole 3 has no line. Exif's sense of its fields: Exif 2.3 (CIPA
DC-008-2012), 4.6.6: GPSLatitudeRef N or S, GPSLongitudeRef E or W, GPSImgDirection in degrees from true (T) or
magnetic (M) north.
"""

import json

import numpy as np
import pytest
from osgeo import gdal
from pyproj import Transformer

from tests.processing.test_pins import course_file, run, small_course, written  # noqa: F401  the fixture

TO_DEGREES = Transformer.from_crs("EPSG:32630", "EPSG:4326", always_xy=True)


def degrees_at(east, north):
    """Longitude and latitude of a place of the course, in yards."""
    return TO_DEGREES.transform(*small_course().at(east, north))


def notes(course):
    from yardwright.store.course_file import open_course
    from yardwright.store.field_notes import read_notes

    with open_course(str(course)) as layers:
        return read_notes(layers)


def write_photograph(path, east, north, more=None):
    """A JPEG with a position, written by GDAL."""
    longitude, latitude = degrees_at(east, north)

    def sexagesimal(value):
        value = abs(value)
        degrees, minutes = int(value), int(value % 1 * 60)
        seconds = round((value * 60 % 1) * 60, 4)
        return f"({degrees}) ({minutes}) ({seconds})"

    image = gdal.GetDriverByName("MEM").Create("", 32, 24, 3)
    for band in (1, 2, 3):
        image.GetRasterBand(band).WriteArray(np.full((24, 32), 80 * band, np.uint8))
    values = {
        "EXIF_GPSLatitude": sexagesimal(latitude),
        "EXIF_GPSLatitudeRef": "N" if latitude > 0 else "S",
        "EXIF_GPSLongitude": sexagesimal(longitude),
        "EXIF_GPSLongitudeRef": "E" if longitude > 0 else "W",
        "EXIF_DateTimeOriginal": "2025:06:01 09:30:00",
        **(more or {}),
    }
    for name, value in values.items():
        image.SetMetadataItem(name, value)
    gdal.GetDriverByName("JPEG").CreateCopy(str(path), image, 0, ["WRITE_EXIF_METADATA=YES"])
    (path.parent / (path.name + ".aux.xml")).unlink(missing_ok=True)


def gpx(*points):
    made = "".join(
        f'<wpt lat="{degrees_at(*at)[1]:.8f}" lon="{degrees_at(*at)[0]:.8f}">'
        f"<time>2025-05-30T08:15:00Z</time><name>{name}</name><desc>{text}</desc></wpt>"
        for at, name, text in points
    )
    return f'<gpx version="1.1" creator="t" xmlns="http://www.topografix.com/GPX/1/1">{made}</gpx>'


def test_waypoints_become_notes_of_their_holes(course_file, tmp_path):  # noqa: F811
    path = written(
        tmp_path,
        gpx(
            ((3, 200), "001", "soft here"), ((2, 300), "Ridge", "hides the flag"),
            ((5000, 5000), "002", "car park"), ((0, 100), "003", ""),
        ),
        "phone.gpx",
    )  # fmt: skip
    results, ok, log = run("importnotes", COURSE=str(course_file), SOURCE=path, FROM="player")
    assert ok, log
    assert (results["ADDED"], results["KNOWN"]) == (4, 0)
    found = {note.text: note for note in notes(course_file)}
    assert found["soft here"].hole == 1 and found["Ridge: hides the flag"].hole == 1
    assert found["car park"].hole is None
    one = found["soft here"]
    assert (one.source, one.written) == ("player", "2025-05-30")
    assert np.hypot(*np.subtract(one.place, small_course().at(3, 200))) < 0.01
    # A second time nothing is doubled.
    results, _, _ = run("importnotes", COURSE=str(course_file), SOURCE=path, FROM="player")
    assert (results["ADDED"], results["KNOWN"]) == (0, 4) and len(notes(course_file)) == 4


def test_points_of_geojson(course_file, tmp_path):  # noqa: F811
    def point(at, **values):
        return {"type": "Feature", "properties": values, "geometry": {"type": "Point", "coordinates": at}}

    rows = [point(degrees_at(1, 150), comment="Wet =after rain", date="2025-04-02"), point(degrees_at(0, 10))]
    path = written(tmp_path, json.dumps({"type": "FeatureCollection", "features": rows}), "n.geojson")
    results, ok, log = run("importnotes", COURSE=str(course_file), SOURCE=path)
    assert ok and results["ADDED"] == 1 and "it has no text" in log
    (note,) = notes(course_file)
    assert (note.text, note.written, note.source) == ("Wet =after rain", "2025-04-02", "own visit")


def test_photographs_know_where_and_whither(course_file, tmp_path):  # noqa: F811
    folder = tmp_path / "pictures"
    folder.mkdir()
    write_photograph(
        folder / "a.jpg", 4, 250, {"EXIF_GPSImgDirection": "(12.5)", "EXIF_GPSImgDirectionRef": "T"}
    )
    write_photograph(
        folder / "b.jpg", 0, 100, {"EXIF_GPSImgDirection": "(90)", "EXIF_GPSImgDirectionRef": "M"}
    )
    gdal.GetDriverByName("JPEG").CreateCopy(
        str(folder / "c.jpg"), gdal.GetDriverByName("MEM").Create("", 8, 8, 3)
    )
    (folder / "d.jpg").write_bytes(b"no picture")
    (folder / "readme.txt").write_text("none")
    results, ok, log = run("importnotes", COURSE=str(course_file), SOURCE=str(folder))
    assert ok, log
    assert results["ADDED"] == 2 and "c.jpg: it has no position" in log and "d.jpg" in log
    by_name = {note.picture: note for note in notes(course_file)}
    # Kept from the course's own folder, below which they lie.
    a, b = by_name["pictures/a.jpg"], by_name["pictures/b.jpg"]
    assert a.hole == 1 and a.looks_towards == pytest.approx(12.5) and b.looks_towards is None
    assert a.written == "2025-06-01"
    assert np.hypot(*np.subtract(a.place, small_course().at(4, 250))) < 0.05


@pytest.mark.parametrize(
    "name, text, told",
    [
        ("broken.gpx", "<gpx><wpt", "cannot be read"),
        ("words.txt", "soft", "holds no notes"),
        (
            "evil.gpx",
            '<!DOCTYPE gpx [<!ENTITY e SYSTEM "file:///etc/passwd">]><gpx version="1.1" creator="t" '
            'xmlns="http://www.topografix.com/GPX/1/1"><wpt lat="56" lon="-3"><desc>&e;</desc></wpt></gpx>',
            None,
        ),
    ],
)
def test_files_that_are_none(name, text, told, course_file, tmp_path):  # noqa: F811
    path = written(tmp_path, text, name)
    _, ok, log = run("importnotes", COURSE=str(course_file), SOURCE=path)
    if told:
        assert not ok and told in log
    # Nothing of another file comes in.
    assert not any("root" in note.text for note in notes(course_file))


def test_what_is_not_there_is_said(course_file, tmp_path):  # noqa: F811
    _, ok, log = run("importnotes", COURSE=str(course_file), SOURCE=str(tmp_path / "nowhere.gpx"))
    assert not ok and "is not there" in log
