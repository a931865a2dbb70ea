"""A drawn sheet becomes a file: whole or not at all, and what went wrong in a sentence."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.tongue import translate
from studio_planner.storage.file_errors import told_about
from studio_planner.storage.placing import placed, refuse_existing

if TYPE_CHECKING:
    from datetime import datetime
    from pathlib import Path

    from studio_planner.services.paper.pages import Sheet


class DrawSheet(Protocol):
    """Draws a sheet as a PDF that says it was made at an instant, and gives its bytes."""

    def __call__(self, sheet: Sheet, made: datetime) -> bytes:
        """StudioError in a sentence when it cannot be drawn here."""
        ...


def place_sheet(
    draw: DrawSheet, sheet: Sheet, made: datetime, target: Path, *, overwrite: bool = False
) -> None:
    """Draw a sheet and put it where `target` says; nothing is there when that goes wrong.

    StudioFileError when something is there already, unless `overwrite`, when that is no plain
    file, or when it cannot be written.
    """
    with told_about(target):
        refuse_existing(target, overwrite=overwrite)
        _refuse_what_is_no_file(target)
        drawn = draw(sheet, made)
        with placed(target, overwrite=overwrite) as temporary:
            temporary.write_bytes(drawn)


def _refuse_what_is_no_file(target: Path) -> None:
    """A device or a pipe is never put out of its place by a sheet."""
    if target.exists() and not target.is_file():
        raise StudioFileError(
            translate("paper", "{target} is no plain file; give another name.").format(
                target=target
            )
        )
