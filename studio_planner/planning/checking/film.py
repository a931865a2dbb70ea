"""How far a film has come: the share of a stage that passes in the air of one place.

A stage that takes t(T) hours passes 1/t(T) of itself in an hour, and is reached when the
shares add up to one. The integral is broken at every sample of the room's history, wherever a
temperature that counts crosses a figure of the sheet, and where it crosses the minimum.
"""

from __future__ import annotations

import itertools
from bisect import bisect_right
from typing import TYPE_CHECKING

from studio_planner.planning.checking.quadrature import integral, reached_at
from studio_planner.science.stages import Edge

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from studio_planner.science.history import History
    from studio_planner.science.laws import StageLaw

_SECONDS_PER_HOUR = 3600.0
_TOWARDS = {Edge.EARLY: 1.0, Edge.LIKELY: 0.0, Edge.LATE: -1.0}
"""Which end of the room's band an edge looks at: the warm one for early, the cold for late."""

_Stretch = tuple[float, float, float]
"""From, to [s], and the share of the stage that passes between them."""


class FilmRates:
    """The progress of one stage at one edge in one place.

    Hours below `minimum` [°C] do not count for a *not before* stage; for a *not after* stage
    they count as if it were no colder than the minimum.
    """

    def __init__(
        self, law: StageLaw, history: History, edge: Edge, minimum: float | None
    ) -> None:
        """Remember what is needed; stretches are integrated when they are first asked for."""
        self._law = law
        self._history = history
        self._edge = edge
        self._minimum = minimum
        self._stops = minimum is not None and law.stage.not_before
        self._levels = (*law.kinks(edge), *(() if minimum is None else (minimum,)))
        self._stretches: dict[int, tuple[_Stretch, ...]] = {}

    def walk(self, start: float, end: float, amount: float) -> tuple[float | None, float]:
        """Go from `start` to `end` [s] until `amount` of the stage has passed.

        Returns when that is, or None and the amount still missing at `end`. Outside the history
        nothing passes.
        """
        seconds = self._history.seconds
        first = max(0, bisect_right(seconds, start) - 1)
        for index in range(first, len(seconds) - 1):
            if seconds[index] >= end:
                break
            for low, high, share in self._parts(index, start, end):
                if share >= amount:
                    return reached_at(self._rate(index), low, high, amount), 0.0
                amount -= share
        return None, amount

    def _parts(self, index: int, start: float, end: float) -> Iterator[_Stretch]:
        """The stretches of a segment, cut to what lies between `start` and `end`."""
        for stretch in self._segment(index):
            low, high = max(stretch[0], start), min(stretch[1], end)
            if (low, high) == stretch[:2]:
                yield stretch
            elif low < high:
                yield low, high, self._share(index, low, high)

    def _segment(self, index: int) -> tuple[_Stretch, ...]:
        if index not in self._stretches:
            cuts = self._cuts(index)
            pairs = itertools.pairwise(cuts)
            self._stretches[index] = tuple((a, b, self._share(index, a, b)) for a, b in pairs)
        return self._stretches[index]

    def _cuts(self, index: int) -> list[float]:
        """Instants at which the rate has a kink or stops, with both ends of the segment."""
        start, end = self._history.seconds[index : index + 2]
        cuts = {start, end}
        for towards in {0.0, _TOWARDS[self._edge]}:
            from_celsius, to_celsius = self._ends(index, towards)
            if from_celsius == to_celsius:
                continue
            for celsius in self._levels:
                part = (celsius - from_celsius) / (to_celsius - from_celsius)
                if 0.0 < part < 1.0:
                    cuts.add(start + part * (end - start))
        return sorted(cuts)

    def _ends(self, index: int, towards: float) -> tuple[float, float]:
        celsius, band = self._history.celsius, self._history.band
        return (
            celsius[index] + towards * band[index],
            celsius[index + 1] + towards * band[index + 1],
        )

    def _share(self, index: int, low: float, high: float) -> float:
        if self._stops and self._too_cold(index, (low + high) / 2):
            return 0.0
        rate = self._rate(index)
        if self._steady(index):
            return rate(low) * (high - low)
        return integral(rate, low, high)

    def _too_cold(self, index: int, instant: float) -> bool:
        start, end = self._history.seconds[index : index + 2]
        first, last = self._ends(index, _TOWARDS[self._edge])
        felt = first + (last - first) * (instant - start) / (end - start)
        return self._minimum is not None and felt < self._minimum

    def _steady(self, index: int) -> bool:
        first, last = self._ends(index, _TOWARDS[self._edge])
        celsius = self._history.celsius
        return first == last and celsius[index] == celsius[index + 1]

    def _rate(self, index: int) -> Callable[[float], float]:
        """The share per second inside a segment, its ends taken from inside."""
        start, end = self._history.seconds[index : index + 2]
        celsius, last = self._history.celsius[index : index + 2]
        band, last_band = self._history.band[index : index + 2]
        slope, band_slope = (last - celsius) / (end - start), (last_band - band) / (end - start)
        floor = -1e9 if self._stops or self._minimum is None else self._minimum
        hours, edge = self._law.hours, self._edge

        def rate(instant: float) -> float:
            ahead = instant - start
            felt = max(celsius + slope * ahead, floor)
            width = max(band + band_slope * ahead, 0.0)  # rounding may go below nothing
            return 1.0 / (_SECONDS_PER_HOUR * hours(felt, edge, width))

        return rate
