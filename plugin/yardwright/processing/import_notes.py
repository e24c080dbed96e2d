"""``yardwright:importnotes``: notes and photographs from the ground, from phones and cameras."""

from contextlib import closing

from qgis.core import (
    QgsProcessingOutputNumber,
    QgsProcessingParameterFile,
    QgsProcessingParameterString,
)

from ..model.errors import YardwrightError
from .algorithm import YardwrightAlgorithm


class SourceOfNotes(QgsProcessingParameterFile):
    """A file or a folder: the plain parameter takes one of the two."""

    def checkValueIsAcceptable(self, value, context=None):
        return bool(value)


class ImportNotes(YardwrightAlgorithm):
    """Reads waypoints, points with texts and photographs into the layer of notes."""

    ID = "importnotes"
    TITLE = "Bring notes in"
    ICON = "import_notes"
    SUMMARY = (
        "Brings notes from the ground into a course: waypoints of a GPX file, points of GeoJSON or KML with "
        "a text, and photographs that know where they were taken. Each is given to the hole it lies nearest "
        "to. The same notes brought in again are not doubled."
    )
    RESULT = (
        "ADDED: how many notes came in. KNOWN: how many were there already. The log names what was left out."
    )
    TAGS = ("gpx", "geojson", "waypoint", "photograph", "exif", "note", "description")

    def initAlgorithm(self, configuration=None):
        self.ask_course()
        self.ask(
            SourceOfNotes("SOURCE", self.tr("File or folder")),
            "A GPX, GeoJSON or KML file, a JPEG with a position, or a folder of these. Photographs stay "
            "where they are.",
        )
        self.ask(
            QgsProcessingParameterString("FROM", self.tr("Who wrote them"), "own visit", optional=True),
            "Such as course, professional, player or own visit.",
        )
        self.addOutput(QgsProcessingOutputNumber("ADDED", self.tr("Notes brought in")))
        self.addOutput(QgsProcessingOutputNumber("KNOWN", self.tr("Notes that were there already")))

    def work(self, parameters, context, feedback):
        from ..store.course_file import open_course
        from ..store.field_notes import bring_in_notes, course_crs, notes_in
        from ..store.reading import read_course

        source = self.parameterAsString(parameters, "SOURCE", context).strip()
        if not source:
            raise YardwrightError(self.tr("No source is named."), self.tr("Choose a file or a folder."))
        with closing(open_course(self.course(parameters, context))) as layers:
            notes, left_out = notes_in(source, course_crs(layers))
            for name, reason in left_out:
                feedback.pushWarning(self.tr("{}: {}; left out.").format(name, reason))
            if feedback.isCanceled():
                return {}
            course = read_course(layers)
            who = self.parameterAsString(parameters, "FROM", context).strip() or "own visit"
            added, known = bring_in_notes(layers, course, notes, who)
        feedback.pushInfo(self.tr("{} notes brought in, {} were there already").format(added, known))
        return {"ADDED": added, "KNOWN": known}
