"""How hot a full cup or a deep pour gets: one lump of mix that heats itself and loses heat.

    dT/dt = (H / c) da/dt - (L / c) (T - room)
    da/dt = k(T) (START + a) (1 - a)²        (autocatalytic, orders 1 and 2: Kamal, Horie)

with `a` the share reacted, H the heat of the cure [J/g], c the heat capacity [J/(g K)] and L
the loss of a gram [W/(g K)]. Orders and slope are those of the sources in
`studio_planner.science.heat_figures`. The only thing that is taken from the product is k: such
that a mix of the sheet's mass gels when its cup life is over.

The lump's mean temperature is what is solved; the middle is hotter, by what a steady profile in
that shape has. Range: cups of 10 g to 2 kg, pours of 1 to 50 mm, rooms of 10 to 35 °C.

How far to trust it: of seven published figures five times are met within 40 %. The one peak
that is published lies 110 °C under what is reckoned here, and one film stays open longer (see
the tests): it errs hot and early, on the careful side.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum
from functools import lru_cache
from typing import TYPE_CHECKING

from studio_planner.science.curves import kelvin
from studio_planner.science.heat_bodies import HeatError
from studio_planner.science.heat_figures import (
    ACTIVATION_ENERGY_KJ,
    GEL_CONVERSION,
    HEAT_CAPACITY_J_PER_GK,
    HEAT_J_PER_G,
    START_SHARE,
    STOP_CELSIUS,
    WARN_CELSIUS,
)
from studio_planner.science.law_shape import GAS_CONSTANT

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.science.heat_bodies import Body

_REFERENCE_CELSIUS = 25.0
_SECONDS_PER_HOUR = 3600.0
_LARGEST_STEP = 0.01
"""Share reacted in one step of the solution."""

_LONGEST = 30.0
"""Cup lives after which nothing more is expected."""

_CLOSE = 1e-4

_FADING = 1.0 / 3.0
"""From this share reacted on a cure slows by itself: (START + a) (1 - a)² only falls then."""


class HeatVerdict(StrEnum):
    """Whether a cup or a pour stays cool enough."""

    COOL = "cool"
    WARM = "warm"
    TOO_HOT = "too_hot"


@dataclass(frozen=True, slots=True, kw_only=True)
class Exotherm:
    """How hot it gets, and when.

    Attributes
    ----------
    peak_celsius
        The hottest place at its hottest [°C].
    peak_minutes
        When that is, after A met B [min].
    warm_minutes
        The first minute at which it passes `WARN_CELSIUS`; None when it never does.
    verdict
        Cool, warm, or too hot to be poured so.
    """

    peak_celsius: float
    peak_minutes: float
    warm_minutes: float | None
    verdict: HeatVerdict


@lru_cache(maxsize=256)
def rate_of(life_hours: float, body: Body, celsius: float) -> float:
    """Return the rate of the cure at 25 °C [1/h] that a cup life stands for.

    The cup starts at room temperature, heats itself, and gels when its life is over.

    Parameters
    ----------
    life_hours
        Cup life on the sheet [h].
    body
        The cup that it holds for.
    celsius
        Temperature that it holds at [°C].

    Raises
    ------
    HeatError
        If the cup life is not more than zero.

    Examples
    --------
    Half an hour in a cup of 100 g; a gram by itself would take more than an hour:

    >>> from studio_planner.science.heat_bodies import cup_body
    >>> rate = rate_of(0.5, cup_body(100.0), 23.0)
    >>> 1.0 < gel_hours(rate, cup_body(1.0), 23.0) < 2.0
    True
    """
    if not 0.0 < life_hours < math.inf:
        msg = f"A cup life of {life_hours} h can't be; it has to be more than zero."
        raise HeatError(msg)
    # What stays at room temperature needs the fastest rate; what heats itself a slower one.
    high = _steady_hours(GEL_CONVERSION) / life_hours / _speed(celsius)
    low = high / 2.0
    while gel_hours(low, body, celsius) < life_hours:
        high, low = low, low / 2.0
    while high / low > 1.0 + _CLOSE:
        middle = math.sqrt(low * high)
        if gel_hours(middle, body, celsius) < life_hours:
            high = middle
        else:
            low = middle
    return math.sqrt(low * high)


def gel_hours(rate: float, body: Body, celsius: float) -> float:
    """Return when a body of mix gels [h], starting at the temperature of its room.

    Parameters
    ----------
    rate
        Rate of the cure at 25 °C [1/h], of `rate_of`.
    body
        The cup or the pour.
    celsius
        The room, and the mix when A meets B [°C].

    Examples
    --------
    >>> from studio_planner.science.heat_bodies import cup_body
    >>> rate = rate_of(0.5, cup_body(100.0), 23.0)
    >>> round(gel_hours(rate, cup_body(100.0), 23.0), 3)
    0.5
    """
    before = (0.0, 0.0, celsius)
    for state in _course(rate, body, celsius, celsius):
        if state[1] >= GEL_CONVERSION:
            share = (GEL_CONVERSION - before[1]) / (state[1] - before[1])
            return before[0] + share * (state[0] - before[0])
        before = state
    return math.inf


def exotherm(
    rate: float, body: Body, celsius: float, start_celsius: float | None = None
) -> Exotherm:
    """Return how hot a body of mix gets and when.

    Parameters
    ----------
    rate
        Rate of the cure at 25 °C [1/h], of `rate_of`.
    body
        The cup or the pour.
    celsius
        The room [°C].
    start_celsius
        The mix when A meets B [°C]; None: as the room.

    Examples
    --------
    A mix with 30 minutes in a cup of 100 g, left in it, and the same as a film of 2 mm:

    >>> from studio_planner.science.heat_bodies import cup_body, pour_body
    >>> rate = rate_of(0.5, cup_body(100.0), 23.0)
    >>> exotherm(rate, cup_body(100.0), 23.0).verdict
    <HeatVerdict.TOO_HOT: 'too_hot'>
    >>> exotherm(rate, pour_body(2.0), 23.0).verdict
    <HeatVerdict.COOL: 'cool'>
    """
    begun = celsius if start_celsius is None else start_celsius
    peak, when, warm = begun, 0.0, None
    before = begun
    for hours, reacted, mean in _course(rate, body, celsius, begun):
        hot = mean + body.hot_share * (mean - celsius)
        if warm is None and hot >= WARN_CELSIUS:
            warm = hours * 60.0
        if hot > peak:
            peak, when = hot, hours
        if reacted > _FADING and mean < before:
            break  # cooler and slower for good, and most of the steps would still come
        before = mean
    return Exotherm(
        peak_celsius=peak, peak_minutes=when * 60.0, warm_minutes=warm, verdict=_verdict(peak)
    )


def adiabatic_rise() -> float:
    """Return by how much a mix warms that loses no heat [°C].

    Examples
    --------
    >>> adiabatic_rise()
    175.0
    """
    return HEAT_J_PER_G / HEAT_CAPACITY_J_PER_GK


def _verdict(celsius: float) -> HeatVerdict:
    if celsius >= STOP_CELSIUS:
        return HeatVerdict.TOO_HOT
    return HeatVerdict.WARM if celsius >= WARN_CELSIUS else HeatVerdict.COOL


def _course(
    rate: float, body: Body, room: float, start: float
) -> Iterator[tuple[float, float, float]]:
    """Yield (hours, share reacted, mean °C) step by step: Runge and Kutta's fourth order."""
    cooling = body.loss_w_per_gk * _SECONDS_PER_HOUR / HEAT_CAPACITY_J_PER_GK
    rise = adiabatic_rise()

    def slopes(reacted: float, celsius: float) -> tuple[float, float]:
        speed = rate * _speed(celsius) * (START_SHARE + reacted) * (1.0 - reacted) ** 2
        return speed, rise * speed - cooling * (celsius - room)

    hours, reacted, celsius = 0.0, 0.0, start
    end = _LONGEST * _steady_hours(GEL_CONVERSION) / rate / _speed(min(start, room))
    while hours < end and reacted < 1.0 - _LARGEST_STEP:
        a1, t1 = slopes(reacted, celsius)
        step = min(_LARGEST_STEP / a1, 0.25 / cooling)
        half = step / 2.0
        a2, t2 = slopes(reacted + half * a1, celsius + half * t1)
        a3, t3 = slopes(reacted + half * a2, celsius + half * t2)
        a4, t4 = slopes(reacted + step * a3, celsius + step * t3)
        hours += step
        reacted += step / 6.0 * (a1 + 2.0 * a2 + 2.0 * a3 + a4)
        celsius += step / 6.0 * (t1 + 2.0 * t2 + 2.0 * t3 + t4)
        yield hours, reacted, celsius


def _speed(celsius: float) -> float:
    """Return the rate at a temperature as a share of that at 25 °C."""
    inverse = 1.0 / kelvin(_REFERENCE_CELSIUS) - 1.0 / kelvin(celsius)
    return math.exp(ACTIVATION_ENERGY_KJ / GAS_CONSTANT * inverse)


def _steady_hours(share: float) -> float:
    """Return the hours to a share reacted at 25 °C and a rate of 1/h: da / ((B + a)(1 - a)²).

    By partial fractions, with s = 1 + B.
    """
    s = 1.0 + START_SHARE
    grown = math.log((START_SHARE + share) / START_SHARE) - math.log(1.0 - share)
    return grown / s**2 + (1.0 / (1.0 - share) - 1.0) / s
