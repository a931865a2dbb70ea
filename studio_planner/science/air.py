"""Dew point, frost point, the margin of a surface above them, and a surface's lag.

Formula: Magnus with the constants of Sonntag (1990), as in the WMO guide to instruments [1]_.

References
----------
.. [1] D. Sonntag, Z. Meteorol. 70 (1990) 340-344; WMO-No. 8, annex 4.B: over water 17.62 and
   243.12 °C (-45 to 60 °C), over ice 22.46 and 272.62 °C (-65 to 0 °C).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum

from studio_planner.science.history import (
    COLDEST_ROOM_CELSIUS,
    SATURATED_PERCENT,
    WARMEST_ROOM_CELSIUS,
    History,
)

_WATER = (17.62, 243.12)
_ICE = (22.46, 272.62)
_STEP_ERROR_CELSIUS = 0.01


class AirError(ValueError):
    """A temperature or humidity for which no dew point exists; the text is for the maker."""


class Deposit(StrEnum):
    """What forms on a surface at the condensation point."""

    DEW = "dew"
    FROST = "frost"


@dataclass(frozen=True, slots=True)
class CondensationPoint:
    """The temperature [°C] at which water settles from the air, as dew or as frost."""

    celsius: float
    deposit: Deposit


def dew_point(celsius: float, humidity: float) -> float:
    """Return the dew point over (supercooled) water.

    Parameters
    ----------
    celsius
        Air temperature [°C], -45 to 60; answered from -60 to 120 with less accuracy.
    humidity
        Relative humidity over water [%], above 0 to 100.

    Returns
    -------
    float
        Dew point [°C]. Within 0.1 °C of a psychrometric reference library over -10 to 50 °C
        and 5 to 100 % where the dew point is above 0 °C.

    Raises
    ------
    AirError
        If the humidity is not above 0 to 100 % or the temperature out of range.

    Examples
    --------
    >>> round(dew_point(20.0, 60.0), 1), round(dew_point(25.0, 40.0), 1)
    (12.0, 10.5)
    """
    _check(celsius, humidity)
    a, b = _WATER
    gamma = math.log(humidity / 100.0) + a * celsius / (b + celsius)
    return b * gamma / (a - gamma)


def frost_point(celsius: float, humidity: float) -> float:
    """Return the temperature [°C] at which the air is saturated over ice.

    Parameters
    ----------
    celsius
        Air temperature [°C], -45 to 60; answered from -60 to 120 with less accuracy.
    humidity
        Relative humidity over water [%], above 0 to 100.

    Returns
    -------
    float
        Frost point [°C]; meaningful where it is not above 0 °C.

    Raises
    ------
    AirError
        As `dew_point`.

    Examples
    --------
    >>> round(dew_point(0.0, 50.0), 1), round(frost_point(0.0, 50.0), 1)
    (-9.2, -8.2)
    """
    _check(celsius, humidity)
    a, b = _WATER
    pressure_log = math.log(humidity / 100.0) + a * celsius / (b + celsius)
    ice_a, ice_b = _ICE
    return ice_b * pressure_log / (ice_a - pressure_log)


def condensation_point(celsius: float, humidity: float) -> CondensationPoint:
    """Return the dew point, or the frost point where the dew point is below 0 °C.

    Examples
    --------
    >>> condensation_point(0.0, 50.0).deposit
    <Deposit.FROST: 'frost'>
    """
    dew = dew_point(celsius, humidity)
    if dew >= 0.0:
        return CondensationPoint(dew, Deposit.DEW)
    return CondensationPoint(frost_point(celsius, humidity), Deposit.FROST)


def dew_point_margin(
    surface_celsius: float, air_celsius: float, humidity: float | None
) -> float | None:
    """Return how far a surface is above the point where dew or frost settles on it [°C].

    None if the humidity is unknown: the rule is then neither kept nor broken. A reading of
    0 % is a broken sensor and counts as unknown.

    Parameters
    ----------
    surface_celsius, air_celsius
        Temperatures of the surface and the air [°C].
    humidity
        Relative humidity of the air [%] or None.

    Examples
    --------
    >>> round(dew_point_margin(15.0, 21.0, 60.0), 1)
    2.1
    >>> dew_point_margin(15.0, 21.0, None) is None
    True
    """
    if humidity is None or humidity == 0.0:
        return None
    return surface_celsius - condensation_point(air_celsius, humidity).celsius


def relative_humidity(celsius: float, dew_celsius: float) -> float:
    """Return the relative humidity over water [%] of air with a dew point.

    Parameters
    ----------
    celsius
        Air temperature [°C], -45 to 60; answered from -60 to 120 with less accuracy.
    dew_celsius
        Dew point over water [°C], not above the air temperature.

    Raises
    ------
    AirError
        If the dew point is above the air temperature or a temperature out of range.

    Examples
    --------
    >>> round(relative_humidity(15.0, dew_point(21.0, 60.0)))
    87
    """
    if dew_celsius > celsius:
        msg = f"A dew point of {dew_celsius} °C is above the air's {celsius} °C; swap them?"
        raise AirError(msg)
    _check(celsius, 100.0)
    _check(dew_celsius, 100.0)
    a, b = _WATER
    return 100.0 * math.exp(a * dew_celsius / (b + dew_celsius) - a * celsius / (b + celsius))


def surface_history(
    air: History, lag_hours: float, start_celsius: float | None = None
) -> History:
    """Return the temperature of a surface that follows the air with a lag.

    First-order lag ds/dt = (air - s)/lag, solved exactly for air in straight lines; samples
    are added so that straight lines between them are within 0.01 °C of it. Band and humidity
    are those of the air.

    Parameters
    ----------
    air
        The room.
    lag_hours
        Time to follow a step by 63 % [h], 0 or more; a setting per material.
    start_celsius
        The surface at the first instant [°C]; the air's temperature if not given.

    Raises
    ------
    AirError
        If the lag is negative or not finite.

    Examples
    --------
    >>> step = History((0.0, 36000.0), (20.0, 20.0), (0.5, 0.5), (None, None))
    >>> blank = surface_history(step, lag_hours=1.0, start_celsius=10.0)
    >>> round(blank.celsius_at(3600.0), 2)
    16.32
    """
    if not 0.0 <= lag_hours < math.inf:
        msg = f"A surface can't lag the air by {lag_hours} h; give zero or more."
        raise AirError(msg)
    if lag_hours == 0.0:
        return air
    lag = lag_hours * 3600.0
    surface = air.celsius[0] if start_celsius is None else start_celsius
    rows = [(air.seconds[0], surface, air.band[0], air.humidity[0])]
    for index in range(1, len(air.seconds)):
        points = _lagged(air, index, surface, lag)
        surface = points[-1][1]
        rows += points
    seconds, celsius, band, humidity = zip(*rows, strict=True)
    return History(seconds, celsius, band, humidity)


_Row = tuple[float, float, float, float | None]


def _lagged(air: History, index: int, surface: float, lag: float) -> list[_Row]:
    """Return the surface after sample ``index - 1``, up to and with sample ``index``."""
    begun, ended = air.seconds[index - 1], air.seconds[index]
    before, after = air.band[index - 1], air.band[index]
    damp, damper = air.humidity[index - 1], air.humidity[index]
    if begun == ended:
        return [(ended, surface, after, damper)]
    length = ended - begun
    slope = (air.celsius[index] - air.celsius[index - 1]) / length
    behind = surface - air.celsius[index - 1] + slope * lag
    rows: list[_Row] = []
    for passed in _extra_instants(behind, length, lag):
        value = (
            air.celsius[index - 1] + slope * (passed - lag) + behind * math.exp(-passed / lag)
        )
        share = passed / length
        humidity = None if damp is None or damper is None else damp + (damper - damp) * share
        rows.append((begun + passed, value, before + (after - before) * share, humidity))
    value = air.celsius[index - 1] + slope * (length - lag) + behind * math.exp(-length / lag)
    return [*rows, (ended, value, after, damper)]


def _extra_instants(behind: float, length: float, lag: float) -> list[float]:
    """Return instants [s] at which the curve has bent by the error allowed since the last."""
    instants: list[float] = []
    passed = 0.0
    while (bend := abs(behind) * math.exp(-passed / lag)) > _STEP_ERROR_CELSIUS:
        passed += lag * math.sqrt(8.0 * _STEP_ERROR_CELSIUS / bend)
        if passed >= length:
            break
        instants.append(passed)
    return instants


def _check(celsius: float, humidity: float) -> None:
    if not 0.0 < humidity <= SATURATED_PERCENT:
        msg = f"A relative humidity of {humidity} % can't be; give more than 0 and up to 100."
        raise AirError(msg)
    if not COLDEST_ROOM_CELSIUS <= celsius <= WARMEST_ROOM_CELSIUS:
        msg = f"{celsius} °C is outside the -60 to 120 °C of a room; check it and its unit."
        raise AirError(msg)
