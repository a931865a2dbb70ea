"""A logger's rows, cleaned into a room history, with an account of what was dropped."""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import groupby, pairwise
from typing import TYPE_CHECKING

from studio_planner.science.history import (
    COLDEST_ROOM_CELSIUS,
    SATURATED_PERCENT,
    WARMEST_ROOM_CELSIUS,
    History,
    HistoryError,
)

if TYPE_CHECKING:
    from collections.abc import Iterable


@dataclass(frozen=True, slots=True, kw_only=True)
class Sample:
    """One row of a logger: instant [s since 1970 UTC], °C, and humidity [%] if measured."""

    seconds: float
    celsius: float
    humidity: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class CleanedHistory:
    """A room history and what had to be done to get it.

    Attributes
    ----------
    history
        The room.
    rows
        How many rows were read.
    sorted_rows
        How many rows came earlier than the row before them.
    merged_rows
        How many rows repeated an instant and were merged into it (their mean).
    dropped_rows
        How many rows had no usable instant or temperature.
    dropped_humidities
        How many rows kept their temperature but had a humidity that can't be.
    """

    history: History
    rows: int
    sorted_rows: int
    merged_rows: int
    dropped_rows: int
    dropped_humidities: int


def history_from_samples(rows: Iterable[Sample], band: float = 0.5) -> CleanedHistory:
    """Return a room history from a logger's rows, in any order.

    Rows at the same second are merged to their mean; rows without a finite instant or with
    a temperature outside -60 to 120 °C are dropped (loggers write -127 or 999 for a broken
    sensor); a humidity that is not above 0 to 100 % is forgotten.

    Parameters
    ----------
    rows
        The readings.
    band
        How far a reading may be from the truth either way at 90 % [°C]; 0.5 is common for
        room loggers (from memory).

    Raises
    ------
    HistoryError
        If no usable row is left.

    Examples
    --------
    >>> rows = [Sample(seconds=60, celsius=20.0), Sample(seconds=0, celsius=19.0),
    ...         Sample(seconds=60, celsius=20.4), Sample(seconds=120, celsius=-127.0)]
    >>> cleaned = history_from_samples(rows)
    >>> cleaned.history.celsius, cleaned.merged_rows, cleaned.dropped_rows
    ((19.0, 20.2), 1, 1)
    """
    read = list(rows)
    usable = [row for row in read if _usable(row)]
    if not usable:
        msg = "The room log has no usable row; check which columns hold time and temperature."
        raise HistoryError(msg)
    pairs = pairwise(usable)
    unsorted = sum(later.seconds < earlier.seconds for earlier, later in pairs)
    by_second = groupby(sorted(usable, key=_second), key=_second)
    merged = [_merged(second, list(same)) for second, same in by_second]
    seconds, celsius, humidity = zip(*merged, strict=True)
    return CleanedHistory(
        history=History(seconds, celsius, (band,) * len(merged), humidity),
        rows=len(read),
        sorted_rows=unsorted,
        merged_rows=len(usable) - len(merged),
        dropped_rows=len(read) - len(usable),
        dropped_humidities=sum(_impossible_humidity(row) for row in usable),
    )


def _second(row: Sample) -> float:
    return row.seconds


def _usable(row: Sample) -> bool:
    warm_enough = COLDEST_ROOM_CELSIUS <= row.celsius <= WARMEST_ROOM_CELSIUS
    return math.isfinite(row.seconds) and warm_enough


def _impossible_humidity(row: Sample) -> bool:
    return row.humidity is not None and not 0.0 < row.humidity <= SATURATED_PERCENT


def _merged(second: float, same: list[Sample]) -> tuple[float, float, float | None]:
    humidities = [
        row.humidity
        for row in same
        if row.humidity is not None and not _impossible_humidity(row)
    ]
    humidity = math.fsum(humidities) / len(humidities) if humidities else None
    return second, math.fsum(row.celsius for row in same) / len(same), humidity
