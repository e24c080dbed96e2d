"""The files kept beside a course for its image dates: masks corrected by hand, pictures moved."""

import os

from .tables import safe_file_name


def file_of_date(place, date, what):
    """Where a file of a date lies, for the course file at ``place``.

    >>> file_of_date("courses/Links.gpkg", "2024-10-09", "hidden.tif").replace(os.sep, "/")
    'courses/Links_dates/2024-10-09_hidden.tif'
    """
    return os.path.join(f"{os.path.splitext(place)[0]}_dates", f"{safe_file_name(date)}_{what}")
