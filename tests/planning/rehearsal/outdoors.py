"""A workshop through a whole year of real weather, and what its maker would expect of it.

Weather: NREL TMY3 station 723170 (Greensboro, NC), carried by the pvlib package: hourly
outdoor temperature and humidity of typical months. The workshop is a made-up building; its
constants are common practice without a source unless one is named.
"""

from __future__ import annotations

import csv
import importlib.util
import math
from dataclasses import dataclass
from datetime import UTC, datetime, time, timedelta
from pathlib import Path
from typing import TYPE_CHECKING

import numpy as np

from studio_planner.craft.places import PatternPoint
from studio_planner.planning.rehearsal.rooms import CELL_SECONDS
from studio_planner.science.air import dew_point, relative_humidity

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.planning.rehearsal.arrays import Floats
    from studio_planner.planning.rehearsal.rooms import Grid

HOUR = 3600.0
YEAR = datetime(2026, 1, 1, tzinfo=UTC)
"""Where the record is laid; its local standard hours are read as the studio's wall clock."""

TIME_CONSTANT_HOURS = 24.0
"""How slowly the workshop follows the weather: a light building takes about a day."""

GAIN_CELSIUS = 2.0
"""How much sun, lamps and people keep it above the weather."""

DAY_CELSIUS, NIGHT_CELSIUS = 21.0, 17.0
DAY_BEGINS, DAY_ENDS = 7, 22
"""The heater's set-back, by the hour of the day."""

HEATER_CELSIUS_PER_HOUR = 2.0
"""How fast the heater warms the workshop at the most. Nothing cools it."""

TYPED_HOURS = (1, 4, 7, 9, 13, 17, 22)
"""The hours for which a maker would type a temperature: an everyday pattern of seven points."""

PAST_WEEKS = 4
"""How many weeks of the same workshop the maker has seen."""


@dataclass(frozen=True, slots=True)
class Course:
    """A workshop hour by hour from `YEAR` on: °C and relative humidity [%]."""

    celsius: Floats
    humidity: Floats

    def cells(self, grid: Grid) -> Floats:
        """The mean temperature of each cell of a grid, straight between hours (1, cells)."""
        middles = grid.start + (np.arange(grid.cells) + 0.5) * CELL_SECONDS
        seconds = YEAR.timestamp() + HOUR * np.arange(len(self.celsius))
        means: Floats = np.interp(middles, seconds, self.celsius)[None, :]
        return means


def outdoor_year() -> tuple[list[float], list[float]]:
    """Outdoor °C and relative humidity [%] of every hour of the record."""
    spec = importlib.util.find_spec("pvlib")
    assert spec is not None
    assert spec.origin is not None
    path = Path(spec.origin).parent / "data" / "723170TYA.CSV"
    with path.open(encoding="utf-8", newline="") as file:
        next(file)
        rows = list(csv.DictReader(file))
    return [float(r["Dry-bulb (C)"]) for r in rows], [float(r["RHum (%)"]) for r in rows]


def workshop(outdoor: Sequence[float], humidity: Sequence[float]) -> Course:
    """The workshop in that weather: a first-order lag, gains, and a heater with set-back.

    The moisture of the air inside is that outside: the same dew point, warmer air.
    """
    keeps = math.exp(-1.0 / TIME_CONSTANT_HOURS)
    celsius: list[float] = []
    now = DAY_CELSIUS
    for hour, outside in enumerate(outdoor):
        free = outside + GAIN_CELSIUS + (now - outside - GAIN_CELSIUS) * keeps
        day = DAY_BEGINS <= hour % 24 < DAY_ENDS
        wished = DAY_CELSIUS if day else NIGHT_CELSIUS
        now = max(free, min(wished, max(free, now) + HEATER_CELSIUS_PER_HOUR))
        celsius.append(now)
    damp = [
        relative_humidity(max(inside, dew), dew)
        for inside, dew in zip(celsius, map(dew_point, outdoor, humidity), strict=True)
    ]
    return Course(np.array(celsius), np.array(damp))


def two_years() -> Course:
    """The workshop in the record and in the record again, so that a winter is whole."""
    outdoor, humidity = outdoor_year()
    return workshop(outdoor * 2, humidity * 2)


@dataclass(frozen=True, slots=True)
class Expected:
    """What a maker would type after some weeks in a workshop, all from those weeks.

    An everyday pattern, how far it was off nine hours out of ten [°C], and the mean [°C].
    """

    pattern: tuple[PatternPoint, ...]
    band_celsius: float
    mean_celsius: float


def expected_after(course: Course, now: datetime) -> Expected:
    """What the weeks before `now` (a midnight or later) let expect."""
    midnight = int((now - YEAR) / timedelta(days=1)) * 24
    first = midnight - PAST_WEEKS * 7 * 24
    assert first >= 0, "the record begins later"
    past = course.celsius[first:midnight].reshape(-1, 24)
    damp = course.humidity[first:midnight].reshape(-1, 24)
    pattern = tuple(
        PatternPoint(
            at=time(hour),
            celsius=round(float(past[:, hour].mean()), 1),
            humidity_pct=round(float(damp[:, hour].mean())),
        )
        for hour in TYPED_HOURS
    )
    typed = [point.celsius for point in pattern]
    daily = np.interp(np.arange(24), TYPED_HOURS, typed, period=24)
    off = np.quantile(np.abs(past - daily), 0.9)
    return Expected(pattern, round(float(off), 1), float(past.mean()))
