"""Makes the sample course and runs the main job on it: ``python3 make.py OUTPUT_FOLDER``.

Images, terrain, the course file and a QGIS project are made; then the holes are measured, the distance
markers checked, the windows of every hole and green cut, the sheets of the event written, its guide made and
clean pictures of two holes composed, by the algorithms of the Processing toolbox."""

import argparse
import csv
import os
import shutil
import sys
import time

ROOT = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))
sys.path[:0] = [ROOT, os.path.join(ROOT, "plugin")]

FIRST_HOLE = 5
"""The hole of ``make_first_hole``: a short par 4 with five bunkers and no water."""


CLEAN_HOLES = "5,12"
"""The holes of which clean pictures are composed: woods that throw long shadows, and people."""


def make_images(folder):
    """Paint the three dates; ``{date id: path}``."""
    from sample_project import pictures

    paths = {}
    for season in pictures.SEASONS:
        paths[season.id] = os.path.join(folder, "images", f"quernhallow_{season.id}.tif")
        os.makedirs(os.path.dirname(paths[season.id]), exist_ok=True)
        pictures.write_image(paths[season.id], season)
        print(f"  painted {os.path.basename(paths[season.id])}")
    return paths


def image_features(extent):
    """The dates as features of kind ``image``, each with its footprint."""
    from shapely.geometry import box
    from yardwright.model.course import Feature

    from sample_project import pictures

    return [
        Feature(
            "image",
            number,
            box(*extent),
            attributes={
                "id": season.id,
                "source": f"images/quernhallow_{season.id}.tif",
                "taken": season.id,
                "gsd_m": season.gsd,
                "credit": "Painted by script for the invented course of Quernhallow",
                "licence": "CC0-1.0",
                "print_allowed": True,
                "note": season.note,
            },
        )
        for number, season in enumerate(pictures.SEASONS, 1)
    ]


def make_course(path, extent):
    """The course file with everything of the drawing in it."""
    from contextlib import closing

    from yardwright.model.course import Feature
    from yardwright.store.course_file import create_course, open_course
    from yardwright.store.writing import add_features, editing

    from sample_project import drawing, notes

    course = drawing.course()
    create_course(path, course.name, course.crs, scorecard=drawing.SCORECARD)
    lines = [
        Feature(
            "hole",
            hole.number,
            hole.line,
            seen_in=hole.seen_in,
            attributes={"number": hole.number, "description": notes.DESCRIPTIONS[hole.number]},
        )
        for hole in course.holes
    ]
    with closing(open_course(path)) as layers:
        add_features(layers, [*lines, *course.features, *image_features(extent)])
        known = {tee_set.name: tee_set for tee_set in course.tee_sets}
        changes = {
            row.id(): {"colour": known[row["name"]].colour, "players": known[row["name"]].players}
            for row in layers["tee_set"].getFeatures()
        }
        with editing(layers, ["tee_set"]) as edit:
            edit.change("tee_set", changes)
    return path


def make_event(path):
    """The Quernhallow Cup in the course file: rounds, flights, lengths asked for, pins of two rounds, and the
    pages of its guide, with its sponsor's file beside the course."""
    from contextlib import closing

    from yardwright.guide.page_templates import guide_folder
    from yardwright.store.course_file import open_course
    from yardwright.store.events import write_event, write_lengths, write_pins
    from yardwright.store.guide_pages import write_guide_pages
    from yardwright.store.reading import read_course

    from sample_project import cup

    with closing(open_course(path)) as layers:
        pins = cup.drawn_pins()
        points = points_of(read_course(layers), pins)
        write_event(layers, cup.EVENT)
        write_lengths(layers, cup.NAME, cup.lengths())
        write_pins(layers, cup.NAME, pins, points)
        write_guide_pages(layers, cup.NAME, cup.PAGES)
    folder = guide_folder(path)
    os.makedirs(folder, exist_ok=True)
    shutil.copy(cup.SPONSOR, folder)


def points_of(course, pins):
    """Where pins lie by their figures, ``[(x, y)]`` in the course's CRS."""
    from yardwright.measure.hole import CourseIndex, play_hole
    from yardwright.measure.pins import place_pin

    index, points = CourseIndex(course), []
    for pin in pins:
        played = play_hole(course, pin.hole, index)
        place = place_pin(played.green, pin.on, pin.off, pin.off_from)
        (point,) = played.frame.from_frame(course.crs)(place.point.reshape(1, 2))
        points.append(tuple(point.tolist()))
    return points


def make_project(path, title, course_file, rasters, shown, extent=None):
    """A QGIS project: a course over its rasters, paths relative to it.

    rasters: ``[(name, path)]``, topmost first, of which the one named ``shown`` is. extent: what the project
    opens on, (x least, y least, x greatest, y greatest) in the course's CRS, all of that raster without.
    """
    from qgis.core import QgsProject, QgsRasterLayer, QgsRectangle, QgsReferencedRectangle
    from yardwright.store.course_file import open_course
    from yardwright.store.layer_group import add_course_group

    project = QgsProject.instance()
    project.clear()
    project.setTitle(title)
    layers = open_course(course_file)
    project.setCrs(layers.crs, True)
    add_course_group(project, layers)
    root = project.layerTreeRoot()
    for name, place in rasters:
        layer = QgsRasterLayer(place, name)
        project.addMapLayer(layer, False)
        root.addLayer(layer).setItemVisibilityChecked(name == shown)
        if name == shown:
            seen = QgsRectangle(*extent) if extent else QgsRectangle(layer.extent())
    for kind in ("window", "image"):
        root.findLayer(layers[kind].id()).setItemVisibilityChecked(False)
    project.viewSettings().setDefaultViewExtent(QgsReferencedRectangle(seen, layers.crs))
    if not project.write(path):
        raise SystemExit(f"The project could not be written to {path}: {project.error()}")
    project.clear()
    layers.close()
    return path


def make_first_hole(folder, image):
    """A project to draw a first hole in: a course without any drawing, one hole on its card, over an image.

    image: the file of the last date. The project’s path, ``first_hole.qgz`` beside ``first_hole.gpkg``.
    """
    from contextlib import closing

    from yardwright.store.course_file import create_course, open_course
    from yardwright.store.writing import add_features

    from sample_project import drawing, pictures

    course_file, card = (os.path.join(folder, f"first_hole{ending}") for ending in (".gpkg", ".csv"))
    remove_course(course_file)
    with open(drawing.SCORECARD, newline="", encoding="utf-8") as file:
        heading, *rows = csv.reader(file)
    with open(card, "w", newline="", encoding="utf-8") as file:
        of_hole = [row for row in rows if row[0] == str(FIRST_HOLE)]
        csv.writer(file, lineterminator="\n").writerows([heading, *of_hole])
    course = drawing.course()
    create_course(course_file, f"{course.name}: a first hole", course.crs, scorecard=card)
    extent = course.hole(FIRST_HOLE).line.buffer(60).bounds
    date = next(one for one in image_features(extent) if one.get("id") == pictures.SEASONS[-1].id)
    date.attributes["source"] = os.path.relpath(image, folder).replace(os.sep, "/")
    with closing(open_course(course_file)) as layers:
        add_features(layers, [date])
    name = f"Image of {date.get('id')}"
    project = os.path.join(folder, "first_hole.qgz")
    return make_project(project, "A first hole", course_file, [(name, image)], name, extent)


def remove_course(path):
    """Take a course file away that an earlier run left."""
    for ending in ("", "-wal", "-shm"):
        if os.path.exists(path + ending):
            os.remove(path + ending)


def run(name, **parameters):
    """Run one of the algorithms as Processing does; its results."""
    from qgis.core import QgsApplication, QgsProcessingContext, QgsProcessingFeedback

    algorithm = QgsApplication.processingRegistry().createAlgorithmById(f"yardwright:{name}")
    feedback = QgsProcessingFeedback(False)
    results, done = algorithm.run(parameters, QgsProcessingContext(), feedback)
    if not done:
        raise SystemExit(f"{name} failed:\n{feedback.textLog()}")
    return results


def write_sheets(course_file, folder):
    """The pins of round 1 and the audit sheet of the event as PDF, its tables beside; how many sheets."""
    from sample_project import cup

    done = run(
        "eventsheets", COURSE=course_file, EVENT=cup.NAME, SHEETS=["greens", "audit"], ROUND=1, OUTPUT=folder
    )
    return done["COUNT"]


def write_guide(course_file, image, folder):
    """The guide of the event in all its forms; the names of the files."""
    from sample_project import cup

    os.makedirs(folder, exist_ok=True)
    names = [f"quernhallow_{form}.pdf" for form in ("screen", "pages", "booklet")]
    for name in names:
        form = name[:-4].rpartition("_")[2]
        output = os.path.join(folder, name)
        run(
            "makeguide",
            COURSE=course_file,
            EVENT=cup.NAME,
            IMAGE=image,
            FORM=form,
            MARKS=form == "booklet",
            OUTPUT=output,
        )
    return names


def rows_of(path):
    """The rows of a table as dicts."""
    with open(path, newline="", encoding="utf-8-sig") as file:
        return list(csv.DictReader(file))


def tell(results, course_file, project, images):
    """A few of the figures, and where everything lies."""
    lengths, greens = rows_of(results["LENGTHS"]), rows_of(results["GREENS"])
    markers = [row for row in rows_of(results["MARKERS"]) if row["verdict"] == "off"]
    total = {}
    for row in lengths:
        total[row["tee_set"]] = total.get(row["tee_set"], 0) + float(row["length_yd"])
    wrong = [row for row in lengths if abs(float(row["difference_yd"])) > 5]
    print("\nQuernhallow, 18 holes:", ", ".join(f"{name} {yards:.0f} yd" for name, yards in total.items()))
    print(
        "Depth of the greens:",
        ", ".join(f"{row['hole']}: {float(row['depth_yd']):.0f}" for row in greens),
        "yd",
    )
    print("Distance markers that stand wrong:")
    for row in markers:
        print(f"  hole {row['hole']}, {row['marker_id']}: states {float(row['states_yd']):.0f},"
              f" measures {float(row['measured_yd']):.1f} yd")  # fmt: skip
    print(
        "The card differs from the ground by more than 5 yd on",
        ", ".join(
            f"hole {row['hole']} {row['tee_set']} ({float(row['difference_yd']):+.0f})" for row in wrong
        ),
    )
    print(f"\nTables:   {results['OUTPUT']}")
    print(f"Windows:  {results['WINDOWS_FOLDER']} ({results['WINDOWS']} pictures)")
    print(f"Sheets:   {results['SHEETS_FOLDER']} ({results['SHEETS']} PDF)")
    print(f"Guide:    {results['GUIDE_FOLDER']} ({', '.join(results['GUIDE'])})")
    print(f"Clean:    {results['CLEAN_FOLDER']} ({results['CLEAN']} pictures composed of two dates)")
    print(f"Images:   {os.path.dirname(next(iter(images.values())))}")
    print(f"Course:   {course_file}")
    print(f"Project:  {project} (open it in QGIS)")


def main():
    """Everything, in order."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument(
        "output", help="folder for all that is made; what an earlier run made there is replaced"
    )
    folder = os.path.abspath(parser.parse_args().output)
    os.makedirs(folder, exist_ok=True)
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    from qgis.core import QgsApplication

    application = QgsApplication([], False)
    application.initQgis()
    try:
        work(folder, application)
    finally:
        application.exitQgis()


def work(folder, application):
    """Make the course in ``folder`` and run the main job on it."""
    from yardwright.processing.provider import YardwrightProvider

    from sample_project import pictures, terrain

    provider = YardwrightProvider()
    application.processingRegistry().addProvider(provider)
    start = time.monotonic()
    print("Making the sample course")
    extent = pictures.course_extent()
    images = make_images(folder)
    ground = terrain.write_terrain(os.path.join(folder, "terrain.tif"), extent)
    course_file = os.path.join(folder, "course.gpkg")
    remove_course(course_file)
    make_course(course_file, extent)
    make_event(course_file)
    rasters = [(f"Image of {name}", path) for name, path in sorted(images.items(), reverse=True)]
    project = make_project(
        os.path.join(folder, "quernhallow.qgz"),
        "Quernhallow",
        course_file,
        [*rasters, ("Terrain", ground)],
        rasters[0][0],
    )
    first_hole = make_first_hole(folder, images[max(images)])
    made = time.monotonic()
    print(f"  made in {made - start:.0f} s\nMeasuring it")
    tables, windows = os.path.join(folder, "tables"), os.path.join(folder, "windows")
    results = dict(run("measurecourse", COURSE=course_file, TERRAIN=ground, OUTPUT=tables))
    results.update(run("checkmarkers", COURSE=course_file, OUTPUT=tables))
    cut = run("exportwindows", COURSE=course_file, IMAGE=images[max(images)], OUTPUT=windows)
    results.update(WINDOWS=cut["WINDOWS"], WINDOWS_FOLDER=windows)
    sheets = os.path.join(folder, "sheets")
    results.update(SHEETS=write_sheets(course_file, sheets), SHEETS_FOLDER=sheets)
    print(f"  measured, markers checked, windows cut and sheets written in {time.monotonic() - made:.0f} s")
    made = time.monotonic()
    guide = os.path.join(folder, "guide")
    results.update(GUIDE=write_guide(course_file, images[max(images)], guide), GUIDE_FOLDER=guide)
    print(f"  guide made in three forms in {time.monotonic() - made:.0f} s")
    composed, clean = time.monotonic(), os.path.join(folder, "composites")
    # The spring images lie a metre beside their place, so that they are left out until they are registered.
    _, other, base = sorted(images)
    done = run("composeimage", COURSE=course_file, BASE=base, DATES=other, HOLES=CLEAN_HOLES, OUTPUT=clean)
    results.update(CLEAN=done["PICTURES"], CLEAN_FOLDER=clean)
    print(f"  two holes composed in {time.monotonic() - composed:.0f} s")
    tell(results, course_file, project, images)
    print(f"To draw:  {first_hole} (hole {FIRST_HOLE} over its image, nothing drawn yet)")


if __name__ == "__main__":
    main()
