"""Planning again in a process of its own, so that the desk never waits for it."""

from __future__ import annotations

import sys
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QProcess, QProcessEnvironment, Signal, SignalInstance

from studio_planner.desktop.aside import send_back
from studio_planner.desktop.planning_words import PlanningWords, reason_of, text_of
from studio_planner.desktop.tongue import Language, marked, spoken, translate

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence
    from datetime import datetime
    from pathlib import Path

LOOK_SECONDS = 20
"""How long better plans are looked for: each is kept as it comes and the maker may say at any
time that it is good enough, so this need only end before the tea is cold."""

ENDING = marked(
    "planning", "the best so far is kept; finding out how sure it is, and why orders are late"
)
"""What is told while the plan of a search that was ended is rehearsed and gets its reasons."""

_ENOUGH = b"enough\n"
"""What ends a search when it is written to the planning program."""

_STOP_MILLISECONDS = 2000


def plan_command(path: Path) -> list[str]:
    """The program and arguments that plan a studio file again and keep each better plan."""
    return [*_program(path), "--seconds", str(LOOK_SECONDS)]


def trial_command(path: Path, now: datetime, seconds: int) -> list[str]:
    """The program and arguments that plan a tried studio from `now` (aware) on."""
    return [*_program(path), "--from", now.isoformat(), "--seconds", str(seconds)]


def _program(path: Path) -> list[str]:
    start = (
        [sys.executable]
        if getattr(sys, "frozen", False)
        else [sys.executable, "-m", "studio_planner"]
    )
    words = ["plan", str(path), "--keep", "--json", "--progress"]
    language = spoken()
    return [*start, *words, *([] if language is Language.ENGLISH else ["--language", language])]


class PlanningProcess(QObject):
    """One planning run at a time.

    Signals:
        started: planning has begun.
        better: the file holds a better plan, told in one line; planning goes on.
        ending: looking has been ended; the best plan so far is rehearsed and explained.
        planned: the file holds a new plan; there may be pieces that it could not plan.
        failed: it does not; one sentence says why. Empty when it was stopped.
    """

    started = Signal()
    better = Signal(str)
    ending = Signal()
    planned = Signal()
    failed = Signal(str)

    def __init__(
        self,
        command: Callable[[Path], Sequence[str]] = plan_command,
        parent: QObject | None = None,
    ) -> None:
        """Run `command` of the studio's path."""
        super().__init__(parent)
        self._command = command
        self._process: QProcess | None = None
        self._words = PlanningWords()
        self._ends = False
        self._stopped = False
        self.path: Path | None = None

    @property
    def running(self) -> bool:
        """Whether planning goes on."""
        return self._process is not None

    def start(self, path: Path) -> None:
        """Plan the studio at `path` again; nothing happens while planning goes on."""
        if self.running:
            return
        self.path = path
        self._words = PlanningWords()
        self._ends = self._stopped = False
        program, *arguments = self._command(path)
        process = self._process = QProcess(self)
        environment = QProcessEnvironment.systemEnvironment()
        environment.insert("PYTHONIOENCODING", "utf-8")
        environment.insert("PYTHONPATH", _search_path(environment))
        process.setProcessEnvironment(environment)
        for signal, slot in self._told_by(process):
            signal.connect(slot)
        self.started.emit()
        process.start(program, arguments)

    def _told_by(
        self, process: QProcess
    ) -> tuple[tuple[SignalInstance, Callable[..., None]], ...]:
        return (
            (process.started, self._send_back),
            (process.readyReadStandardOutput, self._read),
            (process.finished, self._finished),
            (process.errorOccurred, self._could_not_start),
        )

    def _send_back(self) -> None:
        if self._process is not None:
            send_back(self._process.processId())

    def stop(self) -> None:
        """Look no further: the best so far is rehearsed, explained and kept.

        Where none is kept yet, or that is asked once more, all of it stops at once.
        """
        process = self._process
        if process is None:
            return
        if self._words.kept and not self._ends:
            self._ends = True
            process.write(_ENOUGH)
            self.ending.emit()
        else:
            self._stopped = True
            process.kill()

    def drop(self) -> None:
        """Stop planning; nothing is told any more.

        What is killed does nothing more, though the system takes a moment to clear it away.
        """
        process, self._process = self._process, None
        if process is not None:
            for signal, slot in self._told_by(process):
                signal.disconnect(slot)
            process.finished.connect(process.deleteLater)
            process.kill()

    def close(self) -> None:
        """Stop planning and wait until all of it has ended; nothing is told any more."""
        self.drop()
        for process in self.findChildren(QProcess):
            process.waitForFinished(_STOP_MILLISECONDS)

    def _read(self) -> None:
        if self._process is None:
            return
        for words in self._words.take(text_of(self._process.readAllStandardOutput().data())):
            if not self._ends:
                self.better.emit(words)

    def _finished(self, code: int, status: QProcess.ExitStatus) -> None:
        self._read()
        process = self._let_go()
        if process is None:
            return
        if self._stopped and not self._words.kept:
            self.failed.emit("")
        elif self._stopped:
            self.planned.emit()  # the file has the best so far, as far as it was looked into
        elif status is QProcess.ExitStatus.NormalExit and self._words.planned(code):
            self.planned.emit()
        else:
            wrong = text_of(process.readAllStandardError().data())
            self.failed.emit(reason_of(self._words.rest, wrong))

    def _could_not_start(self, error: QProcess.ProcessError) -> None:
        if (
            error is QProcess.ProcessError.FailedToStart
            and (process := self._let_go()) is not None
        ):
            self.failed.emit(
                translate("planning", "Planning could not start: {why}.").format(
                    why=process.errorString()
                )
            )

    def _let_go(self) -> QProcess | None:
        process, self._process = self._process, None
        if process is not None:
            process.deleteLater()
        return process


def _search_path(environment: QProcessEnvironment) -> str:
    # The child must find the same package as this process, wherever that was started from.
    from os import pathsep  # noqa: PLC0415

    return pathsep.join(
        dict.fromkeys([*filter(None, sys.path), environment.value("PYTHONPATH")])
    )
