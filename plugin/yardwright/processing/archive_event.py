"""``yardwright:archiveevent``: all that belongs to an event in one file that opens elsewhere."""

import os

from qgis.core import (
    QgsProcessing,
    QgsProcessingOutputNumber,
    QgsProcessingParameterFile,
    QgsProcessingParameterFileDestination,
    QgsProcessingParameterMultipleLayers,
    QgsProcessingParameterString,
)

from ..model.errors import Cancelled, YardwrightError
from .algorithm import YardwrightAlgorithm


class ArchiveEvent(YardwrightAlgorithm):
    """Writes the archive of an event."""

    ID = "archiveevent"
    TITLE = "Archive an event"
    ICON = "archive_event"
    SUMMARY = (
        "Packs all that belongs to an event into one ZIP: the course with this event alone, the pages and "
        "templates of its guide, masks of dates, the images named, photographs of notes, and the guides "
        "made. Unpacked anywhere, it opens as it was."
    )
    RESULT = "OUTPUT: the ZIP. FILES: how many files are in it, beside the list of them with their checksums."
    TAGS = ("zip", "archive", "backup", "event", "share")

    def initAlgorithm(self, configuration=None):
        self.ask_course()
        self.ask(
            QgsProcessingParameterString("EVENT", self.tr("Event")),
            "The name of the event.",
        )
        self.ask(
            QgsProcessingParameterMultipleLayers(
                "IMAGES", self.tr("Images to go along"), QgsProcessing.SourceType.TypeRaster, optional=True
            ),
            "The images that the guide’s pictures are cut from. See that their licence lets them be passed "
            "on.",
        )
        self.ask(
            QgsProcessingParameterFile(
                "GUIDES",
                self.tr("Folder of the guides made"),
                QgsProcessingParameterFile.Behavior.Folder,
                optional=True,
            ),
            "The PDFs in this folder go along.",
        )
        self.ask(
            QgsProcessingParameterFileDestination("OUTPUT", self.tr("Archive"), self.tr("ZIP files (*.zip)")),
            "The ZIP to be written. One that is there already stays as it is until the new one is whole.",
        )
        self.addOutput(QgsProcessingOutputNumber("FILES", self.tr("Number of files")))

    def prepareAlgorithm(self, parameters, context, feedback):
        layers = self.parameterAsLayerList(parameters, "IMAGES", context) or []
        self._images = [layer.source().split("|")[0] for layer in layers]
        return True

    def work(self, parameters, context, feedback):
        from ..guide.event_archive import write_archive

        name = self.parameterAsString(parameters, "EVENT", context).strip()
        if not name:
            raise YardwrightError(self.tr("No event is named."), self.tr("Say its name as EVENT."))
        output = self.parameterAsFileOutput(parameters, "OUTPUT", context)
        folder = self.parameterAsFile(parameters, "GUIDES", context)
        guides = []
        if folder:
            names = sorted(one for one in os.listdir(folder) if one.lower().endswith(".pdf"))
            guides = [os.path.join(folder, one) for one in names]
        try:
            found, remarks = write_archive(
                self.course(parameters, context),
                name,
                self._images,
                guides,
                output,
                self.progress(feedback, 0, 100),
            )
        except Cancelled:
            feedback.pushInfo(self.tr("Cancelled: no archive was written; what was there is as it was."))
            return {}
        for remark in remarks:
            feedback.pushWarning(remark)
        feedback.pushInfo(self.tr("{} files written to {}").format(len(found), output))
        return {"OUTPUT": output, "FILES": len(found)}
