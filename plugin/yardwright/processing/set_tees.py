"""``yardwright:settees``: where the tee markers stand for the lengths a committee asks for."""

from contextlib import closing
from dataclasses import replace

from ..model.errors import YardwrightError
from .committee import CommitteeAlgorithm


class SetTees(CommitteeAlgorithm):
    """Opens a course, reads the lengths of an event, and says where the markers stand for each."""

    ID = "settees"
    TITLE = "Set tees"
    ICON = "set_tees"
    SUMMARY = (
        "Finds the place on the tee from which a hole plays the length asked for in a round and a flight, "
        "with two club-lengths of tee behind it, and keeps the lengths with the event."
    )
    RESULT = (
        "The table tee_setting: the length asked for and the length got, the place of the markers (in the "
        "course’s CRS), how far it lies from the tee’s front, from its back and from the plate, and the "
        "verdict “fits”, “nearest” (the nearest length the tee allows) or “impossible”."
    )
    TAGS = ("tee", "marker", "length", "event", "tournament", "round", "flight")

    def initAlgorithm(self, configuration=None):
        self.ask_course()
        self.ask_event()
        self.ask_figures(
            "LENGTHS",
            self.tr("The committee’s lengths"),
            "A CSV file with the columns round, flight, hole and yards. A flight plays the tee set that the "
            "event says, else the one of its own name. Lengths the event had for the same round, flight and "
            "hole are replaced.",
        )
        self.ask_terrain(
            "A raster of heights, such as a digital terrain model. With it the table says how much higher "
            "than the markers the green lies (rise_m). No other figure changes.",
        )
        self.ask_folder()
        self.ask_forms()
        self.add_table_outputs(["tee_setting"])

    def work(self, parameters, context, feedback):
        from ..measure.rows import TeeSettingRow
        from ..measure.tee_setting import set_tees
        from ..model.event import Event
        from ..store.course_file import open_course
        from ..store.events import read_event, write_event, write_lengths
        from ..store.reading import read_course
        from ..store.tables import write_tables

        forms = self.forms(parameters, context)
        with closing(open_course(self.course(parameters, context))) as layers:
            course = read_course(layers)
            problems = list(course.problems)
            name = self.event_name(parameters, context)
            stored = read_event(layers, name, problems)
            event = stored or Event(name)
            lengths = self._lengths(course, event, parameters, context, feedback)
            event = _with_rounds_and_flights(course, event, lengths)
            with self.terrain() as terrain:
                rows = set_tees(course, event, lengths, terrain=terrain)
            feedback.setProgress(60)
            if feedback.isCanceled():
                return {}
            folder = self.folder(parameters, context)
            if event != stored:
                write_event(layers, event)
            write_lengths(layers, event.name, lengths)
        tables = {"tee_setting": (TeeSettingRow, rows)}
        paths = write_tables(folder, tables, course.settings.unit, forms)
        self._tell(feedback, problems, rows)
        return self.table_results(folder, paths)

    def _lengths(self, course, event, parameters, context, feedback):
        """The good rows of LENGTHS; YardwrightError for bad ones, unless the good ones are to be taken."""
        from ..measure.tee_setting import tee_set_names
        from ..store.committee import read_lengths

        path = self.parameterAsFile(parameters, "LENGTHS", context)
        flights = None
        if event.flights:
            flights = [*tee_set_names(course), *(flight.name for flight in event.flights)]
        lengths, bad = read_lengths(
            path, course.settings.unit, holes=[hole.number for hole in course.holes], flights=flights
        )
        self.refuse_or_tell(bad, path, parameters, context, feedback)
        if not lengths:
            raise YardwrightError(
                self.tr("“{}” has no length in it.").format(path),
                self.tr("Write a line round,flight,hole,yards for each length."),
            )
        return lengths

    def _tell(self, feedback, problems, rows):
        for problem in problems:
            feedback.pushWarning(problem)
        for row in rows:
            if row.remark:
                text = self.tr("Round {}, {}, hole {}: {}").format(
                    row.round, row.flight, row.hole, row.remark
                )
                tell = feedback.pushInfo if row.verdict == "fits" else feedback.pushWarning
                tell(text)
        verdicts = [row.verdict for row in rows]
        feedback.pushInfo(
            self.tr("{} lengths set: {} fit, {} nearest, {} impossible").format(
                len(rows), *(verdicts.count(verdict) for verdict in ("fits", "nearest", "impossible"))
            )
        )


def _with_rounds_and_flights(course, event, lengths):
    """The event with the rounds and flights of ``lengths`` that it did not know."""
    from ..measure.tee_setting import flights_of
    from ..model.event import Round

    rounds = [Round(n) for n in sorted({one.round for one in lengths}) if event.round(n) is None]
    known = {flight.name.casefold() for flight in event.flights}
    names = dict.fromkeys(one.flight for one in lengths if one.flight.casefold() not in known)
    return replace(
        event,
        rounds=tuple(sorted((*event.rounds, *rounds), key=lambda one: one.number)),
        flights=(*event.flights, *flights_of(course, names)),
    )
