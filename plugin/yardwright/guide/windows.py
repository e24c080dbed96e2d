"""Windows planned: the piece of ground that a page shows, turned so that play or the approach points up.

A window is a rectangle on the ground, laid out in the hole's frame and written down in the course's CRS. Its
picture has ``round(mm / 25.4 * dpi)`` pixels either way; a place in it is counted in pixels from the outer
top-left corner of the top-left pixel, and in millimetres as ``px / dpi * 25.4``. Nothing here needs QGIS.
"""

import math
from dataclasses import dataclass, field

import numpy as np
from shapely.geometry import Polygon

from ..imagery.grid import Grid
from ..measure.hole import longest_tee
from ..measure.units import YARD, to_unit, whole
from ..model.course import Feature
from ..model.errors import YardwrightError
from ..model.geometry import coordinates
from ..model.words import say

SHOWS = ("hole", "green")

GREEN_LIMIT = 480
"""Least denominator of the scale of a picture that holds a putting green: 3/8 inch to 5 yards, 1:480 (Rules
of Golf, Rule 4.3a, interpretation on green-reading materials, in force since 1 January 2019)."""

MARGIN_MM = 5.0
SURROUNDINGS_M = 10 * YARD
"""Ground about the green that the window of a whole hole holds too (our own rule)."""

MOST_PIXELS = 200_000_000
_MM_PER_INCH = 25.4
_BENT = 0.25
_SYMBOLS = ("bunker", "penalty_area", "trees", "tree", "target")


@dataclass(frozen=True)
class Panel:
    """The place on a page that a window fills: millimetres and dots per inch as asked for.

    Raises YardwrightError when it is not positive or too large to be a picture.
    """

    width_mm: float
    height_mm: float
    dpi: float

    def __post_init__(self):
        values = (self.width_mm, self.height_mm, self.dpi)
        if not all(math.isfinite(value) and value > 0 for value in values):
            raise YardwrightError(
                say("A window's width, height and dots per inch must be greater than 0."),
                say("Give the size of the page panel in millimetres, such as 100 x 150 at 300."),
            )
        if not 1 <= self.width_px * self.height_px <= MOST_PIXELS:
            raise YardwrightError(
                say(
                    "A window of {width} x {height} pixels cannot be made.",
                    width=self.width_px,
                    height=self.height_px,
                ),
                say("Choose another size in millimetres or other dots per inch."),
            )

    @property
    def width_px(self):
        """Whole pixels nearest to the width."""
        return math.floor(self.width_mm / _MM_PER_INCH * self.dpi + 0.5)

    @property
    def height_px(self):
        """Whole pixels nearest to the height."""
        return math.floor(self.height_mm / _MM_PER_INCH * self.dpi + 0.5)

    def to_mm(self, pixels):
        """Pixels as millimetres on the page."""
        return pixels / self.dpi * _MM_PER_INCH


@dataclass(frozen=True)
class WindowPlan:
    """A window ready to be cut.

    hole: number. shows: ``hole`` or ``green``. up_azimuth: true azimuth that points up, degrees,
    0 <= a < 360. scale: the denominator. grid: the picture's pixels in the course's CRS. frame, centre, up,
    ground: the hole frame, and in it the rectangle's middle, its unit vector upwards and its width and height
    in metres. remarks: what a user should know of it.
    """

    hole: int
    shows: str
    up_azimuth: float
    scale: float
    panel: Panel
    grid: Grid
    frame: object
    centre: tuple
    up: tuple
    ground: tuple
    remarks: tuple = ()

    @property
    def name(self):
        """The name of its files: ``hole_07``, ``green_07``."""
        return f"{self.shows}_{self.hole:02d}"


def plan_window(played, shows, panel, crs, scale=None, margin_mm=MARGIN_MM, above_limit=False):
    """The WindowPlan of a PlayedHole.

    shows: ``hole``: from the longest tee to the green's middle points up; ``green``: the approach does.
    crs: the course's CRS as text. scale: the denominator; None: the largest scale, as a whole denominator,
    that holds the hole (all tees, the line of play, the green with its surroundings) or the green with
    ``margin_mm`` left on each side. Either way the middle of what is shown lies in the middle.
    above_limit: whether a green may be shown larger than 1:480.
    Raises YardwrightError when the hole has nothing to show or does not fit.
    """
    if shows == "green":
        points, up, azimuth = _green_content(played)
    else:
        points, up, azimuth = _hole_content(played)
    least = 1.0 if above_limit or played.green is None else float(GREEN_LIMIT)
    return _laid_out(played, shows, points, up, azimuth, panel, crs, scale, margin_mm, least)


def window_feature(plan):
    """The model Feature of kind ``window`` of a plan; its corners are the picture's, top left first."""
    return Feature(
        kind="window",
        fid=None,
        geometry=Polygon(plan.grid.corners()),
        attributes={
            "hole": plan.hole,
            "shows": plan.shows,
            "up_azimuth": plan.up_azimuth,
            "scale": plan.scale,
            "width_mm": round(plan.panel.to_mm(plan.grid.width), 6),
            "height_mm": round(plan.panel.to_mm(plan.grid.height), 6),
        },
    )


def _green_content(played):
    if played.green is None:
        raise YardwrightError(
            say("Hole {number} has no green, so there is no window of it.", number=played.number),
            say("Draw the green and give it this hole’s number."),
        )
    return coordinates(played.green.geometry), played.green.direction, played.green.azimuth


def _hole_content(played):
    start, up = up_of(played)
    points = hole_points(played, around_green=SURROUNDINGS_M)
    return points, up, played.frame.true_azimuth(start, played.end)


def up_of(played):
    """``(start, unit vector)`` in the frame: where play begins, and which way is up for the hole.

    Up is from the longest tee to the green's middle. Raises YardwrightError where both are one place.
    """
    longest = longest_tee(played)
    start = np.asarray(played.drawn.points[0] if longest is None else longest.reference, dtype=float)
    away = np.asarray(played.end, dtype=float) - start
    length = float(np.hypot(*away))
    if length < 1.0:
        raise YardwrightError(
            say(
                "Hole {number} starts where it ends, so no direction of play is known.", number=played.number
            ),
            say("Draw its line of play from the back tee to the green."),
        )
    return start, away / length


def hole_points(played, around_green=0.0):
    """The (n, 2) points in the frame that a picture of the whole hole has to hold.

    around_green: metres of the green's surroundings that belong to it.
    """
    parts = [played.drawn.points]
    for tee in played.tees:
        parts += [coordinates(tee.feature.geometry), tee.line.points]
    if played.green is not None:
        parts.append(coordinates(played.green.geometry.buffer(around_green)))
    return np.concatenate(parts)


def _laid_out(played, shows, points, up, azimuth, panel, crs, scale, margin_mm, least):
    up = np.asarray(up, dtype=float)
    right = np.array([up[1], -up[0]])
    width_mm, height_mm = panel.to_mm(panel.width_px), panel.to_mm(panel.height_px)
    if margin_mm < 0 or 2 * margin_mm >= min(width_mm, height_mm):
        raise YardwrightError(
            say(
                "A margin of {margin} mm leaves nothing of {width} x {height} mm.",
                margin=f"{margin_mm:g}",
                width=f"{width_mm:.1f}",
                height=f"{height_mm:.1f}",
            ),
            say("Choose a smaller margin or a larger window."),
        )
    across, along = points @ right, points @ up
    needed = 1000.0 * max(
        np.ptp(across) / (width_mm - 2 * margin_mm), np.ptp(along) / (height_mm - 2 * margin_mm)
    )
    scale, remarks = _scale(shows, scale, math.ceil(needed - 1e-9), least)
    bare = 1000.0 * max(np.ptp(across) / width_mm, np.ptp(along) / height_mm)
    if bare > scale:
        values = {"scale": f"{scale:g}", "fits": math.ceil(needed)}
        if shows == "green":
            text = say("at 1:{scale} the green is cut off; it needs 1:{fits} with its margin", **values)
        else:
            text = say("at 1:{scale} the hole is cut off; it needs 1:{fits} with its margin", **values)
        remarks.append(text)

    centre = (across.min() + across.max()) / 2 * right + (along.min() + along.max()) / 2 * up
    ground = (width_mm * scale / 1000.0, height_mm * scale / 1000.0)
    grid = _grid(played.frame, crs, centre, right, up, ground, panel, played.number)
    return WindowPlan(
        hole=played.number,
        shows=shows,
        up_azimuth=azimuth % 360.0,
        scale=scale,
        panel=panel,
        grid=grid,
        frame=played.frame,
        centre=tuple(centre),
        up=tuple(up),
        ground=ground,
        remarks=tuple(remarks),
    )


def _scale(shows, asked, needed, least):
    """``(denominator, [remarks])``: as asked or as needed, never below ``least``."""
    if asked is None:
        return float(max(needed, least)), []
    if not math.isfinite(asked) or asked <= 0:
        raise YardwrightError(
            say("A scale of 1:{scale} means nothing.", scale=f"{asked:g}"),
            say("Give SCALE as its denominator, such as 480 for 1:480."),
        )
    if asked < least:
        return least, [_too_large(shows, f"{asked:g}", f"{least:g}")]
    return float(asked), []


def _too_large(shows, asked, shown):
    if shows == "green":
        return say(
            "1:{asked} is larger than the Rules of Golf allow for the picture of a green (Rule 4.3a): "
            "the green is shown at 1:{shown}",
            asked=asked,
            shown=shown,
        )
    return say(
        "1:{asked} is larger than the Rules of Golf allow for the picture of a green (Rule 4.3a): "
        "the hole is shown at 1:{shown}",
        asked=asked,
        shown=shown,
    )


def _grid(frame, crs, centre, right, up, ground, panel, number):
    """The picture's pixels in the course's CRS: the affine that fits the rectangle best.

    A CRS bends straight ground a little; where that reaches a quarter of a pixel the picture would be
    untrue, and the course's CRS is a bad choice: YardwrightError.
    """
    steps = np.array([(x, y) for y in np.linspace(0, 1, 5) for x in np.linspace(0, 1, 5)])
    offsets = (steps - 0.5) * [ground[0], -ground[1]]
    places = frame.from_frame(crs)(np.asarray(centre) + offsets[:, :1] * right + offsets[:, 1:] * up)
    pixels = steps * [panel.width_px, panel.height_px]
    origin = places[12]
    if not np.isfinite(places).all():
        raise _bent(number)
    design = np.column_stack([np.ones(len(pixels)), pixels - pixels[12]])
    fitted = np.linalg.lstsq(design, places - origin, rcond=None)[0]
    (x0, y0), (gx_column, gy_column), (gx_row, gy_row) = fitted
    x0 = origin[0] + x0 - pixels[12] @ (gx_column, gx_row)
    y0 = origin[1] + y0 - pixels[12] @ (gy_column, gy_row)
    made = (x0, gx_column, gx_row, y0, gy_column, gy_row)
    grid = Grid(panel.width_px, panel.height_px, tuple(float(value) for value in made), str(crs))
    if np.abs(grid.to_pixels(places) - pixels).max() > _BENT:
        raise _bent(number)
    return grid


def _bent(number):
    return YardwrightError(
        say(
            "The course’s coordinate reference system bends the ground of hole {number} too much for a "
            "picture.",
            number=number,
        ),
        say(
            "Keep the course in the UTM zone it lies in: start a new course there and bring the features in."
        ),
    )


# --- placements ----------------------------------------------------------------------------------------


def _place():
    return field(default=None, metadata={"holds": "coordinate"})


@dataclass(frozen=True)
class PlacementRow:
    """One symbol of a window: where it falls, from the picture's outer top-left corner, and what it says."""

    window: str = field(default="", metadata={"holds": "text"})
    symbol: str = field(default="", metadata={"holds": "text"})
    feature_id: int = field(default=None, metadata={"holds": "count"})
    x_mm: float = _place()
    y_mm: float = _place()
    x_px: float = _place()
    y_px: float = _place()
    text: str = field(default="", metadata={"holds": "text"})


def placements(plan, played, course, tables, features):
    """A PlacementRow for every symbol that falls into a window.

    played: its PlayedHole. tables: what ``measure.course.measure_hole`` says of it. features: the model
    Features that may show here (of this hole or of none), in the course's CRS.

    symbol: ``approach``, ``front``, ``middle``, ``back``, ``tee`` (its reference point), ``turn``, and the
    name of a feature's layer; ``marker_proposed`` is where a marker would be true. text: of front, middle and
    back in a hole's window the distance from the longest tee, in a green's window that from the front; of
    a tee its set, of a turn point its distance from the longest tee, of a marker what it states; else the
    feature's label or, without one, the distances from the longest tee to reach and to clear it.
    """
    unit = course.settings.unit
    tee = longest_tee(played)
    rows = [row for row in tables.get("distances", ()) if tee is not None and row.tee_set == tee.tee_set]
    to_course = played.frame.from_frame(course.crs)
    symbols = _on_the_line(plan, played, tee, rows, unit, to_course)
    symbols += _drawn_things(plan, features, rows, unit)
    symbols += _proposed(tables.get("markers", ()), {f.fid: f for f in features if f.kind == "marker"})
    if not symbols:
        return ()
    pixels = plan.grid.to_pixels([place for _, _, place, _ in symbols])
    inside = ((pixels >= 0) & (pixels <= [plan.grid.width, plan.grid.height])).all(axis=1)
    return tuple(
        PlacementRow(
            window=plan.name,
            symbol=symbol,
            feature_id=fid,
            x_mm=float(plan.panel.to_mm(x)),
            y_mm=float(plan.panel.to_mm(y)),
            x_px=float(x),
            y_px=float(y),
            text=text,
        )
        for (symbol, fid, _, text), (x, y), shown in zip(symbols, pixels, inside)
        if shown
    )


def _figure(metres, unit):
    """A distance as it is printed, empty for none."""
    value = whole(to_unit(metres, unit))
    return "" if value is None else str(value)


def _on_the_line(plan, played, tee, rows, unit, to_course):
    """``(symbol, feature id, place, text)`` of what the line of play and the green bring."""
    found = []
    green = played.green
    if green is not None:
        own = next((row for row in rows if row.kind == "green"), None)
        if plan.shows == "green":
            figures = {"front": 0.0, "middle": green.depth / 2, "back": green.depth}
        elif own is not None:
            figures = {"front": own.reach, "middle": own.middle, "back": own.clear}
        else:
            figures = {}
        found.append(("approach", None, green.approach_point, green.approach_from))
        for name in ("front", "middle", "back"):
            text = _figure(figures.get(name), unit)
            found.append((name, green.feature.fid, getattr(green, name), text))
    found += [("tee", play.feature.fid, play.reference, play.tee_set) for play in played.tees]
    for point in played.drawn.points[1:-1]:
        text = ""
        if tee is not None and np.abs(tee.line.points - point).sum(axis=1).min() < 1e-6:
            text = _figure(tee.line.station(point), unit)
        found.append(("turn", played.hole.fid, point, text))
    if not found:
        return []
    places = to_course(np.array([place for _, _, place, _ in found], dtype=float))
    return [(symbol, fid, place, text) for (symbol, fid, _, text), place in zip(found, places)]


def _drawn_things(plan, features, rows, unit):
    """The same of drawn features; an area stands at a point inside the part of it that the window shows."""
    picture = Polygon(plan.grid.corners())
    figures = {(row.kind, row.feature_id): (row.reach, row.clear) for row in rows}
    found = []
    for feature in features:
        if feature.kind in ("plate", "marker", *_SYMBOLS):
            shown = feature.geometry.intersection(picture)
            if shown.is_empty:
                continue
            place = coordinates(shown.representative_point())[0]
            found.append((feature.kind, feature.fid, place, _text_of(feature, figures, unit)))
    return found


def _text_of(feature, figures, unit):
    if feature.kind == "plate":
        return str(feature.get("tee_set", ""))
    if feature.kind == "marker":
        return _stated(feature)
    if feature.label:
        return feature.label
    ends = [_figure(value, unit) for value in figures.get((feature.kind, feature.fid), ())]
    ends = list(dict.fromkeys(filter(None, ends)))
    return say("{low} to {high}", low=ends[0], high=ends[1]) if len(ends) == 2 else "".join(ends)


def _stated(marker):
    states = marker.get("states_yd", marker.get("states_m"))
    return "" if states is None else f"{states:g}"


def _proposed(markers, drawn):
    """The same of the true places of markers; the middle between two posts has no feature of its own."""
    found = []
    for row in markers:
        if row.proposed_x is None:
            continue
        posts = _posts(row)
        text = _stated(drawn[posts[0]]) if posts and posts[0] in drawn else ""
        fid = posts[0] if len(posts) == 1 else None
        found.append(("marker_proposed", fid, (row.proposed_x, row.proposed_y), text))
    return found


def _posts(row):
    """The ids of the markers that a MarkerRow stands for."""
    return [int(part) for part in row.marker_id.split("+") if part.isdigit()]


def stated_at(markers, features):
    """``[((x, y), text)]``: where each distance marker would be true, and what it states.

    markers: MarkerRows. features: the model Features. The middle between the posts of a pair is no marker.
    """
    drawn = {feature.fid: feature for feature in features if feature.kind == "marker"}
    proposed = {
        _posts(row)[0]: (row.proposed_x, row.proposed_y)
        for row in markers
        if row.proposed_x is not None and len(_posts(row)) == 1
    }
    return [(place, _stated(drawn[fid])) for fid, place in proposed.items() if fid in drawn]
