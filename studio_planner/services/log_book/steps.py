"""Writing down everything but pours and weighings: one change each, with undo."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.errors import Rulebook
from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.log import EntryKind, LogEntry
from studio_planner.craft.standing import is_spoiled, life_of, packed_at, shipped_at
from studio_planner.craft.tongue import translate
from studio_planner.services.editing.changes import Change
from studio_planner.services.log_book.entries import NEW, logged
from studio_planner.services.log_book.known import (
    coat_name,
    order_name,
    piece_name,
    the_coat,
    the_piece,
)
from studio_planner.services.log_book.times import require_after, require_past

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import datetime

    from studio_planner.craft.log import Poured
    from studio_planner.craft.standing import Life
    from studio_planner.craft.studio import Studio
    from studio_planner.craft.touches import Touch, Verdict

ON_A_COAT = frozenset({EntryKind.TOUCHED, EntryKind.TAPED, EntryKind.TRIMMED})
"""What is done to a coat that has been poured."""


@dataclass(frozen=True, slots=True, kw_only=True)
class StepTold:
    """What was done to pieces, or happened to them, `at` an instant (aware).

    `coat` is the coat that was touched, taped, trimmed or spoiled, or that turning and sanding
    made ready for. *Moved* needs the spot, a touch test its touch and verdict. What is stripped
    is a bare blank again and is planned from the beginning.
    """

    kind: EntryKind
    pieces: tuple[str, ...]
    at: datetime
    coat: str = ""
    spot: str = ""
    touch: Touch | None = None
    verdict: Verdict | None = None
    words: str = ""


def told(studio: Studio, step: StepTold, now: datetime) -> Change:
    """Write a step down, at `now` (aware); for several pieces it is one change.

    Making it raises InvalidEntry in sentences: it lies ahead, the coat is not poured, a spoiled
    piece is packed, the piece had left by then.
    """
    names = ", ".join(dict.fromkeys(piece_name(studio, key) for key in step.pieces))
    said = translate("log", "{piece}: {what}").format(piece=names, what=kind_word(step.kind))

    def make(then: Studio) -> Studio:
        rules = Rulebook(said)
        rules.require(bool(step.pieces), "piece", translate("log", "choose a piece."))
        for piece in step.pieces:
            _require_coat(then, step, piece, rules)
        rules.close()
        return with_steps(then, [_entry(step, key, now) for key in step.pieces], now)

    return Change(said, make)


def _require_coat(studio: Studio, step: StepTold, piece: str, rules: Rulebook) -> None:
    """Whoever has not poured anything yet can't say which coat it was."""
    bare = not any(pour.piece == piece for pour in studio.poured)
    rules.require(
        bool(step.coat) or not bare or step.kind not in ON_A_COAT,
        "coat",
        translate(
            "log", "nothing is poured on {piece} yet; write down its first coat before that."
        ).format(piece=piece_name(studio, piece)),
    )


def _entry(step: StepTold, piece: str, now: datetime) -> LogEntry:
    return LogEntry(
        number=NEW,
        kind=step.kind,
        at=step.at,
        written=now,
        piece=piece,
        coat=step.coat,
        spot=step.spot,
        touch=step.touch,
        verdict=step.verdict,
        words=step.words,
    )


def shipped(studio: Studio, order: str, at: datetime, now: datetime, words: str = "") -> Change:
    """Write down that an order left, with all of its pieces that have not left before."""

    def make(then: Studio) -> Studio:
        pieces = next((one.pieces for one in then.orders if one.key == order), ())
        rules = Rulebook(order_name(then, order))
        rules.require(
            bool(pieces),
            "order",
            translate("rules", "there is no order “{order}”.").format(order=order),
        )
        leaving = [key for key in pieces if shipped_at(life_of(then, key)) is None]
        rules.require(
            bool(leaving) or not pieces,
            "order",
            translate("log", "it has left already; correct that entry instead."),
        )
        rules.close()
        entries = [
            LogEntry(
                number=NEW,
                kind=EntryKind.SHIPPED,
                at=at,
                written=now,
                piece=key,
                order=order,
                words=words,
            )
            for key in leaving
        ]
        return with_steps(then, entries, now)

    said = translate("log", "Shipped: {order}").format(order=order_name(studio, order))
    return Change(said, make)


def with_steps(studio: Studio, entries: Iterable[LogEntry], now: datetime) -> Studio:
    """The studio with entries in its log; InvalidEntry in sentences where one can't be."""
    new = tuple(entries)
    for entry in new:
        check_step(studio, entry, now)
    return logged(studio, now, new)


def check_step(studio: Studio, entry: LogEntry, now: datetime) -> None:
    """Require that what an entry tells can have happened; InvalidEntry says why not."""
    piece = the_piece(studio, entry.piece)
    rules = Rulebook(
        translate("log", "{piece}: {what}").format(piece=piece.name, what=kind_word(entry.kind))
    )
    require_past(rules, entry.at, now)
    if entry.coat:
        the_coat(studio, entry.piece, entry.coat)
    life = life_of(studio, entry.piece)
    pours = studio.pours_of(entry.piece)
    if entry.kind in ON_A_COAT:
        _check_on_coat(studio, entry, pours, rules)
    elif entry.kind is EntryKind.MOVED:
        rules.require(
            any(spot.key == entry.spot for spot in studio.spots),
            "spot",
            translate("rules", "there is no spot “{spot}”.").format(spot=entry.spot),
        )
    elif entry.kind in {EntryKind.PACKED, EntryKind.SHIPPED}:
        _check_leaving(studio, entry, life, rules)
    elif entry.kind is EntryKind.STRIPPED:
        rules.require(
            bool(life or pours),
            "piece",
            translate("log", "nothing has happened to it; it is a bare blank already."),
        )
    _check_not_left(entry, life, rules)
    rules.close()


def _check_on_coat(
    studio: Studio, entry: LogEntry, pours: Iterable[Poured], rules: Rulebook
) -> None:
    pour = next((one for one in pours if one.coat == entry.coat), None)
    coat = coat_name(studio, entry.piece, entry.coat)
    rules.require(
        pour is not None,
        "coat",
        translate("log", "write down the pour of {coat} first.").format(coat=coat),
    )
    if pour is not None:
        what = translate("log", "the pour of {coat}").format(coat=coat)
        require_after(rules, entry.at, pour.start, what)


def _check_leaving(studio: Studio, entry: LogEntry, life: Life, rules: Rulebook) -> None:
    rules.require(
        not is_spoiled(life),
        "piece",
        translate("log", "it is spoiled; strip it first, or take that back."),
    )
    again = packed_at(life) is not None and entry.kind is EntryKind.PACKED
    rules.require(
        not again,
        "piece",
        translate("log", "it is packed already; correct that entry instead."),
    )
    pours = studio.pours_of(entry.piece)
    if pours:
        what = translate("log", "the pour of {coat}").format(
            coat=coat_name(studio, entry.piece, pours[-1].coat)
        )
        require_after(rules, entry.at, pours[-1].start, what)


def _check_not_left(entry: LogEntry, life: Life, rules: Rulebook) -> None:
    """What has left can come back spoiled or be stripped, but nothing else happens to it."""
    left = shipped_at(life)
    if left is None or entry.kind in {EntryKind.SPOILED, EntryKind.STRIPPED}:
        return
    rules.require(
        entry.at.utcoffset() is None or entry.at < left,
        "piece",
        translate("log", "it had left by then; correct when it was shipped, or the time."),
    )
