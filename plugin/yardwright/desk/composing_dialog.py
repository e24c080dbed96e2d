"""The window in which one clean picture is composed of several dates."""

import os

from qgis.core import Qgis, QgsCoordinateTransform, QgsPointXY
from qgis.gui import QgsFileWidget, QgsMessageBar
from qgis.PyQt.QtCore import Qt, QTimer
from qgis.PyQt.QtGui import QKeySequence
from qgis.PyQt.QtWidgets import (
    QAbstractItemView,
    QButtonGroup,
    QCheckBox,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QLineEdit,
    QProgressBar,
    QPushButton,
    QRadioButton,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from ..compat import flags_number
from ..model.errors import YardwrightError
from ..resources import icon
from .composing import Asked, Composing, holes_of
from .composites import add_composites
from .dates import dates_of, default_base
from .words import tell, told_in, tr

_ID = Qt.ItemDataRole.UserRole
_SPOT = Qt.ItemDataRole.UserRole + 1
_LOOK_MS = 200
_SPOT_M = 18.0
"""How much of the map is shown to each side of a spot that stays hidden, metres."""


class ComposingDialog(QDialog):
    """Asks for base, dates and holes, composes in the background, lists what came of it. Not modal.

    panel: the DatesPanel.
    """

    def __init__(self, in_hand, panel, parent=None):
        super().__init__(parent)
        self.setObjectName("yardwright_composing")
        self.setWindowTitle(tr("Compose one clean picture"))
        self.setWindowIcon(icon("dates_compose"))
        self.in_hand, self.panel = in_hand, panel
        self.run = None
        self.came = None
        self.dates = []
        self._build()
        self._look = QTimer(self)
        self._look.setInterval(_LOOK_MS)
        self._look.timeout.connect(self._say)
        self._connections = [
            (signal, signal.connect(slot))
            for signal, slot in (
                (in_hand.course_changed, self.refresh),
                (in_hand.hole_changed, self._name_hole),
            )
        ]
        self.refresh()

    # The surface

    def _build(self):
        self.bar = QgsMessageBar(self)
        form = QFormLayout()
        self.base_box = QComboBox(self)
        self.base_box.setObjectName("yardwright_compose_base")
        self.base_box.setToolTip(tr("The date whose picture stays wherever it shows the ground"))
        self.base_box.activated.connect(lambda _: self._list())
        form.addRow(tr("&Base"), self.base_box)
        form.addRow(tr("Other &dates"), self._build_list())
        form.addRow(tr("Holes"), self._build_holes())
        self.folder = QgsFileWidget(self)
        self.folder.setObjectName("yardwright_compose_folder")
        self.folder.setStorageMode(QgsFileWidget.StorageMode.GetDirectory)
        form.addRow(tr("&Folder"), self.folder)

        self.begin_button = QPushButton(icon("dates_compose"), tr("&Compose"), self)
        self.begin_button.clicked.connect(lambda _: self.begin())
        self.stop_button = QPushButton(tr("&Stop"), self)
        self.stop_button.clicked.connect(lambda _: self._cancel())
        self.progress = QProgressBar(self)
        self.says = QLabel(self)
        row = QHBoxLayout()
        for widget in (self.begin_button, self.progress, self.stop_button):
            row.addWidget(widget)
        row.setStretch(1, 1)

        self.result = QTreeWidget(self)
        self.result.setObjectName("yardwright_composed")
        self.result.setAccessibleName(tr("What came of it"))
        self.result.setHeaderLabels([tr("Picture"), tr("Of it"), tr("What")])
        self.result.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        header = self.result.header()
        for column in range(2):
            header.setSectionResizeMode(column, QHeaderView.ResizeMode.ResizeToContents)
        self.result.itemClicked.connect(lambda item, _column: self._go(item))
        self.result.itemActivated.connect(lambda item, _column: self._go(item))
        from .dates_panel import FLIP_KEY

        key = QKeySequence(FLIP_KEY).toString(QKeySequence.SequenceFormat.NativeText)
        self.hint = QLabel(
            tr("The map shows the composite; hold {} to see its base. Click a spot to go there.").format(key),
            self,
        )
        self.hint.setWordWrap(True)
        self.buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close, self)
        self.buttons.rejected.connect(self.reject)
        for button in (*self.buttons.buttons(), self.begin_button, self.stop_button):
            button.setAutoDefault(False)
        layout = QVBoxLayout(self)
        layout.addWidget(self.bar)
        layout.addLayout(form)
        layout.addLayout(row)
        layout.addWidget(self.says)
        layout.addWidget(self.result, 1)
        layout.addWidget(self.hint)
        layout.addWidget(self.buttons)
        self.resize(620, 640)

    def _build_list(self):
        box = QWidget(self)
        layout = QVBoxLayout(box)
        layout.setContentsMargins(0, 0, 0, 0)
        self.list = QTreeWidget(box)
        self.list.setObjectName("yardwright_compose_dates")
        self.list.setAccessibleName(tr("Other dates"))
        self.list.setRootIsDecorated(False)
        self.list.setHeaderLabels([tr("Date"), tr("Lies"), tr("Remark")])
        self.list.setMaximumHeight(120)
        header = self.list.header()
        for column in range(2):
            header.setSectionResizeMode(column, QHeaderView.ResizeMode.ResizeToContents)
        layout.addWidget(self.list)
        self.look_only = QCheckBox(tr("To &look at only: take dates that may not be printed too"), box)
        self.look_only.setToolTip(tr("Such a picture may not be printed, and no page of a guide takes it."))
        self.look_only.toggled.connect(lambda _: self._list())
        layout.addWidget(self.look_only)
        return box

    def _build_holes(self):
        box = QWidget(self)
        row = QHBoxLayout(box)
        row.setContentsMargins(0, 0, 0, 0)
        self.one_hole = QRadioButton(box)
        self.all_holes = QRadioButton(tr("&All holes"), box)
        self.some_holes = QRadioButton(tr("&These:"), box)
        self.holes_edit = QLineEdit(box)
        self.holes_edit.setPlaceholderText("1,4,7-9")
        self.holes_edit.setMaximumWidth(120)
        self.holes_edit.textEdited.connect(lambda _: self.some_holes.setChecked(True))
        self.which = QButtonGroup(self)
        for choice in (self.one_hole, self.all_holes, self.some_holes):
            self.which.addButton(choice)
            row.addWidget(choice)
        row.addWidget(self.holes_edit)
        row.addStretch(1)
        self.one_hole.setChecked(True)
        return box

    # What there is

    def refresh(self, *_):
        """List the course's dates again."""
        with told_in(self.bar):
            if self.in_hand.place is None:
                self.close()
                return
            self.dates = [date for date in dates_of(self.in_hand) if date.id]
            ids = [date.id for date in self.dates]
            chosen = self.base_box.currentData()
            self.base_box.clear()
            for date in self.dates:
                self.base_box.addItem(date.title, date.id)
            base = chosen if chosen in ids else default_base(self.in_hand, ids)
            self.base_box.setCurrentIndex(self.base_box.findData(base))
            if not self.folder.filePath():
                self.folder.setFilePath(os.path.join(os.path.dirname(self.in_hand.place), "composites"))
            self._list()
            self._name_hole()

    def _name_hole(self):
        hole = self.in_hand.hole
        self.one_hole.setText(tr("Hole {}").format(hole) if hole is not None else tr("&Whole course"))
        for choice in (self.all_holes, self.some_holes, self.holes_edit):
            choice.setEnabled(hole is not None)

    def _list(self):
        before = {
            item.data(0, _ID): item.checkState(0) == Qt.CheckState.Checked
            for item in map(self.list.topLevelItem, range(self.list.topLevelItemCount()))
            if not item.isDisabled()
        }
        self.list.clear()
        for date in self.dates:
            if date.id == self.base():
                continue
            remark = self._why_not(date)
            lies = tr("± {} m").format(f"{date.rmse_m:.2f}") if date.rmse_m else ""
            item = QTreeWidgetItem([date.title, lies, remark or self._doubt(date)])
            item.setData(0, _ID, date.id)
            item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            item.setIcon(0, icon("print_allowed" if date.print_allowed else "print_refused"))
            item.setDisabled(bool(remark))
            ticked = not remark and before.get(date.id, _taken_unasked(date))
            item.setCheckState(0, Qt.CheckState.Checked if ticked else Qt.CheckState.Unchecked)
            for column in range(3):
                item.setToolTip(column, item.text(2))
            self.list.addTopLevelItem(item)
        self._enable()

    def _why_not(self, date):
        """Why a date cannot be taken, "" where it can."""
        if date.print_allowed is False and not self.look_only.isChecked():
            licence = date.licence
            return tr("May not be printed ({}).").format(licence) if licence else tr("May not be printed.")
        return ""

    def _doubt(self, date):
        if not date.registered:
            return tr("Not registered: it is taken as it lies.")
        if date.print_allowed is None:
            return tr("Nobody has said that it may be printed.")
        return tr("It is fetched from its server.") if date.on_server else ""

    def base(self):
        """The id of the base."""
        return self.base_box.currentData() or ""

    def chosen(self):
        """The ids of the dates to take, the base first."""
        items = [self.list.topLevelItem(row) for row in range(self.list.topLevelItemCount())]
        ticked = [i.data(0, _ID) for i in items if i.checkState(0) == Qt.CheckState.Checked]
        return [self.base(), *ticked]

    def _enable(self):
        base = next((date for date in self.dates if date.id == self.base()), None)
        reason = "" if base is not None else tr("The course has no date yet.")
        if base is not None:
            reason = self._why_not(base)
        self.begin_button.setEnabled(not reason and self.run is None)
        self.begin_button.setToolTip(reason or tr("Compose what is asked for above"))
        self._tell(reason)
        self.stop_button.setVisible(self.run is not None)
        self.progress.setVisible(self.run is not None)
        self.hint.setVisible(self.came is not None and bool(self.came.pictures))

    # Composing

    def asked(self):
        """What is asked for, ``composing.Asked``. Raises YardwrightError."""
        folder = self.folder.filePath().strip()
        if not folder:
            raise YardwrightError(tr("No folder is named."), tr("Name one for the pictures."))
        holes = None
        if self.in_hand.hole is not None and self.one_hole.isChecked():
            holes = (self.in_hand.hole,)
        elif self.in_hand.hole is not None and self.some_holes.isChecked():
            holes = holes_of(self.holes_edit.text(), [number for number, _, _ in self.in_hand.holes])
        base, *others = self.chosen()
        return Asked(base, tuple(others), holes, folder, not self.look_only.isChecked())

    def begin(self):
        """Begin to compose."""
        with told_in(self.bar):
            self.bar.clearWidgets()
            asked = self.asked()
            try:
                os.makedirs(asked.folder, exist_ok=True)
            except OSError as error:
                raise YardwrightError(
                    tr("The folder “{}” cannot be made ({}).").format(asked.folder, error.strerror),
                    tr("Choose a folder you may write to."),
                ) from error
            self.run = Composing(
                self.in_hand, asked, self._done, lambda share: self.progress.setValue(int(share))
            )
            self.progress.setValue(0)
            self.run.begin()
            self.came = None
            self.result.clear()
            self._look.start()
            self._enable()

    def _say(self):
        if self.run is not None:
            self._tell(self.run.text)

    def _tell(self, text):
        self.says.setText(text)
        self.says.setVisible(bool(text))

    def _cancel(self):
        if self.run is not None:
            self.run.cancel()
            self._tell(tr("Stopping…"))

    def _done(self, came, error):
        asked, self.run = self.run.asked, None
        self._look.stop()
        self._enable()
        with told_in(self.bar):
            if error is not None:
                raise error
            if came is None:
                self._tell(tr("Stopped; nothing was half written."))
                return
            self.came = came
            self._fill()
            self._enable()
            self._show(asked.base, asked.folder)
            for text in came.remarks:
                tell(self.bar, text)

    def _show(self, base, folder):
        """Add the pictures to the project and look at them."""
        made = [(self._title(one), one.path, one.source_path) for one in self.came.pictures]
        if made:
            add_composites(self.in_hand.project, made, base, folder)
            self.panel.refresh()
            composite = next(one for one in self.panel.composites if one.id == f"composite:{folder}")
            self.panel.show_date(composite.id)
            self.panel.choose_second(base)
            tell(
                self.bar,
                tr("Pictures made and added to the project: {}.").format(len(made)),
                level=Qgis.MessageLevel.Success,
            )

    def _title(self, picture):
        return tr("Hole {}").format(picture.hole) if picture.hole is not None else tr("Whole course")

    # What came of it

    def _fill(self):
        self.result.clear()
        for picture in self.came.pictures:
            top = QTreeWidgetItem([self._title(picture)])
            self.result.addTopLevelItem(top)
            for what, share in picture.shares:
                if share > 0:
                    item = QTreeWidgetItem(["", tr("{} %").format(f"{share:.1f}"), _said(what)])
                    item.setTextAlignment(1, flags_number(Qt.AlignmentFlag.AlignRight))
                    top.addChild(item)
            left = [one for one in self.came.left if one.picture == picture.name]
            for one in sorted(left, key=lambda each: -each.area_m2):
                item = QTreeWidgetItem(["", self._area(one.area_m2), one.why])
                item.setIcon(2, icon("dates_hidden"))
                item.setTextAlignment(1, flags_number(Qt.AlignmentFlag.AlignRight))
                item.setData(0, _SPOT, (one.x, one.y))
                item.setToolTip(2, tr("Stays hidden: {}. Click to go there.").format(one.why))
                top.addChild(item)
            top.setExpanded(True)
            spots = tr("{} spots stay hidden").format(len(left)) if left else tr("nothing stays hidden")
            top.setText(2, spots)

    def _area(self, square_metres):
        from ..measure.units import to_square_unit

        unit = self.in_hand.course().settings.unit
        return tr("{} sq {}").format(f"{to_square_unit(square_metres, unit):.1f}", unit)

    def _go(self, item):
        """Look at a spot that stays hidden."""
        spot = item.data(0, _SPOT)
        if spot is None:
            return
        with told_in(self.bar):
            canvas = self.in_hand.iface.mapCanvas()
            to_map = QgsCoordinateTransform(
                self.in_hand.layer("hole").crs(), canvas.mapSettings().destinationCrs(), self.in_hand.project
            )
            place = to_map.transform(QgsPointXY(*spot))
            canvas.setCenter(place)
            canvas.zoomScale(_SPOT_M * 2 / 0.12)
            canvas.flashGeometries([_about(place)], canvas.mapSettings().destinationCrs())

    # The end

    def done(self, result):
        """Qt calls this when the window is closed in whatever way. What is being composed is stopped; nothing
        is half written."""
        self.let_go()
        super().done(result)

    def let_go(self):
        """Stop, and listen to nothing any more."""
        self._look.stop()
        run, self.run = self.run, None
        if run is not None:
            run.stop()
        while self._connections:
            signal, connection = self._connections.pop()
            signal.disconnect(connection)


def _taken_unasked(date):
    """Whether a date is ticked at first: what a server shows may not always be copied from it."""
    return date.print_allowed is True or not date.on_server


def _said(what):
    """What a share is of: a date by its id, or how it was come by."""
    return {
        "lightened": tr("shade lightened in place"),
        "invented": tr("invented from what is about it"),
        "hidden": tr("still hidden"),
    }.get(what, what)


def _about(place):
    from qgis.core import QgsGeometry

    return QgsGeometry.fromPointXY(place)
