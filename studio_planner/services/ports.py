"""What services ask of the world outside; assembly passes the real ones in."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Protocol

from studio_planner.craft.errors import StudioError

if TYPE_CHECKING:
    from collections.abc import Callable
    from datetime import datetime
    from pathlib import Path


class WallClock(Protocol):
    """Tells what time it is; nothing else in the program may ask the system."""

    def now(self) -> datetime:
        """Give the current instant, aware, in UTC."""
        ...


class CannotRing(StudioError):  # noqa: N818 - reads as a sentence where it is raised
    """A means did not reach the maker; the text says why, and what to do."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Button:
    """Something that the maker can answer a notice with: its key, and what is written on it."""

    key: str
    words: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Notice:
    """What is shown to the maker; one that is shown again has the same `key`.

    `strong` asks to stay until it is answered; `sound` whether it may be heard.
    """

    key: str
    title: str
    body: str
    strong: bool = False
    sound: bool = True
    buttons: tuple[Button, ...] = ()


@dataclass(frozen=True, slots=True)
class Pressed:
    """The maker's answer: the notice's key and the button's."""

    notice: str
    button: str


class Notifier(Protocol):
    """One way to reach the maker."""

    @property
    def means(self) -> str:
        """Its name, one of `craft.reminders.Means`."""
        ...

    def ring(self, notice: Notice) -> None:
        """Show a notice; CannotRing in one sentence when that is not possible.

        It comes back within a few seconds, whatever the other side does.
        """
        ...

    def pressed(self, seconds: float) -> tuple[Pressed, ...]:
        """Give the answers since the last call, waiting for the first up to so long."""
        ...


@dataclass(frozen=True, slots=True, kw_only=True)
class Errand:
    """What the system's own scheduler is to do, or to do no more.

    `says` tells the maker beforehand. `writes` are files with their content (None: taken
    away). Once what is new stands, `clears` are run, commands that may fail since what they end
    may not be there; then files are taken away, and `runs` are the commands afterwards.
    """

    says: str
    clears: tuple[tuple[str, ...], ...] = ()
    writes: tuple[tuple[Path, bytes | None], ...] = ()
    runs: tuple[tuple[str, ...], ...] = ()


class Scheduler(Protocol):
    """The system's own scheduler, which runs `remind` while no window is open."""

    def install(self, studio: Path) -> Errand:
        """Say what makes the system remind of the studio file; nothing is done yet."""
        ...

    def remove(self, studio: Path) -> Errand:
        """Say what undoes it; nothing is done yet."""
        ...

    def carry_out(self, errand: Errand) -> None:
        """Do it; StudioError in one sentence when the system refuses."""
        ...


@dataclass(frozen=True, slots=True, kw_only=True)
class WaysOut:
    """What an open desk may use outside its window; both are asked for when first needed."""

    notifiers: Callable[[], tuple[Notifier, ...]]
    scheduler: Callable[[], Scheduler]
