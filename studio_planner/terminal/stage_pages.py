"""The stages of a film as a maker reads them, and what was done to a room's file on the way."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

from studio_planner.science.stages import Basis
from studio_planner.services.caution import DEFERRAL
from studio_planner.services.room_records import GAP_BAND_CELSIUS
from studio_planner.terminal.writing import (
    hours_words,
    moment_words,
    say,
    say_table,
    say_wrapped,
    span_words,
)

if TYPE_CHECKING:
    from collections.abc import Sequence
    from zoneinfo import ZoneInfo

    from studio_planner.services.data_sheets.stage_times import StageTime
    from studio_planner.services.room_records import RoomRecord

_AFTER_RECORD = "after the record"
_ROWS_SHOWN = 3

_BASIS_WORDS = {
    Basis.PUBLISHED: "a figure of the sheet",
    Basis.TAUGHT: "learned from your own touch tests",
    Basis.BETWEEN: "between two of its figures",
    Basis.ASSUMED: "a usual slope or mass taken where the sheet has too few figures",
    Basis.OUTSIDE: "beyond its figures, read on the safe side",
}


def print_stages(
    title: str,
    rows: Sequence[StageTime],
    poured: datetime | None = None,
    zone: ZoneInfo | None = None,
    notes: Sequence[str] = (),
) -> None:
    """Print a table of stages; with `poured` and its zone also when each is likely."""
    say_wrapped(title)
    say()
    heads = ["Stage", "Early", "Likely", "Late", "Basis"]
    if poured is not None and zone is not None:
        heads.append("Likely at" if zone.key != "UTC" else "Likely at, UTC")
    say_table(heads, [_cells(row, poured, zone) for row in rows])
    for sentence in (*_remarks(rows), *(f"Note: {note}" for note in notes)):
        say_wrapped(sentence)
    say()
    say_wrapped(_basis_legend(rows))
    say_wrapped(f"Early to late holds 9 of 10 films. {DEFERRAL}")


def _cells(row: StageTime, poured: datetime | None, zone: ZoneInfo | None) -> list[str]:
    hours = (row.early_hours, row.likely_hours, row.late_hours)
    cells = [_stage_words(row), *(_hours_words(row, h) for h in hours), row.basis]
    if poured is None or zone is None:
        return cells
    likely = row.likely_hours
    return [*cells, "-" if likely is None else moment_words(zone, _minute(poured, likely))]


def _hours_words(row: StageTime, hours: float | None) -> str:
    return _AFTER_RECORD if hours is None and row.beyond_record else hours_words(hours)


def _minute(poured: datetime, hours: float) -> datetime:
    # To the nearest minute, as the hours are: 10:00 and 3 h are 13:00, never 12:59.
    seconds = poured.astimezone(UTC).timestamp() + hours * 3600.0
    return datetime.fromtimestamp(0, UTC) + timedelta(minutes=round(seconds / 60.0))


def _stage_words(row: StageTime) -> str:
    words = row.stage.replace("_", " ")
    return words if row.grams is None else f"{words} ({row.grams:g} g)"


def _remarks(rows: Sequence[StageTime]) -> list[str]:
    """Reasons and notes, each once, with all the stages that it is about."""
    about: dict[str, list[str]] = {}
    for row in rows:
        for remark in (row.reason, row.note):
            if remark:
                about.setdefault(remark, []).append(row.stage.replace("_", " "))
    return [f"{', '.join(stages)}: {remark}." for remark, stages in about.items()]


def _basis_legend(rows: Sequence[StageTime]) -> str:
    met = [basis for basis in Basis if any(row.basis is basis for row in rows)]
    return f"Basis: {'; '.join(f'{basis} - {_BASIS_WORDS[basis]}' for basis in met)}."


def record_notes(record: RoomRecord, zone: ZoneInfo) -> tuple[str, ...]:
    """Give a sentence each for rows left out, stretches bridged and things taken as given."""
    return (*_skipped_notes(record), *_gap_notes(record, zone), *record.notes)


def _skipped_notes(record: RoomRecord) -> list[str]:
    if not record.skipped:
        return []
    shown = [f"line {row.line}: {row.why}" for row in record.skipped[:_ROWS_SHOWN]]
    more = len(record.skipped) - len(shown)
    count = "1 row is" if len(record.skipped) == 1 else f"{len(record.skipped)} rows are"
    rest = f"; and {more} more" if more else ""
    return [f"{count} left out ({'; '.join(shown)}{rest})."]


def _gap_notes(record: RoomRecord, zone: ZoneInfo) -> list[str]:
    return [
        f"nothing was recorded from {moment_words(zone, start)} to {moment_words(zone, end)} "
        f"({span_words((end - start) / timedelta(hours=1))}); a straight line is taken "
        f"across, known to within {GAP_BAND_CELSIUS:g} °C."
        for start, end in record.gaps
    ]
