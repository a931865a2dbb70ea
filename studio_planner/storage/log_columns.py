"""Finding the table in a logger's file: delimiter, heading, and which column is what."""

from __future__ import annotations

import csv
import io
import re
from collections import Counter
from dataclasses import dataclass
from functools import lru_cache
from typing import TYPE_CHECKING

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.tongue import quoted, translate
from studio_planner.storage.log_stamps import Stamp, is_clock, is_date, stamp_in
from studio_planner.storage.text_bytes import plain_number

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Sequence

DELIMITERS = {";": "semicolon", "\t": "tab", ",": "comma"}
"""The delimiters that are looked for, with their names."""

_SAMPLE = 500
_TELLING = 100_000
_FIGURES_KNOWN = 1 << 12
_UNIT = re.compile(r"\s*(?:[°º]?\s?(?P<unit>[CF])|%(?:\s?[Rr][Hh])?)$")
_OTHER = re.compile(r"dew|taupunkt|ros[ée]e|wet|set.?point|heat index|max|min\b")
_TEMPERATURE = re.compile(r"temp|[°º]\s?[cf]|celsius|fahrenheit|\bdeg|^t$")
_HUMIDITY = re.compile(r"hum|feucht|\brh\b|^rf\b|r\.h\.|%")
_FAHRENHEIT = re.compile(r"[°º]\s?f\b|fahrenheit|[\[(]f[\])]|_f\b|deg\.? ?f\b|[ ,]f$")
_CELSIUS = re.compile(r"[°º]\s?c\b|celsius|[\[(]c[\])]|_c\b|deg\.? ?c\b|[ ,]c$")

Row = tuple[int, tuple[str, ...]]
"""The number of a line and its cells."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LogTable:
    """The rows of a log and the heading over them; `time` is one column, or date and clock."""

    delimiter: str
    heading: tuple[str, ...]
    heading_line: int | None
    rows: tuple[Row, ...]
    time: tuple[int, ...]

    def name(self, column: int) -> str:
        """What the heading calls a column, or its number."""
        named = column < len(self.heading) and self.heading[column].strip()
        return str(named or f"column {column + 1}")

    def stamp(self, cells: Sequence[str]) -> Stamp | None:
        """The stamp of a row."""
        return stamp_at(cells, self.time)

    def numeric_columns(self) -> list[int]:
        """Columns other than the time that mostly hold numbers."""
        rows = [cells for _, cells in self.rows[:_SAMPLE]]
        width = max((len(cells) for cells in rows), default=0)
        counts = {
            column: sum(figure_in(cell_at(cells, column)) is not None for cells in rows)
            for column in range(width)
            if column not in self.time
        }
        return [column for column, count in counts.items() if count * 2 >= len(rows) > 0]


@dataclass(frozen=True, slots=True)
class Figure:
    """A number in a cell, and the unit written behind it ("C", "F" or nothing)."""

    value: float
    unit: str = ""


@dataclass(frozen=True, slots=True)
class ColumnFound:
    """A column, or None; `question` asks the maker when nothing decides it."""

    column: int | None
    question: str = ""


@lru_cache(maxsize=_FIGURES_KNOWN)
def figure_in(text: str) -> Figure | None:
    """The number in a cell, with °C, °F or % behind it or not; None when there is none."""
    unit = _UNIT.search(text)
    number = plain_number(text[: unit.start()] if unit else text)
    return None if number is None else Figure(number, (unit and unit["unit"]) or "")


def find_table(text: str) -> LogTable:
    """Find the table in a text; StudioFileError when nothing looks like a log of a room."""
    beginning = beginning_of(text)
    found = _found(beginning)
    if len(beginning) < len(text):
        # Of a long log the beginning tells the delimiter, and all of it is cut up only once.
        found = _found(text) if found is None else _table(text, found.delimiter)[1]
    if found is None:
        raise StudioFileError(
            translate(
                "log",
                "The room log has no rows with a time and a temperature. Export it as CSV "
                "with a heading such as time,temperature_c,humidity_pct and try again.",
            )
        )
    _refuse_split_decimals(found)
    return found


def beginning_of(text: str) -> str:
    """The first lines of a long text: enough to tell its columns."""
    end = text.find("\n", _TELLING)
    return text if end < 0 else text[:end]


def _found(text: str) -> LogTable | None:
    tables = [_table(text, delimiter) for delimiter in DELIMITERS]
    scored = [(score, table) for score, table in tables if table is not None and score]
    return max(scored, key=lambda pair: pair[0])[1] if scored else None


def _table(text: str, delimiter: str) -> tuple[int, LogTable | None]:
    rows = _rows(text, delimiter)
    time = _time_columns([cells for _, cells in rows[:_SAMPLE]])
    if time is None:
        return (0, None)
    first = next(i for i, (_, cells) in enumerate(rows) if stamp_at(cells, time))
    heading_line, heading = _heading(rows[:first])
    table = LogTable(
        delimiter=delimiter,
        heading=heading,
        heading_line=heading_line,
        rows=tuple(rows[first:]),
        time=time,
    )
    score = sum(bool(table.stamp(c)) for _, c in table.rows[:_SAMPLE])
    return (score if table.numeric_columns() or heading else 0, table)


def _rows(text: str, delimiter: str) -> list[Row]:
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=delimiter)
    try:
        return [
            (reader.line_num, stripped)
            for cells in reader
            if any(stripped := tuple(map(str.strip, cells)))
        ]
    except csv.Error as error:
        raise StudioFileError(
            translate("log", "The room log cannot be read at line {line_num}: {error}.").format(
                line_num=reader.line_num, error=error
            )
        ) from error


def _time_columns(rows: Iterable[Sequence[str]]) -> tuple[int, ...] | None:
    whole: Counter[tuple[int, ...]] = Counter()
    split: Counter[tuple[int, ...]] = Counter()
    for cells in rows:
        whole.update((i,) for i, cell in enumerate(cells) if stamp_in(cell))
        dates = [i for i, cell in enumerate(cells) if is_date(cell)]
        clocks = [i for i, cell in enumerate(cells) if is_clock(cell)]
        if dates and clocks:
            split[(dates[0], clocks[0])] += 1
    found = whole or split
    # most_common keeps the order of first sight among equals, so the leftmost column wins.
    return found.most_common(1)[0][0] if found else None


def stamp_at(cells: Sequence[str], time: tuple[int, ...]) -> Stamp | None:
    """The stamp in one column, or in a date column and a clock column."""
    if len(time) == 1:
        return stamp_in(cell_at(cells, time[0]))
    return stamp_in(" ".join(cell_at(cells, column) for column in time))


def cell_at(cells: Sequence[str], column: int | None) -> str:
    """The text of a cell; empty where a row is shorter, or where there is no such column."""
    return cells[column] if column is not None and column < len(cells) else ""


def _heading(before: Sequence[Row]) -> tuple[int | None, tuple[str, ...]]:
    named = [row for row in before if sum(_has_letters(cell) for cell in row[1]) > 1]
    if not named:
        return (None, ())
    line, cells = named[-1]
    last = before[-1][1]
    if last is not cells and len(last) == len(cells):  # a row of units under the names
        cells = tuple(f"{a} {b}".strip() for a, b in zip(cells, last, strict=True))
    elif len(named) > 1 and len(named[-2][1]) == len(cells) and _only_units(cells):
        line, above = named[-2]
        cells = tuple(f"{a} {b}".strip() for a, b in zip(above, cells, strict=True))
    return (line, cells)


def _only_units(cells: Sequence[str]) -> bool:
    return all(re.fullmatch(r"\W*(?:[cf]|rh|utc|gmt|%)?\W*", cell.lower()) for cell in cells)


def _has_letters(cell: str) -> bool:
    return any(character.isalpha() for character in cell)


def _refuse_split_decimals(table: LogTable) -> None:
    names = len([name for name in table.heading if name])
    longer = sum(len(cells) > names for _, cells in table.rows[:_SAMPLE])
    if table.delimiter == "," and names and longer * 2 > len(table.rows[:_SAMPLE]):
        raise StudioFileError(
            translate(
                "log",
                "The room log has more columns in its rows than in its heading: commas seem "
                "to stand for decimals too. Export it with semicolons or decimal points and "
                "try again.",
            )
        )


def find_temperature(table: LogTable, said: str | None) -> ColumnFound:
    """The column with the temperature."""
    if said is not None:
        return ColumnFound(_column_said(table, said))
    named = _named(table, lambda name: _TEMPERATURE.search(name) and not _HUMIDITY.search(name))
    if len(named) > 1:
        names = ", ".join(quoted(table.name(column)) for column in named)
        return ColumnFound(
            None,
            translate("log", "Which column is the room's temperature: {names}?").format(
                names=names
            ),
        )
    if named:
        return ColumnFound(named[0])
    later = [column for column in table.numeric_columns() if column > table.time[-1]]
    if table.heading or not later:
        names = ", ".join(quoted(table.name(c)) for c in table.numeric_columns()) or "none"
        return ColumnFound(
            None,
            translate(
                "log", "No heading says temperature; which column is it? There are: {names}."
            ).format(names=names),
        )
    return ColumnFound(later[0])


def find_humidity(table: LogTable, temperature: int | None, said: str | None) -> int | None:
    """The column with the relative humidity, or None when there is none."""
    if said is not None:
        return _column_said(table, said)
    named = _named(table, _HUMIDITY.search)
    if named or table.heading or temperature is None:
        return named[0] if named else None
    later = [column for column in table.numeric_columns() if column > temperature]
    return later[0] if later else None


def unit_named(table: LogTable, column: int) -> str:
    """The unit that the heading or the cells of a column name: "C", "F", or nothing."""
    name = table.name(column).lower()
    if _FAHRENHEIT.search(name):
        return "F"
    if _CELSIUS.search(name):
        return "C"
    figures = (figure_in(cell_at(cells, column)) for _, cells in table.rows[:_SAMPLE])
    units = Counter(figure.unit for figure in figures if figure and figure.unit)
    return units.most_common(1)[0][0] if units else ""


def decimal_mark(table: LogTable, column: int) -> str:
    """The decimal mark of a column: a comma if any number in it has one, else a point."""
    cells = (cell_at(cells, column) for _, cells in table.rows)
    return "," if any("," in cell and figure_in(cell) for cell in cells) else "."


def _named(table: LogTable, matches: Callable[[str], object]) -> list[int]:
    names = [name.lower() for name in table.heading]
    return [
        column
        for column, name in enumerate(names)
        if column not in table.time and matches(name) and not _OTHER.search(name)
    ]


def _column_said(table: LogTable, said: str) -> int:
    names = [name.strip().lower() for name in table.heading]
    if said.strip().lower() in names:
        return names.index(said.strip().lower())
    width = max(len(cells) for _, cells in table.rows)
    if said.strip().isdecimal() and 1 <= int(said) <= width:
        return int(said) - 1
    known = ", ".join(quoted(table.name(column)) for column in range(width))
    raise StudioFileError(
        translate("log", "The room log has no column “{said}”; it has {known}.").format(
            said=said, known=known
        )
    )
