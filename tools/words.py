#!/usr/bin/env python3
"""Brings the translations up to date with the texts of the plugin: ``python3 tools/words.py [--check]``.

They are in ``plugin/yardwright/resources/words``, a file a language in the XML that Qt Linguist edits. Texts
that are gone from the sources go, new ones come in as unfinished. ``--check`` changes nothing and ends with 1
where something is to be done. For a new language, say which: ``python3 tools/words.py fr``.
"""

import ast
import os
import sys
from pathlib import Path
from xml.etree import ElementTree
from xml.sax.saxutils import escape

ROOT = Path(__file__).resolve().parent.parent
PACKAGE = ROOT / "plugin" / "yardwright"
WORDS = PACKAGE / "resources" / "words"

SPOKEN = {"tr": 0, "say": 0, "to_say": 0, "ask": 1, "ask_terrain": 0, "ask_tolerance": 0, "ask_figures": 2}
"""Which argument of a call of these is a text. Those that ask add a parameter to an algorithm, and have its
help."""
CLASS_TEXTS = ("TITLE", "SUMMARY", "RESULT")
"""Attributes of an algorithm that are texts."""


def collect(package=PACKAGE):
    """``({text: [files it stands in, relative to the package]}, [what is wrong])`` of all sources."""
    texts, wrong = {}, []
    for path in sorted(package.rglob("*.py")):
        name = path.relative_to(package).as_posix()
        found, mistakes = texts_of(path.read_text(encoding="utf-8"))
        for text in found:
            texts.setdefault(text, []).append(name)
        wrong += [f"{name}:{line}: {what}" for line, what in mistakes]
    return texts, wrong


def texts_of(source):
    """``({texts}, [(line, what is wrong)])`` of one source text."""
    texts, wrong = set(), []
    tree = ast.parse(source)
    marks = any(_called(node) == "to_say" for node in ast.walk(tree))
    for node in ast.walk(tree):
        if isinstance(node, ast.ClassDef):
            texts.update(_class_texts(node))
        name = _called(node)
        if name not in SPOKEN or len(node.args) <= SPOKEN[name]:
            continue
        given = node.args[SPOKEN[name]]
        if isinstance(given, ast.Constant) and isinstance(given.value, str):
            texts.add(given.value)
        elif not isinstance(given, (ast.Name, ast.Attribute, ast.Subscript)) or name == "to_say":
            wrong.append((node.lineno, f"{name}() wants a text as it stands, not one put together"))
        elif name == "say" and not marks and not isinstance(given, ast.Attribute):
            wrong.append((node.lineno, "say() of a variable whose texts no to_say() marks"))
    return texts - {""}, wrong


def _called(node):
    """The name of what a node calls, plain or of an object; "" for any other node."""
    if not isinstance(node, ast.Call):
        return ""
    return getattr(node.func, "id", None) or getattr(node.func, "attr", "")


def _class_texts(node):
    for line in node.body:
        if isinstance(line, ast.Assign) and isinstance(line.value, ast.Constant):
            names = [getattr(target, "id", "") for target in line.targets]
            if any(name in CLASS_TEXTS for name in names):
                yield line.value.value


def read(path):
    """``{text: (translation, whether it is unfinished)}`` of a file of words; {} where there is no file."""
    if not path.exists():
        return {}
    found = {}
    for message in ElementTree.parse(path).iter("message"):
        translation = message.find("translation")
        if translation is not None and translation.text:
            found[message.findtext("source")] = (translation.text, translation.get("type") is not None)
    return found


def written(language, texts, known):
    """The file of a language as text: ``texts`` as ``collect`` gives them, with what is ``known`` of them."""
    lines = [
        '<?xml version="1.0" encoding="utf-8"?>',
        "<!DOCTYPE TS>",
        f'<TS version="2.1" language="{language}" sourcelanguage="en">',
        "<context>",
        "    <name>Yardwright</name>",
    ]
    for text in sorted(texts):
        translated, unfinished = known.get(text, ("", True))
        unfinished = ' type="unfinished"' if unfinished or not translated else ""
        lines.append("    <message>")
        lines += [f'        <location filename="../../{name}"/>' for name in sorted(texts[text])]
        lines.append(f"        <source>{escape(text)}</source>")
        lines.append(f"        <translation{unfinished}>{escape(translated)}</translation>")
        lines.append("    </message>")
    return "\n".join([*lines, "</context>", "</TS>", ""])


def renew(path, texts):
    """``(new content of a file of words, texts without a finished translation)``."""
    known = read(path)
    left = [text for text in sorted(texts) if not known.get(text, ("", True))[0] or known[text][1]]
    return written(path.stem, texts, known), left


def main(arguments):
    check = "--check" in arguments
    texts, wrong = collect()
    if wrong:
        print(*wrong, sep="\n")
        return 1
    new = {WORDS / f"{language}.ts" for language in arguments if not language.startswith("-")}
    behind = False
    for path in sorted({*WORDS.glob("*.ts"), *new}):
        content, left = renew(path, texts)
        old = path.read_text(encoding="utf-8") if path.exists() else ""
        print(f"{path.stem}: {len(texts)} texts, {len(left)} untranslated" + _state(content == old, check))
        behind = behind or content != old
        if content != old and not check:
            beside = path.with_suffix(".ts.part")
            beside.write_bytes(content.encode())
            os.replace(beside, path)
    return int(check and behind)


def _state(same, check):
    if same:
        return ""
    return "; behind the sources, run tools/words.py" if check else "; brought up to date"


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
