"""The dates of a course's images as what can be opened and how it is moved."""

import pytest
from yardwright.model.course import Course, ImageDate
from yardwright.store.image_dates import dates_of, is_fetched, metres_per_unit

TILES = "type=xyz&url=https://tiles.example/{z}/{x}/{y}.png&zmax=19"


def course(crs="EPSG:32630"):
    images = (
        ImageDate("may", source="images/may.tif", shift_e_m=0.3048, shift_n_m=-0.6096, taken_utc="09:30"),
        ImageDate("web", source=TILES),
        ImageDate("away", source="/data/away.tif", moved='{"turn":1.5,"stretch":1.0,"about":[5,6]}'),
    )
    return Course("Larkmere", crs, images=images)


def test_paths_and_moves(tmp_path):
    may, web, away = dates_of(course(), str(tmp_path / "larkmere.gpkg"))
    assert may.path == str(tmp_path / "images" / "may.tif") and may.taken_utc == "09:30"
    assert (may.move.east, may.move.north) == (0.3048, -0.6096)
    assert web.path == TILES and web.move.stays()
    assert away.path == "/data/away.tif" and (away.move.turn, away.move.about) == (1.5, (5.0, 6.0))


def test_shifts_in_the_unit_of_the_crs(tmp_path):
    """EPSG:2225 is in US survey feet of 1200/3937 m; a foot and two of 0.3048 m are hardly less."""
    may = dates_of(course("EPSG:2225"), str(tmp_path / "larkmere.gpkg"))[0]
    assert (may.move.east, may.move.north) == pytest.approx((0.999998, -1.999996), abs=1e-9)


@pytest.mark.parametrize(
    "crs, metres",
    [("EPSG:32630", 1), ("EPSG:2225", 1200 / 3937), ("EPSG:2222", 0.3048), ("EPSG:4326", 1), ("nonsense", 1)],
)
def test_metres_per_unit(crs, metres):
    assert metres_per_unit(crs) == pytest.approx(metres, rel=1e-12)


def test_what_only_qgis_fetches():
    assert is_fetched("contextualWMSLegend=0&layers=a&url=https://maps.example/wms") and is_fetched(TILES)
    assert not is_fetched("images/may&june.tif") and not is_fetched("")
