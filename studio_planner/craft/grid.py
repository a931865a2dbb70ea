"""The grid of a plan: work starts on whole five minutes."""

from __future__ import annotations

from datetime import UTC, datetime

GRID_SECONDS = 300
"""Every planned start is a multiple of it, in seconds since 1970 UTC."""


def next_on_grid(when: datetime) -> datetime:
    """The first whole five minutes not before an instant, in UTC.

    Examples
    --------
    >>> next_on_grid(datetime(2026, 3, 2, 18, 1, tzinfo=UTC)).minute
    5
    """
    return _at(-(-when.timestamp() // GRID_SECONDS))


def last_on_grid(when: datetime) -> datetime:
    """The last whole five minutes not after an instant, in UTC.

    Examples
    --------
    >>> last_on_grid(datetime(2026, 3, 2, 18, 9, tzinfo=UTC)).minute
    5
    """
    return _at(when.timestamp() // GRID_SECONDS)


def nearest_on_grid(when: datetime) -> datetime:
    """The whole five minutes nearest to an instant, in UTC.

    Examples
    --------
    >>> nearest_on_grid(datetime(2026, 3, 2, 18, 4, tzinfo=UTC)).minute
    5
    """
    return _at(round(when.timestamp() / GRID_SECONDS))


def _at(number: float) -> datetime:
    return datetime.fromtimestamp(number * GRID_SECONDS, UTC)
