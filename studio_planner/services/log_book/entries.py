"""Putting entries into the log, and what is poured then."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.craft.errors import Rulebook
from studio_planner.craft.log import EntryKind, LogEntry, Poured
from studio_planner.craft.mixes import MixedFor
from studio_planner.craft.pieces import Joint
from studio_planner.craft.standing import bare_since, life_of
from studio_planner.craft.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import datetime

    from studio_planner.craft.studio import Studio

NEW = 1_000_000_000
"""The number of an entry that is not in the log yet; it gets its own there."""

_OF_POURS = {EntryKind.POURED, EntryKind.STRIPPED}


def entry_of(studio: Studio, number: int) -> LogEntry | None:
    """The entry of that number, whether it stands or not; None where there is none."""
    return next((entry for entry in studio.log if entry.number == number), None)


def next_number(studio: Studio) -> int:
    """The number that the next entry gets."""
    return studio.log[-1].number + 1 if studio.log else 1


def with_entries(studio: Studio, entries: Iterable[LogEntry]) -> Studio:
    """Put entries at the end of the log, each under the next number."""
    first = next_number(studio)
    numbered = [replace(entry, number=first + place) for place, entry in enumerate(entries)]
    return replace(studio, log=(*studio.log, *numbered))


def logged(
    studio: Studio, now: datetime, entries: Iterable[LogEntry], *, of: Iterable[str] = ()
) -> Studio:
    """Put entries written at `now` into the log, and let pieces carry what it then says.

    The pieces are those of which pours are told, and those `of` which one is corrected.
    InvalidEntry where what was poured would be no stack any more.
    """
    new = tuple(entries)
    pieces = {*(entry.piece for entry in new if entry.kind in _OF_POURS), *of}
    present = [piece.key for piece in studio.pieces if piece.key in pieces]
    for piece in present:
        studio = told_of_all_pours(studio, piece, now)
    after = with_entries(studio, new)
    for piece in present:
        _check_once(after, piece)
    return as_logged(after, present)


def _check_once(studio: Studio, piece: str) -> None:
    """Without a stripping between them, a coat can't have been poured twice."""
    rules = Rulebook(studio.piece(piece).name)
    poured = [e.coat for e in life_of(studio, piece) if e.kind is EntryKind.POURED]
    for coat in dict.fromkeys(poured):
        text = translate("log", "{coat} would be poured twice then; take one pour back first.")
        rules.require(
            poured.count(coat) == 1, "coat", text.format(coat=_coat(studio, piece, coat))
        )
    rules.close()


def told_of_all_pours(studio: Studio, piece: str, now: datetime) -> Studio:
    """Let the log tell of every pour of a piece, of those too that are older than the log."""
    told = {entry.coat for entry in life_of(studio, piece) if entry.kind is EntryKind.POURED}
    missing = [pour for pour in studio.pours_of(piece) if pour.coat not in told]
    return with_entries(studio, (entry_for(pour, now) for pour in missing))


def entry_for(pour: Poured, now: datetime, words: str = "") -> LogEntry:
    """The entry that tells of a pour, written at `now` (aware)."""
    return LogEntry(
        number=NEW,
        kind=EntryKind.POURED,
        at=pour.start,
        written=now,
        piece=pour.piece,
        coat=pour.coat,
        end=pour.end,
        spot=pour.spot,
        joint=pour.joint,
        batch=pour.batch,
        words=words,
    )


def as_logged(studio: Studio, pieces: Iterable[str]) -> Studio:
    """Let pieces carry what the log says was poured on them, and let go pins of that.

    InvalidEntry where that is no stack: a coat was poured before the one below it.
    """
    some = set(pieces)
    wanted = [piece.key for piece in studio.pieces if piece.key in some]
    rows = {
        (pour.piece, pour.coat): pour for piece in wanted for pour in _poured_on(studio, piece)
    }
    kept = [
        rows.pop((pour.piece, pour.coat), None) if pour.piece in wanted else pour
        for pour in studio.poured
    ]
    poured = (*(pour for pour in kept if pour is not None), *rows.values())
    _check_order(studio, poured, wanted)
    done = {(pour.piece, pour.coat) for pour in poured}
    pins = tuple(pin for pin in studio.pins if (pin.piece, pin.coat) not in done)
    return replace(studio, poured=poured, pins=pins)


def _poured_on(studio: Studio, piece: str) -> Iterable[Poured]:
    """What the log says lies on a piece; the last word on each coat counts."""
    life = life_of(studio, piece)
    for entry in life:
        if entry.kind is not EntryKind.POURED or entry.end is None:
            continue
        yield Poured(
            piece=piece,
            coat=entry.coat,
            start=entry.at,
            end=entry.end,
            spot=entry.spot,
            joint=entry.joint or Joint.BARE,
            batch=entry.batch or _batch_for(studio, entry),
        )


def _batch_for(studio: Studio, pour: LogEntry) -> int | None:
    """The last mix that was weighed for a coat before its pour was over."""
    since, coat = bare_since(studio, pour.piece), MixedFor(piece=pour.piece, coat=pour.coat)
    mixes = (
        mix
        for mix in studio.standing_mixes
        if coat in mix.coats
        if since is None or mix.at >= since
        if pour.end is None or mix.at <= pour.end
    )
    last = max(mixes, key=lambda mix: mix.at, default=None)
    return None if last is None else last.batch


def _check_order(studio: Studio, poured: Iterable[Poured], pieces: Iterable[str]) -> None:
    """Say in words which coat would lie on one that is not there; the craft checks again."""
    for key in pieces:
        piece = studio.piece(key)
        rules = Rulebook(piece.name)
        mine = sorted((p for p in poured if p.piece == key), key=lambda p: p.start.timestamp())
        for place, pour in enumerate(mine):
            expected = piece.stack[place].key if place < len(piece.stack) else None
            if pour.coat == expected or expected is None:
                continue
            rules.require(
                False,  # noqa: FBT003 - found above
                "coat",
                translate(
                    "log", "{coat} can't be poured before {below}; correct the times."
                ).format(coat=_coat(studio, key, pour.coat), below=piece.coat_name(expected)),
            )
            break
        rules.close()


def _coat(studio: Studio, piece: str, coat: str) -> str:
    stack = studio.piece(piece).stack
    known = any(one.key == coat for one in stack)
    return studio.piece(piece).coat_name(coat) if known else coat
