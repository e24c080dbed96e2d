"""Files that others give for the guide: images and PDFs of sponsors, each shown whole on a page."""

import os
from dataclasses import dataclass

from qgis.PyQt.QtCore import QSize
from qgis.PyQt.QtGui import QImageReader

from ..model.errors import YardwrightError
from ..model.words import and_list, say
from .pdf_objects import PdfFile

MOST_PAGES = 8
"""Pages of a sponsor's PDF that a guide takes (our own rule)."""
_DPI = 300.0
_MOST_SIDE = 40_000
_DRAWN = (".svg",)


@dataclass(frozen=True)
class Given:
    """A file as it can be used. path: absolute. pages: of a PDF, 0 for an image. problem: why it cannot be
    used, "" where it can. remark: what is left out of it."""

    path: str
    pages: int = 0
    problem: str = ""
    remark: str = ""


def given_file(source, folder):
    """The Given of a GuidePage's source, relative to the course's folder of the guide or absolute."""
    path = os.path.abspath(os.path.join(folder, source.strip()))
    if not os.path.isfile(path):
        return Given(path, problem=say("the file “{file}” is not there", file=source))
    try:
        with open(path, "rb") as file:
            is_pdf = b"%PDF-" in file.read(1024)
        return _pdf(path, source) if is_pdf else _image(path, source)
    except (OSError, YardwrightError) as error:
        reason = error.what if isinstance(error, YardwrightError) else (error.strerror or str(error))
        return Given(path, problem=say("“{file}”: {reason}", file=source, reason=reason.rstrip(".")))


def _pdf(path, source):
    with PdfFile(path) as file:
        count = file.page_count()
    if count <= MOST_PAGES:
        return Given(path, count)
    remark = say(
        "of “{file}”’s {count} pages the first {most} are taken", file=source, count=count, most=MOST_PAGES
    )
    return Given(path, MOST_PAGES, remark=remark)


def _image(path, source):
    if path.lower().endswith(_DRAWN):
        return Given(path)
    reader = QImageReader(path)
    size = reader.size()
    if not reader.canRead() or not size.isValid() or size.isEmpty():
        kinds = and_list(["PDF", "SVG", "PNG", "JPEG", "TIFF"])
        return Given(path, problem=say("“{file}” is none of {kinds}, or damaged", file=source, kinds=kinds))
    if max(size.width(), size.height()) > _MOST_SIDE:
        text = say(
            "“{file}” is {wide} x {high} pixels large", file=source, wide=size.width(), high=size.height()
        )
        return Given(path, problem=text)
    return Given(path)


def no_larger(path, box, folder):
    """The path of an image with no more pixels than a box of (width, height) mm needs at 300 dots per inch:
    the image itself, or a smaller one made in ``folder``. Raises YardwrightError when it cannot be read."""
    if path.lower().endswith(_DRAWN):
        return path
    reader = QImageReader(path)
    reader.setAutoTransform(True)
    size = reader.size()
    needed = [side / 25.4 * _DPI for side in box]
    share = min(needed[0] / max(size.width(), 1), needed[1] / max(size.height(), 1))
    if share > 0.75:
        return path
    reader.setScaledSize(QSize(max(round(size.width() * share), 1), max(round(size.height() * share), 1)))
    image = reader.read()
    made = os.path.join(folder, "sponsor.png")
    if image.isNull() or not image.save(made, "PNG"):
        raise YardwrightError(
            say("“{path}” cannot be read: {reason}.", path=path, reason=reader.errorString()),
            say("Save it anew as PNG or JPEG."),
        )
    return made
