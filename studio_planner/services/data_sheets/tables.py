"""Figures in a table copied from a spreadsheet: stages by temperatures, or the other way."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from studio_planner.craft.tongue import translate
from studio_planner.services.data_sheets.findings import (
    NO_TEMPERATURE,
    Finding,
    Unread,
    window_findings,
)
from studio_planner.services.data_sheets.marks import masses_in, warmths_in
from studio_planner.services.data_sheets.times import HAS_UNIT, printed_time, unit_in
from studio_planner.services.data_sheets.words import stages_named

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.services.data_sheets.words import Named

_WIDE_GAP = re.compile(r"\t| {2,}")
_NOTHING = {"", "-", "–", "—", "n/a", "na", "n.a."}  # noqa: RUF001 - dashes as printed
_BOTH_ENDS = re.compile(r"\s+(?:to|/|until)\s+|\s*/\s*", re.IGNORECASE)
_FEWEST = 2

_Row = tuple[int, str, list[str]]


def read_table(
    lines: Sequence[str], celsius: float | None
) -> tuple[list[Finding], list[Unread]] | None:
    """Read a table whose first row names temperatures, or stages; None when it is none.

    Cells are parted by tabs, semicolons, bars, or two blanks and more.
    """
    rows = [(n, line.strip(), _cells(line)) for n, line in enumerate(lines, 1) if line.strip()]
    head = next((i for i, row in enumerate(rows) if len(row[2]) >= _FEWEST), None)
    if head is None or any(HAS_UNIT.search(cell) for cell in rows[head][2]):
        return None
    cells = rows[head][2][1:]
    warm = [warmths_in(_with_unit(cell, rows[head][2][0])) for cell in cells]
    before = [
        Unread(n, line, translate("sheets", "it is not a row of the table."))
        for n, line, _ in rows[:head]
    ]
    if sum(len(found) == 1 for found in warm) >= max(1, len(cells) - 1) and any(warm):
        columns = [found[0].celsius if len(found) == 1 else None for found in warm]
        taken = _stage_rows(rows[head + 1 :], columns)
    elif all(len(stages_named(cell)) == 1 for cell in cells):
        named = [stages_named(cell)[0] for cell in cells]
        labels = rows[head][2]
        taken = _warm_rows(rows[head + 1 :], labels, named, celsius)
    else:
        return None
    return taken.findings, [*before, *taken.unread]


def _cells(line: str) -> list[str]:
    stripped = line.strip("\n").strip(" ")
    for mark in ("\t", ";", "|"):
        if mark in stripped:
            return [cell.strip() for cell in stripped.strip("|").split(mark)]
    return [cell.strip() for cell in _WIDE_GAP.split(stripped)]


def _with_unit(cell: str, corner: str) -> str:
    """A bare number under a corner such as "°C" is a temperature in that unit."""
    unit = re.search(r"°\s*([CF])|\b([CF])\b", corner)
    bare = re.fullmatch(r"[-−]?\d+(?:[.,]\d+)?", cell)  # noqa: RUF001 - a minus as printed
    return f"{cell} °{unit[1] or unit[2]}" if unit and bare else cell


def _stage_rows(rows: list[_Row], columns: list[float | None]) -> _Taken:
    taken = _Taken()
    for number, line, cells in rows:
        named = stages_named(cells[0])
        if len(named) != 1:
            taken.leave(
                number, line, translate("sheets", "its first cell names no stage known here.")
            )
            continue
        for at, cell in zip(columns, cells[1:], strict=False):
            taken.take((number, line), named[0], cells[0], at, cell)
    return taken


def _warm_rows(
    rows: list[_Row], labels: list[str], named: list[Named], celsius: float | None
) -> _Taken:
    taken = _Taken()
    for number, line, cells in rows:
        warm = warmths_in(_with_unit(cells[0], labels[0]))
        at = warm[0].celsius if len(warm) == 1 and not warm[0].span else celsius
        for stage, label, cell in zip(named, labels[1:], cells[1:], strict=False):
            taken.take((number, line), stage, label, at, cell)
    return taken


class _Taken:
    """The cells of a table, read into figures or left unread."""

    def __init__(self) -> None:
        self.findings: list[Finding] = []
        self.unread: list[Unread] = []

    def leave(self, number: int, line: str, reason: str) -> None:
        self.unread.append(Unread(number, line, reason))

    def take(
        self, row: tuple[int, str], named: Named, label: str, at: float | None, cell: str
    ) -> None:
        """Read one cell of a row; `label` is what the table calls its stage."""
        if cell.lower() in _NOTHING:
            return
        if at is None:
            self.leave(*row, translate("sheets", NO_TEMPERATURE))
            return
        try:
            self.findings += _of_cell(row, named, label, at, cell)
        except ValueError as error:
            self.leave(*row, str(error))


def _of_cell(
    row: tuple[int, str], named: Named, label: str, at: float, cell: str
) -> list[Finding]:
    unit = unit_in(label) or "h"
    if named.both:
        times = [printed_time(part, unit) for part in _ends(cell)]
        return window_findings(row, named, at, times)
    masses = masses_in(label)
    grams = masses[0].grams if len(masses) == 1 else None
    return [Finding(*row, named.stages[0], at, printed_time(cell, unit), grams)]


def _ends(cell: str) -> list[str]:
    """The two ends of a window, "4-6 h to 24 h", or the one time that is there."""
    parts = _BOTH_ENDS.split(cell)
    if len(parts) != _FEWEST:
        return [cell]
    unit = re.search(r"[a-z]+\.?$", parts[1].strip(), re.IGNORECASE)
    first = parts[0]
    return [f"{first} {unit[0]}" if unit and first.strip()[-1:].isdigit() else first, parts[1]]
