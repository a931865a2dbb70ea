"""Places with a temperature of their own: the room, a warm box, and their level spots."""

from __future__ import annotations

from bisect import bisect_right
from collections import Counter
from dataclasses import dataclass, field
from datetime import UTC, datetime, time, timedelta
from enum import StrEnum
from itertools import pairwise
from typing import TYPE_CHECKING

from studio_planner.craft.day_words import weekday_word
from studio_planner.craft.errors import Rulebook
from studio_planner.craft.local_time import days_between, instant
from studio_planner.craft.spells import Spell, in_order, with_spells
from studio_planner.craft.tongue import translate
from studio_planner.science.samples import history_of

if TYPE_CHECKING:
    from zoneinfo import ZoneInfo

    from studio_planner.science.history import History

_WEEK = 7
_MOST_AT_ONCE = 2

_BAND_GROWS_SECONDS = 7 * 86_400.0
"""How long after the last reading a place's band has grown to twice its width (our choice)."""


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
        rules = Rulebook(translate("nouns", "temperature pattern"))
        rules.wall_clock(self.at, "at")
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
        damp = self.humidity_pct
        zoned = self.when.utcoffset() is not None
        if zoned and -40 <= self.celsius <= 90 and (damp is None or 0 <= damp <= 100):  # noqa: PLR2004
            return  # a log has hundreds of thousands of them
        rules = Rulebook(translate("nouns", "reading"))
        rules.require(
            self.when.utcoffset() is not None,
            "when",
            translate("rules", "a reading needs a time with a zone."),
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
        rules = Rulebook(translate("nouns", "spot {name}").format(name=self.name or self.key))
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
    right after the last reading; it doubles over a week. Without readings it stays as it is.
    `spells` are hours of a date for which the pattern does not hold; readings win over both.
    `read_band_celsius` is the same for what was read. `heat_loss_w_per_k` is the heat that the
    place loses for each degree that it is warmer than outside; None where it is not known.
    """

    key: str
    name: str
    kind: PlaceKind = PlaceKind.ROOM
    pattern: tuple[PatternPoint, ...] = ()
    band_celsius: float = 1.0
    read_band_celsius: float = 0.3
    heat_loss_w_per_k: float | None = None
    spots: tuple[Spot, ...] = ()
    spells: tuple[Spell, ...] = ()
    readings: tuple[Reading, ...] = field(default=(), repr=False)

    def __post_init__(self) -> None:
        """Check the bands, and that a pattern is there."""
        rules = Rulebook(translate("nouns", "place {name}").format(name=self.name or self.key))
        rules.named(self.key, "key")
        rules.named(self.name)
        rules.require(
            bool(self.pattern),
            "pattern",
            translate("rules", "give at least one expected temperature."),
        )
        rules.between(self.band_celsius, 0, 15, "band_celsius")
        rules.between(self.read_band_celsius, 0, 15, "read_band_celsius")
        if self.heat_loss_w_per_k is not None:
            rules.between(self.heat_loss_w_per_k, 0, 100_000, "heat_loss_w_per_k")
        self._check_steps(rules)
        rules.require(
            in_order(self.spells),
            "spells",
            translate("rules", "temperatures for a time must be in order, none over another."),
        )
        # Times of one zone compare by the wall clock, which doubles an hour in autumn.
        whens = [reading.when.timestamp() for reading in self.readings]
        rules.require(
            all(one < other for one, other in pairwise(whens)),
            "readings",
            translate("rules", "readings must be in the order of time, one for each time."),
        )
        rules.close()

    def _check_steps(self, rules: Rulebook) -> None:
        said = translate("rules", "{day} {time} has {count} temperatures; a step has two.")
        for day in range(_WEEK):
            times = Counter(point.at for point in self._points_on(day))
            for at in sorted(at for at, points in times.items() if points > _MOST_AT_ONCE):
                sentence = said.format(
                    day=weekday_word(day), time=f"{at:%H:%M}", count=times[at]
                )
                rules.require(False, "pattern", sentence)  # noqa: FBT003 - found above

    def history(self, zone: ZoneInfo, start: datetime, end: datetime) -> History:
        """The place's air from `start` to a later `end` (aware): what was read, the pattern.

        From the first to the last reading the readings count, straight between two. Before
        and after them the pattern does, with its band, which grows after the last one; where
        the two meet there is a step.
        """
        low, high = start.timestamp(), end.timestamp()
        whens = [reading.when.timestamp() for reading in self.readings]
        first, last = (whens[0], whens[-1]) if whens else (high, low)
        samples: list[_Sample] = []
        if whens and first > low:
            samples += self._expected(zone, low, min(first, high), first)
        if whens and first <= high and last >= low:
            samples += self._read(whens, low, high)
        if last < high:
            # Without a reading there is none to be far from: the band stays as it is.
            samples += self._expected(zone, max(last, low), high, last if whens else high)
        return history_of(_in_order(samples))

    def _read(self, whens: list[float], low: float, high: float) -> list[_Sample]:
        # One reading on either side, so that the stretch is covered to its ends.
        inside = slice(max(0, bisect_right(whens, low) - 1), bisect_right(whens, high) + 1)
        return [
            (when, reading.celsius, self.read_band_celsius, reading.humidity_pct)
            for when, reading in zip(whens[inside], self.readings[inside], strict=True)
        ]

    def _expected(self, zone: ZoneInfo, low: float, high: float, known: float) -> list[_Sample]:
        """The pattern and its spells from `low` to `high`; the band grows from `known` on."""
        line = self._pattern_line(zone, low, high).part(low, high)
        kink = known + _BAND_GROWS_SECONDS
        if low < kink < high and kink not in line.seconds:
            line = _broken_at(line, kink)
        return [
            (second, celsius, self._band(second - known), humidity)
            for second, celsius, humidity in with_spells(line, self.spells, low, high)
        ]

    def _pattern_line(self, zone: ZoneInfo, low: float, high: float) -> History:
        margin = timedelta(days=_WEEK + 1)
        start, end = (datetime.fromtimestamp(second, UTC) for second in (low, high))
        samples = [
            (instant(zone, day, point.at).timestamp(), point.celsius, 0.0, point.humidity_pct)
            for day in days_between(zone, start - margin, end + margin)
            for point in self._points_on(day.weekday())
        ]
        return history_of(_in_order(samples))

    def _points_on(self, weekday: int) -> list[PatternPoint]:
        points = [point for point in self.pattern if point.day in {None, weekday}]
        return sorted(points, key=lambda point: point.at)

    def _band(self, ahead_seconds: float) -> float:
        share = max(0.0, ahead_seconds) / _BAND_GROWS_SECONDS
        return self.band_celsius * (1.0 + min(share, 1.0))


_Sample = tuple[float, float, float, float | None]


def _in_order(samples: list[_Sample]) -> list[_Sample]:
    """Keep the order of the wall clock where the spring change lets times run backwards.

    A time in the hour that is left out comes no later than the next one; of what falls on one
    instant the first and the last are the step.
    """
    latest = samples[-1][0]
    kept: list[_Sample] = []
    for second, celsius, band, humidity in reversed(samples):
        latest = min(latest, second)
        if len(kept) > 1 and kept[-2][0] == latest:
            kept.pop()
        kept.append((latest, celsius, band, humidity))
    return kept[::-1]


def _broken_at(line: History, second: float) -> History:
    begun, ended = line.extent
    return line.part(begun, second).followed_by(line.part(second, ended))
