"""A date of the course's images, as the work on pixels takes it."""

from dataclasses import dataclass, field

from .image import Image
from .moves import STAY, Move


@dataclass(frozen=True)
class Date:
    """One date.

    id: as the course has it. path: what GDAL opens. crs: WKT or ``EPSG:n``, "" for the file's own.
    open_options: GDAL's. move: what brings its picture onto the ground, in the course's CRS. taken,
    taken_utc: ``yyyy-mm-dd`` and ``hh:mm``, "" where unknown.
    """

    id: str
    path: str
    crs: str = ""
    open_options: tuple = ()
    move: Move = field(default=STAY)
    taken: str = ""
    taken_utc: str = ""
    credit: str = ""
    licence: str = ""
    print_allowed: bool = None

    def open(self):
        """Its Image, for reading windows on the ground; a context."""
        return Image(self.path, self.crs or None, self.open_options, self.move)


@dataclass(frozen=True)
class Lost(Date):
    """A date whose picture could not be had. why: the error that says so, raised by whoever opens it."""

    why: Exception = None

    def open(self):
        raise self.why
