"""One-page PDFs joined to a book for the screen or the printer, or imposed as a booklet.

What is drawn is taken over as it is: the content streams of the pages, their fonts and pictures are copied
byte for byte and nothing is painted anew, so that an unchanged page is the same in the next book. The same
pages give the same file.
"""

import math
import re
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime
from urllib.parse import quote

from ..model.errors import Cancelled, YardwrightError
from ..model.words import say
from ..store.files import written_beside
from .pdf_objects import PdfFile
from .pdf_writing import Copier, PdfWriting, as_number

POINT = 72 / 25.4
"""Points a millimetre."""
_LEAST, _MOST = 2.0 * POINT, 14400.0
"""Points a page may measure (the most: ISO 32000, annex C)."""
_SLACK = 1.0
"""A page is taken for one of a size when it is so many points off: Qt makes pages of whole points."""
_MARK, _MARK_GAP, _MARK_WIDTH = 5.0, 2.0, 0.1
"""Crop marks, mm: their length, the gap between them and what is cut when there is no bleed, their line."""
_URL = re.compile(r"(?:https?://|mailto:|tel:|geo:)[^\r\n]+", re.IGNORECASE)


@dataclass(frozen=True)
class Link:
    """A part of a page that leads elsewhere. box: left, top, right, bottom in mm from the top left corner of
    the trimmed page; to: another Leaf's name, or a URL (http, https, mailto, tel, geo)."""

    box: tuple
    to: str


@dataclass(frozen=True)
class Leaf:
    """A page of the book. path: a PDF of one page; title: of its bookmark, "" for none, nested by level;
    name: what links call it; bleed_mm: how far the page is drawn beyond its trim on all sides; size_mm: width
    and height of the trimmed page, laid at the top left within the bleed, None for all but the bleed. Qt
    rounds a page to whole points; size_mm puts that right."""

    path: str
    title: str = ""
    level: int = 0
    name: str = ""
    links: tuple = ()
    bleed_mm: float = 0.0
    size_mm: tuple = None


@dataclass(frozen=True)
class BookInfo:
    """What a viewer says of the book. language: such as "en-GB", for screen readers; made: a datetime, left
    out when None, so that the same book gives the same file."""

    title: str = ""
    author: str = ""
    subject: str = ""
    keywords: str = ""
    language: str = ""
    made: datetime = None


def join(leaves, path, info, marks=False, progress=None):
    """Write the pages one after the other as a PDF at ``path``, with bookmarks and links.

    Each page has its TrimBox, BleedBox and MediaBox. marks: crop marks around each, on a larger sheet.
    progress: called with (done, total) pages; when it returns False, Cancelled is raised. What was at
    ``path`` stays until all is written. Raises YardwrightError when there are no pages, one of them is no
    whole one-page PDF or not of its size, a link leads nowhere, or the file cannot be written.
    """
    _check(leaves)
    with _book(path, info) as book:
        pages = [book.writing.reserve() for _ in leaves]
        named = {leaf.name: page for leaf, page in zip(leaves, pages) if leaf.name}
        for done, (leaf, page) in enumerate(zip(leaves, pages)):
            _go_on(progress, done, len(leaves))
            with PdfFile(leaf.path) as source:
                book.writing.put(_joined(leaf, source, book, named, marks), page)
        book.finish(pages, _outlines(leaves, pages, book.writing))


def impose(leaves, path, info, sheet=None, creep_mm=0.0, flip="short", marks=True, progress=None):
    """Write the pages as sheets to be printed on both sides, folded once and stapled in the fold.

    Pages are padded with empty ones to a multiple of four. Of n pages, sheet i carries on its outside
    n - 2i | 2i + 1 and on its inside 2i + 2 | n - 2i - 1 (i from 0, the outermost); the file holds outside
    and inside of each sheet in turn, and each page of it is a sheet's side as it is printed.

    sheet: width and height in mm of the open sheet, None for one that just holds two pages, their bleed and
    their marks. All pages must be of one size, two of them fit on the sheet; they meet at its middle.
    creep_mm: thickness of the paper. The pages of sheet i are moved i times so far towards the spine, for
    that is how far an inner sheet stands out of the folded pile before its fore-edge is cut.
    flip: the edge about which the printer turns the sheet, "short" or "long". Turned about an upright edge,
    both sides have the same top: the inside is upright. Turned about its top, the inside would be upside
    down, so it is turned by 180 degrees. The upright edge is the short one of a sheet that is wider than
    high (two upright pages), and the long one of a sheet that is higher than wide (two very wide pages).
    marks: crop marks at the corners and a dashed line where to fold, where the sheet has room.
    progress: as for ``join``. Bookmarks and links are for the screen and left out.

    Raises YardwrightError as ``join`` does, and when pages differ in size or do not fit.
    """
    _check(leaves)
    if flip not in ("short", "long"):
        raise ValueError(f"no edge to flip about: {flip}")
    with _book(path, info) as book:
        forms = []
        for leaf in leaves:
            _go_on(progress, len(forms), len(leaves))
            forms.append(_form(leaf, book))
        spread = _Spread(leaves, forms, sheet, marks)
        order = sheets(len(leaves))
        spread.check_creep(creep_mm, len(order))
        upside_down = (flip == "long") == (spread.width >= spread.height)
        pages = []
        for i, sides in enumerate(order):
            for pair, turned in zip(sides, (False, upside_down)):
                halves = [forms[page - 1] if page <= len(forms) else None for page in pair]
                made = spread.side(halves, i * creep_mm * POINT, turned, book)
                pages.append(book.writing.put(made))
        edge = b"/DuplexFlipShortEdge" if flip == "short" else b"/DuplexFlipLongEdge"
        book.finish(pages, {}, {b"/Duplex": edge})


def fit(source_path, path, size_mm, bleed_mm=0.0, page=None):
    """Write a page of a size with a page of another PDF in its middle, whole and as large as it may be: a
    sponsor's page, whatever its size, as a Leaf of the book. page: which, from 1; None: the only one.

    Raises YardwrightError as ``join`` does, and when there is no such page.
    """
    with _book(path, BookInfo()) as book:
        form = _form(Leaf(source_path), book, page)
        wide, high = (side * POINT for side in size_mm)
        scale = min(wide / form.paper.wide, high / form.paper.high)
        bleed = bleed_mm * POINT
        left, bottom = (
            bleed + (wide - scale * form.paper.wide) / 2,
            bleed + (high - scale * form.paper.high) / 2,
        )
        content = b"q " + _matrix((scale, 0, 0, scale, left, bottom)) + b"/Page Do Q"
        trim = bleed, bleed, bleed + wide, bleed + high
        made = {
            b"/Type": b"/Page",
            b"/Parent": book.tree,
            b"/MediaBox": list(grown(trim, bleed)),
            b"/TrimBox": list(trim),
            b"/Resources": {b"/XObject": {b"/Page": form.reference}},
            b"/Contents": _content(book, content),
        }
        book.finish([book.writing.put(made)], {})


def sheets(count):
    """``((left, right), (left, right))`` of the outside and the inside of each sheet of a saddle-stitched
    booklet, the outermost first: pages from 1, those above ``count`` are empty.

    >>> sheets(7)
    [((8, 1), (2, 7)), ((6, 3), (4, 5))]
    """
    padded = 4 * math.ceil(count / 4)
    return [((padded - 2 * i, 2 * i + 1), (2 * i + 2, padded - 2 * i - 1)) for i in range(padded // 4)]


# The book


class _Book:
    """A PDF that is being written: what stands in it beside its pages."""

    def __init__(self, file, info):
        self.writing = PdfWriting(file)
        self.info = info
        self._root, self.tree = self.writing.reserve(), self.writing.reserve()

    def finish(self, pages, entries, printing=None):
        """Write what names the pages. entries: of the catalogue; printing: preferences for the printer."""
        self.writing.put({b"/Type": b"/Pages", b"/Kids": pages, b"/Count": len(pages)}, self.tree)
        info = self.info
        # A viewer that fits pages to its paper would change the scale of the greens.
        preferences = {b"/PrintScaling": b"/None", **(printing or {})}
        if info.title:
            preferences[b"/DisplayDocTitle"] = b"true"
        catalogue = {
            b"/Type": b"/Catalog",
            b"/Pages": self.tree,
            b"/ViewerPreferences": preferences,
            **entries,
        }
        if info.language:
            catalogue[b"/Lang"] = info.language
        self.writing.put(catalogue, self._root)
        said = {
            b"/Title": info.title,
            b"/Author": info.author,
            b"/Subject": info.subject,
            b"/Keywords": info.keywords,
            b"/Creator": "Yardwright",
            b"/Producer": "Yardwright",
            b"/CreationDate": _date(info.made) if info.made else "",
        }
        self.writing.finish(self._root, self.writing.put({key: text for key, text in said.items() if text}))


@contextmanager
def _book(path, info):
    """A _Book that becomes the file at ``path`` when all has gone well."""
    with written_beside(path) as draft:
        try:
            with open(draft, "w+b") as file:
                yield _Book(file, info)
        except OSError as error:
            raise YardwrightError(
                say("“{path}” could not be written ({reason}).", path=path, reason=error.strerror),
                say("Check that there is room on the disk and try again."),
            ) from error


def _go_on(progress, done, total):
    if progress is not None and progress(done, total) is False:
        raise Cancelled


def _date(moment):
    """A datetime as PDF writes it, its zone left out when it has none."""
    zone = moment.strftime("%z")
    return moment.strftime("D:%Y%m%d%H%M%S") + (f"{zone[:3]}'{zone[3:5]}'" if zone else "")


def _check(leaves):
    """Raise YardwrightError for what can be seen before the pages are read."""
    if not leaves:
        raise YardwrightError(say("The book has no pages."), say("Choose at least one page."))
    names = [leaf.name for leaf in leaves if leaf.name]
    twice = [name for name in names if names.count(name) > 1]
    if twice:
        raise YardwrightError(
            say("Two pages of the book are called “{name}”.", name=twice[0]),
            say("Give each page a name of its own."),
        )
    for place, leaf in enumerate(leaves, 1):
        for link in leaf.links:
            if link.to not in names and not _URL.fullmatch(link.to):
                raise YardwrightError(
                    say("A link on page {page} leads to “{to}”, which is not there.", page=place, to=link.to),
                    say("Let it lead to a page of the book or to a web address (https://…)."),
                )


# Pages


class _Paper:
    """A leaf's page as one looks at it: upright, in points from its bottom left corner.

    trim, outer: boxes (left, bottom, right, top), without and with bleed; to_page, from_page: six numbers
    each, PDF's own way of writing how upright points become those of the page and back.
    """

    def __init__(self, leaf, source, page):
        self.leaf, self.source = leaf, source
        left, bottom, right, top = self._shown(page)
        self.unit = source.number(page.get(b"/UserUnit", b"1"))
        self.turned = int(source.number(page.get(b"/Rotate", b"0"))) % 360
        if self.turned % 90 or self.unit <= 0:
            raise source.damaged()
        to_page, from_page = {
            0: ((1, 0, 0, 1, left, bottom), (1, 0, 0, 1, -left, -bottom)),
            90: ((0, 1, -1, 0, right, bottom), (0, -1, 1, 0, -bottom, right)),
            180: ((-1, 0, 0, -1, right, top), (-1, 0, 0, -1, right, top)),
            270: ((0, -1, 1, 0, left, top), (0, 1, -1, 0, top, -left)),
        }[self.turned]
        self.to_page = (*(one / self.unit for one in to_page[:4]), *to_page[4:])
        self.from_page = tuple(one * self.unit for one in from_page)
        sides = (right - left) * self.unit, (top - bottom) * self.unit
        self.wide, self.high = sides[::-1] if self.turned % 180 else sides
        self.trim = self._trim()
        self.outer = grown(self.trim, leaf.bleed_mm * POINT)

    def _shown(self, page):
        box = self._box(page.get(b"/MediaBox"))
        if b"/CropBox" in page:
            crop = self._box(page[b"/CropBox"])
            box = *map(max, box[:2], crop[:2]), *map(min, box[2:], crop[2:])
        sides = box[2] - box[0], box[3] - box[1]
        if min(sides) < _LEAST or max(sides) > _MOST:
            raise YardwrightError(
                say("The page of “{path}” measures {size} mm.", path=self.leaf.path, size=_size_said(sides)),
                say("Make a page of at least 2 and at most 5000 mm."),
            )
        return box

    def _box(self, value):
        corners = self.source.get(value)
        if not isinstance(corners, list) or len(corners) != 4:
            raise self.source.damaged()
        x, y, other_x, other_y = map(self.source.number, corners)
        return min(x, other_x), min(y, other_y), max(x, other_x), max(y, other_y)

    def _trim(self):
        bleed, size = self.leaf.bleed_mm * POINT, self.leaf.size_mm
        wide, high = (
            (side * POINT for side in size) if size else (self.wide - 2 * bleed, self.high - 2 * bleed)
        )
        off = max(abs(wide + 2 * bleed - self.wide), abs(high + 2 * bleed - self.high))
        if min(wide, high) < _LEAST or off > _SLACK:
            raise YardwrightError(
                say(
                    "The page of “{path}” measures {size} mm with its bleed, not {wanted} mm.",
                    path=self.leaf.path,
                    size=_size_said((self.wide, self.high)),
                    wanted=_size_said((max(wide, 0) + 2 * bleed, max(high, 0) + 2 * bleed)),
                ),
                say("Make it as large as the book’s pages, with the same bleed on all sides."),
            )
        return bleed, self.high - bleed - high, bleed + wide, self.high - bleed

    def boxed(self, box):
        """An upright box as the page has it."""
        x, y = moved(self.to_page, *box[:2])
        other_x, other_y = moved(self.to_page, *box[2:])
        return [min(x, other_x), min(y, other_y), max(x, other_x), max(y, other_y)]

    def link_box(self, box):
        left, top, right, bottom = (side * POINT for side in box)
        x, y = self.trim[0], self.trim[3]
        return self.boxed((x + left, y - bottom, x + right, y - top))


def _joined(leaf, source, book, named, marks):
    """The dictionary of a leaf's page in the book."""
    page = source.page()
    paper, copier = _Paper(leaf, source, page), Copier(source, book.writing)
    media, contents = paper.outer, copier.contents(page.get(b"/Contents"))
    if marks:
        media = grown(paper.trim, (max(leaf.bleed_mm, _MARK_GAP) + _MARK + 1.0) * POINT)
        before = b"q " + _clip(paper.boxed(paper.outer)) + b"\n"
        after = b"\nQ " + _drawn(crop_marks(paper.trim, leaf.bleed_mm), paper.to_page)
        contents = [_content(book, before), *contents, _content(book, after)]
    made = {
        b"/Type": b"/Page",
        b"/Parent": book.tree,
        b"/MediaBox": paper.boxed(media),
        b"/BleedBox": paper.boxed(paper.outer),
        b"/TrimBox": paper.boxed(paper.trim),
        b"/Resources": copier.value(source.dictionary(page.get(b"/Resources", {}))),
    }
    if contents:
        made[b"/Contents"] = contents[0] if len(contents) == 1 else contents
    if paper.turned:
        made[b"/Rotate"] = paper.turned
    if paper.unit != 1:
        made[b"/UserUnit"] = paper.unit
    if b"/Group" in page:
        made[b"/Group"] = copier.value(page[b"/Group"])
    if leaf.links:
        made[b"/Annots"] = [book.writing.put(_annotation(link, paper, named)) for link in leaf.links]
    return made


def _annotation(link, paper, named):
    made = {
        b"/Type": b"/Annot",
        b"/Subtype": b"/Link",
        b"/Rect": paper.link_box(link.box),
        b"/Border": [0, 0, 0],
        b"/F": 4,
    }
    if link.to in named:
        made[b"/Dest"] = [named[link.to], b"/Fit"]
    else:
        # PDF wants addresses in ASCII; what is encoded already stays as it is.
        address = quote(link.to, safe="%/:=&?~#+!$,;'@()*[]")
        made[b"/A"] = {b"/S": b"/URI", b"/URI": address}
    return made


def _outlines(leaves, pages, writing):
    """What the catalogue says of bookmarks. A level may be one deeper than the one before it, not more."""
    root = {"kids": [], "level": -1}
    chain = [root]
    for leaf, page in zip(leaves, pages):
        if leaf.title:
            level = min(max(leaf.level, 0), chain[-1]["level"] + 1)
            chain = chain[: level + 1]
            entry = {"kids": [], "level": level, "title": leaf.title, "page": page}
            chain[-1]["kids"].append(entry)
            chain.append(entry)
    if not root["kids"]:
        return {}
    reference = writing.reserve()
    writing.put({b"/Type": b"/Outlines", **_put_entries(root, reference, writing)}, reference)
    return {b"/Outlines": reference, b"/PageMode": b"/UseOutlines"}


def _put_entries(parent, reference, writing):
    """Store what lies below an entry, all of it folded up; returns what the entry says of it."""
    kids = parent["kids"]
    if not kids:
        return {}
    places = [writing.reserve() for _ in kids]
    for k, (kid, place) in enumerate(zip(kids, places)):
        made = {b"/Title": kid["title"], b"/Parent": reference, b"/Dest": [kid["page"], b"/Fit"]}
        if k:
            made[b"/Prev"] = places[k - 1]
        if k + 1 < len(kids):
            made[b"/Next"] = places[k + 1]
        writing.put({**made, **_put_entries(kid, place, writing)}, place)
    # The root is always open; a negative count says that an entry is folded up.
    count = len(kids) if parent["level"] < 0 else -len(kids)
    return {b"/First": places[0], b"/Last": places[-1], b"/Count": count}


# Sheets


@dataclass(frozen=True)
class _Form:
    """A leaf's page as a picture in the book, and its _Paper."""

    reference: object
    paper: object


def _form(leaf, book, number=None):
    with PdfFile(leaf.path) as source:
        page = source.page(number)
        paper, copier = _Paper(leaf, source, page), Copier(source, book.writing)
        dictionary = {
            b"/Type": b"/XObject",
            b"/Subtype": b"/Form",
            b"/BBox": paper.boxed(paper.outer),
            b"/Matrix": list(paper.from_page),
            b"/Resources": copier.value(source.dictionary(page.get(b"/Resources", {}))),
        }
        if b"/Group" in page:
            dictionary[b"/Group"] = copier.value(page[b"/Group"])
        return _Form(copier.form(page.get(b"/Contents"), dictionary), paper)


class _Spread:
    """Two pages side by side on a sheet: where they lie, what is cut and folded."""

    def __init__(self, leaves, forms, sheet, marks):
        self.wide, self.high = _common_size(leaves, forms)
        self.bleed_mm, self.marks = max(leaf.bleed_mm for leaf in leaves), marks
        bleed = self.bleed_mm * POINT
        around = (max(self.bleed_mm, _MARK_GAP) + _MARK + 1.0) * POINT if marks else bleed
        own = 2 * self.wide + 2 * around, self.high + 2 * around
        self.width, self.height = (side * POINT for side in sheet) if sheet else own
        if 2 * self.wide > self.width + 0.01 or self.high > self.height + 0.01:
            raise YardwrightError(
                say(
                    "Two pages of {page} mm do not fit on a sheet of {sheet} mm.",
                    page=_size_said((self.wide, self.high)),
                    sheet=_size_said((self.width, self.height)),
                ),
                say("Choose a larger sheet."),
            )
        self.fold, self.foot = self.width / 2, (self.height - self.high) / 2

    def check_creep(self, creep_mm, count):
        """Raise YardwrightError for a paper so thick that the innermost of ``count`` sheets could not be."""
        innermost = creep_mm * (count - 1)
        if not 0 <= innermost * POINT < self.wide / 4:
            raise YardwrightError(
                say(
                    "Paper of {creep} mm would move the innermost pages by {innermost} mm.",
                    creep=f"{creep_mm:g}",
                    innermost=f"{innermost:g}",
                ),
                say("Give the thickness of one sheet; common paper has about 0.1 mm."),
            )

    def side(self, halves, creep, upside_down, book):
        """The dictionary of a side's page. halves: a _Form or None left and right; creep in points."""
        trim = self.fold - self.wide + creep, self.foot, self.fold + self.wide - creep, self.foot + self.high
        content, pictures = [], {}
        if upside_down:
            content.append(_matrix((-1, 0, 0, -1, self.width, self.height)))
        for name, form in zip((b"/Left", b"/Right"), halves):
            if form is not None:
                pictures[name] = form.reference
                content.append(b"q " + self._placed(form, name == b"/Left", creep) + name + b" Do Q")
        if self.marks:
            content.append(_drawn(crop_marks(trim, self.bleed_mm)))
            content.append(_drawn(self._fold_marks(), dashes=b"[3 2] 0 d "))
        media = 0.0, 0.0, self.width, self.height
        bleed = grown(trim, self.bleed_mm * POINT)
        return {
            b"/Type": b"/Page",
            b"/Parent": book.tree,
            b"/MediaBox": list(media),
            b"/BleedBox": [*map(max, bleed[:2], media[:2]), *map(min, bleed[2:], media[2:])],
            b"/TrimBox": list(trim),
            b"/Resources": {b"/XObject": pictures},
            b"/Contents": _content(book, b"\n".join(content)),
        }

    def _placed(self, form, left, creep):
        """What brings a page to its half, its spine to the fold; nothing of it reaches over the fold."""
        trim = form.paper.trim
        half = (0.0, 0.0, self.fold, self.height) if left else (self.fold, 0.0, self.width, self.height)
        x = self.fold + creep - trim[2] if left else self.fold - creep - trim[0]
        return _clip(half) + _matrix((1, 0, 0, 1, x, self.foot - trim[1]))

    def _fold_marks(self):
        gap = max(self.bleed_mm, _MARK_GAP) * POINT
        top = self.foot + self.high
        return [
            ((self.fold, edge + way * gap), (self.fold, edge + way * (gap + _MARK * POINT)))
            for edge, way in ((self.foot, -1), (top, 1))
        ]


def _common_size(leaves, forms):
    """Width and height of the pages' trim, in points."""
    sizes = [
        (form.paper.trim[2] - form.paper.trim[0], form.paper.trim[3] - form.paper.trim[1]) for form in forms
    ]
    for place, (leaf, size) in enumerate(zip(leaves, sizes), 1):
        if max(abs(one - other) for one, other in zip(size, sizes[0])) > _SLACK:
            raise YardwrightError(
                say(
                    "Page {page} (“{path}”) measures {size} mm, the first page {first} mm.",
                    page=place,
                    path=leaf.path,
                    size=_size_said(size),
                    first=_size_said(sizes[0]),
                ),
                say("Make all pages of a booklet equally large."),
            )
    return sizes[0]


# Drawing


def moved(matrix, x, y):
    """A point moved by PDF's six numbers."""
    a, b, c, d, e, f = matrix
    return a * x + c * y + e, b * x + d * y + f


def grown(box, by):
    left, bottom, right, top = box
    return left - by, bottom - by, right + by, top + by


def crop_marks(trim, bleed_mm):
    """Lines at the corners of a trim box, outside the bleed: they show where to cut and are cut off."""
    left, bottom, right, top = trim
    gap = max(bleed_mm, _MARK_GAP) * POINT
    end = gap + _MARK * POINT
    lines = []
    for x, across in ((left, -1), (right, 1)):
        for y, up in ((bottom, -1), (top, 1)):
            lines.append(((x, y + up * gap), (x, y + up * end)))
            lines.append(((x + across * gap, y), (x + across * end, y)))
    return lines


def _drawn(lines, matrix=(1, 0, 0, 1, 0, 0), dashes=b""):
    """PDF's drawing of black lines."""
    made = [b"q " + _matrix(matrix) + _numbers(_MARK_WIDTH * POINT) + b" w 0 G " + dashes]
    made += [_numbers(*start) + b" m " + _numbers(*end) + b" l S" for start, end in lines]
    return b"\n".join([*made, b"Q"])


def _clip(box):
    left, bottom, right, top = box
    return _numbers(left, bottom, right - left, top - bottom) + b" re W n "


def _matrix(matrix):
    return _numbers(*matrix) + b" cm "


def _numbers(*values):
    return b" ".join(map(as_number, values))


def _content(book, data):
    return book.writing.put_stream_once({}, lambda: [data], len(data))


def _size_said(size):
    """Points as mm."""
    return " x ".join(f"{side / POINT:.1f}" for side in size)
