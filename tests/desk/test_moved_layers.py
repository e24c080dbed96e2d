"""Raster layers that follow the moves of their dates: written, undone, opened, added, taken back."""

import os
import shutil

import numpy as np
import pytest
from osgeo import gdal
from qgis.core import QgsProject, QgsRasterLayer
from yardwright.desk.dates import dates_of, rasters_without_date
from yardwright.desk.moved_layers import MovedLayers
from yardwright.imagery.moves import Move, move_text
from yardwright.store.image_dates import moved_path

from tests.desk.test_dates import COLOURS, add_raster, add_row, dated, write_raster  # noqa: F401  a fixture
from tests.desk.test_in_hand import in_hand  # noqa: F401  the fixture
from tests.desk.test_toolbar import iface  # noqa: F401  the fixture

SPRING = "2023-04-12"


def set_move(in_hand, move, date_id=SPRING):  # noqa: F811
    """Change the row as a registration does, unsaved, and tell of it."""
    images = in_hand.layer("image")
    row = next(row for row in images.getFeatures() if row["id"] == date_id)
    if not images.isEditable():
        assert images.startEditing()
    images.beginEditCommand("register")
    for name, value in (
        ("shift_e_m", move.east),
        ("shift_n_m", move.north),
        ("moved", move_text(move) or None),
    ):
        assert images.changeAttributeValue(row.id(), images.fields().lookupField(name), value)
    images.endEditCommand()


@pytest.fixture
def moved(in_hand, dated):  # noqa: F811
    keeper = MovedLayers(in_hand)
    keeper.refresh()
    yield keeper
    keeper.let_go()


def test_a_registered_date_lies_moved_and_stays_the_same_layer(in_hand, dated, moved):  # noqa: F811
    layer = dated[SPRING]
    layer.setName("Spring")
    layer.setOpacity(0.6)
    layer.setCustomProperty("mine", "kept")
    before, source = layer.extent(), layer.source()
    set_move(in_hand, Move(2.5, -1.25))
    moved.refresh()
    path = moved_path(in_hand.place, SPRING)
    assert layer.isValid() and os.path.samefile(layer.source(), path)
    assert (layer.extent().xMinimum() - before.xMinimum(), layer.extent().yMinimum() - before.yMinimum()) == (
        2.5,
        -1.25,
    )
    assert (layer.name(), layer.opacity(), layer.customProperty("mine")) == ("Spring", 0.6, "kept")
    assert layer.renderer().type() == "multibandcolor"
    assert [date.layer_id for date in dates_of(in_hand) if date.id == SPRING] == [layer.id()]
    assert layer not in rasters_without_date(in_hand)
    others = [one.source() for day, one in dated.items() if day != SPRING]
    assert not any("moved" in one for one in others)

    in_hand.layer("image").undoStack().undo()
    moved.refresh()
    assert layer.source() == source and layer.extent() == before
    assert (layer.name(), layer.opacity(), layer.customProperty("mine")) == ("Spring", 0.6, "kept")
    assert not os.path.exists(path)


def test_another_move_is_shown_at_once(in_hand, dated, moved):  # noqa: F811
    layer = dated[SPRING]
    left = layer.extent().xMinimum()
    for east in (3.0, 5.5):
        set_move(in_hand, Move(east, 0))
        moved.refresh()
        assert layer.extent().xMinimum() == pytest.approx(left + east)


def test_a_turned_date_is_clear_beyond_its_edges(in_hand, dated, moved):  # noqa: F811
    layer = dated[SPRING]
    middle = layer.extent().center()
    set_move(in_hand, Move(1, 1, 5.0, 1.0, (middle.x(), middle.y())))
    moved.refresh()
    assert layer.isValid() and layer.bandCount() == 4 and layer.renderer().alphaBand() == 4
    set_move(in_hand, Move())
    moved.refresh()
    assert layer.bandCount() == 3 and layer.renderer().alphaBand() == -1


def test_a_layer_added_later_and_a_second_one_of_the_date(in_hand, dated, moved, tmp_path):  # noqa: F811
    set_move(in_hand, Move(2, 0))
    moved.refresh()
    again = add_raster(tmp_path / "images" / f"larkmere_{SPRING}.tif", "again")
    moved.refresh()
    assert again.source() == dated[SPRING].source()


def test_it_follows_by_itself(in_hand, dated, moved, qtbot):  # noqa: F811
    set_move(in_hand, Move(2, 0))
    qtbot.waitUntil(lambda: "moved" in dated[SPRING].source(), timeout=20_000)


def test_a_missing_virtual_image_is_written_again(in_hand, dated, moved):  # noqa: F811
    set_move(in_hand, Move(2, 0))
    moved.refresh()
    shutil.rmtree(os.path.dirname(moved_path(in_hand.place, SPRING)))
    another = MovedLayers(in_hand)
    another.refresh()
    assert gdal.Open(dated[SPRING].source()) is not None
    another.let_go()


def test_an_image_that_is_away_is_told_of(in_hand, dated, moved, tmp_path):  # noqa: F811
    os.remove(tmp_path / "images" / f"larkmere_{SPRING}.tif")
    set_move(in_hand, Move(2, 0))
    moved.refresh()
    assert any("cannot be shown moved" in text for text in in_hand.iface.messageBar().messages)
    set_move(in_hand, Move(0, 3), "2024-10-09")
    moved.refresh()
    assert "moved" in dated["2024-10-09"].source()


def test_what_comes_from_the_web_is_told_once(in_hand, dated, moved):  # noqa: F811
    tiles = "type=xyz&url=https://tiles.example/{z}/{x}/{y}.png&zmax=19"
    add_row(in_hand.layer("image"), id="web", source=tiles, shift_e_m=1.0)
    QgsProject.instance().addMapLayer(QgsRasterLayer(tiles, "web", "wms"))
    for _ in range(2):
        moved.refresh()
    texts = in_hand.iface.messageBar().messages
    assert sum("cannot be moved on the map" in text for text in texts) == 1


def test_local_shifts_on_the_map(in_hand, dated, moved):  # noqa: F811
    from yardwright.imagery.moves import LocalShifts

    box = dated[SPRING].extent()
    east = np.array([[0.0, 8.0], [0.0, 8.0]]).tolist()
    local = LocalShifts(box.xMinimum(), box.yMaximum(), box.width(), east, np.zeros((2, 2)).tolist())
    set_move(in_hand, Move(0, 0, local=local))
    moved.refresh()
    assert dated[SPRING].isValid()
    assert dated[SPRING].extent().width() == pytest.approx(box.width() + 8, abs=4.1)
