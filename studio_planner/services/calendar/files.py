"""Calendar files (RFC 5545): the same bytes while nothing changes, in UTC throughout."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.told_events import ToldEvent, is_still_told, told_again, told_no_more
from studio_planner.craft.tongue import translate
from studio_planner.services.calendar.events import PlannedEvent

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from icalendar import Component

    from studio_planner.craft.orders import Order
    from studio_planner.craft.studio import Studio

ENDING = ".ics"
"""By it a phone knows what the file is (RFC 5545)."""

PRODUCT = "-//studio-planner//studio-planner//EN"
STUDIO_ROW = "studio"
"""The row whose words are the studio's own name among all calendars."""

_WEEK = timedelta(days=7)


@dataclass(frozen=True, slots=True)
class Only:
    """What of the plan goes into the file: all of it, one order, or the week of a day."""

    order: Order | None = None
    week_of: date | None = None

    def holds(self, event: ToldEvent, studio: Studio) -> bool:
        """Whether an event goes into the file."""
        if self.order is not None and self.order.key not in event.orders:
            return False
        if self.week_of is None:
            return True
        first = studio.units.first_of_week(self.week_of)
        day = event.starts.astimezone(studio.time_zone).date()
        return first <= day < first + _WEEK


@dataclass(frozen=True, slots=True)
class Calendar:
    """A calendar file's bytes, and what calendars have been told with it of each event."""

    content: bytes
    told: tuple[ToldEvent, ...]
    events: int
    cancelled: int

    @property
    def says_nothing(self) -> bool:
        """Whether a calendar would learn nothing from it."""
        return not self.events and not self.cancelled


def calendar_of(
    studio: Studio,
    known: Iterable[ToldEvent],
    now: datetime,
    events: Iterable[PlannedEvent],
    only: Only | None = None,
) -> Calendar:
    """Make the file of a studio's `events`, after what calendars `known` of it before.

    `known` has the row STUDIO_ROW, whose words make the events' names unlike all others.
    """
    before = {event.uid: event for event in known}
    domain = before.pop(STUDIO_ROW).words
    planned = {_uid(e, domain): e for e in events}
    told = tuple(_told(before, planned, now))
    only = only or Only()
    shown = [
        event
        for event in sorted(told, key=lambda event: (event.starts, event.uid))
        if (event.uid in planned or is_still_told(event, now)) and only.holds(event, studio)
    ]
    content = _file(studio.name, [_component(one, planned.get(one.uid)) for one in shown])
    cancelled = sum(event.cancelled for event in shown)
    return Calendar(content, told, len(shown) - cancelled, cancelled)


def trial_calendar(now: datetime) -> bytes:
    """A file with one event that rings five minutes after `now` (aware)."""
    now = now.astimezone(UTC).replace(microsecond=0)
    event = PlannedEvent(
        name="test",
        starts=now + timedelta(minutes=10),
        ends=now + timedelta(minutes=15),
        words=translate("calendar", "Does the phone ring?"),
        details=(
            translate(
                "calendar",
                "It should have rung five minutes before this starts. If it did not, see the "
                "calendar's own settings for notifications. This event can be taken away.",
            ),
        ),
        rings_before=timedelta(minutes=5),
    )
    uid = f"test-{now:%Y%m%dT%H%M%SZ}@studio-planner"
    told = _first(uid, event, now)
    return _file(translate("calendar", "A test"), [_component(told, event)])


def studio_row(token: str, now: datetime) -> ToldEvent:
    """The row that names a studio among all calendars."""
    return ToldEvent(
        uid=STUDIO_ROW,
        sequence=0,
        fingerprint="",
        cancelled=False,
        changed=now,
        starts=now,
        ends=now,
        words=token,
    )


def _uid(event: PlannedEvent, domain: str) -> str:
    return f"{event.name}@{domain}.studio-planner"


def _told(
    before: Mapping[str, ToldEvent], planned: Mapping[str, PlannedEvent], now: datetime
) -> Iterable[ToldEvent]:
    for uid, event in planned.items():
        yield told_again(before.get(uid), _first(uid, event, now))
    for uid, gone in before.items():
        if uid not in planned:
            yield told_no_more(gone, now)


def _first(uid: str, event: PlannedEvent, now: datetime) -> ToldEvent:
    return ToldEvent(
        uid=uid,
        sequence=0,
        fingerprint=event.fingerprint,
        cancelled=False,
        changed=now.astimezone(UTC).replace(microsecond=0),
        starts=event.starts,
        ends=event.ends,
        words=event.words,
        orders=event.orders,
    )


def _file(name: str, events: Iterable[Component]) -> bytes:
    # Loaded when called: it takes longer than everything else here.
    from icalendar import Calendar as Object  # noqa: PLC0415

    calendar = Object()
    calendar.add("version", "2.0")
    calendar.add("prodid", PRODUCT)
    calendar.add("method", "PUBLISH")
    calendar.add("name", name)
    calendar.add("x-wr-calname", name)
    for event in events:
        calendar.add_component(event)
    return bytes(calendar.to_ical())


def _component(told: ToldEvent, planned: PlannedEvent | None) -> Component:
    from icalendar import Alarm, Event  # noqa: PLC0415 - as above

    event = Event()
    event.add("uid", told.uid)
    event.add("dtstamp", told.changed.replace(microsecond=0))
    event.add("last-modified", told.changed.replace(microsecond=0))
    event.add("sequence", told.sequence)
    event.add("dtstart", told.starts)
    event.add("dtend", told.ends)
    event.add("summary", told.words)
    if told.cancelled or planned is None:
        event.add("status", "CANCELLED")
        return event
    event.add("status", "CONFIRMED")
    if planned.details:
        event.add("description", "\n".join(planned.details))
    alarm = Alarm()
    alarm.add("action", "DISPLAY")
    alarm.add("description", told.words)
    alarm.add("trigger", -planned.rings_before)
    event.add_component(alarm)
    return event
