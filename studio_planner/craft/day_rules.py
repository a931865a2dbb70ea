"""Recurrence rules that give days: RFC 5545, RRULE without its name, in local dates.

Only what gives whole days is read: no hours, no zone, no rule that never gives a day. Parts
and their ranges are those of RFC 5545, section 3.3.10.
"""

from __future__ import annotations

import re
from datetime import datetime
from typing import TYPE_CHECKING, cast

from dateutil.rrule import rrulestr

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping
    from datetime import date

    from dateutil.rrule import rrule

_HIGHEST_WEEKDAY_NUMBER = {"DAILY": 0, "WEEKLY": 0, "MONTHLY": 5, "YEARLY": 53}
_PLAIN = {"INTERVAL": 1000, "COUNT": 100_000, "BYMONTH": 12}
_SIGNED = {"BYMONTHDAY": 31, "BYYEARDAY": 366, "BYWEEKNO": 53, "BYSETPOS": 366}
_LISTS = {"BYMONTH", "BYDAY", *_SIGNED}
_WEEKDAYS = ("MO", "TU", "WE", "TH", "FR", "SA", "SU")
_WEEKDAY = re.compile(rf"([+-]?[0-9]{{1,2}})?({'|'.join(_WEEKDAYS)})")
_UNTIL = re.compile(r"[0-9]{8}(T[0-9]{6})?")

_BEFORE_EVERY_PLAN = datetime(2000, 1, 1)  # noqa: DTZ001 - a wall-clock date for the rule
# The calendar ends with 9999: from here a search sees every kind of year, and is short.
_LAST_28_YEARS = datetime(9972, 1, 1)  # noqa: DTZ001 - as above


def is_day_rule(text: str) -> bool:
    """Tell whether `text` is a rule for days that gives at least one day somewhen."""
    parts = _parts(text)
    if parts.get("FREQ") not in _HIGHEST_WEEKDAY_NUMBER or not all(
        _fits(name, value, parts) for name, value in parts.items()
    ):
        return False
    if {"COUNT", "UNTIL"} <= parts.keys():  # the standard allows one of them
        return False
    # Where it begins and how it counts from there is known only with its first date.
    lasting = parts.keys() - {"COUNT", "UNTIL", "INTERVAL"}
    endless = ";".join(f"{name}={parts[name]}" for name in lasting)
    try:
        _rule(text, _BEFORE_EVERY_PLAN)  # UNTIL may be no date
    except ValueError:
        return False
    return any(True for _ in _rule(endless, _LAST_28_YEARS))


def needs_first(text: str) -> bool:
    """Tell whether a rule says what comes back only together with the date it begins on.

    It counts days, or it leaves the day of the week, month or year to that date.
    """
    parts = _parts(text)
    chosen = parts.keys() & {"BYDAY", "BYMONTHDAY", "BYYEARDAY", "BYWEEKNO"}
    return "COUNT" in parts or not (chosen or parts["FREQ"] == "DAILY")


def gives_a_day(text: str, first: date | None) -> bool:
    """Tell whether a rule that begins on `first` ever gives a day."""
    return any(True for _ in _rule(text, _begin(text, first, None)))


def days_of(text: str, begins: date | None, first: date, last: date) -> Iterator[date]:
    """Dates of a rule from `first` to `last`, both inside; `begins` is what it counts from."""
    start, end = _midnight(first), _midnight(last)
    rule = _rule(text, _begin(text, begins, first))
    return (found.date() for found in rule.between(start, end, inc=True))


def _begin(text: str, begins: date | None, near: date | None) -> datetime:
    # Counting from the year 2000 is slow, and needed only where the rule counts.
    counts = _parts(text).keys() & {"INTERVAL", "BYSETPOS"}
    day = begins or (None if counts else near)
    return _midnight(day) if day else _BEFORE_EVERY_PLAN


def _midnight(day: date) -> datetime:
    return datetime(day.year, day.month, day.day)  # noqa: DTZ001 - a wall-clock date


def _rule(text: str, begin: datetime) -> rrule:
    # One line without other names is one rule, never a set of them.
    return cast("rrule", rrulestr(f"RRULE:{text}", dtstart=begin, cache=False))


def _parts(text: str) -> Mapping[str, str]:
    """Give the parts by name; empty when the text has not the form of a rule."""
    pairs = [part.partition("=") for part in text.upper().split(";")]
    parts = {name: value for name, equals, value in pairs if equals}
    return parts if len(parts) == len(pairs) else {}


def _fits(name: str, value: str, parts: Mapping[str, str]) -> bool:
    values = value.split(",") if name in _LISTS else [value]
    return all(_value_fits(name, one, parts) for one in values)


def _value_fits(name: str, value: str, parts: Mapping[str, str]) -> bool:
    if name in _PLAIN:
        return _whole(value, r"[0-9]+", _PLAIN[name])
    if name in _SIGNED:
        return _whole(value, r"[+-]?[0-9]+", _SIGNED[name])
    if name == "BYDAY":
        return _weekday_fits(value, parts)
    if name == "UNTIL":
        return _UNTIL.fullmatch(value) is not None
    return name == "FREQ" or (name == "WKST" and value in _WEEKDAYS)


def _whole(value: str, form: str, highest: int) -> bool:
    return bool(re.fullmatch(form, value)) and 1 <= abs(int(value)) <= highest


def _weekday_fits(value: str, parts: Mapping[str, str]) -> bool:
    found = _WEEKDAY.fullmatch(value)
    if found is None:
        return False
    highest = _HIGHEST_WEEKDAY_NUMBER[parts["FREQ"]]
    if "BYMONTH" in parts:
        highest = min(highest, _HIGHEST_WEEKDAY_NUMBER["MONTHLY"])
    return found[1] is None or 1 <= abs(int(found[1])) <= highest
