"""A German QGIS: the toolbars, panels and dialogs speak German, and nothing is cut off."""

import importlib.util
import re
from pathlib import Path

import pytest
from desktop import ROOT, result_of, run_desktop
from test_desk_in_desktop import course_file  # noqa: F401  the fixture
from yardwright.model.kinds import FEATURE_KINDS

pytestmark = pytest.mark.desktop


def loaded(name, *place):
    spec = importlib.util.spec_from_file_location(name, Path(ROOT, *place))
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def english_of(words):
    """``{English text: pattern of it with values in its places}`` of what is another text in German."""
    found = {}
    for english, (german, _) in words.items():
        shown, meant = (re.sub(r"&(?=\w)", "", text) for text in (english, german))
        if meant != shown and re.search(r"[a-z]{3}", re.sub(r"{.*?}", "", shown)):
            parts = (re.escape(part) for part in re.split(r"{.*?}", shown))
            found[english] = re.compile(".+".join(parts), re.DOTALL)
    return found


@pytest.fixture
def images(tmp_path):
    """Images of the small course, each of one colour."""
    made = loaded("small_images", "tests", "desk", "test_dates.py")
    return [
        made.write_raster(tmp_path / "images" / f"larkmere_{day}.tif", made.COLOURS[day])
        for day in made.COLOURS
    ]


def test_the_desk_in_german(course_file, images, tmp_path):  # noqa: F811
    folder = tmp_path / "desktop"
    folder.mkdir()
    drive = ROOT / "tests" / "desktop" / "drive_german.py"
    given = {"YARDWRIGHT_COURSE": str(course_file), "YARDWRIGHT_IMAGES": ":".join(map(str, images))}
    found = result_of(run_desktop(drive, folder, environment=given, arguments=("--lang", "de")))

    assert any("In diesem Projekt ist kein Platz" in text for text in found["first"])
    said = found["said"]
    assert "Messen…" in said["menu"] or "&Messen…" in said["menu"]
    assert "Setzen: " in " ".join(said["drawing"])
    assert {"Maße", "Gezeichnet", "Unter dem Mauszeiger", "Scorekarte"} & set(said["hole_panel"])
    assert found["asks"] and "Darf ge&druckt werden" in said["take_up"]
    assert {"Entfernungen", "Grüns", "Bunker", "links"} <= set(said["measure"])

    words = loaded("words", "tools", "words.py")
    english = english_of(words.read(words.WORDS / "de.ts"))
    left = {}
    for window, texts in said.items():
        for text in texts:
            plain = re.sub(r"&(?=\w)", "", text)
            hits = [one for one, pattern in english.items() if pattern.fullmatch(plain)]
            # The kinds that an algorithm offers are codes, and some of them are English words too.
            if hits and text not in FEATURE_KINDS:
                left.setdefault(window, []).append((text, hits[0]))
    assert left == {}
    assert {window: cut for window, cut in found["no_room"].items() if cut} == {}
