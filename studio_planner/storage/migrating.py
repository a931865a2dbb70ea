"""Bringing an older studio file up to date: a backup first, then every step in one go."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.tongue import translate
from studio_planner.storage.file_errors import told_about
from studio_planner.storage.opening import APPLICATION_ID, connect, require_whole
from studio_planner.storage.placing import placed
from studio_planner.storage.transaction import changing

if TYPE_CHECKING:
    from collections.abc import Sequence
    from pathlib import Path
    from sqlite3 import Connection

    from studio_planner.storage.migrations import Migration

_BUSY_MILLISECONDS = 3000


def start_file(connection: Connection, steps: Sequence[Migration]) -> None:
    """Make the tables of a new file and mark it as ours, inside the caller's transaction."""
    connection.execute(f"PRAGMA application_id = {APPLICATION_ID}")
    for step in steps:
        step(connection)
    connection.execute(f"PRAGMA user_version = {len(steps)}")


def bring_up_to_date(connection: Connection, path: Path, steps: Sequence[Migration]) -> None:
    """Run the steps that the file has not been through, after a backup.

    Nobody else can write from before the backup until all is done. The file is exactly what it
    was when anything goes wrong: StudioFileError says what.
    """
    connection.execute("PRAGMA foreign_keys = OFF")  # has no effect inside a transaction
    with changing(connection):
        (version,) = connection.execute("PRAGMA user_version").fetchone()
        if version < len(steps):  # another window may have been quicker
            _back_up_before(path, version, steps)
            _run(connection, path, steps[version:])
            connection.execute(f"PRAGMA user_version = {len(steps)}")
    connection.execute("PRAGMA foreign_keys = ON")


def _run(connection: Connection, path: Path, steps: Sequence[Migration]) -> None:
    for step in steps:
        step(connection)
    if connection.execute("PRAGMA foreign_key_check").fetchone() is not None:
        raise StudioFileError(
            translate(
                "files",
                "{path} could not be brought up to date: an entry names another one that "
                "is gone. It was left as it is.",
            ).format(path=path)
        )


def _back_up_before(path: Path, version: int, steps: Sequence[Migration]) -> None:
    target = _free_name(path, version)
    with told_about(target), placed(target) as temporary:
        # A connection that writes cannot be copied from; nothing is written yet.
        as_it_is = connect(path, _BUSY_MILLISECONDS, mode="ro")
        try:
            copy_into(as_it_is, temporary)
        finally:
            as_it_is.close()
        verify(temporary, steps[:version])


def copy_into(connection: Connection, temporary: Path) -> None:
    """Copy the whole file page by page into a new one; other windows may go on reading."""
    copy = connect(temporary, _BUSY_MILLISECONDS, mode="rwc")
    try:
        connection.backup(copy)
    finally:
        copy.close()


def verify(path: Path, steps: Sequence[Migration]) -> None:
    """Open a copy and check all of it; StudioFileError when it is not whole."""
    copy = connect(path, _BUSY_MILLISECONDS, mode="ro")
    try:
        require_whole(copy, path, steps)
    finally:
        copy.close()


def _free_name(path: Path, version: int) -> Path:
    number = 1
    while True:
        more = "" if number == 1 else f" {number}"
        name = path.with_name(f"{path.stem} (before version {version + 1}{more}){path.suffix}")
        if not name.exists():
            return name
        number += 1
