"""Pages of a sheet: what stays together stays on one page, and what is too long is divided."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from studio_planner.desktop.paper.block_drawing import (
    draw_fields,
    draw_headline,
    draw_number,
    draw_prose,
    fields_height,
    headline_height,
    number_height,
    prose_height,
)
from studio_planner.desktop.paper.day_drawing import day_height, draw_day
from studio_planner.desktop.paper.table_drawing import draw_table, table_height
from studio_planner.services.paper.pages import (
    Block,
    Day,
    Fields,
    Headline,
    LargeNumber,
    Part,
    Prose,
    Table,
)

if TYPE_CHECKING:
    from studio_planner.desktop.paper.ink import Ink


_WHITE = 2.0
"""What every block leaves white under itself at least [mm]."""


@dataclass(frozen=True, slots=True)
class Placed:
    """A block at its height on a page [mm under the header]."""

    block: Block
    y: float


@dataclass(frozen=True, slots=True)
class Page:
    """The blocks of a page, and what heads it."""

    blocks: tuple[Placed, ...]
    running: str


def height_of(block: Block, width: float) -> float:
    """How high a block is [mm], with the room under it."""
    match block:
        case Headline():
            return headline_height(block, width)
        case LargeNumber():
            return number_height(block, width)
        case Table():
            return table_height(block, width)
        case Fields():
            return fields_height(block, width)
        case Prose():
            return prose_height(block, width)
        case Day():
            return day_height(block, width)


def draw_block(ink: Ink, block: Block, x: float, y: float, width: float) -> None:
    """Draw a block whose top left corner is at x, y."""
    match block:
        case Headline():
            draw_headline(ink, block, x, y, width)
        case LargeNumber():
            draw_number(ink, block, x, y, width)
        case Table():
            draw_table(ink, block, x, y, width)
        case Fields():
            draw_fields(ink, block, x, y, width)
        case Prose():
            draw_prose(ink, block, x, y, width)
        case Day():
            draw_day(ink, block, x, y, width)


def pages_of(parts: tuple[Part, ...], width: float, height: float) -> tuple[Page, ...]:
    """Lay parts out on pages with so much room [mm]."""
    layout = _Layout(width, height)
    for part in parts:
        layout.add(part)
    return layout.done()


class _Layout:
    """Pages while they are being filled."""

    def __init__(self, width: float, height: float) -> None:
        self._width = width
        self._height = height
        self._pages: list[Page] = []
        self._blocks: list[Placed] = []
        self._running: list[str] = []
        self._y = 0.0

    def add(self, part: Part) -> None:
        whole = sum(height_of(block, self._width) for block in part.blocks)
        if self._blocks and (part.begins or not self._fits(whole)):
            self._turn()
        for block in part.blocks:
            self._place(block, part.running)

    def _fits(self, height: float) -> bool:
        """Whether so much has room on the page; what is white under it need not have."""
        return self._y + height - _WHITE <= self._height

    def _place(self, block: Block, running: str) -> None:
        rest: Block | None = block
        while rest is not None:
            own = height_of(rest, self._width)
            if self._fits(own):
                self._put(rest, own, running)
                return
            first, rest = divided(rest, self._width, self._height - self._y)
            if first is not None:
                self._put(first, height_of(first, self._width), running)
            elif not self._blocks and rest is not None:
                # Not even a line of it fits an empty page: it runs over rather than away.
                self._put(rest, own, running)
                return
            self._turn()

    def _put(self, block: Block, height: float, running: str) -> None:
        self._blocks.append(Placed(block, self._y))
        if running and running not in self._running:
            self._running.append(running)
        self._y += height

    def _turn(self) -> None:
        self._pages.append(Page(tuple(self._blocks), "; ".join(self._running)))
        self._blocks, self._running, self._y = [], [], 0.0

    def done(self) -> tuple[Page, ...]:
        if self._blocks or not self._pages:
            self._turn()
        return tuple(self._pages)


def divided(block: Block, width: float, room: float) -> tuple[Block | None, Block | None]:
    """What of a block fits into `room`, None where nothing does, and what is left of it."""
    count = _lines(block)
    for first in range(count - 1, 0, -1):
        part = _part(block, 0, first)
        if height_of(part, width) <= room:
            return part, _part(block, first, count)
    return None, block


def _lines(block: Block) -> int:
    match block:
        case Table():
            return len(block.rows)
        case Prose():
            return len(block.sentences)
        case Day():
            return len(block.lines)
        case _:
            return 0


def _part(block: Block, start: int, end: int) -> Block:
    match block:
        case Table():
            return replace(block, rows=block.rows[start:end])
        case Prose():
            return replace(block, sentences=block.sentences[start:end])
        case Day():
            return replace(block, lines=block.lines[start:end])
        case _:
            return block
