"""What becomes of a reminder: waiting, due, told, put off, acknowledged, or no longer needed.

Every change is a pure function from one row to the next. A row rings in rounds: the first when
it comes due, another one only when the maker has put it off, when the plan has moved what it is
about to another time, or when the clock was set back to before its time.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from enum import StrEnum

from studio_planner.craft.reminders import Reminder, ReminderKind

ANOTHER_TIME = timedelta(minutes=30)
"""What the plan moves by less is told of once; it is what counts as a moved pour, too."""

LATE = timedelta(minutes=10)
"""What comes due by more than this after its time was missed while nobody looked."""

_CLOCK_SET_BACK = timedelta(minutes=2)
_NEWS = frozenset({ReminderKind.COLD, ReminderKind.DAMP, ReminderKind.MOVED})


class RowState(StrEnum):
    """What has become of a reminder."""

    WAITING = "waiting"
    DUE = "due"
    PUT_OFF = "put off"
    ACKNOWLEDGED = "acknowledged"
    WITHDRAWN = "withdrawn"


@dataclass(frozen=True, slots=True, kw_only=True)
class DueRow:
    """A reminder and what has become of it.

    `rings_at` is when its next round begins; None while there is none to come. `round` counts
    the rounds that have begun and `rung` is the last one that every means was tried for.
    `rang_for` is the due instant that the last round was for, `came_due` when that round was
    written down as due, `late` whether that was long after its time.
    """

    reminder: Reminder
    rings_at: datetime | None
    round: int = 0
    rung: int = 0
    rang_for: datetime | None = None
    came_due: datetime | None = None
    late: bool = False
    acknowledged: datetime | None = None
    withdrawn: datetime | None = None

    @property
    def uid(self) -> str:
        """The name of its reminder."""
        return self.reminder.uid

    @property
    def listed(self) -> bool:
        """Whether it stands in the list of what is due."""
        return self.came_due is not None and not (self.acknowledged or self.withdrawn)

    @property
    def to_ring(self) -> bool:
        """Whether a round has begun that not every means was tried for.

        It rests while the reminder waits for another time.
        """
        return self.listed and self.round > self.rung and self.rings_at is None

    @property
    def state(self) -> RowState:
        """What has become of it."""
        if self.acknowledged is not None:
            return RowState.ACKNOWLEDGED
        if self.withdrawn is not None:
            return RowState.WITHDRAWN
        if self.came_due is None:
            return RowState.WAITING
        return RowState.DUE if self.rings_at is None else RowState.PUT_OFF


@dataclass(frozen=True, slots=True, kw_only=True)
class Ring:
    """One means that was called for one round of a reminder.

    `notice` names what was shown, maybe for several reminders at once; `caller` is who called.
    `finished` is None until it is known how the call ended; `failure` says why it failed.
    """

    uid: str
    round: int
    means: str
    notice: str
    caller: str
    calls: int
    started: datetime
    finished: datetime | None = None
    failure: str | None = None

    @property
    def failed(self) -> bool:
        """Whether the call ended and reached nobody."""
        return self.finished is not None and self.failure is not None


@dataclass(frozen=True, slots=True, kw_only=True)
class Ringing:
    """Who may ring: the holder from `taken` to `until`, seconds of a steady clock.

    `made_of` is the revision of the studio that the reminders were made of, `made` when.
    """

    holder: str = ""
    taken: float = 0.0
    until: float = 0.0
    made_of: int = -1
    made: datetime | None = None

    def free_for(self, caller: str, steady: float) -> bool:
        """Whether `caller` may take it; a steady clock that began anew frees it, too."""
        return self.holder in {"", caller} or not self.taken <= steady < self.until


def new_row(reminder: Reminder, since: datetime | None = None) -> DueRow:
    """A reminder that waits for its time.

    What was planned `since` its time, but before what it is about, rings at once.
    """
    return DueRow(reminder=reminder, rings_at=_first_ring(reminder, since))


def _first_ring(reminder: Reminder, since: datetime | None) -> datetime:
    if since is None or since > reminder.moment:
        return reminder.due
    return max(reminder.due, since)


def planned_again(row: DueRow, reminder: Reminder, since: datetime | None = None) -> DueRow:
    """The row after its reminder was made anew, maybe at another time.

    What was acknowledged stays so until another time of it has come: a pour that was seen on
    Monday and is planned for Tuesday rings on Tuesday.
    """
    row = replace(row, withdrawn=None)
    rang_for = row.rang_for
    if rang_for is None:
        return replace(row, reminder=reminder, rings_at=_first_ring(reminder, since))
    moved = _another(reminder.due, rang_for)
    if row.acknowledged is not None:
        again = moved and reminder.due > row.acknowledged
        return replace(row, reminder=reminder, rings_at=reminder.due if again else None)
    rings_at = row.rings_at
    if rings_at == row.reminder.due:  # it waited for another time of the plan
        rings_at = None
    if moved:
        rings_at = min(rings_at or reminder.due, reminder.due)
    return replace(row, reminder=reminder, rings_at=rings_at)


def _another(due: datetime, rang_for: datetime) -> bool:
    return due - rang_for >= ANOTHER_TIME


def no_longer_needed(row: DueRow, now: datetime) -> DueRow:
    """The row when nothing of the studio asks for it any more.

    What was news of a night or of a window stays on the list until it is acknowledged.
    """
    news = row.listed and row.reminder.kind in _NEWS
    return row if news or row.withdrawn is not None else replace(row, withdrawn=now)


def come_due(row: DueRow, now: datetime) -> DueRow:
    """The row when its time has come; the same row while it has not."""
    if row.rings_at is None or row.rings_at > now or row.withdrawn is not None:
        return row
    due, rang_for = row.reminder.due, row.rang_for
    if rang_for is None or (due <= now and _another(due, rang_for)):
        rang_for = due
    return replace(
        row,
        rings_at=None,
        round=row.round + 1,
        rang_for=rang_for,
        came_due=now,
        late=now - row.rings_at > LATE,
        acknowledged=None,
    )


def learnt_late(row: DueRow, before: DueRow | None, looked: datetime, now: datetime) -> DueRow:
    """The row when it asks for something only since the studio is another one.

    What it asks for at a time that was over when the studio was `looked` at last rings now:
    nobody missed it, for nobody knew of it.
    """
    same = before is not None and before.rings_at == row.rings_at
    if same or row.rings_at is None or row.rings_at > min(looked, now):
        return row
    return replace(row, rings_at=now)


def clock_set_back(row: DueRow, now: datetime) -> DueRow:
    """The row by a clock that shows an earlier time than it has seen; else the same row.

    What came due too early rings again in its time; nothing was acknowledged in the future.
    """
    if row.acknowledged is not None:
        return row if row.acknowledged <= now else replace(row, acknowledged=now)
    came_due, rang_for = row.came_due, row.rang_for
    if came_due is None or rang_for is None:
        return row
    if rang_for - now > _CLOCK_SET_BACK:
        # Told too early: whatever is ahead by this clock is another time; what the maker has
        # put off is still to be told again.
        waits = row.reminder.due if row.reminder.due > now else row.rings_at
        row = replace(row, rang_for=now - ANOTHER_TIME, rings_at=waits)
    return replace(row, came_due=now) if came_due > now else row


def acknowledged(row: DueRow, now: datetime) -> DueRow:
    """The row once the maker has seen it: it is done, or will not be.

    Where the plan has moved it to another time ahead, it still rings then.
    """
    due, rang_for = row.reminder.due, row.rang_for
    if rang_for is None or row.acknowledged is not None:
        ahead = row.rings_at is not None
        return replace(row, acknowledged=now, rings_at=None, rang_for=due) if ahead else row
    again = due > now and _another(due, rang_for)
    return replace(row, acknowledged=now, rings_at=due if again else None)


def put_back(row: DueRow) -> DueRow:
    """The row when the maker was not done after all: it is on the list again.

    It rings no more for the time that was told of.
    """
    if row.acknowledged is None or row.came_due is None:
        return row
    return replace(row, acknowledged=None, rung=row.round)


def snoozed(row: DueRow, until: datetime) -> DueRow:
    """The row when the maker wants to be told again; only what is listed can be put off."""
    return replace(row, rings_at=until) if row.listed else row


def all_tried(row: DueRow, round_: int) -> DueRow:
    """The row once every means was tried for a round."""
    return replace(row, rung=max(row.rung, round_))
