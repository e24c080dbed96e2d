"""What is really painted on a page of a PDF, read back by pypdf: shapes and pictures in millimetres.

Nothing of the plugin goes into it, so that places on paper can be compared with places on the ground.
"""

from dataclasses import dataclass

import numpy as np
from pypdf.generic import ContentStream

MM = 25.4 / 72


@dataclass(frozen=True)
class Shape:
    """A path. how: ``fill`` or ``stroke``; tone: ``#rrggbb``; width: of a stroke, mm; chains: arrays (n, 2) of
    its corners, mm from the top left of the trimmed page, y downwards."""

    how: str
    tone: str
    width: float
    chains: tuple

    @property
    def points(self):
        return np.vstack(self.chains)


@dataclass(frozen=True)
class Picture:
    """A picture. pixels: (rows, columns, 3); to_page: (2, 3), which takes (column, row, 1) to mm."""

    pixels: np.ndarray
    to_page: np.ndarray

    def places(self, pixels):
        """(n, 2) in mm of (n, 2) columns and rows."""
        pixels = np.asarray(pixels, dtype=float).reshape(-1, 2)
        return np.column_stack([pixels, np.ones(len(pixels))]) @ self.to_page.T

    @property
    def bounds(self):
        """(left, top, right, bottom) in mm."""
        rows, columns = self.pixels.shape[:2]
        corners = self.places([(0, 0), (columns, rows)])
        return (*corners.min(axis=0), *corners.max(axis=0))


def painted(page):
    """``(shapes, pictures)`` of a page of pypdf, in the order they are painted."""
    return _Reader(page).read()


def _matrix(a, b, c, d, e, f):
    return np.array([[a, c, e], [b, d, f], [0.0, 0.0, 1.0]])


class _Reader:
    def __init__(self, page):
        self.page = page
        left, _, _, top = map(float, page.trimbox)
        self.to_trim = np.array([[MM, 0.0, -left * MM], [0.0, -MM, top * MM], [0.0, 0.0, 1.0]])
        self.now = {"ctm": np.eye(3), "fill": "#000000", "stroke": "#000000", "width": 1.0}
        self.kept, self.path = [], []
        self.shapes, self.pictures = [], []

    def read(self):
        stream = ContentStream(self.page["/Contents"].get_object(), self.page.pdf)
        for operands, operator in stream.operations:
            name = operator.decode()
            if name in ("f", "F", "f*", "B", "B*"):
                self._paint("fill")
            if name in ("S", "s", "B", "B*"):
                self._paint("stroke")
            if name in ("f", "F", "f*", "B", "B*", "S", "s", "n"):
                self.path = []
            elif name == "q":
                self.kept.append(dict(self.now))
            elif name == "Q":
                self.now = self.kept.pop()
            elif name == "cm":
                self.now["ctm"] = self.now["ctm"] @ _matrix(*map(float, operands))
            elif name in ("scn", "rg", "SCN", "RG"):
                if len(operands) == 3:
                    which = "fill" if name.islower() else "stroke"
                    self.now[which] = "#" + "".join(f"{round(255 * float(one)):02x}" for one in operands)
            elif name == "w":
                self.now["width"] = float(operands[0])
            elif name == "m":
                self.path.append([self._at(*operands)])
            elif name == "l":
                self.path[-1].append(self._at(*operands))
            elif name == "c":
                self._curve(operands)
            elif name == "re":
                x, y, wide, high = map(float, operands)
                ring = ((x, y), (x + wide, y), (x + wide, y + high), (x, y + high), (x, y))
                self.path.append([self._at(*corner) for corner in ring])
            elif name == "Do":
                self._picture(operands[0])
        return tuple(self.shapes), tuple(self.pictures)

    def _at(self, x, y):
        return (self.to_trim @ self.now["ctm"] @ (float(x), float(y), 1.0))[:2]

    def _curve(self, operands):
        """A Bézier curve as eight straight lines, which lie within a thousandth of a dot's radius of it."""
        start = self.path[-1][-1]
        one, two, end = (self._at(*operands[n : n + 2]) for n in (0, 2, 4))
        for t in np.linspace(0.0, 1.0, 9)[1:]:
            s = 1.0 - t
            self.path[-1].append(s**3 * start + 3 * s * s * t * one + 3 * s * t * t * two + t**3 * end)

    def _paint(self, how):
        chains = tuple(np.array(chain) for chain in self.path if len(chain) > 1)
        if chains:
            scale = abs(np.linalg.det((self.to_trim @ self.now["ctm"])[:2, :2])) ** 0.5
            width = self.now["width"] * scale if how == "stroke" else 0.0
            self.shapes.append(Shape(how, self.now[how], width, chains))

    def _picture(self, name):
        thing = self.page["/Resources"]["/XObject"][name].get_object()
        if thing["/Subtype"] != "/Image":
            return
        rows, columns = int(thing["/Height"]), int(thing["/Width"])
        # Of a page for print, whose pictures keep every pixel.
        assert (thing["/ColorSpace"], thing["/BitsPerComponent"]) == ("/DeviceRGB", 8), thing
        pixels = np.frombuffer(thing.get_data(), np.uint8).reshape(rows, columns, 3)
        # The unit square's top left is the first pixel's.
        unit = np.array([[1.0 / columns, 0.0, 0.0], [0.0, -1.0 / rows, 1.0], [0.0, 0.0, 1.0]])
        self.pictures.append(Picture(pixels, (self.to_trim @ self.now["ctm"] @ unit)[:2]))


def discs(shapes, radius, tone="", within=None):
    """(n, 2): the middles of filled circles of a radius, mm. tone: ``#rrggbb``, "" any. within: bounds."""
    return _middles(shapes, radius, tone, within, lambda corners: corners > 20)


def diamonds(shapes, radius, tone="", within=None):
    """(n, 2): the middles of filled squares on their corner, ``radius`` mm from middle to corner."""
    return _middles(shapes, radius, tone, within, lambda corners: corners in (4, 5))


def _middles(shapes, radius, tone, within, right_number):
    """Those of filled areas twice a radius wide and high, with the right number of corners."""
    found = []
    for shape in shapes:
        if shape.how != "fill" or tone not in ("", shape.tone):
            continue
        for chain in shape.chains:
            low, high = chain.min(axis=0), chain.max(axis=0)
            if np.allclose(high - low, 2 * radius, atol=0.012) and right_number(len(chain)):
                found.append((low + high) / 2)
    return _within(found, within)


def _within(points, bounds):
    points = np.array(points, dtype=float).reshape(-1, 2)
    if bounds is None or not len(points):
        return points
    return points[((points >= bounds[:2]) & (points <= bounds[2:])).all(axis=1)]
