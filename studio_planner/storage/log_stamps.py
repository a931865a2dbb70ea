"""Times as loggers write them: what is written, before it is known what it means.

A stamp is read without deciding whether 03/04/2026 is in March or in April; that is decided for
the whole log at once, by evidence.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta, timezone
from enum import StrEnum

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
        if not _OLDEST <= self.year <= _NEWEST:
            return None
        try:
            return datetime.combine(date(self.year, month, day), time()) + self.clock
        except ValueError:
            return None

    def instant(self) -> datetime | None:
        """The UTC instant of a count of seconds; None for any other stamp."""
        if self.epoch_seconds is None:
            return None
        return datetime.fromtimestamp(self.epoch_seconds, UTC)


def stamp_in(text: str) -> Stamp | None:
    """Read a date with a time of day, or a count of seconds or milliseconds; None otherwise."""
    epoch = _EPOCH.fullmatch(text)
    if epoch:
        seconds = int(epoch[2]) / 1000 if epoch[2] else float(text)
        return Stamp(epoch_seconds=seconds)
    compact = _COMPACT_STAMP.fullmatch(text)
    if compact:
        return _dated(compact, compact)
    for pattern in _DATES:
        found = pattern.match(text)
        if found:
            clock = _CLOCK_ONLY.fullmatch(text[found.end() :].lstrip("T ,;"))
            return _dated(found, clock) if clock else None
    return None


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


def _dated(found: re.Match[str], clock: re.Match[str]) -> Stamp | None:
    fields = found.groupdict()
    at, offset = _clock_of(clock.groupdict()), _offset_of(clock["offset"])
    year = int(fields["year"]) + (_CENTURY if len(fields["year"]) == 2 else 0)  # noqa: PLR2004
    if at is None:
        return None
    if fields.get("month"):
        name = fields["month"].lower()
        month = _MONTHS.index(name) + 1 if name in _MONTHS else 0
        first, second, order = int(fields["one"]), month, DateOrder.DAY_FIRST
    elif found.re is _DATES[1]:
        # Dots are written where the day comes first; strokes and dashes tell nothing.
        dotted = fields["mark"] == "."
        first, second = int(fields["one"]), int(fields["two"])
        return Stamp(
            year=year,
            first=first,
            second=second,
            order=DateOrder.DAY_FIRST if dotted else None,
            clock=at,
            offset=offset,
        )
    else:
        first, second, order = int(fields["two"]), int(fields["one"]), DateOrder.DAY_FIRST
    return Stamp(year=year, first=first, second=second, order=order, clock=at, offset=offset)


def _clock_of(fields: dict[str, str | None]) -> timedelta | None:
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
    return timedelta(hours=hour, minutes=minute, seconds=second + part)


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
