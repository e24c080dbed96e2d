"""The toolbar with a drawing tool for each kind of thing on a course, and how and from what it is drawn.

QGIS imports this at its start: the map tools are made when the first of them is taken in hand.
"""

from collections import Counter

from qgis.core import QgsSettings
from qgis.PyQt.QtCore import QObject, Qt
from qgis.PyQt.QtWidgets import QAction, QActionGroup, QComboBox, QInputDialog, QToolBar

from ..model.kinds import BY_NAME, OUTLINED, VIEWS
from ..resources import icon
from .words import told_in, tr, with_keys

KEYS = {
    "hole": "L",
    "tee": "T",
    "plate": "P",
    "green": "G",
    "apron": "A",
    "fairway": "F",
    "bunker": "B",
    "penalty_area": "W",
    "rough": "R",
    "trees": "K",
    "tree": "E",
    "path": "H",
    "boundary": "O",
    "marker": "M",
    "target": "X",
    "patch": "Ctrl+P",
}
"""The kinds that are drawn, in the order in which a hole is, and the letter that follows Alt+Y."""
HOW_KEYS = {"clicks": "1", "curve": "2", "stream": "3", "outline": "4"}
_HOW_ICONS = {"clicks": "draw_clicks", "curve": "draw_curve", "stream": "draw_stream", "outline": "outline"}


class DrawingBar(QObject):
    """What the drawing toolbar holds.

    ``seen_in(places)``, ``view``: the image's id and how well things are seen in it, which all that is drawn
    is given. ``date_at``: a function that gives the id of the date which the map shows at a place (QgsPointXY
    in the map's CRS), None as long as nobody chooses among the dates; ``second_date``: one that gives the
    date it is compared with.
    """

    def __init__(self, in_hand):
        super().__init__(in_hand)
        self.in_hand = in_hand
        self.iface = in_hand.iface
        self.date_at = self.second_date = None
        self.actions = {}
        self.tools = {}
        self.outline_tools = {}
        self.pointer = None
        self._how = self._by_hand = "clicks"
        self._tips = {}
        self._build()
        in_hand.course_changed.connect(self._course_changed)
        in_hand.tee_set_changed.connect(self._list_tee_sets)
        in_hand.edited.connect(self._list_tee_sets)
        self.iface.mapCanvas().mapToolSet.connect(self._tool_set)

    # Building

    def _build(self):
        window = self.iface.mainWindow()
        self.bar = QToolBar(tr("Yardwright: drawing"), window)
        self.bar.setObjectName("yardwright_drawing")
        self.bar.setWindowTitle(tr("Yardwright: drawing"))
        for kind, key in KEYS.items():
            action = self._action(f"draw_{kind}", self._title(kind), f"Alt+Y, {key}")
            action.setCheckable(True)
            action.triggered.connect(lambda checked, kind=kind: self.take(kind))
        self.bar.addSeparator()
        hows = QActionGroup(self)
        for how, text in (
            ("clicks", tr("Straight sides from click to click")),
            ("curve", tr("A smooth curve through the clicks")),
            ("stream", tr("Follow the moving pointer: a click begins, a right click ends")),
            ("outline", tr("Outline by one click inside: the margin follows the image")),
        ):
            action = self._action(_HOW_ICONS[how], text, f"Alt+Y, {HOW_KEYS[how]}")
            action.setCheckable(True)
            action.setChecked(how == self._how)
            hows.addAction(action)
            action.triggered.connect(lambda checked, how=how: self.draw_as(how))
        self.actions["outline"].setWhatsThis(
            tr(
                "A click inside a green, a bunker, a tee, a pond, a fairway or an apron finds its margin in "
                "the image that is shown. Enter, a right click or a second click inside takes it, Esc drops "
                "it, + and - make it wider and tighter; the vertex tool reshapes it afterwards."
            )
        )
        self.bar.addSeparator()
        self.tee_box = self._box("yardwright_tee_set", tr("The tee set that is drawn and measured from"))
        self.tee_box.activated.connect(lambda row: self.in_hand.choose_tee_set(self.tee_box.itemData(row)))
        self.view_box = self._box("yardwright_view", tr("How well what you draw is to be seen in the image"))
        for view, text in zip(VIEWS, (tr("clear"), tr("partly hidden"), tr("from another source"))):
            self.view_box.addItem(text, view)
        self.tee_box.setWhatsThis(
            tr(
                "Tees and plates that are drawn belong to this tee set, and distances at the pointer and on "
                "the map begin at its tee; as long as none is chosen, at the longest."
            )
        )
        self.view_box.setWhatsThis(
            tr(
                "Goes into all that is drawn: the figures of what is partly hidden, or known from another "
                "source, are less sure, and that is said."
            )
        )
        self.iface.addToolBar(self.bar)
        self.iface.initializationCompleted.connect(self._place_once)
        self._course_changed()

    def _place_once(self):
        """Give the bar a row of its own, or half of it would lie behind the end of the first.

        Once only: afterwards it stays where its user put it. QGIS places all bars at the end of its start.
        """
        settings = QgsSettings()
        if not settings.value("yardwright/drawing_bar_placed", False, type=bool):
            self.iface.mainWindow().insertToolBarBreak(self.bar)
            settings.setValue("yardwright/drawing_bar_placed", True)

    def _title(self, kind):
        point = BY_NAME[kind].geometry == "Point"
        words = tr("Place: {}") if point else tr("Draw: {}")
        return words.format(tr(BY_NAME[kind].title))

    def _action(self, name, text, keys):
        action = QAction(icon(name), text, self)
        action.setObjectName(f"yardwright_{name}")
        self._tips[name] = with_keys(text, keys)
        action.setWhatsThis(
            tr(
                "{}. Each click sets a corner; a right click ends, Backspace takes one back, Esc gives up."
            ).format(text)
        )
        self.actions[name] = action
        self.bar.addAction(action)
        self.iface.registerMainWindowAction(action, keys)
        return action

    def _box(self, name, tip):
        box = QComboBox(self.bar)
        box.setObjectName(name)
        box.setToolTip(tip)
        box.setAccessibleName(tip)
        box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        box.setFocusPolicy(Qt.FocusPolicy.ClickFocus)
        self.bar.addWidget(box)
        return box

    def remove(self):
        """Take everything away from QGIS again."""
        canvas = self.iface.mapCanvas()
        canvas.mapToolSet.disconnect(self._tool_set)
        self.iface.initializationCompleted.disconnect(self._place_once)
        for tool in self.outline_tools.values():
            tool.let_go()
        for tool in self._all_tools():
            if canvas.mapTool() is tool:
                canvas.unsetMapTool(tool)
            tool.deleteLater()
        if self.pointer is not None:
            self.pointer.let_go()
        for action in self.actions.values():
            self.iface.unregisterMainWindowAction(action)
        self.iface.mainWindow().removeToolBar(self.bar)
        self.bar.deleteLater()

    # What is drawn from

    def seen_in(self, places):
        """The id of the image drawn from: the one chosen, else the only one the map shows, else "".

        places: what is drawn, QgsPointXY in the map's CRS; across a divider between two dates the date that
        most of them are seen in.
        """
        if self.date_at is not None:
            ((date_id, _),) = Counter(self.date_at(place) for place in places).most_common(1)
            return date_id
        from .dates import dates_of

        root = self.in_hand.project.layerTreeRoot()
        nodes = {date.id: root.findLayer(date.layer_id) for date in dates_of(self.in_hand) if date.layer_id}
        shown = [date for date, node in nodes.items() if node is not None and node.isVisible()]
        return shown[0] if len(shown) == 1 else ""

    def patch_from(self, places):
        """The id of the date that a patch about ``places`` takes: the one seen there, else, where the map
        shows none or several, the one that is compared. Raises YardwrightError where there is neither."""
        found = self.seen_in(places) or (self.second_date() if self.second_date is not None else "")
        if not found:
            from ..model.errors import YardwrightError

            raise YardwrightError(
                tr("Which date the patch is to show is not known."),
                tr("Show that date alone on the map, or beyond the divider, and draw the patch there."),
            )
        return found

    @property
    def view(self):
        """How well things are seen, one of kinds.VIEWS."""
        return self.view_box.currentData()

    def ask_tee_set(self):
        """The tee set in hand; asked for where none is, and then remembered. None when nobody will say."""
        if not self.in_hand.tee_set:
            names = [tee_set.name for tee_set in self.in_hand.course().tee_sets]
            name, said = QInputDialog.getItem(
                self.iface.mainWindow(),
                tr("Tee set"),
                tr("Which tee set is it for? It is taken for the next ones too."),
                names,
                0,
                True,
            )
            if not said or not name.strip():
                return None
            self.in_hand.choose_tee_set(name.strip())
        return self.in_hand.tee_set

    # Choosing

    def take(self, kind):
        """Take the drawing tool of a kind in hand; that which outlines, where things are outlined."""
        with told_in(self.iface.messageBar()):
            self.in_hand.layers()
            tool = self._tool_of(kind)
            tool.draw_as(self._by_hand)
            self.iface.mapCanvas().setMapTool(tool)
            return
        self.actions[f"draw_{kind}"].setChecked(False)

    def _tool_of(self, kind):
        """The map tool of a kind, made when it is first taken in hand."""
        outlines = self._how == "outline" and kind in OUTLINED
        made = self.outline_tools if outlines else self.tools
        if kind not in made:
            if outlines:
                from .outline_tool import OutlineTool as Tool
            else:
                from .draw_tool import DrawTool as Tool
            made[kind] = Tool(self.in_hand, kind, self)
            made[kind].setAction(self.actions[f"draw_{kind}"])
        return made[kind]

    def _all_tools(self):
        return [*self.tools.values(), *self.outline_tools.values()]

    def kind_in_hand(self):
        """The kind whose drawing tool is in hand, None for none."""
        tool = self.iface.mapCanvas().mapTool()
        return tool.kind if any(tool is one for one in self._all_tools()) else None

    def draw_as(self, how):
        """Draw by one of draw_tool.HOWS from now on, or outline by one click where a kind can be.

        What cannot be outlined is drawn by hand as before.
        """
        kind = self.kind_in_hand()
        before = None if kind is None else self._tool_of(kind)
        self._how = how
        if how != "outline":
            self._by_hand = how
        for tool in self.tools.values():
            tool.draw_as(self._by_hand)
        if kind is not None and self._tool_of(kind) is not before:
            self.take(kind)
        self._show_how()

    def _show_how(self):
        """Tick how the kind in hand is drawn, and say why it cannot be outlined where it cannot."""
        kind = self.kind_in_hand()
        by_hand = kind is not None and kind not in OUTLINED
        how = self._by_hand if by_hand else self._how
        self.actions[_HOW_ICONS[how]].setChecked(True)
        reason = self.in_hand.why_no_course()
        if by_hand and not reason:
            reason = tr("A thing of this kind has no margin that an image shows: draw it by hand.")
        action = self.actions["outline"]
        action.setEnabled(not reason)
        action.setToolTip(f"{self._tips['outline']}\n{reason}" if reason else self._tips["outline"])

    def _tool_set(self, tool, _=None):
        ours = tool if hasattr(tool, "pointed") else None  # a tool of ours: it tells where it points
        if ours is not None:
            self.follow_pointer()
        if self.pointer is not None:
            self.pointer.follow(ours)
        self._show_how()

    def follow_pointer(self):
        """Begin to work out the figures under the pointer, once; the PointerFigures."""
        from .pointer import PointerFigures

        if self.pointer is None:
            self.pointer = PointerFigures(self.in_hand)
        return self.pointer

    def _course_changed(self):
        canvas = self.iface.mapCanvas()
        for tool in self._all_tools():
            # A layer more or less in the project is no reason to take the tool out of the hand amid drawing.
            if canvas.mapTool() is tool and not tool.draws_into(self.in_hand.layer(tool.kind)):
                canvas.unsetMapTool(tool)
        reason = self.in_hand.why_no_course()
        for name, action in self.actions.items():
            action.setEnabled(not reason)
            action.setToolTip(f"{self._tips[name]}\n{reason}" if reason else self._tips[name])
        for box in (self.tee_box, self.view_box):
            box.setEnabled(not reason)
        self._show_how()
        self._list_tee_sets()

    def _list_tee_sets(self):
        names = []
        if self.in_hand.place is not None:
            layer = self.in_hand.layer("tee_set")
            names = [str(row["name"]) for row in layer.getFeatures() if row["name"]] if layer else []
        if self.in_hand.tee_set and self.in_hand.tee_set not in names:
            names.append(self.in_hand.tee_set)
        self.tee_box.clear()
        self.tee_box.addItem(tr("Tee set…"), "")
        for name in names:
            self.tee_box.addItem(name, name)
        self.tee_box.setCurrentIndex(max(0, self.tee_box.findData(self.in_hand.tee_set)))
