"""The air of simulated weeks: what is expected of a place, and how far it errs.

Time is cut into cells of half an hour; each has one temperature, the mean over it.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from itertools import pairwise
from typing import TYPE_CHECKING

from studio_planner.planning.rehearsal.chances import NORMAL_90

if TYPE_CHECKING:
    from collections.abc import Sequence
    from zoneinfo import ZoneInfo

    from numpy.random import Generator

    from studio_planner.craft.places import Place
    from studio_planner.planning.rehearsal.arrays import Floats
    from studio_planner.planning.rehearsal.chances import Chances

CELL_SECONDS = 1800.0
CELLS_PER_HOUR = 3600.0 / CELL_SECONDS
_LOOKS = 6
"""At how many instants of a cell the expected temperature is looked up."""

_HOUR = 3600.0
_LONGEST_GAP_HOURS = 6.0
"""Readings further apart tell nothing about how an error fades from hour to hour."""

_FEWEST_PAIRS = 12
_MOST_CORRELATED = 0.999


@dataclass(frozen=True, slots=True)
class Grid:
    """Cells of half an hour from `start` [s since 1970 UTC] on."""

    start: float
    cells: int

    @property
    def end(self) -> float:
        """Where the last cell ends [s]."""
        return self.start + self.cells * CELL_SECONDS

    @property
    def span(self) -> tuple[datetime, datetime]:
        """Start and end as aware instants."""
        return datetime.fromtimestamp(self.start, UTC), datetime.fromtimestamp(self.end, UTC)


def grid_over(start: datetime, end: datetime) -> Grid:
    """The cells that cover `start` to `end` (aware), beginning on a half hour."""
    first = start.timestamp() // CELL_SECONDS * CELL_SECONDS
    return Grid(first, max(1, math.ceil((end.timestamp() - first) / CELL_SECONDS)))


@dataclass(frozen=True, slots=True)
class Errors:
    """How a log of readings erred: °C (root mean square), and what is left after an hour.

    `independent` is how many errors that have nothing to do with each other it is worth.
    """

    celsius: float
    hourly_correlation: float
    independent: float


def logged_errors(place: Place, zone: ZoneInfo, chances: Chances) -> Errors | None:
    """How the readings of a place differ from its pattern; None without readings.

    Errors are about zero, not about their mean: a pattern that is always too warm errs. The
    correlation comes from pairs of neighbouring readings; with fewer than twelve it is the
    stated one. Worth: n (1 - r) / (1 + r), the effective number of a first-order
    autoregression (Bayley and Hammersley 1946, from memory).
    """
    readings = place.readings
    if not readings:
        return None
    since = readings[-1].when - timedelta(days=chances.log_days)
    kept = [reading for reading in readings if reading.when >= since]
    margin = timedelta(hours=1)
    pattern = replace(place, readings=()).history(
        zone, kept[0].when - margin, kept[-1].when + margin
    )
    seconds = [reading.when.timestamp() for reading in kept]
    errors = [
        reading.celsius - (pattern.celsius_at(second) or 0.0)
        for reading, second in zip(kept, seconds, strict=True)
    ]
    hourly = _hourly_correlation(seconds, errors, chances.hourly_correlation)
    hours = max(1.0, min(len(kept), 1.0 + (seconds[-1] - seconds[0]) / _HOUR))
    return Errors(
        celsius=math.sqrt(sum(error * error for error in errors) / len(errors)),
        hourly_correlation=hourly,
        independent=hours * (1.0 - hourly) / (1.0 + hourly),
    )


def _hourly_correlation(
    seconds: Sequence[float], errors: Sequence[float], stated: float
) -> float:
    """The lag-one correlation of errors, brought to one hour by their usual distance."""
    pairs = [
        ((later - earlier) / _HOUR, one, other)
        for (earlier, one), (later, other) in pairwise(zip(seconds, errors, strict=True))
        if later - earlier <= _LONGEST_GAP_HOURS * _HOUR
    ]
    before = sum(one * one for _, one, _ in pairs)
    after = sum(other * other for _, _, other in pairs)
    if len(pairs) < _FEWEST_PAIRS or before * after == 0.0:
        return stated
    lag_one = sum(one * other for _, one, other in pairs) / math.sqrt(before * after)
    hours = sum(hours for hours, _, _ in pairs) / len(pairs)
    return float(min(max(lag_one, 0.0), _MOST_CORRELATED) ** (1.0 / hours))


@dataclass(frozen=True, slots=True)
class Forecast:
    """What is expected of one place: °C and standard deviation [°C] per cell (cells,).

    `hourly_correlation` is what is left of an error after an hour.
    """

    celsius: Floats
    spread: Floats
    hourly_correlation: float


def forecast(place: Place, zone: ZoneInfo, grid: Grid, chances: Chances) -> Forecast:
    """What is expected of a place, with the spread that its band and its log tell.

    A band holds 90 %, so it is 1.645 standard deviations. Variances of band and log are
    weighed by what each is worth; what was read keeps the band of its readings.
    """
    import numpy as np

    history = place.history(zone, *grid.span)
    looks = grid.start + (np.arange(grid.cells * _LOOKS) + 0.5) * (CELL_SECONDS / _LOOKS)

    def means(values: Sequence[float]) -> Floats:
        found = np.interp(looks, history.seconds, values)
        mean: Floats = found.reshape(grid.cells, _LOOKS).mean(axis=1)
        return mean

    spread = means(history.band) / NORMAL_90
    errors = logged_errors(place, zone, chances)
    correlation = chances.hourly_correlation
    if errors is not None:
        share = errors.independent / (errors.independent + chances.prior_errors)
        ahead = grid.start + np.arange(grid.cells) * CELL_SECONDS
        unread = ahead >= place.readings[-1].when.timestamp()
        mixed = np.sqrt((1.0 - share) * spread**2 + share * errors.celsius**2)
        spread = np.where(unread, mixed, spread)
        correlation = (1.0 - share) * correlation + share * errors.hourly_correlation
    return Forecast(means(history.celsius), spread * chances.room, correlation)


def wandering(rng: Generator, weeks: int, cells: int, hourly_correlation: float) -> Floats:
    """Errors of mean 0 and standard deviation 1 that fade with time, (weeks, cells).

    A first-order autoregression, stationary from its first cell: the exact sampling of an
    Ornstein-Uhlenbeck process.
    """
    import numpy as np

    keeps = hourly_correlation ** (1.0 / CELLS_PER_HOUR)
    fresh = math.sqrt(1.0 - keeps * keeps)
    errors = rng.standard_normal((cells, weeks))
    errors[1:] *= fresh
    scratch = np.empty(weeks)
    for cell in range(1, cells):
        np.multiply(errors[cell - 1], keeps, out=scratch)
        errors[cell] += scratch
    return np.ascontiguousarray(errors.T)


def simulated(rng: Generator, weeks: int, expected: Forecast) -> Floats:
    """Temperatures of so many weeks in one place [°C], (weeks, cells)."""
    cells = len(expected.celsius)
    errors = wandering(rng, weeks, cells, expected.hourly_correlation)
    errors *= expected.spread
    errors += expected.celsius
    return errors
