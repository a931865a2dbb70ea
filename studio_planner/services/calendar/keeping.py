"""Writing calendar files of a studio file, and keeping what calendars were told."""

from __future__ import annotations

from secrets import token_hex
from typing import TYPE_CHECKING

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.tongue import translate
from studio_planner.services.calendar.events import events_of
from studio_planner.services.calendar.files import (
    PRODUCT,
    STUDIO_ROW,
    Calendar,
    Only,
    calendar_of,
    studio_row,
    trial_calendar,
)
from studio_planner.services.studio_files import no_kept_plan
from studio_planner.storage.calendar_rows import calendar_rows
from studio_planner.storage.file_errors import told_about
from studio_planner.storage.placing import placed, refuse_existing
from studio_planner.storage.studio_file import open_studio

if TYPE_CHECKING:
    from collections.abc import Callable
    from datetime import datetime
    from pathlib import Path

    from studio_planner.craft.studio import Studio
    from studio_planner.services.questions.sentences import Voice

_TOKEN_BYTES = 8
_HEAD_BYTES = 200
"""By so much of it our calendar files are known: who wrote one stands above its name."""


def write_calendar(
    path: Path,
    target: Path,
    now: datetime,
    voice: Callable[[Studio], Voice],
    only: Callable[[Studio], Only],
) -> Calendar:
    """Write the calendar file of the studio at `path`, in place of a calendar that is there.

    One that says nothing is not written, and what is there stays. What was told is kept only
    once the file stands. NoKeptPlan without a plan; StudioFileError
    when either file cannot be read or written, or `target` is no calendar of ours.
    """
    with told_about(target):
        _refuse_no_calendar(target)  # before the clocks, which take a while
    with open_studio(path) as file:
        studio = file.read()
        if studio.plan is None:
            raise no_kept_plan(path)
        wanted = only(studio)
        # The clocks take a while, in which nobody else should have to wait for the file.
        planned = events_of(studio, now, voice(studio))
        with calendar_rows(file) as rows:
            known = rows.rows()
            if not any(row.uid == STUDIO_ROW for row in known):
                known = (*known, studio_row(token_hex(_TOKEN_BYTES), now))
            made = calendar_of(studio, known, now, planned, wanted)
            if made.says_nothing:
                return made
            _write(target, made.content)
            changed = {*made.told, *(row for row in known if row.uid == STUDIO_ROW)}
            rows.put(changed - set(rows.rows()))
    return made


def write_trial(target: Path, now: datetime) -> None:
    """Write a file with one event that rings in five minutes, in place of a calendar there."""
    _write(target, trial_calendar(now))


def _write(target: Path, content: bytes) -> None:
    with told_about(target):
        _refuse_no_calendar(target)
        with placed(target, overwrite=True) as temporary:
            temporary.write_bytes(content)


def _refuse_no_calendar(target: Path) -> None:
    """StudioFileError when something is at `target` that is no calendar file of ours."""
    refuse_existing(target, overwrite=True)
    if target.exists() and not _is_our_calendar(target):
        raise StudioFileError(
            translate(
                "calendar",
                "{target} is there already and is no calendar file that was written here; "
                "choose another name.",
            ).format(target=target)
        )


def _is_our_calendar(target: Path) -> bool:
    with target.open("rb") as file:
        head = file.read(_HEAD_BYTES)
    return head.startswith(b"BEGIN:VCALENDAR") and f"PRODID:{PRODUCT}".encode() in head
