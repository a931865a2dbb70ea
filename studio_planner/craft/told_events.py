"""What a calendar was told of an event, so that the next file fits what it knows.

RFC 5545: an event keeps its name (UID), and every change raises its number (SEQUENCE); one that
is no more is told as cancelled, under the same name and a higher number.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime, timedelta

TOLD_FOR = timedelta(days=30)
"""How long after its time an event that was cancelled is still told of."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ToldEvent:
    """An event as a calendar was last told of it.

    `fingerprint` stands for everything that was told, `changed` is when that last changed.
    `orders` are the keys of the orders that it is for.
    """

    uid: str
    sequence: int
    fingerprint: str
    cancelled: bool
    changed: datetime
    starts: datetime
    ends: datetime
    words: str
    orders: tuple[str, ...] = ()


def told_again(before: ToldEvent | None, now_told: ToldEvent) -> ToldEvent:
    """The event as it is told now: the same, changed, or back after it was cancelled."""
    if before is None:
        return now_told
    if before.fingerprint == now_told.fingerprint and not before.cancelled:
        return before
    return replace(now_told, sequence=before.sequence + 1)


def told_no_more(before: ToldEvent, now: datetime) -> ToldEvent:
    """An event that the plan has no more: cancelled, unless it is over already."""
    if before.cancelled or before.ends <= now:
        return before
    return replace(before, cancelled=True, sequence=before.sequence + 1, changed=now)


def is_still_told(event: ToldEvent, now: datetime) -> bool:
    """Whether a calendar still has to hear that an event was cancelled."""
    return event.cancelled and now - event.ends < TOLD_FOR
