"""The composites of a course: which dates they may be made of, where they lie, and their making.

There is one a hole, over all that its pages may show, or one of the whole course where no hole is drawn.
"""

import os
import tempfile
from dataclasses import dataclass, field

import numpy as np
from shapely.geometry import box

from ..imagery.composing import compose
from ..imagery.drawn import DrawnGround
from ..imagery.grid import Grid
from ..imagery.hand_masks import read_mask
from ..imagery.own_pixels import OwnPixels, bounds_of, own_pixels
from ..imagery.recipe import Recipe
from ..imagery.told import Told
from ..measure.hole import CourseIndex, play_hole
from ..model.errors import YardwrightError
from ..model.words import say
from ..store.date_files import file_of_date
from ..store.files import written_beside
from ..store.image_dates import dates_of, is_fetched, metres_per_unit
from .fetched import endless, fetched, pixel_of, pixels_of
from .rules import rights_not_said
from .windows import SHOWS, plan_window

WHOLE = "course"
RECIPE = "recipe.json"

_ABOUT_M = 30.0


def _column(holds, default=None):
    return field(default=default, metadata={"holds": holds})


@dataclass(frozen=True)
class CompositeRow:
    """How much of a picture is from where. date: its id, or ``lightened`` or ``invented``; share_pct: of the
    picture that shows ground."""

    hole: int = _column("count")
    picture: str = _column("text", "")
    date: str = _column("text", "")
    share_pct: float = _column("percent")
    credit: str = _column("text", "")
    licence: str = _column("text", "")


@dataclass(frozen=True)
class UncoveredRow:
    """A spot of a picture that could not be made clear, in the course's CRS."""

    hole: int = _column("count")
    picture: str = _column("text", "")
    x: float = _column("coordinate")
    y: float = _column("coordinate")
    area: float = _column("area")
    why: str = _column("text", "")


@dataclass(frozen=True)
class Made:
    """One picture made: its path, its rows of both tables, remarks, and a line for the log."""

    path: str
    composites: tuple
    uncovered: tuple
    remarks: tuple
    told: str


# --- dates


def usable_dates(course, place, base, others=None, for_print=True):
    """``([Date, ...], remarks)``: the base and the dates that may show what it hides.

    place: where the course file lies. base: an id. others: ids, None for all that are files, for whoever
    has something fetched from a server is to say so. for_print: whether dates that may not be printed are
    left out. Raises YardwrightError where the base cannot serve.
    """
    dates = {date.id: date for date in dates_of(course, place)}
    if base not in dates:
        raise _unknown(base, dates)
    for other in others or ():
        if other not in dates:
            raise _unknown(other, dates)
    reason = _why_not(dates[base], for_print)
    if reason:
        raise YardwrightError(
            say("{date} cannot be the base: {reason}.", date=base, reason=reason),
            say("Choose another date as base, or change what the image dates say of this one."),
        )
    used, remarks = [dates[base]], []
    for date in dates.values():
        if date.id == base or (others is not None and date.id not in others):
            continue
        reason = _why_not(date, for_print)
        if others is None and is_fetched(date.path):
            reason = reason or say("it lies on a server; it is fetched only where it is named")
        if reason:
            remarks.append(say("{date} was left out: {reason}.", date=date.id, reason=reason))
        else:
            used.append(date)
    if for_print:
        remarks += [rights_not_said(date.id) for date in used if date.print_allowed is None]
    rows = {image.id: image for image in course.images}
    for date in used[1:]:
        if date.move.stays() and rows[date.id].rmse_m is None:
            remarks.append(
                say("{date} is not registered: what is taken from it may lie beside its place.", date=date.id)
            )
    return used, remarks


def _unknown(name, dates):
    known = ", ".join(dates)
    return YardwrightError(
        say("The course has no image date “{name}”.", name=name),
        say("Take one of {known}.", known=known) if known else say("Give the course its image dates first."),
    )


def _why_not(date, for_print):
    """Why a date cannot be used, "" where it can."""
    if for_print and date.print_allowed is False:
        if date.licence:
            return say("its licence ({licence}) is not marked as one to print", licence=date.licence)
        return say("it is not marked as one that may be printed")
    return ""


# --- where


def plan_recipe(course, place, dates, patches, windows, numbers, panel, pixel_m, options):
    """``(Recipe, remarks)`` of the composites of a course.

    dates: the base first. patches, windows: Features of those kinds. numbers: of the holes, None for all.
    panel: the Panel of the pages. pixel_m: the side of a pixel, None for the base's own. Raises
    YardwrightError where nothing can be composed.
    """
    metre = 1 / metres_per_unit(course.crs)
    bounds, remarks = _bounds(course, dates[0], windows, numbers, panel, metre)
    grids = []
    for name, ground in bounds.items():
        middle = ((ground[0] + ground[2]) / 2, (ground[1] + ground[3]) / 2)
        if pixel_m is not None:
            pixels = OwnPixels(pixel_m * metre, 0.0, 0.0)
        elif is_fetched(dates[0].path):
            pixels = OwnPixels(pixel_of(dates[0].id, course), 0.0, 0.0)
        else:
            pixels = own_pixels(dates[0], course.crs, middle)
        grid = pixels.grid(ground, course.crs)
        grids.append((name, grid.geotransform, grid.width, grid.height))
    known = {date.id for date in dates}
    for patch in patches:
        if patch.get("image") not in known:
            remarks.append(
                say("A patch wants {date}, which is not used; it was left out.", date=patch.get("image", "?"))
            )
    masks = ((date.id, file_of_date(place, date.id, "hidden.tif")) for date in dates)
    recipe = Recipe(
        base=dates[0].id,
        dates=tuple(date.id for date in dates),
        crs=course.crs,
        windows=tuple(grids),
        patches=tuple(
            (patch.get("image"), patch.geometry.wkb_hex) for patch in patches if patch.get("image") in known
        ),
        masks=tuple((name, os.path.basename(path)) for name, path in masks if os.path.exists(path)),
        credits=tuple((date.id, date.credit, date.licence) for date in dates),
        options=options,
    )
    return recipe, remarks


def _bounds(course, base, windows, numbers, panel, metre):
    """``({name of the picture: bounds}, remarks)``."""
    index, bounds, remarks = CourseIndex(course), {}, []
    known = [hole.number for hole in course.holes]
    for number in numbers or known:
        found = hole_bounds(course, number, index, panel, windows) if number in known else None
        if found is not None:
            bounds[f"hole_{number:02d}"] = found
        elif numbers:
            remarks.append(say("Nothing of hole {number} is drawn; it was left out.", number=number))
    if numbers and not bounds:
        raise YardwrightError(
            say("Nothing of the holes asked for is drawn."),
            say("Draw their lines of play, or leave HOLES empty."),
        )
    return bounds or {WHOLE: course_bounds(course, base, metre)}, remarks


def hole_bounds(course, number, index, panel, windows=()):
    """(x least, y least, x greatest, y greatest) of the ground that pictures of a hole show, in the course's
    CRS, or None where nothing of it is drawn.

    panel: the Panel its pages have. windows: Features of windows cut before, which are covered too.
    """
    played = play_hole(course, number, index)
    if played is None:
        return None
    shapes = [window.geometry for window in windows if window.get("hole") == number]
    for show in SHOWS:
        if show == "green" and played.green is None:
            continue
        corners = plan_window(played, show, panel, course.crs).grid.corners()
        shapes.append(box(*corners.min(axis=0), *corners.max(axis=0)))
    corners = np.array([shape.bounds for shape in shapes])
    return (*corners[:, :2].min(axis=0).tolist(), *corners[:, 2:].max(axis=0).tolist())


def course_bounds(course, base, metre):
    """The same of a whole course: all that is drawn, the base's picture where nothing is.

    base: a Date. metre: how many units of the course's CRS a metre is.
    """
    if not course.features:
        if is_fetched(base.path):
            raise endless(base.id)
        return bounds_of(base, course.crs)
    corners = np.array([feature.geometry.bounds for feature in course.features])
    margin = _ABOUT_M * metre
    least, greatest = corners[:, :2].min(axis=0) - margin, corners[:, 2:].max(axis=0) + margin
    return (*least.tolist(), *greatest.tolist())


# --- making


def composed(recipe, course, place, dates, folder, progress=None):
    """Make the pictures of a Recipe in a folder, one Made after the other; the recipe is written at the end.

    dates: Dates, the recipe's among them. progress: called with (done, total); False stops with Cancelled.
    A picture that cannot be made is an error only when none can. Raises YardwrightError, Cancelled.
    """
    by_id = {date.id: date for date in dates}
    missing = [name for name in recipe.dates if name not in by_id]
    used = [by_id[name] for name in recipe.dates if name in by_id]
    if not used or used[0].id != recipe.base:
        raise _unknown(recipe.base, by_id)
    remarks = [say("{date} of the recipe is not used.", date=name) for name in missing]
    metre = 1 / metres_per_unit(course.crs)
    ground = DrawnGround(course.features, metre, recipe.options.keep_m)
    patches = [(name, bytes.fromhex(wkb)) for name, wkb in recipe.patches]

    def by_hand(name, grid):
        return read_mask(file_of_date(place, name, "hidden.tif"), grid, by_id[name].move)

    pixels = pixels_of(used, course)
    fetching = 0.3 if any(is_fetched(date.path) for date in used) else 0.0
    told, failures, many = Told(progress), [], 0
    for done, (name, transform, width, height) in enumerate(recipe.windows):
        grid = Grid(width, height, tuple(transform), recipe.crs)
        part = told.narrowed(done / len(recipe.windows), (done + 1) / len(recipe.windows))
        path = os.path.join(folder, f"{name}.tif")
        try:
            with tempfile.TemporaryDirectory(prefix="yardwright-") as aside:
                here = fetched(used, grid, pixels, aside, part.narrowed(0.0, fetching))
                rest = part.narrowed(fetching, 1.0)
                made = compose(
                    here, grid, ground.ground, ground.keep, patches, by_hand, path, rest, recipe.options
                )
        except YardwrightError as error:
            failures.append((name, error))
            remarks.append(say("{name} was not made: {what}", name=name, what=error.what))
            continue
        many += 1
        yield _made(name, made, used, remarks)
        remarks = []
    if not many and failures:
        raise failures[0][1]
    with written_beside(os.path.join(folder, RECIPE)) as draft, open(draft, "w", encoding="utf-8") as file:
        file.write(recipe.text())


def _made(name, made, dates, remarks):
    hole = int(name.split("_")[1]) if name.startswith("hole_") else None
    by_id = {date.id: date for date in dates}
    rows = tuple(
        CompositeRow(
            hole,
            f"{name}.tif",
            which,
            100 * share,
            by_id[which].credit if which in by_id else "",
            by_id[which].licence if which in by_id else "",
        )
        for which, share in made.shares.items()
    )
    spots = tuple(
        UncoveredRow(hole, f"{name}.tif", spot.x, spot.y, spot.area_m2, spot.why) for spot in made.left
    )
    shares = ", ".join(f"{which} {100 * share:.1f} %" for which, share in made.shares.items() if share)
    told = say("{name}: {shares}; {count} spots still hidden", name=name, shares=shares, count=len(spots))
    more = [say("{name}: {remark}", name=name, remark=remark) for remark in made.remarks]
    return Made(made.path, rows, spots, (*remarks, *more), told)
