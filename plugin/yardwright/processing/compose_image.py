"""``yardwright:composeimage``: one clean picture of a hole out of several dates."""

import os
from contextlib import closing
from dataclasses import replace

from qgis.core import (
    QgsProcessingOutputNumber,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterFile,
    QgsProcessingParameterNumber,
    QgsProcessingParameterString,
)

from ..model.words import say
from .algorithm import YardwrightAlgorithm
from .export_windows import HEIGHT_MM, WIDTH_MM


class ComposeImage(YardwrightAlgorithm):
    """Composes the pictures of the holes, and writes down where each pixel is from."""

    ID = "composeimage"
    TITLE = "Compose one clean picture"
    ICON = "compose_image"
    SUMMARY = (
        "Makes one clean picture of each hole out of the course’s image dates: what shade, clouds or people "
        "hide in one date is taken from another; what all of them shade is lightened."
    )
    RESULT = (
        "For each hole a picture (hole_07.tif) and beside it where each of its pixels is from "
        "(hole_07_source.tif); the table composites with the share of each date, of what was lightened and "
        "of what was invented; the table uncovered with what could not be made clear; and recipe.json, which "
        "makes the same pictures again. Those of an earlier run are replaced."
    )
    TAGS = ("image", "picture", "shadow", "dates", "composite", "mosaic", "cloud", "golfers")

    def initAlgorithm(self, configuration=None):
        number = QgsProcessingParameterNumber
        self.ask_course()
        self.ask(
            QgsProcessingParameterString("BASE", self.tr("Base date")),
            "The id of the date that the picture is made of wherever it shows the ground.",
        )
        self.ask_holes()
        self.ask(
            QgsProcessingParameterString("DATES", self.tr("Other dates"), optional=True),
            "The ids of the dates that may show what the base hides, separated by commas. Empty: all that "
            "are files; what lies on a server is fetched only where it is named.",
            advanced=True,
        )
        self.ask(
            QgsProcessingParameterBoolean("FOR_PRINT", self.tr("To be printed"), True, True),
            "Leaves out dates that may not be printed. Say no for a picture that is only looked at.",
            advanced=True,
        )
        self.ask(
            number("PIXEL_M", self.tr("Pixel (m)"), number.Type.Double, None, True, 0.01, 10.0),
            "The side of a pixel on the ground in metres. Empty: as the base has it.",
            advanced=True,
        )
        self.ask(
            number(
                "KEEP_M", self.tr("Nothing invented within (m)"), number.Type.Double, 3.0, True, 0.0, 50.0
            ),
            "How near to a hazard, the margin of a green or a tee nothing is filled from its surroundings.",
            advanced=True,
        )
        self.ask(
            QgsProcessingParameterFile(
                "RECIPE",
                self.tr("Recipe"),
                optional=True,
                fileFilter=self.tr("Recipe (*.json);;All files (*)"),
            ),
            "A recipe.json of an earlier run of this base: the same dates, patches and pictures again. "
            "HOLES, DATES, PIXEL_M and KEEP_M do not count then.",
            advanced=True,
        )
        self.ask_folder()
        self.ask_forms()
        self.add_table_outputs(["composites", "uncovered"])
        self.addOutput(QgsProcessingOutputNumber("PICTURES", self.tr("Number of pictures made")))

    def work(self, parameters, context, feedback):
        from ..guide.composites import CompositeRow, UncoveredRow, composed, plan_recipe, usable_dates
        from ..guide.windows import Panel
        from ..imagery.recipe import Options, recipe_of
        from ..model.errors import Cancelled, YardwrightError
        from ..store.course_file import open_course
        from ..store.reading import read_course, read_features
        from ..store.tables import write_tables

        place = self.course(parameters, context)
        with closing(open_course(place)) as layers:
            course = read_course(layers)
            patches = read_features(layers, "patch")
            windows = read_features(layers, "window")
        folder = self.folder(parameters, context)
        old = self.parameterAsFile(parameters, "RECIPE", context)
        recipe = recipe_of(_text_of(old)) if old else None
        base = self.parameterAsString(parameters, "BASE", context).strip()
        if recipe and recipe.base != base:
            raise YardwrightError(
                say("The recipe is one of the base {date}.", date=recipe.base),
                say("Give that one as BASE, or leave RECIPE empty."),
            )
        others = recipe.dates[1:] if recipe else self._others(parameters, context)
        for_print = self.parameterAsBool(parameters, "FOR_PRINT", context)
        dates, remarks = usable_dates(course, place, base, others, for_print)
        if recipe is None:
            options = replace(Options(), keep_m=self._number(parameters, "KEEP_M", context, 3.0))
            panel = Panel(WIDTH_MM, HEIGHT_MM, 300.0)
            numbers = self.holes(parameters, context)
            pixel = self._number(parameters, "PIXEL_M", context, None)
            recipe, more = plan_recipe(course, place, dates, patches, windows, numbers, panel, pixel, options)
            remarks += more
        composites, uncovered, pictures = [], [], 0
        try:
            for made in composed(recipe, course, place, dates, folder, self.progress(feedback)):
                composites += made.composites
                uncovered += made.uncovered
                remarks += made.remarks
                pictures += 1
                feedback.pushInfo(made.told)
        except Cancelled:
            return {}
        for remark in dict.fromkeys(remarks):
            feedback.pushWarning(remark)
        tables = {"composites": (CompositeRow, composites), "uncovered": (UncoveredRow, uncovered)}
        forms = self.forms(parameters, context)
        paths = write_tables(folder, tables, course.settings.unit, forms)
        feedback.pushInfo(self.tr("{} pictures made in {}").format(pictures, folder))
        return {**self.table_results(folder, paths), "PICTURES": pictures}

    def _others(self, parameters, context):
        """The ids asked for as other dates, None for all."""
        text = self.parameterAsString(parameters, "DATES", context)
        return tuple(part.strip() for part in text.split(",") if part.strip()) or None

    def _number(self, parameters, name, context, otherwise):
        if parameters.get(name) in (None, ""):
            return otherwise
        return self.parameterAsDouble(parameters, name, context)


def _text_of(path):
    from ..model.errors import YardwrightError

    try:
        with open(path, encoding="utf-8") as file:
            return file.read()
    except (OSError, UnicodeDecodeError) as error:
        raise YardwrightError(
            say("The recipe “{path}” cannot be read ({reason}).", path=os.path.basename(path), reason=error),
            say("Choose a recipe.json that was written beside composed pictures."),
        ) from error
