"""Where the time axis has its marks: local midnights and hours, exact on clock changes."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime, time, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.local_time import days_between, readings_of
from studio_planner.craft.settings import ClockForm

if TYPE_CHECKING:
    from collections.abc import Iterator
    from zoneinfo import ZoneInfo

_HOUR_STEPS = (1, 2, 3, 6, 12)
_DAY_STEPS = (1, 2, 7, 14, 28)
_LEAST_DAY_PIXELS = 62.0
_LEAST_HOUR_PIXELS = {ClockForm.HOURS_24: 26.0, ClockForm.HOURS_12: 46.0}


@dataclass(frozen=True, slots=True)
class AxisMark:
    """One mark: its instant [s since 1970 UTC] and the local wall-clock time there."""

    second: float
    local: datetime


def day_marks(
    zone: ZoneInfo, start: float, end: float, pixels_per_day: float, week_starts: int = 0
) -> list[AxisMark]:
    """Local midnights in view, thinned so that their names do not meet.

    Where only one of a week is left, it is the day on which weeks begin (0 for Monday).
    """
    step = next((s for s in _DAY_STEPS if s * pixels_per_day >= _LEAST_DAY_PIXELS), 28)
    marks = []
    for day in days_between(zone, _instant(start) - timedelta(days=step), _instant(end)):
        # The first day of the calendar, number 1, was a Monday.
        if day.toordinal() % step != ((1 + week_starts) % step if step % 7 == 0 else 0):
            continue
        midnight = readings_of(zone, datetime.combine(day, time()))[:1]
        marks += [_mark(when, zone) for when in midnight]
    return marks


def hour_marks(
    zone: ZoneInfo,
    start: float,
    end: float,
    pixels_per_day: float,
    form: ClockForm = ClockForm.HOURS_24,
) -> list[AxisMark]:
    """Whole local hours in view, unless too close together; a doubled hour comes twice."""
    least = _LEAST_HOUR_PIXELS[form]
    fits = (s for s in _HOUR_STEPS if s * pixels_per_day / 24.0 >= least)
    step = next(fits, None)
    if step is None:
        return []
    return [mark for mark in _hours(zone, start, end, step) if start <= mark.second <= end]


def _hours(zone: ZoneInfo, start: float, end: float, step: int) -> Iterator[AxisMark]:
    for day in days_between(zone, _instant(start), _instant(end)):
        for hour in range(0, 24, step):
            for when in readings_of(zone, datetime.combine(day, time(hour))):
                yield _mark(when, zone)


def _mark(when: datetime, zone: ZoneInfo) -> AxisMark:
    return AxisMark(when.timestamp(), when.astimezone(zone))


def _instant(second: float) -> datetime:
    return datetime.fromtimestamp(second, UTC)
