"""Aerial images of Quernhallow on three dates, painted from the drawing: nothing in them is a photograph.

An image is painted in tiles, so that memory stays bounded: turf, sand and water with their textures, mowing
stripes, relief lit by the sun, trees with crowns, and the shadows they throw at that date and hour. All
random figures come from a fixed seed and lie on the ground, not on the tile, so a small extent shows the
same as the whole.
"""

import os
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from datetime import datetime
from functools import lru_cache

import numpy as np
from osgeo import gdal, ogr, osr
from scipy.ndimage import gaussian_filter, zoom
from shapely.geometry import LineString, Point, Polygon, box
from shapely.ops import unary_union
from yardwright.imagery.sun import sun_position
from yardwright.model.geometry import coordinates, map_points

from . import plan
from .drawing import drawing, to_crs
from .shapes import unit

TILE = 1024
HALO_M = 64.0  # how far beyond a tile things may throw a shadow into it


@dataclass(frozen=True)
class Season:
    """A flight. taken: UTC. shift: metres east and north that the file puts everything beside its place.
    leaf: how full the broad-leaved crowns are, 0 to 1. colours: sRGB, 0 to 1, by what they paint."""

    id: str
    taken: datetime
    gsd: float
    shift: tuple
    golfers: bool
    leaf: float
    stripes: float
    colours: dict
    crowns: tuple
    fields: tuple
    note: str


SPRING = Season(
    "2023-04-12", datetime(2023, 4, 12, 9, 20), 0.35, (0.83, -0.62), False, 0.3, 0.5,
    {
        "rough": (0.44, 0.44, 0.29), "long": (0.62, 0.57, 0.43), "cut": (0.41, 0.45, 0.27),
        "fairway": (0.40, 0.48, 0.28), "apron": (0.41, 0.51, 0.29), "green": (0.45, 0.57, 0.34),
        "tee": (0.43, 0.51, 0.30), "sand": (0.85, 0.79, 0.66), "water": (0.17, 0.22, 0.23),
        "bank": (0.36, 0.32, 0.24), "floor": (0.37, 0.33, 0.25), "gorse": (0.47, 0.44, 0.16),
        "path": (0.70, 0.66, 0.60),
    },
    ((0.42, 0.37, 0.31), (0.46, 0.41, 0.34), (0.40, 0.37, 0.29), (0.45, 0.44, 0.30)),
    ((0.40, 0.50, 0.27), (0.50, 0.43, 0.34), (0.46, 0.40, 0.32), (0.44, 0.49, 0.30), (0.37, 0.48, 0.26)),
    "Early spring; stands about a metre beside its true place",
)  # fmt: skip
AUTUMN = Season(
    "2024-10-09", datetime(2024, 10, 9, 10, 40), 0.3, (0.0, 0.0), False, 0.85, 0.7,
    {
        "rough": (0.38, 0.42, 0.24), "long": (0.58, 0.50, 0.34), "cut": (0.35, 0.43, 0.23),
        "fairway": (0.34, 0.46, 0.24), "apron": (0.36, 0.49, 0.26), "green": (0.40, 0.55, 0.30),
        "tee": (0.39, 0.50, 0.27), "sand": (0.83, 0.76, 0.62), "water": (0.13, 0.18, 0.20),
        "bank": (0.36, 0.33, 0.22), "floor": (0.36, 0.30, 0.19), "gorse": (0.30, 0.33, 0.16),
        "path": (0.67, 0.62, 0.55),
    },
    ((0.52, 0.40, 0.20), (0.57, 0.49, 0.25), (0.44, 0.30, 0.19), (0.37, 0.40, 0.21), (0.47, 0.44, 0.23)),
    ((0.52, 0.44, 0.33), (0.57, 0.50, 0.36), (0.40, 0.48, 0.26), (0.46, 0.38, 0.29), (0.42, 0.50, 0.28)),
    "Autumn, low sun, long shadows",
)  # fmt: skip
SUMMER = Season(
    "2025-07-02", datetime(2025, 7, 2, 9, 30), 0.25, (0.0, 0.0), True, 1.0, 1.0,
    {
        "rough": (0.37, 0.44, 0.24), "long": (0.60, 0.56, 0.37), "cut": (0.34, 0.45, 0.22),
        "fairway": (0.36, 0.51, 0.25), "apron": (0.37, 0.54, 0.27), "green": (0.43, 0.61, 0.33),
        "tee": (0.41, 0.55, 0.28), "sand": (0.90, 0.83, 0.68), "water": (0.13, 0.21, 0.22),
        "bank": (0.30, 0.33, 0.18), "floor": (0.24, 0.28, 0.16), "gorse": (0.29, 0.35, 0.15),
        "path": (0.74, 0.69, 0.61),
    },
    ((0.20, 0.31, 0.13), (0.24, 0.35, 0.15), (0.28, 0.38, 0.16), (0.18, 0.28, 0.14), (0.31, 0.38, 0.19)),
    ((0.66, 0.58, 0.36), (0.40, 0.50, 0.24), (0.60, 0.55, 0.33), (0.36, 0.47, 0.22), (0.47, 0.52, 0.28)),
    "High summer, people playing",
)  # fmt: skip
SEASONS = (SPRING, AUTUMN, SUMMER)
_CONIFERS = ((0.15, 0.23, 0.15), (0.18, 0.26, 0.16), (0.13, 0.20, 0.13))


@dataclass(frozen=True)
class View:
    """A grid of pixels: left, top in the course's CRS, metres a pixel, columns and rows."""

    left: float
    top: float
    gsd: float
    columns: int
    rows: int

    @property
    def bounds(self):
        return self.left, self.top - self.rows * self.gsd, self.left + self.columns * self.gsd, self.top

    def wider(self, metres):
        """The view with a margin, and how many pixels that margin is."""
        n = int(np.ceil(metres / self.gsd / 8)) * 8
        m = n * self.gsd
        return View(self.left - m, self.top + m, self.gsd, self.columns + 2 * n, self.rows + 2 * n), n

    def coarser(self, factor):
        return View(self.left, self.top, self.gsd * factor, self.columns // factor, self.rows // factor)

    def x(self):
        return self.left + self.gsd * (np.arange(self.columns) + 0.5)

    def y(self):
        return self.top - self.gsd * (np.arange(self.rows) + 0.5)


# What there is to paint


@dataclass(frozen=True)
class Scene:
    """Everything in the course's CRS. shapes: ``{name: [polygons]}``. ways: (radians from east,
    metres) of the mowing of each of ``shapes["mown"]``. crowns: (n, 6): x, y, radius, height, tone 0-1,
    conifer 0/1. posts, people: (x, y, length, width, turn, height, r, g, b) of small things."""

    shapes: dict
    ways: tuple
    crowns: np.ndarray
    posts: tuple
    people: tuple


def _crowns(drawn, rng):
    """The trees of the groves and the single ones, local metres."""
    trees = []
    for wood in drawn.of("trees"):
        shape = wood.geometry.buffer(-1.6)
        x0, y0, x1, y1 = shape.bounds
        grid = View(x0, y1, 0.5, int((x1 - x0) * 2) + 1, int((y1 - y0) * 2) + 1)
        inside = _burn(grid, [shape])
        darts = rng.uniform(0, 1, (int(grid.columns * grid.rows / 28), 6))
        conifers = 0.75 if rng.uniform() > 0.78 else 0.1
        cells = {}
        for a, b, c, d, tone, needle in darts.tolist():
            row, column = int(b * grid.rows), int(a * grid.columns)
            if not inside[row, column]:
                continue
            x, y, radius = x0 + a * grid.columns * 0.5, y1 - b * grid.rows * 0.5, 1.9 + 2.7 * c
            i, j = int(x // 7), int(y // 7)
            near = (t for m in (i - 1, i, i + 1) for n in (j - 1, j, j + 1) for t in cells.get((m, n), ()))
            if all((x - t[0]) ** 2 + (y - t[1]) ** 2 > (0.64 * (radius + t[2])) ** 2 for t in near):
                tree = (x, y, radius, radius * (2 + 0.9 * d) + 2.5, tone, float(needle < conifers))
                cells.setdefault((i, j), []).append(tree)
        trees.extend(tree for many in cells.values() for tree in many)
    for tree in drawn.of("tree"):
        radius = tree.get("crown_radius_m")
        conifer = float(rng.uniform() < 0.2)
        trees.append(
            (*tree.geometry.coords[0], radius, radius * rng.uniform(2, 2.6) + 2, rng.uniform(), conifer)
        )
    pine = next(t for t in drawn.of("target") if t.label == "Lone pine")
    trees.append((*pine.geometry.coords[0], 4.4, 15.0, 0.5, 1.0))
    site = drawn.scenery["site"][0]
    ring = site.buffer(9).exterior
    for station in np.arange(0, ring.length, 6.5):
        if rng.uniform() < 0.62:
            place = np.array(ring.interpolate(station).coords[0]) + rng.normal(0, 1.6, 2)
            radius = rng.uniform(1.3, 3.2)
            trees.append((*place, radius, radius * 1.8 + 1, rng.uniform(), 0.0))
    return np.array(trees)


def _fields(site, rng):
    """Farmland round the course: crooked fields, local metres; a polygon each."""
    turn = np.radians(9)
    grid = {}
    for i in range(-3, 14):
        for j in range(-3, 12):
            point = np.array([i * 150.0 - 180, j * 135.0 - 160]) + rng.uniform(-34, 34, 2)
            grid[i, j] = point @ np.array([[np.cos(turn), np.sin(turn)], [-np.sin(turn), np.cos(turn)]])
    outside = box(-220, -220, 1460, 1260).difference(site.buffer(11))
    fields = []
    for i in range(-3, 13):
        for j in range(-3, 11):
            cell = Polygon([grid[i, j], grid[i + 1, j], grid[i + 1, j + 1], grid[i, j + 1]]).buffer(-2.2)
            cut = cell.intersection(outside)
            fields.extend(
                p for p in getattr(cut, "geoms", [cut]) if p.area > 400 and p.geom_type == "Polygon"
            )
    return fields


_MOWING = {"fairway": (0.45, 6.2), "green": (0.7, 1.7), "tee": (0.0, 1.7)}
"""By kind: radians the mower goes aside of play, and how wide its band is."""


def _posts(drawn):
    white, red, yellow = (0.95, 0.95, 0.93), (0.8, 0.12, 0.1), (0.9, 0.8, 0.1)
    things = [(*m.geometry.coords[0], 0.5, 0.5, 0, 1.2, *white) for m in drawn.of("marker")]
    for water in drawn.of("penalty_area"):
        ring = water.geometry.buffer(1.2).exterior
        colour = red if water.get("stakes") == "red" else yellow
        for station in np.arange(6, ring.length, 24):
            things.append((*ring.interpolate(station).coords[0], 0.35, 0.35, 0, 0.9, *colour))
    for green in drawn.of("green"):
        for holes, at in ((green.holes, (k + 1) / (len(green.holes) + 1)) for k in range(len(green.holes))):
            x0, _, x1, _ = green.geometry.bounds
            middle = green.geometry.representative_point()
            x = x0 + at * (x1 - x0) if len(holes) > 1 else middle.x
            things.append((x, middle.y, 0.45, 0.45, 0, 2.1, 0.9, 0.2, 0.15))
    return things


def _people(drawn, rng):
    """Groups of golfers with their carts here and there, local metres."""
    things = []
    shirts = ((0.9, 0.9, 0.9), (0.75, 0.15, 0.15), (0.15, 0.25, 0.6), (0.85, 0.75, 0.2), (0.12, 0.12, 0.13))
    for number, share in ((1, 0.55), (2, 0.35), (4, 0.62), (5, 0.97), (7, 0.45), (8, 0.7), (10, 0.5),
                          (11, 0.04), (12, 0.42), (14, 0.58),
                          (15, 0.66), (16, 0.95), (17, 0.5), (18, 0.8)):  # fmt: skip
        way = LineString(drawn.ways[number])
        middle = np.array(way.interpolate(share, normalized=True).coords[0])
        turn = rng.uniform(0, np.pi)
        for _ in range(int(rng.integers(2, 5))):
            place = middle + rng.normal(0, 5.5, 2)
            things.append((*place, 0.75, 0.5, rng.uniform(0, 3), 1.75, *shirts[rng.integers(len(shirts))]))
        for _ in range(int(rng.integers(1, 3))):
            place = middle + rng.normal(0, 9, 2) + (10, 0)
            things.append((*place, 2.6, 1.3, turn + rng.uniform(-0.4, 0.4), 1.8, 0.93, 0.93, 0.9))
    return things


def _cars(rng):
    things = []
    paints = ((0.85, 0.85, 0.86), (0.15, 0.16, 0.18), (0.5, 0.1, 0.1), (0.2, 0.28, 0.45), (0.55, 0.56, 0.58))
    turn = np.radians(8)
    along, across = np.array([np.cos(turn), np.sin(turn)]), np.array([-np.sin(turn), np.cos(turn)])
    for row in (-14.5, -2.6, 2.6, 14.5):
        for k in range(19):
            if rng.uniform() < 0.55:
                place = np.array([700, 72]) + along * (k * 2.75 - 25) + across * row
                things.append((*place, 4.3, 1.8, turn + np.pi / 2, 1.5, *paints[rng.integers(len(paints))]))
    return things


@lru_cache(maxsize=1)
def scene():
    """The scene of every date, see Scene."""
    rng = np.random.default_rng(31)
    drawn = drawing()
    site = drawn.scenery["site"][0]

    def of(kind):
        return [feature.geometry for feature in drawn.of(kind)]

    waters = [f.geometry for f in drawn.of("penalty_area") if f.get("water")]
    mown, ways = [], []
    for feature in (*drawn.of("fairway"), *drawn.of("green"), *drawn.of("tee")):
        way = drawn.ways[feature.holes[0]]
        middle = Point(feature.geometry.centroid)
        k = int(np.argmin([middle.distance(Point(p)) for p in way[:-1]]))
        east, north = unit(way[min(k + 1, len(way) - 1)] - way[k])
        turn, width = _MOWING[feature.kind]
        mown.append(feature.geometry)
        ways.append((np.arctan2(north, east) + turn, width))
    shapes = {
        "site": [site.buffer(9)],
        "fields": _fields(site, rng),
        "verge": [site.buffer(13).difference(site.buffer(5))],
        "rough": of("rough"),
        "gorse": [f.geometry for f in drawn.of("penalty_area") if not f.get("water")],
        "floor": [wood.buffer(1.5) for wood in of("trees")],
        "cut": [shape.buffer(2.6) for shape in (*of("fairway"), *of("apron"), *of("tee"))],
        "fairway": of("fairway"),
        "apron": of("apron"),
        "green": of("green") + list(drawn.scenery["practice"]),
        "tee": of("tee"),
        "bunker": of("bunker"),
        "bank": [water.buffer(1.1) for water in waters],
        "water": [water.buffer(-0.5) for water in waters],
        "path": [line.buffer(1.15) for line in of("path")],
        "tarmac": [unary_union(drawn.scenery["tarmac"])],
        "roof": list(drawn.scenery["roof"]),
        "mown": mown,
    }
    shapes = {name: map_points(many, to_crs) for name, many in shapes.items()}
    crowns = _crowns(drawn, rng)
    crowns[:, :2] = to_crs(crowns[:, :2])

    def placed(things):
        points = to_crs(np.array([thing[:2] for thing in things]))
        return tuple((*point, *thing[2:]) for point, thing in zip(points, things))

    return Scene(shapes, tuple(ways), crowns, placed(_posts(drawn) + _cars(rng)), placed(_people(drawn, rng)))


# Rasters of a tile


def _crs():
    crs = osr.SpatialReference()
    crs.ImportFromEPSG(int(plan.CRS.split(":")[1]))
    return crs


def _burn(view, shapes, values=None, kind=gdal.GDT_Byte):
    """Polygons burnt into a grid (their centre rule); ``values`` one each, else 1."""
    raster = gdal.GetDriverByName("MEM").Create("", view.columns, view.rows, 1, kind)
    raster.SetGeoTransform((view.left, view.gsd, 0, view.top, 0, -view.gsd))
    raster.SetProjection(_crs().ExportToWkt())
    source = ogr.GetDriverByName("Memory").CreateDataSource("")
    layer = source.CreateLayer("shapes", _crs(), ogr.wkbUnknown)
    layer.CreateField(ogr.FieldDefn("v", ogr.OFTInteger))
    for k, shape in enumerate(shapes):
        row = ogr.Feature(layer.GetLayerDefn())
        row.SetGeometryDirectly(ogr.CreateGeometryFromWkb(shape.wkb))
        row.SetField("v", 1 if values is None else int(values[k]))
        layer.CreateFeature(row)
    gdal.RasterizeLayer(raster, [1], layer, options=["ATTRIBUTE=v"])
    return raster.ReadAsArray()


def _near(view, shapes):
    """Which of the shapes touch the view."""
    x0, y0, x1, y1 = view.bounds
    return [
        k
        for k, shape in enumerate(shapes)
        if shape.bounds[0] < x1 and shape.bounds[2] > x0 and shape.bounds[1] < y1 and shape.bounds[3] > y0
    ]


def _cover(view, shapes):
    """How much of each pixel the shapes cover, 0 to 1, or None where they are not in the view."""
    near = _near(view, shapes)
    if not near:
        return None
    fine = View(view.left, view.top, view.gsd / 2, view.columns * 2, view.rows * 2)
    burnt = _burn(fine, [shapes[k] for k in near])
    if not burnt.any():
        return None
    total = burnt[0::2, 0::2] + burnt[1::2, 0::2] + burnt[0::2, 1::2] + burnt[1::2, 1::2]
    return total.astype(np.float32) * np.float32(0.25)


@lru_cache(maxsize=1)
def _noises():
    """Four square textures that tile without a seam, mean 0 and standard deviation 1, coarse to fine."""
    rng = np.random.default_rng(77)
    size = 1024
    wave = np.hypot(*np.meshgrid(np.fft.fftfreq(size), np.fft.rfftfreq(size), indexing="ij")) * size
    textures = []
    for low, high, slope in ((2, 60, 1.2), (16, 260, 0.9), (100, 512, 0.3)):
        band = np.where((wave >= low) & (wave <= high), np.maximum(wave, 1) ** -slope, 0)
        spectrum = np.fft.rfft2(rng.normal(size=(size, size))) * band
        texture = np.fft.irfft2(spectrum, (size, size))
        textures.append((texture / texture.std()).astype(np.float32))
    return tuple(textures)


def _noise(view, which, metres):
    """A texture on the ground whose cell is ``metres`` wide; as many rows and columns as the view."""
    texture = _noises()[which]
    columns = np.floor(view.x() / metres).astype(np.int64) % 1024
    rows = np.floor(-view.y() / metres).astype(np.int64) % 1024
    return texture[np.ix_(rows, columns)]


def _soft_noise(view, which, metres):
    """The same, smooth between its cells: for textures coarser than a pixel."""
    factor = 8
    coarse = View(view.left, view.top, view.gsd * factor, view.columns // factor + 2, view.rows // factor + 2)
    return zoom(_noise(coarse, which, metres), factor, order=1)[: view.rows, : view.columns]


def _canopy(view, crowns, conifers_only_solid):
    """Crown heights, and per pixel tone, conifer and fullness (0 to 1), each (rows, columns) float32."""
    height = np.zeros((view.rows, view.columns), np.float32)
    tone = np.zeros_like(height)
    conifer = np.zeros_like(height)
    x0, y0, x1, y1 = view.bounds
    r = crowns[:, 2] + 1
    near = crowns[
        (crowns[:, 0] + r > x0) & (crowns[:, 0] - r < x1) & (crowns[:, 1] + r > y0) & (crowns[:, 1] - r < y1)
    ]
    for x, y, radius, tall, shade, needle in near:
        reach = int(radius / view.gsd) + 2
        column, row = int((x - view.left) / view.gsd), int((view.top - y) / view.gsd)
        c0, c1 = max(column - reach, 0), min(column + reach + 1, view.columns)
        r0, r1 = max(row - reach, 0), min(row + reach + 1, view.rows)
        if c0 >= c1 or r0 >= r1:
            continue
        dx = (view.left + view.gsd * (np.arange(c0, c1) + 0.5) - x) / radius
        dy = (view.top - view.gsd * (np.arange(r0, r1) + 0.5) - y)[:, None] / radius
        angle = np.arctan2(dy, dx)
        edge = 1 + 0.11 * np.sin(3 * angle + 40 * shade) + 0.08 * np.sin(5 * angle + 90 * shade)
        share = np.sqrt(dx * dx + dy * dy) / edge
        dome = 1 - share if needle else np.sqrt(np.clip(1 - share * share, 0, 1)) * 0.55
        crown = np.where(share < 1, tall * (0.3 + 0.7 * dome / (1.0 if needle else 0.55)), 0).astype(
            np.float32
        )
        part = (slice(r0, r1), slice(c0, c1))
        higher = crown > height[part]
        height[part][higher] = crown[higher]
        tone[part][higher] = shade
        conifer[part][higher] = needle
    return height, tone, conifer


def _things(view, things):
    """Small things: their height, and their colour (3, rows, columns); cover as from ``_cover``."""
    shapes, colours, tall = [], [], []
    for x, y, length, width, turn, high, red, green, blue in things:
        along = np.array([np.cos(turn), np.sin(turn)]) * length / 2
        across = np.array([-np.sin(turn), np.cos(turn)]) * width / 2
        shapes.append(
            Polygon([(x, y) + a * along + b * across for a, b in ((1, 1), (1, -1), (-1, -1), (-1, 1))])
        )
        colours.append((red, green, blue))
        tall.append(high)
    near = _near(view, shapes)
    if not near:
        return None
    chosen = [shapes[k] for k in near]
    index = _burn(view, [s.buffer(view.gsd * 0.6) for s in chosen], range(1, len(near) + 1), gdal.GDT_UInt16)
    tall = np.array([0, *(tall[k] for k in near)], np.float32)[index]
    colour = np.array([(0, 0, 0), *(colours[k] for k in near)], np.float32)[index].transpose(2, 0, 1)
    return _cover(view, chosen), colour, tall


def _shadow(height, gsd, azimuth, elevation):
    """How far each place lies in shade, 0 to 1. azimuth: degrees from grid north towards the sun.

    The height of the shadow's upper edge is found by doubling: twice the reach with each pass.
    """
    fall = np.tan(np.radians(elevation))
    east, north = np.sin(np.radians(azimuth)), np.cos(np.radians(azimuth))
    top = height.copy()
    reach = 1.0
    while reach * gsd * fall < max(float(height.max()), 0.1):
        column, row = int(round(-east * reach)), int(round(north * reach))
        length = np.hypot(column, row)
        if length:
            moved = np.zeros_like(top)
            rows, columns = top.shape
            target = (slice(max(row, 0), rows + min(row, 0)), slice(max(column, 0), columns + min(column, 0)))
            source = (
                slice(max(-row, 0), rows + min(-row, 0)),
                slice(max(-column, 0), columns + min(-column, 0)),
            )
            moved[target] = top[source] - length * gsd * fall
            np.maximum(top, moved, out=top)
        reach *= 2
    return np.clip((top - height - 0.12) / 0.7, 0, 1)


# Painting


def _lay(picture, cover, colour):
    """Paint ``colour``, (3,) or three planes, over the picture as far as ``cover`` says."""
    if cover is None:
        return
    for k in range(3):
        picture[k] += (colour[k] - picture[k]) * cover


def _blur(array, sigma):
    """A Gaussian blur, worked out only where there is something to blur; sigma in pixels."""
    rows, columns = np.flatnonzero(array.any(1)), np.flatnonzero(array.any(0))
    if not len(rows):
        return array
    n = int(2.5 * sigma + 2)
    part = (slice(max(rows[0] - n, 0), rows[-1] + n + 1), slice(max(columns[0] - n, 0), columns[-1] + n + 1))
    blurred = np.zeros_like(array)
    blurred[part] = gaussian_filter(array[part], sigma, truncate=2.5)
    return blurred


def _stripes(view, current):
    """-1 to 1 across the mowing bands of what is mown, 0 elsewhere."""
    near = _near(view, current.shapes["mown"])
    if not near:
        return None
    index = _burn(view, [current.shapes["mown"][k] for k in near], range(1, len(near) + 1), gdal.GDT_UInt16)
    if not index.any():
        return None
    turn, width = np.array([(0, 1), *(current.ways[k] for k in near)], np.float32).T[:, index]
    x, y = view.x()[None, :] % 5000, view.y()[:, None] % 5000
    across = (-np.sin(turn) * x + np.cos(turn) * y).astype(np.float32)
    wave = np.sin(np.float32(np.pi) * across / width)
    return np.where(index > 0, np.clip(wave * 3, -1, 1), 0).astype(np.float32)


def _turf(view, colour, broad, middle, fine, strength=1.0):
    """Three planes of a turf: its colour, mottled."""
    light = 1 + strength * (0.04 * broad + 0.05 * middle + 0.05 * fine)
    dry = 0.02 * strength * (broad + 0.5 * middle)
    return [colour[0] * light + dry, colour[1] * light, colour[2] * light - 0.1 * dry]


def _sun_on_grid(season):
    """The sun's azimuth from grid north and its elevation, degrees."""
    azimuth, elevation = sun_position(plan.LONGITUDE, plan.LATITUDE, season.taken)
    origin = np.array([plan.ORIGIN])
    north = to_crs(origin + (0, 1000)) - to_crs(origin)
    return azimuth + np.degrees(np.arctan2(north[0, 0], north[0, 1])), elevation


def paint(view, season, shadows=True, people=True, grain=True):
    """The view on that date: (3, rows, columns) bytes.

    Without shadows, people and grain it is the truth beneath the image.
    """
    current = scene()
    wide, n = view.wider(HALO_M if shadows else 4.0)
    core = (slice(n, n + view.rows), slice(n, n + view.columns))
    azimuth, elevation = _sun_on_grid(season)
    broad = _soft_noise(view, 0, 1.9)
    middle = _soft_noise(view, 1, 0.9)
    fine = _noise(view, 2, 0.3)
    colours = season.colours
    picture = np.empty((3, view.rows, view.columns), np.float32)
    picture[:] = _paint_fields(view, season, current, broad, middle, fine)
    cover = {
        name: _cover(view, shapes)
        for name, shapes in current.shapes.items()
        if name not in ("mown", "fields")
    }

    _lay(picture, cover["site"], _turf(view, colours["rough"], broad, middle, fine, 1.5))
    _lay(picture, cover["verge"], _turf(view, colours["floor"], broad, middle, fine, 1.2))
    if cover["rough"] is not None:
        tuft = np.clip(0.78 + 0.2 * middle + 0.12 * fine, 0, 1)
        soft = _blur(cover["rough"], 1.5 / view.gsd)
        _lay(picture, soft * tuft, _turf(view, colours["long"], broad, middle, fine, 2.0))
    if cover["floor"] is not None:
        soft = _blur(cover["floor"], 1.2 / view.gsd)
        _lay(picture, soft, _turf(view, colours["floor"], broad, middle, fine, 2.0))
    if cover["cut"] is not None:
        _lay(picture, _blur(cover["cut"], 0.5 / view.gsd), _turf(view, colours["cut"], broad, middle, fine))
    for name, strength in (("fairway", 0.8), ("apron", 0.6), ("green", 0.35), ("tee", 0.6)):
        _lay(picture, cover[name], _turf(view, colours[name], broad, middle, fine, strength))
    bands = _stripes(view, current)
    if bands is not None:
        picture *= 1 + 0.034 * season.stripes * _blur(bands, 0.6)
    if cover["tee"] is not None:
        _wear(picture, cover["tee"], colours, middle, fine)
    if cover["bank"] is not None:
        _lay(
            picture,
            _blur(cover["bank"], 0.35 / view.gsd),
            _turf(view, colours["bank"], broad, middle, fine, 2.4),
        )
        _paint_water(picture, view, cover["water"], colours, middle, fine)
    if cover["path"] is not None:
        worn = [colours["path"][k] * (1 + 0.03 * middle + 0.04 * fine) for k in range(3)]
        _lay(picture, cover["path"] * np.clip(0.9 + 0.06 * middle, 0, 1), worn)
    _lay(
        picture,
        cover["tarmac"],
        [(0.42, 0.42, 0.43)[k] * (1 + 0.03 * middle + 0.03 * fine) for k in range(3)],
    )
    if cover["gorse"] is not None:
        flowers = np.clip(fine - 0.6, 0, 1) * (season.leaf < 0.5) * 0.8
        bush = [
            colours["gorse"][k] * (1 + 0.22 * middle + 0.12 * fine) + (0.35, 0.30, -0.05)[k] * flowers
            for k in range(3)
        ]
        _lay(picture, np.clip(cover["gorse"] * (0.95 + 0.4 * middle), 0, 1), bush)
    _paint_sand(picture, view, cover["bunker"], colours, middle, fine)
    picture *= _relief(view, cover, broad, azimuth, elevation)

    # What stands up: trees, houses, people. Laid on a wider view, for shadows come in from outside it.
    height, tone, conifer = _canopy(wide, current.crowns, season.leaf)
    lumps = _soft_noise(wide, 1, 0.5)
    height *= np.clip(1 + 0.11 * lumps + 0.05 * _noise(wide, 2, 0.3), 0.6, 1.4)
    roofs = [current.shapes["roof"][k] for k in _near(wide, current.shapes["roof"])]
    cover_roof = _cover(wide, roofs)
    if cover_roof is not None:
        np.maximum(height, 5.5 * cover_roof, out=height)
    things = _things(wide, current.posts + (current.people if season.golfers and people else ()))
    solid = height.copy()
    if things is not None:
        solid = np.maximum(height, things[2])
    shade = None
    if shadows:
        half = _halved(solid)
        dark = _shadow(half, 2 * view.gsd, azimuth, elevation)
        dark = gaussian_filter(zoom(dark, 2, order=1)[core], 0.3 / view.gsd)
        thin = 1 if season.leaf > 0.6 else 0.62
        shade = dark * thin
    if shade is not None:
        _darken(picture, shade)
    crown = height[core] > 0.4
    if things is not None:
        _lay(picture, things[0][core] if things[0] is not None else None, things[1][:, core[0], core[1]])
    if crown.any():
        _paint_crowns(
            picture, wide, core, season, height, tone, conifer, shade, azimuth, elevation, middle, fine
        )
    if cover_roof is not None:
        _paint_roofs(picture, view, roofs, cover_roof[core], azimuth, fine)
    return _finish(picture, view, season, grain)


def _halved(array):
    """The greatest of each four; an odd last row or column counts twice."""
    array = np.pad(array, ((0, array.shape[0] % 2), (0, array.shape[1] % 2)), "edge")
    return np.maximum(
        np.maximum(array[0::2, 0::2], array[1::2, 0::2]), np.maximum(array[0::2, 1::2], array[1::2, 1::2])
    )


def _darken(picture, shade):
    """Shade leaves the blue of the sky."""
    for k, left in enumerate((0.36, 0.41, 0.52)):
        picture[k] *= 1 - (1 - left) * shade


def _paint_fields(view, season, current, broad, middle, fine):
    """Farmland with its rows, three planes."""
    ground = np.empty((3, view.rows, view.columns), np.float32)
    ground[:] = np.stack(_turf(view, season.colours["floor"], broad, middle, fine, 1.4))
    shapes = current.shapes["fields"]
    near = _near(view, shapes)
    if not near:
        return ground
    index = _burn(view, [shapes[k] for k in near], range(1, len(near) + 1), gdal.GDT_UInt16)
    if not index.any():
        return ground
    choice = np.array([0, *((k * 7 + k // 5) % len(season.fields) for k in near)])[index]
    colour = np.array(season.fields, np.float32)[choice].transpose(2, 0, 1)
    turn = np.array([0, *(0.16 + (k % 2) * np.pi / 2 for k in near)])[index]
    x, y = view.x()[None, :] % 5000, view.y()[:, None] % 5000
    across = -np.sin(turn) * x + np.cos(turn) * y
    rows = (0.022 * np.sin(2 * np.pi * across / 2.6) + 0.05 * (np.abs(across % 21 - 10) < 0.5)).astype(
        np.float32
    )
    light = 1 + 0.05 * broad + 0.035 * middle + 0.03 * fine + rows
    return np.where(index > 0, colour * light, ground)


def _wear(picture, tee, colours, middle, fine):
    """Tees are worn where people stand."""
    worn = np.clip(0.35 * middle + 0.25 * fine - 0.28, 0, 0.5) * tee
    _lay(picture, worn, (0.52, 0.47, 0.32))


def _paint_water(picture, view, water, colours, middle, fine):
    if water is None:
        return
    deep = np.clip(_blur(water, 5 / view.gsd) * 1.5 - 0.45, 0, 1)
    shallow = np.array(colours["bank"]) * 0.55 + np.array(colours["water"]) * 0.5
    ripple = 1 + 0.05 * middle + 0.03 * fine
    planes = [(shallow[k] + (colours["water"][k] - shallow[k]) * deep) * ripple for k in range(3)]
    _lay(picture, water, planes)


def _paint_sand(picture, view, sand, colours, middle, fine):
    """Raked sand with a turf lip that darkens its margin."""
    if sand is None:
        return
    lip = np.clip(_blur(sand, 0.5 / view.gsd) * 1.6, 0, 1) * (1 - sand)
    _lay(picture, lip * 0.55, tuple(0.78 * c for c in colours["cut"]))
    bowl = _blur(sand, 1.1 / view.gsd)
    x, y = view.x()[None, :] % 5000, view.y()[:, None] % 5000
    rake = np.sin((x * 0.8 + y * 0.6) * 2 * np.pi / 1.15 + middle).astype(np.float32)
    light = 0.93 + 0.08 * bowl + 0.018 * rake + 0.02 * middle + 0.025 * fine
    _lay(picture, sand, [colours["sand"][k] * light for k in range(3)])


def _slope_light(height, gsd, azimuth, elevation, most=0.4):
    """How much lighter or darker the sun makes a slope than level ground, a factor."""
    north, east = np.gradient(height, gsd)
    toward = np.sin(np.radians(azimuth)) * -east + np.cos(np.radians(azimuth)) * north
    return 1 + np.clip(toward / np.tan(np.radians(elevation)), -most, most).astype(np.float32)


def _relief(view, cover, broad, azimuth, elevation):
    """The light on the ground's small forms: raised greens and tees, sunk bunkers, rolling fairways."""
    form = 0.22 * broad
    for name, high, wide in (
        ("green", 0.55, 2.6),
        ("tee", 0.55, 0.8),
        ("bunker", -0.95, 0.7),
        ("water", -0.7, 1.0),
    ):
        if cover[name] is not None:
            form = form + high * _blur(cover[name], wide / view.gsd)
    return _slope_light(_blur(form, 0.5 / view.gsd), view.gsd, azimuth, elevation, 0.32)


def _paint_crowns(
    picture, wide, core, season, height, tone, conifer, shade, azimuth, elevation, middle, fine
):
    full = np.clip((height[core] - 0.4) * 1.2, 0, 1)
    smooth = gaussian_filter(height[core], 0.5 / wide.gsd, truncate=2.5)
    light = _slope_light(smooth, wide.gsd, azimuth, elevation, 0.36)
    k = np.minimum((tone[core] * len(season.crowns)).astype(int), len(season.crowns) - 1)
    leaves = np.array(season.crowns, np.float32)[k]
    needles = np.array(_CONIFERS, np.float32)[np.minimum((tone[core] * 3).astype(int), 2)]
    evergreen = conifer[core][..., None] > 0.5
    colour = np.where(evergreen, needles, leaves).transpose(2, 0, 1)
    depth = np.clip(0.6 + 0.05 * smooth, 0.6, 1.15)
    light = light * depth * (1.06 + 0.10 * middle + 0.09 * fine)
    if shade is not None:
        light = light * (1 - 0.42 * shade)
    bare = np.clip(season.leaf + 0.16 + 0.22 * middle, 0, 1)
    full = full * np.where(evergreen[..., 0], 1, bare)
    _lay(picture, full, colour * light)


def _paint_roofs(picture, view, roofs, cover, azimuth, fine):
    """Two pitches, the one towards the sun lighter."""
    index = _burn(view, roofs, range(1, len(roofs) + 1), gdal.GDT_UInt16)
    x, y = view.x()[None, :], view.y()[:, None]
    light = np.ones((view.rows, view.columns), np.float32)
    for k, roof in enumerate(roofs):
        a, b, c = coordinates(roof)[:3]
        along = unit(a - b) if np.hypot(*(a - b)) > np.hypot(*(b - c)) else unit(b - c)
        square = np.array([along[1], -along[0]])
        sunny = square @ (np.sin(np.radians(azimuth)), np.cos(np.radians(azimuth)))
        side = np.sign(square[0] * (x - roof.centroid.x) + square[1] * (y - roof.centroid.y))
        light = np.where(index == k + 1, 0.95 + 0.28 * sunny * side, light)
    _lay(picture, cover, [(0.55, 0.40, 0.34)[k] * light * (1 + 0.03 * fine) for k in range(3)])


def _finish(picture, view, season, grain):
    """The camera: a little blur, haze and grain."""
    for k in range(3):
        picture[k] = gaussian_filter(picture[k], 0.55)
    picture *= 1.04
    picture += np.array([0.018, 0.024, 0.034], np.float32)[:, None, None]
    if grain:
        rng = np.random.default_rng(
            [int(season.taken.timestamp()) % 2**31, int(view.left * 4), int(view.top * 4)]
        )
        noise = rng.standard_normal((view.rows, view.columns), np.float32)
        picture += 0.011 * noise
        picture[0] += 0.004 * noise[::-1]
        picture[2] -= 0.005 * noise[:, ::-1]
    return (np.clip(picture, 0, 1) * 255 + 0.5).astype(np.uint8)


# Files


def course_extent(margin=38.0):
    """x least, y least, x greatest, y greatest that images and terrain cover, in plan.CRS, whole 6 metres."""
    site = map_points(list(drawing().scenery["site"]), to_crs)[0]
    x0, y0, x1, y1 = site.buffer(margin).bounds
    return tuple(6.0 * n for n in (np.floor(x0 / 6), np.floor(y0 / 6), np.ceil(x1 / 6), np.ceil(y1 / 6)))


def _tiles(view):
    for row in range(0, view.rows, TILE):
        for column in range(0, view.columns, TILE):
            yield (
                column,
                row,
                View(
                    view.left + column * view.gsd,
                    view.top - row * view.gsd,
                    view.gsd,
                    min(TILE, view.columns - column),
                    min(TILE, view.rows - row),
                ),
            )


def write_image(path, season, extent=None, progress=None, **what):
    """Paint a date into an RGB GeoTIFF (JPEG inside, with overviews); ``what`` as for ``paint``.

    The file's georeference is off by ``season.shift``. progress(done, total) hears of each tile.
    """
    extent = extent or course_extent()
    x0, y0, x1, y1 = extent
    view = View(x0, y1, season.gsd, int(round((x1 - x0) / season.gsd)), int(round((y1 - y0) / season.gsd)))
    scene(), _noises()
    options = [
        "COMPRESS=JPEG",
        "JPEG_QUALITY=88",
        "PHOTOMETRIC=YCBCR",
        "TILED=YES",
        "BLOCKXSIZE=512",
        "BLOCKYSIZE=512",
    ]
    beside = path + ".part"
    image = gdal.GetDriverByName("GTiff").Create(beside, view.columns, view.rows, 3, gdal.GDT_Byte, options)
    east, north = season.shift
    image.SetGeoTransform((x0 + east, season.gsd, 0, y1 + north, 0, -season.gsd))
    image.SetProjection(_crs().ExportToWkt())
    image.SetMetadataItem("TIFFTAG_DATETIME", season.taken.strftime("%Y:%m:%d %H:%M:%S"))
    tiles = list(_tiles(view))
    with ThreadPoolExecutor(min(4, os.cpu_count() or 1)) as pool:
        painted = pool.map(lambda tile: paint(tile[2], season, **what), tiles)
        for done, ((column, row, _), pixels) in enumerate(zip(tiles, painted), 1):
            image.WriteArray(pixels, column, row)
            if progress:
                progress(done, len(tiles))
    image.FlushCache()
    image.BuildOverviews("AVERAGE", [2, 4, 8, 16])
    image = None
    os.replace(beside, path)
    return path
