"""The maker's words for a check: steps by name, local times, room temperatures."""

from __future__ import annotations

from datetime import datetime
from typing import TYPE_CHECKING

from studio_planner.craft.degree_words import degrees_said
from studio_planner.craft.tongue import quoted
from studio_planner.planning.checking.evidence import moment

if TYPE_CHECKING:
    from zoneinfo import ZoneInfo

    from studio_planner.craft.plans import PlannedStep
    from studio_planner.craft.settings import Units
    from studio_planner.science.history import History


def local(zone: ZoneInfo, when: datetime | float | None) -> str:
    """Say an instant as the studio's clock shows it; None is "never".

    The hour that the autumn change doubles is told apart by the zone's abbreviation.

    Examples
    --------
    >>> from zoneinfo import ZoneInfo
    >>> local(ZoneInfo("Europe/Berlin"), 1772559600.0)
    'Tue 3 Mar 18:40'
    """
    if when is None:
        return "never"
    instant = when if isinstance(when, datetime) else moment(when)
    there = instant.astimezone(zone)
    doubled = there.replace(fold=0).utcoffset() != there.replace(fold=1).utcoffset()
    name = f" {there.tzname()}" if doubled else ""
    return f"{there:%a} {there.day} {there:%b %H:%M}{name}"


def step_name(step: PlannedStep) -> str:
    """Name a step by its kind."""
    return f"its step {quoted(step.kind)}"


def room_between(units: Units, history: History, start: float, end: float) -> str:
    """Say how warm a room may be between two instants, with its band: room 19 to 21.5 °C."""
    inside = [i for i, second in enumerate(history.seconds) if start < second < end]
    values = [(history.celsius[i], history.band[i]) for i in inside]
    for second in (start, end):
        celsius, band = history.celsius_at(second), history.band_at(second)
        values += [] if celsius is None or band is None else [(celsius, band)]
    if not values:
        return "room unknown"
    coldest = min(celsius - band for celsius, band in values)
    warmest = max(celsius + band for celsius, band in values)
    low, high = (str(degrees_said(celsius, units)) for celsius in (coldest, warmest))
    return f"room {low}" if low == high else f"room {low.split(' ')[0]} to {high}"
