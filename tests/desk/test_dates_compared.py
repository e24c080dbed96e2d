"""The panel of dates with the small course: one date alone, another held, two beside a divider; nothing left."""

import pytest
from qgis.core import QgsRectangle
from qgis.PyQt.QtCore import QSize

from tests.desk.conftest import EAST, NORTH
from tests.desk.test_dates import COLOURS, dated, pixels  # noqa: F401  the fixture
from tests.desk.test_in_hand import in_hand  # noqa: F401  the fixture
from tests.desk.test_toolbar import iface  # noqa: F401  the fixture

SIZE = 400


@pytest.fixture
def panel(in_hand, dated, qtbot):  # noqa: F811
    """The panel beside a map of ground where nothing is drawn, so that a pixel names its date."""
    from yardwright.desk.dates_panel import DatesPanel

    window, canvas = in_hand.iface.window, in_hand.iface.canvas
    window.setCentralWidget(canvas)
    window.resize(SIZE + 200, SIZE + 200)
    window.show()
    qtbot.waitExposed(window)
    canvas.setDestinationCrs(in_hand.layer("hole").crs())
    canvas.setLayers([*dated.values()])
    canvas.setExtent(QgsRectangle(EAST - 250, NORTH - 300, EAST - 150, NORTH - 200))
    panel = DatesPanel(in_hand, window)
    panel.show()
    panel.refresh()
    yield panel
    panel.let_go()
    panel.deleteLater()


def seen(panel):
    """The colours of the map a quarter from its left and from its right, as they are on the screen."""
    view = panel.canvas.viewport()
    shot = pixels(view.grab().toImage().scaled(QSize(SIZE, SIZE)))
    row = SIZE // 3
    return tuple(shot[row, SIZE // 4].tolist()), tuple(shot[row, 3 * SIZE // 4].tolist())


def on(panel):
    root = panel.in_hand.project.layerTreeRoot()
    return {date.id for date in panel.dates if date.layer_id and root.findLayer(date.layer_id).isVisible()}


def test_one_date_alone_is_the_one_in_hand(panel, qtbot):
    assert [date.id for date in panel.dates] == sorted(COLOURS, reverse=True)
    with qtbot.waitSignal(panel.date_changed, timeout=3000):
        panel.show_date("2024-10-09")
    assert on(panel) == {"2024-10-09"} and panel.date_in_hand == "2024-10-09"
    panel.show_date("2023-04-12")
    assert on(panel) == {"2023-04-12"} and panel.date_in_hand == "2023-04-12"


def test_a_divider_between_two_dates(panel, qtbot):
    panel.show_date("2025-07-02")
    panel.choose_second("2023-04-12")
    panel.canvas.setLayers([panel.in_hand.project.mapLayer(panel.dates[0].layer_id)])
    panel.swipe(True)
    wanted = (COLOURS["2025-07-02"], COLOURS["2023-04-12"])
    qtbot.waitUntil(lambda: seen(panel) == wanted, timeout=8000)
    right = panel.canvas.getCoordinateTransform().toMapCoordinates(3 * panel.canvas.width() // 4, 50)
    left = panel.canvas.getCoordinateTransform().toMapCoordinates(panel.canvas.width() // 4, 50)
    assert (panel.date_at(left), panel.date_at(right)) == ("2025-07-02", "2023-04-12")
    panel.swipe(False)
    qtbot.waitUntil(lambda: seen(panel) == (wanted[0], wanted[0]), timeout=8000)


def test_the_other_date_is_seen_while_it_is_held(panel, qtbot):
    panel.show_date("2025-07-02")
    panel.choose_second("2024-10-09")
    panel.canvas.setLayers([panel.in_hand.project.mapLayer(panel.dates[0].layer_id)])
    extent = panel.canvas.extent()
    panel.flip(True)
    other = COLOURS["2024-10-09"]
    qtbot.waitUntil(lambda: seen(panel) == (other, other), timeout=8000)
    panel.flip(False)
    first = COLOURS["2025-07-02"]
    qtbot.waitUntil(lambda: seen(panel) == (first, first), timeout=8000)
    assert panel.canvas.extent() == extent


def test_a_second_view_goes_with_the_map(panel, qtbot):
    panel.show_date("2025-07-02")
    panel.show_linked(True)
    second = panel.linked.view
    panel.canvas.setRotation(30)
    panel.canvas.setExtent(QgsRectangle(EAST, NORTH, EAST + 50, NORTH + 50))
    qtbot.waitUntil(lambda: second.rotation() == 30, timeout=3000)
    qtbot.waitUntil(lambda: second.center().distance(panel.canvas.center()) < 0.01, timeout=3000)
    panel.show_linked(False)
    assert panel.linked is None


def test_an_image_taken_away_while_it_is_compared(panel, project, qtbot):
    before = len(panel.canvas.scene().items())
    panel.show_date("2025-07-02")
    panel.choose_second("2023-04-12")
    panel.swipe(True)
    assert len(panel.canvas.scene().items()) == before + 1
    gone = next(date.layer_id for date in panel.dates if date.id == "2023-04-12")
    project.removeMapLayer(gone)
    qtbot.waitUntil(lambda: panel.date_at(panel.canvas.center()) != "2023-04-12", timeout=3000)
    project.clear()
    qtbot.waitUntil(lambda: panel.dates == [], timeout=3000)
    assert not panel.comparison.swiping and len(panel.canvas.scene().items()) == before
    assert panel.in_hand.iface.bar.messages == []
