"""What is wrong, missing or doubtful in a drawn course, and how it can safely be mended.

``check_course`` looks at a whole course, ``CourseChecks`` at a hole when it is asked for. A check is a small
function that gives Findings: of those in ``SHARED`` each is called once with the Layout of the course, of
those in ``OF_A_HOLE`` once a hole with the Layout, the model Hole and its PlayedHole (None where there is
nothing to lay out). Nothing here changes the course: a Repair only says what would.
"""

from functools import cached_property

from ..model.errors import Cancelled
from . import checks_of_drawing, checks_of_holes, checks_of_rows
from .findings import GRAVITIES, Layout
from .hole import CourseIndex, play_hole

SHARED = (
    checks_of_rows.unread,
    checks_of_rows.left_out,
    checks_of_drawing.overlaps,
    checks_of_drawing.drawn_twice,
    checks_of_drawing.crossing_outlines,
    checks_of_drawing.slivers,
    checks_of_drawing.gaps,
    checks_of_drawing.boundary_gaps,
    checks_of_drawing.outside,
    checks_of_rows.odd_values,
    checks_of_rows.tee_sets,
    checks_of_rows.stroke_indexes,
)
"""Checks of a whole course: ``check(layout)`` gives Findings, each with its hole."""

OF_A_HOLE = (
    checks_of_holes.missing_parts,
    checks_of_holes.line_of_play,
    checks_of_holes.remarks,
    checks_of_holes.green_depth,
    checks_of_holes.misplaced_tees,
    checks_of_holes.tees_and_sets,
    checks_of_holes.length_on_card,
    checks_of_holes.par,
    checks_of_holes.uncertain,
    checks_of_holes.markers,
)
"""Checks of one hole: ``check(layout, hole, played)`` gives its Findings."""


def check_course(course, holes=None, progress=None, index=None):
    """The Findings of a model Course, a tuple: by hole (those of no hole first), then by gravity and feature.

    holes: numbers to look at, None for all; those of no hole are left out where numbers are given.
    progress: ``progress(done, total)`` is called after every hole and returns False to stop, which raises
    Cancelled. index: the course's CourseIndex.
    """
    checks = CourseChecks(course, index)
    found = [] if holes else list(checks.of_course())
    numbers = [number for number in checks.numbers if not holes or number in holes]
    for done, number in enumerate(numbers, start=1):
        found.extend(checks.of_hole(number))
        if progress is not None and progress(done, len(numbers)) is False:
            raise Cancelled()
    return tuple(found)


def checks_of_hole(course, number, index=None):
    """The Findings of one hole, the gravest first. CourseChecks saves work where several are asked for."""
    return CourseChecks(course, index).of_hole(number)


class CourseChecks:
    """The checks of one model Course, a hole at a time. ``numbers``: the numbers of its holes."""

    def __init__(self, course, index=None):
        self.numbers = tuple(hole.number for hole in course.holes)
        self._layout = Layout(course, index or CourseIndex(course))

    def of_course(self):
        """The Findings that concern no single hole, the gravest first."""
        return _in_order(self._shared.get(None, ()))

    def of_hole(self, number):
        """The Findings of one hole, the gravest first."""
        layout = self._layout
        hole = layout.course.hole(number)
        if hole is None:
            return ()
        played = play_hole(layout.course, number, layout.index)
        found = list(self._shared.get(number, ()))
        for check in OF_A_HOLE:
            found.extend(check(layout, hole, played))
        return _in_order(found)

    @cached_property
    def _shared(self):
        """What the checks in SHARED find, ``{hole or None: [Finding]}``."""
        by_hole = {}
        for check in SHARED:
            for finding in check(self._layout):
                known = finding.hole if finding.hole in self.numbers else None
                by_hole.setdefault(known, []).append(finding)
        return by_hole


def _in_order(findings):
    return tuple(sorted(findings, key=lambda f: (GRAVITIES.index(f.gravity), f.features, f.check, f.text)))
