"""Samples of a room over time, and the straight lines between them."""

from __future__ import annotations

import math
from bisect import bisect_left, bisect_right
from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Sequence

ALL_TIME_SECONDS = 1e11
"""Half the length of a constant history [s]: some 3000 years either way of 1970."""

COLDEST_ROOM_CELSIUS = -60.0
WARMEST_ROOM_CELSIUS = 120.0
WIDEST_BAND_CELSIUS = 30.0
SATURATED_PERCENT = 100.0


class HistoryError(ValueError):
    """Samples that can't be read as a history; the text is for the maker."""


Row = tuple[float, float, float, float | None]
"""Second, °C, band and humidity of one sample."""


@dataclass(frozen=True, slots=True)
class History:
    """A room over time, straight lines between samples; tuples of equal length.

    Always: seconds never fall, at most two samples share a second (a step: the first ends
    what was before, the second begins what follows), temperatures are -60 to
    120 °C, bands 0 to 30 °C, humidity is 0-100 % or unknown. Outside its ends
    a history has no temperature.

    Attributes
    ----------
    seconds
        Instants [s since 1970 UTC].
    celsius
        Temperatures [°C].
    band
        How far the truth may be from `celsius` either way at 90 % [°C].
    humidity
        Relative humidity [%], None where it is unknown.

    Examples
    --------
    >>> night = History((0.0, 3600.0), (20.0, 16.0), (1.0, 1.0), (50.0, 60.0))
    >>> night.celsius_at(1800.0), night.humidity_at(900.0), night.celsius_at(-1.0)
    (18.0, 52.5, None)
    """

    seconds: tuple[float, ...]
    celsius: tuple[float, ...]
    band: tuple[float, ...]
    humidity: tuple[float | None, ...]

    def __post_init__(self) -> None:
        """Refuse samples that can't be a room."""
        lengths = {len(self.celsius), len(self.band), len(self.humidity)}
        if lengths != {len(self.seconds)} or not self.seconds:
            msg = "A room history needs at least one sample, each with all four values."
            raise HistoryError(msg)
        self._check_values()
        self._check_order()

    def _check_values(self) -> None:
        if not all(map(math.isfinite, self.seconds)):
            msg = "A room history has an instant that is not a finite number."
            raise HistoryError(msg)
        if not all(COLDEST_ROOM_CELSIUS <= c <= WARMEST_ROOM_CELSIUS for c in self.celsius):
            msg = "A room history has a temperature outside -60 to 120 °C; check its unit."
            raise HistoryError(msg)
        if not all(0.0 <= b <= WIDEST_BAND_CELSIUS for b in self.band):
            msg = "A room history has a temperature band that is not 0 to 30 °C."
            raise HistoryError(msg)
        if not all(h is None or 0.0 <= h <= SATURATED_PERCENT for h in self.humidity):
            msg = "A room history has a humidity that is not 0 to 100 %."
            raise HistoryError(msg)

    def _check_order(self) -> None:
        pairs = pairwise(self.seconds)
        if any(later < earlier for earlier, later in pairs):
            msg = "A room history has samples out of order; sort them by time first."
            raise HistoryError(msg)
        thirds = zip(self.seconds, self.seconds[2:], strict=False)
        if any(first == third for first, third in thirds):
            msg = "A room history has three samples at one second; a step needs only two."
            raise HistoryError(msg)

    @property
    def extent(self) -> tuple[float, float]:
        """The first and the last instant that has a temperature [s]."""
        return self.seconds[0], self.seconds[-1]

    def celsius_at(self, instant: float) -> float | None:
        """Return the temperature [°C], after the step where there is one; None outside."""
        return self._row_after(instant)[1] if self._covers(instant) else None

    def band_at(self, instant: float) -> float | None:
        """Return the temperature's band [°C]; None outside the history."""
        return self._row_after(instant)[2] if self._covers(instant) else None

    def humidity_at(self, instant: float) -> float | None:
        """Return the relative humidity [%]; None outside or beside an unknown sample."""
        return self._row_after(instant)[3] if self._covers(instant) else None

    def part(self, start: float, end: float) -> History:
        """Return the history from `start` to `end` [s], both inside its extent.

        Raises
        ------
        HistoryError
            If the part would be empty or is not inside the extent.
        """
        first, last = self.extent
        if not first <= start < end <= last:
            msg = "The part asked for is not inside the room history."
            raise HistoryError(msg)
        low, high = bisect_right(self.seconds, start), bisect_left(self.seconds, end)
        inner = [self._row(index) for index in range(low, high)]
        return history_of([self._row_after(start), *inner, self._row_before(end)])

    def _covers(self, instant: float) -> bool:
        return self.seconds[0] <= instant <= self.seconds[-1]

    def _row(self, index: int) -> Row:
        values = (self.celsius[index], self.band[index], self.humidity[index])
        return (self.seconds[index], *values)

    def _row_after(self, instant: float) -> Row:
        """Return the room at an instant, after the step where there is one."""
        index = bisect_right(self.seconds, instant) - 1
        return self._row_between(index, instant)

    def _row_before(self, instant: float) -> Row:
        """Return the room at an instant, before the step where there is one."""
        index = bisect_left(self.seconds, instant)
        at_sample = self.seconds[index] == instant
        return self._row(index) if at_sample else self._row_between(index - 1, instant)

    def _row_between(self, index: int, instant: float) -> Row:
        begun, celsius, band, humidity = before = self._row(index)
        if begun == instant:
            return before
        ended, next_celsius, next_band, next_humidity = self._row(index + 1)
        share = (instant - begun) / (ended - begun)
        damp = None
        if humidity is not None and next_humidity is not None:
            damp = humidity + (next_humidity - humidity) * share
        return (
            instant,
            celsius + (next_celsius - celsius) * share,
            band + (next_band - band) * share,
            damp,
        )

    def followed_by(self, later: History) -> History:
        """Return this history and then `later`, which starts no earlier than this ends.

        A step is made where the two meet at one second. Where `later` starts after this
        ends, a straight line bridges the two.

        Raises
        ------
        HistoryError
            If `later` starts before this ends.
        """
        return History(
            self.seconds + later.seconds,
            self.celsius + later.celsius,
            self.band + later.band,
            self.humidity + later.humidity,
        )

    def gaps(self, longest_seconds: float) -> tuple[tuple[float, float], ...]:
        """Return the (from, to) of every pause between samples longer than a limit [s]."""
        pairs = pairwise(self.seconds)
        return tuple((a, b) for a, b in pairs if b - a > longest_seconds)


def history_of(rows: Sequence[Row]) -> History:
    """Return the history of rows of (second, °C, band, humidity).

    Examples
    --------
    >>> history_of([(0.0, 20.0, 0.5, None), (60.0, 21.0, 0.5, None)]).extent
    (0.0, 60.0)
    """
    seconds, celsius, band, humidity = zip(*rows, strict=True)
    return History(seconds, celsius, band, humidity)
