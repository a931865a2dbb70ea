"""Looking at a file before trusting it: whose it is, which version, whether it is whole.

Nothing here writes. The first hundred bytes are read as plain bytes, so that a file that is not
ours is never handed to SQLite at all. Field offsets: the SQLite database file format,
section 1.3.
"""

from __future__ import annotations

import os
import sqlite3
from contextlib import suppress
from functools import lru_cache
from typing import TYPE_CHECKING
from urllib.parse import quote_from_bytes

from typing_extensions import override

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.tongue import translate
from studio_planner.storage.file_errors import told_about
from studio_planner.storage.transaction import looking

if TYPE_CHECKING:
    from collections.abc import Sequence
    from pathlib import Path

    from studio_planner.storage.migrations import Migration

APPLICATION_ID = 0x436F6174
"""Marks a studio file among SQLite files (bytes 68 to 71): "Coat" in ASCII."""

_HEADER = 100
_MAGIC = b"SQLite format 3\x00"
_ROLLBACK_JOURNAL = b"\x01\x01"
_NEWEST_SCHEMA_FORMAT = 4
_STRICT_SINCE = (3, 37)
_GUARDS = (
    "trusted_schema = OFF",
    "cell_size_check = ON",
    "foreign_keys = ON",
    "synchronous = EXTRA",  # with FULL a power cut may still bring the last journal back
    "fullfsync = ON",  # only macOS keeps what was flushed in the drive without it
)


_open_here: list[tuple[int, int]] = []
"""The files that this process has open, by device and number, once for each connection."""


class _Connection(sqlite3.Connection):
    """A connection that is known of while it is open, see `version_in_header`."""

    _file: tuple[int, int] | None = None

    def hold(self, path: Path) -> None:
        """Make it known that the file at `path` is open."""
        self._file = _number_of(path)
        _open_here.append(self._file)

    @override
    def close(self) -> None:
        super().close()
        held, self._file = self._file, None
        if held is not None:
            _open_here.remove(held)


def _number_of(path: Path) -> tuple[int, int]:
    found = path.stat()
    return found.st_dev, found.st_ino


def _is_open_here(path: Path) -> bool:
    with suppress(OSError):
        return _number_of(path) in _open_here
    return False


def connect(path: Path, busy_milliseconds: int, mode: str = "rw") -> sqlite3.Connection:
    """Connect with every guard on; `mode` is SQLite's: ro, rw or rwc."""
    if sqlite3.sqlite_version_info < _STRICT_SINCE:
        raise StudioFileError(
            translate(
                "files",
                "{path} needs SQLite 3.37 or newer, but Python has {sqlite_version} here; "
                "install a newer Python.",
            ).format(path=path, sqlite_version=sqlite3.sqlite_version)
        )
    connection = sqlite3.connect(
        f"{_address(path)}?mode={mode}",
        uri=True,
        timeout=busy_milliseconds / 1000,
        isolation_level=None,
        check_same_thread=False,
        factory=_Connection,
    )
    try:
        connection.hold(path)
        for pragma in _GUARDS:
            connection.execute(f"PRAGMA {pragma}")
    except BaseException:
        connection.close()
        raise
    return connection


def _address(path: Path) -> str:
    name = path.absolute().as_posix()
    quoted = quote_from_bytes(os.fsencode(name), safe="/:")
    return f"file://{'' if quoted.startswith('/') else '/'}{quoted}"


def is_studio_file(path: Path) -> bool:
    """Whether a studio is in the file at `path`, of any version and even a damaged one.

    False where there is no plain file. OSError when it cannot be read.
    """
    if _is_open_here(path):  # to close it here would take its locks, see `version_in_header`
        return True
    if not path.is_file():
        return False
    with path.open("rb") as file:
        header = file.read(_HEADER)
    return header.startswith(_MAGIC) and _is_marked_ours(header)


def _is_marked_ours(header: bytes) -> bool:
    return int.from_bytes(header[68:72], "big") == APPLICATION_ID


def version_in_header(path: Path, newest: int) -> int:
    """The file's version, from its first bytes; StudioFileError unless it is ours to open.

    A file that this process has open was looked at before: to close it here as plain bytes
    would take the locks of an open change with it, as fcntl(2) has it.
    """
    if _is_open_here(path):
        return newest
    with told_about(path, reading=True):
        if path.is_dir():
            raise StudioFileError(
                translate("files", "{path} is a folder, not a studio file.").format(path=path)
            )
        if path.exists() and not path.is_file():
            raise StudioFileError(
                translate("files", "{path} is not a file; choose a studio file.").format(
                    path=path
                )
            )
        with path.open("rb") as file:
            header = file.read(_HEADER)
    _require_ours(path, header)
    version = int.from_bytes(header[60:64], "big")
    if version > newest:
        raise StudioFileError(
            translate(
                "files",
                "{path} was made by a newer version of this program (file version {version}, "
                "this one knows up to {newest}); install the newer version. The file is left "
                "untouched.",
            ).format(path=path, version=version, newest=newest)
        )
    return version


def _require_ours(path: Path, header: bytes) -> None:
    if not header:
        raise StudioFileError(
            translate("files", "{path} is empty; open a copy of it if you have one.").format(
                path=path
            )
        )
    if header[: len(_MAGIC)] != _MAGIC:
        raise StudioFileError(
            translate("files", "{path} is not a studio file; choose another one.").format(
                path=path
            )
        )
    if len(header) < _HEADER:
        raise StudioFileError(
            translate(
                "files", "{path} is cut short; open a copy of it if you have one."
            ).format(path=path)
        )
    if not _is_marked_ours(header) or header[60:64] == bytes(4):
        raise StudioFileError(
            translate(
                "files", "{path} belongs to another program; choose a studio file."
            ).format(path=path)
        )
    if not 1 <= int.from_bytes(header[44:48], "big") <= _NEWEST_SCHEMA_FORMAT:
        raise StudioFileError(
            translate("files", "{path} is damaged; open a copy of it if you have one.").format(
                path=path
            )
        )
    if header[18:20] != _ROLLBACK_JOURNAL:
        raise StudioFileError(
            translate(
                "files",
                "{path} was changed by another program, which keeps its changes in a second "
                "file; open a copy of it if you have one.",
            ).format(path=path)
        )


def require_whole(
    connection: sqlite3.Connection, path: Path, steps: Sequence[Migration]
) -> int:
    """Check the tables and every page; StudioFileError when anything is not as we left it.

    Gives the file's version, at most that of `steps`: how many of them it has been through.
    The header may say another one, of a change that was cut off or that another window makes.
    """
    with looking(connection):
        (version,) = connection.execute("PRAGMA user_version").fetchone()
        found = _schema(connection)
        if not 0 < version <= len(steps) or found != expected_schema(tuple(steps[:version])):
            raise StudioFileError(
                translate(
                    "files",
                    "{path} has been changed by another program (its tables are not the ones "
                    "made here), so it is not opened; open a copy of it if you have one.",
                ).format(path=path)
            )
        verdict = [row[0] for row in connection.execute("PRAGMA quick_check(1)")]
        torn = connection.execute("PRAGMA foreign_key_check").fetchone()
        if verdict != ["ok"] or torn is not None or _cut_short(connection, path):
            raise StudioFileError(
                translate(
                    "files",
                    "{path} is damaged; open a copy of it if you have one. It was left as it "
                    "is.",
                ).format(path=path)
            )
    return int(version)


def _cut_short(connection: sqlite3.Connection, path: Path) -> bool:
    # SQLite fills a last page that is not all there with zeros and says nothing.
    (pages,) = connection.execute("PRAGMA page_count").fetchone()
    (page_bytes,) = connection.execute("PRAGMA page_size").fetchone()
    return bool(path.stat().st_size < pages * page_bytes)


def _schema(connection: sqlite3.Connection) -> frozenset[tuple[str, str, str, str | None]]:
    rows = connection.execute("SELECT type, name, tbl_name, sql FROM sqlite_schema")
    return frozenset(tuple(row) for row in rows)


@lru_cache(maxsize=8)
def expected_schema(
    steps: tuple[Migration, ...],
) -> frozenset[tuple[str, str, str, str | None]]:
    """What the tables of a file are after `steps`, found by running them in memory."""
    connection = sqlite3.connect(":memory:", isolation_level=None)
    try:
        for step in steps:
            step(connection)
        return _schema(connection)
    finally:
        connection.close()
