"""``yardwright:measurecourse``: every distance of a course, as tables."""

from contextlib import closing

from .terrain import TerrainAlgorithm

TABLES = ("lengths", "greens", "distances", "fairways", "doglegs", "layups")


class MeasureCourse(TerrainAlgorithm):
    """Opens a course, measures its holes and writes a table for each kind of figure."""

    ID = "measurecourse"
    TITLE = "Measure course"
    ICON = "measure"
    SUMMARY = (
        "Measures every hole from every tee set: length and par, the green’s depth and width, the distance "
        "to reach and to clear each bunker, water and tree, fairway widths, doglegs and lay-up points."
    )
    RESULT = (
        "The tables lengths, greens, distances, fairways, doglegs and layups, and with a terrain the table "
        "heights. Distances are in the course’s unit, each with its standard error, and always horizontal; "
        "heights are in metres. What is doubtful stands as a remark beside the figure and in the log."
    )
    TAGS = ("distance", "length", "hole", "green", "carry", "fairway", "dogleg", "lay-up", "height", "slope")

    def initAlgorithm(self, configuration=None):
        self.ask_course()
        self.ask_holes()
        self.ask_terrain(
            "A raster of heights, such as a digital terrain model. With it the table heights is written: how "
            "high tees, turn points and greens lie, and the length with the rise added (plays). No other "
            "figure changes.",
        )
        self.ask_folder()
        self.ask_forms()
        self.add_table_outputs((*TABLES, "heights"))

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
        with self.terrain() as terrain:
            folder = self.folder(parameters, context)
            try:
                measures = measure_course(course, holes, self.progress(feedback, 5, 90), terrain=terrain)
            except Cancelled:
                return {}
        tables = table_rows(measures, TABLES if terrain is None else (*TABLES, "heights"))
        paths = write_tables(folder, tables, course.settings.unit, forms)
        for name, (_, rows) in tables.items():
            feedback.pushInfo(self.tr("{}: {} rows").format(name, len(rows)))
        self.tell_remarks(feedback, (*course.problems, *measures.problems), tables)
        return self.table_results(folder, paths)


def table_rows(measures, names=TABLES):
    """``{table: (row type, rows)}`` of Measures, in the order of the names."""
    from ..measure import rows

    row_types = {
        "lengths": rows.LengthRow,
        "greens": rows.GreenRow,
        "distances": rows.DistanceRow,
        "fairways": rows.FairwayRow,
        "doglegs": rows.DoglegRow,
        "layups": rows.LayupRow,
        "heights": rows.HeightRow,
    }
    return {name: (row_types[name], getattr(measures, name)) for name in names}
