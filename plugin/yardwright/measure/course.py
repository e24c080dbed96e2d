"""A whole course measured: the one place where a table, a dialog and a page get their figures from."""

from ..model.errors import Cancelled
from ..model.words import said, say
from .accuracy import doubt, plus_minus
from .distances import distance_rows, tee_views
from .fairways import fairway_rows
from .heights import height_rows
from .hole import PLACED, CourseIndex, play_hole
from .markers import marker_rows
from .par import check_par
from .rows import GreenRow, HeightRow, LengthRow, Measures, told
from .turns import dogleg_rows, layup_rows
from .units import YARD, to_unit, whole

TABLES = ("lengths", "greens", "distances", "fairways", "doglegs", "layups", "markers")
CARD_TOLERANCE_YD = 5.0
"""A hole that differs by more than this from the scorecard is remarked on (our own rule)."""
GREEN_DEPTHS_YD = (12.0, 50.0)
"""Greens are commonly 20 to 40 yd deep; outside these a remark asks to look again (common practice, no
source)."""


def measure_course(course, holes=None, progress=None, index=None, terrain=None):
    """All tables of a course, as ``rows.Measures``.

    holes: numbers to measure, None for all. progress: ``progress(done, total)`` is called after every
    hole and returns False to stop, which raises Cancelled. index: the course's CourseIndex, where it is
    measured more than once. terrain: an ``imagery.terrain.Terrain`` for the heights, which change no other
    figure. A hole that cannot be measured gets a row with a remark.
    """
    index = index or CourseIndex(course)
    numbers = [hole.number for hole in course.holes if not holes or hole.number in holes]
    known = {hole.number for hole in course.holes}
    problems = list(course.problems) + _lost(course, index, known)
    problems += [
        say("Hole {number} is not in the course.", number=number)
        for number in holes or ()
        if number not in known
    ]
    problems += [] if terrain is None else terrain.remarks
    tables = {name: [] for name in TABLES}
    for done, number in enumerate(numbers, start=1):
        for name, rows in measure_hole(course, number, index, terrain).items():
            tables.setdefault(name, []).extend(rows)
        if progress is not None and progress(done, len(numbers)) is False:
            raise Cancelled()
    return Measures(problems=tuple(problems), **{name: tuple(rows) for name, rows in tables.items()})


def _lost(course, index, known):
    """What is measured nowhere, since no hole could be found for it."""
    problems = []
    for feature, numbers in zip(course.features, index.holes):
        absent = [str(number) for number in numbers if number not in known]
        if feature.kind in PLACED and not numbers:
            problems.append(
                say(
                    "{kind} {number} has no hole and lies near none: it is left out.",
                    kind=said(feature.kind),
                    number=feature.fid,
                )
            )
        elif absent:
            problems.append(
                say(
                    "{kind} {number} names hole {holes}, which is not there.",
                    kind=said(feature.kind),
                    number=feature.fid,
                    holes=", ".join(absent),
                )
            )
    return problems


def measure_hole(course, number, index=None, terrain=None):
    """The rows of one hole, ``{table: [row]}``; the table ``heights`` where a terrain is given."""
    hole = course.hole(number)
    played = play_hole(course, number, index)
    images = {image.id: image for image in course.images}
    settings = course.settings
    if played is None:
        remark = say("no line of play is drawn")
        carded = [name for (card_hole, name) in course.scorecard if card_hole == number] or [""]
        lengths = [_unmeasured(course, hole, name, remark) for name in carded]
        unmeasured = {"lengths": lengths, "greens": [GreenRow(hole=number, remark=remark)]}
        if terrain is not None:
            unmeasured["heights"] = [HeightRow(hole=number, remark=remark)]
        return unmeasured

    players = {tee_set.name: tee_set.players for tee_set in course.tee_sets}
    tables = {name: [] for name in ("lengths", "distances", "fairways", "doglegs", "layups")}
    for view in tee_views(played, settings):
        tee = view.tee
        tables["lengths"].append(_length_row(course, played, tee, players.get(tee.tee_set), images))
        tables["distances"].extend(distance_rows(view, images))
        tables["fairways"].extend(fairway_rows(view, images, players.get(tee.tee_set)))
        tables["doglegs"].extend(dogleg_rows(view, images))
        tables["layups"].extend(layup_rows(view, images))
    seen = {tee.tee_set for tee in played.tees}
    for card_hole, name in course.scorecard:
        if card_hole == number and name not in seen:
            tables["lengths"].append(_unmeasured(course, hole, name, say("no tee of this set is drawn")))
    if not tables["lengths"]:
        tables["lengths"].append(_unmeasured(course, hole, "", say("no tee is drawn")))
    tables["greens"] = [_green_row(played, settings, images)]
    tables["markers"] = marker_rows(played, course)
    if terrain is not None:
        tables["heights"] = height_rows(played, terrain, course.crs)
    return tables


def _unmeasured(course, hole, tee_set, remark):
    card = course.scorecard.get((hole.number, tee_set))
    return LengthRow(
        hole=hole.number,
        tee_set=tee_set,
        scorecard=None if card is None else card * YARD,
        par=hole.par,
        remark=remark,
    )


def _length_row(course, played, tee, players, images):
    hole, settings = played.hole, course.settings
    card = course.scorecard.get((played.number, tee.tee_set))
    difference = None if card is None else tee.length - card * YARD
    sure = None
    if played.green is not None:
        sure = plus_minus(tee.feature, played.green.feature, images)
    remarks = [*tee.remarks, *played.line_remarks]
    if played.green is None:
        remarks.extend(played.green_remarks)
    if difference is not None and abs(difference) > CARD_TOLERANCE_YD * YARD:
        figure = f"{whole(abs(to_unit(difference, settings.unit)))} {settings.unit}"
        remarks.append(
            say("{distance} longer than the scorecard", distance=figure)
            if difference > 0
            else say("{distance} shorter than the scorecard", distance=figure)
        )
    return LengthRow(
        hole=played.number,
        tee_set=tee.tee_set,
        length=tee.length,
        plus_minus=sure,
        scorecard=None if card is None else card * YARD,
        difference=difference,
        par=hole.par,
        par_check=check_par(hole.par, tee.length, settings.unit, players),
        remark=told(*remarks, doubt(sure, settings)),
    )


def _green_row(played, settings, images):
    green = played.green
    if green is None:
        return GreenRow(hole=played.number, remark="; ".join(played.green_remarks))
    remarks = list(played.green_remarks)
    if not GREEN_DEPTHS_YD[0] <= green.depth / YARD <= GREEN_DEPTHS_YD[1]:
        remarks.append(say("an unusual depth for a green: look again at its margin and approach"))
    sure = plus_minus(green.feature, green.feature, images)
    return GreenRow(
        hole=played.number,
        approach_from=green.approach_from,
        approach_azimuth=green.azimuth,
        depth=green.depth,
        width=green.width,
        overall_depth=green.overall_depth,
        overall_width=green.overall_width,
        area=green.area,
        chords=len(green.pieces),
        plus_minus=sure,
        remark=told(*remarks, doubt(sure, settings)),
    )
