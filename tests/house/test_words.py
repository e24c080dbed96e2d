"""The translations: complete, fit for their texts, and spoken by a QGIS of that language only."""

import importlib.util
import re
import string
import sys
from pathlib import Path

import pytest
from qgis.core import QgsApplication
from qgis.PyQt.QtCore import QCoreApplication, QTranslator

ROOT = Path(__file__).resolve().parents[2]
WORDS = ROOT / "plugin" / "yardwright" / "resources" / "words"


def loaded(name):
    spec = importlib.util.spec_from_file_location(name, ROOT / "tools" / f"{name}.py")
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


tool = loaded("words")
GERMAN = tool.read(WORDS / "de.ts")
"""``{English: (German, whether it is unfinished)}``."""


@pytest.fixture
def speaks(qgis_app, monkeypatch):
    """Begins to speak a language, given as QGIS names it, until the test is over."""
    from yardwright import translation

    undo = []

    def speak(language, folder=WORDS):
        monkeypatch.setattr(translation, "users_language", lambda: language)
        undo.append(translation.speak_users_language(str(folder)))
        return undo[-1]

    yield speak
    for be_silent in undo:
        be_silent()


@pytest.fixture
def messages(qgis_app):
    """What the log of QGIS is told."""
    told = []

    def listen(text, tag, level):
        told.append((tag, text))

    QgsApplication.messageLog().messageReceived.connect(listen)
    yield told
    QgsApplication.messageLog().messageReceived.disconnect(listen)


def translated(text):
    return QCoreApplication.translate("Yardwright", text)


# The tool


def test_files_are_up_to_date_and_finished():
    texts, wrong = tool.collect()
    assert wrong == []
    assert len(texts) > 400
    for path in WORDS.glob("*.ts"):
        content, left = tool.renew(path, texts)
        assert left == [], path.name
        assert content == path.read_text(encoding="utf-8"), f"{path.name}: run tools/words.py"


def test_texts_are_found_wherever_they_stand():
    source = """
class Algorithm:
    TITLE = "a title"
    ID = "no text"

    def f(self):
        self.ask(Parameter("NAME", self.tr("a parameter")), "its "
                 "help")
        tr(("in "
            "parts"))
        say("hole {number}", number=3)
        return [to_say("a code"), tr(self.TITLE), say(WORDS[code])]
"""
    texts, wrong = tool.texts_of(source)
    assert texts == {"a title", "a parameter", "its help", "in parts", "hole {number}", "a code"}
    assert wrong == []


@pytest.mark.parametrize(
    "call",
    ['tr(f"hole {n}")', 'say("hole " + n)', 'tr("a" if b else "c")', "to_say(word)", "say(word)"],
)
def test_what_cannot_be_translated_is_an_error(call):
    _, wrong = tool.texts_of(f"\n{call}\n")
    assert [line for line, _ in wrong] == [2]


def test_a_text_comes_stays_and_goes(tmp_path):
    path = tmp_path / "de.ts"
    texts = {"Hole <{}> & more": ["a.py"], "Green\nhere": ["a.py", "b.py"]}
    content, left = tool.renew(path, texts)
    assert left == ["Green\nhere", "Hole <{}> & more"]
    assert content.count('type="unfinished"') == 2 and content.index("Green") < content.index("Hole")
    path.write_text(
        content.replace('<translation type="unfinished"></translation>', "<translation>x</translation>", 1)
    )
    content, left = tool.renew(path, texts)
    assert left == ["Hole <{}> & more"] and "<translation>x</translation>" in content
    path.write_text(content)
    assert tool.renew(path, texts)[0] == content
    content, left = tool.renew(path, {"Hole <{}> & more": ["a.py"]})
    assert "Green" not in content and left == ["Hole <{}> & more"]


# The German


def places(text):
    """The places for values in a text, numbered where they are not named."""
    found, number = [], 0
    for _, name, form, _ in string.Formatter().parse(text):
        if name is not None:
            found.append((name or str(number), form))
            number += name == ""
    return sorted(found)


ENDS = {"”": "“", "“": "„"}


def unfit(english, german):
    """What is wrong with a translation, as a list of words."""
    wrong = []
    if "{" in english and places(german) != places(english):
        wrong.append("places")
    if german.count("\n") != english.count("\n"):
        wrong.append("lines")
    end = english[-1]
    ended = german[-1:] not in ".:;,!?…" or german.endswith(": {}")
    if end.isalnum() or end == "}" or end == "%":
        wrong += [] if ended else ["end"]
    elif german[-1:] != ENDS.get(end, end):
        wrong.append("end")
    if len(re.findall(r"&(?=\w)", german)) != len(re.findall(r"&(?=\w)", english)):
        wrong.append("letter of the menu")
    # What closes a quotation in German opens one in English.
    if german.count("„") != german.count("“") or "”" in german:
        wrong.append("quotation marks")
    if german != german.strip() or "  " in german or not german:
        wrong.append("blanks")
    return wrong


def test_each_translation_fits_its_text():
    assert len(GERMAN) > 400
    assert [english for english, (_, unfinished) in GERMAN.items() if unfinished] == []
    faults = {english: unfit(english, german) for english, (german, _) in GERMAN.items()}
    assert {english: fault for english, fault in faults.items() if fault} == {}


@pytest.mark.parametrize(
    ("english", "german", "fault"),
    [
        ("{} of {} holes", "{} Bahnen", "places"),
        ("{first} and {last}", "{first} und {letzte}", "places"),
        ("{:.2f} m", "{} m", "places"),
        ("One.\nTwo.", "Eins. Zwei.", "lines"),
        ("Draw it.", "Zeichnen", "end"),
        ("Draw it", "Zeichnen.", "end"),
        ("Measure…", "Messen...", "end"),
        ("&Hole", "Bahn", "letter of the menu"),
        ("The “hole”", "Die “Bahn“", "quotation marks"),
        ("Hole", "", "blanks"),
    ],
)
def test_an_unfit_translation_is_seen(english, german, fault):
    assert fault in unfit(english, german)


def test_places_may_change_their_order():
    assert unfit("{} of {} holes", "von {1} Bahnen {0}") == []


def test_letters_of_the_menu_are_taken_once():
    """The letters after & of what stands in one menu or window differ."""
    windows = ("desk/toolbar.py", "desk/measure_dialog.py", "desk/checks_panel.py", "desk/dates_panel.py")
    texts, _ = tool.collect()
    for window in windows:
        letters = [
            letter.lower()
            for english, files in texts.items()
            if window in files
            for letter in re.findall(r"&(\w)", GERMAN[english][0])
            if english != "&Yardwright"
        ]
        assert len(letters) > 1 and len(letters) == len(set(letters)), window


# The plugin speaks


def test_qt_speaks_every_text(speaks):
    speaks("de")
    assert [english for english, (german, _) in GERMAN.items() if translated(english) != german] == []
    assert translated("No such text") == "No such text"
    assert QCoreApplication.translate("Another", "Hole") == "Hole"


def test_rooms_below_speak_too_and_all_fall_silent(speaks):
    from yardwright.model.words import say, to_say

    be_silent = speaks("de")
    assert say("Hole {number} is not in the course.", number=7) == "Bahn 7 gibt es auf dem Platz nicht."
    assert to_say("Hole") == "Hole" and say(to_say("Hole")) == "Bahn"
    be_silent()
    assert say("Hole {number} is not in the course.", number=7) == "Hole 7 is not in the course."
    assert translated("Hole") == "Hole"


@pytest.mark.parametrize(
    ("language", "hole"),
    [("de", "Bahn"), ("de_AT", "Bahn"), ("de-CH", "Bahn"), ("fr", "Hole"), ("en_US", "Hole"), ("C", "Hole")],
)
def test_a_variety_of_a_language_and_one_without_words(speaks, language, hole):
    speaks(language)
    assert translated("Hole") == hole


def test_the_language_of_qgis_is_asked_for(qgis_app, monkeypatch):
    from yardwright.translation import users_language

    class Application:
        def translation(self):
            return "de_AT"

    monkeypatch.setattr(QgsApplication, "instance", Application)
    assert users_language() == "de_AT"
    monkeypatch.setattr(Application, "translation", lambda self: "")
    monkeypatch.setattr(QgsApplication, "locale", lambda: "fr")
    assert users_language() == "fr"


@pytest.mark.parametrize(
    "content", ["<TS><context><message>", "no words", "", "<TS><context></message></context></TS>"]
)
def test_a_broken_file_means_english_and_a_line_in_the_log(speaks, messages, tmp_path, content):
    from yardwright.model.words import say

    (tmp_path / "de.ts").write_text(content)
    speaks("de", tmp_path)
    assert translated("Hole") == "Hole" and say("Hole") == "Hole"
    ((tag, text),) = messages
    assert tag == "Yardwright" and "de.ts" in text and "speaks English" in text


def test_compiled_words_are_found_by_qt(qgis_app):
    """Texts with the same hash are told apart; long ones and letters from beyond the first 65,536 come through."""
    from yardwright.translation import _hash, compile_words

    # The hash shifts by 4 bits a letter: one more here is sixteen fewer there.
    assert _hash(b"Bq") == _hash(b"Ca")
    found = {"Bq": "eins", "Ca": "zwei", "Depth “×”\n…": "Tiefe „×“\n𝄞", "x" * 5000: "y" * 9000}
    data, translator = compile_words(found), QTranslator()
    assert translator.loadFromData(data) and not translator.isEmpty()
    QCoreApplication.installTranslator(translator)
    try:
        assert {english: translated(english) for english in found} == found
        assert translated("Cb") == "Cb" and QCoreApplication.translate("Another", "Bq") == "Bq"
    finally:
        QCoreApplication.removeTranslator(translator)


def test_the_plugin_speaks_while_it_is_loaded(qgis_app, monkeypatch):
    """German from the first thing that is added on; English again at the end."""
    from yardwright import classFactory, translation
    from yardwright.model.words import say

    monkeypatch.setattr(translation, "users_language", lambda: "de_DE")
    plugin = classFactory(None)
    plugin.initProcessing()
    try:
        provider = QgsApplication.processingRegistry().providerById("yardwright")
        assert provider.longName() == "Yardwright (Entfernungsbuch eines Golfplatzes)"
        titles = {one.name(): one.displayName() for one in provider.algorithms()}
        assert titles["measurecourse"] == "Platz messen"
        asked = provider.algorithm("startcourse").parameterDefinition("SCORECARD")
        assert asked.description() == "Scorekarte" and asked.help().startswith("Eine CSV-Datei")
        assert "Diesem QGIS fehlt numpy" in say(
            "This QGIS lacks {names}, without which nothing can be measured.", names="numpy"
        )
    finally:
        plugin.unload()
    assert translated("Hole") == say("Hole") == "Hole"


def test_the_desk_shows_german(speaks, qgis_iface, qgis_new_project):
    from yardwright.desk.toolbar import CourseTools

    speaks("de")
    tools = CourseTools(qgis_iface)
    try:
        action = tools.actions["measure"]
        assert action.text() == "&Messen…"
        assert action.toolTip().startswith("Die Maße einer Bahn neben ihrer Zeichnung sehen (Alt+Y, D)")
        assert "In diesem Projekt ist kein Platz" in action.toolTip()
        assert tools.hole_box.itemText(0) == "Keine Bahn"
        assert tools.drawing.actions["draw_clicks"].text() == "Gerade Seiten von Klick zu Klick"
    finally:
        tools.remove()


def test_english_needs_no_words(qgis_app, monkeypatch):
    """Where QGIS speaks English nothing is read, and nothing is given to Qt."""
    from yardwright import translation

    def fail(*_):
        raise AssertionError("words were read")

    monkeypatch.setattr(translation, "users_language", lambda: "en_GB")
    monkeypatch.setattr(translation, "read_words", fail)
    translation.speak_users_language()()
    assert sys.modules["yardwright.model.words"].say("{n} yd", n=5) == "5 yd"
