"""Where the parts are joined: the real clock, the maker's folders, the screen, the desk."""

from __future__ import annotations

import os
import sys
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING, TextIO

from studio_planner.craft.errors import StudioError
from studio_planner.services.ports import WaysOut
from studio_planner.terminal.entry import run as run_terminal
from studio_planner.terminal.screens import Screen, screen_of
from studio_planner.terminal.surroundings import Surroundings

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.services.paper.pages import Sheet
    from studio_planner.services.ports import Notifier, Scheduler

NAME = "studio-planner"
"""What the program's own folders are called."""


class SystemClock:
    """The computer's own clock: the one place where the system is asked for the time."""

    def now(self) -> datetime:
        """Give the current instant in UTC."""
        return datetime.now(UTC)  # noqa: TID251 - this is the Clock that others ask


def run(argv: Sequence[str]) -> int:
    """Run the program with the words after its name; gives the exit code."""
    for stream in _streams():
        # A letter that the terminal cannot show must not end the program.
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="replace")
    around = Surroundings(
        clock=SystemClock(),
        screen=this_screen,
        data_folder=data_folder,
        open_desk=open_desk,
        notifiers=notifiers,
        scheduler=scheduler,
        draw_sheet=draw_sheet,
    )
    return run_terminal(argv, around)


def _streams() -> tuple[TextIO, TextIO]:
    """Give the outputs; one that was closed before the start leads nowhere."""
    for name in ("stdout", "stderr"):
        if getattr(sys, name) is None:
            nowhere = Path(os.devnull).open("w", encoding="utf-8")  # noqa: SIM115 - to the end
            setattr(sys, name, nowhere)
    return sys.stdout, sys.stderr


def this_screen() -> Screen:
    """Ask the display that this process was given whether a window can open on it."""
    return screen_of(sys.platform, os.environ)


def data_folder() -> Path:
    """The maker's own folder for this program, where the system keeps such things."""
    from platformdirs import user_data_path  # noqa: PLC0415 - when needed

    return user_data_path(NAME, appauthor=False)


def notifiers() -> tuple[Notifier, ...]:
    """Every means of this system that may reach the maker outside the window."""
    from studio_planner.ringing.means import notifiers_of  # noqa: PLC0415 - when needed

    return notifiers_of(sys.platform, os.environ, lambda: sys.stdout)


def desk_notifiers() -> tuple[Notifier, ...]:
    """The means outside its window that an open desk may use: the system's notifications."""
    from studio_planner.ringing.means import notifier_of  # noqa: PLC0415 - when needed

    return (notifier_of(sys.platform, os.environ),)


def scheduler() -> Scheduler:
    """Give the system's own scheduler, which starts this same program."""
    from studio_planner.ringing.scheduling import Around, scheduler_of  # noqa: PLC0415 - likewise

    frozen = bool(getattr(sys, "frozen", False))
    program = (sys.executable,) if frozen else (sys.executable, "-m", "studio_planner")
    user = os.getuid() if hasattr(os, "getuid") else 0
    around = Around(home=Path.home(), environment=os.environ, user=user, program=program)
    return scheduler_of(sys.platform, around)


def open_desk(path: Path) -> int:
    """Open the desk's window on a studio file; gives the exit code when it is closed.

    StudioError when the window cannot be opened because a library of the system is missing.
    """
    try:
        from studio_planner.desktop.application import run_desk  # noqa: PLC0415 - Qt, when needed
    except ImportError as error:
        raise StudioError(_missing("The window cannot be opened", error)) from error
    ways_out = WaysOut(notifiers=desk_notifiers, scheduler=scheduler)
    return run_desk(path, SystemClock(), data_folder=data_folder, ways_out=ways_out)


def draw_sheet(sheet: Sheet, made: datetime) -> bytes:
    """Draw a sheet for paper as a PDF, without a window or a screen.

    StudioError when that is not possible because a library of the system is missing.
    """
    try:
        from studio_planner.desktop.paper.pdf import (  # noqa: PLC0415 - Qt, when needed
            draw_pdf_without_screen,
        )
    except ImportError as error:
        raise StudioError(_missing("The sheet cannot be drawn", error)) from error
    return draw_pdf_without_screen(sheet, made)


def _missing(what: str, error: ImportError) -> str:
    return (
        f"{what} ({error}); on Debian or Ubuntu run: sudo apt-get install libegl1 libgl1 "
        "libxkbcommon0 libdbus-1-3 libfontconfig1; the other commands work without it."
    )
