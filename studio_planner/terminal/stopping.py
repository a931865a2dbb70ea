"""Ending a search by hand: with Ctrl-C, or with a word from the program that has begun it."""

from __future__ import annotations

import os
import signal
import sys
from contextlib import contextmanager, suppress
from threading import Event, Thread
from typing import TYPE_CHECKING

from studio_planner.terminal.writing import complain

if TYPE_CHECKING:
    from collections.abc import Iterator
    from types import FrameType

ENOUGH = b"enough\n"
"""The line that ends a search when a program writes it to our input."""

_ONCE_MORE = (
    "Looking no further; the best plan so far gets its rehearsal and its reasons. "
    "Ctrl-C once more ends all of it."
)


@contextmanager
def stopping(*, listens: bool) -> Iterator[Event]:
    """Let the first Ctrl-C set the event that is given, and a second one end the command.

    One that `listens` hears the line `enough` on the input too, unless that is a terminal.
    """
    enough = Event()

    def interrupted(_number: int, _frame: FrameType | None) -> None:
        if enough.is_set():
            raise KeyboardInterrupt
        enough.set()
        complain(_ONCE_MORE)

    if listens:
        _listen(enough)
    before = signal.signal(signal.SIGINT, interrupted)
    try:
        yield enough
    finally:
        signal.signal(signal.SIGINT, before)


def _listen(enough: Event) -> None:
    with suppress(AttributeError, OSError, ValueError):  # closed, or nothing that has a number
        number = sys.stdin.fileno()
        # Who types is not asked: a job in the background may not even look at its terminal.
        if not os.isatty(number):
            Thread(target=_hear, args=(number, enough), daemon=True).start()


def _hear(number: int, enough: Event) -> None:
    # Read past Python's own buffer, whose lock a thread that waits would hold at the end.
    heard = b""
    with suppress(OSError):
        while ENOUGH not in heard and (part := os.read(number, 64)):
            heard = (heard + part)[-64:]
    if ENOUGH in heard:
        enough.set()
