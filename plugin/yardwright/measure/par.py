"""Par by length: Rules of Handicapping, Appendix F (World Handicap System)."""

from ..model.words import say
from .units import to_unit, whole

LIMITS = {
    "men": {
        "yd": {3: (0, 260), 4: (240, 490), 5: (450, 710), 6: (670, None)},
        "m": {3: (0, 240), 4: (220, 450), 5: (410, 650), 6: (610, None)},
    },
    "women": {
        "yd": {3: (0, 220), 4: (200, 420), 5: (370, 600), 6: (570, None)},
        "m": {3: (0, 200), 4: (180, 380), 5: (340, 550), 6: (520, None)},
    },
}
"""``LIMITS[players][unit][par]``: least and greatest length. They overlap: there both pars are right."""


def pars_for(length_m, unit, players):
    """The pars a length may have, in order, for ``men`` or ``women``.

    >>> pars_for(250 * 0.9144, "yd", "men")
    (3, 4)
    """
    length = whole(to_unit(length_m, unit))
    return tuple(
        par
        for par, (least, greatest) in LIMITS[players][unit].items()
        if length >= least and (greatest is None or length <= greatest)
    )


def judge_par(par, length_m, unit, players=None):
    """What the length says of the par: ``fits``, ``short``, ``long``, or ``none`` without a par.

    players: ``men``, ``women`` or None: it then fits when it fits either table.
    """
    if par is None:
        return "none"
    fitting = [pars_for(length_m, unit, who) for who in ([players] if players else ("men", "women"))]
    if any(par in pars for pars in fitting):
        return "fits"
    return "long" if par < min(min(pars) for pars in fitting) else "short"


def check_par(par, length_m, unit, players=None):
    """The same in words: ``fits``, ``short for par 5``, ``long for par 3`` or ``no par``."""
    verdict = judge_par(par, length_m, unit, players)
    if verdict == "fits":
        return say("fits")
    if verdict == "none":
        return say("no par")
    return say("long for par {par}", par=par) if verdict == "long" else say("short for par {par}", par=par)
