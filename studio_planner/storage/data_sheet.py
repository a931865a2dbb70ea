"""The figures of a data sheet as CSV: stage,temperature,unit,from,to,time_unit[,mass_g].

The unit is C or F, the time unit min, h or d, or one of their usual spellings; `to` may be
empty, and so may `mass_g`. A stage may be written with spaces. Rows are taken as they stand:
whether they make sense together is for the product to say.
"""

from __future__ import annotations

import csv
import io
import re
from typing import TYPE_CHECKING

from studio_planner.craft.errors import BrokenRule, InvalidEntry, StudioFileError
from studio_planner.craft.products import SheetPoint
from studio_planner.science.stages import Stage
from studio_planner.science.units import (
    TemperatureUnit,
    TimeUnit,
    celsius_from,
    hours_from,
)
from studio_planner.storage.text_bytes import plain_number, text_of

if TYPE_CHECKING:
    from collections.abc import Iterator

COLUMNS = ("stage", "temperature", "unit", "from", "to", "time_unit", "mass_g")
"""The columns; the last may be missing."""

_LARGEST_BYTES = 4 * 2**20
_SEPARATORS = re.compile(r"[\s_-]+")
_COLUMN_OF = {"celsius": "temperature", "from_hours": "from", "to_hours": "to"}
_TIME_UNITS = {
    **dict.fromkeys(("min", "mins", "minute", "minutes"), TimeUnit.MINUTE),
    **dict.fromkeys(("h", "hr", "hrs", "hour", "hours"), TimeUnit.HOUR),
    **dict.fromkeys(("d", "day", "days"), TimeUnit.DAY),
}
_STAGES = "use one of " + ", ".join(Stage)


def read_data_sheet(data: bytes) -> tuple[SheetPoint, ...]:
    """Read the figures of a sheet; temperatures become °C and times hours.

    StudioFileError when it is not such a table at all, InvalidEntry with every bad cell by row
    and column when it is.
    """
    if len(data) > _LARGEST_BYTES:
        raise StudioFileError("The data sheet is larger than 4 MiB, which no data sheet is.")
    text = text_of(data, "The data sheet").text
    broken: list[BrokenRule] = []
    points = [
        point
        for number, cells in _rows(text)
        if (point := _Row(number, cells, broken).point()) is not None
    ]
    if broken:
        raise InvalidEntry("data sheet", broken)
    if not points:
        raise StudioFileError(
            "The data sheet has no figures under its heading; add a row each."
        )
    return tuple(points)


def _rows(text: str) -> Iterator[tuple[int, dict[str, str]]]:
    # splitlines would also cut at characters that are ordinary inside a cell.
    delimiter = _delimiter(text)
    heading: list[str] | None = None
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=delimiter)
    try:
        for cells in reader:
            if not any(cell.strip() for cell in cells):
                continue
            if heading is None:
                heading = _checked_heading(cells)
            else:
                yield reader.line_num, _by_column(heading, cells)
    except csv.Error as error:
        raise StudioFileError(
            f"The data sheet cannot be read at line {reader.line_num}: {error}."
        ) from error


def _delimiter(text: str) -> str:
    first = next((line for line in text.split("\n") if line.strip()), "")
    return max(",;\t", key=first.count)


def _checked_heading(cells: list[str]) -> list[str]:
    heading = [cell.strip().lower() for cell in cells]
    needed = ", ".join(COLUMNS[:-1])
    missing = [name for name in COLUMNS[:-1] if name not in heading]
    unknown = [name for name in heading if name and name not in COLUMNS]
    if missing or unknown or len(set(heading)) != len(heading):
        wrong = [f"{name} is missing" for name in missing]
        wrong += [f"{ascii(name)[:40]} is not known" for name in unknown]
        raise StudioFileError(
            f"The data sheet's first row must name the columns {needed} and, if cup life is "
            f"given, mass_g; {', '.join(wrong) or 'a column is named twice'}."
        )
    return heading


def _by_column(heading: list[str], cells: list[str]) -> dict[str, str]:
    padded = [*cells, *[""] * (len(heading) - len(cells))]
    found = dict(zip(heading, (cell.strip() for cell in padded), strict=False))
    more = [cell for cell in padded[len(heading) :] if cell.strip()]
    return found | ({"": "too many"} if more else {})


class _Row:
    """One row; whatever is wrong with it is noted with its column."""

    def __init__(self, number: int, cells: dict[str, str], broken: list[BrokenRule]) -> None:
        self._number = number
        self._cells = cells
        self._broken = broken

    def point(self) -> SheetPoint | None:
        """The figure of this row, or None when something was noted."""
        before = len(self._broken)
        if self._cells.get(""):
            self._note("columns", "there are more cells than columns; check the commas.")
        stage, celsius = self._stage(), self._celsius()
        start, end = self._hours("from"), self._hours("to", optional=True)
        mass = self._number_in("mass_g", optional=True)
        if start is not None and end is not None and end < start:
            self._note(
                "to", "it is less than from; a range goes from the short to the long end."
            )
        if len(self._broken) > before or stage is None or celsius is None or start is None:
            return None
        try:
            return SheetPoint(
                stage=stage, celsius=celsius, from_hours=start, to_hours=end, mass_g=mass
            )
        except InvalidEntry as error:
            for rule in error.broken:
                self._note(_COLUMN_OF.get(rule.field, rule.field), rule.sentence)
            return None

    def _stage(self) -> Stage | None:
        name = _SEPARATORS.sub("_", self._cells["stage"].lower())
        if name in set(Stage):
            return Stage(name)
        known = any(rule.sentence.endswith(f"{_STAGES}.") for rule in self._broken)
        # All fifteen are named once; under many bad rows they would hide everything else.
        more = "" if known else f"; {_STAGES}"
        self._note("stage", f"{ascii(self._cells['stage'])[:40]} is not a stage{more}.")
        return None

    def _celsius(self) -> float | None:
        value = self._number_in("temperature")
        unit = self._cells["unit"].upper().removeprefix("°")
        if unit not in set(TemperatureUnit):
            self._note("unit", f"{ascii(unit)[:20]} is not a unit of temperature; use C or F.")
            return None
        return None if value is None else celsius_from(value, unit)

    def _hours(self, column: str, *, optional: bool = False) -> float | None:
        value = self._number_in(column, optional=optional)
        unit = _TIME_UNITS.get(self._cells["time_unit"].lower().removesuffix("."))
        if unit is None:
            if column == "from":
                name = ascii(self._cells["time_unit"])[:20]
                self._note("time_unit", f"{name} is not a unit of time; use min, h or d.")
            return None
        return None if value is None else hours_from(value, unit)

    def _number_in(self, column: str, *, optional: bool = False) -> float | None:
        text = self._cells.get(column, "")
        if not text and optional:
            return None
        number = plain_number(text)
        if number is None:
            self._note(column, f"{ascii(text)[:40]} is not a number.")
        return number

    def _note(self, column: str, sentence: str) -> None:
        self._broken.append(BrokenRule(f"row {self._number}, {column}", sentence))
