"""The window of the guide: its list of pages kept with the course, each page seen as it will be printed."""

import os

import pypdf
import pytest
from qgis.core import QgsProject, QgsRasterLayer
from qgis.PyQt.QtCore import Qt, QTimer
from qgis.PyQt.QtTest import QTest
from qgis.PyQt.QtWidgets import QListWidgetItem

from tests.desk.test_drawing import drawing  # noqa: F401  the fixture
from tests.desk.test_event_panel import panel, type_in  # noqa: F401  the fixture
from tests.desk.test_toolbar import iface  # noqa: F401  the fixture
from tests.processing.test_listed_pages import write_png
from tests.processing.test_make_guide import own_cache, write_image  # noqa: F401  the fixture


@pytest.fixture
def dialog(panel, qtbot, tmp_path):  # noqa: F811
    """On the Heron Cup, with a pin on hole 1, over an image of the ground."""
    from yardwright.desk.guide_dialog import GuideDialog

    type_in(panel, 1, on="10", off="5", off_from="left")
    layer = QgsRasterLayer(write_image(tmp_path / "flown.tif", (-300, -200), (700, 700)), "flown")
    QgsProject.instance().addMapLayer(layer)
    window = panel.in_hand.iface.mainWindow()
    dialog = GuideDialog(window, panel.in_hand)
    dialog.image_box.setLayer(layer)
    dialog.show()
    qtbot.waitExposed(dialog)
    seen(dialog, qtbot)
    yield dialog
    dialog.reject()
    dialog.deleteLater()


def seen(dialog, qtbot):
    """Wait until the page in hand is painted."""
    qtbot.waitUntil(
        lambda: not (dialog._planning.isActive() or dialog._painting.isActive() or not dialog.view._picture),
        timeout=20_000,
    )


def kinds(dialog):
    return [page.kind for page in dialog.list.pages]


def kept(dialog):
    """The pages as the course's layers have them."""
    from yardwright.store.guide_pages import read_guide_pages

    return read_guide_pages(dialog.in_hand.layers())


def row_of(dialog, kind):
    return kinds(dialog).index(kind)


def remarks(dialog):
    return [dialog.remarks.item(row).text() for row in range(dialog.remarks.count())]


def test_it_shows_the_usual_pages_and_what_is_missing(dialog):
    from yardwright.model.guide_pages import USUAL

    assert kinds(dialog) == [page.kind for page in USUAL]
    assert dialog.event_shown.name == "Heron Cup" and "usual pages" in dialog.whose_label.text()
    assert "hole 1 has no description" in remarks(dialog)
    assert dialog.leafing.label.text() == f"Page 1 of {len(dialog.book.pages)}"
    assert kept(dialog) == ()


def test_a_page_chosen_is_looked_at(dialog, qtbot):
    dialog.list.setCurrentRow(row_of(dialog, "holes"))
    seen(dialog, qtbot)
    assert dialog.book.pages[dialog.view.number].kind == "hole"
    picture = dialog.view._picture
    # The picture has the proportions of the page.
    wide, high = dialog.book.wanted.size
    assert picture.width() / picture.height() == pytest.approx(wide / high, rel=0.01)
    dialog.turn(1)
    seen(dialog, qtbot)
    assert dialog.book.pages[dialog.view.number].title.startswith("2")


def test_a_page_is_dragged_and_the_order_kept_with_the_course(dialog, qtbot):
    """Dropped by Qt's own model, as its list does with the mouse."""
    view = dialog.list
    view.setCurrentRow(row_of(dialog, "pins"))
    first = view.model().index(0, 0)
    view.model().moveRow(first.parent(), row_of(dialog, "pins"), first.parent(), 0)
    assert kinds(dialog)[0] == "pins"
    assert [page.kind for page in kept(dialog)][0] == "pins" and kept(dialog)[0].event == "Heron Cup"
    seen(dialog, qtbot)
    assert dialog.book.pages[0].kind == "pins"
    layer = dialog.in_hand.layers().layers["guide_page"]
    assert layer.isEditable()
    layer.undoStack().undo()
    qtbot.waitUntil(lambda: kinds(dialog)[0] == "cover", timeout=20_000)


def test_pages_are_moved_by_keys_and_left_out_by_a_tick(dialog, qtbot):
    dialog.list.setCurrentRow(row_of(dialog, "scorecard"))
    dialog.list.setFocus()
    QTest.keyClick(dialog.list, Qt.Key.Key_Up, Qt.KeyboardModifier.AltModifier)
    assert row_of(dialog, "scorecard") == 1
    dialog.list.item(row_of(dialog, "overview")).setCheckState(Qt.CheckState.Unchecked)
    assert [page.kind for page in kept(dialog) if not page.shown] == ["overview"]
    seen(dialog, qtbot)
    assert "overview" not in [page.kind for page in dialog.book.pages]
    # The imprint stays.
    dialog.list.setCurrentRow(row_of(dialog, "imprint"))
    assert not dialog.remove_button.isEnabled()


def test_a_text_is_typed_and_seen(dialog, qtbot):
    from yardwright.model.guide_pages import GuidePage

    dialog.list.setCurrentRow(0)
    dialog.list.add(GuidePage("notices", event="Heron Cup"))
    assert dialog.list.currentRow() == 1 and "⚠" in dialog.list.item(1).text()
    seen(dialog, qtbot)
    assert any("has no text" in text for text in remarks(dialog))
    QTest.keyClicks(dialog.editor.text_box, "Play **fair**.")
    dialog.editor.take()
    seen(dialog, qtbot)
    assert kept(dialog)[1].text == "Play **fair**." and "⚠" not in dialog.list.item(1).text()
    assert dialog.book.pages[1].drawings["flow"].items[0].text == "Play **fair**."
    assert dialog.editor.text_box.toPlainText() == "Play **fair**."


def test_a_sponsor_s_file_is_copied_beside_the_course(dialog, qtbot, tmp_path):
    from yardwright.guide.page_templates import guide_folder
    from yardwright.model.guide_pages import GuidePage

    path = tmp_path / "elsewhere" / "tern.png"
    path.parent.mkdir()
    write_png(str(path), 400, 600)
    dialog.list.add(GuidePage("sponsor", "Tern", event="Heron Cup"))
    dialog.editor.take_file(str(path))
    folder = guide_folder(dialog.place)
    assert os.listdir(folder) == ["tern.png"]
    # Another file of that name does not take its place; the same one is not copied twice.
    write_png(str(path), 300, 300)
    dialog.editor.take_file(str(path))
    dialog.editor.take_file(str(path))
    assert sorted(os.listdir(folder)) == ["tern-2.png", "tern.png"]
    assert dialog.list.page.source == "tern-2.png"
    seen(dialog, qtbot)
    assert not any("tern" in text for text in remarks(dialog))


def test_another_event_has_another_list(dialog, qtbot):
    dialog.list.setCurrentRow(1)
    dialog.list.move(-1)
    assert kinds(dialog)[0] == "event"
    dialog.event_box.setCurrentIndex(0)
    dialog._box_chosen(dialog.event_box)
    assert kinds(dialog)[0] == "cover" and dialog.event_shown is None
    seen(dialog, qtbot)
    assert "pins" not in [page.kind for page in dialog.book.pages]


def test_a_change_on_the_map_is_seen(dialog, panel, qtbot):  # noqa: F811
    before = dialog.maker.shown_key(dialog.book, dialog.book.pages[-2], 700)
    type_in(panel, 2, on="12", off="0", off_from="centre")
    qtbot.waitUntil(
        lambda: dialog.maker.shown_key(dialog.book, dialog.book.pages[-2], 700) != before, timeout=20_000
    )


def test_it_is_saved_as_shown(dialog, qtbot, tmp_path):
    path = dialog.save(str(tmp_path / "cup"))
    assert path.endswith("cup.pdf")
    reader = pypdf.PdfReader(path)
    assert len(reader.pages) == len(dialog.book.pages)
    assert dialog.save_button.isEnabled() and not dialog.progress.isVisible()
    assert dialog.bar.currentItem() is not None


def test_writing_is_stopped_and_the_window_stays(dialog, tmp_path):
    path = tmp_path / "cup.pdf"
    path.write_bytes(b"the last one")
    QTimer.singleShot(0, dialog.close_button.click)
    assert dialog.save(str(path)) is None
    assert path.read_bytes() == b"the last one" and dialog.isVisible() and dialog.save_button.isEnabled()
    assert dialog.save(str(path)) == str(path)


def test_a_remark_on_another_hole_goes_nowhere(dialog):
    """Hole 12 is not hole 1."""
    before = dialog.view.number
    dialog._go_to_remark(QListWidgetItem("hole 12 has no description"))
    assert dialog.view.number == before


def test_a_click_on_a_remark_goes_to_its_page(dialog, qtbot):
    (item,) = [
        dialog.remarks.item(r) for r, text in enumerate(remarks(dialog)) if text.startswith("hole 2 has")
    ]
    dialog._go_to_remark(item)
    assert dialog.book.pages[dialog.view.number].variables["hole_number"] == 2
    assert dialog.list.currentRow() == row_of(dialog, "holes")


def test_the_list_follows_while_one_leafs(dialog):
    dialog.look_at(0)
    dialog.list.setCurrentRow(row_of(dialog, "cover"))
    dialog.turn(1)
    page = dialog.book.pages[dialog.view.number]
    assert dialog.list.currentRow() == page.listed
    dialog.turn(len(dialog.book.pages))
    assert dialog.list.page.kind == "imprint"


def test_a_page_opens_in_the_designer_as_it_is_printed(dialog, monkeypatch, qtbot):
    """The layout is the project's from then on, and its drawn parts go on showing themselves."""
    import gc

    from yardwright.guide.drawn_item import DrawnItem
    from yardwright.guide.page_templates import items_of

    opened = []
    monkeypatch.setattr(
        dialog.in_hand.iface, "openLayoutDesigner", lambda one: opened.append(one), raising=False
    )
    dialog.look_at(next(n for n, page in enumerate(dialog.book.pages) if page.kind == "hole"))
    dialog.design_button.click()
    (layout,) = opened
    name = layout.name()
    del layout
    opened.clear()
    gc.collect()
    manager = QgsProject.instance().layoutManager()
    layout = manager.layoutByName(name)
    parts = {item.id(): item for item in items_of(layout, DrawnItem)}
    assert "Burn" in name and parts["ladder"].drawing is not None
    manager.removeLayout(layout)
