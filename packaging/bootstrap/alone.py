"""One start at a time in a checkout: a second one waits until the first has made its part.

The system gives the lock back when its owner ends, however it ends.
"""

from __future__ import annotations

import errno
import os
import sys
import time
from contextlib import contextmanager
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

WAITING = "Another start is at work in this folder; waiting until it is done ..."

_TAKEN = {errno.EACCES, errno.EAGAIN, errno.EDEADLK}
_PAUSE_SECONDS = 0.2


@contextmanager
def alone(path: Path) -> Iterator[None]:
    """Hold the lock at ``path``, a file made for it; says once when it has to wait.

    Where no file can be made or locked there is no lock: a folder that can't be written to
    can't be damaged by two starts either.
    """
    try:
        descriptor = os.open(path, os.O_RDWR | os.O_CREAT, 0o666)
    except OSError:
        yield
        return
    try:
        _wait_for(descriptor)
        yield
    finally:
        os.close(descriptor)  # gives the lock back


def _wait_for(descriptor: int) -> None:
    told = False
    while not _taken(descriptor):
        if not told:
            print(WAITING, file=sys.stderr, flush=True)
            told = True
        time.sleep(_PAUSE_SECONDS)


def _taken(descriptor: int) -> bool:
    try:
        _lock(descriptor)
    except OSError as error:
        return error.errno not in _TAKEN  # a disk that knows no locks makes nobody wait
    return True


if sys.platform == "win32":
    import msvcrt

    def _lock(descriptor: int) -> None:
        msvcrt.locking(descriptor, msvcrt.LK_NBLCK, 1)

else:
    import fcntl

    def _lock(descriptor: int) -> None:
        fcntl.flock(descriptor, fcntl.LOCK_EX | fcntl.LOCK_NB)
