"""What a maker can do with the time of a pour: move it, pin it, let it go, forbid a night."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, time
from typing import TYPE_CHECKING

from studio_planner.craft.local_time import instant
from studio_planner.craft.pins import Pin
from studio_planner.services.editing.changes import Change
from studio_planner.services.editing.people import away_this_evening

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.studio import Studio

_NOON = time(12, 0)


def dropped(coats: Iterable[PlannedCoat], moved: Callable[[Plan], Plan], words: str) -> Change:
    """Pin the coats of a mix where they were dropped, and move them in the kept plan at once.

    `moved` gives the kept plan with them there. It is marked as outdated: planning again puts
    the rest right. `words` finish the sentence "Undo: ...".
    """
    rows = tuple(coats)

    def make(studio: Studio) -> Studio:
        plan = studio.plan
        return replace(
            _pinned(studio, rows),
            plan=None if plan is None else moved(plan),
            plan_outdated=True,
        )

    return Change(words, make)


def put_elsewhere(moved: Callable[[Plan], Plan], words: str) -> Change:
    """Put a piece on another spot of the same place in the kept plan, which is as good there.

    No clock runs otherwise on it, so no time is pinned and nothing has to be planned again.
    """

    def make(studio: Studio) -> Studio:
        plan = studio.plan
        return studio if plan is None else replace(studio, plan=moved(plan))

    return Change(words, make)


def pinned_here(coats: Iterable[PlannedCoat], words: str) -> Change:
    """Pin coats where the plan has them."""
    rows = tuple(coats)
    return Change(words, lambda studio: _pinned(studio, rows))


def _pinned(studio: Studio, coats: Iterable[PlannedCoat]) -> Studio:
    rows = {(c.piece, c.coat): Pin(piece=c.piece, coat=c.coat, start=c.start) for c in coats}
    kept = tuple(pin for pin in studio.pins if (pin.piece, pin.coat) not in rows)
    return replace(studio, pins=(*kept, *rows.values()))


def let_go(coats: Iterable[PlannedCoat], words: str) -> Change:
    """Let planning choose the time of coats again."""
    keys = {(coat.piece, coat.coat) for coat in coats}

    def make(studio: Studio) -> Studio:
        kept = tuple(pin for pin in studio.pins if (pin.piece, pin.coat) not in keys)
        return replace(studio, pins=kept)

    return Change(words, make)


def let_all_go(words: str) -> Change:
    """Let planning choose every time again."""
    return Change(words, lambda studio: replace(studio, pins=()))


def evening_forbidden(when: datetime, now: datetime, words: str) -> Change:
    """Let everybody be away on the evening of the day of `when`, or what is left of it."""

    def make(studio: Studio) -> Studio:
        zone = studio.time_zone
        day = when.astimezone(zone).date()
        since = max(now, instant(zone, day, _NOON))
        for person in studio.people:
            studio = away_this_evening(person, zone, since).make(studio)
        return studio

    return Change(words, make)
