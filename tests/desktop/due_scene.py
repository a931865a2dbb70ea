"""A desk that reminds: a clock to be set, means that only note what they are told."""

from __future__ import annotations

from typing import TYPE_CHECKING

from typing_extensions import override

from studio_planner.craft.errors import StudioError
from studio_planner.craft.reminders import Means
from studio_planner.desktop.reminding.tray import Tray
from studio_planner.services.ports import CannotRing, Errand, Notice, Pressed, WaysOut
from studio_planner.services.reminding.studio_reminders import reminders_at
from studio_planner.terminal.ask_command import TerminalVoice

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from studio_planner.craft.due_rows import DueRow
    from studio_planner.desktop.window import DeskWindow
    from studio_planner.services.reminding.due_list import DueItem
    from tests.desktop import scenes

    OpenDesk = Callable[[Path], DeskWindow]

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
        self.refuses = False

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
        if self.refuses:
            raise StudioError(REFUSED)
        for path, content in errand.writes:
            if content is None:
                path.unlink(missing_ok=True)
            else:
                path.write_bytes(content)
        self.done.append(errand)


def ways_out(notifier: NotingNotifier, scheduler: NotingScheduler) -> WaysOut:
    return WaysOut(notifiers=lambda: (notifier,), scheduler=lambda: scheduler)


class NotingTray(Tray):
    """A tray that shows nothing, and says whether it is there."""

    there = True

    @property
    @override
    def available(self) -> bool:
        return self.there

    def __init__(self, window: DeskWindow) -> None:
        super().__init__(window)
        self.notices: list[Notice] = []
        self.said: list[str] = []
        self.due: int | None = None

    @override
    def show_notice(self, notice: Notice) -> str:
        self.notices.append(notice)
        return ""

    @override
    def say(self, title: str, body: str, *, strong: bool = False) -> None:
        self.said.append(f"{title}. {body}")

    @override
    def stay(self, due: int) -> None:
        self.due = due


def with_tray(window: DeskWindow) -> NotingTray:
    """Give a desk a tray that only notes."""
    tray = NotingTray(window)
    window.reminding.closed.tray = tray
    return tray


def look(qtbot: QtBot, window: DeskWindow) -> None:
    """Look what is due, and wait until it is listed."""
    qtbot.waitUntil(lambda: not window.reminding.busy)
    with qtbot.waitSignal(window.reminding.answers.changed):
        window.reminding.look()
    qtbot.waitUntil(lambda: not window.reminding.busy)


def items(window: DeskWindow) -> tuple[DueItem, ...]:
    """What stands in the list of a desk."""
    due = window.reminding.answers.due
    assert due is not None
    return due.items


def titled(window: DeskWindow, title: str) -> list[DueItem]:
    """What in the list begins with a title."""
    return [item for item in items(window) if item.title.startswith(title)]


def kept(path: Path, clock: scenes.StillClock) -> dict[str, DueRow]:
    """What the file itself knows, through a connection of its own."""
    with reminders_at(path, clock, (), TerminalVoice) as reminders:
        return {row.uid: row for row in reminders._kept.every()}
