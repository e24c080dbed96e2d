"""The dates of a course's images: from its rows to what GDAL can open and to the moves of their pictures."""

import os
from urllib.parse import parse_qs

from osgeo import osr

from ..imagery.dates import Date
from ..imagery.moves import move_of
from .tables import safe_file_name


def dates_of(course, place):
    """The Dates of a Course whose file lies at ``place``, in the order of its rows.

    A relative source is looked for beside the course file. Sources that only QGIS can fetch keep their text
    as path, see ``is_fetched``. Raises YardwrightError where a row's move cannot be read.
    """
    folder = os.path.dirname(os.path.abspath(place))
    metre = metres_per_unit(course.crs)
    return [
        Date(
            id=image.id,
            path=path_of(image.source, folder),
            move=_move(image, metre),
            taken=image.taken,
            taken_utc=image.taken_utc,
            credit=image.credit,
            licence=image.licence,
            print_allowed=image.print_allowed,
        )
        for image in course.images
    ]


def _move(image, metre):
    return move_of(image.shift_e_m / metre, image.shift_n_m / metre, image.moved)


def path_of(source, folder):
    """What GDAL or QGIS opens of a source as the course keeps it."""
    text = str(source or "").strip()
    if not text or is_fetched(text) or "://" in text or text.startswith("/vsi"):
        return text
    return os.path.normpath(os.path.join(folder, text))


def folder_of_dates(place):
    """Where what is made of a course's dates is kept: the folder NAME_dates beside NAME.gpkg."""
    return os.path.splitext(os.path.abspath(place))[0] + "_dates"


def moved_path(place, date_id):
    """Where the virtual image of a date lies that shows it moved."""
    return os.path.join(folder_of_dates(place), f"{safe_file_name(date_id)}_moved.vrt")


def is_fetched(source):
    """Whether a source is one of tiles or of a map server, which QGIS fetches and GDAL cannot open.

    >>> is_fetched("type=xyz&url=https://tiles.example/{z}/{x}/{y}.png"), is_fetched("images/may.tif")
    (True, False)
    """
    return "url" in parse_qs(str(source))


def metres_per_unit(crs):
    """Metres in the unit of a CRS (WKT or ``EPSG:n``); 1 where it has none."""
    reference = osr.SpatialReference()
    if reference.SetFromUserInput(crs) != 0 or not reference.IsProjected():
        return 1.0
    return reference.GetLinearUnits()
