"""The clock changes of 2026 in three zones, from the rules that set them.

Europe/Berlin: last Sunday of March and of October, 01:00 UTC (Directive 2000/84/EC).
America/New_York: second Sunday of March, first of November, 02:00 local (15 U.S.C. 260a).
Australia/Lord_Howe: first Sunday of October and of April, 02:00 local, by half an hour (IANA
time zone database).
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from zoneinfo import ZoneInfo

HOUR = timedelta(hours=1)


@dataclass(frozen=True)
class Change:
    """One change: when, the offset from UTC before it, and how far the clock is put on."""

    zone: ZoneInfo
    moment: datetime
    before: timedelta
    by: timedelta

    @property
    def wall(self) -> datetime:
        """What the clock shows when it is changed (naive)."""
        return (self.moment + self.before).replace(tzinfo=None)

    @property
    def day(self) -> date:
        return self.wall.date()


def _change(zone: str, moment: datetime, before_hours: float, by_hours: float) -> Change:
    before, by = timedelta(hours=before_hours), timedelta(hours=by_hours)
    return Change(ZoneInfo(zone), moment, before, by)


SPRING = (
    _change("Europe/Berlin", datetime(2026, 3, 29, 1, tzinfo=UTC), 1, 1),
    _change("America/New_York", datetime(2026, 3, 8, 7, tzinfo=UTC), -5, 1),
    _change("Australia/Lord_Howe", datetime(2026, 10, 3, 15, 30, tzinfo=UTC), 10.5, 0.5),
)
AUTUMN = (
    _change("Europe/Berlin", datetime(2026, 10, 25, 1, tzinfo=UTC), 2, -1),
    _change("America/New_York", datetime(2026, 11, 1, 6, tzinfo=UTC), -4, -1),
    _change("Australia/Lord_Howe", datetime(2026, 4, 4, 15, tzinfo=UTC), 11, -0.5),
)
CHANGES = SPRING + AUTUMN
