"""Where the parts are joined: the real clock, the maker's folders, the screen, the desk."""

from __future__ import annotations

import os
import sys
from datetime import UTC, datetime
from typing import TYPE_CHECKING

from studio_planner.craft.errors import StudioError
from studio_planner.terminal.entry import run as run_terminal
from studio_planner.terminal.surroundings import Surroundings

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence
    from pathlib import Path

NAME = "studio-planner"
"""What the program's own folders are called."""

_SCREEN_VARIABLES = ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")


class SystemClock:
    """The computer's own clock: the one place where the system is asked for the time."""

    def now(self) -> datetime:
        """Give the current instant in UTC."""
        return datetime.now(UTC)  # noqa: TID251 - this is the Clock that others ask


def run(argv: Sequence[str]) -> int:
    """Run the program with the words after its name; gives the exit code."""
    for stream in (sys.stdout, sys.stderr):
        # A letter that the terminal cannot show must not end the program.
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="replace")
    around = Surroundings(
        clock=SystemClock(),
        has_screen=has_screen(sys.platform, os.environ),
        data_folder=data_folder,
        open_desk=open_desk,
    )
    return run_terminal(argv, around)


def has_screen(platform: str, environment: Mapping[str, str]) -> bool:
    """Tell whether a window can be expected to open; off Linux it always is."""
    if not platform.startswith("linux"):
        return True
    return any(environment.get(name) for name in _SCREEN_VARIABLES)


def data_folder() -> Path:
    """The maker's own folder for this program, where the system keeps such things."""
    from platformdirs import user_data_path  # noqa: PLC0415 - when needed

    return user_data_path(NAME, appauthor=False)


def open_desk(path: Path) -> int:
    """Open the desk's window on a studio file; gives the exit code when it is closed.

    StudioError when the window cannot be opened because a library of the system is missing.
    """
    try:
        from studio_planner.desktop.application import run_desk  # noqa: PLC0415 - Qt, when needed
    except ImportError as error:
        raise StudioError(
            f"The window cannot be opened ({error}); on Debian or Ubuntu run: sudo apt-get "
            "install libegl1 libgl1 libxkbcommon0 libdbus-1-3 libfontconfig1; the commands "
            "work without it."
        ) from error
    return run_desk(path, SystemClock())
