"""Putting a finished file in its place, so that there is never half a file under its name."""

from __future__ import annotations

import os
import re
from contextlib import contextmanager, suppress
from typing import TYPE_CHECKING

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import datetime
    from pathlib import Path

_LEFT_HOURS = 24
"""After so long nobody is writing into a temporary file any more: its writer was killed."""


@contextmanager
def placed(target: Path, *, overwrite: bool = False) -> Iterator[Path]:
    """Give the name of a temporary file beside `target`; when all went well, move it there.

    StudioFileError when something is there already, unless `overwrite`. Whatever goes wrong,
    the temporary file is gone afterwards and what was there before is still there. What a kill
    has left beside it of files that end alike, a day ago or longer, goes with it.
    """
    refuse_existing(target, overwrite=overwrite)
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


def refuse_existing(target: Path, *, overwrite: bool) -> None:
    """StudioFileError when `target` may not be written over."""
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
