"""What algorithms that take a committee’s figures share: the event by name, bad rows named or left out."""

from qgis.core import (
    QgsProcessingParameterBoolean,
    QgsProcessingParameterFile,
    QgsProcessingParameterFolderDestination,
    QgsProcessingParameterString,
)

from .terrain import TerrainAlgorithm


class CommitteeAlgorithm(TerrainAlgorithm):
    """Reads a CSV of figures for an event of a course."""

    def ask_event(self):
        """Add EVENT; read it with ``self.event_name``."""
        self.ask(
            QgsProcessingParameterString("EVENT", self.tr("Event")),
            "The name of the event; it is made if the course has none of this name.",
        )

    def ask_figures(self, name, title, help_text):
        """Add the committee's file, and whether its good rows are taken where it has bad ones."""
        self.ask(
            QgsProcessingParameterFile(name, title, fileFilter=self.tr("CSV (*.csv *.txt)")),
            help_text,
        )
        self.ask(
            QgsProcessingParameterBoolean(
                "TAKE_GOOD_ROWS", self.tr("Take the good rows of a file with bad ones"), False, optional=True
            ),
            "Otherwise a file with a bad row is refused, and nothing is written. The rows left out are named "
            "in the log.",
            advanced=True,
        )

    def ask_pins(self):
        """Add PINS, the committee’s hole locations."""
        self.ask_figures(
            "PINS",
            self.tr("The committee’s pins"),
            "A CSV file with the columns round, hole, on, off, from (left, right or centre) and perhaps "
            "green_depth, in the course’s unit; in metres or yards where a heading says so, as in “on m”.",
        )

    def ask_folder_or_none(self):
        """Add OUTPUT, which may be left empty."""
        self.ask(
            QgsProcessingParameterFolderDestination(
                "OUTPUT", self.tr("Folder for the results"), optional=True, createByDefault=False
            ),
            "The folder the table is written to; it is made if need be. Empty: no table.",
        )

    def refuse_or_tell(self, bad, path, parameters, context, feedback):
        """Raise YardwrightError for bad rows, ``[(line, reason)]``, or name them as left out if so wanted."""
        from ..store.committee import refuse_bad_rows

        if not self.parameterAsBool(parameters, "TAKE_GOOD_ROWS", context):
            refuse_bad_rows(bad, path)
        for line, reason in bad:
            feedback.pushWarning(self.tr("Line {}: {}; left out.").format(line, reason))
