"""``yardwright:exportwindows``: pictures of holes and greens, turned so that play points up."""

from contextlib import closing

from qgis.core import (
    QgsProcessingException,
    QgsProcessingOutputNumber,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterEnum,
    QgsProcessingParameterNumber,
    QgsProcessingParameterRasterLayer,
)

from ..model.errors import Cancelled, YardwrightError
from ..model.words import say
from .algorithm import YardwrightAlgorithm

SHOWS = ("hole", "green")
PICTURES = ("png", "jpeg")

WIDTH_MM, HEIGHT_MM = 107.95, 177.8
"""The panel unless asked otherwise: 4 1/4 x 7 inches, the largest page that may hold the picture of a green
(Rules of Golf, Rule 4.3a, interpretation on green-reading materials)."""


class ExportWindows(YardwrightAlgorithm):
    """Plans the windows of a course, cuts each out of an image, and writes down where its symbols fall."""

    ID = "exportwindows"
    TITLE = "Export windows"
    ICON = "export_windows"
    SUMMARY = (
        "Cuts the picture of each hole and green out of an aerial image, turned so that play (on a green: "
        "the approach) points up, in the size of the page panel it is meant for."
    )
    RESULT = (
        "For each window a rotated GeoTIFF and a PNG or JPEG with world file, named after hole and kind "
        "(hole_07.tif, green_07.png); the table placements with the place of every symbol in each picture, "
        "in millimetres and pixels from its top left; and the rectangles in the course’s layer of windows. "
        "Those of an earlier run are replaced."
    )
    TAGS = ("image", "picture", "rotate", "clip", "hole", "green", "window", "placements")

    def initAlgorithm(self, configuration=None):
        number = QgsProcessingParameterNumber
        self.ask_course()
        self.ask(
            QgsProcessingParameterRasterLayer("IMAGE", self.tr("Image")),
            "The aerial image: any raster layer or file, or a layer of web tiles or a map service.",
        )
        self.ask_holes()
        self.ask(
            QgsProcessingParameterEnum(
                "SHOWS",
                self.tr("What the windows show"),
                options=[*SHOWS, "both"],
                allowMultiple=True,
                usesStaticStrings=True,
                defaultValue=list(SHOWS),
            ),
            "hole: the whole hole with play upwards. green: the green with the approach upwards. Or both.",
        )
        self.ask(
            number("WIDTH_MM", self.tr("Width (mm)"), number.Type.Double, WIDTH_MM, False, 1.0, 5000.0),
            "Width of the page panel in millimetres.",
        )
        self.ask(
            number("HEIGHT_MM", self.tr("Height (mm)"), number.Type.Double, HEIGHT_MM, False, 1.0, 5000.0),
            "Height of the page panel in millimetres.",
        )
        self.ask(
            number("DPI", self.tr("Dots per inch"), number.Type.Double, 300.0, False, 10.0, 4800.0),
            "Pixels of the picture per inch of the page.",
        )
        self.ask(
            number("SCALE", self.tr("Scale 1 :"), number.Type.Double, None, True, 1.0, 100000.0),
            "The denominator of the scale, such as 480 for 1:480. Empty: the largest scale that holds the "
            "hole or the green with the margin.",
        )
        self.ask(
            number("MARGIN_MM", self.tr("Margin (mm)"), number.Type.Double, 5.0, True, 0.0, 500.0),
            "Left free on each side of the hole or green when no scale is given.",
            advanced=True,
        )
        self.ask(
            QgsProcessingParameterEnum(
                "PICTURE",
                self.tr("Form of the picture"),
                options=list(PICTURES),
                usesStaticStrings=True,
                defaultValue="png",
                optional=True,
            ),
            "png keeps every pixel as it is; jpeg makes smaller files, white where the image ends.",
            advanced=True,
        )
        self.ask(
            QgsProcessingParameterBoolean(
                "LARGER_GREENS", self.tr("Greens may be larger than 1:480"), False, True
            ),
            "The Rules of Golf (Rule 4.3a) do not allow the picture of a green larger than 1:480 to be used "
            "during a round. Say yes only for pictures that are not.",
            advanced=True,
        )
        self.ask(
            number("MARGINS", self.tr("Margins made clear"), number.Type.Double, 0.0, True, 0.0, 1.0),
            "How strongly the drawn margins of greens, aprons, tees and bunkers are brought out by a change "
            "of tone inside and outside: 0 not at all, 0.5 well to be seen, 1 most.",
            advanced=True,
        )
        self.ask(
            QgsProcessingParameterBoolean(
                "MARKERS", self.tr("Draw distance markers where they are true"), False, True
            ),
            "Burns the course’s distance markers into the pictures at the place where the distance each "
            "states is true, with that figure beside it.",
            advanced=True,
        )
        self.ask(
            QgsProcessingParameterBoolean("FOR_PRINT", self.tr("To be printed"), True, True),
            "Refuses an image date of the course that may not be printed. Say no for pictures that are only "
            "looked at.",
            advanced=True,
        )
        self.ask_folder()
        self.ask_forms()
        self.add_table_outputs(["placements"])
        self.addOutput(QgsProcessingOutputNumber("WINDOWS", self.tr("Number of windows made")))

    def prepareAlgorithm(self, parameters, context, feedback):
        """Read the layer IMAGE on the main thread, to which it belongs."""
        from ..guide.rendered import image_source

        layer = self.parameterAsRasterLayer(parameters, "IMAGE", context)
        if layer is None or not layer.isValid():
            raise QgsProcessingException(self.invalidRasterError(parameters, "IMAGE"))
        self._image = image_source(layer)
        return True

    def work(self, parameters, context, feedback):
        from ..guide.rendered import as_date
        from ..guide.retouching import Retouch
        from ..guide.windows import Panel, PlacementRow
        from ..imagery.moves import STAY
        from ..store.course_file import open_course
        from ..store.image_dates import dates_of
        from ..store.reading import read_course
        from ..store.tables import write_tables
        from ..store.writing import replace_windows

        panel = Panel(*(self.parameterAsDouble(parameters, name, context) for name in _PANEL))
        wanted = {
            "panel": panel,
            "scale": self._optional_number(parameters, "SCALE", context),
            "margin_mm": self.parameterAsDouble(parameters, "MARGIN_MM", context),
            "above_limit": self.parameterAsBool(parameters, "LARGER_GREENS", context),
        }
        shows = self._shows(parameters, context)
        numbers = self.holes(parameters, context)
        forms = self.forms(parameters, context)
        form = self.parameterAsEnumString(parameters, "PICTURE", context) or PICTURES[0]
        retouch = Retouch(
            self.parameterAsDouble(parameters, "MARGINS", context),
            self.parameterAsBool(parameters, "MARKERS", context),
        )
        with closing(open_course(self.course(parameters, context))) as layers:
            course = read_course(layers)
            folder = self.folder(parameters, context)
            image, date = as_date(self._image, dates_of(course, layers.place), layers.place)
            if date is not None:
                self._tell_of(date, self.parameterAsBool(parameters, "FOR_PRINT", context), feedback)
            made = _Made(feedback, retouch, STAY if date is None else date.move)
            for plan, played in made.plans(course, numbers, shows, wanted):
                if not made.cut(image, plan, played, course, folder, form):
                    break
            made.tell()
            replace_windows(layers, made.features)
        tables = {"placements": (PlacementRow, made.placements)}
        paths = write_tables(folder, tables, course.settings.unit, forms)
        if retouch.markers:
            feedback.pushInfo(
                self.tr("Distance markers are drawn where they are true, not where they stand.")
            )
        feedback.pushInfo(self.tr("{} windows made in {}").format(len(made.features), folder))
        return {**self.table_results(folder, paths), "WINDOWS": len(made.features)}

    def _tell_of(self, date, for_print, feedback):
        """Say what the course knows of the image; refuse it where it may not be printed and shall be."""
        if for_print and date.print_allowed is False:
            raise YardwrightError(
                self.tr("The image of {} may not be printed ({}).").format(date.id, date.licence)
                if date.licence
                else self.tr("The image of {} may not be printed.").format(date.id),
                self.tr(
                    "Choose another image, tick its leave to be printed, or say that the pictures are not "
                    "to be printed (FOR_PRINT)."
                ),
            )
        if not date.move.stays():
            feedback.pushInfo(
                self.tr("The image is the date {}: it is shown where it was registered.").format(date.id)
            )
        if for_print and date.print_allowed is None:
            feedback.pushWarning(
                self.tr(
                    "The course does not say that the image of {} may be printed: see to its licence before "
                    "you print."
                ).format(date.id)
            )

    def _shows(self, parameters, context):
        asked = self.parameterAsEnumStrings(parameters, "SHOWS", context)
        return SHOWS if not asked or "both" in asked else tuple(show for show in SHOWS if show in asked)

    def _optional_number(self, parameters, name, context):
        """A number, or None where none was given."""
        if parameters.get(name) in (None, ""):
            return None
        return self.parameterAsDouble(parameters, name, context)


_PANEL = ("WIDTH_MM", "HEIGHT_MM", "DPI")


class _Made:
    """The windows of one run: what was made so far, and what there is to say about it. move: of the image."""

    def __init__(self, feedback, retouch, move):
        self._feedback = feedback
        self._retouch = retouch
        self._move = move
        self._remarks = {}
        self._failures = {}
        self._index = None
        self._measured = (None, None)
        self._parts = (0, 1)
        self.features = []
        self.placements = []

    def plans(self, course, numbers, shows, wanted):
        """``(WindowPlan, PlayedHole)`` of each window that can be made; what cannot is told in the log."""
        from ..guide.windows import plan_window
        from ..measure.hole import CourseIndex, play_hole

        known = [hole.number for hole in course.holes]
        for number in numbers or ():
            if number not in known:
                self._fail(
                    say("Hole {number} is not in the course.", number=number),
                    say("Check HOLES against the course’s holes."),
                )
        self._index = CourseIndex(course)
        tasks = [(number, show) for number in known if not numbers or number in numbers for show in shows]
        for done, (number, show) in enumerate(tasks):
            self._parts = (done, len(tasks))
            played = play_hole(course, number, self._index)
            if played is None:
                self._fail(
                    say(
                        "Hole {number} cannot be shown: "
                        "neither a line of play nor a tee and a green are drawn.",
                        number=number,
                    ),
                    say("Draw its line of play from the back tee to the green."),
                )
                continue
            try:
                yield plan_window(played, show, crs=course.crs, **wanted), played
            except YardwrightError as error:
                self._fail(error.what, error.remedy)

    def cut(self, image, plan, played, course, folder, form):
        """Make one window; False when the user has cancelled."""
        from ..guide.rendered import make_picture
        from ..guide.windows import placements, window_feature
        from ..measure.course import measure_hole

        if self._measured[0] != played.number:
            self._measured = (played.number, measure_hole(course, played.number, self._index))
        tables = self._measured[1]
        near = self._index.named_of(played.number) + self._index.open_within(_bounds(plan))
        shown = self._index.within(_bounds(plan))
        retouch = self._retouch.of(plan, shown, tables.get("markers", ()))
        try:
            made = make_picture(image, plan, folder, form, self._progress, retouch, self._move)
        except YardwrightError as error:
            self._fail(error.what, error.remedy, plan.name)
            return not self._feedback.isCanceled()
        except Cancelled:
            return False
        self.placements.extend(placements(plan, played, course, tables, near))
        self.features.append(window_feature(plan))
        for remark in (*plan.remarks, *made.remarks):
            self._remarks.setdefault(remark, []).append(plan.name)
        self._feedback.pushInfo(
            say("{name}: 1:{scale:g}, {up:.2f}° up", name=plan.name, scale=plan.scale, up=plan.up_azimuth)
        )
        return not self._feedback.isCanceled()

    def tell(self):
        """Write the remarks to the log, each once; an error when not a single window could be made."""
        if not self.features and not self._feedback.isCanceled():
            if not self._failures:
                self._fail(
                    say("The course has no holes."), say("Bring its features in first (importfeatures).")
                )
            (_, remedy), _ = next(iter(self._failures.items()))
            whats = " ".join(dict.fromkeys(what for what, _ in self._failures))
            raise YardwrightError(say("No window was made. {whats}", whats=whats), remedy)
        failed = {f"{what} {remedy}": names for (what, remedy), names in self._failures.items()}
        for remark, names in {**failed, **self._remarks}.items():
            self._feedback.pushWarning(f"{', '.join(names)}: {remark}" if names else remark)

    def _fail(self, what, remedy, name=""):
        self._failures.setdefault((what, remedy), []).extend(filter(None, [name]))

    def _progress(self, done, total):
        first, all_parts = self._parts
        self._feedback.setProgress(100.0 * (first + done / total) / all_parts)
        return not self._feedback.isCanceled()


def _bounds(plan):
    """The least upright box about a window: x least, y least, x greatest, y greatest."""
    corners = plan.grid.corners()
    return (*corners.min(axis=0), *corners.max(axis=0))
