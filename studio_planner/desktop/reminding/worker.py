"""A thread that does what the window must not wait for, one job after the other."""

from __future__ import annotations

import sys
from dataclasses import dataclass
from queue import Empty, SimpleQueue
from threading import Thread
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, Qt, Signal

from studio_planner.craft.errors import StudioError
from studio_planner.craft.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Callable

POLL_SECONDS = 0.5
"""How often it listens for answers between two jobs."""

_LEAVE_SECONDS = 0.3
_SHORT_TURN_SECONDS = 0.001
"""How long one thread of Python keeps the others waiting; the usual five milliseconds are felt
at each of the many turns of a window that is drawn meanwhile."""


@dataclass(frozen=True, slots=True)
class Failed:
    """A job that did not work, in a sentence."""

    why: str


class Worker(QObject):
    """Jobs go in by `do`; what comes of each is handed over in the window's own thread.

    Signals:
        heard: what `listen` gave between two jobs, whenever it was anything.
    """

    heard = Signal(object)
    _done = Signal(int, object)

    def __init__(
        self,
        parent: QObject,
        listen: Callable[[], object] | None = None,
        *,
        poll_seconds: float = POLL_SECONDS,
    ) -> None:
        """Rest until there is something to do; `listen` is called in the thread."""
        super().__init__(parent)
        self._listen = listen
        self._poll = poll_seconds
        self._jobs: SimpleQueue[tuple[int, Callable[[], object]] | None] = SimpleQueue()
        self._awaited: dict[int, tuple[Callable[[Any], object], Callable[[str], object]]] = {}
        self._number = 0
        self._thread: Thread | None = None
        self._ended = False
        # In the window's thread, whichever thread has told of it.
        self._done.connect(self._hand_over, Qt.ConnectionType.QueuedConnection)

    @property
    def busy(self) -> bool:
        """Whether something was asked for and did not come yet."""
        return bool(self._awaited)

    def do(
        self,
        job: Callable[[], object],
        then: Callable[[Any], object],
        failed: Callable[[str], object],
    ) -> None:
        """Do a job in the thread; `then` gets what it gave, `failed` why it did not work."""
        if self._ended:
            return
        self._number += 1
        self._awaited[self._number] = (then, failed)
        self._jobs.put((self._number, job))
        if self._thread is None:
            sys.setswitchinterval(_SHORT_TURN_SECONDS)
            self._thread = Thread(target=self._work, name="reminders", daemon=True)
            self._thread.start()

    def close(self, *, wait: bool = True) -> None:
        """End the thread after the job that it is at; nothing is handed over any more.

        With `wait` it gets a moment to end before what it uses is gone.
        """
        self._ended = True
        self._awaited.clear()
        self._jobs.put(None)
        if self._thread is not None and wait:
            self._thread.join(_LEAVE_SECONDS)

    # In the thread

    def _work(self) -> None:
        while not self._ended:
            try:
                given = self._jobs.get(timeout=None if self._listen is None else self._poll)
            except Empty:
                self._hear()
                continue
            if given is None:
                return
            number, job = given
            self._tell(self._done, number, _outcome(job))

    def _hear(self) -> None:
        said = None if self._listen is None else _outcome(self._listen)
        if said and not isinstance(said, Failed):
            self._tell(self.heard, said)

    def _tell(self, signal: Any, *what: object) -> None:  # noqa: ANN401 - a signal of Qt
        if self._ended:
            return
        try:
            signal.emit(*what)
        except RuntimeError:  # the window is gone
            self._ended = True

    # In the window's thread

    def _hand_over(self, number: int, outcome: object) -> None:
        awaited = self._awaited.pop(number, None)
        if awaited is None:
            return
        then, failed = awaited
        if isinstance(outcome, Failed):
            failed(outcome.why)
        else:
            then(outcome)


def _outcome(job: Callable[[], object]) -> object:
    try:
        return job()
    except StudioError as error:
        return Failed(str(error))
    except Exception as error:  # noqa: BLE001 - said in the window instead of lost in a thread
        said = translate("due", "This did not work: {error}")
        return Failed(said.format(error=f"{type(error).__name__}: {error}"))
