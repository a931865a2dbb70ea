"""Figures read from what was copied out of a data sheet: lines of text, or a table.

Whatever is not understood is listed with the reason; nothing is guessed. A line with figures of
a film needs a temperature: its own, that of a line before it, or the one the maker names.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.errors import InvalidEntry, StudioFileError
from studio_planner.craft.tongue import translate
from studio_planner.services.data_sheets.findings import Finding, Unread, not_clear
from studio_planner.services.data_sheets.heads import name_apart
from studio_planner.services.data_sheets.lines import read_lines
from studio_planner.services.data_sheets.ratios import ratio_apart
from studio_planner.services.data_sheets.tables import read_table
from studio_planner.services.data_sheets.times import PrintedTime, without_fractions
from studio_planner.storage.data_sheet import COLUMNS, read_data_sheet

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.craft.products import MixRatio, SheetPoint
    from studio_planner.science.stages import Stage

MOST_LETTERS = 200_000
"""Longer than any sheet; what is pasted beyond it is not read."""


@dataclass(frozen=True, slots=True)
class ReadSheet:
    """What was found in a pasted sheet, each figure once, and what was not understood.

    `name` is what the sheet is headed with, empty where it is headed with nothing.
    """

    points: tuple[SheetPoint, ...]
    unread: tuple[Unread, ...]
    ratio: MixRatio | None = None
    name: str = ""


def read_figures(text: str, celsius: float | None = None) -> ReadSheet:
    """Read the figures of pasted text; `celsius` holds where the text names no temperature.

    Examples
    --------
    >>> found = read_figures("Recoat window 4-6 h to 24 h at 20 °C")
    >>> [(point.stage.value, point.from_hours, point.to_hours) for point in found.points]
    [('recoat_opens', 4.0, 6.0), ('recoat_closes', 24.0, None)]
    """
    text = without_fractions(text[:MOST_LETTERS])
    lines = text.replace("\r\n", "\n").replace("\r", "\n").split("\n")
    lines, ratio = ratio_apart(lines)
    lines, name = (lines, "") if _is_our_table(lines) else name_apart(lines)
    findings, unread = _read(lines, celsius)
    points: dict[tuple[Stage, float, float | None], SheetPoint] = {}
    left = [*unread]
    for finding in findings:
        either = not_clear(finding, findings)
        if either:
            left.append(finding.refused(either))
            continue
        try:
            point = finding.point()
        except InvalidEntry as error:
            sentence = " ".join(rule.sentence for rule in error.broken)
            left.append(finding.refused(sentence))
            continue
        known = points.setdefault((point.stage, point.celsius, point.mass_g), point)
        if known != point:
            left.append(
                finding.refused(translate("sheets", "it says otherwise than a line before it."))
            )
    unread = sorted(left, key=lambda one: one.number)
    return ReadSheet(tuple(points.values()), tuple(unread), ratio, name)


def _read(lines: Sequence[str], celsius: float | None) -> tuple[list[Finding], list[Unread]]:
    if _is_our_table(lines):
        return _own_rows(lines)
    return read_table(lines, celsius) or read_lines(lines, celsius)


def _is_our_table(lines: Sequence[str]) -> bool:
    first = next((line for line in lines if line.strip()), "")
    cells = {cell.strip().lower() for mark in ",;\t" for cell in first.split(mark)}
    return set(COLUMNS[:-1]) <= cells


def _own_rows(lines: Sequence[str]) -> tuple[list[Finding], list[Unread]]:
    """Row after row of a table as data sheets are exchanged, so that one bad row costs one."""
    start = next(number for number, line in enumerate(lines) if line.strip())
    findings, unread = [], []
    for number, line in enumerate(lines[start + 1 :], start=start + 2):
        if not line.strip():
            continue
        try:
            (point,) = read_data_sheet(f"{lines[start]}\n{line}\n".encode())
        except InvalidEntry as error:
            reason = " ".join(
                f"{rule.field.rpartition(', ')[2]}: {rule.sentence}" for rule in error.broken
            )
            unread.append(Unread(number, line, reason))
        except StudioFileError as error:
            unread.append(Unread(number, line, str(error)))
        else:
            time = PrintedTime(point.from_hours, point.to_hours)
            findings.append(
                Finding(number, line, point.stage, point.celsius, time, point.mass_g)
            )
    return findings, unread
