"""What hypothesis has makers write down after a first pour: sanding, tape, drips, moves."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.log import EntryKind, LogEntry

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.studio import Studio
    from tests.planning.picking import Pick


def done_since(pick: Pick, studio: Studio, start: datetime) -> tuple[LogEntry, ...]:
    """What was done to pieces whose first coat is on: sanded, tape pulled, drips trimmed.

    And where they were carried, which may be right at the pour, or long after it was hard.
    """
    entries: list[LogEntry] = []
    for pour in studio.poured:
        stack = studio.piece(pour.piece).stack
        at = max(pour.end, start - timedelta(minutes=pick.one_of(0, 10, 50, 400)))
        on_it = [EntryKind.TAPED] * stack[0].taped + [EntryKind.TRIMMED] * stack[0].trimmed
        told = [(kind, stack[0].key) for kind in on_it if pick.sometimes()]
        if len(stack) > 1 and pick.sometimes():
            told.append((EntryKind.SANDED, pick.one_of(stack[1].key, "", stack[-1].key)))
        for kind, coat in told:
            entries.append(
                LogEntry(
                    number=len(entries) + 1,
                    kind=kind,
                    at=at,
                    written=start,
                    piece=pour.piece,
                    coat=coat,
                )
            )
        for _ in range(pick.one_of(0, 0, 1, 2)):
            minutes = (start - pour.start).total_seconds() // 60
            since = timedelta(minutes=minutes * pick.one_of(0.5, 0.0, 0.2, 1.0) // 1)
            entries.append(
                LogEntry(
                    number=len(entries) + 1,
                    kind=EntryKind.MOVED,
                    at=pour.start + since,
                    written=start,
                    piece=pour.piece,
                    spot=pick.one_of(*(spot.key for spot in reversed(studio.spots))),
                )
            )
    return tuple(entries)
