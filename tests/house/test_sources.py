"""What the sources may not hold, and what checkers of sources say of them."""

import ast
import json
import re
import subprocess
import sys
import tokenize
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
PACKAGE = ROOT / "plugin" / "yardwright"
SOURCES = sorted(PACKAGE.rglob("*.py"))


def run(*command):
    return subprocess.run(
        [sys.executable, "-m", *command], cwd=ROOT, capture_output=True, text=True, timeout=300, check=False
    )


def found_in(source):
    """``(line, what)`` of each construct that has no place in shipped code."""
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Assert):
            yield node.lineno, "assert"
        elif isinstance(node, ast.ExceptHandler):
            if node.type is None:
                yield node.lineno, "bare except"
            if all(isinstance(line, (ast.Pass, ast.Continue)) for line in node.body) and _catches_all(node):
                yield node.lineno, "error swallowed"
        elif isinstance(node, ast.Raise) and "NotImplementedError" in ast.unparse(node):
            yield node.lineno, "not implemented"
    for number, line in enumerate(source.splitlines(), 1):
        if re.search(r"\b(TODO|FIXME|XXX)\b", line):
            yield number, "unfinished"


def _catches_all(handler):
    return handler.type is None or getattr(handler.type, "id", "") in ("Exception", "BaseException")


def test_the_search_finds_what_it_looks_for():
    bad = "try:\n    assert x\nexcept Exception:\n    pass\nraise NotImplementedError  # TODO\n"
    assert {what for _, what in found_in(bad)} == {
        "assert",
        "error swallowed",
        "not implemented",
        "unfinished",
    }


@pytest.mark.parametrize("path", SOURCES, ids=lambda path: str(path.relative_to(PACKAGE)))
def test_nothing_unfinished_or_swallowed(path):
    with tokenize.open(path) as file:
        assert not list(found_in(file.read()))


def test_enums_are_fully_scoped():
    """QGIS 4 (PyQt6) knows no ``Qt.UserRole``, only ``Qt.ItemDataRole.UserRole``."""
    wrong = []
    short = re.compile(r"\b(Qt\.(?!ItemDataRole|[A-Z]\w+\.)[A-Z]\w+|Qgis\.(Info|Warning|Critical|Success)\b)")
    for path in SOURCES:
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
            if short.search(line) and not line.lstrip().startswith("#") and "``" not in line:
                wrong.append(f"{path}:{number} {line.strip()}")
            if re.search(r"\b(from|import) PyQt[56]", line):
                wrong.append(f"{path}:{number} {line.strip()}")
    assert not wrong, "\n".join(wrong)


@pytest.mark.parametrize(
    "command", [("ruff", "check", "."), ("ruff", "format", "--check", ".")], ids=" ".join
)
def test_ruff(command):
    pytest.importorskip("ruff")
    done = run(*command)
    assert done.returncode == 0, done.stdout + done.stderr


def test_mypy():
    pytest.importorskip("mypy")
    done = run("mypy")
    assert done.returncode == 0, done.stdout + done.stderr


@pytest.fixture(scope="module")
def unpacked(tmp_path_factory):
    """The plugin as the plugin site gets to see it: what the zip holds."""
    folder = tmp_path_factory.mktemp("unpacked")
    command = [sys.executable, ROOT / "tools" / "package.py", folder]
    done = subprocess.run(command, capture_output=True, text=True, timeout=60, check=True)
    with zipfile.ZipFile(done.stdout.strip()) as archive:
        archive.extractall(folder)
    return folder / "yardwright"


def test_bandit(unpacked):
    """The plugin site refuses what bandit finds."""
    pytest.importorskip("bandit")
    done = run("bandit", "-q", "-r", str(unpacked), "-f", "json")
    found = json.loads(done.stdout)["results"]
    assert not [
        f"{one['filename']}:{one['line_number']} {one['test_id']} {one['issue_text']}" for one in found
    ]


def test_no_secrets(unpacked):
    """The plugin site refuses what detect-secrets finds."""
    pytest.importorskip("detect_secrets")
    done = run("detect_secrets", "scan", "--all-files", str(unpacked))
    found = json.loads(done.stdout)["results"]
    assert not [f"{name}:{one['line_number']} {one['type']}" for name, ones in found.items() for one in ones]
