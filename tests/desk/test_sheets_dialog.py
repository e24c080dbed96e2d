"""The dialog of an event's sheets: the page shown is the page printed, and only what is asked for is written."""

import re
import subprocess
from dataclasses import replace
from pathlib import Path

import pytest
from qgis.core import QgsProject
from qgis.PyQt.QtCore import QUrl
from qgis.PyQt.QtGui import QColor, QDesktopServices
from qgis.PyQt.QtWidgets import QFileDialog, QPushButton

from tests.desk.test_drawing import drawing  # noqa: F401  the fixture
from tests.desk.test_event_panel import panel, type_in  # noqa: F401  the fixture
from tests.desk.test_toolbar import iface  # noqa: F401  the fixture


@pytest.fixture
def dialog(panel, qtbot):  # noqa: F811
    """On round 1 of the Heron Cup, with a pin on holes 1 and 2; hole 3 has no green, round 2 no pin."""
    from yardwright.desk.sheets_dialog import SheetsDialog

    type_in(panel, 1, on="10", off="5", off_from="left")
    type_in(panel, 2, on="12", off="0", off_from="centre")
    dialog = SheetsDialog(panel, panel.in_hand, panel.in_hand.event_in_hand())
    dialog.show()
    qtbot.waitExposed(dialog)
    dialog.resize(1040, 760)
    yield dialog
    dialog.reject()
    dialog.deleteLater()


def remarks(dialog):
    return [dialog.remarks.item(row).text() for row in range(dialog.remarks.count())]


def pdf_text(path):
    return subprocess.run(
        ["pdftotext", "-layout", path, "-"], capture_output=True, text=True, check=True
    ).stdout


def dots_per_mm(dialog):
    """How large the page is shown, across and down."""
    size, page = dialog.view.label.pixmap().size(), dialog.view.pages[dialog.view.number]
    return size.width() / page.width, size.height() / page.height


def test_it_begins_with_the_round_in_hand(dialog):
    assert dialog.kind_box.count() == 5 and dialog.kind_box.currentData() == "greens"
    assert dialog.round_box.currentData() == 1 and dialog.page_box.currentText() == "A4, 210 × 297 mm"
    assert dialog.round_box.isEnabled() and not dialog.hole_box.isEnabled()
    assert dialog.sheet.title == "Heron Cup: Round 1"
    assert any("hole 3 has no green" in text for text in remarks(dialog))
    assert any("fewer than nine greens" in text for text in remarks(dialog))


def test_the_whole_page_is_shown_and_larger_when_asked(dialog, qtbot):
    across, down = dots_per_mm(dialog)
    assert across == pytest.approx(down, rel=0.01)
    assert dialog.view.label.height() <= dialog.view.height()
    picture = dialog.view.label.pixmap().toImage()
    # The black of a hole's number and the white of the paper.
    across_it = range(0, picture.width(), 3)
    greys = {QColor(picture.pixel(x, y)).lightness() for x in across_it for y in range(60)}
    assert min(greys) < 60 and max(greys) == 255
    dialog.wide_button.click()
    assert dots_per_mm(dialog)[0] > 1.2 * across
    assert dialog.view.label.width() <= dialog.view.viewport().width()
    dialog.wide_button.click()
    assert dots_per_mm(dialog)[0] == pytest.approx(across)
    dialog.resize(dialog.width() - 200, dialog.height() - 150)
    qtbot.waitUntil(lambda: dots_per_mm(dialog)[0] < across, timeout=20_000)


def test_the_picture_is_the_page(qgis_app):
    """A square of 20 mm at 30 mm from the left and 40 from the top, at 254 dpi ten dots a millimetre."""
    from yardwright.desk.sheets_dialog import picture_of
    from yardwright.guide.sheet_parts import Page, box_area

    picture = picture_of(Page(100.0, 150.0, (box_area(30, 40, 50, 60, "#000000"),)), 254)
    assert (picture.width(), picture.height()) == (1000, 1500)
    black = [(x, y) for x in range(5, 1000, 10) for y in range(5, 1500, 10) if not picture.pixel(x, y) & 255]
    assert (min(black), max(black)) == ((305, 405), (495, 595))


def test_letters_are_as_large_as_on_paper(qgis_app):
    """A capital of Arial and its like is about 0.72 of its size: 20 pt are 7.06 mm, the H 5.1 mm."""
    from yardwright.desk.sheets_dialog import picture_of
    from yardwright.guide.sheet_parts import Page, Text

    page = Page(60.0, 40.0, (Text(10.0, 30.0, "H", 20.0, True),))
    for dpi in (72, 127, 254):
        picture = picture_of(page, dpi)
        rows = [
            y
            for y in range(picture.height())
            if any(picture.pixel(x, y) & 255 < 128 for x in range(picture.width()))
        ]
        assert (len(rows) / dpi * 25.4) == pytest.approx(5.1, abs=0.35), dpi
        assert (rows[-1] + 1) / dpi * 25.4 == pytest.approx(30.0, abs=0.4), dpi


def test_every_kind_of_sheet_and_its_own_page(dialog):
    dialog.choose("hole")
    assert dialog.page_box.currentData() == "A6" and dialog.hole_box.isEnabled()
    assert not dialog.round_box.isEnabled() and remarks(dialog) == []
    assert dialog.sheet.title == "Heron Cup: Hole 1"
    dialog.choose("hole", 2, "A4")
    assert any("fewer than nine greens" in text for text in remarks(dialog))
    dialog.choose("audit")
    assert dialog.page_box.currentData() == "A4" and not dialog.hole_box.isEnabled()
    dialog.choose("greens", page="phone")
    dialog.choose("hole")
    assert dialog.page_box.currentData() == "A4" and dialog.number() == 2
    dialog.choose("greens")
    assert dialog.page_box.currentData() == "phone" and dialog.number() == 1
    dialog.choose("table")
    assert dialog.view.pages and any("hole 3 has no pin" in text for text in remarks(dialog))


def test_the_boxes_are_followed(dialog, qtbot):
    box = dialog.round_box
    box.setCurrentIndex(box.findData(2))
    box.activated.emit(box.currentIndex())
    assert dialog.sheet.title == "Heron Cup: Round 2"
    assert [text for text in remarks(dialog) if "pin" in text] == ["round 2 has no pin yet"]


def test_what_cannot_be_made_says_why(dialog):
    dialog.choose("tees")
    assert "No tee is set for round 1." in dialog.view.label.text()
    assert dialog.sheet is None and not dialog.save_button.isEnabled() and dialog.save_button.toolTip()
    dialog.choose("hole", 3)
    assert "Hole 3 has no green to show." in dialog.view.label.text()
    dialog.choose("hole", 1)
    assert dialog.view.pages and dialog.save_button.isEnabled()


def test_leafing(dialog):
    from yardwright.guide.sheets import pin_sheet

    sheets = dialog.sheets
    sheet = pin_sheet(sheets.course, sheets.event, 1, sheets.pins(), "A6", sheets.index, per_page=1)
    sheets.sheet = lambda *given: sheet
    dialog.choose("greens")
    count = len(sheet.pages)
    assert count > 1 and dialog.leafing.label.text() == f"Page 1 of {count}"
    assert not dialog.leafing.back_button.isEnabled()
    first = dialog.view.label.pixmap().toImage()
    for _ in range(count + 1):
        dialog.leafing.on_button.click()
    assert (
        dialog.leafing.label.text() == f"Page {count} of {count}" and not dialog.leafing.on_button.isEnabled()
    )
    assert dialog.view.label.pixmap().toImage() != first
    dialog.leafing.back_button.click()
    assert dialog.leafing.label.text() == f"Page {count - 1} of {count}"


def test_saved_beside_the_project_and_offered_to_be_opened(dialog, monkeypatch, tmp_path):
    QgsProject.instance().setFileName(str(tmp_path / "larkmere.qgz"))
    opened, proposed = [], []
    path = tmp_path / "pins & more.pdf"

    def choose(parent, title, where, files):
        proposed.append(where)
        return str(path.with_suffix("")), files

    monkeypatch.setattr(QFileDialog, "getSaveFileName", choose)
    monkeypatch.setattr(QDesktopServices, "openUrl", lambda url: opened.append(url) or True)
    dialog.choose("table")
    dialog.save_button.click()
    assert proposed == [str(tmp_path / "Heron Cup_round_1_table.pdf")]
    assert re.search(r"^ *1 +10 +5 +from left", pdf_text(str(path)), re.MULTILINE)
    item = dialog.bar.currentItem()
    assert (
        f'href="{QUrl.fromLocalFile(str(path)).toString(QUrl.ComponentFormattingOption.FullyEncoded)}"'
        in (item.text())
    )
    assert "pins &amp; more.pdf" in item.text()
    item.findChild(QPushButton).click()
    assert opened == [QUrl.fromLocalFile(str(path))]


def test_a_file_dialog_left_writes_nothing(dialog, monkeypatch, tmp_path):
    QgsProject.instance().setFileName(str(tmp_path / "larkmere.qgz"))
    before = sorted(tmp_path.iterdir())
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *given: ("", ""))
    dialog.save_button.click()
    assert sorted(tmp_path.iterdir()) == before and dialog.bar.currentItem() is None


def test_what_cannot_be_written_is_told(dialog, monkeypatch, tmp_path):
    monkeypatch.setattr(
        QFileDialog, "getSaveFileName", lambda *given: (str(tmp_path / "nowhere" / "a.pdf"), "")
    )
    dialog.save_button.click()
    assert "cannot be written" in dialog.bar.currentItem().text()
    assert not Path(tmp_path / "nowhere").exists()


def test_nothing_of_the_course_is_touched(dialog, panel):  # noqa: F811
    counts = {layer.id(): layer.undoStack().count() for layer in panel.in_hand.layers().layers.values()}
    for kind in ("greens", "table", "hole", "audit", "tees"):
        dialog.choose(kind)
    assert counts == {
        layer.id(): layer.undoStack().count() for layer in panel.in_hand.layers().layers.values()
    }


def test_the_panels_button_shows_it_beside_the_map(panel):  # noqa: F811
    from yardwright.desk.sheets_dialog import SheetsDialog

    panel.sheets_button.click()
    (dialog,) = panel.findChildren(SheetsDialog)
    assert dialog.windowTitle() == "Sheets: Heron Cup" and dialog.isVisible() and not dialog.isModal()
    panel.sheets_button.click()
    assert panel.findChildren(SheetsDialog) == [dialog] and panel.in_hand.iface.bar.messages == []


def test_it_follows_the_event(dialog, panel, qtbot):  # noqa: F811
    from yardwright.desk.editing import one_step
    from yardwright.model.event import Round
    from yardwright.store.events import remove_event, rename_event, rows_of_event, write_event

    dialog.choose("greens", 1)
    before = picture(dialog)
    type_in(panel, 1, on="14")
    qtbot.waitUntil(lambda: picture(dialog) != before, timeout=20_000)
    dialog.choose("table", 2, page="A5")
    layers = panel._layers()
    rename_event(layers, "Heron Cup", "Wren Cup")
    qtbot.waitUntil(lambda: dialog.windowTitle() == "Sheets: Wren Cup", timeout=20_000)
    assert dialog.sheet is None or dialog.sheet.title.startswith("Wren Cup")
    assert (dialog.kind_box.currentData(), dialog.number()) == ("table", 2)
    assert dialog.page_box.currentData() == "A5"
    event = panel.in_hand.find_event("Wren Cup")
    write_event(layers, replace(event, rounds=(*event.rounds, Round(3))))
    qtbot.waitUntil(lambda: dialog.round_box.count() == 3, timeout=20_000)
    with one_step("Remove", *(layers.layers[kind] for kind in rows_of_event(layers, "Wren Cup"))) as step:
        remove_event(layers, "Wren Cup")
    qtbot.waitUntil(lambda: not dialog.save_button.isEnabled(), timeout=20_000)
    assert "no event “Wren Cup” any more" in dialog.view.label.text()
    step.undo()
    dialog.choose("greens", 1)
    qtbot.waitUntil(lambda: dialog.save_button.isEnabled(), timeout=20_000)


def test_it_goes_with_its_course(dialog, panel, project, qtbot):  # noqa: F811
    for layer in project.mapLayers().values():
        if layer.isEditable():
            layer.rollBack()
    project.clear()
    qtbot.waitUntil(lambda: not dialog.isVisible(), timeout=20_000)
    assert panel.in_hand.iface.bar.messages == []


def picture(dialog):
    return dialog.view.label.pixmap().toImage()


def test_everything_says_what_it_is(dialog):
    from qgis.PyQt.QtWidgets import QComboBox, QListWidget, QToolButton

    for thing in (
        *(dialog.kind_box, dialog.round_box, dialog.hole_box, dialog.page_box, dialog.remarks),
        *(dialog.leafing.back_button, dialog.leafing.on_button, dialog.wide_button),
    ):
        assert isinstance(thing, (QComboBox, QListWidget, QToolButton))
        assert thing.whatsThis() and thing.toolTip()
        assert thing.accessibleName() or thing.text()


# Heights


def fall_figures(dialog):
    return [
        item.text
        for page in dialog.sheet.pages
        for item in page.items
        if getattr(item, "about", "") == "fall" or getattr(item, "text", "").endswith(" %")
    ]


def test_without_heights_the_switch_is_off_and_says_why(dialog):
    assert not dialog.heights_box.isEnabled() and not dialog.heights_box.isChecked()
    assert "no heights in this project" in dialog.heights_box.toolTip()
    assert fall_figures(dialog) == []


def test_the_players_sheets_tell_the_fall_only_when_asked(panel, project, qtbot, tmp_path):  # noqa: F811
    """Hole 1 rises by 10 % to the back all over its green."""
    from yardwright.desk.sheets_dialog import SheetsDialog

    from tests.desk.test_propose_dialog import heights

    type_in(panel, 1, on="10", off="5", off_from="left")
    project.addMapLayer(heights(tmp_path / "ground.tif", 180))
    dialog = SheetsDialog(panel, panel.in_hand, panel.in_hand.event_in_hand())
    qtbot.addWidget(dialog)
    dialog.show()
    assert dialog.heights_box.isEnabled() and not dialog.heights_box.isChecked()
    assert fall_figures(dialog) == []
    dialog.heights_box.click()
    assert fall_figures(dialog) == ["10.0 %"]
    assert any("Local Rules" in text for text in remarks(dialog))
    # Each kind keeps its own: the committee's sheet tells it from the first.
    dialog.choose("audit")
    assert dialog.heights_box.isChecked() and fall_figures(dialog) == ["10.0 %"]
    dialog.heights_box.click()
    assert fall_figures(dialog) == []
    dialog.choose("greens")
    assert dialog.heights_box.isChecked() and fall_figures(dialog) == ["10.0 %"]
    dialog.choose("table")
    assert not dialog.heights_box.isChecked() and fall_figures(dialog) == []
