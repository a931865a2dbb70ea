"""Planning again in a process of its own, so that the desk never waits for it."""

from __future__ import annotations

import sys
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QProcess, QProcessEnvironment, Signal

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence
    from pathlib import Path

_STOP_MILLISECONDS = 2000


def plan_command(path: Path) -> list[str]:
    """The program and arguments that plan a studio file again and keep the plan."""
    start = (
        [sys.executable]
        if getattr(sys, "frozen", False)
        else [sys.executable, "-m", "studio_planner"]
    )
    return [*start, "plan", str(path), "--keep", "--json"]


class PlanningProcess(QObject):
    """One planning run at a time.

    Signals:
        started: planning has begun.
        planned: the file holds a new plan; there may be pieces that it could not plan.
        failed: it does not; one sentence says why. Empty when it was stopped.
    """

    started = Signal()
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
        self._stopped = False

    @property
    def running(self) -> bool:
        """Whether planning goes on."""
        return self._process is not None

    def start(self, path: Path) -> None:
        """Plan the studio at `path` again; nothing happens while planning goes on."""
        if self.running:
            return
        program, *arguments = self._command(path)
        self._stopped = False
        process = self._process = QProcess(self)
        environment = QProcessEnvironment.systemEnvironment()
        environment.insert("PYTHONIOENCODING", "utf-8")
        environment.insert("PYTHONPATH", _search_path(environment))
        process.setProcessEnvironment(environment)
        process.finished.connect(self._finished)
        process.errorOccurred.connect(self._could_not_start)
        self.started.emit()
        process.start(program, arguments)

    def stop(self) -> None:
        """Stop planning; the kept plan stays as it is."""
        if self._process is not None:
            self._stopped = True
            self._process.kill()

    def close(self) -> None:
        """Stop planning and wait until it has ended."""
        process = self._process
        self.stop()
        if process is not None:
            process.waitForFinished(_STOP_MILLISECONDS)

    def _finished(self, code: int, status: QProcess.ExitStatus) -> None:
        process = self._let_go()
        if process is None:
            return
        ended = status is QProcess.ExitStatus.NormalExit
        said = _text(process.readAllStandardOutput().data())
        if self._stopped:
            self.failed.emit("")
        elif ended and (code == 0 or (code == 1 and _kept(said))):
            self.planned.emit()
        else:
            wrong = _text(process.readAllStandardError().data())
            self.failed.emit(_reason(said, wrong))

    def _could_not_start(self, error: QProcess.ProcessError) -> None:
        if (
            error is QProcess.ProcessError.FailedToStart
            and (process := self._let_go()) is not None
        ):
            self.failed.emit(f"Planning could not start: {process.errorString()}.")

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


def _kept(said: str) -> bool:
    """Whether the planner has kept its plan, though not of every piece."""
    found = _json(said)
    return isinstance(found, dict) and found.get("kept") is True


def _reason(said: str, wrong: str) -> str:
    """What the planner said, its reasons or the error; its traces are not for the maker."""
    reasons = _reasons_in(said)
    if reasons:
        return " ".join(reasons)
    lines = [line for line in wrong.splitlines() if line.strip()]
    if lines and not wrong.startswith("Traceback"):
        return lines[-1].strip()
    return "Planning stopped unexpectedly; the plan was left as it is."


def _reasons_in(said: str) -> list[str]:
    found = _json(said)
    if found is None:
        return [line.strip() for line in said.splitlines() if line.strip()][:3]
    reasons = found.get("reasons", []) if isinstance(found, dict) else []
    return [str(reason) for reason in reasons]


def _json(said: str) -> object:
    from json import JSONDecodeError, loads  # noqa: PLC0415 - only needed when something failed

    try:
        return loads(said)
    except JSONDecodeError:
        return None


def _text(data: object) -> str:
    return (
        bytes(data).decode("utf-8", "replace")
        if isinstance(data, bytes | bytearray | memoryview)
        else ""
    )
