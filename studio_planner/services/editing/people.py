"""What a maker can change about hands: people, their hours, and when they are away."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, time, timedelta
from typing import TYPE_CHECKING, TypeVar

from studio_planner.craft.hands import Absence, Person, WorkHours
from studio_planner.craft.local_time import instant
from studio_planner.craft.tongue import marked, translate
from studio_planner.services.editing.changes import Change
from studio_planner.services.editing.nouns import (
    copy_of,
    free_key,
    free_name,
    moved_thing,
    with_thing,
    without_thing,
)
from studio_planner.services.editing.weeks import with_week

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence
    from zoneinfo import ZoneInfo

    from studio_planner.craft.studio import Studio
    from studio_planner.services.editing.weeks import Block

_Row = TypeVar("_Row", WorkHours, Absence)

NEW_NAME = marked("changes", "Somebody")
EVENING = time(17, 0)
"""When an evening begins that somebody is away for, unless it has begun already."""

NEW_HOURS = WorkHours(rule="FREQ=WEEKLY;BYDAY=MO", start=time(18, 0), end=time(21, 0))
"""What a new row of hours says until it is changed."""


def person_of(studio: Studio, key: str) -> Person | None:
    """The person of that key, or None."""
    return next((person for person in studio.people if person.key == key), None)


def added_person(studio: Studio) -> tuple[Change, str]:
    """Add somebody without hours; the change, and the key that they get."""
    name = free_name((person.name for person in studio.people), translate("changes", NEW_NAME))
    key = free_key((person.key for person in studio.people), name)
    person = Person(key=key, name=name, work=())
    return Change(
        translate("changes", "Add {name}").format(name=name),
        lambda now: with_thing(now, person),
    ), key


def copied_person(studio: Studio, person: Person) -> tuple[Change, str]:
    """Add somebody with the same hours; the change, and the key that they get."""
    copy = replace(copy_of(studio, person), absences=())
    return Change(
        translate("changes", "Add {name}").format(name=copy.name),
        lambda now: with_thing(now, copy),
    ), copy.key


def removed_person(person: Person) -> Change:
    """Take somebody out; what was planned for them is planned again."""
    return Change(
        translate("changes", "Remove {person}").format(person=person.name),
        lambda now: without_thing(now, Person, person.key),
    )


def moved_person(person: Person, to: int) -> Change:
    """Put somebody at another place in the list."""
    return Change(
        translate("changes", "{person}, place in the list").format(person=person.name),
        lambda now: moved_thing(now, Person, person.key, to),
    )


def changed_person(person: Person, what: str, make: Callable[[Person], Person]) -> Change:
    """Change somebody as they are when the change is made; `what` is the thing changed."""

    def changed(studio: Studio) -> Studio:
        now = person_of(studio, person.key)
        return studio if now is None else with_thing(studio, make(now))

    return Change(
        translate("changes", "{person}, {what}").format(person=person.name, what=what), changed
    )


def painted(person: Person, blocks: Sequence[Block]) -> Change:
    """Give somebody another week; rules that say more than a week stay as they are."""
    return changed_person(
        person,
        translate("changes", "working hours"),
        lambda now: replace(now, work=with_week(now.work, blocks)),
    )


def with_hours(person: Person, index: int | None, hours: WorkHours | None) -> Change:
    """Put hours in the place of row `index`; without an index add, without hours remove."""

    def make(now: Person) -> Person:
        return replace(now, work=_with_row(now.work, index, hours))

    return changed_person(person, translate("changes", "working hours"), make)


def with_absence(person: Person, index: int | None, absence: Absence | None) -> Change:
    """Put an absence in the place of row `index`; without an index add, without one remove."""

    def make(now: Person) -> Person:
        return replace(now, absences=_with_row(now.absences, index, absence))

    return changed_person(person, translate("changes", "away"), make)


def _with_row(rows: tuple[_Row, ...], index: int | None, row: _Row | None) -> tuple[_Row, ...]:
    changed = list(rows)
    place = slice(len(rows), None) if index is None else slice(index, index + 1)
    changed[place] = [] if row is None else [row]
    return tuple(changed)


def without_past(person: Person, now: datetime) -> Change:
    """Forget the absences that were over before `now`."""

    def make(somebody: Person) -> Person:
        left = tuple(one for one in somebody.absences if one.end > now)
        return replace(somebody, absences=left)

    return changed_person(person, translate("changes", "away, what has gone by"), make)


def away_this_evening(person: Person, zone: ZoneInfo, now: datetime) -> Change:
    """Let somebody be away from the evening on, or from now where it has begun, to bedtime."""
    evening = instant(zone, now.astimezone(zone).date(), EVENING)
    start = max(evening, _minute(now))
    return _away(
        person, translate("changes", "away this evening"), start, _bedtime(person, zone, start)
    )


def away_today(person: Person, zone: ZoneInfo, now: datetime) -> Change:
    """Let somebody be away from now until they go to bed."""
    start = _minute(now)
    return _away(
        person, translate("changes", "away today"), start, _bedtime(person, zone, start)
    )


def _away(person: Person, what: str, start: datetime, end: datetime) -> Change:
    absence = Absence(start=start, end=end)
    return changed_person(
        person, what, lambda now: replace(now, absences=(*now.absences, absence))
    )


def _bedtime(person: Person, zone: ZoneInfo, start: datetime) -> datetime:
    """When they go to bed after `start`; who is up past bedtime, at midnight."""
    day = start.astimezone(zone).date()
    tomorrow = day + timedelta(days=1)
    late = person.sleeps <= person.wakes  # they go to bed after midnight
    bed = instant(zone, tomorrow if late else day, person.sleeps)
    return bed if bed > start else instant(zone, tomorrow, time())


def _minute(now: datetime) -> datetime:
    return now.astimezone(UTC).replace(second=0, microsecond=0)


def new_absence(zone: ZoneInfo, now: datetime) -> Absence:
    """An absence to be changed: the whole of tomorrow."""
    day = now.astimezone(zone).date() + timedelta(days=1)
    return Absence(
        start=instant(zone, day, time()), end=instant(zone, day + timedelta(days=1), time())
    )
