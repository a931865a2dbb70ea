"""A drawn sheet becomes a file: whole or not at all, and what went wrong in a sentence."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

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

    StudioFileError when something is there already, unless `overwrite`, when that is never
    written over, or when it cannot be written.
    """
    with told_about(target):
        refuse_existing(target, overwrite=overwrite)
        drawn = draw(sheet, made)
        with placed(target, overwrite=overwrite) as temporary:
            temporary.write_bytes(drawn)


def refuse_irreplaceable(target: Path) -> None:
    """StudioFileError when not even whoever asks for it may replace what is at `target`."""
    with told_about(target):
        refuse_existing(target, overwrite=True)
