"""``yardwright:startcourse``: a new course file."""

from qgis.core import (
    QgsProcessing,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterCrs,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFile,
    QgsProcessingParameterFileDestination,
    QgsProcessingParameterString,
)

from .algorithm import YardwrightAlgorithm

UNITS = ("yd", "m")


class StartCourse(YardwrightAlgorithm):
    """Makes a course file with its layers, forms and symbols, and reads the scorecard in."""

    ID = "startcourse"
    TITLE = "Start a course"
    ICON = "new_course"
    SUMMARY = (
        "Makes a course file: a GeoPackage with a layer for each kind of thing on a course, its forms and "
        "its symbols. With a scorecard it holds the holes, their pars and the tee sets from the start."
    )
    RESULT = "The course file. Add it to a project, or bring features into it with “Bring features in”."
    TAGS = ("new", "create", "scorecard", "geopackage")

    def initAlgorithm(self, configuration=None):
        self.ask(
            QgsProcessingParameterFileDestination(
                "COURSE", self.tr("Course file"), fileFilter=self.tr("Course file (*.gpkg)")
            ),
            "The new course file (.gpkg). A file that exists is never overwritten.",
        )
        self.ask(QgsProcessingParameterString("NAME", self.tr("Name")), "The name of the course.")
        self.ask(
            QgsProcessingParameterCrs("CRS", self.tr("Coordinate reference system")),
            "The system all features are stored in, as EPSG:n; best the UTM zone of the course. "
            "Distances do not depend on it.",
        )
        self.ask(
            QgsProcessingParameterFile(
                "SCORECARD", self.tr("Scorecard"), fileFilter=self.tr("CSV (*.csv *.txt)"), optional=True
            ),
            "A CSV file with the columns hole, par, stroke_index, name and one for each tee set, in yards; "
            "in metres where the heading is the tee set’s name followed by m. Empty: the course starts "
            "without holes.",
        )
        self.ask(
            QgsProcessingParameterBoolean(
                "TAKE_GOOD_ROWS",
                self.tr("Take the good rows of a scorecard with bad ones"),
                False,
                optional=True,
            ),
            "Otherwise a scorecard with a bad row is refused. The rows left out are named in the log.",
            advanced=True,
        )
        self.ask(
            QgsProcessingParameterEnum(
                "UNIT",
                self.tr("Unit of tables and printed figures"),
                options=list(UNITS),
                defaultValue="yd",
                optional=True,
                usesStaticStrings=True,
            ),
            "yd or m; it can be changed later.",
            advanced=True,
        )

    def checkParameterValues(self, parameters, context):
        if parameters.get("COURSE") == QgsProcessing.TEMPORARY_OUTPUT:
            # QGIS would throw such a file away when it is closed, and a day's drawing with it.
            what = self.tr("No course file is named.")
            return False, f"{what} {self.tr('Say in which file the course is to be kept.')}"
        return super().checkParameterValues(parameters, context)

    def work(self, parameters, context, feedback):
        from ..store.course_file import create_course

        path = self.parameterAsFileOutput(parameters, "COURSE", context)
        left_out = create_course(
            path,
            self.parameterAsString(parameters, "NAME", context),
            self._crs(parameters, context),
            scorecard=self.parameterAsFile(parameters, "SCORECARD", context) or None,
            take_good_rows=self.parameterAsBool(parameters, "TAKE_GOOD_ROWS", context),
            unit=self.parameterAsEnumString(parameters, "UNIT", context) or "yd",
        )
        for line, reason in left_out:
            feedback.pushWarning(self.tr("Scorecard, line {}: {}; left out.").format(line, reason))
        feedback.pushInfo(self.tr("Made the course file {}").format(path))
        return {"COURSE": path}

    def _crs(self, parameters, context):
        """CRS as ``EPSG:n`` where QGIS knows it so, else the text given, for the message."""
        crs = self.parameterAsCrs(parameters, "CRS", context)
        return crs.authid() if crs.isValid() else str(parameters.get("CRS") or "")
