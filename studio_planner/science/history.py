"""What a room was and will be: steady, set back, a log continued by a forecast, its gaps."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import groupby, pairwise
from typing import TYPE_CHECKING

from studio_planner.science.samples import (
    ALL_TIME_SECONDS,
    COLDEST_ROOM_CELSIUS,
    SATURATED_PERCENT,
    WARMEST_ROOM_CELSIUS,
    WIDEST_BAND_CELSIUS,
    History,
    HistoryError,
    Row,
    history_of,
)

if TYPE_CHECKING:
    from collections.abc import Sequence

__all__ = [
    "ALL_TIME_SECONDS",
    "COLDEST_ROOM_CELSIUS",
    "SATURATED_PERCENT",
    "WARMEST_ROOM_CELSIUS",
    "WIDEST_BAND_CELSIUS",
    "FilledHistory",
    "History",
    "HistoryError",
    "constant_history",
    "continued_by",
    "fill_gaps",
    "stepped_history",
]


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
    rows: list[Row] = []
    for (instant, celsius), until in zip(changes, ends, strict=False):
        if until <= instant:
            msg = "The changes of a room have to be in order of time, before its end."
            raise HistoryError(msg)
        rows += [(instant, celsius, band, humidity), (until, celsius, band, humidity)]
    if not rows:
        msg = "A room needs at least one temperature."
        raise HistoryError(msg)
    return history_of(rows)


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
    rows: list[Row] = []
    opening = {start for start, _ in gaps}
    samples = list(
        zip(history.seconds, history.celsius, history.band, history.humidity, strict=True)
    )
    for before, after in pairwise(samples):
        wide = before[0] in opening and after[0] > before[0]
        rows += [_widened(before, band), _widened(after, band)] if wide else [before, after]
    return FilledHistory(history_of(_joined(rows or samples)), gaps)


def _widened(row: Row, band: float) -> Row:
    second, celsius, own, humidity = row
    return second, celsius, max(own, band), humidity


def _joined(rows: Sequence[Row]) -> list[Row]:
    """Drop repeats and whatever lies inside a step, keeping its first and last sample."""
    kept: list[Row] = []
    for _, same in groupby(rows, key=_second):
        at_once = list(same)
        kept += [at_once[0]] if at_once[0] == at_once[-1] else [at_once[0], at_once[-1]]
    return kept


def _second(row: Row) -> float:
    return row[0]
