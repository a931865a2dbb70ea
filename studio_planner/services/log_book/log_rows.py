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


def log_rows(studio: Studio, now: datetime) -> tuple[LogRow, ...]:
    """Every row, newest first.

    `now` (aware) is when pours that are older than the log count as written.
    """
    return tuple(sorted(_all_rows(studio, now), key=_latest, reverse=True))


def wanted_rows(
    studio: Studio, rows: Iterable[LogRow], wanted: LogWanted
) -> tuple[LogRow, ...]:
    """Those of `rows` that are wanted, in their order."""
    if wanted == LogWanted():
        return tuple(rows)
    sieve = _Sieve(studio, wanted)
    return tuple(row for row in rows if sieve.lets_through(row))


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


class _Sieve:
    """What is wanted of a studio's log, with what it takes to tell of many rows at once."""

    def __init__(self, studio: Studio, wanted: LogWanted) -> None:
        self._studio = studio
        self._wanted = wanted
        self._words = wanted.text.casefold().split()
        self._mixes = {mix.entry: mix for mix in studio.mixes}
        gone = {one.key for one in studio.gone if one.order == wanted.order}
        known = next((one.pieces for one in studio.orders if one.key == wanted.order), ())
        self._of_order = gone.union(known)
        self._about: dict[tuple[str, ...], str] = {}

    def lets_through(self, row: LogRow) -> bool:
        """Whether a row is wanted."""
        wanted, entry = self._wanted, row.entry
        if wanted.piece and wanted.piece not in self._pieces(entry):
            return False
        if wanted.order and not self._is_of_order(entry):
            return False
        if wanted.kind is not None and entry.kind is not wanted.kind:
            return False
        zone = self._studio.time_zone
        if wanted.day is not None and entry.at.astimezone(zone).date() != wanted.day:
            return False
        return not self._words or self._says(row)

    def _pieces(self, entry: LogEntry) -> Iterable[str]:
        """The pieces that an entry is about; a weighing is about those of its mix."""
        if entry.kind is EntryKind.WEIGHED:
            mix = self._mixes.get(entry.number)
            return () if mix is None else (one.piece for one in mix.coats)
        return (entry.piece,)

    def _is_of_order(self, entry: LogEntry) -> bool:
        if entry.order:
            return entry.order == self._wanted.order
        return any(piece in self._of_order for piece in self._pieces(entry))

    def _says(self, row: LogRow) -> bool:
        withdrawn = () if row.withdrawn is None else (row.withdrawn,)
        entries = (row.entry, *row.former, *withdrawn)
        said = " ".join(part for one in entries for part in self._texts(one)).casefold()
        return all(word in said for word in self._words)

    def _texts(self, entry: LogEntry) -> tuple[str, ...]:
        batch = "" if entry.batch is None else f"#{entry.batch} mix {entry.batch}"
        order = order_name(self._studio, entry.order) if entry.order else ""
        whom = self._whom(entry)
        return whom, str(entry.kind), entry.words, entry.spot, batch, order

    def _whom(self, entry: LogEntry) -> str:
        """Whom an entry is about; of many entries that are about the same it is asked once."""
        mix = self._mixes.get(entry.number)
        subject = (entry.piece, entry.coat, entry.order, "" if mix is None else mix.product)
        if subject not in self._about:
            self._about[subject] = about(self._studio, entry)
        return self._about[subject]
