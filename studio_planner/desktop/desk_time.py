"""Time passing on the desk: the now line moves, and others' changes of the file are seen."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QObject, QTimer

from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.desk_planning import DeskPlanning
    from studio_planner.desktop.notice_line import NoticeLine
    from studio_planner.services.desk import DeskSession
    from studio_planner.services.ports import WallClock

TICK_MILLISECONDS = 15_000
"""How often the now line asks the clock, and the file is looked at for others' changes."""


class Parts(Protocol):
    """Where the side lies."""

    def show_side(self) -> None:
        """Ask anew what needs hands."""
        ...


class Watch(Protocol):
    """What looks at loggers' files."""

    def tick(self) -> None:
        """Look at what was left alone for a while."""
        ...


class TimedDesk(Protocol):
    """What passing time needs of the window."""

    clock: WallClock
    canvas: Canvas
    notice: NoticeLine
    session: DeskSession | None

    @property
    def parts(self) -> Parts:
        """Timeline, room and side."""
        ...

    @property
    def reading_watch(self) -> Watch:
        """What looks at loggers' files while they grow."""
        ...

    def tell(self, words: str) -> None:
        """Say news that goes by itself."""
        ...

    def attempt(self, action: Callable[[], object]) -> bool:
        """Do what may fail in a sentence."""
        ...

    def read_again(self) -> bool:
        """Read the file as it is now and show it."""
        ...


class DeskTime(QObject):
    """Asks the clock every few seconds, until the window is closed."""

    def __init__(self, desk: TimedDesk, planning: DeskPlanning, parent: QWidget) -> None:
        """Let time pass on `desk`; while `planning` goes on, the file is its own."""
        super().__init__(parent)
        self._desk = desk
        self._planning = planning
        self._minute = 0
        self._timer = QTimer(self)
        self._timer.setInterval(TICK_MILLISECONDS)
        self._timer.timeout.connect(self.tick)
        self._timer.start()

    def stop(self) -> None:
        """Ask no more."""
        self._timer.stop()

    def tick(self) -> None:
        """Move the now line, and see whether somebody else has changed the file."""
        desk = self._desk
        desk.canvas.set_now(desk.clock.now())
        desk.notice.tick(desk.canvas.now)
        session = desk.session
        if session is None or self._planning.running:
            return
        session.view.now = session.now()
        desk.attempt(self._look_for_changes)
        desk.reading_watch.tick()
        minute = int(session.view.now.timestamp() // 60.0)
        if minute != self._minute:
            self._minute = minute
            desk.parts.show_side()

    def _look_for_changes(self) -> None:
        desk, session = self._desk, self._desk.session
        if session is not None and session.changed_elsewhere() and desk.read_again():
            desk.tell(
                translate(
                    "window", "The studio was changed in another window; this is how it is now."
                )
            )
