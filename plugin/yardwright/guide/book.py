"""The guide as a book: which pages, in which order, called what, leading where; and what it lacks, before
anything is painted.

Everything of a page is worked out here but its picture, and nothing here needs a layout.
"""

from collections import OrderedDict
from dataclasses import dataclass, field, replace

from ..measure.hole import CourseIndex
from ..measure.pins import pin_rows
from ..model.errors import Cancelled, YardwrightError
from ..model.guide_pages import PAGE_KINDS, USUAL, in_order, problems_of
from ..model.remarks import Remark
from ..model.words import and_list, say
from .book_pages import cards, cover, dates_of, imprint, overview, ruled, scorecard
from .drawing import Drawing
from .event_page import event_text
from .flowing_text import flowed
from .hole_page import SIZES, hole_page
from .page_cache import key_of
from .page_design import parts_of
from .pdf_join import Link
from .rules import green_scale, image_rights, page_size, rights_not_said
from .sheet_parts import Text, in_two, width_of
from .sheets import PAGES, pin_sheet
from .sheets import page_size as size_of
from .sponsor_pages import given_file
from .text_room import missing_letters

FORMS = ("screen", "pages", "booklet")
_SIZES = {**PAGES, **SIZES}
_MOST_KEPT = 60
_kept = OrderedDict()
"""Holes' pages and maps of the last guides: what has not changed need not be worked out again."""
_TITLE_SIZE = 30.0
_REACH_MM = 3.6
"""Half of what one touches about a hole's number."""


@dataclass(frozen=True)
class Wanted:
    """What a guide shall be.

    form: one of FORMS. size: (width, height) of a trimmed page, mm. holes: numbers, () for all. tee_set:
    whose figures the holes show, "" the longest's. round: whose pins, None for all rounds'. grid: over the
    greens. dpi: of the pictures. descriptions: ``{hole: text}``, the course's own where there is none. pages:
    model GuidePages in their order, () for the usual ones. folder: where the names of the pages' files count
    from.
    """

    form: str = "screen"
    size: tuple = SIZES["phone"]
    holes: tuple = ()
    tee_set: str = ""
    round: int = None
    grid: bool = False
    dpi: float = 300.0
    descriptions: dict = field(default_factory=dict)
    pages: tuple = ()
    folder: str = ""


@dataclass(frozen=True)
class BookPage:
    """A page. kind: of ``page_design.KINDS``; name: what links call it; title: of its bookmark, "" for a
    page that goes on; variables, drawings: for its layout; links: ``pdf_join.Link``s; hole: its HolePage,
    None for other kinds; pictured: whether the image reaches it; given: the file it shows, "" for none;
    given_page: which page of it, 0 of an image; listed: the place of what it belongs to in the list of
    pages, from 0; -1 of what is in no list."""

    kind: str
    name: str
    title: str
    level: int = 0
    variables: dict = field(default_factory=dict)
    drawings: dict = field(default_factory=dict)
    links: tuple = ()
    hole: object = None
    pictured: bool = False
    given: str = ""
    given_page: int = 0
    listed: int = -1


@dataclass(frozen=True)
class Book:
    """A guide before it is painted. remarks: what it lacks, ``Remark``s; broken: ``rules.Broken``; templates:
    of each kind of page, put in by who paints it."""

    title: str
    wanted: Wanted
    pages: tuple
    remarks: tuple = ()
    broken: tuple = ()
    templates: dict = field(default_factory=dict)


def page_of(text, form):
    """(width, height) in mm of a key such as ``pocket``, or of ``110 x 180``; "" the usual one of a form.

    >>> page_of("", "screen"), page_of("A6", "pages"), page_of("100 x 160.5", "pages")
    ((90.0, 195.0), (105.0, 148.0), (100.0, 160.5))
    """
    text = str(text or "").strip()
    if not text:
        return SIZES["phone" if form == "screen" else "pocket"]
    key = next((key for key in _SIZES if key.casefold() == text.casefold()), None)
    if key is not None:
        return _SIZES[key]
    parts = text.lower().replace("mm", " ").replace("×", "x").replace(",", ".").split("x")
    try:
        size = tuple(float(part) for part in parts)
    except ValueError:
        size = ()
    if len(size) != 2:
        raise YardwrightError(
            say("“{page}” is no size of a page.", page=text),
            say("Choose one of {pages}, or say width x height in mm: 110 x 180.", pages=and_list(_SIZES)),
        )
    return size_of(size, 70.0)


def plan_book(course, event, wanted, figures, image=None, boxes=None, index=None, progress=None, key=""):
    """The Book of a Course, and of a model Event where there is one.

    figures: a BookFigures. image: a ``book_image.BookImage``, None without pictures. boxes: ``{kind: {id:
    box}}`` of the templates that are not built in. progress: called with (done, total); False stops with
    Cancelled. key: ``course_key`` of the course, where it is known. Raises YardwrightError when there is
    nothing to show, or a page is too small.
    """
    return _Plan(course, event, wanted, figures, image, boxes or {}, index, progress, key).book()


def course_key(course):
    """What a course is known by, in the language that its remarks are in."""
    return key_of(course, say("Hole {number}", number=1))


def _remembered(key, make):
    """What ``make()`` gives, kept under a key that all it is made from goes into."""
    if key in _kept:
        _kept.move_to_end(key)
        return _kept[key]
    made = _kept[key] = make()
    while len(_kept) > _MOST_KEPT:
        _kept.popitem(last=False)
    return made


class _Plan:
    """A book while it is being planned."""

    def __init__(self, course, event, wanted, figures, image, boxes, index, progress, key):
        self.course, self.event, self.wanted, self.figures = course, event, wanted, figures
        self.image, self.own_boxes = image, boxes
        self.index = index or CourseIndex(course)
        self.progress = progress
        self.key = key or course_key(course)
        self.asked = key_of(
            None if event is None else replace(event, pins=()),
            replace(wanted, holes=(), descriptions={}, pages=(), folder=""),
        )
        self.rows = () if event is None else pin_rows(course, event, self.index)[0]
        self.remarks, self.broken, self.boxes = [], [], {}
        self.notes, self.runs = 0, {}

    def book(self):
        listed = self.wanted.pages or USUAL
        where = {id(page): place for place, page in enumerate(listed)}
        self.remarks += [remark for _, remark in problems_of(listed)]
        pages, there, notes_at = [], set(), None
        for page in in_order(listed):
            if page.lacking or (PAGE_KINDS[page.kind].once and page.kind in there):
                continue
            there.add(page.kind)
            made = self._MAKE[page.kind](self, page)
            pages += [replace(one, listed=where.get(id(page), -1)) for one in made]
            if page.kind == "notes":
                notes_at = len(pages)
        if self.wanted.form == "booklet":
            self._fill(pages, notes_at)
        self._tell_image([page for page in pages if page.kind == "hole"])
        named = {page.name for page in pages}
        self._tell_letters(pages)
        pages = [self._finished(page, number, named) for number, page in enumerate(pages, 1)]
        title = self.event.name if self.event is not None else self.course.name
        return Book(title, self.wanted, tuple(pages), tuple(dict.fromkeys(self.remarks)), tuple(self.broken))

    def _fill(self, pages, notes_at):
        """Sheets hold four pages; what is left over is better written on than empty: after the pages for
        notes that were wanted, else before the imprint."""
        if notes_at is None:
            notes_at = len(pages) - (pages[-1].name == "imprint")
        more = [self._note(self.notes + number) for number in range(1, 1 + -len(pages) % 4)]
        pages[notes_at:notes_at] = more

    # Pages

    def _holes(self, _):
        known = [hole.number for hole in self.course.holes]
        for number in self.wanted.holes:
            if number not in known:
                self._remark(say("Hole {number} is not in the course.", number=number), "no_hole")
        numbers = [number for number in known if number in (self.wanted.holes or known)]
        if self.event is not None and not self.wanted.holes:
            numbers = list(self.event.holes_in_play(numbers))
        pages = []
        for done, number in enumerate(numbers):
            if self.progress is not None and self.progress(done, len(numbers)) is False:
                raise Cancelled
            try:
                pages.append(self._hole(number))
            except YardwrightError as error:
                if _too_small(error, self.wanted):
                    raise
                self._remark(error.what, "no_hole")
        if not pages:
            raise YardwrightError(
                say("The guide has no hole to show. {whats}", whats=" ".join(dict.fromkeys(self.remarks))),
                say("Draw a hole’s line of play, its tee and its green first."),
            )
        return pages

    def _hole(self, number):
        hole, wanted = self.course.hole(number), self.wanted
        text = wanted.descriptions.get(number, hole.description)
        tables = self.figures.tables(number)
        made = self._made(number, text, tables)
        title = say("Hole {number}", number=number)
        if hole.name:
            title = say("{number} {name}", number=number, name=hole.name)
        self.remarks += made.remarks
        if not text.strip():
            self._remark(say("hole {number} has no description", number=number), "no_description")
        pictured = self.image is not None and self.image.shows(made.plan)
        if not pictured and self.image is not None:
            self._remark(say("the image does not reach hole {number}", number=number), "no_picture")
        with_green = bool(tables.get("greens")) and tables["greens"][0].depth is not None
        self.broken += green_scale(title, made.plan.scale if with_green else None)
        self.broken += page_size(title, wanted.size, int(with_green), wanted.form)
        return BookPage(
            "hole",
            f"hole-{number}",
            title,
            1,
            {"hole_number": number, "credit": made.texts["credit"]},
            made.drawings,
            hole=made,
            pictured=pictured,
        )

    def _made(self, number, text, tables):
        """The HolePage, the one of an earlier guide where all that it shows is as it was."""
        wanted = self.wanted
        rows = [row for row in self.rows if row.hole == number]
        credit = self.image.named if self.image is not None else ""
        frames = self.own_boxes.get("hole")

        def make():
            return hole_page(
                self.course,
                self.index,
                number,
                self.event,
                wanted.size,
                wanted.form,
                wanted.tee_set,
                wanted.round,
                wanted.grid,
                description=text,
                credit=credit,
                dpi=wanted.dpi,
                rows=rows,
                frames=frames,
                tables=tables,
            )

        return _remembered(key_of(self.key, number, rows, self.asked, text, credit, frames), make)

    def _pins(self, _):
        if self.event is None:
            return []
        numbers = [one.number for one in self.event.rounds if self.wanted.round in (None, one.number)]
        pages = []
        for number in numbers:
            if not any(row.round == number for row in self.rows):
                self._remark(say("round {number} has no pin yet", number=number), "no_pin")
                continue
            try:
                pages += self._pins_of(number)
            except YardwrightError as error:
                self._remark(error.what, "no_pin")
        return pages

    def _pins_of(self, number):
        size = self.wanted.size
        sheet = pin_sheet(self.course, self.event, number, self.rows, size, self.index)
        self.remarks += [
            Remark(say("round {round}: {remark}", round=number, remark=remark), remark.code)
            for remark in sheet.remarks
            if remark.code != "page_size"
        ]
        title = say("Pins, round {number}", number=number)
        self.broken += green_scale(title, sheet.scale)
        pages = []
        for place, page in enumerate(sheet.pages):
            greens = {spot.hole for spot in page.places}
            self.broken += page_size(title, size, len(greens), self.wanted.form)
            links = [_about(self._box("pins", "pins"), page, hole) for hole in sorted(greens)]
            pages.append(
                BookPage(
                    "pins",
                    f"pins-{number}-{place + 1}",
                    "" if place else title,
                    0,
                    {"heading": title},
                    {"pins": page},
                    tuple(links),
                )
            )
        return pages

    def _cover(self, page):
        _, _, wide, high = self._box("cover", "cover")
        event, title = self.event, self.course.name
        if width_of(title, _TITLE_SIZE, True) > self._box("cover", "title")[2]:
            title = "\n".join(in_two(title, _TITLE_SIZE))
        host = event.host.strip().splitlines() if event is not None else []
        made = BookPage(
            "cover",
            "cover",
            page.called,
            0,
            {
                "title": title,
                "subtitle": say("Yardage guide"),
                "event": event.name if event is not None else "",
                "dates": dates_of(event) if event is not None else "",
                "host": host[0].strip() if host else "",
            },
            {"cover": self._drawn(cover, wide, high)},
        )
        return [made]

    def _overview(self, page):
        left, top, wide, high = self._box("overview", "overview")
        drawing = self._drawn(overview, wide, high)
        links = [
            Link(
                (
                    left + spot.x - _REACH_MM,
                    top + spot.y - _REACH_MM,
                    left + spot.x + _REACH_MM,
                    top + spot.y + _REACH_MM,
                ),
                f"hole-{spot.hole}",
            )
            for spot in drawing.places
        ]
        variables = {"heading": page.title.strip() or self.course.name, "credit": ""}
        drawings = {"overview": drawing}
        return [BookPage("overview", "overview", page.called, 0, variables, drawings, tuple(links))]

    def _drawn(self, draw, wide, high):
        """The Drawing of the whole course, the one of an earlier guide where nothing has changed."""
        key = key_of(self.key, draw.__name__, wide, high)
        return _remembered(key, lambda: draw(self.course, wide, high))

    def _cards(self, _):
        left, top, wide, high = self._box("scorecard", "scorecard")
        pages = []
        made = cards(self.course, self.event, self.figures)
        if not any(columns for _, columns, _ in made):
            self._remark(say("no length is measured: the guide has no scorecard"), "no_card")
            return []
        for card, (title, columns, rows) in enumerate(made, 1):
            for place, drawing in enumerate(scorecard(self.course, columns, rows, wide, high)):
                steps = [spot.y for spot in drawing.places]
                half = min((b - a for a, b in zip(steps, steps[1:])), default=8.0) / 2
                links = tuple(
                    Link((left, top + spot.y - half, left + wide, top + spot.y + half), f"hole-{spot.hole}")
                    for spot in drawing.places
                )
                pages.append(
                    BookPage(
                        "scorecard",
                        f"scorecard-{card}-{place + 1}",
                        "" if place else title,
                        0,
                        {"heading": title},
                        {"scorecard": drawing},
                        links,
                    )
                )
        return pages

    def _notes(self, page):
        self.notes += 1
        return [self._note(self.notes, page.called)]

    def _note(self, number, heading=""):
        _, _, wide, high = self._box("notes", "lines")
        heading = heading or say("Notes")
        title = "" if number > 1 else heading
        drawings = {"lines": ruled(wide, high)}
        return BookPage("notes", f"notes-{number}", title, 0, {"heading": heading}, drawings)

    def _imprint(self, page):
        credit = [self.image.credit] if self.image is not None and self.image.credit else []
        text = imprint(self.course, self.event, credit)
        return [BookPage("text", "imprint", page.called, 0, {"heading": page.called, "text": text})]

    def _event(self, page):
        """What the event is; what somebody wrote of it stands first."""
        if self.event is None:
            return []
        text = event_text(self.course, self.event, self.figures)
        text = "\n\n".join(one for one in (page.text, text) if one.strip())
        return self._flowing(page, page.title.strip() or self.event.name, text) if text else []

    def _local_rules(self, page):
        caution = say("The committee’s notice at the course prevails over this page.")
        return self._flowing(page, page.called, f"{page.text}\n\n---\n\n{caution}")

    def _text(self, page):
        return self._flowing(page, page.called, page.text)

    def _flowing(self, page, heading, text):
        """The pages that a Markdown text takes."""
        left, top, wide, high = self._box("text", "flow")
        size = next(one.size for one in parts_of("text", self.wanted.size) if one.id == "text")
        made = flowed(text, wide, high, size, self.wanted.folder)
        lacking = missing_letters(made.letters)
        if lacking:
            letters = " ".join(lacking[:20])
            told = say("“{page}”: no font here has the letters {letters}", page=heading, letters=letters)
            self._remark(told, "letters")
        for name in made.lacking:
            told = say("“{page}”: the picture “{file}” cannot be read", page=heading, file=name)
            self._remark(told, "no_picture")
        name = self._numbered(page.kind)
        pages = []
        for number, (flow, links) in enumerate(zip(made.flows, made.links), 1):
            moved = [
                Link((left + one.box[0], top + one.box[1], left + one.box[2], top + one.box[3]), one.to)
                for one in links
            ]
            pages.append(
                BookPage(
                    "text",
                    f"{name}-{number}",
                    "" if number > 1 else heading,
                    0,
                    {"heading": heading, "text": ""},
                    {"flow": Drawing(wide, high, (flow,))},
                    tuple(moved),
                )
            )
        return pages

    def _sponsor(self, page):
        """A page for an image, the pages of a PDF; where the file cannot be used, a page that says so."""
        given = given_file(page.source, self.wanted.folder)
        for told in filter(None, (given.problem, given.remark)):
            self._remark(say("“{page}”: {told}", page=page.called, told=told), "file")
        name, caption = self._numbered("sponsor"), page.title.strip()
        if given.problem:
            caption = say("“{page}”: {told}", page=page.called, told=given.problem)
        return [
            BookPage(
                "sponsor",
                f"{name}-{max(number, 1)}",
                "" if number > 1 else page.called,
                0,
                {"caption": caption},
                given="" if given.problem else given.path,
                given_page=number,
            )
            for number in (range(1, given.pages + 1) if given.pages else [0])
        ]

    def _numbered(self, kind):
        """A name for the next run of pages of a kind."""
        self.runs[kind] = self.runs.get(kind, 0) + 1
        return f"{kind}-{self.runs[kind]}"

    _MAKE = {
        "cover": _cover, "notices": _text, "local_rules": _local_rules, "event": _event,
        "scorecard": _cards, "overview": _overview, "holes": _holes, "pins": _pins, "sponsor": _sponsor,
        "text": _text, "notes": _notes, "imprint": _imprint,
    }  # fmt: skip
    """What makes the pages of each kind."""

    def _finished(self, page, number, named):
        """A page with its number, and with those of its links that lead somewhere."""
        links = [link for link in page.links if link.to in named or ":" in link.to]
        if page.kind == "hole":
            links += self._links_of(page, named)
        return replace(page, links=tuple(links), variables={**page.variables, "book_page": number})

    def _links_of(self, page, named):
        """From a hole back to the map, and from its green to the pins."""
        frames = page.hole.frames
        links = [Link(_corners(frames["number"]), "overview")] if "overview" in named else []
        for name in sorted(named):
            if name.startswith("pins-"):
                links.append(Link(_corners(frames["green"]), name))
                break
        return links

    # What is said

    def _tell_image(self, holes):
        image = self.image
        if image is None:
            if holes:
                self._remark(say("no image is chosen: the holes have no picture"), "no_picture")
            return
        titles = [page.title for page in holes if page.pictured]
        barred = image.name if image.may_be_printed is False else None
        self.broken += image_rights(barred, titles, self.wanted.form)
        if not image.credit:
            self._remark(say("nobody is named for the image “{image}”", image=image.name), "no_credit")
        if image.may_be_printed is None and self.wanted.form != "screen":
            if image.date is None:
                text = say(
                    "whether the image “{image}” may be printed is not known: it is none of the "
                    "course’s dates",
                    image=image.name,
                )
            else:
                text = rights_not_said(image.name)
            self._remark(text, "not_known")

    def _tell_letters(self, pages):
        """Say which letters of drawings no font has; those of labels are told when their page is laid out."""
        drawn, heading = {}, ""
        for page in pages:
            heading = page.title or heading
            items = [item for drawing in page.drawings.values() for item in drawing.items]
            drawn.setdefault(heading, []).extend(item.text for item in items if isinstance(item, Text))
        for heading, texts in drawn.items():
            lacking = missing_letters("".join(texts))
            if lacking:
                letters = " ".join(lacking[:20])
                told = say("“{page}”: no font here has the letters {letters}", page=heading, letters=letters)
                self._remark(told, "letters")

    def _remark(self, text, code):
        self.remarks.append(Remark(text, code))

    def _box(self, kind, part):
        """The box of a page's part: the template's own, else the built-in one."""
        if kind not in self.boxes:
            built = {one.id: one.box for one in parts_of(kind, self.wanted.size)}
            self.boxes[kind] = {**built, **self.own_boxes.get(kind, {})}
        return self.boxes[kind][part]


def _too_small(error, wanted):
    """Whether it is the page that is wrong, and not the hole: then no hole fits it."""
    from .hole_page import hole_page_frames

    try:
        hole_page_frames(wanted.size, wanted.form)
    except YardwrightError:
        return True
    return False


def _corners(frame):
    left, top, width, height = frame
    return left, top, left + width, top + height


def _about(frame, page, hole):
    """A Link about what a page of pins shows of a hole, to its page."""
    spots = [spot for spot in page.places if spot.hole == hole]
    left, top = frame[0], frame[1]
    xs, ys = [spot.x for spot in spots], [spot.y for spot in spots]
    return Link(
        (
            left + max(min(xs) - 6.0, 0.0),
            top + max(min(ys) - 4.0, 0.0),
            left + min(max(xs) + 6.0, page.width),
            top + min(max(ys) + 4.0, page.height),
        ),
        f"hole-{hole}",
    )
