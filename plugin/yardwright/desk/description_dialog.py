"""The window in which a hole's description is written: beside it the notes of many sources, below it how it
will be printed and whether it fits.
"""

import os

from qgis.core import (
    QgsCoordinateTransform,
    QgsExpressionContext,
    QgsExpressionContextUtils,
    QgsPointXY,
)
from qgis.gui import QgsGui, QgsMessageBar
from qgis.PyQt.QtCore import QSize, Qt, QTimer, QUrl
from qgis.PyQt.QtGui import QDesktopServices, QIcon, QImageReader, QPixmap
from qgis.PyQt.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QDialogButtonBox,
    QHBoxLayout,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QMenu,
    QPlainTextEdit,
    QPushButton,
    QSizePolicy,
    QSplitter,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from ..model.kinds import LISTED
from ..model.words import said
from .courses import hole_text
from .editing import one_step
from .words import told_in, tr

_TYPED_MS = 150
_THUMB = QSize(96, 72)


def describe(in_hand):
    """Open the window on the hole in hand; the DescriptionDialog."""
    in_hand.layers()
    dialog = DescriptionDialog(in_hand.iface.mainWindow(), in_hand, in_hand.hole)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.show()
    return dialog


class DescriptionDialog(QDialog):
    """Writes the description of a hole. in_hand: the CourseInHand; number: the hole's."""

    def __init__(self, parent, in_hand, number):
        super().__init__(parent)
        self.setObjectName("yardwright_description")
        self.setWindowFlag(Qt.WindowType.WindowContextHelpButtonHint, False)
        self.resize(980, 600)
        QgsGui.enableAutoGeometryRestore(self)
        self.in_hand, self.number = in_hand, number
        self.hole = in_hand.course().hole(number)
        self.setWindowTitle(tr("Description: {}").format(hole_text(number, self.hole.name, self.hole.par)))
        self.notes = ()
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.setInterval(_TYPED_MS)
        self._timer.timeout.connect(self.tell)
        self._build()
        self.text_box.setPlainText(self.hole.description)
        self._fill_notes()
        self.tell()

    # The surface

    def _build(self):
        self.bar = QgsMessageBar(self)
        self.bar.setSizePolicy(QSizePolicy.Policy.Minimum, QSizePolicy.Policy.Fixed)
        self.text_box = QPlainTextEdit(self)
        self.text_box.setTabChangesFocus(True)
        self.text_box.setAccessibleName(tr("Description"))
        self.text_box.setToolTip(
            tr("What stands between [% and %] is worked out when the page is made, so that it stays true.")
        )
        self.text_box.setWhatsThis(self.text_box.toolTip())
        self.text_box.textChanged.connect(self._timer.start)
        self.figure_button = QToolButton(self)
        self.figure_button.setText(tr("Put a figure in"))
        self.figure_button.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        self.figure_button.setToolTip(tr("Figures of this hole, which follow what is measured"))
        self.figure_button.setMenu(self._figures())
        self.room_label = QLabel(self)
        self.room_label.setWordWrap(True)
        self.room_label.setAccessibleName(tr("Room on the page"))
        self.printed = QLabel(self)
        self.printed.setWordWrap(True)
        self.printed.setTextFormat(Qt.TextFormat.PlainText)
        self.printed.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.printed.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        left = QWidget(self)
        layout = QVBoxLayout(left)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.text_box, 3)
        row = QHBoxLayout()
        row.addWidget(self.figure_button)
        row.addWidget(self.room_label, 1)
        layout.addLayout(row)
        layout.addWidget(QLabel(f"<b>{tr('As it is printed')}</b>", self))
        layout.addWidget(self.printed, 2)

        self.list = QListWidget(self)
        self.list.setWordWrap(True)
        self.list.setIconSize(_THUMB)
        self.list.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.list.setAccessibleName(tr("Notes on this hole"))
        self.list.setToolTip(tr("A double click puts the note into the description."))
        self.list.setWhatsThis(self.list.toolTip())
        self.list.itemActivated.connect(lambda _: self.take_note())
        self.list.currentRowChanged.connect(lambda _: self._enable())
        self.take_button = self._button(tr("&Put it in"), self.take_note)
        self.look_button = self._button(tr("&Look at the place"), self.look_at_place)
        self.open_button = self._button(tr("&Open the photograph"), self.open_photograph)
        right = QWidget(self)
        side = QVBoxLayout(right)
        side.setContentsMargins(0, 0, 0, 0)
        side.addWidget(QLabel(f"<b>{tr('Notes on this hole')}</b>", self))
        side.addWidget(self.list, 1)
        row = QHBoxLayout()
        for button in (self.take_button, self.look_button, self.open_button):
            row.addWidget(button)
        side.addLayout(row)
        split = QSplitter(Qt.Orientation.Horizontal, self)
        split.addWidget(left)
        split.addWidget(right)
        split.setStretchFactor(0, 3)
        split.setStretchFactor(1, 2)
        buttons = QDialogButtonBox(self)
        self.keep_button = buttons.addButton(tr("&Keep"), QDialogButtonBox.ButtonRole.AcceptRole)
        buttons.addButton(QDialogButtonBox.StandardButton.Cancel)
        buttons.accepted.connect(self._keep_and_close)
        buttons.rejected.connect(self.reject)
        whole = QVBoxLayout(self)
        whole.addWidget(self.bar)
        whole.addWidget(split, 1)
        whole.addWidget(buttons)

    def _button(self, text, slot):
        button = QPushButton(text, self)
        button.setAutoDefault(False)

        def run():
            with told_in(self.bar):
                slot()

        button.clicked.connect(run)
        return button

    # Figures

    def _figures(self):
        """A menu of the expression functions that tell of a hole, ready with its number."""
        from ..guide.expressions import FUNCTIONS

        menu = QMenu(self)
        menu.setToolTipsVisible(True)
        tees = [one.name for one in sorted(self.in_hand.course().tee_sets, key=lambda one: one.sort)]
        labels = self._labels()
        for function in FUNCTIONS:
            names = [name for name, _ in function.takes]
            if names[:1] != ["hole"] or "event" in names or function.name == "hole_description":
                continue
            if "label" in names:
                inner = menu.addMenu(said(function.says))
                for label in labels:
                    inner.addAction(label, lambda f=function, label=label: self._put(f, tees, label))
                inner.setEnabled(bool(labels))
            else:
                menu.addAction(said(function.says), lambda f=function: self._put(f, tees))
        return menu

    def _labels(self):
        """What can be named on this hole: the labels of what is drawn on it."""
        features = self.in_hand.course().features
        own = [one for one in features if one.kind in LISTED and one.label and self.number in one.holes]
        return list(dict.fromkeys(one.label for one in own))

    def _put(self, function, tees, label=""):
        values = {
            "hole": str(self.number),
            "tee_set": _quoted(tees[0] if tees else ""),
            "label": _quoted(label),
        }
        given = ", ".join(values[name] for name, _ in function.takes)
        self.text_box.insertPlainText(f"[% {function.name}({given}) %]")
        self.text_box.setFocus()

    # Notes

    def _fill_notes(self):
        from ..store.field_notes import read_notes

        found = read_notes(self.in_hand.layers())
        self.notes = tuple(note for note in found if note.hole == self.number)
        self.list.clear()
        for note in self.notes:
            head = ", ".join(filter(None, (said(note.source), note.written)))
            text = note.text or os.path.basename(note.picture)
            item = QListWidgetItem(f"{head}\n{text}" if head else text)
            if note.picture:
                item.setIcon(_thumbnail(self._path(note)))
                item.setToolTip(self._path(note))
            self.list.addItem(item)
        self._enable()

    def _path(self, note):
        return os.path.join(os.path.dirname(os.path.abspath(self.in_hand.place)), note.picture)

    @property
    def note(self):
        """The note chosen, None without one."""
        row = self.list.currentRow()
        return self.notes[row] if 0 <= row < len(self.notes) else None

    def _enable(self):
        note = self.note
        self.take_button.setEnabled(note is not None and bool(note.text))
        self.look_button.setEnabled(note is not None and note.place is not None)
        self.open_button.setEnabled(note is not None and bool(note.picture))

    def take_note(self):
        """Put the note chosen into the description, after what stands there."""
        if self.note is not None and self.note.text:
            text = self.text_box.toPlainText().rstrip()
            self.text_box.setPlainText(f"{text} {self.note.text}".strip())

    def look_at_place(self):
        """Turn the map to where the note chosen was taken."""
        canvas = self.in_hand.iface.mapCanvas()
        layer = self.in_hand.layer("field_note")
        move = QgsCoordinateTransform(
            layer.crs(), canvas.mapSettings().destinationCrs(), self.in_hand.project.transformContext()
        )
        canvas.setCenter(move.transform(QgsPointXY(*self.note.place)))
        canvas.refresh()

    def open_photograph(self):
        """Show the photograph of the note chosen with the program that shows such files."""
        QDesktopServices.openUrl(QUrl.fromLocalFile(self._path(self.note)))

    # How it will be printed

    def tell(self):
        """Show the text as it is printed, and how much room is left on the pages."""
        from ..guide.description_room import lines_left
        from ..guide.expressions import add_expressions, worked_out
        from ..guide.hole_page import SIZES

        take_away = add_expressions()
        try:
            context = QgsExpressionContext()
            context.appendScope(QgsExpressionContextUtils.globalScope())
            text, errors = worked_out(self.text_box.toPlainText(), context)
        finally:
            take_away()
        self.printed.setText("\n".join([text.strip(), *(f"⚠ {one}" for one in errors)]))
        lines = []
        for name, form in (("pocket", "pages"), ("phone", "screen")):
            title = tr("Pocket") if name == "pocket" else tr("Phone")
            lines.append(f"{title}: {_said_of(lines_left(text, SIZES[name], form))}")
        self.room_label.setText("   ".join(lines))

    # Keeping

    def _keep_and_close(self):
        with told_in(self.bar):
            self.keep()
            self.accept()

    def keep(self):
        """Write the description, one step that can be undone, to be saved with the course."""
        text = self.text_box.toPlainText().strip()
        if text == self.hole.description:
            return
        layer = self.in_hand.layers().layers["hole"]
        place = layer.fields().lookupField("description")
        with one_step(tr("Description of hole {}").format(self.number), layer):
            layer.changeAttributeValue(self.hole.fid, place, text or None)


def _said_of(left):
    """How many lines are left, in words."""
    if left < 0:
        return tr("one line too long") if left == -1 else tr("{} lines too long").format(-left)
    return tr("fits, {} lines left").format(left)


def _quoted(text):
    return "'" + text.replace("'", "''") + "'"


def _thumbnail(path):
    reader = QImageReader(path)
    reader.setAutoTransform(True)
    size = reader.size()
    if size.isValid():
        reader.setScaledSize(size.scaled(_THUMB, Qt.AspectRatioMode.KeepAspectRatio))
    image = reader.read()
    return QIcon() if image.isNull() else QIcon(QPixmap.fromImage(image))
