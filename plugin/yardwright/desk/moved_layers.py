"""The raster layers of registered dates shown where they lie on the ground, on the fly.

A layer that shows a moved date takes the date's virtual image as its source, and its own file again when the
move is taken back. Style, name, CRS and properties stay. QGIS imports the desk at its start: what is heavy is
imported in the functions.
"""

import os

from qgis.core import Qgis, QgsDataProvider, QgsProject
from qgis.PyQt.QtCore import QObject, QTimer

from ..compat import holds_opacity
from ..store.sources import names_of
from .words import tell, told_in, tr


class MovedLayers(QObject):
    """Keeps the raster layers of the course in hand where their dates lie."""

    def __init__(self, in_hand, parent=None):
        super().__init__(parent)
        self.in_hand = in_hand
        self._seen = None
        self._told = set()
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(30)
        self._soon.timeout.connect(self._refresh)
        self._connections = [
            (signal, signal.connect(self._soon.start)) for signal in (in_hand.course_changed, in_hand.edited)
        ]

    def let_go(self):
        """Listen to nothing any more; layers stay as they are, for the project may be saved so."""
        self._soon.stop()
        while self._connections:
            signal, connection = self._connections.pop()
            signal.disconnect(connection)

    def _refresh(self):
        with told_in(self.in_hand.iface.messageBar()):
            self.refresh()

    def refresh(self):
        """Give each raster layer of a date the source it is to have now."""
        images = self.in_hand.layer("image")
        if self.in_hand.group is None or images is None or not images.isValid():
            return
        from .dates import rasters_of

        rasters = rasters_of(self.in_hand.project)
        seen = _looked_at(images, rasters)
        if seen == self._seen:
            return
        for date, layers in _dates_with_layers(self.in_hand, rasters):
            self._show(date, layers)
        self._seen = _looked_at(images, rasters)

    def _show(self, date, layers):
        from ..model.errors import YardwrightError
        from ..store.image_dates import is_fetched
        from ..store.registering import write_moved_image
        from .dates import OWN_SOURCE

        if is_fetched(date.path):
            if not date.move.stays() and (self.in_hand.place, date.id) not in self._told:
                self._told.add((self.in_hand.place, date.id))
                self._tell_web(date)
            return
        crs, place = _crs_of(self.in_hand), self.in_hand.place
        if date.move.stays():
            for layer in layers:
                back = layer.customProperty(OWN_SOURCE)
                if back:
                    _take(layer, str(back))
                    layer.removeCustomProperty(OWN_SOURCE)
            write_moved_image(date, crs, place)
            return
        try:
            path = write_moved_image(date, crs, place)
        except YardwrightError as error:
            tell(self.in_hand.iface.messageBar(), error.what, error.remedy)
            return
        written = os.stat(path).st_mtime_ns
        for layer in layers:
            if not layer.customProperty(OWN_SOURCE):
                layer.setCustomProperty(OWN_SOURCE, layer.source())
            if not _same_file(layer.source(), path) or not layer.isValid() or self._older(layer, written):
                _take(layer, path)
            layer.setProperty("yardwright_taken", written)

    def _older(self, layer, written):
        """Whether the virtual image was written again since a layer took it as its source."""
        return layer.property("yardwright_taken") not in (None, written)

    def _tell_web(self, date):
        tell(
            self.in_hand.iface.messageBar(),
            tr("The date {} comes from the web and cannot be moved on the map.").format(date.id),
            tr("Pictures cut from it are; draw from a date that lies right on the map."),
            Qgis.MessageLevel.Info,
        )


def _looked_at(images, rasters):
    """What decides on the sources, to be compared: the rows of the dates, and the rasters."""
    names = ("id", "source", "shift_e_m", "shift_n_m", "moved")
    rows = [tuple(str(row[name]) for name in names) for row in images.getFeatures()]
    return images.id(), rows, [(layer.id(), layer.source(), layer.isValid()) for layer in rasters]


def _dates_with_layers(in_hand, rasters):
    """``(Date, [raster layers that show it])`` of each date of the course in hand."""
    from ..model.course import Course
    from ..store.image_dates import dates_of
    from ..store.reading import read_images
    from .dates import known_as

    course = Course("", _crs_of(in_hand), images=read_images(in_hand.layers()))
    known = [(layer, known_as(layer)[2]) for layer in rasters]
    for date in dates_of(course, in_hand.place):
        names = names_of(date.path)
        yield date, [layer for layer, its in known if names & its]


def _crs_of(in_hand):
    from ..store.reading import crs_text

    return crs_text(in_hand.layer("image").crs())


def _same_file(source, path):
    return os.path.normcase(os.path.abspath(source)) == os.path.normcase(os.path.abspath(path))


def _take(layer, source):
    """Give a layer another source, and all else as it was."""
    crs, name = layer.crs(), layer.name()
    options = QgsDataProvider.ProviderOptions()
    options.transformContext = QgsProject.instance().transformContext()
    layer.setDataSource(source, name, layer.providerType(), options, False)
    if crs.isValid() and layer.crs() != crs:
        layer.setCrs(crs)
    _show_opacity(layer)
    layer.triggerRepaint()


def _show_opacity(layer):
    """Let the band of opacity that a turned image has be seen as such, and no more once it is gone."""
    renderer, provider = layer.renderer(), layer.dataProvider()
    if renderer is None or provider is None:
        return
    clear = [band for band in range(1, layer.bandCount() + 1) if holds_opacity(provider, band)]
    if renderer.alphaBand() > layer.bandCount():
        renderer.setAlphaBand(-1)
    elif clear and renderer.alphaBand() < 1:
        renderer.setAlphaBand(clear[0])
