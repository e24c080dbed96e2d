"""A whole hole of the sample course drawn from nothing in a real desktop, and measured like the sample's own.

The sample's outlines have more corners than are clicked here: a curve goes through the clicks, as a hand would
draw it, and each click falls on a whole pixel.
"""

import json
import math

import pytest
from desktop import result_of, run_desktop

from sample_project.make import FIRST_HOLE as NUMBER

pytestmark = pytest.mark.desktop

ORDER = ("hole", "tee", "plate", "green", "apron", "fairway", "bunker", "marker")
APART_M = {"tee": 1.5, "green": 2.0, "apron": 2.0, "fairway": 2.0, "bunker": 1.0}
"""Corners of the sample's outlines that are nearer to the last one are not clicked: the curve goes there."""
WITHIN_YD = 0.5
TABLES = {
    "lengths": ("tee_set", ("length",)),
    "greens": (None, ("depth", "width", "overall_depth", "overall_width")),
    "distances": (None, ("reach", "clear", "enter", "leave", "aside", "short_of_green", "middle")),
    "markers": (None, ("states", "measured")),
    "doglegs": ("tee_set", ("turn_station", "to_green")),
}


def thinned(places, apart):
    """The places at least so far apart from the one kept before, metres."""
    kept = places[:1]
    for place in places[1:]:
        if math.dist(place, kept[-1]) >= apart:
            kept.append(place)
    return kept


def things_of(course):
    """The things of the hole as a hand draws them, in order."""
    hole = course.hole(NUMBER)
    things = [("hole", "", list(hole.line.coords))]
    for kind in ORDER[1:]:
        for feature in course.features:
            if feature.kind == kind and NUMBER in feature.holes:
                shape = feature.geometry
                places = (
                    list(shape.exterior.coords)[:-1] if shape.geom_type == "Polygon" else list(shape.coords)
                )
                tee_set = (feature.get("tee_set") or "").split(",")[0]
                things.append((kind, tee_set, thinned(places, APART_M.get(kind, 0.0))))
    return [
        {
            "kind": kind,
            "how": "curve" if kind in APART_M else "clicks",
            "tee_set": tee_set,
            "places": places,
            "ends": len(places) > 1,
        }
        for kind, tee_set, places in things
    ]


@pytest.fixture
def project(qgis_app, tmp_path):
    """The sample's project for a first hole: nothing is drawn, and the image shows only that hole."""
    from sample_project import drawing, make, pictures

    x0, y0, x1, y1 = drawing.course().hole(NUMBER).line.buffer(70).bounds
    image = str(tmp_path / "image.tif")
    pictures.write_image(image, pictures.SEASONS[-1], [6.0 * round(n / 6) for n in (x0, y0, x1, y1)])
    return make.make_first_hole(str(tmp_path), image)


def keyed(rows, key):
    """Rows by what tells them apart; features by kind and order along the line, for their numbers differ.

    The row for the middle between two posts is left out: that they are a pair is said in the form.
    """
    found, seen = {}, {}
    for row in rows:
        if "+" in getattr(row, "marker_id", ""):
            continue
        own = getattr(row, key) if key else (getattr(row, "tee_set", ""), getattr(row, "kind", ""))
        seen[own] = seen.get(own, 0) + 1
        found[own, seen[own]] = row
    return found


def test_a_hole_drawn_from_nothing_measures_as_the_sample(project, tmp_path):
    from dataclasses import replace

    from yardwright.measure.course import measure_course
    from yardwright.measure.units import YARD
    from yardwright.store.course_file import open_course
    from yardwright.store.reading import read_course

    from sample_project import drawing

    sample = drawing.course()
    things = things_of(sample)
    plan = tmp_path / "hole.json"
    plan.write_text(json.dumps({"number": NUMBER, "things": things}), "utf-8")
    folder = tmp_path / "desktop"
    folder.mkdir()
    drive = __file__.replace("test_hole_drawn_in_desktop", "drive_draw_hole")
    found = result_of(
        run_desktop(
            drive,
            folder,
            project=project,
            size="1500x1350",
            timeout=200,
            environment={"YARDWRIGHT_HOLE": str(plan)},
        )
    )
    assert found["hole"].startswith(f"{NUMBER}  ") and found["messages"] == []
    # One click more than its corners for an outline or a line, none for a point; one step to undo each.
    outlines = sum(thing["ends"] for thing in things)
    assert found["counted"]["corners"] == sum(len(thing["places"]) for thing in things)
    assert found["counted"]["ends"] == outlines
    for kind, steps in found["steps"].items():
        assert steps == sum(thing["kind"] == kind for thing in things), kind

    with open_course(str(tmp_path / "first_hole.gpkg")) as layers:
        by_hand = read_course(layers)
    mine = [feature for feature in by_hand.features if feature.kind in ORDER]
    assert len(mine) == len(things) - 1
    assert {feature.holes for feature in mine} == {(NUMBER,)}
    assert {feature.seen_in for feature in mine} == {drawing_date()}
    drawn = measure_course(replace(by_hand, features=tuple(mine)), [NUMBER])
    whole = tuple(f for f in sample.features if f.kind in ORDER and NUMBER in f.holes)
    wanted = measure_course(replace(sample, features=whole), [NUMBER])
    compared = 0
    for table, (key, figures) in TABLES.items():
        ours, theirs = keyed(getattr(drawn, table), key), keyed(getattr(wanted, table), key)
        assert ours.keys() == theirs.keys(), table
        for own, row in theirs.items():
            for figure in figures:
                value, other = getattr(ours[own], figure), getattr(row, figure)
                if other is None:
                    assert value is None, (table, own, figure)
                    continue
                compared += 1
                assert value / YARD == pytest.approx(other / YARD, abs=WITHIN_YD), (table, own, figure)
    assert compared > 150


def drawing_date():
    from sample_project import pictures

    return pictures.SEASONS[-1].id
