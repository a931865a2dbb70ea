"""What a maker needs to see from three metres: the next thing, what closes, what is ready."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.orders import Gate
from studio_planner.services.hands_items import HandsItem, HandsKind
from studio_planner.services.next_hands import first_after, next_hands

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.craft.timing import Timing

HOURS_AHEAD = 48.0
"""How far the bench looks ahead for things to do; what is near comes first."""

CLOSING_HOURS = 12.0
"""How far it looks ahead for windows that close."""


@dataclass(frozen=True, slots=True, kw_only=True)
class BenchTask:
    """One thing to do, for one piece or for all pieces of one mix.

    `counts_to` is the instant that the one large number counts down to: when it begins, and
    once it has begun until when it has to be done. `mixed` tells of a pour whether A meets B.
    """

    item: HandsItem
    pieces: tuple[str, ...]
    counts_to: datetime
    begun: bool
    mixed: bool = True

    @property
    def pours(self) -> bool:
        """Whether it is a pour, which can be written down."""
        return self.item.kind is HandsKind.POUR


@dataclass(frozen=True, slots=True, kw_only=True)
class Closing:
    """A window that closes soon: the piece, the coat that has to be in it, and when."""

    piece: str
    coat: str
    closes: datetime
    saved_by_sanding: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Ready:
    """A piece that may pass a gate by now."""

    piece: str
    gate: Gate


@dataclass(frozen=True, slots=True, kw_only=True)
class Bench:
    """Everything that the bench shows at a moment; `tasks` are in the order to do them."""

    tasks: tuple[BenchTask, ...]
    closing: tuple[Closing, ...]
    ready: tuple[Ready, ...]


def bench_of(
    studio: Studio, plan: Plan | None, now: datetime, timing: Timing | None = None
) -> Bench:
    """What is to be seen at `now` (aware); without a plan nothing but what is missing.

    `timing` are clocks that are there already, over a record that holds the plan.
    """
    if plan is None:
        return Bench(tasks=(), closing=(), ready=())
    items = next_hands(studio, plan, now, HOURS_AHEAD, timing)
    if not items:
        later = first_after(studio, plan, now, timing)
        items = () if later is None else (later,)
    return Bench(
        tasks=tuple(_tasks(studio, plan, items, now)),
        closing=tuple(_closing(studio, plan, now)),
        ready=tuple(_ready(studio, plan, now)),
    )


def _tasks(
    studio: Studio, plan: Plan, items: Iterable[HandsItem], now: datetime
) -> Iterable[BenchTask]:
    mixes = {(coat.piece, coat.coat): coat.mix for coat in plan.coats}
    groups: dict[object, list[HandsItem]] = {}
    for item in sorted(items, key=_comes):
        mix = mixes.get((item.piece, item.coat or ""))
        key = (item.kind, item.start, mix if item.kind is HandsKind.POUR else item.coat)
        groups.setdefault(key, []).append(item)
    for group in groups.values():
        first = min(group, key=lambda item: item.deadline)
        begun = first.start <= now
        yield BenchTask(
            item=first,
            pieces=tuple(item.piece for item in group),
            counts_to=max(first.deadline, first.end) if begun else first.start,
            begun=begun,
            mixed=_is_mixed(studio, first),
        )


def _is_mixed(studio: Studio, item: HandsItem) -> bool:
    if item.coat is None:
        return False
    product = studio.product(studio.piece(item.piece).coat(item.coat).product)
    return product.ratio is not None


def _comes(item: HandsItem) -> tuple[datetime, datetime]:
    return (item.deadline if item.missed else item.start, item.deadline)


def _closing(studio: Studio, plan: Plan, now: datetime) -> Iterable[Closing]:
    until = now + timedelta(hours=CLOSING_HOURS)
    found = []
    poured = studio.poured_keys
    for coat in plan.coats:
        closes = None if coat.window is None else coat.window.closes
        if closes is None or (coat.piece, coat.coat) in poured or not now < closes < until:
            continue
        piece = studio.piece(coat.piece)
        below = piece.below(piece.position(coat.coat))
        saved = below is not None and piece.stack[below].sandable
        found.append(
            Closing(piece=coat.piece, coat=coat.coat, closes=closes, saved_by_sanding=saved)
        )
    # What no sanding can save comes first, then what closes first.
    return sorted(found, key=lambda row: (row.saved_by_sanding, row.closes))


def _ready(studio: Studio, plan: Plan, now: datetime) -> Iterable[Ready]:
    done = {coat.piece for coat in plan.coats if coat.end > now}
    for piece in studio.pieces:
        if piece.key in done or not any(coat.piece == piece.key for coat in plan.coats):
            continue
        passed = [
            gate
            for gate in Gate
            for row in plan.ready
            if row.piece == piece.key and row.stage is gate.stage
            if row.safe is not None and row.safe <= now
        ]
        if passed:
            yield Ready(piece=piece.key, gate=passed[-1])
