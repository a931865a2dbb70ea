"""The air at a pour: dew point, the surface that lags behind the air, and the least margin.

Magnus' formula over water with the constants of Sonntag (1990) as in WMO-No. 8; the surface
follows the air as a first-order lag.
"""

from __future__ import annotations

import math
from bisect import bisect_left, bisect_right
from typing import TYPE_CHECKING, NamedTuple

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.science.history import History

_FORGOTTEN_LAGS = 25.0
"""After so many lags a surface has forgotten where it came from (e^-25 is nothing)."""

_LOOK_EVERY_SECONDS = 600.0


class Moment(NamedTuple):
    """The air at an instant [s]: °C, and relative humidity in % or None."""

    second: float
    celsius: float
    humidity: float | None


def dew_point(celsius: float, humidity: float) -> float:
    """Return the dew point [°C] of air at `celsius` (-45 to 60) and `humidity` [%].

    Perfectly dry air has none: minus infinity.

    Examples
    --------
    >>> round(dew_point(20.0, 60.0), 1)
    12.0
    """
    if humidity <= 0.0:
        return -math.inf
    gamma = math.log(humidity / 100.0) + 17.62 * celsius / (243.12 + celsius)
    return 243.12 * gamma / (17.62 - gamma)


def moments(history: History, start: float, end: float, every: float) -> Iterator[Moment]:
    """The air from `start` to `end` [s], at least `every` seconds, inside the history.

    A step is seen from both sides.
    """
    seconds = history.seconds
    first = max(0, bisect_right(seconds, start) - 1)
    for index in range(first, min(bisect_left(seconds, end), len(seconds) - 1)):
        low, high = max(seconds[index], start), min(seconds[index + 1], end)
        count = max(1, math.ceil((high - low) / every))
        for step in range(count + 1):
            yield _inside(history, index, low + (high - low) * step / count)


def _inside(history: History, index: int, second: float) -> Moment:
    start, end = history.seconds[index : index + 2]
    part = (second - start) / (end - start) if end > start else 0.0
    cold, warm = history.celsius[index : index + 2]
    dry, damp = history.humidity[index : index + 2]
    humidity = None if dry is None or damp is None else dry + (damp - dry) * part
    return Moment(second, cold + (warm - cold) * part, humidity)


def surfaces(
    history: History, lag_hours: float, start: float, end: float
) -> Iterator[tuple[Moment, float]]:
    """The air from `start` to `end` [s] and beside it the surface's temperature [°C].

    The surface s follows the air a as s' = (a - s) / lag, and begins the record as warm as the
    air. Where the air runs straight, a - s tends to lag times its slope, and what is off that
    dies away with the lag.
    """
    lag = lag_hours * 3600.0
    since = max(history.seconds[0], start - _FORGOTTEN_LAGS * lag)
    earlier = list(moments(history, since, start, math.inf))
    air = [*earlier, *moments(history, start, end, _LOOK_EVERY_SECONDS)]
    behind = 0.0
    for index, now in enumerate(air):
        behind = _behind(air[max(0, index - 1)], now, behind, lag)
        if index >= len(earlier):
            yield now, now.celsius - behind


def _behind(before: Moment, after: Moment, behind: float, lag: float) -> float:
    """How far the surface is behind the air at the end of a straight run or a step."""
    if lag <= 0.0:
        return 0.0
    passed, warmed = after.second - before.second, after.celsius - before.celsius
    if passed <= 0.0:
        return behind + warmed
    tends_to = lag * warmed / passed
    return tends_to + (behind - tends_to) * math.exp(-passed / lag)


class Margin(NamedTuple):
    """The least margin [°C] over a span, when it is, and whether humidity is known throughout.

    `least` is infinite where no humidity is known at all.
    """

    least: float
    second: float
    known: bool


def dew_margin(history: History, lag_hours: float, start: float, end: float) -> Margin:
    """Return the least distance of the surface above the dew point, `start` to `end` [s]."""
    least, when, known = math.inf, start, False
    missing = False
    for now, surface in surfaces(history, lag_hours, start, end):
        if now.humidity is None:
            missing = True
            continue
        known = True
        margin = surface - dew_point(now.celsius, now.humidity)
        if margin < least:
            least, when = margin, now.second
    return Margin(least, when, known and not missing)
