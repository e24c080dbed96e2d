"""Facts of the package that the plugin site and QGIS rely on.

Source of the list of asked-for metadata: QGIS's PyQGIS cookbook, “Structuring Python plugins” (metadata.txt),
and the plugin site's rules on publishing (LICENSE in the package, no compiled files).
"""

import configparser
import hashlib
import importlib.util
import zipfile
from pathlib import Path
from xml.etree import ElementTree

import pytest

ROOT = Path(__file__).resolve().parents[2]
PACKAGE = ROOT / "plugin" / "yardwright"


@pytest.fixture(scope="module")
def package():
    spec = importlib.util.spec_from_file_location("package", ROOT / "tools" / "package.py")
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


@pytest.fixture
def metadata():
    parser = configparser.ConfigParser()
    parser.read(ROOT / "metadata.txt", encoding="utf-8")
    return parser["general"]


def test_metadata_at_the_root_is_the_package_s_own():
    link = ROOT / "metadata.txt"
    assert link.is_symlink()
    assert link.readlink() == Path("plugin/yardwright/metadata.txt")


@pytest.mark.parametrize(
    "name",
    [
        "name",
        "description",
        "version",
        "qgisMinimumVersion",
        "author",
        "email",
        "about",
        "tracker",
        "repository",
        "homepage",
        "icon",
    ],
)
def test_metadata_is_complete(metadata, name):
    assert metadata[name].strip()


def test_metadata_says_what_it_must(metadata):
    assert metadata["name"] == "Yardwright"
    assert metadata["qgisMinimumVersion"] == "3.22"
    assert metadata["qgisMaximumVersion"] == "4.99"
    assert metadata["hasProcessingProvider"] == "yes"
    assert (PACKAGE / metadata["icon"]).is_file()
    assert f"## [{metadata['version']}]" in (ROOT / "CHANGELOG.md").read_text(encoding="utf-8")
    for caution in ("no survey", "committee", "local rules", "ball flight"):
        assert caution in metadata["about"]


def test_licence_is_the_second_gpl():
    text = (ROOT / "LICENSE").read_text(encoding="utf-8")
    assert "GNU GENERAL PUBLIC LICENSE" in text
    assert "Version 2, June 1991" in text
    assert "END OF TERMS AND CONDITIONS" in text


def test_zip_holds_the_package_and_nothing_else(package, tmp_path):
    with zipfile.ZipFile(package.build(tmp_path)) as archive:
        names = archive.namelist()
        assert archive.testzip() is None
        assert archive.read("yardwright/LICENSE") == (ROOT / "LICENSE").read_bytes()
    assert {name.split("/")[0] for name in names} == {"yardwright"}
    assert {"yardwright/__init__.py", "yardwright/metadata.txt"} <= set(names)
    unwanted = (".pyc", ".so", ".dll", ".dylib", ".pyd", ".exe", ".zip", ".whl")
    assert not [name for name in names if name.endswith(unwanted) or "__pycache__" in name or "/." in name]
    assert not [name for name in names if "test" in name.lower().split("/")]
    modules = {f"yardwright/{path.relative_to(PACKAGE).as_posix()}" for path in PACKAGE.rglob("*.py")}
    assert modules <= set(names)
    words = {name for name in names if name.startswith("yardwright/resources/words/")}
    assert "yardwright/resources/words/de.ts" in words
    assert {name.rsplit(".")[-1] for name in words} == {"ts"}


def test_zip_is_the_same_each_time(package, tmp_path):
    first, second = (package.build(tmp_path / name) for name in ("a", "b"))
    digests = {hashlib.sha256(path.read_bytes()).hexdigest() for path in (first, second)}
    assert len(digests) == 1


@pytest.mark.parametrize("path", sorted(PACKAGE.rglob("icons/*.svg")), ids=lambda path: path.name)
def test_icons_can_be_drawn(qgis_app, path):
    from qgis.PyQt.QtGui import QIcon

    assert ElementTree.parse(path).getroot().tag.endswith("svg")
    image = QIcon(str(path)).pixmap(24, 24).toImage()
    drawn = sum(image.pixelColor(x, y).alpha() > 127 for x in range(24) for y in range(24))
    assert drawn > 100
