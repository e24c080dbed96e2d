"""The image that a guide's pictures are cut from: what the course knows of it, where it reaches."""

import os
from dataclasses import dataclass

import numpy as np
from osgeo import gdal
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsCsException,
    QgsProject,
)
from shapely.geometry import Polygon, box

from ..compat import attribution
from ..imagery.image import Image, outside, pixels_of
from ..imagery.moves import STAY
from ..imagery.quiet import quiet_gdal
from ..imagery.told import Told
from ..model.words import say
from ..store.course_file import course_path
from ..store.image_dates import dates_of
from .book_pages import credit_of
from .page_pictures import write_picture
from .rendered import image_source, make_picture


@dataclass(frozen=True)
class BookImage:
    """An image of QGIS as a guide uses it.

    source: an ImageSource. date: the course's Date of it, None where the course does not know it. credit:
    whom to name, "" unknown. reach: a shapely box in the course's CRS, None where it is everywhere or nobody
    knows. stamp: what changes when the file does.
    """

    source: object
    date: object = None
    credit: str = ""
    named: str = ""
    reach: object = None
    stamp: tuple = ()

    @property
    def name(self):
        """What a message calls it."""
        return self.date.id if self.date is not None else self.source.name

    @property
    def may_be_printed(self):
        """False only where the course says so; None where it does not know the image, or not whether."""
        return None if self.date is None else self.date.print_allowed

    @property
    def cut_anywhere(self):
        """Whether pictures can be cut in another thread than QGIS's own."""
        return self.source.provider == "gdal"

    def shows(self, plan):
        """Whether it may reach a WindowPlan's ground."""
        return self.reach is None or self.reach.intersects(Polygon(plan.grid.corners()))

    def picture(self, plan, folder, retouch=None, progress=None):
        """``(path, remarks)`` of the picture of a WindowPlan, written into a folder as a bitmap.

        The move of a date of the course is heeded. retouch, progress: as of ``rendered.make_picture``. Raises
        YardwrightError, and OutsideImage when the image shows nothing of the window.
        """
        path = os.path.join(folder, plan.name + ".bmp")
        if self.source.provider != "gdal":
            made = make_picture(self.source, plan, folder, "png", progress, retouch)
            return made.picture, made.remarks
        move = STAY if self.date is None else self.date.move
        with Image(self.source.path, self.source.crs or None, self.source.open_options, move) as image:
            pixels = pixels_of(image.raster(plan.grid, Told(progress)))
            remarks = image.remarks
        empty = 1.0 - np.count_nonzero(pixels[:, :, 3]) / pixels[:, :, 3].size
        if empty == 1.0:
            raise outside(self.source.path)
        if empty >= 0.001:
            told = say("{share} % of the picture lies outside the image.", share=f"{empty * 100:.1f}")
            remarks = [*remarks, told]
        if retouch is not None:
            with quiet_gdal(str):
                pixels = retouch(pixels)
        return write_picture(pixels, path), remarks


def book_image(layer, course, place):
    """The BookImage of a QgsRasterLayer for a Course whose file lies at ``place``; in the layer's thread."""
    source = image_source(layer)
    date = next((one for one in dates_of(course, course_path(place)) if _is(one, source)), None)
    if date is not None:
        credit, named = credit_of(date), date.credit
    else:
        credit = named = attribution(layer) or _copyright(source)
    return BookImage(
        source, date, credit.strip(), named.strip(), _reach(layer, course.crs), _stamp(source, date)
    )


def _is(date, source):
    if not date.path:
        return False
    if source.provider != "gdal":
        return date.path == source.source
    return os.path.realpath(date.path) == os.path.realpath(source.path)


def _copyright(source):
    """What a file itself says of whom to name, as composites of the course's dates do."""
    if source.provider != "gdal":
        return ""
    try:
        dataset = gdal.OpenEx(source.path, open_options=list(source.open_options))
    except RuntimeError:
        return ""
    return "" if dataset is None else dataset.GetMetadataItem("TIFFTAG_COPYRIGHT") or ""


def _reach(layer, crs):
    if layer.providerType() != "gdal" or not layer.crs().isValid():
        return None
    transform = QgsCoordinateTransform(
        layer.crs(), QgsCoordinateReferenceSystem(crs), QgsProject.instance().transformContext()
    )
    try:
        found = transform.transformBoundingBox(layer.extent())
    except QgsCsException:
        return None
    return box(found.xMinimum(), found.yMinimum(), found.xMaximum(), found.yMaximum())


def _stamp(source, date):
    # GDAL reads pixels as they are; what QGIS draws depends on the layer's style.
    style = "" if source.provider == "gdal" else source.style.xmlData()
    known = source.provider, source.source, source.crs, source.open_options, style, date and date.move
    try:
        state = os.stat(source.path)
    except OSError:
        return known
    return (*known, state.st_mtime_ns, state.st_size)
