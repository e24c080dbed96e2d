"""The panel of what hides the ground: found on the date in hand, looked at, corrected with a brush."""

from functools import partial

from qgis.gui import QgsDockWidget
from qgis.PyQt.QtCore import QSize
from qgis.PyQt.QtGui import QIcon
from qgis.PyQt.QtWidgets import (
    QButtonGroup,
    QCheckBox,
    QDoubleSpinBox,
    QGridLayout,
    QGroupBox,
    QHBoxLayout,
    QLabel,
    QProgressBar,
    QPushButton,
    QRadioButton,
    QVBoxLayout,
    QWidget,
)

from ..resources import icon
from .mask_item import CLOUD, CROWN, KINDS, MOVER, SEEN, SHADE, MaskItem, swatch
from .mask_tool import LEAST_M, MOST_M, MaskTool
from .masks import Masks
from .words import tell, told_in, tr

_SWATCH = QSize(34, 18)
_AS_FOUND = 0


class HiddenPanel(QgsDockWidget):
    """Shows what hides the ground on the date in hand, while it is open. dates: the DatesPanel."""

    def __init__(self, in_hand, dates, parent=None):
        super().__init__(parent)
        self.setObjectName("yardwright_hidden_panel")
        self.setWindowTitle(tr("What hides the ground"))
        self.setWindowIcon(icon("dates_hidden"))
        self.in_hand, self.dates = in_hand, dates
        self.canvas = in_hand.iface.mapCanvas()
        self.masks = Masks(in_hand, self)
        self.tool = MaskTool(in_hand, self.masks)
        self.item = None
        self._build()
        self._connections = [
            (signal, signal.connect(slot))
            for signal, slot in (
                (dates.date_changed, self._date_changed),
                (in_hand.course_changed, self._course_changed),
                (self.visibilityChanged, self._shown),
                (self.masks.changed, self._show),
                (self.masks.told, self._tell),
                (self.tool.resized, self._resized),
                (self.tool.laid_down, self._laid_down),
            )
        ]
        self._date_changed()
        self._tell()

    def let_go(self):
        """Listen to nothing any more, and leave the map as it was found; what was corrected is saved."""
        while self._connections:
            signal, connection = self._connections.pop()
            signal.disconnect(connection)
        self.canvas.unsetMapTool(self.tool)
        self._save()
        self.masks.follow(False)
        self._take_off()

    # The surface

    def _build(self):
        body = QWidget(self)
        layout = QVBoxLayout(body)
        layout.setContentsMargins(6, 6, 6, 6)
        self.title = QLabel(body)
        self.title.setWordWrap(True)
        layout.addWidget(self.title)
        layout.addWidget(self._build_legend(body))
        layout.addWidget(self._build_brush(body))
        self.progress = QProgressBar(body)
        self.progress.setRange(0, 0)
        self.progress.setTextVisible(False)
        self.progress.setMaximumHeight(8)
        layout.addWidget(self.progress)
        self.says = QLabel(body)
        self.says.setWordWrap(True)
        layout.addWidget(self.says)
        layout.addStretch(1)
        self.setWidget(body)

    def _build_legend(self, body):
        box = QGroupBox(tr("Show"), body)
        grid = QGridLayout(box)
        self.ticks = {}
        for row, kind in enumerate(KINDS):
            tick = QCheckBox(_names()[kind], box)
            tick.setObjectName(f"yardwright_mask_{kind}")
            tick.setChecked(True)
            tick.setIcon(QIcon(swatch(kind, _SWATCH.width(), _SWATCH.height())))
            tick.setIconSize(_SWATCH)
            tick.toggled.connect(self._ticked)
            self.ticks[kind] = tick
            grid.addWidget(tick, row // 2, row % 2)
        return box

    def _build_brush(self, body):
        box = QGroupBox(tr("Brush"), body)
        layout = QVBoxLayout(box)
        self.brush_button = QPushButton(icon("dates_hidden"), tr("&Correct it with the brush"), box)
        self.brush_button.setObjectName("yardwright_brush")
        self.brush_button.setCheckable(True)
        self.brush_button.setToolTip(
            tr(
                "Paint on the map what hides the ground there, or that it is seen for sure. [ and ], or "
                "Shift and the wheel, change the size; Ctrl+Z takes a stroke back; Esc ends."
            )
        )
        self.brush_button.clicked.connect(self._take_brush)
        layout.addWidget(self.brush_button)
        grid = QGridLayout()
        self.values = QButtonGroup(self)
        for place, (value, text) in enumerate(_paints()):
            choice = QRadioButton(text, box)
            choice.setObjectName(f"yardwright_paint_{value}")
            if value != _AS_FOUND:
                choice.setIcon(QIcon(swatch(value, _SWATCH.width(), _SWATCH.height())))
                choice.setIconSize(_SWATCH)
            self.values.addButton(choice, value)
            grid.addWidget(choice, place // 2, place % 2)
        self.values.button(SHADE).setChecked(True)
        self.values.buttonClicked.connect(self._value_chosen)
        layout.addLayout(grid)
        row = QHBoxLayout()
        label = QLabel(tr("&Radius"), box)
        self.radius_box = QDoubleSpinBox(box)
        self.radius_box.setRange(LEAST_M, MOST_M)
        self.radius_box.setDecimals(1)
        self.radius_box.setSingleStep(0.5)
        self.radius_box.setSuffix(" m")
        self.radius_box.setValue(self.tool.radius)
        self.radius_box.valueChanged.connect(self.tool.resize)
        label.setBuddy(self.radius_box)
        self.undo_button = self._step("mActionUndo", tr("Take the last stroke back"), self.masks.undo)
        self.redo_button = self._step("mActionRedo", tr("Paint it again"), self.masks.redo)
        self.save_button = QPushButton(tr("&Save"), box)
        self.save_button.setToolTip(
            tr(
                "Keep what was corrected beside the course. It is kept too when the brush is laid down; the "
                "image itself is never changed."
            )
        )
        self.save_button.clicked.connect(self._save)
        for widget in (label, self.radius_box, self.undo_button, self.redo_button, self.save_button):
            row.addWidget(widget)
        row.insertStretch(2, 1)
        layout.addLayout(row)
        return box

    def _step(self, name, tip, doing):
        from qgis.core import QgsApplication

        button = QPushButton(QgsApplication.getThemeIcon(f"/{name}.svg"), "", self)
        button.setToolTip(tip)
        button.setAccessibleName(tip)
        button.setMaximumWidth(34)
        button.clicked.connect(partial(self._do, doing))
        return button

    def _do(self, doing, *_):
        with told_in(self.in_hand.iface.messageBar()):
            doing()

    # What is in hand

    def _shown(self, visible):
        if visible and self.item is None:
            self.item = MaskItem(self.canvas)
            self._ticked()
            self.masks.follow(True)
        elif not visible and self.isHidden():
            # Closed, and not only behind another panel.
            self.canvas.unsetMapTool(self.tool)
            self.masks.follow(False)
            self._take_off()

    def _take_off(self):
        if self.item is not None:
            self.canvas.scene().removeItem(self.item)
            self.item = None

    def _course_changed(self):
        self.canvas.unsetMapTool(self.tool)
        with told_in(self.in_hand.iface.messageBar()):
            self.masks.forget()

    def _date_changed(self):
        date_id = self.dates.date_alone()
        self._do(partial(self.masks.choose, date_id))
        self.title.setText(
            tr("On the image of <b>{}</b>, as it lies on the map:").format(date_id) if date_id else ""
        )
        self._enable()

    # The map

    def _show(self):
        if self.item is not None:
            with told_in(self.in_hand.iface.messageBar()):
                layers = self.masks.layers()
                self.item.lay(layers, self.masks.corners() if layers else None)
                self._fill_shares()
        self._enable()

    def _fill_shares(self):
        from ..imagery.looking import shares

        found = shares(self.masks.mask) if self.masks.mask is not None else {}
        for kind, tick in self.ticks.items():
            name = _names()[kind]
            share = found.get(kind, 0)
            tick.setText(tr("{} ({} %)").format(name, f"{100 * share:.1f}") if share else name)

    def _ticked(self, *_):
        if self.item is not None:
            self.item.show_only([kind for kind, tick in self.ticks.items() if tick.isChecked()])

    def _tell(self):
        self.progress.setVisible(self.masks.busy)
        self.says.setText(self.masks.says)
        self.says.setVisible(bool(self.masks.says))

    # The brush

    def _take_brush(self, on):
        if on:
            self._value_chosen()
            self.canvas.setMapTool(self.tool)
            self.canvas.setFocus()
        else:
            self.canvas.unsetMapTool(self.tool)
        self.brush_button.setChecked(self.canvas.mapTool() is self.tool)

    def _value_chosen(self, *_):
        self.tool.value = self.values.checkedId()
        self.tool.colour = _inks()[self.tool.value]

    def _resized(self):
        self.radius_box.blockSignals(True)
        self.radius_box.setValue(self.tool.radius)
        self.radius_box.blockSignals(False)

    def _laid_down(self):
        self.brush_button.setChecked(False)
        self._save()

    def _save(self, *_):
        with told_in(self.in_hand.iface.messageBar()):
            count = self.masks.save()
            if count:
                tell(
                    self.in_hand.iface.messageBar(),
                    tr("What was corrected on {} is kept beside the course.").format(self.masks.date),
                    level=_success(),
                )
        self._enable()

    def _enable(self):
        there = bool(self.masks.date)
        self.brush_button.setEnabled(there)
        self.undo_button.setEnabled(bool(self.masks.strokes))
        self.redo_button.setEnabled(self.masks.can_redo())
        self.save_button.setEnabled(bool(self.masks.strokes))


def _success():
    from qgis.core import Qgis

    return Qgis.MessageLevel.Success


def _names():
    return {
        SHADE: tr("Shade"),
        CROWN: tr("Crowns above"),
        CLOUD: tr("Clouds"),
        MOVER: tr("What moves"),
        SEEN: tr("Seen for sure"),
    }


def _paints():
    """``[(value, text)]`` of what the brush can paint."""
    names = _names()
    return [
        *((kind, tr("Hidden: {}").format(names[kind])) for kind in (SHADE, CROWN, CLOUD, MOVER)),
        (SEEN, names[SEEN]),
        (_AS_FOUND, tr("As it was found")),
    ]


def _inks():
    from qgis.PyQt.QtGui import QColor

    inks = {SHADE: "#0b4f91", CROWN: "#0a6b49", CLOUD: "#eef0fa", MOVER: "#e15500", SEEN: "#fae13c"}
    return {_AS_FOUND: QColor("#ffffff"), **{kind: QColor(ink) for kind, ink in inks.items()}}
