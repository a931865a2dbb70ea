"""Rules for days in words (RFC 5545), for those that no row of fields can say."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.services.editing.weeks import WEEKDAYS

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping
    from datetime import date

_DAYS = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")
_MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")
_SPANS = {"DAILY": "day", "WEEKLY": "week", "MONTHLY": "month", "YEARLY": "year"}
_PLACES = {1: "first", 2: "second", 3: "third", 4: "fourth", 5: "fifth", -1: "last"}
_SAYABLE = {"FREQ", "INTERVAL", "BYDAY", "BYMONTHDAY", "BYMONTH", "COUNT", "UNTIL", "WKST"}


def rule_words(rule: str, first: date | None) -> str:
    """A rule for days in words; the rule itself where it says more than words do."""
    parts = dict(part.split("=", 1) for part in rule.upper().split(";"))
    try:
        text = _words(parts)
    except (KeyError, ValueError):
        text = f"by the rule {rule}"
    return text if first is None else f"{text}, from {_date(first)}"


def _words(parts: Mapping[str, str]) -> str:
    if not parts.keys() <= _SAYABLE or parts.get("WKST", "MO") != "MO":
        raise KeyError
    every, span = int(parts.get("INTERVAL", "1")), _SPANS[parts["FREQ"]]
    text = f"every {span}" if every == 1 else f"every {every} {span}s"
    if "BYDAY" in parts:
        text += f" on {_listed(_weekday(day) for day in parts['BYDAY'].split(','))}"
    if "BYMONTHDAY" in parts:
        text += f" on day {_listed(str(int(day)) for day in parts['BYMONTHDAY'].split(','))}"
    if "BYMONTH" in parts:
        text += f" in {_listed(_MONTHS[int(m) - 1] for m in parts['BYMONTH'].split(','))}"
    return text + _end(parts)


def _end(parts: Mapping[str, str]) -> str:
    if "COUNT" in parts:
        return f", {int(parts['COUNT'])} times in all"
    if "UNTIL" in parts:
        until = parts["UNTIL"]
        return f", until {int(until[6:8])} {_MONTHS[int(until[4:6]) - 1]} {until[:4]}"
    return ""


def _weekday(value: str) -> str:
    day = _DAYS[WEEKDAYS.index(value[-2:])]
    return f"the {_PLACES[int(value[:-2])]} {day}" if value[:-2] else day


def _listed(values: Iterable[str]) -> str:
    every = list(values)
    return " and ".join(filter(None, (", ".join(every[:-1]), every[-1])))


def _date(day: date) -> str:
    return f"{day.day} {_MONTHS[day.month - 1]} {day.year}"
