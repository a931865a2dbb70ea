"""Days and times of the expected air, written and read."""

from __future__ import annotations

import re
from datetime import time

from studio_planner.desktop.tongue import quoted, translate, weekday

_TIME = re.compile(r"(\d{1,2})(?:[:.h ](\d{2}))?\s*(am|pm)?", re.IGNORECASE)
_NOON = 12
_WEEK = 7
_MOST_MINUTES = 59
_MOST_HOURS = 23


def day_word(day: int | None) -> str:
    """A weekday, or that it is every day."""
    return translate("room", "every day") if day is None else weekday(day)


def day_of(text: str) -> int | None:
    """Read a day: Mon, or every day; ValueError in a sentence when it is none."""
    wanted = text.strip().lower()
    if wanted in {"", day_word(None).lower()}:
        return None
    for one in range(_WEEK):
        if wanted.startswith(weekday(one).lower()):
            return one
    message = translate("room", "{text} is no day; write Mon to Sun, or every day.")
    raise ValueError(message.format(text=quoted(text)))


def time_of(text: str) -> time:
    """Read a time of day: 7:30, 19.30, 7 pm; ValueError in a sentence when it is none."""
    found = _TIME.fullmatch(text.strip())
    if found:
        hour, minute = int(found[1]), int(found[2] or 0)
        if found[3] and 1 <= hour <= _NOON:
            hour = hour % _NOON + (_NOON if found[3].lower() == "pm" else 0)
        if hour <= _MOST_HOURS and minute <= _MOST_MINUTES:
            return time(hour, minute)
    message = translate("room", "{text} is no time; write for example 7:30.")
    raise ValueError(message.format(text=quoted(text)))
