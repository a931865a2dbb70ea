"""What is told in one go: one mix, a night's quiet hours, all that was missed while away."""

from __future__ import annotations

import hashlib
from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.due_rows import LATE, DueRow

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping
    from datetime import datetime

_AWAY, _AGAIN, _PUT_OFF = "away", "again", "put off"
_FAR = float("inf")


@dataclass(frozen=True, slots=True)
class Bundle:
    """Reminders that are told together; `away` marks those that were missed while away.

    The most pressing comes first. A bundle that is told again keeps its `key`.
    """

    key: str
    rows: tuple[DueRow, ...]
    away: bool


def bundles_of(
    rows: Iterable[DueRow], told_as: Mapping[tuple[str, int], str], now: datetime
) -> tuple[Bundle, ...]:
    """Put rows into bundles, the most pressing first.

    `told_as` holds the key under which a row's round has begun to be told, by name and round.
    """
    groups: dict[tuple[str, ...], list[DueRow]] = {}
    for row in rows:
        key = told_as.get((row.uid, row.round))
        group = (_AGAIN, key) if key is not None else _group(row, now)
        groups.setdefault(group, []).append(row)
    found = [_bundle(group, members, now) for group, members in groups.items()]
    return tuple(sorted(found, key=lambda bundle: pressing(bundle.rows[0], now)))


def pressing(row: DueRow, now: datetime) -> tuple[int, float, float, str]:
    """Sort what can still be saved first, what is over soonest before the rest.

    Then comes what has no end, and last what is too late to save.
    """
    reminder = row.reminder
    until = reminder.saved_until
    rank = 1 if until is None else 0 if now < until else 2
    over = _FAR if until is None else until.timestamp()
    return (rank, over, reminder.due.timestamp(), reminder.uid)


def was_missed(row: DueRow, now: datetime) -> bool:
    """Whether nobody was told of it in its time; what waits for another time was not missed."""
    if row.rings_at is not None:
        return False
    waits = row.to_ring and row.came_due is not None and now - row.came_due > LATE
    return row.late or waits


def _group(row: DueRow, now: datetime) -> tuple[str, ...]:
    if was_missed(row, now):
        return (_AWAY,)
    reminder = row.reminder
    if reminder.was_moved:
        return (_PUT_OFF, reminder.due.isoformat())
    return (reminder.kind, reminder.together or reminder.uid)


def _bundle(group: tuple[str, ...], members: list[DueRow], now: datetime) -> Bundle:
    rows = tuple(sorted(members, key=lambda row: pressing(row, now)))
    key = group[1] if group[0] == _AGAIN else key_of(rows)
    return Bundle(key, rows, any(was_missed(row, now) for row in rows))


def key_of(rows: Iterable[DueRow]) -> str:
    """Give the key of a bundle: what is told together has one that nothing else has."""
    names = "\n".join(sorted(f"{row.uid} {row.round}" for row in rows))
    return hashlib.blake2b(names.encode(), digest_size=8).hexdigest()
