"""Planning a trial in a process of its own; a newer trial drops the one before."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject, Signal
from typing_extensions import override

from studio_planner.craft.errors import StudioError
from studio_planner.desktop.planning_process import PlanningProcess, trial_command
from studio_planner.desktop.question_pages.trial_folder import TrialFolder
from studio_planner.services.trying.comparing_trials import LOOK_SECONDS
from studio_planner.services.trying.trial_files import read_trial, write_trial

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence
    from datetime import datetime
    from pathlib import Path

    from PySide6.QtWidgets import QWidget

    from studio_planner.services.trying.trial import Trial

    Command = Callable[[Path, datetime], Sequence[str]]


def _command(path: Path, now: datetime) -> Sequence[str]:
    return trial_command(path, now, LOOK_SECONDS)


class TrialRun(QObject):
    """One trial at a time; its file is removed when it ends, however it ends.

    Signals:
        better: a plan has been found, told in a line, and the planned Studio; it goes on.
        found: the planned Studio; this is the last one.
        failed: there is none; one sentence says why, empty when it was stopped.
    """

    better = Signal(str, object)
    found = Signal(object)
    failed = Signal(str)

    def __init__(
        self, parent: QWidget, command: Command = _command, folder: Path | None = None
    ) -> None:
        """Run trials for a page; they end with its window. `folder` is where files go."""
        super().__init__(parent)
        self._command = command
        self._base = folder
        self._folder: TrialFolder | None = None
        self._process: PlanningProcess | None = None
        self._window: QWidget | None = None

    @property
    def running(self) -> bool:
        """Whether a trial goes on."""
        return self._process is not None

    def start(self, trial: Trial, now: datetime) -> None:
        """Plan a trial from `now` (aware) on; one that still runs is dropped.

        StudioFileError when its file cannot be written.
        """
        self.drop()
        self._watch_window()
        folder = self._folder = TrialFolder(self._base)
        try:
            path = write_trial(folder.path, trial, now)
        except StudioError:
            self.drop()
            raise
        process = self._process = PlanningProcess(lambda path: self._command(path, now), self)
        process.better.connect(self._better)
        process.planned.connect(self._planned)
        process.failed.connect(self._failed)
        process.start(path)

    def stop(self) -> None:
        """Look no further; a plan that was found is the answer."""
        if self._process is not None:
            self._process.stop()

    def drop(self) -> None:
        """End the trial; nothing is told of it any more, and its file goes."""
        process, self._process = self._process, None
        if process is not None:
            process.blockSignals(True)  # noqa: FBT003 - Qt's own
            process.close()
            process.deleteLater()
        folder, self._folder = self._folder, None
        if folder is not None:
            folder.remove()

    def _better(self, words: str) -> None:
        folder = self._folder
        if folder is None:
            return
        try:
            planned = read_trial(folder.path)
        except StudioError:
            return  # the next plan, or the last one, says more
        self.better.emit(words, planned)

    def _planned(self) -> None:
        folder = self._folder
        if folder is None:
            return
        try:
            planned = read_trial(folder.path)
        except StudioError as error:
            self._failed(str(error))
            return
        self.drop()
        self.found.emit(planned)

    def _failed(self, why: str) -> None:
        self.drop()
        self.failed.emit(why)

    def _watch_window(self) -> None:
        parent = self.parent()
        window = parent.window() if parent is not None and parent.isWidgetType() else None  # type: ignore[attr-defined]
        if window is not None and window is not self._window:
            window.installEventFilter(self)
            self._window = window

    @override
    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() is QEvent.Type.Close:
            self.drop()
        return super().eventFilter(watched, event)
