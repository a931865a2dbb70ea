"""Putting off: the next moment at which being told again makes sense."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.grid import next_on_grid
from studio_planner.services.reminding.quiet import QuietHours

if TYPE_CHECKING:
    from studio_planner.craft.reminders import Reminder
    from studio_planner.craft.studio import Studio

_SHORTEST = timedelta(minutes=5)
_LONGEST = timedelta(hours=4)
_A_WHILE = timedelta(hours=1)
_AHEAD = timedelta(days=3)


def snooze_until(studio: Studio, reminder: Reminder, now: datetime) -> datetime | None:
    """When to tell of a reminder again; None where no later moment would help.

    While it can be saved: at the moment that it is about if that is still ahead, else halfway
    to the last one, four hours on at most. What has no end, or is over, waits for the next
    hour, or for the next time that somebody works.
    """
    now = now.astimezone(UTC)
    until = reminder.saved_until
    if until is not None and now < until:
        return _before(reminder, now, until)
    quiet = QuietHours(studio.reminding, studio.time_zone, studio.people)
    if reminder.moment - now > _SHORTEST:
        return reminder.moment
    return _next_work(studio, now, quiet)


def _before(reminder: Reminder, now: datetime, until: datetime) -> datetime | None:
    left = until - now
    if left < 2 * _SHORTEST:
        return None
    if _SHORTEST <= reminder.moment - now < left:
        return reminder.moment
    return _on_grid(now + max(min(left / 2, _LONGEST), _SHORTEST), until)


def _on_grid(moment: datetime, until: datetime) -> datetime:
    rounded = next_on_grid(moment)
    return rounded if rounded < until else moment


def _next_work(studio: Studio, now: datetime, quiet: QuietHours) -> datetime:
    """In an hour, if somebody works then or nobody ever does; else when work begins."""
    later = now + _A_WHILE
    spans = sorted(
        span
        for person in studio.people
        for span in person.working(studio.time_zone, now, now + _AHEAD)
    )
    if any(start <= later < end for start, end in spans):
        return _on_grid(later, later + _A_WHILE)
    begins = next((start for start, _ in spans if start >= later), None)
    return begins or quiet.ends(later) or _on_grid(later, later + _A_WHILE)
