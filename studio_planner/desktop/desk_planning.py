"""Planning on the desk: it starts and ends the planning process, and says how it goes."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QObject

if TYPE_CHECKING:
    from pathlib import Path

    from PySide6.QtGui import QAction
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.desk_parts import DeskParts
    from studio_planner.desktop.notice_line import NoticeLine
    from studio_planner.desktop.planning_process import PlanningProcess
    from studio_planner.desktop.title_bar import TitleBar
    from studio_planner.services.desk import DeskSession


class Desk(Protocol):
    """What planning needs of the window."""

    session: DeskSession | None
    title_bar: TitleBar
    notice: NoticeLine
    verbs: dict[str, QAction]

    def tell(self, words: str) -> None:
        """Say news that goes by itself."""
        ...

    def read_again(self) -> bool:
        """Show the file as it is now."""
        ...

    @property
    def parts(self) -> DeskParts:
        """Timeline, room and side."""
        ...


class DeskPlanning(QObject):
    """One planning process for the window; it ends when another studio is opened."""

    def __init__(self, desk: Desk, parent: QWidget) -> None:
        """Plan what is on the desk, once that is asked for."""
        super().__init__(parent)
        self._desk = desk

    @cached_property
    def process(self) -> PlanningProcess:
        """The process that plans again."""
        from studio_planner.desktop.planning_process import PlanningProcess  # noqa: PLC0415

        return self.listen_to(PlanningProcess(parent=self))

    def listen_to(self, process: PlanningProcess) -> PlanningProcess:
        """Listen to a planning process, and use it from now on."""
        process.started.connect(self._started)
        process.better.connect(self._better)
        process.explaining.connect(self._explaining)
        process.planned.connect(self._planned)
        process.failed.connect(self._failed)
        self.__dict__["process"] = process
        return process

    @property
    def running(self) -> bool:
        """Whether planning goes on."""
        return "process" in self.__dict__ and self.process.running

    def start(self) -> None:
        """Plan the studio on the desk again."""
        if self._desk.session is not None:
            self.process.start(self._desk.session.path)

    def stop(self) -> None:
        """Stop planning; the best plan that was kept so far stays."""
        self.process.stop()

    def leave(self, path: Path | None = None) -> None:
        """Stop at once, unless the studio at `path` is what is planned; nothing is said."""
        if self.running and self.process.path != path:
            self.process.close()
        self.offer()

    def offer(self) -> None:
        """Offer to plan, or to stop, whatever makes sense now."""
        possible, running = self._desk.session is not None, self.running
        self._desk.title_bar.show_running(running=running, possible=possible)
        self._desk.verbs["plan"].setEnabled(possible and not running)
        self._desk.verbs["stop"].setEnabled(running)

    def _started(self) -> None:
        self.offer()
        self._desk.title_bar.show_progress("the quick plan comes first", enough=False)

    def _better(self, words: str) -> None:
        self._desk.title_bar.show_progress(f"best so far {words}", enough=True)

    def _explaining(self) -> None:
        from studio_planner.desktop.planning_process import EXPLAINING  # noqa: PLC0415

        self.offer()
        self._desk.title_bar.show_progress(EXPLAINING, enough=False)

    def _planned(self) -> None:
        from studio_planner.desktop.verdicts import planned_words  # noqa: PLC0415

        self.offer()
        desk = self._desk
        if desk.read_again() and desk.session is not None:
            view = desk.session.view
            desk.parts.side.show_worth()
            if view.plan is not None and view.plan.unplanned:
                desk.notice.say(planned_words(view))
            else:
                desk.tell(planned_words(view))

    def _failed(self, why: str) -> None:
        self.offer()
        desk = self._desk
        # The file may have changed for others, or hold a better plan that came before.
        desk.read_again()
        if why:
            desk.notice.say(why, wrong=True)
        else:
            desk.tell("Planning was stopped; the plan is as it was.")
