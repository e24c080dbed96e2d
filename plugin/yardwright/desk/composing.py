"""Composing from the desk: what is asked for, made in the background, and what came of it.

Nothing heavy is imported before it is used.
"""

import os
from dataclasses import dataclass

from ..model.errors import YardwrightError
from .background import Work
from .words import tr

_PAGE_MM = (107.95, 177.8)
"""The panel of the pages that the pictures are meant for: what ``exportwindows`` proposes, the largest that
may hold the picture of a green."""
_DPI = 300.0


@dataclass(frozen=True)
class Asked:
    """What is wanted. base: the id of a date; others: ids of those that may show what it hides. holes:
    numbers, None for all. for_print: whether dates that may not be printed are left out. folder: for the
    pictures."""

    base: str
    others: tuple
    holes: tuple
    folder: str
    for_print: bool = True


@dataclass(frozen=True)
class Left:
    """A spot that could not be uncovered: x, y in the course's CRS, its size and why."""

    picture: str
    x: float
    y: float
    area_m2: float
    why: str


@dataclass(frozen=True)
class Picture:
    """A composite that was made. name: of its file, without ending. hole: its number, None for the whole
    course. shares: ``((a date's id, or what was done, share of it in %), ...)``."""

    name: str
    hole: int
    path: str
    source_path: str
    shares: tuple


@dataclass(frozen=True)
class Came:
    """What came of a run. remarks: texts."""

    pictures: tuple
    left: tuple
    remarks: tuple


class Composing:
    """One run. ``asked``: an Asked; ``text``: what it is doing, in words.

    done: called on the main thread with (Came or None, error or None); neither where it was cancelled.
    share: called there with 0 to 100 as it goes on.
    """

    def __init__(self, in_hand, asked, done, share):
        from ..store.reading import read_features

        self.asked, self._done = asked, done
        self.text = tr("The dates are being read…")
        self._course, self._place = in_hand.course(), in_hand.place
        layers = in_hand.layers()
        self._patches, self._windows = (read_features(layers, kind) for kind in ("patch", "window"))
        self._work = Work(tr("Compose one clean picture"), self._run, self._finished)
        self._work.progressChanged.connect(share)

    def begin(self):
        """Begin; what is drawn now counts, saved or not."""
        self._work.begin()

    def stop(self):
        """Stop, and wait until it has."""
        self._work.stop()

    def cancel(self):
        """Stop when it may; ``done`` is called then."""
        self._work.cancel()

    def _run(self, progress):
        from ..guide.composites import CompositeRow, UncoveredRow, composed, plan_recipe, usable_dates
        from ..guide.windows import Panel
        from ..imagery.composing import source_path_of
        from ..imagery.recipe import Options
        from ..store.tables import write_tables

        asked, course = self.asked, self._course
        dates, remarks = usable_dates(course, self._place, asked.base, asked.others, asked.for_print)
        panel = Panel(*_PAGE_MM, _DPI)
        plan = plan_recipe(
            *(course, self._place, dates, self._patches, self._windows, asked.holes, panel, None, Options())
        )
        recipe, remarks = plan[0], [*remarks, *plan[1]]
        every = len(recipe.windows)
        self.text = tr("Picture {} of {}").format(1, every)
        made = []
        for one in composed(recipe, course, self._place, dates, asked.folder, progress):
            made.append(one)
            remarks += one.remarks
            self.text = tr("Picture {} of {}").format(min(len(made) + 1, every), every)
        tables = {
            "composites": (CompositeRow, [row for one in made for row in one.composites]),
            "uncovered": (UncoveredRow, [row for one in made for row in one.uncovered]),
        }
        write_tables(asked.folder, tables, course.settings.unit)
        pictures = tuple(
            Picture(
                _name(one.path),
                one.composites[0].hole,
                one.path,
                source_path_of(one.path),
                tuple((row.date, row.share_pct) for row in one.composites),
            )
            for one in made
        )
        left = [Left(_name(row.picture), row.x, row.y, row.area, row.why) for row in tables["uncovered"][1]]
        return Came(pictures, tuple(left), tuple(dict.fromkeys(remarks)))

    def _finished(self, work):
        self._done(work.result, work.error)


def _name(path):
    return os.path.splitext(os.path.basename(path))[0]


def holes_of(text, known):
    """Numbers of holes as somebody typed them, a tuple. Raises YardwrightError.

    >>> holes_of(" 1, 4,7 - 9 ", range(1, 19))
    (1, 4, 7, 8, 9)
    """
    from ..model.numbers import parse_holes

    numbers = parse_holes(text)
    if not numbers:
        raise YardwrightError(tr("No hole is named."), tr("Give numbers of holes, such as 1,4,7-9."))
    strange = [number for number in numbers if number not in known]
    if strange:
        raise YardwrightError(
            tr("Hole {} is not in the course.").format(strange[0]), tr("Give numbers of its holes.")
        )
    return numbers
