"""How far a grain sinks before the film sets, and from which minute on it stays.

The mix thickens evenly on a logarithmic scale: ten times at the end of the film's working
time, a thousand times when it has set, after three working times (common practice: it is four
to five times as thick 20 to 30 minutes into a working time of 40, and gels in 1.5 to 3 hours).
What has passed of the working time is counted by the film's clock, so that a cool hour counts
less. A mix that waited in its cup is thicker than that, and what is in it sinks less.
"""

from __future__ import annotations

import math
from bisect import bisect_right
from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING

from studio_planner.science.grains import GrainError, fall_speed

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.science.clocks import StageClock
    from studio_planner.science.grains import Grain, Liquid

STAYS_SHARE = 0.1
"""A grain that sinks less than this share of its film stays where it is (our choice)."""

DEFAULT_VISCOSITY_MPAS = 1000.0
"""Viscosity of a mix at 25 °C whose sheet has none [mPa·s].

Published mixes have 150 to 2400 (``resources/published/properties.csv``).
"""

SHEET_CELSIUS = 25.0
"""Where a printed viscosity holds [°C]."""

_THINS_CELSIUS = 10.0
_DECADES_TO_SET = 3.0
_STEPS_PER_DECADE = 10
_LN10 = math.log(10.0)
_SECONDS_PER_MINUTE = 60.0
_SECONDS_PER_HOUR = 3600.0


def viscosity_at(celsius: float, sheet_mpas: float = DEFAULT_VISCOSITY_MPAS) -> float:
    """Return the viscosity [Pa·s] of a fresh mix at a temperature.

    It doubles with every 10 °C colder (common practice), from the sheet's at 25 °C.

    Parameters
    ----------
    celsius
        Temperature [°C], 10 to 35.
    sheet_mpas
        Viscosity on the sheet [mPa·s], more than zero.

    Examples
    --------
    >>> viscosity_at(25.0, 800.0), viscosity_at(15.0, 800.0)
    (0.8, 1.6)
    """
    return sheet_mpas / 1e3 * math.pow(2.0, (SHEET_CELSIUS - celsius) / _THINS_CELSIUS)


@dataclass(frozen=True, slots=True)
class Thickening:
    """How long a film stays thin; made by `thickening` or `steady_thickening`.

    Attributes
    ----------
    seconds
        When each tenth of a decade of viscosity is reached, after A met B [s]; from 0 to set.
    left
        From there until it has set, the seconds of the fresh mix that would let a grain sink
        as far [s]; falls to 0.
    """

    seconds: tuple[float, ...]
    left: tuple[float, ...]

    @property
    def sets_minute(self) -> float:
        """The minute after A met B at which it has set."""
        return self.seconds[-1] / _SECONDS_PER_MINUTE

    def thin_seconds(self, minute: float) -> float:
        """Return the seconds of the fresh mix that are left to sink in from a minute on."""
        when = max(minute * _SECONDS_PER_MINUTE, 0.0)
        if when >= self.seconds[-1]:
            return 0.0
        step = bisect_right(self.seconds, when) - 1
        begun, ended = self.seconds[step], self.seconds[step + 1]
        share = (step + (when - begun) / (ended - begun)) / _STEPS_PER_DECADE
        return self.left[step + 1] + _thin_within(
            begun, ended, share, (step + 1) / _STEPS_PER_DECADE
        )

    def minute_with(self, thin_seconds: float) -> float:
        """Return the first minute from which no more than these seconds are left."""
        if thin_seconds >= self.left[0]:
            return 0.0
        step = next(i for i in range(len(self.left)) if self.left[i + 1] <= thin_seconds)
        begun, ended = self.seconds[step], self.seconds[step + 1]
        rest = (thin_seconds - self.left[step + 1]) * _LN10 / _STEPS_PER_DECADE
        thin = rest / (ended - begun) + math.pow(10.0, -(step + 1) / _STEPS_PER_DECADE)
        into = -math.log10(thin) * _STEPS_PER_DECADE - step
        return (begun + into * (ended - begun)) / _SECONDS_PER_MINUTE


def thickening(clock: StageClock, met: float) -> Thickening | None:
    """Return how a film thickens whose A met B at an instant.

    Parameters
    ----------
    clock
        The clock of the film's working time where the piece is; late is the safe edge here,
        since what sets slowly sinks far.
    met
        When A met B [s since 1970 UTC].

    Returns
    -------
    Thickening or None
        None: it does not set within the clock's record.

    Examples
    --------
    >>> from studio_planner.science.clocks import StageClock
    >>> from studio_planner.science.history import constant_history
    >>> from studio_planner.science.laws import SheetFigure, stage_law
    >>> from studio_planner.science.stages import Stage
    >>> law = stage_law(Stage.WORKING_TIME, [SheetFigure(22, 0.5)])
    >>> round(thickening(StageClock(law, constant_history(22.0)), 0.0).sets_minute, 6)
    90.0
    """
    shares = [step / _STEPS_PER_DECADE for step in range(1, _steps() + 1)]
    seconds = [0.0]
    for share in shares:
        when = clock.reaches_share(met, share)
        if when is None:
            return None
        seconds.append(when - met)
    return _thickening(seconds)


def steady_thickening(working_hours: float) -> Thickening:
    """Return how a film thickens at a steady temperature.

    Parameters
    ----------
    working_hours
        The film's working time there [h], more than zero.

    Raises
    ------
    GrainError
        If the working time is not more than zero.

    Examples
    --------
    A working time of 40 minutes: set after two hours, four times as thick after 24 minutes.

    >>> film = steady_thickening(40 / 60)
    >>> round(film.sets_minute), round(film.thin_seconds(0) / film.thin_seconds(24), 1)
    (120, 4.0)
    """
    if not 0.0 < working_hours < math.inf:
        msg = f"A working time of {working_hours} h can't be; it has to be more than zero."
        raise GrainError(msg)
    step = working_hours * _SECONDS_PER_HOUR / _STEPS_PER_DECADE
    return _thickening([index * step for index in range(_steps() + 1)])


def sunk_mm(grain: Grain, liquid: Liquid, film: Thickening, minute: float) -> float:
    """Return how far a grain sinks [mm] when it is poured at a minute; below zero: it rises.

    Parameters
    ----------
    grain
        The grain or flake.
    liquid
        The mix when it was fresh.
    film
        How it thickens.
    minute
        When it is poured, after A met B [min].

    Examples
    --------
    Bronze flake in a mix of 1 Pa·s with a working time of 40 minutes, fresh and after 30:

    >>> from studio_planner.science.film_limits import Colourant
    >>> from studio_planner.science.grains import GRAINS, Liquid
    >>> film, bronze = steady_thickening(40 / 60), GRAINS[Colourant.METAL_POWDER]
    >>> [round(sunk_mm(bronze, Liquid(1.0, 1.1), film, m), 2) for m in (0, 30)]
    [0.56, 0.1]
    """
    return fall_speed(grain, liquid) * film.thin_seconds(minute) / _SECONDS_PER_HOUR


def stays_from_minute(
    grain: Grain,
    liquid: Liquid,
    film: Thickening,
    film_mm: float,
    share: float = STAYS_SHARE,
) -> float:
    """Return the first minute after A met B from which a poured grain stays in its film.

    Parameters
    ----------
    grain, liquid, film
        As `sunk_mm`.
    film_mm
        The film [mm].
    share
        The share of the film that it may sink or rise [-].

    Raises
    ------
    GrainError
        If film or share are not more than zero.

    Examples
    --------
    >>> from studio_planner.science.film_limits import Colourant
    >>> from studio_planner.science.grains import GRAINS, Liquid
    >>> film, mix = steady_thickening(40 / 60), Liquid(1.0, 1.1)
    >>> kinds = (Colourant.PASTE, Colourant.MICA, Colourant.METAL_POWDER)
    >>> [round(stays_from_minute(GRAINS[kind], mix, film, 1.0)) for kind in kinds]
    [0, 5, 30]
    """
    if not (0.0 < film_mm < math.inf and 0.0 < share < math.inf):
        msg = "To stay, a grain needs a film and a share of it of more than zero."
        raise GrainError(msg)
    speed = abs(fall_speed(grain, liquid)) / _SECONDS_PER_HOUR
    return film.minute_with(film_mm * share / speed) if speed > 0.0 else 0.0


def _steps() -> int:
    return round(_DECADES_TO_SET * _STEPS_PER_DECADE)


def _thickening(seconds: Sequence[float]) -> Thickening:
    left = [0.0]
    steps = list(enumerate(pairwise(seconds)))
    for step, (begun, ended) in reversed(steps):
        share, until = step / _STEPS_PER_DECADE, (step + 1) / _STEPS_PER_DECADE
        left.append(left[-1] + _thin_within(begun, ended, share, until))
    return Thickening(tuple(seconds), tuple(reversed(left)))


def _thin_within(begun: float, ended: float, share: float, until: float) -> float:
    """Return the integral of the fluidity over the rest of a step, from `share` on."""
    thinner = math.pow(10.0, -share) - math.pow(10.0, -until)
    return (ended - begun) * _STEPS_PER_DECADE / _LN10 * thinner
