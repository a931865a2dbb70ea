"""What a sheet for paper is made of: parts that stay together, and the blocks in them.

Everything on a sheet is text in the maker's language and units already, or room to write in.
Nothing here knows how large a letter is: whoever draws it breaks pages between parts.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from studio_planner.craft.errors import StudioError


class NothingForPaper(StudioError):  # noqa: N818 - reads as a sentence where it is raised
    """There is nothing to put on the sheet that was asked for; the text says what there is."""


class PaperSize(StrEnum):
    """The two papers (ISO 216): A5 fits a clipboard at the bench, A4 a door."""

    A5 = "A5"
    A4 = "A4"


@dataclass(frozen=True, slots=True, kw_only=True)
class Headline:
    """What a part is about, and lines under it."""

    words: str
    under: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class LargeNumber:
    """A number to be read from afar and copied onto a label, with lines beside it.

    Without a number there is room to write it once it is known.
    """

    label: str
    number: str
    beside: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Column:
    """A column of a table: its heading, and its share of the width.

    Figures stand `right`. In a column to `write` in every row has an empty box.
    """

    head: str
    share: float
    right: bool = False
    write: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """A row of a table, one text for each column; a `strong` one is what it comes to."""

    cells: tuple[str, ...]
    strong: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Table:
    """Rows under a title; `large` ones are read with gloves on."""

    title: str
    columns: tuple[Column, ...]
    rows: tuple[Row, ...]
    large: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Fields:
    """Empty boxes to write in, each with its label, `across` of them beside one another."""

    title: str
    labels: tuple[str, ...]
    across: int = 3


@dataclass(frozen=True, slots=True, kw_only=True)
class Prose:
    """Sentences, each a paragraph; `listed` ones have a mark before them."""

    title: str
    sentences: tuple[str, ...]
    listed: bool = False
    large: bool = False


class Mark(StrEnum):
    """What kind of thing a line of a day is; each has a sign of its own."""

    POUR = "pour"
    STEP = "step"
    LEAVES = "leaves"


@dataclass(frozen=True, slots=True, kw_only=True)
class DayLine:
    """One thing on a day: its times, what it is, what for, and when its window closes."""

    clock: str
    mark: Mark
    what: str
    whom: str
    closes: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Day:
    """A day of a week: its name, the date, a line on hands, and what happens in order."""

    weekday: str
    date: str
    hands: str
    lines: tuple[DayLine, ...]


Block = Headline | LargeNumber | Table | Fields | Prose | Day


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """Blocks that stay on one page where they fit one; `running` heads each page of it.

    A part that `begins` a page is never put under another one.
    """

    blocks: tuple[Block, ...]
    running: str = ""
    begins: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Sheet:
    """A sheet: on every page stand `studio`, `title`, `made` (when) and the `caution`.

    `file_name` is what it may be called, without an ending. One that should have `one_page` is
    drawn a little smaller where that is enough for it.
    """

    paper: PaperSize
    title: str
    studio: str
    made: str
    caution: str
    file_name: str
    parts: tuple[Part, ...]
    one_page: bool = False

    @property
    def texts(self) -> tuple[str, ...]:
        """Everything that is written on it, in order."""
        found = [self.studio, self.title, self.made, self.caution]
        for part in self.parts:
            found.append(part.running)
            for block in part.blocks:
                found += texts_of(block)
        return tuple(text for text in found if text)


def texts_of(block: Block) -> list[str]:
    """Everything that is written in a block, in order."""
    match block:
        case Headline():
            return [block.words, *block.under]
        case LargeNumber():
            return [block.label, block.number, *block.beside]
        case Table():
            heads = [column.head for column in block.columns]
            return [block.title, *heads, *(cell for row in block.rows for cell in row.cells)]
        case Fields():
            return [block.title, *block.labels]
        case Prose():
            return [block.title, *block.sentences]
        case Day():
            lines = [t for one in block.lines for t in _line_texts(one)]
            return [block.weekday, block.date, block.hands, *lines]


def _line_texts(line: DayLine) -> tuple[str, ...]:
    return (line.clock, line.what, line.whom, line.closes)
