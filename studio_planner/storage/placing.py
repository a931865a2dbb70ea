"""Putting a finished file in its place, so that there is never half a file under its name."""

from __future__ import annotations

import os
import re
from contextlib import contextmanager, suppress
from typing import TYPE_CHECKING

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.tongue import translate
from studio_planner.storage.opening import is_studio_file

if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import datetime
    from pathlib import Path

_KEPT_BESIDE = ("-journal", "-wal", "-shm")
"""What SQLite adds to a file's name for what it keeps beside it while that is changed."""

_LEFT_HOURS = 24
"""After so long nobody is writing into a temporary file any more: its writer was killed."""


@contextmanager
def placed(
    target: Path, *, overwrite: bool = False, over_studios: bool = False
) -> Iterator[Path]:
    """Give the name of a temporary file beside `target`; when all went well, move it there.

    StudioFileError when `refuse_existing` refuses it. Whatever goes wrong, the temporary file
    is gone afterwards and what was there before is still there. What a kill has left beside it
    of files that end alike, a day ago or longer, goes with it.
    """
    refuse_existing(target, overwrite=overwrite, over_studios=over_studios)
    temporary = target.with_name(f".{target.name}.{os.urandom(4).hex()}.part")
    try:
        yield temporary
        _flush_file(temporary)
        written = temporary.stat().st_mtime
        _move(temporary, target, overwrite=overwrite)
        _flush_folder(target.parent)
        _clear_left(target.parent, target.suffix, written)
    finally:
        for left in (temporary, temporary.with_name(f"{temporary.name}-journal")):
            with suppress(OSError):
                left.unlink(missing_ok=True)


def clear_left(folder: Path, suffix: str, now: datetime) -> None:
    """Take away what a kill has left of files that end in `suffix`, older than a day at `now`.

    Only names that `placed` makes are touched; one that cannot be removed stays.
    """
    _clear_left(folder, suffix, now.timestamp())


def _clear_left(folder: Path, suffix: str, now: float) -> None:
    ours = re.compile(rf"\..+{re.escape(suffix)}\.[0-9a-f]{{8}}\.part(-journal)?")
    oldest = now - _LEFT_HOURS * 3600
    with suppress(OSError):
        for path in folder.iterdir():
            if ours.fullmatch(path.name) and path.lstat().st_mtime < oldest:
                with suppress(OSError):
                    path.unlink()


def refuse_existing(target: Path, *, overwrite: bool, over_studios: bool = False) -> None:
    """StudioFileError when `target` may not be written over.

    Nothing is without `overwrite`. With it a plain file is, but never a studio or a backup
    unless `over_studios`, which is for what makes studios, and never what lies beside one.
    """
    if target.is_dir():
        raise StudioFileError(
            translate("files", "{target} is a folder; give the name of a file.").format(
                target=target
            )
        )
    if not overwrite and os.path.lexists(target):
        raise StudioFileError(
            translate("files", "{target} is there already; choose another name.").format(
                target=target
            )
        )
    if target.exists() and not target.is_file():
        raise StudioFileError(
            translate("files", "{target} is no plain file; give another name.").format(
                target=target
            )
        )
    if not over_studios and is_studio_file(target):
        raise StudioFileError(
            translate(
                "files",
                "{target} is a studio file, which only a studio is ever written over; choose "
                "another name.",
            ).format(target=target)
        )
    _refuse_beside_studio(target)


def _refuse_beside_studio(target: Path) -> None:
    for ending in _KEPT_BESIDE:
        studio = target.with_name(target.name.removesuffix(ending) or target.name)
        if studio != target and is_studio_file(studio):
            raise StudioFileError(
                translate(
                    "files",
                    "{target} is the name of a file that may hold changes of the studio "
                    "{studio}; choose another name.",
                ).format(target=target, studio=studio)
            )


def _move(temporary: Path, target: Path, *, overwrite: bool) -> None:
    if overwrite:
        temporary.replace(target)
        return
    try:
        os.link(temporary, target)
    except FileExistsError:
        refuse_existing(target, overwrite=False)
        raise
    except OSError:
        _claim_and_replace(temporary, target)


def _claim_and_replace(temporary: Path, target: Path) -> None:
    # For file systems without hard links: the empty file keeps the name ours until the swap.
    try:
        target.open("xb").close()
    except FileExistsError:
        refuse_existing(target, overwrite=False)
        raise
    try:
        temporary.replace(target)
    except OSError:
        target.unlink()
        raise


def _flush_file(path: Path) -> None:
    with path.open("rb+") as file:
        os.fsync(file.fileno())


def _flush_folder(folder: Path) -> None:
    # Windows has no way to flush a folder, and some network drives refuse it: then the move
    # itself is all that can be had.
    with suppress(OSError):
        descriptor = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(descriptor)
        finally:
            os.close(descriptor)
