"""How things stand with a piece: what has happened to it since it was a bare blank."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.log import EntryKind, LogEntry
from studio_planner.craft.plans import StepKind

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping, Sequence
    from datetime import datetime

    from studio_planner.craft.log import Poured
    from studio_planner.craft.pieces import Coat
    from studio_planner.craft.studio import Studio

Life = tuple[LogEntry, ...]
"""What stands in the log of a piece since it was last a bare blank, in the order of time."""

Step = tuple[StepKind, str, str | None]
"""A step of a plan: its kind, the piece, and the coat it is about (None where it has none)."""

_STEPS = {
    EntryKind.TAPED: StepKind.TAPE,
    EntryKind.TRIMMED: StepKind.TRIM,
    EntryKind.TURNED: StepKind.TURN,
    EntryKind.SANDED: StepKind.SAND,
    EntryKind.PACKED: StepKind.PACK,
    EntryKind.SHIPPED: StepKind.PACK,
}


def lives_of(studio: Studio) -> Mapping[str, Life]:
    """The life of every piece that the log speaks of, those that are gone among them."""
    lives: dict[str, list[LogEntry]] = {}
    for entry in studio.standing:
        if entry.kind is EntryKind.STRIPPED:
            lives[entry.piece] = []
        elif entry.piece:
            lives.setdefault(entry.piece, []).append(entry)
    return {piece: tuple(entries) for piece, entries in lives.items()}


def life_of(studio: Studio, piece: str) -> Life:
    """The life of one piece; empty where nothing was written down."""
    return lives_of(studio).get(piece, ())


def bare_since(studio: Studio, piece: str) -> datetime | None:
    """When a piece was last made a bare blank again; None where it never was."""
    stripped = (
        entry.at
        for entry in reversed(studio.standing)
        if entry.kind is EntryKind.STRIPPED and entry.piece == piece
    )
    return next(stripped, None)


def lies_on(studio: Studio, piece: str) -> str | None:
    """The spot that a piece was poured on or moved to last; None where nothing says."""
    pours = studio.pours_of(piece)
    moved = last_of(life_of(studio, piece), EntryKind.MOVED)
    if not pours:
        return None if moved is None else moved.spot
    return moved.spot if moved is not None and moved.at >= pours[-1].start else pours[-1].spot


def last_of(life: Life, kind: EntryKind, coat: str | None = None) -> LogEntry | None:
    """The last entry of a kind, of that coat if one is given; None where there is none."""
    found = (e for e in reversed(life) if e.kind is kind and coat in {None, e.coat})
    return next(found, None)


def is_spoiled(life: Life) -> bool:
    """Whether a piece was spoiled, and nothing was done about it yet."""
    return last_of(life, EntryKind.SPOILED) is not None


def packed_at(life: Life) -> datetime | None:
    """When a piece was packed; what was shipped was packed then at the latest."""
    packed = last_of(life, EntryKind.PACKED) or last_of(life, EntryKind.SHIPPED)
    return None if packed is None else packed.at


def shipped_at(life: Life) -> datetime | None:
    """When a piece left the studio; None while it is there."""
    shipped = last_of(life, EntryKind.SHIPPED)
    return None if shipped is None else shipped.at


def done_steps(studio: Studio) -> frozenset[Step]:
    """The steps that were done, by kind, piece and coat; packing has no coat.

    Where nobody wrote down which coat a piece was turned or sanded for, it is the first one
    that was not poured when that was done.
    """
    return frozenset(step for _, step in _steps_in_order(studio))


def sanded_for(studio: Studio) -> Mapping[tuple[str, str], datetime]:
    """When a piece was last washed and sanded in preparation for a coat, by both keys."""
    return {
        (piece, coat): at
        for at, (kind, piece, coat) in _steps_in_order(studio)
        if kind is StepKind.SAND and coat is not None
    }


def _steps_in_order(studio: Studio) -> Iterator[tuple[datetime, Step]]:
    """The steps that were done, those of one piece in the order of time."""
    stacks = {piece.key: piece.stack for piece in studio.pieces}
    pours: dict[str, list[Poured]] = {}
    for pour in studio.poured:
        pours.setdefault(pour.piece, []).append(pour)
    for piece, life in lives_of(studio).items():
        for entry in life:
            for step in _steps_of(entry, stacks.get(piece, ()), pours.get(piece, ())):
                yield entry.at, step


def _steps_of(
    entry: LogEntry, stack: Sequence[Coat], pours: Sequence[Poured]
) -> tuple[Step, ...]:
    kind = _STEPS.get(entry.kind)
    if kind is None:
        return ()
    if kind is StepKind.PACK:
        return ((kind, entry.piece, None),)
    coat = entry.coat or _next_coat(entry.at, stack, pours)
    return () if coat is None else ((kind, entry.piece, coat),)


def _next_coat(at: datetime, stack: Sequence[Coat], pours: Sequence[Poured]) -> str | None:
    poured = {pour.coat for pour in pours if pour.start < at}
    return next((coat.key for coat in stack if coat.key not in poured), None)
