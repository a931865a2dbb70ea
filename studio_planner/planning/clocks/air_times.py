"""When the air of a place forbids a pour: too cold or warm, too damp, too near dew."""

from __future__ import annotations

import math
from bisect import bisect_right
from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING

from studio_planner.craft.log_legs import stays_along
from studio_planner.craft.products import ProductKind
from studio_planner.planning.clocks.runs import Runs
from studio_planner.planning.clocks.stage_times import ALWAYS
from studio_planner.planning.spans import GRID, Span, grid_down, grid_up, joined, outside
from studio_planner.science.air import dew_point

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from studio_planner.craft.pieces import Material
    from studio_planner.craft.products import Product
    from studio_planner.craft.timing import Timing
    from studio_planner.planning.spans import Stretches
    from studio_planner.science.history import History

_STEP = 1800.0
_DAY = 86_400
_TINY = 1e-6
_GUARD = 0.05
"""Kept inside every limit (°C, % RH) because the margin bends between two looks."""

_ANY_TIME = (grid_up(-ALWAYS), grid_down(ALWAYS))

Holes = tuple[list[float], list[float]]


class AirTimes:
    """Starts that the air forbids, per place, product and material; found once each."""

    def __init__(self, timing: Timing) -> None:
        """Look at the air through the studio's clocks."""
        self._timing = timing
        self._settings = timing.studio.settings
        self._limits: dict[tuple[str, str], list[Span]] = {}
        self._damp: dict[tuple[str, int], list[Span]] = {}
        self._holes: dict[tuple[str, str, Material, int], Holes] = {}
        self._good: dict[tuple[str, str, Material, int], Stretches] = {}
        self._rising: dict[tuple[str, int, int], list[tuple[int, int]]] = {}
        self._grid: dict[tuple[str, int, int], tuple[list[float], Runs]] = {}
        self._seen: dict[str, _Looks] = {}

    def holes(self, place: str, product: Product, material: Material, block: int) -> Holes:
        """Open intervals of forbidden starts for a block of so many seconds: lows and highs."""
        key = (place, product.key, material, block)
        if key not in self._holes:
            holes = [(a - block, b) for a, b in self._limit_spans(place, product)]
            if product.kind is not ProductKind.LEAF:
                tail = block + self._settings.dew_hours * 3600.0
                holes += [(a - tail, b) for a, b in self._damp_spans(place, material)]
            whole = joined(holes)
            self._holes[key] = ([a for a, _ in whole], [b for _, b in whole])
        return self._holes[key]

    def good(self, place: str, product: Product, material: Material, block: int) -> Stretches:
        """All grid starts for a block of so many seconds that are in none of the holes."""
        key = (place, product.key, material, block)
        found = self._good.get(key)
        if found is None:
            lows, highs = self.holes(place, product, material, block)
            whole = [(int(low), int(high) + 1) for low, high in zip(lows, highs, strict=True)]
            found = self._good[key] = outside([_ANY_TIME], whole)
        return found

    def known(self, legs: Sequence[tuple[str, int]], end: int) -> bool:
        """Tell whether humidity is known where a coat is from its start through its dew hours.

        `legs` are places, from when on [s] each; the pour is over at its `end`.
        """
        until = end + math.ceil(self._settings.dew_hours * 3600.0)
        return all(self._known_in(*stay) for stay in stays_along(legs, until))

    def _known_in(self, place: str, start: int, until: int) -> bool:
        history = self._timing.history(place)
        seconds, humidity = history.seconds, history.humidity
        low = bisect_right(seconds, start) - 1
        high = min(bisect_right(seconds, until), len(seconds) - 1)
        return all(value is not None for value in humidity[max(low, 0) : high + 1])

    def rising(self, place: str, block: int, first: int, last: int) -> list[tuple[int, int]]:
        """Open intervals of grid starts from which a place warms too much during a block.

        Looked at day by day, and only for the days from `first` to `last`.
        """
        holes: list[tuple[int, int]] = []
        for day in range(first // _DAY, last // _DAY + 1):
            key = (place, block, day)
            if key not in self._rising:
                self._rising[key] = self._rising_on(place, block, day * _DAY)
            holes += self._rising[key]
        return holes

    def _rising_on(self, place: str, block: int, start: int) -> list[tuple[int, int]]:
        most = self._settings.steady_celsius - 1e-6
        count = -(-block // GRID)
        celsius, peaks = self._steps(place, start, -(-count * GRID // _DAY))
        warmest = peaks.highest(count, _DAY // GRID)
        today = zip(range(start, start + _DAY, GRID), warmest, celsius, strict=False)
        warming = [begin for begin, peak, now in today if peak > now + most]
        holes: list[tuple[int, int]] = []
        for begin in warming:
            joins = bool(holes) and holes[-1][1] == begin - GRID + 1
            low = holes.pop()[0] if joins else begin - 1
            holes.append((low, begin + 1))
        return holes

    def _steps(self, place: str, start: int, days: int) -> tuple[list[float], Runs]:
        """Temperature at each grid time of a day, and the warmest until the next one.

        The warmest are known for so many days more.
        """
        key = (place, start, days)
        if key not in self._grid:
            history = self._timing.history(place)
            rows = [_grid_steps(history, start + day * _DAY) for day in range(days + 1)]
            self._grid[key] = rows[0][0], Runs([peak for _, peaks in rows for peak in peaks])
        return self._grid[key]

    def _limit_spans(self, place: str, product: Product) -> list[Span]:
        key = (place, product.key)
        if key not in self._limits:
            self._limits[key] = list(self._beyond_limits(place, product))
        return self._limits[key]

    def _beyond_limits(self, place: str, product: Product) -> Iterator[Span]:
        looks = self._looks(place)
        low, high = product.minimum_celsius, product.maximum_celsius
        damp = product.humidity_limit_pct
        if low is not None:
            yield from _negative(looks.seconds, [c - low - _TINY for c in looks.celsius])
        if high is not None:
            yield from _negative(looks.seconds, [high - c - _TINY for c in looks.celsius])
        if damp is not None and product.kind is not ProductKind.LEAF:
            margins = [None if h is None else damp - h - _TINY for h in looks.humidity]
            yield from _negative(looks.seconds, margins)

    def _damp_spans(self, place: str, material: Material) -> list[Span]:
        looks = self._looks(place)
        least = self._settings.dew_margin_celsius + _GUARD
        if looks.margin >= least:
            # A surface follows the air: it is never colder than the air has been.
            return []
        surface = self._timing.surface(place, material)
        key = (place, id(surface))
        if key not in self._damp:
            margins = [
                None if dew is None else celsius - dew - least
                for celsius, dew in zip(_values(surface, looks.seconds), looks.dew, strict=True)
            ]
            self._damp[key] = list(_negative(looks.seconds, margins))
        return self._damp[key]

    def _looks(self, place: str) -> _Looks:
        if place not in self._seen:
            self._seen[place] = _looks(self._timing.history(place))
        return self._seen[place]


@dataclass(frozen=True, slots=True)
class _Looks:
    """Every sample of a place, and a look at least every half hour between two.

    `margin` is how far the coldest air of all stays above the highest dew point of all.
    """

    seconds: list[float]
    celsius: list[float]
    humidity: list[float | None]
    dew: list[float | None]
    margin: float


def _looks(history: History) -> _Looks:
    rows = list(zip(history.seconds, history.celsius, history.humidity, strict=True))
    looks = [rows[0]]
    for before, after in pairwise(rows):
        looks += _between(before, after)
        looks.append(after)
    seconds, celsius, humidity = (list(column) for column in zip(*looks, strict=True))
    dew = [dew_point(c, h) if h else None for _, c, h in looks]
    highest = max((point for point in dew if point is not None), default=-math.inf)
    return _Looks(seconds, celsius, humidity, dew, min(celsius) - highest)


def _values(history: History, seconds: list[float]) -> list[float]:
    """A history's temperatures at rising instants, walked once."""
    values: list[float] = []
    times, celsius = history.seconds, history.celsius
    index, last = 0, len(times) - 2
    for second in seconds:
        index = min(max(bisect_right(times, second, index) - 1, 0), last)
        t0, t1, v0, v1 = times[index], times[index + 1], celsius[index], celsius[index + 1]
        share = 1.0 if t1 == t0 else min(1.0, (second - t0) / (t1 - t0))
        values.append(v0 + (v1 - v0) * share)
    return values


_Look = tuple[float, float, float | None]


def _between(before: _Look, after: _Look) -> list[_Look]:
    gap = after[0] - before[0]
    count = int(gap // _STEP)
    looks: list[_Look] = []
    for step in range(1, count + 1):
        share = step * _STEP / gap
        if share >= 1.0:
            break
        humidity = (
            None
            if before[2] is None or after[2] is None
            else before[2] + share * (after[2] - before[2])
        )
        celsius = before[1] + share * (after[1] - before[1])
        looks.append((before[0] + step * _STEP, celsius, humidity))
    return looks


def _grid_steps(history: History, start: int) -> tuple[list[float], list[float]]:
    seconds, celsius = history.seconds, history.celsius
    index, count = bisect_right(seconds, start), len(seconds)
    values: list[float] = []
    peaks: list[float] = []
    for second in range(start, start + _DAY + GRID, GRID):
        peak = -99.0
        while index < count and seconds[index] <= second:
            peak = max(peak, celsius[index])
            index += 1
        if 0 < index < count:
            t0, t1 = seconds[index - 1], seconds[index]
            v0, v1 = celsius[index - 1], celsius[index]
            values.append(v0 + (v1 - v0) * (second - t0) / (t1 - t0))
        else:
            values.append(_celsius(history, second))
        peaks.append(peak)
    return values[:-1], list(map(max, values, values[1:], peaks[1:]))


def _celsius(history: History, second: float) -> float:
    value = history.celsius_at(second)
    return 99.0 if value is None else value


def _negative(seconds: list[float], margins: Sequence[float | None]) -> Iterator[Span]:
    """Spans in which a margin is negative, straight between two looks."""
    for index, (low, high) in enumerate(pairwise(margins)):
        if low is None or high is None or (low >= 0 and high >= 0):
            continue
        begin, end = seconds[index], seconds[index + 1]
        if low < 0 and high < 0:
            yield (begin, end)
            continue
        crossing = begin + (end - begin) * low / (low - high)
        yield (begin, crossing) if low < 0 else (crossing, end)
