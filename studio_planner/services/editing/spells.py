"""Hours of a date in which a place is another: put in over what was there, and taken out."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.services.editing.places import changed_place

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator
    from datetime import datetime

    from studio_planner.craft.places import Place
    from studio_planner.craft.spells import Spell
    from studio_planner.services.editing.changes import Change


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
