"""``yardwright:importfeatures``: features of a course from OpenStreetMap or any vector layer or file."""

import os
from contextlib import closing

from qgis.core import (
    QgsMapLayer,
    QgsProcessingAlgorithm,
    QgsProcessingOutputNumber,
    QgsProcessingOutputString,
    QgsProcessingParameterCrs,
    QgsProcessingParameterEnum,
    QgsProcessingParameterExtent,
    QgsProcessingParameterVectorLayer,
    QgsProcessingUtils,
)

from ..model.errors import YardwrightError
from ..model.kinds import FEATURE_KINDS
from .algorithm import YardwrightAlgorithm


class SourceParameter(QgsProcessingParameterVectorLayer):
    """A layer of the project or the path of a file, whether or not QGIS can make one layer of the file.

    The plain vector layer parameter refuses whatever it cannot load itself (a drawing with several types
    of geometry, a table of surveyed points, a missing file) before we can say what is wrong with it.
    """

    def checkValueIsAcceptable(self, value, context=None):
        return bool(value)


class ImportFeatures(YardwrightAlgorithm):
    """Reads a source, checks what is in it and writes it into a course, all or nothing."""

    ID = "importfeatures"
    TITLE = "Bring features in"
    ICON = "import_features"
    SUMMARY = (
        "Brings greens, tees, bunkers, lines of play and other features into a course: from OpenStreetMap "
        "(golf=*), or from any vector layer or file whose kind you name. Each feature is given to the holes "
        "it lies on. Importing the same source again adds nothing twice."
    )
    RESULT = (
        "COUNTS: how many features of each layer came in. COUNT: how many in all. LEFT_OUT: what was left "
        "out, and why. REMARKS: what was mended or is doubtful. The log says the same."
    )
    TAGS = ("openstreetmap", "osm", "shapefile", "kml", "gpx", "dxf", "csv", "survey", "green", "bunker")

    def flags(self):
        # It reads layers of the project, which belong to the main thread.
        return super().flags() | QgsProcessingAlgorithm.Flag.FlagNoThreading

    def initAlgorithm(self, configuration=None):
        self.ask_course()
        self.ask(
            SourceParameter("SOURCE", self.tr("Source")),
            "An OpenStreetMap file (.osm, .osm.pbf, or GeoJSON with golf tags), or any vector layer or "
            "file: shapefile, KML, GPX, DXF, GeoPackage, or a CSV of surveyed points with columns lon and "
            "lat, or x and y. In a CSV, the points of a line or an area name it in a column “feature”. "
            "Fields with the names of the course’s own fields are taken over.",
        )
        self.ask(
            QgsProcessingParameterEnum(
                "KIND",
                self.tr("Kind of the features"),
                options=list(FEATURE_KINDS),
                optional=True,
                usesStaticStrings=True,
            ),
            "The course’s layer the features belong to. Needed unless the source has OpenStreetMap’s golf "
            "tags; of an OpenStreetMap file, a kind takes only its features.",
        )
        self.ask(
            QgsProcessingParameterExtent("EXTENT", self.tr("Extent"), optional=True),
            "Only features that meet this extent, such as one of two courses in the same file.",
        )
        self.ask(
            QgsProcessingParameterCrs(
                "SOURCE_CRS", self.tr("Coordinate system of the source"), optional=True
            ),
            "For a source that does not name its own, such as DXF or a CSV with x and y.",
            advanced=True,
        )
        self.addOutput(QgsProcessingOutputNumber("COUNT", self.tr("Features brought in")))
        self.addOutput(QgsProcessingOutputString("COUNTS", self.tr("Features brought in, by layer")))
        self.addOutput(QgsProcessingOutputString("LEFT_OUT", self.tr("What was left out, and why")))
        self.addOutput(QgsProcessingOutputString("REMARKS", self.tr("Remarks")))

    def work(self, parameters, context, feedback):
        from ..store.bring_in import bring_in
        from ..store.course_file import open_course

        source = self._source(parameters, context)
        with closing(open_course(self.course(parameters, context))) as layers:
            self._refuse_own_layer(source, self.course(parameters, context))
            extent = self._extent(parameters, context, layers.crs)
            found = self._read(source, parameters, context, feedback, layers.crs, extent)
            if feedback.isCanceled():
                return {}
            report = bring_in(layers, found, self.progress(feedback, 60, 100))
        if report is None:
            return {}
        lines = report.lines()
        remarks = len(lines) - len(report.remarks)  # they come last
        for line in lines[:remarks]:
            feedback.pushInfo(line)
        for line in lines[remarks:]:
            feedback.pushWarning(line)
        return {
            "COUNT": report.total,
            "COUNTS": dict(report.counts),
            "LEFT_OUT": [f"{what}: {why}" for what, why in report.left_out],
            "REMARKS": list(report.remarks),
        }

    def _source(self, parameters, context):
        """SOURCE as a layer of the project, or as text: the path of a file."""
        value = parameters.get("SOURCE")
        if isinstance(value, QgsMapLayer):
            return self._vector(value)
        text = self.parameterAsString(parameters, "SOURCE", context)
        if os.path.exists(text.split("|")[0]):
            return text
        # A layer of the project by id, name or source; never loaded here, so that a file is read by us.
        layer = QgsProcessingUtils.mapLayerFromString(text, context, False)
        return text if layer is None else self._vector(layer)

    def _refuse_own_layer(self, source, course):
        text = source.source() if isinstance(source, QgsMapLayer) else source
        if os.path.realpath(text.split("|")[0]) == os.path.realpath(course):
            raise YardwrightError(
                self.tr("The source is a layer of this very course."),
                self.tr("Choose another layer or a file as SOURCE."),
            )

    def _vector(self, layer):
        from qgis.core import QgsVectorLayer

        if isinstance(layer, QgsVectorLayer) and layer.isValid():
            return layer
        raise YardwrightError(
            self.tr("“{}” is not a vector layer that can be read.").format(layer.name()),
            self.tr("Choose a vector layer or a file as SOURCE."),
        )

    def _extent(self, parameters, context, crs):
        """EXTENT as a shapely polygon in the course's CRS, or None."""
        from shapely import wkb

        if parameters.get("EXTENT") in (None, ""):
            return None
        geometry = self.parameterAsExtentGeometry(parameters, "EXTENT", context, crs)
        if geometry.isNull() or geometry.isEmpty():
            raise YardwrightError(
                self.tr("EXTENT encloses nothing."),
                self.tr("Write it as xmin,xmax,ymin,ymax, with [EPSG:4326] after it for degrees."),
            )
        return wkb.loads(bytes(geometry.asWkb()))

    def _read(self, source, parameters, context, feedback, to_crs, extent):
        """What the source holds: a ``Found``."""
        from ..store import openstreetmap, vector_source

        kind = self.parameterAsEnumString(parameters, "KIND", context) or None
        source_crs = self.parameterAsCrs(parameters, "SOURCE_CRS", context)
        transforms = context.transformContext()
        progress = self.progress(feedback, 0, 60)
        ending = os.path.splitext(source)[1].lower() if isinstance(source, str) else ""
        if ending in openstreetmap.FILE_ENDINGS or (
            kind is None
            and ending in openstreetmap.GEOJSON_ENDINGS
            and openstreetmap.is_openstreetmap_file(source)
        ):
            return openstreetmap.read_openstreetmap(source, to_crs, kind, extent, transforms, progress)
        if kind is not None:
            return vector_source.read_vector(source, kind, to_crs, source_crs, extent, transforms, progress)
        if vector_source.has_golf_tags(source):
            rows, _, _ = vector_source.read_rows(source, None, to_crs, source_crs, transforms, progress)
            return openstreetmap.candidates_of(openstreetmap.things_of_rows(rows), to_crs, None, extent)
        raise YardwrightError(
            self.tr("The source has no golf tags, so nothing tells what its features are."),
            self.tr("Name their KIND: {}.").format(", ".join(FEATURE_KINDS)),
        )
