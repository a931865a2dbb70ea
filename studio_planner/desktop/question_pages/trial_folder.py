"""Folders for trials: each goes with its trial, or the next time if the program was killed.

A lock lies in each folder while its trial runs; it is stale when that process is gone.
"""

from __future__ import annotations

import tempfile
from contextlib import suppress
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QLockFile

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.tongue import translate
from studio_planner.services.trying.trial_files import remove_trial

if TYPE_CHECKING:
    from collections.abc import Iterator

_PREFIX = "studio-planner-trial-"
_LOCK = "in-use"


class TrialFolder:
    """A folder of its own for one trial, until it is removed."""

    def __init__(self, base: Path | None = None) -> None:
        """Make the folder in `base`, else where the system keeps what is for now.

        StudioFileError when that is not possible.
        """
        where = Path(tempfile.gettempdir()) if base is None else base
        sweep(where)
        try:
            self.path = Path(tempfile.mkdtemp(prefix=_PREFIX, dir=where))
        except OSError as error:
            raise StudioFileError(
                translate(
                    "trying",
                    "There is no room for a trial in {where}; make some and try again.",
                ).format(where=where)
            ) from error
        self._lock = _lock_in(self.path)
        self._lock.tryLock(0)

    def remove(self) -> None:
        """Remove it with everything in it."""
        self._lock.unlock()
        remove_trial(self.path)


def sweep(where: Path) -> None:
    """Remove the folders of trials whose process is gone."""
    for folder in _left_in(where):
        lock = _lock_in(folder)
        if lock.tryLock(0):
            lock.unlock()
            remove_trial(folder)


def _left_in(where: Path) -> Iterator[Path]:
    with suppress(OSError):
        yield from (one for one in where.iterdir() if one.name.startswith(_PREFIX))


def _lock_in(folder: Path) -> QLockFile:
    lock = QLockFile(str(folder / _LOCK))
    lock.setStaleLockTime(0)  # however long a trial takes, its lock holds while it lives
    return lock
