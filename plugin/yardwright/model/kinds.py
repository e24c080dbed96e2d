"""The kinds of things on a course, declared as data: one entry is one layer of the course file.

Everything that differs from kind to kind (geometry, fields, allowed values, what the kind means to a
measurement) stands here, so that no other module lists kinds. Titles, nouns and allowed values are marked to
be said in the user’s language; names and stored values are the same in all.
"""

from dataclasses import dataclass

from .event import STARTS
from .guide_pages import PAGE_KINDS
from .words import to_say

TEXT, INTEGER, REAL, BOOLEAN, DATE = "text", "integer", "real", "boolean", "date"

VIEWS = (to_say("clear"), to_say("partly hidden"), to_say("from another source"))


@dataclass(frozen=True)
class Field:
    """One column of a layer or table.

    ``values`` are the only values allowed (None: any), ``low`` and ``high`` the inclusive limits of a
    number, ``needed`` means that a row without it is incomplete (asked for in forms as a soft
    constraint: a doubtful row is remarked on, never refused).
    """

    name: str
    type: str
    title: str
    values: tuple = None
    low: float = None
    high: float = None
    needed: bool = False
    default: object = None


@dataclass(frozen=True)
class Kind:
    """One layer: its name, title, what one of its things is called within a sentence, geometry (``Point``,
    ``LineString``, ``Polygon`` or None) and fields.

    ``listed``: appears in the table of distances. ``hazard``: crossing it can be a forced carry.
    ``drawn_over``: layers with a higher figure lie above those with a lower one.
    """

    name: str
    title: str
    noun: str
    geometry: str
    fields: tuple
    listed: bool = False
    hazard: bool = False
    drawn_over: int = 0

    def field(self, name):
        """The field called ``name``; KeyError when the kind has none."""
        for field in self.fields:
            if field.name == name:
                return field
        raise KeyError(name)


_SEEN = (
    Field("note", TEXT, to_say("Note")),
    Field("seen_in", TEXT, to_say("Seen in image")),
    Field("view", TEXT, to_say("View"), values=VIEWS, default="clear"),
    Field("origin", TEXT, to_say("Brought in from")),
)
_HOLE = Field("hole", INTEGER, to_say("Hole"), low=1, high=99, needed=True)
_HOLES = Field("holes", TEXT, to_say("Holes"))
_LABEL = Field("label", TEXT, to_say("Label"))
_AREA = (_HOLES, _LABEL)

KINDS = (
    Kind(
        "hole",
        to_say("Line of play"),
        to_say("line of play"),
        "LineString",
        (
            Field("number", INTEGER, to_say("Number"), low=1, high=99, needed=True),
            Field("name", TEXT, to_say("Name")),
            Field("par", INTEGER, to_say("Par"), low=3, high=6),
            Field("stroke_index", INTEGER, to_say("Stroke index"), low=1, high=36),
            Field("approach_yd", REAL, to_say("Approach from (yd before the green)"), low=1, high=400),
            Field("description", TEXT, to_say("Description")),
        )
        + _SEEN,
        drawn_over=70,
    ),
    Kind(
        "tee",
        to_say("Tee"),
        to_say("tee"),
        "Polygon",
        (_HOLES, Field("tee_set", TEXT, to_say("Tee set"))) + _SEEN,
        drawn_over=60,
    ),
    Kind(
        to_say("plate"),
        to_say("Permanent tee marker"),
        to_say("permanent tee marker"),
        "Point",
        (_HOLE, Field("tee_set", TEXT, to_say("Tee set"), needed=True)) + _SEEN,
        drawn_over=90,
    ),
    Kind("green", to_say("Green"), to_say("green"), "Polygon", _AREA + _SEEN, drawn_over=50),
    Kind("apron", to_say("Apron"), to_say("apron"), "Polygon", _AREA + _SEEN, drawn_over=40),
    Kind(
        "fairway", to_say("Fairway"), to_say("fairway"), "Polygon", _AREA + _SEEN, listed=True, drawn_over=20
    ),
    Kind(
        "bunker",
        to_say("Bunker"),
        to_say("bunker"),
        "Polygon",
        _AREA + _SEEN,
        listed=True,
        hazard=True,
        drawn_over=55,
    ),
    Kind("rough", to_say("Rough"), to_say("rough"), "Polygon", _AREA + _SEEN, drawn_over=10),
    Kind(
        to_say("penalty_area"),
        to_say("Penalty area"),
        to_say("penalty area"),
        "Polygon",
        _AREA
        + (
            Field("stakes", TEXT, to_say("Stakes"), values=(to_say("yellow"), to_say("red"))),
            Field("water", BOOLEAN, to_say("Water"), default=True),
        )
        + _SEEN,
        listed=True,
        hazard=True,
        drawn_over=30,
    ),
    Kind(
        "trees",
        to_say("Trees"),
        to_say("trees"),
        "Polygon",
        _AREA + _SEEN,
        listed=True,
        hazard=True,
        drawn_over=62,
    ),
    Kind(
        "tree",
        to_say("Tree"),
        to_say("tree"),
        "Point",
        _AREA + (Field("crown_radius_m", REAL, to_say("Crown radius (m)"), low=0, high=50),) + _SEEN,
        listed=True,
        drawn_over=80,
    ),
    Kind("path", to_say("Path"), to_say("path"), "LineString", (_LABEL,) + _SEEN, listed=True, drawn_over=45),
    Kind(
        "boundary",
        to_say("Boundary (out of bounds)"),
        to_say("boundary"),
        "LineString",
        (_LABEL,) + _SEEN,
        drawn_over=65,
    ),
    Kind(
        "marker",
        to_say("Distance marker"),
        to_say("distance marker"),
        "Point",
        (
            _HOLE,
            Field("states_yd", REAL, to_say("States (yd)"), low=1, high=700),
            Field("states_m", REAL, to_say("States (m)"), low=1, high=700),
            Field(
                "states_to",
                TEXT,
                to_say("States the distance to"),
                values=(to_say("front"), to_say("middle"), to_say("back")),
            ),
            Field("pair", TEXT, to_say("Pair")),
            Field("approach", BOOLEAN, to_say("Approach is taken from here")),
        )
        + _SEEN,
        drawn_over=85,
    ),
    Kind(
        "target",
        to_say("Target"),
        to_say("target"),
        "Point",
        _AREA + (Field("approach", BOOLEAN, to_say("Approach is taken from here")),) + _SEEN,
        listed=True,
        drawn_over=88,
    ),
    Kind(
        "image",
        to_say("Image date"),
        to_say("image date"),
        "Polygon",
        (
            Field("id", TEXT, to_say("Id"), needed=True),
            Field("source", TEXT, to_say("Source")),
            Field("taken", DATE, to_say("Taken on")),
            Field("taken_utc", TEXT, to_say("Taken at (UTC, hh:mm)")),
            Field("gsd_m", REAL, to_say("Ground sample distance (m)"), low=0),
            Field("shift_e_m", REAL, to_say("Shift east (m)")),
            Field("shift_n_m", REAL, to_say("Shift north (m)")),
            Field("rmse_m", REAL, to_say("Registration error (m)"), low=0),
            Field("moved", TEXT, to_say("Turn, stretch and local shifts")),
            Field("credit", TEXT, to_say("Credit")),
            Field("licence", TEXT, to_say("Licence")),
            Field("print_allowed", BOOLEAN, to_say("May be printed"), default=False),
            Field("note", TEXT, to_say("Note")),
        ),
        drawn_over=1,
    ),
    Kind(
        "patch",
        to_say("Patch from another date"),
        to_say("patch from another date"),
        "Polygon",
        (Field("image", TEXT, to_say("Image"), needed=True), Field("note", TEXT, to_say("Note"))),
        drawn_over=2,
    ),
    Kind(
        "window",
        to_say("Window"),
        to_say("window"),
        "Polygon",
        (
            Field("hole", INTEGER, to_say("Hole"), low=1, high=99),
            Field("shows", TEXT, to_say("Shows"), values=(to_say("hole"), to_say("green"))),
            Field("up_azimuth", REAL, to_say("Azimuth that points up")),
            Field("scale", REAL, to_say("Scale 1 :")),
            Field("width_mm", REAL, to_say("Width (mm)")),
            Field("height_mm", REAL, to_say("Height (mm)")),
            Field("note", TEXT, to_say("Note")),
        ),
        drawn_over=3,
    ),
    Kind(
        "pin",
        to_say("Pin (hole location)"),
        to_say("pin"),
        "Point",
        (
            Field("event", TEXT, to_say("Event"), needed=True),
            Field("round", INTEGER, to_say("Round"), low=1, needed=True),
            _HOLE,
            Field("on_yd", REAL, to_say("On (yd)")),
            Field("off_yd", REAL, to_say("Off (yd)")),
            Field(
                "off_from",
                TEXT,
                to_say("Off from"),
                values=(to_say("left"), to_say("right"), to_say("centre")),
            ),
            Field("given", TEXT, to_say("Given by"), values=(to_say("figures"), to_say("point"))),
            Field("note", TEXT, to_say("Note")),
        ),
        drawn_over=95,
    ),
    Kind(
        "field_note",
        to_say("Note from the ground"),
        to_say("note from the ground"),
        "Point",
        (
            Field("hole", INTEGER, to_say("Hole"), low=1, high=99),
            Field("source", TEXT, to_say("Source")),
            Field("written", DATE, to_say("Written on")),
            Field("text", TEXT, to_say("Text")),
            Field("picture", TEXT, to_say("Photograph")),
            Field("looks_towards", REAL, to_say("Looks towards (° from north)"), low=0, high=360),
        ),
        drawn_over=90,
    ),
)

TABLES = (
    Kind(
        "course_info",
        to_say("Course"),
        to_say("course"),
        None,
        (
            Field("schema_version", INTEGER, to_say("Schema version"), needed=True),
            Field("name", TEXT, to_say("Name"), needed=True),
            Field("unit", TEXT, to_say("Unit of printed distances"), values=("yd", "m"), default="yd"),
            Field(
                "tee_reference",
                TEXT,
                to_say("Measured from the tee's"),
                values=(to_say("front"), to_say("centre"), to_say("back")),
                default="front",
            ),
            Field(
                "marker_point",
                TEXT,
                to_say("Distance markers state to"),
                values=(to_say("front"), to_say("middle"), to_say("back")),
                default="middle",
            ),
            Field("height_m", REAL, to_say("Mean ellipsoidal height (m)"), default=0.0),
            Field("corridor_yd", REAL, to_say("Corridor either side of play (yd)"), low=1, default=60.0),
            Field("uncertain_yd", REAL, to_say("Mark figures less sure than (yd)"), low=0, default=1.0),
            Field("marker_tolerance_yd", REAL, to_say("Markers may be out by (yd)"), low=0, default=1.0),
            Field("fairway_step_yd", REAL, to_say("Fairway widths every (yd)"), low=1, default=10.0),
            Field("layup_yd", TEXT, to_say("Lay-ups to leave (yd, with commas)"), default="100,125,150,200"),
        ),
    ),
    Kind(
        "tee_set",
        to_say("Tee set"),
        to_say("tee set"),
        None,
        (
            Field("name", TEXT, to_say("Name"), needed=True),
            Field("colour", TEXT, to_say("Colour")),
            Field("sort", INTEGER, to_say("Order")),
            Field("players", TEXT, to_say("Par lengths for"), values=(to_say("men"), to_say("women"))),
        ),
    ),
    Kind(
        "scorecard",
        to_say("Scorecard"),
        to_say("scorecard"),
        None,
        (
            Field("hole", INTEGER, to_say("Hole"), low=1, high=99, needed=True),
            Field("tee_set", TEXT, to_say("Tee set"), needed=True),
            Field("yards", REAL, to_say("Yards"), low=1, high=1000),
        ),
    ),
    Kind(
        "event",
        to_say("Event"),
        to_say("event"),
        None,
        (
            Field("name", TEXT, to_say("Name"), needed=True),
            Field("begins", DATE, to_say("Begins")),
            Field("ends", DATE, to_say("Ends")),
            Field("margin_yd", REAL, to_say("Holes from the margin (yd)"), low=0, default=4.0),
            Field("slope_pct", REAL, to_say("Steepest ground at a hole (%)"), low=0),
            Field("apart_yd", REAL, to_say("Holes from those of earlier rounds (yd)"), low=0, default=3.0),
            Field("tolerance_yd", REAL, to_say("Pins may be out by (yd)"), low=0, default=0.5),
            Field("wear_yd", REAL, to_say("Tee markers from earlier places (yd)"), low=0, default=0.0),
            Field("host", TEXT, to_say("Host")),
            Field("rules_off", TEXT, to_say("Rules on pages that do not apply (with commas)")),
            Field("note", TEXT, to_say("Note")),
        ),
    ),
    Kind(
        "event_round",
        to_say("Round of an event"),
        to_say("round of an event"),
        None,
        (
            Field("event", TEXT, to_say("Event"), needed=True),
            Field("round", INTEGER, to_say("Round"), low=1, needed=True),
            Field("played_on", DATE, to_say("Played on")),
            Field("holes", TEXT, to_say("Holes in order of play")),
            Field("start", TEXT, to_say("Start"), values=STARTS, default="one tee"),
        ),
    ),
    Kind(
        "event_flight",
        to_say("Flight of an event"),
        to_say("flight of an event"),
        None,
        (
            Field("event", TEXT, to_say("Event"), needed=True),
            Field("flight", TEXT, to_say("Flight"), needed=True),
            Field("tee_set", TEXT, to_say("Tee set")),
        ),
    ),
    Kind(
        "event_length",
        to_say("Length for a flight"),
        to_say("length for a flight"),
        None,
        (
            Field("event", TEXT, to_say("Event"), needed=True),
            Field("round", INTEGER, to_say("Round"), low=1, needed=True),
            Field("flight", TEXT, to_say("Flight"), needed=True),
            Field("hole", INTEGER, to_say("Hole"), low=1, high=99, needed=True),
            Field("yards", REAL, to_say("Yards"), low=1, high=1000),
        ),
    ),
    Kind(
        "pin_decision",
        to_say("Decision on a pin"),
        to_say("decision on a pin"),
        None,
        (
            Field("event", TEXT, to_say("Event"), needed=True),
            Field("round", INTEGER, to_say("Round"), low=1, needed=True),
            Field("hole", INTEGER, to_say("Hole"), low=1, high=99, needed=True),
            Field("decided", TEXT, to_say("Decided"), values=(to_say("theirs"), to_say("ours"))),
            Field("decided_by", TEXT, to_say("Decided by")),
            Field("decided_at", TEXT, to_say("Decided at")),
            Field("given", TEXT, to_say("The committee's figures")),
            Field("drawn", TEXT, to_say("Drawn until then")),
            Field("note", TEXT, to_say("Note")),
        ),
    ),
    Kind(
        "hole_note",
        to_say("Note on a hole"),
        to_say("note on a hole"),
        None,
        (
            Field("hole", INTEGER, to_say("Hole"), low=1, high=99, needed=True),
            Field("source", TEXT, to_say("Source")),
            Field("written", DATE, to_say("Written on")),
            Field("text", TEXT, to_say("Text")),
        ),
    ),
    Kind(
        "guide_page",
        to_say("Page of the guide"),
        to_say("page of the guide"),
        None,
        (
            Field("event", TEXT, to_say("Event")),
            Field("sort", INTEGER, to_say("Order")),
            Field("kind", TEXT, to_say("Kind"), values=tuple(PAGE_KINDS), needed=True),
            Field("title", TEXT, to_say("Title")),
            Field("text", TEXT, to_say("Text")),
            Field("source", TEXT, to_say("File of the page")),
            Field("shown", BOOLEAN, to_say("Shown"), default=True),
            Field("note", TEXT, to_say("Note")),
        ),
    ),
)

SCHEMA_VERSION = 4

BY_NAME = {kind.name: kind for kind in KINDS + TABLES}
_NOT_FEATURES = ("image", "patch", "window", "pin", "field_note")
FEATURE_KINDS = tuple(k.name for k in KINDS if k.name not in _NOT_FEATURES)
LISTED = tuple(k.name for k in KINDS if k.listed)
OUTLINED = ("green", "bunker", "tee", "penalty_area", "fairway", "apron")
"""The kinds whose margin is found in an image from one place inside, see ``imagery.outline``."""
