"""Times as loggers write them: what is written, before it is known what it means.

A stamp is read without deciding whether 03/04/2026 is in March or in April; that is decided for
the whole log at once, by evidence.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta, timezone
from enum import StrEnum
from functools import lru_cache
from typing import NamedTuple

_MONTHS = ("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")
_CLOCK = (
    r"(?P<hour>\d{1,2})[:.h](?P<minute>\d{2})(?:[:.](?P<second>\d{2})(?P<part>[.,]\d{1,9})?)?"
)
_HALF = r"(?:\s?(?P<half>[AaPp])\.?[Mm]\.?)?"
_OFFSET = r"(?:\s?(?P<offset>Z|(?:UTC|GMT)?[+-]\d{1,2}(?::?\d{2})?|UTC|GMT))?"
_CLOCK_ONLY = re.compile(rf"\s*{_CLOCK}{_HALF}{_OFFSET}\s*", re.ASCII)
_YEAR_FIRST = r"(?P<year>\d{4})[-/.](?P<one>\d{1,2})[-/.](?P<two>\d{1,2})"
_YEAR_LAST = r"(?P<one>\d{1,2})(?P<mark>[-/.])(?P<two>\d{1,2})[-/.](?P<year>\d{4}|\d{2})"
_COMPACT = r"(?P<year>\d{4})(?P<one>\d{2})(?P<two>\d{2})"
_NAMED = (
    r"(?P<one>\d{1,2})[. -]+(?P<month>[A-Za-z]{3})[a-z]*[. -]+(?P<year>\d{4}|\d{2})",
    r"(?P<month>[A-Za-z]{3})[a-z]*\.? (?P<one>\d{1,2}),? (?P<year>\d{4})",
)
_DATES = tuple(re.compile(rf"\s*{d}", re.ASCII) for d in (_YEAR_FIRST, _YEAR_LAST, *_NAMED))
_COMPACT_STAMP = re.compile(
    rf"\s*{_COMPACT}[T ]?(?P<hour>\d{{2}})(?P<minute>\d{{2}})(?P<second>\d{{2}})?{_OFFSET}\s*",
    re.ASCII,
)
_EPOCH = re.compile(r"\s*(\d{9,10})(?:\.\d+)?\s*|\s*(\d{12,13})\s*", re.ASCII)
_ZONE_IN_HEADING = re.compile(
    r"\b(?:UTC|GMT)\s?(?P<hours>[+-]\d{1,2})?(?::?(?P<minutes>\d{2}))?"
)
_PLAIN = re.compile(r"\s*(?P<date>[^\sT,;]+)[T ,;]+(?P<clock>.*)", re.DOTALL)
_DAYS_KNOWN, _CLOCKS_KNOWN = 1 << 10, 1 << 14
_CENTURY = 2000
_OLDEST, _NEWEST = 1970, 2200
_NOON = 12


class DateOrder(StrEnum):
    """What comes first in a date such as 03/04/2026."""

    DAY_FIRST = "day first"
    MONTH_FIRST = "month first"


@dataclass(frozen=True, slots=True, kw_only=True)
class Stamp:
    """What a cell says about a time: `first` and `second` are day and month in unknown order.

    `order` is None when the writing leaves the order open. `epoch_seconds` alone is set for a
    count of seconds since 1970.
    """

    year: int = 0
    first: int = 0
    second: int = 0
    order: DateOrder | None = None
    clock: timedelta = timedelta()
    offset: timedelta | None = None
    epoch_seconds: float | None = None

    def wall(self, order: DateOrder) -> datetime | None:
        """The naive time it shows, read as `order` if open; None for no such date."""
        day, month = self.first, self.second
        if (self.order or order) is DateOrder.MONTH_FIRST:
            day, month = month, day
        midnight = _midnight(self.year, month, day)
        return None if midnight is None else midnight + self.clock

    def instant(self) -> datetime | None:
        """The UTC instant of a count of seconds; None for any other stamp."""
        if self.epoch_seconds is None:
            return None
        return datetime.fromtimestamp(self.epoch_seconds, UTC)


@lru_cache(maxsize=_DAYS_KNOWN)
def _midnight(year: int, month: int, day: int) -> datetime | None:
    """The beginning of a day; None for no such date."""
    if not _OLDEST <= year <= _NEWEST:
        return None
    try:
        return datetime.combine(date(year, month, day), time())
    except ValueError:
        return None


def stamp_in(text: str) -> Stamp | None:
    """Read a date with a time of day, or a count of seconds or milliseconds; None otherwise."""
    plain = _PLAIN.match(text)
    day = None if plain is None else _day_in(plain["date"])
    if plain is not None and day is not None:
        return _dated(day, _clock_in(plain["clock"]))
    epoch = _EPOCH.fullmatch(text)
    if epoch:
        seconds = int(epoch[2]) / 1000 if epoch[2] else float(text)
        return Stamp(epoch_seconds=seconds)
    compact = _COMPACT_STAMP.fullmatch(text)
    if compact:
        return _dated(_day_of(compact), _clock_of(compact))
    for pattern in _DATES:
        found = pattern.match(text)
        if found:
            return _dated(_day_of(found), _clock_in(text[found.end() :].lstrip("T ,;")))
    return None


class _Day(NamedTuple):
    """A date as it is written."""

    year: int
    first: int
    second: int
    order: DateOrder | None


class _Clock(NamedTuple):
    """A time of day as it is written."""

    at: timedelta
    offset: timedelta | None


def _dated(day: _Day, clock: _Clock | None) -> Stamp | None:
    if clock is None:
        return None
    return Stamp(
        year=day.year,
        first=day.first,
        second=day.second,
        order=day.order,
        clock=clock.at,
        offset=clock.offset,
    )


@lru_cache(maxsize=_DAYS_KNOWN)
def _day_in(text: str) -> _Day | None:
    """A date that is all of a text; a log writes each a thousand times."""
    found = next((found for pattern in _DATES if (found := pattern.match(text))), None)
    return _day_of(found) if found is not None and found.end() == len(text) else None


@lru_cache(maxsize=_CLOCKS_KNOWN)
def _clock_in(text: str) -> _Clock | None:
    """A time of day that is all of a text, and what is written behind it."""
    found = _CLOCK_ONLY.fullmatch(text)
    return None if found is None else _clock_of(found)


def is_date(text: str) -> bool:
    """Whether a cell holds a date alone."""
    return any(pattern.fullmatch(text.rstrip()) for pattern in _DATES)


def is_clock(text: str) -> bool:
    """Whether a cell holds a time of day alone."""
    return bool(_CLOCK_ONLY.fullmatch(text)) and ":" in text


def zone_in_heading(heading: str) -> timezone | None:
    """The fixed offset that a heading such as "Date Time, GMT+01:00" names, if any."""
    found = _ZONE_IN_HEADING.search(heading)
    if not found:
        return None
    hours, minutes = int(found["hours"] or 0), int(found["minutes"] or 0)
    offset = timedelta(hours=hours, minutes=-minutes if hours < 0 else minutes)
    return timezone(offset) if abs(offset) < timedelta(hours=24) else None


def _day_of(found: re.Match[str]) -> _Day:
    fields = found.groupdict()
    year = int(fields["year"]) + (_CENTURY if len(fields["year"]) == 2 else 0)  # noqa: PLR2004
    if fields.get("month"):
        name = fields["month"].lower()
        month = _MONTHS.index(name) + 1 if name in _MONTHS else 0
        return _Day(year, int(fields["one"]), month, DateOrder.DAY_FIRST)
    if found.re is _DATES[1]:
        # Dots are written where the day comes first; strokes and dashes tell nothing.
        order = DateOrder.DAY_FIRST if fields["mark"] == "." else None
        return _Day(year, int(fields["one"]), int(fields["two"]), order)
    return _Day(year, int(fields["two"]), int(fields["one"]), DateOrder.DAY_FIRST)


def _clock_of(found: re.Match[str]) -> _Clock | None:
    fields = found.groupdict()
    hour, minute = int(fields["hour"] or 0), int(fields["minute"] or 0)
    second = int(fields.get("second") or 0)
    half = (fields.get("half") or "").lower()
    if half:
        if not 1 <= hour <= _NOON:
            return None
        hour = hour % _NOON + (_NOON if half == "p" else 0)
    past_midnight = hour == 24 and minute == second == 0  # noqa: PLR2004 - 24:00 ends the day
    if minute > 59 or second > 59 or (hour > 23 and not past_midnight):  # noqa: PLR2004
        return None
    part = float((fields.get("part") or "0").replace(",", "."))
    at = timedelta(hours=hour, minutes=minute, seconds=second + part)
    return _Clock(at, _offset_of(found["offset"]))


def _offset_of(text: str | None) -> timedelta | None:
    if not text:
        return None
    figures = text.removeprefix("UTC").removeprefix("GMT")
    if figures in {"", "Z"}:
        return timedelta()
    digits = figures[1:].replace(":", "")
    hours, minutes = digits[:2], digits[2:]
    if len(digits) == 3:  # noqa: PLR2004 - +130 is an hour and a half
        hours, minutes = digits[:1], digits[1:]
    offset = timedelta(hours=int(hours), minutes=int(minutes or 0))
    return -offset if figures[0] == "-" else offset
