"""What the command line needs of the world around it; assembly passes it in."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.errors import StudioError

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence
    from datetime import datetime
    from pathlib import Path

    from studio_planner.services.paper.pages import Sheet
    from studio_planner.services.paper.placing import DrawSheet
    from studio_planner.services.ports import Notifier, Scheduler, WallClock
    from studio_planner.terminal.screens import Screen


def no_notifiers() -> Sequence[Notifier]:
    """Nothing can ring here."""
    return ()


def no_scheduler() -> Scheduler:
    """Nothing can run the program by itself here."""
    raise StudioError("This system has no scheduler that is known here.")


def no_paper(sheet: Sheet, made: datetime) -> bytes:
    """Nothing can be drawn here."""
    del sheet, made
    raise StudioError("There is nothing here that draws a sheet.")


@dataclass(frozen=True, slots=True, kw_only=True)
class Surroundings:
    """The clock, the screen, the maker's own folder, the desk, and the ways to reach the maker.

    All but the clock are called only when they are needed; `open_desk` takes the studio file
    and gives the exit code when its window is closed; `draw_sheet` makes a PDF of a sheet.
    """

    clock: WallClock
    screen: Callable[[], Screen]
    data_folder: Callable[[], Path]
    open_desk: Callable[[Path], int]
    notifiers: Callable[[], Sequence[Notifier]] = no_notifiers
    scheduler: Callable[[], Scheduler] = no_scheduler
    draw_sheet: DrawSheet = no_paper
