"""Reading what is typed: times, dates, temperatures and numbers."""

from __future__ import annotations

import math
import re
from datetime import UTC, date, datetime, time, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.local_time import instant, readings_of
from studio_planner.craft.tongue import quoted
from studio_planner.science.units import celsius_from
from studio_planner.terminal.bad_input import BadInput

if TYPE_CHECKING:
    from zoneinfo import ZoneInfo

_TEMPERATURE = re.compile(r"([+-]?\d+(?:[.,]\d+)?)\s*°?\s*([CF])", re.IGNORECASE | re.ASCII)
_TIME_OF_DAY = re.compile(r"(yesterday\s+)?(\d{1,2})[:.](\d{2})", re.IGNORECASE | re.ASCII)
_COLDEST, _WARMEST = -60.0, 120.0
_HEAVIEST_GRAMS = 1_000_000.0
_FIRST_YEAR, _LAST_YEAR = 1980, 2150


def when_of(text: str, zone: ZoneInfo | None, what: str, also: str = "") -> datetime:
    """Read an instant; without a zone of its own it is on the studio's wall clock.

    `what` names the argument in the sentence, `also` how else it is written. BadInput when it
    is no time, when the studio's clock never shows it or shows it twice (with both readings),
    or when there is no zone.
    """
    moment = _parsed(text, what, also)
    if moment.tzinfo is not None:
        return moment.astimezone(UTC)
    if zone is None:
        raise BadInput(
            f"{what} {text} has no zone, and a data sheet alone has none either; write it "
            f"as {moment.isoformat(timespec='minutes')}+01:00, with your own zone."
        )
    found = readings_of(zone, moment)
    if len(found) == 1:
        return found[0]
    return _refused(text, zone, moment, found, what)


def past_when_of(text: str, zone: ZoneInfo, what: str, now: datetime) -> datetime:
    """Read an instant of what has happened, of which a time of day alone will do.

    18:30 is the latest half past six of the studio's clock that is not after `now`, and
    yesterday 18:30 that of the day before. Anything else, and BadInput, as for `when_of`.
    """
    match = _TIME_OF_DAY.fullmatch(text.strip())
    if match is None:
        return when_of(text, zone, what, ", 18:30 or 'yesterday 18:30'")
    here = now.astimezone(zone).replace(tzinfo=None)
    try:
        wall = datetime.combine(here.date(), time(int(match[2]), int(match[3])))
    except ValueError:
        raise BadInput(f"{what} {quoted(text)} is not a time; write it as 18:30.") from None
    if match[1] or wall > here:
        wall -= timedelta(days=1)
    return when_of(wall.isoformat(timespec="minutes"), zone, what)


def _parsed(text: str, what: str, also: str) -> datetime:
    try:
        moment = datetime.fromisoformat(text.strip())
    except ValueError:
        sentence = f"{what} {quoted(text)} is not a time; write it as 2026-02-02T18:00{also}."
        raise BadInput(sentence) from None
    _require_known_year(moment.year, text, what)
    return moment


def _require_known_year(year: int, text: str, what: str) -> None:
    if not _FIRST_YEAR <= year <= _LAST_YEAR:
        raise BadInput(
            f"{what} {text} is outside {_FIRST_YEAR} to {_LAST_YEAR}, the years that can be "
            "planned in; check the year."
        )


def _refused(
    text: str, zone: ZoneInfo, wall: datetime, found: tuple[datetime, ...], what: str
) -> datetime:
    both = found or tuple(
        sorted({wall.replace(tzinfo=zone, fold=fold).astimezone(UTC) for fold in (0, 1)})
    )
    one, other = (moment.astimezone(zone).isoformat(timespec="minutes") for moment in both)
    shown = "comes twice" if found else "is left out"
    raise BadInput(
        f"{what} {text} {shown} when the clocks of {zone.key} change; "
        f"write {one} or {other}, whichever you mean."
    )


def day_of(text: str, what: str) -> date:
    """Read a date such as 2026-02-02; BadInput when it is none."""
    try:
        day = date.fromisoformat(text.strip())
    except ValueError:
        raise BadInput(
            f"{what} {quoted(text)} is not a date; write it as 2026-02-02."
        ) from None
    _require_known_year(day.year, text, what)
    return day


def celsius_of(text: str, what: str) -> float:
    """Read a temperature such as 20C or 68F as °C; BadInput when it is none."""
    match = _TEMPERATURE.fullmatch(text.strip())
    if match is None:
        raise BadInput(f"{what} {quoted(text)} is not a temperature; write it as 20C or 68F.")
    celsius = celsius_from(float(match[1].replace(",", ".")), match[2].upper())
    if not _COLDEST <= celsius <= _WARMEST:
        raise BadInput(
            f"{what} {text} is not a temperature of a room; use {_COLDEST:g}C to {_WARMEST:g}C."
        )
    return celsius


def grams_of(text: str, what: str) -> float:
    """Read a mass in grams, more than zero; BadInput when it is none."""
    grams = _number(text.strip().removesuffix("g").strip())
    if not 0.0 < grams <= _HEAVIEST_GRAMS:
        raise BadInput(f"{what} {quoted(text)} is not a mass in grams; write it as 150.")
    return grams


def percent_of(text: str, what: str) -> float:
    """Read a percentage such as 45%; BadInput when it is none from 0 to 100."""
    plain = text.strip().removesuffix("%").strip()
    percent = _number(plain)
    if not 0.0 <= percent <= 100.0 or not plain[:1].isdecimal():  # noqa: PLR2004 - all of it
        raise BadInput(
            f"{what} {quoted(text)} is not a percentage from 0 to 100; write it as 45%."
        )
    return percent


def _number(text: str) -> float:
    try:
        number = float(text.replace(",", "."))
    except ValueError:
        return 0.0
    return number if math.isfinite(number) else 0.0


def whole_number(text: str, what: str, largest: int, least: int = 1) -> int:
    """Read a whole number from `least` to `largest`; BadInput when it is none."""
    plain = text.strip().removeprefix("#")
    if plain.isascii() and plain.isdigit() and len(plain) <= len(str(largest)):
        number = int(plain)
        if least <= number <= largest:
            return number
    raise BadInput(f"{what} {quoted(text)} is not a whole number from {least} to {largest}.")


def days_later(zone: ZoneInfo, start: datetime, days: int) -> datetime:
    """Give the instant at the same time on the wall clock so many days later."""
    local = start.astimezone(zone)
    return instant(zone, date.fromordinal(local.toordinal() + days), local.time())
