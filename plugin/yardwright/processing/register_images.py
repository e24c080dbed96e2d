"""``yardwright:registerimages``: the dates of a course laid on one of them."""

import os
import tempfile
from contextlib import closing

from qgis.core import (
    QgsProcessingOutputNumber,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterFolderDestination,
    QgsProcessingParameterString,
)

from ..model.errors import YardwrightError
from .algorithm import YardwrightAlgorithm


class RegisterImages(YardwrightAlgorithm):
    """Opens a course, lays its dates on the base, and keeps that when asked."""

    ID = "registerimages"
    TITLE = "Register images"
    ICON = "register_images"
    SUMMARY = (
        "Finds by how much the picture of each date of the course must be moved to lie where that of the "
        "base lies, to a fraction of a pixel: a shift, a turn and stretch, or shifts from place to place, "
        "whichever the pictures ask for."
    )
    RESULT = (
        "For each date the shift, the kind of move and its error, found at places kept out of the fit "
        "(REGISTERED), or the reason why it was refused (REFUSED). With WRITE they are kept in the course, "
        "and what was drawn from a date goes along with its picture. With a folder: the tables registrations "
        "and residuals, and a plot of the residuals of each date (residuals_DATE.png)."
    )
    TAGS = ("image", "date", "shift", "align", "georeference", "residuals", "orthophoto")

    def initAlgorithm(self, configuration=None):
        self.ask_course()
        self.ask(
            QgsProcessingParameterString("BASE", self.tr("Base")),
            "The date all others are laid on: its id, or its file. Take the one whose place is trusted most.",
        )
        self.ask(
            QgsProcessingParameterString("IMAGES", self.tr("Dates"), optional=True),
            "The ids of the dates to register, with commas between. Empty: all others.",
        )
        self.ask(
            QgsProcessingParameterBoolean("WRITE", self.tr("Keep it in the course"), False),
            "Write the moves and their errors to the dates, and move what was drawn from them along. What "
            "was drawn from another source stays. Pins go along with their green.",
        )
        self.ask(
            QgsProcessingParameterFolderDestination(
                "OUTPUT", self.tr("Folder for the results"), optional=True, createByDefault=False
            ),
            "The folder for tables and plots. Empty: none are written.",
        )
        self.ask_forms()
        self.add_table_outputs(["registrations", "residuals"])
        self.addOutput(QgsProcessingOutputNumber("COUNT", self.tr("Number of dates registered")))

    def work(self, parameters, context, feedback):
        from ..store.course_file import open_course
        from ..store.image_dates import dates_of
        from ..store.reading import read_course

        place = self.course(parameters, context)
        with closing(open_course(place)) as layers, tempfile.TemporaryDirectory() as aside:
            course = read_course(layers)
            dates = {date.id: date for date in dates_of(course, layers.place)}
            base = self._base(parameters, context, dates)
            wanted = self._wanted(parameters, context, dates, base)
            run = _Run(self, course, base, aside, feedback)
            for number, date in enumerate(wanted):
                if not run.register(date, number, len(wanted)):
                    return {}
            run.tell()
            if self.parameterAsBool(parameters, "WRITE", context):
                run.keep(layers)
            results = run.results()
            if parameters.get("OUTPUT"):
                folder = self.folder(parameters, context)
                results.update(run.write(folder, self.forms(parameters, context)))
        return results

    def _base(self, parameters, context, dates):
        """The Date that BASE names, by its id or by its file."""
        text = self.parameterAsString(parameters, "BASE", context).strip()
        if text in dates:
            return dates[text]
        path = os.path.normcase(os.path.realpath(text))
        for date in dates.values():
            if date.path and os.path.normcase(os.path.realpath(date.path)) == path:
                return date
        raise self._no_date(text, dates)

    def _wanted(self, parameters, context, dates, base):
        """The Dates to register."""
        asked = self.parameterAsString(parameters, "IMAGES", context)
        names = [name.strip() for name in asked.split(",") if name.strip()]
        for name in names:
            if name not in dates:
                raise self._no_date(name, dates)
        wanted = [dates[name] for name in dict.fromkeys(names or dates) if name != base.id]
        if not wanted:
            raise YardwrightError(
                self.tr("There is no date to be laid on the base."),
                self.tr("Make another image a date of the course first."),
            )
        return wanted

    def _no_date(self, name, dates):
        return YardwrightError(
            self.tr("The course has no image date “{}”.").format(name),
            self.tr("Its dates: {}.").format(", ".join(dates) or self.tr("none")),
        )


class _Run:
    """The registrations of one run, and why others were refused."""

    def __init__(self, algorithm, course, base, aside, feedback):
        from ..store.image_dates import metres_per_unit

        self.tr = algorithm.tr
        self._algorithm = algorithm
        self._course = course
        self._aside = aside
        self._feedback = feedback
        self._metre = metres_per_unit(course.crs)
        self._own = base
        self._extent = None
        self._base = self._readable(base, algorithm.progress(feedback, 0, 5))
        self.found = {}
        self.refused = {}

    def register(self, date, number, count):
        """Register a date; False when the user has cancelled. A failure is kept."""
        from ..imagery.registration import register
        from ..model.errors import Cancelled

        first, last = 5 + 90 * number / count, 5 + 90 * (number + 1) / count
        middle = (first + last) / 2
        try:
            readable = self._readable(date, self._algorithm.progress(self._feedback, first, middle))
            begin = first if readable is date else middle
            progress = self._algorithm.progress(self._feedback, begin, last)
            self.found[date.id] = register(self._base, readable, self._extent, self._course.crs, progress)
        except YardwrightError as error:
            self.refused[date.id] = str(error)
            self._feedback.pushWarning(f"{date.id}: {error}")
        except Cancelled:
            return False
        return not self._feedback.isCanceled()

    def tell(self):
        """Say what was found; YardwrightError when nothing was."""
        if not self.found:
            raise YardwrightError(
                self.tr("No date could be registered."), " ".join(dict.fromkeys(self.refused.values()))
            )
        for found in self.found.values():
            east, north = found.shift
            error = self.tr("not known") if found.rmse is None else f"{found.rmse:.3f} m"
            self._feedback.pushInfo(
                self.tr("{}: {:+.3f} m east, {:+.3f} m north ({}), error {}").format(
                    found.id, east, north, found.kind, error
                )
            )
            if found.remark:
                self._feedback.pushWarning(f"{found.id}: {found.remark}")

    def keep(self, layers):
        """Write what was found into the course, and the moved images beside it."""
        from ..store.registering import keep_registration, write_moved_images

        for found in self.found.values():
            kept = keep_registration(layers, found, self._own.id)
            features = sum(count for _, count in kept.features)
            if kept.moved:
                self._feedback.pushInfo(
                    self.tr("{}: {} features and {} pins moved along, at most {:.2f} m").format(
                        found.id, features, kept.pins, kept.furthest
                    )
                )
            else:
                self._feedback.pushInfo(self.tr("{}: lies where it lay, nothing was moved").format(found.id))
        for problem in write_moved_images(layers):
            self._feedback.pushWarning(problem)

    def results(self):
        """The outputs, plain values."""
        return {
            "REGISTERED": {
                date_id: {
                    "kind": found.kind,
                    "shift_e_m": found.shift[0],
                    "shift_n_m": found.shift[1],
                    "turn_deg": found.move.turn,
                    "stretch": found.move.stretch,
                    "rmse_m": found.rmse,
                    "remark": found.remark,
                }
                for date_id, found in self.found.items()
            },
            "REFUSED": dict(self.refused),
            "COUNT": len(self.found),
        }

    def write(self, folder, forms):
        """Write tables and plots; their paths as outputs."""
        from ..guide.registrations import (
            RegistrationRow,
            ResidualRow,
            registration_row,
            residual_rows,
            write_residual_plot,
        )
        from ..store.tables import safe_file_name, write_tables

        rows = [registration_row(found, self._own.id) for found in self.found.values()]
        rows += [
            RegistrationRow(date=date_id, base=self._own.id, kind="refused", remark=reason)
            for date_id, reason in self.refused.items()
        ]
        residuals = [row for found in self.found.values() for row in residual_rows(found)]
        tables = {"registrations": (RegistrationRow, rows), "residuals": (ResidualRow, residuals)}
        paths = write_tables(folder, tables, self._course.settings.unit, forms)
        for found in self.found.values():
            plot = os.path.join(folder, safe_file_name(f"residuals_{found.id}") + ".png")
            write_residual_plot(plot, self._base, found, self._course.crs)
        return self._algorithm.table_results(folder, paths)

    def _readable(self, date, progress):
        """The Date as a file that GDAL opens: what only QGIS fetches is fetched to a temporary one."""
        from ..guide.fetched import endless, pixel_of, readable
        from ..imagery.reach import reach_of
        from ..imagery.registration import FAR_M
        from ..store.image_dates import is_fetched
        from ..store.registering import ground_drawn

        if self._extent is None:
            self._extent = ground_drawn(self._course, 30.0 / self._metre)
        if not is_fetched(date.path):
            if self._extent is None:
                self._extent = reach_of(date, self._course.crs).bounds
            return date
        if self._extent is None:
            raise endless(date.id)
        far = FAR_M / self._metre
        x0, y0, x1, y1 = self._extent
        bounds = (x0 - far, y0 - far, x1 + far, y1 + far)
        pixel = pixel_of(date.id, self._course)
        return readable(date, bounds, self._course.crs, pixel, self._aside, progress)
