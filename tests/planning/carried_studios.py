"""Studios in the middle of their plans whose poured pieces were carried about, by seed.

Of the kind of `studios()`, with a warm box beside the room in most. Some hours of the quick
plan went as planned; then up to three moves of each poured piece are in the log: to any spot,
large enough or not, taken or free, right at a pour or long after it.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from random import Random
from typing import TYPE_CHECKING, TypeVar

from typing_extensions import override

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.craft.log import EntryKind, LogEntry
from studio_planner.planning.quick import quick_plan
from tests.planning.happenings import as_planned_for
from tests.planning.picking import Pick
from tests.planning.studios import Situation, situation_of, warm_box

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence
    from datetime import datetime

    from studio_planner.craft.log import Poured
    from studio_planner.craft.studio import Studio

_T = TypeVar("_T")

_MOST_PIECES, _MOST_COATS = 4, 4


class _Seeded(Pick):
    """Drawn from a seeded generator."""

    def __init__(self, seed: int) -> None:
        self._random = Random(seed)  # noqa: S311 - the same seed, the same studio

    @override
    def one_of(self, *values: _T) -> _T:
        return self._random.choice(values)

    @override
    def number(self, low: int, high: int) -> int:
        return self._random.randint(low, high)


def carried_about(seed: int) -> Situation:
    """The studio of a seed, and the instant from which it is to be planned again."""
    pick = _Seeded(seed)
    begun = situation_of(pick, _MOST_PIECES, _MOST_COATS)
    studio = begun.studio
    if len(studio.places) == 1 and not pick.sometimes():
        box = warm_box(pick, studio.places[0].pattern[0].humidity_pct)
        studio = replace(studio, places=(*studio.places, box))
    now, studio = _some_hours_later(pick, studio, begun.start)
    moves = tuple(_moves(pick, studio, now))
    return Situation(studio=replace(studio, log=(*studio.log, *moves)), start=now)


def _some_hours_later(pick: Pick, studio: Studio, start: datetime) -> tuple[datetime, Studio]:
    try:
        plan = quick_plan(studio, start)
    except NoPlanPossible:
        return start, studio
    now, then = as_planned_for(timedelta(hours=pick.one_of(12, 3, 30, 60, 100)), studio, plan)
    return now, then if pick.sometimes() else replace(then, plan=None)


def _moves(pick: Pick, studio: Studio, now: datetime) -> Iterator[LogEntry]:
    number = len(studio.log)
    for piece in studio.pieces:
        pours = studio.pours_of(piece.key)
        for _ in range(pick.one_of(1, 2, 3, 0) if pours else 0):
            number += 1
            yield LogEntry(
                number=number,
                kind=EntryKind.MOVED,
                at=_some_time(pick, pours, now),
                written=now,
                piece=piece.key,
                spot=pick.one_of(*studio.spots).key,
            )


def _some_time(pick: Pick, pours: Sequence[Poured], now: datetime) -> datetime:
    """Right at the start or end of a pour, or any minute since."""
    pour = pick.one_of(*pours)
    minutes = int((now - pour.start).total_seconds() // 60)
    since = timedelta(minutes=pick.number(0, max(minutes, 0)))
    return min(pick.one_of(pour.start + since, pour.start + since, pour.start, pour.end), now)
