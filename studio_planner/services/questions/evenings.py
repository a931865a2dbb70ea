"""Bedtime and working hours: when somebody can do something tonight."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.local_time import merged

if TYPE_CHECKING:
    from studio_planner.craft.hands import Person
    from studio_planner.craft.local_time import Span
    from studio_planner.services.desk import DeskView

_DAY = timedelta(days=1)


def bedtime(view: DeskView, person: Person) -> datetime | None:
    """When somebody who is awake now goes to bed, or at the end of the next waking hours.

    None when nobody is there within a day.
    """
    spans = person.awake(view.studio.time_zone, view.now, view.now + 2 * _DAY)
    return next((end for start, end in spans if start <= view.now + _DAY), None)


def awake(view: DeskView, start: datetime, end: datetime) -> tuple[Span, ...]:
    """Spans between two instants in which anybody is there and awake."""
    zone = view.studio.time_zone
    return merged(s for one in view.studio.people for s in one.awake(zone, start, end))


def working(view: DeskView, start: datetime, end: datetime) -> tuple[Span, ...]:
    """Spans between two instants in which anybody can work."""
    zone = view.studio.time_zone
    return merged(s for one in view.studio.people for s in one.working(zone, start, end))
