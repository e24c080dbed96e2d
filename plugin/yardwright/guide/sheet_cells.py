"""A page of many greens: a cell for each, with its figures large; and what the rules say of such a page."""

import math

from ..measure.fall import falls
from ..measure.units import to_unit, whole
from ..model.errors import YardwrightError
from ..model.remarks import Remark
from ..model.words import said, say, to_say
from .sheet_greens import depth_line, ground, pin_lines, pin_mark, plotted, scale_needed
from .sheet_parts import (
    HAIR,
    INK,
    LEAST_SIZE,
    PAPER,
    SOFT,
    Line,
    Text,
    box_area,
    cap_of,
    fall_arrow,
    height_of,
    in_two,
    width_of,
)
from .windows import GREEN_LIMIT

BOOK_SIZE = (107.95, 177.8)
ENOUGH_GREENS = 9
"""The picture of a green may stand on paper of 4 1/4 by 7 inches at most; a sheet of hole locations with nine
greens or more may be larger (Rules of Golf, Rule 4.3a, interpretation on green-reading materials)."""

_LEGIBLE_SCALE = 1700.0
_LEAST_CELL = (23.0, 25.0)
_ROUND_SCALE = 10

_FROM = {
    "left": to_say("from left"),
    "right": to_say("from right"),
    "centre": to_say("from centre"),
}


class Grid:
    """A page of cells, a green in each: how many, how its figures stand, and the scale that fits.

    beside: whether the figures stand left of the green, else above and below it.
    """

    def __init__(self, views, inner, unit, columns, rows, beside):
        self.inner, self.columns, self.rows, self.beside = inner, columns, rows, beside
        self.cell = (inner[2] - inner[0]) / columns, (inner[3] - inner[1]) / rows
        wide, high = self.cell
        self.weight = min(
            max(min(wide / 58.0, high / 42.0) if beside else min(wide / 44.0, high / 62.0), 0.6), 1.3
        )
        self.number_size = 15.0 * self.weight
        self.figure_size = 19.0 * self.weight
        self.word_size = max(LEAST_SIZE, 8.0 * self.weight)
        pins = [pin for view in views for pin in view.pins]
        self.falls_width = max((self._fall_width(pin.row) for pin in pins), default=0.0)
        self.figures_width = max(
            [
                self._number_box()[0],
                *(self._depth_width(view, unit) for view in views if beside),
                self.falls_width,
            ]
            + [self._figure_width(*figure) for pin in pins for figure in figures_said(pin.row, unit)]
        )
        self.both_width = max(
            [sum(self._figure_width(*figure) + 2.5 for figure in figures_said(pin.row, unit)) for pin in pins]
            or [0.0]
        )
        self.head_width = 0.0
        if self.falls_width:
            depths = (self._depth_width(view, unit) for view in views)
            self.head_width = self._number_box()[0] + self.falls_width + max(depths, default=0.0) + 7.0
        left, top, right, bottom = self.drawing((0.0, 0.0))
        self.scale = _rounded(scale_needed(views, right - left, bottom - top))

    @property
    def per_page(self):
        return self.columns * self.rows

    @property
    def fits(self):
        """Whether the figures find room in a cell."""
        if self.cell[0] < _LEAST_CELL[0] or self.cell[1] < _LEAST_CELL[1]:
            return False
        if self.beside:
            return self._column_height() <= self.cell[1] - 2.0 and self.figures_width < 0.55 * self.cell[0]
        return max(self.both_width + 1.0, self.head_width) <= self.cell[0]

    def worth(self, count):
        """What is least for the best grid: large greens count most, few empty cells and large letters too."""
        empty = 1 - count / self.per_page
        return self.scale * (1 + 0.5 * empty) / self.weight**0.25

    def _number_box(self):
        return max(width_of("18", self.number_size, True) + 2.4, 1.2 * height_of(self.number_size)), (
            cap_of(self.number_size) + 2.2
        )

    def _figure_width(self, figure, word):
        words = in_two(word, self.word_size)
        return (
            width_of(figure, self.figure_size, True) + 0.9 + max(width_of(w, self.word_size) for w in words)
        )

    def _depth_width(self, view, unit):
        return width_of(depth_said(view, unit), self.word_size)

    def _fall_width(self, row):
        text = fall_figure(row)
        return self._fall_length() + 0.8 + width_of(text, self.word_size) if text else 0.0

    def _fall_length(self):
        return 1.5 * cap_of(self.word_size)

    def _line_height(self):
        return max(1.2 * height_of(self.figure_size), 2.3 * height_of(self.word_size))

    def _column_height(self):
        below = 1.6 * height_of(self.word_size) * (2 if self.falls_width else 1)
        return self._number_box()[1] + 2 * self._line_height() + below + 2.0

    def drawing(self, corner):
        """The box of the green within a cell whose top left corner is given."""
        x, y = corner
        wide, high = self.cell
        if self.beside:
            return x + 1.0 + self.figures_width + 2.0, y + 0.8, x + wide - 0.8, y + high - 0.8
        head = self._number_box()[1] + 1.2
        return x + 0.8, y + 0.8 + head, x + wide - 0.8, y + high - self._line_height() - 1.4

    def page(self, part, number, unit):
        """``(items, places)`` of ``(hole, view or None)`` in their cells, and the lines between the cells."""
        left, top, right, bottom = self.inner
        wide, high = self.cell
        made, places = [], []
        rows = math.ceil(len(part) / self.columns)
        for row in range(1, rows):
            made.append(Line(((left, top + row * high), (right, top + row * high)), 0.15, HAIR))
        for column in range(1, self.columns):
            x = left + column * wide
            made.append(Line(((x, top), (x, top + rows * high)), 0.15, HAIR))
        for position, (hole, view) in enumerate(part):
            corner = left + position % self.columns * wide, top + position // self.columns * high
            if view is not None:
                items, spots = self._green(view, self.drawing(corner), number, unit)
                made += items
                places += spots
            made += self._letters(hole, view, corner, number, unit)
        return made, places

    def _green(self, view, inside, number, unit):
        plot = plotted(view, inside, self.scale)
        weight = min(1.0, max(0.7, self.weight))
        made = ground(plot)
        items, places = depth_line(plot, unit, weight)
        made += items
        pin = view.pin(number)
        if pin is not None:
            made += pin_lines(plot, pin, weight)
            items, spots = pin_mark(plot, pin, 0.95 * weight)
            made += items
            places += spots
        return made, places

    def _letters(self, hole, view, corner, number, unit):
        x, y = corner[0] + 1.0, corner[1] + 1.0
        wide, high = self._number_box()
        made = [box_area(x, y, x + wide, y + high, INK)]
        base = y + (high + cap_of(self.number_size)) / 2
        made.append(
            Text(x + wide / 2, base, str(hole), self.number_size, True, "centre", PAPER, about=f"hole {hole}")
        )
        right, bottom = corner[0] + self.cell[0] - 1.0, corner[1] + self.cell[1] - 1.0
        if view is None:
            words = in_two(say("no green drawn"), self.word_size)
            start = y + high + 1.4 * height_of(self.word_size)
            return made + self._words(words, x, start)
        pin = view.pin(number)
        figures = figures_said(pin.row, unit) if pin is not None else ()
        depth = depth_said(view, unit)
        if self.beside:
            made.append(
                Text(
                    x,
                    bottom - 0.3 * height_of(self.word_size),
                    depth,
                    self.word_size,
                    tone=SOFT,
                    about="depth",
                )
            )
            base = y + high + 1.2
            for figure in figures:
                base += self._line_height()
                made += self._figure(*figure, x, base)
            if figures:
                made += self._fall(pin.row, x, base + 1.6 * height_of(self.word_size))
            else:
                made += self._words(in_two(say("no pin"), self.word_size), x, base + self._line_height())
            return made
        made.append(Text(right, base, depth, self.word_size, align="right", tone=SOFT, about="depth"))
        if figures:
            made += self._fall(pin.row, x + wide + 2.5, base)
        base = bottom - 0.25 * height_of(self.word_size)
        if not figures:
            return made + self._words([say("no pin")], x, base)
        made += self._figure(*figures[0], x, base)
        return made + self._figure(*figures[1], right - self._figure_width(*figures[1]), base)

    def _fall(self, row, x, base):
        """The arrow and the figure of the ground's fall at a pin, where it is known."""
        text = fall_figure(row)
        if not text:
            return []
        length = self._fall_length()
        made = [Text(x + length + 0.8, base, text, self.word_size, about="fall")]
        if falls(row.slope_pct, row.slope_turn):
            made += fall_arrow(x + length / 2, base - cap_of(self.word_size) / 2, row.slope_turn, length)
        return made

    def _figure(self, figure, word, x, base):
        made = [Text(x, base, figure, self.figure_size, True, about="figure")]
        return made + self._words(
            in_two(word, self.word_size), x + width_of(figure, self.figure_size, True) + 0.9, base
        )

    def _words(self, words, x, base):
        """Lines of small letters, the last on the base line."""
        step = 1.05 * height_of(self.word_size)
        return [
            Text(x, base - step * (len(words) - 1 - k), word, self.word_size, about="word")
            for k, word in enumerate(words)
        ]


def figures_said(row, unit):
    """``((figure, word), (figure, word))`` of a pin as it is said: on, and off from where."""
    off = whole(to_unit(row.off, unit))
    if row.off_from == "centre" and off is not None:
        word = say("right of centre") if off > 0 else say("left of centre") if off < 0 else say("on centre")
        return (shown(row.on, unit), say("on")), (str(abs(off)), word)
    return (shown(row.on, unit), say("on")), (shown(row.off, unit), said(_FROM.get(row.off_from, "")))


def fall_figure(row):
    """How steep the ground is at a pin, "" where it is not known."""
    return "" if row.slope_pct is None else say("{slope} %", slope=f"{row.slope_pct:.1f}")


def shown(metres, unit):
    """A figure in whole units, a dash for none."""
    figure = whole(to_unit(metres, unit))
    return "–" if figure is None else str(figure)


def depth_said(view, unit):
    return say("depth {depth}", depth=shown(view.depth, unit))


def best_grid(views, count, inner, unit, scale, per_page, width, height):
    """The Grid that shows most: on as few pages as stay legible or as the scale asked for lets stand."""
    if scale is not None:
        _allowed(scale)
    choices = [per_page] if per_page else _per_page_choices(count, width, height)
    best = None
    for per in choices:
        grids = [
            Grid(views, inner, unit, columns, math.ceil(per / columns), beside)
            for columns in range(1, per + 1)
            for beside in (True, False)
        ]
        fitting = [grid for grid in grids if grid.fits and math.isfinite(grid.scale)]
        if not fitting:
            continue
        found = min(fitting, key=lambda grid: grid.worth(per))
        if best is None or found.scale < best.scale:
            best = found
        if best.scale <= (_LEGIBLE_SCALE if scale is None else scale):
            break
    if best is None:
        raise YardwrightError(
            say(
                "A page of {width} x {height} mm is too small for these greens and their figures.",
                width=f"{width:g}",
                height=f"{height:g}",
            ),
            say("Choose a larger page, or fewer greens on a page."),
        )
    best.scale = chosen_scale(best.scale, scale)
    return best


def _per_page_choices(count, width, height):
    """Greens a page, the most first; on paper larger than BOOK_SIZE never fewer than nine where there are so
    many."""
    choices = []
    for pages in range(1, count + 1):
        per = math.ceil(count / pages)
        if pages == 1 or may_be_used(width, height, least_on_a_page(count, per)):
            choices.append(per)
    return list(dict.fromkeys(choices))


def least_on_a_page(count, per_page):
    return min(len(part) for part in dealt(range(count), per_page))


def dealt(things, per_page):
    """Things dealt to pages as evenly as may be, in their order."""
    things = list(things)
    pages = max(1, math.ceil(len(things) / per_page))
    per, more = divmod(len(things), pages)
    parts, start = [], 0
    for page in range(pages):
        end = start + per + (page < more)
        parts.append(things[start:end])
        start = end
    return parts


def _allowed(scale):
    if not math.isfinite(scale) or scale < GREEN_LIMIT:
        raise YardwrightError(
            say(
                "1:{scale} is larger than the Rules of Golf allow for the picture of a green (Rule 4.3a).",
                scale=f"{scale:g}",
            ),
            say("Choose 1:{limit} or a smaller scale.", limit=GREEN_LIMIT),
        )


def may_be_used(width, height, greens):
    """Whether a page with so many greens on it may be used during a round."""
    short, long = sorted((width, height))
    within = short <= BOOK_SIZE[0] + 0.01 and long <= BOOK_SIZE[1] + 0.01
    return within or greens >= ENOUGH_GREENS


def too_large_a_page():
    text = say(
        "a page with fewer than nine greens may be no larger than 107.95 x 177.8 mm (4¼ x 7 in) to be used "
        "during a round (Rule 4.3a)"
    )
    return Remark(text, "page_size")


def chosen_scale(found, asked):
    """The scale asked for, else the largest that fits, a multiple of ten."""
    if asked is None:
        return _rounded(found)
    _allowed(asked)
    if asked < found - 1e-9:
        raise YardwrightError(
            say(
                "At 1:{scale} the greens do not fit; this page needs 1:{fits}.",
                scale=f"{asked:g}",
                fits=math.ceil(found),
            ),
            say("Choose a larger page, fewer greens on a page or a smaller scale."),
        )
    return float(asked)


def _rounded(scale):
    """A denominator rounded up to a multiple of ten, 480 at least."""
    if not math.isfinite(scale):
        return math.inf
    return max(float(GREEN_LIMIT), float(_ROUND_SCALE * math.ceil(scale / _ROUND_SCALE - 1e-9)))
