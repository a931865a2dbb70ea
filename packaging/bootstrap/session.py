"""The two commands: run the program, run its tests."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

from bootstrap import libraries
from bootstrap.alone import alone
from bootstrap.environment import Environment
from bootstrap.machine import ThisMachine, Trouble

if TYPE_CHECKING:
    from collections.abc import Sequence

    from bootstrap.machine import Machine

ROOT = Path(__file__).resolve().parents[2]
IN_TROUBLE = 2
NO_SCREEN = 3
INTERRUPTED = 130
SCREEN_PROBE = (
    "from studio_planner.assembly import this_screen;"
    f" raise SystemExit(0 if this_screen().answers else {NO_SCREEN})"
)
WHOLE = ("--numprocesses=auto", "--dist=worksteal", "--cov", "--cov-fail-under=100")


def main(arguments: Sequence[str]) -> int:
    """Do what ``arguments`` ask for; returns the exit code, 2 when there is trouble."""
    machine = ThisMachine()
    environment = Environment(ROOT, machine)
    try:
        if arguments and arguments[0] == "test":
            return run_tests(environment, arguments[1:])
        return run_program(environment, arguments)
    except Trouble as trouble:
        print(trouble, file=sys.stderr)
        return IN_TROUBLE
    except KeyboardInterrupt:
        print("Stopped; the next start goes on from here.", file=sys.stderr)
        return INTERRUPTED


def run_program(environment: Environment, arguments: Sequence[str]) -> int:
    """Open the desk, or do what ``arguments`` ask of the program."""
    machine = environment.machine
    with alone(environment.lock):
        environment.make()
        if has_screen(machine):
            _prepare_windows(environment)
    return machine.become([environment.python, "-P", "-m", "studio_planner", *arguments])


def _prepare_windows(environment: Environment) -> None:
    try:
        _provide_windows(environment)
    except Trouble:
        if _screen_answers(environment):
            raise  # else the program prints, and needs no Qt


def _screen_answers(environment: Environment) -> bool:
    command = [environment.python, "-P", "-c", SCREEN_PROBE]
    return environment.machine.ask(command).code != NO_SCREEN


def _provide_windows(environment: Environment) -> None:
    machine = environment.machine
    shown_by_x = "DISPLAY" in machine.environment
    needed = libraries.WINDOWS + (libraries.SCREEN if shown_by_x else ())
    libraries.provide(machine, needed)
    environment.prove_qt()


def run_tests(environment: Environment, arguments: Sequence[str]) -> int:
    """Run every gate and test, or those that ``arguments`` choose.

    Coverage is demanded of the whole run only: a chosen part can't reach it.
    """
    with alone(environment.lock):
        environment.make()
        environment.make_for_tests()
        libraries.provide(environment.machine, libraries.WINDOWS)
        libraries.provide_virtual_screen(environment.machine)
        environment.prove_qt()
    pytest = [environment.python, "-P", "-m", "pytest", *(arguments or WHOLE)]
    return environment.machine.become(pytest, environment.root)


def has_screen(machine: Machine) -> bool:
    """Whether a window can be shown: without one the program prints and needs no Qt."""
    asked = ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")
    return machine.system != "linux" or any(machine.environment.get(name) for name in asked)
