"""A window's picture out of any raster layer of QGIS.

Files that GDAL reads are cut with GDAL; what only QGIS can fetch, such as tiles and map services, is drawn by
its renderer. A layer is described on the main thread (``image_source``) and read wherever the work is done.
"""

import math
import os
import tempfile
from contextlib import contextmanager
from dataclasses import dataclass, replace

import numpy as np
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCubicRasterResampler,
    QgsMapLayerStyle,
    QgsMapRendererCustomPainterJob,
    QgsMapSettings,
    QgsProviderRegistry,
    QgsRasterLayer,
    QgsRectangle,
)
from qgis.PyQt.QtCore import QCoreApplication, QEventLoop, QSize, Qt, QThread, QThreadPool, QTimer
from qgis.PyQt.QtGui import QColor, QImage, QPainter

from ..imagery.moves import STAY
from ..imagery.window import cut, write
from ..measure.frame import EARTH_RADIUS
from ..model.errors import Cancelled, YardwrightError
from ..model.words import say
from ..store.image_dates import moved_path
from ..store.reading import crs_text
from ..store.sources import names_of

_LOOK_EVERY_MS = 100


@dataclass(frozen=True)
class ImageSource:
    """A raster layer as plain values, to be opened again in any thread.

    provider, source: as QGIS has them. crs: ``EPSG:n`` or WKT, empty when the layer has none.
    style: QgsMapLayerStyle. path, open_options: what GDAL opens, for the provider ``gdal``.
    """

    name: str
    provider: str
    source: str
    crs: str
    style: object
    path: str = ""
    open_options: tuple = ()


def image_source(layer):
    """The ImageSource of a QgsRasterLayer; call it on the thread the layer belongs to."""
    style = QgsMapLayerStyle()
    style.readFromLayer(layer)
    crs = crs_text(layer.crs()) if layer.crs().isValid() else ""
    made = ImageSource(layer.name(), layer.providerType(), layer.source(), crs, style)
    if made.provider != "gdal":
        return made
    parts = QgsProviderRegistry.instance().decodeUri("gdal", made.source)
    plain = "|" not in made.source or parts.get("layerName")
    path = made.source.split("|")[0] if plain else parts.get("path") or made.source
    return ImageSource(
        made.name, "gdal", made.source, crs, style, path, tuple(parts.get("openOptions") or ())
    )


def as_date(image, dates, place):
    """``(ImageSource, Date)`` of an image that shows one of a course's dates, else the image and None.

    place: where the course lies. An image that is the virtual one of a moved date becomes that date's own
    file, which is then to be moved: a picture is sampled once.
    """
    names = names_of(image.source) | (names_of(image.path) if image.path else set())
    for date in dates:
        if date.path and names & names_of(moved_path(place, date.id)):
            return replace(image, source=date.path, path=date.path, open_options=date.open_options), date
        if date.path and names & names_of(date.path):
            return image, date
    return image, None


def make_picture(image, plan, folder, form="png", progress=None, retouch=None, move=STAY):
    """Write the picture of a WindowPlan from an ImageSource into a folder; an ``imagery.window.Cut``.

    form: a key of ``imagery.window.FORMS``. progress: called with (done, total); False stops with Cancelled.
    retouch: what changes the pixels before they are written, see ``guide.retouching``, or None. move: the
    Move that brings the image onto the ground, in the CRS of the plan's grid. Raises YardwrightError, and
    OutsideImage when the image shows nothing of the window.
    """
    if image.provider == "gdal":
        crs = image.crs or None
        options = {"source_crs": crs, "open_options": image.open_options, "move": move}
        return cut(
            image.path, plan.grid, folder, plan.name, form, **options, progress=progress, retouch=retouch
        )
    if not move.stays():
        return _moved_picture(image, plan, folder, form, progress, retouch, move)
    pixels = render([raster_layer(image)], plan, progress)
    return write(retouch(pixels) if retouch else pixels, plan.grid, folder, plan.name, form)


def _moved_picture(image, plan, folder, form, progress, retouch, move):
    """The picture of what only QGIS can fetch and lies off: fetched as it lies, then cut as it is moved."""
    from .fetched import around, fetch

    g = plan.grid.geotransform
    pixel = math.sqrt(abs(g[1] * g[5] - g[2] * g[4]))
    bounds = around(move.back(plan.grid.corners()), move, pixel)
    with tempfile.TemporaryDirectory() as aside:
        path = os.path.join(aside, "fetched.tif")
        fetch(image, bounds, plan.grid.crs, pixel, path, progress)
        return cut(path, plan.grid, folder, plan.name, form, retouch=retouch, move=move)


def raster_layer(image):
    """The QgsRasterLayer of an ImageSource, drawn smoothly; YardwrightError when it cannot be opened."""
    layer = QgsRasterLayer(image.source, image.name, image.provider)
    if not layer.isValid():
        raise YardwrightError(
            say("The layer “{layer}” cannot be opened.", layer=image.name),
            say("Check that its server answers and try again."),
        )
    if image.style is not None:
        image.style.writeToLayer(layer)
    if image.crs:
        layer.setCrs(QgsCoordinateReferenceSystem(image.crs))
    if layer.resampleFilter() is not None:
        layer.resampleFilter().setZoomedInResampler(QgsCubicRasterResampler())
        layer.resampleFilter().setZoomedOutResampler(QgsCubicRasterResampler())
        layer.resampleFilter().setMaxOversampling(8.0)
    return layer


def render(layers, plan, progress=None):
    """The picture of a WindowPlan drawn from QGIS layers; (height, width, 4) of uint8, RGB and opacity.

    It is drawn in the hole's own plane, where the window is an upright rectangle turned by one angle.
    progress: called with (done, total) while it is drawn; when it returns False, Cancelled is raised.
    Raises YardwrightError when a layer reports that it could not be drawn.
    """
    return drawn(_settings(layers, plan), progress)


def drawn(settings, progress=None):
    """What QgsMapSettings draw: (height, width, 4) of uint8, RGB and opacity. progress, errors: as of
    ``render``."""
    size = settings.outputSize()
    image = QImage(size.width(), size.height(), QImage.Format.Format_ARGB32_Premultiplied)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    # A turned picture is drawn with neighbouring pixels mixed, not with jagged ones.
    painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform, True)
    try:
        job = QgsMapRendererCustomPainterJob(settings, painter)
        _wait_for(job, progress)
        errors = [f"{error.message}" for error in job.errors()]
    finally:
        painter.end()
    if errors:
        raise YardwrightError(
            say("QGIS could not draw the image: {reasons}.", reasons="; ".join(dict.fromkeys(errors))),
            say("Check the connection to its server and try again."),
        )
    return _pixels(image)


def frame_crs(frame):
    """The plane of a HoleFrame as a QgsCoordinateReferenceSystem."""
    scale = 1.0 + frame.height_m / EARTH_RADIUS
    return QgsCoordinateReferenceSystem.fromProj(
        f"+proj=tmerc +lat_0={frame.latitude!r} +lon_0={frame.longitude!r} +k={scale!r} "
        "+x_0=0 +y_0=0 +datum=WGS84 +units=m +no_defs"
    )


def _settings(layers, plan):
    (x, y), (width, height) = plan.centre, plan.ground
    settings = QgsMapSettings()
    settings.setLayers(layers)
    settings.setDestinationCrs(frame_crs(plan.frame))
    settings.setOutputDpi(plan.panel.dpi)
    settings.setOutputSize(QSize(plan.grid.width, plan.grid.height))
    settings.setExtent(QgsRectangle(x - width / 2, y - height / 2, x + width / 2, y + height / 2))
    settings.setRotation(-math.degrees(math.atan2(plan.up[0], plan.up[1])))
    settings.setBackgroundColor(QColor(0, 0, 0, 0))
    return settings


def _wait_for(job, progress):
    """Start a render job and wait in an event loop, so that its network replies and a cancel get through."""
    loop, timer = QEventLoop(), QTimer()
    stopped = []

    def look():
        if progress is not None and not stopped and progress(0, 1) is False:
            stopped.append(True)
            job.cancelWithoutBlocking()

    job.finished.connect(loop.quit)
    timer.timeout.connect(look)
    timer.start(_LOOK_EVERY_MS)
    with _making_room():
        job.start()
        if job.isActive():
            loop.exec()
    timer.stop()
    if stopped:
        raise Cancelled


@contextmanager
def _making_room():
    """Give the thread's place away while it waits. QGIS draws in the same few threads as it runs its tasks
    in, one a core: on two cores a task and what it waits for would leave none to draw the map with."""
    if QThread.currentThread() == QCoreApplication.instance().thread():
        yield
        return
    threads = QThreadPool.globalInstance()
    threads.releaseThread()
    try:
        yield
    finally:
        threads.reserveThread()


def _pixels(image):
    plain = image.convertToFormat(QImage.Format.Format_RGBA8888)
    data = plain.constBits()
    data.setsize(plain.sizeInBytes())
    rows = np.frombuffer(data, dtype=np.uint8).reshape(plain.height(), plain.bytesPerLine())
    return rows[:, : plain.width() * 4].reshape(plain.height(), plain.width(), 4).copy()
