"""Tables on paper: rows ruled by hairlines, boxes to write in, figures at the right."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.desktop.paper.ink import FINE, FIRM, HAIR, Ink
from studio_planner.desktop.paper.paper_type import Face, line_height, wrapped

if TYPE_CHECKING:
    from studio_planner.services.paper.pages import Column, Row, Table

_GAP = 3.0
"""Between two columns [mm]."""

_PAD, _PAD_READ = 0.9, 0.5
"""Over and under the words of a row [mm], and of one that nobody writes into."""

_WRITE, _WRITE_LARGE = 6.6, 8.0
"""How high a row is at least that is written into with gloves on [mm]."""

_AFTER = 3.4
"""Under a table [mm]."""


@dataclass(frozen=True, slots=True)
class _Cell:
    """A column's place: from where, how wide its words may be."""

    column: Column
    x: float
    width: float


def table_height(table: Table, width: float) -> float:
    """How high a table is [mm]."""
    rows = sum(_row_height(table, row, width) for row in table.rows)
    return _title_height(table, width) + _head_height(table, width) + rows + _AFTER


def draw_table(ink: Ink, table: Table, x: float, y: float, width: float) -> None:
    """Draw a table whose top left corner is at x, y."""
    if table.title:
        ink.paragraph(x, y, table.title, Face.HEADING, width)
    y += _title_height(table, width)
    cells = _cells(table, x, width)
    for cell in cells:
        lines = wrapped(cell.column.head, Face.LABEL, cell.width)
        _write(ink, cell, y, lines, Face.LABEL)
    y += _head_height(table, width)
    ink.rule((x, y), (x + width, y), FIRM)
    for row in table.rows:
        height = _row_height(table, row, width)
        _draw_row(ink, table, row, cells, (y, height))
        y += height
        ink.rule((x, y), (x + width, y), HAIR)


def _draw_row(
    ink: Ink, table: Table, row: Row, cells: tuple[_Cell, ...], band: tuple[float, float]
) -> None:
    y, height = band
    face = _face(table, row)
    for cell, words in zip(cells, row.cells, strict=True):
        if cell.column.write:
            ink.box(cell.x, y + 0.7, cell.width, height - 1.4, FINE)
            continue
        lines = wrapped(words, face, cell.width)
        top = y + (height - len(lines) * line_height(face)) / 2
        _write(ink, cell, top, lines, face)


def _write(ink: Ink, cell: _Cell, y: float, lines: tuple[str, ...], face: Face) -> None:
    for line in lines:
        end = cell.x + cell.width if cell.column.right else None
        ink.text(cell.x, y, line, face, right_of=end)
        y += line_height(face)


def _cells(table: Table, x: float, width: float) -> tuple[_Cell, ...]:
    whole = sum(column.share for column in table.columns)
    room = width - _GAP * (len(table.columns) - 1)
    found = []
    for column in table.columns:
        own = room * column.share / whole
        found.append(_Cell(column, x, own))
        x += own + _GAP
    return tuple(found)


def _title_height(table: Table, width: float) -> float:
    if not table.title:
        return 0.0
    return len(wrapped(table.title, Face.HEADING, width)) * line_height(Face.HEADING) + 0.4


def _head_height(table: Table, width: float) -> float:
    heads = [cell for cell in _cells(table, 0.0, width) if cell.column.head]
    lines = [len(wrapped(c.column.head, Face.LABEL, c.width)) for c in heads]
    return max(lines, default=0) * line_height(Face.LABEL) + 0.6


def _row_height(table: Table, row: Row, width: float) -> float:
    face = _face(table, row)
    cells = zip(_cells(table, 0.0, width), row.cells, strict=True)
    lines = max(len(wrapped(words, face, cell.width)) for cell, words in cells)
    words = lines * line_height(face)
    if not any(column.write for column in table.columns):
        return words + 2 * _PAD_READ
    return max(words + 2 * _PAD, _WRITE_LARGE if table.large else _WRITE)


def _face(table: Table, row: Row) -> Face:
    if table.large:
        return Face.LARGE_BOLD if row.strong else Face.LARGE
    return Face.BOLD if row.strong else Face.PLAIN
