"""Inside QGIS: an event from the committee's files to its sheets, by mouse and keys.

YARDWRIGHT_EVENT names a JSON file: the paths of the committee's files, the rows to paste, the place to click on a
green (in the map's CRS), the decisions, and the sheets to save. What is called of our own windows only finds out
where to click, and what is seen there.
"""

import json
import os

import desktop_drive
from qgis.core import QgsApplication, QgsPointXY, QgsProject
from qgis.PyQt.QtWidgets import (
    QApplication,
    QCheckBox,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QDockWidget,
    QFileDialog,
    QLineEdit,
    QToolBar,
    QTreeWidget,
)
from qgis.utils import iface


def until(seen, what):
    """Let QGIS work until ``seen()`` gives something; fails after ten seconds."""
    for _ in range(200):
        if seen():
            yield 60
            return
        yield 50
    raise AssertionError(f"never seen: {what}")


def settled():
    """Let QGIS work until the map is drawn."""
    yield 150
    yield from until(lambda: not iface.mapCanvas().isDrawing(), "the map drawn")


def dialog(name):
    """A window of ours that is open, by the name it has; None."""
    windows = [one for one in QApplication.topLevelWidgets() if isinstance(one, QDialog) and one.isVisible()]
    return next((one for one in windows if one.objectName() == name), None)


def ok(window):
    return window.findChild(QDialogButtonBox).button(QDialogButtonBox.StandardButton.Ok)


def rows(tree):
    return [tree.topLevelItem(n) for n in range(tree.topLevelItemCount())]


def texts(tree):
    return [[item.text(column) for column in range(tree.columnCount())] for item in rows(tree)]


class Hand:
    """The hand on mouse and keys, for what takes several steps."""

    def __init__(self, desk):
        self.desk = desk

    def file(self, path):
        """Type a path into the file dialog that is asked for, and Enter."""
        yield from until(lambda: isinstance(self.desk.top_window(), QFileDialog), "a file dialog")
        self.desk.key("ctrl+a")
        self.desk.type(path)
        self.desk.key("Return")
        yield from until(lambda: not isinstance(self.desk.top_window(), QFileDialog), "the file taken")

    def choose(self, box, wanted):
        """Choose what ``wanted(row)`` says of a combo box, by its keys."""
        row = next(n for n in range(box.count()) if wanted(n))
        self.desk.click(box)
        yield 250
        self.desk.key("Home", *["Down"] * row, "Return")
        yield from until(lambda: box.currentIndex() == row, "the entry chosen")

    def row(self, tree, *starts):
        """Click on the row that begins with these texts."""
        item = next(one for one in rows(tree) if tuple(one.text(n) for n in range(len(starts))) == starts)
        tree.scrollToItem(item)
        yield 60
        middle = tree.visualItemRect(item).center()
        self.desk.click(tree.viewport(), (30, middle.y()))
        yield from until(lambda: tree.currentItem() is item, "the row chosen")
        yield from settled()


def drive(desk):
    with open(os.environ["YARDWRIGHT_EVENT"], encoding="utf-8") as file:
        asked = json.load(file)
    log = []
    QgsApplication.messageLog().messageReceived.connect(
        lambda text, tag, level: log.append(text) if tag in ("Yardwright", "Python error") else None
    )
    found, hand = desk.result, Hand(desk)
    window, canvas = iface.mainWindow(), iface.mapCanvas()
    for dock in ("Layers", "Browser"):
        window.findChild(QDockWidget, dock).hide()
    window.move(0, 0)
    window.resize(1500, 1000)
    iface.messageBar().clearWidgets()  # QGIS's own, on fonts, would cover the map
    yield 800
    bar = window.findChild(QToolBar, "yardwright_toolbar")
    desk.click(
        bar.widgetForAction(
            next(one for one in bar.actions() if one.objectName() == "yardwright_event_panel")
        )
    )
    yield from until(lambda: window.findChild(QDockWidget, "yardwright_event_panel"), "the panel")
    panel = window.findChild(QDockWidget, "yardwright_event_panel")
    yield from until(panel.isVisible, "the panel shown")
    window.resizeDocks([panel], [420], 1)
    yield from settled()

    # A new event, like the last one
    desk.click(panel.new_button)
    yield from until(lambda: dialog("yardwright_new_event"), "the question")
    question = dialog("yardwright_new_event")
    desk.click(question.findChild(QLineEdit))
    desk.type(asked["name"])
    box = question.findChild(QCheckBox)
    desk.click(box, (8, box.height() / 2))
    yield from until(box.isChecked, "a copy wanted")
    desk.shot("new_event", question)
    desk.click(ok(question))
    yield from until(lambda: panel.event_box.currentText() == asked["name"], "the new event in hand")
    found["rounds"] = panel.round_box.count()

    # From the committee's file: two rows are bad
    desk.click(panel.bring_button)
    yield from hand.file(asked["pins"])
    yield from until(lambda: dialog("yardwright_bring_pins"), "the list of pins")
    listed = dialog("yardwright_bring_pins")
    found["brought"] = texts(listed.findChild(QTreeWidget))
    desk.shot("bring_pins", listed)
    desk.click(listed.take)
    yield from until(lambda: panel.table.data(panel.table.index(0, 1)), "the pins in the table")

    # From a spreadsheet
    QApplication.clipboard().setText(asked["pasted"])
    desk.click(panel.paste_button)
    yield from until(lambda: dialog("yardwright_bring_pins"), "the list of what was pasted")
    listed = dialog("yardwright_bring_pins")
    found["pasted"] = texts(listed.findChild(QTreeWidget))
    desk.click(listed.take)
    yield from until(lambda: dialog("yardwright_bring_pins") is None, "the list closed")
    yield from hand.choose(panel.round_box, lambda n: panel.round_box.itemData(n) == 2)
    yield from settled()
    found["in_table"] = [panel.table.data(panel.table.index(0, column)) for column in range(1, 4)]

    # On the green, the approach up
    yield from hand.choose(panel.round_box, lambda n: panel.round_box.itemData(n) == 3)
    holes = window.findChild(QComboBox, "yardwright_hole")
    yield from hand.choose(holes, lambda n: holes.itemData(n) == asked["hole"])
    desk.key("alt+3")
    yield from until(lambda: abs(canvas.rotation()) > 1, "the map turned")
    yield from settled()
    found["rotation"] = canvas.rotation()
    desk.click(panel.place_button)
    yield from until(panel.place_button.isChecked, "the tool in hand")
    found["m_per_pixel"] = canvas.mapUnitsPerPixel()
    pixel = canvas.getCoordinateTransform().transform(QgsPointXY(*asked["click"]))
    place = (pixel.x(), pixel.y())
    desk.move(canvas.viewport(), (place[0] + 5, place[1]))
    desk.move(canvas.viewport(), place)
    yield 150
    desk.shot("placing")
    desk.click(canvas.viewport(), place)
    row = asked["hole"] - 1
    yield from until(lambda: panel.table.data(panel.table.index(row, 1)), "the pin placed")
    canvas.setFocus()
    desk.key("Escape")
    yield from until(lambda: not panel.place_button.isChecked(), "the tool laid down")

    # The audit, beside the map
    desk.click(panel.audit_button)
    yield from until(lambda: dialog("yardwright_audit"), "the audit")
    audit = dialog("yardwright_audit")
    audit.move(20, 480)
    desk.click(audit.file_button)
    yield from hand.file(asked["audited"])
    yield from until(lambda: audit.list.topLevelItemCount(), "what differs")
    yield from settled()
    found["differs"] = [row[:6] for row in texts(audit.list)]
    for number, hole, side in asked["decide"]:
        before = canvas.rotation(), canvas.center().x()
        yield from hand.row(audit.list, str(number), str(hole))
        found.setdefault("shown", []).append(
            [
                before != (canvas.rotation(), canvas.center().x()),
                audit.pair.texts(),
                panel.round_box.currentData(),
            ]
        )
        desk.screen_shot(f"audit_{hole}")
        yield 400
        desk.click(audit.theirs_button if side == "theirs" else audit.ours_button)
        yield 150
    # The map can be used meanwhile.
    extent = canvas.extent()
    desk.click(canvas.viewport(), (300, 120), button=4)
    yield from until(lambda: canvas.extent() != extent, "the map zoomed by the wheel")
    yield from settled()
    audit.raise_()
    desk.click(audit.by)
    desk.type(asked["by"])
    yield 150
    desk.click(audit.apply_button)
    yield from until(
        lambda: audit.earlier.topLevelItemCount() == len(asked["decide"]), "the decisions logged"
    )
    found["applied"] = audit.bar.currentItem().text()
    desk.shot("audit_applied", audit)
    desk.click(audit.findChild(QDialogButtonBox).button(QDialogButtonBox.StandardButton.Close))
    yield from until(lambda: dialog("yardwright_audit") is None, "the audit closed")

    # Flights and lengths
    desk.click(panel.tees_button)
    yield from until(lambda: dialog("yardwright_tees"), "flights and tees")
    tees = dialog("yardwright_tees")
    tees.move(20, 280)
    yield from settled()
    desk.click(tees.bring_button)
    yield from hand.file(asked["lengths"])
    yield from until(lambda: dialog("yardwright_bring_lengths"), "the list of lengths")
    listed = dialog("yardwright_bring_lengths")
    found["lengths"] = listed.findChild(QTreeWidget).topLevelItemCount()
    desk.click(listed.take)
    yield from until(lambda: dialog("yardwright_bring_lengths") is None, "the lengths taken")
    yield from settled()
    found["length_table"] = tees.view.model().rowCount()
    desk.shot("tees", tees)
    desk.click(ok(tees))
    yield from until(lambda: dialog("yardwright_tees") is None, "flights and tees written")

    # On paper
    yield from hand.choose(panel.round_box, lambda n: panel.round_box.itemData(n) == 1)
    desk.click(panel.sheets_button)
    yield from until(lambda: dialog("yardwright_sheets"), "the sheets")
    sheets = dialog("yardwright_sheets")
    sheets.move(20, 20)
    for kind, path in asked["sheets"].items():
        yield from hand.choose(sheets.kind_box, lambda n, kind=kind: sheets.kind_box.itemData(n) == kind)
        yield 300
        desk.shot(f"sheet_{kind}", sheets)
        desk.click(sheets.save_button)
        yield from hand.file(path)
        yield from until(lambda path=path: os.path.exists(path), "the sheet saved")
    desk.click(sheets.findChild(QDialogButtonBox).button(QDialogButtonBox.StandardButton.Close))
    yield from until(lambda: dialog("yardwright_sheets") is None, "the sheets closed")

    # Saved, as QGIS does
    yield from settled()
    desk.shot("at_last")
    desk.later(iface.actionSaveAllEdits().trigger)
    yield from until(QApplication.activeModalWidget, "QGIS's question whether to save")
    question = QApplication.activeModalWidget()
    desk.click(question.button(question.StandardButton.Yes))
    layers = QgsProject.instance().mapLayers().values()
    yield from until(
        lambda: not any(one.isModified() for one in layers if hasattr(one, "isModified")), "saved"
    )
    found["messages"] = [one.text() for one in iface.messageBar().items() if one.title() == "Yardwright"]
    found["log"] = log


desktop_drive.run(drive)
