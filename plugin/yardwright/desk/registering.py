"""Registering the dates of a course: what is asked for, found in the background, and what of it is accepted.

Nothing heavy is imported before it is used.
"""

import math
import os
import shutil
import tempfile
from dataclasses import dataclass

from qgis.core import QgsMapLayerStyle, QgsRasterLayer

from ..model.errors import YardwrightError
from .dates import dates_of as shown_dates
from .dates import default_base, ground_of_course
from .editing import begin_editing
from .words import tr

_NO_MOVE_M = 0.02
"""A shift of less than that, metres, is none."""


@dataclass(frozen=True)
class Asked:
    """What the background is asked: plain values all.

    base: the Date that stays; others: the Dates to lay on it. pixels: what a pixel covers of those that QGIS
    must fetch, by id, in the unit of ``crs``, the course's. extent: x least, y least, x greatest, y greatest
    there. ties: ``{id: [((x, y) where its file puts a spot, (x, y) on the ground)]}``.
    """

    base: object
    others: tuple
    pixels: dict
    extent: tuple
    crs: str
    ties: dict


def dates_to_register(in_hand):
    """``(the id of the date that is proposed as base, the course's Dates newest first)``."""
    from ..store.image_dates import dates_of

    dates = [one for one in dates_of(in_hand.course(), in_hand.place) if one.id]
    dates.sort(key=lambda date: date.taken, reverse=True)
    return default_base(in_hand, [date.id for date in dates]), dates


def asked_of(in_hand, base, others, ties):
    """What the background is asked, Asked, of Dates. Raises YardwrightError where the course has no place."""
    from ..guide.fetched import pixels_of

    layer, course = in_hand.layer("hole"), in_hand.course()
    box = ground_of_course(in_hand, layer.crs())
    extent = box.xMinimum(), box.yMinimum(), box.xMaximum(), box.yMaximum()
    pixels = pixels_of((base, *others), course)
    return Asked(base, tuple(others), pixels, extent, course.crs, ties)


def left_by(ties, metre):
    """What is left at each of several ties set by hand when they are fitted together, metres.

    ties: as of ``Asked``; metre: metres in their unit. [] where they cannot be fitted.
    """
    from ..imagery.registration import by_hand

    try:
        found = by_hand("", ties, ties[0][1], metre)
    except YardwrightError:
        return []
    return [math.hypot(tie.off_east, tie.off_north) for tie in found.ties]


def register_all(asked, found, progress):
    """Lay each of the others on the base; ``found``, a dict, is given a Registration or an error by id.

    progress: called with (done, total); False stops with Cancelled, and what was found until then stays.
    """
    from ..imagery.registration import register
    from ..imagery.told import Told

    told, total = Told(progress), len(asked.others)
    with tempfile.TemporaryDirectory(prefix="yardwright-") as aside:
        base = _readable(asked, asked.base, aside, told.narrowed(0.0, 0.1))
        for number, date in enumerate(asked.others):
            part = told.narrowed(0.1 + 0.9 * number / total, 0.1 + 0.9 * (number + 1) / total)
            told(0.1 + 0.9 * number / total)
            told.check()
            try:
                if asked.ties.get(date.id):
                    readable = date
                else:
                    readable = _readable(asked, date, aside, part.narrowed(0.0, 0.4))
                found[date.id] = register(
                    *(base, readable, asked.extent, asked.crs),
                    progress=(part if readable is date else part.narrowed(0.4, 1.0)).count,
                    ties_by_hand=asked.ties.get(date.id, ()),
                )
            except YardwrightError as error:
                found[date.id] = error
    return found


def _readable(asked, date, aside, told):
    """A Date as a file that GDAL opens: what only QGIS can fetch is fetched into the folder ``aside``."""
    from ..guide.fetched import readable
    from ..imagery.registration import FAR_M
    from ..store.image_dates import metres_per_unit

    x0, y0, x1, y1 = asked.extent
    far = FAR_M / metres_per_unit(asked.crs)
    bounds = (x0 - far, y0 - far, x1 + far, y1 + far)
    return readable(date, bounds, asked.crs, asked.pixels[date.id], aside, told.count)


def how(registration):
    """How a date was moved, in a word or two."""
    return {
        "shift": tr("shifted"),
        "similarity": tr("shifted and turned"),
        "local": tr("from place to place"),
    }.get(registration.kind, registration.kind)


def told(registration):
    """What a Registration found, in words of the course and not of the trade."""
    east, north = registration.shift
    far = math.hypot(east, north)
    said = [tr("It lies right as it is.")]
    if far >= _NO_MOVE_M:
        # The picture is moved back by what it lay off.
        said = [tr("It lay {} m too far to the {}.").format(f"{far:.2f}", _side(-east, -north))]
    if registration.kind == "similarity":
        turn, size = registration.move.turn, registration.move.stretch
        said.append(
            tr("It is turned by {}° and made {} % larger.").format(f"{turn:.3f}", f"{100 * (size - 1):.2f}")
        )
    elif registration.kind == "local":
        said.append(tr("It is bent: each place is moved by what is found there."))
    return " ".join(filter(None, [*said, registration.remark]))


def _side(east, north):
    """The side of the compass that a way leads to, one of eight, in words."""
    names = (
        tr("north"),
        tr("north-east"),
        tr("east"),
        tr("south-east"),
        tr("south"),
        tr("south-west"),
        tr("west"),
        tr("north-west"),
    )
    return names[round(math.degrees(math.atan2(east, north)) / 45) % 8]


def in_unit(metres, unit):
    """A length in metres as a tip says it in the course's unit, to a hundredth."""
    from ..measure.units import to_unit

    return f"{to_unit(metres, unit):+.2f} {unit}"


def file_places(in_hand, date, places):
    """Where the file of a Date puts spots that the map shows at ``places``, [(x, y)] in the course's CRS."""
    if _shown_moved(in_hand, date):
        return [tuple(place) for place in date.move.back(places).tolist()]
    return list(places)


def ground_places(in_hand, date, places):
    """Where on the ground spots lie that the map shows of a Date at ``places``."""
    if _shown_moved(in_hand, date):
        return list(places)
    return [tuple(place) for place in date.move.ahead(places).tolist()]


def _shown_moved(in_hand, date):
    """Whether the layer of the project that shows a Date shows it moved already."""
    from ..store.image_dates import moved_path

    shown = next((one.layer_id for one in shown_dates(in_hand) if one.id == date.id), None)
    layer = in_hand.project.mapLayer(shown) if shown else None
    if layer is None or date.move.stays():
        return date.move.stays()
    own = os.path.realpath(layer.source().split("|")[0])
    return os.path.normcase(own) == os.path.normcase(os.path.realpath(moved_path(in_hand.place, date.id)))


class LayersAsFound:
    """Raster layers, not of the project, that show dates where they were found to lie. Their files are
    written to a folder of their own, gone once ``let_go`` is called."""

    def __init__(self, in_hand):
        self.in_hand = in_hand
        self._folder, self._layers = None, {}

    def layer(self, date, move):
        """The layer that shows a Date moved by a Move; None where no file of it can be moved so."""
        from ..store.image_dates import is_fetched

        if not date.path or is_fetched(date.path):
            return None
        key = date.id, move, id(move.local)
        if key not in self._layers:
            self._layers[key] = self._made(date, move)
        return self._layers[key]

    def _made(self, date, move):
        from ..imagery.moved_file import write_moved

        self._folder = self._folder or tempfile.mkdtemp(prefix="yardwright-")
        path = os.path.join(self._folder, f"{len(self._layers)}.vrt")
        write_moved(date, move, self.in_hand.course().crs, path)
        layer = QgsRasterLayer(path, date.id)
        shown = next((one.layer_id for one in shown_dates(self.in_hand) if one.id == date.id), None)
        like = self.in_hand.project.mapLayer(shown) if shown else None
        if like is not None:
            style = QgsMapLayerStyle()
            style.readFromLayer(like)
            style.writeToLayer(layer)
            layer.setCrs(like.crs())
        return layer

    def let_go(self):
        """Take the files away."""
        self._layers = {}
        if self._folder is not None:
            shutil.rmtree(self._folder, ignore_errors=True)
            self._folder = None


def accept(in_hand, registrations, base_id):
    """Move dates as their Registrations say, and with them what was drawn from them; how many features went
    along. In the edit buffers: one step to undo for each date. Raises YardwrightError."""
    from ..store.registering import keep_registration

    layers = in_hand.layers()
    # Only where one of them is being edited all is done in the buffers, and saved by whoever draws.
    begin_editing(layers.layers["image"])
    count = 0
    for one in registrations:
        count += sum(number for _, number in keep_registration(layers, one, base_id).features)
    for layer in layers.layers.values():
        layer.triggerRepaint()
    return count
