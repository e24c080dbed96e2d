"""Pages of the guide in QGIS's layout designer: opened with what they show, kept as the course's template.

QGIS imports this at its start: what is heavy is imported where it is used.
"""

from qgis.core import Qgis, QgsApplication
from qgis.PyQt.QtCore import QObject, QThread
from qgis.PyQt.QtWidgets import QAction

from ..resources import icon
from .words import tell, told_in, tr


def open_in_designer(iface, layout, name):
    """Open a page's layout in the designer, under a name that is made the project's only one; the designer.

    The layout is the project's from then on.
    """
    manager = layout.project().layoutManager()
    taken = {one.name() for one in manager.layouts()}
    number, unique = 1, name
    while unique in taken:
        number += 1
        unique = tr("{name} ({number})").format(name=name, number=number)
    layout.setName(unique)
    manager.addLayout(layout)
    return iface.openLayoutDesigner(layout)


class PageDesigners(QObject):
    """What the desk adds to layouts: actions in the designers of our pages, the panel of drawn parts, and
    figures of the course in hand for expressions."""

    def __init__(self, in_hand):
        super().__init__(in_hand)
        from ..guide.book_figures import look_into
        from .drawn_item_panel import register_panel

        self.in_hand = in_hand
        self.actions = []
        self._last = None
        self._look_away = look_into(self._book)
        self._opened = in_hand.iface.layoutDesignerOpened
        self._connection = self._opened.connect(self._add_actions)
        register_panel()

    def let_go(self):
        """Take all away again."""
        from qgis.PyQt import sip

        self._look_away()
        if self._connection is not None:
            self._opened.disconnect(self._connection)
            self._connection = None
        for action in self.actions:
            if not sip.isdeleted(action):
                sip.delete(action)
        self.actions = []

    def _book(self):
        """The BookFigures of the course in hand, None without one; threads get the one made last, for layers
        are read in the main thread only."""
        if QThread.currentThread() != QgsApplication.instance().thread():
            return self._last
        self._last = None
        if self.in_hand.place is not None:
            self._last = self.in_hand.kept("book figures", self._figures)
        return self._last

    def _figures(self):
        from ..guide.book_figures import BookFigures

        return BookFigures(self.in_hand.course(), self.in_hand.events(), self.in_hand.index())

    def _add_actions(self, designer):
        from ..guide.page_design import KINDS
        from ..guide.page_templates import KIND

        kind = designer.layout().customProperty(KIND)
        if kind not in KINDS:
            return
        menu = designer.layoutMenu()
        menu.addSeparator()
        keep = self._action(designer, tr("Keep as the Course’s Template"), self._keep)
        keep.setIcon(icon("yardwright"))
        designer.layoutToolbar().addAction(keep)
        menu.addAction(keep)
        menu.addAction(self._action(designer, tr("Take the Built-in Page Again"), self._drop))

    def _action(self, designer, text, slot):
        action = QAction(text, designer.window())

        def run():
            with told_in(designer.messageBar()):
                slot(designer)

        action.triggered.connect(run)
        self.actions.append(action)
        return action

    def _keep(self, designer):
        from ..guide.page_design import title_of
        from ..guide.page_templates import KIND, keep_template

        place = self._place()
        # The designer's own layout may be known to Python as no more than a QgsLayout, which has no name.
        layout = designer.masterLayout()
        kind = layout.customProperty(KIND)
        path = keep_template(layout, kind, place)
        tell(
            designer.messageBar(),
            tr("Kept as the course’s template of “{kind}”: {path}.").format(kind=title_of(kind), path=path),
            tr("The guide makes such pages from it now."),
            Qgis.MessageLevel.Success,
        )

    def _drop(self, designer):
        from ..guide.page_design import title_of
        from ..guide.page_templates import KIND, drop_template

        kind = designer.layout().customProperty(KIND)
        if drop_template(kind, self._place()):
            what = tr("The guide makes pages of “{kind}” from the built-in page again.")
        else:
            what = tr("The course has no template of its own of “{kind}”.")
        tell(designer.messageBar(), what.format(kind=title_of(kind)), "", Qgis.MessageLevel.Success)

    def _place(self):
        from ..model.errors import YardwrightError

        if self.in_hand.place is None:
            raise YardwrightError(
                self.in_hand.why_no_course(), tr("A template is kept beside its course’s file.")
            )
        return self.in_hand.place
