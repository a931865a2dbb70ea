"""Readings as few columns as a picture has, whatever their number; and the pattern beside."""

from __future__ import annotations

from bisect import bisect_left
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from zoneinfo import ZoneInfo

    from studio_planner.craft.places import Place, Reading


@dataclass(frozen=True, slots=True)
class Column:
    """The readings that fall into one column: its middle [s], the lowest and highest °C."""

    second: float
    low: float
    high: float


class ReadingPlot:
    """The readings of one place, made ready once to be drawn at any scale."""

    def __init__(self, place: Place, zone: ZoneInfo) -> None:
        """Read the times off the readings; the pattern is asked for when it is drawn."""
        self._place = replace(place, readings=())
        self._zone = zone
        self.readings: tuple[Reading, ...] = place.readings
        self._seconds = [reading.when.timestamp() for reading in place.readings]
        self._celsius = [reading.celsius for reading in place.readings]

    @property
    def extent(self) -> tuple[float, float]:
        """The first and the last instant [s]; both 0 without readings."""
        return (self._seconds[0], self._seconds[-1]) if self._seconds else (0.0, 0.0)

    def columns(self, start: float, end: float, count: int) -> list[Column]:
        """At most `count` columns from `start` to `end` [s]; empty ones are left out."""
        width = (end - start) / max(count, 1)
        found = []
        low = bisect_left(self._seconds, start)
        for number in range(count):
            high = bisect_left(self._seconds, start + (number + 1) * width)
            if high > low:
                part = self._celsius[low:high]
                middle = start + (number + 0.5) * width
                found.append(Column(middle, min(part), max(part)))
            low = high
        return found

    def expected(self, start: float, end: float, count: int) -> list[tuple[float, float]]:
        """What the pattern says at `count` instants from `start` to `end` [s], in °C."""
        if end <= start:
            return []
        first, last = (datetime.fromtimestamp(second, UTC) for second in (start, end))
        history = self._place.history(self._zone, first, last)
        seconds = [start + (end - start) * i / max(count - 1, 1) for i in range(count)]
        values = [(second, history.celsius_at(second)) for second in seconds]
        return [(second, celsius) for second, celsius in values if celsius is not None]
