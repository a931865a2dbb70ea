"""Bringing the kept reminders up to date: made anew, come due, let go."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from typing import TYPE_CHECKING, Protocol

from studio_planner.craft.due_rows import (
    DueRow,
    Ring,
    Ringing,
    clock_set_back,
    come_due,
    learnt_late,
    new_row,
    no_longer_needed,
    planned_again,
)

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.reminders import Reminder

MADE_FOR = timedelta(minutes=15)
"""How long reminders stand before they are made anew though the studio is the same."""

KEPT_FOR = timedelta(days=40)
"""How long what nobody needs any more is remembered."""


class Rows(Protocol):
    """The kept reminders, inside one change of the file."""

    def rows(self) -> tuple[DueRow, ...]:
        """Every reminder that is kept."""
        ...

    def put(self, rows: Iterable[DueRow], /) -> None:
        """Keep rows, in place of those of the same names."""
        ...

    def forget(self, uids: Iterable[str], /) -> None:
        """Let reminders go, with their rings."""
        ...

    def rings(self) -> tuple[Ring, ...]:
        """Every call of a means that is kept."""
        ...

    def put_rings(self, rings: Iterable[Ring], /) -> None:
        """Keep calls, in place of those of the same reminder, round and means."""
        ...

    def ringing(self) -> Ringing:
        """Who may ring, and what the reminders were made of."""
        ...

    def put_ringing(self, ringing: Ringing, /) -> None:
        """Keep who may ring, and what the reminders were made of."""
        ...


@dataclass(frozen=True, slots=True)
class Made:
    """All reminders of a studio, and the revision of the studio that they were made of.

    What was over before `since`, when the plan was made, is no news unless it is known already.
    """

    revision: int
    reminders: tuple[Reminder, ...]
    since: datetime | None = None


def stands(ringing: Ringing, revision: int, now: datetime) -> bool:
    """Whether the kept reminders are those of that revision, and made not long ago."""
    if ringing.made is None or ringing.made_of != revision:
        return False
    return timedelta(0) <= now - ringing.made < MADE_FOR


def settle(rows: Rows, made: Made | None, now: datetime) -> tuple[DueRow, ...]:
    """Write down what has come due, after what was `made` anew, and give every row.

    Nothing is written where nothing is different.
    """
    before = {row.uid: row for row in rows.rows()}
    after = {uid: clock_set_back(row, now) for uid, row in before.items()}
    if made is not None:
        ringing = rows.ringing()
        after = _made_anew(after, made, now, ringing.made)
        _let_go(rows, after, made, now)
        rows.put_ringing(replace(ringing, made_of=made.revision, made=now))
    after = {uid: come_due(row, now) for uid, row in after.items()}
    changed = [row for uid, row in after.items() if row != before.get(uid)]
    if changed:
        rows.put(changed)
    return tuple(after.values())


def _made_anew(
    rows: dict[str, DueRow], made: Made, now: datetime, looked: datetime | None
) -> dict[str, DueRow]:
    wanted = {reminder.uid: reminder for reminder in made.reminders}
    after = {
        uid: planned_again(row, wanted[uid], made.since)
        if uid in wanted
        else no_longer_needed(row, now)
        for uid, row in rows.items()
    }
    for uid, reminder in wanted.items():
        if uid not in rows and (made.since is None or reminder.moment >= made.since):
            after[uid] = new_row(reminder, made.since)
    if looked is None:
        return after
    return {uid: learnt_late(row, rows.get(uid), looked, now) for uid, row in after.items()}


def _let_go(rows: Rows, after: dict[str, DueRow], made: Made, now: datetime) -> None:
    wanted = {reminder.uid for reminder in made.reminders}
    old = [
        uid
        for uid, row in after.items()
        if uid not in wanted and row.withdrawn is not None and now - row.withdrawn > KEPT_FOR
    ]
    for uid in old:
        del after[uid]
    rows.forget(old)
