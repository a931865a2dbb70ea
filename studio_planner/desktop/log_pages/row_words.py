"""How the log is read: the lines of each row, struck through where they do not count."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.log import EntryKind
from studio_planner.desktop import words
from studio_planner.desktop.timeline_work.voice import DeskVoice
from studio_planner.desktop.tongue import translate
from studio_planner.services.log_book.entry_words import about, what_happened
from studio_planner.services.log_book.known import coat_name, piece_name
from studio_planner.services.log_book.trace_words import mix_words

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.log import LogEntry
    from studio_planner.craft.mixes import WeighedMix
    from studio_planner.craft.studio import Studio
    from studio_planner.services.log_book.log_rows import LogRow

_LATER = timedelta(hours=1)
"""From so much later on it is said when something was written down."""


@dataclass(frozen=True, slots=True)
class ReadLine:
    """A line of a row: its text, the name of its font, and whether it is struck through."""

    text: str
    font: str = "plain"
    struck: bool = False


@dataclass(frozen=True, slots=True)
class ReadRow:
    """A row as it is read; without `row` it is the heading of a day."""

    time: str
    lines: tuple[ReadLine, ...]
    row: LogRow | None = None

    @property
    def spoken(self) -> str:
        """The row in one breath; what is struck through is said to be wrong."""
        wrong = translate("happened", "wrong: {what}")
        said = [
            wrong.format(what=line.text) if line.struck else line.text for line in self.lines
        ]
        return ", ".join([self.time, *said] if self.time else said)


def day_of(studio: Studio, row: LogRow) -> str:
    """The day on which it happened, as it stands over its rows."""
    return words.day_name(row.entry.at, words.wall_of(studio))


def read_row(studio: Studio, row: LogRow) -> ReadRow:
    """A row with everything that was ever written of it."""
    wall = words.wall_of(studio)
    return ReadRow(words.clock_time(row.entry.at, wall), tuple(_lines(studio, row)), row)


def _lines(studio: Studio, row: LogRow) -> Iterable[ReadLine]:
    entry, struck = row.entry, not row.stands
    whom = about(studio, entry)
    if whom:
        yield ReadLine(whom, "bold", struck)
    yield ReadLine(happened(studio, entry), struck=struck)
    if row.stands and entry.kind is EntryKind.WEIGHED:
        mixes = (one for one in studio.mixes if one.entry == entry.number)
        yield from (ReadLine(_weighed(studio, mix), "small") for mix in mixes)
    if row.withdrawn is not None:
        yield ReadLine(_withdrawn(studio, row.withdrawn), "small")
    elif row.former:
        yield ReadLine(_corrected(studio, entry), "small")
    elif row.older_than_log:
        yield ReadLine(translate("happened", "known before there was a log"), "small")
    elif entry.written - entry.at > _LATER:
        yield ReadLine(_written(studio, entry), "small")
    for former in row.former:
        yield ReadLine(_as_it_was(studio, former), struck=True)


def _weighed(studio: Studio, mix: WeighedMix) -> str:
    """The masses of a mix, and the coats that it was for."""
    what = mix_words(studio, mix)
    coats = ", ".join(
        f"{piece_name(studio, one.piece)}: {coat_name(studio, one.piece, one.coat)}"
        for one in mix.coats
    )
    text = translate("happened", "{what}; for {coats}")
    return text.format(what=what, coats=coats) if coats else what


def happened(studio: Studio, entry: LogEntry) -> str:
    """What happened, with the maker's note."""
    what = what_happened(studio, entry).words(DeskVoice(studio))
    return f"{what} ({entry.words})" if entry.words else what


def _as_it_was(studio: Studio, former: LogEntry) -> str:
    """A former entry with its time and whom it was about, since both may have been wrong."""
    when = words.moment(former.at, words.wall_of(studio))
    parts = (when, about(studio, former), happened(studio, former))
    return ", ".join(part for part in parts if part)


def _corrected(studio: Studio, entry: LogEntry) -> str:
    when = words.moment(entry.written, words.wall_of(studio))
    return translate("happened", "corrected {when}; before it said:").format(when=when)


def _withdrawn(studio: Studio, entry: LogEntry) -> str:
    when = words.moment(entry.written, words.wall_of(studio))
    said = translate("happened", "withdrawn {when}: it never happened").format(when=when)
    return f"{said} ({entry.words})" if entry.words else said


def _written(studio: Studio, entry: LogEntry) -> str:
    when = words.moment(entry.written, words.wall_of(studio))
    return translate("happened", "written down {when}").format(when=when)
