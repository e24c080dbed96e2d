"""The rooms of the house: who may import whom, and what may not be imported at QGIS's start."""

import ast
import os
import subprocess
import sys
from pathlib import Path

import pytest

PACKAGE = Path(__file__).resolve().parents[2] / "plugin" / "yardwright"

# Lower floors have lower figures; rooms of one floor do not know each other, save desk and processing,
# which nobody imports but the plugin itself.
FLOORS = {"model": 0, "measure": 1, "imagery": 1, "store": 2, "guide": 3, "processing": 4, "desk": 4}
WITHOUT_QGIS = ("model", "measure", "imagery")
# Beside the rooms: what all may use.
COMMON = {"", "compat", "resources"}

BLOCK = """
import sys

class Blocked:
    def find_spec(self, name, path=None, target=None):
        if name.split(".")[0] in {blocked!r}:
            raise ImportError(name + " is out of bounds here")

sys.meta_path.insert(0, Blocked())
"""


def sources():
    return sorted(PACKAGE.rglob("*.py"))


def module_name(path):
    parts = path.relative_to(PACKAGE.parent).with_suffix("").parts
    return ".".join(parts[:-1] if parts[-1] == "__init__" else parts)


def imported(path):
    """``(line, room)`` of every import of the package itself in a file, wherever it stands in it."""
    package = path.relative_to(PACKAGE).parts[:-1]
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            for alias in node.names:
                yield node.lineno, alias.name.split(".")[0] == "yardwright" and "absolute"
        elif isinstance(node, ast.ImportFrom) and node.level == 0:
            yield node.lineno, node.module.split(".")[0] == "yardwright" and "absolute"
        elif isinstance(node, ast.ImportFrom):
            base = package[: len(package) - node.level + 1]
            inside = (*base, *(node.module.split(".") if node.module else ()))
            for alias in node.names:
                full = (*inside, alias.name)
                yield node.lineno, full[0] if (PACKAGE / full[0]).is_dir() or len(inside) else alias.name


def run_python(code):
    environment = {**os.environ, "PYTHONPATH": str(PACKAGE.parent), "PYTHONDONTWRITEBYTECODE": "1"}
    return subprocess.run(
        [sys.executable, "-c", code],
        env=environment,
        capture_output=True,
        text=True,
        timeout=120,
        check=False,
    )


def test_no_import_climbs():
    wrong = []
    for path in sources():
        room = path.relative_to(PACKAGE).parts[0]
        if room not in FLOORS:
            continue
        for line, target in imported(path):
            if target == "absolute":
                wrong.append(f"{path}:{line} imports the package by its name")
            elif target in FLOORS and target != room and FLOORS[target] >= FLOORS[room]:
                wrong.append(f"{path}:{line} {room} imports {target}")
    assert not wrong, "\n".join(wrong)


def test_every_room_is_known():
    rooms = {path.name for path in PACKAGE.iterdir() if path.is_dir() and path.name[0] not in "._"}
    assert rooms - {"resources"} <= set(FLOORS)


def test_the_floors_rule_sees_a_climb(tmp_path, monkeypatch):
    """The check itself must be able to fail."""
    monkeypatch.setattr(sys.modules[__name__], "PACKAGE", tmp_path / "yardwright")
    room = tmp_path / "yardwright" / "measure"
    room.mkdir(parents=True)
    (tmp_path / "yardwright" / "store").mkdir()
    (room / "a.py").write_text(
        "def f():\n    from ..store.reading import read_course\n    return read_course\n"
    )
    with pytest.raises(AssertionError, match="measure imports store"):
        test_no_import_climbs()


def test_rooms_below_the_store_work_without_qgis():
    names = [module_name(path) for path in sources() if path.relative_to(PACKAGE).parts[0] in WITHOUT_QGIS]
    assert len(names) > 10
    code = (
        BLOCK.format(blocked={"qgis", "PyQt5", "PyQt6"})
        + f"""
import importlib
for name in {names!r}:
    importlib.import_module(name)
"""
    )
    done = run_python(code)
    assert done.returncode == 0, done.stderr


def test_qgis_start_imports_nothing_heavy():
    """What QGIS imports at its start must do without numpy and the like: they take longer than all else.

    QGIS 3.40 imports numpy and shapely itself; they are hidden from us afterwards.
    """
    heavy = {"numpy", "shapely", "pyproj", "scipy", "osgeo"}
    code = (
        "import sys, qgis.core, qgis.gui, qgis.PyQt.QtWidgets\n"
        + BLOCK.format(blocked=heavy)
        + f"sys.modules.update(dict.fromkeys({sorted(heavy)!r}))\n"
        + "import yardwright, yardwright.plugin, yardwright.processing.provider\n"
        + "import yardwright.desk.toolbar, yardwright.desk.courses, yardwright.desk.words\n"
    )
    done = run_python(code)
    assert done.returncode == 0, done.stderr


def test_missing_libraries_are_named_with_a_way_to_get_them():
    code = """
import sys
from importlib.machinery import PathFinder
real = PathFinder.find_spec
PathFinder.find_spec = lambda name, *rest: None if name in ("shapely", "osgeo") else real(name, *rest)
import yardwright
print(yardwright.missing_libraries())
for platform in ("win32", "darwin", "linux"):
    print(*yardwright.how_to_get(yardwright.missing_libraries(), platform))
"""
    done = run_python(code)
    names, windows, macos, linux = done.stdout.splitlines()
    assert names == "('shapely', 'GDAL for Python')"
    assert "OSGeo4W Shell" in windows and "python -m pip install shapely gdal" in windows
    assert "Contents/MacOS/bin/python3 -m pip install shapely gdal" in macos
    assert "apt install python3-shapely python3-gdal" in linux
