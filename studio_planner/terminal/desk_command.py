"""Without a command: the desk where there is a screen, else the kept plan as text."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from studio_planner.terminal.writing import say, say_wrapped

if TYPE_CHECKING:
    from studio_planner.terminal.surroundings import Surroundings


def desk(file: str | None, around: Surroundings) -> int:
    """Open the desk on a file, or on the sample, which is made when it is not there."""
    path = _sample(around) if file is None else Path(file)
    if around.has_screen:
        return around.open_desk(path)
    return _print_kept(path)


def _print_kept(path: Path) -> int:
    from studio_planner.services.studio_files import read_planned  # noqa: PLC0415 - when needed
    from studio_planner.terminal.plan_pages import print_plan  # noqa: PLC0415 - when needed

    studio, plan = read_planned(path)
    say_wrapped(
        f"There is no screen here to open the desk on; this is the plan kept in {path}."
    )
    say()
    print_plan(studio, plan)
    return 0


def _sample(around: Surroundings) -> Path:
    from studio_planner.services.sample import sample_file  # noqa: PLC0415 - when needed

    return sample_file(around.data_folder(), around.clock.now())
