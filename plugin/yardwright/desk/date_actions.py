"""What is done with the dates of a course besides looking at them: register, see what hides, compose.

QGIS imports this at its start: the windows are made when they are first asked for.
"""

from qgis.PyQt import sip
from qgis.PyQt.QtCore import QObject, Qt
from qgis.PyQt.QtWidgets import QAction, QMenu

from ..resources import icon
from .words import told_in, tr, with_keys

KEYS = {
    "dates_register": "Alt+Y, Ctrl+R",
    "dates_hidden": "Alt+Y, Ctrl+H",
    "dates_compose": "Alt+Y, Ctrl+K",
}


class DateActions(QObject):
    """The three actions, in a menu of their own and, as buttons, in the dates panel.

    in_hand: the CourseInHand. dates_panel: a function that gives the DatesPanel. ``actions``: by name.
    """

    def __init__(self, in_hand, dates_panel):
        super().__init__(in_hand)
        self.in_hand, self._dates_panel = in_hand, dates_panel
        self.iface = in_hand.iface
        self.windows, self.hidden_panel = {}, None
        self.actions, self._tips = {}, {}
        window = self.iface.mainWindow()
        self.menu = QMenu(tr("&Images of the dates"), window)
        self.menu.setObjectName("yardwright_dates_menu")
        self.menu.setToolTipsVisible(True)
        for name, text, short, tip, doing in (
            (
                "dates_register",
                tr("&Register dates…"),
                tr("Register…"),
                tr("Lay the images of the dates one on another"),
                lambda _: self.open("registering"),
            ),
            (
                "dates_hidden",
                tr("&What hides the ground"),
                tr("What hides"),
                tr("See shade, crowns, clouds and what moves on a date, and correct it with a brush"),
                self.show_hidden,
            ),
            (
                "dates_compose",
                tr("&Compose one clean picture…"),
                tr("Compose…"),
                tr("Make one picture of several dates, without shade and without what moves"),
                lambda _: self.open("composing"),
            ),
        ):
            self._add(name, text, tip, doing)
            # What its button in the panel says.
            self.actions[name].setIconText(short)
        self.actions["dates_hidden"].setCheckable(True)
        in_hand.course_changed.connect(self._enable)
        self._enable()

    def _add(self, name, text, tip, doing):
        action = QAction(icon(name), text, self.iface.mainWindow())
        action.setObjectName(f"yardwright_{name}")
        action.setWhatsThis(f"{tip}.")
        self._tips[name] = with_keys(tip, KEYS[name])

        def run(checked):
            with told_in(self.iface.messageBar()):
                doing(checked)

        action.triggered.connect(run)
        self.actions[name] = action
        self.menu.addAction(action)
        self.iface.registerMainWindowAction(action, KEYS[name])

    def _enable(self):
        reason = self.in_hand.why_no_course()
        for name, action in self.actions.items():
            action.setEnabled(not reason)
            action.setToolTip(f"{self._tips[name]}\n{reason}" if reason else self._tips[name])

    def open(self, name):
        """Open a window, ``registering`` or ``composing``, or fetch the one that is open; the window."""
        window = self.windows.get(name)
        if window is None or sip.isdeleted(window) or not window.isVisible():
            self._close(name)
            self.windows[name] = window = getattr(self, f"_make_{name}")()
            window.show()
        window.raise_()
        window.activateWindow()
        return window

    def _make_registering(self):
        from .registering_dialog import RegisteringDialog

        return RegisteringDialog(self.in_hand, self._dates_panel(), self.iface.mainWindow())

    def _make_composing(self):
        from .composing_dialog import ComposingDialog

        return ComposingDialog(self.in_hand, self._dates_panel(), self.iface.mainWindow())

    def show_hidden(self, on):
        """Open the panel of what hides the ground, or close it; the HiddenPanel."""
        if self.hidden_panel is None:
            from .hidden_panel import HiddenPanel

            self.hidden_panel = HiddenPanel(self.in_hand, self._dates_panel(), self.iface.mainWindow())
            self.iface.addDockWidget(Qt.DockWidgetArea.RightDockWidgetArea, self.hidden_panel)
            self.hidden_panel.setToggleVisibilityAction(self.actions["dates_hidden"])
        self.hidden_panel.setUserVisible(on)
        return self.hidden_panel

    def _close(self, name):
        window = self.windows.pop(name, None)
        if window is not None and not sip.isdeleted(window):
            window.close()
            window.deleteLater()

    def let_go(self):
        """Close all of it, and take the actions away from QGIS again."""
        for name in list(self.windows):
            self._close(name)
        if self.hidden_panel is not None:
            self.hidden_panel.let_go()
            self.iface.removeDockWidget(self.hidden_panel)
            self.hidden_panel.deleteLater()
        for action in self.actions.values():
            self.iface.unregisterMainWindowAction(action)
            action.deleteLater()
        self.menu.deleteLater()
