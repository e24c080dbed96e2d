"""``yardwright:placepins``: the committee's hole locations, placed on the greens."""

from contextlib import closing

from .committee import CommitteeAlgorithm


class PlacePins(CommitteeAlgorithm):
    """Reads how far on and how far off each hole is cut, and writes the pins of an event."""

    ID = "placepins"
    TITLE = "Place pins"
    ICON = "place_pin"
    SUMMARY = (
        "Places the hole locations of an event from the committee’s figures: so far on from the front of the "
        "green along the approach, so far in from the left or right margin or off the line of approach. A "
        "pin of the same event, round and hole that is there already is replaced."
    )
    RESULT = (
        "The pins in the course, and the table pins if a folder is named: the figures, how far to the right "
        "of the approach, to the nearest margin and to the back, the place in the course’s CRS, and remarks."
    )
    TAGS = ("pin", "hole location", "event", "committee")

    def initAlgorithm(self, configuration=None):
        self.ask_course()
        self.ask_event()
        self.ask_pins()
        self.ask_terrain(
            "A raster of heights. With it the table tells how steep the ground is at each pin and where it "
            "falls to, and pins on ground steeper than the event allows are remarked on."
        )
        self.ask_folder_or_none()
        self.ask_forms()
        self.add_table_outputs(["pins"])

    def work(self, parameters, context, feedback):
        from dataclasses import replace

        from ..measure.hole import CourseIndex
        from ..measure.pins import pin_rows
        from ..measure.rows import PinRow
        from ..model.event import Event, Round
        from ..store.committee import read_pins
        from ..store.course_file import open_course
        from ..store.events import read_event, write_event, write_pins
        from ..store.reading import read_course
        from ..store.tables import write_tables

        name = self.event_name(parameters, context)
        forms = self.forms(parameters, context)
        path = self.parameterAsFile(parameters, "PINS", context)
        folder = self.folder(parameters, context) if parameters.get("OUTPUT") else None
        with closing(open_course(self.course(parameters, context))) as layers:
            course = read_course(layers)
            known = read_event(layers, name)
            event = known or Event(name)
            rounds = [one.number for one in event.rounds]
            holes = [hole.number for hole in course.holes]
            pins, bad = read_pins(path, course.settings.unit, name, holes, rounds or None)
            if not rounds:
                found = sorted({pin.round for pin in pins})
                event = replace(event, rounds=tuple(Round(number) for number in found))
            feedback.setProgress(30)
            with self.terrain() as terrain:
                rows, _ = pin_rows(course, _with_earlier(event, pins), CourseIndex(course), terrain)
            placed = {(row.round, row.hole): row for row in rows}
            good, bad = [], list(bad)
            for pin in pins:
                row = placed[pin.round, pin.hole]
                if row.x is None:
                    bad.append((pin.line, row.remark))
                else:
                    good.append((pin, row))
            self.refuse_or_tell(sorted(bad), path, parameters, context, feedback)
            if feedback.isCanceled():
                return {}
            feedback.setProgress(60)
            if event is not known:
                write_event(layers, event)
            write_pins(layers, name, [pin for pin, _ in good], [(row.x, row.y) for _, row in good])
        feedback.pushInfo(self.tr("{} pins placed").format(len(good)))
        if folder is None:
            self.tell_remarks(feedback, course.problems, {"pins": (PinRow, [row for _, row in good])})
            return {"COUNT": len(good)}
        tables = {"pins": (PinRow, [row for _, row in good])}
        paths = write_tables(folder, tables, course.settings.unit, forms)
        self.tell_remarks(feedback, course.problems, tables)
        return {"COUNT": len(good), **self.table_results(folder, paths)}


def _with_earlier(event, pins):
    """The event as it will be: those of its pins that are given anew are replaced."""
    from dataclasses import replace

    anew = {(pin.round, pin.hole) for pin in pins}
    kept = [pin for pin in event.pins if (pin.round, pin.hole) not in anew]
    return replace(event, pins=(*kept, *pins))
