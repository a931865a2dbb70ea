"""What a room was and will be: temperature, its band and humidity over time."""

from __future__ import annotations

import math
from bisect import bisect_left, bisect_right
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import groupby, pairwise

ALL_TIME_SECONDS = 1e11
"""Half the length of a constant history [s]: some 3000 years either way of 1970."""

COLDEST_ROOM_CELSIUS = -60.0
WARMEST_ROOM_CELSIUS = 120.0
WIDEST_BAND_CELSIUS = 30.0


class HistoryError(ValueError):
    """Samples that can't be read as a history; the text is for the maker."""


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
        if not all(h is None or 0.0 <= h <= 100.0 for h in self.humidity):
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
        return self._value_at(self.celsius, instant)

    def band_at(self, instant: float) -> float | None:
        """Return the temperature's band [°C]; None outside the history."""
        return self._value_at(self.band, instant)

    def humidity_at(self, instant: float) -> float | None:
        """Return the relative humidity [%]; None outside or beside an unknown sample."""
        return self._value_at(self.humidity, instant)

    def _value_at(
        self, values: tuple[float, ...] | tuple[float | None, ...], instant: float
    ) -> float | None:
        first, last = self.extent
        if not first <= instant <= last:
            return None
        after = bisect_right(self.seconds, instant)
        start, begun = values[after - 1], self.seconds[after - 1]
        if begun == instant or start is None:
            return start
        end = values[after]
        if end is None:
            return None
        share = (instant - begun) / (self.seconds[after] - begun)
        return start + (end - start) * share

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
        inner = slice(low, high)
        return History(
            (start, *self.seconds[inner], end),
            (
                self._from(self.celsius, start),
                *self.celsius[inner],
                self._till(self.celsius, end),
            ),
            (self._from(self.band, start), *self.band[inner], self._till(self.band, end)),
            (self.humidity_at(start), *self.humidity[inner], self._humidity_till(end)),
        )

    def _from(self, values: tuple[float, ...], instant: float) -> float:
        value = self._value_at(values, instant)
        assert value is not None  # noqa: S101 - `part` has checked the extent
        return value

    def _till(self, values: tuple[float, ...], instant: float) -> float:
        index = bisect_left(self.seconds, instant)
        if self.seconds[index] == instant:
            return values[index]
        return self._from(values, instant)

    def _humidity_till(self, instant: float) -> float | None:
        index = bisect_left(self.seconds, instant)
        if self.seconds[index] == instant:
            return self.humidity[index]
        return self.humidity_at(instant)

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


def constant_history(
    celsius: float, band: float = 0.0, humidity: float | None = None
) -> History:
    """Return a room that is the same for all time (within 3000 years of 1970).

    Examples
    --------
    >>> constant_history(20.0).celsius_at(1.8e9)
    20.0
    """
    return History(
        (-ALL_TIME_SECONDS, ALL_TIME_SECONDS),
        (celsius, celsius),
        (band, band),
        (humidity, humidity),
    )


def continued_by(log: History, forecast: History) -> History:
    """Return the log, then the forecast from where the log ends.

    Where they overlap the log wins; at the join there is a step from the last reading to
    the forecast. A forecast that starts later than the log ends is joined by a straight
    line (see `History.gaps`).

    Examples
    --------
    >>> log = History((0.0, 10.0), (20.0, 20.0), (0.5, 0.5), (None, None))
    >>> forecast = History((0.0, 20.0), (18.0, 18.0), (2.0, 2.0), (None, None))
    >>> joined = continued_by(log, forecast)
    >>> joined.celsius_at(9.0), joined.celsius_at(11.0), joined.extent
    (20.0, 18.0, (0.0, 20.0))
    """
    end = log.extent[1]
    first, last = forecast.extent
    if last <= end:
        return log
    if first > end:
        return log.followed_by(forecast)
    later = forecast if first == end else forecast.part(end, last)
    return _without(log, -1).followed_by(_without(later, 0))


def _without(history: History, side: int) -> History:
    """Drop the sample that begins (0) or ends (-1) a history in a step of no duration."""
    start, end = (0, 1) if side == 0 else (-1, -2)
    if len(history.seconds) == 1 or history.seconds[start] != history.seconds[end]:
        return history
    keep = slice(1, None) if side == 0 else slice(0, -1)
    return History(
        history.seconds[keep], history.celsius[keep], history.band[keep], history.humidity[keep]
    )


def stepped_history(
    changes: Sequence[tuple[float, float]],
    end: float,
    band: float = 0.0,
    humidity: float | None = None,
) -> History:
    """Return a room that holds each temperature until the next change.

    Parameters
    ----------
    changes
        (instant [s], temperature [°C] from then on), in order of time; a thermostat's
        set-backs, worked out in local time by the caller.
    end
        Where the history ends [s], after the last change.
    band, humidity
        As in `History`, throughout.

    Raises
    ------
    HistoryError
        If there is no change or the instants are not in order.

    Examples
    --------
    >>> heated = stepped_history([(0.0, 21.0), (3600.0, 16.0)], end=7200.0)
    >>> heated.celsius_at(1800.0), heated.celsius_at(3600.0), heated.celsius_at(7200.0)
    (21.0, 16.0, 16.0)
    """
    ends = [instant for instant, _ in changes[1:]] + [end]
    rows: list[_Row] = []
    for (instant, celsius), until in zip(changes, ends, strict=False):
        if until <= instant:
            msg = "The changes of a room have to be in order of time, before its end."
            raise HistoryError(msg)
        rows += [(instant, celsius, band, humidity), (until, celsius, band, humidity)]
    if not rows:
        msg = "A room needs at least one temperature."
        raise HistoryError(msg)
    return _history_of(rows)


@dataclass(frozen=True, slots=True)
class FilledHistory:
    """A history and the gaps [(from, to) in s] that were bridged with a wider band."""

    history: History
    gaps: tuple[tuple[float, float], ...]


def fill_gaps(history: History, longest_seconds: float, band: float) -> FilledHistory:
    """Widen the band across every pause longer than a limit, and mark the pauses.

    The temperature is bridged by a straight line; nobody measured it, so the band [°C] is
    at least `band` from the pause's first to its last second.

    Examples
    --------
    >>> log = History((0.0, 60.0, 9000.0), (20.0,) * 3, (0.5,) * 3, (None,) * 3)
    >>> filled = fill_gaps(log, 3600.0, 3.0)
    >>> filled.gaps, filled.history.band_at(4000.0), filled.history.band_at(30.0)
    (((60.0, 9000.0),), 3.0, 0.5)
    """
    gaps = history.gaps(longest_seconds)
    rows: list[_Row] = []
    opening = {start for start, _ in gaps}
    samples = list(
        zip(history.seconds, history.celsius, history.band, history.humidity, strict=True)
    )
    for before, after in pairwise(samples):
        wide = before[0] in opening and after[0] > before[0]
        rows += [_widened(before, band), _widened(after, band)] if wide else [before, after]
    return FilledHistory(_history_of(_joined(rows or samples)), gaps)


_Row = tuple[float, float, float, float | None]


def _widened(row: _Row, band: float) -> _Row:
    second, celsius, own, humidity = row
    return second, celsius, max(own, band), humidity


def _joined(rows: Sequence[_Row]) -> list[_Row]:
    """Drop repeats and whatever lies inside a step, keeping its first and last sample."""
    kept: list[_Row] = []
    for _, same in groupby(rows, key=_second):
        at_once = list(same)
        kept += [at_once[0]] if at_once[0] == at_once[-1] else [at_once[0], at_once[-1]]
    return kept


def _second(row: _Row) -> float:
    return row[0]


def _history_of(rows: Sequence[_Row]) -> History:
    seconds, celsius, band, humidity = zip(*rows, strict=True)
    return History(seconds, celsius, band, humidity)
