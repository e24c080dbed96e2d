"""The design of the guide's pages: which parts a kind of page has and where they stand on a page of any size.

Boxes are (left, top, width, height) in millimetres from the top left corner of the trimmed page. Texts hold
expressions between [% and %]: every figure and name comes from the course, the event or the page's variables.
"""

from dataclasses import dataclass

from ..model.errors import YardwrightError
from ..model.words import said, say, to_say
from .sheet_parts import INK, LEAST_SIZE, PAPER, SOFT, height_of

BLEED_MM = 3.0
"""So far pictures that fill a page reach over its edge (common practice of printers, no source)."""

PLATE = "#17211d"
"""The ground of a hole's number."""

LEAST_SIDE, MOST_SIDE = 40.0, 1000.0
"""Millimetres that a page's side may measure (our own rule)."""


@dataclass(frozen=True)
class TextPart:
    """A label. size: points that it is set at where there is room; align: ``left``, ``centre``, ``right``;
    level: ``top``, ``middle``, ``bottom``; ground: the colour of the box behind it, "" for none."""

    id: str
    box: tuple
    text: str
    size: float
    bold: bool = False
    align: str = "left"
    level: str = "top"
    tone: str = INK
    ground: str = ""


@dataclass(frozen=True)
class PicturePart:
    """A picture. stretched: made for its box, which it fills; otherwise laid in its middle, whole."""

    id: str
    box: tuple
    stretched: bool = True


@dataclass(frozen=True)
class DrawnPart:
    """A drawing of ``drawn_item``."""

    id: str
    box: tuple
    keeps_shape: bool = False


@dataclass(frozen=True)
class PageKind:
    """A kind of page. needs: the ids of the parts that a template of it must have."""

    title: str
    needs: tuple
    parts: object


def parts_of(kind, size, frames=None):
    """The parts of a built-in page, those that lie below first.

    size: (width, height) of the trimmed page. frames: boxes of a hole's page by id, where they are worked out
    elsewhere: ``picture``, ``overlay``, ``ladder``, ``green``, ``head``, ``foot``; within the head there may
    be ``number``, ``title`` and ``lengths``, and ``notes`` for what is said of the hole. With ``notes`` and
    an undivided head, ``head``, ``notes`` and ``foot`` are drawings instead of labels. Raises
    YardwrightError when the page is too small or too large.
    """
    if not all(LEAST_SIDE <= side <= MOST_SIDE for side in size):
        raise YardwrightError(
            say(
                "A page of {width} x {height} mm cannot be laid out.",
                width=f"{size[0]:g}",
                height=f"{size[1]:g}",
            ),
            say(
                "Choose sides of {least} to {most} mm.",
                least=f"{LEAST_SIDE:g}",
                most=f"{MOST_SIDE:g}",
            ),
        )
    paper = _Paper(*size)
    return KINDS[kind].parts(paper, frames) if frames else KINDS[kind].parts(paper)


@dataclass(frozen=True)
class _Paper:
    """A page and the sizes that go with it."""

    width: float
    height: float

    @property
    def margin(self):
        return min(max(0.055 * min(self.width, self.height), 4.0), 14.0)

    def points(self, size):
        """A size of letters that is so large on a pocket page."""
        by = min(max(min(self.width, self.height) / 108, 0.6), 2.2) ** 0.6
        return max(LEAST_SIZE, round(4 * size * by) / 4)

    @property
    def inner(self):
        """(left, top, right, bottom) within the margins."""
        return self.margin, self.margin, self.width - self.margin, self.height - self.margin

    @property
    def body(self):
        """The box between a heading and the page's number."""
        left, top, right, bottom = self.inner
        top += 1.5 * height_of(self.points(15)) + 2.0
        bottom -= 1.4 * height_of(self.points(7)) + 1.0
        return left, top, right - left, bottom - top

    def heading(self, text):
        left, top, right, _ = self.inner
        size = self.points(15)
        return TextPart("heading", (left, top, right - left, 1.4 * height_of(size)), text, size, True)

    def number(self):
        left, _, right, bottom = self.inner
        height = 1.4 * height_of(self.points(7))
        return TextPart(
            "page",
            (left, bottom - height, right - left, height),
            "[% @book_page %]",
            self.points(7),
            align="centre",
            level="bottom",
            tone=SOFT,
        )

    def filled(self):
        """The whole page and what is cut off it."""
        return -BLEED_MM, -BLEED_MM, self.width + 2 * BLEED_MM, self.height + 2 * BLEED_MM


def hole_frames(width, height):
    """The boxes of a hole's page: the picture with its ladder on the left, the green on the right below."""
    paper = _Paper(width, height)
    left, top, right, bottom = paper.inner
    head, foot = 2.7 * height_of(paper.points(11)), 0.13 * (bottom - top)
    gap = 1.5
    body_top, body_bottom = top + head + gap, bottom - foot - gap
    across, down = right - left, body_bottom - body_top
    ladder = max(0.16 * across, 13.0)
    side = 0.34 * across
    picture = left, body_top, across - ladder - side - 2 * gap, down
    return {
        "picture": picture,
        "overlay": picture,
        "ladder": (left + picture[2] + gap, body_top, ladder, down),
        "green": (right - side, body_bottom - min(1.5 * side, down), side, min(1.5 * side, down)),
        "head": (left, top, across, head),
        "foot": (left, bottom - foot, across, foot),
    }


def _hole(paper, frames=None):
    frames = frames or hole_frames(paper.width, paper.height)
    drawn = (
        PicturePart("picture", frames["picture"]),
        DrawnPart("overlay", frames["overlay"]),
        DrawnPart("ladder", frames["ladder"]),
        DrawnPart("green", frames["green"], keeps_shape=True),
    )
    if "notes" in frames and "number" not in frames:
        return (*drawn, *(DrawnPart(name, frames[name]) for name in ("head", "notes", "foot")))
    return (*drawn, *_hole_head(frames), *_hole_texts(paper, frames))


def _hole_head(frames):
    """The hole's number on a dark plate, its name over par and index, its lengths at the right."""
    left, top, width, height = frames["head"]
    number = frames.get("number", (left, top, 1.15 * height, height))
    start = number[0] + number[2] + 2.0
    title = frames.get("title", (start, top, 0.4 * (left + width - start), height))
    lengths_from = title[0] + title[2] + 1.0
    lengths = frames.get("lengths", (lengths_from, top, left + width - lengths_from, height))
    x, y, wide, high = title
    # Letters go by the height there is.
    large, name, plain = (share * high * 72 / 25.4 for share in (0.6, 0.36, 0.26))
    par = _in_words(say("Par {par}", par=_FIGURE), "hole_par(@hole_number)")
    index = _in_words(say("SI {index}", index=_FIGURE), "stroke_index(@hole_number)")
    return (
        TextPart(
            "number",
            number,
            "[% @hole_number %]",
            _size(large, 40),
            True,
            "centre",
            "middle",
            PAPER,
            PLATE,
        ),
        TextPart(
            "name",
            (x, y, wide, 0.56 * high),
            "[% hole_name(@hole_number) %]",
            _size(name, 14),
            True,
            level="middle",
        ),
        TextPart(
            "par",
            (x, y + 0.56 * high, wide, 0.44 * high),
            f"{par}   {index}",
            _size(plain, 10),
            level="middle",
            tone=SOFT,
        ),
        TextPart(
            "lengths",
            lengths,
            "[% hole_lengths(@hole_number) %]",
            _size(plain, 9),
            align="right",
            level="middle",
        ),
    )


def _hole_texts(paper, frames):
    """What is said of the hole, with a part for the legend where there is room; and the page's last line."""
    left, top, width, height = frames["foot"]
    credit = min(1.35 * height_of(LEAST_SIZE), height)
    said_in = frames.get("notes")
    parts = []
    if said_in:
        x, y, wide, high = said_in
        half = 0.5 * high
        parts.append(DrawnPart("notes", (x, y + half, wide, high - half)))
        said_in = (x, y, wide, half - 1.0)
    else:
        said_in = (left, top, width, height - credit)
    parts.append(
        TextPart("description", said_in, "[% hole_description(@hole_number) %]", paper.points(8)),
    )
    line = top + height - credit
    return (
        *parts,
        TextPart(
            "credit",
            (left, line, 0.85 * width, credit),
            "[% @credit %]",
            LEAST_SIZE,
            level="bottom",
            tone=SOFT,
        ),
        TextPart(
            "page",
            (left + 0.85 * width, line, 0.15 * width, credit),
            "[% @book_page %]",
            LEAST_SIZE,
            align="right",
            level="bottom",
            tone=SOFT,
        ),
    )


_FIGURE = "\0"


def _in_words(text, expression):
    """A text about a figure as an expression, which gives nothing at all where there is no figure."""
    parts = ["'" + part.replace("'", "''") + "'" for part in text.split(_FIGURE)]
    return f"[% {f' || {expression} || '.join(parts)} %]"


def _size(points, most):
    return max(LEAST_SIZE, min(round(4 * points) / 4, most))


_PALE, _MILK = "#ffffff", "#d5ddd6"
"""Letters on the cover, whose drawing is dark."""


def _cover(paper):
    left, top, right, bottom = paper.inner
    width, height = right - left, bottom - top

    def band(share, depth):
        return left, top + share * height, width, depth * height

    return (
        PicturePart("picture", paper.filled()),
        DrawnPart("cover", paper.filled()),
        TextPart("title", band(0.02, 0.14), "[% @title %]", paper.points(30), True, "left", "bottom", _PALE),
        TextPart("subtitle", band(0.17, 0.06), "[% @subtitle %]", paper.points(12), tone=_MILK),
        TextPart("event", band(0.8, 0.1), "[% @event %]", paper.points(17), True, "left", "bottom", _PALE),
        TextPart("dates", band(0.905, 0.05), "[% @dates %]", paper.points(10), tone=_MILK),
        TextPart("host", band(0.955, 0.045), "[% @host %]", paper.points(8), False, "left", "bottom", _MILK),
    )


def _text(paper):
    return (
        paper.heading("[% @heading %]"),
        TextPart("text", paper.body, "[% @text %]", paper.points(9)),
        DrawnPart("flow", paper.body),
        paper.number(),
    )


def _scorecard(paper):
    return paper.heading("[% @heading %]"), DrawnPart("scorecard", paper.body), paper.number()


def _overview(paper):
    left, top, width, height = paper.body
    credit = 1.35 * height_of(LEAST_SIZE)
    body = left, top, width, height - credit
    return (
        PicturePart("picture", body),
        DrawnPart("overview", body),
        paper.heading("[% @heading %]"),
        TextPart(
            "credit", (left, top + height - credit, width, credit), "[% @credit %]", LEAST_SIZE, tone=SOFT
        ),
        paper.number(),
    )


def _pins(paper):
    # The sheet of pins brings its own head and foot.
    return (DrawnPart("pins", (0.0, 0.0, paper.width, paper.height), keeps_shape=True),)


def _sponsor(paper):
    left, top, right, bottom = paper.inner
    caption = 1.5 * height_of(paper.points(8))
    return (
        PicturePart("picture", (left, top, right - left, bottom - top - caption), stretched=False),
        TextPart(
            "caption",
            (left, bottom - caption, right - left, caption),
            "[% @caption %]",
            paper.points(8),
            align="centre",
            level="bottom",
            tone=SOFT,
        ),
    )


def _notes(paper):
    return paper.heading("[% @heading %]"), DrawnPart("lines", paper.body), paper.number()


KINDS = {
    "cover": PageKind(to_say("Cover"), ("title",), _cover),
    "text": PageKind(to_say("Page of text"), ("text",), _text),
    "overview": PageKind(to_say("Overview of the course"), ("overview",), _overview),
    "scorecard": PageKind(to_say("Scorecard"), ("scorecard",), _scorecard),
    "hole": PageKind(to_say("Hole"), ("picture", "overlay", "ladder", "green"), _hole),
    "pins": PageKind(to_say("Pins of a round"), ("pins",), _pins),
    "sponsor": PageKind(to_say("Page of a sponsor"), ("picture",), _sponsor),
    "notes": PageKind(to_say("Page for notes"), ("lines",), _notes),
}
"""The kinds of pages that are laid out, by the name that their templates' files bear."""


def title_of(kind):
    """What a kind of page is called."""
    return said(KINDS[kind].title)
