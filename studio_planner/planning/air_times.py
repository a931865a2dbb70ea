"""When the air of a place forbids a pour: too cold or warm, too damp, too near dew."""

from __future__ import annotations

from bisect import bisect_right
from itertools import pairwise
from typing import TYPE_CHECKING

from studio_planner.craft.products import ProductKind
from studio_planner.planning.spans import GRID
from studio_planner.science.air import dew_point

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from studio_planner.craft.pieces import Material
    from studio_planner.craft.products import Product
    from studio_planner.craft.timing import Timing
    from studio_planner.science.history import History

_STEP = 1800.0
_DAY = 86_400
_GUARD = 0.05
"""Kept inside every limit (°C, % RH) because the margin bends between two looks."""

Span = tuple[float, float]
Holes = tuple[list[float], list[float]]


class AirTimes:
    """Starts that the air forbids, per place, product and material; found once each."""

    def __init__(self, timing: Timing) -> None:
        """Look at the air through the studio's clocks."""
        self._timing = timing
        self._settings = timing.studio.settings
        self._spans: dict[tuple[str, str, str], list[Span]] = {}
        self._holes: dict[tuple[str, str, Material, int], Holes] = {}
        self._rising: dict[tuple[str, int, int], list[tuple[int, int]]] = {}
        self._grid: dict[tuple[str, int], list[tuple[float, float]]] = {}
        self._points: dict[str, list[tuple[float, float, float | None]]] = {}

    def holes(self, place: str, product: Product, material: Material, block: int) -> Holes:
        """Open intervals of forbidden starts for a block of so many seconds: lows and highs."""
        key = (place, product.key, material, block)
        if key not in self._holes:
            holes = [(a - block, b) for a, b in self._limit_spans(place, product)]
            if product.kind is not ProductKind.LEAF:
                tail = block + self._settings.dew_hours * 3600.0
                holes += [(a - tail, b) for a, b in self._damp_spans(place, material)]
            joined = _joined(holes)
            self._holes[key] = ([a for a, _ in joined], [b for _, b in joined])
        return self._holes[key]

    def known(self, place: str, start: int, end: int) -> bool:
        """Tell whether humidity is known from a pour's start to the end of its dew hours."""
        history = self._timing.history(place)
        until = end + self._settings.dew_hours * 3600.0
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
        days = -(-count * GRID // _DAY)
        steps = [
            step for day in range(days + 1) for step in self._steps(place, start + day * _DAY)
        ]
        holes: list[tuple[int, int]] = []
        for index in range(_DAY // GRID):
            begin = start + index * GRID
            if (
                max(warmest for _, warmest in steps[index : index + count])
                > steps[index][0] + most
            ):
                joins = bool(holes) and holes[-1][1] == begin - GRID + 1
                low = holes.pop()[0] if joins else begin - 1
                holes.append((low, begin + 1))
        return holes

    def _steps(self, place: str, start: int) -> list[tuple[float, float]]:
        """Temperature at each grid time of a day, and the warmest until the next one."""
        if (place, start) not in self._grid:
            history = self._timing.history(place)
            self._grid[place, start] = _grid_steps(history, start)
        return self._grid[place, start]

    def _limit_spans(self, place: str, product: Product) -> list[Span]:
        key = (place, product.key, "limits")
        if key not in self._spans:
            self._spans[key] = list(self._beyond_limits(place, product))
        return self._spans[key]

    def _beyond_limits(self, place: str, product: Product) -> Iterator[Span]:
        points = self._looks(place)
        low, high = product.minimum_celsius, product.maximum_celsius
        damp = product.humidity_limit_pct
        if low is not None:
            yield from _below(points, lambda p: p[1] - low - 1e-6)
        if high is not None:
            yield from _below(points, lambda p: high - p[1] - 1e-6)
        if damp is not None and product.kind is not ProductKind.LEAF:
            yield from _below(points, lambda p: None if p[2] is None else damp - p[2] - 1e-6)

    def _damp_spans(self, place: str, material: Material) -> list[Span]:
        key = (place, "", str(material))
        if key not in self._spans:
            surface = self._timing.surface(place, material)
            least = self._settings.dew_margin_celsius + _GUARD

            def margin(look: tuple[float, float, float | None]) -> float | None:
                second, celsius, humidity = look
                if not humidity:
                    return None
                return _celsius(surface, second) - dew_point(celsius, humidity) - least

            self._spans[key] = list(_below(self._looks(place), margin))
        return self._spans[key]

    def _looks(self, place: str) -> list[tuple[float, float, float | None]]:
        """Every sample of a place, and a look at least every half hour between two."""
        if place not in self._points:
            history = self._timing.history(place)
            rows = list(zip(history.seconds, history.celsius, history.humidity, strict=True))
            looks = [rows[0]]
            for before, after in pairwise(rows):
                looks += _between(before, after)
                looks.append(after)
            self._points[place] = looks
        return self._points[place]


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


def _grid_steps(history: History, start: int) -> list[tuple[float, float]]:
    seconds, celsius = history.seconds, history.celsius
    index = bisect_right(seconds, start)
    values: list[float] = []
    peaks: list[float] = []
    for second in range(start, start + _DAY + GRID, GRID):
        peak = -99.0
        while index < len(seconds) and seconds[index] <= second:
            peak = max(peak, celsius[index])
            index += 1
        values.append(_between_samples(history, index, second))
        peaks.append(peak)
    return [
        (values[i], max(values[i], values[i + 1], peaks[i + 1])) for i in range(_DAY // GRID)
    ]


def _between_samples(history: History, after: int, second: int) -> float:
    if after == 0 or after == len(history.seconds):
        return _celsius(history, second)
    t0, t1 = history.seconds[after - 1], history.seconds[after]
    v0, v1 = history.celsius[after - 1], history.celsius[after]
    return v0 + (v1 - v0) * (second - t0) / (t1 - t0)


def _celsius(history: History, second: float) -> float:
    value = history.celsius_at(second)
    return 99.0 if value is None else value


def _below(points: list[_Look], margin: Callable[[_Look], float | None]) -> Iterator[Span]:
    """Spans in which a margin is negative, straight between two looks."""
    before: _Look | None = None
    low: float | None = None
    for look in points:
        value = margin(look)
        if before is not None and value is not None and low is not None:
            yield from _negative(before[0], low, look[0], value)
        before, low = look, value


def _negative(t0: float, v0: float, t1: float, v1: float) -> Iterator[Span]:
    if v0 >= 0 and v1 >= 0:
        return
    if v0 < 0 and v1 < 0:
        yield (t0, t1)
        return
    crossing = t0 + (t1 - t0) * v0 / (v0 - v1)
    yield (t0, crossing) if v0 < 0 else (crossing, t1)


def _joined(spans: list[Span]) -> list[Span]:
    result: list[Span] = []
    for start, end in sorted(spans):
        if result and start <= result[-1][1]:
            result[-1] = (result[-1][0], max(result[-1][1], end))
        elif start < end:
            result.append((start, end))
    return result
