"""What the command line needs of the world around it; assembly passes it in."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from studio_planner.services.ports import WallClock
    from studio_planner.terminal.screens import Screen


@dataclass(frozen=True, slots=True, kw_only=True)
class Surroundings:
    """The clock, the screen, the maker's own folder, and the desk itself.

    All but the clock are called only when they are needed; `open_desk` takes the studio file
    and gives the exit code when its window is closed.
    """

    clock: WallClock
    screen: Callable[[], Screen]
    data_folder: Callable[[], Path]
    open_desk: Callable[[Path], int]
