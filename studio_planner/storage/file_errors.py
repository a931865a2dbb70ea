"""What SQLite and the operating system complain about, as one sentence fit for the maker."""

from __future__ import annotations

import errno
import sqlite3
from contextlib import contextmanager
from typing import TYPE_CHECKING

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.tongue import marked, translate

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

_PRIMARY = 0xFF  # the low byte of an extended result code names the family
_DAMAGED = marked(
    "files", "is damaged; open a copy of it if you have one. It was left as it is."
)
_FULL = marked(
    "files",
    "cannot be written: the disk is full. Nothing was changed; free some space and try again.",
)
_LOCKED = marked(
    "files", "is in use by another window; close it there or try again in a moment."
)
_NO_PERMISSION = marked(
    "files",
    "cannot be written there; check that the folder and the file are yours to change, "
    "or choose another folder.",
)
_NOT_READABLE = marked(
    "files",
    "cannot be read; check that the file and its folder are yours to read, or choose another.",
)
_NOT_THERE = marked("files", "is not there; check the name and the folder.")
_DISK_FAILED = marked(
    "files", "cannot be read or written: the disk reported an error. Nothing was changed."
)

_BY_CODE = {
    sqlite3.SQLITE_BUSY: _LOCKED,
    sqlite3.SQLITE_LOCKED: _LOCKED,
    sqlite3.SQLITE_FULL: _FULL,
    sqlite3.SQLITE_READONLY: _NO_PERMISSION,
    sqlite3.SQLITE_CANTOPEN: _NO_PERMISSION,
    sqlite3.SQLITE_PERM: _NO_PERMISSION,
    sqlite3.SQLITE_AUTH: _NO_PERMISSION,
    sqlite3.SQLITE_IOERR: _DISK_FAILED,
    sqlite3.SQLITE_CORRUPT: _DAMAGED,
    sqlite3.SQLITE_NOTADB: _DAMAGED,
    sqlite3.SQLITE_TOOBIG: _DAMAGED,
    sqlite3.SQLITE_MISMATCH: _DAMAGED,
    sqlite3.SQLITE_CONSTRAINT: marked(
        "files", "was not changed: two entries contradict each other"
    ),
}
_BY_ERRNO = {
    errno.ENOSPC: _FULL,
    errno.EDQUOT: _FULL,
    errno.EACCES: _NO_PERMISSION,
    errno.EPERM: _NO_PERMISSION,
    errno.EROFS: _NO_PERMISSION,
    errno.ENOENT: _NOT_THERE,
    errno.ENOTDIR: _NOT_THERE,
    errno.EISDIR: marked("files", "is a folder, not a studio file."),
    errno.EEXIST: marked("files", "is there already; choose another name."),
    errno.ENAMETOOLONG: marked("files", "has too long a name; choose a shorter one."),
}


@contextmanager
def told_about(path: Path, *, reading: bool = False) -> Iterator[None]:
    """Turn what goes wrong with the file at `path` into StudioFileError; bugs pass through.

    While it is only being read, a missing permission is one to read.
    """
    try:
        yield
    except sqlite3.Error as error:
        words = _words_for(error, path)
        if words is None:
            raise
        raise StudioFileError(_told(path, words)) from error
    except UnicodeDecodeError as error:  # SQLite quotes text that is not UTF-8
        raise StudioFileError(_told(path, _DAMAGED)) from error
    except OSError as error:
        raise StudioFileError(_told(path, _words_of_system(path, error, reading))) from error


def _told(path: Path, words: str) -> str:
    said = translate("files", words)
    return f"{path} {said}"


def _words_of_system(path: Path, error: OSError, reading: bool) -> str:  # noqa: FBT001 - a fact
    words = _BY_ERRNO.get(error.errno or 0, _DISK_FAILED)
    if words is _NO_PERMISSION and reading:
        return _NOT_READABLE
    if words is _NOT_THERE and not _is_folder(path.parent):
        return _no_folder(path)
    return words


def _no_folder(path: Path) -> str:
    said = translate(
        "files", "cannot be found or made: there is no folder {folder}; check its name."
    )
    return said.format(folder=path.parent)


def _is_folder(path: Path) -> bool:
    try:
        return path.is_dir()
    except OSError:  # it may not even be looked at
        return True


def _words_for(error: sqlite3.Error, path: Path) -> str | None:
    code = getattr(error, "sqlite_errorcode", None)
    if code is None:  # raised by the binding itself: text that is not UTF-8
        return _DAMAGED if str(error).startswith("Could not decode") else None
    if code & _PRIMARY == sqlite3.SQLITE_CANTOPEN and not _is_folder(path.parent):
        return _no_folder(path)
    words = _BY_CODE.get(code & _PRIMARY)
    if code & _PRIMARY == sqlite3.SQLITE_CONSTRAINT:
        said = translate("files", words or "")
        return f"{said} ({error})."
    return words
