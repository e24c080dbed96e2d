"""A hole's green on its page: approach up, at a true scale, with its depth and width, a grid and the pins.

Never larger than 1:480 (Rules of Golf, Rule 4.3a); the scale is written beside it.
"""

import math

from shapely.geometry import LineString, box

from ..measure.units import UNITS, to_unit, whole
from ..model.errors import YardwrightError
from ..model.geometry import map_points
from ..model.remarks import Remark
from ..model.words import say
from .drawing import DARK, QUIET, Drawing, edged, paper
from .sheet_cells import chosen_scale, figures_said
from .sheet_greens import (
    approach_arrow,
    depth_line,
    ground,
    numbered,
    pin_lines,
    plotted,
    ruler,
    scale_needed,
    view_green,
)
from .sheet_parts import HAIR, LEAST_SIZE, SOFT, Line, Text, cap_of, fitted, height_of, width_of

GRID_EVERY = 5
"""Of the course's unit, from the front on and from the approach line to either side."""
_LEAST_BOX_MM = 12.0
_ABOUT_MM = 0.4


def green_panel(course, index, number, size, rows=(), round_number=None, grid=False, scale=None):
    """The Drawing of a hole's green; size: (width, height) in mm.

    rows: PinRows; those of ``round_number`` are shown with their two lengths, all rounds' as numbers where it
    is None. Their figures stand below. grid: whether lines run every five of the unit over the green. scale:
    the denominator; None: the largest multiple of ten that fits, 480 at least. Raises YardwrightError where
    a scale is asked for that is too large. Without a green it says so.
    """
    width, height = size
    rows = [row for row in rows if round_number in (None, row.round)]
    view = view_green(course, index, number, rows)
    unit = course.settings.unit
    if view is None:
        text, fits = fitted(say("no green drawn"), width - 1.0, LEAST_SIZE + 1.0)
        items = (paper(width, height), Text(0.5, 1.0 + cap_of(fits), text, fits, tone=QUIET, about="none"))
        remark = Remark(say("hole {number} has no green to show", number=number), "no_green")
        return Drawing(width, height, items, (), (remark,))

    listed, remarks = _listed(view, unit, width, max(height * 0.42, 0.0))
    top = cap_of(7.5) + height_of(LEAST_SIZE) * 1.35 + 1.6
    bottom = height - _LINE * len(listed) - (1.2 if listed else 0.3)
    inside = (width_of("40", LEAST_SIZE) + 2.6, top, width - 0.3, bottom)
    if inside[2] - inside[0] < _LEAST_BOX_MM or inside[3] - inside[1] < _LEAST_BOX_MM:
        raise YardwrightError(
            say("A green does not fit into {width} x {height} mm.", width=f"{width:g}", height=f"{height:g}"),
            say("Choose a larger page."),
        )
    needed = scale_needed([view], inside[2] - inside[0] - _ABOUT_MM, inside[3] - inside[1] - _ABOUT_MM)
    scale = chosen_scale(needed, scale)
    plot = plotted(view, inside, scale)
    left, right = inside[0], inside[2]
    edge = ((left, top), (right, top), (right, bottom), (left, bottom), (left, top))
    items = [paper(width, height), *ground(plot), Line(edge, 0.12, HAIR)]
    if grid:
        items += grid_lines(plot, unit)
    made, places = depth_line(plot, unit, 0.8)
    items += made
    items += ruler(plot, unit, LEAST_SIZE, inside[0] - 0.8)
    made, spots, lost = _pins(plot, round_number)
    items += made
    items += _head(view, course, number, unit, width, scale)
    items += approach_arrow(width - 1.0, top - 0.6, 2.5)
    for line, text in enumerate(listed):
        base = height - _LINE * (len(listed) - line) + _LINE * 0.78 - 0.2
        items.append(Line(((0.0, base - _LINE * 0.8), (width, base - _LINE * 0.8)), 0.12, HAIR))
        items += _row(text, width, base)
    remarks += [
        Remark(
            say("the number of round {round} finds no room on hole {number}", round=pin.round, number=number),
            "no_room",
        )
        for pin in lost
    ]
    remarks += [
        Remark(
            say(
                "the pin of round {round} is not on or near the green of hole {hole}",
                round=row.round,
                hole=row.hole,
            ),
            "lost_pin",
        )
        for row in view.lost
    ]
    return Drawing(width, height, tuple(items), (*places, *spots), tuple(remarks))


_LINE = 1.28 * height_of(LEAST_SIZE + 0.5)


def _head(view, course, number, unit, width, scale):
    """The word, the scale, and how deep and wide the green is."""
    scale_said = say("1:{scale}", scale=f"{scale:g}")
    room = width - width_of(scale_said, LEAST_SIZE) - 1.5
    title, size = fitted(say("Green"), room, 7.5, True)
    base = cap_of(7.5) + 0.3
    made = [
        Text(0.0, base, title, size, True, tone=DARK, about="title"),
        Text(width, base, scale_said, LEAST_SIZE, align="right", tone=QUIET, about="scale"),
    ]
    across = width_across(view)
    depth = str(whole(to_unit(view.depth, unit)))
    text = (
        say("{depth} deep", depth=depth)
        if across is None
        else say("{depth} deep · {width} wide", depth=depth, width=whole(to_unit(across, unit)))
    )
    text, size = fitted(text, width - 3.0, LEAST_SIZE + 0.5)
    made.append(Text(0.0, base + 1.35 * height_of(LEAST_SIZE) + 0.2, text, size, tone=DARK, about="size"))
    return made


def width_across(view):
    """The green's width square to the approach, amid its depth, metres; None where it has none there."""
    from ..measure.line import chord_nearest, chords

    chord = chord_nearest(chords(view.green, (0.0, view.depth / 2), (1.0, 0.0)))
    return None if chord is None else chord[1] - chord[0]


def grid_lines(plot, unit):
    """Lines every five of the unit over the green, from its front and its approach line."""
    step = GRID_EVERY * UNITS[unit]
    frame = box(*plot.box)
    green = map_points([plot.view.green], plot.to_page)[0].buffer(0).intersection(frame)
    low_x, low_y, high_x, high_y = plot.view.green.bounds
    lines = [
        ((low_x, n * step), (high_x, n * step))
        for n in range(math.ceil(low_y / step), math.floor(high_y / step) + 1)
    ]
    lines += [
        ((n * step, low_y), (n * step, high_y))
        for n in range(math.ceil(low_x / step), math.floor(high_x / step) + 1)
    ]
    return [
        item
        for start, end in lines
        for item in edged(LineString([plot.at(*start), plot.at(*end)]).intersection(green), 0.1, SOFT)
    ]


def _pins(plot, round_number):
    if round_number is None or not plot.view.pins:
        return numbered(plot, [str(pin.round) for pin in plot.view.pins], 7.5, 0.75)
    items = [item for pin in plot.view.pins for item in pin_lines(plot, pin, 0.7)]
    made, places, lost = numbered(plot, [str(pin.round) for pin in plot.view.pins], 7.5, 0.75)
    return items + made, places, lost


def _listed(view, unit, width, room):
    """``(rows of texts, remarks)``: the figures of the pins, as many as there is room for."""
    lines = []
    for pin in view.pins:
        (on, on_word), (off, off_word) = figures_said(pin.row, unit)
        lines.append((str(pin.round), f"{on} {on_word}", " ".join(filter(None, (off, off_word)))))
    fit = max(math.floor(room / _LINE), 0)
    if len(lines) <= fit:
        return lines, []
    text = say(
        "hole {number}: figures of {count} pins find no room below the green",
        number=view.hole,
        count=len(lines) - fit,
    )
    return lines[:fit], [Remark(text, "no_room")]


def _row(texts, width, base):
    number, on, off = texts
    size = LEAST_SIZE + 0.5
    first = width_of("88", size, True) + 1.2
    second = first + (width - first) * 0.36
    made = [Text(0.2, base, number, size, True, tone=DARK, about="pin")]
    for text, start, end in ((on, first, second), (off, second, width)):
        text, fits = fitted(text, end - start - 0.6, size)
        made.append(Text(start, base, text, fits, tone=DARK, about="pin"))
    return made
