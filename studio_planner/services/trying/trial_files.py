"""A tried studio as a file of its own, for the planning process; never the maker's file."""

from __future__ import annotations

from contextlib import suppress
from typing import TYPE_CHECKING

from studio_planner.services.studio_files import create, read_studio
from studio_planner.services.trying.trial import as_followed

if TYPE_CHECKING:
    from datetime import datetime
    from pathlib import Path

    from studio_planner.craft.studio import Studio
    from studio_planner.services.trying.trial import Trial

NAME = "trial.studio"
"""What the file is called in a folder of its own."""


def write_trial(folder: Path, trial: Trial, now: datetime) -> Path:
    """Write a trial's studio, with the plan it has followed until `now`, into an empty folder.

    StudioFileError in one sentence when that is not possible.
    """
    path = folder / NAME
    create(path, as_followed(trial.studio, now))
    return path


def read_trial(folder: Path) -> Studio:
    """Read the tried studio with the plan that was found for it; StudioFileError if not."""
    return read_studio(folder / NAME)


def remove_trial(folder: Path) -> None:
    """Remove a trial's folder with everything in it; what cannot go now goes the next time."""
    with suppress(OSError):
        for path in folder.iterdir():
            path.unlink()
        folder.rmdir()
