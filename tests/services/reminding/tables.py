"""A studio file's tables in memory: reminders alone need nothing else of it."""

from __future__ import annotations

import sqlite3
from contextlib import contextmanager
from functools import cache
from typing import TYPE_CHECKING

from studio_planner.storage.migrating import start_file
from studio_planner.storage.migrations import RELEASED
from studio_planner.storage.transaction import changing

if TYPE_CHECKING:
    from collections.abc import Iterator


@cache
def _empty() -> bytes:
    connection = sqlite3.connect(":memory:", isolation_level=None)
    try:
        start_file(connection, RELEASED)
        return connection.serialize()
    finally:
        connection.close()


class FileInMemory:
    """A studio file without a studio."""

    def __init__(self) -> None:
        self.connection = sqlite3.connect(":memory:", isolation_level=None)
        self.connection.deserialize(_empty())
        self.connection.execute("PRAGMA foreign_keys = ON")

    @contextmanager
    def beside(self) -> Iterator[sqlite3.Connection]:
        with changing(self.connection):
            yield self.connection

    def close(self) -> None:
        self.connection.close()
