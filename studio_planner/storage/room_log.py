"""A logger's CSV file as readings of a room: looked at first, kept only when the maker agrees.

The plain form is time,temperature_c[,humidity_pct] with ISO 8601 times and a zone. Whatever
else loggers write is worked out by evidence, and all that was worked out is in the preview.
"""

from __future__ import annotations

from dataclasses import dataclass
from statistics import median
from typing import TYPE_CHECKING

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.places import Reading
from studio_planner.craft.tongue import marked, translate
from studio_planner.storage.log_cells import RoomCells
from studio_planner.storage.log_columns import (
    DELIMITERS,
    LogTable,
    cell_at,
    decimal_mark,
    figure_in,
    find_humidity,
    find_table,
    find_temperature,
    unit_named,
)
from studio_planner.storage.log_merging import gaps_in, merged_log, overlapping
from studio_planner.storage.log_preview import LogAnswers, LogUnit, RoomLogPreview, SkippedRow
from studio_planner.storage.log_stamps import DateOrder, Stamp, zone_in_heading
from studio_planner.storage.log_times import WallClock, date_order, newest_first, usual_step
from studio_planner.storage.text_bytes import DecodedText, text_of

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import datetime, timezone
    from zoneinfo import ZoneInfo

LARGEST_BYTES = 64 * 2**20
"""Larger logs are refused; a year of readings every minute is a third of it."""

_SHOWN = 120
"""Letters of a skipped row that are shown."""

_WARMEST_UNNAMED = 45.0
"""Half of all figures above this are hardly a room's in °C: the unit is asked for (ours)."""

_NO_UNIT = marked("log", "The heading names no unit; are the temperatures °C or °F?")

_ORDERS = (marked("log", "day first"), marked("log", "month first"))


def preview_room_log(
    data: bytes,
    zone: ZoneInfo,
    *,
    existing: Sequence[Reading] = (),
    answers: LogAnswers | None = None,
) -> RoomLogPreview:
    """Look at a log; rows without a zone of their own are read as local times of `zone`.

    StudioFileError when it is not a log at all, or when an answer names no column of it.
    """
    if len(data) > LARGEST_BYTES:
        raise StudioFileError("The room log is larger than 64 MiB; split it and try again.")
    decoded = text_of(data, translate("log", "The room log"))
    table = find_table(decoded.text)
    return _Look(decoded, table, zone, answers or LogAnswers()).preview(tuple(existing))


@dataclass(frozen=True, slots=True)
class _Read:
    line: int
    cells: Sequence[str]
    stamp: Stamp
    celsius: float
    humidity: float | None


class _Look:
    """One look at a log; collects what was skipped, noted and asked on the way."""

    def __init__(
        self, decoded: DecodedText, table: LogTable, zone: ZoneInfo, answers: LogAnswers
    ) -> None:
        self._decoded = decoded
        self._table = table
        self._zone = zone
        self._answers = answers
        self._skipped: list[SkippedRow] = []
        self._notes: list[str] = []
        self._questions: list[str] = []
        self._temperature = self._find_temperature()
        self._humidity = find_humidity(table, self._temperature, answers.humidity_column)
        self._unit = self._find_unit()
        self._cells = RoomCells(self._temperature, self._humidity, self._unit)
        self._offset = self._find_offset()

    def preview(self, existing: tuple[Reading, ...]) -> RoomLogPreview:
        rows = self._rows() if self._temperature is not None else []
        order = date_order([row.stamp for row in rows], self._answers.date_order)
        if order.question:
            self._questions.append(order.question)
        readings = () if self._questions else self._readings(rows, order.order)
        table, temperature, humidity = self._table, self._temperature, self._humidity
        return RoomLogPreview(
            encoding=self._decoded.encoding,
            delimiter=DELIMITERS[table.delimiter],
            decimal_mark="." if temperature is None else decimal_mark(table, temperature),
            heading_line=table.heading_line,
            time_column=" and ".join(table.name(column) for column in table.time),
            temperature_column="" if temperature is None else table.name(temperature),
            humidity_column=None if humidity is None else table.name(humidity),
            unit=self._unit,
            zone=self._zone_words(rows),
            local_rows=self._local(rows),
            date_order=_order_words(rows, order.order),
            readings=readings,
            merged=merged_log(existing, readings, self._answers.overlap),
            overlapping=overlapping(existing, readings),
            gaps=gaps_in(readings),
            skipped=tuple(sorted(self._skipped, key=lambda row: row.line)),
            notes=tuple(self._notes),
            questions=tuple(self._questions),
        )

    def _find_temperature(self) -> int | None:
        found = find_temperature(self._table, self._answers.temperature_column)
        if found.question:
            self._questions.append(found.question)
        elif not self._table.heading:
            self._notes.append(
                translate(
                    "log", "There is no heading: the columns were told by what is in them."
                )
            )
        return found.column

    def _find_unit(self) -> LogUnit:
        if self._answers.unit is not None or self._temperature is None:
            return self._answers.unit or LogUnit.CELSIUS
        named = unit_named(self._table, self._temperature)
        if named:
            return LogUnit(named)
        figures = [figure_in(cell_at(c, self._temperature)) for _, c in self._table.rows]
        values = [figure.value for figure in figures if figure]
        if values and median(values) > _WARMEST_UNNAMED:
            self._questions.append(translate("log", _NO_UNIT))
        else:
            self._notes.append(translate("log", "The heading names no unit; °C was taken."))
        return LogUnit.CELSIUS

    def _find_offset(self) -> timezone | None:
        named = (zone_in_heading(self._table.name(column)) for column in self._table.time)
        return next((zone for zone in named if zone is not None), None)

    def _rows(self) -> list[_Read]:
        found = []
        unread = 0
        for line, cells in self._table.rows:
            stamp = self._table.stamp(cells)
            celsius = self._cells.celsius(cells)
            humidity = self._cells.humidity_pct(cells)
            if stamp is None:
                self._skip(line, cells, translate("log", "its time cannot be read"))
            elif isinstance(celsius, str):
                self._skip(line, cells, celsius)
            else:
                unread += humidity is None and self._humidity is not None
                found.append(_Read(line, cells, stamp, celsius, humidity))
        if unread:
            self._notes.append(
                translate("log", "{unread} readings have no usable humidity.").format(
                    unread=unread
                )
            )
        return found

    def _readings(self, rows: list[_Read], order: DateOrder) -> tuple[Reading, ...]:
        walls = [row.stamp.instant() or row.stamp.wall(order) for row in rows]
        plain = [wall and wall.replace(tzinfo=None) for wall in walls]
        if newest_first(plain):
            rows, plain = rows[::-1], plain[::-1]
        clock = WallClock(self._zone, self._offset, order, usual_step(plain))
        moments = clock.moments([row.stamp for row in rows])
        found: list[tuple[datetime, _Read]] = []
        for row, moment in zip(rows, moments, strict=True):
            if moment.when is None:
                self._skip(row.line, row.cells, moment.why)
            else:
                found.append((moment.when, row))
        return self._sorted(found)

    def _sorted(self, found: list[tuple[datetime, _Read]]) -> tuple[Reading, ...]:
        ordered = sorted(found, key=lambda pair: pair[0])
        if ordered != found:
            self._notes.append(
                translate("log", "The rows were not in the order of time; they were sorted.")
            )
        kept: dict[datetime, _Read] = {}
        for when, row in ordered:
            if when in kept:
                self._skip(
                    row.line,
                    row.cells,
                    translate("log", "line {line} has the same time").format(
                        line=kept[when].line
                    ),
                )
            else:
                kept[when] = row
        return tuple(
            Reading(when=when, celsius=row.celsius, humidity_pct=row.humidity)
            for when, row in kept.items()
        )

    def _zone_words(self, rows: Sequence[_Read]) -> str:
        if self._local(rows):
            return translate("log", "{key}, local times").format(key=self._zone.key)
        return (
            translate("log", "written in every row")
            if self._offset is None
            else translate("log", "{offset}, from the heading").format(offset=self._offset)
        )

    def _local(self, rows: Sequence[_Read]) -> int:
        if self._offset is not None:
            return 0
        return sum(r.stamp.offset is None and r.stamp.instant() is None for r in rows)

    def _skip(self, line: int, cells: Sequence[str], why: str) -> None:
        text = " | ".join(cells)[:_SHOWN]
        self._skipped.append(SkippedRow(line=line, text=text, why=why))


def _order_words(rows: Sequence[_Read], order: DateOrder) -> str:
    if any(row.stamp.order is None and row.stamp.year for row in rows):
        return translate("log", str(order))
    return (
        translate("log", "seconds since 1970")
        if any(r.stamp.instant() for r in rows)
        else translate("log", "unmistakable")
    )
