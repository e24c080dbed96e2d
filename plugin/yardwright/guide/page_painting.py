"""A page's layout painted as a PDF of its own: text stays text, pictures keep their pixels.

QGIS paints a layout in its main thread only, and a page in well under a second: whoever paints many lets the
window live between two pages.
"""

import math
import re
from contextlib import contextmanager
from dataclasses import dataclass

from qgis.core import QgsApplication, QgsLayoutExporter, QgsLayoutItemLabel
from qgis.PyQt.QtCore import QBuffer, QByteArray, QIODevice, QMarginsF, QRectF, QSizeF, QThread
from qgis.PyQt.QtGui import QPageLayout, QPageSize, QPainter, QPdfWriter

from ..compat import font_of_label, layout_flag, text_as_text
from ..model.errors import YardwrightError
from ..model.words import say
from ..store.files import written_beside
from .expressions import worked_out
from .lettering import MM_PER_POINT
from .page_design import BLEED_MM
from .page_templates import items_of, page_size
from .text_room import words_broken

_DPI = 360
"""Dots per inch of what QGIS itself makes into pixels; a multiple of 72, so that a page of whole points has
whole dots and nothing is stretched. Pictures keep the pixels they have."""

_NO_DAY = b"/CreationDate (D:20000101000000Z)"


@dataclass(frozen=True)
class PageForm:
    """How pages are painted. bleed_mm: drawn beyond the trimmed page on all sides; lossless: pictures keep
    every pixel, rather than being JPEG of a high quality."""

    bleed_mm: float = 0.0
    lossless: bool = False


FORMS = {
    "screen": PageForm(),
    "pages": PageForm(BLEED_MM, True),
    "booklet": PageForm(BLEED_MM, True),
}


def paint_page(layout, path, form):
    """Write a layout's first page as a PDF of one page at ``path``; the same page gives the same bytes.

    form: a PageForm or a key of FORMS. The page is painted from its top left corner, true to scale, on paper
    of whole points, for Qt knows no others: it is up to a point larger than the page with its bleed. A
    ``pdf_join.Leaf`` with bleed_mm and size_mm cuts it to size. Raises YardwrightError when the file cannot
    be written; what was there stays then.
    """
    data = painted(layout, form)
    with written_beside(path) as draft:
        try:
            with open(draft, "wb") as file:
                file.write(data)
        except OSError as error:
            raise YardwrightError(
                say("“{path}” could not be written ({reason}).", path=path, reason=error.strerror),
                say("Check that there is room on the disk and try again."),
            ) from error


def painted(layout, form):
    """The same as bytes."""
    if QThread.currentThread() != QgsApplication.instance().thread():
        raise ValueError("layouts are painted in the main thread only")
    form = FORMS[form] if isinstance(form, str) else form
    points = [_points(side + 2 * form.bleed_mm) for side in page_size(layout)]
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(_DPI)
    writer.setCreator("Yardwright")
    paper = QPageSize(QSizeF(*points), QPageSize.Unit.Point, "", QPageSize.SizeMatchPolicy.ExactMatch)
    writer.setPageLayout(QPageLayout(paper, QPageLayout.Orientation.Portrait, QMarginsF(0, 0, 0, 0)))
    _ready(layout, form)
    painter = QPainter()
    try:
        if not painter.begin(writer):
            raise ValueError("Qt paints no PDF")
        painter.setRenderHint(QPainter.RenderHint.LosslessImageRendering, form.lossless)
        corner = -form.bleed_mm
        region = QRectF(corner, corner, *(side * MM_PER_POINT for side in points))
        with _printable(layout):
            QgsLayoutExporter(layout).renderRegion(painter, region)
    finally:
        # The painter goes before what it paints on, or Qt crashes.
        painter.end()
        del painter
    del writer
    buffer.close()
    return _without_day(bytes(data))


@contextmanager
def _printable(layout):
    """While a block runs, labels leave out what cannot be worked out, where QGIS would print the expression,
    and break words that are wider than their box."""
    changed = []
    for label in items_of(layout, QgsLayoutItemLabel):
        text, errors = worked_out(label.text(), label.createExpressionContext())
        font = font_of_label(label)
        width = label.rect().width() - 2 * label.marginX()
        broken = text
        if label.mode() == QgsLayoutItemLabel.Mode.ModeFont:
            broken = words_broken(text, width, font.pointSizeF(), font.bold())
        if errors or broken != text:
            changed.append((label, label.text()))
            label.setText(broken)
    try:
        yield
    finally:
        for label, text in changed:
            label.setText(text)


def _ready(layout, form):
    context = layout.renderContext()
    context.setDpi(_DPI)
    context.setTextRenderFormat(text_as_text())
    context.setFlag(layout_flag("Antialiasing"), True)
    context.setFlag(layout_flag("LosslessImageRendering"), form.lossless)


def _points(mm):
    """Whole points that a length needs."""
    return math.ceil(mm / MM_PER_POINT - 1e-4)


def _without_day(data):
    """The bytes of a PDF of Qt with no day of making, every object where it was."""
    return re.sub(rb"/CreationDate \(D:[^)]*\)", lambda found: _NO_DAY.ljust(len(found[0])), data, count=1)
