"""Checks of one hole: its parts, its line of play, its tees, and whether its figures fit what is known.

All limits below are our own rule, common practice without a source, unless one is named.
"""

import numpy as np
from shapely.geometry import LineString

from ..model.geometry import coordinates
from ..model.words import and_list, said, say, to_say
from .accuracy import doubt, plus_minus
from .course import CARD_TOLERANCE_YD, GREEN_DEPTHS_YD
from .findings import (
    Change,
    Repair,
    about,
    box_of,
    called,
    on_hole,
    quoted,
    sets_of,
    tee_called,
)
from .line import as_point
from .markers import marker_rows
from .par import check_par, judge_par
from .rows import told
from .units import YARD, to_unit, whole

END_REACH_M = 15.0
"""A line of play that ends no further from its green than this was meant to end on it."""
TEE_BEHIND_YD = 30.0
TEE_OFF_YD = 40.0
"""A tee further behind the start of the line, or further beside the line, than this is doubtful."""


def missing_parts(layout, hole, played):
    """A hole without line of play, green or tee."""
    kinds = {feature.kind for feature in layout.index.named_of(hole.number)}
    if hole.line is None:
        yield on_hole(
            hole,
            "no_line",
            "missing",
            say("The hole has no line of play."),
            say("Draw it from the back tee over the turn points to the green."),
        )
    elif played is None:
        yield on_hole(
            hole,
            "no_line",
            "wrong",
            say("The line of play has no two different points."),
            say("Delete it and draw it from the back tee to the green."),
        )
    if "green" not in kinds:
        yield on_hole(hole, "no_green", "missing", say("The hole has no green."), say("Draw its green."))
    if not kinds & {"tee", "plate"}:
        yield on_hole(
            hole,
            "no_tee",
            "missing",
            say("The hole has no tee."),
            say("Draw its tees, or their permanent markers."),
        )


def line_of_play(layout, hole, played):
    """A line drawn the wrong way, one that misses its green, and one that crosses itself."""
    if hole.line is None or played is None:
        return
    odd = told(hole.mended, hole.remark)
    if odd:
        gravity = "wrong" if hole.mended else "doubtful"
        yield on_hole(hole, "value", gravity, odd, say("Correct the hole’s line, or its form."))
    if not hole.line.is_simple:
        yield on_hole(
            hole,
            "line_crosses",
            "wrong",
            say("The line of play crosses itself."),
            say("Move or delete its turn points."),
        )
    green = played.green
    if green is None:
        return
    points = played.frame.to_frame(layout.course.crs)(coordinates(hole.line))
    from_start, from_end = (green.geometry.distance(as_point(points[place])) for place in (0, -1))
    if from_start < from_end and from_start <= END_REACH_M and _tees_near_end(played, points):
        turned = LineString(coordinates(hole.line)[::-1])
        yield on_hole(
            hole,
            "line_backwards",
            "wrong",
            say("The line of play is drawn from green to tee."),
            say("Turn it round: it leads from the back tee to the green."),
            Repair(say("Turn the line round"), (Change("hole", hole.fid, geometry=turned),), (hole,)),
        )
    elif from_end > 0.0:
        yield on_hole(
            hole,
            "line_end",
            "wrong",
            say("The line of play ends {distance} from the green.", distance=layout.length(from_end)),
            say("Move its end to the middle of the green."),
            _end_on_green(layout, hole, played, green, from_end),
        )


def _tees_near_end(played, points):
    """Whether the tees, if there are any, lie nearer to where the line is drawn to than to where from."""
    if not played.tees:
        return True
    tees = np.array([tee.reference for tee in played.tees])
    from_start, from_end = (np.hypot(*(tees - points[place]).T).max() for place in (0, -1))
    return bool(from_end < from_start)


def _end_on_green(layout, hole, played, green, away):
    """The Repair that moves the line's last point to the green's middle, its turn points left as they are."""
    line = played.drawn
    if away > END_REACH_M or line.station(green.middle) <= line.vertex_stations[-2]:
        return None
    points = coordinates(hole.line).copy()
    middle = played.frame.from_frame(layout.course.crs)([green.middle])[0]
    if np.hypot(*(middle - points[-1])) > 180.0:
        return None  # in degrees, beyond the edge of the map: it would come back from its other end
    points[-1] = middle
    return Repair(
        say("Move the end of the line to the middle of the green"),
        (Change("hole", hole.fid, geometry=LineString(points)),),
        (hole, layout.drawn(green.feature)),
    )


_OF_REMARKS = {
    "on_green": (
        "approach",
        "wrong",
        to_say("Give the hole another approach distance, or move the point it is taken from."),
    ),
    "from_start": ("approach", "doubtful", to_say("Give the hole an approach distance.")),
    "longest_cut": ("approach", "doubtful", to_say("Look at the green’s outline and approach.")),
    "too_small": ("green", "wrong", to_say("Draw the green anew.")),
    "other_greens": (
        "green",
        "doubtful",
        to_say("Give each green only the holes that are played to it."),
    ),
    "several_tees": ("tee", "doubtful", to_say("Give each tee the tee set that plays from it.")),
    "several_plates": ("tee", "doubtful", to_say("Keep one permanent marker a tee set.")),
}
"""Of a PlayedHole's remarks those that something can be done about, by their code: which check that is, how
grave, and what to do."""


def remarks(layout, hole, played):
    """What laying the hole out has remarked on."""
    if played is None:
        return
    made = [(remark, None) for remark in played.line_remarks + played.green_remarks]
    made += [(remark, tee) for tee in played.tees for remark in tee.remarks]
    for remark, tee in made:
        check, gravity, remedy = _OF_REMARKS.get(getattr(remark, "code", ""), (None, None, None))
        if check is None:
            continue
        if tee is not None:
            text = say("{tee}: {remark}.", tee=tee_called(tee), remark=remark)
            yield about(hole.number, check, gravity, text, said(remedy), [layout.drawn(tee.feature)])
        else:
            greens = [f for f in layout.index.named_of(hole.number) if f.kind == "green"]
            yield about(hole.number, check, gravity, remark, said(remedy), greens)


def green_depth(layout, hole, played):
    """A green of unusual depth."""
    green = None if played is None else played.green
    if green is not None and not GREEN_DEPTHS_YD[0] <= green.depth / YARD <= GREEN_DEPTHS_YD[1]:
        yield about(
            hole.number,
            "green_depth",
            "doubtful",
            say(
                "The green is {depth} deep along its approach, which is unusual.",
                depth=layout.length(green.depth),
            ),
            say("Look again at its outline and at the approach."),
            [layout.drawn(green.feature)],
        )


def misplaced_tees(layout, hole, played):
    """Tees far behind the start of the line of play, or far beside it."""
    if played is None or hole.line is None:
        return
    for tee in played.tees:
        station = played.drawn.station(tee.reference)
        aside = played.line.distance(as_point(tee.reference))
        feature = layout.drawn(tee.feature)
        if station < -TEE_BEHIND_YD * YARD:
            text = say(
                "{tee} lies {distance} behind the start of the line of play.",
                tee=called(feature),
                distance=layout.length(-station),
            )
        elif aside > TEE_OFF_YD * YARD:
            text = say(
                "{tee} lies {distance} beside the line of play.",
                tee=called(feature),
                distance=layout.length(aside),
            )
        else:
            continue
        yield about(
            hole.number,
            "tee_off",
            "doubtful",
            text,
            say("Begin the line at the back tee, or give the tee to the hole that is played from it."),
            (feature,),
        )


def tees_and_sets(layout, hole, played):
    """Tees without a tee set or with one nobody knows, and sets of the scorecard that have no tee here."""
    grounds = [f for f in layout.index.named_of(hole.number) if f.kind in ("tee", "plate")]
    unnamed = [feature for feature in grounds if not sets_of(feature)]
    if unnamed:
        numbers = and_list(str(feature.fid) for feature in unnamed if feature.fid >= 0)
        yield about(
            hole.number,
            "tee_set",
            "missing",
            say("Tee {numbers} names no tee set.", numbers=numbers)
            if numbers
            else say("Tee not saved yet names no tee set."),
            say("Choose its tee set in the form; several with commas between them."),
            unnamed,
        )
    known = {tee_set.name for tee_set in layout.course.tee_sets}
    strange = dict.fromkeys(n for f in grounds for n in sets_of(f) if known and n not in known)
    for name in strange:
        yield about(
            hole.number,
            "tee_set",
            "wrong",
            say("The tee set “{name}” is not in the table of tee sets.", name=name),
            say("Correct the name on the tee, or add the tee set to the table."),
            [feature for feature in grounds if name in sets_of(feature)],
        )
    drawn = {name for feature in grounds for name in sets_of(feature)}
    carded = [name for number, name in layout.course.scorecard if number == hole.number]
    absent = [name for name in carded if name not in drawn]
    if absent and drawn:
        yield on_hole(
            hole,
            "tee_missing",
            "missing",
            say(
                "No tee is drawn for {names}, which the scorecard has.",
                names=and_list(map(quoted, absent)),
            ),
            say("Draw the tee, or name the set on the tee it shares."),
        )


def length_on_card(layout, hole, played):
    """Lengths that differ from the scorecard."""
    differing = []
    for tee in _measured_tees(played):
        card = layout.course.scorecard.get((hole.number, tee.tee_set))
        difference = 0.0 if card is None else tee.length - card * YARD
        if abs(difference) > CARD_TOLERANCE_YD * YARD:
            size = layout.length(abs(difference))
            differing.append(
                (
                    tee,
                    say("{tee} {distance} longer", tee=tee_called(tee), distance=size)
                    if difference > 0
                    else say("{tee} {distance} shorter", tee=tee_called(tee), distance=size),
                )
            )
    if differing:
        yield about(
            hole.number,
            "length",
            "doubtful",
            say(
                "Measured against the scorecard: {lengths}.",
                lengths=and_list(text for _, text in differing),
            ),
            say("Look at the tees, the turn points and the green; or correct the scorecard."),
            [layout.drawn(tee.feature) for tee, _ in differing],
            None if hole.line is None else box_of(hole.line),
        )


def _measured_tees(played):
    """The tees whose length is that of the hole; without a green none is."""
    return () if played is None or played.green is None else played.tees


def par(layout, hole, played):
    """No par, or one that the length does not bear out."""
    if hole.par is None:
        remedy = say("Write the par into the hole’s form: where the approach is taken from depends on it.")
        yield on_hole(hole, "par", "missing", say("The hole has no par."), remedy)
        return
    unit = layout.course.settings.unit
    players = {tee_set.name: tee_set.players for tee_set in layout.course.tee_sets}
    unfit, by_verdict = [], {}
    for tee in _measured_tees(played):
        given = hole.par, tee.length, unit, players.get(tee.tee_set)
        if judge_par(*given) != "fits":
            length = f"{tee_called(tee)} {whole(to_unit(tee.length, unit))} {unit}"
            unfit.append(tee)
            by_verdict.setdefault(check_par(*given), []).append(length)
    if unfit:
        yield about(
            hole.number,
            "par",
            "doubtful",
            "; ".join(f"{verdict}: {and_list(lengths)}" for verdict, lengths in by_verdict.items()),
            say("Look at the length; if it is right, the par is the committee’s to decide."),
            [layout.drawn(tee.feature) for tee in unfit],
            None if hole.line is None else box_of(hole.line),
        )


def uncertain(layout, hole, played):
    """Figures less sure than the course wants them."""
    if played is None or played.green is None:
        return
    settings, green = layout.course.settings, layout.drawn(played.green.feature)
    sure = [(tee, plus_minus(tee.feature, green, layout.images)) for tee in played.tees]
    unsure = [(tee, size) for tee, size in sure if doubt(size, settings)]
    depth = plus_minus(green, green, layout.images)
    remedy = say("Draw it from a sharper or better registered image, or one in which nothing hides it.")
    if unsure:
        names = and_list(dict.fromkeys(tee_called(tee) for tee, _ in unsure))
        worst = max(size for _, size in unsure)
        yield about(
            hole.number,
            "uncertain",
            "doubtful",
            say("The length from {tees} is uncertain by ± {size}.", tees=names, size=layout.length(worst)),
            remedy,
            [*(layout.drawn(tee.feature) for tee, _ in unsure), green],
        )
    if doubt(depth, settings):
        text = say("The green’s depth is uncertain by ± {size}.", size=layout.length(depth))
        yield about(hole.number, "uncertain", "doubtful", text, remedy, (green,))


def markers(layout, hole, played):
    """Distance markers that do not stand where they say; posts of a pair are judged by their middle."""
    if played is None or played.green is None:
        return
    rows = marker_rows(played, layout.course)
    off = {row.marker_id for row in rows if row.verdict == "off"}
    paired = {fid for row in rows if "+" in row.marker_id for fid in row.marker_id.split("+")}
    for row in rows:
        if row.marker_id in paired:
            continue
        fids = [int(fid) for fid in row.marker_id.split("+")]
        posts = [f for f in layout.index.named_of(hole.number) if f.kind == "marker" and f.fid in fids]
        name = called(posts[0]) if len(posts) == 1 else _pair_called(posts, off)
        if row.states is None:
            yield about(
                hole.number,
                "marker",
                "missing",
                say("{marker} states no distance.", marker=name),
                say("Write the distance it states into its form."),
                posts,
            )
        elif row.verdict == "off":
            yield about(
                hole.number,
                "marker",
                "doubtful",
                say(
                    "{marker} states {stated} to the green’s {point} but measures {measured}.",
                    marker=name,
                    stated=layout.length(row.states),
                    point=said(row.states_to),
                    measured=layout.length(row.measured),
                ),
                _where_true(layout, row),
                posts,
            )


def _pair_called(posts, off):
    """The middle of a pair of posts within a sentence, with the one that brings it out of its place."""
    wrong = [post for post in posts if str(post.fid) in off]
    single = wrong[0] if len(wrong) == 1 < len(posts) else None
    if single is not None and single.fid >= 0:
        return say("the middle of a pair of posts (see post {number})", number=single.fid)
    return say("the middle of a pair of posts")


def _where_true(layout, row):
    """What to do about a marker that is off; nothing is moved without somebody on the ground."""
    if row.proposed_x is None:
        return say("Look at where it was drawn, and at what it states.")
    return say(
        "Look at where it was drawn. It would be true {distance} away, on a bearing of {bearing}°, "
        "at {x}, {y}.",
        distance=layout.length(row.move_m),
        bearing=f"{row.move_azimuth:.0f}",
        x=f"{row.proposed_x:.2f}",
        y=f"{row.proposed_y:.2f}",
    )
