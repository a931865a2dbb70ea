"""Rules for days in words (RFC 5545), for those that no row of fields can say."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from studio_planner.craft.day_words import day_word, month_word, weekday_word
from studio_planner.craft.tongue import counted, listed, marked, translate
from studio_planner.services.editing.weeks import WEEKDAYS

if TYPE_CHECKING:
    from collections.abc import Mapping

_SPANS = {
    "DAILY": (marked("rule", "every day"), marked("rule", "every {count} days")),
    "WEEKLY": (marked("rule", "every week"), marked("rule", "every {count} weeks")),
    "MONTHLY": (marked("rule", "every month"), marked("rule", "every {count} months")),
    "YEARLY": (marked("rule", "every year"), marked("rule", "every {count} years")),
}
_PLACES = {
    1: marked("rule", "the first {day}"),
    2: marked("rule", "the second {day}"),
    3: marked("rule", "the third {day}"),
    4: marked("rule", "the fourth {day}"),
    5: marked("rule", "the fifth {day}"),
    -1: marked("rule", "the last {day}"),
}
_SAYABLE = {"FREQ", "INTERVAL", "BYDAY", "BYMONTHDAY", "BYMONTH", "COUNT", "UNTIL", "WKST"}


def rule_words(rule: str, first: date | None) -> str:
    """A rule for days in words; the rule itself where it says more than words do."""
    parts = dict(part.split("=", 1) for part in rule.upper().split(";"))
    try:
        text = _words(parts)
    except (KeyError, ValueError):
        text = translate("rule", "by the rule {rule}").format(rule=rule)
    if first is None:
        return text
    return translate("rule", "{rule}, from {day}").format(rule=text, day=_date(first))


def _words(parts: Mapping[str, str]) -> str:
    if not parts.keys() <= _SAYABLE or parts.get("WKST", "MO") != "MO":
        raise KeyError
    every, (one, many) = int(parts.get("INTERVAL", "1")), _SPANS[parts["FREQ"]]
    text = counted(every, translate("rule", one), translate("rule", many))
    if "BYDAY" in parts:
        days = listed((_weekday(day) for day in parts["BYDAY"].split(",")), most=None)
        text = translate("rule", "{rule} on {days}").format(rule=text, days=days)
    if "BYMONTHDAY" in parts:
        days = listed((str(int(day)) for day in parts["BYMONTHDAY"].split(",")), most=None)
        text = translate("rule", "{rule} on day {days}").format(rule=text, days=days)
    if "BYMONTH" in parts:
        months = listed((month_word(int(m)) for m in parts["BYMONTH"].split(",")), most=None)
        text = translate("rule", "{rule} in {months}").format(rule=text, months=months)
    return text + _end(parts)


def _end(parts: Mapping[str, str]) -> str:
    if "COUNT" in parts:
        said = translate("rule", "{count} times in all").format(count=int(parts["COUNT"]))
        return f", {said}"
    if "UNTIL" in parts:
        until = parts["UNTIL"]
        day = date(int(until[:4]), int(until[4:6]), int(until[6:8]))
        return ", " + translate("rule", "until {day}").format(day=_date(day))
    return ""


def _weekday(value: str) -> str:
    day = weekday_word(WEEKDAYS.index(value[-2:]))
    return translate("rule", _PLACES[int(value[:-2])]).format(day=day) if value[:-2] else day


def _date(day: date) -> str:
    return f"{day_word(day)} {day.year}"
