"""The plugin in the user's language: words from ``resources/words``, given to Qt while the plugin is loaded.

Qt reads translations in a compiled form only. It is made here from the words' XML each time QGIS starts,
which takes some milliseconds and spares the sources a binary file. The words are then Qt's own: texts may be
asked for in any thread, and no other text of QGIS passes through Python.
"""

import os
import struct

from qgis.core import Qgis, QgsApplication, QgsMessageLog
from qgis.PyQt.QtCore import QCoreApplication, QFile, QIODevice, QTranslator, QXmlStreamReader

from .model import words

CONTEXT = "Yardwright"
"""The context that ``desk.words.tr`` and the algorithms ask Qt in."""

WORDS = os.path.join(os.path.dirname(__file__), "resources", "words")

_MAGIC = bytes.fromhex("3cb86418caef9c95cd211cbf60a1bddd")
_HASHES, _MESSAGES = 0x42, 0x69
_END, _TRANSLATION, _SOURCE, _ENGLISH_CONTEXT, _COMMENT = 1, 3, 6, 7, 8


def speak_users_language(folder=WORDS):
    """Speak QGIS's language where there are words for it; a callable that goes back to English.

    folder: where the words of the languages lie, ``de.ts`` and so on. Words that cannot be read are told in
    the log of QGIS, and English is spoken.
    """
    path = path_of_words(users_language(), folder)
    if path is None:
        return lambda: None
    try:
        compiled = compile_words(read_words(path))
    except ValueError as error:
        QgsMessageLog.logMessage(
            f"The translation “{path}” cannot be read, so Yardwright speaks English: {error}",
            "Yardwright",
            Qgis.MessageLevel.Warning,
        )
        return lambda: None
    translator = QTranslator()
    translator.loadFromData(compiled)
    translator.compiled = compiled  # Qt reads it where it lies
    QCoreApplication.installTranslator(translator)
    words.speak(lambda text: QCoreApplication.translate(CONTEXT, text))

    def be_silent():
        words.speak()
        QCoreApplication.removeTranslator(translator)

    return be_silent


def users_language():
    """The language QGIS speaks, such as ``de`` or ``de_AT``: of ``--lang``, else of its settings."""
    return QgsApplication.instance().translation() or QgsApplication.locale()


def path_of_words(language, folder=WORDS):
    """The file with the words of a language, or of the one it is a variety of; None where there is none."""
    language = language.replace("-", "_")
    for name in dict.fromkeys((language, language.split("_")[0])):
        path = os.path.join(folder, f"{name}.ts")
        if name and os.path.isfile(path):
            return path
    return None


def read_words(path):
    """``{English: translated}`` of a file in the XML of Qt; what is not translated yet is left out.

    Raises ValueError when the file cannot be read to its end.
    """
    file = QFile(path)
    if not file.open(QIODevice.OpenModeFlag.ReadOnly):
        raise ValueError(file.errorString())
    try:
        return _read(QXmlStreamReader(file))
    finally:
        file.close()


def _read(xml):
    found, source = {}, ""
    while not xml.atEnd():
        xml.readNext()
        if not xml.isStartElement():
            continue
        name = xml.name()
        if name == "source":
            source = xml.readElementText()
        elif name == "translation":
            translated = xml.readElementText()
            if translated:
                found[source] = translated
    if xml.hasError():
        raise ValueError(f"{xml.errorString()} (line {xml.lineNumber()})")
    return found


def compile_words(found):
    """``{English: translated}`` as the bytes that ``QTranslator.loadFromData`` takes.

    They are a magic number and two parts, each a tag, a length and its content: the messages, and where each
    of them begins, sorted by the hash of its English text. Figures have their greatest byte first.
    """
    context = CONTEXT.encode()
    messages, places = bytearray(), []
    for english, translated in found.items():
        source = english.encode()
        places.append((_hash(source), len(messages)))
        for tag, content in (
            (_TRANSLATION, translated.encode("utf-16-be")),
            (_COMMENT, b""),
            (_SOURCE, source),
            (_ENGLISH_CONTEXT, context),
        ):
            messages += struct.pack(">BI", tag, len(content)) + content
        messages.append(_END)
    hashes = b"".join(struct.pack(">II", *place) for place in sorted(places))
    parts = ((_HASHES, hashes), (_MESSAGES, bytes(messages)))
    return _MAGIC + b"".join(struct.pack(">BI", tag, len(part)) + part for tag, part in parts)


def _hash(text):
    """The hash that executables in the ELF format use for names, as Qt does; never 0."""
    value = 0
    for byte in text:
        value = (value << 4) + byte
        top = value & 0xF0000000
        value = (value ^ (top >> 24)) & ~top
    return value or 1
