"""Courses for tests, drawn by hand in yards: x to the right, y up the page.

A course is drawn in plain numbers, so that what it must measure can be worked out on paper, and laid on the
ground in a transverse Mercator plane of its own, true to length there. ``tables`` gives the rows back in
yards.
"""

import math
from dataclasses import replace
from types import MappingProxyType, SimpleNamespace

import numpy as np
from shapely.affinity import rotate, scale, translate
from shapely.geometry import LineString, Point, Polygon, box
from yardwright.measure.course import measure_course
from yardwright.measure.rows import columns
from yardwright.measure.units import YARD
from yardwright.model.course import Course, Feature, Hole, ImageDate, Settings, TeeSet

LOCAL = "+proj=tmerc +lat_0=56 +lon_0=-3 +k=1 +x_0=0 +y_0=0 +datum=WGS84 +units=m +no_defs"
OWN = ("label", "seen_in", "view", "remark")


def line(*points):
    return LineString(points)


def area(*points):
    return Polygon(points)


def rectangle(left, low, right, high):
    return box(left, low, right, high)


def circle(x, y, radius, corners=256):
    """A regular polygon with a corner straight above, below, left and right of its middle."""
    turns = np.arange(corners) * (2 * math.pi / corners)
    return Polygon(np.column_stack([x + radius * np.cos(turns), y + radius * np.sin(turns)]))


def spot(x, y):
    return Point(x, y)


def feature(kind, fid, shape, *holes, **fields):
    """A feature drawn in yards; ``fields`` may hold label, seen_in, view, remark and the kind's own."""
    own = {name: fields.pop(name) for name in OWN if name in fields}
    return Feature(kind, fid, shape, tuple(holes), attributes=MappingProxyType(fields), **own)


def tee(fid, x, y, hole=1, tee_set="Back", depth=10.0, width=6.0, **fields):
    """A rectangular tee with its middle at (x, y), its depth up the page."""
    shape = rectangle(x - width / 2, y - depth / 2, x + width / 2, y + depth / 2)
    return feature("tee", fid, shape, hole, tee_set=tee_set, **fields)


def course(features, lines, pars=None, approach=None, turned=0.0, moved=(0.0, 0.0), crs=LOCAL, **more):
    """A Course of features and ``{hole number: line or None}``, all drawn in yards.

    pars, approach: ``{number: par}``, ``{number: approach_yd}``. turned: degrees anticlockwise about the
    origin, then moved by metres. settings: a dict; tee_sets: names or TeeSets; the rest goes to Course.
    """
    pars, approach = pars or {}, approach or {}

    def lay(shape):
        ground = scale(shape, YARD, YARD, origin=(0, 0))
        return translate(rotate(ground, turned, origin=(0, 0)), *moved)

    holes = tuple(
        Hole(
            number,
            None if drawn is None else lay(drawn),
            fid=number,
            par=pars.get(number),
            approach_yd=approach.get(number),
            **more.get("hole_fields", {}),
        )
        for number, drawn in sorted(lines.items())
    )
    tee_sets = tuple(
        one if isinstance(one, TeeSet) else TeeSet(one, sort=place)
        for place, one in enumerate(more.get("tee_sets", ()))
    )
    return Course(
        name="Larkmere",
        crs=crs,
        holes=holes,
        features=tuple(replace(one, geometry=lay(one.geometry)) for one in features),
        tee_sets=tee_sets,
        images=tuple(more.get("images", ())),
        scorecard=MappingProxyType(dict(more.get("scorecard", {}))),
        settings=Settings(**more.get("settings", {})),
    )


def in_yards(row):
    """A row as a plain namespace, its distances in yards and its areas in square yards."""
    values = {}
    for name, _, holds in columns(type(row), "yd"):
        value = getattr(row, name)
        if value is not None and holds in ("distance", "area"):
            value /= YARD if holds == "distance" else YARD**2
        values[name] = value
    return SimpleNamespace(**values)


def tables(a_course, **how):
    """All tables of a course, rows in yards."""
    measures = measure_course(a_course, **how)
    result = {
        name: [in_yards(row) for row in rows] for name, rows in vars(measures).items() if name != "problems"
    }
    return SimpleNamespace(problems=measures.problems, **result)


def only(rows, **wanted):
    """The one row with these values."""
    found = [row for row in rows if all(getattr(row, name) == value for name, value in wanted.items())]
    if len(found) != 1:
        raise LookupError(f"{len(found)} rows with {wanted}")
    return found[0]


def straight_hole(*more, length=400.0, green=None, par=4, tees=None, **how):
    """One straight hole up the page, from a tee whose front is the origin to a round green's middle."""
    green = circle(0, length, 15) if green is None else green
    features = [feature("green", 1, green, 1), *(tees or [tee(2, 0, -5)]), *more]
    return course(features, {1: line((0, -5), (0, length))}, {1: par}, **how)


def dogleg_hole(*more, first=240.0, second=160.0, par=4, tees=None, **how):
    """One hole that plays up the page for ``first`` yards from the tee's front, then square to the right."""
    green = circle(second, first, 15)
    features = [feature("green", 1, green, 1), *(tees or [tee(2, 0, -5)]), *more]
    return course(features, {1: line((0, -5), (0, first), (second, first))}, {1: par}, **how)


def image(name="summer", gsd=0.1, rmse=0.3):
    return ImageDate(name, gsd_m=gsd, rmse_m=rmse)
