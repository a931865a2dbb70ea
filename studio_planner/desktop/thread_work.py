"""Work on files in a thread beside the window, one piece after the other."""

from __future__ import annotations

from collections import deque
from contextlib import suppress
from threading import Thread
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QObject, Signal

from studio_planner.craft.errors import StudioError

if TYPE_CHECKING:
    from collections.abc import Callable

    Work = Callable[[], object]
    Then = Callable[[object, StudioError | None], None]


class ThreadWork(QObject):
    """Does what may take long elsewhere; what follows from it is done in the window's thread.

    A thread that is at work when the program ends is waited for.
    """

    _come = Signal(object, object)

    def __init__(self, parent: QObject) -> None:
        """Rest."""
        super().__init__(parent)
        self._left: deque[tuple[Work, Then]] = deque()
        self._thread: Thread | None = None
        self._come.connect(self._take)

    def do(self, work: Work, then: Then) -> None:
        """Do `work`, then `then` with what came of it, or with the sentence why nothing did."""
        self._left.append((work, then))
        if self._thread is None:
            self._start()

    def finish(self) -> None:
        """Wait until all of it is done."""
        while self._thread is not None:
            self._thread.join()
            QCoreApplication.sendPostedEvents(self)

    def _start(self) -> None:
        self._thread = Thread(target=self._work, args=(self._left[0][0],))
        self._thread.start()

    def _work(self, work: Work) -> None:
        made: object = None
        wrong: StudioError | None = None
        try:
            made = work()
        except StudioError as error:
            wrong = error
        finally:
            with suppress(RuntimeError):  # the window is gone, and nobody waits any more
                self._come.emit(made, wrong)

    def _take(self, made: object, wrong: StudioError | None) -> None:
        _, then = self._left.popleft()
        self._thread = None
        if self._left:
            self._start()
        then(made, wrong)
