"""The tick: compares the wall clock, writes down what is due, and has it told once.

What is due is written down before any means is tried. A call of a means is written down before
it is made and again when it has ended: whoever is killed in between leaves a call whose end
nobody knows, and the next one that may ring makes it once more and says so. Who may ring is
written in the file, for half a minute of a clock that nobody can set.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import UTC, timedelta
from secrets import token_hex
from time import monotonic
from typing import TYPE_CHECKING, Protocol

from studio_planner.craft.due_rows import acknowledged, all_tried, put_back, snoozed
from studio_planner.services.reminding.bundles import pressing
from studio_planner.services.reminding.calls import begun, call_key, called, is_over, open_calls
from studio_planner.services.reminding.settling import Made, settle, stands

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Sequence
    from contextlib import AbstractContextManager
    from datetime import datetime

    from studio_planner.craft.due_rows import DueRow, Ring
    from studio_planner.services.ports import Notice, Notifier, WallClock
    from studio_planner.services.reminding.bundles import Bundle
    from studio_planner.services.reminding.calls import CallKey
    from studio_planner.services.reminding.settling import Rows

LEASE_SECONDS = 30.0
"""How long one instance may ring before another one may; a call takes far less."""

PUT_BACK_FOR = timedelta(days=1)
"""How long what was taken off the list stands beside it, to be put back."""

_ATTEMPTS = 3


class Source(Protocol):
    """A studio file: where reminders are kept, what they are made of, what they are called."""

    def rows(self) -> AbstractContextManager[Rows]:
        """Open one change of the kept reminders."""
        ...

    def look(self) -> None:
        """Read the studio: what follows is about it as it is now."""
        ...

    def revision(self) -> int:
        """A number that every change of the studio raises."""
        ...

    def made(self, now: datetime) -> Made:
        """Make all reminders of the studio as it is."""
        ...

    def notice(self, bundle: Bundle, now: datetime, *, perhaps_shown: bool) -> Notice:
        """Put what is told together into words."""
        ...

    def may_ring(self, row: DueRow, now: datetime) -> bool:
        """Whether a reminder that is due may ring at this hour."""
        ...

    def wanted(self, notifiers: Sequence[Notifier]) -> Sequence[Notifier]:
        """The means that the maker has not switched off."""
        ...


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """A means that was called, and why it failed where it did."""

    means: str
    notice: Notice
    failure: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Tick:
    """What a tick found: the list of what is due, the most pressing first, and what was told.

    `nobody_reached` says that something is due that no means could tell of.
    """

    now: datetime
    due: tuple[DueRow, ...]
    told: tuple[Told, ...] = ()
    nobody_reached: bool = False


@dataclass(frozen=True, slots=True)
class _Call:
    notifier: Notifier
    notice: Notice
    rings: tuple[Ring, ...]
    again: bool


class Reminders:
    """The kept reminders of one studio file, for one instance of the program."""

    def __init__(
        self,
        source: Source,
        notifiers: Sequence[Notifier],
        clock: WallClock,
        *,
        steady: Callable[[], float] = monotonic,
        caller: str | None = None,
    ) -> None:
        """Tell by `notifiers` what `source` makes."""
        self._source = source
        self._notifiers = notifiers
        self._clock = clock
        self._steady = steady
        self._caller = caller or token_hex(8)

    def tick(self) -> Tick:
        """Write down what is due and tell it; StudioFileError when the file is out of reach."""
        now = self._now()
        self._source.look()
        rows = self._settled(now)
        told: list[Told] = []
        if self._notifiers and any(self._rings_now(row, now) for row in rows):
            told = self._tell_all(now)
            with self._source.rows() as kept:
                rows = kept.rows()
        return Tick(
            now=now,
            due=listed(rows, now),
            told=tuple(told),
            nobody_reached=bool(told) and all(one.failure is not None for one in told),
        )

    def due(self) -> tuple[DueRow, ...]:
        """What is due and not acknowledged, the most pressing first."""
        return listed(self.every(), self._now())

    def every(self) -> tuple[DueRow, ...]:
        """Every reminder that is kept, those to come and those acknowledged among them."""
        with self._source.rows() as rows:
            return rows.rows()

    def acknowledge(self, uids: Iterable[str]) -> tuple[DueRow, ...]:
        """Take reminders off the list of what is due, and give them as they are now."""
        now = self._now()
        return self._change(uids, lambda row: acknowledged(row, now))

    def put_back(self, uids: Iterable[str]) -> tuple[DueRow, ...]:
        """Have reminders on the list again that were taken off; they do not ring for it."""
        return self._change(uids, put_back)

    def snooze(
        self, uids: Iterable[str], until: Callable[[DueRow], datetime | None]
    ) -> tuple[DueRow, ...]:
        """Have reminders told again at an instant; they stay on the list.

        Where `until` gives None there is no later moment that would help: nothing is put off.
        """

        def put_off(row: DueRow) -> DueRow:
            moment = until(row)
            return row if moment is None else snoozed(row, moment)

        return self._change(uids, put_off)

    def told_as(self, notice: str) -> tuple[str, ...]:
        """The names of the reminders that a notice was about."""
        with self._source.rows() as rows:
            return tuple(sorted({one.uid for one in rows.rings() if one.notice == notice}))

    def _change(
        self, uids: Iterable[str], change: Callable[[DueRow], DueRow]
    ) -> tuple[DueRow, ...]:
        wanted = set(uids)
        with self._source.rows() as rows:
            after = [change(row) for row in rows.rows() if row.uid in wanted]
            rows.put(after)
        return tuple(after)

    def _now(self) -> datetime:
        return self._clock.now().astimezone(UTC)

    def _settled(self, now: datetime) -> tuple[DueRow, ...]:
        with self._source.rows() as rows:
            ringing = rows.ringing()
        made: Made | None = None
        for attempt in range(_ATTEMPTS):
            # The clocks of a studio take a while; nobody should have to wait for them.
            if not stands(ringing, self._source.revision(), now):
                made = self._source.made(now)
            with self._source.rows() as rows:
                current = made is None or made.revision == self._source.revision()
                if current or attempt == _ATTEMPTS - 1:
                    return settle(rows, made, now)
        raise AssertionError  # the last attempt always returns

    def _tell_all(self, now: datetime) -> list[Told]:
        told: list[Told] = []
        tried: set[CallKey] = set()
        while (call := self._next_call(now, tried)) is not None:
            failure = called(call.notifier, call.notice)
            tried |= set(map(call_key, call.rings))
            # How the call before ended is still not known when this one has failed.
            ended = None if call.again and failure is not None else self._now()
            with self._source.rows() as rows:
                rows.put_rings(
                    replace(ring, finished=ended, failure=failure) for ring in call.rings
                )
            means = call.notifier.means
            told.append(Told(means=means, notice=call.notice, failure=failure))
        return told

    def _next_call(self, now: datetime, tried: set[CallKey]) -> _Call | None:
        """Write down the next call that is to be made; None when there is none for us.

        With the last one the rounds are closed, and others may ring.
        """
        notifiers = self._source.wanted(self._notifiers)
        with self._source.rows() as rows:
            ringing, steady = rows.ringing(), self._steady()
            if not ringing.free_for(self._caller, steady):
                return None
            due = [row for row in rows.rows() if self._rings_now(row, now)]
            known = {call_key(ring): ring for ring in rows.rings()}
            for bundle, notifier in open_calls(due, known, tried, notifiers, now):
                rings, again = begun(bundle, notifier.means, known, self._caller, now)
                rows.put_ringing(
                    replace(
                        ringing,
                        holder=self._caller,
                        taken=steady,
                        until=steady + LEASE_SECONDS,
                    )
                )
                rows.put_rings(rings)
                notice = self._source.notice(bundle, now, perhaps_shown=again)
                return _Call(notifier, notice, rings, again)
            rows.put(all_tried(row, row.round) for row in due if is_over(row, known.values()))
            if ringing.holder == self._caller:
                rows.put_ringing(replace(ringing, holder=""))
        return None

    def _rings_now(self, row: DueRow, now: datetime) -> bool:
        return row.to_ring and self._source.may_ring(row, now)


def taken_off_last(rows: Iterable[DueRow], now: datetime) -> tuple[DueRow, ...]:
    """What one answer took off the list last and that can be put back; nothing after a day."""
    gone = {
        row: row.acknowledged
        for row in rows
        if row.acknowledged is not None and row.came_due is not None and row.withdrawn is None
    }
    last = max(gone.values(), default=now - PUT_BACK_FOR)
    if now - last >= PUT_BACK_FOR:
        return ()
    return tuple(row for row, when in gone.items() if when == last)


def listed(rows: Iterable[DueRow], now: datetime) -> tuple[DueRow, ...]:
    """The list of what is due, the most pressing first."""
    due = (row for row in rows if row.listed)
    return tuple(sorted(due, key=lambda row: pressing(row, now)))
