"""``yardwright:makeguide``: the guide of a course as a book, for the phone and for print."""

from contextlib import closing

from qgis.core import (
    QgsProcessingAlgorithm,
    QgsProcessingException,
    QgsProcessingOutputNumber,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFileDestination,
    QgsProcessingParameterNumber,
    QgsProcessingParameterRasterLayer,
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication, QLocale

from ..model.errors import Cancelled, YardwrightError
from ..model.words import and_list
from .algorithm import YardwrightAlgorithm

BOOK_FORMS = ("screen", "pages", "booklet")
RULES = ("green_scale", "page_size")
SCREEN_DPI, PRINT_DPI = 200.0, 300.0


class MakeGuide(YardwrightAlgorithm):
    """Plans the guide, says what it lacks, paints it page by page and binds it."""

    ID = "makeguide"
    TITLE = "Make the guide"
    ICON = "make_guide"
    SUMMARY = (
        "Makes the yardage guide of a course, and of an event where one is named: cover, scorecard, map of "
        "the course, a page for each hole with its picture, distance ladder and green, the pins of the "
        "rounds, pages for notes that fill a booklet, and an imprint with credits and cautions. Nothing in "
        "the course is changed."
    )
    RESULT = (
        "A PDF: tall pages with bookmarks and links for a phone, single pages for a printer, or a booklet to "
        "be folded and stapled. The log says what the guide lacks. Pages that have not changed since an "
        "earlier guide are taken over as they were."
    )
    TAGS = ("book", "guide", "yardage", "pdf", "print", "booklet", "phone", "event", "hole", "pin")

    def flags(self):
        # QGIS paints layouts in the main thread only.
        return super().flags() | QgsProcessingAlgorithm.Flag.FlagNoThreading

    def initAlgorithm(self, configuration=None):
        number = QgsProcessingParameterNumber
        self.ask_course()
        self.ask(
            QgsProcessingParameterString("EVENT", self.tr("Event"), optional=True),
            "The name of an event of the course, whose flights, lengths and pins the guide shows. Empty: a "
            "guide of the course alone.",
        )
        self.ask(
            QgsProcessingParameterRasterLayer("IMAGE", self.tr("Image")),
            "The image that the pictures of the holes are cut from: a date of the course, a composite of "
            "them, or any raster layer or file. It need not show the whole course.",
        )
        self.ask(
            QgsProcessingParameterString("PAGE", self.tr("Page"), optional=True),
            "The size of the pages: pocket (107.95 x 177.8 mm), phone (90 x 195 mm), A6, A5, A4, Letter, or "
            "width x height in mm, such as 100 x 160. Empty: phone for the screen, pocket for print.",
        )
        self.ask(
            QgsProcessingParameterEnum(
                "FORM",
                self.tr("Form"),
                options=list(BOOK_FORMS),
                usesStaticStrings=True,
                defaultValue=BOOK_FORMS[0],
            ),
            "screen: for the phone, with bookmarks and links. pages: single pages with bleed for a printer. "
            "booklet: sheets with two pages a side, to be printed on both sides, folded and stapled.",
        )
        self.ask_holes()
        self.ask(
            QgsProcessingParameterString("TEE_SET", self.tr("Tee set"), optional=True),
            "The tee set whose figures stand on the holes’ pictures. Empty: the longest of each hole.",
        )
        self.ask(
            number("ROUND", self.tr("Round"), number.Type.Integer, None, True, 1),
            "Only the pins of this round. Empty: those of all rounds.",
        )
        self.ask(
            QgsProcessingParameterBoolean("GRID", self.tr("Grid over the greens"), False, True),
            "Draws lines at every five yards over each green, or at every five metres, by the course’s unit.",
        )
        self.ask(
            QgsProcessingParameterBoolean("MARKS", self.tr("Crop marks"), False, True),
            "Draws marks where pages are to be cut, and in a booklet where it is folded.",
            advanced=True,
        )
        self.ask(
            number(
                "PAPER_MM", self.tr("Thickness of the paper (mm)"), number.Type.Double, 0.0, True, 0.0, 2.0
            ),
            "Of a booklet: its inner pages are moved towards the fold by so much a sheet, for that is how "
            "far they stand out before the booklet is cut.",
            advanced=True,
        )
        self.ask(
            QgsProcessingParameterEnum(
                "FLIP",
                self.tr("Edge the sheets are turned about"),
                options=["short", "long"],
                usesStaticStrings=True,
                defaultValue="short",
                optional=True,
            ),
            "Of a booklet: the edge of the sheet about which the printer turns it for its other side.",
            advanced=True,
        )
        self.ask(
            number("DPI", self.tr("Dots per inch"), number.Type.Double, None, True, 72.0, 1200.0),
            "Pixels of the pictures per inch of the page. Empty: 200 for the screen, 300 for print.",
            advanced=True,
        )
        self.ask(
            QgsProcessingParameterEnum(
                "RULES_OFF",
                self.tr("Rules that do not apply"),
                options=list(RULES),
                allowMultiple=True,
                usesStaticStrings=True,
                optional=True,
            ),
            "A page that breaks one of these rules stops the guide, unless it is named here. green_scale: a "
            "green is shown no larger than 1:480. page_size: a page with fewer than nine greens measures no "
            "more than 107.95 x 177.8 mm (both Rules of Golf, Rule 4.3a).",
            advanced=True,
        )
        self.ask(
            QgsProcessingParameterFileDestination("OUTPUT", self.tr("Guide"), self.tr("PDF files (*.pdf)")),
            "The PDF to be written. One that is there already stays as it is until the new one is whole.",
        )
        self.addOutput(QgsProcessingOutputNumber("PAGES", self.tr("Number of pages")))
        self.addOutput(QgsProcessingOutputNumber("PAINTED", self.tr("Number of pages painted anew")))

    def prepareAlgorithm(self, parameters, context, feedback):
        self._layer = self.parameterAsRasterLayer(parameters, "IMAGE", context)
        if self._layer is None or not self._layer.isValid():
            raise QgsProcessingException(self.invalidRasterError(parameters, "IMAGE"))
        return True

    def work(self, parameters, context, feedback):
        from ..guide.book_image import book_image
        from ..guide.book_making import Binding, GuideMaker
        from ..store.course_file import open_course
        from ..store.guide_pages import read_guide_pages
        from ..store.reading import read_course

        place = self.course(parameters, context)
        output = self.parameterAsFileOutput(parameters, "OUTPUT", context)
        wanted = self._wanted(parameters, context)
        with closing(open_course(place)) as layers:
            course = read_course(layers)
            event = self._event(layers, parameters, context, feedback)
            problems = []
            pages = read_guide_pages(layers, problems)
        for problem in (*course.problems, *problems):
            feedback.pushWarning(problem)
        maker = GuideMaker(course, place, event, book_image(self._layer, course, place), pages=pages)
        try:
            book = maker.plan(wanted, self._living(feedback, 0.0, 15.0))
            for remark in book.remarks:
                feedback.pushWarning(remark)
            binding = Binding(
                self.parameterAsBool(parameters, "MARKS", context),
                self.parameterAsDouble(parameters, "PAPER_MM", context),
                self.parameterAsEnumString(parameters, "FLIP", context) or "short",
                QLocale().bcp47Name(),
            )
            rules_off = self.parameterAsEnumStrings(parameters, "RULES_OFF", context)
            maker.write(book, output, binding, rules_off, self._living(feedback, 15.0, 100.0))
        except Cancelled:
            feedback.pushInfo(self.tr("Cancelled: no guide was written; what was there is as it was."))
            return {}
        for remark in dict.fromkeys(maker.remarks):
            feedback.pushWarning(remark)
        painted = maker.cache.made
        feedback.pushInfo(
            self.tr("{} pages written to {}, {} of them painted anew").format(
                len(book.pages), output, painted
            )
        )
        return {"OUTPUT": output, "PAGES": len(book.pages), "PAINTED": painted}

    def _wanted(self, parameters, context):
        from ..guide.book import Wanted, page_of

        form = self.parameterAsEnumString(parameters, "FORM", context) or BOOK_FORMS[0]
        dpi = PRINT_DPI if form != "screen" else SCREEN_DPI
        if parameters.get("DPI") not in (None, ""):
            dpi = self.parameterAsDouble(parameters, "DPI", context)
        number = None
        if parameters.get("ROUND") not in (None, ""):
            number = self.parameterAsInt(parameters, "ROUND", context)
        return Wanted(
            form,
            page_of(self.parameterAsString(parameters, "PAGE", context), form),
            tuple(self.holes(parameters, context) or ()),
            self.parameterAsString(parameters, "TEE_SET", context).strip(),
            number,
            self.parameterAsBool(parameters, "GRID", context),
            dpi,
        )

    def _event(self, layers, parameters, context, feedback):
        """The event named, None without a name."""
        from ..store.events import read_event, read_events

        name = self.parameterAsString(parameters, "EVENT", context).strip()
        if not name:
            return None
        problems = []
        event = read_event(layers, name, problems)
        if event is None:
            there = [one.name for one in read_events(layers)]
            raise YardwrightError(
                self.tr("The course has no event “{}”.").format(name),
                self.tr("Check its name; the course has {}.").format(and_list(there))
                if there
                else self.tr("Leave EVENT empty for a guide of the course alone."),
            )
        number = parameters.get("ROUND")
        if number not in (None, "") and event.round(int(number)) is None:
            raise YardwrightError(
                self.tr("The event “{}” has no round {}.").format(name, number),
                self.tr("Check ROUND; the event has {} rounds.").format(len(event.rounds)),
            )
        for problem in problems:
            feedback.pushWarning(problem)
        return event

    def _living(self, feedback, first, last):
        """Progress that lets the window live, so that it can be seen and cancelled."""

        def tell(done, total):
            if total:
                feedback.setProgress(first + (last - first) * done / total)
            QCoreApplication.processEvents()
            return not feedback.isCanceled()

        return tell
