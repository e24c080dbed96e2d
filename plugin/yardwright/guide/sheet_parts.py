"""What a printed sheet is made of, in millimetres from a page's top left corner: texts, lines, areas, tables.

Plain values that say what stands where; ``painted_sheets`` brings them to paper.
"""

import math
from dataclasses import dataclass, field

from ..model.words import say
from .lettering import MM_PER_POINT, width_of

LEAST_SIZE = 6.0
"""Points; nothing on a sheet is smaller (our own rule: a sheet is read walking)."""

INK, SOFT, HAIR, SHADE, PAPER = "#000000", "#4a4a4a", "#9a9a9a", "#efefef", "#ffffff"
GREEN, SAND, GRAINS = "#e3eedb", "#f6efdb", "#7a6a45"
"""The colours of a sheet. All things are told by pattern or weight too, for most sheets are printed grey."""

_CAP, _BELOW = 0.73, 0.23
"""How far letters reach above and below their base line, of their size."""


@dataclass(frozen=True)
class Text:
    """A line of text. x, y: its left end, middle or right end (``align``) on the base line. size: points.
    about: what it is, for who looks for it on a page. halo: the tone of a rim that parts it from a picture,
    "" for none."""

    x: float
    y: float
    text: str
    size: float
    bold: bool = False
    align: str = "left"
    tone: str = INK
    about: str = ""
    halo: str = ""

    def __post_init__(self):
        if self.size < LEAST_SIZE:
            raise ValueError(f"letters of {self.size} points are too small to be read")

    @property
    def box(self):
        """(left, top, right, bottom) of its letters."""
        width = width_of(self.text, self.size, self.bold)
        left = self.x - {"left": 0.0, "centre": width / 2, "right": width}[self.align]
        height = self.size * MM_PER_POINT
        return left, self.y - _CAP * height, left + width, self.y + _BELOW * height


@dataclass(frozen=True)
class Line:
    """A chain of straight lines. points: ``((x, y), ...)``. dash: lengths of line and gap, () for none."""

    points: tuple
    width: float
    tone: str = INK
    dash: tuple = ()


@dataclass(frozen=True)
class Area:
    """A filled area. rings: of points; what lies in an even number of them is left out."""

    rings: tuple
    tone: str


@dataclass(frozen=True)
class Dots:
    """Filled circles of one radius about points."""

    points: tuple
    radius: float
    tone: str = INK


@dataclass(frozen=True)
class Flow:
    """A page of a Markdown text that flows over frames of one size, see ``flowing_text``. x, y: the frame's
    left top corner. size: points. page: which of its pages, from 0. folder: where its pictures lie, stamps:
    what they are known by."""

    x: float
    y: float
    width: float
    height: float
    text: str
    size: float
    page: int = 0
    folder: str = field(default="", repr=False)
    stamps: tuple = ()


@dataclass(frozen=True)
class Place:
    """Where something of a green falls on a page. symbol: ``pin``, ``front`` or ``back``; round: of a pin."""

    symbol: str
    hole: int
    x: float
    y: float
    round: int = None


@dataclass(frozen=True)
class Page:
    """A page. items: in the order they are painted."""

    width: float
    height: float
    items: tuple
    places: tuple = ()


@dataclass(frozen=True)
class Sheet:
    """Pages to be printed or sent. scale: the denominator of its greens, None without any. remarks: what a
    user should know of it (``model.remarks.Remark``)."""

    title: str
    pages: tuple
    scale: float = None
    remarks: tuple = ()


def box_area(left, top, right, bottom, tone):
    """An upright rectangle."""
    return Area((((left, top), (right, top), (right, bottom), (left, bottom)),), tone)


def fall_arrow(x, y, turn, length):
    """Items of a small arrow about a place that points where the ground falls.

    turn: degrees clockwise from up, as a green is seen with its approach up.
    """
    ahead = math.sin(math.radians(turn)), -math.cos(math.radians(turn))
    half, head, wide = length / 2, 0.48 * length, 0.26 * length

    def at(along, aside):
        return x + along * ahead[0] - aside * ahead[1], y + along * ahead[1] + aside * ahead[0]

    shaft = Line((at(-half, 0.0), at(half - head, 0.0)), 0.13 * length)
    return [shaft, Area(((at(half, 0.0), at(half - head, wide), at(half - head, -wide)),), INK)]


def height_of(size):
    """Millimetres of a size in points."""
    return size * MM_PER_POINT


def cap_of(size):
    """Height of capitals and figures, millimetres."""
    return _CAP * size * MM_PER_POINT


def fitted(text, width, size, bold=False):
    """``(text, size)`` that keeps within a width: set smaller as far as LEAST_SIZE, then cut short."""
    needed = width_of(text, size, bold)
    if needed <= width:
        return text, size
    size = max(LEAST_SIZE, size * width / needed)
    while text and width_of(text, size, bold) > width + 1e-6:
        text = text.rstrip("…")[:-1].rstrip() + "…" if len(text) > 1 else ""
    return text, size


def wrapped(text, width, size, bold=False):
    """A text as lines that keep within a width, broken at spaces; a longer word is cut short."""
    lines = []
    for word in text.split():
        longer = f"{lines[-1]} {word}" if lines else word
        if lines and width_of(longer, size, bold) <= width:
            lines[-1] = longer
        else:
            lines.append(word)
    kept = []
    for line in lines:
        while width_of(line, size, bold) > width and len(line) > 1:
            line = line.rstrip("…")[:-1] + "…"
        kept.append(line)
    return kept


def in_two(text, size):
    """A short text as one line or two, whichever way is narrower; a list."""
    words = text.split()
    cuts = [[" ".join(words[:cut]), " ".join(words[cut:])] for cut in range(1, len(words))]
    return min(cuts, key=lambda lines: max(width_of(line, size) for line in lines), default=[text])


# --- the page about its contents -----------------------------------------------------------------------


@dataclass(frozen=True)
class Shell:
    """The frame of all pages of a sheet: a head of a title, a line below it and a word in the corner, and a
    foot of sentences. width, height: of the page."""

    width: float
    height: float
    title: str
    line: str
    corner: str
    foot: tuple

    @property
    def weight(self):
        """How large its letters are set: 1 on A4."""
        return min(max((min(self.width, self.height) / 210.0) ** 0.62, 0.5), 1.2)

    @property
    def margin(self):
        """White about the page, millimetres."""
        return min(max(0.043 * min(self.width, self.height), 4.0), 10.0)

    @property
    def _sizes(self):
        """Points of title, line, corner and foot."""
        return tuple(max(LEAST_SIZE, size * self.weight) for size in (15.0, 9.5, 19.0, 7.5))

    @property
    def _foot_lines(self):
        """The foot broken into lines; the last keeps room for the page's number."""
        size = self._sizes[3]
        width = self.width - 2 * self.margin
        return wrapped(" ".join(self.foot), width - width_of("99 / 99", size) - 3.0, size)

    @property
    def _head_bottom(self):
        title, line, corner, _ = self._sizes
        return self.margin + max(cap_of(title) + 1.75 * height_of(line), cap_of(corner)) + 1.5

    @property
    def _foot_top(self):
        return self.height - self.margin - 1.25 * height_of(self._sizes[3]) * len(self._foot_lines) - 0.6

    @property
    def inner(self):
        """(left, top, right, bottom) of what is left for the contents."""
        return self.margin, self._head_bottom + 1.5, self.width - self.margin, self._foot_top - 1.5

    def items(self, number, count):
        """What is painted of it on page ``number`` of ``count``."""
        title, line, corner, foot = self._sizes
        left, right = self.margin, self.width - self.margin
        taken = width_of(self.corner, corner, True) + 4.0 if self.corner else 0.0
        text, size = fitted(self.title, right - left - taken, title, True)
        base = self.margin + cap_of(title)
        made = [Text(left, base, text, size, True, about="title")]
        text, size = fitted(self.line, right - left - taken, line)
        made.append(Text(left, base + 1.6 * height_of(line), text, size, tone=SOFT, about="line"))
        if self.corner:
            made.append(Text(right, self.margin + cap_of(corner), self.corner, corner, True, "right"))
        made.append(Line(((left, self._head_bottom), (right, self._head_bottom)), 0.4))
        made.append(Line(((left, self._foot_top), (right, self._foot_top)), 0.15, HAIR))
        base = self._foot_top + 0.6
        for text in self._foot_lines:
            base += 1.25 * height_of(foot)
            made.append(Text(left, base - 0.25 * height_of(foot), text, foot, tone=SOFT, about="foot"))
        if count > 1:
            text = say("{number} / {count}", number=number, count=count)
            made.append(
                Text(right, base - 0.25 * height_of(foot), text, foot, align="right", tone=SOFT, about="page")
            )
        return made


# --- tables --------------------------------------------------------------------------------------------


@dataclass(frozen=True)
class Column:
    """A column of a table. share: of the width. bold: whether its cells are."""

    title: str
    share: float
    align: str = "left"
    bold: bool = False


@dataclass(frozen=True)
class TableRow:
    """A row of texts, one a column. note: a remark below it. begins: a group begins with it, and a rule
    stands above it. bold: the places of cells that are bold beside those of bold columns. arrows: ``{place of
    a cell: turn of the ``fall_arrow`` before its text}``."""

    cells: tuple
    note: str = ""
    begins: bool = True
    bold: frozenset = frozenset()
    arrows: dict = field(default_factory=dict)


@dataclass(frozen=True)
class Table:
    """A table of one width. size: points of its cells; the head's are smaller. leading: height of a row as a
    factor of its letters' size. note_from: the column a note begins at; note_size: its points."""

    columns: tuple
    width: float
    size: float
    leading: float = 1.9
    note_from: int = 0
    note_size: float = None

    @property
    def _head_size(self):
        return max(LEAST_SIZE, 0.62 * self.size)

    @property
    def _note_size(self):
        return max(LEAST_SIZE, 0.66 * self.size if self.note_size is None else self.note_size)

    @property
    def _pad(self):
        """White either side of a cell's text."""
        return max(0.8, 0.22 * height_of(self.size))

    @property
    def _edges(self):
        total = sum(column.share for column in self.columns)
        edges = [0.0]
        for column in self.columns:
            edges.append(edges[-1] + self.width * column.share / total)
        return edges

    @property
    def _head_lines(self):
        edges = self._edges
        size = self._head_size
        return [
            wrapped(column.title, right - left - 2 * self._pad, size)
            for column, left, right in zip(self.columns, edges, edges[1:])
        ]

    @property
    def head_height(self):
        """Of the line of titles, millimetres."""
        return 1.2 * height_of(self._head_size) * max(map(len, self._head_lines)) + 1.6

    def _notes(self, row):
        return wrapped(row.note, self.width - self._edges[self.note_from] - 2 * self._pad, self._note_size)

    def row_height(self, row):
        """Of a row with its note, millimetres."""
        notes = self._notes(row)
        below = 1.25 * height_of(self._note_size) * len(notes)
        return self.leading * height_of(self.size) + below

    def parted(self, rows, room):
        """Rows as a list of lists, each of which fits into a height with the head; groups stay together."""
        groups = []
        for row in rows:
            if row.begins or not groups:
                groups.append([])
            groups[-1].append(row)
        pages, left = [], -1.0
        for group in groups:
            heights = [self.row_height(row) for row in group]
            if sum(heights) <= left:
                pages[-1].extend(group)
                left -= sum(heights)
                continue
            for position, (row, height) in enumerate(zip(group, heights)):
                if position == 0 or height > left:
                    pages.append([])
                    left = room - self.head_height
                pages[-1].append(row)
                left -= height
        return pages

    def items(self, rows, left, top):
        """``(items, bottom)`` of the table with its top left corner at a place."""
        made, edges = [], [left + edge for edge in self._edges]
        size = self._head_size
        for column, lines, start, end in zip(self.columns, self._head_lines, edges, edges[1:]):
            for number, text in enumerate(lines):
                base = top + cap_of(size) + 1.2 * height_of(size) * number
                made.append(self._cell(column, text, start, end, base, size, False, SOFT))
        y = top + self.head_height
        for row in rows:
            if row.begins:
                made.append(Line(((left, y), (left + self.width, y)), 0.2, SOFT))
            base = y + (self.leading * height_of(self.size) + cap_of(self.size)) / 2
            cells = zip(self.columns, row.cells, edges, edges[1:])
            for number, (column, text, start, end) in enumerate(cells):
                if text:
                    bold = column.bold or number in row.bold
                    arrow = 1.7 * cap_of(self.size) if number in row.arrows else 0.0
                    text, fits = fitted(text, end - start - 2 * self._pad - arrow, self.size, bold)
                    cell = self._cell(column, text, start + arrow, end, base, fits, bold, INK)
                    made.append(cell)
                    if arrow:
                        middle = cell.box[0] - 0.6 * arrow, base - cap_of(self.size) / 2
                        made += fall_arrow(*middle, row.arrows[number], 1.25 * cap_of(self.size))
            step = 1.25 * height_of(self._note_size)
            under = base + 0.45 * height_of(self.size)
            for line, text in enumerate(self._notes(row)):
                at = under + step * line + cap_of(self._note_size)
                made.append(Text(edges[self.note_from] + self._pad, at, text, self._note_size, tone=SOFT))
            y += self.row_height(row)
        made.append(Line(((left, y), (left + self.width, y)), 0.2, SOFT))
        return made, y

    def _cell(self, column, text, start, end, base, size, bold, tone):
        pad = self._pad
        x = {"left": start + pad, "centre": (start + end) / 2, "right": end - pad}[column.align]
        return Text(x, base, text, size, bold, column.align, tone)
