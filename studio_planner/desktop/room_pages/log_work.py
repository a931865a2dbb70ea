"""Looks at a long log in a thread of its own, so that the page stays alive."""

from __future__ import annotations

from contextlib import suppress
from threading import Thread
from time import monotonic
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal

from studio_planner.craft.errors import StudioError
from studio_planner.desktop.tongue import translate
from studio_planner.services.room_logs import look_at

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import datetime
    from zoneinfo import ZoneInfo

    from studio_planner.craft.places import Reading
    from studio_planner.services.room_logs import LogAsked, LogFile

    Wanted = tuple[LogFile, ZoneInfo, Sequence[Reading], LogAsked, datetime]

_TELL_MS = 500


class _Answer(QObject):
    """Carries an answer from the thread into the window's: its number, a look or a sentence."""

    come = Signal(int, object, str)


class LogWork(QObject):
    """One look at a time; of those that are asked for meanwhile only the last one is made.

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
        self._next: Wanted | None = None
        self.thread_at_work: Thread | None = None
        self._answer = _Answer(self)
        self._answer.come.connect(self._come)
        self._telling = QTimer(self)
        self._telling.setInterval(_TELL_MS)
        self._telling.timeout.connect(self._tell)

    @property
    def busy(self) -> bool:
        """Whether an answer is waited for."""
        return self._begun is not None

    def begin(
        self,
        file: LogFile,
        zone: ZoneInfo,
        existing: Sequence[Reading],
        asked: LogAsked,
        now: datetime,
    ) -> None:
        """Look at a log at `now` (aware); whatever was looked at before is let go."""
        self._number += 1
        self._begun = monotonic()
        self._next = (file, zone, existing, asked, now)
        self._telling.start()
        if self.thread_at_work is None:
            self._start()

    def let_go(self) -> None:
        """Want no answer any more."""
        self._number += 1
        self._next = None
        self._rest()

    def _start(self) -> None:
        if self._next is None:
            return
        work, self._next = self._next, None
        # A window that is closed meanwhile does not wait for it.
        self.thread_at_work = Thread(
            target=_look, args=(self._number, work, self._answer), daemon=True
        )
        self.thread_at_work.start()

    def _rest(self) -> None:
        self._begun = None
        self._telling.stop()

    def _tell(self) -> None:
        if self._begun is not None:
            self.going_on.emit(monotonic() - self._begun)

    def _come(self, number: int, look: object, sentence: str) -> None:
        self.thread_at_work = None
        self._start()
        if number != self._number:
            return
        self._rest()
        if look is None:
            self.failed.emit(sentence)
        else:
            self.found.emit(look)


def _look(number: int, work: Wanted, answer: _Answer) -> None:
    look, sentence = None, translate("room", "The log could not be read.")
    try:
        look = look_at(*work)
    except StudioError as error:
        sentence = str(error)
    finally:
        with suppress(RuntimeError):  # the window is gone, and nobody waits any more
            answer.come.emit(number, look, sentence)
