"""What the maker says about a room's log, and what a look at it finds."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import TYPE_CHECKING

from studio_planner.storage.log_merging import Gap, Overlap

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.places import Reading
    from studio_planner.storage.log_stamps import DateOrder


class LogUnit(StrEnum):
    """The unit of a log's temperatures."""

    CELSIUS = "C"
    FAHRENHEIT = "F"


@dataclass(frozen=True, slots=True, kw_only=True)
class LogAnswers:
    """What the maker says about a log; None leaves it to the evidence.

    Columns are named as in the heading, or numbered from 1.
    """

    date_order: DateOrder | None = None
    unit: LogUnit | None = None
    temperature_column: str | None = None
    humidity_column: str | None = None
    overlap: Overlap = Overlap.EXISTING_WINS


@dataclass(frozen=True, slots=True, kw_only=True)
class SkippedRow:
    """A row that gives no reading: its line in the file, its text, and why."""

    line: int
    text: str
    why: str


@dataclass(frozen=True, slots=True, kw_only=True)
class RoomLogPreview:
    """What a log was found to be, before anything of it is kept.

    While there are `questions` there are no readings: ask, and preview again with the answers.
    `merged` is the whole log of the place as it would be kept, `overlapping` how many rows fall
    into stretches that the place's log already covers, `local_rows` how many have no zone of
    their own, so that they were read as local times.
    """

    encoding: str
    delimiter: str
    decimal_mark: str
    heading_line: int | None
    time_column: str
    temperature_column: str
    humidity_column: str | None
    unit: LogUnit
    zone: str
    local_rows: int
    date_order: str
    readings: tuple[Reading, ...]
    merged: tuple[Reading, ...]
    overlapping: int
    gaps: tuple[Gap, ...]
    skipped: tuple[SkippedRow, ...]
    notes: tuple[str, ...]
    questions: tuple[str, ...]

    @property
    def first(self) -> datetime | None:
        """The time of the first reading."""
        return self.readings[0].when if self.readings else None

    @property
    def last(self) -> datetime | None:
        """The time of the last reading."""
        return self.readings[-1].when if self.readings else None
