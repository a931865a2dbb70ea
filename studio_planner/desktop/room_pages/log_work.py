"""Looks at a long log in a thread of its own, so that the page stays alive."""

from __future__ import annotations

from time import monotonic
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QRunnable, QThreadPool, QTimer, Signal
from typing_extensions import override

from studio_planner.craft.errors import StudioError
from studio_planner.services.room_logs import look_at

if TYPE_CHECKING:
    from collections.abc import Sequence
    from zoneinfo import ZoneInfo

    from studio_planner.craft.places import Reading
    from studio_planner.services.room_logs import LogAsked, LogFile

_TELL_MS = 500


class _Done(QObject):
    found = Signal(int, object)
    failed = Signal(int, str)


class _Looking(QRunnable):
    def __init__(
        self,
        number: int,
        work: tuple[LogFile, ZoneInfo, Sequence[Reading], LogAsked],
        done: _Done,
    ) -> None:
        super().__init__()
        self._number = number
        self._work = work
        self._done = done

    @override
    def run(self) -> None:
        """Look, and say what came of it; errors of our own are said too, never swallowed."""
        try:
            look = look_at(*self._work)
        except StudioError as error:
            self._done.failed.emit(self._number, str(error))
        except Exception as error:
            self._done.failed.emit(self._number, f"The log could not be read: {error!r}")
            raise
        else:
            self._done.found.emit(self._number, look)


class LogWork(QObject):
    """One look at a time; an older one that comes late is not heard any more.

    Signals:
        found: a log that was looked at.
        failed: why there is none, in a sentence.
        going_on: for how many seconds it has been looked at.
    """

    found = Signal(object)
    failed = Signal(str)
    going_on = Signal(float)

    def __init__(self, parent: QObject) -> None:
        """Do nothing yet."""
        super().__init__(parent)
        self._number = 0
        self._begun: float | None = None
        self._pool = QThreadPool(self)
        self._pool.setMaxThreadCount(1)
        self._done = _Done(self)
        self._done.found.connect(self._found)
        self._done.failed.connect(self._failed)
        self._telling = QTimer(self)
        self._telling.setInterval(_TELL_MS)
        self._telling.timeout.connect(self._tell)

    @property
    def busy(self) -> bool:
        """Whether a log is being looked at."""
        return self._begun is not None

    def begin(
        self, file: LogFile, zone: ZoneInfo, existing: Sequence[Reading], asked: LogAsked
    ) -> None:
        """Look at a log; whatever was looked at before is let go."""
        self._number += 1
        self._begun = monotonic()
        self._pool.clear()
        self._telling.start()
        self._pool.start(_Looking(self._number, (file, zone, existing, asked), self._done))

    def let_go(self) -> None:
        """Want no answer any more."""
        self._number += 1
        self._rest()

    def _rest(self) -> None:
        self._begun = None
        self._telling.stop()

    def _tell(self) -> None:
        if self._begun is not None:
            self.going_on.emit(monotonic() - self._begun)

    def _found(self, number: int, look: object) -> None:
        if number == self._number:
            self._rest()
            self.found.emit(look)

    def _failed(self, number: int, sentence: str) -> None:
        if number == self._number:
            self._rest()
            self.failed.emit(sentence)
