"""Hours of a date in which a place is another: put in over what was there, and taken out."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, time, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.errors import BrokenRule, InvalidEntry
from studio_planner.craft.local_time import instant
from studio_planner.craft.tongue import translate
from studio_planner.services.editing.places import changed_place

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator
    from zoneinfo import ZoneInfo

    from studio_planner.craft.places import Place
    from studio_planner.craft.spells import Spell
    from studio_planner.services.editing.changes import Change

_EVENING, _MORNING = time(18), time(7)
_DAY = timedelta(days=1)


def coming_night(now: datetime, zone: ZoneInfo) -> tuple[datetime, datetime]:
    """From six in the evening to seven in the morning; from `now`, within those hours."""
    today = now.astimezone(zone).date()
    evening, morning = instant(zone, today, _EVENING), instant(zone, today, _MORNING)
    minute = now.astimezone(UTC).replace(second=0, microsecond=0)
    if minute < morning:
        return minute, morning
    return max(evening, minute), instant(zone, today + _DAY, _MORNING)


def expected_between(
    place: Place, zone: ZoneInfo, start: datetime, end: datetime
) -> tuple[float, float]:
    """The lowest and the highest temperature [°C] that a place is expected to have."""
    found = place.history(zone, start, end).part(start.timestamp(), end.timestamp()).celsius
    return min(found), max(found)


def with_spell(place: Place, spell: Spell, now: datetime, words: str) -> Change:
    """Expect a place to be another for some hours; `words` are of the change.

    InvalidEntry when they are over by `now`.
    """
    if spell.end <= now:
        over = translate("places", "these hours have gone by: give a time that is to come.")
        raise InvalidEntry(place.name, [BrokenRule("end", over)])
    return changed_place(place.key, words, lambda there: with_spells(there, (spell,)))


def with_spells(place: Place, spells: Iterable[Spell]) -> Place:
    """Put spells, none over another, into a place; older ones give way where they lie."""
    new = tuple(spells)
    left = [part for spell in place.spells for part in _left_of(spell, new)]
    return replace(place, spells=tuple(sorted([*left, *new], key=lambda one: one.start)))


def _left_of(spell: Spell, new: Iterable[Spell]) -> Iterator[Spell]:
    """The parts of a spell that no newer one lies over."""
    start = spell.start
    for over in sorted(new, key=lambda one: one.start):
        if over.end <= start or over.start >= spell.end:
            continue
        if over.start > start:
            yield replace(spell, start=start, end=over.start)
        start = over.end
    if start < spell.end:
        yield replace(spell, start=start)


def without_spell(place: Place, spell: Spell, words: str) -> Change:
    """Let the weekly pattern hold again in the hours of a spell; `words` are of the change."""
    return changed_place(
        place.key,
        words,
        lambda now: replace(now, spells=tuple(one for one in now.spells if one != spell)),
    )


def spells_ahead(place: Place, now: datetime) -> tuple[Spell, ...]:
    """The spells of a place that are not over yet."""
    return tuple(spell for spell in place.spells if spell.end > now)
