"""Files that come in and go out: read whole with a limit, written whole or not at all."""

from __future__ import annotations

import os
from typing import TYPE_CHECKING

from studio_planner.craft.errors import StudioFileError
from studio_planner.storage.exchange import LARGEST_BYTES, studio_from_json, studio_to_json
from studio_planner.storage.file_errors import told_about
from studio_planner.storage.placing import placed

if TYPE_CHECKING:
    from pathlib import Path

    from studio_planner.craft.studio import Studio


def bytes_of(path: Path, largest_bytes: int = LARGEST_BYTES) -> bytes:
    """Read a whole file; StudioFileError when it is missing, a folder or too large."""
    with told_about(path):
        if path.is_dir():
            raise StudioFileError(f"{path} is a folder; give the name of a file.")
        if path.stat().st_size > largest_bytes:
            raise StudioFileError(
                f"{path} is larger than {largest_bytes >> 20} MiB; choose another file."
            )
        return path.read_bytes()


def import_studio(path: Path) -> Studio:
    """Read a studio from an exchange file (UTF-8).

    StudioFileError when it is no exchange file, InvalidEntry with every problem in it.
    """
    try:
        text = bytes_of(path).decode("utf-8")
    except UnicodeDecodeError as error:
        raise StudioFileError(
            f"{path} is not an exchange file: it is not UTF-8 text."
        ) from error
    return studio_from_json(text)


def export_studio(path: Path, studio: Studio, *, overwrite: bool = False) -> None:
    """Write a studio to an exchange file; never over another file unless `overwrite`."""
    text = studio_to_json(studio)
    try:
        data = text.encode("utf-8")
    except UnicodeEncodeError as error:
        raise StudioFileError(f"The studio cannot be exported: {error}.") from error
    with told_about(path), placed(path, overwrite=overwrite) as temporary:
        descriptor = os.open(temporary, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o666)
        with os.fdopen(descriptor, "wb") as file:
            file.write(data)
