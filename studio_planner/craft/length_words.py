"""Lengths of time in a maker's words; what is left of a time is never rounded up."""

from __future__ import annotations

from math import floor

from studio_planner.craft.tongue import counted, translate

_DAY_HOURS = 24
_MINUTES_IN_HOUR = 60
_CRUMB = 1e-6
"""Minutes that a sum of hours may lack without being a minute less."""


def length_of_time(hours: float) -> str:
    """A length of time as a maker says it: 35 min, 5 h 20 min, 3 d 15 h; never rounded up.

    Examples
    --------
    >>> length_of_time(71.58), length_of_time(0.7), length_of_time(48)
    ('2 d 23 h', '42 min', '2 days')
    """
    whole, minutes = divmod(floor(hours * _MINUTES_IN_HOUR + _CRUMB), _MINUTES_IN_HOUR)
    if not whole:
        return f"{minutes} min"
    if whole < _DAY_HOURS:
        return f"{whole} h {minutes} min" if minutes else f"{whole} h"
    days, left = divmod(whole, _DAY_HOURS)
    if left:
        return translate("words", "{days} d {hours} h").format(days=days, hours=left)
    return counted(days, translate("words", "{count} day"), translate("words", "{count} days"))


def lateness(hours: float) -> str:
    """How late something is, to the nearest minute, from a day on to the nearest hour."""
    if hours >= _DAY_HOURS:
        return length_of_time(round(hours))
    return length_of_time(max(round(hours * _MINUTES_IN_HOUR), 1) / _MINUTES_IN_HOUR)
