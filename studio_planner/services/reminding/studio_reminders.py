"""The reminders of one studio file, as the window and the terminal use them."""

from __future__ import annotations

from contextlib import AbstractContextManager, contextmanager
from typing import TYPE_CHECKING, Protocol

from studio_planner.craft.reminders import ReminderKind, sign_of
from studio_planner.craft.tongue import translate
from studio_planner.services.naming import UnknownName
from studio_planner.services.ports import CannotRing
from studio_planner.services.reminding.making import reminders_of
from studio_planner.services.reminding.notices import DONE, SNOOZE, notice_of, trial_notice
from studio_planner.services.reminding.quiet import QuietHours
from studio_planner.services.reminding.settling import Made
from studio_planner.services.reminding.snoozing import snooze_until
from studio_planner.services.reminding.ticking import Reminders, Told, taken_off_last
from studio_planner.storage.reminder_rows import reminder_rows
from studio_planner.storage.studio_file import StudioFile, open_studio

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence
    from datetime import datetime
    from pathlib import Path

    from studio_planner.craft.due_rows import DueRow
    from studio_planner.craft.studio import Studio
    from studio_planner.services.ports import Notice, Notifier, Pressed, WallClock
    from studio_planner.services.questions.sentences import Voice
    from studio_planner.services.reminding.bundles import Bundle
    from studio_planner.services.reminding.settling import Rows
    from studio_planner.services.reminding.ticking import Tick


_POURING = frozenset({ReminderKind.WEIGH, ReminderKind.POUR_BY, ReminderKind.CLOSING})


class Speaking(Protocol):
    """Gives the voice that writes times for a studio."""

    def __call__(self, studio: Studio, /) -> Voice:
        """Give it."""
        ...


class _OfFile:
    """An open studio file as the source of its reminders."""

    def __init__(self, file: StudioFile, voice: Speaking) -> None:
        self._file = file
        self._voice = voice
        self.look()

    def look(self) -> None:
        self.studio = studio = self._file.read()
        self._quiet = QuietHours(studio.reminding, studio.time_zone, studio.people)

    def rows(self) -> AbstractContextManager[Rows]:
        return reminder_rows(self._file)

    def revision(self) -> int:
        return self._file.revision()

    def made(self, now: datetime) -> Made:
        while True:
            revision = self._file.revision()
            self.look()
            if self._file.revision() == revision:
                break
        plan = self.studio.plan
        since = None if plan is None else plan.made
        return Made(revision, reminders_of(self.studio, now), since)

    def may_ring(self, row: DueRow, now: datetime) -> bool:
        return self._quiet.may_ring(row.reminder, now)

    def notice(self, bundle: Bundle, now: datetime, *, perhaps_shown: bool) -> Notice:
        voice = self._voice(self.studio)
        return notice_of(self.studio, bundle, voice, now, perhaps_shown=perhaps_shown)

    def wanted(self, notifiers: Sequence[Notifier]) -> Sequence[Notifier]:
        off = self.studio.reminding.means_off
        return [one for one in notifiers if one.means not in off]


class StudioReminders:
    """What is due in one studio, what is to come, and the maker's answers.

    Every method that touches the file lets StudioError pass, in a sentence for the maker.
    """

    def __init__(
        self,
        file: StudioFile,
        clock: WallClock,
        notifiers: Sequence[Notifier],
        voice: Speaking,
    ) -> None:
        """Remind of an open studio file by `notifiers`; `voice` writes times."""
        self._file = file
        self._clock = clock
        self._notifiers = tuple(notifiers)
        self._source = _OfFile(file, voice)
        self._kept = Reminders(self._source, self._notifiers, clock)
        self._pressed: list[Pressed] = []

    @property
    def studio(self) -> Studio:
        """The studio as it was at the last tick."""
        return self._source.studio

    def tick(self) -> Tick:
        """Compare the wall clock: write down what is due, and tell it by every means."""
        return self._kept.tick()

    def due(self) -> tuple[DueRow, ...]:
        """The list of what is due: what can still be saved first."""
        return self._kept.due()

    def coming(self) -> tuple[DueRow, ...]:
        """What is yet to come, the next first; what was put off stays on the list."""
        rows = (row for row in self._kept.every() if row.rings_at is not None)
        ahead = (row for row in rows if not row.listed and row.withdrawn is None)
        return tuple(sorted(ahead, key=lambda row: (row.rings_at, row.uid)))

    def row(self, uid: str) -> DueRow:
        """The reminder of that name or sign; UnknownName when there is none, or several."""
        rows = self._kept.every()
        found = [row for row in rows if row.uid == uid]
        found = found or [row for row in rows if sign_of(row.uid) == uid]
        if len(found) != 1:
            raise UnknownName(
                translate(
                    "reminders", "There is no reminder “{uid}”; remind FILE lists them."
                ).format(uid=uid)
            )
        return found[0]

    def acknowledge(self, uids: Iterable[str]) -> tuple[DueRow, ...]:
        """Take reminders off the list for good.

        Whoever pours a coat needs no other word on the list that its window is open or closes.
        """
        wanted, due = set(uids), self._kept.due()
        poured = {_coat(row) for row in due if row.uid in wanted and _kind(row) in _POURING}
        told = _POURING | {ReminderKind.OPENS}
        same = {row.uid for row in due if _kind(row) in told and _coat(row) in poured}
        return self._kept.acknowledge(wanted | same)

    def clear(self) -> tuple[DueRow, ...]:
        """Take everything off the list that it is too late for."""
        now = self._clock.now()
        late = [row.uid for row in self._kept.due() if not row.reminder.can_be_saved(now)]
        return self._kept.acknowledge(late)

    def taken_off(self) -> tuple[DueRow, ...]:
        """What one answer took off the list last and that can be put back."""
        return taken_off_last(self._kept.every(), self._clock.now())

    def put_back(self, uids: Iterable[str]) -> tuple[DueRow, ...]:
        """Have reminders on the list again that were not done after all."""
        return self._kept.put_back(uids)

    def snooze(self, uids: Iterable[str]) -> tuple[DueRow, ...]:
        """Have reminders told again at the next moment that makes sense for each."""
        self._source.look()
        studio, now = self.studio, self._clock.now()
        return self._kept.snooze(uids, lambda row: snooze_until(studio, row.reminder, now))

    def snooze_until(self, row: DueRow) -> datetime | None:
        """When a reminder would be told again; None where no later moment helps."""
        self._source.look()
        return snooze_until(self.studio, row.reminder, self._clock.now())

    def answer(self, pressed: Pressed) -> tuple[DueRow, ...]:
        """Do what a button on a notice says, and give the reminders that it was about.

        To open them is left to whoever has something to open.
        """
        uids = self._kept.told_as(pressed.notice)
        if pressed.button == DONE:
            return self.acknowledge(uids)
        if pressed.button == SNOOZE:
            return self.snooze(uids)
        return tuple(row for row in self._kept.every() if row.uid in uids)

    def answered(self, seconds: float) -> tuple[tuple[Pressed, tuple[DueRow, ...]], ...]:
        """Do what was pressed since the last call, waiting up to so long for the first.

        What cannot be written down now is done with the next call.
        """
        for number, notifier in enumerate(self._notifiers):
            waits = seconds if number == 0 and not self._pressed else 0.0
            self._pressed += notifier.pressed(waits)
        found = []
        while self._pressed:
            found.append((self._pressed[0], self.answer(self._pressed[0])))
            del self._pressed[0]
        return tuple(found)

    def ring_now(self) -> tuple[Told, ...]:
        """Try every means with a notice that is about nothing."""
        return ring_now(self._notifiers, self._clock)

    def close(self) -> None:
        """Close the file."""
        self._file.close()


def _kind(row: DueRow) -> ReminderKind:
    return row.reminder.kind


def _coat(row: DueRow) -> tuple[str, str]:
    return row.reminder.piece, row.reminder.coat


def ring_now(notifiers: Iterable[Notifier], clock: WallClock) -> tuple[Told, ...]:
    """Try means with a notice that is about nothing, and say of each whether it works."""
    notice = trial_notice(clock.now())
    told = []
    for notifier in notifiers:
        failure = None
        try:
            notifier.ring(notice)
        except CannotRing as error:
            failure = str(error)
        told.append(Told(means=notifier.means, notice=notice, failure=failure))
    return tuple(told)


@contextmanager
def reminders_at(
    path: Path,
    clock: WallClock,
    notifiers: Sequence[Notifier],
    voice: Speaking,
) -> Iterator[StudioReminders]:
    """The reminders of the studio file at `path`, until it is left."""
    with open_studio(path) as file:
        yield StudioReminders(file, clock, notifiers, voice)
