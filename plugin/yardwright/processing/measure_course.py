"""``yardwright:measurecourse``: every distance of a course, as tables."""

from contextlib import closing

from .algorithm import YardwrightAlgorithm

TABLES = ("lengths", "greens", "distances", "fairways", "doglegs", "layups")


class MeasureCourse(YardwrightAlgorithm):
    """Opens a course, measures its holes and writes a table for each kind of figure."""

    ID = "measurecourse"
    TITLE = "Measure course"
    ICON = "measure"
    SUMMARY = (
        "Measures every hole from every tee set: length and par, the green’s depth and width, the distance "
        "to reach and to clear each bunker, water and tree, fairway widths, doglegs and lay-up points."
    )
    RESULT = (
        "The tables lengths, greens, distances, fairways, doglegs and layups. Distances are in the course’s "
        "unit, each with its standard error. What is doubtful stands as a remark beside the figure and in "
        "the log."
    )
    TAGS = ("distance", "length", "hole", "green", "carry", "fairway", "dogleg", "lay-up")

    def initAlgorithm(self, configuration=None):
        self.ask_course()
        self.ask_holes()
        self.ask_folder()
        self.ask_forms()
        self.add_table_outputs(TABLES)

    def work(self, parameters, context, feedback):
        from ..measure.course import measure_course
        from ..model.errors import Cancelled
        from ..store.course_file import open_course
        from ..store.reading import read_course
        from ..store.tables import write_tables

        holes = self.holes(parameters, context)
        forms = self.forms(parameters, context)
        with closing(open_course(self.course(parameters, context))) as layers:
            course = read_course(layers)
        folder = self.folder(parameters, context)
        try:
            measures = measure_course(course, holes, self.progress(feedback, 5, 90))
        except Cancelled:
            return {}
        tables = table_rows(measures)
        paths = write_tables(folder, tables, course.settings.unit, forms)
        for name, (_, rows) in tables.items():
            feedback.pushInfo(self.tr("{}: {} rows").format(name, len(rows)))
        self.tell_remarks(feedback, (*course.problems, *measures.problems), tables)
        return self.table_results(folder, paths)


def table_rows(measures):
    """``{table: (row type, rows)}`` of Measures, in the order of TABLES."""
    from ..measure import rows

    row_types = (
        rows.LengthRow,
        rows.GreenRow,
        rows.DistanceRow,
        rows.FairwayRow,
        rows.DoglegRow,
        rows.LayupRow,
    )
    return {name: (row_type, getattr(measures, name)) for name, row_type in zip(TABLES, row_types)}
