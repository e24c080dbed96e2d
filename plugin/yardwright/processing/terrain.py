"""What the algorithms that take a terrain share: the raster layer TERRAIN, opened as heights."""

from contextlib import nullcontext

from qgis.core import QgsProcessingException, QgsProcessingParameterRasterLayer

from ..model.errors import YardwrightError
from .algorithm import YardwrightAlgorithm


class TerrainAlgorithm(YardwrightAlgorithm):
    """Has an optional parameter TERRAIN."""

    def ask_terrain(self, help_text):
        """Add TERRAIN; open it with ``self.terrain``."""
        self.ask(QgsProcessingParameterRasterLayer("TERRAIN", self.tr("Terrain"), optional=True), help_text)

    def prepareAlgorithm(self, parameters, context, feedback):
        """Read the layer TERRAIN on the main thread, to which it belongs."""
        self._terrain = None
        if parameters.get("TERRAIN") not in (None, ""):
            from ..guide.rendered import image_source

            layer = self.parameterAsRasterLayer(parameters, "TERRAIN", context)
            if layer is None or not layer.isValid():
                raise QgsProcessingException(self.invalidRasterError(parameters, "TERRAIN"))
            self._terrain = image_source(layer)
        return True

    def terrain(self):
        """A context that gives the imagery.terrain.Terrain, None where none is asked for.

        Raises YardwrightError for a layer that holds no heights.
        """
        source = self._terrain
        if source is None:
            return nullcontext()
        from ..imagery.terrain import Terrain

        if source.provider != "gdal":
            what = self.tr("The layer “{}” is a picture from a server and holds no heights.")
            raise YardwrightError(
                what.format(source.name),
                self.tr("Choose a raster file with one band of heights, such as a digital terrain model."),
            )
        return Terrain(source.path, source.crs or None, source.open_options)
