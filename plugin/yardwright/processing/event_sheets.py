"""``yardwright:eventsheets``: pins and tees of an event as PDF, for players, committee and ground staff."""

import os
from contextlib import closing, nullcontext

from qgis.core import (
    QgsProcessingOutputNumber,
    QgsProcessingParameterEnum,
    QgsProcessingParameterNumber,
    QgsProcessingParameterString,
)

from ..model.errors import YardwrightError
from ..model.words import and_list, say
from .committee import CommitteeAlgorithm

SHEETS = ("greens", "table", "hole", "audit", "tees")
PAGES = ("A4", "A5", "A6", "Letter", "pocket", "phone")


class WriteEventSheets(CommitteeAlgorithm):
    """Writes the sheets of an event as PDF, and its tables beside them."""

    ID = "eventsheets"
    TITLE = "Write event sheets"
    ICON = "event_sheets"
    SUMMARY = (
        "Writes the sheets of an event as PDF: the pins of a round on small greens or as a table, the pins "
        "of all rounds on one green, the sheet on which the committee checks them all, and where the ground "
        "staff set the tee markers. Nothing in the course is changed."
    )
    RESULT = (
        "A PDF for each sheet, named after event, round or hole, and sheet, such as "
        "“Heron Cup_round_1_greens.pdf”; and the tables pins and tee_setting of the rounds. "
        "Those of an earlier run are replaced."
    )
    TAGS = ("pin", "hole location", "tee", "event", "committee", "sheet", "print", "pdf", "round")

    def initAlgorithm(self, configuration=None):
        self.ask_course()
        self.ask(
            QgsProcessingParameterString("EVENT", self.tr("Event")),
            "The name of an event of the course.",
        )
        self.ask(
            QgsProcessingParameterEnum(
                "SHEETS",
                self.tr("Sheets"),
                options=list(SHEETS),
                allowMultiple=True,
                usesStaticStrings=True,
                defaultValue=["greens"],
            ),
            "greens: the pins of a round, a small green a hole. table: the same as a table. hole: one green "
            "with the pins of all rounds. audit: every green with all its pins and their figures both ways, "
            "for the committee to check. tees: where the markers stand in a round.",
        )
        self.ask(
            QgsProcessingParameterNumber(
                "ROUND",
                self.tr("Round"),
                QgsProcessingParameterNumber.Type.Integer,
                None,
                True,
                1,
            ),
            "Only the sheets and rows of this round. Empty: all rounds that have pins, or tees to set.",
        )
        self.ask(
            QgsProcessingParameterString("HOLES", self.tr("Holes"), optional=True),
            "The holes of which a sheet of one green is written, such as 1,4,7-9. Empty: all that have a "
            "pin.",
        )
        self.ask(
            QgsProcessingParameterEnum(
                "PAGE",
                self.tr("Page"),
                options=list(PAGES),
                usesStaticStrings=True,
                optional=True,
            ),
            "The size of the pages. pocket: 107.95 x 177.8 mm, the largest that may show fewer than nine "
            "greens during a round (Rules of Golf, Rule 4.3a). phone: 90 x 195 mm. Empty: A4, and A6 "
            "for one green.",
        )
        self.ask_terrain(
            "A raster of heights, such as a digital terrain model. With it the sheets tell how the ground "
            "falls at the pins and rises to the greens. See first whether the Local Rules let players carry "
            "that.",
        )
        self.ask_folder()
        self.ask_forms()
        self.add_table_outputs(["pins", "tee_setting"])
        self.addOutput(QgsProcessingOutputNumber("COUNT", self.tr("Number of sheets written")))

    def work(self, parameters, context, feedback):
        from ..guide.event_sheets import EventSheets
        from ..measure.rows import PinRow, TeeSettingRow
        from ..store.course_file import open_course
        from ..store.reading import read_course
        from ..store.tables import write_tables

        name = self.event_name(parameters, context)
        forms = self.forms(parameters, context)
        kinds = self.parameterAsEnumStrings(parameters, "SHEETS", context) or ["greens"]
        page = self.parameterAsEnumString(parameters, "PAGE", context) or None
        holes = self.holes(parameters, context)
        problems = []
        with closing(open_course(self.course(parameters, context))) as layers:
            course = read_course(layers)
            event = self._event(layers, name, problems)
        rounds = self._rounds(event, parameters, context)
        with self.terrain() as terrain:
            heights = terrain is not None
            sheets = EventSheets(course, event, open_terrain=lambda: nullcontext(terrain))
            pins, tees = sheets.pins(heights), sheets.tees(heights)  # the sheets take them from there
            problems += terrain.remarks if heights else ()
        wanted = _wanted(kinds, rounds, holes, sheets)
        feedback.setProgress(10)
        if feedback.isCanceled():
            return {}
        folder = self.folder(parameters, context)
        written = self._write(sheets, wanted, page, heights, folder, feedback)
        if written is None:
            return {}
        tables = {
            "pins": (PinRow, [row for row in pins if row.round in rounds]),
            "tee_setting": (TeeSettingRow, [row for row in tees if row.round in rounds]),
        }
        paths = write_tables(folder, tables, course.settings.unit, forms)
        # That markers fit needs no warning: what they are from the plate stands in the table.
        doubtful = [row for row in tables["tee_setting"][1] if row.verdict != "fits"]
        told = {**tables, "tee_setting": (TeeSettingRow, doubtful)}
        self.tell_remarks(feedback, [*course.problems, *problems], told)
        feedback.pushInfo(self.tr("{} sheets written to {}").format(len(written), folder))
        return {"COUNT": len(written), **self.table_results(folder, paths)}

    def _event(self, layers, name, problems):
        from ..store.events import read_event, read_events

        event = read_event(layers, name, problems)
        if event is None:
            there = [one.name for one in read_events(layers)]
            raise YardwrightError(
                self.tr("The course has no event “{}”.").format(name),
                self.tr("Check its name; the course has {}.").format(and_list(there))
                if there
                else self.tr("Place its pins first (placepins)."),
            )
        return event

    def _rounds(self, event, parameters, context):
        """The numbers of the rounds asked for."""
        known = [one.number for one in event.rounds]
        if parameters.get("ROUND") in (None, ""):
            return known
        number = self.parameterAsInt(parameters, "ROUND", context)
        if number not in known:
            raise YardwrightError(
                self.tr("The event “{}” has no round {}.").format(event.name, number),
                self.tr("Check ROUND; the event has {} rounds.").format(len(known)),
            )
        return [number]

    def _write(self, sheets, wanted, page, heights, folder, feedback):
        """The paths of the sheets written, None when cancelled; what cannot be made is told in the log.

        Raises YardwrightError when not a single sheet can be made.
        """
        from ..guide.event_sheets import name_of
        from ..guide.painted_sheets import write_sheet

        written, failures = [], []
        for done, (kind, number) in enumerate(wanted):
            if feedback.isCanceled():
                return None
            try:
                sheet = sheets.sheet(kind, number, page, heights)
                path = os.path.join(folder, sheets.file_name(kind, number))
                write_sheet(sheet, path)
            except YardwrightError as error:
                failures.append(error)
                feedback.pushWarning(f"{name_of(kind, number)}: {error}")
                continue
            written.append(path)
            for remark in sheet.remarks:
                feedback.pushWarning(f"{name_of(kind, number)}: {remark}")
            feedback.pushInfo(f"{name_of(kind, number)}: {os.path.basename(path)}")
            feedback.setProgress(10 + 80 * (done + 1) / len(wanted))
        if not written:
            raise YardwrightError(
                say(
                    "No sheet was written. {whats}",
                    whats=" ".join(dict.fromkeys(error.what for error in failures)),
                ),
                failures[0].remedy if failures else say("Place the event’s pins or set its tees first."),
            )
        return written


def _wanted(kinds, rounds, holes, sheets):
    """``[(kind, number)]`` of the sheets to be written: of each kind, those of its rounds or holes.

    Of several rounds, those count that have what the sheet shows.
    """
    from ..guide.event_sheets import KINDS

    event = sheets.event
    with_pins = {pin.hole for pin in event.pins}
    having = {kind: {pin.round for pin in event.pins} for kind in ("greens", "table")}
    having["tees"] = {one.round for one in event.lengths}
    wanted = []
    for kind in SHEETS:
        if kind not in kinds:
            continue
        numbers = {
            "round": rounds if len(rounds) == 1 else [one for one in rounds if one in having.get(kind, ())],
            "hole": holes or [hole.number for hole in sheets.course.holes if hole.number in with_pins],
            "event": [None],
        }
        wanted += [(kind, number) for number in numbers[KINDS[kind].of]]
    return wanted
