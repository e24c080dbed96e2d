"""A hole's page with its picture at 300 dpi as a layout, against the same warp painted by a QPainter alone.

Limit (the project's own): 1.5 times the bare way, which warps, draws the picture and the drawings on a page, and
knows neither layouts nor templates. A page that was painted before must cost next to nothing. Seconds are those
of the processor, all threads together, so that what else this computer does counts for nothing.
"""

import math
import statistics
import time

import numpy as np
import pytest
from osgeo import gdal
from qgis.core import QgsProject
from qgis.PyQt.QtCore import QBuffer, QByteArray, QIODevice, QMarginsF, QRectF, QSizeF
from qgis.PyQt.QtGui import QImage, QPageSize, QPainter, QPdfWriter
from yardwright.guide.book_figures import BookFigures, made_of
from yardwright.guide.expressions import add_expressions
from yardwright.guide.page_cache import PageCache, page_key
from yardwright.guide.page_layouts import PageContent, layout_of
from yardwright.guide.page_painting import FORMS, paint_page
from yardwright.guide.page_pictures import write_picture
from yardwright.guide.page_templates import built_in
from yardwright.guide.painted_sheets import paint
from yardwright.guide.sheet_parts import Line, Page, Text
from yardwright.imagery.image import Image, pixels_of
from yardwright.imagery.told import Told

from tests.bench import bench_windows
from tests.makers import straight_hole

pytestmark = [pytest.mark.bench, pytest.mark.usefixtures("qgis_app")]

SIZE = (107.95, 177.8)
PIXELS = 760, 1560
"""The picture of a hole's page: 64 x 132 mm at 300 dpi."""
FRAMES = {
    "picture": (5, 24, 64.3, 132.1),
    "overlay": (5, 24, 64.3, 132.1),
    "ladder": (70, 24, 14, 132.1),
    "green": (85, 100, 18, 40),
    "head": (5, 5, 97, 17),
    "foot": (5, 158, 97, 15),
}
RATIO, ROUNDS = 1.5, 7


def drawing(width, height):
    """As much as is on a page: 150 lines and 60 figures."""
    lines = [Line(((0, height * n / 150), (width, height * n / 150)), 0.1) for n in range(150)]
    texts = [Text(1, height * (n + 1) / 61, str(100 + n), 6.5) for n in range(60)]
    return Page(width, height, (*lines, *texts))


def bare(image, grid):
    """Warp, picture and drawings on a page."""
    target = gdal.GetDriverByName("MEM").Create("", grid.width, grid.height, 3)
    target.SetGeoTransform(grid.geotransform)
    target.SetProjection(image.GetProjection())
    # Overview 0 halves the image: the next coarser one would be coarser than the page.
    scale = 2 * bench_windows.PIXEL / math.hypot(grid.geotransform[1], grid.geotransform[4])
    hints = [f"XSCALE={scale}", f"YSCALE={scale}", "NUM_THREADS=2"]
    gdal.Warp(target, image, warpOptions=hints, resampleAlg="cubic", overviewLevel=0)
    pixels = np.ascontiguousarray(target.ReadAsArray().transpose(1, 2, 0))
    picture = QImage(pixels.tobytes(), grid.width, grid.height, 3 * grid.width, QImage.Format.Format_RGB888)
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(2540)
    paper = QSizeF(306, 504)
    writer.setPageSize(QPageSize(paper, QPageSize.Unit.Point, "", QPageSize.SizeMatchPolicy.ExactMatch))
    writer.setPageMargins(QMarginsF(0, 0, 0, 0))
    painter = QPainter(writer)
    painter.setRenderHint(QPainter.RenderHint.LosslessImageRendering, True)
    left, top, width, height = (100 * value for value in FRAMES["picture"])
    painter.drawImage(QRectF(left, top, width, height), picture)
    for name in ("overlay", "ladder", "green"):
        left, top, width, height = FRAMES[name]
        painter.save()
        painter.translate(100 * left, 100 * top)
        paint(drawing(width, height), painter, 2540)
        painter.restore()
    painter.end()
    return bytes(data)


@pytest.fixture(scope="module")
def image(tmp_path_factory):
    path = str(tmp_path_factory.mktemp("image") / "large.tif")
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(bench_windows, "SIDE", 6000)
        bench_windows.make_image(path)
        yield path


def test_a_page_costs_little_more_than_its_warp_and_its_painting(image, tmp_path):
    opened = gdal.Open(image)
    take_away = add_expressions()
    template = built_in("hole", SIZE, FRAMES)
    ours, theirs, again = [], [], []
    cache = PageCache(str(tmp_path / "pages"))
    with made_of(BookFigures(straight_hole())):
        for number in range(ROUNDS):
            grid = bench_windows.grid_of(30.0 + number, *PIXELS, pixel=0.3)
            start = time.process_time()
            with Image(image) as source:
                pixels = pixels_of(source.raster(grid, Told(None)))
            path = write_picture(pixels, str(tmp_path / f"hole{number}.bmp"))
            content = PageContent(
                {"hole_number": 1},
                {"picture": path},
                dict.fromkeys(("overlay", "ladder", "green"), drawing),
                about=number,
            )
            key = page_key(template, content, FORMS["pages"])

            def make(file, content=content):
                paint_page(layout_of(QgsProject.instance(), template, content), file, "pages")

            cache.page(key, make)
            ours.append(time.process_time() - start)
            start = time.process_time()
            cache.page(page_key(template, content, FORMS["pages"]), make)
            again.append(time.process_time() - start)
            start = time.process_time()
            bare(opened, grid)
            theirs.append(time.process_time() - start)
    take_away()
    del opened
    mine, bare_way, hit = map(statistics.median, (ours, theirs, again))
    print(
        f"page {mine:.3f} s, bare {bare_way:.3f} s, ratio {mine / bare_way:.2f}; known again {1000 * hit:.2f} ms"
    )
    assert mine / bare_way <= RATIO
    assert hit < 0.01
