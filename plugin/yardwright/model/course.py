"""A course as plain frozen values: what ``store`` reads and ``measure`` works on."""

from dataclasses import dataclass, field
from types import MappingProxyType


@dataclass(frozen=True)
class Settings:
    """How a course is measured. Distances in yards are so by name, whatever the unit of output.

    unit: ``yd`` or ``m``, the unit of every table and printed figure.
    tee_reference: ``front``, ``centre`` or ``back`` of the tee polygon.
    marker_point: what a distance marker states its distance to when it does not say.
    height_m: mean ellipsoidal height of the course, metres.
    corridor_yd: how far either side of the line of play a feature still counts.
    uncertain_yd: a figure whose plus-minus exceeds this is remarked on.
    marker_tolerance_yd: a marker further out than this is ``off``.
    fairway_step_yd: the fairway's width is measured at every so many yards of the landing zones.
    layup_yd: the distances to the green's middle that a lay-up is to leave.
    """

    unit: str = "yd"
    tee_reference: str = "front"
    marker_point: str = "middle"
    height_m: float = 0.0
    corridor_yd: float = 60.0
    uncertain_yd: float = 1.0
    marker_tolerance_yd: float = 1.0
    fairway_step_yd: float = 10.0
    layup_yd: tuple = (100.0, 125.0, 150.0, 200.0)


@dataclass(frozen=True)
class Feature:
    """One drawn thing.

    geometry: a shapely geometry in the course's CRS, x east, y north, never empty, always valid.
    holes: the hole numbers it was given to, empty when none was named.
    attributes: the fields that only its kind has (``tee_set``, ``states_yd``, ...); a field without a
    value is absent.
    remark: what had to be doubted of its values when it was read; mended: what had to be mended of its
    geometry.
    """

    kind: str
    fid: int
    geometry: object
    holes: tuple = ()
    label: str = ""
    seen_in: str = ""
    view: str = "clear"
    attributes: MappingProxyType = field(default_factory=lambda: MappingProxyType({}))
    remark: str = ""
    mended: str = ""

    def get(self, name, default=None):
        """The value of a field that only this kind has, ``default`` where it has none."""
        return self.attributes.get(name, default)


@dataclass(frozen=True)
class Hole:
    """One hole: what its row says, and the line as drawn (None: not drawn yet), in the course's CRS. remark,
    mended: as of a Feature."""

    number: int
    line: object = None
    fid: int = None
    name: str = ""
    par: int = None
    stroke_index: int = None
    approach_yd: float = None
    seen_in: str = ""
    view: str = "clear"
    description: str = ""
    remark: str = ""
    mended: str = ""


@dataclass(frozen=True)
class TeeSet:
    """A set of tees played together. ``players``: ``men``, ``women`` or None (either par table)."""

    name: str
    colour: str = ""
    sort: int = 0
    players: str = None


@dataclass(frozen=True)
class ImageDate:
    """One image the course was drawn from: metres for gsd and rmse, None where unknown.

    source: as the course keeps it, a path relative to the course file or what QGIS calls a source. taken: ISO
    text; taken_utc: ``hh:mm``. shift_e_m, shift_n_m: by how many metres east and north, on the grid of the
    course's CRS, the picture must be moved to lie on the ground; moved: what else moves it, see
    ``imagery.moves``. print_allowed: None where nobody has said.
    """

    id: str
    gsd_m: float = None
    rmse_m: float = None
    source: str = ""
    taken: str = ""
    taken_utc: str = ""
    shift_e_m: float = 0.0
    shift_n_m: float = 0.0
    moved: str = ""
    credit: str = ""
    licence: str = ""
    print_allowed: bool = None


@dataclass(frozen=True)
class Course:
    """Everything known of a course at one moment.

    crs: anything pyproj reads (``EPSG:32630`` or WKT), the CRS of every geometry.
    holes: in order of number, one a number.
    scorecard: ``{(hole, tee set): yards}``.
    problems: texts on what could not be read or is doubtful and belongs to no single figure; those on one row
    are ``remarks.Problem``.
    """

    name: str
    crs: str
    holes: tuple = ()
    features: tuple = ()
    tee_sets: tuple = ()
    images: tuple = ()
    scorecard: MappingProxyType = field(default_factory=lambda: MappingProxyType({}))
    settings: Settings = Settings()
    problems: tuple = ()

    def hole(self, number):
        """The hole of that number, or None."""
        for hole in self.holes:
            if hole.number == number:
                return hole
        return None
