"""From the words on the command line to an exit code.

0 done; 1 the studio cannot be planned as asked, with the reasons on the output; 2 something
typed or given cannot be used, in one sentence on the error output.
"""

from __future__ import annotations

import os
import sys
from importlib import import_module
from typing import TYPE_CHECKING

from studio_planner.craft.errors import NoPlanPossible, StudioError
from studio_planner.terminal.bad_input import BadInput
from studio_planner.terminal.writing import OutputLost, complain, end_output

if TYPE_CHECKING:
    import argparse
    from collections.abc import Callable, Sequence

    from studio_planner.terminal.surroundings import Surroundings

DONE, CANNOT, BAD = 0, 1, 2
_INTERRUPTED = 130

# Loaded when called: a command waits for nothing that it does not need.
_COMMANDS = {
    "sample": ("file_commands", "sample"),
    "plan": ("plan_command", "plan"),
    "check": ("plan_commands", "check"),
    "promise": ("plan_commands", "promise"),
    "next": ("hands_commands", "next_"),
    "weigh": ("weigh_command", "weigh"),
    "stages": ("stage_command", "stages"),
    "ask": ("ask_command", "ask"),
    "sheet": ("sheet_command", "sheet"),
    "log": ("log_command", "log"),
    "trace": ("trace_command", "trace"),
    "stock": ("stock_command", "stock"),
    "cost": ("cost_command", "cost"),
    "remind": ("remind_command", "remind"),
    "calendar": ("calendar_command", "calendar"),
    "export": ("file_commands", "export"),
    "import": ("file_commands", "import_"),
}


def run(argv: Sequence[str], around: Surroundings) -> int:
    """Run a command, or the desk when there is none; gives the exit code, never a traceback."""
    try:
        code = _run(argv, around)
        end_output()
    except BrokenPipeError:  # whoever read our output has seen enough
        _drop_output()
        return DONE
    except OutputLost as error:
        _drop_output()
        return _told(str(error))
    except KeyboardInterrupt:
        return _INTERRUPTED
    return code


def _drop_output() -> None:
    # What is still on its way would otherwise be tried, and complained about, at exit.
    os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())


def _run(argv: Sequence[str], around: Surroundings) -> int:
    try:
        if not argv or _is_file(argv):
            from studio_planner.terminal.desk_command import desk  # noqa: PLC0415 - when needed

            return desk(argv[0] if argv else None, around)
        return _run_command(argv, around)
    except BadInput as error:
        return _told(str(error))
    except StudioError as error:
        return _ended(error, argv)


def _is_file(argv: Sequence[str]) -> bool:
    word = argv[0]
    return len(argv) == 1 and bool(word.strip()) and word[0] != "-" and word not in _COMMANDS


def _run_command(argv: Sequence[str], around: Surroundings) -> int:
    from studio_planner.terminal.arguments import parsed  # noqa: PLC0415 - when needed

    try:
        arguments = parsed(argv)
    except SystemExit as left:  # argparse has printed the help that was asked for
        return left.code if isinstance(left.code, int) else DONE
    module, function = _COMMANDS[arguments.command]
    command: Callable[[argparse.Namespace, Surroundings], int] = getattr(
        import_module(f"studio_planner.terminal.{module}"), function
    )
    return command(arguments, around)


def _ended(error: StudioError, argv: Sequence[str]) -> int:
    reasons = _reasons(error)
    if reasons is None:
        return _told(str(error))
    _say_reasons(reasons, argv)
    return CANNOT


def _reasons(error: StudioError) -> tuple[str, ...] | None:
    """The reasons why nothing can be planned or no plan is kept; None for bad input."""
    from studio_planner.services.studio_files import NoKeptPlan  # noqa: PLC0415 - when needed

    if isinstance(error, NoPlanPossible):
        return error.reasons
    return (str(error),) if isinstance(error, NoKeptPlan) else None


def _say_reasons(reasons: tuple[str, ...], argv: Sequence[str]) -> None:
    from studio_planner.terminal.writing import (  # noqa: PLC0415 - as above
        say_json,
        say_json_line,
        say_wrapped,
    )

    if "--json" in argv:
        write = say_json_line if "--progress" in argv else say_json
        write({"reasons": list(reasons)})
        return
    for reason in reasons:
        say_wrapped(reason)


def _told(sentence: str) -> int:
    complain(sentence)
    return BAD
