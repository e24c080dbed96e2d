"""``yardwright:auditpins``: the committee's hole locations against those that are drawn."""

from contextlib import closing

from ..model.errors import YardwrightError
from .committee import CommitteeAlgorithm


class AuditPins(CommitteeAlgorithm):
    """Compares the committee's figures with the pins of an event, and changes nothing."""

    ID = "auditpins"
    TITLE = "Audit pins"
    ICON = "event_panel"
    SUMMARY = (
        "Puts the committee’s figures beside the pins that are drawn for an event: those further apart than "
        "the tolerance, those missing, those nobody asked for, and figures that no green can have. Nothing "
        "in the course is changed."
    )
    RESULT = (
        "The table pin_audit: a row a round and hole with the figures given and drawn, how far they are "
        "apart, and the verdict same, apart, missing, extra or impossible."
    )
    TAGS = ("pin", "hole location", "event", "committee", "check")

    def initAlgorithm(self, configuration=None):
        self.ask_course()
        self.ask_event()
        self.ask_pins()
        self.ask_tolerance(
            "Pins further apart than this many yards are told. Empty: the event’s own setting."
        )
        self.ask_folder()
        self.ask_forms()
        self.add_table_outputs(["pin_audit"])

    def work(self, parameters, context, feedback):
        from ..measure.pin_audit import audit_pins
        from ..measure.rows import PinAuditRow
        from ..measure.units import YARD
        from ..store.committee import read_pins
        from ..store.course_file import open_course
        from ..store.events import read_event
        from ..store.reading import read_course
        from ..store.tables import write_tables

        tolerance = self.tolerance(parameters, context)
        name = self.event_name(parameters, context)
        forms = self.forms(parameters, context)
        with closing(open_course(self.course(parameters, context))) as layers:
            course = read_course(layers)
            event = read_event(layers, name)
        if event is None:
            raise YardwrightError(
                self.tr("The course has no event “{}”.").format(name),
                self.tr("Check its name, or place its pins first."),
            )
        path = self.parameterAsFile(parameters, "PINS", context)
        given, bad = read_pins(path, course.settings.unit, name)
        self.refuse_or_tell(bad, path, parameters, context, feedback)
        feedback.setProgress(40)
        rows = audit_pins(course, event, given, None if tolerance is None else tolerance * YARD)
        if feedback.isCanceled():
            return {}
        folder = self.folder(parameters, context)
        tables = {"pin_audit": (PinAuditRow, rows)}
        paths = write_tables(folder, tables, course.settings.unit, forms)
        same = sum(row.verdict == "same" for row in rows)
        feedback.pushInfo(self.tr("{} pins audited, {} of them as given").format(len(rows), same))
        self.tell_remarks(feedback, course.problems, tables)
        return self.table_results(folder, paths)
