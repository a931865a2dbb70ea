"""A logger's record of a place: looked at, thinned, taken as one change, made a pattern of."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.places import Reading
from studio_planner.craft.tongue import translate
from studio_planner.services.editing.places import changed_place
from studio_planner.services.log_signs import not_a_log
from studio_planner.services.studio_files import read_bytes
from studio_planner.storage.log_columns import beginning_of, find_table
from studio_planner.storage.log_merging import Gap, Overlap, merged_log, overlapping
from studio_planner.storage.log_preview import LogAnswers, LogUnit, RoomLogPreview, SkippedRow
from studio_planner.storage.log_stamps import DateOrder
from studio_planner.storage.room_log import LARGEST_BYTES, preview_room_log
from studio_planner.storage.text_bytes import text_of

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence
    from pathlib import Path

    from studio_planner.craft.places import Place
    from studio_planner.services.editing.changes import Change

__all__ = [
    "DateOrder",
    "Gap",
    "LogAnswers",
    "LogFile",
    "LogLook",
    "LogUnit",
    "Overlap",
    "SkippedRow",
]

MANY_READINGS = 20_000
"""From so many readings on a log is thinned unless the maker says otherwise."""

THIN_MINUTES = 10
"""A thinned log keeps one reading in so many minutes; a room's air is no faster than that."""

AHEAD = timedelta(days=1)
"""A logger that is told another zone is ahead by less; what lies further was never read."""

_LONGEST_GAPS = 8


@dataclass(frozen=True, slots=True)
class LogFile:
    """A file that may be a log: its name, its bytes, and about how many lines it has."""

    name: str
    data: bytes = field(repr=False)

    @property
    def lines(self) -> int:
        """About how many lines it has."""
        return self.data.count(b"\n") + 1


@dataclass(frozen=True, slots=True, kw_only=True)
class LogAsked:
    """What the maker says of a log: answers, whether times without a zone are UTC, thinning.

    `thin` None leaves it to the number of readings.
    """

    answers: LogAnswers = field(default_factory=LogAnswers)
    in_utc: bool = False
    thin: bool | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class LogLook:
    """A log that was looked at: what it was found to be, and what would be kept of it.

    `columns` are those that may hold temperature or humidity; `existing` is the record that it
    was laid over, as `overlap` says; `new` is what it adds, `merged`
    the place's whole record as it would be, `overlapping` how many of the new ones fall where
    it was read already (`present_stay`: they are not taken); `thinned` tells whether readings
    were left out. `now` is when it was looked at; None asks nothing of what lies ahead.
    """

    name: str
    found: RoomLogPreview = field(repr=False)
    columns: tuple[str, ...]
    existing: tuple[Reading, ...] = field(repr=False)
    overlap: Overlap
    new: tuple[Reading, ...] = field(repr=False)
    merged: tuple[Reading, ...] = field(repr=False)
    overlapping: int
    present_stay: bool
    thinned: bool
    now: datetime | None = None

    @property
    def questions(self) -> tuple[str, ...]:
        """What has to be answered, or put right, before anything is kept."""
        return (*self.found.questions, *self._ahead())

    def _ahead(self) -> Iterable[str]:
        """Nothing was read tomorrow: the logger's clock or the order of dates is wrong."""
        readings = self.found.readings
        if self.now is None or not readings or readings[-1].when <= self.now + AHEAD:
            return
        text = translate(
            "logs",
            "It runs from {first} to {last}, and today is {today}. Choose the other order of "
            "its dates, or put the logger's clock right, correct the dates in the file and "
            "drop it again.",
        )
        yield text.format(
            first=readings[0].when.date(), last=readings[-1].when.date(), today=self.now.date()
        )

    @property
    def ready(self) -> bool:
        """Whether it can be taken as it is."""
        return not self.questions and self.added > 0

    @property
    def added(self) -> int:
        """How many of its readings would be taken."""
        return len(self.new) - (self.overlapping if self.present_stay else 0)

    @property
    def longest_gaps(self) -> tuple[Gap, ...]:
        """The longest stretches without readings, in the order of time."""
        longest = sorted(self.found.gaps, key=lambda gap: gap.start - gap.end)[:_LONGEST_GAPS]
        return tuple(sorted(longest, key=lambda gap: gap.start))


def log_file(path: Path) -> LogFile:
    """Read a file that is to be a log; StudioFileError says what it is when it is none."""
    if path.is_dir():
        raise StudioFileError(
            translate(
                "logs", "{path} is a folder. What is wanted here is one CSV file of a logger."
            ).format(path=path.name)
        )
    data = read_bytes(path, LARGEST_BYTES)
    wrong = not_a_log(data)
    if wrong:
        raise StudioFileError(
            translate("logs", "{path} {wrong}").format(path=path.name, wrong=wrong)
        )
    return LogFile(path.name, data)


def look_at(
    file: LogFile,
    zone: ZoneInfo,
    existing: Sequence[Reading],
    asked: LogAsked,
    now: datetime | None = None,
) -> LogLook:
    """Look at a log for a place whose record is `existing`; takes seconds for a long one.

    What lies more than a day after `now` (aware) is asked about.
    StudioFileError in one sentence that names the file when it is no log.
    """
    read_as = ZoneInfo("UTC") if asked.in_utc else zone
    try:
        found = preview_room_log(file.data, read_as, answers=asked.answers)
        table = find_table(
            beginning_of(text_of(file.data, translate("log", "The room log")).text)
        )
    except StudioFileError as error:
        raise StudioFileError(
            translate("logs", "{file}: {error}").format(file=file.name, error=error)
        ) from error
    thin = len(found.readings) > MANY_READINGS if asked.thin is None else asked.thin
    new = thinned(found.readings) if thin else found.readings
    numeric = table.numeric_columns()
    return LogLook(
        name=file.name,
        found=found,
        columns=tuple(table.name(column) for column in numeric),
        existing=tuple(existing),
        overlap=asked.answers.overlap,
        new=new,
        merged=merged_log(existing, new, asked.answers.overlap) if new else tuple(existing),
        overlapping=overlapping(existing, new),
        present_stay=asked.answers.overlap is Overlap.EXISTING_WINS,
        thinned=len(new) < len(found.readings),
        now=now,
    )


def thinned(readings: Sequence[Reading], minutes: int = THIN_MINUTES) -> tuple[Reading, ...]:
    """The first reading in every so many minutes, and the very last one."""
    step = minutes * 60
    kept: list[Reading] = []
    last: int | None = None
    for reading in readings:
        cell = int(reading.when.timestamp()) // step
        if cell != last:
            kept.append(reading)
            last = cell
    if readings and kept[-1] is not readings[-1]:
        kept.append(readings[-1])
    return tuple(kept)


def taken(place: Place, look: LogLook, overlap: Overlap) -> Change:
    """Take a log as one change; it is laid over the record that the place has then."""
    return changed_place(
        place.key,
        translate("changes", "{place}, readings of {look}").format(
            place=place.name, look=look.name
        ),
        lambda now: replace(now, readings=_laid_over(now.readings, look, overlap)),
    )


def _laid_over(
    readings: tuple[Reading, ...], look: LogLook, overlap: Overlap
) -> tuple[Reading, ...]:
    # Mostly it is the record that was looked at, with the answers that were given then.
    if readings is look.existing and overlap is look.overlap:
        return look.merged
    return merged_log(readings, look.new, overlap)


def typed_reading(
    place: Place, when: datetime, celsius: float, humidity: float | None
) -> Change:
    """Write one reading down, at the minute of `when`; it replaces one of that minute."""
    minute = when.astimezone(UTC).replace(second=0, microsecond=0)
    reading = Reading(when=minute, celsius=celsius, humidity_pct=humidity)

    def make(now: Place) -> Place:
        others = [
            one
            for one in now.readings
            if not timedelta(0) <= one.when - minute < timedelta(minutes=1)
        ]
        whole = sorted([*others, reading], key=lambda one: one.when.timestamp())
        return replace(now, readings=tuple(whole))

    return changed_place(
        place.key, translate("changes", "{place}, a reading").format(place=place.name), make
    )


def without_readings(place: Place) -> Change:
    """Forget all that was read in a place."""
    return changed_place(
        place.key,
        translate("changes", "{place}, all readings").format(place=place.name),
        lambda now: replace(now, readings=()),
    )


def without_last_reading(place: Place) -> Change:
    """Take the last reading back."""
    return changed_place(
        place.key,
        translate("changes", "{place}, the last reading").format(place=place.name),
        lambda now: replace(now, readings=now.readings[:-1]),
    )
