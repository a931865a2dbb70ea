"""Where the expected air of a day or a week lies in its picture, and back again."""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil, floor
from typing import TYPE_CHECKING

from studio_planner.desktop.quantities import Quantity, scale_of
from studio_planner.services.editing.air_weeks import (
    DAY_MINUTES,
    WEEK_DAYS,
    differs,
    indexes_on,
    minute_of,
)

if TYPE_CHECKING:
    from studio_planner.craft.settings import Units
    from studio_planner.services.editing.air_weeks import Pattern

LEFT, RIGHT, TOP, FOOT = 66.0, 26.0, 22.0, 28.0
WARM_HEIGHT, DAMP_HEIGHT, BETWEEN = 188.0, 76.0, 16.0
REACH = 12.0
"""How near to a point a press counts as upon it, in pixels: a target of 24."""

_LEAST_CELSIUS = 8.0
_MARGIN_CELSIUS = 2.0


@dataclass(frozen=True, slots=True)
class Spotted:
    """A point as it is drawn: its place in the pattern, the day drawn on, and which line."""

    index: int
    day: int
    damp: bool
    x: float
    y: float


class AirAxes:
    """The axes of one pattern at one width; they stand still while a point is dragged."""

    def __init__(self, pattern: Pattern, band: float, units: Units, width: float) -> None:
        """Fit `pattern` with its band into `width` pixels."""
        self.units = units
        self.days = WEEK_DAYS if differs(pattern) else 1
        self.width = max(width - LEFT - RIGHT, 10.0)
        self.has_damp = any(point.humidity_pct is not None for point in pattern)
        low = min(point.celsius for point in pattern) - band
        high = max(point.celsius for point in pattern) + band
        short = max(0.0, _LEAST_CELSIUS - (high - low)) / 2.0
        scale = scale_of(Quantity.TEMPERATURE, units)
        # The axis ends on whole degrees of the maker's unit.
        self.low = scale.inside(floor(scale.shown(low - short - _MARGIN_CELSIUS)))
        self.high = scale.inside(ceil(scale.shown(high + short + _MARGIN_CELSIUS)))

    @property
    def minutes(self) -> int:
        """How many minutes the picture is long."""
        return self.days * DAY_MINUTES

    @property
    def height(self) -> float:
        """How high the picture is."""
        return TOP + WARM_HEIGHT + FOOT + (BETWEEN + DAMP_HEIGHT if self.has_damp else 0.0)

    @property
    def warm_bottom(self) -> float:
        """Where the temperatures end."""
        return TOP + WARM_HEIGHT

    @property
    def damp_top(self) -> float:
        """Where the humidities begin."""
        return self.warm_bottom + BETWEEN

    @property
    def bottom(self) -> float:
        """Where the lowest line ends, above the hours."""
        return self.height - FOOT

    def x(self, minute: float) -> float:
        """Where a minute lies."""
        return LEFT + self.width * minute / self.minutes

    def minute(self, x: float) -> float:
        """The minute at a pixel."""
        return (x - LEFT) / self.width * self.minutes

    def y(self, celsius: float) -> float:
        """Where a temperature lies."""
        return self.warm_bottom - WARM_HEIGHT * (celsius - self.low) / (self.high - self.low)

    def celsius_of(self, pixels: float) -> float:
        """How many degrees so many pixels upwards are."""
        return pixels * (self.high - self.low) / WARM_HEIGHT

    def damp_y(self, humidity: float) -> float:
        """Where a humidity lies."""
        return self.damp_top + DAMP_HEIGHT * (1.0 - humidity / 100.0)

    def humidity_of(self, pixels: float) -> float:
        """How many per cent so many pixels upwards are."""
        return pixels * 100.0 / DAMP_HEIGHT

    def spots(self, pattern: Pattern) -> list[Spotted]:
        """Every point where it is drawn, those of every day once for each day."""
        found = []
        for day in range(self.days):
            for index in indexes_on(pattern, day):
                point = pattern[index]
                x = self.x(day * DAY_MINUTES + minute_of(point.at))
                found.append(Spotted(index, day, damp=False, x=x, y=self.y(point.celsius)))
                if point.humidity_pct is not None:
                    y = self.damp_y(point.humidity_pct)
                    found.append(Spotted(index, day, damp=True, x=x, y=y))
        return found

    def spot_at(self, pattern: Pattern, x: float, y: float) -> Spotted | None:
        """The point under a pixel, the nearest one."""
        near = [(abs(s.x - x) + abs(s.y - y), i, s) for i, s in enumerate(self.spots(pattern))]
        reached = [
            row for row in near if abs(row[2].x - x) <= REACH and abs(row[2].y - y) <= REACH
        ]
        # Of a step's two points, drawn on one another, the later one is taken.
        return min(reached, key=lambda row: (row[0], -row[1]))[2] if reached else None
