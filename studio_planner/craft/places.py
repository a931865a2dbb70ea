"""Places with a temperature of their own: the room, a warm box, and their level spots."""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass, field
from datetime import datetime, time, timedelta
from enum import StrEnum
from itertools import pairwise
from typing import TYPE_CHECKING

from studio_planner.craft.errors import Rulebook
from studio_planner.craft.local_time import days_between, instant
from studio_planner.science.history import History

if TYPE_CHECKING:
    from zoneinfo import ZoneInfo

_WEEK = 7
_BAND_GROWS_DAYS = 7.0


class PlaceKind(StrEnum):
    """Whether a place is an open room or a heated box."""

    ROOM = "room"
    WARM_BOX = "warm box"


@dataclass(frozen=True, slots=True, kw_only=True)
class PatternPoint:
    """What a place is expected to be like at a local time, each day or on one weekday.

    `day` is 0 for Monday to 6 for Sunday, None for every day. Between points the temperature
    runs straight; two points at the same time are a step (a heater switched off).
    """

    at: time
    celsius: float
    humidity_pct: float | None = None
    day: int | None = None

    def __post_init__(self) -> None:
        """Check ranges."""
        rules = Rulebook("temperature pattern")
        rules.between(self.celsius, -30, 80, "celsius")
        if self.humidity_pct is not None:
            rules.between(self.humidity_pct, 1, 100, "humidity_pct")
        if self.day is not None:
            rules.between(self.day, 0, _WEEK - 1, "day")
        rules.close()


@dataclass(frozen=True, slots=True, kw_only=True)
class Reading:
    """One reading of a place's air: when (aware), °C, relative humidity in % if read."""

    when: datetime
    celsius: float
    humidity_pct: float | None = None

    def __post_init__(self) -> None:
        """Check ranges and that the time carries a zone."""
        rules = Rulebook("reading")
        rules.require(
            self.when.tzinfo is not None, "when", "a reading needs a time with a zone."
        )
        rules.between(self.celsius, -40, 90, "celsius")
        if self.humidity_pct is not None:
            rules.between(self.humidity_pct, 0, 100, "humidity_pct")
        rules.close()


@dataclass(frozen=True, slots=True, kw_only=True)
class Spot:
    """A level place for one piece or set: its length, width and clear height in mm."""

    key: str
    name: str
    length_mm: float
    width_mm: float
    height_mm: float

    def __post_init__(self) -> None:
        """Check names and sizes."""
        rules = Rulebook(f"spot {self.name or self.key}")
        rules.named(self.key, "key")
        rules.named(self.name)
        for side in ("length_mm", "width_mm", "height_mm"):
            rules.between(getattr(self, side), 10, 10_000, side)
        rules.close()

    def holds(self, footprint_mm: tuple[float, float], height_mm: float) -> bool:
        """Tell whether something of that footprint and height fits, turned if need be."""
        long, short = max(footprint_mm), min(footprint_mm)
        mine = max(self.length_mm, self.width_mm), min(self.length_mm, self.width_mm)
        return long <= mine[0] and short <= mine[1] and height_mm <= self.height_mm


@dataclass(frozen=True, slots=True, kw_only=True)
class Place:
    """A room or warm box: expected pattern, what was read so far, and its spots.

    `band_celsius` is how far the expected temperature may be off (90 % of the time, either way)
    right after the last reading; it doubles over a week. `read_band_celsius` is the same for
    what was read.
    """

    key: str
    name: str
    kind: PlaceKind = PlaceKind.ROOM
    pattern: tuple[PatternPoint, ...] = ()
    band_celsius: float = 1.0
    read_band_celsius: float = 0.3
    spots: tuple[Spot, ...] = ()
    readings: tuple[Reading, ...] = field(default=(), repr=False)

    def __post_init__(self) -> None:
        """Check the bands, and that a pattern is there."""
        rules = Rulebook(f"place {self.name or self.key}")
        rules.named(self.key, "key")
        rules.named(self.name)
        rules.require(bool(self.pattern), "pattern", "give at least one expected temperature.")
        rules.between(self.band_celsius, 0, 15, "band_celsius")
        rules.between(self.read_band_celsius, 0, 15, "read_band_celsius")
        whens = [reading.when for reading in self.readings]
        rules.require(
            all(one < other for one, other in pairwise(whens)),
            "readings",
            "readings must be in the order of time, one for each time.",
        )
        rules.close()

    def history(self, zone: ZoneInfo, start: datetime, end: datetime) -> History:
        """The place's air from `start` to `end` (aware): what was read, then the pattern.

        Up to the last reading the readings count; after it, and before the first, the pattern
        does, with its growing band.
        """
        samples = self._read(start, end)
        first = self.readings[0].when if self.readings else end
        last = self.readings[-1].when if self.readings else start
        if first > start and self.readings:
            before = self._expected(zone, start, min(first, end), first)
            samples = [s for s in before if s[0] < first.timestamp()] + samples
        if last < end:
            after = self._expected(zone, max(last, start), end, max(last, start))
            samples += [s for s in after if not samples or s[0] > samples[-1][0]]
        columns = tuple(zip(*samples, strict=True))
        return History(*columns)

    def _read(self, start: datetime, end: datetime) -> list[_Sample]:
        whens = [reading.when for reading in self.readings]
        # One reading on either side, so that the stretch is covered to its ends.
        low = max(0, bisect_right(whens, start) - 1)
        high = min(len(whens), bisect_right(whens, end) + 1)
        if not whens or whens[-1] < start or whens[0] > end:
            return []
        return [
            (r.when.timestamp(), r.celsius, self.read_band_celsius, r.humidity_pct)
            for r in self.readings[low:high]
        ]

    def _expected(
        self, zone: ZoneInfo, start: datetime, end: datetime, known: datetime
    ) -> list[_Sample]:
        samples = []
        margin = timedelta(days=_WEEK + 1)
        for day in days_between(zone, start - margin, end + margin):
            for point in self._points_on(day.weekday()):
                moment = instant(zone, day, point.at).timestamp()
                samples.append((moment, point.celsius, 0.0, point.humidity_pct))
        samples.sort(key=lambda sample: sample[0])
        grid = _cut(samples, start.timestamp(), end.timestamp())
        return [
            (second, celsius, self._band(second - known.timestamp()), humidity)
            for second, celsius, _, humidity in grid
        ]

    def _points_on(self, weekday: int) -> list[PatternPoint]:
        return [point for point in self.pattern if point.day in {None, weekday}]

    def _band(self, ahead_seconds: float) -> float:
        days = max(0.0, ahead_seconds) / 86_400.0
        return self.band_celsius * (1.0 + min(days / _BAND_GROWS_DAYS, 1.0))


_Sample = tuple[float, float, float, float | None]


def _cut(samples: list[_Sample], start: float, end: float) -> list[_Sample]:
    """Cut a sorted run of samples to a stretch, with values made at both ends and each day."""
    line = History(*zip(*samples, strict=True))
    inside = [sample for sample in samples if start < sample[0] < end]
    made = [start, end, *_daily(start, end)]
    taken = {sample[0] for sample in inside}
    for second in made:
        celsius = line.celsius_at(second)
        if second not in taken and celsius is not None:
            inside.append((second, celsius, 0.0, line.humidity_at(second)))
    return sorted(inside, key=lambda sample: sample[0])


def _daily(start: float, end: float) -> list[float]:
    # The band grows in straight pieces: one break a day keeps it as exact as it is.
    count = int((end - start) // 86_400.0)
    return [
        start + 86_400.0 * (step + 1)
        for step in range(count)
        if start + 86_400.0 * (step + 1) < end
    ]
