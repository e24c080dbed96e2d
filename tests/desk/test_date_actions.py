"""What is done with dates, in the menu and in the dates panel: off without a course, opened once, gone at the end."""

import pytest
from qgis.PyQt.QtWidgets import QToolButton
from yardwright.desk.date_actions import KEYS

from tests.desk.test_dates import dated  # noqa: F401  the fixture
from tests.desk.test_in_hand import in_hand  # noqa: F401  the fixture
from tests.desk.test_toolbar import iface, tools  # noqa: F401  the fixtures


def test_without_a_course_they_are_off_and_say_why(tools):  # noqa: F811
    for action in tools.date_actions.actions.values():
        assert not action.isEnabled() and "no course in this project" in action.toolTip()


def test_they_stand_in_the_menu_with_keys_of_their_own(tools):  # noqa: F811
    from yardwright.desk import drawing_bar, toolbar

    assert tools.date_actions.menu.menuAction() in tools.menu.actions()
    drawing = [*drawing_bar.KEYS.values(), *drawing_bar.HOW_KEYS.values()]
    taken = [*toolbar._KEYS.values(), *(f"Alt+Y, {key}" for key in drawing), *KEYS.values()]
    assert len(taken) == len(set(taken))
    for action in tools.date_actions.actions.values():
        assert action in tools.iface.registered


@pytest.fixture
def opened(tools, course_file):  # noqa: F811
    tools.add_course(str(course_file))
    return tools


def test_they_are_buttons_of_the_panel(opened):
    panel = opened.panel("dates_panel")
    defaults = [button.defaultAction() for button in panel.findChildren(QToolButton)]
    actions = list(opened.date_actions.actions.values())
    assert all(action in defaults for action in actions)
    assert all(action.isEnabled() for action in actions)


@pytest.mark.parametrize("name", ["registering", "composing"])
def test_a_window_is_opened_once_and_again_after_it_was_closed(opened, name):
    first = opened.date_actions.open(name)
    assert first.isVisible() and opened.date_actions.open(name) is first
    first.close()
    second = opened.date_actions.open(name)
    assert second is not first and second.isVisible()
    assert opened.iface.bar.messages == []


def test_the_panel_of_what_hides_is_opened_and_closed(opened, qtbot):
    opened.iface.window.show()
    action = opened.date_actions.actions["dates_hidden"]
    action.trigger()
    panel = opened.date_actions.hidden_panel
    assert panel in opened.iface.docks
    qtbot.waitUntil(lambda: action.isChecked(), timeout=20_000)
    action.trigger()
    assert not panel.isVisible()


def test_all_of_it_goes_with_the_toolbar(iface, project, course_file):  # noqa: F811
    from yardwright.desk.toolbar import CourseTools

    bar = CourseTools(iface)
    bar.add_course(str(course_file))
    there = len(iface.canvas.scene().items())
    windows = [bar.date_actions.open(name) for name in ("registering", "composing")]
    bar.date_actions.show_hidden(True)
    bar.remove()
    assert not any(window.isVisible() for window in windows)
    assert iface.registered == [] and iface.docks == []
    assert len(iface.canvas.scene().items()) <= there


def test_a_project_that_is_closed_takes_the_windows_along(opened, project, qtbot):
    windows = [opened.date_actions.open(name) for name in ("registering", "composing")]
    project.clear()
    qtbot.waitUntil(lambda: not any(window.isVisible() for window in windows), timeout=20_000)
    assert opened.iface.bar.messages == []
