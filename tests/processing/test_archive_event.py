"""archiveevent: what is unpacked elsewhere opens there and gives the same pages."""

import hashlib
import json
import os
import shutil
import time
import zipfile

import pypdf
from yardwright.model.event import Event
from yardwright.model.guide_pages import GuidePage

from tests.processing.test_import_notes import write_photograph
from tests.processing.test_listed_pages import sponsors_folder, write_png
from tests.processing.test_make_guide import (  # noqa: F401 - fixtures
    course_file,
    guide,
    image,
    known,
    own_cache,
    run,
)


def test_an_event_opens_elsewhere_as_it_was(known, image, tmp_path):  # noqa: F811
    """The guide made from the unpacked archive has the same pages, drawing by drawing, as the first."""
    from yardwright.store.course_file import open_course
    from yardwright.store.events import read_events, write_event
    from yardwright.store.field_notes import read_notes
    from yardwright.store.guide_pages import write_guide_pages
    from yardwright.store.reading import read_course

    write_png(os.path.join(sponsors_folder(known), "tern.png"), 200, 300)
    photographs = tmp_path / "camera"
    photographs.mkdir()
    write_photograph(photographs / "a.jpg", 4, 250)
    assert run("importnotes", COURSE=known, SOURCE=str(photographs))[1]
    with open_course(known) as layers:
        write_event(layers, Event("Another Cup"))
        pages = [GuidePage(kind, event="Heron Cup") for kind in ("cover", "holes", "pins")]
        write_guide_pages(
            layers, "Heron Cup", [*pages, GuidePage("sponsor", source="tern.png", event="Heron Cup")]
        )
    made = tmp_path / "made"
    made.mkdir()
    _, ok, log, first = guide(known, image, made, EVENT="Heron Cup", form="pages")
    assert ok, log
    path = str(tmp_path / "cup.zip")
    results, ok, log = run(
        "archiveevent", COURSE=known, EVENT="Heron Cup", IMAGES=[image], GUIDES=str(made), OUTPUT=path
    )
    assert ok, log
    with zipfile.ZipFile(path) as archive:
        names = set(archive.namelist())
        assert {
            "Larkmere.gpkg", "Larkmere_guide/tern.png", "images/flown.tif", "guides/guide.pdf",
            "photographs/a.jpg", "manifest.json", "read_me.txt",
        } <= names  # fmt: skip
        assert results["FILES"] == len(names) - 1
        sums = json.loads(archive.read("manifest.json"))["sha256"]
        assert set(sums) == names - {"manifest.json"}
        for name, one in sums.items():
            assert hashlib.sha256(archive.read(name)).hexdigest() == one
        assert not any(name.startswith("/") or ".." in name.split("/") for name in names)
        assert b"no survey" in archive.read("read_me.txt")
        elsewhere = tmp_path / "elsewhere" / "deep"
        archive.extractall(elsewhere)
    # What it was made from is gone.
    for lost in (known, image, os.path.splitext(known)[0] + "_guide", str(photographs)):
        shutil.rmtree(lost) if os.path.isdir(lost) else os.remove(lost)
    course = str(elsewhere / "Larkmere.gpkg")
    with open_course(course) as layers:
        assert [event.name for event in read_events(layers)] == ["Heron Cup"]
        (date,) = read_course(layers).images
        (note,) = read_notes(layers)
    assert date.source == "images/flown.tif" and note.picture == "photographs/a.jpg"
    _, ok, log, second = guide(
        course, str(elsewhere / "images" / "flown.tif"), tmp_path, EVENT="Heron Cup", form="pages"
    )
    assert ok, log
    one, other = (pypdf.PdfReader(name) for name in (first, second))
    assert len(one.pages) == len(other.pages)
    for a, b in zip(one.pages, other.pages):
        assert a.get_contents().get_data() == b.get_contents().get_data()


def test_what_is_not_there_is_said_and_nothing_written(known, tmp_path):  # noqa: F811
    path = tmp_path / "cup.zip"
    path.write_bytes(b"the last one")
    _, ok, log = run("archiveevent", COURSE=known, EVENT="Nobody's", OUTPUT=str(path))
    assert not ok and "There is no event" in log
    assert path.read_bytes() == b"the last one"
    _, ok, log = run("archiveevent", COURSE=known, EVENT="Heron Cup", OUTPUT=str(path))
    assert ok and "“flown” is not in the archive" in log
    with zipfile.ZipFile(path) as archive:
        assert archive.testzip() is None


def test_nothing_of_other_events_is_left_in_the_course_and_the_bytes_are_the_same(known, tmp_path):  # noqa: F811
    """SQLite leaves what is deleted in the file until it is packed anew (sqlite.org, VACUUM)."""
    from yardwright.store.course_file import open_course
    from yardwright.store.events import write_event

    with open_course(known) as layers:
        write_event(layers, Event("Secret Invitational", host="Nobody is to know of it"))
    with open(known, "rb") as file:
        assert b"Secret Invitational" in file.read()
    paths = [str(tmp_path / name) for name in ("one.zip", "two.zip")]
    for path in paths:
        _, ok, log = run("archiveevent", COURSE=known, EVENT="Heron Cup", OUTPUT=path)
        assert ok, log
        time.sleep(0.01)
    with zipfile.ZipFile(paths[0]) as archive:
        course = archive.read("Larkmere.gpkg")
    assert b"Heron Cup" in course
    assert b"Secret Invitational" not in course and b"Nobody is to know" not in course
    with open(paths[0], "rb") as one, open(paths[1], "rb") as two:
        assert one.read() == two.read()
