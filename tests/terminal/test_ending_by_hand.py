"""A search that is ended by hand ends with the best plan so far, and says what stands."""

from __future__ import annotations

import io
import os
import signal
import sys
from threading import active_count
from typing import TYPE_CHECKING

import pytest

from studio_planner.services.studio_files import read_planned, read_studio
from studio_planner.terminal import plan_command
from studio_planner.terminal.stopping import ENOUGH, stopping
from tests.terminal.found_plans import STOPPED

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from pathlib import Path

    from tests.terminal.conftest import Terminal


def interrupt(_step: int) -> None:
    """Press Ctrl-C."""
    signal.raise_signal(signal.SIGINT)


def test_the_first_ctrl_c_looks_no_further_and_keeps_and_prints_the_best_so_far(
    terminal: Terminal, unplanned: Path, looks: Callable[..., list[float]]
) -> None:
    looks(count=9, between=lambda step: interrupt(step) if step == 2 else None)
    answer = terminal("plan", unplanned, "--seconds", "60", "--keep")
    assert answer.code == 0
    assert answer.err.startswith("Looking no further")
    assert "A better plan was looked for, for 2 s." in answer.out
    plan = read_planned(unplanned)[1]
    assert (plan.solved_seconds, plan.rehearsals) == (2.0, STOPPED)
    assert signal.getsignal(signal.SIGINT) is signal.default_int_handler


def test_the_first_ctrl_c_without_keep_prints_the_best_so_far_and_says_it_is_not_kept(
    terminal: Terminal, unplanned: Path, looks: Callable[..., list[float]]
) -> None:
    looks(count=9, between=lambda step: interrupt(step) if step == 2 else None)
    answer = terminal("plan", unplanned, "--seconds", "60")
    assert answer.code == 0
    assert "This plan is not kept" in " ".join(answer.out.split())
    assert read_studio(unplanned).plan is None


def test_a_second_ctrl_c_ends_at_once_and_says_that_a_better_plan_is_kept(
    terminal: Terminal, unplanned: Path, looks: Callable[..., list[float]]
) -> None:
    def twice(step: int) -> None:
        if step == 2:
            interrupt(step)
            interrupt(step)

    looks(between=twice)
    answer = terminal("plan", unplanned, "--seconds", "60", "--keep")
    assert answer.code == 130
    assert answer.out == ""
    assert "holds the best plan that was kept until then" in answer.err
    assert read_planned(unplanned)[1].solved_seconds == 1.0


def test_a_second_ctrl_c_says_so_where_nothing_is_kept(
    terminal: Terminal, unplanned: Path, looks: Callable[..., list[float]]
) -> None:
    def twice(step: int) -> None:
        interrupt(step)
        interrupt(step)

    looks(between=twice)
    answer = terminal("plan", unplanned, "--seconds", "60")
    assert answer.code == 130
    assert answer.err.endswith("No plan was kept, and two.studio holds none.\n")
    assert terminal("plan", unplanned, "--keep").code == 0
    answer = terminal("plan", unplanned, "--seconds", "60")
    assert answer.code == 130
    assert "still holds the one of Mon 2 Feb 07:00" in answer.err


def test_ctrl_c_in_a_quick_plan_ends_it_and_says_what_stands(
    terminal: Terminal, unplanned: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def again(*_: object, **__: object) -> None:
        interrupt(0)

    monkeypatch.setattr(plan_command, "plan_again", again)
    answer = terminal("plan", unplanned, "--keep")
    assert answer.code == 130
    assert "No plan was kept" in answer.one_sentence


class Line:
    """An input that a program may write to."""

    def __init__(self) -> None:
        self.ours, theirs = os.pipe()
        self._theirs = os.fdopen(theirs, "wb", buffering=0)

    def fileno(self) -> int:
        return self.ours

    def says(self, *words: bytes) -> None:
        for word in words:
            self._theirs.write(word)

    def ends(self) -> None:
        self._theirs.close()


@pytest.fixture
def line(monkeypatch: pytest.MonkeyPatch) -> Iterator[Line]:
    line = Line()
    monkeypatch.setattr(sys, "stdin", line)
    yield line
    line.ends()


def test_a_program_that_follows_a_search_ends_it_with_a_line(line: Line) -> None:
    with stopping(listens=True) as enough:
        line.says(b"what?\n" * 20, b"eno")
        assert not enough.wait(0.0)
        line.says(b"ugh\n")
        assert enough.wait(20.0)


def test_an_input_that_ends_does_not_end_a_search(line: Line) -> None:
    threads = active_count()
    with stopping(listens=True) as enough:
        line.ends()
        while active_count() > threads:
            pass
        assert not enough.is_set()


@pytest.mark.parametrize("given", ["terminal", "closed", "none"])
def test_nobody_is_listened_to_who_may_be_typing_or_is_not_there(
    monkeypatch: pytest.MonkeyPatch, line: Line, given: str
) -> None:
    if given == "terminal":
        monkeypatch.setattr(os, "isatty", lambda _number: True)
    elif given == "none":
        monkeypatch.setattr(sys, "stdin", None)
    else:
        monkeypatch.setattr(sys, "stdin", io.StringIO())
    threads = active_count()
    with stopping(listens=True) as enough:
        line.says(ENOUGH)
        assert active_count() == threads
        assert not enough.is_set()
