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

EXPLAINING = marked("planning", "the best so far is kept; finding out why orders are late")
"""What is told while a search that was ended gets its reasons."""

_STOP_MILLISECONDS = 2000


def plan_command(path: Path) -> list[str]:
    """The program and arguments that plan a studio file again and keep each better plan."""
    return [*_program(path), "--seconds", str(LOOK_SECONDS)]


def trial_command(path: Path, now: datetime, seconds: int) -> list[str]:
    """The program and arguments that plan a tried studio from `now` (aware) on."""
    return [*_program(path), "--from", now.isoformat(), "--seconds", str(seconds)]


def reasons_command(path: Path) -> list[str]:
    """The program and arguments that say anew why orders of the kept plan are late."""
    return [*_program(path), "--reasons"]


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
        explaining: looking has been ended; the reasons of the plan in the file are found out.
        planned: the file holds a new plan; there may be pieces that it could not plan.
        failed: it does not; one sentence says why. Empty when it was stopped.
    """

    started = Signal()
    better = Signal(str)
    explaining = Signal()
    planned = Signal()
    failed = Signal(str)

    def __init__(
        self,
        command: Callable[[Path], Sequence[str]] = plan_command,
        parent: QObject | None = None,
        *,
        reasons: Callable[[Path], Sequence[str]] = reasons_command,
    ) -> None:
        """Run `command` of the studio's path, and `reasons` when that is ended early."""
        super().__init__(parent)
        self._command = command
        self._reasons = reasons
        self._process: QProcess | None = None
        self._words = PlanningWords()
        self._stopped = False
        self._explains = False
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
        self._explains = False
        self._run(self._command(path), begun=self.started)

    def _run(self, command: Sequence[str], begun: SignalInstance) -> None:
        program, *arguments = command
        self._stopped = False
        process = self._process = QProcess(self)
        environment = QProcessEnvironment.systemEnvironment()
        environment.insert("PYTHONIOENCODING", "utf-8")
        environment.insert("PYTHONPATH", _search_path(environment))
        process.setProcessEnvironment(environment)
        for signal, slot in self._told_by(process):
            signal.connect(slot)
        begun.emit()
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
        """Stop looking; a better plan that is kept already stays and gets its reasons."""
        if self._process is not None:
            self._stopped = True
            self._process.kill()

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
            self.better.emit(words)

    def _finished(self, code: int, status: QProcess.ExitStatus) -> None:
        self._read()
        process = self._let_go()
        if process is None:
            return
        if self._explains:
            self.planned.emit()  # with its reasons or without them, the plan is in the file
        elif self._stopped:
            self._end_early()
        elif status is QProcess.ExitStatus.NormalExit and self._words.planned(code):
            self.planned.emit()
        else:
            wrong = text_of(process.readAllStandardError().data())
            self.failed.emit(reason_of(self._words.rest, wrong))

    def _end_early(self) -> None:
        if self.path is None or not self._words.kept:
            self.failed.emit("")
            return
        self._explains = True
        self._run(self._reasons(self.path), begun=self.explaining)

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
