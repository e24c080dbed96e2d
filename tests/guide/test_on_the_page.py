"""Measured on the page: hole pages of the sample course are made as a guide makes them, and what is painted is
read back from the PDF (``tests.painted``) and compared with the ground.

The truth comes twice from outside. The picture is of an image that has a coloured disc on each thing's
coordinates, so that a symbol has to lie in the middle of its disc; and distances are worked out by pyproj's Geod
on the ellipsoid, not in the plugin's frame. 0.2 mm is the project's own limit; 1:480 is of the Rules of Golf,
Rule 4.3a, interpretation on green-reading materials.
"""

import re
from dataclasses import replace

import numpy as np
import pypdf
import pytest
from osgeo import gdal, osr
from pyproj import Geod, Transformer
from qgis.core import QgsRasterLayer
from scipy import ndimage
from shapely.geometry import LineString
from yardwright.guide.book import Wanted
from yardwright.guide.book_image import book_image
from yardwright.guide.book_making import GuideMaker
from yardwright.guide.page_cache import PageCache
from yardwright.model.event import Event, Pin, Round

from sample_project import drawing
from tests.makers import circle, straight_hole
from tests.painted import diamonds, discs, painted

pytestmark = pytest.mark.usefixtures("qgis_app")

NEAR_MM = 0.2
YARD = 0.9144
GROUND = (128, 128, 128)
DISCS = {
    "tee": (255, 0, 0),
    "turn": (0, 0, 255),
    "target": (0, 255, 255),
    "front": (255, 255, 0),
    "marker": (255, 0, 255),
}
ELLIPSOID = Geod(ellps="GRS80")  # of EPSG:25832
GREEN_TONE, WHITE, DARK = "#e3eedb", "#ffffff", "#17211d"
HOLES = (5, 8)
"""A straight hole with five bunkers and three marker plates; a long one with a turn, a target and pairs of posts."""


def degrees(points):
    """Longitudes and latitudes of (n, 2) in the course's CRS."""
    to_degrees = Transformer.from_crs("EPSG:25832", "EPSG:4258", always_xy=True)
    return np.column_stack(to_degrees.transform(*np.asarray(points, dtype=float).reshape(-1, 2).T))


def metres_apart(one, points):
    """On the ellipsoid from one place to each of many, in the course's CRS."""
    start, ends = degrees([one])[0], degrees(points)
    return np.array(ELLIPSOID.inv(*np.broadcast_to(start, ends.shape).T, *ends.T)[2])


def from_there(place, towards, metres):
    """The place so many metres from one in the direction of another, on the ellipsoid."""
    start, end = degrees([place, towards])
    azimuth, _, _ = ELLIPSOID.inv(*start, *end)
    to_course = Transformer.from_crs("EPSG:4258", "EPSG:25832", always_xy=True)
    return to_course.transform(*map(float, ELLIPSOID.fwd(*start, azimuth, metres)[:2]))


def approach_of(course, number):
    """``(front, back)`` of a hole's green along the last leg of its line of play."""
    line = np.array(course.hole(number).line.coords)
    green = next(one.geometry for one in course.features if one.kind == "green" and number in one.holes)
    away = (line[-1] - line[-2]) / np.hypot(*(line[-1] - line[-2]))
    shown = LineString([line[-2], line[-1] + 200 * away]).intersection(green)
    ends = [np.array(part.coords) for part in getattr(shown, "geoms", [shown])]
    return ends[0][0], ends[-1][-1]


def true_places(course, number):
    """``{symbol: (n, 2)}`` in the course's CRS of what stands on a hole's picture."""
    own = [one for one in course.features if number in one.holes]
    line = np.array(course.hole(number).line.coords)
    front, back = approach_of(course, number)
    places = {
        "tee": [one.geometry.coords[0] for one in own if one.kind == "plate"],
        "turn": line[1:-1],
        "target": [one.geometry.coords[0] for one in own if one.kind == "target"],
        "front": [front],
    }
    # A marker's place is where it would be true, on the line from the green's middle through it. Those before a
    # turn are left out: their way is the plugin's own.
    markers = [one for one in own if one.kind == "marker"]
    last_leg = LineString(line[-2:]).length
    places["marker"] = []
    for one in markers:
        states = one.get("states_yd") * YARD
        target = front if one.get("states_to") == "front" else (front + back) / 2
        if states < last_leg - 30.0:
            places["marker"].append(from_there(target, one.geometry.coords[0], states))
    return {name: np.array(found, dtype=float).reshape(-1, 2) for name, found in places.items()}


def write_discs(path, extent, places, radius):
    """An image of 0.2 m of grey ground with a disc of its symbol's colour about each place."""
    left, low, right, high = np.round(extent)
    size = int((right - left) / 0.2), int((high - low) / 0.2)
    pixels = np.empty((size[1], size[0], 3), np.uint8)
    pixels[:] = GROUND
    x, y = left + 0.2 * (np.arange(size[0]) + 0.5), high - 0.2 * (np.arange(size[1]) + 0.5)
    for symbol, points in places.items():
        for east, north in points:
            columns, rows = (np.flatnonzero(np.abs(a - b) <= radius) for a, b in ((x, east), (y, north)))
            about = np.hypot(x[columns] - east, y[rows, None] - north) <= radius
            part = pixels[rows[0] : rows[-1] + 1, columns[0] : columns[-1] + 1]
            part[about] = DISCS[symbol]
    reference = osr.SpatialReference()
    reference.SetFromUserInput("EPSG:25832")
    image = gdal.GetDriverByName("GTiff").Create(str(path), *size, 3)
    image.SetGeoTransform((left, 0.2, 0.0, high, 0.0, -0.2))
    image.SetSpatialRef(reference)
    for band in range(3):
        image.GetRasterBand(band + 1).WriteArray(np.ascontiguousarray(pixels[:, :, band]))
    image = None
    return str(path)


def discs_in(picture, symbol):
    """(n, 2) in mm: the middles of the discs of a symbol's colour in a picture."""
    wanted = np.array(DISCS[symbol], dtype=float)
    along = wanted - np.array(GROUND)
    share = (picture.pixels - np.array(GROUND, dtype=float)) @ along / (along @ along)
    beside = picture.pixels - (GROUND + np.clip(share, 0, 1.2)[:, :, None] * along)
    share[np.abs(beside).max(axis=2) > 60] = 0.0
    labels, count = ndimage.label(share > 0.3)
    middles = ndimage.center_of_mass(np.clip(share, 0, 1), labels, range(1, count + 1))
    sizes = ndimage.sum(share > 0.3, labels, range(1, count + 1))
    middles = [place for place, size in zip(middles, sizes) if size > 12]
    return picture.places(np.array(middles, dtype=float).reshape(-1, 2)[:, ::-1] + 0.5)


def make_page(course, number, folder, event=None, places=None):
    """``(shapes, pictures, text)`` of a hole's page of a guide for print."""
    image = None
    if places is not None:
        line = course.hole(number).line
        extent = np.array(line.buffer(60).bounds)
        radius = max(1.3, line.length / 240)  # half a millimetre of the page and more
        path = write_discs(folder / f"discs{number}.tif", extent, places, radius)
        image = book_image(QgsRasterLayer(path, "discs"), course, str(folder / "course.gpkg"))
    course = replace(course, holes=(course.hole(number),))
    maker = GuideMaker(course, str(folder / "course.gpkg"), event, image, PageCache(str(folder / "pages")))
    book = maker.plan(Wanted("pages", (107.95, 177.8), grid=True))
    path = str(folder / f"hole{number}.pdf")
    maker.write(book, path)
    at = next(n for n, page in enumerate(book.pages) if page.kind == "hole")
    page = pypdf.PdfReader(path).pages[at]
    return *painted(page), page.extract_text()


def symbols_on(shapes, within, tees):
    """``{symbol: (n, 2)}`` in mm of what is painted over a picture."""
    return {
        "tee": np.vstack([discs(shapes, radius, tone, within) for radius in (0.55, 0.75) for tone in tees]),
        "turn": diamonds(shapes, 0.62, WHITE, within),
        "target": diamonds(shapes, 0.7, DARK, within),
        "front": discs(shapes, 0.3, WHITE, within),
        "marker": discs(shapes, 0.5, WHITE, within),
    }


def furthest(symbols, truth):
    """The most that one of the true places is off the nearest symbol, mm."""
    return max((np.hypot(*(symbols - place).T).min() if len(symbols) else np.inf) for place in truth)


@pytest.fixture(scope="module")
def course():
    return drawing.course()


@pytest.fixture(scope="module")
def pages(course, tmp_path_factory):
    """``{hole: (shapes, picture, true places, middles of their discs in mm)}``."""
    folder = tmp_path_factory.mktemp("pages")
    made = {}
    for number in HOLES:
        places = true_places(course, number)
        shapes, pictures, _ = make_page(course, number, folder, places=places)
        (picture,) = pictures
        made[number] = shapes, picture, places, {one: discs_in(picture, one) for one in places}
    return made


@pytest.mark.parametrize("number", HOLES)
def test_each_symbol_stands_where_its_thing_lies_in_the_picture(course, pages, number):
    shapes, picture, places, truths = pages[number]
    there = symbols_on(shapes, picture.bounds, [one.colour for one in course.tee_sets])
    assert len(there["tee"]) == len(course.tee_sets)  # some tees have no plate, and no disc
    assert len(places["tee"]) >= 3 and len(places["marker"]) >= 2
    for symbol, ground in places.items():
        truth = truths[symbol]
        assert len(truth) == len(ground), symbol
        if symbol not in ("tee", "marker"):
            assert len(there[symbol]) == len(truth), symbol
        if len(truth):
            off = furthest(there[symbol], truth)
            print(f"hole {number}, {symbol}: {len(truth)}, the most {off:.3f} mm off")
            assert off < NEAR_MM, symbol


def test_a_symbol_a_quarter_of_a_millimetre_off_is_seen(pages):
    shapes, picture, _, truths = pages[5]
    there = symbols_on(shapes, picture.bounds, ["#1a1a1a"])["front"]
    assert furthest(there + (0.25, 0.0), truths["front"]) > NEAR_MM


def similar(ground, paper):
    """What takes places on the ground to the page: complex (turn and scale, shift), by least squares. The page
    looks down on the ground, with y down the page."""
    z = ground[:, 0] - 1j * ground[:, 1]
    a = np.column_stack([z, np.ones(len(z))])
    found, *_ = np.linalg.lstsq(a, paper[:, 0] + 1j * paper[:, 1], rcond=None)
    return found


def on_paper(found, ground):
    ground = np.asarray(ground, dtype=float).reshape(-1, 2)
    z = (ground[:, 0] - 1j * ground[:, 1]) * found[0] + found[1]
    return np.column_stack([z.real, z.imag])


def on_ground(found, paper):
    paper = np.asarray(paper, dtype=float).reshape(-1, 2)
    z = (paper[:, 0] + 1j * paper[:, 1] - found[1]) / found[0]
    return np.column_stack([z.real, -z.imag])


def fit_of(places, truths):
    """``similar`` of a picture: from the ends of the hole, then by all discs that are nearest then."""
    tees, fronts = truths["tee"], truths["front"]
    far = np.argmax(np.hypot(*(places["tee"] - places["front"]).T))
    furthest_disc = np.argmax(np.hypot(*(tees - fronts).T))
    found = similar(
        np.vstack([places["tee"][far], places["front"]]), np.vstack([tees[furthest_disc], fronts])
    )
    ground, paper = [], []
    for symbol, points in places.items():
        truth = truths[symbol]
        for place, expected in zip(points, on_paper(found, points)):
            ground.append(place)
            paper.append(truth[np.argmin(np.hypot(*(truth - expected).T))])
    found = similar(np.array(ground), np.array(paper))
    assert np.hypot(*(on_paper(found, ground) - paper).T).max() < 0.05
    return found


@pytest.mark.parametrize("number", HOLES)
def test_arcs_lie_as_far_from_the_green_as_their_plates_say(course, pages, number):
    """Each white arc to the green is a whole number of 50 yd from its front, by the ellipsoid."""
    shapes, picture, places, truths = pages[number]
    found = fit_of(places, truths)
    front, _ = approach_of(course, number)
    scale = 1000 / abs(found[0])
    arcs = [
        chain
        for shape in shapes
        if shape.how == "stroke" and shape.tone == WHITE and shape.width == pytest.approx(0.24, abs=0.01)
        for chain in shape.chains
        if len(chain) > 15
    ]
    assert len(arcs) >= 3
    seen = set()
    for arc in arcs:
        away = metres_apart(front, on_ground(found, arc))
        if np.ptp(away) / scale * 1000 > NEAR_MM:
            continue  # about the tee
        yards = away.mean() / YARD
        seen.add(round(yards / 50) * 50)
        off = np.abs(away - round(yards / 50) * 50 * YARD).max() / scale * 1000
        print(f"hole {number}, arc of {yards:.2f} yd: {off:.3f} mm off")
        assert off < NEAR_MM
    assert {50, 100, 150} <= seen


def test_bars_of_the_ladder_stand_beside_their_bunkers(course, pages):
    """On a straight hole a bar begins and ends at the height of the bunker's nearest and furthest point up the
    line of play."""
    shapes, picture, places, truths = pages[5]
    found = fit_of(places, truths)
    start, end = np.array(course.hole(5).line.coords)
    along = (end - start) / np.hypot(*(end - start))
    bars = [
        (chain[:, 1].min(), chain[:, 1].max())
        for shape in shapes
        if shape.how == "stroke"
        for chain in shape.chains
        if len(chain) == 5
        and np.allclose(chain[0], chain[-1])
        and chain[:, 0].min() > picture.bounds[2] - 0.1
    ]
    bunkers = [one.geometry for one in course.features if one.kind == "bunker" and 5 in one.holes]
    assert len(bunkers) == 5
    for bunker in bunkers:
        stations = (np.array(bunker.exterior.coords) - start) @ along
        wanted = on_paper(found, [start + station * along for station in (stations.max(), stations.min())])
        off = min(np.abs(np.array(bar) - wanted[:, 1]).max() for bar in bars)
        print(f"bar {off:.3f} mm off")
        assert off < NEAR_MM


# --- the green ---------------------------------------------------------------------------------------------


def outline_of(shapes):
    """(n, 2) in mm: the green's area as it is painted, without its last corner."""
    (ring,) = [chain for shape in shapes if shape.tone == GREEN_TONE for chain in shape.chains]
    return ring[:-1] if np.allclose(ring[0], ring[-1]) else ring


def area(ring):
    x, y = ring.T
    return abs(np.dot(x, np.roll(y, -1)) - np.dot(y, np.roll(x, -1))) / 2


def laid(ground, paper):
    """``similar`` of two rings of the same corners, whichever they begin at and whichever way they run."""
    assert len(ground) == len(paper)
    best = None
    for way in (1, -1):
        for first in range(len(ground)):
            there = np.roll(ground[::way], first, axis=0)
            found = similar(there, paper)
            off = np.hypot(*(on_paper(found, there) - paper).T).max()
            if best is None or off < best[0]:
                best = off, found
    assert best[0] < 0.05
    return best[1]


@pytest.mark.parametrize("number", HOLES)
def test_the_green_is_at_its_scale_and_the_pins_are_where_they_were_cut(course, number, tmp_path):
    front, back = approach_of(course, number)
    on = (back - front) / np.hypot(*(back - front))
    right = np.array([on[1], -on[0]])
    places = [tuple(front + up * on + aside * right) for up, aside in ((5.0, 4.0), (11.0, -5.5))]
    pins = tuple(Pin("Cup", n, number, given="point", point=place) for n, place in enumerate(places, 1))
    event = Event("Cup", rounds=(Round(1), Round(2)), pins=pins)
    shapes, _, text = make_page(course, number, tmp_path, event)
    green = next(one.geometry for one in course.features if one.kind == "green" and number in one.holes)
    ring, ground = outline_of(shapes), np.array(green.exterior.coords)[:-1]
    true_area, _ = ELLIPSOID.polygon_area_perimeter(*degrees(ground).T)
    scale = 1000 * np.sqrt(abs(true_area) / area(ring))
    said = [float(one) for one in re.findall(r"1:(\d+)", text)]
    print(f"hole {number}: green at 1:{scale:.1f}, said are {said}")
    assert min(abs(scale / one - 1) for one in said) < 0.005
    assert scale >= 480 * 0.995
    # Approach up, and each pin in its place on the green.
    found = laid(ground, ring)
    (low, high) = on_paper(found, [front, back])
    assert abs(low[0] - high[0]) < NEAR_MM and low[1] > high[1]
    painted_pins = discs(shapes, 0.75, "#000000", (*ring.min(axis=0), *ring.max(axis=0)))
    assert len(painted_pins) == 2
    off = furthest(painted_pins, on_paper(found, places))
    print(f"hole {number}: pins {off:.3f} mm off")
    assert off < NEAR_MM


@pytest.mark.parametrize("form", ["pages", "screen"])
def test_a_tiny_green_is_painted_no_larger_than_the_rules_let_it(form, tmp_path):
    """A circle of 5 yd about it, for which a page has room at 1:200."""
    a_course = straight_hole(green=circle(0, 400, 5, 64))
    maker = GuideMaker(
        a_course, str(tmp_path / "course.gpkg"), None, None, PageCache(str(tmp_path / "pages"))
    )
    book = maker.plan(Wanted(form, (107.95, 177.8)))
    path = str(tmp_path / "guide.pdf")
    maker.write(book, path)
    at = next(n for n, page in enumerate(book.pages) if page.kind == "hole")
    shapes, _ = painted(pypdf.PdfReader(path).pages[at])
    true_area = 32 * (5 * YARD) ** 2 * np.sin(2 * np.pi / 64)
    scale = 1000 * np.sqrt(true_area / area(outline_of(shapes)))
    assert scale == pytest.approx(480, rel=0.005)
