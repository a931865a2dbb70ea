"""Looking into a backup without changing it, even one of an older version."""

from __future__ import annotations

import shutil
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import TYPE_CHECKING

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.tongue import translate
from studio_planner.storage.file_errors import told_about
from studio_planner.storage.migrations import RELEASED
from studio_planner.storage.notation import instant_at
from studio_planner.storage.opening import connect, require_whole, version_in_header
from studio_planner.storage.rows import read_studio
from studio_planner.storage.studio_file import open_studio

if TYPE_CHECKING:
    import sqlite3
    from collections.abc import Iterator
    from datetime import datetime

    from studio_planner.craft.studio import Studio

_BUSY_MILLISECONDS = 1000
_FIRST_WITH_PHOTOS = 3


@dataclass(frozen=True, slots=True, kw_only=True)
class Glance:
    """What a studio file holds: its name, how many pieces and orders, when it was planned."""

    name: str
    pieces: int
    orders: int
    planned: datetime | None


def glance_at(path: Path) -> Glance:
    """Read a few figures off a studio file; it is not checked as a whole.

    StudioFileError when it is no studio file, or too damaged even for that.
    """
    version_in_header(path, len(RELEASED))
    with _looking_into(path) as connection:
        row = connection.execute(
            'SELECT "name", (SELECT count(*) FROM "pieces"), (SELECT count(*) FROM "orders"), '
            '(SELECT "made" FROM "plan") FROM "studio"'
        ).fetchone()
    if row is None:
        raise StudioFileError(
            translate("files", "{path} is damaged; it holds no studio.").format(path=path)
        )
    name, pieces, orders, made = row
    planned = None if made is None else instant_at(made)
    return Glance(name=str(name), pieces=int(pieces), orders=int(orders), planned=planned)


def read_backup(path: Path) -> Studio:
    """Read the whole studio of a backup after checking it; the file stays as it is.

    StudioFileError in one sentence when it is missing, damaged or from a newer version.
    """
    version = version_in_header(path, len(RELEASED))
    if version < len(RELEASED):
        return _read_copy(path)
    with _looking_into(path) as connection:
        require_whole(connection, path, RELEASED)
        try:
            return read_studio(connection)
        except StudioFileError as error:
            raise StudioFileError(
                translate("files", "{path}: {error}").format(path=path, error=error)
            ) from error


def photo_in(path: Path, key: str) -> bytes | None:
    """Give the picture of that key out of a backup, or None where it has none."""
    if version_in_header(path, len(RELEASED)) < _FIRST_WITH_PHOTOS:
        return None
    with _looking_into(path) as connection:
        row = connection.execute(
            "SELECT picture FROM photo_files WHERE key = ?", (key,)
        ).fetchone()
    return None if row is None else bytes(row[0])


def _read_copy(path: Path) -> Studio:
    # Opening an older file brings it up to date: that is done to a copy.
    with told_about(path, reading=True), TemporaryDirectory() as folder:
        copy = Path(folder) / path.name
        shutil.copyfile(path, copy)
        try:
            with open_studio(copy) as file:
                return file.read()
        except StudioFileError as error:
            raise StudioFileError(str(error).replace(str(copy), str(path))) from error


@contextmanager
def _looking_into(path: Path) -> Iterator[sqlite3.Connection]:
    with told_about(path, reading=True):
        connection = connect(path, _BUSY_MILLISECONDS, mode="ro")
        try:
            yield connection
        finally:
            connection.close()
