"""A desk that reminds: a clock to be set, means that only note what they are told."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.reminders import Means
from studio_planner.services.ports import CannotRing, Errand, Notice, Pressed, WaysOut

if TYPE_CHECKING:
    from pathlib import Path

REFUSED = "Nobody answers here."


class NotingNotifier:
    """Keeps the notices; fails with a sentence as long as `fails`; gives what was pressed."""

    means = Means.NOTIFICATION.value

    def __init__(self) -> None:
        self.notices: list[Notice] = []
        self.answers: list[Pressed] = []
        self.fails = False

    def ring(self, notice: Notice) -> None:
        if self.fails:
            raise CannotRing(REFUSED)
        self.notices.append(notice)

    def pressed(self, seconds: float) -> tuple[Pressed, ...]:  # noqa: ARG002 - never waits
        found, self.answers = tuple(self.answers), []
        return found


class NotingScheduler:
    """Says what it would do, and notes what it was told to do."""

    def __init__(self, folder: Path) -> None:
        self._entry = folder / "entry.timer"
        self.done: list[Errand] = []

    def install(self, studio: Path) -> Errand:
        return Errand(
            says=f"The system will look into {studio.name} each minute.",
            writes=((self._entry, b"minutely"),),
            runs=(("timers", "on"),),
        )

    def remove(self, studio: Path) -> Errand:
        return Errand(
            says=f"The system will look into {studio.name} no more.",
            writes=((self._entry, None),),
        )

    def carry_out(self, errand: Errand) -> None:
        for path, content in errand.writes:
            if content is None:
                path.unlink(missing_ok=True)
            else:
                path.write_bytes(content)
        self.done.append(errand)


def ways_out(notifier: NotingNotifier, scheduler: NotingScheduler) -> WaysOut:
    return WaysOut(notifiers=lambda: (notifier,), scheduler=lambda: scheduler)
