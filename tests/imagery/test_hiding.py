"""What hides the ground, against the painted course, whose truth is known, and on photographs, where what is
expected was seen by eye.

The figures of the painted course are those measured, with a margin.
"""

import glob
import importlib.util
import os
from pathlib import Path
from types import SimpleNamespace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from osgeo import gdal
from scipy.ndimage import binary_dilation, label
from yardwright.imagery import shade
from yardwright.imagery.dates import Date
from yardwright.imagery.grid import Grid
from yardwright.imagery.hiding import CLOUD, CROWN, EMPTY, HALO_M, MOVER, SHADE, Ground, hidden, learn_looks
from yardwright.imagery.patches import coarser
from yardwright.imagery.sun import Sun, sun_on_grid
from yardwright.model.geometry import map_points

SHARED = Path(__file__).resolve().parents[3] / "shared" / "data"
GSD, METRES = 0.25, 180.0


# The painted course


def opaque(planes):
    """(3, h, w) -> (h, w, 4)."""
    picture = np.full((*planes.shape[1:], 4), 255, np.uint8)
    picture[..., :3] = planes.transpose(1, 2, 0)
    return picture


@pytest.fixture(scope="module")
def course():
    """A part of the painted course with golfers: pictures of the three dates (summer first), the truth."""
    from shapely.geometry import Point

    from sample_project import pictures, plan
    from sample_project.drawing import drawing, to_crs

    drawn = drawing()
    middle = np.mean([thing[:2] for thing in pictures.scene().people[:5]], axis=0)
    left, top = np.round(middle + (-METRES / 2, METRES / 2))
    view = pictures.View(left, top, GSD, int(METRES / GSD), int(METRES / GSD))

    def burnt(shapes):
        return pictures._burn(view, map_points(shapes, to_crs)).astype(bool)

    def of(*kinds):
        return [feature.geometry for kind in kinds for feature in drawn.of(kind)]

    trees = [Point(t.geometry.coords[0]).buffer(t.get("crown_radius_m")) for t in drawn.of("tree")]
    ground = Ground(
        open=burnt(of("tee", "green", "apron", "fairway", "bunker")),
        woods=burnt(of("trees") + trees),
        water=burnt([f.geometry for f in drawn.of("penalty_area") if f.get("water")]),
    )
    seasons = (pictures.SUMMER, pictures.SPRING, pictures.AUTUMN)
    shown, dark, moving, suns = [], [], [], []
    for season in seasons:
        picture = pictures.paint(view, season)
        bare = pictures.paint(view, season, people=False)
        lit = pictures.paint(view, season, shadows=False, people=False, grain=False).sum(axis=0, dtype=float)
        smooth = pictures.paint(view, season, people=False, grain=False).sum(axis=0, dtype=float)
        shown.append(opaque(picture))
        dark.append(1 - smooth / lit)
        moving.append(np.abs(picture.astype(int) - bare).max(axis=0) > 25)
        date = Date(season.id, "", taken=season.id, taken_utc=season.taken.strftime("%H:%M"))
        suns.append(sun_on_grid(date, plan.CRS, middle))
    pixels = Grid(view.columns, view.rows, (left, GSD, 0, top, 0, -GSD), plan.CRS).to_pixels
    return SimpleNamespace(
        shown=shown, dark=dark, moving=moving, suns=suns, ground=ground, pixels=pixels, scene=pictures.scene()
    )


def learnt(course, dates=(0, 1, 2), drawn=True):
    parts = (course.ground.open, course.ground.woods, course.ground.water)
    coarse = Ground(*(coarser(part, 4) for part in parts)) if drawn else None
    pictures = [coarser(course.shown[k], 4) for k in dates]
    return learn_looks(pictures, 4 * GSD, [course.suns[k] for k in dates], coarse)


@pytest.fixture(scope="module")
def found(course):
    return hidden(course.shown, GSD, learnt(course), course.ground)


def bare_ground(course):
    return ~course.ground.woods & ~course.ground.water


@pytest.mark.parametrize(("date", "least"), [(0, 0.9), (1, 0.8), (2, 0.92)])
def test_shade_is_found_on_every_date(course, found, date, least):
    where = bare_ground(course)
    deep = where & (course.dark[date] > 0.25)
    assert deep.sum() > 1500
    assert ((found[date] & SHADE) > 0)[deep].mean() > least


@pytest.mark.parametrize(("date", "least"), [(0, 0.7), (1, 0.75), (2, 0.9)])
def test_what_is_called_shade_is(course, found, date, least):
    called = ((found[date] & SHADE) > 0) & bare_ground(course)
    assert (course.dark[date][called] > 0.05).mean() > least


def test_no_lit_turf_of_play_is_called_shade(course, found):
    for mask, dark in zip(found, course.dark):
        lit = course.ground.open & bare_ground(course) & (dark < 0.03)
        # A pixel or two beside true shade is its penumbra.
        lit &= ~binary_dilation(dark > 0.1, iterations=4)
        assert ((mask & SHADE) > 0)[lit].mean() < 0.002


def people_in_view(course, sunlit):
    """Rows and columns of the people that summer shows, those in the sun only where told."""
    places = course.pixels([thing[:2] for thing in course.scene.people])
    rows, columns = np.floor(places[:, ::-1]).astype(int).T
    side = course.shown[0].shape[0]
    inside = (rows > 8) & (rows < side - 8) & (columns > 8) & (columns < side - 8)
    places = [(r, c) for r, c in zip(rows[inside], columns[inside]) if course.moving[0][r, c]]
    return [(r, c) for r, c in places if not sunlit or course.dark[0][r, c] < 0.1]


def test_movers_are_found_with_most_of_their_shadow(course, found):
    people = people_in_view(course, sunlit=True)
    assert len(people) >= 4
    moves = (found[0] & MOVER) > 0
    assert all(moves[r, c] for r, c in people)
    seen = course.moving[0] & (course.dark[0] < 0.1) & bare_ground(course)
    assert moves[seen].mean() > 0.85


def test_nothing_is_called_a_mover_that_does_not_move(course, found):
    """On what is played, on the date with people and on those without; the shadows of flagsticks move."""
    for mask, moving, dark in zip(found, course.moving, course.dark):
        parts, many = label((mask & MOVER) > 0, np.ones((3, 3)))
        true = np.zeros(many + 1, bool)
        true[parts[binary_dilation(moving | (dark > 0.05), iterations=2)]] = True
        on_play = np.unique(parts[course.ground.open])
        assert not [n for n in on_play if n and not true[n]]


def test_posts_that_all_dates_show_are_no_movers(course, found):
    places = course.pixels([thing[:2] for thing in course.scene.posts])
    rows, columns = np.floor(places[:, ::-1]).astype(int).T
    side = course.shown[0].shape[0]
    inside = (rows >= 0) & (rows < side) & (columns >= 0) & (columns < side)
    posts = [(r, c) for r, c in zip(rows[inside], columns[inside]) if not course.moving[0][r, c]]
    assert len(posts) >= 2
    for mask in found:
        assert not any(mask[r, c] & MOVER for r, c in posts)


def test_one_date_alone(course):
    """Shade by its colour, people by theirs: most of them, and nothing else on what is played."""
    (mask,) = hidden(course.shown[:1], GSD, learnt(course, (0,)), course.ground)
    deep = bare_ground(course) & (course.dark[0] > 0.25)
    assert ((mask & SHADE) > 0)[deep].mean() > 0.85
    people = people_in_view(course, sunlit=True)
    assert np.mean([(mask[r - 1 : r + 2, c - 1 : c + 2] & MOVER).any() for r, c in people]) > 0.5


def test_any_date_may_be_the_base(course, found):
    order = (2, 1, 0)
    masks = hidden([course.shown[k] for k in order], GSD, learnt(course, order), course.ground)
    deep = bare_ground(course) & (course.dark[0] > 0.25)
    assert ((masks[2] & SHADE) > 0)[deep].mean() > 0.85
    assert all(masks[2][r, c] & MOVER for r, c in people_in_view(course, sunlit=True))


def test_without_drawings_crowns_are_no_shade(course):
    masks = hidden(course.shown, GSD, learnt(course, drawn=False))
    for mask, dark in zip(masks, course.dark):
        deep = bare_ground(course) & (dark > 0.25)
        assert ((mask & (SHADE | CROWN)) > 0)[deep].mean() > 0.75
    woods = course.ground.woods
    assert ((masks[0] & CROWN) > 0)[woods].mean() > 0.5
    assert ((masks[0] & CROWN) > 0)[course.ground.open & ~binary_dilation(woods, iterations=12)].mean() < 0.01


def test_a_block_is_judged_as_the_whole(course, found):
    """With its halo about it."""
    looks = learnt(course)
    rows, columns = slice(0, 560), slice(80, 720)
    ground = Ground(
        *(p[rows, columns] for p in (course.ground.open, course.ground.woods, course.ground.water))
    )
    part = hidden([p[rows, columns] for p in course.shown], GSD, looks, ground)
    halo = int(HALO_M / GSD)
    for mask, whole in zip(part, found):
        inner = mask[:-halo, halo:]
        assert (inner != whole[0 : 560 - halo, 80 + halo : 720]).mean() < 0.002


@pytest.mark.parametrize("factor", [0.75, 1.2])
def test_a_brighter_picture_has_the_same_shade(course, found, factor):
    """One of the dates brighter or darker as a whole."""
    changed = list(course.shown)
    changed[1] = changed[1].copy()
    changed[1][..., :3] = np.clip(np.rint(changed[1][..., :3] * factor), 0, 255)
    dates = SimpleNamespace(**{**vars(course), "shown": changed})
    masks = hidden(changed, GSD, learnt(dates), course.ground)
    for mask, before in zip(masks, found):
        one, other = (((m & SHADE) > 0) & bare_ground(course) for m in (mask, before))
        assert (one & other).sum() > 0.85 * (one | other).sum()


def test_pictures_are_left_as_they_are(course):
    """Also such as lie in memory plane by plane."""
    planes = np.asfortranarray(course.shown[0])
    pictures = [planes, *course.shown[1:]]
    before = [p.copy() for p in pictures]
    hidden(pictures, GSD, learnt(course), course.ground)
    assert all(np.array_equal(a, b) for a, b in zip(pictures, before))


# Whatever is given


def turf(shape, seed=0, noise=4.0):
    rng = np.random.default_rng(seed)
    picture = np.full((*shape, 4), 255, np.uint8)
    picture[..., :3] = np.clip(rng.normal((80, 120, 60), noise, (*shape, 3)), 0, 255)
    return picture


@settings(max_examples=15, deadline=None)
@given(
    st.integers(1, 70),
    st.integers(1, 70),
    st.sampled_from([0.1, 0.25, 0.5, 1.0]),
    st.integers(1, 3),
    st.integers(0, 3),
)
def test_masks_fit_their_pictures(rows, columns, gsd, dates, clear):
    pictures = [turf((rows, columns), seed) for seed in range(dates)]
    if clear < dates:
        pictures[clear][...] = 0
    looks = learn_looks(pictures, gsd, [Sun(150.0, 30.0)])
    masks = hidden(pictures, gsd, looks)
    assert len(masks) == dates
    for k, mask in enumerate(masks):
        assert mask.shape == (rows, columns) and mask.dtype == np.uint8
        assert (mask == EMPTY).all() if k == clear else not (mask & EMPTY).any()


def test_even_turf_hides_nothing():
    for dates in (1, 3):
        pictures = [turf((240, 240), seed) for seed in range(dates)]
        looks = learn_looks([coarser(p, 4) for p in pictures], 1.0)
        assert [turf.threshold for turf in looks.turfs] == [None] * dates
        assert not any(mask.any() for mask in hidden(pictures, 0.25, looks))


def test_half_a_picture_is_empty_and_the_other_date_is_still_judged():
    pictures = [turf((240, 240), 1), turf((240, 240), 2)]
    pictures[0][:, :120] = 0
    pictures[1][100:104, 200:208, :3] = 235
    masks = hidden(pictures, 0.25, learn_looks([coarser(p, 4) for p in pictures], 1.0))
    assert (masks[0][:, :120] == EMPTY).all() and not masks[0][:, 120:].any()
    assert (masks[1][101:103, 201:207] & MOVER).all()


def test_dark_turf_is_not_shade_and_shade_is():
    """Both half as bright; the one in the light of the sky, which is blue."""
    pictures = [turf((320, 320), 1), turf((320, 320), 2)]
    one = pictures[0]
    one[60:120, 60:120, :3] = one[60:120, 60:120, :3] * 0.62
    one[200:260, 200:260, :3] = one[200:260, 200:260, :3] * (0.36, 0.41, 0.52)
    (mask, _) = hidden(pictures, 0.25, learn_looks([coarser(p, 2) for p in pictures], 0.5))
    assert ((mask & SHADE) > 0)[204:256, 204:256].mean() > 0.98
    assert ((mask & SHADE) > 0)[:160, :160].mean() < 0.02


def test_shade_lies_away_from_the_sun():
    standing = np.zeros((80, 80), bool)
    standing[40, 40] = True
    reach = shade.in_reach(standing, Sun(90.0, 45.0), 1.0)
    assert reach[40, 20] and not reach[40, 60] and not reach[20, 40]
    reach = shade.in_reach(standing, Sun(180.0, 45.0), 1.0)
    assert reach[20, 40] and not reach[60, 40]
    assert shade.in_reach(standing, None, 1.0) is None


# Photographs


def photograph(path):
    """A tile without a place, (h, w, 4)."""
    return opaque(gdal.Open(path).ReadAsArray()[:3])


def alone(picture, gsd, factor):
    (mask,) = hidden([picture], gsd, learn_looks([coarser(picture, factor)], gsd * factor))
    return mask


def tile(name):
    path = os.path.join(SHARED, "golf-tiles", f"golfcourse{name}.tif")
    if not os.path.exists(path):
        pytest.skip("the golf tiles are not here")
    return photograph(path)


@pytest.mark.parametrize(("name", "row", "column"), [("72", 81, 119), ("84", 64, 142)])
def test_a_cart_on_a_photograph(name, row, column):
    """The white cart stands there, its shadow beside it."""
    mask = alone(tile(name), 0.3, 2)
    assert (mask[row - 2 : row + 3, column - 2 : column + 3] & MOVER).any()
    parts, many = label((mask & MOVER) > 0)
    assert many <= 4


def test_shade_over_a_bunker_on_a_photograph():
    """Half of the bunker in the upper middle lies in shade; the one lowest down lies in the sun."""
    mask = alone(tile("18"), 0.3, 2)
    assert ((mask & SHADE) > 0)[96:108, 188:202].mean() > 0.9
    assert not (mask[85:100, 170:178] & SHADE).any()
    assert not (mask[205:232, 130:146] & (SHADE | CLOUD)).any()


def test_bunkers_are_no_clouds():
    paths = sorted(glob.glob(os.path.join(SHARED, "golf-tiles", "*.tif")))
    if not paths:
        pytest.skip("the golf tiles are not here")
    cloudy = [os.path.basename(p) for p in paths if (alone(photograph(p), 0.3, 2) & CLOUD).any()]
    assert cloudy == []


def carried(package, *names):
    found = importlib.util.find_spec(package)
    if found is None:
        pytest.skip(f"{package} is not installed")
    paths = glob.glob(os.path.join(os.path.dirname(found.origin), "**", names[-1]), recursive=True)
    if not paths:
        pytest.skip(f"{package} carries no {names[-1]}")
    return photograph(paths[0])


def test_long_shadows_and_dark_water_on_a_photograph():
    """The shadow along the hall at the lower left; the basin at the upper left is dark water."""
    mask = alone(carried("deepforest", "test_tiled.tif"), 0.25, 4)
    assert ((mask & SHADE) > 0)[822:836, 95:110].mean() > 0.9
    assert ((mask & SHADE) > 0)[150:330, 20:300].mean() < 0.02


def test_a_cloud_on_a_photograph():
    """The cloud below the middle of the image, and none on the bare field at the lower left."""
    mask = alone(carried("obia", "test_image.tif"), 1.0, 1)
    assert ((mask & CLOUD) > 0)[870:930, 590:640].mean() > 0.5
    assert not (mask[955:1005, 100:180] & (CLOUD | SHADE)).any()


def test_dark_turf_that_nothing_could_shade_is_no_shade():
    """Dark on every date and in reach of nothing that stands; but at the border what throws it may be beyond,
    and what another date shows in the sun may be the shade of something that was there for a day."""
    mask = np.zeros((60, 60), bool)
    mask[10:14, 10:14] = mask[30:36, 20:26] = mask[50:, 40:44] = mask[20:24, 50:54] = True
    reach, nowhere_lit = np.zeros_like(mask), mask.copy()
    reach[8:20, 8:12] = True
    nowhere_lit[20:24, 50:54] = False
    (kept,) = shade.thrown([mask], [reach], nowhere_lit, 0.6)
    assert not kept[30:36, 20:26].any()
    kept[30:36, 20:26] = True
    assert (kept == mask).all()


def test_the_shade_of_a_house_that_nobody_drew_is_shade_and_a_dark_car_is_not():
    """Of both most is dark on every date: 2 m along a house of which another sun shades 8 m; and a car with the
    2 m beside it that it shades."""
    short, long = np.zeros((80, 80), bool), np.zeros((80, 80), bool)
    short[36:40, 10:40] = long[26:40, 10:40] = True
    car = slice(50, 58), slice(50, 54)
    short[car] = long[car] = long[50:58, 47:50] = True
    nowhere_lit = short & long
    nowhere = np.zeros_like(short)
    one, other = shade.thrown([short, long], [nowhere, nowhere], nowhere_lit, 0.6)
    assert one[36:40, 10:40].all() and not one[50:58].any()
    assert other[26:40, 10:40].all() and not other[car].any()


def test_a_roof_is_no_shade():
    """Red on every date: its side away from the sun is as dark as shade."""
    pictures = [turf((160, 160), seed) for seed in (1, 2)]
    for one in pictures:
        one[40:120, 40:120, :3] = (62, 44, 42)
    looks = learn_looks([coarser(p, 2) for p in pictures], 0.5)
    assert not any((mask & SHADE)[44:116, 44:116].any() for mask in hidden(pictures, 0.25, looks))


def pair(name):
    """Both years of a pair on one grid."""
    paths = [os.path.join(SHARED, "two-dates", year, f"SJER_{name}.tif") for year in ("2017", "2018")]
    if not all(map(os.path.exists, paths)):
        pytest.skip("the pairs are not here")
    g = gdal.Open(paths[0]).GetGeoTransform()
    pictures = []
    for path in paths:
        with Date("a", path).open() as image:
            pictures.append(image.pixels(Grid(400, 400, g, "EPSG:32611")))
    return pictures


def test_shade_that_only_one_year_has():
    """The lone tree throws its shadow to the left in 2017 and up in 2018; the turf to its right is lit."""
    pictures = pair("012")
    first, second = hidden(pictures, 0.1, learn_looks([coarser(p, 5) for p in pictures], 0.5))
    assert ((first & SHADE) > 0)[185:230, 108:118].mean() > 0.7
    assert not (second[185:230, 100:112] & SHADE).any()
    for mask in (first, second):
        assert ((mask & SHADE) > 0)[150:330, 240:400].mean() < 0.01
