"""``yardwright:outlinefeature``: the margin of a thing on the course, found from one place inside it."""

from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsFeature,
    QgsFeatureSink,
    QgsGeometry,
    QgsProcessing,
    QgsProcessingException,
    QgsProcessingOutputNumber,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterPoint,
    QgsProcessingParameterRasterLayer,
    QgsVectorLayer,
    QgsWkbTypes,
)

from ..model.kinds import OUTLINED
from .algorithm import YardwrightAlgorithm


class OutlineFeature(YardwrightAlgorithm):
    """Looks at the image about a place and hands back the polygon that is set off there."""

    ID = "outlinefeature"
    TITLE = "Outline a feature"
    ICON = "outline"
    SUMMARY = (
        "Finds the margin of a green, a bunker, a tee, a pond or a fairway in an image, from one place "
        "inside it: smooth, finer than a pixel, with few corners."
    )
    RESULT = (
        "A layer with one polygon in the CRS of the image: its kind, area in square metres (area_m2), how "
        "plainly its margin is seen, 0 to 1 (sharpness), the share of its margin that had to be guessed "
        "(guessed), and what is doubtful of it (remark). Where no margin can be seen it says why and makes "
        "none."
    )
    TAGS = ("digitise", "trace", "margin", "image", "green", "bunker", "polygon")

    def initAlgorithm(self, configuration=None):
        self.ask(
            QgsProcessingParameterRasterLayer("IMAGE", self.tr("Image")),
            "Any raster layer that shows the ground in colours or greys, also tiles and map services. Their "
            "servers are asked for one window round the place.",
        )
        self.ask(
            QgsProcessingParameterPoint("POINT", self.tr("A place inside")),
            "A place well inside of what is to be outlined: x,y [EPSG:n]. Without a CRS it is that of the "
            "project, and where there is no project that of the image.",
        )
        self.ask(
            QgsProcessingParameterEnum(
                "KIND", self.tr("Kind"), options=list(OUTLINED), usesStaticStrings=True
            ),
            "What it is: how large such a thing is, and how sharp its margin, tells it from others.",
        )
        self.ask(
            QgsProcessingParameterFeatureSink(
                "OUTPUT", self.tr("Outline"), QgsProcessing.SourceType.TypeVectorPolygon
            ),
            "The layer with the polygon.",
        )
        self.addOutput(QgsProcessingOutputNumber("SHARPNESS", self.tr("How plainly the margin is seen")))

    def prepareAlgorithm(self, parameters, context, feedback):
        """Read the layer IMAGE on the main thread, to which it belongs."""
        from ..guide.rendered import image_source

        layer = self.parameterAsRasterLayer(parameters, "IMAGE", context)
        if layer is None or not layer.isValid():
            raise QgsProcessingException(self.invalidRasterError(parameters, "IMAGE"))
        self._image, self._crs = image_source(layer), layer.crs()
        return True

    def work(self, parameters, context, feedback):
        from ..guide.outlining import trace
        from ..imagery.moves import STAY
        from ..model.errors import Cancelled

        kind = self.parameterAsEnumString(parameters, "KIND", context)
        place = self.parameterAsPoint(parameters, "POINT", context, self._crs)
        try:
            found = trace(
                [(self._image, STAY)],
                (place.x(), place.y()),
                self._image.crs,
                kind,
                self.progress(feedback),
            )
        except Cancelled:
            return {}
        shape = found.polygon()
        geometry = QgsGeometry()
        geometry.fromWkb(shape.wkb)
        plane = QgsCoordinateReferenceSystem()
        plane.createFromUserInput(found.crs)
        geometry.transform(QgsCoordinateTransform(plane, self._crs, context.transformContext()))
        fields = _fields()
        sink, name = self.parameterAsSink(
            parameters, "OUTPUT", context, fields, QgsWkbTypes.Type.Polygon, self._crs
        )
        if sink is None:
            raise QgsProcessingException(self.invalidSinkError(parameters, "OUTPUT"))
        feature = QgsFeature(fields)
        feature.setGeometry(geometry)
        feature.setAttributes(
            [kind, shape.area * found.metre**2, found.sharpness, found.share_doubtful(), found.remark or None]
        )
        sink.addFeature(feature, QgsFeatureSink.Flag.FastInsert)
        if found.remark:
            feedback.pushWarning(found.remark)
        return {"OUTPUT": name, "SHARPNESS": found.sharpness}


def _fields():
    """Told by a text: the class that names the types of fields differs from QGIS 3.22 to 4."""
    told = "&".join(f"field={name}:{holds}" for name, holds in _HOLDS.items())
    return QgsVectorLayer(f"Polygon?{told}", "", "memory").fields()


_HOLDS = {
    "kind": "string",
    "area_m2": "double",
    "sharpness": "double",
    "guessed": "double",
    "remark": "string",
}
