"""Between the wall clock of a studio and UTC, exact on both clock changes of the year."""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from studio_planner.craft.errors import BrokenRule, InvalidEntry
from studio_planner.craft.tongue import quoted, translate

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

Span = tuple[datetime, datetime]
"""A stretch of time: aware UTC start (inside) and end (outside)."""


def zone_named(name: str) -> ZoneInfo:
    """Find a time zone by its IANA name; InvalidEntry when there is none of that name."""
    try:
        return ZoneInfo(name)
    except (ZoneInfoNotFoundError, ValueError, OSError) as error:
        sentence = translate(
            "rules", "there is no time zone called {name}; use a name such as Europe/Berlin."
        ).format(name=quoted(name))
        raise InvalidEntry("studio", [BrokenRule("zone", sentence)]) from error


def instant(zone: ZoneInfo, day: date, at: time) -> datetime:
    """Give the UTC instant when the studio's wall clock shows `at` on `day`.

    An hour that the spring change leaves out is read as if the clock had not yet been changed;
    an hour that the autumn change doubles is its first passing.
    """
    local = datetime.combine(day, at.replace(tzinfo=None, fold=0), tzinfo=zone)
    return local.astimezone(UTC)


def readings_of(zone: ZoneInfo, wall: datetime) -> tuple[datetime, ...]:
    """All UTC instants at which the wall clock shows the naive time `wall`: none to two."""
    here = wall.replace(tzinfo=zone, fold=0)
    if here.utcoffset() == here.replace(fold=1).utcoffset():
        return (here.astimezone(UTC),)  # neither skipped nor doubled
    found = []
    for fold in (0, 1):
        moment = wall.replace(tzinfo=zone, fold=fold).astimezone(UTC)
        if moment.astimezone(zone).replace(tzinfo=None) == wall and moment not in found:
            found.append(moment)
    return tuple(found)


def days_between(zone: ZoneInfo, start: datetime, end: datetime) -> Iterator[date]:
    """Every local date that the span touches, in order."""
    day = start.astimezone(zone).date()
    last = end.astimezone(zone).date()
    while day <= last:
        yield day
        day += timedelta(days=1)


def daily_span(zone: ZoneInfo, day: date, start: time, end: time) -> Span:
    """The span from `start` on `day` to `end`, which lies on the next day when not later."""
    end_day = day if end > start else day + timedelta(days=1)
    return (instant(zone, day, start), instant(zone, end_day, end))


def merged(spans: Iterable[Span]) -> tuple[Span, ...]:
    """Sort spans, drop empty ones and join those that touch."""
    result: list[Span] = []
    for start, end in sorted(span for span in spans if span[0] < span[1]):
        if result and start <= result[-1][1]:
            result[-1] = (result[-1][0], max(result[-1][1], end))
        else:
            result.append((start, end))
    return tuple(result)


def without(spans: Iterable[Span], holes: Iterable[Span]) -> tuple[Span, ...]:
    """Cut holes out of spans."""
    result = list(merged(spans))
    for hole_start, hole_end in merged(holes):
        cut: list[Span] = []
        for start, end in result:
            cut += [(start, min(end, hole_start)), (max(start, hole_end), end)]
        result = [span for span in cut if span[0] < span[1]]
    return merged(result)


def clipped(spans: Iterable[Span], start: datetime, end: datetime) -> tuple[Span, ...]:
    """Keep only what lies between `start` and `end`."""
    low, high = start.astimezone(UTC), end.astimezone(UTC)
    return merged((max(a, low), min(b, high)) for a, b in spans)
