"""Planning on the desk: it starts and ends the planning process, and says how it goes."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QObject, QTimer

from studio_planner.craft.errors import StudioError
from studio_planner.desktop.idle_work import BREATH_MILLISECONDS
from studio_planner.desktop.page_keys import SET_UP, STUDIO
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from pathlib import Path

    from PySide6.QtGui import QAction
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.notice_line import NoticeLine
    from studio_planner.desktop.planning_process import PlanningProcess
    from studio_planner.desktop.title_bar import TitleBar
    from studio_planner.services.desk import DeskSession


class Side(Protocol):
    """What planning needs of the side of the desk."""

    def show_worth(self) -> None:
        """Bring to the front what the plan is worth."""
        ...


class Parts(Protocol):
    """Where planning finds the side."""

    @property
    def side(self) -> Side:
        """The side."""
        ...


class Desk(Protocol):
    """What planning needs of the window."""

    session: DeskSession | None
    title_bar: TitleBar
    notice: NoticeLine
    verbs: dict[str, QAction]

    def tell(self, words: str) -> None:
        """Say news that goes by itself."""
        ...

    def go_to(self, page: str, key: str = "") -> None:
        """Show another page."""
        ...

    def show_session_view(self) -> None:
        """Show the studio as the session has it now."""
        ...

    @property
    def parts(self) -> Parts:
        """Timeline, room and side."""
        ...


class DeskPlanning(QObject):
    """One planning process for the window; it ends when another studio is opened."""

    def __init__(self, desk: Desk, parent: QWidget) -> None:
        """Plan what is on the desk, once that is asked for."""
        super().__init__(parent)
        self._desk = desk
        self._by_itself = False
        self._last_said = ("", False)

    @cached_property
    def process(self) -> PlanningProcess:
        """The process that plans again."""
        from studio_planner.desktop.planning_process import PlanningProcess  # noqa: PLC0415

        return self.listen_to(PlanningProcess(parent=self))

    def listen_to(self, process: PlanningProcess) -> PlanningProcess:
        """Listen to a planning process, and use it from now on."""
        process.started.connect(self._started)
        process.better.connect(self._better)
        process.ending.connect(self._ending)
        process.planned.connect(self._planned)
        process.failed.connect(self._failed)
        self.__dict__["process"] = process
        return process

    @property
    def running(self) -> bool:
        """Whether planning goes on."""
        return "process" in self.__dict__ and self.process.running

    def ask(self) -> None:
        """Plan because the maker wants it, or show what the studio lacks for a plan."""
        from studio_planner.services.setting_up import plan_possible  # noqa: PLC0415 - when needed

        session = self._desk.session
        if session is None or plan_possible(session.studio):
            self.start()
            return
        self._desk.go_to(STUDIO, SET_UP)
        self._desk.tell(
            translate(
                "planning",
                "A plan needs hands, a room, a level spot and a piece. Here is what lacks.",
            )
        )

    def start(self, *, after_change: bool = False) -> None:
        """Plan the studio on the desk again; `after_change` makes the plan a part of it."""
        session = self._desk.session
        if session is not None and not self.running:
            session.expect_plan(None if after_change else self._words(session))
            self._by_itself = after_change
            self.process.start(session.path)

    @staticmethod
    def _words(session: DeskSession) -> str:
        """What undoing the plan that is asked for is called."""
        if session.studio.plan is None:
            return translate("planning", "First plan")
        return translate("planning", "Plan again")

    def end_now(self) -> bool:
        """End planning before a change of the studio; tell whether it was going on.

        What it has kept in the file by then is taken, so that the change is made upon it.
        """
        if not self.running:
            return False
        self.process.drop()
        self._take()
        self.offer()
        return True

    def _take(self) -> bool:
        session = self._desk.session
        if session is None:
            return False
        try:
            session.take_plan()
        except StudioError as error:
            self._desk.notice.say(str(error), wrong=True)
            return False
        return True

    def stop(self) -> None:
        """Look no further; the best plan so far stays."""
        self.process.stop()

    def leave(self, path: Path | None = None) -> None:
        """Stop at once, unless the studio at `path` is what is planned; nothing is said."""
        if "process" in self.__dict__ and self.process.path != path:
            self.process.close()
        self.offer()

    def offer(self) -> None:
        """Offer to plan, or to stop, whatever makes sense now."""
        session, running = self._desk.session, self.running
        possible = session is not None
        first = session is None or session.studio.plan is None
        verb = translate("menus", "Plan &now") if first else translate("menus", "Plan &again")
        self._desk.verbs["plan"].setText(verb)
        self._desk.title_bar.show_running(running=running, possible=possible)
        self._desk.verbs["plan"].setEnabled(possible and not running)
        self._desk.verbs["stop"].setEnabled(running)

    def _started(self) -> None:
        self.offer()
        self._say(translate("planning", "the quick plan comes first"), enough=False)

    def _better(self, words: str) -> None:
        said = translate("planning", "best so far {words}").format(words=words)
        self._say(said, enough=True)
        if self._take():
            # Reading it and showing it are two waits; a key that is pressed comes between them.
            QTimer.singleShot(BREATH_MILLISECONDS, self, self._show_better)

    def _show_better(self) -> None:
        self._desk.show_session_view()
        if self.running:
            # Showing the studio wrote over it; planning may have come further meanwhile.
            words, enough = self._last_said
            self._say(words, enough=enough)

    def _ending(self) -> None:
        from studio_planner.desktop.planning_process import ENDING  # noqa: PLC0415

        self.offer()
        self._say(translate("planning", ENDING), enough=False)

    def _say(self, words: str, *, enough: bool) -> None:
        self._last_said = (words, enough)
        self._desk.title_bar.show_progress(words, enough=enough)

    def _planned(self) -> None:
        from studio_planner.desktop.verdicts import planned_words  # noqa: PLC0415

        self.offer()
        desk = self._desk
        if not self._take() or desk.session is None:
            return
        desk.show_session_view()
        view = desk.session.view
        if not self._by_itself:
            desk.parts.side.show_worth()
        if view.plan is not None and view.plan.unplanned:
            desk.notice.say(planned_words(view))
        elif not self._by_itself:
            desk.tell(planned_words(view))
        elif not desk.notice.stays:
            # What could not be planned before is planned now.
            desk.notice.hide()

    def _failed(self, why: str) -> None:
        self.offer()
        desk = self._desk
        # The file may hold a better plan that came before.
        if self._take():
            desk.show_session_view()
        planned = desk.session is not None and desk.session.studio.plan is not None
        if why and self._by_itself and not planned:
            # Nobody has asked for it: it is said where planning is spoken of, and in no way.
            said = translate("planning", "Not planned: {why}")
            desk.title_bar.say_quietly(said.format(why=why))
        elif why:
            desk.notice.say(why, wrong=True)
        else:
            desk.tell(translate("planning", "Planning was stopped; the plan is as it was."))
