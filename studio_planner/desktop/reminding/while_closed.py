"""What goes on when the window is closed: the desk in the tray, or the system's scheduler."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from studio_planner.desktop.remembered import remember_tray_told, remembered_tray_told
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Callable

    from studio_planner.desktop.reminding.tray import Tray
    from studio_planner.desktop.reminding.worker import Worker
    from studio_planner.services.desk import DeskSession
    from studio_planner.services.ports import Errand, WaysOut
    from studio_planner.services.reminding.due_list import DueList


class WhileClosed(QObject):
    """Stays in the tray when asked, and has the system's own scheduler remind.

    Signals:
        open_asked: show the window again.
        due_asked: show the list of what is due.
        leave_asked: end the program.
    """

    open_asked = Signal()
    due_asked = Signal()
    leave_asked = Signal()

    def __init__(self, ways_out: WaysOut | None, parent: QObject) -> None:
        """Be about no studio yet."""
        super().__init__(parent)
        self._ways_out = ways_out
        self._session: DeskSession | None = None
        self._due = 0

    @cached_property
    def tray(self) -> Tray:
        """The desk's place in the tray."""
        from studio_planner.desktop.reminding.tray import Tray  # noqa: PLC0415 - when needed

        tray = Tray(self)
        tray.open_asked.connect(self.open_asked)
        tray.due_asked.connect(self.due_asked)
        tray.leave_asked.connect(self.leave_asked)
        return tray

    @cached_property
    def aside(self) -> Worker:
        """A thread for what may take long and has nothing to do with ringing."""
        from studio_planner.desktop.reminding.worker import Worker  # noqa: PLC0415 - when needed

        return Worker(self)

    def show_session(self, session: DeskSession) -> None:
        """Be about another studio."""
        self._session = session

    # The tray

    @property
    def stays(self) -> bool:
        """Whether the desk stays in the tray when its window is closed."""
        return self.wanted and self._ways_out is not None and self.tray.available

    @property
    def wanted(self) -> bool:
        """Whether the maker wants the desk to stay."""
        return self._session is not None and self._session.studio.reminding.stays_in_tray

    def show_due(self, due: DueList | None) -> None:
        """Say in the tray how much is due, where the desk is there to stay."""
        self._due = 0 if due is None else due.count
        if due is not None and self.stays:
            self.tray.stay(self._due)

    def stay(self) -> None:
        """Go into the tray as the window is closed; the first time it is said."""
        self.tray.stay(self._due)
        if remembered_tray_told():
            return
        remember_tray_told()
        self.tray.say(
            translate("due", "The studio goes on reminding you"),
            translate(
                "due",
                "The window is closed and the desk stays here, in the tray. Leave, in its "
                "menu, ends it.",
            ),
        )

    # The system's scheduler

    def errand(self, *, install: bool) -> Errand | None:
        """What the scheduler would be told; None where there is no studio."""
        if self._session is None or self._ways_out is None:
            return None
        scheduler, path = self._ways_out.scheduler(), self._session.path
        return scheduler.install(path) if install else scheduler.remove(path)

    @property
    def scheduled(self) -> bool:
        """Whether what the scheduler needs for this studio is written."""
        errand = self.errand(install=True)
        written = () if errand is None else errand.writes
        return bool(written) and all(path.exists() for path, _ in written)

    def carry_out(
        self, errand: Errand, then: Callable[[], object], failed: Callable[[str], object]
    ) -> None:
        """Do what an errand says, aside; the system may take a while."""
        if self._ways_out is not None:
            scheduler = self._ways_out.scheduler()
            self.aside.do(lambda: scheduler.carry_out(errand), lambda _none: then(), failed)

    def close(self) -> None:
        """End everything."""
        if "aside" in self.__dict__:
            self.aside.close()
        if "tray" in self.__dict__:
            self.tray.go()
