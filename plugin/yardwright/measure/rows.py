"""The rows of the result tables: what each figure is called and what kind of figure it is.

Distances are metres inside a row; ``store.tables`` and the dialogs turn them into the course's unit.
The metadata of each field says what it holds, so that a table knows its columns without a second list.
"""

from dataclasses import dataclass, field, fields


def _distance(default=None):
    """A length in metres; its column ends in ``_yd`` or ``_m``."""
    return field(default=default, metadata={"holds": "distance"})


def _area():
    """An area in square metres; its column ends in ``_sqyd`` or ``_sqm``."""
    return field(default=None, metadata={"holds": "area"})


def _metres():
    """A length that stays in metres whatever the course's unit; the name itself ends in ``_m``."""
    return field(default=None, metadata={"holds": "metres"})


def _azimuth():
    """Degrees clockwise from true north, 0 <= azimuth < 360."""
    return field(default=None, metadata={"holds": "azimuth"})


def _angle():
    """Degrees, not a direction."""
    return field(default=None, metadata={"holds": "angle"})


def _coordinate():
    """A coordinate in the course's CRS."""
    return field(default=None, metadata={"holds": "coordinate"})


def _percent():
    """A slope in percent."""
    return field(default=None, metadata={"holds": "percent"})


def _text(default=""):
    return field(default=default, metadata={"holds": "text"})


def _count():
    return field(default=None, metadata={"holds": "count"})


@dataclass(frozen=True)
class LengthRow:
    """A hole from one tee set, to the green's middle."""

    hole: int = _count()
    tee_set: str = _text()
    length: float = _distance()
    plus_minus: float = _distance()
    scorecard: float = _distance()
    difference: float = _distance()
    par: int = _count()
    par_check: str = _text()
    remark: str = _text()


@dataclass(frozen=True)
class GreenRow:
    """A hole's green along its line of approach."""

    hole: int = _count()
    approach_from: str = _text()
    approach_azimuth: float = _azimuth()
    depth: float = _distance()
    width: float = _distance()
    overall_depth: float = _distance()
    overall_width: float = _distance()
    area: float = _area()
    chords: int = _count()
    plus_minus: float = _distance()
    remark: str = _text()


@dataclass(frozen=True)
class DistanceRow:
    """One feature from one tee set; the green itself is a row of kind ``green``."""

    hole: int = _count()
    tee_set: str = _text()
    kind: str = _text()
    feature_id: int = _count()
    label: str = _text()
    side: str = _text()
    reach: float = _distance()
    clear: float = _distance()
    enter: float = _distance()
    leave: float = _distance()
    aside: float = _distance()
    station_near: float = _distance()
    station_far: float = _distance()
    short_of_green: float = _distance()
    forced_carry: str = _text()
    middle: float = _distance()
    plus_minus: float = _distance()
    remark: str = _text()


@dataclass(frozen=True)
class FairwayRow:
    """The fairway's width at one station of a tee set's line; first, last and run-out stand in each row."""

    hole: int = _count()
    tee_set: str = _text()
    station: float = _distance()
    width: float = _distance()
    left: float = _distance()
    right: float = _distance()
    first: float = _distance()
    last: float = _distance()
    run_out: float = _distance()
    plus_minus: float = _distance()
    remark: str = _text()


@dataclass(frozen=True)
class DoglegRow:
    """One turn point that lies ahead of a tee set."""

    hole: int = _count()
    tee_set: str = _text()
    turn: int = _count()
    turn_station: float = _distance()
    turn_angle: float = _angle()
    turn_side: str = _text()
    to_green: float = _distance()
    plus_minus: float = _distance()
    remark: str = _text()


@dataclass(frozen=True)
class LayupRow:
    """Where to stop so that a chosen distance to the green's middle remains."""

    hole: int = _count()
    tee_set: str = _text()
    remaining: float = _distance()
    station: float = _distance()
    plus_minus: float = _distance()
    remark: str = _text()


@dataclass(frozen=True)
class MarkerRow:
    """A distance marker checked; a pair of posts has a further row for the middle between them."""

    hole: int = _count()
    marker_id: str = _text()
    states: float = _distance()
    states_to: str = _text()
    measured: float = _distance()
    error: float = _distance()
    verdict: str = _text()
    proposed_x: float = _coordinate()
    proposed_y: float = _coordinate()
    move_m: float = _metres()
    move_azimuth: float = _azimuth()
    plus_minus: float = _distance()
    remark: str = _text()


@dataclass(frozen=True)
class PinRow:
    """A pin: what it was given by, and where it lies. ``across`` is positive to the right of the approach;
    ``to_margin`` runs to the nearest point of the green's margin, ``back`` along the approach to the back.
    ``slope_turn``: where the ground falls to, clockwise from the approach; 0 is to the green's back."""

    event: str = _text()
    round: int = _count()
    hole: int = _count()
    on: float = _distance()
    off: float = _distance()
    off_from: str = _text()
    across: float = _distance()
    to_margin: float = _distance()
    back: float = _distance()
    x: float = _coordinate()
    y: float = _coordinate()
    slope_pct: float = _percent()
    slope_azimuth: float = _azimuth()
    slope_turn: float = _angle()
    remark: str = _text()


@dataclass(frozen=True)
class PinAuditRow:
    """The committee's figures of a pin against the one that is drawn. verdict: ``same``, ``apart``,
    ``missing`` (given, not drawn), ``extra`` (drawn, not given) or ``impossible``."""

    event: str = _text()
    round: int = _count()
    hole: int = _count()
    given_on: float = _distance()
    given_off: float = _distance()
    given_off_from: str = _text()
    drawn_on: float = _distance()
    drawn_off: float = _distance()
    apart: float = _distance()
    verdict: str = _text()
    given_green_depth: float = _distance()
    green_depth: float = _distance()
    remark: str = _text()


@dataclass(frozen=True)
class TeeSettingRow:
    """Where the markers of a flight stand. ``from_front``: metres back from the tee's front; ``behind``: tee
    that is left behind them; ``from_plate``: behind the permanent marker, negative ahead of it; ``rise_m``:
    how much higher than they the green's middle lies, metres. verdict: ``fits``, ``nearest`` (the nearest
    length the tee allows) or ``impossible``."""

    event: str = _text()
    round: int = _count()
    flight: str = _text()
    hole: int = _count()
    asked: float = _distance()
    got: float = _distance()
    x: float = _coordinate()
    y: float = _coordinate()
    from_front: float = _distance()
    behind: float = _distance()
    verdict: str = _text()
    from_plate: float = _distance()
    rise_m: float = _metres()
    remark: str = _text()


@dataclass(frozen=True)
class HeightRow:
    """How high a hole's places lie from one tee set, metres whatever the course's unit. ``green_height_m``
    is at the green's middle, ``rise_m`` from tee to green, below zero downhill. ``plays``: the length and
    the rise together. ``turn_heights_m``: at the turn points ahead, in the order of play."""

    hole: int = _count()
    tee_set: str = _text()
    tee_height_m: float = _metres()
    green_height_m: float = _metres()
    rise_m: float = _metres()
    length: float = _distance()
    plays: float = _distance()
    turn_heights_m: str = _text()
    approach_height_m: float = _metres()
    front_height_m: float = _metres()
    back_height_m: float = _metres()
    remark: str = _text()


@dataclass(frozen=True)
class Measures:
    """All that was measured, a tuple of rows a table; ``problems`` belong to no single figure. ``heights`` is
    empty where no terrain was given."""

    lengths: tuple = ()
    greens: tuple = ()
    distances: tuple = ()
    fairways: tuple = ()
    doglegs: tuple = ()
    layups: tuple = ()
    markers: tuple = ()
    heights: tuple = ()
    problems: tuple = ()


def told(*remarks):
    """Remarks as one text for the remark column, empty ones left out.

    >>> told("hidden by a tree", "", "uncertain: ± 1.8 yd")
    'hidden by a tree; uncertain: ± 1.8 yd'
    """
    return "; ".join(filter(None, remarks))


_SUFFIX = {"distance": {"yd": "_yd", "m": "_m"}, "area": {"yd": "_sqyd", "m": "_sqm"}}


def columns(row_type, unit):
    """``(attribute, column name, what it holds)`` of each column of a table, in order.

    >>> columns(LayupRow, "yd")[2]
    ('remaining', 'remaining_yd', 'distance')
    """
    return tuple(
        (f.name, f.name + _SUFFIX.get(f.metadata["holds"], {}).get(unit, ""), f.metadata["holds"])
        for f in fields(row_type)
    )
