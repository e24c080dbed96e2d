"""A window's picture drawn by QGIS: for images that only QGIS can fetch, such as tiles and map services."""

import math

import numpy as np
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsMapRendererCustomPainterJob,
    QgsMapSettings,
    QgsRectangle,
)
from qgis.PyQt.QtCore import QEventLoop, QSize, Qt, QTimer
from qgis.PyQt.QtGui import QColor, QImage, QPainter

from ..imagery.window import Cancelled
from ..measure.frame import EARTH_RADIUS
from ..model.errors import YardwrightError

_LOOK_EVERY_MS = 100


def render(layers, plan, progress=None):
    """The picture of a WindowPlan drawn from QGIS layers; (height, width, 4) of uint8, RGB and opacity.

    It is drawn in the hole's own plane, where the window is an upright rectangle turned by one angle.
    progress: called with (done, total) while it is drawn; when it returns False, Cancelled is raised.
    Raises YardwrightError when a layer reports that it could not be drawn.
    """
    image = QImage(plan.grid.width, plan.grid.height, QImage.Format.Format_ARGB32_Premultiplied)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    try:
        job = QgsMapRendererCustomPainterJob(_settings(layers, plan), painter)
        _wait_for(job, progress)
        errors = [f"{error.message}" for error in job.errors()]
    finally:
        painter.end()
    if errors:
        raise YardwrightError(
            f"QGIS could not draw the image: {'; '.join(dict.fromkeys(errors))}.",
            "Check the connection to its server and try again.",
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
    settings.setFlag(QgsMapSettings.Flag.Antialiasing, True)
    settings.setFlag(QgsMapSettings.Flag.HighQualityImageTransforms, True)
    settings.setFlag(QgsMapSettings.Flag.UseAdvancedEffects, True)
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
    job.start()
    if job.isActive():
        loop.exec()
    timer.stop()
    if stopped:
        raise Cancelled


def _pixels(image):
    plain = image.convertToFormat(QImage.Format.Format_RGBA8888)
    data = plain.constBits()
    data.setsize(plain.sizeInBytes())
    rows = np.frombuffer(data, dtype=np.uint8).reshape(plain.height(), plain.bytesPerLine())
    return rows[:, : plain.width() * 4].reshape(plain.height(), plain.width(), 4).copy()
