"""The log as it is read: each thing that happened once, with what was written before it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.log import EntryKind, LogEntry
from studio_planner.services.log_book.entries import NEW, entry_for
from studio_planner.services.log_book.entry_words import about
from studio_planner.services.log_book.known import order_name

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import date, datetime

    from studio_planner.craft.studio import Studio


@dataclass(frozen=True, slots=True, kw_only=True)
class LogRow:
    """Something that happened: the entry that counts, and those that it took the place of.

    `former` are corrected entries, the latest first. `withdrawn` is the entry that says that
    it never happened. A pour that is older than the log has the number NEW.
    """

    entry: LogEntry
    former: tuple[LogEntry, ...] = ()
    withdrawn: LogEntry | None = None

    @property
    def older_than_log(self) -> bool:
        """Whether only the pour is known, and nothing was written down of it."""
        return self.entry.number == NEW

    @property
    def stands(self) -> bool:
        """Whether it counts."""
        return self.withdrawn is None


@dataclass(frozen=True, slots=True, kw_only=True)
class LogWanted:
    """Which rows are wanted; what is empty or None does not matter."""

    piece: str = ""
    order: str = ""
    kind: EntryKind | None = None
    day: date | None = None
    text: str = ""


def log_rows(
    studio: Studio, now: datetime, wanted: LogWanted | None = None
) -> tuple[LogRow, ...]:
    """The rows that are wanted, newest first; without a wish all of them.

    `now` (aware) is when pours that are older than the log count as written.
    """
    asked = LogWanted() if wanted is None else wanted
    rows = [row for row in _all_rows(studio, now) if _is_wanted(studio, row, asked)]
    return tuple(sorted(rows, key=_latest, reverse=True))


def _latest(row: LogRow) -> tuple[float, int]:
    return row.entry.at.timestamp(), row.entry.number


def _all_rows(studio: Studio, now: datetime) -> Iterable[LogRow]:
    known = {entry.number: entry for entry in studio.log}
    replaced = {entry.corrects for entry in studio.log}
    for entry in studio.log:
        if entry.number in replaced:
            continue
        former = tuple(_before(entry, known))
        if entry.kind is not EntryKind.WITHDRAWN:
            yield LogRow(entry=entry, former=former)
        elif former:
            yield LogRow(entry=former[0], former=former[1:], withdrawn=entry)
    yield from _older(studio, now)


def _before(entry: LogEntry, known: dict[int, LogEntry]) -> Iterable[LogEntry]:
    while entry.corrects is not None and entry.corrects in known:
        entry = known[entry.corrects]
        yield entry


def _older(studio: Studio, now: datetime) -> Iterable[LogRow]:
    told = {(e.piece, e.coat) for e in studio.standing if e.kind is EntryKind.POURED}
    for pour in studio.poured:
        if (pour.piece, pour.coat) not in told:
            yield LogRow(entry=entry_for(pour, now))


def _is_wanted(studio: Studio, row: LogRow, wanted: LogWanted) -> bool:
    entry = row.entry
    if wanted.piece and wanted.piece not in pieces_of(studio, entry):
        return False
    if wanted.order and not _is_of_order(studio, entry, wanted.order):
        return False
    if wanted.kind is not None and entry.kind is not wanted.kind:
        return False
    if wanted.day is not None and entry.at.astimezone(studio.time_zone).date() != wanted.day:
        return False
    return not wanted.text or _says(studio, row, wanted.text)


def pieces_of(studio: Studio, entry: LogEntry) -> tuple[str, ...]:
    """The keys of the pieces that an entry is about; a weighing is about those of its mix."""
    if entry.kind is EntryKind.WEIGHED:
        mix = next((one for one in studio.mixes if one.entry == entry.number), None)
        return () if mix is None else tuple(dict.fromkeys(one.piece for one in mix.coats))
    return (entry.piece,) if entry.piece else ()


def _is_of_order(studio: Studio, entry: LogEntry, order: str) -> bool:
    if entry.order:
        return entry.order == order
    pieces = pieces_of(studio, entry)
    gone = {one.key for one in studio.gone if one.order == order}
    known = next((one.pieces for one in studio.orders if one.key == order), ())
    return any(piece in known or piece in gone for piece in pieces)


def _says(studio: Studio, row: LogRow, text: str) -> bool:
    entries = (row.entry, *row.former, *(() if row.withdrawn is None else (row.withdrawn,)))
    wanted = text.casefold().split()
    said = " ".join(part for entry in entries for part in _texts(studio, entry)).casefold()
    return all(word in said for word in wanted)


def _texts(studio: Studio, entry: LogEntry) -> tuple[str, ...]:
    batch = "" if entry.batch is None else f"#{entry.batch} mix {entry.batch}"
    order = order_name(studio, entry.order) if entry.order else ""
    return about(studio, entry), str(entry.kind), entry.words, entry.spot, batch, order
