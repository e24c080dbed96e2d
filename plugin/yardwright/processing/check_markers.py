"""``yardwright:checkmarkers``: the distance markers on the course, put to the test."""

from contextlib import closing

from .algorithm import YardwrightAlgorithm


class CheckMarkers(YardwrightAlgorithm):
    """Opens a course, measures what its distance markers state, and says where a wrong one belongs."""

    ID = "checkmarkers"
    TITLE = "Check distance markers"
    ICON = "check_markers"
    SUMMARY = (
        "Measures from each distance marker to the point of the green it states its distance to, and "
        "proposes where a marker that is out should stand."
    )
    RESULT = (
        "The table markers: stated and measured distance, the error (stated less measured), the verdict "
        "“true” or “off”, and for a marker that is off the proposed place (in the course’s CRS), how far to "
        "move it and in which direction. A pair of posts has a row a post and one for the middle between "
        "them."
    )
    TAGS = ("marker", "plate", "post", "distance")

    def initAlgorithm(self, configuration=None):
        self.ask_course()
        self.ask_tolerance(
            "A marker further out than this many yards is off. Empty: the course’s own setting."
        )
        self.ask_folder()
        self.ask_forms()
        self.add_table_outputs(["markers"])

    def work(self, parameters, context, feedback):
        from ..measure.markers import check_markers
        from ..measure.rows import MarkerRow
        from ..store.course_file import open_course
        from ..store.reading import read_course
        from ..store.tables import write_tables

        tolerance = self.tolerance(parameters, context)
        forms = self.forms(parameters, context)
        with closing(open_course(self.course(parameters, context))) as layers:
            course = read_course(layers)
        feedback.setProgress(30)
        folder = self.folder(parameters, context)
        rows = check_markers(course, tolerance)
        if feedback.isCanceled():
            return {}
        tables = {"markers": (MarkerRow, rows)}
        paths = write_tables(folder, tables, course.settings.unit, forms)
        off = sum(row.verdict == "off" for row in rows)
        feedback.pushInfo(self.tr("{} markers checked, {} of them off").format(len(rows), off))
        self.tell_remarks(feedback, course.problems, tables)
        return self.table_results(folder, paths)
