#!/usr/bin/env python3
"""Builds the zip that QGIS installs: ``python3 tools/package.py [FOLDER]`` writes its zip there.

FOLDER is ``dist`` when not given. The same sources give the same bytes, whatever the clock and the user.
"""

import configparser
import os
import stat
import sys
import zipfile
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
PACKAGE = ROOT / "plugin" / "yardwright"
LEFT_OUT = {".pyc", ".pyo", ".orig", ".bak", ".swp"}
EPOCH = (1980, 1, 1, 0, 0, 0)


def version():
    """The version that metadata.txt states."""
    parser = configparser.ConfigParser()
    parser.read(PACKAGE / "metadata.txt", encoding="utf-8")
    return parser["general"]["version"]


def contents():
    """``(name in the zip, path)`` of every file of the plugin, sorted, the licence among them."""
    files = [path for path in PACKAGE.rglob("*") if path.is_file() and _belongs(path.relative_to(PACKAGE))]
    named = [(f"yardwright/{path.relative_to(PACKAGE).as_posix()}", path) for path in files]
    return sorted([*named, ("yardwright/LICENSE", ROOT / "LICENSE")])


def _belongs(path):
    """Whether a file of the package is the plugin's own, and no cache, back-up or hidden file."""
    hidden = any(part.startswith(".") or part == "__pycache__" for part in path.parts)
    return not hidden and path.suffix not in LEFT_OUT and not path.name.endswith("~")


def build(folder):
    """Write the zip into ``folder`` and return its path; an older one is replaced only when all went well."""
    folder = Path(folder)
    folder.mkdir(parents=True, exist_ok=True)
    target = folder / f"yardwright-{version()}.zip"
    beside = target.with_suffix(".zip.part")
    with zipfile.ZipFile(beside, "w") as archive:
        for name, path in contents():
            entry = zipfile.ZipInfo(name, EPOCH)
            entry.create_system = 3
            entry.external_attr = (stat.S_IFREG | 0o644) << 16
            entry.compress_type = zipfile.ZIP_DEFLATED
            archive.writestr(entry, path.read_bytes(), compresslevel=9)
    os.replace(beside, target)
    return target


if __name__ == "__main__":
    print(build(sys.argv[1] if len(sys.argv) > 1 else ROOT / "dist"))
