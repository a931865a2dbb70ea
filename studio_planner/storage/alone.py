"""Being the only one at something, among all processes of this computer."""

from __future__ import annotations

import sqlite3
from contextlib import ExitStack, closing, contextmanager, suppress
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

PATIENCE_SECONDS = 2.0
"""How long whoever comes second waits; what is done alone takes far less."""


@contextmanager
def alone_at(lock: Path, *, patience: float = PATIENCE_SECONDS) -> Iterator[bool]:
    """Wait until nobody else is inside for this `lock` file, and keep others out.

    It ends with the process, too, however that ends. Gives False, and keeps nobody out, where
    others take longer than `patience` seconds or the file system locks nothing: what is done
    inside then has to be right all the same, if not against one who comes in between.
    """
    with ExitStack() as held:
        ours = False
        with suppress(sqlite3.Error, OSError):
            lock.parent.mkdir(parents=True, exist_ok=True)
            connection = sqlite3.connect(lock, timeout=patience, isolation_level=None)
            held.enter_context(closing(connection))
            connection.execute("BEGIN EXCLUSIVE")
            ours = True
        yield ours
