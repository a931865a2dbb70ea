"""A logger's file as a room's record, for questions that are not about a studio's own room."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.errors import StudioFileError
from studio_planner.science.history import History, fill_gaps
from studio_planner.services.studio_files import read_bytes
from studio_planner.storage.room_log import LARGEST_BYTES, preview_room_log

if TYPE_CHECKING:
    from pathlib import Path
    from zoneinfo import ZoneInfo

READ_BAND_CELSIUS = 0.3
"""How far a reading may be off either way, as for a place that was never told otherwise."""

LONGEST_GAP_HOURS = 3.0
GAP_BAND_CELSIUS = 2.0
"""Across a longer pause than that nobody knows better than by this (common practice)."""


def room_record(path: Path, zone: ZoneInfo | None, zone_for_reading: ZoneInfo) -> History:
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
    return fill_gaps(log, LONGEST_GAP_HOURS * 3600.0, GAP_BAND_CELSIUS).history


def _about(path: Path, sentence: str) -> StudioFileError:
    return StudioFileError(sentence if str(path) in sentence else f"{path}: {sentence}")
