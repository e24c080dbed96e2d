"""The Processing provider: what ``yardwright:...`` stands for in the toolbox and in ``qgis_process``."""

from qgis.core import QgsProcessingProvider

from ..model.words import say
from ..resources import icon, icon_path
from .archive_event import ArchiveEvent
from .audit_pins import AuditPins
from .check_markers import CheckMarkers
from .compose_image import ComposeImage
from .event_sheets import WriteEventSheets
from .export_windows import ExportWindows
from .import_features import ImportFeatures
from .import_notes import ImportNotes
from .make_guide import MakeGuide
from .measure_course import MeasureCourse
from .outline_feature import OutlineFeature
from .place_pins import PlacePins
from .register_images import RegisterImages
from .set_tees import SetTees
from .start_course import StartCourse

ALGORITHMS = (
    StartCourse,
    ImportFeatures,
    ImportNotes,
    MeasureCourse,
    CheckMarkers,
    PlacePins,
    AuditPins,
    SetTees,
    WriteEventSheets,
    ComposeImage,
    ExportWindows,
    RegisterImages,
    MakeGuide,
    ArchiveEvent,
    OutlineFeature,
)


class YardwrightProvider(QgsProcessingProvider):
    """Lists the algorithms; each of them is a file of its own beside this one."""

    def id(self):
        return "yardwright"

    def name(self):
        return "Yardwright"

    def longName(self):
        return say("Yardwright (yardage guide of a golf course)")

    def icon(self):
        return icon("yardwright")

    def svgIconPath(self):
        return icon_path("yardwright")

    def supportsNonFileBasedOutput(self):
        return False

    def loadAlgorithms(self):
        for algorithm in ALGORITHMS:
            self.addAlgorithm(algorithm())
