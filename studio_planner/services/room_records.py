"""A logger's file as a room's record, for questions that are not about a studio's own room."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime
from typing import TYPE_CHECKING

from studio_planner.craft.errors import StudioFileError
from studio_planner.science.history import History, fill_gaps
from studio_planner.services.studio_files import read_bytes
from studio_planner.storage.room_log import LARGEST_BYTES, preview_room_log

if TYPE_CHECKING:
    from pathlib import Path
    from zoneinfo import ZoneInfo

    from studio_planner.storage.log_preview import SkippedRow

READ_BAND_CELSIUS = 0.3
"""How far a reading may be off either way, as for a place that was never told otherwise."""

LONGEST_GAP_HOURS = 3.0
GAP_BAND_CELSIUS = 2.0
"""Across a longer pause than that nobody knows better than by this (common practice)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class RoomRecord:
    """A room as it was recorded, and what was done to the file on the way.

    `skipped` are the rows that gave no reading, `gaps` the stretches (aware start and end)
    that were bridged by a straight line, `notes` what was taken for granted.
    """

    history: History
    skipped: tuple[SkippedRow, ...]
    gaps: tuple[tuple[datetime, datetime], ...]
    notes: tuple[str, ...]

    @property
    def extent(self) -> tuple[datetime, datetime]:
        """When it begins and ends."""
        first, last = self.history.extent
        return _moment(first), _moment(last)


def room_record(path: Path, zone: ZoneInfo | None, zone_for_reading: ZoneInfo) -> RoomRecord:
    """Read a room's record from a CSV file.

    `zone` is the studio's, for rows without a zone of their own; with None such a log is
    refused, and `zone_for_reading` only serves to look at it. Raises StudioFileError with one
    sentence when the file is no log, or when it leaves a question open.
    """
    try:
        preview = preview_room_log(read_bytes(path, LARGEST_BYTES), zone or zone_for_reading)
    except StudioFileError as error:
        raise _about(path, str(error)) from error
    if preview.questions:
        raise _about(path, f"the log leaves a question open: {preview.questions[0]}")
    if not preview.readings:
        raise _about(
            path, "no row of it could be read; check its columns time and temperature_c."
        )
    if zone is None and preview.zone.endswith("local times"):
        raise _about(path, "its times have no zone; write them as 2026-02-02T18:00+01:00.")
    rows = preview.readings
    log = History(
        tuple(row.when.timestamp() for row in rows),
        tuple(row.celsius for row in rows),
        (READ_BAND_CELSIUS,) * len(rows),
        tuple(row.humidity_pct for row in rows),
    )
    filled = fill_gaps(log, LONGEST_GAP_HOURS * 3600.0, GAP_BAND_CELSIUS)
    return RoomRecord(
        history=filled.history,
        skipped=preview.skipped,
        gaps=tuple((_moment(start), _moment(end)) for start, end in filled.gaps),
        notes=preview.notes,
    )


def _moment(second: float) -> datetime:
    return datetime.fromtimestamp(second, UTC)


def _about(path: Path, sentence: str) -> StudioFileError:
    return StudioFileError(sentence if str(path) in sentence else f"{path}: {sentence}")
