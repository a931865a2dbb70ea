"""Work in small parts while there is nothing else to do, so that no key waits for it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QElapsedTimer, QObject, QTimer

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

_BITE_MILLISECONDS = 3

BREATH_MILLISECONDS = 1
"""What parts two waits: a key that is pressed comes between them, as it does not for 0."""


class IdleWork(QObject):
    """One piece of work at a time; another one takes its place."""

    def __init__(self, parent: QObject, *, wait: int = 0) -> None:
        """Rest; work begins `wait` milliseconds after it was given."""
        super().__init__(parent)
        self._parts: Iterator[object] | None = None
        self._then: Callable[[], object] | None = None
        self._wait = wait
        self._idle = QTimer(self)
        self._idle.setSingleShot(True)
        self._idle.timeout.connect(self._bite)

    @property
    def going_on(self) -> bool:
        """Whether something is left to be done."""
        return self._parts is not None

    def do(self, parts: Iterator[object], then: Callable[[], object] | None = None) -> None:
        """Do `parts`, some in each turn of the event loop, and `then` at last."""
        self._parts, self._then = parts, then
        self._idle.start(self._wait)

    def drop(self) -> None:
        """Leave what is not done."""
        self._parts = self._then = None
        self._idle.stop()

    def finish(self) -> None:
        """Do all that is left at once: it is waited for."""
        parts = self._parts
        if parts is not None:
            for _ in parts:
                pass
            if parts is self._parts:
                self._end()

    def _bite(self) -> None:
        clock = QElapsedTimer()
        clock.start()
        parts = self._parts
        if parts is None:
            return
        for _ in parts:
            if self._parts is not parts:
                return
            if clock.elapsed() >= _BITE_MILLISECONDS:
                self._idle.start(0)
                return
        if parts is self._parts:
            self._end()

    def _end(self) -> None:
        then = self._then
        self.drop()
        if then is not None:
            then()
