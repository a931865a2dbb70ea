"""One change to the file: all of it or none of it."""

from __future__ import annotations

from contextlib import contextmanager
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterator
    from sqlite3 import Connection


@contextmanager
def changing(connection: Connection) -> Iterator[None]:
    """Everything inside is one change; nothing of it stays when anything raises."""
    with _transaction(connection, "BEGIN IMMEDIATE"):
        yield


@contextmanager
def looking(connection: Connection) -> Iterator[None]:
    """Everything inside sees the file as it was at one moment."""
    with _transaction(connection, "BEGIN"):
        yield


@contextmanager
def _transaction(connection: Connection, begin: str) -> Iterator[None]:
    connection.execute(begin)
    try:
        yield
        connection.execute("COMMIT")
    finally:
        if connection.in_transaction:
            connection.execute("ROLLBACK")
