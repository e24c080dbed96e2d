"""Pages in the layout designer: what is added to it, templates kept from it, figures of the course in hand."""

import os
import threading

import pytest
from qgis.core import QgsExpression, QgsExpressionContext, QgsPrintLayout
from qgis.gui import QgsGui, QgsLayoutItemPropertiesWidget
from qgis.PyQt.QtWidgets import QMainWindow, QMenu, QToolBar
from yardwright.desk.in_hand import CourseInHand
from yardwright.desk.page_designer import PageDesigners, open_in_designer
from yardwright.guide.expressions import add_expressions
from yardwright.guide.page_layouts import PageContent, layout_of
from yardwright.guide.page_templates import built_in, template_of, template_path

from tests.desk.test_toolbar import Bar, Iface, iface  # noqa: F401  the fixture

POCKET = (107.95, 177.8)


class Designer:
    """As much of the interface of QGIS's layout designer as is used."""

    def __init__(self, layout):
        self._layout = layout
        self._window = QMainWindow()
        self._menu, self._toolbar, self.bar = QMenu(), QToolBar(), Bar()

    def layout(self):
        return self._layout

    masterLayout = layout

    def window(self):
        return self._window

    def layoutMenu(self):
        return self._menu

    def layoutToolbar(self):
        return self._toolbar

    def messageBar(self):
        return self.bar

    def texts(self):
        return [action.text() for action in self._menu.actions() if action.text()]

    def trigger(self, text):
        (action,) = [action for action in self._menu.actions() if action.text().startswith(text)]
        action.trigger()
        return self.bar.messages[-1]


@pytest.fixture
def designers(iface, place):  # noqa: F811
    """The PageDesigners of a course in hand."""
    in_hand = CourseInHand(iface)
    made = PageDesigners(in_hand)
    in_hand.refresh()
    yield made
    made.let_go()
    in_hand.let_go()


def opened(iface, project, kind="notes"):  # noqa: F811
    designer = Designer(layout_of(project, built_in(kind, POCKET), PageContent({"heading": "Notes"})))
    iface.layoutDesignerOpened.emit(designer)
    return designer


def test_a_page_is_kept_as_the_courses_template_and_dropped(designers, iface, project, place):  # noqa: F811
    designer = opened(iface, project)
    assert designer.texts() == ["Keep as the Course’s Template", "Take the Built-in Page Again"]
    told = designer.trigger("Keep")
    assert template_path("notes", place) in told and "“Page for notes”" in told
    assert template_of("notes", place, POCKET).path == template_path("notes", place)
    assert "built-in page again" in designer.trigger("Take")
    assert template_of("notes", place, POCKET).path == ""
    assert "no template of its own" in designer.trigger("Take")


def test_a_page_that_lacks_a_part_says_so_in_the_designer(designers, iface, project, place):  # noqa: F811
    designer = opened(iface, project)
    designer.layout().removeLayoutItem(designer.layout().itemById("lines"))
    assert "The page lacks “lines”." in designer.trigger("Keep")
    assert not os.path.exists(template_path("notes", place))


def test_other_layouts_are_left_alone(designers, iface, project):  # noqa: F811
    designer = Designer(QgsPrintLayout(project))
    iface.layoutDesignerOpened.emit(designer)
    assert designer.texts() == []


def test_actions_go_when_the_plugin_goes(designers, iface, project):  # noqa: F811
    designer = opened(iface, project)
    designers.let_go()
    assert designer.texts() == []
    assert opened(iface, project).texts() == []


def test_without_a_course_a_template_has_no_place(designers, iface, project):  # noqa: F811
    designer = opened(iface, project)
    project.clear()
    designers.in_hand.refresh()
    designer.layout = lambda: layout_of(project, built_in("notes", POCKET), PageContent())
    assert "There is no course in this project" in designer.trigger("Keep")


def test_expressions_look_into_the_course_in_hand(designers, iface, project):  # noqa: F811
    take_away = add_expressions()
    try:

        def value():
            return QgsExpression("hole_length(1, 'Heron')").evaluate(QgsExpressionContext())

        # The hole's green ends 345 to 375 yd north of the tee: its middle is 360 yd away.
        assert value() == 360
        found = []
        thread = threading.Thread(target=lambda: found.append(value()))
        thread.start()
        thread.join()
        assert found == [360]
        designers.let_go()
        assert value() is None
    finally:
        take_away()


def test_a_layout_opens_under_a_name_of_its_own(iface, project):  # noqa: F811
    shown = []
    iface.openLayoutDesigner = lambda layout: shown.append(layout.name()) or "designer"
    for _ in range(3):
        layout = layout_of(project, built_in("notes", POCKET), PageContent())
        assert open_in_designer(iface, layout, "Notes") == "designer"
    assert shown == ["Notes", "Notes (2)", "Notes (3)"]
    assert [one.name() for one in project.layoutManager().layouts()] == shown


def test_a_drawn_part_has_a_panel(designers, project):
    layout = layout_of(project, built_in("notes", POCKET), PageContent())
    item = layout.itemById("lines")
    panel = QgsGui.layoutItemGuiRegistry().createItemWidget(item)
    assert "Lines to write on" in panel.what.text()
    assert panel.findChildren(QgsLayoutItemPropertiesWidget)
    assert not item.keeps_shape
    panel.keeps_shape.click()
    assert item.keeps_shape
    layout.undoStack().stack().undo()
    assert not layout.itemById("lines").keeps_shape
