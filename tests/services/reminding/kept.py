"""Reminders that are kept in memory, told by means that note what they were asked to show."""

from __future__ import annotations

from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import UTC, datetime
from typing import TYPE_CHECKING

from studio_planner.craft.reminders import Reminder, ReminderKind, Urgency
from studio_planner.services.ports import CannotRing, Notice
from studio_planner.services.reminding.settling import Made
from studio_planner.services.reminding.ticking import Reminders
from studio_planner.storage.reminder_rows import ReminderRows
from tests.services.reminding.tables import FileInMemory

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from studio_planner.craft.due_rows import DueRow
    from studio_planner.services.ports import Notifier, Pressed
    from studio_planner.services.reminding.bundles import Bundle

NOON = datetime(2026, 2, 3, 12, tzinfo=UTC)


@dataclass
class Bell:
    """A means that notes what it shows, or fails in a sentence."""

    means: str = "notification"
    broken: Exception | None = None
    shown: list[Notice] = field(default_factory=list)
    answers: list[Pressed] = field(default_factory=list)

    def ring(self, notice: Notice) -> None:
        if self.broken is not None:
            raise self.broken
        self.shown.append(notice)

    def pressed(self, seconds: float) -> tuple[Pressed, ...]:
        assert seconds >= 0
        answers, self.answers = tuple(self.answers), []
        return answers


SILENT = CannotRing("It is broken.")


@dataclass
class Kept:
    """What reminders are made of, the file that they are kept in, and every clock."""

    now: datetime = NOON
    steady: float = 100.0
    revision_: int = 1
    reminders: tuple[Reminder, ...] = ()
    quiet: bool = False
    since: datetime | None = None
    file: FileInMemory = field(default_factory=FileInMemory)

    @contextmanager
    def rows(self) -> Iterator[ReminderRows]:
        with self.file.beside() as connection:
            yield ReminderRows(connection)

    def look(self) -> None:
        """There is nothing to read."""

    def revision(self) -> int:
        return self.revision_

    def made(self, now: datetime) -> Made:
        assert now.tzinfo is UTC
        return Made(self.revision_, self.reminders, self.since)

    def may_ring(self, row: DueRow, now: datetime) -> bool:
        assert row.listed
        assert now.tzinfo is UTC
        return not self.quiet

    def notice(self, bundle: Bundle, now: datetime, *, perhaps_shown: bool) -> Notice:
        assert now.tzinfo is UTC
        title = " ".join(row.uid for row in bundle.rows)
        said = [*(["away"] if bundle.away else []), *(["perhaps"] if perhaps_shown else [])]
        return Notice(key=bundle.key, title=title, body=" ".join(said))

    def wanted(self, notifiers: Sequence[Notifier]) -> Sequence[Notifier]:
        return notifiers

    def instance(self, *bells: Bell, caller: str = "one") -> Reminders:
        return Reminders(self, bells, _Clock(self), steady=lambda: self.steady, caller=caller)


@dataclass
class _Clock:
    kept: Kept

    def now(self) -> datetime:
        return self.kept.now


def reminder(uid: str, due: datetime = NOON, **more: object) -> Reminder:
    facts: dict[str, object] = {
        "uid": uid,
        "kind": ReminderKind.WEIGH,
        "urgency": Urgency.CAN_WAIT,
        "due": due,
        "meant": due,
        "moment": due,
    }
    return Reminder(**(facts | more))  # type: ignore[arg-type]
