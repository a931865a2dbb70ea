"""Without a command: the desk where there is a screen, else the kept plan as text."""

from __future__ import annotations

from os.path import lexists
from pathlib import Path
from typing import TYPE_CHECKING

from studio_planner.terminal.bad_input import BadInput
from studio_planner.terminal.writing import say, say_wrapped

if TYPE_CHECKING:
    from studio_planner.terminal.screens import Screen
    from studio_planner.terminal.surroundings import Surroundings


def desk(file: str | None, around: Surroundings) -> int:
    """Open the desk on a file, or on the sample, which is made when it is not there.

    Raises BadInput when the desk of a file is asked for on a display that does not answer, or
    when what stands for the file looks like a command that there is not.
    """
    if file is not None:
        _require_no_mistyped_command(file)
    screen = around.screen()
    if file is not None and screen.silent:
        raise BadInput(
            f"The desk cannot be opened: the display {screen.silent} does not answer; set it "
            f"to one that does, or unset it to have the plan kept in {file} printed here."
        )
    path = _sample(around) if file is None else Path(file)
    if screen.answers:
        return around.open_desk(path)
    return _print_kept(path, screen)


def _require_no_mistyped_command(word: str) -> None:
    from studio_planner.terminal.arguments import COMMANDS, PROGRAM  # noqa: PLC0415 - when needed

    if Path(word).name == word and not Path(word).suffix and not lexists(word):
        raise BadInput(
            f"{word} is not there, and it is no command; the commands are "
            f"{', '.join(COMMANDS)}; see {PROGRAM} --help."
        )


def _print_kept(path: Path, screen: Screen) -> int:
    from studio_planner.services.studio_files import read_planned  # noqa: PLC0415 - when needed
    from studio_planner.terminal.plan_pages import print_plan  # noqa: PLC0415 - when needed

    studio, plan = read_planned(path)
    why = (
        f"The display {screen.silent} does not answer, so the desk cannot be opened"
        if screen.silent
        else "There is no screen here to open the desk on"
    )
    say_wrapped(f"{why}; this is the plan kept in {path}.")
    say()
    print_plan(studio, plan)
    return 0


def _sample(around: Surroundings) -> Path:
    from studio_planner.services.sample import sample_file  # noqa: PLC0415 - when needed

    return sample_file(around.data_folder(), around.clock.now())
