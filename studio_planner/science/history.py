"""What a room was and will be: steady for all time, and the gaps in what was read of it."""

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
    "fill_gaps",
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
