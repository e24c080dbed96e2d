"""How the ground falls at a place on a green, as it is seen with the approach up; and a rise in figures."""

import math

from ..model.words import said, to_say

LEVEL_PCT = 0.05
"""What falls less than this is told as 0.0 %: it has no direction worth telling."""

_TOLD = (
    to_say("{slope} % to the back"),
    to_say("{slope} % to the back right"),
    to_say("{slope} % to the right"),
    to_say("{slope} % to the front right"),
    to_say("{slope} % to the front"),
    to_say("{slope} % to the front left"),
    to_say("{slope} % to the left"),
    to_say("{slope} % to the back left"),
)
_LEVEL = to_say("{slope} %, level")
_ARROWS = "↑↗→↘↓↙←↖"


def turn_of(azimuth, approach):
    """Degrees clockwise from an approach to a fall, 0 <= turn < 360: 0 to the back, 180 to the front.

    azimuth, approach: both true. None where either is None or no number, as on level ground.
    """
    if azimuth is None or approach is None or not math.isfinite(azimuth - approach):
        return None
    turn = (azimuth - approach) % 360.0
    return 0.0 if turn == 360.0 else turn


def fall_said(percent, turn):
    """A fall in words, such as “2.1 % to the front left”; "" where the slope is not known."""
    if percent is None:
        return ""
    told = _TOLD[_eighth(turn)] if falls(percent, turn) else _LEVEL
    return said(told).format(slope=f"{percent:.1f}")


def fall_sign(percent, turn):
    """The arrow of a fall as seen with the approach up, one of eight; "" on level or unknown ground."""
    return _ARROWS[_eighth(turn)] if falls(percent, turn) else ""


def rise_said(metres):
    """A rise with its sign and one decimal.

    >>> rise_said(3.21), rise_said(-0.44), rise_said(-0.04)
    ('+3.2', '−0.4', '0.0')
    """
    figure = f"{metres:+.1f}"
    return "0.0" if float(figure) == 0.0 else figure.replace("-", "−")


def falls(percent, turn):
    """Whether there is a fall that has a direction."""
    return percent is not None and percent >= LEVEL_PCT and turn is not None


def _eighth(turn):
    return round(turn / 45.0) % 8
