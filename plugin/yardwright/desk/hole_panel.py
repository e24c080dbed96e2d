"""The panel of the hole in hand: what is drawn of it, what is missing, its figures and its notes."""

import os

from qgis.gui import QgsDockWidget
from qgis.PyQt.QtCore import Qt, pyqtSignal
from qgis.PyQt.QtGui import QBrush, QColor
from qgis.PyQt.QtWidgets import (
    QFormLayout,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QPushButton,
    QScrollArea,
    QToolButton,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from ..model.words import said
from ..resources import icon
from .courses import hole_text
from .editing import checked, one_step
from .terrains import KeptHeights
from .words import told_in, tr

_SIGNS = {"there": "✓", "missing": "○", "none": "–"}
_MOST_POINTER_LINES = 5


class HolePanel(QgsDockWidget):
    """Shows the hole in hand. ``draw`` is emitted with a kind that the user wants to draw next."""

    draw = pyqtSignal(str)
    step = pyqtSignal(int)

    def __init__(self, in_hand, parent=None):
        super().__init__(tr("Hole"), parent)
        self.setObjectName("yardwright_hole_panel")
        self.in_hand = in_hand
        self._stale = True
        self._kept_heights = KeptHeights(in_hand.project)
        self._build()
        for signal in (in_hand.course_changed, in_hand.hole_changed, in_hand.edited, in_hand.tee_set_changed):
            signal.connect(self.refresh)
        self.visibilityChanged.connect(self._shown)
        self.refresh()

    def let_go(self):
        """Nothing is left to undo: what is connected goes with the panel."""
        self.close()

    # Building

    def _build(self):
        inside = QWidget()
        layout = QVBoxLayout(inside)
        layout.setContentsMargins(8, 6, 8, 8)
        head = QHBoxLayout()
        self.before = self._arrow(Qt.ArrowType.LeftArrow, tr("Look at the hole before"), -1)
        self.after = self._arrow(Qt.ArrowType.RightArrow, tr("Look at the next hole"), 1)
        self.title = QLabel()
        self.title.setTextFormat(Qt.TextFormat.PlainText)
        font = self.title.font()
        font.setPointSizeF(font.pointSizeF() * 1.3)
        font.setBold(True)
        self.title.setFont(font)
        head.addWidget(self.before)
        head.addWidget(self.title, 1)
        head.addWidget(self.after)
        layout.addLayout(head)
        self.empty = QLabel()
        self.empty.setWordWrap(True)
        layout.addWidget(self.empty)

        self.guide = QLabel()
        self.guide.setWordWrap(True)
        self.take = QPushButton()
        self.take.clicked.connect(lambda: self.draw.emit(self._next))
        self._next = ""
        layout.addWidget(self.guide)
        layout.addWidget(self.take, 0, Qt.AlignmentFlag.AlignLeft)

        self.pointer = QFormLayout()
        self.pointer.setContentsMargins(0, 0, 0, 0)
        self._pointer_lines = []
        for _ in range(_MOST_POINTER_LINES):
            line = QLabel(" "), QLabel(" ")
            line[1].setAlignment(Qt.AlignmentFlag.AlignRight)
            self.pointer.addRow(*line)
            self._pointer_lines.append(line)
        layout.addWidget(_heading(tr("Under the pointer")))
        layout.addLayout(self.pointer)

        layout.addWidget(_heading(tr("Figures")))
        self.figures = _list((tr("Tee set"), tr("Length"), tr("Card"), tr("Par")))
        layout.addWidget(self.figures)
        self.green = QLabel()
        self.green.setWordWrap(True)
        layout.addWidget(self.green)
        self.heights = QLabel()
        self.heights.setWordWrap(True)
        layout.addWidget(self.heights)

        layout.addWidget(_heading(tr("Drawn")))
        self.drawn = _list((tr("What"), ""))
        self.drawn.setToolTip(tr("A double click takes the tool that draws it in hand."))
        self.drawn.itemActivated.connect(self._activated)
        layout.addWidget(self.drawn, 1)

        layout.addWidget(_heading(tr("Notes")))
        self.notes = QPlainTextEdit()
        self.notes.setReadOnly(True)
        self.notes.setMaximumHeight(90)
        layout.addWidget(self.notes)
        row = QHBoxLayout()
        self.note = QLineEdit()
        self.note.setPlaceholderText(tr("A new note on this hole"))
        self.note.returnPressed.connect(self._add_note)
        self.add = QPushButton(tr("Add"))
        self.add.clicked.connect(self._add_note)
        row.addWidget(self.note, 1)
        row.addWidget(self.add)
        layout.addLayout(row)
        self.describe_button = QPushButton(tr("&Description…"))
        self.describe_button.setToolTip(tr("Write the hole’s description beside its notes, and see it fit"))
        self.describe_button.setWhatsThis(self.describe_button.toolTip())
        self.describe_button.clicked.connect(lambda: self.describe())
        layout.addWidget(self.describe_button, 0, Qt.AlignmentFlag.AlignLeft)

        scroll = QScrollArea()
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QScrollArea.Shape.NoFrame)
        scroll.setWidget(inside)
        self.setWidget(scroll)
        self.setWindowIcon(icon("hole_panel"))
        self._explain()

    def _explain(self):
        """What the question mark of the help menu says of each part."""
        self.figures.setWhatsThis(
            tr(
                "The length of the hole from each tee set, what the scorecard says, and whether the par fits "
                "the length. A row in italics has a remark: point at it."
            )
        )
        self.drawn.setWhatsThis(
            tr(
                "What a yardage guide needs of this hole: a tick stands before what is drawn, a circle "
                "before what is missing. A double click takes the tool that draws it in hand."
            )
        )
        for thing in (self.notes, self.note):
            thing.setWhatsThis(
                tr(
                    "Notes on this hole, each with its day. They are kept in the course file, unsaved at "
                    "first."
                )
            )
        for thing in (self.guide, self.take):
            thing.setWhatsThis(tr("What to draw next of a hole that is not complete, and the tool for it."))

    def _arrow(self, direction, tip, by):
        button = QToolButton()
        button.setArrowType(direction)
        button.setAutoRaise(True)
        button.setToolTip(tip)
        button.clicked.connect(lambda: self.step.emit(by))
        return button

    # Showing

    def _shown(self, visible):
        if visible and self._stale:
            self.refresh()

    def refresh(self):
        """Look again at the hole in hand; put off while the panel is hidden."""
        self._stale = not self.isVisible()
        if self._stale:
            return
        with told_in(self.in_hand.iface.messageBar()):
            self._fill()

    def _fill(self):
        numbers = [hole[0] for hole in self.in_hand.holes]
        number = self.in_hand.hole
        place = numbers.index(number) if number in numbers else -1
        self.before.setEnabled(place > 0)
        self.after.setEnabled(0 <= place < len(numbers) - 1)
        self.empty.setText(self.in_hand.why_no_hole())
        self.empty.setVisible(place < 0)
        for thing in (self.figures, self.drawn, self.notes, self.note, self.add):
            thing.setEnabled(place >= 0)
        self.figures.clear()
        self.drawn.clear()
        self.green.clear()
        self.heights.clear()
        self.heights.hide()
        self.notes.clear()
        self._guide(())
        if place < 0:
            self.title.setText(tr("No hole"))
            return
        self.title.setText(hole_text(*self.in_hand.holes[place]))
        self._fill_figures()
        self._fill_drawn(number)
        self._fill_notes(number)

    def _fill_figures(self):
        from ..measure.units import to_unit, whole

        course = self.in_hand.course()
        unit = course.settings.unit
        rows = self.in_hand.measured()
        for row in rows["lengths"]:
            card = "" if row.scorecard is None else str(whole(to_unit(row.scorecard, unit)))
            length = "" if row.length is None else str(whole(to_unit(row.length, unit)))
            line = QTreeWidgetItem([row.tee_set or tr("(unnamed)"), length, card, row.par_check])
            for column in (1, 2):
                line.setTextAlignment(column, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
            if row.remark:
                for column in range(4):
                    line.setToolTip(column, row.remark)
                font = line.font(0)
                font.setItalic(True)
                line.setFont(0, font)
            if row.tee_set == self.in_hand.tee_set:
                font = line.font(1)
                font.setBold(True)
                line.setFont(1, font)
            self.figures.addTopLevelItem(line)
        _fit(self.figures)
        self.green.setText(_green_text(rows["greens"], unit))
        self._fill_heights(unit)

    def _fill_heights(self, unit):
        """How much higher than the tee in hand the green lies, where the project has heights."""
        from ..model.errors import YardwrightError
        from .figures import caution

        played = self.in_hand.played()
        if played is None or not played.tees:
            return
        try:
            tees = self._kept_heights.of(played, self.in_hand.course().crs).tees
        except YardwrightError:
            return  # without heights, or with none that can be read, there is nothing to tell
        known = [tee for tee in tees if tee.rise is not None]
        tee = next((one for one in known if one.tee_set == self.in_hand.tee_set), next(iter(known), None))
        if tee is not None:
            self.heights.setText(_heights_text(tee, unit))
            self.heights.setToolTip(caution())
            self.heights.show()

    def _fill_drawn(self, number):
        from ..measure.checklist import checklist

        items = checklist(self.in_hand.course(), number, self.in_hand.index())
        self._guide(items)
        for item in items:
            line = QTreeWidgetItem([f"{_SIGNS[item.state]}  {item.title}", item.text])
            line.setData(0, Qt.ItemDataRole.UserRole, item.kind)
            for column in (0, 1):
                line.setToolTip(column, item.text)
            if item.state == "missing":
                font = line.font(0)
                font.setBold(True)
                line.setFont(0, font)
            elif item.state == "none":
                for column in (0, 1):
                    line.setForeground(column, QBrush(QColor("#7a8288")))
            self.drawn.addTopLevelItem(line)
        _fit(self.drawn)

    def _guide(self, items):
        """Say what is to be drawn next, as one who draws a first hole wants to know."""
        self._next = next((item.kind for item in items if item.state == "missing" and item.kind), "")
        words = {
            "hole": tr(
                "Next, the line of play: click at the back tee, at each turn and in the middle of the green. "
                "A right click ends it."
            ),
            "tee": tr("Next, the tees: click round each; its tee set is asked for once."),
            "green": tr("Next, the green: click round its margin. A right click closes it."),
            "fairway": tr("Next, the fairway: click round its margin, or let the curve follow your clicks."),
        }
        self.guide.setText(words.get(self._next, ""))
        self.guide.setVisible(bool(self._next))
        self.take.setText(tr("Take the tool"))
        self.take.setVisible(bool(self._next))

    def _fill_notes(self, number):
        texts = []
        for kind in ("hole_note", "field_note"):
            layer = self.in_hand.layer(kind)
            for row in layer.getFeatures() if layer is not None else ():
                if row["hole"] == number:
                    source, written, text = (_text(row[name]) for name in ("source", "written", "text"))
                    head = ", ".join(filter(None, (said(source), written)))
                    if kind == "field_note":
                        text = text or os.path.basename(_text(row["picture"]))
                    texts.append(f"{head}: {text}" if head else text)
        self.notes.setPlainText("\n".join(texts))

    def describe(self):
        """Open the window in which the description of the hole in hand is written."""
        from .description_dialog import describe

        with told_in(self.in_hand.iface.messageBar()):
            if self.in_hand.hole is not None:
                describe(self.in_hand)

    def show_pointer(self, told):
        """Show ``[(title, text)]`` of the place under the pointer."""
        if not self.isVisible():
            return
        for place, (title, text) in enumerate(self._pointer_lines):
            one = told[place] if place < len(told) else (" ", " ")
            title.setText(one[0])
            text.setText(one[1])

    # Doing

    def _activated(self, item):
        kind = item.data(0, Qt.ItemDataRole.UserRole)
        if kind:
            self.draw.emit(kind)

    def _add_note(self):
        text = self.note.text().strip()
        if not text or self.in_hand.hole is None:
            return
        with told_in(self.in_hand.iface.messageBar()):
            from qgis.core import QgsVectorLayerUtils
            from qgis.PyQt.QtCore import QDate

            layer = self.in_hand.layers().layers["hole_note"]
            values = {"hole": self.in_hand.hole, "text": text, "written": QDate.currentDate()}
            places = {layer.fields().lookupField(name): value for name, value in values.items()}
            with one_step(tr("Note on hole {}").format(self.in_hand.hole), layer):
                row = QgsVectorLayerUtils.createFeature(layer, attributes=places)
                checked(layer.addFeature(row), layer)
            self.note.clear()
            self._fill_notes(self.in_hand.hole)


def _heading(text):
    label = QLabel(text)
    font = label.font()
    font.setBold(True)
    label.setFont(font)
    label.setContentsMargins(0, 6, 0, 0)
    return label


def _list(headings):
    view = QTreeWidget()
    view.setHeaderLabels(headings)
    view.setRootIsDecorated(False)
    view.setAlternatingRowColors(True)
    view.setIndentation(0)
    view.header().setStretchLastSection(True)
    view.header().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
    view.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)  # the last column is elided
    return view


def _fit(view):
    """As high as its rows, so that the panel scrolls and not each of its lists."""
    rows = view.topLevelItemCount()
    each = view.sizeHintForRow(0) if rows else view.fontMetrics().height() + 4
    view.setFixedHeight(view.header().sizeHint().height() + max(1, rows) * each + 2 * view.frameWidth() + 2)


def _green_text(rows, unit):
    from ..measure.units import to_unit

    if not rows or rows[0].depth is None:
        return tr("Green: not measured yet")
    green = rows[0]
    depth, width = (f"{to_unit(one, unit):.1f}" for one in (green.depth, green.width))
    words = tr("Green {} {} deep, {} wide; approach {}° ({})")
    return words.format(depth, unit, width, round(green.approach_azimuth) % 360, green.approach_from)


def _heights_text(tee, unit):
    from ..measure.fall import rise_said
    from ..measure.units import to_unit, whole

    words = tr("From {}: rise {} m to the green, plays {} {} (common practice; the length stays {})")
    name = tee.tee_set or tr("the tee")
    figures = [whole(to_unit(one, unit)) for one in (tee.plays, tee.length)]
    return words.format(name, rise_said(tee.rise), figures[0], unit, figures[1])


def _text(value):
    from ..store.reading import plain_value

    value = plain_value(value)
    return "" if value is None else str(value)
