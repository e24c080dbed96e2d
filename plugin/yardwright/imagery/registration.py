"""Registration: how the picture of a date must be moved so that it lies where that of the base lies.

The two are read in square tiles on one grid and correlated by the directions of their edges
(``imagery.alike``), coarse to fine. Each tile says how far the picture lies off there; tiles that their
neighbours contradict are set aside, some are kept out of the fit to check it, and a move is fitted to the
rest (``imagery.fitting``). Memory is bounded by the tiles, not by the images.
"""

import math
from contextlib import ExitStack
from dataclasses import dataclass, replace

import numpy as np
from scipy.spatial import cKDTree

from ..model.errors import YardwrightError
from ..model.words import say
from .alike import edges_of, likeness, peak_of
from .fitting import Pairs, fit_by_data, fit_by_hand
from .grid import Grid, grid_crs
from .moves import STAY, Move
from .reach import reach_of
from .told import Told

FAR_M = 15.0
"""How far a picture may lie off its place, metres, to be found without help."""
_MOST_TILES = 64
_FIRST_TILES = 16
_TILES = ((256, 256, 25), (192, 192, 25), (128, 128, 25), (192, 96, 16), (128, 64, 16), (96, 48, 0))
"""Side of a tile and step to the next, pixels, and of how many at least it must be to be chosen."""
_FEWEST_TILES = 4
_COARSE_SIDE = 256
_COARSE_TILES = 16
_LOCALLY_M = 2.0
"""How far places of one picture may lie apart from what is common to all, metres."""
_CLEAR = 2.5
"""How far above all others, in standard deviations of chance, the best place of a tile must stand."""
_LEAST_SEEN = 0.3
"""How much of a tile must show ground in the light in both."""
_NEIGHBOURS = 8


@dataclass(frozen=True)
class Tie:
    """What one tile, or a pair of places set by hand, says.

    x, y: the place on the base, in the course's CRS. east, north: by how many metres the file’s picture is to
    be moved there. off_east, off_north: what the move leaves of that, metres. role: ``fit``, ``check`` (kept
    out of the fit), ``outlier`` or ``hand``. clear: how far above chance it stands; None for one set by hand.
    """

    x: float
    y: float
    east: float
    north: float
    off_east: float
    off_north: float
    role: str
    clear: float = None


@dataclass(frozen=True)
class Registration:
    """How a date lies to the base.

    move: what brings its file onto the ground, in the CRS and unit of the course. kind: ``shift``,
    ``similarity`` or ``local``. rmse: metres, the standard error along one axis that ``measure.accuracy``
    takes: the root of half the mean square of what the move leaves at ties it was not fitted to. (NSSDA,
    FGDC-STD-007.3-1998, states RMSE_r, radial: that is this times the root of 2.) None where nothing could be
    kept out of the fit. pixel: metres, of the grid the two were compared on, None by hand. remark: what a
    person should know.
    """

    id: str
    move: Move
    kind: str
    rmse: float
    ties: tuple
    pixel: float = None
    remark: str = ""

    @property
    def shift(self):
        """By how much the move moves the picture in the mean of the ties, metres east and north."""
        by = [(tie.east - tie.off_east, tie.north - tie.off_north) for tie in self.ties]
        return tuple(np.mean(by, axis=0).tolist())


class NotRegistrable(YardwrightError):
    """Two dates that cannot be laid one on the other, and why."""


def register(base, other, extent, crs, progress=None, ties_by_hand=(), kind=None):
    """The Registration of the Date ``other`` on the Date ``base``.

    extent: x least, y least, x greatest, y greatest in ``crs`` (the course's, projected): where to look.
    The base is taken as its own move lays it, the other as its file lies. progress: called with (done,
    total); False stops with Cancelled. ties_by_hand: ``[((x, y) where the other's file puts it, (x, y) on the
    ground, as the base shows it)]``; they alone decide then, see ``fitting.fit_by_hand``. kind: ``shift`` or
    ``similarity`` for ties by hand, None for what they ask for.

    Raises NotRegistrable, YardwrightError where a date cannot be read, Cancelled.
    """
    metre = _metre(crs)
    about = tuple(round(middle, 0) for middle in ((extent[0] + extent[2]) / 2, (extent[1] + extent[3]) / 2))
    if len(ties_by_hand):
        return by_hand(other.id, ties_by_hand, about, metre, kind)
    told = Told(progress)
    with ExitStack() as stack:
        pair = _Pair(base, other, extent, crs, metre, stack)
        guess = _coarse(pair, _known_before(other.move, metre), told.narrowed(0.0, 0.2))
        pairs, _ = _matched(pair, guess, _FIRST_TILES, told.narrowed(0.2, 0.45))
        found = fit_by_data(pairs, about, pair.pixel).move
        # Read again through what was found, nothing is halfway between pixels any more.
        pairs, clear = _matched(pair, replace(found, local=None), _MOST_TILES, told.narrowed(0.45, 1.0))
        fit = fit_by_data(pairs, about, pair.pixel)
        pixel = pair.pixel * metre
    ties = _ties(pairs, fit, metre, clear)
    remark = "" if fit.rmse is not None else _unchecked()
    return Registration(other.id, fit.move, fit.kind, _in_metres(fit.rmse, metre), ties, pixel, remark)


def by_hand(date_id, ties, about, metre, kind=None):
    """The Registration of a date by ties set by hand, as of ``register``; ``about``, ``metre``: where a turn
    turns, metres in the unit of the ties. The rmse is None with fewer than three. Raises NotRegistrable."""
    file, ground = (np.array([tie[k] for tie in ties], dtype=float).reshape(-1, 2) for k in (0, 1))
    pairs = Pairs(ground, file, np.ones(len(ground), bool), np.ones(len(ground)))
    least = 2 if kind == "similarity" else 1
    if not np.isfinite([file, ground]).all() or len(np.unique(file, axis=0)) < max(least, len(file)):
        raise NotRegistrable(
            say("Tie points of {date} are too few or lie on one another.", date=date_id),
            say("Set one for a shift, two well apart for a turn, each in a place of its own."),
        )
    fit = fit_by_hand(pairs, about, kind)
    ties_set = _ties(pairs, fit, metre, [None] * len(ground))
    remark = "" if fit.rmse is not None else _unchecked()
    return Registration(date_id, fit.move, fit.kind, _in_metres(fit.rmse, metre), ties_set, None, remark)


def _unchecked():
    return say("There are too few places to keep some out as a check: the error is not known.")


def _in_metres(value, metre):
    return None if value is None else value * metre


def _metre(crs):
    reference = grid_crs(Grid(1, 1, (0, 1, 0, 0, 0, -1), crs))
    if not reference.IsProjected():
        raise YardwrightError(
            say("The course's CRS counts in degrees: pictures cannot be registered in it."),
            say("Keep the course in a projected system, such as the UTM zone of its place."),
        )
    return reference.GetLinearUnits()


def _known_before(move, metre):
    """Where to begin: at the move known before where it reaches further than is searched, else at none."""
    straight = replace(move, local=None)
    near = math.hypot(move.east, move.north) * metre < FAR_M / 2
    upright = abs(move.turn) < 0.2 and abs(move.stretch - 1) < 0.003
    return STAY if near and upright else straight


class _Pair:
    """The two dates, open, and where both lie. pixel: of the coarser one; bounds: what both cover of the
    extent, the other's being unsure by ``FAR_M``. All in the CRS's unit."""

    def __init__(self, base, other, extent, crs, metre, stack):
        self.crs, self.metre = crs, metre
        self.base_id, self.id = base.id, other.id
        of_base, of_other = reach_of(base, crs), reach_of(other, crs)
        self.pixel = max(of_base.pixel, of_other.pixel)
        self.bounds = _common(
            extent,
            _moved(of_base.bounds, base.move),
            _wider(_moved(of_other.bounds, other.move), FAR_M / metre),
        )
        if self.bounds is None:
            raise NotRegistrable(
                say("{date} and {base} show no common ground of the course.", date=other.id, base=base.id),
                say("Choose a base that covers the course, and check the CRS of both images."),
            )
        self._base = stack.enter_context(base.open())
        # The other is read as its file lies, whatever it was moved by before.
        self._other = stack.enter_context(replace(other, move=STAY).open())

    def tiles(self, pixel, side, step, most):
        """Where square tiles lie, ``[(left, top)]``: evenly spread, ``step`` pixels apart or more, at most
        ``most``."""
        x0, y0, x1, y1 = self.bounds
        columns, rows = (max(int((extent / pixel - side) / step + 1), 1) for extent in (x1 - x0, y1 - y0))
        if columns * rows > most:
            thin = math.sqrt(columns * rows / most)
            columns = min(max(int(columns / thin), 1), most)
            rows = min(max(int(rows / thin), 1), most // columns)
        size = side * pixel
        return [(x, y) for y in _spread(y1, y0 + size, rows) for x in _spread(x0, x1 - size, columns)]

    def edges(self, left, top, pixel, side, reach, guess):
        """The Edges of base and other about a tile, ``reach`` wider; None where either shows too little."""
        size = side + 2 * reach
        grid = Grid(size, size, (left - reach * pixel, pixel, 0, top + reach * pixel, 0, -pixel), self.crs)
        base = edges_of(self._base.pixels(grid)).within(reach)
        if np.count_nonzero(base.seen) < side * side * _LEAST_SEEN:
            return None
        other = edges_of(self._other.pixels(guess.grid(grid)))
        if np.count_nonzero(other.within(reach).seen) < side * side * _LEAST_SEEN:
            return None
        return base, other


def _spread(first, last, count):
    """``count`` places from first to last; one alone is halfway."""
    return [(first + last) / 2] if count == 1 else np.linspace(first, last, count).tolist()


def _moved(bounds, move):
    x0, y0, x1, y1 = bounds
    corners = move.ahead([(x0, y0), (x0, y1), (x1, y0), (x1, y1)])
    return (*corners.min(axis=0), *corners.max(axis=0))


def _wider(bounds, by):
    x0, y0, x1, y1 = bounds
    return x0 - by, y0 - by, x1 + by, y1 + by


def _common(*boxes):
    """What boxes have in common, None for nothing."""
    x0, y0 = (max(box[k] for box in boxes) for k in (0, 1))
    x1, y1 = (min(box[k] for box in boxes) for k in (2, 3))
    return (x0, y0, x1, y1) if x1 > x0 and y1 > y0 else None


# --- coarse to fine ------------------------------------------------------------------------------------


def _coarse(pair, guess, told):
    """The guess made better by what all tiles say together, first with large pixels, then with smaller
    ones."""
    x0, y0, x1, y1 = pair.bounds
    far = FAR_M / pair.metre
    pixel = max(pair.pixel, min(far / 12, min(x1 - x0, y1 - y0) / 200))
    reach = math.ceil(far / pixel)
    while True:
        peak = _together(pair, pixel, reach, guess, told)
        if peak is not None:
            guess = _nudged(guess, peak, pixel)
        if pixel <= 4 * pair.pixel:
            return guess
        pixel, reach = max(pixel / 4, pair.pixel), 10


def _together(pair, pixel, reach, guess, told):
    """The Peak of the mean surface of tiles; None without one."""
    x0, y0, x1, y1 = pair.bounds
    side = int(min(_COARSE_SIDE, (x1 - x0) / pixel, (y1 - y0) / pixel))
    total, pixels = 0, 0
    for left, top in pair.tiles(pixel, side, side, _COARSE_TILES):
        told(0.5)
        told.check()
        both = pair.edges(left, top, pixel, side, reach, guess)
        if both is not None:
            total = total + likeness(*both, reach)
            pixels += np.count_nonzero(both[0].seen)
    return None if np.ndim(total) == 0 else peak_of(total, pixels)


def _nudged(move, peak, pixel):
    """A move changed so that what lay off by the peak lies right."""
    return replace(move, east=move.east - peak.right * pixel, north=move.north + peak.down * pixel)


def _matched(pair, guess, most, told):
    """What at most so many tiles say when the other is read through a guess: Pairs, outliers marked, and how
    clear each is. Raises NotRegistrable."""
    reach = int(np.clip(math.ceil(_LOCALLY_M / pair.metre / pair.pixel), 8, 24))
    side, step, places = _fine_tiles(pair, most)
    ground, file, clear = [], [], []
    seen = 0
    for done, (left, top) in enumerate(places):
        told(done / len(places))
        told.check()
        both = pair.edges(left, top, pair.pixel, side, reach, guess)
        if both is None:
            continue
        seen += 1
        peak = peak_of(likeness(*both, reach), np.count_nonzero(both[0].seen))
        if peak is None or peak.clear < _CLEAR:
            continue
        middle = np.array([left + side * pair.pixel / 2, top - side * pair.pixel / 2])
        ground.append(middle)
        file.append(guess.back(middle + np.array([peak.right, -peak.down]) * pair.pixel)[0])
        clear.append(peak.clear)
    if seen < _FEWEST_TILES:
        raise _too_few(pair)
    if len(ground) < max(_FEWEST_TILES, seen / 8):
        raise NotRegistrable(
            say(
                "{date} and {base} are not alike: of {seen} places compared, {found} could be told again.",
                date=pair.id,
                base=pair.base_id,
                seen=seen,
                found=len(ground),
            ),
            say(
                "Check that both show this ground and lie within {far} m of it, or set tie points by hand.",
                far=f"{FAR_M:.0f}",
            ),
        )
    apart = side * pair.pixel if step < side else 0.0
    # Shade and crowns that draw a tile aside leave it less clear as well.
    weight = np.minimum(clear, 2 * np.median(clear)) ** 2
    found = Pairs(np.array(ground), np.array(file), np.ones(len(ground), bool), weight, apart)
    return replace(found, counts=_agreeing(found, guess, pair)), clear


def _fine_tiles(pair, most):
    """``(side, step, places)`` of the tiles to compare, in pixels: on little ground they overlap by half."""
    x0, y0, x1, y1 = pair.bounds
    if min(x1 - x0, y1 - y0) < _TILES[-1][0] * pair.pixel:
        raise _too_few(pair)
    for side, step, enough in _TILES:
        if len(pair.tiles(pair.pixel, side, step, math.inf)) >= enough:
            break
    return side, step, pair.tiles(pair.pixel, side, step, most)


def _too_few(pair):
    return NotRegistrable(
        say(
            "{date} and {base} have too little ground in common to be registered.",
            date=pair.id,
            base=pair.base_id,
        ),
        say("Take images that cover more of the course, or set tie points by hand."),
    )


def _agreeing(found, guess, pair):
    """Which of the ties lie off as their neighbours do, (n,) of bool. Raises NotRegistrable."""
    off = (found.ground - guess.ahead(found.file)) / pair.pixel
    off = off - _slope(found.ground, off)
    counts = np.ones(len(off), bool)
    for _ in range(3):
        tree = cKDTree(found.ground[counts])
        near = tree.query(found.ground, k=min(_NEIGHBOURS + 1, int(counts.sum())))[1]
        usual = np.median(off[counts][near], axis=1)
        apart = np.hypot(*(off - usual).T)
        spread = 1.4826 * np.median(apart[counts])
        counts = apart <= max(3 * spread, 0.5)
        if counts.sum() < _FEWEST_TILES:
            break
    if spread > 1.5 or counts.sum() < max(_FEWEST_TILES, len(off) / 2):
        raise NotRegistrable(
            say(
                "Places of {date} lie off {base} each in another way: the one cannot be laid on the other.",
                date=pair.id,
                base=pair.base_id,
            ),
            say("Set tie points by hand, or take another image of that date."),
        )
    return counts


def _slope(places, values):
    """The inclined plane, (n, 2), that lies amid most of the values at places, whatever the others are."""
    terms = np.column_stack(
        [np.ones(len(places)), (places - places.mean(axis=0)) / np.ptp(places, axis=0).max()]
    )
    weight = np.ones(len(places))
    for _ in range(12):
        plane = terms @ np.linalg.lstsq(terms * weight[:, None], values * weight[:, None], rcond=None)[0]
        weight = np.maximum(np.hypot(*(values - plane).T), 0.05) ** -0.5
    return plane


def _ties(pairs, fit, metre, clear):
    """The Ties of a fit, in metres."""
    moved = (pairs.ground - pairs.file) * metre
    off = (pairs.ground - fit.move.ahead(pairs.file)) * metre
    rows = zip(pairs.ground.tolist(), moved.tolist(), off.tolist(), fit.roles, clear)
    return tuple(Tie(*place, *by, *left, role, stands) for place, by, left, role, stands in rows)
