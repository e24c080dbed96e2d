"""The panel of dates with the small course: one date alone, another held, two beside a divider; nothing left."""

import zipfile

import pytest
from qgis.core import QgsRectangle
from qgis.PyQt.QtCore import QEvent, QPoint, QPointF, QSize, Qt
from qgis.PyQt.QtGui import QColor, QImage, QKeyEvent, QMouseEvent, QPainter
from qgis.PyQt.QtTest import QTest
from qgis.PyQt.QtWidgets import QApplication

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


def test_one_date_alone_is_the_one_in_hand(panel):
    assert [date.id for date in panel.dates] == sorted(COLOURS, reverse=True)
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
    qtbot.waitUntil(lambda: seen(panel) == wanted, timeout=20_000)
    right = panel.canvas.getCoordinateTransform().toMapCoordinates(3 * panel.canvas.width() // 4, 50)
    left = panel.canvas.getCoordinateTransform().toMapCoordinates(panel.canvas.width() // 4, 50)
    assert (panel.date_at(left), panel.date_at(right)) == ("2025-07-02", "2023-04-12")
    panel.swipe(False)
    qtbot.waitUntil(lambda: seen(panel) == (wanted[0], wanted[0]), timeout=20_000)


def test_the_other_date_is_seen_while_it_is_held(panel, qtbot):
    panel.show_date("2025-07-02")
    panel.choose_second("2024-10-09")
    panel.canvas.setLayers([panel.in_hand.project.mapLayer(panel.dates[0].layer_id)])
    extent = panel.canvas.extent()
    panel.flip(True)
    other = COLOURS["2024-10-09"]
    qtbot.waitUntil(lambda: seen(panel) == (other, other), timeout=20_000)
    panel.flip(False)
    first = COLOURS["2025-07-02"]
    qtbot.waitUntil(lambda: seen(panel) == (first, first), timeout=20_000)
    assert panel.canvas.extent() == extent


def test_a_second_view_goes_with_the_map(panel, qtbot):
    panel.show_date("2025-07-02")
    least = panel.in_hand.iface.window.centralWidget().minimumWidth()
    panel.show_linked(True)
    second = panel.linked.view
    panel.canvas.setRotation(30)
    panel.canvas.setExtent(QgsRectangle(EAST, NORTH, EAST + 50, NORTH + 50))
    qtbot.waitUntil(lambda: second.rotation() == 30, timeout=20_000)
    qtbot.waitUntil(lambda: second.center().distance(panel.canvas.center()) < 0.01, timeout=20_000)
    central = panel.in_hand.iface.window.centralWidget()
    panel.show_linked(False)
    assert panel.linked is None and central.minimumWidth() == least


def test_an_image_taken_away_while_it_is_compared(panel, project, qtbot):
    before = len(panel.canvas.scene().items())
    panel.show_date("2025-07-02")
    panel.choose_second("2023-04-12")
    panel.swipe(True)
    assert len(panel.canvas.scene().items()) == before + 1
    gone = next(date.layer_id for date in panel.dates if date.id == "2023-04-12")
    project.removeMapLayer(gone)
    qtbot.waitUntil(lambda: panel.date_at(panel.canvas.center()) != "2023-04-12", timeout=20_000)
    project.clear()
    qtbot.waitUntil(lambda: panel.dates == [], timeout=20_000)
    assert not panel.comparison.swiping and len(panel.canvas.scene().items()) == before
    assert panel.in_hand.iface.bar.messages == []


def test_the_columns_fit_into_the_list(panel, qtbot):
    panel.resize(420, 500)
    panel.show_date("2024-10-09")
    qtbot.waitUntil(lambda: panel.list.topLevelItem(1).font(0).bold(), timeout=20_000)
    header = panel.list.header()
    sizes = [header.sectionSize(column) for column in range(4)]
    assert sum(sizes) <= panel.list.viewport().width()
    assert sizes[0] >= panel.list.sizeHintForColumn(0)


def both(panel):
    """Divide the map and open the second view, with the filter on: all that a comparison can be."""
    panel.show_date("2025-07-02")
    panel.choose_second("2023-04-12")
    panel.swipe(True)
    panel.show_linked(True)
    panel.hidden_box.setChecked(True)
    panel.flip(True)
    assert panel.canvas.layerStyleOverrides()


def test_letting_go_twice_is_letting_go_once(panel):
    before = len(panel.canvas.scene().items())
    both(panel)
    linked, comparison = panel.linked, panel.comparison
    for _ in range(2):
        panel.let_go()
        comparison.let_go()
        comparison.picture.let_go()
        linked.let_go()
    assert len(panel.canvas.scene().items()) == before
    assert panel.canvas.layerStyleOverrides() == {}
    assert on(panel) == {"2025-07-02"}
    panel.canvas.refresh()
    QApplication.processEvents()
    assert panel.in_hand.iface.bar.messages == []


def page_of(path):
    with zipfile.ZipFile(path) as archive:
        return archive.read(next(one for one in archive.namelist() if one.endswith(".qgs"))).decode("utf-8")


def test_a_project_saved_amid_comparing_holds_nothing_of_it(panel, project, tmp_path, qtbot):
    panel.show_date("2025-07-02")
    plain, compared = tmp_path / "plain.qgz", tmp_path / "compared.qgz"
    assert project.write(str(plain))
    both(panel)
    qtbot.wait(300)
    assert project.write(str(compared))

    def of_interest(path):
        page = page_of(path)
        return (
            [line.strip() for line in page.splitlines() if "<layer-tree-layer" in line],
            [line.strip() for line in page.splitlines() if "<renderer-v2" in line or "<rule " in line],
            page.count("<mapcanvas"),
        )

    assert of_interest(compared) == of_interest(plain)
    assert "yardwright_second_map" not in page_of(compared)


def test_opened_again_a_project_is_shown_without_filter(panel, project, tmp_path, qtbot):
    """The same file, so that the course's place does not change."""
    file = tmp_path / "again.qgz"
    both(panel)
    assert project.write(str(file))
    assert project.read(str(file))
    assert panel.linked is None and not panel.comparison.swiping and not panel.comparison.held
    assert panel.canvas.layerStyleOverrides() == {} and not panel.hidden_box.isChecked()
    qtbot.waitUntil(lambda: panel.date_in_hand == "2025-07-02", timeout=20_000)
    assert panel.in_hand.iface.bar.messages == []


def test_a_closed_panel_hides_no_features(panel):
    panel.hidden_box.setChecked(True)
    assert panel.canvas.layerStyleOverrides()
    panel.close()
    assert panel.canvas.layerStyleOverrides() == {} and not panel.hidden_box.isChecked()


def test_another_course_taken_in_hand_amid_comparing(panel, project, tmp_path, qtbot):
    """Of the other course no image is there: nothing is left to compare."""
    from yardwright.store.course_file import create_course, open_course
    from yardwright.store.layer_group import add_course_group, place_of_group

    both(panel)
    path = tmp_path / "Thornwick.gpkg"
    create_course(str(path), "Thornwick", "EPSG:32630")
    with open_course(str(path)) as layers:
        place = place_of_group(add_course_group(project, layers))
    panel.in_hand.refresh()
    panel.in_hand.choose(place)
    qtbot.waitUntil(lambda: panel.dates == [], timeout=20_000)
    assert panel.linked is None and not panel.comparison.swiping and not panel.comparison.held
    assert panel.canvas.layerStyleOverrides() == {}
    assert panel.in_hand.iface.bar.messages == []


# The divider


@pytest.fixture
def divided(panel, qtbot):
    panel.show_date("2025-07-02")
    panel.choose_second("2023-04-12")
    panel.canvas.setLayers([panel.in_hand.project.mapLayer(panel.dates[0].layer_id)])
    panel.swipe(True)
    wanted = (COLOURS["2025-07-02"], COLOURS["2023-04-12"])
    qtbot.waitUntil(lambda: seen(panel) == wanted, timeout=20_000)
    return panel


def test_the_divider_stays_in_sight(divided):
    for wanted in (-1, 0, 1, 2):
        divided.comparison.move_to(wanted)
        assert 0 < divided.comparison.divider < 1
        line = divided.comparison.overlay.far_side().left()
        assert 5 < line < divided.canvas.width() - 5
    assert divided.divider_slider.value() == round(divided.comparison.divider * 1000)


def test_keys_move_the_divider_and_not_the_map(divided):
    looked, at = divided.canvas.extent(), divided.comparison.divider
    QTest.keyClick(divided.canvas, Qt.Key.Key_Right, Qt.KeyboardModifier.ControlModifier)
    assert divided.comparison.divider == pytest.approx(at + 0.02) and divided.canvas.extent() == looked
    # The keys of the other direction are the map's.
    QTest.keyClick(divided.canvas, Qt.Key.Key_Up, Qt.KeyboardModifier.ControlModifier)
    assert divided.comparison.divider == pytest.approx(at + 0.02)
    divided.divider_slider.setValue(250)
    assert divided.comparison.divider == 0.25
    divided.swipe(False)
    asked = QKeyEvent(QEvent.Type.ShortcutOverride, Qt.Key.Key_Right, Qt.KeyboardModifier.ControlModifier)
    asked.ignore()
    QApplication.sendEvent(divided.canvas, asked)
    assert not asked.isAccepted() and divided.comparison.divider == 0.25


def test_the_divider_does_not_jump_when_it_is_taken(divided):
    view, overlay = divided.canvas.viewport(), divided.comparison.overlay
    middle, at = overlay.grip().center().toPoint(), divided.comparison.divider

    def mouse(kind, x, y):
        """Handed over by itself, for without a screen QTest moves no mouse."""
        left, none = Qt.MouseButton.LeftButton, Qt.MouseButton.NoButton
        button = none if kind == QEvent.Type.MouseMove else left
        held = none if kind == QEvent.Type.MouseButtonRelease else left
        place = QPointF(middle + QPoint(x, y))
        event = QMouseEvent(kind, place, place, button, held, Qt.KeyboardModifier.NoModifier)
        QApplication.sendEvent(view, event)

    mouse(QEvent.Type.MouseButtonPress, 12, 0)
    mouse(QEvent.Type.MouseMove, 12, 5)
    assert divided.comparison.divider == pytest.approx(at, abs=0.5 / view.width())
    mouse(QEvent.Type.MouseMove, -88, 5)
    mouse(QEvent.Type.MouseButtonRelease, -88, 5)
    mouse(QEvent.Type.MouseMove, 50, 5)
    assert divided.comparison.divider == pytest.approx(at - 100 / view.width(), abs=1.5 / view.width())


@pytest.mark.parametrize("across", [True, False])
@pytest.mark.parametrize("ground", ["#ffffff", "#000000", "#808080", "#ff0000", "#00ff00"])
def test_the_divider_stands_out_on_any_ground(divided, ground, across):
    """A contrast of 3:1 is what WCAG 2.1 asks of graphics (1.4.11), by its own formula of luminance."""
    divided.comparison.swipe(True, across)
    overlay = divided.comparison.overlay
    image = QImage(divided.canvas.viewport().size(), QImage.Format.Format_RGB32)
    image.fill(QColor(ground))
    overlay.lay(None, None)
    painter = QPainter(image)
    overlay.paint(painter)
    painter.end()
    middle = image.width() // 2 if across else image.height() // 2
    grip = overlay.grip()
    for at in (20, round(grip.center().y() if across else grip.center().x())):
        row = [image.pixelColor(*((n, at) if across else (at, n))) for n in range(middle - 30, middle + 31)]
        best = max(contrast(one, QColor(ground)) for one in row)
        assert best >= 3
        # Two neighbours of strong contrast make an edge even where the ground changes under it.
        assert max(contrast(one, other) for one, other in zip(row, row[2:])) >= 3


def contrast(one, other):
    """The contrast ratio of two colours as WCAG 2.1 defines it."""

    def luminance(colour):
        parts = [colour.redF(), colour.greenF(), colour.blueF()]
        linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in parts]
        return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]

    low, high = sorted((luminance(one), luminance(other)))
    return (high + 0.05) / (low + 0.05)


def test_the_map_shows_another_date_beyond_the_divider(divided):
    canvas = divided.canvas
    left, right = [canvas.getCoordinateTransform().toMapCoordinates(x, 60) for x in (20, canvas.width() - 20)]
    assert (divided.date_at(left), divided.date_at(right)) == ("2025-07-02", "2023-04-12")
    divided.comparison.move_to(1)
    assert divided.date_at(right) == "2025-07-02"
    divided.comparison.move_to(0)
    assert divided.date_at(left) == "2023-04-12"
    divided.swipe(False)
    assert divided.date_at(left) == "2025-07-02"
    divided.flip(True)
    assert divided.date_at(left) == divided.date_at(right) == "2023-04-12"
    divided.flip(False)
