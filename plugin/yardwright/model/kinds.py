"""The kinds of things on a course, declared as data: one entry is one layer of the course file.

Everything that differs from kind to kind (geometry, fields, allowed values, what the kind means to a
measurement) stands here, so that no other module lists kinds.
"""

from dataclasses import dataclass

TEXT, INTEGER, REAL, BOOLEAN, DATE = "text", "integer", "real", "boolean", "date"

VIEWS = ("clear", "partly hidden", "from another source")


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
    """One layer: its name, title, geometry (``Point``, ``LineString``, ``Polygon`` or None) and fields.

    ``listed``: appears in the table of distances. ``hazard``: crossing it can be a forced carry.
    ``drawn_over``: layers with a higher figure lie above those with a lower one.
    """

    name: str
    title: str
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
    Field("note", TEXT, "Note"),
    Field("seen_in", TEXT, "Seen in image"),
    Field("view", TEXT, "View", values=VIEWS, default="clear"),
    Field("origin", TEXT, "Brought in from"),
)
_HOLE = Field("hole", INTEGER, "Hole", low=1, high=99, needed=True)
_HOLES = Field("holes", TEXT, "Holes")
_LABEL = Field("label", TEXT, "Label")
_AREA = (_HOLES, _LABEL)

KINDS = (
    Kind(
        "hole",
        "Line of play",
        "LineString",
        (
            Field("number", INTEGER, "Number", low=1, high=99, needed=True),
            Field("name", TEXT, "Name"),
            Field("par", INTEGER, "Par", low=3, high=6),
            Field("stroke_index", INTEGER, "Stroke index", low=1, high=36),
            Field("approach_yd", REAL, "Approach from (yd before the green)", low=1, high=400),
            Field("description", TEXT, "Description"),
        )
        + _SEEN,
        drawn_over=70,
    ),
    Kind("tee", "Tee", "Polygon", (_HOLES, Field("tee_set", TEXT, "Tee set")) + _SEEN, drawn_over=60),
    Kind(
        "plate",
        "Permanent tee marker",
        "Point",
        (_HOLE, Field("tee_set", TEXT, "Tee set", needed=True)) + _SEEN,
        drawn_over=90,
    ),
    Kind("green", "Green", "Polygon", _AREA + _SEEN, drawn_over=50),
    Kind("apron", "Apron", "Polygon", _AREA + _SEEN, drawn_over=40),
    Kind("fairway", "Fairway", "Polygon", _AREA + _SEEN, listed=True, drawn_over=20),
    Kind("bunker", "Bunker", "Polygon", _AREA + _SEEN, listed=True, hazard=True, drawn_over=55),
    Kind("rough", "Rough", "Polygon", _AREA + _SEEN, drawn_over=10),
    Kind(
        "penalty_area",
        "Penalty area",
        "Polygon",
        _AREA
        + (
            Field("stakes", TEXT, "Stakes", values=("yellow", "red")),
            Field("water", BOOLEAN, "Water", default=True),
        )
        + _SEEN,
        listed=True,
        hazard=True,
        drawn_over=30,
    ),
    Kind("trees", "Trees", "Polygon", _AREA + _SEEN, listed=True, hazard=True, drawn_over=62),
    Kind(
        "tree",
        "Tree",
        "Point",
        _AREA + (Field("crown_radius_m", REAL, "Crown radius (m)", low=0, high=50),) + _SEEN,
        listed=True,
        drawn_over=80,
    ),
    Kind("path", "Path", "LineString", (_LABEL,) + _SEEN, listed=True, drawn_over=45),
    Kind("boundary", "Boundary (out of bounds)", "LineString", (_LABEL,) + _SEEN, drawn_over=65),
    Kind(
        "marker",
        "Distance marker",
        "Point",
        (
            _HOLE,
            Field("states_yd", REAL, "States (yd)", low=1, high=700),
            Field("states_m", REAL, "States (m)", low=1, high=700),
            Field("states_to", TEXT, "States the distance to", values=("front", "middle", "back")),
            Field("pair", TEXT, "Pair"),
            Field("approach", BOOLEAN, "Approach is taken from here"),
        )
        + _SEEN,
        drawn_over=85,
    ),
    Kind(
        "target",
        "Target",
        "Point",
        _AREA + (Field("approach", BOOLEAN, "Approach is taken from here"),) + _SEEN,
        listed=True,
        drawn_over=88,
    ),
    Kind(
        "image",
        "Image date",
        "Polygon",
        (
            Field("id", TEXT, "Id", needed=True),
            Field("source", TEXT, "Source"),
            Field("taken", DATE, "Taken on"),
            Field("gsd_m", REAL, "Ground sample distance (m)", low=0),
            Field("shift_e_m", REAL, "Shift east (m)"),
            Field("shift_n_m", REAL, "Shift north (m)"),
            Field("rmse_m", REAL, "Registration error (m)", low=0),
            Field("credit", TEXT, "Credit"),
            Field("licence", TEXT, "Licence"),
            Field("print_allowed", BOOLEAN, "May be printed", default=False),
            Field("note", TEXT, "Note"),
        ),
        drawn_over=1,
    ),
    Kind(
        "patch",
        "Patch from another date",
        "Polygon",
        (Field("image", TEXT, "Image", needed=True), Field("note", TEXT, "Note")),
        drawn_over=2,
    ),
    Kind(
        "window",
        "Window",
        "Polygon",
        (
            Field("hole", INTEGER, "Hole", low=1, high=99),
            Field("shows", TEXT, "Shows", values=("hole", "green")),
            Field("up_azimuth", REAL, "Azimuth that points up"),
            Field("scale", REAL, "Scale 1 :"),
            Field("width_mm", REAL, "Width (mm)"),
            Field("height_mm", REAL, "Height (mm)"),
            Field("note", TEXT, "Note"),
        ),
        drawn_over=3,
    ),
    Kind(
        "pin",
        "Pin (hole location)",
        "Point",
        (
            Field("event", TEXT, "Event", needed=True),
            Field("round", INTEGER, "Round", low=1, needed=True),
            _HOLE,
            Field("on_yd", REAL, "On (yd)"),
            Field("off_yd", REAL, "Off (yd)"),
            Field("off_from", TEXT, "Off from", values=("left", "right", "centre")),
            Field("given", TEXT, "Given by", values=("figures", "point")),
            Field("note", TEXT, "Note"),
        ),
        drawn_over=95,
    ),
)

TABLES = (
    Kind(
        "course_info",
        "Course",
        None,
        (
            Field("schema_version", INTEGER, "Schema version", needed=True),
            Field("name", TEXT, "Name", needed=True),
            Field("unit", TEXT, "Unit of printed distances", values=("yd", "m"), default="yd"),
            Field(
                "tee_reference",
                TEXT,
                "Measured from the tee's",
                values=("front", "centre", "back"),
                default="front",
            ),
            Field(
                "marker_point",
                TEXT,
                "Distance markers state to",
                values=("front", "middle", "back"),
                default="middle",
            ),
            Field("height_m", REAL, "Mean ellipsoidal height (m)", default=0.0),
            Field("corridor_yd", REAL, "Corridor either side of play (yd)", low=1, default=60.0),
            Field("uncertain_yd", REAL, "Mark figures less sure than (yd)", low=0, default=1.0),
            Field("marker_tolerance_yd", REAL, "Markers may be out by (yd)", low=0, default=1.0),
            Field("fairway_step_yd", REAL, "Fairway widths every (yd)", low=1, default=10.0),
            Field("layup_yd", TEXT, "Lay-ups to leave (yd, with commas)", default="100,125,150,200"),
        ),
    ),
    Kind(
        "tee_set",
        "Tee set",
        None,
        (
            Field("name", TEXT, "Name", needed=True),
            Field("colour", TEXT, "Colour"),
            Field("sort", INTEGER, "Order"),
            Field("players", TEXT, "Par lengths for", values=("men", "women")),
        ),
    ),
    Kind(
        "scorecard",
        "Scorecard",
        None,
        (
            Field("hole", INTEGER, "Hole", low=1, high=99, needed=True),
            Field("tee_set", TEXT, "Tee set", needed=True),
            Field("yards", REAL, "Yards", low=1, high=1000),
        ),
    ),
    Kind("event", "Event", None, (Field("name", TEXT, "Name", needed=True),)),
    Kind(
        "event_round",
        "Round of an event",
        None,
        (
            Field("event", TEXT, "Event", needed=True),
            Field("round", INTEGER, "Round", low=1, needed=True),
            Field("played_on", DATE, "Played on"),
        ),
    ),
    Kind(
        "event_length",
        "Length for a flight",
        None,
        (
            Field("event", TEXT, "Event", needed=True),
            Field("round", INTEGER, "Round", low=1, needed=True),
            Field("flight", TEXT, "Flight", needed=True),
            Field("hole", INTEGER, "Hole", low=1, high=99, needed=True),
            Field("yards", REAL, "Yards", low=1, high=1000),
        ),
    ),
    Kind(
        "hole_note",
        "Note on a hole",
        None,
        (
            Field("hole", INTEGER, "Hole", low=1, high=99, needed=True),
            Field("source", TEXT, "Source"),
            Field("written", DATE, "Written on"),
            Field("text", TEXT, "Text"),
        ),
    ),
)

SCHEMA_VERSION = 1

BY_NAME = {kind.name: kind for kind in KINDS + TABLES}
FEATURE_KINDS = tuple(k.name for k in KINDS if k.name not in ("image", "patch", "window", "pin"))
LISTED = tuple(k.name for k in KINDS if k.listed)
