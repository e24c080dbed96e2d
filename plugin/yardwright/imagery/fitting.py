"""A move fitted to pairs of places: a shift, a similarity, or local shifts, whichever the data asks for."""

from dataclasses import dataclass, replace

import numpy as np
from scipy.interpolate import RBFInterpolator

from .moves import LocalShifts, Move

_CHECK_EACH = 4
"""One tie in so many is kept out of the fit to check it..."""
_ENOUGH_TO_SPARE = 20
"""...where there are so many; with fewer, each is kept out in its turn."""
_NEEDED = {"similarity": 8, "local": 16}
"""Fewer ties are not asked whether they want a freer kind."""
_FEWEST = {"shift": 1, "similarity": 2, "local": 10}
_BETTER = 0.85
"""A freer kind must leave at most so much of the error of the simpler one..."""
_BETTER_PIXELS = 0.1
"""...and be better by at least so many pixels."""
_SMOOTHINGS = (0.01, 0.1, 1.0, 10.0)


@dataclass(frozen=True)
class Pairs:
    """ground, file: (n, 2), where a thing lies and where the file puts it. counts: (n,) of bool, False for
    outliers. weight: (n,), how much each has to say. apart: pairs that are nearer along both axes were told
    by ground they share, and do not check one another."""

    ground: object
    file: object
    counts: object
    weight: object
    apart: float = 0.0

    def only(self, rows):
        """The pairs of some rows."""
        return Pairs(self.ground[rows], self.file[rows], self.counts[rows], self.weight[rows], self.apart)


@dataclass(frozen=True)
class Fit:
    """move, kind, rmse (an axis, in the CRS's unit, of ties kept out; None where none was), roles of the ties
    in order: ``fit``, ``check``, ``outlier``."""

    move: Move
    kind: str
    rmse: float
    roles: tuple


def fit_by_data(pairs, about, pixel):
    """The Fit of matched Pairs: the simplest kind that no freer one clearly beats.

    about: where a turn turns. pixel: how fine the pairs were told, in the CRS's unit. With 20 pairs that
    count or more every fourth is kept out of the fit and checks it; with fewer each is, in its turn.
    """
    counted = np.flatnonzero(pairs.counts)
    spare = len(counted) >= _ENOUGH_TO_SPARE and not pairs.apart
    checks = counted[_dealt(len(counted), _CHECK_EACH) == 0] if spare else counted[:0]
    fitted = np.setdiff1d(counted, checks)
    used = pairs.only(fitted)
    kind, left_out = "shift", _left_out(used, "shift", about)
    for freer in ("similarity", "local"):
        if left_out is not None and len(fitted) >= _NEEDED[freer]:
            error = _left_out(used, freer, about)
            if error is not None and error < min(_BETTER * left_out, left_out - _BETTER_PIXELS * pixel):
                kind, left_out = freer, error
    move = _FITS[kind](used, about)
    rmse = _root(pairs.ground[checks] - move.ahead(pairs.file[checks])) if spare else left_out
    roles = np.full(len(pairs.ground), "outlier", object)
    roles[fitted], roles[checks] = "fit", "check"
    return Fit(move, kind, rmse, tuple(roles))


def fit_by_hand(pairs, about, kind=None):
    """The Fit of Pairs set by hand: a shift of one or two; of three or more a similarity where it leaves less
    at each when it is kept out. kind: ``shift`` or ``similarity`` to have it so."""
    errors = {name: _left_out(pairs, name, about) for name in ("shift", "similarity")}
    if kind is None:
        turned = errors["similarity"]
        kind = "similarity" if turned is not None and turned < _BETTER * errors["shift"] else "shift"
    rmse = errors[kind] if len(pairs.ground) >= 3 else None
    return Fit(_FITS[kind](pairs, about), kind, rmse, ("hand",) * len(pairs.ground))


def _left_out(pairs, kind, about):
    """The rmse of a kind at pairs that were kept out in turn, a fifth of them at a time, or each alone with
    all that share its ground; None where too few are left to fit it."""
    count = len(pairs.ground)
    parts = 5 if count >= _ENOUGH_TO_SPARE and not pairs.apart else count
    off = np.empty((count, 2))
    dealt = _dealt(count, parts)
    for part in range(parts):
        out = dealt == part
        away = np.abs(pairs.ground[:, None] - pairs.ground[out][None]).max(axis=2).min(axis=1)
        used = pairs.only(~out & (away >= pairs.apart))
        if len(used.ground) < _FEWEST[kind]:
            return None
        off[out] = pairs.ground[out] - _FITS[kind](used, about).ahead(pairs.file[out])
    return _root(off)


def _dealt(count, parts):
    """Which of so many parts each of so many ties is dealt to: scattered, for they lie in rows, and each time
    the same."""
    return np.random.default_rng(count).permutation(count) % parts


def _root(off):
    """The standard error along one axis of (n, 2) errors."""
    return float(np.sqrt(np.mean(np.sum(off**2, axis=1)) / 2))


def _shift(pairs, about):
    east, north = np.average(pairs.ground - pairs.file, axis=0, weights=pairs.weight).tolist()
    return Move(east, north)


def _similarity(pairs, about):
    """Least squares: linear in the shift and in stretch times cosine and sine of the turn."""
    x, y = (pairs.file - about).T
    wanted = pairs.ground - about
    one, none = np.ones_like(x), np.zeros_like(x)
    rows = np.vstack([np.column_stack([x, y, one, none]), np.column_stack([y, -x, none, one])])
    root = np.sqrt(np.tile(pairs.weight, 2))
    c, s, east, north = np.linalg.lstsq(rows * root[:, None], np.concatenate(wanted.T) * root, rcond=None)[
        0
    ].tolist()
    turn, stretch = float(np.degrees(np.arctan2(s, c))), float(np.hypot(s, c))
    return Move(east, north, turn, stretch, tuple(about))


def _local(pairs, about):
    """Local shifts over the similarity: a thin plate on the nodes of a grid, as smooth as the data asks."""
    straight = _similarity(pairs, about)
    off = pairs.ground - straight.ahead(pairs.file)
    low, high = pairs.ground.min(axis=0), pairs.ground.max(axis=0)
    span = float((high - low).max())
    places = (pairs.ground - low) / span
    softness = pairs.weight.mean() / pairs.weight
    smoothing = min(_SMOOTHINGS, key=lambda value: _plate_error(places, off, value * softness)) * softness
    step = span / max(8, min(24, int(2 * np.sqrt(len(places)))))
    columns, rows = (int(np.ceil(extent / step)) + 1 for extent in high - low)
    left, top = low[0], high[1]
    nodes = np.stack(
        np.meshgrid(left + step * np.arange(columns), top - step * np.arange(rows)), axis=-1
    ).reshape(-1, 2)
    # Beyond the outermost ties nothing is known: there the shifts stay as they are along the rim.
    inside = (np.clip(nodes, low, high) - low) / span
    shifts = RBFInterpolator(places, off, smoothing=smoothing)(inside).reshape(rows, columns, 2)
    local = LocalShifts(
        float(left),
        float(top),
        float(step),
        shifts[:, :, 0].round(3).tolist(),
        shifts[:, :, 1].round(3).tolist(),
    )
    return replace(straight, local=local)


def _plate_error(places, off, smoothing):
    """What thin plates leave, in all, at ties kept out a fifth at a time. smoothing: (n,)."""
    error = 0.0
    dealt = _dealt(len(places), 5)
    for part in range(5):
        out = dealt == part
        plate = RBFInterpolator(places[~out], off[~out], smoothing=smoothing[~out])
        error += np.sum((plate(places[out]) - off[out]) ** 2)
    return error


_FITS = {"shift": _shift, "similarity": _similarity, "local": _local}
