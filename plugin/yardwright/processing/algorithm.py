"""What all Yardwright algorithms share; nothing heavy is imported here (QGIS loads this at its start)."""

import os

from qgis.core import (
    QgsProcessingAlgorithm,
    QgsProcessingException,
    QgsProcessingOutputFile,
    QgsProcessingParameterDefinition,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFile,
    QgsProcessingParameterFolderDestination,
    QgsProcessingParameterNumber,
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication

from .. import how_to_get, missing_libraries
from ..model.errors import YardwrightError
from ..resources import icon, icon_path

FORMS = ("csv", "xlsx", "gpkg")
"""The forms a table can be written in."""


class YardwrightAlgorithm(QgsProcessingAlgorithm):
    """Base of the algorithms.

    A subclass sets the class attributes below, adds its parameters in ``initAlgorithm`` with
    ``self.ask(parameter, help)`` and does its job in ``work(parameters, context, feedback)``, which
    returns the results. A YardwrightError raised there reaches the user as its two sentences.

    ID: the name after ``yardwright:``.  TITLE: what the toolbox shows.  ICON: a file of resources/icons.
    SUMMARY: what it does, a sentence or two.  RESULT: what comes out of it.  TAGS: more words to find it by.
    """

    ID = ""
    TITLE = ""
    ICON = "yardwright"
    SUMMARY = ""
    RESULT = ""
    TAGS = ()

    def tr(self, text):
        """``text`` in the user's language."""
        return QCoreApplication.translate("Yardwright", text)

    def createInstance(self):
        return type(self)()

    def name(self):
        return self.ID

    def displayName(self):
        return self.tr(self.TITLE)

    def group(self):
        return ""

    def groupId(self):
        return ""

    def icon(self):
        return icon(self.ICON)

    def svgIconPath(self):
        return icon_path(self.ICON)

    def tags(self):
        return ["golf", "yardage", *self.TAGS]

    def shortDescription(self):
        return self.tr(self.SUMMARY)

    def shortHelpString(self):
        """The summary, each parameter with its help, and what comes out, as the dialog shows it."""
        asked = [
            f"<p><b>{parameter.description()}</b> ({parameter.name()}): {parameter.help()}</p>"
            for parameter in self.parameterDefinitions()
            if parameter.help()
        ]
        result = [f"<h3>{self.tr('Result')}</h3><p>{self.tr(self.RESULT)}</p>"] if self.RESULT else []
        return "".join([f"<p>{self.tr(self.SUMMARY)}</p>", *asked, *result])

    def canExecute(self):
        missing = missing_libraries()
        return (not missing, " ".join(how_to_get(missing)) if missing else "")

    def ask(self, parameter, help_text, advanced=False):
        """Add ``parameter`` with its help; ``advanced`` ones are folded away in the dialog."""
        parameter.setHelp(self.tr(help_text))
        if isinstance(parameter, QgsProcessingParameterNumber):
            parameter.setMetadata({"widget_wrapper": {"decimals": 2}})
        if advanced:
            flags = parameter.flags() | QgsProcessingParameterDefinition.Flag.FlagAdvanced
            parameter.setFlags(flags)
        self.addParameter(parameter)

    def ask_course(self):
        """Add COURSE, an existing course.

        QGIS refuses a text that the filter does not match, and its own filter asks for a dot: ``(*)`` lets
        ``postgres:CONNECTION:SCHEMA`` pass.
        """
        files = self.tr("Course file (*.gpkg);;All files (*)")
        self.ask(
            QgsProcessingParameterFile("COURSE", self.tr("Course"), fileFilter=files),
            "The course file (.gpkg), or postgres:CONNECTION:SCHEMA for a course kept in a database.",
        )

    def ask_holes(self):
        """Add HOLES, optional; read it with ``self.holes``."""
        self.ask(
            QgsProcessingParameterString("HOLES", self.tr("Holes"), optional=True),
            "Only these holes, such as 1,4,7-9. Empty: all holes.",
        )

    def ask_tolerance(self, help_text):
        """Add TOLERANCE in yards, optional; read it with ``self.tolerance``."""
        self.ask(
            QgsProcessingParameterNumber(
                "TOLERANCE",
                self.tr("Tolerance (yards)"),
                QgsProcessingParameterNumber.Type.Double,
                minValue=0.0,
                optional=True,
            ),
            help_text,
        )

    def ask_folder(self):
        """Add OUTPUT, the folder results go to; read it with ``self.folder``."""
        self.ask(
            QgsProcessingParameterFolderDestination("OUTPUT", self.tr("Folder for the results")),
            "The folder the results are written to; it is made if need be. "
            "Results of an earlier run are replaced.",
        )

    def ask_forms(self):
        """Add FORMS, optional; read it with ``self.forms``."""
        self.ask(
            QgsProcessingParameterEnum(
                "FORMS",
                self.tr("Forms of the tables"),
                options=list(FORMS),
                allowMultiple=True,
                defaultValue=["csv"],
                optional=True,
                usesStaticStrings=True,
            ),
            "csv (UTF-8), xlsx and gpkg: one or several.",
            advanced=True,
        )

    def add_table_outputs(self, names):
        """Add the path of each table as an output, named after the table in capitals."""
        for name in names:
            self.addOutput(QgsProcessingOutputFile(name.upper(), self.tr("Table {}").format(name)))

    def course(self, parameters, context):
        """Where the course lies, as COURSE says."""
        return self.parameterAsString(parameters, "COURSE", context).strip()

    def holes(self, parameters, context):
        """The hole numbers asked for, or None for all."""
        from ..model.numbers import parse_holes

        return parse_holes(self.parameterAsString(parameters, "HOLES", context)) or None

    def tolerance(self, parameters, context):
        """TOLERANCE in yards, None where it is left empty."""
        if parameters.get("TOLERANCE") is None:
            return None
        return self.parameterAsDouble(parameters, "TOLERANCE", context)

    def folder(self, parameters, context):
        """The absolute path of the folder OUTPUT, made if it was not there."""
        path = os.path.abspath(self.parameterAsFileOutput(parameters, "OUTPUT", context))
        try:
            os.makedirs(path, exist_ok=True)
        except OSError as error:
            raise YardwrightError(
                self.tr("The folder “{}” cannot be made ({}).").format(path, error.strerror),
                self.tr("Choose a folder you may write to as OUTPUT."),
            ) from error
        return path

    def forms(self, parameters, context):
        """The forms of tables asked for, ``("csv",)`` when none."""
        return tuple(self.parameterAsEnumStrings(parameters, "FORMS", context)) or ("csv",)

    def event_name(self, parameters, context):
        """The name of the event. Raises YardwrightError for an empty one."""
        name = self.parameterAsString(parameters, "EVENT", context).strip()
        if not name:
            raise YardwrightError(self.tr("No event is named."), self.tr("Say its name as EVENT."))
        return name

    def progress(self, feedback, first=0.0, last=100.0):
        """``progress(done, total)`` that moves the bar from ``first`` to ``last`` per cent.

        It returns False once the user has cancelled.
        """

        def tell(done, total):
            feedback.setProgress(first + (last - first) * done / max(total, 1))
            return not feedback.isCanceled()

        return tell

    def tell_remarks(self, feedback, problems, tables):
        """Write to the log what is doubtful: ``problems`` first, then the remarks of the rows, each once.

        ``tables`` is what ``write_tables`` takes: ``{name: (row type, rows)}``.
        """
        said = dict.fromkeys(problems)
        for name, (_, rows) in tables.items():
            for row in rows:
                if row.remark:
                    place = self.tr("hole {}").format(row.hole) if row.hole else ""
                    said[", ".join(filter(None, (name, place))) + ": " + row.remark] = None
        for text in said:
            feedback.pushWarning(text)

    def processAlgorithm(self, parameters, context, feedback):
        try:
            return self.work(parameters, context, feedback)
        except YardwrightError as error:
            raise QgsProcessingException(str(error)) from error

    def table_results(self, folder, paths):
        """The results of an algorithm that wrote tables: OUTPUT, and each table by its name in capitals.

        Of a table in several forms, the first that was asked for counts.
        """
        results = {"OUTPUT": folder}
        for path in paths:
            name = os.path.splitext(os.path.basename(path))[0].upper()
            results.setdefault(name, path)
        return results
